#include "write/steps_rows.h"

#include "gaugebox/count.h"

typedef const gb_steps_question question;

static gb_figure tape(const char *name, gb_length length) {
    return gb_num(name, GB_SHOW_LENGTH, length.m);
}

static gb_figure fine(const char *name, gb_length length) {
    return gb_num(name, GB_SHOW_LENGTH_FINE, length.m);
}

static gb_figure number(const char *name, size_t count) {
    return gb_num(name, GB_SHOW_COUNT, (double)count);
}

/* ---- what was asked ---------------------------------------------------------------- */

static gb_figure how(gb_builder *b, const gb_steps *s) {
    static const gb_row_code CODES[] = {[GB_ON_PLATFORMS] = GB_ROW_BUILD_PLATFORMS,
                                        [GB_ON_TREADS] = GB_ROW_BUILD_TREADS,
                                        [GB_SOLID_STEPS] = GB_ROW_BUILD_SOLID};
    return gb_row_fig(b, "how", gb_make_row(b, CODES[s->build], NULL, 0));
}

static void add_built(gb_builder *b, const gb_steps *s) {
    if (s->build == GB_SOLID_STEPS)
        GB_ADD(b, RUN_BUILT_STONE, how(b, s), tape("stone", s->stone),
               tape("overlap", s->overlap));
    else if (isnan(s->slab.m))
        GB_ADD(b, RUN_BUILT, how(b, s));
    else
        GB_ADD(b, RUN_BUILT_SLABS, how(b, s), tape("slab", s->slab));
    if (s->build == GB_SOLID_STEPS || isnan(s->slab.m))
        return;
    if (isnan(s->course.m))
        GB_ADD(b, RUN_BED, tape("bed", isnan(s->bed.m) ? gb_usual_front_bed() : s->bed));
    else
        GB_ADD(b, RUN_COURSE, tape("course", s->course), tape("least", s->least_bed),
               tape("most", s->most_bed));
}

static void add_asked(gb_builder *b, question *q) {
    const gb_steps *s = q->steps;
    if (q->piece != NULL)
        GB_ADD(b, RUN_NAME, gb_txt("name", q->piece->name));
    if (s->top == GB_TO_SILL)
        GB_ADD(b, RUN_RISE_SILL, tape("rise", s->rise), tape("sill", s->sill));
    else
        GB_ADD(b, RUN_RISE, tape("rise", s->rise));
    add_built(b, s);
    if (s->pitch.of_run > 0)
        GB_ADD(b, RUN_PITCH, gb_num("pitch", GB_SHOW_SLOPE, s->pitch.of_run));
    else
        GB_ADD_BARE(b, RUN_LEVEL);
    gb_end_block(b);
}

/* ---- numbers of risers side by side ------------------------------------------------ */

static void speak_of(gb_builder *b, const gb_choice *c) {
    b->about.choice = c;
    b->about.layout = &c->layout;
}

static gb_figure way(gb_builder *b, const gb_choice *c) {
    bool solid = b->about.steps->build == GB_SOLID_STEPS;
    gb_row row = solid              ? GB_MAKE_BARE(b, WAY_STONES)
                 : c->layout.evened ? GB_MAKE_BARE(b, WAY_EVENED)
                                    : GB_MAKE_BARE(b, WAY_EQUAL);
    return gb_row_fig(b, "way", row);
}

static gb_figure count_of(const gb_choice *c) {
    return number("count", c->layout.count);
}

static gb_length left_over(const gb_steps *s, const gb_layout *l) {
    return s->build == GB_SOLID_STEPS ? l->error : l->set_error;
}

static void add_choices(gb_builder *b, question *q) {
    GB_ADD_BARE(b, CHOICES_TITLE);
    GB_ADD_BARE(b, CHOICES_HEAD);
    for (size_t i = 0; i < q->choices.count; i++) {
        const gb_choice *c = &q->choices.list[i];
        const gb_layout *l = &c->layout;
        speak_of(b, c);
        const gb_figure figures[] = {gb_txt("run", b->about.run),
                                     count_of(c),
                                     way(b, c),
                                     fine("first", l->first),
                                     fine("face", l->face),
                                     fine("riser", l->riser),
                                     fine("going", l->going),
                                     fine("length", l->length),
                                     fine("climb", l->climb),
                                     fine("error", left_over(q->steps, l))};
        gb_add_row(b, GB_ROW_CHOICE, figures, sizeof figures / sizeof figures[0]);
    }
    GB_ADD_BARE(b, CHOICE_NOTE);
    gb_end_block(b);
}

static gb_figure yes_or_no(gb_builder *b, const char *name, bool yes) {
    return gb_row_fig(b, name, yes ? GB_MAKE_BARE(b, YES) : GB_MAKE_BARE(b, NO));
}

/* What a choice makes of its beds, or solid stone of its first step. */
static gb_row beds_row(gb_builder *b, const gb_steps *s, const gb_choice *c) {
    const gb_layout *l = &c->layout;
    if (s->build == GB_SOLID_STEPS && gb_over(l->error.m, 0))
        return GB_MAKE(b, STONE_SHORT, fine("short", l->error));
    if (s->build == GB_SOLID_STEPS && gb_over(l->buried.m, 0))
        return GB_MAKE(b, STONE_BURIED, fine("buried", l->buried));
    if (s->build == GB_SOLID_STEPS)
        return GB_MAKE_BARE(b, STONE_CLOSES);
    if (!c->beds_known)
        return GB_MAKE_BARE(b, BEDS_NONE);
    if (c->beds.build_up > 0)
        return GB_MAKE(b, BEDS_BUILD_UP, number("n", c->beds.build_up));
    return GB_MAKE(b, BEDS_FROM_TO, tape("least", c->beds.least),
                   tape("most", c->beds.most));
}

static void add_verdict(gb_builder *b, const gb_steps *s, const gb_choice *c,
                        bool with_beds) {
    const gb_layout *l = &c->layout;
    speak_of(b, c);
    gb_figure irc = yes_or_no(b, "irc", gb_steps_pass(GB_IRC, s, l));
    gb_figure ada = yes_or_no(b, "ada", gb_steps_pass(GB_ADA, s, l));
    gb_figure near = yes_or_no(b, "adjacent", gb_steps_pass(GB_NFPA, s, l));
    gb_figure band = yes_or_no(b, "band", c->in_band);
    gb_figure fits = yes_or_no(b, "fits", c->fits);
    gb_figure comfort = fine("comfort", l->comfort);
    if (with_beds)
        GB_ADD(b, VERDICT_BEDS, count_of(c), way(b, c), comfort, band, irc, ada, near,
               gb_row_fig(b, "beds", beds_row(b, s, c)), fits);
    else
        GB_ADD(b, VERDICT, count_of(c), way(b, c), comfort, band, irc, ada, near, fits);
}

static void add_verdicts(gb_builder *b, question *q) {
    const gb_steps *s = q->steps;
    bool with_beds = s->build == GB_SOLID_STEPS || !isnan(s->slab.m);
    if (s->build == GB_SOLID_STEPS)
        GB_ADD_BARE(b, VERDICTS_HEAD_STONES);
    else if (with_beds)
        GB_ADD_BARE(b, VERDICTS_HEAD_BEDS);
    else
        GB_ADD_BARE(b, VERDICTS_HEAD);
    for (size_t i = 0; i < q->choices.count; i++)
        add_verdict(b, s, &q->choices.list[i], with_beds);
    GB_ADD(b, BAND, fine("least", s->band_least), fine("most", s->band_most));
    gb_end_block(b);
}

/* ---- what would have to change ----------------------------------------------------- */

static void advise(gb_builder *b, const question *q, const gb_choice *c) {
    const gb_steps *s = q->steps;
    gb_step_advice a = gb_advise_steps(s, q->read_to, c);
    const gb_layout *l = &c->layout;
    speak_of(b, c);
    if (!isnan(a.going.m))
        GB_ADD(b, ADVICE_TREAD, count_of(c), way(b, c), tape("going", a.going),
               tape("length", a.length));
    if (!isnan(a.course.m))
        GB_ADD(b, ADVICE_COURSE, count_of(c), way(b, c), tape("course", a.course));
    if (!isnan(a.bury.m) && s->build == GB_SOLID_STEPS)
        GB_ADD(b, ADVICE_BURY, count_of(c), way(b, c), fine("buried", a.bury));
    if (s->build == GB_SOLID_STEPS && gb_over(l->error.m, 0))
        GB_ADD(b, ADVICE_SHORT, count_of(c), way(b, c), fine("short", l->error));
    if (!isnan(a.face.m) && s->build == GB_SOLID_STEPS)
        GB_ADD(b, ADVICE_STONE, count_of(c), way(b, c), fine("face", a.face));
    else if (!isnan(a.face.m))
        GB_ADD(b, ADVICE_FACE, count_of(c), way(b, c), fine("face", a.face));
    if (!isnan(a.footing.m))
        GB_ADD(b, ADVICE_FOOTING, count_of(c), way(b, c), tape("footing", a.footing));
    if (a.landing > 0)
        GB_ADD(b, ADVICE_LANDING, count_of(c), way(b, c), number("landing", a.landing));
    if (!l->evened && l->term.m > 0 && s->build != GB_SOLID_STEPS &&
        !gb_steps_pass(GB_NFPA, s, l))
        GB_ADD(b, ADVICE_EVENED, count_of(c), way(b, c), fine("term", l->term));
}

/* Of those that lack the least; of solid stone all, which are few. */
static void add_advice(gb_builder *b, question *q) {
    const gb_choices *all = &q->choices;
    bool solid = q->steps->build == GB_SOLID_STEPS;
    size_t fewest = all->list[0].lacks;
    for (size_t i = 1; i < all->count; i++)
        fewest = all->list[i].lacks < fewest ? all->list[i].lacks : fewest;
    GB_ADD_BARE(b, ADVICE_TITLE);
    for (size_t i = 0; i < all->count; i++)
        if (solid || all->list[i].lacks == fewest)
            advise(b, q, &all->list[i]);
    gb_end_block(b);
}

/* ---- codes ------------------------------------------------------------------------- */

static gb_figure what_of(gb_builder *b, gb_step_rule rule) {
    static const gb_row_code CODES[] = {[GB_RULE_IRC_RISER] = GB_ROW_WHAT_RISER,
                                        [GB_RULE_IRC_TREAD] = GB_ROW_WHAT_TREAD,
                                        [GB_RULE_IRC_RISERS_DIFFER] = GB_ROW_WHAT_DIFFER,
                                        [GB_RULE_IRC_NOSING_LEAST] = GB_ROW_WHAT_NOSING,
                                        [GB_RULE_IRC_NOSING_MOST] = GB_ROW_WHAT_NOSING,
                                        [GB_RULE_IRC_PITCH] = GB_ROW_WHAT_PITCH,
                                        [GB_RULE_IRC_FLIGHT] = GB_ROW_WHAT_FLIGHT,
                                        [GB_RULE_ADA_RISER_LEAST] = GB_ROW_WHAT_LOW_RISER,
                                        [GB_RULE_ADA_RISER_MOST] = GB_ROW_WHAT_RISER,
                                        [GB_RULE_ADA_TREAD] = GB_ROW_WHAT_TREAD,
                                        [GB_RULE_ADA_NOSING] = GB_ROW_WHAT_NOSING,
                                        [GB_RULE_ADA_PITCH] = GB_ROW_WHAT_PITCH,
                                        [GB_RULE_ADJACENT] = GB_ROW_WHAT_ADJACENT};
    _Static_assert(sizeof CODES / sizeof CODES[0] == GB_STEP_RULES, "words for each");
    return gb_row_fig(b, "what", gb_make_row(b, CODES[rule], NULL, 0));
}

static void add_rule(gb_builder *b, gb_step_rule rule) {
    static const char *const BODIES[] = {
        [GB_IRC] = "IRC", [GB_ADA] = "ADA", [GB_NFPA] = "NFPA"};
    const gb_step_limit *limit = gb_step_limit_of(rule);
    const gb_steps *s = b->about.steps;
    double at = gb_step_value(rule, s, b->about.layout);
    if (isnan(at))
        return;
    b->about.rule = rule;
    bool slope = limit->kind == GB_SLOPE;
    gb_figure body = gb_mark("body", BODIES[limit->body]);
    gb_figure section = gb_txt("section", limit->section);
    gb_figure value = gb_num("value", slope ? GB_SHOW_SLOPE : GB_SHOW_LENGTH_FINE, at);
    gb_figure edge =
        gb_num("limit", slope ? GB_SHOW_SLOPE : GB_SHOW_LENGTH, limit->value);
    gb_figure passes = yes_or_no(b, "passes", gb_step_passes(rule, s, b->about.layout));
    if (limit->at_least)
        GB_ADD(b, RULE_LEAST, body, section, what_of(b, rule), value, edge, passes);
    else
        GB_ADD(b, RULE_MOST, body, section, what_of(b, rule), value, edge, passes);
}

/* The first level, from 1, of which a part lies higher than a guard is asked for; 0: none
   does. The last one is the landing, or the last tread. */
static size_t guarded(const gb_steps *s, const gb_layout *l) {
    for (size_t i = 0; i < l->count; i++) {
        gb_step st;
        if (gb_lay_step(s, l, i, &st) == GB_OK &&
            gb_over(gb_larger(st.front.m, st.back.m), gb_guard_height().m))
            return i + 1;
    }
    return 0;
}

static void add_triggers(gb_builder *b) {
    const gb_layout *l = b->about.layout;
    gb_figure count = number("count", l->count);
    gb_figure limit = number("limit", gb_handrail_risers());
    if (l->count >= gb_handrail_risers())
        GB_ADD(b, RAIL, count, limit);
    else
        GB_ADD(b, RAIL_NONE, count, limit);
    size_t first = guarded(b->about.steps, l);
    if (first > 0)
        GB_ADD(b, GUARD, number("n", first), tape("height", gb_guard_height()));
    else
        GB_ADD(b, GUARD_NONE, tape("height", gb_guard_height()));
    if (b->about.steps->top == GB_TO_SILL)
        GB_ADD_BARE(b, DOOR);
}

static void add_codes(gb_builder *b) {
    GB_ADD_BARE(b, RULES_TITLE);
    for (gb_step_rule rule = 0; rule < GB_STEP_RULES; rule++)
        add_rule(b, rule);
    add_triggers(b);
    gb_end_block(b);
}

/* ---- the one that is built --------------------------------------------------------- */

/* The stated number, the way it was stated; else the only one that fits; else NULL. */
static const gb_choice *chosen(question *q) {
    const gb_choices *c = &q->choices;
    for (size_t i = 0; i < c->count; i++) {
        const gb_choice *one = &c->list[i];
        bool meant = q->steps->count > 0 && one->layout.evened == q->steps->evened;
        bool alone = q->steps->count == 0 && c->fitting == 1 && one->fits;
        if (meant || alone || c->count == 1)
            return one;
    }
    return NULL;
}

/* What evening would make of it, where that changes anything. */
static void offer_evening(gb_builder *b, question *q) {
    const gb_layout *l = b->about.layout;
    for (size_t i = 0; i < q->choices.count; i++) {
        const gb_choice *c = &q->choices.list[i];
        if (l->evened || !c->layout.evened || c->layout.count != l->count)
            continue;
        const gb_layout *plain = l;
        b->about.layout = &c->layout;
        GB_ADD(b, RUN_EVENED, fine("first", c->layout.first),
               fine("face", c->layout.face), fine("riser", c->layout.riser));
        b->about.layout = plain;
    }
}

static void add_beds(gb_builder *b, const gb_choice *c) {
    if (!c->beds_known || isnan(c->beds.least.m))
        return;
    GB_ADD(b, RUN_BEDS, tape("least", c->beds.least), tape("most", c->beds.most));
    if (c->beds.build_up > 0)
        GB_ADD(b, RUN_BUILD_UP, number("n", c->beds.build_up));
}

static void add_chosen(gb_builder *b, question *q, const gb_choice *c) {
    speak_of(b, c);
    GB_ADD(b, CHOSEN_TITLE, count_of(c), number("treads", c->layout.treads));
    gb_add_faces(b);
    gb_add_risers(b);
    offer_evening(b, q);
    gb_add_order(b);
    add_beds(b, c);
    gb_end_block(b);
    add_codes(b);
    gb_add_pole(b);
    gb_add_section(b);
}

static void add_none(gb_builder *b, const gb_steps *s) {
    if (s->build == GB_SOLID_STEPS)
        GB_ADD(b, NO_STONES, tape("stone", s->stone));
    else
        GB_ADD(b, NO_CHOICES, tape("least", s->least_riser), tape("most", s->most_riser));
    gb_end_block(b);
}

static void add_question(gb_builder *b, question *q) {
    b->about.steps = q->steps;
    b->about.run = q->piece == NULL ? NULL : q->piece->name;
    add_asked(b, q);
    if (q->choices.count == 0) {
        add_none(b, q->steps);
        return;
    }
    add_choices(b, q);
    add_verdicts(b, q);
    if (q->choices.fitting == 0)
        add_advice(b, q);
    const gb_choice *c = chosen(q);
    if (c != NULL) {
        add_chosen(b, q, c);
        return;
    }
    GB_ADD_BARE(b, CHOOSE);
    gb_end_block(b);
}

gb_status gb_steps_sheet(const gb_steps_question *questions, size_t count, gb_style style,
                         gb_arena *arena, gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    GB_ADD_BARE(&b, STEPS_TITLE);
    const gb_plan *plan = count > 0 ? questions[0].plan : NULL;
    if (plan != NULL) {
        GB_ADD(&b, SITE, gb_txt("name", plan->job->site.name));
        GB_ADD(&b, PLAN, gb_number_fig(&b, "number", plan->digest));
    }
    for (size_t i = 0; i < count; i++)
        add_question(&b, &questions[i]);
    GB_ADD_BARE(&b, STEPS_CARE);
    gb_end_block(&b);
    return gb_finish_sheet(&b, "steps", sheet);
}
