#include "published/published.h"

#include <criterion/criterion.h>

/* Gravities and densities in print against the table of materials. */

#define USUAL "usual gravity"

static const struct gravity {
    const char *material;
    pub_range range;
} GRAVITIES[] = {
    {"portland-cement", {"3.14 to 3.15", USUAL, PUB_READ, 3.14, 3.15, NULL}},
    {"white-cement", {"3.14 to 3.15", USUAL, PUB_READ, 3.14, 3.15, NULL}},
    {"air-entraining-cement", {"3.14 to 3.15", USUAL, PUB_READ, 3.14, 3.15, NULL}},
    {"en-cement", {"3.14 to 3.15", USUAL, PUB_READ, 3.14, 3.15, NULL}},
    {"hydrated-lime", {"2.2 to 2.4", USUAL, PUB_FROM_MEMORY, 2.2, 2.4, NULL}},
    {"en-lime", {"2.2 to 2.4", USUAL, PUB_FROM_MEMORY, 2.2, 2.4, NULL}},
    {"masonry-sand", {"2.6 to 2.7", USUAL, PUB_FROM_MEMORY, 2.6, 2.7, NULL}},
    {"dry-sand", {"2.6 to 2.7", USUAL, PUB_FROM_MEMORY, 2.6, 2.7, NULL}},
    {"concrete-sand", {"2.6 to 2.7", USUAL, PUB_FROM_MEMORY, 2.6, 2.7, NULL}},
    {"box-sand", {"2.6 to 2.7", USUAL, PUB_FROM_MEMORY, 2.6, 2.7, NULL}},
    /* Quartz and Barre granite: 2.5 to 2.8 and 2.65. */
    {"crushed-stone",
     {"quartz 2.5 to 2.8", "Gillette and Hill 1908, tables VI to VIII", PUB_READ, 2.5,
      2.8, NULL}},
    {"pea-gravel",
     {"quartz 2.5 to 2.8", "Gillette and Hill 1908, tables VI to VIII", PUB_READ, 2.5,
      2.8, NULL}},
};

Test(published_material_figures, gravities) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof GRAVITIES / sizeof GRAVITIES[0]; i++)
        pub_check_range_for(GRAVITIES[i].material, &GRAVITIES[i].range,
                            pub_material(&table, GRAVITIES[i].material)->gravity);
    pub_close(&table);
}

#define INDIA "Indian estimating; CPWD-type specification"
#define PCA   "PCA Homeowner's Guide in Beall, Masonry and Concrete, figure 3-3"

static const struct bulk {
    const char *material;
    const char *unit;
    pub_figure figure;
} BULKS[] = {
    {"en-cement",
     "kg/m3",
     {"cement kg/m3", INDIA, PUB_READ, .printed = 1440, .tolerance = 5}},
    {"en-cement",
     "lb/ft3",
     {"cement lb/ft3", INDIA, PUB_READ, .printed = 89.9, .tolerance = 0.05}},
    {"en-cement",
     "kg/m3",
     {"cement kg/m3 by a bag of 0.035 m3", INDIA, PUB_READ, .printed = 1429,
      .tolerance = 0.5, .known_difference = "50 / 0.035; the same books take 1440"}},
    {"en-cement",
     "kg/m3",
     {"cement kg/m3 in the CPWD analysis", "CPWD DAR 3.1, 1020 kg / 0.7125 m3",
      PUB_DERIVED, .printed = 1430, .tolerance = 5,
      .known_difference = "1431.6 of the analysis against the 1440 of estimating"}},
    {"en-lime",
     "kg/m3",
     {"hydrated lime kg/m3", "BIA M1 note 1; as ASTM C270", PUB_READ, .printed = 640,
      .tolerance = 0.5}},
    {"crushed-stone",
     "lb/ft3",
     {"coarse aggregate lb/ft3", PCA, PUB_READ, .printed = 100, .tolerance = 0.5}},
    {"pea-gravel",
     "lb/ft3",
     {"coarse aggregate lb/ft3", PCA, PUB_READ, .printed = 100, .tolerance = 0.5}},
    {"dry-sand",
     "lb/ft3",
     {"dry sand shovelled lb/ft3", "Sabin, Cement and Concrete, art. 36", PUB_READ,
      .printed = 100, .tolerance = 0.5,
      .known_difference = "ours is 1400 kg/m3 = 87.4 lb/ft3, loose, as the CPWD analyses "
                          "fit; Sabin's sand has 3/8 of voids, ours 0.47"}},
};

Test(published_material_figures, bulk_densities) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof BULKS / sizeof BULKS[0]; i++) {
        const gb_material *m = pub_material(&table, BULKS[i].material);
        pub_check_for(m->name, &BULKS[i].figure,
                      pub_in(GB_DENSITY, BULKS[i].unit, m->bulk.kg_m3));
    }
    pub_close(&table);
}

/* 90 lb/ft3 as it lies; with 5 % of moisture the dry mass is 85.7. */
static const pub_figure DAMP_SAND = {"concrete sand as it lies damp lb/ft3", PCA,
                                     PUB_READ, .printed = 90, .tolerance = 0.5};
static const pub_figure BAG_M3 = {"50 kg of cement m3", INDIA, PUB_READ,
                                  .printed = 0.0347, .tolerance = 0.00005};
static const pub_figure BAG_FT3 = {"50 kg of cement ft3", INDIA, PUB_READ,
                                   .printed = 1.226, .tolerance = 0.0005};
/* Sand of 45 % voids is the looser of the two that are printed. */
static const pub_figure VOIDS = {"sand of 45 % voids lb/ft3", "Gillette and Hill 1908",
                                 PUB_READ, .printed = 91, .percent = 5};

Test(published_material_figures, sand_and_bags) {
    pub_table table;
    pub_open(&table);
    double damp = 1 + gb_sand_moisture(GB_DAMP).of_one;
    double sand = pub_material(&table, "concrete-sand")->bulk.kg_m3 * damp;
    pub_check(&DAMP_SAND, pub_in(GB_DENSITY, "lb/ft3", sand));
    double bag = 50 / pub_material(&table, "en-cement")->bulk.kg_m3;
    pub_check(&BAG_M3, bag);
    pub_check(&BAG_FT3, pub_in(GB_VOLUME, "ft3", bag));
    double loose = pub_material(&table, "masonry-sand")->dry_loose.kg_m3;
    pub_check(&VOIDS, pub_in(GB_DENSITY, "lb/ft3", loose));
    pub_close(&table);
}
