#include "write/layer_rows.h"

#include <math.h>

/* ---- what it covers ---------------------------------------------------------------- */

static gb_figure count_fig(const gb_take *t) {
    return gb_num("count", GB_SHOW_COUNT, t->units);
}

static void add_joint(gb_builder *b, const gb_take *t) {
    const gb_layer *l = t->layer;
    gb_figure name = gb_txt("name", t->piece->name);
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, t->depth.m);
    gb_figure across = gb_num("across", GB_SHOW_LENGTH, l->joint_width.m);
    gb_plan_size size = {.net = {GB_NONE}};
    (void)!gb_piece_size(t->piece, &size); /* joints by length have no need of it */
    gb_figure area = gb_num("area", GB_SHOW_AREA, size.net.m2);
    gb_figure length = gb_num("length", GB_SHOW_LENGTH, l->joint_length.m);
    gb_figure width = gb_num("width", GB_SHOW_LENGTH, l->joint_width.m);
    switch (gb_joint_way_of(l)) {
    case GB_JOINT_BY_FLAG:
        GB_ADD(b, JOINTS_FLAGS, name, count_fig(t), area,
               gb_num("length", GB_SHOW_LENGTH, l->flag[0].m),
               gb_num("width", GB_SHOW_LENGTH, l->flag[1].m), across, depth);
        break;
    case GB_JOINT_BY_RATE:
        GB_ADD(b, JOINTS_RATE, name, count_fig(t), area,
               gb_num("rate", GB_SHOW_JOINT_RATE, l->joint_rate.m_m2), across, depth);
        break;
    case GB_JOINT_BY_SHARE:
        GB_ADD(b, JOINTS_SHARE, name, count_fig(t), area,
               gb_num("share", GB_SHOW_SHARE, l->joint_share.of_one), depth);
        break;
    case GB_JOINT_BY_LENGTH:
        gb_add_row(b, l->kind == GB_POINTING ? GB_ROW_POINTING : GB_ROW_JOINT,
                   GB_FIGURES(name, count_fig(t), depth, length, width));
        break;
    }
}

static gb_blocks blocks_of(const gb_take *t) {
    gb_blocks blocks = {.courses = GB_NONE};
    (void)!gb_lay_out(&t->layer->wall, &blocks); /* a plan has only walls that can be */
    return blocks;
}

static void add_wall(gb_builder *b, const gb_take *t) {
    const gb_wall *w = &t->layer->wall;
    gb_blocks n = blocks_of(t);
    GB_ADD(b, BLOCK_WALL, gb_txt("name", t->piece->name), count_fig(t),
           gb_num("area", GB_SHOW_AREA, n.face.m2), gb_num("full", GB_SHOW_COUNT, n.full),
           gb_num("half", GB_SHOW_COUNT, n.half));
    if (w->rate.m3_m2 > 0)
        GB_ADD(b, BLOCK_RATE, gb_num("rate", GB_SHOW_MORTAR_RATE, w->rate.m3_m2),
               gb_num("waste", GB_SHOW_SHARE, w->rate_waste.of_one));
    else
        GB_ADD(b, BLOCK_JOINTS, gb_num("joint", GB_SHOW_LENGTH, w->joint.m),
               gb_num("bedded", GB_SHOW_LENGTH, gb_bedded_width(w).m));
}

static void add_cores(gb_builder *b, const gb_take *t) {
    size_t every = t->layer->cores.every;
    gb_figure name = gb_txt("name", t->piece->name);
    gb_figure blocks =
        gb_num("blocks", GB_SHOW_QUARTERS, gb_core_blocks(t->piece, t->layer));
    gb_figure grout =
        gb_num("grout", GB_SHOW_VOLUME_FINE, gb_core_each(t->piece, t->layer).m3);
    if (every == 1)
        GB_ADD(b, CORES, name, count_fig(t), blocks, grout);
    else
        GB_ADD(b, CORES_EVERY, name, count_fig(t), blocks, grout,
               gb_num("every", GB_SHOW_COUNT, (double)every));
}

void gb_add_covered(gb_builder *b, const gb_take *t) {
    gb_figure name = gb_txt("name", t->piece->name);
    bool by_block = t->layer->kind == GB_CORE && t->layer->cores.at.line != 0;
    if (gb_is_joint(t->layer->kind))
        add_joint(b, t);
    else if (t->layer->kind == GB_PARGE)
        GB_ADD(b, PARGED, name, count_fig(t),
               gb_num("area", GB_SHOW_AREA, gb_parged_face(t->layer).m2),
               gb_num("depth", GB_SHOW_LENGTH, t->depth.m));
    else if (t->layer->kind == GB_BLOCK)
        add_wall(b, t);
    else if (by_block)
        add_cores(b, t);
    else
        GB_ADD(b, VOLUME_PIECES, name, count_fig(t),
               gb_num("volume", GB_SHOW_VOLUME, t->each.m3));
}

/* ---- depths ------------------------------------------------------------------------ */

static void add_levels(gb_builder *b, const gb_take *t) {
    size_t n = t->layer->levels.block_count;
    gb_row *rows = gb_arena_take(b->arena, n, sizeof *rows);
    if (rows == NULL) {
        b->failed = true;
        return;
    }
    for (size_t i = 0; i < n; i++) {
        b->about.tread = i;
        rows[i] =
            GB_MAKE(b, LEVEL_BED, gb_num("n", GB_SHOW_COUNT, (double)(i + 1)),
                    gb_num("bed", GB_SHOW_LENGTH, gb_level_bed(&t->layer->levels, i)));
    }
    gb_figure beds = gb_rows_fig(b, "beds", rows, n);
    beds.whole = true;
    GB_ADD(b, LEVEL_BEDS, beds, gb_num("se", GB_SHOW_LENGTH, t->depth_se.m));
}

void gb_add_depths(gb_builder *b, const gb_take *t) {
    const gb_layer *l = t->layer;
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, t->depth.m);
    gb_length in_front;
    gb_length se;
    gb_layer_depth(l, &in_front, &se);
    if (l->levels.block_count > 0)
        add_levels(b, t);
    else if (l->kind == GB_SLAB && l->form.kind == GB_WEDGE)
        GB_ADD(b, WEDGE, gb_num("front", GB_SHOW_LENGTH, l->form.front.m),
               gb_num("back", GB_SHOW_LENGTH, l->form.back.m), depth);
    else if (l->fall.of_run > 0)
        GB_ADD(b, SLOPED, gb_num("front", GB_SHOW_LENGTH, in_front.m),
               gb_num("fall", GB_SHOW_SLOPE, l->fall.of_run), depth);
}

/* ---- takeoff ----------------------------------------------------------------------- */

void gb_add_blocks(gb_builder *b, const gb_take *t) {
    const gb_layer *l = t->layer;
    if (l->kind == GB_BLOCK) {
        gb_blocks n = blocks_of(t);
        GB_ADD(b, WALL_BLOCKS, gb_txt("piece", t->piece->name), count_fig(t),
               gb_num("full", GB_SHOW_COUNT, n.full),
               gb_num("half", GB_SHOW_COUNT, n.half),
               gb_num("courses", GB_SHOW_COUNT, n.courses),
               gb_num("per_course", GB_SHOW_QUARTERS, n.per_course / 2.0));
    } else if (l->kind == GB_CORE && l->cores.at.line != 0) {
        GB_ADD(b, CORE_BLOCKS, gb_txt("piece", t->piece->name), count_fig(t),
               gb_num("blocks", GB_SHOW_QUARTERS, gb_core_blocks(t->piece, l)),
               gb_num("grout", GB_SHOW_VOLUME_FINE, gb_core_each(t->piece, l).m3),
               gb_num("every", GB_SHOW_COUNT, (double)l->cores.every));
    }
}

void gb_add_block_supply(gb_builder *b, const gb_take *t) {
    const gb_wall *w = &t->layer->wall;
    if (t->layer->kind != GB_BLOCK)
        return;
    gb_blocks n = blocks_of(t);
    b->about.take = t;
    b->about.piece = t->piece;
    GB_ADD(b, SUPPLY_BLOCKS, gb_txt("piece", t->piece->name),
           gb_num("length", GB_SHOW_LENGTH, w->nominal[0].m),
           gb_num("height", GB_SHOW_LENGTH, w->nominal[1].m),
           gb_num("width", GB_SHOW_LENGTH, w->width.m),
           gb_num("full", GB_SHOW_COUNT, gb_ordered(t, n.full)),
           gb_num("half", GB_SHOW_COUNT, gb_ordered(t, n.half)),
           gb_num("spare", GB_SHOW_SHARE, w->spare.of_one));
}

void gb_add_spread(gb_builder *b, const gb_need *need, gb_show show) {
    bool cores = false;
    gb_figure spread = gb_num("spread", show, need->spread.m3);
    if (!(need->spread.m3 > 0))
        return;
    for (size_t i = 0; i < need->take_count; i++)
        cores = cores || (need->takes[i]->spread.of_one > 0 &&
                          need->takes[i]->layer->kind == GB_CORE);
    if (cores)
        GB_ADD(b, SPREAD_CORES, spread);
    else
        GB_ADD(b, SPREAD, spread);
}
