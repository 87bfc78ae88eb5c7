#include "write/figures.h"

#include "gaugebox/count.h"

#include <math.h>

static const double WATER_DENSITY = 1000.0;

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

static void show_volume(gb_text *to, double m3, gb_system system, bool fine) {
    if (system == GB_METRIC && m3 < 0.1)
        add(to, m3 * 1000.0, m3 < 0.01 ? 2 : 1, " L");
    else if (system == GB_METRIC)
        add(to, m3, 3, " m3");
    else {
        double ft3 = in_unit(GB_VOLUME, "ft3", m3);
        add(to, ft3, fine || ft3 < 1.0 ? 3 : 2, " ft3");
    }
}

static void show_bulk(gb_text *to, double m3, gb_system system) {
    if (system == GB_METRIC)
        add(to, gb_round(m3, 0.05, GB_UP), 2, " m3");
    else
        add_parts(to, in_unit(GB_VOLUME, "yd3", m3), 4, GB_UP, " yd3");
}

static void show_gauged(gb_text *to, double m3, gb_system system) {
    double ft3 = in_unit(GB_VOLUME, "ft3", m3);
    double quarters = gb_round(ft3, 0.25, GB_NEAREST);
    if (system == GB_METRIC)
        add(to, m3 * 1000.0, gb_under(m3, 0.1) ? 1 : 0, " L");
    else if (fabs(ft3 - quarters) < 0.005)
        add_parts(to, ft3, 4, GB_NEAREST, " ft3");
    else
        add(to, ft3, 2, " ft3");
}

/* Water figures come as masses: 1 kg is 1 L. */
static void show_water(gb_text *to, const gb_figure *f, gb_system system) {
    double m3 = f->value / WATER_DENSITY;
    double litres = m3 * 1000.0;
    bool cell = f->show == GB_SHOW_WATER_CELL;
    if (system == GB_METRIC) {
        add(to, gb_round(litres, 0.1, f->rounding), 1, cell ? "" : " L");
        return;
    }
    /* The litres beside are those of the half quarts shown, so that both pour alike. */
    double quarts = gb_round(in_unit(GB_VOLUME, "qt", m3), 0.5, f->rounding);
    add_parts(to, quarts, 2, GB_NEAREST, cell ? " (" : " qt (");
    double shown = gb_from_unit(gb_find_unit(GB_VOLUME, "qt"), quarts);
    add(to, shown * 1000.0, 1, cell ? ")" : " L)");
}

static void show_pot_water(gb_text *to, const gb_figure *f, gb_system system) {
    double m3 = f->value / WATER_DENSITY;
    if (system == GB_METRIC) {
        add(to, gb_round(m3 * 1000.0, 0.01, f->rounding), 2, " L");
        return;
    }
    double ounces = gb_round(in_unit(GB_VOLUME, "fl oz", m3), 1.0, f->rounding);
    double shown = gb_from_unit(gb_find_unit(GB_VOLUME, "fl oz"), ounces);
    add(to, ounces, 0, " fl oz");
    gb_text_add(to, " = ");
    add(to, ounces / 32.0, 2, " qt (");
    add(to, shown * 1000.0, 2, " L)");
}

static void show_mass(gb_text *to, double kg, gb_system system) {
    double value = system == GB_US ? in_unit(GB_MASS, "lb", kg) : kg;
    double whole = round(value);
    bool fine = value < 99.95 && fabs(value - whole) > 0.005;
    bool decimal = system == GB_US ? fine && value < 19.95 : fine;
    add(to, value, decimal ? 1 : 0, system == GB_US ? " lb" : " kg");
}

static void show_clock(gb_text *to, double seconds) {
    int64_t minutes = llround(seconds / 60.0);
    gb_text_add_int(to, minutes / 60 / 10);
    gb_text_add_int(to, minutes / 60 % 10);
    gb_text_add(to, ":");
    gb_text_add_int(to, minutes % 60 / 10);
    gb_text_add_int(to, minutes % 60 % 10);
}

static void show_share(gb_text *to, double share) {
    double percent = share * 100.0;
    add(to, percent, fabs(percent - round(percent)) > 0.005 ? 1 : 0, " %");
}

static void show_number(const gb_figure *f, gb_text *to) {
    switch (f->show) {
    case GB_SHOW_COUNT:
        gb_text_add_fixed(to, f->value, 0);
        break;
    case GB_SHOW_EIGHTHS:
        add_parts(to, f->value, 8, f->rounding, "");
        break;
    case GB_SHOW_QUARTERS:
        add_parts(to, f->value, 4, f->rounding, "");
        break;
    case GB_SHOW_SHARE:
        show_share(to, f->value);
        break;
    case GB_SHOW_CLOCK:
        show_clock(to, f->value);
        break;
    case GB_SHOW_DURATION:
        gb_print_duration(to, (gb_duration){f->value});
        break;
    default:
        add(to, f->value, 2, "");
        break;
    }
}

static void show_area(const gb_figure *f, gb_system system, gb_text *to) {
    if (system == GB_METRIC)
        add(to, f->value, 2, " m2");
    else if (f->show == GB_SHOW_AREA_HALF)
        add_parts(to, in_unit(GB_AREA, "ft2", f->value), 2, f->rounding, " ft2");
    else
        add(to, in_unit(GB_AREA, "ft2", f->value), 2, " ft2");
}

static void show_air(const gb_figure *f, gb_system system, gb_text *to) {
    bool us = system == GB_US;
    if (f->show == GB_SHOW_TEMP)
        gb_print_temp(to, (gb_temp){f->value}, system);
    else if (f->show == GB_SHOW_SPEED)
        add(to, in_unit(GB_SPEED, us ? "mph" : "km/h", f->value), 0, us ? " mph" : " km/h");
    else
        add(to, us ? in_unit(GB_DENSITY, "lb/ft3", f->value) : f->value, us ? 1 : 0,
            us ? " lb/ft3" : " kg/m3");
}

void gb_show_figure(const gb_figure *f, gb_system system, gb_text *to) {
    switch (f->show) {
    case GB_SHOW_TEXT:
        gb_text_add(to, f->text == NULL ? "" : f->text);
        return;
    case GB_SHOW_LENGTH:
        gb_print_length(to, (gb_length){f->value}, system);
        return;
    case GB_SHOW_AREA:
    case GB_SHOW_AREA_HALF:
        show_area(f, system, to);
        return;
    case GB_SHOW_VOLUME:
    case GB_SHOW_VOLUME_FINE:
        show_volume(to, f->value, system, f->show == GB_SHOW_VOLUME_FINE);
        return;
    case GB_SHOW_BULK:
        show_bulk(to, f->value, system);
        return;
    case GB_SHOW_GAUGED:
        show_gauged(to, f->value, system);
        return;
    case GB_SHOW_WATER:
    case GB_SHOW_WATER_CELL:
        show_water(to, f, system);
        return;
    case GB_SHOW_WATER_UNITS:
        gb_text_add(to, system == GB_US ? "qt (L)" : "L");
        return;
    case GB_SHOW_POT_WATER:
        show_pot_water(to, f, system);
        return;
    case GB_SHOW_MASS:
        show_mass(to, f->value, system);
        return;
    case GB_SHOW_TEMP:
    case GB_SHOW_SPEED:
    case GB_SHOW_DENSITY:
        show_air(f, system, to);
        return;
    case GB_SHOW_MONEY:
        gb_print_money(to, f->money, f->decimals);
        return;
    default:
        show_number(f, to);
        return;
    }
}
