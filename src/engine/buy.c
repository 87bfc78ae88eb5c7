#include "gaugebox/buy.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

/* ---- money ------------------------------------------------------------------------ */

static bool add_money(gb_money *sum, gb_money more) {
    if (more.minor > INT64_MAX - sum->minor)
        return false;
    sum->minor += more.minor;
    return true;
}

static bool times(gb_money price, size_t count, gb_money *cost) {
    if (count > 0 && price.minor > INT64_MAX / (int64_t)count)
        return false;
    cost->minor = price.minor * (int64_t)count;
    return true;
}

/* Half a minor unit rounds up, as tax offices do. The rate is taken in parts per thousand
   million, so that the product is exact in whole numbers. */
static bool tax_on(gb_money sum, gb_share rate, gb_money *tax) {
    static const int64_t WHOLE = 1000000000;
    int64_t parts = llround(rate.of_one * (double)WHOLE);
    int64_t high = sum.minor / WHOLE;
    int64_t low = sum.minor % WHOLE;
    if (parts > 0 && high > INT64_MAX / 2 / parts)
        return false;
    tax->minor = high * parts + (low * parts + WHOLE / 2) / WHOLE;
    return true;
}

/* ---- one line --------------------------------------------------------------------- */

/* The need counted in packs, unrounded: loose volume against loose volume, both as it
   lies, and mass against mass as it lies. */
static double in_packs(const gb_supply_need *need, const gb_pack *pack) {
    if (isnan(pack->mass.kg))
        return need->loose.m3 / pack->volume.m3;
    return need->lying.kg / pack->mass.kg;
}

/* False when no so many packs can be counted or paid. */
static bool price_line(const gb_supply_need *need, const gb_pack *pack,
                       gb_buy_line *line) {
    gb_buy_line l = {.need = need, .pack = pack};
    double exact = in_packs(need, pack);
    if (gb_count_up(exact, 1.0, &l.packs) != GB_OK ||
        !times(pack->price, l.packs, &l.cost))
        return false;
    l.leftover.kg =
        exact > 0 ? need->lying.kg * gb_larger(0, (double)l.packs / exact - 1.0) : 0;
    *line = l;
    return true;
}

/* A blend has no loose volume: only a pack by mass is one of it. */
static bool is_pack_of(const gb_pack *pack, const gb_supply_need *need) {
    return strcmp(pack->what.text, gb_supply_name(need)) == 0 &&
           (need->material != NULL || !isnan(pack->mass.kg));
}

/* ---- which suppliers -------------------------------------------------------------- */

/* Up to so many suppliers, every choice of them is tried; with more, all are taken and
   those dropped one by one that the total is better without. */
enum { MOST_TRIED = 10 };

typedef struct suppliers {
    const char *names[GB_MOST_SUPPLIERS];
    size_t count;
} suppliers;

static size_t supplier_of(const suppliers *s, const char *name) {
    size_t i = 0;
    while (i < s->count && strcmp(s->names[i], name) != 0)
        i++;
    return i;
}

/* False when there are too many. */
static bool list_suppliers(const gb_price_book *book, suppliers *s) {
    s->count = 0;
    for (size_t i = 0; i < book->pack_count; i++) {
        const char *name = book->packs[i].supplier;
        if (supplier_of(s, name) < s->count)
            continue;
        if (s->count == GB_MOST_SUPPLIERS)
            return false;
        s->names[s->count++] = name;
    }
    return true;
}

static bool is_among(const suppliers *s, uint64_t chosen, const char *name) {
    return (chosen >> supplier_of(s, name) & 1) != 0;
}

/* What a line costs with its tax; a large sum when that is beyond what is kept. */
static int64_t with_tax(const gb_buy_line *line, gb_share rate) {
    gb_money tax = {0};
    if (line->pack->untaxed)
        return line->cost.minor;
    bool fits = tax_on(line->cost, rate, &tax) && add_money(&tax, line->cost);
    return fits ? tax.minor : INT64_MAX;
}

/* The cheapest pack of one need among the chosen suppliers, tax included. False when some
   sell it but none at a price that can be kept. */
static bool cheapest(const gb_supply_need *need, const gb_price_book *book,
                     const suppliers *s, uint64_t chosen, gb_buy_line *line) {
    bool sold = false;
    *line = (gb_buy_line){.need = need};
    for (size_t i = 0; i < book->pack_count; i++) {
        const gb_pack *pack = &book->packs[i];
        gb_buy_line candidate = {0};
        if (!is_pack_of(pack, need) || !is_among(s, chosen, pack->supplier))
            continue;
        sold = true;
        if (price_line(need, pack, &candidate) &&
            (line->pack == NULL ||
             with_tax(&candidate, book->tax) < with_tax(line, book->tax)))
            *line = candidate;
    }
    return !sold || line->pack != NULL;
}

/* ---- the list --------------------------------------------------------------------- */

static bool buys_from(const gb_buy_line *lines, size_t count, const char *supplier) {
    for (size_t i = 0; i < count; i++)
        if (lines[i].packs > 0 && strcmp(lines[i].pack->supplier, supplier) == 0)
            return true;
    return false;
}

static bool total_up(const gb_price_book *book, gb_buy_list *l) {
    gb_money taxed = {0};
    bool fits = true;
    for (size_t i = 0; i < l->line_count && fits; i++) {
        const gb_buy_line *line = &l->lines[i];
        if (line->pack == NULL) {
            l->missing++;
            continue;
        }
        fits = add_money(&l->goods, line->cost);
        if (fits && !line->pack->untaxed)
            fits = add_money(&taxed, line->cost);
    }
    for (size_t i = 0; i < book->delivery_count && fits; i++)
        if (buys_from(l->lines, l->line_count, book->deliveries[i].supplier))
            fits = add_money(&l->delivery, book->deliveries[i].charge);
    return fits && tax_on(taxed, book->tax, &l->tax) && add_money(&l->total, l->goods) &&
           add_money(&l->total, l->tax) && add_money(&l->total, l->delivery);
}

static bool is_better(const gb_buy_list *a, const gb_buy_list *b) {
    if (b->lines == NULL || a->missing != b->missing)
        return b->lines == NULL || a->missing < b->missing;
    return a->total.minor < b->total.minor;
}

/* Needs that no pack in the book is for, whoever sells it. */
static size_t count_unsold(const gb_supply_need *needs, size_t count,
                           const gb_price_book *book) {
    size_t unsold = 0;
    for (size_t i = 0; i < count; i++) {
        size_t k = 0;
        while (k < book->pack_count && !is_pack_of(&book->packs[k], &needs[i]))
            k++;
        unsold += k == book->pack_count;
    }
    return unsold;
}

/* What is being looked for, and the best list so far. */
typedef struct search {
    const gb_supply_need *needs;
    size_t need_count;
    const gb_price_book *book;
    suppliers suppliers;
    gb_buy_line *lines; /* of the choice in hand */
    gb_buy_line *best_lines;
    gb_buy_list best;
} search;

/* Tries one choice of suppliers; true when it is the best so far. */
static bool try_choice(search *f, uint64_t chosen) {
    gb_buy_list l = {.lines = f->lines, .line_count = f->need_count};
    for (size_t i = 0; i < f->need_count; i++)
        if (!cheapest(&f->needs[i], f->book, &f->suppliers, chosen, &f->lines[i]))
            return false;
    if (!total_up(f->book, &l) || !is_better(&l, &f->best))
        return false;
    memcpy(f->best_lines, f->lines, f->need_count * sizeof *f->lines);
    f->best = l;
    f->best.lines = f->best_lines;
    return true;
}

static void try_all(search *f) {
    for (uint64_t chosen = 0; chosen < (UINT64_C(1) << f->suppliers.count); chosen++)
        (void)try_choice(f, chosen);
}

static void drop_one_by_one(search *f) {
    uint64_t chosen = UINT64_MAX;
    (void)try_choice(f, chosen);
    for (bool better = true; better;) {
        better = false;
        for (size_t i = 0; i < f->suppliers.count; i++) {
            uint64_t without = chosen & ~(UINT64_C(1) << i);
            if (without != chosen && try_choice(f, without)) {
                chosen = without;
                better = true;
            }
        }
    }
}

static bool is_amount(double kg) {
    return isfinite(kg) && kg >= 0;
}

static bool are_sound(const gb_supply_need *needs, size_t count,
                      const gb_price_book *book) {
    for (size_t i = 0; i < count; i++)
        if (!is_amount(needs[i].mass.kg) || !is_amount(needs[i].lying.kg) ||
            (needs[i].material != NULL && !is_amount(needs[i].loose.m3)))
            return false;
    for (size_t i = 0; i < book->pack_count; i++) {
        const gb_pack *p = &book->packs[i];
        double size = isnan(p->mass.kg) ? p->volume.m3 : p->mass.kg;
        if (!is_amount(size) || size <= 0)
            return false;
    }
    return true;
}

gb_status gb_buy(const gb_supply_need *needs, size_t need_count,
                 const gb_price_book *book, gb_arena *arena, gb_buy_list *list) {
    search f = {.needs = needs, .need_count = need_count, .book = book};
    if (!are_sound(needs, need_count, book))
        return GB_NOT_POSITIVE;
    if (!list_suppliers(book, &f.suppliers))
        return GB_OVERFLOW;
    f.lines = gb_arena_take(arena, need_count + 1, sizeof *f.lines);
    f.best_lines = gb_arena_take(arena, need_count + 1, sizeof *f.lines);
    if (f.lines == NULL || f.best_lines == NULL)
        return GB_NO_MEMORY;
    if (f.suppliers.count <= MOST_TRIED)
        try_all(&f);
    else
        drop_one_by_one(&f);
    /* What is sold and still missing could not be paid for. */
    if (f.best.lines == NULL || f.best.missing > count_unsold(needs, need_count, book))
        return GB_OVERFLOW;
    *list = f.best;
    return GB_OK;
}
