#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <float.h>
#include <math.h>

#include "gaugebox/count.h"

enum { UNTOUCHED = 777 };

Test(count, up_takes_exact_multiples_as_they_are) {
    /* n * each / each is off by a rounding for many n: plain ceil would add one. */
    for (int n = 1; n <= 5000; n++) {
        double each = 0.1 + n * 0.0007;
        double sum = 0;
        for (int k = 0; k < n % 50 + 1; k++)
            sum += each;
        size_t count = 0;
        cr_expect(gb_count_up(sum, each, &count) == GB_OK, "n %d", n);
        cr_expect(count == (size_t)(n % 50 + 1), "n %d: %zu", n, count);
    }
}

/* Expected counts are those of exact arithmetic on the decimal numbers as written. */
static const struct {
    const char *id;
    double need;
    double each;
    gb_status status;
    size_t up;
    size_t down;
} COUNTS[] = {
    {"nothing", 0, 2, GB_OK, 0, 0},
    {"minus nothing", -0.0, 2, GB_OK, 0, 0},
    {"one", 2, 2, GB_OK, 1, 1},
    {"a half", 1, 2, GB_OK, 1, 0},
    {"a millionth", 1e-6, 1, GB_OK, 1, 0},
    {"one and a half", 3, 2, GB_OK, 2, 1},
    {"0.3 of 0.1", 0.3, 0.1, GB_OK, 3, 3},
    {"0.7 of 0.1", 0.7, 0.1, GB_OK, 7, 7},
    {"sum of tenths", 0.1 + 0.2, 0.1, GB_OK, 3, 3},
    {"sum of tenths to 0.6", 0.1 + 0.2 + 0.3, 0.1, GB_OK, 6, 6},
    {"1.1 of 1.1/3", 1.1, 1.1 / 3, GB_OK, 3, 3},
    {"4.35 of 0.01", 4.35, 0.01, GB_OK, 435, 435},
    {"1.15 of 0.01", 1.15, 0.01, GB_OK, 115, 115},
    {"just over 3", 3 * (1 + 1e-6), 1, GB_OK, 4, 3},
    {"just under 3", 3 * (1 - 1e-6), 1, GB_OK, 3, 2},
    {"just over 0.3 of 0.1", 0.3 * (1 + 1e-6), 0.1, GB_OK, 4, 3},
    {"just under 0.3 of 0.1", 0.3 * (1 - 1e-6), 0.1, GB_OK, 3, 2},
    {"over 3 by less than the tolerance", 3 * (1 + 0.5e-9), 1, GB_OK, 3, 3},
    {"under 3 by less than the tolerance", 3 * (1 - 0.5e-9), 1, GB_OK, 3, 3},
    {"over 3 by twice the tolerance", 3 * (1 + 2e-9), 1, GB_OK, 4, 3},
    {"under 3 by twice the tolerance", 3 * (1 - 2e-9), 1, GB_OK, 3, 2},
    {"over 1000 by less than the tolerance", 1000 * (1 + 0.5e-9), 1, GB_OK, 1000, 1000},
    {"over 1000 by twice the tolerance", 1000 * (1 + 2e-9), 1, GB_OK, 1001, 1000},
    {"tiny units", 3e-300, 1e-300, GB_OK, 3, 3},
    {"huge units", 3e300, 1e300, GB_OK, 3, 3},
    {"one million", 1e6, 1, GB_OK, 1000000, 1000000},
    {"the most units", 1e9, 1, GB_OK, 1000000000, 1000000000},
    {"over the most", 1e9 + 10, 1, GB_OVERFLOW, 0, 0},
    {"1e10 units", 1e10, 1, GB_OVERFLOW, 0, 0},
    {"a quotient that is infinite", 1e300, 1e-300, GB_OVERFLOW, 0, 0},
    {"largest by smallest", DBL_MAX, DBL_MIN, GB_OVERFLOW, 0, 0},
    {"negative need", -1, 2, GB_NOT_POSITIVE, 0, 0},
    {"slightly negative need", -1e-12, 2, GB_NOT_POSITIVE, 0, 0},
    {"units of nothing", 1, 0, GB_NOT_POSITIVE, 0, 0},
    {"nothing in units of nothing", 0, 0, GB_NOT_POSITIVE, 0, 0},
    {"negative units", 1, -2, GB_NOT_POSITIVE, 0, 0},
    {"both negative", -4, -2, GB_NOT_POSITIVE, 0, 0},
    {"need is NaN", NAN, 2, GB_NOT_POSITIVE, 0, 0},
    {"units are NaN", 2, NAN, GB_NOT_POSITIVE, 0, 0},
    {"need is infinite", INFINITY, 2, GB_NOT_POSITIVE, 0, 0},
    {"need is minus infinite", -INFINITY, 2, GB_NOT_POSITIVE, 0, 0},
    {"units are infinite", 2, INFINITY, GB_NOT_POSITIVE, 0, 0},
    {"both infinite", INFINITY, INFINITY, GB_NOT_POSITIVE, 0, 0},
};

Test(count, rows_of_up_and_down) {
    for (size_t i = 0; i < sizeof COUNTS / sizeof COUNTS[0]; i++) {
        size_t up = UNTOUCHED;
        size_t down = UNTOUCHED;
        bool good = COUNTS[i].status == GB_OK;
        gb_status status = gb_count_up(COUNTS[i].need, COUNTS[i].each, &up);
        cr_expect(status == COUNTS[i].status, "up, %s: status %d", COUNTS[i].id, status);
        status = gb_count_down(COUNTS[i].need, COUNTS[i].each, &down);
        cr_expect(status == COUNTS[i].status, "down, %s: status %d", COUNTS[i].id,
                  status);
        cr_expect(up == (good ? COUNTS[i].up : UNTOUCHED), "up, %s: %zu", COUNTS[i].id,
                  up);
        cr_expect(down == (good ? COUNTS[i].down : UNTOUCHED), "down, %s: %zu",
                  COUNTS[i].id, down);
    }
}

/* A plain sequence of numbers in 0 to 1, the same on every machine (Numerical Recipes'
   constants for a linear congruential generator). */
static double next_share(uint32_t *state) {
    *state = *state * 1664525u + 1013904223u;
    return *state / 4294967296.0;
}

Test(count, down_is_never_over_up) {
    uint32_t state = 1;
    for (int i = 0; i < 20000; i++) {
        double need = next_share(&state) * 1000;
        double each = 0.01 + next_share(&state);
        size_t up = 0;
        size_t down = 0;
        cr_assert(gb_count_up(need, each, &up) == GB_OK, "%.17g by %.17g", need, each);
        cr_assert(gb_count_down(need, each, &down) == GB_OK, "%.17g by %.17g", need,
                  each);
        cr_expect(down <= up && up <= down + 1, "%.17g by %.17g: %zu and %zu", need, each,
                  down, up);
        cr_expect(up * each >= need * (1 - 1e-8), "%.17g by %.17g", need, each);
        cr_expect(down * each <= need * (1 + 1e-8), "%.17g by %.17g", need, each);
    }
}

Test(count, more_need_never_takes_fewer) {
    uint32_t state = 2;
    for (int i = 0; i < 20; i++) {
        double each = 0.05 + next_share(&state);
        size_t up_before = 0;
        size_t down_before = 0;
        double need = 0;
        for (int k = 0; k < 1000; k++) {
            size_t up = 0;
            size_t down = 0;
            need += k % 3 == 0 ? each * 1e-9 : next_share(&state) * each;
            cr_assert(gb_count_up(need, each, &up) == GB_OK, "%.17g", need);
            cr_assert(gb_count_down(need, each, &down) == GB_OK, "%.17g", need);
            cr_expect(up >= up_before, "%.17g by %.17g", need, each);
            cr_expect(down >= down_before, "%.17g by %.17g", need, each);
            up_before = up;
            down_before = down;
        }
    }
}

Test(count, larger_units_never_take_more) {
    for (int i = 1; i < 2000; i++) {
        size_t few = 0;
        size_t many = 0;
        cr_assert(gb_count_up(100, 0.1 * (i + 1), &few) == GB_OK, "%d", i);
        cr_assert(gb_count_up(100, 0.1 * i, &many) == GB_OK, "%d", i);
        cr_expect(few <= many, "units of %d tenths: %zu and %zu", i, few, many);
    }
}

static const struct {
    const char *id;
    double value;
    double limit;
    bool over;
    bool under;
} LIMITS[] = {
    {"the limit itself", 100, 100, false, false},
    {"clearly over", 101, 100, true, false},
    {"clearly under", 99, 100, false, true},
    {"over within the tolerance", 100 * (1 + 0.9e-9), 100, false, false},
    {"under within the tolerance", 100 * (1 - 0.9e-9), 100, false, false},
    {"over by more", 100 * (1 + 1.1e-9), 100, true, false},
    {"under by more", 100 * (1 - 1.1e-9), 100, false, true},
    {"sum of tenths", 0.1 + 0.2, 0.3, false, false},
    {"40 F by one formula", (40 - 32) * 5.0 / 9.0, (40 - 32) / 1.8, false, false},
    {"40 F by another", (40 - 32) * (5.0 / 9.0), (40 - 32) / 1.8, false, false},
    {"zero and zero", 0, 0, false, false},
    {"minus zero", -0.0, 0, false, false},
    {"over zero", 1e-6, 0, true, false},
    {"under zero", -1e-6, 0, false, true},
    {"over a negative limit", -40 * (1 - 1.1e-9), -40, true, false},
    {"under a negative limit", -40 * (1 + 1.1e-9), -40, false, true},
    {"a negative limit, within", -40 * (1 + 0.9e-9), -40, false, false},
    {"NaN", NAN, 100, false, false},
    {"a limit of NaN", 100, NAN, false, false},
    {"infinite", INFINITY, 100, true, false},
    {"minus infinite", -INFINITY, 100, false, true},
    {"no upper limit", 100, INFINITY, false, true},
    {"no lower limit", 100, -INFINITY, true, false},
};

Test(count, rows_of_over_and_under) {
    for (size_t i = 0; i < sizeof LIMITS / sizeof LIMITS[0]; i++) {
        cr_expect(gb_over(LIMITS[i].value, LIMITS[i].limit) == LIMITS[i].over, "over, %s",
                  LIMITS[i].id);
        cr_expect(gb_under(LIMITS[i].value, LIMITS[i].limit) == LIMITS[i].under,
                  "under, %s", LIMITS[i].id);
    }
}

static const struct {
    const char *id;
    double value;
    double step;
    double nearest;
    double down;
    double up;
} ROUNDS[] = {
    {"zero", 0, 0.5, 0, 0, 0},
    {"a multiple", 1.5, 0.5, 1.5, 1.5, 1.5},
    {"a multiple in tenths", 0.3, 0.1, 0.3, 0.3, 0.3},
    {"a sum in tenths", 0.1 + 0.2, 0.1, 0.3, 0.3, 0.3},
    {"a half of the step", 2.5, 1, 3, 2, 3},
    {"a half below zero", -2.5, 1, -3, -3, -2},
    {"under the half", 2.4, 1, 2, 2, 3},
    {"over the half", 2.6, 1, 3, 2, 3},
    {"sixteenths", 6.4, 0.0625, 6.375, 6.375, 6.4375},
    {"eighths", 2.3, 0.125, 2.25, 2.25, 2.375},
    {"quarters", 7.9, 0.25, 8.0, 7.75, 8.0},
    {"steps of five", 12, 5, 10, 10, 15},
    {"a multiple within the tolerance, over", 3 * (1 + 0.5e-9), 1, 3, 3, 3},
    {"a multiple within the tolerance, under", 3 * (1 - 0.5e-9), 1, 3, 3, 3},
    {"over a multiple by a millionth", 3 * (1 + 1e-6), 1, 3, 3, 4},
    {"under a multiple by a millionth", 3 * (1 - 1e-6), 1, 3, 2, 3},
    {"negative", -1.2, 0.5, -1.0, -1.5, -1.0},
};

Test(count, rows_of_rounding) {
    for (size_t i = 0; i < sizeof ROUNDS / sizeof ROUNDS[0]; i++) {
        const double wanted[] = {ROUNDS[i].nearest, ROUNDS[i].down, ROUNDS[i].up};
        const gb_rounding ways[] = {GB_NEAREST, GB_DOWN, GB_UP};
        for (size_t k = 0; k < 3; k++) {
            double got = gb_round(ROUNDS[i].value, ROUNDS[i].step, ways[k]);
            cr_expect(fabs(got - wanted[k]) <= 1e-12 * fabs(wanted[k]),
                      "%s, way %zu: %.17g", ROUNDS[i].id, k, got);
        }
    }
    cr_expect(isnan(gb_round(NAN, 1, GB_UP)), "NaN stays NaN");
    cr_expect(gb_round(INFINITY, 1, GB_DOWN) == INFINITY, "infinity stays infinite");
}

Test(count, rounding_down_nearest_and_up_keep_their_order) {
    uint32_t state = 3;
    for (int i = 0; i < 20000; i++) {
        double value = next_share(&state) * 100;
        double step = 0.01 + next_share(&state);
        double down = gb_round(value, step, GB_DOWN);
        double nearest = gb_round(value, step, GB_NEAREST);
        double up = gb_round(value, step, GB_UP);
        cr_expect(down <= nearest && nearest <= up, "%.17g by %.17g", value, step);
        cr_expect(fabs(nearest - value) <= step * 0.5000001, "%.17g by %.17g", value,
                  step);
        cr_expect(up - down <= step * 1.0000001, "%.17g by %.17g", value, step);
    }
}
