#include "published/published.h"

#include <criterion/criterion.h>
#include <stdio.h>

/* "Concrete mixes for small jobs" of older editions: pounds of cement, dry sand and
   gravel in 1 ft3, no water printed. With the water and the air that the tables of the
   same standard give their size (3 to 4 in of slump; moderate exposure where air is
   entrained) they must make 1 ft3. Gravity 2.65 for both aggregates; tolerance 2.5 %, of
   which masses in whole pounds leave 1.5 %. */

#define SMALL "ACI 211.1, concrete mixes for small jobs"

enum { MIXES = 3 };
static const char *const MIX[MIXES] = {"A", "B", "C"};
static const struct row {
    double size_in, cement;
    double sand_ae[MIXES], sand[MIXES], gravel[MIXES];
} ROWS[] = {
    {0.5, 25, {48, 46, 44}, {51, 49, 47}, {54, 56, 58}},
    {0.75, 23, {45, 43, 41}, {49, 47, 45}, {62, 64, 66}},
    {1, 22, {41, 39, 37}, {45, 43, 41}, {70, 72, 74}},
    {1.5, 20, {41, 39, 37}, {45, 43, 41}, {75, 77, 79}},
    {2, 19, {40, 38, 36}, {45, 43, 41}, {79, 81, 83}},
};

static void check(pub_table *table, const struct row *row, size_t mix, bool entrained) {
    const double lb = pub_si(GB_MASS, "lb", 1);
    const double ft3 = pub_si(GB_VOLUME, "ft3", 1);
    size_t size = 0;
    gb_length largest = {pub_si(GB_LENGTH, "in", row->size_in)};
    cr_assert(gb_nominal_size(largest, &size), "%g in", row->size_in);
    const pub_masses masses = {
        .cement = row->cement * lb,
        .sand = (entrained ? row->sand_ae : row->sand)[mix] * lb,
        .coarse = row->gravel[mix] * lb,
        .water = gb_mixing_water(GB_US, 1, size, entrained).kg_m3 * ft3,
        .sand_gravity = 2.65,
        .coarse_gravity = 2.65,
        .air = gb_table_air(size, entrained ? GB_AIR_MODERATE : GB_AIR_TRAPPED).of_one};
    pub_concrete c;
    pub_make_concrete(table, &masses, &c);
    const gb_recipe r = pub_recipe(&c.mix);
    char id[96];
    snprintf(id, sizeof id, "%g in, mix %s, %s, ft3", row->size_in, MIX[mix],
             entrained ? "AE" : "non-AE");
    const pub_figure figure = {.id = id,
                               .source = SMALL,
                               .status = PUB_FROM_MEMORY,
                               .printed = 1,
                               .percent = 2.5};
    pub_check(&figure, masses.cement / r.bag.kg * r.yield.m3 / ft3);
}

Test(published_aci_211, small_jobs) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        for (size_t mix = 0; mix < MIXES; mix++) {
            check(&table, &ROWS[i], mix, true);
            check(&table, &ROWS[i], mix, false);
        }
    pub_close(&table);
}
