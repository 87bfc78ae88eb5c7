#include "engine/course.h"

#include "gaugebox/count.h"

#include <math.h>

/* Where a mix states no hold. */
static const struct {
    gb_stage of, to;
    double hours;
} USUAL_HOLDS[] = {{GB_FOOTING_STAGE, GB_SLAB_STAGE, 24},
                   {GB_BLOCK_STAGE, GB_CORE_STAGE, 24},
                   {GB_SETTING_STAGE, GB_JOINT_STAGE, 36}};
enum { USUAL_COUNT = sizeof USUAL_HOLDS / sizeof USUAL_HOLDS[0] };

gb_duration gb_usual_hold(gb_stage stage) {
    for (size_t i = 0; i < USUAL_COUNT; i++)
        if (USUAL_HOLDS[i].to == stage)
            return (gb_duration){USUAL_HOLDS[i].hours * 3600.0};
    return (gb_duration){0};
}

unsigned gb_kinds_without_pace(const gb_plan *plan) {
    unsigned kinds = 0;
    for (size_t i = 0; i < plan->take_count; i++) {
        const gb_take *t = &plan->takes[i];
        if (isnan(gb_time_of(t, (gb_share){0}, plan->rates, 1).s))
            kinds |= 1u << t->layer->kind;
    }
    return kinds;
}

/* ---- what comes of it -------------------------------------------------------------- */

typedef struct planner {
    const gb_plan *plan;
    gb_arena *arena;
    gb_timetable table;
    gb_load *loads;
    size_t *pots;          /* of each mix so far */
    double free;           /* the crew is */
    double mixer_free;     /* and who mixes */
    const gb_mixer *mixer; /* that was used last, and for what */
    const gb_mix_plan *mix;
    struct {
        double at;
        const gb_mix_plan *mix;
        const gb_hold *hold;
    } waits[GB_STAGES]; /* what each stage waits for */
} planner;

/* What a batch sets, piece after piece. */
static const gb_stretch *stretches_of(planner *p, const gb_course *c, const gb_use *u,
                                      size_t *count) {
    gb_stretch *list = gb_arena_take(p->arena, u->last - u->first + 1, sizeof *list);
    *count = 0;
    for (size_t i = u->first; list != NULL && i <= u->last; i++) {
        const gb_slot *s = &c->slots[i];
        double length = s->covers.to - s->covers.from;
        double skipped = i == u->first ? u->from / s->placing : 0;
        double done = i == u->last ? u->to / s->placing : 1;
        if (*count == 0 || list[*count - 1].take != s->take)
            list[(*count)++] =
                (gb_stretch){s->take, s->covers.from + skipped * length, 0};
        list[*count - 1].to = done < 1 ? s->covers.from + done * length : s->covers.to;
    }
    return list;
}

static gb_status add_batch_load(planner *p, const gb_course *c,
                                const gb_stage_batches *stage, size_t b) {
    const gb_use *u = &c->uses[b];
    double in = u->ready - gb_wet_mixing(c->mix->need.mix).s;
    gb_load *l = &p->loads[p->table.load_count++];
    *l = (gb_load){.mix = c->mix,
                   .number = stage->first + b,
                   .extra = u->bags,
                   .cut = u->cut,
                   .in = in,
                   .from = u->ready,
                   .to = u->done,
                   .dead = in + c->mix->life.s};
    l->stretches = stretches_of(p, c, u, &l->stretch_count);
    return l->stretches == NULL ? GB_NO_MEMORY : GB_OK;
}

static void add_pot_load(planner *p, const gb_course *c, const gb_slot *s) {
    double in = s->to - gb_covering_of(c, s);
    size_t *number = &p->pots[c->slurry - p->plan->mixes];
    p->loads[p->table.load_count++] =
        (gb_load){.mix = c->slurry,
                  .number = (*number)++,
                  .pot = s->pot,
                  .covers = {s->pot->take, s->covers.from, s->covers.to},
                  .in = in,
                  .from = in,
                  .to = s->to,
                  .dead = in + c->slurry->life.s};
}

/* Both lists are in order; a batch comes before the pot of what it begins. */
static gb_status add_loads(planner *p, const gb_course *c, const gb_stage_batches *stage,
                           gb_stage_plan *sp) {
    size_t b = 0;
    gb_status status = GB_OK;
    for (size_t i = 0; i < c->slot_count; i++) {
        const gb_slot *s = &c->slots[i];
        double in = s->to - gb_covering_of(c, s);
        sp->time += gb_work_of(s);
        while (status == GB_OK && b < c->use_count && c->uses[b].ready <= in + GB_SLACK_S)
            status = add_batch_load(p, c, stage, b++);
        if (s->pot == NULL)
            continue;
        add_pot_load(p, c, s);
        sp->pots++;
        sp->wet.kg += s->pot->bags * (s->covers.to - s->covers.from) / s->pot->pieces *
                      gb_wet_mass(&c->slurry->recipe).kg;
    }
    while (status == GB_OK && b < c->use_count)
        status = add_batch_load(p, c, stage, b++);
    return status;
}

static void wait_until(planner *p, gb_stage stage, double until, const gb_mix_plan *mix,
                       const gb_hold *hold) {
    if (until <= p->waits[stage].at)
        return;
    p->waits[stage].at = until;
    p->waits[stage].mix = mix;
    p->waits[stage].hold = hold;
}

/* What comes after a mix in the trade's order waits for its holds. */
static void wait_for(planner *p, const gb_mix_plan *mix, gb_stage stage, double end) {
    const gb_mix *m = mix->need.mix;
    unsigned stated = 0;
    for (size_t i = 0; i < m->hold_count; i++) {
        stated |= m->holds[i].before;
        for (gb_stage q = stage + 1; q < GB_STAGES; q++)
            if (m->holds[i].before >> q & 1)
                wait_until(p, q, end + m->holds[i].least.s, mix, &m->holds[i]);
    }
    for (size_t i = 0; i < USUAL_COUNT; i++)
        if (USUAL_HOLDS[i].of == stage && !(stated >> USUAL_HOLDS[i].to & 1))
            wait_until(p, USUAL_HOLDS[i].to, end + USUAL_HOLDS[i].hours * 3600.0, mix,
                       NULL);
}

/* Another mix in the same mixer, on the same day, finds it cleaned. */
static void change_mixer(planner *p, const gb_mix_plan *mix, double start) {
    if (mix == NULL)
        return;
    const gb_hours_of_day *h = &p->table.hours;
    bool same_day = gb_day_of(h, start) == gb_day_of(h, p->mixer_free);
    if (p->mix != NULL && p->mix != mix && p->mixer == mix->batching.mixer && same_day) {
        p->mixer_free += gb_cleaning_time(&p->plan->job->crew).s;
        p->table.cleanings++;
    }
    p->mix = mix;
    p->mixer = mix->batching.mixer;
}

static void refuse(gb_stage_plan *sp, const gb_course *c, const gb_stage_batches *stage) {
    sp->unplanned = GB_NO_ROOM;
    sp->mix = c->mix != NULL ? c->mix : c->slurry;
    sp->pot = c->mix == NULL;
    sp->number = c->failed + (stage == NULL ? 0 : stage->first);
}

/* One mix of a stage, or its slurry alone. */
static gb_status run_course(planner *p, gb_stage_plan *sp, gb_course *c,
                            const gb_stage_batches *stage) {
    c->start = gb_fit(&p->table.hours, gb_larger(p->free, sp->not_before), 0);
    change_mixer(p, c->mix, c->start);
    c->mixer_free = p->mixer_free;
    gb_status status =
        stage != NULL ? gb_cut_batches(c, stage, p->arena) : gb_cut_slurry(c, p->arena);
    if (status != GB_OK || c->slot_count == 0)
        return status;
    if (!(stage != NULL ? gb_lay_batches(c) : gb_lay_pots(c))) {
        refuse(sp, c, stage);
        return GB_OK;
    }
    status = add_loads(p, c, stage, sp);
    if (status != GB_OK)
        return status;
    if (!(sp->to > 0))
        sp->from = c->slots[0].from;
    p->free = sp->to = c->slots[c->slot_count - 1].to;
    if (c->use_count > 0)
        p->mixer_free = c->uses[c->use_count - 1].ready;
    sp->batches += c->use_count;
    const gb_mix_plan *last = c->mix != NULL ? c->mix : c->slurry;
    wait_for(p, last, sp->stage, sp->to);
    return GB_OK;
}

static const gb_stage_batches *batches_of(const gb_mix_plan *mix, gb_stage stage) {
    for (size_t i = 0; !mix->is_slurry && i < mix->batching.stage_count; i++)
        if (mix->batching.stages[i].stage == stage)
            return &mix->batching.stages[i];
    return NULL;
}

static bool coats_alone(const gb_plan *plan, const gb_mix_plan *mix) {
    for (size_t i = 0; mix->is_slurry && i < mix->need.take_count; i++)
        if (gb_beside(plan, mix->need.takes[i], GB_BED) == NULL)
            return true;
    return false;
}

static gb_status run_mix(planner *p, gb_stage_plan *sp, const gb_mix_plan *mix) {
    const gb_stage_batches *stage = batches_of(mix, sp->stage);
    gb_course c = {.plan = p->plan, .hours = &p->table.hours};
    if (stage != NULL && stage->count == 0) {
        sp->unplanned = GB_NO_BATCH;
        sp->mix = mix;
        return GB_OK;
    }
    if (stage != NULL) {
        c.mix = mix;
        for (size_t k = 0; k < stage->count; k++)
            sp->wet.kg += mix->batching.batches[stage->first + k].bags *
                          gb_wet_mass(&mix->recipe).kg;
        return run_course(p, sp, &c, stage);
    }
    if (sp->stage != GB_SETTING_STAGE || !coats_alone(p->plan, mix))
        return GB_OK;
    c.slurry = mix;
    return run_course(p, sp, &c, NULL);
}

static bool has_work(const gb_plan *plan, gb_stage stage) {
    for (size_t i = 0; i < plan->mix_count; i++)
        if (batches_of(&plan->mixes[i], stage) != NULL ||
            (stage == GB_SETTING_STAGE && coats_alone(plan, &plan->mixes[i])))
            return true;
    return false;
}

/* Seconds of work; NaN where the crew states no rate for it. */
static void add_labour(const gb_crew *crew, gb_stage_plan *sp) {
    size_t loads = 0;
    bool carried =
        crew->carrying.s > 0 && gb_count_up(sp->wet.kg, crew->load.kg, &loads) == GB_OK;
    sp->labour = (gb_labour){
        .mixing = crew->mixing.s > 0 ? (double)sp->batches * crew->mixing.s : GB_NONE,
        .potting = crew->potting.s > 0 ? (double)sp->pots * crew->potting.s : GB_NONE,
        .carrying = carried ? (double)loads * crew->carrying.s : GB_NONE,
        .setting = sp->time * (double)gb_hands_of(crew)};
}

static gb_status run_stage(planner *p, gb_stage stage, bool reached) {
    gb_stage_plan *sp = &p->table.stages[p->table.stage_count++];
    *sp = (gb_stage_plan){.stage = stage,
                          .not_before = p->waits[stage].at,
                          .wait_mix = p->waits[stage].mix,
                          .hold = p->waits[stage].hold};
    if (!reached)
        sp->unplanned = GB_NOT_REACHED;
    gb_status status = GB_OK;
    for (size_t i = 0; i < p->plan->mix_count && sp->unplanned == GB_PLANNED; i++) {
        status = run_mix(p, sp, &p->plan->mixes[i]);
        if (status != GB_OK)
            return status;
    }
    if (sp->unplanned == GB_PLANNED)
        add_labour(&p->plan->job->crew, sp);
    return status;
}

/* Room for every batch and every pot. */
static gb_status make_room(planner *p) {
    size_t room = 1;
    size_t cursor = 0;
    for (size_t i = 0; i < p->plan->mix_count; i++) {
        const gb_mix_plan *m = &p->plan->mixes[i];
        if (!m->is_slurry)
            room += m->batching.batch_count + gb_most_extra(m->batching.batch_count) +
                    GB_STAGES * gb_most_extra(0);
        for (size_t k = 0; m->is_slurry && k < m->need.take_count; k++)
            room += gb_cells_of(m->need.takes[k],
                                gb_pot_to_use(m, m->need.takes[k], &cursor));
    }
    p->loads = gb_arena_take(p->arena, room, sizeof *p->loads);
    p->pots = gb_arena_take(p->arena, p->plan->mix_count + 1, sizeof *p->pots);
    p->table.loads = p->loads;
    return p->loads == NULL || p->pots == NULL ? GB_NO_MEMORY : GB_OK;
}

static void count_days(gb_timetable *t) {
    size_t last = SIZE_MAX;
    for (size_t i = 0; i < t->load_count; i++) {
        size_t day = gb_day_of(&t->hours, t->loads[i].in);
        if (day == last)
            continue;
        last = day;
        t->days = day + 1;
        t->days_worked++;
    }
    t->cleanings += t->days_worked;
}

gb_status gb_plan_days(const gb_plan *plan, gb_arena *arena, gb_timetable *table) {
    planner p = {.plan = plan, .arena = arena};
    if (gb_kinds_without_pace(plan) != 0)
        return GB_NO_PACE;
    gb_status status = gb_find_hours(&plan->job->crew, arena, &p.table.hours);
    if (status == GB_OK)
        status = make_room(&p);
    if (status != GB_OK)
        return status;
    p.free = p.mixer_free = p.table.hours.windows[0].from;
    bool reached = true;
    for (gb_stage stage = GB_FOOTING_STAGE; stage < GB_STAGES; stage++) {
        if (!has_work(plan, stage))
            continue;
        status = run_stage(&p, stage, reached);
        if (status != GB_OK)
            return status;
        reached = p.table.stages[p.table.stage_count - 1].unplanned == GB_PLANNED;
    }
    count_days(&p.table);
    *table = p.table;
    return GB_OK;
}
