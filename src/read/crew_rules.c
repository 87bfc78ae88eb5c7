#include "read/crew_rules.h"

#include "gaugebox/day.h"

#include "gaugebox/count.h"
#include "read/diag.h"
#include "read/schemas.h"
#include "words/words.h"

#include <math.h>
#include <string.h>

/* ---- mixers ------------------------------------------------------------------------ */

static void tell(gb_reader *r, int line, const char *text) {
    gb_report(r->diags, r->file, line, "%s", gb_tr(text));
}

static void check_size(gb_reader *r, const gb_mixer *m) {
    bool usable = m->usable.m3 > 0;
    bool rated = m->rated.m3 > 0;
    if (!usable && !rated)
        tell(r, m->at.line,
             N_("the mixer has neither 'usable' nor 'rated'; add what it takes of wet "
                "mix: usable = \"3 ft3\", or the size it is sold by: rated = \"6 ft3\""));
    if (usable && rated && gb_over(m->usable.m3 / m->rated.m3, 1.0))
        tell(r, m->at.line,
             N_("the mixer has more 'usable' than the whole of it, its 'rated'; check "
                "which is which"));
    if (m->filled.of_one > 0 && (usable || !rated))
        tell(r, m->at.line,
             N_("the mixer states 'filled', which is a share of 'rated' where 'usable' "
                "is not stated; take one out"));
}

static void check_name(gb_reader *r, const gb_crew *c, size_t i) {
    const gb_mixer *m = &c->mixers[i];
    if (m->name == NULL) {
        tell(r, m->at.line,
             N_("of several mixers each has a name; add: name = \"small drum\""));
        return;
    }
    for (size_t k = 0; k < i; k++)
        if (c->mixers[k].name != NULL && strcmp(c->mixers[k].name, m->name) == 0) {
            gb_report(r->diags, r->file, m->at.line,
                      "mixer '%s' is here twice; rename one", m->name);
            return;
        }
}

static void check_mixers(gb_reader *r, const gb_crew *c) {
    if (c->at.line == 0)
        return; /* the job has no crew, which is told already */
    bool one = c->mixer.at.line != 0;
    if (!one && c->mixer_count == 0 && !c->at.faulty && !c->at.inner)
        tell(r, c->at.line,
             N_("crew has no 'mixer'; add: mixer = { usable = \"3 ft3\"; }"));
    if (one && c->mixer_count > 0)
        tell(r, c->mixer.at.line,
             N_("crew has a 'mixer' and 'mixers'; put it into the list"));
    if (one && !c->mixer.at.faulty)
        check_size(r, &c->mixer);
    for (size_t i = 0; i < c->mixer_count; i++) {
        if (c->mixers[i].at.faulty)
            continue;
        check_size(r, &c->mixers[i]);
        check_name(r, c, i);
    }
}

/* ---- mixes ------------------------------------------------------------------------- */

/* The kinds of layers that a mix fills on this job. */
static unsigned kinds_of(const gb_job *job, const gb_mix *mix) {
    unsigned kinds = 0;
    for (size_t i = 0; i < job->piece_count; i++)
        for (size_t k = 0; k < job->pieces[i].layer_count; k++) {
            const gb_layer *l = &job->pieces[i].layers[k];
            if (l->mix.text != NULL && !l->at.faulty && strcmp(l->mix.text, mix->id) == 0)
                kinds |= 1u << l->kind;
        }
    return kinds;
}

static bool has_mixer(const gb_crew *c, unsigned kinds) {
    size_t count = 0;
    const gb_mixer *mixers = gb_mixers_of(c, &count);
    for (size_t i = 0; i < count; i++)
        if (mixers[i].fills == 0 || (kinds & ~mixers[i].fills) == 0)
            return true;
    return false;
}

static const char *shown(gb_reader *r, double s) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_print_duration(&text, (gb_duration){s});
    return gb_text_get(&text);
}

/* It is mixed for its least time, and lives longer than it takes to mix it. */
static void check_life(gb_reader *r, const gb_crew *c, const gb_mix *mix, bool slurry) {
    gb_duration takes = slurry ? gb_potting_time(c) : gb_mixing_time(c);
    const char *key = slurry ? "potting" : "mixing";
    if (takes.s < mix->mixing.s)
        gb_report(r->diags, r->file, c->at.line,
                  "'%s' is mixed %s at the least, and '%s' is shorter; raise it", mix->id,
                  shown(r, mix->mixing.s), key);
    if (takes.s < mix->life_hot.s)
        return;
    gb_report(r->diags, r->file, c->at.line,
              "'%s' lives %s in heat, no longer than it takes to mix it; check '%s'",
              mix->id, shown(r, mix->life_hot.s), key);
}

static void check_mix(gb_reader *r, const gb_job *job, const gb_mix *mix) {
    unsigned kinds = kinds_of(job, mix);
    bool slurry = kinds == 1u << GB_SLURRY || mix->uses == 1u << GB_SLURRY;
    if (kinds != 0)
        check_life(r, &job->crew, mix, slurry);
    if (!slurry && !has_mixer(&job->crew, kinds))
        gb_report(r->diags, r->file, job->crew.at.line,
                  "no mixer is for '%s': one fills all the kinds of layers that it goes "
                  "into, or has no 'fills' and takes any",
                  mix->id);
}

/* ---- paces ------------------------------------------------------------------------- */

static bool has_tread(const gb_job *job) {
    for (size_t i = 0; i < job->piece_count; i++)
        if (job->pieces[i].at.faulty ||
            (job->pieces[i].kind == GB_TREAD && gb_has_shape(&job->pieces[i].shape)))
            return true;
    return job->piece_count == 0;
}

static void check_treads(gb_reader *r, const gb_job *job, const gb_pace *pace) {
    if (!isnan(pace->treads_s) && !has_tread(job))
        gb_report(r->diags, r->file, pace->line,
                  "the pace counts treads, and no piece with a size is a tread; write it "
                  "as \"40 ft2/h\" or \"4 m2/h\"");
}

/* Which kinds of layers have an area that a pace may count, and which go by treads. */
static const unsigned WITH_AREA =
    1u << GB_BED | 1u << GB_SLURRY | 1u << GB_SLAB | 1u << GB_PARGE;
static const unsigned BY_TREADS = 1u << GB_BED | 1u << GB_SLURRY;

static void refuse_kinds(gb_reader *r, const gb_layer_pace *p, unsigned allowed,
                         const char *format) {
    for (unsigned k = 0; k < GB_LAYER_KINDS; k++)
        if (p->kinds & ~allowed & 1u << k)
            gb_report(r->diags, r->file, p->at.line, format, GB_LAYER_WORDS[k]);
}

static void check_paces(gb_reader *r, const gb_job *job) {
    const gb_crew *c = &job->crew;
    unsigned stated = 0;
    check_treads(r, job, &c->pace);
    for (size_t i = 0; i < c->pace_count; i++) {
        const gb_layer_pace *p = &c->paces[i];
        if (p->at.faulty)
            continue;
        check_treads(r, job, &p->pace);
        if (!isnan(p->pace.treads_s))
            refuse_kinds(r, p, BY_TREADS,
                         NF_("a %s is not placed by treads; write its pace as \"2 "
                             "ft3/h\" or \"60 L/h\""));
        if (!isnan(p->pace.m2_s))
            refuse_kinds(r, p, WITH_AREA,
                         NF_("a %s has no area to be placed by; write its pace as \"2 "
                             "ft3/h\" or \"60 L/h\""));
        refuse_kinds(r, p, ~stated, NF_("the pace of a %s is stated twice; keep one"));
        stated |= p->kinds;
    }
}

/* ---- the day ----------------------------------------------------------------------- */

static const double LONGEST_DAY_S = 14 * 3600.0;

/* A clock of the night is of the next day. */
static double of_day(const gb_crew *c, gb_duration clock) {
    return clock.s < c->start.s ? clock.s + 24 * 3600.0 : clock.s;
}

static void check_break(gb_reader *r, const gb_crew *c, size_t i) {
    const gb_break *b = &c->breaks[i];
    double from = of_day(c, b->from);
    double to = of_day(c, b->to);
    if (to <= from) {
        gb_report(r->diags, r->file, b->at.line,
                  "the break ends at or before its begin; check from and to");
        return;
    }
    if (from < c->start.s || to > gb_day_end(c).s)
        gb_report(r->diags, r->file, b->at.line,
                  "the break lies outside of the day from start to finish; check it");
    for (size_t k = 0; k < i; k++)
        if (!c->breaks[k].at.faulty && from < of_day(c, c->breaks[k].to) &&
            to > of_day(c, c->breaks[k].from)) {
            gb_report(r->diags, r->file, b->at.line,
                      "the break overlaps the one at line %d; make them one",
                      c->breaks[k].at.line);
            return;
        }
}

static void check_breaks(gb_reader *r, const gb_crew *c) {
    double work = gb_day_end(c).s - c->start.s - gb_cleaning_time(c).s;
    for (size_t i = 0; i < c->break_count; i++) {
        const gb_break *b = &c->breaks[i];
        if (b->at.faulty)
            return;
        check_break(r, c, i);
        work -= of_day(c, b->to) - of_day(c, b->from);
    }
    if (!(work > 0))
        gb_report(
            r->diags, r->file, c->at.line,
            "breaks and cleaning leave nothing of the day; check them, start and finish");
}

static void check_day(gb_reader *r, const gb_crew *c) {
    if (isnan(c->start.s)) {
        if (!isnan(c->finish.s))
            gb_report(r->diags, r->file, 0,
                      "the crew has a finish and no start; add: start = \"07:00\"");
        if (c->break_count > 0)
            gb_report(r->diags, r->file, c->breaks[0].at.line,
                      "the crew has breaks and no start; add: start = \"07:00\"");
        return;
    }
    double day = gb_day_end(c).s - c->start.s;
    if (fabs(c->finish.s - c->start.s) < 1)
        gb_report(r->diags, r->file, 0,
                  "the crew finishes when it starts; check start and finish");
    else if (day > LONGEST_DAY_S)
        gb_report(r->diags, r->file, c->at.line,
                  "the day lasts %s from start to finish, and at most 14 h are planned; "
                  "is the start after the finish?",
                  shown(r, day));
    else
        check_breaks(r, c);
}

static void check_carrying(gb_reader *r, const gb_crew *c) {
    if (isnan(c->carrying.s) != isnan(c->load.kg))
        gb_report(r->diags, r->file, c->at.line,
                  "'carrying' and 'load' belong together: the time of one load, and what "
                  "it weighs; add: %s",
                  isnan(c->load.kg) ? "load = \"150 lb\"" : "carrying = \"4 min\"");
}

void gb_check_crew(gb_reader *r, const gb_job *job) {
    const gb_crew *c = &job->crew;
    check_mixers(r, c);
    check_paces(r, job);
    if (c->at.faulty || c->at.line == 0)
        return;
    for (size_t i = 0; i < job->mix_count; i++)
        check_mix(r, job, job->mixes[i]);
    check_day(r, c);
    check_carrying(r, c);
}

/* ---- what the days of a plan need -------------------------------------------------- */

static const char *usual_pace(gb_layer_kind kind, gb_system units) {
    bool us = units == GB_US;
    if (kind == GB_SLURRY || kind == GB_BED)
        return us ? "40 ft2/h" : "4 m2/h";
    return us ? "2 ft3/h" : "60 L/h";
}

bool gb_report_no_days(const gb_plan *plan, gb_diags *diags) {
    const gb_job *job = plan->job;
    size_t before = gb_diags_count(diags);
    unsigned kinds = gb_kinds_without_pace(plan);
    if (isnan(job->crew.start.s))
        gb_report(diags, job->file, job->crew.at.line,
                  "the crew has no 'start', and its days begin with it; add: start = "
                  "\"07:00\"");
    for (gb_layer_kind k = GB_BED; k < GB_LAYER_KINDS; k++)
        if (kinds >> k & 1)
            gb_report(
                diags, job->file, job->crew.at.line,
                "the crew has no pace for %s layers, and the days are planned by it; "
                "add: paces = ( { of = [ \"%s\" ]; pace = \"%s\"; } )",
                GB_LAYER_WORDS[k], GB_LAYER_WORDS[k], usual_pace(k, job->units));
    return gb_diags_count(diags) == before;
}
