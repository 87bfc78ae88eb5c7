#include "engine/proportion.h"
#include "engine/fresh.h"
#include "gaugebox/mix.h"
#include "gaugebox/moisture.h"

#include "gaugebox/count.h"

#include <math.h>

/* ---- what is asked for ------------------------------------------------------------- */

static double gravity_of(double stated, const gb_material *material) {
    return isnan(stated) && material != NULL ? material->gravity : stated;
}

double gb_cement_gravity(const gb_concrete *c) {
    return gravity_of(c->cement_gravity, c->cement_material);
}

double gb_sand_gravity(const gb_concrete *c) {
    return gravity_of(c->sand_gravity, c->sand_material);
}

double gb_stone_gravity(const gb_concrete *c) {
    return gravity_of(c->stone_gravity, c->stone_material);
}

gb_share gb_loose_of_rodded(void) {
    return (gb_share){0.93};
}

gb_density gb_loose_stone(const gb_concrete *c) {
    if (!isnan(c->loose.kg_m3))
        return c->loose;
    return (gb_density){c->rodded.kg_m3 * gb_loose_of_rodded().of_one};
}

bool gb_is_entrained(const gb_concrete *c) {
    return c->air != GB_AIR_TRAPPED;
}

/* ---- required average strength ----------------------------------------------------- */

enum { FEWEST_TESTS = 15, TESTS_STEP = 5, MANY_TESTS = 30 };

bool gb_few_tests_points(size_t tests, gb_between *points) {
    static const double FACTORS[] = {1.16, 1.08, 1.03, 1.00}; /* 15, 20, 25, 30 tests */
    if (tests < FEWEST_TESTS || tests >= MANY_TESTS)
        return false;
    size_t i = (tests - FEWEST_TESTS) / TESTS_STEP;
    double from = (double)(FEWEST_TESTS + i * TESTS_STEP);
    *points = (gb_between){from, from + TESTS_STEP, FACTORS[i], FACTORS[i + 1]};
    return true;
}

double gb_few_tests(size_t tests) {
    gb_between p;
    if (!gb_few_tests_points(tests, &p))
        return tests < FEWEST_TESTS ? GB_NONE : 1.0;
    return p.low + (p.high - p.low) * (((double)tests - p.from) / TESTS_STEP);
}

/* What the two systems print in their own round figures. */
typedef struct overdesign {
    const char *unit;
    double low, high;             /* bands of f'c */
    double below, between, above; /* what is added without tests */
    double dip;                   /* a single test may be so far below f'c */
} overdesign;

static const overdesign OVERDESIGNS[] = {
    [GB_US] = {"psi", 3000, 5000, 1000, 1200, 700, 500},
    [GB_METRIC] = {"MPa", 21, 35, 7.0, 8.3, 5.0, 3.5}};

gb_overdesign gb_overdesign_of(gb_system table) {
    const overdesign *o = &OVERDESIGNS[table];
    const gb_unit *unit = gb_find_unit(GB_PRESSURE, o->unit);
    return (gb_overdesign){.low = {gb_from_unit(unit, o->low)},
                           .high = {gb_from_unit(unit, o->high)},
                           .below = {gb_from_unit(unit, o->below)},
                           .between = {gb_from_unit(unit, o->between)},
                           .above = {gb_from_unit(unit, o->above)},
                           .dip = {gb_from_unit(unit, o->dip)}};
}

static double without_tests(const overdesign *o, double f) {
    if (gb_under(f, o->low))
        return f + o->below;
    return gb_over(f, o->high) ? 1.10 * f + o->above : f + o->between;
}

static double with_tests(const overdesign *o, double f, double s) {
    double second = gb_over(f, o->high) ? 0.90 * f + 2.33 * s : f + 2.33 * s - o->dip;
    return gb_larger(f + 1.34 * s, second);
}

gb_pressure gb_required_average(const gb_concrete *c) {
    if (!isnan(c->average.pa) || isnan(c->strength.pa))
        return c->average;
    const overdesign *o = &OVERDESIGNS[c->table];
    const gb_unit *unit = gb_find_unit(GB_PRESSURE, o->unit);
    double f = gb_to_unit(unit, c->strength.pa);
    double s = gb_to_unit(unit, c->deviation.pa) * gb_few_tests(c->tests);
    double average = isnan(c->deviation.pa) ? without_tests(o, f) : with_tests(o, f, s);
    return (gb_pressure){gb_from_unit(unit, average)};
}

/* ---- proportions ------------------------------------------------------------------- */

static gb_density water_of(const gb_concrete *c, const gb_proportions *p) {
    if (!isnan(c->water.kg_m3))
        return c->water;
    return (gb_density){p->table_water.kg_m3 - gb_shape_saving(c->table, c->shape).kg_m3};
}

static gb_share air_of(const gb_concrete *c, size_t size) {
    return isnan(c->air_content.of_one) ? gb_table_air(size, c->air) : c->air_content;
}

/* The sand fills what the others leave of 1 m3. */
void gb_fill_with_sand(const gb_concrete *c, gb_density water,
                       gb_parts_of_concrete *parts) {
    parts->water_volume.of_one = parts->water.kg_m3 / water.kg_m3;
    parts->cement_volume.of_one =
        parts->cement.kg_m3 / (gb_cement_gravity(c) * water.kg_m3);
    parts->stone_volume.of_one = parts->stone.kg_m3 / (gb_stone_gravity(c) * water.kg_m3);
    parts->sand_volume.of_one = 1.0 - parts->water_volume.of_one -
                                parts->cement_volume.of_one - parts->stone_volume.of_one -
                                parts->air.of_one;
    parts->sand.kg_m3 = parts->sand_volume.of_one * gb_sand_gravity(c) * water.kg_m3;
    parts->fresh.kg_m3 = parts->water.kg_m3 + parts->cement.kg_m3 +
                         parts->stone.kg_m3 * (1.0 + c->stone_absorption.of_one) +
                         parts->sand.kg_m3 * (1.0 + c->sand_absorption.of_one);
}

/* All that reads a table; NaN where the table has nothing. */
static void look_up(const gb_concrete *c, gb_proportions *p) {
    bool entrained = gb_is_entrained(c);
    p->average = gb_required_average(c);
    p->table_water = gb_mixing_water(c->table, p->band, p->size, entrained);
    p->ratio_strength = isnan(c->ratio)
                            ? gb_ratio_of_strength(c->table, p->average, entrained)
                            : c->ratio;
    p->ratio_attack = gb_ratio_of_attack(c->attack, c->resisting);
    p->ratio = gb_smaller(p->ratio_strength, p->ratio_attack);
    p->coarse_share.of_one =
        gb_coarse_share(p->size, c->fineness).of_one * gb_placed(c->placing);
    p->first_mass = gb_first_mass(c->table, p->size, entrained);
}

static void proportion(const gb_concrete *c, gb_density water, gb_proportions *p) {
    gb_parts_of_concrete *parts = &p->parts;
    look_up(c, p);
    parts->water = water_of(c, p);
    parts->air = air_of(c, p->size);
    parts->cement.kg_m3 = parts->water.kg_m3 / p->ratio;
    parts->stone.kg_m3 = p->coarse_share.of_one * c->rodded.kg_m3;
    gb_fill_with_sand(c, water, parts);
    p->sand_by_mass.kg_m3 = p->first_mass.kg_m3 - parts->water.kg_m3 -
                            parts->cement.kg_m3 - parts->stone.kg_m3;
}

/* ---- what can be wrong ------------------------------------------------------------- */

/* A share of sand under this makes no concrete that holds together. */
static const double LEAST_SAND = 0.05;
static const double LEAST_VOIDS = 0.25;
static const double MOST_VOIDS = 0.60;

static uint32_t strength_faults(const gb_concrete *c) {
    bool tests = !isnan(c->deviation.pa);
    uint32_t faults =
        gb_when(tests && isnan(gb_few_tests(c->tests)), GB_FEW_TESTS) |
        gb_when(!tests && c->tests > 0, GB_TESTS_ALONE) |
        gb_when(isnan(c->strength.pa) && isnan(c->average.pa) && isnan(c->ratio),
                GB_NO_STRENGTH) |
        gb_when(gb_under(c->average.pa, c->strength.pa), GB_AVERAGE_UNDER);
    gb_pressure least = {0};
    gb_pressure most = {0};
    gb_strength_range(c->table, gb_is_entrained(c), &least, &most);
    double average = gb_required_average(c).pa;
    if (!isnan(c->ratio) || isnan(average))
        return faults;
    return faults | gb_when(gb_over(average, most.pa), GB_STRENGTH_HIGH) |
           gb_when(gb_under(average, least.pa), GB_STRENGTH_LOW);
}

static uint32_t moisture_faults(const gb_concrete *c) {
    double sand = c->sand_absorption.of_one;
    double stone = c->stone_absorption.of_one;
    bool tried = c->trial.at.line != 0;
    bool dry_sand = gb_under(c->sand_moisture.of_one, sand) ||
                    (tried && gb_under(c->trial.sand_moisture.of_one, sand));
    bool dry_stone = gb_under(c->stone_moisture.of_one, stone) ||
                     (tried && gb_under(c->trial.stone_moisture.of_one, stone));
    return gb_when(dry_sand && !c->air_dry, GB_SAND_TOO_DRY) |
           gb_when(dry_stone && !c->air_dry, GB_STONE_TOO_DRY);
}

static uint32_t aggregate_faults(const gb_concrete *c) {
    size_t size = 0;
    double voids = 1.0 - c->rodded.kg_m3 / (gb_stone_gravity(c) * GB_WATER_KG_M3);
    return gb_when(!gb_nominal_size(c->largest, &size), GB_SIZE_NOT_IN_TABLE) |
           gb_when(isnan(gb_coarse_share(0, c->fineness).of_one), GB_FINENESS_OUTSIDE) |
           gb_when(!(voids >= LEAST_VOIDS && voids <= MOST_VOIDS), GB_RODDED_IMPOSSIBLE) |
           gb_when(gb_over(c->loose.kg_m3, c->rodded.kg_m3), GB_LOOSE_OVER_RODDED);
}

static uint32_t water_faults(const gb_concrete *c) {
    size_t band = 0;
    size_t size = 0;
    if (!gb_slump_band(c->slump, &band))
        return gb_when(true, GB_SLUMP_NOT_IN_TABLE);
    if (!gb_nominal_size(c->largest, &size))
        return 0;
    bool no_cell = isnan(c->water.kg_m3) &&
                   isnan(gb_mixing_water(c->table, band, size, gb_is_entrained(c)).kg_m3);
    bool over = !gb_is_entrained(c) &&
                gb_over(c->air_content.of_one, gb_table_air(size, GB_AIR_TRAPPED).of_one);
    bool little =
        gb_is_entrained(c) && !isnan(c->air_content.of_one) &&
        !gb_over(c->air_content.of_one, gb_table_air(size, GB_AIR_TRAPPED).of_one);
    return gb_when(no_cell, GB_NO_WATER_CELL) | gb_when(over, GB_AIR_WITHOUT_LEVEL) |
           gb_when(little, GB_AIR_TOO_LITTLE);
}

static bool positive(double x) {
    return isfinite(x) && x > 0;
}

/* No fault names a quantity that cannot be: a ratio below zero, a gravity of zero, an
   absorption that is not stated. What comes of it shows it. */
static bool is_sound(const gb_concrete *c, const gb_parts_of_concrete *m) {
    bool masses = positive(m->water.kg_m3) && positive(m->cement.kg_m3) &&
                  positive(m->stone.kg_m3) && positive(m->sand.kg_m3) &&
                  positive(m->fresh.kg_m3);
    bool volumes = positive(m->water_volume.of_one) && positive(m->cement_volume.of_one);
    bool shares = m->air.of_one >= 0 && c->sand_absorption.of_one >= 0 &&
                  c->stone_absorption.of_one >= 0;
    return masses && volumes && shares;
}

/* As gb_make_recipe weighs it, what the aggregate absorbs not counted. High-density
   concrete is proportioned in another way, with its own stone. */
static bool is_heavy(const gb_concrete *c, const gb_parts_of_concrete *p) {
    double kg_m3 = p->water.kg_m3 + p->cement.kg_m3 + p->stone.kg_m3 + p->sand.kg_m3;
    return is_sound(c, p) && gb_over(kg_m3, GB_HEAVIEST_FRESH);
}

/* Of the aggregate as it is delivered; stone of which nothing is stated brings none. */
static double free_water(const gb_concrete *c, const gb_parts_of_concrete *p) {
    gb_wetness sand = gb_wetness_of(gb_delivered_sand(c), c->sand_absorption);
    gb_wetness stone = gb_wetness_of(c->stone_moisture, c->stone_absorption);
    return gb_free_water((gb_mass){p->sand.kg_m3}, sand).kg +
           gb_free_water((gb_mass){p->stone.kg_m3}, stone).kg;
}

bool gb_is_mixable(const gb_concrete *c, const gb_parts_of_concrete *parts) {
    return is_sound(c, parts) && parts->sand_volume.of_one >= LEAST_SAND &&
           !is_heavy(c, parts);
}

uint32_t gb_design_faults(const gb_concrete *c) {
    uint32_t faults =
        strength_faults(c) | moisture_faults(c) | aggregate_faults(c) | water_faults(c);
    if (faults != 0)
        return faults;
    gb_proportions p = {0};
    (void)gb_slump_band(c->slump, &p.band);
    (void)gb_nominal_size(c->largest, &p.size);
    proportion(c, (gb_density){GB_WATER_KG_M3}, &p);
    bool too_wet =
        is_sound(c, &p.parts) && !(free_water(c, &p.parts) < p.parts.water.kg_m3);
    return gb_when(!(p.parts.sand_volume.of_one >= LEAST_SAND), GB_NO_ROOM_FOR_SAND) |
           gb_when(is_heavy(c, &p.parts), GB_CONCRETE_HEAVY) |
           gb_when(too_wet, GB_AGGREGATE_TOO_WET);
}

gb_status gb_proportion(const gb_concrete *c, gb_density water, gb_proportions *p) {
    gb_proportions result = {0};
    if (gb_design_faults(c) != 0 || !gb_slump_band(c->slump, &result.band) ||
        !gb_nominal_size(c->largest, &result.size))
        return GB_IMPOSSIBLE;
    proportion(c, water, &result);
    if (!is_sound(c, &result.parts))
        return GB_NOT_POSITIVE;
    *p = result;
    return GB_OK;
}
