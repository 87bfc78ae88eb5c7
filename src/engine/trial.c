#include "engine/fresh.h"
#include "engine/proportion.h"
#include "gaugebox/mix.h"
#include "gaugebox/moisture.h"

#include "gaugebox/count.h"

#include <math.h>

/* What water changes with slump and air, ACI 211.1 section 6.3.9: by 10 lb/yd3 for 1 in,
   2 kg/m3 for 10 mm; by 5 lb/yd3, 3 kg/m3, for 1 % of air. */
gb_water_change gb_water_change_of(gb_system table) {
    if (table == GB_METRIC)
        return (gb_water_change){{2.0}, {3.0}, {gb_si(GB_LENGTH, "mm", 10)}};
    return (gb_water_change){{gb_si(GB_DENSITY, "lb/yd3", 10)},
                             {gb_si(GB_DENSITY, "lb/yd3", 5)},
                             {gb_si(GB_LENGTH, "in", 1)}};
}

/* ---- the trial as it was mixed ----------------------------------------------------- */

/* Its aggregate, dry; what was not said to be wet or dry is saturated, surface-dry. */
typedef struct mixed {
    gb_mass stone, sand, water;
} mixed;

static gb_share either(gb_share of_trial, gb_share of_concrete) {
    return isnan(of_trial.of_one) ? of_concrete : of_trial;
}

gb_share gb_trial_stone_moisture(const gb_concrete *c) {
    return either(c->trial.stone_moisture, c->stone_moisture);
}

gb_share gb_trial_sand_moisture(const gb_concrete *c) {
    return either(c->trial.sand_moisture, c->sand_moisture);
}

static gb_wetness stone_wetness(const gb_concrete *c) {
    return gb_wetness_of(gb_trial_stone_moisture(c), c->stone_absorption);
}

static gb_wetness sand_wetness(const gb_concrete *c) {
    return gb_wetness_of(gb_trial_sand_moisture(c), c->sand_absorption);
}

gb_concrete gb_delivered_as(const gb_concrete *c, gb_share sand, gb_share stone) {
    gb_concrete other = *c;
    other.trial.sand_moisture = sand_wetness(c).moisture;
    other.trial.stone_moisture = stone_wetness(c).moisture;
    other.sand_moisture = either(sand, c->sand_moisture);
    other.stone_moisture = either(stone, c->stone_moisture);
    return other;
}

static mixed as_mixed(const gb_concrete *c) {
    const gb_trial *t = &c->trial;
    mixed m = {
        .stone = gb_on_basis(t->stone, stone_wetness(c), GB_AS_DELIVERED, GB_OVEN_DRY),
        .sand = gb_on_basis(t->sand, sand_wetness(c), GB_AS_DELIVERED, GB_OVEN_DRY)};
    m.water.kg = t->water.kg + gb_free_water(m.stone, stone_wetness(c)).kg +
                 gb_free_water(m.sand, sand_wetness(c)).kg;
    return m;
}

static gb_mass batch_of(const gb_trial *t) {
    return (gb_mass){t->water.kg + t->cement.kg + t->stone.kg + t->sand.kg};
}

static gb_density unit_mass_of(const gb_trial *t) {
    if (!isnan(t->unit_mass.kg_m3))
        return t->unit_mass;
    return (gb_density){(t->full.kg - t->empty.kg) / t->measure.m3};
}

/* T of ASTM C138, the mass of the trial's parts over their volume without air. */
static double air_free(const gb_concrete *c, const mixed *m, gb_density water) {
    double volume = m->water.kg / water.kg_m3 +
                    c->trial.cement.kg / (gb_cement_gravity(c) * water.kg_m3) +
                    m->stone.kg / (gb_stone_gravity(c) * water.kg_m3) +
                    m->sand.kg / (gb_sand_gravity(c) * water.kg_m3);
    return batch_of(&c->trial).kg / volume;
}

static double gravimetric(const gb_concrete *c, const mixed *m, gb_density water) {
    double t = air_free(c, m, water);
    return (t - unit_mass_of(&c->trial).kg_m3) / t;
}

/* ---- what can be wrong ------------------------------------------------------------- */

static const double OVERFULL = -0.02; /* air by mass; common practice for its error */
static const double HOLLOW = 0.15;
static const double LEAST_RATIO = 0.25;

static bool masses_stated(const gb_trial *t) {
    bool measured = !isnan(t->full.kg) && !isnan(t->empty.kg) && !isnan(t->measure.m3);
    return !isnan(t->water.kg) && !isnan(t->cement.kg) && !isnan(t->stone.kg) &&
           !isnan(t->sand.kg) && (measured || !isnan(t->unit_mass.kg_m3));
}

static uint32_t impossible_masses(const gb_concrete *c) {
    gb_density water = {GB_WATER_KG_M3};
    mixed m = as_mixed(c);
    double unit = unit_mass_of(&c->trial).kg_m3;
    bool absurd = gb_under(unit, GB_LIGHTEST_FRESH) || gb_over(unit, GB_HEAVIEST_FRESH);
    double air = gravimetric(c, &m, water);
    return gb_when(gb_under(unit, GB_LIGHTEST_FRESH), GB_TRIAL_LIGHT) |
           gb_when(gb_over(unit, GB_HEAVIEST_FRESH), GB_TRIAL_HEAVY) |
           gb_when(!absurd && gb_under(air, OVERFULL), GB_TRIAL_OVERFULL) |
           gb_when(!absurd && gb_over(air, HOLLOW), GB_TRIAL_HOLLOW) |
           gb_when(gb_under(m.water.kg / c->trial.cement.kg, LEAST_RATIO), GB_TRIAL_DRY);
}

static uint32_t trial_faults(const gb_concrete *c) {
    const gb_trial *t = &c->trial;
    bool any_measure = !isnan(t->full.kg) || !isnan(t->empty.kg) || !isnan(t->measure.m3);
    uint32_t faults = gb_when(!masses_stated(t), GB_TRIAL_INCOMPLETE) |
                      gb_when(any_measure && !isnan(t->unit_mass.kg_m3), GB_TRIAL_TWICE) |
                      gb_when(!isnan(t->full.kg) && !isnan(t->empty.kg) &&
                                  !gb_over(t->full.kg, t->empty.kg),
                              GB_TRIAL_MEASURE);
    return faults != 0 ? faults : impossible_masses(c);
}

uint32_t gb_concrete_faults(const gb_concrete *c) {
    uint32_t faults = gb_design_faults(c);
    return faults | (c->trial.at.line != 0 ? trial_faults(c) : 0);
}

/* ---- judging it -------------------------------------------------------------------- */

static void measure(const gb_concrete *c, const gb_proportions *p, const mixed *m,
                    gb_density water, gb_trial_result *r) {
    const gb_trial *t = &c->trial;
    r->unit_mass = unit_mass_of(t);
    r->batch = batch_of(t);
    r->yield.m3 = r->batch.kg / r->unit_mass.kg_m3;
    r->cement_content.kg_m3 = t->cement.kg / r->yield.m3;
    r->relative_yield = r->yield.m3 * p->parts.cement.kg_m3 / t->cement.kg;
    r->gravimetric_air.of_one = gravimetric(c, m, water);
    r->air = isnan(t->air.of_one) ? p->parts.air : t->air;
    r->mixing_water = m->water;
    r->water_used.kg_m3 = m->water.kg / r->yield.m3;
    r->ratio_used = m->water.kg / t->cement.kg;
}

/* Air counts by meter alone: a mass says too little about it to change the water by. */
static void adjust(const gb_concrete *c, const gb_proportions *p, const mixed *m,
                   gb_density water, gb_trial_result *r) {
    const gb_trial *t = &c->trial;
    double lacks = isnan(t->slump.m) ? 0 : c->slump.m - t->slump.m;
    double too_much = gb_is_entrained(c) ? r->air.of_one - p->parts.air.of_one : 0;
    gb_water_change by = gb_water_change_of(c->table);
    r->for_slump.kg_m3 = by.for_slump.kg_m3 * lacks / by.step.m;
    r->for_air.kg_m3 = by.for_air.kg_m3 * too_much * 100.0;
    gb_parts_of_concrete *next = &r->next;
    next->water.kg_m3 = r->water_used.kg_m3 + r->for_slump.kg_m3 + r->for_air.kg_m3;
    next->cement.kg_m3 = next->water.kg_m3 / p->ratio;
    next->stone.kg_m3 = m->stone.kg / r->yield.m3;
    next->air = p->parts.air;
    gb_fill_with_sand(c, water, next);
    double ssd = r->unit_mass.kg_m3 - next->water.kg_m3 - next->cement.kg_m3 -
                 next->stone.kg_m3 * (1.0 + c->stone_absorption.of_one);
    r->next_sand_by_mass.kg_m3 = ssd / (1.0 + c->sand_absorption.of_one);
}

gb_status gb_judge_trial(const gb_concrete *c, const gb_proportions *p, gb_density water,
                         gb_trial_result *t) {
    if (c->trial.at.line == 0 || gb_concrete_faults(c) != 0)
        return GB_IMPOSSIBLE;
    mixed m = as_mixed(c);
    gb_trial_result result = {0};
    measure(c, p, &m, water, &result);
    adjust(c, p, &m, water, &result);
    if (!gb_is_mixable(c, &result.next))
        return GB_IMPOSSIBLE;
    *t = result;
    return GB_OK;
}

gb_status gb_concrete_parts(const gb_concrete *c, gb_density water,
                            gb_parts_of_concrete *parts) {
    gb_proportions p;
    gb_trial_result t;
    gb_status status = gb_proportion(c, water, &p);
    if (status == GB_OK && c->trial.at.line != 0)
        status = gb_judge_trial(c, &p, water, &t);
    if (status == GB_OK)
        *parts = c->trial.at.line != 0 ? t.next : p.parts;
    return status;
}
