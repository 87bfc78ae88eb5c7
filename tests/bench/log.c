/* Reads batch logs of the job that comes first. */
#include "gaugebox/read.h"

#include <stdio.h>

int main(int argc, char **argv) {
    gb_arena arena;
    gb_diags diags;
    gb_job job;
    if (argc < 4)
        return 2;
    gb_arena_init(&arena, gb_malloc_supply());
    gb_diags_init(&diags, &arena);
    gb_mix_table *table =
        gb_mix_table_open((const char *const *)&argv[1], 1, &arena, &diags);
    if (table == NULL || !gb_read_job(argv[2], table, &arena, &diags, &job))
        return 1;
    for (int i = 3; i < argc; i++) {
        gb_log log;
        gb_log_head head;
        if (!gb_read_log(argv[i], &job, &arena, &diags, &head, &log)) {
            gb_text text;
            gb_text_init(&text, &arena);
            gb_diags_print(&diags, &text);
            (void)fputs(gb_text_get(&text), stderr);
            return 1;
        }
    }
    gb_arena_release(&arena);
    return 0;
}
