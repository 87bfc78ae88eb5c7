#include "explain/concrete.h"

#include "gaugebox/count.h"

#include <math.h>

/* ---- strength ---------------------------------------------------------------------- */

#define OVER_STRENGTH                                                                    \
    N_("so that few tests fall below the strength: ACI 318 and 301, from memory")

static const gb_why *strength(gb_explainer *x, const gb_made *m) {
    return gb_why_member(x, m, "strength", GB_PRESSURE, &m->c->strength.pa);
}

static const gb_why *without_tests(gb_explainer *x, const gb_made *m) {
    gb_overdesign o = gb_overdesign_of(m->c->table);
    double f = m->c->strength.pa;
    bool high = gb_over(f, o.high.pa);
    double added = high ? o.above.pa : gb_under(f, o.low.pa) ? o.below.pa : o.between.pa;
    const gb_why *more =
        gb_fact(x, "more", GB_PRESSURE, added,
                N_("without a record of tests, by the strength: ACI 318 and 301, from "
                   "memory"));
    return GB_WHY(x, "average", GB_PRESSURE, m->p.average.pa,
                  high ? "1.10 * strength + more" : "strength + more",
                  GB_INPUTS(strength(x, m), more), .of = gb_made_id(m),
                  .source = OVER_STRENGTH);
}

/* How much larger the deviation of few tests is taken. */
static const gb_why *few_tests(gb_explainer *x, const gb_made *m) {
    static const char SOURCE[] =
        N_("ACI 318 and 301: 1.16, 1.08, 1.03, 1.00 for 15, 20, 25, 30 tests");
    gb_between p;
    size_t n = m->c->tests;
    const gb_why *tests = gb_stated_count(x, "tests", gb_made_id(m), &m->c->tests);
    if (!gb_few_tests_points(n, &p))
        return GB_WHY(x, "few_tests", GB_PLAIN, 1.0, "many_tests",
                      GB_INPUTS(gb_fact(x, "many_tests", GB_PLAIN, 1.0, SOURCE), tests));
    return GB_WHY(x, "few_tests", GB_PLAIN, gb_few_tests(n),
                  "low + (high - low) * (tests - from) / (to - from)",
                  GB_INPUTS(gb_fact(x, "low", GB_PLAIN, p.low, SOURCE),
                            gb_fact(x, "high", GB_PLAIN, p.high, SOURCE), tests,
                            gb_fact(x, "from", GB_PLAIN, p.from, SOURCE),
                            gb_fact(x, "to", GB_PLAIN, p.to, SOURCE)));
}

static const gb_why *with_tests(gb_explainer *x, const gb_made *m) {
    const gb_concrete *c = m->c;
    gb_overdesign o = gb_overdesign_of(c->table);
    const gb_why *taken =
        GB_WHY(x, "taken", GB_PRESSURE, c->deviation.pa * gb_few_tests(c->tests),
               "deviation * few_tests",
               GB_INPUTS(gb_why_member(x, m, "deviation", GB_PRESSURE, &c->deviation.pa),
                         few_tests(x, m)));
    if (gb_over(c->strength.pa, o.high.pa))
        return GB_WHY(x, "average", GB_PRESSURE, m->p.average.pa,
                      "larger(strength + 1.34 * taken, 0.90 * strength + 2.33 * taken)",
                      GB_INPUTS(strength(x, m), taken), .of = gb_made_id(m),
                      .source = OVER_STRENGTH);
    const gb_why *dip = gb_fact(x, "dip", GB_PRESSURE, o.dip.pa,
                                N_("how far a single test may lie below the strength: "
                                   "ACI 318 and 301, from memory"));
    return GB_WHY(x, "average", GB_PRESSURE, m->p.average.pa,
                  "larger(strength + 1.34 * taken, strength + 2.33 * taken - dip)",
                  GB_INPUTS(strength(x, m), taken, dip), .of = gb_made_id(m),
                  .source = OVER_STRENGTH);
}

const gb_why *gb_why_average(gb_explainer *x, const gb_made *m) {
    if (!isnan(m->c->average.pa))
        return gb_why_member(x, m, "average", GB_PRESSURE, &m->c->average.pa);
    return isnan(m->c->deviation.pa) ? without_tests(x, m) : with_tests(x, m);
}

/* ---- water to cement --------------------------------------------------------------- */

static const gb_why *by_table(gb_explainer *x, const gb_made *m) {
    static const char *const SOURCES[] = {
        [GB_US] = N_("ACI 211.1-91 table 6.3.4(a), by the air that is entrained"),
        [GB_METRIC] = N_("ACI 211.1-91 table A1.5.3.4(a), by the air that is entrained; "
                         "from memory")};
    const gb_concrete *c = m->c;
    const char *source = SOURCES[c->table];
    gb_between p;
    if (!gb_ratio_points(c->table, m->p.average, gb_is_entrained(c), &p))
        return NULL;
    return GB_WHY(
        x, "by_strength", GB_PLAIN, m->p.ratio_strength,
        "down(low + (high - low) * (average - from) / (to - from), 0.01)",
        GB_INPUTS(gb_why_of_word(x, m, "low", GB_PLAIN, p.low, &c->air, source),
                  gb_why_of_word(x, m, "high", GB_PLAIN, p.high, &c->air, source),
                  gb_why_average(x, m), gb_fact(x, "from", GB_PRESSURE, p.from, source),
                  gb_fact(x, "to", GB_PRESSURE, p.to, source)),
        .of = gb_made_id(m),
        .source = N_("in a straight line between two points, cut to 0.01 as the worked "
                     "examples of ACI 211.1 are"));
}

const gb_why *gb_why_by_strength(gb_explainer *x, const gb_made *m) {
    if (!isnan(m->c->ratio))
        return gb_why_member(x, m, "by_strength", GB_PLAIN, &m->c->ratio);
    return by_table(x, m);
}

const gb_why *gb_why_by_attack(gb_explainer *x, const gb_made *m) {
    static const char SOURCE[] = N_("ACI 211.1-91 table 6.3.4(b), from memory");
    const gb_concrete *c = m->c;
    const char *source =
        c->attack == GB_FROST ? N_("ACI 211.1-91 table 6.3.4(b)") : SOURCE;
    double usual = gb_ratio_of_attack(c->attack, false);
    if (!(m->p.ratio_attack > usual))
        return gb_why_of_word(x, m, "by_attack", GB_PLAIN, usual, &c->attack, source);
    return GB_WHY(
        x, "by_attack", GB_PLAIN, m->p.ratio_attack, "usual + resisting",
        GB_INPUTS(gb_why_of_word(x, m, "usual", GB_PLAIN, usual, &c->attack, source),
                  gb_why_of_word(x, m, "resisting", GB_PLAIN, m->p.ratio_attack - usual,
                                 &c->resisting, SOURCE)));
}

const gb_why *gb_why_concrete_ratio(gb_explainer *x, const gb_made *m) {
    const gb_why *by_strength = gb_why_by_strength(x, m);
    if (isnan(m->p.ratio_attack))
        return GB_WHY(x, "ratio", GB_PLAIN, m->p.ratio, "by_strength",
                      GB_INPUTS(by_strength), .of = gb_made_id(m));
    return GB_WHY(x, "ratio", GB_PLAIN, m->p.ratio, "smaller(by_strength, by_attack)",
                  GB_INPUTS(by_strength, gb_why_by_attack(x, m)), .of = gb_made_id(m));
}

/* ---- water and air ----------------------------------------------------------------- */

static const gb_why *largest(gb_explainer *x, const gb_made *m) {
    return gb_why_member(x, m, "largest", GB_LENGTH, &m->c->largest.m);
}

/* A table prints its numbers in lb/yd3 or kg/m3. */
const gb_why *gb_why_as_printed(gb_explainer *x, const gb_made *m, const char *name,
                                gb_density value, const void *at, const char *source) {
    static const char UNIT[] = N_("the unit of the table");
    bool us = m->c->table == GB_US;
    const gb_unit *unit = gb_find_unit(GB_DENSITY, us ? "lb/yd3" : "kg/m3");
    const gb_why *cell = gb_why_of_word(x, m, "cell", GB_PLAIN,
                                        round(gb_to_unit(unit, value.kg_m3)), at, source);
    const gb_why *mass = gb_fact(x, us ? "pound" : "kilogram", GB_MASS,
                                 us ? gb_si(GB_MASS, "lb", 1) : 1.0, UNIT);
    const gb_why *volume = gb_fact(x, us ? "cubic_yard" : "cubic_metre", GB_VOLUME,
                                   gb_compared_volume(m->c->table).m3, UNIT);
    return GB_WHY(x, name, GB_DENSITY, value.kg_m3,
                  us ? "cell * pound / cubic_yard" : "cell * kilogram / cubic_metre",
                  GB_INPUTS(cell, mass, volume));
}

/* What the cell was looked up by beside the air. */
const gb_why *gb_why_table_water(gb_explainer *x, const gb_made *m) {
    static const char *const SOURCES[] = {
        [GB_US] = N_("ACI 211.1-91 table 6.3.3, by slump, stone and air"),
        [GB_METRIC] = N_("ACI 211.1-91 table A1.5.3.3, by slump, stone and air")};
    const gb_concrete *c = m->c;
    const gb_why *printed =
        gb_why_as_printed(x, m, "printed", m->p.table_water, &c->air, SOURCES[c->table]);
    return GB_WHY(x, "table_water", GB_DENSITY, m->p.table_water.kg_m3, "printed",
                  GB_INPUTS(printed, gb_why_member(x, m, "slump", GB_LENGTH, &c->slump.m),
                            largest(x, m)));
}

const gb_why *gb_why_saved_water(gb_explainer *x, const gb_made *m) {
    return gb_why_as_printed(x, m, "saved", gb_shape_saving(m->c->table, m->c->shape),
                             &m->c->shape,
                             N_("less for stone of that shape: PCA EB001, from memory"));
}

const gb_why *gb_why_designed_water(gb_explainer *x, const gb_made *m) {
    const gb_concrete *c = m->c;
    double water = m->p.parts.water.kg_m3;
    if (!isnan(c->water.kg_m3))
        return gb_why_member(x, m, "water", GB_DENSITY, &c->water.kg_m3);
    const gb_why *table = gb_why_table_water(x, m);
    if (!(gb_shape_saving(c->table, c->shape).kg_m3 > 0))
        return GB_WHY(x, "water", GB_DENSITY, water, "table_water", GB_INPUTS(table),
                      .of = gb_made_id(m));
    return GB_WHY(x, "water", GB_DENSITY, water, "table_water - saved",
                  GB_INPUTS(table, gb_why_saved_water(x, m)), .of = gb_made_id(m));
}

const gb_why *gb_why_air_in(gb_explainer *x, const gb_made *m) {
    const gb_concrete *c = m->c;
    if (!isnan(c->air_content.of_one))
        return gb_why_member(x, m, "air", GB_SHARE, &c->air_content.of_one);
    const gb_why *cell =
        gb_why_of_word(x, m, "cell", GB_SHARE, m->p.parts.air.of_one, &c->air,
                       N_("ACI 211.1-91 tables 6.3.3 and A1.5.3.3, by stone and "
                          "exposure"));
    return GB_WHY(x, "air", GB_SHARE, m->p.parts.air.of_one, "cell",
                  GB_INPUTS(cell, largest(x, m)), .of = gb_made_id(m));
}

/* ---- coarse aggregate -------------------------------------------------------------- */

static const gb_why *tabled_share(gb_explainer *x, const gb_made *m, const char *name) {
    enum { READ_SIZES = 6 }; /* 3/8 to 2 in */
    const char *source = m->p.size < READ_SIZES
                             ? N_("ACI 211.1-91 table 6.3.6, by stone and fineness")
                             : N_("ACI 211.1-91 table 6.3.6, by stone and fineness; "
                                  "from memory");
    const gb_concrete *c = m->c;
    gb_between p;
    if (!gb_coarse_points(m->p.size, c->fineness, &p))
        return NULL;
    return GB_WHY(x, name, GB_SHARE, gb_coarse_share(m->p.size, c->fineness).of_one,
                  "low + (high - low) * (fineness - from) / (to - from)",
                  GB_INPUTS(gb_fact(x, "low", GB_SHARE, p.low, source),
                            gb_fact(x, "high", GB_SHARE, p.high, source),
                            gb_why_member(x, m, "fineness", GB_PLAIN, &c->fineness),
                            gb_fact(x, "from", GB_PLAIN, p.from, source),
                            gb_fact(x, "to", GB_PLAIN, p.to, source), largest(x, m)));
}

const gb_why *gb_why_coarse_share(gb_explainer *x, const gb_made *m) {
    const gb_concrete *c = m->c;
    if (c->placing == GB_BY_HAND_PLACED)
        return tabled_share(x, m, "share");
    const gb_why *placed =
        gb_why_of_word(x, m, "placed", GB_PLAIN, gb_placed(c->placing), &c->placing,
                       N_("ACI 211.1-91: up to 10 % more stone where it is paved, 10 % "
                          "less where it is pumped"));
    return GB_WHY(x, "share", GB_SHARE, m->p.coarse_share.of_one, "tabled * placed",
                  GB_INPUTS(tabled_share(x, m, "tabled"), placed));
}

const gb_why *gb_why_designed_stone(gb_explainer *x, const gb_made *m) {
    return GB_WHY(
        x, "stone", GB_DENSITY, m->p.parts.stone.kg_m3, "share * rodded",
        GB_INPUTS(gb_why_coarse_share(x, m),
                  gb_why_member(x, m, "rodded", GB_DENSITY, &m->c->rodded.kg_m3)),
        .of = gb_made_id(m));
}

/* ---- beside it, by mass ------------------------------------------------------------ */

const gb_why *gb_why_first_mass(gb_explainer *x, const gb_made *m) {
    static const char *const SOURCES[] = {
        [GB_US] = N_("ACI 211.1-91 table 6.3.7.1, by stone and air; from memory"),
        [GB_METRIC] = N_("ACI 211.1-91 table A1.5.3.7.1, by stone and air; from memory")};
    const gb_concrete *c = m->c;
    const gb_why *printed =
        gb_why_as_printed(x, m, "printed", m->p.first_mass, &c->air, SOURCES[c->table]);
    return GB_WHY(x, "first_mass", GB_DENSITY, m->p.first_mass.kg_m3, "printed",
                  GB_INPUTS(printed, largest(x, m)));
}

const gb_why *gb_why_sand_by_mass(gb_explainer *x, const gb_made *m) {
    return GB_WHY(x, "sand_by_mass", GB_DENSITY, m->p.sand_by_mass.kg_m3,
                  "first_mass - water - cement - stone",
                  GB_INPUTS(gb_why_first_mass(x, m),
                            gb_why_in_concrete(x, m, GB_WATER_IN, GB_DESIGNED),
                            gb_why_in_concrete(x, m, GB_CEMENT_IN, GB_DESIGNED),
                            gb_why_in_concrete(x, m, GB_STONE_IN, GB_DESIGNED)));
}
