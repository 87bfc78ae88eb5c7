#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "words/columns.h"

/* Widths after Unicode's East Asian Width: wide and fullwidth signs take two columns,
   marks that stand on another sign none. */
static const struct {
    const char *what;
    const char *text;
    size_t columns;
} TEXTS[] = {
    {"nothing", "", 0},
    {"plain", "damp 5 %", 8},
    {"accented, one sign", "caf\u00e9", 4},
    {"accented, with a mark of its own", "cafe\u0301", 4},
    {"two marks on one sign", "o\u0302\u0301", 1},
    {"Cyrillic", "\u0432\u043e\u0434\u0430", 4},
    {"Han", "\u6c34\u6ce5", 4},
    {"Han among plain", "a\u6c34b", 4},
    {"Hangul", "\ubb3c", 2},
    {"kana", "\u307f\u305a", 4},
    {"fullwidth letter", "\uff21", 2},
    {"beyond 16 bits", "\U00020000", 2},
    {"zero width joiner", "a\u200db", 2},
    {"Hebrew with points", "\u05e9\u05b8", 1},
    {"Devanagari with a mark above", "\u0915\u0947", 1},
    {"em dash", "\u2014", 1},
};

Test(columns, of_texts) {
    for (size_t i = 0; i < sizeof TEXTS / sizeof TEXTS[0]; i++) {
        size_t n = gb_columns(TEXTS[i].text, strlen(TEXTS[i].text));
        cr_expect(n == TEXTS[i].columns, "%s: %zu columns", TEXTS[i].what, n);
    }
}

static const struct {
    const char *what;
    const char *text;
    size_t room;
    size_t bytes;
} LINES[] = {
    {"all of it", "one two", 7, 7},
    {"up to a space", "one two", 6, 3},
    {"the last space counts", "one two three", 9, 7},
    {"a long word is cut", "onetwothree", 6, 6},
    {"a line end is an end", "one\ntwo", 80, 3},
    {"no half of a wide sign", "\u6c34\u6ce5\u6c34", 5, 6},
    {"a mark stays on its sign", "cafe\u0301s", 4, 6},
    {"at least one sign", "\u6c34", 1, 3},
    {"nothing", "", 10, 0},
};

Test(columns, what_fits_a_line) {
    for (size_t i = 0; i < sizeof LINES / sizeof LINES[0]; i++) {
        size_t n = gb_fitting(LINES[i].text, LINES[i].room);
        cr_expect(n == LINES[i].bytes, "%s: %zu bytes", LINES[i].what, n);
    }
}
