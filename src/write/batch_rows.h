/* The rows of a batch sheet's block, in groups: each has its own file. */
#ifndef WRITE_BATCH_ROWS_H
#define WRITE_BATCH_ROWS_H

#include "write/model.h"

/* Each batch to tick, what it covers, when it is dead, and what the first one tells. */
void gb_add_batches(gb_builder *b, const gb_mix_plan *p);

/* What a batch covers, and one stretch of it: "treads 1 to 5 and part of 6". */
gb_figure gb_covers_fig(gb_builder *b, const gb_batch *batch);
gb_row gb_cover_row(gb_builder *b, const gb_stretch *stretch);

/* The pots of a slurry, their water, their life, and as many marks to tick. */
void gb_add_pots(gb_builder *b, const gb_job *job, const gb_mix_plan *p);

/* In the job's own pail, where it states one: the water of a batch with the sand as it
   lies today as marks; how high a full pail and the lines for sand stand. */
void gb_add_batch_marks(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                        double bags);
void gb_add_pail(gb_builder *b, const gb_job *job, bool sand);

/* When to stop, hold points, safety, who decides, today's weather, and the source. */
void gb_add_care(gb_builder *b, const gb_job *job, const gb_mix_plan *p);

/* How warm a batch comes out, where the job states what goes into it. */
void gb_add_warmth(gb_builder *b, const gb_job *job, const gb_mix_plan *p);

#endif
