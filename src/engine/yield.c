#include "engine/fresh.h"
#include "gaugebox/mix.h"

#include "gaugebox/count.h"

#include <math.h>

/* Fitted constants and bounds; see gb_make_recipe for what they were fitted to. */
static const double DEMAND_CEMENT = 0.22; /* kg water per kg, plastic mortar */
static const double DEMAND_SAND = 0.12;
static const double DEMAND_LIME = 1.0;
static const double STIFF_SHARE = 0.65;    /* of the plastic demand */
static const double SAND_SHRINKAGE = 1.07; /* loose dry sand in a mix it governs */

/* One standard deviation of a yield. Computed: the root mean square of what lies between
   our materials in a volume and printed ones, one row for each printed mix that is no
   known difference: 3.75 % over 30 mortars (astm-c270 11, cpwd 6, us-navy-builder 5,
   gillette-hill 5, cmaa 2, course-notes 1), 6.27 % over 15 concretes (small ones of the
   PCA 10, nominal 5), where ours makes more than print throughout. The rows that stay
   known differences are not in it. tests/published/spread.py measures both again.
   Label and measured: common practice. */
static const double SPREAD_COMPUTED = 0.04;
static const double SPREAD_WITH_STONE = 0.06;
static const double SPREAD_LABELLED = 0.02;
static const double SPREAD_MEASURED = 0.01;

static bool positive(double x) {
    return isfinite(x) && x > 0;
}

static bool usable_material(const gb_material *m) {
    return m != NULL && !gb_is_addition(m->kind) && positive(m->bulk.kg_m3) &&
           positive(m->gravity) && (m->kind != GB_SAND || positive(m->dry_loose.kg_m3));
}

double gb_part_gravity(const gb_part *part) {
    return part->gravity > 0 ? part->gravity : part->material->gravity;
}

/* The masses of the parts, for one bag of the first part. */
static gb_status weigh_parts(const gb_mix *mix, gb_recipe *r) {
    const gb_part *first = &mix->parts[0];
    if (!usable_material(first->material) || !positive(first->volume))
        return GB_NOT_POSITIVE;
    double per_volume = r->bag.kg / (first->volume * first->material->bulk.kg_m3);
    for (size_t i = 0; i < mix->part_count; i++) {
        const gb_part *p = &mix->parts[i];
        if (!usable_material(p->material) || !positive(p->volume))
            return GB_NOT_POSITIVE;
        double kg = per_volume * p->volume * p->material->bulk.kg_m3;
        r->part[i].kg = kg;
        r->dry.kg += kg;
        r->absorbed.kg += kg * p->absorption.of_one;
        r->drunk.kg += kg * (p->absorption.of_one - p->moisture.of_one);
        if (p->material->kind == GB_SAND)
            r->sand.kg += kg;
        else if (p->material->kind != GB_COARSE)
            r->binder.kg += kg;
    }
    return GB_OK;
}

/* Powders that are added by a share of the binder. */
static gb_status weigh_powders(const gb_mix *mix, gb_recipe *r) {
    if (mix->addition_count > GB_MOST_ADDITIONS)
        return GB_NOT_POSITIVE;
    for (size_t i = 0; i < mix->addition_count; i++) {
        const gb_addition *a = &mix->additions[i];
        if (a->material == NULL || !positive(a->material->gravity))
            return GB_NOT_POSITIVE;
        if (isnan(a->share.of_one))
            continue;
        r->powder.kg += gb_addition_mass(mix, r, i, 1.0, (gb_mass){0}).kg;
    }
    r->dry.kg += r->powder.kg;
    return GB_OK;
}

/* The volume of their grains. */
static double volume_of_powders(const gb_mix *mix, const gb_recipe *r) {
    double m3 = 0;
    for (size_t i = 0; i < mix->addition_count; i++)
        if (!isnan(mix->additions[i].share.of_one))
            m3 += gb_addition_mass(mix, r, i, 1.0, (gb_mass){0}).kg /
                  (mix->additions[i].material->gravity * GB_WATER_KG_M3);
    return m3;
}

/* W = 0.22 C + 0.12 S + 1.0 L, and 0.65 of it for a stiff bed; all in kg. */
static double water_demand(const gb_mix *mix, const gb_recipe *r) {
    double water = 0;
    for (size_t i = 0; i < mix->part_count; i++) {
        switch (mix->parts[i].material->kind) {
        case GB_CEMENT:
            water += DEMAND_CEMENT * r->part[i].kg;
            break;
        case GB_LIME:
            water += DEMAND_LIME * r->part[i].kg;
            break;
        case GB_SAND:
            water += DEMAND_SAND * r->part[i].kg;
            break;
        default: /* of stone the water is stated by the mix, see water_of_parts */
            break;
        }
    }
    return mix->consistency == GB_STIFF ? STIFF_SHARE * water : water;
}

static gb_status water_of_parts(const gb_mix *mix, gb_recipe *r) {
    double base =
        mix->water.basis == GB_WATER_BINDER ? r->binder.kg : water_demand(mix, r);
    r->water_least.kg = mix->water.least.of_one * base;
    r->water_usual.kg = mix->water.usual.of_one * base;
    r->water_most.kg = mix->water.most.of_one * base;
    bool good = positive(r->water_least.kg) && positive(r->water_usual.kg) &&
                positive(r->water_most.kg);
    return good ? GB_OK : GB_NOT_POSITIVE;
}

/* V_abs = (sum of mass / (1000 SG) + W/1000) / (1 - air); V = max(V_abs, V_sand). */
static gb_status volume_of_parts(const gb_mix *mix, gb_recipe *r) {
    double solid = volume_of_powders(mix, r);
    double sand = 0;
    for (size_t i = 0; i < mix->part_count; i++) {
        const gb_material *m = mix->parts[i].material;
        solid += r->part[i].kg / (gb_part_gravity(&mix->parts[i]) * GB_WATER_KG_M3);
        if (m->kind == GB_SAND)
            sand += r->part[i].kg / (SAND_SHRINKAGE * m->dry_loose.kg_m3);
    }
    if (!(mix->air.of_one >= 0 && mix->air.of_one < 1))
        return GB_NOT_POSITIVE;
    double all = (solid + r->water_usual.kg / GB_WATER_KG_M3) / (1.0 - mix->air.of_one);
    r->yield.m3 = gb_larger(all, sand);
    r->regime = sand > all ? GB_BY_SAND : GB_BY_SOLIDS;
    r->route = GB_COMPUTED;
    return GB_OK;
}

gb_mass gb_wet_mass(const gb_recipe *recipe) {
    return (gb_mass){recipe->dry.kg + recipe->absorbed.kg + recipe->water_usual.kg};
}

bool gb_holds_stone(const gb_mix *mix) {
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material != NULL && mix->parts[i].material->kind == GB_COARSE)
            return true;
    return false;
}

static gb_share stated_or(gb_share spread, double usual) {
    return isnan(spread.of_one) ? (gb_share){usual} : spread;
}

static gb_status recipe_of_parts(const gb_mix *mix, gb_mass bag, gb_recipe *r) {
    if (mix->part_count > GB_MOST_PARTS || mix->parts[0].material == NULL)
        return GB_NOT_POSITIVE;
    r->bag = isnan(bag.kg) ? mix->parts[0].material->pack : bag;
    if (!positive(r->bag.kg))
        return GB_NOT_POSITIVE;
    gb_status status = weigh_parts(mix, r);
    if (status == GB_OK)
        status = weigh_powders(mix, r);
    if (status == GB_OK)
        status = water_of_parts(mix, r);
    if (status == GB_OK)
        status = volume_of_parts(mix, r);
    if (status == GB_OK)
        r->spread = stated_or(mix->spread,
                              gb_holds_stone(mix) ? SPREAD_WITH_STONE : SPREAD_COMPUTED);
    return status;
}

static gb_status recipe_of_label(const gb_mix *mix, const gb_label *label, gb_recipe *r) {
    r->bag = label->bag;
    r->dry = label->bag;
    r->binder = label->bag;
    r->yield = label->yield;
    r->spread = stated_or(mix->spread, SPREAD_LABELLED);
    r->route = GB_LABELLED;
    r->regime = GB_BY_LABEL;
    r->water_least.kg = mix->water.bag_least.m3 * GB_WATER_KG_M3;
    r->water_usual.kg = mix->water.bag_usual.m3 * GB_WATER_KG_M3;
    r->water_most.kg = mix->water.bag_most.m3 * GB_WATER_KG_M3;
    bool good = positive(r->bag.kg) && positive(r->yield.m3) &&
                positive(r->water_least.kg) && positive(r->water_usual.kg) &&
                positive(r->water_most.kg);
    return good ? GB_OK : GB_NOT_POSITIVE;
}

/* A yield that the user states replaces ours, scaled to the bag in use. */
static gb_status take_own(const gb_label *own, bool measured, gb_recipe *r) {
    if (!positive(own->bag.kg) || !positive(own->yield.m3))
        return GB_NOT_POSITIVE;
    r->yield.m3 = own->yield.m3 * (r->bag.kg / own->bag.kg);
    r->spread = stated_or(own->spread, measured ? SPREAD_MEASURED : SPREAD_LABELLED);
    r->route = measured ? GB_MEASURED : GB_LABELLED;
    r->regime = GB_BY_LABEL;
    return GB_OK;
}

gb_status gb_make_recipe(const gb_mix *mix, const gb_label *own, bool measured,
                         gb_mass bag, gb_recipe *recipe) {
    gb_recipe r = {0};
    gb_status status = GB_NOT_POSITIVE;
    if (mix->part_count > 0)
        status = recipe_of_parts(mix, bag, &r);
    else
        status = recipe_of_label(mix, own != NULL ? own : &mix->label, &r);
    if (status == GB_OK && own != NULL)
        status = take_own(own, measured, &r);
    if (status != GB_OK)
        return status;
    if (!(r.spread.of_one >= 0 && r.spread.of_one < 1))
        return GB_NOT_POSITIVE;
    double fresh = (r.dry.kg + r.water_usual.kg) / r.yield.m3;
    if (gb_under(fresh, GB_LIGHTEST_FRESH) || gb_over(fresh, GB_HEAVIEST_FRESH))
        return GB_IMPOSSIBLE;
    *recipe = r;
    return GB_OK;
}
