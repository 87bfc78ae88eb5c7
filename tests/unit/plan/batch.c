/* Batches: what limits one, how bags are dealt out, and what each covers. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

enum { MOST_BATCHES = 6 };

/* One plain volume of a mix that makes `yield` a bag; in ft3, lb and ft3 an hour. The
   blend weighs 80 lb + 5 qt x 2.0864 lb = 90.432 lb a bag and lives 1 h. */
typedef struct row {
    const char *id;
    double need;
    double usable, most, pace;
    double most_bags;
    gb_limit limit;
    size_t count;
    double bags[MOST_BATCHES];
} row;

static const row BLEND[] = {
    /* 8.804 / 0.66 = 13.34, 14 bags; 3.5 / 0.66 = 5.30 */
    {"volume governs", 8.804, 3.5, NAN, NAN, 5, GB_LIMIT_VOLUME, 3, {5, 5, 4}},
    /* 6 / 0.66 = 9.09; 750 / 90.432 = 8.29 */
    {"mass governs", 8.804, 6, 750, NAN, 8, GB_LIMIT_MASS, 2, {7, 7}},
    /* 2 ft3 in the hour it lives: 3.03 bags */
    {"time governs", 8.804, 6, 750, 2, 3, GB_LIMIT_TIME, 5, {3, 3, 3, 3, 2}},
    /* 497.4 / 90.432 = 5.50; 3.5 / 0.66 = 5.30: five by all three */
    {"all tie", 8.804, 3.5, 497.4, 3.5, 5, GB_LIMIT_VOLUME, 3, {5, 5, 4}},
    {"volume and mass tie", 8.804, 3.5, 497.4, NAN, 5, GB_LIMIT_VOLUME, 3, {5, 5, 4}},
    {"volume and time tie", 8.804, 3.5, NAN, 3.4, 5, GB_LIMIT_VOLUME, 3, {5, 5, 4}},
    {"mass and time tie", 8.804, 6, 497.4, 3.5, 5, GB_LIMIT_MASS, 3, {5, 5, 4}},
    /* 5 x 0.66 = 3.3 to the last bit or not: five */
    {"exactly five fit", 8.804, 3.3, NAN, NAN, 5, GB_LIMIT_VOLUME, 3, {5, 5, 4}},
    {"just under five", 8.804, 3.299, NAN, NAN, 4, GB_LIMIT_VOLUME, 4, {4, 4, 3, 3}},
    {"exactly ten bags", 6.6, 3.3, NAN, NAN, 5, GB_LIMIT_VOLUME, 2, {5, 5}},
    {"eleven of five", 7.26, 3.3, NAN, NAN, 5, GB_LIMIT_VOLUME, 3, {4, 4, 3}},
    {"all in one", 3.0, 6, NAN, NAN, 9, GB_LIMIT_NEED, 1, {5}}, /* 4.55 bags */
    {"less than a bag", 0.1, 6, NAN, NAN, 9, GB_LIMIT_NEED, 1, {1}},
    /* 0.5 / 0.66 = 0.758: 6/8; 2 / 0.66 = 3.03 = 4 x 6/8 and 0.0303, up to 1/32 */
    {"small mixer",
     2,
     0.5,
     NAN,
     NAN,
     0.75,
     GB_LIMIT_VOLUME,
     5,
     {0.75, 0.75, 0.75, 0.75, 0.03125}},
    /* 60 / 90.432 = 0.663: 5/8; 2 bags = 3 x 5/8 and 1/8 */
    {"weak mixer",
     1.32,
     6,
     60,
     NAN,
     0.625,
     GB_LIMIT_MASS,
     4,
     {0.625, 0.625, 0.625, 0.125}},
    /* 0.33 / 0.66: half a bag in the hour */
    {"slow crew", 1.32, 6, NAN, 0.33, 0.5, GB_LIMIT_TIME, 4, {0.5, 0.5, 0.5, 0.5}},
    {"an eighth exactly",
     0.165,
     0.0825,
     NAN,
     NAN,
     0.125,
     GB_LIMIT_VOLUME,
     2,
     {0.125, 0.125}},
    {"exactly one bag", 1.32, 0.66, NAN, NAN, 1, GB_LIMIT_VOLUME, 2, {1, 1}},
    /* 0.3 / 0.66 = 0.4545, up to 4/8: nothing limits it */
    {"small mixer, small need", 0.3, 0.5, NAN, NAN, 0.75, GB_LIMIT_NEED, 1, {0.5}},
    {"below an eighth", 0.165, 0.0824, NAN, NAN, 0, GB_LIMIT_VOLUME, 0, {0}},
};

/* 1:4 measured at 3 ft3 a bag; 452.402 lb wet, lives 2 h. The last batch in eighths of a
   bag, below a quarter in thirty-seconds. */
static const row SITE[] = {
    /* 7.9 / 3 = 2.633: 1, 1 and 0.633, up to 6/8 */
    {"last in eighths", 7.9, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.75}},
    {"exactly 5/8", 7.875, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.625}},
    {"exactly three", 9, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 1}},
    /* 2.5 bags, two at a time: three are dealt 2 and 1, of the 1 a half is needed */
    {"two and a half", 7.5, 6.5, NAN, NAN, 2, GB_LIMIT_VOLUME, 2, {2, 0.5}},
    /* 4.1 bags: 0.1 is 3.2 thirty-seconds, up to 4 */
    {"four and a bit", 12.3, 6.5, NAN, NAN, 2, GB_LIMIT_VOLUME, 3, {2, 2, 0.125}},
    /* 2.2 bags: 0.2 is 6.4 thirty-seconds, up to 7; 2.24, up to 8; 2.26, up to 3/8 */
    {"seven thirty-seconds", 6.6, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.21875}},
    {"eight thirty-seconds", 6.72, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.25}},
    {"exactly a quarter", 6.75, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.25}},
    {"over a quarter", 6.78, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.375}},
    {"a dab", 6.03, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.03125}}, /* 0.01 */
    {"all in one", 4.5, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {1.5}},
    {"a little", 0.3, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {0.125}}, /* 0.1 bag */
    /* 905 / 452.402 = 2.0004, 904 / 452.402 = 1.998 */
    {"two bags borne", 12, 9.5, 905, NAN, 2, GB_LIMIT_MASS, 2, {2, 2}},
    {"not quite two borne", 6, 9.5, 904, NAN, 1, GB_LIMIT_MASS, 2, {1, 1}},
    /* 1.5 ft3 an hour, 2 h: one bag exactly */
    {"one bag in its life", 6, 9.5, NAN, 1.5, 1, GB_LIMIT_TIME, 2, {1, 1}},
    {"hardly one bag", 3, 9.5, NAN, 1.49, 0.875, GB_LIMIT_TIME, 2, {0.875, 0.125}},
};

static void expect_row(const row *r, const gb_mix *mix, const gb_batching *b) {
    cr_expect(fx_near(b->most_bags, r->most_bags, 1e-9), "%s: at most %.4f bags", r->id,
              b->most_bags);
    cr_expect(b->limit == r->limit, "%s: limit %d", r->id, b->limit);
    cr_expect(b->part_bags == (r->most_bags < 1), "%s: part bags", r->id);
    cr_expect(b->batch_count == r->count, "%s: %zu batches", r->id, b->batch_count);
    double sum = 0;
    for (size_t i = 0; i < b->batch_count && i < r->count; i++) {
        cr_expect(fx_near(b->batches[i].bags, r->bags[i], 1e-9), "%s: batch %zu: %.4f",
                  r->id, i + 1, b->batches[i].bags);
        sum += r->bags[i];
    }
    double yield = mix->part_count > 0 ? 3.0 : 0.66;
    if (r->count == 0) /* what is needed is still bought */
        sum = r->need / yield;
    cr_expect(fx_near(b->bags_gauged, sum, 1e-9), "%s: %.4f gauged", r->id,
              b->bags_gauged);
    cr_expect(fx_near(b->bags_needed, r->need / yield, 1e-9), "%s: %.5f needed", r->id,
              b->bags_needed);
}

static void check_rows(const row *rows, size_t count, const gb_mix *mix) {
    for (size_t i = 0; i < count; i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_empty(&f);
        fx_volume(&f, mix, rows[i].need * FT3);
        if (mix->part_count > 0)
            fx_label(&f, mix, 94 * LB, 3 * FT3, true);
        f.job.crew.mixer.usable.m3 = rows[i].usable * FT3;
        f.job.crew.mixer.most.kg = rows[i].most * LB;
        f.job.crew.pace.m3_s = rows[i].pace * FT3 / HOUR;
        fx_plan(&f, &arena, &plan);
        expect_row(&rows[i], mix, &plan.mixes[0].batching);
        gb_arena_release(&arena);
    }
}

Test(batch, of_a_blend) {
    check_rows(BLEND, ROWS_OF(BLEND), &FX_BLEND);
}

Test(batch, of_a_site_mix) {
    check_rows(SITE, ROWS_OF(SITE), &FX_BED);
}

/* What the last batch must hold is told for a blend too, though whole bags go in:
   13.34 - 10 = 3.34, in eighths 3-3/8. */
Test(batch, fourteen_bags_from_a_label) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    f.job.crew.mixer.usable.m3 = 3.5 * FT3;
    fx_waste(&f, FX_BLEND.id, 0.10);
    fx_piece(&f, "treads", GB_TREAD, 7, 5 * FT, 14 * IN);
    fx_layer(&f, GB_BED, &FX_BLEND, 1.25 * IN);
    fx_piece(&f, "landing", GB_LANDING, 1, 5 * FT, 6 * FT);
    fx_layer(&f, GB_BED, &FX_BLEND, 1.5 * IN);
    fx_plan(&f, &arena, &plan);
    const gb_batching *b = &plan.mixes[0].batching;
    cr_expect(fx_near(b->bags_needed, 13.34, 0.005), "%.4f", b->bags_needed);
    cr_expect(b->bags_whole == 14 && b->batch_count == 3);
    cr_expect(b->bags_gauged == 14);
    cr_expect(fx_near(b->last_needed, 3.375, 1e-12), "%.4f", b->last_needed);
    cr_expect(fx_same(fx_supply(&plan, FX_BLEND.id)->mass.kg / LB, 14 * 80));
    gb_arena_release(&arena);
}

/* A bag of 1:4 makes 320 LB / 1498 m3 = 3.4218 ft3 and covers 70.833 x 3.4218 / 8.8038 =
   27.53 ft2; three treads an hour are 17.5 ft2: 1.573 h. */
Test(batch, time_to_place_by_treads) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    const gb_batching *b = &fx_of(&plan, FX_BED.id)->batching;
    cr_expect(fx_near(b->time_to_place.s / HOUR, 1.573, 0.0005), "%.4f h",
              b->time_to_place.s / HOUR);
    cr_expect(b->limit == GB_LIMIT_VOLUME && b->batch_count == 3);
    /* 2.573 bags: 1, 1 and 0.573, up to 5/8 */
    cr_expect(b->batches[0].bags == 1 && b->batches[1].bags == 1);
    cr_expect(b->batches[2].bags == 0.625 && b->last_needed == 0.625);
    f.job.weather.air.c = DEG_F(101); /* lives 1 h: 1 / 1.573 = 0.636, 5/8 of a bag */
    fx_plan(&f, &arena, &plan);
    b = &fx_of(&plan, FX_BED.id)->batching;
    cr_expect(fx_of(&plan, FX_BED.id)->life.s == 1.0 * HOUR);
    cr_expect(b->limit == GB_LIMIT_TIME && b->most_bags == 0.625, "%.3f", b->most_bags);
    cr_expect(fx_near(b->time_to_place.s / HOUR, 0.983, 0.0005), "0.625 x 1.573 h");
    gb_arena_release(&arena);
}

/* The same pace stated three ways gives the same time; 8.8038 ft3 lie on 70.833 ft2. */
Test(batch, one_pace_in_three_units) {
    const gb_pace paces[] = {
        {3 / HOUR, NAN, NAN, 1},
        {NAN, 17.5 * FT2 / HOUR, NAN, 1},
        {NAN, NAN,
         17.5 * (1.1 * (4.25 + 0.0125 / 3.6 + 3.75)) / (70 + 5.0 / 6) * FT3 / HOUR, 1},
    };
    double first = NAN;
    for (size_t i = 0; i < ROWS_OF(paces); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        f.job.crew.pace = paces[i];
        fx_plan(&f, &arena, &plan);
        double s = fx_of(&plan, FX_BED.id)->batching.time_to_place.s;
        if (i == 0)
            first = s;
        cr_expect(fx_near(s, first, 1e-6 * first), "pace %zu: %.3f s, not %.3f", i, s,
                  first);
        gb_arena_release(&arena);
    }
}

/* A pace of setting stone says nothing of joints, cores and slabs. */
Test(batch, no_time_without_a_pace_that_fits) {
    const struct {
        const char *id;
        gb_layer_kind kind;
        gb_pace pace;
        bool known;
    } rows[] = {
        {"bed, none", GB_BED, {NAN, NAN, NAN, 1}, false},
        {"bed, by area", GB_BED, {NAN, 0.001, NAN, 1}, true},
        {"slab, by area", GB_SLAB, {NAN, 0.001, NAN, 1}, false},
        {"slab, by treads", GB_SLAB, {0.001, NAN, NAN, 1}, false},
        {"slab, by volume", GB_SLAB, {NAN, NAN, 0.0001, 1}, true},
    };
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_empty(&f);
        f.job.crew.pace = rows[i].pace;
        fx_piece(&f, "treads", GB_TREAD, 4, 5 * FT, 14 * IN);
        fx_layer(&f, rows[i].kind, &FX_BED, 1.25 * IN);
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = &plan.mixes[0];
        cr_expect(isnan(p->batching.time_to_place.s) != rows[i].known, "%s: %.1f s",
                  rows[i].id, p->batching.time_to_place.s);
        cr_expect(fx_cautions(p, GB_C_NO_PACE) == (rows[i].known ? 0u : 1u),
                  "%s: caution", rows[i].id);
        gb_arena_release(&arena);
    }
}

Test(batch, pace_as_area) {
    fx_job f;
    double m2_s = 0;
    fx_empty(&f);
    cr_expect(gb_job_area_pace(&f.job, &m2_s) == GB_OK && isnan(m2_s), "none stated");
    f.job.crew.pace.m3_s = 0.001;
    cr_expect(gb_job_area_pace(&f.job, &m2_s) == GB_OK && isnan(m2_s), "by volume");
    f.job.crew.pace.m2_s = 0.002;
    cr_expect(gb_job_area_pace(&f.job, &m2_s) == GB_OK && m2_s == 0.002, "by area");
    f.job.crew.pace.m2_s = NAN;
    f.job.crew.pace.treads_s = 3 / HOUR;
    cr_expect(gb_job_area_pace(&f.job, &m2_s) == GB_NO_PACE, "treads, and no piece");
    fx_piece(&f, "landing", GB_LANDING, 1, 5 * FT, 6 * FT);
    cr_expect(gb_job_area_pace(&f.job, &m2_s) == GB_NO_PACE,
              "treads, and only a landing");
    fx_piece(&f, "treads", GB_TREAD, 7, 5 * FT, 14 * IN)->overhang_front.m = 2 * IN;
    cr_expect(gb_job_area_pace(&f.job, &m2_s) == GB_OK);
    /* 3 x 5 x 1 ft2 are bedded in an hour */
    cr_expect(fx_same(m2_s, 15 * FT2 / HOUR), "%.8f", m2_s);
}

Test(batch, a_plan_without_a_tread_has_no_pace_in_treads) {
    gb_arena arena;
    gb_plan plan = {0};
    const gb_mix *bad = &FX_BED;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    f.pieces[0].kind = GB_RISER;
    cr_expect(gb_make_plan(&f.job, &arena, &plan, &bad) == GB_NO_PACE);
    cr_expect(plan.job == NULL && bad == NULL, "nothing is written, no mix is to blame");
    gb_arena_release(&arena);
}

/* A fault of one mix is told with that mix; a fault of a size is not. */
Test(batch, a_bad_plan_names_the_mix) {
    gb_arena arena;
    gb_plan plan = {0};
    const gb_mix *bad = NULL;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_label(&f, &FX_SLURRY, 94 * LB, 9 * FT3, true);
    cr_expect(gb_make_plan(&f.job, &arena, &plan, &bad) == GB_IMPOSSIBLE);
    cr_expect(bad == &FX_SLURRY && plan.job == NULL);
    fx_library(&f);
    f.depths[1][0][0] = 0;
    cr_expect(gb_make_plan(&f.job, &arena, &plan, &bad) == GB_NOT_POSITIVE);
    cr_expect(bad == NULL && plan.job == NULL);
    fx_library(&f);
    f.pieces[0].count = 10000000000u; /* x 0.6684 / 3.4218: 1.95e9 bags, over 1e9 */
    cr_expect(gb_make_plan(&f.job, &arena, &plan, &bad) == GB_OVERFLOW);
    cr_expect(bad == &FX_BED && plan.job == NULL);
    gb_arena_release(&arena);
}

/* The user's own label water replaces the table's: 2.4 kg from 2.4 L. */
Test(batch, own_label_brings_its_own_water) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    fx_volume(&f, &FX_BLEND, 3 * FT3);
    fx_label(&f, &FX_BLEND, 25, 0.0135, false);
    f.labels[0].least.m3 = 0.0021;
    f.labels[0].usual.m3 = 0.0024;
    f.labels[0].most.m3 = 0.0027;
    fx_plan(&f, &arena, &plan);
    const gb_recipe *r = &plan.mixes[0].recipe;
    cr_expect(fx_same(r->water_least.kg, 2.1) && fx_same(r->water_usual.kg, 2.4) &&
              fx_same(r->water_most.kg, 2.7));
    cr_expect(fx_same(r->bag.kg, 25) && fx_same(r->yield.m3, 0.0135));
    gb_arena_release(&arena);
}

/* A label that states no water leaves the table's: 4-1/2, 5 and 6 qt. */
Test(batch, own_label_without_water_keeps_the_tables) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    fx_volume(&f, &FX_BLEND, 3 * FT3);
    fx_label(&f, &FX_BLEND, 80 * LB, 0.6 * FT3, true);
    fx_plan(&f, &arena, &plan);
    const gb_recipe *r = &plan.mixes[0].recipe;
    cr_expect(fx_same(r->water_least.kg, 4500 * QT));
    cr_expect(fx_same(r->water_usual.kg, 5000 * QT));
    cr_expect(fx_same(r->water_most.kg, 6000 * QT));
    cr_expect(fx_same(r->yield.m3 / FT3, 0.6) && r->route == GB_MEASURED);
    gb_arena_release(&arena);
}

/* A bag of 47 lb stated by the job makes half of 3.4218 ft3: two of them fit 6 ft3. */
Test(batch, own_pack_is_the_bag) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_pack(&f, &FX_CEMENT, 47 * LB);
    fx_plan(&f, &arena, &plan);
    const gb_mix_plan *p = fx_of(&plan, FX_BED.id);
    cr_expect(fx_same(p->recipe.bag.kg / LB, 47));
    cr_expect(fx_near(p->recipe.yield.m3 / FT3, 3.4218 / 2, 0.0001));
    cr_expect(p->batching.limit == GB_LIMIT_TIME && p->batching.most_bags == 2);
    cr_expect(fx_same(fx_supply(&plan, FX_CEMENT.name)->pack.kg / LB, 47));
    gb_arena_release(&arena);
}
