#include "gaugebox/text.h"
#include "unit/quantity/supply.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

Test(text, begins_empty) {
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    gb_text text;
    gb_text_init(&text, &arena);
    cr_expect(strcmp(gb_text_get(&text), "") == 0, "before anything is added");
    cr_expect(counting.calls == 0, "nothing is taken before it is needed");
    gb_text_add(&text, "");
    cr_expect(strcmp(gb_text_get(&text), "") == 0, "an empty text added");
    cr_expect(text.length == 0 && !text.failed, "an empty text added");
    gb_arena_release(&arena);
}

Test(text, keeps_all_that_is_added) {
    enum { ROUNDS = 20000 };
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    gb_text text;
    gb_text_init(&text, &arena);
    for (int i = 0; i < ROUNDS; i++) {
        gb_text_add(&text, "12");
        gb_text_add_char(&text, '3');
        gb_text_add_bytes(&text, "45xx", 2);
        cr_assert(text.length == (size_t)(i + 1) * 5, "round %d", i);
        cr_assert(text.data[text.length] == '\0', "round %d", i);
    }
    const char *got = gb_text_get(&text);
    for (size_t i = 0; i < text.length; i++)
        cr_assert(got[i] == "12345"[i % 5], "byte %zu", i);
    cr_expect(text.failed == false, "memory was there");
    gb_arena_release(&arena);
    cr_expect(counting.given == 0, "%d blocks kept", counting.given);
}

Test(text, two_texts_grow_side_by_side) {
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    gb_text a;
    gb_text b;
    gb_text_init(&a, &arena);
    gb_text_init(&b, &arena);
    for (int i = 0; i < 500; i++) {
        gb_text_add(&a, "a");
        gb_text_add(&b, "bb");
    }
    cr_expect(strspn(gb_text_get(&a), "a") == 500 && a.length == 500, "a");
    cr_expect(strspn(gb_text_get(&b), "b") == 1000 && b.length == 1000, "b");
    gb_arena_release(&arena);
}

Test(text, repeats_a_sign) {
    static const size_t COUNTS[] = {0, 1, 2, 80, 100000};
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    for (size_t i = 0; i < sizeof COUNTS / sizeof COUNTS[0]; i++) {
        gb_text text;
        gb_text_init(&text, &arena);
        gb_text_add(&text, "a");
        gb_text_add_repeated(&text, '=', COUNTS[i]);
        gb_text_add(&text, "b");
        const char *got = gb_text_get(&text);
        cr_expect(text.length == COUNTS[i] + 2, "%zu: %zu", COUNTS[i], text.length);
        cr_expect(strspn(got + 1, "=") == COUNTS[i], "%zu", COUNTS[i]);
        cr_expect(strcmp(got + 1 + COUNTS[i], "b") == 0, "%zu", COUNTS[i]);
    }
    gb_arena_release(&arena);
}

/* The controls are those of ISO 6429 (C0, DEL, C1), the turning signs the bidirectional
   formatting characters of Unicode. */
static const struct {
    const char *id;
    const char *typed;
    const char *clean;
} CLEANED[] = {
    {"plain", "Old mill, 4 treads", "Old mill, 4 treads"},
    {"empty", "", ""},
    {"accents and fractions", "Müller’s 4½ × ° € 石", "Müller’s 4½ × ° € 石"},
    {"an emoji", "\U0001F9F1", "\U0001F9F1"},
    {"escape", "\x1b[2Jname", "?[2Jname"},
    {"bell", "a\ab", "a?b"},
    {"tab and line ends", "a\tb\nc\r", "a?b?c?"},
    {"U+0001 and U+001F", "\x01\x1f", "??"},
    {"delete", "a\x7f", "a?"},
    {"C1, first and last", "\xc2\x80 \xc2\x9f", "? ?"},
    {"C1's escape to a sequence",
     "\xc2\x9b"
     "31m",
     "?31m"},
    {"a non-breaking space is none", "4\xc2\xa0in", "4\xc2\xa0in"},
    {"U+202A to U+202E", "\u202a\u202b\u202c\u202d\u202e", "?????"},
    {"U+2066 to U+2069", "\u2066\u2067\u2068\u2069", "????"},
    {"their neighbours", "\u2029\u202f\u2065\u206a", "\u2029\u202f\u2065\u206a"},
    {"half a sign at the end", "a\xe2\x80", "a\xe2\x80"},
    {"a third of a sign at the end", "a\xe2", "a\xe2"},
    {"half a C1 at the end", "a\xc2", "a\xc2"},
};

Test(text, cleans_what_users_write) {
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    for (size_t i = 0; i < sizeof CLEANED / sizeof CLEANED[0]; i++) {
        gb_text text;
        gb_text_init(&text, &arena);
        gb_text_add_clean(&text, CLEANED[i].typed);
        cr_expect(strcmp(gb_text_get(&text), CLEANED[i].clean) == 0, "%s: \"%s\"",
                  CLEANED[i].id, gb_text_get(&text));
    }
    gb_arena_release(&arena);
}

/* Adds all kinds of things; a failed text must take them in silence. */
static void add_everything(gb_text *text) {
    gb_text_add(text, "more");
    gb_text_add_bytes(text, "bytes", 5);
    gb_text_add_char(text, 'c');
    gb_text_add_repeated(text, '-', 70);
    gb_text_add_clean(text, "a\tb");
    gb_text_add_int(text, INT64_MIN);
    gb_text_add_fixed(text, 1.5, 6);
    gb_text_add_fraction(text, 4.5, 2);
}

/* Takes whole blocks, so that the next growth of a text asks the supply once more. */
static void fill(gb_arena *arena, int calls) {
    for (int i = 0; i < calls; i++)
        cr_assert(gb_arena_take(arena, 40000, 1) != NULL, "block %d", i);
}

Test(text, fails_for_good_when_memory_runs_out) {
    static char much[30000];
    memset(much, 'm', sizeof much - 1);
    for (int k = 0; k <= 20; k++) {
        counting_supply counting = {.fail_at = k};
        gb_arena arena;
        gb_arena_init(&arena, supply_of(&counting));
        gb_text text;
        gb_text_init(&text, &arena);
        if (k > 0)
            gb_text_add(&text, "kept");
        fill(&arena, k > 0 ? k - 1 : 0);
        cr_expect(text.failed == false, "fails at %d, not before", k);
        gb_text_add(&text, much);
        gb_text_add(&text, much);
        cr_expect(text.failed, "fails at %d", k);
        const char *cut = gb_text_get(&text);
        cr_expect(cut != NULL && strlen(cut) == text.length, "fails at %d", k);
        cr_expect(strncmp(cut, "kept", k > 0 ? 4 : 0) == 0, "fails at %d", k);
        counting.fail_at = NEVER_FAILS;
        size_t length = text.length;
        add_everything(&text);
        cr_expect(text.failed, "fails at %d: stays failed", k);
        cr_expect(text.length == length, "fails at %d: nothing behind the cut", k);
        gb_arena_release(&arena);
        cr_expect(counting.given == 0, "fails at %d: %d kept", k, counting.given);
    }
}
