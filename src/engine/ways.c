#include "gaugebox/ways.h"

#include "gaugebox/count.h"
#include "gaugebox/moisture.h"

#include <math.h>

double gb_bags_in_mixer(const gb_recipe *recipe, gb_volume mixer) {
    double most = mixer.m3 / recipe->yield.m3;
    return gb_round(most, gb_batch_step(most), GB_DOWN);
}

gb_volume gb_ready_step(gb_system system) {
    return (gb_volume){system == GB_US ? gb_si(GB_VOLUME, "yd3", 0.25) : 0.25};
}

gb_volume gb_short_load(gb_system system) {
    return (gb_volume){system == GB_US ? gb_si(GB_VOLUME, "yd3", 3) : 2.5};
}

/* ---- what it takes ----------------------------------------------------------------- */

static gb_supply_need need_of(const gb_part *part, double kg, const gb_ways_question *q) {
    gb_lying lying = gb_usual_lying(q->moisture);
    gb_mass mass = {kg};
    return (gb_supply_need){.material = part->material,
                            .mass = mass,
                            .lying = gb_part_lying(part, mass, q->moisture),
                            .loose = gb_loose_volume(part->material, mass, lying),
                            .pack = *gb_usual_pack(part->material, q->system)};
}

/* A blend, or ready-mixed, is one need; a site mix has one for each part. */
static void fill_needs(const gb_ways_question *q, gb_supply_need *needs, gb_way *w) {
    if (w->mix == NULL) {
        gb_mass mass = {w->ordered.m3 * q->ready->bulk.kg_m3};
        needs[0] = (gb_supply_need){.material = q->ready,
                                    .mass = mass,
                                    .lying = mass,
                                    .loose = w->ordered,
                                    .pack = {GB_NONE}};
        w->need_count = 1;
    } else if (w->mix->part_count == 0) {
        gb_mass mass = {(double)w->whole * w->recipe.bag.kg};
        needs[0] = (gb_supply_need){.blend = w->mix,
                                    .mass = mass,
                                    .lying = mass,
                                    .loose = {GB_NONE},
                                    .pack = w->recipe.bag};
        w->need_count = 1;
    } else {
        for (size_t i = 0; i < w->mix->part_count; i++)
            needs[i] = need_of(&w->mix->parts[i], w->bags * w->recipe.part[i].kg, q);
        w->need_count = w->mix->part_count;
    }
    w->needs = needs;
}

/* What goes to the mixer: the parts as they lie, and the water that is added. */
static gb_mass carried(const gb_ways_question *q, const gb_way *w) {
    gb_water_row row = {0};
    double kg = 0;
    for (size_t i = 0; i < w->need_count; i++)
        kg += w->needs[i].lying.kg;
    if (gb_water_to_add(w->mix, &w->recipe, q->moisture, w->bags, &row) == GB_OK)
        kg += row.usual.kg;
    return (gb_mass){kg};
}

static gb_status count_batches(const gb_ways_question *q, gb_way *w) {
    gb_crew crew = {.mixing = {GB_NONE}};
    gb_status status = gb_count_up(w->bags, 1.0, &w->whole);
    w->bags_a_batch = gb_bags_in_mixer(&w->recipe, q->mixer);
    if (status != GB_OK || !(w->bags_a_batch > 0))
        return status;
    status = gb_count_up(w->bags, w->bags_a_batch, &w->batches);
    w->mixing.s = (double)w->batches * gb_mixing_time(&crew).s;
    return status;
}

static gb_status mix_it(const gb_mix *mix, const gb_ways_question *q, gb_way *w) {
    gb_mass bag = {GB_NONE};
    if (mix->part_count > 0)
        bag = *gb_usual_pack(mix->parts[0].material, q->system);
    gb_status status = gb_make_recipe(mix, NULL, false, bag, &w->recipe);
    if (status != GB_OK)
        return status;
    w->mix = mix;
    w->bags = w->gross.m3 / w->recipe.yield.m3;
    w->ordered.m3 = GB_NONE;
    return count_batches(q, w);
}

/* ---- which there are ------------------------------------------------------------- */

/* By its bag: the table's own, not what it is in other units. */
static bool is_sold_in(const gb_mix *mix, gb_system system) {
    gb_mass bag = mix->part_count == 0 ? mix->label.bag : mix->parts[0].material->pack;
    const char *unit = system == GB_US ? "lb" : "kg";
    double count = gb_to_unit(gb_find_unit(GB_MASS, unit), bag.kg);
    return fabs(count - gb_round(count, 1.0, GB_NEAREST)) < 1e-6;
}

bool gb_is_way(const gb_mix *mix, const gb_mix *asked, gb_system system) {
    static const double SAME_M = 1e-3;
    bool other = fabs(mix->largest.m - asked->largest.m) > SAME_M; /* false for NaN */
    bool concrete = mix->part_count == 0 || gb_holds_stone(mix);
    return mix->uses & (1u << GB_SLAB) && concrete && !other && is_sold_in(mix, system) &&
           !gb_is_proportioned(mix);
}

gb_short gb_way_is_short(const gb_way *way, const gb_mix *asked) {
    static const double HALF_A_PERCENT = 0.005; /* of air: less is told by no meter */
    if (way->mix == NULL)
        return GB_SHORT_OF_NOTHING;
    double has = gb_known_strength(way->mix).pa;
    double wanted = gb_known_strength(asked).pa;
    bool blend = way->mix->part_count == 0 && !(way->mix->air.of_one > 0);
    bool little = !blend && gb_is_entrained(&asked->concrete) &&
                  way->mix->air.of_one < asked->air.of_one - HALF_A_PERCENT;
    bool weak = gb_under(has, wanted);
    bool unknown = isnan(has) && !isnan(wanted);
    bool air_unknown = blend && gb_is_entrained(&asked->concrete);
    if (little && weak)
        return GB_SHORT_OF_BOTH;
    if (little)
        return unknown ? GB_SHORT_OF_AIR_NOT_KNOWN : GB_SHORT_OF_AIR;
    if (weak)
        return GB_SHORT_OF_STRENGTH;
    return unknown || air_unknown ? GB_SHORT_NOT_KNOWN : GB_SHORT_OF_NOTHING;
}

gb_status gb_make_way(const gb_mix *mix, const gb_ways_question *q, gb_arena *arena,
                      gb_way *way) {
    gb_way w = {.gross = {q->net.m3 * (1.0 + q->waste.of_one)}};
    gb_status status = GB_OK;
    if (!(w.gross.m3 > 0) || !isfinite(w.gross.m3))
        return GB_NOT_POSITIVE;
    if (mix != NULL)
        status = mix_it(mix, q, &w);
    else
        w.ordered.m3 = gb_round(w.gross.m3, gb_ready_step(q->system).m3, GB_UP);
    gb_supply_need *needs = gb_arena_take(arena, GB_MOST_PARTS, sizeof *needs);
    if (needs == NULL)
        return GB_NO_MEMORY;
    if (status != GB_OK)
        return status;
    fill_needs(q, needs, &w);
    if (mix != NULL)
        w.carried = carried(q, &w);
    if (q->book != NULL)
        status = gb_buy(w.needs, w.need_count, q->book, arena, &w.list);
    w.priced = status == GB_OK && q->book != NULL && w.list.missing == 0;
    if (status == GB_OK)
        *way = w;
    return status;
}
