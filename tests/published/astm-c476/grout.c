#include "published/published.h"

#include <criterion/criterion.h>

/* Fine grout: proportion, time limit and mixing time of the shipped entry. */

#define C476 "ASTM C476"

static const pub_range SAND = {"fine grout sand by cementitious", C476 " table 1",
                               PUB_FROM_MEMORY, .low = 2.25, .high = 3};
static const pub_figure SINGLE = {"fine grout 1 : 3", "Masonry Magazine, February 1994",
                                  PUB_READ, .printed = 3, .tolerance = 1e-9};
static const pub_figure LIFE = {"fine grout placed within h", C476 "; TMS 602 art. 3.5",
                                PUB_FROM_MEMORY, .printed = 1.5, .tolerance = 0.005};
static const pub_range MIXING = {"fine grout mixed at least min",
                                 "Taly, Design of Reinforced Masonry, p.3.8 (C476-02)",
                                 PUB_READ, .low = 5, .high = 1e9};

Test(published_astm_c476, fine_grout) {
    pub_table table;
    pub_open(&table);
    const gb_mix *mix = pub_mix(&table, "grout/fine");
    cr_assert(mix->part_count == 2, "fine grout has cement and sand");
    double sand = mix->parts[1].volume / mix->parts[0].volume;
    pub_check_range(&SAND, sand);
    pub_check(&SINGLE, sand);
    pub_check(&LIFE, pub_in(GB_DURATION, "h", mix->life.s));
    pub_check_range(&MIXING, pub_in(GB_DURATION, "min", mix->mixing.s));
    pub_close(&table);
}
