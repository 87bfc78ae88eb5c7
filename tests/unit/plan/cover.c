/* What one bag covers, and what a volume of wet mix holds. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

static const gb_mass OWN_PACK = {NAN};
static const gb_mix *const MIXES[] = {&FX_BED, &FX_SLURRY, &FX_BLEND, &FX_LIME_MORTAR};
static const gb_system SYSTEMS[] = {GB_US, GB_METRIC};

/* What the takeoff makes of a piece with exactly what one bag covers. */
static double taken_off(const gb_cover *at, gb_volume yield) {
    double depth = at->depth.m;
    gb_layer layer = {.kind = at->kind, .depths_m = &depth, .depth_count = 1};
    gb_piece piece = {.count = 1, .layers = &layer, .layer_count = 1};
    if (gb_is_joint(at->kind)) {
        layer.joint_width = at->width;
        layer.joint_length = gb_joint_covered(yield, at);
    } else {
        piece.shape.width.m = 0.5;
        piece.shape.front.m = gb_area_covered(yield, at).m2 / 0.5;
    }
    gb_take t = {0};
    cr_assert(gb_take_off(&piece, &layer, &t) == GB_OK, "kind %d", at->kind);
    return t.net.m3;
}

Test(cover, what_a_bag_covers_takes_one_bag) {
    for (size_t s = 0; s < ROWS_OF(SYSTEMS); s++)
        for (size_t i = 0; i < ROWS_OF(MIXES); i++) {
            gb_recipe r;
            const gb_cover *list = NULL;
            size_t count = gb_common_covers(SYSTEMS[s], &list);
            cr_assert(gb_make_recipe(MIXES[i], NULL, false, OWN_PACK, &r) == GB_OK);
            for (size_t k = 0; k < count; k++)
                cr_expect(fx_same(taken_off(&list[k], r.yield), r.yield.m3),
                          "%s, size %zu of system %d", MIXES[i]->id, k, SYSTEMS[s]);
        }
}

/* In inches and in millimetres, by their definitions; the width is 0 where there is none.
 */
static const struct {
    gb_layer_kind kind;
    double us_width, us_depth, metric_width, metric_depth;
} SIZES[] = {
    {GB_BED, 0, 3.0 / 4, 0, 20},
    {GB_BED, 0, 1, 0, 25},
    {GB_BED, 0, 5.0 / 4, 0, 30},
    {GB_BED, 0, 3.0 / 2, 0, 40},
    {GB_BED, 0, 2, 0, 50},
    {GB_SLURRY, 0, 1.0 / 16, 0, 2},
    {GB_SLURRY, 0, 1.0 / 8, 0, 3},
    {GB_JOINT, 3.0 / 8, 1, 10, 25},
    {GB_POINTING, 3.0 / 8, 3.0 / 4, 10, 20},
    {GB_SLAB, 0, 2, 0, 50},
    {GB_SLAB, 0, 4, 0, 100},
    {GB_SLAB, 0, 6, 0, 150},
};

static void expect_size(const gb_cover *at, double width_m, double depth_m, size_t row) {
    cr_expect(at->kind == SIZES[row].kind, "row %zu", row);
    cr_expect(fx_same(at->depth.m, depth_m), "row %zu: %.5f m deep", row, at->depth.m);
    if (width_m > 0)
        cr_expect(fx_same(at->width.m, width_m), "row %zu: %.5f m wide", row,
                  at->width.m);
    else
        cr_expect(isnan(at->width.m), "row %zu covers an area", row);
}

Test(cover, common_sizes) {
    const gb_cover *us = NULL;
    const gb_cover *metric = NULL;
    cr_assert(gb_common_covers(GB_US, &us) == ROWS_OF(SIZES));
    cr_assert(gb_common_covers(GB_METRIC, &metric) == ROWS_OF(SIZES));
    for (size_t i = 0; i < ROWS_OF(SIZES); i++) {
        expect_size(&us[i], SIZES[i].us_width * IN, SIZES[i].us_depth * IN, i);
        expect_size(&metric[i], SIZES[i].metric_width / 1000,
                    SIZES[i].metric_depth / 1000, i);
    }
}

/* A stiff 1 : 4 bag makes 320 LB / (1.07 x 1400) m3: at 1-1/4 in 41.06 ft2 / 1.25. */
Test(cover, by_hand) {
    gb_recipe r;
    cr_assert(gb_make_recipe(&FX_BED, NULL, false, OWN_PACK, &r) == GB_OK);
    double ft3 = 320 * LB / (1.07 * 1400) / FT3;
    gb_cover bed = {GB_BED, {NAN}, {1.25 * IN}};
    gb_cover joint = {GB_JOINT, {0.375 * IN}, {1.0 * IN}};
    cr_expect(fx_same(gb_area_covered(r.yield, &bed).m2 / FT2, ft3 * 12 / 1.25));
    cr_expect(fx_same(gb_joint_covered(r.yield, &joint).m / FT, ft3 * 144 / 0.375));
    cr_expect(fx_same(gb_compared_volume(GB_US).m3, YD3));
    cr_expect(gb_compared_volume(GB_METRIC).m3 == 1.0);
}

Test(cover, masses_in_a_volume_of_wet_mix_are_those_of_the_bags_it_takes) {
    for (size_t i = 0; i < ROWS_OF(MIXES); i++)
        for (size_t s = 0; s < ROWS_OF(SYSTEMS); s++) {
            gb_recipe r;
            cr_assert(gb_make_recipe(MIXES[i], NULL, false, OWN_PACK, &r) == GB_OK);
            double bags = gb_compared_volume(SYSTEMS[s]).m3 / r.yield.m3;
            double sum = 0;
            for (size_t k = 0; k < MIXES[i]->part_count; k++) {
                double kg_m3 = gb_in_wet(r.part[k], r.yield).kg_m3;
                cr_expect(fx_same(kg_m3 * gb_compared_volume(SYSTEMS[s]).m3,
                                  bags * r.part[k].kg),
                          "%s, part %zu", MIXES[i]->id, k);
                sum += kg_m3;
            }
            double dry = gb_in_wet(r.dry, r.yield).kg_m3;
            cr_expect(MIXES[i]->part_count == 0 || fx_same(sum, dry), "%s: parts are all",
                      MIXES[i]->id);
            cr_expect(fx_same(dry * r.yield.m3, r.dry.kg), "%s: one bag", MIXES[i]->id);
        }
}
