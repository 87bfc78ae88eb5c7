/* Sand as it lies: moisture, bulking, volume and mass. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "fixture.h"

/* The curve as printed, and halfway between its points: (17.6 + 22) / 2 = 19.8 and so on;
   5 % is the damp sand of every sheet. */
static const struct {
    double moisture, bulking; /* % */
} CURVE[] = {{0, 0},    {1, 8.8},   {2, 17.6}, {3, 19.8}, {4, 22},   {5, 20.75},
             {6, 19.5}, {7, 18.05}, {8, 16.6}, {9, 16.1}, {10, 15.6}};

Test(sand, usual_bulking_at_its_points_and_between) {
    for (size_t i = 0; i < ROWS_OF(CURVE); i++) {
        double b = gb_usual_bulking((gb_share){CURVE[i].moisture / 100}).of_one;
        cr_expect(fx_near(100 * b, CURVE[i].bulking, 1e-9), "%g %%: %.6f",
                  CURVE[i].moisture, 100 * b);
    }
}

Test(sand, no_bulking_is_known_beyond_the_curve) {
    const double outside[] = {-0.01, 0.1001, 0.12, 0.15, 1, NAN, INFINITY, -INFINITY};
    for (size_t i = 0; i < ROWS_OF(outside); i++) {
        const gb_bulking_point *low = NULL, *high = NULL;
        gb_share m = {outside[i]};
        cr_expect(isnan(gb_usual_bulking(m).of_one), "%g", outside[i]);
        bool found = gb_bulking_points(m, &low, &high);
        cr_expect(found == false && low == NULL && high == NULL, "%g", outside[i]);
    }
}

Test(sand, the_points_hold_the_moisture_between_them) {
    for (int i = 0; i <= 100; i++) {
        const gb_bulking_point *low = NULL, *high = NULL;
        double m = i / 1000.0;
        cr_assert(gb_bulking_points((gb_share){m}, &low, &high), "%g", m);
        cr_expect(low->moisture.of_one <= m && m <= high->moisture.of_one, "%g", m);
        cr_expect(low + 1 == high, "%g: neighbours", m);
    }
}

/* The test goes before a stated bulking, that before the curve; the moisture as stated
   before the state's own. */
Test(sand, what_tells_the_bulking) {
    gb_sand_pile p = gb_usual_pile();
    gb_lying l = gb_pile_lying(&p);
    cr_expect(l.moisture.of_one == 0.05 && fx_near(l.bulking.of_one, 0.2075, 1e-12));
    p.state = GB_WET;
    cr_expect(fx_near(gb_pile_lying(&p).bulking.of_one, 0.166, 1e-12), "the state's");
    p.moisture.of_one = 0.04;
    l = gb_pile_lying(&p);
    cr_expect(l.moisture.of_one == 0.04 && fx_near(l.bulking.of_one, 0.22, 1e-12));
    p.bulking.of_one = 0.31;
    cr_expect(gb_pile_lying(&p).bulking.of_one == 0.31, "as stated");
    p.moist_height.m = 0.20;
    p.flooded_height.m = 0.16;
    l = gb_pile_lying(&p);
    cr_expect(fx_near(l.bulking.of_one, 0.25, 1e-12), "the test: %g", l.bulking.of_one);
    cr_expect(l.moisture.of_one == 0.04, "the test tells no moisture");
    p = gb_usual_pile();
    p.moisture.of_one = 0.12;
    cr_expect(isnan(gb_pile_lying(&p).bulking.of_one), "nothing tells it");
}

/* 1 ft3 of damp sand holds 80 lb dry: with 5 % and the usual bulking nothing is other
   than ASTM C270 has it. Settled, 80 x 1.2075 = 96.6 lb. */
Test(sand, damp_sand_is_that_of_c270) {
    gb_density d = gb_loose_density(&FX_SAND, gb_state_lying(GB_DAMP));
    cr_expect(fx_near(d.kg_m3 * FT3 / LB, 80, 1e-9), "%.9f", d.kg_m3 * FT3 / LB);
    d = gb_settled_density(&FX_SAND);
    cr_expect(fx_near(d.kg_m3 * FT3 / LB, 96.6, 1e-9), "%.9f", d.kg_m3 * FT3 / LB);
    d = gb_loose_density(&FX_SAND, gb_usual_lying((gb_share){0}));
    cr_expect(fx_near(d.kg_m3 * FT3 / LB, 96.6, 1e-9), "dry sand does not bulk");
}

/* Moist over settled volume is 1 + B for the same dry mass, over all B. */
Test(sand, a_volume_grows_by_its_bulking) {
    gb_mass dry = {100};
    gb_volume settled = gb_loose_volume(&FX_SAND, dry, (gb_lying){{0.05}, {0}});
    double before = 0;
    for (int percent = 0; percent <= 60; percent++) {
        gb_lying l = {{0.05}, {percent / 100.0}};
        gb_volume v = gb_loose_volume(&FX_SAND, dry, l);
        cr_expect(fx_near(v.m3 / settled.m3, 1 + percent / 100.0, 1e-12), "%d", percent);
        cr_expect(v.m3 > before, "%d: more bulking, more volume", percent);
        before = v.m3;
        cr_expect(fx_same(gb_dry_mass(&FX_SAND, v, l).kg, dry.kg), "%d: and back",
                  percent);
        cr_expect(fx_same(gb_mass_lying(&FX_SAND, dry, l).kg, 105), "%d: its water",
                  percent);
    }
}

/* What moisture does to the mass, bulking does not, and the other way round. */
Test(sand, moisture_and_bulking_are_apart) {
    gb_mass dry = {100};
    for (int percent = 0; percent <= 15; percent++) {
        gb_lying l = {{percent / 100.0}, {0.2}};
        gb_volume v = gb_loose_volume(&FX_SAND, dry, l);
        cr_expect(v.m3 == gb_loose_volume(&FX_SAND, dry, (gb_lying){{0}, {0.2}}).m3);
        cr_expect(fx_same(gb_mass_lying(&FX_SAND, dry, l).kg, 100 + percent));
    }
}

Test(sand, other_materials_neither_bulk_nor_hold_water) {
    gb_lying wet = {{0.08}, {0.4}};
    const gb_material *others[] = {&FX_CEMENT, &FX_LIME};
    for (size_t i = 0; i < ROWS_OF(others); i++) {
        cr_expect(gb_loose_density(others[i], wet).kg_m3 == others[i]->bulk.kg_m3);
        cr_expect(gb_mass_lying(others[i], (gb_mass){50}, wet).kg == 50);
    }
}

/* The law that all rests on: a plan's recipes, batches and dry masses are the same with
   any moisture and any bulking; the loose volume to order grows with the bulking. */
Test(sand, bulking_moves_the_loose_volume_alone) {
    gb_arena arena;
    gb_plan plain, bulked;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    f.job.sand.bulking.of_one = 0;
    fx_plan(&f, &arena, &plain);
    double before = fx_supply(&plain, FX_SAND.name)->loose.m3;
    cr_expect(fx_near(before / FT3, 924 / 96.6, 1e-9), "%.6f ft3", before / FT3);
    for (int percent = 5; percent <= 60; percent += 5) {
        f.job.sand.bulking.of_one = percent / 100.0;
        fx_plan(&f, &arena, &bulked);
        for (size_t m = 0; m < plain.mix_count; m++) {
            const gb_mix_plan *a = &plain.mixes[m], *b = &bulked.mixes[m];
            cr_expect(memcmp(&a->recipe, &b->recipe, sizeof a->recipe) == 0, "%d %%: %zu",
                      percent, m);
            cr_expect(a->batching.bags_gauged == b->batching.bags_gauged, "%d", percent);
        }
        for (size_t i = 0; i < plain.supply_count; i++)
            cr_expect(plain.supplies[i].mass.kg == bulked.supplies[i].mass.kg &&
                          plain.supplies[i].lying.kg == bulked.supplies[i].lying.kg,
                      "%d %%: supply %zu", percent, i);
        cr_expect(plain.water.m3 == bulked.water.m3, "%d %%: water", percent);
        double loose = fx_supply(&bulked, FX_SAND.name)->loose.m3;
        cr_expect(fx_near(loose / before, 1 + 0.01 * percent, 1e-9), "%d %%: %.6f",
                  percent, loose / before);
        const gb_supply_need *cement = fx_supply(&bulked, FX_CEMENT.name);
        cr_expect(fx_same(cement->loose.m3, cement->mass.kg / FX_CEMENT.bulk.kg_m3));
    }
    gb_arena_release(&arena);
}

/* Two piles on two jobs: each volume by its own bulking. */
Test(sand, volumes_of_two_plans_are_added) {
    gb_arena arena;
    gb_plan plans[2];
    fx_job f, g;
    const gb_supply_need *needs = NULL;
    size_t count = 0;
    fx_open(&arena);
    fx_library(&f);
    f.job.sand.bulking.of_one = 0.1;
    fx_plan(&f, &arena, &plans[0]);
    fx_library(&g);
    g.job.sand.bulking.of_one = 0.3;
    fx_plan(&g, &arena, &plans[1]);
    cr_assert(gb_merge_supplies(plans, 2, &arena, &needs, &count) == GB_OK);
    for (size_t i = 0; i < count; i++)
        if (needs[i].material == &FX_SAND)
            cr_expect(fx_near(needs[i].loose.m3 / FT3, 924 / 96.6 * (1.1 + 1.3), 1e-9),
                      "%.6f", needs[i].loose.m3 / FT3);
    gb_arena_release(&arena);
}

/* Where nothing tells the bulking, or it cannot be, there is no plan. */
Test(sand, no_plan_without_a_bulking) {
    const struct {
        const char *id;
        double moisture, bulking, moist, flooded;
    } rows[] = {{"beyond the curve", 0.12, NAN, NAN, NAN},
                {"one height", 0.05, NAN, 0.2, NAN},
                {"flooded over moist", 0.05, NAN, 0.16, 0.2},
                {"flooded of nothing", 0.05, NAN, 0.16, 0},
                {"below zero", 0.05, -0.1, NAN, NAN},
                {"without end", 0.05, INFINITY, NAN, NAN}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        const gb_mix *bad = NULL;
        fx_open(&arena);
        fx_library(&f);
        f.job.sand.moisture.of_one = rows[i].moisture;
        f.job.sand.bulking.of_one = rows[i].bulking;
        f.job.sand.moist_height.m = rows[i].moist;
        f.job.sand.flooded_height.m = rows[i].flooded;
        gb_status s = gb_make_plan(&f.job, &arena, &plan, &bad);
        cr_expect(s == GB_NOT_POSITIVE && bad == NULL, "%s: status %d", rows[i].id, s);
        gb_arena_release(&arena);
    }
}
