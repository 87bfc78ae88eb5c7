#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>

#define WHOLE_BAGS N_("whole bags, eighths below one: common practice")
#define WEIGHABLE                                                                        \
    N_("a part of a bag is weighed in eighths, a dab in thirty-seconds: common "         \
       "practice")

static const char *id_of(const gb_about *a) {
    return a->mix->need.mix->id;
}

/* ---- bags in all ------------------------------------------------------------------- */

const gb_why *gb_why_bags_needed(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return GB_WHY(x, "bags_needed", GB_PLAIN, a->mix->need.bags, "gross / yield",
                  GB_INPUTS(gb_why_gross(x, a), gb_why_yield(x, &m)), .of = id_of(a));
}

const gb_why *gb_why_whole_bags(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "whole", GB_PLAIN, (double)a->mix->batching.bags_whole,
                  "up(bags_needed, 1)", GB_INPUTS(gb_why_bags_needed(x, a)),
                  .of = id_of(a));
}

/* ---- how many at once -------------------------------------------------------------- */

const gb_why *gb_why_usable(gb_explainer *x, const gb_job *job) {
    return gb_stated(x, "usable", NULL, GB_VOLUME, &job->crew.mixer.usable.m3, NULL);
}

const gb_why *gb_why_mass_limit(gb_explainer *x, const gb_job *job) {
    return gb_stated(x, "mass_limit", NULL, GB_MASS, &job->crew.mixer.most.kg, NULL);
}

/* What volume, mass and time each leave of a batch. */
static size_t limits(gb_explainer *x, const gb_about *a, const gb_why *all[3]) {
    gb_mixed m = gb_mixed_of(a);
    const gb_job *job = a->plan->job;
    const gb_recipe *r = m.recipe;
    size_t n = 0;
    all[n++] =
        GB_WHY(x, "by_volume", GB_PLAIN, job->crew.mixer.usable.m3 / r->yield.m3,
               "usable / yield", GB_INPUTS(gb_why_usable(x, job), gb_why_yield(x, &m)));
    if (!isnan(job->crew.mixer.most.kg))
        all[n++] = GB_WHY(x, "by_mass", GB_PLAIN,
                          job->crew.mixer.most.kg / (r->dry.kg + r->water_usual.kg),
                          "mass_limit / wet",
                          GB_INPUTS(gb_why_mass_limit(x, job), gb_why_wet(x, &m)));
    double bag_time = a->mix->batching.bag_time.s;
    if (!isnan(bag_time)) {
        bool heat = a->mix->life.s != m.mix->life.s;
        all[n++] = GB_WHY(x, "by_time", GB_PLAIN, a->mix->life.s / bag_time,
                          heat ? "life_in_heat / bag_time" : "life / bag_time",
                          GB_INPUTS(gb_why_life(x, a), gb_why_bag_time(x, a)));
    }
    return n;
}

const gb_why *gb_why_most(gb_explainer *x, const gb_about *a) {
    const gb_why *known = gb_known(x, "most", a->mix);
    if (known != NULL)
        return known;
    const gb_why *all[3];
    size_t n = limits(x, a, all);
    double least = GB_NONE;
    for (size_t i = 0; i < n && !x->failed; i++)
        least = gb_smaller(least, all[i]->value);
    const gb_why *fits =
        GB_WHY(x, "fits", GB_PLAIN, least, "least()", .inputs = all, .input_count = n);
    known = GB_WHY(x, "most", GB_PLAIN, a->mix->batching.most_bags,
                   a->mix->batching.part_bags ? "down(fits, 1/8)" : "down(fits, 1)",
                   GB_INPUTS(fits), .of = id_of(a), .source = WHOLE_BAGS);
    return gb_remember(x, "most", a->mix, known);
}

const gb_why *gb_why_next(gb_explainer *x, const gb_about *a) {
    bool part = a->mix->batching.part_bags;
    return GB_WHY(x, "next", GB_PLAIN, a->mix->batching.most_bags + (part ? 0.125 : 1.0),
                  part ? "most + 1/8" : "most + 1", GB_INPUTS(gb_why_most(x, a)),
                  .of = id_of(a));
}

/* ---- the batches ------------------------------------------------------------------- */

const gb_why *gb_why_batches(gb_explainer *x, const gb_about *a) {
    const gb_batching *b = &a->mix->batching;
    const gb_why *most = gb_why_most(x, a);
    if (b->part_bags)
        return GB_WHY(x, "batches", GB_PLAIN, (double)b->batch_count,
                      "up(bags_needed / most, 1)",
                      GB_INPUTS(gb_why_bags_needed(x, a), most), .of = id_of(a));
    return GB_WHY(x, "batches", GB_PLAIN, (double)b->batch_count, "up(whole / most, 1)",
                  GB_INPUTS(gb_why_whole_bags(x, a), most), .of = id_of(a));
}

/* Whole bags dealt out to the batches as equally as they go, the first ones more; or the
   most that fits when that is a part of a bag. */
static const gb_why *share_of(gb_explainer *x, const gb_about *a, size_t i) {
    const gb_batching *b = &a->mix->batching;
    if (b->part_bags)
        return gb_why_most(x, a);
    size_t n = b->batch_count;
    if (n == 0)
        return NULL;
    size_t bags = b->bags_whole / n + (i < b->bags_whole % n ? 1 : 0);
    return GB_WHY(x, "share", GB_PLAIN, (double)bags,
                  "down((whole + batches - number) / batches, 1)",
                  GB_INPUTS(gb_why_whole_bags(x, a), gb_why_batches(x, a),
                            gb_fact(x, "number", GB_PLAIN, (double)(i + 1),
                                    N_("the batch's place in the list"))),
                  .of = id_of(a));
}

static bool last_is_weighed(const gb_about *a) {
    return a->mix->need.mix->part_count > 0 || a->mix->batching.part_bags;
}

/* Bags in all batches but the last. */
static const gb_why *before_last(gb_explainer *x, const gb_about *a) {
    const gb_batching *b = &a->mix->batching;
    double n = (double)b->batch_count;
    const gb_why *share = share_of(x, a, b->batch_count - 1);
    if (share == NULL)
        return NULL;
    if (b->part_bags)
        return GB_WHY(x, "before", GB_PLAIN, (n - 1.0) * b->most_bags,
                      "(batches - 1) * most", GB_INPUTS(gb_why_batches(x, a), share));
    return GB_WHY(x, "before", GB_PLAIN, (double)b->bags_whole - share->value,
                  "whole - share", GB_INPUTS(gb_why_whole_bags(x, a), share));
}

static const gb_why *last_batch(gb_explainer *x, const gb_about *a) {
    const gb_batching *b = &a->mix->batching;
    bool dab = b->batch_count == 1 && gb_under(b->bags_needed, 0.25);
    const gb_why *step =
        gb_fact(x, "step", GB_PLAIN, dab ? 1.0 / 32.0 : 1.0 / 8.0, WEIGHABLE);
    const gb_why *share = share_of(x, a, b->batch_count - 1);
    const gb_why *before = before_last(x, a);
    const gb_why *needed = gb_why_bags_needed(x, a);
    if (x->failed)
        return NULL;
    return GB_WHY(x, "bags", GB_PLAIN, b->batches[b->batch_count - 1].bags,
                  b->part_bags
                      ? "smaller(larger(step, up(bags_needed - before, step)), most)"
                      : "smaller(larger(step, up(bags_needed - before, step)), share)",
                  GB_INPUTS(step, needed, before, share), .of = id_of(a));
}

static const gb_why *batch_bags(gb_explainer *x, const gb_about *a, size_t i) {
    const gb_batching *b = &a->mix->batching;
    if (i + 1 == b->batch_count && last_is_weighed(a))
        return last_batch(x, a);
    return GB_WHY(x, "bags", GB_PLAIN, b->batches[i].bags,
                  b->part_bags ? "most" : "share", GB_INPUTS(share_of(x, a, i)),
                  .of = id_of(a));
}

/* What the job takes: all batches, or what the pots hold. */
static const gb_why *all_bags(gb_explainer *x, const gb_about *a) {
    const gb_batching *b = &a->mix->batching;
    if (a->mix->is_slurry || b->batch_count == 0)
        return GB_WHY(x, "bags", GB_PLAIN, gb_bags_used(a->mix), "bags_needed",
                      GB_INPUTS(gb_why_bags_needed(x, a)), .of = id_of(a));
    if (!last_is_weighed(a))
        return GB_WHY(x, "bags", GB_PLAIN, b->bags_gauged, "whole",
                      GB_INPUTS(gb_why_whole_bags(x, a)), .of = id_of(a));
    const gb_why *last = last_batch(x, a);
    const gb_why *renamed =
        last == NULL ? NULL
                     : GB_WHY(x, "last", GB_PLAIN, last->value, "bags", GB_INPUTS(last));
    return GB_WHY(x, "bags", GB_PLAIN, b->bags_gauged, "before + last",
                  GB_INPUTS(before_last(x, a), renamed), .of = id_of(a));
}

static const gb_why *asked_bags(gb_explainer *x, const gb_about *a) {
    const gb_mix_question *q = a->question;
    if (isnan(q->wanted.m3))
        return gb_fact(x, "bags", GB_PLAIN, q->bags,
                       N_("the option --bags; one without it"));
    gb_mixed m = gb_mixed_of(a);
    return GB_WHY(
        x, "bags", GB_PLAIN, q->bags, "wanted / yield",
        GB_INPUTS(
            gb_fact(x, "wanted", GB_VOLUME, q->wanted.m3,
                    N_("the option --make, or --area by --depth, and --waste on it")),
            gb_why_yield(x, &m)));
}

static const gb_why *half_batch(gb_explainer *x, const gb_about *a) {
    const gb_why *whole = batch_bags(x, a, 0);
    if (whole == NULL)
        return NULL;
    const gb_why *first =
        GB_WHY(x, "first_batch", GB_PLAIN, whole->value, "bags", GB_INPUTS(whole));
    return GB_WHY(x, "bags", GB_PLAIN, whole->value / 2.0, "first_batch / 2",
                  GB_INPUTS(first), .of = id_of(a));
}

const gb_why *gb_why_bags(gb_explainer *x, const gb_about *a) {
    switch (a->amount) {
    case GB_ONE_BAG:
        return gb_fact(x, "bags", GB_PLAIN, 1, N_("one bag"));
    case GB_ONE_BATCH:
        return batch_bags(x, a, a->batch);
    case GB_HALF_BATCH:
        return half_batch(x, a);
    case GB_MOST_BATCH:
        return gb_why_most(x, a);
    case GB_FIRST_CHECK:
        return gb_why_first_check(x, a, GB_CHECK_BAGS);
    case GB_ONE_POT:
        return gb_why_pot_bags(x, a);
    case GB_ALL_OF_IT:
        return all_bags(x, a);
    case GB_ASKED_FOR:
        return asked_bags(x, a);
    case GB_NO_AMOUNT:
        break;
    }
    return NULL;
}

/* ---- time -------------------------------------------------------------------------- */

/* Area in a second, as stated or as treads. */
const gb_why *gb_why_area_pace(gb_explainer *x, const gb_job *job) {
    const gb_pace *pace = &job->crew.pace;
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

static const gb_why *volume_pace(gb_explainer *x, const gb_job *job) {
    return gb_keep_why(x, (gb_why){.name = "volume_pace",
                                   .unit = GB_VOLUME_PACE,
                                   .value = job->crew.pace.m3_s,
                                   .place = gb_places_find(x->places, &job->crew.pace)});
}

/* The area that one bag covers where it lies thinnest, waste counted in. */
static const gb_why *bag_area(gb_explainer *x, const gb_about *a) {
    const gb_need *n = &a->mix->need;
    gb_mixed m = gb_mixed_of(a);
    const gb_why **areas = gb_arena_take(x->arena, n->take_count, sizeof(const gb_why *));
    if (areas == NULL) {
        x->failed = true;
        return NULL;
    }
    double most = 0;
    for (size_t i = 0; i < n->take_count; i++) {
        const gb_take *t = n->takes[i];
        double area =
            m.recipe->yield.m3 * t->area.m2 / (t->each.m3 * (1.0 + n->waste.of_one));
        areas[i] =
            GB_WHY(x, "bag_area", GB_AREA, area, "yield * bedded / (each * (1 + waste))",
                   GB_INPUTS(gb_why_yield(x, &m), gb_why_bedded(x, t->piece),
                             gb_why_each(x, t), gb_why_need_waste(x, a)),
                   .of = t->piece->name);
        most = gb_larger(most, area);
    }
    return GB_WHY(x, "bag_area", GB_AREA, most, "most()", .inputs = areas,
                  .input_count = n->take_count, .of = id_of(a));
}

const gb_why *gb_why_bag_time(gb_explainer *x, const gb_about *a) {
    const gb_job *job = a->plan->job;
    gb_mixed m = gb_mixed_of(a);
    double s = a->mix->batching.bag_time.s;
    if (!isnan(job->crew.pace.m3_s))
        return GB_WHY(x, "bag_time", GB_DURATION, s, "yield / volume_pace",
                      GB_INPUTS(gb_why_yield(x, &m), volume_pace(x, job)));
    return GB_WHY(x, "bag_time", GB_DURATION, s, "bag_area / pace",
                  GB_INPUTS(bag_area(x, a), gb_why_area_pace(x, job)));
}

/* ---- what a batch covers ----------------------------------------------------------- */

/* Gross need of the layers that come before this one: found for all of them at once. */
static const gb_why *gross_before(gb_explainer *x, const gb_about *a,
                                  const gb_take *take) {
    const gb_need *n = &a->mix->need;
    const gb_why *known = gb_known(x, "before", take);
    if (known != NULL)
        return known;
    const gb_why *sum =
        gb_fact(x, "before", GB_VOLUME, 0, N_("the first layer of the mix"));
    const gb_why *waste = gb_why_need_waste(x, a);
    for (size_t i = 0; i < n->take_count && sum != NULL; i++) {
        const gb_take *t = n->takes[i];
        (void)gb_remember(x, "before", t, sum);
        sum = GB_WHY(x, "before", GB_VOLUME,
                     sum->value + t->net.m3 * (1.0 + n->waste.of_one),
                     "before + net * (1 + waste)",
                     GB_INPUTS(sum, gb_why_net_of(x, t), waste), .of = t->piece->name);
    }
    return gb_known(x, "before", take);
}

/* Bags in the first i + 1 batches, none of them the last. */
static const gb_why *bags_so_far(gb_explainer *x, const gb_about *a, size_t i) {
    const gb_batching *b = &a->mix->batching;
    size_t number = i + 1;
    const gb_why *place = gb_fact(x, "number", GB_PLAIN, (double)number,
                                  N_("the batch's place in the list"));
    if (b->part_bags)
        return GB_WHY(x, "so_far", GB_PLAIN, (double)number * b->most_bags,
                      "number * most", GB_INPUTS(place, gb_why_most(x, a)));
    if (b->batch_count == 0)
        return NULL;
    size_t share = b->bags_whole / b->batch_count;
    size_t more = b->bags_whole % b->batch_count;
    double bags = (double)(number * share + (number < more ? number : more));
    return GB_WHY(x, "so_far", GB_PLAIN, bags,
                  "number * down(whole / batches, 1) + "
                  "smaller(number, whole - batches * down(whole / batches, 1))",
                  GB_INPUTS(place, gb_why_whole_bags(x, a), gb_why_batches(x, a)));
}

static const gb_why *end_of(gb_explainer *x, const gb_about *a, size_t batch,
                            const gb_stretch *s) {
    const gb_take *t = s->take;
    gb_mixed m = gb_mixed_of(a);
    const gb_why *count = gb_why_count(x, t->piece);
    if (batch + 1 == a->mix->batching.batch_count)
        return GB_WHY(x, "to", GB_PLAIN, s->to, "count", GB_INPUTS(count),
                      .of = t->piece->name);
    return GB_WHY(x, "to", GB_PLAIN, s->to,
                  "smaller(count, (so_far * yield - before) / (each * (1 + waste)))",
                  GB_INPUTS(count, bags_so_far(x, a, batch), gb_why_yield(x, &m),
                            gross_before(x, a, t), gb_why_each(x, t),
                            gb_why_need_waste(x, a)),
                  .of = t->piece->name);
}

/* Where the batch before ended, in the same layer. */
static const gb_why *start_of(gb_explainer *x, const gb_about *a, size_t batch,
                              const gb_stretch *s) {
    if (batch == 0 || s->from <= 0)
        return gb_fact(x, "from", GB_PLAIN, 0, N_("the layer begins here"));
    const gb_batch *before = &a->mix->batching.batches[batch - 1];
    const gb_stretch *end = &before->stretches[before->stretch_count - 1];
    return GB_WHY(x, "from", GB_PLAIN, s->from, "to",
                  GB_INPUTS(end_of(x, a, batch - 1, end)), .of = s->take->piece->name);
}

const gb_why *gb_why_from(gb_explainer *x, const gb_about *a) {
    return start_of(x, a, a->batch, a->stretch);
}

const gb_why *gb_why_to(gb_explainer *x, const gb_about *a) {
    return end_of(x, a, a->batch, a->stretch);
}

static double area_of(const gb_batch *batch) {
    double area = 0;
    for (size_t i = 0; i < batch->stretch_count; i++)
        area += (batch->stretches[i].to - batch->stretches[i].from) *
                batch->stretches[i].take->area.m2;
    return area;
}

static const gb_why *batch_area(gb_explainer *x, const gb_about *a, size_t batch) {
    const gb_batch *b = &a->mix->batching.batches[batch];
    const gb_why **areas =
        gb_arena_take(x->arena, b->stretch_count + 1, sizeof(const gb_why *));
    if (areas == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < b->stretch_count; i++) {
        const gb_stretch *s = &b->stretches[i];
        areas[i] = GB_WHY(x, "covered", GB_AREA, (s->to - s->from) * s->take->area.m2,
                          "(to - from) * bedded",
                          GB_INPUTS(end_of(x, a, batch, s), start_of(x, a, batch, s),
                                    gb_why_bedded(x, s->take->piece)),
                          .of = s->take->piece->name);
    }
    return GB_WHY(x, "covered", GB_AREA, area_of(b), "sum()", .inputs = areas,
                  .input_count = b->stretch_count);
}

/* Of the batch that takes longest. */
const gb_why *gb_why_time_to_place(gb_explainer *x, const gb_about *a) {
    const gb_batching *b = &a->mix->batching;
    const gb_job *job = a->plan->job;
    gb_mixed m = gb_mixed_of(a);
    bool by_volume = !isnan(job->crew.pace.m3_s);
    size_t slowest = 0;
    for (size_t i = 1; i < b->batch_count; i++)
        if (by_volume ? b->batches[i].bags > b->batches[slowest].bags
                      : area_of(&b->batches[i]) > area_of(&b->batches[slowest]))
            slowest = i;
    if (by_volume)
        return GB_WHY(x, "time", GB_DURATION, b->time_to_place.s,
                      "bags * yield / volume_pace",
                      GB_INPUTS(batch_bags(x, a, slowest), gb_why_yield(x, &m),
                                volume_pace(x, job)));
    return GB_WHY(x, "time", GB_DURATION, b->time_to_place.s, "covered / pace",
                  GB_INPUTS(batch_area(x, a, slowest), gb_why_area_pace(x, job)));
}

/* ---- what the first batch tells ---------------------------------------------------- */

static const gb_why *fewer(gb_explainer *x, const gb_about *a, const gb_why *pieces) {
    const gb_first_check *f = &a->mix->first_check;
    return GB_WHY(x, "fewer", GB_PLAIN, (double)f->fewer,
                  f->left > 0 ? "pieces" : "pieces - 1", GB_INPUTS(pieces));
}

static const gb_why *check_bags(gb_explainer *x, const gb_about *a, const gb_why *to,
                                const gb_why *few) {
    bool blend = a->mix->need.mix->part_count == 0;
    const gb_first_check *f = &a->mix->first_check;
    return GB_WHY(x, "bags", GB_PLAIN, gb_round(f->bags, blend ? 1.0 : 0.125, GB_UP),
                  blend ? "up(bags_needed * to / fewer, 1)"
                        : "up(bags_needed * to / fewer, 1/8)",
                  GB_INPUTS(gb_why_bags_needed(x, a), to, few), .source = WEIGHABLE);
}

const gb_why *gb_why_first_check(gb_explainer *x, const gb_about *a,
                                 gb_check_value which) {
    const gb_first_check *f = &a->mix->first_check;
    const gb_why *to = end_of(x, a, 0, &a->mix->batching.batches[0].stretches[0]);
    const gb_why *pieces = GB_WHY(x, "pieces", GB_PLAIN, (double)f->pieces, "down(to, 1)",
                                  GB_INPUTS(to), .of = f->take->piece->name);
    const gb_why *few = fewer(x, a, pieces);
    switch (which) {
    case GB_CHECK_PIECES:
        return pieces;
    case GB_CHECK_LEFT:
        return GB_WHY(x, "left", GB_PLAIN, f->left, "to - pieces", GB_INPUTS(to, pieces));
    case GB_CHECK_FEWER:
        return few;
    case GB_CHECK_DEPTH:
        return GB_WHY(x, "deeper", GB_LENGTH, f->depth.m, "depth * to / fewer",
                      GB_INPUTS(gb_why_depth(x, f->take), to, few));
    case GB_CHECK_GROSS:
        return GB_WHY(x, "more", GB_VOLUME, f->gross.m3, "gross * to / fewer",
                      GB_INPUTS(gb_why_gross(x, a), to, few));
    case GB_CHECK_BAGS:
        return check_bags(x, a, to, few);
    }
    return NULL;
}
