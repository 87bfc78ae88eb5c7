#include "published/published.h"
#include "unit/steps/runs.h"

#include <criterion/criterion.h>
#include <math.h>

/* Pitched treads: a riser from nosing to nosing is the face and pitch x going. Worked by
   hand; inches. The rule it stands on is R311.7.5.1, measured plumb between nosings. */

#define BY_HAND "by hand, from nosing to nosing"

static const double INCH = 0.0254;
static const double EIGHTH = 1.0 / 96.0; /* in per ft */
static const double QUARTER = 1.0 / 48.0;

#define DERIVED(name, value, slack)                                                      \
    { (name), BY_HAND, PUB_DERIVED, .printed = (value), .tolerance = (slack) }

static const pub_figure TERM_EIGHTH = DERIVED("14 in at 1/8 in/ft", 0.146, 0.0005);
static const pub_figure TERM_QUARTER = DERIVED("14 in at 1/4 in/ft", 0.292, 0.0005);
static const pub_figure RISER_7 = DERIVED("face of 7 in", 7.29, 0.005);
static const pub_figure RISER_7_5 = DERIVED("face of 7-1/2 in", 7.79, 0.005);
static const pub_figure TEN_QUARTER = DERIVED("ten at 1/4 in/ft climb more", 2.6, 0.05);
static const pub_figure TEN_EIGHTH = DERIVED("ten at 1/8 in/ft climb more", 1.3, 0.05);

/* What ten faces of 7 in climb over 70 in. */
static double more_of_ten(double pitch) {
    gb_steps s = fx_run(80 * INCH, 14 * INCH);
    s.pitch.of_run = pitch;
    s.face.m = 7 * INCH;
    gb_layout l = fx_lay(&s, 10, false);
    return l.climb.m / INCH - 70;
}

static gb_layout with_face(double face_in, double pitch) {
    gb_steps s = fx_run(49 * INCH, 14 * INCH);
    s.pitch.of_run = pitch;
    s.face.m = face_in * INCH;
    return fx_lay(&s, 7, false);
}

Test(published_stair_layout, what_the_pitch_adds) {
    pub_check(&TERM_EIGHTH, with_face(7, EIGHTH).term.m / INCH);
    pub_check(&TERM_QUARTER, with_face(7, QUARTER).term.m / INCH);
    pub_check(&RISER_7, with_face(7, QUARTER).riser.m / INCH);
    pub_check(&RISER_7_5, with_face(7.5, QUARTER).riser.m / INCH);
    pub_check(&TEN_QUARTER, more_of_ten(QUARTER));
    pub_check(&TEN_EIGHTH, more_of_ten(EIGHTH));
}

/* 49 in in seven at 1/4 in/ft on 14 in: (49 - 6 x 0.2917) / 7 = 6.75. */
static const pub_figure FACE = DERIVED("49 in in 7, faces", 6.75, 0.0005);
static const pub_figure RISER = DERIVED("49 in in 7, risers", 7.04, 0.005);
static const pub_figure FIRST = DERIVED("49 in in 7, evened, first face", 7.00, 0.0005);
static const pub_figure OTHERS = DERIVED("49 in in 7, evened, others", 6.708, 0.0005);
static const pub_figure MIDDLE = DERIVED("49 in in 7, evened, risers", 7.00, 0.0005);

Test(published_stair_layout, seven_equal_and_evened) {
    gb_steps s = fx_run(49 * INCH, 14 * INCH);
    s.pitch.of_run = QUARTER;
    gb_layout equal = fx_lay(&s, 7, false);
    gb_layout evened = fx_lay(&s, 7, true);
    pub_check(&FACE, equal.first.m / INCH);
    pub_check(&FACE, equal.face.m / INCH);
    pub_check(&TERM_QUARTER, equal.term.m / INCH);
    pub_check(&RISER, equal.riser.m / INCH);
    pub_check(&FIRST, evened.first.m / INCH);
    pub_check(&OTHERS, evened.face.m / INCH);
    pub_check(&MIDDLE, evened.riser.m / INCH);
}

/* Block on the tread below: a course of 4 in (3-5/8 and its joint), a bed of 3/4 in and a
   slab of 2 in are a face of 6-3/4 in. */
static const pub_figure BED = DERIVED("4 in of block under 2 in of slab", 0.75, 0.0005);

Test(published_stair_layout, coursing_of_a_riser) {
    gb_steps s = fx_run(7 * 6.75 * INCH, 14 * INCH);
    s.build = GB_ON_TREADS;
    s.slab.m = 2 * INCH;
    s.course.m = 4 * INCH;
    gb_layout l = fx_lay(&s, 7, false);
    for (size_t i = 0; i < l.count; i++) {
        gb_step step;
        cr_assert(gb_lay_step(&s, &l, i, &step) == GB_OK);
        pub_check(&BED, step.bed.m / INCH);
        cr_expect(step.courses == 1, "step %zu: %zu courses", i, step.courses);
    }
}

/* Platforms of two 4 in courses rise 8 in each, whatever slab and bed are: from one rough
   step to the next it is a riser, and only the first lacks slab and bed. */
static const pub_figure FIRST_BED = DERIVED("two courses under 3 in of slab", 1, 0.0005);

Test(published_stair_layout, platforms_rise_a_riser) {
    gb_steps s = fx_run(5 * 8 * INCH, 14 * INCH);
    s.slab.m = 3 * INCH;
    s.course.m = 4 * INCH;
    s.footing.m = 4 * INCH; /* 8 + 4 - 3 = 9: two courses and a bed of 1 in */
    gb_layout l = fx_lay(&s, 5, false);
    for (size_t i = 0; i < l.count; i++) {
        gb_step step;
        cr_assert(gb_lay_step(&s, &l, i, &step) == GB_OK);
        pub_check(&FIRST_BED, step.bed.m / INCH);
        cr_expect(step.courses == 2 + 2 * i, "step %zu: %zu courses", i, step.courses);
    }
}
