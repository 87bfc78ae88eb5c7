#include "published/published.h"

#include "gaugebox/pail.h"

#include <criterion/criterion.h>

/* Pails of 5 US gal, of 12 and of 20 L, marked up the inside: volumes by their
   definitions, heights by geometry. */

#define EXACT    "US gallon of 231 in3, NIST Handbook 44 appendix C"
#define GEOMETRY "geometry of a cylinder or cone"

/* Straight sides. */
static gb_pail_size straight(double volume_m3, double height_m) {
    gb_pail_size pail = gb_pail_unknown();
    pail.volume.m3 = volume_m3;
    pail.height.m = height_m;
    return pail;
}

static gb_pail_size tapered(double bottom_mm, double top_mm, double height_mm) {
    gb_pail_size pail = gb_pail_unknown();
    pail.across_bottom.m = bottom_mm / 1000;
    pail.across_top.m = top_mm / 1000;
    pail.height.m = height_mm / 1000;
    return pail;
}

static const pub_figure FT3 = {"5 gal pail ft3", EXACT, PUB_READ, .printed = 0.668,
                               .tolerance = 0.0005};
static const pub_figure PER_FT3 = {"5 gal pails in a ft3", EXACT, PUB_READ,
                                   .printed = 1.5, .tolerance = 0.05};
static const pub_figure PER_YD3 = {"5 gal pails in a yd3", EXACT, PUB_READ,
                                   .printed = 40.4, .tolerance = 0.05};

Test(published_bucket, pails_to_the_brim) {
    gb_pail_size pail = straight(pub_si(GB_VOLUME, "gal", 5), 0.35);
    double brim = gb_pail_volume(&pail).m3;
    pub_check(&FT3, pub_in(GB_VOLUME, "ft3", brim));
    pub_check(&PER_FT3, pub_si(GB_VOLUME, "ft3", 1) / brim);
    pub_check(&PER_YD3, pub_si(GB_VOLUME, "yd3", 1) / brim);
}

/* 5 gal in 14 in of straight height: an inch is 5/14 gal, a quart 0.7 in. 12 L in 300 mm:
   a litre is 25 mm. */
static const struct mark {
    double volume_m3, height_m; /* of the pail */
    double marked;              /* in the unit */
    const char *unit;
    size_t full; /* pails, of 0.9 of the volume */
    pub_figure mm;
} MARKS[] = {
    {5 * 231 * 0.0254 * 0.0254 * 0.0254,
     14 * 0.0254,
     1,
     "qt",
     0,
     {"quart in a 5 gal pail, mm", GEOMETRY, PUB_DERIVED, .printed = 17.78,
      .tolerance = 1e-6}},
    {5 * 231 * 0.0254 * 0.0254 * 0.0254,
     14 * 0.0254,
     3,
     "gal",
     0,
     {"3 gal in a 5 gal pail, 8.4 in, mm", GEOMETRY, PUB_DERIVED, .printed = 213.36,
      .tolerance = 1e-6}},
    {5 * 231 * 0.0254 * 0.0254 * 0.0254,
     14 * 0.0254,
     10,
     "gal",
     2,
     {"10 gal are 2 of 4-1/2 gal and 1 gal, 2.8 in, mm", GEOMETRY, PUB_DERIVED,
      .printed = 71.12, .tolerance = 1e-6}},
    {0.012,
     0.3,
     4,
     "L",
     0,
     {"4 L in a 12 L pail, mm", GEOMETRY, PUB_DERIVED, .printed = 100,
      .tolerance = 1e-6}},
    {0.012,
     0.3,
     25,
     "L",
     2,
     {"25 L are 2 of 10.8 L and 3.4 L, mm", GEOMETRY, PUB_DERIVED, .printed = 85,
      .tolerance = 1e-6}},
    {0.020,
     0.4,
     7,
     "L",
     0,
     {"7 L in a 20 L pail, mm", GEOMETRY, PUB_DERIVED, .printed = 140,
      .tolerance = 1e-6}},
    {0.020,
     0.4,
     36,
     "L",
     2,
     {"36 L are 2 of 18 L and nothing, mm", GEOMETRY, PUB_DERIVED, .printed = 0,
      .tolerance = 1e-6}},
};

Test(published_bucket, marks_of_straight_pails) {
    for (size_t i = 0; i < sizeof MARKS / sizeof MARKS[0]; i++) {
        const struct mark *m = &MARKS[i];
        gb_pail_size pail = straight(m->volume_m3, m->height_m);
        gb_volume volume = {pub_si(GB_VOLUME, m->unit, m->marked)};
        size_t full = 99;
        gb_length up = {-1};
        cr_assert(gb_pail_mark(&pail, volume, &full, &up) == GB_OK, "%s", m->mm.id);
        cr_expect(full == m->full, "%s: %zu", m->mm.id, full);
        pub_check(&m->mm, up.m * 1000);
    }
}

/* 200 mm across the bottom, 300 across the top, 300 high: pi 300 (4 + 6 + 9) 10^4 / 12 =
   14.9226 L. Half way up it is 250 across: pi 150 (4 + 5 + 6.25) 10^4 / 12 = 5.9887 L. */
static const pub_figure BRIM = {"200 to 300 mm across, 300 high, L", GEOMETRY,
                                PUB_DERIVED, .printed = 14.9226, .tolerance = 0.00005};
static const pub_figure HALF = {"5.98868... L half way up, mm", GEOMETRY, PUB_DERIVED,
                                .printed = 150, .tolerance = 1e-6};
static const pub_figure PRINTED = {"5.9887 L half way up, mm", GEOMETRY, PUB_DERIVED,
                                   .printed = 150, .tolerance = 0.005};

Test(published_bucket, marks_of_a_cone) {
    gb_pail_size pail = tapered(200, 300, 300);
    pub_check(&BRIM, gb_pail_volume(&pail).m3 * 1000);
    size_t full = 99;
    gb_length up = {-1};
    cr_assert(gb_pail_mark(&pail, (gb_volume){0.0059887}, &full, &up) == GB_OK);
    cr_expect(full == 0);
    pub_check(&PRINTED, up.m * 1000);
    gb_volume exact = {3.14159265358979323846 * 0.15 * 0.1525 / 12};
    cr_assert(gb_pail_mark(&pail, exact, &full, &up) == GB_OK);
    pub_check(&HALF, up.m * 1000);
}
