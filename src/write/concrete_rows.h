/* The parts of a concrete, on every basis and in every unit that they are asked for. */
#ifndef WRITE_CONCRETE_ROWS_H
#define WRITE_CONCRETE_ROWS_H

#include "write/model.h"

void gb_add_concrete_parts(gb_builder *b, const gb_concrete_question *q);

#endif
