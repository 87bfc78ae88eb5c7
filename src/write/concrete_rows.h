/* What is asked of a concrete, and its parts on every basis and in every unit that they
   are asked for. */
#ifndef WRITE_CONCRETE_ROWS_H
#define WRITE_CONCRETE_ROWS_H

#include "write/model.h"

/* Figures that are told of concrete: a strength; a mass in 1 yd3 or 1 m3; a share. */
gb_figure gb_strength_fig(const char *name, gb_pressure strength);
gb_figure gb_in_concrete_fig(const char *name, double kg_m3);
gb_figure gb_share_fig(const char *name, gb_share share);

/* Strength, slump, stone and air that a concrete is asked for. */
void gb_add_asked(gb_builder *b, const gb_mix *mix);

/* That nothing in a mix entrains the air that is asked for, if that is so. */
void gb_add_air_by_nothing(gb_builder *b, const gb_mix *mix);

void gb_add_concrete_parts(gb_builder *b, const gb_concrete_question *q);

#endif
