/* The hours of a crew's day, and the timetable of a plan: when each batch and each pot
   goes in, when it is placed, when it is dead, and what it covers. */
#ifndef GAUGEBOX_DAY_H
#define GAUGEBOX_DAY_H

#include "gaugebox/plan.h"

/* ---- the hours --------------------------------------------------------------------- */

/* Times are in seconds from the midnight before day 1; day d begins d * 24 h after it. */

/* Times closer than this are one, in seconds: sums of them are not exact. */
#define GB_SLACK_S 0.5

/* A stretch of the day without a break. */
typedef struct gb_window {
    double from, to;
} gb_window;

/* The same windows every day; the last one ends when cleaning begins. */
typedef struct gb_hours_of_day {
    const gb_window *windows;
    size_t count;
    double start, finish;
} gb_hours_of_day;

/* GB_NOT_POSITIVE when the crew has no start, or nothing is left of the day;
   GB_NO_MEMORY. */
gb_status gb_find_hours(const gb_crew *crew, gb_arena *arena,
                        gb_hours_of_day *hours) GB_MUST_USE;

/* The first moment from `from` on at which so many seconds fit without a break; NaN when
   no window is that long. */
double gb_fit(const gb_hours_of_day *hours, double from, double seconds);

/* The end of so many seconds of work from `from` on, at rest in breaks; NaN when the day
   ends before. */
double gb_work_until(const gb_hours_of_day *hours, double from, double seconds);

/* The beginning and the end of the window in which work at `at` is done, the beginning of
   the one after it, and of the next day. */
double gb_window_from(const gb_hours_of_day *hours, double at);
double gb_window_to(const gb_hours_of_day *hours, double at);
double gb_next_window(const gb_hours_of_day *hours, double at);
double gb_next_day(const gb_hours_of_day *hours, double at);

/* The day in which a moment lies, from 0. */
size_t gb_day_of(const gb_hours_of_day *hours, double at);

/* ---- the timetable ----------------------------------------------------------------- */

/* What goes into a mixer or into a pot. */
typedef struct gb_load {
    const gb_mix_plan *mix;
    size_t number;     /* of the batch, or of all pots of this slurry, from 0 */
    const gb_pot *pot; /* NULL: a batch */
    gb_stretch covers; /* of a pot; a batch has its own stretches */
    gb_volume cut;     /* of a batch: its rest, which no tread takes in time; see below */
    double in;       /* first water: so long before `from` as it is mixed at the least */
    double from, to; /* placing it */
    double extra;    /* bags of a batch beyond the plan; 0: it is the plan's */
    const gb_stretch *stretches; /* that a batch sets */
    size_t stretch_count;
    double dead; /* in + life */
} gb_load;

/* Seconds of work by the crew's own rates; NaN where it states none. */
typedef struct gb_labour {
    double mixing;   /* batches * mixing */
    double potting;  /* pots * potting */
    double carrying; /* loads * carrying, loads = wet mass / load, counted up */
    double setting;  /* time to place * hands */
} gb_labour;

/* Why a stage is not in the timetable. */
typedef enum gb_unplanned {
    GB_PLANNED,
    GB_NO_ROOM,     /* one batch or one pot does not fit into any day */
    GB_NOT_REACHED, /* a stage before it is not planned */
    GB_NO_BATCH     /* a caution tells why nothing can be mixed */
} gb_unplanned;

typedef struct gb_stage_plan {
    gb_stage stage;
    gb_unplanned unplanned;
    const gb_mix_plan *mix; /* that does not fit; NULL when all do */
    size_t number;          /* its batch, or pot */
    bool pot;
    double not_before;           /* it waits for this; 0: for nothing */
    const gb_mix_plan *wait_mix; /* whose hold that is; NULL: none */
    const gb_hold *hold;         /* NULL: the usual one */
    double from, to;
    size_t batches, pots;
    gb_mass wet; /* of all of it */
    double time; /* to place it, breaks taken out */
    gb_labour labour;
} gb_stage_plan;

/* Batches with which a stage fits that did not. */
typedef struct gb_smaller_batches {
    gb_volume usable; /* to be stated of that mixer; 0: none was found */
    const gb_mixer *mixer;
    double bags; /* a batch */
} gb_smaller_batches;

typedef struct gb_timetable {
    gb_hours_of_day hours;
    const gb_load *loads; /* by first water */
    size_t load_count;
    gb_stage_plan stages[GB_STAGES];
    size_t stage_count;
    size_t days;        /* from the first to the last with work */
    size_t days_worked; /* of those, with a batch or a pot */
    size_t cleanings;   /* the end of each of them, and before another mix in a mixer */
    gb_smaller_batches smaller; /* with which the first stage without room would fit */
} gb_timetable;

/* A stage waits so long for the one before it whose mix says nothing of it: slabs 24 h
   for their footing, cores 24 h for their block, joints 36 h for their bed (common
   practice); 0 for other stages. */
gb_duration gb_usual_hold(gb_stage stage);

/* The pot that is mixed for a slurry: the largest that is covered within its life, else
   the first; NULL when the mix has none for this take. The search begins at *cursor and
   leaves it where it found one, so that takes in order cost no search. */
const gb_pot *gb_pot_to_use(const gb_mix_plan *slurry, const gb_take *take,
                            size_t *cursor);

/* The kinds of layers whose pace the job does not tell: bit 1 << gb_layer_kind each. */
unsigned gb_kinds_without_pace(const gb_plan *plan);

/* Plans the days. Stages come in the trade's order, each after the holds of those before
   it; in a stage mix by mix. A batch goes in so that it is mixed when the crew is free
   for it, within one window, and is placed on the same day before it is dead; a pot goes
   in so late that its tread is covered just then, and no break begins before that. What
   does not fit goes behind the break or to the next day. GB_NO_PACE when a kind has none;
   GB_NOT_POSITIVE without a start; GB_NO_MEMORY. */
gb_status gb_plan_days(const gb_plan *plan, gb_arena *arena,
                       gb_timetable *table) GB_MUST_USE;

/* The largest batches of that mix, smaller than now, with which a stage that found no
   room is planned, by trying. *found is all zero when there are none, or nothing to find.
   GB_NO_MEMORY. */
gb_status gb_find_smaller(const gb_plan *plan, const gb_stage_plan *stage,
                          gb_arena *arena, gb_smaller_batches *found) GB_MUST_USE;

/* ---- water ------------------------------------------------------------------------- */

/* All water of a job. */
typedef struct gb_site_needs {
    gb_volume mixing;
    gb_volume cleaning; /* cleanings * what one takes */
    gb_volume rinsing;  /* people * days worked * what one needs */
    gb_volume curing;   /* slab area * depth a day * days of wet curing */
    gb_area slab;
    gb_volume sum;
} gb_site_needs;
gb_site_needs gb_water_of_site(const gb_plan *plan, const gb_timetable *table);

#endif
