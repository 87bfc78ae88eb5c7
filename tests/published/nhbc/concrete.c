#include "published/published.h"

#include <criterion/criterion.h>
#include <string.h>

/* Standardised prescribed concretes, kg in 1 m3, against the shipped ones, which gauge
   litres to a bag of 25 kg as the same source prints them. Litres are rounded to 5, half
   of which is 5 to 7 % of one box: tolerance 5 % for the cement, 7 % for what is gauged.
   The water is ours: what fills the printed masses to 1 m3. */

#define NHBC "NHBC Standards 3.1.4 after BS 8500-2, cement class 32.5, 20 mm"

static const struct row {
    const char *mix;
    pub_figure cement, sand, stone; /* kg/m3 */
    pub_figure sand_box, stone_box; /* L to a bag */
} ROWS[] = {
    {"st-concrete/st1",
     {"cement kg", NHBC, PUB_READ, .printed = 230, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 770, .percent = 7},
     {"stone kg", NHBC, PUB_READ, .printed = 1155, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 50, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 80, .percent = 0.1}},
    {"st-concrete/st2",
     {"cement kg", NHBC, PUB_READ, .printed = 265, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 760, .percent = 7},
     {"stone kg", NHBC, PUB_READ, .printed = 1135, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 45, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 65, .percent = 0.1}},
    {"st-concrete/st3",
     {"cement kg", NHBC, PUB_READ, .printed = 295, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 745, .percent = 7},
     {"stone kg", NHBC, PUB_READ, .printed = 1120, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 40, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 55, .percent = 0.1}},
    {"st-concrete/st1-42",
     {"cement kg", NHBC, PUB_DERIVED, .printed = 207, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 770, .percent = 7},
     {"stone kg", NHBC, PUB_READ, .printed = 1155, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 60, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 90, .percent = 0.1}},
    {"st-concrete/st2-42",
     {"cement kg", NHBC, PUB_DERIVED, .printed = 238.5, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 760, .percent = 7},
     {"stone kg", NHBC, PUB_READ, .printed = 1135, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 50, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 75, .percent = 0.1}},
    {"st-concrete/st3-42",
     {"cement kg", NHBC, PUB_DERIVED, .printed = 265.5, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 745, .percent = 7},
     {"stone kg", NHBC, PUB_READ, .printed = 1120, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 45, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 65, .percent = 0.1}},
    {"st-concrete/st2-100",
     {"cement kg", NHBC, PUB_READ, .printed = 285, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 735, .percent = 7,
      .known_difference =
          "735 kg to 285 of cement are 40 L to a bag, and 45 are printed"},
     {"stone kg", NHBC, PUB_READ, .printed = 1105, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 45, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 55, .percent = 0.1}},
    {"st-concrete/st2-100-42",
     {"cement kg", NHBC, PUB_DERIVED, .printed = 256.5, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 735, .percent = 7,
      .known_difference =
          "735 kg to 285 of cement are 40 L to a bag, and 45 are printed"},
     {"stone kg", NHBC, PUB_READ, .printed = 1105, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 50, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 65, .percent = 0.1}},
    {"st-concrete/st2-160",
     {"cement kg", NHBC, PUB_READ, .printed = 300, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 815, .percent = 7},
     {"stone kg", NHBC, PUB_READ, .printed = 990, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 45, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 50, .percent = 0.1}},
    {"st-concrete/st2-160-42",
     {"cement kg", NHBC, PUB_DERIVED, .printed = 270, .percent = 5},
     {"sand kg", NHBC, PUB_READ, .printed = 815, .percent = 7},
     {"stone kg", NHBC, PUB_READ, .printed = 990, .percent = 7},
     {"sand L a bag", NHBC, PUB_READ, .printed = 45, .percent = 0.1},
     {"stone L a bag", NHBC, PUB_READ, .printed = 60, .percent = 0.1}},
};

/* Loose litres of one kind to a bag. */
static double box(const gb_mix *mix, gb_material_kind kind) {
    gb_recipe r = pub_recipe(mix);
    double m3 = 0;
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material->kind == kind)
            m3 += r.part[i].kg / mix->parts[i].material->bulk.kg_m3;
    return pub_in(GB_VOLUME, "L", m3);
}

Test(published_nhbc, prescribed_concretes) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        const gb_mix *mix = pub_mix(&table, ROWS[i].mix);
        pub_check_for(mix->id, &ROWS[i].cement, pub_kind_per_m3(mix, GB_CEMENT));
        pub_check_for(mix->id, &ROWS[i].sand, pub_kind_per_m3(mix, GB_SAND));
        pub_check_for(mix->id, &ROWS[i].stone, pub_kind_per_m3(mix, GB_COARSE));
        pub_check_for(mix->id, &ROWS[i].sand_box, box(mix, GB_SAND));
        pub_check_for(mix->id, &ROWS[i].stone_box, box(mix, GB_COARSE));
    }
    pub_close(&table);
}

/* ---- absolute volumes -------------------------------------------------------------- */

/* All seven printed mixes must make 1 m3: gravity 2.65, 2 % of air, and as no water is
   printed, that of ACI 211.1 for 19 mm stone and the row of slump that is nearest to the
   class (0: 25 to 50 mm, 1: 75 to 100, 2: 150 to 175). Tolerance 3 %: a class lies across
   two rows, which are 15 L apart. */
static const struct prescribed {
    const char *id;
    double cement, sand, stone;
    size_t slump;
} PRESCRIBED[] = {
    {"ST1 S1 m3", 230, 770, 1155, 0}, {"ST2 S2 m3", 265, 760, 1135, 1},
    {"ST2 S3 m3", 285, 735, 1105, 1}, {"ST2 S4 m3", 300, 815, 990, 2},
    {"ST3 S2 m3", 295, 745, 1120, 1}, {"ST4 S2 m3", 330, 735, 1100, 1},
    {"ST5 S2 m3", 375, 720, 1080, 1},
};

Test(published_nhbc, absolute_volumes) {
    pub_table table;
    pub_open(&table);
    size_t size = 0;
    cr_assert(gb_nominal_size((gb_length){0.019}, &size), "19 mm");
    for (size_t i = 0; i < sizeof PRESCRIBED / sizeof PRESCRIBED[0]; i++) {
        const struct prescribed *row = &PRESCRIBED[i];
        const double water = gb_mixing_water(GB_METRIC, row->slump, size, false).kg_m3;
        const pub_masses masses = {row->cement, row->sand, row->stone, water,
                                   2.65,        2.65,      0.02};
        pub_concrete c;
        pub_make_concrete(&table, &masses, &c);
        const gb_recipe r = pub_recipe(&c.mix);
        const pub_figure figure = {.id = row->id,
                                   .source = NHBC,
                                   .status = PUB_READ,
                                   .printed = 1,
                                   .percent = 3};
        pub_check(&figure, masses.cement / r.bag.kg * r.yield.m3);
    }
    pub_close(&table);
}

/* ---- boxes ------------------------------------------------------------------------- */

/* Litres to a bag of 25 kg, of cement class 32.5 and 42.5 (10 % less cement, so that a
   bag takes more), against the loose volume of the printed masses by our batch-box
   materials. Litres to the next 5, half of it up to 5 %; densities the rest: 10 %. */
static const struct boxes {
    const char *id;
    double cement, sand, stone;
    double sand_325, stone_325, sand_425, stone_425;
} BOXES[] = {
    {"ST1 S1", 230, 770, 1155, 50, 80, 60, 90},
    {"ST2 S2", 265, 760, 1135, 45, 65, 50, 75},
    {"ST2 S3", 285, 735, 1105, 45, 55, 50, 65},
    {"ST2 S4", 300, 815, 990, 45, 50, 45, 60},
    {"ST3 S2", 295, 745, 1120, 40, 55, 45, 65},
};

static const char *box_differs(const char *mix, const char *what) {
    bool sand = what[1] == 'a';
    return strcmp(mix, "ST2 S3") == 0 && sand
               ? "the boxes of sand are those of ST2 S2, for 10 % less sand to a bag"
               : NULL;
}

static void check_box(const char *mix, const char *what, double printed,
                      const gb_material *material, double kg) {
    const gb_volume loose =
        gb_loose_volume(material, (gb_mass){kg}, gb_state_lying(GB_DAMP));
    const pub_figure figure = {.id = what,
                               .source = NHBC,
                               .status = PUB_READ,
                               .printed = printed,
                               .percent = 10,
                               .known_difference = box_differs(mix, what)};
    pub_check_for(mix, &figure, pub_in(GB_VOLUME, "L", loose.m3));
}

Test(published_nhbc, boxes) {
    pub_table table;
    pub_open(&table);
    const gb_material *sand = pub_material(&table, "box-sand");
    const gb_material *stone = pub_material(&table, "box-stone");
    for (size_t i = 0; i < sizeof BOXES / sizeof BOXES[0]; i++) {
        const struct boxes *b = &BOXES[i];
        const double bag = 25 / b->cement;
        const double strong = 25 / (0.9 * b->cement);
        check_box(b->id, "sand L, 32.5", b->sand_325, sand, bag * b->sand);
        check_box(b->id, "stone L, 32.5", b->stone_325, stone, bag * b->stone);
        check_box(b->id, "sand L, 42.5", b->sand_425, sand, strong * b->sand);
        check_box(b->id, "stone L, 42.5", b->stone_425, stone, strong * b->stone);
    }
    pub_close(&table);
}
