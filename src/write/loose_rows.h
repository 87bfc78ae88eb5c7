/* Rows on layers that no mix fills. */
#ifndef WRITE_LOOSE_ROWS_H
#define WRITE_LOOSE_ROWS_H

#include "write/model.h"

/* What one such layer takes in all. */
void gb_add_loose(gb_builder *b, const gb_loose_take *take);

/* What such a kind of layer is called. */
gb_row gb_loose_row(gb_builder *b, gb_loose_kind kind);

#endif
