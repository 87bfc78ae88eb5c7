#include "write/text.h"

#include "write/figures.h"

#include <string.h>

/* Rows become lines of at most 80 columns: a label of up to 10, then words that wrap
   under their own beginning. Spaces inside a figure must not break, so they travel as
   HOLD until a line is written. */

enum { COLUMNS = 80, LABEL_COLUMNS = 11, HOLD = '\x01' };

static const struct {
    const char *label;
    const char *words;
} WORDS[] = {
#define GB_ROW(code, label, words) {label, words},
#include "gaugebox/rows.def"
#undef GB_ROW
};
_Static_assert(sizeof WORDS / sizeof WORDS[0] == GB_ROW_CODES, "words for every row");

/* ---- filling in figures ---------------------------------------------------------- */

static const gb_figure *find_figure(const gb_row *row, const char *name, size_t length) {
    for (size_t i = 0; i < row->count; i++)
        if (strlen(row->figures[i].name) == length &&
            strncmp(row->figures[i].name, name, length) == 0)
            return &row->figures[i];
    return NULL;
}

/* Columns that a text takes: UTF-8 signs, not bytes. */
static size_t columns(const char *text, size_t length) {
    size_t n = 0;
    for (size_t i = 0; i < length; i++)
        n += ((unsigned char)text[i] & 0xC0) != 0x80;
    return n;
}

static void add_text(gb_text *to, const gb_text *more) {
    gb_text_add_bytes(to, gb_text_get(more), more->length);
    to->failed = to->failed || more->failed;
}

static void expand(const gb_row *row, gb_system system, gb_text *to);

/* Spaces of a text that must stay on one line. */
static void hold_spaces(gb_text *text) {
    for (char *c = text->data; c != NULL && *c != '\0'; c++)
        if (*c == ' ')
            *c = HOLD;
}

static void expand_value(const gb_figure *f, gb_system system, gb_text *to) {
    gb_text shown;
    gb_text_init(&shown, to->arena);
    gb_show_figure(f, system, &shown);
    if (f->show != GB_SHOW_TEXT && f->show != GB_SHOW_MARK)
        hold_spaces(&shown);
    add_text(to, &shown);
}

/* Rows nest one or two deep (parts of a batch, what a batch covers), never into
   themselves. */
static void expand_figure(const gb_figure *f, gb_system system, gb_text *to) {
    if (f->show != GB_SHOW_ROWS) {
        expand_value(f, system, to);
        return;
    }
    for (size_t i = 0; i < f->row_count; i++) {
        gb_text inner;
        gb_text_init(&inner, to->arena);
        expand(&f->rows[i], system, &inner);
        if (f->whole)
            hold_spaces(&inner);
        if (i > 0)
            gb_text_add(to, f->join);
        add_text(to, &inner);
    }
}

/* {name}, {name:12} or {name:>12}; returns what follows the closing brace. */
static const char *expand_slot(const gb_row *row, const char *slot, gb_system system,
                               gb_text *to) {
    size_t length = strcspn(slot, ":}");
    const char *at = slot + length;
    bool right = at[0] == ':' && at[1] == '>';
    size_t width = 0;
    for (; *at != '}'; at++)
        if (*at >= '0' && *at <= '9')
            width = width * 10 + (size_t)(*at - '0');
    gb_text shown;
    gb_text_init(&shown, to->arena);
    const gb_figure *f = find_figure(row, slot, length);
    if (f != NULL)
        expand_figure(f, system, &shown);
    size_t used = columns(gb_text_get(&shown), shown.length);
    /* A column that is full still needs its gap. */
    size_t fill = used < width ? width - used : (width > 0 && !right);
    gb_text_add_repeated(to, HOLD, right ? fill : 0);
    add_text(to, &shown);
    gb_text_add_repeated(to, HOLD, right ? 0 : fill);
    return at + 1;
}

static void expand(const gb_row *row, gb_system system, gb_text *to) {
    const char *at = WORDS[row->code].words;
    while (*at != '\0') {
        size_t plain = strcspn(at, "{");
        gb_text_add_bytes(to, at, plain);
        at += plain;
        if (*at == '{')
            at = expand_slot(row, at + 1, system, to);
    }
}

void gb_expand_row(const gb_row *row, gb_system system, gb_text *to) {
    gb_text words;
    gb_text_init(&words, to->arena);
    expand(row, system, &words);
    for (char *c = words.data; c != NULL && *c != '\0'; c++)
        if (*c == HOLD)
            *c = ' ';
    add_text(to, &words);
}

/* ---- lines ----------------------------------------------------------------------- */

/* How much of `text` fits into `room` columns: up to the last break before them, or a
   hard cut when one word is longer than a line. */
static size_t fitting(const char *text, size_t room) {
    size_t used = 0;
    size_t last_break = 0;
    for (size_t i = 0;; i++) {
        if (text[i] == '\0')
            return i;
        if (text[i] == ' ')
            last_break = i;
        used += ((unsigned char)text[i] & 0xC0) != 0x80;
        if (used > room)
            return last_break > 0 ? last_break : i;
    }
}

static void add_line(gb_text *to, const char *text, size_t length) {
    while (length > 0 && (text[length - 1] == HOLD || text[length - 1] == ' '))
        length--;
    size_t from = to->length;
    gb_text_add_bytes(to, text, length);
    for (size_t i = from; i < to->length; i++)
        if (to->data[i] == HOLD)
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

/* *before is the last label written in this block. What a row needs on the way goes into
   `scratch`, so that a long sheet takes no more memory than its own text. */
static void write_row(const gb_row *row, gb_system system, const char **before,
                      gb_arena *scratch, gb_text *to) {
    gb_text words;
    gb_arena_reset(scratch);
    gb_text_init(&words, scratch);
    expand(row, system, &words);
    const char *label = WORDS[row->code].label;
    size_t indent = label == NULL ? 0 : LABEL_COLUMNS;
    const char *shown = label == NULL || repeats(row, *before) ? "" : label;
    if (shown[0] != '\0')
        *before = shown;
    const char *at = gb_text_get(&words);
    do {
        size_t n = fitting(at, COLUMNS - indent);
        gb_text_add(to, shown);
        if (*at != '\0')
            gb_text_add_repeated(to, ' ', indent - strlen(shown));
        add_line(to, at, n);
        at += n;
        at += strspn(at, " ");
        shown = "";
    } while (*at != '\0');
    to->failed = to->failed || words.failed;
}

static void write_rule(gb_text *to, char c) {
    gb_text_add_repeated(to, c, COLUMNS);
    gb_text_add(to, "\n");
}

void gb_write_text(const gb_sheet *sheet, gb_text *to) {
    gb_arena scratch;
    gb_arena_init(&scratch, to->arena->supply);
    for (size_t i = 0; i < sheet->count; i++) {
        const gb_block *block = &sheet->blocks[i];
        if (i > 0)
            gb_text_add(to, "\n");
        write_rule(to, '=');
        const char *label = NULL;
        for (size_t k = 0; k < block->count; k++) {
            write_row(&block->rows[k], sheet->system, &label, &scratch, to);
            if (k == 0)
                write_rule(to, '-');
        }
    }
    gb_arena_release(&scratch);
}
