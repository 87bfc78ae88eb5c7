/* The same concrete by other ways, side by side. */
#ifndef WRITE_WAY_ROWS_H
#define WRITE_WAY_ROWS_H

#include "write/model.h"

void gb_add_ways(gb_builder *b, const gb_concrete_question *q);

#endif
