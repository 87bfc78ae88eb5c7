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

/* Half a minor unit rounds up, as tax offices do. Money over 2^53 minor units has no
   exact double and is refused. */
static bool tax_on(gb_money sum, gb_share rate, gb_money *tax) {
    double exact = (double)sum.minor * rate.of_one;
    if (!(exact < 9e15))
        return false;
    /* A product of large sums loses more than GB_SAME in its last bit. */
    tax->minor = (int64_t)floor(exact + 0.5 + gb_larger(GB_SAME, exact * 4e-16));
    return true;
}

/* ---- one line --------------------------------------------------------------------- */

/* The need counted in packs, unrounded: loose volume against loose volume, and mass
   against mass as it lies. */
static double in_packs(const gb_supply_need *need, const gb_pack *pack) {
    if (isnan(pack->mass.kg))
        return need->mass.kg / (pack->volume.m3 * need->material->bulk.kg_m3);
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

static const char *name_of(const gb_supply_need *need) {
    return need->material != NULL ? need->material->name : need->blend->id;
}

/* ---- which suppliers -------------------------------------------------------------- */

/* With more suppliers than this all of them are taken together: a price book of one job
   has two or three. */
enum { MOST_SUPPLIERS = 10 };

typedef struct suppliers {
    const char *names[MOST_SUPPLIERS];
    size_t count;
    bool many;
} suppliers;

static size_t supplier_of(const suppliers *s, const char *name) {
    size_t i = 0;
    while (i < s->count && strcmp(s->names[i], name) != 0)
        i++;
    return i;
}

static suppliers list_suppliers(const gb_price_book *book) {
    suppliers s = {.count = 0};
    for (size_t i = 0; i < book->pack_count; i++) {
        const char *name = book->packs[i].supplier;
        if (supplier_of(&s, name) < s.count)
            continue;
        s.many = s.many || s.count == MOST_SUPPLIERS;
        if (!s.many)
            s.names[s.count++] = name;
    }
    return s;
}

static bool is_among(const suppliers *s, unsigned chosen, const char *name) {
    return s->many || (chosen & (1u << supplier_of(s, name))) != 0;
}

/* The cheapest pack of one need among the chosen suppliers. */
static void cheapest(const gb_supply_need *need, const gb_price_book *book,
                     const suppliers *s, unsigned chosen, gb_buy_line *line) {
    *line = (gb_buy_line){.need = need};
    for (size_t i = 0; i < book->pack_count; i++) {
        const gb_pack *pack = &book->packs[i];
        gb_buy_line candidate = {0};
        if (strcmp(pack->what.text, name_of(need)) != 0 ||
            !is_among(s, chosen, pack->supplier) || !price_line(need, pack, &candidate))
            continue;
        if (line->pack == NULL || candidate.cost.minor < line->cost.minor)
            *line = candidate;
    }
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

gb_status gb_buy(const gb_supply_need *needs, size_t need_count,
                 const gb_price_book *book, gb_arena *arena, gb_buy_list *list) {
    suppliers s = list_suppliers(book);
    unsigned all = s.many ? 1u : (1u << s.count) - 1u;
    gb_buy_line *lines = gb_arena_take(arena, need_count + 1, sizeof *lines);
    gb_buy_line *best_lines = gb_arena_take(arena, need_count + 1, sizeof *lines);
    if (lines == NULL || best_lines == NULL)
        return GB_NO_MEMORY;
    gb_buy_list best = {.lines = NULL};
    for (unsigned chosen = s.many ? 1u : 0u; chosen <= all; chosen++) {
        gb_buy_list l = {.lines = lines, .line_count = need_count};
        for (size_t i = 0; i < need_count; i++)
            cheapest(&needs[i], book, &s, chosen, &lines[i]);
        if (!total_up(book, &l) || !is_better(&l, &best))
            continue;
        memcpy(best_lines, lines, need_count * sizeof *lines);
        best = l;
        best.lines = best_lines;
    }
    if (best.lines == NULL)
        return GB_OVERFLOW;
    *list = best;
    return GB_OK;
}
