/* Laws of batches, over random jobs that are the same on every machine. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

enum { JOBS = 1500 };
static const double SAME = 1e-6; /* of a bag or a piece; sums of a few roundings */

typedef void check(const fx_job *f, const gb_mix_plan *p, unsigned seed);

/* Plans every job and hands it to the check; a job that has no batch is counted. */
static void over_jobs(check *of, size_t least_seen) {
    size_t seen = 0;
    for (unsigned seed = 1; seed <= JOBS; seed++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_random r = {seed};
        fx_open(&arena);
        fx_random_job(&f, &r);
        fx_plan(&f, &arena, &plan);
        if (plan.mixes[0].batching.batch_count > 0) {
            of(&f, &plan.mixes[0], seed);
            seen++;
        }
        gb_arena_release(&arena);
    }
    cr_expect(seen >= least_seen, "only %zu jobs had batches", seen);
}

/* Wet mass of a bag, from the recipe. */
static double wet_kg(const gb_mix_plan *p) {
    return p->recipe.dry.kg + p->recipe.water_usual.kg;
}

/* Seconds to place a bag, from the pace and the areas of the job; NaN without a pace. */
static double bag_s(const fx_job *f, const gb_mix_plan *p) {
    const gb_pace *pace = &f->job.crew.pace;
    if (!isnan(pace->m3_s))
        return p->recipe.yield.m3 / pace->m3_s;
    double area = 0;
    for (size_t i = 0; i < f->job.piece_count; i++)
        area += f->pieces[i].length.m * f->pieces[i].width.m * (double)f->pieces[i].count;
    double m2_s = isnan(pace->treads_s)
                      ? pace->m2_s
                      : pace->treads_s * f->pieces[0].length.m * f->pieces[0].width.m;
    return area * p->recipe.yield.m3 / p->need.gross.m3 / m2_s;
}

static void every_take_is_covered_once(const fx_job *f, const gb_mix_plan *p,
                                       unsigned seed) {
    (void)f;
    size_t t = 0;
    double done = 0;
    for (size_t i = 0; i < p->batching.batch_count; i++) {
        const gb_batch *b = &p->batching.batches[i];
        cr_expect(b->stretch_count > 0, "seed %u: batch %zu covers nothing", seed, i);
        for (size_t k = 0; k < b->stretch_count; k++) {
            const gb_stretch *s = &b->stretches[k];
            if (t < p->need.take_count && done >= p->need.takes[t]->units - SAME) {
                t++;
                done = 0;
            }
            cr_assert(t < p->need.take_count, "seed %u: more than all", seed);
            cr_expect(s->take == p->need.takes[t], "seed %u: out of order", seed);
            cr_expect(fx_near(s->from, done, SAME), "seed %u: gap at %.9f", seed, done);
            cr_expect(s->to > s->from, "seed %u: empty stretch", seed);
            cr_expect(s->to <= s->take->units, "seed %u: past the end", seed);
            done = s->to;
        }
    }
    cr_expect(t + 1 == p->need.take_count, "seed %u: %zu takes left out", seed,
              p->need.take_count - t - 1);
    cr_expect(fx_near(done, p->need.takes[t]->units, 0), "seed %u: the end is left",
              seed);
}

Test(batch_laws, stretches_cover_every_take_once_without_a_gap) {
    over_jobs(every_take_is_covered_once, 1200);
}

/* Every batch but the last is used up by its stretches; the last one holds its own. */
static void stretches_use_the_batch(const fx_job *f, const gb_mix_plan *p,
                                    unsigned seed) {
    (void)f;
    for (size_t i = 0; i < p->batching.batch_count; i++) {
        const gb_batch *b = &p->batching.batches[i];
        double used = 0;
        for (size_t k = 0; k < b->stretch_count; k++) {
            const gb_stretch *s = &b->stretches[k];
            used += (s->to - s->from) * s->take->each.m3 * (1 + p->need.waste.of_one);
        }
        double bags = used / p->recipe.yield.m3;
        cr_expect(bags <= b->bags + SAME, "seed %u: batch %zu of %.4f bags covers %.4f",
                  seed, i, b->bags, bags);
        if (i + 1 < p->batching.batch_count)
            cr_expect(fx_near(bags, b->bags, SAME), "seed %u: batch %zu of %.4f: %.4f",
                      seed, i, b->bags, bags);
    }
}

Test(batch_laws, stretches_use_up_each_batch) {
    over_jobs(stretches_use_the_batch, 1200);
}

static void enough_is_mixed(const fx_job *f, const gb_mix_plan *p, unsigned seed) {
    (void)f;
    double sum = 0;
    for (size_t i = 0; i < p->batching.batch_count; i++) {
        cr_expect(p->batching.batches[i].bags > 0, "seed %u: batch %zu is empty", seed,
                  i);
        sum += p->batching.batches[i].bags;
    }
    double made = sum * p->recipe.yield.m3;
    cr_expect(made >= p->need.gross.m3 * (1 - 1e-9), "seed %u: %.6f of %.6f m3", seed,
              made, p->need.gross.m3);
    cr_expect(fx_near(p->batching.bags_gauged, sum, SAME), "seed %u: gauged", seed);
    /* and not more than rounding explains: an eighth of a site mix, a bag of a blend */
    bool eighths = p->need.mix->part_count > 0 || p->batching.part_bags;
    cr_expect(sum < p->batching.bags_needed + (eighths ? 0.125 : 1.0) + SAME,
              "seed %u: %.4f bags for %.4f", seed, sum, p->batching.bags_needed);
}

Test(batch_laws, all_batches_make_at_least_the_gross_need) {
    over_jobs(enough_is_mixed, 1200);
}

static void within_the_limits(const fx_job *f, const gb_mix_plan *p, unsigned seed) {
    const gb_mixer *mixer = &f->job.crew.mixer;
    for (size_t i = 0; i < p->batching.batch_count; i++) {
        double bags = p->batching.batches[i].bags;
        double m3 = bags * p->recipe.yield.m3;
        cr_expect(m3 <= mixer->usable.m3 * (1 + 1e-8), "seed %u: %.6f m3 in %.6f", seed,
                  m3, mixer->usable.m3);
        double kg = bags * wet_kg(p);
        cr_expect(isnan(mixer->most.kg) || kg <= mixer->most.kg * (1 + 1e-8),
                  "seed %u: %.3f kg on %.3f", seed, kg, mixer->most.kg);
        double s = bags * bag_s(f, p);
        cr_expect(isnan(s) || s <= p->life.s * (1 + 1e-8), "seed %u: %.1f s in %.1f",
                  seed, s, p->life.s);
    }
}

Test(batch_laws, no_batch_is_over_volume_mass_or_working_life) {
    over_jobs(within_the_limits, 1200);
}

/* What one batch may hold: the least of the limits, down to whole bags, or to eighths
   below one. */
static double room_of(const fx_job *f, const gb_mix_plan *p) {
    double most = f->job.crew.mixer.usable.m3 / p->recipe.yield.m3;
    most = fmin(most, f->job.crew.mixer.most.kg / wet_kg(p)); /* fmin skips a NaN */
    most = fmin(most, p->life.s / bag_s(f, p));
    return most < 1 ? floor(most * 8) / 8 : floor(most);
}

static void fewest(const fx_job *f, const gb_mix_plan *p, unsigned seed) {
    double room = room_of(f, p);
    size_t n = p->batching.batch_count;
    cr_expect(fx_near(p->batching.most_bags, room, SAME), "seed %u: room %.4f, not %.4f",
              seed, p->batching.most_bags, room);
    cr_expect(p->batching.bags_needed > (double)(n - 1) * room,
              "seed %u: %zu batches of %.4f would hold %.4f bags", seed, n - 1, room,
              p->batching.bags_needed);
}

Test(batch_laws, one_batch_fewer_could_not_hold_it) {
    over_jobs(fewest, 1200);
}

/* Whole bags are dealt out so that two batches differ by a bag at most, the larger ones
   first; the last batch of a site mix may hold less. */
static void dealt_equally(const fx_job *f, const gb_mix_plan *p, unsigned seed) {
    (void)f;
    const gb_batching *b = &p->batching;
    size_t n = b->batch_count;
    bool blend = p->need.mix->part_count == 0 && !b->part_bags;
    for (size_t i = 0; i + 1 < n; i++) {
        double step = b->batches[i].bags - b->batches[i + 1].bags;
        bool last = i + 2 == n;
        cr_expect(step >= 0, "seed %u: batch %zu is larger than the one before", seed,
                  i + 1);
        cr_expect(b->batches[0].bags - b->batches[i].bags <= 1, "seed %u: batch %zu",
                  seed, i);
        if (!last || blend)
            cr_expect(step <= 1, "seed %u: batch %zu is %.3f less", seed, i + 1, step);
        if (!b->part_bags)
            cr_expect(fmod(b->batches[i].bags, 1) == 0, "seed %u: %.3f bags", seed,
                      b->batches[i].bags);
    }
    double last_bags = b->batches[n - 1].bags;
    double unit = blend ? 1.0 : last_bags < 0.25 ? 1.0 / 32 : 0.125;
    cr_expect(fmod(b->batches[n - 1].bags, unit) == 0, "seed %u: last batch of %.4f",
              seed, b->batches[n - 1].bags);
}

Test(batch_laws, batches_are_as_equal_as_bags_allow) {
    over_jobs(dealt_equally, 1200);
}

/* The named limit is the one that governs: without it a batch could hold more. */
static void named_limit_governs(const fx_job *f, const gb_mix_plan *p, unsigned seed) {
    const gb_batching *b = &p->batching;
    double unit = b->part_bags ? 0.125 : 1.0;
    double next = b->most_bags + unit;
    bool over = false;
    switch (b->limit) {
    case GB_LIMIT_NEED:
        over = b->batch_count == 1;
        break;
    case GB_LIMIT_VOLUME:
        over = next * p->recipe.yield.m3 > f->job.crew.mixer.usable.m3;
        break;
    case GB_LIMIT_MASS:
        over = next * wet_kg(p) > f->job.crew.mixer.most.kg;
        break;
    case GB_LIMIT_TIME:
        over = next * bag_s(f, p) > p->life.s;
        break;
    }
    cr_expect(over, "seed %u: limit %d does not govern at %.3f bags", seed, b->limit,
              b->most_bags);
}

Test(batch_laws, the_named_limit_is_the_one_that_governs) {
    over_jobs(named_limit_governs, 1200);
}

/* Jobs without any batch have a mixer, a mass limit or a crew below an eighth of a bag.
 */
Test(batch_laws, no_batch_only_below_an_eighth_of_a_bag) {
    size_t seen = 0;
    for (unsigned seed = 1; seed <= JOBS; seed++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_random r = {seed};
        fx_open(&arena);
        fx_random_job(&f, &r);
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = &plan.mixes[0];
        bool none = p->batching.batch_count == 0;
        cr_expect(none == (room_of(&f, p) < 0.125), "seed %u: room for %.4f bags", seed,
                  room_of(&f, p));
        cr_expect(none == (fx_cautions(p, GB_C_MIXER_TOO_SMALL) == 1), "seed %u", seed);
        seen += none;
        gb_arena_release(&arena);
    }
    cr_expect(seen > 10, "%zu jobs without a batch", seen);
}

/* Treads that fill the last batch to the last bit: it ends at the end all the same. A bag
   of 3 ft3 does `per_bag` of them, and there are as many as so many bags do. */
Test(batch_laws, an_exact_fit_ends_at_the_end) {
    for (size_t per_bag = 1; per_bag <= 12; per_bag++) {
        for (size_t bags = 1; bags <= 12; bags++) {
            gb_arena arena;
            gb_plan plan;
            fx_job f;
            fx_open(&arena);
            fx_empty(&f);
            f.job.crew.mixer.usable.m3 = 3 * FT3;
            fx_label(&f, &FX_BED, 94 * LB, 3 * FT3, true);
            fx_waste(&f, FX_BED.id, 0.1);
            fx_piece(&f, "treads", GB_TREAD, per_bag * bags, 12 * FT, 3 * FT);
            fx_layer(&f, GB_BED, &FX_BED, 1 * IN / 1.1 / (double)per_bag);
            fx_plan(&f, &arena, &plan);
            const gb_batching *b = &plan.mixes[0].batching;
            cr_assert(b->batch_count == bags, "%zu a bag, %zu bags: %zu", per_bag, bags,
                      b->batch_count);
            const gb_batch *last = &b->batches[bags - 1];
            cr_assert(last->stretch_count == 1, "%zu a bag, %zu bags", per_bag, bags);
            cr_expect(last->stretches[0].to == (double)(per_bag * bags),
                      "%zu a bag, %zu bags: ends at %.17g", per_bag, bags,
                      last->stretches[0].to);
            gb_arena_release(&arena);
        }
    }
}
