#include "gaugebox/sand.h"

#include "gaugebox/count.h"

#include <math.h>

/* ---- moisture and bulking ---------------------------------------------------------- */

/* Common practice for "nearly dry", "damp" and "wet" as a hand feels it; IS 456 prints
   2.5, 5 and 7.5 % of surface water for moist, moderate and very wet sand. */
gb_share gb_sand_moisture(gb_sand_state state) {
    static const double SHARES[] = {
        [GB_NEARLY_DRY] = 0.02, [GB_DAMP] = 0.05, [GB_WET] = 0.08};
    return (gb_share){SHARES[state]};
}

/* Boardman, as printed by Gillette and Hill, Concrete Construction: Methods and Costs,
   1908. */
static const gb_bulking_point CURVE[] = {{{0.00}, {0.000}}, {{0.02}, {0.176}},
                                         {{0.04}, {0.220}}, {{0.06}, {0.195}},
                                         {{0.08}, {0.166}}, {{0.10}, {0.156}}};
enum { POINTS = sizeof CURVE / sizeof CURVE[0] };

bool gb_bulking_points(gb_share moisture, const gb_bulking_point **low,
                       const gb_bulking_point **high) {
    double m = moisture.of_one;
    if (!(m >= CURVE[0].moisture.of_one) || gb_over(m, CURVE[POINTS - 1].moisture.of_one))
        return false;
    size_t i = 1;
    while (i + 1 < POINTS && m > CURVE[i].moisture.of_one)
        i++;
    *low = &CURVE[i - 1];
    *high = &CURVE[i];
    return true;
}

gb_share gb_usual_bulking(gb_share moisture) {
    const gb_bulking_point *low = NULL;
    const gb_bulking_point *high = NULL;
    if (!gb_bulking_points(moisture, &low, &high))
        return (gb_share){GB_NONE};
    double m0 = low->moisture.of_one;
    double m1 = high->moisture.of_one;
    double b0 = low->bulking.of_one;
    double b1 = high->bulking.of_one;
    return (gb_share){b0 + (b1 - b0) * (moisture.of_one - m0) / (m1 - m0)};
}

gb_lying gb_usual_lying(gb_share moisture) {
    return (gb_lying){moisture, gb_usual_bulking(moisture)};
}

gb_lying gb_state_lying(gb_sand_state state) {
    return gb_usual_lying(gb_sand_moisture(state));
}

gb_sand_pile gb_usual_pile(void) {
    return (gb_sand_pile){.state = GB_DAMP,
                          .moisture = {GB_NONE},
                          .bulking = {GB_NONE},
                          .moist_height = {GB_NONE},
                          .flooded_height = {GB_NONE}};
}

gb_share gb_tested_bulking(gb_length moist, gb_length flooded) {
    return (gb_share){(moist.m - flooded.m) / flooded.m};
}

gb_share gb_most_bulking(void) {
    return (gb_share){0.60};
}

gb_lying gb_pile_lying(const gb_sand_pile *pile) {
    gb_lying lying = {.moisture = pile->moisture};
    if (isnan(lying.moisture.of_one))
        lying.moisture = gb_sand_moisture(pile->state);
    if (!isnan(pile->moist_height.m))
        lying.bulking = gb_tested_bulking(pile->moist_height, pile->flooded_height);
    else if (!isnan(pile->bulking.of_one))
        lying.bulking = pile->bulking;
    else
        lying.bulking = gb_usual_bulking(lying.moisture);
    return lying;
}

/* ---- volume and mass --------------------------------------------------------------- */

gb_density gb_settled_density(const gb_material *sand) {
    double bulking = gb_usual_bulking(sand->gauged_at).of_one;
    return (gb_density){sand->bulk.kg_m3 * (1.0 + bulking)};
}

gb_density gb_loose_density(const gb_material *material, gb_lying lying) {
    if (material->kind != GB_SAND)
        return material->bulk;
    double settled = gb_settled_density(material).kg_m3;
    return (gb_density){settled / (1.0 + lying.bulking.of_one)};
}

gb_volume gb_loose_volume(const gb_material *material, gb_mass dry, gb_lying lying) {
    return (gb_volume){dry.kg / gb_loose_density(material, lying).kg_m3};
}

gb_mass gb_dry_mass(const gb_material *material, gb_volume loose, gb_lying lying) {
    return (gb_mass){loose.m3 * gb_loose_density(material, lying).kg_m3};
}
