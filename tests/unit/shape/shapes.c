/* Sizes of shapes against closed forms, and the laws that hold for all of them. */
#include <criterion/criterion.h>
#include <math.h>
#include <stdlib.h>

#include "gaugebox/shape.h"

#define ROWS_OF(t) (sizeof(t) / sizeof((t)[0]))

static bool near(double got, double want) {
    return fabs(got - want) <= 1e-12 * fmax(1.0, fabs(want));
}

static gb_plan_size sizes(const gb_shape *shape, double front, double side) {
    gb_plan_size size = {0};
    cr_assert(gb_measure_shape(shape, (gb_length){front}, (gb_length){side}, &size) ==
              GB_OK);
    return size;
}

/* Closed forms, each written out: net, bedded with an overhang of 0.03 in front (and 0.02
   at the ends where there are any), perimeter, blank. */
Test(shapes, rectangle) {
    gb_shape s = {.kind = GB_RECTANGLE, .front = {1.5}, .width = {0.35}};
    gb_plan_size got = sizes(&s, 0.03, 0.02);
    cr_expect(near(got.net.m2, 1.5 * 0.35) && near(got.bedded.m2, 1.46 * 0.32));
    cr_expect(near(got.perimeter.m, 3.7) && near(got.front.m, 1.5));
    cr_expect(near(got.behind_front.m, 0.16));
    cr_expect(near(got.blank_length.m, 1.5) && near(got.blank_width.m, 0.35));
}

/* The overhang cuts a strip off the front whose inner edge is shorter: the ends lean. */
Test(shapes, trapezoid) {
    gb_shape s = {.kind = GB_TRAPEZOID, .front = {1.6}, .back = {1.2}, .width = {0.4}};
    gb_plan_size got = sizes(&s, 0.1, 0);
    cr_expect(near(got.net.m2, 1.4 * 0.4));
    cr_expect(near(got.bedded.m2, (1.5 + 1.2) / 2 * 0.3), "%.9f", got.bedded.m2);
    cr_expect(near(got.perimeter.m, 2.8 + 2 * sqrt(0.04 + 0.16)));
    cr_expect(near(got.blank_length.m, 1.6) && near(got.blank_width.m, 0.4));
    s.front.m = 1.2, s.back.m = 1.6; /* the wide side behind */
    cr_expect(near(sizes(&s, 0, 0).net.m2, 1.4 * 0.4));
    cr_expect(near(sizes(&s, 0, 0).blank_length.m, 1.6));
}

/* 3, 4, 5: Heron's formula s (s - a) (s - b) (s - c) = 36. */
Test(shapes, triangle) {
    static const double SIDES[][3] = {
        {3, 4, 5}, {4, 5, 3}, {5, 3, 4}, {2, 2, 2}, {1.2, 0.9, 0.6}};
    for (size_t i = 0; i < ROWS_OF(SIDES); i++) {
        const double *d = SIDES[i];
        gb_shape s = {.kind = GB_TRIANGLE, .sides_m = d, .side_count = 3};
        double half = (d[0] + d[1] + d[2]) / 2;
        double heron = sqrt(half * (half - d[0]) * (half - d[1]) * (half - d[2]));
        gb_plan_size got = sizes(&s, 0, 0);
        cr_expect(near(got.net.m2, heron), "row %zu", i);
        cr_expect(near(got.perimeter.m, 2 * half) && near(got.front.m, d[0]));
        cr_expect(near(got.blank_width.m, 2 * heron / d[0]), "row %zu", i);
    }
}

Test(shapes, circle) {
    const double PI = acos(-1);
    gb_shape s = {.kind = GB_CIRCLE, .diameter = {2.4}};
    gb_plan_size got = sizes(&s, 0.05, 0);
    cr_expect(near(got.net.m2, PI * 1.44) && near(got.bedded.m2, PI * 1.15 * 1.15));
    cr_expect(near(got.perimeter.m, PI * 2.4) && near(got.blank_width.m, 2.4));
}

/* A ring sector is the difference of two sectors; its blank by its corners and crown. */
Test(shapes, curved) {
    for (double r = 0.5; r < 6; r += 0.61)
        for (double a = 0.1; a < 6.2; a += 0.13) {
            gb_shape s = {.kind = GB_CURVED, .width = {0.35}};
            gb_length chord = {2 * r * sin(a / 2)}, rise = {r * (1 - cos(a / 2))};
            cr_assert(gb_arc_of_rise(chord, rise, &s.arc) == GB_OK);
            gb_plan_size got = sizes(&s, 0.04, 0);
            double in = r - 0.35, bed = r - 0.04;
            cr_expect(fabs(got.net.m2 - a / 2 * (r * r - in * in)) < 1e-9, "%g %g", r, a);
            cr_expect(fabs(got.bedded.m2 - a / 2 * (bed * bed - in * in)) < 1e-9);
            cr_expect(fabs(got.perimeter.m - a * (r + in) - 0.7) < 1e-9);
            /* mean radius: the integral of r^2 over that of r */
            double mean =
                (bed * bed * bed - in * in * in) / 3 / ((bed * bed - in * in) / 2);
            cr_expect(fabs(got.behind_front.m - (bed - mean)) < 1e-9);
            double wide = a < acos(-1) ? 2 * r * sin(a / 2) : 2 * r;
            double low = fmin(r * cos(a / 2), in * cos(a / 2));
            cr_expect(fabs(got.blank_length.m - wide) < 1e-9, "%g %g", r, a);
            cr_expect(fabs(got.blank_width.m - (r - low)) < 1e-9, "%g %g", r, a);
        }
}

/* A full pie of a quarter turn in three: each winder 0.2 at the inner, 0.7 at the outer
   end, 1.2 wide; stepped on 0.3 from the inner end. */
Test(shapes, winder) {
    gb_shape s = {.kind = GB_WINDER, .narrow = {0.2}, .wide = {0.7}, .width = {1.2}};
    gb_plan_size got = sizes(&s, 0, 0);
    cr_expect(near(got.net.m2, 0.45 * 1.2));
    cr_expect(near(got.front.m, sqrt(1.44 + 0.0625)),
              "the nosing runs along a long side");
    cr_expect(near(gb_winder_going(&s, (gb_length){0.3}).m, 0.325));
    /* the overhang goes off the long side: a strip of its length, less at the ends */
    double strip = got.net.m2 - sizes(&s, 0.01, 0).bedded.m2;
    cr_expect(fabs(strip - 0.01 * got.front.m) < 1e-4, "%g", strip);
}

static gb_shape polygon(const gb_point *points, size_t count) {
    return (gb_shape){.kind = GB_POLYGON, .outline = {points, count}};
}

/* An L of 2 x 2 without its 1 x 1 corner, one way round and the other. */
Test(shapes, polygon) {
    static const gb_point L[] = {{0, 0}, {2, 0}, {2, 1}, {1, 1}, {1, 2}, {0, 2}};
    static const gb_point BACK[] = {{2, 0}, {0, 0}, {0, 2}, {1, 2}, {1, 1}, {2, 1}};
    gb_shape s = polygon(L, 6), back = polygon(BACK, 6);
    cr_expect(near(sizes(&s, 0, 0).net.m2, 3) && near(sizes(&back, 0, 0).net.m2, 3));
    cr_expect(near(sizes(&s, 0.1, 0).bedded.m2, 2.8));
    cr_expect(near(sizes(&back, 0.1, 0).bedded.m2, 2.8));
    cr_expect(near(sizes(&s, 0.1, 0.1).bedded.m2, 1.8 * 0.9 + 0.9 * 1.0), "%.6f",
              sizes(&s, 0.1, 0.1).bedded.m2);
    cr_expect(near(sizes(&s, 0, 0).perimeter.m, 8));
}

Test(shapes, holes_are_taken_off) {
    static const gb_point SQUARE[] = {{0, 0}, {4, 0}, {4, 4}, {0, 4}};
    static const gb_point ONE[] = {{1, 1}, {2, 1}, {2, 2}, {1, 2}};
    static const gb_point TWO[] = {{3, 0.5}, {3, 1.5}, {3.5, 1.5}, {3.5, 0.5}};
    static const gb_outline HOLES[] = {{ONE, 4}, {TWO, 4}};
    gb_shape s = polygon(SQUARE, 4);
    s.holes = HOLES;
    s.hole_count = 2;
    gb_plan_size got = sizes(&s, 1, 0);
    cr_expect(near(got.net.m2, 16 - 1 - 0.5));
    cr_expect(near(got.bedded.m2, 12 - 1 - 0.25)); /* half of the second is cut off too */
    cr_expect(near(got.perimeter.m, 16) && near(got.blank_length.m, 4));
}

/* ---- laws -------------------------------------------------------------------------- */

enum { CORNERS = 9, ROUNDS = 400 };

static double chance(void) {
    return (double)rand() / RAND_MAX;
}

/* Corners round a middle, at any distance: an outline that never crosses itself. */
static void star(gb_point *points, size_t count) {
    for (size_t i = 0; i < count; i++) {
        double angle = (double)i / (double)count * 2 * acos(-1);
        double far = 0.3 + 2 * chance();
        points[i] = (gb_point){far * cos(angle), far * sin(angle)};
    }
}

Test(shapes, shift_and_turn_change_nothing) {
    srand(1);
    for (int round = 0; round < ROUNDS; round++) {
        gb_point a[CORNERS], b[CORNERS];
        star(a, CORNERS);
        double turn = 6.3 * chance(), x = 50 * chance(), y = 50 * chance();
        for (size_t i = 0; i < CORNERS; i++)
            b[i] = (gb_point){x + a[i].x * cos(turn) - a[i].y * sin(turn),
                              y + a[i].x * sin(turn) + a[i].y * cos(turn)};
        gb_shape one = polygon(a, CORNERS), two = polygon(b, CORNERS);
        gb_plan_size p = sizes(&one, 0.05, 0.02), q = sizes(&two, 0.05, 0.02);
        cr_expect(fabs(p.net.m2 - q.net.m2) < 1e-9, "round %d", round);
        cr_expect(fabs(p.bedded.m2 - q.bedded.m2) < 1e-9, "round %d", round);
        cr_expect(fabs(p.perimeter.m - q.perimeter.m) < 1e-9, "round %d", round);
        cr_expect(fabs(p.blank_length.m - q.blank_length.m) < 1e-9, "round %d", round);
        cr_expect(fabs(p.blank_width.m - q.blank_width.m) < 1e-9, "round %d", round);
    }
}

/* A polygon is the sum of the triangles from its middle to its sides; each of them by
   Heron's formula. */
Test(shapes, a_polygon_is_the_sum_of_its_triangles) {
    srand(2);
    for (int round = 0; round < ROUNDS; round++) {
        gb_point p[CORNERS];
        double sum = 0;
        star(p, CORNERS);
        for (size_t i = 0; i < CORNERS; i++) {
            gb_point a = p[i], b = p[(i + 1) % CORNERS];
            const double sides[] = {hypot(a.x, a.y), hypot(b.x - a.x, b.y - a.y),
                                    hypot(b.x, b.y)};
            gb_shape s = {.kind = GB_TRIANGLE, .sides_m = sides, .side_count = 3};
            sum += sizes(&s, 0, 0).net.m2;
        }
        gb_shape s = polygon(p, CORNERS);
        cr_expect(fabs(sizes(&s, 0, 0).net.m2 - sum) < 1e-9, "round %d", round);
    }
}

Test(shapes, net_is_never_over_blank_nor_bedded_over_net) {
    srand(3);
    for (int round = 0; round < ROUNDS; round++) {
        gb_point p[CORNERS];
        star(p, CORNERS);
        gb_shape s = polygon(p, CORNERS);
        gb_plan_size before = sizes(&s, 0, 0);
        for (double over = 0; over < 0.2; over += 0.02) {
            gb_plan_size q = sizes(&s, over, over / 2);
            cr_expect(q.net.m2 <= q.blank_length.m * q.blank_width.m, "round %d", round);
            cr_expect(q.bedded.m2 <= before.bedded.m2 + 1e-12, "round %d", round);
            cr_expect(q.bedded.m2 <= q.net.m2 + 1e-12, "round %d", round);
            before = q;
        }
    }
}

/* ---- sizes that are none ----------------------------------------------------------- */

Test(shapes, what_cannot_be) {
    static const double FLAT[] = {1, 2, 3}, OPEN[] = {1, 1, 3};
    const gb_shape rows[] = {
        {.kind = GB_RECTANGLE, .front = {0}, .width = {1}},
        {.kind = GB_RECTANGLE, .front = {NAN}, .width = {1}},
        {.kind = GB_RECTANGLE, .front = {1}, .width = {INFINITY}},
        {.kind = GB_TRAPEZOID, .front = {1}, .back = {-1}, .width = {1}},
        {.kind = GB_TRIANGLE, .sides_m = FLAT, .side_count = 3},
        {.kind = GB_TRIANGLE, .sides_m = OPEN, .side_count = 3},
        {.kind = GB_TRIANGLE, .sides_m = OPEN, .side_count = 2},
        {.kind = GB_CIRCLE, .diameter = {-2}},
        {.kind = GB_CURVED, .width = {0.3}},
        {.kind = GB_WINDER, .narrow = {0.2}, .wide = {0.7}, .width = {0}},
        {.kind = GB_POLYGON},
    };
    gb_plan_size size;
    for (size_t i = 0; i < ROWS_OF(rows); i++)
        cr_expect(gb_measure_shape(&rows[i], (gb_length){0}, (gb_length){0}, &size) ==
                      GB_NOT_POSITIVE,
                  "row %zu", i);
    gb_shape s = {.kind = GB_RECTANGLE, .front = {1}, .width = {0.3}};
    static const double OVERHANGS[][2] = {
        {0.3, 0}, {0, 0.5}, {-0.1, 0}, {NAN, 0}, {9, 9}};
    for (size_t i = 0; i < ROWS_OF(OVERHANGS); i++)
        cr_expect(gb_measure_shape(&s, (gb_length){OVERHANGS[i][0]},
                                   (gb_length){OVERHANGS[i][1]},
                                   &size) == GB_NOT_POSITIVE,
                  "overhang %zu", i);
    gb_shape round = {.kind = GB_CURVED, .width = {1.2}};
    cr_assert(gb_arc_of_radius((gb_length){1}, (gb_length){1}, &round.arc) == GB_OK);
    cr_expect(gb_measure_shape(&round, (gb_length){0}, (gb_length){0}, &size) ==
              GB_NOT_POSITIVE);
}
