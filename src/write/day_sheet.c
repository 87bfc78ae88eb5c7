#include "write/batch_rows.h"
#include "write/gauge_rows.h"
#include "write/model.h"

#include <math.h>

/* The day on paper: one block for each day with work, then the labour and the water of
   all of them. */

static const double DAY_S = 24 * 3600.0;

static const gb_timetable *table_of(const gb_builder *b) {
    return b->about.table;
}

/* A moment as the clock of its day shows it; past midnight it stays on that day. */
static gb_figure clock_fig(const gb_builder *b, const char *name, double at,
                           double day_of) {
    double midnight = (double)gb_day_of(&table_of(b)->hours, day_of) * DAY_S;
    return gb_num(name, GB_SHOW_CLOCK, at - midnight);
}

static gb_row stage_row(gb_builder *b, gb_stage stage) {
    static const gb_row_code STAGES[] = {[GB_FOOTING_STAGE] = GB_ROW_STAGE_FOOTING,
                                         [GB_SLAB_STAGE] = GB_ROW_STAGE_SLAB,
                                         [GB_BLOCK_STAGE] = GB_ROW_STAGE_BLOCK,
                                         [GB_CORE_STAGE] = GB_ROW_STAGE_CORE,
                                         [GB_PARGE_STAGE] = GB_ROW_STAGE_PARGE,
                                         [GB_SETTING_STAGE] = GB_ROW_STAGE_SETTING,
                                         [GB_JOINT_STAGE] = GB_ROW_STAGE_JOINTS};
    _Static_assert(sizeof STAGES / sizeof STAGES[0] == GB_STAGES, "a row for each");
    return gb_make_row(b, STAGES[stage], NULL, 0);
}

/* ---- head -------------------------------------------------------------------------- */

/* What stops the work, mix by mix; the batch sheets say the rest. */
static void add_stops(gb_builder *b, const gb_plan *plan) {
    const gb_about before = b->about;
    size_t cautions = 0;
    for (size_t i = 0; i < plan->mix_count; i++) {
        const gb_mix_plan *p = &plan->mixes[i];
        bool named = false;
        for (size_t k = 0; k < p->cautions.count; k++) {
            const gb_cautions one = {&p->cautions.list[k], 1};
            cautions += one.list->severity == GB_CAUTION;
            if (one.list->severity != GB_STOP)
                continue;
            b->about.mix = p;
            if (!named)
                GB_ADD(b, DAY_MIX, gb_words_fig(b, "title", &p->need.mix->title),
                       gb_txt("id", p->need.mix->id));
            named = true;
            gb_add_cautions(b, &one, p->stuff);
        }
    }
    b->about = before;
    if (cautions > 0)
        GB_ADD_BARE(b, DAY_CAUTIONS);
}

static void add_head(gb_builder *b, const gb_plan *plan, const gb_timetable *t) {
    const gb_crew *c = &plan->job->crew;
    const gb_hours_of_day *h = &t->hours;
    GB_ADD_BARE(b, DAY_TITLE);
    GB_ADD(b, SITE, gb_txt("name", plan->job->site.name));
    GB_ADD(b, PLAN, gb_number_fig(b, "number", plan->digest));
    GB_ADD(b, DAY_HOURS, gb_num("start", GB_SHOW_CLOCK, h->start),
           gb_num("finish", GB_SHOW_CLOCK, h->finish),
           gb_num("last", GB_SHOW_CLOCK, h->windows[h->count - 1].to));
    for (size_t i = 0; i + 1 < h->count; i++) {
        b->about.number = i;
        GB_ADD(b, DAY_BREAK, gb_num("begin", GB_SHOW_CLOCK, h->windows[i].to),
               gb_num("end", GB_SHOW_CLOCK, h->windows[i + 1].from));
    }
    GB_ADD(b, DAY_TAKES, gb_num("mixing", GB_SHOW_DURATION, gb_mixing_time(c).s),
           gb_num("potting", GB_SHOW_DURATION, gb_potting_time(c).s),
           gb_num("cleaning", GB_SHOW_DURATION, gb_cleaning_time(c).s));
    GB_ADD_BARE(b, DAY_NOTE);
    add_stops(b, plan);
    if (t->days > 1)
        GB_ADD_BARE(b, DAY_WEATHER);
    gb_end_block(b);
}

/* ---- days -------------------------------------------------------------------------- */

static void add_wait(gb_builder *b, const gb_stage_plan *s) {
    const gb_hours_of_day *h = &table_of(b)->hours;
    if (!(s->not_before > 0))
        return;
    gb_figure stage = gb_row_fig(b, "stage", stage_row(b, s->stage));
    gb_figure day =
        gb_num("day", GB_SHOW_COUNT, (double)(gb_day_of(h, s->not_before) + 1));
    gb_figure clock = clock_fig(b, "clock", s->not_before, s->not_before);
    gb_figure mix = gb_words_fig(b, "mix", &s->wait_mix->need.mix->title);
    if (s->hold == NULL)
        GB_ADD(b, DAY_WAIT_JOINTS, stage, day, clock, mix,
               gb_num("least", GB_SHOW_DURATION, gb_usual_hold(s->stage).s));
    else
        GB_ADD(b, DAY_WAIT, stage, day, clock, mix,
               gb_words_fig(b, "what", &s->hold->what),
               gb_num("least", GB_SHOW_DURATION, s->hold->least.s));
}

/* For programs; people read it above the rows. */
static gb_figure day_fig(const gb_builder *b, const gb_load *l) {
    return gb_num("day", GB_SHOW_COUNT,
                  (double)(gb_day_of(&table_of(b)->hours, l->in) + 1));
}

static void add_batch(gb_builder *b, const gb_load *l) {
    const gb_batching *k = &l->mix->batching;
    gb_batch batch = {.bags = l->extra};
    if (!(l->extra > 0))
        batch = k->batches[l->number];
    batch.stretches = l->stretches;
    batch.stretch_count = l->stretch_count;
    b->about.amount = GB_ONE_BATCH;
    b->about.batch = l->number;
    gb_figure in = clock_fig(b, "in", l->in, l->in);
    gb_figure dead = clock_fig(b, "dead", l->dead, l->in);
    gb_figure n = gb_num("n", GB_SHOW_COUNT, (double)(l->number + 1));
    gb_figure total = gb_num("total", GB_SHOW_COUNT, (double)k->batch_count);
    gb_figure begin = clock_fig(b, "begin", l->from, l->in);
    gb_figure end = clock_fig(b, "end", l->to, l->in);
    gb_figure mix = gb_txt("mix", l->mix->need.mix->id);
    gb_figure bags = gb_bags_fig(b, "bags", batch.bags);
    if (l->extra > 0)
        GB_ADD(b, DAY_EXTRA, day_fig(b, l), mix, in, dead, bags, gb_covers_fig(b, &batch),
               begin, end);
    else
        GB_ADD(b, DAY_BATCH, day_fig(b, l), mix, in, dead, n, total, bags,
               gb_covers_fig(b, &batch), begin, end);
    if (l->cut.m3 > 0)
        GB_ADD(b, DAY_CUT, gb_num("volume", GB_SHOW_VOLUME, l->cut.m3));
}

static void add_pot(gb_builder *b, const gb_load *l) {
    b->about.amount = GB_ONE_POT;
    b->about.pot = l->pot;
    b->about.take = l->pot->take;
    GB_ADD(b, DAY_POT, day_fig(b, l), gb_txt("mix", l->mix->need.mix->id),
           clock_fig(b, "in", l->in, l->in), clock_fig(b, "dead", l->dead, l->in),
           gb_row_fig(b, "covers", gb_cover_row(b, &l->covers)),
           clock_fig(b, "end", l->to, l->in));
}

static void add_mix(gb_builder *b, const gb_mix_plan *p) {
    if (!p->is_slurry && p->batching.mixer->name != NULL)
        GB_ADD(b, DAY_MIX_IN, gb_words_fig(b, "title", &p->need.mix->title),
               gb_txt("id", p->need.mix->id), gb_txt("mixer", p->batching.mixer->name));
    else
        GB_ADD(b, DAY_MIX, gb_words_fig(b, "title", &p->need.mix->title),
               gb_txt("id", p->need.mix->id));
}

static const gb_stage_plan *stage_at(const gb_timetable *t, double at) {
    const gb_stage_plan *found = NULL;
    for (size_t i = 0; i < t->stage_count; i++)
        if (t->stages[i].unplanned == GB_PLANNED && t->stages[i].from <= at + 1)
            found = &t->stages[i];
    return found;
}

/* The mixer is loaded before the crew begins to place: a load belongs to the stage in
   which it is placed. */
static void add_day(gb_builder *b, const gb_timetable *t, size_t *i) {
    size_t day = gb_day_of(&t->hours, t->loads[*i].in);
    const gb_stage_plan *stage = NULL;
    const gb_load *told = NULL; /* whose mix stands above */
    const gb_about before = b->about;
    GB_ADD(b, DAY_NUMBER, gb_num("n", GB_SHOW_COUNT, (double)(day + 1)));
    for (; *i < t->load_count && gb_day_of(&t->hours, t->loads[*i].in) == day; ++*i) {
        const gb_load *l = &t->loads[*i];
        const gb_stage_plan *now = stage_at(t, l->from);
        b->about = before;
        b->about.load = l;
        b->about.mix = l->mix;
        b->about.work = now;
        if (now != stage && now != NULL) {
            GB_ADD(b, DAY_STAGE, gb_row_fig(b, "stage", stage_row(b, now->stage)));
            told = NULL;
        }
        stage = now;
        if (l->pot == NULL && (told == NULL || l->mix != told->mix)) {
            add_mix(b, l->mix);
            told = l;
        }
        if (l->pot == NULL)
            add_batch(b, l);
        else
            add_pot(b, l);
    }
    b->about = before;
    gb_end_block(b);
}

/* What could not be put into any day, and why. */
static void add_unplanned(gb_builder *b, const gb_stage_plan *s) {
    gb_figure stage = gb_row_fig(b, "stage", stage_row(b, s->stage));
    b->about.work = s;
    b->about.mix = s->mix;
    if (s->unplanned == GB_NO_ROOM && s->pot)
        GB_ADD(b, DAY_NO_ROOM_POT, stage,
               gb_words_fig(b, "title", &s->mix->need.mix->title));
    else if (s->unplanned == GB_NO_ROOM)
        GB_ADD(b, DAY_NO_ROOM, stage, gb_words_fig(b, "title", &s->mix->need.mix->title),
               gb_num("n", GB_SHOW_COUNT, (double)(s->number + 1)),
               gb_num("life", GB_SHOW_DURATION, s->mix->life.s));
    else if (s->unplanned == GB_NO_BATCH)
        GB_ADD(b, DAY_NO_BATCH, stage,
               gb_words_fig(b, "title", &s->mix->need.mix->title));
    else
        GB_ADD(b, DAY_NOT_REACHED, stage);
}

/* What would help it. */
static void add_smaller(gb_builder *b, const gb_timetable *t) {
    const gb_smaller_batches *s = &t->smaller;
    gb_figure bags = gb_num("bags", GB_SHOW_RATIO, s->bags);
    gb_figure usable = gb_num("usable", GB_SHOW_VOLUME, s->usable.m3);
    if (s->mixer->name != NULL)
        GB_ADD(b, DAY_SMALLER_IN, bags, usable, gb_txt("mixer", s->mixer->name));
    else
        GB_ADD(b, DAY_SMALLER, bags, usable);
}

static void add_waits(gb_builder *b, const gb_timetable *t) {
    bool any = false;
    for (size_t i = 0; i < t->stage_count; i++)
        any = any || t->stages[i].not_before > 0 || t->stages[i].unplanned != GB_PLANNED;
    if (!any)
        return;
    const gb_about before = b->about;
    GB_ADD_BARE(b, DAY_WAITS_TITLE);
    for (size_t i = 0; i < t->stage_count; i++) {
        b->about.work = &t->stages[i];
        b->about.mix = t->stages[i].wait_mix;
        b->about.hold = t->stages[i].hold;
        add_wait(b, &t->stages[i]);
        if (t->stages[i].unplanned != GB_PLANNED)
            add_unplanned(b, &t->stages[i]);
        if (t->stages[i].unplanned == GB_NO_ROOM && t->smaller.usable.m3 > 0)
            add_smaller(b, t);
    }
    b->about = before;
    GB_ADD(b, HOLD_COLD, gb_num("cold", GB_SHOW_TEMP, gb_cold_for_masonry().c));
    gb_end_block(b);
}

/* ---- labour ------------------------------------------------------------------------ */

static gb_figure time_cell(const char *name, double seconds) {
    return isnan(seconds) ? gb_mark(name, "-") : gb_num(name, GB_SHOW_DURATION, seconds);
}

static void add_sums(gb_labour *sums, const gb_labour *l) {
    sums->mixing += l->mixing;
    sums->potting += l->potting;
    sums->carrying += l->carrying;
    sums->setting += l->setting;
}

static void add_labour(gb_builder *b, const gb_plan *plan, const gb_timetable *t) {
    gb_labour sums = {0};
    const gb_crew *c = &plan->job->crew;
    GB_ADD_BARE(b, LABOUR_TITLE);
    GB_ADD_BARE(b, LABOUR_HEAD);
    for (size_t i = 0; i < t->stage_count; i++) {
        const gb_stage_plan *s = &t->stages[i];
        if (s->unplanned != GB_PLANNED)
            continue;
        const gb_labour *l = &s->labour;
        b->about.work = s;
        add_sums(&sums, l);
        GB_ADD(b, LABOUR_LINE, gb_row_fig(b, "stage", stage_row(b, s->stage)),
               time_cell("mixing", l->mixing), time_cell("potting", l->potting),
               time_cell("carrying", l->carrying), time_cell("setting", l->setting));
    }
    b->about.work = NULL;
    GB_ADD(b, LABOUR_SUM, time_cell("mixing", sums.mixing),
           time_cell("potting", sums.potting), time_cell("carrying", sums.carrying),
           time_cell("setting", sums.setting));
    if (c->cleaning.s > 0)
        GB_ADD(b, LABOUR_CLEANING,
               gb_num("cleaning", GB_SHOW_DURATION, (double)t->cleanings * c->cleaning.s),
               gb_num("times", GB_SHOW_COUNT, (double)t->cleanings));
    GB_ADD(b, LABOUR_NOTE, gb_num("hands", GB_SHOW_COUNT, (double)gb_hands_of(c)));
    gb_end_block(b);
}

/* ---- water ------------------------------------------------------------------------- */

static void add_water(gb_builder *b, const gb_plan *plan, const gb_timetable *t) {
    gb_site_needs n = gb_water_of_site(plan, t);
    double kg = GB_WATER_KG_M3;
    GB_ADD_BARE(b, WATER_TITLE);
    GB_ADD(b, NEEDS_MIXING, gb_num_up("water", GB_SHOW_WATER, n.mixing.m3 * kg));
    GB_ADD(b, NEEDS_CLEANING, gb_num_up("water", GB_SHOW_WATER, n.cleaning.m3 * kg),
           gb_num("times", GB_SHOW_COUNT, (double)t->cleanings));
    GB_ADD(b, NEEDS_RINSING, gb_num_up("water", GB_SHOW_WATER, n.rinsing.m3 * kg),
           gb_num("people", GB_SHOW_COUNT, (double)(gb_hands_of(&plan->job->crew) + 1)),
           gb_num("days", GB_SHOW_COUNT, (double)t->days_worked));
    if (n.curing.m3 > 0)
        GB_ADD(b, NEEDS_CURING, gb_num_up("water", GB_SHOW_WATER, n.curing.m3 * kg),
               gb_num("area", GB_SHOW_AREA, n.slab.m2),
               gb_num("time", GB_SHOW_DURATION, gb_wet_curing().s));
    GB_ADD(b, NEEDS_SUM, gb_num_up("water", GB_SHOW_WATER, n.sum.m3 * kg));
    if (plan->job->site.washout != NULL)
        GB_ADD(b, WASHOUT_AT, gb_txt("where", plan->job->site.washout));
    GB_ADD_BARE(b, WASHOUT);
    gb_end_block(b);
}

gb_status gb_day_sheet(const gb_plan *plan, const gb_timetable *table, gb_style style,
                       gb_arena *arena, gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    b.about = (gb_about){.plan = plan, .table = table};
    add_head(&b, plan, table);
    for (size_t i = 0; i < table->load_count;)
        add_day(&b, table, &i);
    add_waits(&b, table);
    if (table->load_count > 0) {
        add_labour(&b, plan, table);
        add_water(&b, plan, table);
    }
    return gb_finish_sheet(&b, "day", sheet);
}
