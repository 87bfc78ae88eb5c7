#include "read/sand_rules.h"

#include "read/diag.h"
#include "read/schemas.h"
#include "words/words.h"

#include <math.h>

/* ---- how messages show figures ----------------------------------------------------- */

static const char *shown_length(gb_reader *r, const gb_job *job, gb_length length) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_print_length(&text, length, job->units);
    return gb_text_get(&text);
}

static const char *shown_percent(gb_reader *r, gb_share share) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_text_add_fixed(&text, 100.0 * share.of_one, 1);
    return gb_text_get(&text);
}

static const char *shown_litres(gb_reader *r, gb_volume volume) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_text_add_fixed(&text, 1000.0 * volume.m3, 1);
    return gb_text_get(&text);
}

/* ---- sand -------------------------------------------------------------------------- */

/* The settlement test: both heights, in their order, and no more than any sand bulks. */
static void check_heights(gb_reader *r, const gb_job *job) {
    const gb_sand_pile *s = &job->sand;
    bool moist = !isnan(s->moist_height.m);
    bool flooded = !isnan(s->flooded_height.m);
    if (moist != flooded) {
        gb_report(r->diags, r->file, s->at.line,
                  "the settlement test of the sand states '%s' alone; state both "
                  "'moist_height' and 'flooded_height', of the same sand in the same "
                  "pail",
                  moist ? "moist_height" : "flooded_height");
        return;
    }
    if (!moist)
        return;
    if (!isnan(s->bulking.of_one))
        gb_report(
            r->diags, r->file, s->at.line,
            "the bulking of the sand is stated twice, as 'bulking' and by the heights "
            "of the settlement test; keep one");
    if (s->flooded_height.m > s->moist_height.m) {
        gb_report(
            r->diags, r->file, s->at.line,
            "'flooded_height', %s, is over 'moist_height', %s; flooded sand settles: "
            "check which is which",
            shown_length(r, job, s->flooded_height),
            shown_length(r, job, s->moist_height));
        return;
    }
    gb_share bulking = gb_tested_bulking(s->moist_height, s->flooded_height);
    if (bulking.of_one > gb_most_bulking().of_one)
        gb_report(
            r->diags, r->file, s->at.line,
            "the settlement test says that the sand bulks %s %%; no sand bulks over "
            "%s %%: fill the pail level and loose, flood and stir, measure again",
            shown_percent(r, bulking), shown_percent(r, gb_most_bulking()));
}

void gb_check_sand(gb_reader *r, const gb_job *job) {
    const gb_sand_pile *s = &job->sand;
    if (s->at.line == 0 || s->at.faulty)
        return;
    check_heights(r, job);
    if (!isnan(s->moist_height.m) || !isnan(s->flooded_height.m))
        return;
    gb_lying lying = gb_pile_lying(s);
    if (isnan(lying.bulking.of_one))
        gb_report(
            r->diags, r->file, s->at.line,
            "how sand of %s %% moisture bulks is known up to 10 %%; add 'moist_height' "
            "and 'flooded_height' of a settlement test, or 'bulking', as \"15%%\"",
            shown_percent(r, lying.moisture));
    else if (!(lying.moisture.of_one > 0) && lying.bulking.of_one > 0)
        gb_report(r->diags, r->file, s->at.line,
                  "sand of 0 %% moisture does not bulk; take 'bulking' out, or state the "
                  "moisture that it was found at");
}

/* ---- what it is gauged with -------------------------------------------------------- */

enum { GAUGE_KEYS = 6, MEASURES = 3 };

/* The keys of the gauge; which measure each says something of. */
static const struct {
    const char *name;
    bool of[MEASURES];
} KEYS[GAUGE_KEYS] = {
    {"volume", {[GB_BY_BUCKET] = true, [GB_BY_BOX] = true}},
    {"water", {[GB_BY_BUCKET] = true}},
    {"inside", {[GB_BY_BOX] = true}},
    {"depth", {[GB_BY_BOX] = true}},
    {"shovels", {[GB_BY_SHOVEL] = true}},
    {"filled", {[GB_BY_SHOVEL] = true}},
};

static void find_stated(const gb_gauge *g, bool stated[GAUGE_KEYS]) {
    stated[0] = !isnan(g->volume.m3);
    stated[1] = !isnan(g->water.kg);
    stated[2] = !isnan(g->inside[0].m);
    stated[3] = !isnan(g->depth.m);
    stated[4] = g->shovel_count > 0;
    stated[5] = !isnan(g->filled.m3);
}

/* What the keys of that measure leave open or say twice; NULL when nothing. */
static const char *gauge_fault(const gb_gauge *g) {
    bool volume = !isnan(g->volume.m3);
    bool inside = !isnan(g->inside[0].m);
    bool depth = !isnan(g->depth.m);
    switch (g->by) {
    case GB_BY_BUCKET:
        if (volume && !isnan(g->water.kg))
            return N_("the bucket's line is stated twice, as volume and by the water "
                      "that fills it; keep one");
        return NULL;
    case GB_BY_BOX:
        if (inside != depth)
            return N_("a box needs all its inner sides; state both inside = \"12 in x "
                      "12 in\" and depth = \"12 in\"");
        if (volume && inside)
            return N_("the box is stated twice, as volume and by its inner sides; keep "
                      "one");
        if (!volume && !inside)
            return N_("how much does the box hold? add inside = \"12 in x 12 in\" and "
                      "depth = \"12 in\", or volume = \"1 ft3\"");
        return NULL;
    case GB_BY_SHOVEL:
        break;
    }
    bool known = g->shovel_count > 0 && !isnan(g->filled.m3);
    return known
               ? NULL
               : N_("a shovel is a measure only when it was calibrated: count the level "
                    "shovels that fill a box of known volume, best three times, each "
                    "morning and for each new sand; add shovels = [ 7, 8, 7 ] and "
                    "filled = \"1 ft3\"");
}

/* The volumes that one measure may have: from a small scoop to what a hoist lifts. */
static const struct {
    double least_m3, most_m3;
} BOUNDS[MEASURES] = {
    [GB_BY_BUCKET] = {0.0009, 0.0567},
    [GB_BY_BOX] = {0.0009, 0.2},
    [GB_BY_SHOVEL] = {0.0009, 0.03},
};

static void check_measure(gb_reader *r, const gb_job *job) {
    const gb_gauge *g = &job->gauge;
    gb_volume one = gb_gauge_volume(g, job->units);
    double least = BOUNDS[g->by].least_m3;
    double most = BOUNDS[g->by].most_m3;
    if (one.m3 >= least && one.m3 <= most)
        return;
    static const char *const FORMATS[] = {
        [GB_BY_BUCKET] = N_("the bucket holds %s L to its line; a bucket holds %s to %s "
                            "L: check its figures"),
        [GB_BY_BOX] = N_("the box holds %s L; a gauge box holds %s to %s L: check its "
                         "figures"),
        [GB_BY_SHOVEL] = N_("a level shovel comes to %s L; one holds %s to %s L: check "
                            "the counts and the box"),
    };
    gb_report(r->diags, r->file, g->at.line, FORMATS[g->by], shown_litres(r, one),
              shown_litres(r, (gb_volume){least}), shown_litres(r, (gb_volume){most}));
}

void gb_check_gauge(gb_reader *r, const gb_job *job) {
    const gb_gauge *g = &job->gauge;
    if (g->at.line == 0 || g->at.faulty)
        return;
    bool stated[GAUGE_KEYS];
    find_stated(g, stated);
    for (size_t i = 0; i < GAUGE_KEYS; i++)
        if (stated[i] && !KEYS[i].of[g->by])
            gb_report(r->diags, r->file, g->at.line,
                      "'%s' says nothing where by = \"%s\"; take it out, or change 'by'",
                      KEYS[i].name, GB_GAUGE_WORDS[g->by]);
    const char *fault = gauge_fault(g);
    if (fault != NULL)
        gb_report(r->diags, r->file, g->at.line, "%s", gb_tr(fault));
    else
        check_measure(r, job);
}

/* ---- the pail ---------------------------------------------------------------------- */

/* What is wrong with what a pail states; NULL when nothing is. */
static const char *pail_fault(const gb_pail_size *p) {
    bool widths = !isnan(p->across_bottom.m) || !isnan(p->across_top.m);
    if (isnan(p->height.m))
        return N_(
            "the pail has no 'height'; add what it is inside, from the bottom to the "
            "brim");
    if (!isnan(p->volume.m3) && widths)
        return N_("the pail states its volume and how wide it is; take one out");
    if (isnan(p->volume.m3) && isnan(p->across_bottom.m))
        return N_("the pail has neither 'volume' nor 'across_bottom'; add one of them");
    return NULL;
}

void gb_check_pail(gb_reader *r, const gb_job *job) {
    static const double LEAST_M3 = 0.0009;
    static const double MOST_M3 = 0.12;
    const gb_marked_pail *p = &job->pail;
    if (p->at.line == 0 || p->at.faulty)
        return;
    const char *fault = pail_fault(&p->size);
    gb_volume holds = gb_pail_volume(&p->size);
    if (fault != NULL)
        gb_report(r->diags, r->file, p->at.line, "%s", gb_tr(fault));
    else if (!(holds.m3 >= LEAST_M3 && holds.m3 <= MOST_M3))
        gb_report(r->diags, r->file, p->at.line,
                  "the pail holds %s L; a pail holds %s to %s L: check its sizes",
                  shown_litres(r, holds), shown_litres(r, (gb_volume){LEAST_M3}),
                  shown_litres(r, (gb_volume){MOST_M3}));
}
