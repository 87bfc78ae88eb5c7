/* Quantities: one struct per kind, so that two kinds cannot be mixed up, and the reading
   and printing of them in the notation of a building site. Units exist only here. */
#ifndef GAUGEBOX_QUANTITY_H
#define GAUGEBOX_QUANTITY_H

#include "gaugebox/text.h"

typedef struct gb_length {
    double m;
} gb_length;
typedef struct gb_area {
    double m2;
} gb_area;
typedef struct gb_volume {
    double m3;
} gb_volume;
typedef struct gb_mass {
    double kg;
} gb_mass;
typedef struct gb_density {
    double kg_m3;
} gb_density;
typedef struct gb_temp {
    double c;
} gb_temp;
typedef struct gb_duration {
    double s;
} gb_duration;
typedef struct gb_speed {
    double m_s;
} gb_speed;
/* Rise over run. */
typedef struct gb_slope {
    double of_run;
} gb_slope;
/* Length of joint, and volume of mortar, in an area of wall or floor. */
typedef struct gb_joint_rate {
    double m_m2;
} gb_joint_rate;
typedef struct gb_mortar_rate {
    double m3_m2;
} gb_mortar_rate;
/* A part of a whole: 0.07 is 7 %. */
typedef struct gb_share {
    double of_one;
} gb_share;
/* Strength of concrete, a force on an area. */
typedef struct gb_pressure {
    double pa;
} gb_pressure;
typedef struct gb_money {
    int64_t minor; /* cents, pence: the currency's smallest unit */
} gb_money;

typedef enum gb_kind {
    GB_LENGTH,      /* m */
    GB_AREA,        /* m2 */
    GB_VOLUME,      /* m3 */
    GB_MASS,        /* kg */
    GB_DENSITY,     /* kg/m3 */
    GB_TEMP,        /* degrees Celsius */
    GB_DURATION,    /* s */
    GB_SHARE,       /* of one */
    GB_SLOPE,       /* rise over run */
    GB_SPEED,       /* m/s */
    GB_TREAD_PACE,  /* treads/s */
    GB_AREA_PACE,   /* m2/s */
    GB_VOLUME_PACE, /* m3/s */
    GB_JOINT_RATE,  /* m/m2 */
    GB_MORTAR_RATE, /* m3/m2 */
    GB_EVAPORATION, /* kg/(m2 s) */
    GB_PRESSURE,    /* Pa */
    GB_KINDS
} gb_kind;

/* A unit: SI value = (number - zero) * factor / divisor, each as its definition says. */
typedef struct gb_unit {
    const char *name;
    gb_kind kind;
    double factor;
    double divisor;
    double zero;
} gb_unit;

/* The table of all names of all units, sorted by name; *count tells how many rows. */
const gb_unit *gb_units(size_t *count);

/* The first row whose name does not begin before `first`; those that begin with it follow
   one another, and *end is the end of the table. */
const gb_unit *gb_units_from(char first, const gb_unit **end);

/* The SI value of `number` in `unit`, and the number in `unit` of an SI value. */
double gb_from_unit(const gb_unit *unit, double number);
double gb_to_unit(const gb_unit *unit, double si);

/* Fresh water, unless a published test passes its source's own. */
#define GB_WATER_KG_M3 1000.0

/* `number` in the unit of that kind and name, in SI: gb_si(GB_TEMP, "F", 40). The name
   must be in the table; NaN otherwise. */
double gb_si(gb_kind kind, const char *name, double number);
/* The same of a temperature: limits are in the degrees that their sources print, and
   equal to the last bit what a job states so. */
gb_temp gb_fahrenheit(double f);

/* The unit of that name and kind, or NULL. */
const gb_unit *gb_find_unit(gb_kind kind, const char *name);

/* What parsing can find wrong. */
typedef enum gb_fault {
    GB_NO_FAULT = 0,
    GB_FAULT_EMPTY,
    GB_FAULT_LONG,       /* over GB_LONGEST bytes */
    GB_FAULT_NUMBER,     /* no number where one must be */
    GB_FAULT_DIGITS,     /* over 15 digits */
    GB_FAULT_EXPONENT,   /* 1e3 */
    GB_FAULT_COMMA,      /* 1,5 */
    GB_FAULT_FRACTION,   /* 1/0, or a fraction of one or more behind a whole number */
    GB_FAULT_NO_UNIT,    /* a bare number */
    GB_FAULT_UNIT,       /* a unit that no table knows */
    GB_FAULT_OTHER_KIND, /* a unit of another kind */
    GB_FAULT_NEGATIVE,   /* below zero, and no temperature */
    GB_FAULT_CARRY,      /* 4 ft 13 in */
    GB_FAULT_MORE        /* something behind the quantity */
} gb_fault;

enum { GB_LONGEST = 64 };

/* Reads `text` (UTF-8) as one quantity of `kind` into *si. Site notation: 5ft,
   4ft 6-1/2in, 4' 6 1/2'', 1¼ in, 38 mm, 2h30m, 7%, 1/4in/ft, 1:48, 3 treads/h; curly
   and prime quotes count as foot and inch marks. *si is written on GB_NO_FAULT only. */
gb_fault gb_parse(gb_kind kind, const char *text, double *si) GB_MUST_USE;

/* A number without a unit: 4, 2.65, 3-1/2. */
gb_fault gb_parse_number(const char *text, double *value) GB_MUST_USE;

/* Two lengths with x, X, × or "by" between them: 5ft x 14in. */
gb_fault gb_parse_size(const char *text, gb_length *first, gb_length *second) GB_MUST_USE;

/* A price such as 14.50 in a currency of `decimals` (0 to 3) places; no sign, no unit. */
gb_fault gb_parse_money(const char *text, int decimals, gb_money *money) GB_MUST_USE;

/* Printing. US lengths are rounded to sixteenths of an inch (sixty-fourths below 1/8
   in; inches alone below two feet), metric ones to mm (tenths below 100 mm). */
void gb_print_length(gb_text *to, gb_length length, gb_system system);
/* Tenths only when the degree is not whole: 40 F is 4.4 C. */
void gb_print_temp(gb_text *to, gb_temp temp, gb_system system);
/* 45 s, 20 min, 2h30m, 48 h, 7 days: whole minutes from one minute up, days beyond 72 h.
 */
void gb_print_duration(gb_text *to, gb_duration duration);
/* The days that a duration is printed in; 0 for one that is printed otherwise. Days are
   words and not symbols: who prints in another language writes them himself. */
int64_t gb_whole_days(gb_duration duration);
void gb_print_money(gb_text *to, gb_money money, int decimals);

#endif
