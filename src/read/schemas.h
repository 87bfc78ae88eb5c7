/* The schemas of all files, and the structs that only reading knows. */
#ifndef READ_SCHEMAS_H
#define READ_SCHEMAS_H

#include "read/schema.h"
#include "words/mark.h"

/* A job file as read, before its names are looked up. */
typedef struct gb_job_file {
    size_t format;
    gb_job job;
} gb_job_file;

typedef struct gb_material_file {
    size_t format;
    gb_material *list;
    size_t count;
} gb_material_file;

typedef struct gb_mix_file {
    size_t format;
    gb_mix *list;
    size_t count;
} gb_mix_file;

typedef struct gb_stone_file {
    size_t format;
    gb_stone *list;
    size_t count;
} gb_stone_file;

typedef struct gb_price_file {
    size_t format;
    size_t decimals;
    gb_price_book book;
} gb_price_file;

extern const gb_schema GB_CONCRETE_SCHEMA; /* of mixes, and of options */
extern const gb_schema GB_TRIAL_SCHEMA;
extern const gb_schema GB_CREW_SCHEMA;
extern const gb_schema GB_SITE_WATER_SCHEMA;
extern const gb_schema GB_JOB_SCHEMA;
extern const gb_schema GB_LAYER_SCHEMA; /* of a job's pieces */
extern const gb_schema GB_SHAPE_SCHEMA; /* of a job's pieces */
extern const gb_schema GB_WALL_SCHEMA;  /* of layers */
extern const gb_schema GB_CORES_SCHEMA;
extern const gb_schema GB_FORM_SCHEMA;
extern const gb_schema GB_LEVELS_SCHEMA;
extern const gb_schema GB_MATERIAL_SCHEMA;
extern const gb_schema GB_MIX_SCHEMA;
extern const gb_schema GB_MIX_ENTRY_SCHEMA; /* one mix, of a family or of a job */
extern const gb_schema GB_LIFT_SCHEMA;
extern const gb_schema GB_LOOSE_SCHEMA; /* of a job's pieces */
extern const gb_schema GB_PRICE_SCHEMA;
extern const gb_schema GB_STEPS_SCHEMA; /* of a job's pieces, and of options */
extern const gb_schema GB_STONE_FILE_SCHEMA;
extern const gb_schema GB_WEATHER_SCHEMA;
extern const gb_schema GB_TEMPERATURES_SCHEMA;
extern const gb_schema GB_PIECE_STONE_SCHEMA; /* of a job's pieces */

/* The words for gb_gauge_by, in its order. */
extern const char *const GB_GAUGE_WORDS[];

/* The words for gb_loose_kind. */
extern const char *const GB_LOOSE_WORDS[];

/* The words for gb_form_kind and for gb_shape_kind. */
extern const char *const GB_FORM_WORDS[];
extern const char *const GB_SHAPE_WORDS[];

/* Bits for keys that every file begins with. */
#define GB_FORMAT_KEY(type)                                                              \
    {                                                                                    \
        .name = "format", .kind = GB_KEY_FORMAT, .required = true,                       \
        .offset = offsetof(type, format), .help = N_("version of the file's form")       \
    }

/* A schema's row count and the schema itself, from the array of its keys. */
#define GB_SCHEMA(title, rows, type, origin)                                             \
    {                                                                                    \
        .name = (title), .keys = (rows), .key_count = sizeof(rows) / sizeof((rows)[0]),  \
        .size = sizeof(type), .origin_offset = (origin)                                  \
    }

#endif
