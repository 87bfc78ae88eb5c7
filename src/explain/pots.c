#include "explain/chains.h"

#include <math.h>

static const char *piece_of(const gb_about *a) {
    return a->pot->take->piece->name;
}

/* A part of a landing: as equal parts as the life in the pot allows. */
static const gb_why *stretch(gb_explainer *x, const gb_about *a) {
    const gb_job *job = a->plan->job;
    const gb_take *t = a->pot->take;
    bool paced = !isnan(a->plan->rates[GB_SLURRY].m2_s);
    const gb_why *bedded = gb_why_bedded(x, t->piece);
    if (!paced)
        return GB_WHY(
            x, "pieces", GB_PLAIN, a->pot->pieces, "1 / up(bedded / usual, 1)",
            GB_INPUTS(bedded, gb_fact(x, "usual", GB_AREA, 0.55,
                                      N_("about one tread a pot: common practice"))),
            .of = piece_of(a));
    gb_mixed m = gb_mixed_of(a);
    bool heat = a->mix->life.s != m.mix->life.s;
    return GB_WHY(
        x, "pieces", GB_PLAIN, a->pot->pieces,
        heat ? "1 / up(bedded / (pace * life_in_heat), 1)"
             : "1 / up(bedded / (pace * life), 1)",
        GB_INPUTS(bedded, gb_why_area_pace(x, job, GB_SLURRY), gb_why_life(x, a)),
        .of = piece_of(a));
}

const gb_why *gb_why_pot_pieces(gb_explainer *x, const gb_about *a) {
    bool landing = a->pot->take->piece->kind == GB_LANDING;
    if (landing && (a->pot->take->units < 2.0 || a->pot->pieces < 1.0))
        return stretch(x, a);
    return gb_fact(x, "pieces", GB_PLAIN, a->pot->pieces,
                   N_("a pot is mixed for one tread or two: common practice"));
}

const gb_why *gb_why_pot_area(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "pot_area", GB_AREA, a->pot->area.m2, "pieces * bedded",
        GB_INPUTS(gb_why_pot_pieces(x, a), gb_why_bedded(x, a->pot->take->piece)),
        .of = piece_of(a));
}

const gb_why *gb_why_pot_bags(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return GB_WHY(x, "bags", GB_PLAIN, a->pot->bags,
                  "pieces * each * (1 + waste) / yield",
                  GB_INPUTS(gb_why_pot_pieces(x, a), gb_why_each(x, a->pot->take),
                            gb_why_need_waste(x, a), gb_why_yield(x, &m)),
                  .of = piece_of(a));
}

const gb_why *gb_why_pot_count(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "pots", GB_PLAIN, (double)a->pot->count, "up(count / pieces, 1)",
        GB_INPUTS(gb_why_count(x, a->pot->take->piece), gb_why_pot_pieces(x, a)),
        .of = piece_of(a));
}

const gb_why *gb_why_pot_time(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "time", GB_DURATION, a->pot->time.s, "pot_area / pace",
        GB_INPUTS(gb_why_pot_area(x, a), gb_why_area_pace(x, a->plan->job, GB_SLURRY)),
        .of = piece_of(a));
}

const gb_why *gb_why_scored(gb_explainer *x) {
    return gb_fact(x, "scored_depth", GB_LENGTH, gb_usual_slurry(GB_SCORED).m,
                   N_("what a scored back takes, 1/8 in: common practice"));
}

const gb_why *gb_why_scored_area(gb_explainer *x, const gb_about *a) {
    double depth = gb_usual_slurry(GB_SCORED).m;
    return GB_WHY(
        x, "scored_area", GB_AREA, a->pot->area.m2 * a->pot->depth.m / depth,
        "pot_area * depth / scored_depth",
        GB_INPUTS(gb_why_pot_area(x, a), gb_why_depth(x, a->pot->take), gb_why_scored(x)),
        .of = piece_of(a));
}
