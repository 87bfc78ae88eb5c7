#include "published/published.h"

#include <criterion/criterion.h>
#include <math.h>

/* What a mix may be as it is mixed, frost and rain after the work: both sides of every
   edge. */

#define MAGAZINE "Masonry Magazine, September 2004, p. 22 table 2 and p. 24"
#define GROUTED  MAGAZINE "; IMI Technology Brief 2.5.6"
#define HOT      "Mason Contractors Association; ACI 530.1-92 as a trade magazine quotes it"
#define ACI_301  "ACI 301-20 and 305.1-14, second hand and from memory"
#define SECTION  "ACI 306R as Beall (2004) prints it, figure 3-37"
#define UFGS     "UFGS 03301A, p. 42"

static const struct {
    gb_stuff stuff;
    double air_f, low_f;
    double least_f, most_f; /* NaN: no limit */
    const char *source;
} BANDS[] = {
    {GB_AS_MORTAR, 60, 50, 40, 120, HOT},
    {GB_AS_MORTAR, 39, 30, 40, 120, MAGAZINE},
    {GB_AS_MORTAR, 19, 10, 40, 120, MAGAZINE},
    {GB_AS_GROUT, 60, 50, 40, 120, HOT},
    {GB_AS_GROUT, 32.1, 20, 40, 120, MAGAZINE},
    {GB_AS_GROUT, 32, 20, 70, 120, GROUTED},
    {GB_AS_GROUT, 31.9, 20, 70, 120, GROUTED},
    {GB_AS_GROUT, 19, 10, 70, 120, GROUTED},
    {GB_AS_CONCRETE, 60, 50, NAN, 95, ACI_301},
    {GB_AS_CONCRETE, 40, 40, NAN, 95, ACI_301},
    {GB_AS_CONCRETE, 39.9, 39, 60, 95, SECTION},
    {GB_AS_CONCRETE, 50, 39.9, 60, 95, SECTION},
    {GB_AS_CONCRETE, 30, 30, 65, 95, SECTION},
    {GB_AS_CONCRETE, 0, 0, 70, 95, SECTION},
};

static bool same(double limit_c, double f) {
    double c = pub_si(GB_TEMP, "F", f);
    return isnan(f) ? isnan(limit_c) : fabs(limit_c - c) < 1e-9;
}

Test(published_tms602_protection, bands_of_a_mix) {
    for (size_t i = 0; i < sizeof BANDS / sizeof BANDS[0]; i++) {
        gb_weather w = pub_weather(BANDS[i].air_f, BANDS[i].low_f, NAN);
        gb_mix_plan mix = {.stuff = BANDS[i].stuff};
        gb_mix_band band = gb_band_of_mix(&w, &mix);
        cr_expect(same(band.least.c, BANDS[i].least_f), "row %zu: least %g C (%s)", i,
                  band.least.c, BANDS[i].source);
        cr_expect(same(band.most.c, BANDS[i].most_f), "row %zu: most %g C (%s)", i,
                  band.most.c, BANDS[i].source);
    }
}

/* Water freezes at 32 F, and the edge counts: common practice. */
Test(published_tms602_protection, frost_is_due_from_freezing_on) {
    static const struct {
        double low_f;
        bool due;
    } LOWS[] = {{32.1, false}, {32, true}, {31.9, true}, {NAN, false}};
    for (size_t i = 0; i < sizeof LOWS / sizeof LOWS[0]; i++) {
        gb_weather w = pub_weather(50, LOWS[i].low_f, NAN);
        gb_hour hour;
        cr_expect(gb_frost_due(&w, &hour) == LOWS[i].due, "low %g F", LOWS[i].low_f);
    }
}

/* Fresh concrete is kept from rain for 12 h: the last hour of them counts, the next does
   not, nor does rain of the work itself. */
Test(published_tms602_protection, rain_soon_after) {
    enum { HOURS = 40, START = 8, END = 16 };
    static const struct {
        int hour;
        bool due;
    } RAINS[] = {{END - 1, false}, {END, true}, {END + 11, true}, {END + 12, false}};
    for (size_t i = 0; i < sizeof RAINS / sizeof RAINS[0]; i++) {
        gb_hour hours[HOURS] = {0};
        for (int h = 0; h < HOURS; h++)
            hours[h].at.s = h * 3600;
        hours[RAINS[i].hour].rain.m = 0.002;
        gb_weather w = pub_weather(60, 50, NAN);
        w.hours = (gb_hours){.list = hours, .count = HOURS, .file = "weather.csv"};
        w.from.s = START * 3600;
        w.to.s = END * 3600;
        bool due = !isnan(gb_rain_after(&w).rain.m);
        cr_expect(due == RAINS[i].due, "rain at hour %d (%s)", RAINS[i].hour, UFGS);
    }
}
