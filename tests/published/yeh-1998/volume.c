#include "published/published.h"
#include "published/yeh-1998/mixture.h"

#include <criterion/criterion.h>
#include <math.h>

/* Each of Yeh's concretes is written for 1 m3; its solids, water and air must come to
   that, through the product's own yield. The laboratory's gravities are not printed;
   these are usual ones, and air is 2 %. Origin and licence: origin.txt. */

static const double GRAVITY[PARTS] = {3.15, 2.9, 2.3, 1.07, 2.70, 2.65};
static const double AIR = 0.02;

/* What the mixture makes. All but sand and stone count as binder here, so that the water
   is a share of their mass; bulk is 1 kg/m3, so that a volume is a mass. */
static double makes_m3(const gb_mix *like, const mixture *m) {
    gb_material material[PARTS];
    gb_part part[PARTS];
    gb_mix mix = *like;
    size_t count = 0;
    double binder = 0;
    for (size_t i = 0; i < PARTS; i++) {
        if (m->kg[i] <= 0)
            continue;
        material[i] = *like->parts[0].material;
        material[i].kind = i < STONE ? GB_CEMENT : GB_COARSE;
        material[i].gravity = GRAVITY[i];
        material[i].bulk.kg_m3 = 1;
        part[count++] = (gb_part){.material = &material[i], .volume = m->kg[i]};
        if (i < STONE)
            binder += m->kg[i];
    }
    mix.parts = part;
    mix.part_count = count;
    gb_share water = {m->water / binder};
    mix.water.least = water;
    mix.water.usual = water;
    mix.water.most = water;
    mix.air.of_one = AIR;
    gb_recipe r = pub_recipe(&mix);
    return m->kg[CEMENT] / r.part[0].kg * r.yield.m3;
}

static const pub_figure EACH = {"volume m3", YEH, PUB_READ, .printed = 1, .percent = 8};
static const pub_figure MEAN = {"mean volume m3", YEH, PUB_READ, .printed = 1,
                                .percent = 2.5};

typedef struct summary {
    size_t rows;
    size_t over; /* rows out of the tolerance of one */
    double sum, squares;
    double worst; /* the volume farthest from 1 */
    size_t worst_row;
} summary;

static void add(summary *s, double m3) {
    s->rows++;
    s->sum += m3;
    s->squares += (m3 - 1) * (m3 - 1);
    s->over += fabs(m3 - 1) > EACH.percent / 100;
    if (s->rows == 1 || fabs(m3 - 1) > fabs(s->worst - 1)) {
        s->worst = m3;
        s->worst_row = s->rows;
    }
}

Test(published_yeh_1998, absolute_volumes) {
    pub_table table;
    pub_open(&table);
    FILE *file = yeh_open();
    summary s = {0};
    mixture m;
    while (yeh_next(file, &m))
        add(&s, makes_m3(pub_mix(&table, "small-concrete/3-4in"), &m));
    yeh_close(file, s.rows);
    double mean = s.sum / (double)s.rows;
    double spread = sqrt(s.squares / (double)s.rows - (mean - 1) * (mean - 1));
    cr_log_info("%s: mean %.4f m3, standard deviation %.4f, worst %.4f in row %zu, %zu "
                "rows out",
                YEH, mean, spread, s.worst, s.worst_row, s.over);
    pub_check(&MEAN, mean);
    char row[32];
    snprintf(row, sizeof row, "worst row, %zu", s.worst_row);
    pub_check_for(row, &EACH, s.worst);
    pub_close(&table);
}
