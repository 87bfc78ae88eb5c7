#include "gaugebox/count.h"
#include "gaugebox/steps.h"
#include "words/mark.h"

static const double INCH = 0.0254;

/* Read in references of the trade to the 2018 IRC and in the ADA standards of 2010 where
   nothing else is said. Adopted editions differ: the building department decides. */
static const gb_step_limit LIMITS[] = {
    [GB_RULE_IRC_RISER] = {GB_IRC, "R311.7.5.1", false, GB_LENGTH, 7.75 * INCH,
                           N_("2018 IRC R311.7.5.1")},
    [GB_RULE_IRC_TREAD] = {GB_IRC, "R311.7.5.2", true, GB_LENGTH, 10 * INCH,
                           N_("2018 IRC R311.7.5.2")},
    [GB_RULE_IRC_RISERS_DIFFER] = {GB_IRC, "R311.7.5.1", false, GB_LENGTH, 0.375 * INCH,
                                   N_("2018 IRC R311.7.5.1")},
    [GB_RULE_IRC_NOSING_LEAST] = {GB_IRC, "R311.7.5.3", true, GB_LENGTH, 0.75 * INCH,
                                  N_("2018 IRC R311.7.5.3, from memory")},
    [GB_RULE_IRC_NOSING_MOST] = {GB_IRC, "R311.7.5.3", false, GB_LENGTH, 1.25 * INCH,
                                 N_("2018 IRC R311.7.5.3, from memory")},
    [GB_RULE_IRC_PITCH] = {GB_IRC, "R311.7.7", false, GB_SLOPE, 1.0 / 48.0,
                           N_("2018 IRC R311.7.7, from memory")},
    [GB_RULE_IRC_FLIGHT] = {GB_IRC, "R311.7.3", false, GB_LENGTH, 151 * INCH,
                            N_("2018 IRC R311.7.3, from memory; 147 in before")},
    [GB_RULE_ADA_RISER_LEAST] = {GB_ADA, "504.2", true, GB_LENGTH, 4 * INCH,
                                 N_("ADA Standards 2010, 504.2")},
    [GB_RULE_ADA_RISER_MOST] = {GB_ADA, "504.2", false, GB_LENGTH, 7 * INCH,
                                N_("ADA Standards 2010, 504.2")},
    [GB_RULE_ADA_TREAD] = {GB_ADA, "504.2", true, GB_LENGTH, 11 * INCH,
                           N_("ADA Standards 2010, 504.2")},
    [GB_RULE_ADA_NOSING] = {GB_ADA, "504.5", false, GB_LENGTH, 1.5 * INCH,
                            N_("ADA Standards 2010, 504.5")},
    [GB_RULE_ADA_PITCH] = {GB_ADA, "504.4", false, GB_SLOPE, 1.0 / 48.0,
                           N_("ADA Standards 2010, 504.4")},
    [GB_RULE_ADJACENT] = {GB_NFPA, "101", false, GB_LENGTH, 0.1875 * INCH,
                          N_("NFPA 101, second hand")},
};
_Static_assert(sizeof LIMITS / sizeof LIMITS[0] == GB_STEP_RULES, "a limit for each");

const gb_step_limit *gb_step_limit_of(gb_step_rule rule) {
    return &LIMITS[rule];
}

/* IRC asks for a nosing only where the tread is under 11 in and the riser is solid. */
static double irc_nosing(const gb_steps *steps, const gb_layout *layout) {
    return gb_under(layout->going.m, 11 * INCH) ? steps->overhang.m : GB_NONE;
}

double gb_step_value(gb_step_rule rule, const gb_steps *steps, const gb_layout *layout) {
    switch (rule) {
    case GB_RULE_IRC_RISER:
    case GB_RULE_ADA_RISER_MOST:
        return gb_larger(layout->first.m, layout->riser.m);
    case GB_RULE_ADA_RISER_LEAST:
        return gb_smaller(layout->first.m, layout->riser.m);
    case GB_RULE_IRC_TREAD:
    case GB_RULE_ADA_TREAD:
        return layout->going.m;
    case GB_RULE_IRC_RISERS_DIFFER:
    case GB_RULE_ADJACENT:
        return gb_risers_differ(layout).m;
    case GB_RULE_IRC_NOSING_LEAST:
    case GB_RULE_IRC_NOSING_MOST:
        return irc_nosing(steps, layout);
    case GB_RULE_ADA_NOSING:
        return steps->overhang.m;
    case GB_RULE_IRC_PITCH:
    case GB_RULE_ADA_PITCH:
        return steps->pitch.of_run;
    case GB_RULE_IRC_FLIGHT:
        return layout->climb.m - layout->behind.m;
    case GB_STEP_RULES:
        break;
    }
    return GB_NONE;
}

bool gb_step_passes(gb_step_rule rule, const gb_steps *steps, const gb_layout *layout) {
    const gb_step_limit *limit = &LIMITS[rule];
    double value = gb_step_value(rule, steps, layout);
    if (isnan(value))
        return true;
    return limit->at_least ? !gb_under(value, limit->value)
                           : !gb_over(value, limit->value);
}

size_t gb_rules_missed(gb_step_body body, const gb_steps *steps,
                       const gb_layout *layout) {
    size_t missed = 0;
    for (gb_step_rule rule = 0; rule < GB_STEP_RULES; rule++)
        missed += LIMITS[rule].body == body && !gb_step_passes(rule, steps, layout);
    return missed;
}

size_t gb_all_rules_missed(const gb_steps *steps, const gb_layout *layout) {
    size_t missed = 0;
    for (gb_step_body body = 0; body < GB_STEP_BODIES; body++)
        missed += gb_rules_missed(body, steps, layout);
    return missed;
}

bool gb_steps_pass(gb_step_body body, const gb_steps *steps, const gb_layout *layout) {
    return gb_rules_missed(body, steps, layout) == 0;
}

size_t gb_handrail_risers(void) {
    return 4;
}

gb_length gb_guard_height(void) {
    return (gb_length){30 * INCH};
}
