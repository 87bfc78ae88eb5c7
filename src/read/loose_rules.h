/* The rules across the keys of a layer that no mix fills. */
#ifndef READ_LOOSE_RULES_H
#define READ_LOOSE_RULES_H

#include "read/schemas.h"

/* Looks up its material and reports every fault; one that could not be read is left
   alone. `sized` tells whether the piece has a size of its own. */
void gb_check_loose(gb_mix_table *table, gb_diags *diags, const char *file, bool sized,
                    gb_loose *loose);

#endif
