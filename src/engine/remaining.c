#include "gaugebox/remaining.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

enum { DAY_S = 24 * 3600 };

double gb_work_of_pieces(const gb_mix_plan *mix, const gb_take *take, double pieces) {
    return pieces * take->each.m3 / mix->recipe.yield.m3;
}

static bool is_of(const gb_log_row *row, const gb_mix_plan *mix) {
    return strcmp(row->mix->id, mix->need.mix->id) == 0;
}

/* A batch that says neither what it set nor that all of it was thrown away. */
static bool is_unfinished(const gb_log_row *row) {
    return row->set_count == 0 && gb_under(row->thrown.of_one, 1.0);
}

/* ---- what the log says ------------------------------------------------------------- */

typedef struct depths {
    double *list;
    size_t count;
} depths;

static void set_pieces(gb_mix_left *m, gb_take_left *t, double pieces) {
    t->done += pieces;
    if (t->take->layer->kind != GB_BED)
        return;
    double area = pieces * t->take->area.m2;
    m->planned.m += area * t->take->depth.m;
    m->set_area.m2 += area;
}

/* What one batch did. A mix that fills two layers of a piece fills the first of them
   first. The search goes on where the last one ended, for batches follow the order of the
   job. */
static double work_of(const gb_log_row *row, gb_mix_left *m, gb_take_left *takes,
                      size_t *cursor) {
    double work = 0;
    for (size_t i = 0; i < row->set_count; i++) {
        double pieces = row->sets[i].count;
        for (size_t tried = 0; tried < m->take_count && pieces > 0; tried++) {
            size_t at = (*cursor + tried) % m->take_count;
            gb_take_left *t = &takes[at];
            double room = t->take->units - t->done;
            if (t->take->piece != row->sets[i].piece || !gb_over(room, 0))
                continue;
            double here = gb_smaller(pieces, room);
            set_pieces(m, t, here);
            work += gb_work_of_pieces(m->mix, t->take, here);
            pieces -= here;
            *cursor = at;
            tried = 0;
        }
    }
    return work;
}

static void add_row(const gb_log_row *row, gb_mix_left *m, gb_take_left *takes,
                    gb_batch_made *made, size_t *count, depths *d, size_t *cursor) {
    m->batches++;
    if (is_unfinished(row)) {
        m->unfinished++;
        return;
    }
    double work = work_of(row, m, takes, cursor);
    m->bags += row->bags;
    m->thrown += row->bags * row->thrown.of_one;
    m->work += work;
    made[(*count)++] = (gb_batch_made){row->bags, work};
    for (size_t i = 0; i < row->depth_count; i++)
        d->list[d->count++] = row->depths_m[i];
}

/* Depth and yield so far: from measured depths the yield, else from the planned yield the
   depth. */
static gb_status find_real(gb_mix_left *m, const depths *d) {
    double kept = m->bags - m->thrown;
    m->in_place.m = m->yield.m3 = GB_NONE;
    m->depth_m = m->depth_sd_m = m->depth_se_m = GB_NONE;
    m->depth_count = d->count;
    m->planned.m = m->set_area.m2 > 0 ? m->planned.m / m->set_area.m2 : GB_NONE;
    if (d->count > 0) {
        gb_status status =
            gb_sample(d->list, d->count, &m->depth_m, &m->depth_sd_m, &m->depth_se_m);
        if (status != GB_OK)
            return status;
    }
    if (!(m->set_area.m2 > 0) || !(kept > 0))
        return GB_OK;
    m->in_place.m = kept * m->mix->recipe.yield.m3 / m->set_area.m2;
    if (d->count > 0)
        m->yield.m3 = m->set_area.m2 * m->depth_m / kept;
    return GB_OK;
}

/* ---- what is left ------------------------------------------------------------------ */

static void find_left(gb_mix_left *m, gb_take_left *takes) {
    for (size_t i = 0; i < m->take_count; i++) {
        gb_take_left *t = &takes[i];
        t->left = gb_larger(t->take->units - t->done, 0);
        t->net.m3 = t->left * t->take->each.m3;
        m->left += gb_work_of_pieces(m->mix, t->take, t->left);
    }
}

/* Some work left of the mix, as the batches so far foretell it. Batches without a scatter
   are too few to be believed: the plan's spread stands in. */
static gb_status foretell(const gb_mix_left *m, const gb_batch_made *made, size_t count,
                          double left, gb_forecast *f, bool *by_plan) {
    const gb_need *n = &m->mix->need;
    gb_share spread = {n->bags_spread / n->bags};
    const gb_progress p = {.batches = made,
                           .batch_count = count,
                           .left = left,
                           .batch = m->batch_bags,
                           .planned_ratio = 1.0 + n->waste.of_one,
                           .planned_spread = spread};
    gb_status status = gb_make_forecast(&p, f);
    if (status != GB_OK)
        return status;
    *by_plan = f->df == 0;
    if (f->df > 0 && !(f->deviation > 0)) {
        f->df = 0;
        f->deviation = f->bags * spread.of_one;
        *by_plan = true;
    }
    return GB_OK;
}

/* ---- bags on hand ------------------------------------------------------------------ */

/* The end of so much work in the order of what is left. */
static gb_reach reach_of(const gb_mix_left *m, double work) {
    for (size_t i = 0; i < m->take_count; i++) {
        const gb_take_left *t = &m->takes[i];
        double all = gb_work_of_pieces(m->mix, t->take, t->left);
        if (!(all > 0))
            continue;
        if (gb_under(work / all, 1.0))
            return (gb_reach){t->take, t->done + t->left * work / all};
        work -= all;
    }
    return (gb_reach){NULL, GB_NONE};
}

/* The most work that the bags on hand are enough for with that chance: what is needed for
   it rises with the work, so that halving finds it. */
static gb_status find_reach(gb_mix_left *m, const gb_batch_made *made, size_t count,
                            gb_share sure) {
    enum { HALVINGS = 50 };
    double low = 0;
    double high = m->left;
    if (!(m->bags_sure > m->on_hand))
        low = m->left;
    for (int i = 0; i < HALVINGS && low < high; i++) {
        double middle = (low + high) / 2.0;
        gb_forecast f;
        bool by_plan = false;
        gb_status status = foretell(m, made, count, middle, &f, &by_plan);
        if (status != GB_OK)
            return status;
        if (gb_bags_at(&f, sure) <= m->on_hand)
            low = middle;
        else
            high = middle;
    }
    m->best = reach_of(m, m->on_hand / m->forecast.ratio);
    m->surely = reach_of(m, low);
    return GB_OK;
}

static double stock_of(const gb_outlook *o, const gb_mix_plan *mix) {
    for (size_t i = 0; i < o->stock_count; i++)
        if (o->stocks[i].mix == NULL ||
            strcmp(o->stocks[i].mix->id, mix->need.mix->id) == 0)
            return o->stocks[i].bags;
    return GB_NONE;
}

/* Days with a batch of the mix; rows come by time. */
static size_t days_of(const gb_log *log, const gb_mix_plan *mix) {
    size_t days = 0;
    int64_t last = 0;
    for (size_t i = 0; i < log->count; i++) {
        int64_t day = log->rows[i].at.s / DAY_S;
        if (!is_of(&log->rows[i], mix) || (days > 0 && day == last))
            continue;
        last = day;
        days++;
    }
    return days;
}

static gb_status find_stock(const gb_log *log, const gb_outlook *o, gb_mix_left *m,
                            const gb_batch_made *made, size_t count) {
    size_t days = days_of(log, m->mix);
    m->bags_a_day = days == 0 ? GB_NONE : m->bags / (double)days;
    m->order_at = days == 0 ? GB_NONE : gb_round(m->bags_a_day * o->lead_days, 1, GB_UP);
    m->on_hand = stock_of(o, m->mix);
    if (isnan(m->on_hand))
        return GB_OK;
    m->order = gb_larger(gb_round(m->bags_sure - m->on_hand, 1, GB_UP), 0);
    return find_reach(m, made, count, o->sure);
}

/* ---- one mix ----------------------------------------------------------------------- */

/* Room for what the log holds of a mix. */
static gb_status make_room(const gb_log *log, const gb_mix_plan *mix, gb_arena *arena,
                           gb_take_left **takes, gb_batch_made **made, depths *d) {
    size_t rows = 1;
    size_t measured = 1;
    for (size_t i = 0; i < log->count; i++)
        if (is_of(&log->rows[i], mix)) {
            rows++;
            measured += log->rows[i].depth_count;
        }
    *takes = gb_arena_take(arena, mix->need.take_count + 1, sizeof **takes);
    *made = gb_arena_take(arena, rows, sizeof **made);
    d->list = gb_arena_take(arena, measured, sizeof *d->list);
    return *takes == NULL || *made == NULL || d->list == NULL ? GB_NO_MEMORY : GB_OK;
}

static double usual_batch(const gb_mix_plan *mix) {
    if (mix->is_slurry)
        return mix->pot_count > 0 ? mix->pots[0].bags : mix->need.bags;
    return mix->batching.batch_count > 0 ? mix->batching.batches[0].bags : 1.0;
}

static gb_status find_mix(const gb_log *log, const gb_outlook *o, const gb_mix_plan *mix,
                          gb_arena *arena, gb_mix_left *m) {
    gb_take_left *takes = NULL;
    gb_batch_made *made = NULL;
    depths d = {.count = 0};
    size_t count = 0;
    size_t cursor = 0;
    gb_status status = make_room(log, mix, arena, &takes, &made, &d);
    if (status != GB_OK)
        return status;
    *m = (gb_mix_left){.mix = mix,
                       .takes = takes,
                       .take_count = mix->need.take_count,
                       .batch_bags = usual_batch(mix)};
    for (size_t i = 0; i < m->take_count; i++)
        takes[i].take = mix->need.takes[i];
    for (size_t i = 0; i < log->count; i++)
        if (is_of(&log->rows[i], mix))
            add_row(&log->rows[i], m, takes, made, &count, &d, &cursor);
    find_left(m, takes);
    status = find_real(m, &d);
    if (status == GB_OK)
        status = foretell(m, made, count, m->left, &m->forecast, &m->by_plan);
    if (status != GB_OK)
        return status;
    m->bags_sure = gb_bags_at(&m->forecast, o->sure);
    return find_stock(log, o, m, made, count);
}

gb_status gb_find_remaining(const gb_plan *plan, const gb_log *log,
                            const gb_outlook *outlook, gb_arena *arena,
                            gb_remaining *remaining) {
    gb_mix_left *mixes = gb_arena_take(arena, plan->mix_count + 1, sizeof *mixes);
    if (mixes == NULL)
        return GB_NO_MEMORY;
    for (size_t i = 0; i < plan->mix_count; i++) {
        gb_status status = find_mix(log, outlook, &plan->mixes[i], arena, &mixes[i]);
        if (status != GB_OK)
            return status;
    }
    *remaining = (gb_remaining){plan, log, outlook, mixes, plan->mix_count};
    return GB_OK;
}
