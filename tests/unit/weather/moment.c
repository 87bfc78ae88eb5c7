/* Dates and times, against the C library's own calendar. */
#include "gaugebox/moment.h"

#include "unit/plan/fixture.h"

#include <criterion/criterion.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

Test(moment, every_day_of_three_centuries) {
    setenv("TZ", "UTC", 1);
    tzset();
    for (int year = 1900; year < 2200; year++)
        for (int month = 1; month <= 12; month++)
            for (int day = 1; day <= 31; day++) {
                char text[32];
                struct tm tm = {
                    .tm_year = year - 1900, .tm_mon = month - 1, .tm_mday = day};
                time_t want = mktime(&tm);
                bool real = tm.tm_mon == month - 1;
                gb_moment got = {-1};
                snprintf(text, sizeof text, "%04d-%02d-%02d", year, month, day);
                cr_assert(gb_parse_day(text, 0, &got) == real, "%s", text);
                cr_assert(!real || got.s == (int64_t)want, "%s", text);
            }
}

static const struct {
    const char *text;
    int offset_h;
    int64_t s; /* -1: refused */
} TIMES[] = {
    {"1970-01-01T00:00", 0, 0},
    {"1970-01-01 00:00", 0, 0},
    {"1970-01-01T01:00", 1, 0},
    {"1970-01-01T00:00Z", 5, 0},
    {"1969-12-31T19:00-05:00", 0, 0},
    {"1970-01-01T05:30+0530", 0, 0},
    {"1970-01-01T00:00:30", 0, 30},
    {"2026-03-08T03:00-04:00", -5, 1772953200},
    {"2000-02-29T12:00", 0, 951825600},
    {"1900-02-29T12:00", 0, -1},
    {"2026-02-30T12:00", 0, -1},
    {"2026-13-01T12:00", 0, -1},
    {"2026-00-01T12:00", 0, -1},
    {"2026-01-01T24:00", 0, -1},
    {"2026-01-01T12:60", 0, -1},
    {"2026-01-01T12:00:60", 0, -1},
    {"2026-01-01T12", 0, -1},
    {"2026-01-01", 0, -1},
    {"2026-1-1T12:00", 0, -1},
    {"2026-01-01T12:00 UTC", 0, -1},
    {"2026-01-01T12:00+15:00", 0, -1},
    {"2026-01-01T12:00+05:75", 0, -1},
    {"01/02/2026 12:00", 0, -1},
    {"2026-01-01t12:00", 0, -1},
    {"1899-12-31T12:00", 0, -1},
    {"2200-01-01T00:00", 0, -1},
    {"", 0, -1},
    {"now", 0, -1},
};

Test(moment, times) {
    for (size_t i = 0; i < ROWS_OF(TIMES); i++) {
        gb_moment got = {-1};
        bool read = gb_parse_moment(TIMES[i].text, TIMES[i].offset_h * 3600, &got);
        cr_expect(read == (TIMES[i].s >= 0) && got.s == TIMES[i].s, "'%s': %lld",
                  TIMES[i].text, (long long)got.s);
    }
}

/* What is printed is read again as the same moment, at any offset. */
Test(moment, printed_and_read_again) {
    fx_random r = fx_seeded(71);
    gb_arena arena;
    fx_open(&arena);
    for (size_t k = 0; k < 3000; k++) {
        gb_moment m = {((int64_t)fx_whole(&r, 0, 100000000) - 36000000) * 60};
        int offset = ((int)fx_whole(&r, 0, 56) - 28) * 1800;
        gb_moment again = {-1};
        gb_text text;
        gb_text_init(&text, &arena);
        gb_print_moment(&text, m, offset);
        cr_assert(gb_parse_moment(gb_text_get(&text), offset, &again) && again.s == m.s,
                  "%s", gb_text_get(&text));
    }
    gb_arena_release(&arena);
}

Test(moment, offsets) {
    static const struct {
        const char *text;
        bool good;
        int s;
    } OFFSETS[] = {
        {"Z", true, 0},         {"+00:00", true, 0},     {"-05:00", true, -18000},
        {"+0530", true, 19800}, {"+14:00", true, 50400}, {"+14:30", false, 0},
        {"5", false, 0},        {"-5:00", false, 0},     {"-05:00x", false, 0},
        {"", false, 0},         {"EST", false, 0}};
    for (size_t i = 0; i < ROWS_OF(OFFSETS); i++) {
        int got = 0;
        cr_expect(gb_parse_offset(OFFSETS[i].text, &got) == OFFSETS[i].good &&
                      got == OFFSETS[i].s,
                  "'%s'", OFFSETS[i].text);
    }
}
