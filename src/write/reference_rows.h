/* Rows for those who compare mixes or price them: what one bag, and one volume of wet
   mix, holds and covers. */
#ifndef WRITE_REFERENCE_ROWS_H
#define WRITE_REFERENCE_ROWS_H

#include "write/model.h"

/* A block of its own. */
void gb_add_reference(gb_builder *b, const gb_mix_question *question);

#endif
