/* Runs that cannot be laid: the engine says so and writes nothing. */
#include "runs.h"
#include "unit/plan/fixture.h"

#include <criterion/criterion.h>
#include <string.h>

static void refuse(const gb_steps *s, size_t count, gb_status want, const char *what) {
    gb_layout l, before;
    memset(&l, 0x5a, sizeof l);
    memcpy(&before, &l, sizeof l);
    cr_expect(gb_lay_steps(s, count, false, FX_TAPE, &l) == want, "%s", what);
    cr_expect(memcmp(&before, &l, sizeof l) == 0, "%s: written all the same", what);
}

Test(steps_refused, one_riser_is_a_step) {
    gb_steps s = fx_run(49 * IN, 14 * IN);
    refuse(&s, 0, GB_IMPOSSIBLE, "none");
    refuse(&s, 1, GB_IMPOSSIBLE, "one");
    gb_layout l;
    cr_expect(gb_lay_steps(&s, 2, false, FX_TAPE, &l) == GB_OK);
}

Test(steps_refused, sizes_that_are_none) {
    for (size_t i = 0; i < FX_BADS; i++) {
        gb_steps s = fx_run(FX_BAD[i], 14 * IN);
        refuse(&s, 7, GB_NOT_POSITIVE, "rise");
        s = fx_run(49 * IN, FX_BAD[i]);
        refuse(&s, 7, GB_NOT_POSITIVE, "tread");
        s = fx_solid(49 * IN, 14 * IN, FX_BAD[i]);
        refuse(&s, 7, GB_NOT_POSITIVE, "stone");
        s = fx_run(49 * IN, 14 * IN);
        gb_layout l;
        cr_expect(gb_lay_steps(&s, 7, false, (gb_length){FX_BAD[i]}, &l) ==
                  GB_NOT_POSITIVE);
    }
}

Test(steps_refused, pitches_that_are_none) {
    static const double BAD[] = {-1e-9, -0.02, NAN, INFINITY, -INFINITY};
    for (size_t i = 0; i < ROWS_OF(BAD); i++) {
        gb_steps s = fx_run(49 * IN, 14 * IN);
        s.pitch.of_run = BAD[i];
        refuse(&s, 7, GB_NOT_POSITIVE, "pitch");
    }
}

/* A pitch that climbs the whole rise leaves no face. */
Test(steps_refused, no_face_is_left) {
    gb_steps s = fx_run(6 * IN, 48 * IN);
    s.pitch.of_run = 1.0 / 48.0;
    refuse(&s, 8, GB_NOT_POSITIVE, "seven treads of 4 ft climb 7 in");
    gb_layout l;
    cr_expect(gb_lay_steps(&s, 6, false, FX_TAPE, &l) == GB_OK && l.face.m > 0);
}

Test(steps_refused, no_room_for_block_and_bed) {
    gb_steps s = fx_run(49 * IN, 14 * IN);
    gb_step step;
    gb_beds beds;
    s.slab.m = 6 * IN;
    s.course.m = 4 * IN;
    gb_layout l = fx_lay(&s, 7, false);
    cr_expect(gb_lay_step(&s, &l, 0, &step) == GB_NOT_POSITIVE, "no course fits");
    cr_expect(gb_check_beds(&s, &l, &beds) == GB_NOT_POSITIVE);
    s.course.m = NAN;
    cr_expect(gb_lay_step(&s, &l, 0, &step) == GB_NOT_POSITIVE, "nor the bed");
    s.bed.m = 1 * IN;
    cr_expect(gb_lay_step(&s, &l, 0, &step) == GB_OK, "a slab of 6 in on 1 in does");
}
