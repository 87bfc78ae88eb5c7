/* What aggregate weighs and how much water it holds. A mass of aggregate is said on one
   of three bases, and is never mixed with one on another: oven-dry; saturated and
   surface-dry (SSD), its pores full; as delivered, as the scale shows it. The moisture
   and the absorption are both shares of the oven-dry mass.
   Source: ACI 211.1 and ASTM C127, C128, C566 for the words; arithmetic. */
#ifndef GAUGEBOX_MOISTURE_H
#define GAUGEBOX_MOISTURE_H

#include "gaugebox/sand.h"

typedef enum gb_basis { GB_OVEN_DRY, GB_SATURATED, GB_AS_DELIVERED } gb_basis;

typedef struct gb_wetness {
    gb_share moisture;   /* all water of the aggregate as delivered */
    gb_share absorption; /* what its pores hold */
} gb_wetness;

/* The same; a moisture that is NaN is the absorption: saturated, surface-dry. */
gb_wetness gb_wetness_of(gb_share moisture, gb_share absorption);

/* The mass of the same aggregate on another basis:
     SSD = dry (1 + absorption);  delivered = dry (1 + moisture). */
gb_mass gb_on_basis(gb_mass mass, gb_wetness w, gb_basis from, gb_basis to);

/* What it brings to the mixing water, dry (moisture - absorption); below zero it drinks
   so much of it. */
gb_mass gb_free_water(gb_mass dry, gb_wetness w);

/* Surface moisture, a share of the SSD mass, and back to all moisture:
     (moisture - absorption) / (1 + absorption). */
gb_share gb_surface_moisture(gb_wetness w);
gb_share gb_moisture_of_surface(gb_share surface, gb_share absorption);

/* The moisture of the sand of a concrete as it is delivered: as stated, else damp. */
gb_share gb_delivered_sand(const gb_concrete *c);

/* ---- parts of a mix ---------------------------------------------------------------- */

/* The moisture and absorption of a part: sand has the pile's moisture. Of mixes whose
   water figures count all that the sand holds the absorption is 0, and cement, lime and
   the stone of such mixes hold nothing. */
gb_wetness gb_part_wetness(const gb_part *part, gb_share pile);

/* A dry mass of a part as the scale shows it. */
gb_mass gb_part_lying(const gb_part *part, gb_mass dry, gb_share pile);

/* A dry mass of a material as the scale shows it: sand with the pile's water. */
gb_mass gb_mass_lying(const gb_material *material, gb_mass dry, gb_lying lying);

/* The three water figures to ADD to `bags` bags with sand of that moisture. */
typedef struct gb_water_row {
    gb_share moisture;
    gb_mass first, usual, most;
} gb_water_row;

/* figure = water in all - (sand x moisture - drunk). GB_TOO_WET when the aggregate brings
   the least water of the mix already. */
gb_status gb_water_to_add(const gb_mix *mix, const gb_recipe *recipe, gb_share moisture,
                          double bags, gb_water_row *row) GB_MUST_USE;

#endif
