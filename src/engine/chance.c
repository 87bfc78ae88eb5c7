#include "gaugebox/chance.h"

#include "engine/exponential.h"

#include <math.h>

static const double PI = 3.14159265358979323846;
static const double ROOT_2PI = 2.50662827463100050242;

/* ---- the normal -------------------------------------------------------------------- */

/* From here on a tail is computed as such: 1/2 less the middle would leave too few
   digits of it. */
static const double NORMAL_TAIL = 2.0;

static double density(double z) {
    return gb_exp(-z * z / 2.0) / ROOT_2PI;
}

/* P(0 < Z < z) = phi(z) (z + z^3 / 3 + z^5 / (3 5) + z^7 / (3 5 7) + ...)
   Marsaglia, Evaluating the normal distribution, 2004 (from memory); 0 <= z <= 2. No term
   is negative, so that nothing cancels. */
static double normal_middle(double z) {
    double sum = 0;
    double term = z;
    for (int n = 3; sum + term > sum; n += 2) {
        sum += term;
        term *= z * z / n;
    }
    return density(z) * sum;
}

/* P(Z > z) = phi(z) / (z + 1 / (z + 2 / (z + 3 / (z + ...))))
   Abramowitz and Stegun 26.2.14 (from memory); z >= 2, where so many fractions leave
   no error that shows. */
static double normal_tail(double z) {
    enum { FRACTIONS = 100 };
    static const double FARTHEST = 37.0; /* e^x ends a little beyond */
    if (z > FARTHEST)
        return 0;
    double fraction = z;
    for (int n = FRACTIONS; n > 0; n--)
        fraction = z + n / fraction;
    return density(z) / fraction;
}

/* P(Z > z) for z >= 0. */
static double normal_over(double z) {
    return z < NORMAL_TAIL ? 0.5 - normal_middle(z) : normal_tail(z);
}

/* ---- Student's t ------------------------------------------------------------------- */

/* theta = arctan(t / sqrt(df)) by its sine and cosine. */
typedef struct angle {
    double sine, cosine;
} angle;

static angle angle_of(double t, size_t df) {
    static const double STEEP = 1e9; /* the sine is 1 to the last bit */
    double rise = t / sqrt((double)df);
    if (rise > STEEP)
        return (angle){1.0, 1.0 / rise};
    double cosine = 1.0 / sqrt(1.0 + rise * rise);
    return (angle){rise * cosine, cosine};
}

/* term + term q (n + 1) / (n + 2) + term q^2 (n + 1)(n + 3) / ((n + 2)(n + 4)) + ...
   for 0 <= q < 1. What is left behind a term is less than term q / (1 - q). */
static double series(double term, double n, double q) {
    static const double LITTLE = 1e-17;
    double sum = term;
    while (term * q > LITTLE * (1.0 - q) * sum) {
        term *= q * (n + 1.0) / (n + 2.0);
        n += 2.0;
        sum += term;
    }
    return sum;
}

/* theta = cos theta (s + 2/3 s^3 + (2 4)/(3 5) s^5 + ...), s = sin theta: Euler's series
   of the arc tangent. */
static double turned(angle a) {
    return a.cosine * series(a.sine, 1.0, a.sine * a.sine);
}

/* The share A(t|df) of t within -t and t, and its rest, t >= 0:
     df = 1   A = 2/pi theta
     df odd   A = 2/pi (theta + sin theta (cos theta + 2/3 cos^3 theta + ... +
                  (2 4 ... (df - 3)) / (1 3 ... (df - 2)) cos^(df-2) theta))
     df even  A = sin theta (1 + 1/2 cos^2 theta + (1 3)/(2 4) cos^4 theta + ... +
                  (1 3 ... (df - 3)) / (2 4 ... (df - 2)) cos^(df-2) theta)
   Abramowitz and Stegun 26.7.3 and 26.7.4 (from memory). Both are the terms f(n) below
   df of f(0) = 1, f(1) = 2/pi cos theta, f(n + 2) = f(n) cos^2 theta (n + 1) / (n + 2).
   Without an end the series come to A = 1, as those of 1 / sin theta and of pi/2 - theta,
   so that 1 - A = sin theta times the terms from df on: few digits are lost in no tail.
 */
static double t_over_by_sums(double t, size_t df) {
    static const double FAR = 2.0; /* 1 - A would leave too few digits of it */
    angle a = angle_of(t, df);
    double q = a.cosine * a.cosine;
    bool odd = df % 2 == 1;
    double term = odd ? 2.0 / PI * a.cosine : 1.0;
    double sum = 0;
    for (size_t n = df % 2; n < df; n += 2) {
        sum += term;
        term *= q * ((double)n + 1.0) / ((double)n + 2.0);
    }
    if (t > FAR || a.sine > a.cosine)
        return a.sine * series(term, (double)df, q) / 2.0;
    double within = a.sine * sum + (odd ? 2.0 / PI * turned(a) : 0);
    return (1.0 - within) / 2.0;
}

/* ln(1 + x) for x >= 0. What 1 + x loses of a small x is lost by both u's alike
   (Kahan). */
static double ln_over_one(double x) {
    double u = 1.0 + x;
    return u > 1.0 ? gb_ln(u) * (x / (u - 1.0)) : x;
}

/* The z of a standard normal beyond which lies what lies beyond t:
     z = w + (w^3 + 3 w) / b - (4 w^7 + 33 w^5 + 240 w^3 + 855 w) / (10 b^2)
     w^2 = a ln(1 + t^2 / df)    a = df - 1/2    b = 48 a^2
   Hill, Algorithm 395, 1970 (from memory); here for df over 1000, where the next
   term changes what lies beyond t = 8 by 2e-13 of it. */
static double t_over_by_normal(double t, size_t df) {
    static const double FARTHEST = 4.0; /* w is over 40 there: nothing lies beyond */
    double x = t * t / (double)df;
    if (x > FARTHEST)
        return 0;
    double a = (double)df - 0.5;
    double b = 48.0 * a * a;
    double w2 = a * ln_over_one(x);
    double w = sqrt(w2);
    double next = ((4.0 * w2 + 33.0) * w2 + 240.0) * w2 + 855.0;
    return normal_over(w + w * (w2 + 3.0) / b - w * next / (10.0 * b * b));
}

/* ---- both -------------------------------------------------------------------------- */

/* A t of no degrees of freedom stands for the normal here. */
enum { NORMAL = 0, MOST_SUMMED = 1000 };

/* P(T > t) for t >= 0. */
static double over(double t, size_t df) {
    if (df == NORMAL)
        return normal_over(t);
    return df <= MOST_SUMMED ? t_over_by_sums(t, df) : t_over_by_normal(t, df);
}

static double below(double t, size_t df) {
    if (isnan(t))
        return GB_NONE;
    return t < 0 ? over(-t, df) : 1.0 - over(t, df);
}

/* The t >= 0 beyond which lies `tail`, 0 < tail < 1/2. What lies beyond falls all the
   way, so doubling finds a t too far out, and halving the last place between. */
static double far_as(double tail, size_t df) {
    double low = 0;
    double high = 1.0;
    while (over(high, df) > tail) {
        low = high;
        high *= 2.0;
    }
    double middle = (low + high) / 2.0;
    while (low < middle && middle < high) {
        if (over(middle, df) > tail)
            low = middle;
        else
            high = middle;
        middle = (low + high) / 2.0;
    }
    return middle;
}

static double at(double share, size_t df) {
    if (!(share > 0 && share < 1.0))
        return GB_NONE;
    if (share < 0.5)
        return -far_as(share, df);
    return share > 0.5 ? far_as(1.0 - share, df) : 0;
}

double gb_normal_below(double z) {
    return below(z, NORMAL);
}

double gb_t_below(double t, size_t df) {
    return df == 0 ? GB_NONE : below(t, df);
}

double gb_normal_at(double share) {
    return at(share, NORMAL);
}

double gb_t_at(double share, size_t df) {
    return df == 0 ? GB_NONE : at(share, df);
}
