/* What proportions and trial batches share. */
#ifndef ENGINE_PROPORTION_H
#define ENGINE_PROPORTION_H

#include "gaugebox/concrete.h"

/* Fills 1 m3 with sand: `parts` holds water, cement, stone and air. */
void gb_fill_with_sand(const gb_concrete *c, gb_density water,
                       gb_parts_of_concrete *parts);

/* A set of that fault, or of none. */
static inline uint32_t gb_when(bool is, gb_concrete_fault fault) {
    return is ? 1u << fault : 0;
}

/* True for parts that make a fresh concrete: each is there, sand in a share that holds it
   together, and it is not too heavy for these tables. */
bool gb_is_mixable(const gb_concrete *c, const gb_parts_of_concrete *parts);

/* The faults of a concrete but for those of its trial. */
uint32_t gb_design_faults(const gb_concrete *c);

#endif
