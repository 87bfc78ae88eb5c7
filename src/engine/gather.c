#include "engine/gather.h"
#include "gaugebox/count.h"
#include "gaugebox/forecast.h"

#include <math.h>
#include <string.h>

static double waste_of(const gb_job *job, const char *name) {
    for (size_t i = 0; i < job->waste_count; i++)
        if (strcmp(job->wastes[i].of.text, name) == 0)
            return job->wastes[i].share.of_one;
    return 0;
}

gb_stage gb_stage_of(const gb_take *take) {
    switch (take->layer->kind) {
    case GB_SLAB:
        return take->piece->kind == GB_FOOTING ? GB_FOOTING_STAGE : GB_SLAB_STAGE;
    case GB_BLOCK:
        return GB_BLOCK_STAGE;
    case GB_CORE:
        return GB_CORE_STAGE;
    case GB_PARGE:
        return GB_PARGE_STAGE;
    case GB_JOINT:
    case GB_POINTING:
        return GB_JOINT_STAGE;
    case GB_VOLUME_LAYER:
        return take->piece->kind == GB_FOOTING ? GB_FOOTING_STAGE : GB_SETTING_STAGE;
    default:
        return GB_SETTING_STAGE;
    }
}

/* Those of the mix, stage by stage. */
static size_t list_takes(const gb_mix *mix, const gb_take *takes, size_t take_count,
                         gb_stage stage, const gb_take **list) {
    size_t n = 0;
    for (size_t i = 0; i < take_count; i++)
        if (gb_stage_of(&takes[i]) == stage &&
            strcmp(takes[i].layer->mix.text, mix->id) == 0)
            list[n++] = &takes[i];
    return n;
}

/* One standard error of a take's volume. */
static double spread_of(const gb_take *take) {
    return take->net.m3 * take->spread.of_one;
}

gb_status gb_gather(const gb_job *job, const gb_mix *mix, const gb_take *takes,
                    size_t take_count, gb_arena *arena, gb_need *need) {
    size_t mine = 0;
    for (size_t i = 0; i < take_count; i++)
        if (strcmp(takes[i].layer->mix.text, mix->id) == 0)
            mine++;
    const gb_take **list = gb_arena_take(arena, mine + 1, sizeof(const gb_take *));
    if (list == NULL)
        return GB_NO_MEMORY;
    gb_need n = {.mix = mix, .takes = list, .waste = {waste_of(job, mix->id)}};
    double squares = 0;
    for (gb_stage stage = GB_FOOTING_STAGE; stage < GB_STAGES; stage++)
        n.take_count += list_takes(mix, takes, take_count, stage, &list[n.take_count]);
    for (size_t i = 0; i < n.take_count; i++) {
        n.net.m3 += list[i]->net.m3;
        squares += spread_of(list[i]) * spread_of(list[i]);
    }
    n.gross.m3 = n.net.m3 * (1.0 + n.waste.of_one);
    n.spread.m3 = sqrt(squares) * (1.0 + n.waste.of_one);
    *need = n;
    return GB_OK;
}

/* bags = gross / yield; shares of both that are not sure, each by itself, add up in
   squares (propagation of independent errors, first order). */
void gb_count_bags(const gb_recipe *recipe, gb_need *need) {
    double depths = need->spread.m3 / need->gross.m3;
    double yield = recipe->spread.of_one;
    need->bags = need->gross.m3 / recipe->yield.m3;
    need->bags_spread = need->bags * sqrt(depths * depths + yield * yield);
}

/* Two jobs may each hold a blend of their own under one id. */
static bool same_supply(const gb_supply_need *a, const gb_supply_need *b) {
    if (a->material != NULL && b->material != NULL)
        return strcmp(a->material->name, b->material->name) == 0;
    return a->blend != NULL && b->blend != NULL &&
           strcmp(a->blend->id, b->blend->id) == 0 &&
           a->blend->digest == b->blend->digest;
}

void gb_add_supply(gb_supplies *s, const gb_supply_need *need) {
    for (size_t i = 0; i < s->count; i++) {
        if (!same_supply(&s->rows[i], need))
            continue;
        s->rows[i].mass.kg += need->mass.kg;
        s->rows[i].lying.kg += need->lying.kg;
        s->rows[i].loose.m3 += need->loose.m3;
        return;
    }
    s->rows[s->count++] = *need;
}

double gb_bags_used(const gb_mix_plan *mix) {
    return mix->is_slurry ? mix->need.bags : mix->batching.bags_gauged;
}

static gb_forecast as_forecast(const gb_need *need) {
    return (gb_forecast){.bags = need->bags, .deviation = need->bags_spread};
}

double gb_bags_surely(const gb_need *need, gb_share sure) {
    gb_forecast f = as_forecast(need);
    return gb_bags_at(&f, sure);
}

gb_share gb_sureness(const gb_need *need, double bags) {
    gb_forecast f = as_forecast(need);
    return gb_certainty(&f, bags);
}

double gb_bags_bought(const gb_job *job, const gb_mix_plan *mix) {
    double used = gb_bags_used(mix);
    if (!(job->sure.of_one > 0))
        return used;
    double surely = gb_bags_surely(&mix->need, job->sure);
    if (mix->need.mix->part_count == 0)
        surely = gb_round(surely, 1.0, GB_UP);
    return gb_larger(used, surely);
}

gb_mass gb_mixing_liquid(const gb_mix_plan *mix, gb_share moisture) {
    gb_water_row row = {0};
    gb_status status =
        gb_water_to_add(mix->need.mix, &mix->recipe, moisture, gb_bags_used(mix), &row);
    return status == GB_OK ? row.usual : (gb_mass){0};
}

gb_mass gb_addition_used(const gb_mix_plan *mix, size_t addition, gb_share moisture) {
    return gb_addition_mass(mix->need.mix, &mix->recipe, addition, gb_bags_used(mix),
                            gb_mixing_liquid(mix, moisture));
}

gb_mass gb_water_used(const gb_mix_plan *mix, gb_share moisture) {
    double kept = 1.0 - gb_water_replaced(mix->need.mix).of_one;
    return (gb_mass){kept * gb_mixing_liquid(mix, moisture).kg};
}

const gb_mass *gb_usual_pack(const gb_material *material, gb_system system) {
    bool metric = system == GB_METRIC && material->pack_metric.kg > 0;
    return metric ? &material->pack_metric : &material->pack;
}

gb_mass gb_job_pack(const gb_job *job, const gb_material *material) {
    for (size_t i = 0; i < job->pack_count; i++)
        if (strcmp(job->packs[i].material.text, material->name) == 0)
            return job->packs[i].pack;
    return *gb_usual_pack(material, job->units);
}

static void gather_additions(const gb_job *job, const gb_mix_plan *mix, gb_supplies *s) {
    const gb_mix *m = mix->need.mix;
    double more = gb_bags_bought(job, mix) / gb_bags_used(mix);
    for (size_t i = 0; i < m->addition_count; i++) {
        gb_supply_need need = {
            .material = m->additions[i].material,
            .mass = {gb_addition_used(mix, i, gb_job_moisture(job)).kg * more},
            .pack = m->additions[i].material->pack};
        gb_add_supply(s, &need);
    }
}

static void gather_parts(const gb_job *job, const gb_mix_plan *mix, gb_supplies *s) {
    const gb_mix *m = mix->need.mix;
    double bags = gb_bags_bought(job, mix);
    if (m->part_count == 0) {
        gb_supply_need blend = {.blend = m,
                                .mass = {bags * mix->recipe.bag.kg},
                                .loose = {GB_NONE},
                                .pack = mix->recipe.bag};
        gb_add_supply(s, &blend);
    }
    for (size_t i = 0; i < m->part_count; i++) {
        const gb_material *material = m->parts[i].material;
        gb_supply_need part = {
            .material = material,
            .mass = {bags * mix->recipe.part[i].kg},
            .lying = {bags * mix->recipe.part[i].kg * m->parts[i].moisture.of_one},
            .pack = material->pack};
        gb_add_supply(s, &part);
    }
}

void gb_gather_supplies(const gb_job *job, const gb_mix_plan *mix, gb_supplies *s) {
    gather_parts(job, mix, s);
    gather_additions(job, mix, s);
}

void gb_gather_loose(const gb_loose_take *take, gb_supplies *s) {
    const gb_material *material = take->loose->material;
    gb_supply_need need = {.material = material,
                           .mass = take->size.mass,
                           .loose = {GB_NONE},
                           .pack = {GB_NONE}};
    if (material != NULL)
        gb_add_supply(s, &need);
}

void gb_waste_supplies(const gb_job *job, gb_supplies *s) {
    gb_lying lying = gb_job_lying(job);
    for (size_t i = 0; i < s->count; i++) {
        gb_supply_need *row = &s->rows[i];
        double brought = row->lying.kg;
        row->lying = row->mass;
        if (row->material == NULL)
            continue;
        double wasted = 1.0 + waste_of(job, row->material->name);
        row->mass.kg *= wasted;
        row->lying = gb_mass_lying(row->material, row->mass, lying);
        row->lying.kg += brought * wasted;
        row->loose = gb_loose_volume(row->material, row->mass, lying);
        row->pack = gb_job_pack(job, row->material);
    }
}

gb_status gb_merge_supplies(const gb_plan *plans, size_t plan_count, gb_arena *arena,
                            const gb_supply_need **needs, size_t *count) {
    size_t room = 1;
    for (size_t i = 0; i < plan_count; i++)
        room += plans[i].supply_count;
    gb_supplies s = {.rows = gb_arena_take(arena, room, sizeof *s.rows)};
    if (s.rows == NULL)
        return GB_NO_MEMORY;
    for (size_t i = 0; i < plan_count; i++)
        for (size_t k = 0; k < plans[i].supply_count; k++)
            gb_add_supply(&s, &plans[i].supplies[k]);
    *needs = s.rows;
    *count = s.count;
    return GB_OK;
}
