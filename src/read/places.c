#include "gaugebox/place.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

void gb_places_init(gb_places *places, gb_arena *arena) {
    *places = (gb_places){.arena = arena};
}

void gb_places_add(gb_places *p, gb_place place) {
    if (p->count == p->room) {
        size_t room = p->room * 2 + 256;
        gb_place *larger = gb_arena_take(p->arena, room, sizeof *larger);
        if (larger == NULL) {
            p->failed = true;
            return;
        }
        if (p->count > 0)
            memcpy(larger, p->list, p->count * sizeof *larger);
        p->list = larger;
        p->room = room;
    }
    place.order = p->count;
    p->list[p->count++] = place;
    p->sorted = false;
}

void gb_places_move(gb_places *places, const void *from, const void *to, size_t size) {
    for (size_t i = 0; i < places->count; i++) {
        uintptr_t at = (uintptr_t)places->list[i].value - (uintptr_t)from;
        if (at < size)
            places->list[i].value = (const char *)to + at;
    }
    places->sorted = false;
}

void gb_places_copy(gb_places *places, const void *from, const void *to, size_t size) {
    size_t count = places->count;
    for (size_t i = 0; i < count; i++) {
        gb_place place = places->list[i];
        uintptr_t at = (uintptr_t)place.value - (uintptr_t)from;
        if (at >= size)
            continue;
        place.value = (const char *)to + at;
        gb_places_add(places, place);
    }
}

static int by_address(const void *a, const void *b) {
    uintptr_t x = (uintptr_t)((const gb_place *)a)->value;
    uintptr_t y = (uintptr_t)((const gb_place *)b)->value;
    return (x > y) - (x < y);
}

/* The one to be found comes last: what is stated behind what is usual, then the later
 * one.
 */
static int by_address_and_order(const void *a, const void *b) {
    const gb_place *x = a;
    const gb_place *y = b;
    int order = by_address(a, b);
    if (order == 0)
        order = (x->line > 0) - (y->line > 0);
    return order != 0 ? order : (x->order > y->order) - (x->order < y->order);
}

const gb_place *gb_places_find(gb_places *p, const void *value) {
    const gb_place key = {.value = value};
    if (p->count == 0)
        return NULL;
    if (!p->sorted)
        qsort(p->list, p->count, sizeof *p->list, by_address_and_order);
    p->sorted = true;
    const gb_place *found = bsearch(&key, p->list, p->count, sizeof *p->list, by_address);
    const gb_place *end = p->list + p->count;
    while (found != NULL && found + 1 < end && found[1].value == value)
        found++;
    return found;
}
