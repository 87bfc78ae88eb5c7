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

/* A line through `on` with the direction `x`, `y` of length 1; what lies left is kept. */
typedef struct cut_line {
    gb_point on;
    double x, y;
} cut_line;

static double left_of(const cut_line *l, gb_point p) {
    return l->x * (p.y - l->on.y) - l->y * (p.x - l->on.x);
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

/* ---- area, and its moment, behind up to three lines -------------------------------- */

enum { MOST_LINES = 3 };

/* Corners run through the lines one behind the other (Sutherland and Hodgman), so that no
   outline need be kept; what passes the last one is summed up from its first corner by
   the trapezoid (shoelace) formula. A piece that falls in two stays joined along the
   line, which encloses no area. */
typedef struct gate {
    bool any;
    gb_point first, last;
} gate;

typedef struct run_through {
    const cut_line *lines;
    size_t line_count;
    gate gates[MOST_LINES + 1];
    double twice_area;
    gb_point six_moment; /* 6 times the area's moment, from the first corner */
} run_through;

static void sum_up(run_through *r, gb_point p) {
    gate *g = &r->gates[r->line_count];
    if (g->any) {
        double twice = turn(g->first, g->last, p);
        r->twice_area += twice;
        r->six_moment.x += twice * (g->last.x + p.x - 2.0 * g->first.x);
        r->six_moment.y += twice * (g->last.y + p.y - 2.0 * g->first.y);
    } else {
        g->first = p;
    }
    g->any = true;
    g->last = p;
}

/* The side from the last corner to p, as seen behind line i and those after it. */
static void pass(run_through *r, size_t i, gb_point p);

static void cross(run_through *r, size_t i, gb_point from, gb_point to) {
    double a = left_of(&r->lines[i], from);
    double b = left_of(&r->lines[i], to);
    if ((a < 0) == (b < 0))
        return;
    double part = a / (a - b);
    gb_point on = {from.x + part * (to.x - from.x), from.y + part * (to.y - from.y)};
    pass(r, i + 1, on);
}

// NOLINTNEXTLINE(misc-no-recursion) as deep as there are lines, three at most
static void pass(run_through *r, size_t i, gb_point p) {
    if (i == r->line_count) {
        sum_up(r, p);
        return;
    }
    gate *g = &r->gates[i];
    if (g->any)
        cross(r, i, g->last, p);
    else
        g->first = p;
    g->any = true;
    g->last = p;
    if (left_of(&r->lines[i], p) >= 0)
        pass(r, i + 1, p);
}

/* Closes each outline, from the first line on. */
static void close_all(run_through *r) {
    for (size_t i = 0; i < r->line_count; i++)
        if (r->gates[i].any)
            cross(r, i, r->gates[i].last, r->gates[i].first);
}

/* Area of one outline behind the lines, and its moment about `from`. */
typedef struct part_area {
    double m2;
    double moment; /* m3 */
} part_area;

static part_area area_behind(const gb_outline *o, const cut_line *lines, size_t count,
                             const cut_line *from) {
    run_through r = {.lines = lines, .line_count = count};
    for (size_t i = 0; i < o->count; i++)
        pass(&r, 0, o->points[i]);
    close_all(&r);
    const gate *sum = &r.gates[count];
    double sign = r.twice_area < 0 ? -1.0 : 1.0;
    part_area a = {.m2 = sign * r.twice_area / 2.0};
    if (!sum->any)
        return a;
    double along = r.six_moment.y * from->x - r.six_moment.x * from->y;
    a.moment = a.m2 * left_of(from, sum->first) + sign * along / 6.0;
    return a;
}

/* The shape behind all lines, its holes taken off. */
static part_area net_behind(const gb_shape *s, const cut_line *lines, size_t count,
                            const cut_line *from) {
    part_area net = area_behind(&s->outline, lines, count, from);
    for (size_t i = 0; i < s->hole_count; i++) {
        part_area hole = area_behind(&s->holes[i], lines, count, from);
        net.m2 -= hole.m2;
        net.moment -= hole.moment;
    }
    return net;
}

/* Over zero when the corners go round to the left. */
static double signed_area(const gb_outline *o) {
    double sum = 0;
    for (size_t i = 1; i + 1 < o->count; i++)
        sum += turn(o->points[0], o->points[i], o->points[i + 1]);
    return sum / 2.0;
}

/* ---- sizes ------------------------------------------------------------------------- */

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
                             double overhang_side, gb_plan_size *size) {
    const gb_outline *o = &shape->outline;
    if (o->count < 3)
        return GB_NOT_POSITIVE;
    bool leftwards = signed_area(o) > 0;
    cut_line lines[MOST_LINES] = {beside(o, 0, overhang_front, leftwards),
                                  beside(o, 1, overhang_side, leftwards),
                                  beside(o, o->count - 1, overhang_side, leftwards)};
    size_t count = overhang_side > 0 ? 3 : overhang_front > 0 ? 1 : 0;
    part_area bedded = net_behind(shape, lines, count, &lines[0]);
    size->net.m2 = net_behind(shape, NULL, 0, &lines[0]).m2;
    size->bedded.m2 = bedded.m2;
    size->behind_front.m = bedded.moment / bedded.m2;
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
