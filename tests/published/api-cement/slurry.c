#include "published/published.h"

#include <criterion/criterion.h>

/* Slurries of the oil field by the sack of 94 lb. Its cement has the gravity 3.14, which
   these rows take. 1.14 ft3 belongs to 4.97 gal (44 % water), so the volumes are compared
   within 0.01 ft3; densities within half the printed digit. */

#define CLASS_G "oil-field glossary and course text, API class G"
#define CLASS_A "API practice, class A"

static const double OIL_FIELD_GRAVITY = 3.14;

static const struct slurry {
    double gal;
    pub_figure yield;   /* ft3 a sack */
    pub_figure per_gal; /* lb/gal */
} SLURRIES[] = {
    {5.0,
     {"class G ft3 a sack", CLASS_G, PUB_READ, .printed = 1.14, .tolerance = 0.01},
     {"class G lb/gal", CLASS_G, PUB_READ, .printed = 15.8, .tolerance = 0.05}},
    {5.2,
     {"class A ft3 a sack", CLASS_A, PUB_FROM_MEMORY, .printed = 1.18, .tolerance = 0.01},
     {"class A lb/gal", CLASS_A, PUB_FROM_MEMORY, .printed = 15.6, .tolerance = 0.05}},
};

static const pub_figure SOLIDS = {"class G solids gal a sack", CLASS_G, PUB_READ,
                                  .printed = 3.59, .tolerance = 0.005};

Test(published_api_cement, slurries) {
    pub_table table;
    pub_open(&table);
    double sack = pub_si(GB_MASS, "lb", 94);
    for (size_t i = 0; i < sizeof SLURRIES / sizeof SLURRIES[0]; i++) {
        gb_volume gal_in = {pub_si(GB_VOLUME, "gal", SLURRIES[i].gal)};
        pub_paste paste;
        pub_make_paste(&table, pub_water_mass(gal_in).kg / sack, OIL_FIELD_GRAVITY,
                       &paste);
        gb_recipe r = pub_recipe(&paste.mix);
        double gal = pub_in(GB_VOLUME, "gal", r.yield.m3);
        double lb = pub_in(GB_MASS, "lb", r.dry.kg + r.water_usual.kg);
        pub_check(&SLURRIES[i].yield, pub_in(GB_VOLUME, "ft3", r.yield.m3));
        pub_check(&SLURRIES[i].per_gal, lb / gal);
        if (i == 0)
            pub_check(&SOLIDS, gal - SLURRIES[i].gal);
    }
    pub_close(&table);
}
