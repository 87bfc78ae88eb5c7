#include "cli/keyed.h"

#include "words/words.h"

#include <string.h>

static const char *typed_as(const gb_typed_key *key, char name[GB_LONGEST_KEYED]) {
    size_t n = 0;
    for (; key->name[n] != '\0' && n + 1 < GB_LONGEST_KEYED; n++)
        name[n] = key->name[n];
    name[n] = '\0';
    for (char *c = name; *c != '\0'; c++)
        if (*c == '_')
            *c = '-';
    return name;
}

void gb_keyed_init(gb_keyed *keyed, gb_keys *keys, const struct argp_option *more) {
    memset(keyed, 0, sizeof *keyed);
    keyed->keys = keys;
    gb_typed_key key;
    size_t n = 0;
    for (; n < GB_MOST_KEYED && keys(n, &key); n++)
        keyed->options[n] = (struct argp_option){.name = typed_as(&key, keyed->names[n]),
                                                 .key = GB_FIRST_KEYED + (int)n,
                                                 .arg = key.arg,
                                                 .doc = key.help};
    for (; more != NULL && n < GB_MOST_KEYED && more->name != NULL; more++)
        keyed->options[n++] = *more;
}

const char *gb_keyed_name(const gb_keyed *keyed, const char *key) {
    gb_typed_key one;
    for (size_t i = 0; i < GB_MOST_KEYED && keyed->keys(i, &one); i++)
        if (strcmp(one.name, key) == 0)
            return keyed->names[i];
    return key;
}

bool gb_keyed_take(gb_keyed *keyed, int key, const char *arg, struct argp_state *state) {
    gb_typed_key typed;
    char name[GB_LONGEST_KEYED];
    if (key < GB_FIRST_KEYED || !keyed->keys((size_t)(key - GB_FIRST_KEYED), &typed))
        return false;
    for (size_t k = 0; k < keyed->count; k++)
        if (strcmp(keyed->typed[k].key, typed.name) == 0)
            argp_error(state, gb_tr("--%s is given twice; keep one"),
                       typed_as(&typed, name));
    if (keyed->count < GB_MOST_KEYED)
        keyed->typed[keyed->count++] = (gb_typed){typed.name, arg == NULL ? "" : arg};
    return true;
}
