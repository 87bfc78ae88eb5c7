/* Batches of a mixer and pots of slurry. */
#ifndef ENGINE_BATCH_H
#define ENGINE_BATCH_H

#include "gaugebox/plan.h"

/* Sizes the batches of one mix: the fewest, then as equal as whole bags allow; the last
   batch of a site mix holds what is still needed, in eighths of a bag, because its parts
   can be weighed; a bagged blend stays in whole bags. All that by stage. Of several
   mixers the one that is kept for these layers, else the one with the fewest batches.
   batch_count is 0 when the mixer's volume or mass, or the working life, does not allow
   an eighth of a bag. GB_NOT_POSITIVE when no mixer is for them. */
gb_status gb_size_batches(const gb_job *job, const gb_mix_plan *mix, const gb_rate *rates,
                          gb_arena *arena, gb_batching *batching) GB_MUST_USE;

/* True for a mixer that is kept for all layers of a need. */
bool gb_fills(const gb_mixer *mixer, const gb_need *need);

/* What the first batch should cover, and what one piece fewer means. */
void gb_check_first(const gb_mix_plan *mix, gb_first_check *check);

/* The slurry pots of every take, smaller ones first: a stretch of a landing; one and two
   treads, and before them a part of one where a whole one takes longer than a pot lives.
 */
gb_status gb_size_pots(const gb_job *job, const gb_mix_plan *mix, double m2_s,
                       gb_arena *arena, const gb_pot **pots, size_t *count) GB_MUST_USE;

#endif
