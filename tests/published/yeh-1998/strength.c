#include "published/published.h"
#include "published/yeh-1998/mixture.h"

#include <criterion/criterion.h>
#include <math.h>

/* What portland cement alone reached at 28 days, against what our table of strength and
   ratio (ACI 211.1, not air-entrained) lets the same ratio of water to cement stand for:
   the largest average strength whose ratio, cut to 0.01, is not under the mixture's. The
   findings, measured over table (rows; how many under it; mean; least):

       US table, no superplasticizer     SI table, no superplasticizer
       0.41 to 0.48   6  1  1.135 0.93   0.42 to 0.47   5  1  1.149 0.95
       0.48 to 0.57  16  3  1.065 0.67   0.47 to 0.54  11  3  1.044 0.67
       0.57 to 0.68  20  1  1.112 0.96   0.54 to 0.61  12  0  1.137 1.01
       0.68 to 0.82  10  0  1.148 1.11   0.61 to 0.69  15  1  1.105 0.96
                                         0.69 to 0.79   8  0  1.139 1.13
       all           52  5  1.107        all           51  5  1.109

   So the table is safe by some 11 % in the mean and in every band, and 47 of 52 reach it.
   Weaker is the middle, ratios 0.48 to 0.57, where steps and slabs in frost lie: three of
   16 fall under it, two of them by 28 and 33 % (436 kg of cement, 23.9 MPa; 381.4
   kg, 22.5 MPa), which is under even the specified strength, 1200 psi less, while others
   of the same ratio came to 37 to 40 MPa. That is another cement or another laboratory,
   and no ratio tells of it: a trial does. Under 0.41 the table has no row; all seven
   plain mixtures there passed its strongest, 6000 psi.

   Mixtures with superplasticizer stand apart: their water is what it leaves, and the
   ratio is that of the finished concrete. Six lie in the table, two of them 9 % under it.

   Beware: laboratory concretes of many cements, on specimens whose size is not told;
   several rows repeat one another almost to the digit (185, 185.7 and 186 kg of water),
   so that the counts weigh some tests twice. */

typedef struct band {
    double over, to; /* ratios; of the first band of a table the lower end counts in */
    size_t rows, under;
    double mean, least; /* measured over table, to 0.001 and 0.01 */
} band;

typedef struct group {
    gb_system table;
    bool plasticized;
    size_t weaker, stronger; /* ratios over and under all of the table */
    double average;
    const char *name;
    band bands[5]; /* ends with one that has no upper end */
} group;

static const group GROUPS[] = {
    {GB_US,
     false,
     2,
     7,
     1.107,
     "plain, US table",
     {{0.41, 0.48, 6, 1, 1.135, 0.93},
      {0.48, 0.57, 16, 3, 1.065, 0.67},
      {0.57, 0.68, 20, 1, 1.112, 0.96},
      {0.68, 0.82, 10, 0, 1.148, 1.11}}},
    {GB_METRIC,
     false,
     3,
     7,
     1.109,
     "plain, SI table",
     {{0.42, 0.47, 5, 1, 1.149, 0.95},
      {0.47, 0.54, 11, 3, 1.044, 0.67},
      {0.54, 0.61, 12, 0, 1.137, 1.01},
      {0.61, 0.69, 15, 1, 1.105, 0.96},
      {0.69, 0.79, 8, 0, 1.139, 1.13}}},
    {GB_US,
     true,
     0,
     13,
     1.222,
     "with superplasticizer, US table",
     {{0.48, 0.57, 6, 2, 1.222, 0.91}}},
    {GB_METRIC,
     true,
     0,
     13,
     1.216,
     "with superplasticizer, SI table",
     {{0.47, 0.54, 2, 0, 1.215, 1.21}, {0.54, 0.61, 4, 2, 1.217, 0.90}}},
};

/* MPa that the table lets that ratio stand for; +inf and NaN beyond its ends. */
static double allowed(gb_system table, double ratio) {
    gb_pressure least = {NAN};
    gb_pressure most = {NAN};
    gb_strength_range(table, false, &least, &most);
    if (gb_over(ratio, gb_ratio_of_strength(table, least, false)))
        return NAN;
    if (gb_under(ratio, gb_ratio_of_strength(table, most, false)))
        return INFINITY;
    for (int i = 0; i < 60; i++) {
        gb_pressure f = {(least.pa + most.pa) / 2};
        if (gb_under(gb_ratio_of_strength(table, f, false), ratio))
            most = f;
        else
            least = f;
    }
    return pub_in(GB_PRESSURE, "MPa", least.pa);
}

static bool belongs(const group *g, const mixture *m) {
    return m->kg[SLAG] <= 0 && m->kg[FLY_ASH] <= 0 && m->age_days == 28 &&
           (m->kg[PLASTICIZER] > 0) == g->plasticized;
}

/* What came of one group, or of one band of it. */
typedef struct found {
    size_t rows, under;
    double sum, least;
} found;

static void add(found *f, double measured_over_table) {
    f->least = f->rows == 0 ? measured_over_table : fmin(f->least, measured_over_table);
    f->rows++;
    f->sum += measured_over_table;
    f->under += measured_over_table < 1;
}

static size_t band_of(const group *g, double ratio) {
    size_t i = 0;
    while (i + 1 < sizeof g->bands / sizeof g->bands[0] && ratio > g->bands[i].to)
        i++;
    return i;
}

typedef struct findings {
    found all, bands[5];
    size_t weaker, stronger, short_of_strongest;
} findings;

static void sort_in(const group *g, const mixture *m, findings *f) {
    double ratio = m->water / m->kg[CEMENT];
    double mpa = allowed(g->table, ratio);
    gb_pressure least = {NAN};
    gb_pressure most = {NAN};
    gb_strength_range(g->table, false, &least, &most);
    if (isnan(mpa)) {
        f->weaker++;
    } else if (isinf(mpa)) {
        f->stronger++;
        f->short_of_strongest += pub_si(GB_PRESSURE, "MPa", m->strength_mpa) < most.pa;
    } else {
        add(&f->all, m->strength_mpa / mpa);
        add(&f->bands[band_of(g, ratio)], m->strength_mpa / mpa);
    }
}

static void check_band(const char *name, const band *b, const found *f) {
    double mean = f->sum / (double)f->rows;
    cr_log_info("%s %.2f to %.2f: %zu rows, %zu under the table, mean %.4f, least %.4f",
                name, b->over, b->to, f->rows, f->under, mean, f->least);
    cr_expect(f->rows == b->rows && f->under == b->under,
              "%s %.2f to %.2f: %zu rows, %zu under", name, b->over, b->to, f->rows,
              f->under);
    cr_expect(fabs(mean - b->mean) <= 0.0006, "%s to %.2f: mean %.4f", name, b->to, mean);
    cr_expect(fabs(f->least - b->least) <= 0.006, "%s to %.2f: least %.4f", name, b->to,
              f->least);
}

static void check_group(const group *g, const findings *f) {
    cr_expect(f->weaker == g->weaker && f->stronger == g->stronger,
              "%s: %zu over its ratios, %zu under them", g->name, f->weaker, f->stronger);
    double mean = f->all.sum / (double)f->all.rows;
    cr_expect(fabs(mean - g->average) <= 0.0006, "%s: mean %.4f", g->name, mean);
    for (size_t i = 0; i < 5 && g->bands[i].to > 0; i++)
        check_band(g->name, &g->bands[i], &f->bands[i]);
}

Test(published_yeh_1998, strength) {
    findings of[sizeof GROUPS / sizeof GROUPS[0]] = {0};
    FILE *file = yeh_open();
    size_t rows = 0;
    mixture m;
    for (; yeh_next(file, &m); rows++)
        for (size_t i = 0; i < sizeof GROUPS / sizeof GROUPS[0]; i++)
            if (belongs(&GROUPS[i], &m))
                sort_in(&GROUPS[i], &m, &of[i]);
    yeh_close(file, rows);
    for (size_t i = 0; i < sizeof GROUPS / sizeof GROUPS[0]; i++)
        check_group(&GROUPS[i], &of[i]);
    cr_expect(of[0].all.rows == 52 && of[0].all.under == 5,
              "47 of 52 reach the US table");
    cr_expect(of[1].all.rows == 51 && of[1].all.under == 5,
              "46 of 51 reach the SI table");
    cr_expect(of[0].short_of_strongest == 0 && of[2].short_of_strongest == 0,
              "all under 0.41 pass 6000 psi");
}
