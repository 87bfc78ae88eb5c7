/* Laws of the trial batch. */
#include "asked.h"

#include <criterion/criterion.h>
#include <math.h>

enum { CONCRETES = 3000 };
static const gb_density WATER = {GB_WATER_KG_M3};

/* One to try: with a sand that finds room, and not over the 2700 kg/m3 that the unit mass
   of a trial may be. */
static bool any_to_try(ask_random *r, gb_concrete *c, gb_proportions *p) {
    *c = ask_any(r);
    return ask_proportions(c, p) && p->parts.fresh.kg_m3 < 2650;
}

/* A trial of `m3`, made exactly as designed: masses as they lie, its design unit mass and
   slump. */
static void mix_as_designed(gb_concrete *c, const gb_parts_of_concrete *m, double m3) {
    const gb_wetness stone = gb_wetness_of(c->stone_moisture, c->stone_absorption);
    const gb_wetness sand = gb_wetness_of(c->sand_moisture, c->sand_absorption);
    const gb_mass dry_stone = {m->stone.kg_m3 * m3};
    const gb_mass dry_sand = {m->sand.kg_m3 * m3};
    c->trial = ask_no_trial();
    c->trial.at.line = 1;
    c->trial.cement.kg = m->cement.kg_m3 * m3;
    c->trial.stone = gb_on_basis(dry_stone, stone, GB_OVEN_DRY, GB_AS_DELIVERED);
    c->trial.sand = gb_on_basis(dry_sand, sand, GB_OVEN_DRY, GB_AS_DELIVERED);
    c->trial.water.kg = m->water.kg_m3 * m3 - gb_free_water(dry_stone, stone).kg -
                        gb_free_water(dry_sand, sand).kg;
    c->trial.unit_mass = m->fresh;
    c->trial.slump = c->slump;
}

static void same_parts(unsigned seed, const gb_parts_of_concrete *a,
                       const gb_parts_of_concrete *b) {
    const double got[] = {a->water.kg_m3, a->cement.kg_m3, a->stone.kg_m3,
                          a->sand.kg_m3,  a->air.of_one,   a->fresh.kg_m3};
    const double wanted[] = {b->water.kg_m3, b->cement.kg_m3, b->stone.kg_m3,
                             b->sand.kg_m3,  b->air.of_one,   b->fresh.kg_m3};
    for (size_t i = 0; i < sizeof got / sizeof got[0]; i++)
        cr_expect(ask_same(got[i], wanted[i]), "seed %u: %zu is %.12g, not %.12g", seed,
                  i, got[i], wanted[i]);
}

static gb_trial_result judge(unsigned seed, const gb_concrete *c,
                             const gb_proportions *p) {
    gb_trial_result t = {0};
    gb_status status = gb_judge_trial(c, p, WATER, &t);
    cr_assert(status == GB_OK, "seed %u: status %d, faults %x", seed, (int)status,
              gb_concrete_faults(c));
    return t;
}

Test(concrete_trial, as_designed_changes_nothing) {
    size_t made = 0;
    for (unsigned seed = 0; seed < CONCRETES; seed++) {
        ask_random r = ask_seeded(seed);
        gb_concrete c;
        gb_proportions p = {0};
        if (!any_to_try(&r, &c, &p))
            continue;
        made++;
        double m3 = ask_between(&r, 0.01, 2);
        mix_as_designed(&c, &p.parts, m3);
        const gb_trial_result t = judge(seed, &c, &p);
        same_parts(seed, &t.next, &p.parts);
        cr_expect(ask_same(t.yield.m3, m3), "seed %u: yield", seed);
        cr_expect(ask_same(t.relative_yield, 1), "seed %u: relative yield", seed);
        cr_expect(ask_same(t.ratio_used, p.ratio), "seed %u: ratio", seed);
        cr_expect(ask_same(t.gravimetric_air.of_one, p.parts.air.of_one), "seed %u: air",
                  seed);
        cr_expect(ask_same(t.next_sand_by_mass.kg_m3, p.parts.sand.kg_m3), "seed %u",
                  seed);
        gb_parts_of_concrete parts = {0};
        cr_assert(gb_concrete_parts(&c, WATER, &parts) == GB_OK, "seed %u", seed);
        same_parts(seed, &parts, &p.parts);
    }
    cr_expect(made > CONCRETES * 9 / 10, "%zu of %d", made, CONCRETES);
}

/* By a measure or by its unit mass is the same trial; and a batch twice as large too. */
Test(concrete_trial, measure_and_size_do_not_matter) {
    for (unsigned seed = 0; seed < CONCRETES; seed++) {
        ask_random r = ask_seeded(seed);
        gb_concrete c;
        gb_proportions p = {0};
        if (!any_to_try(&r, &c, &p))
            continue;
        mix_as_designed(&c, &p.parts, 0.03);
        c.trial.unit_mass.kg_m3 *= 1.01;
        c.trial.slump.m *= 0.8;
        const gb_trial_result by_mass = judge(seed, &c, &p);
        c.trial.measure.m3 = 0.007;
        c.trial.empty.kg = 2.5;
        c.trial.full.kg = 2.5 + 0.007 * c.trial.unit_mass.kg_m3;
        c.trial.unit_mass.kg_m3 = NAN;
        c.trial.water.kg *= 2;
        c.trial.cement.kg *= 2;
        c.trial.stone.kg *= 2;
        c.trial.sand.kg *= 2;
        const gb_trial_result by_measure = judge(seed, &c, &p);
        same_parts(seed, &by_measure.next, &by_mass.next);
        cr_expect(ask_same(by_measure.yield.m3, 2 * by_mass.yield.m3), "seed %u", seed);
        cr_expect(ask_same(by_measure.relative_yield, by_mass.relative_yield), "seed %u",
                  seed);
    }
}

/* The next batch fills 1 m3 and keeps the ratio; a slump that lacks asks for water, one
   that is over for less; a lighter trial has more air. */
Test(concrete_trial, which_way_it_moves) {
    for (unsigned seed = 0; seed < CONCRETES; seed++) {
        ask_random r = ask_seeded(seed);
        gb_concrete c;
        gb_proportions p = {0};
        if (!any_to_try(&r, &c, &p))
            continue;
        mix_as_designed(&c, &p.parts, 0.03);
        const gb_trial_result same = judge(seed, &c, &p);
        c.trial.slump.m = c.slump.m - 0.02;
        const gb_trial_result stiff = judge(seed, &c, &p);
        c.trial.slump.m = c.slump.m + 0.02;
        const gb_trial_result soft = judge(seed, &c, &p);
        cr_expect(stiff.next.water.kg_m3 > same.next.water.kg_m3, "seed %u", seed);
        cr_expect(soft.next.water.kg_m3 < same.next.water.kg_m3, "seed %u", seed);
        cr_expect(ask_same(stiff.next.cement.kg_m3 * p.ratio, stiff.next.water.kg_m3),
                  "seed %u: ratio", seed);
        const gb_parts_of_concrete *n = &stiff.next;
        cr_expect(ask_same(n->water_volume.of_one + n->cement_volume.of_one +
                               n->stone_volume.of_one + n->sand_volume.of_one +
                               n->air.of_one,
                           1),
                  "seed %u: volume", seed);
        c.trial.unit_mass.kg_m3 *= 0.98;
        const gb_trial_result light = judge(seed, &c, &p);
        cr_expect(light.gravimetric_air.of_one > same.gravimetric_air.of_one, "seed %u",
                  seed);
        cr_expect(light.relative_yield > 1, "seed %u", seed);
    }
}

/* Without a trial there is nothing to judge, and what is asked for is as proportioned. */
Test(concrete_trial, none) {
    gb_concrete c = ask_usual(GB_METRIC);
    gb_proportions p = {0};
    cr_assert(ask_proportions(&c, &p));
    gb_trial_result t = {.yield = {7}};
    cr_expect(gb_judge_trial(&c, &p, WATER, &t) == GB_IMPOSSIBLE && t.yield.m3 == 7,
              "the result is left alone");
    gb_parts_of_concrete parts = {0};
    cr_assert(gb_concrete_parts(&c, WATER, &parts) == GB_OK);
    same_parts(0, &parts, &p.parts);
}
