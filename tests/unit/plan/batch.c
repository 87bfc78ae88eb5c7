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
    /* 0.5 / 0.66 = 0.758: 6/8; 2 / 0.66 = 3.03 = 4 x 6/8 and 0.0303, up to 1/8 */
    {"small mixer",
     2,
     0.5,
     NAN,
     NAN,
     0.75,
     GB_LIMIT_VOLUME,
     5,
     {0.75, 0.75, 0.75, 0.75, 0.125}},
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
    /* 0.05 / 0.66 = 0.0758: 2.42 thirty-seconds, up to 3 */
    {"small mixer, a dab", 0.05, 0.5, NAN, NAN, 0.75, GB_LIMIT_NEED, 1, {0.09375}},
    /* 0.33 / 0.66 = 4/8 by the mass, 45.3 / 90.432 = 0.501, and by the hour */
    {"weak mixer, small need", 0.33, 6, 45.3, NAN, 0.5, GB_LIMIT_NEED, 1, {0.5}},
    {"slow crew, small need", 0.33, 6, NAN, 0.33, 0.5, GB_LIMIT_NEED, 1, {0.5}},
    /* 0.34 / 0.66 = 0.515: 4/8 and 0.015, up to 1/8 */
    {"slow crew, a bit more", 0.34, 6, NAN, 0.33, 0.5, GB_LIMIT_TIME, 2, {0.5, 0.125}},
    {"below an eighth", 0.165, 0.0824, NAN, NAN, 0, GB_LIMIT_VOLUME, 0, {0}},
    /* 11.3 / 90.432 = 0.12496, and 11.31 of it 0.12507; 0.0824 ft3 in the hour */
    {"an eighth not borne", 0.165, 6, 11.3, NAN, 0, GB_LIMIT_MASS, 0, {0}},
    {"an eighth borne", 0.165, 6, 11.31, NAN, 0.125, GB_LIMIT_MASS, 2, {0.125, 0.125}},
    {"an eighth not placed", 0.165, 6, NAN, 0.0824, 0, GB_LIMIT_TIME, 0, {0}},
};

/* 1:4 measured at 3 ft3 a bag; 452.402 lb wet, lives 2 h. The last of several batches in
   eighths of a bag; a batch that is all there is, in thirty-seconds below a quarter. */
static const row SITE[] = {
    /* 7.9 / 3 = 2.633: 1, 1 and 0.633, up to 6/8 */
    {"last in eighths", 7.9, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.75}},
    {"exactly 5/8", 7.875, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.625}},
    {"exactly three", 9, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 1}},
    /* 2.5 bags, two at a time: three are dealt 2 and 1, of the 1 a half is needed */
    {"two and a half", 7.5, 6.5, NAN, NAN, 2, GB_LIMIT_VOLUME, 2, {2, 0.5}},
    /* 4.1 bags: 0.1, up to 1/8 */
    {"four and a bit", 12.3, 6.5, NAN, NAN, 2, GB_LIMIT_VOLUME, 3, {2, 2, 0.125}},
    /* 2.12, 2.2 and 2.25 bags: 0.12 up to 1/8, 0.2 and 0.25 to 2/8; 0.26 to 3/8 */
    {"under an eighth", 6.36, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.125}},
    {"over an eighth", 6.6, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.25}},
    {"exactly a quarter", 6.75, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.25}},
    {"over a quarter", 6.78, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.375}},
    {"a dab more", 6.03, 3.2, NAN, NAN, 1, GB_LIMIT_VOLUME, 3, {1, 1, 0.125}}, /* 0.01 */
    {"all in one", 4.5, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {1.5}},
    /* all there is, in thirty-seconds of a bag: 0.1 is 3.2 of them, up to 4; 0.01 is
       0.32, up to 1; 0.2 is 6.4, up to 7; 7 exactly; 0.24 is 7.68, up to 8; 8 exactly;
       0.26 is over a quarter, up to 3/8 */
    {"a little", 0.3, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {0.125}},
    {"a dab", 0.03, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {0.03125}},
    {"seven thirty-seconds", 0.6, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {0.21875}},
    {"exactly seven", 0.65625, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {0.21875}},
    {"eight thirty-seconds", 0.72, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {0.25}},
    {"exactly eight", 0.75, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {0.25}},
    {"three eighths", 0.78, 6.5, NAN, NAN, 2, GB_LIMIT_NEED, 1, {0.375}},
    /* 1.9 / 3 = 0.633 in a mixer for 5/8: 5/8 and 0.008, up to 1/8 */
    {"small mixer", 1.9, 1.9, NAN, NAN, 0.625, GB_LIMIT_VOLUME, 2, {0.625, 0.125}},
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

/* A bag of 1:4 makes 320 LB / 1498 m3 = 3.4218 ft3; on the treads, the thinner bed, it
   covers 3.4218 / (1.25 / 12 x 1.1) = 29.863 ft2; three treads an hour are 17.5 ft2:
   1.7065 h. The first of the three batches is laid on treads alone: 1.7065 h too. */
Test(batch, time_to_place_by_treads) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    const gb_batching *b = &fx_of(&plan, FX_BED.id)->batching;
    cr_expect(fx_near(b->bag_time.s / HOUR, 1.7065, 0.0005), "%.4f h a bag",
              b->bag_time.s / HOUR);
    cr_expect(fx_near(b->time_to_place.s / HOUR, 1.7065, 0.0005), "%.4f h",
              b->time_to_place.s / HOUR);
    cr_expect(b->limit == GB_LIMIT_VOLUME && b->batch_count == 3);
    /* 2.573 bags: 1, 1 and 0.573, up to 5/8 */
    cr_expect(b->batches[0].bags == 1 && b->batches[1].bags == 1);
    cr_expect(b->batches[2].bags == 0.625 && b->last_needed == 0.625);
    f.job.weather.air.c = DEG_F(101); /* lives 1 h: 1 / 1.7065 = 0.586, 4/8 of a bag */
    fx_plan(&f, &arena, &plan);
    b = &fx_of(&plan, FX_BED.id)->batching;
    cr_expect(fx_of(&plan, FX_BED.id)->life.s == 1.0 * HOUR);
    cr_expect(b->limit == GB_LIMIT_TIME && b->most_bags == 0.5, "%.3f", b->most_bags);
    /* 2.573 = 5 x 1/2 and 0.073, up to 1/8 */
    cr_expect(b->batch_count == 6 && b->last_needed == 0.125, "%zu batches",
              b->batch_count);
    cr_expect(fx_near(b->bag_time.s / HOUR, 1.7065, 0.0005), "heat slows nobody");
    cr_expect(fx_near(b->time_to_place.s / HOUR, 0.8533, 0.0005), "1/2 x 1.7065 h");
    gb_arena_release(&arena);
}

/* Two beds of 3 ft3 a bag, each of `area` ft2 and `depth` in, laid in that order; the mix
   lives 2 h, and the crew lays `pace` ft2 an hour. A bag covers 36 ft2 at 1 in. */
static const struct {
    const char *id;
    double area[2], depth[2];
    double waste, usable, pace;
    double bag_h;  /* to place a bag of the thinner bed */
    double time_h; /* of the slowest batch */
    double most_bags;
    gb_limit limit;
    size_t count;
} SLOWEST[] = {
    /* a bag on 36 ft2, a bag on 18 ft2: 36 / 20 = 1.8 h and 18 / 20 = 0.9 h */
    {"thin first", {36, 18}, {1, 2}, 0, 3.2, 20, 1.8, 1.8, 1, GB_LIMIT_VOLUME, 2},
    {"thick first", {18, 36}, {2, 1}, 0, 3.2, 20, 1.8, 1.8, 1, GB_LIMIT_VOLUME, 2},
    /* 9 + 18 ft2 in one batch: 27 / 20 = 1.35 h, though a thin bag would take 1.8 h */
    {"both in one", {9, 18}, {2, 1}, 0, 3.2, 20, 1.8, 1.35, 1, GB_LIMIT_NEED, 1},
    /* 2-1/2 bags: a bag on 18 ft2, a bag on 9 + 18 ft2, half a bag on 18 ft2 */
    {"none is all thin", {27, 36}, {2, 1}, 0, 3.2, 20, 1.8, 1.35, 1, GB_LIMIT_VOLUME, 3},
    /* a fourth more: a bag on 28.8 and 14.4 ft2; 57.6 ft2 are two bags, 28.8 ft2 two */
    {"waste", {57.6, 28.8}, {1, 2}, 0.25, 3.2, 20, 1.44, 1.44, 1, GB_LIMIT_VOLUME, 4},
    /* by the mean, 90 ft2 in 4 bags, a bag takes 0.94 h and two go in the 2 h; but two
       thin ones take 3 h: one at a time, 36 / 24 = 1.5 h */
    {"mean misleads", {72, 18}, {1, 4}, 0, 6.5, 24, 1.5, 1.5, 1, GB_LIMIT_TIME, 4},
    /* 36 / 36 = 1 h a bag, two bags in the 2 h; 72 ft2, then 18 ft2 at 4 in */
    {"two in their life", {72, 18}, {1, 4}, 0, 9.5, 36, 1, 2, 2, GB_LIMIT_TIME, 2},
    /* 36 / 12 = 3 h a bag: 5/8 of one, 1.875 h; 2 bags are 3 x 5/8 and 1/8 */
    {"part bags", {36, 18}, {1, 2}, 0, 6.5, 12, 3, 1.875, 0.625, GB_LIMIT_TIME, 4},
    /* 36 / 2.2 = 16.36 h, an eighth of it 2.05 h: no batch, so none takes any time */
    {"none at all", {36, 18}, {1, 2}, 0, 6.5, 2.2, 36 / 2.2, NAN, 0, GB_LIMIT_TIME, 0},
};

static void two_beds(fx_job *f, const double area[2], const double depth[2]) {
    fx_empty(f);
    fx_label(f, &FX_BED, 94 * LB, 3 * FT3, true);
    for (size_t k = 0; k < 2; k++) {
        fx_piece(f, "pad", GB_LANDING, 1, area[k] * FT, 1 * FT);
        fx_layer(f, GB_BED, &FX_BED, depth[k] * IN);
    }
}

Test(batch, time_of_the_slowest_as_it_is_covered) {
    for (size_t i = 0; i < ROWS_OF(SLOWEST); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        two_beds(&f, SLOWEST[i].area, SLOWEST[i].depth);
        fx_waste(&f, FX_BED.id, SLOWEST[i].waste);
        f.job.crew.mixer.usable.m3 = SLOWEST[i].usable * FT3;
        f.job.crew.pace.m2_s = SLOWEST[i].pace * FT2 / HOUR;
        fx_plan(&f, &arena, &plan);
        const gb_batching *b = &plan.mixes[0].batching;
        cr_expect(fx_near(b->bag_time.s / HOUR, SLOWEST[i].bag_h, 1e-9),
                  "%s: %.5f h a bag", SLOWEST[i].id, b->bag_time.s / HOUR);
        cr_expect(fx_near(b->time_to_place.s / HOUR, SLOWEST[i].time_h, 1e-9),
                  "%s: %.5f h", SLOWEST[i].id, b->time_to_place.s / HOUR);
        cr_expect(b->most_bags == SLOWEST[i].most_bags, "%s: %.4f bags", SLOWEST[i].id,
                  b->most_bags);
        cr_expect(b->limit == SLOWEST[i].limit, "%s: limit %d", SLOWEST[i].id, b->limit);
        cr_expect(b->batch_count == SLOWEST[i].count, "%s: %zu batches", SLOWEST[i].id,
                  b->batch_count);
        gb_arena_release(&arena);
    }
}

/* A pace by volume takes a bag's time whatever lies under it: 3 / 2 = 1.5 h; and what is
   mixed of the last batch is placed: 2.1 bags are 1, 1 and 1/8. */
Test(batch, a_pace_by_volume_minds_no_depth) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    two_beds(&f, (const double[]){36, 19.8}, (const double[]){1, 2});
    f.job.crew.pace.m3_s = 2 * FT3 / HOUR;
    fx_plan(&f, &arena, &plan);
    const gb_batching *b = &plan.mixes[0].batching;
    cr_expect(fx_near(b->bag_time.s / HOUR, 1.5, 1e-9));
    cr_expect(fx_near(b->time_to_place.s / HOUR, 1.5, 1e-9));
    cr_expect(b->most_bags == 1 && b->limit == GB_LIMIT_TIME && b->batch_count == 3);
    cr_expect(b->batches[2].bags == 0.125, "%.4f", b->batches[2].bags);
    gb_arena_release(&arena);
}

/* The same pace stated three ways gives the same time, where all beds are as deep: 17.5
   ft2 an hour at 1-1/4 in and 10 % are 17.5 x 1.25 / 12 x 1.1 = 2.00521 ft3 an hour. */
Test(batch, one_pace_in_three_units) {
    const gb_pace paces[] = {
        {3 / HOUR, NAN, NAN, 1},
        {NAN, 17.5 * FT2 / HOUR, NAN, 1},
        {NAN, NAN, 17.5 * 1.25 / 12 * 1.1 * FT3 / HOUR, 1},
    };
    for (size_t i = 0; i < ROWS_OF(paces); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        f.depths[1][0][0] = 1.25 * IN;
        f.job.crew.pace = paces[i];
        fx_plan(&f, &arena, &plan);
        const gb_batching *b = &fx_of(&plan, FX_BED.id)->batching;
        /* 3.4218 / 2.00521 = 1.7065 h a bag, and the first batch is a bag */
        cr_expect(fx_near(b->bag_time.s / HOUR, 1.7065, 0.0005), "pace %zu: %.5f h", i,
                  b->bag_time.s / HOUR);
        cr_expect(fx_near(b->time_to_place.s, b->bag_time.s, 1e-6), "pace %zu: %.3f s", i,
                  b->time_to_place.s);
        gb_arena_release(&arena);
    }
}

/* A pace of setting stone says nothing of joints, cores and slabs. */
static const struct {
    const char *id;
    gb_layer_kind kind;
    gb_pace pace;
    bool known;
} FITS[] = {
    {"bed, none", GB_BED, {NAN, NAN, NAN, 1}, false},
    {"bed, by area", GB_BED, {NAN, 0.001, NAN, 1}, true},
    {"bed, by treads", GB_BED, {0.001, NAN, NAN, 1}, true},
    {"bed, by volume", GB_BED, {NAN, NAN, 0.0001, 1}, true},
    {"slab, by area", GB_SLAB, {NAN, 0.001, NAN, 1}, false},
    {"slab, by treads", GB_SLAB, {0.001, NAN, NAN, 1}, false},
    {"slab, by volume", GB_SLAB, {NAN, NAN, 0.0001, 1}, true},
    {"joint, by area", GB_JOINT, {NAN, 0.001, NAN, 1}, false},
    {"pointing, by area", GB_POINTING, {NAN, 0.001, NAN, 1}, false},
    {"pointing, by volume", GB_POINTING, {NAN, NAN, 0.0001, 1}, true},
    {"core, by area", GB_CORE, {NAN, 0.001, NAN, 1}, false},
    {"core, by volume", GB_CORE, {NAN, NAN, 0.0001, 1}, true},
    {"volume, by treads", GB_VOLUME_LAYER, {0.001, NAN, NAN, 1}, false},
};

/* `beds` beds of the mix lie before the layer of that kind. */
static void expect_time(size_t at, size_t beds) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    f.job.crew.pace = FITS[at].pace;
    for (size_t i = 0; i <= beds; i++) {
        fx_piece(&f, "treads", GB_TREAD, 4, 5 * FT, 14 * IN);
        gb_layer *layer =
            fx_layer(&f, i < beds ? GB_BED : FITS[at].kind, &FX_BED, 1.25 * IN);
        layer->volume.m3 = 1 * FT3;
        layer->joint_length.m = 12 * FT;
        layer->joint_width.m = 1 * IN;
    }
    fx_plan(&f, &arena, &plan);
    const gb_mix_plan *p = &plan.mixes[0];
    const gb_batching *b = &p->batching;
    cr_expect(isnan(b->bag_time.s) != FITS[at].known, "%s, %zu beds: %.1f s a bag",
              FITS[at].id, beds, b->bag_time.s);
    cr_expect(isnan(b->time_to_place.s) != FITS[at].known, "%s, %zu beds: %.1f s",
              FITS[at].id, beds, b->time_to_place.s);
    cr_expect(fx_cautions(p, GB_C_NO_PACE) == (FITS[at].known ? 0u : 1u),
              "%s, %zu beds: caution", FITS[at].id, beds);
    gb_arena_release(&arena);
}

Test(batch, no_time_without_a_pace_that_fits) {
    for (size_t i = 0; i < ROWS_OF(FITS); i++)
        for (size_t beds = 0; beds < 3; beds++)
            expect_time(i, beds);
}

Test(batch, pace_as_area) {
    fx_job f;
    double m2_s = 0;
    fx_empty(&f);
    cr_expect(gb_area_pace(&f.job, &f.job.crew.pace, &m2_s) == GB_OK && isnan(m2_s),
              "none stated");
    f.job.crew.pace.m3_s = 0.001;
    cr_expect(gb_area_pace(&f.job, &f.job.crew.pace, &m2_s) == GB_OK && isnan(m2_s),
              "by volume");
    f.job.crew.pace.m2_s = 0.002;
    cr_expect(gb_area_pace(&f.job, &f.job.crew.pace, &m2_s) == GB_OK && m2_s == 0.002,
              "by area");
    f.job.crew.pace.m2_s = NAN;
    f.job.crew.pace.treads_s = 3 / HOUR;
    cr_expect(gb_area_pace(&f.job, &f.job.crew.pace, &m2_s) == GB_NO_PACE,
              "treads, and no piece");
    cr_expect(m2_s == 0.002, "nothing is written where there is no pace");
    fx_piece(&f, "landing", GB_LANDING, 1, 5 * FT, 6 * FT);
    cr_expect(gb_area_pace(&f.job, &f.job.crew.pace, &m2_s) == GB_NO_PACE,
              "treads, and only a landing");
    fx_piece(&f, "cores", GB_TREAD, 7, NAN, NAN);
    cr_expect(gb_area_pace(&f.job, &f.job.crew.pace, &m2_s) == GB_NO_PACE,
              "treads, and only one without a size");
    fx_piece(&f, "treads", GB_TREAD, 7, 5 * FT, 14 * IN)->overhang_front.m = 2 * IN;
    cr_expect(gb_area_pace(&f.job, &f.job.crew.pace, &m2_s) == GB_OK);
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

/* A hundred thousand batches are planned, one more is refused; a mixer that makes no
   batch at all has none to count. */
static const struct {
    const char *id;
    double bags, usable; /* of the blend, 0.66 ft3 a bag */
    size_t count;        /* 0: no batch */
    gb_status status;
} MANY[] = {
    {"whole bags", 100000, 0.66, 100000, GB_OK},
    {"one more", 100001, 0.66, 0, GB_OVERFLOW},
    {"half a bag more", 100000.5, 0.66, 0, GB_OVERFLOW},
    {"eighths", 12500, 0.0825, 100000, GB_OK},
    {"an eighth more", 12500.125, 0.0825, 0, GB_OVERFLOW},
    {"no batch", 100001, 0.08, 0, GB_OK},
};

Test(batch, more_than_a_hundred_thousand_are_refused) {
    for (size_t i = 0; i < ROWS_OF(MANY); i++) {
        gb_arena arena;
        gb_plan plan = {0};
        const gb_mix *bad = NULL;
        fx_job f;
        fx_open(&arena);
        fx_empty(&f);
        fx_volume(&f, &FX_BLEND, MANY[i].bags * 0.66 * FT3);
        f.job.crew.mixer.usable.m3 = MANY[i].usable * FT3;
        gb_status s = gb_make_plan(&f.job, &arena, &plan, &bad);
        cr_expect(s == MANY[i].status, "%s: status %d", MANY[i].id, s);
        if (s == GB_OK)
            cr_expect(plan.mixes[0].batching.batch_count == MANY[i].count, "%s: %zu",
                      MANY[i].id, plan.mixes[0].batching.batch_count);
        else
            cr_expect(bad == &FX_BLEND && plan.job == NULL, "%s: the mix is named",
                      MANY[i].id);
        gb_arena_release(&arena);
    }
}

/* What cannot be batched with this mixer and crew is still needed and bought: 2.57285
   bags, unrounded, of 94 lb of cement and 320 lb of sand with its own 10 %; and 22.402 lb
   of water a bag at 5 %. Bags: 8.80382 ft3 x 1498 / 320 lb. */
Test(batch, what_no_batch_holds_is_still_bought) {
    const struct {
        const char *id;
        double usable, most, pace; /* ft3, lb, treads an hour */
        gb_limit limit;
    } rows[] = {{"volume", 0.4, NAN, NAN, GB_LIMIT_VOLUME},
                {"mass", 6, 50, NAN, GB_LIMIT_MASS},
                {"time", 6, NAN, 0.3, GB_LIMIT_TIME}};
    double bags = 1.1 * (7 * 70.0 / 12 * 1.25 / 12 + 3.75) * FT3 * 1498 / (320 * LB);
    cr_expect(fx_near(bags, 2.57285, 0.0001), "the arithmetic above: %.5f", bags);
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        f.pieces[0].layer_count = f.pieces[1].layer_count = 1; /* no slurry */
        f.job.mix_count = 1;
        f.job.crew.mixer = (gb_mixer){.kind = GB_PADDLE,
                                      .usable = {rows[i].usable * FT3},
                                      .most = {rows[i].most * LB}};
        f.job.crew.pace.treads_s = rows[i].pace / HOUR;
        fx_plan(&f, &arena, &plan);
        const gb_batching *b = &plan.mixes[0].batching;
        cr_expect(b->batch_count == 0 && b->batches == NULL, "%s", rows[i].id);
        cr_expect(b->limit == rows[i].limit && b->most_bags == 0, "%s", rows[i].id);
        cr_expect(isnan(b->time_to_place.s), "%s: no batch, no time", rows[i].id);
        cr_expect(fx_near(b->bags_gauged, bags, 1e-9), "%s: %.6f", rows[i].id,
                  b->bags_gauged);
        cr_expect(
            fx_near(fx_supply(&plan, FX_CEMENT.name)->mass.kg / LB, 94 * bags, 1e-6),
            "%s: cement", rows[i].id);
        cr_expect(fx_near(fx_supply(&plan, FX_SAND.name)->mass.kg / LB, 352 * bags, 1e-6),
                  "%s: sand", rows[i].id);
        cr_expect(fx_near(plan.water.m3 * 1000 / LB, 22.402 * bags, 0.001), "%s: %.4f lb",
                  rows[i].id, plan.water.m3 * 1000 / LB);
        gb_arena_release(&arena);
    }
}

/* However little is needed, it takes a bag and a batch, and the batch holds something. */
Test(batch, a_trace_is_a_batch) {
    const double bags[] = {1e-3, 1e-6, 1e-9, 1e-10};
    for (size_t i = 0; i < ROWS_OF(bags); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_empty(&f);
        fx_label(&f, &FX_BED, 94 * LB, 3 * FT3, true);
        fx_volume(&f, &FX_BED, bags[i] * 3 * FT3);
        fx_plan(&f, &arena, &plan);
        const gb_batching *b = &plan.mixes[0].batching;
        cr_assert(b->batch_count == 1 && b->bags_whole == 1, "%g: %zu", bags[i],
                  b->batch_count);
        cr_expect(b->batches[0].bags == 1.0 / 32, "%g: %g bags", bags[i],
                  b->batches[0].bags);
        gb_arena_release(&arena);
    }
}

/* 1e-11 of a bag is needed as well, and a batch of nothing is none. */
Test(batch, a_batch_of_nothing_is_none) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    fx_label(&f, &FX_BED, 94 * LB, 3 * FT3, true);
    fx_volume(&f, &FX_BED, 1e-11 * 3 * FT3);
    fx_plan(&f, &arena, &plan);
    const gb_batching *b = &plan.mixes[0].batching;
    for (size_t i = 0; i < b->batch_count; i++)
        cr_expect(b->batches[i].bags > 0, "batch %zu holds %g bags", i,
                  b->batches[i].bags);
    cr_expect(b->bags_gauged >= b->bags_needed * (1 - 1e-9), "%g of %g bags",
              b->bags_gauged, b->bags_needed);
    gb_arena_release(&arena);
}

/* A need a hair over so many full batches: counted as so many, the last one is full and
   not an eighth over what the mixer takes; counted as one more, that one holds it. */
Test(batch, a_hair_over_full_batches_overfills_none) {
    const struct {
        const gb_mix *mix;
        double yield, bags, usable; /* usable in bags */
    } rows[] = {
        {&FX_BED, 3, 20.00000001, 1},      {&FX_BED, 3, 100.00000005, 1},
        {&FX_BED, 3, 40.00000002, 2},      {&FX_BED, 3, 10.000000005, 0.125},
        {&FX_BLEND, 0.66, 20.00000001, 1}, {&FX_BLEND, 0.66, 10.000000005, 0.125},
    };
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_empty(&f);
        if (rows[i].mix == &FX_BED)
            fx_label(&f, &FX_BED, 94 * LB, 3 * FT3, true);
        fx_volume(&f, rows[i].mix, rows[i].bags * rows[i].yield * FT3);
        f.job.crew.mixer.usable.m3 = rows[i].usable * rows[i].yield * FT3;
        fx_plan(&f, &arena, &plan);
        const gb_batching *b = &plan.mixes[0].batching;
        cr_assert(b->batch_count > 0);
        for (size_t k = 0; k < b->batch_count; k++)
            cr_expect(b->batches[k].bags <= rows[i].usable,
                      "row %zu: batch %zu of %zu holds %g bags in a mixer for %g", i,
                      k + 1, b->batch_count, b->batches[k].bags, rows[i].usable);
        gb_arena_release(&arena);
    }
}

/* The plan tells whether the job states a label of its own, or a yield it measured. */
Test(batch, own_label_is_told) {
    for (int measured = 0; measured < 2; measured++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        fx_plan(&f, &arena, &plan);
        for (size_t m = 0; m < plan.mix_count; m++)
            cr_expect(plan.mixes[m].own_label == false, "none is stated");
        fx_label(&f, &FX_BED, 94 * LB, 3.4 * FT3, measured);
        fx_plan(&f, &arena, &plan);
        cr_expect(fx_of(&plan, FX_BED.id)->own_label, "the bed's, measured %d", measured);
        cr_expect(fx_of(&plan, FX_SLURRY.id)->own_label == false, "not the slurry's");
        gb_arena_release(&arena);
    }
}

/* A part whose material was never found makes no plan, whichever part it is. */
Test(batch, a_part_without_its_material_is_refused) {
    for (size_t part = 0; part < 2; part++) {
        gb_arena arena;
        gb_plan plan = {0};
        const gb_mix *bad = NULL;
        fx_job f;
        fx_mix m;
        fx_open(&arena);
        fx_empty(&f);
        fx_site_mix(&m, 1, 0, 4, GB_STIFF);
        m.parts[1 - part].material = NULL;
        fx_volume(&f, &m.mix, 1 * FT3);
        gb_status s = gb_make_plan(&f.job, &arena, &plan, &bad);
        cr_expect(s == GB_NOT_POSITIVE && bad == &m.mix, "part %zu: status %d", 1 - part,
                  s);
        gb_arena_release(&arena);
    }
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

/* A bag of 47 lb stated by the job makes half of 3.4218 ft3: three of them fit 6 ft3, and
   two, at half of 1.7065 h, are placed in the 2 h. */
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
