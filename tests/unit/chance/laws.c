/* Laws of the normal and of Student's t. */
#include "gaugebox/chance.h"

#include "unit/plan/fixture.h"

#include <criterion/criterion.h>

static const double PI = 3.14159265358979323846;
static const size_t DF[] = {1, 2, 3, 4, 5, 10, 31, 100, 400, 999, 1000, 1001, 100000};

/* df 0 stands for the normal. */
static double below(double t, size_t df) {
    return df == 0 ? gb_normal_below(t) : gb_t_below(t, df);
}

static double at(double share, size_t df) {
    return df == 0 ? gb_normal_at(share) : gb_t_at(share, df);
}

static void check_symmetry(size_t df) {
    for (double t = 0; t < 9; t += 0.0137)
        cr_assert(fx_near(below(t, df) + below(-t, df), 1, 3e-16), "%g, df %zu", t, df);
    for (size_t i = 1; i < 512; i++) /* shares whose rest is exact */
        cr_assert(at((double)i / 1024, df) == -at(1 - (double)i / 1024, df), "%zu, %zu",
                  i, df);
    cr_expect(at(0.5, df) == 0 && below(0, df) == 0.5, "df %zu", df);
}

Test(chance, the_same_on_both_sides) {
    check_symmetry(0);
    for (size_t d = 0; d < ROWS_OF(DF); d++)
        check_symmetry(DF[d]);
}

/* Also where one way of computing ends and another begins, at 2 and at the angle of 45
   degrees. Steps are wider than the last bits of a share near one. */
static void check_rising(size_t df) {
    double before = -1;
    for (double t = -9; t < 7; t += 1e-3) {
        double share = below(t, df);
        cr_assert(share > before && share < 1, "%g, df %zu", t, df);
        before = share;
    }
    before = -INFINITY;
    for (double share = 1e-4; share < 1; share += 1.03e-3) {
        double t = at(share, df);
        cr_assert(t > before && isfinite(t), "%g, df %zu", share, df);
        before = t;
    }
}

Test(chance, rises_all_the_way) {
    check_rising(0);
    for (size_t d = 0; d < ROWS_OF(DF); d++)
        check_rising(DF[d]);
}

static void check_round_trip(size_t df, fx_random *r) {
    for (size_t k = 0; k < 300; k++) {
        double share = fx_between(r, 0, 1);
        share = k % 3 == 0 ? share * share * share * 1e-6 : share;
        if (share <= 0)
            continue;
        double back = below(at(share, df), df);
        cr_assert(fx_near(back, share, 5e-13 * share + 2e-16), "%g, df %zu: %g", share,
                  df, back);
    }
}

Test(chance, a_quantile_gives_its_share_back) {
    fx_random r = fx_seeded(61);
    check_round_trip(0, &r);
    for (size_t d = 0; d < ROWS_OF(DF); d++)
        check_round_trip(DF[d], &r);
}

/* Closed forms that need no sum: df 1 (Cauchy), df 2. */
Test(chance, few_degrees_in_closed_form) {
    for (double t = -50; t <= 50; t += 0.0531) {
        cr_assert(fx_near(gb_t_below(t, 1), 0.5 + atan(t) / PI, 1e-15), "%g", t);
        cr_assert(fx_near(gb_t_below(t, 2), 0.5 + t / (2 * sqrt(2 + t * t)), 1e-15), "%g",
                  t);
    }
    cr_expect(fx_same(gb_t_at(1e-200, 1) * PI, -1e200), "1 / (pi t) far out");
}

Test(chance, as_erfc_of_libm) {
    for (double z = -37; z <= 8; z += 0.00731) {
        double want = erfc(-z / sqrt(2)) / 2;
        /* libm loses in z / sqrt 2 what a far tail multiplies by z^2. */
        double slack = 1e-13 + 4e-16 * z * z;
        cr_assert(fx_near(gb_normal_below(z), want, slack * want), "%g", z);
    }
}

/* More degrees of freedom have thinner tails, and the normal the thinnest; the difference
   falls as 1 / df. */
Test(chance, t_goes_towards_the_normal) {
    for (double share = 0.55; share < 0.9995; share += 0.0125) {
        double normal = gb_normal_at(share);
        double before = INFINITY;
        for (size_t df = 1; df <= 1000; df += 1 + df / 7) {
            double t = gb_t_at(share, df);
            cr_assert(t < before && t > normal, "%g, df %zu", share, df);
            before = t;
        }
        /* t - z = (z^3 + z) / (4 df) + ..., Abramowitz and Stegun 26.7.5 */
        double first = (normal * normal * normal + normal) / 4;
        double off = (gb_t_at(share, 100000) - normal) * 100000;
        cr_assert(fx_near(off, first, 1e-3), "%g: %g, %g", share, off, first);
    }
}

/* Where sums of terms end and Hill's normal begins, at 1000 degrees, the share runs on as
   smoothly as before: second differences of its logarithm stay the same but for the
   rounding of the sums. */
static double curve(double t, size_t df) {
    return log(gb_t_below(t, df - 1)) - 2 * log(gb_t_below(t, df)) +
           log(gb_t_below(t, df + 1));
}

Test(chance, no_step_between_two_ways) {
    for (double t = -8; t < 0; t += 0.05) {
        double before = curve(t, 998);
        double across[] = {curve(t, 1000), curve(t, 1001)};
        for (size_t i = 0; i < 2; i++)
            cr_assert(fx_near(across[i], before, 1e-2 * fabs(before) + 5e-12),
                      "%g: %g, %g", t, across[i], before);
    }
}

Test(chance, what_is_no_number) {
    static const double NONE[] = {0, -0.5, 1, 1.5, NAN, INFINITY, -INFINITY};
    for (size_t i = 0; i < ROWS_OF(NONE); i++) {
        cr_expect(isnan(gb_normal_at(NONE[i])), "%g", NONE[i]);
        cr_expect(isnan(gb_t_at(NONE[i], 1)) && isnan(gb_t_at(NONE[i], 5000)), "%g",
                  NONE[i]);
    }
    cr_expect(isnan(gb_t_below(1, 0)) && isnan(gb_t_at(0.9, 0)), "no degrees");
    for (size_t df = 0; df <= 2000; df += 250) {
        cr_expect(isnan(below(NAN, df)), "df %zu", df);
        cr_expect(below(INFINITY, df) == 1 && below(-INFINITY, df) == 0, "df %zu", df);
        cr_expect(below(1e300, df) == 1 && below(-1e300, df) >= 0, "df %zu", df);
    }
    cr_expect(gb_t_below(1, SIZE_MAX) == gb_normal_below(1));
    cr_expect(gb_t_at(5e-324, 7) < -1e40 && isfinite(gb_normal_at(5e-324)), "the least");
}
