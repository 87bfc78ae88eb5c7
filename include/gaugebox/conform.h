/* What a mix claims to be, and whether its proportions are those of that claim. */
#ifndef GAUGEBOX_CONFORM_H
#define GAUGEBOX_CONFORM_H

#include "gaugebox/mix.h"

/* The ratios that standards limit, of loose volumes. */
typedef enum gb_ratio {
    GB_NO_RATIO,
    GB_LIME_TO_CEMENT,
    GB_SAND_TO_BINDER, /* to the sum of the separate volumes of cement and lime */
    GB_SAND_TO_CEMENT,
    GB_STONE_TO_BINDER,
    GB_PORTLAND_TO_MASONRY, /* portland to masonry cement */
    GB_RATIOS
} gb_ratio;

/* On which side of its limits a ratio lies. */
typedef enum gb_side {
    GB_WITHIN,
    GB_TOO_LITTLE,
    GB_NOT_OVER, /* at or under a least that must be passed */
    GB_TOO_MUCH,
    GB_SIDES
} gb_side;

/* One limit of a claim, and where the mix stands. `most` conforms; `least` does too,
   unless `over` is set: the source prints "over 1/2". */
typedef struct gb_claim_limit {
    gb_ratio ratio;
    double least, most;
    bool over;
    const char *source;
    double value;
    gb_side side;
} gb_claim_limit;

enum { GB_MOST_CLAIM_LIMITS = 4 };

typedef struct gb_conformity {
    gb_claim claim;
    bool known; /* false: the source has no proportions for the cement of the mix */
    gb_claim_limit limits[GB_MOST_CLAIM_LIMITS];
    size_t count;
} gb_conformity;

/* A claim by name, with its source: "ASTM C270 Type S by proportions, from memory". */
const char *gb_claim_source(gb_claim claim);

/* Compares a site mix with what it claims; no limits for a mix that claims nothing, or
   for a blend, whose proportions nobody knows. Sources and their printed ends:
   - ASTM C270, proportion specification (from memory): lime to one of portland M 1/4,
     S over 1/4 to 1/2, N over 1/2 to 1-1/4, O over 1-1/4 to 2-1/2; masonry or mortar
     cement without lime, M of type M, or N and as much portland; S of type S, or N and
     half as much portland; N and O of type N; sand 2-1/4 to 3 times the sum of the
     separate cementitious volumes. What a mix holds of water and air is no matter here.
   - ASTM C476: lime at most 1/10 of the cement, sand 2-1/4 to 3 (from memory); coarse
     grout stone 1 to 2 times the cementitious volume (Taly, Design of Reinforced Masonry
     Structures, p.3.8); fine grout no stone.
   - Designations (i) to (iv), classes M12, M6, M4, M2 of EN 998-2: Chudley, Building
     Construction Handbook, p.370, the cement : lime : sand column, or for a mix without
     lime the plasticised cement : sand column.
   A C270 mortar may be specified by its properties instead; then sand may be up to 3-1/2
   times the cementitious volume (from memory) and a laboratory shows the rest. This is
   about proportions alone. Which lime and which sand is not looked at. */
void gb_check_claim(const gb_mix *mix, gb_conformity *conformity);

#endif
