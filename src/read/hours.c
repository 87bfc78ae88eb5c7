#include "gaugebox/air.h"
#include "gaugebox/digest.h"
#include "read/csv.h"
#include "read/diag.h"
#include "read/hours_columns.h"
#include "words/words.h"

#include <math.h>
#include <string.h>

enum { HOUR_S = 3600, MOST_HOURS = 100000, SHOWN = 30 };

typedef struct table {
    gb_csv *csv;
    const char *file;
    gb_arena *arena;
    gb_diags *diags;
    int offset_s;
    gb_columns columns;
    bool head_read;
    int line;
    size_t field; /* of the row that is read, from 0 */
    gb_hour row;
    bool row_good; /* no cell of it was refused */
    bool row_timed;
    gb_places *places;                  /* NULL: they are not kept */
    const char *texts[GB_MOST_COLUMNS]; /* of the row, while they are */
    gb_hour *hours;
    size_t count, room;
    gb_moment last; /* time of the row before, good or not */
    int last_line;  /* 0: there was none, or it is not known */
    size_t rows;    /* behind the head */
    bool headless;  /* the first row is none, and what stands below it tells nothing */
    size_t before;  /* faults of other files */
    bool share;     /* every humidity so far is at most 1 */
    int humid_line; /* of the first that is over 0 */
} table;

/* ---- cells ------------------------------------------------------------------------- */

static void refuse(table *t, const char *format, const gb_column *column,
                   const char *text) {
    gb_report(t->diags, t->file, t->line, format, column->name, gb_cut(text, SHOWN),
              text);
    t->row_good = false;
}

/* What stations write where they have no reading. */
static bool is_missing(const char *text) {
    static const char *const CODES[] = {"NA",    "N/A",   "na",     "n/a",    "NaN",
                                        "nan",   "null",  "NULL",   "None",   "M",
                                        "-",     "--",    "999",    "-999",   "9999",
                                        "-9999", "999.9", "-999.9", "9999.9", "-9999.9"};
    for (size_t i = 0; i < sizeof CODES / sizeof CODES[0]; i++)
        if (strcmp(text, CODES[i]) == 0)
            return true;
    return false;
}

static void report_range(table *t, const gb_column *column, const char *text,
                         bool too_much) {
    if (column->other != NULL && too_much)
        gb_report(
            t->diags, t->file, t->line,
            "'%s' is %.*s %s, which no site has; is it in %s? then name the column so",
            column->name, gb_cut(text, SHOWN), text, column->unit, column->other);
    else
        gb_report(
            t->diags, t->file, t->line,
            "'%s' is %.*s %s, which no site has; check the reading, and the unit that "
            "the column is named with",
            column->name, gb_cut(text, SHOWN), text, column->unit);
    t->row_good = false;
}

static void put_reading(table *t, const gb_column *column, double number) {
    double si = (number - column->zero) * column->factor;
    switch (column->role) {
    case GB_COLUMN_AIR:
        t->row.air.c = si;
        break;
    case GB_COLUMN_DEW_POINT: /* its humidity waits for the air's temperature */
        t->row.dew_point.c = si;
        break;
    case GB_COLUMN_HUMIDITY:
        t->row.humidity.of_one = si;
        break;
    case GB_COLUMN_WIND:
        t->row.station.m_s = si;
        t->row.wind = gb_wind_at_work(t->row.station);
        break;
    case GB_COLUMN_WIND_AT_WORK:
        t->row.wind.m_s = si;
        break;
    case GB_COLUMN_RAIN:
        t->row.rain.m = si;
        break;
    default:
        break;
    }
}

static void note_humidity(table *t, const gb_column *column, double number) {
    if (column->role != GB_COLUMN_HUMIDITY)
        return;
    if (number > 0 && t->humid_line == 0)
        t->humid_line = t->line;
    t->share = t->share && number <= 1;
}

static void read_reading(table *t, const gb_column *column, const char *text) {
    double number = 0;
    bool read = gb_csv_number(text, &number);
    bool good = read && number >= column->least && number <= column->most;
    /* No code is a reading that a site can have, so the many good ones skip the list. */
    bool is_code = !good && is_missing(text);
    if (*text == '\0')
        refuse(t,
               NF_("'%s' is empty; every hour needs its reading: fill it in, or leave "
                   "the column out"),
               column, text);
    else if (!read && !is_code)
        refuse(t,
               NF_("'%s' is '%.*s', which is no plain number; write it as 12 or -3.5, "
                   "with a point and without a unit"),
               column, text);
    else if (!good && !is_code)
        report_range(t, column, text, number > column->most);
    else if (is_code)
        refuse(t, NF_("'%s' is %.*s, which stands for a missing reading; fill it in"),
               column, text);
    else {
        note_humidity(t, column, number);
        put_reading(t, column, number);
    }
}

static void read_time(table *t, const gb_column *column, const char *text) {
    if (gb_parse_moment(text, t->offset_s, &t->row.at))
        t->row_timed = true;
    else
        refuse(t,
               NF_("'%s' is '%.*s', which is no time; write it as 2026-05-12T07:00, with "
                   "its offset behind it where it has one of its own"),
               column, text);
}

static void read_head(table *t, const char *cell) {
    gb_moment any;
    if (t->field > 0 || !gb_parse_moment(cell, t->offset_s, &any)) {
        gb_add_column(&t->columns, cell, t->file, t->line, t->arena, t->diags);
        return;
    }
    gb_report(t->diags, t->file, t->line,
              "the first row is an hour; put one before it that names the columns, as: "
              "time,air_f,humidity_pct,wind_mph,rain_in");
    t->headless = true;
}

static void read_of(table *t, const gb_column *column, const char *cell) {
    if (column->role == GB_COLUMN_TIME)
        read_time(t, column, cell);
    else if (column->role != GB_COLUMN_UNREAD)
        read_reading(t, column, cell);
    if (t->places == NULL || column->role <= GB_COLUMN_TIME)
        return;
    t->texts[t->field] = gb_arena_copy(t->arena, cell);
    if (t->texts[t->field] == NULL)
        t->diags->no_memory = true;
}

static void read_cell(void *user, size_t field, const char *cell, size_t length) {
    table *t = user;
    (void)length;
    t->line = t->csv->line;
    t->field = field;
    if (t->headless)
        return;
    if (!t->head_read)
        read_head(t, cell);
    else if (field < t->columns.count)
        read_of(t, &t->columns.list[field], cell);
}

/* ---- rows -------------------------------------------------------------------------- */

static void new_row(table *t) {
    t->field = 0;
    t->row = (gb_hour){.air = {GB_NONE},
                       .humidity = {GB_NONE},
                       .wind = {GB_NONE},
                       .rain = {GB_NONE},
                       .station = {GB_NONE},
                       .dew_point = {GB_NONE}};
    t->row_good = true;
    t->row_timed = false;
}

static const char *shown_moment(table *t, gb_moment at) {
    gb_text text;
    gb_text_init(&text, t->arena);
    gb_print_moment(&text, at, t->offset_s);
    return gb_text_get(&text);
}

/* Hours follow one another. After a summer time's beginning or end they do not, unless
   times are stated with their offset. */
static void check_order(table *t) {
    t->rows++;
    if (!t->row_timed) {
        t->last_line = 0; /* the next one follows nothing that is known */
        return;
    }
    int64_t step = t->row.at.s - t->last.s;
    if (t->last_line != 0 && step != HOUR_S) {
        const char *here = shown_moment(t, t->row.at);
        if (step == 0)
            gb_report(
                t->diags, t->file, t->line,
                "%s is here twice, first at line %d; keep one. Where clocks went back, "
                "state times with their offset",
                here, t->last_line);
        else if (step < 0)
            gb_report(t->diags, t->file, t->line,
                      "%s comes behind %s; sort the rows by time", here,
                      shown_moment(t, t->last));
        else
            gb_report(
                t->diags, t->file, t->line,
                "%s follows %s, and not the hour after it; fill the gap. Where clocks "
                "went forward, state times with their offset",
                here, shown_moment(t, t->last));
        t->row_good = false;
    }
    t->last = t->row.at;
    t->last_line = t->line;
}

static void finish_dew_point(table *t) {
    gb_temp dew = t->row.dew_point;
    if (isnan(dew.c) || isnan(t->row.air.c))
        return;
    if (dew.c > t->row.air.c + 0.5) {
        gb_report(t->diags, t->file, t->line,
                  "the dew point is above the air's temperature, which air never holds; "
                  "check which is which");
        t->row_good = false;
    }
    double humidity = gb_humidity_of(t->row.air, dew).of_one;
    t->row.humidity.of_one = humidity > 1 ? 1 : humidity; /* dew points are rounded */
}

/* Where each reading of a row stands, for the one who asks. */
static void keep_places(table *t, const gb_hour *hour) {
    const double *const VALUES[] = {[GB_COLUMN_AIR] = &hour->air.c,
                                    [GB_COLUMN_DEW_POINT] = &hour->dew_point.c,
                                    [GB_COLUMN_HUMIDITY] = &hour->humidity.of_one,
                                    [GB_COLUMN_WIND] = &hour->station.m_s,
                                    [GB_COLUMN_WIND_AT_WORK] = &hour->wind.m_s,
                                    [GB_COLUMN_RAIN] = &hour->rain.m};
    for (size_t i = 0; t->places != NULL && i < t->columns.count; i++) {
        const gb_column *c = &t->columns.list[i];
        if (c->role <= GB_COLUMN_TIME || t->texts[i] == NULL)
            continue;
        gb_places_add(t->places, (gb_place){.value = VALUES[c->role],
                                            .file = t->file,
                                            .line = hour->line,
                                            .key = c->name,
                                            .text = t->texts[i]});
    }
}

static void finish_row(table *t, size_t cells) {
    if (!t->head_read) {
        t->head_read = true;
        if (!t->headless)
            gb_check_columns(&t->columns, t->file, t->line, t->diags);
        t->headless = gb_diags_count(t->diags) > t->before;
        t->csv->stopped = t->headless;
        return;
    }
    if (cells != t->columns.count) {
        gb_report(
            t->diags, t->file, t->line,
            "the row has %zu cells and the first one names %zu columns; is the file "
            "cut off here, or a comma too many?",
            cells, t->columns.count);
        t->row_good = false;
    }
    check_order(t);
    finish_dew_point(t);
    if (!t->row_good || t->count == t->room)
        return;
    t->row.line = t->line;
    t->hours[t->count] = t->row;
    keep_places(t, &t->hours[t->count++]);
}

static void end_row(void *user, size_t cells) {
    table *t = user;
    t->line = t->csv->line;
    finish_row(t, cells);
    new_row(t);
}

/* ---- files ------------------------------------------------------------------------- */

static void check_whole(table *t) {
    if (!t->head_read && !t->headless)
        gb_report(t->diags, t->file, 0,
                  "is empty; its first row names the columns, as: "
                  "time,air_f,humidity_pct,wind_mph,rain_in");
    else if (t->rows == 0 && !t->headless)
        gb_report(t->diags, t->file, 0, "names its columns and holds no hour");
    if (t->share && t->humid_line != 0)
        gb_report(t->diags, t->file, t->humid_line,
                  "every humidity is at most 1; it is read in per cent: 45, not 0.45");
}

bool gb_read_hours(const char *file, int offset_s, gb_arena *arena, gb_diags *diags,
                   gb_places *places, gb_hours *hours) {
    size_t before = gb_diags_count(diags);
    char *text = NULL;
    size_t length = 0;
    if (!gb_csv_load(file, MOST_HOURS,
                     N_("holds over 100000 rows, eleven years of hours; keep the days of "
                        "the work"),
                     arena, diags, &text, &length))
        return false;
    table t = {.file = file,
               .arena = arena,
               .diags = diags,
               .offset_s = offset_s,
               .places = places,
               .before = before,
               .share = true,
               .room = gb_csv_lines(text, length)};
    t.hours = gb_arena_take(arena, t.room, sizeof *t.hours);
    if (t.hours == NULL) {
        diags->no_memory = true;
        return false;
    }
    gb_csv csv = {
        .file = file, .diags = diags, .cell = read_cell, .row = end_row, .user = &t};
    t.csv = &csv;
    new_row(&t);
    uint64_t digest = gb_digest_add(GB_DIGEST_START, text, length);
    if (gb_csv_parse(&csv, text, length) && !csv.stopped)
        check_whole(&t);
    *hours = (gb_hours){.list = t.hours,
                        .count = t.count,
                        .file = file,
                        .digest = digest,
                        .station_wind = gb_has_column(&t.columns, GB_COLUMN_WIND)};
    return gb_diags_count(diags) == before && !diags->no_memory;
}
