#include "published/published.h"

#include <criterion/criterion.h>
#include <math.h>

/* Masonry once it is laid: by the mean of the day to come, grouted by its minimum. Both
   sides of every edge; where two bands share one it is the colder one's. */

#define STUDY "TEK 03-01C and a study page: 40 F, 24 h; grouted 48 h by the minimum"
#define TMS   "TMS 602 art. 1.8 C.3"
#define HEAT  "Masonry Industry Council (1999); Masonry Magazine, June 2002, p. 33"
#define TALK  "Mason Contractors Association, cold weather construction"

static const struct {
    double f;
    gb_shield shield;
    const char *source;
} BANDS[] = {
    {40.1, GB_NO_SHIELD, STUDY}, {40, GB_NO_SHIELD, STUDY}, {39.9, GB_COVER, STUDY},
    {32, GB_COVER, STUDY},       {25.1, GB_COVER, TMS},     {25, GB_BLANKETS, TMS},
    {24.9, GB_BLANKETS, TMS},    {20.1, GB_BLANKETS, TMS},  {20, GB_ENCLOSURE, TMS},
    {19.9, GB_ENCLOSURE, TMS},   {-10, GB_ENCLOSURE, TMS},
};

Test(published_tms602_protection, mean_of_the_day) {
    for (size_t i = 0; i < sizeof BANDS / sizeof BANDS[0]; i++) {
        gb_weather w = pub_weather(BANDS[i].f + 6, BANDS[i].f - 6, 0);
        gb_protection p = gb_protect(&w, GB_AS_MORTAR);
        cr_expect(p.shield == BANDS[i].shield, "%g F (%s)", BANDS[i].f, BANDS[i].source);
        cr_expect(fabs(p.time.s - 24 * 3600.0) < 1e-9, "24 h (%s)", STUDY);
        cr_expect(!p.by_least);
    }
}

Test(published_tms602_protection, grouted_by_the_minimum) {
    for (size_t i = 0; i < sizeof BANDS / sizeof BANDS[0]; i++) {
        gb_weather w = pub_weather(BANDS[i].f + 30, BANDS[i].f, 0);
        gb_protection p = gb_protect(&w, GB_AS_GROUT);
        cr_expect(p.shield == BANDS[i].shield, "%g F (%s)", BANDS[i].f, BANDS[i].source);
        cr_expect(fabs(p.time.s - 48 * 3600.0) < 1e-9, "48 h (%s)", STUDY);
        cr_expect(p.by_least);
    }
}

/* A forecast of 40 F by day and of 20 F by night is a mean of 30 F. */
static const pub_figure MEAN = {"40 and 20 F", TALK, PUB_DERIVED, .printed = 30,
                                .tolerance = 1e-6};

Test(published_tms602_protection, mean_daily_temperature) {
    gb_weather w = pub_weather(40, 20, 0);
    pub_check(&MEAN, pub_in(GB_TEMP, "F", gb_mean_daily(&w).c));
}

/* Fog spray: over 100 F, or over 90 F in wind over 8 mph. */
static const struct {
    double f, mph;
    bool fog;
} FOG[] = {
    {99.9, 0, false},  {100, 0, false},  {100.1, 0, true}, {90.1, 8, false},
    {90.1, 8.1, true}, {90, 8.1, false}, {100, 8, false},  {100.1, 8, true},
};

Test(published_tms602_protection, fog_spray) {
    for (size_t i = 0; i < sizeof FOG / sizeof FOG[0]; i++) {
        gb_weather w = pub_weather(FOG[i].f + 10, FOG[i].f - 10, FOG[i].mph);
        cr_expect(gb_protect(&w, GB_AS_MORTAR).fog == FOG[i].fog, "%g F, %g mph (%s)",
                  FOG[i].f, FOG[i].mph, HEAT);
        cr_expect(!gb_protect(&w, GB_AS_CONCRETE).fog, "concrete is kept wet");
    }
}
