#include "gaugebox/plan.h"

#include "gaugebox/count.h"
#include "words/mark.h"

#include <math.h>

static const double HOUR = 3600.0;

/* The edge between cover and blankets, and that to an enclosure, are the colder one's. */
static gb_shield shield_of(double c, double *limit) {
    if (!gb_under(c, gb_cold_for_masonry().c))
        return GB_NO_SHIELD;
    gb_shield shield = gb_over(c, gb_fahrenheit(25).c)   ? GB_COVER
                       : gb_over(c, gb_fahrenheit(20).c) ? GB_BLANKETS
                                                         : GB_ENCLOSURE;
    static const double EDGES_F[] = {
        [GB_COVER] = 40, [GB_BLANKETS] = 25, [GB_ENCLOSURE] = 20};
    *limit = gb_fahrenheit(EDGES_F[shield]).c;
    return shield;
}

static void protect_masonry(const gb_weather *w, bool grouted, gb_protection *p) {
    p->by_least = grouted;
    p->value = grouted ? gb_coldest_hour(w, GB_FIRST_TWO_DAYS).air : gb_mean_daily(w);
    p->shield = shield_of(p->value.c, &p->limit.c);
    p->time.s = (grouted ? 48 : 24) * HOUR;
    p->source = N_("TMS 602 art. 1.8 C.3, from memory");
}

/* Exposed to freezing and not loaded: 3 days of cement type I. */
static void protect_concrete(const gb_weather *w, gb_protection *p) {
    p->by_least = true;
    p->value = gb_coldest_hour(w, GB_WATCH).air;
    p->limit = gb_cold_for_concrete();
    p->shield = gb_under(p->value.c, p->limit.c) ? GB_BLANKETS : GB_NO_SHIELD;
    p->time.s = 72 * HOUR;
    p->source = N_("ACI 306R table 5.1");
}

gb_duration gb_wet_curing(void) {
    return (gb_duration){7 * 24 * HOUR};
}

gb_protection gb_protect(const gb_weather *weather, gb_stuff stuff) {
    gb_protection p = {.value = {GB_NONE}, .limit = {GB_NONE}};
    if (stuff == GB_AS_CONCRETE)
        protect_concrete(weather, &p);
    else
        protect_masonry(weather, stuff == GB_AS_GROUT, &p);
    gb_hot_limits hot = gb_masonry_hot_limits();
    gb_hour warmest = gb_warmest_hour(weather, GB_FIRST_DAY);
    p.hot_value = gb_mean_daily(weather);
    p.hot_limit = gb_over(warmest.wind.m_s, hot.wind.m_s) ? hot.hot_windy : hot.hot;
    p.fog = stuff != GB_AS_CONCRETE && gb_over(p.hot_value.c, p.hot_limit.c);
    return p;
}
