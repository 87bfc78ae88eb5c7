/* Rows on gauging, shared by the batch sheet, the takeoff and the answer on one mix. */
#ifndef WRITE_GAUGE_ROWS_H
#define WRITE_GAUGE_ROWS_H

#include "write/model.h"

/* Which mix it is and, of the user's own, where it stands and what it takes from others.
 */
void gb_add_mix_id(gb_builder *b, const gb_mix *mix);

/* "1 bag", "2-5/8 bags". */
gb_figure gb_bags_fig(gb_builder *b, const char *name, double bags);

/* What parts are gauged with: so large a measure, and sand as it lies. */
typedef struct gb_measure {
    gb_gauge_by by;
    gb_volume one;
    gb_lying lying;
} gb_measure;
gb_measure gb_measure_of(const gb_job *job);

/* The parts of `bags` bags of a site mix: the binder in whole bags or weighed, the rest
   in level measures, or weighed where those are too coarse. */
gb_figure gb_parts_fig(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                       double bags, const gb_measure *measure);

/* The parts of a pot of `bags` bags, all weighed; sand as it lies. */
gb_figure gb_pot_parts_fig(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                           double bags, gb_lying lying);

/* How much of each sand `bags` bags take in the usual states. */
void gb_add_sand_states(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                        double bags, const gb_measure *measure);

/* What is added to so many bags of a blend; and which of the water is another liquid. */
void gb_add_with(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe, double bags);
void gb_add_replaced(gb_builder *b, const gb_mix *mix);

/* What holds for colours and for admixtures, if the mix has any. */
void gb_add_addition_notes(gb_builder *b, const gb_mix *mix);

/* What a batch of `bags` bags makes, and by which route its yield was found. */
void gb_add_makes(gb_builder *b, const gb_recipe *recipe, double bags);

/* By which route a yield was found, and what governed it. */
gb_row gb_route_row(gb_builder *b, const gb_recipe *recipe);

/* The water table: per bag, and per batch of `bags` when that is another amount. A site
   mix has a row for every state of the sand, today's marked (NaN: none is). */
void gb_add_water(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe, double bags,
                  gb_share today);

/* The same rows for one more amount, below the parts that they belong to. */
void gb_add_water_below(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                        double bags, gb_share today);

/* Least, usual and never past of one bag, the sand's own water counted in. */
void gb_add_water_in_all(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe);

/* "damp 5 %", as the figure "state". */
gb_figure gb_state_fig(gb_builder *b, gb_share moisture);

/* How sure the bags, or the pots, of a need are. */
/* What it takes to be so sure (0: not asked), and what each whole bag more buys of it. */
void gb_add_sureness(gb_builder *b, const gb_need *need, gb_share sure);

void gb_add_need_spread(gb_builder *b, const gb_mix_plan *p);

/* The cautions that were raised, by a slurry or any other mix: what triggered each, and
   what to do. */
void gb_add_cautions(gb_builder *b, const gb_cautions *cautions, gb_stuff stuff);

/* Order, mixing time, check, what to do at the limit and beyond. */
void gb_add_mixing(gb_builder *b, const gb_mix *mix, bool by_hand, bool hot_water);
void gb_add_holds(gb_builder *b, const gb_mix *mix);

#endif
