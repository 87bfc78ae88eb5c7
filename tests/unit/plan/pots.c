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
    const size_t counts[] = {7, 4}; /* 7 / 1, and 7 / 2 up */
    for (size_t i = 0; i < 2; i++) {
        const gb_pot *pot = &p->pots[i];
        double n = (double)(i + 1);
        cr_expect(pot->take == p->need.takes[0] && pot->pieces == n, "pot %zu", i);
        cr_expect(pot->count == counts[i], "pot %zu: %zu", i, pot->count);
        cr_expect(fx_near(pot->area.m2 / FT2, n * 70 / 12, 1e-9), "pot %zu: area", i);
        cr_expect(fx_near(pot->binder.kg / LB, n * lb, 1e-9), "pot %zu: %.5f lb", i,
                  pot->binder.kg / LB);
        cr_expect(fx_near(pot->first.kg / LB, n * lb * 0.35, 1e-9), "pot %zu: first", i);
        cr_expect(fx_near(pot->usual.kg / LB, n * lb * 0.45, 1e-9), "pot %zu: usual", i);
        cr_expect(fx_near(pot->most.kg / LB, n * lb * 0.50, 1e-9), "pot %zu: most", i);
        cr_expect(fx_same(pot->depth.m, IN / 16), "pot %zu: depth", i);
    }
    gb_arena_release(&arena);
}

/* Three treads an hour are one tread, 5.8333 ft2, in the 20 min that a pot lives. */
static const struct {
    const char *id;
    double treads_h; /* NaN: no pace */
    double air;      /* F */
    bool one, two;   /* treads, placed within the life */
    double part;     /* of the landing's 30 ft2 in a pot */
    size_t count;
} PACES[] = {
    {"one exactly", 3, NAN, true, false, 5.8333333333 / 30, 6}, /* 30 / 5.83 = 5.14 */
    {"hardly one", 2.999, NAN, false, false, 5.8333333333 / 30 * 2.999 / 3, 6},
    {"two exactly", 6, NAN, true, true, 11.6666666667 / 30, 3}, /* 2.57 */
    {"hardly two", 5.999, NAN, true, false, 11.6666666667 / 30 * 5.999 / 6, 3},
    {"all of the landing", 16, NAN, true, true, 1, 1}, /* 31.1 ft2 in 20 min */
    {"in heat, 10 min", 6, 101, true, false, 5.8333333333 / 30, 6},
    /* without a pace about one tread, 0.55 m2 (common practice): 5.92 of 30 ft2 */
    {"no pace", NAN, NAN, true, true, 0.55 / (30 * FT2), 6},
};

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
        cr_expect(p->pots[1].fits_life == PACES[i].two, "%s: two treads", PACES[i].id);
        const gb_pot *pot = &p->pots[2];
        cr_expect(pot->take == p->need.takes[1] && pot->fits_life, "%s", PACES[i].id);
        cr_expect(fx_near(pot->pieces, PACES[i].part, 1e-9), "%s: %.6f of the landing",
                  PACES[i].id, pot->pieces);
        cr_expect(fx_near(pot->area.m2 / FT2, 30 * PACES[i].part, 1e-6), "%s: area",
                  PACES[i].id);
        cr_expect(pot->count == PACES[i].count, "%s: %zu pots", PACES[i].id, pot->count);
        double lb = 30.0 / 192 * 1.2 * cement_lb_ft3() * PACES[i].part;
        cr_expect(fx_near(pot->binder.kg / LB, lb, 1e-6), "%s: %.5f lb", PACES[i].id,
                  pot->binder.kg / LB);
        gb_arena_release(&arena);
    }
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
