#include "published/published.h"

#include <criterion/criterion.h>

/* Proportions by volume, with water 1/2 throughout, and the guide's rule that the mix
   makes 2/3 of the sum of all four. The guide's own table by mass gives some 13 % more
   cement than that rule; we stand between the two: 2 to 8 % under the rule's volume, 5 to
   7 % under the table's cement. */

#define PCA "PCA Homeowner's Guide in Beall, Masonry and Concrete, figure 3-3"

static const struct row {
    const char *mix;
    double sand, stone;
    double lb_yd3; /* cement by the table of masses; 29 lb/ft3 x 27 and so on */
} ROWS[] = {
    {"small-concrete/3-8in-air", 2.25, 1.5, 783},
    {"small-concrete/1-2in-air", 2.25, 2, 729},
    {"small-concrete/3-4in-air", 2.25, 2.5, 675},
    {"small-concrete/1in-air", 2.25, 2.75, 648},
    {"small-concrete/1-1half-in-air", 2.25, 3, 621},
    {"small-concrete/3-8in", 2.5, 1.5, 783},
    {"small-concrete/1-2in", 2.5, 2, 729},
    {"small-concrete/3-4in", 2.5, 2.5, 675},
    {"small-concrete/1in", 2.5, 2.75, 648},
    {"small-concrete/1-1half-in", 2.5, 3, 621},
};

static void check(const char *mix, const char *what, double printed, double percent,
                  double got) {
    const pub_figure figure = {.id = what,
                               .source = PCA,
                               .status = PUB_READ,
                               .printed = printed,
                               .percent = percent};
    pub_check_for(mix, &figure, got);
}

static const double WATER = 0.5;

Test(published_pca_small_jobs, by_volume) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        const gb_mix *mix = pub_mix(&table, ROWS[i].mix);
        check(mix->id, "sand", ROWS[i].sand, 1e-7, pub_parts(mix, GB_SAND));
        check(mix->id, "stone", ROWS[i].stone, 1e-7, pub_parts(mix, GB_COARSE));
        double rule = (1 + ROWS[i].sand + ROWS[i].stone + WATER) * 2 / 3;
        double made = pub_in(GB_VOLUME, "ft3", pub_recipe(mix).yield.m3);
        check(mix->id, "made by one sack ft3", rule, 10, made);
        double lb_yd3 = pub_in(GB_DENSITY, "lb/yd3", pub_kind_per_m3(mix, GB_CEMENT));
        check(mix->id, "cement lb/yd3", ROWS[i].lb_yd3, 13, lb_yd3);
    }
    pub_close(&table);
}

/* Water to add: half a volume to one of cement, with the guide's wet sand (5 %). Ours is
   one share, 0.45, for both columns: 0.05 gal over without air, 0.17 with it. */
static const pub_figure ADDED = {"water to add to a sack gal", PCA, PUB_READ,
                                 .printed = 3.74, .tolerance = 0.2};

Test(published_pca_small_jobs, water_to_add) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        const gb_mix *mix = pub_mix(&table, ROWS[i].mix);
        gb_recipe r = pub_recipe(mix);
        gb_water_row row = {{0}, {0}, {0}, {0}};
        cr_assert(gb_water_to_add(mix, &r, gb_sand_moisture(GB_DAMP), 1, &row) == GB_OK,
                  "%s takes water", mix->id);
        pub_check_for(mix->id, &ADDED,
                      pub_in(GB_VOLUME, "gal", pub_water_volume(row.usual).m3));
    }
    pub_close(&table);
}
