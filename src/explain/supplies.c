#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

static bool are_same(const gb_supply_need *a, const gb_supply_need *b) {
    return strcmp(gb_supply_name(a), gb_supply_name(b)) == 0;
}

/* ---- what one plan takes of one material or blend ---------------------------------- */

/* What one mix takes of it; NULL when it holds none. */
static const gb_why *taken(gb_explainer *x, const gb_about *a, const gb_supply_need *s,
                           size_t part) {
    gb_mixed m = gb_mixed_of(a);
    bool blend = s->material == NULL;
    const gb_why *mass = blend ? gb_why_bag(x, &m) : gb_why_part_mass(x, &m, part);
    const gb_why *bags = gb_why_bought(x, a);
    if (x->failed)
        return NULL;
    bool more = bags->value > gb_bags_used(a->mix);
    return GB_WHY(x, "batched", GB_MASS, bags->value * mass->value,
                  more ? (blend ? "bought * bag" : "bought * mass")
                       : (blend ? "bags * bag" : "bags * mass"),
                  GB_INPUTS(bags, mass), .of = a->mix->need.mix->id);
}

static bool holds(const gb_mix *mix, const gb_supply_need *s, size_t part) {
    if (mix->part_count == 0 || s->material == NULL)
        return mix->part_count == 0 && s->material == NULL && part == 0 &&
               strcmp(mix->id, s->blend->id) == 0;
    return part < mix->part_count &&
           strcmp(mix->parts[part].material->name, s->material->name) == 0;
}

static bool adds(const gb_mix *mix, const gb_supply_need *s, size_t addition) {
    return s->material != NULL && addition < mix->addition_count &&
           strcmp(mix->additions[addition].material->name, s->material->name) == 0;
}

/* What the batches take of an addition, and as much more as bags are bought more. */
static const gb_why *added(gb_explainer *x, const gb_about *a) {
    const gb_why *batches = gb_why_addition(x, a);
    double used = gb_bags_used(a->mix);
    double bought = gb_bags_bought(a->plan->job, a->mix);
    if (batches == NULL || !(bought > used))
        return batches;
    return GB_WHY(x, "batched", GB_MASS, batches->value * (bought / used),
                  "added * bought / bags",
                  GB_INPUTS(batches, gb_why_bought(x, a), gb_why_bags(x, a)),
                  .of = a->mix->need.mix->id);
}

/* What the parts and the additions of one mix take of it. */
static size_t takings_of(gb_explainer *x, const gb_plan *plan, size_t mix,
                         const gb_supply_need *s, const gb_why **to) {
    gb_about a = {.plan = plan,
                  .mix = &plan->mixes[mix],
                  .amount = GB_ALL_OF_IT,
                  .moisture = gb_job_moisture(plan->job)};
    size_t n = 0;
    for (size_t part = 0; part < GB_MOST_PARTS; part++)
        if (holds(plan->mixes[mix].need.mix, s, part))
            to[n++] = taken(x, &a, s, part);
    for (size_t i = 0; i < GB_MOST_ADDITIONS; i++) {
        a.part = i;
        if (adds(plan->mixes[mix].need.mix, s, i))
            to[n++] = added(x, &a);
    }
    return n;
}

/* What layers that no mix fills take of it. */
static size_t loose_of(gb_explainer *x, const gb_plan *plan, const gb_supply_need *s,
                       const gb_why **to) {
    size_t n = 0;
    for (size_t i = 0; i < plan->loose_count; i++) {
        const gb_loose_take *t = &plan->loose[i];
        const gb_about a = {.plan = plan, .piece = t->piece, .loose = t};
        if (s->material != NULL && t->loose->material != NULL &&
            strcmp(t->loose->material->name, s->material->name) == 0)
            to[n++] = gb_why_loose_mass(x, &a);
    }
    return n;
}

static const gb_why *batched(gb_explainer *x, const gb_plan *plan,
                             const gb_supply_need *s) {
    const gb_why **all = gb_arena_take(
        x->arena,
        plan->mix_count * (GB_MOST_PARTS + GB_MOST_ADDITIONS) + plan->loose_count + 1,
        sizeof(const gb_why *));
    size_t n = 0;
    double kg = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < plan->mix_count; i++)
        n += takings_of(x, plan, i, s, &all[n]);
    n += loose_of(x, plan, s, &all[n]);
    for (size_t i = 0; i < n; i++)
        kg += all[i] == NULL ? 0 : all[i]->value;
    return GB_WHY(x, "batched", GB_MASS, kg, "sum()", .inputs = all, .input_count = n,
                  .of = gb_supply_name(s));
}

static const gb_why *mass_in(gb_explainer *x, const gb_plan *plan,
                             const gb_supply_need *s) {
    const gb_why *before = batched(x, plan, s);
    if (s->material == NULL || before == NULL)
        return before;
    const gb_why *waste = gb_why_waste(x, plan->job, s->material->name);
    if (waste == NULL)
        return NULL;
    return GB_WHY(x, "dry", GB_MASS, before->value * (1.0 + waste->value),
                  "batched * (1 + waste)", GB_INPUTS(before, waste),
                  .of = gb_supply_name(s));
}

/* The water that stone of a proportioned concrete brings, before waste; NULL for none. */
static const gb_why *brought_in(gb_explainer *x, const gb_plan *plan,
                                const gb_supply_need *s) {
    const gb_why **all =
        gb_arena_take(x->arena, plan->mix_count + 1, sizeof(const gb_why *));
    size_t n = 0;
    double kg = 0;
    x->failed = x->failed || all == NULL;
    for (size_t i = 0; all != NULL && i < plan->mix_count; i++) {
        const gb_about a = {.plan = plan, .mix = &plan->mixes[i], .amount = GB_ALL_OF_IT};
        const gb_mix *mix = plan->mixes[i].need.mix;
        if (!gb_is_proportioned(mix) || !holds(mix, s, 2))
            continue;
        gb_mixed m = gb_mixed_of(&a);
        const gb_why *stone = taken(x, &a, s, 2);
        double one = stone == NULL ? 0 : stone->value * mix->parts[2].moisture.of_one;
        all[n++] = GB_WHY(x, "brought", GB_MASS, one, "batched * stone_moisture",
                          GB_INPUTS(stone, gb_why_stone_moisture(x, &m)), .of = mix->id);
        kg += one;
    }
    if (n == 0)
        return NULL;
    return GB_WHY(x, "brought", GB_MASS, kg, "sum()", .inputs = all, .input_count = n);
}

static const gb_why *stone_as_it_lies(gb_explainer *x, const gb_plan *plan,
                                      const gb_supply_need *s, const gb_why *mass) {
    const gb_why *brought = brought_in(x, plan, s);
    const gb_why *waste = gb_why_waste(x, plan->job, s->material->name);
    if (brought == NULL || waste == NULL)
        return mass;
    return GB_WHY(x, "as_it_lies", GB_MASS,
                  mass->value + brought->value * (1.0 + waste->value),
                  "dry + brought * (1 + waste)", GB_INPUTS(mass, brought, waste),
                  .of = gb_supply_name(s));
}

static const gb_why *lying_in(gb_explainer *x, const gb_plan *plan,
                              const gb_supply_need *s) {
    const gb_why *mass = mass_in(x, plan, s);
    if (mass != NULL && s->material != NULL && s->material->kind == GB_COARSE)
        return stone_as_it_lies(x, plan, s, mass);
    if (mass == NULL || s->material == NULL || s->material->kind != GB_SAND)
        return mass;
    gb_share moisture = gb_job_moisture(plan->job);
    return GB_WHY(
        x, "as_it_lies", GB_MASS, mass->value * (1.0 + moisture.of_one),
        "dry * (1 + moisture)",
        GB_INPUTS(mass, gb_why_moisture(x, &(gb_mixed){.job = plan->job}, moisture)),
        .of = gb_supply_name(s));
}

static const gb_why *loose_in(gb_explainer *x, const gb_plan *plan,
                              const gb_supply_need *s) {
    const gb_why *mass = mass_in(x, plan, s);
    const gb_why *density = gb_why_loose_density(x, &(gb_mixed){.job = plan->job},
                                                 s->material, gb_job_moisture(plan->job));
    if (mass == NULL || density == NULL)
        return NULL;
    return GB_WHY(x, "loose", GB_VOLUME, mass->value / density->value,
                  "dry / loose_density", GB_INPUTS(mass, density),
                  .of = gb_supply_name(s));
}

/* ---- over all plans of a buy list -------------------------------------------------- */

typedef const gb_why *in_plan(gb_explainer *, const gb_plan *, const gb_supply_need *);

static const gb_why *over_plans(gb_explainer *x, const gb_about *a, const char *name,
                                int unit, double value, in_plan *in) {
    if (a->priced == NULL)
        return in(x, a->plan, a->supply);
    const gb_priced *p = a->priced;
    const gb_why **all =
        gb_arena_take(x->arena, p->plan_count + 1, sizeof(const gb_why *));
    size_t n = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < p->plan_count; i++)
        for (size_t k = 0; k < p->plans[i].supply_count; k++)
            if (are_same(&p->plans[i].supplies[k], a->supply))
                all[n++] = in(x, &p->plans[i], &p->plans[i].supplies[k]);
    return GB_WHY(x, name, unit, value, "sum()", .inputs = all, .input_count = n,
                  .of = gb_supply_name(a->supply));
}

const gb_why *gb_why_supply_mass(gb_explainer *x, const gb_about *a) {
    return over_plans(x, a, "need_dry", GB_MASS, a->supply->mass.kg, mass_in);
}

const gb_why *gb_why_supply_lying(gb_explainer *x, const gb_about *a) {
    if (a->way != NULL)
        return gb_why_way_lying(x, a);
    return over_plans(x, a, "need", GB_MASS, a->supply->lying.kg, lying_in);
}

const gb_why *gb_why_supply_loose(gb_explainer *x, const gb_about *a) {
    if (a->way != NULL)
        return gb_why_way_loose(x, a);
    return over_plans(x, a, "loose", GB_VOLUME, a->supply->loose.m3, loose_in);
}

const gb_why *gb_why_supply_pack(gb_explainer *x, const gb_about *a) {
    const gb_supply_need *s = a->supply;
    if (s->material != NULL)
        return gb_why_pack(x, a->plan->job, s->material);
    for (size_t i = 0; i < a->plan->mix_count; i++) {
        const gb_about of_mix = {.plan = a->plan, .mix = &a->plan->mixes[i]};
        gb_mixed m = gb_mixed_of(&of_mix);
        if (strcmp(m.mix->id, s->blend->id) == 0)
            return gb_why_bag(x, &m);
    }
    return NULL;
}

const gb_why *gb_why_total_water(gb_explainer *x, const gb_about *a) {
    const gb_plan *plan = a->plan;
    const gb_why **all =
        gb_arena_take(x->arena, plan->mix_count + 1, sizeof(const gb_why *));
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < plan->mix_count; i++) {
        const gb_about of_mix = {.plan = plan,
                                 .mix = &plan->mixes[i],
                                 .amount = GB_ALL_OF_IT,
                                 .moisture = gb_job_moisture(plan->job)};
        all[i] = gb_why_water_used(x, &of_mix);
    }
    return GB_WHY(x, "water", GB_MASS, plan->water.m3 * GB_WATER_KG_M3, "sum()",
                  .inputs = all, .input_count = plan->mix_count);
}

/* ---- packs and money --------------------------------------------------------------- */

#define CHEAPEST                                                                         \
    N_("the packs that make the whole list cheapest, tax and delivery included")

const gb_why *gb_why_pack_sold(gb_explainer *x, const gb_about *a) {
    const gb_pack *p = a->line->pack;
    return isnan(p->mass.kg)
               ? gb_stated(x, "pack", p->supplier, GB_VOLUME, &p->volume.m3, NULL)
               : gb_stated(x, "pack", p->supplier, GB_MASS, &p->mass.kg, NULL);
}

/* Packs before they are counted up. */
static const gb_why *exact_packs(gb_explainer *x, const gb_about *a) {
    const gb_pack *p = a->line->pack;
    const gb_supply_need *s = a->supply;
    const gb_why *pack = gb_why_pack_sold(x, a);
    if (!isnan(p->mass.kg)) {
        const gb_why *need = gb_why_supply_lying(x, a);
        return GB_WHY(x, "exact", GB_PLAIN, s->lying.kg / p->mass.kg, "need / pack",
                      GB_INPUTS(need, pack), .of = gb_supply_name(s));
    }
    return GB_WHY(x, "exact", GB_PLAIN, s->loose.m3 / p->volume.m3, "loose / pack",
                  GB_INPUTS(gb_why_supply_loose(x, a), pack), .of = gb_supply_name(s));
}

const gb_why *gb_why_packs(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "packs", GB_PLAIN, (double)a->line->packs, "up(exact, 1)",
                  GB_INPUTS(exact_packs(x, a)), .of = gb_supply_name(a->supply),
                  .source = CHEAPEST);
}

const gb_why *gb_why_price(gb_explainer *x, const gb_about *a) {
    const gb_pack *p = a->line->pack;
    return gb_keep_why(x, (gb_why){.name = "price",
                                   .of = p->supplier,
                                   .unit = GB_MINOR_UNITS,
                                   .value = (double)p->price.minor,
                                   .place = gb_places_find(x->places, &p->price_text)});
}

const gb_why *gb_why_cost(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "cost", GB_MINOR_UNITS, (double)a->line->cost.minor, "packs * price",
                  GB_INPUTS(gb_why_packs(x, a), gb_why_price(x, a)),
                  .of = gb_supply_name(a->supply));
}

const gb_why *gb_why_left(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "left", GB_MASS, a->line->leftover.kg, "need * larger(0, packs / exact - 1)",
        GB_INPUTS(gb_why_supply_lying(x, a), gb_why_packs(x, a), exact_packs(x, a)),
        .of = gb_supply_name(a->supply));
}

/* The costs of all lines, or of those that are taxed. */
static const gb_why *costs(gb_explainer *x, const gb_about *a, const char *name,
                           bool taxed_only) {
    const gb_buy_list *list = a->priced->list;
    const gb_why **all =
        gb_arena_take(x->arena, list->line_count + 1, sizeof(const gb_why *));
    size_t n = 0;
    double sum = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < list->line_count; i++) {
        const gb_buy_line *l = &list->lines[i];
        if (l->pack == NULL || (taxed_only && l->pack->untaxed))
            continue;
        gb_about line = *a;
        line.line = l;
        line.supply = l->need;
        all[n++] = gb_why_cost(x, &line);
        sum += (double)l->cost.minor;
    }
    if (n == 0)
        return gb_fact(x, name, GB_MINOR_UNITS, 0, N_("nothing is bought"));
    return GB_WHY(x, name, GB_MINOR_UNITS, sum, "sum()", .inputs = all, .input_count = n);
}

const gb_why *gb_why_goods(gb_explainer *x, const gb_about *a) {
    return costs(x, a, "goods", false);
}

const gb_why *gb_why_tax_rate(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "rate", NULL, GB_SHARE, &a->priced->book->tax.of_one, NULL);
}

const gb_why *gb_why_tax(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "tax", GB_MINOR_UNITS, (double)a->priced->list->tax.minor,
                  "near(taxed * rate, smallest)",
                  GB_INPUTS(costs(x, a, "taxed", true), gb_why_tax_rate(x, a),
                            gb_fact(x, "smallest", GB_MINOR_UNITS, 1,
                                    N_("the smallest unit of the currency"))));
}

static bool is_bought_from(const gb_buy_list *list, const char *supplier) {
    for (size_t i = 0; i < list->line_count; i++) {
        const gb_buy_line *l = &list->lines[i];
        if (l->pack != NULL && l->packs > 0 && strcmp(l->pack->supplier, supplier) == 0)
            return true;
    }
    return false;
}

const gb_why *gb_why_delivery(gb_explainer *x, const gb_about *a) {
    const gb_price_book *book = a->priced->book;
    const gb_why **all =
        gb_arena_take(x->arena, book->delivery_count + 1, sizeof(const gb_why *));
    size_t n = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < book->delivery_count; i++) {
        const gb_delivery *d = &book->deliveries[i];
        if (is_bought_from(a->priced->list, d->supplier))
            all[n++] = gb_keep_why(
                x, (gb_why){.name = "charge",
                            .of = d->supplier,
                            .unit = GB_MINOR_UNITS,
                            .value = (double)d->charge.minor,
                            .place = gb_places_find(x->places, &d->charge_text)});
    }
    double sum = (double)a->priced->list->delivery.minor;
    if (n == 0)
        return gb_fact(x, "delivery", GB_MINOR_UNITS, sum, N_("no charge is stated"));
    return GB_WHY(x, "delivery", GB_MINOR_UNITS, sum, "sum()", .inputs = all,
                  .input_count = n);
}

const gb_why *gb_why_total(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "total", GB_MINOR_UNITS, (double)a->priced->list->total.minor,
                  "goods + tax + delivery",
                  GB_INPUTS(gb_why_goods(x, a), gb_why_tax(x, a), gb_why_delivery(x, a)));
}

const gb_why *gb_why_missing(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "missing", GB_PLAIN, (double)a->priced->list->missing,
                   N_("needs that no pack in the price book is for"));
}

const gb_why *gb_why_supply_packs(gb_explainer *x, const gb_about *a) {
    const gb_supply_need *s = a->supply;
    return GB_WHY(x, "packs", GB_PLAIN, gb_supply_packs(s),
                  s->material != NULL ? "up(dry / bag, 1)" : "up(batched / bag, 1)",
                  GB_INPUTS(gb_why_supply_mass(x, a), gb_why_supply_pack(x, a)));
}
