#include "write/model.h"

#include <math.h>

static void add_line(gb_builder *b, const gb_buy_list *list, const gb_buy_line *l,
                     const gb_price_book *book) {
    const gb_supply_need *n = l->need;
    const gb_words *title = n->material != NULL ? &n->material->title : &n->blend->title;
    gb_figure material = gb_words_fig(b, "material", title);
    gb_figure need =
        gb_num("need", GB_SHOW_MASS, gb_lying_mass(n, n->mass, list->sand_moisture).kg);
    if (l->pack == NULL) {
        GB_ADD(b, NOT_SOLD, need, material);
        return;
    }
    bool by_volume = isnan(l->pack->mass.kg);
    gb_figure pack = by_volume ? gb_num("pack", GB_SHOW_BULK, l->pack->volume.m3)
                               : gb_num("pack", GB_SHOW_MASS, l->pack->mass.kg);
    GB_ADD(b, BUY, gb_num("packs", GB_SHOW_COUNT, (double)l->packs), pack, material,
           gb_txt("supplier", l->pack->supplier));
    GB_ADD(b, BUY_COST, gb_money_fig("price", l->pack->price, book->decimals),
           gb_money_fig("cost", l->cost, book->decimals), need,
           gb_num("left", GB_SHOW_MASS,
                  gb_lying_mass(n, l->leftover, list->sand_moisture).kg));
}

gb_status gb_price_sheet(const gb_buy_list *list, const gb_price_book *book,
                         const char *jobs, gb_system system, const char *language,
                         gb_arena *arena, gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, language, arena);
    GB_ADD(&b, PRICE_TITLE, gb_txt("jobs", jobs));
    for (size_t i = 0; i < list->line_count; i++)
        add_line(&b, list, &list->lines[i], book);
    gb_figure currency = gb_txt("currency", book->currency);
    int d = book->decimals;
    GB_ADD(&b, GOODS, gb_money_fig("money", list->goods, d), currency);
    GB_ADD(&b, TAX, gb_money_fig("money", list->tax, d), currency,
           gb_num("rate", GB_SHOW_SHARE, book->tax.of_one));
    GB_ADD(&b, DELIVERY, gb_money_fig("money", list->delivery, d), currency);
    GB_ADD(&b, TOTAL, gb_money_fig("money", list->total, d), currency);
    GB_ADD(&b, PRICES_FROM, gb_txt("file", book->file));
    gb_end_block(&b);
    return gb_finish_sheet(&b, system, sheet);
}
