#include "engine/caution.h"

#include "gaugebox/count.h"
#include "words/mark.h"

#include <math.h>

#define TMS_602        N_("TMS 602 art. 1.8 C and D")
#define TMS_602_COLOUR N_("TMS 602 art. 2.2, from memory")
#define ACI_305        N_("ACI 305R")
#define ACI_301        N_("ACI 301, second hand")
#define UFGS           N_("UFGS 03301A: kept from rain for 12 h")
#define ACI_306        N_("ACI 306R")
#define ACI_306_MEMORY N_("ACI 306R, from memory")
#define PRACTICE       N_("common practice")
#define NIOSH          N_("NIOSH lifting equation, load constant")
/* Of the code alone; a caution names the limit's own source. */
#define CLAIMED N_("the standard that the mix claims")
#define EXPOSED N_("the exposure class that the job states")

static const struct {
    gb_severity severity;
    gb_kind kind;
    const char *source;
} CODES[] = {
    [GB_C_MIXER_SMALL] = {GB_CAUTION, GB_VOLUME, PRACTICE},
    [GB_C_MIXER_WEAK] = {GB_CAUTION, GB_MASS, PRACTICE},
    [GB_C_MIXER_TOO_SMALL] = {GB_STOP, GB_VOLUME, PRACTICE},
    [GB_C_MIXER_TOO_WEAK] = {GB_STOP, GB_MASS, PRACTICE},
    [GB_C_LIFE_TOO_SHORT] = {GB_STOP, GB_DURATION, PRACTICE},
    [GB_C_LIFE_SHORT] = {GB_CAUTION, GB_DURATION, PRACTICE},
    [GB_C_SCORED_THIN] = {GB_NOTE, GB_LENGTH, PRACTICE},
    [GB_C_BED_THIN] = {GB_CAUTION, GB_LENGTH, PRACTICE},
    [GB_C_BED_THICK] = {GB_CAUTION, GB_LENGTH, PRACTICE},
    [GB_C_DEPTH_SPREAD] = {GB_CAUTION, GB_SHARE, PRACTICE},
    [GB_C_BY_HAND] = {GB_NOTE, GB_KINDS, PRACTICE},
    [GB_C_AIR_BY_HAND] = {GB_STOP, GB_KINDS, PRACTICE},
    [GB_C_AIR_BY_NOTHING] = {GB_CAUTION, GB_KINDS, PRACTICE},
    [GB_C_NO_PACE] = {GB_NOTE, GB_KINDS, PRACTICE},
    [GB_C_SAND_DRINKS] = {GB_CAUTION, GB_SHARE, PRACTICE},
    [GB_C_SAND_TOO_WET] = {GB_STOP, GB_SHARE, PRACTICE},
    [GB_C_BUCKET_HEAVY] = {GB_CAUTION, GB_MASS, NIOSH},
    [GB_C_SHOVELS_DIFFER] = {GB_CAUTION, GB_SHARE, PRACTICE},
    [GB_C_COLOUR_PARTS] = {GB_NOTE, GB_KINDS, PRACTICE},
    [GB_C_COLOUR_STRONG] = {GB_CAUTION, GB_SHARE, TMS_602_COLOUR},
    [GB_C_CARBON_BLACK] = {GB_CAUTION, GB_SHARE, TMS_602_COLOUR},
    [GB_C_ANTIFREEZE] = {GB_CAUTION, GB_KINDS, PRACTICE},
    [GB_C_CHLORIDE] = {GB_CAUTION, GB_SHARE, ACI_306_MEMORY},
    [GB_C_COLD_40] = {GB_CAUTION, GB_TEMP, TMS_602},
    [GB_C_COLD_32] = {GB_CAUTION, GB_TEMP, TMS_602},
    [GB_C_COLD_25] = {GB_CAUTION, GB_TEMP, TMS_602},
    [GB_C_COLD_20] = {GB_STOP, GB_TEMP, TMS_602},
    [GB_C_WIND_BREAK] = {GB_CAUTION, GB_SPEED, TMS_602},
    [GB_C_CONCRETE_COLD] = {GB_CAUTION, GB_TEMP, ACI_306},
    [GB_C_DRYING] = {GB_CAUTION, GB_EVAPORATION, ACI_305},
    [GB_C_DRYING_UNKNOWN] = {GB_NOTE, GB_KINDS, ACI_305},
    [GB_C_HOT] = {GB_CAUTION, GB_TEMP, TMS_602},
    [GB_C_HOT_SHADE] = {GB_CAUTION, GB_TEMP, TMS_602},
    [GB_C_STONE_COLD] = {GB_STOP, GB_TEMP, PRACTICE},
    [GB_C_UNITS_COLD] = {GB_STOP, GB_TEMP, PRACTICE},
    [GB_C_UNITS_FROZEN] = {GB_STOP, GB_TEMP, TMS_602},
    [GB_C_FROST_DUE] = {GB_STOP, GB_TEMP, PRACTICE},
    [GB_C_CONCRETE_HOT] = {GB_CAUTION, GB_TEMP, ACI_301},
    [GB_C_RAIN_AFTER] = {GB_CAUTION, GB_DURATION, UFGS},
    [GB_C_RAIN] = {GB_STOP, GB_KINDS, PRACTICE},
    [GB_C_CLAIM_CEMENT] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_LIME_LITTLE] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_LIME_NOT_OVER] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_LIME_MUCH] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_SAND_LITTLE] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_SAND_MUCH] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_SAND_CEMENT_LITTLE] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_SAND_CEMENT_MUCH] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_STONE_LITTLE] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_STONE_MUCH] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_PORTLAND_LITTLE] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_PORTLAND_MUCH] = {GB_CAUTION, GB_KINDS, CLAIMED},
    [GB_C_EXPOSED_WEAK] = {GB_CAUTION, GB_PRESSURE, EXPOSED},
    [GB_C_EXPOSED_WET] = {GB_CAUTION, GB_KINDS, EXPOSED},
    [GB_C_EXPOSED_LITTLE_AIR] = {GB_CAUTION, GB_SHARE, EXPOSED},
    [GB_C_EXPOSED_MUCH_AIR] = {GB_CAUTION, GB_SHARE, EXPOSED},
    [GB_C_EXPOSED_LEAN] = {GB_CAUTION, GB_DENSITY, EXPOSED},
    [GB_C_EXPOSED_UNKNOWN] = {GB_NOTE, GB_KINDS, EXPOSED},
    [GB_C_EXPOSURE_NOT_STATED] = {GB_NOTE, GB_KINDS, PRACTICE},
};
_Static_assert(sizeof CODES / sizeof CODES[0] == GB_CAUTION_CODES,
               "every caution code has its severity and source");

gb_severity gb_caution_severity(gb_caution_code code) {
    return CODES[code].severity;
}

const char *gb_caution_source(gb_caution_code code) {
    return CODES[code].source;
}

static void add_from(gb_caution_list *to, gb_caution_code code, double value,
                     double limit, const char *source) {
    if (to->count == GB_CAUTION_CODES)
        return;
    to->list[to->count++] = (gb_caution){.code = code,
                                         .severity = CODES[code].severity,
                                         .kind = CODES[code].kind,
                                         .value = value,
                                         .limit = limit,
                                         .source = source};
}

void gb_add_caution(gb_caution_list *to, gb_caution_code code, double value,
                    double limit) {
    add_from(to, code, value, limit, CODES[code].source);
}

/* ---- claims ------------------------------------------------------------------------ */

/* What each ratio raises on each side; only lime has a least that must be passed. */
static const gb_caution_code SIDES[GB_RATIOS][GB_SIDES] = {
    [GB_LIME_TO_CEMENT] = {[GB_TOO_LITTLE] = GB_C_LIME_LITTLE,
                           [GB_NOT_OVER] = GB_C_LIME_NOT_OVER,
                           [GB_TOO_MUCH] = GB_C_LIME_MUCH},
    [GB_SAND_TO_BINDER] = {[GB_TOO_LITTLE] = GB_C_SAND_LITTLE,
                           [GB_NOT_OVER] = GB_C_SAND_LITTLE,
                           [GB_TOO_MUCH] = GB_C_SAND_MUCH},
    [GB_SAND_TO_CEMENT] = {[GB_TOO_LITTLE] = GB_C_SAND_CEMENT_LITTLE,
                           [GB_NOT_OVER] = GB_C_SAND_CEMENT_LITTLE,
                           [GB_TOO_MUCH] = GB_C_SAND_CEMENT_MUCH},
    [GB_STONE_TO_BINDER] = {[GB_TOO_LITTLE] = GB_C_STONE_LITTLE,
                            [GB_NOT_OVER] = GB_C_STONE_LITTLE,
                            [GB_TOO_MUCH] = GB_C_STONE_MUCH},
    [GB_PORTLAND_TO_MASONRY] = {[GB_TOO_LITTLE] = GB_C_PORTLAND_LITTLE,
                                [GB_NOT_OVER] = GB_C_PORTLAND_LITTLE,
                                [GB_TOO_MUCH] = GB_C_PORTLAND_MUCH},
};

gb_ratio gb_caution_ratio(gb_caution_code code) {
    for (gb_ratio ratio = GB_LIME_TO_CEMENT; ratio < GB_RATIOS; ratio++)
        for (gb_side side = GB_TOO_LITTLE; side < GB_SIDES; side++)
            if (SIDES[ratio][side] == code)
                return ratio;
    return GB_NO_RATIO;
}

static void claim_cautions(const gb_mix *mix, gb_caution_list *to) {
    gb_conformity c;
    gb_check_claim(mix, &c);
    if (!c.known)
        add_from(to, GB_C_CLAIM_CEMENT, GB_NONE, GB_NONE, gb_claim_source(c.claim));
    for (size_t i = 0; i < c.count; i++) {
        const gb_claim_limit *l = &c.limits[i];
        if (l->side != GB_WITHIN)
            add_from(to, SIDES[l->ratio][l->side], l->value,
                     l->side == GB_TOO_MUCH ? l->most : l->least, l->source);
    }
}

/* ---- depths, mixer, gauge ------------------------------------------------------------
 */

static bool tread_caution(const gb_take *t, size_t tread, gb_caution *c) {
    const gb_levels *l = &t->layer->levels;
    double bed = gb_level_bed(l, tread);
    bool thin = bed < l->least.m && gb_under(bed / l->least.m, 1.0);
    if (!thin && !gb_over(bed / l->most.m, 1.0))
        return false;
    gb_caution_code code = thin ? GB_C_BED_THIN : GB_C_BED_THICK;
    *c = (gb_caution){.code = code,
                      .severity = CODES[code].severity,
                      .kind = CODES[code].kind,
                      .value = bed,
                      .limit = thin ? l->least.m : l->most.m,
                      .source = CODES[code].source,
                      .take = t,
                      .tread = tread};
    return true;
}

size_t gb_level_cautions(const gb_need *need, gb_caution *list) {
    size_t n = 0;
    gb_caution c;
    for (size_t i = 0; i < need->take_count; i++)
        for (size_t k = 0; k < need->takes[i]->layer->levels.block_count; k++)
            if (tread_caution(need->takes[i], k, &c)) {
                if (list != NULL)
                    list[n] = c;
                n++;
            }
    return n;
}

static void depth_cautions(const gb_need *need, gb_caution_list *to) {
    static const double MOST_ERROR = 0.10; /* of the mean: common practice */
    double worst = 0;
    bool thin = false;
    double thinnest = GB_NONE;
    gb_length usual = gb_usual_slurry(GB_SCORED);
    for (size_t i = 0; i < need->take_count; i++) {
        const gb_take *t = need->takes[i];
        if (t->depth.m > 0)
            worst = gb_larger(worst, t->depth_se.m / t->depth.m);
        if (t->layer->kind == GB_SLURRY && t->layer->back == GB_SCORED &&
            gb_under(t->depth.m / usual.m, 1.0)) {
            thin = true;
            thinnest = gb_smaller(thinnest, t->depth.m);
        }
    }
    if (gb_over(worst, MOST_ERROR))
        gb_add_caution(to, GB_C_DEPTH_SPREAD, worst, MOST_ERROR);
    if (thin)
        gb_add_caution(to, GB_C_SCORED_THIN, thinnest, usual.m);
}

/* Not even an eighth of a bag can be batched. */
static void no_batch_caution(const gb_mix_plan *mix, gb_caution_list *to) {
    const gb_batching *b = &mix->batching;
    double mixing = gb_wet_mixing(mix->need.mix).s;
    if (b->limit == GB_LIMIT_MASS)
        gb_add_caution(to, GB_C_MIXER_TOO_WEAK, b->mixer->most.kg,
                       gb_wet_mass(&mix->recipe).kg / 8.0);
    else if (b->limit == GB_LIMIT_TIME)
        gb_add_caution(to, GB_C_LIFE_TOO_SHORT, mixing + b->bag_time.s / 8.0,
                       mix->life.s);
    else
        gb_add_caution(to, GB_C_MIXER_TOO_SMALL, gb_usable(b->mixer).m3,
                       mix->recipe.yield.m3 / 8.0);
}

/* Part bags by mass, and why; nothing when the need itself is that small. */
static void part_bag_caution(const gb_mix_plan *mix, gb_caution_list *to) {
    const gb_batching *b = &mix->batching;
    double mixing = gb_wet_mixing(mix->need.mix).s;
    if (b->limit == GB_LIMIT_TIME)
        gb_add_caution(to, GB_C_LIFE_SHORT, mixing + b->bag_time.s, mix->life.s);
    else if (b->limit == GB_LIMIT_MASS)
        gb_add_caution(to, GB_C_MIXER_WEAK, b->mixer->most.kg,
                       gb_wet_mass(&mix->recipe).kg);
    else if (b->limit == GB_LIMIT_VOLUME)
        gb_add_caution(to, GB_C_MIXER_SMALL, gb_usable(b->mixer).m3,
                       mix->recipe.yield.m3);
}

bool gb_heaviest_bucket(const gb_job *job, const gb_mix_plan *mix,
                        gb_bucketful *heaviest) {
    const gb_mix *m = mix->need.mix;
    gb_bucketful worst = {0};
    if (job->gauge.by != GB_BY_BUCKET || mix->batching.batch_count == 0)
        return false;
    gb_lying lying = gb_job_lying(job);
    gb_volume one = gb_job_measure(job);
    for (size_t i = 1; i < m->part_count; i++) {
        const gb_material *material = m->parts[i].material;
        gb_mass dry = {mix->recipe.part[i].kg * mix->batching.batches[0].bags};
        gb_volume loose = gb_loose_volume(material, dry, lying);
        gb_gauged gauged = gb_gauge_loose(material, loose, GB_BY_BUCKET, one);
        if (gauged.weighed || gauged.count < 1.0)
            continue;
        gb_mass full = gb_part_lying(&m->parts[i], gb_dry_mass(material, one, lying),
                                     lying.moisture);
        if (full.kg > worst.mass.kg)
            worst = (gb_bucketful){i, full};
    }
    *heaviest = worst;
    return worst.mass.kg > 0;
}

static void hand_caution(const gb_mix_plan *mix, gb_caution_list *to) {
    bool by_hand =
        mix->batching.batch_count > 0 && mix->batching.mixer->kind == GB_BARROW;
    double whole = gb_round(gb_bags_used(mix), 1.0, GB_UP);
    if (by_hand && whole > gb_most_by_hand())
        gb_add_caution(to, GB_C_BY_HAND, whole, gb_most_by_hand());
}

/* Air that is asked for and will not come. */
static void air_cautions(const gb_mix_plan *mix, gb_caution_list *to) {
    const gb_mix *m = mix->need.mix;
    bool by_hand =
        mix->batching.batch_count > 0 && mix->batching.mixer->kind == GB_BARROW;
    bool asked = gb_is_proportioned(m) && gb_is_entrained(&m->concrete);
    if (by_hand && (asked || gb_entrains_air(m)))
        gb_add_caution(to, GB_C_AIR_BY_HAND, GB_NONE, GB_NONE);
    if (asked && !gb_entrains_air(m))
        gb_add_caution(to, GB_C_AIR_BY_NOTHING, GB_NONE, GB_NONE);
}

/* What is lifted, and how well a shovel is known. */
static void gauge_cautions(const gb_job *job, const gb_mix_plan *mix,
                           gb_caution_list *to) {
    static const double MOST_SPREAD = 0.10; /* of the mean count: common practice */
    gb_bucketful heaviest = {0};
    if (gb_heaviest_bucket(job, mix, &heaviest)) {
        double lifted = heaviest.mass.kg + gb_pail().kg;
        if (gb_over(lifted, gb_lift_limit().kg))
            gb_add_caution(to, GB_C_BUCKET_HEAVY, lifted, gb_lift_limit().kg);
    }
    if (job->gauge.by != GB_BY_SHOVEL || !(mix->recipe.sand.kg > 0))
        return;
    double spread = gb_shovel_spread(&job->gauge).of_one;
    if (gb_over(spread, MOST_SPREAD))
        gb_add_caution(to, GB_C_SHOVELS_DIFFER, spread, MOST_SPREAD);
}

/* The share of the binder that additions of that kind come to. */
static double share_of_kind(const gb_mix *mix, gb_material_kind kind) {
    double share = 0;
    for (size_t i = 0; i < mix->addition_count; i++)
        if (mix->additions[i].material->kind == kind &&
            !isnan(mix->additions[i].share.of_one))
            share += mix->additions[i].share.of_one;
    return share;
}

static bool has_kind(const gb_mix *mix, gb_material_kind kind) {
    for (size_t i = 0; i < mix->addition_count; i++)
        if (mix->additions[i].material->kind == kind)
            return true;
    return false;
}

static bool has_masonry_cement(const gb_mix *mix) {
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material->masonry != GB_NOT_MASONRY)
            return true;
    return false;
}

/* TMS 602, from memory: mineral pigment 10 % of portland cement, which reading holds it
   to, and 5 % of masonry cement; carbon black 2 and 1 %. */
static void colour_cautions(const gb_mix *mix, gb_caution_list *to) {
    bool masonry = has_masonry_cement(mix);
    double most_black = masonry ? 0.01 : 0.02;
    double black = share_of_kind(mix, GB_CARBON_BLACK);
    double pigment = share_of_kind(mix, GB_PIGMENT);
    if (masonry && gb_over(pigment, 0.05))
        gb_add_caution(to, GB_C_COLOUR_STRONG, pigment, 0.05);
    if (gb_over(black, most_black))
        gb_add_caution(to, GB_C_CARBON_BLACK, black, most_black);
}

static void addition_cautions(const gb_mix *mix, gb_caution_list *to) {
    static const double MOST_CHLORIDE = 0.02;
    colour_cautions(mix, to);
    if (has_kind(mix, GB_ANTIFREEZE))
        gb_add_caution(to, GB_C_ANTIFREEZE, GB_NONE, GB_NONE);
    if (has_kind(mix, GB_CHLORIDE))
        gb_add_caution(to, GB_C_CHLORIDE, share_of_kind(mix, GB_CHLORIDE), MOST_CHLORIDE);
}

void gb_entry_cautions(const gb_mix *mix, gb_caution_list *to) {
    claim_cautions(mix, to);
    addition_cautions(mix, to);
}

/* The pile against what the mix may hold, and what its sand absorbs. */
static void pile_cautions(const gb_job *job, const gb_mix_plan *mix,
                          gb_caution_list *to) {
    const gb_mix *m = mix->need.mix;
    const gb_recipe *r = &mix->recipe;
    gb_share pile = gb_job_moisture(job);
    gb_water_row row = {0};
    if (m->part_count > 0 && gb_water_to_add(m, r, pile, 1.0, &row) != GB_OK)
        gb_add_caution(to, GB_C_SAND_TOO_WET, pile.of_one,
                       (r->water_least.kg + r->drunk.kg) / r->sand.kg);
    for (size_t i = 0; i < m->part_count; i++)
        if (m->parts[i].material->kind == GB_SAND &&
            gb_under(pile.of_one, m->parts[i].absorption.of_one))
            gb_add_caution(to, GB_C_SAND_DRINKS, pile.of_one,
                           m->parts[i].absorption.of_one);
}

void gb_plan_cautions(const gb_job *job, const gb_mix_plan *mix, gb_caution_list *to) {
    const gb_batching *b = &mix->batching;
    gb_entry_cautions(mix->need.mix, to);
    depth_cautions(&mix->need, to);
    pile_cautions(job, mix, to);
    if (mix->is_slurry)
        return;
    hand_caution(mix, to);
    air_cautions(mix, to);
    gauge_cautions(job, mix, to);
    if (b->batch_count == 0)
        no_batch_caution(mix, to);
    else if (b->part_bags)
        part_bag_caution(mix, to);
    if (b->part_bags && gb_is_coloured(mix->need.mix))
        gb_add_caution(to, GB_C_COLOUR_PARTS, GB_NONE, GB_NONE);
    if (isnan(b->time_to_place.s) && b->batch_count > 0)
        gb_add_caution(to, GB_C_NO_PACE, GB_NONE, GB_NONE);
}
