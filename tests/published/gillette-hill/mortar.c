#include "published/published.h"

#include <criterion/criterion.h>
#include <stdio.h>

/* Table X, mortar of cement and sand, barrels of 380 lb in 1 yd3: a barrel of 3.8 ft3 of
   loose cement (100 lb/ft3), sand of 35 % voids (107 lb/ft3, dry). Another theory than
   ours (paste that fills voids, the cement of 1908); tolerance 8 %, which our yield model
   claims for cement and sand against CPWD. We stand 2.4 to 8.6 % under throughout. */

#define TABLE_X "Gillette and Hill, Concrete Construction, 1908, table X (n = 3.8)"

static const double BARREL_LB = 380;
static const double BARREL_FT3 = 3.8;
static const double SAND_LB_FT3 = 107;

static const struct row {
    double sand;
    pub_figure barrels;
} ROWS[] = {
    {1, {"1908 1:1 bbl/yd3", TABLE_X, PUB_READ, .printed = 4.09, .percent = 8}},
    {1.5, {"1908 1:1-1/2 bbl/yd3", TABLE_X, PUB_READ, .printed = 3.33, .percent = 8}},
    {2, {"1908 1:2 bbl/yd3", TABLE_X, PUB_READ, .printed = 2.81, .percent = 8}},
    {2.5, {"1908 1:2-1/2 bbl/yd3", TABLE_X, PUB_READ, .printed = 2.45, .percent = 8}},
    {3,
     {"1908 1:3 bbl/yd3", TABLE_X, PUB_READ, .printed = 2.16, .percent = 8,
      .known_difference = "1.97 bbl by solids, water and air, 8.6 % under; the table "
                          "fills the voids of the sand with paste"}},
    {4, {"1908 1:4 bbl/yd3", TABLE_X, PUB_READ, .printed = 1.62, .percent = 8}},
};

Test(published_gillette_hill, mortar) {
    pub_table table;
    pub_open(&table);
    double cement = pub_si(GB_DENSITY, "lb/ft3", BARREL_LB / BARREL_FT3);
    double sand = pub_si(GB_DENSITY, "lb/ft3", SAND_LB_FT3);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        pub_mortar m;
        pub_ratio ratio = {1, 0, ROWS[i].sand, cement, sand};
        pub_make_mortar(&table, &ratio, &m);
        m.material[m.sand].dry_loose.kg_m3 = sand;
        double lb_yd3 = pub_in(GB_DENSITY, "lb/yd3", pub_kg_per_m3(&m, m.cement));
        pub_check(&ROWS[i].barrels, lb_yd3 / BARREL_LB);
    }
    pub_close(&table);
}

/* ---- other barrels ----------------------------------------------------------------- */

/* The same table for barrels of 3.5, 4.0 and 4.4 ft3; the book computes lean mortar by
   its sand alone, 27 / (1.1 n s). */
enum { OTHER = 3, MIXES = 6 };
static const double OTHER_FT3[OTHER] = {3.5, 4.0, 4.4};
static const double SAND[MIXES] = {1, 1.5, 2, 2.5, 3, 4};
static const double BARRELS[OTHER][MIXES] = {{4.22, 3.49, 2.97, 2.57, 2.28, 1.76},
                                             {4.00, 3.24, 2.73, 2.36, 2.08, 1.54},
                                             {3.81, 3.07, 2.57, 2.27, 2.00, 1.40}};

static const char *other_differs(size_t n, size_t mix) {
    if (n == 1 && mix == 4)
        return "1.90 bbl by solids, water and air, 8.7 % under, as n = 3.8 has it too";
    if (n == 2 && (mix == 3 || mix == 4))
        return "11 and 12 % under; the table is off its own formula here, which gives "
               "2.20 "
               "and 1.86";
    return NULL;
}

static void check_other(pub_table *table, size_t n, size_t mix) {
    const double barrel = OTHER_FT3[n];
    const double sand = pub_si(GB_DENSITY, "lb/ft3", SAND_LB_FT3);
    pub_mortar m;
    pub_ratio ratio = {1, 0, SAND[mix], pub_si(GB_DENSITY, "lb/ft3", BARREL_LB / barrel),
                       sand};
    pub_make_mortar(table, &ratio, &m);
    m.material[m.sand].dry_loose.kg_m3 = sand;
    char id[96];
    snprintf(id, sizeof id, "table X, n = %.1f, 1:%g, bbl/yd3", barrel, SAND[mix]);
    const pub_figure figure = {.id = id,
                               .source = "Gillette and Hill, 1908, table X",
                               .status = PUB_READ,
                               .printed = BARRELS[n][mix],
                               .percent = 8,
                               .known_difference = other_differs(n, mix)};
    double lb_yd3 = pub_in(GB_DENSITY, "lb/yd3", pub_kg_per_m3(&m, m.cement));
    pub_check(&figure, lb_yd3 / BARREL_LB);
}

Test(published_gillette_hill, mortar_of_other_barrels) {
    pub_table table;
    pub_open(&table);
    for (size_t n = 0; n < OTHER; n++)
        for (size_t mix = 0; mix < MIXES; mix++)
            check_other(&table, n, mix);
    pub_close(&table);
}
