/* Rows on layers that no mix fills. */
#ifndef WRITE_LOOSE_ROWS_H
#define WRITE_LOOSE_ROWS_H

#include "write/model.h"

/* What one such layer takes in all. */
void gb_add_loose(gb_builder *b, const gb_loose_take *take);

#endif
