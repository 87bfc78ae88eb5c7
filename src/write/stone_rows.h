/* Rows on the stone of the pieces. */
#ifndef WRITE_STONE_ROWS_H
#define WRITE_STONE_ROWS_H

#include "write/model.h"

/* The block of what is cut, ordered, carried and lifted; nothing without stone. */
void gb_add_stones(gb_builder *b, const gb_plan *plan);

#endif
