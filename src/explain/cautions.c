#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>

/* ---- values ------------------------------------------------------------------------ */

static const gb_why *weather(gb_explainer *x, const char *name, const gb_temp *at) {
    return gb_stated(x, name, NULL, GB_TEMP, &at->c, NULL);
}

static const gb_why *coldest(gb_explainer *x, const gb_about *a) {
    const gb_weather *w = &a->plan->job->weather;
    const gb_why *units[2];
    size_t n = 0;
    if (!isnan(w->stone.c))
        units[n++] = weather(x, "stone", &w->stone);
    if (!isnan(w->block.c))
        units[n++] = weather(x, "block", &w->block);
    return GB_WHY(x, "coldest", GB_TEMP, a->caution->value, "least()", .inputs = units,
                  .input_count = n);
}

/* The layer whose depths differ most, or whose slurry on a scored back is thinnest. */
static const gb_take *layer_of(const gb_about *a) {
    const gb_need *n = &a->mix->need;
    bool spread = a->caution->code == GB_C_DEPTH_SPREAD;
    for (size_t i = 0; i < n->take_count; i++) {
        const gb_take *t = n->takes[i];
        if (spread ? t->depth_se.m / t->depth.m == a->caution->value
                   : t->layer->kind == GB_SLURRY && t->depth.m == a->caution->value)
            return t;
    }
    return NULL;
}

static const gb_why *of_layer(gb_explainer *x, const gb_about *a) {
    const gb_take *t = layer_of(a);
    if (t == NULL)
        return NULL;
    if (a->caution->code == GB_C_SCORED_THIN)
        return gb_why_depth(x, t);
    return GB_WHY(x, "error", GB_SHARE, a->caution->value, "depth_error / depth",
                  GB_INPUTS(gb_why_depth_error(x, t), gb_why_depth(x, t)),
                  .of = t->piece->name);
}

#define EIGHTH N_("an eighth of a bag is the least that is batched: common practice")

static const gb_why *eighth_of(gb_explainer *x, const char *name, int unit, double value,
                               const char *formula, const gb_why *whole) {
    return GB_WHY(x, name, unit, value, formula, GB_INPUTS(whole), .source = EIGHTH);
}

static const gb_why *weather_value(gb_explainer *x, const gb_about *a) {
    const gb_caution *c = a->caution;
    const gb_job *job = a->plan->job;
    switch (c->code) {
    case GB_C_STONE_COLD:
    case GB_C_UNITS_COLD:
    case GB_C_UNITS_FROZEN:
        return coldest(x, a);
    case GB_C_WIND_BREAK:
        return gb_why_wind_at(x, job, c->hour);
    case GB_C_CONCRETE_HOT:
        return weather(x, "concrete", &job->weather.concrete);
    case GB_C_RAIN_AFTER:
        return gb_fact(
            x, "time", GB_DURATION, c->value,
            N_("from the end of the work to the first hour of the file with rain"));
    case GB_C_DRYING:
        return gb_why_drying(x, a);
    default:
        return gb_why_air_at(x, job, c->hour);
    }
}

const gb_why *gb_why_caution_value(gb_explainer *x, const gb_about *a) {
    const gb_caution *c = a->caution;
    if (gb_caution_ratio(c->code) != GB_NO_RATIO)
        return gb_why_ratio_of_caution(x, a);
    if (gb_is_of_exposure(c->code))
        return gb_why_exposed_value(x, a);
    const gb_job *job = a->plan->job;
    switch (c->code) {
    case GB_C_MIXER_SMALL:
    case GB_C_MIXER_TOO_SMALL:
        return gb_why_usable(x, a);
    case GB_C_MIXER_WEAK:
    case GB_C_MIXER_TOO_WEAK:
        return gb_why_mass_limit(x, a);
    case GB_C_LIFE_TOO_SHORT:
        return GB_WHY(x, "time", GB_DURATION, c->value, "mixing + bag_time / 8",
                      GB_INPUTS(gb_why_wet_mixing(x, a), gb_why_bag_time(x, a)),
                      .source = EIGHTH);
    case GB_C_LIFE_SHORT:
        return GB_WHY(x, "time", GB_DURATION, c->value, "mixing + bag_time",
                      GB_INPUTS(gb_why_wet_mixing(x, a), gb_why_bag_time(x, a)));
    case GB_C_BY_HAND:
        return gb_why_whole_bags(x, a);
    case GB_C_SCORED_THIN:
    case GB_C_DEPTH_SPREAD:
        return of_layer(x, a);
    case GB_C_BED_THIN:
    case GB_C_BED_THICK:
        return gb_why_level_bed(x, c->take, c->tread);
    case GB_C_SAND_DRINKS:
    case GB_C_SAND_TOO_WET:
        return gb_why_moisture(x, &(gb_mixed){.job = job}, gb_job_moisture(job));
    case GB_C_BUCKET_HEAVY:
        return gb_why_lifted(x, a);
    case GB_C_SHOVELS_DIFFER:
        return gb_why_shovel_spread(x, job);
    case GB_C_COLOUR_STRONG:
        return gb_why_share_of_kind(x, a, GB_PIGMENT);
    case GB_C_CARBON_BLACK:
        return gb_why_share_of_kind(x, a, GB_CARBON_BLACK);
    case GB_C_CHLORIDE:
        return gb_why_share_of_kind(x, a, GB_CHLORIDE);
    default:
        return weather_value(x, a);
    }
}

/* ---- limits ------------------------------------------------------------------------ */

static const gb_why *most_moisture(gb_explainer *x, const gb_mixed *m, double limit) {
    const gb_why *least = gb_why_water(x, m, GB_FIRST_WATER);
    const gb_why *sand = gb_why_sand(x, m);
    if (!gb_is_proportioned(m->mix))
        return GB_WHY(x, "most_moisture", GB_SHARE, limit, "least_water / sand",
                      GB_INPUTS(least, sand));
    return GB_WHY(x, "most_moisture", GB_SHARE, limit, "(least_water + drunk) / sand",
                  GB_INPUTS(least, gb_why_drunk(x, m), sand));
}

const gb_why *gb_why_caution_limit(gb_explainer *x, const gb_about *a) {
    const gb_caution *c = a->caution;
    gb_mixed m = gb_mixed_of(a);
    if (gb_caution_ratio(c->code) != GB_NO_RATIO)
        return gb_fact(x, "limit", GB_PLAIN, c->limit, c->source);
    if (gb_is_of_exposure(c->code))
        return gb_why_exposed_limit(x, a);
    switch (c->code) {
    case GB_C_MIXER_SMALL:
        return gb_why_yield(x, &m);
    case GB_C_MIXER_TOO_SMALL:
        return eighth_of(x, "least", GB_VOLUME, c->limit, "yield / 8",
                         gb_why_yield(x, &m));
    case GB_C_MIXER_WEAK:
        return gb_why_wet(x, &m);
    case GB_C_MIXER_TOO_WEAK:
        return eighth_of(x, "least", GB_MASS, c->limit, "wet / 8", gb_why_wet(x, &m));
    case GB_C_LIFE_TOO_SHORT:
    case GB_C_LIFE_SHORT:
        return gb_why_life(x, a);
    case GB_C_SCORED_THIN:
        return gb_why_scored(x);
    case GB_C_BED_THIN:
    case GB_C_BED_THICK:
        return gb_why_level_limit(x, c->take, c->code == GB_C_BED_THICK);
    case GB_C_SAND_DRINKS:
        return gb_why_sand_absorption(x, &m);
    case GB_C_SAND_TOO_WET:
        return most_moisture(x, &m, c->limit);
    case GB_C_DEPTH_SPREAD:
    case GB_C_SHOVELS_DIFFER:
    case GB_C_COLOUR_STRONG:
    case GB_C_CARBON_BLACK:
    case GB_C_CHLORIDE:
        return gb_fact(x, "limit", GB_SHARE, c->limit, c->source);
    case GB_C_BY_HAND:
        return gb_fact(x, "limit", GB_PLAIN, c->limit, c->source);
    case GB_C_BUCKET_HEAVY:
        return gb_fact(x, "limit", GB_MASS, c->limit, c->source);
    case GB_C_WIND_BREAK:
        return gb_fact(x, "limit", GB_SPEED, c->limit, c->source);
    case GB_C_RAIN_AFTER:
        return gb_fact(x, "limit", GB_DURATION, c->limit, c->source);
    case GB_C_DRYING:
        return gb_fact(x, "limit", GB_EVAPORATION, c->limit, c->source);
    default:
        return gb_fact(x, "limit", GB_TEMP, c->limit, c->source);
    }
}
