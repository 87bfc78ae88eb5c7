/* The rules across the keys of a shape. */
#ifndef READ_SHAPE_RULES_H
#define READ_SHAPE_RULES_H

#include "read/schemas.h"

/* Completes the arc of a curved shape and reports every fault of the shape of the piece
   of that name. A shape that could not be read is left alone. */
void gb_check_shape(gb_diags *diags, const char *file, const char *piece,
                    gb_shape *shape);

#endif
