#include "published/published.h"

#include <criterion/criterion.h>

/* Neat cement slurry for stone: water to cement 0.40 to 0.50 by mass (common practice,
   from memory). Volumes and waters per bag of 94 lb are arithmetic on that. */

#define PRACTICE "stone slurry, common practice"

static const struct row {
    double water_per_cement;
    pub_figure yield; /* ft3 */
    pub_figure water; /* gal */
    pub_figure litres;
} ROWS[] = {
    {0.40,
     {"slurry 0.40 ft3 a bag", PRACTICE, PUB_DERIVED, .printed = 1.08,
      .tolerance = 0.005},
     {"slurry 0.40 gal a bag", PRACTICE, PUB_DERIVED, .printed = 4.5, .tolerance = 0.05},
     {"slurry 0.40 L a bag", PRACTICE, PUB_DERIVED, .printed = 17.1, .tolerance = 0.05}},
    {0.45,
     {"slurry 0.45 ft3 a bag", PRACTICE, PUB_DERIVED, .printed = 1.16,
      .tolerance = 0.005},
     {"slurry 0.45 gal a bag", PRACTICE, PUB_DERIVED, .printed = 5.1, .tolerance = 0.05},
     {"slurry 0.45 L a bag", PRACTICE, PUB_DERIVED, .printed = 19.2, .tolerance = 0.05}},
    {0.50,
     {"slurry 0.50 ft3 a bag", PRACTICE, PUB_DERIVED, .printed = 1.23,
      .tolerance = 0.005},
     {"slurry 0.50 gal a bag", PRACTICE, PUB_DERIVED, .printed = 5.6, .tolerance = 0.05},
     {"slurry 0.50 L a bag", PRACTICE, PUB_DERIVED, .printed = 21.3, .tolerance = 0.05}},
};

Test(published_slurry_practice, bag_of_slurry) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        pub_paste paste;
        pub_make_paste(&table, ROWS[i].water_per_cement, 3.15, &paste);
        gb_recipe r = pub_recipe(&paste.mix);
        double water_m3 = pub_water_of_bag(&table, &paste.mix).m3;
        pub_check(&ROWS[i].yield, pub_in(GB_VOLUME, "ft3", r.yield.m3));
        pub_check(&ROWS[i].water, pub_in(GB_VOLUME, "gal", water_m3));
        pub_check(&ROWS[i].litres, pub_in(GB_VOLUME, "L", water_m3));
    }
    pub_close(&table);
}

/* The shipped slurry holds the same three waters. */
static const pub_figure SHIPPED[] = {
    {"slurry/neat least", PRACTICE, PUB_PRACTICE, .printed = 0.40, .tolerance = 1e-9},
    {"slurry/neat usual", PRACTICE, PUB_PRACTICE, .printed = 0.45, .tolerance = 1e-9},
    {"slurry/neat never past", PRACTICE, PUB_PRACTICE, .printed = 0.50,
     .tolerance = 1e-9},
};
static const pub_figure POT_LIFE = {"slurry in the pot min", PRACTICE, PUB_PRACTICE,
                                    .printed = 20, .tolerance = 0.5};

Test(published_slurry_practice, shipped_water_and_life) {
    pub_table table;
    pub_open(&table);
    const gb_mix *mix = pub_mix(&table, "slurry/neat");
    gb_recipe r = pub_recipe(mix);
    pub_check(&SHIPPED[0], r.water_least.kg / r.binder.kg);
    pub_check(&SHIPPED[1], r.water_usual.kg / r.binder.kg);
    pub_check(&SHIPPED[2], r.water_most.kg / r.binder.kg);
    pub_check(&POT_LIFE, pub_in(GB_DURATION, "min", mix->life.s));
    pub_close(&table);
}

/* Thickness of a bond coat: 1/32 to 1/16 in, to 1/8 in in stone practice. */
static const pub_range THICKNESS[] = {
    {"slurry on a smooth back in", "ANSI A108.1A", PUB_FROM_MEMORY, .low = 1.0 / 32,
     .high = 1.0 / 16},
    {"slurry on a scored back in", "stone practice after ANSI A108.1A", PUB_FROM_MEMORY,
     .low = 1.0 / 32, .high = 1.0 / 8},
};

/* What a bag covers at the two ends of the water: "about 210 to 235 ft2" at 1/16 in,
   rounded to 5 ft2; "about 105 to 118" at 1/8 in, the lower rounded to 5 and the upper
   to 1. */
static const struct cover {
    double inches;
    double water_per_cement;
    pub_figure figure; /* ft2 a bag */
} COVERS[] = {
    {1.0 / 16,
     0.40,
     {"bag covers at 1/16 in, 0.40", PRACTICE, PUB_DERIVED, .printed = 210,
      .tolerance = 2.5, .known_difference = "1.0803 ft3 x 12 x 16 = 207.4 ft2"}},
    {1.0 / 16,
     0.50,
     {"bag covers at 1/16 in, 0.50", PRACTICE, PUB_DERIVED, .printed = 235,
      .tolerance = 2.5}},
    {1.0 / 8,
     0.40,
     {"bag covers at 1/8 in, 0.40", PRACTICE, PUB_DERIVED, .printed = 105,
      .tolerance = 2.5}},
    {1.0 / 8,
     0.50,
     {"bag covers at 1/8 in, 0.50", PRACTICE, PUB_DERIVED, .printed = 118,
      .tolerance = 0.5}},
};

Test(published_slurry_practice, coverage) {
    pub_check_range(&THICKNESS[0], pub_in(GB_LENGTH, "in", gb_usual_slurry(GB_SMOOTH).m));
    pub_check_range(&THICKNESS[1], pub_in(GB_LENGTH, "in", gb_usual_slurry(GB_SCORED).m));
    pub_table table;
    pub_open(&table);
    double foot = pub_si(GB_LENGTH, "ft", 1);
    for (size_t i = 0; i < sizeof COVERS / sizeof COVERS[0]; i++) {
        pub_paste paste;
        pub_make_paste(&table, COVERS[i].water_per_cement, 3.15, &paste);
        pub_laid laid = {GB_SLURRY, foot, foot, pub_si(GB_LENGTH, "in", COVERS[i].inches),
                         1};
        pub_check(&COVERS[i].figure,
                  pub_recipe(&paste.mix).yield.m3 / pub_take(&laid).net.m3);
    }
    pub_close(&table);
}
