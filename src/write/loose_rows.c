#include "write/loose_rows.h"

#include <math.h>

gb_row gb_loose_row(gb_builder *b, gb_loose_kind kind) {
    static const gb_row_code KINDS[] = {[GB_BASE] = GB_ROW_KIND_BASE,
                                        [GB_SHIM] = GB_ROW_KIND_SHIM,
                                        [GB_BACKFILL] = GB_ROW_KIND_BACKFILL,
                                        [GB_EXCAVATION] = GB_ROW_KIND_EXCAVATION,
                                        [GB_GEOTEXTILE] = GB_ROW_KIND_GEOTEXTILE,
                                        [GB_BACKER_ROD] = GB_ROW_KIND_BACKER_ROD,
                                        [GB_SEALANT] = GB_ROW_KIND_SEALANT};
    _Static_assert(sizeof KINDS / sizeof KINDS[0] == GB_LOOSE_KINDS, "a row for each");
    return gb_make_row(b, KINDS[kind], NULL, 0);
}

static gb_figure kind_fig(gb_builder *b, gb_loose_kind kind) {
    return gb_row_fig(b, "kind", gb_loose_row(b, kind));
}

static void add_filled(gb_builder *b, const gb_loose_take *t) {
    const gb_loose *l = t->loose;
    gb_figure kind = kind_fig(b, l->kind);
    gb_figure material = gb_words_fig(b, "material", &l->material->title);
    gb_figure net = gb_num("net", GB_SHOW_VOLUME_FINE, t->size.net.m3);
    gb_figure piece = gb_txt("piece", t->piece->name);
    if (isnan(l->depth.m))
        GB_ADD(b, LOOSE_FILLED, piece, kind, material, net);
    else
        GB_ADD(b, LOOSE_LAID, piece, kind, material,
               gb_num("depth", GB_SHOW_LENGTH, l->depth.m), net);
    GB_ADD(b, LOOSE_ORDER, gb_num("ordered", GB_SHOW_VOLUME, t->size.ordered.m3),
           gb_num("mass", GB_SHOW_MASS, t->size.mass.kg));
    if (t->size.lifts > 1)
        GB_ADD(b, LOOSE_LIFTS, gb_num("lifts", GB_SHOW_COUNT, t->size.lifts),
               gb_num("lift", GB_SHOW_LENGTH, l->lift.m));
}

static void add_dug(gb_builder *b, const gb_loose_take *t) {
    gb_figure kind = kind_fig(b, t->loose->kind);
    gb_figure net = gb_num("net", GB_SHOW_VOLUME_FINE, t->size.net.m3);
    gb_figure piece = gb_txt("piece", t->piece->name);
    if (isnan(t->loose->depth.m))
        GB_ADD(b, LOOSE_DUG_VOLUME, piece, kind, net);
    else
        GB_ADD(b, LOOSE_DUG, piece, kind,
               gb_num("depth", GB_SHOW_LENGTH, t->loose->depth.m), net);
    GB_ADD(b, LOOSE_HAUL, gb_num("ordered", GB_SHOW_VOLUME, t->size.ordered.m3));
}

static void add_sealant(gb_builder *b, const gb_loose_take *t) {
    gb_figure ordered = gb_num("ordered", GB_SHOW_LIQUID, t->size.ordered.m3);
    GB_ADD(b, LOOSE_SEALANT, gb_txt("piece", t->piece->name), kind_fig(b, t->loose->kind),
           gb_num("depth", GB_SHOW_LENGTH, t->loose->depth.m),
           gb_num("net", GB_SHOW_VOLUME_FINE, t->size.net.m3));
    if (isnan(t->size.packs))
        GB_ADD(b, LOOSE_WITH, ordered);
    else
        GB_ADD(b, LOOSE_TUBES, ordered, gb_num("packs", GB_SHOW_COUNT, t->size.packs),
               gb_num("pack", GB_SHOW_LIQUID, t->loose->pack.m3));
}

void gb_add_loose(gb_builder *b, const gb_loose_take *t) {
    b->about.loose = t;
    b->about.piece = t->piece;
    switch (t->loose->kind) {
    case GB_BASE:
    case GB_SHIM:
    case GB_BACKFILL:
        add_filled(b, t);
        break;
    case GB_EXCAVATION:
        add_dug(b, t);
        break;
    case GB_GEOTEXTILE:
        GB_ADD(b, LOOSE_CLOTH, gb_txt("piece", t->piece->name),
               kind_fig(b, GB_GEOTEXTILE), gb_num("area", GB_SHOW_AREA, t->size.area.m2));
        GB_ADD(b, LOOSE_CLOTH_LAP, gb_num("lap", GB_SHOW_SHARE, t->loose->lap.of_one));
        break;
    case GB_BACKER_ROD:
        GB_ADD(b, LOOSE_ROD, gb_txt("piece", t->piece->name), kind_fig(b, GB_BACKER_ROD),
               gb_num("length", GB_SHOW_LENGTH, t->size.length.m));
        break;
    case GB_SEALANT:
        add_sealant(b, t);
        break;
    case GB_LOOSE_KINDS:
        break;
    }
}
