/* Runs of steps made by hand, for the tests of layouts. */
#ifndef TESTS_STEPS_RUNS_H
#define TESTS_STEPS_RUNS_H

#include "gaugebox/steps.h"

/* What a tape is read to: 1/8 in. */
extern const gb_length FX_TAPE;

/* A run of slabs on platforms up to the nosing, with what a run has when nothing is
   stated but the rise and the tread; no pitch. */
gb_steps fx_run(double rise_m, double going_m);
/* The same of solid stone. */
gb_steps fx_solid(double rise_m, double going_m, double stone_m);
/* The layout that there must be. */
gb_layout fx_lay(const gb_steps *steps, size_t count, bool evened);

#endif
