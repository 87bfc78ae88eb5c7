#include "engine/course.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

static const double EIGHTH = 0.125;
static const double NOTHING = 1e-9; /* of a volume: sums of parts are not exact */
enum { MOST_SPLITS = 4 };

/* ---- which pot --------------------------------------------------------------------- */

const gb_pot *gb_pot_to_use(const gb_mix_plan *slurry, const gb_take *take,
                            size_t *cursor) {
    const gb_pot *best = NULL;
    size_t start = *cursor;
    for (size_t tried = 0; tried < slurry->pot_count; tried++) {
        size_t i = (start + tried) % slurry->pot_count;
        const gb_pot *p = &slurry->pots[i];
        if (p->take != take && best != NULL)
            break; /* those of a take stand together, the smaller ones first */
        if (p->take != take)
            continue;
        if (best == NULL)
            *cursor = i; /* the first one of this take */
        if (best == NULL || p->fits_life)
            best = p;
    }
    return best;
}

static const gb_mix_plan *plan_of(const gb_plan *plan, const gb_take *take) {
    for (size_t i = 0; i < plan->mix_count; i++)
        if (strcmp(plan->mixes[i].need.mix->id, take->layer->mix.text) == 0)
            return &plan->mixes[i];
    return NULL;
}

/* The layer of that kind in the same piece, whose takes stand beside each other. */
const gb_take *gb_beside(const gb_plan *plan, const gb_take *take, gb_layer_kind kind) {
    const gb_take *end = plan->takes + plan->take_count;
    while (take > plan->takes && take[-1].piece == take->piece)
        take--;
    for (const gb_piece *piece = take->piece; take < end && take->piece == piece; take++)
        if (take->layer->kind == kind)
            return take;
    return NULL;
}

/* The pot that coats what a bed carries; NULL without a slurry. */
static const gb_pot *pot_for(gb_course *c, const gb_take *bed, size_t *cursor) {
    const gb_take *slurry =
        bed->layer->kind == GB_BED ? gb_beside(c->plan, bed, GB_SLURRY) : NULL;
    const gb_mix_plan *mix = slurry == NULL ? NULL : plan_of(c->plan, slurry);
    if (mix == NULL || !mix->is_slurry)
        return NULL;
    c->slurry = mix;
    return gb_pot_to_use(mix, slurry, cursor);
}

/* ---- slots ------------------------------------------------------------------------- */

/* Slurry that is placed at the bed's pace is in the bed's time already. */
static double coating_time(const gb_course *c, const gb_pot *pot, double pieces) {
    const gb_crew *crew = &c->plan->job->crew;
    bool shared = gb_pace_of(crew, GB_SLURRY) == gb_pace_of(crew, GB_BED);
    if (shared && c->mix != NULL)
        return 0;
    return pieces * pot->take->area.m2 / c->plan->rates[GB_SLURRY].m2_s;
}

/* A slot that covers so much; of a slurry alone there is nothing to place. */
static void add_slot(gb_course *c, const gb_take *take, const gb_pot *pot, double from,
                     double to) {
    gb_slot *s = &c->slots[c->slot_count++];
    *s = (gb_slot){.take = take, .pot = pot, .covers = {take, from, to}};
    if (c->mix != NULL)
        s->placing = gb_time_of(take, c->mix->need.waste, c->plan->rates, to - from).s;
    if (pot != NULL)
        s->coating = coating_time(c, pot, to - from);
}

/* Adds one piece after the other of a stretch. */
static void cut_stretch(gb_course *c, const gb_stretch *stretch, const gb_pot *pot) {
    const gb_take *t = stretch->take;
    double cell = pot == NULL ? stretch->to - stretch->from : pot->pieces;
    double at = stretch->from;
    while (gb_under(at, stretch->to)) {
        double begins = pot == NULL ? at : cell * gb_round(at / cell, 1, GB_DOWN);
        double ends = pot == NULL ? stretch->to : gb_smaller(begins + cell, t->units);
        gb_slot *last = c->slot_count == 0 ? NULL : &c->slots[c->slot_count - 1];
        bool begun = last != NULL && last->take == t && gb_under(at, last->covers.to);
        if (!begun)
            add_slot(c, t, pot, begins, ends);
        at = gb_smaller(ends, stretch->to);
    }
}

size_t gb_cells_of(const gb_take *take, const gb_pot *pot) {
    size_t cells = 1;
    if (pot != NULL && gb_count_up(take->units, pot->pieces, &cells) != GB_OK)
        cells = 1;
    return cells + 1;
}

size_t gb_most_extra(size_t batches) {
    return batches / 4 + 4;
}

static gb_status make_room(gb_course *c, const gb_stage_batches *stage, gb_arena *arena) {
    const gb_batch *batches = &c->mix->batching.batches[stage->first];
    size_t cursor = 0;
    size_t room = 0;
    for (size_t i = 0; i < stage->take_count; i++) {
        const gb_take *t = c->mix->need.takes[stage->first_take + i];
        room += gb_cells_of(t, pot_for(c, t, &cursor));
    }
    c->use_room = stage->count + gb_most_extra(stage->count);
    for (size_t i = 0; i < stage->count; i++)
        room += batches[i].stretch_count;
    /* What has no pot is split where a batch ends, also when it is tried again. */
    c->slot_room = room + c->use_room * MOST_SPLITS;
    c->slots = gb_arena_take(arena, c->slot_room, sizeof *c->slots);
    c->uses = gb_arena_take(arena, c->use_room, sizeof *c->uses);
    return c->slots == NULL || c->uses == NULL ? GB_NO_MEMORY : GB_OK;
}

gb_status gb_cut_batches(gb_course *c, const gb_stage_batches *stage, gb_arena *arena) {
    const gb_batch *batches = &c->mix->batching.batches[stage->first];
    size_t cursor = 0;
    gb_status status = make_room(c, stage, arena);
    if (status != GB_OK)
        return status;
    for (size_t i = 0; i < stage->count; i++) {
        gb_use *u = &c->uses[c->use_count++];
        *u = (gb_use){.made.m3 = batches[i].bags * c->mix->recipe.yield.m3};
        for (size_t k = 0; k < batches[i].stretch_count; k++) {
            const gb_stretch *s = &batches[i].stretches[k];
            u->net.m3 += (s->to - s->from) * s->take->each.m3;
            cut_stretch(c, s, pot_for(c, s->take, &cursor));
        }
        if (!(u->net.m3 > 0))
            c->use_count--; /* a hair more than the batches before it hold */
    }
    return GB_OK;
}

/* ---- which slots a batch goes into ---------------------------------------------------
 */

gb_volume gb_volume_of(const gb_slot *s) {
    return (gb_volume){(s->covers.to - s->covers.from) * s->take->each.m3};
}

bool gb_leaves_rest(const gb_course *c, const gb_use *u) {
    return gb_under(u->to, c->slots[u->last].placing);
}

/* What it takes of what is owed. */
static void take_owed(gb_course *c, gb_use *u) {
    double waste = c->mix->need.waste.of_one;
    double yield = c->mix->recipe.yield.m3;
    double room = u->made.m3 / (1 + waste / 2) - u->net.m3;
    if (u->bags > 0)
        room = c->mix->batching.most_bags * yield / (1 + waste);
    u->taken.m3 = gb_larger(gb_smaller(room, c->owed.m3), 0);
    c->owed.m3 -= u->taken.m3;
    if (u->bags > 0) {
        bool whole = c->mix->need.mix->part_count == 0 && c->mix->batching.most_bags >= 1;
        double step = whole ? 1.0 : EIGHTH;
        u->bags = /* never 0, which would make it one of the plan's */
            gb_larger(step, gb_round(u->taken.m3 * (1 + waste) / yield, step, GB_UP));
        u->made.m3 = u->bags * yield;
    }
}

/* Splits a slot without a pot, which may be left anywhere, at so many seconds of it. */
static void split(gb_course *c, size_t i, double seconds) {
    for (size_t k = c->slot_count++; k > i + 1; k--)
        c->slots[k] = c->slots[k - 1];
    gb_slot *s = &c->slots[i];
    double part = seconds / s->placing;
    double middle = s->covers.from + part * (s->covers.to - s->covers.from);
    c->slots[i + 1] = *s;
    c->slots[i + 1].covers.from = middle;
    c->slots[i + 1].placing = s->placing - seconds;
    c->slots[i + 1].not_before = 0;
    s->covers.to = middle;
    s->placing = seconds;
}

static void walk(gb_course *c, gb_use *u) {
    double left = u->net.m3 + u->taken.m3;
    double slack = NOTHING * left;
    double begun = u->from;
    size_t i = u->first;
    bool more = true;
    while (more) {
        const gb_slot *s = &c->slots[i];
        double all = gb_volume_of(s).m3;
        double here = all * (1 - begun / s->placing);
        u->last = i;
        u->to = s->placing;
        more = left > here + slack && i + 1 < c->slot_count;
        if (left < here - slack) {
            u->to = begun + left / all * s->placing;
            if (s->pot == NULL && c->slot_count < c->slot_room)
                split(c, i, u->to);
        }
        left -= here;
        begun = 0;
        i++;
    }
}

static bool is_end(const gb_course *c, const gb_use *u) {
    return u->last + 1 == c->slot_count && !gb_leaves_rest(c, u);
}

bool gb_take_slots(gb_course *c, size_t b) {
    gb_use *u = &c->uses[b];
    u->first = 0;
    u->from = 0;
    if (b > 0) {
        const gb_use *before = &c->uses[b - 1];
        bool inside = gb_leaves_rest(c, before);
        u->first = before->last + !inside;
        u->from = inside ? before->to : 0;
    }
    if (u->first == c->slot_count) {
        c->use_count = b;
        return false;
    }
    if (!(u->cut.m3 > 0)) {
        c->owed.m3 += u->taken.m3;
        take_owed(c, u);
    }
    walk(c, u);
    if (b + 1 < c->use_count || is_end(c, u))
        return true;
    bool more = c->owed.m3 > GB_LEAST_OWED_M3 && c->use_count < c->use_room;
    if (more) {
        c->uses[c->use_count++] = (gb_use){.bags = EIGHTH};
        return true;
    }
    u->last = c->slot_count - 1; /* but for rounding it is */
    u->to = c->slots[u->last].placing;
    return true;
}

/* Slurry on pieces that have no bed. */
gb_status gb_cut_slurry(gb_course *c, gb_arena *arena) {
    const gb_need *n = &c->slurry->need;
    size_t cursor = 0;
    size_t room = 1;
    for (size_t i = 0; i < n->take_count; i++)
        if (gb_beside(c->plan, n->takes[i], GB_BED) == NULL)
            room +=
                gb_cells_of(n->takes[i], gb_pot_to_use(c->slurry, n->takes[i], &cursor));
    c->slots = gb_arena_take(arena, room, sizeof *c->slots);
    if (c->slots == NULL)
        return GB_NO_MEMORY;
    for (size_t i = 0; i < n->take_count; i++) {
        const gb_take *t = n->takes[i];
        const gb_pot *pot = gb_pot_to_use(c->slurry, t, &cursor);
        if (pot == NULL || gb_beside(c->plan, t, GB_BED) != NULL)
            continue;
        double at = 0;
        while (gb_under(at, t->units)) {
            double to = gb_smaller(at + pot->pieces, t->units);
            add_slot(c, t, pot, at, to);
            at = to;
        }
    }
    return GB_OK;
}
