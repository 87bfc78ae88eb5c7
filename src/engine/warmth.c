#include "gaugebox/plan.h"

#include "gaugebox/count.h"
#include "words/mark.h"

#include <math.h>

static const double COLDEST_WATER_F = 35;

/* The water that its aggregate holds. */
static gb_mass held_water(const gb_mix *mix, const gb_recipe *r, gb_share pile) {
    double kg = 0;
    for (size_t i = 0; i < mix->part_count; i++)
        kg += r->part[i].kg * gb_part_wetness(&mix->parts[i], pile).moisture.of_one;
    return (gb_mass){kg};
}

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
                         .moisture = {held_water(mix->need.mix, r, moisture).kg * bags},
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
    else if (!gb_under(w->water.c, gb_fahrenheit(COLDEST_WATER_F).c))
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

static gb_mix_band band_of_concrete(const gb_weather *w, const gb_mix_plan *mix) {
    gb_hour now = gb_coldest_hour(w, GB_AT_WORK);
    gb_hour later = gb_coldest_hour(w, GB_WATCH);
    bool cold = gb_under(gb_smaller(now.air.c, later.air.c), gb_cold_for_concrete().c);
    return (gb_mix_band){.least = {cold ? gb_cold_of(mix, now.air).mixed.c : GB_NONE},
                         .most = gb_hottest_concrete(),
                         .source = N_("ACI 306R; ACI 301, second hand")};
}

gb_mix_band gb_band_of_mix(const gb_weather *weather, const gb_mix_plan *mix) {
    if (mix->stuff == GB_AS_CONCRETE)
        return band_of_concrete(weather, mix);
    double air = gb_coldest_hour(weather, GB_AT_WORK).air.c;
    bool warmer =
        mix->stuff == GB_AS_GROUT && !isnan(air) && !gb_over(air, gb_freezing().c);
    return (gb_mix_band){.least = gb_fahrenheit(warmer ? 70 : 40),
                         .most = gb_fahrenheit(120),
                         .source = N_("TMS 602 art. 1.8 C and D")};
}

bool gb_needs_hot_water(const gb_job *job, const gb_mix_plan *mix) {
    gb_warmth w;
    if (!gb_warm_batch(job, mix, &w))
        return false;
    bool heated = w.way == GB_WARM_BY_WATER || w.way == GB_WARM_BY_SAND;
    gb_temp water = heated ? w.water : job->temperatures.water;
    gb_temp sand = w.way == GB_WARM_BY_SAND ? w.sand : job->temperatures.sand;
    return gb_over(water.c, gb_flash_set().c) || gb_over(sand.c, gb_flash_set().c);
}
