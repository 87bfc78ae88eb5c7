#include "unit/quantity/supply.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <stdalign.h>
#include <string.h>

static bool is_aligned(const void *at) {
    return (uintptr_t)at % alignof(max_align_t) == 0;
}

static bool all_zero(const unsigned char *bytes, size_t count) {
    for (size_t i = 0; i < count; i++)
        if (bytes[i] != 0)
            return false;
    return true;
}

Test(arena, every_take_is_aligned_and_zeroed) {
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    for (size_t size = 1; size <= 400; size++) {
        unsigned char *at = gb_arena_take(&arena, 1 + size % 7, size);
        cr_assert(at != NULL, "size %zu", size);
        cr_expect(is_aligned(at), "size %zu", size);
        cr_expect(all_zero(at, (1 + size % 7) * size), "size %zu", size);
        memset(at, 0xFF, (1 + size % 7) * size);
    }
    gb_arena_release(&arena);
    cr_expect(counting.given == 0, "%d blocks kept", counting.given);
}

Test(arena, takes_do_not_overlap) {
    enum { COUNT = 3000 };
    static unsigned char *at[COUNT];
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    for (size_t i = 0; i < COUNT; i++) {
        at[i] = gb_arena_take(&arena, i % 90 + 1, 1);
        cr_assert(at[i] != NULL, "take %zu", i);
        memset(at[i], (int)(i % 251), i % 90 + 1);
    }
    for (size_t i = 0; i < COUNT; i++)
        for (size_t k = 0; k < i % 90 + 1; k++)
            cr_expect(at[i][k] == i % 251, "take %zu byte %zu", i, k);
    cr_expect(counting.calls > 1, "one block cannot hold all of them");
    gb_arena_release(&arena);
    cr_expect(counting.given == 0, "%d blocks kept", counting.given);
}

Test(arena, big_blocks_are_given_whole) {
    static const size_t SIZES[] = {32767, 32768, 32769, 65536, 1000003, 16777216};
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    for (size_t i = 0; i < sizeof SIZES / sizeof SIZES[0]; i++) {
        unsigned char *at = gb_arena_take(&arena, SIZES[i], 1);
        cr_assert(at != NULL, "%zu bytes", SIZES[i]);
        cr_expect(all_zero(at, SIZES[i]), "%zu bytes", SIZES[i]);
        memset(at, 0xFF, SIZES[i]);
        unsigned char *small = gb_arena_take(&arena, 1, 1);
        cr_expect(small != NULL && *small == 0, "behind %zu bytes", SIZES[i]);
    }
    gb_arena_release(&arena);
    cr_expect(counting.given == 0, "%d blocks kept", counting.given);
}

Test(arena, sizes_that_overflow_are_refused) {
    static const struct {
        const char *id;
        size_t count;
        size_t size;
    } ROWS[] = {
        {"product wraps to zero", SIZE_MAX / 2 + 1, 2},
        {"product wraps to little", SIZE_MAX / 2 + 9, 2},
        {"both large", SIZE_MAX, SIZE_MAX},
        {"count alone", SIZE_MAX, 1},
        {"size alone", 1, SIZE_MAX},
        {"rounding up would wrap", SIZE_MAX - 3, 1},
        {"the block's head would wrap", SIZE_MAX - 40, 1},
        {"squares", (size_t)1 << 32, (size_t)1 << 32},
    };
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        counting_supply counting = {.fail_at = NEVER_FAILS};
        gb_arena arena;
        gb_arena_init(&arena, supply_of(&counting));
        void *at = gb_arena_take(&arena, ROWS[i].count, ROWS[i].size);
        cr_expect(at == NULL, "%s", ROWS[i].id);
        cr_expect(counting.calls == 0, "%s: asked for %zu bytes", ROWS[i].id,
                  counting.most);
        gb_arena_release(&arena);
    }
}

Test(arena, nothing_is_no_overflow) {
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    cr_expect(gb_arena_take(&arena, 0, 8) != NULL, "no items");
    cr_expect(gb_arena_take(&arena, 8, 0) != NULL, "items of no size");
    gb_arena_release(&arena);
    cr_expect(counting.given == 0, "%d blocks kept", counting.given);
}

/* Blocks of their own, so that the k-th take is the k-th call. */
Test(arena, a_supply_that_fails_at_the_kth_call) {
    enum { BIG = 40000 };
    for (int k = 0; k <= 20; k++) {
        counting_supply counting = {.fail_at = k};
        gb_arena arena;
        gb_arena_init(&arena, supply_of(&counting));
        for (int i = 0; i < 25; i++) {
            void *at = gb_arena_take(&arena, BIG, 1);
            cr_expect(i < k ? at != NULL : at == NULL, "fails at %d, take %d", k, i);
        }
        cr_expect(gb_arena_copy(&arena, "text") == NULL, "fails at %d", k);
        counting.fail_at = NEVER_FAILS;
        cr_expect(gb_arena_take(&arena, BIG, 1) != NULL, "better after %d", k);
        cr_expect(counting.given == k + 1, "fails at %d: %d given", k, counting.given);
        gb_arena_release(&arena);
        cr_expect(counting.given == 0, "fails at %d: %d kept", k, counting.given);
    }
}

Test(arena, is_ready_again_after_its_release) {
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    gb_arena_release(&arena);
    cr_expect(counting.calls == 0, "an empty arena takes nothing");
    for (int i = 0; i < 3; i++) {
        cr_expect(gb_arena_take(&arena, 10, 10) != NULL, "round %d", i);
        gb_arena_release(&arena);
        cr_expect(counting.given == 0, "round %d: %d kept", i, counting.given);
    }
}

Test(arena, a_reset_keeps_one_block) {
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    gb_arena_reset(&arena);
    cr_expect(counting.calls == 0, "nothing to keep");
    for (int round = 0; round < 5; round++) {
        for (int i = 0; i < 8; i++) {
            unsigned char *at = gb_arena_take(&arena, 20000, 1);
            cr_assert(at != NULL, "round %d", round);
            cr_expect(all_zero(at, 20000), "round %d, take %d", round, i);
            memset(at, 0xFF, 20000);
        }
        cr_expect(counting.given > 1, "round %d", round);
        gb_arena_reset(&arena);
        cr_expect(counting.given == 1, "round %d: %d kept", round, counting.given);
    }
    int calls = counting.calls;
    cr_expect(gb_arena_take(&arena, 20000, 1) != NULL, "from the block that was kept");
    cr_expect(counting.calls == calls, "asked for another");
    gb_arena_release(&arena);
    cr_expect(counting.given == 0, "%d blocks kept", counting.given);
}

Test(arena, copies_texts) {
    static const char *const TEXTS[] = {"", "a", "4½ in",
                                        "a text of some length, or more"};
    counting_supply counting = {.fail_at = NEVER_FAILS};
    gb_arena arena;
    gb_arena_init(&arena, supply_of(&counting));
    for (size_t i = 0; i < sizeof TEXTS / sizeof TEXTS[0]; i++) {
        char *copy = gb_arena_copy(&arena, TEXTS[i]);
        cr_assert(copy != NULL && copy != TEXTS[i], "\"%s\"", TEXTS[i]);
        cr_expect(strcmp(copy, TEXTS[i]) == 0, "\"%s\"", TEXTS[i]);
    }
    gb_arena_release(&arena);
}
