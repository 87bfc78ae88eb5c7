/* Tables on a sheet. The words of some rows hold cells, and rows of one block with as
   many cells are one table: their columns stand below each other, even when other rows
   come between them. */
#ifndef WRITE_TABLE_H
#define WRITE_TABLE_H

#include "gaugebox/text.h"

/* Signs within the words of a row: CELL parts two cells, RIGHT begins a cell that is set
   to the right of its column, HOLD is a space where no line may break. */
enum { GB_CELL = '\t', GB_RIGHT = '\x02', GB_HOLD = '\x01' };

enum { GB_MOST_CELLS = 8 };

/* The columns of a table that begins at `indent`. */
typedef struct gb_table {
    size_t indent;
    size_t widths[GB_MOST_CELLS];
} gb_table;

/* How many cells the words of a row hold; 1 is none of a table. */
size_t gb_count_cells(const char *words);

/* Makes room for a row of `count` cells. */
void gb_widen_table(gb_table *table, const char *words, size_t count, size_t indent);

/* Sets a row of `count` cells into lines of `room` columns, two between the cells, or one
   where a table is too wide for that. One that is wider still has the first cell of each
   row on a line of its own and the others below it. */
void gb_set_row(const gb_table *table, const char *words, size_t count, size_t room,
                gb_text *to);

#endif
