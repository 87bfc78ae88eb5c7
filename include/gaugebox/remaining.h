/* What a batch log says of a plan: what is set, what it took, and what is left to buy. */
#ifndef GAUGEBOX_REMAINING_H
#define GAUGEBOX_REMAINING_H

#include "gaugebox/forecast.h"
#include "gaugebox/log.h"
#include "gaugebox/plan.h"

/* One layer: how many of its pieces are set, and what is left. */
typedef struct gb_take_left {
    const gb_take *take;
    double done; /* pieces; at most take->units */
    double left;
    gb_volume net; /* of what is left */
} gb_take_left;

/* A point in the order of the work. */
typedef struct gb_reach {
    const gb_take *take; /* NULL: all of it is reached */
    double pieces;       /* of that take, those that are set already counted in */
} gb_reach;

/* What is asked beside the log. */
typedef struct gb_stock {
    const gb_mix *mix; /* NULL: of the only one */
    double bags;       /* on hand */
} gb_stock;
typedef struct gb_outlook {
    gb_share sure;
    double lead_days; /* from ordering to the site */
    const gb_stock *stocks;
    size_t stock_count;
} gb_outlook;

typedef struct gb_mix_left {
    const gb_mix_plan *mix;
    size_t batches;    /* in the log */
    size_t unfinished; /* of those, the ones that do not say what they set: not counted */
    double bags;       /* that the others took */
    double thrown;     /* of these */
    double work;       /* that they did: bags as the plan counts them, without waste */
    /* Depths as measured; NaN where there are none. */
    size_t depth_count;
    double depth_m, depth_sd_m, depth_se_m;
    gb_area set_area;   /* of beds that were set */
    gb_length planned;  /* depth of these, their mean by area */
    gb_length in_place; /* depth, if the bags that were not thrown away made what the plan
                           says; NaN without a bed that was set */
    gb_volume yield;    /* of a bag, by the measured depths; NaN without them */
    const gb_take_left *takes;
    size_t take_count;
    double left; /* work, in bags as the plan counts them */
    gb_forecast forecast;
    bool by_plan;          /* its spread is the plan's: too few batches, or no scatter */
    double batch_bags;     /* of a batch to come */
    double bags_sure;      /* enough with the chance that was asked for */
    double on_hand;        /* NaN: not said */
    gb_reach best, surely; /* how far the bags on hand reach */
    double bags_a_day;     /* so far; NaN without a batch */
    double order_at; /* order when so many bags are left: what the lead time takes */
    double order;    /* so many more for that chance; 0: none */
} gb_mix_left;

typedef struct gb_remaining {
    const gb_plan *plan;
    const gb_log *log;
    const gb_outlook *outlook;
    const gb_mix_left *mixes;
    size_t mix_count;
} gb_remaining;

/* Bags as the plan counts them, without waste, for so many pieces of a take. */
double gb_work_of_pieces(const gb_mix_plan *mix, const gb_take *take, double pieces);

/* GB_NOT_POSITIVE when a number of the log or of the outlook is none that counts;
   GB_OVERFLOW; GB_NO_MEMORY. */
gb_status gb_find_remaining(const gb_plan *plan, const gb_log *log,
                            const gb_outlook *outlook, gb_arena *arena,
                            gb_remaining *remaining) GB_MUST_USE;

#endif
