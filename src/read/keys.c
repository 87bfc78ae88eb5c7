#include "read/schemas.h"
#include "words/columns.h"
#include "words/words.h"

#include <string.h>

static void print_key(const gb_key *key, size_t depth, gb_text *to) {
    gb_text_add_repeated(to, ' ', 2 * depth);
    gb_text_add(to, key->name);
    if (key->required)
        gb_add_format(to, "  (%s)", gb_tr("required"));
    gb_text_add(to, "\n");
    gb_text kind;
    gb_text what;
    gb_text_init(&kind, to->arena);
    gb_text_init(&what, to->arena);
    gb_describe_key(key, &kind);
    if (key->fallback != NULL)
        gb_add_format(&what, gb_tr("%s; when left out: %s"), gb_text_get(&kind),
                      key->fallback);
    gb_add_wrapped(to, gb_tr(key->help), 2 * depth + 4, 0);
    gb_add_wrapped(to, gb_text_get(key->fallback != NULL ? &what : &kind), 2 * depth + 4,
                   0);
    to->failed = to->failed || kind.failed || what.failed;
}

/* Groups hold groups, as deep as the tables go. */
static void print_schema(const gb_schema *schema, size_t depth, gb_text *to) {
    for (size_t i = 0; i < schema->key_count; i++) {
        print_key(&schema->keys[i], depth, to);
        if (schema->keys[i].child != NULL && !schema->keys[i].told_elsewhere)
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
                 {"stones", &GB_STONE_FILE_SCHEMA},
                 {"prices", &GB_PRICE_SCHEMA}};
    for (size_t i = 0; i < sizeof FILES / sizeof FILES[0]; i++) {
        if (strcmp(FILES[i].kind, kind) != 0)
            continue;
        print_schema(FILES[i].schema, 0, to);
        return true;
    }
    return false;
}
