#include "published/published.h"

#include "gaugebox/heat.h"

#include <criterion/criterion.h>
#include <math.h>

/* Worked examples of the temperature that a concrete comes out with; pounds and degrees
   Fahrenheit. */

#define PCA      "PCA EB001, effect of the temperature of materials"
#define ICE_RULE "a trade magazine on crushed ice: 1 F for each 2 % of the water"
#define ICE_MOST                                                                         \
    "a trade magazine after ACI 305: about 20 F at the most, 75 % of the water"
#define FROZEN "ACI 306R-88, equation 3-2, by hand"
#define HEAT   "TM 5-852-4, section 6"

static double f_of(double c) {
    return c * 1.8 + 32.0;
}

static gb_temp at(double f) {
    return (gb_temp){(f - 32.0) / 1.8};
}

static gb_mass lb(double pounds) {
    return (gb_mass){pounds * 0.45359237};
}

/* 564 lb of cement at 150 F, 282 of water and 3100 of aggregate at 80. */
static gb_batch_heat pca(void) {
    return (gb_batch_heat){.binder = lb(564),
                           .aggregate = lb(3100),
                           .water = lb(282),
                           .binder_at = at(150),
                           .aggregate_at = at(80),
                           .water_at = at(80)};
}

static double mixed_f(const gb_batch_heat *batch) {
    gb_temp mixed = {NAN};
    cr_assert(gb_mix_temperature(batch, &mixed) == GB_OK);
    return f_of(mixed.c);
}

static const pub_figure AS_MIXED = {"hot cement", PCA, PUB_FROM_MEMORY, .printed = 88.0,
                                    .tolerance = 0.05};
static const pub_figure BY_CEMENT = {"1 F by the cement's", PCA, PUB_FROM_MEMORY,
                                     .printed = 8.8, .tolerance = 0.05};
static const pub_figure BY_WATER = {"1 F by the water's", PCA, PUB_FROM_MEMORY,
                                    .printed = 3.9, .tolerance = 0.05};
static const pub_figure BY_AGGREGATE = {"1 F by the aggregate's", PCA, PUB_FROM_MEMORY,
                                        .printed = 1.6, .tolerance = 0.05};

Test(published_mix_temperature, portland_cement_association) {
    gb_batch_heat b = pca();
    double before = mixed_f(&b);
    pub_check(&AS_MIXED, before);
    b.binder_at = at(149);
    pub_check(&BY_CEMENT, 1 / (before - mixed_f(&b)));
    b = pca();
    b.water_at = at(79);
    pub_check(&BY_WATER, 1 / (before - mixed_f(&b)));
    b = pca();
    b.aggregate_at = at(79);
    pub_check(&BY_AGGREGATE, 1 / (before - mixed_f(&b)));
}

static const pub_figure TWO_PERCENT = {"2 % of the water as ice", ICE_RULE, PUB_READ,
                                       .printed = 1.0, .tolerance = 0.05};
static const pub_range MOST_ICE = {"75 % of the water as ice", ICE_MOST, PUB_READ,
                                   .low = 20, .high = 40};

Test(published_mix_temperature, ice) {
    gb_batch_heat b = pca();
    double before = mixed_f(&b);
    b.ice = lb(0.02 * 282);
    b.water = lb(0.98 * 282);
    pub_check(&TWO_PERCENT, before - mixed_f(&b));
    b.ice = lb(0.75 * 282);
    b.water = lb(0.25 * 282);
    pub_check_range(&MOST_ICE, before - mixed_f(&b));
}

/* The forms in Fahrenheit, by hand: ice takes 112 more, frozen moisture is 0.5 Ta - 128.
 */
static const struct {
    double cement, aggregate, moisture, water, ice;
    double cement_f, aggregate_f, water_f;
    bool frozen;
} CASES[] = {
    {564, 3100, 0, 282, 0, 60, 40, 140, false},
    {564, 3100, 60, 222, 0, 60, 40, 140, false},
    {564, 3100, 60, 222, 0, 40, 28, 140, true},
    {94, 339, 14, 24, 0, 45, 30, 140, true},
    {94, 339, 14, 24, 0, 45, 20, 180, true},
    {94, 320, 16, 22, 10, 110, 105, 75, false},
    {600, 3000, 90, 150, 60, 120, 95, 85, false},
};

static double by_hand(size_t i) {
    double of_moisture =
        CASES[i].frozen ? 0.5 * CASES[i].aggregate_f - 128 : CASES[i].aggregate_f;
    double heat = 0.22 * (CASES[i].cement * CASES[i].cement_f +
                          CASES[i].aggregate * CASES[i].aggregate_f) +
                  CASES[i].water * CASES[i].water_f + CASES[i].moisture * of_moisture -
                  112 * CASES[i].ice;
    return heat / (0.22 * (CASES[i].cement + CASES[i].aggregate) + CASES[i].water +
                   CASES[i].moisture + CASES[i].ice);
}

Test(published_mix_temperature, forms_in_fahrenheit) {
    for (size_t i = 0; i < sizeof CASES / sizeof CASES[0]; i++) {
        gb_batch_heat b = {.binder = lb(CASES[i].cement),
                           .aggregate = lb(CASES[i].aggregate),
                           .moisture = lb(CASES[i].moisture),
                           .water = lb(CASES[i].water),
                           .ice = lb(CASES[i].ice),
                           .binder_at = at(CASES[i].cement_f),
                           .aggregate_at = at(CASES[i].aggregate_f),
                           .water_at = at(CASES[i].water_f),
                           .frozen = CASES[i].frozen};
        const pub_figure row = {"in Fahrenheit", FROZEN, PUB_DERIVED,
                                .printed = by_hand(i), .tolerance = 1e-9};
        pub_check(&row, mixed_f(&b));
    }
}

/* Water holds about 4.5 times the heat of as much stone. */
static const pub_figure RATIO = {"water to solids", HEAT, PUB_READ, .printed = 4.5,
                                 .tolerance = 0.06};

Test(published_mix_temperature, water_holds_more) {
    gb_batch_heat b = {.aggregate = lb(100),
                       .water = lb(100),
                       .aggregate_at = at(100),
                       .binder_at = at(50),
                       .water_at = at(50)};
    double by_stone = mixed_f(&b) - 50;
    b.aggregate_at = at(50);
    b.water_at = at(100);
    pub_check(&RATIO, (mixed_f(&b) - 50) / by_stone);
}

static const pub_figure HOTTEST = {"hottest water", "Masonry Magazine, September 2004",
                                   PUB_READ, .printed = 140, .tolerance = 1e-6};
static const pub_figure FLASH = {"flash set", HEAT, PUB_READ, .printed = 100,
                                 .tolerance = 1e-6};
static const pub_figure AGGREGATE = {"hottest aggregate", HEAT, PUB_READ, .printed = 150,
                                     .tolerance = 1e-6};
static const pub_figure ICE = {"ice, % of the water",
                               "Jabbar, Wasit Journal of Engineering Sciences (2017)",
                               PUB_READ, .printed = 20, .tolerance = 1e-6};

Test(published_mix_temperature, limits) {
    pub_check(&HOTTEST, f_of(gb_hottest_water().c));
    pub_check(&FLASH, f_of(gb_flash_set().c));
    pub_check(&AGGREGATE, f_of(gb_hottest_aggregate().c));
    pub_check(&ICE, 100 * gb_most_ice().of_one);
}
