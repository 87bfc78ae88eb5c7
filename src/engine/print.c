#include "gaugebox/quantity.h"

#include "gaugebox/count.h"

#include <math.h>

static const double INCH_M = 0.0254;

static void print_us_length(gb_text *to, double m) {
    double inches = m / INCH_M;
    int parts = inches < 1.0 / 8.0 ? 64 : 16;
    double rounded = gb_round(inches, 1.0 / parts, GB_NEAREST);
    /* Below two feet a mason says inches: a tread is 14 in deep. */
    double feet = rounded < 24.0 ? 0 : floor(rounded / 12.0);
    double rest = rounded - 12.0 * feet;
    if (feet > 0) {
        gb_text_add_int(to, (int64_t)feet);
        gb_text_add(to, " ft");
    }
    if (feet > 0 && rest > 0)
        gb_text_add(to, " ");
    if (feet <= 0 || rest > 0) {
        gb_text_add_fraction(to, rest, parts);
        gb_text_add(to, " in");
    }
}

void gb_print_length(gb_text *to, gb_length length, gb_system system) {
    if (!(fabs(length.m) < 1e9)) {
        gb_text_add(to, "?");
        return;
    }
    double m = fabs(length.m);
    double mm = m * 1000.0;
    bool zero = system == GB_US ? m < INCH_M / 128.0 : mm < 0.05;
    if (length.m < 0 && !zero)
        gb_text_add(to, "-");
    if (system == GB_US) {
        print_us_length(to, m);
        return;
    }
    bool whole = mm >= 99.95 || fabs(gb_round(mm, 0.1, GB_NEAREST) - round(mm)) < 0.05;
    gb_text_add_fixed(to, mm, whole ? 0 : 1);
    gb_text_add(to, " mm");
}

void gb_print_temp(gb_text *to, gb_temp temp, gb_system system) {
    double shown = system == GB_US ? temp.c * 9.0 / 5.0 + 32.0 : temp.c;
    bool whole = fabs(shown - round(shown)) < 0.05 + GB_SAME;
    gb_text_add_fixed(to, shown, whole ? 0 : 1);
    gb_text_add(to, system == GB_US ? " F" : " C");
}

static const int64_t DAY_MIN = 1440;
static const int64_t THREE_DAYS_MIN = 4320;

static const double LONGEST_S = 1e9;

int64_t gb_whole_days(gb_duration duration) {
    if (!(duration.s >= 0 && duration.s < LONGEST_S))
        return 0;
    int64_t minutes = llround(duration.s / 60.0);
    return minutes > THREE_DAYS_MIN && minutes % DAY_MIN == 0 ? minutes / DAY_MIN : 0;
}

void gb_print_duration(gb_text *to, gb_duration duration) {
    double s = duration.s;
    if (!(s >= 0 && s < LONGEST_S)) {
        gb_text_add(to, "?");
        return;
    }
    int64_t minutes = llround(s / 60.0);
    if (llround(s) < 60) {
        gb_text_add_fixed(to, s, 0);
        gb_text_add(to, " s");
    } else if (gb_whole_days(duration) > 0) {
        gb_text_add_int(to, gb_whole_days(duration));
        gb_text_add(to, " days");
    } else if (minutes < 60) {
        gb_text_add_int(to, minutes);
        gb_text_add(to, " min");
    } else if (minutes % 60 == 0) {
        gb_text_add_int(to, minutes / 60);
        gb_text_add(to, " h");
    } else {
        gb_text_add_int(to, minutes / 60);
        gb_text_add(to, "h");
        gb_text_add_int(to, minutes % 60);
        gb_text_add(to, "m");
    }
}

void gb_print_money(gb_text *to, gb_money money, int decimals) {
    static const uint64_t POWERS[] = {1, 10, 100, 1000};
    uint64_t minor = (uint64_t)money.minor;
    uint64_t size = money.minor < 0 ? 0 - minor : minor;
    if (money.minor < 0)
        gb_text_add(to, "-");
    gb_text_add_int(to, (int64_t)(size / POWERS[decimals]));
    if (decimals == 0)
        return;
    gb_text_add(to, ".");
    for (int i = decimals - 1; i >= 0; i--)
        gb_text_add_char(to, (char)('0' + size / POWERS[i] % 10));
}
