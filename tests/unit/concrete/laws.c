/* Laws of proportioning: what adds up, and which way a figure moves. */
#include "asked.h"

#include <criterion/criterion.h>
#include <math.h>
#include <string.h>

enum { CONCRETES = 4000 };

/* A law is asked of concretes that are proportioned; few of them have no room. */
typedef void law(unsigned seed, const gb_concrete *c, const gb_proportions *p);

static void of_many(law *holds) {
    size_t made = 0;
    for (unsigned seed = 0; seed < CONCRETES; seed++) {
        ask_random r = ask_seeded(seed);
        gb_concrete c = ask_any(&r);
        gb_proportions p = {0};
        if (ask_proportions(&c, &p)) {
            made++;
            holds(seed, &c, &p);
        }
    }
    cr_expect(made > CONCRETES * 9 / 10, "%zu of %d are made", made, CONCRETES);
}

/* ---- what adds up ------------------------------------------------------------------ */

/* The masses over their gravities and the air fill 1 m3, 27 ft3 of 1 yd3. */
static void fills(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    const gb_parts_of_concrete *m = &p->parts;
    double all = m->water.kg_m3 / 1000 + m->cement.kg_m3 / (1000 * gb_cement_gravity(c)) +
                 m->stone.kg_m3 / (1000 * gb_stone_gravity(c)) +
                 m->sand.kg_m3 / (1000 * gb_sand_gravity(c)) + m->air.of_one;
    double told = m->water_volume.of_one + m->cement_volume.of_one +
                  m->stone_volume.of_one + m->sand_volume.of_one + m->air.of_one;
    cr_expect(ask_same(all, 1) && ask_same(told, 1), "seed %u: %.12f, %.12f", seed, all,
              told);
    double fresh = m->water.kg_m3 + m->cement.kg_m3 +
                   m->stone.kg_m3 * (1 + c->stone_absorption.of_one) +
                   m->sand.kg_m3 * (1 + c->sand_absorption.of_one);
    cr_expect(ask_same(m->fresh.kg_m3, fresh), "seed %u: fresh", seed);
    cr_expect(ask_same(m->cement.kg_m3 * p->ratio, m->water.kg_m3), "seed %u", seed);
    cr_expect(m->sand_volume.of_one >= 0.05, "seed %u: sand %g", seed,
              m->sand_volume.of_one);
}

Test(concrete_laws, masses_fill_the_volume) {
    of_many(fills);
}

/* The ratio passes neither limit, and is one of them. */
static void limited(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    cr_expect(!(p->ratio > p->ratio_strength) && !(p->ratio > p->ratio_attack), "seed %u",
              seed);
    cr_expect(p->ratio == p->ratio_strength || p->ratio == p->ratio_attack, "seed %u",
              seed);
    cr_expect(isnan(p->ratio_attack) == (c->attack == GB_NO_ATTACK), "seed %u", seed);
}

Test(concrete_laws, the_smaller_ratio_governs) {
    of_many(limited);
}

/* ---- which way a figure moves ------------------------------------------------------ */

/* The same concrete with something else; false when that has no cell or no room. */
static bool changed(const gb_concrete *c, gb_proportions *p) {
    return gb_concrete_faults(c) == 0 &&
           gb_proportion(c, (gb_density){GB_WATER_KG_M3}, p) == GB_OK;
}

static void wetter(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    gb_length most = {0};
    gb_concrete more = *c;
    for (size_t band = p->band + 1; band < GB_SLUMP_BANDS; band++) {
        gb_proportions q = {0};
        gb_slump_in_table(c->table, band, &more.slump, &most);
        if (changed(&more, &q))
            cr_expect(q.parts.water.kg_m3 > p->parts.water.kg_m3, "seed %u, band %zu",
                      seed, band);
    }
}

Test(concrete_laws, more_slump_takes_more_water) {
    of_many(wetter);
}

static void coarser(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    gb_concrete larger = *c;
    for (size_t size = p->size + 1; size < GB_NOMINAL_SIZES; size++) {
        gb_proportions q = {0};
        larger.largest = gb_size_in_table(c->table, size);
        if (!changed(&larger, &q))
            continue;
        cr_expect(q.parts.water.kg_m3 < p->parts.water.kg_m3, "seed %u: size %zu", seed,
                  size);
        cr_expect(q.coarse_share.of_one > p->coarse_share.of_one, "seed %u", seed);
        cr_expect(!(q.parts.air.of_one > p->parts.air.of_one), "seed %u", seed);
        cr_expect(c->average.pa != larger.average.pa || q.ratio == p->ratio, "seed %u",
                  seed);
    }
}

Test(concrete_laws, larger_stone_takes_less_water) {
    of_many(coarser);
}

static void entrained(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    gb_concrete airy = *c;
    airy.ratio = p->ratio; /* AE has a shorter table of strength */
    double water = INFINITY;
    double air = -1;
    for (int level = GB_AIR_TRAPPED; level < GB_AIR_LEVELS; level++) {
        gb_proportions q = {0};
        airy.air = (gb_air_level)level;
        if (!changed(&airy, &q))
            continue;
        cr_expect(!(q.parts.water.kg_m3 > water), "seed %u: level %d", seed, level);
        cr_expect(q.parts.air.of_one > air, "seed %u: air of level %d", seed, level);
        water = q.parts.water.kg_m3;
        air = q.parts.air.of_one;
    }
}

Test(concrete_laws, entrained_air_takes_no_more_water) {
    of_many(entrained);
}

static void rounder(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    (void)p;
    gb_concrete shaped = *c;
    double water = INFINITY;
    for (int shape = GB_ANGULAR; shape < GB_SHAPES_OF_STONE; shape++) {
        gb_proportions q = {0};
        shaped.shape = (gb_shape_of_stone)shape;
        if (!changed(&shaped, &q))
            continue;
        cr_expect(q.parts.water.kg_m3 < water, "seed %u: shape %d", seed, shape);
        water = q.parts.water.kg_m3;
    }
}

Test(concrete_laws, rounder_stone_takes_less_water) {
    of_many(rounder);
}

/* Finer sand (a smaller modulus) leaves room for more stone. */
static void finer(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    gb_concrete fine = *c;
    gb_proportions q = {0};
    fine.fineness = 2.40 + (c->fineness - 2.40) / 2;
    if (changed(&fine, &q)) {
        cr_expect(!(q.parts.stone.kg_m3 < p->parts.stone.kg_m3), "seed %u", seed);
        cr_expect(!(q.parts.sand.kg_m3 > p->parts.sand.kg_m3), "seed %u", seed);
        cr_expect(q.parts.cement.kg_m3 == p->parts.cement.kg_m3, "seed %u", seed);
    }
}

Test(concrete_laws, finer_sand_takes_more_stone) {
    of_many(finer);
}

/* ---- strength ---------------------------------------------------------------------- */

enum { STEPS = 2000 };

Test(concrete_laws, higher_strength_never_takes_a_higher_ratio) {
    for (int i = 0; i < 4; i++) {
        gb_system table = i % 2 == 0 ? GB_US : GB_METRIC;
        bool air = i > 1;
        gb_pressure least = {0};
        gb_pressure most = {0};
        gb_strength_range(table, air, &least, &most);
        double before = INFINITY;
        for (int k = 0; k <= STEPS; k++) {
            gb_pressure f = {least.pa + (most.pa - least.pa) * k / STEPS};
            double ratio = gb_ratio_of_strength(table, f, air);
            cr_expect(ratio <= before, "table %d, %g Pa", i, f.pa);
            cr_expect(ratio <= gb_ratio_of_strength(table, f, false), "table %d", i);
            before = ratio;
        }
        cr_expect(
            isnan(gb_ratio_of_strength(table, (gb_pressure){least.pa * 0.999}, air)));
        cr_expect(
            isnan(gb_ratio_of_strength(table, (gb_pressure){most.pa * 1.001}, air)));
        cr_expect(isnan(gb_ratio_of_strength(table, (gb_pressure){NAN}, air)));
    }
}

/* What is required is never under what is specified, and grows with it. */
static void average_grows(gb_concrete *c) {
    double before = 0;
    for (int k = 1; k <= STEPS; k++) {
        c->strength.pa = 50e6 * k / STEPS;
        double average = gb_required_average(c).pa;
        cr_expect(average > c->strength.pa && average > before, "%g Pa: %g",
                  c->strength.pa, average);
        before = average;
    }
}

Test(concrete_laws, the_average_required_grows_with_the_strength) {
    for (int table = GB_US; table <= GB_METRIC; table++) {
        gb_concrete c = ask_usual((gb_system)table);
        c.average.pa = NAN;
        average_grows(&c);
        c.tests = 30;
        for (double s = 1e6; s < 8e6; s += 1e6) {
            c.deviation.pa = s;
            average_grows(&c);
        }
    }
}

/* A larger deviation, or fewer tests of it, never ask for less. */
Test(concrete_laws, unsure_tests_ask_for_no_less) {
    gb_concrete c = ask_usual(GB_METRIC);
    c.average.pa = NAN;
    c.strength.pa = 25e6;
    for (size_t tests = 15; tests < 60; tests++) {
        double before = 0;
        for (double s = 0.5e6; s < 8e6; s += 0.5e6) {
            c.deviation.pa = s;
            c.tests = tests;
            double average = gb_required_average(&c).pa;
            cr_expect(average > before, "%zu tests, %g Pa", tests, s);
            before = average;
            c.tests = tests + 1;
            cr_expect(gb_required_average(&c).pa <= average, "%zu tests, %g Pa", tests,
                      s);
        }
    }
}

/* ---- as a mix ---------------------------------------------------------------------- */

static gb_recipe recipe_of(unsigned seed, const gb_concrete *c, gb_mix *mix,
                           gb_part parts[3]) {
    *mix = (gb_mix){.id = "test/concrete", .concrete = *c, .spread = {NAN}};
    cr_assert(gb_mix_of_concrete(mix, parts) == GB_OK, "seed %u: mix", seed);
    gb_recipe r = {0};
    gb_status status = gb_make_recipe(mix, NULL, false, (gb_mass){NAN}, &r);
    cr_assert(status == GB_OK, "seed %u: recipe, status %d", seed, (int)status);
    return r;
}

static void as_a_mix(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    gb_mix mix;
    gb_part parts[3];
    const gb_recipe r = recipe_of(seed, c, &mix, parts);
    const double m3 = r.yield.m3;
    const double made[] = {r.part[0].kg / m3, r.part[1].kg / m3, r.part[2].kg / m3,
                           r.water_usual.kg / m3, r.water_most.kg / m3};
    const double asked[] = {p->parts.cement.kg_m3, p->parts.sand.kg_m3,
                            p->parts.stone.kg_m3, p->parts.water.kg_m3,
                            p->parts.water.kg_m3};
    for (size_t i = 0; i < 5; i++)
        cr_expect(ask_same(made[i], asked[i]), "seed %u: %zu is %.12g, not %.12g", seed,
                  i, made[i], asked[i]);
    cr_expect(r.regime == GB_BY_SOLIDS, "seed %u", seed);
}

Test(concrete_laws, the_recipe_has_the_masses_of_the_proportions) {
    of_many(as_a_mix);
}

/* ---- moisture ---------------------------------------------------------------------- */

/* Of one bag: to add, and what the aggregate brings. */
static double water_in_all(const gb_concrete *c, const gb_mix *mix, const gb_recipe *r,
                           gb_share sand, double *to_add) {
    gb_water_row row = {{0}, {0}, {0}, {0}};
    if (gb_water_to_add(mix, r, sand, 1, &row) != GB_OK)
        return NAN;
    *to_add = row.usual.kg;
    gb_wetness of_sand = {sand, c->sand_absorption};
    gb_wetness of_stone = gb_wetness_of(c->stone_moisture, c->stone_absorption);
    return row.usual.kg + gb_free_water(r->part[1], of_sand).kg +
           gb_free_water(r->part[2], of_stone).kg;
}

static void other_moisture(unsigned seed, const gb_concrete *c, const gb_proportions *p) {
    ask_random random = ask_seeded(seed + CONCRETES);
    double before = NAN;
    gb_mix mix;
    gb_part parts[3];
    const gb_recipe first = recipe_of(seed, c, &mix, parts);
    gb_concrete wet = *c;
    wet.air_dry = true;
    for (int i = 0; i < 4; i++) {
        gb_proportions q = {0};
        wet.sand_moisture.of_one = ask_between(&random, 0, 0.05);
        wet.stone_moisture.of_one = ask_between(&random, 0, 0.03);
        cr_assert(changed(&wet, &q), "seed %u", seed);
        cr_expect(memcmp(&q.parts, &p->parts, sizeof q.parts) == 0, "seed %u: dry", seed);
        const gb_recipe r = recipe_of(seed, &wet, &mix, parts);
        cr_expect(ask_same(r.yield.m3, first.yield.m3), "seed %u: yield", seed);
        double to_add = 0;
        double all = water_in_all(&wet, &mix, &r, wet.sand_moisture, &to_add);
        if (isnan(all))
            continue; /* too wet for its least water */
        cr_expect(ask_same(all, r.water_usual.kg), "seed %u: %g of %g", seed, all,
                  r.water_usual.kg);
        cr_expect(isnan(before) || to_add != before, "seed %u: to add moves", seed);
        before = to_add;
    }
}

Test(concrete_laws, moisture_changes_neither_the_dry_mix_nor_the_yield) {
    of_many(other_moisture);
}
