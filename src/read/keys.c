#include "read/schemas.h"

#include <string.h>

static void print_key(const gb_key *key, int depth, gb_text *to) {
    for (int i = 0; i < depth; i++)
        gb_text_add(to, "  ");
    gb_text_add(to, key->name);
    gb_text_add(to, key->required ? "  (required)\n" : "\n");
    const char *lines[2] = {key->help, NULL};
    gb_text what;
    gb_text_init(&what, to->arena);
    gb_describe_key(key, &what);
    if (key->fallback != NULL) {
        gb_text_add(&what, "; when left out: ");
        gb_text_add(&what, key->fallback);
    }
    lines[1] = gb_text_get(&what);
    for (int k = 0; k < 2; k++) {
        for (int i = 0; i < depth + 2; i++)
            gb_text_add(to, "  ");
        gb_text_add(to, lines[k]);
        gb_text_add(to, "\n");
    }
}

/* Groups hold groups, as deep as the tables go. */
static void print_schema(const gb_schema *schema, int depth, gb_text *to) {
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
