/* Where values were read: file, line and text of each, kept for the one who asks how a
   figure came about. */
#ifndef GAUGEBOX_PLACE_H
#define GAUGEBOX_PLACE_H

#include "gaugebox/arena.h"

typedef struct gb_place {
    const void *value; /* where the value was put; what a place is found by */
    const char *file;  /* empty: an option of the command */
    int line;          /* 0: the file does not state it, and `text` is the usual value */
    const char *key;
    const char *text; /* as it was written */
    size_t order;     /* in which it was kept; set by gb_places_add */
} gb_place;

/* All places of a run, in the order of reading. */
typedef struct gb_places {
    gb_arena *arena;
    gb_place *list;
    size_t count, room;
    bool sorted;
    bool failed; /* memory ran out */
} gb_places;

void gb_places_init(gb_places *places, gb_arena *arena);

/* Keeps a place; it goes before those of the same value that were kept earlier: what is
   stated before what is usual, what was changed before what was stated. */
void gb_places_add(gb_places *places, gb_place place);

/* Tells that what lay at `from` lies at `to` now. */
void gb_places_move(gb_places *places, const void *from, const void *to, size_t size);

/* Tells that what lies at `from` lies at `to` as well. */
void gb_places_copy(gb_places *places, const void *from, const void *to, size_t size);

/* The place of the value at that address, or NULL. Sorts the list on the first call. */
const gb_place *gb_places_find(gb_places *places, const void *value);

#endif
