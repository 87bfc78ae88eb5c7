#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "gaugebox/sheet.h"

static const struct {
    const char *code;
    const char *label;
    const char *words;
    const char *many; /* for a count that is not one; NULL without a count */
} ROWS[] = {
#define GB_ROW(code, label, words)            {#code, label, words, NULL},
#define GB_ROW_PLURAL(code, label, one, many) {#code, label, one, many},
#include "gaugebox/rows.def"
#undef GB_ROW
};
_Static_assert(sizeof ROWS / sizeof ROWS[0] == GB_ROW_CODES, "every code has words");

/* The length of the slot {name} that opens at `at`, braces included; 0 for anything
   else. */
static size_t slot_length(const char *at) {
    size_t n = 1 + strspn(at + 1, "abcdefghijklmnopqrstuvwxyz_");
    return n > 1 && at[n] == '}' ? n + 1 : 0;
}

static bool balanced(const char *words) {
    while (*words != '\0') {
        if (*words == '}')
            return false;
        size_t n = *words == '{' ? slot_length(words) : 1;
        if (n == 0)
            return false;
        words += n;
    }
    return true;
}

Test(rows, the_check_itself_can_fail) {
    static const char *const BAD[] = {"{a",    "a}",     "{a}}",   "{{a}",   "{}",
                                      "{a b}", "{a:12}", "{a{b}}", "{a} {b", "{A}"};
    static const char *const GOOD[] = {"", "a", "{a}", "{a_b}\t>{c}", "{a_b} and {c}"};
    for (size_t i = 0; i < sizeof BAD / sizeof BAD[0]; i++)
        cr_expect(balanced(BAD[i]) == false, "%s", BAD[i]);
    for (size_t i = 0; i < sizeof GOOD / sizeof GOOD[0]; i++)
        cr_expect(balanced(GOOD[i]), "%s", GOOD[i]);
}

Test(rows, braces_are_balanced) {
    for (size_t i = 0; i < GB_ROW_CODES; i++)
        cr_expect(balanced(ROWS[i].words), "%s: %s", ROWS[i].code, ROWS[i].words);
    for (size_t i = 0; i < GB_ROW_CODES; i++)
        if (ROWS[i].many != NULL)
            cr_expect(balanced(ROWS[i].many) && strstr(ROWS[i].many, "{n}") != NULL &&
                          strstr(ROWS[i].words, "{n}") != NULL,
                      "%s: %s", ROWS[i].code, ROWS[i].many);
}

/* Labels have a column of eleven, a space behind them included. */
Test(rows, labels_fit_their_column) {
    for (size_t i = 0; i < GB_ROW_CODES; i++) {
        size_t length = ROWS[i].label == NULL ? 0 : strlen(ROWS[i].label);
        cr_expect(length <= 10, "%s: %s", ROWS[i].code, ROWS[i].label);
    }
}

/* Words are UTF-8 without control characters, some of which the writer uses itself. A tab
   parts cells, a few of them. */
Test(rows, words_are_plain) {
    for (size_t i = 0; i < GB_ROW_CODES; i++) {
        size_t tabs = 0;
        cr_expect(ROWS[i].words[0] != '\0', "%s says nothing", ROWS[i].code);
        for (const char *c = ROWS[i].words; *c != '\0'; c++) {
            cr_expect(strchr("\x7f\n\r\x01\x02", *c) == NULL, "%s", ROWS[i].code);
            tabs += *c == '\t';
        }
        cr_expect(tabs < 8, "%s: %zu cells", ROWS[i].code, tabs + 1);
    }
}

/* Columns are the table's work: words keep none by rows of spaces, but for the blanks of
   a line that is filled in by hand. */
Test(rows, no_column_is_kept_by_spaces) {
    for (size_t i = 0; i < GB_ROW_CODES; i++)
        cr_expect(i == GB_ROW_BATCH_LOG || strstr(ROWS[i].words, "   ") == NULL, "%s: %s",
                  ROWS[i].code, ROWS[i].words);
}
