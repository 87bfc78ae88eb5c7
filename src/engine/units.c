#include "gaugebox/quantity.h"

#include <string.h>

/* Sources: the foot, the pound and the US gallon (231 in3) are exact by definition, NIST
   Handbook 44 appendix C; the foot-based speed units follow from them. The pound-force is
   the pound at standard gravity, 9.80665 m/s2. */
#define INCH   0.0254
#define FOOT   0.3048
#define YARD   0.9144
#define POUND  0.45359237
#define GALLON (231.0 * INCH * INCH * INCH)
#define FOOT2  (FOOT * FOOT)
#define PSI    (POUND * 9.80665 / (INCH * INCH))
#define FOOT3  (FOOT * FOOT * FOOT)

#define UNIT(n, k, f, d)                                                                 \
    { .name = (n), .kind = (k), .factor = (f), .divisor = (d), .zero = 0.0 }

/* Sorted by the bytes of the name, so that a first letter is found by halving. */
static const gb_unit UNITS[] = {
    UNIT("%", GB_SHARE, 1.0, 100.0),
    UNIT("%", GB_SLOPE, 1.0, 100.0),
    UNIT("'", GB_LENGTH, FOOT, 1.0),
    UNIT("''", GB_LENGTH, INCH, 1.0),
    UNIT("C", GB_TEMP, 1.0, 1.0),
    {.name = "F", .kind = GB_TEMP, .factor = 5.0, .divisor = 9.0, .zero = 32.0},
    UNIT("L", GB_VOLUME, 1.0, 1000.0),
    UNIT("L/h", GB_VOLUME_PACE, 0.001, 3600.0),
    UNIT("MPa", GB_PRESSURE, 1e6, 1.0),
    UNIT("N/mm2", GB_PRESSURE, 1e6, 1.0),
    UNIT("cm", GB_LENGTH, 1.0, 100.0),
    UNIT("cm2", GB_AREA, 1.0, 1e4),
    UNIT("cu ft", GB_VOLUME, FOOT3, 1.0),
    UNIT("cu yd", GB_VOLUME, YARD *YARD *YARD, 1.0),
    UNIT("d", GB_DURATION, 86400.0, 1.0),
    UNIT("day", GB_DURATION, 86400.0, 1.0),
    UNIT("days", GB_DURATION, 86400.0, 1.0),
    UNIT("feet", GB_LENGTH, FOOT, 1.0),
    UNIT("fl oz", GB_VOLUME, GALLON, 128.0),
    UNIT("foot", GB_LENGTH, FOOT, 1.0),
    UNIT("ft", GB_LENGTH, FOOT, 1.0),
    UNIT("ft/ft2", GB_JOINT_RATE, FOOT, FOOT2),
    UNIT("ft2", GB_AREA, FOOT2, 1.0),
    UNIT("ft2/h", GB_AREA_PACE, FOOT2, 3600.0),
    UNIT("ft3", GB_VOLUME, FOOT3, 1.0),
    UNIT("ft3/100 ft2", GB_MORTAR_RATE, FOOT3, 100.0 * FOOT2),
    UNIT("ft3/ft2", GB_MORTAR_RATE, FOOT3, FOOT2),
    UNIT("ft3/h", GB_VOLUME_PACE, FOOT3, 3600.0),
    UNIT("g", GB_MASS, 1.0, 1000.0),
    UNIT("gal", GB_VOLUME, GALLON, 1.0),
    UNIT("h", GB_DURATION, 3600.0, 1.0),
    UNIT("hour", GB_DURATION, 3600.0, 1.0),
    UNIT("hours", GB_DURATION, 3600.0, 1.0),
    UNIT("hr", GB_DURATION, 3600.0, 1.0),
    UNIT("in", GB_LENGTH, INCH, 1.0),
    UNIT("in/ft", GB_SLOPE, INCH, FOOT),
    UNIT("in2", GB_AREA, INCH *INCH, 1.0),
    UNIT("in3", GB_VOLUME, INCH *INCH *INCH, 1.0),
    UNIT("inch", GB_LENGTH, INCH, 1.0),
    UNIT("inches", GB_LENGTH, INCH, 1.0),
    UNIT("kPa", GB_PRESSURE, 1000.0, 1.0),
    UNIT("kg", GB_MASS, 1.0, 1.0),
    UNIT("kg/m2/h", GB_EVAPORATION, 1.0, 3600.0),
    UNIT("kg/m3", GB_DENSITY, 1.0, 1.0),
    UNIT("km/h", GB_SPEED, 1000.0, 3600.0),
    UNIT("l", GB_VOLUME, 1.0, 1000.0),
    UNIT("lb", GB_MASS, POUND, 1.0),
    UNIT("lb/ft2/h", GB_EVAPORATION, POUND, FOOT2 * 3600.0),
    UNIT("lb/ft3", GB_DENSITY, POUND, FOOT3),
    UNIT("lb/yd3", GB_DENSITY, POUND, YARD *YARD *YARD),
    UNIT("lbs", GB_MASS, POUND, 1.0),
    UNIT("liter", GB_VOLUME, 1.0, 1000.0),
    UNIT("liters", GB_VOLUME, 1.0, 1000.0),
    UNIT("litre", GB_VOLUME, 1.0, 1000.0),
    UNIT("litres", GB_VOLUME, 1.0, 1000.0),
    UNIT("m", GB_LENGTH, 1.0, 1.0),
    UNIT("m", GB_DURATION, 60.0, 1.0),
    UNIT("m/m2", GB_JOINT_RATE, 1.0, 1.0),
    UNIT("m/s", GB_SPEED, 1.0, 1.0),
    UNIT("m2", GB_AREA, 1.0, 1.0),
    UNIT("m2/h", GB_AREA_PACE, 1.0, 3600.0),
    UNIT("m3", GB_VOLUME, 1.0, 1.0),
    UNIT("m3/h", GB_VOLUME_PACE, 1.0, 3600.0),
    UNIT("m3/m2", GB_MORTAR_RATE, 1.0, 1.0),
    UNIT("mL", GB_VOLUME, 1.0, 1e6),
    UNIT("min", GB_DURATION, 60.0, 1.0),
    UNIT("ml", GB_VOLUME, 1.0, 1e6),
    UNIT("mm", GB_LENGTH, 1.0, 1000.0),
    UNIT("mm/m", GB_SLOPE, 1.0, 1000.0),
    UNIT("mm2", GB_AREA, 1.0, 1e6),
    UNIT("mph", GB_SPEED, 5280.0 * FOOT, 3600.0),
    UNIT("oz", GB_MASS, POUND, 16.0),
    UNIT("psi", GB_PRESSURE, PSI, 1.0),
    UNIT("pt", GB_VOLUME, GALLON, 8.0),
    UNIT("qt", GB_VOLUME, GALLON, 4.0),
    UNIT("s", GB_DURATION, 1.0, 1.0),
    UNIT("short ton", GB_MASS, 2000.0 * POUND, 1.0),
    UNIT("short tons", GB_MASS, 2000.0 * POUND, 1.0),
    UNIT("sq ft", GB_AREA, FOOT2, 1.0),
    UNIT("t", GB_MASS, 1000.0, 1.0),
    UNIT("tonne", GB_MASS, 1000.0, 1.0),
    UNIT("tonnes", GB_MASS, 1000.0, 1.0),
    UNIT("tread/h", GB_TREAD_PACE, 1.0, 3600.0),
    UNIT("treads/h", GB_TREAD_PACE, 1.0, 3600.0),
    UNIT("yd", GB_LENGTH, YARD, 1.0),
    UNIT("yd2", GB_AREA, YARD *YARD, 1.0),
    UNIT("yd3", GB_VOLUME, YARD *YARD *YARD, 1.0),
    UNIT("°C", GB_TEMP, 1.0, 1.0),
    {.name = "°F", .kind = GB_TEMP, .factor = 5.0, .divisor = 9.0, .zero = 32.0},
};

const gb_unit *gb_units(size_t *count) {
    *count = sizeof UNITS / sizeof UNITS[0];
    return UNITS;
}

double gb_from_unit(const gb_unit *unit, double number) {
    return (number - unit->zero) * unit->factor / unit->divisor;
}

double gb_to_unit(const gb_unit *unit, double si) {
    return si * unit->divisor / unit->factor + unit->zero;
}

const gb_unit *gb_units_from(char first, const gb_unit **end) {
    size_t low = 0;
    size_t high = sizeof UNITS / sizeof UNITS[0];
    *end = UNITS + high;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        if ((unsigned char)UNITS[middle].name[0] < (unsigned char)first)
            low = middle + 1;
        else
            high = middle;
    }
    return UNITS + low;
}

const gb_unit *gb_find_unit(gb_kind kind, const char *name) {
    const gb_unit *end = NULL;
    for (const gb_unit *u = gb_units_from(name[0], &end);
         u < end && u->name[0] == name[0]; u++)
        if (u->kind == kind && strcmp(u->name, name) == 0)
            return u;
    return NULL;
}

double gb_si(gb_kind kind, const char *name, double number) {
    const gb_unit *unit = gb_find_unit(kind, name);
    return unit != NULL ? gb_from_unit(unit, number) : GB_NONE;
}

gb_temp gb_fahrenheit(double f) {
    return (gb_temp){gb_si(GB_TEMP, "F", f)};
}
