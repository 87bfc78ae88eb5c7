#include "read/diag.h"
#include "read/reader.h"
#include "read/schemas.h"
#include "read/steps_rules.h"
#include "words/words.h"

#include <libconfig.h>
#include <stdlib.h>
#include <string.h>

bool gb_steps_option(size_t i, gb_typed_key *key) {
    if (i >= GB_STEPS_SCHEMA.key_count)
        return false;
    const gb_key *row = &GB_STEPS_SCHEMA.keys[i];
    static const char *const WORDS[] = {[GB_KEY_QUANTITY] = N_("LENGTH"),
                                        [GB_KEY_WHOLE] = N_("COUNT"),
                                        [GB_KEY_CHOICE] = N_("WORD"),
                                        [GB_KEY_FLAG] = NULL};
    const char *arg = WORDS[row->kind];
    if (row->kind == GB_KEY_QUANTITY && row->quantity == GB_SLOPE)
        arg = N_("SLOPE");
    *key = (gb_typed_key){row->name, arg, row->help};
    return true;
}

/* A whole number goes in as one, so that the reader of files takes it; all else is a
   text, of which that reader says what it lacks. */
static bool add_typed(config_setting_t *root, const gb_typed *typed) {
    const gb_key *key = gb_find_key(&GB_STEPS_SCHEMA, typed->key);
    char *end = NULL;
    long whole = strtol(typed->text, &end, 10);
    bool is_whole = key->kind == GB_KEY_WHOLE && end != typed->text && *end == '\0' &&
                    labs(whole) < 1000000000;
    int type = key->kind == GB_KEY_FLAG ? CONFIG_TYPE_BOOL
               : is_whole               ? CONFIG_TYPE_INT
                                        : CONFIG_TYPE_STRING;
    config_setting_t *s = config_setting_add(root, typed->key, type);
    if (s == NULL)
        return false;
    if (type == CONFIG_TYPE_BOOL)
        return config_setting_set_bool(s, CONFIG_TRUE) == CONFIG_TRUE;
    if (type == CONFIG_TYPE_INT)
        return config_setting_set_int(s, (int)whole) == CONFIG_TRUE;
    return config_setting_set_string(s, typed->text) == CONFIG_TRUE;
}

/* A run by options has no name; its rise tells it from others. */
static const char *named_by(const gb_typed *typed, size_t count) {
    for (size_t i = 0; i < count; i++)
        if (strcmp(typed[i].key, "rise") == 0)
            return typed[i].text;
    return "";
}

bool gb_read_steps(const gb_typed *typed, size_t count, gb_system units,
                   gb_mix_table *table, gb_arena *arena, gb_diags *diags,
                   gb_steps *steps) {
    config_t config;
    config_init(&config);
    size_t before = gb_diags_count(diags);
    gb_reader reader = {.file = "gaugebox steps",
                        .arena = arena,
                        .diags = diags,
                        .places = gb_mix_table_places(table),
                        .typed = true};
    bool good = true;
    for (size_t i = 0; i < count && good; i++)
        good = add_typed(config_root_setting(&config), &typed[i]);
    diags->no_memory = diags->no_memory || !good;
    if (good)
        gb_read_group(&reader, config_root_setting(&config), &GB_STEPS_SCHEMA, steps);
    config_destroy(&config);
    if (good)
        gb_check_steps(&reader, named_by(typed, count), units, steps);
    return good && gb_diags_count(diags) == before;
}
