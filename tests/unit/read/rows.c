#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "gaugebox/sheet.h"

static const struct {
    const char *code;
    const char *label;
    const char *words;
} ROWS[] = {
#define GB_ROW(code, label, words) {#code, label, words},
#include "gaugebox/rows.def"
#undef GB_ROW
};
_Static_assert(sizeof ROWS / sizeof ROWS[0] == GB_ROW_CODES, "every code has words");

/* The length of the slot that opens at `at`, braces included: {name}, {name:12} or
   {name:>12}; 0 for anything else. */
static size_t slot_length(const char *at) {
    size_t n = 1 + strspn(at + 1, "abcdefghijklmnopqrstuvwxyz_");
    if (n == 1)
        return 0;
    if (at[n] == ':') {
        n += at[n + 1] == '>' ? 2 : 1;
        size_t digits = strspn(at + n, "0123456789");
        if (digits == 0 || digits > 2)
            return 0;
        n += digits;
    }
    return at[n] == '}' ? n + 1 : 0;
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
    static const char *const BAD[] = {"{a",     "a}",      "{a}}",   "{{a}",  "{}",
                                      "{a b}",  "{a:}",    "{a:>}",  "{:12}", "{a:x}",
                                      "{a{b}}", "{a:123}", "{a} {b", "{A}"};
    static const char *const GOOD[] = {"", "a", "{a}", "{a:12}", "{a_b:>9} and {c}"};
    for (size_t i = 0; i < sizeof BAD / sizeof BAD[0]; i++)
        cr_expect(balanced(BAD[i]) == false, "%s", BAD[i]);
    for (size_t i = 0; i < sizeof GOOD / sizeof GOOD[0]; i++)
        cr_expect(balanced(GOOD[i]), "%s", GOOD[i]);
}

Test(rows, braces_are_balanced) {
    for (size_t i = 0; i < GB_ROW_CODES; i++)
        cr_expect(balanced(ROWS[i].words), "%s: %s", ROWS[i].code, ROWS[i].words);
}

/* Labels have a column of eleven, a space behind them included. */
Test(rows, labels_fit_their_column) {
    for (size_t i = 0; i < GB_ROW_CODES; i++) {
        size_t length = ROWS[i].label == NULL ? 0 : strlen(ROWS[i].label);
        cr_expect(length <= 10, "%s: %s", ROWS[i].code, ROWS[i].label);
    }
}

/* Words are UTF-8 without control characters, one of which holds spaces together. */
Test(rows, words_are_plain) {
    for (size_t i = 0; i < GB_ROW_CODES; i++) {
        cr_expect(ROWS[i].words[0] != '\0', "%s says nothing", ROWS[i].code);
        for (const char *c = ROWS[i].words; *c != '\0'; c++)
            cr_expect(strchr("\x7f\t\n\r\x01", *c) == NULL, "%s", ROWS[i].code);
    }
}
