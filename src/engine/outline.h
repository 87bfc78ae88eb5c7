/* Areas within straight sides: sums over corners, and cutting along a line. */
#ifndef ENGINE_OUTLINE_H
#define ENGINE_OUTLINE_H

#include "gaugebox/shape.h"

/* gb_measure_shape for a shape that is given by its outline and holes. */
gb_status gb_measure_outline(const gb_shape *shape, double overhang_front,
                             double overhang_side, gb_plan_size *size) GB_MUST_USE;

#endif
