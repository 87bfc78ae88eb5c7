/* Laws of moist air and of drying. */
#include "gaugebox/air.h"

#include "unit/plan/fixture.h"

#include <criterion/criterion.h>

enum { RUNS = 5000 };

Test(air, saturation_rises_all_the_way) {
    double before = 0;
    for (double c = -100; c <= 200; c += 0.05) {
        double pa = gb_saturation_pa((gb_temp){c});
        cr_assert(pa > before, "%g C", c);
        before = pa;
    }
    cr_expect(isnan(gb_saturation_pa((gb_temp){-100.1})));
    cr_expect(isnan(gb_saturation_pa((gb_temp){200.1})));
    cr_expect(isnan(gb_saturation_pa((gb_temp){NAN})));
}

Test(air, a_dew_point_gives_its_humidity_back) {
    fx_random r = fx_seeded(41);
    for (size_t k = 0; k < RUNS; k++) {
        gb_temp air = {fx_between(&r, -30, 50)};
        gb_share humidity = {fx_between(&r, 0.02, 1)};
        gb_temp dew = gb_dew_point(air, humidity);
        cr_assert(dew.c <= air.c + 1e-9, "never above the air");
        cr_assert(fx_near(gb_humidity_of(air, dew).of_one, humidity.of_one, 1e-9));
    }
    cr_expect(isnan(gb_dew_point((gb_temp){20}, (gb_share){0}).c));
    cr_expect(isnan(gb_dew_point((gb_temp){20}, (gb_share){NAN}).c));
}

typedef double formula(gb_temp concrete, gb_temp air, gb_share humidity, gb_speed wind);

static void check_laws(formula *rate) {
    fx_random r = fx_seeded(42);
    for (size_t k = 0; k < RUNS; k++) {
        gb_temp tc = {fx_between(&r, 0, 45)};
        gb_temp ta = {fx_between(&r, -10, 45)};
        gb_share rh = {fx_between(&r, 0, 0.95)};
        gb_speed v = {fx_between(&r, 0, 20)};
        double dry = rate(tc, ta, rh, v);
        cr_assert(dry >= 0 && isfinite(dry));
        cr_assert(rate(tc, ta, (gb_share){rh.of_one + 0.05}, v) <= dry, "humidity");
        cr_assert(rate(tc, ta, rh, (gb_speed){v.m_s + 1}) >= dry, "wind");
        cr_assert(rate((gb_temp){tc.c + 1}, ta, rh, v) >= dry, "warmer concrete");
        cr_assert(rate(tc, (gb_temp){ta.c + 1}, rh, v) <= dry, "warmer air as humid");
    }
}

Test(air, drying_falls_with_humidity_and_rises_with_wind) {
    check_laws(gb_evaporation);
    check_laws(gb_evaporation_by_menzel);
}

Test(air, wind_not_stated_is_still) {
    cr_expect(
        gb_evaporation((gb_temp){20}, (gb_temp){20}, (gb_share){0.5}, (gb_speed){NAN}) ==
        gb_evaporation((gb_temp){20}, (gb_temp){20}, (gb_share){0.5}, (gb_speed){0}));
}
