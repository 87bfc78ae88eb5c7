/* Layers that no mix fills: ground, base, shim, cloth, and what closes a soft joint. */
#ifndef GAUGEBOX_LOOSE_H
#define GAUGEBOX_LOOSE_H

#include "gaugebox/sand.h"
#include "gaugebox/shape.h"

typedef enum gb_loose_kind {
    GB_BASE,       /* crushed stone, compacted in lifts */
    GB_SHIM,       /* sand or stone dust under a stone set dry */
    GB_BACKFILL,   /* behind a step or a wall */
    GB_EXCAVATION, /* ground that is dug and hauled off */
    GB_GEOTEXTILE, /* cloth under or around a base */
    GB_BACKER_ROD, /* in a joint below the sealant */
    GB_SEALANT,
    GB_LOOSE_KINDS
} gb_loose_kind;

/* Such a layer as a job states it; quantities that it does not state are NaN. */
typedef struct gb_loose {
    gb_loose_kind kind;
    gb_ref material_name;
    const gb_material *material; /* of base, shim and backfill */
    gb_area area;                /* instead of the piece's own */
    gb_length beyond;            /* that it goes beyond the piece on each side */
    gb_length depth;             /* finished: compacted, or as it is dug */
    gb_volume volume;            /* instead of area and depth */
    double compaction;           /* loose volume over the compacted one, at least 1 */
    gb_length lift;              /* the most that is compacted at a time */
    gb_share swell;              /* that dug ground grows by */
    gb_length turn_up;           /* cloth: up the sides */
    gb_share lap;                /* cloth: extra for laps */
    gb_length joint_length, joint_width;
    gb_share extra; /* rod and sealant: cut off, squeezed out */
    gb_volume pack; /* sealant: one tube; NaN: by volume */
    gb_origin at;
} gb_loose;

/* Such a layer in numbers, of all pieces alike together; what does not apply is NaN. */
typedef struct gb_loose_size {
    gb_area area;      /* that it covers, with what goes beyond */
    gb_volume net;     /* compacted, as dug, or of the joint */
    gb_volume ordered; /* loose: to order, or to haul off; of a joint with its extra */
    gb_mass mass;      /* of the material, dry */
    double lifts;      /* of one piece */
    gb_length length;  /* of rod */
    double packs;      /* of sealant */
} gb_loose_size;

/* What is usual where a job states nothing, all common practice: compaction 1.20 of a
   base and of backfill, 1 of a shim; lifts of 4 in; swell 25 %; laps 10 %; rod and
   sealant 5 % extra. */
double gb_usual_compaction(gb_loose_kind kind);

/* Areas go beyond the piece with square corners: A + U b + 4 b^2. Loose volume =
   compacted volume x compaction; dug ground x (1 + swell). The mass is the loose
   volume's, as its material lies. `shape` may have no size when area or volume is stated.
   GB_NOT_POSITIVE when a size that it needs is not over zero, or a compaction under one.
 */
gb_status gb_measure_loose(const gb_loose *loose, const gb_shape *shape, size_t count,
                           gb_lying lying, gb_loose_size *size) GB_MUST_USE;

#endif
