#include "engine/course.h"

#include "gaugebox/count.h"

#include <math.h>

/* ---- laying them into the days ----------------------------------------------------- */

double gb_covering_of(const gb_course *c, const gb_slot *s) {
    if (s->coating > 0)
        return s->coating;
    double stones = s->covers.to - s->covers.from;
    if (s->pot == NULL || s->pot->pieces < 1.0)
        return s->placing;
    double one = s->placing / gb_larger(stones, 1.0);
    return s->placing - one + gb_smaller(one, c->slurry->life.s / 2);
}

double gb_work_of(const gb_slot *s) {
    return s->placing + s->coating;
}

/* Lays a slot at `from` or as soon after as it fits; false when it never does. */
static bool lay_slot(gb_course *c, size_t i, double from) {
    gb_slot *s = &c->slots[i];
    s->wait = 0;
    from = gb_larger(from, s->not_before);
    if (s->pot != NULL) {
        s->from = gb_fit(c->hours, from, gb_work_of(s));
        s->to = s->from + gb_work_of(s);
        return !isnan(s->from);
    }
    s->from = gb_fit(c->hours, from, 0);
    s->to = gb_work_until(c->hours, s->from, gb_work_of(s));
    if (!isnan(s->to))
        return true;
    s->from = gb_next_day(c->hours, s->from);
    s->to = gb_work_until(c->hours, s->from, gb_work_of(s));
    return !isnan(s->to);
}

/* When a batch that is needed at `needed` can be ready: mixed in the same window, after
   the one before it is out. */
static double ready_for(const gb_course *c, size_t use_index, double needed) {
    double mixing = gb_mixing_time(&c->plan->job->crew).s;
    double free = use_index == 0 ? c->mixer_free : c->uses[use_index - 1].ready;
    double from = gb_larger(gb_window_from(c->hours, needed), free);
    return gb_larger(needed, from + mixing);
}

/* True when a batch lives until the stones that it begins are covered. */
static bool lives_until(const gb_course *c, const gb_use *u, double end) {
    double in = u->ready - gb_wet_mixing(c->mix->need.mix).s;
    return end <= in + c->mix->life.s + GB_SLACK_S &&
           gb_day_of(c->hours, end - GB_SLACK_S) == gb_day_of(c->hours, in);
}

typedef enum outcome { LAID, AGAIN, AGAIN_BEFORE, NEVER } outcome;

/* The first slot of a batch, so that the batch is ready for it. */
static outcome lay_first(gb_course *c, size_t b) {
    gb_use *u = &c->uses[b];
    gb_slot *s = &c->slots[u->first];
    if (u->from > 0) { /* begun by the batch before, which laid it */
        double needed = s->from + s->wait + u->from;
        u->ready = ready_for(c, b, needed);
        double wait = gb_larger(u->ready - needed, 0);
        bool fits = s->to + wait <= gb_window_to(c->hours, s->from) + GB_SLACK_S;
        for (size_t k = b; fits && k > 0 && c->uses[k - 1].last == u->first; k--)
            fits = s->pot == NULL || lives_until(c, &c->uses[k - 1], s->to + wait);
        if (fits) {
            s->wait += wait;
            s->to += wait;
            return LAID;
        }
        s->not_before = gb_next_window(c->hours, s->from);
        return AGAIN_BEFORE;
    }
    double from = u->first == 0 ? c->start : c->slots[u->first - 1].to;
    for (size_t tried = 0; tried <= 2 * c->hours->count; tried++) {
        if (!lay_slot(c, u->first, from))
            return NEVER;
        u->ready = ready_for(c, b, s->from);
        if (u->ready <= s->from + GB_SLACK_S)
            return LAID;
        from = u->ready;
    }
    return NEVER;
}

/* Whether it does with its slots up to `last`, of which it places seconds up to `to`: the
   next batch may finish that slot, and a stone is set on both. */
static bool is_alive(const gb_course *c, gb_use *u, size_t last, double to) {
    const gb_slot *s = &c->slots[last];
    u->done = s->pot == NULL ? s->to : s->from + s->wait + to;
    return lives_until(c, u, s->to);
}

/* Throws away what a batch has for a slot that it would leave half-way, unless it sets
   nothing else: the next batches owe it, and begin that slot afresh. */
static bool cut_rest(gb_course *c, size_t b) {
    gb_use *u = &c->uses[b];
    gb_slot *left = &c->slots[u->last];
    bool within = left->pot != NULL && u->last > u->first && gb_leaves_rest(c, u) &&
                  (b + 1 < c->use_room);
    if (!within)
        return false;
    double rest = u->to / left->placing * gb_volume_of(left).m3;
    double set = u->net.m3 + u->taken.m3 - rest;
    u->cut.m3 = gb_smaller(rest * (1 + c->mix->need.waste.of_one), u->made.m3 - set);
    u->net.m3 -= rest;
    c->owed.m3 += rest;
    left->not_before = 0;
    u->last--;
    const gb_slot *last = &c->slots[u->last];
    u->to = last->placing;
    u->done = last->from + last->wait + last->placing;
    if (b + 1 == c->use_count)
        c->uses[c->use_count++] = (gb_use){.bags = 1};
    return true;
}

static outcome lay_batch(gb_course *c, size_t b) {
    gb_use *u = &c->uses[b];
    outcome first = lay_first(c, b);
    if (first != LAID)
        return first;
    for (size_t i = u->first + 1; i <= u->last; i++)
        if (!lay_slot(c, i, c->slots[i - 1].to))
            return NEVER;
    if (is_alive(c, u, u->last, u->to))
        return LAID;
    if (u->last > u->first && gb_leaves_rest(c, u) &&
        is_alive(c, u, u->last - 1, c->slots[u->last - 1].placing) && cut_rest(c, b))
        return LAID;
    gb_slot *s = &c->slots[u->first];
    s->not_before = gb_next_window(c->hours, s->from);
    return u->from > 0 ? AGAIN_BEFORE : AGAIN;
}

/* What it took of what is owed, for the batch before is laid again. */
static void give_back(gb_course *c, size_t b) {
    c->owed.m3 += c->uses[b].taken.m3;
    c->uses[b].taken.m3 = 0;
}

/* A batch that does not fit is tried behind the next break; one that finishes what the
   batch before it began takes that one along. Each is tried at all windows of some days.
 */
bool gb_lay_batches(gb_course *c) {
    size_t most = 8 * (c->hours->count + 1);
    for (size_t b = 0; b < c->use_count;) {
        if (!gb_take_slots(c, b))
            break;
        outcome o = lay_batch(c, b);
        c->failed = b;
        if (o == LAID) {
            b++;
            continue;
        }
        if (o == NEVER || ++c->uses[b].tried > most)
            return false;
        if (o == AGAIN_BEFORE && !cut_rest(c, b - 1))
            give_back(c, b--);
    }
    return !(c->owed.m3 > GB_LEAST_OWED_M3);
}

bool gb_lay_pots(gb_course *c) {
    double at = c->start;
    for (size_t i = 0; i < c->slot_count; i++) {
        c->failed = i;
        if (!lay_slot(c, i, at))
            return false;
        at = c->slots[i].to;
    }
    return true;
}
