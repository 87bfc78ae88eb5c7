#include "gaugebox/buy.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

/* Dry mass of a need in one pack of it. */
static gb_mass mass_in(const gb_supply_need *need, const gb_pack *pack,
                       gb_share moisture) {
    double kg = pack->mass.kg;
    if (need->material == NULL)
        return (gb_mass){kg};
    if (isnan(kg))
        kg = pack->volume.m3 * need->material->bulk.kg_m3;
    else if (need->material->kind == GB_SAND)
        kg /= 1.0 + moisture.of_one;
    return (gb_mass){kg};
}

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
    tax->minor = (int64_t)floor(exact + 0.5 + fmax(GB_SAME, exact * 4e-16));
    return true;
}

static gb_status price_line(const gb_supply_need *need, const gb_pack *pack,
                            gb_share moisture, gb_buy_line *line) {
    gb_buy_line l = {.need = need, .pack = pack, .each = mass_in(need, pack, moisture)};
    gb_status status = gb_count_up(need->mass.kg, l.each.kg, &l.packs);
    if (status != GB_OK)
        return status;
    l.leftover.kg = (double)l.packs * l.each.kg - need->mass.kg;
    if (!times(pack->price, l.packs, &l.cost))
        return GB_OVERFLOW;
    *line = l;
    return GB_OK;
}

static const char *name_of(const gb_supply_need *need) {
    return need->material != NULL ? need->material->name : need->blend->id;
}

static gb_status cheapest(const gb_supply_need *need, const gb_price_book *book,
                          gb_share moisture, gb_buy_line *line) {
    *line = (gb_buy_line){.need = need};
    for (size_t i = 0; i < book->pack_count; i++) {
        if (strcmp(book->packs[i].what.text, name_of(need)) != 0)
            continue;
        gb_buy_line candidate = {0};
        gb_status status = price_line(need, &book->packs[i], moisture, &candidate);
        if (status != GB_OK)
            return status;
        if (line->pack == NULL || candidate.cost.minor < line->cost.minor)
            *line = candidate;
    }
    return GB_OK;
}

static bool buys_from(const gb_buy_line *lines, size_t count, const char *supplier) {
    for (size_t i = 0; i < count; i++)
        if (lines[i].packs > 0 && strcmp(lines[i].pack->supplier, supplier) == 0)
            return true;
    return false;
}

static gb_status total_up(const gb_price_book *book, const gb_buy_line *lines,
                          gb_buy_list *l) {
    gb_money taxed = {0};
    bool fits = true;
    for (size_t i = 0; i < l->line_count && fits; i++) {
        if (lines[i].pack == NULL) {
            l->missing++;
            continue;
        }
        fits = add_money(&l->goods, lines[i].cost);
        if (fits && !lines[i].pack->untaxed)
            fits = add_money(&taxed, lines[i].cost);
    }
    for (size_t i = 0; i < book->delivery_count && fits; i++)
        if (buys_from(lines, l->line_count, book->deliveries[i].supplier))
            fits = add_money(&l->delivery, book->deliveries[i].charge);
    fits = fits && tax_on(taxed, book->tax, &l->tax) && add_money(&l->total, l->goods) &&
           add_money(&l->total, l->tax) && add_money(&l->total, l->delivery);
    return fits ? GB_OK : GB_OVERFLOW;
}

gb_status gb_buy(const gb_supply_need *needs, size_t need_count,
                 const gb_price_book *book, gb_share sand_moisture, gb_arena *arena,
                 gb_buy_list *list) {
    gb_buy_line *lines = gb_arena_take(arena, need_count + 1, sizeof *lines);
    if (lines == NULL)
        return GB_NO_MEMORY;
    for (size_t i = 0; i < need_count; i++) {
        gb_status status = cheapest(&needs[i], book, sand_moisture, &lines[i]);
        if (status != GB_OK)
            return status;
    }
    gb_buy_list l = {
        .lines = lines, .line_count = need_count, .sand_moisture = sand_moisture};
    gb_status status = total_up(book, lines, &l);
    if (status == GB_OK)
        *list = l;
    return status;
}
