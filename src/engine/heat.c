#include "gaugebox/heat.h"

#include "gaugebox/count.h"

#include <math.h>

static const double SOLIDS = 0.22;  /* heat of solids, of that of water */
static const double MELTING = 80.0; /* 144 Btu/lb */
static const double WARMING = 0.5;  /* heat of ice, of that of water */

static bool is_mass(gb_mass m) {
    return isfinite(m.kg) && m.kg >= 0;
}

static gb_status check(const gb_batch_heat *b) {
    bool masses = is_mass(b->binder) && is_mass(b->aggregate) && is_mass(b->moisture) &&
                  is_mass(b->water) && is_mass(b->ice);
    double all =
        b->binder.kg + b->aggregate.kg + b->moisture.kg + b->water.kg + b->ice.kg;
    if (!masses || !(all > 0))
        return GB_NOT_POSITIVE;
    bool known = isfinite(b->binder_at.c) && isfinite(b->aggregate_at.c) &&
                 isfinite(b->water_at.c);
    return known && !(b->frozen && b->aggregate_at.c > 0) ? GB_OK : GB_IMPOSSIBLE;
}

/* Heat above that of water at 0 C of all but the added water, and what a degree takes. */
static double heat_without_water(const gb_batch_heat *b) {
    double of_moisture =
        b->frozen ? WARMING * b->aggregate_at.c - MELTING : b->aggregate_at.c;
    return SOLIDS *
               (b->binder_at.c * b->binder.kg + b->aggregate_at.c * b->aggregate.kg) +
           of_moisture * b->moisture.kg - MELTING * b->ice.kg;
}

static double capacity(const gb_batch_heat *b) {
    return SOLIDS * (b->binder.kg + b->aggregate.kg) + b->moisture.kg + b->water.kg +
           b->ice.kg;
}

gb_status gb_mix_temperature(const gb_batch_heat *batch, gb_temp *mixed) {
    gb_status status = check(batch);
    if (status != GB_OK)
        return status;
    double heat = heat_without_water(batch) + batch->water_at.c * batch->water.kg;
    double at = heat / capacity(batch);
    if (!(at > 0))
        return GB_FROZEN;
    mixed->c = at;
    return GB_OK;
}

gb_status gb_water_for(const gb_batch_heat *batch, gb_temp wanted, gb_temp *water) {
    gb_status status = check(batch);
    if (status == GB_OK && !(batch->water.kg > 0))
        status = GB_NOT_POSITIVE;
    if (status == GB_OK)
        water->c =
            (wanted.c * capacity(batch) - heat_without_water(batch)) / batch->water.kg;
    return status;
}

gb_status gb_aggregate_for(const gb_batch_heat *batch, gb_temp wanted,
                           gb_temp *aggregate) {
    gb_batch_heat thawed = *batch;
    thawed.frozen = false;
    gb_status status = check(&thawed);
    double each = SOLIDS * thawed.aggregate.kg + thawed.moisture.kg;
    if (status == GB_OK && !(each > 0))
        status = GB_NOT_POSITIVE;
    thawed.aggregate_at.c = 0;
    if (status == GB_OK)
        aggregate->c = (wanted.c * capacity(&thawed) - heat_without_water(&thawed) -
                        thawed.water_at.c * thawed.water.kg) /
                       each;
    return status;
}

gb_status gb_ice_for(const gb_batch_heat *batch, gb_temp wanted, gb_mass *ice) {
    gb_batch_heat without = *batch;
    without.ice.kg = 0;
    gb_status status = check(&without);
    if (status == GB_OK && !(without.water.kg > 0))
        status = GB_NOT_POSITIVE;
    if (status != GB_OK)
        return status;
    /* Each kilogram of water that is ice instead takes its own heat and the melting. */
    double heat = heat_without_water(&without) + without.water_at.c * without.water.kg;
    double too_much = heat - wanted.c * capacity(&without);
    double each = without.water_at.c + MELTING;
    double needed = too_much > 0 ? too_much / each : 0;
    if (gb_over(needed, without.water.kg))
        return GB_IMPOSSIBLE;
    ice->kg = needed;
    return GB_OK;
}

gb_share gb_most_ice(void) {
    return (gb_share){0.20};
}

gb_temp gb_hottest_water(void) {
    return gb_fahrenheit(140);
}

gb_temp gb_flash_set(void) {
    return gb_fahrenheit(100);
}

gb_temp gb_hottest_aggregate(void) {
    return gb_fahrenheit(150);
}
