#include "published/published.h"

#include <criterion/criterion.h>

/* A floor bed is 1 portland cement : 5 dry sand or 6 damp sand: the same bed, so damp
   sand is 6 / 5 = 1.2 volumes of dry. One per cent, because the volumes are whole
   numbers. */

#define A108 "ANSI A108.1A, floor bed"

static const pub_figure DAMP = {"1 : 5 dry, gauged damp, parts of sand", A108,
                                PUB_FROM_MEMORY, .printed = 6, .percent = 1};
static const pub_figure RATIO = {"damp over dry volume", A108, PUB_FROM_MEMORY,
                                 .printed = 1.2, .percent = 1};

static double sand_parts(const gb_mix *mix, gb_lying lying) {
    gb_recipe r = pub_recipe(mix);
    double cement = r.part[0].kg / mix->parts[0].material->bulk.kg_m3;
    const gb_material *sand = mix->parts[1].material;
    cr_assert(sand->kind == GB_SAND, "the second part is the sand");
    return gb_loose_volume(sand, r.part[1], lying).m3 / cement;
}

Test(published_ansi_a108, dry_and_damp_sand) {
    pub_table table;
    pub_open(&table);
    const gb_mix *dry = pub_mix(&table, "thick-bed/floor-1-5-dry");
    pub_check(&DAMP, sand_parts(dry, gb_state_lying(GB_DAMP)));
    double bone = sand_parts(dry, gb_usual_lying((gb_share){0}));
    cr_expect(bone > 5 - 1e-9 && bone < 5 + 1e-9, "dry as the mix has it: %g", bone);
    pub_check(&RATIO, sand_parts(dry, gb_state_lying(GB_DAMP)) / bone);
    pub_close(&table);
}
