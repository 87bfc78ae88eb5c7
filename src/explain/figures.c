#include "explain/figures.h"

#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

typedef const gb_why *reason(gb_explainer *x, const gb_about *a);

/* ---- pieces and layers ------------------------------------------------------------- */

static const gb_why *length(gb_explainer *x, const gb_about *a) {
    return gb_why_length(x, a->piece);
}
static const gb_why *width(gb_explainer *x, const gb_about *a) {
    return gb_why_width(x, a->piece);
}
static const gb_why *count(gb_explainer *x, const gb_about *a) {
    return gb_why_count(x, a->piece);
}
static const gb_why *area(gb_explainer *x, const gb_about *a) {
    return gb_why_area(x, a->piece);
}
static const gb_why *area_of_all(gb_explainer *x, const gb_about *a) {
    const gb_piece *p = a->piece;
    const gb_why *each = gb_why_area(x, p);
    if (each == NULL)
        return NULL;
    return GB_WHY(x, "area_of_all", GB_AREA, each->value * (double)p->count,
                  "count * area", GB_INPUTS(gb_why_count(x, p), each), .of = p->name);
}
static const gb_why *bedded_of_all(gb_explainer *x, const gb_about *a) {
    const gb_piece *p = a->piece;
    const gb_why *bedded = gb_why_bedded(x, p);
    if (bedded == NULL)
        return NULL;
    return GB_WHY(x, "bedded_of_all", GB_AREA, bedded->value * (double)p->count,
                  "count * bedded", GB_INPUTS(gb_why_count(x, p), bedded), .of = p->name);
}
static const gb_why *edge_front(gb_explainer *x, const gb_about *a) {
    return gb_why_front(x, a->piece);
}
static const gb_why *perimeter(gb_explainer *x, const gb_about *a) {
    return gb_why_perimeter(x, a->piece);
}
static const gb_why *blank_length(gb_explainer *x, const gb_about *a) {
    return gb_why_blank_length(x, a->piece);
}
static const gb_why *blank_width(gb_explainer *x, const gb_about *a) {
    return gb_why_blank_width(x, a->piece);
}
static const gb_why *bedded(gb_explainer *x, const gb_about *a) {
    return gb_why_bedded(x, a->piece);
}
static const gb_why *front(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "overhang_front", a->piece->name, GB_LENGTH,
                     &a->piece->overhang_front.m, NULL);
}
static const gb_why *side(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "overhang_side", a->piece->name, GB_LENGTH,
                     &a->piece->overhang_side.m, NULL);
}
static const gb_why *joint_length(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "joint_length", a->piece->name, GB_LENGTH,
                     &a->take->layer->joint_length.m, NULL);
}
static const gb_why *joint_width(gb_explainer *x, const gb_about *a) {
    return gb_stated(x, "joint_width", a->piece->name, GB_LENGTH,
                     &a->take->layer->joint_width.m, NULL);
}
static const gb_why *depth(gb_explainer *x, const gb_about *a) {
    return gb_why_depth(x, a->take);
}
static const gb_why *each(gb_explainer *x, const gb_about *a) {
    return gb_why_each(x, a->take);
}
static const gb_why *net_of_layer(gb_explainer *x, const gb_about *a) {
    return gb_why_net_of(x, a->take);
}
static const gb_why *joint_share(gb_explainer *x, const gb_about *a) {
    return gb_why_joint_share(x, a->take);
}
static const gb_why *joint_rate(gb_explainer *x, const gb_about *a) {
    return gb_why_joint_rate(x, a->take);
}
static const gb_why *flag_length(gb_explainer *x, const gb_about *a) {
    return gb_why_flag(x, a->take, 0);
}
static const gb_why *flag_width(gb_explainer *x, const gb_about *a) {
    return gb_why_flag(x, a->take, 1);
}
static const gb_why *parged(gb_explainer *x, const gb_about *a) {
    return gb_why_parged(x, a->take);
}
#define WALL(name, which)                                                                \
    static const gb_why *name(gb_explainer *x, const gb_about *a) {                      \
        return gb_why_wall(x, a->take, which);                                           \
    }
WALL(wall_face, GB_WALL_FACE)
WALL(wall_courses, GB_WALL_COURSES)
WALL(wall_per_course, GB_WALL_PER_COURSE)
WALL(wall_full, GB_WALL_FULL)
WALL(wall_half, GB_WALL_HALF)
WALL(wall_rate, GB_WALL_RATE)
WALL(wall_rate_waste, GB_WALL_RATE_WASTE)
WALL(wall_joint, GB_WALL_JOINT)
WALL(wall_bedded, GB_WALL_BEDDED)
WALL(wall_spare, GB_WALL_SPARE)
WALL(ordered_full, GB_ORDER_FULL)
WALL(ordered_half, GB_ORDER_HALF)
WALL(block_length, GB_BLOCK_LENGTH)
WALL(block_height, GB_BLOCK_HEIGHT)
WALL(block_width, GB_BLOCK_WIDTH)
#undef WALL
static const gb_why *core_blocks(gb_explainer *x, const gb_about *a) {
    return gb_why_core_blocks(x, a->take);
}
static const gb_why *core_grout(gb_explainer *x, const gb_about *a) {
    return gb_why_core_grout(x, a->take);
}
static const gb_why *core_every(gb_explainer *x, const gb_about *a) {
    return gb_why_core_every(x, a->take);
}
static const gb_why *wedge_front(gb_explainer *x, const gb_about *a) {
    return gb_why_form_end(x, a->take, false);
}
static const gb_why *wedge_back(gb_explainer *x, const gb_about *a) {
    return gb_why_form_end(x, a->take, true);
}
static const gb_why *depth_in_front(gb_explainer *x, const gb_about *a) {
    return gb_why_depth_in_front(x, a->take);
}
static const gb_why *fall(gb_explainer *x, const gb_about *a) {
    return gb_why_fall(x, a->take);
}
static const gb_why *level_bed(gb_explainer *x, const gb_about *a) {
    return gb_why_level_bed(x, a->take, a->tread);
}
static const gb_why *measured(gb_explainer *x, const gb_about *a) {
    const gb_layer *l = a->take->layer;
    return gb_keep_why(x, (gb_why){.name = "measured",
                                   .of = a->piece->name,
                                   .unit = GB_PLAIN,
                                   .value = (double)l->depth_count,
                                   .place = gb_places_find(x->places, &l->depths_m)});
}
static const gb_why *depth_deviation(gb_explainer *x, const gb_about *a) {
    const gb_why *se = gb_why_depth_error(x, a->take);
    if (se == NULL)
        return NULL;
    double n = (double)a->take->layer->depth_count;
    return GB_WHY(
        x, "sd", GB_LENGTH, se->value * sqrt(n), "error * sqrt(n)",
        GB_INPUTS(GB_WHY(x, "error", GB_LENGTH, se->value, se->name, GB_INPUTS(se)),
                  gb_fact(x, "n", GB_PLAIN, n, N_("depths measured"))),
        .of = a->take->piece->name);
}
static const gb_why *depth_error(gb_explainer *x, const gb_about *a) {
    return gb_why_depth_error(x, a->take);
}
static const gb_why *net(gb_explainer *x, const gb_about *a) {
    return gb_why_net(x, a->mix);
}

/* ---- parts and amounts ------------------------------------------------------------- */

static const gb_why *bag(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_bag(x, &m);
}
static const gb_why *yield(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_yield(x, &m);
}

/* `value` of one bag times the bags that the row is about. */
static const gb_why *times_bags(gb_explainer *x, const gb_about *a, const char *name,
                                int unit, const char *formula, const gb_why *value) {
    const gb_why *bags = gb_why_bags(x, a);
    if (bags == NULL || value == NULL)
        return NULL;
    return GB_WHY(x, name, unit, bags->value * value->value, formula,
                  GB_INPUTS(bags, value), .of = value->of);
}
static const gb_why *makes(gb_explainer *x, const gb_about *a) {
    return times_bags(x, a, "makes", GB_VOLUME, "bags * yield", yield(x, a));
}
static const gb_why *weighs(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return times_bags(x, a, "weighs", GB_MASS, "bags * wet", gb_why_wet(x, &m));
}
static const gb_why *bags_by_mass(gb_explainer *x, const gb_about *a) {
    return times_bags(x, a, "weighed", GB_MASS, "bags * bag", bag(x, a));
}
static const gb_material *material_of(const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return m.mix->parts[a->part].material;
}

static const gb_why *moisture(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_moisture(x, &m, a->moisture);
}
static const gb_why *bulking(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_bulking(x, &m, a->moisture);
}
static const gb_why *first_water(gb_explainer *x, const gb_about *a) {
    return gb_why_to_add(x, a, GB_FIRST_WATER);
}
static const gb_why *usual_water(gb_explainer *x, const gb_about *a) {
    return gb_why_to_add(x, a, GB_USUAL_WATER);
}
static const gb_why *most_water(gb_explainer *x, const gb_about *a) {
    return gb_why_to_add(x, a, GB_MOST_WATER);
}
static const gb_why *pot_water(gb_explainer *x, const gb_about *a) {
    return gb_why_to_add(x, a, a->water);
}

static const gb_why *scored(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_why_scored(x);
}

/* ---- limits and times -------------------------------------------------------------- */

static const gb_why *times_next(gb_explainer *x, const gb_about *a, const char *name,
                                int unit, const char *formula, const gb_why *value) {
    const gb_why *next = gb_why_next(x, a);
    if (next == NULL || value == NULL)
        return NULL;
    return GB_WHY(x, name, unit, next->value * value->value, formula,
                  GB_INPUTS(next, value));
}
static const gb_why *next_volume(gb_explainer *x, const gb_about *a) {
    return times_next(x, a, "too_much", GB_VOLUME, "next * yield", yield(x, a));
}
static const gb_why *next_mass(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return times_next(x, a, "too_heavy", GB_MASS, "next * wet", gb_why_wet(x, &m));
}
static const gb_why *usable(gb_explainer *x, const gb_about *a) {
    return gb_why_usable(x, a);
}
static const gb_why *mass_limit(gb_explainer *x, const gb_about *a) {
    return gb_why_mass_limit(x, a);
}
static const gb_why *mixing(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_mix_time(x, "mixing", &m, &m.mix->mixing.s);
}
static const gb_why *plain_life(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_mix_time(x, "life", &m, &m.mix->life.s);
}
static const gb_why *open_time(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_mix_time(x, "open", &m, &m.mix->open.s);
}
static const gb_why *hold_least(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_mix_time(x, "hold", &m, &a->hold->least.s);
}
static const gb_why *hold_most(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_mix_time(x, "hold", &m, &a->hold->most.s);
}

/* ---- what a batch covers ----------------------------------------------------------- */

/* The piece in hand at an end of a stretch, the first counted as 1. */
static const gb_why *piece_after(gb_explainer *x, const gb_why *end) {
    if (end == NULL)
        return NULL;
    return GB_WHY(x, "piece", GB_PLAIN, gb_round(end->value, 1, GB_DOWN) + 1.0,
                  strcmp(end->name, "to") == 0 ? "down(to, 1) + 1" : "down(from, 1) + 1",
                  GB_INPUTS(end), .of = end->of);
}
static const gb_why *from_piece(gb_explainer *x, const gb_about *a) {
    return piece_after(x, gb_why_from(x, a));
}
static const gb_why *next_piece(gb_explainer *x, const gb_about *a) {
    return piece_after(x, gb_why_to(x, a));
}
static const gb_why *to_piece(gb_explainer *x, const gb_about *a) {
    const gb_why *to = gb_why_to(x, a);
    if (to == NULL)
        return NULL;
    return GB_WHY(x, "piece", GB_PLAIN, gb_round(to->value, 1, GB_DOWN), "down(to, 1)",
                  GB_INPUTS(to), .of = to->of);
}
static const gb_why *covered_share(gb_explainer *x, const gb_about *a) {
    const gb_take *t = a->stretch->take;
    double pieces = a->stretch->to - a->stretch->from;
    const gb_why *to = gb_why_to(x, a);
    const gb_why *from = gb_why_from(x, a);
    if (t->units > 1.0)
        return GB_WHY(x, "covered", GB_SHARE, pieces / t->units, "(to - from) / count",
                      GB_INPUTS(to, from, gb_why_count(x, t->piece)));
    return GB_WHY(x, "covered", GB_SHARE, pieces, "to - from", GB_INPUTS(to, from));
}
static const gb_why *covered_area(gb_explainer *x, const gb_about *a) {
    const gb_take *t = a->stretch->take;
    return GB_WHY(
        x, "covered", GB_AREA, (a->stretch->to - a->stretch->from) * t->area.m2,
        "(to - from) * bedded",
        GB_INPUTS(gb_why_to(x, a), gb_why_from(x, a), gb_why_bedded(x, t->piece)),
        .of = t->piece->name);
}

/* ---- the pail ---------------------------------------------------------------------- */

static const gb_why *mark_up(gb_explainer *x, const gb_about *a) {
    size_t full = 0;
    gb_length up = gb_pail_up(&a->plan->job->pail.size, a->volume);
    if (a->amount != GB_NO_AMOUNT &&
        gb_pail_mark(&a->plan->job->pail.size, a->volume, &full, &up) != GB_OK)
        return NULL;
    return gb_fact(x, "up", GB_LENGTH, up.m,
                   N_("where the job's pail holds that much, or what full pails leave of "
                      "it: frustum of a cone, Machinery's Handbook (from memory)"));
}

static const gb_why *full_pail(gb_explainer *x, const gb_about *a) {
    gb_volume holds = gb_pail_volume(&a->plan->job->pail.size);
    return GB_WHY(
        x, "full_pail", GB_VOLUME, holds.m3 * gb_pail_full().of_one, "pail * part",
        GB_INPUTS(gb_fact(x, "pail", GB_VOLUME, holds.m3,
                          N_("what the job's pail holds to the brim: frustum of "
                             "a cone, Machinery's Handbook (from memory)")),
                  gb_fact(x, "part", GB_SHARE, gb_pail_full().of_one,
                          N_("nobody carries a pail full to the brim: common "
                             "practice"))));
}

static const gb_why *full_pails(gb_explainer *x, const gb_about *a) {
    const gb_why *water = a->amount == GB_ONE_POT      ? pot_water(x, a)
                          : a->water == GB_FIRST_WATER ? first_water(x, a)
                          : a->water == GB_USUAL_WATER ? usual_water(x, a)
                                                       : most_water(x, a);
    const gb_why *full = full_pail(x, a);
    if (water == NULL || full == NULL)
        return NULL;
    const gb_why *volume =
        GB_WHY(x, "volume", GB_VOLUME, a->volume.m3, "liquid / water_density",
               GB_INPUTS(GB_WHY(x, "liquid", GB_MASS, water->value, water->name,
                                GB_INPUTS(water)),
                         gb_water_density(x)));
    return GB_WHY(x, "pails", GB_PLAIN, gb_round(a->volume.m3 / full->value, 1, GB_DOWN),
                  "down(volume / full_pail, 1)", GB_INPUTS(volume, full));
}

static const gb_why *sure(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "sure", GB_SHARE, a->plan->job->sure.of_one,
                   N_("the option --sure"));
}
static const gb_why *surely_whole(gb_explainer *x, const gb_about *a) {
    const gb_why *bags = gb_why_bags_surely(x, a);
    return bags == NULL ? NULL
                        : GB_WHY(x, "whole", GB_PLAIN, gb_round(bags->value, 1, GB_UP),
                                 "up(surely, 1)", GB_INPUTS(bags));
}
static const gb_why *chance_bags(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "whole", GB_PLAIN, a->bags, N_("so many whole bags at hand"));
}
static const gb_why *chance(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "chance", GB_SHARE, gb_sureness(&a->mix->need, a->bags).of_one,
                   N_("of a normal about the bags needed, with their standard deviation: "
                      "what lies below so many (Marsaglia 2004, from memory)"));
}

static const gb_why *check_pieces(gb_explainer *x, const gb_about *a) {
    return gb_why_first_check(x, a, GB_CHECK_PIECES);
}
static const gb_why *check_left(gb_explainer *x, const gb_about *a) {
    return gb_why_first_check(x, a, GB_CHECK_LEFT);
}
static const gb_why *check_fewer(gb_explainer *x, const gb_about *a) {
    return gb_why_first_check(x, a, GB_CHECK_FEWER);
}
static const gb_why *check_depth(gb_explainer *x, const gb_about *a) {
    return gb_why_first_check(x, a, GB_CHECK_DEPTH);
}
static const gb_why *check_gross(gb_explainer *x, const gb_about *a) {
    return gb_why_first_check(x, a, GB_CHECK_GROSS);
}

/* ---- materials --------------------------------------------------------------------- */

/* Whole bags of one material to have at hand; of a blend, the bags themselves. */
static const gb_why *site_bags(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_why *bags = gb_why_bags(x, a);
    if (bags == NULL)
        return NULL;
    if (m.mix->part_count == 0)
        return GB_WHY(x, "on_site", GB_PLAIN, gb_round(bags->value, 1, GB_UP),
                      "up(bags, 1)", GB_INPUTS(bags));
    const gb_why *mass = gb_why_part(x, a);
    const gb_why *pack = gb_why_pack(x, m.job, material_of(a));
    if (mass == NULL || pack == NULL)
        return NULL;
    return GB_WHY(x, "on_site", GB_PLAIN, gb_round(mass->value / pack->value, 1, GB_UP),
                  "up(part / bag, 1)", GB_INPUTS(mass, pack), .of = mass->of);
}
static const gb_why *site_bag(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return m.mix->part_count == 0 ? gb_why_bag(x, &m)
                                  : gb_why_pack(x, m.job, material_of(a));
}
static const gb_why *asked_whole(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "whole", GB_PLAIN, gb_round(a->question->bags, 1, GB_UP),
                  "up(bags, 1)", GB_INPUTS(gb_why_bags(x, a)));
}
static const gb_why *wanted(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "wanted", GB_VOLUME, a->question->wanted.m3,
                   N_("the option --make, or --area by --depth, and --waste on it"));
}

/* ---- for reference ------------------------------------------------------------------
 */

static const gb_why *part_mass(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_part_mass(x, &m, a->part);
}
static const gb_why *wet(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_wet(x, &m);
}
static const gb_why *compared_volume(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_why_compared_volume(x);
}

/* The three water figures of one bag in all, and over the binder or the dry mass. */
#define WATERS(which, water)                                                             \
    static const gb_why *which##_in_all(gb_explainer *x, const gb_about *a) {            \
        gb_mixed m = gb_mixed_of(a);                                                     \
        return gb_why_water(x, &m, water);                                               \
    }                                                                                    \
    static const gb_why *which##_to_binder(gb_explainer *x, const gb_about *a) {         \
        return gb_why_water_to_binder(x, a, water);                                      \
    }                                                                                    \
    static const gb_why *which##_to_dry(gb_explainer *x, const gb_about *a) {            \
        return gb_why_water_to_dry(x, a, water);                                         \
    }
WATERS(least, GB_FIRST_WATER)
WATERS(usual, GB_USUAL_WATER)
WATERS(most, GB_MOST_WATER)
#undef WATERS

static const gb_why *claim_least(gb_explainer *x, const gb_about *a) {
    return gb_why_claim_end(x, a, false);
}
static const gb_why *claim_most(gb_explainer *x, const gb_about *a) {
    return gb_why_claim_end(x, a, true);
}

/* ---- weather ----------------------------------------------------------------------- */

#define WEATHER(name, unit, member)                                                      \
    static const gb_why *name(gb_explainer *x, const gb_about *a) {                      \
        return gb_stated(x, #name, NULL, unit, &a->plan->job->member, NULL);             \
    }
WEATHER(start, GB_DURATION, crew.start.s)
WEATHER(air, GB_TEMP, weather.air.c)
WEATHER(low, GB_TEMP, weather.low.c)
WEATHER(wind, GB_SPEED, weather.wind.m_s)
WEATHER(humidity, GB_SHARE, weather.humidity.of_one)
WEATHER(stone, GB_TEMP, weather.stone.c)
WEATHER(block, GB_TEMP, weather.block.c)
WEATHER(concrete, GB_TEMP, weather.concrete.c)
#undef WEATHER

#define OF_DAY(name, call)                                                               \
    static const gb_why *name(gb_explainer *x, const gb_about *a) {                      \
        return call;                                                                     \
    }
OF_DAY(least_at_work, gb_why_least_air(x, a->plan->job, GB_AT_WORK))
OF_DAY(most_at_work, gb_why_most_air(x, a->plan->job, GB_AT_WORK))
OF_DAY(least_of_watch, gb_why_least_air(x, a->plan->job, GB_WATCH))
OF_DAY(least_of_two_days, gb_why_least_air(x, a->plan->job, GB_FIRST_TWO_DAYS))
OF_DAY(mean_daily, gb_why_mean_daily(x, a->plan->job))
OF_DAY(most_wind, gb_why_most_wind(x, a->plan->job))
#undef OF_DAY

static const gb_why *watch_time(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "watch", GB_DURATION, gb_frost_watch().s,
                   N_("frost is watched for three days: common practice"));
}

/* ---- after the work ---------------------------------------------------------------- */

static gb_protection protection(const gb_about *a) {
    return gb_protect(&a->plan->job->weather, a->mix->stuff);
}

static const gb_why *after_limit(gb_explainer *x, const gb_about *a) {
    gb_protection p = protection(a);
    return gb_fact(x, "limit", GB_TEMP, p.limit.c, p.source);
}
static const gb_why *after_time(gb_explainer *x, const gb_about *a) {
    gb_protection p = protection(a);
    return gb_fact(x, "time", GB_DURATION, p.time.s, p.source);
}
static const gb_why *freezing(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "limit", GB_TEMP, gb_freezing().c, N_("common practice"));
}
static const gb_why *fog_limit(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "limit", GB_TEMP, protection(a).hot_limit.c,
                   N_("TMS 602 art. 1.8 D.3"));
}
static const gb_why *wet_time(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "time", GB_DURATION, gb_wet_curing().s,
                   N_("UFGS 03301A; ACI 308R, from memory"));
}

/* As it is mixed, in the coldest air of the work. */
static gb_cold_concrete in_cold(const gb_about *a) {
    const gb_weather *w = &a->plan->job->weather;
    return gb_cold_of(a->mix, gb_coldest_hour(w, GB_AT_WORK).air);
}
static const gb_why *placed(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "placed", GB_TEMP, in_cold(a).placed.c,
                   N_("ACI 306R, by the least dimension of the section"));
}
static const gb_why *mixed(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "mixed", GB_TEMP, in_cold(a).mixed.c,
                   N_("ACI 306R, by the section and the air"));
}
static const gb_why *drop(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "drop", GB_PLAIN, in_cold(a).drop_c,
                   N_("ACI 306R, degrees Celsius in 24 h, by the section"));
}

#define WARM_LIMIT(name, row)                                                            \
    static const gb_why *name(gb_explainer *x, const gb_about *a) {                      \
        return gb_why_warm_limit(x, a, row);                                             \
    }
WARM_LIMIT(flash_limit, GB_ROW_WARMTH_FLASH)
WARM_LIMIT(sand_limit, GB_ROW_WARMTH_SAND_MOST)
WARM_LIMIT(ice_limit, GB_ROW_WARMTH_ICE_ROUGH)
#undef WARM_LIMIT

#define TMS_602 N_("TMS 602 art. 1.8 D")

static const gb_why *cold(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "cold", GB_TEMP, gb_cold_for_masonry().c,
                   N_("TMS 602 art. 1.8 C; for stone under a slurry common practice"));
}
static const gb_why *hot(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "hot", GB_TEMP, gb_masonry_hot_limits().hot.c, TMS_602);
}
static const gb_why *windy(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "hot_in_wind", GB_TEMP, gb_masonry_hot_limits().hot_windy.c,
                   TMS_602);
}
static const gb_why *hot_wind(gb_explainer *x, const gb_about *a) {
    (void)a;
    return gb_fact(x, "wind", GB_SPEED, gb_masonry_hot_limits().wind.m_s, TMS_602);
}

/* ---- the table --------------------------------------------------------------------- */

/* A row's own line goes before that of any row. */
#define ANY_ROW GB_ROW_CODES
static const struct {
    gb_row_code row;
    const char *figure;
    reason *why;
} REASONS[] = {
    {GB_ROW_FACT_START, "value", start},
    {GB_ROW_FACT_AIR, "value", air},
    {GB_ROW_FACT_LOW, "value", low},
    {GB_ROW_FACT_WIND, "value", wind},
    {GB_ROW_FACT_HUMIDITY, "value", humidity},
    {GB_ROW_FACT_STONE, "value", stone},
    {GB_ROW_FACT_BLOCK, "value", block},
    {GB_ROW_JOINT, "length", joint_length},
    {GB_ROW_JOINT, "width", joint_width},
    {GB_ROW_POINTING, "length", joint_length},
    {GB_ROW_POINTING, "width", joint_width},
    {GB_ROW_JOINTS_FLAGS, "area", area},
    {GB_ROW_JOINTS_FLAGS, "length", flag_length},
    {GB_ROW_JOINTS_FLAGS, "width", flag_width},
    {GB_ROW_JOINTS_RATE, "area", area},
    {GB_ROW_JOINTS_RATE, "rate", joint_rate},
    {GB_ROW_JOINTS_SHARE, "area", area},
    {GB_ROW_JOINTS_SHARE, "share", joint_share},
    {GB_ROW_DAY_HOURS, "start", gb_why_day_start},
    {GB_ROW_DAY_HOURS, "finish", gb_why_day_finish},
    {GB_ROW_DAY_HOURS, "last", gb_why_day_last},
    {GB_ROW_DAY_BREAK, "begin", gb_why_break_begin},
    {GB_ROW_DAY_BREAK, "end", gb_why_break_end},
    {GB_ROW_DAY_TAKES, "mixing", gb_why_mixing_time},
    {GB_ROW_DAY_TAKES, "potting", gb_why_potting_time},
    {GB_ROW_DAY_TAKES, "cleaning", gb_why_cleaning_time},
    {GB_ROW_DAY_BATCH, "day", gb_why_load_day},
    {GB_ROW_DAY_POT, "day", gb_why_load_day},
    {GB_ROW_DAY_BATCH, "in", gb_why_load_in},
    {GB_ROW_DAY_BATCH, "dead", gb_why_load_dead},
    {GB_ROW_DAY_BATCH, "total", gb_why_batches},
    {GB_ROW_DAY_BATCH, "begin", gb_why_load_begin},
    {GB_ROW_DAY_BATCH, "end", gb_why_load_end},
    {GB_ROW_DAY_EXTRA, "day", gb_why_load_day},
    {GB_ROW_DAY_EXTRA, "in", gb_why_load_in},
    {GB_ROW_DAY_EXTRA, "dead", gb_why_load_dead},
    {GB_ROW_DAY_EXTRA, "begin", gb_why_load_begin},
    {GB_ROW_DAY_EXTRA, "end", gb_why_load_end},
    {GB_ROW_DAY_CUT, "volume", gb_why_load_cut},
    {GB_ROW_DAY_POT, "in", gb_why_load_in},
    {GB_ROW_DAY_POT, "dead", gb_why_load_dead},
    {GB_ROW_DAY_POT, "end", gb_why_load_end},
    {GB_ROW_DAY_WAIT, "day", gb_why_wait_day},
    {GB_ROW_DAY_WAIT, "clock", gb_why_wait_clock},
    {GB_ROW_DAY_WAIT, "least", gb_why_wait_least},
    {GB_ROW_DAY_WAIT_JOINTS, "day", gb_why_wait_day},
    {GB_ROW_DAY_WAIT_JOINTS, "clock", gb_why_wait_clock},
    {GB_ROW_DAY_WAIT_JOINTS, "least", gb_why_wait_least},
    {GB_ROW_DAY_NO_ROOM, "life", gb_why_life},
    {GB_ROW_DAY_SMALLER, "bags", gb_why_smaller_bags},
    {GB_ROW_DAY_SMALLER, "usable", gb_why_smaller_usable},
    {GB_ROW_DAY_SMALLER_IN, "bags", gb_why_smaller_bags},
    {GB_ROW_DAY_SMALLER_IN, "usable", gb_why_smaller_usable},
    {GB_ROW_LABOUR_LINE, "mixing", gb_why_labour_mixing},
    {GB_ROW_LABOUR_LINE, "potting", gb_why_labour_potting},
    {GB_ROW_LABOUR_LINE, "carrying", gb_why_labour_carrying},
    {GB_ROW_LABOUR_LINE, "setting", gb_why_labour_setting},
    {GB_ROW_LABOUR_SUM, "mixing", gb_why_labour_mixing},
    {GB_ROW_LABOUR_SUM, "potting", gb_why_labour_potting},
    {GB_ROW_LABOUR_SUM, "carrying", gb_why_labour_carrying},
    {GB_ROW_LABOUR_SUM, "setting", gb_why_labour_setting},
    {GB_ROW_LABOUR_CLEANING, "cleaning", gb_why_labour_cleaning},
    {GB_ROW_LABOUR_CLEANING, "times", gb_why_cleanings},
    {GB_ROW_LABOUR_NOTE, "hands", gb_why_hands},
    {GB_ROW_NEEDS_MIXING, "water", gb_why_water_mixing},
    {GB_ROW_NEEDS_CLEANING, "water", gb_why_water_cleaning},
    {GB_ROW_NEEDS_CLEANING, "times", gb_why_cleanings},
    {GB_ROW_NEEDS_RINSING, "water", gb_why_water_rinsing},
    {GB_ROW_NEEDS_RINSING, "people", gb_why_people},
    {GB_ROW_NEEDS_RINSING, "days", gb_why_days_worked},
    {GB_ROW_NEEDS_CURING, "water", gb_why_water_curing},
    {GB_ROW_NEEDS_CURING, "area", gb_why_slab_area},
    {GB_ROW_NEEDS_CURING, "time", gb_why_wet_time},
    {GB_ROW_NEEDS_SUM, "water", gb_why_water_of_site},
    {GB_ROW_MARK_AT, "up", mark_up},
    {GB_ROW_MARK_PAILS, "n", full_pails},
    {GB_ROW_MARK_PAILS_AND, "n", full_pails},
    {GB_ROW_MARK_PAILS_AND, "up", mark_up},
    {GB_ROW_PAIL_FULL, "volume", full_pail},
    {GB_ROW_PAIL_SAND, "volume", gb_why_measure},
    {GB_ROW_NEED_SURE, "sure", sure},
    {GB_ROW_NEED_SURE, "bags", gb_why_bags_surely},
    {GB_ROW_NEED_SURE, "whole", surely_whole},
    {GB_ROW_CHANCE, "whole", chance_bags},
    {GB_ROW_CHANCE, "share", chance},
    {GB_ROW_MEASURED, "sd", depth_deviation},
    {ANY_ROW, "across", joint_width},
    {GB_ROW_PARGED, "area", parged},
    {GB_ROW_BLOCK_WALL, "area", wall_face},
    {GB_ROW_SUPPLY_BLOCKS, "full", ordered_full},
    {GB_ROW_SUPPLY_BLOCKS, "half", ordered_half},
    {GB_ROW_SUPPLY_BLOCKS, "length", block_length},
    {GB_ROW_SUPPLY_BLOCKS, "height", block_height},
    {GB_ROW_SUPPLY_BLOCKS, "width", block_width},
    {GB_ROW_SUPPLY_BLOCKS, "spare", wall_spare},
    {ANY_ROW, "full", wall_full},
    {ANY_ROW, "half", wall_half},
    {GB_ROW_WALL_BLOCKS, "courses", wall_courses},
    {GB_ROW_WALL_BLOCKS, "per_course", wall_per_course},
    {GB_ROW_BLOCK_RATE, "rate", wall_rate},
    {GB_ROW_BLOCK_RATE, "waste", wall_rate_waste},
    {GB_ROW_BLOCK_JOINTS, "joint", wall_joint},
    {GB_ROW_BLOCK_JOINTS, "bedded", wall_bedded},
    {ANY_ROW, "blocks", core_blocks},
    {ANY_ROW, "grout", core_grout},
    {ANY_ROW, "every", core_every},
    {GB_ROW_WEDGE, "front", wedge_front},
    {GB_ROW_WEDGE, "back", wedge_back},
    {GB_ROW_SLOPED, "front", depth_in_front},
    {GB_ROW_SLOPED, "fall", fall},
    {GB_ROW_LEVEL_BEDS, "se", depth_error},
    {GB_ROW_LEVEL_BED, "bed", level_bed},
    {GB_ROW_VOLUME_PIECES, "volume", each},
    {GB_ROW_MEASURED, "n", measured},
    {GB_ROW_MEASURED, "se", depth_error},
    {GB_ROW_NEED, "net", net},
    {GB_ROW_NEED, "gross", gb_why_gross},
    {GB_ROW_NEED_NET_ONLY, "net", net},
    {GB_ROW_SPREAD, "spread", gb_why_spread},
    {GB_ROW_SPREAD_CORES, "spread", gb_why_spread},
    {GB_ROW_BAGS_SPREAD, "bags", gb_why_bags_spread},
    {GB_ROW_BAGS_SPREAD, "spread", gb_why_bags_share},
    {GB_ROW_POT_SPREAD, "spread", gb_why_bags_share},
    {GB_ROW_PART_BAGS, "mass", gb_why_part},
    {GB_ROW_PART_WEIGHED, "mass", gb_why_part_lying},
    {GB_ROW_PART_OFF, "mass", gb_why_part_lying},
    {GB_ROW_PART_LOOSE, "volume", gb_why_loose},
    {GB_ROW_PART_OVER, "volume", gb_why_loose},
    {GB_ROW_PART_UNDER, "volume", gb_why_loose},
    {ANY_ROW, "line", gb_why_measure},
    {GB_ROW_PART_LOOSE, "each", gb_why_in_measure},
    {GB_ROW_PART_OVER, "each", gb_why_in_measure},
    {GB_ROW_PART_UNDER, "each", gb_why_in_measure},
    {ANY_ROW, "off", gb_why_off},
    {GB_ROW_BUCKET, "n", gb_why_measures},
    {GB_ROW_BOX, "n", gb_why_measures},
    {GB_ROW_SHOVEL, "n", gb_why_measures},
    {GB_ROW_SAND_WEIGHED, "mass", gb_why_part_lying},
    {ANY_ROW, "bulking", bulking},
    {GB_ROW_ADDED_WEIGHED, "mass", gb_why_addition},
    {GB_ROW_ADDED_POURED, "volume", gb_why_added_volume},
    {GB_ROW_REPLACES, "replaced", gb_why_replaced_share},
    {GB_ROW_MAKES, "volume", makes},
    {GB_ROW_MAKES, "mass", weighs},
    {GB_ROW_MAKES, "yield", yield},
    {GB_ROW_LIMIT_VOLUME, "next", gb_why_next},
    {GB_ROW_LIMIT_VOLUME, "volume", next_volume},
    {GB_ROW_LIMIT_VOLUME, "room", usable},
    {GB_ROW_LIMIT_MASS, "next", gb_why_next},
    {GB_ROW_LIMIT_MASS, "mass", next_mass},
    {GB_ROW_LIMIT_MASS, "room", mass_limit},
    {GB_ROW_PLACED, "time", gb_why_time_to_place},
    {ANY_ROW, "first", first_water},
    {ANY_ROW, "usual", usual_water},
    {ANY_ROW, "most", most_water},
    {GB_ROW_PER_PART, "mass", bags_by_mass},
    {GB_ROW_HALF_BLEND, "mass", bags_by_mass},
    {GB_ROW_PART_BATCH_BLEND, "mass", bags_by_mass},
    {GB_ROW_PART_MAKES, "volume", makes},
    {ANY_ROW, "share", moisture},
    {GB_ROW_MIXING, "time", mixing},
    {GB_ROW_BATCH_LINE, "total", gb_why_batches},
    {ANY_ROW, "from", from_piece},
    {ANY_ROW, "to", to_piece},
    {GB_ROW_COVERS_PIECES_PART, "next", next_piece},
    {GB_ROW_COVERS_PIECE_PART, "next", next_piece},
    {GB_ROW_COVERS_AREA, "area", covered_area},
    {GB_ROW_COVERS_LAST_AREA, "area", covered_area},
    {GB_ROW_COVERS_SHARE, "share", covered_share},
    {GB_ROW_AFTER_FIRST, "pieces", check_pieces},
    {GB_ROW_AFTER_FIRST, "fewer", check_fewer},
    {GB_ROW_AFTER_FIRST, "depth", check_depth},
    {GB_ROW_AFTER_FIRST, "gross", check_gross},
    {GB_ROW_AFTER_FIRST_PART, "pieces", check_pieces},
    {GB_ROW_AFTER_FIRST_PART, "left", check_left},
    {GB_ROW_AFTER_FIRST_PART, "fewer", check_fewer},
    {GB_ROW_AFTER_FIRST_PART, "depth", check_depth},
    {GB_ROW_AFTER_FIRST_PART, "gross", check_gross},
    {GB_ROW_POT_PIECES, "pieces", gb_why_pot_pieces},
    {GB_ROW_POT_PIECES, "area", gb_why_pot_area},
    {GB_ROW_POT_PIECES, "count", gb_why_pot_count},
    {GB_ROW_POT_AREA, "area", gb_why_pot_area},
    {GB_ROW_POT_AREA, "count", gb_why_pot_count},
    {GB_ROW_POT_PART, "mass", gb_why_part_lying},
    {GB_ROW_POT_WATER, "water", pot_water},
    {GB_ROW_POT_SCORED, "depth", scored},
    {GB_ROW_POT_SCORED, "area", gb_why_scored_area},
    {GB_ROW_POT_TOO_SLOW, "time", gb_why_pot_time},
    {GB_ROW_POT_LIFE, "open", open_time},
    {GB_ROW_SITE_BAGS, "bag", site_bag},
    {GB_ROW_SITE_LOOSE, "volume", gb_why_loose},
    {GB_ROW_SITE_MASS, "mass", gb_why_part_lying},
    {GB_ROW_SITE_ADDED, "mass", gb_why_addition},
    {GB_ROW_SITE_LIQUID, "volume", gb_why_added_volume},
    {GB_ROW_SITE_WATER, "water", gb_why_water_used},
    {GB_ROW_ALWAYS_HOT, "hot", hot},
    {GB_ROW_ALWAYS_HOT, "windy", windy},
    {GB_ROW_ALWAYS_HOT, "wind", hot_wind},
    {GB_ROW_ALWAYS_HOT, "life", gb_why_life_in_heat},
    {GB_ROW_WARMTH_TOO_COLD, "value", gb_why_mix_or_wanted},
    {GB_ROW_WARMTH_TOO_WARM, "value", gb_why_mix_or_wanted},
    {GB_ROW_WARMTH_TOO_COLD, "limit", gb_why_least_mix},
    {GB_ROW_WARMTH_TOO_WARM, "limit", gb_why_most_mix},
    {GB_ROW_WARMTH, "cement", gb_why_cement_at},
    {GB_ROW_WARMTH, "sand", gb_why_sand_at},
    {GB_ROW_WARMTH, "water", gb_why_water_at},
    {GB_ROW_WARMTH_FROZEN_SAND, "cement", gb_why_cement_at},
    {GB_ROW_WARMTH_FROZEN_SAND, "sand", gb_why_sand_at},
    {GB_ROW_WARMTH_FROZEN_SAND, "water", gb_why_water_at},
    {GB_ROW_WARMTH, "mixed", gb_why_mixed},
    {GB_ROW_WARMTH_FROZEN_SAND, "mixed", gb_why_mixed},
    {GB_ROW_WARMTH_WATER, "water", gb_why_water_for},
    {GB_ROW_WARMTH_WATER_HOT, "value", gb_why_stated_water},
    {GB_ROW_WARMTH_WATER_HOT, "limit", gb_why_hottest_water},
    {GB_ROW_WARMTH_NO_SAND, "needed", gb_why_water_for},
    {GB_ROW_WARMTH_NO_SAND, "water", gb_why_hottest_water},
    {GB_ROW_WARMTH_NO_SAND, "reached", gb_why_reached},
    {GB_ROW_WARMTH_NO_SAND, "wanted", gb_why_wanted},
    {GB_ROW_WARMTH_SAND, "needed", gb_why_water_for},
    {GB_ROW_WARMTH_SAND, "water", gb_why_hottest_water},
    {GB_ROW_WARMTH_SAND_ALONE, "sand", gb_why_sand_for},
    {GB_ROW_WARMTH_SAND_ALONE, "water", gb_why_hottest_water},
    {GB_ROW_WARMTH_THAW, "needed", gb_why_water_for},
    {GB_ROW_WARMTH_THAW, "water", gb_why_hottest_water},
    {GB_ROW_WARMTH_SAND, "reached", gb_why_reached},
    {GB_ROW_WARMTH_SAND, "sand", gb_why_sand_for},
    {GB_ROW_WARMTH_SAND_MOST, "limit", sand_limit},
    {GB_ROW_WARMTH_FLASH, "limit", flash_limit},
    {GB_ROW_WARMTH_ICE, "ice", gb_why_ice},
    {GB_ROW_WARMTH_ICE_ROUGH, "share", gb_why_ice_share},
    {GB_ROW_WARMTH_ICE_ROUGH, "limit", ice_limit},
    {ANY_ROW, "wanted", gb_why_wanted},
    {GB_ROW_FACT_AIR_RANGE, "least", least_at_work},
    {GB_ROW_FACT_AIR_RANGE, "most", most_at_work},
    {GB_ROW_FACT_LEAST, "value", least_of_watch},
    {GB_ROW_FACT_LEAST, "time", watch_time},
    {GB_ROW_FACT_MEAN, "value", mean_daily},
    {GB_ROW_FACT_WIND_UP_TO, "value", most_wind},
    {GB_ROW_FACT_CONCRETE, "value", concrete},
    {GB_ROW_AFTER_NO_LOW, "value", air},
    {GB_ROW_AFTER_COVER, "value", mean_daily},
    {GB_ROW_AFTER_BLANKETS, "value", mean_daily},
    {GB_ROW_AFTER_ENCLOSURE, "value", mean_daily},
    {GB_ROW_AFTER_COVER_GROUT, "value", least_of_two_days},
    {GB_ROW_AFTER_BLANKETS_GROUT, "value", least_of_two_days},
    {GB_ROW_AFTER_ENCLOSURE_GROUT, "value", least_of_two_days},
    {GB_ROW_AFTER_CONCRETE, "value", least_of_watch},
    {GB_ROW_AFTER_FROST, "value", least_of_watch},
    {GB_ROW_AFTER_FROST, "limit", freezing},
    {GB_ROW_AFTER_FOG, "value", mean_daily},
    {GB_ROW_AFTER_FOG, "limit", fog_limit},
    {GB_ROW_AFTER_WET, "time", wet_time},
    {GB_ROW_AFTER_COVER, "limit", after_limit},
    {GB_ROW_AFTER_BLANKETS, "limit", after_limit},
    {GB_ROW_AFTER_ENCLOSURE, "limit", after_limit},
    {GB_ROW_AFTER_COVER_GROUT, "limit", after_limit},
    {GB_ROW_AFTER_BLANKETS_GROUT, "limit", after_limit},
    {GB_ROW_AFTER_ENCLOSURE_GROUT, "limit", after_limit},
    {GB_ROW_AFTER_CONCRETE, "limit", after_limit},
    {GB_ROW_AFTER_COVER, "time", after_time},
    {GB_ROW_AFTER_BLANKETS, "time", after_time},
    {GB_ROW_AFTER_ENCLOSURE, "time", after_time},
    {GB_ROW_AFTER_COVER_GROUT, "time", after_time},
    {GB_ROW_AFTER_BLANKETS_GROUT, "time", after_time},
    {GB_ROW_AFTER_ENCLOSURE_GROUT, "time", after_time},
    {GB_ROW_AFTER_CONCRETE, "time", after_time},
    {ANY_ROW, "placed", placed},
    {ANY_ROW, "mixed", mixed},
    {ANY_ROW, "drop", drop},
    {ANY_ROW, "cold", cold},
    {GB_ROW_HOLD, "least", hold_least},
    {GB_ROW_HOLD_RANGE, "least", hold_least},
    {GB_ROW_HOLD_RANGE, "most", hold_most},
    {GB_ROW_LAID_SHAPED, "area", bedded},
    {GB_ROW_PIECE_SHAPED, "length", blank_length},
    {GB_ROW_PIECE_SHAPED, "width", blank_width},
    {GB_ROW_EDGES, "front", edge_front},
    {GB_ROW_EDGES, "perimeter", perimeter},
    {GB_ROW_AREA, "each", area},
    {GB_ROW_AREA, "all", area_of_all},
    {GB_ROW_AREA, "bedded", bedded_of_all},
    {GB_ROW_LAYER_LAID, "net", net_of_layer},
    {GB_ROW_LAYER_VOLUME, "net", net_of_layer},
    {GB_ROW_LOOSE_LAID, "depth", gb_why_loose_depth},
    {GB_ROW_LOOSE_LAID, "net", gb_why_loose_net},
    {GB_ROW_LOOSE_FILLED, "net", gb_why_loose_net},
    {GB_ROW_LOOSE_ORDER, "ordered", gb_why_loose_ordered},
    {GB_ROW_LOOSE_ORDER, "mass", gb_why_loose_mass},
    {GB_ROW_LOOSE_LIFTS, "lifts", gb_why_lifts},
    {GB_ROW_LOOSE_LIFTS, "lift", gb_why_lift},
    {GB_ROW_LOOSE_DUG, "depth", gb_why_loose_depth},
    {GB_ROW_LOOSE_DUG, "net", gb_why_loose_net},
    {GB_ROW_LOOSE_DUG_VOLUME, "net", gb_why_loose_net},
    {GB_ROW_LOOSE_HAUL, "ordered", gb_why_loose_ordered},
    {GB_ROW_LOOSE_CLOTH, "area", gb_why_cloth},
    {GB_ROW_LOOSE_CLOTH_LAP, "lap", gb_why_lap},
    {GB_ROW_LOOSE_ROD, "length", gb_why_rod},
    {GB_ROW_LOOSE_SEALANT, "depth", gb_why_loose_depth},
    {GB_ROW_LOOSE_SEALANT, "net", gb_why_loose_net},
    {GB_ROW_LOOSE_WITH, "ordered", gb_why_loose_ordered},
    {GB_ROW_LOOSE_TUBES, "ordered", gb_why_loose_ordered},
    {GB_ROW_LOOSE_TUBES, "packs", gb_why_tubes},
    {GB_ROW_LOOSE_TUBES, "pack", gb_why_tube},
    {GB_ROW_LAYER_TOTAL, "net", gb_why_layers_in_all},
    {GB_ROW_STONE_LINE, "ordered", gb_why_ordered},
    {GB_ROW_STONE_LINE, "length", gb_why_stone_length},
    {GB_ROW_STONE_LINE, "width", gb_why_stone_width},
    {GB_ROW_STONE_LINE, "thickness", gb_why_thickness},
    {GB_ROW_STONE_LINE, "freight", gb_why_freight},
    {GB_ROW_STONE_COUNT, "set", count},
    {GB_ROW_STONE_COUNT, "spare", gb_why_spare},
    {GB_ROW_STONE_COUNT, "broken", gb_why_broken},
    {GB_ROW_STONE_CUT, "net", area},
    {GB_ROW_STONE_CUT, "blank", gb_why_stone_blank},
    {GB_ROW_STONE_CUT, "cut", gb_why_cut_away},
    {GB_ROW_STONE_CUT, "typical", gb_why_stone_typical},
    {GB_ROW_STONE_CUT, "most", gb_why_stone_most},
    {GB_ROW_STONE_LIFT, "limit", gb_why_two_lift},
    {GB_ROW_STONE_FREIGHT, "freight", gb_why_all_freight},
    {GB_ROW_LIFT_WITHIN, "lifted", gb_why_stone_lifted},
    {GB_ROW_LIFT_WITHIN, "share", gb_why_lift_share},
    {GB_ROW_LIFT_OVER, "lifted", gb_why_stone_lifted},
    {GB_ROW_LIFT_OVER, "allowed", gb_why_lift_allowed},
    {GB_ROW_LIFT_ALLOWED, "allowed", gb_why_lift_allowed},
    {GB_ROW_LIFT_ALLOWED, "capacity", gb_why_lift_capacity},
    {GB_ROW_LIFT_ALLOWED, "attachment", gb_why_lift_attachment},
    {GB_ROW_LIFT_ALLOWED, "margin", gb_why_lift_margin},
    {GB_ROW_LIFT_ALLOWED, "reach", gb_why_lift_reach},
    {GB_ROW_LIFT_ALLOWED_AT, "allowed", gb_why_lift_allowed},
    {GB_ROW_LIFT_ALLOWED_AT, "capacity", gb_why_lift_capacity},
    {GB_ROW_LIFT_ALLOWED_AT, "attachment", gb_why_lift_attachment},
    {GB_ROW_LIFT_ALLOWED_AT, "margin", gb_why_lift_margin},
    {GB_ROW_LIFT_ALLOWED_AT, "reach", gb_why_lift_reach},
    {GB_ROW_LIFT_RATED, "rated", gb_why_lift_rated},
    {GB_ROW_LIFT_DERATED, "off", gb_why_lift_off},
    {GB_ROW_STONE_LONG, "limit", gb_why_long_stone},
    {GB_ROW_NEED_NET, "net", net},
    {GB_ROW_NEED_NET, "gross", gb_why_gross},
    {GB_ROW_NEED_BAGS, "bags", gb_why_bags_needed},
    {GB_ROW_NEED_BAGS, "yield", yield},
    {GB_ROW_NEED_BAGS, "whole", gb_why_whole_bags},
    {GB_ROW_NEED_POT, "water", gb_why_water_used},
    {GB_ROW_SUPPLY_BAGS, "mass", gb_why_supply_lying},
    {GB_ROW_SUPPLY_BAGS, "packs", gb_why_supply_packs},
    {GB_ROW_SUPPLY_BAGS, "pack", gb_why_supply_pack},
    {GB_ROW_SUPPLY_LOOSE, "mass", gb_why_supply_lying},
    {GB_ROW_SUPPLY_LOOSE, "volume", gb_why_supply_loose},
    {GB_ROW_SUPPLY_MASS, "mass", gb_why_supply_lying},
    {GB_ROW_SUPPLY_LIQUID, "mass", gb_why_supply_lying},
    {GB_ROW_SUPPLY_LIQUID, "volume", gb_why_supply_loose},
    {GB_ROW_TOTAL_WATER, "water", gb_why_total_water},
    {ANY_ROW, "packs", gb_why_packs},
    {ANY_ROW, "pack", gb_why_pack_sold},
    {ANY_ROW, "price", gb_why_price},
    {ANY_ROW, "cost", gb_why_cost},
    {ANY_ROW, "need", gb_why_supply_lying},
    {ANY_ROW, "left", gb_why_left},
    {GB_ROW_GOODS, "money", gb_why_goods},
    {GB_ROW_TAX, "rate", gb_why_tax_rate},
    {GB_ROW_TAX, "money", gb_why_tax},
    {GB_ROW_DELIVERY, "money", gb_why_delivery},
    {GB_ROW_TOTAL, "money", gb_why_total},
    {GB_ROW_TOTAL_WITHOUT, "money", gb_why_total},
    {GB_ROW_TOTAL_WITHOUT, "missing", gb_why_missing},
    {GB_ROW_QUESTION_VOLUME, "bags", gb_why_bags},
    {GB_ROW_QUESTION_VOLUME, "volume", wanted},
    {GB_ROW_QUESTION_VOLUME, "whole", asked_whole},
    {GB_ROW_PART_VOLUME, "loose", gb_why_loose_parts},
    {GB_ROW_PART_LINE, "ratio", gb_why_part_ratio},
    {GB_ROW_PART_LINE, "of_dry", gb_why_part_share},
    {GB_ROW_PART_LINE, "mass", part_mass},
    {GB_ROW_PART_LINE, "in_wet", gb_why_part_in_wet},
    {GB_ROW_POWDER_LINE, "of_dry", gb_why_powder_share},
    {GB_ROW_POWDER_LINE, "mass", gb_why_powder_mass},
    {GB_ROW_POWDER_LINE, "in_wet", gb_why_powder_in_wet},
    {GB_ROW_BLEND_LINE, "mass", bag},
    {GB_ROW_BLEND_LINE, "in_wet", gb_why_blend_in_wet},
    {GB_ROW_WATER_LINE, "of_dry", usual_to_dry},
    {GB_ROW_WATER_LINE, "mass", usual_in_all},
    {GB_ROW_WATER_LINE, "in_wet", gb_why_water_in_wet},
    {GB_ROW_WET_LINE, "mass", wet},
    {GB_ROW_WET_LINE, "in_wet", gb_why_fresh_density},
    {GB_ROW_WATER_LIMITS, "least", least_in_all},
    {GB_ROW_WATER_LIMITS, "usual", usual_in_all},
    {GB_ROW_WATER_LIMITS, "most", most_in_all},
    {GB_ROW_WATER_TO_BINDER, "least", least_to_binder},
    {GB_ROW_WATER_TO_BINDER, "usual", usual_to_binder},
    {GB_ROW_WATER_TO_BINDER, "most", most_to_binder},
    {GB_ROW_WATER_TO_BLEND, "least", least_to_dry},
    {GB_ROW_WATER_TO_BLEND, "usual", usual_to_dry},
    {GB_ROW_WATER_TO_BLEND, "most", most_to_dry},
    {GB_ROW_YIELD, "yield", yield},
    {GB_ROW_PER_VOLUME, "volume", compared_volume},
    {GB_ROW_PER_VOLUME, "bags", gb_why_bags_in_volume},
    {GB_ROW_COVER_AREA, "depth", gb_why_cover_depth},
    {GB_ROW_COVER_AREA, "area", gb_why_cover_area},
    {GB_ROW_COVER_JOINT, "width", gb_why_cover_width},
    {GB_ROW_COVER_JOINT, "depth", gb_why_cover_depth},
    {GB_ROW_COVER_JOINT, "length", gb_why_cover_length},
    {GB_ROW_LIMIT_RANGE, "least", claim_least},
    {GB_ROW_LIMIT_RANGE, "most", claim_most},
    {GB_ROW_LIMIT_RANGE, "value", gb_why_claim_ratio},
    {GB_ROW_LIMIT_OVER, "least", claim_least},
    {GB_ROW_LIMIT_OVER, "most", claim_most},
    {GB_ROW_LIMIT_OVER, "value", gb_why_claim_ratio},
    {GB_ROW_LIMIT_EXACT, "most", claim_most},
    {GB_ROW_LIMIT_EXACT, "value", gb_why_claim_ratio},
    {GB_ROW_LIFE, "life", plain_life},
    {GB_ROW_LIFE, "hot", gb_why_life_in_heat},
    {ANY_ROW, "length", length},
    {ANY_ROW, "width", width},
    {ANY_ROW, "count", count},
    {ANY_ROW, "depth", depth},
    {ANY_ROW, "front", front},
    {ANY_ROW, "side", side},
    {ANY_ROW, "waste", gb_why_need_waste},
    {ANY_ROW, "bag", bag},
    {ANY_ROW, "life", gb_why_life},
    {ANY_ROW, "value", gb_why_caution_value},
    {ANY_ROW, "limit", gb_why_caution_limit},
};

static reason *find(gb_row_code row, const char *figure) {
    for (size_t i = 0; i < sizeof REASONS / sizeof REASONS[0]; i++)
        if (REASONS[i].row == row && strcmp(REASONS[i].figure, figure) == 0)
            return REASONS[i].why;
    return NULL;
}

const gb_why *gb_why_figure(gb_explainer *x, const gb_row *row, const gb_row *outer,
                            const gb_figure *figure) {
    /* Bags are counted within rows on many things; the row outside tells on which. */
    if (row->code == GB_ROW_BAG)
        return outer->code == GB_ROW_SITE_BAGS ? site_bags(x, row->about)
                                               : gb_why_bags(x, row->about);
    if (gb_is_of_change(row->code))
        return gb_why_of_change(x, row, figure);
    if (gb_is_of_steps(row->code))
        return gb_why_of_steps(x, row, figure);
    if (gb_is_of_ways(row->code))
        return gb_why_of_ways(x, row, figure);
    if (gb_is_of_exposures(row->code))
        return gb_why_of_exposures(x, row, figure);
    if (gb_is_of_concrete(row->code))
        return gb_why_of_concrete(x, row, figure);
    if (gb_is_of_log(row->code))
        return gb_why_of_log(x, row, figure);
    reason *why = find(row->code, figure->name);
    if (why == NULL)
        why = find(ANY_ROW, figure->name);
    return why == NULL ? NULL : why(x, row->about);
}

bool gb_only_counts(const gb_row *row, const gb_figure *figure) {
    bool numbered =
        (row->code >= GB_ROW_ORDER_HOT_WATER && row->code <= GB_ROW_ORDER_HOT_CEMENT) ||
        row->code == GB_ROW_ORDER || row->code == GB_ROW_BATCH_LINE ||
        row->code == GB_ROW_DAY_NUMBER || row->code == GB_ROW_DAY_BATCH ||
        row->code == GB_ROW_DAY_NO_ROOM || row->code == GB_ROW_LOG_FILE ||
        row->code == GB_ROW_LOG_DEAD || row->code == GB_ROW_LOG_OPEN ||
        row->code == GB_ROW_LEFT_SO_FAR || row->code == GB_ROW_LEFT_OPEN ||
        row->code == GB_ROW_OTHER || row->code == GB_ROW_OTHER_BLEND ||
        row->code == GB_ROW_LEVEL_BED || row->code == GB_ROW_C_BED_THIN ||
        row->code == GB_ROW_C_BED_THICK || row->code == GB_ROW_GUARD ||
        (row->code >= GB_ROW_MARK_BLOCK && row->code <= GB_ROW_MARK_LANDING_BACK);
    return numbered && strcmp(figure->name, "n") == 0;
}
