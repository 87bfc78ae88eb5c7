#include "gaugebox/plan.h"

#include "engine/batch.h"
#include "engine/caution.h"
#include "engine/gather.h"

#include "gaugebox/count.h"
#include "gaugebox/digest.h"

#include <math.h>
#include <string.h>

gb_lying gb_job_lying(const gb_job *job) {
    return gb_pile_lying(&job->sand);
}

gb_share gb_job_moisture(const gb_job *job) {
    return gb_job_lying(job).moisture;
}

gb_volume gb_job_measure(const gb_job *job) {
    return gb_gauge_volume(&job->gauge, job->units);
}

/* The figures that gauging rests on are there and over zero. */
static bool can_be_gauged(const gb_job *job) {
    double bulking = gb_job_lying(job).bulking.of_one;
    double one = gb_job_measure(job).m3;
    return isfinite(bulking) && bulking >= 0 && isfinite(one) && one > 0;
}

gb_status gb_area_pace(const gb_job *job, const gb_pace *pace, double *m2_s) {
    if (isnan(pace->treads_s)) {
        *m2_s = pace->m2_s;
        return GB_OK;
    }
    for (size_t i = 0; i < job->piece_count; i++) {
        const gb_piece *piece = &job->pieces[i];
        if (piece->kind != GB_TREAD || !gb_has_shape(&piece->shape))
            continue;
        *m2_s = pace->treads_s * gb_bedded_area(piece).m2;
        return GB_OK;
    }
    return GB_NO_PACE;
}

/* What the job's paces come to for each kind of layer. */
static gb_status find_rates(const gb_job *job, gb_rate rates[GB_LAYER_KINDS]) {
    for (gb_layer_kind kind = GB_BED; kind < GB_LAYER_KINDS; kind++) {
        const gb_pace *pace = gb_pace_of(&job->crew, kind);
        rates[kind] = (gb_rate){GB_NONE, GB_NONE};
        if (pace == NULL)
            continue;
        rates[kind].m3_s = pace->m3_s;
        gb_status status = gb_area_pace(job, pace, &rates[kind].m2_s);
        if (status != GB_OK)
            return status;
    }
    return GB_OK;
}

static gb_status take_all(const gb_job *job, gb_arena *arena, gb_plan *plan) {
    size_t layers = 0;
    for (size_t i = 0; i < job->piece_count; i++)
        layers += job->pieces[i].layer_count;
    gb_take *takes = gb_arena_take(arena, layers + 1, sizeof *takes);
    if (takes == NULL)
        return GB_NO_MEMORY;
    plan->takes = takes;
    for (size_t i = 0; i < job->piece_count; i++) {
        const gb_piece *piece = &job->pieces[i];
        for (size_t k = 0; k < piece->layer_count; k++) {
            gb_status status =
                gb_take_off(piece, &piece->layers[k], &takes[plan->take_count]);
            if (status != GB_OK)
                return status;
            plan->take_count++;
        }
    }
    return GB_OK;
}

static gb_status take_stones(const gb_job *job, gb_arena *arena, gb_plan *plan) {
    gb_stone_take *stones = gb_arena_take(arena, job->piece_count + 1, sizeof *stones);
    if (stones == NULL)
        return GB_NO_MEMORY;
    plan->stones = stones;
    for (size_t i = 0; i < job->piece_count; i++) {
        const gb_piece *piece = &job->pieces[i];
        if (piece->stone.at.line == 0)
            continue;
        gb_stone_take *take = &stones[plan->stone_count];
        gb_status status =
            gb_measure_stone(&piece->shape, piece->count, &piece->stone, &take->size);
        if (status != GB_OK)
            return status;
        take->piece = piece;
        plan->stone_count++;
    }
    return GB_OK;
}

bool gb_lies_under_run(const gb_piece *piece, const gb_loose *loose) {
    bool under = loose->kind == GB_BASE || loose->kind == GB_EXCAVATION ||
                 loose->kind == GB_GEOTEXTILE;
    return under && piece->run.at.line != 0 && isnan(loose->area.m2) &&
           isnan(loose->volume.m3);
}

static gb_status measure(const gb_job *job, gb_loose_take *t) {
    const gb_piece *p = t->piece;
    gb_shape shape = p->shape;
    size_t count = p->count;
    if (gb_lies_under_run(p, t->loose)) {
        double hidden = p->run.overhang.m + p->run.overlap.m;
        shape.width.m = (double)count * (shape.width.m - hidden) + hidden;
        count = 1;
    }
    return gb_measure_loose(t->loose, &shape, count, gb_job_lying(job), &t->size);
}

static gb_status take_loose(const gb_job *job, gb_arena *arena, gb_plan *plan) {
    size_t count = 0;
    for (size_t i = 0; i < job->piece_count; i++)
        count += job->pieces[i].loose_count;
    gb_loose_take *takes = gb_arena_take(arena, count + 1, sizeof *takes);
    if (takes == NULL)
        return GB_NO_MEMORY;
    plan->loose = takes;
    for (size_t i = 0; i < job->piece_count; i++) {
        const gb_piece *piece = &job->pieces[i];
        for (size_t k = 0; k < piece->loose_count; k++) {
            gb_loose_take *t = &takes[plan->loose_count];
            *t = (gb_loose_take){.piece = piece, .loose = &piece->loose[k]};
            gb_status status = measure(job, t);
            if (status != GB_OK)
                return status;
            plan->loose_count++;
        }
    }
    return GB_OK;
}

const gb_own_label *gb_job_label(const gb_job *job, const gb_mix *mix) {
    for (size_t i = 0; i < job->label_count; i++)
        if (strcmp(job->labels[i].mix.text, mix->id) == 0)
            return &job->labels[i];
    return NULL;
}

gb_mix gb_with_own_water(const gb_mix *mix, const gb_own_label *own) {
    gb_mix copy = *mix;
    if (isnan(own->usual.m3))
        return copy;
    copy.water.bag_least = own->least;
    copy.water.bag_usual = own->usual;
    copy.water.bag_most = own->most;
    return copy;
}

static gb_status own_mix(const gb_mix *mix, const gb_own_label *own, gb_arena *arena,
                         const gb_mix **result) {
    *result = mix;
    if (own == NULL)
        return GB_OK;
    gb_mix *copy = gb_arena_take(arena, 1, sizeof *copy);
    if (copy == NULL)
        return GB_NO_MEMORY;
    *copy = gb_with_own_water(mix, own);
    *result = copy;
    return GB_OK;
}

/* The bag of a site mix's binder; a blend's comes with its label. */
static gb_mass bag_of(const gb_job *job, const gb_mix *mix) {
    bool known = mix->part_count > 0 && mix->parts[0].material != NULL;
    return known ? gb_job_pack(job, mix->parts[0].material) : (gb_mass){GB_NONE};
}

/* Concrete may fill a slab; grout fills cores and beds nothing. */
static gb_stuff stuff_of(const gb_mix *mix) {
    if (mix->uses >> GB_SLAB & 1)
        return GB_AS_CONCRETE;
    bool core = mix->uses >> GB_CORE & 1;
    bool sets = mix->uses >> GB_BED & 1 || mix->uses >> GB_JOINT & 1;
    return core && !sets ? GB_AS_GROUT : GB_AS_MORTAR;
}

static bool all_slurry(const gb_need *need) {
    for (size_t i = 0; i < need->take_count; i++)
        if (need->takes[i]->layer->kind != GB_SLURRY)
            return false;
    return true;
}

/* Behind those of the list, one for each tread of the need that is flagged; then what its
   exposure raises. Without a job there are none of either. */
static gb_status keep_cautions(const gb_caution_list *list, const gb_job *job,
                               const gb_mix_plan *mix, gb_arena *arena,
                               gb_cautions *cautions) {
    size_t treads = job == NULL ? 0 : gb_level_cautions(&mix->need, NULL);
    size_t exposed = job == NULL ? 0 : gb_exposure_cautions(job, mix, NULL);
    size_t count = list->count + treads + exposed;
    gb_caution *kept = gb_arena_take(arena, count + 1, sizeof *kept);
    if (kept == NULL)
        return GB_NO_MEMORY;
    memcpy(kept, list->list, list->count * sizeof *kept);
    if (treads > 0)
        (void)gb_level_cautions(&mix->need, kept + list->count);
    if (exposed > 0)
        (void)gb_exposure_cautions(job, mix, kept + list->count + treads);
    *cautions = (gb_cautions){kept, count};
    return GB_OK;
}

gb_status gb_mix_cautions(const gb_mix *mix, gb_arena *arena, gb_cautions *cautions) {
    gb_caution_list list = {.count = 0};
    gb_entry_cautions(mix, &list);
    return keep_cautions(&list, NULL, NULL, arena, cautions);
}

static gb_status gauge_mix(const gb_job *job, const gb_mix *mix, gb_arena *arena,
                           const gb_plan *plan, gb_mix_plan *p) {
    const gb_own_label *own = gb_job_label(job, mix);
    const gb_mix *used = NULL;
    gb_status status = own_mix(mix, own, arena, &used);
    if (status == GB_OK)
        status = gb_gather(job, used, plan->takes, plan->take_count, arena, &p->need);
    if (status == GB_OK)
        status =
            gb_make_recipe(used, own != NULL ? &own->label : NULL,
                           own != NULL && own->measured, bag_of(job, mix), &p->recipe);
    if (status != GB_OK)
        return status;
    gb_count_bags(&p->recipe, &p->need);
    gb_hour hottest = gb_hot_hour(&job->weather);
    bool hot = gb_hot_band(hottest.air, hottest.wind) != GB_CAUTION_CODES;
    p->life = hot ? mix->life_hot : mix->life;
    p->is_slurry = all_slurry(&p->need);
    p->stuff = p->is_slurry ? GB_AS_SLURRY : stuff_of(mix);
    p->own_label = own != NULL;
    return GB_OK;
}

static gb_status plan_mix(const gb_job *job, const gb_mix *mix, gb_arena *arena,
                          const gb_plan *plan, gb_mix_plan *p) {
    gb_status status = gauge_mix(job, mix, arena, plan, p);
    if (status == GB_OK && p->is_slurry)
        status = gb_size_pots(job, p, plan->rates[GB_SLURRY].m2_s, arena, &p->pots,
                              &p->pot_count);
    if (status == GB_TOO_WET)
        status = GB_OK; /* a caution says it, and no pot is mixed */
    if (status == GB_OK && !p->is_slurry) {
        status = gb_size_batches(job, p, plan->rates, arena, &p->batching);
        gb_check_first(p, &p->first_check);
    }
    if (status != GB_OK)
        return status;
    gb_caution_list cautions = {.count = 0};
    gb_weather_cautions(job, p, &cautions);
    gb_plan_cautions(job, p, &cautions);
    return keep_cautions(&cautions, job, p, arena, &p->cautions);
}

const char *gb_supply_name(const gb_supply_need *need) {
    return need->material != NULL ? need->material->name : need->blend->id;
}

const gb_words *gb_supply_title(const gb_supply_need *need) {
    return need->material != NULL ? &need->material->title : &need->blend->title;
}

double gb_supply_packs(const gb_supply_need *need) {
    return isnan(need->pack.kg) ? GB_NONE
                                : gb_round(need->mass.kg / need->pack.kg, 1, GB_UP);
}

static gb_status plan_supplies(const gb_job *job, gb_arena *arena, gb_plan *plan) {
    size_t room = 1 + plan->loose_count;
    for (size_t i = 0; i < plan->mix_count; i++)
        room += 1 + plan->mixes[i].need.mix->part_count +
                plan->mixes[i].need.mix->addition_count;
    gb_supplies s = {.rows = gb_arena_take(arena, room, sizeof *s.rows)};
    if (s.rows == NULL)
        return GB_NO_MEMORY;
    for (size_t i = 0; i < plan->mix_count; i++) {
        gb_gather_supplies(job, &plan->mixes[i], &s);
        plan->water.m3 +=
            gb_water_used(&plan->mixes[i], gb_job_moisture(job)).kg / GB_WATER_KG_M3;
    }
    for (size_t i = 0; i < plan->loose_count; i++)
        gb_gather_loose(&plan->loose[i], &s);
    gb_waste_supplies(job, &s);
    plan->supplies = s.rows;
    plan->supply_count = s.count;
    return GB_OK;
}

static uint64_t digest_of(const gb_job *job) {
    const char *version = gb_version();
    uint64_t digest = gb_digest_add(GB_DIGEST_START, version, strlen(version));
    digest = gb_digest_add_number(digest, job->digest);
    for (size_t i = 0; i < job->mix_count; i++)
        digest = gb_digest_add_number(digest, job->mixes[i]->digest);
    return job->stones == 0 ? digest : gb_digest_add_number(digest, job->stones);
}

gb_status gb_make_plan(const gb_job *job, gb_arena *arena, gb_plan *plan,
                       const gb_mix **bad_mix) {
    gb_plan p = {.job = job, .digest = digest_of(job)};
    *bad_mix = NULL;
    if (!can_be_gauged(job))
        return GB_NOT_POSITIVE;
    gb_status status = find_rates(job, p.rates);
    if (status == GB_OK)
        status = take_all(job, arena, &p);
    if (status == GB_OK)
        status = take_stones(job, arena, &p);
    if (status == GB_OK)
        status = take_loose(job, arena, &p);
    if (status != GB_OK)
        return status;
    gb_mix_plan *mixes = gb_arena_take(arena, job->mix_count + 1, sizeof *mixes);
    if (mixes == NULL)
        return GB_NO_MEMORY;
    p.mixes = mixes;
    for (size_t i = 0; i < job->mix_count; i++) {
        status = plan_mix(job, job->mixes[i], arena, &p, &mixes[i]);
        if (status != GB_OK) {
            *bad_mix = job->mixes[i];
            return status;
        }
        p.mix_count++;
    }
    status = plan_supplies(job, arena, &p);
    if (status == GB_OK)
        *plan = p;
    return status;
}
