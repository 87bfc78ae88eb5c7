#include "published/published.h"

#include <criterion/criterion.h>

/* Metric values as the standard prints them beside the US ones. */

#define TMS "TMS 602 article 1.8, printed conversions"

typedef struct conversion_row {
    pub_figure figure;
    gb_kind kind;
    const char *from, *to;
    double number;
} conversion_row;

static const conversion_row ROWS[] = {
    {{"40 F in C", TMS, PUB_SECOND_HAND, .printed = 4.4, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     40},
    {{"25 F in C", TMS, PUB_SECOND_HAND, .printed = -3.9, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     25},
    {{"20 F in C", TMS, PUB_SECOND_HAND, .printed = -6.7, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     20},
    {{"70 F in C", TMS, PUB_SECOND_HAND, .printed = 21.1, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     70},
    {{"90 F in C", TMS, PUB_SECOND_HAND, .printed = 32.2, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     90},
    {{"100 F in C", TMS, PUB_SECOND_HAND, .printed = 37.8, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     100},
    {{"105 F in C", TMS, PUB_SECOND_HAND, .printed = 40.6, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     105},
    {{"115 F in C", TMS, PUB_SECOND_HAND, .printed = 46.1, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     115},
    {{"120 F in C", TMS, PUB_SECOND_HAND, .printed = 48.9, .tolerance = 0.05},
     GB_TEMP,
     "F",
     "C",
     120},
    {{"140 F in C", TMS, PUB_SECOND_HAND, .printed = 60, .tolerance = 0.5},
     GB_TEMP,
     "F",
     "C",
     140},
    {{"8 mph in km/h", TMS, PUB_SECOND_HAND, .printed = 12.9, .tolerance = 0.05},
     GB_SPEED,
     "mph",
     "km/h",
     8},
    {{"15 mph in km/h", TMS, PUB_SECOND_HAND, .printed = 24, .tolerance = 0.5},
     GB_SPEED,
     "mph",
     "km/h",
     15},
};

Test(published_tms602, conversions) {
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        const conversion_row *row = &ROWS[i];
        double si = pub_si(row->kind, row->from, row->number);
        pub_check(&row->figure, pub_in(row->kind, row->to, si));
    }
}
