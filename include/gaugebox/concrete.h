/* Concrete by absolute volumes: how much of each part makes a concrete of a strength, a
   slump and an air content, after ACI 211.1-91 (reapproved 2009). All figures are of
   1 m3 of fresh concrete; masses of aggregate are oven-dry unless a name says else. */
#ifndef GAUGEBOX_CONCRETE_H
#define GAUGEBOX_CONCRETE_H

#include "gaugebox/origin.h"
#include "gaugebox/quantity.h"

struct gb_material; /* of mix.h, which needs this header itself */

/* ---- the tables -------------------------------------------------------------------- */

/* The largest sizes of aggregate that the tables know: 3/8, 1/2, 3/4, 1, 1-1/2, 2, 3 and
   6 in; 9.5, 12.5, 19, 25, 37.5, 50, 75 and 150 mm. */
enum { GB_NOMINAL_SIZES = 8 };
/* Slump 1 to 2, 3 to 4, 6 to 7 in; 25 to 50, 75 to 100, 150 to 175 mm. */
enum { GB_SLUMP_BANDS = 3 };

/* How severe the exposure is that air is entrained for. */
typedef enum gb_air_level {
    GB_AIR_TRAPPED, /* none is entrained */
    GB_AIR_MILD,
    GB_AIR_MODERATE,
    GB_AIR_SEVERE,
    GB_AIR_LEVELS
} gb_air_level;

/* What limits the ratio of water to cement beside strength: wet and frost; sea water or
   sulfates. Thin: railings, curbs, sills, ledges, and less than 1 in over steel. */
typedef enum gb_attack {
    GB_NO_ATTACK,
    GB_FROST,
    GB_FROST_THIN,
    GB_SULFATE,
    GB_SULFATE_THIN,
    GB_ATTACKS
} gb_attack;

/* The shape of the coarse aggregate. */
typedef enum gb_shape_of_stone {
    GB_ANGULAR,
    GB_SUBANGULAR,
    GB_SOME_CRUSHED, /* gravel with some crushed particles */
    GB_ROUNDED,
    GB_SHAPES_OF_STONE
} gb_shape_of_stone;

/* What moves the share of coarse aggregate off the table. */
typedef enum gb_placing {
    GB_BY_HAND_PLACED,
    GB_PAVED,
    GB_PUMPED,
    GB_PLACINGS
} gb_placing;

/* The row and the column of a table that hold that slump and that size, both ends of the
   US and of the SI table counted in. False between the rows and outside the table. */
bool gb_slump_band(gb_length slump, size_t *band);
bool gb_nominal_size(gb_length largest, size_t *size);
/* The sizes and the bands as the table of that system prints them. */
gb_length gb_size_in_table(gb_system table, size_t size);
void gb_slump_in_table(gb_system table, size_t band, gb_length *least, gb_length *most);

/* Mixing water for 1 m3 of concrete, NaN where the table has no cell. Tables 6.3.3 (lb
   for 1 yd3) and A1.5.3.3 (kg for 1 m3), each with its own cells. */
gb_density gb_mixing_water(gb_system table, size_t band, size_t size, bool entrained);
/* Trapped air of a concrete without entrained air, or all of its air; same tables. */
gb_share gb_table_air(size_t size, gb_air_level level);

/* Two neighbouring points of a table, with a straight line between them. */
typedef struct gb_between {
    double from, to;  /* what the table is entered by */
    double low, high; /* what it has there */
} gb_between;

/* Water to cement, by mass, for an average strength at 28 days, cut to 0.01 as the worked
   examples do (3500 psi: 0.62); NaN outside the table. Straight lines between the points
   of tables 6.3.4(a) and A1.5.3.4(a) (SI from memory). */
double gb_ratio_of_strength(gb_system table, gb_pressure average, bool entrained);
/* The points about that average, in Pa; false outside the table. */
bool gb_ratio_points(gb_system table, gb_pressure average, bool entrained,
                     gb_between *points);
/* The strengths at which that table begins and ends. */
void gb_strength_range(gb_system table, bool entrained, gb_pressure *least,
                       gb_pressure *most);

/* The most water to cement for durability; 0.05 more against sulfates with a cement that
   resists them (type II or V); NaN for GB_NO_ATTACK. Table 6.3.4(b), from memory but for
   0.50 in frost. */
double gb_ratio_of_attack(gb_attack attack, bool resisting);

/* Volume of dry-rodded coarse aggregate in a volume of concrete, by size and the fineness
   modulus of the sand (2.40 to 3.00, straight lines between the columns, NaN outside).
   Table 6.3.6. */
gb_share gb_coarse_share(size_t size, double fineness);
bool gb_coarse_points(size_t size, double fineness, gb_between *points);
/* How much of it is taken so placed: pavement up to 10 % more, pumped 10 % less. */
double gb_placed(gb_placing placing);

/* First estimate of the mass of fresh concrete. Tables 6.3.7.1 and A1.5.3.7.1, from
   memory. */
gb_density gb_first_mass(gb_system table, size_t size, bool entrained);

/* What angular stone's water less a better shape saves: 20, 35, 45 lb/yd3; 10, 20, 25
   kg/m3. Source: PCA EB001, from memory. */
gb_density gb_shape_saving(gb_system table, gb_shape_of_stone shape);

/* Recommended slump by what is built. Tables 6.3.1 and A1.5.3.1; up to gb_slump_by_hand,
   1 in (25 mm), more where it is tamped by hand. */
typedef enum gb_built {
    GB_BUILT_SLAB, /* and pavements */
    GB_BUILT_PLAIN_FOOTING,
    GB_BUILT_REINFORCED_FOOTING, /* and walls */
    GB_BUILT_BEAM,
    GB_BUILT_COLUMN,
    GB_BUILT_MASS,
    GB_BUILTS
} gb_built;
void gb_recommended_slump(gb_system table, gb_built built, gb_length *least,
                          gb_length *most);
gb_length gb_slump_by_hand(gb_system table);

/* ---- what is asked for ------------------------------------------------------------- */

/* A trial batch as it was made and measured; quantities that are not stated are NaN. */
typedef struct gb_trial {
    gb_mass water; /* that was added, not what the aggregate brought */
    gb_mass cement;
    gb_mass stone, sand;                    /* as they lay */
    gb_share stone_moisture, sand_moisture; /* then; NaN: as the concrete\'s */
    gb_density unit_mass;                   /* of the fresh concrete, or by a measure: */
    gb_mass full, empty;                    /* the measure with and without it */
    gb_volume measure;
    gb_length slump;
    gb_share air; /* by a meter */
    gb_origin at;
} gb_trial;

/* A concrete as a file or options ask for it; what is not stated is NaN. */
typedef struct gb_concrete {
    gb_system table;       /* which tables: both are printed, and differ by up to 2 % */
    gb_pressure strength;  /* specified, at 28 days, of cylinders */
    gb_pressure average;   /* required instead of what follows from the specified one */
    gb_pressure deviation; /* of the tests of a plant, one standard deviation */
    size_t tests;          /* how many of them */
    gb_length slump;
    gb_built built;    /* what it is for, and so which slump is usual */
    gb_length largest; /* nominal size of the coarse aggregate */
    gb_air_level air;
    gb_share air_content; /* goes before the table's */
    gb_attack attack;
    bool resisting;     /* cement type II or V */
    unsigned exposures; /* bit 1 << gb_exposure for each class that it is held to */
    double ratio; /* water to cement by own trials; goes before the table of strength */
    gb_density water; /* mixing water by own trials, of 1 m3; goes before the table */
    gb_shape_of_stone shape;
    gb_placing placing;
    double cement_gravity; /* NaN: the material's */
    double sand_gravity;   /* bulk, oven-dry; NaN: the material's */
    double stone_gravity;
    gb_share sand_absorption; /* of the dry mass */
    gb_share stone_absorption;
    double fineness;         /* modulus of the sand */
    gb_density rodded;       /* coarse aggregate, dry and rodded */
    gb_density loose;        /* the same as it is gauged; NaN: 0.93 of it rodded */
    gb_share sand_moisture;  /* in all, of the dry mass, as delivered; NaN: as the pile */
    gb_share stone_moisture; /* NaN: saturated, surface-dry */
    bool air_dry;            /* moisture below the absorption is meant so */
    const char *cement_name, *sand_name, *stone_name;
    const struct gb_material *cement_material, *sand_material, *stone_material;
    gb_trial trial;
    gb_origin at;
} gb_concrete;

double gb_cement_gravity(const gb_concrete *c);
double gb_sand_gravity(const gb_concrete *c);
double gb_stone_gravity(const gb_concrete *c);

/* Coarse aggregate, dry and loose: as stated, else 0.93 of what it weighs rodded (common
   practice: rodding packs it by 5 to 10 %). */
gb_density gb_loose_stone(const gb_concrete *c);
gb_share gb_loose_of_rodded(void);

/* True when air is entrained. */
bool gb_is_entrained(const gb_concrete *c);

/* The average strength that tests must come to, so that few fall below the specified one
   f'c. As stated; or with a standard deviation s of 15 tests and more the larger of
   f'c + 1.34 s and f'c + 2.33 s - 500 psi (over 5000 psi 0.90 f'c + 2.33 s), s 1.16,
   1.08, 1.03, 1.00 times larger with 15, 20, 25, 30 tests, straight between; or without:
   f'c + 1000 psi below 3000 psi, + 1200 psi up to 5000 psi, 1.10 f'c + 700 psi over it;
   in SI 3.5 MPa, 35 MPa; 7.0 below 21 MPa, 8.3, 1.10 f'c + 5.0.
   Source: ACI 318 and 301, from memory. */
gb_pressure gb_required_average(const gb_concrete *c);
/* How much larger the deviation of so few tests is taken; NaN under 15. */
double gb_few_tests(size_t tests);
/* Between which points; false under 15, and from 30 on. */
bool gb_few_tests_points(size_t tests, gb_between *points);

/* What the averages above are made of. */
typedef struct gb_overdesign {
    gb_pressure low, high;             /* bands of f'c */
    gb_pressure below, between, above; /* what is added without tests */
    gb_pressure dip;                   /* a single test may be so far below f'c */
} gb_overdesign;
gb_overdesign gb_overdesign_of(gb_system table);

/* What can be wrong with a concrete that reads well; bit 1 << fault of a set. */
typedef enum gb_concrete_fault {
    GB_NO_STRENGTH,   /* neither strength, average nor ratio */
    GB_FEW_TESTS,     /* a deviation of fewer than 15 */
    GB_TESTS_ALONE,   /* a number of tests without their deviation */
    GB_AVERAGE_UNDER, /* the average is under the specified strength */
    GB_STRENGTH_HIGH, /* the average lies over the table */
    GB_STRENGTH_LOW,
    GB_SLUMP_NOT_IN_TABLE,
    GB_SIZE_NOT_IN_TABLE,
    GB_NO_WATER_CELL, /* 6 in aggregate has no row for 6 to 7 in of slump */
    GB_FINENESS_OUTSIDE,
    GB_RODDED_IMPOSSIBLE, /* voids of less than 25 % or more than 60 % */
    GB_LOOSE_OVER_RODDED,
    GB_AIR_WITHOUT_LEVEL, /* an air content over what is trapped, and none is entrained */
    GB_AIR_TOO_LITTLE,    /* air is entrained, and no more stated than is trapped */
    GB_SAND_TOO_DRY,      /* below its absorption, and not said to be */
    GB_STONE_TOO_DRY,
    GB_AGGREGATE_TOO_WET, /* as it is stated to be delivered it brings all of the water */
    GB_NO_ROOM_FOR_SAND,  /* cement, water, stone and air fill it, or all but 5 % */
    GB_CONCRETE_HEAVY,    /* over 2700 kg/m3 fresh: a procedure of its own */
    GB_TRIAL_INCOMPLETE,  /* a mass is missing, or both ways to the unit mass are */
    GB_TRIAL_TWICE,       /* unit mass, and a measure too */
    GB_TRIAL_MEASURE,     /* the full measure is no heavier than the empty one */
    GB_TRIAL_LIGHT,       /* under 1200 kg/m3 */
    GB_TRIAL_HEAVY,       /* over 2700 kg/m3 */
    GB_TRIAL_OVERFULL,    /* heavier than its parts are without any air, by over 2 % */
    GB_TRIAL_HOLLOW,      /* over 15 % of air by mass */
    GB_TRIAL_DRY,         /* all water of it is less than a quarter of its cement */
    GB_CONCRETE_FAULTS
} gb_concrete_fault;
uint32_t gb_concrete_faults(const gb_concrete *c);

/* ---- what comes of it -------------------------------------------------------------- */

/* Masses in 1 m3 of fresh concrete, and the volume that each takes of it. */
typedef struct gb_parts_of_concrete {
    gb_density
        water; /* mixing water: what the aggregate holds in its pores not counted */
    gb_density cement;
    gb_density stone; /* oven-dry */
    gb_density sand;  /* oven-dry */
    gb_share air;
    gb_share water_volume, cement_volume, stone_volume, sand_volume; /* with air: 1 */
    gb_density fresh; /* with what the aggregate absorbs */
} gb_parts_of_concrete;

typedef struct gb_proportions {
    size_t band, size;
    gb_pressure average;    /* NaN when the ratio is stated alone */
    gb_density table_water; /* before the shape of the stone; NaN when it is stated */
    double ratio_strength;  /* by strength or as stated */
    double ratio_attack;    /* NaN without limit */
    double ratio;           /* the smaller one */
    gb_share coarse_share;  /* dry-rodded, after the placing */
    gb_parts_of_concrete parts;
    gb_density first_mass;   /* what the table expects it to weigh fresh */
    gb_density sand_by_mass; /* dry sand that this mass leaves: beside that by volume */
} gb_proportions;

/* Proportions by absolute volumes: water and air by slump, size and exposure; cement =
   water / ratio; stone = share x rodded; sand fills the rest,
     V_sand = 1 - W/rho_w - C/(G_c rho_w) - S/(G_s rho_w) - air.
   `water` is the density that the source takes for water: 1000 kg/m3 but in tests.
   GB_IMPOSSIBLE when gb_concrete_faults finds any beside those of the trial;
   GB_NOT_POSITIVE when a quantity of it is zero, negative or infinite that cannot be. */
gb_status gb_proportion(const gb_concrete *c, gb_density water,
                        gb_proportions *p) GB_MUST_USE;

/* How far a measured air may lie from the one that is asked for: 1.5 %. Source: ACI 318,
   from memory. */
gb_share gb_air_tolerance(void);
/* How far air by a meter and by the masses of a trial may lie apart: one point, common
   practice. */
gb_share gb_air_apart(void);

/* How wet its aggregate was: as the trial states, else as the concrete does. */
gb_share gb_trial_stone_moisture(const gb_concrete *c);
gb_share gb_trial_sand_moisture(const gb_concrete *c);

/* The same concrete with aggregate that is delivered so wet (NaN: as before). Its trial
   stays what it was. */
gb_concrete gb_delivered_as(const gb_concrete *c, gb_share sand, gb_share stone);

/* What a trial batch was (ASTM C138), and what is changed for the next one. */
typedef struct gb_trial_result {
    gb_density unit_mass;
    gb_mass batch;
    gb_volume yield;
    double relative_yield; /* to what its cement should have made */
    gb_density cement_content;
    gb_share gravimetric_air; /* (T - D) / T */
    gb_share air;             /* by meter, else as designed */
    gb_mass mixing_water;     /* that was added, and the free water of the aggregate */
    gb_density water_used;    /* of 1 m3 */
    double ratio_used;        /* water to cement, as mixed */
    gb_density for_slump;     /* water that the slump asks for on top, or less */
    gb_density for_air;
    gb_parts_of_concrete next;
    gb_density next_sand_by_mass; /* dry, by the measured unit mass */
} gb_trial_result;

/* What the water is changed by: for each `step` of slump, and for each 1 % of air. */
typedef struct gb_water_change {
    gb_density for_slump, for_air;
    gb_length step;
} gb_water_change;
gb_water_change gb_water_change_of(gb_system table);

/* From measured masses to the next batch, as ACI 211.1 section 6.3.9 and its example 1:
     yield = batch / unit mass;  water = mixing water / yield
     + 10 lb/yd3 (2 kg/m3) for each 1 in (10 mm) that the slump lacks
     + 5 lb/yd3 (3 kg/m3) for each 1 % that a measured air exceeds the one wanted
     cement = water / ratio;  stone as in the trial;  sand fills the rest.
   GB_IMPOSSIBLE when gb_concrete_faults finds any. */
gb_status gb_judge_trial(const gb_concrete *c, const gb_proportions *p, gb_density water,
                         gb_trial_result *t) GB_MUST_USE;

/* The parts that a concrete is made of: as proportioned, or as its trial left them. */
gb_status gb_concrete_parts(const gb_concrete *c, gb_density water,
                            gb_parts_of_concrete *parts) GB_MUST_USE;

#endif
