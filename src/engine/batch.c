#include "engine/batch.h"

#include "gaugebox/count.h"

#include <math.h>

enum { MOST_BATCHES = 100000 }; /* more is a slip of the pen */
static const double EIGHTH = 0.125;
static const double SMALLEST = 1.0 / 32.0; /* of a bag: about 3 lb of cement */

/* What is needed, up to what is worth weighing: eighths of a bag, finer when a dab is all
   there is to mix. */
static double weighable(double bags, bool all) {
    double step = all && gb_under(bags, 0.25) ? SMALLEST : EIGHTH;
    return gb_larger(step, gb_round(bags, step, GB_UP));
}

/* Seconds that the crew needs to place one bag of the thinnest layer, the slowest to
   place; NaN when the pace does not say. A pace in treads or by area is one of setting
   stone on a bed, and says nothing of a joint, a core or a slab. */
static double seconds_per_bag(const gb_job *job, const gb_mix_plan *mix, double m2_s) {
    if (!isnan(job->crew.pace.m3_s))
        return mix->recipe.yield.m3 / job->crew.pace.m3_s;
    double most_area = 0; /* that one m3 of gross need covers */
    for (size_t i = 0; i < mix->need.take_count; i++) {
        const gb_take *take = mix->need.takes[i];
        if (take->layer->kind != GB_BED)
            return GB_NONE;
        double gross = take->each.m3 * (1.0 + mix->need.waste.of_one);
        most_area = gb_larger(most_area, take->area.m2 / gross);
    }
    return mix->recipe.yield.m3 * most_area / m2_s;
}

/* Seconds that the crew needs for one batch as it is covered. */
static double seconds_of(const gb_job *job, const gb_mix_plan *mix, double m2_s,
                         const gb_batch *batch) {
    if (!isnan(job->crew.pace.m3_s))
        return batch->bags * mix->recipe.yield.m3 / job->crew.pace.m3_s;
    double area = 0;
    for (size_t i = 0; i < batch->stretch_count; i++) {
        const gb_stretch *s = &batch->stretches[i];
        area += (s->to - s->from) * s->take->area.m2;
    }
    return area / m2_s;
}

/* What each limit leaves of a batch, in whole bags, or in eighths when below one. */
static double whole_bags(double most) {
    return gb_round(most, gb_under(most, 1.0) ? EIGHTH : 1.0, GB_DOWN);
}

/* The most bags a batch may hold, and what says so: volume, then mass, then time, the
   first named of those that leave the same. */
static void find_limit(const gb_job *job, const gb_mix_plan *mix, gb_batching *b) {
    const gb_recipe *r = &mix->recipe;
    const gb_mixer *mixer = &job->crew.mixer;
    double wet = r->dry.kg + r->water_usual.kg;
    double most[] = {mixer->usable.m3 / r->yield.m3, mixer->most.kg / wet,
                     mix->life.s / b->bag_time.s};
    static const gb_limit LIMITS[] = {GB_LIMIT_VOLUME, GB_LIMIT_MASS, GB_LIMIT_TIME};
    b->most_bags = whole_bags(most[0]);
    b->limit = LIMITS[0];
    for (size_t i = 1; i < sizeof LIMITS / sizeof LIMITS[0]; i++) {
        if (isnan(most[i]) || !gb_under(whole_bags(most[i]), b->most_bags))
            continue;
        b->most_bags = whole_bags(most[i]);
        b->limit = LIMITS[i];
    }
    b->part_bags = gb_under(b->most_bags, 1.0);
}

/* Bags in batch i of n: whole bags dealt out as equally as they go. */
static double dealt(size_t bags, size_t n, size_t i) {
    size_t share = bags / n + (i < bags % n ? 1 : 0);
    return (double)share;
}

static gb_status size_each(const gb_mix_plan *mix, gb_arena *arena, gb_batching *b) {
    size_t n = 0;
    double total = b->part_bags ? b->bags_needed : (double)b->bags_whole;
    gb_status status = gb_count_up(total, b->most_bags, &n);
    if (status != GB_OK)
        return status;
    if (n > MOST_BATCHES)
        return GB_OVERFLOW;
    gb_batch *list = gb_arena_take(arena, n, sizeof *list);
    if (list == NULL)
        return GB_NO_MEMORY;
    double before = 0;
    for (size_t i = 0; i < n; i++) {
        list[i].bags = b->part_bags ? b->most_bags : dealt(b->bags_whole, n, i);
        if (i + 1 < n)
            before += list[i].bags;
    }
    b->last_needed = weighable(b->bags_needed - before, n == 1);
    /* A hair over full batches counts as full, and so does its last one. */
    b->last_needed = gb_smaller(b->last_needed, list[n - 1].bags);
    if (mix->need.mix->part_count > 0 || b->part_bags)
        list[n - 1].bags = b->last_needed;
    b->bags_gauged = before + list[n - 1].bags;
    b->batches = list;
    b->batch_count = n;
    if (n == 1)
        b->limit = GB_LIMIT_NEED;
    return GB_OK;
}

/* Deals the takes out to the batches, in the order of the job. */
static gb_status cover(const gb_mix_plan *mix, gb_arena *arena, gb_batching *b) {
    size_t most = mix->need.take_count + b->batch_count;
    gb_stretch *all = gb_arena_take(arena, most, sizeof *all);
    gb_batch *list = gb_arena_take(arena, b->batch_count, sizeof *list);
    if (all == NULL || list == NULL)
        return GB_NO_MEMORY;
    size_t used = 0;
    size_t t = 0;
    double done = 0; /* pieces of take t that are covered */
    double extra = 1.0 + mix->need.waste.of_one;
    for (size_t i = 0; i < b->batch_count; i++) {
        list[i] = (gb_batch){.bags = b->batches[i].bags, .stretches = &all[used]};
        double left = list[i].bags * mix->recipe.yield.m3;
        bool last = i + 1 == b->batch_count;
        while (t < mix->need.take_count &&
               (last || gb_over(left / mix->need.gross.m3, 0))) {
            const gb_take *take = mix->need.takes[t];
            double each = take->each.m3 * extra;
            double to = last ? take->units : gb_smaller(take->units, done + left / each);
            all[used++] = (gb_stretch){.take = take, .from = done, .to = to};
            list[i].stretch_count++;
            left -= (to - done) * each;
            done = to;
            if (gb_under(done, take->units))
                break;
            t++;
            done = 0;
        }
    }
    b->batches = list;
    return GB_OK;
}

static void find_slowest(const gb_job *job, const gb_mix_plan *mix, double m2_s,
                         gb_batching *b) {
    if (isnan(b->bag_time.s))
        return;
    b->time_to_place.s = 0;
    for (size_t i = 0; i < b->batch_count; i++)
        b->time_to_place.s =
            gb_larger(b->time_to_place.s, seconds_of(job, mix, m2_s, &b->batches[i]));
}

gb_status gb_size_batches(const gb_job *job, const gb_mix_plan *mix, double m2_s,
                          gb_arena *arena, gb_batching *batching) {
    gb_batching b = {.time_to_place = {GB_NONE}};
    b.bag_time.s = seconds_per_bag(job, mix, m2_s);
    find_limit(job, mix, &b);
    b.bags_needed = mix->need.bags;
    b.bags_gauged = b.bags_needed; /* until batches are sized */
    gb_status status = gb_count_up(b.bags_needed, 1.0, &b.bags_whole);
    if (status == GB_OK && gb_over(b.most_bags, 0)) {
        status = size_each(mix, arena, &b);
        if (status == GB_OK)
            status = cover(mix, arena, &b);
        if (status == GB_OK)
            find_slowest(job, mix, m2_s, &b);
    }
    if (status == GB_OK)
        *batching = b;
    return status;
}

void gb_check_first(const gb_mix_plan *mix, gb_first_check *check) {
    *check = (gb_first_check){.known = false};
    const gb_batching *b = &mix->batching;
    if (b->batch_count < 2 || b->batches[0].stretch_count != 1)
        return;
    const gb_stretch *s = &b->batches[0].stretches[0];
    size_t pieces = 0;
    /* Beds by level differ, and no count of treads tells how deep they are. */
    if (s->take->layer->levels.block_count > 1)
        return;
    if (s->take->layer->kind != GB_BED || gb_count_down(s->to, 1.0, &pieces) != GB_OK)
        return;
    /* A quarter of the next one or more is worth telling, and then so is its lack. */
    double left = s->to - (double)pieces;
    bool part = !gb_under(left, 0.25);
    size_t fewer = part ? pieces : pieces - 1;
    if (pieces < 1 || fewer < 1)
        return;
    /* So many pieces took the whole batch: every depth is that much larger. */
    double larger = s->to / (double)fewer;
    *check = (gb_first_check){.known = true,
                              .take = s->take,
                              .pieces = pieces,
                              .left = part ? left : 0,
                              .fewer = fewer,
                              .depth = {s->take->depth.m * larger},
                              .gross = {mix->need.gross.m3 * larger},
                              .bags = b->bags_needed * larger};
}
