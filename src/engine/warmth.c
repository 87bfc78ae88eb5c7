#include "gaugebox/plan.h"

#include "gaugebox/count.h"

#include <math.h>

static const double COLDEST_WATER_F = 35;

/* What goes into the first batch, with its usual water. */
static bool fill(const gb_job *job, const gb_mix_plan *mix, gb_batch_heat *b) {
    const gb_recipe *r = &mix->recipe;
    const gb_temperatures *t = &job->temperatures;
    gb_share moisture = gb_job_moisture(job);
    gb_water_row water;
    if (t->at.line == 0 || mix->is_slurry || mix->batching.batch_count == 0)
        return false;
    double bags = mix->batching.batches[0].bags;
    if (gb_water_to_add(mix->need.mix, r, moisture, bags, &water) != GB_OK)
        return false;
    double binder = (r->binder.kg + r->powder.kg) * bags;
    *b = (gb_batch_heat){.binder = {binder},
                         .aggregate = {gb_larger(r->dry.kg * bags - binder, 0)},
                         .moisture = {r->sand.kg * moisture.of_one * bags},
                         .water = water.usual,
                         .binder_at = t->cement,
                         .aggregate_at = t->sand,
                         .water_at = t->water,
                         .frozen = t->frozen};
    return true;
}

static void heat_sand(const gb_temperatures *t, gb_warmth *w) {
    gb_batch_heat hot = w->batch;
    hot.water_at = gb_hottest_water();
    w->way = GB_WARM_BY_SAND;
    w->needed = w->water;
    w->water = hot.water_at;
    if (gb_mix_temperature(&hot, &w->reached) != GB_OK)
        w->reached.c = GB_NONE;
    if (gb_aggregate_for(&hot, t->wanted, &w->sand) != GB_OK)
        w->sand.c = GB_NONE;
}

static void find_way(const gb_temperatures *t, gb_warmth *w) {
    if (isnan(t->wanted.c))
        return;
    w->way = GB_WARM_ALREADY;
    if (w->comes_out && fabs(w->mixed.c - t->wanted.c) <= 0.5)
        return;
    if (gb_water_for(&w->batch, t->wanted, &w->water) != GB_OK)
        w->way = GB_NOT_WANTED; /* no water is added: nothing to warm */
    else if (gb_over(w->water.c, gb_hottest_water().c))
        heat_sand(t, w);
    else if (!gb_under(w->water.c, gb_si(GB_TEMP, "F", COLDEST_WATER_F)))
        w->way = GB_WARM_BY_WATER;
    else
        w->way = gb_ice_for(&w->batch, t->wanted, &w->ice) == GB_OK ? GB_WARM_BY_ICE
                                                                    : GB_WARM_BY_NOTHING;
}

bool gb_warm_batch(const gb_job *job, const gb_mix_plan *mix, gb_warmth *warmth) {
    gb_warmth w = {.mixed = {GB_NONE}};
    if (!fill(job, mix, &w.batch))
        return false;
    w.comes_out = gb_mix_temperature(&w.batch, &w.mixed) == GB_OK;
    find_way(&job->temperatures, &w);
    *warmth = w;
    return true;
}
