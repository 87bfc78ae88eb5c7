/* Rows on a run of steps. */
#ifndef WRITE_STEPS_ROWS_H
#define WRITE_STEPS_ROWS_H

#include "write/model.h"

/* Faces, risers, climb, treads of the layout that b->about.layout is. */
void gb_add_faces(gb_builder *b);
void gb_add_risers(gb_builder *b);
void gb_add_order(gb_builder *b);

/* A piece that is a run, on the takeoff; nothing for another one. */
void gb_add_run(gb_builder *b, const gb_piece *piece);

/* Every level of the layout from the benchmark. */
void gb_add_pole(gb_builder *b);

/* The run drawn from the side. */
void gb_add_section(gb_builder *b);

#endif
