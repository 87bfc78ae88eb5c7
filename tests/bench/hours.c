/* Reads each file as hours of weather. */
#include "gaugebox/read.h"

#include <stdio.h>

int main(int argc, char **argv) {
    for (int i = 1; i < argc; i++) {
        gb_arena arena;
        gb_diags diags;
        gb_hours hours;
        gb_arena_init(&arena, gb_malloc_supply());
        gb_diags_init(&diags, &arena);
        if (!gb_read_hours(argv[i], -18000, &arena, &diags, NULL, &hours))
            return 1;
        gb_arena_release(&arena);
    }
    return 0;
}
