/* One file, loaded whole; one of libconfig so that nothing of it is lost in silence. */
#ifndef READ_SOURCE_H
#define READ_SOURCE_H

#include "gaugebox/read.h"

#include "gaugebox/digest.h"

#include <libconfig.h>

enum { GB_MOST_BYTES = 16 * 1024 * 1024 };

/* Loads all of `file`, at most GB_MOST_BYTES, with room for a few bytes behind it. False
   with the fault reported. */
bool gb_load_text(const char *file, gb_arena *arena, gb_diags *diags, char **text,
                  size_t *length) GB_MUST_USE;

/* Loads `file` into *config. libconfig 1.5 takes an unclosed quote or comment, a NUL and
   a number beyond 32 bits without a word, so the text is scanned first and must end in
   a setting of our own. False with the fault reported; *config is then not to be used,
   else the caller destroys it, and *digest is that of the text. */
bool gb_load_config(const char *file, gb_arena *arena, gb_diags *diags, config_t *config,
                    uint64_t *digest) GB_MUST_USE;

/* The last setting, which the loader adds and every reader must skip. */
#define GB_END_KEY "end_of_gaugebox_file"

#endif
