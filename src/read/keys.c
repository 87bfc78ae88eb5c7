#include "read/schemas.h"

#include <string.h>

enum { COLUMNS = 80 };

/* Words behind an indent, broken before column 80. */
static void print_wrapped(const char *words, size_t indent, gb_text *to) {
    while (*words != '\0') {
        size_t n = strlen(words);
        if (n > COLUMNS - indent) {
            n = COLUMNS - indent;
            while (n > 0 && words[n] != ' ')
                n--;
            if (n == 0)
                n = strcspn(words, " ");
        }
        gb_text_add_repeated(to, ' ', indent);
        gb_text_add_bytes(to, words, n);
        gb_text_add(to, "\n");
        words += n;
        words += strspn(words, " ");
    }
}

static void print_key(const gb_key *key, size_t depth, gb_text *to) {
    gb_text_add_repeated(to, ' ', 2 * depth);
    gb_text_add(to, key->name);
    gb_text_add(to, key->required ? "  (required)\n" : "\n");
    gb_text what;
    gb_text_init(&what, to->arena);
    gb_describe_key(key, &what);
    if (key->fallback != NULL) {
        gb_text_add(&what, "; when left out: ");
        gb_text_add(&what, key->fallback);
    }
    print_wrapped(key->help, 2 * depth + 4, to);
    print_wrapped(gb_text_get(&what), 2 * depth + 4, to);
}

/* Groups hold groups, as deep as the tables go. */
static void print_schema(const gb_schema *schema, size_t depth, gb_text *to) {
    for (size_t i = 0; i < schema->key_count; i++) {
        print_key(&schema->keys[i], depth, to);
        if (schema->keys[i].child != NULL)
            print_schema(schema->keys[i].child, depth + 1, to);
    }
}

bool gb_print_keys(const char *kind, gb_text *to) {
    static const struct {
        const char *kind;
        const gb_schema *schema;
    } FILES[] = {{"job", &GB_JOB_SCHEMA},
                 {"mixes", &GB_MIX_SCHEMA},
                 {"materials", &GB_MATERIAL_SCHEMA},
                 {"prices", &GB_PRICE_SCHEMA}};
    for (size_t i = 0; i < sizeof FILES / sizeof FILES[0]; i++) {
        if (strcmp(FILES[i].kind, kind) != 0)
            continue;
        print_schema(FILES[i].schema, 0, to);
        return true;
    }
    return false;
}
