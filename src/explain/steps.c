#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

#define READ_TO N_("what a tape is read to")

/* ---- what was stated --------------------------------------------------------------- */

static const gb_why *length_of(gb_explainer *x, const gb_about *a, const char *name,
                               const gb_length *at) {
    return gb_stated(x, name, a->run, GB_LENGTH, &at->m, NULL);
}

static const gb_why *rise(gb_explainer *x, const gb_about *a) {
    return length_of(x, a, "rise", &a->steps->rise);
}

static const gb_why *pitch(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "pitch", a->run, GB_SLOPE, &a->steps->pitch.of_run, NULL);
}

/* Risers: stated, or one of those that are looked at. */
static const gb_why *count(gb_explainer *x, const gb_about *a) {
    if (a->steps->count == a->layout->count)
        return gb_stated_count(x, "count", a->run, &a->steps->count);
    return gb_fact(x, "count", GB_PLAIN, (double)a->layout->count,
                   N_("one of the numbers that are looked at"));
}

static const gb_why *others(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "others", GB_PLAIN, (double)a->layout->count - 1.0, "count - 1",
                  GB_INPUTS(count(x, a)), .of = a->run);
}

static const gb_why *treads(gb_explainer *x, const gb_about *a) {
    bool all = a->steps->upper == GB_UPPER_TREAD;
    return GB_WHY(x, "treads", GB_PLAIN, (double)a->layout->treads,
                  all ? "count" : "count - 1", GB_INPUTS(count(x, a)), .of = a->run);
}

/* ---- faces ------------------------------------------------------------------------- */

static const gb_why *going(gb_explainer *x, const gb_about *a) {
    if (!isnan(a->steps->going.m))
        return length_of(x, a, "tread", &a->steps->going);
    return GB_WHY(
        x, "tread", GB_LENGTH, a->layout->going.m, "run_length / treads",
        GB_INPUTS(length_of(x, a, "run_length", &a->steps->length), treads(x, a)),
        .of = a->run);
}

static const gb_why *run_length(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "run_length", GB_LENGTH, a->layout->length.m, "tread * treads",
                  GB_INPUTS(going(x, a), treads(x, a)), .of = a->run);
}

static const gb_why *term(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "term", GB_LENGTH, a->layout->term.m, "pitch * tread",
                  GB_INPUTS(pitch(x, a), going(x, a)), .of = a->run);
}

static const gb_why *behind(gb_explainer *x, const gb_about *a) {
    const gb_steps *s = a->steps;
    if (s->top == GB_TO_NOSING)
        return gb_fact(x, "behind", GB_LENGTH, 0, N_("the rise ends at the nosing"));
    const gb_why *sill = length_of(x, a, "sill", &s->sill);
    if (s->upper == GB_UPPER_TREAD)
        return GB_WHY(x, "behind", GB_LENGTH, a->layout->behind.m, "pitch * tread + sill",
                      GB_INPUTS(pitch(x, a), going(x, a), sill), .of = a->run);
    return GB_WHY(x, "behind", GB_LENGTH, a->layout->behind.m, "pitch * landing + sill",
                  GB_INPUTS(pitch(x, a), length_of(x, a, "landing", &s->landing), sill),
                  .of = a->run);
}

static const gb_why *stone(gb_explainer *x, const gb_about *a) {
    return length_of(x, a, "stone", &a->steps->stone);
}

static const gb_why *face(gb_explainer *x, const gb_about *a) {
    const gb_layout *l = a->layout;
    if (a->steps->build == GB_SOLID_STEPS)
        return GB_WHY(x, "face", GB_LENGTH, l->face.m, "stone", GB_INPUTS(stone(x, a)),
                      .of = a->run);
    if (!isnan(a->steps->face.m))
        return length_of(x, a, "face", &a->steps->face);
    if (l->evened)
        return GB_WHY(x, "face", GB_LENGTH, l->face.m, "(rise - behind) / count - term",
                      GB_INPUTS(rise(x, a), behind(x, a), count(x, a), term(x, a)),
                      .of = a->run);
    return GB_WHY(
        x, "face", GB_LENGTH, l->face.m, "(rise - behind - others * term) / count",
        GB_INPUTS(rise(x, a), behind(x, a), others(x, a), term(x, a), count(x, a)),
        .of = a->run);
}

/* Of solid stone the first takes what is left of the rise, at most all of itself. */
static const gb_why *first(gb_explainer *x, const gb_about *a) {
    const gb_layout *l = a->layout;
    if (a->steps->build == GB_SOLID_STEPS)
        return GB_WHY(
            x, "first", GB_LENGTH, l->first.m,
            "smaller(stone, rise - behind - others * (stone + term))",
            GB_INPUTS(stone(x, a), rise(x, a), behind(x, a), others(x, a), term(x, a)),
            .of = a->run);
    if (l->evened)
        return GB_WHY(x, "first", GB_LENGTH, l->first.m, "face + term",
                      GB_INPUTS(face(x, a), term(x, a)), .of = a->run);
    return GB_WHY(x, "first", GB_LENGTH, l->first.m, "face", GB_INPUTS(face(x, a)),
                  .of = a->run);
}

static const gb_why *riser(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "riser", GB_LENGTH, a->layout->riser.m, "face + term",
                  GB_INPUTS(face(x, a), term(x, a)), .of = a->run,
                  .source = N_("from nosing to nosing: a riser is measured plumb, also "
                               "when treads are pitched"));
}

static const gb_why *differ(gb_explainer *x, const gb_about *a) {
    bool more = a->layout->riser.m >= a->layout->first.m;
    return GB_WHY(x, "differ", GB_LENGTH, gb_risers_differ(a->layout).m,
                  more ? "riser - first" : "first - riser",
                  GB_INPUTS(riser(x, a), first(x, a)), .of = a->run);
}

static const gb_why *climb(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "climb", GB_LENGTH, a->layout->climb.m, "first + others * riser + behind",
        GB_INPUTS(first(x, a), others(x, a), riser(x, a), behind(x, a)), .of = a->run);
}

static const gb_why *error(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "left_over", GB_LENGTH, a->layout->error.m, "rise - climb",
                  GB_INPUTS(rise(x, a), climb(x, a)), .of = a->run);
}

static const gb_why *buried(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "buried", GB_LENGTH, a->layout->buried.m, "stone - first",
                  GB_INPUTS(stone(x, a), first(x, a)), .of = a->run);
}

/* To the sixteenth, or the millimetre, of the sheet. */
static gb_length read_to_of(const gb_explainer *x) {
    return (gb_length){x->style.system == GB_US ? 0.0254 / 16.0 : 0.001};
}

static gb_step_advice advice_of(const gb_explainer *x, const gb_about *a) {
    return gb_advise_steps(a->steps, read_to_of(x), a->choice);
}

static const gb_why *rounded(gb_explainer *x, const gb_about *a, const char *name,
                             const gb_why *exact, double m, const char *formula) {
    const gb_why *to = gb_fact(x, "read_to", GB_LENGTH, read_to_of(x).m, READ_TO);
    return GB_WHY(x, name, GB_LENGTH, m, formula, GB_INPUTS(exact, to), .of = a->run);
}

static const gb_why *set_first(gb_explainer *x, const gb_about *a) {
    return rounded(x, a, "set_first", first(x, a), a->layout->set_first.m,
                   "near(first, read_to)");
}

static const gb_why *set_face(gb_explainer *x, const gb_about *a) {
    return rounded(x, a, "set_face", face(x, a), a->layout->set_face.m,
                   "near(face, read_to)");
}

static const gb_why *set_error(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "left_over", GB_LENGTH, a->layout->set_error.m,
                  "rise - (set_first + others * (set_face + term) + behind)",
                  GB_INPUTS(rise(x, a), set_first(x, a), others(x, a), set_face(x, a),
                            term(x, a), behind(x, a)),
                  .of = a->run);
}

static const gb_why *comfort(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "comfort", GB_LENGTH, a->layout->comfort.m, "2 * riser + tread",
                  GB_INPUTS(riser(x, a), going(x, a)), .of = a->run);
}

static const gb_why *depth(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "depth", GB_LENGTH, a->layout->depth.m, "tread + overhang + overlap",
                  GB_INPUTS(going(x, a), length_of(x, a, "overhang", &a->steps->overhang),
                            length_of(x, a, "overlap", &a->steps->overlap)),
                  .of = a->run);
}

/* ---- levels ------------------------------------------------------------------------ */

static const gb_why *before(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "before", GB_PLAIN, (double)a->step, N_("steps before this one"));
}

static const gb_why *front(gb_explainer *x, const gb_about *a, const gb_step *st) {
    return GB_WHY(x, "front", GB_LENGTH, st->front.m, "first + before * riser",
                  GB_INPUTS(first(x, a), before(x, a), riser(x, a)), .of = a->run);
}

static const gb_why *back(gb_explainer *x, const gb_about *a, const gb_step *st) {
    const gb_steps *s = a->steps;
    if (a->step + 1 == a->layout->count && s->upper == GB_UPPER_LANDING)
        return GB_WHY(x, "back", GB_LENGTH, st->back.m, "front + pitch * landing",
                      GB_INPUTS(front(x, a, st), pitch(x, a),
                                length_of(x, a, "landing", &s->landing)),
                      .of = a->run);
    return GB_WHY(x, "back", GB_LENGTH, st->back.m, "front + term",
                  GB_INPUTS(front(x, a, st), term(x, a)), .of = a->run);
}

static const gb_why *bed_top(gb_explainer *x, const gb_about *a, const gb_step *st) {
    bool solid = a->steps->build == GB_SOLID_STEPS;
    return GB_WHY(
        x, "bed_top", GB_LENGTH, st->bed_top.m, solid ? "front - stone" : "front - slab",
        GB_INPUTS(front(x, a, st),
                  solid ? stone(x, a) : length_of(x, a, "slab", &a->steps->slab)),
        .of = a->run);
}

/* Where whole courses begin: the footing's top, or the back of the tread below. */
static const gb_why *block_foot(gb_explainer *x, const gb_about *a) {
    const gb_steps *s = a->steps;
    if (s->build == GB_ON_PLATFORMS || a->step == 0)
        return GB_WHY(x, "block_foot", GB_LENGTH, -s->footing.m, "0 - footing",
                      GB_INPUTS(length_of(x, a, "footing", &s->footing)), .of = a->run);
    const gb_layout *l = a->layout;
    const gb_why *below = gb_fact(x, "below", GB_PLAIN, (double)a->step - 1.0,
                                  N_("steps before the one below"));
    return GB_WHY(x, "block_foot", GB_LENGTH,
                  l->first.m + ((double)a->step - 1.0) * l->riser.m + l->term.m,
                  "first + below * riser + term",
                  GB_INPUTS(first(x, a), below, riser(x, a), term(x, a)), .of = a->run);
}

static const gb_why *bed(gb_explainer *x, const gb_about *a, const gb_step *st) {
    const gb_steps *s = a->steps;
    if (isnan(s->course.m))
        return isnan(s->bed.m)
                   ? gb_fact(x, "bed", GB_LENGTH, st->bed.m, N_("usual: common practice"))
                   : length_of(x, a, "bed", &s->bed);
    if (st->build_up.m > 0)
        return length_of(x, a, "least_bed", &s->least_bed);
    const gb_why *foot = block_foot(x, a);
    if (foot == NULL)
        return NULL;
    double room = st->bed_top.m - foot->value;
    const gb_why *courses = GB_WHY(x, "courses", GB_PLAIN, (double)st->courses,
                                   "down((bed_top - block_foot - least_bed) / course, 1)",
                                   GB_INPUTS(bed_top(x, a, st), foot,
                                             length_of(x, a, "least_bed", &s->least_bed),
                                             length_of(x, a, "course", &s->course)),
                                   .of = a->run);
    return GB_WHY(x, "bed", GB_LENGTH, room - (double)st->courses * s->course.m,
                  "bed_top - block_foot - courses * course",
                  GB_INPUTS(bed_top(x, a, st), foot, courses,
                            length_of(x, a, "course", &s->course)),
                  .of = a->run);
}

static const gb_why *block_top(gb_explainer *x, const gb_about *a, const gb_step *st) {
    const gb_why *depth_of_bed = bed(x, a, st);
    bool built_up = st->build_up.m > 0;
    return GB_WHY(x, "block_top", GB_LENGTH, st->block_top.m,
                  built_up ? "bed_top - least_bed" : "bed_top - bed",
                  GB_INPUTS(bed_top(x, a, st), depth_of_bed), .of = a->run);
}

/* Which level a mark of the pole is of. */
static const gb_why *level(gb_explainer *x, const gb_about *a, gb_row_code mark) {
    const gb_steps *s = a->steps;
    gb_step st;
    if (gb_lay_step(s, a->layout, a->step, &st) != GB_OK)
        return NULL;
    switch (mark) {
    case GB_ROW_MARK_BASE:
        return GB_WHY(x, "level", GB_LENGTH, -s->footing.m - s->base.m,
                      "0 - footing - base",
                      GB_INPUTS(length_of(x, a, "footing", &s->footing),
                                length_of(x, a, "base", &s->base)),
                      .of = a->run);
    case GB_ROW_MARK_BASE_DRY:
        return GB_WHY(x, "level", GB_LENGTH, st.bed_top.m - s->base.m, "bed_top - base",
                      GB_INPUTS(bed_top(x, a, &st), length_of(x, a, "base", &s->base)),
                      .of = a->run);
    case GB_ROW_MARK_FOOTING:
        return GB_WHY(x, "level", GB_LENGTH, -s->footing.m, "0 - footing",
                      GB_INPUTS(length_of(x, a, "footing", &s->footing)), .of = a->run);
    case GB_ROW_MARK_FOOT:
        return gb_fact(x, "level", GB_LENGTH, 0, N_("where all levels are counted from"));
    case GB_ROW_MARK_SILL:
        return climb(x, a);
    case GB_ROW_MARK_BLOCK:
    case GB_ROW_MARK_BUILT_UP:
        return block_top(x, a, &st);
    case GB_ROW_MARK_BED:
    case GB_ROW_MARK_SEAT:
        return bed_top(x, a, &st);
    case GB_ROW_MARK_BACK:
    case GB_ROW_MARK_LANDING_BACK:
        return back(x, a, &st);
    default:
        return front(x, a, &st);
    }
}

/* A level as it was named, under the one name that the formulas below use. */
static const gb_why *height(gb_explainer *x, const gb_about *a, gb_row_code mark) {
    const gb_why *at = level(x, a, mark);
    if (at == NULL)
        return NULL;
    const gb_why *bench = length_of(x, a, "bench", &a->steps->bench);
    if (bench == NULL)
        return NULL;
    const gb_why *named =
        GB_WHY(x, "mark", GB_LENGTH, at->value, at->name, GB_INPUTS(at), .of = a->run);
    return GB_WHY(x, "height", GB_LENGTH, at->value - bench->value, "mark - bench",
                  GB_INPUTS(named, bench), .of = a->run);
}

static const gb_why *pole(gb_explainer *x, const gb_row *row, const gb_figure *figure) {
    const gb_about *a = row->about;
    const gb_why *up = height(x, a, row->figures[0].rows[0].code);
    if (up == NULL || figure->name[0] != 's')
        return up;
    return GB_WHY(x, "staff", GB_LENGTH, a->steps->laser.m - up->value, "laser - height",
                  GB_INPUTS(length_of(x, a, "laser", &a->steps->laser), up),
                  .of = a->run);
}

/* ---- beds -------------------------------------------------------------------------- */

/* The step whose bed is the thinnest in front, or the thickest behind. */
static size_t step_with(const gb_about *a, bool most) {
    size_t found = 0;
    double edge = GB_NONE;
    for (size_t i = 0; i < a->layout->count; i++) {
        gb_step st;
        if (gb_lay_step(a->steps, a->layout, i, &st) != GB_OK)
            continue;
        double at = most ? gb_larger(st.bed.m, st.bed_back.m) : st.bed.m;
        if (isnan(edge) || (most ? at > edge : at < edge)) {
            edge = at;
            found = i;
        }
    }
    return found;
}

static const gb_why *beds_edge(gb_explainer *x, const gb_about *about, bool most) {
    gb_about a = *about;
    gb_step st;
    a.step = step_with(about, most);
    if (gb_lay_step(a.steps, a.layout, a.step, &st) != GB_OK)
        return NULL;
    const gb_why *front_bed = bed(x, &a, &st);
    if (front_bed == NULL || !most || !(st.bed_back.m > st.bed.m))
        return front_bed;
    bool landing = a.step + 1 == a.layout->count && a.steps->upper == GB_UPPER_LANDING;
    const gb_why *run_back =
        landing ? length_of(x, &a, "landing", &a.steps->landing) : going(x, &a);
    if (run_back == NULL)
        return NULL;
    const gb_why *added = GB_WHY(x, "added", GB_LENGTH, st.bed_back.m - st.bed.m,
                                 landing ? "pitch * landing" : "pitch * tread",
                                 GB_INPUTS(pitch(x, &a), run_back), .of = a.run);
    const gb_why *named = GB_WHY(x, "in_front", GB_LENGTH, front_bed->value,
                                 front_bed->name, GB_INPUTS(front_bed), .of = a.run);
    return GB_WHY(x, "bed_behind", GB_LENGTH, st.bed_back.m, "in_front + added",
                  GB_INPUTS(named, added), .of = a.run);
}

static const gb_why *edge_least(gb_explainer *x, const gb_about *a) {
    return beds_edge(x, a, false);
}

static const gb_why *edge_most(gb_explainer *x, const gb_about *a) {
    return beds_edge(x, a, true);
}

static const gb_why *built_up(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "built_up", GB_PLAIN, (double)a->choice->beds.build_up,
                   N_("steps where whole courses leave more than the most bed"));
}

/* ---- codes and advice -------------------------------------------------------------- */

static const gb_why *more_of(gb_explainer *x, const gb_about *a, bool least) {
    bool first_is_more = a->layout->first.m > a->layout->riser.m;
    return first_is_more != least ? first(x, a) : riser(x, a);
}

static const gb_why *rule_value(gb_explainer *x, const gb_about *a) {
    switch (a->rule) {
    case GB_RULE_IRC_RISER:
    case GB_RULE_ADA_RISER_MOST:
        return more_of(x, a, false);
    case GB_RULE_ADA_RISER_LEAST:
        return more_of(x, a, true);
    case GB_RULE_IRC_TREAD:
    case GB_RULE_ADA_TREAD:
        return going(x, a);
    case GB_RULE_IRC_RISERS_DIFFER:
    case GB_RULE_ADJACENT:
        return differ(x, a);
    case GB_RULE_IRC_PITCH:
    case GB_RULE_ADA_PITCH:
        return pitch(x, a);
    case GB_RULE_IRC_FLIGHT:
        return GB_WHY(x, "flight", GB_LENGTH, a->layout->climb.m - a->layout->behind.m,
                      "climb - behind", GB_INPUTS(climb(x, a), behind(x, a)),
                      .of = a->run);
    default:
        return length_of(x, a, "overhang", &a->steps->overhang);
    }
}

static const gb_why *rule_limit(gb_explainer *x, const gb_about *a) {
    const gb_step_limit *limit = gb_step_limit_of(a->rule);
    return gb_fact(x, "limit", (int)limit->kind, limit->value, limit->source);
}

static const gb_why *guarded(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "height", GB_LENGTH, gb_guard_height().m,
                   N_("IRC R312.1.1, from memory"));
}

static const gb_why *rail_limit(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "limit", GB_PLAIN, (double)gb_handrail_risers(),
                   N_("IRC R311.7.8, from memory"));
}

static const gb_why *least_tread(gb_explainer *x) {
    const gb_step_limit *limit = gb_step_limit_of(GB_RULE_IRC_TREAD);
    return gb_fact(x, "least_tread", GB_LENGTH, limit->value, limit->source);
}

/* The part of what the pitch lifts along a tread that its riser takes. */
static const gb_why *taken(gb_explainer *x, const gb_about *a) {
    double part = advice_of(x, a).taken;
    if (part == 1)
        return gb_fact(x, "taken", GB_PLAIN, part, N_("the face stays, the pitch adds"));
    if (part == 0)
        return gb_fact(x, "taken", GB_PLAIN, part,
                       N_("the faces take up what the pitch lifts"));
    return GB_WHY(x, "taken", GB_PLAIN, part, part > 0 ? "1 / count" : "-1 / count",
                  GB_INPUTS(count(x, a)), .of = a->run);
}

static const gb_why *wanted_going(gb_explainer *x, const gb_about *a) {
    double wanted = advice_of(x, a).going.m;
    const gb_why *level =
        GB_WHY(x, "level", GB_LENGTH,
               a->layout->riser.m - advice_of(x, a).taken * a->layout->term.m,
               "riser - taken * term", GB_INPUTS(riser(x, a), taken(x, a), term(x, a)),
               .of = a->run);
    const gb_why *step = gb_fact(x, "read_to", GB_LENGTH, read_to_of(x).m, READ_TO);
    if (wanted < a->layout->going.m)
        return GB_WHY(x, "wanted", GB_LENGTH, wanted,
                      "down((band_most - 2 * level) / (1 + 2 * taken * pitch), read_to)",
                      GB_INPUTS(length_of(x, a, "band_most", &a->steps->band_most), level,
                                taken(x, a), pitch(x, a), step),
                      .of = a->run);
    return GB_WHY(x, "wanted", GB_LENGTH, wanted,
                  "up(larger(least_tread, (band_least - 2 * level) / "
                  "(1 + 2 * taken * pitch)), read_to)",
                  GB_INPUTS(least_tread(x),
                            length_of(x, a, "band_least", &a->steps->band_least), level,
                            taken(x, a), pitch(x, a), step),
                  .of = a->run);
}

static const gb_why *wanted_length(gb_explainer *x, const gb_about *a) {
    gb_step_advice advice = advice_of(x, a);
    return GB_WHY(x, "wanted_length", GB_LENGTH, advice.length.m, "wanted * treads",
                  GB_INPUTS(wanted_going(x, a), treads(x, a)), .of = a->run);
}

/* The courses of a step climb its riser, or on a tread what slab and a middling bed leave
   of the face. */
static const gb_why *wanted_course(gb_explainer *x, const gb_about *a) {
    const gb_steps *s = a->steps;
    const gb_layout *l = a->layout;
    double wanted = advice_of(x, a).course.m;
    double bed_m = (s->least_bed.m + s->most_bed.m - l->term.m) / 2.0;
    bool on_treads = s->build == GB_ON_TREADS;
    double climbs = on_treads ? l->face.m - s->slab.m - bed_m : l->riser.m;
    const gb_why *courses = gb_fact(x, "courses", GB_PLAIN, round(climbs / wanted),
                                    N_("whole courses in a step"));
    if (!on_treads)
        return GB_WHY(x, "wanted_course", GB_LENGTH, wanted, "riser / courses",
                      GB_INPUTS(riser(x, a), courses), .of = a->run);
    return GB_WHY(x, "wanted_course", GB_LENGTH, wanted,
                  "(face - slab - (least_bed + most_bed - term) / 2) / courses",
                  GB_INPUTS(face(x, a), length_of(x, a, "slab", &s->slab),
                            length_of(x, a, "least_bed", &s->least_bed),
                            length_of(x, a, "most_bed", &s->most_bed), term(x, a),
                            courses),
                  .of = a->run);
}

static const gb_why *wanted_footing(gb_explainer *x, const gb_about *a) {
    const gb_steps *s = a->steps;
    double wanted = advice_of(x, a).footing.m;
    double bed_m = (s->least_bed.m + s->most_bed.m - a->layout->term.m) / 2.0;
    double room = a->layout->first.m - s->slab.m - bed_m;
    gb_length advised = advice_of(x, a).course;
    double high = isnan(advised.m) ? s->course.m : advised.m;
    const gb_why *course =
        isnan(advised.m) ? length_of(x, a, "course", &s->course) : wanted_course(x, a);
    const gb_why *courses = gb_fact(x, "courses", GB_PLAIN, round((wanted + room) / high),
                                    N_("whole courses in the first step"));
    return GB_WHY(x, "wanted_footing", GB_LENGTH, wanted,
                  isnan(advised.m) ? "courses * course - (first - slab - (least_bed + "
                                     "most_bed - term) / 2)"
                                   : "courses * wanted_course - (first - slab - "
                                     "(least_bed + most_bed - term) / 2)",
                  GB_INPUTS(courses, course, first(x, a),
                            length_of(x, a, "slab", &s->slab),
                            length_of(x, a, "least_bed", &s->least_bed),
                            length_of(x, a, "most_bed", &s->most_bed), term(x, a)),
                  .of = a->run);
}

static const gb_why *wanted_face(gb_explainer *x, const gb_about *a) {
    return GB_WHY(
        x, "wanted_face", GB_LENGTH, advice_of(x, a).face.m,
        "(rise - behind - others * term) / count",
        GB_INPUTS(rise(x, a), behind(x, a), others(x, a), term(x, a), count(x, a)),
        .of = a->run);
}

static const gb_why *landing_above(gb_explainer *x, const gb_about *a) {
    gb_step_advice advice = advice_of(x, a);
    return GB_WHY(x, "landing", GB_PLAIN, (double)advice.landing, "up(count / 2, 1)",
                  GB_INPUTS(count(x, a)), .of = a->run);
}

/* ---- a piece that is a run --------------------------------------------------------- */

/* A piece knows its run; what is not laid out on a sheet is laid out here. */
static bool lay(const gb_explainer *x, const gb_piece *p, gb_layout *l, gb_about *a) {
    *a = (gb_about){.steps = &p->run, .run = p->name, .layout = l};
    return gb_lay_steps(&p->run, p->run.count, p->run.evened, read_to_of(x), l) == GB_OK;
}

const gb_why *gb_why_run_count(gb_explainer *x, const gb_piece *p) {
    gb_layout l;
    gb_about a;
    if (!lay(x, p, &l, &a))
        return NULL;
    return GB_WHY(x, "count", GB_PLAIN, (double)l.treads, "treads",
                  GB_INPUTS(treads(x, &a)), .of = p->name);
}

const gb_why *gb_why_run_width(gb_explainer *x, const gb_piece *p) {
    return gb_stated(x, "length", p->name, GB_LENGTH, &p->run.width.m, NULL);
}

const gb_why *gb_why_run_depth(gb_explainer *x, const gb_piece *p) {
    gb_layout l;
    gb_about a;
    if (!lay(x, p, &l, &a))
        return NULL;
    const gb_why *of_run = depth(x, &a);
    if (of_run == NULL)
        return NULL;
    return GB_WHY(x, "width", GB_LENGTH, of_run->value, "depth", GB_INPUTS(of_run),
                  .of = p->name);
}

/* ---- by the name of a figure ------------------------------------------------------- */

typedef const gb_why *chain(gb_explainer *x, const gb_about *a);

static const gb_why *missed(gb_explainer *x, const gb_about *a) {
    double n = (double)gb_rules_missed(GB_IRC, a->steps, a->layout);
    return gb_fact(x, "missed", GB_PLAIN, n, N_("limits of the IRC that are not met"));
}

static const gb_why *all_missed(gb_explainer *x, const gb_about *a) {
    double n = (double)gb_all_rules_missed(a->steps, a->layout);
    return gb_fact(
        x, "missed", GB_PLAIN, n,
        N_("limits of the IRC, the ADA standards and NFPA 101 that are not met"));
}

static const gb_why *layout(gb_explainer *x, const gb_about *a, const char *name) {
    static const struct {
        const char *name;
        chain *why;
    } NAMES[] = {
        {"count", count},           {"others", others},       {"treads", treads},
        {"going", going},           {"length", run_length},   {"term", term},
        {"behind", behind},         {"face", face},           {"first", first},
        {"riser", riser},           {"differ", differ},       {"climb", climb},
        {"error", error},           {"short", error},         {"buried", buried},
        {"comfort", comfort},       {"depth", depth},         {"set_first", set_first},
        {"set_face", set_face},     {"set_error", set_error}, {"rise", rise},
        {"pitch", pitch},           {"stone", stone},         {"missed", missed},
        {"all_missed", all_missed},
    };
    for (size_t i = 0; i < sizeof NAMES / sizeof NAMES[0]; i++)
        if (strcmp(NAMES[i].name, name) == 0)
            return NAMES[i].why(x, a);
    return NULL;
}

const gb_why *gb_why_of_run(gb_explainer *x, const gb_piece *p, const char *figure) {
    gb_layout l;
    gb_about a;
    return lay(x, p, &l, &a) ? layout(x, &a, figure) : NULL;
}

static const gb_why *stated(gb_explainer *x, const gb_about *a, const char *name) {
    const gb_steps *s = a->steps;
    const struct {
        const char *name;
        const gb_length *at;
    } SIZES[] = {
        {"sill", &s->sill},         {"slab", &s->slab},     {"overlap", &s->overlap},
        {"overhang", &s->overhang}, {"course", &s->course}, {"bench", &s->bench},
        {"laser", &s->laser},
    };
    for (size_t i = 0; i < sizeof SIZES / sizeof SIZES[0]; i++)
        if (strcmp(SIZES[i].name, name) == 0)
            return length_of(x, a, name, SIZES[i].at);
    return NULL;
}

#define OF_RUN(name, text, member)                                                       \
    static const gb_why *name(gb_explainer *x, const gb_about *a) {                      \
        return length_of(x, a, text, &a->steps->member);                                 \
    }
OF_RUN(least_bed, "least_bed", least_bed)
OF_RUN(most_bed, "most_bed", most_bed)
OF_RUN(least_riser, "least_riser", least_riser)
OF_RUN(most_riser, "most_riser", most_riser)
OF_RUN(band_least, "band_least", band_least)
OF_RUN(band_most, "band_most", band_most)
#undef OF_RUN

static const gb_why *stated_bed(gb_explainer *x, const gb_about *a) {
    if (!isnan(a->steps->bed.m))
        return length_of(x, a, "bed", &a->steps->bed);
    return gb_fact(x, "bed", GB_LENGTH, gb_usual_front_bed().m,
                   N_("usual: common practice"));
}

/* What a tape leaves of the rise; of solid stone, what the stones leave. */
static const gb_why *left_over(gb_explainer *x, const gb_about *a) {
    return a->steps->build == GB_SOLID_STEPS ? error(x, a) : set_error(x, a);
}

/* Figures whose name alone does not tell what they are. */
static const struct {
    gb_row_code row;
    const char *figure;
    chain *why;
} ROWS[] = {
    {GB_ROW_CHOICE, "error", left_over},
    {GB_ROW_RUN_SET, "first", set_first},
    {GB_ROW_RUN_SET, "face", set_face},
    {GB_ROW_RUN_SET, "error", set_error},
    {GB_ROW_RUN_SET_CLOSES, "first", set_first},
    {GB_ROW_RUN_SET_CLOSES, "face", set_face},
    {GB_ROW_RUN_COURSE, "least", least_bed},
    {GB_ROW_RUN_COURSE, "most", most_bed},
    {GB_ROW_RUN_BED, "bed", stated_bed},
    {GB_ROW_NO_CHOICES, "least", least_riser},
    {GB_ROW_NO_CHOICES, "most", most_riser},
    {GB_ROW_BAND, "least", band_least},
    {GB_ROW_BAND, "most", band_most},
    {GB_ROW_BEDS_FROM_TO, "least", edge_least},
    {GB_ROW_BEDS_FROM_TO, "most", edge_most},
    {GB_ROW_RUN_BEDS, "least", edge_least},
    {GB_ROW_RUN_BEDS, "most", edge_most},
    {GB_ROW_BEDS_BUILD_UP, "n", built_up},
    {GB_ROW_RUN_BUILD_UP, "n", built_up},
    {GB_ROW_RUN_IRC_FAILS, "n", missed},
    {GB_ROW_RULE_MOST, "value", rule_value},
    {GB_ROW_RULE_MOST, "limit", rule_limit},
    {GB_ROW_RULE_LEAST, "value", rule_value},
    {GB_ROW_RULE_LEAST, "limit", rule_limit},
    {GB_ROW_RAIL, "limit", rail_limit},
    {GB_ROW_RAIL_NONE, "limit", rail_limit},
    {GB_ROW_GUARD, "height", guarded},
    {GB_ROW_GUARD_NONE, "height", guarded},
    {GB_ROW_ADVICE_TREAD, "going", wanted_going},
    {GB_ROW_ADVICE_TREAD, "length", wanted_length},
    {GB_ROW_ADVICE_COURSE, "course", wanted_course},
    {GB_ROW_ADVICE_FOOTING, "footing", wanted_footing},
    {GB_ROW_ADVICE_FACE, "face", wanted_face},
    {GB_ROW_ADVICE_STONE, "face", wanted_face},
    {GB_ROW_ADVICE_LANDING, "landing", landing_above},
};

bool gb_is_of_steps(gb_row_code row) {
    return row > GB_ROW_STEPS_TITLE && row < GB_ROW_STEPS_CARE;
}

const gb_why *gb_why_of_steps(gb_explainer *x, const gb_row *row,
                              const gb_figure *figure) {
    const gb_about *a = row->about;
    const char *name = figure->name;
    if (row->code == GB_ROW_POLE_MARK || row->code == GB_ROW_POLE_MARK_STAFF)
        return pole(x, row, figure);
    if (row->code == GB_ROW_SECTION_TITLE)
        return gb_fact(x, "scale", GB_LENGTH, figure->value,
                       N_("the finest at which the section fits"));
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        if (ROWS[i].row == row->code && strcmp(ROWS[i].figure, name) == 0)
            return ROWS[i].why(x, a);
    const gb_why *why = layout(x, a, name);
    return why != NULL ? why : stated(x, a, name);
}
