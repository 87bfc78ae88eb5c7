/* One mix in one stage of the work, put into the days. */
#ifndef ENGINE_COURSE_H
#define ENGINE_COURSE_H

#include "gaugebox/day.h"

/* The work of one mix in one stage is cut into slots that the crew places one after the
   other. A bed with a slurry is cut where a pot is used up, and such a slot is not left
   for a break. A batch goes into one slot or several; the last of them may be finished by
   the next batch. */

typedef struct gb_slot {
    const gb_take *take;
    const gb_pot *pot; /* NULL: it may be left for a break */
    gb_stretch covers;
    double placing; /* seconds of the bed */
    double coating; /* of a slurry that has a pace of its own, after it */
    double from, to;
    double wait; /* in it, for a batch that is not mixed yet */
    double not_before;
} gb_slot;

/* Where one batch begins and ends, in seconds of placing within a slot. */
typedef struct gb_use {
    size_t first, last;
    double from, to;
    double ready;  /* turned out of the mixer */
    double done;   /* all of it placed */
    gb_volume cut; /* its rest that is thrown away */
    size_t tried;
} gb_use;

typedef struct gb_course {
    const gb_plan *plan;
    const gb_hours_of_day *hours;
    const gb_mix_plan *mix;    /* that goes into batches; NULL: slurry alone */
    const gb_mix_plan *slurry; /* of the pots, when there are any */
    gb_slot *slots;
    size_t slot_count;
    gb_use *uses;
    size_t use_count;
    double start;      /* the crew is free for it */
    double mixer_free; /* so is the one who mixes */
    gb_volume spare;   /* of the waste, for what is thrown away */
    size_t failed;     /* the use, or without uses the slot, that fits nowhere */
} gb_course;

/* The layer of that kind in the same piece; NULL when it has none. */
const gb_take *gb_beside(const gb_plan *plan, const gb_take *take, gb_layer_kind kind);

/* Room for the slots of a take, with one more for what is left over. */
size_t gb_cells_of(const gb_take *take, const gb_pot *pot);

/* The slots of one stage of a mix and which of them each batch goes into; those of slurry
   on pieces that have no bed. GB_NO_MEMORY. */
gb_status gb_cut_batches(gb_course *course, const gb_stage_batches *stage,
                         gb_arena *arena) GB_MUST_USE;
gb_status gb_cut_slurry(gb_course *course, gb_arena *arena) GB_MUST_USE;

/* Gives every slot and every batch its time; false when `failed` fits nowhere. */
bool gb_lay_batches(gb_course *course);
bool gb_lay_pots(gb_course *course);

/* Seconds of work in a slot. */
double gb_work_of(const gb_slot *slot);

#endif
