#include "gaugebox/mix.h"

/* Sizes of layers as they are commonly laid: common practice. Inches where jobs are in US
   units, whole millimetres elsewhere. Pointing is raked 20 mm in the floors of ICAR
   lesson 20, 3/4 in where inches are used. */
#define IN 0.0254
#define FLAT(kind, depth)                                                                \
    {                                                                                    \
        (kind), {GB_NONE}, {                                                             \
            (depth)                                                                      \
        }                                                                                \
    }
#define JOINT(kind, width, depth)                                                        \
    {                                                                                    \
        (kind), {(width)}, {                                                             \
            (depth)                                                                      \
        }                                                                                \
    }

static const gb_cover US[] = {
    FLAT(GB_BED, 0.75 * IN),
    FLAT(GB_BED, 1.0 * IN),
    FLAT(GB_BED, 1.25 * IN),
    FLAT(GB_BED, 1.5 * IN),
    FLAT(GB_BED, 2.0 * IN),
    FLAT(GB_SLURRY, IN / 16.0),
    FLAT(GB_SLURRY, IN / 8.0),
    JOINT(GB_JOINT, 0.375 * IN, 1.0 * IN),
    JOINT(GB_POINTING, 0.375 * IN, 0.75 * IN),
    FLAT(GB_SLAB, 2.0 * IN),
    FLAT(GB_SLAB, 4.0 * IN),
    FLAT(GB_SLAB, 6.0 * IN),
};

static const gb_cover METRIC[] = {
    FLAT(GB_BED, 0.020),
    FLAT(GB_BED, 0.025),
    FLAT(GB_BED, 0.030),
    FLAT(GB_BED, 0.040),
    FLAT(GB_BED, 0.050),
    FLAT(GB_SLURRY, 0.002),
    FLAT(GB_SLURRY, 0.003),
    JOINT(GB_JOINT, 0.010, 0.025),
    JOINT(GB_POINTING, 0.010, 0.020),
    FLAT(GB_SLAB, 0.050),
    FLAT(GB_SLAB, 0.100),
    FLAT(GB_SLAB, 0.150),
};

size_t gb_common_covers(gb_system system, const gb_cover **list) {
    *list = system == GB_METRIC ? METRIC : US;
    return system == GB_METRIC ? sizeof METRIC / sizeof METRIC[0]
                               : sizeof US / sizeof US[0];
}

gb_area gb_area_covered(gb_volume volume, const gb_cover *at) {
    return (gb_area){volume.m3 / at->depth.m};
}

gb_length gb_joint_covered(gb_volume volume, const gb_cover *at) {
    return (gb_length){volume.m3 / (at->width.m * at->depth.m)};
}

gb_density gb_in_wet(gb_mass of_one_bag, gb_volume yield) {
    return (gb_density){of_one_bag.kg / yield.m3};
}

gb_volume gb_compared_volume(gb_system system) {
    static const double YD3_M3 = 0.9144 * 0.9144 * 0.9144;
    return (gb_volume){system == GB_METRIC ? 1.0 : YD3_M3};
}
