#include "published/published.h"

#include <criterion/criterion.h>

/* A stone floor of 10 m2 on a 20 mm bed 1:4 over a slurry, as the analysis of rates works
   it out: bed 0.2 m3, its cement 0.38 x 0.2 = 0.076 t, slurry 44 kg of cement. (The stone
   and the 20 kg for joints are no figures of ours.) */

#define FLOOR "CPWD analysis of rates, stone slab flooring, 10 m2"

static const pub_figure BED_VOLUME = {"floor bed m3", FLOOR, PUB_READ, .printed = 0.2,
                                      .tolerance = 0.0005};
/* 8 %: as for the coefficient itself, see mortar.c. */
static const pub_figure BED_CEMENT = {"floor bed cement t", FLOOR, PUB_READ,
                                      .printed = 0.076, .percent = 8};
static const pub_figure SHIPPED_CEMENT = {
    "floor bed cement t, shipped stiff bed",
    FLOOR,
    PUB_READ,
    .printed = 0.076,
    .percent = 8,
    .known_difference = "bed/stiff-1-4 gauges cement at 1505.7 kg/m3 and damp sand: 4 x "
                        "1281.5 kg of sand "
                        "fill "
                        "3.42 m3, so 440 kg in 1 m3, 0.088 t, 16 % over"};

/* A floor of 10 m2 as one piece with a bed of 20 mm. */
static const pub_laid BED = {GB_BED, 5, 2, 0.020, 1};

static double cement_t(const pub_job *job) {
    const gb_mix_plan *p = &job->plan.mixes[0];
    double bags = p->need.gross.m3 / p->recipe.yield.m3;
    return pub_in(GB_MASS, "t", bags * p->recipe.part[0].kg);
}

Test(published_cpwd, bed_of_a_stone_floor) {
    pub_table table;
    pub_open(&table);
    double dry = pub_material(&table, "masonry-sand")->dry_loose.kg_m3;
    pub_mortar m;
    pub_ratio ratio = {1, 0, 4, 1440, dry};
    pub_make_mortar(&table, &ratio, &m);
    pub_job job;
    pub_laid_job(&job, &m.mix, &BED);
    pub_plan(&table, &job);
    pub_check(&BED_VOLUME, job.plan.mixes[0].need.net.m3);
    pub_check(&BED_CEMENT, cement_t(&job));
    pub_job shipped;
    pub_laid_job(&shipped, pub_mix(&table, "bed/stiff-1-4"), &BED);
    pub_plan(&table, &shipped);
    pub_check(&SHIPPED_CEMENT, cement_t(&shipped));
    pub_close(&table);
}

/* 4.4 kg/m2 is 3.38 mm at water to cement 0.45, the usual of the shipped slurry: that
   thickness over 10 m2 through the plan. Tolerance: half the printed kilogram, which also
   holds the half digit of 3.38 mm (0.07 kg). */
static const pub_figure SLURRY = {"floor slurry kg in 10 m2", FLOOR, PUB_READ,
                                  .printed = 44, .tolerance = 0.5};
static const pub_laid COAT = {GB_SLURRY, 5, 2, 0.00338, 1};

Test(published_cpwd, slurry_of_a_stone_floor) {
    pub_table table;
    pub_open(&table);
    pub_job job;
    pub_laid_job(&job, pub_mix(&table, "slurry/neat"), &COAT);
    pub_plan(&table, &job);
    cr_assert(job.plan.supply_count == 1, "a slurry takes one material");
    pub_check(&SLURRY, job.plan.supplies[0].mass.kg);
    pub_close(&table);
}
