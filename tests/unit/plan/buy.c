/* Buying: whole packs, the cheapest of several, tax, delivery, and what is not sold. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "fixture.h"

static const gb_share DRY = {0.0}, DAMP = {0.05};

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

static gb_supply_need need_of(const gb_material *material, double lb) {
    return (gb_supply_need){
        .material = material, .mass = {lb * LB}, .pack = material->pack};
}

static gb_supply_need blend_of(double lb) {
    return (gb_supply_need){.blend = &FX_BLEND, .mass = {lb * LB}, .pack = {80 * LB}};
}

/* One need against the book above. */
static const struct {
    const char *id;
    const gb_material *material; /* NULL: the blend */
    double need;                 /* lb, dry */
    double moisture;
    size_t pack, packs; /* row of PACKS, and how many */
    double left;        /* lb */
    int64_t cost;
} LINES[] = {
    /* 3 x 17.20 = 51.60 against 6 x 10.95 = 65.70 */
    {"three bags", &FX_CEMENT, 282, 0.05, 0, 3, 0, 5160},
    /* 4 x 17.20 = 68.80 against 7 x 10.95 = 76.65; 376 - 282.8 */
    {"a little over three", &FX_CEMENT, 282.8, 0.05, 0, 4, 93.2, 6880},
    /* 2 x 17.20 = 34.40 against 3 x 10.95 = 32.85 */
    {"one and a half", &FX_CEMENT, 141, 0.05, 1, 3, 0, 3285},
    {"a handful", &FX_CEMENT, 5, 0.05, 1, 1, 42, 1095},
    /* 13.5 ft3 x 80 = 1080 lb dry, whatever the moisture */
    {"half a yard", &FX_SAND, 1080, 0.05, 2, 1, 0, 3100},
    {"half a yard, wet", &FX_SAND, 1080, 0.08, 2, 1, 0, 3100},
    {"over half a yard", &FX_SAND, 1081, 0.05, 2, 2, 1079, 6200},
    /* 50 lb as it lies: dry 50 / 1.05 = 47.619 lb */
    {"sand, three bags", &FX_SAND, 100, 0.05, 3, 3, 3 * 50 / 1.05 - 100, 1830},
    {"sand, two bags", &FX_SAND, 100, 0.00, 3, 2, 0, 1220},
    {"sand, two bags moist", &FX_SAND, 95, 0.05, 3, 2, 2 * 50 / 1.05 - 95, 1220},
    {"sand, exact moist", &FX_SAND, 150 / 1.08, 0.08, 3, 3, 0, 1830},
    {"blend", NULL, 1067, 0.05, 4, 14, 53, 10360}, /* 13.34 bags of 80 lb, 7.40 each */
    {"blend, exact", NULL, 1120, 0.05, 4, 14, 0, 10360},
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
        gb_share moisture = {LINES[i].moisture};
        cr_assert(gb_buy(&need, 1, &prices, moisture, &arena, &list) == GB_OK, "%s",
                  LINES[i].id);
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
    cr_assert(gb_buy(&need, 1, &prices, DAMP, &arena, &list) == GB_OK);
    cr_expect(list.lines[0].pack == &packs[0]);
    packs[0].price.minor += 1;
    cr_assert(gb_buy(&need, 1, &prices, DAMP, &arena, &list) == GB_OK);
    cr_expect(list.lines[0].pack == &packs[1], "a cent more, and the second is cheaper");
    gb_arena_release(&arena);
}

/* A sack of 1-1/4 ft3 of lime at 40 lb/ft3 holds 50 lb; moisture is the sand's alone. */
Test(buy, volume_and_moisture_of_other_materials) {
    gb_arena arena;
    gb_buy_list list;
    const gb_pack packs[] = {{.what = {.text = "hydrated-lime"},
                              .mass = {NAN},
                              .volume = {1.25 * FT3},
                              .price = {1300},
                              .supplier = "hill yard"}};
    gb_price_book prices = book();
    prices.packs = packs;
    prices.pack_count = 1;
    gb_supply_need need = need_of(&FX_LIME, 100);
    fx_open(&arena);
    cr_assert(gb_buy(&need, 1, &prices, DAMP, &arena, &list) == GB_OK);
    cr_expect(fx_near(list.lines[0].each.kg / LB, 50, 1e-9) && list.lines[0].packs == 2);
    prices.packs = PACKS;
    prices.pack_count = ROWS_OF(PACKS);
    need = need_of(&FX_CEMENT, 94);
    cr_assert(gb_buy(&need, 1, &prices, (gb_share){0.5}, &arena, &list) == GB_OK);
    cr_expect(list.lines[0].packs == 1, "cement does not lie moist");
    gb_arena_release(&arena);
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
    return gb_buy(need, 1, &prices, DAMP, arena, list);
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
    cr_assert(gb_buy(needs, 3, &prices, DAMP, &arena, &list) == GB_OK);
    cr_expect(list.goods.minor == 3000 && list.tax.minor == 2, "%lld",
              (long long)list.tax.minor);
    packs[2].untaxed = true;
    cr_assert(gb_buy(needs, 3, &prices, DAMP, &arena, &list) == GB_OK);
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
        cr_assert(gb_buy(&needs[rows[i].from], rows[i].count, &prices, DAMP, &arena,
                         &list) == GB_OK);
        cr_expect(list.delivery.minor == rows[i].delivery, "row %zu: %lld", i,
                  (long long)list.delivery.minor);
        cr_expect(list.total.minor ==
                      list.goods.minor + list.tax.minor + list.delivery.minor,
                  "row %zu: the total is the sum", i);
    }
    gb_arena_release(&arena);
}

/* Nothing needed is nothing bought: no pack, so no lorry either. */
Test(buy, no_delivery_for_no_packs) {
    gb_arena arena;
    gb_buy_list list;
    gb_price_book prices = book();
    gb_supply_need need = need_of(&FX_CEMENT, 0);
    fx_open(&arena);
    cr_assert(gb_buy(&need, 1, &prices, DAMP, &arena, &list) == GB_OK);
    cr_expect(list.lines[0].packs == 0 && list.goods.minor == 0);
    cr_expect(list.delivery.minor == 0, "%lld for the delivery of nothing",
              (long long)list.delivery.minor);
    gb_arena_release(&arena);
}

Test(buy, what_is_not_sold_is_told_and_not_summed) {
    gb_arena arena;
    gb_buy_list list;
    gb_price_book prices = book();
    const gb_supply_need needs[] = {need_of(&FX_LIME, 50), need_of(&FX_CEMENT, 94),
                                    need_of(&FX_LIME, 10)};
    fx_open(&arena);
    cr_assert(gb_buy(needs, 3, &prices, DAMP, &arena, &list) == GB_OK);
    cr_expect(list.missing == 2 && list.line_count == 3);
    cr_expect(list.lines[0].pack == NULL && list.lines[0].need == &needs[0]);
    cr_expect(list.lines[0].packs == 0 && list.lines[0].cost.minor == 0);
    cr_expect(list.lines[1].pack == &PACKS[0]);
    cr_expect(list.goods.minor == 1720 && list.delivery.minor == 6500);
    prices.pack_count = 0;
    cr_assert(gb_buy(needs, 3, &prices, DAMP, &arena, &list) == GB_OK);
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
        cr_assert(gb_buy(&need, 1, &prices, DAMP, &arena, &list) == GB_OK);
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
    {"tax beyond 2^53", 50000000000000000, 1, 0, 0.1, GB_OVERFLOW}, /* 1e16 */
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
        gb_status s = gb_buy(needs, 2, &prices, DAMP, &arena, &list);
        cr_expect(s == SUMS[i].status, "%s: status %d", SUMS[i].id, s);
        if (s != GB_OK)
            cr_expect(memcmp(&list, &before, sizeof list) == 0, "%s: written",
                      SUMS[i].id);
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
    cr_expect(gb_buy(&need, 1, &prices, DAMP, &arena, &list) == GB_OVERFLOW);
    gb_arena_release(&arena);
}

Test(buy, bad_needs_and_packs_are_refused) {
    for (size_t i = 0; i < FX_BADS; i++) {
        gb_arena arena;
        gb_buy_list list;
        gb_price_book prices = book();
        gb_supply_need need = need_of(&FX_CEMENT, 94);
        gb_pack pack = PACKS[0];
        fx_open(&arena);
        need.mass.kg = FX_BAD[i];
        if (FX_BAD[i] != 0)
            cr_expect(gb_buy(&need, 1, &prices, DRY, &arena, &list) == GB_NOT_POSITIVE,
                      "need of %g", FX_BAD[i]);
        need = need_of(&FX_CEMENT, 94);
        pack.mass.kg = FX_BAD[i]; /* no volume is stated in its place */
        prices.packs = &pack;
        prices.pack_count = 1;
        cr_expect(gb_buy(&need, 1, &prices, DRY, &arena, &list) == GB_NOT_POSITIVE,
                  "pack of %g", FX_BAD[i]);
        gb_arena_release(&arena);
    }
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
        cr_expect(fx_same(needs[i].mass.kg, 2 * plans[0].supplies[i].mass.kg), "%zu", i);
    gb_arena_release(&arena);
}
