/* Arcs by chord, rise and radius, against the closed forms with the functions of libm. */
#include <criterion/criterion.h>
#include <math.h>

#include "gaugebox/shape.h"

static bool near(double got, double want) {
    return fabs(got - want) <= 4e-15 * fmax(1.0, fabs(want));
}

/* Every radius and angle from a flat arc to almost a full turn: c = 2 R sin(a/2),
   h = R (1 - cos(a/2)). */
Test(arcs, rise_gives_radius_and_angle) {
    for (double r = 0.3; r < 20; r *= 1.37)
        for (double a = 0.02; a < 6.25; a += 0.017) {
            gb_arc arc = {.angle = NAN};
            gb_length chord = {2 * r * sin(a / 2)};
            gb_length rise = {2 * r * sin(a / 4) * sin(a / 4)};
            cr_assert(gb_arc_of_rise(chord, rise, &arc) == GB_OK);
            cr_expect(fabs(arc.radius.m / r - 1) < 1e-10, "R %g, a %g", r, a);
            cr_expect(fabs(arc.angle - a) < 1e-9, "R %g, a %g: %.15g", r, a, arc.angle);
        }
}

Test(arcs, angles_are_those_of_libm) {
    for (int i = 1; i < 20000; i++) {
        double c = i / 10000.0; /* of a radius of one */
        gb_arc arc = {.angle = NAN};
        cr_assert(gb_arc_of_radius((gb_length){1}, (gb_length){c}, &arc) == GB_OK);
        cr_expect(near(arc.angle, 2 * atan2(c / 2, 1 - arc.rise.m)), "chord %g", c);
    }
}

/* A half circle: the rise is the radius, the chord the diameter, the angle pi. */
Test(arcs, half_a_circle) {
    gb_arc arc = {.angle = NAN};
    cr_assert(gb_arc_of_rise((gb_length){2}, (gb_length){1}, &arc) == GB_OK);
    cr_expect(near(arc.radius.m, 1) && near(arc.angle, acos(-1)));
    cr_assert(gb_arc_of_radius((gb_length){1}, (gb_length){2}, &arc) == GB_OK);
    cr_expect(near(arc.rise.m, 1) && near(arc.angle, acos(-1)));
}

Test(arcs, what_is_none) {
    static const double BAD[] = {0, -1, NAN, INFINITY};
    gb_arc arc;
    for (int i = 0; i < 4; i++) {
        gb_length bad = {BAD[i]};
        cr_expect(gb_arc_of_rise(bad, (gb_length){1}, &arc) == GB_NOT_POSITIVE);
        cr_expect(gb_arc_of_rise((gb_length){1}, bad, &arc) == GB_NOT_POSITIVE);
        cr_expect(gb_arc_of_radius(bad, (gb_length){1}, &arc) == GB_NOT_POSITIVE);
        cr_expect(gb_arc_of_radius((gb_length){1}, bad, &arc) == GB_NOT_POSITIVE);
    }
    cr_expect(gb_arc_of_radius((gb_length){1}, (gb_length){2.001}, &arc) ==
              GB_IMPOSSIBLE);
}
