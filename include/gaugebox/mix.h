/* The mix table: materials, mixes made of parts, and what one bag of a mix makes. */
#ifndef GAUGEBOX_MIX_H
#define GAUGEBOX_MIX_H

#include "gaugebox/concrete.h"

/* One text in several languages, each with its two-letter code. */
typedef struct gb_phrase {
    const char *language;
    const char *text;
} gb_phrase;
typedef struct gb_words {
    const gb_phrase *phrases;
    size_t count;
} gb_words;

/* The text in `language`, else in English, else the first one; "" when there is none. */
const char *gb_words_in(const gb_words *words, const char *language);

typedef enum gb_material_kind {
    GB_CEMENT, /* parts of a mix */
    GB_LIME,
    GB_SAND,
    GB_COARSE,
    GB_READY_MIXED, /* concrete from a plant: no part of a mix, it is sold by volume */
    GB_PIGMENT,     /* additions to it, from here on */
    GB_CARBON_BLACK,
    GB_POLYMER,
    GB_RETARDER,
    GB_ANTIFREEZE,
    GB_CHLORIDE,
    GB_AIR_ENTRAINER
} gb_material_kind;

/* True for what is added to a mix; false for what it is made of. */
bool gb_is_addition(gb_material_kind kind);

/* The type of a masonry or mortar cement; portland is none. */
typedef enum gb_masonry_type {
    GB_NOT_MASONRY,
    GB_MASONRY_N,
    GB_MASONRY_S,
    GB_MASONRY_M,
    GB_MASONRY_TYPES
} gb_masonry_type;

typedef struct gb_material {
    const char *name; /* "portland-cement" */
    gb_words title;
    gb_material_kind kind;
    gb_masonry_type masonry; /* of a cement */
    bool entrains;           /* of a cement: type IA and the like */
    gb_density bulk;      /* of the loose volume it is gauged by; for sand the DRY mass in
                             a volume of loose sand (ASTM C270: 80 lb in 1 ft3) ...; of
                             a liquid its density */
    gb_share gauged_at;   /* ... of this moisture; sand only */
    gb_density dry_loose; /* sand only: loose and dry */
    double gravity;       /* specific gravity of the grains */
    gb_mass pack;         /* the usual bag; NaN for what comes loose */
    gb_mass pack_metric;  /* the same where bags hold kilograms; none: as `pack` */
    gb_words source;
    const gb_concrete *loose_by; /* whose rodded mass decides its bulk; NULL: stated */
    gb_origin at;
} gb_material;

/* The usual bag of a material in that system, where the material states it; NaN for what
   comes loose. */
const gb_mass *gb_usual_pack(const gb_material *material, gb_system system);

/* The spaces in a piece that one mix can fill. */
typedef enum gb_layer_kind {
    GB_BED,
    GB_SLURRY,
    GB_JOINT,
    GB_POINTING, /* a joint that was raked, packed by hand */
    GB_SLAB,
    GB_CORE,
    GB_PARGE, /* mortar on the face of a wall */
    GB_BLOCK, /* mortar between block */
    GB_VOLUME_LAYER,
    GB_LAYER_KINDS
} gb_layer_kind;

/* One ingredient of a mix, by loose volume against the other parts. */
typedef struct gb_part {
    const char *material_name;
    const gb_material *material; /* set once the table is complete */
    double volume;
    gb_origin at;
    /* Of a part of proportioned concrete; of all others zero. */
    double gravity;                /* goes before the material's */
    gb_share absorption, moisture; /* of aggregate; moisture of stone alone, sand has the
                                      pile's */
} gb_part;

/* Its own specific gravity, else the material's. */
double gb_part_gravity(const gb_part *part);

/* What goes into a mix beside its parts. One of the three amounts is stated, the others
   are NaN. */
typedef struct gb_addition {
    const char *material_name;
    const gb_material *material;
    gb_share share;    /* of the binder's mass */
    gb_volume dose;    /* of a liquid, by its label, for ... */
    gb_mass dose_for;  /* ... so much binder, or so much of a bagged blend */
    gb_share replaces; /* of the mixing water, measure for measure */
    gb_origin at;
} gb_addition;

/* What the water figures of a mix are counted in. */
typedef enum gb_water_basis {
    GB_WATER_DEMAND, /* shares of the computed demand, the sand's own water counted in */
    GB_WATER_BINDER, /* shares of the binder's mass (water : cement) */
    GB_WATER_LABEL   /* the volumes on the bag */
} gb_water_basis;

typedef struct gb_water {
    gb_water_basis basis;
    gb_share least, usual, most;              /* for demand and binder */
    gb_volume bag_least, bag_usual, bag_most; /* for label */
    gb_share first;                           /* of the least water to add */
} gb_water;

/* What the proportions of a mix claim to be; conform.h has the limits. */
typedef enum gb_claim {
    GB_NO_CLAIM,
    GB_C270_M, /* ASTM C270, proportion specification */
    GB_C270_S,
    GB_C270_N,
    GB_C270_O,
    GB_C476_FINE, /* ASTM C476 */
    GB_C476_COARSE,
    GB_DESIGNATION_1, /* British designation (i), class M12 of EN 998-2 */
    GB_DESIGNATION_2, /* (ii), M6 */
    GB_DESIGNATION_3, /* (iii), M4 */
    GB_DESIGNATION_4, /* (iv), M2 */
    GB_CLAIMS
} gb_claim;

typedef enum gb_consistency { GB_STIFF, GB_PLASTIC, GB_PASTE, GB_FLUID } gb_consistency;

/* What a bag's label, or a measured batch, says. */
typedef struct gb_label {
    gb_mass bag;
    gb_volume yield;
    gb_share spread; /* of a job's own label: as that of a recipe; NaN: the usual one */
    gb_origin at;
} gb_label;

/* The trade's order: what is built on comes first. */
typedef enum gb_stage {
    GB_FOOTING_STAGE, /* all that a footing is made of */
    GB_SLAB_STAGE,    /* slabs and stairs cast on the ground or on a footing */
    GB_BLOCK_STAGE,
    GB_CORE_STAGE,
    GB_PARGE_STAGE,
    GB_SETTING_STAGE, /* beds with their slurry */
    GB_JOINT_STAGE,   /* joints and pointing */
    GB_STAGES
} gb_stage;

/* A time to wait: which activity, from when on. */
typedef struct gb_hold {
    gb_words what;
    gb_duration least;
    gb_duration most; /* NaN when there is no upper end */
    unsigned before;  /* bit 1 << gb_stage for each stage that waits for it */
} gb_hold;

/* Which keys of a mix one entry states: the mix's own, or one that it is like. */
typedef struct gb_lineage {
    const char *id;
    const char *place; /* "yard.cfg:12" */
    const char *keys;  /* "parts, water"; "" when it only has another name */
} gb_lineage;

typedef struct gb_mix {
    const char *name; /* "stiff-1-4" */
    const char *id;   /* "bed/stiff-1-4" */
    const char *file;
    bool own; /* the user's, not of the shipped table */
    gb_origin at;
    gb_ref like; /* the entry that holds what this one does not state; NULL: none */
    const gb_lineage *lineage; /* its own entry, then those that it is like; none for
                                  one of the shipped table that stands alone */
    size_t lineage_count;
    uint64_t digest; /* of its file and of the materials */
    gb_words title;
    unsigned uses;    /* bit 1 << gb_layer_kind for each layer it may fill */
    gb_words purpose; /* what it is for */
    gb_words not_for;
    gb_words source;      /* a standard or book, or "common practice" */
    gb_claim claims;      /* what its proportions claim to be */
    gb_length largest;    /* nominal size of its stone; NaN: not known */
    gb_pressure strength; /* at 28 days, of cylinders, that it is known for; NaN: none */
    gb_concrete
        concrete; /* what its parts are proportioned for; line 0: they are stated */
    const gb_part *parts; /* none for a bagged blend */
    size_t part_count;
    const gb_addition *additions;
    size_t addition_count;
    gb_consistency consistency;
    gb_water water;
    gb_share air;
    gb_label label;        /* line 0 when there is none */
    gb_share spread;       /* of its yield; NaN: the usual one of its route */
    gb_duration life;      /* working life, or a slurry's life in the pot */
    gb_duration life_hot;  /* the same in the hot band */
    gb_duration open;      /* slurry only: open on the stone; NaN otherwise */
    bool never_retempered; /* no water is added once it is mixed */
    gb_duration mixing;    /* least time in the mixer */
    const gb_words *order; /* charging order */
    size_t order_count;
    gb_words check;    /* the consistency check */
    gb_words at_limit; /* at never past and still dry */
    const gb_hold *holds;
    size_t hold_count;
} gb_mix;

/* How a yield was found, and what governed it. */
typedef enum gb_route { GB_COMPUTED, GB_LABELLED, GB_MEASURED } gb_route;
typedef enum gb_regime {
    GB_BY_SOLIDS, /* the absolute volume of solids, water and air */
    GB_BY_SAND,   /* the loose sand: the paste does not fill it */
    GB_BY_LABEL
} gb_regime;

enum { GB_MOST_PARTS = 8, GB_MOST_ADDITIONS = 4 };

/* One bag of a mix: the masses of its parts, dry; its water in all, the sand's own
   counted in; what it makes. For a bagged blend `parts` is empty. */
typedef struct gb_recipe {
    gb_mass bag; /* the binder's bag, or the blend's */
    gb_mass part[GB_MOST_PARTS];
    gb_mass binder;   /* cement and lime; of a bagged blend, all of it */
    gb_mass sand;     /* dry */
    gb_mass absorbed; /* in the pores of its aggregate, where that is told; else 0 */
    gb_mass drunk;    /* water that the aggregate absorbs, less what its stone brings; 0
                         where the water figures count all that is in the sand */
    gb_mass powder;   /* additions by a share of the binder */
    gb_mass dry;      /* all that is not water; liquids of an addition count as water */
    gb_mass water_least, water_usual, water_most;
    gb_volume yield;
    gb_share spread; /* one standard deviation of the yield, a share of it */
    gb_route route;
    gb_regime regime;
} gb_recipe;

/* The recipe of one bag. `own` is the user's label or measured yield, or NULL; `measured`
   tells which of the two it is. `bag` is the pack of the first part for a site mix (the
   material's own when NaN).

   A site mix, masses in kg, sand dry (C cement, L lime, S sand and stone, W water):
     V_abs = (sum of mass / (1000 SG) + W/1000) / (1 - air)
     V     = max(V_abs, S / (1.07 rho_ds))       rho_ds: the sand's dry loose density
     W     = 0.22 C + 0.12 S + 1.0 L for a plastic mortar, 0.65 of it for a stiff bed,
             or the binder's mass times a stated share
   Source: absolute volumes; the demand and 1.07 were fitted to the CPWD Analysis of Rates
   1:1 to 1:8 (within 10 and 8 %, its sand measured dry and loose), to Rule 38 of the US
   Navy Builder manual and to ASTM C270 (5 %). tests/published prints each deviation.

   Additions by a share of the binder count with their mass and their own volume; doses of
   a liquid are too small to count, and one that replaces water counts as that water.

   How sure a yield is: the spread that the mix or the label states, else 4 % for a
   computed mortar, grout or paste and 6 % for one with stone (both measured against
   tests/published, see yield.c), 2 % for a label and 1 % when measured on site (both
   common practice).

   GB_NOT_POSITIVE: no parts and no label, a part or density that is not over zero, or a
   spread that is no share of one.
   GB_IMPOSSIBLE: mass and volume make a fresh mix lighter than 1200 or heavier than
   2700 kg/m3, which no mortar, grout, paste or concrete is. */
gb_status gb_make_recipe(const gb_mix *mix, const gb_label *own, bool measured,
                         gb_mass bag, gb_recipe *recipe) GB_MUST_USE;

/* Gives a mix the parts, the water and the air of its concrete: `parts` (room for three)
   become its parts by loose volume, as gb_make_recipe weighs them. The ratio of water to
   cement is never passed; least is 0.9 of it (common practice). GB_IMPOSSIBLE as
   gb_concrete_parts; GB_NOT_POSITIVE for a material without a density. */
gb_status gb_mix_of_concrete(gb_mix *mix, gb_part *parts) GB_MUST_USE;

/* One bag of it, mixed: the dry parts, what their pores hold, the usual water. */
gb_mass gb_wet_mass(const gb_recipe *recipe);

bool gb_holds_stone(const gb_mix *mix);

/* True when its cement entrains air, or an addition does. */
bool gb_entrains_air(const gb_mix *mix);

/* True when its parts are proportioned for a strength. */
bool gb_is_proportioned(const gb_mix *mix);

/* The mass of an addition in `bags` bags: a share of the binder; a dose for so much
   binder, times its density; or, of one that replaces water, its share of the `water`
   that is added. */
gb_mass gb_addition_mass(const gb_mix *mix, const gb_recipe *recipe, size_t addition,
                         double bags, gb_mass water);

/* True when pigment is among its additions. */
bool gb_is_coloured(const gb_mix *mix);

/* True when no water is added once it is mixed: the entry says so, or water that is added
   later would pale its colour. */
bool gb_is_never_retempered(const gb_mix *mix);

/* The share of the mixing water that additions replace; 0 when none does. */
gb_share gb_water_replaced(const gb_mix *mix);

/* A size at which a layer is commonly laid, to compare mixes by what one bag covers. */
typedef struct gb_cover {
    gb_layer_kind kind;
    gb_length width; /* of a joint; NaN: the layer covers an area */
    gb_length depth;
} gb_cover;

/* The common sizes of beds, slurries, joints, pointing and slabs in that system, in the
   order of gb_layer_kind. Common practice. Returns how many there are. */
size_t gb_common_covers(gb_system system, const gb_cover **list);

/* What a volume of wet mix covers at that size, nothing lost: an area, or a length of
   joint. */
gb_area gb_area_covered(gb_volume volume, const gb_cover *at);
gb_length gb_joint_covered(gb_volume volume, const gb_cover *at);

/* What one bag brings into its yield, in each volume of wet mix. */
gb_density gb_in_wet(gb_mass of_one_bag, gb_volume yield);

/* The volume by which mixes are priced: 1 yd3, in metric units 1 m3. */
gb_volume gb_compared_volume(gb_system system);

#endif
