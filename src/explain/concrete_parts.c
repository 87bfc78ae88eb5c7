#include "explain/concrete.h"

#include <math.h>

/* ---- the concrete ------------------------------------------------------------------ */

/* It was proportioned when it was read, so that it can be again. */
gb_made gb_made_of(const gb_mix *mix) {
    static const gb_density WATER = {GB_WATER_KG_M3};
    gb_made m = {.mix = mix, .c = &mix->concrete};
    m.tried = m.c->trial.at.line != 0;
    (void)!gb_proportion(m.c, WATER, &m.p);
    if (m.tried)
        (void)!gb_judge_trial(m.c, &m.p, WATER, &m.t);
    return m;
}

gb_batch_of gb_batch_mixed(const gb_made *m) {
    return m->tried ? GB_AFTER_TRIAL : GB_DESIGNED;
}

const gb_parts_of_concrete *gb_parts_in(const gb_made *m, gb_batch_of batch) {
    return batch == GB_AFTER_TRIAL ? &m->t.next : &m->p.parts;
}

const char *gb_made_id(const gb_made *m) {
    return m->mix->id[0] == '\0' ? NULL : m->mix->id;
}

/* ---- what was stated --------------------------------------------------------------- */

const gb_why *gb_why_member(gb_explainer *x, const gb_made *m, const char *name, int unit,
                            const double *at) {
    const gb_place *place = gb_places_find(x->places, at);
    const char *id = gb_made_id(m);
    const char *source = id == NULL ? NULL : gb_text_source(x, &m->mix->source);
    if (place != NULL && place->line == 0)
        source = N_("common practice");
    return gb_stated(x, name, id, unit, at, source);
}

const gb_why *gb_why_of_word(gb_explainer *x, const gb_made *m, const char *name,
                             int unit, double value, const void *at, const char *source) {
    return gb_keep_why(x, (gb_why){.name = name,
                                   .of = gb_made_id(m),
                                   .unit = unit,
                                   .value = value,
                                   .place = gb_places_find(x->places, at),
                                   .source = source});
}

/* ---- materials --------------------------------------------------------------------- */

static const gb_material *material_in(const gb_made *m, gb_stuff_in which) {
    const gb_material *all[] = {m->c->cement_material, m->c->sand_material,
                                m->c->stone_material};
    return all[which];
}

/* Stated by the concrete, else by the material. */
const gb_why *gb_why_gravity_in(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                                const char *name) {
    const double *own[] = {&m->c->cement_gravity, &m->c->sand_gravity,
                           &m->c->stone_gravity};
    const gb_material *material = material_in(m, which);
    if (!isnan(*own[which]))
        return gb_why_member(x, m, name, GB_PLAIN, own[which]);
    return gb_stated(x, name, material->name, GB_PLAIN, &material->gravity,
                     gb_text_source(x, &material->source));
}

const gb_why *gb_why_absorption_in(gb_explainer *x, const gb_made *m, gb_stuff_in which) {
    bool sand = which == GB_SAND_IN;
    return gb_why_member(x, m, sand ? "sand_absorption" : "stone_absorption", GB_SHARE,
                         sand ? &m->c->sand_absorption.of_one
                              : &m->c->stone_absorption.of_one);
}

const gb_why *gb_why_loose_stone(gb_explainer *x, const gb_concrete *c,
                                 const char *name) {
    if (!isnan(c->loose.kg_m3))
        return gb_stated(x, name, NULL, GB_DENSITY, &c->loose.kg_m3, NULL);
    const gb_why *rodded =
        gb_stated(x, "rodded", NULL, GB_DENSITY, &c->rodded.kg_m3, N_("common practice"));
    const gb_why *share =
        gb_fact(x, "loose_share", GB_SHARE, gb_loose_of_rodded().of_one,
                N_("rodding packs stone by 5 to 10 %: common practice"));
    return GB_WHY(x, name, GB_DENSITY, gb_loose_stone(c).kg_m3, "loose_share * rodded",
                  GB_INPUTS(share, rodded));
}

/* Stone that is not said to be wet or dry. */
static const gb_why *saturated(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                               const char *name) {
    bool sand = which == GB_SAND_IN;
    return GB_WHY(x, name, GB_SHARE,
                  sand ? m->c->sand_absorption.of_one : m->c->stone_absorption.of_one,
                  sand ? "sand_absorption" : "stone_absorption",
                  GB_INPUTS(gb_why_absorption_in(x, m, which)),
                  .source = N_("not stated: it lies with its pores full and its surface "
                               "dry"));
}

const gb_why *gb_why_moisture_in(gb_explainer *x, const gb_made *m, gb_stuff_in which) {
    bool sand = which == GB_SAND_IN;
    const double *at = sand ? &m->c->sand_moisture.of_one : &m->c->stone_moisture.of_one;
    if (!isnan(*at))
        return gb_why_member(x, m, sand ? "sand_moisture" : "stone_moisture", GB_SHARE,
                             at);
    if (!sand)
        return saturated(x, m, which, "stone_moisture");
    return gb_fact(x, "sand_moisture", GB_SHARE, gb_delivered_sand(m->c).of_one,
                   N_("not stated: damp, 5 %, common practice"));
}

const gb_why *gb_why_trial_moisture_in(gb_explainer *x, const gb_made *m,
                                       gb_stuff_in which) {
    bool sand = which == GB_SAND_IN;
    const gb_concrete *c = m->c;
    const char *name = sand ? "sand_moisture" : "stone_moisture";
    const double *then =
        sand ? &c->trial.sand_moisture.of_one : &c->trial.stone_moisture.of_one;
    const double *now = sand ? &c->sand_moisture.of_one : &c->stone_moisture.of_one;
    if (!isnan(*then))
        return gb_why_member(x, m, name, GB_SHARE, then);
    return isnan(*now) ? saturated(x, m, which, name)
                       : gb_why_member(x, m, name, GB_SHARE, now);
}

/* ---- how they fill the volume ------------------------------------------------------ */

#define FILLS N_("the sand fills what the others leave: absolute volumes, ACI 211.1")

static const gb_why *volume_of(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                               gb_batch_of batch) {
    const gb_parts_of_concrete *p = gb_parts_in(m, batch);
    const gb_why *mass = gb_why_in_concrete(x, m, which, batch);
    if (which == GB_WATER_IN)
        return GB_WHY(x, "water_volume", GB_SHARE, p->water_volume.of_one,
                      "water / water_density", GB_INPUTS(mass, gb_water_density(x)));
    if (which == GB_CEMENT_IN)
        return GB_WHY(x, "cement_volume", GB_SHARE, p->cement_volume.of_one,
                      "cement / (cement_gravity * water_density)",
                      GB_INPUTS(mass, gb_why_gravity_in(x, m, which, "cement_gravity"),
                                gb_water_density(x)));
    return GB_WHY(x, "stone_volume", GB_SHARE, p->stone_volume.of_one,
                  "stone / (stone_gravity * water_density)",
                  GB_INPUTS(mass, gb_why_gravity_in(x, m, which, "stone_gravity"),
                            gb_water_density(x)));
}

const gb_why *gb_why_volume_in(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                               gb_batch_of batch) {
    const gb_parts_of_concrete *p = gb_parts_in(m, batch);
    if (which != GB_SAND_IN)
        return volume_of(x, m, which, batch);
    return GB_WHY(x, "sand_volume", GB_SHARE, p->sand_volume.of_one,
                  "1 - water_volume - cement_volume - stone_volume - air",
                  GB_INPUTS(volume_of(x, m, GB_WATER_IN, batch),
                            volume_of(x, m, GB_CEMENT_IN, batch),
                            volume_of(x, m, GB_STONE_IN, batch), gb_why_air_in(x, m)),
                  .of = gb_made_id(m), .source = FILLS);
}

static const gb_why *cement(gb_explainer *x, const gb_made *m, gb_batch_of batch) {
    return GB_WHY(x, "cement", GB_DENSITY, gb_parts_in(m, batch)->cement.kg_m3,
                  "water / ratio",
                  GB_INPUTS(gb_why_in_concrete(x, m, GB_WATER_IN, batch),
                            gb_why_concrete_ratio(x, m)),
                  .of = gb_made_id(m));
}

static const gb_why *sand(gb_explainer *x, const gb_made *m, gb_batch_of batch) {
    return GB_WHY(x, "sand", GB_DENSITY, gb_parts_in(m, batch)->sand.kg_m3,
                  "sand_volume * sand_gravity * water_density",
                  GB_INPUTS(gb_why_volume_in(x, m, GB_SAND_IN, batch),
                            gb_why_gravity_in(x, m, GB_SAND_IN, "sand_gravity"),
                            gb_water_density(x)),
                  .of = gb_made_id(m));
}

static const gb_why *make(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                          gb_batch_of batch) {
    bool designed = batch == GB_DESIGNED;
    switch (which) {
    case GB_CEMENT_IN:
        return cement(x, m, batch);
    case GB_SAND_IN:
        return sand(x, m, batch);
    case GB_STONE_IN:
        return designed ? gb_why_designed_stone(x, m) : gb_why_next_stone(x, m);
    case GB_WATER_IN:
        break;
    }
    return designed ? gb_why_designed_water(x, m) : gb_why_next_water(x, m);
}

/* Found out once for each concrete: all parts of all batches rest on it. */
const gb_why *gb_why_in_concrete(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                                 gb_batch_of batch) {
    static const char *const NAMES[][4] = {
        [GB_DESIGNED] = {"designed cement", "designed sand", "designed stone",
                         "designed water"},
        [GB_AFTER_TRIAL] = {"next cement", "next sand", "next stone", "next water"}};
    const char *name = NAMES[batch][which];
    const gb_why *known = gb_known(x, name, m->c);
    return known != NULL ? known : gb_remember(x, name, m->c, make(x, m, which, batch));
}

const gb_why *gb_why_fresh_mass(gb_explainer *x, const gb_made *m, gb_batch_of batch) {
    return GB_WHY(x, "fresh", GB_DENSITY, gb_parts_in(m, batch)->fresh.kg_m3,
                  "water + cement + stone * (1 + stone_absorption) + sand * (1 + "
                  "sand_absorption)",
                  GB_INPUTS(gb_why_in_concrete(x, m, GB_WATER_IN, batch),
                            gb_why_in_concrete(x, m, GB_CEMENT_IN, batch),
                            gb_why_in_concrete(x, m, GB_STONE_IN, batch),
                            gb_why_absorption_in(x, m, GB_STONE_IN),
                            gb_why_in_concrete(x, m, GB_SAND_IN, batch),
                            gb_why_absorption_in(x, m, GB_SAND_IN)));
}
