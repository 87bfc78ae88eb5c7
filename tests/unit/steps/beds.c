/* Levels of every step, and the beds that courses of block leave. */
#include "runs.h"
#include "unit/plan/fixture.h"

#include <criterion/criterion.h>

enum { RUNS = 20000 };

static gb_steps random_slabs(fx_random *r, size_t *count) {
    *count = fx_whole(r, 2, 20);
    gb_steps s = fx_run(fx_between(r, 5 * IN, 9 * IN) * (double)*count,
                        fx_between(r, 10 * IN, 2 * FT));
    s.pitch.of_run = fx_between(r, 0, 1.0 / 48.0);
    s.build = fx_whole(r, 0, 1) == 0 ? GB_ON_PLATFORMS : GB_ON_TREADS;
    s.slab.m = fx_between(r, 1 * IN, 3 * IN);
    s.footing.m = fx_between(r, 0, 3 * FT);
    if (fx_whole(r, 0, 1) == 0)
        s.course.m = fx_between(r, 2 * IN, 8 * IN);
    else
        s.bed.m = fx_between(r, 0.5 * IN, 2 * IN);
    return s;
}

/* Slab, bed and block stand on one another, and each nosing is a riser over the last. */
static void check_step(const gb_steps *s, const gb_layout *l, size_t i) {
    gb_step st;
    if (gb_lay_step(s, l, i, &st) != GB_OK)
        return;
    double climbed = l->first.m;
    for (size_t k = 0; k < i; k++)
        climbed += l->riser.m;
    cr_assert(fx_near(st.front.m, climbed, 1e-11));
    cr_assert(fx_near(st.front.m - st.bed_top.m, s->slab.m, 1e-11));
    cr_assert(fx_near(st.bed_top.m - st.block_top.m, st.bed.m, 1e-11));
    if (i + 1 < l->count) {
        cr_assert(fx_near(st.back.m - st.front.m, l->term.m, 1e-11));
        cr_assert(fx_near(st.bed_back.m - st.bed.m, l->term.m, 1e-11));
    }
    if (isnan(s->course.m))
        return;
    double foot = s->build == GB_ON_PLATFORMS || i == 0
                      ? -s->footing.m
                      : st.front.m - l->riser.m + l->term.m;
    double block = (double)st.courses * s->course.m + st.build_up.m;
    cr_assert(fx_near(st.block_top.m - foot, block, 1e-11), "courses and build-up");
    cr_assert(st.bed.m > s->least_bed.m - 1e-11 || st.build_up.m > 0);
}

Test(steps_beds, every_level_stands_on_the_one_below) {
    fx_random r = fx_seeded(11);
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_slabs(&r, &count);
        gb_layout l;
        if (gb_lay_steps(&s, count, k % 2 == 0, FX_TAPE, &l) != GB_OK)
            continue;
        for (size_t i = 0; i < count; i++)
            check_step(&s, &l, i);
    }
}

/* What fits lies between the least and the most bed at every place. */
Test(steps_beds, what_fits_is_in_bounds) {
    fx_random r = fx_seeded(12);
    size_t fitting = 0, not = 0;
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_slabs(&r, &count);
        gb_layout l;
        gb_beds beds;
        if (gb_lay_steps(&s, count, k % 2 == 0, FX_TAPE, &l) != GB_OK ||
            gb_check_beds(&s, &l, &beds) != GB_OK)
            continue;
        bool good = true;
        for (size_t i = 0; i < count; i++) {
            gb_step st;
            cr_assert(gb_lay_step(&s, &l, i, &st) == GB_OK);
            double thickest = isnan(st.bed_back.m) ? st.bed.m : st.bed_back.m;
            cr_assert(beds.least.m <= st.bed.m && beds.most.m >= thickest);
            good &= st.build_up.m <= 0 && st.bed.m > s.least_bed.m - 1e-11 &&
                    thickest < s.most_bed.m + 1e-11;
        }
        cr_assert(beds.fit == good, "run %zu", k);
        fitting += beds.fit;
        not += !beds.fit;
    }
    cr_expect(fitting > 500 && not > 500, "%zu fit, %zu do not", fitting, not );
}

/* No course more would leave the least bed. */
Test(steps_beds, as_many_courses_as_leave_the_least_bed) {
    fx_random r = fx_seeded(13);
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_slabs(&r, &count);
        gb_layout l;
        gb_step st;
        if (isnan(s.course.m) || gb_lay_steps(&s, count, false, FX_TAPE, &l) != GB_OK ||
            gb_lay_step(&s, &l, count - 1, &st) != GB_OK)
            continue;
        double bed = st.bed.m + st.build_up.m;
        cr_assert(bed - s.course.m < s.least_bed.m + 1e-11, "run %zu", k);
    }
}
