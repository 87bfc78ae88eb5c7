/* Bags to come by the batches so far: tables worked by hand, laws, and a simulation. */
#include "gaugebox/forecast.h"

#include "unit/plan/fixture.h"

#include <criterion/criterion.h>

enum { RUNS = 2000, BATCHES = 8 };

/* ---- worked by hand ---------------------------------------------------------------- */

/* Deviations are given as squares, which are whole fractions. */
static const struct worked {
    const char *id;
    size_t count;
    gb_batch_made batches[4];
    double left, batch, planned_ratio, planned_spread;
    double ratio, bags, variance;
    size_t df;
} WORKED[] = {
    /* K = 10/8; e = -1/2, 0, 1/2, 0; s^2 = 1/6; m = 10 / 2.5
       (8/8)^2 4/6 + 4/6 = 4/3 */
    {"equal works",
     4,
     {{2, 2}, {2.5, 2}, {3, 2}, {2.5, 2}},
     8,
     2.5,
     1.1,
     0.2,
     1.25,
     10,
     4.0 / 3,
     3},
    /* K = 10/8.5 = 20/17; e = 1/17, -9/17, 8/17; s^2 = 146/289/2 = 73/289; m = 20 / 4
       (17/8.5)^2 3 73/289 + 5 73/289 = 17 73/289 = 73/17 */
    {"unequal works",
     3,
     {{3, 2.5}, {3, 3}, {4, 3}},
     17,
     4,
     1.1,
     0.2,
     20.0 / 17,
     20,
     73.0 / 17,
     2},
    /* K = 3/2; e = -1/2, 1, -1/2; s^2 = 3/4; m = 6
       (4/2)^2 3 3/4 + 6 3/4 = 27/2 */
    {"a batch thrown away", 3, {{1, 1}, {1, 0}, {1, 1}}, 4, 1, 1.1, 0.2, 1.5, 6, 13.5, 2},
    {"batches that agree", 2, {{2, 1}, {4, 2}}, 10, 2, 1.1, 0.2, 2, 20, 0, 1},
    {"nothing left", 2, {{2, 1}, {3, 1}}, 0, 2, 1.1, 0.2, 2.5, 0, 0, 1},
    /* sd = 0.2 15 = 3 */
    {"one batch", 1, {{3, 2}}, 10, 2, 1.1, 0.2, 1.5, 15, 9, 0},
    /* sd = 0.2 11 = 2.2 */
    {"none so far", 0, {{0, 0}}, 10, 2, 1.1, 0.2, 1.1, 11, 4.84, 0},
    {"all thrown away", 2, {{3, 0}, {2, 0}}, 10, 2, 1.1, 0.2, 1.1, 11, 4.84, 0},
    {"a plan that is sure", 0, {{0, 0}}, 10, 2, 1.1, 0, 1.1, 11, 0, 0},
};

Test(forecast, worked_by_hand) {
    for (size_t i = 0; i < ROWS_OF(WORKED); i++) {
        const struct worked *w = &WORKED[i];
        gb_progress p = {w->batches, w->count,         w->left,
                         w->batch,   w->planned_ratio, {w->planned_spread}};
        gb_forecast f = {0};
        cr_assert(gb_make_forecast(&p, &f) == GB_OK, "%s", w->id);
        cr_expect(fx_near(f.ratio, w->ratio, 1e-14), "%s: K %.15g", w->id, f.ratio);
        cr_expect(fx_near(f.bags, w->bags, 1e-13), "%s: %.15g bags", w->id, f.bags);
        cr_expect(fx_near(f.deviation * f.deviation, w->variance, 1e-13), "%s: %.15g",
                  w->id, f.deviation * f.deviation);
        cr_expect(f.df == w->df, "%s: df %zu", w->id, f.df);
    }
}

/* Quantiles as tables print them to three places (from memory). */
static const struct bound {
    gb_forecast forecast;
    double share, bags, tolerance;
} BOUNDS[] = {
    {{1, 20, 2, 2}, 0.90, 20 + 1.886 * 2, 0.001},
    {{1, 20, 2, 3}, 0.95, 20 + 2.353 * 2, 0.001},
    {{1, 20, 2, 10}, 0.975, 20 + 2.228 * 2, 0.001},
    {{1, 20, 2, 0}, 0.90, 20 + 1.2816 * 2, 0.0001},
    {{1, 20, 2, 0}, 0.50, 20, 1e-12},
    {{1, 20, 0, 5}, 0.99, 20, 1e-12},
    {{1, 20, 2, 1}, 0.01, 0, 1e-12}, /* 20 - 31.821 2, below zero */
};

Test(forecast, bounds_of_tables) {
    for (size_t i = 0; i < ROWS_OF(BOUNDS); i++) {
        const struct bound *b = &BOUNDS[i];
        double bags = gb_bags_at(&b->forecast, (gb_share){b->share});
        cr_expect(fx_near(bags, b->bags, b->tolerance), "row %zu: %g", i, bags);
    }
}

/* ---- laws -------------------------------------------------------------------------- */

static gb_progress random_progress(fx_random *r, gb_batch_made batches[BATCHES]) {
    gb_progress p = {.batches = batches, .batch_count = fx_whole(r, 0, BATCHES)};
    for (size_t i = 0; i < p.batch_count; i++) {
        double work = fx_whole(r, 0, 9) == 0 ? 0 : fx_between(r, 0.5, 4);
        batches[i] = (gb_batch_made){fx_between(r, 0.5, 5), work};
    }
    p.left = fx_between(r, 0, 60);
    p.batch = fx_between(r, 0.5, 5);
    p.planned_ratio = fx_between(r, 1, 1.4);
    p.planned_spread.of_one = fx_between(r, 0, 0.3);
    return p;
}

static gb_forecast made(const gb_progress *p) {
    gb_forecast f = {0};
    cr_assert(gb_make_forecast(p, &f) == GB_OK);
    return f;
}

/* `bags` times as many bags in all that is counted in bags; and work counted in another
   unit, of which there are `work` times as many. */
static gb_progress scaled(const gb_progress *p, gb_batch_made to[BATCHES], double bags,
                          double work) {
    gb_progress other = *p;
    for (size_t i = 0; i < p->batch_count; i++)
        to[i] = (gb_batch_made){bags * p->batches[i].bags, work * p->batches[i].work};
    other.batches = to;
    other.left *= work;
    other.batch *= bags;
    other.planned_ratio *= bags / work;
    return other;
}

Test(forecast, units_of_bags_and_of_work) {
    fx_random r = fx_seeded(81);
    for (size_t k = 0; k < RUNS; k++) {
        gb_batch_made batches[BATCHES], others[BATCHES];
        gb_progress p = random_progress(&r, batches);
        gb_forecast f = made(&p);
        double c = fx_between(&r, 0.1, 20), d = fx_between(&r, 0.1, 20);
        gb_progress q = scaled(&p, others, c, d);
        gb_forecast g = made(&q);
        cr_assert(fx_near(g.ratio, f.ratio * c / d, 1e-12 * g.ratio), "run %zu", k);
        cr_assert(fx_near(g.bags, c * f.bags, 1e-12 * g.bags), "run %zu", k);
        cr_assert(fx_near(g.deviation, c * f.deviation, 1e-12 * (g.bags + g.deviation)),
                  "run %zu", k);
        cr_assert(g.df == f.df);
    }
}

Test(forecast, order_of_batches_does_not_matter) {
    fx_random r = fx_seeded(82);
    for (size_t k = 0; k < RUNS; k++) {
        gb_batch_made batches[BATCHES], turned[BATCHES];
        gb_progress p = random_progress(&r, batches), q = p;
        for (size_t i = 0; i < p.batch_count; i++)
            turned[i] = batches[p.batch_count - 1 - i];
        q.batches = turned;
        gb_forecast f = made(&p), g = made(&q);
        cr_assert(fx_near(f.bags, g.bags, 1e-12 * f.bags) &&
                  fx_near(f.deviation, g.deviation, 1e-12 * (f.bags + f.deviation)));
    }
}

/* More work takes more bags, and leaves more in doubt; larger batches scatter less often.
 */
Test(forecast, more_work_more_doubt) {
    fx_random r = fx_seeded(83);
    for (size_t k = 0; k < RUNS; k++) {
        gb_batch_made batches[BATCHES];
        gb_progress p = random_progress(&r, batches), more = p, larger = p;
        more.left += 1;
        larger.batch *= 2;
        gb_forecast f = made(&p), g = made(&more), h = made(&larger);
        cr_assert(g.bags > f.bags && g.deviation >= f.deviation, "run %zu", k);
        cr_assert(h.bags == f.bags && h.deviation <= f.deviation, "run %zu", k);
    }
}

Test(forecast, certainty_and_bags_undo_each_other) {
    fx_random r = fx_seeded(84);
    for (size_t k = 0; k < RUNS; k++) {
        gb_batch_made batches[BATCHES];
        gb_progress p = random_progress(&r, batches);
        gb_forecast f = made(&p);
        double share = fx_between(&r, 0.01, 0.99);
        double bags = gb_bags_at(&f, (gb_share){share});
        double surer = gb_bags_at(&f, (gb_share){share + 0.005});
        cr_assert(bags >= 0 && surer >= bags, "run %zu", k);
        if (bags <= 0 || f.deviation <= 0)
            continue;
        cr_assert(surer > bags, "run %zu", k);
        /* The last bit of the bags, in deviations, is what the share may be off. */
        double slack = 1e-12 + 4e-16 * f.bags / f.deviation;
        cr_assert(fx_near(gb_certainty(&f, bags).of_one, share, slack), "run %zu", k);
    }
}

Test(forecast, without_deviation) {
    gb_forecast sure = {.ratio = 1, .bags = 12, .deviation = 0, .df = 4};
    cr_expect(gb_certainty(&sure, 11.99).of_one == 0);
    cr_expect(gb_certainty(&sure, 12).of_one == 1);
    cr_expect(gb_certainty(&sure, 12 - 1e-12).of_one == 1, "the same but for rounding");
    cr_expect(gb_certainty(&sure, INFINITY).of_one == 1);
    cr_expect(isnan(gb_certainty(&sure, NAN).of_one));
    gb_forecast unsure = {.ratio = 1, .bags = 12, .deviation = 2, .df = 4};
    cr_expect(gb_certainty(&unsure, -0.1).of_one == 0);
    cr_expect(gb_certainty(&unsure, 12).of_one == 0.5);
    cr_expect(gb_certainty(&unsure, INFINITY).of_one == 1);
    cr_expect(isnan(gb_certainty(&unsure, NAN).of_one));
    for (size_t i = 0; i < FX_BADS; i++)
        cr_expect(isnan(gb_bags_at(&unsure, (gb_share){FX_BAD[i]})), "%g", FX_BAD[i]);
    cr_expect(isnan(gb_bags_at(&unsure, (gb_share){1})));
}

/* ---- simulation -------------------------------------------------------------------- */

/* Jobs of one kind: so many batches made, so many to come. Works of the batches made lie
   within `uneven` of 3 bags, those to come are 3 bags each. */
typedef struct sim_kind {
    const char *id;
    size_t made, coming;
    double uneven;
} sim_kind;

static const sim_kind SIM[] = {
    {"3 made, 5 to come", 3, 5, 0},   {"4 made, 20 to come", 4, 20, 0},
    {"8 made, 12 to come", 8, 12, 0}, {"8 uneven ones made, 12 to come", 8, 12, 0.6},
    {"2 made, 8 to come", 2, 8, 0},
};

enum { JOBS = 4000 };

static const double TRUE_RATIO = 1.15;
static const double TRUE_SCATTER = 0.3; /* bags */
static const double WORK = 3;

/* Box and Muller, by libm. */
static double normal(fx_random *r) {
    double u = fx_between(r, 1e-9, 1);
    return sqrt(-2 * log(u)) * cos(2 * 3.14159265358979323846 * fx_between(r, 0, 1));
}

typedef struct sim_sum {
    double off, off_squares, variances; /* bags taken less those foretold */
    size_t enough;                      /* jobs that the 90 % bound was enough for */
} sim_sum;

static void simulate(const sim_kind *kind, fx_random *r, sim_sum *sum) {
    gb_batch_made batches[BATCHES];
    for (size_t i = 0; i < kind->made; i++) {
        double work = WORK + fx_between(r, -kind->uneven, kind->uneven);
        batches[i] = (gb_batch_made){TRUE_RATIO * work + TRUE_SCATTER * normal(r), work};
    }
    gb_progress p = {.batches = batches,
                     .batch_count = kind->made,
                     .left = WORK * (double)kind->coming,
                     .batch = TRUE_RATIO * WORK,
                     .planned_ratio = 1};
    double taken = 0;
    for (size_t i = 0; i < kind->coming; i++)
        taken += TRUE_RATIO * WORK + TRUE_SCATTER * normal(r);
    gb_forecast f = made(&p);
    double off = taken - f.bags;
    sum->off += off / JOBS;
    sum->off_squares += off * off / JOBS;
    sum->variances += f.deviation * f.deviation / JOBS;
    sum->enough += taken <= gb_bags_at(&f, (gb_share){0.9});
}

/* Of 4000 jobs a share of 0.9 comes out within sqrt(0.9 0.1 / 4000) = 0.0047, and a
   variance within sqrt(2 / 4000) = 2.2 % where its forecast is steady; but s^2 of n - 1
   degrees is off by sqrt(2 / (n - 1)) in each job, its mean over 4000 by 1/63 of that.
   Tolerances are four of these. Uneven works add (their relative variance) / (n - 1) to
   s^2: 0.2 % here, within them. */
Test(forecast, as_simulated) {
    fx_random r = fx_seeded(85);
    for (size_t k = 0; k < ROWS_OF(SIM); k++) {
        sim_sum s = {0};
        for (size_t i = 0; i < JOBS; i++)
            simulate(&SIM[k], &r, &s);
        double enough = (double)s.enough / JOBS;
        double of_own = sqrt(2.0 / JOBS);
        double of_s2 = sqrt(2.0 / (double)(SIM[k].made - 1) / JOBS);
        double ratio = s.variances / s.off_squares;
        cr_log_info("%s: bound enough for %.4f, variance %.4f of what came, mean off %g",
                    SIM[k].id, enough, ratio, s.off);
        cr_expect(fx_near(enough, 0.9, 4 * 0.0047), "%s: %.4f", SIM[k].id, enough);
        cr_expect(fx_near(ratio, 1, 4 * sqrt(of_own * of_own + of_s2 * of_s2)),
                  "%s: %.4f", SIM[k].id, ratio);
        cr_expect(fx_near(s.off, 0, 4 * sqrt(s.off_squares / JOBS)), "%s: %g", SIM[k].id,
                  s.off);
    }
}

/* ---- inputs that are none ---------------------------------------------------------- */

static void expect_refused(const gb_progress *p, gb_status status, const char *what,
                           double number) {
    gb_forecast f = {-77, -77, -77, 77};
    cr_expect(gb_make_forecast(p, &f) == status, "%s %g", what, number);
    cr_expect(f.ratio == -77 && f.bags == -77 && f.deviation == -77 && f.df == 77,
              "%s: nothing is written", what);
}

Test(forecast, inputs_that_are_none) {
    for (size_t i = 0; i < FX_BADS; i++) {
        double bad = FX_BAD[i];
        gb_batch_made batches[] = {{3, 2}, {3, 2}};
        const gb_progress good = {batches, 2, 10, 3, 1.1, {0.1}};
        gb_progress p = good;
        p.batch = bad;
        expect_refused(&p, GB_NOT_POSITIVE, "batch", bad);
        p = good;
        p.planned_ratio = bad;
        expect_refused(&p, GB_NOT_POSITIVE, "ratio", bad);
        batches[1].bags = bad;
        expect_refused(&good, GB_NOT_POSITIVE, "bags", bad);
        batches[1].bags = 3;
        if (bad == 0)
            continue;
        batches[1].work = bad;
        expect_refused(&good, GB_NOT_POSITIVE, "work", bad);
        batches[1].work = 2;
        p = good;
        p.left = bad;
        expect_refused(&p, GB_NOT_POSITIVE, "left", bad);
        p = good;
        p.planned_spread.of_one = bad;
        expect_refused(&p, GB_NOT_POSITIVE, "spread", bad);
    }
}

Test(forecast, beyond_what_is_counted) {
    gb_batch_made batches[] = {{3, 2}, {4, 2}};
    const gb_progress good = {batches, 2, 10, 3, 1.1, {0.1}};
    gb_progress p = good;
    p.left = 1e9;
    expect_refused(&p, GB_OVERFLOW, "left", p.left);
    p = good;
    p.batch = 1e-300;
    expect_refused(&p, GB_OVERFLOW, "batch", p.batch);
    batches[0].bags = batches[1].bags = 1e308;
    expect_refused(&good, GB_OVERFLOW, "bags", 1e308);
    batches[0] = batches[1] = (gb_batch_made){1, 5e-324};
    p = good;
    p.left = 0;
    expect_refused(&p, GB_OVERFLOW, "work", 5e-324);
}

/* ---- samples ----------------------------------------------------------------------- */

/* Sum of squares about the mean of 5: 9 + 1 + 1 + 1 + 0 + 0 + 4 + 16 = 32, of 7. */
Test(forecast, sample_by_hand) {
    static const double DEPTHS[] = {2, 4, 4, 4, 5, 5, 7, 9};
    double mean, sd, se;
    cr_assert(gb_sample(DEPTHS, 8, &mean, &sd, &se) == GB_OK);
    cr_expect(fx_same(mean, 5) && fx_same(sd * sd, 32.0 / 7) &&
              fx_same(se * se, 4.0 / 7));
    cr_assert(gb_sample(DEPTHS, 2, &mean, &sd, &se) == GB_OK);
    cr_expect(fx_same(mean, 3) && fx_same(sd * sd, 2) && fx_same(se, 1));
    cr_assert(gb_sample(DEPTHS, 1, &mean, &sd, &se) == GB_OK);
    cr_expect(mean == 2 && isnan(sd) && isnan(se));
}

Test(forecast, sample_shifts_and_scales) {
    enum { COUNT = 30 };
    fx_random r = fx_seeded(86);
    for (size_t k = 0; k < RUNS; k++) {
        double x[COUNT], y[COUNT], mean[2], sd[2], se[2];
        double c = fx_between(&r, 0.01, 100), d = fx_between(&r, 0, 1000);
        for (size_t i = 0; i < COUNT; i++) {
            x[i] = fx_between(&r, 0, 3);
            y[i] = c * x[i] + d;
        }
        cr_assert(gb_sample(x, COUNT, &mean[0], &sd[0], &se[0]) == GB_OK);
        cr_assert(gb_sample(y, COUNT, &mean[1], &sd[1], &se[1]) == GB_OK);
        cr_assert(fx_near(mean[1], c * mean[0] + d, 1e-12 * mean[1]));
        cr_assert(fx_near(sd[1], c * sd[0], 1e-12 * (sd[1] + d)));
        cr_assert(fx_near(se[1] * sqrt((double)COUNT), sd[1], 1e-12 * sd[1]));
    }
}

Test(forecast, samples_that_are_none) {
    double mean = -77, sd = -77, se = -77;
    for (size_t i = 0; i < FX_BADS; i++) {
        double depths[] = {1, FX_BAD[i], 2};
        gb_status want = FX_BAD[i] == 0 ? GB_OK : GB_NOT_POSITIVE;
        double m, s, e;
        cr_expect(gb_sample(depths, 3, &m, &s, &e) == want, "%g", FX_BAD[i]);
    }
    static const double FAR[] = {1e200, 3e200}, FARTHER[] = {1.7e308, 1.7e308};
    cr_expect(gb_sample(FAR, 0, &mean, &sd, &se) == GB_NOT_POSITIVE);
    cr_expect(gb_sample(FAR, 2, &mean, &sd, &se) == GB_OVERFLOW);
    cr_expect(gb_sample(FARTHER, 2, &mean, &sd, &se) == GB_OVERFLOW);
    cr_expect(mean == -77 && sd == -77 && se == -77, "nothing is written");
}
