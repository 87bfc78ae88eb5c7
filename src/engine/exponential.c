#include "engine/exponential.h"

static const double LN2_HIGH = 0x1.62e42fefa38p-1; /* the first 42 bits of ln 2 */
static const double LN2_LOW = 0x1.ef35793c7673p-45;
static const double SQRT2 = 0x1.6a09e667f3bcdp+0;

/* x = k ln 2 + r with |r| <= ln 2 / 2; e^r by its series, which ends below one part in
   2^56. */
double gb_exp(double x) {
    int k = (int)(x / (LN2_HIGH + LN2_LOW) + (x < 0 ? -0.5 : 0.5));
    double r = x - k * LN2_HIGH - k * LN2_LOW;
    double sum = 1.0;
    for (int n = 14; n > 0; n--)
        sum = 1.0 + sum * r / n;
    for (; k > 0; k--)
        sum *= 2.0;
    for (; k < 0; k++)
        sum /= 2.0;
    return sum;
}

/* x = m 2^k with m between 1 / sqrt 2 and sqrt 2; ln m = 2 artanh((m - 1) / (m + 1)). */
double gb_ln(double x) {
    int k = 0;
    for (; x > SQRT2; k++)
        x /= 2.0;
    for (; x < SQRT2 / 2.0; k--)
        x *= 2.0;
    double t = (x - 1.0) / (x + 1.0);
    double sum = 0;
    for (int n = 23; n > 0; n -= 2)
        sum = sum * t * t + 1.0 / n;
    return k * LN2_HIGH + (2.0 * t * sum + k * LN2_LOW);
}
