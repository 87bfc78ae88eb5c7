/* Gathering: layers to the need of each mix, batches to the need of each material. This
   is the one place where waste is applied. */
#ifndef ENGINE_GATHER_H
#define ENGINE_GATHER_H

#include "gaugebox/plan.h"

/* The need of one mix over all takes of the job. GB_NO_MEMORY. */
gb_status gb_gather(const gb_job *job, const gb_mix *mix, const gb_take *takes,
                    size_t take_count, gb_arena *arena, gb_need *need) GB_MUST_USE;

/* How many bags a gathered need is, and how sure that is. */
void gb_count_bags(const gb_recipe *recipe, gb_need *need);

/* Rows for materials and blends; room for all that the job's mixes can name. */
typedef struct gb_supplies {
    gb_supply_need *rows;
    size_t count;
} gb_supplies;

/* Adds one row, to the row of the same name when there is one. */
void gb_add_supply(gb_supplies *supplies, const gb_supply_need *need);

/* Adds what the batches of one mix take, before the material's own waste; `lying` is the
   water alone that its stone brings, until gb_waste_supplies. */
void gb_gather_supplies(const gb_job *job, const gb_mix_plan *mix, gb_supplies *supplies);

/* Adds the material of a layer that no mix fills, if it has one. */
void gb_gather_loose(const gb_loose_take *take, gb_supplies *supplies);

/* Adds each material's own waste and its moisture, and takes the job's packs. */
void gb_waste_supplies(const gb_job *job, gb_supplies *supplies);

#endif
