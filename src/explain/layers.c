#include "explain/chains.h"

#include <math.h>
#include <string.h>

const gb_why *gb_why_count(gb_explainer *x, const gb_piece *p) {
    if (p->run.at.line != 0)
        return gb_why_run_count(x, p);
    return gb_stated_count(x, "count", p->name, &p->count);
}

/* ---- layers ------------------------------------------------------------------------ */

/* One depth as measured, or all of them. */
static const gb_why *measured(gb_explainer *x, const gb_take *t, const char *name,
                              double value, const char *formula) {
    const gb_layer *l = t->layer;
    const gb_why **depths =
        gb_arena_take(x->arena, l->depth_count, sizeof(const gb_why *));
    if (depths == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < l->depth_count; i++)
        depths[i] =
            gb_stated(x, "depth", t->piece->name, GB_LENGTH, &l->depths_m[i], NULL);
    return GB_WHY(x, name, GB_LENGTH, value, formula, .inputs = depths,
                  .input_count = l->depth_count, .of = t->piece->name);
}

static const gb_why *as_told(gb_explainer *x, const gb_take *t, const char *name,
                             gb_length depth) {
    const gb_layer *l = t->layer;
    if (l->depth_count == 0)
        return gb_fact(x, name, GB_LENGTH, depth.m,
                       l->back == GB_SCORED
                           ? N_("what a scored back takes, 1/8 in: common practice")
                           : N_("what a smooth back takes, 1/16 in: common practice"));
    if (l->depth_count == 1)
        return gb_stated(x, name, t->piece->name, GB_LENGTH, &l->depths_m[0], NULL);
    return measured(x, t, name, depth.m, "mean()");
}

const gb_why *gb_why_depth_in_front(gb_explainer *x, const gb_take *t) {
    gb_length mean;
    gb_length se;
    gb_layer_depth(t->layer, &mean, &se);
    return as_told(x, t, "depth_front", mean);
}

const gb_why *gb_why_depth(gb_explainer *x, const gb_take *t) {
    const gb_layer *l = t->layer;
    if (l->levels.block_count > 0)
        return gb_why_level_depth(x, t);
    if (l->kind == GB_SLAB && l->form.kind == GB_WEDGE)
        return gb_why_wedge_depth(x, t);
    if (l->fall.of_run > 0)
        return gb_why_sloped_depth(x, t, gb_why_depth_in_front(x, t));
    return as_told(x, t, "depth", t->depth);
}

const gb_why *gb_why_depth_error(gb_explainer *x, const gb_take *t) {
    if (t->layer->levels.block_count > 0)
        return gb_why_level_error(x, t);
    return measured(x, t, "depth_error", t->depth_se.m, "standard_error()");
}

static const gb_why *laid(gb_explainer *x, const gb_take *t) {
    bool both = t->layer->kind == GB_SLURRY && t->layer->faces == GB_BOTH_FACES;
    return GB_WHY(
        x, "each", GB_VOLUME, t->each.m3, both ? "2 * bedded * depth" : "bedded * depth",
        GB_INPUTS(gb_why_bedded(x, t->piece), gb_why_depth(x, t)), .of = t->piece->name);
}

const gb_why *gb_why_each(gb_explainer *x, const gb_take *t) {
    switch (t->layer->kind) {
    case GB_BED:
    case GB_SLURRY:
    case GB_SLAB:
        return isnan(t->area.m2) ? gb_why_form(x, t) : laid(x, t);
    case GB_JOINT:
    case GB_POINTING:
        return gb_why_joint(x, t);
    case GB_PARGE:
        return gb_why_parge(x, t);
    case GB_BLOCK:
        return gb_why_block_mortar(x, t);
    case GB_CORE:
        return gb_why_cores(x, t);
    default:
        return gb_stated(x, "each", t->piece->name, GB_VOLUME, &t->layer->volume.m3,
                         NULL);
    }
}

const gb_why *gb_why_net_of(gb_explainer *x, const gb_take *t) {
    const gb_why *known = gb_known(x, "net", t);
    if (known != NULL)
        return known;
    known = GB_WHY(x, "net", GB_VOLUME, t->net.m3, "count * each",
                   GB_INPUTS(gb_why_count(x, t->piece), gb_why_each(x, t)),
                   .of = t->piece->name);
    return gb_remember(x, "net", t, known);
}

/* ---- needs ------------------------------------------------------------------------- */

const gb_why *gb_why_waste(gb_explainer *x, const gb_job *job, const char *of) {
    for (size_t i = 0; i < job->waste_count; i++)
        if (strcmp(job->wastes[i].of.text, of) == 0)
            return gb_stated(x, "waste", of, GB_SHARE, &job->wastes[i].share.of_one,
                             NULL);
    return gb_fact(x, "waste", GB_SHARE, 0, N_("the job states none"));
}

static const gb_why **room_for_takes(gb_explainer *x, const gb_need *need) {
    const gb_why **room =
        gb_arena_take(x->arena, need->take_count + 1, sizeof(const gb_why *));
    x->failed = x->failed || room == NULL;
    return room;
}

const gb_why *gb_why_net(gb_explainer *x, const gb_mix_plan *mix) {
    const gb_need *n = &mix->need;
    const gb_why *known = gb_known(x, "net", mix);
    if (known != NULL)
        return known;
    const gb_why **nets = room_for_takes(x, n);
    if (nets == NULL)
        return NULL;
    for (size_t i = 0; i < n->take_count; i++)
        nets[i] = gb_why_net_of(x, n->takes[i]);
    known = GB_WHY(x, "net", GB_VOLUME, n->net.m3, "sum()", .inputs = nets,
                   .input_count = n->take_count, .of = n->mix->id);
    return gb_remember(x, "net", mix, known);
}

const gb_why *gb_why_need_waste(gb_explainer *x, const gb_about *a) {
    if (a->question != NULL)
        return gb_fact(x, "waste", GB_SHARE, a->question->waste.of_one,
                       N_("the option --waste"));
    return gb_why_waste(x, a->plan->job, a->mix->need.mix->id);
}

const gb_why *gb_why_gross(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "gross", GB_VOLUME, a->mix->need.gross.m3, "net * (1 + waste)",
                  GB_INPUTS(gb_why_net(x, a->mix), gb_why_need_waste(x, a)),
                  .of = a->mix->need.mix->id);
}

static const gb_why *spread_of(gb_explainer *x, const gb_take *t) {
    double m3 = t->net.m3 * t->spread.of_one;
    const gb_why *net = gb_why_net_of(x, t);
    if (!(t->depth_se.m > 0))
        return GB_WHY(x, "net_error", GB_VOLUME, m3, "net * core_spread",
                      GB_INPUTS(net, gb_why_core_spread(x)), .of = t->piece->name);
    return GB_WHY(x, "net_error", GB_VOLUME, m3, "net * depth_error / depth",
                  GB_INPUTS(net, gb_why_depth_error(x, t), gb_why_depth(x, t)),
                  .of = t->piece->name);
}

const gb_why *gb_why_spread(gb_explainer *x, const gb_about *a) {
    const gb_need *n = &a->mix->need;
    const gb_why **errors = room_for_takes(x, n);
    size_t count = 0;
    if (errors == NULL)
        return NULL;
    for (size_t i = 0; i < n->take_count; i++)
        if (n->takes[i]->spread.of_one > 0)
            errors[count++] = spread_of(x, n->takes[i]);
    const gb_why *net =
        GB_WHY(x, "net_error", GB_VOLUME, n->spread.m3 / (1.0 + n->waste.of_one),
               "root_of_squares()", .inputs = errors, .input_count = count);
    return GB_WHY(x, "spread", GB_VOLUME, n->spread.m3, "net_error * (1 + waste)",
                  GB_INPUTS(net, gb_why_need_waste(x, a)), .of = n->mix->id);
}

const gb_why *gb_why_bags_share(gb_explainer *x, const gb_about *a) {
    const gb_need *n = &a->mix->need;
    gb_mixed m = gb_mixed_of(a);
    const gb_why *parts[2] = {gb_why_yield_spread(x, &m)};
    size_t count = 1;
    if (n->spread.m3 > 0)
        parts[count++] = GB_WHY(
            x, "depth_share", GB_SHARE, n->spread.m3 / n->gross.m3, "spread / gross",
            GB_INPUTS(gb_why_spread(x, a), gb_why_gross(x, a)), .of = n->mix->id);
    return GB_WHY(x, "share", GB_SHARE, n->bags_spread / n->bags, "root_of_squares()",
                  .inputs = parts, .input_count = count, .of = n->mix->id,
                  .source =
                      N_("errors that do not depend on each other add up in squares"));
}

const gb_why *gb_why_bags_spread(gb_explainer *x, const gb_about *a) {
    const gb_need *n = &a->mix->need;
    return GB_WHY(x, "bags_spread", GB_PLAIN, n->bags_spread, "bags_needed * share",
                  GB_INPUTS(gb_why_bags_needed(x, a), gb_why_bags_share(x, a)),
                  .of = n->mix->id);
}

const gb_why *gb_why_layers_in_all(gb_explainer *x, const gb_about *a) {
    const gb_plan *plan = a->plan;
    const gb_why **all =
        gb_arena_take(x->arena, plan->take_count + 1, sizeof(const gb_why *));
    size_t n = 0;
    double m3 = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < plan->take_count; i++) {
        if (plan->takes[i].layer->kind != a->kind)
            continue;
        all[n++] = gb_why_net_of(x, &plan->takes[i]);
        m3 += plan->takes[i].net.m3;
    }
    return GB_WHY(x, "in_all", GB_VOLUME, m3, "sum()", .inputs = all, .input_count = n);
}
