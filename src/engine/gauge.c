#include "gaugebox/sand.h"

#include "gaugebox/count.h"

#include <math.h>

static const double MOST_ERROR = 0.03; /* of the part: common practice */

gb_gauge gb_usual_gauge(void) {
    return (gb_gauge){.by = GB_BY_BUCKET,
                      .volume = {GB_NONE},
                      .water = {GB_NONE},
                      .inside = {{GB_NONE}, {GB_NONE}},
                      .depth = {GB_NONE},
                      .filled = {GB_NONE}};
}

gb_volume gb_usual_bucket(gb_system system) {
    return (gb_volume){system == GB_METRIC ? gb_si(GB_VOLUME, "L", 12)
                                           : gb_si(GB_VOLUME, "ft3", 0.5)};
}

static double mean_of(const double *values, size_t count) {
    double sum = 0;
    for (size_t i = 0; i < count; i++)
        sum += values[i];
    return sum / (double)count;
}

gb_volume gb_gauge_volume(const gb_gauge *g, gb_system system) {
    switch (g->by) {
    case GB_BY_BOX:
        if (isnan(g->volume.m3))
            return (gb_volume){g->inside[0].m * g->inside[1].m * g->depth.m};
        return g->volume;
    case GB_BY_SHOVEL:
        return (gb_volume){g->filled.m3 / mean_of(g->shovels, g->shovel_count)};
    case GB_BY_BUCKET:
        break;
    }
    if (!isnan(g->water.kg))
        return (gb_volume){g->water.kg / GB_WATER_KG_M3};
    return isnan(g->volume.m3) ? gb_usual_bucket(system) : g->volume;
}

gb_share gb_shovel_spread(const gb_gauge *g) {
    double least = GB_NONE;
    double most = GB_NONE;
    for (size_t i = 0; i < g->shovel_count; i++) {
        least = gb_smaller(least, g->shovels[i]);
        most = gb_larger(most, g->shovels[i]);
    }
    return (gb_share){(most - least) / mean_of(g->shovels, g->shovel_count)};
}

double gb_gauge_step(gb_gauge_by by) {
    return by == GB_BY_SHOVEL ? 1.0 : 0.25;
}

gb_gauged gb_gauge_loose(const gb_material *material, gb_volume loose, gb_gauge_by by,
                         gb_volume one) {
    gb_gauged g = {.exact = loose.m3 / one.m3};
    g.count = gb_round(g.exact, gb_gauge_step(by), GB_NEAREST);
    g.error = g.count / g.exact - 1.0;
    g.weighed = gb_over(fabs(g.error), MOST_ERROR) ||
                (by == GB_BY_SHOVEL && material->kind != GB_SAND);
    return g;
}

gb_mass gb_pail(void) {
    return (gb_mass){gb_si(GB_MASS, "lb", 2)};
}

gb_mass gb_lift_limit(void) {
    return (gb_mass){23};
}
