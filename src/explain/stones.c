#include "explain/chains.h"

#include <math.h>
#include <string.h>

/* ---- what the piece and its stone state -------------------------------------------- */

static const gb_why *thickness(gb_explainer *x, const gb_piece *p) {
    return gb_stated(x, "thickness", p->name, GB_LENGTH, &p->stone.thickness.m, NULL);
}

static const gb_why *density(gb_explainer *x, const gb_piece *p, const char *name,
                             const gb_density *at) {
    return gb_stated(x, name, p->stone.stone->name, GB_DENSITY, &at->kg_m3,
                     gb_text_source(x, &p->stone.stone->source));
}

const gb_why *gb_why_thickness(gb_explainer *x, const gb_about *a) {
    return thickness(x, a->piece);
}

const gb_why *gb_why_spare(gb_explainer *x, const gb_about *a) {
    return gb_stated_count(x, "spare", a->piece->name, &a->piece->stone.spare);
}

/* ---- blanks ------------------------------------------------------------------------ */

/* The blank by what lies around the piece: its own sizes, or the rectangle about it. */
static const gb_why *with_margin(gb_explainer *x, const gb_piece *p, const char *name,
                                 double m, const gb_why *around) {
    static const struct {
        const char *around, *formula;
    } FORMULAS[] = {{"length", "length + 2 * margin"},
                    {"width", "width + 2 * margin"},
                    {"diameter", "diameter + 2 * margin"},
                    {"blank_length", "blank_length + 2 * margin"},
                    {"blank_width", "blank_width + 2 * margin"}};
    const gb_why *margin =
        gb_stated(x, "margin", p->name, GB_LENGTH, &p->stone.margin.m, NULL);
    for (size_t i = 0; around != NULL && i < sizeof FORMULAS / sizeof FORMULAS[0]; i++)
        if (strcmp(around->name, FORMULAS[i].around) == 0)
            return GB_WHY(x, name, GB_LENGTH, m, FORMULAS[i].formula,
                          GB_INPUTS(around, margin), .of = p->name);
    return NULL;
}

const gb_why *gb_why_stone_length(gb_explainer *x, const gb_about *a) {
    return with_margin(x, a->piece, "order_length", a->stone->size.blank_length.m,
                       gb_why_blank_length(x, a->piece));
}

const gb_why *gb_why_stone_width(gb_explainer *x, const gb_about *a) {
    return with_margin(x, a->piece, "order_width", a->stone->size.blank_width.m,
                       gb_why_blank_width(x, a->piece));
}

const gb_why *gb_why_stone_blank(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "blank", GB_AREA, a->stone->size.blank.m2,
                  "order_length * order_width",
                  GB_INPUTS(gb_why_stone_length(x, a), gb_why_stone_width(x, a)),
                  .of = a->piece->name);
}

const gb_why *gb_why_cut_away(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "cut_away", GB_SHARE, a->stone->size.cut_away.of_one,
                  "1 - area / blank",
                  GB_INPUTS(gb_why_area(x, a->piece), gb_why_stone_blank(x, a)),
                  .of = a->piece->name);
}

/* ---- counts ------------------------------------------------------------------------ */

const gb_why *gb_why_broken(gb_explainer *x, const gb_about *a) {
    const gb_piece *p = a->piece;
    return GB_WHY(
        x, "broken", GB_PLAIN, a->stone->size.broken, "up(count * breakage, 1)",
        GB_INPUTS(gb_why_count(x, p), gb_stated(x, "breakage", p->name, GB_SHARE,
                                                &p->stone.breakage.of_one, NULL)),
        .of = p->name);
}

const gb_why *gb_why_ordered(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "ordered", GB_PLAIN, a->stone->size.ordered, "count + spare + broken",
        GB_INPUTS(gb_why_count(x, a->piece), gb_why_spare(x, a), gb_why_broken(x, a)),
        .of = a->piece->name);
}

/* ---- weights ----------------------------------------------------------------------- */

const gb_why *gb_why_stone_typical(gb_explainer *x, const gb_about *a) {
    const gb_piece *p = a->piece;
    return GB_WHY(x, "as_set", GB_MASS, a->stone->size.typical.kg,
                  "area * thickness * typical",
                  GB_INPUTS(gb_why_area(x, p), thickness(x, p),
                            density(x, p, "typical", &p->stone.stone->typical)),
                  .of = p->name);
}

const gb_why *gb_why_stone_most(gb_explainer *x, const gb_about *a) {
    const gb_piece *p = a->piece;
    return GB_WHY(x, "to_lift", GB_MASS, a->stone->size.most.kg,
                  "area * thickness * most",
                  GB_INPUTS(gb_why_area(x, p), thickness(x, p),
                            density(x, p, "most", &p->stone.stone->most)),
                  .of = p->name);
}

const gb_why *gb_why_two_lift(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "two_lift", GB_MASS, gb_two_lift().kg,
                   N_("twice 51 lb (23 kg), the load constant of the NIOSH lifting "
                      "equation"));
}

static const gb_why *freight_of(gb_explainer *x, const gb_about *a) {
    const gb_piece *p = a->piece;
    return GB_WHY(x, "freight", GB_MASS, a->stone->size.freight.kg,
                  "ordered * blank * thickness * typical",
                  GB_INPUTS(gb_why_ordered(x, a), gb_why_stone_blank(x, a),
                            thickness(x, p),
                            density(x, p, "typical", &p->stone.stone->typical)),
                  .of = p->name);
}

const gb_why *gb_why_freight(gb_explainer *x, const gb_about *a) {
    return freight_of(x, a);
}

const gb_why *gb_why_all_freight(gb_explainer *x, const gb_about *a) {
    const gb_plan *plan = a->plan;
    const gb_why **all =
        gb_arena_take(x->arena, plan->stone_count + 1, sizeof(const gb_why *));
    double kg = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < plan->stone_count; i++) {
        const gb_about of = {
            .plan = plan, .piece = plan->stones[i].piece, .stone = &plan->stones[i]};
        all[i] = freight_of(x, &of);
        kg += plan->stones[i].size.freight.kg;
    }
    return GB_WHY(x, "freight", GB_MASS, kg, "sum()", .inputs = all,
                  .input_count = plan->stone_count);
}

/* ---- what a machine lifts ---------------------------------------------------------- */

#define OF_LIFT(scope, name, key, unit, member)                                          \
    scope const gb_why *name(gb_explainer *x, const gb_about *a) {                       \
        return gb_stated(x, key, NULL, unit, &a->plan->job->lift.member, NULL);          \
    }
OF_LIFT(, gb_why_lift_capacity, "capacity", GB_MASS, capacity.kg)
OF_LIFT(, gb_why_lift_attachment, "attachment", GB_MASS, attachment.kg)
OF_LIFT(, gb_why_lift_rated, "rated", GB_MASS, rated.kg)
OF_LIFT(, gb_why_lift_margin, "margin", GB_PLAIN, margin)
OF_LIFT(, gb_why_lift_reach, "reach", GB_LENGTH, reach.m)
OF_LIFT(static, wet, "wet", GB_SHARE, wet.of_one)
OF_LIFT(static, rough, "rough", GB_SHARE, rough.of_one)
OF_LIFT(static, tilted, "tilted", GB_SHARE, tilted.of_one)
#undef OF_LIFT

const gb_why *gb_why_lift_off(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "off", GB_SHARE, 1.0 - gb_lift_left(&a->plan->job->lift).of_one,
                  "1 - (1 - wet) * (1 - rough) * (1 - tilted)",
                  GB_INPUTS(wet(x, a), rough(x, a), tilted(x, a)));
}

const gb_why *gb_why_lift_allowed(gb_explainer *x, const gb_about *a) {
    const gb_lift *l = &a->plan->job->lift;
    double left = gb_lift_left(l).of_one / l->margin;
    const gb_why *machine =
        GB_WHY(x, "machine", GB_MASS, (l->capacity.kg - l->attachment.kg) * left,
               "(capacity - attachment) * (1 - off) / margin",
               GB_INPUTS(gb_why_lift_capacity(x, a), gb_why_lift_attachment(x, a),
                         gb_why_lift_off(x, a), gb_why_lift_margin(x, a)));
    if (isnan(l->rated.kg))
        return GB_WHY(x, "allowed", GB_MASS, gb_lift_allowed(l).kg, "machine",
                      GB_INPUTS(machine));
    const gb_why *gear =
        GB_WHY(x, "gear", GB_MASS, l->rated.kg * left, "rated * (1 - off) / margin",
               GB_INPUTS(gb_why_lift_rated(x, a), gb_why_lift_off(x, a),
                         gb_why_lift_margin(x, a)));
    return GB_WHY(x, "allowed", GB_MASS, gb_lift_allowed(l).kg, "smaller(machine, gear)",
                  GB_INPUTS(machine, gear));
}

const gb_why *gb_why_stone_lifted(gb_explainer *x, const gb_about *a) {
    const gb_piece *p = a->piece;
    return GB_WHY(x, "lifted", GB_MASS, a->stone->size.lifted.kg,
                  "blank * thickness * most",
                  GB_INPUTS(gb_why_stone_blank(x, a), thickness(x, p),
                            density(x, p, "most", &p->stone.stone->most)),
                  .of = p->name);
}

const gb_why *gb_why_lift_share(gb_explainer *x, const gb_about *a) {
    const gb_why *lifted = gb_why_stone_lifted(x, a);
    const gb_why *allowed = gb_why_lift_allowed(x, a);
    if (lifted == NULL || allowed == NULL)
        return NULL;
    return GB_WHY(x, "share", GB_SHARE, lifted->value / allowed->value,
                  "lifted / allowed", GB_INPUTS(lifted, allowed), .of = a->piece->name);
}

const gb_why *gb_why_long_stone(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "long_stone", GB_LENGTH, gb_long_stone().m,
                   N_("Building Construction, Stone Steps, section 84"));
}
