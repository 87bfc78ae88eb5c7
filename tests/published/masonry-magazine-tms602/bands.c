#include "published/published.h"

#include <criterion/criterion.h>
#include <math.h>

/* The bands of the cold and the hot masonry rules, row by row, and their edges. */

#define TABLE_2 "TMS 602 art. 1.8 C, read second-hand: Masonry Magazine, September 2004"
#define HOT     "TMS 602 art. 1.8 D, read second-hand: contractors' association"
#define NONE    GB_CAUTION_CODES

typedef struct cold_row {
    double f;
    gb_caution_code printed;
    const char *known_difference;
} cold_row;

/* "below 40 F" is strict. The table prints 40-32, 32-25, 25-20 and "< 20": 32 and 25 are
   in two bands, and the product takes the colder, as a reader on the safe side would. */
static const cold_row COLD[] = {
    {90, NONE, NULL},
    {41, NONE, NULL},
    {40, NONE, NULL},
    {39.9, GB_C_COLD_40, NULL},
    {36, GB_C_COLD_40, NULL},
    {32.1, GB_C_COLD_40, NULL},
    {32, GB_C_COLD_32, NULL},
    {28, GB_C_COLD_32, NULL},
    {25.1, GB_C_COLD_32, NULL},
    {25, GB_C_COLD_25, NULL},
    {22, GB_C_COLD_25, NULL},
    {20.1, GB_C_COLD_25, NULL},
    {20, GB_C_COLD_25,
     "the table prints 25-20 and below 20, so 20.0 F is in the upper; the product takes "
     "the "
     "severer band at every edge"},
    {19.9, GB_C_COLD_20, NULL},
    {0, GB_C_COLD_20, NULL},
};

Test(published_tms602, cold_bands) {
    for (size_t i = 0; i < sizeof COLD / sizeof COLD[0]; i++) {
        const cold_row *row = &COLD[i];
        gb_caution_code got = gb_cold_band((gb_temp){pub_si(GB_TEMP, "F", row->f)});
        if (row->known_difference == NULL)
            cr_expect(got == row->printed, "%g F: band %d, ours %d (%s)", row->f,
                      (int)row->printed, (int)got, TABLE_2);
        else
            cr_expect(got != row->printed, "%g F: no longer the known difference (%s)",
                      row->f, row->known_difference);
    }
}

typedef struct hot_row {
    double f;
    double mph; /* NaN: no wind stated */
    gb_caution_code printed;
} hot_row;

/* Over 100 F, or over 90 F with wind over 8 mph; shade over 115 F, or over 105 F with
   that wind. All strict as printed. */
static const hot_row HOTS[] = {
    {90, NAN, NONE},       {95, NAN, NONE},
    {100, NAN, NONE},      {100.1, NAN, GB_C_HOT},
    {115, NAN, GB_C_HOT},  {115.1, NAN, GB_C_HOT_SHADE},
    {100, 8, NONE},        {100.1, 8, GB_C_HOT},
    {90, 10, NONE},        {90.1, 8, NONE},
    {90.1, 8.1, GB_C_HOT}, {105, 8.1, GB_C_HOT},
    {105.1, 8, GB_C_HOT},  {105.1, 8.1, GB_C_HOT_SHADE},
    {115, 8, GB_C_HOT},    {120, 0, GB_C_HOT_SHADE},
};

Test(published_tms602, hot_bands) {
    for (size_t i = 0; i < sizeof HOTS / sizeof HOTS[0]; i++) {
        const hot_row *row = &HOTS[i];
        gb_temp air = {pub_si(GB_TEMP, "F", row->f)};
        gb_speed wind = {isnan(row->mph) ? (double)NAN
                                         : pub_si(GB_SPEED, "mph", row->mph)};
        gb_caution_code got = gb_hot_band(air, wind);
        cr_expect(got == row->printed, "%g F, %g mph: band %d, ours %d (%s)", row->f,
                  row->mph, (int)row->printed, (int)got, HOT);
    }
}

/* "Mortar used within 2 h of first mixing in hot weather", from the band's own edge on.
 */
static const struct life {
    double f;
    pub_figure hours;
} LIVES[] = {
    {100, {"life at 100 F h", "ASTM C270", PUB_READ, .printed = 2.5, .tolerance = 0.005}},
    {100.1,
     {"life at 100.1 F h", "TMS 602 art. 1.8 D.2", PUB_FROM_MEMORY, .printed = 2,
      .tolerance = 0.005}},
    {115.1,
     {"life at 115.1 F h", "TMS 602 art. 1.8 D.2", PUB_FROM_MEMORY, .printed = 2,
      .tolerance = 0.005}},
};

Test(published_tms602, working_life_in_heat) {
    static const char *const MIXES[] = {"mortar/type-s", "mortar/type-n"};
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof LIVES / sizeof LIVES[0]; i++)
        for (size_t k = 0; k < 2; k++) {
            pub_job job;
            gb_volume some = {pub_si(GB_VOLUME, "ft3", 5)};
            pub_volume_job(&job, pub_mix(&table, MIXES[k]), some);
            job.job.weather.air.c = pub_si(GB_TEMP, "F", LIVES[i].f);
            pub_plan(&table, &job);
            pub_check_for(MIXES[k], &LIVES[i].hours,
                          pub_in(GB_DURATION, "h", job.plan.mixes[0].life.s));
        }
    pub_close(&table);
}
