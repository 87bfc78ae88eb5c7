#include "published/published.h"

#include <criterion/criterion.h>

/* A small building's concrete, as the manual takes it off, in feet: (length x width x
   thickness) x count. */

#define EA "NAVEDTRA 14070, building takeoff"

typedef struct take_row {
    double length, width, thickness;
    size_t count;
    pub_figure ft3;
} take_row;

static const take_row TAKES[] = {
    {32.00,
     0.67,
     2,
     2,
     {"long walls ft3", EA, PUB_READ, .printed = 85.76, .tolerance = 0.005}},
    {18.67,
     0.67,
     2,
     2,
     {"short walls ft3", EA, PUB_READ, .printed = 50.04, .tolerance = 0.005}},
    /* The manual prints 133.032, a slip: 33.33 x 2 x 1 x 2 = 133.32, and its own sum
       527.40 holds 133.32. */
    {33.33,
     2,
     1,
     2,
     {"long footings ft3", EA, PUB_READ, .printed = 133.32, .tolerance = 0.005}},
    {17.33,
     2,
     1,
     2,
     {"short footings ft3", EA, PUB_READ, .printed = 69.32, .tolerance = 0.005}},
    {18.67,
     30.67,
     0.33,
     1,
     {"slab ft3", EA, PUB_READ, .printed = 188.96, .tolerance = 0.005}},
};
enum { TAKE_COUNT = sizeof TAKES / sizeof TAKES[0] };

static const pub_figure FOOTING_AS_PRINTED = {
    "long footings ft3 as misprinted",
    EA,
    PUB_READ,
    .printed = 133.032,
    .tolerance = 0.0005,
    .known_difference = "33.33 x 2 x 1 x 2 = 133.32, which the manual's sum holds"};
static const pub_figure SUM = {"building ft3", EA, PUB_READ, .printed = 527.40,
                               .tolerance = 0.005};
static const pub_figure GROSS = {"building with 10 % ft3", EA, PUB_READ,
                                 .printed = 580.14, .tolerance = 0.005};
static const pub_figure ORDER = {
    "building to order, whole yd3",
    EA,
    PUB_READ,
    .printed = 21,
    .tolerance = 0.5,
    .known_difference =
        "580.14 ft3 is 21.49 yd3; the manual cuts it to 21, an order counts it up to 22"};

static double taken_m3(const take_row *row) {
    double foot = pub_si(GB_LENGTH, "ft", 1);
    pub_laid laid = {GB_SLAB, row->length * foot, row->width * foot,
                     row->thickness * foot, row->count};
    return pub_take(&laid).net.m3;
}

Test(published_navy_ea, building) {
    double sum = 0;
    for (size_t i = 0; i < TAKE_COUNT; i++) {
        double m3 = taken_m3(&TAKES[i]);
        pub_check(&TAKES[i].ft3, pub_in(GB_VOLUME, "ft3", m3));
        sum += m3;
    }
    pub_check(&FOOTING_AS_PRINTED, pub_in(GB_VOLUME, "ft3", taken_m3(&TAKES[2])));
    pub_check(&SUM, pub_in(GB_VOLUME, "ft3", sum));
    pub_table table;
    pub_open(&table);
    pub_job job;
    pub_volume_job(&job, pub_mix(&table, "bagged/concrete-80lb"), (gb_volume){sum});
    pub_add_waste(&job, 0.10);
    job.job.crew.mixer.usable.m3 = 1e6;
    pub_plan(&table, &job);
    double gross = job.plan.mixes[0].need.gross.m3;
    pub_check(&GROSS, pub_in(GB_VOLUME, "ft3", gross));
    size_t yards = 0;
    cr_assert(gb_count_up(gross, pub_si(GB_VOLUME, "yd3", 1), &yards) == GB_OK, "yards");
    pub_check(&ORDER, (double)yards);
    pub_close(&table);
}

#define SLIDES "lecture slides, slab volume"
#define CIP_8  "NRMCA CIP 8"

static const pub_figure SLAB_FT3 = {"30 x 60 ft slab at 4 in ft3", SLIDES, PUB_READ,
                                    .printed = 600, .tolerance = 0.5};
static const pub_figure SLAB_YD3 = {"30 x 60 ft slab at 4 in yd3", SLIDES, PUB_READ,
                                    .printed = 22.2, .tolerance = 0.05};
static const pub_figure EIGHTH = {"1/8 in on a slab of 4 in, %", CIP_8, PUB_READ,
                                  .printed = 3, .tolerance = 0.5};
static const pub_figure ONE_IN = {"1/8 in on a slab of 4 in, one yd3 in", CIP_8, PUB_READ,
                                  .printed = 32, .tolerance = 0.5};

Test(published_navy_ea, slab) {
    const take_row slab = {30, 60, 4.0 / 12, 1, {.id = NULL}};
    const take_row thicker = {30, 60, 4.125 / 12, 1, {.id = NULL}};
    double m3 = taken_m3(&slab);
    double more = taken_m3(&thicker) / m3 - 1;
    pub_check(&SLAB_FT3, pub_in(GB_VOLUME, "ft3", m3));
    pub_check(&SLAB_YD3, pub_in(GB_VOLUME, "yd3", m3));
    pub_check(&EIGHTH, 100 * more);
    pub_check(&ONE_IN, 1 / more);
}
