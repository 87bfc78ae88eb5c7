#include "published/published.h"

#include <criterion/criterion.h>

/* Waste applied once to a net volume, in the manuals' own examples. */

typedef struct waste_row {
    pub_figure figure; /* gross, in unit */
    const char *unit;
    double net;
    double waste;
} waste_row;

static const waste_row ROWS[] = {
    {{"brick wall 8 x 14 ft, mortar with 20 % waste ft3", "NAVEDTRA 14045 p.159",
      PUB_READ, .printed = 10.68, .tolerance = 0.005},
     "ft3",
     8.90,
     0.20},
    {{"retaining wall, concrete with 10 % waste yd3", "NAVEDTRA 14071 p.412", PUB_READ,
      .printed = 70.07, .tolerance = 0.005},
     "yd3",
     63.7,
     0.10},
};

Test(published_us_navy_builder, waste) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        const waste_row *row = &ROWS[i];
        pub_job job;
        gb_volume net = {pub_si(GB_VOLUME, row->unit, row->net)};
        pub_volume_job(&job, pub_mix(&table, "mortar/type-n"), net);
        pub_add_waste(&job, row->waste);
        pub_plan(&table, &job);
        double gross = job.plan.mixes[0].need.gross.m3;
        pub_check(&row->figure, pub_in(GB_VOLUME, row->unit, gross));
    }
    pub_close(&table);
}
