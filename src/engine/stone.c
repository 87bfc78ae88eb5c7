#include "gaugebox/stone.h"

#include "gaugebox/count.h"

#include <math.h>

static bool positive(double x) {
    return isfinite(x) && x > 0;
}

gb_mass gb_two_lift(void) {
    return (gb_mass){2.0 * gb_si(GB_MASS, "lb", 51)};
}

gb_status gb_measure_stone(const gb_shape *shape, size_t count,
                           const gb_piece_stone *stone, gb_stone_size *size) {
    gb_plan_size plan;
    gb_length none = {0};
    gb_status status = gb_measure_shape(shape, none, none, &plan);
    if (status != GB_OK)
        return status;
    const gb_stone *kind = stone->stone;
    if (kind == NULL || !positive(kind->typical.kg_m3) || !positive(kind->most.kg_m3) ||
        !positive(stone->thickness.m) || !(stone->margin.m >= 0) ||
        !(stone->breakage.of_one >= 0))
        return GB_NOT_POSITIVE;
    gb_stone_size s = {.net = plan.net};
    s.blank_length.m = plan.blank_length.m + 2.0 * stone->margin.m;
    s.blank_width.m = plan.blank_width.m + 2.0 * stone->margin.m;
    s.blank.m2 = s.blank_length.m * s.blank_width.m;
    s.cut_away.of_one = 1.0 - s.net.m2 / s.blank.m2;
    s.broken = gb_round((double)count * stone->breakage.of_one, 1, GB_UP);
    s.ordered = (double)count + (double)stone->spare + s.broken;
    double volume = s.net.m2 * stone->thickness.m;
    s.typical.kg = volume * kind->typical.kg_m3;
    s.most.kg = volume * kind->most.kg_m3;
    s.lifted.kg = s.blank.m2 * stone->thickness.m * kind->most.kg_m3;
    s.freight.kg = s.ordered * s.blank.m2 * stone->thickness.m * kind->typical.kg_m3;
    *size = s;
    return GB_OK;
}
