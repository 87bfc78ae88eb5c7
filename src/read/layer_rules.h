/* The rules across the keys of one layer. */
#ifndef READ_LAYER_RULES_H
#define READ_LAYER_RULES_H

#include "read/reader.h"

/* Reports what is wrong with how a layer tells its volume. The layer itself was read
   without a fault. */
void gb_check_layer(gb_reader *reader, const gb_job *job, const gb_piece *piece,
                    const gb_layer *layer);

#endif
