#include "published/published.h"

#include <criterion/criterion.h>

/* The proportion specification of ASTM C270: the shipped Types S and N against the
   representative mixes that Beall prints, and against the standard's own ranges. */

#define BEALL "Beall, Masonry and Concrete, figures 4-23 and 5-12, after ASTM C270"
#define C270  "ASTM C270, proportion specification"

static double volume_of(const gb_mix *mix, gb_material_kind kind) {
    double volume = 0;
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material->kind == kind)
            volume += mix->parts[i].volume;
    return volume;
}

typedef struct part_row {
    pub_figure figure;
    const char *mix;
    gb_material_kind part;
} part_row;

static const part_row PARTS[] = {
    {{"C270 S cement", BEALL, PUB_READ, .printed = 1, .tolerance = 1e-9},
     "mortar/type-s",
     GB_CEMENT},
    {{"C270 S lime", BEALL, PUB_READ, .printed = 0.5, .tolerance = 1e-9},
     "mortar/type-s",
     GB_LIME},
    {{"C270 S sand", BEALL, PUB_READ, .printed = 4.5, .tolerance = 1e-9},
     "mortar/type-s",
     GB_SAND},
    {{"C270 N cement", BEALL, PUB_READ, .printed = 1, .tolerance = 1e-9},
     "mortar/type-n",
     GB_CEMENT},
    {{"C270 N lime", BEALL, PUB_READ, .printed = 1, .tolerance = 1e-9},
     "mortar/type-n",
     GB_LIME},
    {{"C270 N sand", BEALL, PUB_READ, .printed = 6, .tolerance = 1e-9},
     "mortar/type-n",
     GB_SAND},
};

Test(published_astm_c270, representative_mixes) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof PARTS / sizeof PARTS[0]; i++)
        pub_check(&PARTS[i].figure,
                  volume_of(pub_mix(&table, PARTS[i].mix), PARTS[i].part));
    pub_close(&table);
}

typedef struct range_row {
    pub_range range;
    const char *mix;
} range_row;

/* Both shipped mixes stand exactly on the upper edge: 4-1/2 = 3 x 1-1/2, 6 = 3 x 2. */
static const range_row SAND_RANGES[] = {
    {{"C270 S sand by cementitious", C270, PUB_FROM_MEMORY, .low = 2.25, .high = 3},
     "mortar/type-s"},
    {{"C270 N sand by cementitious", C270, PUB_FROM_MEMORY, .low = 2.25, .high = 3},
     "mortar/type-n"},
};

/* Lime "over 1/4 to 1/2" and "over 1/2 to 1-1/4": the mid values stand inside. */
static const range_row LIME_RANGES[] = {
    {{"C270 S lime by cement", C270, PUB_FROM_MEMORY, .low = 0.25, .high = 0.5},
     "mortar/type-s"},
    {{"C270 N lime by cement", C270, PUB_FROM_MEMORY, .low = 0.5, .high = 1.25},
     "mortar/type-n"},
};

/* Least and most air: the standard's limit for cement-lime mortar in the laboratory. */
static const range_row AIR_RANGES[] = {
    {{"C270 S air", C270, PUB_FROM_MEMORY, .low = 0, .high = 0.12}, "mortar/type-s"},
    {{"C270 N air", C270, PUB_FROM_MEMORY, .low = 0, .high = 0.14}, "mortar/type-n"},
};

Test(published_astm_c270, ranges) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < 2; i++) {
        const gb_mix *mix = pub_mix(&table, SAND_RANGES[i].mix);
        double cement = volume_of(mix, GB_CEMENT);
        double lime = volume_of(mix, GB_LIME);
        pub_check_range(&SAND_RANGES[i].range, volume_of(mix, GB_SAND) / (cement + lime));
        pub_check_range(&LIME_RANGES[i].range, lime / cement);
        pub_check_range(&AIR_RANGES[i].range, mix->air.of_one);
    }
    pub_close(&table);
}

static const pub_figure LIVES[] = {
    {"C270 S working life h", "ASTM C270; BIA M1, Masonry Magazine March 1978 art. 4.3",
     PUB_READ, .printed = 2.5, .tolerance = 0.005},
    {"C270 N working life h", "ASTM C270; BIA M1, Masonry Magazine March 1978 art. 4.3",
     PUB_READ, .printed = 2.5, .tolerance = 0.005},
};

Test(published_astm_c270, working_life) {
    static const char *const MIXES[] = {"mortar/type-s", "mortar/type-n"};
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < 2; i++)
        pub_check(&LIVES[i], pub_in(GB_DURATION, "h", pub_mix(&table, MIXES[i])->life.s));
    pub_close(&table);
}
