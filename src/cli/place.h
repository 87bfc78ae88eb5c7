/* Files that belong to the program: found from its own place, so that the build tree and
   an installed copy work alike. */
#ifndef CLI_PLACE_H
#define CLI_PLACE_H

#include "gaugebox/gaugebox.h"

/* PREFIX/share/PATH of the program PREFIX/bin/gaugebox; NULL when that cannot be told. */
const char *gb_shared_place(const char *path, gb_arena *arena);

#endif
