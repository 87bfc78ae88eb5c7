#include "engine/caution.h"

#include "gaugebox/air.h"
#include "gaugebox/count.h"

#include <math.h>

static void add_at(gb_caution_list *to, gb_caution_code code, double value, double limit,
                   gb_hour hour) {
    gb_add_caution(to, code, value, limit);
    to->list[to->count - 1].hour = hour;
}

/* ---- masonry ----------------------------------------------------------------------- */

gb_temp gb_cold_for_masonry(void) {
    return gb_fahrenheit(40);
}

gb_caution_code gb_cold_band(gb_temp air) {
    if (!gb_under(air.c, gb_cold_for_masonry().c))
        return GB_CAUTION_CODES;
    if (gb_over(air.c, gb_freezing().c))
        return GB_C_COLD_40;
    if (gb_over(air.c, gb_fahrenheit(25).c))
        return GB_C_COLD_32;
    if (gb_over(air.c, gb_fahrenheit(20).c))
        return GB_C_COLD_25;
    return GB_C_COLD_20;
}

gb_hot_limits gb_masonry_hot_limits(void) {
    return (gb_hot_limits){.hot = gb_fahrenheit(100),
                           .hot_windy = gb_fahrenheit(90),
                           .shade = gb_fahrenheit(115),
                           .shade_windy = gb_fahrenheit(105),
                           .wind = {gb_si(GB_SPEED, "mph", 8)}};
}

/* The two limits that hold for a wind; one that is not stated counts as still. */
static void limits_for(gb_speed wind, gb_temp *hot, gb_temp *shade) {
    gb_hot_limits l = gb_masonry_hot_limits();
    bool windy = gb_over(wind.m_s, l.wind.m_s);
    *hot = windy ? l.hot_windy : l.hot;
    *shade = windy ? l.shade_windy : l.shade;
}

gb_caution_code gb_hot_band(gb_temp air, gb_speed wind) {
    gb_temp hot;
    gb_temp shade;
    limits_for(wind, &hot, &shade);
    if (gb_over(air.c, shade.c))
        return GB_C_HOT_SHADE;
    return gb_over(air.c, hot.c) ? GB_C_HOT : GB_CAUTION_CODES;
}

/* The worse, the higher. */
static int heat_of(const gb_hour *h) {
    gb_caution_code band = gb_hot_band(h->air, h->wind);
    return band == GB_C_HOT_SHADE ? 2 : band == GB_C_HOT;
}

gb_hour gb_hot_hour(const gb_weather *weather) {
    gb_hour worst = gb_warmest_hour(weather, GB_AT_WORK);
    gb_hours hours = gb_hours_of(weather, GB_AT_WORK);
    for (size_t i = 0; i < hours.count; i++) {
        const gb_hour *h = &hours.list[i];
        if (heat_of(h) > heat_of(&worst) ||
            (heat_of(h) == heat_of(&worst) && h->air.c > worst.air.c))
            worst = *h;
    }
    return worst;
}

static void cold_caution(const gb_weather *w, gb_caution_list *to) {
    static const double EDGES[] = {[GB_C_COLD_40] = 40,
                                   [GB_C_COLD_32] = 32,
                                   [GB_C_COLD_25] = 25,
                                   [GB_C_COLD_20] = 20};
    gb_hour coldest = gb_coldest_hour(w, GB_AT_WORK);
    gb_caution_code cold = gb_cold_band(coldest.air);
    if (cold != GB_CAUTION_CODES)
        add_at(to, cold, coldest.air.c, gb_fahrenheit(EDGES[cold]).c, coldest);
}

/* From 25 F down, wind over 15 mph is kept off; below 20 F an enclosure does that. */
static void wind_caution(const gb_weather *w, gb_caution_list *to) {
    double limit = gb_si(GB_SPEED, "mph", 15);
    gb_hours hours = gb_hours_of(w, GB_AT_WORK);
    gb_hour stated = gb_coldest_hour(w, GB_AT_WORK);
    gb_hour worst = {.wind = {GB_NONE}};
    for (size_t i = 0; i < hours.count || i == 0; i++) {
        const gb_hour *h = hours.count > 0 ? &hours.list[i] : &stated;
        if (gb_cold_band(h->air) == GB_C_COLD_25 && gb_over(h->wind.m_s, limit) &&
            !(h->wind.m_s <= worst.wind.m_s))
            worst = *h;
    }
    if (!isnan(worst.wind.m_s))
        add_at(to, GB_C_WIND_BREAK, worst.wind.m_s, limit, worst);
}

static void hot_caution(const gb_weather *w, gb_caution_list *to) {
    gb_hour hottest = gb_hot_hour(w);
    gb_caution_code hot = gb_hot_band(hottest.air, hottest.wind);
    gb_temp limit;
    gb_temp shade;
    limits_for(hottest.wind, &limit, &shade);
    if (hot != GB_CAUTION_CODES)
        add_at(to, hot, hottest.air.c, hot == GB_C_HOT ? limit.c : shade.c, hottest);
}

/* ---- concrete ---------------------------------------------------------------------- */

gb_temp gb_hottest_concrete(void) {
    return gb_fahrenheit(95);
}

gb_temp gb_cold_for_concrete(void) {
    return gb_fahrenheit(40);
}

gb_cold_concrete gb_concrete_in_cold(gb_length least, gb_temp air) {
    static const double EDGES_IN[] = {12, 36, 72};
    static const double PLACED_F[] = {55, 50, 45, 40};
    static const double DROP_F[] = {50, 40, 30, 20};
    size_t section = 0;
    while (section < 3 && gb_over(least.m, gb_si(GB_LENGTH, "in", EDGES_IN[section])))
        section++;
    double over = gb_over(air.c, gb_fahrenheit(30).c)  ? 5
                  : gb_over(air.c, gb_fahrenheit(0).c) ? 10
                                                       : 15;
    return (gb_cold_concrete){.placed = gb_fahrenheit(PLACED_F[section]),
                              .mixed = gb_fahrenheit(PLACED_F[section] + over),
                              .drop_c = DROP_F[section] * 5.0 / 9.0};
}

gb_cold_concrete gb_cold_of(const gb_mix_plan *mix, gb_temp air) {
    double least = GB_NONE;
    for (size_t i = 0; i < mix->need.take_count; i++)
        least = gb_smaller(least, mix->need.takes[i]->depth.m);
    return gb_concrete_in_cold((gb_length){isnan(least) ? 0 : least}, air);
}

/* Now, or in the watch. */
static gb_hour coldest_for_concrete(const gb_weather *w) {
    gb_hour now = gb_coldest_hour(w, GB_AT_WORK);
    gb_hour later = gb_coldest_hour(w, GB_WATCH);
    return later.air.c < now.air.c ? later : now;
}

gb_temp gb_fresh_concrete(const gb_job *job, const gb_mix_plan *mix, gb_hour hour) {
    const gb_weather *w = &job->weather;
    if (!isnan(w->concrete.c))
        return w->concrete;
    double c =
        gb_larger(hour.air.c,
                  job->temperatures.at.line == 0 ? GB_NONE : job->temperatures.wanted.c);
    bool cold = gb_under(coldest_for_concrete(w).air.c, gb_cold_for_concrete().c);
    return (gb_temp){cold ? gb_larger(c, gb_cold_of(mix, hour.air).placed.c) : c};
}

double gb_worst_drying(const gb_job *job, const gb_mix_plan *mix, gb_hour *hour) {
    gb_hours hours = gb_hours_of(&job->weather, GB_AT_WORK);
    gb_hour stated = gb_warmest_hour(&job->weather, GB_AT_WORK);
    double worst = GB_NONE;
    *hour = stated;
    for (size_t i = 0; i < hours.count || i == 0; i++) {
        const gb_hour *h = hours.count > 0 ? &hours.list[i] : &stated;
        double rate = isnan(h->humidity.of_one)
                          ? GB_NONE
                          : gb_evaporation(gb_fresh_concrete(job, mix, *h), h->air,
                                           h->humidity, h->wind);
        if (isnan(rate) || rate <= worst)
            continue;
        worst = rate;
        *hour = *h;
    }
    return worst;
}

/* Concrete that lies open: a slab, not a core. */
static bool is_exposed(const gb_mix_plan *mix) {
    for (size_t i = 0; i < mix->need.take_count; i++)
        if (mix->need.takes[i]->layer->kind == GB_SLAB)
            return true;
    return false;
}

static void concrete_cautions(const gb_job *job, const gb_mix_plan *mix,
                              gb_caution_list *to) {
    const gb_weather *w = &job->weather;
    gb_hour coldest = coldest_for_concrete(w);
    gb_hour driest;
    double drying = gb_worst_drying(job, mix, &driest);
    if (gb_under(coldest.air.c, gb_cold_for_concrete().c))
        add_at(to, GB_C_CONCRETE_COLD, coldest.air.c, gb_cold_for_concrete().c, coldest);
    if (gb_over(w->concrete.c, gb_hottest_concrete().c))
        gb_add_caution(to, GB_C_CONCRETE_HOT, w->concrete.c, gb_hottest_concrete().c);
    if (is_exposed(mix) && w->at.line != 0 && isnan(drying))
        gb_add_caution(to, GB_C_DRYING_UNKNOWN, GB_NONE, GB_NONE);
    if (is_exposed(mix) && gb_over(drying, gb_evaporation_limit()))
        add_at(to, GB_C_DRYING, drying, gb_evaporation_limit(), driest);
}

/* ---- any mix ----------------------------------------------------------------------- */

static void unit_cautions(const gb_weather *w, bool slurry, gb_caution_list *to) {
    double coldest = gb_smaller(w->stone.c, w->block.c);
    /* Freezing itself is frost, so the edge counts, here and in the forecast. */
    if (!isnan(coldest) && !gb_over(coldest, gb_freezing().c))
        gb_add_caution(to, GB_C_UNITS_FROZEN, coldest, gb_freezing().c);
    else if (gb_under(coldest, gb_cold_for_masonry().c))
        gb_add_caution(to, slurry ? GB_C_STONE_COLD : GB_C_UNITS_COLD, coldest,
                       gb_cold_for_masonry().c);
}

static void frost_and_rain(const gb_weather *w, gb_caution_list *to) {
    gb_hour frost;
    gb_hour rain = gb_rain_hour(w);
    if (gb_frost_due(w, &frost))
        add_at(to, GB_C_FROST_DUE, frost.air.c, gb_freezing().c, frost);
    gb_hour after = gb_rain_after(w);
    if (!isnan(rain.rain.m))
        add_at(to, GB_C_RAIN, GB_NONE, GB_NONE, rain);
    else if (!isnan(after.rain.m))
        add_at(to, GB_C_RAIN_AFTER, (double)(after.at.s - w->to.s), gb_rain_watch().s,
               after);
}

void gb_weather_cautions(const gb_job *job, const gb_mix_plan *mix, gb_caution_list *to) {
    const gb_weather *weather = &job->weather;
    if (mix->stuff == GB_AS_CONCRETE) {
        concrete_cautions(job, mix, to);
    } else {
        cold_caution(weather, to);
        wind_caution(weather, to);
    }
    hot_caution(weather, to);
    unit_cautions(weather, mix->stuff == GB_AS_SLURRY, to);
    frost_and_rain(weather, to);
}
