#include "read/weather_rules.h"

#include "read/diag.h"
#include "words/words.h"

#include "gaugebox/digest.h"

#include <math.h>
#include <string.h>

static void report(gb_reader *r, const gb_job *job, const char *format) {
    gb_report(r->diags, r->file, job->weather.at.line, format,
              job->weather.hours_file == NULL ? "" : job->weather.hours_file);
}

static const char *shown_temp(gb_reader *r, const gb_job *job, gb_temp temp) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_print_temp(&text, temp, job->units);
    return gb_text_get(&text);
}

static const char *shown_moment(gb_reader *r, const gb_weather *w, int64_t s) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_print_moment(&text, (gb_moment){s}, w->offset_s);
    return gb_text_get(&text);
}

/* ---- stated for the day ------------------------------------------------------------ */

static void check_stated(gb_reader *r, const gb_job *job) {
    const gb_weather *w = &job->weather;
    if (isnan(w->air.c))
        report(r, job,
               NF_("weather has no 'air'; add: air = \"62 F\", or a file of hours: "
                   "hours = \"weather.csv\""));
    if (w->utc_offset != NULL || w->day != NULL)
        report(r, job,
               NF_("weather states 'utc_offset' or 'day' and no 'hours', which they "
                   "belong to; add hours = \"weather.csv\", or take them out"));
    if (w->mean == GB_MEAN_OF_HOURS)
        report(r, job,
               NF_("weather takes the mean of hours and has none; add hours = "
                   "\"weather.csv\", or take 'mean' out"));
    if (w->low.c > w->air.c)
        gb_report(r->diags, r->file, w->at.line,
                  "the low, %s, is above the air temperature, %s; check which is which",
                  shown_temp(r, job, w->low), shown_temp(r, job, w->air));
}

/* ---- from a file ------------------------------------------------------------------- */

static void refuse_stated(gb_reader *r, const gb_job *job, const char *key, bool stated) {
    if (stated)
        gb_report(r->diags, r->file, job->weather.at.line,
                  "weather states '%s' and hours, which say it too; take one out", key);
}

/* The offset and the day of the work; false when one of them is not known. */
static bool read_day(gb_reader *r, gb_job *job) {
    gb_weather *w = &job->weather;
    gb_moment midnight;
    bool placed = w->utc_offset != NULL && gb_parse_offset(w->utc_offset, &w->offset_s);
    if (w->utc_offset == NULL)
        report(r, job,
               NF_("weather has hours and no 'utc_offset'; add what clocks at the "
                   "site are from UTC all year: utc_offset = \"-05:00\""));
    else if (!placed)
        gb_report(
            r->diags, r->file, w->at.line,
            "'utc_offset' is '%.*s'; write it as \"-05:00\" or \"+01:00\", at most 14 h",
            gb_cut(w->utc_offset, 30), w->utc_offset);
    if (w->day == NULL)
        report(r, job,
               NF_("weather has hours and no 'day' of the work; add: day = "
                   "\"2026-05-12\""));
    else if (!gb_parse_day(w->day, w->offset_s, &midnight))
        gb_report(r->diags, r->file, w->at.line,
                  "'day' is '%.*s', which is no date; write it as \"2026-05-12\"",
                  gb_cut(w->day, 30), w->day);
    else if (isnan(job->crew.start.s))
        report(r, job,
               NF_("weather has hours and the crew no 'start'; add to crew: start = "
                   "\"07:00\""));
    else {
        w->from.s = midnight.s + (int64_t)job->crew.start.s;
        w->to.s = midnight.s + (int64_t)gb_day_end(&job->crew).s;
        return placed;
    }
    return false;
}

/* They must hold all that a sheet looks at: the work, and the frost watch. */
static void check_covered(gb_reader *r, const gb_job *job) {
    const gb_weather *w = &job->weather;
    const gb_hour *first = &w->hours.list[0];
    int64_t behind = w->hours.list[w->hours.count - 1].at.s + 3600;
    int64_t needed = w->from.s + (int64_t)gb_frost_watch().s;
    if (first->at.s <= w->from.s && behind >= needed)
        return;
    gb_report(
        r->diags, r->file, w->at.line,
        "%s holds %s to %s; the work begins at %s and its frost is watched to %s: get "
        "a longer file, or check the day",
        w->hours_file, shown_moment(r, w, first->at.s), shown_moment(r, w, behind),
        shown_moment(r, w, w->from.s), shown_moment(r, w, needed));
}

static void check_hours(gb_reader *r, gb_job *job) {
    gb_weather *w = &job->weather;
    refuse_stated(r, job, "air", !isnan(w->air.c));
    refuse_stated(r, job, "low", !isnan(w->low.c));
    refuse_stated(r, job, "wind", !isnan(w->wind.m_s));
    refuse_stated(r, job, "humidity", !isnan(w->humidity.of_one));
    refuse_stated(r, job, "rain", w->rain);
    bool known = read_day(r, job);
    const char *path = gb_path_beside(r->file, w->hours_file, r->arena);
    if (path == NULL) {
        r->diags->no_memory = true;
        return;
    }
    if (!gb_read_hours(path, w->offset_s, r->arena, r->diags, r->places, &w->hours))
        return;
    job->digest = gb_digest_add_number(job->digest, w->hours.digest);
    if (known)
        check_covered(r, job);
}

static void check_temperatures(gb_reader *r, const gb_job *job) {
    const gb_temperatures *t = &job->temperatures;
    if (t->at.line == 0 || t->at.faulty)
        return;
    if (t->frozen && t->sand.c > 0)
        gb_report(
            r->diags, r->file, t->at.line,
            "the sand is frozen and at %s; ice is at 32 F (0 C) or below: check both",
            shown_temp(r, job, t->sand));
    if (!t->frozen && t->sand.c < 0)
        gb_report(
            r->diags, r->file, t->at.line,
            "the sand is at %s and not frozen; add: frozen = true, or thaw it first",
            shown_temp(r, job, t->sand));
}

void gb_check_weather(gb_reader *reader, gb_job *job) {
    const gb_weather *w = &job->weather;
    check_temperatures(reader, job);
    if (w->at.line == 0 || w->at.faulty)
        return;
    if (w->hours_file != NULL)
        check_hours(reader, job);
    else
        check_stated(reader, job);
}
