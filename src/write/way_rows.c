#include "write/way_rows.h"

#include <math.h>

static gb_figure cost(const gb_ways_question *q, const gb_way *w) {
    return gb_money_fig("cost", w->list.total, q->book->decimals);
}

/* How much of what: bags, or the order to the plant. */
static gb_row amount_of(gb_builder *b, const gb_way *w) {
    if (w->mix == NULL)
        return GB_MAKE(b, WAY_ORDER, gb_num("ordered", GB_SHOW_BULK, w->ordered.m3));
    return GB_MAKE(b, WAY_BAGS, gb_num("whole", GB_SHOW_COUNT, (double)w->whole),
                   gb_num("bag", GB_SHOW_MASS, w->recipe.bag.kg));
}

static gb_row name_of(gb_builder *b, const gb_way *w, bool first) {
    if (w->mix == NULL)
        return GB_MAKE_BARE(b, WAY_READY);
    if (first && w->mix->id[0] == '\0')
        return GB_MAKE_BARE(b, WAY_THIS);
    return GB_MAKE(b, WAY_MIX, gb_txt("id", w->mix->id));
}

static gb_row batches_of(gb_builder *b, const gb_way *w) {
    if (w->mix == NULL)
        return GB_MAKE_BARE(b, DASH);
    if (w->batches == 0)
        return GB_MAKE_BARE(b, WAY_TOO_SMALL);
    return GB_MAKE(b, WAY_BATCHES, gb_num("batches", GB_SHOW_COUNT, (double)w->batches));
}

static gb_row mixing_of(gb_builder *b, const gb_way *w) {
    if (w->batches == 0)
        return GB_MAKE_BARE(b, DASH);
    return GB_MAKE(b, WAY_MIXING, gb_num("mixing", GB_SHOW_DURATION, w->mixing.s));
}

static gb_row carried_of(gb_builder *b, const gb_way *w) {
    if (w->mix == NULL)
        return GB_MAKE_BARE(b, DASH);
    return GB_MAKE(b, WAY_CARRIED, gb_num("carried", GB_SHOW_MASS, w->carried.kg));
}

static void add_way(gb_builder *b, const gb_ways_question *q, const gb_way *w,
                    bool first) {
    b->about.way = w;
    gb_figure all[6] = {gb_row_fig(b, "way", name_of(b, w, first)),
                        gb_row_fig(b, "amount", amount_of(b, w)),
                        gb_row_fig(b, "batches", batches_of(b, w)),
                        gb_row_fig(b, "mixing", mixing_of(b, w)),
                        gb_row_fig(b, "carried", carried_of(b, w))};
    if (q->book == NULL) {
        gb_add_row(b, GB_ROW_WAY, all, 5);
        return;
    }
    all[5] = gb_row_fig(
        b, "cost", w->priced ? GB_MAKE(b, WAY_COST, cost(q, w)) : GB_MAKE_BARE(b, DASH));
    gb_add_row(b, GB_ROW_WAY_PRICED, all, 6);
}

/* ---- what it holds ----------------------------------------------------------------- */

/* Loose parts of one kind; "-" where there is none. */
static gb_row loose_of(gb_builder *b, const gb_way *w, gb_material_kind kind) {
    for (size_t i = 0; w->mix != NULL && i < w->mix->part_count; i++)
        if (w->mix->parts[i].material->kind == kind) {
            b->about.part = i;
            return GB_MAKE(b, WAY_LOOSE,
                           gb_num("loose", GB_SHOW_BULK, w->needs[i].loose.m3));
        }
    return GB_MAKE_BARE(b, DASH);
}

static gb_row air_of(gb_builder *b, const gb_way *w) {
    if (w->mix == NULL)
        return GB_MAKE_BARE(b, WAY_ORDERED);
    if (w->mix->part_count == 0)
        return GB_MAKE_BARE(b, WAY_AIR_OF_BAG);
    return GB_MAKE(b, WAY_AIR, gb_num("air", GB_SHOW_SHARE, w->mix->air.of_one));
}

static gb_row strength_of(gb_builder *b, const gb_way *w) {
    if (w->mix == NULL)
        return GB_MAKE_BARE(b, WAY_ORDERED);
    double pa = gb_known_strength(w->mix).pa;
    if (isnan(pa))
        return GB_MAKE_BARE(b, DASH);
    return GB_MAKE(b, WAY_STRENGTH, gb_num("strength", GB_SHOW_PRESSURE, pa));
}

/* Held against what is asked for: the first of all ways. */
static gb_row short_of(gb_builder *b, const gb_way *w, const gb_way *asked) {
    static const gb_row_code CODES[GB_SHORTS] = {
        [GB_SHORT_OF_NOTHING] = GB_ROW_SHORT_NOTHING,
        [GB_SHORT_OF_AIR] = GB_ROW_SHORT_AIR,
        [GB_SHORT_OF_STRENGTH] = GB_ROW_SHORT_STRENGTH,
        [GB_SHORT_OF_BOTH] = GB_ROW_SHORT_BOTH,
        [GB_SHORT_OF_AIR_NOT_KNOWN] = GB_ROW_SHORT_AIR_ASK,
        [GB_SHORT_NOT_KNOWN] = GB_ROW_SHORT_ASK};
    return gb_make_row(b, CODES[gb_way_is_short(w, asked->mix)], NULL, 0);
}

static void add_holds(gb_builder *b, const gb_way *w, const gb_way *asked) {
    b->about.way = w;
    GB_ADD(b, WAY_HOLDS, gb_row_fig(b, "way", name_of(b, w, w == asked)),
           gb_row_fig(b, "sand", loose_of(b, w, GB_SAND)),
           gb_row_fig(b, "stone", loose_of(b, w, GB_COARSE)),
           gb_row_fig(b, "air", air_of(b, w)),
           gb_row_fig(b, "strength", strength_of(b, w)),
           gb_row_fig(b, "short", short_of(b, w, asked)));
}

static void add_notes(gb_builder *b, const gb_concrete_question *q) {
    const gb_ways_question *a = &q->ways;
    gb_crew crew = {.mixing = {GB_NONE}};
    GB_ADD(b, WAYS_TIME, gb_num("each", GB_SHOW_DURATION, gb_mixing_time(&crew).s),
           gb_num("mixer", GB_SHOW_VOLUME, a->mixer.m3));
    GB_ADD(b, WAYS_READY, gb_num("step", GB_SHOW_BULK, gb_ready_step(a->system).m3),
           gb_num("least", GB_SHOW_BULK, gb_short_load(a->system).m3));
    if (a->book != NULL)
        GB_ADD(b, WAYS_PRICES, gb_txt("currency", a->book->currency),
               gb_txt("file", a->book->file));
    GB_ADD_BARE(b, WAYS_NOT_ALIKE);
}

void gb_add_ways(gb_builder *b, const gb_concrete_question *q) {
    const gb_ways_question *a = &q->ways;
    b->about.question = NULL;
    gb_figure net = gb_num("net", GB_SHOW_VOLUME, a->net.m3);
    if (a->waste.of_one > 0)
        GB_ADD(b, WAYS_TITLE_WASTE, net,
               gb_num("gross", GB_SHOW_VOLUME, q->way_list[0].gross.m3));
    else
        GB_ADD(b, WAYS_TITLE, net);
    if (a->book == NULL)
        GB_ADD_BARE(b, WAYS_HEAD);
    else
        GB_ADD_BARE(b, WAYS_HEAD_PRICED);
    for (size_t i = 0; i < q->way_count; i++)
        add_way(b, a, &q->way_list[i], i == 0);
    GB_ADD_BARE(b, WAYS_HOLD_HEAD);
    for (size_t i = 0; i < q->way_count; i++)
        add_holds(b, &q->way_list[i], &q->way_list[0]);
    add_notes(b, q);
    b->about.way = NULL;
    gb_end_block(b);
}
