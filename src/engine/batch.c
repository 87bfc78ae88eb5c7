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

static const gb_rate *rate_of(const gb_take *take, const gb_rate *rates) {
    return &rates[take->layer->kind];
}

gb_area gb_placed_area(const gb_take *take) {
    return take->layer->kind == GB_PARGE ? gb_parged_face(take->layer) : take->area;
}

gb_duration gb_time_of(const gb_take *take, gb_share waste, const gb_rate *rates,
                       double pieces) {
    const gb_rate *r = rate_of(take, rates);
    if (!isnan(r->m3_s))
        return (gb_duration){pieces * take->each.m3 * (1.0 + waste.of_one) / r->m3_s};
    return (gb_duration){pieces * gb_placed_area(take).m2 / r->m2_s};
}

/* Seconds that the crew needs to place one bag of the layer that is slowest to place; NaN
   where the pace of one is not known. An area's pace says nothing of a joint or a core.
 */
static double seconds_per_bag(const gb_mix_plan *mix, const gb_rate *rates) {
    double yield = mix->recipe.yield.m3;
    double most = 0;
    for (size_t i = 0; i < mix->need.take_count; i++) {
        const gb_take *take = mix->need.takes[i];
        const gb_rate *r = rate_of(take, rates);
        double gross = take->each.m3 * (1.0 + mix->need.waste.of_one);
        double s = isnan(r->m3_s) ? yield * (gb_placed_area(take).m2 / gross) / r->m2_s
                                  : yield / r->m3_s;
        if (isnan(s))
            return GB_NONE;
        most = gb_larger(most, s);
    }
    return most;
}

bool gb_by_one_volume(const gb_batch *batch, const gb_rate *rates) {
    double m3_s = rate_of(batch->stretches[0].take, rates)->m3_s;
    for (size_t i = 1; i < batch->stretch_count; i++)
        if (rate_of(batch->stretches[i].take, rates)->m3_s != m3_s)
            return false;
    return !isnan(m3_s);
}

/* Seconds that the crew needs for one batch as it is covered. */
static double seconds_of(const gb_mix_plan *mix, const gb_rate *rates,
                         const gb_batch *batch) {
    double s = 0;
    if (gb_by_one_volume(batch, rates))
        return batch->bags * mix->recipe.yield.m3 /
               rate_of(batch->stretches[0].take, rates)->m3_s;
    for (size_t i = 0; i < batch->stretch_count; i++) {
        const gb_stretch *c = &batch->stretches[i];
        s += gb_time_of(c->take, mix->need.waste, rates, c->to - c->from).s;
    }
    return s;
}

gb_duration gb_wet_mixing(const gb_mix *mix) {
    return (gb_duration){mix->mixing.s > 0 ? mix->mixing.s : 0};
}

gb_duration gb_life_to_place(const gb_mix_plan *mix) {
    return (gb_duration){mix->life.s - gb_wet_mixing(mix->need.mix).s};
}

double gb_batch_step(double most) {
    return gb_under(most, 1.0) ? EIGHTH : 1.0;
}

/* What each limit leaves of a batch. */
static double whole_bags(double most) {
    return gb_round(most, gb_batch_step(most), GB_DOWN);
}

/* The most bags a batch may hold, and what says so: volume, then mass, then time, the
   first named of those that leave the same. */
static void find_limit(const gb_mix_plan *mix, gb_batching *b) {
    const gb_recipe *r = &mix->recipe;
    double wet = gb_wet_mass(r).kg;
    double most[] = {gb_usable(b->mixer).m3 / r->yield.m3, b->mixer->most.kg / wet,
                     gb_larger(gb_life_to_place(mix).s, 0) / b->bag_time.s};
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

/* ---- stages ------------------------------------------------------------------------ */

/* Where the stages of the need lie; its takes come stage by stage. */
static size_t find_stages(const gb_mix_plan *mix, gb_stage_batches stages[GB_STAGES]) {
    const gb_need *n = &mix->need;
    size_t count = 0;
    for (size_t i = 0; i < n->take_count; i++) {
        gb_stage stage = gb_stage_of(n->takes[i]);
        if (count == 0 || stages[count - 1].stage != stage)
            stages[count++] = (gb_stage_batches){.stage = stage, .first_take = i};
        gb_stage_batches *s = &stages[count - 1];
        s->take_count++;
        s->gross.m3 += n->takes[i]->net.m3;
    }
    for (size_t i = 0; i < count; i++) {
        gb_stage_batches *s = &stages[i];
        s->gross.m3 *= 1.0 + n->waste.of_one;
        s->bags_needed = s->gross.m3 / mix->recipe.yield.m3;
    }
    return count;
}

/* Whole bags in all, and the batches that each stage takes. */
static gb_status count_batches(gb_batching *b, gb_stage_batches *stages) {
    for (size_t i = 0; i < b->stage_count; i++) {
        gb_stage_batches *s = &stages[i];
        gb_status status = gb_count_up(s->bags_needed, 1.0, &s->bags_whole);
        if (status != GB_OK)
            return status;
        b->bags_whole += s->bags_whole;
        if (!gb_over(b->most_bags, 0))
            continue;
        double total = b->part_bags ? s->bags_needed : (double)s->bags_whole;
        status = gb_count_up(total, b->most_bags, &s->count);
        if (status != GB_OK)
            return status;
        s->first = b->batch_count;
        b->batch_count += s->count;
        if (b->batch_count > MOST_BATCHES)
            return GB_OVERFLOW;
    }
    return GB_OK;
}

/* ---- sizes ------------------------------------------------------------------------- */

/* Bags in batch i of n: whole bags dealt out as equally as they go. */
static double dealt(size_t bags, size_t n, size_t i) {
    size_t share = bags / n + (i < bags % n ? 1 : 0);
    return (double)share;
}

static void size_each(const gb_mix_plan *mix, const gb_batching *b, gb_stage_batches *s,
                      gb_batch *list) {
    double before = 0;
    for (size_t i = 0; i < s->count; i++) {
        list[i].bags = b->part_bags ? b->most_bags : dealt(s->bags_whole, s->count, i);
        if (i + 1 < s->count)
            before += list[i].bags;
    }
    gb_batch *last = &list[s->count - 1];
    s->last_needed = weighable(s->bags_needed - before, s->count == 1);
    /* A hair over full batches counts as full, and so does its last one. */
    s->last_needed = gb_smaller(s->last_needed, last->bags);
    if (mix->need.mix->part_count > 0 || b->part_bags)
        last->bags = s->last_needed;
}

/* Deals the takes of one stage out to its batches. Returns the stretches that it used. */
static size_t cover(const gb_mix_plan *mix, const gb_stage_batches *s, gb_batch *list,
                    gb_stretch *all) {
    size_t used = 0;
    size_t t = 0;
    double done = 0; /* pieces of take t that are covered */
    double extra = 1.0 + mix->need.waste.of_one;
    for (size_t i = 0; i < s->count; i++) {
        list[i].stretches = &all[used];
        double left = list[i].bags * mix->recipe.yield.m3;
        bool last = i + 1 == s->count;
        while (t < s->take_count && (last || gb_over(left / s->gross.m3, 0))) {
            const gb_take *take = mix->need.takes[s->first_take + t];
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
    return used;
}

/* How long each takes, and the slowest of them. */
static void time_each(const gb_mix_plan *mix, const gb_rate *rates, gb_batching *b,
                      gb_batch *list) {
    bool known = !isnan(b->bag_time.s);
    b->time_to_place.s = known ? 0 : GB_NONE;
    for (size_t i = 0; i < b->batch_count; i++) {
        list[i].time.s = known ? seconds_of(mix, rates, &list[i]) : GB_NONE;
        if (known)
            b->time_to_place.s = gb_larger(b->time_to_place.s, list[i].time.s);
    }
}

static gb_status fill_batches(const gb_mix_plan *mix, const gb_rate *rates,
                              gb_arena *arena, gb_stage_batches *stages, gb_batching *b) {
    size_t most = mix->need.take_count + b->batch_count;
    gb_stretch *all = gb_arena_take(arena, most, sizeof *all);
    gb_batch *list = gb_arena_take(arena, b->batch_count, sizeof *list);
    if (all == NULL || list == NULL)
        return GB_NO_MEMORY;
    b->bags_gauged = 0;
    for (size_t i = 0; i < b->stage_count; i++) {
        gb_stage_batches *s = &stages[i];
        size_each(mix, b, s, &list[s->first]);
        all += cover(mix, s, &list[s->first], all);
        for (size_t k = 0; k < s->count; k++)
            b->bags_gauged += list[s->first + k].bags;
    }
    b->last_needed = stages[b->stage_count - 1].last_needed;
    b->batches = list;
    time_each(mix, rates, b, list);
    if (b->batch_count == 1)
        b->limit = GB_LIMIT_NEED;
    return GB_OK;
}

/* ---- mixers ------------------------------------------------------------------------ */

static gb_status size_in(const gb_mixer *mixer, const gb_mix_plan *mix,
                         const gb_rate *rates, gb_arena *arena, gb_batching *batching) {
    gb_batching b = {.mixer = mixer, .time_to_place = {GB_NONE}};
    gb_stage_batches *stages = gb_arena_take(arena, GB_STAGES, sizeof *stages);
    if (stages == NULL)
        return GB_NO_MEMORY;
    b.stages = stages;
    b.stage_count = find_stages(mix, stages);
    b.bag_time.s = seconds_per_bag(mix, rates);
    find_limit(mix, &b);
    b.bags_needed = mix->need.bags;
    b.bags_gauged = b.bags_needed; /* until batches are sized */
    gb_status status = count_batches(&b, stages);
    if (status == GB_OK && b.batch_count > 0)
        status = fill_batches(mix, rates, arena, stages, &b);
    if (status == GB_OK)
        *batching = b;
    return status;
}

bool gb_fills(const gb_mixer *mixer, const gb_need *need) {
    for (size_t i = 0; i < need->take_count; i++)
        if (!(mixer->fills >> need->takes[i]->layer->kind & 1))
            return false;
    return true;
}

/* Fewer batches are better, and none at all is worst. */
static bool is_better(const gb_batching *a, const gb_batching *than) {
    return a->batch_count > 0 &&
           (than->batch_count == 0 || a->batch_count < than->batch_count);
}

/* A mixer that is kept for these layers goes before one for any; of several the one with
   the fewest batches, and of those the first. */
gb_status gb_size_batches(const gb_job *job, const gb_mix_plan *mix, const gb_rate *rates,
                          gb_arena *arena, gb_batching *batching) {
    size_t count = 0;
    const gb_mixer *mixers = gb_mixers_of(&job->crew, &count);
    bool kept = false;
    bool sized = false;
    for (size_t i = 0; i < count; i++)
        kept = kept || gb_fills(&mixers[i], &mix->need);
    for (size_t i = 0; i < count; i++) {
        if (kept ? !gb_fills(&mixers[i], &mix->need) : mixers[i].fills != 0)
            continue;
        gb_batching b;
        gb_status status = size_in(&mixers[i], mix, rates, arena, &b);
        if (status != GB_OK)
            return status;
        if (!sized || is_better(&b, batching))
            *batching = b;
        sized = true;
    }
    return sized ? GB_OK : GB_NOT_POSITIVE;
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
