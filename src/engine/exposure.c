#include "gaugebox/exposure.h"

#include "gaugebox/count.h"
#include "words/mark.h"

#include <math.h>

const char *const GB_EXPOSURE_WORDS[GB_EXPOSURES + 1] = {
    [GB_IRC_NEGLIGIBLE] = "irc-negligible",
    [GB_IRC_MODERATE] = "irc-moderate",
    [GB_IRC_SEVERE] = "irc-severe",
    [GB_IRC_WALL_MODERATE] = "irc-wall-moderate",
    [GB_IRC_WALL_SEVERE] = "irc-wall-severe",
    [GB_ACI_318_F0] = "aci-318-f0",
    [GB_ACI_318_F1] = "aci-318-f1",
    [GB_ACI_318_F2] = "aci-318-f2",
    [GB_ACI_318_F3] = "aci-318-f3",
    [GB_ACI_318_F3_PLAIN] = "aci-318-f3-plain",
    [GB_ACI_332_RF3] = "aci-332-rf3",
    [GB_EN_206_XF1] = "en-206-xf1",
    [GB_EN_206_XF2] = "en-206-xf2",
    [GB_EN_206_XF3] = "en-206-xf3",
    [GB_EN_206_XF4] = "en-206-xf4",
    [GB_EXPOSURES] = NULL,
};

#define IRC_STEPS N_("IRC table R402.2, porches, carport slabs and steps, as reprinted")
#define IRC_WALLS                                                                        \
    N_("IRC table R402.2, foundation and exterior walls, as reprinted; its air for "     \
       "them from memory")
#define ACI_318                                                                          \
    N_("ACI 318-14 and -19 table 19.3.2.1, second hand; air of table 19.3.3.1 from "     \
       "memory")
#define ACI_332                                                                          \
    N_("ACI 332-20 class RF3, second hand; the air that it asks for was not read, and "  \
       "is not checked")
#define EN_206                                                                           \
    N_("EN 206-1:2000 table F.1 as printed; recommended values, a national annex goes "  \
       "before them")

/* Strengths in the unit that the source prints, air in percent, cement in kg/m3. Classes
   whose figures nobody read are left out: ACI 332 RF0 to RF2. */
#define NO GB_NONE
static const struct {
    const char *unit;
    double strength, ratio;
    double air_least, air_most;
    gb_air_level by_size;
    double cement;
    const char *source;
} RULES[] = {
    [GB_IRC_NEGLIGIBLE] = {"psi", 2500, NO, NO, NO, GB_AIR_TRAPPED, NO, IRC_STEPS},
    [GB_IRC_MODERATE] = {"psi", 3000, NO, 5, 7, GB_AIR_TRAPPED, NO, IRC_STEPS},
    [GB_IRC_SEVERE] = {"psi", 3500, NO, 5, 7, GB_AIR_TRAPPED, NO, IRC_STEPS},
    [GB_IRC_WALL_MODERATE] = {"psi", 3000, NO, 5, 7, GB_AIR_TRAPPED, NO, IRC_WALLS},
    [GB_IRC_WALL_SEVERE] = {"psi", 3000, NO, 5, 7, GB_AIR_TRAPPED, NO, IRC_WALLS},
    [GB_ACI_318_F0] = {"psi", 2500, NO, NO, NO, GB_AIR_TRAPPED, NO, ACI_318},
    [GB_ACI_318_F1] = {"psi", 3500, 0.55, NO, NO, GB_AIR_MODERATE, NO, ACI_318},
    [GB_ACI_318_F2] = {"psi", 4500, 0.45, NO, NO, GB_AIR_SEVERE, NO, ACI_318},
    [GB_ACI_318_F3] = {"psi", 5000, 0.40, NO, NO, GB_AIR_SEVERE, NO, ACI_318},
    [GB_ACI_318_F3_PLAIN] = {"psi", 4500, 0.45, NO, NO, GB_AIR_SEVERE, NO, ACI_318},
    [GB_ACI_332_RF3] = {"psi", 4500, 0.45, NO, NO, GB_AIR_TRAPPED, NO, ACI_332},
    [GB_EN_206_XF1] = {"MPa", 30, 0.55, NO, NO, GB_AIR_TRAPPED, 300, EN_206}, /* C30/37 */
    [GB_EN_206_XF2] = {"MPa", 25, 0.55, 4, NO, GB_AIR_TRAPPED, 300, EN_206},  /* C25/30 */
    [GB_EN_206_XF3] = {"MPa", 30, 0.50, 4, NO, GB_AIR_TRAPPED, 320, EN_206},
    [GB_EN_206_XF4] = {"MPa", 30, 0.45, 4, NO, GB_AIR_TRAPPED, 340, EN_206},
};
_Static_assert(sizeof RULES / sizeof RULES[0] == GB_EXPOSURES, "a rule for every class");
#undef NO

gb_exposure_rule gb_exposure_asks(gb_exposure exposure) {
    return (gb_exposure_rule){
        .strength = {gb_si(GB_PRESSURE, RULES[exposure].unit, RULES[exposure].strength)},
        .ratio = RULES[exposure].ratio,
        .air_least = {RULES[exposure].air_least / 100.0},
        .air_most = {RULES[exposure].air_most / 100.0},
        .air_by_size = RULES[exposure].by_size,
        .cement = {RULES[exposure].cement},
        .source = RULES[exposure].source};
}

/* ---- air by the size of the stone -------------------------------------------------- */

enum { SIZES_OF_318 = 7 }; /* 3/8 to 3 in */

/* The table of ACI 318 for that size; less by 1 % of the concrete where it is stronger
   than 5000 psi. */
static gb_exposure_air air_of_size(gb_exposure exposure, size_t size,
                                   gb_pressure strength) {
    double tolerance = gb_air_tolerance().of_one;
    static const double LESS_IF_STRONG = 0.01;
    bool strong = gb_over(strength.pa, gb_si(GB_PRESSURE, "psi", 5000));
    double table = gb_table_air(size, RULES[exposure].by_size).of_one;
    double less = strong ? LESS_IF_STRONG : 0;
    return (gb_exposure_air){.table = {table},
                             .tolerance = {tolerance},
                             .strong = {less},
                             .least = {table - less - tolerance},
                             .most = {table + tolerance}};
}

static bool size_of_318(gb_length largest, size_t *size) {
    return !isnan(largest.m) && gb_nominal_size(largest, size) && *size < SIZES_OF_318;
}

bool gb_exposure_air_of(gb_exposure exposure, gb_length largest, gb_pressure strength,
                        gb_exposure_air *air) {
    size_t size = 0;
    if (RULES[exposure].by_size == GB_AIR_TRAPPED || !size_of_318(largest, &size))
        return false;
    *air = air_of_size(exposure, size, strength);
    return true;
}

/* ---- a mix against a class --------------------------------------------------------- */

typedef struct checker {
    gb_exposure exposure;
    const gb_exposed_mix *mix;
    gb_exposure_miss *list;
    size_t count;
} checker;

static void add(checker *c, gb_exposure_limit of, double value, double limit) {
    bool unknown = isnan(value) || of == GB_ASKS_STONE;
    c->list[c->count++] = (gb_exposure_miss){c->exposure, of, unknown, value, limit};
}

/* A limit of NaN is none. */
static void at_least(checker *c, gb_exposure_limit of, double value, double limit) {
    if (!isnan(limit) && (isnan(value) || gb_under(value, limit)))
        add(c, of, value, limit);
}

static void at_most(checker *c, gb_exposure_limit of, double value, double limit) {
    if (!isnan(limit) && (isnan(value) || gb_over(value, limit)))
        add(c, of, value, limit);
}

/* Both ends; air that is not known is told once. */
static void check_air(checker *c, gb_share least, gb_share most) {
    double air = c->mix->air.of_one;
    at_least(c, GB_ASKS_AIR_LEAST, air, least.of_one);
    if (!isnan(air))
        at_most(c, GB_ASKS_AIR_MOST, air, most.of_one);
}

/* Stone of a size that is not known: what misses the table, or meets it, whatever the
   size; and between the two the size has to be asked for. */
static void check_air_of_any_size(checker *c) {
    gb_pressure strength = c->mix->strength;
    gb_exposure_air fine = air_of_size(c->exposure, 0, strength);
    gb_exposure_air coarse = air_of_size(c->exposure, SIZES_OF_318 - 1, strength);
    double air = c->mix->air.of_one;
    size_t before = c->count;
    check_air(c, coarse.least, fine.most);
    bool any = !gb_under(air, fine.least.of_one) && !gb_over(air, coarse.most.of_one);
    if (c->count == before && !any)
        add(c, GB_ASKS_STONE, air, GB_NONE);
}

static void check_class(checker *c, const gb_exposure_rule *rule) {
    const gb_exposed_mix *mix = c->mix;
    gb_exposure_air air;
    at_least(c, GB_ASKS_STRENGTH, mix->strength.pa, rule->strength.pa);
    at_most(c, GB_ASKS_RATIO, mix->ratio, rule->ratio);
    if (rule->air_by_size == GB_AIR_TRAPPED)
        check_air(c, rule->air_least, rule->air_most);
    else if (gb_exposure_air_of(c->exposure, mix->largest, mix->strength, &air))
        check_air(c, air.least, air.most);
    else
        check_air_of_any_size(c);
    at_least(c, GB_ASKS_CEMENT, mix->cement.kg_m3, rule->cement.kg_m3);
}

size_t gb_exposure_check(unsigned exposures, const gb_exposed_mix *mix,
                         gb_exposure_miss list[GB_MOST_MISSES]) {
    checker c = {.mix = mix, .list = list};
    for (unsigned e = 0; e < GB_EXPOSURES; e++) {
        if (!(exposures >> e & 1))
            continue;
        c.exposure = (gb_exposure)e;
        gb_exposure_rule rule = gb_exposure_asks(c.exposure);
        check_class(&c, &rule);
    }
    return c.count;
}

/* ---- mixes ------------------------------------------------------------------------- */

bool gb_is_concrete(const gb_mix *mix) {
    if (gb_holds_stone(mix))
        return true;
    bool volume = mix->part_count == 0 && mix->uses >> GB_VOLUME_LAYER & 1;
    return volume || mix->uses >> GB_SLAB & 1;
}

gb_pressure gb_known_strength(const gb_mix *mix) {
    if (mix->strength.pa > 0)
        return mix->strength;
    bool known = gb_is_proportioned(mix) && mix->concrete.strength.pa > 0;
    return known ? mix->concrete.strength : (gb_pressure){GB_NONE};
}

gb_mass gb_cement_of(const gb_mix *mix, const gb_recipe *recipe) {
    gb_mass cement = {mix->part_count == 0 ? GB_NONE : 0};
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material->kind == GB_CEMENT)
            cement.kg += recipe->part[i].kg;
    return cement;
}

gb_exposed_mix gb_exposed_of(const gb_mix *mix, const gb_recipe *recipe) {
    gb_mass cement = gb_cement_of(mix, recipe);
    bool blend = mix->part_count == 0;
    bool sized = mix->largest.m > 0;
    return (gb_exposed_mix){
        .strength = gb_known_strength(mix),
        .ratio = cement.kg > 0 ? recipe->water_most.kg / cement.kg : GB_NONE,
        .air = {blend && !(mix->air.of_one > 0) ? GB_NONE : mix->air.of_one},
        .cement = blend ? (gb_density){GB_NONE} : gb_in_wet(cement, recipe->yield),
        .largest = {sized ? mix->largest.m : GB_NONE}};
}
