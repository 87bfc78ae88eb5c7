#include "gaugebox/forecast.h"

#include "gaugebox/chance.h"
#include "gaugebox/count.h"

#include <math.h>

static const double MOST_BAGS = 1e9;

static bool zero_or_more(double number) {
    return number >= 0 && isfinite(number);
}

static bool over_zero(double number) {
    return number > 0 && isfinite(number);
}

static bool are_told(const gb_progress *p) {
    for (size_t i = 0; i < p->batch_count; i++)
        if (!over_zero(p->batches[i].bags) || !zero_or_more(p->batches[i].work))
            return false;
    return zero_or_more(p->left) && over_zero(p->batch) && over_zero(p->planned_ratio) &&
           zero_or_more(p->planned_spread.of_one);
}

/* What all batches took and did. */
static gb_batch_made sum_of(const gb_progress *p) {
    gb_batch_made sum = {0, 0};
    for (size_t i = 0; i < p->batch_count; i++) {
        sum.bags += p->batches[i].bags;
        sum.work += p->batches[i].work;
    }
    return sum;
}

/* s^2 = sum (b - K w)^2 / (n - 1); Cochran, Sampling Techniques, chapter 6 (from
   memory); n >= 2. */
static double scatter(const gb_progress *p, double k) {
    double squares = 0;
    for (size_t i = 0; i < p->batch_count; i++) {
        double e = p->batches[i].bags - k * p->batches[i].work;
        squares += e * e;
    }
    return squares / ((double)p->batch_count - 1.0);
}

/* deviation^2 = (W se(K))^2 + m s^2,  se(K) = sqrt(n) s / sum w,  m = K W / bags of a
   coming batch; ratio estimate, Cochran (from memory). */
static double deviation_of(const gb_progress *p, double k, double work) {
    double s2 = scatter(p, k);
    double share = p->left / work;
    double m = k * p->left / p->batch;
    return sqrt(share * share * (double)p->batch_count * s2 + m * s2);
}

gb_status gb_make_forecast(const gb_progress *progress, gb_forecast *forecast) {
    if (!are_told(progress))
        return GB_NOT_POSITIVE;
    gb_batch_made sum = sum_of(progress);
    bool worked = sum.work > 0;
    gb_forecast f = {.ratio = worked ? sum.bags / sum.work : progress->planned_ratio};
    f.bags = f.ratio * progress->left;
    if (worked && progress->batch_count > 1) {
        f.df = progress->batch_count - 1;
        f.deviation = deviation_of(progress, f.ratio, sum.work);
    } else {
        f.deviation = progress->planned_spread.of_one * f.bags;
    }
    if (!(f.bags <= MOST_BAGS && f.deviation <= MOST_BAGS))
        return GB_OVERFLOW;
    *forecast = f;
    return GB_OK;
}

double gb_bags_at(const gb_forecast *forecast, gb_share share) {
    double t = forecast->df > 0 ? gb_t_at(share.of_one, forecast->df)
                                : gb_normal_at(share.of_one);
    double bags = forecast->bags + t * forecast->deviation;
    return bags < 0 ? 0 : bags;
}

gb_share gb_certainty(const gb_forecast *forecast, double bags) {
    if (isnan(bags))
        return (gb_share){GB_NONE};
    if (bags < 0)
        return (gb_share){0};
    if (forecast->deviation <= 0)
        return (gb_share){gb_under(bags, forecast->bags) ? 0 : 1.0};
    double t = (bags - forecast->bags) / forecast->deviation;
    return (gb_share){forecast->df > 0 ? gb_t_below(t, forecast->df)
                                       : gb_normal_below(t)};
}

/* sum (x - mean)^2: about the mean, since sums of squares about zero cancel. */
static double squares_about(const double *values, size_t count, double mean) {
    double squares = 0;
    for (size_t i = 0; i < count; i++)
        squares += (values[i] - mean) * (values[i] - mean);
    return squares;
}

gb_status gb_sample(const double *values, size_t count, double *mean, double *sd,
                    double *se) {
    double n = (double)count;
    double sum = 0;
    for (size_t i = 0; i < count; i++) {
        if (!zero_or_more(values[i]))
            return GB_NOT_POSITIVE;
        sum += values[i];
    }
    if (count == 0)
        return GB_NOT_POSITIVE;
    double squares = squares_about(values, count, sum / n);
    if (!isfinite(sum) || !isfinite(squares))
        return GB_OVERFLOW;
    *mean = sum / n;
    *sd = count > 1 ? sqrt(squares / (n - 1.0)) : GB_NONE;
    *se = *sd / sqrt(n);
    return GB_OK;
}
