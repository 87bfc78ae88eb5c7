/* Layers whose volume is more than an area times one depth: joints of flags, block walls
   and their cores, forms of concrete, beds between levels. */
#ifndef GAUGEBOX_LAYER_H
#define GAUGEBOX_LAYER_H

#include "gaugebox/origin.h"
#include "gaugebox/quantity.h"

/* ---- block walls ------------------------------------------------------------------- */

/* What block is laid on: its whole width, or the two face shells alone. */
typedef enum gb_bedding { GB_SHELL_BEDDING, GB_FULL_BEDDING } gb_bedding;

/* A wall of block in running bond, of one piece. */
typedef struct gb_wall {
    gb_length length;     /* outside */
    gb_length height;     /* or so many courses */
    size_t courses;       /* 0: by the height */
    size_t corners;       /* that the outside length counts twice */
    size_t ends;          /* free ends, each with a half block in every other course */
    gb_area openings;     /* taken off */
    gb_length nominal[2]; /* face of one block with its joints: length, height */
    gb_length joint;
    gb_length width; /* of the block itself */
    gb_length shell; /* of one face shell */
    gb_bedding bedding;
    gb_mortar_rate rate; /* NaN: by the joints */
    gb_share rate_waste; /* that the rate holds */
    gb_share spare;      /* block beyond those laid */
    gb_origin at;
} gb_wall;

typedef struct gb_blocks {
    double courses;
    double per_course; /* in halves of a block */
    double half, full; /* laid */
    gb_area face;      /* without what is open */
} gb_blocks;

/* Lays out a wall. The length less one block's width (with its joint) for each corner,
   counted up to half blocks; the height counted up to courses. Running bond: a half block
   at each free end of every other course; where a course is an odd number of halves long,
   every course of a wall with two free ends or more has one. Openings are taken off by
   area, and not below zero. Layout: NAVEDTRA 14045, quantities of concrete block; bond:
   common practice. GB_NOT_POSITIVE when a size is not over zero or openings leave
   nothing; GB_OVERFLOW. */
gb_status gb_lay_out(const gb_wall *wall, gb_blocks *blocks) GB_MUST_USE;

/* The length that block is counted over, and the height, stated or of the courses. */
gb_length gb_wall_length(const gb_wall *wall);
gb_length gb_wall_height(const gb_wall *wall);

/* The width that carries mortar. */
gb_length gb_bedded_width(const gb_wall *wall);

/* Mortar of the wall: by the rate, without the waste that the rate holds, or by its
   joints, for each block t W (l + h - t): joint t, bedded width W, nominal length l and
   height h. Geometry; it makes the table of NAVEDTRA 14045 for one wythe of brick. NaN
   when the wall cannot be laid out. */
gb_volume gb_wall_mortar(const gb_wall *wall);

/* ---- cores ------------------------------------------------------------------------- */

typedef enum gb_core_courses { GB_ALL_COURSES, GB_TOP_COURSE } gb_core_courses;

/* Cores that are filled, by block. */
typedef struct gb_cores {
    size_t blocks;   /* 0: of the block layer of the same piece */
    gb_length width; /* nominal, when blocks are stated */
    size_t every;    /* nth cell is filled; 1: each */
    gb_core_courses courses;
    gb_volume each; /* grout that fills one block; NaN: usual for its width */
    gb_origin at;
} gb_cores;

/* Grout that fills all cells of one block of a nominal width of 6, 8 or 12 in: 0.83, 1.00
   and 1.54 yd3 in 100 block (8 in: Masonry Magazine, September 2015, second hand; 6 and
   12 in: Amrhein, Reinforced Masonry Engineering Handbook, from memory). NaN for other
   widths. */
gb_volume gb_usual_core(gb_length nominal_width);

/* How sure that is: makers differ from 0.251 to 0.294 ft3 for a block of 8 in. Taken as
   equally likely in between, the standard deviation is the width of the range over
   sqrt(12); the other widths have the same share of their middle. */
gb_share gb_core_spread(void);

/* ---- forms of concrete ------------------------------------------------------------- */

typedef enum gb_form_kind {
    GB_PRISM,   /* area x depth */
    GB_WEDGE,   /* depth in front and behind, on a rectangle */
    GB_STEPPED, /* lengths, each with its depth, x width */
    GB_STAIR,   /* solid steps, with or without a slab below */
    GB_PIER,    /* round or square, x height */
    GB_FORM_KINDS
} gb_form_kind;

typedef struct gb_form {
    gb_form_kind kind;
    gb_length front, back; /* wedge */
    const double *lengths_m;
    size_t length_count;
    const double *depths_m;
    size_t depth_count;
    gb_length width; /* stepped, stair */
    size_t risers;
    gb_length rise, going;
    gb_length top;  /* stair: depth of its top, from the last riser on */
    gb_length slab; /* stair: below all of it; 0 without */
    gb_length diameter, side, height;
    gb_origin at;
} gb_form;

/* Volume of one form but a prism or a wedge. Stair of n risers r, treads g, top d, slab
   s: w (r g (1 + ... + (n - 1)) + n r d + s ((n - 1) g + d)). Geometry. NaN when a size
   is not over zero. */
gb_volume gb_form_volume(const gb_form *form);

/* ---- beds between levels ----------------------------------------------------------- */

/* Heights go up; a staff under a level reads down. */
typedef enum gb_readings { GB_HEIGHTS, GB_STAFF } gb_readings;

/* One reading for each tread; stone may be one for all. */
typedef struct gb_levels {
    gb_readings readings;
    const double *block_m;
    size_t block_count;
    const double *finished_m;
    size_t finished_count;
    const double *stone_m;
    size_t stone_count;
    gb_length error;       /* of one reading, one standard deviation */
    gb_length least, most; /* a bed below or above is flagged */
    gb_origin at;
} gb_levels;

/* The bed of tread i, from 0: finished height - stone - top of the block. May be below
   zero. */
double gb_level_bed(const gb_levels *levels, size_t i);

/* Mean over all treads, and its standard error: three readings for each bed, each with
   the same error, so error sqrt(3 / n). */
void gb_level_beds(const gb_levels *levels, gb_length *mean, gb_length *se);

/* ---- joints ------------------------------------------------------------------------ */

/* The share of an area that is joint between flags a x b with joints w:
   1 - a b / ((a + w) (b + w)). Geometry. */
gb_share gb_joint_share(gb_length a, gb_length b, gb_length w);

#endif
