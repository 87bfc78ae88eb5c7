/* The same concrete by other ways: proportioned, by tables of small jobs, by nominal
   mixes, from bags, or ready-mixed; what each takes, weighs and costs. */
#ifndef GAUGEBOX_WAYS_H
#define GAUGEBOX_WAYS_H

#include "gaugebox/buy.h"

/* What is to be made, and with what. */
typedef struct gb_ways_question {
    gb_volume net;
    gb_share waste;
    gb_volume mixer;           /* what it takes of wet mix */
    gb_share moisture;         /* of the sand */
    gb_system system;          /* bags, and the step that ready-mixed is ordered in */
    const gb_price_book *book; /* NULL: no prices */
    const gb_material *ready;  /* ready-mixed concrete, for its price and weight */
} gb_ways_question;

typedef struct gb_way {
    const gb_mix *mix; /* NULL: ready-mixed */
    gb_recipe recipe;
    gb_volume gross;
    double bags;
    size_t whole;        /* bags to have at hand */
    double bags_a_batch; /* 0: the mixer takes less than an eighth of a bag */
    size_t batches;      /* 0 of ready-mixed, and where the mixer is too small */
    gb_duration mixing;
    gb_mass carried;   /* to the mixer, water with it; 0 of ready-mixed */
    gb_volume ordered; /* ready-mixed; NaN of all else */
    const gb_supply_need *needs;
    size_t need_count;
    bool priced; /* every part of it is sold */
    gb_buy_list list;
} gb_way;

/* The most bags of one batch, as a job's batches are sized (gb_batch_step); 0 when not
   even an eighth of a bag fits. */
double gb_bags_in_mixer(const gb_recipe *recipe, gb_volume mixer);

/* Ready-mixed is ordered in steps of 1/4 yd3 or 0.25 m3, and below 3 yd3 or 2.5 m3 most
   plants charge a short load: common practice. */
gb_volume gb_ready_step(gb_system system);
gb_volume gb_short_load(gb_system system);

/* What a way is short of, held against the air and the strength of the mix that is asked
   for; ready-mixed has what is ordered. */
typedef enum gb_short {
    GB_SHORT_OF_NOTHING,
    GB_SHORT_OF_AIR,
    GB_SHORT_OF_STRENGTH,
    GB_SHORT_OF_BOTH,
    GB_SHORT_OF_AIR_NOT_KNOWN, /* of air, and its strength is not known */
    GB_SHORT_NOT_KNOWN,
    GB_SHORTS
} gb_short;
gb_short gb_way_is_short(const gb_way *way, const gb_mix *asked);

/* True for a mix of the table that stands beside the one that is asked for: for slabs,
   with stone or by the bag, with no other size of stone, in bags of whole pounds or whole
   kilograms as the sheet has them, and not proportioned itself. */
bool gb_is_way(const gb_mix *mix, const gb_mix *asked, gb_system system);

/* One way: of a mix, or of ready-mixed concrete when `mix` is NULL. Batches take the
   usual time each (gb_mixing_time). GB_NO_MEMORY, and as gb_make_recipe and gb_buy. */
gb_status gb_make_way(const gb_mix *mix, const gb_ways_question *q, gb_arena *arena,
                      gb_way *way) GB_MUST_USE;

#endif
