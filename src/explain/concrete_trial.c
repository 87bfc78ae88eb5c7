#include "explain/concrete.h"

#include <math.h>

#define C138    N_("ASTM C138")
#define CHANGES N_("ACI 211.1 section 6.3.9, from memory")

/* ---- as it was mixed --------------------------------------------------------------- */

static const gb_why *mass_of(gb_explainer *x, const gb_made *m, gb_stuff_in which) {
    static const char *const NAMES[] = {"trial_cement", "trial_sand", "trial_stone",
                                        "trial_water"};
    const gb_trial *t = &m->c->trial;
    const double *at[] = {&t->cement.kg, &t->sand.kg, &t->stone.kg, &t->water.kg};
    return gb_why_member(x, m, NAMES[which], GB_MASS, at[which]);
}

const gb_why *gb_why_trial_batch(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "batch", GB_MASS, m->t.batch.kg,
                  "trial_water + trial_cement + trial_stone + trial_sand",
                  GB_INPUTS(mass_of(x, m, GB_WATER_IN), mass_of(x, m, GB_CEMENT_IN),
                            mass_of(x, m, GB_STONE_IN), mass_of(x, m, GB_SAND_IN)));
}

const gb_why *gb_why_unit_mass(gb_explainer *x, const gb_made *m) {
    const gb_trial *t = &m->c->trial;
    if (!isnan(t->unit_mass.kg_m3))
        return gb_why_member(x, m, "unit_mass", GB_DENSITY, &t->unit_mass.kg_m3);
    return GB_WHY(x, "unit_mass", GB_DENSITY, m->t.unit_mass.kg_m3,
                  "(full - empty) / measure",
                  GB_INPUTS(gb_why_member(x, m, "full", GB_MASS, &t->full.kg),
                            gb_why_member(x, m, "empty", GB_MASS, &t->empty.kg),
                            gb_why_member(x, m, "measure", GB_VOLUME, &t->measure.m3)),
                  .source = C138);
}

const gb_why *gb_why_trial_yield(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "trial_yield", GB_VOLUME, m->t.yield.m3, "batch / unit_mass",
                  GB_INPUTS(gb_why_trial_batch(x, m), gb_why_unit_mass(x, m)),
                  .source = C138);
}

const gb_why *gb_why_cement_content(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "cement_content", GB_DENSITY, m->t.cement_content.kg_m3,
                  "trial_cement / trial_yield",
                  GB_INPUTS(mass_of(x, m, GB_CEMENT_IN), gb_why_trial_yield(x, m)),
                  .source = C138);
}

const gb_why *gb_why_relative_yield(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "relative_yield", GB_PLAIN, m->t.relative_yield,
                  "trial_yield * cement / trial_cement",
                  GB_INPUTS(gb_why_trial_yield(x, m),
                            gb_why_in_concrete(x, m, GB_CEMENT_IN, GB_DESIGNED),
                            mass_of(x, m, GB_CEMENT_IN)),
                  .source = C138);
}

/* ---- water of it ------------------------------------------------------------------- */

static double dry_kg(const gb_made *m, gb_stuff_in which) {
    const gb_concrete *c = m->c;
    bool is_sand = which == GB_SAND_IN;
    gb_share moisture = is_sand ? gb_trial_sand_moisture(c) : gb_trial_stone_moisture(c);
    gb_share absorption = is_sand ? c->sand_absorption : c->stone_absorption;
    gb_mass lying = is_sand ? c->trial.sand : c->trial.stone;
    return gb_on_basis(lying, gb_wetness_of(moisture, absorption), GB_AS_DELIVERED,
                       GB_OVEN_DRY)
        .kg;
}

static const gb_why *dry(gb_explainer *x, const gb_made *m, gb_stuff_in which) {
    bool is_sand = which == GB_SAND_IN;
    return GB_WHY(x, is_sand ? "dry_sand" : "dry_stone", GB_MASS, dry_kg(m, which),
                  is_sand ? "trial_sand / (1 + sand_moisture)"
                          : "trial_stone / (1 + stone_moisture)",
                  GB_INPUTS(mass_of(x, m, which), gb_why_trial_moisture_in(x, m, which)));
}

const gb_why *gb_why_trial_water(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "mixing_water", GB_MASS, m->t.mixing_water.kg,
                  "trial_water + dry_stone * (stone_moisture - stone_absorption) + "
                  "dry_sand * (sand_moisture - sand_absorption)",
                  GB_INPUTS(mass_of(x, m, GB_WATER_IN), dry(x, m, GB_STONE_IN),
                            gb_why_trial_moisture_in(x, m, GB_STONE_IN),
                            gb_why_absorption_in(x, m, GB_STONE_IN),
                            dry(x, m, GB_SAND_IN),
                            gb_why_trial_moisture_in(x, m, GB_SAND_IN),
                            gb_why_absorption_in(x, m, GB_SAND_IN)));
}

const gb_why *gb_why_water_used_in(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "water_used", GB_DENSITY, m->t.water_used.kg_m3,
                  "mixing_water / trial_yield",
                  GB_INPUTS(gb_why_trial_water(x, m), gb_why_trial_yield(x, m)));
}

const gb_why *gb_why_ratio_used(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "ratio_used", GB_PLAIN, m->t.ratio_used,
                  "mixing_water / trial_cement",
                  GB_INPUTS(gb_why_trial_water(x, m), mass_of(x, m, GB_CEMENT_IN)));
}

/* ---- air --------------------------------------------------------------------------- */

/* T of ASTM C138. */
static const gb_why *without_air(gb_explainer *x, const gb_made *m) {
    double t = m->t.unit_mass.kg_m3 / (1.0 - m->t.gravimetric_air.of_one);
    return GB_WHY(x, "without_air", GB_DENSITY, t,
                  "batch * water_density / (mixing_water + trial_cement / cement_gravity "
                  "+ dry_stone / stone_gravity + dry_sand / sand_gravity)",
                  GB_INPUTS(gb_why_trial_batch(x, m), gb_water_density(x),
                            gb_why_trial_water(x, m), mass_of(x, m, GB_CEMENT_IN),
                            gb_why_gravity_in(x, m, GB_CEMENT_IN, "cement_gravity"),
                            dry(x, m, GB_STONE_IN),
                            gb_why_gravity_in(x, m, GB_STONE_IN, "stone_gravity"),
                            dry(x, m, GB_SAND_IN),
                            gb_why_gravity_in(x, m, GB_SAND_IN, "sand_gravity")),
                  .source = C138);
}

const gb_why *gb_why_gravimetric(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "by_masses", GB_SHARE, m->t.gravimetric_air.of_one,
                  "(without_air - unit_mass) / without_air",
                  GB_INPUTS(without_air(x, m), gb_why_unit_mass(x, m)), .source = C138);
}

const gb_why *gb_why_trial_air(gb_explainer *x, const gb_made *m) {
    return gb_why_member(x, m, "measured_air", GB_SHARE, &m->c->trial.air.of_one);
}

/* ---- what it changes --------------------------------------------------------------- */

const gb_why *gb_why_trial_slump(gb_explainer *x, const gb_made *m) {
    return gb_why_member(x, m, "measured_slump", GB_LENGTH, &m->c->trial.slump.m);
}

const gb_why *gb_why_for_slump(gb_explainer *x, const gb_made *m) {
    gb_water_change by = gb_water_change_of(m->c->table);
    return GB_WHY(x, "for_slump", GB_DENSITY, m->t.for_slump.kg_m3,
                  "each * (slump - measured_slump) / step",
                  GB_INPUTS(gb_why_as_printed(x, m, "each", by.for_slump, NULL, CHANGES),
                            gb_why_member(x, m, "slump", GB_LENGTH, &m->c->slump.m),
                            gb_why_trial_slump(x, m),
                            gb_fact(x, "step", GB_LENGTH, by.step.m, CHANGES)));
}

const gb_why *gb_why_for_air(gb_explainer *x, const gb_made *m) {
    gb_water_change by = gb_water_change_of(m->c->table);
    return GB_WHY(
        x, "for_air", GB_DENSITY, m->t.for_air.kg_m3, "100 * each * (measured_air - air)",
        GB_INPUTS(
            gb_why_as_printed(x, m, "each", by.for_air, NULL,
                              N_("for 1 % of air: ACI 211.1 section 6.3.9, from memory")),
            gb_why_trial_air(x, m), gb_why_air_in(x, m)));
}

/* What was not measured changes nothing. */
const gb_why *gb_why_next_water(gb_explainer *x, const gb_made *m) {
    const gb_trial *t = &m->c->trial;
    const gb_why *all[3] = {gb_why_water_used_in(x, m)};
    size_t n = 1;
    if (!isnan(t->slump.m))
        all[n++] = gb_why_for_slump(x, m);
    if (gb_is_entrained(m->c) && !isnan(t->air.of_one))
        all[n++] = gb_why_for_air(x, m);
    return GB_WHY(x, "water", GB_DENSITY, m->t.next.water.kg_m3, "sum()", .inputs = all,
                  .input_count = n, .of = gb_made_id(m));
}

const gb_why *gb_why_next_stone(gb_explainer *x, const gb_made *m) {
    return GB_WHY(
        x, "stone", GB_DENSITY, m->t.next.stone.kg_m3, "dry_stone / trial_yield",
        GB_INPUTS(dry(x, m, GB_STONE_IN), gb_why_trial_yield(x, m)), .of = gb_made_id(m));
}

const gb_why *gb_why_next_by_mass(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "by_mass", GB_DENSITY, m->t.next_sand_by_mass.kg_m3,
                  "(unit_mass - water - cement - stone * (1 + stone_absorption)) / (1 + "
                  "sand_absorption)",
                  GB_INPUTS(gb_why_unit_mass(x, m),
                            gb_why_in_concrete(x, m, GB_WATER_IN, GB_AFTER_TRIAL),
                            gb_why_in_concrete(x, m, GB_CEMENT_IN, GB_AFTER_TRIAL),
                            gb_why_in_concrete(x, m, GB_STONE_IN, GB_AFTER_TRIAL),
                            gb_why_absorption_in(x, m, GB_STONE_IN),
                            gb_why_absorption_in(x, m, GB_SAND_IN)));
}
