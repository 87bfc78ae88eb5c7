/* Bases of a mass of aggregate: there and back, and by hand. */
#include "asked.h"

#include <criterion/criterion.h>

enum { TIMES = 2000 };

static gb_wetness any(ask_random *r) {
    return (gb_wetness){{ask_between(r, 0, 0.12)}, {ask_between(r, 0, 0.06)}};
}

Test(concrete_moisture, bases_there_and_back) {
    ask_random r = ask_seeded(1);
    for (int i = 0; i < TIMES; i++) {
        gb_wetness w = any(&r);
        gb_mass mass = {ask_between(&r, 0.001, 5000)};
        for (int from = GB_OVEN_DRY; from <= GB_AS_DELIVERED; from++)
            for (int to = GB_OVEN_DRY; to <= GB_AS_DELIVERED; to++)
                for (int by = GB_OVEN_DRY; by <= GB_AS_DELIVERED; by++) {
                    gb_mass there = gb_on_basis(mass, w, (gb_basis)from, (gb_basis)to);
                    gb_mass back = gb_on_basis(there, w, (gb_basis)to, (gb_basis)from);
                    gb_mass via = gb_on_basis(mass, w, (gb_basis)from, (gb_basis)by);
                    via = gb_on_basis(via, w, (gb_basis)by, (gb_basis)to);
                    cr_expect(ask_same(back.kg, mass.kg), "%d to %d", from, to);
                    cr_expect(ask_same(via.kg, there.kg), "%d by %d to %d", from, by, to);
                }
    }
}

/* What is delivered is what is SSD and the free water, which is the surface moisture of
   the SSD mass. */
Test(concrete_moisture, free_water_is_what_ssd_has_not) {
    ask_random r = ask_seeded(2);
    for (int i = 0; i < TIMES; i++) {
        gb_wetness w = any(&r);
        gb_mass dry = {ask_between(&r, 0.001, 5000)};
        double ssd = gb_on_basis(dry, w, GB_OVEN_DRY, GB_SATURATED).kg;
        double lying = gb_on_basis(dry, w, GB_OVEN_DRY, GB_AS_DELIVERED).kg;
        double water = gb_free_water(dry, w).kg;
        cr_expect(ask_same(lying, ssd + water), "%g and %g, not %g", ssd, water, lying);
        cr_expect(ask_same(water, ssd * gb_surface_moisture(w).of_one), "surface");
    }
}

Test(concrete_moisture, surface_moisture_there_and_back) {
    ask_random r = ask_seeded(3);
    for (int i = 0; i < TIMES; i++) {
        gb_wetness w = any(&r);
        gb_share surface = gb_surface_moisture(w);
        gb_share all = gb_moisture_of_surface(surface, w.absorption);
        cr_expect(ask_same(all.of_one, w.moisture.of_one), "%g", w.moisture.of_one);
        gb_wetness again = {gb_moisture_of_surface(w.moisture, w.absorption),
                            w.absorption};
        cr_expect(ask_same(gb_surface_moisture(again).of_one, w.moisture.of_one),
                  "%g on the surface", w.moisture.of_one);
    }
}

/* By hand: 100 kg dry, absorption 2 %, moisture 5 %. */
Test(concrete_moisture, by_hand) {
    const gb_wetness w = {{0.05}, {0.02}};
    const gb_mass dry = {100};
    cr_expect(ask_same(gb_on_basis(dry, w, GB_OVEN_DRY, GB_SATURATED).kg, 102));
    cr_expect(ask_same(gb_on_basis(dry, w, GB_OVEN_DRY, GB_AS_DELIVERED).kg, 105));
    cr_expect(ask_same(gb_free_water(dry, w).kg, 3));
    cr_expect(ask_same(gb_surface_moisture(w).of_one, 3.0 / 102));
    cr_expect(ask_same(gb_moisture_of_surface((gb_share){0.03}, (gb_share){0.02}).of_one,
                       0.0506));
    const gb_wetness air_dry = {{0.005}, {0.02}};
    cr_expect(ask_same(gb_free_water(dry, air_dry).kg, -1.5), "it drinks");
}

/* What is not said is saturated, surface-dry: it brings nothing. */
Test(concrete_moisture, unsaid_is_ssd) {
    const gb_wetness w = gb_wetness_of((gb_share){GB_NONE}, (gb_share){0.013});
    cr_expect(ask_same(gb_free_water((gb_mass){1000}, w).kg, 0));
    cr_expect(w.moisture.of_one == 0.013 && w.absorption.of_one == 0.013);
    const gb_wetness dry = gb_wetness_of((gb_share){0}, (gb_share){0.013});
    cr_expect(dry.moisture.of_one == 0, "0 is said");
}
