#include "published/published.h"

#include "gaugebox/air.h"

#include <criterion/criterion.h>
#include <math.h>

/* Moist air: ASHRAE's saturation tables, dew points and humidities by others' formulas.
 */

#define ASHRAE  "ASHRAE Fundamentals (2017), chapter 1, table 3"
#define EXAMPLE "ASHRAE Fundamentals (2017), chapter 1, example 1"
#define BOLTON  "Bolton (1980), in the tests of a meteorological library"
#define FAO     "FAO-56, annex 2, after Tetens"
#define WMO     "WMO-No. 8, annex 4.B"
#define HYLAND  "Hyland and Wexler, worked out apart from this program"

static const double PSI_PA = 6894.757293168;

static const struct {
    double c;
    pub_figure pa;
} SATURATION[] = {
    {-20, {"-20 C", ASHRAE, PUB_READ, .printed = 103.24, .percent = 0.03}},
    {-5, {"-5 C", ASHRAE, PUB_READ, .printed = 401.74, .percent = 0.03}},
    {5, {"5 C", ASHRAE, PUB_READ, .printed = 872.6, .percent = 0.03}},
    {25, {"25 C", ASHRAE, PUB_READ, .printed = 3169.7, .percent = 0.03}},
    {50, {"50 C", ASHRAE, PUB_READ, .printed = 12351.3, .percent = 0.03}},
    {100, {"100 C", ASHRAE, PUB_READ, .printed = 101418, .percent = 0.03}},
    {0, {"0 C, Bolton", BOLTON, PUB_READ, .printed = 611.2, .percent = 0.3}},
    {5, {"5 C, Bolton", BOLTON, PUB_READ, .printed = 872, .percent = 0.3}},
    {10, {"10 C, Bolton", BOLTON, PUB_READ, .printed = 1227, .percent = 0.3}},
    {18, {"18 C, Bolton", BOLTON, PUB_READ, .printed = 2063, .percent = 0.3}},
    {25, {"25 C, Bolton", BOLTON, PUB_READ, .printed = 3167, .percent = 0.3}},
    {20, {"20 C, FAO", FAO, PUB_FROM_MEMORY, .printed = 2338, .percent = 0.3}},
    {30, {"30 C, FAO", FAO, PUB_FROM_MEMORY, .printed = 4243, .percent = 0.3}},
    {20, {"20 C, WMO", WMO, PUB_DERIVED, .printed = 2332.6, .percent = 0.3}},
    {40, {"40 C, WMO", WMO, PUB_DERIVED, .printed = 7367.46, .percent = 0.3}},
    {-10, {"-10 C", HYLAND, PUB_DERIVED, .printed = 259.90, .percent = 0.01}},
    {10, {"10 C", HYLAND, PUB_DERIVED, .printed = 1228.00, .percent = 0.01}},
    {20, {"20 C", HYLAND, PUB_DERIVED, .printed = 2338.80, .percent = 0.01}},
    {35, {"35 C", HYLAND, PUB_DERIVED, .printed = 5627.82, .percent = 0.01}},
    {40, {"40 C", HYLAND, PUB_DERIVED, .printed = 7383.46, .percent = 0.01}},
};

Test(published_ashrae, saturation) {
    for (size_t i = 0; i < sizeof SATURATION / sizeof SATURATION[0]; i++)
        pub_check(&SATURATION[i].pa, gb_saturation_pa((gb_temp){SATURATION[i].c}));
}

static const struct {
    double f;
    pub_figure psi;
} SATURATION_PSI[] = {
    {-4, {"-4 F", ASHRAE, PUB_READ, .printed = 0.014974, .percent = 0.03}},
    {23, {"23 F", ASHRAE, PUB_READ, .printed = 0.058268, .percent = 0.03}},
    {41, {"41 F", ASHRAE, PUB_READ, .printed = 0.12656, .percent = 0.03}},
    {77, {"77 F", ASHRAE, PUB_READ, .printed = 0.45973, .percent = 0.03}},
    {122, {"122 F", ASHRAE, PUB_READ, .printed = 1.79140, .percent = 0.03}},
    {212, {"212 F", ASHRAE, PUB_READ, .printed = 14.7094, .percent = 0.03}},
};

Test(published_ashrae, saturation_in_psi) {
    for (size_t i = 0; i < sizeof SATURATION_PSI / sizeof SATURATION_PSI[0]; i++)
        pub_check(&SATURATION_PSI[i].psi,
                  gb_saturation_pa((gb_temp){pub_si(GB_TEMP, "F", SATURATION_PSI[i].f)}) /
                      PSI_PA);
}

static const struct {
    double c, humidity;
    pub_figure dew;
} DEW_POINTS[] = {
    {30, 30, {"30 C, 30 %", BOLTON, PUB_READ, .printed = 11, .tolerance = 0.5}},
    {25, 45, {"25 C, 45 %", BOLTON, PUB_READ, .printed = 12, .tolerance = 0.5}},
    {10, 55, {"10 C, 55 %", BOLTON, PUB_READ, .printed = 1, .tolerance = 0.5}},
    {20, 80, {"20 C, 80 %", BOLTON, PUB_READ, .printed = 16, .tolerance = 0.5}},
    {25, 85, {"25 C, 85 %", BOLTON, PUB_READ, .printed = 22, .tolerance = 0.5}},
    {20, 50, {"20 C, 50 %", HYLAND, PUB_DERIVED, .printed = 9.27, .tolerance = 0.01}},
    {25, 60, {"25 C, 60 %", HYLAND, PUB_DERIVED, .printed = 16.70, .tolerance = 0.01}},
    {30, 40, {"30 C, 40 %", HYLAND, PUB_DERIVED, .printed = 14.94, .tolerance = 0.01}},
    {35, 20, {"35 C, 20 %", HYLAND, PUB_DERIVED, .printed = 8.71, .tolerance = 0.01}},
    {10, 80, {"10 C, 80 %", HYLAND, PUB_DERIVED, .printed = 6.71, .tolerance = 0.01}},
    {0, 70, {"0 C, 70 %", HYLAND, PUB_DERIVED, .printed = -4.26, .tolerance = 0.01}},
    {25, 60, {"25 C, 60 %", WMO, PUB_DERIVED, .printed = 16.69, .tolerance = 0.03}},
    {40, 14, {"40 C, 14 %", EXAMPLE, PUB_READ, .printed = 7, .tolerance = 0.6}},
};

Test(published_ashrae, dew_points) {
    for (size_t i = 0; i < sizeof DEW_POINTS / sizeof DEW_POINTS[0]; i++)
        pub_check(&DEW_POINTS[i].dew,
                  gb_dew_point((gb_temp){DEW_POINTS[i].c},
                               (gb_share){DEW_POINTS[i].humidity / 100})
                      .c);
}

static const struct {
    double c, dew;
    pub_figure humidity;
} HUMIDITIES[] = {
    {25, 15, {"25 C, dew 15 C", BOLTON, PUB_READ, .printed = 53.80, .tolerance = 0.2}},
    {(70 - 32) / 1.8,
     (55 - 32) / 1.8,
     {"70 F, dew 55 F", BOLTON, PUB_READ, .printed = 58.935, .tolerance = 0.2}},
    {40, 7, {"40 C, dew 7 C", EXAMPLE, PUB_READ, .printed = 14, .tolerance = 0.6}},
};

Test(published_ashrae, humidity_of_a_dew_point) {
    for (size_t i = 0; i < sizeof HUMIDITIES / sizeof HUMIDITIES[0]; i++)
        pub_check(
            &HUMIDITIES[i].humidity,
            100 * gb_humidity_of((gb_temp){HUMIDITIES[i].c}, (gb_temp){HUMIDITIES[i].dew})
                      .of_one);
}
