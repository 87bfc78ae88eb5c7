#include "gaugebox/mix.h"

#include <math.h>

bool gb_is_addition(gb_material_kind kind) {
    return kind >= GB_PIGMENT;
}

bool gb_is_coloured(const gb_mix *mix) {
    for (size_t i = 0; i < mix->addition_count; i++) {
        gb_material_kind kind = mix->additions[i].material->kind;
        if (kind == GB_PIGMENT || kind == GB_CARBON_BLACK)
            return true;
    }
    return false;
}

bool gb_is_never_retempered(const gb_mix *mix) {
    return mix->never_retempered || gb_is_coloured(mix);
}

gb_mass gb_addition_mass(const gb_mix *mix, const gb_recipe *recipe, size_t addition,
                         double bags, gb_mass water) {
    const gb_addition *a = &mix->additions[addition];
    double binder = bags * recipe->binder.kg;
    if (!isnan(a->share.of_one))
        return (gb_mass){a->share.of_one * binder};
    double density = a->material->bulk.kg_m3;
    if (!isnan(a->dose.m3))
        return (gb_mass){a->dose.m3 / a->dose_for.kg * binder * density};
    return (gb_mass){a->replaces.of_one * water.kg / GB_WATER_KG_M3 * density};
}

gb_share gb_water_replaced(const gb_mix *mix) {
    gb_share all = {0};
    for (size_t i = 0; i < mix->addition_count; i++)
        if (!isnan(mix->additions[i].replaces.of_one))
            all.of_one += mix->additions[i].replaces.of_one;
    return all;
}

bool gb_entrains_air(const gb_mix *mix) {
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material->entrains)
            return true;
    for (size_t i = 0; i < mix->addition_count; i++)
        if (mix->additions[i].material->kind == GB_AIR_ENTRAINER)
            return true;
    return false;
}
