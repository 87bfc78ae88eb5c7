#include "gaugebox/place.h"
#include "gaugebox/read.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

static gb_place place(const void *value, int line, const char *text) {
    return (gb_place){
        .value = value, .file = "job.cfg", .line = line, .key = "depth", .text = text};
}

/* A value that the file states goes before its usual one, whichever was kept first. */
Test(places, stated_goes_before_usual) {
    gb_arena arena;
    gb_places p;
    double values[3] = {0};
    gb_arena_init(&arena, gb_malloc_supply());
    gb_places_init(&p, &arena);
    cr_expect(gb_places_find(&p, &values[0]) == NULL, "none is kept");
    gb_places_add(&p, place(&values[0], 0, "usual"));
    gb_places_add(&p, place(&values[0], 7, "stated"));
    gb_places_add(&p, place(&values[1], 9, "stated"));
    gb_places_add(&p, place(&values[1], 0, "usual"));
    for (int i = 0; i < 2; i++) {
        const gb_place *found = gb_places_find(&p, &values[i]);
        cr_assert(found != NULL, "value %d", i);
        cr_expect(strcmp(found->text, "stated") == 0, "value %d: %s", i, found->text);
    }
    cr_expect(gb_places_find(&p, &values[2]) == NULL, "a value that was not read");
    gb_arena_release(&arena);
}

/* What is copied elsewhere is found there, what lies beside it stays. */
Test(places, move_with_what_they_tell_of) {
    enum { COUNT = 1000 };
    static double from[COUNT];
    static double to[COUNT];
    gb_arena arena;
    gb_places p;
    gb_arena_init(&arena, gb_malloc_supply());
    gb_places_init(&p, &arena);
    for (int i = 0; i < COUNT; i++)
        gb_places_add(&p, place(&from[i], i + 1, ""));
    gb_places_move(&p, &from[10], &to[10], 5 * sizeof from[0]);
    for (int i = 0; i < COUNT; i++) {
        bool moved = i >= 10 && i < 15;
        const gb_place *there = gb_places_find(&p, moved ? &to[i] : &from[i]);
        cr_assert(there != NULL, "value %d", i);
        cr_expect(there->line == i + 1, "value %d has line %d", i, there->line);
        cr_expect(gb_places_find(&p, moved ? &from[i] : &to[i]) == NULL, "value %d", i);
    }
    gb_arena_release(&arena);
}
