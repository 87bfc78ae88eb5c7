#include "gaugebox/weather.h"

#include "gaugebox/count.h"

#include <math.h>

enum { HOUR_S = 3600 };

gb_duration gb_frost_watch(void) {
    return (gb_duration){72.0 * HOUR_S};
}

static int64_t end_of(const gb_weather *w, gb_span span) {
    switch (span) {
    case GB_FIRST_DAY:
        return w->from.s + (int64_t)24 * HOUR_S;
    case GB_FIRST_TWO_DAYS:
        return w->from.s + (int64_t)48 * HOUR_S;
    case GB_WATCH:
        return w->from.s + (int64_t)gb_frost_watch().s;
    default:
        return w->to.s;
    }
}

/* Hours from the first to `s`, those begun counting or not; at most all of them. */
static size_t hours_to(const gb_hours *all, int64_t s, bool begun) {
    int64_t since = all->count == 0 ? 0 : s - all->list[0].at.s;
    if (since <= 0)
        return 0;
    int64_t hours = (since + (begun ? HOUR_S - 1 : 0)) / HOUR_S;
    return hours > (int64_t)all->count ? all->count : (size_t)hours;
}

/* Hours follow one another without a gap, so they are counted off from the first. */
gb_hours gb_hours_of(const gb_weather *weather, gb_span span) {
    gb_hours part = weather->hours;
    size_t from = hours_to(&part, weather->from.s, false);
    size_t to = hours_to(&part, end_of(weather, span), true);
    part.list = to > from ? part.list + from : NULL;
    part.count = to > from ? to - from : 0;
    return part;
}

static gb_hour stated(const gb_weather *w, gb_temp air) {
    return (gb_hour){.air = air,
                     .humidity = w->humidity,
                     .wind = w->wind,
                     .rain = {w->rain ? 0 : GB_NONE}};
}

gb_hour gb_coldest_hour(const gb_weather *weather, gb_span span) {
    gb_hours hours = gb_hours_of(weather, span);
    if (weather->hours.file == NULL)
        return stated(weather, span == GB_AT_WORK || isnan(weather->low.c)
                                   ? weather->air
                                   : weather->low);
    gb_hour coldest = stated(weather, (gb_temp){GB_NONE});
    for (size_t i = 0; i < hours.count; i++)
        if (!(hours.list[i].air.c >= coldest.air.c))
            coldest = hours.list[i];
    return coldest;
}

gb_hour gb_warmest_hour(const gb_weather *weather, gb_span span) {
    gb_hours hours = gb_hours_of(weather, span);
    if (weather->hours.file == NULL)
        return stated(weather, weather->air);
    gb_hour warmest = stated(weather, (gb_temp){GB_NONE});
    for (size_t i = 0; i < hours.count; i++)
        if (!(hours.list[i].air.c <= warmest.air.c))
            warmest = hours.list[i];
    return warmest;
}

gb_speed gb_most_wind(const gb_weather *weather) {
    gb_hours hours = gb_hours_of(weather, GB_AT_WORK);
    gb_speed most = {hours.count == 0 ? weather->wind.m_s : GB_NONE};
    for (size_t i = 0; i < hours.count; i++)
        most.m_s = gb_larger(most.m_s, hours.list[i].wind.m_s);
    return most;
}

gb_hour gb_rain_hour(const gb_weather *weather) {
    gb_hours hours = gb_hours_of(weather, GB_AT_WORK);
    for (size_t i = 0; i < hours.count; i++)
        if (hours.list[i].rain.m > 0)
            return hours.list[i];
    return stated(weather, weather->air);
}

gb_duration gb_rain_watch(void) {
    return (gb_duration){12.0 * HOUR_S};
}

gb_hour gb_rain_after(const gb_weather *weather) {
    const gb_hours *h = &weather->hours;
    int64_t end = weather->to.s + (int64_t)gb_rain_watch().s;
    for (size_t i = 0; i < h->count; i++)
        if (h->list[i].at.s >= weather->to.s && h->list[i].at.s < end &&
            h->list[i].rain.m > 0)
            return h->list[i];
    return (gb_hour){.rain = {GB_NONE}};
}

gb_temp gb_freezing(void) {
    return gb_fahrenheit(32);
}

bool gb_frost_due(const gb_weather *weather, gb_hour *hour) {
    *hour = gb_coldest_hour(weather, GB_WATCH);
    bool known = weather->hours.file != NULL || !isnan(weather->low.c);
    return known && !isnan(hour->air.c) && !gb_over(hour->air.c, gb_freezing().c);
}

gb_temp gb_mean_daily(const gb_weather *weather) {
    double low = gb_coldest_hour(weather, GB_FIRST_DAY).air.c;
    double high = gb_warmest_hour(weather, GB_FIRST_DAY).air.c;
    gb_hours hours = gb_hours_of(weather, GB_FIRST_DAY);
    if (weather->mean == GB_MEAN_OF_EXTREMES || hours.count == 0)
        return (gb_temp){(low + high) / 2.0};
    /* Work that begins within an hour touches one hour more than a day has. */
    size_t count = hours.count > 24 ? 24 : hours.count;
    double sum = 0;
    for (size_t i = 0; i < count; i++)
        sum += hours.list[i].air.c;
    return (gb_temp){sum / (double)count};
}
