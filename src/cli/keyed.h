/* Options that are the keys of a schema, with dashes. */
#ifndef CLI_KEYED_H
#define CLI_KEYED_H

#include "gaugebox/read.h"

#include <argp.h>

enum { GB_MOST_KEYED = 64, GB_LONGEST_KEYED = 32, GB_FIRST_KEYED = 4001 };

typedef bool gb_keys(size_t i, gb_typed_key *key);

typedef struct gb_keyed {
    gb_keys *keys;
    char names[GB_MOST_KEYED][GB_LONGEST_KEYED];
    struct argp_option options[GB_MOST_KEYED + 1];
    gb_typed typed[GB_MOST_KEYED];
    size_t count;
} gb_keyed;

/* `more`: the command's own options, which end in an empty one; or NULL. */
void gb_keyed_init(gb_keyed *keyed, gb_keys *keys, const struct argp_option *more);

/* What the option of that key is called. */
const char *gb_keyed_name(const gb_keyed *keyed, const char *key);

/* Takes an option that is one of them; a second of the same key ends the program with a
   usage fault. False when it is none. */
bool gb_keyed_take(gb_keyed *keyed, int key, const char *arg, struct argp_state *state);

#endif
