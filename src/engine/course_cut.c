#include "engine/course.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

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

/* Adds one piece after the other of a stretch to the use of a batch. */
static void cut_stretch(gb_course *c, gb_use *u, const gb_stretch *stretch,
                        const gb_pot *pot) {
    const gb_take *t = stretch->take;
    double cell = pot == NULL ? stretch->to - stretch->from : pot->pieces;
    double at = stretch->from;
    while (gb_under(at, stretch->to)) {
        double begins = pot == NULL ? at : cell * gb_round(at / cell, 1, GB_DOWN);
        double ends = pot == NULL ? stretch->to : gb_smaller(begins + cell, t->units);
        double to = gb_smaller(ends, stretch->to);
        gb_slot *last = c->slot_count == 0 ? NULL : &c->slots[c->slot_count - 1];
        bool begun = last != NULL && last->take == t && gb_under(at, last->covers.to);
        if (!begun) {
            add_slot(c, t, pot, begins, ends);
            last = &c->slots[c->slot_count - 1];
        }
        double each = last->placing / (ends - begins);
        if (u->last == SIZE_MAX) {
            u->first = c->slot_count - 1;
            u->from = (at - begins) * each;
        }
        u->last = c->slot_count - 1;
        u->to = (to - begins) * each;
        at = to;
    }
}

size_t gb_cells_of(const gb_take *take, const gb_pot *pot) {
    size_t cells = 1;
    if (pot != NULL && gb_count_up(take->units, pot->pieces, &cells) != GB_OK)
        cells = 1;
    return cells + 1;
}

/* The slots of one stage of a mix, and which of them each batch goes into. */
gb_status gb_cut_batches(gb_course *c, const gb_stage_batches *stage, gb_arena *arena) {
    double waste = c->mix->need.waste.of_one;
    c->spare.m3 = stage->gross.m3 * waste / (1.0 + waste);
    const gb_batch *batches = &c->mix->batching.batches[stage->first];
    size_t cursor = 0;
    size_t room = 0;
    for (size_t i = 0; i < stage->take_count; i++) {
        const gb_take *t = c->mix->need.takes[stage->first_take + i];
        room += gb_cells_of(t, pot_for(c, t, &cursor));
    }
    for (size_t i = 0; i < stage->count; i++)
        room += batches[i].stretch_count;
    c->slots = gb_arena_take(arena, room, sizeof *c->slots);
    c->uses = gb_arena_take(arena, stage->count, sizeof *c->uses);
    if (c->slots == NULL || c->uses == NULL)
        return GB_NO_MEMORY;
    cursor = 0;
    for (size_t i = 0; i < stage->count; i++) {
        gb_use *u = &c->uses[c->use_count++];
        *u = (gb_use){.last = SIZE_MAX};
        for (size_t k = 0; k < batches[i].stretch_count; k++) {
            const gb_stretch *s = &batches[i].stretches[k];
            cut_stretch(c, u, s, pot_for(c, s->take, &cursor));
        }
        if (u->last == SIZE_MAX)
            c->use_count--; /* a hair more than the batches before it hold */
    }
    return GB_OK;
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
