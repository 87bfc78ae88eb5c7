/* A pail as a measure: what it holds, and where a volume stands up its inside. */
#ifndef GAUGEBOX_PAIL_H
#define GAUGEBOX_PAIL_H

#include "gaugebox/quantity.h"

/* A round pail by its inside; what is not stated is NaN. Either its volume, and its
   height if it is to be marked: its sides are straight then. Or its width across the
   bottom and its height, and across the top unless its sides are straight. */
typedef struct gb_pail_size {
    gb_volume volume; /* to the brim */
    gb_length across_bottom, across_top, height;
} gb_pail_size;

/* A pail of which nothing is stated. */
gb_pail_size gb_pail_unknown(void);

/* What it holds to the brim: as stated, or
     V = pi h (d0^2 + d0 d1 + d1^2) / 12
   Frustum of a cone, Machinery's Handbook (from memory). NaN when the sizes do not tell
   it, tell it twice (a volume and a width), or are not over zero and finite. */
gb_volume gb_pail_volume(const gb_pail_size *pail);

/* What stands in it up to that height; NaN where it does not tell its shape, or not
   within it. */
gb_volume gb_pail_filled(const gb_pail_size *pail, gb_length up);

/* How high a volume stands in it, to 1e-9 m; NaN where it does not tell its shape, or
   does not hold so much. */
gb_length gb_pail_up(const gb_pail_size *pail, gb_volume volume);

/* The part of its volume that counts as one full pail: 0.9 of it, since nobody carries a
   pail full to the brim. Common practice. */
gb_share gb_pail_full(void);

/* A volume as so many full pails, and how high the rest stands in another, by a rule held
   upright on the bottom, to 1e-9 m; 0 without a rest, as one under 1e-9 of a full pail.
   GB_NOT_POSITIVE when the pail does not tell its shape, or the volume is below zero, NaN
   or infinite; GB_OVERFLOW over 1e9 pails. */
gb_status gb_pail_mark(const gb_pail_size *pail, gb_volume volume, size_t *full,
                       gb_length *up) GB_MUST_USE;

#endif
