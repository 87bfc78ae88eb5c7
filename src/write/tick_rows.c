#include "write/batch_rows.h"
#include "write/gauge_rows.h"

#include <math.h>

/* A single piece is covered by area, as a helper measures it. */
static gb_row cover_single(gb_builder *b, const gb_stretch *s) {
    gb_figure name = gb_txt("name", s->take->piece->name);
    double part = s->to - s->from;
    bool starts = s->from < GB_SAME;
    bool ends = !gb_under(s->to, s->take->units);
    if (starts && ends)
        return GB_MAKE(b, COVERS_ALL, name);
    if (isnan(s->take->area.m2))
        return GB_MAKE(b, COVERS_SHARE, name, gb_num("share", GB_SHOW_SHARE, part));
    gb_figure area = gb_num("area", GB_SHOW_AREA_HALF, part * s->take->area.m2);
    return ends ? GB_MAKE(b, COVERS_LAST_AREA, name, area)
                : GB_MAKE(b, COVERS_AREA, name, area);
}

/* Treads whose beds differ: which of them a batch finishes is not known, its share of the
   volume is. */
static bool is_uneven(const gb_take *t) {
    return t->layer->levels.block_count > 1;
}

static gb_row cover_uneven(gb_builder *b, const gb_stretch *s) {
    gb_figure name = gb_txt("name", s->take->piece->name);
    double part = (s->to - s->from) / s->take->units;
    if (!gb_under(part, 1.0))
        return GB_MAKE(b, COVERS_ALL, name);
    return GB_MAKE(b, COVERS_SHARE, name, gb_num("share", GB_SHOW_SHARE, part));
}

/* Several alike: those that this batch finishes, the first counted as 1, and the one that
   it takes well into. */
static gb_row cover_many(gb_builder *b, const gb_stretch *s) {
    gb_figure name = gb_txt("name", s->take->piece->name);
    size_t done = 0;
    size_t before = 0;
    if (gb_count_down(s->from, 1.0, &before) != GB_OK ||
        gb_count_down(s->to, 1.0, &done) != GB_OK)
        b->failed = true;
    bool part = !gb_under(s->to - (double)done, 0.25);
    gb_figure from = gb_num("from", GB_SHOW_COUNT, (double)(before + 1));
    gb_figure next = gb_num("next", GB_SHOW_COUNT, (double)(done + 1));
    gb_figure to = gb_num("to", GB_SHOW_COUNT, (double)done);
    if (done == before)
        return GB_MAKE(b, COVERS_PART, name, from);
    if (done == before + 1)
        return part ? GB_MAKE(b, COVERS_PIECE_PART, name, from, next)
                    : GB_MAKE(b, COVERS_PIECE, name, from);
    return part ? GB_MAKE(b, COVERS_PIECES_PART, name, from, to, next)
                : GB_MAKE(b, COVERS_PIECES, name, from, to);
}

gb_row gb_cover_row(gb_builder *b, const gb_stretch *s) {
    b->about.stretch = s;
    if (is_uneven(s->take))
        return cover_uneven(b, s);
    return s->take->units > 1.0 ? cover_many(b, s) : cover_single(b, s);
}

/* The piece that a batch only begins is left to the next one, unless it is all there
   is. */
static bool is_begun_only(const gb_stretch *s, const gb_batch *batch) {
    size_t done = 0;
    size_t before = 0;
    if (s->take->units <= 1.0 || batch->stretch_count < 2 || is_uneven(s->take))
        return false;
    return gb_count_down(s->from, 1.0, &before) == GB_OK &&
           gb_count_down(s->to, 1.0, &done) == GB_OK && done == before;
}

gb_figure gb_covers_fig(gb_builder *b, const gb_batch *batch) {
    gb_row *rows = gb_arena_take(b->arena, batch->stretch_count + 1, sizeof *rows);
    size_t n = 0;
    if (rows == NULL) {
        b->failed = true;
        return gb_txt("covers", "");
    }
    for (size_t i = 0; i < batch->stretch_count; i++) {
        const gb_stretch *s = &batch->stretches[i];
        if (is_begun_only(s, batch))
            continue;
        rows[n++] = gb_cover_row(b, s);
    }
    gb_figure covers = gb_rows_fig(b, "covers", rows, n);
    covers.whole = true;
    return covers;
}

static void add_first_check(gb_builder *b, const gb_mix_plan *p) {
    const gb_first_check *f = &p->first_check;
    b->about.amount = GB_FIRST_CHECK;
    bool blend = p->need.mix->part_count == 0;
    double bags = gb_round(f->bags, blend ? 1.0 : 0.125, GB_UP);
    gb_figure pieces = gb_num("pieces", GB_SHOW_COUNT, (double)f->pieces);
    gb_figure name = gb_txt("name", f->take->piece->name);
    gb_figure fewer = gb_num("fewer", GB_SHOW_COUNT, (double)f->fewer);
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, f->depth.m);
    gb_figure gross = gb_num("gross", GB_SHOW_VOLUME, f->gross.m3);
    gb_figure in_bags = gb_bags_fig(b, "bags", bags);
    if (f->left > 0)
        GB_ADD(b, AFTER_FIRST_PART, pieces, name, fewer, depth, gross, in_bags,
               gb_num_down("left", GB_SHOW_QUARTERS, f->left));
    else
        GB_ADD(b, AFTER_FIRST, pieces, name, fewer, depth, gross, in_bags);
}

void gb_add_batches(gb_builder *b, const gb_mix_plan *p) {
    const gb_batching *k = &p->batching;
    b->about.amount = GB_ONE_BATCH;
    for (size_t i = 0; i < k->batch_count; i++) {
        b->about.batch = i;
        GB_ADD(b, BATCH_LINE, gb_num("n", GB_SHOW_COUNT, (double)(i + 1)),
               gb_num("total", GB_SHOW_COUNT, (double)k->batch_count),
               gb_bags_fig(b, "bags", k->batches[i].bags),
               gb_covers_fig(b, &k->batches[i]));
        GB_ADD(b, BATCH_LOG, gb_num("life", GB_SHOW_DURATION, p->life.s));
    }
    gb_figure life = gb_num("life", GB_SHOW_DURATION, p->life.s);
    if (gb_is_never_retempered(p->need.mix))
        GB_ADD(b, DEAD_NEVER, life);
    else
        GB_ADD(b, DEAD, life);
    if (p->first_check.known)
        add_first_check(b, p);
}
