#include "gaugebox/moisture.h"

#include "gaugebox/count.h"

#include <math.h>

gb_wetness gb_wetness_of(gb_share moisture, gb_share absorption) {
    return (gb_wetness){isnan(moisture.of_one) ? absorption : moisture, absorption};
}

gb_mass gb_on_basis(gb_mass mass, gb_wetness w, gb_basis from, gb_basis to) {
    const double of_dry[] = {[GB_OVEN_DRY] = 1.0,
                             [GB_SATURATED] = 1.0 + w.absorption.of_one,
                             [GB_AS_DELIVERED] = 1.0 + w.moisture.of_one};
    return (gb_mass){mass.kg * of_dry[to] / of_dry[from]};
}

gb_mass gb_free_water(gb_mass dry, gb_wetness w) {
    return (gb_mass){dry.kg * (w.moisture.of_one - w.absorption.of_one)};
}

gb_share gb_surface_moisture(gb_wetness w) {
    return (gb_share){(w.moisture.of_one - w.absorption.of_one) /
                      (1.0 + w.absorption.of_one)};
}

gb_share gb_moisture_of_surface(gb_share surface, gb_share absorption) {
    return (gb_share){surface.of_one * (1.0 + absorption.of_one) + absorption.of_one};
}

gb_share gb_delivered_sand(const gb_concrete *c) {
    return isnan(c->sand_moisture.of_one) ? gb_sand_moisture(GB_DAMP) : c->sand_moisture;
}

/* ---- parts of a mix ---------------------------------------------------------------- */

gb_wetness gb_part_wetness(const gb_part *part, gb_share pile) {
    if (part->material->kind == GB_SAND)
        return (gb_wetness){pile, part->absorption};
    return (gb_wetness){part->moisture, part->absorption};
}

gb_mass gb_part_lying(const gb_part *part, gb_mass dry, gb_share pile) {
    return gb_on_basis(dry, gb_part_wetness(part, pile), GB_OVEN_DRY, GB_AS_DELIVERED);
}

gb_mass gb_mass_lying(const gb_material *material, gb_mass dry, gb_lying lying) {
    double moisture = material->kind == GB_SAND ? lying.moisture.of_one : 0;
    return (gb_mass){dry.kg * (1.0 + moisture)};
}

gb_status gb_water_to_add(const gb_mix *mix, const gb_recipe *recipe, gb_share moisture,
                          double bags, gb_water_row *row) {
    double own = recipe->sand.kg * moisture.of_one - recipe->drunk.kg;
    double least = recipe->water_least.kg - own;
    if (!gb_over(least, 0))
        return GB_TOO_WET;
    row->moisture = moisture;
    row->first.kg = bags * least * mix->water.first.of_one;
    row->usual.kg = bags * (recipe->water_usual.kg - own);
    row->most.kg = bags * (recipe->water_most.kg - own);
    return GB_OK;
}
