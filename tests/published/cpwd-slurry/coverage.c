#include "published/published.h"

#include <criterion/criterion.h>
#include <stdio.h>

/* Cement in a slurry by area, kg/m2, against the thickness it makes. The sources print
   the rates and no water; the thicknesses are arithmetic, kg/m2 x (1/3.15 +
   water/cement), written to 0.01 mm. We lay 1 m2 at that thickness and ask for the
   cement; the tolerance is half a digit of the thickness, as a share of it. */

static const struct rate {
    const char *id;
    const char *source;
    pub_status status;
    double kg_m2;
} RATES[] = {
    {"bond coat before flooring", "CPWD-type specification 9.1.3.3", PUB_READ, 2.0},
    {"tile slurry", "CPWD schedule of rates wording", PUB_FROM_MEMORY, 3.3},
    {"slurry on the bed, ICAR", "ICAR e-course lesson 20", PUB_READ, 4.0},
    {"slurry under stone slab", "CPWD schedule of rates and specification wording",
     PUB_READ, 4.4},
};
enum { RATE_COUNT = sizeof RATES / sizeof RATES[0] };

static const struct coat {
    double water_per_cement;
    double mm[RATE_COUNT];
} COATS[] = {
    {0.35, {1.33, 2.20, 2.67, 2.94}},
    {0.40, {1.43, 2.37, 2.87, 3.16}},
    {0.45, {1.53, 2.53, 3.07, 3.38}},
    {0.50, {1.63, 2.70, 3.27, 3.60}},
};

static const double HALF_DIGIT_MM = 0.005;

static double cement_in_m2(const gb_recipe *recipe, double mm) {
    pub_laid laid = {GB_SLURRY, 1, 1, pub_si(GB_LENGTH, "mm", mm), 1};
    return pub_take(&laid).net.m3 / recipe->yield.m3 * recipe->binder.kg;
}

static void check_coat(const struct coat *coat, const gb_recipe *recipe) {
    for (size_t k = 0; k < RATE_COUNT; k++) {
        char id[64];
        snprintf(id, sizeof id, "%s at w/c %.2f kg/m2", RATES[k].id,
                 coat->water_per_cement);
        double share = HALF_DIGIT_MM / coat->mm[k];
        const pub_figure figure = {.id = id,
                                   .source = RATES[k].source,
                                   .status = RATES[k].status,
                                   .printed = RATES[k].kg_m2,
                                   .percent = 100 * share};
        pub_check(&figure, cement_in_m2(recipe, coat->mm[k]));
    }
}

Test(published_cpwd_slurry, coverage) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof COATS / sizeof COATS[0]; i++) {
        pub_paste paste;
        pub_make_paste(&table, COATS[i].water_per_cement, 3.15, &paste);
        gb_recipe recipe = pub_recipe(&paste.mix);
        check_coat(&COATS[i], &recipe);
    }
    pub_close(&table);
}

/* "So 2.0 kg/m2 is about 1/16 in and 4.4 kg/m2 about 1/8 in": what the product takes for
   a smooth and a scored back, within the range of the waters above. */
static const pub_range USUAL[] = {
    {"smooth back against the 2.0 kg/m2 coat mm", "CPWD-type specification 9.1.3.3",
     PUB_DERIVED, .low = 1.33, .high = 1.63},
    {"scored back against the 4.4 kg/m2 coat mm", "CPWD schedule of rates wording",
     PUB_DERIVED, .low = 2.94, .high = 3.60},
};

Test(published_cpwd_slurry, usual_thickness) {
    pub_check_range(&USUAL[0], pub_in(GB_LENGTH, "mm", gb_usual_slurry(GB_SMOOTH).m));
    pub_check_range(&USUAL[1], pub_in(GB_LENGTH, "mm", gb_usual_slurry(GB_SCORED).m));
}
