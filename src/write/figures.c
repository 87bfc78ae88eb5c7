#include "write/figures.h"

#include "gaugebox/count.h"
#include "words/words.h"

#include <math.h>

static double in_unit(gb_kind kind, const char *name, double si) {
    return gb_to_unit(gb_find_unit(kind, name), si);
}

static void add(gb_text *to, double value, int decimals, const char *unit) {
    gb_text_add_fixed(to, value, decimals);
    gb_text_add(to, unit);
}

static void add_parts(gb_text *to, double value, int parts, gb_rounding rounding,
                      const char *unit) {
    gb_text_add_fraction(to, gb_round(value, 1.0 / parts, rounding), parts);
    gb_text_add(to, unit);
}

/* ---- plain numbers ---------------------------------------------------------------- */

static void show_text(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    gb_text_add_clean(to, f->text == NULL ? "" : f->text);
}

static void show_number(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    /* A dab would read as none; one that is rounded down is cut at two decimals. */
    bool dab = f->rounding == GB_NEAREST && f->value > 0 && f->value < 0.00995;
    double value =
        f->rounding == GB_NEAREST ? f->value : gb_round(f->value, 0.01, f->rounding);
    add(to, value, f->show == GB_SHOW_COUNT ? 0 : dab ? 4 : 2, "");
}

static void show_fraction(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    add_parts(to, f->value, f->show == GB_SHOW_FRACTION ? 32 : 4, f->rounding, "");
}

/* The decimals of a number as it was written, up to three; else `otherwise`. */
static int decimals_of(double number, int otherwise) {
    int decimals = 0;
    while (decimals <= 3 && fabs(number - round(number)) > 1e-6) {
        number *= 10.0;
        decimals++;
    }
    return decimals > 3 ? otherwise : decimals;
}

/* Fractions as a mason says them; what is none, as 0.1 or 17.36, with up to three
   decimals. */
static void show_parts(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    if (fabs(f->value * 8.0 - round(f->value * 8.0)) < 1e-6)
        add_parts(to, f->value, 8, GB_NEAREST, "");
    else
        add(to, f->value, decimals_of(f->value, 3), "");
}

/* A computed ratio keeps three, so that it is seen to lie beside its limit. */
static void show_ratio(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    add(to, f->value, decimals_of(f->value, 3), "");
}

/* A rate as it was written; a computed share with one decimal. */
static void show_share(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    double percent = f->value * 100.0;
    if (f->rounding != GB_NEAREST)
        percent = gb_round(percent, 0.1, f->rounding);
    add(to, percent, decimals_of(percent, 1), " %");
}

static void show_duration(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    gb_duration duration = {f->value};
    int64_t days = gb_whole_days(duration);
    if (days == 0)
        gb_print_duration(to, duration);
    else
        gb_add_format(to, gb_tr_count("%d day", "%d days", (unsigned long)days),
                      (int)days);
}

static void show_clock(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    int64_t minutes = llround(f->value / 60.0) % (24LL * 60); /* past midnight */
    gb_text_add_int(to, minutes / 60 / 10);
    gb_text_add_int(to, minutes / 60 % 10);
    gb_text_add(to, ":");
    gb_text_add_int(to, minutes % 60 / 10);
    gb_text_add_int(to, minutes % 60 % 10);
}

static void show_money(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    gb_print_money(to, f->money, f->decimals);
}

/* ---- sizes ------------------------------------------------------------------------ */

static void show_length(const gb_figure *f, gb_system system, gb_text *to) {
    gb_print_length(to, (gb_length){f->value}, system);
}

/* Decimals of an inch as they are needed, 6.75 and 0.292; tenths of a millimetre. */
static void show_length_fine(const gb_figure *f, gb_system system, gb_text *to) {
    double inches = in_unit(GB_LENGTH, "in", f->value);
    double zero = system == GB_US ? 0.0005 : 0.05;
    double shown = system == GB_US ? inches : f->value * 1000.0;
    if (fabs(shown) < zero)
        shown = 0;
    if (system == GB_METRIC)
        add(to, shown, fabs(shown - round(shown)) < 0.05 ? 0 : 1, " mm");
    else
        add(to, shown, decimals_of(gb_round(shown, 0.001, GB_NEAREST), 3), " in");
}

static void show_inches(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    double inches = gb_round(in_unit(GB_LENGTH, "in", f->value), 1.0 / 16.0, GB_NEAREST);
    gb_text_add(to, inches < 0 ? "-" : "");
    add_parts(to, fabs(inches), 16, GB_NEAREST, " in");
}

static void show_up(const gb_figure *f, gb_system system, gb_text *to) {
    double value =
        system == GB_US ? in_unit(GB_LENGTH, "in", f->value) : f->value * 1000.0;
    double shown = gb_round(value, system == GB_US ? 1.0 / 16.0 : 1.0, f->rounding);
    if (system == GB_US)
        add_parts(to, shown, 16, GB_NEAREST, " in");
    else
        add(to, shown, 0, " mm");
}

static void show_mm(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    double mm = round(f->value * 1000.0);
    add(to, fabs(mm) < 0.5 ? 0 : mm, 0, " mm");
}

/* As a level shows it: a part of an inch in a foot where it is one, else a percent. */
static void show_slope(const gb_figure *f, gb_system system, gb_text *to) {
    double sixteenths = f->value * 12.0 * 16.0;
    bool plain = system == GB_US && fabs(sixteenths - round(sixteenths)) < 0.005;
    if (plain)
        add_parts(to, f->value * 12.0, 16, GB_NEAREST, " in/ft");
    else
        add(to, f->value * 100.0, 2, " %");
}

static void show_run(const gb_figure *f, gb_system system, gb_text *to) {
    if (system == GB_METRIC)
        add(to, f->value, 1, " m");
    else
        add(to, in_unit(GB_LENGTH, "ft", f->value), 1, " ft");
}

static void show_area(const gb_figure *f, gb_system system, gb_text *to) {
    if (system == GB_METRIC)
        add(to, f->value, 2, " m2");
    else if (f->show == GB_SHOW_AREA_HALF)
        add_parts(to, in_unit(GB_AREA, "ft2", f->value), 2, f->rounding, " ft2");
    else
        add(to, in_unit(GB_AREA, "ft2", f->value), 2, " ft2");
}

static void show_joint_rate(const gb_figure *f, gb_system system, gb_text *to) {
    bool us = system == GB_US;
    add(to, us ? in_unit(GB_JOINT_RATE, "ft/ft2", f->value) : f->value, 2,
        us ? " ft/ft2" : " m/m2");
}

static void show_mortar_rate(const gb_figure *f, gb_system system, gb_text *to) {
    if (system == GB_METRIC)
        add(to, f->value * 1000.0, 1, " L/m2");
    else
        add(to, in_unit(GB_MORTAR_RATE, "ft3/100 ft2", f->value), 1, " ft3/100 ft2");
}

static void show_whole_temp(const gb_figure *f, gb_system system, gb_text *to) {
    const char *unit = system == GB_US ? "F" : "C";
    add(to, gb_round(in_unit(GB_TEMP, unit, f->value), 1.0, f->rounding), 0,
        system == GB_US ? " F" : " C");
}

static void show_degrees(const gb_figure *f, gb_system system, gb_text *to) {
    add(to, system == GB_US ? f->value * 1.8 : f->value, 0,
        system == GB_US ? " F" : " C");
}

static void show_evaporation(const gb_figure *f, gb_system system, gb_text *to) {
    const char *unit = system == GB_US ? "lb/ft2/h" : "kg/m2/h";
    add(to, in_unit(GB_EVAPORATION, unit, f->value), 2,
        system == GB_US ? " lb/ft2/h" : " kg/m2/h");
}

static void show_volume(const gb_figure *f, gb_system system, gb_text *to) {
    double m3 = f->value;
    double ft3 = in_unit(GB_VOLUME, "ft3", m3);
    if (system == GB_METRIC && m3 < 0.9995)
        add(to, m3 * 1000.0, m3 < 0.01 ? 2 : m3 < 0.1 ? 1 : 0, " L");
    else if (system == GB_METRIC)
        add(to, m3, 3, " m3");
    else
        add(to, ft3, f->show == GB_SHOW_VOLUME_FINE || ft3 < 0.9995 ? 3 : 2, " ft3");
}

static void show_bulk(const gb_figure *f, gb_system system, gb_text *to) {
    if (system == GB_METRIC)
        add(to, gb_round(f->value, 0.05, GB_UP), 2, " m3");
    else
        add_parts(to, in_unit(GB_VOLUME, "yd3", f->value), 4, GB_UP, " yd3");
}

/* A pack as it is sold, never rounded to another size. */
static void show_pack(const gb_figure *f, gb_system system, gb_text *to) {
    double yd3 = in_unit(GB_VOLUME, "yd3", f->value);
    double ft3 = in_unit(GB_VOLUME, "ft3", f->value);
    if (system == GB_METRIC && fabs(f->value - round(f->value)) < 1e-6)
        add(to, f->value, 0, " m3");
    else if (system == GB_METRIC)
        add(to, f->value * (f->value < 0.9995 ? 1000.0 : 1.0), f->value < 0.9995 ? 1 : 3,
            f->value < 0.9995 ? " L" : " m3");
    else if (fabs(yd3 - gb_round(yd3, 0.25, GB_NEAREST)) < 1e-6)
        add_parts(to, yd3, 4, GB_NEAREST, " yd3");
    else
        add(to, ft3, 2, " ft3");
}

static void show_gauged(const gb_figure *f, gb_system system, gb_text *to) {
    double ft3 = in_unit(GB_VOLUME, "ft3", f->value);
    double quarters = gb_round(ft3, 0.25, GB_NEAREST);
    double gallons = in_unit(GB_VOLUME, "gal", f->value);
    if (system == GB_METRIC)
        add(to, f->value * 1000.0, 1, " L");
    else if (fabs(ft3 - quarters) < 0.005)
        add_parts(to, ft3, 4, GB_NEAREST, " ft3");
    else if (fabs(gallons - gb_round(gallons, 0.25, GB_NEAREST)) < 0.01)
        add_parts(to, gallons, 4, GB_NEAREST, " gal");
    else
        add(to, ft3, 2, " ft3");
}

static void show_mass(const gb_figure *f, gb_system system, gb_text *to) {
    double value = system == GB_US ? in_unit(GB_MASS, "lb", f->value) : f->value;
    bool whole = fabs(value - round(value)) < 0.005;
    bool decimal = !whole && value < (system == GB_US ? 19.95 : 99.95);
    if (f->rounding != GB_NEAREST)
        value = gb_round(value, decimal ? 0.1 : 1.0, f->rounding);
    add(to, value, decimal ? 1 : 0, system == GB_US ? " lb" : " kg");
}

static void show_density(const gb_figure *f, gb_system system, gb_text *to) {
    double value = system == GB_US ? in_unit(GB_DENSITY, "lb/ft3", f->value) : f->value;
    add(to, value, value < 99.95 ? 1 : 0, system == GB_US ? " lb/ft3" : " kg/m3");
}

static void show_in_wet(const gb_figure *f, gb_system system, gb_text *to) {
    double value = system == GB_US ? in_unit(GB_DENSITY, "lb/yd3", f->value) : f->value;
    add(to, value, value < 99.95 ? 1 : 0, system == GB_US ? " lb/yd3" : " kg/m3");
}

static void show_lb_yd3(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    add(to, in_unit(GB_DENSITY, "lb/yd3", f->value), 0, "");
}

static void show_kg_m3(const gb_figure *f, gb_system system, gb_text *to) {
    (void)system;
    add(to, f->value, 0, "");
}

static void show_pressure(const gb_figure *f, gb_system system, gb_text *to) {
    if (system == GB_US)
        add(to, gb_round(in_unit(GB_PRESSURE, "psi", f->value), 10, f->rounding), 0,
            " psi");
    else
        add(to, gb_round(in_unit(GB_PRESSURE, "MPa", f->value), 0.1, f->rounding), 1,
            " MPa");
}

/* ---- water: figures come as masses, 1 kg is 1 L ----------------------------------- */

/* The litres beside a figure are those of the rounded one, so that both pour alike. */
static void add_litres(gb_text *to, const char *unit, double count, int decimals,
                       bool cell) {
    double m3 = gb_from_unit(gb_find_unit(GB_VOLUME, unit), count);
    add(to, m3 * 1000.0, decimals, cell ? ")" : " L)");
}

static void show_water(const gb_figure *f, gb_system system, gb_text *to) {
    double m3 = f->value / GB_WATER_KG_M3;
    bool cell = f->show == GB_SHOW_WATER_CELL;
    if (system == GB_METRIC) {
        add(to, gb_round(m3 * 1000.0, 0.1, f->rounding), 1, cell ? "" : " L");
        return;
    }
    double quarts = gb_round(in_unit(GB_VOLUME, "qt", m3), 0.5, f->rounding);
    add_parts(to, quarts, 2, GB_NEAREST, cell ? " (" : " qt (");
    add_litres(to, "qt", quarts, 1, cell);
}

static void show_fine_water(const gb_figure *f, gb_system system, gb_text *to) {
    double m3 = f->value / GB_WATER_KG_M3;
    bool cell = f->show == GB_SHOW_WATER_FINE_CELL;
    if (system == GB_METRIC) {
        add(to, gb_round(m3 * 1000.0, 0.01, f->rounding), 2, cell ? "" : " L");
        return;
    }
    double ounces = gb_round(in_unit(GB_VOLUME, "fl oz", m3), 1.0, f->rounding);
    double quarts = floor(ounces / 32.0);
    if (f->show == GB_SHOW_POT_WATER) {
        add(to, ounces, 0, " fl oz = ");
        add(to, ounces / 32.0, 2, " qt");
    } else {
        double rest = ounces - 32.0 * quarts;
        if (quarts > 0)
            add(to, quarts, 0, rest > 0 ? " qt " : " qt");
        if (rest > 0 || quarts <= 0)
            add(to, rest, 0, " oz");
    }
    gb_text_add(to, " (");
    add_litres(to, "fl oz", ounces, cell && quarts > 0 ? 1 : 2, cell);
}

static void show_water_units(const gb_figure *f, gb_system system, gb_text *to) {
    bool ounces = f->value > 0;
    gb_text_add(to, system == GB_METRIC ? "L" : ounces ? "oz (L)" : "qt (L)");
}

/* ---- additions -------------------------------------------------------------------- */

static void show_dab(const gb_figure *f, gb_system system, gb_text *to) {
    double lb = in_unit(GB_MASS, "lb", f->value);
    if (system == GB_METRIC && f->value < 0.9995)
        add(to, f->value * 1000.0, 0, " g");
    else if (system == GB_METRIC)
        add(to, f->value, 2, " kg");
    else if (lb < 0.995)
        add(to, in_unit(GB_MASS, "oz", f->value), 1, " oz");
    else
        add(to, lb, 2, " lb");
}

static void show_liquid(const gb_figure *f, gb_system system, gb_text *to) {
    bool small = f->value < 0.0009995;
    double quarts = in_unit(GB_VOLUME, "qt", f->value);
    if (system == GB_US) {
        add(to, quarts < 0.995 ? quarts * 32.0 : quarts, quarts < 0.995 ? 1 : 2,
            quarts < 0.995 ? " fl oz (" : " qt (");
    }
    add(to, f->value * (small ? 1e6 : 1e3), small ? 0 : 2, small ? " mL" : " L");
    if (system == GB_US)
        gb_text_add(to, ")");
}

/* ---- weather ---------------------------------------------------------------------- */

static void show_temp(const gb_figure *f, gb_system system, gb_text *to) {
    gb_print_temp(to, (gb_temp){f->value}, system);
}

static void show_speed(const gb_figure *f, gb_system system, gb_text *to) {
    const char *unit = system == GB_US ? "mph" : "km/h";
    add(to, in_unit(GB_SPEED, unit, f->value), 0, system == GB_US ? " mph" : " km/h");
}

/* How each kind of figure is shown, and the unit that its name ends in for programs; NULL
   for what only guides the eye. */
static const struct {
    void (*show)(const gb_figure *, gb_system, gb_text *);
    const char *unit;
} SHOWS[] = {
    [GB_SHOW_TEXT] = {show_text, ""},
    [GB_SHOW_MARK] = {show_text, NULL},
    [GB_SHOW_ROWS] = {NULL, ""},
    [GB_SHOW_COUNT] = {show_number, ""},
    [GB_SHOW_NUMBER] = {show_number, ""},
    [GB_SHOW_RATIO] = {show_ratio, ""},
    [GB_SHOW_FRACTION] = {show_fraction, ""},
    [GB_SHOW_QUARTERS] = {show_fraction, ""},
    [GB_SHOW_PARTS] = {show_parts, ""},
    [GB_SHOW_LENGTH] = {show_length, "_m"},
    [GB_SHOW_LENGTH_FINE] = {show_length_fine, "_m"},
    [GB_SHOW_INCHES] = {show_inches, "_m"},
    [GB_SHOW_UP] = {show_up, "_m"},
    [GB_SHOW_MM] = {show_mm, NULL},
    [GB_SHOW_SLOPE] = {show_slope, "_of_run"},
    [GB_SHOW_RUN] = {show_run, "_m"},
    [GB_SHOW_AREA] = {show_area, "_m2"},
    [GB_SHOW_AREA_HALF] = {show_area, "_m2"},
    [GB_SHOW_JOINT_RATE] = {show_joint_rate, "_m_m2"},
    [GB_SHOW_MORTAR_RATE] = {show_mortar_rate, "_m3_m2"},
    [GB_SHOW_EVAPORATION] = {show_evaporation, "_kg_m2_s"},
    [GB_SHOW_VOLUME] = {show_volume, "_m3"},
    [GB_SHOW_VOLUME_FINE] = {show_volume, "_m3"},
    [GB_SHOW_BULK] = {show_bulk, "_m3"},
    [GB_SHOW_PACK] = {show_pack, "_m3"},
    [GB_SHOW_GAUGED] = {show_gauged, "_m3"},
    [GB_SHOW_WATER] = {show_water, "_kg"},
    [GB_SHOW_WATER_CELL] = {show_water, "_kg"},
    [GB_SHOW_WATER_UNITS] = {show_water_units, NULL},
    [GB_SHOW_WATER_FINE] = {show_fine_water, "_kg"},
    [GB_SHOW_WATER_FINE_CELL] = {show_fine_water, "_kg"},
    [GB_SHOW_POT_WATER] = {show_fine_water, "_kg"},
    [GB_SHOW_MASS] = {show_mass, "_kg"},
    [GB_SHOW_DENSITY] = {show_density, "_kg_m3"},
    [GB_SHOW_IN_WET] = {show_in_wet, "_kg_m3"},
    [GB_SHOW_LB_YD3] = {show_lb_yd3, "_kg_m3"},
    [GB_SHOW_KG_M3] = {show_kg_m3, NULL},
    [GB_SHOW_PRESSURE] = {show_pressure, "_pa"},
    [GB_SHOW_DAB] = {show_dab, "_kg"},
    [GB_SHOW_LIQUID] = {show_liquid, "_m3"},
    [GB_SHOW_TEMP_WHOLE] = {show_whole_temp, "_c"},
    [GB_SHOW_DEGREES] = {show_degrees, "_k"},
    [GB_SHOW_TEMP] = {show_temp, "_c"},
    [GB_SHOW_SPEED] = {show_speed, "_m_s"},
    [GB_SHOW_SHARE] = {show_share, "_share"},
    [GB_SHOW_DURATION] = {show_duration, "_s"},
    [GB_SHOW_CLOCK] = {show_clock, "_s"},
    [GB_SHOW_MONEY] = {show_money, "_minor"},
};
_Static_assert(sizeof SHOWS / sizeof SHOWS[0] == GB_SHOWS, "a row for each kind");

void gb_show_figure(const gb_figure *figure, gb_system system, gb_text *to) {
    gb_figure plain = *figure;
    bool less =
        figure->show == GB_SHOW_MONEY ? figure->money.minor < 0 : figure->value < 0;
    if (figure->with_sign) {
        gb_text_add(to, less ? "-" : "+");
        plain.value = fabs(figure->value);
        plain.money.minor = less ? -figure->money.minor : figure->money.minor;
    }
    SHOWS[figure->show].show(&plain, system, to);
}

unsigned long gb_figure_count(const gb_figure *figure) {
    int parts = figure->show == GB_SHOW_FRACTION   ? 32
                : figure->show == GB_SHOW_QUARTERS ? 4
                                                   : 1;
    double shown = gb_round(figure->value, 1.0 / parts, figure->rounding);
    return shown > 0 ? (unsigned long)gb_round(shown, 1.0, GB_UP) : 0;
}

bool gb_figure_key(const gb_figure *figure, gb_text *to) {
    const char *unit = SHOWS[figure->show].unit;
    if (unit == NULL)
        return false;
    gb_text_add(to, figure->name);
    gb_text_add(to, unit);
    return true;
}
