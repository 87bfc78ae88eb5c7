/* Random outlines against GEOS: which are valid, their areas, and what is left of them
   behind a line. */
#include <criterion/criterion.h>
#include <geos_c.h>
#include <math.h>
#include <stdarg.h>
#include <stdlib.h>

#include "gaugebox/shape.h"

enum { MOST = 24, ROUNDS = 2000 };

static void quiet(const char *format, ...) {
    (void)format;
}
static void open_all(void) {
    initGEOS(quiet, quiet);
}
static void close_all(void) {
    finishGEOS();
}
TestSuite(geos, .init = open_all, .fini = close_all);

static double chance(void) {
    return (double)rand() / RAND_MAX;
}

static GEOSGeometry *ring_of(const gb_point *p, size_t count) {
    GEOSCoordSequence *s = GEOSCoordSeq_create((unsigned)count + 1, 2);
    for (size_t i = 0; i <= count; i++)
        GEOSCoordSeq_setXY(s, (unsigned)i, p[i % count].x, p[i % count].y);
    return GEOSGeom_createLinearRing(s);
}

static GEOSGeometry *polygon_of(const gb_shape *s) {
    GEOSGeometry *holes[2];
    for (size_t i = 0; i < s->hole_count; i++)
        holes[i] = ring_of(s->holes[i].points, s->holes[i].count);
    return GEOSGeom_createPolygon(ring_of(s->outline.points, s->outline.count), holes,
                                  (unsigned)s->hole_count);
}

static double area_of(const GEOSGeometry *g) {
    double area = NAN;
    GEOSArea(g, &area);
    return area;
}

/* Any corners at all: most of them cross. */
Test(geos, agrees_on_what_crosses) {
    srand(11);
    size_t good = 0, bad = 0;
    for (int round = 0; round < ROUNDS; round++) {
        gb_point p[7];
        size_t n = 3 + (size_t)rand() % 5, which, at;
        for (size_t i = 0; i < n; i++)
            p[i] = (gb_point){chance(), chance()};
        gb_shape s = {.kind = GB_POLYGON, .outline = {p, n}};
        GEOSGeometry *g = polygon_of(&s);
        bool valid = gb_check_outlines(&s, &which, &at) == GB_OUTLINE_GOOD;
        cr_expect(valid == (GEOSisValid(g) == 1), "round %d", round);
        good += valid;
        bad += !valid;
        GEOSGeom_destroy(g);
    }
    cr_expect(good > ROUNDS / 10 && bad > ROUNDS / 10, "%zu good, %zu bad", good, bad);
}

/* The same on a coarse grid, where corners touch sides and sides lie on one another. GEOS
   too takes an outline that touches itself for none. */
Test(geos, agrees_on_what_touches) {
    srand(12);
    size_t good = 0;
    for (int round = 0; round < ROUNDS; round++) {
        gb_point p[6];
        size_t n = 3 + (size_t)rand() % 4, which, at;
        bool twice = false;
        for (size_t i = 0; i < n; i++)
            p[i] = (gb_point){rand() % 5, rand() % 5};
        for (size_t i = 0; i < n; i++)
            twice = twice || (p[i].x == p[(i + 1) % n].x && p[i].y == p[(i + 1) % n].y);
        if (twice) /* GEOS passes over a corner that is there twice, we do not */
            continue;
        gb_shape s = {.kind = GB_POLYGON, .outline = {p, n}};
        GEOSGeometry *g = polygon_of(&s);
        bool valid = gb_check_outlines(&s, &which, &at) == GB_OUTLINE_GOOD;
        cr_expect(valid == (GEOSisValid(g) == 1), "round %d", round);
        good += valid;
        GEOSGeom_destroy(g);
    }
    cr_expect(good > ROUNDS / 10, "%zu good", good);
}

/* Corners round a middle, at any distance: an outline that never crosses itself. */
static void star(gb_point *points, size_t count, gb_point middle, double least,
                 double most) {
    for (size_t i = 0; i < count; i++) {
        double angle = -2 * acos(-1) * (double)i / (double)count;
        double far = least + (most - least) * chance();
        points[i] = (gb_point){middle.x + far * cos(angle), middle.y + far * sin(angle)};
    }
}

/* All that lies behind the line beside the side from corner i on. */
static GEOSGeometry *half_plane(const gb_point *p, size_t count, size_t i,
                                double inward) {
    gb_point a = p[i % count], b = p[(i + 1) % count];
    double length = hypot(b.x - a.x, b.y - a.y), far = 1000;
    /* the corners go round to the right, so that the inside lies there */
    gb_point along = {(b.x - a.x) / length, (b.y - a.y) / length};
    gb_point in = {along.y, -along.x};
    gb_point on = {a.x + inward * in.x, a.y + inward * in.y};
    const gb_point box[] = {
        {on.x - far * along.x, on.y - far * along.y},
        {on.x + far * along.x, on.y + far * along.y},
        {on.x + far * (along.x + in.x), on.y + far * (along.y + in.y)},
        {on.x + far * (in.x - along.x), on.y + far * (in.y - along.y)}};
    gb_shape s = {.kind = GB_POLYGON, .outline = {box, 4}};
    return polygon_of(&s);
}

static GEOSGeometry *both(GEOSGeometry *a, GEOSGeometry *b) {
    GEOSGeometry *result = GEOSIntersection(a, b);
    GEOSGeom_destroy(a);
    GEOSGeom_destroy(b);
    return result;
}

/* How far the middle of what is left lies behind the line beside the front. */
static double behind(const GEOSGeometry *left, const gb_point *p, double front) {
    GEOSGeometry *middle = GEOSGetCentroid(left);
    double x = NAN, y = NAN, length = hypot(p[1].x - p[0].x, p[1].y - p[0].y);
    GEOSGeomGetX(middle, &x);
    GEOSGeomGetY(middle, &y);
    GEOSGeom_destroy(middle);
    return ((p[1].y - p[0].y) * (x - p[0].x) - (p[1].x - p[0].x) * (y - p[0].y)) /
               length -
           front;
}

Test(geos, agrees_on_areas_and_cuts) {
    srand(13);
    for (int round = 0; round < ROUNDS; round++) {
        gb_point p[MOST], q[5];
        size_t n = 5 + (size_t)rand() % (MOST - 5), which, at;
        gb_point middle = {20 * chance(), 20 * chance()};
        star(p, n, middle, 1.0, 3.0);
        star(q, 5, middle, 0.1, 0.4);
        const gb_outline hole = {q, 5};
        gb_shape s = {
            .kind = GB_POLYGON, .outline = {p, n}, .holes = &hole, .hole_count = 1};
        cr_assert(gb_check_outlines(&s, &which, &at) == GB_OUTLINE_GOOD, "%d", round);
        double front = 1.2 * chance(), side = 0.3 * chance();
        GEOSGeometry *g = polygon_of(&s);
        double net = area_of(g);
        GEOSGeometry *left = both(g, half_plane(p, n, 0, front));
        left = both(left, half_plane(p, n, 1, side));
        left = both(left, half_plane(p, n, n - 1, side));
        double bedded = area_of(left);
        gb_plan_size size = {0};
        gb_status status =
            gb_measure_shape(&s, (gb_length){front}, (gb_length){side}, &size);
        if (bedded > 1e-9) {
            cr_assert(status == GB_OK, "round %d", round);
            cr_expect(fabs(size.net.m2 - net) < 1e-9, "round %d: net", round);
            cr_expect(fabs(size.behind_front.m - behind(left, p, front)) < 1e-8,
                      "round %d: behind the front", round);
            cr_expect(fabs(size.bedded.m2 - bedded) < 1e-9, "round %d: %.12f, GEOS %.12f",
                      round, size.bedded.m2, bedded);
        }
        GEOSGeom_destroy(left);
    }
}
