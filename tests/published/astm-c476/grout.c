#include "published/published.h"

#include <criterion/criterion.h>

/* Grouts: proportion, time limit and mixing time of the shipped entries. */

#define C476 "ASTM C476"
#define TALY "Taly, Design of Reinforced Masonry Structures, p.3.8 (C476-02)"

static const pub_proportion BY_BINDER[] = {
    {"grout/fine",
     GB_SAND,
     {"sand by cementitious", C476 " table 1", PUB_FROM_MEMORY, 2.25, 3, NULL}},
    {"grout/coarse",
     GB_SAND,
     {"sand by cementitious", C476 " table 1", PUB_FROM_MEMORY, 2.25, 3, NULL}},
    {"grout/coarse",
     GB_COARSE,
     {"coarse aggregate by cementitious", TALY, PUB_READ, 1, 2, NULL}},
};
static const pub_proportion BY_CEMENT[] = {
    {"grout/fine",
     GB_LIME,
     {"lime by cement", C476 " table 1", PUB_FROM_MEMORY, 0, 0.1, NULL}},
    {"grout/coarse",
     GB_LIME,
     {"lime by cement", C476 " table 1", PUB_FROM_MEMORY, 0, 0.1, NULL}},
};

Test(published_astm_c476, ranges) {
    pub_check_proportions(BY_BINDER, sizeof BY_BINDER / sizeof BY_BINDER[0],
                          PUB_TO_BINDER);
    pub_check_proportions(BY_CEMENT, sizeof BY_CEMENT / sizeof BY_CEMENT[0],
                          PUB_TO_CEMENT);
}

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
    pub_check_for(mix->id, &SINGLE_SAND, pub_parts(mix, GB_SAND) / cement);
    if (coarse)
        pub_check_for(mix->id, &SINGLE_GRAVEL, pub_parts(mix, GB_COARSE) / cement);
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

/* Both sides of each printed end. */
static const pub_edge EDGES[] = {
    {"fine least sand", GB_C476_FINE, .portland = 1, .sand = 2.25},
    {"fine most sand", GB_C476_FINE, .portland = 1, .sand = 3},
    {"fine less sand", GB_C476_FINE, .portland = 1, .sand = 2.24,
     .missed = GB_SAND_TO_BINDER, .side = GB_TOO_LITTLE, .limit = 2.25},
    {"fine more sand", GB_C476_FINE, .portland = 1, .sand = 3.01,
     .missed = GB_SAND_TO_BINDER, .side = GB_TOO_MUCH, .limit = 3},
    {"fine most lime", GB_C476_FINE, .portland = 1, .lime = 0.1, .sand = 3.3},
    {"fine most lime, by thirds", GB_C476_FINE, .portland = 0.3, .lime = 0.03,
     .sand = 0.99},
    {"fine more lime", GB_C476_FINE, .portland = 1, .lime = 0.11, .sand = 3,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 0.1},
    {"fine of masonry cement", GB_C476_FINE, .s = 1, .sand = 3, .unknown = true},
    {"coarse least sand", GB_C476_COARSE, .portland = 1, .sand = 2.25, .stone = 1.5},
    {"coarse most sand", GB_C476_COARSE, .portland = 1, .sand = 3, .stone = 1.5},
    {"coarse less sand", GB_C476_COARSE, .portland = 1, .sand = 2.24, .stone = 1.5,
     .missed = GB_SAND_TO_BINDER, .side = GB_TOO_LITTLE, .limit = 2.25},
    {"coarse more sand", GB_C476_COARSE, .portland = 1, .sand = 3.01, .stone = 1.5,
     .missed = GB_SAND_TO_BINDER, .side = GB_TOO_MUCH, .limit = 3},
    {"coarse most lime", GB_C476_COARSE, .portland = 1, .lime = 0.1, .sand = 3.3,
     .stone = 1.5},
    {"coarse most lime, by thirds", GB_C476_COARSE, .portland = 0.3, .lime = 0.03,
     .sand = 0.99, .stone = 0.33},
    {"coarse more lime", GB_C476_COARSE, .portland = 1, .lime = 0.11, .sand = 3,
     .stone = 1.5, .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 0.1},
    {"coarse of masonry cement", GB_C476_COARSE, .s = 1, .sand = 3, .stone = 1.5,
     .unknown = true},
    {"fine with stone", GB_C476_FINE, .portland = 1, .sand = 3, .stone = 0.01,
     .missed = GB_STONE_TO_BINDER, .side = GB_TOO_MUCH, .limit = 0},
    {"coarse least stone", GB_C476_COARSE, .portland = 1, .sand = 3, .stone = 1},
    {"coarse most stone", GB_C476_COARSE, .portland = 1, .sand = 3, .stone = 2},
    {"coarse less stone", GB_C476_COARSE, .portland = 1, .sand = 3, .stone = 0.99,
     .missed = GB_STONE_TO_BINDER, .side = GB_TOO_LITTLE, .limit = 1},
    {"coarse more stone", GB_C476_COARSE, .portland = 1, .sand = 3, .stone = 2.01,
     .missed = GB_STONE_TO_BINDER, .side = GB_TOO_MUCH, .limit = 2},
    {"coarse stone by cement and lime", GB_C476_COARSE, .portland = 1, .lime = 0.1,
     .sand = 3.3, .stone = 1.05, .missed = GB_STONE_TO_BINDER, .side = GB_TOO_LITTLE,
     .limit = 1},
};

Test(published_astm_c476, edges_of_claims) {
    pub_check_edges(EDGES, sizeof EDGES / sizeof EDGES[0]);
}
