/* Stone of a piece: what is ordered and what it weighs. */
#include <criterion/criterion.h>
#include <math.h>

#include "gaugebox/stone.h"

static const gb_stone STONE = {.name = "stone", .typical = {2500}, .most = {2800}};

static gb_piece_stone plain(double thickness) {
    return (gb_piece_stone){.stone = &STONE, .thickness = {thickness}};
}

static gb_stone_size size_of(const gb_shape *shape, size_t count,
                             const gb_piece_stone *stone) {
    gb_stone_size size;
    cr_assert(gb_measure_stone(shape, count, stone, &size) == GB_OK);
    return size;
}

static bool near(double got, double want) {
    return fabs(got - want) <= 1e-12 * fmax(1, fabs(want));
}

/* 1.5 x 0.35 m, 0.05 thick, a margin of 0.01 all round: blank 1.52 x 0.37 = 0.5624 m2. */
Test(stones, a_rectangle) {
    gb_shape shape = {.kind = GB_RECTANGLE, .front = {1.5}, .width = {0.35}};
    gb_piece_stone stone = plain(0.05);
    stone.margin.m = 0.01;
    stone.spare = 2;
    stone.breakage.of_one = 0.1;
    gb_stone_size s = size_of(&shape, 11, &stone);
    cr_expect(near(s.net.m2, 0.525) && near(s.blank.m2, 0.5624));
    cr_expect(near(s.cut_away.of_one, 1 - 0.525 / 0.5624));
    cr_expect(s.broken == 2 && s.ordered == 15, "1.1 stones are two");
    cr_expect(near(s.typical.kg, 0.525 * 0.05 * 2500));
    cr_expect(near(s.most.kg, 0.525 * 0.05 * 2800));
    cr_expect(near(s.freight.kg, 15 * 0.5624 * 0.05 * 2500));
}

/* Breakage of a whole number of stones is that number, whatever a double makes of it. */
Test(stones, breakage_counts_up) {
    gb_shape shape = {.kind = GB_RECTANGLE, .front = {1}, .width = {1}};
    for (size_t count = 1; count <= 200; count++) {
        gb_piece_stone stone = plain(0.05);
        stone.breakage.of_one = 0.05;
        double want = (double)((count * 5 + 99) / 100);
        cr_expect(size_of(&shape, count, &stone).broken == want, "%zu", count);
    }
}

/* Laws: weight goes with each side; net is never over blank; what is ordered is the sum.
 */
Test(stones, laws) {
    for (double front = 0.4; front < 3; front *= 1.3)
        for (double width = 0.2; width < 1; width *= 1.4) {
            gb_shape one = {.kind = GB_TRAPEZOID,
                            .front = {front},
                            .back = {front * 0.7},
                            .width = {width}};
            gb_shape twice = one;
            gb_piece_stone thin = plain(0.05), thick = plain(0.1);
            twice.width.m *= 2;
            gb_stone_size a = size_of(&one, 3, &thin), b = size_of(&one, 3, &thick),
                          c = size_of(&twice, 3, &thin);
            cr_expect(near(b.typical.kg, 2 * a.typical.kg) &&
                      near(b.freight.kg, 2 * a.freight.kg));
            cr_expect(near(c.most.kg, 2 * a.most.kg));
            cr_expect(a.net.m2 <= a.blank.m2 && a.cut_away.of_one >= 0);
            cr_expect(a.typical.kg <= a.most.kg && a.ordered == 3);
        }
}

Test(stones, what_cannot_be) {
    static const double BAD[] = {0, -1, NAN, INFINITY};
    gb_shape shape = {.kind = GB_RECTANGLE, .front = {1}, .width = {1}};
    gb_stone_size size;
    gb_piece_stone stone = plain(0.05);
    for (int i = 0; i < 4; i++) {
        gb_piece_stone bad = plain(BAD[i]);
        gb_stone light = STONE;
        gb_shape none = shape;
        cr_expect(gb_measure_stone(&shape, 1, &bad, &size) == GB_NOT_POSITIVE, "%d", i);
        light.typical.kg_m3 = BAD[i];
        bad = plain(0.05);
        bad.stone = &light;
        cr_expect(gb_measure_stone(&shape, 1, &bad, &size) == GB_NOT_POSITIVE, "%d", i);
        none.width.m = BAD[i];
        cr_expect(gb_measure_stone(&none, 1, &stone, &size) == GB_NOT_POSITIVE, "%d", i);
    }
    stone.margin.m = -0.01;
    cr_expect(gb_measure_stone(&shape, 1, &stone, &size) == GB_NOT_POSITIVE);
    stone = plain(0.05);
    stone.stone = NULL;
    cr_expect(gb_measure_stone(&shape, 1, &stone, &size) == GB_NOT_POSITIVE);
}

Test(stones, two_lift_twice_the_load_constant) {
    cr_expect(near(gb_two_lift().kg, 102 * 0.45359237));
}
