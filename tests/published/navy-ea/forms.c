#include "published/published.h"

#include <criterion/criterion.h>

/* Concrete that is no prism, by arithmetic written out beside each row. */

static double feet(double ft) {
    return pub_si(GB_LENGTH, "ft", ft);
}

static double inches(double in) {
    return pub_si(GB_LENGTH, "in", in);
}

static void check_form(const pub_figure *f, const gb_form *form) {
    pub_check(f, pub_in(GB_VOLUME, "ft3", gb_form_volume(form).m3));
}

#define WORKED "worked by hand, geometry"

/* 4 ft wide, rise 7 in, going 11 in, top 36 in: 4 (77/144 (1 + 2) + 3 x 21/12) ft3; a
   slab of 4 in below it is 4 x 1/3 x (22/12 + 3) ft3 more. */
static const pub_figure STAIR = {"solid steps of three risers ft3", WORKED, PUB_DERIVED,
                                 .printed = 27.417, .tolerance = 0.0005};
static const pub_figure SLAB = {"a slab of 4 in below it ft3", WORKED, PUB_DERIVED,
                                .printed = 6.4444, .tolerance = 0.00005};
/* 12 in round, 4 ft high: pi / 4 x 4; 12 in square: 4. */
static const pub_figure ROUND = {"round pier ft3", WORKED, PUB_DERIVED, .printed = 3.1416,
                                 .tolerance = 0.00005};
static const pub_figure SQUARE = {"square pier ft3", WORKED, PUB_DERIVED, .printed = 4,
                                  .tolerance = 0.00005};
/* 4 ft x 8 in and 3 ft x 16 in, 20 in wide: (4 x 2/3 + 3 x 4/3) x 5/3 */
static const pub_figure STEPPED = {"stepped footing ft3", WORKED, PUB_DERIVED,
                                   .printed = 11.1111, .tolerance = 0.00005};

Test(published_navy_ea, forms) {
    gb_form stair = {.kind = GB_STAIR,
                     .risers = 3,
                     .rise = {inches(7)},
                     .going = {inches(11)},
                     .top = {feet(3)},
                     .width = {feet(4)}};
    check_form(&STAIR, &stair);
    double solid = gb_form_volume(&stair).m3;
    stair.slab.m = inches(4);
    pub_check(&SLAB, pub_in(GB_VOLUME, "ft3", gb_form_volume(&stair).m3 - solid));
    gb_form pier = {.kind = GB_PIER, .diameter = {feet(1)}, .height = {feet(4)}};
    check_form(&ROUND, &pier);
    pier.diameter.m = GB_NONE;
    pier.side.m = feet(1);
    check_form(&SQUARE, &pier);
    const double lengths[] = {feet(4), feet(3)};
    const double depths[] = {inches(8), inches(16)};
    gb_form stepped = {.kind = GB_STEPPED,
                       .lengths_m = lengths,
                       .length_count = 2,
                       .depths_m = depths,
                       .depth_count = 2,
                       .width = {inches(20)}};
    check_form(&STEPPED, &stepped);
}
