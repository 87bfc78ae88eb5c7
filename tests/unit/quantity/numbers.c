#include "gaugebox/text.h"
#include "unit/quantity/supply.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <float.h>
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

TestSuite(numbers, .init = begin, .fini = end);

static const struct {
    const char *id;
    double value;
    int decimals;
    const char *printed;
} FIXED[] = {
    {"zero", 0, 0, "0"},
    {"zero with places", 0, 2, "0.00"},
    {"minus zero", -0.0, 1, "0.0"},
    {"0.5", 0.5, 0, "1"},
    {"1.5", 1.5, 0, "2"},
    {"2.5", 2.5, 0, "3"},
    {"-0.5", -0.5, 0, "-1"},
    {"-2.5", -2.5, 0, "-3"},
    {"under a half", 0.499999, 0, "0"},
    {"under a half below zero", -0.499999, 0, "0"},
    {"under a half in cents", 1.00499, 2, "1.00"},
    {"-0.4 has no sign left", -0.4, 0, "0"},
    {"0.125", 0.125, 2, "0.13"},
    {"-0.125", -0.125, 2, "-0.13"},
    {"0.375", 0.375, 2, "0.38"},
    /* The double next to 2.675 lies 1.8e-16 below it, but times 100 it is 267.5 exactly,
       and that half goes up: what a person with 2.675 on paper expects. */
    {"2.675", 2.675, 2, "2.68"},
    /* Written as a half, although the double is 1.00499999999999989 and stays below it
       when multiplied. */
    {"1.005", 1.005, 2, "1.01"},
    {"0.1 + 0.2", 0.1 + 0.2, 1, "0.3"},
    {"carries over the point", 999.999, 2, "1000.00"},
    {"0.999", 0.999, 2, "1.00"},
    {"zeros behind the point", 3.00005, 4, "3.0001"},
    {"one place", 3.25, 1, "3.3"},
    {"small", 0.001, 2, "0.00"},
    {"small and negative", -0.001, 2, "0.00"},
    {"six places", 123456.789, 6, "123456.789000"},
    {"a millionth", 1e-6, 6, "0.000001"},
    {"negative", -12.34, 2, "-12.34"},
    {"ten digits", 60000000, 2, "60000000.00"},
    {"eleven digits", 12345678.9, 3, "12345678.900"},
    {"negative, ten digits", -60000000, 2, "-60000000.00"},
    {"fifteen digits", 123456789012345, 0, "123456789012345"},
    {"large", 8e14, 1, "800000000000000.0"},
    {"half of a large one", 4503599627370495.5, 0, "4503599627370496"},
    {"beyond 9e15", 1e18, 0, "?"},
    {"beyond -9e15", -1e18, 0, "?"},
    {"1e12 to six places is beyond 9e15", 1e12, 6, "?"},
    {"1e19, no int64 holds it", 1e19, 0, "?"},
    {"1e18 to two places", 1e18, 2, "?"},
    {"1e300", 1e300, 0, "?"},
    {"overflows when scaled", 1e308, 6, "?"},
    {"NaN", NAN, 2, "?"},
    {"infinity", INFINITY, 2, "?"},
    {"minus infinity", -INFINITY, 0, "?"},
};

Test(numbers, fixed) {
    for (size_t i = 0; i < sizeof FIXED / sizeof FIXED[0]; i++) {
        gb_text text;
        gb_text_init(&text, &arena);
        gb_text_add_fixed(&text, FIXED[i].value, FIXED[i].decimals);
        cr_expect(strcmp(gb_text_get(&text), FIXED[i].printed) == 0, "%s: \"%s\"",
                  FIXED[i].id, gb_text_get(&text));
    }
}

static const struct {
    const char *id;
    double value;
    int parts;
    const char *printed;
} FRACTIONS[] = {
    {"zero", 0, 16, "0"},
    {"minus zero", -0.0, 16, "0"},
    {"whole", 7, 8, "7"},
    {"a half of halves", 0.5, 2, "1/2"},
    {"a half of sixteenths", 0.5, 16, "1/2"},
    {"four and a half", 4.5, 2, "4-1/2"},
    {"lowest terms of eighths", 4.5, 8, "4-1/2"},
    {"lowest terms of sixteenths", 6.75, 16, "6-3/4"},
    {"quarters", 0.75, 4, "3/4"},
    {"eighths", 2.375, 8, "2-3/8"},
    {"a sixteenth", 0.0625, 16, "1/16"},
    {"fifteen sixteenths", 11.9375, 16, "11-15/16"},
    {"negative fraction", -0.25, 4, "-1/4"},
    {"negative mixed", -4.5, 2, "-4-1/2"},
    {"negative whole", -3, 4, "-3"},
    {"large", 123456789.5, 2, "123456789-1/2"},
    {"a rounding below a whole", 3 * (1 - DBL_EPSILON), 16, "3"},
    {"a rounding below a half", 4.5 * (1 - DBL_EPSILON), 16, "4-1/2"},
    {"a rounding above a half", 4.5 * (1 + DBL_EPSILON), 16, "4-1/2"},
    {"NaN", NAN, 2, "?"},
    {"infinity", INFINITY, 2, "?"},
    {"minus infinity", -INFINITY, 16, "?"},
    {"1e300", 1e300, 16, "?"},
    {"overflows in parts", 1.7e308, 16, "?"},
};

Test(numbers, fractions) {
    for (size_t i = 0; i < sizeof FRACTIONS / sizeof FRACTIONS[0]; i++) {
        gb_text text;
        gb_text_init(&text, &arena);
        gb_text_add_fraction(&text, FRACTIONS[i].value, FRACTIONS[i].parts);
        cr_expect(strcmp(gb_text_get(&text), FRACTIONS[i].printed) == 0, "%s: \"%s\"",
                  FRACTIONS[i].id, gb_text_get(&text));
    }
}

static const struct {
    int64_t value;
    const char *printed;
} WHOLES[] = {
    {0, "0"},
    {7, "7"},
    {10, "10"},
    {-1, "-1"},
    {-100, "-100"},
    {1234567890, "1234567890"},
    {INT64_MAX, "9223372036854775807"},
    {INT64_MIN, "-9223372036854775808"},
    {-INT64_MAX, "-9223372036854775807"},
};

Test(numbers, wholes) {
    for (size_t i = 0; i < sizeof WHOLES / sizeof WHOLES[0]; i++) {
        gb_text text;
        gb_text_init(&text, &arena);
        gb_text_add_int(&text, WHOLES[i].value);
        cr_expect(strcmp(gb_text_get(&text), WHOLES[i].printed) == 0, "%s: \"%s\"",
                  WHOLES[i].printed, gb_text_get(&text));
    }
}
