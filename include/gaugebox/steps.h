/* A run of steps laid out: how many risers a climb takes, how high each face is, where
   every level lies. */
#ifndef GAUGEBOX_STEPS_H
#define GAUGEBOX_STEPS_H

#include "gaugebox/arena.h"
#include "gaugebox/origin.h"
#include "gaugebox/quantity.h"

/* The count is that of the risers, from the foot to the top nosing. A riser is measured
   from nosing to nosing, plumb: the face of the stone and what the tread below climbs by
   its pitch. The first one stands on the foot and has no pitch below it. */

/* How a run is built: slabs on a bed over stepped block, each platform on the footing;
   slabs whose riser block stands on the tread below; solid stone. */
typedef enum gb_steps_build {
    GB_ON_PLATFORMS,
    GB_ON_TREADS,
    GB_SOLID_STEPS,
    GB_STEPS_BUILDS
} gb_steps_build;

/* What the rise is measured up to: the nosing of the last riser, or a sill behind what
   lies there, which its pitch lifts. */
typedef enum gb_steps_top { GB_TO_NOSING, GB_TO_SILL } gb_steps_top;

/* What lies behind the top nosing: a landing, which is a piece of its own, or the last
   tread of the run. N risers have N - 1 treads below a landing, else N. */
typedef enum gb_steps_upper { GB_UPPER_LANDING, GB_UPPER_TREAD } gb_steps_upper;

/* A run as stated; quantities that are not are NaN. */
typedef struct gb_steps {
    gb_length rise; /* from the finished foot to the stated top */
    gb_steps_top top;
    gb_length sill; /* that the sill stands above the back of what lies before it */
    gb_steps_upper upper;
    gb_length landing; /* front to back, of an upper landing */
    size_t count;      /* risers; 0: not chosen */
    gb_length going;   /* of a tread, nosing to nosing; or by: */
    gb_length length;  /* of all treads */
    gb_slope pitch;    /* of the treads, down to the front */
    bool evened;       /* the first face higher by the pitch term: risers alike */
    gb_length face;    /* stated, not solved */
    gb_length width;   /* along the nosing */
    gb_steps_build build;
    gb_length slab; /* thickness */
    gb_length bed;  /* at its front, where no course decides it */
    gb_length least_bed, most_bed;
    gb_length course;  /* of block with its joint */
    gb_length footing; /* its top below the foot */
    gb_length base;    /* depth of gravel or concrete below the footing's top, for the
                          drawing */
    gb_length stone;   /* height of solid steps */
    gb_length overlap; /* that the next stone, or riser block, bears on a tread */
    gb_length overhang;
    gb_length least_riser, most_riser; /* that a search keeps to */
    gb_length band_least, band_most;   /* of 2 R + T */
    gb_length bench;                   /* a benchmark above the foot */
    gb_length laser;                   /* its beam above the benchmark */
    gb_origin at;                      /* line 0: the piece is no run */
} gb_steps;

/* A run with one number of risers. */
typedef struct gb_layout {
    size_t count;
    size_t treads; /* of the run itself */
    bool evened;
    gb_length first, face; /* exposed: the first one, all others */
    gb_length term;        /* pitch x going */
    gb_length riser;       /* of all but the first: face + term */
    gb_length going, length;
    gb_length behind; /* that the pitch behind the top nosing and the sill add; 0 when the
                         rise ends at the nosing */
    gb_length climb;  /* first + (N - 1) riser + behind */
    gb_length error;  /* rise - climb */
    gb_length set_first, set_face; /* as a tape is read, see gb_lay_steps */
    gb_length set_error;           /* rise less the climb of those */
    gb_length comfort;             /* 2 R + T */
    gb_length buried;              /* solid steps: of the first one */
    gb_length
        depth; /* of a slab or a stone, front to back: going, overhang and overlap */
} gb_layout;

/* Lays a run out with `count` risers, evened or with equal faces. Faces are solved for
   the rise: F = (rise - behind - (N - 1) s T) / N, evened the first one s T more and
   (rise - behind) / N in all; unless a face is stated. Solid steps have the face of
   their stone, and the first is buried by what is too much; where even the whole first
   stone is too little, the error says by how much. `read_to` is what a tape is read to:
   the faces as set are rounded to it, and set_error is what that loses. Source:
   arithmetic. GB_NOT_POSITIVE when a size is not over zero or the pitch below it, or
   when faces that are over zero cannot be had; GB_IMPOSSIBLE with fewer than two risers.
 */
gb_status gb_lay_steps(const gb_steps *steps, size_t count, bool evened,
                       gb_length read_to, gb_layout *layout) GB_MUST_USE;

/* The height of riser i, from 0. */
gb_length gb_riser(const gb_layout *layout, size_t i);

/* How much the highest riser is above the lowest one. */
gb_length gb_risers_differ(const gb_layout *layout);

/* ---- levels ------------------------------------------------------------------------ */

/* Levels of one step above the foot, those below it negative. NaN where they do not
   apply: blocks and beds of solid steps, the back of a landing without a depth. */
typedef struct gb_step {
    gb_length front, back;   /* of the finished tread */
    gb_length bed_top;       /* under the slab, or under the solid stone, at its front */
    gb_length block_top;     /* level */
    gb_length bed, bed_back; /* depth at the front, and behind, where the pitch adds */
    size_t courses; /* from the footing, or from the tread below; 0 without a course */
    gb_length build_up; /* that the block lacks before the bed is not too deep */
} gb_step;

/* Step i of a layout, from 0. A course, when it is stated, decides the block: as many as
   leave the least bed in front; what is then over the most bed behind has to be built
   up. GB_NOT_POSITIVE when not one course fits, or the slab leaves no bed. */
gb_status gb_lay_step(const gb_steps *steps, const gb_layout *layout, size_t i,
                      gb_step *step) GB_MUST_USE;

/* The bed where neither a bed nor a course is stated: 1-1/4 in, common practice. */
gb_length gb_usual_front_bed(void);

/* Beds of all steps of a layout. */
typedef struct gb_beds {
    gb_length least, most; /* at any place */
    size_t build_up;       /* steps whose block has to be built up */
    bool fit;              /* all lie between the least and the most bed */
} gb_beds;

/* GB_NOT_POSITIVE as gb_lay_step. Solid steps have none: they fit, sizes NaN. */
gb_status gb_check_beds(const gb_steps *steps, const gb_layout *layout,
                        gb_beds *beds) GB_MUST_USE;

/* ---- codes ------------------------------------------------------------------------- */

typedef enum gb_step_body { GB_IRC, GB_ADA, GB_NFPA, GB_STEP_BODIES } gb_step_body;

typedef enum gb_step_rule {
    GB_RULE_IRC_RISER,
    GB_RULE_IRC_TREAD,
    GB_RULE_IRC_RISERS_DIFFER,
    GB_RULE_IRC_NOSING_LEAST,
    GB_RULE_IRC_NOSING_MOST,
    GB_RULE_IRC_PITCH,
    GB_RULE_IRC_FLIGHT,
    GB_RULE_ADA_RISER_LEAST,
    GB_RULE_ADA_RISER_MOST,
    GB_RULE_ADA_TREAD,
    GB_RULE_ADA_NOSING,
    GB_RULE_ADA_PITCH,
    GB_RULE_ADJACENT,
    GB_STEP_RULES
} gb_step_rule;

typedef struct gb_step_limit {
    gb_step_body body;
    const char *section; /* "R311.7.5.1" */
    bool at_least;       /* else at most; the limit itself passes */
    gb_kind kind;        /* GB_LENGTH or GB_SLOPE */
    double value;
    const char *source;
} gb_step_limit;

const gb_step_limit *gb_step_limit_of(gb_step_rule rule);

/* What a rule looks at, in SI units; NaN when it does not apply: nosings where the tread
   is 11 in or more (IRC), or none is stated (ADA). */
double gb_step_value(gb_step_rule rule, const gb_steps *steps, const gb_layout *layout);
bool gb_step_passes(gb_step_rule rule, const gb_steps *steps, const gb_layout *layout);
/* Rules of one body that are not met, and whether all are. */
size_t gb_rules_missed(gb_step_body body, const gb_steps *steps, const gb_layout *layout);
size_t gb_all_rules_missed(const gb_steps *steps, const gb_layout *layout);
bool gb_steps_pass(gb_step_body body, const gb_steps *steps, const gb_layout *layout);

/* A handrail from that many risers on (IRC R311.7.8), and a guard where a walking surface
   is more than so high above what lies beside it (IRC R312.1.1), both from memory. */
size_t gb_handrail_risers(void);
gb_length gb_guard_height(void);

/* ---- what fits --------------------------------------------------------------------- */

/* One number of risers beside the others. */
typedef struct gb_choice {
    gb_layout layout;
    gb_beds beds;
    bool beds_known; /* a slab and beds can be laid at all */
    bool in_band;    /* 2 R + T */
    size_t lacks;    /* of band, closing, IRC, adjacent risers, beds */
    bool fits;       /* nothing lacks */
} gb_choice;

typedef struct gb_choices {
    const gb_choice *list;
    size_t count;
    size_t fitting;
} gb_choices;

/* Every number of risers whose mean riser lies between the least and the most that is
   searched, with equal faces and, where there is a pitch, evened; of solid steps those
   that reach the rise or nearly. With a stated count, that one alone. GB_NO_MEMORY;
   GB_OVERFLOW over 1000 risers. */
gb_status gb_find_steps(const gb_steps *steps, gb_length read_to, gb_arena *arena,
                        gb_choices *choices) GB_MUST_USE;

/* What would have to change for a number of risers; NaN where that is no way out. */
typedef struct gb_step_advice {
    gb_length going, length; /* a tread, and so a run, in the band and long enough */
    double taken;   /* of what the pitch lifts along a tread, by the riser; -1 / N to 1 */
    gb_length bury; /* of the first stone */
    gb_length course;  /* of block, that leaves a bed in the middle of its bounds */
    gb_length footing; /* its top below the foot, for whole courses in the first step */
    gb_length face;    /* or stone, that closes the rise; where one is stated */
    size_t landing;    /* risers below a landing that splits a long climb; 0: none */
} gb_step_advice;

/* Of one choice that does not fit. With the going T the riser changes by its part of the
   pitch, g s T, so 2 R + T meets an end B of its band at T = (B - 2 (R - g s T0)) /
   (1 + 2 g s), rounded into the band to what a tape is read to. */
gb_step_advice gb_advise_steps(const gb_steps *steps, gb_length read_to,
                               const gb_choice *choice);

#endif
