#include "published/published.h"

#include <criterion/criterion.h>

/* A bucket of 5 US gal: 5 x 231 in3. */

#define EXACT "US gallon of 231 in3, NIST Handbook 44 appendix C"

static const pub_figure FT3 = {"5 gal bucket ft3", EXACT, PUB_READ, .printed = 0.668,
                               .tolerance = 0.0005};
static const pub_figure PER_YD3 = {"5 gal buckets in a yd3", EXACT, PUB_READ,
                                   .printed = 40.4, .tolerance = 0.05};
static const pub_figure PER_FT3 = {"5 gal buckets in a ft3", EXACT, PUB_READ,
                                   .printed = 1.5, .tolerance = 0.05};
static const pub_figure MYTH = {"5 gal bucket said to hold 1 ft3",
                                "a claim found in print",
                                PUB_READ,
                                .printed = 1,
                                .tolerance = 0.05,
                                .known_difference =
                                    "5 x 231 / 1728 = 0.668 ft3: a third less"};
static const pub_figure SITE = {"5 gal bucket ft3, batch sheets", "common practice",
                                PUB_PRACTICE, .printed = 0.67, .tolerance = 0.005};

Test(published_bucket, geometry) {
    double bucket = pub_si(GB_VOLUME, "gal", 5);
    pub_check(&FT3, pub_in(GB_VOLUME, "ft3", bucket));
    pub_check(&SITE, pub_in(GB_VOLUME, "ft3", bucket));
    pub_check(&MYTH, pub_in(GB_VOLUME, "ft3", bucket));
    pub_check(&PER_YD3, pub_si(GB_VOLUME, "yd3", 1) / bucket);
    pub_check(&PER_FT3, pub_si(GB_VOLUME, "ft3", 1) / bucket);
}

/* "Level bucket of damp sand 54 lb at 80 lb/ft3": 0.67 x 80 = 53.6. */
static const pub_figure SAND = {
    "5 gal bucket of C270 sand, dry lb",
    "site practice, ASTM C270's 80 lb/ft3",
    PUB_DERIVED,
    .printed = 54,
    .tolerance = 0.5,
    .known_difference = "0.6684 ft3 x 80 lb/ft3 = 53.47 lb; printed from 0.67 ft3"};

Test(published_bucket, sand) {
    pub_table table;
    pub_open(&table);
    double kg =
        pub_si(GB_VOLUME, "gal", 5) * pub_material(&table, "masonry-sand")->bulk.kg_m3;
    pub_check(&SAND, pub_in(GB_MASS, "lb", kg));
    pub_close(&table);
}
