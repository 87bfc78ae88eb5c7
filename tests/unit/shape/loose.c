/* Layers that no mix fills: volumes, lifts, masses, and what cannot be. */
#include <criterion/criterion.h>
#include <math.h>

#include "gaugebox/loose.h"

static const gb_material STONE = {
    .name = "stone", .kind = GB_COARSE, .bulk = {1600}, .gravity = 2.65, .pack = {NAN}};
static const gb_lying LYING = {{0.05}, {0.2}};
static const gb_shape SLAB = {.kind = GB_RECTANGLE, .front = {2}, .width = {0.5}};

static gb_loose of(gb_loose_kind kind) {
    return (gb_loose){.kind = kind,
                      .material = &STONE,
                      .area = {NAN},
                      .depth = {NAN},
                      .volume = {NAN},
                      .compaction = NAN,
                      .lift = {0.1},
                      .swell = {0.25},
                      .lap = {0.1},
                      .joint_length = {NAN},
                      .joint_width = {NAN},
                      .extra = {0.05},
                      .pack = {NAN}};
}

static gb_loose_size size_of(const gb_loose *l, size_t count) {
    gb_loose_size s;
    cr_assert(gb_measure_loose(l, &SLAB, count, LYING, &s) == GB_OK);
    return s;
}

static bool near(double got, double want) {
    return fabs(got - want) <= 1e-12 * fmax(1, fabs(want));
}

/* 2.4 x 0.9 m with 0.2 m beyond, 0.25 m deep, three of them: 1.62 m3 compacted, 1.944
   loose, 3110.4 kg; 0.25 m in lifts of 0.1 m are three. */
Test(loose, base) {
    gb_loose l = of(GB_BASE);
    l.beyond.m = 0.2;
    l.depth.m = 0.25;
    gb_loose_size s = size_of(&l, 3);
    cr_expect(near(s.area.m2, 3 * 2.4 * 0.9) && near(s.net.m3, 1.62));
    cr_expect(near(s.ordered.m3, 1.944) && near(s.mass.kg, 3110.4) && s.lifts == 3);
    l.compaction = 1;
    cr_expect(near(size_of(&l, 3).ordered.m3, 1.62));
}

Test(loose, shim_and_backfill) {
    gb_loose shim = of(GB_SHIM), fill = of(GB_BACKFILL);
    shim.depth.m = 0.03;
    fill.volume.m3 = 0.5;
    cr_expect(near(size_of(&shim, 1).ordered.m3, 0.03), "a shim is ordered as it lies");
    cr_expect(near(size_of(&fill, 2).ordered.m3, 1.2));
    cr_expect(isnan(size_of(&fill, 2).lifts));
}

Test(loose, excavation) {
    gb_loose l = of(GB_EXCAVATION);
    l.depth.m = 0.4;
    gb_loose_size s = size_of(&l, 1);
    cr_expect(near(s.net.m3, 0.4) && near(s.ordered.m3, 0.5) && isnan(s.mass.kg));
}

/* 0.1 m beyond and 0.2 m up: (2 + 0.6) x (0.5 + 0.6) = 2.86 m2, 10 % laps. */
Test(loose, geotextile) {
    gb_loose l = of(GB_GEOTEXTILE);
    l.beyond.m = 0.1;
    l.turn_up.m = 0.2;
    cr_expect(near(size_of(&l, 2).area.m2, 2 * 2.86 * 1.1));
}

/* 10 m of joint 10 x 5 mm: 0.5 L, 0.525 L with its extra, two tubes of 300 mL. */
Test(loose, rod_and_sealant) {
    gb_loose rod = of(GB_BACKER_ROD), sealant = of(GB_SEALANT);
    rod.joint_length.m = sealant.joint_length.m = 10;
    sealant.joint_width.m = 0.01;
    sealant.depth.m = 0.005;
    sealant.pack.m3 = 0.0003;
    gb_loose_size s = size_of(&sealant, 1);
    cr_expect(near(size_of(&rod, 2).length.m, 21));
    cr_expect(near(s.net.m3, 0.0005) && near(s.ordered.m3, 0.000525) && s.packs == 2);
}

/* Laws: volume goes with each side and with the count; lifts hold the depth; more
   compaction never less to order. */
Test(loose, laws) {
    for (double depth = 0.05; depth < 1; depth += 0.013) {
        gb_loose l = of(GB_BASE), twice;
        l.depth.m = depth;
        twice = l;
        twice.depth.m = 2 * depth;
        gb_loose_size a = size_of(&l, 1), b = size_of(&twice, 1), c = size_of(&l, 2);
        cr_expect(near(b.ordered.m3, 2 * a.ordered.m3) && near(c.mass.kg, 2 * a.mass.kg));
        cr_expect(a.lifts * l.lift.m >= depth - 1e-9 && (a.lifts - 1) * l.lift.m < depth);
        double before = 0;
        for (l.compaction = 1; l.compaction < 2; l.compaction += 0.1) {
            double ordered = size_of(&l, 1).ordered.m3;
            cr_expect(ordered > before && ordered >= a.net.m3);
            before = ordered;
        }
    }
}

Test(loose, what_cannot_be) {
    static const double BAD[] = {0, -1, NAN, INFINITY};
    static const gb_shape NONE = {.kind = GB_RECTANGLE, .front = {NAN}, .width = {NAN}};
    gb_loose_size s;
    for (int i = 0; i < 4; i++) {
        gb_loose base = of(GB_BASE), dug = of(GB_EXCAVATION), rod = of(GB_BACKER_ROD);
        base.depth.m = dug.depth.m = rod.joint_length.m = BAD[i];
        cr_expect(gb_measure_loose(&base, &SLAB, 1, LYING, &s) == GB_NOT_POSITIVE);
        cr_expect(gb_measure_loose(&dug, &SLAB, 1, LYING, &s) == GB_NOT_POSITIVE);
        cr_expect(gb_measure_loose(&rod, &SLAB, 1, LYING, &s) == GB_NOT_POSITIVE);
    }
    gb_loose base = of(GB_BASE);
    base.depth.m = 0.1;
    cr_expect(gb_measure_loose(&base, &NONE, 1, LYING, &s) == GB_NOT_POSITIVE);
    base.compaction = 0.99;
    cr_expect(gb_measure_loose(&base, &SLAB, 1, LYING, &s) == GB_NOT_POSITIVE);
    base.compaction = NAN;
    base.material = NULL;
    cr_expect(gb_measure_loose(&base, &SLAB, 1, LYING, &s) == GB_NOT_POSITIVE);
}
