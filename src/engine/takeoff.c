#include "gaugebox/count.h"
#include "gaugebox/plan.h"

#include <math.h>

static const double SMOOTH_BACK_M = 0.0254 / 16.0; /* common practice, 1/16 in */
static const double SCORED_BACK_M = 0.0254 / 8.0;  /* common practice, 1/8 in */

static bool positive(double x) {
    return isfinite(x) && x > 0;
}

gb_status gb_piece_size(const gb_piece *piece, gb_plan_size *size) {
    return gb_measure_shape(&piece->shape, piece->overhang_front, piece->overhang_side,
                            size);
}

gb_area gb_bedded_area(const gb_piece *piece) {
    gb_plan_size size = {.bedded = {GB_NONE}};
    return gb_piece_size(piece, &size) == GB_OK ? size.bedded : (gb_area){GB_NONE};
}

gb_length gb_usual_slurry(gb_back back) {
    return (gb_length){back == GB_SCORED ? SCORED_BACK_M : SMOOTH_BACK_M};
}

static void measured_depth(const gb_layer *layer, gb_length *mean, gb_length *se) {
    double n = (double)layer->depth_count;
    double sum = 0;
    for (size_t i = 0; i < layer->depth_count; i++)
        sum += layer->depths_m[i];
    mean->m = sum / n;
    if (layer->depth_count < 2)
        return;
    double squares = 0;
    for (size_t i = 0; i < layer->depth_count; i++)
        squares += (layer->depths_m[i] - mean->m) * (layer->depths_m[i] - mean->m);
    se->m = sqrt(squares / (n - 1.0) / n);
}

void gb_layer_depth(const gb_layer *layer, gb_length *mean, gb_length *se) {
    mean->m = GB_NONE;
    se->m = 0;
    if (layer->levels.block_count > 0)
        gb_level_beds(&layer->levels, mean, se);
    else if (layer->depth_count > 0)
        measured_depth(layer, mean, se);
    else if (layer->kind == GB_SLURRY)
        *mean = gb_usual_slurry(layer->back);
}

gb_length gb_laid_depth(const gb_piece *piece, const gb_layer *layer, gb_length depth) {
    const gb_form *form = &layer->form;
    if (layer->kind == GB_SLAB && form->kind == GB_WEDGE)
        return (gb_length){(form->front.m + form->back.m) / 2.0};
    gb_plan_size size;
    if (!(layer->fall.of_run > 0) || gb_piece_size(piece, &size) != GB_OK)
        return depth;
    return (gb_length){depth.m + layer->fall.of_run * size.behind_front.m};
}

/* ---- volumes ----------------------------------------------------------------------- */

static double faces(const gb_layer *layer) {
    return layer->kind == GB_SLURRY && layer->faces == GB_BOTH_FACES ? 2.0 : 1.0;
}

bool gb_is_joint(gb_layer_kind kind) {
    return kind == GB_JOINT || kind == GB_POINTING;
}

gb_joint_way gb_joint_way_of(const gb_layer *layer) {
    if (layer->flag[0].m > 0)
        return GB_JOINT_BY_FLAG;
    if (layer->joint_rate.m_m2 > 0)
        return GB_JOINT_BY_RATE;
    return layer->joint_share.of_one > 0 ? GB_JOINT_BY_SHARE : GB_JOINT_BY_LENGTH;
}

/* Joints run over the whole piece, what overhangs too. */
static double joint_area(const gb_piece *piece) {
    gb_plan_size size;
    return gb_piece_size(piece, &size) == GB_OK ? size.net.m2 : GB_NONE;
}

static double joint_volume(const gb_piece *piece, const gb_layer *l, double depth) {
    switch (gb_joint_way_of(l)) {
    case GB_JOINT_BY_FLAG:
        return joint_area(piece) * depth *
               gb_joint_share(l->flag[0], l->flag[1], l->joint_width).of_one;
    case GB_JOINT_BY_RATE:
        return joint_area(piece) * l->joint_rate.m_m2 * l->joint_width.m * depth;
    case GB_JOINT_BY_SHARE:
        return joint_area(piece) * l->joint_share.of_one * depth;
    case GB_JOINT_BY_LENGTH:
        break;
    }
    return l->joint_length.m * l->joint_width.m * depth;
}

gb_area gb_parged_face(const gb_layer *layer) {
    if (layer->face_area.m2 > 0)
        return layer->face_area;
    return (gb_area){layer->face[0].m * layer->face[1].m};
}

const gb_layer *gb_block_layer(const gb_piece *piece) {
    for (size_t i = 0; i < piece->layer_count; i++)
        if (piece->layers[i].kind == GB_BLOCK)
            return &piece->layers[i];
    return NULL;
}

double gb_core_blocks(const gb_piece *piece, const gb_layer *layer) {
    if (layer->cores.blocks > 0)
        return (double)layer->cores.blocks;
    const gb_layer *wall = gb_block_layer(piece);
    gb_blocks b;
    if (wall == NULL || gb_lay_out(&wall->wall, &b) != GB_OK)
        return GB_NONE;
    if (layer->cores.courses == GB_TOP_COURSE)
        return b.per_course / 2.0;
    return b.full + b.half / 2.0;
}

gb_volume gb_core_each(const gb_piece *piece, const gb_layer *layer) {
    const gb_cores *c = &layer->cores;
    if (!gb_usual_cores(layer))
        return c->each;
    if (c->blocks > 0)
        return gb_usual_core(c->width);
    const gb_layer *wall = gb_block_layer(piece);
    if (wall == NULL)
        return (gb_volume){GB_NONE};
    return gb_usual_core((gb_length){wall->wall.width.m + wall->wall.joint.m});
}

double gb_ordered(const gb_take *take, double blocks) {
    double all = take->units * blocks * (1.0 + take->layer->wall.spare.of_one);
    return gb_round(all, 1.0, GB_UP);
}

bool gb_usual_cores(const gb_layer *layer) {
    return !(layer->cores.each.m3 > 0);
}

static double core_volume(const gb_piece *piece, const gb_layer *layer) {
    if (layer->cores.at.line == 0)
        return layer->volume.m3;
    return gb_core_blocks(piece, layer) * gb_core_each(piece, layer).m3 /
           (double)layer->cores.every;
}

static double volume_each(const gb_piece *piece, const gb_layer *layer,
                          const gb_take *take) {
    switch (layer->kind) {
    case GB_BED:
    case GB_SLURRY:
    case GB_SLAB:
        if (isnan(take->area.m2))
            return gb_form_volume(&layer->form).m3;
        return take->area.m2 * faces(layer) * take->depth.m;
    case GB_JOINT:
    case GB_POINTING:
        return joint_volume(piece, layer, take->depth.m);
    case GB_PARGE:
        return gb_parged_face(layer).m2 * take->depth.m;
    case GB_BLOCK:
        return gb_wall_mortar(&layer->wall).m3;
    case GB_CORE:
        return core_volume(piece, layer);
    case GB_VOLUME_LAYER:
        return layer->volume.m3;
    case GB_LAYER_KINDS:
        break;
    }
    return GB_NONE;
}

/* Two sizes below zero would multiply to a volume above it, so each is looked at. */
static bool joint_is_positive(const gb_layer *layer) {
    switch (gb_joint_way_of(layer)) {
    case GB_JOINT_BY_FLAG:
        return positive(layer->flag[1].m) && positive(layer->joint_width.m);
    case GB_JOINT_BY_RATE:
        return positive(layer->joint_width.m);
    case GB_JOINT_BY_SHARE:
        return true;
    case GB_JOINT_BY_LENGTH:
        break;
    }
    return positive(layer->joint_length.m) && positive(layer->joint_width.m);
}

static bool sizes_are_positive(const gb_piece *piece, const gb_layer *layer, bool laid) {
    for (size_t i = 0; i < layer->depth_count; i++)
        if (!positive(layer->depths_m[i]))
            return false;
    for (size_t i = 0; i < layer->levels.block_count; i++)
        if (!positive(gb_level_bed(&layer->levels, i)))
            return false;
    if (laid)
        return positive(gb_bedded_area(piece).m2);
    if (layer->kind == GB_PARGE && !(layer->face_area.m2 > 0))
        return positive(layer->face[0].m) && positive(layer->face[1].m);
    return !gb_is_joint(layer->kind) || joint_is_positive(layer);
}

/* Stepped footings, stairs and piers have sizes of their own. */
static bool is_laid(const gb_layer *layer) {
    if (layer->kind == GB_SLAB)
        return layer->form.kind == GB_PRISM || layer->form.kind == GB_WEDGE;
    return layer->kind == GB_BED || layer->kind == GB_SLURRY;
}

static gb_share spread_of(const gb_layer *layer, const gb_take *t) {
    if (t->depth_se.m > 0)
        return (gb_share){t->depth_se.m / t->depth.m};
    bool usual =
        layer->kind == GB_CORE && layer->cores.at.line != 0 && gb_usual_cores(layer);
    return usual ? gb_core_spread() : (gb_share){0};
}

gb_status gb_take_off(const gb_piece *piece, const gb_layer *layer, gb_take *take) {
    gb_take t = {.piece = piece,
                 .layer = layer,
                 .units = (double)piece->count,
                 .area = {GB_NONE},
                 .depth = {GB_NONE}};
    bool laid = is_laid(layer);
    if (laid)
        t.area = gb_bedded_area(piece);
    if (laid || gb_is_joint(layer->kind) || layer->kind == GB_PARGE) {
        gb_layer_depth(layer, &t.depth, &t.depth_se);
        t.depth = gb_laid_depth(piece, layer, t.depth);
    }
    t.each.m3 = volume_each(piece, layer, &t);
    t.net.m3 = t.units * t.each.m3;
    t.spread = spread_of(layer, &t);
    if (!sizes_are_positive(piece, layer, laid) || !positive(t.each.m3) ||
        !positive(t.units))
        return GB_NOT_POSITIVE;
    *take = t;
    return GB_OK;
}
