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

/* What one batch sets: from and to in seconds of placing within its first and last slot.
 */
typedef struct gb_use {
    size_t first, last;
    double from, to;
    double bags;     /* of a batch beyond the plan; 0: it is the plan's */
    gb_volume made;  /* by its bags */
    gb_volume net;   /* what it sets by the plan, without waste */
    gb_volume taken; /* and of what was thrown away before, out of its waste */
    gb_volume cut;   /* its rest that is thrown away */
    double ready;    /* turned out of the mixer */
    double done;     /* all of it placed */
    size_t tried;
} gb_use;

/* Less than a drop is rounding. */
#define GB_LEAST_OWED_M3 1e-9

typedef struct gb_course {
    const gb_plan *plan;
    const gb_hours_of_day *hours;
    const gb_mix_plan *mix;    /* that goes into batches; NULL: slurry alone */
    const gb_mix_plan *slurry; /* of the pots, when there are any */
    gb_slot *slots;
    size_t slot_count, slot_room;
    gb_use *uses;
    size_t use_count, use_room;
    gb_volume owed;    /* thrown away, and not set again so far; without waste */
    double start;      /* the crew is free for it */
    double mixer_free; /* so is the one who mixes */
    size_t failed;     /* the use, or without uses the slot, that fits nowhere */
} gb_course;

/* The layer of that kind in the same piece; NULL when it has none. */
const gb_take *gb_beside(const gb_plan *plan, const gb_take *take, gb_layer_kind kind);

/* Room for the slots of a take, with one more for what is left over. */
size_t gb_cells_of(const gb_take *take, const gb_pot *pot);

/* Batches beyond the plan for so many of it. */
size_t gb_most_extra(size_t batches);

/* The slots of one stage of a mix and what each batch sets; those of slurry on pieces
   that have no bed. GB_NO_MEMORY. */
gb_status gb_cut_batches(gb_course *course, const gb_stage_batches *stage,
                         gb_arena *arena) GB_MUST_USE;
gb_status gb_cut_slurry(gb_course *course, gb_arena *arena) GB_MUST_USE;

/* Which slots a batch goes into, behind the one before it. Each sets what it does by the
   plan, and of what is owed as much as half of its waste is (common practice); what is
   owed at last is set by batches beyond the plan. False when nothing is left for it. */
bool gb_take_slots(gb_course *course, size_t use);

/* The net volume of a slot; whether a batch leaves a slot half-way. */
gb_volume gb_volume_of(const gb_slot *slot);
bool gb_leaves_rest(const gb_course *course, const gb_use *use);

/* Gives every slot and every batch its time; false when `failed` fits nowhere. */
bool gb_lay_batches(gb_course *course);
bool gb_lay_pots(gb_course *course);

/* From first water of a slot's pot until its stones are covered. A stone is brushed last
   of all: at half the life of the pot (common practice). */
double gb_covering_of(const gb_course *course, const gb_slot *slot);

/* Seconds of work in a slot. */
double gb_work_of(const gb_slot *slot);

#endif
