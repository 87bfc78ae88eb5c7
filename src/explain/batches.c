#include "explain/chains.h"

#include "gaugebox/chance.h"
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

/* The stage that a batch belongs to; the last one of the mix when there are no batches.
 */
static const gb_stage_batches *stage_of(const gb_about *a, size_t batch) {
    const gb_batching *b = &a->mix->batching;
    size_t i = 0;
    while (i + 1 < b->stage_count && batch >= b->stages[i].first + b->stages[i].count)
        i++;
    return &b->stages[i];
}

/* What one stage takes of a mix that several take of. */
static const gb_why *stage_gross(gb_explainer *x, const gb_about *a,
                                 const gb_stage_batches *s) {
    const gb_need *n = &a->mix->need;
    const gb_why **nets = gb_arena_take(x->arena, s->take_count, sizeof(const gb_why *));
    if (nets == NULL) {
        x->failed = true;
        return NULL;
    }
    double net = 0;
    for (size_t i = 0; i < s->take_count; i++) {
        nets[i] = gb_why_net_of(x, n->takes[s->first_take + i]);
        net += n->takes[s->first_take + i]->net.m3;
    }
    const gb_why *sum = GB_WHY(x, "net", GB_VOLUME, net, "sum()", .inputs = nets,
                               .input_count = s->take_count, .of = id_of(a));
    return GB_WHY(x, "gross", GB_VOLUME, s->gross.m3, "net * (1 + waste)",
                  GB_INPUTS(sum, gb_why_need_waste(x, a)), .of = id_of(a),
                  .source = N_("of one stage of the work"));
}

static const gb_why *stage_needed(gb_explainer *x, const gb_about *a,
                                  const gb_stage_batches *s) {
    gb_mixed m = gb_mixed_of(a);
    if (a->mix->batching.stage_count == 1)
        return gb_why_bags_needed(x, a);
    return GB_WHY(x, "bags_needed", GB_PLAIN, s->bags_needed, "gross / yield",
                  GB_INPUTS(stage_gross(x, a, s), gb_why_yield(x, &m)), .of = id_of(a));
}

static const gb_why *stage_whole(gb_explainer *x, const gb_about *a,
                                 const gb_stage_batches *s) {
    return GB_WHY(x, "whole", GB_PLAIN, (double)s->bags_whole, "up(bags_needed, 1)",
                  GB_INPUTS(stage_needed(x, a, s)), .of = id_of(a));
}

/* The same of every stage, added up. */
typedef const gb_why *of_stage(gb_explainer *x, const gb_about *a,
                               const gb_stage_batches *s);
static const gb_why *of_all_stages(gb_explainer *x, const gb_about *a, const char *name,
                                   double value, of_stage *one) {
    const gb_batching *b = &a->mix->batching;
    const gb_why *all[GB_STAGES];
    if (b->stage_count == 1)
        return one(x, a, &b->stages[0]);
    for (size_t i = 0; i < b->stage_count; i++)
        all[i] = one(x, a, &b->stages[i]);
    return GB_WHY(x, name, GB_PLAIN, value, "sum()", .inputs = all,
                  .input_count = b->stage_count, .of = id_of(a));
}

/* ---- how many at once -------------------------------------------------------------- */

/* As stated, or a share of the size that the mixer is sold by. */
const gb_why *gb_why_usable(gb_explainer *x, const gb_about *a) {
    const gb_mixer *m = a->mix->batching.mixer;
    if (m->usable.m3 > 0)
        return gb_stated(x, "usable", m->name, GB_VOLUME, &m->usable.m3, NULL);
    double filled = gb_usual_filled(m->kind).of_one;
    const gb_why *share =
        m->filled.of_one > 0
            ? gb_stated(x, "filled", m->name, GB_SHARE, &m->filled.of_one, NULL)
            : gb_fact(x, "filled", GB_SHARE, filled,
                      N_("usual for this kind of mixer: common practice"));
    return GB_WHY(
        x, "usable", GB_VOLUME, gb_usable(m).m3, "rated * filled",
        GB_INPUTS(gb_stated(x, "rated", m->name, GB_VOLUME, &m->rated.m3, NULL), share),
        .of = m->name);
}

const gb_why *gb_why_mass_limit(gb_explainer *x, const gb_about *a) {
    const gb_mixer *m = a->mix->batching.mixer;
    return gb_stated(x, "mass_limit", m->name, GB_MASS, &m->most.kg, NULL);
}

/* What volume, mass and time each leave of a batch. */
static size_t limits(gb_explainer *x, const gb_about *a, const gb_why *all[3]) {
    gb_mixed m = gb_mixed_of(a);
    const gb_mixer *mixer = a->mix->batching.mixer;
    const gb_recipe *r = m.recipe;
    size_t n = 0;
    all[n++] =
        GB_WHY(x, "by_volume", GB_PLAIN, gb_usable(mixer).m3 / r->yield.m3,
               "usable / yield", GB_INPUTS(gb_why_usable(x, a), gb_why_yield(x, &m)));
    if (!isnan(mixer->most.kg))
        all[n++] = GB_WHY(x, "by_mass", GB_PLAIN, mixer->most.kg / gb_wet_mass(r).kg,
                          "mass_limit / wet",
                          GB_INPUTS(gb_why_mass_limit(x, a), gb_why_wet(x, &m)));
    double bag_time = a->mix->batching.bag_time.s;
    if (!isnan(bag_time)) {
        bool heat = a->mix->life.s != m.mix->life.s;
        all[n++] = GB_WHY(
            x, "by_time", GB_PLAIN, gb_life_to_place(a->mix).s / bag_time,
            heat ? "(life_in_heat - mixing) / bag_time" : "(life - mixing) / bag_time",
            GB_INPUTS(gb_why_life(x, a), gb_why_wet_mixing(x, a), gb_why_bag_time(x, a)));
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

static const gb_why *stage_count(gb_explainer *x, const gb_about *a,
                                 const gb_stage_batches *s) {
    const gb_why *most = gb_why_most(x, a);
    if (a->mix->batching.part_bags)
        return GB_WHY(x, "batches", GB_PLAIN, (double)s->count,
                      "up(bags_needed / most, 1)", GB_INPUTS(stage_needed(x, a, s), most),
                      .of = id_of(a));
    return GB_WHY(x, "batches", GB_PLAIN, (double)s->count, "up(whole / most, 1)",
                  GB_INPUTS(stage_whole(x, a, s), most), .of = id_of(a));
}

const gb_why *gb_why_batches(gb_explainer *x, const gb_about *a) {
    return of_all_stages(x, a, "batches", (double)a->mix->batching.batch_count,
                         stage_count);
}

static const gb_why *place_in_stage(gb_explainer *x, size_t number) {
    return gb_fact(x, "number", GB_PLAIN, (double)number,
                   N_("the batch's place in the list, of its stage"));
}

/* Whole bags dealt out to the batches of a stage as equally as they go, the first ones
   more; or the most that fits when that is a part of a bag. */
static const gb_why *share_of(gb_explainer *x, const gb_about *a, size_t batch) {
    const gb_batching *b = &a->mix->batching;
    if (b->part_bags)
        return gb_why_most(x, a);
    const gb_stage_batches *s = stage_of(a, batch);
    if (s->count == 0)
        return NULL;
    size_t i = batch - s->first;
    size_t bags = s->bags_whole / s->count + (i < s->bags_whole % s->count ? 1 : 0);
    return GB_WHY(
        x, "share", GB_PLAIN, (double)bags,
        "down((whole + batches - number) / batches, 1)",
        GB_INPUTS(stage_whole(x, a, s), stage_count(x, a, s), place_in_stage(x, i + 1)),
        .of = id_of(a));
}

static bool last_is_weighed(const gb_about *a) {
    return a->mix->need.mix->part_count > 0 || a->mix->batching.part_bags;
}

/* Bags in all batches of a stage but the last. */
static const gb_why *before_last(gb_explainer *x, const gb_about *a,
                                 const gb_stage_batches *s) {
    const gb_batching *b = &a->mix->batching;
    double n = (double)s->count;
    const gb_why *share = share_of(x, a, s->first + s->count - 1);
    if (share == NULL)
        return NULL;
    if (b->part_bags)
        return GB_WHY(x, "before", GB_PLAIN, (n - 1.0) * b->most_bags,
                      "(batches - 1) * most", GB_INPUTS(stage_count(x, a, s), share));
    return GB_WHY(x, "before", GB_PLAIN, (double)s->bags_whole - share->value,
                  "whole - share", GB_INPUTS(stage_whole(x, a, s), share));
}

static const gb_why *last_batch(gb_explainer *x, const gb_about *a,
                                const gb_stage_batches *s) {
    const gb_batching *b = &a->mix->batching;
    bool dab = s->count == 1 && gb_under(s->bags_needed, 0.25);
    size_t last = s->first + s->count - 1;
    const gb_why *step =
        gb_fact(x, "step", GB_PLAIN, dab ? 1.0 / 32.0 : 1.0 / 8.0, WEIGHABLE);
    const gb_why *share = share_of(x, a, last);
    const gb_why *before = before_last(x, a, s);
    const gb_why *needed = stage_needed(x, a, s);
    if (x->failed)
        return NULL;
    return GB_WHY(x, "bags", GB_PLAIN, b->batches[last].bags,
                  b->part_bags
                      ? "smaller(larger(step, up(bags_needed - before, step)), most)"
                      : "smaller(larger(step, up(bags_needed - before, step)), share)",
                  GB_INPUTS(step, needed, before, share), .of = id_of(a));
}

static const gb_why *batch_bags(gb_explainer *x, const gb_about *a, size_t i) {
    const gb_batching *b = &a->mix->batching;
    const gb_stage_batches *s = stage_of(a, i);
    if (i + 1 == s->first + s->count && last_is_weighed(a))
        return last_batch(x, a, s);
    return GB_WHY(x, "bags", GB_PLAIN, b->batches[i].bags,
                  b->part_bags ? "most" : "share", GB_INPUTS(share_of(x, a, i)),
                  .of = id_of(a));
}

static const gb_why *stage_bags(gb_explainer *x, const gb_about *a,
                                const gb_stage_batches *s) {
    const gb_batching *b = &a->mix->batching;
    if (!last_is_weighed(a))
        return GB_WHY(x, "bags", GB_PLAIN, (double)s->bags_whole, "whole",
                      GB_INPUTS(stage_whole(x, a, s)), .of = id_of(a));
    const gb_why *last = last_batch(x, a, s);
    const gb_why *before = before_last(x, a, s);
    if (last == NULL || before == NULL)
        return NULL;
    const gb_why *renamed =
        GB_WHY(x, "last", GB_PLAIN, b->batches[s->first + s->count - 1].bags, "bags",
               GB_INPUTS(last));
    return GB_WHY(x, "bags", GB_PLAIN, before->value + last->value, "before + last",
                  GB_INPUTS(before, renamed), .of = id_of(a));
}

/* What the job takes: all batches, or what the pots hold. */
static const gb_why *all_bags(gb_explainer *x, const gb_about *a) {
    const gb_batching *b = &a->mix->batching;
    if (a->mix->is_slurry || b->batch_count == 0)
        return GB_WHY(x, "bags", GB_PLAIN, gb_bags_used(a->mix), "bags_needed",
                      GB_INPUTS(gb_why_bags_needed(x, a)), .of = id_of(a));
    return of_all_stages(x, a, "bags", b->bags_gauged, stage_bags);
}

const gb_why *gb_why_whole_bags(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "whole", GB_PLAIN, gb_round(gb_bags_used(a->mix), 1, GB_UP),
                  "up(bags, 1)", GB_INPUTS(all_bags(x, a)), .of = id_of(a));
}

const gb_why *gb_why_bags_surely(gb_explainer *x, const gb_about *a) {
    gb_share sure = a->plan->job->sure;
    return GB_WHY(x, "surely", GB_PLAIN, gb_bags_surely(&a->mix->need, sure),
                  "larger(bags_needed + quantile * bags_spread, 0)",
                  GB_INPUTS(gb_why_bags_needed(x, a),
                            gb_fact(x, "quantile", GB_PLAIN, gb_normal_at(sure.of_one),
                                    N_("of a standard normal, for the chance of the "
                                       "option --sure")),
                            gb_why_bags_spread(x, a)),
                  .of = id_of(a));
}

const gb_why *gb_why_bought(gb_explainer *x, const gb_about *a) {
    const gb_why *used = all_bags(x, a);
    double bought = gb_bags_bought(a->plan->job, a->mix);
    bool blend = a->mix->need.mix->part_count == 0;
    if (used == NULL || !(bought > used->value))
        return used;
    return GB_WHY(
        x, "bought", GB_PLAIN, bought,
        blend ? "larger(bags, up(surely, 1))" : "larger(bags, surely)",
        GB_INPUTS(GB_WHY(x, "bags", GB_PLAIN, used->value, used->name, GB_INPUTS(used)),
                  gb_why_bags_surely(x, a)),
        .of = id_of(a));
}

const gb_why *gb_why_bags_in_mixer(gb_explainer *x, const gb_mixed *m, double m3,
                                   double bags) {
    const gb_why *mixer = gb_fact(x, "mixer", GB_VOLUME, m3, N_("the option --mixer"));
    double most = m3 / m->recipe->yield.m3;
    const gb_why *fits = GB_WHY(x, "fits", GB_PLAIN, most, "mixer / yield",
                                GB_INPUTS(mixer, gb_why_yield(x, m)), .of = m->mix->id);
    const gb_why *step =
        gb_fact(x, "step", GB_PLAIN, gb_batch_step(most),
                N_("a batch holds whole bags, or eighths of one when none fits whole: "
                   "common practice"));
    return GB_WHY(x, "bags", GB_PLAIN, bags, "down(fits, step)", GB_INPUTS(fits, step),
                  .of = m->mix->id);
}

static const gb_why *bags_in_mixer(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_bags_in_mixer(x, &m, a->concrete->mixer.m3, a->question->bags);
}

static const gb_why *asked_bags(gb_explainer *x, const gb_about *a) {
    const gb_mix_question *q = a->question;
    if (a->concrete != NULL && !isnan(a->concrete->mixer.m3))
        return bags_in_mixer(x, a);
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
        if (a->load != NULL && a->load->extra > 0)
            return gb_why_extra_bags(x, a);
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

/* ---- what a batch covers ----------------------------------------------------------- */

/* Gross need of the layers of a stage that come before this one: found for all of them at
   once. */
static const gb_why *gross_before(gb_explainer *x, const gb_about *a,
                                  const gb_stage_batches *s, const gb_take *take) {
    const gb_need *n = &a->mix->need;
    const gb_why *known = gb_known(x, "before", take);
    if (known != NULL)
        return known;
    const gb_why *sum =
        gb_fact(x, "before", GB_VOLUME, 0, N_("the first layer of the stage"));
    const gb_why *waste = gb_why_need_waste(x, a);
    for (size_t i = 0; i < s->take_count && sum != NULL; i++) {
        const gb_take *t = n->takes[s->first_take + i];
        (void)gb_remember(x, "before", t, sum);
        sum = GB_WHY(x, "before", GB_VOLUME,
                     sum->value + t->net.m3 * (1.0 + n->waste.of_one),
                     "before + net * (1 + waste)",
                     GB_INPUTS(sum, gb_why_net_of(x, t), waste), .of = t->piece->name);
    }
    return gb_known(x, "before", take);
}

/* Bags in the batches of a stage up to this one, none of them the last. */
static const gb_why *bags_so_far(gb_explainer *x, const gb_about *a,
                                 const gb_stage_batches *s, size_t batch) {
    const gb_batching *b = &a->mix->batching;
    size_t number = batch - s->first + 1;
    const gb_why *place = place_in_stage(x, number);
    if (b->part_bags)
        return GB_WHY(x, "so_far", GB_PLAIN, (double)number * b->most_bags,
                      "number * most", GB_INPUTS(place, gb_why_most(x, a)));
    if (s->count == 0)
        return NULL;
    size_t share = s->bags_whole / s->count;
    size_t more = s->bags_whole % s->count;
    double bags = (double)(number * share + (number < more ? number : more));
    return GB_WHY(x, "so_far", GB_PLAIN, bags,
                  "number * down(whole / batches, 1) + "
                  "smaller(number, whole - batches * down(whole / batches, 1))",
                  GB_INPUTS(place, stage_whole(x, a, s), stage_count(x, a, s)));
}

static const gb_why *end_of(gb_explainer *x, const gb_about *a, size_t batch,
                            const gb_stretch *stretch) {
    const gb_take *t = stretch->take;
    gb_mixed m = gb_mixed_of(a);
    const gb_stage_batches *s = stage_of(a, batch);
    const gb_why *count = gb_why_count(x, t->piece);
    if (batch + 1 == s->first + s->count)
        return GB_WHY(x, "to", GB_PLAIN, stretch->to, "count", GB_INPUTS(count),
                      .of = t->piece->name);
    return GB_WHY(x, "to", GB_PLAIN, stretch->to,
                  "smaller(count, (so_far * yield - before) / (each * (1 + waste)))",
                  GB_INPUTS(count, bags_so_far(x, a, s, batch), gb_why_yield(x, &m),
                            gross_before(x, a, s, t), gb_why_each(x, t),
                            gb_why_need_waste(x, a)),
                  .of = t->piece->name);
}

/* Where the batch before ended, in the same layer. */
static const gb_why *start_of(gb_explainer *x, const gb_about *a, size_t batch,
                              const gb_stretch *s) {
    if (batch == stage_of(a, batch)->first || s->from <= 0)
        return gb_fact(x, "from", GB_PLAIN, 0, N_("the layer begins here"));
    const gb_batch *before = &a->mix->batching.batches[batch - 1];
    const gb_stretch *end = &before->stretches[before->stretch_count - 1];
    return GB_WHY(x, "from", GB_PLAIN, s->from, "to",
                  GB_INPUTS(end_of(x, a, batch - 1, end)), .of = s->take->piece->name);
}

const gb_why *gb_why_end_of(gb_explainer *x, const gb_about *a, size_t batch,
                            const gb_stretch *stretch) {
    return end_of(x, a, batch, stretch);
}

const gb_why *gb_why_start_of(gb_explainer *x, const gb_about *a, size_t batch,
                              const gb_stretch *stretch) {
    return start_of(x, a, batch, stretch);
}

const gb_why *gb_why_batch_bags(gb_explainer *x, const gb_about *a, size_t batch) {
    return batch_bags(x, a, batch);
}

/* A pot takes its part of the pieces, one pot after the other. */
static const gb_why *pot_end(gb_explainer *x, double at) {
    return gb_fact(x, "to", GB_PLAIN, at,
                   N_("pots take the pieces in their order, each as much as it is for"));
}

static bool is_pot(const gb_about *a) {
    return a->load != NULL && a->load->pot != NULL;
}

const gb_why *gb_why_from(gb_explainer *x, const gb_about *a) {
    if (is_pot(a))
        return gb_fact(x, "from", GB_PLAIN, a->stretch->from,
                       N_("where the pot before it ended"));
    if (a->load != NULL)
        return gb_fact(x, "from", GB_PLAIN, a->stretch->from,
                       N_("where the batch before it ended, or its last whole stone"));
    return start_of(x, a, a->batch, a->stretch);
}

const gb_why *gb_why_to(gb_explainer *x, const gb_about *a) {
    if (is_pot(a))
        return pot_end(x, a->stretch->to);
    if (a->load != NULL)
        return gb_fact(x, "to", GB_PLAIN, a->stretch->to,
                       N_("what its bags make, without a rest that is thrown away"));
    return end_of(x, a, a->batch, a->stretch);
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
