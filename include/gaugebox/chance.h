/* Chances: how much of a standard normal or of Student's t lies below a value, and the
   value below which a share of it lies. Values are in standard deviations, shares of one;
   no other unit. NaN gives NaN everywhere. */
#ifndef GAUGEBOX_CHANCE_H
#define GAUGEBOX_CHANCE_H

#include "gaugebox/base.h"

/* The share of a standard normal that lies below z; 0 and 1 at the infinities. Within
   1e-15, and within 2e-14 of itself for z from -8 on; 0 below -37, where it is under
   1e-299.
   Source: Marsaglia, Evaluating the normal distribution, Journal of Statistical Software
   11(4), 2004, near the middle; Abramowitz and Stegun, Handbook of Mathematical
   Functions, 26.2.14, in the tails (both from memory). */
double gb_normal_below(double z);

/* The same of Student's t with df degrees of freedom, df >= 1; NaN for df 0. Within
   2e-14, and within 2e-12 of itself for t from -8 on.
   Source: Abramowitz and Stegun, 26.7.3 and 26.7.4, up to 1000 degrees; beyond, Hill,
   Algorithm 395, Communications of the ACM 13(10), 1970 (both from memory). */
double gb_t_below(double t, size_t df);

/* The value below which that share lies, over 0 and under 1; NaN for any other share.
   The value of 1 - share is that of share with the other sign. */
double gb_normal_at(double share);
double gb_t_at(double share, size_t df);

#endif
