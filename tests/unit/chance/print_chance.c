/* Prints what chance.c says of a grid, for r_quantiles.sh, one call of R in each line:
   pnorm z 0 value | pt t df value | qnorm share 0 value | qt share df value. */
#include "gaugebox/chance.h"

#include <stdio.h>

static const size_t DF[] = {1,   2,   3,   4,   5,   6,    7,    8,    9,     10,    12,
                            15,  20,  25,  29,  30,  40,   50,   60,   80,    99,    100,
                            120, 200, 365, 500, 999, 1000, 1001, 2000, 10000, 100000};
enum { DFS = sizeof DF / sizeof DF[0] };

/* The common shares, and some that few people ask for. */
static const double SHARE[] = {1e-12, 1e-9,  1e-6, 1e-4,  0.001, 0.0025, 0.005, 0.01,
                               0.02,  0.025, 0.05, 0.1,   0.15,  0.2,    0.25,  0.3,
                               0.4,   0.45,  0.5,  0.55,  0.6,   0.7,    0.75,  0.8,
                               0.85,  0.9,   0.95, 0.975, 0.98,  0.99,   0.995, 0.999};
enum { SHARES = sizeof SHARE / sizeof SHARE[0] };

int main(void) {
    for (int i = -320; i <= 320; i++)
        printf("pnorm %.17g 0 %.17g\n", i / 40.0, gb_normal_below(i / 40.0));
    for (size_t i = 0; i < SHARES; i++)
        printf("qnorm %.17g 0 %.17g\n", SHARE[i], gb_normal_at(SHARE[i]));
    for (size_t d = 0; d < DFS; d++) {
        for (int i = -80; i <= 80; i++)
            printf("pt %.17g %zu %.17g\n", i / 10.0, DF[d], gb_t_below(i / 10.0, DF[d]));
        for (size_t i = 0; i < SHARES; i++)
            printf("qt %.17g %zu %.17g\n", SHARE[i], DF[d], gb_t_at(SHARE[i], DF[d]));
    }
    return 0;
}
