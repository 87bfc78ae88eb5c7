/* Batches of a mixer and pots of slurry. */
#ifndef ENGINE_BATCH_H
#define ENGINE_BATCH_H

#include "gaugebox/plan.h"

/* Sizes the batches of one mix: the fewest, then as equal as whole bags allow; the last
   batch of a site mix holds what is still needed, in eighths of a bag, because its parts
   can be weighed; a bagged blend stays in whole bags. m2_s is the crew's pace, NaN when
   unknown. batch_count is 0 when the mixer's volume or mass,
   or the working life, does not allow an eighth of a bag. */
gb_status gb_size_batches(const gb_job *job, const gb_mix_plan *mix, double m2_s,
                          gb_arena *arena, gb_batching *batching) GB_MUST_USE;

/* What the first batch should cover, and what one piece fewer means. */
void gb_check_first(const gb_mix_plan *mix, gb_first_check *check);

/* The slurry pots of every take: one and two treads, or a stretch of a landing. */
gb_status gb_size_pots(const gb_job *job, const gb_mix_plan *mix, double m2_s,
                       gb_arena *arena, const gb_pot **pots, size_t *count) GB_MUST_USE;

#endif
