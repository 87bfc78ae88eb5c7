/* Laws of the temperature that a batch comes out with, and of what it takes to have it.
 */
#include "gaugebox/heat.h"

#include "unit/plan/fixture.h"

#include <criterion/criterion.h>

enum { RUNS = 10000 };

static gb_batch_heat random_batch(fx_random *r) {
    gb_batch_heat b = {.binder = {fx_between(r, 10, 50)},
                       .aggregate = {fx_between(r, 50, 300)},
                       .moisture = {fx_between(r, 0, 15)},
                       .water = {fx_between(r, 5, 40)},
                       .binder_at = {fx_between(r, -5, 60)},
                       .aggregate_at = {fx_between(r, -10, 45)},
                       .water_at = {fx_between(r, 1, 80)}};
    b.frozen = b.aggregate_at.c <= 0;
    return b;
}

static bool mix(const gb_batch_heat *b, double *c) {
    gb_temp t = {NAN};
    bool good = gb_mix_temperature(b, &t) == GB_OK;
    *c = t.c;
    return good;
}

Test(heat, between_the_coldest_and_the_warmest) {
    fx_random r = fx_seeded(51);
    for (size_t k = 0; k < RUNS; k++) {
        gb_batch_heat b = random_batch(&r);
        double t;
        if (b.frozen || !mix(&b, &t))
            continue;
        double least = fmin(b.binder_at.c, fmin(b.aggregate_at.c, b.water_at.c));
        double most = fmax(b.binder_at.c, fmax(b.aggregate_at.c, b.water_at.c));
        cr_assert(t >= least - 1e-9 && t <= most + 1e-9, "batch %zu", k);
    }
}

Test(heat, warmer_water_never_cools_and_ice_never_warms) {
    fx_random r = fx_seeded(52);
    size_t compared = 0;
    for (size_t k = 0; k < RUNS; k++) {
        gb_batch_heat b = random_batch(&r);
        double t, warmer, icier, thawed;
        if (!mix(&b, &t))
            continue;
        gb_batch_heat more = b;
        more.water_at.c += 5;
        cr_assert(mix(&more, &warmer) && warmer > t, "batch %zu", k);
        gb_batch_heat ice = b;
        ice.ice.kg = 0.1 * b.water.kg;
        ice.water.kg -= ice.ice.kg;
        if (mix(&ice, &icier))
            cr_assert(icier < t, "batch %zu", k);
        if (b.frozen && b.moisture.kg > 0.01) {
            gb_batch_heat thaw = b;
            thaw.frozen = false;
            cr_assert(mix(&thaw, &thawed) && thawed > t, "frozen sand is colder");
            compared++;
        }
    }
    cr_expect(compared > 100, "%zu", compared);
}

/* What is asked for comes out when it is put in again. */
Test(heat, water_for_a_temperature) {
    fx_random r = fx_seeded(53);
    for (size_t k = 0; k < RUNS; k++) {
        gb_batch_heat b = random_batch(&r);
        double wanted = fx_between(&r, 4, 40), t;
        cr_assert(gb_water_for(&b, (gb_temp){wanted}, &b.water_at) == GB_OK);
        cr_assert(mix(&b, &t) && fx_near(t, wanted, 1e-9), "batch %zu: %g", k, t);
    }
}

Test(heat, ice_for_a_temperature) {
    fx_random r = fx_seeded(54);
    size_t iced = 0, too_warm = 0;
    for (size_t k = 0; k < RUNS; k++) {
        gb_batch_heat b = random_batch(&r);
        double wanted = fx_between(&r, 4, 30), t;
        gb_mass ice = {NAN};
        if (!mix(&b, &t))
            continue;
        gb_status status = gb_ice_for(&b, (gb_temp){wanted}, &ice);
        too_warm += status == GB_IMPOSSIBLE;
        if (status != GB_OK)
            continue;
        cr_assert((ice.kg > 0) == (t > wanted), "batch %zu", k);
        b.ice = ice;
        b.water.kg -= ice.kg;
        if (ice.kg > 0) {
            iced++;
            cr_assert(mix(&b, &t) && fx_near(t, wanted, 1e-8), "batch %zu: %g", k, t);
        }
    }
    cr_expect(iced > 1000 && too_warm > 0, "%zu, %zu", iced, too_warm);
}

Test(heat, batches_that_are_none) {
    const gb_batch_heat good = {.binder = {20},
                                .aggregate = {80},
                                .water = {10},
                                .binder_at = {10},
                                .aggregate_at = {10},
                                .water_at = {10}};
    gb_temp t = {-77};
    gb_mass ice = {-77};
    for (size_t i = 0; i < FX_BADS; i++) {
        gb_batch_heat b = good;
        if (FX_BAD[i] != 0) {
            b.aggregate.kg = FX_BAD[i];
            cr_expect(gb_mix_temperature(&b, &t) == GB_NOT_POSITIVE, "%g", FX_BAD[i]);
        }
        b = good;
        b.water.kg = FX_BAD[i];
        cr_expect(gb_water_for(&b, (gb_temp){20}, &t) == GB_NOT_POSITIVE, "%g",
                  FX_BAD[i]);
        cr_expect(gb_ice_for(&b, (gb_temp){5}, &ice) == GB_NOT_POSITIVE, "%g", FX_BAD[i]);
    }
    gb_batch_heat b = good;
    b.binder_at.c = NAN;
    cr_expect(gb_mix_temperature(&b, &t) == GB_IMPOSSIBLE);
    b = good;
    b.frozen = true;
    cr_expect(gb_mix_temperature(&b, &t) == GB_IMPOSSIBLE, "frozen at 10 C");
    b = good;
    b.binder_at.c = b.aggregate_at.c = -10;
    b.water_at.c = 1;
    cr_expect(gb_mix_temperature(&b, &t) == GB_FROZEN);
    cr_expect(t.c == -77 && ice.kg == -77, "nothing is written");
}
