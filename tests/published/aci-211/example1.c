#include "published/published.h"

#include <criterion/criterion.h>
#include <math.h>

/* Example 1 of ACI 211.1-91 (section 7.2), step by step, and its trial batch. The example
   rounds at each step and carries the rounded figure on; a tolerance over half the last
   printed digit says what that comes to. Water weighs 62.4 lb/ft3 there. */

#define EX1                                                                              \
    .source = "ACI 211.1-91, example 1", .status = PUB_FROM_MEMORY,                      \
    .known_difference = NULL
#define COUNT(rows) (sizeof(rows) / sizeof((rows)[0]))

static const pub_asked ASKED = {.table = GB_US,
                                .average = 3500,
                                .slump = 3.5,
                                .largest = 1.5,
                                .cement_gravity = 3.15,
                                .sand_gravity = 2.64,
                                .stone_gravity = 2.68,
                                .sand_absorption = 0.007,
                                .stone_absorption = 0.005,
                                .sand_moisture = 0.06,
                                .stone_moisture = 0.02,
                                .fineness = 2.8,
                                .rodded = 100};

static double lb_yd3(gb_density d) {
    return pub_in(GB_DENSITY, "lb/yd3", d.kg_m3);
}

/* Of 1 yd3, 27 ft3. */
static double ft3(gb_share of_concrete) {
    return 27 * of_concrete.of_one;
}

static gb_proportions designed(void) {
    gb_concrete c = pub_ask(&ASKED);
    return pub_proportion_of(&c, pub_us_water());
}

/* ---- proportions ------------------------------------------------------------------- */

Test(published_aci_211_example_1, proportions) {
    const gb_proportions p = designed();
    const gb_parts_of_concrete *m = &p.parts;
    const gb_share taken = {1 - m->sand_volume.of_one};
    const struct {
        double got;
        pub_figure figure;
    } rows[] = {
        {lb_yd3(m->water), {"water lb", EX1, .printed = 300, .tolerance = 0.5}},
        {100 * m->air.of_one, {"air %", EX1, .printed = 1, .tolerance = 0.05}},
        {p.ratio, {"water to cement", EX1, .printed = 0.62, .tolerance = 0.005}},
        {lb_yd3(m->cement), {"cement lb", EX1, .printed = 484, .tolerance = 0.5}},
        {p.coarse_share.of_one,
         {"coarse share", EX1, .printed = 0.71, .tolerance = 0.005}},
        {ft3(p.coarse_share),
         {"stone rodded ft3", EX1, .printed = 19.17, .tolerance = 0.005}},
        {lb_yd3(m->stone), {"stone dry lb", EX1, .printed = 1917, .tolerance = 0.5}},
        {lb_yd3(p.first_mass), {"first mass lb", EX1, .printed = 4070, .tolerance = 0.5}},
        {lb_yd3(p.first_mass) - lb_yd3(p.sand_by_mass),
         {"water, cement, stone lb", EX1, .printed = 2701, .tolerance = 0.5}},
        {lb_yd3(p.sand_by_mass),
         {"sand by mass lb", EX1, .printed = 1369, .tolerance = 0.5}},
        {ft3(m->water_volume), {"water ft3", EX1, .printed = 4.81, .tolerance = 0.005}},
        {ft3(m->cement_volume), {"cement ft3", EX1, .printed = 2.46, .tolerance = 0.005}},
        {ft3(m->stone_volume), {"stone ft3", EX1, .printed = 11.46, .tolerance = 0.005}},
        {ft3(m->air), {"air ft3", EX1, .printed = 0.27, .tolerance = 0.005}},
        {ft3(taken), {"all but sand ft3", EX1, .printed = 19.00, .tolerance = 0.005}},
        {ft3(m->sand_volume), {"sand ft3", EX1, .printed = 8.00, .tolerance = 0.005}},
        /* 8.00 x 164.7, where the volume is 7.998. */
        {lb_yd3(m->sand), {"sand by volume lb", EX1, .printed = 1318, .tolerance = 1}},
    };
    for (size_t i = 0; i < COUNT(rows); i++)
        pub_check_for("example 1", &rows[i].figure, rows[i].got);
}

/* ---- moisture ---------------------------------------------------------------------- */

/* Of the mix by mass: sand 1369 lb. */
typedef struct wet_batch {
    double water, cement, stone, sand; /* lb for 1 yd3, as weighed */
    double stone_water, sand_water;    /* shares of the dry mass on the surface */
} wet_batch;

static double delivered(gb_mass dry, gb_wetness w) {
    return pub_in(GB_MASS, "lb", gb_on_basis(dry, w, GB_OVEN_DRY, GB_AS_DELIVERED).kg);
}

static wet_batch wet(const gb_proportions *p) {
    const double yd3 = pub_si(GB_VOLUME, "yd3", 1);
    gb_mass stone = {p->parts.stone.kg_m3 * yd3};
    gb_mass sand = {p->sand_by_mass.kg_m3 * yd3};
    gb_wetness of_stone = gb_wetness_of((gb_share){0.02}, (gb_share){0.005});
    gb_wetness of_sand = gb_wetness_of((gb_share){0.06}, (gb_share){0.007});
    double free_kg = gb_free_water(stone, of_stone).kg + gb_free_water(sand, of_sand).kg;
    return (wet_batch){.water = lb_yd3(p->parts.water) - pub_in(GB_MASS, "lb", free_kg),
                       .cement = lb_yd3(p->parts.cement),
                       .stone = delivered(stone, of_stone),
                       .sand = delivered(sand, of_sand),
                       .stone_water = gb_free_water(stone, of_stone).kg / stone.kg,
                       .sand_water = gb_free_water(sand, of_sand).kg / sand.kg};
}

Test(published_aci_211_example_1, moisture) {
    const gb_proportions p = designed();
    const wet_batch b = wet(&p);
    const double all = b.water + b.cement + b.stone + b.sand;
    const struct {
        double got;
        pub_figure figure;
    } rows[] = {
        {b.stone, {"stone wet lb", EX1, .printed = 1955, .tolerance = 0.5}},
        {b.sand, {"sand wet lb", EX1, .printed = 1451, .tolerance = 0.5}},
        {100 * b.stone_water,
         {"surface water of stone %", EX1, .printed = 1.5, .tolerance = 0.05}},
        {100 * b.sand_water,
         {"surface water of sand %", EX1, .printed = 5.3, .tolerance = 0.05}},
        {b.water, {"water to add lb", EX1, .printed = 199, .tolerance = 0.5}},
        {all, {"batch lb", EX1, .printed = 4089, .tolerance = 0.6}}, /* four rounded */
        {0.03 * b.water, {"0.03 yd3 water lb", EX1, .printed = 5.97, .tolerance = 0.015}},
        {0.03 * b.cement,
         {"0.03 yd3 cement lb", EX1, .printed = 14.52, .tolerance = 0.015}},
        {0.03 * b.stone,
         {"0.03 yd3 stone lb", EX1, .printed = 58.65, .tolerance = 0.015}},
        {0.03 * b.sand, {"0.03 yd3 sand lb", EX1, .printed = 43.53, .tolerance = 0.015}},
    };
    /* Of the small batch: the masses of 1 yd3 were rounded to 1 lb, 0.015 lb of it. */
    for (size_t i = 0; i < COUNT(rows); i++)
        pub_check_for("example 1", &rows[i].figure, rows[i].got);
}

/* ---- the trial batch --------------------------------------------------------------- */

static gb_trial trial_of(double water, double cement, double stone, double sand) {
    return (gb_trial){.sand_moisture = {NAN},
                      .stone_moisture = {NAN},
                      .water = {pub_si(GB_MASS, "lb", water)},
                      .cement = {pub_si(GB_MASS, "lb", cement)},
                      .stone = {pub_si(GB_MASS, "lb", stone)},
                      .sand = {pub_si(GB_MASS, "lb", sand)},
                      .unit_mass = {pub_si(GB_DENSITY, "lb/ft3", 149.0)},
                      .full = {NAN},
                      .empty = {NAN},
                      .measure = {NAN},
                      .slump = {pub_si(GB_LENGTH, "in", 2)},
                      .air = {NAN},
                      .at = {.line = 1}};
}

/* 7.00 lb of water were used, not 5.97. */
static gb_trial_result judged(const gb_proportions *p) {
    gb_concrete c = pub_ask(&ASKED);
    c.trial = trial_of(7.00, 14.52, 58.65, 43.53);
    gb_trial_result r = {0};
    cr_assert(gb_judge_trial(&c, p, pub_us_water(), &r) == GB_OK, "trial: faults %x",
              gb_concrete_faults(&c));
    return r;
}

Test(published_aci_211_example_1, trial) {
    const gb_proportions p = designed();
    const gb_trial_result r = judged(&p);
    const struct {
        double got;
        pub_figure figure;
    } rows[] = {
        {pub_in(GB_MASS, "lb", r.batch.kg),
         {"trial batch lb", EX1, .printed = 123.70, .tolerance = 0.005}},
        {pub_in(GB_DENSITY, "lb/ft3", r.unit_mass.kg_m3),
         {"unit mass lb/ft3", EX1, .printed = 149.0, .tolerance = 0.05}},
        {pub_in(GB_VOLUME, "ft3", r.yield.m3),
         {"yield ft3", EX1, .printed = 0.830, .tolerance = 0.0005}},
        {pub_in(GB_MASS, "lb", r.mixing_water.kg),
         {"mixing water lb", EX1, .printed = 10.04, .tolerance = 0.005}},
        /* 10.04 / 0.83: 326.6, where it is 326.49. */
        {lb_yd3(r.water_used),
         {"water used lb/yd3", EX1, .printed = 327, .tolerance = 0.6}},
        {lb_yd3(r.for_slump),
         {"water for slump lb/yd3", EX1, .printed = 15, .tolerance = 0.5}},
    };
    for (size_t i = 0; i < COUNT(rows); i++)
        pub_check_for("example 1", &rows[i].figure, rows[i].got);
}

/* The 0.5 lb that water is rounded up by makes 0.8 lb of cement, which the sand by mass
   loses together with the 1 lb of the stone; by volume 0.02 ft3, 3.5 lb. */
Test(published_aci_211_example_1, next) {
    const gb_proportions p = designed();
    const gb_trial_result r = judged(&p);
    const gb_parts_of_concrete *n = &r.next;
    const double stone = lb_yd3(n->stone);
    const double sand = lb_yd3(r.next_sand_by_mass);
    const gb_share taken = {1 - n->sand_volume.of_one};
    const struct {
        double got;
        pub_figure figure;
    } rows[] = {
        {lb_yd3(n->water), {"next water lb", EX1, .printed = 342, .tolerance = 0.6}},
        {lb_yd3(n->cement), {"next cement lb", EX1, .printed = 552, .tolerance = 1.4}},
        {stone * 1.02, {"next stone wet lb", EX1, .printed = 1908, .tolerance = 1}},
        {stone, {"next stone dry lb", EX1, .printed = 1871, .tolerance = 1}},
        {stone * 1.005, {"next stone SSD lb", EX1, .printed = 1880, .tolerance = 1}},
        {27 * pub_in(GB_DENSITY, "lb/ft3", r.unit_mass.kg_m3),
         {"next mass lb", EX1, .printed = 4023, .tolerance = 0.5}},
        {sand * 1.007, {"next sand SSD lb", EX1, .printed = 1249, .tolerance = 2.8}},
        {sand, {"next sand dry lb", EX1, .printed = 1240, .tolerance = 2.8}},
        {ft3(n->water_volume),
         {"next water ft3", EX1, .printed = 5.48, .tolerance = 0.01}},
        {ft3(n->cement_volume),
         {"next cement ft3", EX1, .printed = 2.81, .tolerance = 0.01}},
        {ft3(n->stone_volume),
         {"next stone ft3", EX1, .printed = 11.19, .tolerance = 0.01}},
        {ft3(n->air), {"next air ft3", EX1, .printed = 0.27, .tolerance = 0.005}},
        {ft3(taken), {"next all but sand ft3", EX1, .printed = 19.75, .tolerance = 0.03}},
        {ft3(n->sand_volume), {"next sand ft3", EX1, .printed = 7.25, .tolerance = 0.03}},
        {lb_yd3(n->sand),
         {"next sand by volume lb", EX1, .printed = 1194, .tolerance = 5}},
    };
    for (size_t i = 0; i < COUNT(rows); i++)
        pub_check_for("example 1", &rows[i].figure, rows[i].got);
}

/* ---- what water changes by --------------------------------------------------------- */

/* Section 6.3.9: 10 lb/yd3 for 1 in of slump, 2 kg/m3 for 10 mm; 5 lb/yd3, 3 kg/m3 for 1
   % of air. In its own table each; the trial is as designed but for what is told. */
static const struct change {
    gb_system table;
    double slump, too_much_air; /* in or mm more than wanted; % */
    pub_figure water;
} CHANGES[] = {
    {GB_US, 1, 0, {"1 in over lb/yd3", EX1, .printed = -10, .tolerance = 1e-6}},
    {GB_US, -2, 0, {"2 in under lb/yd3", EX1, .printed = 20, .tolerance = 1e-6}},
    {GB_METRIC, 10, 0, {"10 mm over kg/m3", EX1, .printed = -2, .tolerance = 1e-6}},
    {GB_METRIC, -30, 0, {"30 mm under kg/m3", EX1, .printed = 6, .tolerance = 1e-6}},
    {GB_US, 0, 1, {"1 % of air over lb/yd3", EX1, .printed = 5, .tolerance = 1e-6}},
    {GB_US, 0, -2, {"2 % of air under lb/yd3", EX1, .printed = -10, .tolerance = 1e-6}},
    {GB_METRIC, 0, 1, {"1 % of air over kg/m3", EX1, .printed = 3, .tolerance = 1e-6}},
    {GB_METRIC, 0, -1, {"1 % of air under kg/m3", EX1, .printed = -3, .tolerance = 1e-6}},
};

/* An air-entrained concrete whose trial was mixed as designed. */
static gb_concrete entrained(gb_system table, gb_proportions *p) {
    bool us = table == GB_US;
    const pub_asked asked = {.table = table,
                             .ratio = 0.5,
                             .slump = us ? 3 : 75,
                             .largest = us ? 0.75 : 19,
                             .air = GB_AIR_MODERATE,
                             .cement_gravity = 3.15,
                             .sand_gravity = 2.65,
                             .stone_gravity = 2.65,
                             .fineness = 2.6,
                             .rodded = us ? 100 : 1600};
    gb_concrete c = pub_ask(&asked);
    *p = pub_proportion_of(&c, pub_us_water());
    c.trial = trial_of(0, 0, 0, 0);
    c.trial.water.kg = p->parts.water.kg_m3;
    c.trial.cement.kg = p->parts.cement.kg_m3;
    c.trial.stone.kg = p->parts.stone.kg_m3;
    c.trial.sand.kg = p->parts.sand.kg_m3;
    c.trial.unit_mass = p->parts.fresh;
    return c;
}

Test(published_aci_211_example_1, changes_of_water) {
    for (size_t i = 0; i < COUNT(CHANGES); i++) {
        const struct change *row = &CHANGES[i];
        bool us = row->table == GB_US;
        gb_proportions p;
        gb_concrete c = entrained(row->table, &p);
        c.trial.slump.m = c.slump.m + pub_si(GB_LENGTH, us ? "in" : "mm", row->slump);
        c.trial.air.of_one = p.parts.air.of_one + row->too_much_air / 100;
        gb_trial_result r = {0};
        cr_assert(gb_judge_trial(&c, &p, pub_us_water(), &r) == GB_OK, "%s",
                  row->water.id);
        double kg_m3 = r.next.water.kg_m3 - r.water_used.kg_m3;
        pub_check(&row->water, pub_in(GB_DENSITY, us ? "lb/yd3" : "kg/m3", kg_m3));
    }
}
