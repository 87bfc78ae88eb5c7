#include "explain/concrete.h"

#include <math.h>
#include <string.h>

/* The rows of a concrete by itself. A row is about the batch that is mixed, unless it
   says that it is about the design or the next one. */

typedef const gb_why *chain(gb_explainer *x, const gb_made *m, const gb_about *a);

/* ---- what is asked for, and the design --------------------------------------------- */

#define MEMBER(name, text, unit, member)                                                 \
    static const gb_why *name(gb_explainer *x, const gb_made *m, const gb_about *a) {    \
        (void)a;                                                                         \
        return gb_why_member(x, m, text, unit, &m->c->member);                           \
    }
MEMBER(strength, "strength", GB_PRESSURE, strength.pa)
MEMBER(deviation, "deviation", GB_PRESSURE, deviation.pa)
MEMBER(slump, "slump", GB_LENGTH, slump.m)
MEMBER(largest, "largest", GB_LENGTH, largest.m)
MEMBER(rodded, "rodded", GB_DENSITY, rodded.kg_m3)
MEMBER(fineness, "fineness", GB_PLAIN, fineness)
#undef MEMBER

/* Those that take no more than the concrete. */
#define OF_MADE(name, call)                                                              \
    static const gb_why *name(gb_explainer *x, const gb_made *m, const gb_about *a) {    \
        (void)a;                                                                         \
        return call;                                                                     \
    }
OF_MADE(average, gb_why_average(x, m))
OF_MADE(tests, gb_stated_count(x, "tests", gb_made_id(m), &m->c->tests))
OF_MADE(by_strength, gb_why_by_strength(x, m))
OF_MADE(by_attack, gb_why_by_attack(x, m))
OF_MADE(ratio, gb_why_concrete_ratio(x, m))
OF_MADE(table_water, gb_why_table_water(x, m))
OF_MADE(saved, gb_why_saved_water(x, m))
OF_MADE(air, gb_why_air_in(x, m))
OF_MADE(coarse_share, gb_why_coarse_share(x, m))
OF_MADE(first_mass, gb_why_first_mass(x, m))
OF_MADE(sand_by_mass, gb_why_sand_by_mass(x, m))
OF_MADE(designed_water, gb_why_in_concrete(x, m, GB_WATER_IN, GB_DESIGNED))
OF_MADE(designed_cement, gb_why_in_concrete(x, m, GB_CEMENT_IN, GB_DESIGNED))
OF_MADE(designed_stone, gb_why_in_concrete(x, m, GB_STONE_IN, GB_DESIGNED))
OF_MADE(designed_sand, gb_why_in_concrete(x, m, GB_SAND_IN, GB_DESIGNED))
OF_MADE(designed_sand_volume, gb_why_volume_in(x, m, GB_SAND_IN, GB_DESIGNED))
OF_MADE(designed_fresh, gb_why_fresh_mass(x, m, GB_DESIGNED))
OF_MADE(batch, gb_why_trial_batch(x, m))
OF_MADE(unit_mass, gb_why_unit_mass(x, m))
OF_MADE(trial_yield, gb_why_trial_yield(x, m))
OF_MADE(relative_yield, gb_why_relative_yield(x, m))
OF_MADE(cement_content, gb_why_cement_content(x, m))
OF_MADE(gravimetric, gb_why_gravimetric(x, m))
OF_MADE(trial_air, gb_why_trial_air(x, m))
OF_MADE(trial_water, gb_why_trial_water(x, m))
OF_MADE(water_used, gb_why_water_used_in(x, m))
OF_MADE(ratio_used, gb_why_ratio_used(x, m))
OF_MADE(for_slump, gb_why_for_slump(x, m))
OF_MADE(for_air, gb_why_for_air(x, m))
OF_MADE(trial_slump, gb_why_trial_slump(x, m))
OF_MADE(next_water, gb_why_in_concrete(x, m, GB_WATER_IN, GB_AFTER_TRIAL))
OF_MADE(next_cement, gb_why_in_concrete(x, m, GB_CEMENT_IN, GB_AFTER_TRIAL))
OF_MADE(next_stone, gb_why_in_concrete(x, m, GB_STONE_IN, GB_AFTER_TRIAL))
OF_MADE(next_sand, gb_why_in_concrete(x, m, GB_SAND_IN, GB_AFTER_TRIAL))
OF_MADE(next_by_mass, gb_why_next_by_mass(x, m))
OF_MADE(water, gb_why_in_concrete(x, m, GB_WATER_IN, gb_batch_mixed(m)))
OF_MADE(cement, gb_why_in_concrete(x, m, GB_CEMENT_IN, gb_batch_mixed(m)))
OF_MADE(water_volume, gb_why_volume_in(x, m, GB_WATER_IN, gb_batch_mixed(m)))
OF_MADE(cement_volume, gb_why_volume_in(x, m, GB_CEMENT_IN, gb_batch_mixed(m)))
OF_MADE(fresh, gb_why_fresh_mass(x, m, gb_batch_mixed(m)))
OF_MADE(sand_moisture, gb_why_moisture_in(x, m, GB_SAND_IN))
OF_MADE(stone_moisture, gb_why_moisture_in(x, m, GB_STONE_IN))
OF_MADE(sand_absorption, gb_why_absorption_in(x, m, GB_SAND_IN))
OF_MADE(stone_absorption, gb_why_absorption_in(x, m, GB_STONE_IN))
#undef OF_MADE

static const gb_why *more(gb_explainer *x, const gb_made *m, const gb_about *a) {
    return GB_WHY(x, "more", GB_PRESSURE, m->p.average.pa - m->c->strength.pa,
                  "average - strength", GB_INPUTS(average(x, m, a), strength(x, m, a)));
}

/* ---- slump that is usual ----------------------------------------------------------- */

#define USUAL_SLUMP N_("ACI 211.1-91 tables 6.3.1 and A1.5.3.1, by what is built")

static const gb_why *usual_slump(gb_explainer *x, const gb_made *m, bool most) {
    gb_length low;
    gb_length high;
    gb_recommended_slump(m->c->table, m->c->built, &low, &high);
    return gb_why_of_word(x, m, most ? "usual_most" : "usual_least", GB_LENGTH,
                          most ? high.m : low.m, &m->c->built, USUAL_SLUMP);
}

static const gb_why *usual_least(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)a;
    return usual_slump(x, m, false);
}

static const gb_why *usual_most(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)a;
    return usual_slump(x, m, true);
}

static const gb_why *by_hand(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)a;
    return gb_fact(x, "by_hand", GB_LENGTH, gb_slump_by_hand(m->c->table).m,
                   N_("ACI 211.1-91: so much more where it is tamped by hand"));
}

static const gb_why *slump_limit(gb_explainer *x, const gb_made *m, const gb_about *a) {
    const gb_why *most = usual_most(x, m, a);
    const gb_why *more_by_hand = by_hand(x, m, a);
    if (x->failed)
        return NULL;
    return GB_WHY(x, "limit", GB_LENGTH, most->value + more_by_hand->value,
                  "usual_most + by_hand", GB_INPUTS(most, more_by_hand));
}

/* ---- on every basis ---------------------------------------------------------------- */

static gb_wetness wetness_of(const gb_made *m, gb_stuff_in which) {
    const gb_concrete *c = m->c;
    return which == GB_SAND_IN ? gb_wetness_of(gb_delivered_sand(c), c->sand_absorption)
                               : gb_wetness_of(c->stone_moisture, c->stone_absorption);
}

static double on(const gb_made *m, gb_stuff_in which, gb_basis basis) {
    const gb_parts_of_concrete *p = gb_parts_in(m, gb_batch_mixed(m));
    gb_density dry = which == GB_SAND_IN ? p->sand : p->stone;
    return gb_on_basis((gb_mass){dry.kg_m3}, wetness_of(m, which), GB_OVEN_DRY, basis).kg;
}

/* Rows on one part: 0 cement, 1 sand, 2 stone. */
static const gb_why *dry(gb_explainer *x, const gb_made *m, const gb_about *a) {
    return gb_why_in_concrete(x, m, (gb_stuff_in)a->part, gb_batch_mixed(m));
}

static const gb_why *volume(gb_explainer *x, const gb_made *m, const gb_about *a) {
    return gb_why_volume_in(x, m, (gb_stuff_in)a->part, gb_batch_mixed(m));
}

static const gb_why *saturated(gb_explainer *x, const gb_made *m, const gb_about *a) {
    gb_stuff_in which = (gb_stuff_in)a->part;
    return GB_WHY(x, "saturated", GB_DENSITY, on(m, which, GB_SATURATED),
                  which == GB_SAND_IN ? "sand * (1 + sand_absorption)"
                                      : "stone * (1 + stone_absorption)",
                  GB_INPUTS(dry(x, m, a), gb_why_absorption_in(x, m, which)));
}

static const gb_why *as_delivered(gb_explainer *x, const gb_made *m, gb_stuff_in which) {
    bool sand = which == GB_SAND_IN;
    return GB_WHY(x, sand ? "delivered_sand" : "delivered_stone", GB_DENSITY,
                  on(m, which, GB_AS_DELIVERED),
                  sand ? "sand * (1 + sand_moisture)" : "stone * (1 + stone_moisture)",
                  GB_INPUTS(gb_why_in_concrete(x, m, which, gb_batch_mixed(m)),
                            gb_why_moisture_in(x, m, which)));
}

static const gb_why *delivered(gb_explainer *x, const gb_made *m, const gb_about *a) {
    return a->part == GB_CEMENT_IN ? cement(x, m, a)
                                   : as_delivered(x, m, (gb_stuff_in)a->part);
}

static double free_water(const gb_made *m, gb_stuff_in which) {
    const gb_parts_of_concrete *p = gb_parts_in(m, gb_batch_mixed(m));
    gb_density part = which == GB_SAND_IN ? p->sand : p->stone;
    return gb_free_water((gb_mass){part.kg_m3}, wetness_of(m, which)).kg;
}

static double kg_to_add(const gb_made *m) {
    return gb_parts_in(m, gb_batch_mixed(m))->water.kg_m3 - free_water(m, GB_SAND_IN) -
           free_water(m, GB_STONE_IN);
}

static const gb_why *to_add(gb_explainer *x, const gb_made *m, const gb_about *a) {
    gb_batch_of made = gb_batch_mixed(m);
    return GB_WHY(x, "to_add", GB_DENSITY, kg_to_add(m),
                  "water - sand * (sand_moisture - sand_absorption) - stone * "
                  "(stone_moisture - stone_absorption)",
                  GB_INPUTS(water(x, m, a), gb_why_in_concrete(x, m, GB_SAND_IN, made),
                            gb_why_moisture_in(x, m, GB_SAND_IN),
                            gb_why_absorption_in(x, m, GB_SAND_IN),
                            gb_why_in_concrete(x, m, GB_STONE_IN, made),
                            gb_why_moisture_in(x, m, GB_STONE_IN),
                            gb_why_absorption_in(x, m, GB_STONE_IN)));
}

static const gb_why *all_delivered(gb_explainer *x, const gb_made *m, const gb_about *a) {
    double kg = gb_parts_in(m, gb_batch_mixed(m))->cement.kg_m3 +
                on(m, GB_SAND_IN, GB_AS_DELIVERED) + on(m, GB_STONE_IN, GB_AS_DELIVERED) +
                kg_to_add(m);
    return GB_WHY(x, "delivered", GB_DENSITY, kg, "sum()",
                  GB_INPUTS(cement(x, m, a), as_delivered(x, m, GB_SAND_IN),
                            as_delivered(x, m, GB_STONE_IN), to_add(x, m, a)));
}

static const gb_why *all_volumes(gb_explainer *x, const gb_made *m, const gb_about *a) {
    gb_batch_of made = gb_batch_mixed(m);
    return GB_WHY(x, "volumes", GB_SHARE, 1.0, "sum()",
                  GB_INPUTS(cement_volume(x, m, a),
                            gb_why_volume_in(x, m, GB_SAND_IN, made),
                            gb_why_volume_in(x, m, GB_STONE_IN, made),
                            water_volume(x, m, a), air(x, m, a)));
}

/* ---- in every unit ----------------------------------------------------------------- */

static const gb_why *per_bag(gb_explainer *x, const gb_about *a, const gb_why *mass,
                             const char *formula) {
    gb_mixed mixed = gb_mixed_of(a);
    if (mass == NULL)
        return NULL;
    return GB_WHY(x, "of_bag", GB_MASS, mass->value * mixed.recipe->yield.m3, formula,
                  GB_INPUTS(mass, gb_why_yield(x, &mixed)));
}

static const gb_why *part_per_bag(gb_explainer *x, const gb_made *m, const gb_about *a) {
    static const char *const FORMULAS[] = {"cement * yield", "delivered_sand * yield",
                                           "delivered_stone * yield"};
    return per_bag(x, a, delivered(x, m, a), FORMULAS[a->part]);
}

static const gb_why *water_per_bag(gb_explainer *x, const gb_made *m, const gb_about *a) {
    return per_bag(x, a, to_add(x, m, a), "to_add * yield");
}

static const gb_why *bags_in(gb_explainer *x, const gb_about *a, gb_system system) {
    gb_mixed mixed = gb_mixed_of(a);
    double m3 = gb_compared_volume(system).m3;
    const gb_why *one = gb_fact(x, "volume", GB_VOLUME, m3,
                                system == GB_US ? N_("1 yd3, 27 ft3") : N_("1 m3"));
    return GB_WHY(x, "bags", GB_PLAIN, m3 / mixed.recipe->yield.m3, "volume / yield",
                  GB_INPUTS(one, gb_why_yield(x, &mixed)));
}

static const gb_why *bags_in_yard(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)m;
    return bags_in(x, a, GB_US);
}

static const gb_why *bags_in_metre(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)m;
    return bags_in(x, a, GB_METRIC);
}

static const gb_why *bag(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)m;
    gb_mixed mixed = gb_mixed_of(a);
    return gb_why_bag(x, &mixed);
}

static const gb_why *compared(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)m;
    (void)a;
    return gb_why_compared_volume(x);
}

static const gb_why *mixer(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)m;
    return gb_fact(x, "mixer", GB_VOLUME, a->concrete->mixer.m3,
                   N_("the option --mixer"));
}

static const gb_why *in_truck(gb_explainer *x, const gb_made *m, const gb_about *a) {
    static const double TRUCK_S = 5400;
    (void)m;
    (void)a;
    return gb_fact(x, "time", GB_DURATION, TRUCK_S, N_("ASTM C94 before C94-21"));
}

static const gb_why *air_apart(gb_explainer *x, const gb_made *m, const gb_about *a) {
    const gb_why *meter = trial_air(x, m, a);
    const gb_why *masses = gravimetric(x, m, a);
    if (meter == NULL || masses == NULL)
        return NULL;
    bool more = meter->value > masses->value;
    gb_text formula;
    gb_text_init(&formula, x->arena);
    gb_text_add(&formula, more ? meter->name : masses->name);
    gb_text_add(&formula, " - ");
    gb_text_add(&formula, more ? masses->name : meter->name);
    x->failed = x->failed || formula.failed;
    return GB_WHY(x, "apart", GB_SHARE, fabs(meter->value - masses->value),
                  gb_text_get(&formula), GB_INPUTS(meter, masses));
}

static const gb_why *most_apart(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)m;
    (void)a;
    return gb_fact(x, "limit", GB_SHARE, gb_air_apart().of_one, N_("common practice"));
}

static const gb_why *air_tolerance(gb_explainer *x, const gb_made *m, const gb_about *a) {
    (void)m;
    (void)a;
    return gb_fact(x, "tolerance", GB_SHARE, gb_air_tolerance().of_one,
                   N_("ACI 318, tolerance of air, from memory"));
}

/* ---- by row and figure ------------------------------------------------------------- */

static const struct {
    gb_row_code row;
    const char *figure;
    chain *why;
} ROWS[] = {
    {GB_ROW_ASKED_STRENGTH, "strength", strength},
    {GB_ROW_ASKED_AVERAGE, "average", average},
    {GB_ROW_ASKED_RATIO, "ratio", by_strength},
    {GB_ROW_ASKED_SLUMP, "slump", slump},
    {GB_ROW_ASKED_SLUMP, "largest", largest},
    {GB_ROW_ASKED_USUAL, "least", usual_least},
    {GB_ROW_ASKED_USUAL, "most", usual_most},
    {GB_ROW_ASKED_USUAL, "more", by_hand},
    {GB_ROW_ASKED_SLUMP_HIGH, "slump", slump},
    {GB_ROW_ASKED_SLUMP_HIGH, "limit", slump_limit},
    {GB_ROW_DESIGN_AVERAGE, "average", average},
    {GB_ROW_DESIGN_AVERAGE, "strength", strength},
    {GB_ROW_DESIGN_AVERAGE, "more", more},
    {GB_ROW_DESIGN_AVERAGE_TESTS, "average", average},
    {GB_ROW_DESIGN_AVERAGE_TESTS, "strength", strength},
    {GB_ROW_DESIGN_AVERAGE_TESTS, "deviation", deviation},
    {GB_ROW_DESIGN_AVERAGE_TESTS, "tests", tests},
    {GB_ROW_DESIGN_AVERAGE_STATED, "average", average},
    {GB_ROW_DESIGN_WATER, "water", designed_water},
    {GB_ROW_DESIGN_WATER_SHAPE, "water", designed_water},
    {GB_ROW_DESIGN_WATER_SHAPE, "table", table_water},
    {GB_ROW_DESIGN_WATER_SHAPE, "saved", saved},
    {GB_ROW_DESIGN_WATER_STATED, "water", designed_water},
    {GB_ROW_DESIGN_AIR, "air", air},
    {GB_ROW_DESIGN_AIR_TRAPPED, "air", air},
    {GB_ROW_DESIGN_AIR_STATED, "air", air},
    {GB_ROW_DESIGN_RATIO, "ratio", ratio},
    {GB_ROW_DESIGN_RATIO_STATED, "ratio", ratio},
    {GB_ROW_DESIGN_RATIO_FREE, "most", by_attack},
    {GB_ROW_DESIGN_RATIO_ATTACK, "ratio", ratio},
    {GB_ROW_DESIGN_RATIO_ATTACK, "most", by_strength},
    {GB_ROW_DESIGN_CEMENT, "cement", designed_cement},
    {GB_ROW_DESIGN_STONE, "share", coarse_share},
    {GB_ROW_DESIGN_STONE, "rodded", rodded},
    {GB_ROW_DESIGN_STONE, "fineness", fineness},
    {GB_ROW_DESIGN_STONE, "stone", designed_stone},
    {GB_ROW_DESIGN_SAND, "share", designed_sand_volume},
    {GB_ROW_DESIGN_SAND, "sand", designed_sand},
    {GB_ROW_DESIGN_MASS, "fresh", designed_fresh},
    {GB_ROW_DESIGN_MASS, "first", first_mass},
    {GB_ROW_DESIGN_MASS, "sand", sand_by_mass},
    {GB_ROW_CONCRETE_HEAD, "volume", compared},
    {GB_ROW_CONCRETE_PART, "dry", dry},
    {GB_ROW_CONCRETE_PART, "saturated", saturated},
    {GB_ROW_CONCRETE_PART, "delivered", delivered},
    {GB_ROW_CONCRETE_PART, "share", volume},
    {GB_ROW_CONCRETE_CEMENT, "dry", cement},
    {GB_ROW_CONCRETE_CEMENT, "saturated", cement},
    {GB_ROW_CONCRETE_CEMENT, "delivered", cement},
    {GB_ROW_CONCRETE_CEMENT, "share", cement_volume},
    {GB_ROW_CONCRETE_WATER, "saturated", water},
    {GB_ROW_CONCRETE_WATER, "delivered", to_add},
    {GB_ROW_CONCRETE_WATER, "share", water_volume},
    {GB_ROW_CONCRETE_AIR, "share", air},
    {GB_ROW_CONCRETE_SUM, "saturated", fresh},
    {GB_ROW_CONCRETE_SUM, "delivered", all_delivered},
    {GB_ROW_CONCRETE_SUM, "share", all_volumes},
    {GB_ROW_CONCRETE_BASES, "sand", sand_moisture},
    {GB_ROW_CONCRETE_BASES, "stone", stone_moisture},
    {GB_ROW_CONCRETE_SAND_DRINKS, "moisture", sand_moisture},
    {GB_ROW_CONCRETE_SAND_DRINKS, "absorption", sand_absorption},
    {GB_ROW_CONCRETE_STONE_DRINKS, "moisture", stone_moisture},
    {GB_ROW_CONCRETE_STONE_DRINKS, "absorption", stone_absorption},
    {GB_ROW_CONCRETE_EACH, "us", delivered},
    {GB_ROW_CONCRETE_EACH, "bag", part_per_bag},
    {GB_ROW_CONCRETE_EACH_WATER, "us", to_add},
    {GB_ROW_CONCRETE_EACH_WATER, "bag", water_per_bag},
    {GB_ROW_CONCRETE_BAGS, "yard", bags_in_yard},
    {GB_ROW_CONCRETE_BAGS, "bag", bag},
    {GB_ROW_CONCRETE_BAGS, "metre", bags_in_metre},
    {GB_ROW_TRIAL_MADE, "batch", batch},
    {GB_ROW_TRIAL_MADE, "unit", unit_mass},
    {GB_ROW_TRIAL_MADE, "volume", trial_yield},
    {GB_ROW_TRIAL_MADE, "relative", relative_yield},
    {GB_ROW_TRIAL_CEMENT, "cement", cement_content},
    {GB_ROW_TRIAL_AIR, "air", gravimetric},
    {GB_ROW_TRIAL_AIR_METER, "meter", trial_air},
    {GB_ROW_TRIAL_AIR_METER, "air", gravimetric},
    {GB_ROW_TRIAL_WATER, "used", water_used},
    {GB_ROW_TRIAL_WATER, "water", trial_water},
    {GB_ROW_TRIAL_WATER, "ratio", ratio_used},
    {GB_ROW_TRIAL_SLUMP, "change", for_slump},
    {GB_ROW_TRIAL_SLUMP, "slump", trial_slump},
    {GB_ROW_TRIAL_SLUMP, "wanted", slump},
    {GB_ROW_TRIAL_FOR_AIR, "change", for_air},
    {GB_ROW_TRIAL_FOR_AIR, "air", trial_air},
    {GB_ROW_TRIAL_FOR_AIR, "wanted", air},
    {GB_ROW_TRIAL_AIR_OFF, "air", trial_air},
    {GB_ROW_TRIAL_AIR_OFF, "wanted", air},
    {GB_ROW_TRIAL_AIR_OFF, "tolerance", air_tolerance},
    {GB_ROW_TRIAL_AIR_APART, "apart", air_apart},
    {GB_ROW_TRIAL_AIR_APART, "limit", most_apart},
    {GB_ROW_TRIAL_NEXT, "water", next_water},
    {GB_ROW_TRIAL_NEXT, "cement", next_cement},
    {GB_ROW_TRIAL_NEXT, "stone", next_stone},
    {GB_ROW_TRIAL_NEXT, "sand", next_sand},
    {GB_ROW_TRIAL_NEXT, "by_mass", next_by_mass},
    {GB_ROW_CONCRETE_ONE_BATCH, "mixer", mixer},
    {GB_ROW_CONCRETE_TRUCK, "time", in_truck},
};

bool gb_is_of_concrete(gb_row_code row) {
    return row > GB_ROW_CONCRETE_TITLE && row <= GB_ROW_CONCRETE_TRUCK;
}

const gb_why *gb_why_of_concrete(gb_explainer *x, const gb_row *row,
                                 const gb_figure *figure) {
    gb_mixed mixed = gb_mixed_of(row->about);
    gb_made m = gb_made_of(mixed.mix);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        if (ROWS[i].row == row->code && strcmp(ROWS[i].figure, figure->name) == 0)
            return ROWS[i].why(x, &m, row->about);
    return NULL;
}
