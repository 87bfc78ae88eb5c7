#include "published/published.h"

#include <criterion/criterion.h>

/* Rubble masonry of 100 yd3 with 1/3 yd3 of mortar 1:3 a yd3: 2 bbl of cement and 0.9 yd3
   of sand a yd3 of mortar, 67 bbl and 30 yd3. A barrel is 4 sacks. */

#define POCKETBOOK "Building Trades Pocketbook"

static const pub_figure MORTAR = {"rubble mortar yd3", POCKETBOOK, PUB_READ,
                                  .printed = 33.3, .tolerance = 0.05};
static const pub_figure CEMENT = {"rubble cement bbl",
                                  POCKETBOOK,
                                  PUB_READ,
                                  .printed = 67,
                                  .tolerance = 0.5,
                                  .known_difference =
                                      "2 bbl a yd3 is 8 sacks; rule 38 of the Navy "
                                      "prints 9.5 and we compute 9.43, 78.5 bbl"};
static const pub_figure SAND = {"rubble sand yd3",
                                POCKETBOOK,
                                PUB_READ,
                                .printed = 30,
                                .tolerance = 0.5,
                                .known_difference =
                                    "0.9 yd3 a yd3 of mortar; rule 38 prints 28.5 ft3 = "
                                    "1.06, and we compute 1.05, 35 yd3"};

Test(published_building_trades_pocketbook, rubble_masonry) {
    pub_table table;
    pub_open(&table);
    pub_mortar m;
    pub_ratio ratio = {1, 0, 3, 0, 0};
    pub_make_mortar(&table, &ratio, &m);
    pub_job job;
    gb_volume mortar = {pub_si(GB_VOLUME, "yd3", 100.0 / 3.0)};
    pub_volume_job(&job, &m.mix, mortar);
    pub_plan(&table, &job);
    const gb_mix_plan *p = &job.plan.mixes[0];
    double gross = p->need.gross.m3;
    pub_check(&MORTAR, pub_in(GB_VOLUME, "yd3", gross));
    double sacks = gross / p->recipe.yield.m3;
    pub_check(&CEMENT, sacks / 4);
    pub_check(&SAND, pub_in(GB_VOLUME, "yd3", gross * pub_m3_per_m3(&m, m.sand)));
    pub_close(&table);
}
