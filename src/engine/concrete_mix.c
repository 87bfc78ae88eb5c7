#include "gaugebox/mix.h"

#include <math.h>

static const double LEAST_WATER = 0.9; /* of the ratio: common practice */

bool gb_is_proportioned(const gb_mix *mix) {
    return mix->concrete.at.line != 0;
}

/* One part, by loose volume. */
static gb_part part_of(const gb_concrete *c, const char *name, const gb_material *m,
                       double kg_m3, double gravity) {
    return (gb_part){.material_name = name,
                     .material = m,
                     .volume = kg_m3 / m->bulk.kg_m3,
                     .at = c->at,
                     .gravity = gravity};
}

static bool has_bulk(const gb_material *m) {
    return m != NULL && isfinite(m->bulk.kg_m3) && m->bulk.kg_m3 > 0;
}

gb_status gb_mix_of_concrete(gb_mix *mix, gb_part *parts) {
    const gb_concrete *c = &mix->concrete;
    gb_parts_of_concrete made;
    gb_status status = gb_concrete_parts(c, (gb_density){GB_WATER_KG_M3}, &made);
    if (status != GB_OK)
        return status;
    if (!has_bulk(c->cement_material) || !has_bulk(c->sand_material) ||
        !has_bulk(c->stone_material))
        return GB_NOT_POSITIVE;
    parts[0] = part_of(c, c->cement_name, c->cement_material, made.cement.kg_m3,
                       gb_cement_gravity(c));
    parts[1] =
        part_of(c, c->sand_name, c->sand_material, made.sand.kg_m3, gb_sand_gravity(c));
    parts[1].absorption = c->sand_absorption;
    parts[2] = part_of(c, c->stone_name, c->stone_material, made.stone.kg_m3,
                       gb_stone_gravity(c));
    parts[2].absorption = c->stone_absorption;
    parts[2].moisture =
        isnan(c->stone_moisture.of_one) ? c->stone_absorption : c->stone_moisture;
    /* A proportion is told to one of cement. */
    double cement = parts[0].volume;
    for (size_t i = 0; i < 3; i++)
        parts[i].volume /= cement;
    mix->parts = parts;
    mix->part_count = 3;
    mix->air = made.air;
    mix->largest = c->largest;
    double ratio = made.water.kg_m3 / made.cement.kg_m3;
    mix->water.basis = GB_WATER_BINDER;
    mix->water.least.of_one = LEAST_WATER * ratio;
    mix->water.usual.of_one = ratio;
    mix->water.most.of_one = ratio;
    return GB_OK;
}
