#include "read/concrete_rules.h"
#include "read/diag.h"
#include "read/options.h"
#include "read/schemas.h"
#include "read/table.h"

#include <stddef.h>
#include <string.h>

bool gb_concrete_option(size_t i, gb_typed_key *key) {
    return gb_option_of(&GB_CONCRETE_SCHEMA, i, key);
}

static bool is_typed(const gb_typed *typed, size_t count, const char *key) {
    for (size_t i = 0; i < count; i++)
        if (strcmp(typed[i].key, key) == 0)
            return true;
    return false;
}

/* How such a concrete is mixed, and what holds for it, is that of a shipped one. */
static const gb_mix *pattern_of(gb_mix_table *table, const gb_concrete *c) {
    const char *id =
        gb_is_entrained(c) ? "proportioned/steps-air" : "proportioned/footing";
    return gb_mix_find(table, (gb_ref){id, 0}, "gaugebox concrete");
}

/* What the pattern's concrete states is none of this one's. */
static void keep_places(gb_places *places, const gb_mix *pattern, const gb_concrete *c,
                        gb_mix *mix) {
    enum { BEFORE = offsetof(gb_mix, concrete), AFTER = BEFORE + sizeof(gb_concrete) };
    if (places == NULL)
        return;
    gb_places_copy(places, pattern, mix, BEFORE);
    gb_places_copy(places, (const char *)pattern + AFTER, (const char *)mix + AFTER,
                   sizeof *mix - AFTER);
    gb_places_copy(places, c, &mix->concrete, sizeof *c);
}

bool gb_is_of_delivery(const char *concrete_key) {
    return strcmp(concrete_key, "sand_moisture") == 0 ||
           strcmp(concrete_key, "stone_moisture") == 0 ||
           strcmp(concrete_key, "air_dry") == 0;
}

/* Makes *mix of a pattern that is mixed likewise. */
static bool proportion(gb_mix_table *table, gb_reader *reader, const gb_mix *pattern,
                       const gb_concrete *c, gb_mix *mix) {
    *mix = *pattern;
    keep_places(reader->places, pattern, c, mix);
    mix->file = reader->file;
    mix->concrete = *c;
    mix->concrete.at.line = 0;
    bool good = gb_take_concrete(table, mix, reader);
    mix->concrete.at.line = 1; /* it was stated, though in no file */
    return good;
}

static bool read_whole(const gb_typed *typed, size_t count, gb_system units,
                       gb_mix_table *table, gb_reader *reader, gb_concrete *c,
                       gb_mix *mix) {
    if (!is_typed(typed, count, "table"))
        c->table = units;
    for (size_t i = 0; i < count; i++)
        c->trial.at.line |= strncmp(typed[i].key, "trial_", 6) == 0;
    const gb_mix *pattern = pattern_of(table, c);
    if (pattern == NULL || !proportion(table, reader, pattern, c, mix))
        return false;
    mix->id = "";
    mix->at.line = 0;
    return true;
}

/* The same concrete, its aggregate as wet as it was typed. */
static bool read_delivery(const gb_mix *of, gb_mix_table *table, gb_reader *reader,
                          const gb_concrete *typed_c, gb_mix *mix) {
    gb_concrete c =
        gb_delivered_as(&of->concrete, typed_c->sand_moisture, typed_c->stone_moisture);
    const char *file = of->file;
    c.air_dry = c.air_dry || typed_c->air_dry;
    bool good = proportion(table, reader, of, &c, mix);
    mix->file = file;
    mix->concrete.at = of->concrete.at;
    return good;
}

bool gb_read_concrete(const gb_typed *typed, size_t count, gb_system units,
                      const gb_mix *of, gb_mix_table *table, gb_arena *arena,
                      gb_diags *diags, gb_mix *mix) {
    size_t before = gb_diags_count(diags);
    gb_reader reader = gb_typed_reader("gaugebox concrete", table, arena, diags);
    gb_concrete *c = gb_arena_take(arena, 1, sizeof *c);
    diags->no_memory = diags->no_memory || c == NULL;
    if (c == NULL || !gb_read_typed(&reader, &GB_CONCRETE_SCHEMA, typed, count, c) ||
        gb_diags_count(diags) > before)
        return false;
    bool good = of == NULL ? read_whole(typed, count, units, table, &reader, c, mix)
                           : read_delivery(of, table, &reader, c, mix);
    return good && gb_diags_count(diags) == before && !diags->no_memory;
}

bool gb_check_delivered(const gb_concrete *concrete, const char *file, gb_arena *arena,
                        gb_diags *diags) {
    size_t before = gb_diags_count(diags);
    gb_reader reader = {.file = file, .arena = arena, .diags = diags};
    gb_check_concrete(&reader, concrete);
    return gb_diags_count(diags) == before;
}
