#include "published/published.h"
#include "unit/steps/runs.h"

#include <criterion/criterion.h>
#include <math.h>

/* Flights as manuals and handbooks work them out: the rise by the number of risers, one
   tread less than risers below a landing. Inches. */

#define ARMY    "US Army EN5156, carpentry, figure 2-38"
#define NAVY    "NAVEDTRA 14044, stairway layout, figure 6-15"
#define RADFORD "Radford's Cyclopedia of Construction, vol. 3, figure 71"
#define MODERN  "Modern Carpentry (2008), section 18.5"
#define MACFIE  "Macfie, Fine Homebuilding (2007)"
#define RAMPS   "a manual of home ramps, steps of 3-1/2 to 5 in"
#define REPAIR  "a home repair guide to the 2006 IRC"
#define PORCH   "a magazine's guide to concrete porch steps"
#define STONE   "a masonry forum on stone treads (2010)"
#define DESIGN  "a guide to staircases (2016)"
#define STAIRS  "a guide to the run of staircases (2014)"
#define REMODEL "a guide to remodelling stairs"

static const double INCH = 0.0254;

static const struct {
    double rise, tread;
    size_t risers;
    pub_figure riser;
    pub_figure run; /* id NULL: not printed */
} FLIGHTS[] = {
    {94.25,
     10.5,
     13,
     {"94-1/4 in in 13", ARMY, PUB_READ, .printed = 7.25, .tolerance = 0.001},
     {"12 treads of 10-1/2 in", ARMY, PUB_READ, .printed = 126, .tolerance = 0.001}},
    {107,
     10.375,
     15,
     {"8 ft 11 in in 15", NAVY, PUB_DERIVED, .printed = 7.125, .tolerance = 1.0 / 32.0},
     {.id = NULL}},
    {123,
     9.5,
     17,
     {"10 ft 3 in in 17", RADFORD, PUB_DERIVED, .printed = 7.235, .tolerance = 0.001},
     {"16 treads", RADFORD, PUB_READ, .printed = 152, .tolerance = 0.001}},
    {94,
     10,
     13,
     {"7 ft 10 in in 13", MODERN, PUB_DERIVED, .printed = 7.23, .tolerance = 0.005},
     {.id = NULL}},
    {104,
     10,
     13,
     {"104 in in 13", STAIRS, PUB_READ, .printed = 8, .tolerance = 0.001},
     {"12 treads", STAIRS, PUB_DERIVED, .printed = 120, .tolerance = 0.001}},
    {106.75,
     10,
     14,
     {"106-3/4 in in 14", DESIGN, PUB_READ, .printed = 7.625, .tolerance = 0.001},
     {.id = NULL}},
    {30,
     34,
     8,
     {"30 in in 8", RAMPS, PUB_READ, .printed = 3.75, .tolerance = 0.001},
     {"7 treads of 34 in", RAMPS, PUB_READ, .printed = 238, .tolerance = 0.001}},
    {27,
     10,
     4,
     {"27 in in 4", REPAIR, PUB_READ, .printed = 6.75, .tolerance = 0.001},
     {.id = NULL}},
    {27,
     10,
     5,
     {"27 in in 5", REPAIR, PUB_READ, .printed = 5.4, .tolerance = 0.001},
     {.id = NULL}},
    {56,
     10,
     8,
     {"56 in in 8", REPAIR, PUB_DERIVED, .printed = 7, .tolerance = 0.001},
     {"7 treads of 10 in", REPAIR, PUB_READ, .printed = 70, .tolerance = 0.001}},
    {60,
     11,
     9,
     {"5 ft of stone in 9", STONE, PUB_READ, .printed = 6.66, .tolerance = 0.01},
     {.id = NULL}},
    {20,
     16,
     3,
     {"20 in in 3", PORCH, PUB_READ, .printed = 6.625, .tolerance = 1.0 / 32.0,
      .known_difference = "rounded down to 6-5/8 in, three of them lose 1/8 in"},
     {.id = NULL}},
    {72,
     11,
     11,
     {"72 in in 11", REMODEL, PUB_READ, .printed = 6.455, .tolerance = 0.001,
      .known_difference = "72 / 11 is 6.545: two digits are turned round in print"},
     {.id = NULL}},
    {44,
     14,
     7,
     {"44 in in 7", MACFIE, PUB_READ, .printed = 6.2, .tolerance = 0.05,
      .known_difference = "44 / 7 is 6.286; printed as 6.2 and built as 6 it loses 2 in"},
     {.id = NULL}},
};

Test(published_stair_layout, flights) {
    for (size_t i = 0; i < sizeof FLIGHTS / sizeof FLIGHTS[0]; i++) {
        gb_steps s = fx_run(FLIGHTS[i].rise * INCH, FLIGHTS[i].tread * INCH);
        gb_layout l = fx_lay(&s, FLIGHTS[i].risers, false);
        pub_check(&FLIGHTS[i].riser, l.riser.m / INCH);
        cr_expect(fabs(l.error.m) < 1e-12, "%s closes", FLIGHTS[i].riser.id);
        if (FLIGHTS[i].run.id != NULL)
            pub_check(&FLIGHTS[i].run, l.length.m / INCH);
    }
}

/* A run by its length: the ground's 7 ft of seven risers is six treads of 14 in. */
static const pub_figure SIX_TREADS = {"84 in in 6 treads", MACFIE, PUB_DERIVED,
                                      .printed = 14, .tolerance = 0.001};
static const pub_figure LOST = {"faces of 6 in lose", MACFIE, PUB_DERIVED, .printed = 2,
                                .tolerance = 1e-6};

Test(published_stair_layout, a_rounding_that_loses_two_inches) {
    gb_steps s = fx_run(44 * INCH, NAN);
    s.length.m = 84 * INCH;
    s.face.m = 6 * INCH;
    gb_layout l = fx_lay(&s, 7, false);
    pub_check(&SIX_TREADS, l.going.m / INCH);
    pub_check(&LOST, l.error.m / INCH);
    pub_check(&LOST, l.set_error.m / INCH);
}

/* Slabs laid dry so that each covers the back of the one below: 20 in of slab with 17 in
   of tread, 4 in thick with 1 in under it. */
#define GARDEN "a book of self sufficiency, thirteen garden steps"
static const pub_figure SLAB = {"slab of a 17 in tread", GARDEN, PUB_READ, .printed = 20,
                                .tolerance = 0.001};

Test(published_stair_layout, depth_to_order) {
    gb_steps s = fx_solid(15 * INCH, 17 * INCH, 5 * INCH);
    s.overlap.m = 3 * INCH;
    gb_layout l = fx_lay(&s, 3, false);
    pub_check(&SLAB, l.depth.m / INCH);
    cr_expect(fabs(l.error.m) < 1e-12 && fabs(l.buried.m) < 1e-12, "three of 5 in");
}
