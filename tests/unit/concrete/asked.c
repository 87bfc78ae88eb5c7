#include "asked.h"

#include <criterion/criterion.h>
#include <math.h>

static const gb_material CEMENT = {.name = "cement",
                                   .kind = GB_CEMENT,
                                   .bulk = {1505},
                                   .gravity = 3.15,
                                   .pack = {42.6},
                                   .pack_metric = {25}};
static const gb_material SAND = {.name = "sand",
                                 .kind = GB_SAND,
                                 .bulk = {1370},
                                 .gauged_at = {0.05},
                                 .dry_loose = {1400},
                                 .gravity = 2.65,
                                 .pack = {NAN},
                                 .pack_metric = {NAN}};
static const gb_material STONE = {.name = "stone",
                                  .kind = GB_COARSE,
                                  .bulk = {1600},
                                  .gravity = 2.65,
                                  .pack = {NAN},
                                  .pack_metric = {NAN}};

gb_trial ask_no_trial(void) {
    const gb_mass none = {NAN};
    return (gb_trial){.water = none,
                      .cement = none,
                      .stone = none,
                      .sand = none,
                      .stone_moisture = {NAN},
                      .sand_moisture = {NAN},
                      .unit_mass = {NAN},
                      .full = none,
                      .empty = none,
                      .measure = {NAN},
                      .slump = {NAN},
                      .air = {NAN}};
}

gb_concrete ask_usual(gb_system table) {
    return (gb_concrete){.table = table,
                         .strength = {NAN},
                         .average = {table == GB_US ? gb_si(GB_PRESSURE, "psi", 4000)
                                                    : gb_si(GB_PRESSURE, "MPa", 25)},
                         .deviation = {NAN},
                         .slump = {0.0755},
                         .largest = {0.019},
                         .air_content = {NAN},
                         .ratio = NAN,
                         .water = {NAN},
                         .cement_gravity = NAN,
                         .sand_gravity = NAN,
                         .stone_gravity = NAN,
                         .fineness = 2.7,
                         .rodded = {1600},
                         .loose = {NAN},
                         .sand_moisture = {NAN},
                         .stone_moisture = {NAN},
                         .cement_name = CEMENT.name,
                         .sand_name = SAND.name,
                         .stone_name = STONE.name,
                         .cement_material = &CEMENT,
                         .sand_material = &SAND,
                         .stone_material = &STONE,
                         .trial = ask_no_trial(),
                         .at = {.line = 1}};
}

/* ---- by chance --------------------------------------------------------------------- */

ask_random ask_seeded(unsigned seed) {
    return (ask_random){0x9E3779B97F4A7C15u * (seed + 1u)};
}

/* xorshift64*, Vigna 2016. */
static uint64_t next(ask_random *r) {
    r->state ^= r->state >> 12;
    r->state ^= r->state << 25;
    r->state ^= r->state >> 27;
    return r->state * 0x2545F4914F6CDD1Du;
}

double ask_between(ask_random *r, double low, double high) {
    return low + (high - low) * ((double)(next(r) >> 11) / 9007199254740992.0);
}

size_t ask_below(ask_random *r, size_t count) {
    return (size_t)(next(r) % count);
}

static gb_length any_slump(ask_random *r, gb_system table, size_t band) {
    gb_length least = {0};
    gb_length most = {0};
    gb_slump_in_table(table, band, &least, &most);
    return (gb_length){ask_between(r, least.m, most.m)};
}

/* By strength, by a ratio, or by both and what attacks it. */
static void any_strength(ask_random *r, gb_concrete *c) {
    gb_pressure least = {0};
    gb_pressure most = {0};
    gb_strength_range(c->table, gb_is_entrained(c), &least, &most);
    c->average.pa = ask_between(r, least.pa, most.pa);
    if (ask_below(r, 4) == 0)
        c->ratio = ask_between(r, 0.38, 0.80);
    c->attack = (gb_attack)ask_below(r, GB_ATTACKS);
    c->resisting = ask_below(r, 2) == 0;
}

static void any_aggregate(ask_random *r, gb_concrete *c) {
    c->sand_gravity = ask_between(r, 2.45, 2.85);
    c->stone_gravity = ask_between(r, 2.45, 2.95);
    c->sand_absorption.of_one = ask_between(r, 0, 0.03);
    c->stone_absorption.of_one = ask_between(r, 0, 0.03);
    c->sand_moisture.of_one = c->sand_absorption.of_one + ask_between(r, 0, 0.06);
    if (ask_below(r, 3) > 0)
        c->stone_moisture.of_one = c->stone_absorption.of_one + ask_between(r, 0, 0.02);
    c->fineness = ask_between(r, 2.40, 3.00);
    c->rodded.kg_m3 = c->stone_gravity * 1000 * (1 - ask_between(r, 0.32, 0.48));
    c->shape = (gb_shape_of_stone)ask_below(r, GB_SHAPES_OF_STONE);
    c->placing = (gb_placing)ask_below(r, GB_PLACINGS);
}

gb_concrete ask_any(ask_random *r) {
    gb_concrete c = ask_usual(ask_below(r, 2) == 0 ? GB_US : GB_METRIC);
    size_t band = ask_below(r, GB_SLUMP_BANDS);
    size_t size = ask_below(r, band == 2 ? GB_NOMINAL_SIZES - 1 : GB_NOMINAL_SIZES);
    c.slump = any_slump(r, c.table, band);
    c.largest = gb_size_in_table(c.table, size);
    c.air = (gb_air_level)ask_below(r, GB_AIR_LEVELS);
    any_strength(r, &c);
    any_aggregate(r, &c);
    return c;
}

bool ask_proportions(const gb_concrete *c, gb_proportions *p) {
    uint32_t faults = gb_concrete_faults(c);
    gb_status status = gb_proportion(c, (gb_density){GB_WATER_KG_M3}, p);
    static const uint32_t ALLOWED = 1u << GB_NO_ROOM_FOR_SAND | 1u << GB_CONCRETE_HEAVY;
    cr_assert((faults & ~ALLOWED) == 0, "faults %x", faults);
    cr_assert((faults == 0) == (status == GB_OK), "faults %x, status %d", faults,
              (int)status);
    return faults == 0;
}

bool ask_same(double a, double b) {
    return fabs(a - b) <= 1e-9 * fmax(1.0, fmax(fabs(a), fabs(b)));
}
