#include "published/published.h"

#include <criterion/criterion.h>

/* Rounded conversions as printed, against the product's exact units. */

#define FM    "FM 5-428 appendix A"
#define TRADE "trade constants of water, common to FM 5-428, NAVEDTRA and concrete texts"

typedef struct unit_row {
    pub_figure figure;
    gb_kind kind;
    const char *from, *to;
} unit_row;

static const unit_row UNITS[] = {
    {{"1 ft3 in m3", FM, PUB_READ, .printed = 0.0283, .tolerance = 0.00005},
     GB_VOLUME,
     "ft3",
     "m3"},
    {{"1 yd3 in m3", FM, PUB_READ, .printed = 0.765, .tolerance = 0.0005},
     GB_VOLUME,
     "yd3",
     "m3"},
    {{"1 US gal in L", FM, PUB_READ, .printed = 3.79, .tolerance = 0.005},
     GB_VOLUME,
     "gal",
     "L"},
    {{"1 lb in kg", FM, PUB_READ, .printed = 0.454, .tolerance = 0.0005},
     GB_MASS,
     "lb",
     "kg"},
    {{"1 ft3 in gal", TRADE, PUB_READ, .printed = 7.48, .tolerance = 0.005},
     GB_VOLUME,
     "ft3",
     "gal"},
    {{"1 yd3 in ft3", TRADE, PUB_READ, .printed = 27, .tolerance = 0.5},
     GB_VOLUME,
     "yd3",
     "ft3"},
    {{"1 lb/yd3 in kg/m3", TRADE, PUB_READ, .printed = 0.5933, .tolerance = 0.00005},
     GB_DENSITY,
     "lb/yd3",
     "kg/m3"},
};

Test(published_fm_5_428, units) {
    for (size_t i = 0; i < sizeof UNITS / sizeof UNITS[0]; i++) {
        const unit_row *row = &UNITS[i];
        double si = pub_si(row->kind, row->from, 1);
        pub_check(&row->figure, pub_in(row->kind, row->to, si));
    }
}

static const pub_figure LB_PER_FT3 = {"water lb/ft3", TRADE, PUB_READ, .printed = 62.4,
                                      .tolerance = 0.05};
static const pub_figure LB_PER_GAL = {
    "water lb/gal",
    TRADE,
    PUB_READ,
    .printed = 8.33,
    .tolerance = 0.005,
    .known_difference = "water at 1000 kg/m3 weighs 3.7854 kg = 8.345 lb a "
                        "gallon; 8.33 is 998 kg/m3, and 62.4 "
                        "lb/ft3 in 7.48 gal is 8.34"};
static const pub_figure PER_SACK = {
    "w/c for each gallon to 94 lb",
    TRADE,
    PUB_READ,
    .printed = 0.0886,
    .tolerance = 0.00005,
    .known_difference = "8.345 / 94 = 0.0888; the source takes 8.33 lb/gal"};
static const pub_figure WATER_CEMENT = {"w/c of 45 gal to 900 lb",
                                        "engineering tables page", PUB_READ,
                                        .printed = 0.42, .tolerance = 0.005};

/* The mass that the product gives a label's volume of water. */
static double water_of_label(pub_table *table, double m3) {
    gb_mix mix = *pub_mix(table, "bagged/concrete-80lb");
    mix.water.bag_usual.m3 = m3;
    return pub_recipe(&mix).water_usual.kg;
}

Test(published_fm_5_428, weight_of_water) {
    pub_table table;
    pub_open(&table);
    /* A bag may not hold a whole foot of water: a tenth, times ten. */
    double tenth = pub_si(GB_VOLUME, "ft3", 0.1);
    pub_check(&LB_PER_FT3, 10 * pub_in(GB_MASS, "lb", water_of_label(&table, tenth)));
    double gallon = water_of_label(&table, pub_si(GB_VOLUME, "gal", 1));
    pub_check(&LB_PER_GAL, pub_in(GB_MASS, "lb", gallon));
    pub_check(&PER_SACK, gallon / pub_si(GB_MASS, "lb", 94));
    pub_check(&WATER_CEMENT, 45 * gallon / pub_si(GB_MASS, "lb", 900));
    pub_close(&table);
}
