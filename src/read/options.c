#include "read/options.h"

#include "read/schemas.h"
#include "words/words.h"

#include <libconfig.h>
#include <stdlib.h>
#include <string.h>

/* ---- keys as options --------------------------------------------------------------- */

/* What stands for a value in the help of an option. */
static const char *arg_of(const gb_key *key) {
    static const char *const KINDS[] = {
        [GB_LENGTH] = N_("LENGTH"),   [GB_AREA] = N_("AREA"),
        [GB_VOLUME] = N_("VOLUME"),   [GB_MASS] = N_("MASS"),
        [GB_DENSITY] = N_("DENSITY"), [GB_SHARE] = N_("SHARE"),
        [GB_SLOPE] = N_("SLOPE"),     [GB_PRESSURE] = N_("STRENGTH")};
    if (key->kind == GB_KEY_FLAG)
        return NULL;
    if (key->kind == GB_KEY_QUANTITY)
        return KINDS[key->quantity];
    if (key->kind == GB_KEY_WHOLE)
        return N_("COUNT");
    if (key->kind == GB_KEY_CHOICES)
        return N_("WORD,...");
    return key->kind == GB_KEY_NUMBER ? N_("NUMBER") : N_("WORD");
}

/* One key of a schema, or of the group within it. */
typedef struct found {
    const gb_key *group; /* NULL: of the schema itself */
    const gb_key *key;   /* NULL: none */
} found;

static found key_at(const gb_schema *schema, size_t i) {
    for (size_t k = 0; k < schema->key_count; k++) {
        const gb_key *key = &schema->keys[k];
        size_t within = key->kind == GB_KEY_GROUP ? key->child->key_count : 1;
        if (i < within && key->kind == GB_KEY_GROUP)
            return (found){key, &key->child->keys[i]};
        if (i < within)
            return (found){NULL, key};
        i -= within;
    }
    return (found){NULL, NULL};
}

/* The two-worded names of keys within groups, each made once. */
static const char *name_of(found f) {
    enum { ROOM = 16, LONGEST = 32 };
    static _Thread_local char names[ROOM][LONGEST];
    if (f.group == NULL)
        return f.key->name;
    size_t row = (size_t)(f.key - f.group->child->keys);
    char *to = names[row % ROOM];
    size_t n = strlen(f.group->name);
    size_t m = strlen(f.key->name);
    if (row >= ROOM || n + m + 2 > LONGEST)
        abort();
    memcpy(to, f.group->name, n);
    to[n] = '_';
    memcpy(to + n + 1, f.key->name, m + 1);
    return to;
}

bool gb_option_of(const gb_schema *schema, size_t i, gb_typed_key *key) {
    found f = key_at(schema, i);
    if (f.key == NULL)
        return false;
    *key = (gb_typed_key){name_of(f), arg_of(f.key), f.key->help};
    return true;
}

/* ---- reading them ------------------------------------------------------------------ */

static found key_named(const gb_schema *schema, const char *name) {
    found f = {NULL, NULL};
    for (size_t i = 0;; i++) {
        f = key_at(schema, i);
        if (f.key == NULL || strcmp(name_of(f), name) == 0)
            return f;
    }
}

/* Words with commas between them, spaces and brackets around them as in a file. */
static bool add_words(config_setting_t *to, const gb_key *key, const char *text) {
    config_setting_t *list = config_setting_add(to, key->name, CONFIG_TYPE_ARRAY);
    char word[GB_LONGEST];
    while (list != NULL && *(text += strspn(text, " []\",")) != '\0') {
        size_t n = strcspn(text, " []\",");
        size_t kept = n < sizeof word ? n : sizeof word - 1;
        memcpy(word, text, kept);
        word[kept] = '\0';
        if (config_setting_set_string_elem(list, -1, word) == NULL)
            return false;
        text += n;
    }
    return list != NULL;
}

/* A number goes in as one, so that the reader of files takes it; all else is a text, of
   which that reader says what it lacks. */
static bool add_typed(config_setting_t *to, const gb_key *key, const char *text) {
    if (key->kind == GB_KEY_CHOICES)
        return add_words(to, key, text);
    char *end = NULL;
    long whole = strtol(text, &end, 10);
    bool is_whole = key->kind == GB_KEY_WHOLE && end != text && *end == '\0' &&
                    labs(whole) < 1000000000;
    double number = 0;
    bool is_number = (key->kind == GB_KEY_NUMBER || key->kind == GB_KEY_WHOLE) &&
                     gb_parse_number(text, &number) == GB_NO_FAULT;
    int type = key->kind == GB_KEY_FLAG ? CONFIG_TYPE_BOOL
               : is_whole               ? CONFIG_TYPE_INT
               : is_number              ? CONFIG_TYPE_FLOAT
                                        : CONFIG_TYPE_STRING;
    config_setting_t *s = config_setting_add(to, key->name, type);
    if (s == NULL)
        return false;
    if (type == CONFIG_TYPE_BOOL)
        return config_setting_set_bool(s, CONFIG_TRUE) == CONFIG_TRUE;
    if (type == CONFIG_TYPE_INT)
        return config_setting_set_int(s, (int)whole) == CONFIG_TRUE;
    if (type == CONFIG_TYPE_FLOAT)
        return config_setting_set_float(s, number) == CONFIG_TRUE;
    return config_setting_set_string(s, text) == CONFIG_TRUE;
}

static config_setting_t *group_of(config_setting_t *root, const gb_key *group) {
    if (group == NULL)
        return root;
    config_setting_t *s = config_setting_get_member(root, group->name);
    return s != NULL ? s : config_setting_add(root, group->name, CONFIG_TYPE_GROUP);
}

bool gb_read_typed(gb_reader *reader, const gb_schema *schema, const gb_typed *typed,
                   size_t count, void *out) {
    config_t config;
    config_init(&config);
    config_setting_t *root = config_root_setting(&config);
    bool good = true;
    for (size_t i = 0; i < count && good; i++) {
        found f = key_named(schema, typed[i].key);
        config_setting_t *to = f.key == NULL ? NULL : group_of(root, f.group);
        good = to != NULL && add_typed(to, f.key, typed[i].text);
    }
    if (good)
        gb_read_group(reader, root, schema, out);
    config_destroy(&config);
    reader->diags->no_memory = reader->diags->no_memory || !good;
    return good;
}

gb_reader gb_typed_reader(const char *command, gb_mix_table *table, gb_arena *arena,
                          gb_diags *diags) {
    return (gb_reader){.file = command,
                       .arena = arena,
                       .diags = diags,
                       .places = gb_mix_table_places(table),
                       .typed = true};
}
