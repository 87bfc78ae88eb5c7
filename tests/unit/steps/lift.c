/* What a machine may lift, and which way it moves. */
#include "gaugebox/lift.h"

#include "unit/plan/fixture.h"

#include <criterion/criterion.h>

enum { LIFTS = 5000 };

static gb_lift random_lift(fx_random *r) {
    return (gb_lift){.capacity = {fx_between(r, 200, 5000)},
                     .attachment = {fx_between(r, 0, 400)},
                     .rated = {fx_whole(r, 0, 1) == 0 ? NAN : fx_between(r, 200, 3000)},
                     .margin = fx_between(r, 1, 3),
                     .wet = {fx_between(r, 0, 0.5)},
                     .rough = {fx_between(r, 0, 0.5)},
                     .tilted = {fx_between(r, 0, 0.5)}};
}

Test(lift, never_more_for_more_taken_off) {
    fx_random r = fx_seeded(31);
    for (size_t k = 0; k < LIFTS; k++) {
        gb_lift a = random_lift(&r);
        gb_lift worse[] = {a, a, a, a, a, a};
        worse[0].attachment.kg += 10;
        worse[1].margin += 0.1;
        worse[2].wet.of_one += 0.1;
        worse[3].rough.of_one += 0.1;
        worse[4].tilted.of_one += 0.1;
        worse[5].capacity.kg -= 10;
        double allowed = gb_lift_allowed(&a).kg;
        for (size_t i = 0; i < ROWS_OF(worse) && allowed > 0; i++)
            cr_assert(gb_lift_allowed(&worse[i]).kg <= allowed, "lift %zu, %zu", k, i);
    }
}

Test(lift, nothing_taken_off) {
    gb_lift a = {.capacity = {1000}, .rated = {NAN}, .margin = 1};
    cr_expect(fx_same(gb_lift_allowed(&a).kg, 1000));
    cr_expect(fx_same(gb_lift_left(&a).of_one, 1));
    a.rated.kg = 800;
    cr_expect(fx_same(gb_lift_allowed(&a).kg, 800), "the gear is the weaker one");
    a.rated.kg = 1200;
    cr_expect(fx_same(gb_lift_allowed(&a).kg, 1000), "the machine is");
    a.attachment.kg = 1000;
    cr_expect(gb_lift_allowed(&a).kg <= 0, "nothing is left");
}

/* Shares multiply: which is which does not matter, and each alone takes its own off. */
Test(lift, shares_taken_off) {
    gb_lift a = {.capacity = {1000},
                 .rated = {NAN},
                 .margin = 1.25,
                 .wet = {0.1},
                 .rough = {0.2},
                 .tilted = {0.25}};
    gb_lift b = a;
    b.wet = a.tilted;
    b.tilted = a.wet;
    cr_expect(fx_same(gb_lift_left(&a).of_one, 0.9 * 0.8 * 0.75));
    cr_expect(fx_same(gb_lift_allowed(&a).kg, gb_lift_allowed(&b).kg));
    cr_expect(fx_same(gb_lift_allowed(&a).kg, 1000 * 0.9 * 0.8 * 0.75 / 1.25));
}

/* Twice the machine with twice the gear lifts twice as much. */
Test(lift, twice_the_machine) {
    fx_random r = fx_seeded(32);
    for (size_t k = 0; k < LIFTS; k++) {
        gb_lift a = random_lift(&r);
        gb_lift b = a;
        b.capacity.kg *= 2;
        b.attachment.kg *= 2;
        b.rated.kg *= 2;
        cr_assert(fx_near(gb_lift_allowed(&b).kg, 2 * gb_lift_allowed(&a).kg, 1e-9));
    }
}
