/* The recipe of one bag: masses, water, yield, labels, and what cannot be. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <stddef.h>
#include <string.h>

#include "fixture.h"

static const gb_mass OWN_PACK = {NAN}; /* the material's own bag */

static gb_label label_of(double bag_kg, double yield_m3) {
    return (gb_label){.bag = {bag_kg}, .yield = {yield_m3}};
}

/* Masses in lb, for one 94 lb bag (1 ft3) of cement, 40 lb of lime and 80 lb of sand to
   the ft3. Water W = 0.22 C + 0.12 S + 1.0 L, stiff 0.65 of it. Volumes in m3: by solids
   (C/3.15 + L/2.3 + S/2.65 + W) LB / 1000 / 0.95, by sand S LB / (1.07 x 1400). */
static const struct {
    const char *id;
    double c, l, s; /* parts */
    gb_consistency consistency;
    double lime, sand, water;
    gb_regime regime;
    double yield;
} SITE_MIXES[] = {
    /* W = 0.65 (20.68 + 38.4) = 38.402; solids 0.09024 < sand 0.09690 */
    {"1:4 stiff", 1, 0, 4, GB_STIFF, 0, 320, 38.402, GB_BY_SAND,
     320 * LB / (1.07 * 1400)},
    /* W = 20.68 + 38.4 = 59.08; solids 0.10011 > sand 0.09690 */
    {"1:4 plastic", 1, 0, 4, GB_PLASTIC, 0, 320, 59.08, GB_BY_SOLIDS,
     (94 / 3.15 + 320 / 2.65 + 59.08) * LB / 1000 / 0.95},
    /* W = 20.68 + 9.6 = 30.28; solids 0.04312 > sand 0.02422 */
    {"1:1 plastic", 1, 0, 1, GB_PLASTIC, 0, 80, 30.28, GB_BY_SOLIDS,
     (94 / 3.15 + 80 / 2.65 + 30.28) * LB / 1000 / 0.95},
    /* W = 20.68 + 57.6 + 40 = 118.28; solids 0.16551 > sand 0.14534 */
    {"1:1:6 plastic", 1, 1, 6, GB_PLASTIC, 40, 480, 118.28, GB_BY_SOLIDS,
     (94 / 3.15 + 40 / 2.3 + 480 / 2.65 + 118.28) * LB / 1000 / 0.95},
    /* W = 0.65 (20.68 + 76.8) = 63.362; solids 0.17247 < sand 0.19379 */
    {"1:8 stiff", 1, 0, 8, GB_STIFF, 0, 640, 63.362, GB_BY_SAND,
     640 * LB / (1.07 * 1400)},
    /* twice the parts is the same mix */
    {"2:8 stiff", 2, 0, 8, GB_STIFF, 0, 320, 38.402, GB_BY_SAND,
     320 * LB / (1.07 * 1400)},
};

Test(recipe, site_mixes) {
    for (size_t i = 0; i < ROWS_OF(SITE_MIXES); i++) {
        const char *id = SITE_MIXES[i].id;
        fx_mix m;
        gb_recipe r = {0};
        fx_site_mix(&m, SITE_MIXES[i].c, SITE_MIXES[i].l, SITE_MIXES[i].s,
                    SITE_MIXES[i].consistency);
        cr_assert(gb_make_recipe(&m.mix, NULL, false, OWN_PACK, &r) == GB_OK, "%s", id);
        cr_expect(fx_same(r.bag.kg / LB, 94) && fx_same(r.part[0].kg / LB, 94), "%s", id);
        cr_expect(fx_same(r.sand.kg / LB, SITE_MIXES[i].sand), "%s: sand", id);
        cr_expect(fx_same(r.binder.kg / LB, 94 + SITE_MIXES[i].lime), "%s: binder", id);
        cr_expect(fx_same(r.dry.kg / LB, 94 + SITE_MIXES[i].lime + SITE_MIXES[i].sand),
                  "%s: dry", id);
        cr_expect(fx_same(r.water_usual.kg / LB, SITE_MIXES[i].water), "%s: %.4f lb", id,
                  r.water_usual.kg / LB);
        cr_expect(fx_same(r.water_least.kg / LB, 0.85 * SITE_MIXES[i].water), "%s", id);
        cr_expect(fx_same(r.water_most.kg / LB, 1.12 * SITE_MIXES[i].water), "%s", id);
        cr_expect(fx_same(r.yield.m3, SITE_MIXES[i].yield), "%s: %.5f m3", id,
                  r.yield.m3);
        cr_expect(r.regime == SITE_MIXES[i].regime, "%s: regime %d", id, r.regime);
        cr_expect(r.route == GB_COMPUTED, "%s: route %d", id, r.route);
    }
}

/* 0.40, 0.45 and 0.50 of 94 lb; no air: (94 / 3.15 + 42.3) LB / 1000 = 0.03272 m3. */
Test(recipe, water_by_binder) {
    gb_recipe r = {0};
    cr_assert(gb_make_recipe(&FX_SLURRY, NULL, false, OWN_PACK, &r) == GB_OK);
    cr_expect(fx_same(r.water_least.kg / LB, 37.6));
    cr_expect(fx_same(r.water_usual.kg / LB, 42.3));
    cr_expect(fx_same(r.water_most.kg / LB, 47.0));
    cr_expect(fx_near(r.yield.m3, 0.03272, 0.000005), "%.6f", r.yield.m3);
    cr_expect(r.regime == GB_BY_SOLIDS && r.sand.kg == 0);
}

/* The binder is cement and lime: 0.45 of 94 + 40 = 60.3 lb. */
Test(recipe, lime_is_binder) {
    fx_mix m;
    gb_recipe r = {0};
    fx_site_mix(&m, 1, 1, 3, GB_PLASTIC);
    m.mix.water = FX_SLURRY.water;
    cr_assert(gb_make_recipe(&m.mix, NULL, false, OWN_PACK, &r) == GB_OK);
    cr_expect(fx_same(r.water_usual.kg / LB, 60.3), "%.4f", r.water_usual.kg / LB);
}

/* Coarse stone is neither binder nor sand, and asks for no water by demand. */
Test(recipe, coarse_stone_counts_as_solid_only) {
    fx_mix m;
    gb_recipe r = {0};
    fx_site_mix(&m, 1, 1, 3, GB_PLASTIC);
    m.materials[1].kind = GB_COARSE; /* 40 lb of gravity 2.3 */
    cr_assert(gb_make_recipe(&m.mix, NULL, false, OWN_PACK, &r) == GB_OK);
    cr_expect(fx_same(r.binder.kg / LB, 94) && fx_same(r.sand.kg / LB, 240));
    cr_expect(fx_same(r.dry.kg / LB, 374));
    cr_expect(fx_same(r.water_usual.kg / LB, 0.22 * 94 + 0.12 * 240));
    double solids = 94 / 3.15 + 40 / 2.3 + 240 / 2.65 + 0.22 * 94 + 0.12 * 240;
    cr_expect(fx_same(r.yield.m3, solids * LB / 1000 / 0.95), "%.6f", r.yield.m3);
}

/* 4-1/2, 5 and 6 qt of water at 1 kg/L; a bag of 80 lb makes what the label says. */
Test(recipe, by_label) {
    gb_recipe r = {0};
    cr_assert(gb_make_recipe(&FX_BLEND, NULL, false, OWN_PACK, &r) == GB_OK);
    cr_expect(fx_same(r.bag.kg / LB, 80) && fx_same(r.dry.kg / LB, 80));
    cr_expect(fx_same(r.yield.m3 / FT3, 0.66));
    cr_expect(fx_same(r.water_least.kg, 4500 * QT));
    cr_expect(fx_same(r.water_usual.kg, 5000 * QT));
    cr_expect(fx_same(r.water_most.kg, 6000 * QT));
    cr_expect(r.route == GB_LABELLED && r.regime == GB_BY_LABEL && r.sand.kg == 0);
}

/* What a user states replaces ours, in proportion to the bag in use. */
static const struct {
    const char *id;
    const gb_mix *mix;
    double own_bag, own_yield; /* lb, ft3 */
    bool measured;
    double pack; /* lb; NaN: the material's own */
    double bag, yield;
    gb_route route;
} OWN[] = {
    {"blend, another bag", &FX_BLEND, 50, 0.40, false, NAN, 50, 0.40, GB_LABELLED},
    {"blend, measured", &FX_BLEND, 80, 0.60, true, NAN, 80, 0.60, GB_MEASURED},
    {"bed, its own bag", &FX_BED, 94, 3.4, true, NAN, 94, 3.4, GB_MEASURED},
    {"bed, measured by the half bag", &FX_BED, 47, 1.7, true, NAN, 94, 3.4, GB_MEASURED},
    {"bed, used by the half bag", &FX_BED, 94, 3.4, true, 47, 47, 1.7, GB_MEASURED},
    {"bed, stated", &FX_BED, 94, 3.4, false, NAN, 94, 3.4, GB_LABELLED},
    {"bed, third of a bag", &FX_BED, 30, 1.1, true, 90, 90, 3.3, GB_MEASURED},
};

Test(recipe, the_users_own_yield) {
    for (size_t i = 0; i < ROWS_OF(OWN); i++) {
        gb_label own = label_of(OWN[i].own_bag * LB, OWN[i].own_yield * FT3);
        gb_recipe r = {0};
        gb_status status = gb_make_recipe(OWN[i].mix, &own, OWN[i].measured,
                                          (gb_mass){OWN[i].pack * LB}, &r);
        cr_expect(status == GB_OK, "%s: status %d", OWN[i].id, status);
        cr_expect(fx_same(r.bag.kg / LB, OWN[i].bag), "%s: bag", OWN[i].id);
        cr_expect(fx_same(r.yield.m3 / FT3, OWN[i].yield), "%s: %.4f", OWN[i].id,
                  r.yield.m3 / FT3);
        cr_expect(r.route == OWN[i].route && r.regime == GB_BY_LABEL, "%s", OWN[i].id);
    }
}

Test(recipe, half_a_bag_is_half_of_everything) {
    gb_recipe one = {0}, half = {0};
    cr_assert(gb_make_recipe(&FX_BED, NULL, false, OWN_PACK, &one) == GB_OK);
    cr_assert(gb_make_recipe(&FX_BED, NULL, false, (gb_mass){47 * LB}, &half) == GB_OK);
    cr_expect(fx_same(2 * half.part[0].kg, one.part[0].kg));
    cr_expect(fx_same(2 * half.sand.kg, one.sand.kg));
    cr_expect(fx_same(2 * half.water_usual.kg, one.water_usual.kg));
    cr_expect(fx_same(2 * half.yield.m3, one.yield.m3));
}

/* Fresh mass over volume must lie in 1200 to 2700 kg/m3, both ends included. The blend:
   80 lb and 5 qt. */
static const double FRESH_KG = 80 * LB + 5000 * QT; /* 41.02 */
static const struct {
    const char *id;
    double yield; /* m3 */
    gb_status status;
} FRESH[] = {
    {"2 ft3 from 80 lb", 2 * FT3, GB_IMPOSSIBLE},     /* 724 kg/m3 */
    {"0.2 ft3 from 80 lb", 0.2 * FT3, GB_IMPOSSIBLE}, /* 7243 kg/m3 */
    {"0.66 ft3 from 80 lb", 0.66 * FT3, GB_OK},       /* 2195 kg/m3 */
    {"1200 kg/m3", FRESH_KG / 1200, GB_OK},
    {"1199 kg/m3", FRESH_KG / 1199, GB_IMPOSSIBLE},
    {"2700 kg/m3", FRESH_KG / 2700, GB_OK},
    {"2701 kg/m3", FRESH_KG / 2701, GB_IMPOSSIBLE},
};

Test(recipe, a_mass_and_a_volume_must_go_together) {
    for (size_t i = 0; i < ROWS_OF(FRESH); i++) {
        gb_label label = label_of(80 * LB, FRESH[i].yield);
        gb_mix mix = FX_BLEND;
        mix.label = label;
        gb_recipe r = {0};
        cr_expect(gb_make_recipe(&mix, NULL, false, OWN_PACK, &r) == FRESH[i].status,
                  "%s, in the table", FRESH[i].id);
        cr_expect(gb_make_recipe(&FX_BLEND, &label, true, OWN_PACK, &r) ==
                      FRESH[i].status,
                  "%s, measured", FRESH[i].id);
    }
    /* 452.4 lb of 1:4 in 7 ft3 is 1035 kg/m3; in 2.6 ft3, 2787 kg/m3 */
    gb_recipe r = {0};
    gb_label wide = label_of(94 * LB, 7 * FT3), tight = label_of(94 * LB, 2.6 * FT3);
    cr_expect(gb_make_recipe(&FX_BED, &wide, true, OWN_PACK, &r) == GB_IMPOSSIBLE);
    cr_expect(gb_make_recipe(&FX_BED, &tight, true, OWN_PACK, &r) == GB_IMPOSSIBLE);
}

static void expect_refused(const gb_mix *mix, const gb_label *own, gb_mass pack,
                           const char *id, double bad) {
    gb_recipe r, before;
    memset(&r, 0x5a, sizeof r);
    memcpy(&before, &r, sizeof r);
    gb_status status = gb_make_recipe(mix, own, true, pack, &r);
    cr_expect(status == GB_NOT_POSITIVE, "%s of %g: status %d", id, bad, status);
    cr_expect(memcmp(&r, &before, sizeof r) == 0, "%s of %g: written", id, bad);
}

#define FIELD(path)                                                                      \
    { #path, offsetof(fx_mix, path) }
static const struct {
    const char *id;
    size_t offset;
} FIELDS[] = {
    FIELD(parts[0].volume),         FIELD(parts[1].volume),
    FIELD(parts[2].volume),         FIELD(materials[0].bulk.kg_m3),
    FIELD(materials[1].bulk.kg_m3), FIELD(materials[2].bulk.kg_m3),
    FIELD(materials[0].gravity),    FIELD(materials[1].gravity),
    FIELD(materials[2].gravity),    FIELD(materials[2].dry_loose.kg_m3),
    FIELD(mix.water.least.of_one),  FIELD(mix.water.usual.of_one),
    FIELD(mix.water.most.of_one),
};

Test(recipe, refuses_bad_site_mixes) {
    for (size_t i = 0; i < ROWS_OF(FIELDS); i++) {
        for (size_t k = 0; k < FX_BADS; k++) {
            fx_mix m;
            fx_site_mix(&m, 1, 1, 6, GB_PLASTIC);
            memcpy((char *)&m + FIELDS[i].offset, &FX_BAD[k], sizeof FX_BAD[k]);
            expect_refused(&m.mix, NULL, OWN_PACK, FIELDS[i].id, FX_BAD[k]);
        }
    }
    const double airs[] = {NAN, -0.01, 1.0, 1.5, INFINITY, -INFINITY};
    for (size_t k = 0; k < ROWS_OF(airs); k++) {
        fx_mix m;
        fx_site_mix(&m, 1, 1, 6, GB_PLASTIC);
        m.mix.air.of_one = airs[k];
        expect_refused(&m.mix, NULL, OWN_PACK, "air", airs[k]);
    }
}

Test(recipe, refuses_bad_bags_and_labels) {
    for (size_t k = 0; k < FX_BADS; k++) {
        double bad = FX_BAD[k];
        if (!isnan(bad)) /* NaN asks for the material's own */
            expect_refused(&FX_BED, NULL, (gb_mass){bad}, "pack", bad);
        fx_mix m;
        fx_site_mix(&m, 1, 0, 4, GB_STIFF);
        m.materials[0].pack.kg = bad;
        expect_refused(&m.mix, NULL, OWN_PACK, "the material's pack", bad);
        gb_label bag = label_of(bad, 0.66 * FT3), yield = label_of(80 * LB, bad);
        const gb_mix *mixes[] = {&FX_BLEND, &FX_BED};
        for (size_t i = 0; i < ROWS_OF(mixes); i++) {
            expect_refused(mixes[i], &bag, OWN_PACK, "own bag", bad);
            expect_refused(mixes[i], &yield, OWN_PACK, "own yield", bad);
        }
        gb_mix blend = FX_BLEND;
        blend.label = bag;
        expect_refused(&blend, NULL, OWN_PACK, "label's bag", bad);
        blend.label = yield;
        expect_refused(&blend, NULL, OWN_PACK, "label's yield", bad);
        gb_volume *water[] = {&blend.water.bag_least, &blend.water.bag_usual,
                              &blend.water.bag_most};
        for (size_t i = 0; i < ROWS_OF(water); i++) {
            blend = FX_BLEND;
            water[i]->m3 = bad;
            expect_refused(&blend, NULL, OWN_PACK, "water on the bag", bad);
        }
    }
}

Test(recipe, refuses_what_has_no_parts) {
    gb_mix nothing = {.id = "bed/none"};
    expect_refused(&nothing, NULL, OWN_PACK, "neither parts nor label", 0);
    fx_mix m;
    fx_site_mix(&m, 1, 0, 4, GB_STIFF);
    m.parts[0].material = NULL;
    expect_refused(&m.mix, NULL, OWN_PACK, "no first material", 0);
    fx_site_mix(&m, 1, 0, 4, GB_STIFF);
    m.parts[1].material = NULL;
    expect_refused(&m.mix, NULL, OWN_PACK, "no second material", 0);
    gb_part many[GB_MOST_PARTS + 1];
    for (size_t i = 0; i < ROWS_OF(many); i++)
        many[i] = FX_SLURRY.parts[0];
    gb_mix long_mix = FX_SLURRY;
    long_mix.parts = many;
    long_mix.part_count = GB_MOST_PARTS;
    gb_recipe r = {0};
    cr_expect(gb_make_recipe(&long_mix, NULL, false, OWN_PACK, &r) == GB_OK);
    long_mix.part_count = GB_MOST_PARTS + 1;
    expect_refused(&long_mix, NULL, OWN_PACK, "one part too many", GB_MOST_PARTS + 1);
}
