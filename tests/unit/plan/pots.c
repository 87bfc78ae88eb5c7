/* Pots of slurry: one or two pieces, or a stretch of a large one. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

/* Cement in a ft3 of paste at water to cement 0.45, lb: 62.428 / (1/3.15 + 0.45). */
static double cement_lb_ft3(void) {
    return 1000 * FT3 / LB / (1 / 3.15 + 0.45); /* 81.34 */
}

/* The library job: 5.8333 ft2 x 1/192 ft x 1.2 = 0.036458 ft3 a tread, 2.9656 lb of
   cement; first 0.875 x 0.40, usual 0.45, most 0.50 of it. */
Test(pots, one_and_two_treads) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    const gb_mix_plan *p = fx_of(&plan, FX_SLURRY.id);
    cr_assert(p->is_slurry && p->pot_count == 3);
    double lb = 70.0 / 12 / 192 * 1.2 * cement_lb_ft3();
    cr_expect(fx_near(lb, 2.9656, 0.0005), "the arithmetic above: %.4f", lb);
    const size_t counts[] = {7, 4};    /* 7 / 1, and 7 / 2 up */
    const double minutes[] = {20, 40}; /* three treads an hour */
    for (size_t i = 0; i < 2; i++) {
        const gb_pot *pot = &p->pots[i];
        double n = (double)(i + 1);
        cr_expect(pot->take == p->need.takes[0] && pot->pieces == n, "pot %zu", i);
        cr_expect(pot->count == counts[i], "pot %zu: %zu", i, pot->count);
        cr_expect(fx_near(pot->area.m2 / FT2, n * 70 / 12, 1e-9), "pot %zu: area", i);
        cr_expect(fx_near(pot->bags * 94, n * lb, 1e-9), "pot %zu: %.5f lb", i,
                  pot->bags * 94);
        cr_expect(fx_near(pot->first.kg / LB, n * lb * 0.35, 1e-9), "pot %zu: first", i);
        cr_expect(fx_near(pot->usual.kg / LB, n * lb * 0.45, 1e-9), "pot %zu: usual", i);
        cr_expect(fx_near(pot->most.kg / LB, n * lb * 0.50, 1e-9), "pot %zu: most", i);
        cr_expect(fx_same(pot->depth.m, IN / 16), "pot %zu: depth", i);
        cr_expect(fx_near(pot->time.s / 60, minutes[i], 1e-9), "pot %zu: %.4f min", i,
                  pot->time.s / 60);
    }
    gb_arena_release(&arena);
}

/* Three treads an hour are one tread, 5.8333 ft2, in the 20 min that a pot lives. The
   landing, 30 ft2, is dealt out equally to the fewest pots that may live so long; each
   takes its share of 30 / 17.5 h = 102.857 min at three treads an hour. */
static const struct {
    const char *id;
    double treads_h; /* NaN: no pace */
    double air;      /* F */
    bool one, two;   /* treads, placed within the life */
    size_t count;    /* pots for the landing */
    double tread_min, landing_min;
} PACES[] = {
    /* 30 / 5.8333 = 5.14; 102.857 / 6 */
    {"one exactly", 3, NAN, true, false, 6, 20, 17.142857},
    /* 30 / (5.8333 x 2.999 / 3) = 5.14; 60 / 2.999: a stone is brushed last of all,
       however long its setting takes */
    {"hardly one", 2.999, NAN, true, false, 6, 20.006669, 17.148573},
    /* 30 / 11.667 = 2.57; 51.4286 / 3 */
    {"two exactly", 6, NAN, true, true, 3, 10, 17.142857},
    {"hardly two", 5.999, NAN, true, false, 3, 10.001667, 17.145715},
    /* 31.1 ft2 in 20 min; 102.857 x 3 / 16 */
    {"all of the landing", 16, NAN, true, true, 1, 3.75, 19.285714},
    /* 10 min: 30 / 5.8333 = 5.14; 51.4286 / 6 */
    {"in heat", 6, 101, true, false, 6, 10, 8.571429},
    /* without a pace about one tread, 0.55 m2 (common practice): 5.92 of 30 ft2, 5.07 */
    {"no pace", NAN, NAN, true, true, 6, NAN, NAN},
};

/* The landing's pots: equal parts of it that make up the whole. */
static void expect_landing(size_t i, const gb_mix_plan *p) {
    const gb_pot *pot = &p->pots[p->pot_count - 1];
    const char *id = PACES[i].id;
    double n = (double)PACES[i].count;
    cr_expect(pot->take == p->need.takes[1] && pot->fits_life, "%s", id);
    cr_expect(pot->count == PACES[i].count, "%s: %zu pots", id, pot->count);
    cr_expect(fx_near(pot->pieces, 1 / n, 1e-12), "%s: %.6f of the landing", id,
              pot->pieces);
    cr_expect(fx_near(pot->area.m2 / FT2, 30 / n, 1e-9), "%s: %.4f ft2", id,
              pot->area.m2 / FT2);
    double lb = 30.0 / 192 * 1.2 * cement_lb_ft3() / n;
    cr_expect(fx_near(pot->bags * 94, lb, 1e-9), "%s: %.5f lb", id, pot->bags * 94);
    cr_expect(fx_near(pot->usual.kg / LB, lb * 0.45, 1e-9), "%s: usual", id);
    cr_expect(fx_near(pot->time.s / 60, PACES[i].landing_min, 1e-6), "%s: %.6f min", id,
              pot->time.s / 60);
}

Test(pots, life_and_stretches) {
    for (size_t i = 0; i < ROWS_OF(PACES); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        f.job.crew.pace.treads_s = PACES[i].treads_h / HOUR;
        f.job.weather.air.c = DEG_F(PACES[i].air);
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = fx_of(&plan, FX_SLURRY.id);
        cr_assert(p->pot_count == 3, "%s: %zu pots", PACES[i].id, p->pot_count);
        cr_expect(p->pots[0].fits_life == PACES[i].one, "%s: one tread", PACES[i].id);
        cr_expect(p->pots[1].fits_life == PACES[i].two, "%s: two", PACES[i].id);
        for (size_t k = 0; k < 2; k++)
            cr_expect(fx_near(p->pots[k].time.s / 60,
                              (double)(k + 1) * PACES[i].tread_min, 1e-6),
                      "%s: %zu treads take %.6f min", PACES[i].id, k + 1,
                      p->pots[k].time.s / 60);
        expect_landing(i, p);
        gb_arena_release(&arena);
    }
}

/* A landing of 30 ft2 that is laid in n lives of a pot to the last bit, n from 1 to 60,
   or in a little more than n: n pots, or one more. 20 min at 90 / n ft2 an hour are 30 /
   n. */
Test(pots, as_many_as_the_life_asks_for) {
    for (size_t n = 1; n <= 60; n++) {
        for (size_t more = 0; more < 2; more++) {
            gb_arena arena;
            gb_plan plan;
            fx_job f;
            fx_open(&arena);
            fx_empty(&f);
            fx_piece(&f, "landing", GB_LANDING, 1, 5 * FT, 6 * FT);
            fx_layer(&f, GB_SLURRY, &FX_SLURRY, NAN);
            double slower = more == 1 ? 1 - 1e-6 : 1;
            f.job.crew.pace.m2_s = 90 / (double)n * slower * FT2 / HOUR;
            fx_plan(&f, &arena, &plan);
            const gb_pot *pot = &plan.mixes[0].pots[0];
            cr_expect(pot->count == n + more, "%zu lives and %zu: %zu pots", n, more,
                      pot->count);
            cr_expect(pot->fits_life && pot->time.s <= 1200 * (1 + 1e-9),
                      "%zu lives and %zu: %.3f s in 1200", n, more, pot->time.s);
            gb_arena_release(&arena);
        }
    }
}

/* The pots of a landing sum to its need exactly, whatever its size, waste and pace; and
   one fewer of them, of that much more each, would outlive the pot. */
Test(pots, sum_to_the_need) {
    fx_random r = fx_seeded(7);
    for (size_t i = 0; i < 300; i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_empty(&f);
        fx_waste(&f, FX_SLURRY.id, fx_between(&r, 0, 0.3));
        fx_piece(&f, "landing", GB_LANDING, 1, fx_between(&r, 2, 20) * FT,
                 fx_between(&r, 1, 12) * FT);
        fx_layer(&f, GB_SLURRY, &FX_SLURRY, fx_between(&r, 0.05, 0.3) * IN);
        f.job.crew.pace.m2_s = fx_between(&r, 2, 60) * FT2 / HOUR;
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = &plan.mixes[0];
        const gb_pot *pot = &p->pots[0];
        double n = (double)pot->count;
        /* cement in a m3 of paste: 1000 / (1/3.15 + 0.45) */
        double kg = p->need.gross.m3 * 1000 / (1 / 3.15 + 0.45);
        cr_expect(p->pot_count == 1 && fx_same(n * pot->pieces, 1), "row %zu", i);
        cr_expect(fx_near(n * pot->bags * 94 * LB, kg, 1e-9 * kg),
                  "row %zu: %.6f of %.6f kg", i, n * pot->bags * 94 * LB, kg);
        cr_expect(fx_near(n * pot->usual.kg, 0.45 * kg, 1e-9 * kg), "row %zu: water", i);
        double all_s =
            f.pieces[0].shape.front.m * f.pieces[0].shape.width.m / f.job.crew.pace.m2_s;
        cr_expect(fx_near(n * pot->time.s, all_s, 1e-6), "row %zu: %.3f of %.3f s", i,
                  n * pot->time.s, all_s);
        cr_expect(pot->time.s <= 1200 * (1 + 1e-9), "row %zu: %.3f s", i, pot->time.s);
        cr_expect(pot->count == 1 || all_s / (n - 1) > 1200, "row %zu: %zu pots", i,
                  pot->count);
        gb_arena_release(&arena);
    }
}

/* A slurry with sand, 1 : 1, lb a bag: 94 of cement, 80 of sand, and 0.22 x 94 + 0.12 x
   80 = 30.28 of water, least 0.85 and most 1.12 of it; the sand brings its own, and first
   is 0.75 of the least to add. It brings the least at 25.738 / 80 = 32.17 %. */
static const struct {
    const char *id;
    double moisture, own; /* lb a bag */
    size_t pots;
} SANDED[] = {{"dry", 0, 0, 2},
              {"damp", 0.05, 4, 2},
              {"wet", 0.08, 6.4, 2},
              {"hardly", 0.321, 25.68, 2},
              {"too wet", 0.322, 0, 0}};

static void expect_sanded(size_t i, const gb_mix_plan *p) {
    const char *id = SANDED[i].id;
    cr_expect(p->pot_count == SANDED[i].pots, "%s: %zu pots", id, p->pot_count);
    cr_expect(fx_cautions(p, GB_C_SAND_TOO_WET) == (SANDED[i].pots == 0), "%s", id);
    for (size_t k = 0; k < p->pot_count; k++) {
        const gb_pot *pot = &p->pots[k];
        double bags = pot->pieces / 7 * p->need.gross.m3 / p->recipe.yield.m3;
        double own = SANDED[i].own;
        cr_expect(fx_near(pot->bags, bags, 1e-12), "%s: %.6f bags", id, pot->bags);
        cr_expect(fx_near(pot->first.kg / LB, 0.75 * bags * (25.738 - own), 1e-9),
                  "%s: first %.6f lb", id, pot->first.kg / LB);
        cr_expect(fx_near(pot->usual.kg / LB, bags * (30.28 - own), 1e-9),
                  "%s: usual %.6f lb", id, pot->usual.kg / LB);
        cr_expect(fx_near(pot->most.kg / LB, bags * (33.9136 - own), 1e-9),
                  "%s: most %.6f lb", id, pot->most.kg / LB);
    }
}

Test(pots, the_sand_brings_its_water) {
    for (size_t i = 0; i < ROWS_OF(SANDED); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_mix m;
        fx_open(&arena);
        fx_empty(&f);
        fx_site_mix(&m, 1, 0, 1, GB_PLASTIC);
        f.job.sand.moisture.of_one = SANDED[i].moisture;
        f.job.sand.bulking.of_one = 0.1; /* pots are weighed: it plays no part */
        fx_piece(&f, "treads", GB_TREAD, 7, 5 * FT, 14 * IN);
        fx_layer(&f, GB_SLURRY, &m.mix, 0.125 * IN);
        fx_plan(&f, &arena, &plan);
        expect_sanded(i, &plan.mixes[0]);
        gb_arena_release(&arena);
    }
}

/* A pace by volume is one of laying beds and says no area. */
Test(pots, no_time_by_a_pace_of_volume) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    f.job.crew.pace = (gb_pace){NAN, NAN, 2 * FT3 / HOUR, 1};
    fx_plan(&f, &arena, &plan);
    const gb_mix_plan *p = fx_of(&plan, FX_SLURRY.id);
    for (size_t i = 0; i < p->pot_count; i++)
        cr_expect(isnan(p->pots[i].time.s) && p->pots[i].fits_life, "pot %zu", i);
    cr_expect(p->pot_count == 3 && p->pots[2].count == 6, "as without a pace");
    gb_arena_release(&arena);
}

/* One piece is a stretch, two are pieces: by how many there are, not by their name. */
Test(pots, by_the_number_of_pieces) {
    const struct {
        gb_piece_kind kind;
        size_t pieces, pots;
    } rows[] = {
        {GB_TREAD, 1, 1}, {GB_TREAD, 2, 2}, {GB_LANDING, 1, 1}, {GB_LANDING, 2, 2}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_empty(&f);
        fx_piece(&f, "pieces", rows[i].kind, rows[i].pieces, 5 * FT, 1 * FT);
        fx_layer(&f, GB_SLURRY, &FX_SLURRY, NAN);
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = &plan.mixes[0];
        cr_expect(p->pot_count == rows[i].pots, "row %zu: %zu", i, p->pot_count);
        /* 5 ft2 are 0.4645 m2, less than a usual pot: the whole piece */
        cr_expect(p->pots[0].pieces == 1, "row %zu: %.3f", i, p->pots[0].pieces);
        for (size_t k = 0; k < p->pot_count; k++)
            cr_expect(p->pots[k].pieces * (double)p->pots[k].count >=
                          (double)rows[i].pieces - 1e-9,
                      "row %zu: the pots do all", i);
        gb_arena_release(&arena);
    }
}

Test(pots, a_slurry_has_pots_and_no_batches) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    const gb_mix_plan *slurry = fx_of(&plan, FX_SLURRY.id);
    const gb_mix_plan *bed = fx_of(&plan, FX_BED.id);
    cr_expect(slurry->batching.batch_count == 0 && slurry->batching.batches == NULL);
    cr_expect(bed->is_slurry == false && bed->pot_count == 0);
    gb_arena_release(&arena);
}
