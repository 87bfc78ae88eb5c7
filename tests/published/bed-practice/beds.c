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

static const struct proportion {
    const char *mix;
    pub_range sand;
} PROPORTIONS[] = {
    {"bed/stiff-1-3",
     {"bed/stiff-1-3 in the tile bed's 1:3 to 1:6", "NAVEDTRA 14044 chapter 7", PUB_READ,
      .low = 3, .high = 6}},
    {"bed/stiff-1-4",
     {"bed/stiff-1-4 in the tile bed's 1:3 to 1:6", "NAVEDTRA 14044 chapter 7", PUB_READ,
      .low = 3, .high = 6}},
    {"bed/stiff-1-3",
     {"bed/stiff-1-3 as the stone floor's about 1:3",
      "Natural Stone Institute, Dimension Stone Design Manual 3.1.1", PUB_SECOND_HAND,
      .low = 3, .high = 3}},
};

Test(published_bed_practice, proportions) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof PROPORTIONS / sizeof PROPORTIONS[0]; i++) {
        const gb_mix *mix = pub_mix(&table, PROPORTIONS[i].mix);
        pub_check_range(&PROPORTIONS[i].sand,
                        mix->parts[1].volume / mix->parts[0].volume);
    }
    pub_close(&table);
}
