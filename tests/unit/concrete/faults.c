/* What can be wrong with a concrete: each fault by a row, and no other beside it. */
#include "asked.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stddef.h>
#include <string.h>

#define BIT(fault)  (1u << (fault))
#define COUNT(rows) (sizeof(rows) / sizeof((rows)[0]))
#define FIELD(name) offsetof(gb_concrete, name)
#define TRIAL(name) offsetof(gb_concrete, trial.name)

static const gb_density WATER = {GB_WATER_KG_M3};

static void put(gb_concrete *c, size_t field, double value) {
    memcpy((char *)c + field, &value, sizeof value);
}

/* Bits that a row has raised, over all tests of this file's tables. */
static uint32_t check(const char *id, const gb_concrete *c, uint32_t wanted) {
    uint32_t faults = gb_concrete_faults(c);
    cr_expect(faults == wanted, "%s: faults %x, not %x", id, faults, wanted);
    return faults;
}

/* ---- one number that is wrong ------------------------------------------------------ */

/* Of a concrete of 25 MPa required, slump 75.5 mm, 19 mm, SI, without air. */
static const struct row {
    const char *id;
    size_t field;
    double value;
    uint32_t faults;
} ROWS[] = {
    {"average NaN", FIELD(average.pa), NAN, BIT(GB_NO_STRENGTH)},
    {"average 0", FIELD(average.pa), 0, BIT(GB_STRENGTH_LOW)},
    {"average below 0", FIELD(average.pa), -25e6, BIT(GB_STRENGTH_LOW)},
    {"average minus infinity", FIELD(average.pa), -INFINITY, BIT(GB_STRENGTH_LOW)},
    {"average infinity", FIELD(average.pa), INFINITY, BIT(GB_STRENGTH_HIGH)},
    {"average 14.9 MPa", FIELD(average.pa), 14.9e6, BIT(GB_STRENGTH_LOW)},
    {"average 15 MPa", FIELD(average.pa), 15e6, 0},
    {"average 40 MPa", FIELD(average.pa), 40e6, 0},
    {"average 40.1 MPa", FIELD(average.pa), 40.1e6, BIT(GB_STRENGTH_HIGH)},
    {"deviation without tests", FIELD(deviation.pa), 3e6, BIT(GB_FEW_TESTS)},
    {"slump NaN", FIELD(slump.m), NAN, BIT(GB_SLUMP_NOT_IN_TABLE)},
    {"slump 0", FIELD(slump.m), 0, BIT(GB_SLUMP_NOT_IN_TABLE)},
    {"slump below 0", FIELD(slump.m), -0.0755, BIT(GB_SLUMP_NOT_IN_TABLE)},
    {"slump infinity", FIELD(slump.m), INFINITY, BIT(GB_SLUMP_NOT_IN_TABLE)},
    {"slump 24 mm", FIELD(slump.m), 0.024, BIT(GB_SLUMP_NOT_IN_TABLE)},
    {"slump 25 mm", FIELD(slump.m), 0.025, 0},
    {"slump 2 in", FIELD(slump.m), 0.0508, 0},
    {"slump 60 mm", FIELD(slump.m), 0.060, BIT(GB_SLUMP_NOT_IN_TABLE)},
    {"slump 5 in", FIELD(slump.m), 0.127, BIT(GB_SLUMP_NOT_IN_TABLE)},
    {"slump 7 in", FIELD(slump.m), 0.1778, 0},
    {"slump 12 in", FIELD(slump.m), 0.3048, BIT(GB_SLUMP_NOT_IN_TABLE)},
    {"largest NaN", FIELD(largest.m), NAN, BIT(GB_SIZE_NOT_IN_TABLE)},
    {"largest 0", FIELD(largest.m), 0, BIT(GB_SIZE_NOT_IN_TABLE)},
    {"largest below 0", FIELD(largest.m), -0.019, BIT(GB_SIZE_NOT_IN_TABLE)},
    {"largest infinity", FIELD(largest.m), INFINITY, BIT(GB_SIZE_NOT_IN_TABLE)},
    {"largest 22 mm", FIELD(largest.m), 0.022, BIT(GB_SIZE_NOT_IN_TABLE)},
    {"largest 3/4 in", FIELD(largest.m), 0.01905, 0},
    {"fineness NaN", FIELD(fineness), NAN, BIT(GB_FINENESS_OUTSIDE)},
    {"fineness 0", FIELD(fineness), 0, BIT(GB_FINENESS_OUTSIDE)},
    {"fineness below 0", FIELD(fineness), -2.7, BIT(GB_FINENESS_OUTSIDE)},
    {"fineness infinity", FIELD(fineness), INFINITY, BIT(GB_FINENESS_OUTSIDE)},
    {"fineness 2.39", FIELD(fineness), 2.39, BIT(GB_FINENESS_OUTSIDE)},
    {"fineness 2.40", FIELD(fineness), 2.40, 0},
    {"fineness 3.00", FIELD(fineness), 3.00, 0},
    {"fineness 3.01", FIELD(fineness), 3.01, BIT(GB_FINENESS_OUTSIDE)},
    {"rodded NaN", FIELD(rodded.kg_m3), NAN, BIT(GB_RODDED_IMPOSSIBLE)},
    {"rodded 0", FIELD(rodded.kg_m3), 0, BIT(GB_RODDED_IMPOSSIBLE)},
    {"rodded below 0", FIELD(rodded.kg_m3), -1600, BIT(GB_RODDED_IMPOSSIBLE)},
    {"rodded infinity", FIELD(rodded.kg_m3), INFINITY, BIT(GB_RODDED_IMPOSSIBLE)},
    {"voids 24.9 %", FIELD(rodded.kg_m3), 2650 * 0.751, BIT(GB_RODDED_IMPOSSIBLE)},
    {"voids 25.1 %", FIELD(rodded.kg_m3), 2650 * 0.749, 0},
    {"voids 59.9 %", FIELD(rodded.kg_m3), 2650 * 0.401, 0},
    {"voids 60.1 %", FIELD(rodded.kg_m3), 2650 * 0.399, BIT(GB_RODDED_IMPOSSIBLE)},
    {"loose over rodded", FIELD(loose.kg_m3), 1601, BIT(GB_LOOSE_OVER_RODDED)},
    {"loose as rodded", FIELD(loose.kg_m3), 1600, 0},
    {"stone gravity 0", FIELD(stone_gravity), 0, BIT(GB_RODDED_IMPOSSIBLE)},
    {"stone gravity below 0", FIELD(stone_gravity), -2.65, BIT(GB_RODDED_IMPOSSIBLE)},
    {"stone gravity infinity", FIELD(stone_gravity), INFINITY, BIT(GB_RODDED_IMPOSSIBLE)},
    {"air 2 % trapped", FIELD(air_content.of_one), 0.02, 0},
    {"air 2.1 % trapped", FIELD(air_content.of_one), 0.021, BIT(GB_AIR_WITHOUT_LEVEL)},
    {"air infinity", FIELD(air_content.of_one), INFINITY, BIT(GB_AIR_WITHOUT_LEVEL)},
    {"sand moisture below 0", FIELD(sand_moisture.of_one), -0.01, BIT(GB_SAND_TOO_DRY)},
    {"sand moisture 26 %", FIELD(sand_moisture.of_one), 0.26, 0},
    {"sand moisture 27 %", FIELD(sand_moisture.of_one), 0.27, BIT(GB_AGGREGATE_TOO_WET)},
    {"stone moisture 16 %", FIELD(stone_moisture.of_one), 0.16, 0},
    {"stone moisture 17 %", FIELD(stone_moisture.of_one), 0.17,
     BIT(GB_AGGREGATE_TOO_WET)},
    {"stone moisture below 0", FIELD(stone_moisture.of_one), -0.01,
     BIT(GB_STONE_TOO_DRY)},
    {"ratio 0", FIELD(ratio), 0, BIT(GB_NO_ROOM_FOR_SAND)},
    {"ratio 0.18", FIELD(ratio), 0.18, BIT(GB_NO_ROOM_FOR_SAND)},
    {"water infinity", FIELD(water.kg_m3), INFINITY, BIT(GB_NO_ROOM_FOR_SAND)},
    {"water 500 kg", FIELD(water.kg_m3), 500, BIT(GB_NO_ROOM_FOR_SAND)},
    {"cement gravity 0", FIELD(cement_gravity), 0, BIT(GB_NO_ROOM_FOR_SAND)},
};

/* Proportions come of a concrete without faults alone, and of others are left alone. */
static void check_status(const char *id, const gb_concrete *c, gb_status wanted) {
    gb_proportions p = {.size = 99};
    gb_status status = gb_proportion(c, WATER, &p);
    cr_expect(status == wanted, "%s: status %d", id, (int)status);
    cr_expect((p.size == 99) == (status != GB_OK), "%s: the result", id);
    gb_parts_of_concrete parts = {.fresh = {99}};
    cr_expect(gb_concrete_parts(c, WATER, &parts) == wanted, "%s: the parts", id);
    cr_expect((parts.fresh.kg_m3 == 99) == (status != GB_OK), "%s: the parts", id);
}

Test(concrete_faults, one_number) {
    for (size_t i = 0; i < COUNT(ROWS); i++) {
        gb_concrete c = ask_usual(GB_METRIC);
        put(&c, ROWS[i].field, ROWS[i].value);
        uint32_t faults = check(ROWS[i].id, &c, ROWS[i].faults);
        check_status(ROWS[i].id, &c, faults == 0 ? GB_OK : GB_IMPOSSIBLE);
    }
}

/* ---- what no fault names ----------------------------------------------------------- */

/* Zero, negative and infinite where it cannot be: refused by the status. */
static const struct impossible {
    const char *id;
    size_t field;
    double value;
} IMPOSSIBLE[] = {
    {"ratio below 0", FIELD(ratio), -0.5},
    {"ratio infinity", FIELD(ratio), INFINITY},
    {"ratio minus infinity", FIELD(ratio), -INFINITY},
    {"water 0", FIELD(water.kg_m3), 0},
    {"water below 0", FIELD(water.kg_m3), -200},
    {"water minus infinity", FIELD(water.kg_m3), -INFINITY},
    {"air below 0", FIELD(air_content.of_one), -0.01},
    {"air minus infinity", FIELD(air_content.of_one), -INFINITY},
    {"cement gravity below 0", FIELD(cement_gravity), -3.15},
    {"cement gravity infinity", FIELD(cement_gravity), INFINITY},
    {"sand gravity 0", FIELD(sand_gravity), 0},
    {"sand gravity below 0", FIELD(sand_gravity), -2.65},
    {"sand gravity infinity", FIELD(sand_gravity), INFINITY},
    {"sand absorption NaN", FIELD(sand_absorption.of_one), NAN},
    {"sand absorption below 0", FIELD(sand_absorption.of_one), -0.01},
    {"sand absorption infinity", FIELD(sand_absorption.of_one), INFINITY},
    {"stone absorption NaN", FIELD(stone_absorption.of_one), NAN},
    {"stone absorption below 0", FIELD(stone_absorption.of_one), -0.01},
    {"stone absorption infinity", FIELD(stone_absorption.of_one), INFINITY},
};

Test(concrete_faults, no_quantity_that_cannot_be) {
    for (size_t i = 0; i < COUNT(IMPOSSIBLE); i++) {
        gb_concrete c = ask_usual(GB_METRIC);
        c.air_dry = true; /* below an infinite absorption */
        put(&c, IMPOSSIBLE[i].field, IMPOSSIBLE[i].value);
        check(IMPOSSIBLE[i].id, &c, 0);
        check_status(IMPOSSIBLE[i].id, &c, GB_NOT_POSITIVE);
    }
}

/* ---- faults across members --------------------------------------------------------- */

static gb_concrete specified(double mpa) {
    gb_concrete c = ask_usual(GB_METRIC);
    c.average.pa = NAN;
    c.strength.pa = mpa * 1e6;
    return c;
}

Test(concrete_faults, strength) {
    gb_concrete c = specified(NAN);
    check("no strength", &c, BIT(GB_NO_STRENGTH));
    c.ratio = 0.5;
    check("a ratio alone", &c, 0);
    c = specified(INFINITY);
    check("infinite strength", &c, BIT(GB_STRENGTH_HIGH));
    c = specified(35); /* requires 43.3 */
    check("35 MPa without tests", &c, BIT(GB_STRENGTH_HIGH));
    c.ratio = 0.4;
    check("35 MPa by a ratio", &c, 0);
    c = specified(25);
    check("25 MPa", &c, 0);
    c.air = GB_AIR_SEVERE;
    check("25 MPa with air", &c, 0);
    c = specified(30); /* 38.3: only without air */
    check("30 MPa", &c, 0);
    c.air = GB_AIR_MILD;
    check("30 MPa with air", &c, BIT(GB_STRENGTH_HIGH));
}

Test(concrete_faults, air_that_is_entrained) {
    gb_concrete c = specified(20);
    c.air = GB_AIR_SEVERE;
    c.air_content.of_one = 0.02;
    check("2 %, as trapped", &c, BIT(GB_AIR_TOO_LITTLE));
    c.air_content.of_one = 0.021;
    check("2.1 %", &c, 0);
}

Test(concrete_faults, average_of_a_strength) {
    gb_concrete c = specified(25);
    c.average.pa = 24.9e6;
    check("24.9 MPa on average", &c, BIT(GB_AVERAGE_UNDER));
    c.average.pa = 25e6;
    check("25 MPa on average", &c, 0);
}

/* Stone of gravity 2.9 in 6 in, at the edge of what a fresh mix of ours weighs. */
Test(concrete_faults, heavy) {
    gb_concrete c = ask_usual(GB_METRIC);
    c.largest.m = 0.150;
    c.fineness = 2.4;
    c.stone_gravity = 2.9;
    c.sand_gravity = 2.9;
    c.rodded.kg_m3 = 2000;
    check("gravity 2.9", &c, 0);
    c.stone_gravity = 3.3;
    c.rodded.kg_m3 = 2400;
    check("gravity 3.3", &c, BIT(GB_CONCRETE_HEAVY));
}

Test(concrete_faults, tests) {
    gb_concrete c = specified(25);
    c.tests = 30;
    check("tests alone", &c, BIT(GB_TESTS_ALONE));
    c.deviation.pa = 3e6;
    check("30 tests", &c, 0);
    c.tests = 14;
    check("14 tests", &c, BIT(GB_FEW_TESTS));
    c.tests = 15;
    check("15 tests", &c, 0);
    c.deviation.pa = INFINITY;
    check("an infinite deviation", &c, BIT(GB_STRENGTH_HIGH));
}

Test(concrete_faults, ends_of_the_us_table) {
    const struct {
        double psi;
        gb_air_level air;
        uint32_t faults;
    } rows[] = {
        {1999, GB_AIR_TRAPPED, BIT(GB_STRENGTH_LOW)},
        {2000, GB_AIR_TRAPPED, 0},
        {6000, GB_AIR_TRAPPED, 0},
        {6001, GB_AIR_TRAPPED, BIT(GB_STRENGTH_HIGH)},
        {1999, GB_AIR_MILD, BIT(GB_STRENGTH_LOW)},
        {2000, GB_AIR_MILD, 0},
        {5000, GB_AIR_MILD, 0},
        {5001, GB_AIR_MILD, BIT(GB_STRENGTH_HIGH)},
    };
    for (size_t i = 0; i < COUNT(rows); i++) {
        gb_concrete c = ask_usual(GB_US);
        c.average.pa = gb_si(GB_PRESSURE, "psi", rows[i].psi);
        c.air = rows[i].air;
        check("an end of the US table", &c, rows[i].faults);
    }
}

Test(concrete_faults, water_cell) {
    gb_concrete c = ask_usual(GB_METRIC);
    c.largest.m = 0.150;
    check("6 in at 75 mm", &c, 0);
    c.slump.m = 0.160;
    check("6 in at 160 mm", &c, BIT(GB_NO_WATER_CELL));
    c.water.kg_m3 = 130;
    check("6 in at 160 mm, its own water", &c, 0);
}

Test(concrete_faults, drier_than_absorption) {
    gb_concrete c = ask_usual(GB_METRIC);
    c.sand_absorption.of_one = 0.01;
    c.stone_absorption.of_one = 0.01;
    check("moisture not said", &c, 0);
    c.sand_moisture.of_one = 0.005;
    check("dry sand", &c, BIT(GB_SAND_TOO_DRY));
    c.stone_moisture.of_one = 0.005;
    check("both dry", &c, BIT(GB_SAND_TOO_DRY) | BIT(GB_STONE_TOO_DRY));
    c.sand_moisture.of_one = 0.01;
    check("dry stone", &c, BIT(GB_STONE_TOO_DRY));
    c.air_dry = true;
    check("meant so", &c, 0);
    c = ask_usual(GB_METRIC);
    c.air_content.of_one = 0.06;
    c.air = GB_AIR_MODERATE;
    check("air with a level", &c, 0);
}

/* All at once. */
Test(concrete_faults, every_fault_at_once) {
    gb_concrete c = specified(60);
    c.tests = 3;
    c.slump.m = 0;
    c.largest.m = 0;
    c.fineness = 0;
    c.rodded.kg_m3 = 0;
    c.sand_moisture.of_one = -1;
    c.stone_moisture.of_one = -1;
    c.trial = ask_no_trial();
    c.trial.at.line = 1;
    check("all", &c,
          BIT(GB_TESTS_ALONE) | BIT(GB_STRENGTH_HIGH) | BIT(GB_SLUMP_NOT_IN_TABLE) |
              BIT(GB_SIZE_NOT_IN_TABLE) | BIT(GB_FINENESS_OUTSIDE) |
              BIT(GB_RODDED_IMPOSSIBLE) | BIT(GB_SAND_TOO_DRY) | BIT(GB_STONE_TOO_DRY) |
              BIT(GB_TRIAL_INCOMPLETE));
}

/* ---- the trial --------------------------------------------------------------------- */

/* Of 1 m3 as designed: water 205, cement 336, stone 1008, sand 763 kg; 2312 kg/m3. */
static gb_concrete tried(gb_proportions *p) {
    gb_concrete c = ask_usual(GB_METRIC);
    cr_assert(ask_proportions(&c, p));
    c.trial = ask_no_trial();
    c.trial.at.line = 1;
    c.trial.water.kg = p->parts.water.kg_m3;
    c.trial.cement.kg = p->parts.cement.kg_m3;
    c.trial.stone.kg = p->parts.stone.kg_m3;
    c.trial.sand.kg = p->parts.sand.kg_m3;
    c.trial.unit_mass = p->parts.fresh;
    return c;
}

static const struct row TRIALS[] = {
    {"as designed", TRIAL(slump.m), NAN, 0},
    {"water NaN", TRIAL(water.kg), NAN, BIT(GB_TRIAL_INCOMPLETE)},
    {"cement NaN", TRIAL(cement.kg), NAN, BIT(GB_TRIAL_INCOMPLETE)},
    {"stone NaN", TRIAL(stone.kg), NAN, BIT(GB_TRIAL_INCOMPLETE)},
    {"sand NaN", TRIAL(sand.kg), NAN, BIT(GB_TRIAL_INCOMPLETE)},
    {"unit mass NaN", TRIAL(unit_mass.kg_m3), NAN, BIT(GB_TRIAL_INCOMPLETE)},
    {"a full measure too", TRIAL(full.kg), 20, BIT(GB_TRIAL_TWICE)},
    {"an empty measure too", TRIAL(empty.kg), 2.5, BIT(GB_TRIAL_TWICE)},
    {"a measure too", TRIAL(measure.m3), 0.007, BIT(GB_TRIAL_TWICE)},
    {"water 0", TRIAL(water.kg), 0, BIT(GB_TRIAL_DRY)},
    {"water 0.24 of the cement", TRIAL(water.kg), 80, BIT(GB_TRIAL_DRY)},
    {"unit mass 2 % over air-free", TRIAL(unit_mass.kg_m3), 2405, 0},
    {"unit mass 2.1 % over air-free", TRIAL(unit_mass.kg_m3), 2410,
     BIT(GB_TRIAL_OVERFULL)},
    {"unit mass 14.9 % under air-free", TRIAL(unit_mass.kg_m3), 2008, 0},
    {"unit mass 15.1 % under air-free", TRIAL(unit_mass.kg_m3), 2002,
     BIT(GB_TRIAL_HOLLOW)},
    {"unit mass 0", TRIAL(unit_mass.kg_m3), 0, BIT(GB_TRIAL_LIGHT)},
    {"unit mass infinity", TRIAL(unit_mass.kg_m3), INFINITY, BIT(GB_TRIAL_HEAVY)},
    {"cement 0", TRIAL(cement.kg), 0, BIT(GB_TRIAL_OVERFULL)},
};

static void check_trial(const char *id, const gb_concrete *c, const gb_proportions *p,
                        uint32_t wanted) {
    uint32_t faults = check(id, c, wanted);
    gb_trial_result t = {.yield = {99}};
    gb_status status = gb_judge_trial(c, p, WATER, &t);
    cr_expect((faults == 0) == (status == GB_OK), "%s: status %d", id, (int)status);
    cr_expect((t.yield.m3 == 99) == (status != GB_OK), "%s: the result", id);
}

Test(concrete_faults, trial) {
    for (size_t i = 0; i < COUNT(TRIALS); i++) {
        gb_proportions p = {0};
        gb_concrete c = tried(&p);
        put(&c, TRIALS[i].field, TRIALS[i].value);
        check_trial(TRIALS[i].id, &c, &p, TRIALS[i].faults);
    }
}

Test(concrete_faults, trial_by_a_measure) {
    gb_proportions p = {0};
    gb_concrete c = tried(&p);
    c.trial.unit_mass.kg_m3 = NAN;
    c.trial.measure.m3 = 0.007;
    check_trial("neither full nor empty", &c, &p, BIT(GB_TRIAL_INCOMPLETE));
    c.trial.full.kg = 18;
    check_trial("no empty one", &c, &p, BIT(GB_TRIAL_INCOMPLETE));
    c.trial.empty.kg = 2.5;
    c.trial.full.kg = 2.5;
    check_trial("full as empty", &c, &p, BIT(GB_TRIAL_MEASURE));
    c.trial.full.kg = 2.4;
    check_trial("lighter than empty", &c, &p, BIT(GB_TRIAL_MEASURE));
    c.trial.full.kg = 2.5 + 0.007 * p.parts.fresh.kg_m3;
    check_trial("as designed", &c, &p, 0);
}

/* A trial of other masses than the design, so that no other fault stands beside. */
static gb_concrete of_masses(double water, double cement, double stone, double sand,
                             double unit_mass) {
    gb_proportions p = {0};
    gb_concrete c = tried(&p);
    c.trial.water.kg = water;
    c.trial.cement.kg = cement;
    c.trial.stone.kg = stone;
    c.trial.sand.kg = sand;
    c.trial.unit_mass.kg_m3 = unit_mass;
    return c;
}

Test(concrete_faults, trial_light_and_heavy) {
    gb_concrete c = of_masses(1000, 200, 100, 100, 1199);
    check("1199 kg/m3", &c, BIT(GB_TRIAL_LIGHT));
    c.trial.unit_mass.kg_m3 = 1201;
    check("1201 kg/m3", &c, 0);
    c = of_masses(2.5, 10, 5000, 1, 2701);
    check("2701 kg/m3", &c, BIT(GB_TRIAL_HEAVY));
    c.trial.unit_mass.kg_m3 = 2699;
    check("2699 kg/m3", &c, 0);
}

/* The trial's own moisture goes before the concrete's. */
Test(concrete_faults, moisture_of_a_trial) {
    gb_concrete c = ask_usual(GB_METRIC);
    c.sand_absorption.of_one = 0.01;
    c.trial.sand_moisture.of_one = 0.005;
    check("of no trial", &c, 0);
    gb_proportions p = {0};
    c = tried(&p);
    c.sand_absorption.of_one = 0.01;
    c.sand_moisture.of_one = 0.05;
    c.trial.sand_moisture.of_one = 0.005;
    check("drier than it absorbs", &c, BIT(GB_SAND_TOO_DRY));
}

/* ---- every bit --------------------------------------------------------------------- */

/* Each fault but those of the other tests above has a row that raises it alone. */
Test(concrete_faults, every_fault_has_a_row_of_its_own) {
    uint32_t alone = BIT(GB_NO_WATER_CELL) | BIT(GB_TESTS_ALONE) | BIT(GB_TRIAL_MEASURE) |
                     BIT(GB_AVERAGE_UNDER) | BIT(GB_CONCRETE_HEAVY) |
                     BIT(GB_AIR_TOO_LITTLE) | BIT(GB_TRIAL_LIGHT) | BIT(GB_TRIAL_HEAVY);
    const struct row *tables[] = {ROWS, TRIALS};
    const size_t counts[] = {COUNT(ROWS), COUNT(TRIALS)};
    for (size_t t = 0; t < COUNT(tables); t++)
        for (size_t i = 0; i < counts[t]; i++)
            if ((tables[t][i].faults & (tables[t][i].faults - 1)) == 0)
                alone |= tables[t][i].faults;
    cr_expect(alone == BIT(GB_CONCRETE_FAULTS) - 1, "rows for %x", alone);
}
