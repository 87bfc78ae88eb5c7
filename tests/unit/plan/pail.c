/* Laws of pails that are marked. */
#include "gaugebox/pail.h"

#include "fixture.h"

#include <criterion/criterion.h>

enum { RUNS = 4000 };

static gb_pail_size cone(double bottom, double top, double height) {
    gb_pail_size pail = gb_pail_unknown();
    pail.across_bottom.m = bottom;
    pail.across_top.m = top;
    pail.height.m = height;
    return pail;
}

/* A third each: straight by its volume, straight by its width, a cone either way up. */
static gb_pail_size random_pail(fx_random *r) {
    gb_pail_size pail = gb_pail_unknown();
    size_t kind = fx_whole(r, 0, 2);
    pail.height.m = fx_between(r, 0.1, 0.6);
    if (kind == 0)
        pail.volume.m3 = fx_between(r, 0.004, 0.08);
    else
        pail.across_bottom.m = fx_between(r, 0.1, 0.5);
    if (kind == 2)
        pail.across_top.m = fx_between(r, 0.1, 0.5);
    return pail;
}

Test(pail, a_mark_gives_its_volume_back) {
    fx_random r = fx_seeded(71);
    size_t with_full = 0;
    for (size_t k = 0; k < RUNS; k++) {
        gb_pail_size pail = random_pail(&r);
        double brim = gb_pail_volume(&pail).m3;
        gb_volume volume = {fx_between(&r, 0, k % 2 == 0 ? 0.9 : 12) * brim};
        size_t full = 0;
        gb_length up = {NAN};
        cr_assert(gb_pail_mark(&pail, volume, &full, &up) == GB_OK);
        double fill = gb_pail_full().of_one * brim;
        double back = (double)full * fill + gb_pail_filled(&pail, up).m3;
        cr_assert(fx_near(back, volume.m3, 1e-9 * brim), "pail %zu", k);
        cr_assert(up.m >= 0 && up.m < pail.height.m, "below the brim");
        cr_assert(gb_pail_filled(&pail, up).m3 <= fill * (1 + 1e-9), "or the line");
        with_full += full > 0;
    }
    cr_expect(with_full > RUNS / 4, "%zu", with_full);
}

Test(pail, a_height_gives_itself_back) {
    fx_random r = fx_seeded(72);
    for (size_t k = 0; k < RUNS; k++) {
        gb_pail_size pail = random_pail(&r);
        gb_length up = {pail.height.m * fx_between(&r, 0.001, 0.7)};
        gb_volume volume = gb_pail_filled(&pail, up);
        if (volume.m3 >= gb_pail_full().of_one * gb_pail_volume(&pail).m3)
            continue;
        size_t full = 99;
        gb_length back = {NAN};
        cr_assert(gb_pail_mark(&pail, volume, &full, &back) == GB_OK);
        cr_assert(full == 0 && fx_near(back.m, up.m, 1e-9), "pail %zu: %g", k,
                  back.m - up.m);
    }
}

/* Thin slices, each a cylinder as wide as the pail is in the middle of it. */
Test(pail, a_cone_as_its_slices) {
    enum { SLICES = 4000 };
    fx_random r = fx_seeded(73);
    for (size_t k = 0; k < 100; k++) {
        double d0 = fx_between(&r, 0.1, 0.5), d1 = fx_between(&r, 0.1, 0.5);
        double h = fx_between(&r, 0.1, 0.6), sum = 0;
        gb_pail_size pail = cone(d0, d1, h);
        for (size_t i = 0; i < SLICES; i++) {
            double at = ((double)i + 0.5) / SLICES;
            double across = d0 + (d1 - d0) * at;
            sum += 3.14159265358979323846 / 4 * across * across * h / SLICES;
            gb_length up = {h * ((double)i + 1) / SLICES};
            cr_assert(fx_near(gb_pail_filled(&pail, up).m3, sum, 1e-6 * sum), "%zu", i);
        }
        cr_assert(fx_near(gb_pail_volume(&pail).m3, sum, 1e-6 * sum));
    }
}

Test(pail, straight_sides_either_way) {
    gb_pail_size wide = cone(0.3, NAN, 0.4), same = cone(0.3, 0.3, 0.4);
    gb_pail_size held = gb_pail_unknown();
    held.volume = gb_pail_volume(&wide);
    held.height.m = 0.4;
    cr_expect(fx_same(held.volume.m3, 3.14159265358979323846 * 0.09 / 4 * 0.4));
    for (double litres = 0; litres < 100; litres += 0.7) {
        gb_volume v = {litres / 1000};
        size_t full[3];
        gb_length up[3];
        cr_assert(gb_pail_mark(&wide, v, &full[0], &up[0]) == GB_OK);
        cr_assert(gb_pail_mark(&same, v, &full[1], &up[1]) == GB_OK);
        cr_assert(gb_pail_mark(&held, v, &full[2], &up[2]) == GB_OK);
        cr_expect(full[0] == full[1] && full[1] == full[2], "%g L", litres);
        cr_expect(fx_near(up[0].m, up[1].m, 1e-9) && fx_near(up[0].m, up[2].m, 1e-9));
    }
}

/* Twice as large each way holds eight times as much, twice as high; and more stands
   higher. */
Test(pail, scales_and_rises) {
    fx_random r = fx_seeded(74);
    for (size_t k = 0; k < RUNS; k++) {
        gb_pail_size pail = random_pail(&r), large = pail;
        large.volume.m3 *= 8;
        large.across_bottom.m *= 2;
        large.across_top.m *= 2;
        large.height.m *= 2;
        gb_volume v = {fx_between(&r, 0.01, 0.8) * gb_pail_volume(&pail).m3};
        size_t full;
        gb_length up, twice, more;
        cr_assert(gb_pail_mark(&pail, v, &full, &up) == GB_OK);
        cr_assert(gb_pail_mark(&large, (gb_volume){8 * v.m3}, &full, &twice) == GB_OK);
        cr_assert(gb_pail_mark(&pail, (gb_volume){1.05 * v.m3}, &full, &more) == GB_OK);
        cr_assert(fx_near(twice.m, 2 * up.m, 1e-9) && more.m > up.m, "pail %zu", k);
    }
}

/* Ten tenths of a full pail are one, with no rest, whatever rounding does to their sum.
 */
Test(pail, full_pails_leave_nothing) {
    gb_pail_size pail = cone(0.24, 0.29, 0.37);
    double fill = gb_pail_full().of_one * gb_pail_volume(&pail).m3;
    for (size_t n = 0; n < 1000; n++) {
        double sum = 0;
        for (size_t i = 0; i < 10 * n; i++)
            sum += fill / 10;
        size_t full = 9999;
        gb_length up = {NAN};
        cr_assert(gb_pail_mark(&pail, (gb_volume){sum}, &full, &up) == GB_OK);
        cr_assert(full == n && up.m == 0, "%zu: %zu and %g", n, full, up.m);
    }
}

static void expect_no_shape(const gb_pail_size *pail, const char *what) {
    size_t full = 77;
    gb_length up = {-77};
    cr_expect(gb_pail_mark(pail, (gb_volume){0.001}, &full, &up) == GB_NOT_POSITIVE, "%s",
              what);
    cr_expect(full == 77 && up.m == -77, "%s: nothing is written", what);
    cr_expect(isnan(gb_pail_filled(pail, (gb_length){0.1}).m3), "%s", what);
}

Test(pail, what_tells_no_pail) {
    gb_pail_size pail = gb_pail_unknown();
    expect_no_shape(&pail, "nothing");
    pail.volume.m3 = 0.02;
    expect_no_shape(&pail, "no height");
    cr_expect(gb_pail_volume(&pail).m3 == 0.02, "but a volume");
    pail.height.m = 0.4;
    pail.across_bottom.m = 0.3;
    expect_no_shape(&pail, "told twice");
    cr_expect(isnan(gb_pail_volume(&pail).m3));
    pail = cone(NAN, 0.3, 0.4);
    expect_no_shape(&pail, "no bottom");
    for (size_t i = 0; i < FX_BADS; i++) {
        gb_pail_size bad[] = {cone(FX_BAD[i], 0.3, 0.4), cone(0.3, 0.3, FX_BAD[i]),
                              cone(0.3, isnan(FX_BAD[i]) ? 0 : FX_BAD[i], 0.4),
                              gb_pail_unknown()};
        bad[3].volume.m3 = FX_BAD[i];
        bad[3].height.m = 0.4;
        for (size_t b = 0; b < 4; b++) {
            expect_no_shape(&bad[b], "a size that is none");
            cr_expect(isnan(gb_pail_volume(&bad[b]).m3), "%zu, %g", b, FX_BAD[i]);
        }
    }
    pail = cone(1e200, 1e200, 1e200);
    expect_no_shape(&pail, "beyond all numbers");
}

Test(pail, volumes_that_cannot_be_marked) {
    gb_pail_size pail = cone(0.2, 0.3, 0.3);
    size_t full = 77;
    gb_length up = {-77};
    for (size_t i = 0; i < FX_BADS; i++)
        if (FX_BAD[i] != 0)
            cr_expect(gb_pail_mark(&pail, (gb_volume){FX_BAD[i]}, &full, &up) ==
                          GB_NOT_POSITIVE,
                      "%g", FX_BAD[i]);
    cr_expect(gb_pail_mark(&pail, (gb_volume){1e8}, &full, &up) == GB_OVERFLOW);
    cr_expect(full == 77 && up.m == -77, "nothing is written");
    cr_expect(gb_pail_mark(&pail, (gb_volume){0}, &full, &up) == GB_OK && full == 0 &&
              up.m == 0);
    cr_expect(isnan(gb_pail_filled(&pail, (gb_length){-0.1}).m3));
    cr_expect(isnan(gb_pail_filled(&pail, (gb_length){0.31}).m3));
    cr_expect(isnan(gb_pail_filled(&pail, (gb_length){NAN}).m3));
}
