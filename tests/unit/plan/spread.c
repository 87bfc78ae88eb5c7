/* How sure the bags of a need are: what the yield leaves, what measured depths leave, and
   both together. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

enum { JOBS = 200 };
static const gb_mass OWN_PACK = {NAN};

static const gb_material STONE = {.name = "stone",
                                  .kind = GB_COARSE,
                                  .bulk = {100.0 * LB / FT3},
                                  .dry_loose = {NAN},
                                  .gravity = 2.65,
                                  .pack = {NAN}};

static double spread_of(const gb_mix *mix, const gb_label *own, bool measured) {
    gb_recipe r = {0};
    cr_assert(gb_make_recipe(mix, own, measured, OWN_PACK, &r) == GB_OK, "%s", mix->id);
    return r.spread.of_one;
}

/* 4 % computed, 6 % with stone, 2 % by a label, 1 % measured on site. */
Test(spread, usual_one_of_each_route) {
    const gb_label own = {.bag = {94 * LB}, .yield = {3.4 * FT3}, .spread = {NAN}};
    const gb_label bag = {.bag = {80 * LB}, .yield = {0.66 * FT3}, .spread = {NAN}};
    cr_expect(spread_of(&FX_BED, NULL, false) == 0.04);
    cr_expect(spread_of(&FX_LIME_MORTAR, NULL, false) == 0.04);
    cr_expect(spread_of(&FX_SLURRY, NULL, false) == 0.04);
    cr_expect(spread_of(&FX_BLEND, NULL, false) == 0.02);
    cr_expect(spread_of(&FX_BED, &own, false) == 0.02);
    cr_expect(spread_of(&FX_BED, &own, true) == 0.01);
    cr_expect(spread_of(&FX_BLEND, &bag, false) == 0.02);
    cr_expect(spread_of(&FX_BLEND, &bag, true) == 0.01);
}

Test(spread, a_mix_with_stone_is_less_sure) {
    fx_mix m;
    fx_site_mix(&m, 1, 0, 2, GB_PLASTIC);
    cr_expect(spread_of(&m.mix, NULL, false) == 0.04);
    m.materials[2] = STONE;
    m.parts[2] =
        (gb_part){.material_name = STONE.name, .material = &m.materials[2], .volume = 3};
    m.mix.part_count = 3;
    m.mix.water = FX_SLURRY.water; /* by the binder */
    cr_expect(spread_of(&m.mix, NULL, false) == 0.06);
}

/* What is stated goes before what is usual: the mix's for its own yield, the label's for
   the label's. None at all can be stated. */
Test(spread, stated_goes_before_usual) {
    const double shares[] = {0, 0.005, 0.03, 0.1, 0.5};
    for (size_t i = 0; i < ROWS_OF(shares); i++) {
        gb_mix site = FX_BED, blend = FX_BLEND;
        gb_label own = {.bag = {94 * LB}, .yield = {3.4 * FT3}, .spread = {shares[i]}};
        site.spread.of_one = blend.spread.of_one = shares[i];
        cr_expect(spread_of(&site, NULL, false) == shares[i]);
        cr_expect(spread_of(&blend, NULL, false) == shares[i]);
        cr_expect(spread_of(&FX_BED, &own, true) == shares[i]);
        own.spread.of_one = NAN;
        cr_expect(spread_of(&site, &own, true) == 0.01, "the mix's is not the label's");
    }
}

Test(spread, no_share_of_one_is_refused) {
    const double bad[] = {-0.01, 1, 2, INFINITY};
    for (size_t i = 0; i < ROWS_OF(bad); i++) {
        gb_mix mix = FX_BED;
        gb_recipe r = {.bag = {7}};
        mix.spread.of_one = bad[i];
        cr_expect(gb_make_recipe(&mix, NULL, false, OWN_PACK, &r) == GB_NOT_POSITIVE,
                  "%g", bad[i]);
        cr_expect(r.bag.kg == 7, "%g: nothing is written", bad[i]);
    }
}

/* One depth each: the yield's spread alone, of bags and of slurries. */
Test(spread, of_the_yield_alone) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    for (size_t m = 0; m < plan.mix_count; m++) {
        const gb_mix_plan *p = &plan.mixes[m];
        cr_expect(fx_same(p->need.bags, p->need.gross.m3 / p->recipe.yield.m3));
        cr_expect(fx_same(p->need.bags_spread, 0.04 * p->need.bags), "%s",
                  p->need.mix->id);
    }
    const gb_mix_plan *bed = fx_of(&plan, FX_BED.id);
    cr_expect(bed->batching.bags_needed == bed->need.bags);
    /* 8.804 ft3 by 3.4218 are 2.573 bags */
    cr_expect(fx_near(bed->need.bags_spread, 0.1029, 0.00005), "%.5f",
              bed->need.bags_spread);
    gb_arena_release(&arena);
}

/* A piece of 24 ft2 at 0.95 and 1.05 in: se 0.05 in, 5 % of the depth. With a yield of
   12 % both are a triangle of 5, 12 and 13. */
static void measured_job(fx_job *f, double yield_spread) {
    fx_empty(f);
    fx_piece(f, "a", GB_TREAD, 1, 4 * FT, 6 * FT);
    fx_depths(f, fx_layer(f, GB_BED, &FX_BED, NAN),
              (const double[]){0.95 * IN, 1.05 * IN}, 2);
    fx_label(f, &FX_BED, 94 * LB, 3.4 * FT3, true);
    f->labels[0].label.spread.of_one = yield_spread;
}

Test(spread, both_add_in_squares) {
    static const struct {
        double yield, both;
    } ROWS[] = {{0, 0.05}, {0.12, 0.13}, {0.0375, 0.0625}, {0.05, 0.0707106781187}};
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        measured_job(&f, ROWS[i].yield);
        fx_plan(&f, &arena, &plan);
        const gb_need *n = &plan.mixes[0].need;
        cr_expect(fx_near(n->bags_spread / n->bags, ROWS[i].both, 1e-12), "%g: %.12f",
                  ROWS[i].yield, n->bags_spread / n->bags);
        gb_arena_release(&arena);
    }
}

/* Waste raises the need and its spread alike, so the share stays. */
Test(spread, waste_leaves_the_share) {
    double share = 0;
    for (int percent = 0; percent <= 100; percent += 10) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        measured_job(&f, 0.03);
        fx_waste(&f, FX_BED.id, percent / 100.0);
        fx_plan(&f, &arena, &plan);
        const gb_need *n = &plan.mixes[0].need;
        if (percent == 0)
            share = n->bags_spread / n->bags;
        cr_expect(fx_near(n->bags_spread / n->bags, share, 1e-12), "%d %%", percent);
        gb_arena_release(&arena);
    }
}

/* Twice the pieces are twice the bags and twice what is not sure of them; more spread of
   the yield is never less of the bags'; and nothing else moves with it. */
Test(spread, laws_over_random_jobs) {
    for (unsigned seed = 1; seed <= JOBS; seed++) {
        gb_arena arena;
        gb_plan one, two, wide;
        fx_job f;
        fx_random r = fx_seeded(seed);
        fx_open(&arena);
        fx_random_job(&f, &r);
        fx_plan(&f, &arena, &one);
        const gb_mix *usual = f.mixes[0];
        gb_mix wider = *usual;
        wider.spread.of_one = 0.2;
        f.mixes[0] = &wider;
        fx_plan(&f, &arena, &wide);
        f.mixes[0] = usual;
        for (size_t i = 0; i < f.job.piece_count; i++)
            f.pieces[i].count *= 2;
        fx_plan(&f, &arena, &two);
        const gb_need *a = &one.mixes[0].need, *b = &two.mixes[0].need;
        cr_expect(fx_same(b->bags, 2 * a->bags), "seed %u", seed);
        cr_expect(fx_same(b->bags_spread, 2 * a->bags_spread), "seed %u", seed);
        const gb_mix_plan *w = &wide.mixes[0];
        bool own = one.mixes[0].own_label;
        cr_expect(own ? w->need.bags_spread == a->bags_spread
                      : w->need.bags_spread > a->bags_spread,
                  "seed %u", seed);
        cr_expect(w->need.bags == a->bags && w->need.spread.m3 == a->spread.m3 &&
                      w->batching.batch_count == one.mixes[0].batching.batch_count &&
                      w->batching.bags_gauged == one.mixes[0].batching.bags_gauged,
                  "seed %u: no batch changes by it", seed);
        for (size_t i = 0; i < one.supply_count; i++)
            cr_expect(wide.supplies[i].mass.kg == one.supplies[i].mass.kg,
                      "seed %u: nothing bought changes by it", seed);
        gb_arena_release(&arena);
    }
}
