/* Stone that a machine sets: whether what is lifted stays within what it may lift. */
#ifndef GAUGEBOX_LIFT_H
#define GAUGEBOX_LIFT_H

#include "gaugebox/origin.h"
#include "gaugebox/quantity.h"

/* The machine and its gear, as a job states them. */
typedef struct gb_lift {
    gb_mass capacity;   /* by the maker's table, at the reach that is used */
    gb_length reach;    /* that it was read at; told, never computed with; NaN */
    gb_mass attachment; /* own weight of what hangs below the hook */
    gb_mass rated;      /* that the gear itself is marked with; NaN when not stated */
    double margin;      /* of what may be lifted over what is, at least 1 */
    gb_share wet, rough, tilted; /* taken off, by the maker's sheet */
    gb_origin at;                /* line 0: no machine is stated */
} gb_lift;

/* What is left of a limit for wet, rough and tilted stone: (1 - w)(1 - r)(1 - t). */
gb_share gb_lift_left(const gb_lift *lift);

/* What one stone may weigh: (capacity - attachment) left / margin, and where the gear is
   marked, rated left / margin, whichever is less. Zero or below when nothing is left.
   Source: arithmetic; the margin is a house rule (1.25, common practice), no code. */
gb_mass gb_lift_allowed(const gb_lift *lift);

/* From that length on a stone set dry bears in the middle too: over 6 ft (Building
   Construction, "Stone Steps", section 84). */
gb_length gb_long_stone(void);

#endif
