/* Files beside the program, found from its own place, so that the build tree and an
   installed copy work alike; and the user's own. */
#ifndef CLI_PLACE_H
#define CLI_PLACE_H

#include "gaugebox/gaugebox.h"

/* PREFIX/share/PATH of the program PREFIX/bin/gaugebox; NULL when that cannot be told. */
const char *gb_shared_place(const char *path, gb_arena *arena);

/* PATH in the user's folder of data: $XDG_DATA_HOME, else ~/.local/share; "" when there
   is neither, NULL when memory ran out. It need not exist. */
const char *gb_user_place(const char *path, gb_arena *arena);

#endif
