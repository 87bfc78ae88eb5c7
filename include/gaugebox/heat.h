/* How warm a batch comes out of the mixer, and what its water must be for that. */
#ifndef GAUGEBOX_HEAT_H
#define GAUGEBOX_HEAT_H

#include "gaugebox/quantity.h"

/* One batch as it goes in. */
typedef struct gb_batch_heat {
    gb_mass binder;    /* dry: cement, lime, powders */
    gb_mass aggregate; /* dry: sand and stone */
    gb_mass moisture;  /* free water in the aggregate */
    gb_mass water;     /* that is added, without the ice */
    gb_mass ice;       /* that is added */
    gb_temp binder_at, aggregate_at, water_at;
    bool frozen; /* the moisture is ice, as warm as the aggregate */
} gb_batch_heat;

/* T = (0.22 (Tb B + Ta A) + Tw W + Ta M - 80 I) / (0.22 (B + A) + W + M + I), in C; of
   frozen moisture Ta M is M (0.5 Ta - 80). Solids hold 0.22 of the heat of water; ice
   takes 144 Btu/lb, 80 cal/g, to melt and half the heat of water to warm. Source: ACI
   305R appendix B and ACI 306R-88 section 3.7 (from memory), the form read in TM 5-852-4.
   Heat of mixing and of the drum is left out. GB_NOT_POSITIVE when a mass is below zero
   or nothing is in it; GB_IMPOSSIBLE when a temperature is none, or moisture is frozen
   above 0 C; GB_FROZEN when the batch does not come out above 0 C, where the equation
   ends. */
gb_status gb_mix_temperature(const gb_batch_heat *batch, gb_temp *mixed) GB_MUST_USE;

/* What the added water must be for a batch of that temperature; whatever comes out,
   below freezing or beyond boiling. GB_NOT_POSITIVE without added water. */
gb_status gb_water_for(const gb_batch_heat *batch, gb_temp wanted,
                       gb_temp *water) GB_MUST_USE;

/* What the aggregate must be, thawed, for a batch of that temperature. GB_NOT_POSITIVE
   without aggregate. */
gb_status gb_aggregate_for(const gb_batch_heat *batch, gb_temp wanted,
                           gb_temp *aggregate) GB_MUST_USE;

/* How much of the added water must be ice instead: with I of it the water is W - I, at
   its own temperature. Zero when the batch is cool enough without. GB_NOT_POSITIVE
   without added water; GB_IMPOSSIBLE when all of it as ice is too little. */
gb_status gb_ice_for(const gb_batch_heat *batch, gb_temp wanted,
                     gb_mass *ice) GB_MUST_USE;

/* Beyond a fifth of the water as ice the equation is not to be trusted, and is unusable
   beyond half (Jabbar, Wasit Journal of Engineering Sciences 5(2), 2017). */
gb_share gb_most_ice(void);

/* Water for mortar is never warmer than 140 F (60 C) (TMS 602 art. 1.8 C). */
gb_temp gb_hottest_water(void);

/* Water or aggregate over 100 F (38 C): those two are mixed before cement meets them, or
   it sets at once (TM 5-852-4). */
gb_temp gb_flash_set(void);

/* Heated aggregate on average at most 150 F (66 C), none over 212 F (100 C)
   (TM 5-852-4). */
gb_temp gb_hottest_aggregate(void);

#endif
