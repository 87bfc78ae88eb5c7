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

void gb_layer_depth(const gb_layer *layer, gb_length *mean, gb_length *se) {
    mean->m = GB_NONE;
    se->m = 0;
    if (layer->depth_count == 0) {
        if (layer->kind == GB_SLURRY)
            *mean = gb_usual_slurry(layer->back);
        return;
    }
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

static double faces(const gb_layer *layer) {
    return layer->kind == GB_SLURRY && layer->faces == GB_BOTH_FACES ? 2.0 : 1.0;
}

bool gb_is_joint(gb_layer_kind kind) {
    return kind == GB_JOINT || kind == GB_POINTING;
}

static double volume_each(const gb_layer *layer, const gb_take *take) {
    switch (layer->kind) {
    case GB_BED:
    case GB_SLURRY:
    case GB_SLAB:
        return take->area.m2 * faces(layer) * take->depth.m;
    case GB_JOINT:
    case GB_POINTING:
        return layer->joint_length.m * layer->joint_width.m * take->depth.m;
    case GB_CORE:
    case GB_VOLUME_LAYER:
        return layer->volume.m3;
    case GB_LAYER_KINDS:
        break;
    }
    return GB_NONE;
}

/* Two sizes below zero would multiply to a volume above it, so each is looked at. */
static bool sizes_are_positive(const gb_piece *piece, const gb_layer *layer, bool laid) {
    for (size_t i = 0; i < layer->depth_count; i++)
        if (!positive(layer->depths_m[i]))
            return false;
    if (laid)
        return positive(gb_bedded_area(piece).m2);
    return !gb_is_joint(layer->kind) ||
           (positive(layer->joint_length.m) && positive(layer->joint_width.m));
}

gb_status gb_take_off(const gb_piece *piece, const gb_layer *layer, gb_take *take) {
    gb_take t = {.piece = piece,
                 .layer = layer,
                 .units = (double)piece->count,
                 .area = {GB_NONE},
                 .depth = {GB_NONE}};
    bool laid =
        layer->kind == GB_BED || layer->kind == GB_SLURRY || layer->kind == GB_SLAB;
    if (laid)
        t.area = gb_bedded_area(piece);
    if (laid || gb_is_joint(layer->kind))
        gb_layer_depth(layer, &t.depth, &t.depth_se);
    t.each.m3 = volume_each(layer, &t);
    t.net.m3 = t.units * t.each.m3;
    if (!sizes_are_positive(piece, layer, laid) || !positive(t.each.m3) ||
        !positive(t.units))
        return GB_NOT_POSITIVE;
    *take = t;
    return GB_OK;
}
