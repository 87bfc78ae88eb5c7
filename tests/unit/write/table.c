#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <stdio.h>
#include <string.h>

#include "gaugebox/read.h"
#include "write/table.h"

enum { MOST_ROWS = 3 };

/* Rows with ~ for a space that holds and < for a cell set to the right, and what becomes
   of them in so many columns. */
static const struct {
    const char *what;
    size_t room;
    size_t indent;
    const char *rows[MOST_ROWS];
    const char *lines[MOST_ROWS];
} TABLES[] = {
    {"columns as wide as they must be",
     40,
     0,
     {"a\tlong one\tz", "bbb\tc\td"},
     {"a~~~~long one~~z", "bbb~~c~~~~~~~~~d"}},
    {"to the right",
     40,
     0,
     {"a\t<1.00\tx", "b\t<100.00\ty"},
     {"a~~~~1.00~~x", "b~~100.00~~y"}},
    {"an empty cell keeps its column",
     40,
     0,
     {"a\t\tz", "b\tcc\ty"},
     {"a~~~~~~z", "b~~cc~~y"}},
    {"wide signs take two columns",
     40,
     0,
     {"\u6c34\tx", "abc\ty"},
     {"\u6c34~~~x", "abc~~y"}},
    {"a full table leaves one column between cells",
     11,
     0,
     {"aaaa\tbb\tccc", "a\tb\tc"},
     {"aaaa~bb~ccc", "a~~~~b~~c"}},
    {"a wider one puts the first cell above",
     10,
     0,
     {"aaaa\tbb\tccc", "a\tb\tc"},
     {"aaaa\n~~bb~~ccc", "a\n~~b~~~c"}},
    {"the indent counts", 15, 5, {"aaaa\tbb\tccc"}, {"aaaa\n~~bb~~ccc"}},
    {"no line of its own for an empty first cell",
     9,
     0,
     {"\tbb\tcccccc", "a\tb\tc"},
     {"~~bb  cccccc", "a\n~~b  c"}},
    {"what still does not fit is broken as words are",
     8,
     0,
     {"aaaa\tbbbb bb\tccc"},
     {"aaaa\n~~bbbb bb  ccc"}},
};

static void expect_rows(size_t t, const gb_table *table, const char rows[][64],
                        size_t count, gb_arena *arena) {
    for (size_t i = 0; i < count; i++) {
        gb_text set;
        gb_text_init(&set, arena);
        gb_set_row(table, rows[i], gb_count_cells(rows[i]), TABLES[t].room, &set);
        for (char *c = set.data; *c != '\0'; c++)
            *c = *c == GB_HOLD ? '~' : *c;
        cr_expect(strcmp(gb_text_get(&set), TABLES[t].lines[i]) == 0, "%s: \"%s\"",
                  TABLES[t].what, gb_text_get(&set));
    }
}

Test(table, rows_stand_in_columns) {
    gb_arena arena;
    gb_arena_init(&arena, gb_malloc_supply());
    for (size_t t = 0; t < sizeof TABLES / sizeof TABLES[0]; t++) {
        char rows[MOST_ROWS][64] = {""};
        gb_table table = {0};
        size_t count = 0;
        for (; count < MOST_ROWS && TABLES[t].rows[count] != NULL; count++) {
            (void)snprintf(rows[count], sizeof rows[count], "%s", TABLES[t].rows[count]);
            for (char *c = rows[count]; *c != '\0'; c++)
                *c = *c == '<' ? GB_RIGHT : *c;
            gb_widen_table(&table, rows[count], gb_count_cells(rows[count]),
                           TABLES[t].indent);
        }
        expect_rows(t, &table, rows, count, &arena);
    }
    gb_arena_release(&arena);
}

Test(table, more_cells_than_are_kept_go_into_the_last) {
    const char *row = "a\tb\tc\td\te\tf\tg\th\ti\tj";
    gb_table table = {0};
    gb_arena arena;
    gb_text set;
    gb_arena_init(&arena, gb_malloc_supply());
    gb_text_init(&set, &arena);
    size_t count = gb_count_cells(row);
    cr_expect(count == GB_MOST_CELLS, "%zu cells", count);
    gb_widen_table(&table, row, count, 0);
    gb_set_row(&table, row, count, 80, &set);
    cr_expect(strstr(gb_text_get(&set), "h\ti\tj") != NULL, "%s", gb_text_get(&set));
    gb_arena_release(&arena);
}
