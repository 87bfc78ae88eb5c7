#include "gaugebox/shape.h"

#include "engine/outline.h"
#include "gaugebox/count.h"

#include <math.h>

static bool positive(double x) {
    return isfinite(x) && x > 0;
}

/* ---- arcs -------------------------------------------------------------------------- */

/* The angle whose tangent is y / x, in radians from 0 to pi, for y >= 0. Written here
   because the one of libm costs its loading at every start, and its last bits differ from
   machine to machine. The angle is halved four times, tan(a/2) = t / (1 + sqrt(1 + t^2)),
   and then t - t^3/3 + t^5/5 - ... ends below a double's last bit. */
static double angle_of(double y, double x) {
    static const double PI = 3.14159265358979323846;
    bool steep = fabs(x) < y;
    double t = steep ? fabs(x) / y : y / fabs(x);
    for (int i = 0; i < 4; i++)
        t = t / (1.0 + sqrt(1.0 + t * t));
    double sum = 0;
    for (int k = 17; k > 0; k -= 2)
        sum = 1.0 / k - t * t * sum;
    double angle = 16.0 * t * sum;
    if (steep)
        angle = PI / 2.0 - angle;
    return x < 0 ? PI - angle : angle;
}

static gb_arc arc_of(double radius, double chord, double rise) {
    return (gb_arc){.radius = {radius},
                    .chord = {chord},
                    .rise = {rise},
                    .angle = 2.0 * angle_of(chord / 2.0, radius - rise)};
}

gb_status gb_arc_of_rise(gb_length chord, gb_length rise, gb_arc *arc) {
    if (!positive(chord.m) || !positive(rise.m))
        return GB_NOT_POSITIVE;
    double radius = (chord.m * chord.m / 4.0 + rise.m * rise.m) / (2.0 * rise.m);
    if (!positive(radius))
        return GB_NOT_POSITIVE;
    *arc = arc_of(radius, chord.m, rise.m);
    return GB_OK;
}

gb_status gb_arc_of_radius(gb_length radius, gb_length chord, gb_arc *arc) {
    if (!positive(chord.m) || !positive(radius.m))
        return GB_NOT_POSITIVE;
    if (gb_over(chord.m / (2.0 * radius.m), 1.0))
        return GB_IMPOSSIBLE;
    double square = radius.m * radius.m - chord.m * chord.m / 4.0;
    *arc = arc_of(radius.m, chord.m, radius.m - sqrt(gb_larger(square, 0)));
    return GB_OK;
}

gb_status gb_arc_of_radius_and_rise(gb_length radius, gb_length rise, gb_arc *arc) {
    if (!positive(radius.m) || !positive(rise.m))
        return GB_NOT_POSITIVE;
    double square = rise.m * (2.0 * radius.m - rise.m);
    if (!positive(square))
        return GB_IMPOSSIBLE;
    *arc = arc_of(radius.m, 2.0 * sqrt(square), rise.m);
    return GB_OK;
}

/* ---- shapes with round edges ------------------------------------------------------- */

static const double TURN = 2.0 * 3.14159265358979323846;

static gb_status measure_circle(const gb_shape *s, double front, double side,
                                gb_plan_size *size) {
    double r = s->diameter.m / 2.0;
    double bed = r - front;
    if (!positive(r) || !positive(bed) || side > 0)
        return GB_NOT_POSITIVE;
    size->net.m2 = TURN / 2.0 * r * r;
    size->bedded.m2 = TURN / 2.0 * bed * bed;
    size->behind_front.m = bed / 3.0;
    size->perimeter.m = size->front.m = TURN * r;
    size->blank_length.m = size->blank_width.m = s->diameter.m;
    return GB_OK;
}

/* A sector of a ring: angle / 2 * (R^2 - r^2). Around it lies a rectangle as wide as the
   arc at its widest, and as deep as from the crown to the lowest corner. */
static gb_status measure_curved(const gb_shape *s, double front, double side,
                                gb_plan_size *size) {
    const gb_arc *a = &s->arc;
    double outer = a->radius.m;
    double inner = outer - s->width.m;
    double bed = outer - front;
    if (!positive(outer) || !positive(s->width.m) || !positive(a->angle) || inner < 0 ||
        !positive(bed - inner) || side > 0)
        return GB_NOT_POSITIVE;
    double cosine = 1.0 - a->rise.m / outer; /* of half the angle */
    size->net.m2 = a->angle / 2.0 * (outer * outer - inner * inner);
    size->bedded.m2 = a->angle / 2.0 * (bed * bed - inner * inner);
    /* the mean radius of the ring is 2/3 (R^3 - r^3) / (R^2 - r^2) */
    size->behind_front.m =
        bed - 2.0 / 3.0 * (bed * bed + bed * inner + inner * inner) / (bed + inner);
    size->front.m = a->angle * outer;
    size->perimeter.m = a->angle * (outer + inner) + 2.0 * s->width.m;
    bool over_half = a->rise.m > outer;
    size->blank_length.m = over_half ? 2.0 * outer : a->chord.m;
    size->blank_width.m = outer - gb_smaller(outer * cosine, inner * cosine);
    return GB_OK;
}

/* ---- shapes with corners ----------------------------------------------------------- */

enum { MOST_CORNERS = 4 };

/* The corners of a shape that has up to four, the front first; their count, or 0 when its
   sizes close none. */
static size_t corners_of_trapezoid(double front, double back, double width,
                                   gb_point *corners) {
    if (!positive(front) || !positive(width) || !positive(back))
        return 0;
    corners[0] = (gb_point){-front / 2.0, 0};
    corners[1] = (gb_point){front / 2.0, 0};
    corners[2] = (gb_point){back / 2.0, width};
    corners[3] = (gb_point){-back / 2.0, width};
    return 4;
}

static size_t corners_of_triangle(const gb_shape *s, gb_point *corners) {
    if (s->side_count != 3)
        return 0;
    double a = s->sides_m[0];
    double b = s->sides_m[1];
    double c = s->sides_m[2];
    if (!positive(a) || !positive(b) || !positive(c))
        return 0;
    double x = (a * a + c * c - b * b) / (2.0 * a); /* law of cosines */
    double square = c * c - x * x;
    if (!positive(square))
        return 0;
    corners[0] = (gb_point){0, 0};
    corners[1] = (gb_point){a, 0};
    corners[2] = (gb_point){x, sqrt(square)};
    return 3;
}

/* A winder is stepped on between its ends: its front is a long side. One without a narrow
   end comes to a point. */
static size_t corners_of_winder(const gb_shape *s, gb_point *corners) {
    gb_point across[MOST_CORNERS];
    if (s->narrow.m == 0 && positive(s->wide.m) && positive(s->width.m)) {
        corners[0] = (gb_point){0, 0};
        corners[1] = (gb_point){s->wide.m / 2.0, s->width.m};
        corners[2] = (gb_point){-s->wide.m / 2.0, s->width.m};
        return 3;
    }
    size_t n = corners_of_trapezoid(s->narrow.m, s->wide.m, s->width.m, across);
    for (size_t i = 0; i < n; i++)
        corners[i] = across[(i + 1) % n];
    return n;
}

static size_t corners_of(const gb_shape *s, gb_point *corners) {
    switch (s->kind) {
    case GB_RECTANGLE:
        return corners_of_trapezoid(s->front.m, s->front.m, s->width.m, corners);
    case GB_TRAPEZOID:
        return corners_of_trapezoid(s->front.m, s->back.m, s->width.m, corners);
    case GB_TRIANGLE:
        return corners_of_triangle(s, corners);
    case GB_WINDER:
        return corners_of_winder(s, corners);
    default:
        return 0;
    }
}

bool gb_has_shape(const gb_shape *shape) {
    return shape->kind != GB_RECTANGLE || !isnan(shape->front.m);
}

gb_length gb_winder_going(const gb_shape *winder, gb_length from_narrow_end) {
    double wider = winder->wide.m - winder->narrow.m;
    return (gb_length){winder->narrow.m + wider * from_narrow_end.m / winder->width.m};
}

gb_status gb_measure_shape(const gb_shape *shape, gb_length overhang_front,
                           gb_length overhang_side, gb_plan_size *size) {
    gb_plan_size measured = {0};
    gb_status status = GB_NOT_POSITIVE;
    gb_point corners[MOST_CORNERS];
    if (!(overhang_front.m >= 0) || !(overhang_side.m >= 0))
        return GB_NOT_POSITIVE;
    if (shape->kind == GB_CIRCLE) {
        status = measure_circle(shape, overhang_front.m, overhang_side.m, &measured);
    } else if (shape->kind == GB_CURVED) {
        status = measure_curved(shape, overhang_front.m, overhang_side.m, &measured);
    } else {
        gb_shape with = *shape;
        if (shape->kind != GB_POLYGON) {
            with.outline = (gb_outline){corners, corners_of(shape, corners)};
            with.hole_count = 0;
        }
        status = gb_measure_outline(&with, overhang_front.m, overhang_side.m, &measured);
    }
    if (status == GB_OK)
        *size = measured;
    return status;
}
