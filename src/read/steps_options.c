#include "read/options.h"
#include "read/schemas.h"
#include "read/steps_rules.h"

#include <string.h>

bool gb_steps_option(size_t i, gb_typed_key *key) {
    return gb_option_of(&GB_STEPS_SCHEMA, i, key);
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
    size_t before = gb_diags_count(diags);
    gb_reader reader = gb_typed_reader("gaugebox steps", table, arena, diags);
    if (!gb_read_typed(&reader, &GB_STEPS_SCHEMA, typed, count, steps))
        return false;
    gb_check_steps(&reader, named_by(typed, count), units, steps);
    return gb_diags_count(diags) == before;
}
