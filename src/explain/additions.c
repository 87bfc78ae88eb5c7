#include "explain/chains.h"

#include <math.h>

/* ---- what a mix states ------------------------------------------------------------- */

static const gb_why *stated(gb_explainer *x, const gb_mixed *m, size_t i,
                            const char *name, int unit, const double *at) {
    return gb_stated(x, name, m->mix->additions[i].material->name, unit, at,
                     gb_text_source(x, &m->mix->source));
}

static const gb_why *replaced_by(gb_explainer *x, const gb_mixed *m, size_t i) {
    return stated(x, m, i, "replaces", GB_SHARE, &m->mix->additions[i].replaces.of_one);
}

const gb_why *gb_why_replaced_share(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return replaced_by(x, &m, a->part);
}

/* ---- its mass, in the amount that the row is about --------------------------------- */

static const gb_why *by_share(gb_explainer *x, const gb_mixed *m, size_t i,
                              const gb_why *bags) {
    const gb_addition *a = &m->mix->additions[i];
    return GB_WHY(x, "added", GB_MASS,
                  bags->value * a->share.of_one * m->recipe->binder.kg,
                  "bags * share * binder",
                  GB_INPUTS(bags, stated(x, m, i, "share", GB_SHARE, &a->share.of_one),
                            gb_why_binder(x, m)),
                  .of = a->material->name);
}

static const gb_why *by_dose(gb_explainer *x, const gb_mixed *m, size_t i,
                             const gb_why *bags) {
    const gb_addition *a = &m->mix->additions[i];
    double density = a->material->bulk.kg_m3;
    return GB_WHY(x, "added", GB_MASS,
                  bags->value * m->recipe->binder.kg / a->dose_for.kg * a->dose.m3 *
                      density,
                  m->mix->part_count == 0 ? "bags * bag / dose_for * dose * bulk"
                                          : "bags * binder / dose_for * dose * bulk",
                  GB_INPUTS(bags, gb_why_binder(x, m),
                            stated(x, m, i, "dose_for", GB_MASS, &a->dose_for.kg),
                            stated(x, m, i, "dose", GB_VOLUME, &a->dose.m3),
                            gb_why_bulk(x, a->material)),
                  .of = a->material->name);
}

static const gb_why *by_water(gb_explainer *x, const gb_about *about, const gb_mixed *m,
                              size_t i) {
    const gb_addition *a = &m->mix->additions[i];
    const gb_why *water = gb_why_to_add(x, about, GB_USUAL_WATER);
    if (water == NULL)
        return NULL;
    return GB_WHY(x, "added", GB_MASS,
                  a->replaces.of_one * water->value / GB_WATER_KG_M3 *
                      a->material->bulk.kg_m3,
                  "replaces * to_add / water_density * bulk",
                  GB_INPUTS(replaced_by(x, m, i), water, gb_water_density(x),
                            gb_why_bulk(x, a->material)),
                  .of = a->material->name);
}

const gb_why *gb_why_addition(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_addition *addition = &m.mix->additions[a->part];
    if (!isnan(addition->replaces.of_one))
        return by_water(x, a, &m, a->part);
    const gb_why *bags = gb_why_bags(x, a);
    if (bags == NULL)
        return NULL;
    return isnan(addition->dose.m3) ? by_share(x, &m, a->part, bags)
                                    : by_dose(x, &m, a->part, bags);
}

const gb_why *gb_why_added_volume(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_material *material = m.mix->additions[a->part].material;
    const gb_why *mass = gb_why_addition(x, a);
    if (mass == NULL)
        return NULL;
    return GB_WHY(x, "volume", GB_VOLUME, mass->value / material->bulk.kg_m3,
                  "added / bulk", GB_INPUTS(mass, gb_why_bulk(x, material)),
                  .of = material->name);
}

/* ---- in the recipe of one bag ------------------------------------------------------ */

const gb_why *gb_why_powder(gb_explainer *x, const gb_mixed *m, size_t i) {
    const gb_addition *a = &m->mix->additions[i];
    return GB_WHY(x, "powder", GB_MASS, a->share.of_one * m->recipe->binder.kg,
                  "share * binder",
                  GB_INPUTS(stated(x, m, i, "share", GB_SHARE, &a->share.of_one),
                            gb_why_binder(x, m)),
                  .of = a->material->name);
}

/* ---- the water that is left -------------------------------------------------------- */

const gb_why *gb_why_water_used(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_why *liquid = gb_why_to_add(x, a, GB_USUAL_WATER);
    const gb_why *parts[GB_MOST_ADDITIONS];
    size_t n = 0;
    double replaced = gb_water_replaced(m.mix).of_one;
    if (liquid == NULL || replaced <= 0)
        return liquid;
    for (size_t i = 0; i < m.mix->addition_count; i++)
        if (!isnan(m.mix->additions[i].replaces.of_one))
            parts[n++] = replaced_by(x, &m, i);
    const gb_why *all = GB_WHY(x, "replaced", GB_SHARE, replaced, "sum()",
                               .inputs = parts, .input_count = n);
    return GB_WHY(x, "water", GB_MASS, (1.0 - replaced) * liquid->value,
                  "(1 - replaced) * to_add", GB_INPUTS(all, liquid));
}

/* The shares of all additions of that kind. */
const gb_why *gb_why_share_of_kind(gb_explainer *x, const gb_about *a,
                                   gb_material_kind kind) {
    gb_mixed m = gb_mixed_of(a);
    const gb_why *shares[GB_MOST_ADDITIONS];
    size_t n = 0;
    double all = 0;
    for (size_t i = 0; i < m.mix->addition_count; i++) {
        const gb_addition *one = &m.mix->additions[i];
        if (one->material->kind != kind || isnan(one->share.of_one))
            continue;
        shares[n++] = stated(x, &m, i, "share", GB_SHARE, &one->share.of_one);
        all += one->share.of_one;
    }
    return GB_WHY(x, "share", GB_SHARE, all, "sum()", .inputs = shares, .input_count = n);
}
