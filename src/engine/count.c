#include "gaugebox/count.h"

#include <math.h>

static const double MOST_UNITS = 1e9;

/* A quotient within GB_SAME of a whole number is that number. */
static double snap(double quotient) {
    double whole = round(quotient);
    double slack = GB_SAME * gb_larger(1.0, fabs(quotient));
    return fabs(quotient - whole) <= slack ? whole : quotient;
}

static gb_status quotient_of(double amount, double each, double *quotient) {
    if (!isfinite(amount) || !isfinite(each) || amount < 0 || each <= 0)
        return GB_NOT_POSITIVE;
    double q = snap(amount / each);
    if (!(q <= MOST_UNITS))
        return GB_OVERFLOW;
    *quotient = q;
    return GB_OK;
}

gb_status gb_count_up(double need, double each, size_t *count) {
    double q = 0;
    gb_status status = quotient_of(need, each, &q);
    if (status == GB_OK)
        *count = need > 0 && q < 1.0 ? 1 : (size_t)ceil(q);
    return status;
}

gb_status gb_count_down(double room, double each, size_t *count) {
    double q = 0;
    gb_status status = quotient_of(room, each, &q);
    if (status == GB_OK)
        *count = (size_t)floor(q);
    return status;
}

bool gb_over(double value, double limit) {
    if (!isfinite(limit))
        return value > limit;
    return value - limit > GB_SAME * gb_larger(1.0, fabs(limit));
}

bool gb_under(double value, double limit) {
    if (!isfinite(limit))
        return value < limit;
    return limit - value > GB_SAME * gb_larger(1.0, fabs(limit));
}

double gb_larger(double a, double b) {
    return a > b || isnan(b) ? a : b;
}

double gb_smaller(double a, double b) {
    return a < b || isnan(b) ? a : b;
}

double gb_round(double value, double step, gb_rounding rounding) {
    double q = snap(value / step);
    if (rounding == GB_DOWN)
        q = floor(q);
    else if (rounding == GB_UP)
        q = ceil(q);
    else
        q = round(q);
    return q * step;
}
