#include "gaugebox/quantity.h"
#include "unit/quantity/exact.h"
#include "unit/quantity/supply.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>
#include <string.h>

static gb_arena arena;
static counting_supply counting = {.fail_at = NEVER_FAILS};

static void begin(void) {
    gb_arena_init(&arena, supply_of(&counting));
}

static void end(void) {
    gb_arena_release(&arena);
}

TestSuite(print, .init = begin, .fini = end);

static const char *length_text(double m, gb_system system) {
    gb_text text;
    gb_text_init(&text, &arena);
    gb_print_length(&text, (gb_length){m}, system);
    return gb_text_get(&text);
}

static const char *temp_text(double c, gb_system system) {
    gb_text text;
    gb_text_init(&text, &arena);
    gb_print_temp(&text, (gb_temp){c}, system);
    return gb_text_get(&text);
}

static const char *duration_text(double s) {
    gb_text text;
    gb_text_init(&text, &arena);
    gb_print_duration(&text, (gb_duration){s});
    return gb_text_get(&text);
}

static const struct {
    const char *id;
    double m;
    gb_system system;
    const char *printed;
} LENGTHS[] = {
    {"a tread", 14 * IN, GB_US, "14 in"},
    {"a foot is inches", 12 * IN, GB_US, "12 in"},
    {"last below two feet", 23.9375 * IN, GB_US, "23-15/16 in"},
    {"two feet", 24 * IN, GB_US, "2 ft"},
    {"rounds up to two feet", 23.99 * IN, GB_US, "2 ft"},
    {"feet and inches", 54.5 * IN, GB_US, "4 ft 6-1/2 in"},
    {"feet and a fraction", 60.0625 * IN, GB_US, "5 ft 1/16 in"},
    {"feet alone", 60 * IN, GB_US, "5 ft"},
    {"rounds up to a foot", 35.99 * IN, GB_US, "3 ft"},
    {"three quarters", 0.75 * IN, GB_US, "3/4 in"},
    {"one and a quarter", 1.25 * IN, GB_US, "1-1/4 in"},
    {"a sixteenth", 0.0625 * IN, GB_US, "1/16 in"},
    {"a thirty-second", 0.03125 * IN, GB_US, "1/32 in"},
    {"3.2 sixty-fourths", 0.05 * IN, GB_US, "3/64 in"},
    {"a sixty-fourth", 0.015625 * IN, GB_US, "1/64 in"},
    {"0.64 sixty-fourths", 0.01 * IN, GB_US, "1/64 in"},
    {"less than half of one", 0.007 * IN, GB_US, "0 in"},
    {"5.76 sixty-fourths", 0.09 * IN, GB_US, "3/32 in"},
    {"from 1/8 in on sixteenths", 0.14 * IN, GB_US, "1/8 in"},
    {"nothing", 0, GB_US, "0 in"},
    {"minus nothing", -0.0, GB_US, "0 in"},
    {"38 mm: 23.94 sixteenths", 0.038, GB_US, "1-1/2 in"},
    {"5 m: 3149.6 sixteenths", 5, GB_US, "16 ft 4-7/8 in"},
    {"1000 km: 39370078.74 in", 1e6, GB_US, "3280839 ft 10-3/4 in"},
    {"negative", -54 * IN, GB_US, "-4 ft 6 in"},
    {"negative inches", -0.5 * IN, GB_US, "-1/2 in"},
    {"negative and too small to see", -1e-6, GB_US, "0 in"},
    {"NaN", NAN, GB_US, "?"},
    {"infinity", INFINITY, GB_US, "?"},
    {"minus infinity", -INFINITY, GB_US, "?"},
    {"huge", 1e300, GB_US, "?"},
    {"38 mm", 0.038, GB_METRIC, "38 mm"},
    {"a metre and more", 1.2, GB_METRIC, "1200 mm"},
    {"tenths below ten", 0.0032, GB_METRIC, "3.2 mm"},
    {"whole below ten", 0.003, GB_METRIC, "3 mm"},
    {"nearly whole below ten", 0.00296, GB_METRIC, "3 mm"},
    {"9.94 mm", 0.00994, GB_METRIC, "9.9 mm"},
    {"9.96 mm", 0.00996, GB_METRIC, "10 mm"},
    {"ten", 0.010, GB_METRIC, "10 mm"},
    {"tenths below a hundred", 0.0104, GB_METRIC, "10.4 mm"},
    {"no tenths above a hundred", 0.1006, GB_METRIC, "101 mm"},
    {"a sixteenth of an inch is 1.5875 mm", 0.0625 * IN, GB_METRIC, "1.6 mm"},
    {"14 in is 355.6 mm", 14 * IN, GB_METRIC, "356 mm"},
    {"a tenth", 0.0001, GB_METRIC, "0.1 mm"},
    {"less than half a tenth", 0.00004, GB_METRIC, "0 mm"},
    {"no length", 0, GB_METRIC, "0 mm"},
    {"below zero", -0.038, GB_METRIC, "-38 mm"},
    {"below zero and too small to see", -1e-6, GB_METRIC, "0 mm"},
    {"not a number", NAN, GB_METRIC, "?"},
    {"endless", INFINITY, GB_METRIC, "?"},
    {"huge, metric", 1e300, GB_METRIC, "?"},
};

Test(print, lengths) {
    for (size_t i = 0; i < sizeof LENGTHS / sizeof LENGTHS[0]; i++) {
        const char *got = length_text(LENGTHS[i].m, LENGTHS[i].system);
        cr_expect(strcmp(got, LENGTHS[i].printed) == 0, "%s: \"%s\", not \"%s\"",
                  LENGTHS[i].id, got, LENGTHS[i].printed);
    }
}

static const struct {
    const char *id;
    double c;
    gb_system system;
    const char *printed;
} TEMPS[] = {
    {"40 F", 40 / 9.0, GB_US, "40 F"},
    {"40 F is 4.44 C", 40 / 9.0, GB_METRIC, "4.4 C"},
    {"freezing", 0, GB_US, "32 F"},
    {"freezing, metric", 0, GB_METRIC, "0 C"},
    {"minus freezing", -0.0, GB_METRIC, "0 C"},
    {"where both meet", -40, GB_US, "-40 F"},
    {"where both meet, metric", -40, GB_METRIC, "-40 C"},
    {"0 F", -160 / 9.0, GB_US, "0 F"},
    {"tenths", 37.5, GB_METRIC, "37.5 C"},
    {"37.5 C is 99.5 F", 37.5, GB_US, "99.5 F"},
    {"17 C is 62.6 F", 17, GB_US, "62.6 F"},
    {"negative tenths", -0.3, GB_METRIC, "-0.3 C"},
    {"rounds to nothing", -0.04, GB_METRIC, "0 C"},
    {"rounds to a whole degree", 4.96, GB_METRIC, "5 C"},
    {"rounds to one degree", 0.95, GB_METRIC, "1 C"},
    {"rounds to minus one", -0.95, GB_METRIC, "-1 C"},
    {"boiling", 100, GB_US, "212 F"},
};

Test(print, temperatures) {
    for (size_t i = 0; i < sizeof TEMPS / sizeof TEMPS[0]; i++) {
        const char *got = temp_text(TEMPS[i].c, TEMPS[i].system);
        cr_expect(strcmp(got, TEMPS[i].printed) == 0, "%s: \"%s\", not \"%s\"",
                  TEMPS[i].id, got, TEMPS[i].printed);
    }
    cr_expect(temp_text(NAN, GB_US)[0] == '?', "NaN: \"%s\"", temp_text(NAN, GB_US));
    cr_expect(temp_text(INFINITY, GB_METRIC)[0] == '?', "infinity");
    cr_expect(temp_text(-INFINITY, GB_US)[0] == '?', "minus infinity");
    cr_expect(temp_text(1e300, GB_US)[0] == '?', "huge");
}

/* In whole tenths of a degree, a printed temperature ends in .0 never. */
Test(print, temperatures_have_no_useless_tenth) {
    int bad = 0;
    const char *last = "";
    for (int k = -4000; k <= 12000; k++) {
        const char *got = temp_text(k / 100.0, GB_METRIC);
        if (strstr(got, ".0 ") == NULL)
            continue;
        bad++;
        last = got;
    }
    cr_expect(bad == 0, "%d of 16001, the last \"%s\"", bad, last);
}

enum { MINUTE = 60, HOUR = 3600, DAY = 86400 };

static const struct {
    const char *id;
    double s;
    const char *printed;
} DURATIONS[] = {
    {"nothing", 0, "0 s"},
    {"minus nothing", -0.0, "0 s"},
    {"half a second", 0.5, "1 s"},
    {"45 s", 45, "45 s"},
    {"59 s", 59, "59 s"},
    {"59.4 s", 59.4, "59 s"},
    {"59.7 s is a minute", 59.7, "1 min"},
    {"one minute", MINUTE, "1 min"},
    {"89 s", 89, "1 min"},
    {"90 s", 90, "2 min"},
    {"20 min", 20 * MINUTE, "20 min"},
    {"59 min", 59 * MINUTE, "59 min"},
    {"59.6 min is an hour", 59.6 * MINUTE, "1 h"},
    {"an hour", HOUR, "1 h"},
    {"2h30m", 2.5 * HOUR, "2h30m"},
    {"five minutes past", 2 * HOUR + 5 * MINUTE, "2h5m"},
    {"119.6 min is two hours", 119.6 * MINUTE, "2 h"},
    {"24 h", DAY, "24 h"},
    {"48 h", 2 * DAY, "48 h"},
    {"72 h", 3 * DAY, "72 h"},
    {"71h59m", 3 * DAY - MINUTE, "71h59m"},
    {"4 days", 4 * DAY, "4 days"},
    {"7 days", 7 * DAY, "7 days"},
    {"28 days", 28 * DAY, "28 days"},
    {"28 days less a second", 28 * DAY - 1, "28 days"},
    {"no whole days", 100 * HOUR, "100 h"},
    {"400 days", 400 * DAY, "400 days"},
    {"below zero", -1, "?"},
    {"NaN", NAN, "?"},
    {"infinity", INFINITY, "?"},
    {"huge", 1e300, "?"},
};

Test(print, durations) {
    for (size_t i = 0; i < sizeof DURATIONS / sizeof DURATIONS[0]; i++) {
        const char *got = duration_text(DURATIONS[i].s);
        cr_expect(strcmp(got, DURATIONS[i].printed) == 0, "%s: \"%s\", not \"%s\"",
                  DURATIONS[i].id, got, DURATIONS[i].printed);
    }
}

static const struct {
    const char *id;
    int64_t minor;
    int decimals;
    const char *printed;
} PRICES[] = {
    {"two places", 1450, 2, "14.50"},
    {"cents alone", 5, 2, "0.05"},
    {"tens of cents", 50, 2, "0.50"},
    {"nothing", 0, 2, "0.00"},
    {"negative", -1450, 2, "-14.50"},
    {"negative cents", -5, 2, "-0.05"},
    {"no places", 1234, 0, "1234"},
    {"no places, nothing", 0, 0, "0"},
    {"no places, negative", -7, 0, "-7"},
    {"one place", 145, 1, "14.5"},
    {"three places", 1234, 3, "1.234"},
    {"three places, small", 7, 3, "0.007"},
    {"the most", INT64_MAX, 2, "92233720368547758.07"},
    {"the least but one", -INT64_MAX, 2, "-92233720368547758.07"},
};

static const char *money_text(int64_t minor, int decimals) {
    gb_text text;
    gb_text_init(&text, &arena);
    gb_print_money(&text, (gb_money){minor}, decimals);
    return gb_text_get(&text);
}

Test(print, money) {
    for (size_t i = 0; i < sizeof PRICES / sizeof PRICES[0]; i++) {
        const char *got = money_text(PRICES[i].minor, PRICES[i].decimals);
        cr_expect(strcmp(got, PRICES[i].printed) == 0, "%s: \"%s\", not \"%s\"",
                  PRICES[i].id, got, PRICES[i].printed);
    }
}

/* By itself, because its negation does not exist. */
Test(print, the_least_money) {
    const char *got = money_text(INT64_MIN, 2);
    cr_expect(strcmp(got, "-92233720368547758.08") == 0, "\"%s\"", got);
}

/* ---- there and back ---------------------------------------------------------------- */

Test(print, every_sixteenth_of_an_inch_comes_back) {
    for (int k = 1; k <= 20 * 12 * 16; k++) {
        const char *printed = length_text(k * IN / 16, GB_US);
        double si = 0;
        gb_fault fault = gb_parse(GB_LENGTH, printed, &si);
        cr_expect(fault == GB_NO_FAULT, "%d sixteenths: \"%s\"", k, printed);
        cr_expect(fabs(si * 16 / IN - k) < 1e-9, "%d sixteenths: \"%s\" is %.17g", k,
                  printed, si);
    }
}

Test(print, every_millimetre_comes_back) {
    for (int k = 1; k <= 3000; k++) {
        const char *printed = length_text(k / 1000.0, GB_METRIC);
        double si = 0;
        gb_fault fault = gb_parse(GB_LENGTH, printed, &si);
        cr_expect(fault == GB_NO_FAULT, "%d mm: \"%s\"", k, printed);
        cr_expect(fabs(si * 1000 - k) < 1e-9, "%d mm: \"%s\" is %.17g", k, printed, si);
    }
}

Test(print, every_minute_up_to_72_h_comes_back) {
    for (int k = 1; k <= 72 * 60; k++) {
        const char *printed = duration_text(k * 60.0);
        double s = 0;
        gb_fault fault = gb_parse(GB_DURATION, printed, &s);
        cr_expect(fault == GB_NO_FAULT, "%d min: \"%s\"", k, printed);
        cr_expect(s == k * 60.0, "%d min: \"%s\" is %.17g s", k, printed, s);
    }
}

Test(print, every_day_up_to_a_year_comes_back) {
    for (int k = 1; k <= 366; k++) {
        const char *printed = duration_text(k * 86400.0);
        double s = 0;
        cr_expect(gb_parse(GB_DURATION, printed, &s) == GB_NO_FAULT, "\"%s\"", printed);
        cr_expect(s == k * 86400.0, "%d days: \"%s\" is %.17g s", k, printed, s);
    }
}

Test(print, every_degree_comes_back) {
    for (int k = -40; k <= 212; k++) {
        const char *printed = temp_text((k - 32) * 5 / 9.0, GB_US);
        double c = 0;
        cr_expect(gb_parse(GB_TEMP, printed, &c) == GB_NO_FAULT, "\"%s\"", printed);
        cr_expect(fabs(c - (k - 32) * 5 / 9.0) < 1e-12, "%d F: \"%s\"", k, printed);
    }
}

Test(print, prices_come_back) {
    for (int decimals = 0; decimals <= 3; decimals++)
        for (int64_t minor = 0; minor <= 20000; minor += 7) {
            const char *printed = money_text(minor, decimals);
            gb_money money = {-1};
            gb_fault fault = gb_parse_money(printed, decimals, &money);
            cr_expect(fault == GB_NO_FAULT && money.minor == minor, "%d decimals: \"%s\"",
                      decimals, printed);
        }
}
