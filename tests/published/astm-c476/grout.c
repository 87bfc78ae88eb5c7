#include "published/published.h"

#include <criterion/criterion.h>

/* Grouts: proportion, time limit and mixing time of the shipped entries. */

#define C476 "ASTM C476"
#define TALY "Taly, Design of Reinforced Masonry Structures, p.3.8 (C476-02)"

static const pub_range SAND = {"sand by cementitious", C476 " table 1", PUB_FROM_MEMORY,
                               .low = 2.25, .high = 3};
static const pub_range LIME = {"lime by cement", C476 " table 1", PUB_FROM_MEMORY,
                               .low = 0, .high = 0.1};
static const pub_range GRAVEL = {"coarse aggregate by cementitious", TALY, PUB_READ,
                                 .low = 1, .high = 2};
static const pub_figure SINGLE_SAND = {"1 : 3", "Masonry Magazine, February 1994",
                                       PUB_READ, .printed = 3, .tolerance = 1e-9};
static const pub_figure SINGLE_GRAVEL = {"1 : 3 : 2, pea gravel",
                                         "Masonry Magazine, February 1994", PUB_READ,
                                         .printed = 2, .tolerance = 1e-9};
static const pub_figure LIFE = {"placed within h", C476 "; TMS 602 art. 3.5",
                                PUB_FROM_MEMORY, .printed = 1.5, .tolerance = 0.005};
static const pub_range MIXING = {"mixed at least min", TALY, PUB_READ, .low = 5,
                                 .high = 1e9};

static void check_grout(const gb_mix *mix, bool coarse) {
    double cement = pub_parts(mix, GB_CEMENT);
    double lime = pub_parts(mix, GB_LIME);
    double sand = pub_parts(mix, GB_SAND);
    double gravel = pub_parts(mix, GB_COARSE);
    pub_check_range_for(mix->id, &SAND, sand / (cement + lime));
    pub_check_range_for(mix->id, &LIME, lime / cement);
    pub_check_for(mix->id, &SINGLE_SAND, sand / cement);
    if (coarse) {
        pub_check_range_for(mix->id, &GRAVEL, gravel / (cement + lime));
        pub_check_for(mix->id, &SINGLE_GRAVEL, gravel / cement);
    }
    pub_check_for(mix->id, &LIFE, pub_in(GB_DURATION, "h", mix->life.s));
    pub_check_range_for(mix->id, &MIXING, pub_in(GB_DURATION, "min", mix->mixing.s));
}

Test(published_astm_c476, grouts) {
    pub_table table;
    pub_open(&table);
    check_grout(pub_mix(&table, "grout/fine"), false);
    check_grout(pub_mix(&table, "grout/coarse"), true);
    pub_close(&table);
}
