#include "published/published.h"

#include <criterion/criterion.h>

/* Grout that fills the cells of block. */

#define MAGAZINE "Masonry Magazine, September 2015"
#define HANDBOOK "Amrhein, Reinforced Masonry Engineering Handbook"

static double yd3(const gb_cores *cores) {
    gb_layer layer = {.kind = GB_CORE, .cores = *cores};
    gb_piece piece = {.name = "wall", .count = 1, .layers = &layer, .layer_count = 1};
    gb_take take = {0};
    layer.cores.at.line = 1;
    cr_assert(gb_take_off(&piece, &layer, &take) == GB_OK, "the cores are taken off");
    return pub_in(GB_VOLUME, "yd3", take.net.m3);
}

static gb_cores cores_of(double width_in, size_t blocks) {
    return (gb_cores){
        .blocks = blocks, .every = 1, .width = {pub_si(GB_LENGTH, "in", width_in)}};
}

static const struct {
    double width;
    pub_figure in_100_block, in_100_ft2; /* yd3; 112.5 block to 100 ft2 */
} ROWS[] = {
    {6,
     {"6 in block, 100, yd3", HANDBOOK, PUB_FROM_MEMORY, .printed = 0.83,
      .tolerance = 0.005},
     {"6 in block, 100 ft2, yd3", HANDBOOK, PUB_FROM_MEMORY, .printed = 0.93,
      .tolerance = 0.006}},
    {8,
     {"8 in block, 100, yd3", MAGAZINE, PUB_SECOND_HAND, .printed = 1.00,
      .tolerance = 0.005},
     {"8 in block, 100 ft2, yd3", HANDBOOK, PUB_FROM_MEMORY, .printed = 1.12,
      .tolerance = 0.006}},
    {12,
     {"12 in block, 100, yd3", HANDBOOK, PUB_FROM_MEMORY, .printed = 1.54,
      .tolerance = 0.005},
     {"12 in block, 100 ft2, yd3", HANDBOOK, PUB_FROM_MEMORY, .printed = 1.73,
      .tolerance = 0.006}},
};

Test(published_astm_c476, cores_by_width) {
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        gb_cores hundred = cores_of(ROWS[i].width, 100);
        double got = yd3(&hundred);
        pub_check(&ROWS[i].in_100_block, got);
        pub_check(&ROWS[i].in_100_ft2, 1.125 * got);
    }
}

static const pub_range EACH = {"8 in block, one, ft3",
                               "supply yard's rule to 120 blocks of 190 mm in a m3",
                               PUB_SECOND_HAND, .low = 0.251, .high = 0.294};
static const pub_figure ROUND = {"8 in block, one, ft3", MAGAZINE, PUB_SECOND_HAND,
                                 .printed = 0.27, .tolerance = 0.005};

Test(published_astm_c476, one_block_is_in_the_published_range) {
    gb_cores one = cores_of(8, 1);
    double ft3 = 27 * yd3(&one);
    double spread = ft3 * gb_core_spread().of_one;
    pub_check_range(&EACH, ft3);
    pub_check(&ROUND, ft3);
    pub_check_range(&EACH, ft3 + spread);
    pub_check_range(&EACH, ft3 - spread);
}
