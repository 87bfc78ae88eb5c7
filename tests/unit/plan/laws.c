/* Laws of planning: scaling, order, and which way a figure moves. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "fixture.h"

enum { JOBS = 300 };
static const gb_mass OWN_PACK = {NAN};

/* Masses of a plan before batches are rounded: bags needed times the parts of a bag. */
static double part_kg(const gb_mix_plan *p, size_t part) {
    return p->need.gross.m3 / p->recipe.yield.m3 * p->recipe.part[part].kg;
}

static void twice_as_many(const gb_plan *one, const gb_plan *two, const char *id) {
    for (size_t i = 0; i < one->take_count; i++)
        cr_expect(fx_same(two->takes[i].net.m3, 2 * one->takes[i].net.m3), "%s: take %zu",
                  id, i);
    for (size_t m = 0; m < one->mix_count; m++) {
        const gb_mix_plan *a = &one->mixes[m], *b = &two->mixes[m];
        cr_expect(fx_same(b->need.net.m3, 2 * a->need.net.m3), "%s: net", id);
        cr_expect(fx_same(b->need.gross.m3, 2 * a->need.gross.m3), "%s: gross", id);
        for (size_t k = 0; k < a->need.mix->part_count; k++)
            cr_expect(fx_same(part_kg(b, k), 2 * part_kg(a, k)), "%s: part %zu", id, k);
        cr_expect(fx_same(b->recipe.yield.m3, a->recipe.yield.m3), "%s: yield", id);
        if (!a->is_slurry)
            cr_expect(fx_same(b->batching.bags_needed, 2 * a->batching.bags_needed),
                      "%s: bags", id);
    }
}

Test(laws, twice_the_pieces_are_twice_the_need) {
    for (unsigned seed = 0; seed <= JOBS; seed++) {
        gb_arena arena;
        gb_plan one, two;
        fx_job f;
        fx_random r = fx_seeded(seed);
        fx_open(&arena);
        if (seed == 0)
            fx_library(&f);
        else
            fx_random_job(&f, &r);
        fx_plan(&f, &arena, &one);
        for (size_t i = 0; i < f.job.piece_count; i++)
            f.pieces[i].count *= 2;
        fx_plan(&f, &arena, &two);
        twice_as_many(&one, &two, seed == 0 ? "library" : "random");
        gb_arena_release(&arena);
    }
}

/* A slurry is not rounded to bags, so its supply doubles as it stands. */
Test(laws, twice_the_slurry_is_twice_the_cement) {
    gb_arena arena;
    gb_plan one, two;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    fx_waste(&f, FX_SLURRY.id, 0.2);
    fx_waste(&f, FX_CEMENT.name, 0.05);
    fx_piece(&f, "treads", GB_TREAD, 7, 5 * FT, 14 * IN);
    fx_layer(&f, GB_SLURRY, &FX_SLURRY, NAN);
    fx_plan(&f, &arena, &one);
    f.pieces[0].count = 14;
    fx_plan(&f, &arena, &two);
    cr_expect(fx_same(two.supplies[0].mass.kg, 2 * one.supplies[0].mass.kg));
    cr_expect(fx_same(two.water.m3, 2 * one.water.m3));
    gb_arena_release(&arena);
}

/* The pieces of a job turned round; the layers move with their piece. */
static void turn_round(fx_job *f) {
    for (size_t i = 0, k = f->job.piece_count - 1; i < k; i++, k--) {
        gb_piece p = f->pieces[i];
        f->pieces[i] = f->pieces[k];
        f->pieces[k] = p;
    }
}

Test(laws, the_order_of_pieces_changes_no_need) {
    for (unsigned seed = 0; seed <= JOBS; seed++) {
        gb_arena arena;
        gb_plan one, two;
        fx_job f;
        fx_random r = fx_seeded(seed);
        fx_open(&arena);
        if (seed == 0)
            fx_library(&f);
        else
            fx_random_job(&f, &r);
        if (seed > 0) /* a pace in treads goes by the first tread: leave it out */
            f.job.crew.pace.treads_s = NAN;
        fx_plan(&f, &arena, &one);
        turn_round(&f);
        fx_plan(&f, &arena, &two);
        for (size_t m = 0; m < one.mix_count; m++) {
            const gb_mix_plan *a = &one.mixes[m];
            const gb_mix_plan *b = fx_of(&two, a->need.mix->id);
            cr_expect(fx_same(b->need.net.m3, a->need.net.m3), "seed %u: net", seed);
            cr_expect(fx_same(b->need.gross.m3, a->need.gross.m3), "seed %u", seed);
            cr_expect(fx_same(b->need.spread.m3, a->need.spread.m3), "seed %u", seed);
            cr_expect(b->batching.batch_count == a->batching.batch_count, "seed %u",
                      seed);
            cr_expect(fx_same(b->batching.bags_gauged, a->batching.bags_gauged),
                      "seed %u", seed);
        }
        for (size_t i = 0; i < one.supply_count; i++) {
            const gb_supply_need *s = &one.supplies[i];
            const char *name = s->material != NULL ? s->material->name : s->blend->id;
            cr_expect(fx_same(fx_supply(&two, name)->mass.kg, s->mass.kg), "seed %u: %s",
                      seed, name);
        }
        gb_arena_release(&arena);
    }
}

/* Waste in steps of 1 %: net stays, gross grows by net / 100, nothing ever shrinks. */
Test(laws, more_waste_is_never_less) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    double gross = 0, bags = 0, sand = 0, cement = 0;
    for (int percent = 0; percent <= 100; percent++) {
        fx_library(&f);
        for (size_t i = 0; i < f.job.waste_count; i++)
            f.wastes[i].share.of_one = percent / 100.0;
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = fx_of(&plan, FX_BED.id);
        cr_expect(fx_near(p->need.net.m3 / FT3, 8.003, 0.0005), "%d %%: net", percent);
        cr_expect(fx_same(p->need.gross.m3, p->need.net.m3 * (1 + percent / 100.0)),
                  "%d %%", percent);
        cr_expect(p->need.gross.m3 > gross, "%d %%: gross", percent);
        cr_expect(p->batching.bags_gauged >= bags, "%d %%: bags", percent);
        cr_expect(fx_supply(&plan, FX_SAND.name)->mass.kg >= sand, "%d %%", percent);
        cr_expect(fx_supply(&plan, FX_CEMENT.name)->mass.kg >= cement, "%d %%", percent);
        gross = p->need.gross.m3;
        bags = p->batching.bags_gauged;
        sand = fx_supply(&plan, FX_SAND.name)->mass.kg;
        cement = fx_supply(&plan, FX_CEMENT.name)->mass.kg;
    }
    gb_arena_release(&arena);
}

/* Waste of a mix is applied once: 1.1, never 1.1 x 1.1; waste of a material on top of it,
   and of no other material. */
Test(laws, waste_is_applied_once) {
    gb_arena arena;
    gb_plan plain, wasted;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    fx_piece(&f, "treads", GB_TREAD, 1, 4 * FT, 6 * FT);
    fx_layer(&f, GB_SLURRY, &FX_SLURRY, 1.0 * IN / 8);
    fx_plan(&f, &arena, &plain);
    fx_waste(&f, FX_SLURRY.id, 0.1);
    fx_plan(&f, &arena, &wasted);
    double once = wasted.supplies[0].mass.kg / plain.supplies[0].mass.kg;
    cr_expect(fx_near(once, 1.1, 1e-9), "%.6f", once);
    fx_waste(&f, FX_CEMENT.name, 0.2);
    fx_waste(&f, FX_SAND.name, 0.5);
    fx_plan(&f, &arena, &wasted);
    double both = wasted.supplies[0].mass.kg / plain.supplies[0].mass.kg;
    cr_expect(fx_near(both, 1.32, 1e-9), "1.1 x 1.2, not %.6f", both);
    cr_expect(fx_same(wasted.mixes[0].need.gross.m3, 1.1 * plain.mixes[0].need.gross.m3),
              "waste of a material is no need of a mix");
    gb_arena_release(&arena);
}

/* Moisture moves the water to add, by as much as the sand holds more; nothing else. */
Test(laws, moisture_moves_the_water_alone) {
    gb_arena arena;
    gb_plan dry, moist;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    f.job.sand.moisture.of_one = 0;
    fx_plan(&f, &arena, &dry);
    for (int percent = 1; percent <= 10; percent++) {
        f.job.sand.moisture.of_one = percent / 100.0;
        fx_plan(&f, &arena, &moist);
        for (size_t m = 0; m < dry.mix_count; m++) {
            const gb_recipe *a = &dry.mixes[m].recipe, *b = &moist.mixes[m].recipe;
            cr_expect(memcmp(a, b, sizeof *a) == 0, "%d %%: recipe %zu", percent, m);
            cr_expect(dry.mixes[m].batching.bags_gauged ==
                          moist.mixes[m].batching.bags_gauged,
                      "%d %%: batches of %zu", percent, m);
        }
        for (size_t i = 0; i < dry.supply_count; i++)
            cr_expect(dry.supplies[i].mass.kg == moist.supplies[i].mass.kg,
                      "%d %%: supply %zu", percent, i);
        /* 2.625 bags x 320 lb of sand; a pile too wet would take no water at all */
        double less = 2.625 * 320 * LB * percent / 100.0 / 1000;
        cr_expect(fx_near(dry.water.m3 - moist.water.m3, less, 1e-9), "%d %%: water",
                  percent);
    }
    gb_arena_release(&arena);
}

/* More water never makes less, over stiff and plastic mixes and both regimes. */
Test(laws, more_water_is_never_less_volume) {
    for (int sand = 1; sand <= 10; sand++) {
        double yield = 0;
        bool by_solids = false;
        for (int percent = 20; percent <= 120; percent += 2) {
            fx_mix m;
            gb_recipe r = {0};
            fx_site_mix(&m, 1, 0, sand, GB_PLASTIC);
            m.mix.water.usual.of_one = percent / 100.0;
            m.mix.water.least.of_one = 0.1;
            m.mix.water.most.of_one = 1.3;
            cr_assert(gb_make_recipe(&m.mix, NULL, false, OWN_PACK, &r) == GB_OK,
                      "1:%d at %d %%", sand, percent);
            cr_expect(r.yield.m3 >= yield, "1:%d at %d %%: %.6f after %.6f", sand,
                      percent, r.yield.m3, yield);
            cr_expect(by_solids == false || r.regime == GB_BY_SOLIDS,
                      "1:%d at %d %%: more water leads back to the sand", sand, percent);
            by_solids = r.regime == GB_BY_SOLIDS;
            yield = r.yield.m3;
        }
    }
}

/* A richer mix never has less cement in a volume, from 1:10 to 1:1/2 in quarters. */
Test(laws, richer_is_never_less_cement_per_volume) {
    const gb_consistency kinds[] = {GB_STIFF, GB_PLASTIC};
    for (size_t k = 0; k < ROWS_OF(kinds); k++) {
        double before = 0;
        size_t by_sand = 0, by_solids = 0;
        for (double sand = 10; sand >= 0.5; sand -= 0.25) {
            fx_mix m;
            gb_recipe r = {0};
            fx_site_mix(&m, 1, 0, sand, kinds[k]);
            cr_assert(gb_make_recipe(&m.mix, NULL, false, OWN_PACK, &r) == GB_OK);
            double cement = r.part[0].kg / r.yield.m3;
            cr_expect(cement >= before, "1:%.2f: %.3f kg/m3 after %.3f", sand, cement,
                      before);
            before = cement;
            by_sand += r.regime == GB_BY_SAND;
            by_solids += r.regime == GB_BY_SOLIDS;
        }
        cr_expect(by_sand > 0 && by_solids > 0, "both regimes are passed: %zu, %zu",
                  by_sand, by_solids);
    }
}

/* The parts behind the first may come in any order: the bag is the first one's. */
Test(laws, the_order_of_parts_changes_no_recipe) {
    for (double sand = 1; sand <= 9; sand += 0.5) {
        fx_mix a, b;
        gb_recipe r = {0}, s = {0};
        fx_site_mix(&a, 1, 0.5, sand, GB_PLASTIC);
        fx_site_mix(&b, 1, 0.5, sand, GB_PLASTIC);
        gb_part lime = b.parts[1];
        b.parts[1] = b.parts[2];
        b.parts[2] = lime;
        cr_assert(gb_make_recipe(&a.mix, NULL, false, OWN_PACK, &r) == GB_OK);
        cr_assert(gb_make_recipe(&b.mix, NULL, false, OWN_PACK, &s) == GB_OK);
        cr_expect(fx_same(s.yield.m3, r.yield.m3) && s.regime == r.regime, "%g", sand);
        cr_expect(fx_same(s.water_usual.kg, r.water_usual.kg), "%g", sand);
        cr_expect(fx_same(s.dry.kg, r.dry.kg) && fx_same(s.binder.kg, r.binder.kg) &&
                      fx_same(s.sand.kg, r.sand.kg),
                  "%g", sand);
        cr_expect(s.part[1].kg == r.part[2].kg && s.part[2].kg == r.part[1].kg, "%g",
                  sand);
    }
}

/* Parts all twice as large are the same mix: of one bag the same masses and yield. */
Test(laws, parts_are_a_ratio) {
    for (double scale = 0.125; scale <= 8; scale *= 2) {
        fx_mix a, b;
        gb_recipe r = {0}, s = {0};
        fx_site_mix(&a, 1, 1, 6, GB_PLASTIC);
        fx_site_mix(&b, scale, scale, 6 * scale, GB_PLASTIC);
        cr_assert(gb_make_recipe(&a.mix, NULL, false, OWN_PACK, &r) == GB_OK);
        cr_assert(gb_make_recipe(&b.mix, NULL, false, OWN_PACK, &s) == GB_OK);
        cr_expect(fx_same(s.yield.m3, r.yield.m3) && fx_same(s.dry.kg, r.dry.kg) &&
                      fx_same(s.water_usual.kg, r.water_usual.kg),
                  "times %g", scale);
    }
}

/* A yield of the user's own wins over the computed one, whatever the mix; masses and
   water stay those of the parts. */
Test(laws, an_own_yield_wins) {
    for (double sand = 1; sand <= 9; sand += 0.5)
        for (int percent = 80; percent <= 120; percent += 5) {
            fx_mix m;
            gb_recipe r = {0}, s = {0};
            fx_site_mix(&m, 1, 0, sand, GB_PLASTIC);
            cr_assert(gb_make_recipe(&m.mix, NULL, false, OWN_PACK, &r) == GB_OK);
            const gb_label own = {
                .bag = r.bag, .yield = {r.yield.m3 * percent / 100}, .spread = {NAN}};
            cr_assert(gb_make_recipe(&m.mix, &own, true, OWN_PACK, &s) == GB_OK);
            cr_expect(fx_same(s.yield.m3, own.yield.m3), "1:%g at %d %%", sand, percent);
            cr_expect(s.route == GB_MEASURED && s.regime == GB_BY_LABEL);
            cr_expect(s.dry.kg == r.dry.kg && s.water_usual.kg == r.water_usual.kg,
                      "1:%g at %d %%", sand, percent);
        }
}

/* More air never makes less. */
Test(laws, more_air_is_never_less_volume) {
    double yield = 0;
    for (int percent = 0; percent <= 20; percent++) {
        fx_mix m;
        gb_recipe r = {0};
        fx_site_mix(&m, 1, 0, 4, GB_PLASTIC);
        m.mix.air.of_one = percent / 100.0;
        cr_assert(gb_make_recipe(&m.mix, NULL, false, OWN_PACK, &r) == GB_OK);
        cr_expect(r.yield.m3 >= yield, "%d %%", percent);
        yield = r.yield.m3;
    }
}

/* A larger mixer never needs more batches. */
Test(laws, a_larger_mixer_is_never_more_batches) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    size_t before = SIZE_MAX;
    for (int eighths = 4; eighths <= 120; eighths++) {
        fx_library(&f);
        f.job.crew.mixer =
            (gb_mixer){.kind = GB_PADDLE, .usable = {eighths / 8.0 * FT3}, .most = {NAN}};
        f.job.crew.pace.treads_s = NAN;
        fx_plan(&f, &arena, &plan);
        size_t n = fx_of(&plan, FX_BED.id)->batching.batch_count;
        cr_expect(n > 0 && n <= before, "%d eighths of a ft3: %zu after %zu", eighths, n,
                  before);
        before = n;
    }
    cr_expect(before == 1, "fifteen ft3 hold it all");
    gb_arena_release(&arena);
}

/* A faster crew never needs more batches, a bag takes it less time in proportion, and no
   batch outlives the mix; a pace that minds nothing leaves the mixer's own limit. */
Test(laws, a_faster_crew_is_never_more_batches) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    size_t before = SIZE_MAX;
    for (int tenths = 4; tenths <= 120; tenths++) {
        fx_library(&f);
        f.job.crew.pace.treads_s = tenths / 10.0 / HOUR;
        fx_plan(&f, &arena, &plan);
        const gb_batching *b = &fx_of(&plan, FX_BED.id)->batching;
        cr_expect(b->batch_count > 0 && b->batch_count <= before,
                  "%d tenths of a tread: %zu after %zu", tenths, b->batch_count, before);
        /* 1.7065 h at three treads an hour */
        cr_expect(fx_near(b->bag_time.s * tenths / 10.0 / HOUR, 1.7065 * 3, 0.0015),
                  "%d tenths of a tread: %.4f h a bag", tenths, b->bag_time.s / HOUR);
        cr_expect(b->time_to_place.s <= 2 * HOUR * (1 + 1e-9),
                  "%d tenths of a tread: %.4f h", tenths, b->time_to_place.s / HOUR);
        before = b->batch_count;
    }
    cr_expect(before == 3, "a bag at a time is what the mixer bears");
    gb_arena_release(&arena);
}

static void same_batches(const gb_batching *a, const gb_batching *b, unsigned seed) {
    cr_assert(a->batch_count == b->batch_count, "seed %u", seed);
    cr_expect(a->most_bags == b->most_bags && a->limit == b->limit, "seed %u", seed);
    cr_expect(a->bags_needed == b->bags_needed && a->bags_gauged == b->bags_gauged);
    cr_expect(fx_near(a->bag_time.s, b->bag_time.s, 0), "seed %u: bag time", seed);
    cr_expect(fx_near(a->time_to_place.s, b->time_to_place.s, 0), "seed %u", seed);
    for (size_t i = 0; i < a->batch_count; i++) {
        const gb_batch *x = &a->batches[i], *y = &b->batches[i];
        cr_expect(x->bags == y->bags, "seed %u: batch %zu", seed, i);
        cr_assert(x->stretch_count == y->stretch_count, "seed %u: batch %zu", seed, i);
        for (size_t k = 0; k < x->stretch_count; k++)
            cr_expect(x->stretches[k].from == y->stretches[k].from &&
                          x->stretches[k].to == y->stretches[k].to,
                      "seed %u: batch %zu", seed, i);
    }
}

static void same_plan(const gb_plan *a, const gb_plan *b, unsigned seed) {
    cr_assert(a->take_count == b->take_count && a->mix_count == b->mix_count);
    cr_assert(a->supply_count == b->supply_count);
    cr_expect(memcmp(a->takes, b->takes, a->take_count * sizeof *a->takes) == 0,
              "seed %u: takes", seed);
    for (size_t i = 0; i < a->supply_count; i++)
        cr_expect(a->supplies[i].mass.kg == b->supplies[i].mass.kg, "seed %u", seed);
    cr_expect(a->water.m3 == b->water.m3, "seed %u: water", seed);
    for (size_t m = 0; m < a->mix_count; m++) {
        const gb_mix_plan *x = &a->mixes[m], *y = &b->mixes[m];
        cr_expect(x->need.gross.m3 == y->need.gross.m3, "seed %u: gross", seed);
        cr_expect(memcmp(&x->recipe, &y->recipe, sizeof x->recipe) == 0, "seed %u", seed);
        same_batches(&x->batching, &y->batching, seed);
        cr_expect(x->first_check.known == y->first_check.known &&
                      x->first_check.bags == y->first_check.bags,
                  "seed %u: first check", seed);
        cr_assert(x->pot_count == y->pot_count && x->cautions.count == y->cautions.count);
        for (size_t i = 0; i < x->pot_count; i++)
            cr_expect(x->pots[i].bags == y->pots[i].bags, "seed %u", seed);
        for (size_t i = 0; i < x->cautions.count; i++)
            cr_expect(x->cautions.list[i].code == y->cautions.list[i].code, "seed %u",
                      seed);
    }
}

Test(laws, planning_twice_gives_the_same_figures) {
    for (unsigned seed = 0; seed <= JOBS; seed++) {
        gb_arena first, second;
        gb_plan one, two;
        fx_job f;
        fx_random r = fx_seeded(seed);
        fx_open(&first);
        fx_open(&second);
        if (seed == 0)
            fx_library(&f);
        else
            fx_random_job(&f, &r);
        fx_plan(&f, &first, &one);
        fx_plan(&f, &second, &two);
        same_plan(&one, &two, seed);
        gb_arena_release(&first);
        gb_arena_release(&second);
    }
}

/* Units change no figure: a plan is in SI whatever the job likes to read. */
Test(laws, units_of_reading_change_no_figure) {
    gb_arena arena;
    gb_plan us, metric;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &us);
    f.job.units = GB_METRIC;
    fx_plan(&f, &arena, &metric);
    same_plan(&us, &metric, 0);
    gb_arena_release(&arena);
}
