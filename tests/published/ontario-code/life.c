#include "published/published.h"

#include <criterion/criterion.h>

/* Ontario: mortar is used within 1.5 h where the air is 25 C or warmer, 2.5 h below. */

#define OBC "Ontario Building Code, Division B 9.20.3.2.(5)"

static const struct row {
    double c;
    pub_figure hours;
} ROWS[] = {
    {20, {"Ontario life at 20 C h", OBC, PUB_READ, .printed = 2.5, .tolerance = 0.05}},
    {24.9,
     {"Ontario life at 24.9 C h", OBC, PUB_READ, .printed = 2.5, .tolerance = 0.05}},
    {25,
     {"Ontario life at 25 C h", OBC, PUB_READ, .printed = 1.5, .tolerance = 0.05,
      .known_difference =
          "the product keeps to C270 and TMS 602: 2.5 h up to 100 F (37.8 C); it has no "
          "Canadian rule"}},
    {36,
     {"Ontario life at 36 C h", OBC, PUB_READ, .printed = 1.5, .tolerance = 0.05,
      .known_difference = "as at 25 C: 2.5 h below the American hot band"}},
    {40,
     {"Ontario life at 40 C h", OBC, PUB_READ, .printed = 1.5, .tolerance = 0.05,
      .known_difference = "the American hot band gives 2 h, half an hour more"}},
};

Test(published_ontario_code, working_life) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        pub_job job;
        pub_volume_job(&job, pub_mix(&table, "mortar/type-n"), (gb_volume){0.1});
        job.job.weather.air.c = pub_si(GB_TEMP, "C", ROWS[i].c);
        pub_plan(&table, &job);
        pub_check(&ROWS[i].hours, pub_in(GB_DURATION, "h", job.plan.mixes[0].life.s));
    }
    pub_close(&table);
}
