/* The search leaves out no number of risers, and what it advises does what it says. */
#include "runs.h"
#include "unit/plan/fixture.h"

#include <criterion/criterion.h>

enum { RUNS = 2000 };

static gb_steps random_run(fx_random *r) {
    gb_steps s = fx_run(fx_between(r, 10 * IN, 14 * FT), fx_between(r, 9 * IN, 2 * FT));
    s.pitch.of_run = fx_whole(r, 0, 2) == 0 ? 0 : fx_between(r, 0, 1.0 / 48.0);
    s.slab.m = fx_between(r, 1 * IN, 3 * IN);
    s.footing.m = fx_between(r, 0, 2 * FT);
    if (fx_whole(r, 0, 1) == 0)
        s.course.m = fx_between(r, 2 * IN, 8 * IN);
    if (fx_whole(r, 0, 3) == 0) /* cut already: it closes only by chance */
        s.face.m = fx_between(r, 5 * IN, 8 * IN);
    return s;
}

static const gb_choice *of(const gb_choices *choices, size_t count, bool evened) {
    for (size_t i = 0; i < choices->count; i++)
        if (choices->list[i].layout.count == count &&
            choices->list[i].layout.evened == evened)
            return &choices->list[i];
    return NULL;
}

static bool is_good(const gb_steps *s, const gb_layout *l) {
    gb_beds beds;
    double band = 2 * l->riser.m + l->going.m;
    return band > s->band_least.m - 1e-9 && band < s->band_most.m + 1e-9 &&
           fabs(l->error.m) < 1e-9 && gb_steps_pass(GB_IRC, s, l) &&
           gb_steps_pass(GB_NFPA, s, l) && gb_check_beds(s, l, &beds) == GB_OK &&
           beds.fit;
}

Test(steps_choices, every_number_of_risers_is_looked_at) {
    fx_random r = fx_seeded(21);
    for (size_t k = 0; k < RUNS; k++) {
        gb_arena arena;
        gb_choices choices;
        fx_open(&arena);
        gb_steps s = random_run(&r);
        cr_assert(gb_find_steps(&s, FX_TAPE, &arena, &choices) == GB_OK);
        size_t seen = 0, fitting = 0;
        for (size_t n = 2; n <= 60; n++) {
            double mean = s.rise.m / (double)n;
            bool in = mean >= s.least_riser.m && mean <= s.most_riser.m;
            for (int evened = 0; evened <= (s.pitch.of_run > 0); evened++) {
                gb_layout l;
                const gb_choice *c = of(&choices, n, evened);
                bool laid = in && gb_lay_steps(&s, n, evened, FX_TAPE, &l) == GB_OK;
                cr_assert((c != NULL) == laid, "run %zu, %zu risers", k, n);
                seen += laid;
                fitting += laid && is_good(&s, &l);
                cr_assert(!laid || c->fits == is_good(&s, &l), "run %zu, %zu", k, n);
            }
        }
        cr_assert(seen == choices.count && fitting == choices.fitting, "run %zu", k);
        gb_arena_release(&arena);
    }
}

Test(steps_choices, a_stated_count_is_the_only_one) {
    gb_arena arena;
    gb_choices choices;
    fx_open(&arena);
    gb_steps s = fx_run(49 * IN, 14 * IN);
    s.pitch.of_run = 1.0 / 48.0;
    s.count = 9;
    cr_assert(gb_find_steps(&s, FX_TAPE, &arena, &choices) == GB_OK);
    cr_assert(choices.count == 2 && of(&choices, 9, false) && of(&choices, 9, true));
    gb_arena_release(&arena);
}

/* Each way out, taken, does away with what it was for. */
static void try_advice(const gb_steps *s, const gb_choice *c, size_t taken[3]) {
    gb_step_advice a = gb_advise_steps(s, FX_TAPE, c);
    gb_layout l;
    if (!isnan(a.going.m)) {
        gb_steps longer = *s;
        longer.going = a.going;
        l = fx_lay(&longer, c->layout.count, c->layout.evened);
        cr_assert(!gb_under(l.comfort.m, s->band_least.m));
        /* Where the code's least tread is over the band, the tread goes first. */
        if (longer.going.m > gb_step_limit_of(GB_RULE_IRC_TREAD)->value + FX_TAPE.m)
            cr_assert(!gb_over(l.comfort.m, s->band_most.m));
        cr_assert(gb_step_passes(GB_RULE_IRC_TREAD, &longer, &l));
        taken[0]++;
    }
    if (!isnan(a.face.m)) {
        gb_steps other = *s;
        if (s->build == GB_SOLID_STEPS)
            other.stone = a.face;
        else
            other.face = a.face;
        l = fx_lay(&other, c->layout.count, false);
        cr_assert(fx_near(l.error.m, 0, 1e-9) && fx_near(l.buried.m, 0, 1e-9));
        taken[1]++;
    }
    if (!isnan(a.footing.m)) {
        gb_steps deeper = *s;
        gb_step first;
        deeper.footing.m = a.footing.m;
        if (!isnan(a.course.m))
            deeper.course = a.course;
        l = fx_lay(&deeper, c->layout.count, c->layout.evened);
        cr_assert(gb_lay_step(&deeper, &l, 0, &first) == GB_OK);
        cr_assert(first.courses >= 1 && first.bed.m > s->least_bed.m - 1e-9);
        taken[2]++;
    }
}

Test(steps_choices, advice_does_what_it_says) {
    fx_random r = fx_seeded(22);
    size_t taken[3] = {0};
    for (size_t k = 0; k < RUNS; k++) {
        gb_arena arena;
        gb_choices choices;
        fx_open(&arena);
        gb_steps s = random_run(&r);
        s.footing.m = 0;
        if (k % 3 == 0)
            s = fx_solid(s.rise.m, s.going.m, fx_between(&r, 5 * IN, 8 * IN));
        else if (k % 3 == 1)
            s.face.m = fx_between(&r, 5 * IN, 8 * IN);
        cr_assert(gb_find_steps(&s, FX_TAPE, &arena, &choices) == GB_OK);
        for (size_t i = 0; i < choices.count; i++)
            if (!choices.list[i].fits)
                try_advice(&s, &choices.list[i], taken);
        gb_arena_release(&arena);
    }
    cr_expect(taken[0] > 100 && taken[1] > 100 && taken[2] > 100, "%zu %zu %zu", taken[0],
              taken[1], taken[2]);
}

/* More than 1,000 risers are no run. */
Test(steps_choices, too_many) {
    gb_arena arena;
    gb_choices choices;
    fx_open(&arena);
    gb_steps s = fx_run(500, 14 * IN);
    cr_expect(gb_find_steps(&s, FX_TAPE, &arena, &choices) == GB_OVERFLOW);
    gb_arena_release(&arena);
}
