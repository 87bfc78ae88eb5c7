#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

#define VOLUME_SOURCE N_("absolute volumes of the solids, the water and the air")
#define SAND_SOURCE                                                                      \
    N_("loose dry sand holds 1.07 of its volume in a mix it governs: fitted to the "     \
       "CPWD "                                                                           \
       "Analysis of Rates")
#define DEMAND_SOURCE                                                                    \
    N_("water demand of a mortar: fitted to the CPWD Analysis of Rates, Rule 38 of the " \
       "US "                                                                             \
       "Navy Builder manual and ASTM C270")

/* The plan's own copy of a mix may bear the job's water; places are those of the table.
 */
static const gb_mix *as_in_table(const gb_job *job, const gb_mix *mix) {
    for (size_t i = 0; i < job->mix_count; i++)
        if (strcmp(job->mixes[i]->id, mix->id) == 0)
            return job->mixes[i];
    return mix;
}

gb_mixed gb_mixed_of(const gb_about *a) {
    if (a->concrete != NULL)
        return (gb_mixed){.alone = &a->concrete->asked.mix->concrete,
                          .mix = a->concrete->asked.mix,
                          .recipe = &a->concrete->asked.recipe};
    if (a->question != NULL)
        return (gb_mixed){.mix = a->question->mix, .recipe = &a->question->recipe};
    const gb_job *job = a->plan->job;
    const gb_mix *mix = as_in_table(job, a->mix->need.mix);
    return (gb_mixed){
        .job = job, .mix = mix, .recipe = &a->mix->recipe, .own = gb_job_label(job, mix)};
}

/* ---- masses ------------------------------------------------------------------------ */

const gb_why *gb_why_pack(gb_explainer *x, const gb_job *job, const gb_material *m) {
    for (size_t i = 0; job != NULL && i < job->pack_count; i++)
        if (strcmp(job->packs[i].material.text, m->name) == 0)
            return gb_stated(x, "bag", m->name, GB_MASS, &job->packs[i].pack.kg, NULL);
    gb_system system = job != NULL ? job->units : x->style.system;
    return gb_stated(x, "bag", m->name, GB_MASS, &gb_usual_pack(m, system)->kg,
                     gb_text_source(x, &m->source));
}

const gb_why *gb_why_bag(gb_explainer *x, const gb_mixed *m) {
    if (m->mix->part_count > 0)
        return gb_why_pack(x, m->job, m->mix->parts[0].material);
    const gb_label *label = m->own != NULL ? &m->own->label : &m->mix->label;
    return gb_stated(x, "bag", m->mix->id, GB_MASS, &label->bag.kg,
                     m->own != NULL ? NULL : gb_text_source(x, &m->mix->source));
}

const gb_why *gb_why_bulk(gb_explainer *x, const gb_material *m) {
    if (m->loose_by != NULL)
        return gb_why_loose_stone(x, m->loose_by, "bulk");
    return gb_stated(x, "bulk", m->name, GB_DENSITY, &m->bulk.kg_m3,
                     gb_text_source(x, &m->source));
}

const gb_why *gb_why_part_volume(gb_explainer *x, const gb_mixed *m, size_t i,
                                 const char *name) {
    const gb_part *p = &m->mix->parts[i];
    if (gb_is_proportioned(m->mix))
        return gb_why_proportioned_volume(x, m->mix, i, name);
    return gb_stated(x, name, p->material->name, GB_PLAIN, &p->volume,
                     gb_text_source(x, &m->mix->source));
}

/* Every part is so many volumes against the first, which is one bag. */
const gb_why *gb_why_part_mass(gb_explainer *x, const gb_mixed *m, size_t i) {
    const gb_material *material = m->mix->parts[i].material;
    const gb_material *first = m->mix->parts[0].material;
    const gb_why *bag = gb_why_bag(x, m);
    if (i == 0)
        return GB_WHY(x, "mass", GB_MASS, m->recipe->part[0].kg, "bag", GB_INPUTS(bag),
                      .of = first->name);
    if (gb_is_proportioned(m->mix))
        return gb_why_proportioned_mass(x, m, i);
    const gb_why *first_bulk =
        gb_stated(x, "first_bulk", first->name, GB_DENSITY, &first->bulk.kg_m3,
                  gb_text_source(x, &first->source));
    return GB_WHY(x, "mass", GB_MASS, m->recipe->part[i].kg,
                  "bag / (first_parts * first_bulk) * parts * bulk",
                  GB_INPUTS(bag, gb_why_part_volume(x, m, 0, "first_parts"), first_bulk,
                            gb_why_part_volume(x, m, i, "parts"),
                            gb_why_bulk(x, material)),
                  .of = material->name);
}

/* The masses of all parts of those kinds (bits of 1 << gb_material_kind). */
static const gb_why *mass_of_kinds(gb_explainer *x, const gb_mixed *m, unsigned kinds,
                                   const char *name) {
    const gb_why *parts[GB_MOST_PARTS];
    size_t n = 0;
    double kg = 0;
    for (size_t i = 0; i < m->mix->part_count; i++) {
        if (!(kinds & (1u << m->mix->parts[i].material->kind)))
            continue;
        parts[n++] = gb_why_part_mass(x, m, i);
        kg += m->recipe->part[i].kg;
    }
    if (n == 0)
        return gb_fact(x, name, GB_MASS, 0, N_("the mix has none"));
    return GB_WHY(x, name, GB_MASS, kg, "sum()", .inputs = parts, .input_count = n);
}

const gb_why *gb_why_sand(gb_explainer *x, const gb_mixed *m) {
    return mass_of_kinds(x, m, 1u << GB_SAND, "sand");
}

const gb_why *gb_why_cement(gb_explainer *x, const gb_mixed *m) {
    return mass_of_kinds(x, m, 1u << GB_CEMENT, "cement");
}

const gb_why *gb_why_stone(gb_explainer *x, const gb_mixed *m) {
    return mass_of_kinds(x, m, 1u << GB_COARSE, "stone");
}

const gb_why *gb_why_binder(gb_explainer *x, const gb_mixed *m) {
    static const unsigned BINDERS = 1u << GB_CEMENT | 1u << GB_LIME;
    return m->mix->part_count == 0 ? gb_why_bag(x, m)
                                   : mass_of_kinds(x, m, BINDERS, "binder");
}

const gb_why *gb_why_dry(gb_explainer *x, const gb_mixed *m) {
    const gb_why *all[GB_MOST_PARTS + GB_MOST_ADDITIONS];
    size_t n = 0;
    if (m->mix->part_count == 0)
        return gb_why_bag(x, m);
    for (size_t i = 0; i < m->mix->part_count; i++)
        all[n++] = gb_why_part_mass(x, m, i);
    for (size_t i = 0; i < m->mix->addition_count; i++)
        if (!isnan(m->mix->additions[i].share.of_one))
            all[n++] = gb_why_powder(x, m, i);
    return GB_WHY(x, "dry", GB_MASS, m->recipe->dry.kg, "sum()", .inputs = all,
                  .input_count = n);
}

/* ---- water ------------------------------------------------------------------------- */

static const gb_why *demand(gb_explainer *x, const gb_mixed *m) {
    const gb_why *cement = mass_of_kinds(x, m, 1u << GB_CEMENT, "cement");
    const gb_why *lime = mass_of_kinds(x, m, 1u << GB_LIME, "lime");
    const gb_why *sand = gb_why_sand(x, m);
    if (x->failed)
        return NULL;
    double kg = 0.22 * cement->value + 0.12 * sand->value + 1.0 * lime->value;
    const gb_why *plastic =
        GB_WHY(x, "plastic_demand", GB_MASS, kg, "0.22 * cement + 0.12 * sand + lime",
               GB_INPUTS(cement, sand, lime), .source = DEMAND_SOURCE);
    if (m->mix->consistency != GB_STIFF)
        return plastic;
    return GB_WHY(x, "stiff_demand", GB_MASS, 0.65 * kg, "0.65 * plastic_demand",
                  GB_INPUTS(plastic), .source = N_("a stiff bed: common practice"));
}

/* Water by a label, in volumes; or by a share of the demand or of the binder. */
static const gb_why *water_of_label(gb_explainer *x, const gb_mixed *m, double kg,
                                    const char *name, gb_which_water which) {
    const gb_water *w = &m->mix->water;
    const double *of_mix[] = {&w->bag_least.m3, &w->bag_usual.m3, &w->bag_most.m3};
    const double *at = of_mix[which];
    const char *source = gb_text_source(x, &m->mix->source);
    if (m->own != NULL && !isnan(m->own->usual.m3)) {
        const double *own[] = {&m->own->least.m3, &m->own->usual.m3, &m->own->most.m3};
        at = own[which];
        source = NULL;
    }
    const gb_why *volume = gb_stated(x, "label_water", m->mix->id, GB_VOLUME, at, source);
    return GB_WHY(x, name, GB_MASS, kg, "label_water * water_density",
                  GB_INPUTS(volume, gb_water_density(x)));
}

static const gb_why *water_of_parts(gb_explainer *x, const gb_mixed *m, double kg,
                                    const char *name, gb_which_water which) {
    const gb_water *w = &m->mix->water;
    const double *shares[] = {&w->least.of_one, &w->usual.of_one, &w->most.of_one};
    const gb_why *share =
        gb_is_proportioned(m->mix)
            ? gb_why_proportioned_share(x, m->mix, which)
            : gb_stated(x, "water_share", m->mix->id, GB_SHARE, shares[which],
                        gb_text_source(x, &m->mix->source));
    if (w->basis == GB_WATER_BINDER)
        return GB_WHY(x, name, GB_MASS, kg, "water_share * binder",
                      GB_INPUTS(share, gb_why_binder(x, m)));
    bool stiff = m->mix->consistency == GB_STIFF;
    return GB_WHY(x, name, GB_MASS, kg,
                  stiff ? "water_share * stiff_demand" : "water_share * plastic_demand",
                  GB_INPUTS(share, demand(x, m)));
}

const gb_why *gb_why_water(gb_explainer *x, const gb_mixed *m, gb_which_water which) {
    static const char *const NAMES[] = {"least_water", "usual_water", "most_water"};
    const gb_recipe *r = m->recipe;
    const double kg[] = {r->water_least.kg, r->water_usual.kg, r->water_most.kg};
    if (m->mix->part_count == 0)
        return water_of_label(x, m, kg[which], NAMES[which], which);
    return water_of_parts(x, m, kg[which], NAMES[which], which);
}

const gb_why *gb_why_wet(gb_explainer *x, const gb_mixed *m) {
    const gb_recipe *r = m->recipe;
    bool blend = m->mix->part_count == 0;
    if (r->absorbed.kg > 0)
        return GB_WHY(x, "wet", GB_MASS, gb_wet_mass(r).kg,
                      "dry + absorbed + usual_water",
                      GB_INPUTS(gb_why_dry(x, m), gb_why_absorbed(x, m),
                                gb_why_water(x, m, GB_USUAL_WATER)));
    return GB_WHY(x, "wet", GB_MASS, gb_wet_mass(r).kg,
                  blend ? "bag + usual_water" : "dry + usual_water",
                  GB_INPUTS(gb_why_dry(x, m), gb_why_water(x, m, GB_USUAL_WATER)));
}

/* ---- yield ------------------------------------------------------------------------- */

static const gb_why *gravity_of(gb_explainer *x, const gb_material *material) {
    return gb_stated(x, "gravity", material->name, GB_PLAIN, &material->gravity,
                     gb_text_source(x, &material->source));
}

static const gb_why *solid(gb_explainer *x, const gb_material *material,
                           const gb_why *mass, const gb_why *gravity) {
    if (mass == NULL || gravity == NULL)
        return NULL;
    return GB_WHY(x, "solid", GB_VOLUME, mass->value / (gravity->value * GB_WATER_KG_M3),
                  strcmp(mass->name, "powder") == 0 ? "powder / (gravity * water_density)"
                                                    : "mass / (gravity * water_density)",
                  GB_INPUTS(mass, gravity, gb_water_density(x)), .of = material->name);
}

static const gb_why *solid_part(gb_explainer *x, const gb_mixed *m, size_t i) {
    const gb_material *material = m->mix->parts[i].material;
    const gb_why *gravity = gb_is_proportioned(m->mix)
                                ? gb_why_proportioned_gravity(x, m->mix, i)
                                : gravity_of(x, material);
    return solid(x, material, gb_why_part_mass(x, m, i), gravity);
}

const gb_why *gb_why_mix_air(gb_explainer *x, const gb_mixed *m) {
    if (gb_is_proportioned(m->mix))
        return gb_why_proportioned_air(x, m->mix);
    return gb_stated(x, "air", m->mix->id, GB_SHARE, &m->mix->air.of_one,
                     gb_text_source(x, &m->mix->source));
}

static const gb_why *by_solids(gb_explainer *x, const gb_mixed *m, const char *name) {
    const gb_why *solids[GB_MOST_PARTS + GB_MOST_ADDITIONS];
    size_t n = 0;
    double all = 0;
    for (size_t i = 0; i < m->mix->part_count; i++)
        solids[n++] = solid_part(x, m, i);
    for (size_t i = 0; i < m->mix->addition_count; i++)
        if (!isnan(m->mix->additions[i].share.of_one))
            solids[n++] = solid(x, m->mix->additions[i].material, gb_why_powder(x, m, i),
                                gravity_of(x, m->mix->additions[i].material));
    for (size_t i = 0; i < n; i++)
        all += solids[i] == NULL ? 0 : solids[i]->value;
    const gb_why *sum =
        GB_WHY(x, "solids", GB_VOLUME, all, "sum()", .inputs = solids, .input_count = n);
    double air = m->mix->air.of_one;
    double volume = (all + m->recipe->water_usual.kg / GB_WATER_KG_M3) / (1.0 - air);
    return GB_WHY(x, name, GB_VOLUME, volume,
                  "(solids + usual_water / water_density) / (1 - air)",
                  GB_INPUTS(sum, gb_why_water(x, m, GB_USUAL_WATER), gb_water_density(x),
                            gb_why_mix_air(x, m)),
                  .source = VOLUME_SOURCE);
}

static const gb_why *by_sand(gb_explainer *x, const gb_mixed *m) {
    const gb_why *sands[GB_MOST_PARTS];
    size_t n = 0;
    double all = 0;
    for (size_t i = 0; i < m->mix->part_count; i++) {
        const gb_material *s = m->mix->parts[i].material;
        if (s->kind != GB_SAND)
            continue;
        double volume = m->recipe->part[i].kg / (1.07 * s->dry_loose.kg_m3);
        const gb_why *loose =
            gb_stated(x, "dry_loose", s->name, GB_DENSITY, &s->dry_loose.kg_m3,
                      gb_text_source(x, &s->source));
        sands[n++] = GB_WHY(x, "by_sand", GB_VOLUME, volume, "mass / (1.07 * dry_loose)",
                            GB_INPUTS(gb_why_part_mass(x, m, i), loose), .of = s->name,
                            .source = SAND_SOURCE);
        all += volume;
    }
    return n == 1 ? sands[0]
                  : GB_WHY(x, "by_sand", GB_VOLUME, all, "sum()", .inputs = sands,
                           .input_count = n);
}

static const gb_why *stated_yield(gb_explainer *x, const gb_mixed *m) {
    const gb_why *yield =
        gb_stated(x, "label_yield", m->mix->id, GB_VOLUME, &m->own->label.yield.m3, NULL);
    const gb_why *bag =
        gb_stated(x, "label_bag", m->mix->id, GB_MASS, &m->own->label.bag.kg, NULL);
    return GB_WHY(x, "yield", GB_VOLUME, m->recipe->yield.m3,
                  "label_yield * bag / label_bag",
                  GB_INPUTS(yield, gb_why_bag(x, m), bag), .of = m->mix->id);
}

static const gb_why *make_yield(gb_explainer *x, const gb_mixed *m) {
    if (m->own != NULL)
        return stated_yield(x, m);
    if (m->mix->part_count == 0)
        return gb_stated(x, "yield", m->mix->id, GB_VOLUME, &m->mix->label.yield.m3,
                         gb_text_source(x, &m->mix->source));
    if (!(m->recipe->sand.kg > 0))
        return by_solids(x, m, "yield");
    return GB_WHY(
        x, "yield", GB_VOLUME, m->recipe->yield.m3, "larger(by_solids, by_sand)",
        GB_INPUTS(by_solids(x, m, "by_solids"), by_sand(x, m)), .of = m->mix->id);
}

const gb_why *gb_why_yield(gb_explainer *x, const gb_mixed *m) {
    const gb_why *known = gb_known(x, "yield", m->recipe);
    return known != NULL ? known : gb_remember(x, "yield", m->recipe, make_yield(x, m));
}

/* Stated by the label or the mix; else what is usual on that route. */
const gb_why *gb_why_yield_spread(gb_explainer *x, const gb_mixed *m) {
    static const char *const USUAL[] = {
        [GB_COMPUTED] = N_("between computed and published yields: 4 % over 30 mortars, "
                           "6 % over 15 mixes with stone"),
        [GB_LABELLED] = N_("of a yield by the label: common practice"),
        [GB_MEASURED] = N_("of a yield measured on site: common practice")};
    const double *at =
        m->own != NULL ? &m->own->label.spread.of_one : &m->mix->spread.of_one;
    if (isnan(*at))
        return gb_fact(x, "yield_spread", GB_SHARE, m->recipe->spread.of_one,
                       USUAL[m->recipe->route]);
    return gb_stated(x, "yield_spread", m->mix->id, GB_SHARE, at,
                     m->own != NULL ? NULL : gb_text_source(x, &m->mix->source));
}

/* ---- water to add ------------------------------------------------------------------ */

static double added(const gb_mixed *m, const gb_why *bags, gb_share moisture,
                    gb_which_water which) {
    const gb_recipe *r = m->recipe;
    const double kg[] = {r->water_least.kg, r->water_usual.kg, r->water_most.kg};
    double first = which == GB_FIRST_WATER ? m->mix->water.first.of_one : 1.0;
    return bags->value * (kg[which] - r->sand.kg * moisture.of_one + r->drunk.kg) * first;
}

/* Of a blend, or of parts without sand: no moisture comes in. */
static const gb_why *add_plain(gb_explainer *x, const gb_mixed *m, const gb_why *bags,
                               gb_which_water which) {
    const gb_why *water = gb_why_water(x, m, which);
    double kg = added(m, bags, (gb_share){0}, which);
    if (which != GB_FIRST_WATER)
        return GB_WHY(x, "to_add", GB_MASS, kg,
                      which == GB_USUAL_WATER ? "bags * usual_water"
                                              : "bags * most_water",
                      GB_INPUTS(bags, water));
    const gb_why *share =
        gb_stated(x, "first_share", m->mix->id, GB_SHARE, &m->mix->water.first.of_one,
                  gb_text_source(x, &m->mix->source));
    return GB_WHY(x, "to_add", GB_MASS, kg, "bags * least_water * first_share",
                  GB_INPUTS(bags, water, share));
}

/* The aggregate of a proportioned concrete drinks, or its stone brings water too. */
static const gb_why *add_to_concrete(gb_explainer *x, const gb_about *a,
                                     const gb_mixed *m, const gb_why *bags,
                                     gb_which_water which) {
    static const char *const FORMULAS[] = {
        [GB_FIRST_WATER] = "bags * (least_water - sand * moisture + drunk) * first_share",
        [GB_USUAL_WATER] = "bags * (usual_water - sand * moisture + drunk)",
        [GB_MOST_WATER] = "bags * (most_water - sand * moisture + drunk)"};
    const gb_why *all[] = {bags,
                           gb_why_water(x, m, which),
                           gb_why_sand(x, m),
                           gb_why_moisture(x, m, a->moisture),
                           gb_why_drunk(x, m),
                           gb_stated(x, "first_share", m->mix->id, GB_SHARE,
                                     &m->mix->water.first.of_one,
                                     gb_text_source(x, &m->mix->source))};
    return GB_WHY(x, "to_add", GB_MASS, added(m, bags, a->moisture, which),
                  FORMULAS[which], .inputs = all,
                  .input_count = which == GB_FIRST_WATER ? 6 : 5);
}

static const gb_why *add_to_sand(gb_explainer *x, const gb_about *a, const gb_mixed *m,
                                 const gb_why *bags, gb_which_water which) {
    const gb_why *water = gb_why_water(x, m, which);
    const gb_why *sand = gb_why_sand(x, m);
    const gb_why *moisture = gb_why_moisture(x, m, a->moisture);
    double kg = added(m, bags, a->moisture, which);
    if (which != GB_FIRST_WATER)
        return GB_WHY(x, "to_add", GB_MASS, kg,
                      which == GB_USUAL_WATER ? "bags * (usual_water - sand * moisture)"
                                              : "bags * (most_water - sand * moisture)",
                      GB_INPUTS(bags, water, sand, moisture));
    const gb_why *share =
        gb_stated(x, "first_share", m->mix->id, GB_SHARE, &m->mix->water.first.of_one,
                  gb_text_source(x, &m->mix->source));
    return GB_WHY(x, "to_add", GB_MASS, kg,
                  "bags * (least_water - sand * moisture) * first_share",
                  GB_INPUTS(bags, water, sand, moisture, share));
}

const gb_why *gb_why_to_add(gb_explainer *x, const gb_about *a, gb_which_water which) {
    gb_mixed m = gb_mixed_of(a);
    gb_water_row row = {0};
    if (gb_water_to_add(m.mix, m.recipe, a->moisture, 1.0, &row) != GB_OK)
        return gb_fact(x, "to_add", GB_MASS, 0,
                       N_("none: the sand brings more than the mix may hold"));
    const gb_why *bags = gb_why_bags(x, a);
    if (bags == NULL)
        return NULL;
    if (gb_is_proportioned(m.mix))
        return add_to_concrete(x, a, &m, bags, which);
    return m.recipe->sand.kg > 0 ? add_to_sand(x, a, &m, bags, which)
                                 : add_plain(x, &m, bags, which);
}

/* ---- times ------------------------------------------------------------------------- */

const gb_why *gb_why_mix_time(gb_explainer *x, const char *name, const gb_mixed *m,
                              const double *s) {
    return gb_stated(x, name, m->mix->id, GB_DURATION, s,
                     gb_text_source(x, &m->mix->source));
}

const gb_why *gb_why_life_in_heat(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_mix_time(x, "life_in_heat", &m, &m.mix->life_hot.s);
}

const gb_why *gb_why_life(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    if (a->mix != NULL && a->mix->life.s != m.mix->life.s)
        return gb_why_life_in_heat(x, a);
    return gb_why_mix_time(x, "life", &m, &m.mix->life.s);
}
