/* From a job to a plan: takeoff, gather, gauge, batch, cautions. Data flows one way. */
#ifndef GAUGEBOX_PLAN_H
#define GAUGEBOX_PLAN_H

#include "gaugebox/conform.h"
#include "gaugebox/heat.h"
#include "gaugebox/job.h"

/* ---- takeoff: the volume of each layer ------------------------------------------- */

typedef struct gb_take {
    const gb_piece *piece;
    const gb_layer *layer;
    double units;       /* how many pieces */
    gb_area area;       /* bedded area of one piece; NaN for layers without one */
    gb_length depth;    /* mean; NaN for layers without one */
    gb_length depth_se; /* standard error of the mean; 0 for a single depth */
    gb_volume each;     /* volume in one piece */
    gb_share spread;    /* one standard error of it, from depths or cores; 0 when sure */
    gb_volume net;      /* units * each */
} gb_take;

/* Sizes of one piece in plan; overhang is not bedded. GB_NOT_POSITIVE. */
gb_status gb_piece_size(const gb_piece *piece, gb_plan_size *size) GB_MUST_USE;

/* The bedded area alone; NaN for a piece without one. */
gb_area gb_bedded_area(const gb_piece *piece);

/* What a slurry takes on such a back: 1/16 in smooth, 1/8 in scored (common practice). */
gb_length gb_usual_slurry(gb_back back);

/* Depth of a layer: mean and standard error of the measured depths,
   se = s / sqrt(n), s with n - 1. A slurry without a stated depth takes the usual one;
   a bed between levels has theirs. */
void gb_layer_depth(const gb_layer *layer, gb_length *mean, gb_length *se);

/* True for what fills a joint: its length, width and depth are its size. */
bool gb_is_joint(gb_layer_kind kind);

/* The depth of a layer where it lies: with a fall, depth + fall * the mean distance of
   the bedded area from its front; of a wedge the mean of both ends. */
gb_length gb_laid_depth(const gb_piece *piece, const gb_layer *layer, gb_length depth);

/* How the joints of a layer are told. */
typedef enum gb_joint_way {
    GB_JOINT_BY_LENGTH,
    GB_JOINT_BY_FLAG,
    GB_JOINT_BY_RATE,
    GB_JOINT_BY_SHARE
} gb_joint_way;
gb_joint_way gb_joint_way_of(const gb_layer *layer);

/* The face of a parged wall of one piece. */
gb_area gb_parged_face(const gb_layer *layer);

/* The block layer of a piece; NULL when it has none. */
const gb_layer *gb_block_layer(const gb_piece *piece);

/* How many blocks of one piece have their cores filled, a half counted as a half, and the
   grout that fills all cells of one. NaN when neither is known. */
double gb_core_blocks(const gb_piece *piece, const gb_layer *layer);
gb_volume gb_core_each(const gb_piece *piece, const gb_layer *layer);
/* Block to order for all pieces: so many of each, with the spare, counted up. */
double gb_ordered(const gb_take *take, double blocks);
/* True when that is the usual grout for the width, and not stated. */
bool gb_usual_cores(const gb_layer *layer);

/* Takes off one layer. GB_NOT_POSITIVE when a size it needs is not over zero. */
gb_status gb_take_off(const gb_piece *piece, const gb_layer *layer,
                      gb_take *take) GB_MUST_USE;

/* The stage of the work that a layer belongs to. */
gb_stage gb_stage_of(const gb_take *take);

/* ---- gather: the need of each mix ------------------------------------------------ */

typedef struct gb_need {
    const gb_mix *mix;
    gb_share waste;
    gb_volume net;
    gb_volume gross;    /* net * (1 + waste) */
    gb_volume spread;   /* one standard error of gross, from measured depths */
    double bags;        /* of the mix's recipe, unrounded: gross / yield */
    double bags_spread; /* one standard deviation of them, from depths and yield */
    const gb_take *const *takes; /* stage by stage, in each in the order of the job */
    size_t take_count;
} gb_need;

/* ---- batch: loads of the mixer --------------------------------------------------- */

/* What keeps a batch from being larger. */
typedef enum gb_limit {
    GB_LIMIT_NEED,   /* nothing: one batch is all that is needed */
    GB_LIMIT_VOLUME, /* the mixer's usable volume */
    GB_LIMIT_MASS,   /* the mixer's mass limit */
    GB_LIMIT_TIME    /* what the crew places within the working life */
} gb_limit;

/* A stretch of one take that a batch covers, counted in pieces: 0 to take->units. */
typedef struct gb_stretch {
    const gb_take *take;
    double from, to;
} gb_stretch;

typedef struct gb_batch {
    double bags;
    gb_duration time; /* to place it as it is covered; NaN when the pace does not say */
    const gb_stretch *stretches;
    size_t stretch_count;
} gb_batch;

/* The batches of one stage. Hours or days lie between stages, so each is mixed for by
   itself. */
typedef struct gb_stage_batches {
    gb_stage stage;
    size_t first_take, take_count; /* of the need's */
    gb_volume gross;
    double bags_needed;
    size_t bags_whole;
    size_t first, count; /* of the batches */
    double last_needed;  /* see below */
} gb_stage_batches;

typedef struct gb_batching {
    const gb_mixer *mixer; /* that the mix goes into */
    double most_bags;      /* one batch may hold this many */
    gb_limit limit;        /* because of this */
    double bags_needed;    /* gross / yield, unrounded */
    size_t bags_whole;     /* counted up, stage by stage */
    const gb_stage_batches *stages;
    size_t stage_count;
    const gb_batch *batches;
    size_t batch_count;
    double bags_gauged;        /* sum of the batches; the need when there are none */
    bool part_bags;            /* the mixer, or the time, holds less than one bag */
    double last_needed;        /* what the last batch must hold, in eighths of a bag; in
                                  thirty-seconds when it is all and under a quarter */
    gb_duration bag_time;      /* to place one bag of the thinnest layer; NaN when the
                                  pace does not say */
    gb_duration time_to_place; /* of the slowest batch, as it is covered; NaN likewise */
} gb_batching;

/* What the first batch should have set, and what fewer means. */
typedef struct gb_first_check {
    bool known; /* false when the batch tells nothing by pieces */
    const gb_take *take;
    size_t pieces;   /* that the first batch should finish */
    double left;     /* of the next one; 0 when under a quarter */
    size_t fewer;    /* so many and nothing left is too few; then: */
    gb_length depth; /* of the bed */
    gb_volume gross; /* needed in all */
    double bags;     /* the same in bags */
} gb_first_check;

/* How fast a kind of layer is placed, as an area or as a volume in a second; NaN where
   the job does not say. */
typedef struct gb_rate {
    double m2_s, m3_s;
} gb_rate;

/* The area of one piece that is placed: what is bedded, or the face that is parged; NaN
   for layers without one. */
gb_area gb_placed_area(const gb_take *take);

/* The time that so many pieces of a take need, waste counted in; NaN without a pace. */
gb_duration gb_time_of(const gb_take *take, gb_share waste, const gb_rate *rates,
                       double pieces);

/* True when all that a batch covers is placed by one and the same volume in an hour: then
   all that it makes counts. */
bool gb_by_one_volume(const gb_batch *batch, const gb_rate *rates);

/* ---- slurry: pots, never bags ---------------------------------------------------- */

typedef struct gb_pot {
    const gb_take *take;
    double pieces;              /* 1 or 2 treads; under 1 for part of a landing */
    gb_area area;               /* covered */
    double bags;                /* of the recipe, unrounded: what is weighed into it */
    gb_mass first, usual, most; /* water, the sand's own taken off */
    size_t count;               /* pots of this size for the whole take */
    gb_length depth;
    gb_duration time; /* to cover it at the stated pace; NaN when none is */
    bool fits_life;   /* within the life in the pot */
} gb_pot;

/* ---- cautions -------------------------------------------------------------------- */

typedef enum gb_severity { GB_NOTE, GB_CAUTION, GB_STOP } gb_severity;

typedef enum gb_caution_code {
    GB_C_MIXER_SMALL,     /* below one bag: part bags by mass */
    GB_C_MIXER_WEAK,      /* its mass limit is below one bag's batch */
    GB_C_MIXER_TOO_SMALL, /* below an eighth of a bag: no batch can be made */
    GB_C_MIXER_TOO_WEAK,  /* the same by its mass limit */
    GB_C_LIFE_TOO_SHORT,  /* the crew places less than that within the life */
    GB_C_LIFE_SHORT,      /* the crew places less than a bag within the life */
    GB_C_SCORED_THIN,     /* slurry on a scored back thinner than usual */
    GB_C_BED_THIN,        /* the bed of one tread, by its levels */
    GB_C_BED_THICK,
    GB_C_DEPTH_SPREAD,   /* measured depths differ by more than the bed can tell */
    GB_C_BY_HAND,        /* many bags, and mixed in a barrow */
    GB_C_AIR_BY_HAND,    /* entrained air, and mixed in a barrow */
    GB_C_AIR_BY_NOTHING, /* entrained air, and nothing in the mix that entrains it */
    GB_C_NO_PACE,        /* no pace: the working life was not checked */
    GB_C_SAND_DRINKS,    /* the pile is drier than what its sand absorbs */
    GB_C_SAND_TOO_WET,   /* the pile brings more water than the mix may hold */
    GB_C_BUCKET_HEAVY,   /* a level bucket weighs more than one person should lift */
    GB_C_SHOVELS_DIFFER, /* the counts of the shovel's calibration */
    GB_C_COLOUR_PARTS,   /* coloured, and batches of part bags */
    GB_C_COLOUR_STRONG,  /* pigment beyond what masonry cement takes */
    GB_C_CARBON_BLACK,   /* carbon black beyond what cement takes */
    GB_C_ANTIFREEZE,
    GB_C_CHLORIDE,
    GB_C_COLD_40, /* masonry bands, TMS 602 */
    GB_C_COLD_32,
    GB_C_COLD_25,
    GB_C_COLD_20,
    GB_C_WIND_BREAK,
    GB_C_CONCRETE_COLD,  /* ACI 306R: now, or while it is protected */
    GB_C_DRYING,         /* ACI 305R: exposed concrete loses water too fast */
    GB_C_DRYING_UNKNOWN, /* exposed concrete, and no humidity */
    GB_C_HOT,
    GB_C_HOT_SHADE,
    GB_C_STONE_COLD, /* slurry */
    GB_C_UNITS_COLD, /* any other mix */
    GB_C_UNITS_FROZEN,
    GB_C_FROST_DUE,
    GB_C_CONCRETE_HOT, /* as it is placed, where that is stated */
    GB_C_RAIN_AFTER,   /* not in the work, but soon after it */
    GB_C_RAIN,
    GB_C_CLAIM_CEMENT, /* proportions that the mix claims: none for its cement */
    GB_C_LIME_LITTLE,
    GB_C_LIME_NOT_OVER,
    GB_C_LIME_MUCH,
    GB_C_SAND_LITTLE, /* by cement and lime */
    GB_C_SAND_MUCH,
    GB_C_SAND_CEMENT_LITTLE, /* by cement alone */
    GB_C_SAND_CEMENT_MUCH,
    GB_C_STONE_LITTLE,
    GB_C_STONE_MUCH,
    GB_C_PORTLAND_LITTLE, /* by masonry cement */
    GB_C_PORTLAND_MUCH,
    GB_C_EXPOSED_WEAK, /* concrete that its exposure asks more of */
    GB_C_EXPOSED_WET,
    GB_C_EXPOSED_LITTLE_AIR,
    GB_C_EXPOSED_MUCH_AIR,
    GB_C_EXPOSED_LEAN,
    GB_C_EXPOSED_UNKNOWN,     /* what it asks for, and nobody knows of the mix */
    GB_C_EXPOSURE_NOT_STATED, /* a slab of treads or of a landing, and no class */
    GB_CAUTION_CODES
} gb_caution_code;

/* How `value` and `limit` of a caution are counted. */
typedef struct gb_caution {
    gb_caution_code code;
    gb_severity severity;
    gb_kind kind; /* of value and limit; GB_KINDS when there are none, or plain ratios */
    double value;
    double limit;
    gb_hour hour;        /* of the weather that raised it; line 0: of no file */
    const gb_take *take; /* of a bed by levels, and the tread, from 0; else NULL */
    size_t tread;
    gb_exposure exposure; /* that asks for it, and for what; of exposed concrete alone */
    gb_exposure_limit asked;
    const char *source; /* a standard, a book, or "common practice" */
} gb_caution;

typedef struct gb_cautions {
    const gb_caution *list;
    size_t count;
} gb_cautions;

/* The severity and the source of each code, from one table. */
gb_severity gb_caution_severity(gb_caution_code code);
const char *gb_caution_source(gb_caution_code code);

/* What a mix raises by classes that it is held to without a job; returns how many, at
   most GB_MOST_MISSES. `list` may be NULL. */
size_t gb_class_cautions(unsigned exposures, const gb_exposed_mix *known,
                         gb_caution *list);

/* A batch holds whole bags, or eighths of one when not even one fits: common practice. */
double gb_batch_step(double most_bags);

/* True for what the exposure of concrete raises. */
bool gb_is_of_exposure(gb_caution_code code);

/* The ratio that a caution of that code is about, or GB_NO_RATIO. */
gb_ratio gb_caution_ratio(gb_caution_code code);

/* What a mix raises by itself, without a job: one caution for each limit of its claim
   that it misses, with that limit's source. GB_NO_MEMORY. */
gb_status gb_mix_cautions(const gb_mix *mix, gb_arena *arena,
                          gb_cautions *cautions) GB_MUST_USE;

/* Masonry cold and hot bands for an air temperature and a wind (NaN: still).
   Cold: below 40 F. The source's bands share the edges 32 and 25 F, which belong to the
   colder one; at 20 F it prints "25 to 20" beside "below 20", and the colder is taken as
   the safer reading. Hot: over 100 F, or over 90 F with wind over 8 mph; shade
   over 115 F, or over 105 F with that wind; all strict as printed.
   Source: TMS 602 (ACI 530.1 / ASCE 6) articles 1.8 C and D, as tabulated in Masonry
   Magazine, September 2004. Returns GB_CAUTION_CODES when neither applies. */
typedef struct gb_hot_limits {
    gb_temp hot, hot_windy, shade, shade_windy;
    gb_speed wind;
} gb_hot_limits;
gb_hot_limits gb_masonry_hot_limits(void);
gb_caution_code gb_cold_band(gb_temp air);
gb_caution_code gb_hot_band(gb_temp air, gb_speed wind);

/* The hour of the work in the worst hot band, and of those the hottest; without one the
   warmest hour. */
gb_hour gb_hot_hour(const gb_weather *weather);

/* What the rules of the weather see in a mix: mortar, slurry, grout that cores are filled
   with, concrete. */
typedef enum gb_stuff {
    GB_AS_MORTAR,
    GB_AS_SLURRY,
    GB_AS_GROUT,
    GB_AS_CONCRETE
} gb_stuff;

/* Concrete in the cold, by the least dimension of its section: at the least so warm as it
   is placed and kept; as it is mixed in air of that temperature; and at the most cooled
   by so many degrees in the 24 h after protection ends. Source: ACI 306R as tabulated by
   Beall, Masonry and Concrete (2004), figure 3-37; from 36 in on from memory of ACI
   306R-88, table 3.1. A section on an edge counts as the thinner one, air at 30 and 0 F
   as the colder. */
typedef struct gb_cold_concrete {
    gb_temp placed, mixed;
    double drop_c;
} gb_cold_concrete;
gb_cold_concrete gb_concrete_in_cold(gb_length least, gb_temp air);

/* Masonry is cold under 40 F: TMS 602 article 1.8 C; for stone under a slurry, and for
   hours that do not count, common practice. */
gb_temp gb_cold_for_masonry(void);

/* Concrete is placed at 95 F at the most (ACI 301, second hand). */
gb_temp gb_hottest_concrete(void);

/* Cold weather for concrete: the air has fallen below 40 F, or is to within the watch. */
gb_temp gb_cold_for_concrete(void);

/* ---- the plan -------------------------------------------------------------------- */

/* How warm the first batch of a mix comes out, and what it takes to have it as wanted. */
typedef enum gb_warm_way {
    GB_NOT_WANTED,     /* no temperature is */
    GB_WARM_ALREADY,   /* within half a degree C of it already */
    GB_WARM_BY_WATER,  /* warmed or cooled */
    GB_WARM_BY_SAND,   /* water at its hottest is not enough */
    GB_WARM_BY_ICE,    /* water just above freezing is not enough */
    GB_WARM_BY_NOTHING /* all the water as ice is not enough */
} gb_warm_way;

typedef struct gb_warmth {
    gb_batch_heat batch;
    bool comes_out; /* above freezing; else `mixed` is NaN */
    gb_temp mixed;
    gb_warm_way way;
    gb_temp water;   /* that is needed; the hottest by sand */
    gb_temp needed;  /* by sand: what the water alone would have to be */
    gb_temp reached; /* by sand: with the hottest water */
    gb_temp sand;    /* by sand: that it has to be then */
    gb_mass ice;     /* by ice: of the water */
} gb_warmth;

/* How work is protected once it is done. */
typedef enum gb_shield { GB_NO_SHIELD, GB_COVER, GB_BLANKETS, GB_ENCLOSURE } gb_shield;

typedef struct gb_protection {
    gb_shield shield; /* against cold */
    gb_temp value, limit;
    gb_duration time;
    bool by_least; /* the value is the least of the time, else the mean of 24 h */
    bool fog;      /* fog spray three times a day until 3 days old */
    gb_temp hot_value, hot_limit;
    const char *source;
} gb_protection;

/* Masonry by the mean of the 24 h to come: cover under 40 F, blankets from 25 F, an
   enclosure above freezing from 20 F down, for 24 h; grouted by the least of 48 h, and
   for 48 h; an edge is the colder band's. Fog spray over 100 F, over 90 F with wind over
   8 mph (wind of the warmest hour). Concrete by the least of the watch: 3 days under 40
   F, as exposed and not loaded, cement type I. Source: TMS 602 article 1.8 C.3 and D.3
   and the texts it was read in, see tests/published; ACI 306R table 5.1 as Beall prints
   it, figure 3-38. */
gb_protection gb_protect(const gb_weather *weather, gb_stuff stuff);

/* Concrete is kept wet for 7 days at 50 F or more: UFGS 03301A for cement type I; ACI
   308R from memory. */
gb_duration gb_wet_curing(void);

typedef struct gb_mix_plan {
    gb_need need;
    gb_recipe recipe;
    gb_duration life; /* shortened in the hot band */
    bool is_slurry;
    gb_stuff stuff;
    bool own_label;       /* the job states a label or a measured yield */
    gb_batching batching; /* not for slurry */
    gb_first_check first_check;
    const gb_pot *pots; /* slurry */
    size_t pot_count;
    gb_cautions cautions;
} gb_mix_plan;

/* Of a mix's life, the time from first water until a batch is turned out, and what is
   left to place it. */
gb_duration gb_wet_mixing(const gb_mix *mix);
gb_duration gb_life_to_place(const gb_mix_plan *mix);

/* False without stated temperatures, or when no batch is mixed. Water is warmed to 140 F
   at the most, and cooled to 35 F; see heat.h. */
bool gb_warm_batch(const gb_job *job, const gb_mix_plan *mix, gb_warmth *warmth);
/* What a mix may be as it is mixed; NaN where there is no limit. Mortar 40 to 120 F;
   grout the same, and 70 F at least in air at 32 F or below (TMS 602 article 1.8 C and
   D). Concrete at most 95 F (ACI 301, second hand), and in the cold what
   gb_concrete_in_cold says. */
typedef struct gb_mix_band {
    gb_temp least, most;
    const char *source;
} gb_mix_band;
gb_mix_band gb_band_of_mix(const gb_weather *weather, const gb_mix_plan *mix);

/* True when that takes water, or has water, so hot that cement would set at once in it.
 */
bool gb_needs_hot_water(const gb_job *job, const gb_mix_plan *mix);

/* How warm concrete is as it is placed in an hour: as stated, else at the least as warm
   as the air, as it is wanted, and as it must be in the cold. */
gb_temp gb_fresh_concrete(const gb_job *job, const gb_mix_plan *mix, gb_hour hour);

/* What concrete loses at most in an hour of the work, and that hour; its humidity is NaN
   when the weather does not tell it. */
double gb_worst_drying(const gb_job *job, const gb_mix_plan *mix, gb_hour *hour);

/* gb_concrete_in_cold of what a plan fills: by the thinnest of it. */
gb_cold_concrete gb_cold_of(const gb_mix_plan *mix, gb_temp air);

/* What a job needs of one material, or of one bagged blend. */
typedef struct gb_supply_need {
    const gb_material *material; /* NULL for a blend */
    const gb_mix *blend;         /* NULL for a material */
    gb_mass mass;                /* dry, with the material's own waste */
    gb_mass lying;               /* the same as it lies: sand with its moisture */
    gb_volume loose; /* the same by volume, sand as it bulks; NaN for a blend */
    gb_mass pack;    /* the bag; NaN for what comes loose */
} gb_supply_need;

/* By which one is found and shown: of its material, or of its blend. */
const char *gb_supply_name(const gb_supply_need *need);
const gb_words *gb_supply_title(const gb_supply_need *need);
/* The whole bags that hold it; NaN for what comes loose. */
double gb_supply_packs(const gb_supply_need *need);

/* The stone of a piece that states one. */
typedef struct gb_stone_take {
    const gb_piece *piece;
    gb_stone_size size;
} gb_stone_take;

/* Whether a layer lies under all steps of a run together, W (n T + overhang + overlap) in
   plan, and not under each of them: its dig, its base and its cloth, unless their area or
   volume is stated. Steps overlap, and what goes beyond goes round them all. */
bool gb_lies_under_run(const gb_piece *piece, const gb_loose *loose);

/* A layer that no mix fills. */
typedef struct gb_loose_take {
    const gb_piece *piece;
    const gb_loose *loose;
    gb_loose_size size;
} gb_loose_take;

typedef struct gb_plan {
    const gb_job *job;
    gb_rate rates[GB_LAYER_KINDS];
    uint64_t digest; /* of the job, its mixes and the program's version */
    const gb_take *takes;
    size_t take_count;
    const gb_mix_plan *mixes;
    size_t mix_count;
    const gb_loose_take *loose;
    size_t loose_count;
    const gb_stone_take *stones;
    size_t stone_count;
    const gb_supply_need *supplies;
    size_t supply_count;
    gb_volume water; /* that the batches take, with the sand's moisture as stated */
} gb_plan;

/* The job's sand as it lies today, and its moisture alone. */
gb_lying gb_job_lying(const gb_job *job);
gb_share gb_job_moisture(const gb_job *job);

/* What the job gauges loose parts with: the volume of one measure. */
gb_volume gb_job_measure(const gb_job *job);

/* The heaviest level bucket that is lifted for the first batch of a mix: the part of
   which it is full, and its mass as it lies, without the pail. False when none is lifted
   full: other measures, weighed parts. */
typedef struct gb_bucketful {
    size_t part;
    gb_mass mass;
} gb_bucketful;
bool gb_heaviest_bucket(const gb_job *job, const gb_mix_plan *mix,
                        gb_bucketful *heaviest);

/* Bags that one mix takes in all: its batches, or for a slurry what the pots hold. */
double gb_bags_used(const gb_mix_plan *mix);

/* The need is taken to be normal about its bags, with their standard deviation. Bags that
   are enough for it so surely, unrounded and not below zero; and how surely so many are.
 */
double gb_bags_surely(const gb_need *need, gb_share sure);
gb_share gb_sureness(const gb_need *need, double bags);

/* Bags to buy for a mix: what its batches take, or more to be so sure of it; of a blend
   whole ones. */
double gb_bags_bought(const gb_job *job, const gb_mix_plan *mix);

/* The usual mixing water that they take with sand of that moisture, with what replaces a
   part of it; none when the sand is too wet. */
gb_mass gb_mixing_liquid(const gb_mix_plan *mix, gb_share moisture);

/* The water in it, and the mass of one of the additions. */
gb_mass gb_water_used(const gb_mix_plan *mix, gb_share moisture);
gb_mass gb_addition_used(const gb_mix_plan *mix, size_t addition, gb_share moisture);

/* The label or the measured yield that the job states of a mix; NULL when it states none.
 */
const gb_own_label *gb_job_label(const gb_job *job, const gb_mix *mix);

/* The bag that a material comes in on this job: the job's own, else the mix table's for
   the job's units; NaN for what comes loose. */
gb_mass gb_job_pack(const gb_job *job, const gb_material *material);

/* The area that is covered in a second at a pace; NaN when it is none or one by volume.
   GB_NO_PACE when it counts treads and the job has none. */
gb_status gb_area_pace(const gb_job *job, const gb_pace *pace, double *m2_s) GB_MUST_USE;

/* Plans a whole job. Everything in the plan lives in the arena; the job must outlive it.
   On a fault *bad_mix names the mix it concerns (or NULL). */
gb_status gb_make_plan(const gb_job *job, gb_arena *arena, gb_plan *plan,
                       const gb_mix **bad_mix) GB_MUST_USE;

/* The needs of several plans, one row for each material or blend. GB_NO_MEMORY. */
gb_status gb_merge_supplies(const gb_plan *plans, size_t plan_count, gb_arena *arena,
                            const gb_supply_need **needs, size_t *count) GB_MUST_USE;

#endif
