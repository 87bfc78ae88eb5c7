/* What all JSON output shares. */
#ifndef WRITE_JSON_H
#define WRITE_JSON_H

#include "gaugebox/explain.h"

#include <jansson.h>

/* Takes `root`, adds the head with that kind, writes and frees it. GB_NO_MEMORY, also for
   a root that is NULL. */
gb_status gb_dump_json(json_t *root, const char *language, const char *kind,
                       gb_text *to) GB_MUST_USE;

/* A user's text without signs that steer a terminal, in the arena. */
const char *gb_clean_copy(const char *text, gb_arena *arena);

#endif
