#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>

/* How long it takes to place what is mixed. */

static const char *id_of(const gb_about *a) {
    return a->mix->need.mix->id;
}

/* Area in a second, as stated or as treads. */
const gb_why *gb_why_area_pace(gb_explainer *x, const gb_job *job, gb_layer_kind kind) {
    const gb_pace *pace = gb_pace_of(&job->crew, kind);
    const gb_place *place = gb_places_find(x->places, pace);
    if (isnan(pace->treads_s))
        return gb_keep_why(x, (gb_why){.name = "pace",
                                       .unit = GB_AREA_PACE,
                                       .value = pace->m2_s,
                                       .place = place});
    const gb_piece *tread = NULL;
    for (size_t i = 0; i < job->piece_count && tread == NULL; i++)
        if (job->pieces[i].kind == GB_TREAD && gb_has_shape(&job->pieces[i].shape))
            tread = &job->pieces[i];
    if (tread == NULL)
        return NULL;
    const gb_why *treads = gb_keep_why(x, (gb_why){.name = "tread_pace",
                                                   .unit = GB_TREAD_PACE,
                                                   .value = pace->treads_s,
                                                   .place = place});
    return GB_WHY(x, "pace", GB_AREA_PACE, pace->treads_s * gb_bedded_area(tread).m2,
                  "tread_pace * bedded", GB_INPUTS(treads, gb_why_bedded(x, tread)));
}

static const gb_why *volume_pace(gb_explainer *x, const gb_job *job, gb_layer_kind kind) {
    const gb_pace *pace = gb_pace_of(&job->crew, kind);
    return gb_keep_why(x, (gb_why){.name = "volume_pace",
                                   .unit = GB_VOLUME_PACE,
                                   .value = pace->m3_s,
                                   .place = gb_places_find(x->places, pace)});
}

/* The area of one piece that is placed: what is bedded, or the face that is parged. */
static const gb_why *placed_area(gb_explainer *x, const gb_take *t) {
    return t->layer->kind == GB_PARGE ? gb_why_parged(x, t) : gb_why_bedded(x, t->piece);
}

static const gb_rate *rate_of(const gb_about *a, const gb_take *take) {
    return &a->plan->rates[take->layer->kind];
}

/* Of the life, what passes before a batch is turned out. */
const gb_why *gb_why_wet_mixing(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_mix_time(x, "mixing", &m, &a->mix->need.mix->mixing.s);
}

/* ---- one bag ----------------------------------------------------------------------- */

/* One bag in one layer. */
static const gb_why *bag_in(gb_explainer *x, const gb_about *a, const gb_take *t) {
    const gb_job *job = a->plan->job;
    gb_mixed m = gb_mixed_of(a);
    gb_layer_kind kind = t->layer->kind;
    const gb_rate *r = rate_of(a, t);
    double yield = m.recipe->yield.m3;
    if (!isnan(r->m3_s))
        return GB_WHY(x, "bag_time", GB_DURATION, yield / r->m3_s, "yield / volume_pace",
                      GB_INPUTS(gb_why_yield(x, &m), volume_pace(x, job, kind)),
                      .of = t->piece->name);
    double area =
        yield * gb_placed_area(t).m2 / (t->each.m3 * (1.0 + a->mix->need.waste.of_one));
    const gb_why *covered =
        GB_WHY(x, "bag_area", GB_AREA, area,
               t->layer->kind == GB_PARGE ? "yield * face / (each * (1 + waste))"
                                          : "yield * bedded / (each * (1 + waste))",
               GB_INPUTS(gb_why_yield(x, &m), placed_area(x, t), gb_why_each(x, t),
                         gb_why_need_waste(x, a)),
               .of = t->piece->name);
    return GB_WHY(x, "bag_time", GB_DURATION, area / r->m2_s, "bag_area / pace",
                  GB_INPUTS(covered, gb_why_area_pace(x, job, kind)),
                  .of = t->piece->name);
}

/* Of the layer that is slowest to place. */
const gb_why *gb_why_bag_time(gb_explainer *x, const gb_about *a) {
    const gb_need *n = &a->mix->need;
    const gb_why **all = gb_arena_take(x->arena, n->take_count, sizeof(const gb_why *));
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < n->take_count; i++)
        all[i] = bag_in(x, a, n->takes[i]);
    if (n->take_count == 1)
        return all[0];
    return GB_WHY(x, "bag_time", GB_DURATION, a->mix->batching.bag_time.s, "most()",
                  .inputs = all, .input_count = n->take_count, .of = id_of(a));
}

/* ---- one batch --------------------------------------------------------------------- */

static const gb_why *stretch_time(gb_explainer *x, const gb_about *a, size_t batch,
                                  const gb_stretch *s) {
    const gb_take *t = s->take;
    const gb_job *job = a->plan->job;
    double value = gb_time_of(t, a->mix->need.waste, a->plan->rates, s->to - s->from).s;
    const gb_why *to = gb_why_end_of(x, a, batch, s);
    const gb_why *from = gb_why_start_of(x, a, batch, s);
    if (!isnan(rate_of(a, t)->m3_s))
        return GB_WHY(x, "time", GB_DURATION, value,
                      "(to - from) * each * (1 + waste) / volume_pace",
                      GB_INPUTS(to, from, gb_why_each(x, t), gb_why_need_waste(x, a),
                                volume_pace(x, job, t->layer->kind)),
                      .of = t->piece->name);
    return GB_WHY(
        x, "time", GB_DURATION, value,
        t->layer->kind == GB_PARGE ? "(to - from) * face / pace"
                                   : "(to - from) * bedded / pace",
        GB_INPUTS(to, from, placed_area(x, t), gb_why_area_pace(x, job, t->layer->kind)),
        .of = t->piece->name);
}

const gb_why *gb_why_batch_time(gb_explainer *x, const gb_about *a, size_t batch) {
    const gb_batch *b = &a->mix->batching.batches[batch];
    gb_mixed m = gb_mixed_of(a);
    const gb_take *first = b->stretches[0].take;
    if (gb_by_one_volume(b, a->plan->rates))
        return GB_WHY(x, "time", GB_DURATION, b->time.s, "bags * yield / volume_pace",
                      GB_INPUTS(gb_why_batch_bags(x, a, batch), gb_why_yield(x, &m),
                                volume_pace(x, a->plan->job, first->layer->kind)));
    const gb_why **all =
        gb_arena_take(x->arena, b->stretch_count, sizeof(const gb_why *));
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    double sum = 0;
    for (size_t i = 0; i < b->stretch_count; i++) {
        all[i] = stretch_time(x, a, batch, &b->stretches[i]);
        sum += all[i] == NULL ? 0 : all[i]->value;
    }
    if (b->stretch_count == 1)
        return all[0];
    return GB_WHY(x, "time", GB_DURATION, sum, "sum()", .inputs = all,
                  .input_count = b->stretch_count);
}

/* Of the batch that takes longest. */
const gb_why *gb_why_time_to_place(gb_explainer *x, const gb_about *a) {
    const gb_batching *b = &a->mix->batching;
    const gb_why *slowest = NULL;
    for (size_t i = 0; i < b->batch_count; i++) {
        if (gb_under(b->batches[i].time.s, b->time_to_place.s))
            continue;
        slowest = gb_why_batch_time(x, a, i);
        break;
    }
    return slowest;
}
