#include "published/published.h"

#include <criterion/criterion.h>
#include <stdio.h>
#include <string.h>

/* Tables XII and XIII: barrels of cement in 1 yd3 of concrete, a barrel being 380 lb in
   3.8 ft3 (packed) or 4.4 ft3 (loose), sand of 40 and stone of 45 % voids. The book fills
   voids with paste, 3.65 ft3 a barrel; we add up solids, water and air. What it does not
   state: gravity 2.65, 2 % of air, and water 0.58 of the cement, as our 1:2:4. Tolerance
   5
   %, as those are two theories. Rows that the book has off its own formula stay known
   differences; with the formula itself we are within 4 %. */

#define XII  "Gillette and Hill, Concrete Construction, 1908, table XII (n = 3.8)"
#define XIII "Gillette and Hill, Concrete Construction, 1908, table XIII (n = 4.4)"

static const double BARREL_LB = 380;
static const double VOIDS_SAND = 0.40;
static const double VOIDS_STONE = 0.45;
static const double GRAVITY = 2.65;

static const char OFF[] =
    "the row is under the table's own formula, by 3 to 11 %, and we are over that";

/* Printed: barrels, yd3 of sand, yd3 of stone. */
static const struct row {
    const char *mix;
    double sand, stone;
    double xii[3], xiii[3];
    const char *xii_differs, *xiii_differs;
} ROWS[] = {
    {"1:2:4", 2, 4, {1.46, 0.41, 0.82}, {1.30, 0.42, 0.84}, NULL, NULL},
    {"1:2:5", 2, 5, {1.30, 0.36, 0.90}, {1.16, 0.38, 0.95}, NULL, NULL},
    {"1:2:6", 2, 6, {1.18, 0.33, 1.00}, {1.00, 0.33, 1.00}, NULL, NULL},
    {"1:2-1/2:5", 2.5, 5, {1.13, 0.40, 0.80}, {1.07, 0.44, 0.88}, OFF, NULL},
    {"1:2-1/2:6", 2.5, 6, {1.00, 0.35, 0.84}, {0.96, 0.40, 0.95}, OFF, NULL},
    {"1:3:4", 3, 4, {1.25, 0.53, 0.71}, {1.08, 0.53, 0.71}, NULL, OFF},
    {"1:3:5", 3, 5, {1.13, 0.48, 0.80}, {0.96, 0.47, 0.78}, NULL, OFF},
    {"1:3:6", 3, 6, {1.05, 0.44, 0.88}, {0.90, 0.44, 0.88}, NULL, OFF},
    {"1:3:7", 3, 7, {0.96, 0.40, 0.93}, {0.82, 0.40, 0.93}, NULL, OFF},
    {"1:4:7", 4, 7, {0.82, 0.46, 0.80}, {0.75, 0.49, 0.86}, OFF, OFF},
    {"1:4:8", 4, 8, {0.77, 0.43, 0.86}, {0.68, 0.44, 0.88}, OFF, OFF},
    {"1:4:9", 4, 9, {0.73, 0.41, 0.92}, {0.64, 0.42, 0.95}, OFF, OFF},
};

/* Barrels in 1 yd3, by the product. */
static double barrels(pub_table *table, const struct row *row, double barrel_ft3) {
    const double barrel = pub_si(GB_MASS, "lb", BARREL_LB);
    const double grain = barrel_ft3 * pub_si(GB_VOLUME, "ft3", 1) * GRAVITY * 1000;
    const pub_masses masses = {.cement = barrel,
                               .sand = row->sand * grain * (1 - VOIDS_SAND),
                               .coarse = row->stone * grain * (1 - VOIDS_STONE),
                               .water = 0.58 * barrel,
                               .sand_gravity = GRAVITY,
                               .coarse_gravity = GRAVITY,
                               .air = 0.02};
    pub_concrete c;
    pub_make_concrete(table, &masses, &c);
    const gb_recipe r = pub_recipe(&c.mix);
    return pub_si(GB_VOLUME, "yd3", 1) / (barrel / r.bag.kg * r.yield.m3);
}

static void check(const struct row *row, const char *source, const char *what,
                  double printed, double percent, double got, const char *differs) {
    bool formula = strstr(what, "formula") != NULL;
    char id[96];
    snprintf(id, sizeof id, "%s %s", row->mix, what);
    const pub_figure figure = {.id = id,
                               .source = source,
                               .status = formula ? PUB_DERIVED : PUB_READ,
                               .printed = printed,
                               .percent = percent,
                               .known_difference = differs};
    pub_check(&figure, got);
}

static void check_table(const char *source, double barrel_ft3) {
    pub_table table;
    pub_open(&table);
    bool xii = barrel_ft3 < 4;
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        const struct row *row = &ROWS[i];
        const double *printed = xii ? row->xii : row->xiii;
        const char *differs = xii ? row->xii_differs : row->xiii_differs;
        const double n = barrels(&table, row, barrel_ft3);
        const double yd3 = n * barrel_ft3 / 27; /* of one part */
        check(row, source, xii ? "XII bbl" : "XIII bbl", printed[0], 5, n, differs);
        check(row, source, xii ? "XII sand yd3" : "XIII sand yd3", printed[1], 5,
              row->sand * yd3, differs);
        check(row, source, xii ? "XII stone yd3" : "XIII stone yd3", printed[2], 5,
              row->stone * yd3, differs);
    }
    pub_close(&table);
}

Test(published_gillette_hill, concrete) {
    check_table(XII, 3.8);
    check_table(XIII, 4.4);
}

/* N = 27 / [3.65 + 3.8 s (1.1 - 0.9 x 0.40) + 3.8 g (1 - 0.9 x 0.45)] of the same rows,
   or the lean limit 27 / (3.8 g) where that is less. */
static const double FORMULA[] = {1.47, 1.31, 1.18, 1.23, 1.11, 1.28,
                                 1.15, 1.05, 0.97, 0.88, 0.82, 0.77};

Test(published_gillette_hill, concrete_by_formula) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof FORMULA / sizeof FORMULA[0]; i++)
        check(&ROWS[i], XII, "XII by its formula, bbl", FORMULA[i], 4,
              barrels(&table, &ROWS[i], 3.8), NULL);
    pub_close(&table);
}
