#include "read/concrete_rules.h"

#include "read/diag.h"
#include "words/words.h"

#include "gaugebox/count.h"
#include "gaugebox/mix.h"

#include <math.h>

typedef struct concrete_reader {
    const gb_reader *base;
    const gb_concrete *c;
} concrete_reader;

/* ---- texts ------------------------------------------------------------------------- */

static const char *finish(const concrete_reader *r, const gb_text *text) {
    r->base->diags->no_memory = r->base->diags->no_memory || text->failed;
    return gb_text_get(text);
}

static const char *shown_length(const concrete_reader *r, gb_length length) {
    gb_text text;
    gb_text_init(&text, r->base->arena);
    gb_print_length(&text, length, r->c->table);
    return finish(r, &text);
}

static const char *shown_in(const concrete_reader *r, gb_kind kind, const char *unit,
                            double si, int decimals) {
    gb_text text;
    gb_text_init(&text, r->base->arena);
    gb_text_add_fixed(&text, gb_to_unit(gb_find_unit(kind, unit), si), decimals);
    gb_text_add(&text, " ");
    gb_text_add(&text, unit);
    return finish(r, &text);
}

static const char *shown_strength(const concrete_reader *r, gb_pressure p) {
    bool us = r->c->table == GB_US;
    return shown_in(r, GB_PRESSURE, us ? "psi" : "MPa", p.pa, us ? 0 : 1);
}

static const char *shown_density(const concrete_reader *r, double kg_m3) {
    bool us = r->c->table == GB_US;
    return shown_in(r, GB_DENSITY, us ? "lb/ft3" : "kg/m3", kg_m3, us ? 1 : 0);
}

static const char *shown_share(const concrete_reader *r, gb_share share) {
    return shown_in(r, GB_SHARE, "%", share.of_one, 1);
}

static const char *shown_number(const concrete_reader *r, double number) {
    gb_text text;
    gb_text_init(&text, r->base->arena);
    gb_text_add_fixed(&text, number, 2);
    return finish(r, &text);
}

static const char *slumps(const concrete_reader *r) {
    return r->c->table == GB_US ? "1 - 2 in, 3 - 4 in, 6 - 7 in"
                                : "25 - 50 mm, 75 - 100 mm, 150 - 175 mm";
}

static const char *sizes(const concrete_reader *r) {
    return r->c->table == GB_US ? "3/8, 1/2, 3/4, 1, 1-1/2, 2, 3, 6 in"
                                : "9.5, 12.5, 19, 25, 37.5, 50, 75, 150 mm";
}

/* ---- faults ------------------------------------------------------------------------ */

#define REPORT(r, ...)                                                                   \
    gb_report((r)->base->diags, (r)->base->file, (r)->c->at.line, __VA_ARGS__)

static void report_strength(const concrete_reader *r, gb_concrete_fault fault) {
    const gb_concrete *c = r->c;
    gb_pressure least = {0};
    gb_pressure most = {0};
    gb_strength_range(c->table, gb_is_entrained(c), &least, &most);
    const char *asked = shown_strength(r, gb_required_average(c));
    const char *low = shown_strength(r, least);
    const char *high = shown_strength(r, most);
    if (fault == GB_STRENGTH_LOW)
        REPORT(r,
               "an average of %s is asked for, and the table of water to cement goes "
               "from %s to %s; take the mix from a table of nominal mixes, or state "
               "more strength",
               asked, low, high);
    else if (gb_is_entrained(c))
        REPORT(r,
               "an average of %s is asked for, and with entrained air the table of water "
               "to cement goes from %s to %s; state the deviation of a plant's tests, "
               "the ratio that trial batches gave, or order it ready-mixed",
               asked, low, high);
    else
        REPORT(r,
               "an average of %s is asked for, and the table of water to cement goes "
               "from %s to %s; state the deviation of a plant's tests, the ratio that "
               "trial batches gave, or order it ready-mixed",
               asked, low, high);
}

static void report_tests(const concrete_reader *r, gb_concrete_fault fault) {
    const gb_concrete *c = r->c;
    if (fault == GB_NO_STRENGTH)
        REPORT(r, "the concrete has no strength; state strength = \"3500 psi\", or the "
                  "average, or the ratio that trial batches gave");
    else if (fault == GB_FEW_TESTS)
        REPORT(r,
               "a deviation of %zu tests says too little; state how many tests it is of, "
               "15 at least, or take 'deviation' out",
               c->tests);
    else if (fault == GB_AVERAGE_UNDER)
        REPORT(r,
               "an average of %s is under the strength of %s that is specified; state "
               "more, or take 'average' out",
               shown_strength(r, c->average), shown_strength(r, c->strength));
    else
        REPORT(r,
               "%zu tests are stated, and not their deviation; add deviation = \"400 "
               "psi\", or take 'tests' out",
               c->tests);
}

static void report_sizes(const concrete_reader *r, gb_concrete_fault fault) {
    const gb_concrete *c = r->c;
    if (fault == GB_SLUMP_NOT_IN_TABLE)
        REPORT(r,
               "a slump of %s is in no row of the table of mixing water; it has %s: "
               "state one of these",
               shown_length(r, c->slump), slumps(r));
    else if (fault == GB_SIZE_NOT_IN_TABLE)
        REPORT(r,
               "stone of %s at the largest is in no column of the tables; they have %s: "
               "state the one that is nearest to yours, as 19 mm for stone to 20 mm",
               shown_length(r, c->largest), sizes(r));
    else
        REPORT(r,
               "for stone of %s and a slump of %s the table of mixing water has nothing; "
               "state less slump, smaller stone, or the water that trial batches took",
               shown_length(r, c->largest), shown_length(r, c->slump));
}

static void report_aggregate(const concrete_reader *r, gb_concrete_fault fault) {
    const gb_concrete *c = r->c;
    if (fault == GB_FINENESS_OUTSIDE)
        REPORT(r,
               "a fineness modulus of %s is outside of the table, 2.40 to 3.00; check "
               "the sand's report, or blend it",
               shown_number(r, c->fineness));
    else if (fault == GB_RODDED_IMPOSSIBLE)
        REPORT(r,
               "stone of specific gravity %s that weighs %s rodded is not possible: "
               "rodded stone has 25 %% to 60 %% of voids; check both",
               shown_number(r, gb_stone_gravity(c)), shown_density(r, c->rodded.kg_m3));
    else if (fault == GB_AIR_WITHOUT_LEVEL)
        REPORT(r,
               "an air content of %s is more than is trapped, and no air is entrained; "
               "state air = \"mild\", \"moderate\" or \"severe\", or less of it",
               shown_share(r, c->air_content));
    else if (fault == GB_AIR_TOO_LITTLE)
        REPORT(r,
               "an air content of %s is no more than is trapped, and air is entrained; "
               "state more of it, or air = \"trapped\"",
               shown_share(r, c->air_content));
    else if (fault == GB_LOOSE_OVER_RODDED)
        REPORT(r,
               "stone of %s loose and %s rodded is not possible: rodding packs it; check "
               "which is which",
               shown_density(r, c->loose.kg_m3), shown_density(r, c->rodded.kg_m3));
    else if (fault == GB_AGGREGATE_TOO_WET)
        REPORT(r,
               "aggregate as wet as that brings all of the mixing water and more; check "
               "the moisture of sand and stone, or let them drain");
    else if (fault == GB_CONCRETE_HEAVY)
        REPORT(r,
               "the concrete would weigh over 2700 kg/m3 (169 lb/ft3) fresh, and these "
               "tables are of usual stone; check the specific gravities");
    else
        REPORT(r, "water, cement, stone and air leave no room for sand, less than 5 %% "
                  "of the whole; check the ratio, the fineness and the rodded mass");
}

static void report_dry(const concrete_reader *r, gb_concrete_fault fault) {
    const gb_concrete *c = r->c;
    bool sand = fault == GB_SAND_TOO_DRY;
    gb_share absorption = sand ? c->sand_absorption : c->stone_absorption;
    gb_share moisture = sand ? c->sand_moisture : c->stone_moisture;
    if (!gb_under(moisture.of_one, absorption.of_one))
        moisture = sand ? c->trial.sand_moisture : c->trial.stone_moisture;
    REPORT(r,
           sand
               ? NF_("sand of %s moisture is drier than its absorption, %s; moisture is "
                     "all water, of the dry mass: check it, wet the pile, or state "
                     "air_dry = true when it is so dry that it drinks")
               : NF_("stone of %s moisture is drier than its absorption, %s; moisture is "
                     "all water, of the dry mass: check it, wet the pile, or state "
                     "air_dry = true when it is so dry that it drinks"),
           shown_share(r, moisture), shown_share(r, absorption));
}

static void report_trial(const concrete_reader *r, gb_concrete_fault fault) {
    static const char *const WORDS[GB_CONCRETE_FAULTS] = {
        [GB_TRIAL_INCOMPLETE] =
            N_("a trial batch needs its 'water', 'cement', 'stone' and 'sand', and a "
               "'unit_mass', or 'full', 'empty' and 'measure' of one; add what is "
               "missing"),
        [GB_TRIAL_TWICE] = N_("a trial states its unit mass and a measure too; one "
                              "follows from the other, take one out"),
        [GB_TRIAL_MEASURE] = N_("the full measure weighs no more than the empty one; "
                                "check which is which"),
        [GB_TRIAL_LIGHT] = N_("the trial weighs under 1200 kg/m3 (75 lb/ft3), which no "
                              "concrete of sand and stone does; check its unit mass"),
        [GB_TRIAL_HEAVY] = N_("the trial weighs over 2700 kg/m3 (169 lb/ft3), which no "
                              "concrete of sand and stone does; check its unit mass"),
        [GB_TRIAL_OVERFULL] =
            N_("the trial weighs over 2 % more than its parts would without any air; "
               "check its masses, its unit mass and the specific gravities"),
        [GB_TRIAL_HOLLOW] = N_("by its masses over 15 % of the trial would be air; "
                               "check them, and its unit mass"),
        [GB_TRIAL_DRY] = N_("all water of the trial is less than a quarter of its "
                            "cement; check both")};
    gb_report(r->base->diags, r->base->file, r->base->typed ? 0 : r->c->trial.at.line,
              "%s", gb_tr(WORDS[fault]));
}

typedef void reporter(const concrete_reader *r, gb_concrete_fault fault);

static reporter *const REPORTERS[GB_CONCRETE_FAULTS] = {
    [GB_NO_STRENGTH] = report_tests,
    [GB_FEW_TESTS] = report_tests,
    [GB_TESTS_ALONE] = report_tests,
    [GB_AVERAGE_UNDER] = report_tests,
    [GB_STRENGTH_HIGH] = report_strength,
    [GB_STRENGTH_LOW] = report_strength,
    [GB_SLUMP_NOT_IN_TABLE] = report_sizes,
    [GB_SIZE_NOT_IN_TABLE] = report_sizes,
    [GB_NO_WATER_CELL] = report_sizes,
    [GB_FINENESS_OUTSIDE] = report_aggregate,
    [GB_RODDED_IMPOSSIBLE] = report_aggregate,
    [GB_LOOSE_OVER_RODDED] = report_aggregate,
    [GB_AIR_WITHOUT_LEVEL] = report_aggregate,
    [GB_AIR_TOO_LITTLE] = report_aggregate,
    [GB_SAND_TOO_DRY] = report_dry,
    [GB_STONE_TOO_DRY] = report_dry,
    [GB_AGGREGATE_TOO_WET] = report_aggregate,
    [GB_NO_ROOM_FOR_SAND] = report_aggregate,
    [GB_CONCRETE_HEAVY] = report_aggregate,
    [GB_TRIAL_INCOMPLETE] = report_trial,
    [GB_TRIAL_TWICE] = report_trial,
    [GB_TRIAL_MEASURE] = report_trial,
    [GB_TRIAL_LIGHT] = report_trial,
    [GB_TRIAL_HEAVY] = report_trial,
    [GB_TRIAL_OVERFULL] = report_trial,
    [GB_TRIAL_HOLLOW] = report_trial,
    [GB_TRIAL_DRY] = report_trial,
};
_Static_assert(sizeof REPORTERS / sizeof REPORTERS[0] == GB_CONCRETE_FAULTS,
               "a reporter for each");

void gb_check_concrete(const gb_reader *reader, const gb_concrete *concrete) {
    concrete_reader r = {reader, concrete};
    uint32_t faults = gb_concrete_faults(concrete);
    bool sulfate = concrete->attack == GB_SULFATE || concrete->attack == GB_SULFATE_THIN;
    if (concrete->resisting && !sulfate)
        REPORT(&r, "'resisting' says nothing without sulfate; take it out, or state "
                   "attack = \"sulfate\"");
    for (gb_concrete_fault f = 0; f < GB_CONCRETE_FAULTS; f++)
        if (faults >> f & 1)
            REPORTERS[f](&r, f);
}
