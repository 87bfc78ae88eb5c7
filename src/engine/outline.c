#include "engine/outline.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

static gb_point corner(const gb_outline *o, size_t i) {
    return o->points[i % o->count];
}

/* Twice the area of the triangle a, b, c; over zero when they turn left. */
static double turn(gb_point a, gb_point b, gb_point c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

static double distance(gb_point a, gb_point b) {
    double x = b.x - a.x;
    double y = b.y - a.y;
    return sqrt(x * x + y * y);
}

/* The trapezoid formula, from the first corner so that far-off ones lose no figures; over
   zero when the corners go round to the left. */
static double signed_area(const gb_outline *o) {
    double sum = 0;
    for (size_t i = 1; i + 1 < o->count; i++)
        sum += turn(o->points[0], o->points[i], o->points[i + 1]);
    return sum / 2.0;
}

/* ---- cutting along a line ---------------------------------------------------------- */

/* A line through `on` with the direction `x`, `y` of length 1; `left` is kept. */
typedef struct cut_line {
    gb_point on;
    double x, y;
} cut_line;

static double left_of(const cut_line *l, gb_point p) {
    return l->x * (p.y - l->on.y) - l->y * (p.x - l->on.x);
}

/* The part of an outline to the left of a line (Sutherland and Hodgman). A piece that
   falls in two stays joined along the line, which encloses no area. */
static gb_status cut(const gb_outline *o, const cut_line *line, gb_arena *arena,
                     gb_outline *kept) {
    gb_point *points = gb_arena_take(arena, 2 * o->count + 1, sizeof *points);
    if (points == NULL)
        return GB_NO_MEMORY;
    size_t n = 0;
    for (size_t i = 0; i < o->count; i++) {
        gb_point a = corner(o, i);
        gb_point b = corner(o, i + 1);
        double from = left_of(line, a);
        double to = left_of(line, b);
        if (from >= 0)
            points[n++] = a;
        if ((from < 0) != (to < 0)) {
            double part = from / (from - to);
            points[n++] = (gb_point){a.x + part * (b.x - a.x), a.y + part * (b.y - a.y)};
        }
    }
    *kept = (gb_outline){points, n};
    return GB_OK;
}

/* The line beside the side from corner i on, `inward` away from it. */
static cut_line beside(const gb_outline *o, size_t i, double inward, bool leftwards) {
    gb_point a = corner(o, i);
    gb_point b = corner(o, i + 1);
    double length = distance(a, b);
    double sign = leftwards ? 1.0 : -1.0;
    cut_line l = {.x = sign * (b.x - a.x) / length, .y = sign * (b.y - a.y) / length};
    l.on = (gb_point){a.x - l.y * inward, a.y + l.x * inward};
    return l;
}

/* ---- sizes ------------------------------------------------------------------------- */

/* The area of one outline behind all lines. */
static gb_status area_behind(const gb_outline *o, const cut_line *lines, size_t count,
                             gb_arena *arena, double *m2) {
    gb_outline kept = *o;
    for (size_t i = 0; i < count; i++) {
        gb_status status = cut(&kept, &lines[i], arena, &kept);
        if (status != GB_OK)
            return status;
    }
    *m2 = fabs(signed_area(&kept));
    return GB_OK;
}

/* The area of the shape behind all lines, its holes taken off. */
static gb_status net_behind(const gb_shape *s, const cut_line *lines, size_t count,
                            gb_arena *arena, double *m2) {
    double net = 0;
    gb_status status = area_behind(&s->outline, lines, count, arena, &net);
    for (size_t i = 0; status == GB_OK && i < s->hole_count; i++) {
        double hole = 0;
        status = area_behind(&s->holes[i], lines, count, arena, &hole);
        net -= hole;
    }
    *m2 = net;
    return status;
}

/* The rectangle around the outline, one side along the front. */
static void measure_blank(const gb_outline *o, gb_plan_size *size) {
    cut_line front = beside(o, 0, 0, true);
    double low[2] = {0, 0};
    double high[2] = {0, 0};
    for (size_t i = 0; i < o->count; i++) {
        gb_point p = o->points[i];
        double at[2] = {front.x * (p.x - front.on.x) + front.y * (p.y - front.on.y),
                        left_of(&front, p)};
        for (int k = 0; k < 2; k++) {
            low[k] = gb_smaller(low[k], at[k]);
            high[k] = gb_larger(high[k], at[k]);
        }
    }
    size->blank_length.m = high[0] - low[0];
    size->blank_width.m = high[1] - low[1];
}

gb_status gb_measure_outline(const gb_shape *shape, double overhang_front,
                             double overhang_side, gb_arena *arena, gb_plan_size *size) {
    const gb_outline *o = &shape->outline;
    if (o->count < 3)
        return GB_NOT_POSITIVE;
    bool leftwards = signed_area(o) > 0;
    cut_line lines[3] = {beside(o, 0, overhang_front, leftwards),
                         beside(o, 1, overhang_side, leftwards),
                         beside(o, o->count - 1, overhang_side, leftwards)};
    size_t count = overhang_side > 0 ? 3 : overhang_front > 0 ? 1 : 0;
    gb_status status = net_behind(shape, NULL, 0, arena, &size->net.m2);
    if (status == GB_OK)
        status = net_behind(shape, lines, count, arena, &size->bedded.m2);
    if (status != GB_OK)
        return status;
    for (size_t i = 0; i < o->count; i++)
        size->perimeter.m += distance(corner(o, i), corner(o, i + 1));
    size->front.m = distance(o->points[0], corner(o, 1));
    measure_blank(o, size);
    bool good = isfinite(size->perimeter.m) && size->net.m2 > 0 && size->bedded.m2 > 0;
    return good ? GB_OK : GB_NOT_POSITIVE;
}

/* ---- what is wrong with outlines --------------------------------------------------- */

static bool between(double a, double b, double x) {
    return (a <= x && x <= b) || (b <= x && x <= a);
}

static bool on_side(gb_point a, gb_point b, gb_point p) {
    return turn(a, b, p) == 0 && between(a.x, b.x, p.x) && between(a.y, b.y, p.y);
}

static bool apart(gb_point a, gb_point b, gb_point c, gb_point d) {
    return gb_larger(a.x, b.x) < gb_smaller(c.x, d.x) ||
           gb_larger(c.x, d.x) < gb_smaller(a.x, b.x) ||
           gb_larger(a.y, b.y) < gb_smaller(c.y, d.y) ||
           gb_larger(c.y, d.y) < gb_smaller(a.y, b.y);
}

/* True when two sides have a point in common. */
static bool meet(gb_point a, gb_point b, gb_point c, gb_point d) {
    if (apart(a, b, c, d))
        return false;
    double c_at = turn(a, b, c);
    double d_at = turn(a, b, d);
    double a_at = turn(c, d, a);
    double b_at = turn(c, d, b);
    if (((c_at > 0) != (d_at > 0)) && ((a_at > 0) != (b_at > 0)) && c_at != 0 &&
        d_at != 0 && a_at != 0 && b_at != 0)
        return true;
    return on_side(a, b, c) || on_side(a, b, d) || on_side(c, d, a) || on_side(c, d, b);
}

static bool same(gb_point a, gb_point b) {
    return a.x == b.x && a.y == b.y;
}

/* Sides that follow one another share a corner; they may not run back over themselves. */
static bool turns_back(const gb_outline *o, size_t i) {
    gb_point a = corner(o, i);
    gb_point b = corner(o, i + 1);
    gb_point c = corner(o, i + 2);
    double along = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
    return turn(a, b, c) == 0 && along < 0;
}

static bool crosses_at(const gb_outline *o, size_t i) {
    if (turns_back(o, i))
        return true;
    for (size_t k = i + 2; k < o->count; k++)
        if ((i > 0 || k + 1 < o->count) &&
            meet(corner(o, i), corner(o, i + 1), corner(o, k), corner(o, k + 1)))
            return true;
    return false;
}

static gb_outline_fault check_outline(const gb_outline *o, size_t *at) {
    *at = 0;
    if (o->count < 3)
        return GB_OUTLINE_SHORT;
    for (size_t i = 0; i < o->count; i++) {
        *at = i;
        if (same(corner(o, i), corner(o, i + 1)))
            return GB_OUTLINE_TWICE;
    }
    for (size_t i = 0; i < o->count; i++) {
        *at = i;
        if (crosses_at(o, i))
            return GB_OUTLINE_CROSSES;
    }
    return signed_area(o) == 0 ? GB_OUTLINE_FLAT : GB_OUTLINE_GOOD;
}

static bool outlines_meet(const gb_outline *a, const gb_outline *b) {
    for (size_t i = 0; i < a->count; i++)
        for (size_t k = 0; k < b->count; k++)
            if (meet(corner(a, i), corner(a, i + 1), corner(b, k), corner(b, k + 1)))
                return true;
    return false;
}

/* A ray to the right crosses the sides an odd number of times. */
static bool encloses(const gb_outline *o, gb_point p) {
    bool inside = false;
    for (size_t i = 0; i < o->count; i++) {
        gb_point a = corner(o, i);
        gb_point b = corner(o, i + 1);
        if ((a.y > p.y) == (b.y > p.y))
            continue;
        if ((turn(a, b, p) > 0) == (b.y > a.y))
            inside = !inside;
    }
    return inside;
}

static gb_outline_fault check_hole(const gb_shape *s, size_t i, size_t *at) {
    const gb_outline *hole = &s->holes[i];
    gb_outline_fault fault = check_outline(hole, at);
    if (fault != GB_OUTLINE_GOOD)
        return fault;
    *at = 0;
    if (outlines_meet(&s->outline, hole) || !encloses(&s->outline, hole->points[0]))
        return GB_HOLE_OUTSIDE;
    for (size_t k = 0; k < i; k++) {
        const gb_outline *other = &s->holes[k];
        if (outlines_meet(hole, other) || encloses(other, hole->points[0]) ||
            encloses(hole, other->points[0]))
            return GB_HOLES_MEET;
    }
    return GB_OUTLINE_GOOD;
}

gb_outline_fault gb_check_outlines(const gb_shape *shape, size_t *which, size_t *at) {
    *which = 0;
    gb_outline_fault fault = check_outline(&shape->outline, at);
    for (size_t i = 0; fault == GB_OUTLINE_GOOD && i < shape->hole_count; i++) {
        *which = i + 1;
        fault = check_hole(shape, i, at);
    }
    return fault;
}
