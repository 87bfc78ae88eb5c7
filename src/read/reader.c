#include "read/reader.h"

#include "read/diag.h"
#include "read/nearest.h"
#include "read/values.h"
#include "words/words.h"

#include <string.h>

const gb_key *gb_find_key(const gb_schema *schema, const char *name) {
    for (size_t i = 0; i < schema->key_count; i++)
        if (strcmp(schema->keys[i].name, name) == 0)
            return &schema->keys[i];
    return NULL;
}

/* Keys that stood in a group once, and where what they said is written now. */
static const struct {
    const char *group, *key, *now;
} MOVED[] = {{"crew", "bucket", "gauge = { volume = \"1/2 ft3\"; };"}};

static const char *where_now(const gb_schema *schema, const char *name) {
    for (size_t i = 0; i < sizeof MOVED / sizeof MOVED[0]; i++)
        if (strcmp(MOVED[i].group, schema->name) == 0 && strcmp(MOVED[i].key, name) == 0)
            return MOVED[i].now;
    return NULL;
}

static void unknown_key(gb_reader *r, const config_setting_t *s,
                        const gb_schema *schema) {
    const char *name = config_setting_name(s);
    const char *now = where_now(schema, name);
    if (now != NULL) {
        gb_report(r->diags, r->file, (int)config_setting_source_line(s),
                  "'%s' is no key of %s any more; write instead, outside of it: %s", name,
                  gb_tr(schema->name), now);
        return;
    }
    gb_nearest nearest;
    gb_nearest_init(&nearest, name);
    for (size_t i = 0; i < schema->key_count; i++)
        gb_nearest_offer(&nearest, schema->keys[i].name);
    int line = (int)config_setting_source_line(s);
    if (nearest.best != NULL) {
        gb_report(r->diags, r->file, line, "'%s' is no key of %s; did you mean '%s'?",
                  name, gb_tr(schema->name), nearest.best);
        return;
    }
    gb_text known;
    gb_text_init(&known, r->arena);
    for (size_t i = 0; i < schema->key_count; i++) {
        gb_text_add(&known, i == 0 ? "" : ", ");
        gb_text_add(&known, schema->keys[i].name);
    }
    gb_report(r->diags, r->file, line, "'%s' is no key of %s; known are: %s", name,
              gb_tr(schema->name), gb_text_get(&known));
}

static void missing_key(gb_reader *r, int line, const gb_schema *schema,
                        const gb_key *key) {
    gb_text text;
    gb_text_init(&text, r->arena);
    if (key->example != NULL)
        gb_text_add(&text, key->example);
    else
        gb_describe_key(key, &text);
    gb_report(r->diags, r->file, line, "%s has no '%s'; add: %s = %s",
              gb_tr(schema->name), key->name, key->name, gb_text_get(&text));
}

/* True when the group takes what it does not state from the one that it is like. */
static bool is_heir(const gb_schema *schema, uint64_t stated) {
    for (size_t i = 0; schema->like_key != NULL && i < schema->key_count; i++)
        if (stated >> i & 1 && strcmp(schema->keys[i].name, schema->like_key) == 0)
            return true;
    return false;
}

/* Two passes over the settings: what is there, then what is missing. */
void gb_read_group(gb_reader *reader, const config_setting_t *group,
                   const gb_schema *schema, void *out) {
    uint64_t stated = 0;
    int line = (int)config_setting_source_line(group);
    size_t faults = gb_diags_count(reader->diags);
    size_t inner = 0; /* those of groups within it */
    memset(out, 0, schema->size);
    for (size_t i = 0; i < schema->key_count; i++)
        gb_default_value(reader, &schema->keys[i], out);
    int count = config_setting_length(group);
    for (int i = 0; i < count; i++) {
        const config_setting_t *s = config_setting_get_elem(group, (unsigned)i);
        const char *name = config_setting_name(s);
        const gb_key *key = gb_find_key(schema, name);
        if (key != NULL) {
            stated |= UINT64_C(1) << (key - schema->keys);
            size_t before = gb_diags_count(reader->diags);
            gb_read_value(reader, s, key, out);
            if (key->child != NULL)
                inner += gb_diags_count(reader->diags) - before;
        } else if (strcmp(name, GB_END_KEY) != 0) {
            unknown_key(reader, s, schema);
        }
    }
    bool heir = is_heir(schema, stated);
    for (size_t i = 0; i < schema->key_count; i++) {
        const gb_key *key = &schema->keys[i];
        if (key->required && !(stated >> i & 1) && (!heir || key->never_inherited))
            missing_key(reader, line, schema, key);
    }
    if (schema->origin_offset == GB_NO_ORIGIN)
        return;
    gb_origin origin = {line, gb_diags_count(reader->diags) > faults + inner, inner > 0,
                        stated};
    memcpy((char *)out + schema->origin_offset, &origin, sizeof origin);
}

bool gb_read_file(gb_reader *reader, const gb_schema *schema, void *out) {
    config_t config;
    if (!gb_load_config(reader->file, reader->arena, reader->diags, &config,
                        &reader->digest))
        return false;
    gb_read_group(reader, config_root_setting(&config), schema, out);
    config_destroy(&config);
    return true;
}
