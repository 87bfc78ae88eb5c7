#include "common.h"

#include <string.h>

/* What was read is finite, and below zero only as a temperature; a length that is printed
   reads again as nearly the same. */
static void try_kind(gb_kind kind, const char *text, gb_arena *arena) {
    double si = 0;
    if (gb_parse(kind, text, &si) != GB_NO_FAULT)
        return;
    fuzz_expect(isfinite(si), "a quantity that is not finite");
    fuzz_expect(si >= 0 || kind == GB_TEMP, "a quantity below zero");
    if (kind != GB_LENGTH || si > 1e6)
        return;
    for (gb_system system = GB_US; system <= GB_METRIC; system++) {
        gb_text shown;
        double again = 0;
        gb_text_init(&shown, arena);
        gb_print_length(&shown, (gb_length){si}, system);
        fuzz_expect(gb_parse(GB_LENGTH, gb_text_get(&shown), &again) == GB_NO_FAULT,
                    "a printed length that cannot be read");
        fuzz_expect(fabs(again - si) < 0.001, "a printed length that reads as another");
    }
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    char text[200];
    gb_arena arena;
    gb_length a;
    gb_length b;
    gb_money money;
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
        if (gb_parse_money(text, decimals, &money) == GB_NO_FAULT)
            fuzz_expect(money.minor >= 0, "a price below zero");
    if (gb_parse_number(text, &number) == GB_NO_FAULT)
        fuzz_expect(isfinite(number) && number >= 0, "a number out of bounds");
    gb_arena_release(&arena);
    return 0;
}
