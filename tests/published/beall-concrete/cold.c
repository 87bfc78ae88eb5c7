#include "published/published.h"

#include <criterion/criterion.h>
#include <math.h>

/* Concrete in the cold, as Beall prints ACI 306R: both sides of every edge. Degrees
   Fahrenheit, inches. */

#define BEALL_37 "Beall, Masonry and Concrete (2004), figure 3-37, after ACI 306R"
#define BEALL_38 "Beall, Masonry and Concrete (2004), figure 3-38, after ACI 306R"
#define ACI_88   "ACI 306R-88, table 3.1"

static const double STEP_F = 0.1;

static double f_of(gb_temp t) {
    return t.c * 1.8 + 32.0;
}

static gb_cold_concrete in_cold(double inches, double air_f) {
    return gb_concrete_in_cold((gb_length){pub_si(GB_LENGTH, "in", inches)},
                               (gb_temp){pub_si(GB_TEMP, "F", air_f)});
}

static const struct {
    double least, most; /* of the section; an edge is the thinner one's */
    double placed, over_30, over_0, below_0, drop;
    const char *source;
    pub_status status;
} SECTIONS[] = {
    {0.5, 12, 55, 60, 65, 70, 50, BEALL_37, PUB_READ},
    {12.1, 36, 50, 55, 60, 65, 40, BEALL_37, PUB_READ},
    {36.1, 72, 45, 50, 55, 60, 30, ACI_88, PUB_FROM_MEMORY},
    {72.1, 120, 40, 45, 50, 55, 20, ACI_88, PUB_FROM_MEMORY},
};

static void check(size_t i, const char *id, double printed, double got) {
    const pub_figure row = {id, SECTIONS[i].source, SECTIONS[i].status,
                            .printed = printed, .tolerance = 1e-6};
    pub_check(&row, got);
}

Test(published_beall_concrete, by_section_and_air) {
    for (size_t i = 0; i < sizeof SECTIONS / sizeof SECTIONS[0]; i++)
        for (int edge = 0; edge < 2; edge++) {
            double inches = edge == 0 ? SECTIONS[i].least : SECTIONS[i].most;
            check(i, "placed", SECTIONS[i].placed, f_of(in_cold(inches, 35).placed));
            check(i, "mixed, over 30 F", SECTIONS[i].over_30,
                  f_of(in_cold(inches, 30 + STEP_F).mixed));
            check(i, "mixed, 30 F", SECTIONS[i].over_0, f_of(in_cold(inches, 30).mixed));
            check(i, "mixed, over 0 F", SECTIONS[i].over_0,
                  f_of(in_cold(inches, STEP_F).mixed));
            check(i, "mixed, 0 F", SECTIONS[i].below_0, f_of(in_cold(inches, 0).mixed));
            check(i, "drop", SECTIONS[i].drop, in_cold(inches, 35).drop_c * 1.8);
        }
}

/* Exposed, not loaded, cement type I: 3 days; from 40 F down. */
static const pub_figure DAYS = {"exposed, no load", BEALL_38, PUB_READ, .printed = 3,
                                .tolerance = 1e-6};

Test(published_beall_concrete, protection) {
    static const struct {
        double low;
        bool cold;
    } LOWS[] = {{40.1, false}, {40, false}, {39.9, true}, {32, true}, {10, true}};
    for (size_t i = 0; i < sizeof LOWS / sizeof LOWS[0]; i++) {
        gb_weather w = pub_weather(50, LOWS[i].low, NAN);
        gb_protection p = gb_protect(&w, GB_AS_CONCRETE);
        cr_expect((p.shield != GB_NO_SHIELD) == LOWS[i].cold, "%g F", LOWS[i].low);
        pub_check(&DAYS, p.time.s / 86400);
    }
}

/* Kept wet for 7 days: cement type I. */
static const pub_figure WET = {"moist curing, type I", "UFGS 03301A p. 42", PUB_READ,
                               .printed = 7, .tolerance = 1e-6};

Test(published_beall_concrete, moist_curing) {
    pub_check(&WET, gb_wet_curing().s / 86400);
}
