#include "gaugebox/air.h"

#include "engine/exponential.h"
#include "gaugebox/count.h"

#include <math.h>

static const double ZERO_K = 273.15;
static const double TRIPLE_C = 0.01;

double gb_saturation_pa(gb_temp air) {
    double t = air.c + ZERO_K;
    if (!(air.c >= -100 && air.c <= 200))
        return GB_NONE;
    if (air.c <= TRIPLE_C)
        return gb_exp(-5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t +
                      6.2215701e-7 * t * t + 2.0747825e-9 * t * t * t -
                      9.484024e-13 * t * t * t * t + 4.1635019 * gb_ln(t));
    return gb_exp(-5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t -
                  1.4452093e-8 * t * t * t + 6.5459673 * gb_ln(t));
}

gb_share gb_humidity_of(gb_temp air, gb_temp dew_point) {
    return (gb_share){gb_saturation_pa(dew_point) / gb_saturation_pa(air)};
}

/* The pressure rises all the way, so halving finds the one place. */
gb_temp gb_dew_point(gb_temp air, gb_share humidity) {
    enum { HALVINGS = 60 };
    double wanted = humidity.of_one * gb_saturation_pa(air);
    double low = -100;
    double high = 200;
    if (!(wanted > gb_saturation_pa((gb_temp){low})) ||
        wanted > gb_saturation_pa((gb_temp){high}))
        return (gb_temp){GB_NONE};
    for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2.0;
        if (gb_saturation_pa((gb_temp){middle}) < wanted)
            low = middle;
        else
            high = middle;
    }
    return (gb_temp){(low + high) / 2.0};
}

gb_speed gb_wind_at_work(gb_speed station) {
    return (gb_speed){station.m_s * 2.0 / 3.0};
}

/* ---- evaporation ------------------------------------------------------------------- */

static const double PSI = 0.45359237 * 9.80665 / (0.0254 * 0.0254);

static double mph(gb_speed wind) {
    return isnan(wind.m_s) ? 0 : wind.m_s * 3600.0 / 1609.344;
}

static double from_lb_ft2_h(double rate) {
    return gb_si(GB_EVAPORATION, "lb/ft2/h", rate < 0 ? 0 : rate);
}

/* T^2.5 of a temperature in degrees Fahrenheit. */
static double power(gb_temp t) {
    double f = t.c * 1.8 + 32.0;
    if (f < 0)
        f = 0;
    return f * f * sqrt(f);
}

double gb_evaporation(gb_temp concrete, gb_temp air, gb_share humidity, gb_speed wind) {
    return from_lb_ft2_h((power(concrete) - humidity.of_one * power(air)) *
                         (1.0 + 0.4 * mph(wind)) * 1e-6);
}

double gb_evaporation_by_menzel(gb_temp concrete, gb_temp air, gb_share humidity,
                                gb_speed wind) {
    double excess = gb_saturation_pa(concrete) - humidity.of_one * gb_saturation_pa(air);
    return from_lb_ft2_h(0.44 * excess / PSI * (0.253 + 0.096 * mph(wind)));
}

double gb_evaporation_limit(void) {
    return from_lb_ft2_h(0.2);
}
