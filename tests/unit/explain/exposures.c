/* Air that goes by the size of the stone: its limit is told as the table's, less or more
   the tolerance, and less again where the concrete is strong. */
#include "explain/chains.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>
#include <string.h>

static const struct {
    const char *id;
    double psi;
    gb_exposure exposure;
    gb_exposure_limit of;
    double limit; /* percent, of stone to 3/4 in: 5.0 and 6.0 % */
    const char *formula;
} ROWS[] = {
    {"F1", 4000, GB_ACI_318_F1, GB_ASKS_AIR_LEAST, 3.5, "table_air - tolerance"},
    {"F2", 4500, GB_ACI_318_F2, GB_ASKS_AIR_LEAST, 4.5, "table_air - tolerance"},
    {"F2, most", 4500, GB_ACI_318_F2, GB_ASKS_AIR_MOST, 7.5, "table_air + tolerance"},
    {"F3 over 5000 psi", 5010, GB_ACI_318_F3, GB_ASKS_AIR_LEAST, 3.5,
     "table_air - less_if_strong - tolerance"},
};

static double input(const gb_why *why, const char *name) {
    for (size_t i = 0; i < why->input_count; i++)
        if (strcmp(why->inputs[i]->name, name) == 0)
            return why->inputs[i]->value;
    return 0;
}

static double evaluated(const gb_why *why, bool most) {
    double tolerance = input(why, "tolerance");
    return input(why, "table_air") - input(why, "less_if_strong") +
           (most ? tolerance : -tolerance);
}

static void expect_row(gb_explainer *x, size_t i) {
    gb_mix mix = {.id = "own/mix",
                  .largest = {gb_si(GB_LENGTH, "in", 0.75)},
                  .concrete = {.strength = {gb_si(GB_PRESSURE, "psi", ROWS[i].psi)},
                               .at = {.line = 1}}};
    gb_job job = {0};
    gb_plan plan = {.job = &job};
    gb_mix_plan planned = {.need = {.mix = &mix}, .recipe = {.yield = {1}}};
    gb_caution caution = {.code = GB_C_EXPOSED_LITTLE_AIR,
                          .limit = ROWS[i].limit / 100,
                          .exposure = ROWS[i].exposure,
                          .asked = ROWS[i].of,
                          .source = "the class"};
    gb_about about = {.plan = &plan, .mix = &planned, .caution = &caution};
    const gb_why *why = gb_why_exposed_limit(x, &about);
    cr_assert(why != NULL && why->formula != NULL, "%s", ROWS[i].id);
    cr_expect(strcmp(why->formula, ROWS[i].formula) == 0, "%s: %s", ROWS[i].id,
              why->formula);
    double value = evaluated(why, ROWS[i].of == GB_ASKS_AIR_MOST);
    cr_expect(fabs(value - ROWS[i].limit / 100) < 1e-12, "%s: %g", ROWS[i].id, value);
}

Test(exposures, air_by_the_size_of_the_stone) {
    gb_arena arena;
    gb_places places;
    gb_explainer x;
    gb_arena_init(&arena, gb_malloc_supply());
    gb_places_init(&places, &arena);
    cr_assert(gb_explainer_init(&x, &places, (gb_style){GB_US, "en", true}, &arena) ==
              GB_OK);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        expect_row(&x, i);
    gb_arena_release(&arena);
}
