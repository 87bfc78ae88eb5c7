/* Weather hour by hour: which hour is picked, and that a colder one never lifts a stop.
 */
#include "unit/plan/fixture.h"

#include <criterion/criterion.h>
#include <string.h>

enum { DAYS = 5, HOURS = 24 * DAYS, RUNS = 400 };

typedef struct span_of_hours {
    fx_job f;
    gb_hour hours[HOURS];
} span_of_hours;

/* A job whose work is 07:00 to 15:00 of the second day, with random weather. */
static void random_hours(span_of_hours *s, fx_random *r, double least_f, double most_f) {
    fx_library(&s->f);
    gb_weather *w = &s->f.job.weather;
    double wind = fx_between(r, 0, 12);
    for (size_t i = 0; i < HOURS; i++)
        s->hours[i] = (gb_hour){.at = {(int64_t)i * 3600},
                                .air = {DEG_F(fx_between(r, least_f, most_f))},
                                .humidity = {fx_between(r, 0.1, 1)},
                                .wind = {fx_between(r, 0, wind)},
                                .rain = {fx_whole(r, 0, 40) == 0 ? 0.001 : 0},
                                .line = (int)i + 2};
    w->air.c = w->low.c = w->wind.m_s = w->humidity.of_one = NAN;
    w->hours_file = "weather.csv";
    w->hours = (gb_hours){.list = s->hours, .count = HOURS, .file = "weather.csv"};
    w->from.s = (24 + 7) * 3600;
    w->to.s = (24 + 15) * 3600;
}

Test(hours, each_span_holds_its_own) {
    span_of_hours s;
    fx_random r = fx_seeded(61);
    random_hours(&s, &r, 20, 100);
    const gb_weather *w = &s.f.job.weather;
    static const struct {
        gb_span span;
        size_t count;
    } SPANS[] = {
        {GB_AT_WORK, 8}, {GB_FIRST_DAY, 24}, {GB_FIRST_TWO_DAYS, 48}, {GB_WATCH, 72}};
    for (size_t i = 0; i < ROWS_OF(SPANS); i++) {
        gb_hours h = gb_hours_of(w, SPANS[i].span);
        cr_expect(h.count == SPANS[i].count, "span %zu: %zu hours", i, h.count);
        cr_expect(h.list[0].at.s == w->from.s);
    }
    s.f.job.weather.from.s += 1800; /* the hour that is under way counts too */
    cr_expect(gb_hours_of(w, GB_AT_WORK).list[0].at.s == w->from.s - 1800);
}

/* An hour belongs to a span that it touches: looked for one by one, whenever work begins.
 */
Test(hours, spans_are_what_a_search_finds) {
    static const int64_t LENGTHS_H[] = {0, 24, 48, 72};
    fx_random r = fx_seeded(66);
    for (size_t k = 0; k < 10 * RUNS; k++) {
        span_of_hours s;
        random_hours(&s, &r, 20, 100);
        gb_weather *w = &s.f.job.weather;
        w->from.s = (int64_t)fx_between(&r, -30 * 3600, (HOURS + 30) * 3600);
        w->from.s -= k % 2 == 0 ? w->from.s % 3600 : 0;
        w->to.s = w->from.s + (int64_t)fx_between(&r, 60, 20 * 3600);
        for (gb_span span = GB_AT_WORK; span <= GB_WATCH; span++) {
            int64_t end =
                span == GB_AT_WORK ? w->to.s : w->from.s + LENGTHS_H[span] * 3600;
            const gb_hour *first = NULL;
            size_t count = 0;
            for (size_t i = 0; i < HOURS; i++)
                if (s.hours[i].at.s + 3600 > w->from.s && s.hours[i].at.s < end) {
                    first = first == NULL ? &s.hours[i] : first;
                    count++;
                }
            gb_hours found = gb_hours_of(w, span);
            cr_assert(found.count == count && found.list == first,
                      "run %zu, span %d: %zu, not %zu", k, span, found.count, count);
        }
    }
}

Test(hours, the_extremes_are_those_of_the_span) {
    fx_random r = fx_seeded(62);
    for (size_t k = 0; k < RUNS; k++) {
        span_of_hours s;
        random_hours(&s, &r, 10, 110);
        const gb_weather *w = &s.f.job.weather;
        for (gb_span span = GB_AT_WORK; span <= GB_WATCH; span++) {
            double least = INFINITY, most = -INFINITY;
            gb_hours h = gb_hours_of(w, span);
            for (size_t i = 0; i < h.count; i++) {
                least = fmin(least, h.list[i].air.c);
                most = fmax(most, h.list[i].air.c);
            }
            cr_assert(gb_coldest_hour(w, span).air.c == least);
            cr_assert(gb_warmest_hour(w, span).air.c == most);
        }
        double mean = gb_mean_daily(w).c;
        cr_assert(mean >= gb_coldest_hour(w, GB_FIRST_DAY).air.c &&
                  mean <= gb_warmest_hour(w, GB_FIRST_DAY).air.c);
        s.f.job.weather.mean = GB_MEAN_OF_HOURS;
        mean = gb_mean_daily(w).c;
        cr_assert(mean >= gb_coldest_hour(w, GB_FIRST_DAY).air.c &&
                  mean <= gb_warmest_hour(w, GB_FIRST_DAY).air.c);
    }
}

static size_t stops(const gb_plan *plan) {
    size_t n = 0;
    for (size_t i = 0; i < plan->mix_count; i++)
        for (size_t k = 0; k < plan->mixes[i].cautions.count; k++)
            n += plan->mixes[i].cautions.list[k].severity == GB_STOP;
    return n;
}

Test(hours, a_colder_hour_never_lifts_a_stop) {
    fx_random r = fx_seeded(63);
    size_t with = 0;
    for (size_t k = 0; k < RUNS; k++) {
        gb_arena arena;
        gb_plan before, after;
        span_of_hours s;
        fx_open(&arena);
        random_hours(&s, &r, 15, 70);
        fx_plan(&s.f, &arena, &before);
        s.hours[fx_whole(&r, 0, HOURS - 1)].air.c -= fx_between(&r, 0, 30);
        fx_plan(&s.f, &arena, &after);
        cr_assert(stops(&after) >= stops(&before), "run %zu", k);
        with += stops(&before) > 0;
        gb_arena_release(&arena);
    }
    cr_expect(with > RUNS / 4, "%zu", with);
}

Test(hours, a_hotter_hour_never_lengthens_the_life) {
    fx_random r = fx_seeded(64);
    for (size_t k = 0; k < RUNS; k++) {
        gb_arena arena;
        gb_plan before, after;
        span_of_hours s;
        fx_open(&arena);
        random_hours(&s, &r, 80, 104);
        fx_plan(&s.f, &arena, &before);
        gb_hour *h = &s.hours[fx_whole(&r, 0, HOURS - 1)];
        h->air.c += fx_between(&r, 0, 10);
        h->wind.m_s += fx_between(&r, 0, 5);
        fx_plan(&s.f, &arena, &after);
        for (size_t i = 0; i < before.mix_count; i++)
            cr_assert(after.mixes[i].life.s <= before.mixes[i].life.s, "run %zu", k);
        gb_arena_release(&arena);
    }
}

/* Each caution of the weather names the hour that raised it, and that hour does. */
Test(hours, cautions_name_their_hour) {
    fx_random r = fx_seeded(65);
    size_t seen = 0;
    for (size_t k = 0; k < RUNS; k++) {
        gb_arena arena;
        gb_plan plan;
        span_of_hours s;
        fx_open(&arena);
        random_hours(&s, &r, 10, 112);
        fx_plan(&s.f, &arena, &plan);
        for (size_t i = 0; i < plan.mix_count; i++)
            for (size_t c = 0; c < plan.mixes[i].cautions.count; c++) {
                const gb_caution *caution = &plan.mixes[i].cautions.list[c];
                if (caution->code < GB_C_COLD_40 || caution->code > GB_C_RAIN)
                    continue;
                cr_assert(caution->hour.line >= 2, "run %zu, code %d", k, caution->code);
                const gb_hour *h = &s.hours[caution->hour.line - 2];
                bool of_air = caution->kind == GB_TEMP;
                cr_assert(!of_air || h->air.c == caution->value, "run %zu", k);
                seen++;
            }
        gb_arena_release(&arena);
    }
    cr_expect(seen > RUNS, "%zu", seen);
}

/* Stated weather is an hour of no file. */
Test(hours, stated_weather_names_none) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    f.job.weather.air.c = DEG_F(36);
    fx_plan(&f, &arena, &plan);
    const gb_caution *c = fx_caution(&plan.mixes[0], GB_C_COLD_40);
    cr_assert(c != NULL && c->hour.line == 0);
    gb_arena_release(&arena);
}
