#include "explain/chains.h"

#include <string.h>

/* What a mix has, and what the class that it is exposed to asks for. */

#define TABLE_318 N_("ACI 318 table 19.3.3.1, by the size of the stone, from memory")

const gb_why *gb_why_known_strength(gb_explainer *x, const gb_mixed *m) {
    const gb_mix *mix = m->mix;
    const double *at =
        mix->strength.pa > 0 ? &mix->strength.pa : &mix->concrete.strength.pa;
    return gb_stated(x, "strength", mix->id[0] == '\0' ? NULL : mix->id, GB_PRESSURE, at,
                     mix->id[0] == '\0' ? NULL : gb_text_source(x, &mix->source));
}

/* What the mix has of what a class limits. */
static const gb_why *has(gb_explainer *x, const gb_mixed *m, gb_exposure_limit of,
                         double value) {
    switch (of) {
    case GB_ASKS_STRENGTH:
        return gb_why_known_strength(x, m);
    case GB_ASKS_RATIO:
        return GB_WHY(x, "water_to_cement", GB_PLAIN, value, "most_water / cement",
                      GB_INPUTS(gb_why_water(x, m, GB_MOST_WATER), gb_why_cement(x, m)));
    case GB_ASKS_CEMENT:
        return GB_WHY(x, "cement_in_concrete", GB_DENSITY, value, "cement / yield",
                      GB_INPUTS(gb_why_cement(x, m), gb_why_yield(x, m)));
    default:
        return gb_why_mix_air(x, m);
    }
}

const gb_why *gb_why_exposed_value(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return has(x, &m, a->caution->asked, a->caution->value);
}

/* Air by a table that goes by the size of the stone, its tolerance taken off or added. */
static const gb_why *air_by_size(gb_explainer *x, const gb_exposure_air *air, bool most,
                                 const char *source) {
    const gb_why *table = gb_fact(x, "table_air", GB_SHARE, air->table.of_one, TABLE_318);
    const gb_why *tolerance =
        gb_fact(x, "tolerance", GB_SHARE, air->tolerance.of_one, TABLE_318);
    if (most)
        return GB_WHY(x, "most_air", GB_SHARE, air->most.of_one, "table_air + tolerance",
                      GB_INPUTS(table, tolerance), .source = source);
    if (air->strong.of_one <= 0)
        return GB_WHY(x, "least_air", GB_SHARE, air->least.of_one,
                      "table_air - tolerance", GB_INPUTS(table, tolerance),
                      .source = source);
    const gb_why *less = gb_fact(x, "less_if_strong", GB_SHARE, air->strong.of_one,
                                 N_("ACI 318: over 5000 psi, from memory"));
    return GB_WHY(x, "least_air", GB_SHARE, air->least.of_one,
                  "table_air - less_if_strong - tolerance",
                  GB_INPUTS(table, less, tolerance), .source = source);
}

/* What a class asks for. */
static const gb_why *asks(gb_explainer *x, const gb_mixed *m, gb_exposure exposure,
                          gb_exposure_limit of, double limit) {
    static const int UNITS[] = {
        [GB_ASKS_STRENGTH] = GB_PRESSURE, [GB_ASKS_RATIO] = GB_PLAIN,
        [GB_ASKS_AIR_LEAST] = GB_SHARE,   [GB_ASKS_AIR_MOST] = GB_SHARE,
        [GB_ASKS_CEMENT] = GB_DENSITY,    [GB_ASKS_STONE] = GB_SHARE};
    _Static_assert(sizeof UNITS / sizeof UNITS[0] == GB_EXPOSURE_LIMITS, "one for each");
    const char *source = gb_exposure_asks(exposure).source;
    gb_exposed_mix known = gb_exposed_of(m->mix, m->recipe);
    gb_exposure_air air;
    bool of_air = of == GB_ASKS_AIR_LEAST || of == GB_ASKS_AIR_MOST;
    if (of_air && gb_exposure_air_of(exposure, known.largest, known.strength, &air))
        return air_by_size(x, &air, of == GB_ASKS_AIR_MOST, source);
    return gb_fact(x, "limit", UNITS[of], limit, source);
}

const gb_why *gb_why_exposed_limit(gb_explainer *x, const gb_about *a) {
    const gb_caution *c = a->caution;
    gb_mixed m = gb_mixed_of(a);
    return asks(x, &m, c->exposure, c->asked, c->limit);
}

/* ---- classes beside a concrete ----------------------------------------------------- */

static const struct {
    const char *figure;
    gb_row_code row;
    gb_exposure_limit of;
} CELLS[] = {
    {"strength", GB_ROW_ASKS_STRENGTH, GB_ASKS_STRENGTH},
    {"ratio", GB_ROW_ASKS_RATIO, GB_ASKS_RATIO},
    {"least", GB_ROW_ASKS_AIR, GB_ASKS_AIR_LEAST},
    {"most", GB_ROW_ASKS_AIR, GB_ASKS_AIR_MOST},
    {"least", GB_ROW_ASKS_AIR_LEAST, GB_ASKS_AIR_LEAST},
    {"cement", GB_ROW_ASKS_CEMENT, GB_ASKS_CEMENT},
};

bool gb_is_of_exposures(gb_row_code row) {
    return row >= GB_ROW_EXPOSURE_HEAD && row <= GB_ROW_EXPOSURE_ENDS;
}

const gb_why *gb_why_of_exposures(gb_explainer *x, const gb_row *row,
                                  const gb_figure *figure) {
    gb_mixed m = gb_mixed_of(row->about);
    gb_exposure exposure = row->about->exposure;
    for (size_t i = 0; i < sizeof CELLS / sizeof CELLS[0]; i++)
        if (CELLS[i].row == row->code && strcmp(CELLS[i].figure, figure->name) == 0)
            return exposure == GB_EXPOSURES
                       ? has(x, &m, CELLS[i].of, figure->value)
                       : asks(x, &m, exposure, CELLS[i].of, figure->value);
    return NULL;
}
