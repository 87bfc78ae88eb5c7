#include "write/gauge_rows.h"
#include "write/model.h"

#include <math.h>

static void add_so_far(gb_builder *b, const gb_mix_left *m) {
    double ratio = m->work > 0 ? m->bags / m->work : GB_NONE;
    GB_ADD(b, LEFT_SO_FAR, gb_num("n", GB_SHOW_COUNT, (double)m->batches),
           gb_num("bags", GB_SHOW_RATIO, m->bags),
           gb_num("thrown", GB_SHOW_NUMBER, m->thrown));
    if (m->unfinished > 0)
        GB_ADD(b, LEFT_OPEN, gb_num("n", GB_SHOW_COUNT, (double)m->unfinished));
    if (!isnan(ratio))
        GB_ADD(b, LEFT_RATIO, gb_num("ratio", GB_SHOW_NUMBER, ratio),
               gb_num("planned", GB_SHOW_NUMBER, 1.0 + m->mix->need.waste.of_one));
    if (m->depth_count > 1)
        GB_ADD(b, LEFT_DEPTHS, gb_num("n", GB_SHOW_COUNT, (double)m->depth_count),
               gb_num("mean", GB_SHOW_LENGTH, m->depth_m),
               gb_num("sd", GB_SHOW_LENGTH, m->depth_sd_m),
               gb_num("se", GB_SHOW_LENGTH, m->depth_se_m),
               gb_num("planned", GB_SHOW_LENGTH, m->planned.m));
    if (!isnan(m->yield.m3))
        GB_ADD(b, LEFT_YIELD, gb_num("yield", GB_SHOW_VOLUME, m->yield.m3),
               gb_num("planned", GB_SHOW_VOLUME, m->mix->recipe.yield.m3));
    else if (!isnan(m->in_place.m))
        GB_ADD(b, LEFT_DEPTH, gb_num("depth", GB_SHOW_LENGTH, m->in_place.m),
               gb_num("planned", GB_SHOW_LENGTH, m->planned.m));
}

static void add_pieces(gb_builder *b, const gb_mix_left *m) {
    bool any = false;
    for (size_t i = 0; i < m->take_count; i++) {
        const gb_take_left *t = &m->takes[i];
        if (!(t->left > GB_SAME))
            continue;
        any = true;
        b->about.take_left = t;
        b->about.take = t->take;
        gb_figure kind = gb_row_fig(b, "kind", gb_kind_row(b, t->take->layer->kind));
        GB_ADD(b, LEFT_PIECE, gb_txt("name", t->take->piece->name), kind,
               gb_num("left", GB_SHOW_RATIO, t->left),
               gb_num("count", GB_SHOW_COUNT, t->take->units),
               gb_num("net", GB_SHOW_VOLUME, t->net.m3));
    }
    if (!any)
        GB_ADD_BARE(b, LEFT_NOTHING);
}

static gb_row reach_row(gb_builder *b, const gb_reach *r) {
    if (r->take == NULL)
        return GB_MAKE_BARE(b, REACH_ALL);
    gb_figure name = gb_txt("name", r->take->piece->name);
    double whole = gb_round(r->pieces, 1.0, GB_DOWN);
    if (r->take->units <= 1.0)
        return GB_MAKE(b, REACH_SHARE, name,
                       gb_num_down("share", GB_SHOW_SHARE, r->pieces));
    if (whole < 1)
        return GB_MAKE(b, REACH_NONE, name);
    return GB_MAKE(b, REACH_PIECE, name, gb_num("last", GB_SHOW_COUNT, whole),
                   gb_num("count", GB_SHOW_COUNT, r->take->units));
}

/* From what is likely up to what is all but sure, and at the least to what was asked for.
 */
static void add_chances(gb_builder *b, const gb_mix_left *m) {
    enum { MOST = 6 };
    gb_row rows[MOST];
    size_t n = 0;
    double bags = gb_larger(1.0, gb_round(m->forecast.bags, 1.0, GB_DOWN));
    double asked = gb_round(m->bags_sure, 1.0, GB_UP);
    double step = gb_larger(1.0, gb_round((asked - bags) / (MOST - 1), 1.0, GB_UP));
    while (n < MOST) {
        gb_share share = gb_certainty(&m->forecast, bags);
        b->about.bags = bags;
        rows[n++] = GB_MAKE(b, LEFT_CHANCE, gb_num("whole", GB_SHOW_COUNT, bags),
                            gb_num_down("share", GB_SHOW_SHARE, share.of_one));
        if (share.of_one >= 0.99 && bags >= asked)
            break;
        bags = bags < asked ? gb_smaller(bags + step, asked) : bags + step;
    }
    GB_ADD(b, NEED_CHANCES, gb_rows_fig(b, "chances", rows, n));
}

static void add_finish(gb_builder *b, const gb_mix_left *m, const gb_outlook *o) {
    double batches = gb_round(m->forecast.bags / m->batch_bags, 1.0, GB_UP);
    GB_ADD(b, LEFT_BAGS, gb_num("bags", GB_SHOW_NUMBER, m->forecast.bags),
           gb_num("deviation", GB_SHOW_NUMBER, m->forecast.deviation),
           gb_num("sure", GB_SHOW_SHARE, o->sure.of_one),
           gb_num("surely", GB_SHOW_NUMBER, m->bags_sure),
           gb_num("whole", GB_SHOW_COUNT, gb_round(m->bags_sure, 1.0, GB_UP)));
    GB_ADD(
        b, LEFT_BATCHES, gb_num("n", GB_SHOW_COUNT, batches),
        gb_num("most", GB_SHOW_COUNT, gb_round(m->bags_sure / m->batch_bags, 1.0, GB_UP)),
        gb_num("bags", GB_SHOW_RATIO, m->batch_bags));
    const gb_mix *mix = m->mix->need.mix;
    double bag = m->mix->recipe.bag.kg;
    if (m->mix->is_slurry && mix->part_count > 0)
        GB_ADD(b, LEFT_MASS, gb_words_fig(b, "material", &mix->parts[0].material->title),
               gb_num("mass", GB_SHOW_MASS, m->forecast.bags * bag),
               gb_num_up("surely", GB_SHOW_MASS, m->bags_sure * bag));
    if (m->by_plan)
        GB_ADD_BARE(b, LEFT_BY_PLAN);
    if (m->forecast.deviation > 0 && !m->mix->is_slurry)
        add_chances(b, m);
}

static void add_stock(gb_builder *b, const gb_mix_left *m, const gb_outlook *o) {
    if (isnan(m->on_hand))
        return;
    b->about.surely = false;
    gb_row best = reach_row(b, &m->best);
    b->about.surely = true;
    gb_row surely = reach_row(b, &m->surely);
    GB_ADD(b, STOCK_REACH, gb_num("bags", GB_SHOW_RATIO, m->on_hand),
           gb_row_fig(b, "best", best), gb_num("sure", GB_SHOW_SHARE, o->sure.of_one),
           gb_row_fig(b, "surely", surely));
    gb_figure more = gb_num("order", GB_SHOW_COUNT, m->order);
    gb_figure lead = gb_num("days", GB_SHOW_RATIO, o->lead_days);
    if (!(m->order > 0))
        GB_ADD_BARE(b, STOCK_ENOUGH);
    else if (isnan(m->order_at) || !(m->on_hand > m->order_at))
        GB_ADD(b, STOCK_ORDER_NOW, more, lead);
    else
        GB_ADD(b, STOCK_ORDER_AT, more, gb_num("at", GB_SHOW_COUNT, m->order_at), lead);
}

gb_status gb_remaining_sheet(const gb_remaining *left, gb_style style, gb_arena *arena,
                             gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    for (size_t i = 0; i < left->mix_count; i++) {
        const gb_mix_left *m = &left->mixes[i];
        b.about =
            (gb_about){.plan = left->plan, .mix = m->mix, .left = m, .remaining = left};
        GB_ADD(&b, TITLE, gb_words_fig(&b, "title", &m->mix->need.mix->title));
        GB_ADD(&b, SITE, gb_txt("name", left->plan->job->site.name));
        GB_ADD(&b, PLAN, gb_number_fig(&b, "number", left->plan->digest));
        GB_ADD(&b, MIX_ID, gb_txt("id", m->mix->need.mix->id));
        GB_ADD(&b, LOG_FILE, gb_txt("file", left->log->file),
               gb_num("n", GB_SHOW_COUNT, (double)left->log->count));
        add_so_far(&b, m);
        add_pieces(&b, m);
        if (m->left > GB_SAME) {
            add_finish(&b, m, left->outlook);
            add_stock(&b, m, left->outlook);
        }
        gb_end_block(&b);
    }
    return gb_finish_sheet(&b, "remaining", sheet);
}
