/* What is asked of a concrete, and its parts on every basis and in every unit that they
 * are asked for. */
#ifndef WRITE_CONCRETE_ROWS_H
#define WRITE_CONCRETE_ROWS_H

#include "write/model.h"

/* Strength, slump, stone and air that a concrete is asked for. */
void gb_add_asked(gb_builder *b, const gb_concrete *c);

void gb_add_concrete_parts(gb_builder *b, const gb_concrete_question *q);

#endif
