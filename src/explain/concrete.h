/* The proportions of one concrete, and the reason of each. All that is of a volume is of
   1 m3 of fresh concrete. */
#ifndef EXPLAIN_CONCRETE_H
#define EXPLAIN_CONCRETE_H

#include "explain/chains.h"

typedef struct gb_made {
    const gb_mix *mix; /* as the table has it, or as it was typed */
    const gb_concrete *c;
    gb_proportions p;
    bool tried;
    gb_trial_result t;
} gb_made;
gb_made gb_made_of(const gb_mix *mix);

/* The parts of a proportioned mix, in this order. */
typedef enum gb_stuff_in {
    GB_CEMENT_IN,
    GB_SAND_IN,
    GB_STONE_IN,
    GB_WATER_IN
} gb_stuff_in;

/* Of which batch: as designed, or the one after the trial. */
typedef enum gb_batch_of { GB_DESIGNED, GB_AFTER_TRIAL } gb_batch_of;
/* The one that is mixed. */
gb_batch_of gb_batch_mixed(const gb_made *m);
const gb_parts_of_concrete *gb_parts_in(const gb_made *m, gb_batch_of batch);

/* A member of the concrete, as it was stated; what is usual is common practice. */
const gb_why *gb_why_member(gb_explainer *x, const gb_made *m, const char *name, int unit,
                            const double *at);
/* What a table has for a word of the concrete. */
const gb_why *gb_why_of_word(gb_explainer *x, const gb_made *m, const char *name,
                             int unit, double value, const void *at, const char *source);
/* Whose the figures are; NULL when it was typed. */
const char *gb_made_id(const gb_made *m);

/* ---- concrete_design.c: from the tables -------------------------------------------- */

const gb_why *gb_why_average(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_by_strength(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_by_attack(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_concrete_ratio(gb_explainer *x, const gb_made *m);
/* A density as a table prints it. */
const gb_why *gb_why_as_printed(gb_explainer *x, const gb_made *m, const char *name,
                                gb_density value, const void *at, const char *source);
const gb_why *gb_why_table_water(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_saved_water(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_designed_water(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_air_in(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_coarse_share(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_designed_stone(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_first_mass(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_sand_by_mass(gb_explainer *x, const gb_made *m);

/* ---- concrete_parts.c: how the parts fill the volume ------------------------------- */

/* Named "cement", "sand", "stone", "water". */
const gb_why *gb_why_in_concrete(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                                 gb_batch_of batch);
/* The share of the volume: "cement_volume" ... */
const gb_why *gb_why_volume_in(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                               gb_batch_of batch);
const gb_why *gb_why_fresh_mass(gb_explainer *x, const gb_made *m, gb_batch_of batch);
const gb_why *gb_why_gravity_in(gb_explainer *x, const gb_made *m, gb_stuff_in which,
                                const char *name);
/* Of sand and stone: "sand_absorption", "sand_moisture" ... */
const gb_why *gb_why_absorption_in(gb_explainer *x, const gb_made *m, gb_stuff_in which);
const gb_why *gb_why_moisture_in(gb_explainer *x, const gb_made *m, gb_stuff_in which);
/* As it was when the trial was mixed. */
const gb_why *gb_why_trial_moisture_in(gb_explainer *x, const gb_made *m,
                                       gb_stuff_in which);

/* ---- concrete_trial.c -------------------------------------------------------------- */

const gb_why *gb_why_trial_batch(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_unit_mass(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_trial_yield(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_relative_yield(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_cement_content(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_gravimetric(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_trial_air(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_trial_water(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_water_used_in(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_ratio_used(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_for_slump(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_for_air(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_trial_slump(gb_explainer *x, const gb_made *m);
/* Of the next batch. */
const gb_why *gb_why_next_water(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_next_stone(gb_explainer *x, const gb_made *m);
const gb_why *gb_why_next_by_mass(gb_explainer *x, const gb_made *m);

#endif
