#include "published/published.h"

#include <criterion/criterion.h>

/* What one bag of 0.67 ft3 beds: 0.67 ft3 over the volume of a bed of 1 ft2. Arithmetic
   of common practice, printed to 0.1 ft2. */

#define PRACTICE "bag of 0.67 ft3, common practice"

static const struct bed {
    double inches;
    pub_figure figure; /* ft2 */
} BEDS[] = {
    {0.5,
     {"0.67 ft3 bag at 1/2 in ft2", PRACTICE, PUB_DERIVED, .printed = 16.1,
      .tolerance = 0.05}},
    {0.75,
     {"0.67 ft3 bag at 3/4 in ft2", PRACTICE, PUB_DERIVED, .printed = 10.7,
      .tolerance = 0.05}},
    {1.0,
     {"0.67 ft3 bag at 1 in ft2", PRACTICE, PUB_DERIVED, .printed = 8.0,
      .tolerance = 0.05}},
    {1.25,
     {"0.67 ft3 bag at 1-1/4 in ft2", PRACTICE, PUB_DERIVED, .printed = 6.4,
      .tolerance = 0.05}},
    {1.5,
     {"0.67 ft3 bag at 1-1/2 in ft2", PRACTICE, PUB_DERIVED, .printed = 5.4,
      .tolerance = 0.05}},
    {2.0,
     {"0.67 ft3 bag at 2 in ft2", PRACTICE, PUB_DERIVED, .printed = 4.0,
      .tolerance = 0.05}},
};
static const pub_figure INCH_ON_FOOT = {"1 ft2 at 1 in ft3", PRACTICE, PUB_DERIVED,
                                        .printed = 0.0833, .tolerance = 0.00005};
static const pub_figure QUARTER = {"1/4 in more on a bed of 1 in, %", PRACTICE,
                                   PUB_DERIVED, .printed = 25, .tolerance = 0.5};

static double bed_of_a_foot(double inches) {
    double foot = pub_si(GB_LENGTH, "ft", 1);
    pub_laid laid = {GB_BED, foot, foot, pub_si(GB_LENGTH, "in", inches), 1};
    return pub_take(&laid).net.m3;
}

Test(published_bed_practice, what_a_bag_beds) {
    double bag = pub_si(GB_VOLUME, "ft3", 0.67);
    for (size_t i = 0; i < sizeof BEDS / sizeof BEDS[0]; i++)
        pub_check(&BEDS[i].figure, bag / bed_of_a_foot(BEDS[i].inches));
    pub_check(&INCH_ON_FOOT, pub_in(GB_VOLUME, "ft3", bed_of_a_foot(1)));
    pub_check(&QUARTER, 100 * (bed_of_a_foot(1.25) / bed_of_a_foot(1) - 1));
}

#define NAVY   "NAVEDTRA 14044 chapter 7"
#define MANUAL "Natural Stone Institute, Dimension Stone Design Manual 3.1.1"
#define A108   "ANSI A108.1A"
#define OBC    "Ontario Building Code, Division B 9.29.10.2"
#define CPWD   "CPWD rate-analysis examples"
#define ICAR   "ICAR e-course lesson 20"
#define BERGE  "Berge, Ecology of Building Materials"
#define YARD   "stone-yard how-to text"

/* Sand (or lime) in volumes to one of cement. */
static const pub_proportion PROPORTIONS[] = {
    {"bed/stiff-1-3", GB_SAND, {"tile floor bed", NAVY, PUB_READ, 3, 6, NULL}},
    {"bed/stiff-1-4", GB_SAND, {"tile floor bed", NAVY, PUB_READ, 3, 6, NULL}},
    {"bed/stiff-1-5", GB_SAND, {"tile floor bed", NAVY, PUB_READ, 3, 6, NULL}},
    {"plastic-bed/1-3", GB_SAND, {"tile floor bed", NAVY, PUB_READ, 3, 6, NULL}},
    {"plastic-bed/1-4", GB_SAND, {"tile floor bed", NAVY, PUB_READ, 3, 6, NULL}},
    {"plastic-bed/1-5", GB_SAND, {"tile floor bed", NAVY, PUB_READ, 3, 6, NULL}},
    {"thick-bed/floor-1-5-dry", GB_SAND, {"tile floor bed", NAVY, PUB_READ, 3, 6, NULL}},
    {"thick-bed/floor-1-6", GB_SAND, {"tile floor bed", NAVY, PUB_READ, 3, 6, NULL}},
    {"thick-bed/wall-1-half-5",
     GB_SAND,
     {"tile wall bed, sand", NAVY, PUB_READ, 3, 5.5, NULL}},
    {"thick-bed/wall-1-half-5",
     GB_LIME,
     {"tile wall bed, lime", NAVY, PUB_READ, 1, 1,
      "the Navy's wall beds hold 1 of lime throughout; ours is ANSI's 1/2, in the stone "
      "manual's range"}},
    {"bed/stiff-1-3",
     GB_SAND,
     {"stone floor, about 1:3", MANUAL, PUB_SECOND_HAND, 3, 3, NULL}},
    {"plastic-bed/1-3",
     GB_SAND,
     {"stone floor, about 1:3", MANUAL, PUB_SECOND_HAND, 3, 3, NULL}},
    {"thick-bed/wall-1-half-5",
     GB_SAND,
     {"stone wall, sand", MANUAL, PUB_SECOND_HAND, 5, 7, NULL}},
    {"thick-bed/wall-1-half-5",
     GB_LIME,
     {"stone wall, lime", MANUAL, PUB_SECOND_HAND, 0.5, 1, NULL}},
    {"thick-bed/wall-1-1-7",
     GB_SAND,
     {"stone wall, sand", MANUAL, PUB_SECOND_HAND, 5, 7, NULL}},
    {"thick-bed/wall-1-1-7",
     GB_LIME,
     {"stone wall, lime", MANUAL, PUB_SECOND_HAND, 0.5, 1, NULL}},
    {"thick-bed/floor-1-5-dry",
     GB_SAND,
     {"floor, dry sand", A108, PUB_FROM_MEMORY, 5, 5, NULL}},
    {"thick-bed/floor-1-6",
     GB_SAND,
     {"floor, damp sand", A108, PUB_FROM_MEMORY, 6, 6, NULL}},
    {"thick-bed/floor-1-6-lime",
     GB_SAND,
     {"floor, damp sand", A108, PUB_FROM_MEMORY, 6, 6, NULL}},
    {"thick-bed/floor-1-6-lime",
     GB_LIME,
     {"floor, lime", A108, PUB_FROM_MEMORY, 0, 0.1, NULL}},
    {"thick-bed/wall-1-half-5",
     GB_SAND,
     {"wall, damp sand", A108, PUB_FROM_MEMORY, 5, 7, NULL}},
    {"thick-bed/wall-1-half-5",
     GB_LIME,
     {"wall, lime", A108, PUB_FROM_MEMORY, 0.5, 1, NULL}},
    {"thick-bed/wall-1-1-7",
     GB_SAND,
     {"wall, damp sand", A108, PUB_FROM_MEMORY, 5, 7, NULL}},
    {"bed/stiff-1-3", GB_SAND, {"aggregate", OBC, PUB_READ, 3, 5, NULL}},
    {"bed/stiff-1-4", GB_SAND, {"aggregate", OBC, PUB_READ, 3, 5, NULL}},
    {"bed/stiff-1-5", GB_SAND, {"aggregate", OBC, PUB_READ, 3, 5, NULL}},
    {"thick-bed/floor-1-6",
     GB_SAND,
     {"aggregate", OBC, PUB_READ, 3, 5,
      "6 of damp sand is ANSI's, leaner than the Ontario code lets a bed be"}},
    {"bed/stiff-1-4",
     GB_SAND,
     {"stone slab floor 1:4 or 1:5", CPWD, PUB_READ, 4, 5, NULL}},
    {"bed/stiff-1-5",
     GB_SAND,
     {"stone slab floor 1:4 or 1:5", CPWD, PUB_READ, 4, 5, NULL}},
    {"bed/stiff-1-5", GB_SAND, {"stone slab floor 1:5", ICAR, PUB_READ, 5, 5, NULL}},
    {"pointing/1-3", GB_SAND, {"joints raked 20 mm, 1:3", ICAR, PUB_READ, 3, 3, NULL}},
    {"bed/stiff-1-4", GB_SAND, {"bed 1:4 or 1:5", BERGE, PUB_READ, 4, 5, NULL}},
    {"slurry/sand-1-1", GB_SAND, {"1:1 slurry on top", BERGE, PUB_READ, 1, 1, NULL}},
    {"pointing/grout-1-1", GB_SAND, {"joints 1:1 to 1:3", BERGE, PUB_READ, 1, 3, NULL}},
    {"pointing/1-3", GB_SAND, {"joints 1:1 to 1:3", BERGE, PUB_READ, 1, 3, NULL}},
    {"bed/stiff-1-4", GB_SAND, {"flagstone bed 1:4", YARD, PUB_READ, 4, 4, NULL}},
    {"pointing/grout-1-1", GB_SAND, {"flagstone joints 1:1", YARD, PUB_READ, 1, 1, NULL}},
};

Test(published_bed_practice, proportions) {
    pub_check_proportions(PROPORTIONS, sizeof PROPORTIONS / sizeof PROPORTIONS[0],
                          PUB_TO_CEMENT);
}
