/* Schema tables: one row for every key that a file may hold. The same rows drive the
   reading, the checking, the advice on an unknown key, and the printed reference. */
#ifndef READ_SCHEMA_H
#define READ_SCHEMA_H

#include "read/source.h"

typedef enum gb_key_kind {
    GB_KEY_FORMAT,     /* size_t, which must be 1 */
    GB_KEY_TEXT,       /* const char * */
    GB_KEY_REF,        /* gb_ref: a text that names something elsewhere */
    GB_KEY_WORDS,      /* gb_words: "...", or { en = "..."; es = "..."; } */
    GB_KEY_WORDS_LIST, /* const gb_words * and a count: ( "...", { en = "..."; } ) */
    GB_KEY_QUANTITY,   /* double, in the SI unit of `quantity` */
    GB_KEY_QUANTITIES, /* const double * and a count: one, or [ several ] */
    GB_KEY_WHOLE,      /* size_t */
    GB_KEY_NUMBER,     /* double, without a unit */
    GB_KEY_NUMBERS,    /* const double * and a count: one, or [ several ] */
    GB_KEY_FLAG,       /* bool */
    GB_KEY_CHOICE,     /* int, an index into choices */
    GB_KEY_CHOICES,    /* unsigned, bit 1 << index for each: [ "bed", "joint" ] */
    GB_KEY_POINTS,     /* gb_outline: ( "0 ft x 0 ft", "5 ft x 0 ft", ... ) */
    GB_KEY_OUTLINES,   /* const gb_outline * and a count: lists of such points */
    GB_KEY_SIZE,       /* two gb_length, one behind the other: "5 ft x 14 in" */
    GB_KEY_CLOCK,      /* double, seconds since midnight: "07:30" */
    GB_KEY_PACE,       /* gb_pace */
    GB_KEY_GROUP,      /* a struct, read by child */
    GB_KEY_GROUPS      /* const struct * and a count: ( { ... }, { ... } ) */
} gb_key_kind;

typedef struct gb_schema gb_schema;

typedef struct gb_key {
    const char *name;
    gb_key_kind kind;
    gb_kind quantity;
    bool required;
    bool never_inherited; /* an entry that is like another one states it itself */
    bool told_elsewhere;  /* the printed reference has the child's keys at another kind */
    bool empty_when_absent; /* a group that was left out is all zero, not usual values */
    const char *fallback;   /* as a user would write it; NULL: NaN, NULL or zero */
    const char *least;      /* bounds, as a user would write them; both inclusive */
    const char *most;
    const char *const *choices; /* ends in NULL */
    const gb_schema *child;
    size_t offset;       /* of the value in the struct */
    size_t count_offset; /* of its count */
    const char *help;
    const char *example; /* of a group, for the message when it is missing */
} gb_key;

struct gb_schema {
    const char *name; /* "piece" */
    const gb_key *keys;
    size_t key_count;
    size_t size;          /* of the struct */
    size_t origin_offset; /* of a gb_origin that takes its place; GB_NO_ORIGIN: none */
    const char *like_key; /* a group with this key takes what it does not state from the
                             one named there, see inherit.h; NULL: groups stand alone */
};

#define GB_NO_ORIGIN ((size_t)-1)

/* How the kind and bounds of a key read in a sentence: "a length from 1/16 in to 24 in,
   such as \"1-1/4 in\"". */
void gb_describe_key(const gb_key *key, gb_text *to);

/* True when an SI value lies within the bounds of a quantity's key. */
bool gb_in_bounds(const gb_key *key, double value);
/* A quantity that a schema states, a bound or what is usual, in SI units; NaN when it is
   none of that kind. `text` must live as long as the program. */
double gb_schema_value(gb_kind kind, const char *text);

/* The key of that name, or NULL. */
const gb_key *gb_find_key(const gb_schema *schema, const char *name);

#endif
