#include "published/published.h"

#include "gaugebox/shape.h"

#include <criterion/criterion.h>

/* Curved steps measured on site by chord and rise: R = c^2 / 8 h + h / 2. Inches. */

#define DAVIS  "Davis, a carpenter's letter on arched openings"
#define REGINA "University of Regina, questions on arcs (1999)"

static const double INCH = 0.0254;

static const struct {
    double chord, rise;
    pub_figure radius;
} ARCS[] = {
    {96, 12, {"96 in over 12 in", DAVIS, PUB_READ, .printed = 102, .tolerance = 0.0005}},
    {132, /* 2 r h = (4 h^2 + L^2) / 4 */
     21,
     {"11 ft over 21 in", REGINA, PUB_DERIVED, .printed = 114.214, .tolerance = 0.0005}},
    {144, /* a half circle */
     72,
     {"12 ft over 6 ft", "geometry", PUB_DERIVED, .printed = 72, .tolerance = 0.0005}},
};

Test(published_stair_layout, arcs) {
    for (size_t i = 0; i < sizeof ARCS / sizeof ARCS[0]; i++) {
        gb_arc arc;
        cr_assert(gb_arc_of_rise((gb_length){ARCS[i].chord * INCH},
                                 (gb_length){ARCS[i].rise * INCH}, &arc) == GB_OK);
        pub_check(&ARCS[i].radius, arc.radius.m / INCH);
    }
}

/* Half a ring of 6 ft with treads of 14 in: pi/2 (6^2 - 4.8333^2) = 19.9 ft2. */
static const pub_figure HALF_RING = {"half a ring", "geometry", PUB_DERIVED,
                                     .printed = 19.9, .tolerance = 0.05};

Test(published_stair_layout, half_a_ring) {
    gb_shape shape = {.kind = GB_CURVED, .width = {14 * INCH}};
    cr_assert(gb_arc_of_rise((gb_length){144 * INCH}, (gb_length){72 * INCH},
                             &shape.arc) == GB_OK);
    gb_plan_size size;
    cr_assert(gb_measure_shape(&shape, (gb_length){0}, (gb_length){0}, &size) == GB_OK);
    pub_check(&HALF_RING, pub_in(GB_AREA, "ft2", size.net.m2));
}
