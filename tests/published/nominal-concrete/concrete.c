#include "published/published.h"

#include <criterion/criterion.h>

/* Nominal concretes by volume. The sources compute cement from a fixed dry-to-wet factor
   or from voids, and part by 7 % among themselves (1:2:4: 317, 329, 327 kg/m3); we add up
   solids, water and air, and stand 3 to 9 % under them. Tolerance 10 %; the tables of
   1916 lie farther. */

#define FACTOR   "dry-volume factor 1.54, cement 1440 kg/m3"
#define QA       "nominal mixes, published questions and answers"
#define GH       "Gillette and Hill 1908, table XII"
#define RULE_41  "rule 41 of the Navy's builders"
#define RULE_42  "rule 42 of the Navy's builders"
#define GRIFFITH "Griffith, Carpentry, 1916, and a concrete handbook of 1916"

/* Cement in a volume, counted in something. A barrel of 1908 is 380 lb. */
static const struct cement {
    const char *mix;
    const char *volume, *mass; /* units */
    double each;               /* mass of what is counted */
    pub_figure figure;
} CEMENTS[] = {
    {"concrete-25kg/1-2-4",
     "m3",
     "kg",
     1,
     {"cement in 1 m3 kg", FACTOR, PUB_DERIVED, .printed = 317, .percent = 10}},
    {"concrete-25kg/1-1half-3",
     "m3",
     "kg",
     1,
     {"cement in 1 m3 kg", FACTOR, PUB_DERIVED, .printed = 403, .percent = 10}},
    {"concrete-25kg/1-3-6",
     "m3",
     "kg",
     1,
     {"cement in 1 m3 kg", FACTOR, PUB_DERIVED, .printed = 222, .percent = 10}},
    {"concrete-25kg/1-2-4",
     "m3",
     "kg",
     50,
     {"bags of 50 kg in 1 m3", QA, PUB_READ, .printed = 6.37, .percent = 10}},
    {"concrete-25kg/1-1half-3",
     "m3",
     "kg",
     50,
     {"bags of 50 kg in 1 m3", QA, PUB_READ, .printed = 8.09, .percent = 10}},
    {"concrete/1-2-4",
     "yd3",
     "lb",
     380,
     {"barrels in 1 yd3", GH, PUB_READ, .printed = 1.46, .percent = 10}},
    {"concrete/1-3-6",
     "yd3",
     "lb",
     380,
     {"barrels in 1 yd3", GH, PUB_READ, .printed = 1.05, .percent = 10}},
    {"concrete/1-2-4",
     "yd3",
     "lb",
     94,
     {"sacks in 1 yd3", RULE_41, PUB_FROM_MEMORY, .printed = 5.86, .percent = 10}},
    {"concrete/1-2-4",
     "yd3",
     "lb",
     94,
     {"sacks in 1 yd3", RULE_42, PUB_FROM_MEMORY, .printed = 6, .percent = 10}},
    /* 41 and 42 over the sum of the parts. */
    {"concrete/1-1half-3",
     "yd3",
     "lb",
     94,
     {"sacks in 1 yd3, 41 / 5.5", RULE_41, PUB_DERIVED, .printed = 7.45, .percent = 10}},
    {"concrete/1-3-6",
     "yd3",
     "lb",
     94,
     {"sacks in 1 yd3, 41 / 10", RULE_41, PUB_DERIVED, .printed = 4.1, .percent = 10}},
    {"concrete/1-1half-3",
     "yd3",
     "lb",
     94,
     {"sacks in 1 yd3, 42 / 5.5", RULE_42, PUB_DERIVED, .printed = 7.64, .percent = 10,
      .known_difference =
          "6.8 by solids, water and air; the rule is of stone to 2-1/2 in, "
          "and the same for every proportion"}},
    {"concrete/1-3-6",
     "yd3",
     "lb",
     94,
     {"sacks in 1 yd3, 42 / 10", RULE_42, PUB_DERIVED, .printed = 4.2, .percent = 10}},
    {"concrete/1-2-4",
     "ft3",
     "lb",
     380,
     {"barrels in 1 ft3", GRIFFITH, PUB_READ, .printed = 0.058, .percent = 10,
      .known_difference =
          "the table counts cement packed in the barrel, 3.8 ft3, and stone of 45 % "
          "voids; ours is loose at 94 lb/ft3, with stone of 40 %"}},
    {"concrete/1-3-6",
     "ft3",
     "lb",
     380,
     {"barrels in 1 ft3", GRIFFITH, PUB_READ, .printed = 0.041, .percent = 10,
      .known_difference =
          "the table counts cement packed in the barrel, 3.8 ft3, and stone of 45 % "
          "voids; ours is loose at 94 lb/ft3, with stone of 40 %"}},
};

Test(published_nominal_concrete, cement) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof CEMENTS / sizeof CEMENTS[0]; i++) {
        const struct cement *row = &CEMENTS[i];
        const gb_mix *mix = pub_mix(&table, row->mix);
        double kg = pub_kind_per_m3(mix, GB_CEMENT) * pub_si(GB_VOLUME, row->volume, 1);
        pub_check_for(row->mix, &row->figure, pub_in(GB_MASS, row->mass, kg) / row->each);
    }
    pub_close(&table);
}

/* Sand and stone loose in 1 yd3, as cubic yards. */
static const struct aggregate {
    const char *mix;
    gb_material_kind kind;
    pub_figure yd3;
} AGGREGATES[] = {
    {"concrete/1-2-4",
     GB_SAND,
     {"sand in 1 yd3", GH, PUB_READ, .printed = 0.41, .percent = 10}},
    {"concrete/1-2-4",
     GB_COARSE,
     {"stone in 1 yd3", GH, PUB_READ, .printed = 0.82, .percent = 10}},
    {"concrete/1-3-6",
     GB_SAND,
     {"sand in 1 yd3", GH, PUB_READ, .printed = 0.44, .percent = 10}},
    {"concrete/1-3-6",
     GB_COARSE,
     {"stone in 1 yd3", GH, PUB_READ, .printed = 0.88, .percent = 10}},
    /* 11.72 and 23.44 ft3 by rule 41, 12 and 24 by rule 42. */
    {"concrete/1-2-4",
     GB_SAND,
     {"sand in 1 yd3, rule 41", RULE_41, PUB_FROM_MEMORY, .printed = 11.72 / 27,
      .percent = 10}},
    {"concrete/1-2-4",
     GB_COARSE,
     {"stone in 1 yd3, rule 41", RULE_41, PUB_FROM_MEMORY, .printed = 23.44 / 27,
      .percent = 10}},
    {"concrete/1-2-4",
     GB_SAND,
     {"sand in 1 yd3, rule 42", RULE_42, PUB_FROM_MEMORY, .printed = 12.0 / 27,
      .percent = 10}},
    {"concrete/1-2-4",
     GB_COARSE,
     {"stone in 1 yd3, rule 42", RULE_42, PUB_FROM_MEMORY, .printed = 24.0 / 27,
      .percent = 10}},
};

Test(published_nominal_concrete, aggregates) {
    pub_table table;
    pub_open(&table);
    double sand = pub_material(&table, "concrete-sand")->bulk.kg_m3;
    double stone = pub_material(&table, "crushed-stone")->bulk.kg_m3;
    for (size_t i = 0; i < sizeof AGGREGATES / sizeof AGGREGATES[0]; i++) {
        const struct aggregate *row = &AGGREGATES[i];
        double kg = pub_kind_per_m3(pub_mix(&table, row->mix), row->kind);
        pub_check_for(row->mix, &row->yd3, kg / (row->kind == GB_SAND ? sand : stone));
    }
    pub_close(&table);
}

/* Two sacks, 3-3/4 ft3 of sand, 7-1/2 of stone and 10 gal make 8-1/2 ft3. */
static const pub_figure BATCH = {"two sacks of 1:2:4 make ft3",
                                 "a concrete handbook of 1916, table I", PUB_READ,
                                 .printed = 8.5, .percent = 10};

/* Of 1:2-1/2:5: 4-3/4 ft3, 9-1/2 and 12-1/2 gal make 10 ft3. */
static const pub_figure LEAN_BATCH = {
    "two sacks of 1:2-1/2:5 make ft3",
    "a concrete handbook of 1916, table I",
    PUB_READ,
    .printed = 10,
    .percent = 10,
    .known_difference =
        "11.0 ft3 by solids, water and air: the solids and the water alone "
        "are 10.8"};

static double made_ft3(pub_table *table, double sand_ft3, double stone_ft3, double gal) {
    double ft3 = pub_si(GB_VOLUME, "ft3", 1);
    pub_masses masses = {
        .cement = pub_si(GB_MASS, "lb", 2 * 94),
        .sand = sand_ft3 * ft3 * pub_material(table, "concrete-sand")->bulk.kg_m3,
        .coarse = stone_ft3 * ft3 * pub_material(table, "crushed-stone")->bulk.kg_m3,
        .water = pub_water_mass((gb_volume){pub_si(GB_VOLUME, "gal", gal)}).kg,
        .sand_gravity = 2.65,
        .coarse_gravity = 2.65,
        .air = 0.02};
    pub_concrete c;
    pub_make_concrete(table, &masses, &c);
    gb_recipe r = pub_recipe(&c.mix);
    return masses.cement / r.bag.kg * r.yield.m3 / ft3;
}

Test(published_nominal_concrete, batch_of_two_sacks) {
    pub_table table;
    pub_open(&table);
    pub_check(&BATCH, made_ft3(&table, 3.75, 7.5, 10));
    pub_check(&LEAN_BATCH, made_ft3(&table, 4.75, 9.5, 12.5));
    pub_close(&table);
}

/* Most water, L to 50 kg of cement: never past. */
#define IS_456 "IS 456 table 9"

static const struct limit {
    const char *mix;
    pub_figure litres;
} LIMITS[] = {
    {"concrete/1-3-6",
     {"M10, most water L", IS_456, PUB_READ, .printed = 34, .tolerance = 0.5}},
    {"concrete/1-2-4",
     {"M15, most water L", IS_456, PUB_READ, .printed = 32, .tolerance = 0.5}},
    {"concrete/1-1half-3",
     {"M20, most water L", IS_456, PUB_READ, .printed = 30, .tolerance = 0.5}},
};

/* Dry aggregate in kg to 50 kg of cement, fine and coarse together; BS CP114 prints the
   two for 19 mm stone at low and at medium workability. */
#define CP114    "BS CP114:1948, nominal mixes, 19 mm"
#define CP114_38 "BS CP114:1948, nominal mixes, 38 mm"

static const struct mass {
    const char *mix;
    gb_material_kind kind;
    pub_range kg;
} MASSES[] = {
    {"concrete-25kg/1-1half-3",
     GB_SAND,
     {"sand kg", CP114, PUB_READ, 80, 80,
      "1.5 volumes of damp loose sand: 50/1440 x 1.5 x 1373 = 71.5 kg; CP114 has it "
      "dry"}},
    {"concrete-25kg/1-1half-3",
     GB_COARSE,
     {"stone kg", CP114, PUB_READ, 135, 165,
      "3 volumes at 1602 kg/m3 are 167 kg: 1.1 % over the low workability"}},
    {"concrete-25kg/1-2-4", GB_SAND, {"sand kg", CP114, PUB_READ, 90, 100, NULL}},
    {"concrete-25kg/1-2-4",
     GB_COARSE,
     {"stone kg", CP114, PUB_READ, 155, 190,
      "4 volumes at 1602 kg/m3 are 222 kg; CP114 lessens the stone for workability and "
      "takes 225 for 38 mm stone"}},
    {"concrete-25kg/1-1half-3",
     GB_COARSE,
     {"stone to 38 mm kg", CP114_38, PUB_READ, 165, 200, NULL}},
    {"concrete-25kg/1-2-4",
     GB_COARSE,
     {"stone to 38 mm kg", CP114_38, PUB_READ, 190, 225, NULL}},
};

Test(published_nominal_concrete, water_and_masses) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof LIMITS / sizeof LIMITS[0]; i++) {
        gb_recipe r = pub_recipe(pub_mix(&table, LIMITS[i].mix));
        double litres = pub_in(GB_VOLUME, "L", pub_water_volume(r.water_most).m3);
        pub_check_for(LIMITS[i].mix, &LIMITS[i].litres, litres / r.binder.kg * 50);
    }
    for (size_t i = 0; i < sizeof MASSES / sizeof MASSES[0]; i++) {
        const gb_mix *mix = pub_mix(&table, MASSES[i].mix);
        double share =
            pub_kind_per_m3(mix, MASSES[i].kind) / pub_kind_per_m3(mix, GB_CEMENT);
        pub_check_range_for(mix->id, &MASSES[i].kg, 50 * share);
    }
    pub_close(&table);
}

/* ---- IS 456 by mass ---------------------------------------------------------------- */

/* Most aggregate in all, kg to 50 kg of cement, dry; a mix that is to be this grade
   stands just under it: 90 % of it and more (ours). */
static const struct most {
    const char *mix;
    pub_range kg;
} MOST[] = {
    {"concrete/1-1half-3", {"M20, aggregate kg", IS_456, PUB_READ, 225, 250, NULL}},
    {"concrete/1-2-4", {"M15, aggregate kg", IS_456, PUB_READ, 297, 330, NULL}},
    {"concrete/1-3-6", {"M10, aggregate kg", IS_456, PUB_READ, 432, 480, NULL}},
};

/* Stone to sand 1-1/2 to 2-1/2, generally 2. */
static const pub_range STONE_TO_SAND = {
    "stone to sand", IS_456, PUB_READ, 1.5, 2.5, NULL};

Test(published_nominal_concrete, aggregate_in_all) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof MOST / sizeof MOST[0]; i++) {
        const gb_mix *mix = pub_mix(&table, MOST[i].mix);
        double sand = pub_kind_per_m3(mix, GB_SAND);
        double stone = pub_kind_per_m3(mix, GB_COARSE);
        double cement = pub_kind_per_m3(mix, GB_CEMENT);
        pub_check_range_for(mix->id, &MOST[i].kg, 50 * (sand + stone) / cement);
        pub_check_range_for(mix->id, &STONE_TO_SAND, stone / sand);
    }
    pub_close(&table);
}

/* Bags of 50 kg in 1 m3, as a vendor prints them beside the table's masses and litres.
   The volume is ours: gravity 2.65, 2 % of air. */
#define VENDOR "a vendor's column beside IS 456 table 9"

static const struct bags {
    double aggregate, litres; /* to a bag */
    pub_figure bags;
} BAGS[] = {
    {250,
     30,
     {"M20, bags in 1 m3", VENDOR, PUB_SECOND_HAND, .printed = 8.00, .percent = 5,
      .known_difference =
          "6.99 by the masses of the table itself: 8 bags of it make 1.14 "
          "m3; the column takes a fixed dry-to-wet factor"}},
    {330,
     32,
     {"M15, bags in 1 m3", VENDOR, PUB_SECOND_HAND, .printed = 6.40, .percent = 5,
      .known_difference = "5.69 by the masses of the table itself; the column takes a "
                          "fixed dry-to-wet factor"}},
    {480,
     34,
     {"M10, bags in 1 m3", VENDOR, PUB_SECOND_HAND, .printed = 4.40, .percent = 5}},
    {625,
     45,
     {"M7.5, bags in 1 m3", VENDOR, PUB_SECOND_HAND, .printed = 3.40, .percent = 5}},
};

Test(published_nominal_concrete, bags_by_mass) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof BAGS / sizeof BAGS[0]; i++) {
        const pub_masses masses = {.cement = 50,
                                   .sand = BAGS[i].aggregate / 3, /* 1:2 */
                                   .coarse = BAGS[i].aggregate * 2 / 3,
                                   .water = BAGS[i].litres,
                                   .sand_gravity = 2.65,
                                   .coarse_gravity = 2.65,
                                   .air = 0.02};
        pub_concrete c;
        pub_make_concrete(&table, &masses, &c);
        gb_recipe r = pub_recipe(&c.mix);
        pub_check(&BAGS[i].bags, 1 / (masses.cement / r.bag.kg * r.yield.m3));
    }
    pub_close(&table);
}
