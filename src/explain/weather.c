#include "explain/chains.h"

#include "gaugebox/air.h"

#include <math.h>

/* The hour of a file that a copy was taken of. */
static const gb_hour *kept(const gb_weather *w, const gb_hour *hour) {
    for (size_t i = 0; i < w->hours.count; i++)
        if (hour->line != 0 && w->hours.list[i].at.s == hour->at.s)
            return &w->hours.list[i];
    return NULL;
}

const gb_why *gb_why_air_at(gb_explainer *x, const gb_job *job, gb_hour hour) {
    const gb_weather *w = &job->weather;
    const gb_hour *h = kept(w, &hour);
    if (h != NULL)
        return gb_stated(x, "air", NULL, GB_TEMP, &h->air.c, NULL);
    bool low = !isnan(w->low.c) && hour.air.c == w->low.c && hour.air.c != w->air.c;
    return low ? gb_stated(x, "low", NULL, GB_TEMP, &w->low.c, NULL)
               : gb_stated(x, "air", NULL, GB_TEMP, &w->air.c, NULL);
}

const gb_why *gb_why_wind_at(gb_explainer *x, const gb_job *job, gb_hour hour) {
    const gb_weather *w = &job->weather;
    const gb_hour *h = kept(w, &hour);
    if (h == NULL && isnan(w->wind.m_s))
        return gb_fact(x, "wind", GB_SPEED, 0, N_("not stated: still"));
    if (h == NULL)
        return gb_stated(x, "wind", NULL, GB_SPEED, &w->wind.m_s, NULL);
    if (isnan(h->wind.m_s))
        return gb_fact(x, "wind", GB_SPEED, 0, N_("the file tells none: still"));
    if (!w->hours.station_wind)
        return gb_stated(x, "wind", NULL, GB_SPEED, &h->wind.m_s, NULL);
    return GB_WHY(
        x, "wind", GB_SPEED, h->wind.m_s, "station_wind * 2 / 3",
        GB_INPUTS(gb_stated(x, "station_wind", NULL, GB_SPEED, &h->station.m_s, NULL)),
        .source = N_("from 10 m to 0.5 m: ACI 305R, from memory"));
}

static const gb_why *humidity_at(gb_explainer *x, const gb_job *job, gb_hour hour) {
    const gb_weather *w = &job->weather;
    const gb_hour *h = kept(w, &hour);
    if (h == NULL)
        return gb_stated(x, "humidity", NULL, GB_SHARE, &w->humidity.of_one, NULL);
    if (isnan(h->dew_point.c))
        return gb_stated(x, "humidity", NULL, GB_SHARE, &h->humidity.of_one, NULL);
    return GB_WHY(
        x, "humidity", GB_SHARE, h->humidity.of_one, "humidity_of(air, dew_point)",
        GB_INPUTS(gb_why_air_at(x, job, hour),
                  gb_stated(x, "dew_point", NULL, GB_TEMP, &h->dew_point.c, NULL)),
        .source = N_("Hyland and Wexler, ASHRAE Fundamentals (2017)"));
}

/* Stated, or the warmest of what it is at the least. */
static const gb_why *concrete_in(gb_explainer *x, const gb_about *a, gb_hour hour) {
    const gb_job *job = a->plan->job;
    const gb_weather *w = &job->weather;
    if (!isnan(w->concrete.c))
        return gb_stated(x, "concrete", NULL, GB_TEMP, &w->concrete.c, NULL);
    gb_temp fresh = gb_fresh_concrete(job, a->mix, hour);
    const gb_why *least[3] = {gb_why_air_at(x, job, hour)};
    size_t n = 1;
    if (job->temperatures.at.line != 0 && !isnan(job->temperatures.wanted.c))
        least[n++] = gb_why_wanted(x, a);
    if (fresh.c > hour.air.c)
        least[n++] = gb_fact(x, "placed", GB_TEMP, gb_cold_of(a->mix, hour.air).placed.c,
                             N_("ACI 306R, by the least dimension of the section"));
    bool cold = n > 1 && fresh.c >= least[n - 1]->value;
    return GB_WHY(x, "concrete", GB_TEMP, fresh.c, "most()", .inputs = least,
                  .input_count = cold || n == 1 ? n : n - 1,
                  .source =
                      N_("not stated: at the least so warm as air, wish and cold ask"));
}

const gb_why *gb_why_drying(gb_explainer *x, const gb_about *a) {
    const gb_job *job = a->plan->job;
    gb_hour hour;
    double rate = gb_worst_drying(job, a->mix, &hour);
    return GB_WHY(x, "drying", GB_EVAPORATION, rate,
                  "evaporation(concrete, air, humidity, wind)",
                  GB_INPUTS(concrete_in(x, a, hour), gb_why_air_at(x, job, hour),
                            humidity_at(x, job, hour), gb_why_wind_at(x, job, hour)),
                  .source = N_("Uno, ACI Materials Journal 95-M34 (1998)"));
}

/* ---- of the day -------------------------------------------------------------------- */

/* The least or the most of the air of a span. */
static const gb_why *extreme(gb_explainer *x, const gb_job *job, const char *name,
                             gb_span span, bool least) {
    gb_hour hour = least ? gb_coldest_hour(&job->weather, span)
                         : gb_warmest_hour(&job->weather, span);
    gb_hours hours = gb_hours_of(&job->weather, span);
    if (hours.count == 0) {
        const gb_why *one = gb_why_air_at(x, job, hour);
        return one == NULL
                   ? NULL
                   : GB_WHY(x, name, GB_TEMP, one->value, one->name, GB_INPUTS(one));
    }
    const gb_why **all = gb_arena_take(x->arena, hours.count, sizeof(const gb_why *));
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < hours.count; i++)
        all[i] = gb_why_air_at(x, job, hours.list[i]);
    return GB_WHY(x, name, GB_TEMP, hour.air.c, least ? "least()" : "most()",
                  .inputs = all, .input_count = hours.count);
}

const gb_why *gb_why_least_air(gb_explainer *x, const gb_job *job, gb_span span) {
    return extreme(x, job, "least_air", span, true);
}

const gb_why *gb_why_most_air(gb_explainer *x, const gb_job *job, gb_span span) {
    return extreme(x, job, "most_air", span, false);
}

const gb_why *gb_why_mean_daily(gb_explainer *x, const gb_job *job) {
    const gb_weather *w = &job->weather;
    gb_hours hours = gb_hours_of(w, GB_FIRST_DAY);
    double mean = gb_mean_daily(w).c;
    if (w->mean == GB_MEAN_OF_EXTREMES || hours.count == 0)
        return GB_WHY(x, "mean_daily", GB_TEMP, mean, "(least_air + most_air) / 2",
                      GB_INPUTS(extreme(x, job, "least_air", GB_FIRST_DAY, true),
                                extreme(x, job, "most_air", GB_FIRST_DAY, false)),
                      .source = N_("mean of the extremes, TMS 602"));
    size_t count = hours.count > 24 ? 24 : hours.count;
    const gb_why **all = gb_arena_take(x->arena, count, sizeof(const gb_why *));
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < count; i++)
        all[i] = gb_why_air_at(x, job, hours.list[i]);
    return GB_WHY(x, "mean_daily", GB_TEMP, mean, "mean()", .inputs = all,
                  .input_count = count);
}

const gb_why *gb_why_most_wind(gb_explainer *x, const gb_job *job) {
    gb_hours hours = gb_hours_of(&job->weather, GB_AT_WORK);
    double most = gb_most_wind(&job->weather).m_s;
    for (size_t i = 0; i < hours.count; i++)
        if (hours.list[i].wind.m_s == most)
            return gb_why_wind_at(x, job, hours.list[i]);
    return NULL;
}
