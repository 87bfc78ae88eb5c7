#include "published/published.h"

#include <criterion/criterion.h>

/* Worked examples of quantity-surveying courses. They multiply the wet volume by a fixed
   dry-to-wet factor (1.33, 4/3, or its like 0.75 (C + S)) whatever the ratio; we
   compute solids, water and air, so a fixed factor agrees at some ratios and not at
   others. Cement at 1440 kg/m3, or 50 kg in 0.035 m3, as the notes have it; sand measured
   dry. */

#define NOTE "course note, quantity surveying"
#define QUIZ "university quiz (Al-Halfi 2018)"

static const struct example {
    pub_ratio ratio; /* sand density is filled in */
    double wet_m3;
    pub_figure cement; /* kg */
    pub_figure sand;   /* m3 */
} EXAMPLES[] = {
    {{1, 0, 6, 1440, 0},
     1.0,
     {"note 1:6, 1 m3, cement kg", NOTE, PUB_READ, .printed = 273.6, .tolerance = 0.05,
      .known_difference = "factor 1.33 x 1440 / 7; ours is 1.07 x 1440 / 6 = 257 kg, and "
                          "CPWD prints 250"},
     {"note 1:6, 1 m3, sand m3", NOTE, PUB_READ, .printed = 1.14, .tolerance = 0.005,
      .known_difference = "factor 1.33 x 6/7; ours is 1.07 m3, as CPWD prints"}},
    {{1, 0, 6, 1440, 0},
     0.2305,
     {"note brickwork 1:6, cement kg", NOTE, PUB_READ, .printed = 63.07,
      .tolerance = 0.005,
      .known_difference = "the fixed factor again: 0.2305 m3 of 257 kg/m3 is 59.2 kg"},
     {"note brickwork 1:6, sand m3", NOTE, PUB_READ, .printed = 0.2628,
      .tolerance = 0.00005,
      .known_difference = "the fixed factor again: 0.2305 x 1.07 = 0.2466 m3"}},
    {{1, 0, 5, 1440, 0},
     0.2305,
     {"note brickwork 1:5, cement kg", NOTE, PUB_READ, .printed = 73.58,
      .tolerance = 0.005,
      .known_difference = "the fixed factor: 0.2305 x 1440 x 1.07 / 5 = 71.0 kg"},
     {"note brickwork 1:5, sand m3", NOTE, PUB_READ, .printed = 0.2554,
      .tolerance = 0.00005, .known_difference = "the fixed factor; ours is 0.2466 m3"}},
};

Test(published_course_notes, fixed_factor) {
    pub_table table;
    pub_open(&table);
    double dry = pub_material(&table, "masonry-sand")->dry_loose.kg_m3;
    for (size_t i = 0; i < sizeof EXAMPLES / sizeof EXAMPLES[0]; i++) {
        pub_mortar m;
        pub_ratio ratio = EXAMPLES[i].ratio;
        ratio.sand_kg_m3 = dry;
        pub_make_mortar(&table, &ratio, &m);
        double wet = EXAMPLES[i].wet_m3;
        pub_check(&EXAMPLES[i].cement, wet * pub_kg_per_m3(&m, m.cement));
        pub_check(&EXAMPLES[i].sand, wet * pub_m3_per_m3(&m, m.sand));
    }
    pub_close(&table);
}

/* Plaster of 100 m2 at 12 mm, 1:4, with 15 % more: 1.2 m3, 1.38 m3. The rest is the
   factor 4/3 and a bag of 0.035 m3. */
static const pub_figure PLASTER_NET = {"plaster m3", NOTE, PUB_READ, .printed = 1.2,
                                       .tolerance = 0.05};
static const pub_figure PLASTER_GROSS = {"plaster with 15 % m3", NOTE, PUB_READ,
                                         .printed = 1.38, .tolerance = 0.005};
static const pub_figure PLASTER_BAGS = {"plaster bags of 50 kg", NOTE, PUB_READ,
                                        .printed = 10.5, .tolerance = 0.05};
static const pub_figure PLASTER_SAND = {
    "plaster sand m3",
    NOTE,
    PUB_READ,
    .printed = 1.472,
    .tolerance = 0.0005,
    .known_difference = "4/3 x 4/5 x 1.38; ours is 1.38 x 1.0695 = 1.476 m3, 0.3 % over"};
/* 13 mm on 10 m2, 10 % more; the university note prints ft3 by 35.3 ft3/m3. */
static const pub_figure COAT_GROSS = {"13 mm coat on 10 m2 with 10 % m3",
                                      "university quantity-surveying notes", PUB_READ,
                                      .printed = 0.143, .tolerance = 0.0005};
static const pub_figure COAT_FT3 = {
    "13 mm coat on 10 m2 ft3",
    "university quantity-surveying notes",
    PUB_READ,
    .printed = 4.589,
    .tolerance = 0.0005,
    .known_difference = "0.13 m3 x 35.3; exact 0.13 x 35.3147 = 4.591 ft3"};

static pub_laid coat(double length, double width, double mm) {
    return (pub_laid){GB_BED, length, width, pub_si(GB_LENGTH, "mm", mm), 1};
}

Test(published_course_notes, plaster_of_100_m2) {
    pub_table table;
    pub_open(&table);
    double dry = pub_material(&table, "masonry-sand")->dry_loose.kg_m3;
    pub_mortar m;
    pub_ratio ratio = {1, 0, 4, 50 / 0.035, dry};
    pub_make_mortar(&table, &ratio, &m);
    pub_laid laid = coat(20, 5, 12);
    pub_job job;
    pub_laid_job(&job, &m.mix, &laid);
    pub_add_waste(&job, 0.15);
    pub_plan(&table, &job);
    const gb_mix_plan *p = &job.plan.mixes[0];
    pub_check(&PLASTER_NET, p->need.net.m3);
    pub_check(&PLASTER_GROSS, p->need.gross.m3);
    double gross = p->need.gross.m3;
    pub_check(&PLASTER_BAGS, gross * pub_kg_per_m3(&m, m.cement) / 50);
    pub_check(&PLASTER_SAND, gross * pub_m3_per_m3(&m, m.sand));
    pub_close(&table);
}

Test(published_course_notes, coat_of_10_m2) {
    pub_table table;
    pub_open(&table);
    pub_laid laid = coat(5, 2, 13);
    pub_job job;
    pub_laid_job(&job, pub_mix(&table, "mortar/type-n"), &laid);
    pub_add_waste(&job, 0.10);
    pub_plan(&table, &job);
    pub_check(&COAT_FT3, pub_in(GB_VOLUME, "ft3", job.plan.mixes[0].need.net.m3));
    pub_check(&COAT_GROSS, job.plan.mixes[0].need.gross.m3);
    pub_close(&table);
}

/* 9.67173 m3 of mortar 1:3; V = 0.75 (C + S), cement at 1400 kg/m3 in 50 kg bags,
   counted up: 91 bags (90.3), and 3 x 3.224 = 9.672 m3 of sand. */
static const pub_figure QUIZ_BAGS = {"quiz 1:3 bags of 50 kg", QUIZ, PUB_READ,
                                     .printed = 91, .tolerance = 0.5};
static const pub_figure QUIZ_SAND = {
    "quiz 1:3 sand m3",
    QUIZ,
    PUB_READ,
    .printed = 9.672,
    .tolerance = 0.0005,
    .known_difference =
        "0.75 (C + S) takes 1.000 m3 of sand for a m3 of 1:3; ours takes 1.003"};

Test(published_course_notes, quiz_of_a_brick_wall) {
    pub_table table;
    pub_open(&table);
    double dry = pub_material(&table, "masonry-sand")->dry_loose.kg_m3;
    pub_mortar m;
    pub_ratio ratio = {1, 0, 3, 1400, dry};
    pub_make_mortar(&table, &ratio, &m);
    size_t bags = 0;
    double kg = 9.67173 * pub_kg_per_m3(&m, m.cement);
    cr_assert(gb_count_up(kg, 50, &bags) == GB_OK, "bags are counted");
    pub_check(&QUIZ_BAGS, (double)bags);
    pub_check(&QUIZ_SAND, 9.67173 * pub_m3_per_m3(&m, m.sand));
    pub_close(&table);
}
