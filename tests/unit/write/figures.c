/* How figures are shown: in both kinds of units, and which way they are rounded. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "gaugebox/gaugebox.h"
#include "write/figures.h"

#define FT  0.3048
#define LB  0.45359237
#define YD3 (27 * FT * FT * FT)

static const struct {
    gb_show show;
    gb_rounding rounding;
    double value;
    const char *us;
    const char *metric;
} SHOWN[] = {
    /* eighths are fractions, what is none keeps its decimals */
    {GB_SHOW_PARTS, GB_NEAREST, 1, "1", "1"},
    {GB_SHOW_PARTS, GB_NEAREST, 4.5, "4-1/2", "4-1/2"},
    {GB_SHOW_PARTS, GB_NEAREST, 0.25, "1/4", "1/4"},
    {GB_SHOW_PARTS, GB_NEAREST, 0.125, "1/8", "1/8"},
    {GB_SHOW_PARTS, GB_NEAREST, 0.1, "0.1", "0.1"},
    {GB_SHOW_PARTS, GB_NEAREST, 17.36, "17.36", "17.36"},
    {GB_SHOW_PARTS, GB_NEAREST, 1.0 / 3, "0.333", "0.333"},
    {GB_SHOW_PARTS, GB_NEAREST, 80, "80", "80"},
    {GB_SHOW_RUN, GB_NEAREST, 100 * FT, "100.0 ft", "30.5 m"},
    {GB_SHOW_RUN, GB_NEAREST, 0.02, "0.1 ft", "0.0 m"},
    {GB_SHOW_DENSITY, GB_NEAREST, 27.471 * LB / (FT * FT * FT), "27.5 lb/ft3",
     "440 kg/m3"},
    {GB_SHOW_DENSITY, GB_NEAREST, 2118, "132 lb/ft3", "2118 kg/m3"},
    {GB_SHOW_PRESSURE, GB_NEAREST, 12e6, "1740 psi", "12.0 MPa"},
    {GB_SHOW_PRESSURE, GB_NEAREST, 3500 * 4.4482216152605 / (0.0254 * 0.0254), "3500 psi",
     "24.1 MPa"},
    {GB_SHOW_DENSITY, GB_NEAREST, 73.54, "4.6 lb/ft3", "73.5 kg/m3"},
    {GB_SHOW_NUMBER, GB_NEAREST, 0.4575, "0.46", "0.46"},
    {GB_SHOW_NUMBER, GB_DOWN, 0.4575, "0.45", "0.45"},
    {GB_SHOW_NUMBER, GB_DOWN, 0.29, "0.29", "0.29"}, /* 0.29 / 0.01 is under 29 */
    {GB_SHOW_NUMBER, GB_UP, 0.4511, "0.46", "0.46"},
    {GB_SHOW_COUNT, GB_NEAREST, 7, "7", "7"},
    /* a rate as it was written, a computed share with one decimal */
    {GB_SHOW_SHARE, GB_NEAREST, 0.08875, "8.875 %", "8.875 %"},
    {GB_SHOW_SHARE, GB_NEAREST, 1.0 / 6, "16.7 %", "16.7 %"},
    {GB_SHOW_SHARE, GB_DOWN, 0.16999, "16.9 %", "16.9 %"},
    {GB_SHOW_SHARE, GB_DOWN, 0.17, "17 %", "17 %"},
    {GB_SHOW_PACK, GB_NEAREST, YD3, "1 yd3", "764.6 L"},
    {GB_SHOW_PACK, GB_NEAREST, 1, "35.31 ft3", "1 m3"},
};

static void expect_shown(size_t i, gb_system system, const char *wanted) {
    gb_arena arena;
    gb_text text;
    gb_figure f = {
        .show = SHOWN[i].show, .rounding = SHOWN[i].rounding, .value = SHOWN[i].value};
    gb_arena_init(&arena, gb_malloc_supply());
    gb_text_init(&text, &arena);
    gb_show_figure(&f, system, &text);
    cr_expect(strcmp(gb_text_get(&text), wanted) == 0, "row %zu: '%s', not '%s'", i,
              gb_text_get(&text), wanted);
    gb_arena_release(&arena);
}

Test(figures, as_shown) {
    for (size_t i = 0; i < sizeof SHOWN / sizeof SHOWN[0]; i++) {
        expect_shown(i, GB_US, SHOWN[i].us);
        expect_shown(i, GB_METRIC, SHOWN[i].metric);
    }
}
