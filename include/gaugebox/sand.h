/* Sand as it lies in the pile, its moisture and its bulking, and the measures that loose
   materials are gauged with. Moisture and bulking never change the dry mass of a batch
   nor its yield: only the loose volume to gauge, and what moisture.h makes of it: the
   mass as it lies, and the water to add. */
#ifndef GAUGEBOX_SAND_H
#define GAUGEBOX_SAND_H

#include "gaugebox/mix.h"

/* ---- moisture and bulking ---------------------------------------------------------- */

/* How the pile feels; each stands for a moisture, by mass of dry sand. */
typedef enum gb_sand_state { GB_NEARLY_DRY, GB_DAMP, GB_WET } gb_sand_state;
gb_share gb_sand_moisture(gb_sand_state state);

/* Bulking B is what a volume of settled (dry or flooded) sand gains when it is moist:
   V_moist = V_settled (1 + B) for the same dry mass.
   Source: US Army EN 5466, p. 2-21. */

/* A point of the usual bulking curve. */
typedef struct gb_bulking_point {
    gb_share moisture, bulking;
} gb_bulking_point;

/* The points between which that moisture lies. False below 0 and above 10 %, of which the
   curve says nothing.
   Source: Boardman, as printed by Gillette and Hill, Concrete Construction, 1908: 0 % 0;
   2 % 17.6; 4 % 22; 6 % 19.5; 8 % 16.6; 10 % 15.6 % of volume. */
bool gb_bulking_points(gb_share moisture, const gb_bulking_point **low,
                       const gb_bulking_point **high);

/* The bulking between those points, in a straight line; NaN where the curve is silent. */
gb_share gb_usual_bulking(gb_share moisture);

/* Sand with so much water and so loose. */
typedef struct gb_lying {
    gb_share moisture, bulking;
} gb_lying;

/* Sand of that moisture that bulks as the usual curve has it; and sand in that state. */
gb_lying gb_usual_lying(gb_share moisture);
gb_lying gb_state_lying(gb_sand_state state);

/* What a job states of its pile; quantities that it does not state are NaN. */
typedef struct gb_sand_pile {
    gb_sand_state state;
    gb_share moisture;        /* goes before the state's own */
    gb_share bulking;         /* goes before the curve's */
    gb_length moist_height;   /* settlement test: the sand as it lies in a jar or pail */
    gb_length flooded_height; /* the same sand, flooded and stirred */
    gb_origin at;
} gb_sand_pile;

/* A pile of which nothing is stated: damp. */
gb_sand_pile gb_usual_pile(void);

/* The bulking of a settlement test: (moist - flooded) / flooded.
   Source: field test of course texts after IS practice, e.g. 200 to 160 mm is 25 %. */
gb_share gb_tested_bulking(gb_length moist, gb_length flooded);

/* The most that a sand bulks, with room: fine sands reach 38 % (PCA, from memory). */
gb_share gb_most_bulking(void);

/* The pile as it lies: its bulking by the test, as stated, or by the curve. NaN when none
   of these tells it. */
gb_lying gb_pile_lying(const gb_sand_pile *pile);

/* ---- volume and mass --------------------------------------------------------------- */

/* Dry mass in a volume of the material loose as it lies. For sand, whose `bulk` is the
   dry mass at the moisture `gauged_at`, with B by the usual curve: settled = bulk (1 +
   B(gauged_at));  loose = settled / (1 + B_today) All else has its bulk, whatever the
   sand. */
gb_density gb_settled_density(const gb_material *sand);
gb_density gb_loose_density(const gb_material *material, gb_lying lying);

/* The volume of a dry mass as it lies loose, and back. */
gb_volume gb_loose_volume(const gb_material *material, gb_mass dry, gb_lying lying);
gb_mass gb_dry_mass(const gb_material *material, gb_volume loose, gb_lying lying);

/* ---- what it is gauged with -------------------------------------------------------- */

typedef enum gb_gauge_by { GB_BY_BUCKET, GB_BY_BOX, GB_BY_SHOVEL } gb_gauge_by;

/* The measure as a job states it; quantities that it does not state are NaN. */
typedef struct gb_gauge {
    gb_gauge_by by;
    gb_volume volume;      /* bucket to its marked line, or box */
    gb_mass water;         /* bucket: of the water that fills it to the line */
    gb_length inside[2];   /* box: length and width within */
    gb_length depth;       /* box: within */
    const double *shovels; /* counts of level shovels that filled a box ... */
    size_t shovel_count;
    gb_volume filled; /* ... of this volume */
    gb_origin at;
} gb_gauge;

/* A gauge of which nothing is stated: the usual bucket. */
gb_gauge gb_usual_gauge(void);

/* 1/2 ft3 for US sheets, 12 L for metric ones: common practice. */
gb_volume gb_usual_bucket(gb_system system);

/* Volume of one measure:
     bucket  as stated, or water / 1000 kg/m3, or the usual one
     box     as stated, or length x width x depth
     shovel  volume of the box that was filled / mean of the counts
   NaN when the gauge does not tell it. */
gb_volume gb_gauge_volume(const gb_gauge *gauge, gb_system system);

/* (most - least) / mean of the shovel counts; 0 for a single one. */
gb_share gb_shovel_spread(const gb_gauge *gauge);

/* Fractions of a measure that a helper can fill: quarters of a bucket or a box, whole
   shovels. Common practice. */
double gb_gauge_step(gb_gauge_by by);

/* So many measures; `error` is what rounding them gives too much, as a share of the part
   (below zero: too little). A part is weighed instead where rounding is off by more than
   3 % (common practice), or where the measure is a shovel, which is counted for sand
   alone. */
typedef struct gb_gauged {
    double exact;
    double count; /* in steps */
    double error;
    bool weighed;
} gb_gauged;
gb_gauged gb_gauge_loose(const gb_material *material, gb_volume loose, gb_gauge_by by,
                         gb_volume one);

/* What an empty pail weighs, about 2 lb: common practice. */
gb_mass gb_pail(void);

/* The most that one person should lift at best: the load constant of the NIOSH lifting
   equation, 23 kg (51 lb). */
gb_mass gb_lift_limit(void);

#endif
