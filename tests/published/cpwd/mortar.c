#include "published/published.h"

#include <criterion/criterion.h>

/* Materials for 1 m3 of wet mortar. Cement is taken at 1440 kg/m3 (a 50 kg bag of
   0.0347 m3), as Indian estimating has it. The CPWD-type specification of mortars
   measures sand "on the basis of its dry volume", so these rows gauge sand by its dry
   loose density; the rows after them gauge the same ratios with damp loose sand, as our
   own mixes do, and so show what the basis is worth. Tolerance 8 %, and 10 % for 1:1: the
   spread among published analyses of one ratio is up to 14 %, and this is what our yield
   model claims. */

#define DAR       "CPWD Delhi Analysis of Rates, coefficients for cement, items 3.1-3.11"
#define DAR_WHITE "CPWD Delhi Analysis of Rates, white-cement mortars, same coefficients"

static const double CPWD_CEMENT = 1440;

typedef struct mortar_row {
    double sand;
    pub_figure cement; /* kg */
    pub_figure m3;     /* of sand; no id when none is printed */
} mortar_row;

/* Ours against print, cement then sand: 1:1 -8.8 and -9.3 %, 1:2 -7.1 and -7.7, 1:3 -6.3
   and -6.9, 1:4 +1.1 and -0.2, 1:5 -0.6, 1:6 +2.7 and 0.0. */
static const mortar_row DRY_SAND[] = {
    {1,
     {"CPWD 1:1 cement kg/m3", DAR, PUB_READ, .printed = 1020, .percent = 10},
     {"CPWD 1:1 sand m3/m3", DAR, PUB_READ, .printed = 0.7125, .percent = 10}},
    {2,
     {"CPWD 1:2 cement kg/m3", DAR, PUB_READ, .printed = 680, .percent = 8},
     {"CPWD 1:2 sand m3/m3", DAR, PUB_FROM_MEMORY, .printed = 0.95, .percent = 8}},
    {3,
     {"CPWD 1:3 cement kg/m3", DAR, PUB_READ, .printed = 510, .percent = 8},
     {"CPWD 1:3 sand m3/m3", DAR, PUB_FROM_MEMORY, .printed = 1.07, .percent = 8}},
    {4,
     {"CPWD 1:4 cement kg/m3", DAR, PUB_READ, .printed = 380, .percent = 8},
     {"CPWD 1:4 sand m3/m3", DAR, PUB_FROM_MEMORY, .printed = 1.07, .percent = 8}},
    {5,
     {"CPWD 1:5 cement kg/m3", DAR_WHITE, PUB_READ, .printed = 310, .percent = 8},
     {.id = NULL}},
    {6,
     {"CPWD 1:6 cement kg/m3", DAR, PUB_READ, .printed = 250, .percent = 8},
     {"CPWD 1:6 sand m3/m3", DAR, PUB_FROM_MEMORY, .printed = 1.07, .percent = 8}},
};

Test(published_cpwd, mortar_of_dry_sand) {
    pub_table table;
    pub_open(&table);
    double dry = pub_material(&table, "masonry-sand")->dry_loose.kg_m3;
    for (size_t i = 0; i < sizeof DRY_SAND / sizeof DRY_SAND[0]; i++) {
        pub_mortar m;
        pub_ratio ratio = {1, 0, DRY_SAND[i].sand, CPWD_CEMENT, dry};
        pub_make_mortar(&table, &ratio, &m);
        pub_check(&DRY_SAND[i].cement, pub_kg_per_m3(&m, m.cement));
        if (DRY_SAND[i].m3.id != NULL)
            pub_check(&DRY_SAND[i].m3, pub_m3_per_m3(&m, m.sand));
    }
    pub_close(&table);
}

/* Lean rows: n volumes of damp sand hold n x 1281.5 kg, which fill n x 1281.5 / 1498 =
   0.8554 n of mortar where the sand governs; 1440 / (0.8554 x 6) = 281 kg. */
static const mortar_row DAMP_SAND[] = {
    {1,
     {"CPWD 1:1, damp sand, cement kg/m3", DAR, PUB_READ, .printed = 1020, .percent = 10},
     {.id = NULL}},
    {2,
     {"CPWD 1:2, damp sand, cement kg/m3", DAR, PUB_READ, .printed = 680, .percent = 8},
     {.id = NULL}},
    {3,
     {"CPWD 1:3, damp sand, cement kg/m3", DAR, PUB_READ, .printed = 510, .percent = 8},
     {.id = NULL}},
    {4,
     {"CPWD 1:4, damp sand, cement kg/m3", DAR, PUB_READ, .printed = 380, .percent = 8,
      .known_difference =
          "measured with damp sand, which CPWD does not: 412 kg, 8.3 % over"},
     {.id = NULL}},
    {5,
     {"CPWD 1:5, damp sand, cement kg/m3", DAR_WHITE, PUB_READ, .printed = 310,
      .percent = 8,
      .known_difference =
          "measured with damp sand, which CPWD does not: 337 kg, 8.6 % over"},
     {.id = NULL}},
    {6,
     {"CPWD 1:6, damp sand, cement kg/m3", DAR, PUB_READ, .printed = 250, .percent = 8,
      .known_difference =
          "measured with damp sand, which CPWD does not: 281 kg, 12 % over"},
     {.id = NULL}},
};

Test(published_cpwd, mortar_of_damp_sand) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof DAMP_SAND / sizeof DAMP_SAND[0]; i++) {
        pub_mortar m;
        pub_ratio ratio = {1, 0, DAMP_SAND[i].sand, CPWD_CEMENT, 0};
        pub_make_mortar(&table, &ratio, &m);
        pub_check(&DAMP_SAND[i].cement, pub_kg_per_m3(&m, m.cement));
    }
    pub_close(&table);
}
