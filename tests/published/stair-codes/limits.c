#include "published/published.h"
#include "unit/steps/runs.h"

#include <criterion/criterion.h>
#include <math.h>

/* Limits of codes for steps, from both sides of each edge: the limit itself passes, what
   lies 1/64 in (or 1:4800) inside passes, what lies as far outside does not. */

#define IRC  "2018 IRC"
#define ADA  "ADA Standards 2010, section 504, as the US Access Board prints it"
#define NFPA "NFPA 101, as a trade magazine on stair treads quotes it"

static const double INCH = 0.0254;
static const double STEP_IN = 1.0 / 64.0;
static const double STEP_SLOPE = 1.0 / 4800.0;

static const struct {
    gb_step_rule rule;
    bool slope;    /* else inches */
    double inside; /* -1: below the limit is good, +1: above it */
    pub_figure limit;
} LIMITS[] = {
    {GB_RULE_IRC_RISER,
     false,
     -1,
     {"R311.7.5.1 riser", IRC, PUB_READ, .printed = 7.75, .tolerance = 1e-6}},
    {GB_RULE_IRC_TREAD,
     false,
     1,
     {"R311.7.5.2 tread", IRC, PUB_READ, .printed = 10, .tolerance = 1e-6}},
    {GB_RULE_IRC_RISERS_DIFFER,
     false,
     -1,
     {"R311.7.5.1 risers in a flight", IRC, PUB_READ, .printed = 0.375,
      .tolerance = 1e-6}},
    {GB_RULE_IRC_NOSING_LEAST,
     false,
     1,
     {"R311.7.5.3 nosing", IRC, PUB_SECOND_HAND, .printed = 0.75, .tolerance = 1e-6}},
    {GB_RULE_IRC_NOSING_MOST,
     false,
     -1,
     {"R311.7.5.3 nosing, most", IRC, PUB_SECOND_HAND, .printed = 1.25,
      .tolerance = 1e-6}},
    {GB_RULE_IRC_PITCH,
     true,
     -1,
     {"R311.7.7 slope of treads", IRC, PUB_FROM_MEMORY, .printed = 1.0 / 48.0,
      .tolerance = 1e-9}},
    {GB_RULE_IRC_FLIGHT,
     false,
     -1,
     {"R311.7.3 climb of a flight", IRC, PUB_FROM_MEMORY, .printed = 151,
      .tolerance = 1e-6}},
    {GB_RULE_ADA_RISER_LEAST,
     false,
     1,
     {"504.2 riser, least", ADA, PUB_READ, .printed = 4, .tolerance = 1e-6}},
    {GB_RULE_ADA_RISER_MOST,
     false,
     -1,
     {"504.2 riser, most", ADA, PUB_READ, .printed = 7, .tolerance = 1e-6}},
    {GB_RULE_ADA_TREAD,
     false,
     1,
     {"504.2 tread", ADA, PUB_READ, .printed = 11, .tolerance = 1e-6}},
    {GB_RULE_ADA_NOSING,
     false,
     -1,
     {"504.5 nosing", ADA, PUB_READ, .printed = 1.5, .tolerance = 1e-6}},
    {GB_RULE_ADA_PITCH,
     true,
     -1,
     {"504.4 slope of treads", ADA, PUB_READ, .printed = 1.0 / 48.0, .tolerance = 1e-9}},
    {GB_RULE_ADJACENT,
     false,
     -1,
     {"risers that meet", NFPA, PUB_SECOND_HAND, .printed = 0.1875, .tolerance = 1e-6}},
};

/* A run whose value under the rule is x, in inches or as a slope. */
static gb_steps run_with(gb_step_rule rule, double x, size_t *count) {
    gb_steps s = fx_run(14 * INCH, 14 * INCH);
    *count = 2;
    switch (rule) {
    case GB_RULE_IRC_RISER:
    case GB_RULE_ADA_RISER_LEAST:
    case GB_RULE_ADA_RISER_MOST:
        s.rise.m = 2 * x * INCH;
        break;
    case GB_RULE_IRC_TREAD:
    case GB_RULE_ADA_TREAD:
        s.going.m = x * INCH;
        break;
    case GB_RULE_IRC_RISERS_DIFFER:
    case GB_RULE_ADJACENT: /* the first of two stones of 7 in is so much in the ground */
        s = fx_solid((14 - x) * INCH, 14 * INCH, 7 * INCH);
        break;
    case GB_RULE_IRC_NOSING_LEAST:
    case GB_RULE_IRC_NOSING_MOST:
        s.going.m = 10.5 * INCH; /* from 11 in on no nosing is asked */
        s.overhang.m = x * INCH;
        break;
    case GB_RULE_ADA_NOSING:
        s.overhang.m = x * INCH;
        break;
    case GB_RULE_IRC_PITCH:
    case GB_RULE_ADA_PITCH:
        s.pitch.of_run = x;
        break;
    case GB_RULE_IRC_FLIGHT:
        s.rise.m = x * INCH;
        *count = 22;
        break;
    case GB_STEP_RULES:
        break;
    }
    return s;
}

static bool passes(gb_step_rule rule, double x) {
    size_t count = 0;
    gb_steps s = run_with(rule, x, &count);
    gb_layout l = fx_lay(&s, count, false);
    return gb_step_passes(rule, &s, &l);
}

Test(published_stair_codes, both_sides_of_every_edge) {
    cr_assert(sizeof LIMITS / sizeof LIMITS[0] == GB_STEP_RULES, "a row for each rule");
    for (size_t i = 0; i < GB_STEP_RULES; i++) {
        gb_step_rule rule = LIMITS[i].rule;
        const pub_figure *limit = &LIMITS[i].limit;
        double ours = gb_step_limit_of(rule)->value;
        double step = LIMITS[i].slope ? STEP_SLOPE : STEP_IN;
        double at = limit->printed;
        pub_check(limit, LIMITS[i].slope ? ours : ours / INCH);
        cr_expect(passes(rule, at), "%s: the limit itself passes", limit->id);
        cr_expect(passes(rule, at + LIMITS[i].inside * step), "%s: inside", limit->id);
        cr_expect(!passes(rule, at - LIMITS[i].inside * step), "%s: outside", limit->id);
    }
}

/* R311.7.5.3: no nosing is asked where the tread is 11 in or more. */
Test(published_stair_codes, wide_treads_need_no_nosing) {
    static const struct {
        double tread_in;
        bool asked;
    } TREADS[] = {{10, true}, {10.9, true}, {11, false}, {14, false}};
    for (size_t i = 0; i < sizeof TREADS / sizeof TREADS[0]; i++) {
        gb_steps s = fx_run(14 * INCH, TREADS[i].tread_in * INCH);
        gb_layout l = fx_lay(&s, 2, false);
        cr_expect(gb_step_passes(GB_RULE_IRC_NOSING_LEAST, &s, &l) != TREADS[i].asked,
                  "%g in", TREADS[i].tread_in);
    }
}

static const pub_figure HANDRAIL = {"R311.7.8 handrail from risers", IRC, PUB_SECOND_HAND,
                                    .printed = 4, .tolerance = 0.1};
static const pub_figure GUARD = {"R312.1.1 guard above", IRC, PUB_FROM_MEMORY,
                                 .printed = 30, .tolerance = 1e-6};

Test(published_stair_codes, handrail_and_guard) {
    pub_check(&HANDRAIL, (double)gb_handrail_risers());
    pub_check(&GUARD, gb_guard_height().m / INCH);
}

/* The treads of a flight are measured from nosing to nosing, plumb, so what the pitch
   adds counts: a face of 7-1/2 in is over 7-3/4 in at 1/4 in/ft on 14 in, one of 7-3/8
   is not. */
Test(published_stair_codes, the_pitch_counts_in_a_riser) {
    static const struct {
        double face_in;
        bool good;
    } FACES[] = {{7.375, true}, {7.4583, true}, {7.4584, false}, {7.5, false}};
    for (size_t i = 0; i < sizeof FACES / sizeof FACES[0]; i++) {
        gb_steps s = fx_run(60 * INCH, 14 * INCH);
        s.pitch.of_run = 1.0 / 48.0;
        s.face.m = FACES[i].face_in * INCH;
        gb_layout l = fx_lay(&s, 8, false);
        cr_expect(gb_step_passes(GB_RULE_IRC_RISER, &s, &l) == FACES[i].good, "%g in",
                  FACES[i].face_in);
    }
}
