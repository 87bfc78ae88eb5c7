#include "gaugebox/pail.h"

#include "gaugebox/count.h"

#include <math.h>

static const double PI = 3.14159265358979323846;

gb_pail_size gb_pail_unknown(void) {
    return (gb_pail_size){.volume = {GB_NONE},
                          .across_bottom = {GB_NONE},
                          .across_top = {GB_NONE},
                          .height = {GB_NONE}};
}

static bool is_size(double size) {
    return size > 0 && isfinite(size);
}

/* V = pi h (d0^2 + d0 d1 + d1^2) / 12: frustum of a cone, Machinery's Handbook (from
   memory). */
static double frustum(double d0, double d1, double h) {
    return PI * h * (d0 * d0 + d0 * d1 + d1 * d1) / 12.0;
}

/* Both widths and the height of the inside, if the pail tells them. */
static bool shape_of(const gb_pail_size *pail, double *d0, double *d1, double *h) {
    *h = pail->height.m;
    *d0 = pail->across_bottom.m;
    *d1 = isnan(pail->across_top.m) ? *d0 : pail->across_top.m;
    if (!isnan(pail->volume.m3)) {
        if (!isnan(*d0) || !isnan(*d1))
            return false;
        *d0 = sqrt(4.0 * pail->volume.m3 / (PI * *h));
        *d1 = *d0;
    }
    return is_size(*d0) && is_size(*d1) && is_size(*h) && is_size(frustum(*d0, *d1, *h));
}

gb_volume gb_pail_volume(const gb_pail_size *pail) {
    double d0 = 0;
    double d1 = 0;
    double h = 0;
    bool alone = isnan(pail->across_bottom.m) && isnan(pail->across_top.m) &&
                 (isnan(pail->height.m) || is_size(pail->height.m));
    if (alone && is_size(pail->volume.m3))
        return pail->volume;
    if (!shape_of(pail, &d0, &d1, &h))
        return (gb_volume){GB_NONE};
    return (gb_volume){frustum(d0, d1, h)};
}

/* What stands in a frustum up to `up`: one with the width that it has there. */
static double filled(double d0, double d1, double h, double up) {
    return frustum(d0, d0 + (d1 - d0) * (up / h), up);
}

gb_volume gb_pail_filled(const gb_pail_size *pail, gb_length up) {
    double d0 = 0;
    double d1 = 0;
    double h = 0;
    if (!shape_of(pail, &d0, &d1, &h) || !(up.m >= 0) || gb_over(up.m, h))
        return (gb_volume){GB_NONE};
    return (gb_volume){filled(d0, d1, h, up.m)};
}

gb_share gb_pail_full(void) {
    return (gb_share){0.9};
}

/* The height up to which `volume` stands. It is a root of a cubic; what stands there
   rises all the way, so that halving finds it. */
static double height_of(double d0, double d1, double h, double volume) {
    enum { HALVINGS = 60 };
    double low = 0;
    double high = h;
    for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2.0;
        if (filled(d0, d1, h, middle) < volume)
            low = middle;
        else
            high = middle;
    }
    return (low + high) / 2.0;
}

gb_length gb_pail_up(const gb_pail_size *pail, gb_volume volume) {
    double d0 = 0;
    double d1 = 0;
    double h = 0;
    if (!shape_of(pail, &d0, &d1, &h) || !(volume.m3 >= 0) ||
        gb_over(volume.m3 / frustum(d0, d1, h), 1.0))
        return (gb_length){GB_NONE};
    return (gb_length){height_of(d0, d1, h, volume.m3)};
}

gb_status gb_pail_mark(const gb_pail_size *pail, gb_volume volume, size_t *full,
                       gb_length *up) {
    double d0 = 0;
    double d1 = 0;
    double h = 0;
    if (!shape_of(pail, &d0, &d1, &h))
        return GB_NOT_POSITIVE;
    double one = frustum(d0, d1, h) * gb_pail_full().of_one;
    size_t pails = 0;
    gb_status status = gb_count_down(volume.m3, one, &pails);
    if (status != GB_OK)
        return status;
    /* Below zero, or next to nothing, where the count took a last pail as full. */
    double rest = volume.m3 - (double)pails * one;
    *full = pails;
    up->m = gb_over(rest / one, 0) ? height_of(d0, d1, h, rest) : 0;
    return GB_OK;
}
