#include "published/published.h"

#include <criterion/criterion.h>
#include <stdio.h>

/* Materials in 1 ft3 of mortar where 1 ft3 of damp loose sand makes 1 ft3 of mortar, by
   the densities 94, 40 and 80 lb/ft3 (the rule of BIA Technical Note 10A). The rule
   leaves the swelling by paste out, so the tolerance is not a digit but 5 %, which is
   what our yield model claims for C270. We stand 2.0 (O) to 3.9 % (M) over the rule
   throughout. */

#define BIA_10A "BIA Technical Note 10A, materials in 1 ft3 of mortar"

typedef struct material_row {
    const char *id;
    pub_ratio ratio;
    double cement_lb, lime_lb, sand_lb;
    double percent;
} material_row;

static const material_row ROWS[] = {
    {"M 1:1/4:3-3/4", {1, 0.25, 3.75, 0, 0}, 25.07, 2.67, 80, 5},
    {"S 1:1/2:4-1/2", {1, 0.5, 4.5, 0, 0}, 20.89, 4.44, 80, 5},
    {"N 1:1:6", {1, 1, 6, 0, 0}, 15.67, 6.67, 80, 5},
    {"O 1:2:9", {1, 2, 9, 0, 0}, 10.44, 8.89, 80, 5},
};

static void check_part(const material_row *row, const char *part, double printed,
                       double kg_m3) {
    char id[64];
    snprintf(id, sizeof id, "C270 %s, %s lb/ft3", row->id, part);
    const pub_figure figure = {.id = id,
                               .source = BIA_10A,
                               .status = PUB_FROM_MEMORY,
                               .printed = printed,
                               .percent = row->percent};
    pub_check(&figure, pub_in(GB_DENSITY, "lb/ft3", kg_m3));
}

Test(published_astm_c270, materials_in_a_cubic_foot) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        pub_mortar m;
        pub_make_mortar(&table, &ROWS[i].ratio, &m);
        check_part(&ROWS[i], "cement", ROWS[i].cement_lb, pub_kg_per_m3(&m, m.cement));
        check_part(&ROWS[i], "lime", ROWS[i].lime_lb, pub_kg_per_m3(&m, m.lime));
        check_part(&ROWS[i], "dry sand", ROWS[i].sand_lb, pub_kg_per_m3(&m, m.sand));
    }
    pub_close(&table);
}

/* The same figures through the shipped entries; Type M is shipped with 3-1/2 of sand, as
   Beall prints it, and has no row here. */
Test(published_astm_c270, shipped_materials_in_a_cubic_foot) {
    static const char *const MIXES[] = {"mortar/type-s", "mortar/type-n",
                                        "mortar/type-o"};
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof MIXES / sizeof MIXES[0]; i++) {
        const material_row *row = &ROWS[1 + i];
        const gb_mix *mix = pub_mix(&table, MIXES[i]);
        check_part(row, "cement as shipped", row->cement_lb,
                   pub_kind_per_m3(mix, GB_CEMENT));
        check_part(row, "lime as shipped", row->lime_lb, pub_kind_per_m3(mix, GB_LIME));
        check_part(row, "sand as shipped", row->sand_lb, pub_kind_per_m3(mix, GB_SAND));
    }
    pub_close(&table);
}

/* "1 ft3 of damp loose sand makes 1 ft3 of mortar" for the other mortars in C270's range
   of sand, 5 % as above. They stand 3.8 % under (masonry cement N) to 0.4 % under. */
static const pub_figure SAND_TO_MORTAR = {"mortar from 1 ft3 of damp sand, ft3",
                                          "US rule inside the range of ASTM C270",
                                          PUB_FROM_MEMORY, .printed = 1, .percent = 5};

Test(published_astm_c270, mortar_from_sand) {
    static const char *const MIXES[] = {
        "mortar/type-m",
        "mortar/type-k",
        "white-mortar/type-n",
        "white-mortar/type-o",
        "masonry-cement/type-m",
        "masonry-cement/type-s",
        "masonry-cement/type-n",
        "masonry-cement/type-m-portland",
        "masonry-cement/type-s-portland",
    };
    pub_table table;
    pub_open(&table);
    double loose = pub_material(&table, "masonry-sand")->bulk.kg_m3;
    for (size_t i = 0; i < sizeof MIXES / sizeof MIXES[0]; i++) {
        double sand = pub_kind_per_m3(pub_mix(&table, MIXES[i]), GB_SAND) / loose;
        pub_check_for(MIXES[i], &SAND_TO_MORTAR, 1 / sand);
    }
    pub_close(&table);
}
