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

Test(published_nominal_concrete, batch_of_two_sacks) {
    pub_table table;
    pub_open(&table);
    double ft3 = pub_si(GB_VOLUME, "ft3", 1);
    pub_masses masses = {
        .cement = pub_si(GB_MASS, "lb", 2 * 94),
        .sand = 3.75 * ft3 * pub_material(&table, "concrete-sand")->bulk.kg_m3,
        .coarse = 7.5 * ft3 * pub_material(&table, "crushed-stone")->bulk.kg_m3,
        .water = pub_water_mass((gb_volume){pub_si(GB_VOLUME, "gal", 10)}).kg,
        .sand_gravity = 2.65,
        .coarse_gravity = 2.65,
        .air = 0.02};
    pub_concrete c;
    pub_make_concrete(&table, &masses, &c);
    gb_recipe r = pub_recipe(&c.mix);
    pub_check(&BATCH, masses.cement / r.bag.kg * r.yield.m3 / ft3);
    pub_close(&table);
}

/* Most water, L to 50 kg of cement: never past. */
#define IS_456 "IS 456 table 9"

static const struct limit {
    const char *mix;
    pub_figure litres;
} LIMITS[] = {
    {"concrete/1-3-6",
     {"M10, most water L", IS_456, PUB_FROM_MEMORY, .printed = 34, .tolerance = 0.5}},
    {"concrete/1-2-4",
     {"M15, most water L", IS_456, PUB_FROM_MEMORY, .printed = 32, .tolerance = 0.5}},
    {"concrete/1-1half-3",
     {"M20, most water L", IS_456, PUB_FROM_MEMORY, .printed = 30, .tolerance = 0.5}},
};

/* Dry aggregate in kg to 50 kg of cement, fine and coarse together; BS CP114 prints the
   two for 19 mm stone at low and at medium workability. */
#define CP114 "BS CP114:1948, nominal mixes, 19 mm"

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
