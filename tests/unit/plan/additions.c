/* Pigment, doses and what replaces water: their masses, and what they leave alone. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

static const gb_mass OWN_PACK = {NAN};

static const gb_material OXIDE = {
    .name = "oxide", .kind = GB_PIGMENT, .bulk = {800}, .gravity = 4.8, .pack = {NAN}};
static const gb_material RETARDER = {.name = "retarder",
                                     .kind = GB_RETARDER,
                                     .bulk = {1150},
                                     .gravity = 1.15,
                                     .pack = {NAN}};
static const gb_material LATEX = {
    .name = "latex", .kind = GB_POLYMER, .bulk = {1020}, .gravity = 1.02, .pack = {NAN}};

static gb_addition by_share(double share) {
    return (gb_addition){.material = &OXIDE,
                         .share = {share},
                         .dose = {NAN},
                         .dose_for = {NAN},
                         .replaces = {NAN}};
}

static gb_addition by_dose(double m3, double per_kg) {
    return (gb_addition){.material = &RETARDER,
                         .share = {NAN},
                         .dose = {m3},
                         .dose_for = {per_kg},
                         .replaces = {NAN}};
}

static gb_addition by_water(double share) {
    return (gb_addition){.material = &LATEX,
                         .share = {NAN},
                         .dose = {NAN},
                         .dose_for = {NAN},
                         .replaces = {share}};
}

static gb_mix with(const gb_mix *mix, const gb_addition *additions, size_t count) {
    gb_mix copy = *mix;
    copy.additions = additions;
    copy.addition_count = count;
    return copy;
}

static gb_recipe recipe_of(const gb_mix *mix) {
    gb_recipe r = {0};
    cr_assert(gb_make_recipe(mix, NULL, false, OWN_PACK, &r) == GB_OK);
    return r;
}

/* 5 % of 94 lb of cement and 40 lb of lime are 6.7 lb; 3 bags 20.1 lb. Its grains add
   6.7 / 4.8 lb of water's volume, under 0.95 of fresh mix. */
Test(additions, pigment_is_a_share_of_the_binder) {
    const gb_addition oxide = by_share(0.05);
    gb_mix mix = with(&FX_LIME_MORTAR, &oxide, 1);
    gb_recipe plain = recipe_of(&FX_LIME_MORTAR), r = recipe_of(&mix);
    cr_expect(fx_same(r.powder.kg / LB, 6.7));
    cr_expect(fx_same(gb_addition_mass(&mix, &r, 0, 3, (gb_mass){9}).kg / LB, 20.1));
    cr_expect(fx_same(r.dry.kg - plain.dry.kg, r.powder.kg));
    cr_expect(fx_same(r.yield.m3 - plain.yield.m3,
                      6.7 * LB / 4.8 / 1000 / (1 - FX_LIME_MORTAR.air.of_one)));
    for (size_t i = 0; i < mix.part_count; i++)
        cr_expect(r.part[i].kg == plain.part[i].kg, "part %zu", i);
    cr_expect(r.water_usual.kg == plain.water_usual.kg && r.binder.kg == plain.binder.kg);
}

/* 4 fl oz for 94 lb: 1 : 4 has 94 lb of cement a bag, 1 : 1 : 6 has 134 lb of binder; a
   blend counts with its whole bag of 80 lb. */
Test(additions, a_dose_is_for_so_much_binder) {
    static const double DOSE = QT / 8;
    const gb_addition retarder = by_dose(DOSE, 94 * LB);
    const struct {
        const gb_mix *mix;
        double binder;
    } rows[] = {{&FX_BED, 94}, {&FX_LIME_MORTAR, 134}, {&FX_BLEND, 80}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_mix mix = with(rows[i].mix, &retarder, 1);
        gb_recipe plain = recipe_of(rows[i].mix), r = recipe_of(&mix);
        double kg = gb_addition_mass(&mix, &r, 0, 2, (gb_mass){0}).kg;
        cr_expect(fx_same(kg, 2 * rows[i].binder / 94 * DOSE * 1150), "%s", mix.id);
        cr_expect(r.yield.m3 == plain.yield.m3 && r.dry.kg == plain.dry.kg, "%s", mix.id);
    }
}

/* Half of the water is latex, a little heavier, measure for measure. */
Test(additions, latex_takes_the_place_of_water) {
    const gb_addition latex = by_water(0.5);
    gb_mix mix = with(&FX_SLURRY, &latex, 1);
    gb_recipe plain = recipe_of(&FX_SLURRY), r = recipe_of(&mix);
    cr_expect(gb_water_replaced(&mix).of_one == 0.5);
    cr_expect(gb_water_replaced(&FX_SLURRY).of_one == 0);
    cr_expect(fx_same(gb_addition_mass(&mix, &r, 0, 1, (gb_mass){10}).kg, 5 * 1.02));
    cr_expect(r.yield.m3 == plain.yield.m3 && r.water_usual.kg == plain.water_usual.kg);
}

/* Water and latex of a whole job are what the plain job takes of water. */
Test(additions, a_job_keeps_its_liquid) {
    gb_arena arena;
    gb_plan one, two;
    fx_job f;
    const gb_addition latex = by_water(0.4);
    gb_mix mix = with(&FX_SLURRY, &latex, 1);
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &one);
    for (size_t i = 0; i < f.job.mix_count; i++)
        if (f.mixes[i] == &FX_SLURRY)
            f.mixes[i] = &mix;
    fx_plan(&f, &arena, &two);
    const gb_supply_need *bought = fx_supply(&two, "latex");
    cr_assert(two.supply_count == one.supply_count + 1);
    cr_expect(bought->mass.kg > 0);
    cr_expect(fx_same(two.water.m3 + bought->mass.kg / 1020, one.water.m3));
    gb_arena_release(&arena);
}

/* Pigment never touches parts or water, and more of it never makes less. */
Test(additions, more_pigment_never_makes_less) {
    double before = 0;
    for (int percent = 0; percent <= 10; percent++) {
        const gb_addition oxide = by_share(percent / 100.0);
        gb_mix mix = with(&FX_LIME_MORTAR, &oxide, 1);
        gb_recipe r = recipe_of(&mix);
        cr_expect(r.yield.m3 >= before, "%d %%", percent);
        before = r.yield.m3;
    }
}

Test(additions, what_cannot_be) {
    gb_recipe r = {0};
    gb_addition list[GB_MOST_ADDITIONS + 1];
    for (size_t i = 0; i <= GB_MOST_ADDITIONS; i++)
        list[i] = by_share(0.01);
    gb_mix many = with(&FX_BED, list, GB_MOST_ADDITIONS + 1);
    cr_expect(gb_make_recipe(&many, NULL, false, OWN_PACK, &r) == GB_NOT_POSITIVE);
    list[0].material = NULL;
    gb_mix without = with(&FX_BED, list, 1);
    cr_expect(gb_make_recipe(&without, NULL, false, OWN_PACK, &r) == GB_NOT_POSITIVE);
    /* an addition is no part */
    fx_mix m;
    fx_site_mix(&m, 1, 0, 4, GB_STIFF);
    m.materials[1].kind = GB_POLYMER;
    cr_expect(gb_make_recipe(&m.mix, NULL, false, OWN_PACK, &r) == GB_NOT_POSITIVE);
}

/* Each caution of an addition, on both sides of its limit. */
Test(additions, cautions) {
    static const struct {
        gb_material_kind kind;
        double share;
        gb_caution_code code;
        bool there;
        bool masonry; /* the cement is a masonry cement */
    } ROWS[] = {{GB_CARBON_BLACK, 0.02, GB_C_CARBON_BLACK, false, false},
                {GB_CARBON_BLACK, 0.01, GB_C_CARBON_BLACK, false, true},
                {GB_CARBON_BLACK, 0.0101, GB_C_CARBON_BLACK, true, true},
                {GB_PIGMENT, 0.05, GB_C_COLOUR_STRONG, false, true},
                {GB_PIGMENT, 0.0501, GB_C_COLOUR_STRONG, true, true},
                {GB_PIGMENT, 0.0501, GB_C_COLOUR_STRONG, false, false},
                {GB_CARBON_BLACK, 0.0201, GB_C_CARBON_BLACK, true, false},
                {GB_PIGMENT, 0.10, GB_C_CARBON_BLACK, false, false},
                {GB_ANTIFREEZE, 0.01, GB_C_ANTIFREEZE, true, false},
                {GB_RETARDER, 0.01, GB_C_ANTIFREEZE, false, false},
                {GB_CHLORIDE, 0.01, GB_C_CHLORIDE, true, false}};
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        gb_material material = OXIDE;
        material.kind = ROWS[i].kind;
        gb_addition addition = by_share(ROWS[i].share);
        addition.material = &material;
        fx_mix site;
        fx_site_mix(&site, 1, 0, 4, GB_STIFF);
        site.materials[0].masonry = ROWS[i].masonry ? GB_MASONRY_N : GB_NOT_MASONRY;
        gb_mix mix = with(&site.mix, &addition, 1);
        fx_open(&arena);
        fx_empty(&f);
        fx_volume(&f, &mix, 0.2);
        fx_plan(&f, &arena, &plan);
        cr_expect(fx_cautions(fx_of(&plan, mix.id), ROWS[i].code) == ROWS[i].there,
                  "row %zu", i);
        gb_arena_release(&arena);
    }
}
