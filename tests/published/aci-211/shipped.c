#include "published/published.h"

#include <criterion/criterion.h>

/* The shipped concretes of small jobs by mass: what 1 ft3 of each holds,
   against the pounds that their tables print. Pounds are whole ones, so 2 to 3 % of a
   part is not known; that the yield of the parts is 1 ft3 adds what gravities, water and
   air of ours differ from theirs. */

#define PCA "PCA Homeowner's Guide by mass, as printed by Beall, figure 3-3"
#define ACI "ACI 211.1, concrete mixes for small jobs, mix B"

typedef struct row {
    const char *mix;
    double cement, sand, stone; /* lb in 1 ft3 */
} row;

/* The table's sand is as used, wet: 5 % of moisture (common practice) is taken off. */
static const row BY_PCA[] = {
    {"small-mass/3-8in", 29, 59, 46},      {"small-mass/3-8in-air", 29, 53, 46},
    {"small-mass/1-2in", 27, 53, 55},      {"small-mass/1-2in-air", 27, 46, 55},
    {"small-mass/3-4in", 25, 47, 65},      {"small-mass/3-4in-air", 25, 42, 65},
    {"small-mass/1in", 24, 45, 70},        {"small-mass/1in-air", 24, 39, 70},
    {"small-mass/1-1half-in", 23, 43, 75}, {"small-mass/1-1half-in-air", 23, 38, 75},
};
static const row BY_ACI[] = {
    {"small-mass/b-1-2in", 25, 49, 56},      {"small-mass/b-1-2in-air", 25, 46, 56},
    {"small-mass/b-3-4in", 23, 47, 64},      {"small-mass/b-3-4in-air", 23, 43, 64},
    {"small-mass/b-1in", 22, 43, 72},        {"small-mass/b-1in-air", 22, 39, 72},
    {"small-mass/b-1-1half-in", 20, 43, 77}, {"small-mass/b-1-1half-in-air", 20, 39, 77},
    {"small-mass/b-2in", 19, 43, 81},        {"small-mass/b-2in-air", 19, 38, 81},
};

static double lb_ft3(const gb_mix *mix, gb_material_kind kind) {
    return pub_in(GB_DENSITY, "lb/ft3", pub_kind_per_m3(mix, kind));
}

static void check(pub_table *table, const row *r, const char *source, pub_status status,
                  double wet) {
    const gb_mix *mix = pub_mix(table, r->mix);
    const pub_figure cement = {"cement lb/ft3", source, status, .printed = r->cement,
                               .percent = 3.5};
    const pub_figure sand = {"sand lb/ft3", source, status, .printed = r->sand,
                             .percent = 3.5};
    const pub_figure stone = {"stone lb/ft3", source, status, .printed = r->stone,
                              .percent = 3.5};
    pub_check_for(mix->id, &cement, lb_ft3(mix, GB_CEMENT));
    pub_check_for(mix->id, &sand, lb_ft3(mix, GB_SAND) * wet);
    pub_check_for(mix->id, &stone, lb_ft3(mix, GB_COARSE));
}

Test(published_aci_211, shipped_small_jobs_by_mass) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof BY_PCA / sizeof BY_PCA[0]; i++)
        check(&table, &BY_PCA[i], PCA, PUB_READ, 1.05);
    for (size_t i = 0; i < sizeof BY_ACI / sizeof BY_ACI[0]; i++)
        check(&table, &BY_ACI[i], ACI, PUB_FROM_MEMORY, 1.0);
    pub_close(&table);
}
