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
        fx_random r = fx_seeded(seed);
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

/* The area that the crew lays in a second; NaN without a pace by area or treads. */
static double area_pace(const fx_job *f) {
    const gb_pace *pace = &f->job.crew.pace;
    return isnan(pace->treads_s)
               ? pace->m2_s
               : pace->treads_s * f->pieces[0].shape.front.m * f->pieces[0].shape.width.m;
}

/* Seconds to place a bag on the thinnest bed; NaN without a pace. */
static double bag_s(const fx_job *f, const gb_mix_plan *p) {
    if (!isnan(f->job.crew.pace.m3_s))
        return p->recipe.yield.m3 / f->job.crew.pace.m3_s;
    double thinnest = INFINITY;
    for (size_t i = 0; i < f->job.piece_count; i++)
        thinnest = fmin(thinnest, f->depths[i][0][0]);
    return p->recipe.yield.m3 / (thinnest * (1 + p->need.waste.of_one)) / area_pace(f);
}

/* Seconds to place one batch on what it covers. */
static double covered_s(const fx_job *f, const gb_mix_plan *p, const gb_batch *b) {
    if (!isnan(f->job.crew.pace.m3_s))
        return b->bags * p->recipe.yield.m3 / f->job.crew.pace.m3_s;
    double area = 0;
    for (size_t k = 0; k < b->stretch_count; k++) {
        const gb_piece *piece = b->stretches[k].take->piece;
        double pieces = b->stretches[k].to - b->stretches[k].from;
        area += pieces * piece->shape.front.m * piece->shape.width.m;
    }
    return area / area_pace(f);
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
        double s = covered_s(f, p, &p->batching.batches[i]);
        cr_expect(isnan(s) || s <= p->life.s * (1 + 1e-8), "seed %u: %.1f s in %.1f",
                  seed, s, p->life.s);
    }
}

Test(batch_laws, no_batch_is_over_volume_mass_or_working_life) {
    over_jobs(within_the_limits, 1200);
}

/* The two times that a plan tells: of a bag on the thinnest bed, and of the slowest batch
   as it is covered, which is never over what its bags would take there. */
static void the_times_are_those(const fx_job *f, const gb_mix_plan *p, unsigned seed) {
    const gb_batching *b = &p->batching;
    double bag = bag_s(f, p);
    double slowest = isnan(bag) ? NAN : 0;
    for (size_t i = 0; i < b->batch_count && !isnan(bag); i++) {
        double s = covered_s(f, p, &b->batches[i]);
        slowest = fmax(slowest, s);
        cr_expect(s <= b->batches[i].bags * bag * (1 + 1e-8),
                  "seed %u: batch %zu takes %.1f s, %.3f bags of %.1f s", seed, i, s,
                  b->batches[i].bags, bag);
    }
    cr_expect(fx_near(b->bag_time.s, bag, 1e-9 * bag), "seed %u: %.3f s a bag, not %.3f",
              seed, b->bag_time.s, bag);
    cr_expect(fx_near(b->time_to_place.s, slowest, 1e-9 * slowest),
              "seed %u: %.3f s, not %.3f", seed, b->time_to_place.s, slowest);
    cr_expect(isnan(slowest) || b->time_to_place.s <= p->life.s * (1 + 1e-8),
              "seed %u: %.1f s in %.1f", seed, b->time_to_place.s, p->life.s);
}

Test(batch_laws, times_are_of_the_thinnest_bed_and_the_slowest_batch) {
    over_jobs(the_times_are_those, 1200);
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
   first; the last batch of a site mix may hold less, in eighths; in thirty-seconds only
   when it is all there is. */
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
    double unit = blend ? 1.0 : n == 1 && last_bags < 0.25 ? 1.0 / 32 : 0.125;
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

/* The stop that a job without any batch deserves: the first limit below an eighth of a
   bag, of volume, mass and time; GB_CAUTION_CODES when there is none. */
static gb_caution_code stop_of(const fx_job *f, const gb_mix_plan *p) {
    if (f->job.crew.mixer.usable.m3 / p->recipe.yield.m3 < 0.125)
        return GB_C_MIXER_TOO_SMALL;
    if (f->job.crew.mixer.most.kg / wet_kg(p) < 0.125)
        return GB_C_MIXER_TOO_WEAK;
    return p->life.s / bag_s(f, p) < 0.125 ? GB_C_LIFE_TOO_SHORT : GB_CAUTION_CODES;
}

/* Jobs without any batch have a mixer, a mass limit or a crew below an eighth of a bag,
   and say which; what they need is still gauged. */
Test(batch_laws, no_batch_only_below_an_eighth_of_a_bag) {
    const gb_caution_code codes[] = {GB_C_MIXER_TOO_SMALL, GB_C_MIXER_TOO_WEAK,
                                     GB_C_LIFE_TOO_SHORT};
    size_t seen[ROWS_OF(codes)] = {0};
    for (unsigned seed = 1; seed <= JOBS; seed++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_random r = fx_seeded(seed);
        fx_open(&arena);
        fx_random_job(&f, &r);
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = &plan.mixes[0];
        bool none = p->batching.batch_count == 0;
        cr_expect(none == (room_of(&f, p) < 0.125), "seed %u: room for %.4f bags", seed,
                  room_of(&f, p));
        cr_expect(none == false || p->batching.bags_gauged == p->batching.bags_needed,
                  "seed %u: %.4f of %.4f bags", seed, p->batching.bags_gauged,
                  p->batching.bags_needed);
        for (size_t k = 0; k < ROWS_OF(codes); k++) {
            size_t want = codes[k] == stop_of(&f, p);
            cr_expect(fx_cautions(p, codes[k]) == want, "seed %u: code %d", seed,
                      codes[k]);
            seen[k] += want;
        }
        gb_arena_release(&arena);
    }
    for (size_t k = 0; k < ROWS_OF(codes); k++)
        cr_expect(seen[k] >= 3, "code %d: %zu jobs", codes[k], seen[k]);
}

/* A caution of part bags names the limit that governs, and is true: the mixer takes or
   bears less than a bag makes or weighs, a bag takes longer than the mix lives. */
static void part_bags_are_told(const fx_job *f, const gb_mix_plan *p, unsigned seed) {
    (void)f;
    static const gb_caution_code codes[] = {[GB_LIMIT_VOLUME] = GB_C_MIXER_SMALL,
                                            [GB_LIMIT_MASS] = GB_C_MIXER_WEAK,
                                            [GB_LIMIT_TIME] = GB_C_LIFE_SHORT};
    const gb_batching *b = &p->batching;
    cr_expect(b->part_bags == (b->most_bags < 1), "seed %u: %.3f bags", seed,
              b->most_bags);
    bool one = b->batch_count == 1;
    cr_expect(one == (b->limit == GB_LIMIT_NEED), "seed %u: limit %d of %zu batches",
              seed, b->limit, b->batch_count);
    for (size_t k = GB_LIMIT_VOLUME; k < ROWS_OF(codes); k++) {
        size_t want = b->part_bags && b->batch_count > 1 && k == b->limit;
        cr_expect(fx_cautions(p, codes[k]) == want, "seed %u: code %d", seed, codes[k]);
        const gb_caution *c = fx_caution(p, codes[k]);
        if (c != NULL && k == GB_LIMIT_TIME)
            cr_expect(c->value > c->limit, "seed %u: %g s in %g", seed, c->value,
                      c->limit);
        else if (c != NULL)
            cr_expect(c->value < c->limit, "seed %u: %g for %g", seed, c->value,
                      c->limit);
    }
}

Test(batch_laws, part_bags_are_told_by_what_asks_for_them) {
    over_jobs(part_bags_are_told, 1200);
}

/* The check after the first batch: what it covers of its one take, told to a quarter of a
   piece; and what is told as too few would, at the depth that it names, take the batch.
 */
static void first_check_adds_up(const fx_job *f, const gb_mix_plan *p, unsigned seed) {
    (void)f;
    const gb_first_check *c = &p->first_check;
    const gb_batch *b = &p->batching.batches[0];
    double to = b->stretches[0].to;
    double whole = floor(to + SAME);
    double left = to - whole;
    double fewer = left >= 0.25 ? whole : whole - 1;
    bool known = p->batching.batch_count > 1 && b->stretch_count == 1 && fewer >= 1;
    cr_expect(c->known == known, "seed %u: %.4f pieces in %zu stretches", seed, to,
              b->stretch_count);
    if (!known || !c->known)
        return;
    cr_expect(c->take == b->stretches[0].take, "seed %u: the take", seed);
    cr_expect(c->pieces == (size_t)whole, "seed %u: %zu of %.4f", seed, c->pieces, to);
    cr_expect(fx_near(c->left, left >= 0.25 ? left : 0, SAME), "seed %u: %.4f left", seed,
              c->left);
    cr_expect(c->fewer == (size_t)fewer, "seed %u: %zu of %.4f", seed, c->fewer, to);
    double extra = 1 + p->need.waste.of_one;
    double used = fewer * c->take->area.m2 * c->depth.m * extra;
    cr_expect(fx_near(used / p->recipe.yield.m3, b->bags, SAME),
              "seed %u: %.4f of %.4f bags", seed, used / p->recipe.yield.m3, b->bags);
    double larger = c->depth.m / c->take->depth.m;
    cr_expect(fx_near(c->gross.m3, p->need.gross.m3 * larger, 1e-9 * c->gross.m3),
              "seed %u: gross", seed);
    cr_expect(fx_near(c->bags * p->recipe.yield.m3, c->gross.m3, 1e-9 * c->gross.m3),
              "seed %u: bags", seed);
    cr_expect(larger > 1 - SAME, "seed %u: fewer pieces are deeper: %.4f", seed, larger);
}

Test(batch_laws, the_first_check_adds_up) {
    over_jobs(first_check_adds_up, 1200);
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
