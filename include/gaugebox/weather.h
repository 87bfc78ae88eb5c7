/* The weather of a job: as stated for the day, or hour by hour from a file. */
#ifndef GAUGEBOX_WEATHER_H
#define GAUGEBOX_WEATHER_H

#include "gaugebox/moment.h"
#include "gaugebox/origin.h"
#include "gaugebox/quantity.h"

/* One hour from its moment on. What a file does not tell is NaN. */
typedef struct gb_hour {
    gb_moment at;
    gb_temp air;
    gb_share humidity;
    gb_speed wind;  /* at the work, 0.5 m above it */
    gb_length rain; /* that falls in it */
    /* As the file has them, where it has them so: NaN else. */
    gb_speed station; /* 10 m above the ground */
    gb_temp dew_point;
    int line; /* of its file; 0: stated, of no hour */
} gb_hour;

/* Hours that follow one another without a gap. */
typedef struct gb_hours {
    const gb_hour *list;
    size_t count;
    const char *file; /* NULL: none were read */
    uint64_t digest;  /* of the text */
    bool station_wind;
} gb_hours;

/* What the mean temperature of a day is taken of. TMS 602 speaks of the mean of the
   extremes of the 24 h to come; others take all hours of them. */
typedef enum gb_mean { GB_MEAN_OF_EXTREMES, GB_MEAN_OF_HOURS, GB_MEANS } gb_mean;

typedef struct gb_weather {
    /* Stated for the day; NaN when they are not. */
    gb_temp air, low, stone, block, concrete;
    gb_speed wind;
    gb_share humidity;
    bool rain;
    /* From a file, as the job names it. */
    const char *hours_file, *utc_offset, *day;
    gb_mean mean;
    gb_hours hours;
    int offset_s;
    gb_moment from, to; /* of the day's work */
    gb_origin at;
} gb_weather;

/* What goes into the mixer, and how warm the mix is wanted; NaN when it is not said. */
typedef struct gb_temperatures {
    gb_temp cement, sand, water, wanted;
    bool frozen;  /* the sand's moisture is ice */
    gb_origin at; /* line 0: none are stated */
} gb_temperatures;

/* How long frost is looked out for: 72 h from the start of the work. */
gb_duration gb_frost_watch(void);

/* The hours of the work, of the 24 h from its start on, and of the frost watch. */
typedef enum gb_span { GB_AT_WORK, GB_FIRST_DAY, GB_FIRST_TWO_DAYS, GB_WATCH } gb_span;
gb_hours gb_hours_of(const gb_weather *weather, gb_span span);

/* The coldest hour of a span; of stated weather the air at work, the low after. NaN when
   it is not known. */
gb_hour gb_coldest_hour(const gb_weather *weather, gb_span span);
gb_hour gb_warmest_hour(const gb_weather *weather, gb_span span);
/* The strongest wind of the work; NaN when it is not known. */
gb_speed gb_most_wind(const gb_weather *weather);

/* The first hour of the work with rain; its rain is NaN when there is none. Of stated
   weather it is not known how much: zero. */
gb_hour gb_rain_hour(const gb_weather *weather);

/* Rain is looked out for so long after the work: 12 h (UFGS 03301A). */
gb_duration gb_rain_watch(void);
/* The first hour of that with rain; its rain is NaN when none is due or known. */
gb_hour gb_rain_after(const gb_weather *weather);

/* 32 F, and whether it comes to that within the watch; *hour is the coldest. What is not
   known is not due. */
gb_temp gb_freezing(void);
bool gb_frost_due(const gb_weather *weather, gb_hour *hour);

/* The mean temperature of the 24 h from the start of the work on, by the job's rule; of
   stated weather the mean of the air at work and the low, or the air alone. NaN when it
   is not known. */
gb_temp gb_mean_daily(const gb_weather *weather);

#endif
