#include "read/diag.h"
#include "read/reader.h"
#include "read/schemas.h"

#include <math.h>
#include <string.h>

static void read_price(gb_reader *r, const gb_ref *text, int decimals, gb_money *money) {
    if (text->text == NULL)
        return;
    if (gb_parse_money(text->text, decimals, money) != GB_NO_FAULT)
        gb_report(r->diags, r->file, text->line,
                  "\"%.*s\" is no price in a currency of %d decimals; write it as %s, "
                  "without sign and unit",
                  gb_cut(text->text, 40), text->text, decimals,
                  decimals == 0 ? "\"1450\"" : "\"14.50\"");
}

static void check_pack(gb_reader *r, gb_mix_table *table, const gb_pack *pack) {
    if (isnan(pack->mass.kg) == isnan(pack->volume.m3))
        gb_report(r->diags, r->file, pack->at.line,
                  "a pack has a mass or a volume, and not both; write one, as mass = "
                  "\"94 lb\" or volume = \"1/2 yd3\"");
    if (pack->what.text == NULL)
        return;
    bool blend = strchr(pack->what.text, '/') != NULL;
    if (blend && !isnan(pack->volume.m3))
        gb_report(r->diags, r->file, pack->at.line,
                  "a bagged mix is sold by mass; write mass = \"80 lb\"");
    const gb_mix *mix = blend ? gb_mix_find(table, pack->what, r->file) : NULL;
    if (mix != NULL && mix->part_count > 0)
        gb_report(r->diags, r->file, pack->what.line,
                  "'%s' is mixed on site and comes in no pack; price its materials",
                  pack->what.text);
    if (blend)
        return;
    if (gb_material_find(table, pack->what.text) == NULL)
        gb_report(r->diags, r->file, pack->what.line,
                  "'%s' is no material of the mix table, nor a mix (family/name)",
                  pack->what.text);
}

static void check_deliveries(gb_reader *r, const gb_price_book *book) {
    for (size_t i = 0; i < book->delivery_count; i++) {
        const gb_delivery *d = &book->deliveries[i];
        bool sells = d->supplier == NULL;
        for (size_t k = 0; k < book->pack_count; k++)
            sells = sells || (book->packs[k].supplier != NULL &&
                              strcmp(book->packs[k].supplier, d->supplier) == 0);
        if (!sells)
            gb_report(r->diags, r->file, d->charge_text.line,
                      "'%s' delivers, but no pack is sold there; check the name",
                      d->supplier);
        for (size_t k = 0; k < i && d->supplier != NULL; k++) {
            const gb_delivery *other = &book->deliveries[k];
            if (other->supplier == NULL || strcmp(other->supplier, d->supplier) != 0)
                continue;
            gb_report(r->diags, r->file, d->charge_text.line,
                      "the delivery of '%s' is stated twice, first at line %d; keep one",
                      d->supplier, other->charge_text.line);
            break;
        }
    }
}

/* The rows of one supplier after the first are skipped in the count. */
static void check_suppliers(gb_reader *r, const gb_price_book *book) {
    size_t count = 0;
    for (size_t i = 0; i < book->pack_count; i++) {
        size_t k = 0;
        while (k < i &&
               (book->packs[k].supplier == NULL || book->packs[i].supplier == NULL ||
                strcmp(book->packs[k].supplier, book->packs[i].supplier) != 0))
            k++;
        count += k == i;
        if (count <= GB_MOST_SUPPLIERS)
            continue;
        gb_report(r->diags, r->file, book->packs[i].at.line,
                  "the price book has more than %d suppliers; split it",
                  GB_MOST_SUPPLIERS);
        return;
    }
}

bool gb_read_prices(const char *file, gb_mix_table *table, gb_arena *arena,
                    gb_diags *diags, gb_price_book *book) {
    gb_price_file read = {0};
    gb_places *places = gb_mix_table_places(table);
    gb_reader r = {.file = file, .arena = arena, .diags = diags, .places = places};
    size_t before = gb_diags_count(diags);
    if (!gb_read_file(&r, &GB_PRICE_SCHEMA, &read))
        return false;
    read.book.file = file;
    read.book.digest = r.digest;
    read.book.decimals = (int)read.decimals;
    for (size_t i = 0; i < read.book.pack_count; i++) {
        gb_pack *pack = (gb_pack *)&read.book.packs[i]; /* ours until handed out */
        read_price(&r, &pack->price_text, read.book.decimals, &pack->price);
        check_pack(&r, table, pack);
    }
    for (size_t i = 0; i < read.book.delivery_count; i++) {
        gb_delivery *d = (gb_delivery *)&read.book.deliveries[i];
        read_price(&r, &d->charge_text, read.book.decimals, &d->charge);
    }
    check_deliveries(&r, &read.book);
    check_suppliers(&r, &read.book);
    if (gb_diags_count(diags) > before || diags->no_memory)
        return false;
    *book = read.book;
    if (places != NULL)
        gb_places_move(places, &read.book, book, sizeof *book);
    return true;
}

void gb_report_prices(gb_status status, const gb_price_book *book, gb_diags *diags) {
    if (status == GB_NO_MEMORY)
        diags->no_memory = true;
    else if (status != GB_OK)
        gb_report(diags, book->file, 0,
                  "the list comes to more packs or more money than is kept; check the "
                  "prices and the sizes of the packs");
}
