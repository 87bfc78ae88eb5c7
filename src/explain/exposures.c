#include "explain/chains.h"

/* What a mix has, and what the class that it is exposed to asks for. */

#define TABLE_318 N_("ACI 318 table 19.3.3.1, by the size of the stone, from memory")

static const gb_why *strength(gb_explainer *x, const gb_mixed *m) {
    const gb_mix *mix = m->mix;
    bool stated = mix->strength.pa > 0;
    return gb_stated(x, "strength", mix->id, GB_PRESSURE,
                     stated ? &mix->strength.pa : &mix->concrete.strength.pa,
                     gb_text_source(x, &mix->source));
}

const gb_why *gb_why_exposed_value(gb_explainer *x, const gb_about *a) {
    const gb_caution *c = a->caution;
    gb_mixed m = gb_mixed_of(a);
    switch (c->asked) {
    case GB_ASKS_STRENGTH:
        return strength(x, &m);
    case GB_ASKS_RATIO:
        return GB_WHY(
            x, "water_to_cement", GB_PLAIN, c->value, "most_water / cement",
            GB_INPUTS(gb_why_water(x, &m, GB_MOST_WATER), gb_why_cement(x, &m)));
    case GB_ASKS_CEMENT:
        return GB_WHY(x, "cement_in_concrete", GB_DENSITY, c->value, "cement / yield",
                      GB_INPUTS(gb_why_cement(x, &m), gb_why_yield(x, &m)));
    default:
        return gb_stated(x, "air", m.mix->id, GB_SHARE, &m.mix->air.of_one,
                         gb_text_source(x, &m.mix->source));
    }
}

/* Air by a table that goes by the size of the stone, its tolerance taken off or added. */
static const gb_why *air_by_size(gb_explainer *x, const gb_caution *c,
                                 const gb_exposure_air *air) {
    const gb_why *table = gb_fact(x, "table_air", GB_SHARE, air->table.of_one, TABLE_318);
    const gb_why *tolerance =
        gb_fact(x, "tolerance", GB_SHARE, air->tolerance.of_one, TABLE_318);
    if (c->asked == GB_ASKS_AIR_MOST)
        return GB_WHY(x, "most_air", GB_SHARE, c->limit, "table_air + tolerance",
                      GB_INPUTS(table, tolerance), .source = c->source);
    if (air->strong.of_one <= 0)
        return GB_WHY(x, "least_air", GB_SHARE, c->limit, "table_air - tolerance",
                      GB_INPUTS(table, tolerance), .source = c->source);
    const gb_why *less = gb_fact(x, "less_if_strong", GB_SHARE, air->strong.of_one,
                                 N_("ACI 318: over 5000 psi, from memory"));
    return GB_WHY(x, "least_air", GB_SHARE, c->limit,
                  "table_air - less_if_strong - tolerance",
                  GB_INPUTS(table, less, tolerance), .source = c->source);
}

const gb_why *gb_why_exposed_limit(gb_explainer *x, const gb_about *a) {
    static const int UNITS[] = {
        [GB_ASKS_STRENGTH] = GB_PRESSURE, [GB_ASKS_RATIO] = GB_PLAIN,
        [GB_ASKS_AIR_LEAST] = GB_SHARE,   [GB_ASKS_AIR_MOST] = GB_SHARE,
        [GB_ASKS_CEMENT] = GB_DENSITY,    [GB_ASKS_STONE] = GB_SHARE};
    _Static_assert(sizeof UNITS / sizeof UNITS[0] == GB_EXPOSURE_LIMITS, "one for each");
    const gb_caution *c = a->caution;
    gb_mixed m = gb_mixed_of(a);
    gb_exposed_mix known = gb_exposed_of(m.mix, m.recipe);
    gb_exposure_air air;
    bool of_air = c->asked == GB_ASKS_AIR_LEAST || c->asked == GB_ASKS_AIR_MOST;
    if (of_air && gb_exposure_air_of(c->exposure, known.largest, known.strength, &air))
        return air_by_size(x, c, &air);
    return gb_fact(x, "limit", UNITS[c->asked], c->limit, c->source);
}
