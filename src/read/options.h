/* Options of a command that are the keys of a schema. */
#ifndef READ_OPTIONS_H
#define READ_OPTIONS_H

#include "read/reader.h"

/* Key i of a schema as an option, from 0; those of a group within it are called after
   both, as trial_water. False beyond the last one. */
bool gb_option_of(const gb_schema *schema, size_t i, gb_typed_key *key);

/* Reads a group from options, each key once. False without memory. */
bool gb_read_typed(gb_reader *reader, const gb_schema *schema, const gb_typed *typed,
                   size_t count, void *out);

/* A reader of the options of that command. */
gb_reader gb_typed_reader(const char *command, gb_mix_table *table, gb_arena *arena,
                          gb_diags *diags);

#endif
