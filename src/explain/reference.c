#include "explain/chains.h"

#include <math.h>

/* One mix for reference: one bag, and one volume, of it. */

static bool is_blend(const gb_mixed *m) {
    return m->mix->part_count == 0;
}

static double kg_of(const gb_recipe *r, gb_which_water which) {
    const double kg[] = {r->water_least.kg, r->water_usual.kg, r->water_most.kg};
    return kg[which];
}

/* ---- parts ------------------------------------------------------------------------- */

const gb_why *gb_why_loose_parts(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_part_volume(x, &m, a->part, "parts");
}

const gb_why *gb_why_part_ratio(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_material *first = m.mix->parts[0].material;
    const gb_material *material = m.mix->parts[a->part].material;
    const gb_why *first_bulk =
        gb_stated(x, "first_bulk", first->name, GB_DENSITY, &first->bulk.kg_m3,
                  gb_text_source(x, &first->source));
    return GB_WHY(x, "ratio", GB_PLAIN, m.recipe->part[a->part].kg / m.recipe->part[0].kg,
                  "parts * bulk / (first_parts * first_bulk)",
                  GB_INPUTS(gb_why_part_volume(x, &m, a->part, "parts"),
                            gb_why_bulk(x, material),
                            gb_why_part_volume(x, &m, 0, "first_parts"), first_bulk),
                  .of = material->name);
}

const gb_why *gb_why_part_share(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return GB_WHY(x, "share_of_dry", GB_SHARE,
                  m.recipe->part[a->part].kg / m.recipe->dry.kg, "mass / dry",
                  GB_INPUTS(gb_why_part_mass(x, &m, a->part), gb_why_dry(x, &m)),
                  .of = m.mix->parts[a->part].material->name);
}

const gb_why *gb_why_powder_mass(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_powder(x, &m, a->part);
}

const gb_why *gb_why_powder_share(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_why *powder = gb_why_powder(x, &m, a->part);
    if (powder == NULL)
        return NULL;
    return GB_WHY(x, "share_of_dry", GB_SHARE, powder->value / m.recipe->dry.kg,
                  "powder / dry", GB_INPUTS(powder, gb_why_dry(x, &m)), .of = powder->of);
}

/* What one bag brings, over what one bag makes. */
static const gb_why *in_wet(gb_explainer *x, const gb_mixed *m, double kg,
                            const char *formula, const gb_why *mass) {
    return GB_WHY(x, "in_wet_mix", GB_DENSITY, kg / m->recipe->yield.m3, formula,
                  GB_INPUTS(mass, gb_why_yield(x, m)));
}

const gb_why *gb_why_part_in_wet(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return in_wet(x, &m, m.recipe->part[a->part].kg, "mass / yield",
                  gb_why_part_mass(x, &m, a->part));
}

const gb_why *gb_why_powder_in_wet(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_why *powder = gb_why_powder(x, &m, a->part);
    return powder == NULL ? NULL : in_wet(x, &m, powder->value, "powder / yield", powder);
}

const gb_why *gb_why_blend_in_wet(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return in_wet(x, &m, m.recipe->bag.kg, "bag / yield", gb_why_bag(x, &m));
}

const gb_why *gb_why_water_in_wet(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return in_wet(x, &m, m.recipe->water_usual.kg, "usual_water / yield",
                  gb_why_water(x, &m, GB_USUAL_WATER));
}

const gb_why *gb_why_fresh_density(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return in_wet(x, &m, gb_wet_mass(m.recipe).kg, "wet / yield", gb_why_wet(x, &m));
}

/* ---- water ------------------------------------------------------------------------- */

const gb_why *gb_why_water_to_dry(gb_explainer *x, const gb_about *a,
                                  gb_which_water which) {
    static const char *const OF_BLEND[] = {"least_water / bag", "usual_water / bag",
                                           "most_water / bag"};
    static const char *const OF_DRY[] = {"least_water / dry", "usual_water / dry",
                                         "most_water / dry"};
    gb_mixed m = gb_mixed_of(a);
    return GB_WHY(x, "water_to_dry", GB_SHARE, kg_of(m.recipe, which) / m.recipe->dry.kg,
                  is_blend(&m) ? OF_BLEND[which] : OF_DRY[which],
                  GB_INPUTS(gb_why_water(x, &m, which), gb_why_dry(x, &m)));
}

const gb_why *gb_why_water_to_binder(gb_explainer *x, const gb_about *a,
                                     gb_which_water which) {
    static const char *const FORMULAS[] = {"least_water / binder", "usual_water / binder",
                                           "most_water / binder"};
    gb_mixed m = gb_mixed_of(a);
    return GB_WHY(x, "water_to_binder", GB_PLAIN,
                  kg_of(m.recipe, which) / m.recipe->binder.kg, FORMULAS[which],
                  GB_INPUTS(gb_why_water(x, &m, which), gb_why_binder(x, &m)));
}

/* ---- what it makes and covers ------------------------------------------------------ */

const gb_why *gb_why_compared_volume(gb_explainer *x) {
    return gb_fact(x, "volume", GB_VOLUME, gb_compared_volume(x->style.system).m3,
                   N_("what mixes are compared by: 1 yd3, in metric units 1 m3"));
}

const gb_why *gb_why_bags_in_volume(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_why *volume = gb_why_compared_volume(x);
    if (x->failed)
        return NULL;
    return GB_WHY(x, "bags", GB_PLAIN, volume->value / m.recipe->yield.m3,
                  "volume / yield", GB_INPUTS(volume, gb_why_yield(x, &m)));
}

const gb_why *gb_why_cover_depth(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "depth", GB_LENGTH, a->cover->depth.m,
                   N_("a depth as commonly laid: common practice"));
}

const gb_why *gb_why_cover_width(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "width", GB_LENGTH, a->cover->width.m,
                   N_("a joint of common width: common practice"));
}

const gb_why *gb_why_cover_area(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return GB_WHY(x, "covered", GB_AREA, gb_area_covered(m.recipe->yield, a->cover).m2,
                  "yield / depth",
                  GB_INPUTS(gb_why_yield(x, &m), gb_why_cover_depth(x, a)));
}

const gb_why *gb_why_cover_length(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return GB_WHY(x, "filled", GB_LENGTH, gb_joint_covered(m.recipe->yield, a->cover).m,
                  "yield / (width * depth)",
                  GB_INPUTS(gb_why_yield(x, &m), gb_why_cover_width(x, a),
                            gb_why_cover_depth(x, a)));
}
