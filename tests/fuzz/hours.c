#include "common.h"

enum { OFFSET_S = -5 * 3600 };

/* What was read is what a site can have, and an hour after the one before it. */
static void expect_hours(const gb_hours *hours) {
    for (size_t i = 0; i < hours->count; i++) {
        const gb_hour *h = &hours->list[i];
        fuzz_expect(h->air.c >= -61 && h->air.c <= 56, "air of no site");
        fuzz_expect(isnan(h->humidity.of_one) ||
                        (h->humidity.of_one >= 0 && h->humidity.of_one <= 1),
                    "a humidity that is none");
        fuzz_expect(isnan(h->wind.m_s) || (h->wind.m_s >= 0 && h->wind.m_s <= 46),
                    "a wind of no site");
        fuzz_expect(isnan(h->rain.m) || h->rain.m >= 0, "rain below zero");
        fuzz_expect(i == 0 || h->at.s == hours->list[i - 1].at.s + 3600,
                    "hours that do not follow one another");
        fuzz_expect(h->line > 1, "an hour of no line");
    }
}

/* The demo's work in the middle of whatever hours came. */
static void work_in(fuzz_run *run, const gb_hours *hours) {
    static const char *const DEMO = FUZZ_EXAMPLES "/library-entrance/job.cfg";
    gb_job job;
    fuzz_expect(gb_read_job(DEMO, run->table, &run->arena, &run->diags, &job),
                "the demo");
    gb_weather *w = &job.weather;
    w->air.c = w->low.c = w->wind.m_s = w->humidity.of_one = GB_NONE;
    w->rain = false;
    w->hours_file = "weather.csv";
    w->hours = *hours;
    w->offset_s = OFFSET_S;
    w->from = hours->list[hours->count / 2].at;
    w->to.s = w->from.s + (int64_t)8 * 3600;
    fuzz_job(run, &job);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    fuzz_run run;
    gb_hours hours;
    fuzz_begin(&run, FUZZ_MIXES);
    bool good = gb_read_hours(fuzz_file(bytes, count), OFFSET_S, &run.arena, &run.diags,
                              &run.places, &hours);
    fuzz_expect(good != gb_diags_any(&run.diags), "a result with faults, or neither");
    if (good) {
        expect_hours(&hours);
        work_in(&run, &hours);
    }
    fuzz_end(&run);
    return 0;
}
