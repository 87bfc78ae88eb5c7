/* What outlines have wrong, and where. */
#include <criterion/criterion.h>
#include <stdlib.h>

#include "gaugebox/shape.h"

#define ROWS_OF(t) (sizeof(t) / sizeof((t)[0]))

static const struct {
    const char *id;
    gb_point points[8];
    size_t count;
    gb_outline_fault fault;
    size_t at;
} ROWS[] = {
    {"triangle", {{0, 0}, {1, 0}, {0, 1}}, 3, GB_OUTLINE_GOOD, 0},
    {"square backwards", {{0, 0}, {0, 1}, {1, 1}, {1, 0}}, 4, GB_OUTLINE_GOOD, 0},
    {"an L", {{0, 0}, {2, 0}, {2, 1}, {1, 1}, {1, 2}, {0, 2}}, 6, GB_OUTLINE_GOOD, 0},
    {"a corner on a side", {{0, 0}, {1, 0}, {2, 0}, {2, 2}}, 4, GB_OUTLINE_GOOD, 0},
    {"two corners", {{0, 0}, {1, 0}}, 2, GB_OUTLINE_SHORT, 0},
    {"none", {{0, 0}}, 0, GB_OUTLINE_SHORT, 0},
    {"twice", {{0, 0}, {1, 0}, {1, 0}, {0, 1}}, 4, GB_OUTLINE_TWICE, 1},
    {"closed by hand", {{0, 0}, {1, 0}, {0, 1}, {0, 0}}, 4, GB_OUTLINE_TWICE, 3},
    {"bow tie", {{0, 0}, {2, 2}, {2, 0}, {0, 2}}, 4, GB_OUTLINE_CROSSES, 0},
    {"touches itself",
     {{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}},
     5,
     GB_OUTLINE_CROSSES,
     0},
    {"a spike", {{0, 0}, {2, 0}, {1, 0}, {1, 2}}, 4, GB_OUTLINE_CROSSES, 0},
    {"a line", {{0, 0}, {1, 0}, {2, 0}}, 3, GB_OUTLINE_CROSSES, 1},
    {"late crossing",
     {{0, 0}, {4, 0}, {4, 3}, {1, 1}, {1, 3}, {3, 1}},
     6,
     GB_OUTLINE_CROSSES,
     2},
};

Test(outlines, faults) {
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        gb_shape s = {.kind = GB_POLYGON, .outline = {ROWS[i].points, ROWS[i].count}};
        size_t which = 9, at = 9;
        gb_outline_fault fault = gb_check_outlines(&s, &which, &at);
        cr_expect(fault == ROWS[i].fault, "%s: %d", ROWS[i].id, fault);
        if (fault != GB_OUTLINE_GOOD)
            cr_expect(which == 0 && at == ROWS[i].at, "%s: at %zu", ROWS[i].id, at);
    }
}

static const gb_point SQUARE[] = {{0, 0}, {4, 0}, {4, 4}, {0, 4}};

static const struct {
    const char *id;
    gb_point one[4], two[4];
    gb_outline_fault fault;
    size_t which;
} HOLES[] = {
    {"two good ones",
     {{1, 1}, {2, 1}, {2, 2}, {1, 2}},
     {{3, 1}, {3, 2}, {3.5, 2}, {3.5, 1}},
     GB_OUTLINE_GOOD,
     0},
    {"outside",
     {{1, 1}, {2, 1}, {2, 2}, {1, 2}},
     {{5, 1}, {6, 1}, {6, 2}, {5, 2}},
     GB_HOLE_OUTSIDE,
     2},
    {"over the edge",
     {{3, 1}, {5, 1}, {5, 2}, {3, 2}},
     {{1, 1}, {2, 1}, {2, 2}, {1, 2}},
     GB_HOLE_OUTSIDE,
     1},
    {"on the edge",
     {{0, 1}, {1, 1}, {1, 2}, {0, 2}},
     {{2, 1}, {3, 1}, {3, 2}, {2, 2}},
     GB_HOLE_OUTSIDE,
     1},
    {"around it",
     {{-1, -1}, {5, -1}, {5, 5}, {-1, 5}},
     {{2, 1}, {3, 1}, {3, 2}, {2, 2}},
     GB_HOLE_OUTSIDE,
     1},
    {"one in another",
     {{1, 1}, {3, 1}, {3, 3}, {1, 3}},
     {{1.5, 1.5}, {2, 1.5}, {2, 2}, {1.5, 2}},
     GB_HOLES_MEET,
     2},
    {"one around another",
     {{1.5, 1.5}, {2, 1.5}, {2, 2}, {1.5, 2}},
     {{1, 1}, {3, 1}, {3, 3}, {1, 3}},
     GB_HOLES_MEET,
     2},
    {"touching",
     {{1, 1}, {2, 1}, {2, 2}, {1, 2}},
     {{2, 1}, {3, 1}, {3, 2}, {2, 2}},
     GB_HOLES_MEET,
     2},
    {"a hole that crosses itself",
     {{1, 1}, {2, 2}, {2, 1}, {1, 2}},
     {{3, 1}, {3, 2}, {3.5, 2}, {3.5, 1}},
     GB_OUTLINE_CROSSES,
     1},
};

Test(outlines, holes) {
    for (size_t i = 0; i < ROWS_OF(HOLES); i++) {
        const gb_outline holes[] = {{HOLES[i].one, 4}, {HOLES[i].two, 4}};
        gb_shape s = {
            .kind = GB_POLYGON, .outline = {SQUARE, 4}, .holes = holes, .hole_count = 2};
        size_t which = 9, at = 9;
        gb_outline_fault fault = gb_check_outlines(&s, &which, &at);
        cr_expect(fault == HOLES[i].fault, "%s: %d", HOLES[i].id, fault);
        if (fault != GB_OUTLINE_GOOD)
            cr_expect(which == HOLES[i].which, "%s: outline %zu", HOLES[i].id, which);
    }
}
