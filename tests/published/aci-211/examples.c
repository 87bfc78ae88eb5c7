#include "published/published.h"

#include <criterion/criterion.h>
#include <math.h>

/* Course examples after ACI 211.1, followed step by step. Where one slips between masses
   on different bases, the slip stays as a known difference. US examples take 62.4 lb/ft3
   for water, SI ones 1000 kg/m3. */

#define COUNT(rows) (sizeof(rows) / sizeof((rows)[0]))
#define FROM(name)                                                                       \
    .source = "a course example, " name, .status = PUB_READ, .known_difference = NULL
#define SLIPS(name) .source = "a course example, " name, .status = PUB_READ

typedef struct step {
    double got;
    pub_figure figure;
} step;

static void check(const char *example, const step *steps, size_t count) {
    for (size_t i = 0; i < count; i++)
        pub_check_for(example, &steps[i].figure, steps[i].got);
}

static double lb_yd3(gb_density d) {
    return pub_in(GB_DENSITY, "lb/yd3", d.kg_m3);
}

static double ft3(gb_share of_concrete) {
    return 27 * of_concrete.of_one;
}

static gb_share all_but_sand(const gb_proportions *p) {
    return (gb_share){1 - p->parts.sand_volume.of_one};
}

static gb_proportions of_us(const pub_asked *asked) {
    gb_concrete c = pub_ask(asked);
    return pub_proportion_of(&c, pub_us_water());
}

static gb_proportions of_si(const pub_asked *asked) {
    gb_concrete c = pub_ask(asked);
    return pub_proportion_of(&c, (gb_density){1000});
}

/* ---- aggregate drier than SSD ------------------------------------------------------ */

/* The example has its aggregate SSD, with what lies on it or is lacking as a share of
   that mass. So it does here: absorption 0. It prints masses cut, not rounded. */
#define DRIER FROM("4000 psi, 3/8 in, coarse aggregate 0.81 % drier than SSD")

static const pub_asked DRIER_ASKED = {.table = GB_US,
                                      .average = 4000,
                                      .slump = 3,
                                      .largest = 0.375,
                                      .cement_gravity = 3.15,
                                      .sand_gravity = 2.67,
                                      .stone_gravity = 2.68,
                                      .sand_moisture = 0.0237,
                                      .stone_moisture = -0.0081,
                                      .air_dry = true,
                                      .fineness = 2.9,
                                      .rodded = 103};

Test(published_course_examples, drier_than_ssd) {
    const gb_proportions p = of_us(&DRIER_ASKED);
    const gb_parts_of_concrete *m = &p.parts;
    const step steps[] = {
        {lb_yd3(m->water), {"water lb", DRIER, .printed = 385, .tolerance = 0.5}},
        {100 * m->air.of_one, {"air %", DRIER, .printed = 3, .tolerance = 0.05}},
        {p.ratio, {"water to cement", DRIER, .printed = 0.57, .tolerance = 0.005}},
        {lb_yd3(m->cement), {"cement lb", DRIER, .printed = 675.44, .tolerance = 0.005}},
        {p.coarse_share.of_one,
         {"coarse share", DRIER, .printed = 0.45, .tolerance = 0.005}},
        {ft3(p.coarse_share),
         {"stone rodded ft3", DRIER, .printed = 12.15, .tolerance = 0.005}},
        {lb_yd3(m->stone), {"stone lb", DRIER, .printed = 1251, .tolerance = 0.5}},
        {ft3(m->water_volume), {"water ft3", DRIER, .printed = 6.17, .tolerance = 0.005}},
        {ft3(m->cement_volume),
         {"cement ft3", DRIER, .printed = 3.44, .tolerance = 0.005}},
        {ft3(m->stone_volume),
         {"stone ft3", DRIER, .printed = 7.483, .tolerance = 0.0005}},
        {ft3(m->air), {"air ft3", DRIER, .printed = 0.81, .tolerance = 0.005}},
        {ft3(all_but_sand(&p)),
         {"all but sand ft3", DRIER, .printed = 17.90, .tolerance = 0.005}},
        {ft3(m->sand_volume), {"sand ft3", DRIER, .printed = 9.1, .tolerance = 0.05}},
        {lb_yd3(m->sand), {"sand lb", DRIER, .printed = 1516, .tolerance = 0.5}},
    };
    check("drier than SSD", steps, COUNT(steps));
}

/* A hundredth of it, with its moisture. */
Test(published_course_examples, drier_than_ssd_batch) {
    const gb_proportions p = of_us(&DRIER_ASKED);
    const gb_wetness on_sand = {{0.0237}, {0}};
    const gb_wetness on_stone = {{-0.0081}, {0}};
    const gb_mass sand = {0.01 * lb_yd3(p.parts.sand)}; /* lb: all of it is linear */
    const gb_mass stone = {0.01 * lb_yd3(p.parts.stone)};
    const double water = 0.01 * lb_yd3(p.parts.water);
    const double to_add =
        water - gb_free_water(sand, on_sand).kg - gb_free_water(stone, on_stone).kg;
    const step steps[] = {
        {water, {"water lb", DRIER, .printed = 3.85, .tolerance = 0.005}},
        {0.01 * lb_yd3(p.parts.cement),
         {"cement lb", DRIER, .printed = 6.75, .tolerance = 0.005}},
        {0.01 * lb_yd3(p.parts.cement),
         {"cement lb, last line", SLIPS("4000 psi, 3/8 in"), .printed = 6.57,
          .tolerance = 0.005,
          .known_difference = "6.75 misprinted: the line above has it"}},
        {sand.kg, {"sand lb", DRIER, .printed = 15.16, .tolerance = 0.005}},
        {stone.kg, {"stone lb", DRIER, .printed = 12.51, .tolerance = 0.005}},
        {gb_on_basis(sand, on_sand, GB_OVEN_DRY, GB_AS_DELIVERED).kg,
         {"sand moist lb", DRIER, .printed = 15.52, .tolerance = 0.005}},
        {gb_on_basis(stone, on_stone, GB_OVEN_DRY, GB_AS_DELIVERED).kg,
         {"stone moist lb", DRIER, .printed = 12.41, .tolerance = 0.005}},
        {to_add,
         {"water to add lb", SLIPS("4000 psi, 3/8 in"), .printed = 3.58,
          .tolerance = 0.005,
          .known_difference = "3.85 + 15.16 + 12.51 - 15.52 - 12.41 is 3.59: the batch "
                              "of the example loses 0.01 lb"}},
    };
    check("1/100 of it", steps, COUNT(steps));
}

/* ---- oven-dry mass over a gravity that is SSD -------------------------------------- */

/* Both examples divide the oven-dry mass of the stone by its SSD gravity, and multiply
   the SSD mass of the sand by one and all its moisture. Here the first slip is followed,
   by stating the gravities as they stand; `properly` states them on the dry basis. */
typedef struct slipped {
    pub_asked asked; /* gravities SSD */
    double sand_surface, stone_surface;
} slipped;

static const slipped FROST_5000 = {{.table = GB_US,
                                    .average = 5000,
                                    .slump = 1.5,
                                    .largest = 0.75,
                                    .air = GB_AIR_SEVERE,
                                    .cement_gravity = 3.15,
                                    .sand_gravity = 2.65,
                                    .stone_gravity = 2.70,
                                    .sand_absorption = 0.013,
                                    .stone_absorption = 0.01,
                                    .fineness = 2.7,
                                    .rodded = 100},
                                   0.03,
                                   0};
static const slipped OF_7000 = {{.table = GB_US,
                                 .ratio = 0.33,
                                 .slump = 3.5,
                                 .largest = 0.75,
                                 .cement_gravity = 3.15,
                                 .sand_gravity = 2.60,
                                 .stone_gravity = 2.65,
                                 .sand_absorption = 0.011,
                                 .stone_absorption = 0.005,
                                 .fineness = 2.7,
                                 .rodded = 100},
                                0.03,
                                0.01};

static gb_wetness wet(double surface, double absorption) {
    gb_share absorbs = {absorption};
    return (gb_wetness){gb_moisture_of_surface((gb_share){surface}, absorbs), absorbs};
}

/* Gravities oven-dry, as the engine asks for them. */
static gb_proportions properly(const slipped *s) {
    pub_asked asked = s->asked;
    asked.sand_gravity /= 1 + asked.sand_absorption;
    asked.stone_gravity /= 1 + asked.stone_absorption;
    return of_us(&asked);
}

/* lb/yd3 as delivered of an SSD mass of the sand. */
static double sand_delivered(const slipped *s, double ssd) {
    gb_wetness w = wet(s->sand_surface, s->asked.sand_absorption);
    return gb_on_basis((gb_mass){ssd}, w, GB_SATURATED, GB_AS_DELIVERED).kg;
}

#define FROST     FROM("5000 psi in frost, slump 1 to 2 in")
#define FROST_OFF SLIPS("5000 psi in frost, slump 1 to 2 in")

Test(published_course_examples, frost_5000_psi) {
    const gb_proportions p = of_us(&FROST_5000.asked);
    const gb_parts_of_concrete *m = &p.parts;
    const step steps[] = {
        {lb_yd3(m->water), {"water lb", FROST, .printed = 280, .tolerance = 0.5}},
        {100 * m->air.of_one, {"air %", FROST, .printed = 6, .tolerance = 0.05}},
        {p.ratio, {"water to cement", FROST, .printed = 0.40, .tolerance = 0.005}},
        {lb_yd3(m->cement), {"cement lb", FROST, .printed = 700, .tolerance = 0.5}},
        {p.coarse_share.of_one,
         {"coarse share", FROST, .printed = 0.63, .tolerance = 0.005}},
        {lb_yd3(m->stone), {"stone dry lb", FROST, .printed = 1701, .tolerance = 0.5}},
        {ft3(m->water_volume), {"water ft3", FROST, .printed = 4.49, .tolerance = 0.005}},
        {ft3(m->cement_volume),
         {"cement ft3", FROST, .printed = 3.56, .tolerance = 0.005}},
        {ft3(m->stone_volume),
         {"stone ft3", FROST, .printed = 10.10, .tolerance = 0.005}},
        {ft3(m->air), {"air ft3", FROST, .printed = 1.62, .tolerance = 0.005}},
        /* 27 less four rounded volumes; then 7.23 x 165.36, printed to 0.01 lb. */
        {ft3(m->sand_volume), {"sand ft3", FROST, .printed = 7.23, .tolerance = 0.01}},
        {lb_yd3(m->sand), {"sand SSD lb", FROST, .printed = 1195.55, .tolerance = 1}},
    };
    check("5000 psi in frost", steps, COUNT(steps));
}

Test(published_course_examples, frost_5000_psi_by_basis) {
    const slipped *s = &FROST_5000;
    const gb_proportions p = properly(s);
    const gb_parts_of_concrete *m = &p.parts;
    const double ssd = lb_yd3(m->sand) * (1 + s->asked.sand_absorption);
    const step steps[] = {
        {ft3(m->stone_volume),
         {"stone ft3", FROST_OFF, .printed = 10.10, .tolerance = 0.005,
          .known_difference = "oven-dry 1701 lb take 1701 x 1.01 / (2.70 x 62.4) = 10.20 "
                              "ft3; the example divides them by the SSD gravity"}},
        {ft3(m->sand_volume),
         {"sand ft3", FROST_OFF, .printed = 7.23, .tolerance = 0.01,
          .known_difference = "0.10 ft3 less, which the stone takes: 7.13"}},
        {ssd,
         {"sand SSD lb", FROST_OFF, .printed = 1195.55, .tolerance = 1,
          .known_difference = "7.13 ft3 of it: 1179.7 lb"}},
        {sand_delivered(s, 1195.55),
         {"1195.55 lb SSD in the pile", FROST_OFF, .printed = 1246.96, .tolerance = 0.5,
          .known_difference = "SSD mass x (1 + absorption + surface water) counts the "
                              "absorption twice: 1195.55 x 1.03 = 1231.4"}},
    };
    check("5000 psi in frost, each mass on its basis", steps, COUNT(steps));
}

#define STRONG     FROM("7000 psi, slump 3 to 4 in")
#define STRONG_OFF SLIPS("7000 psi, slump 3 to 4 in")

Test(published_course_examples, strong_7000_psi) {
    const gb_proportions p = of_us(&OF_7000.asked);
    const gb_parts_of_concrete *m = &p.parts;
    const gb_wetness on_sand = wet(0.03, 0.011);
    const gb_wetness on_stone = wet(0.01, 0.005);
    const gb_mass stone = {lb_yd3(m->stone)}; /* lb */
    /* The sand is SSD: 3 % of that lies on it. */
    const gb_mass dry_sand = {lb_yd3(m->sand) / 1.011};
    const double to_add = lb_yd3(m->water) - gb_free_water(dry_sand, on_sand).kg -
                          gb_free_water(stone, on_stone).kg;
    const step steps[] = {
        {lb_yd3(m->water), {"water lb", STRONG, .printed = 340, .tolerance = 0.5}},
        {100 * m->air.of_one, {"air %", STRONG, .printed = 2, .tolerance = 0.05}},
        {lb_yd3(m->cement), {"cement lb", STRONG, .printed = 1030, .tolerance = 0.5}},
        {p.coarse_share.of_one,
         {"coarse share", STRONG, .printed = 0.63, .tolerance = 0.005}},
        {lb_yd3(m->stone), {"stone dry lb", STRONG, .printed = 1701, .tolerance = 0.5}},
        {ft3(m->stone_volume),
         {"stone ft3", STRONG, .printed = 10.29, .tolerance = 0.005}},
        {ft3(all_but_sand(&p)),
         {"all but sand ft3", STRONG, .printed = 21.52, .tolerance = 0.005}},
        {ft3(m->sand_volume), {"sand ft3", STRONG, .printed = 5.48, .tolerance = 0.005}},
        /* 5.48 x 162.2, where it is 5.483. */
        {lb_yd3(m->sand), {"sand SSD lb", STRONG, .printed = 889, .tolerance = 0.8}},
        {gb_on_basis(stone, on_stone, GB_OVEN_DRY, GB_AS_DELIVERED).kg,
         {"stone in the pile lb", STRONG, .printed = 1727, .tolerance = 0.5}},
        {to_add, {"water to add lb", STRONG, .printed = 296, .tolerance = 0.5}},
    };
    check("7000 psi", steps, COUNT(steps));
}

Test(published_course_examples, strong_7000_psi_by_basis) {
    const slipped *s = &OF_7000;
    const gb_proportions p = properly(s);
    const double ssd = lb_yd3(p.parts.sand) * (1 + s->asked.sand_absorption);
    const step steps[] = {
        {ft3(p.parts.stone_volume),
         {"stone ft3", STRONG_OFF, .printed = 10.29, .tolerance = 0.005,
          .known_difference = "oven-dry 1701 lb take 1701 x 1.005 / (2.65 x 62.4) = "
                              "10.34 ft3; the example divides them by the SSD gravity"}},
        {ft3(p.parts.sand_volume),
         {"sand ft3", STRONG_OFF, .printed = 5.48, .tolerance = 0.005,
          .known_difference = "0.05 ft3 less, which the stone takes: 5.43"}},
        {ssd,
         {"sand SSD lb", STRONG_OFF, .printed = 889, .tolerance = 0.8,
          .known_difference = "5.43 ft3 of it: 881.2 lb"}},
        {sand_delivered(s, 889),
         {"889 lb SSD in the pile", STRONG_OFF, .printed = 925, .tolerance = 0.5,
          .known_difference = "SSD mass x (1 + absorption + surface water) counts the "
                              "absorption twice: 889 x 1.03 = 915.7"}},
    };
    check("7000 psi, each mass on its basis", steps, COUNT(steps));
}

/* ---- SI ---------------------------------------------------------------------------- */

/* A ratio that is given, and a batch of 30 kg. Its stone is called 10 mm and reads the
   table's 9.5 mm; dry-rodded x 0.47 is called an SSD mass there, which changes no figure.
 */
#define THIRTY FROM("SI, ratio 0.50, 10 mm, a batch of 30 kg")

static const pub_asked THIRTY_ASKED = {.table = GB_METRIC,
                                       .ratio = 0.50,
                                       .slump = 90,
                                       .largest = 9.5,
                                       .cement_gravity = 3.155,
                                       .sand_gravity = 2.700,
                                       .stone_gravity = 2.660,
                                       .fineness = 2.70,
                                       .rodded = 1530};

Test(published_course_examples, batch_of_30_kg) {
    const gb_proportions p = of_si(&THIRTY_ASKED);
    const gb_parts_of_concrete *m = &p.parts;
    const double part = 30 / m->fresh.kg_m3;
    const step steps[] = {
        {m->water.kg_m3, {"water kg", THIRTY, .printed = 228, .tolerance = 0.5}},
        {100 * m->air.of_one, {"air %", THIRTY, .printed = 3, .tolerance = 0.05}},
        {m->cement.kg_m3, {"cement kg", THIRTY, .printed = 456, .tolerance = 0.5}},
        {m->cement_volume.of_one,
         {"cement m3", THIRTY, .printed = 0.145, .tolerance = 0.0005}},
        {p.coarse_share.of_one,
         {"coarse share", THIRTY, .printed = 0.47, .tolerance = 0.005}},
        {m->stone.kg_m3, {"stone kg", THIRTY, .printed = 719, .tolerance = 0.5}},
        {m->stone_volume.of_one,
         {"stone m3", THIRTY, .printed = 0.270, .tolerance = 0.0005}},
        {all_but_sand(&p).of_one,
         {"all but sand m3", THIRTY, .printed = 0.673, .tolerance = 0.0005}},
        {m->sand_volume.of_one,
         {"sand m3", THIRTY, .printed = 0.327, .tolerance = 0.0005}},
        {m->sand.kg_m3, {"sand kg", THIRTY, .printed = 883, .tolerance = 0.5}},
        {m->fresh.kg_m3, {"all kg", THIRTY, .printed = 2286, .tolerance = 0.5}},
        {1 / part, {"times 30 kg", THIRTY, .printed = 76.2, .tolerance = 0.05}},
        /* From 76.2 and whole kilograms: up to 0.03 %. */
        {part * m->cement.kg_m3,
         {"batch cement kg", THIRTY, .printed = 5.984, .percent = 0.04}},
        {part * m->water.kg_m3,
         {"batch water kg", THIRTY, .printed = 2.992, .percent = 0.04}},
        {part * m->stone.kg_m3,
         {"batch stone kg", THIRTY, .printed = 9.436, .percent = 0.04}},
        {part * m->sand.kg_m3,
         {"batch sand kg", THIRTY, .printed = 11.588, .percent = 0.04}},
    };
    check("30 kg", steps, COUNT(steps));
}

/* The SI twin of example 1; its last step is cut off in the copy. */
#define TWIN FROM("the SI twin of ACI example 1")

static const pub_asked TWIN_ASKED = {.table = GB_METRIC,
                                     .average = 24,
                                     .slump = 75,
                                     .largest = 37.5,
                                     .cement_gravity = 3.15,
                                     .sand_gravity = 2.64,
                                     .stone_gravity = 2.68,
                                     .sand_absorption = 0.007,
                                     .stone_absorption = 0.005,
                                     .sand_moisture = 0.06,
                                     .stone_moisture = 0.02,
                                     .fineness = 2.8,
                                     .rodded = 1600};

Test(published_course_examples, si_twin_of_example_1) {
    const gb_proportions p = of_si(&TWIN_ASKED);
    const gb_parts_of_concrete *m = &p.parts;
    const step steps[] = {
        {m->water.kg_m3, {"water kg", TWIN, .printed = 181, .tolerance = 0.5}},
        {p.ratio, {"water to cement", TWIN, .printed = 0.62, .tolerance = 0.005}},
        {m->cement.kg_m3, {"cement kg", TWIN, .printed = 292, .tolerance = 0.5}},
        {p.coarse_share.of_one,
         {"coarse share", TWIN, .printed = 0.71, .tolerance = 0.005}},
        {m->stone.kg_m3, {"stone dry kg", TWIN, .printed = 1136, .tolerance = 0.5}},
    };
    check("SI twin", steps, COUNT(steps));
}

/* 4000 psi by the SI table; rodded by a measure, (8.43 - 3.04) lb x 20 = 107.8 lb/ft3.
   The sand is cut off in the copy but for what is left for it. */
#define MEASURED     FROM("SI, 4000 psi, rodded 1727 kg/m3")
#define MEASURED_OFF SLIPS("SI, 4000 psi, rodded 1727 kg/m3")

static const pub_asked MEASURED_ASKED = {.table = GB_METRIC,
                                         .average = 27.579, /* 4000 psi */
                                         .slump = 50,
                                         .largest = 19,
                                         .cement_gravity = 3.15,
                                         .sand_gravity = 2.6,
                                         .stone_gravity = 2.6,
                                         .fineness = 2.40,
                                         .rodded = 1727};

Test(published_course_examples, rodded_by_a_measure) {
    const gb_proportions p = of_si(&MEASURED_ASKED);
    const gb_parts_of_concrete *m = &p.parts;
    const double rodded = pub_si(GB_DENSITY, "lb/ft3", (8.43 - 3.04) * 20);
    const step steps[] = {
        {rodded, {"rodded kg/m3", MEASURED, .printed = 1727, .tolerance = 0.5}},
        {m->water.kg_m3, {"water kg", MEASURED, .printed = 190, .tolerance = 0.5}},
        {p.ratio, {"water to cement", MEASURED, .printed = 0.57, .tolerance = 0.005}},
        {m->cement.kg_m3,
         {"cement kg", MEASURED_OFF, .printed = 334, .tolerance = 0.5,
          .known_difference = "190 / 0.57 is 333.3, not over it"}},
        {p.coarse_share.of_one,
         {"coarse share", MEASURED, .printed = 0.66, .tolerance = 0.005}},
        {m->stone.kg_m3, {"stone kg", MEASURED, .printed = 1140, .tolerance = 0.5}},
        {m->water_volume.of_one,
         {"water m3", MEASURED, .printed = 0.19, .tolerance = 0.005}},
        {m->cement_volume.of_one,
         {"cement m3", MEASURED, .printed = 0.106, .tolerance = 0.0005}},
        {m->air.of_one, {"air m3", MEASURED, .printed = 0.02, .tolerance = 0.005}},
        {m->stone_volume.of_one,
         {"stone m3", MEASURED, .printed = 0.438, .tolerance = 0.0005}},
        {all_but_sand(&p).of_one,
         {"all but sand m3", MEASURED, .printed = 0.754, .tolerance = 0.0005}},
    };
    check("rodded by a measure", steps, COUNT(steps));
}

/* A beam of 4500 psi: the copy shows its water and air alone. */
#define BEAM FROM("beam, 4500 psi, slump 3 to 4 in")

static const pub_asked BEAM_ASKED = {.table = GB_US,
                                     .average = 4500,
                                     .slump = 4,
                                     .largest = 0.75,
                                     .cement_gravity = 3.15,
                                     .sand_gravity = 2.40,
                                     .stone_gravity = 2.8,
                                     .fineness = 2.50,
                                     .rodded = 98};

Test(published_course_examples, beam) {
    const gb_proportions p = of_us(&BEAM_ASKED);
    const step steps[] = {
        {lb_yd3(p.parts.water), {"water lb", BEAM, .printed = 340, .tolerance = 0.5}},
        {100 * p.parts.air.of_one, {"air %", BEAM, .printed = 2.0, .tolerance = 0.05}},
    };
    check("beam", steps, COUNT(steps));
}
