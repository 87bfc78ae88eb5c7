/* Air: its moisture, its wind at the work, and how fast fresh concrete dries in it. */
#ifndef GAUGEBOX_AIR_H
#define GAUGEBOX_AIR_H

#include "gaugebox/quantity.h"

/* Pressure of saturated water vapour in Pa, over ice up to 0.01 C, over water from there
   on. Source: Hyland and Wexler, as ASHRAE Fundamentals (2017), chapter 1, equations 5
   and 6, prints them. From -100 to 200 C; NaN outside. */
double gb_saturation_pa(gb_temp air);

/* Relative humidity of air whose dew point is that, and the dew point of air that humid
   (over zero): the temperature at which its vapour saturates. NaN where
   gb_saturation_pa is. */
gb_share gb_humidity_of(gb_temp air, gb_temp dew_point);
gb_temp gb_dew_point(gb_temp air, gb_share humidity);

/* Wind 0.5 m above the work of a wind that a station reads 10 m above the ground: two
   thirds of it (ACI 305R, from memory; the 1/7 power law gives 0.652). */
gb_speed gb_wind_at_work(gb_speed station);

/* Water that a bleeding surface of concrete loses, kg/(m2 s). Wind is measured 0.5 m
   above it; one that is NaN counts as still, any other NaN makes the rate one. Never
   below zero: where the air is warmer and damp, water settles instead. Uno     E =
   (Tc^2.5 - r Ta^2.5)(1 + 0.4 V) 1e-6       lb/ft2/h, F, mph Menzel  E = 0.44 (e(Tc) - r
   e(Ta))(0.253 + 0.096 V)   lb/ft2/h, psi, mph Source: Uno, ACI Materials Journal 95-M34
   (1998), after Menzel (1954). Both go back to a lake, and the real rate may be 40 % more
   or less (Hover, ACI SP-338, 2020). Uno's needs temperatures over 0 F, which colder ones
   count as. */
double gb_evaporation(gb_temp concrete, gb_temp air, gb_share humidity, gb_speed wind);
double gb_evaporation_by_menzel(gb_temp concrete, gb_temp air, gb_share humidity,
                                gb_speed wind);

/* Precautions from so much on: 0.2 lb/ft2/h, 1 kg/m2/h (ACI 305R). */
double gb_evaporation_limit(void);

#endif
