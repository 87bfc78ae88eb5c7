#include "read/nearest.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

/* Distances as textbooks on approximate matching give them, where swapped neighbours
   count as one change and no letter is changed twice. */
static const struct {
    const char *id;
    const char *a;
    const char *b;
    size_t most;
    size_t distance;
} PAIRS[] = {
    {"both empty", "", "", 9, 0},
    {"the same", "depth", "depth", 9, 0},
    {"from nothing", "", "abc", 9, 3},
    {"to nothing", "abc", "", 9, 3},
    {"changed", "depth", "deptk", 9, 1},
    {"changed at the front", "depth", "tepth", 9, 1},
    {"added", "depth", "deepth", 9, 1},
    {"dropped", "depth", "deph", 9, 1},
    {"dropped at the end", "depth", "dept", 9, 1},
    {"swapped", "depth", "detph", 9, 1},
    {"swapped at the front", "ab", "ba", 9, 1},
    {"swapped in the middle", "abcd", "acbd", 9, 1},
    {"two swaps", "abcd", "badc", 9, 2},
    {"swapped with one added between", "ca", "abc", 9, 3},
    {"kitten and sitting", "kitten", "sitting", 9, 3},
    {"saturday and sunday", "saturday", "sunday", 9, 3},
    {"flaw and lawn", "flaw", "lawn", 9, 2},
    {"intention and execution", "intention", "execution", 9, 5},
    {"capitals differ", "Depth", "depth", 9, 1},
    {"up to most, below", "kitten", "sitting", 4, 3},
    {"up to most, at", "kitten", "sitting", 3, 3},
    {"up to most, over", "kitten", "sitting", 2, 3},
    {"far over", "intention", "execution", 2, 3},
    {"lengths alone", "a", "abcdefgh", 2, 3},
    {"no change allowed, the same", "a", "a", 0, 0},
    {"no change allowed, another", "a", "b", 0, 1},
};

Test(nearest, distances) {
    for (size_t i = 0; i < sizeof PAIRS / sizeof PAIRS[0]; i++) {
        size_t there = gb_distance(PAIRS[i].a, PAIRS[i].b, PAIRS[i].most);
        size_t back = gb_distance(PAIRS[i].b, PAIRS[i].a, PAIRS[i].most);
        cr_expect(there == PAIRS[i].distance, "%s: %zu", PAIRS[i].id, there);
        cr_expect(back == there, "%s: %zu there, %zu back", PAIRS[i].id, there, back);
    }
}

/* Long words are no keys, but must not write past any row. */
Test(nearest, words_of_any_length) {
    static char a[20001];
    static char b[20001];
    memset(a, 'a', sizeof a - 1);
    memset(b, 'a', sizeof b - 1);
    cr_expect(gb_distance(a, b, 2) <= 3, "20000 letters");
    cr_expect(gb_distance(a, "depth", 2) == 3, "20000 letters and five");
    cr_expect(gb_distance("depth", b, 2) == 3, "five and 20000");
    a[63] = '\0';
    b[63] = '\0';
    cr_expect(gb_distance(a, b, 2) == 0, "63 letters, the same");
    b[62] = 'b';
    cr_expect(gb_distance(a, b, 2) == 1, "63 letters, one changed");
    b[62] = '\0';
    cr_expect(gb_distance(a, b, 2) == 1, "63 and 62 letters");
}

/* One edit is at a distance of one at most, whichever and wherever. */
Test(nearest, any_one_edit_is_at_most_one) {
    static const char *const WORDS[] = {"depth", "rinse_water", "never_past", "of", "x"};
    for (size_t w = 0; w < sizeof WORDS / sizeof WORDS[0]; w++) {
        const char *word = WORDS[w];
        size_t n = strlen(word);
        for (size_t i = 0; i <= n; i++) {
            char added[40] = "";
            memcpy(added, word, i);
            added[i] = 'q';
            strcpy(added + i + 1, word + i);
            cr_expect(gb_distance(word, added, 5) == 1, "%s, %s", word, added);
            if (i == n)
                continue;
            char changed[40];
            strcpy(changed, word);
            changed[i] = 'q';
            cr_expect(gb_distance(word, changed, 5) == 1, "%s, %s", word, changed);
            char dropped[40];
            strcpy(dropped, word);
            memmove(dropped + i, dropped + i + 1, n - i);
            cr_expect(gb_distance(word, dropped, 5) == 1, "%s, %s", word, dropped);
        }
    }
}

/* At most two changes, and fewer than half of the letters. */
static const struct {
    const char *id;
    const char *word;
    const char *best;
    const char *candidates[5];
} ASKED[] = {
    {"the word itself", "depth", "depth", {"dept", "depth", "kind"}},
    {"swapped letters", "dpeth", "depth", {"kind", "depth", "mix"}},
    {"a letter too few", "joint_lenght", "joint_length", {"joint_width", "joint_length"}},
    {"a plural", "layer", "layers", {"layers", "size"}},
    {"a hyphen for a stroke", "never-past", "never_past", {"least", "never_past"}},
    {"another spelling", "moisure", "moisture", {"state", "moisture"}},
    {"two changes", "overhng_sid", "overhang_side", {"overhang", "overhang_side"}},
    {"three changes are too many", "vrhng_side", NULL, {"overhang", "overhang_side"}},
    {"three letters, one changed", "mox", "mix", {"mix", "kind"}},
    {"three letters, two changed", "max", NULL, {"key"}},
    {"two letters, one changed is half", "if", NULL, {"of", "by"}},
    {"four letters, two changed are half", "site", NULL, {"lime", "wind"}},
    {"four letters, one changed", "rein", "rain", {"wind", "rain"}},
    {"five letters, two changed", "stxxe", "stone", {"block", "stone"}},
    {"nothing alike", "colour", NULL, {"depth", "kind", "mix"}},
    {"nothing offered", "depth", NULL, {NULL}},
    {"an empty word", "", NULL, {"of", "mix"}},
    {"the nearer of two, first", "stons", "stone", {"stone", "stops"}},
    {"the nearer of two, last", "overhangs", "overhang", {"overhand", "overhang"}},
    {"capitals", "Depth", "depth", {"kind", "depth"}},
};

Test(nearest, suggestions) {
    for (size_t i = 0; i < sizeof ASKED / sizeof ASKED[0]; i++) {
        gb_nearest nearest;
        gb_nearest_init(&nearest, ASKED[i].word);
        for (const char *const *c = ASKED[i].candidates; *c != NULL; c++)
            gb_nearest_offer(&nearest, *c);
        const char *got = nearest.best == NULL ? "(none)" : nearest.best;
        const char *wanted = ASKED[i].best == NULL ? "(none)" : ASKED[i].best;
        cr_expect(strcmp(got, wanted) == 0, "%s: \"%s\" for \"%s\", not \"%s\"",
                  ASKED[i].id, got, ASKED[i].word, wanted);
    }
}
