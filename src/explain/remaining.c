#include "explain/chains.h"

#include "gaugebox/chance.h"
#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

/* What a batch log leaves of a plan. Its rows are added up by the engine; the sums stand
   here as they came. */

#define IN_LOG   N_("the row of the batch log")
#define OF_LOG   N_("added up over the rows of the batch log that say what they set")
#define MEASURED N_("of the depths that the batch log holds")

static const char *id_of(const gb_about *a) {
    return a->mix->need.mix->id;
}

static const gb_why *waste_of(gb_explainer *x, const gb_about *a) {
    return gb_why_need_waste(x, a);
}

/* ---- so far ------------------------------------------------------------------------ */

static const gb_why *bags(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "bags", GB_PLAIN, a->left->bags, OF_LOG);
}
static const gb_why *thrown(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "thrown", GB_PLAIN, a->left->thrown, OF_LOG);
}
static const gb_why *work(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "work", GB_PLAIN, a->left->work,
                   N_("what the log's batches set, as net volume by the plan over the "
                      "planned yield of a bag"));
}
static const gb_why *planned_ratio(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "planned_ratio", GB_PLAIN, 1.0 + a->mix->need.waste.of_one,
                  "1 + waste", GB_INPUTS(waste_of(x, a)), .of = id_of(a));
}
static const gb_why *ratio(gb_explainer *x, const gb_about *a) {
    if (!(a->left->work > 0))
        return planned_ratio(x, a);
    return GB_WHY(x, "ratio", GB_PLAIN, a->left->bags / a->left->work, "bags / work",
                  GB_INPUTS(bags(x, a), work(x, a)), .of = id_of(a));
}
static const gb_why *set_area(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "set_area", GB_AREA, a->left->set_area.m2,
                   N_("bedded area of what the log's batches set"));
}
static const gb_why *planned_depth(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "planned_depth", GB_LENGTH, a->left->planned.m,
                   N_("planned depths of what was set, their mean by area"));
}
static const gb_why *kept_bags(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "kept", GB_PLAIN, a->left->bags - a->left->thrown, "bags - thrown",
                  GB_INPUTS(bags(x, a), thrown(x, a)), .of = id_of(a));
}
static const gb_why *planned_yield(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_yield(x, &m);
}
static const gb_why *in_place(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "in_place", GB_LENGTH, a->left->in_place.m, "kept * yield / set_area",
        GB_INPUTS(kept_bags(x, a), planned_yield(x, a), set_area(x, a)), .of = id_of(a));
}
static const gb_why *depth_mean(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "depth", GB_LENGTH, a->left->depth_m, MEASURED);
}
static const gb_why *depth_sd(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "sd", GB_LENGTH, a->left->depth_sd_m, MEASURED);
}
static const gb_why *depth_count(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "n", GB_PLAIN, (double)a->left->depth_count, MEASURED);
}
static const gb_why *depth_se(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "se", GB_LENGTH, a->left->depth_se_m, "sd / sqrt(n)",
                  GB_INPUTS(depth_sd(x, a), depth_count(x, a)), .of = id_of(a));
}
static const gb_why *real_yield(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "real_yield", GB_VOLUME, a->left->yield.m3, "set_area * depth / kept",
        GB_INPUTS(set_area(x, a), depth_mean(x, a), kept_bags(x, a)), .of = id_of(a));
}

/* ---- what is left ------------------------------------------------------------------ */

static const gb_why *left_pieces(gb_explainer *x, const gb_about *a) {
    const gb_take_left *t = a->take_left;
    return GB_WHY(
        x, "left", GB_PLAIN, t->left, "larger(count - done, 0)",
        GB_INPUTS(gb_why_count(x, t->take->piece),
                  gb_fact(x, "done", GB_PLAIN, t->done, N_("as the batch log has it"))),
        .of = t->take->piece->name);
}
static const gb_why *left_net(gb_explainer *x, const gb_about *a) {
    const gb_take_left *t = a->take_left;
    return GB_WHY(x, "left_net", GB_VOLUME, t->net.m3, "left * each",
                  GB_INPUTS(left_pieces(x, a), gb_why_each(x, t->take)),
                  .of = t->take->piece->name);
}
static const gb_why *left_count(gb_explainer *x, const gb_about *a) {
    return gb_why_count(x, a->take_left->take->piece);
}
static const gb_why *left_work(gb_explainer *x, const gb_about *a) {
    return gb_fact(
        x, "left_work", GB_PLAIN, a->left->left,
        N_("all that is left, as net volume by the plan over the planned yield "
           "of a bag"));
}
static const gb_why *left_bags(gb_explainer *x, const gb_about *a) {
    const gb_why *k = ratio(x, a);
    if (k == NULL)
        return NULL;
    return GB_WHY(x, "left_bags", GB_PLAIN, a->left->forecast.bags, "ratio * left_work",
                  GB_INPUTS(GB_WHY(x, "ratio", GB_PLAIN, k->value, k->name, GB_INPUTS(k)),
                            left_work(x, a)),
                  .of = id_of(a));
}
static const gb_why *deviation(gb_explainer *x, const gb_about *a) {
    const gb_mix_left *m = a->left;
    if (!m->by_plan)
        return gb_fact(
            x, "deviation", GB_PLAIN, m->forecast.deviation,
            N_("of the bags to finish, by how the batches so far differ: ratio "
               "estimate, Cochran, Sampling Techniques, chapter 6 (from "
               "memory)"));
    return GB_WHY(x, "deviation", GB_PLAIN, m->forecast.deviation,
                  "left_bags * planned_share",
                  GB_INPUTS(left_bags(x, a),
                            gb_fact(x, "planned_share", GB_SHARE,
                                    a->mix->need.bags_spread / a->mix->need.bags,
                                    N_("one standard deviation of the plan's bags, as a "
                                       "part of them"))),
                  .of = id_of(a));
}
static const gb_why *sure(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "sure", GB_SHARE, a->remaining->outlook->sure.of_one,
                   N_("the option --sure; 90 % without it"));
}
static const gb_why *surely(gb_explainer *x, const gb_about *a) {
    const gb_mix_left *m = a->left;
    double share = a->remaining->outlook->sure.of_one;
    size_t df = m->forecast.df;
    double q = df == 0 ? gb_normal_at(share) : gb_t_at(share, df);
    return GB_WHY(x, "surely", GB_PLAIN, m->bags_sure,
                  "larger(left_bags + quantile * deviation, 0)",
                  GB_INPUTS(left_bags(x, a),
                            gb_fact(x, "quantile", GB_PLAIN, q,
                                    df == 0 ? N_("of a standard normal, for that chance")
                                            : N_("of Student's t with one degree less "
                                                 "than there are batches")),
                            deviation(x, a)),
                  .of = id_of(a));
}
static const gb_why *as_mass(gb_explainer *x, const gb_about *a, const gb_why *count) {
    gb_mixed m = gb_mixed_of(a);
    if (count == NULL)
        return NULL;
    return GB_WHY(x, "mass", GB_MASS, count->value * a->mix->recipe.bag.kg, "count * bag",
                  GB_INPUTS(GB_WHY(x, "count", GB_PLAIN, count->value, count->name,
                                   GB_INPUTS(count)),
                            gb_why_bag(x, &m)),
                  .of = id_of(a));
}
static const gb_why *left_mass(gb_explainer *x, const gb_about *a) {
    return as_mass(x, a, left_bags(x, a));
}
static const gb_why *surely_mass(gb_explainer *x, const gb_about *a) {
    return as_mass(x, a, surely(x, a));
}
static const gb_why *surely_whole(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "whole", GB_PLAIN, gb_round(a->left->bags_sure, 1, GB_UP),
                  "up(surely, 1)", GB_INPUTS(surely(x, a)), .of = id_of(a));
}
static const gb_why *batch_bags(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "batch_bags", GB_PLAIN, a->left->batch_bags,
                   N_("a batch as the batch sheet has it, or its smallest pot"));
}
static const gb_why *batches(gb_explainer *x, const gb_about *a) {
    const gb_mix_left *m = a->left;
    return GB_WHY(x, "batches", GB_PLAIN,
                  gb_round(m->forecast.bags / m->batch_bags, 1, GB_UP),
                  "up(left_bags / batch_bags, 1)",
                  GB_INPUTS(left_bags(x, a), batch_bags(x, a)), .of = id_of(a));
}
static const gb_why *most_batches(gb_explainer *x, const gb_about *a) {
    const gb_mix_left *m = a->left;
    return GB_WHY(x, "batches", GB_PLAIN,
                  gb_round(m->bags_sure / m->batch_bags, 1, GB_UP),
                  "up(surely / batch_bags, 1)", GB_INPUTS(surely(x, a), batch_bags(x, a)),
                  .of = id_of(a));
}
static const gb_why *chance_bags(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "whole", GB_PLAIN, a->bags, N_("so many whole bags at hand"));
}
static const gb_why *chance(gb_explainer *x, const gb_about *a) {
    return gb_fact(
        x, "chance", GB_SHARE, gb_certainty(&a->left->forecast, a->bags).of_one,
        N_("of Student's t, or of a normal by the plan, about the bags to finish "
           "with their deviation: what lies below so many"));
}

/* ---- bags on hand ------------------------------------------------------------------ */

static const gb_why *on_hand(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "on_hand", GB_PLAIN, a->left->on_hand, N_("the option --on-hand"));
}
static const gb_reach *reach_of(const gb_about *a) {
    return a->surely ? &a->left->surely : &a->left->best;
}
static const gb_why *reached(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "reached", GB_PLAIN, reach_of(a)->pieces,
                   a->surely
                       ? N_("how far what is left comes with the bags on hand, for "
                            "that chance; what is set counts in")
                       : N_("how far what is left comes with the bags on hand at the "
                            "ratio so far; what is set counts in"));
}
static const gb_why *last_piece(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "last", GB_PLAIN, gb_round(reach_of(a)->pieces, 1, GB_DOWN),
                  "down(reached, 1)", GB_INPUTS(reached(x, a)));
}
static const gb_why *reach_count(gb_explainer *x, const gb_about *a) {
    return gb_why_count(x, reach_of(a)->take->piece);
}
static const gb_why *order(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "order", GB_PLAIN, a->left->order,
                  "larger(up(surely - on_hand, 1), 0)",
                  GB_INPUTS(surely(x, a), on_hand(x, a)), .of = id_of(a));
}
static const gb_why *lead(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "lead", GB_PLAIN, a->remaining->outlook->lead_days,
                   N_("the option --lead; a day without it: common practice"));
}
static const gb_why *order_at(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "order_at", GB_PLAIN, a->left->order_at, "up(a_day * lead, 1)",
                  GB_INPUTS(gb_fact(x, "a_day", GB_PLAIN, a->left->bags_a_day,
                                    N_("bags of the log over its days with a batch")),
                            lead(x, a)),
                  .of = id_of(a));
}

/* ---- the log itself ---------------------------------------------------------------- */

static const gb_why *row_bags(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "bags", GB_PLAIN, a->log_row->bags, IN_LOG);
}
static const gb_why *row_batch(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "batch", GB_PLAIN, (double)a->log_row->batch, IN_LOG);
}
static const gb_why *row_water(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "water", GB_MASS, a->log_row->water.m3 * GB_WATER_KG_M3,
                  "volume * water_density",
                  GB_INPUTS(gb_fact(x, "volume", GB_VOLUME, a->log_row->water.m3, IN_LOG),
                            gb_water_density(x)));
}
static const gb_why *row_thrown(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "thrown", GB_SHARE, a->log_row->thrown.of_one, IN_LOG);
}
static const gb_why *row_late(gb_explainer *x, const gb_about *a) {
    const gb_log_row *r = a->log_row;
    double placed = (double)r->stop_s;
    return GB_WHY(x, "late", GB_DURATION, placed - a->mix->life.s,
                  a->mix->life.s != a->mix->need.mix->life.s ? "placed - life_in_heat"
                                                             : "placed - life",
                  GB_INPUTS(gb_fact(x, "placed", GB_DURATION, placed,
                                    N_("from first water to the stop in the log")),
                            gb_why_life(x, a)));
}

static const struct {
    gb_row_code row;
    const char *figure;
    const gb_why *(*why)(gb_explainer *, const gb_about *);
} REASONS[] = {
    {GB_ROW_LOG_LINE, "batch", row_batch},
    {GB_ROW_LOG_LINE, "bags", row_bags},
    {GB_ROW_LOG_LINE, "water", row_water},
    {GB_ROW_LOG_LINE, "thrown", row_thrown},
    {GB_ROW_LOG_DEAD, "late", row_late},
    {GB_ROW_LOG_DEAD, "life", gb_why_life},
    {GB_ROW_LEFT_SO_FAR, "bags", bags},
    {GB_ROW_LEFT_SO_FAR, "thrown", thrown},
    {GB_ROW_LEFT_RATIO, "ratio", ratio},
    {GB_ROW_LEFT_RATIO, "planned", planned_ratio},
    {GB_ROW_LEFT_DEPTHS, "n", depth_count},
    {GB_ROW_LEFT_DEPTHS, "mean", depth_mean},
    {GB_ROW_LEFT_DEPTHS, "sd", depth_sd},
    {GB_ROW_LEFT_DEPTHS, "se", depth_se},
    {GB_ROW_LEFT_DEPTHS, "planned", planned_depth},
    {GB_ROW_LEFT_YIELD, "yield", real_yield},
    {GB_ROW_LEFT_YIELD, "planned", planned_yield},
    {GB_ROW_LEFT_DEPTH, "depth", in_place},
    {GB_ROW_LEFT_DEPTH, "planned", planned_depth},
    {GB_ROW_LEFT_PIECE, "left", left_pieces},
    {GB_ROW_LEFT_PIECE, "count", left_count},
    {GB_ROW_LEFT_PIECE, "net", left_net},
    {GB_ROW_LEFT_BAGS, "bags", left_bags},
    {GB_ROW_LEFT_BAGS, "deviation", deviation},
    {GB_ROW_LEFT_BAGS, "sure", sure},
    {GB_ROW_LEFT_BAGS, "surely", surely},
    {GB_ROW_LEFT_BAGS, "whole", surely_whole},
    {GB_ROW_LEFT_BATCHES, "n", batches},
    {GB_ROW_LEFT_BATCHES, "most", most_batches},
    {GB_ROW_LEFT_BATCHES, "bags", batch_bags},
    {GB_ROW_LEFT_MASS, "mass", left_mass},
    {GB_ROW_LEFT_MASS, "surely", surely_mass},
    {GB_ROW_LEFT_CHANCE, "whole", chance_bags},
    {GB_ROW_LEFT_CHANCE, "share", chance},
    {GB_ROW_STOCK_REACH, "bags", on_hand},
    {GB_ROW_STOCK_REACH, "sure", sure},
    {GB_ROW_REACH_SHARE, "share", reached},
    {GB_ROW_REACH_PIECE, "last", last_piece},
    {GB_ROW_REACH_PIECE, "count", reach_count},
    {GB_ROW_STOCK_ORDER_NOW, "order", order},
    {GB_ROW_STOCK_ORDER_NOW, "days", lead},
    {GB_ROW_STOCK_ORDER_AT, "order", order},
    {GB_ROW_STOCK_ORDER_AT, "at", order_at},
    {GB_ROW_STOCK_ORDER_AT, "days", lead},
};

bool gb_is_of_log(gb_row_code row) {
    return row >= GB_ROW_LOG_TITLE && row <= GB_ROW_STOCK_ORDER_AT;
}

/* The nth piece that a batch set. */
static const gb_why *set_count(gb_explainer *x, const gb_figure *figure) {
    return gb_fact(x, "count", GB_PLAIN, figure->value, IN_LOG);
}

const gb_why *gb_why_of_log(gb_explainer *x, const gb_row *row, const gb_figure *figure) {
    if (row->code == GB_ROW_LOG_SET)
        return set_count(x, figure);
    for (size_t i = 0; i < sizeof REASONS / sizeof REASONS[0]; i++)
        if (REASONS[i].row == row->code && strcmp(REASONS[i].figure, figure->name) == 0)
            return REASONS[i].why(x, row->about);
    return NULL;
}
