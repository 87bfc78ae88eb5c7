#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "write/figures.h"

/* The count that goes with a word is what is shown, rounded up. */
static const struct {
    const char *what;
    gb_show show;
    double value;
    unsigned long count;
} COUNTS[] = {
    {"one bag", GB_SHOW_FRACTION, 1, 1},
    {"5/8 bag", GB_SHOW_FRACTION, 0.625, 1},
    {"shown as 1", GB_SHOW_FRACTION, 1.001, 1},
    {"1-1/32 bags", GB_SHOW_FRACTION, 1.03125, 2},
    {"two bags", GB_SHOW_FRACTION, 2, 2},
    {"4-1/2 buckets", GB_SHOW_QUARTERS, 4.5, 5},
    {"shown as 1 bucket", GB_SHOW_QUARTERS, 1.1, 1},
    {"1-1/4 buckets", GB_SHOW_QUARTERS, 1.25, 2},
    {"nothing", GB_SHOW_FRACTION, 0, 0},
    {"not stated", GB_SHOW_FRACTION, NAN, 0},
};

Test(plurals, go_with_what_is_shown) {
    for (size_t i = 0; i < sizeof COUNTS / sizeof COUNTS[0]; i++) {
        gb_figure n = {.name = "n", .show = COUNTS[i].show, .value = COUNTS[i].value};
        unsigned long count = gb_figure_count(&n);
        cr_expect(count == COUNTS[i].count, "%s: %lu", COUNTS[i].what, count);
    }
}
