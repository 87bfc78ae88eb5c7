#include "write/model.h"

#include "gaugebox/digest.h"

#include <math.h>

static void add_line(gb_builder *b, const gb_buy_line *l, const gb_price_book *book) {
    const gb_supply_need *n = l->need;
    b->about.line = l;
    b->about.supply = n;
    gb_figure material = gb_words_fig(b, "material", gb_supply_title(n));
    gb_figure need = gb_num_up("need", GB_SHOW_MASS, n->lying.kg);
    if (l->pack == NULL) {
        GB_ADD(b, NOT_SOLD, need, material);
        return;
    }
    bool by_volume = isnan(l->pack->mass.kg);
    gb_figure pack = by_volume ? gb_num("pack", GB_SHOW_PACK, l->pack->volume.m3)
                               : gb_num("pack", GB_SHOW_MASS, l->pack->mass.kg);
    const gb_figure figures[] = {
        gb_num("packs", GB_SHOW_COUNT, (double)l->packs),
        pack,
        material,
        gb_txt("supplier", l->pack->supplier),
        gb_money_fig("price", l->pack->price, book->decimals),
        gb_money_fig("cost", l->cost, book->decimals),
        need,
        gb_num_down("left", GB_SHOW_MASS, l->leftover.kg),
    };
    /* One row for programs; people read it in two lines. */
    gb_add_row(b, GB_ROW_BUY, figures, sizeof figures / sizeof figures[0]);
    gb_add_row(b, GB_ROW_BUY_COST, figures, sizeof figures / sizeof figures[0]);
}

/* The list's number, and those of the plans that it is for. */
static void add_numbers(gb_builder *b, const gb_priced *priced) {
    uint64_t digest = gb_digest_add_number(GB_DIGEST_START, priced->book->digest);
    double sure = priced->plan_count == 0 ? 0 : priced->plans[0].job->sure.of_one;
    if (sure > 0)
        digest = gb_digest_add_number(digest, (uint64_t)(sure * 100.0 + 0.5));
    gb_row *plans = gb_arena_take(b->arena, priced->plan_count + 1, sizeof *plans);
    if (plans == NULL) {
        b->failed = true;
        return;
    }
    for (size_t i = 0; i < priced->plan_count; i++) {
        digest = gb_digest_add_number(digest, priced->plans[i].digest);
        plans[i] =
            GB_MAKE(b, PLAN_NUMBER, gb_number_fig(b, "number", priced->plans[i].digest));
    }
    GB_ADD(b, LIST_NUMBER, gb_number_fig(b, "number", digest),
           gb_rows_fig(b, "plans", plans, priced->plan_count));
}

static void add_title(gb_builder *b, const gb_priced *priced) {
    gb_row *jobs = gb_arena_take(b->arena, priced->plan_count + 1, sizeof *jobs);
    if (jobs == NULL) {
        b->failed = true;
        return;
    }
    for (size_t i = 0; i < priced->plan_count; i++)
        jobs[i] = GB_MAKE(b, JOB_NAME, gb_txt("name", priced->plans[i].job->site.name));
    GB_ADD(b, PRICE_TITLE, gb_rows_fig(b, "jobs", jobs, priced->plan_count));
}

gb_status gb_price_sheet(const gb_priced *priced, gb_style style, gb_arena *arena,
                         gb_sheet *sheet) {
    const gb_buy_list *list = priced->list;
    const gb_price_book *book = priced->book;
    gb_builder b;
    gb_builder_init(&b, style, arena);
    b.about.priced = priced;
    add_title(&b, priced);
    add_numbers(&b, priced);
    for (size_t i = 0; i < list->line_count; i++)
        add_line(&b, &list->lines[i], book);
    gb_figure currency = gb_txt("currency", book->currency);
    int d = book->decimals;
    GB_ADD(&b, GOODS, gb_money_fig("money", list->goods, d), currency);
    GB_ADD(&b, TAX, gb_money_fig("money", list->tax, d), currency,
           gb_num("rate", GB_SHOW_SHARE, book->tax.of_one));
    GB_ADD(&b, DELIVERY, gb_money_fig("money", list->delivery, d), currency);
    if (list->missing == 0)
        GB_ADD(&b, TOTAL, gb_money_fig("money", list->total, d), currency);
    else
        GB_ADD(&b, TOTAL_WITHOUT, gb_money_fig("money", list->total, d), currency,
               gb_num("missing", GB_SHOW_COUNT, (double)list->missing));
    GB_ADD(&b, PRICES_FROM, gb_txt("file", book->file));
    gb_end_block(&b);
    return gb_finish_sheet(&b, "price", sheet);
}
