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
    const gb_pack *pack; /* NULL: the price book does not sell it */
    gb_mass each;        /* dry mass in one pack */
    size_t packs;
    gb_mass leftover;
    gb_money cost;
} gb_buy_line;

typedef struct gb_buy_list {
    const gb_buy_line *lines;
    size_t line_count;
    size_t missing; /* lines that the price book does not sell */
    gb_share sand_moisture;
    gb_money goods;
    gb_money tax;
    gb_money delivery;
    gb_money total;
} gb_buy_list;

/* The needs of several plans, one row for each material or blend. GB_NO_MEMORY. */
gb_status gb_merge_supplies(const gb_plan *plans, size_t plan_count, gb_arena *arena,
                            const gb_supply_need **needs, size_t *count) GB_MUST_USE;

/* Whole packs, for each supply need the pack that costs least in all (the first of equal
   ones). Sand sold by volume counts as damp and loose, sand sold by mass as lying in the
   pile with its moisture. GB_OVERFLOW when a sum leaves int64. */
gb_status gb_buy(const gb_supply_need *needs, size_t need_count,
                 const gb_price_book *book, gb_share sand_moisture, gb_arena *arena,
                 gb_buy_list *list) GB_MUST_USE;

#endif
