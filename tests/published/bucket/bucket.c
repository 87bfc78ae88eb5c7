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

/* "A level bucket of damp sand weighs 54 to 74 lb at 80 to 110 lb/ft3": 0.668 ft3 of it
   as it lies, 53.5 to 73.5 lb, printed a little over. More than one person should lift.
 */
static const struct lifted {
    double lb_ft3;
    pub_figure lb;
} LIFTED[] = {
    {80,
     {"5 gal of damp sand at 80 lb/ft3, lb", "site practice", PUB_DERIVED, .printed = 54,
      .percent = 1.1}},
    {110,
     {"5 gal of damp sand at 110 lb/ft3, lb", "site practice", PUB_DERIVED, .printed = 74,
      .percent = 1.1}},
};
static const pub_figure LIMIT = {"most to lift, lb", "NIOSH lifting equation", PUB_READ,
                                 .printed = 51, .tolerance = 0.5};

Test(published_bucket, lifted) {
    pub_table table;
    pub_open(&table);
    gb_lying damp = gb_state_lying(GB_DAMP);
    gb_volume bucket = {pub_si(GB_VOLUME, "gal", 5)};
    for (size_t i = 0; i < sizeof LIFTED / sizeof LIFTED[0]; i++) {
        gb_material sand = *pub_material(&table, "masonry-sand");
        sand.bulk.kg_m3 = pub_si(GB_DENSITY, "lb/ft3", LIFTED[i].lb_ft3 / 1.05);
        gb_mass full = gb_mass_lying(&sand, gb_dry_mass(&sand, bucket, damp), damp);
        pub_check(&LIFTED[i].lb, pub_in(GB_MASS, "lb", full.kg));
        cr_expect(full.kg > gb_lift_limit().kg, "over the limit even without its pail");
    }
    pub_check(&LIMIT, pub_in(GB_MASS, "lb", gb_lift_limit().kg));
    pub_close(&table);
}

/* Measures by their geometry: 5 gal hold 41.7 lb of water (8.33 lb a gallon); a box of 12
   in each way is 1 ft3; a shovel of which 6 to 9 fill it is 1/6 to 1/9 of that. */
static const pub_figure BY_WATER = {"bucket of 41.7 lb of water, ft3",
                                    "Concrete Construction, \"Volume of grout\"",
                                    PUB_READ, .printed = 0.668, .tolerance = 0.0005};
static const pub_figure BOX = {"box of 12 in each way, ft3", "geometry", PUB_DERIVED,
                               .printed = 1, .tolerance = 0.0005};
static const pub_range SHOVEL = {"level shovel, ft3",
                                 "common practice, 6 to 9 a ft3",
                                 PUB_PRACTICE,
                                 1.0 / 9,
                                 1.0 / 6,
                                 NULL};

Test(published_bucket, measures) {
    gb_gauge bucket = gb_usual_gauge();
    bucket.water.kg = pub_si(GB_MASS, "lb", 41.7);
    pub_check(&BY_WATER, pub_in(GB_VOLUME, "ft3", gb_gauge_volume(&bucket, GB_US).m3));
    gb_gauge box = gb_usual_gauge();
    box.by = GB_BY_BOX;
    box.inside[0].m = box.inside[1].m = box.depth.m = pub_si(GB_LENGTH, "in", 12);
    pub_check(&BOX, pub_in(GB_VOLUME, "ft3", gb_gauge_volume(&box, GB_US).m3));
    for (int i = 6; i <= 9; i++) {
        const double count = i;
        gb_gauge shovel = gb_usual_gauge();
        shovel.by = GB_BY_SHOVEL;
        shovel.filled.m3 = pub_si(GB_VOLUME, "ft3", 1);
        shovel.shovels = &count;
        shovel.shovel_count = 1;
        pub_check_range(&SHOVEL,
                        pub_in(GB_VOLUME, "ft3", gb_gauge_volume(&shovel, GB_US).m3));
    }
}
