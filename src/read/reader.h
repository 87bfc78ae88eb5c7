/* The one reader of all groups: walks a schema table over a libconfig group. */
#ifndef READ_READER_H
#define READ_READER_H

#include "read/schema.h"

typedef struct gb_reader {
    const char *file;
    gb_arena *arena;
    gb_diags *diags;
    uint64_t digest;    /* of the file, once it is read */
    gb_places *places;  /* NULL: they are not kept */
    const char *shown;  /* the file as places name it; NULL: as it is named here */
    bool typed;         /* options of a command: they have no file and no line */
    const char *within; /* of options: the group that is read, which their names begin
                           with; NULL: none */
} gb_reader;

/* Fills *out (of schema->size bytes) from `group`; reports every fault in it. */
void gb_read_group(gb_reader *reader, const config_setting_t *group,
                   const gb_schema *schema, void *out);

/* Loads `file` and reads its top level by `schema`, with `format = 1` required. False
   when the file could not be parsed; other faults are in diags. */
bool gb_read_file(gb_reader *reader, const gb_schema *schema, void *out) GB_MUST_USE;

#endif
