#include "published/published.h"

#include <criterion/criterion.h>

/* Water as a share of the dry mass. The bands are common practice, from memory, for an
   80 lb bag: a damp bed 3 to 4 qt, 7.8 to 10.4 %; a plastic setting mortar 5 to 6-1/2 qt,
   13 to 17 %. Their ends are read to the printed tenth and whole percent. */

#define DAMP_BED "damp bed of an 80 lb bag, common practice"
#define PLASTIC  "plastic setting mortar of an 80 lb bag, common practice"

static const double BAG_LB = 80;

typedef struct water_row {
    const char *mix;
    pub_range least, usual, most; /* % of the dry mass */
    pub_range usual_qt;
} water_row;

static const water_row STIFF[] = {
    {"bed/stiff-1-3",
     {"stiff-1-3 least %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"stiff-1-3 usual %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"stiff-1-3 never past %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45,
      .known_difference =
          "112 % of a demand of 9.63 % is 10.8 %: 0.15 qt over the band's upper end"},
     {"stiff-1-3 usual qt to 80 lb", DAMP_BED, PUB_FROM_MEMORY, .low = 3, .high = 4}},
    {"bed/stiff-1-4",
     {"stiff-1-4 least %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"stiff-1-4 usual %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"stiff-1-4 never past %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"stiff-1-4 usual qt to 80 lb", DAMP_BED, PUB_FROM_MEMORY, .low = 3, .high = 4}},
};

static double percent(gb_mass water, const gb_recipe *r) {
    return 100 * water.kg / r->dry.kg;
}

Test(published_water_figures, stiff_beds) {
    pub_table table;
    pub_open(&table);
    double bag = pub_si(GB_MASS, "lb", BAG_LB);
    for (size_t i = 0; i < sizeof STIFF / sizeof STIFF[0]; i++) {
        gb_recipe r = pub_recipe(pub_mix(&table, STIFF[i].mix));
        pub_check_range(&STIFF[i].least, percent(r.water_least, &r));
        pub_check_range(&STIFF[i].usual, percent(r.water_usual, &r));
        pub_check_range(&STIFF[i].most, percent(r.water_most, &r));
        double m3 = pub_water_volume(r.water_usual).m3 / r.dry.kg * bag;
        pub_check_range(&STIFF[i].usual_qt, pub_in(GB_VOLUME, "qt", m3));
    }
    pub_close(&table);
}

static const struct plastic {
    pub_ratio ratio;
    pub_range range;
} PLASTICS[] = {
    {{1, 0, 3, 0, 0},
     {"plastic 1:3 usual %", PLASTIC, PUB_FROM_MEMORY, .low = 12.5, .high = 17.5}},
    {{1, 0, 4, 0, 0},
     {"plastic 1:4 usual %", PLASTIC, PUB_FROM_MEMORY, .low = 12.5, .high = 17.5}},
};

Test(published_water_figures, plastic_mortar) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof PLASTICS / sizeof PLASTICS[0]; i++) {
        pub_mortar m;
        pub_make_mortar(&table, &PLASTICS[i].ratio, &m);
        gb_recipe r = pub_recipe(&m.mix);
        pub_check_range(&PLASTICS[i].range, percent(r.water_usual, &r));
    }
    pub_close(&table);
}

/* The shipped plastic beds and mortars of cement and sand, and the bagged mortars, by the
   plastic band; the water of the label is the usual one. */
static const char *const SHIPPED_PLASTIC[] = {
    "plastic-bed/1-3",       "plastic-bed/1-4",       "plastic-bed/1-5",
    "masonry-cement/type-n", "masonry-cement/type-s", "masonry-cement/type-m",
    "bagged/mortar-60lb",    "bagged/mortar-80lb",    "bagged/mortar-25kg",
};
static const pub_range PLASTIC_BAND = {"usual %", PLASTIC, PUB_FROM_MEMORY, .low = 12.5,
                                       .high = 17.5};

Test(published_water_figures, shipped_plastic_mortars) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof SHIPPED_PLASTIC / sizeof SHIPPED_PLASTIC[0]; i++) {
        const gb_mix *mix = pub_mix(&table, SHIPPED_PLASTIC[i]);
        gb_recipe r = pub_recipe(mix);
        pub_check_range_for(mix->id, &PLASTIC_BAND, percent(r.water_usual, &r));
    }
    pub_close(&table);
}

/* Bagged setting blends by the band of damp beds. */
static const struct blend {
    const char *mix;
    pub_range least, usual, most;
} BLENDS[] = {
    {"bagged/setting-80lb",
     {"setting-80lb least %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"setting-80lb usual %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"setting-80lb never past %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75,
      .high = 10.45}},
    {"bagged/setting-60lb",
     {"setting-60lb least %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"setting-60lb usual %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"setting-60lb never past %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75,
      .high = 10.45}},
    {"bagged/setting-25kg",
     {"setting-25kg least %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"setting-25kg usual %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75, .high = 10.45},
     {"setting-25kg never past %", DAMP_BED, PUB_FROM_MEMORY, .low = 7.75,
      .high = 10.45}},
};

Test(published_water_figures, setting_blends) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof BLENDS / sizeof BLENDS[0]; i++) {
        gb_recipe r = pub_recipe(pub_mix(&table, BLENDS[i].mix));
        pub_check_range(&BLENDS[i].least, percent(r.water_least, &r));
        pub_check_range(&BLENDS[i].usual, percent(r.water_usual, &r));
        pub_check_range(&BLENDS[i].most, percent(r.water_most, &r));
    }
    pub_close(&table);
}

/* What sand of 5 % moisture brings: 100 lb of dry sand 5 lb = 2.4 qt; the 480 lb of a bag
   of Type N 24 lb = 2.9 gal. */
#define DAMP_SAND "water of damp sand, site arithmetic"
static const pub_figure SAND_LB = {"100 lb of sand at 5 %, lb", DAMP_SAND, PUB_DERIVED,
                                   .printed = 5, .tolerance = 0.05};
static const pub_figure SAND_QT = {"100 lb of sand at 5 %, qt", DAMP_SAND, PUB_DERIVED,
                                   .printed = 2.4, .tolerance = 0.05};
static const pub_figure N_SAND_LB = {"Type N, sand of one bag at 5 %, lb", DAMP_SAND,
                                     PUB_DERIVED, .printed = 24, .tolerance = 0.5};
static const pub_figure N_SAND_GAL = {"Type N, sand of one bag at 5 %, gal", DAMP_SAND,
                                      PUB_DERIVED, .printed = 2.9, .tolerance = 0.05};
static const pub_figure N_WATER = {
    "Type N, water of one bag, gal",
    "absolute-volume estimate, 6 ft3 a sack, 6 % air",
    PUB_DERIVED,
    .printed = 14.8,
    .tolerance = 0.05,
    .known_difference =
        "0.22 x 94 + 40 + 0.12 x 480 = 118.3 lb, 14.2 gal; ours is a fitted "
        "demand, 5 % air and 5.85 ft3 a sack"};

/* Water to add with dry sand, less that with sand of 5 %. */
static gb_mass brought(const gb_mix *mix, double bags) {
    gb_recipe r = pub_recipe(mix);
    gb_water_row dry = {{0}, {0}, {0}, {0}};
    gb_water_row damp = {{0}, {0}, {0}, {0}};
    cr_assert(gb_water_to_add(mix, &r, (gb_share){0}, bags, &dry) == GB_OK, "dry");
    cr_assert(gb_water_to_add(mix, &r, (gb_share){0.05}, bags, &damp) == GB_OK, "damp");
    return (gb_mass){dry.usual.kg - damp.usual.kg};
}

Test(published_water_figures, water_of_damp_sand) {
    pub_table table;
    pub_open(&table);
    const gb_mix *bed = pub_mix(&table, "bed/stiff-1-4");
    double bags = pub_si(GB_MASS, "lb", 100) / pub_recipe(bed).sand.kg;
    gb_mass hundred = brought(bed, bags);
    pub_check(&SAND_LB, pub_in(GB_MASS, "lb", hundred.kg));
    pub_check(&SAND_QT, pub_in(GB_VOLUME, "qt", pub_water_volume(hundred).m3));
    const gb_mix *n = pub_mix(&table, "mortar/type-n");
    gb_mass bag = brought(n, 1);
    pub_check(&N_SAND_LB, pub_in(GB_MASS, "lb", bag.kg));
    pub_check(&N_SAND_GAL, pub_in(GB_VOLUME, "gal", pub_water_volume(bag).m3));
    pub_check(&N_WATER, pub_in(GB_VOLUME, "gal", pub_water_of_bag(&table, n).m3));
    pub_close(&table);
}

/* An older rule: % of cement and sand = (8 x sand + 24) / (sand + cement), parts by
   volume. Our plastic demand was fitted to yields, not to this rule, and stands 1.4
   to 3.3 points over it; 1:1 prints 16. */
#define RULE "Gillette and Hill 1908, mortar water"

static const struct rule {
    pub_ratio ratio;
    pub_figure figure;
} RULES[] = {
    {{1, 0, 1, 0, 0},
     {"1908 rule 1:1 %", RULE, PUB_READ, .printed = 16, .tolerance = 0.5,
      .known_difference = "our plastic demand is 17.4 %"}},
    {{1, 0, 2, 0, 0},
     {"1908 rule 1:2 %", RULE, PUB_READ, .printed = 13.5, .tolerance = 0.25,
      .known_difference = "our plastic demand is 15.7 %"}},
    {{1, 0, 3, 0, 0},
     {"1908 rule 1:3 %", RULE, PUB_READ, .printed = 12, .tolerance = 0.5,
      .known_difference = "our plastic demand is 14.8 %"}},
    {{1, 0, 6, 0, 0},
     {"1908 rule 1:6 %", RULE, PUB_READ, .printed = 10.3, .tolerance = 0.05,
      .known_difference = "our plastic demand is 13.6 %"}},
};

Test(published_water_figures, older_rule) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof RULES / sizeof RULES[0]; i++) {
        pub_mortar m;
        pub_make_mortar(&table, &RULES[i].ratio, &m);
        gb_recipe r = pub_recipe(&m.mix);
        pub_check(&RULES[i].figure, percent(r.water_usual, &r));
    }
    pub_close(&table);
}
