/* Laws of a layout, over thousands of seeded runs. */
#include "runs.h"
#include "unit/plan/fixture.h"

#include <criterion/criterion.h>

enum { RUNS = 20000 };

/* Slabs of any pitch, top and end. */
static gb_steps random_run(fx_random *r, size_t *count) {
    gb_steps s = fx_run(0, fx_between(r, 6 * IN, 4 * FT));
    *count = fx_whole(r, 2, 40);
    s.rise.m = fx_between(r, 2 * IN, 12 * IN) * (double)*count;
    s.pitch.of_run = fx_whole(r, 0, 3) == 0 ? 0 : fx_between(r, 0, 1.0 / 48.0);
    s.upper = fx_whole(r, 0, 1) == 0 ? GB_UPPER_LANDING : GB_UPPER_TREAD;
    s.top = fx_whole(r, 0, 1) == 0 ? GB_TO_NOSING : GB_TO_SILL;
    if (s.top == GB_TO_SILL)
        s.sill.m = fx_between(r, 0, 2 * IN);
    if (s.upper == GB_UPPER_LANDING)
        s.landing.m = fx_between(r, 1 * FT, 10 * FT);
    if (fx_whole(r, 0, 2) == 0) {
        double treads = (double)*count - (s.upper == GB_UPPER_LANDING);
        s.length.m = s.going.m * treads;
        s.going.m = NAN;
    }
    return s;
}

static bool lay(const gb_steps *s, size_t count, bool evened, gb_layout *l) {
    return gb_lay_steps(s, count, evened, FX_TAPE, l) == GB_OK;
}

/* Walks up the run: the first face, then every tread's pitch and the next face. */
static double walked(const gb_steps *s, const gb_layout *l) {
    double at = l->first.m;
    for (size_t i = 1; i < l->count; i++)
        at += s->pitch.of_run * l->going.m + l->face.m;
    if (s->top == GB_TO_SILL)
        at += s->pitch.of_run * (s->upper == GB_UPPER_TREAD ? l->going.m : s->landing.m) +
              s->sill.m;
    return at;
}

Test(steps_laws, faces_and_pitch_close_the_rise) {
    fx_random r = fx_seeded(1);
    size_t laid = 0;
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_run(&r, &count);
        gb_layout l;
        if (!lay(&s, count, fx_whole(&r, 0, 1) == 1, &l))
            continue;
        laid++;
        cr_assert(fx_near(walked(&s, &l), s.rise.m, 1e-11), "run %zu", k);
        cr_assert(fx_near(l.error.m, 0, 1e-11) && fx_near(l.climb.m, s.rise.m, 1e-11));
        cr_assert(fx_near(l.first.m + (double)(count - 1) * l.riser.m + l.behind.m,
                          l.climb.m, 1e-11));
    }
    cr_expect(laid > RUNS * 3 / 4, "%zu were laid", laid);
}

/* A stated face closes by chance: what it lacks is told to the last bit. */
Test(steps_laws, a_stated_face_and_its_error_are_the_rise) {
    fx_random r = fx_seeded(2);
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_run(&r, &count);
        gb_layout l;
        s.face.m = fx_between(&r, 2 * IN, 12 * IN);
        cr_assert(lay(&s, count, false, &l), "run %zu", k);
        cr_assert(fx_near(walked(&s, &l) + l.error.m, s.rise.m, 1e-11), "run %zu", k);
    }
}

Test(steps_laws, evening_never_changes_the_climb) {
    fx_random r = fx_seeded(3);
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_run(&r, &count);
        gb_layout equal, evened;
        if (!lay(&s, count, false, &equal) || !lay(&s, count, true, &evened))
            continue;
        cr_assert(fx_near(evened.climb.m, equal.climb.m, 1e-11), "run %zu", k);
        cr_assert(fx_near(evened.error.m, equal.error.m, 1e-11), "run %zu", k);
        cr_assert(fx_same(evened.length.m, equal.length.m));
        cr_assert(fx_near(gb_risers_differ(&evened).m, 0, 1e-11), "alike");
        cr_assert(fx_near(gb_risers_differ(&equal).m, equal.term.m, 1e-11), "the term");
    }
}

/* Solid steps: the first stone takes what is left, at most all of it. */
Test(steps_laws, stones_are_buried_or_too_low) {
    fx_random r = fx_seeded(4);
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = fx_whole(&r, 2, 30);
        double stone = fx_between(&r, 3 * IN, 12 * IN);
        gb_steps s = fx_solid(stone * (double)count * fx_between(&r, 0.8, 1.2),
                              fx_between(&r, 8 * IN, 3 * FT), stone);
        s.pitch.of_run = fx_between(&r, 0, 1.0 / 48.0);
        gb_layout l;
        if (!lay(&s, count, false, &l))
            continue;
        cr_assert(l.error.m > -1e-11 && l.buried.m > -1e-11, "run %zu", k);
        cr_assert(fx_near(l.first.m + l.buried.m, stone, 1e-11), "run %zu", k);
        cr_assert(l.error.m < 1e-11 || l.buried.m < 1e-11, "never both: run %zu", k);
        cr_assert(fx_near(l.climb.m + l.error.m, s.rise.m, 1e-11), "run %zu", k);
    }
}

/* One riser less over the same rise: one tread less, and the run a going shorter. */
Test(steps_laws, a_step_less_is_a_tread_less) {
    fx_random r = fx_seeded(5);
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_run(&r, &count);
        gb_layout more, less;
        if (count < 3 || isnan(s.going.m) || !lay(&s, count, false, &more))
            continue;
        cr_assert(lay(&s, count - 1, false, &less), "run %zu", k);
        cr_assert(less.treads + 1 == more.treads);
        cr_assert(fx_near(more.length.m - less.length.m, s.going.m, 1e-11));
        cr_assert(less.riser.m > more.riser.m &&
                  fx_near(less.climb.m, more.climb.m, 1e-11));
        cr_assert(fx_same(less.depth.m, more.depth.m), "each stone stays as it is");
    }
}

static void scale(gb_steps *s, double by) {
    double *lengths[] = {&s->rise.m,  &s->sill.m,   &s->landing.m,
                         &s->going.m, &s->length.m, &s->face.m,
                         &s->slab.m,  &s->bed.m,    &s->overhang.m};
    for (size_t i = 0; i < ROWS_OF(lengths); i++)
        *lengths[i] *= by;
}

Test(steps_laws, a_run_twice_as_large) {
    fx_random r = fx_seeded(6);
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_run(&r, &count);
        gb_layout one, two;
        if (!lay(&s, count, k % 2 == 0, &one))
            continue;
        scale(&s, 2);
        cr_assert(lay(&s, count, k % 2 == 0, &two));
        cr_assert(fx_same(two.first.m, 2 * one.first.m) &&
                      fx_same(two.face.m, 2 * one.face.m) &&
                      fx_same(two.riser.m, 2 * one.riser.m) &&
                      fx_same(two.length.m, 2 * one.length.m) &&
                      fx_same(two.comfort.m, 2 * one.comfort.m),
                  "run %zu", k);
    }
}

/* As a tape reads them: never more than half a mark off, and the loss is their sum. */
Test(steps_laws, what_a_tape_loses) {
    fx_random r = fx_seeded(7);
    for (size_t k = 0; k < RUNS; k++) {
        size_t count = 0;
        gb_steps s = random_run(&r, &count);
        gb_layout l;
        if (!lay(&s, count, k % 2 == 0, &l))
            continue;
        double half = FX_TAPE.m / 2 + 1e-12;
        cr_assert(fx_near(l.set_first.m, l.first.m, half), "run %zu", k);
        cr_assert(fx_near(l.set_face.m, l.face.m, half), "run %zu", k);
        double lost =
            l.first.m - l.set_first.m + (double)(count - 1) * (l.face.m - l.set_face.m);
        cr_assert(fx_near(l.set_error.m, l.error.m + lost, 1e-11), "run %zu", k);
        cr_assert(fabs(l.set_error.m - l.error.m) <= (double)count * half);
    }
}
