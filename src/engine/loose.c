#include "gaugebox/loose.h"

#include "gaugebox/count.h"

#include <math.h>

static bool positive(double x) {
    return isfinite(x) && x > 0;
}

double gb_usual_compaction(gb_loose_kind kind) {
    return kind == GB_SHIM ? 1.0 : 1.2;
}

static double compaction_of(const gb_loose *l) {
    return isnan(l->compaction) ? gb_usual_compaction(l->kind) : l->compaction;
}

/* The area of one piece, or the stated one, with what goes beyond it. */
static double area_of(const gb_loose *l, const gb_shape *shape, double beyond) {
    gb_plan_size plan;
    gb_length none = {0};
    if (!isnan(l->area.m2))
        return l->area.m2;
    if (!gb_has_shape(shape) || gb_measure_shape(shape, none, none, &plan) != GB_OK)
        return GB_NONE;
    return plan.net.m2 + plan.perimeter.m * beyond + 4.0 * beyond * beyond;
}

static double net_volume(const gb_loose *l, double area) {
    return isnan(l->volume.m3) ? area * l->depth.m : l->volume.m3;
}

static gb_status measure_filled(const gb_loose *l, const gb_shape *shape, double n,
                                gb_lying lying, gb_loose_size *s) {
    double area = area_of(l, shape, l->beyond.m);
    double compaction = compaction_of(l);
    s->area.m2 = n * area;
    s->net.m3 = n * net_volume(l, area);
    s->ordered.m3 = s->net.m3 * compaction;
    if (!positive(s->net.m3) || gb_under(compaction, 1.0) || l->material == NULL)
        return GB_NOT_POSITIVE;
    s->mass = gb_dry_mass(l->material, s->ordered, lying);
    if (l->kind == GB_BASE && !isnan(l->depth.m))
        s->lifts = gb_round(l->depth.m / l->lift.m, 1, GB_UP);
    return GB_OK;
}

static gb_status measure_dug(const gb_loose *l, const gb_shape *shape, double n,
                             gb_loose_size *s) {
    double area = area_of(l, shape, l->beyond.m);
    s->area.m2 = n * area;
    s->net.m3 = n * net_volume(l, area);
    s->ordered.m3 = s->net.m3 * (1.0 + l->swell.of_one);
    return positive(s->net.m3) && l->swell.of_one >= 0 ? GB_OK : GB_NOT_POSITIVE;
}

static gb_status measure_cloth(const gb_loose *l, const gb_shape *shape, double n,
                               gb_loose_size *s) {
    double area = area_of(l, shape, l->beyond.m + l->turn_up.m);
    s->area.m2 = n * area * (1.0 + l->lap.of_one);
    return positive(s->area.m2) && l->lap.of_one >= 0 ? GB_OK : GB_NOT_POSITIVE;
}

static gb_status measure_joint(const gb_loose *l, double n, gb_loose_size *s) {
    double more = 1.0 + l->extra.of_one;
    if (!positive(l->joint_length.m) || !(l->extra.of_one >= 0))
        return GB_NOT_POSITIVE;
    if (l->kind == GB_BACKER_ROD) {
        s->length.m = n * l->joint_length.m * more;
        return GB_OK;
    }
    s->net.m3 = n * l->joint_length.m * l->joint_width.m * l->depth.m;
    s->ordered.m3 = s->net.m3 * more;
    if (!isnan(l->pack.m3))
        s->packs = gb_round(s->ordered.m3 / l->pack.m3, 1, GB_UP);
    return positive(s->net.m3) && !(l->pack.m3 <= 0) ? GB_OK : GB_NOT_POSITIVE;
}

gb_status gb_measure_loose(const gb_loose *loose, const gb_shape *shape, size_t count,
                           gb_lying lying, gb_loose_size *size) {
    gb_loose_size s = {.area = {GB_NONE},
                       .net = {GB_NONE},
                       .ordered = {GB_NONE},
                       .mass = {GB_NONE},
                       .lifts = GB_NONE,
                       .length = {GB_NONE},
                       .packs = GB_NONE};
    gb_status status = GB_NOT_POSITIVE;
    double n = (double)count;
    switch (loose->kind) {
    case GB_BASE:
    case GB_SHIM:
    case GB_BACKFILL:
        status = measure_filled(loose, shape, n, lying, &s);
        break;
    case GB_EXCAVATION:
        status = measure_dug(loose, shape, n, &s);
        break;
    case GB_GEOTEXTILE:
        status = measure_cloth(loose, shape, n, &s);
        break;
    case GB_BACKER_ROD:
    case GB_SEALANT:
        status = measure_joint(loose, n, &s);
        break;
    case GB_LOOSE_KINDS:
        break;
    }
    if (status == GB_OK)
        *size = s;
    return status;
}
