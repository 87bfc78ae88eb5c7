#include "write/text.h"

#include "words/columns.h"
#include "words/words.h"
#include "write/figures.h"
#include "write/table.h"

#include <string.h>

/* Rows become lines of at most 80 columns: a label of up to 10, then words that wrap
   under their own beginning, or cells of a table. Spaces inside a figure must not break,
   so they travel as HOLD until a line is written. */

enum { LABEL_COLUMNS = 11 };

static const struct {
    const char *label;
    const char *words; /* with a plural: for a count of one */
    const char *many;  /* NULL for words without a count */
} WORDS[] = {
#define GB_ROW(code, label, words)            {label, words, NULL},
#define GB_ROW_PLURAL(code, label, one, many) {label, one, many},
#include "gaugebox/rows.def"
#undef GB_ROW
};
_Static_assert(sizeof WORDS / sizeof WORDS[0] == GB_ROW_CODES, "words for every row");

static const gb_figure *find_figure(const gb_row *row, const char *name, size_t length) {
    for (size_t i = 0; i < row->count; i++)
        if (strlen(row->figures[i].name) == length &&
            strncmp(row->figures[i].name, name, length) == 0)
            return &row->figures[i];
    return NULL;
}

/* ---- in the language of the sheet ------------------------------------------------ */

/* Looking up English words, which are not there, would cost a long sheet 4 % of its
   time. */
static bool is_english(const gb_sheet *sheet) {
    return strcmp(sheet->language, "en") == 0;
}

/* NULL for a row without a label of its own. */
static const char *label_of(const gb_row *row, const gb_sheet *sheet) {
    const char *label = WORDS[row->code].label;
    return label == NULL || is_english(sheet) ? label : gb_tr(label);
}

static const char *words_of(const gb_row *row, const gb_sheet *sheet) {
    const char *words = WORDS[row->code].words;
    const char *many = WORDS[row->code].many;
    const gb_figure *n = many == NULL ? NULL : find_figure(row, "n", 1);
    unsigned long count = n == NULL ? 1 : gb_figure_count(n);
    if (is_english(sheet))
        return count == 1 ? words : many;
    return many == NULL ? gb_tr(words) : gb_tr_count(words, many, count);
}

/* ---- filling in figures ---------------------------------------------------------- */

static void add_text(gb_text *to, const gb_text *more) {
    gb_text_add_bytes(to, gb_text_get(more), more->length);
    to->failed = to->failed || more->failed;
}

static void expand(const gb_row *row, const gb_sheet *sheet, gb_text *to);

/* Spaces of a text that must stay on one line. */
static void hold_spaces(gb_text *text) {
    for (char *c = text->data; c != NULL && *c != '\0'; c++)
        if (*c == ' ')
            *c = GB_HOLD;
}

static void expand_value(const gb_figure *f, const gb_sheet *sheet, gb_text *to) {
    gb_text shown;
    gb_text_init(&shown, to->arena);
    gb_show_figure(f, sheet->system, &shown);
    if (f->show != GB_SHOW_TEXT && f->show != GB_SHOW_MARK)
        hold_spaces(&shown);
    add_text(to, &shown);
}

/* Rows nest one or two deep (parts of a batch, what a batch covers), never into
   themselves. */
static void expand_figure(const gb_figure *f, const gb_sheet *sheet, gb_text *to) {
    if (f->show != GB_SHOW_ROWS) {
        expand_value(f, sheet, to);
        return;
    }
    for (size_t i = 0; i < f->row_count; i++) {
        gb_text inner;
        gb_text_init(&inner, to->arena);
        expand(&f->rows[i], sheet, &inner);
        if (f->whole)
            hold_spaces(&inner);
        if (i > 0)
            gb_text_add(to, f->join);
        add_text(to, &inner);
    }
}

/* {name}; returns what follows the closing brace. A brace that a translator has left open
   is text. */
static const char *expand_slot(const gb_row *row, const char *slot, const gb_sheet *sheet,
                               gb_text *to) {
    size_t length = strcspn(slot, "}");
    const gb_figure *f = find_figure(row, slot, length);
    if (f != NULL)
        expand_figure(f, sheet, to);
    return slot + length + (slot[length] == '}');
}

static void expand(const gb_row *row, const gb_sheet *sheet, gb_text *to) {
    const char *at = words_of(row, sheet);
    while (*at != '\0') {
        size_t plain = strcspn(at, "{\t");
        gb_text_add_bytes(to, at, plain);
        at += plain;
        if (*at == '{') {
            at = expand_slot(row, at + 1, sheet, to);
        } else if (*at == GB_CELL) {
            bool right = at[1] == '>';
            gb_text_add_char(to, GB_CELL);
            gb_text_add_repeated(to, GB_RIGHT, right);
            at += right ? 2 : 1;
        }
    }
}

void gb_expand_row(const gb_row *row, const gb_sheet *sheet, gb_text *to) {
    gb_text words;
    gb_text_init(&words, to->arena);
    expand(row, sheet, &words);
    for (char *c = words.data; c != NULL && *c != '\0'; c++)
        if (*c == GB_HOLD)
            *c = ' ';
    add_text(to, &words);
}

/* ---- lines ----------------------------------------------------------------------- */

static void add_line(gb_text *to, const char *text, size_t length) {
    while (length > 0 && (text[length - 1] == GB_HOLD || text[length - 1] == ' '))
        length--;
    size_t from = to->length;
    gb_text_add_bytes(to, text, length);
    for (size_t i = from; i < to->length; i++)
        if (to->data[i] == GB_HOLD || to->data[i] == GB_CELL)
            to->data[i] = ' ';
    gb_text_add(to, "\n");
}

/* A label stands once over rows that share it; each caution and each pot has its own. */
static bool repeats(const gb_row *row, const char *before) {
    bool caution = row->code >= GB_ROW_C_MIXER_SMALL && row->code <= GB_ROW_C_RAIN;
    bool pot = row->code == GB_ROW_POT_PIECES || row->code == GB_ROW_POT_AREA;
    const char *label = WORDS[row->code].label;
    return !caution && !pot && before != NULL && strcmp(label, before) == 0;
}

/* Lists that stand under one label, whatever each of their lines says more: batches to
   tick off, tables of water. */
static bool is_list(const char *label) {
    return label != NULL && (strcmp(label, WORDS[GB_ROW_BATCH_LINE].label) == 0 ||
                             strcmp(label, WORDS[GB_ROW_WATER_WORDS].label) == 0);
}

static size_t indent_of(const gb_row *row) {
    return WORDS[row->code].label == NULL ? 0 : LABEL_COLUMNS;
}

/* The label before the first line of a row; one that is wider than its column stands on a
   line of its own. Returns the columns that it leaves to be filled. */
static size_t write_label(const char *label, size_t indent, gb_text *to) {
    size_t used = gb_columns(label, strlen(label));
    gb_text_add(to, label);
    if (used < indent || used == 0)
        return indent - used;
    gb_text_add(to, "\n");
    return indent;
}

static void write_lines(const char *label, size_t indent, const char *words,
                        gb_text *to) {
    size_t fill = write_label(label, indent, to);
    const char *at = words;
    do {
        size_t n = gb_fitting(at, GB_COLUMNS - indent);
        gb_text_add_repeated(to, ' ', *at != '\0' ? fill : 0);
        add_line(to, at, n);
        at += n;
        at += *at == '\n' ? 1 : strspn(at, " ");
        fill = indent;
    } while (*at != '\0');
}

const char *gb_row_label(gb_row_code code) {
    return WORDS[code].label;
}

void gb_write_row(const gb_row *row, const char *label, const gb_sheet *sheet,
                  gb_text *to) {
    gb_text words;
    gb_text line;
    gb_table table = {.indent = 0};
    gb_text_init(&words, to->arena);
    gb_text_init(&line, to->arena);
    expand(row, sheet, &words);
    const char *all = gb_text_get(&words);
    size_t count = gb_count_cells(all);
    if (count > 1) {
        gb_widen_table(&table, all, count, indent_of(row));
        gb_set_row(&table, all, count, GB_COLUMNS, &line);
        all = gb_text_get(&line);
    }
    write_lines(gb_tr(label), indent_of(row), all, to);
    to->failed = to->failed || words.failed || line.failed;
}

/* What is at hand while one block is written: the last label, the words of the rows that
   hold cells (NULL for others), and their tables by how many cells they have. What
   another row needs on the way goes into `scratch`, so that a long sheet takes little
   more memory than its own text. */
typedef struct block_writer {
    const gb_sheet *sheet;
    gb_arena scratch;
    gb_arena kept; /* holds `cells` */
    const char **cells;
    const char *label;
    gb_table tables[GB_MOST_CELLS + 1];
} block_writer;

/* A first look at the rows that hold cells, for the columns of their tables. */
static bool measure_tables(block_writer *w, const gb_block *block) {
    memset(w->tables, 0, sizeof w->tables);
    gb_arena_reset(&w->kept);
    w->cells = gb_arena_take(&w->kept, block->count, sizeof *w->cells);
    if (w->cells == NULL)
        return false;
    for (size_t i = 0; i < block->count; i++) {
        const gb_row *row = &block->rows[i];
        if (strchr(words_of(row, w->sheet), GB_CELL) == NULL)
            continue;
        gb_text words;
        gb_arena_reset(&w->scratch);
        gb_text_init(&words, &w->scratch);
        expand(row, w->sheet, &words);
        w->cells[i] = gb_arena_copy(&w->kept, gb_text_get(&words));
        if (words.failed || w->cells[i] == NULL)
            return false;
        size_t count = gb_count_cells(w->cells[i]);
        gb_widen_table(&w->tables[count], w->cells[i], count, indent_of(row));
    }
    return true;
}

/* `cells` are the words of a row that holds some; NULL for any other. */
static void write_row(block_writer *w, const gb_row *row, const char *cells,
                      gb_text *to) {
    gb_text words;
    gb_arena_reset(&w->scratch);
    gb_text_init(&words, &w->scratch);
    const char *label = WORDS[row->code].label;
    bool shown = label != NULL && !repeats(row, w->label) && label[0] != '\0';
    /* What stands at the margin, or belongs to the row before it, begins anew: the next
       label is that of another thing. */
    if (shown || label == NULL)
        w->label = label;
    else if (label[0] == '\0' && !is_list(w->label))
        w->label = NULL;
    size_t count = cells == NULL ? 0 : gb_count_cells(cells);
    if (count > 0)
        gb_set_row(&w->tables[count], cells, count, GB_COLUMNS, &words);
    else
        expand(row, w->sheet, &words);
    write_lines(shown ? label_of(row, w->sheet) : "", indent_of(row), gb_text_get(&words),
                to);
    to->failed = to->failed || words.failed;
}

static void write_rule(gb_text *to, char c) {
    gb_text_add_repeated(to, c, GB_COLUMNS);
    gb_text_add(to, "\n");
}

static void write_block(block_writer *w, const gb_block *block, gb_text *to) {
    w->label = NULL;
    if (!measure_tables(w, block)) {
        to->failed = true;
        return;
    }
    write_rule(to, '=');
    for (size_t i = 0; i < block->count; i++) {
        write_row(w, &block->rows[i], w->cells[i], to);
        if (i == 0)
            write_rule(to, '-');
    }
}

void gb_write_text(const gb_sheet *sheet, gb_text *to) {
    block_writer writer = {.sheet = sheet};
    gb_arena_init(&writer.scratch, to->arena->supply);
    gb_arena_init(&writer.kept, to->arena->supply);
    for (size_t i = 0; i < sheet->count; i++) {
        if (i > 0)
            gb_text_add(to, "\n");
        write_block(&writer, &sheet->blocks[i], to);
    }
    gb_arena_release(&writer.scratch);
    gb_arena_release(&writer.kept);
}
