/* Rules across the keys of a run of steps. */
#ifndef READ_STEPS_RULES_H
#define READ_STEPS_RULES_H

#include "read/reader.h"

/* Checks a run by itself; `name` is whose it is. With a count the layout is tried too. */
void gb_check_steps(const gb_reader *reader, const char *name, gb_system units,
                    const gb_steps *steps);

/* Makes a piece of its run: count and size, thickness and bed from the piece's stone and
   layers where the run does not state them. Reports what contradicts it. Does nothing for
   a piece that is no run. */
void gb_take_run(const gb_reader *reader, gb_system units, gb_piece *piece);

/* Lays the run of a piece out again, once a value of it has changed. */
void gb_lay_run_again(const gb_reader *reader, gb_system units, gb_piece *piece);

#endif
