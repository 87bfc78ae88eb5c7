#include "published/published.h"

#include <criterion/criterion.h>

/* "Lechada de cemento", 1 m3: 515 kg of cement and 0.891 m3 of water, loss counted in.
   1/1.03 of both is 500 kg and 0.865 m3, whose absolute volume at gravity 3.15 is
   1.024 m3. */

#define BCCA "Junta de Andalucia, Base de Costes de la Construccion 2024-01"

static const pub_figure AS_PRINTED = {"lechada of 515 kg and 0.891 m3, m3",
                                      BCCA,
                                      PUB_READ,
                                      .printed = 1,
                                      .tolerance = 0.005,
                                      .known_difference =
                                          "515/3150 + 0.891 = 1.054 m3: the item holds 3 "
                                          "% of loss, and its base 2.4 % more"};
static const pub_figure WITHOUT_LOSS = {
    "lechada of 500 kg and 0.865 m3, m3",
    BCCA,
    PUB_READ,
    .printed = 1,
    .tolerance = 0.005,
    .known_difference = "500/3150 + 0.865 = 1.024 m3: the base itself makes 2.4 % more "
                        "than its cubic metre"};
static const pub_figure ABSOLUTE = {"lechada of 500 kg by absolute volume, m3", BCCA,
                                    PUB_DERIVED, .printed = 1.024, .tolerance = 0.0005};

static double makes_m3(pub_table *table, double cement_kg, double water_m3) {
    pub_paste paste;
    pub_make_paste(table, pub_water_mass((gb_volume){water_m3}).kg / cement_kg, 3.15,
                   &paste);
    gb_recipe r = pub_recipe(&paste.mix);
    return cement_kg / r.bag.kg * r.yield.m3;
}

Test(published_andalucia_slurry, one_cubic_metre) {
    pub_table table;
    pub_open(&table);
    pub_check(&AS_PRINTED, makes_m3(&table, 515, 0.891));
    double net = makes_m3(&table, 515 / 1.03, 0.891 / 1.03);
    pub_check(&WITHOUT_LOSS, net);
    pub_check(&ABSOLUTE, net);
    pub_close(&table);
}
