/* How many bags will finish a work, by the batches made so far; and what a few
   measurements say of their mean. Bags are counted in bags, whole or not. */
#ifndef GAUGEBOX_FORECAST_H
#define GAUGEBOX_FORECAST_H

#include "gaugebox/quantity.h"

/* One batch as it was made. */
typedef struct gb_batch_made {
    double bags; /* that it took, those of mortar thrown away counted in; over zero */
    double work; /* that it did: the bags that the plan counts for it, without waste; zero
                    for a batch that was thrown away */
} gb_batch_made;

/* A work so far. */
typedef struct gb_progress {
    const gb_batch_made *batches;
    size_t batch_count;
    double left;  /* work that is left, as the plan counts it; zero or more */
    double batch; /* bags of one coming batch; over zero */
    /* Of the plan, for what the batches do not tell: */
    double planned_ratio;    /* bags taken for one that the plan counts: 1 + waste */
    gb_share planned_spread; /* standard deviation of the bags, as a part of them */
} gb_progress;

/* The bags that the rest of a work takes. */
typedef struct gb_forecast {
    double ratio;     /* K: bags taken for one that the plan counts */
    double bags;      /* on average */
    double deviation; /* standard deviation of these */
    size_t df;        /* degrees of freedom of Student's t; 0: a normal, by the plan */
} gb_forecast;

/* Of n batches that took b bags for the work w:
     K = sum b / sum w            e = b - K w        s^2 = sum e^2 / (n - 1)
     se(K) = sqrt(n) s / sum w
     bags = K W                   for the work W that is left
     deviation^2 = (W se(K))^2 + m s^2,   m = K W / (bags of a coming batch), df = n - 1
   The first part is what is not known of K, the second the scatter of the batches to
   come, which are taken to be about as large as those before. Ratio estimate: Cochran,
   Sampling Techniques, 3rd edition, chapter 6 (from memory), without a correction for a
   finite population.
   One batch tells K and no scatter; none, or none that did work, tells neither. Then the
   planned ratio, the planned spread and df 0 stand in. Batches that agree to the last bit
   tell a scatter of zero, and are believed.
   GB_NOT_POSITIVE when a number is not as said above, NaN or infinite, used or not;
   GB_OVERFLOW over 1e9 bags. */
gb_status gb_make_forecast(const gb_progress *progress,
                           gb_forecast *forecast) GB_MUST_USE;

/* Bags that are enough with that chance, not rounded and never below zero:
     bags + t(share, df) deviation
   NaN unless 0 < share < 1. */
double gb_bags_at(const gb_forecast *forecast, gb_share share);

/* The chance that so many bags are enough; 0 or 1 where there is no deviation, 0 below
   zero bags. NaN for bags that are NaN. */
gb_share gb_certainty(const gb_forecast *forecast, double bags);

/* Mean of n measurements, their standard deviation, and the standard error of the mean:
     sd^2 = sum (x - mean)^2 / (n - 1)      se = sd / sqrt(n)
   Both NaN for a single one. In the unit of the measurements, which are zero or more.
   GB_NOT_POSITIVE without any, or when one is below zero, NaN or infinite; GB_OVERFLOW
   when their squares are beyond all numbers. */
gb_status gb_sample(const double *values, size_t count, double *mean, double *sd,
                    double *se) GB_MUST_USE;

#endif
