/* What classes of exposure ask of a concrete, and what it has. */
#ifndef WRITE_EXPOSURE_ROWS_H
#define WRITE_EXPOSURE_ROWS_H

#include "write/model.h"

void gb_add_exposures(gb_builder *b, const gb_concrete_question *q);

#endif
