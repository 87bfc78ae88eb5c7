#include "published/published.h"

#include "gaugebox/lift.h"

#include <criterion/criterion.h>
#include <math.h>

/* What is left of a rated capacity once the gear below the hook is taken off. Pounds. */

#define PAPERS   "BC Association for Crane Safety, practice papers on load charts"
#define PRACTICE "common practice"

static gb_lift machine(double capacity_lb, double gear_lb, double margin) {
    return (gb_lift){.capacity = {pub_si(GB_MASS, "lb", capacity_lb)},
                     .attachment = {pub_si(GB_MASS, "lb", gear_lb)},
                     .rated = {NAN},
                     .margin = margin};
}

static double allowed_lb(const gb_lift *lift) {
    return pub_in(GB_MASS, "lb", gb_lift_allowed(lift).kg);
}

static const struct {
    double capacity, gear;
    pub_figure net;
} PAPER[] = {
    {18300, /* block 380, ball 338, stowed extension 930, boom head 220 */
     380 + 338 + 930 + 220,
     {"45 ft of radius", PAPERS, PUB_READ, .printed = 16432, .tolerance = 0.01}},
    {7000,
     560,
     {"60.4 ft of radius", PAPERS, PUB_READ, .printed = 6440, .tolerance = 0.01}},
    {14450, /* block 380, ball 338, boom head 220, stowed extension 1163 */
     380 + 338 + 220 + 1163,
     {"30 ft of radius", PAPERS, PUB_READ, .printed = 12349, .tolerance = 0.01}},
};

Test(published_lifting, net_of_the_gear) {
    for (size_t i = 0; i < sizeof PAPER / sizeof PAPER[0]; i++) {
        gb_lift lift = machine(PAPER[i].capacity, PAPER[i].gear, 1);
        pub_check(&PAPER[i].net, allowed_lb(&lift));
    }
}

/* Steps of about 600 lb are set with lifters that are rated 1,400 lb: that is within them
   with a margin of a quarter, and is no more so at half the capacity, further out. */
static const pub_range STEP = {"a step of 600 lb, 1,400 lb rated", PRACTICE, PUB_PRACTICE,
                               .low = 600, .high = 1400};

Test(published_lifting, a_step_within_its_lifter) {
    gb_lift near = machine(1400, 150, 1.25);
    gb_lift far = machine(700, 150, 1.25);
    pub_check_range(&STEP, allowed_lb(&near));
    cr_expect(allowed_lb(&far) < STEP.low, "half of it: %g lb", allowed_lb(&far));
}
