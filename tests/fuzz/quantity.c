#include "common.h"

#include <string.h>

/* A printed quantity reads again, and as nearly the same. */
static void expect_same(const gb_text *shown, gb_kind kind, double si, double slack) {
    double again = 0;
    fuzz_expect(gb_parse(kind, gb_text_get(shown), &again) == GB_NO_FAULT,
                "a printed quantity that cannot be read");
    fuzz_expect(fabs(again - si) <= slack, "a printed quantity that reads as another");
}

static void print_again(gb_kind kind, double si, gb_arena *arena) {
    for (gb_system system = GB_US; system <= GB_METRIC; system++) {
        gb_text shown;
        gb_text_init(&shown, arena);
        if (kind == GB_LENGTH && si <= 1e6) {
            gb_print_length(&shown, (gb_length){si}, system);
            expect_same(&shown, kind, si, 0.001);
        } else if (kind == GB_TEMP && fabs(si) <= 1e6) {
            gb_print_temp(&shown, (gb_temp){si}, system);
            expect_same(&shown, kind, si, 0.051);
        } else if (kind == GB_DURATION && si <= 1e8) {
            gb_print_duration(&shown, (gb_duration){si});
            expect_same(&shown, kind, si, si < 59 ? 0.501 : 30.001);
        }
    }
}

/* What was read is finite, and below zero only as a temperature. */
static void try_kind(gb_kind kind, const char *text, gb_arena *arena) {
    double si = 0;
    if (gb_parse(kind, text, &si) != GB_NO_FAULT)
        return;
    fuzz_expect(isfinite(si), "a quantity that is not finite");
    fuzz_expect(si >= 0 || kind == GB_TEMP, "a quantity below zero");
    print_again(kind, si, arena);
}

/* A price of up to 15 digits, all that are read, prints and reads again as the same. */
static void try_money(const char *text, int decimals, gb_arena *arena) {
    static const int64_t MOST = 1000000000000000;
    gb_money money;
    gb_money again = {-1};
    if (gb_parse_money(text, decimals, &money) != GB_NO_FAULT)
        return;
    fuzz_expect(money.minor >= 0, "a price below zero");
    if (money.minor >= MOST)
        return;
    gb_text shown;
    gb_text_init(&shown, arena);
    gb_print_money(&shown, money, decimals);
    fuzz_expect(gb_parse_money(gb_text_get(&shown), decimals, &again) == GB_NO_FAULT &&
                    again.minor == money.minor,
                "a printed price that reads as another");
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    char text[200];
    gb_arena arena;
    gb_length a;
    gb_length b;
    double number = 0;
    if (count >= sizeof text)
        return 0;
    memcpy(text, bytes, count);
    text[count] = '\0';
    gb_arena_init(&arena, gb_malloc_supply());
    for (gb_kind kind = 0; kind < GB_KINDS; kind++)
        try_kind(kind, text, &arena);
    if (gb_parse_size(text, &a, &b) == GB_NO_FAULT)
        fuzz_expect(a.m >= 0 && b.m >= 0, "a size below zero");
    for (int decimals = 0; decimals <= 3; decimals++)
        try_money(text, decimals, &arena);
    if (gb_parse_number(text, &number) == GB_NO_FAULT)
        fuzz_expect(isfinite(number) && number >= 0, "a number out of bounds");
    gb_arena_release(&arena);
    return 0;
}
