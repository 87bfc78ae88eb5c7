/* Stone of the pieces: what is set, what is ordered, what it weighs. */
#ifndef GAUGEBOX_STONE_H
#define GAUGEBOX_STONE_H

#include "gaugebox/mix.h"
#include "gaugebox/shape.h"

/* A kind of stone. Freight is counted at the typical density; what is lifted, at the most
   that such stone weighs. */
typedef struct gb_stone {
    const char *name; /* "granite" */
    gb_words title;
    gb_density typical, most;
    gb_words source;
    gb_origin at;
} gb_stone;

/* The stone of a piece, as a job states it. */
typedef struct gb_piece_stone {
    gb_ref of;
    const gb_stone *stone; /* set once its name is looked up */
    gb_length thickness;
    gb_length margin;  /* that the blank is larger on each side */
    size_t spare;      /* pieces to have in hand */
    gb_share breakage; /* of the pieces that are set */
    gb_origin at;      /* line 0: the piece states no stone */
} gb_piece_stone;

/* One piece's stone in numbers. Waste of cutting is the blank less the net area; breakage
   and spares are whole stones beside. */
typedef struct gb_stone_size {
    gb_length blank_length, blank_width; /* with the margin */
    gb_area net, blank;
    gb_share cut_away;     /* of the blank */
    double broken;         /* whole stones for breakage */
    double ordered;        /* set, spare and for breakage */
    gb_mass typical, most; /* of one as it is set: net area x thickness x density */
    gb_mass lifted;        /* of one blank, at the most */
    gb_mass freight;       /* of all blanks that are ordered, typical */
} gb_stone_size;

/* GB_NOT_POSITIVE when the shape, the thickness or a density is not over zero. */
gb_status gb_measure_stone(const gb_shape *shape, size_t count,
                           const gb_piece_stone *stone, gb_stone_size *size) GB_MUST_USE;

/* What two people lift by hand: twice the load constant of the NIOSH lifting equation,
   51 lb (23 kg). */
gb_mass gb_two_lift(void);

#endif
