#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

/* ---- moisture and bulking ---------------------------------------------------------- */

static bool is_today(const gb_job *job, gb_share moisture) {
    return job != NULL && moisture.of_one == gb_job_moisture(job).of_one;
}

const gb_why *gb_why_moisture(gb_explainer *x, const gb_mixed *m, gb_share moisture) {
    static const char USUAL[] = N_(
        "2, 5 and 8 % for nearly dry, damp and wet sand: common practice; IS 456 prints "
        "2.5, 5 and 7.5 %");
    const gb_job *job = m->job;
    if (m->alone != NULL && m->alone->sand_moisture.of_one == moisture.of_one)
        return gb_stated(x, "moisture", NULL, GB_SHARE, &m->alone->sand_moisture.of_one,
                         NULL);
    if (!is_today(job, moisture))
        return gb_fact(x, "moisture", GB_SHARE, moisture.of_one, USUAL);
    if (!isnan(job->sand.moisture.of_one))
        return gb_stated(x, "moisture", NULL, GB_SHARE, &job->sand.moisture.of_one, NULL);
    return gb_keep_why(x, (gb_why){.name = "moisture",
                                   .unit = GB_SHARE,
                                   .value = moisture.of_one,
                                   .place = gb_places_find(x->places, &job->sand.state),
                                   .source = USUAL});
}

/* Between two points of the usual curve, in a straight line. */
static const gb_why *by_curve(gb_explainer *x, const char *name, const gb_why *moisture) {
    static const char BOARDMAN[] =
        N_("Boardman, as printed by Gillette and Hill, Concrete Construction, 1908");
    const gb_bulking_point *low = NULL;
    const gb_bulking_point *high = NULL;
    if (moisture == NULL)
        return NULL;
    gb_share at = {moisture->value};
    if (!gb_bulking_points(at, &low, &high))
        return gb_fact(x, name, GB_SHARE, GB_NONE, BOARDMAN);
    return GB_WHY(x, name, GB_SHARE, gb_usual_bulking(at).of_one,
                  "low + (high - low) * (moisture - from) / (to - from)",
                  GB_INPUTS(gb_fact(x, "low", GB_SHARE, low->bulking.of_one, BOARDMAN),
                            gb_fact(x, "high", GB_SHARE, high->bulking.of_one, BOARDMAN),
                            gb_fact(x, "from", GB_SHARE, low->moisture.of_one, BOARDMAN),
                            gb_fact(x, "to", GB_SHARE, high->moisture.of_one, BOARDMAN),
                            moisture));
}

const gb_why *gb_why_bulking(gb_explainer *x, const gb_mixed *m, gb_share moisture) {
    const gb_why *wet = gb_why_moisture(x, m, moisture);
    const gb_job *job = m->job;
    if (!is_today(job, moisture))
        return by_curve(x, "bulking", wet);
    const gb_sand_pile *s = &job->sand;
    if (!isnan(s->moist_height.m))
        return GB_WHY(x, "bulking", GB_SHARE, gb_job_lying(job).bulking.of_one,
                      "(moist_height - flooded_height) / flooded_height",
                      GB_INPUTS(gb_stated(x, "moist_height", NULL, GB_LENGTH,
                                          &s->moist_height.m, NULL),
                                gb_stated(x, "flooded_height", NULL, GB_LENGTH,
                                          &s->flooded_height.m, NULL)),
                      .source = N_("settlement test: flooded sand does not bulk"));
    if (!isnan(s->bulking.of_one))
        return gb_stated(x, "bulking", NULL, GB_SHARE, &s->bulking.of_one, NULL);
    return by_curve(x, "bulking", wet);
}

const gb_why *gb_why_loose_density(gb_explainer *x, const gb_mixed *mixed,
                                   const gb_material *m, gb_share moisture) {
    static const char ARMY[] =
        N_("moist volume = settled volume * (1 + bulking): US Army EN 5466");
    if (m->loose_by != NULL)
        return gb_why_loose_stone(x, m->loose_by, "loose_density");
    if (m->kind != GB_SAND)
        return gb_stated(x, "loose_density", m->name, GB_DENSITY, &m->bulk.kg_m3,
                         gb_text_source(x, &m->source));
    const gb_why *gauged_at =
        gb_stated(x, "moisture", m->name, GB_SHARE, &m->gauged_at.of_one,
                  gb_text_source(x, &m->source));
    const gb_why *settled = GB_WHY(
        x, "settled", GB_DENSITY, gb_settled_density(m).kg_m3, "bulk * (1 + bulking)",
        GB_INPUTS(gb_why_bulk(x, m), by_curve(x, "bulking", gauged_at)), .of = m->name,
        .source = ARMY);
    const gb_why *bulking = gb_why_bulking(x, mixed, moisture);
    if (settled == NULL || bulking == NULL)
        return NULL;
    return GB_WHY(x, "loose_density", GB_DENSITY, settled->value / (1.0 + bulking->value),
                  "settled / (1 + bulking)", GB_INPUTS(settled, bulking), .of = m->name,
                  .source = ARMY);
}

/* ---- parts ------------------------------------------------------------------------- */

static const gb_material *material_of(const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return m.mix->parts[a->part].material;
}

const gb_why *gb_why_part(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    const gb_why *bags = gb_why_bags(x, a);
    const gb_why *mass = gb_why_part_mass(x, &m, a->part);
    if (bags == NULL || mass == NULL)
        return NULL;
    return GB_WHY(x, "part", GB_MASS, bags->value * mass->value, "bags * mass",
                  GB_INPUTS(bags, mass), .of = mass->of);
}

/* The same mass as the scale shows it: sand with the moisture of its pile, stone of a
   proportioned concrete with its own. */
static const gb_why *as_it_lies(gb_explainer *x, const gb_about *a, const char *name,
                                const gb_why *dry) {
    gb_mixed m = gb_mixed_of(a);
    const gb_part *part = &m.mix->parts[a->part];
    if (dry == NULL || gb_part_wetness(part, a->moisture).moisture.of_one <= 0)
        return dry;
    bool sand = part->material->kind == GB_SAND;
    bool of_part = strcmp(dry->name, "part") == 0;
    const gb_why *moisture =
        sand ? gb_why_moisture(x, &m, a->moisture) : gb_why_stone_moisture(x, &m);
    return GB_WHY(
        x, name, GB_MASS, gb_part_lying(part, (gb_mass){dry->value}, a->moisture).kg,
        sand ? (of_part ? "part * (1 + moisture)" : "dry * (1 + moisture)")
             : (of_part ? "part * (1 + stone_moisture)" : "dry * (1 + stone_moisture)"),
        GB_INPUTS(dry, moisture), .of = dry->of);
}

const gb_why *gb_why_part_lying(gb_explainer *x, const gb_about *a) {
    return as_it_lies(x, a, "lying", gb_why_part(x, a));
}

static const gb_why *density_of_part(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return gb_why_loose_density(x, &m, material_of(a), a->moisture);
}

const gb_why *gb_why_loose(gb_explainer *x, const gb_about *a) {
    const gb_why *mass = gb_why_part(x, a);
    const gb_why *density = density_of_part(x, a);
    if (mass == NULL || density == NULL)
        return NULL;
    return GB_WHY(x, "loose", GB_VOLUME, mass->value / density->value,
                  "part / loose_density", GB_INPUTS(mass, density), .of = mass->of);
}

/* ---- measures ---------------------------------------------------------------------- */

/* All counts of the shovel's calibration, through one formula. */
static const gb_why *of_shovels(gb_explainer *x, const gb_gauge *g, const char *name,
                                double value, const char *formula) {
    const gb_why **counts =
        gb_arena_take(x->arena, g->shovel_count, sizeof(const gb_why *));
    if (counts == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < g->shovel_count; i++)
        counts[i] = gb_stated(x, "shovels", NULL, GB_PLAIN, &g->shovels[i], NULL);
    return GB_WHY(x, name, GB_PLAIN, value, formula, .inputs = counts,
                  .input_count = g->shovel_count);
}

static const gb_why *mean_of_shovels(gb_explainer *x, const gb_gauge *g) {
    double one = gb_gauge_volume(g, GB_US).m3;
    return of_shovels(x, g, "mean", g->filled.m3 / one, "mean()");
}

static const gb_why *shovel(gb_explainer *x, const gb_gauge *g, gb_volume one) {
    const gb_why *filled = gb_stated(x, "filled", NULL, GB_VOLUME, &g->filled.m3, NULL);
    return GB_WHY(x, "shovel", GB_VOLUME, one.m3, "filled / mean",
                  GB_INPUTS(filled, mean_of_shovels(x, g)));
}

static const gb_why *box(gb_explainer *x, const gb_gauge *g, gb_volume one) {
    if (!isnan(g->volume.m3))
        return gb_stated(x, "box", NULL, GB_VOLUME, &g->volume.m3, NULL);
    return GB_WHY(
        x, "box", GB_VOLUME, one.m3, "length * width * depth",
        GB_INPUTS(gb_stated(x, "length", NULL, GB_LENGTH, &g->inside[0].m, NULL),
                  gb_stated(x, "width", NULL, GB_LENGTH, &g->inside[1].m, NULL),
                  gb_stated(x, "depth", NULL, GB_LENGTH, &g->depth.m, NULL)));
}

static const gb_why *bucket(gb_explainer *x, const gb_gauge *g, gb_volume one) {
    if (!isnan(g->water.kg))
        return GB_WHY(x, "bucket", GB_VOLUME, one.m3, "water / water_density",
                      GB_INPUTS(gb_stated(x, "water", NULL, GB_MASS, &g->water.kg, NULL),
                                gb_water_density(x)));
    if (!isnan(g->volume.m3))
        return gb_stated(x, "bucket", NULL, GB_VOLUME, &g->volume.m3, NULL);
    return gb_fact(x, "bucket", GB_VOLUME, one.m3,
                   N_("the usual bucket, 1/2 ft3, or 12 L in metric units: common "
                      "practice"));
}

const gb_why *gb_why_measure(gb_explainer *x, const gb_about *a) {
    static const gb_why *(*const WAYS[])(gb_explainer *, const gb_gauge *, gb_volume) = {
        [GB_BY_BUCKET] = bucket, [GB_BY_BOX] = box, [GB_BY_SHOVEL] = shovel};
    if (a->question == NULL) {
        const gb_gauge *g = &a->plan->job->gauge;
        return WAYS[g->by](x, g, gb_job_measure(a->plan->job));
    }
    if (!isnan(a->question->bucket.m3))
        return gb_fact(x, "bucket", GB_VOLUME, a->question->bucket.m3,
                       N_("the option --bucket"));
    const gb_gauge usual = gb_usual_gauge();
    return bucket(x, &usual, gb_usual_bucket(x->style.system));
}

/* The words of a measure within formulas. */
static const struct {
    const char *name, *count, *mass, *over, *under;
} WORDS[] = {
    [GB_BY_BUCKET] = {"buckets", "loose / bucket", "bucket * loose_density",
                      "near(buckets, 0.25) / buckets - 1",
                      "1 - near(buckets, 0.25) / buckets"},
    [GB_BY_BOX] = {"boxes", "loose / box", "box * loose_density",
                   "near(boxes, 0.25) / boxes - 1", "1 - near(boxes, 0.25) / boxes"},
    [GB_BY_SHOVEL] = {"shovels", "loose / shovel", "shovel * loose_density",
                      "near(shovels, 1) / shovels - 1", "1 - near(shovels, 1) / shovels"},
};

static gb_gauge_by measure_of(const gb_about *a) {
    return a->question != NULL ? GB_BY_BUCKET : a->plan->job->gauge.by;
}

/* Unrounded. */
static const gb_why *exact_measures(gb_explainer *x, const gb_about *a) {
    const gb_why *volume = gb_why_loose(x, a);
    const gb_why *one = gb_why_measure(x, a);
    if (volume == NULL || one == NULL)
        return NULL;
    gb_gauge_by by = measure_of(a);
    return GB_WHY(x, WORDS[by].name, GB_PLAIN, volume->value / one->value,
                  WORDS[by].count, GB_INPUTS(volume, one), .of = volume->of);
}

/* Shovels are counted, buckets and boxes rounded where they are shown. */
const gb_why *gb_why_measures(gb_explainer *x, const gb_about *a) {
    const gb_why *exact = exact_measures(x, a);
    if (exact == NULL || measure_of(a) != GB_BY_SHOVEL)
        return exact;
    double step = gb_gauge_step(GB_BY_SHOVEL);
    return GB_WHY(x, "counted", GB_PLAIN, gb_round(exact->value, step, GB_NEAREST),
                  "near(shovels, 1)", GB_INPUTS(exact), .of = exact->of);
}

const gb_why *gb_why_off(gb_explainer *x, const gb_about *a) {
    const gb_why *exact = exact_measures(x, a);
    if (exact == NULL)
        return NULL;
    gb_gauge_by by = measure_of(a);
    double count = gb_round(exact->value, gb_gauge_step(by), GB_NEAREST);
    double error = count / exact->value - 1.0;
    return GB_WHY(x, "off", GB_SHARE, fabs(error),
                  error > 0 ? WORDS[by].over : WORDS[by].under, GB_INPUTS(exact),
                  .of = exact->of);
}

const gb_why *gb_why_in_measure(gb_explainer *x, const gb_about *a) {
    const gb_material *s = material_of(a);
    const gb_why *one = gb_why_measure(x, a);
    const gb_why *density = density_of_part(x, a);
    if (one == NULL || density == NULL)
        return NULL;
    const gb_why *dry =
        GB_WHY(x, "dry", GB_MASS, one->value * density->value, WORDS[measure_of(a)].mass,
               GB_INPUTS(one, density), .of = s->name);
    return as_it_lies(x, a, "in_measure", dry);
}

/* ---- cautions ---------------------------------------------------------------------- */

const gb_why *gb_why_lifted(gb_explainer *x, const gb_about *a) {
    const gb_job *job = a->plan->job;
    gb_bucketful heaviest = {0};
    if (!gb_heaviest_bucket(job, a->mix, &heaviest))
        return NULL;
    gb_about of_part = *a;
    of_part.part = heaviest.part;
    of_part.moisture = gb_job_moisture(job);
    const gb_why *full = gb_why_in_measure(x, &of_part);
    const gb_why *pail = gb_fact(x, "pail", GB_MASS, gb_pail().kg,
                                 N_("an empty pail, about 2 lb: common practice"));
    if (full == NULL || pail == NULL)
        return NULL;
    bool wet = strcmp(full->name, "in_measure") == 0;
    return GB_WHY(x, "lifted", GB_MASS, full->value + pail->value,
                  wet ? "in_measure + pail" : "dry + pail", GB_INPUTS(full, pail),
                  .of = full->of);
}

const gb_why *gb_why_shovel_spread(gb_explainer *x, const gb_job *job) {
    const gb_gauge *g = &job->gauge;
    double least = GB_NONE;
    double most = GB_NONE;
    for (size_t i = 0; i < g->shovel_count; i++) {
        least = gb_smaller(least, g->shovels[i]);
        most = gb_larger(most, g->shovels[i]);
    }
    return GB_WHY(
        x, "spread", GB_SHARE, gb_shovel_spread(g).of_one, "(most - least) / mean",
        GB_INPUTS(of_shovels(x, g, "most", most, "most()"),
                  of_shovels(x, g, "least", least, "least()"), mean_of_shovels(x, g)));
}
