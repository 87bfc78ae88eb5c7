/* What to buy in which packs, at what cost, and what is left over. */
#ifndef GAUGEBOX_BUY_H
#define GAUGEBOX_BUY_H

#include "gaugebox/plan.h"

/* One pack that a supplier sells: so many kg, or so much loose volume. */
typedef struct gb_pack {
    gb_ref what; /* a material's name, or a bagged mix's id */
    gb_mass mass;
    gb_volume volume;
    gb_ref price_text; /* as written; `price` is its value in the book's currency */
    gb_money price;
    const char *supplier;
    bool untaxed;
    gb_origin at;
} gb_pack;

typedef struct gb_delivery {
    const char *supplier;
    gb_ref charge_text;
    gb_money charge;
} gb_delivery;

typedef struct gb_price_book {
    const char *file;
    uint64_t digest; /* of its text */
    const char *currency;
    int decimals; /* of the currency: 2 for cents */
    gb_share tax;
    const gb_pack *packs;
    size_t pack_count;
    const gb_delivery *deliveries;
    size_t delivery_count;
} gb_price_book;

typedef struct gb_buy_line {
    const gb_supply_need *need;
    const gb_pack *pack; /* NULL: no supplier sells it */
    size_t packs;
    gb_mass leftover; /* as it lies */
    gb_money cost;
} gb_buy_line;

typedef struct gb_buy_list {
    const gb_buy_line *lines;
    size_t line_count;
    size_t missing; /* lines that no supplier sells; they are in no sum */
    gb_money goods;
    gb_money tax;      /* on taxed goods; delivery is not taxed */
    gb_money delivery; /* of every supplier that something is bought from */
    gb_money total;
} gb_buy_list;

enum { GB_MOST_SUPPLIERS = 64 };

/* Whole packs, one kind of pack for each need, from those suppliers that make the total,
   tax and delivery included, the least: every choice of up to ten suppliers is tried;
   with more, all are taken and dropped one by one. Sand sold by volume counts as damp and
   loose, sand sold by mass as it lies in the pile. GB_NOT_POSITIVE for a need below zero
   or a pack that is not above it; GB_OVERFLOW for over GB_MOST_SUPPLIERS suppliers, or
   when the sums leave int64 whatever is chosen; GB_NO_MEMORY. */
gb_status gb_buy(const gb_supply_need *needs, size_t need_count,
                 const gb_price_book *book, gb_arena *arena,
                 gb_buy_list *list) GB_MUST_USE;

#endif
