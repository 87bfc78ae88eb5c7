#include "gaugebox/day.h"

#include "gaugebox/count.h"

/* Batches are tried from the next smaller one down, in eighths of a bag as they are
   gauged, or in as many equal steps. */
static const double EIGHTHS = 8.0;
static const double MOST_TRIES = 24.0;

/* What a mixer is stated to take, as people write it: to 0.01 ft3 or 0.1 L, upwards. */
static gb_volume as_stated(const gb_job *job, double m3) {
    double step = job->units == GB_US ? 0.01 * 0.3048 * 0.3048 * 0.3048 : 1e-4;
    return (gb_volume){gb_round(m3, step, GB_UP)};
}

/* The job with that mixer stated to take so much. */
static gb_status with_usable(const gb_job *old, const gb_mixer *mixer, gb_volume usable,
                             gb_arena *arena, gb_job *job) {
    *job = *old;
    if (job->crew.mixer_count == 0) {
        job->crew.mixer.usable = usable;
        return GB_OK;
    }
    gb_mixer *list = gb_arena_take(arena, job->crew.mixer_count, sizeof *list);
    if (list == NULL)
        return GB_NO_MEMORY;
    for (size_t i = 0; i < job->crew.mixer_count; i++)
        list[i] = old->crew.mixers[i];
    list[mixer - old->crew.mixers].usable = usable;
    job->crew.mixers = list;
    return GB_OK;
}

static bool is_planned(const gb_timetable *t, gb_stage stage) {
    for (size_t i = 0; i < t->stage_count; i++)
        if (t->stages[i].stage == stage)
            return t->stages[i].unplanned == GB_PLANNED;
    return false;
}

gb_status gb_find_smaller(const gb_plan *plan, const gb_stage_plan *stage,
                          gb_arena *arena, gb_smaller_batches *found) {
    *found = (gb_smaller_batches){0};
    if (stage->unplanned != GB_NO_ROOM || stage->pot)
        return GB_OK;
    const gb_mix_plan *mix = stage->mix;
    double most = gb_round(mix->batching.most_bags * EIGHTHS, 1.0, GB_DOWN);
    double step = gb_larger(1.0, gb_round(most / MOST_TRIES, 1.0, GB_UP));
    double eighths = most - step;
    while (eighths >= 1.0 && !(found->usable.m3 > 0)) {
        gb_job job;
        gb_plan trial;
        gb_timetable table;
        const gb_mix *bad = NULL;
        double bags = eighths / EIGHTHS;
        gb_volume usable = as_stated(plan->job, bags * mix->recipe.yield.m3);
        gb_status status =
            with_usable(plan->job, mix->batching.mixer, usable, arena, &job);
        if (status == GB_OK)
            status = gb_make_plan(&job, arena, &trial, &bad);
        if (status == GB_OK)
            status = gb_plan_days(&trial, arena, &table);
        if (status != GB_OK)
            return status;
        if (is_planned(&table, stage->stage))
            *found = (gb_smaller_batches){usable, mix->batching.mixer, bags};
        eighths -= step;
    }
    return GB_OK;
}
