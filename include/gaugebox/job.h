/* A job as read from one file: site, crew, sand, weather, and the pieces with layers. */
#ifndef GAUGEBOX_JOB_H
#define GAUGEBOX_JOB_H

#include "gaugebox/crew.h"
#include "gaugebox/exposure.h"
#include "gaugebox/layer.h"
#include "gaugebox/lift.h"
#include "gaugebox/loose.h"
#include "gaugebox/moisture.h"
#include "gaugebox/pail.h"
#include "gaugebox/sand.h"
#include "gaugebox/shape.h"
#include "gaugebox/steps.h"
#include "gaugebox/stone.h"
#include "gaugebox/weather.h"

/* Quantities that the file did not state are NaN, texts NULL. */

typedef struct gb_site {
    const char *name;
    const char *place;     /* where it is, for the one who calls for help */
    const char *emergency; /* whom to call */
    const char *rinse;     /* where the rinse water is */
    const char *washout;   /* where mixer and tools are washed out */
    unsigned exposures;    /* of its concrete: bit 1 << gb_exposure for each class */
} gb_site;

/* Which faces a slurry goes on. */
typedef enum gb_faces { GB_BACK, GB_BED_FACE, GB_BOTH_FACES } gb_faces;
typedef enum gb_back { GB_SMOOTH, GB_SCORED } gb_back;

typedef struct gb_layer {
    gb_layer_kind kind;
    gb_ref mix;
    const double *depths_m; /* one, or several as measured */
    size_t depth_count;
    gb_faces faces;         /* slurry */
    gb_back back;           /* slurry */
    gb_length joint_length; /* joint and pointing: in all, per piece */
    gb_length joint_width;
    /* The same, told by the piece's area: one flag of an even layout, along x across; or
       length of joint by area; or the share of the area that is joint. */
    gb_length flag[2];
    gb_joint_rate joint_rate;
    gb_share joint_share;
    gb_volume volume;  /* core and plain volume: per piece */
    gb_slope fall;     /* bed and slab: how much deeper it gets from the front on */
    gb_length face[2]; /* parge: length x height of the wall of one piece, or: */
    gb_area face_area;
    gb_wall wall;       /* block */
    gb_cores cores;     /* core */
    gb_form form;       /* slab */
    gb_levels levels;   /* bed */
    unsigned exposures; /* of concrete; they go before the site's. 0: the site's */
    gb_origin at;
} gb_layer;

typedef enum gb_piece_kind {
    GB_TREAD,
    GB_LANDING,
    GB_RISER,
    GB_FOOTING,
    GB_OTHER_PIECE
} gb_piece_kind;

typedef struct gb_piece {
    const char *name;
    gb_piece_kind kind;
    size_t count;
    gb_length size[2]; /* of a rectangle, as stated: along the nosing, front to back */
    gb_steps run;      /* of steps, which decides count and size */
    gb_shape shape;    /* in plan, from the size or as stated; see gb_has_shape */
    gb_length overhang_front;
    gb_length overhang_side; /* at each end */
    gb_piece_stone stone;
    const gb_layer *layers;
    size_t layer_count;
    gb_loose *loose; /* layers that no mix fills */
    size_t loose_count;
    gb_origin at;
} gb_piece;

/* The pail that the helper pours water and gauges sand with. */
typedef struct gb_marked_pail {
    gb_pail_size size;
    gb_origin at; /* line 0: none is stated */
} gb_marked_pail;

/* Extra of one mix (applied when needs are gathered) or of one material (applied when
   materials are bought). */
typedef struct gb_waste {
    gb_ref of;
    gb_share share;
} gb_waste;

/* The user's own label or measured yield of a mix. */
typedef struct gb_own_label {
    gb_ref mix;
    gb_label label;
    gb_volume least, usual, most; /* water per bag; NaN when not stated */
    bool measured;
} gb_own_label;

/* The mix with the water that its own label states, if it states any. */
gb_mix gb_with_own_water(const gb_mix *mix, const gb_own_label *own);

typedef struct gb_own_pack {
    gb_ref material;
    gb_mass pack;
} gb_own_pack;

typedef struct gb_job {
    const char *file;
    uint64_t digest; /* of its text */
    uint64_t stones; /* digest of the files of stones; 0: no piece states a stone */
    gb_system units;
    gb_site site;
    gb_crew crew;
    gb_site_water water;
    gb_gauge gauge;
    gb_marked_pail pail;
    gb_sand_pile sand;
    gb_weather weather;
    gb_temperatures temperatures;
    gb_lift lift;  /* that sets the stone */
    gb_share sure; /* how sure what is bought is to be; 0: at best */
    const gb_waste *wastes;
    size_t waste_count;
    const gb_own_label *labels;
    size_t label_count;
    const gb_own_pack *packs;
    size_t pack_count;
    gb_mix *own_mixes; /* that the job file holds itself, as "own/name" */
    size_t own_mix_count;
    const gb_piece *pieces;
    size_t piece_count;
    const gb_mix *const *mixes; /* every mix that a layer names, in order of first use */
    size_t mix_count;
} gb_job;

#endif
