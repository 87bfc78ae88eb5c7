#include "runs.h"

#include <criterion/criterion.h>
#include <math.h>

static const double INCH = 0.0254;

const gb_length FX_TAPE = {0.0254 / 8};

gb_steps fx_run(double rise_m, double going_m) {
    return (gb_steps){.rise = {rise_m},
                      .going = {going_m},
                      .landing = {NAN},
                      .length = {NAN},
                      .face = {NAN},
                      .width = {NAN},
                      .slab = {NAN},
                      .bed = {NAN},
                      .least_bed = {INCH / 2},
                      .most_bed = {2 * INCH},
                      .course = {NAN},
                      .stone = {NAN},
                      .least_riser = {4 * INCH},
                      .most_riser = {8 * INCH},
                      .band_least = {22 * INCH},
                      .band_most = {30 * INCH},
                      .laser = {NAN}};
}

gb_steps fx_solid(double rise_m, double going_m, double stone_m) {
    gb_steps s = fx_run(rise_m, going_m);
    s.build = GB_SOLID_STEPS;
    s.stone.m = stone_m;
    s.overlap.m = 2 * INCH;
    return s;
}

gb_layout fx_lay(const gb_steps *steps, size_t count, bool evened) {
    gb_layout l = {0};
    cr_assert(gb_lay_steps(steps, count, evened, FX_TAPE, &l) == GB_OK,
              "%zu risers for %g m", count, steps->rise.m);
    return l;
}
