/* Prints what air.c says of a grid of temperatures and humidities, for psychrolib.sh:
   S c pa | D c humidity dew | H c dew humidity. */
#include "gaugebox/air.h"

#include <stdio.h>

int main(void) {
    for (double c = -60; c <= 120; c += 2.5)
        printf("S %.2f %.12g\n", c, gb_saturation_pa((gb_temp){c}));
    for (double c = -20; c <= 50; c += 5)
        for (double r = 0.05; r < 1.01; r += 0.05) {
            gb_temp dew = gb_dew_point((gb_temp){c}, (gb_share){r});
            printf("D %.2f %.2f %.12g\n", c, r, dew.c);
        }
    for (double c = -20; c <= 50; c += 5)
        for (double below = 0; below <= 30; below += 2.5) {
            gb_temp dew = {c - below};
            printf("H %.2f %.2f %.12g\n", c, dew.c,
                   gb_humidity_of((gb_temp){c}, dew).of_one);
        }
    return 0;
}
