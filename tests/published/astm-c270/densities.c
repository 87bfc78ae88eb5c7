#include "published/published.h"

#include <criterion/criterion.h>

/* Bulk densities by which ASTM C270 proportions volumes. The standard's figures are whole
   and the product takes them as they are, so the tolerance is a rounding only. */

#define BIA_M1 "BIA M1 note 1, Masonry Magazine March 1978 p.14; as ASTM C270"

typedef struct density_row {
    pub_figure figure;
    const char *material;
    const char *unit;
} density_row;

static const density_row DENSITIES[] = {
    {{"C270 portland cement lb/ft3", BIA_M1, PUB_READ, .printed = 94, .tolerance = 1e-6},
     "portland-cement",
     "lb/ft3"},
    {{"C270 hydrated lime lb/ft3", BIA_M1, PUB_READ, .printed = 40, .tolerance = 1e-6},
     "hydrated-lime",
     "lb/ft3"},
    {{"C270 dry sand in damp loose sand lb/ft3", BIA_M1, PUB_READ, .printed = 80,
      .tolerance = 1e-6},
     "masonry-sand",
     "lb/ft3"},
    {{"C270 portland cement kg/m3", BIA_M1, PUB_READ, .printed = 1504, .tolerance = 0.5,
      .known_difference =
          "printed as 94 x 16; the exact pound and foot give 94 x 16.0185 = 1505.7"},
     "portland-cement",
     "kg/m3"},
    {{"C270 hydrated lime kg/m3", BIA_M1, PUB_READ, .printed = 640, .tolerance = 0.5,
      .known_difference = "printed as 40 x 16; exact 40 x 16.0185 = 640.7"},
     "hydrated-lime",
     "kg/m3"},
    {{"C270 damp loose sand, dry kg/m3", BIA_M1, PUB_READ, .printed = 1280,
      .tolerance = 0.5,
      .known_difference = "printed as 80 x 16; exact 80 x 16.0185 = 1281.5"},
     "masonry-sand",
     "kg/m3"},
};

Test(published_astm_c270, bulk_densities) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof DENSITIES / sizeof DENSITIES[0]; i++) {
        const density_row *row = &DENSITIES[i];
        const gb_material *m = pub_material(&table, row->material);
        pub_check(&row->figure, pub_in(GB_DENSITY, row->unit, m->bulk.kg_m3));
    }
    pub_close(&table);
}

static const pub_figure LIME_BAG = {"hydrated lime ft3 in a bag of 50 lb",
                                    "Beall, Masonry and Concrete, p.149", PUB_READ,
                                    .printed = 1.25, .tolerance = 0.005};
static const pub_figure MASONRY_BAG = {"bag ft3, whatever its mass",
                                       "Beall, Masonry and Concrete, p.149; ASTM C270",
                                       PUB_SECOND_HAND, .printed = 1, .tolerance = 1e-6};
static const struct masonry_bag {
    const char *material;
    pub_figure lb;
} MASONRY_BAGS[] = {
    {"masonry-cement-n",
     {"masonry cement N, usual bag lb", "trade practice", PUB_SECOND_HAND, .printed = 70,
      .tolerance = 0.5}},
    {"masonry-cement-s",
     {"masonry cement S, usual bag lb", "trade practice", PUB_SECOND_HAND, .printed = 75,
      .tolerance = 0.5}},
    {"masonry-cement-m",
     {"masonry cement M, usual bag lb", "trade practice", PUB_FROM_MEMORY, .printed = 80,
      .tolerance = 0.5}},
};
static const pub_figure CEMENT_BAG = {"portland cement ft3 in a bag of 94 lb", BIA_M1,
                                      PUB_READ, .printed = 1, .tolerance = 1e-6};

Test(published_astm_c270, volume_of_a_bag) {
    pub_table table;
    pub_open(&table);
    const gb_material *lime = pub_material(&table, "hydrated-lime");
    const gb_material *cement = pub_material(&table, "portland-cement");
    pub_check(&LIME_BAG, pub_in(GB_VOLUME, "ft3", lime->pack.kg / lime->bulk.kg_m3));
    pub_check(&CEMENT_BAG,
              pub_in(GB_VOLUME, "ft3", cement->pack.kg / cement->bulk.kg_m3));
    pub_close(&table);
}

Test(published_astm_c270, volume_of_a_masonry_cement_bag) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof MASONRY_BAGS / sizeof MASONRY_BAGS[0]; i++) {
        const gb_material *m = pub_material(&table, MASONRY_BAGS[i].material);
        pub_check(&MASONRY_BAGS[i].lb, pub_in(GB_MASS, "lb", m->pack.kg));
        pub_check_for(m->name, &MASONRY_BAG,
                      pub_in(GB_VOLUME, "ft3", m->pack.kg / m->bulk.kg_m3));
    }
    pub_close(&table);
}
