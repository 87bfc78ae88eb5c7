/* Rows about how a layer tells its volume, for both sheets. */
#ifndef WRITE_LAYER_ROWS_H
#define WRITE_LAYER_ROWS_H

#include "write/model.h"

/* What a layer without an area of its own covers, on the batch sheet. */
void gb_add_covered(gb_builder *b, const gb_take *take);

/* How its depth came about, when it is no plain one: ends of a wedge, a fall, levels. */
void gb_add_depths(gb_builder *b, const gb_take *take);

/* Below a layer of the takeoff: block and cores of one piece. */
void gb_add_blocks(gb_builder *b, const gb_take *take);

/* What depths and cores leave of the need either way; nothing when they are sure. */
void gb_add_spread(gb_builder *b, const gb_need *need, gb_show show);

/* Block to order for a layer; nothing for other kinds. */
void gb_add_block_supply(gb_builder *b, const gb_take *take);

#endif
