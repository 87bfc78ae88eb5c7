/* The water to add, with the sand's own taken off. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "fixture.h"

static gb_recipe bed_recipe(void) {
    gb_recipe r = {0};
    cr_assert(gb_make_recipe(&FX_BED, NULL, false, (gb_mass){NAN}, &r) == GB_OK);
    return r;
}

/* Common practice for a hand's feel; design figures of the sheets. */
Test(water, sand_states) {
    cr_expect(gb_sand_moisture(GB_NEARLY_DRY).of_one == 0.02);
    cr_expect(gb_sand_moisture(GB_DAMP).of_one == 0.05);
    cr_expect(gb_sand_moisture(GB_WET).of_one == 0.08);
    fx_job f;
    fx_empty(&f);
    f.job.sand.state = GB_WET;
    cr_expect(gb_job_moisture(&f.job).of_one == 0.08, "the state's own");
    f.job.sand.moisture.of_one = 0.035;
    cr_expect(gb_job_moisture(&f.job).of_one == 0.035, "what the job states");
}

/* One bag of 1:4, lb: 320 of sand, 38.402 of water in all, least 0.85 and most 1.12 of
   it; first is 0.75 of the least to add. */
static const struct {
    double moisture;
    double first, usual, most;
} ROWS[] = {
    {0.00, 0.75 * 32.6417, 38.402, 43.01024},
    {0.02, 0.75 * (32.6417 - 6.4), 38.402 - 6.4, 43.01024 - 6.4},
    {0.05, 0.75 * (32.6417 - 16), 38.402 - 16, 43.01024 - 16},
    {0.08, 0.75 * (32.6417 - 25.6), 38.402 - 25.6, 43.01024 - 25.6},
};

Test(water, to_a_one_bag_batch) {
    gb_recipe r = bed_recipe();
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        gb_water_row w = {0};
        double m = ROWS[i].moisture;
        cr_assert(gb_water_to_add(&FX_BED, &r, (gb_share){m}, 1, &w) == GB_OK);
        cr_expect(w.moisture.of_one == m);
        cr_expect(fx_near(w.first.kg / LB, ROWS[i].first, 1e-9), "%g: first %.5f", m,
                  w.first.kg / LB);
        cr_expect(fx_near(w.usual.kg / LB, ROWS[i].usual, 1e-9), "%g: usual %.5f", m,
                  w.usual.kg / LB);
        cr_expect(fx_near(w.most.kg / LB, ROWS[i].most, 1e-9), "%g: most %.5f", m,
                  w.most.kg / LB);
        double least = r.water_least.kg - r.sand.kg * m;
        cr_expect(w.first.kg < least && least < w.usual.kg && w.usual.kg < w.most.kg,
                  "%g: first, least, usual, most stand in order", m);
        gb_water_row half = {0};
        cr_assert(gb_water_to_add(&FX_BED, &r, (gb_share){m}, 0.5, &half) == GB_OK);
        cr_expect(fx_same(2 * half.first.kg, w.first.kg) &&
                      fx_same(2 * half.usual.kg, w.usual.kg) &&
                      fx_same(2 * half.most.kg, w.most.kg),
                  "%g: half a bag takes half", m);
    }
}

/* From 2 % to 8 %: 6 % of 320 lb = 19.2 lb; at 2.0864 lb a quart, 9.2 qt. */
Test(water, from_nearly_dry_to_wet_it_moves_by_nine_quarts) {
    gb_recipe r = bed_recipe();
    gb_water_row dry = {0}, wet = {0};
    cr_assert(gb_water_to_add(&FX_BED, &r, (gb_share){0.02}, 1, &dry) == GB_OK);
    cr_assert(gb_water_to_add(&FX_BED, &r, (gb_share){0.08}, 1, &wet) == GB_OK);
    double moved = dry.usual.kg - wet.usual.kg;
    cr_expect(fx_near(moved / LB, 19.2, 1e-9), "%.6f lb", moved / LB);
    cr_expect(fx_near(moved / 1000 / QT, 9.2, 0.05), "%.4f qt", moved / 1000 / QT);
    cr_expect(fx_near((dry.most.kg - wet.most.kg) / LB, 19.2, 1e-9));
    double band = r.water_most.kg - r.water_least.kg;
    cr_expect(moved > band, "more than the whole band of the mix, %.2f lb", band / LB);
}

/* The sand brings the least water, 32.6417 lb, at 32.6417 / 320 = 10.2005 %. */
Test(water, too_wet) {
    gb_recipe r = bed_recipe();
    const struct {
        const char *id;
        double moisture;
        gb_status status;
    } rows[] = {
        {"just below", 0.102005, GB_OK},      {"at the edge", 32.6417 / 320, GB_TOO_WET},
        {"just above", 0.102006, GB_TOO_WET}, {"far above", 0.20, GB_TOO_WET},
        {"unknown", NAN, GB_TOO_WET},         {"without end", INFINITY, GB_TOO_WET},
    };
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_water_row w, before;
        memset(&w, 0x5a, sizeof w);
        memcpy(&before, &w, sizeof w);
        gb_status s = gb_water_to_add(&FX_BED, &r, (gb_share){rows[i].moisture}, 1, &w);
        cr_expect(s == rows[i].status, "%s: status %d", rows[i].id, s);
        if (rows[i].status == GB_OK)
            cr_expect(w.first.kg > 0, "%s: some water is left to add", rows[i].id);
        else
            cr_expect(memcmp(&w, &before, sizeof w) == 0, "%s: written", rows[i].id);
    }
}

Test(water, sand_does_not_matter_where_there_is_none) {
    const gb_mix *mixes[] = {&FX_SLURRY, &FX_BLEND};
    for (size_t i = 0; i < ROWS_OF(mixes); i++) {
        gb_recipe r = {0};
        gb_water_row dry = {0}, wet = {0};
        cr_assert(gb_make_recipe(mixes[i], NULL, false, (gb_mass){NAN}, &r) == GB_OK);
        cr_assert(gb_water_to_add(mixes[i], &r, (gb_share){0}, 3, &dry) == GB_OK);
        cr_assert(gb_water_to_add(mixes[i], &r, (gb_share){0.5}, 3, &wet) == GB_OK);
        cr_expect(dry.first.kg == wet.first.kg && dry.usual.kg == wet.usual.kg &&
                      dry.most.kg == wet.most.kg,
                  "%s", mixes[i]->id);
        cr_expect(fx_same(dry.usual.kg, 3 * r.water_usual.kg), "%s", mixes[i]->id);
    }
}

/* What the job's batches take: 2.625 bags of 1:4 at 5 %, 22.402 lb each, and 36.01 lb of
   slurry cement at 0.45. */
Test(water, of_a_whole_job) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    double slurry = 1.2 * (70 + 5.0 / 6) / 192 * FT3 * 1000 / (1 / 3.15 + 0.45) * 0.45;
    double want = (2.625 * 22.402 * LB + slurry) / 1000;
    cr_expect(fx_near(plan.water.m3, want, 1e-9), "%.6f, not %.6f", plan.water.m3, want);
    f.job.sand.moisture.of_one = 0.15; /* too wet: the bed takes none at all */
    f.job.sand.bulking.of_one = 0.10;  /* the usual curve ends at 10 % */
    fx_plan(&f, &arena, &plan);
    cr_expect(fx_near(plan.water.m3, slurry / 1000, 1e-9), "%.6f", plan.water.m3);
    gb_arena_release(&arena);
}

/* What a mix takes in all, lb: 2.625 bags of 1:4, each 38.402 less what 320 of sand
   bring; 36.01 of slurry cement at 0.45, whatever the sand. */
Test(water, used_by_each_mix) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    const gb_mix_plan *bed = fx_of(&plan, FX_BED.id);
    const gb_mix_plan *slurry = fx_of(&plan, FX_SLURRY.id);
    double cement = 1.2 * (70 + 5.0 / 6) / 192 * FT3 * 1000 / (1 / 3.15 + 0.45) / LB;
    cr_expect(gb_bags_used(bed) == 2.625, "%.5f", gb_bags_used(bed));
    cr_expect(fx_near(gb_bags_used(slurry), cement / 94, 1e-9));
    const double moistures[] = {0, 0.02, 0.05, 0.08, 0.10};
    for (size_t i = 0; i < ROWS_OF(moistures); i++) {
        gb_share m = {moistures[i]};
        double lb = gb_water_used(bed, m).kg / LB;
        cr_expect(fx_near(lb, 2.625 * (38.402 - 320 * m.of_one), 1e-9), "%g: %.5f lb",
                  m.of_one, lb);
        cr_expect(fx_near(gb_water_used(slurry, m).kg / LB, 0.45 * cement, 1e-9), "%g",
                  m.of_one);
    }
    gb_arena_release(&arena);
}

/* From 10.2005 % on the sand brings the least water: no batch is mixed, so none takes
   water, also below 12.0 %, where it would bring the usual. */
Test(water, none_is_used_with_sand_too_wet) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    const gb_mix_plan *bed = fx_of(&plan, FX_BED.id);
    const double moistures[] = {0.1021, 0.11, 0.1199, 0.1201, 0.15, 0.5};
    for (size_t i = 0; i < ROWS_OF(moistures); i++) {
        double lb = gb_water_used(bed, (gb_share){moistures[i]}).kg / LB;
        cr_expect(lb == 0, "%g: %.5f lb", moistures[i], lb);
    }
    gb_arena_release(&arena);
}

/* The job's own pack, else the table's; sand comes loose. */
Test(supplies, pack_of_the_job) {
    fx_job f;
    fx_empty(&f);
    cr_expect(gb_job_pack(&f.job, &FX_CEMENT).kg == FX_CEMENT.pack.kg);
    cr_expect(isnan(gb_job_pack(&f.job, &FX_SAND).kg), "loose");
    fx_pack(&f, &FX_CEMENT, 47 * LB);
    fx_pack(&f, &FX_SAND, 25);
    cr_expect(fx_same(gb_job_pack(&f.job, &FX_CEMENT).kg / LB, 47));
    cr_expect(gb_job_pack(&f.job, &FX_SAND).kg == 25);
    cr_expect(gb_job_pack(&f.job, &FX_LIME).kg == FX_LIME.pack.kg, "not stated");
}
