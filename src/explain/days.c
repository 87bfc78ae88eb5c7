#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>

/* The days of a plan: clocks are seconds since the midnight of their day. */

static const double DAY_S = 24 * 3600.0;

static const gb_crew *crew_of(const gb_about *a) {
    return &a->plan->job->crew;
}

/* ---- the hours --------------------------------------------------------------------- */

const gb_why *gb_why_day_start(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "start", NULL, GB_DURATION, &crew_of(a)->start.s, NULL);
}

const gb_why *gb_why_day_finish(gb_explainer *x, const gb_about *a) {
    const gb_crew *c = crew_of(a);
    double end = gb_day_end(c).s;
    if (isnan(c->finish.s))
        return GB_WHY(
            x, "finish", GB_DURATION, end, "start + usual",
            GB_INPUTS(gb_why_day_start(x, a), gb_fact(x, "usual", GB_DURATION, 8 * 3600.0,
                                                      N_("a day: common practice"))));
    const gb_why *stated = gb_stated(x, "finish", NULL, GB_DURATION, &c->finish.s, NULL);
    if (c->finish.s > c->start.s)
        return stated;
    return GB_WHY(x, "finish", GB_DURATION, end, "finish + day",
                  GB_INPUTS(stated, gb_fact(x, "day", GB_DURATION, DAY_S,
                                            N_("it ends on the next one"))));
}

static const gb_why *minutes(gb_explainer *x, const char *name, const gb_duration *stated,
                             gb_duration used) {
    if (stated->s > 0)
        return gb_stated(x, name, NULL, GB_DURATION, &stated->s, NULL);
    return gb_fact(x, name, GB_DURATION, used.s, N_("usual: common practice"));
}

const gb_why *gb_why_mixing_time(gb_explainer *x, const gb_about *a) {
    return minutes(x, "mixing", &crew_of(a)->mixing, gb_mixing_time(crew_of(a)));
}

const gb_why *gb_why_potting_time(gb_explainer *x, const gb_about *a) {
    return minutes(x, "potting", &crew_of(a)->potting, gb_potting_time(crew_of(a)));
}

const gb_why *gb_why_cleaning_time(gb_explainer *x, const gb_about *a) {
    return minutes(x, "cleaning", &crew_of(a)->cleaning, gb_cleaning_time(crew_of(a)));
}

const gb_why *gb_why_day_last(gb_explainer *x, const gb_about *a) {
    const gb_hours_of_day *h = &a->table->hours;
    double last = h->windows[h->count - 1].to;
    if (fabs(last - (h->finish - gb_cleaning_time(crew_of(a)).s)) > 1)
        return gb_fact(x, "last", GB_DURATION, last, N_("the last break begins"));
    return GB_WHY(x, "last", GB_DURATION, last, "finish - cleaning",
                  GB_INPUTS(gb_why_day_finish(x, a), gb_why_cleaning_time(x, a)));
}

/* The break behind a window of the day. */
static const gb_why *break_clock(gb_explainer *x, const gb_about *a, bool end) {
    const gb_crew *c = crew_of(a);
    const gb_hours_of_day *h = &a->table->hours;
    double at = end ? h->windows[a->number + 1].from : h->windows[a->number].to;
    for (size_t i = 0; i < c->break_count; i++) {
        const double *clock = end ? &c->breaks[i].to.s : &c->breaks[i].from.s;
        if (fabs(*clock - at) < 1)
            return gb_stated(x, end ? "to" : "from", NULL, GB_DURATION, clock, NULL);
    }
    return gb_fact(x, end ? "to" : "from", GB_DURATION, at,
                   N_("a break of the job, after midnight"));
}

const gb_why *gb_why_break_begin(gb_explainer *x, const gb_about *a) {
    return break_clock(x, a, false);
}

const gb_why *gb_why_break_end(gb_explainer *x, const gb_about *a) {
    return break_clock(x, a, true);
}

/* ---- loads ------------------------------------------------------------------------- */

/* As the clock of the day shows it on which the load goes in. */
static double clock_of(const gb_about *a, double at) {
    return at - (double)gb_day_of(&a->table->hours, a->load->in) * DAY_S;
}

static const gb_why *begins(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "begin", GB_DURATION, clock_of(a, a->load->from),
                   N_("when the crew is free for it, and all of it is placed before a "
                      "break that it may not wait through, the end of the day and its "
                      "own end of life"));
}

const gb_why *gb_why_load_begin(gb_explainer *x, const gb_about *a) {
    return begins(x, a);
}

const gb_why *gb_why_load_in(gb_explainer *x, const gb_about *a) {
    const gb_load *l = a->load;
    if (l->pot != NULL)
        return GB_WHY(x, "in", GB_DURATION, clock_of(a, l->in), "end - covering",
                      GB_INPUTS(gb_why_load_end(x, a), gb_why_covering(x, a)));
    return GB_WHY(x, "in", GB_DURATION, clock_of(a, l->in), "begin - mixing",
                  GB_INPUTS(begins(x, a), gb_why_wet_mixing(x, a)));
}

const gb_why *gb_why_load_day(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "day", GB_PLAIN,
                   (double)(gb_day_of(&a->table->hours, a->load->in) + 1),
                   N_("of first water; the work begins on day 1"));
}

const gb_why *gb_why_load_dead(gb_explainer *x, const gb_about *a) {
    bool heat = a->mix->life.s != a->mix->need.mix->life.s;
    return GB_WHY(x, "dead", GB_DURATION, clock_of(a, a->load->dead),
                  heat ? "in + life_in_heat" : "in + life",
                  GB_INPUTS(gb_why_load_in(x, a), gb_why_life(x, a)));
}

/* How long the pot's part of the stone takes. */
static const gb_why *setting(gb_explainer *x, const gb_about *a, const char *name,
                             double seconds) {
    const gb_stretch *s = &a->load->covers;
    const gb_piece *piece = s->take->piece;
    return GB_WHY(x, name, GB_DURATION, seconds, "part * bedded / pace",
                  GB_INPUTS(gb_fact(x, "part", GB_PLAIN, s->to - s->from,
                                    N_("of a piece, or so many of them, for each pot")),
                            gb_why_bedded(x, piece),
                            gb_why_area_pace(x, a->plan->job, GB_SLURRY)),
                  .of = piece->name);
}

const gb_why *gb_why_covering(gb_explainer *x, const gb_about *a) {
    const gb_stretch *s = &a->load->covers;
    double part = s->to - s->from;
    double covering = a->load->to - a->load->in;
    double all = part * s->take->area.m2 / a->plan->rates[GB_SLURRY].m2_s;
    if (fabs(all - covering) < 1)
        return setting(x, a, "covering", covering);
    bool heat = a->mix->life.s != a->mix->need.mix->life.s;
    return GB_WHY(
        x, "covering", GB_DURATION, covering,
        heat ? "setting - setting / larger(stones, 1) + life_in_heat / 2"
             : "setting - setting / larger(stones, 1) + life / 2",
        GB_INPUTS(setting(x, a, "setting", all),
                  gb_fact(x, "stones", GB_PLAIN, part, N_("that the pot is for")),
                  gb_why_life(x, a)),
        .source = N_("the back is brushed last of all, at half the life of the pot: "
                     "common practice"));
}

const gb_why *gb_why_load_end(gb_explainer *x, const gb_about *a) {
    const gb_load *l = a->load;
    if (l->pot != NULL)
        return gb_fact(x, "end", GB_DURATION, clock_of(a, l->to),
                       N_("when its stone is set: the bed of it is laid first"));
    return GB_WHY(x, "end", GB_DURATION, clock_of(a, l->to), "begin + placed",
                  GB_INPUTS(begins(x, a),
                            gb_fact(x, "placed", GB_DURATION, l->to - l->from,
                                    N_("what it covers at the stated pace, breaks and "
                                       "whole treads counted in"))));
}

const gb_why *gb_why_load_cut(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "cut", GB_VOLUME, a->load->cut.m3,
                   N_("what is left of the batch behind its last whole tread or part of "
                      "a landing"));
}

const gb_why *gb_why_extra_bags(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "bags", GB_PLAIN, a->load->extra,
                   N_("for what was thrown away and did not go into the waste of other "
                      "batches"));
}

const gb_why *gb_why_smaller_bags(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "bags", GB_PLAIN, a->table->smaller.bags,
                   N_("the largest batch with which this stage fits, found by trying"));
}

const gb_why *gb_why_smaller_usable(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "usable", GB_VOLUME, a->table->smaller.usable.m3,
                   N_("what so many bags make, up to the next 0.01 ft3 or 0.1 L"));
}

/* ---- waiting ----------------------------------------------------------------------- */

static const gb_why *hold_least(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_mix_time(x, "hold", &m, &a->work->hold->least.s);
}

const gb_why *gb_why_wait_least(gb_explainer *x, const gb_about *a) {
    if (a->work->hold != NULL)
        return hold_least(x, a);
    return gb_fact(x, "hold", GB_DURATION, gb_usual_hold(a->work->stage).s,
                   N_("joints 36 h after their bed, cores 24 h after their block, slabs "
                      "24 h after their footing, where the mix states no hold: common "
                      "practice"));
}

/* Of the stage that waits; the moment in seconds from the midnight before day 1. */
static const gb_why *not_before(gb_explainer *x, const gb_about *a) {
    const gb_stage_plan *s = a->work;
    const gb_why *least = gb_why_wait_least(x, a);
    double ready = s->not_before - (least == NULL ? 0 : least->value);
    return GB_WHY(x, "not_before", GB_DURATION, s->not_before, "ready + hold",
                  GB_INPUTS(gb_fact(x, "ready", GB_DURATION, ready,
                                    N_("when the last of it is placed, from the "
                                       "midnight before day 1")),
                            least));
}

const gb_why *gb_why_wait_day(gb_explainer *x, const gb_about *a) {
    size_t day = gb_day_of(&a->table->hours, a->work->not_before);
    return GB_WHY(x, "day", GB_PLAIN, (double)(day + 1),
                  "down((not_before - start) / day_long, 1) + 1",
                  GB_INPUTS(not_before(x, a), gb_why_day_start(x, a),
                            gb_fact(x, "day_long", GB_DURATION, DAY_S, N_("a day"))));
}

const gb_why *gb_why_wait_clock(gb_explainer *x, const gb_about *a) {
    double at = a->work->not_before;
    double day = (double)gb_day_of(&a->table->hours, at);
    return GB_WHY(x, "clock", GB_DURATION, at - day * DAY_S,
                  "not_before - (day - 1) * day_long",
                  GB_INPUTS(not_before(x, a), gb_why_wait_day(x, a),
                            gb_fact(x, "day_long", GB_DURATION, DAY_S, N_("a day"))));
}

/* ---- labour ------------------------------------------------------------------------ */

typedef const gb_why *of_work(gb_explainer *x, const gb_about *a, const gb_stage_plan *s);

static const gb_why *mixing_of(gb_explainer *x, const gb_about *a,
                               const gb_stage_plan *s) {
    return GB_WHY(x, "mixing_labour", GB_DURATION, s->labour.mixing, "batches * mixing",
                  GB_INPUTS(gb_fact(x, "batches", GB_PLAIN, (double)s->batches,
                                    N_("of the stage, as the days above list them")),
                            gb_why_mixing_time(x, a)));
}

static const gb_why *potting_of(gb_explainer *x, const gb_about *a,
                                const gb_stage_plan *s) {
    return GB_WHY(x, "potting_labour", GB_DURATION, s->labour.potting, "pots * potting",
                  GB_INPUTS(gb_fact(x, "pots", GB_PLAIN, (double)s->pots,
                                    N_("of the stage, as the days above list them")),
                            gb_why_potting_time(x, a)));
}

static const gb_why *carrying_of(gb_explainer *x, const gb_about *a,
                                 const gb_stage_plan *s) {
    const gb_crew *c = crew_of(a);
    return GB_WHY(
        x, "carrying_labour", GB_DURATION, s->labour.carrying,
        "up(wet / load, 1) * carrying",
        GB_INPUTS(gb_fact(x, "wet", GB_MASS, s->wet.kg,
                          N_("of all batches and pots of the stage, with their water")),
                  gb_stated(x, "load", NULL, GB_MASS, &c->load.kg, NULL),
                  gb_stated(x, "carrying", NULL, GB_DURATION, &c->carrying.s, NULL)));
}

const gb_why *gb_why_hands(gb_explainer *x, const gb_about *a) {
    return gb_stated_count(x, "hands", NULL, &crew_of(a)->hands);
}

static const gb_why *setting_of(gb_explainer *x, const gb_about *a,
                                const gb_stage_plan *s) {
    return GB_WHY(x, "setting_labour", GB_DURATION, s->labour.setting, "placing * hands",
                  GB_INPUTS(gb_fact(x, "placing", GB_DURATION, s->time,
                                    N_("all of the stage at the stated pace, without "
                                       "breaks")),
                            gb_why_hands(x, a)));
}

/* Of the stage that a row is about, else of all of them. */
static const gb_why *labour(gb_explainer *x, const gb_about *a, const char *name,
                            of_work *one) {
    const gb_why *all[GB_STAGES];
    size_t n = 0;
    double sum = 0;
    if (a->work != NULL)
        return one(x, a, a->work);
    for (size_t i = 0; i < a->table->stage_count; i++) {
        if (a->table->stages[i].unplanned != GB_PLANNED)
            continue;
        all[n] = one(x, a, &a->table->stages[i]);
        sum += all[n] == NULL ? 0 : all[n]->value;
        n++;
    }
    return GB_WHY(x, name, GB_DURATION, sum, "sum()", .inputs = all, .input_count = n);
}

const gb_why *gb_why_labour_mixing(gb_explainer *x, const gb_about *a) {
    return labour(x, a, "mixing_labour", mixing_of);
}
const gb_why *gb_why_labour_potting(gb_explainer *x, const gb_about *a) {
    return labour(x, a, "potting_labour", potting_of);
}
const gb_why *gb_why_labour_carrying(gb_explainer *x, const gb_about *a) {
    return labour(x, a, "carrying_labour", carrying_of);
}
const gb_why *gb_why_labour_setting(gb_explainer *x, const gb_about *a) {
    return labour(x, a, "setting_labour", setting_of);
}

const gb_why *gb_why_cleanings(gb_explainer *x, const gb_about *a) {
    return gb_fact(
        x, "cleanings", GB_PLAIN, (double)a->table->cleanings,
        N_("at the end of each day, and before another mix in the same mixer"));
}

const gb_why *gb_why_labour_cleaning(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "cleaning_labour", GB_DURATION,
                  (double)a->table->cleanings * crew_of(a)->cleaning.s,
                  "cleanings * cleaning",
                  GB_INPUTS(gb_why_cleanings(x, a), gb_why_cleaning_time(x, a)));
}

/* ---- water ------------------------------------------------------------------------- */

static const gb_why *water_rate(gb_explainer *x, const char *name, int unit,
                                const double *stated, double used, const char *source) {
    return *stated > 0 ? gb_stated(x, name, NULL, unit, stated, NULL)
                       : gb_fact(x, name, unit, used, source);
}

static const gb_why *as_mass(gb_explainer *x, const gb_why *volume) {
    if (volume == NULL)
        return NULL;
    return GB_WHY(x, "water", GB_MASS, volume->value * GB_WATER_KG_M3,
                  "volume * water_density",
                  GB_INPUTS(GB_WHY(x, "volume", GB_VOLUME, volume->value, volume->name,
                                   GB_INPUTS(volume)),
                            gb_water_density(x)));
}

static const gb_why *cleaning_water(gb_explainer *x, const gb_about *a) {
    const gb_site_water *stated = &a->plan->job->water;
    gb_site_water w = gb_water_rates(stated);
    return GB_WHY(x, "cleaning_water", GB_VOLUME,
                  (double)a->table->cleanings * w.cleaning.m3, "cleanings * each_time",
                  GB_INPUTS(gb_why_cleanings(x, a),
                            water_rate(x, "each_time", GB_VOLUME, &stated->cleaning.m3,
                                       w.cleaning.m3, N_("5 gal: common practice"))));
}

const gb_why *gb_why_people(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "people", GB_PLAIN, (double)(gb_hands_of(crew_of(a)) + 1),
                  "hands + 1", GB_INPUTS(gb_why_hands(x, a)),
                  .source = N_("those who set, and who mixes"));
}

const gb_why *gb_why_days_worked(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "days", GB_PLAIN, (double)a->table->days_worked,
                   N_("with a batch or a pot, as listed above"));
}

static const gb_why *rinsing_water(gb_explainer *x, const gb_about *a) {
    const gb_site_water *stated = &a->plan->job->water;
    gb_site_water w = gb_water_rates(stated);
    double people = (double)(gb_hands_of(crew_of(a)) + 1);
    return GB_WHY(
        x, "rinsing_water", GB_VOLUME,
        people * (double)a->table->days_worked * w.rinsing.m3, "people * days * a_day",
        GB_INPUTS(gb_why_people(x, a), gb_why_days_worked(x, a),
                  water_rate(x, "a_day", GB_VOLUME, &stated->rinsing.m3, w.rinsing.m3,
                             N_("7 gal, of 5 to 7: Center for Construction Research and "
                                "Training, second hand"))));
}

const gb_why *gb_why_slab_area(gb_explainer *x, const gb_about *a) {
    const gb_plan *plan = a->plan;
    const gb_why **all =
        gb_arena_take(x->arena, plan->take_count + 1, sizeof(const gb_why *));
    size_t n = 0;
    double sum = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < plan->take_count; i++) {
        const gb_take *t = &plan->takes[i];
        if (t->layer->kind != GB_SLAB || !(t->area.m2 > 0))
            continue;
        all[n] = GB_WHY(x, "slab", GB_AREA, t->units * t->area.m2, "count * bedded",
                        GB_INPUTS(gb_why_count(x, t->piece), gb_why_bedded(x, t->piece)),
                        .of = t->piece->name);
        sum += all[n] == NULL ? 0 : all[n]->value;
        n++;
    }
    return GB_WHY(x, "slabs", GB_AREA, sum, "sum()", .inputs = all, .input_count = n);
}

const gb_why *gb_why_wet_time(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "wet", GB_DURATION, gb_wet_curing().s,
                   N_("UFGS 03301A for cement type I; ACI 308R, from memory"));
}

static const gb_why *curing_water(gb_explainer *x, const gb_about *a) {
    const gb_site_water *stated = &a->plan->job->water;
    gb_site_water w = gb_water_rates(stated);
    gb_site_needs n = gb_water_of_site(a->plan, a->table);
    return GB_WHY(x, "curing_water", GB_VOLUME, n.curing.m3,
                  "slabs * a_day * wet / day_long",
                  GB_INPUTS(gb_why_slab_area(x, a),
                            water_rate(x, "a_day", GB_LENGTH, &stated->curing.m,
                                       w.curing.m, N_("4 mm: common practice")),
                            gb_why_wet_time(x, a),
                            gb_fact(x, "day_long", GB_DURATION, DAY_S, N_("a day"))));
}

static const gb_why *mixing_water(gb_explainer *x, const gb_about *a) {
    const gb_why *all = gb_why_total_water(x, a);
    if (all == NULL)
        return NULL;
    return GB_WHY(
        x, "mixing_water", GB_VOLUME, all->value / GB_WATER_KG_M3, "mass / water_density",
        GB_INPUTS(GB_WHY(x, "mass", GB_MASS, all->value, all->name, GB_INPUTS(all)),
                  gb_water_density(x)));
}

const gb_why *gb_why_water_mixing(gb_explainer *x, const gb_about *a) {
    return as_mass(x, mixing_water(x, a));
}
const gb_why *gb_why_water_cleaning(gb_explainer *x, const gb_about *a) {
    return as_mass(x, cleaning_water(x, a));
}
const gb_why *gb_why_water_rinsing(gb_explainer *x, const gb_about *a) {
    return as_mass(x, rinsing_water(x, a));
}
const gb_why *gb_why_water_curing(gb_explainer *x, const gb_about *a) {
    return as_mass(x, curing_water(x, a));
}
const gb_why *gb_why_water_of_site(gb_explainer *x, const gb_about *a) {
    gb_site_needs n = gb_water_of_site(a->plan, a->table);
    const gb_why *all[4] = {mixing_water(x, a), cleaning_water(x, a), rinsing_water(x, a),
                            NULL};
    size_t count = 3;
    if (n.curing.m3 > 0)
        all[count++] = curing_water(x, a);
    return as_mass(x, GB_WHY(x, "site_water", GB_VOLUME, n.sum.m3, "sum()", .inputs = all,
                             .input_count = count));
}
