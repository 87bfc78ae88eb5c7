/* Counting up, counting down, comparing with a limit, and rounding for people. Each has
   one function, because plain ceil is wrong for one exact multiple in six. */
#ifndef GAUGEBOX_COUNT_H
#define GAUGEBOX_COUNT_H

#include "gaugebox/base.h"

/* Two quotients nearer than this, relative to their size, count as the same: wide enough
   for the rounding of a few hundred sums, far below anything a site can measure. */
#define GB_SAME 1e-9

/* The fewest units of size `each` that hold `need` (need >= 0, each > 0, both finite);
   any need above zero takes one. GB_NOT_POSITIVE for other inputs, GB_OVERFLOW over 1e9
   units. */
gb_status gb_count_up(double need, double each, size_t *count) GB_MUST_USE;

/* The most units of size `each` that fit into `room`; same inputs and statuses. */
gb_status gb_count_down(double room, double each, size_t *count) GB_MUST_USE;

/* value > limit and value < limit, a value within GB_SAME of the limit being neither. */
bool gb_over(double value, double limit);
bool gb_under(double value, double limit);

/* The larger and the smaller of two; one that is NaN gives way to the other. */
double gb_larger(double a, double b);
double gb_smaller(double a, double b);

/* The three ways a figure is rounded for people. */
typedef enum gb_rounding { GB_NEAREST, GB_DOWN, GB_UP } gb_rounding;

/* value to a multiple of step (> 0). Down and up leave a value alone that is already a
   multiple within GB_SAME. Never fed back into a sum. */
double gb_round(double value, double step, gb_rounding rounding);

#endif
