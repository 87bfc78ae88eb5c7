#include "write/table.h"

#include "words/columns.h"

#include <string.h>

enum { USUAL_GAP = 2, LEAST_GAP = 1, INDENT = 2 };

typedef struct cell {
    const char *text;
    size_t length;
    size_t columns;
    bool right;
} cell;

size_t gb_count_cells(const char *words) {
    size_t count = 1;
    for (const char *c = strchr(words, GB_CELL); c != NULL && count < GB_MOST_CELLS;
         c = strchr(c + 1, GB_CELL))
        count++;
    return count;
}

/* The cell that begins at *at, which then stands at the next one. The last cell takes all
   that is left. */
static cell take_cell(const char **at, bool last) {
    bool right = **at == GB_RIGHT;
    const char *text = *at + right;
    size_t length = last ? strlen(text) : strcspn(text, (const char[]){GB_CELL, '\0'});
    *at = text + length + (text[length] == GB_CELL);
    return (cell){text, length, gb_columns(text, length), right};
}

static void split(const char *words, size_t count, cell cells[GB_MOST_CELLS]) {
    for (size_t i = 0; i < count; i++)
        cells[i] = take_cell(&words, i + 1 == count);
}

void gb_widen_table(gb_table *table, const char *words, size_t count, size_t indent) {
    cell cells[GB_MOST_CELLS] = {{0}};
    split(words, count, cells);
    if (indent > table->indent)
        table->indent = indent;
    for (size_t i = 0; i < count; i++)
        if (cells[i].columns > table->widths[i])
            table->widths[i] = cells[i].columns;
}

/* The gap between columns with which those from `from` on fit beside each other: the
   usual one, or else the least; 0 when they do not fit. */
static size_t fitting_gap(const gb_table *table, size_t from, size_t count, size_t room) {
    size_t width = table->indent + (from > 0 ? INDENT : 0);
    for (size_t i = from; i < count; i++)
        width += table->widths[i];
    for (size_t gap = USUAL_GAP; gap >= LEAST_GAP; gap--)
        if (width + gap * (count - from - 1) <= room)
            return gap;
    return 0;
}

static void set_cells(const gb_table *table, const cell *cells, size_t from, size_t count,
                      size_t gap, gb_text *to) {
    size_t owed = 0; /* a gap is written before what follows it, never at a line's end */
    for (size_t i = from; i < count; i++) {
        size_t fill = table->widths[i] - cells[i].columns;
        gb_text_add_repeated(to, GB_HOLD, owed + (cells[i].right ? fill : 0));
        gb_text_add_bytes(to, cells[i].text, cells[i].length);
        owed = gap + (cells[i].right ? 0 : fill);
    }
}

/* Cells one behind the other, to be broken between words where a line is full. */
static void join_cells(const cell *cells, size_t from, size_t count, gb_text *to) {
    for (size_t i = from; i < count; i++) {
        gb_text_add_repeated(to, ' ', i > from && cells[i].length > 0 ? USUAL_GAP : 0);
        gb_text_add_bytes(to, cells[i].text, cells[i].length);
    }
}

void gb_set_row(const gb_table *table, const char *words, size_t count, size_t room,
                gb_text *to) {
    cell cells[GB_MOST_CELLS] = {{0}};
    split(words, count, cells);
    size_t gap = fitting_gap(table, 0, count, room);
    if (gap > 0) {
        set_cells(table, cells, 0, count, gap, to);
        return;
    }
    gb_text_add_bytes(to, cells[0].text, cells[0].length);
    gb_text_add(to, cells[0].length > 0 ? "\n" : "");
    gb_text_add_repeated(to, GB_HOLD, INDENT);
    gap = fitting_gap(table, 1, count, room);
    if (gap > 0)
        set_cells(table, cells, 1, count, gap, to);
    else
        join_cells(cells, 1, count, to);
}
