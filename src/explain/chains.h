/* The reasons of all that a plan holds, from the takeoff on. Each function gives one
   value; NULL when memory ran out. */
#ifndef EXPLAIN_CHAINS_H
#define EXPLAIN_CHAINS_H

#include "explain/why.h"

/* ---- shapes.c: sizes of one piece in plan ------------------------------------------ */

/* Of a rectangle. */
const gb_why *gb_why_length(gb_explainer *x, const gb_piece *piece);
const gb_why *gb_why_width(gb_explainer *x, const gb_piece *piece);
/* Of any shape. */
const gb_why *gb_why_area(gb_explainer *x, const gb_piece *piece);
const gb_why *gb_why_bedded(gb_explainer *x, const gb_piece *piece);
const gb_why *gb_why_front(gb_explainer *x, const gb_piece *piece);
const gb_why *gb_why_perimeter(gb_explainer *x, const gb_piece *piece);
const gb_why *gb_why_blank_length(gb_explainer *x, const gb_piece *piece);
const gb_why *gb_why_blank_width(gb_explainer *x, const gb_piece *piece);

/* ---- changes.c: one plan against another ------------------------------------------- */

/* True for the rows of a change; each figure is explained by the plan of its time. */
bool gb_is_of_change(gb_row_code row);
const gb_why *gb_why_of_change(gb_explainer *x, const gb_row *row,
                               const gb_figure *figure);

/* ---- remaining.c: a batch log, and what it leaves ---------------------------------- */

/* True for the rows of a log and of what is left. */
bool gb_is_of_log(gb_row_code row);
const gb_why *gb_why_of_log(gb_explainer *x, const gb_row *row, const gb_figure *figure);

/* ---- exposures.c: classes beside a concrete ---------------------------------------- */

bool gb_is_of_exposures(gb_row_code row);
const gb_why *gb_why_of_exposures(gb_explainer *x, const gb_row *row,
                                  const gb_figure *figure);

/* ---- ways.c: ways to one concrete side by side ------------------------------------- */

bool gb_is_of_ways(gb_row_code row);
const gb_why *gb_why_of_ways(gb_explainer *x, const gb_row *row, const gb_figure *figure);
/* What the row's way takes of its supply, as it lies and loose. */
const gb_why *gb_why_way_lying(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_way_loose(gb_explainer *x, const gb_about *about);

/* ---- steps.c: a run of steps ------------------------------------------------------- */

/* True for the rows of a run; their figures are explained by the row and its name. */
bool gb_is_of_steps(gb_row_code row);
const gb_why *gb_why_of_steps(gb_explainer *x, const gb_row *row,
                              const gb_figure *figure);
/* Of a piece that is a run. */
const gb_why *gb_why_run_count(gb_explainer *x, const gb_piece *piece);
const gb_why *gb_why_run_width(gb_explainer *x, const gb_piece *piece);
const gb_why *gb_why_of_run(gb_explainer *x, const gb_piece *piece, const char *figure);
const gb_why *gb_why_run_depth(gb_explainer *x, const gb_piece *piece);

/* ---- stones.c: the stone of the piece that the row is about ------------------------ */

const gb_why *gb_why_thickness(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_spare(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_stone_length(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_stone_width(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_stone_blank(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_cut_away(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_broken(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_ordered(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_stone_typical(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_stone_most(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_stone_lifted(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift_allowed(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift_share(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift_off(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift_capacity(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift_attachment(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift_margin(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift_rated(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift_reach(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_long_stone(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_two_lift(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_freight(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_all_freight(gb_explainer *x, const gb_about *about);

/* ---- loose.c: the layer without a mix that the row is about ------------------------ */

const gb_why *gb_why_cloth(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lap(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_loose_depth(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_loose_net(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_loose_ordered(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_loose_mass(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lift(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_lifts(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_rod(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_tube(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_tubes(gb_explainer *x, const gb_about *about);

/* ---- layers.c: depths, volumes, needs ---------------------------------------------- */

const gb_why *gb_why_count(gb_explainer *x, const gb_piece *piece);
/* The mean; of one that slopes also that in front. */
const gb_why *gb_why_depth(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_depth_in_front(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_depth_error(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_each(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_net_of(gb_explainer *x, const gb_take *take);
/* Of all layers of the row's kind. */
const gb_why *gb_why_layers_in_all(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_waste(gb_explainer *x, const gb_job *job, const char *of);
const gb_why *gb_why_net(gb_explainer *x, const gb_mix_plan *mix);
const gb_why *gb_why_need_waste(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_gross(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_spread(gb_explainer *x, const gb_about *about);

/* Of the bags that a need is: one standard deviation of them, and as a share. */
const gb_why *gb_why_bags_share(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_bags_spread(gb_explainer *x, const gb_about *about);

/* ---- spaces.c: layers that are more than an area by a depth ------------------------ */

const gb_why *gb_why_joint(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_joint_rate(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_joint_share(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_flag(gb_explainer *x, const gb_take *take, size_t side);
const gb_why *gb_why_parge(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_parged(gb_explainer *x, const gb_take *take);

/* The figures of a block wall; orders are of all pieces, with the spare. */
typedef enum gb_wall_figure {
    GB_WALL_FACE,
    GB_WALL_COURSES,
    GB_WALL_PER_COURSE,
    GB_WALL_FULL,
    GB_WALL_HALF,
    GB_ORDER_FULL,
    GB_ORDER_HALF,
    GB_WALL_SPARE,
    GB_WALL_RATE,
    GB_WALL_RATE_WASTE,
    GB_WALL_JOINT,
    GB_WALL_BEDDED,
    GB_BLOCK_LENGTH,
    GB_BLOCK_HEIGHT,
    GB_BLOCK_WIDTH
} gb_wall_figure;
const gb_why *gb_why_wall(gb_explainer *x, const gb_take *take, gb_wall_figure which);
const gb_why *gb_why_block_mortar(gb_explainer *x, const gb_take *take);

const gb_why *gb_why_cores(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_core_blocks(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_core_grout(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_core_every(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_core_spread(gb_explainer *x);

const gb_why *gb_why_form(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_form_end(gb_explainer *x, const gb_take *take, bool back);
const gb_why *gb_why_wedge_depth(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_fall(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_sloped_depth(gb_explainer *x, const gb_take *take,
                                  const gb_why *in_front);

/* The bed of one tread, from 0; the mean of all; its error; what is flagged. */
const gb_why *gb_why_level_bed(gb_explainer *x, const gb_take *take, size_t tread);
const gb_why *gb_why_level_depth(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_level_error(gb_explainer *x, const gb_take *take);
const gb_why *gb_why_level_limit(gb_explainer *x, const gb_take *take, bool most);

/* ---- recipe.c: one bag of a mix, as planned or as asked for ------------------------ */

typedef struct gb_mixed {
    const gb_job *job;        /* NULL: asked for without one */
    const gb_concrete *alone; /* proportioned without a job, with sand as it states it */
    const gb_mix *mix;        /* as the table has it */
    const gb_recipe *recipe;
    const gb_own_label *own;
} gb_mixed;
gb_mixed gb_mixed_of(const gb_about *about);

const gb_why *gb_why_bag(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_part_mass(gb_explainer *x, const gb_mixed *m, size_t part);
/* Loose volumes of a part in the proportion. */
const gb_why *gb_why_part_volume(gb_explainer *x, const gb_mixed *m, size_t part,
                                 const char *name);
const gb_why *gb_why_bulk(gb_explainer *x, const gb_material *material);
const gb_why *gb_why_pack(gb_explainer *x, const gb_job *job,
                          const gb_material *material);
const gb_why *gb_why_mix_air(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_known_strength(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_stone(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_sand(gb_explainer *x, const gb_mixed *m);
/* Cement and lime; of a bagged blend all of it. */
const gb_why *gb_why_binder(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_cement(gb_explainer *x, const gb_mixed *m);
/* All that is not water: "dry", or the "bag" of a blend. */
const gb_why *gb_why_dry(gb_explainer *x, const gb_mixed *m);
/* Water of one bag in all: the least, the usual, the most. */
const gb_why *gb_why_water(gb_explainer *x, const gb_mixed *m, gb_which_water which);
/* Mass of one bag's batch with its usual water. */
const gb_why *gb_why_wet(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_yield(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_yield_spread(gb_explainer *x, const gb_mixed *m);
/* Water to add to the amount that the row is about, with sand of its moisture. */
const gb_why *gb_why_to_add(gb_explainer *x, const gb_about *about, gb_which_water which);
/* Of the mix, as the table states them. */
const gb_why *gb_why_life(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_life_in_heat(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_mix_time(gb_explainer *x, const char *name, const gb_mixed *m,
                              const double *s);

/* ---- concrete_mix.c: a mix whose parts follow from its concrete -------------------- */

const gb_why *gb_why_proportioned_volume(gb_explainer *x, const gb_mix *mix, size_t part,
                                         const char *name);
const gb_why *gb_why_proportioned_mass(gb_explainer *x, const gb_mixed *m, size_t part);
const gb_why *gb_why_proportioned_share(gb_explainer *x, const gb_mix *mix,
                                        gb_which_water which);
const gb_why *gb_why_proportioned_air(gb_explainer *x, const gb_mix *mix);
const gb_why *gb_why_proportioned_gravity(gb_explainer *x, const gb_mix *mix,
                                          size_t part);
/* Water that the aggregate of one bag absorbs, less what its stone brings. */
const gb_why *gb_why_sand_absorption(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_stone_moisture(gb_explainer *x, const gb_mixed *m);
/* The bags that a mixer takes of it, without a job. */
const gb_why *gb_why_bags_in_mixer(gb_explainer *x, const gb_mixed *m, double mixer_m3,
                                   double bags);
/* Of the stone of a concrete, dry and loose. */
const gb_why *gb_why_loose_stone(gb_explainer *x, const gb_concrete *c, const char *name);
const gb_why *gb_why_absorbed(gb_explainer *x, const gb_mixed *m);
const gb_why *gb_why_drunk(gb_explainer *x, const gb_mixed *m);

/* ---- concrete.c: a concrete by itself ---------------------------------------------- */

/* True for the rows of its proportions and its trial. */
bool gb_is_of_concrete(gb_row_code row);
const gb_why *gb_why_of_concrete(gb_explainer *x, const gb_row *row,
                                 const gb_figure *figure);

/* ---- reference.c: one bag and one volume of a mix, to compare -----------------------
 */

const gb_why *gb_why_loose_parts(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_part_ratio(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_part_share(gb_explainer *x, const gb_about *about);
/* Of the powder whose index is the row's part. */
const gb_why *gb_why_powder_mass(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_powder_share(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_powder_in_wet(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_part_in_wet(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_blend_in_wet(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_water_in_wet(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_fresh_density(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_water_to_dry(gb_explainer *x, const gb_about *about,
                                  gb_which_water which);
const gb_why *gb_why_water_to_binder(gb_explainer *x, const gb_about *about,
                                     gb_which_water which);
const gb_why *gb_why_compared_volume(gb_explainer *x);
const gb_why *gb_why_bags_in_volume(gb_explainer *x, const gb_about *about);
/* Of the size that the row is about. */
const gb_why *gb_why_cover_depth(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_cover_width(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_cover_area(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_cover_length(gb_explainer *x, const gb_about *about);

/* ---- additions.c: pigment, admixtures, what replaces water ------------------------- */

/* Of the addition whose index is the row's part: its mass and its volume in the amount
   that the row is about; the share of the water that it replaces. */
const gb_why *gb_why_addition(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_added_volume(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_replaced_share(gb_explainer *x, const gb_about *about);
/* The mass of a powder in one bag. */
const gb_why *gb_why_powder(gb_explainer *x, const gb_mixed *m, size_t addition);
/* The usual water to add, less what is replaced. */
const gb_why *gb_why_water_used(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_share_of_kind(gb_explainer *x, const gb_about *about,
                                   gb_material_kind kind);

/* ---- gauging.c: sand as it lies, and what it is gauged with ------------------------ */

/* Today's of the job, or of a concrete by itself; else what is usual. Of `m` only whose
   it is counts. */
const gb_why *gb_why_moisture(gb_explainer *x, const gb_mixed *m, gb_share moisture);
const gb_why *gb_why_bulking(gb_explainer *x, const gb_mixed *m, gb_share moisture);
/* Dry mass in a volume as it lies loose. */
const gb_why *gb_why_loose_density(gb_explainer *x, const gb_mixed *m,
                                   const gb_material *material, gb_share moisture);
/* Of the part and the amount that the row is about: dry, as it lies, its loose volume, in
   measures, and how far off their rounding is. */
const gb_why *gb_why_part(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_part_lying(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_loose(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_measures(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_off(gb_explainer *x, const gb_about *about);
/* The volume of one measure, and what it holds of the part. */
const gb_why *gb_why_measure(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_in_measure(gb_explainer *x, const gb_about *about);
/* The heaviest bucket with its pail; how the counts of a shovel differ. */
const gb_why *gb_why_lifted(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_shovel_spread(gb_explainer *x, const gb_job *job);

/* ---- paces.c: how long it takes to place ------------------------------------------- */

const gb_why *gb_why_area_pace(gb_explainer *x, const gb_job *job, gb_layer_kind kind);
const gb_why *gb_why_wet_mixing(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_bag_time(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_batch_time(gb_explainer *x, const gb_about *about, size_t batch);
const gb_why *gb_why_time_to_place(gb_explainer *x, const gb_about *about);

/* ---- days.c: the days of a plan, their labour and water ---------------------------- */

const gb_why *gb_why_day_start(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_day_finish(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_mixing_time(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_potting_time(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_cleaning_time(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_day_last(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_break_begin(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_break_end(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_load_begin(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_load_in(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_load_day(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_load_dead(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_covering(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_load_end(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_extra_bags(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_smaller_bags(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_smaller_usable(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_load_cut(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_wait_least(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_wait_day(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_wait_clock(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_hands(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_labour_mixing(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_labour_potting(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_labour_carrying(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_labour_setting(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_cleanings(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_labour_cleaning(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_people(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_days_worked(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_slab_area(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_wet_time(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_water_mixing(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_water_cleaning(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_water_rinsing(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_water_curing(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_water_of_site(gb_explainer *x, const gb_about *about);

/* ---- batches.c: how many, how large, what they cover ------------------------------- */

/* Bags of the amount that a row is about. */
const gb_why *gb_why_bags(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_bags_surely(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_bought(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_bags_needed(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_whole_bags(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_most(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_next(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_usable(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_mass_limit(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_batches(gb_explainer *x, const gb_about *about);
/* Bags of one batch; where it begins and ends in a layer. */
const gb_why *gb_why_batch_bags(gb_explainer *x, const gb_about *about, size_t batch);
const gb_why *gb_why_start_of(gb_explainer *x, const gb_about *about, size_t batch,
                              const gb_stretch *stretch);
const gb_why *gb_why_end_of(gb_explainer *x, const gb_about *about, size_t batch,
                            const gb_stretch *stretch);
/* Ends of the stretch that the row is about, in pieces of its layer. */
const gb_why *gb_why_from(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_to(gb_explainer *x, const gb_about *about);

typedef enum gb_check_value {
    GB_CHECK_PIECES,
    GB_CHECK_LEFT,
    GB_CHECK_FEWER,
    GB_CHECK_DEPTH,
    GB_CHECK_GROSS,
    GB_CHECK_BAGS
} gb_check_value;
const gb_why *gb_why_first_check(gb_explainer *x, const gb_about *about,
                                 gb_check_value which);

/* ---- pots.c ------------------------------------------------------------------------ */

const gb_why *gb_why_pot_pieces(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_pot_area(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_pot_bags(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_pot_count(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_pot_time(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_scored_area(gb_explainer *x, const gb_about *about);
/* What a scored back takes. */
const gb_why *gb_why_scored(gb_explainer *x);

/* ---- supplies.c: materials, what to buy, and its price ----------------------------- */

/* Of the material or blend that a row is about: with waste and dry, and as it lies. */
const gb_why *gb_why_supply_mass(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_supply_packs(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_supply_lying(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_supply_loose(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_supply_pack(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_total_water(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_packs(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_pack_sold(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_price(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_cost(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_left(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_goods(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_tax_rate(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_tax(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_delivery(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_total(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_missing(gb_explainer *x, const gb_about *about);

/* ---- claims.c: what a mix claims to be ----------------------------------------------
 */

/* The ratio that a row on one limit of a claim is about, and an end of that limit. */
const gb_why *gb_why_claim_ratio(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_claim_end(gb_explainer *x, const gb_about *about, bool most);
/* The ratio that a caution is about. */
const gb_why *gb_why_ratio_of_caution(gb_explainer *x, const gb_about *about);

/* ---- exposures.c: cautions of exposed concrete --------------------------------------
 */

const gb_why *gb_why_exposed_value(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_exposed_limit(gb_explainer *x, const gb_about *about);

/* ---- cautions.c: weather, limits --------------------------------------------------- */

const gb_why *gb_why_caution_value(gb_explainer *x, const gb_about *about);
const gb_why *gb_why_caution_limit(gb_explainer *x, const gb_about *about);

/* How warm a batch comes out. */
const gb_why *gb_why_mixed(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_stated_water(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_mix_or_wanted(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_least_mix(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_most_mix(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_reached(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_wanted(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_water_for(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_hottest_water(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_sand_for(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_ice(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_ice_share(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_cement_at(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_sand_at(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_water_at(gb_explainer *x, const gb_about *a);
/* The limit that stands in a row of them. */
const gb_why *gb_why_warm_limit(gb_explainer *x, const gb_about *a, gb_row_code row);

/* The weather: of one hour, and of a span of them. */
const gb_why *gb_why_air_at(gb_explainer *x, const gb_job *job, gb_hour hour);
const gb_why *gb_why_wind_at(gb_explainer *x, const gb_job *job, gb_hour hour);
const gb_why *gb_why_drying(gb_explainer *x, const gb_about *a);
const gb_why *gb_why_least_air(gb_explainer *x, const gb_job *job, gb_span span);
const gb_why *gb_why_most_air(gb_explainer *x, const gb_job *job, gb_span span);
const gb_why *gb_why_mean_daily(gb_explainer *x, const gb_job *job);
const gb_why *gb_why_most_wind(gb_explainer *x, const gb_job *job);

#endif
