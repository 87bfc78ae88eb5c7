/* One arena per run owns all that is read and planned; it is freed as a whole. */
#ifndef GAUGEBOX_ARENA_H
#define GAUGEBOX_ARENA_H

#include "gaugebox/base.h"

/* Where an arena gets its blocks from. The engine itself never calls malloc. */
typedef struct gb_supply {
    void *(*take)(void *user, size_t bytes);
    void (*give_back)(void *user, void *block);
    void *user;
} gb_supply;

typedef struct gb_arena {
    gb_supply supply;
    struct gb_arena_block *last;
    bool spent; /* it once had no room to give: what was made with it may be cut */
} gb_arena;

void gb_arena_init(gb_arena *arena, gb_supply supply);
void gb_arena_release(gb_arena *arena);
/* Forgets all that was taken but keeps one block for what comes next. */
void gb_arena_reset(gb_arena *arena);

/* Zeroed room for count items of size bytes each, aligned for any type and valid until
   the arena is released. NULL when count * size overflows or the supply gives nothing. */
void *gb_arena_take(gb_arena *arena, size_t count, size_t size) GB_MUST_USE;

/* A copy of text in the arena, or NULL. */
char *gb_arena_copy(gb_arena *arena, const char *text) GB_MUST_USE;

#endif
