#include "published/published.h"

#include <criterion/criterion.h>

/* Surface water of sand, % by mass: moist 2.5, moderate 5, very wet 7.5. */

#define IS_456 "IS 456, surface water carried by sand"

static const struct row {
    gb_sand_state state;
    pub_figure percent;
} ROWS[] = {
    {GB_NEARLY_DRY,
     {"moist sand %", IS_456, PUB_FROM_MEMORY, .printed = 2.5, .tolerance = 0.05,
      .known_difference =
          "\"nearly dry\" is 2 %, common practice: the state before moist"}},
    {GB_DAMP,
     {"moderate sand %", IS_456, PUB_FROM_MEMORY, .printed = 5, .tolerance = 0.05}},
    {GB_WET,
     {"very wet sand %", IS_456, PUB_SECOND_HAND, .printed = 7.5, .tolerance = 0.05,
      .known_difference = "\"wet\" is 8 %, common practice rounded to whole percents"}},
};

Test(published_is_456, sand_moisture) {
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        pub_check(&ROWS[i].percent, 100 * gb_sand_moisture(ROWS[i].state).of_one);
}
