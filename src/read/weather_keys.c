#include "read/schemas.h"

static const char *const MEANS[] = {"extremes", "hours", NULL};
_Static_assert(sizeof MEANS / sizeof MEANS[0] == GB_MEANS + 1, "a word for every mean");

static const gb_key WEATHER_KEYS[] = {
    {.name = "air",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_TEMP,
     .least = "-40 F",
     .most = "130 F",
     .offset = offsetof(gb_weather, air),
     .help = N_("air temperature while working, unless 'hours' say it")},
    {.name = "low",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_TEMP,
     .least = "-40 F",
     .most = "130 F",
     .offset = offsetof(gb_weather, low),
     .help = N_("lowest air temperature in the next 72 h")},
    {.name = "wind",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_SPEED,
     .most = "100 mph",
     .offset = offsetof(gb_weather, wind),
     .help = N_("wind at the work")},
    {.name = "humidity",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_SHARE,
     .most = "100%",
     .offset = offsetof(gb_weather, humidity),
     .help = N_("relative humidity")},
    {.name = "stone",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_TEMP,
     .least = "-40 F",
     .most = "180 F",
     .offset = offsetof(gb_weather, stone),
     .help = N_("of the stone itself")},
    {.name = "block",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_TEMP,
     .least = "-40 F",
     .most = "180 F",
     .offset = offsetof(gb_weather, block),
     .help = N_("of the block or slab below the bed")},
    {.name = "concrete",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_TEMP,
     .least = "32 F",
     .most = "120 F",
     .offset = offsetof(gb_weather, concrete),
     .help =
         N_("of fresh concrete as it is placed, for how fast it dries; without it, as "
            "warm as the air, as it is wanted and as the cold asks")},
    {.name = "rain",
     .kind = GB_KEY_FLAG,
     .offset = offsetof(gb_weather, rain),
     .help = N_("rain now or due before the day's work is covered")},
    {.name = "hours",
     .kind = GB_KEY_TEXT,
     .offset = offsetof(gb_weather, hours_file),
     .help =
         N_("instead of air, low, wind, humidity and rain: a CSV file beside this one, "
            "a row an hour, its columns time, air_f or air_c, and as they are there "
            "humidity_pct or dew_point_f, wind_mph (of a station, or wind_at_work_mph), "
            "rain_in")},
    {.name = "utc_offset",
     .kind = GB_KEY_TEXT,
     .offset = offsetof(gb_weather, utc_offset),
     .help =
         N_("of the site's clocks, the same all year, as \"-05:00\"; times of the file "
            "that have none of their own are read with it")},
    {.name = "day",
     .kind = GB_KEY_TEXT,
     .offset = offsetof(gb_weather, day),
     .help = N_("of the work, as \"2026-05-12\"")},
    {.name = "mean",
     .kind = GB_KEY_CHOICE,
     .choices = MEANS,
     .fallback = "extremes",
     .offset = offsetof(gb_weather, mean),
     .help =
         N_("what the mean temperature of the day after is taken of: its extremes, or "
            "all its hours")},
};
const gb_schema GB_WEATHER_SCHEMA =
    GB_SCHEMA("weather", WEATHER_KEYS, gb_weather, offsetof(gb_weather, at));

#define TEMPERATURE(word, member, needed, low, high, what)                               \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = GB_TEMP,                    \
        .required = (needed), .least = (low), .most = (high),                            \
        .offset = offsetof(gb_temperatures, member), .help = (what)                      \
    }
static const gb_key TEMPERATURES_KEYS[] = {
    TEMPERATURE("cement", cement, true, "-40 F", "200 F",
                N_("of the cement, or of a bagged blend")),
    TEMPERATURE("sand", sand, true, "-40 F", "212 F",
                N_("of sand and stone in their pile")),
    TEMPERATURE("water", water, true, "33 F", "180 F", N_("of the mixing water")),
    TEMPERATURE(
        "wanted", wanted, false, "40 F", "120 F",
        N_("of the mix; the water that makes it so, the sand or the ice are told")),
    {.name = "frozen",
     .kind = GB_KEY_FLAG,
     .offset = offsetof(gb_temperatures, frozen),
     .help = N_("the sand's moisture is ice")},
};
const gb_schema GB_TEMPERATURES_SCHEMA = GB_SCHEMA(
    "temperatures", TEMPERATURES_KEYS, gb_temperatures, offsetof(gb_temperatures, at));
