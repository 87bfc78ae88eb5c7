#include "gaugebox/arena.h"

#include <stdalign.h>
#include <string.h>

typedef struct gb_arena_block {
    struct gb_arena_block *before;
    size_t used;
    size_t room;
    max_align_t bytes[];
} block;

enum { USUAL_ROOM = 32768 };

void gb_arena_init(gb_arena *arena, gb_supply supply) {
    arena->supply = supply;
    arena->last = NULL;
    arena->spent = false;
}

static void release_from(gb_arena *arena, block *b) {
    while (b != NULL) {
        block *before = b->before;
        arena->supply.give_back(arena->supply.user, b);
        b = before;
    }
}

void gb_arena_release(gb_arena *arena) {
    release_from(arena, arena->last);
    arena->last = NULL;
}

void gb_arena_reset(gb_arena *arena) {
    if (arena->last == NULL)
        return;
    release_from(arena, arena->last->before);
    arena->last->before = NULL;
    arena->last->used = 0;
}

static block *add_block(gb_arena *arena, size_t bytes) {
    size_t room = bytes > USUAL_ROOM ? bytes : USUAL_ROOM;
    if (room > SIZE_MAX - sizeof(block))
        return NULL;
    block *b = arena->supply.take(arena->supply.user, sizeof(block) + room);
    if (b == NULL)
        return NULL;
    b->before = arena->last;
    b->used = 0;
    b->room = room;
    arena->last = b;
    return b;
}

static void *take(gb_arena *arena, size_t count, size_t size) {
    const size_t step = alignof(max_align_t);
    if (size != 0 && count > (SIZE_MAX - step) / size)
        return NULL;
    size_t bytes = (count * size + step - 1) / step * step;
    block *b = arena->last;
    if (b == NULL || b->room - b->used < bytes)
        b = add_block(arena, bytes);
    if (b == NULL)
        return NULL;
    char *at = (char *)b->bytes + b->used;
    b->used += bytes;
    memset(at, 0, bytes);
    return at;
}

void *gb_arena_take(gb_arena *arena, size_t count, size_t size) {
    void *at = take(arena, count, size);
    arena->spent = arena->spent || at == NULL;
    return at;
}

char *gb_arena_copy(gb_arena *arena, const char *text) {
    size_t n = strlen(text) + 1;
    char *copy = gb_arena_take(arena, n, 1);
    if (copy != NULL)
        memcpy(copy, text, n);
    return copy;
}
