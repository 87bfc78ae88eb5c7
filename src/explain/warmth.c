#include "explain/chains.h"

#include <math.h>

/* One batch in numbers, and what its figures are made of. */
typedef struct warm {
    gb_warmth w;
    const gb_why *binder, *aggregate, *moisture, *water;
    const gb_why *binder_at, *aggregate_at, *water_at;
} warm;

#define HEAT N_("solids hold 0.22 of the heat of water: ACI 305R, TM 5-852-4")
#define ICE                                                                              \
    N_("as without ice, which takes 144 Btu/lb (80 cal/g) to melt and half the heat of " \
       "water to warm: ACI 306R-88, from memory")

static const gb_why *mass(gb_explainer *x, const char *name, gb_mass m) {
    return gb_fact(x, name, GB_MASS, m.kg,
                   N_("in the first batch, with its usual water"));
}

static bool warm_of(gb_explainer *x, const gb_about *a, warm *m) {
    const gb_temperatures *t = &a->plan->job->temperatures;
    if (!gb_warm_batch(a->plan->job, a->mix, &m->w))
        return false;
    const gb_batch_heat *b = &m->w.batch;
    m->binder = mass(x, "binder", b->binder);
    m->aggregate = mass(x, "aggregate", b->aggregate);
    m->moisture = mass(x, "moisture", b->moisture);
    m->water = mass(x, "water", b->water);
    m->binder_at = gb_stated(x, "binder_at", NULL, GB_TEMP, &t->cement.c, NULL);
    m->aggregate_at = gb_stated(x, "aggregate_at", NULL, GB_TEMP, &t->sand.c, NULL);
    m->water_at = gb_stated(x, "water_at", NULL, GB_TEMP, &t->water.c, NULL);
    return true;
}

#define SOLIDS "0.22 * (binder * binder_at + aggregate * aggregate_at)"
#define HOLDS  "(0.22 * (binder + aggregate) + moisture + water)"

static const gb_why *mixed_with(gb_explainer *x, const warm *m, const char *name,
                                gb_temp value, const gb_why *water_at) {
    bool frozen = m->w.batch.frozen;
    return GB_WHY(x, name, GB_TEMP, value.c,
                  frozen ? "mix_of_frozen(binder, aggregate, moisture, water, binder_at, "
                           "aggregate_at, water_at)"
                         : "(" SOLIDS
                           " + moisture * aggregate_at + water * water_at) / " HOLDS,
                  GB_INPUTS(m->binder, m->aggregate, m->moisture, m->water, m->binder_at,
                            m->aggregate_at, water_at),
                  .source = frozen ? ICE : HEAT);
}

const gb_why *gb_why_mixed(gb_explainer *x, const gb_about *a) {
    warm m;
    return warm_of(x, a, &m) ? mixed_with(x, &m, "mixed", m.w.mixed, m.water_at) : NULL;
}

static const gb_why *hottest(gb_explainer *x) {
    return gb_fact(x, "water_at", GB_TEMP, gb_hottest_water().c,
                   N_("TMS 602 art. 1.8 C"));
}

const gb_why *gb_why_reached(gb_explainer *x, const gb_about *a) {
    warm m;
    return warm_of(x, a, &m) ? mixed_with(x, &m, "reached", m.w.reached, hottest(x))
                             : NULL;
}

static const gb_why *wanted(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "wanted", NULL, GB_TEMP, &a->plan->job->temperatures.wanted.c,
                     NULL);
}

const gb_why *gb_why_wanted(gb_explainer *x, const gb_about *a) {
    return wanted(x, a);
}

const gb_why *gb_why_mix_or_wanted(gb_explainer *x, const gb_about *a) {
    return isnan(a->plan->job->temperatures.wanted.c) ? gb_why_mixed(x, a) : wanted(x, a);
}

const gb_why *gb_why_least_mix(gb_explainer *x, const gb_about *a) {
    gb_mix_band band = gb_band_of_mix(&a->plan->job->weather, a->mix);
    return gb_fact(x, "limit", GB_TEMP, band.least.c, band.source);
}

const gb_why *gb_why_most_mix(gb_explainer *x, const gb_about *a) {
    gb_mix_band band = gb_band_of_mix(&a->plan->job->weather, a->mix);
    return gb_fact(x, "limit", GB_TEMP, band.most.c, band.source);
}

/* What the water alone has to be. */
const gb_why *gb_why_water_for(gb_explainer *x, const gb_about *a) {
    warm m;
    if (!warm_of(x, a, &m))
        return NULL;
    bool frozen = m.w.batch.frozen;
    double value = m.w.way == GB_WARM_BY_SAND ? m.w.needed.c : m.w.water.c;
    return GB_WHY(x, "water_for", GB_TEMP, value,
                  frozen ? "water_for_frozen(wanted, binder, aggregate, moisture, water, "
                           "binder_at, aggregate_at)"
                         : "(wanted * " HOLDS " - " SOLIDS
                           " - moisture * aggregate_at) / water",
                  GB_INPUTS(wanted(x, a), m.binder, m.aggregate, m.moisture, m.water,
                            m.binder_at, m.aggregate_at),
                  .source = frozen ? ICE : HEAT);
}

const gb_why *gb_why_hottest_water(gb_explainer *x, const gb_about *a) {
    (void)a;
    return hottest(x);
}

const gb_why *gb_why_stated_water(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "value", NULL, GB_TEMP, &a->plan->job->temperatures.water.c,
                     NULL);
}

const gb_why *gb_why_sand_for(gb_explainer *x, const gb_about *a) {
    warm m;
    if (!warm_of(x, a, &m))
        return NULL;
    return GB_WHY(x, "sand_for", GB_TEMP, m.w.sand.c,
                  "(wanted * " HOLDS " - 0.22 * binder * binder_at - water * water_at) / "
                  "(0.22 * aggregate + moisture)",
                  GB_INPUTS(wanted(x, a), m.binder, m.aggregate, m.moisture, m.water,
                            m.binder_at, hottest(x)),
                  .source = HEAT);
}

const gb_why *gb_why_ice(gb_explainer *x, const gb_about *a) {
    warm m;
    if (!warm_of(x, a, &m))
        return NULL;
    return GB_WHY(x, "ice", GB_MASS, m.w.ice.kg,
                  "ice_for(mixed, wanted, binder, aggregate, moisture, water, water_at)",
                  GB_INPUTS(gb_why_mixed(x, a), wanted(x, a), m.binder, m.aggregate,
                            m.moisture, m.water, m.water_at),
                  .source = ICE);
}

const gb_why *gb_why_ice_share(gb_explainer *x, const gb_about *a) {
    warm m;
    if (!warm_of(x, a, &m))
        return NULL;
    return GB_WHY(x, "ice_share", GB_SHARE, m.w.ice.kg / m.w.batch.water.kg,
                  "ice / water", GB_INPUTS(gb_why_ice(x, a), m.water));
}

#define STATED(function, name, member)                                                   \
    const gb_why *function(gb_explainer *x, const gb_about *a) {                         \
        return gb_stated(x, name, NULL, GB_TEMP, &a->plan->job->temperatures.member.c,   \
                         NULL);                                                          \
    }
STATED(gb_why_cement_at, "cement", cement)
STATED(gb_why_sand_at, "sand", sand)
STATED(gb_why_water_at, "water", water)

const gb_why *gb_why_warm_limit(gb_explainer *x, const gb_about *a, gb_row_code row) {
    (void)a;
    if (row == GB_ROW_WARMTH_ICE_ROUGH)
        return gb_fact(x, "limit", GB_SHARE, gb_most_ice().of_one,
                       N_("Jabbar, Wasit Journal of Engineering Sciences 5(2)"));
    gb_temp limit = row == GB_ROW_WARMTH_FLASH ? gb_flash_set() : gb_hottest_aggregate();
    return gb_fact(x, "limit", GB_TEMP, limit.c, N_("TM 5-852-4"));
}
