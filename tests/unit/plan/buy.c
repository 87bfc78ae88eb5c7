/* Buying: whole packs, the cheapest of several, tax, delivery, and what is not sold. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <stdio.h>
#include <string.h>

#include "fixture.h"

/* An invented price book, cents; masses in lb, sand by the half yard or the 50 lb bag. */
static const gb_pack PACKS[] = {
    {.what = {.text = "portland-cement"},
     .mass = {94 * LB},
     .volume = {NAN},
     .price = {1720},
     .supplier = "hill yard"},
    {.what = {.text = "portland-cement"},
     .mass = {47 * LB},
     .volume = {NAN},
     .price = {1095},
     .supplier = "hill yard"},
    {.what = {.text = "masonry-sand"},
     .mass = {NAN},
     .volume = {0.5 * YD3},
     .price = {3100},
     .supplier = "hill yard"},
    {.what = {.text = "masonry-sand"},
     .mass = {50 * LB},
     .volume = {NAN},
     .price = {610},
     .supplier = "corner shop"},
    {.what = {.text = "bagged/setting"},
     .mass = {80 * LB},
     .volume = {NAN},
     .price = {740},
     .supplier = "quay depot"},
};
static const gb_delivery DELIVERIES[] = {
    {.supplier = "hill yard", .charge = {6500}},
    {.supplier = "corner shop", .charge = {900}},
    {.supplier = "quay depot", .charge = {4800}},
};

static gb_price_book book(void) {
    return (gb_price_book){.file = "prices.cfg",
                           .currency = "USD",
                           .decimals = 2,
                           .tax = {0},
                           .packs = PACKS,
                           .pack_count = ROWS_OF(PACKS),
                           .deliveries = DELIVERIES,
                           .delivery_count = ROWS_OF(DELIVERIES)};
}

/* So many lb, dry; sand lies with 5 % of moisture, as its bulk is gauged. */
static gb_supply_need need_of(const gb_material *material, double lb) {
    double moist = material->kind == GB_SAND ? 1.05 : 1;
    return (gb_supply_need){.material = material,
                            .mass = {lb * LB},
                            .lying = {lb * moist * LB},
                            .loose = {lb * LB / material->bulk.kg_m3},
                            .pack = material->pack};
}

static gb_supply_need blend_of(double lb) {
    return (gb_supply_need){.blend = &FX_BLEND,
                            .mass = {lb * LB},
                            .lying = {lb * LB},
                            .loose = {NAN},
                            .pack = {80 * LB}};
}

/* One need against the book above. */
static const struct {
    const char *id;
    const gb_material *material; /* NULL: the blend */
    double need, lying;          /* lb: dry, and with its moisture */
    size_t pack, packs;          /* row of PACKS, and how many */
    double left;                 /* lb, as it lies */
    int64_t cost;
} LINES[] = {
    /* 3 x 17.20 = 51.60 against 6 x 10.95 = 65.70 */
    {"three bags", &FX_CEMENT, 282, 282, 0, 3, 0, 5160},
    /* 4 x 17.20 = 68.80 against 7 x 10.95 = 76.65; 376 - 282.8 */
    {"a little over three", &FX_CEMENT, 282.8, 282.8, 0, 4, 93.2, 6880},
    /* 2 x 17.20 = 34.40 against 3 x 10.95 = 32.85 */
    {"one and a half", &FX_CEMENT, 141, 141, 1, 3, 0, 3285},
    {"a handful", &FX_CEMENT, 5, 5, 1, 1, 42, 1095},
    {"a grain", &FX_CEMENT, 1e-12, 1e-12, 1, 1, 47, 1095}, /* needed, so bought */
    /* 13.5 ft3 x 80 = 1080 lb dry, whatever the moisture; by the bag it would be 23 or 24
       x 6.10 and 9.00, against 31.00 and 65.00 */
    {"half a yard", &FX_SAND, 1080, 1134, 2, 1, 0, 3100},
    {"half a yard, wet", &FX_SAND, 1080, 1166.4, 2, 1, 0, 3100},
    /* 2160 - 1081 = 1079 dry, x 1.05 */
    {"over half a yard", &FX_SAND, 1081, 1135.05, 2, 2, 1132.95, 6200},
    /* 50 lb as it lies: 3 x 50 - 105, 2 x 50 - 100, 2 x 50 - 99.75 */
    {"sand, three bags", &FX_SAND, 100, 105, 3, 3, 45, 1830},
    {"sand, two bags", &FX_SAND, 100, 100, 3, 2, 0, 1220},
    {"sand, two bags moist", &FX_SAND, 95, 99.75, 3, 2, 0.25, 1220},
    {"sand, exact moist", &FX_SAND, 150 / 1.08, 150, 3, 3, 0, 1830},
    {"blend", NULL, 1067, 1067, 4, 14, 53, 10360}, /* 13.34 bags of 80 lb, 7.40 each */
    {"blend, exact", NULL, 1120, 1120, 4, 14, 0, 10360},
    {"a grain of blend", NULL, 1e-12, 1e-12, 4, 1, 80, 740},
};

Test(buy, one_need) {
    gb_price_book prices = book();
    for (size_t i = 0; i < ROWS_OF(LINES); i++) {
        gb_arena arena;
        gb_buy_list list;
        fx_open(&arena);
        gb_supply_need need = LINES[i].material != NULL
                                  ? need_of(LINES[i].material, LINES[i].need)
                                  : blend_of(LINES[i].need);
        need.lying.kg = LINES[i].lying * LB;
        cr_assert(gb_buy(&need, 1, &prices, &arena, &list) == GB_OK, "%s", LINES[i].id);
        const gb_buy_line *l = &list.lines[0];
        cr_expect(list.line_count == 1 && list.missing == 0, "%s", LINES[i].id);
        cr_expect(l->need == &need && l->pack == &PACKS[LINES[i].pack], "%s: pack %td",
                  LINES[i].id, l->pack - PACKS);
        cr_expect(l->packs == LINES[i].packs, "%s: %zu packs", LINES[i].id, l->packs);
        cr_expect(fx_near(l->leftover.kg / LB, LINES[i].left, 1e-6), "%s: %.4f lb left",
                  LINES[i].id, l->leftover.kg / LB);
        cr_expect(l->cost.minor == LINES[i].cost, "%s: %lld", LINES[i].id,
                  (long long)l->cost.minor);
        cr_expect(list.goods.minor == LINES[i].cost, "%s", LINES[i].id);
        gb_arena_release(&arena);
    }
}

/* Of equal costs the first in the book. */
Test(buy, the_first_of_equal_ones) {
    gb_arena arena;
    gb_buy_list list;
    gb_pack packs[3];
    memcpy(packs, PACKS, sizeof packs);
    packs[0].price.minor = packs[1].price.minor * 2;
    gb_price_book prices = book();
    prices.packs = packs;
    prices.pack_count = ROWS_OF(packs);
    gb_supply_need need = need_of(&FX_CEMENT, 94); /* 1 of the first or 2 of the second */
    fx_open(&arena);
    cr_assert(gb_buy(&need, 1, &prices, &arena, &list) == GB_OK);
    cr_expect(list.lines[0].pack == &packs[0]);
    packs[0].price.minor += 1;
    cr_assert(gb_buy(&need, 1, &prices, &arena, &list) == GB_OK);
    cr_expect(list.lines[0].pack == &packs[1], "a cent more, and the second is cheaper");
    gb_arena_release(&arena);
}

/* A sack of 1-1/4 ft3 of lime at 40 lb/ft3 holds 50 lb: two, and three for 101 lb. */
Test(buy, volume_of_other_materials) {
    const gb_pack packs[] = {{.what = {.text = "hydrated-lime"},
                              .mass = {NAN},
                              .volume = {1.25 * FT3},
                              .price = {1300},
                              .supplier = "hill yard"}};
    const struct {
        double need, left;
        size_t packs;
    } rows[] = {{100, 0, 2}, {101, 49, 3}, {1, 49, 1}};
    gb_price_book prices = book();
    prices.packs = packs;
    prices.pack_count = 1;
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_buy_list list;
        gb_supply_need need = need_of(&FX_LIME, rows[i].need);
        fx_open(&arena);
        cr_assert(gb_buy(&need, 1, &prices, &arena, &list) == GB_OK);
        cr_expect(list.lines[0].packs == rows[i].packs, "%g lb: %zu", rows[i].need,
                  list.lines[0].packs);
        cr_expect(fx_near(list.lines[0].leftover.kg / LB, rows[i].left, 1e-6), "%g lb",
                  rows[i].need);
        gb_arena_release(&arena);
    }
}

/* Two that sell the same cement: the yard at 17.20 and 65.00 for the delivery, the shop
   at 19.00 and 9.00. The whole total decides, with its tax. */
static const struct {
    const char *id;
    size_t bags;
    double tax;
    size_t pack; /* 0: the yard, 1: the shop */
    int64_t total;
} TOTALS[] = {
    /* 17.20 + 65 = 82.20 against 28.00 */
    {"one bag", 1, 0, 1, 2800},
    /* 533.20 + 65 = 598.20 against 589 + 9 = 598.00; 615.40 against 617.00 */
    {"thirty-one", 31, 0, 1, 59800},
    {"thirty-two", 32, 0, 0, 61540},
    /* 6.5 %: 498.80 + 32.42 + 65 = 596.22 against 551 + 35.82 + 9 = 595.82 */
    {"twenty-nine, taxed", 29, 0.065, 1, 59582},
    /* 516 + 33.54 + 65 = 614.54 against 570 + 37.05 + 9 = 616.05 */
    {"thirty, taxed", 30, 0.065, 0, 61454},
};

Test(buy, the_supplier_with_the_least_total) {
    gb_pack packs[] = {PACKS[0], PACKS[0]};
    packs[1].supplier = "corner shop";
    packs[1].price.minor = 1900;
    gb_price_book prices = book();
    prices.packs = packs;
    prices.pack_count = 2;
    for (size_t i = 0; i < ROWS_OF(TOTALS); i++) {
        gb_arena arena;
        gb_buy_list list;
        gb_supply_need need = need_of(&FX_CEMENT, 94 * (double)TOTALS[i].bags);
        prices.tax.of_one = TOTALS[i].tax;
        fx_open(&arena);
        cr_assert(gb_buy(&need, 1, &prices, &arena, &list) == GB_OK);
        cr_expect(list.lines[0].pack == &packs[TOTALS[i].pack], "%s: pack %td",
                  TOTALS[i].id, list.lines[0].pack - packs);
        cr_expect(list.total.minor == TOTALS[i].total, "%s: %lld", TOTALS[i].id,
                  (long long)list.total.minor);
        gb_arena_release(&arena);
    }
}

/* 180 lb of sand are 189 as they lie: 4 bags, 24.40 and 9.00 for the delivery, against
   31.00 for half a yard and 65.00. With cement from the yard its lorry comes anyway. */
Test(buy, a_lorry_that_comes_anyway_costs_nothing_more) {
    gb_arena arena;
    gb_buy_list list;
    gb_price_book prices = book();
    const gb_supply_need needs[] = {need_of(&FX_SAND, 180), need_of(&FX_CEMENT, 94)};
    fx_open(&arena);
    cr_assert(gb_buy(needs, 1, &prices, &arena, &list) == GB_OK);
    cr_expect(list.lines[0].pack == &PACKS[3] && list.total.minor == 3340, "%lld",
              (long long)list.total.minor);
    cr_assert(gb_buy(needs, 2, &prices, &arena, &list) == GB_OK);
    /* 31.00 + 17.20 + 65.00, against 24.40 + 9.00 + 17.20 + 65.00 */
    cr_expect(list.lines[0].pack == &PACKS[2] && list.total.minor == 11320, "%lld",
              (long long)list.total.minor);
    gb_arena_release(&arena);
}

/* Of suppliers with the same total the first in the book; what one alone sells is bought
   there at any price. */
Test(buy, equal_suppliers_and_a_dear_one) {
    gb_arena arena;
    gb_buy_list list;
    gb_pack packs[] = {PACKS[0], PACKS[0], PACKS[4]};
    packs[0].supplier = "corner shop";
    packs[1].supplier = "quay depot";
    packs[2].supplier = "far away";
    packs[2].price.minor = 99999;
    gb_price_book prices = book();
    prices.packs = packs;
    prices.pack_count = 3;
    prices.delivery_count = 0;
    const gb_supply_need needs[] = {need_of(&FX_CEMENT, 188), blend_of(80)};
    fx_open(&arena);
    cr_assert(gb_buy(needs, 2, &prices, &arena, &list) == GB_OK);
    cr_expect(list.lines[0].pack == &packs[0] && list.lines[1].pack == &packs[2]);
    cr_expect(list.missing == 0 && list.total.minor == 2 * 1720 + 99999);
    gb_arena_release(&arena);
}

/* Tax is in the total: 10.50 untaxed is less than 10.00 and 10 %, from the same supplier,
   from another one, and beside sand at 31.00 that the dearer of the two alone sells. */
Test(buy, untaxed_may_be_less_in_all) {
    const struct {
        const char *id, *other; /* the supplier of the untaxed cement */
        size_t needs;
        int64_t total;
    } rows[] = {
        {"another supplier", "corner shop", 1, 1050},
        {"the same supplier", "hill yard", 1, 1050},
        {"another, with sand", "corner shop", 2, 1050 + 3410},
        {"the same, with sand", "hill yard", 2, 1050 + 3410},
    };
    gb_pack packs[] = {PACKS[0], PACKS[0], PACKS[2]};
    packs[0].price.minor = 1000;
    packs[1].price.minor = 1050;
    packs[1].untaxed = true;
    gb_price_book prices = book();
    prices.packs = packs;
    prices.pack_count = 3;
    prices.delivery_count = 0;
    prices.tax.of_one = 0.1;
    const gb_supply_need needs[] = {need_of(&FX_CEMENT, 94), need_of(&FX_SAND, 500)};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_buy_list list;
        packs[1].supplier = rows[i].other;
        fx_open(&arena);
        cr_assert(gb_buy(needs, rows[i].needs, &prices, &arena, &list) == GB_OK);
        cr_expect(list.total.minor == rows[i].total, "%s: %lld, not %lld", rows[i].id,
                  (long long)list.total.minor, (long long)rows[i].total);
        gb_arena_release(&arena);
    }
}

/* The least total of a book, by trying every pack for every need. */
enum { TRIED_NEEDS = 3, TRIED_PACKS = 9 };

static int64_t tax_of(int64_t sum, int64_t percent) {
    return (sum * percent + 50) / 100;
}

static int64_t total_of(const gb_price_book *b, const size_t *pick,
                        const int64_t *costs) {
    int64_t goods = 0, taxed = 0, delivery = 0;
    for (size_t n = 0; n < TRIED_NEEDS; n++) {
        int64_t cost = costs[n * TRIED_PACKS + pick[n]];
        goods += cost;
        taxed += b->packs[pick[n]].untaxed ? 0 : cost;
    }
    for (size_t d = 0; d < b->delivery_count; d++) {
        bool comes = false;
        for (size_t n = 0; n < TRIED_NEEDS; n++)
            comes = comes ||
                    strcmp(b->packs[pick[n]].supplier, b->deliveries[d].supplier) == 0;
        delivery += comes ? b->deliveries[d].charge.minor : 0;
    }
    return goods + tax_of(taxed, 7) + delivery;
}

static int64_t least_total(const gb_price_book *b, const int64_t *costs) {
    int64_t least = INT64_MAX;
    for (size_t i = 0; i < TRIED_PACKS * TRIED_PACKS * TRIED_PACKS; i++) {
        const size_t pick[] = {i % TRIED_PACKS, i / TRIED_PACKS % TRIED_PACKS,
                               i / TRIED_PACKS / TRIED_PACKS};
        bool sold = true;
        for (size_t n = 0; n < TRIED_NEEDS; n++)
            sold = sold && costs[n * TRIED_PACKS + pick[n]] >= 0;
        int64_t total = sold ? total_of(b, pick, costs) : INT64_MAX;
        if (total < least)
            least = total;
    }
    return least;
}

/* Three needs in whole bags; nine packs, each of one to four bags of one of them, by one
   of four suppliers; what is taxed is taxed at 7 %. */
static const char *const SUPPLIERS[] = {"hill yard", "corner shop", "quay depot",
                                        "far away"};
enum { TRIED_SUPPLIERS = 4 };

/* One pack, and what each need costs in it; -1: it is another material. */
static gb_pack random_pack(size_t k, const size_t *bags, fx_random *r, int64_t *costs) {
    static const char *const names[] = {"portland-cement", "hydrated-lime",
                                        "bagged/setting"};
    static const double bag_lb[] = {94, 50, 80};
    size_t what =
        k < TRIED_NEEDS ? k : fx_whole(r, 0, 2); /* each is sold once at least */
    size_t each = fx_whole(r, 1, 4);
    int64_t price = (int64_t)(each * fx_whole(r, 800, 1600));
    for (size_t n = 0; n < TRIED_NEEDS; n++)
        costs[n * TRIED_PACKS + k] =
            n == what ? price * (int64_t)((bags[n] + each - 1) / each) : -1;
    return (gb_pack){.what = {.text = names[what]},
                     .mass = {(double)each * bag_lb[what] * LB},
                     .volume = {NAN},
                     .price = {price},
                     .supplier = SUPPLIERS[fx_whole(r, 0, TRIED_SUPPLIERS - 1)]};
}

/* `untaxed` in ten packs bear no tax. A pack is chosen by its own tax, in whole cents,
   and the tax is on the sum: three needs may differ by a cent each. */
static void try_book(unsigned seed, size_t untaxed) {
    fx_random r = fx_seeded(seed);
    const size_t bags[] = {fx_whole(&r, 1, 9), fx_whole(&r, 1, 5), fx_whole(&r, 1, 7)};
    const gb_supply_need needs[] = {need_of(&FX_CEMENT, 94 * (double)bags[0]),
                                    need_of(&FX_LIME, 50 * (double)bags[1]),
                                    blend_of(80 * (double)bags[2])};
    gb_pack packs[TRIED_PACKS];
    int64_t costs[TRIED_NEEDS * TRIED_PACKS];
    for (size_t k = 0; k < TRIED_PACKS; k++)
        packs[k] = random_pack(k, bags, &r, costs);
    for (size_t k = 0; k < TRIED_PACKS && untaxed > 0; k++)
        packs[k].untaxed = fx_whole(&r, 1, 10) <= untaxed;
    gb_delivery deliveries[TRIED_SUPPLIERS];
    for (size_t d = 0; d < TRIED_SUPPLIERS; d++)
        deliveries[d] = (gb_delivery){.supplier = SUPPLIERS[d],
                                      .charge = {(int64_t)fx_whole(&r, 0, 4000)}};
    gb_price_book prices = {.currency = "USD",
                            .decimals = 2,
                            .tax = {0.07},
                            .packs = packs,
                            .pack_count = TRIED_PACKS,
                            .deliveries = deliveries,
                            .delivery_count = TRIED_SUPPLIERS};
    gb_arena arena;
    gb_buy_list list;
    fx_open(&arena);
    cr_assert(gb_buy(needs, TRIED_NEEDS, &prices, &arena, &list) == GB_OK);
    int64_t least = least_total(&prices, costs);
    int64_t over = list.total.minor - least;
    int64_t slack = untaxed > 0 ? TRIED_NEEDS : 0;
    cr_expect(list.missing == 0 && over >= 0 && over <= slack,
              "seed %u, %zu in ten untaxed: %lld, not %lld", seed, untaxed,
              (long long)list.total.minor, (long long)least);
    gb_arena_release(&arena);
}

Test(buy, no_choice_costs_less_in_all) {
    for (unsigned seed = 1; seed <= 400; seed++)
        try_book(seed, 0);
}

Test(buy, no_choice_costs_less_with_some_untaxed) {
    for (unsigned seed = 1; seed <= 400; seed++)
        try_book(seed, 1 + seed % 9);
}

/* However many suppliers a book names, up to 64, the least total is found where one after
   another can be dropped: 11.00 from the second of them, not 10.00 and 65.00 for its
   delivery from the first. More are refused. */
Test(buy, many_suppliers) {
    enum { MOST = 65 };
    const gb_delivery delivery = {.supplier = "s10", .charge = {6500}};
    char names[MOST][4];
    gb_pack packs[MOST];
    for (size_t i = 0; i < MOST; i++) {
        (void)snprintf(names[i], sizeof names[i], "s%zu", 10 + i);
        packs[i] = PACKS[0];
        packs[i].price.minor = (int64_t)(1000 + 100 * i);
        packs[i].supplier = names[i];
    }
    for (size_t count = 2; count <= MOST; count++) {
        gb_arena arena;
        gb_buy_list list;
        gb_price_book prices = book();
        prices.packs = packs;
        prices.pack_count = count;
        prices.deliveries = &delivery;
        prices.delivery_count = 1;
        gb_supply_need need = need_of(&FX_CEMENT, 94);
        fx_open(&arena);
        gb_status s = gb_buy(&need, 1, &prices, &arena, &list);
        cr_expect(s == (count < MOST ? GB_OK : GB_OVERFLOW), "%zu: status %d", count, s);
        if (s == GB_OK)
            cr_expect(list.total.minor == 1100, "%zu suppliers: %lld", count,
                      (long long)list.total.minor);
        gb_arena_release(&arena);
    }
}

/* Tax, half a cent up: 5160 x 6.5 % = 335.4; 1000 x 0.05 % = 0.5; and so on. */
static const struct {
    const char *id;
    int64_t price;
    double rate;
    int64_t tax;
} TAXES[] = {
    {"below half", 5160, 0.065, 335},
    {"half", 1000, 0.0005, 1},
    {"below a half", 999, 0.0005, 0},
    {"half by 6.5 %", 900, 0.065, 59},    /* 58.5 */
    {"half by 19 %", 50, 0.19, 10},       /* 9.5 */
    {"half by 7.25 %", 200, 0.0725, 15},  /* 14.5, and 0.0725 is under itself as double */
    {"half by 4.5 %", 100, 0.045, 5},     /* 4.5, the same */
    {"half by 8.75 %", 1000, 0.0875, 88}, /* 87.5, the same */
    {"over half", 1060, 0.0725, 77},      /* 76.85 */
    {"none", 5160, 0, 0},
    {"all", 5160, 1, 5160},
    {"one cent", 1, 0.49, 0},
    {"one cent, half", 1, 0.5, 1},
    {"nothing", 0, 0.19, 0},
};

static gb_status buy_one(int64_t price, bool untaxed, double rate, gb_arena *arena,
                         gb_buy_list *list) {
    gb_pack *pack = gb_arena_take(arena, 1, sizeof *pack);
    gb_supply_need *need = gb_arena_take(arena, 1, sizeof *need);
    cr_assert(pack != NULL && need != NULL);
    *pack = PACKS[0];
    pack->price.minor = price;
    pack->untaxed = untaxed;
    *need = need_of(&FX_CEMENT, 94);
    gb_price_book prices = book();
    prices.packs = pack;
    prices.pack_count = 1;
    prices.delivery_count = 0;
    prices.tax.of_one = rate;
    return gb_buy(need, 1, &prices, arena, list);
}

Test(buy, tax_half_up) {
    for (size_t i = 0; i < ROWS_OF(TAXES); i++) {
        gb_arena arena;
        gb_buy_list list;
        fx_open(&arena);
        cr_assert(buy_one(TAXES[i].price, false, TAXES[i].rate, &arena, &list) == GB_OK);
        cr_expect(list.tax.minor == TAXES[i].tax, "%s: %lld", TAXES[i].id,
                  (long long)list.tax.minor);
        cr_expect(list.total.minor == TAXES[i].price + TAXES[i].tax, "%s", TAXES[i].id);
        cr_assert(buy_one(TAXES[i].price, true, TAXES[i].rate, &arena, &list) == GB_OK);
        cr_expect(list.tax.minor == 0 && list.total.minor == TAXES[i].price,
                  "%s: untaxed", TAXES[i].id);
        gb_arena_release(&arena);
    }
}

/* Every sum of cents whose tax ends in half a cent, at the rates that are a little under
   themselves as doubles: whole numbers say what comes. Rates in 1/10000. */
Test(buy, tax_half_up_at_every_half) {
    const int64_t rates[] = {450, 725, 875, 190, 1900, 650, 1025, 2050};
    for (size_t i = 0; i < ROWS_OF(rates); i++) {
        gb_arena arena;
        fx_open(&arena);
        size_t halves = 0;
        for (int64_t cents = 1; cents < 20000; cents++) {
            if (cents * rates[i] % 10000 != 5000)
                continue;
            gb_buy_list list;
            halves++;
            double rate = (double)rates[i] / 10000.0;
            cr_assert(buy_one(cents, false, rate, &arena, &list) == GB_OK);
            cr_expect(list.tax.minor == (cents * rates[i] + 5000) / 10000,
                      "%lld at %lld: %lld", (long long)cents, (long long)rates[i],
                      (long long)list.tax.minor);
        }
        cr_expect(halves > 10, "%lld: %zu halves", (long long)rates[i], halves);
        gb_arena_release(&arena);
    }
}

/* A sum of 100 million still has an exact double; 10000000200 x 10.25 % = 1025000020.5,
   and half goes up. */
Test(buy, tax_half_up_in_a_large_sum) {
    gb_arena arena;
    gb_buy_list list;
    fx_open(&arena);
    cr_assert(buy_one(10000000200, false, 0.1025, &arena, &list) == GB_OK);
    cr_expect(list.tax.minor == 1025000021, "%lld", (long long)list.tax.minor);
    gb_arena_release(&arena);
}

/* Every ending of a sum, at every size up to 10^14 cents and at rates that are a little
   off as doubles: whole numbers say what comes. Rates in 1/10000; each sum gives a tax of
   sum x rate / 10000, half up. */
static void tax_of_sums(int64_t from, size_t *halves) {
    const int64_t rates[] = {450, 725, 875, 1900, 650, 1025, 2050, 5, 10000};
    for (size_t i = 0; i < ROWS_OF(rates); i++) {
        for (int64_t k = 0; k < 10000; k += 1) {
            /* the ones about a half: the rest is sampled */
            int64_t end = (from + k) % 10000 * rates[i] % 10000;
            if ((end < 4900 || end > 5100) && k % 97 != 0)
                continue;
            gb_arena arena;
            gb_buy_list list;
            int64_t sum = from + k;
            int64_t want =
                sum / 10000 * rates[i] + (sum % 10000 * rates[i] + 5000) / 10000;
            fx_open(&arena);
            cr_assert(buy_one(sum, false, (double)rates[i] / 10000.0, &arena, &list) ==
                      GB_OK);
            cr_expect(list.tax.minor == want, "%lld at %lld: %lld, not %lld",
                      (long long)sum, (long long)rates[i], (long long)list.tax.minor,
                      (long long)want);
            *halves += end == 5000;
            gb_arena_release(&arena);
        }
    }
}

Test(buy, tax_half_up_in_sums_of_every_size) {
    const int64_t sizes[] = {1000000, 1000000000, 100000000000, 10000000000000};
    size_t halves = 0;
    for (size_t i = 0; i < ROWS_OF(sizes); i++)
        tax_of_sums(sizes[i], &halves);
    cr_expect(halves > 100, "%zu halves", halves);
}

/* 137931034482931 x 7.25 % = 10000000000012.4975, below the half by a quarter of a
   hundredth: 931 x 725 = 674975. 10^15 + 13 at 19 %: 190000000000002.47. */
Test(buy, tax_below_a_half_in_a_very_large_sum) {
    const struct {
        int64_t sum;
        double rate;
        int64_t tax;
    } rows[] = {{137931034482931, 0.0725, 10000000000012},
                {1000000000000013, 0.19, 190000000000002}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_buy_list list;
        fx_open(&arena);
        cr_assert(buy_one(rows[i].sum, false, rows[i].rate, &arena, &list) == GB_OK);
        cr_expect(list.tax.minor == rows[i].tax, "%lld: %lld, not %lld",
                  (long long)rows[i].sum, (long long)list.tax.minor,
                  (long long)rows[i].tax);
        gb_arena_release(&arena);
    }
}

/* Tax is on the sum of what is taxed, not on every line: 3 x 0.5 = 1.5, 2 cents. */
Test(buy, tax_is_on_the_sum) {
    gb_arena arena;
    gb_buy_list list;
    gb_pack packs[ROWS_OF(PACKS)];
    memcpy(packs, PACKS, sizeof packs);
    packs[0].price.minor = packs[2].price.minor = packs[4].price.minor = 1000;
    packs[1].price.minor = packs[3].price.minor = 100000;
    gb_price_book prices = book();
    prices.packs = packs;
    prices.tax.of_one = 0.0005;
    prices.delivery_count = 0;
    const gb_supply_need needs[] = {need_of(&FX_CEMENT, 94), need_of(&FX_SAND, 80),
                                    blend_of(80)};
    fx_open(&arena);
    cr_assert(gb_buy(needs, 3, &prices, &arena, &list) == GB_OK);
    cr_expect(list.goods.minor == 3000 && list.tax.minor == 2, "%lld",
              (long long)list.tax.minor);
    packs[2].untaxed = true;
    cr_assert(gb_buy(needs, 3, &prices, &arena, &list) == GB_OK);
    cr_expect(list.tax.minor == 1, "2000 are taxed: 1.0");
    gb_arena_release(&arena);
}

/* Delivery once for each supplier that something is bought from. */
Test(buy, delivery_only_where_something_is_bought) {
    gb_arena arena;
    gb_buy_list list;
    gb_price_book prices = book();
    const gb_supply_need needs[] = {need_of(&FX_CEMENT, 94), need_of(&FX_SAND, 1000),
                                    blend_of(80), need_of(&FX_SAND, 40)};
    const struct {
        size_t from, count;
        int64_t delivery;
    } rows[] = {
        {0, 1, 6500},  {0, 2, 6500},               /* both from the hill yard: once */
        {0, 3, 11300}, {2, 1, 4800}, {2, 2, 5700}, /* the depot and the corner shop */
        {0, 4, 12200}, {0, 0, 0},
    };
    fx_open(&arena);
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        cr_assert(gb_buy(&needs[rows[i].from], rows[i].count, &prices, &arena, &list) ==
                  GB_OK);
        cr_expect(list.delivery.minor == rows[i].delivery, "row %zu: %lld", i,
                  (long long)list.delivery.minor);
        cr_expect(list.total.minor ==
                      list.goods.minor + list.tax.minor + list.delivery.minor,
                  "row %zu: the total is the sum", i);
    }
    gb_arena_release(&arena);
}

/* Nothing needed is nothing bought: no pack, so no lorry either, unless the same yard has
   something else to bring. */
Test(buy, no_delivery_for_no_packs) {
    gb_price_book prices = book();
    const struct {
        double cement, sand, blend; /* lb */
        int64_t delivery;
    } rows[] = {
        {0, 0, 0, 0},       {94, 0, 0, 6500}, /* the hill yard brings the cement */
        {0, 40, 0, 900},    {0, 0, 80, 4800},
        {94, 0, 80, 11300}, {1e-12, 0, 0, 6500}, /* a grain is a bag */
    };
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_buy_list list;
        const gb_supply_need needs[] = {need_of(&FX_CEMENT, rows[i].cement),
                                        need_of(&FX_SAND, rows[i].sand),
                                        blend_of(rows[i].blend)};
        fx_open(&arena);
        cr_assert(gb_buy(needs, 3, &prices, &arena, &list) == GB_OK);
        cr_expect(list.delivery.minor == rows[i].delivery, "row %zu: %lld", i,
                  (long long)list.delivery.minor);
        bool bought = list.lines[0].packs > 0;
        cr_expect(bought == (rows[i].cement > 0), "row %zu", i);
        cr_expect(list.missing == 0, "row %zu: nothing is missing", i);
        gb_arena_release(&arena);
    }
}

Test(buy, what_is_not_sold_is_told_and_not_summed) {
    gb_arena arena;
    gb_buy_list list;
    gb_price_book prices = book();
    const gb_supply_need needs[] = {need_of(&FX_LIME, 50), need_of(&FX_CEMENT, 94),
                                    need_of(&FX_LIME, 10)};
    fx_open(&arena);
    cr_assert(gb_buy(needs, 3, &prices, &arena, &list) == GB_OK);
    cr_expect(list.missing == 2 && list.line_count == 3);
    cr_expect(list.lines[0].pack == NULL && list.lines[0].need == &needs[0]);
    cr_expect(list.lines[0].packs == 0 && list.lines[0].cost.minor == 0);
    cr_expect(list.lines[1].pack == &PACKS[0]);
    cr_expect(list.goods.minor == 1720 && list.delivery.minor == 6500);
    prices.pack_count = 0;
    cr_assert(gb_buy(needs, 3, &prices, &arena, &list) == GB_OK);
    cr_expect(list.missing == 3 && list.total.minor == 0,
              "an empty book delivers nothing");
    gb_arena_release(&arena);
}

/* A material and a blend are found by their whole name. */
Test(buy, names_are_whole) {
    gb_arena arena;
    gb_buy_list list;
    gb_pack pack = PACKS[0];
    gb_price_book prices = book();
    prices.packs = &pack;
    prices.pack_count = 1;
    const char *names[] = {"portland", "portland-cement-2", "Portland-cement", ""};
    gb_supply_need need = need_of(&FX_CEMENT, 94);
    fx_open(&arena);
    for (size_t i = 0; i < ROWS_OF(names); i++) {
        pack.what.text = names[i];
        cr_assert(gb_buy(&need, 1, &prices, &arena, &list) == GB_OK);
        cr_expect(list.missing == 1, "'%s'", names[i]);
    }
    gb_arena_release(&arena);
}

/* Sums that no int64 holds are refused, and nothing is written. */
static const struct {
    const char *id;
    int64_t cement, sand, delivery;
    double tax;
    gb_status status;
} SUMS[] = {
    {"small", 1720, 3100, 6500, 0.065, GB_OK},
    /* two packs of each are bought */
    {"line", INT64_MAX / 2 + 1, 1, 0, 0, GB_OVERFLOW},
    {"goods", INT64_MAX / 4 + 1, INT64_MAX / 4 + 1, 0, 0, GB_OVERFLOW},
    {"delivery", 1, 1, INT64_MAX, 0, GB_OVERFLOW},
    {"tax beyond 2^53", 50000000000000000, 1, 0, 0.1, GB_OK},
    /* 8e18 and half as much are over 9.22e18; 6e18 and half of it are not */
    {"goods and tax", 4000000000000000000, 1, 0, 0.5, GB_OVERFLOW},
    {"goods and less tax", 3000000000000000000, 1, 0, 0.5, GB_OK},
    {"total", 1, 1, INT64_MAX - 3, 0, GB_OVERFLOW},
    {"the largest total", 1, 1, INT64_MAX - 4, 0, GB_OK},
};

Test(buy, sums_beyond_int64_are_refused) {
    for (size_t i = 0; i < ROWS_OF(SUMS); i++) {
        gb_arena arena;
        gb_buy_list list, before;
        fx_open(&arena);
        gb_pack packs[] = {PACKS[0], PACKS[2]};
        packs[0].price.minor = SUMS[i].cement;
        packs[1].price.minor = SUMS[i].sand;
        gb_delivery delivery = {.supplier = "hill yard", .charge = {SUMS[i].delivery}};
        gb_price_book prices = book();
        prices.packs = packs;
        prices.pack_count = 2;
        prices.deliveries = &delivery;
        prices.delivery_count = 1;
        prices.tax.of_one = SUMS[i].tax;
        const gb_supply_need needs[] = {need_of(&FX_CEMENT, 188),
                                        need_of(&FX_SAND, 2160)};
        memset(&list, 0x5a, sizeof list);
        memcpy(&before, &list, sizeof list);
        gb_status s = gb_buy(needs, 2, &prices, &arena, &list);
        cr_expect(s == SUMS[i].status, "%s: status %d", SUMS[i].id, s);
        if (s != GB_OK)
            cr_expect(memcmp(&list, &before, sizeof list) == 0, "%s: written",
                      SUMS[i].id);
        gb_arena_release(&arena);
    }
}

/* A tax that no double holds: 1.1 x 10^17 and 13 cents at 6.5 % are 7150000000000000.845;
   9 x 10^17 and 30 at 5 % are 45000000000000001.5, half up. */
Test(buy, tax_is_exact_in_the_largest_sums) {
    const struct {
        int64_t sum;
        double rate;
        int64_t tax;
    } rows[] = {{110000000000000013, 0.065, 7150000000000001},
                {900000000000000030, 0.05, 45000000000000002},
                {900000000000000029, 0.05, 45000000000000001},
                {100000000000000002, 0.1, 10000000000000000}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_buy_list list;
        fx_open(&arena);
        cr_assert(buy_one(rows[i].sum, false, rows[i].rate, &arena, &list) == GB_OK);
        cr_expect(list.tax.minor == rows[i].tax, "%lld: %lld, not %lld",
                  (long long)rows[i].sum, (long long)list.tax.minor,
                  (long long)rows[i].tax);
        gb_arena_release(&arena);
    }
}

/* 4 x 2^62 is 2^64, which an int64 that wraps takes for nothing. */
Test(buy, a_line_that_wraps_to_nothing_is_refused) {
    gb_arena arena;
    gb_buy_list list;
    gb_pack pack = PACKS[0];
    gb_price_book prices = book();
    pack.price.minor = INT64_C(1) << 62;
    prices.packs = &pack;
    prices.pack_count = 1;
    gb_supply_need need = need_of(&FX_CEMENT, 376);
    fx_open(&arena);
    cr_expect(gb_buy(&need, 1, &prices, &arena, &list) == GB_OVERFLOW);
    gb_arena_release(&arena);
}

/* A need below zero or without end, and a pack that is not above zero, whether or not it
   would be chosen, are refused, and nothing is written. */
static void expect_refused(const gb_supply_need *need, const gb_pack *packs, size_t count,
                           const char *id, double bad) {
    gb_arena arena;
    gb_buy_list list, before;
    gb_price_book prices = book();
    prices.packs = packs;
    prices.pack_count = count;
    memset(&list, 0x5a, sizeof list);
    memcpy(&before, &list, sizeof list);
    fx_open(&arena);
    gb_status s = gb_buy(need, 1, &prices, &arena, &list);
    cr_expect(s == GB_NOT_POSITIVE, "%s of %g: status %d", id, bad, s);
    cr_expect(memcmp(&list, &before, sizeof list) == 0, "%s of %g: written", id, bad);
    gb_arena_release(&arena);
}

Test(buy, bad_needs_and_packs_are_refused) {
    for (size_t i = 0; i < FX_BADS; i++) {
        gb_supply_need need = need_of(&FX_CEMENT, 94);
        gb_pack packs[] = {PACKS[0], PACKS[0]};
        packs[0].mass.kg = FX_BAD[i]; /* no volume is stated in its place */
        expect_refused(&need, packs, 1, "pack", FX_BAD[i]);
        expect_refused(&need, packs, 2, "the first pack of two", FX_BAD[i]);
        packs[0].mass.kg = NAN;
        packs[0].volume.m3 = FX_BAD[i];
        expect_refused(&need, packs, 1, "volume", FX_BAD[i]);
        if (FX_BAD[i] == 0)
            continue;
        need.mass.kg = FX_BAD[i];
        expect_refused(&need, &PACKS[0], 1, "dry need", FX_BAD[i]);
        need = need_of(&FX_CEMENT, 94);
        need.lying.kg = FX_BAD[i];
        expect_refused(&need, &PACKS[0], 1, "need as it lies", FX_BAD[i]);
        need = need_of(&FX_CEMENT, 94);
        need.loose.m3 = FX_BAD[i];
        expect_refused(&need, &PACKS[0], 1, "need by volume", FX_BAD[i]);
    }
}

/* A blend has no loose density: a pack of it by volume is never bought, alone or beside
   one by mass. */
Test(buy, a_blend_is_not_sold_by_volume) {
    gb_arena arena;
    gb_buy_list list;
    gb_supply_need need = blend_of(160);
    gb_pack packs[] = {PACKS[4], PACKS[4]};
    packs[0].mass.kg = NAN;
    packs[0].volume.m3 = 9 * FT3;
    packs[0].price.minor = 1;
    gb_price_book prices = book();
    prices.packs = packs;
    fx_open(&arena);
    prices.pack_count = 1;
    gb_status s = gb_buy(&need, 1, &prices, &arena, &list);
    cr_expect(s != GB_OK || list.missing == 1, "a volume of a blend is bought");
    prices.pack_count = 2;
    s = gb_buy(&need, 1, &prices, &arena, &list);
    cr_expect(s != GB_OK || list.lines[0].pack == &packs[1], "status %d", s);
    gb_arena_release(&arena);
}

/* The supplies of the library job: 2.625 bags of 1:4 are 246.75 lb of cement and 840 lb
   of sand, 924 with its own 10 %; slurry 36.01 lb of cement. */
Test(supplies, of_the_library_job) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    double slurry = 1.2 * (70 + 5.0 / 6) / 192 * FT3 * 1000 / (1 / 3.15 + 0.45) / LB;
    cr_expect(fx_near(slurry, 36.01, 0.005), "the arithmetic above: %.4f", slurry);
    cr_expect(plan.supply_count == 2, "%zu: cement of both mixes is one",
              plan.supply_count);
    cr_expect(
        fx_near(fx_supply(&plan, FX_CEMENT.name)->mass.kg / LB, 246.75 + slurry, 1e-6));
    cr_expect(fx_near(fx_supply(&plan, FX_SAND.name)->mass.kg / LB, 924, 1e-6));
    cr_expect(fx_supply(&plan, FX_CEMENT.name)->pack.kg == FX_CEMENT.pack.kg);
    cr_expect(isnan(fx_supply(&plan, FX_SAND.name)->pack.kg), "sand comes loose");
    gb_arena_release(&arena);
}

/* Sand lies with its moisture, by mass of dry sand, and no other material does: 924 lb
   and 2 %, 5 %, 8 % or what the job states of it. */
Test(supplies, as_they_lie) {
    const struct {
        const char *id;
        gb_sand_state state;
        double stated, lying;
    } rows[] = {
        {"nearly dry", GB_NEARLY_DRY, NAN, 942.48},
        {"damp", GB_DAMP, NAN, 970.2},
        {"wet", GB_WET, NAN, 997.92},
        {"dry as stated", GB_WET, 0, 924},
        {"as stated", GB_DAMP, 0.035, 956.34},
    };
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        f.job.sand.state = rows[i].state;
        f.job.sand.moisture.of_one = rows[i].stated;
        fx_volume(&f, &FX_BLEND, 2 * 0.66 * FT3); /* two bags of 80 lb */
        fx_plan(&f, &arena, &plan);
        const gb_supply_need *sand = fx_supply(&plan, FX_SAND.name);
        const gb_supply_need *cement = fx_supply(&plan, FX_CEMENT.name);
        const gb_supply_need *blend = fx_supply(&plan, FX_BLEND.id);
        cr_expect(fx_near(sand->mass.kg / LB, 924, 1e-6), "%s: dry", rows[i].id);
        cr_expect(fx_near(sand->lying.kg / LB, rows[i].lying, 1e-6), "%s: %.4f lb",
                  rows[i].id, sand->lying.kg / LB);
        cr_expect(cement->lying.kg == cement->mass.kg, "%s: cement", rows[i].id);
        cr_expect(fx_near(blend->lying.kg / LB, 160, 1e-9), "%s: blend", rows[i].id);
        gb_arena_release(&arena);
    }
}

/* Two plans: one row for each material or blend, masses added, first named first. */
Test(supplies, of_two_plans) {
    gb_arena arena;
    gb_plan plans[2];
    fx_job f, g;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plans[0]);
    fx_empty(&g);
    fx_volume(&g, &FX_BLEND, 0.66 * 3 * FT3); /* three bags of 80 lb */
    fx_volume(&g, &FX_LIME_MORTAR, 1 * FT3);
    g.job.sand.state = GB_WET; /* another pile: 8 %, and 5 % on the first job */
    fx_plan(&g, &arena, &plans[1]);
    const gb_supply_need *needs = NULL;
    size_t count = 0;
    cr_assert(gb_merge_supplies(plans, 2, &arena, &needs, &count) == GB_OK);
    const char *names[] = {"portland-cement", "masonry-sand", "bagged/setting",
                           "hydrated-lime"};
    cr_assert(count == ROWS_OF(names), "%zu", count);
    double cement = fx_supply(&plans[0], "portland-cement")->mass.kg +
                    fx_supply(&plans[1], "portland-cement")->mass.kg;
    double sand = fx_supply(&plans[0], "masonry-sand")->mass.kg +
                  fx_supply(&plans[1], "masonry-sand")->mass.kg;
    const double masses[] = {cement, sand, 240 * LB,
                             fx_supply(&plans[1], "hydrated-lime")->mass.kg};
    for (size_t i = 0; i < count; i++) {
        const gb_supply_need *n = &needs[i];
        const char *name = n->material != NULL ? n->material->name : n->blend->id;
        cr_expect(strcmp(name, names[i]) == 0, "row %zu is %s", i, name);
        cr_expect(fx_same(n->mass.kg, masses[i]), "%s: %.4f kg", name, n->mass.kg);
    }
    double lying = 924 * LB * 1.05 + fx_supply(&plans[1], "masonry-sand")->mass.kg * 1.08;
    cr_expect(fx_near(needs[1].lying.kg, lying, 1e-6), "%.4f kg, not %.4f",
              needs[1].lying.kg, lying);
    /* the merging leaves the plans as they were */
    cr_expect(fx_same(fx_supply(&plans[1], FX_BLEND.id)->mass.kg, 240 * LB));
    gb_arena_release(&arena);
}

Test(supplies, of_no_plan_and_of_the_same_twice) {
    gb_arena arena;
    gb_plan plans[2];
    fx_job f;
    const gb_supply_need *needs = NULL;
    size_t count = 9;
    fx_open(&arena);
    cr_assert(gb_merge_supplies(plans, 0, &arena, &needs, &count) == GB_OK);
    cr_expect(count == 0);
    fx_library(&f);
    fx_plan(&f, &arena, &plans[0]);
    plans[1] = plans[0];
    cr_assert(gb_merge_supplies(plans, 2, &arena, &needs, &count) == GB_OK);
    cr_assert(count == plans[0].supply_count);
    for (size_t i = 0; i < count; i++)
        cr_expect(fx_same(needs[i].mass.kg, 2 * plans[0].supplies[i].mass.kg) &&
                      fx_same(needs[i].lying.kg, 2 * plans[0].supplies[i].lying.kg),
                  "%zu", i);
    gb_arena_release(&arena);
}
