#include "explain/chains.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

/* The ways to one concrete, side by side. */

#define BATCH_TIME N_("a batch gauged, mixed and turned out: common practice")
#define STEP       N_("the step that plants deliver in: common practice")

static const gb_ways_question *question(const gb_about *a) {
    return &a->concrete->ways;
}

static gb_mixed mixed_of(const gb_about *a) {
    return (gb_mixed){.mix = a->way->mix,
                      .recipe = &a->way->recipe,
                      .alone = &a->concrete->asked.mix->concrete};
}

/* ---- how much ---------------------------------------------------------------------- */

static const gb_why *net(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "net", GB_VOLUME, question(a)->net.m3, N_("the option --make"));
}

static const gb_why *gross(gb_explainer *x, const gb_about *a) {
    const gb_ways_question *q = question(a);
    const gb_why *waste =
        gb_fact(x, "waste", GB_SHARE, q->waste.of_one, N_("the option --waste"));
    return GB_WHY(x, "gross", GB_VOLUME, q->net.m3 * (1.0 + q->waste.of_one),
                  "net * (1 + waste)", GB_INPUTS(net(x, a), waste));
}

static const gb_why *bags(gb_explainer *x, const gb_about *a) {
    gb_mixed m = mixed_of(a);
    return GB_WHY(x, "bags", GB_PLAIN, a->way->bags, "gross / yield",
                  GB_INPUTS(gross(x, a), gb_why_yield(x, &m)), .of = m.mix->id);
}

static const gb_why *whole(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "whole", GB_PLAIN, (double)a->way->whole, "up(bags, 1)",
                  GB_INPUTS(bags(x, a)), .of = a->way->mix->id);
}

static const gb_why *bag(gb_explainer *x, const gb_about *a) {
    gb_mixed m = mixed_of(a);
    return gb_why_bag(x, &m);
}

static const gb_why *step(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "step", GB_VOLUME, gb_ready_step(question(a)->system).m3, STEP);
}

static const gb_why *ordered(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "ordered", GB_VOLUME, a->way->ordered.m3, "up(gross, step)",
                  GB_INPUTS(gross(x, a), step(x, a)));
}

static const gb_why *least_load(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "short_load", GB_VOLUME, gb_short_load(question(a)->system).m3,
                   N_("below it most plants charge more: common practice"));
}

/* ---- batches ----------------------------------------------------------------------- */

static const gb_why *mixer(gb_explainer *x, const gb_about *a) {
    return gb_fact(x, "mixer", GB_VOLUME, question(a)->mixer.m3,
                   N_("the option --mixer"));
}

static const gb_why *bags_a_batch(gb_explainer *x, const gb_about *a) {
    gb_mixed m = mixed_of(a);
    const gb_why *most =
        gb_why_bags_in_mixer(x, &m, question(a)->mixer.m3, a->way->bags_a_batch);
    return most == NULL ? NULL
                        : GB_WHY(x, "bags_a_batch", GB_PLAIN, most->value, "bags",
                                 GB_INPUTS(most), .of = m.mix->id);
}

static const gb_why *batches(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "batches", GB_PLAIN, (double)a->way->batches,
                  "up(bags / bags_a_batch, 1)", GB_INPUTS(bags(x, a), bags_a_batch(x, a)),
                  .of = a->way->mix->id);
}

static const gb_why *each(gb_explainer *x, const gb_about *a) {
    gb_crew crew = {.mixing = {GB_NONE}};
    (void)a;
    return gb_fact(x, "each", GB_DURATION, gb_mixing_time(&crew).s, BATCH_TIME);
}

static const gb_why *mixing(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "mixing", GB_DURATION, a->way->mixing.s, "batches * each",
                  GB_INPUTS(batches(x, a), each(x, a)), .of = a->way->mix->id);
}

/* ---- what it takes ----------------------------------------------------------------- */

static const gb_why *dry_part(gb_explainer *x, const gb_about *a, size_t part) {
    gb_mixed m = mixed_of(a);
    const gb_why *mass = gb_why_part_mass(x, &m, part);
    const gb_why *count = bags(x, a);
    if (x->failed)
        return NULL;
    return GB_WHY(x, "dry", GB_MASS, count->value * mass->value, "bags * mass",
                  GB_INPUTS(count, mass), .of = mass->of);
}

/* One part as it lies. */
static const gb_why *part_lying(gb_explainer *x, const gb_about *a, size_t part) {
    gb_mixed m = mixed_of(a);
    const gb_part *p = &m.mix->parts[part];
    const gb_why *dry = dry_part(x, a, part);
    double kg = a->way->needs[part].lying.kg;
    if (dry == NULL || gb_part_wetness(p, question(a)->moisture).moisture.of_one <= 0)
        return dry;
    if (p->material->kind == GB_SAND)
        return GB_WHY(x, "lying", GB_MASS, kg, "dry * (1 + moisture)",
                      GB_INPUTS(dry, gb_why_moisture(x, &m, question(a)->moisture)),
                      .of = dry->of);
    return GB_WHY(x, "lying", GB_MASS, kg, "dry * (1 + stone_moisture)",
                  GB_INPUTS(dry, gb_why_stone_moisture(x, &m)), .of = dry->of);
}

static const gb_why *blend(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "blend", GB_MASS, a->way->needs[0].mass.kg, "whole * bag",
                  GB_INPUTS(whole(x, a), bag(x, a)), .of = a->way->mix->id);
}

static size_t part_of(const gb_about *a) {
    size_t i = 0;
    while (i + 1 < a->way->need_count && &a->way->needs[i] != a->supply)
        i++;
    return i;
}

static const gb_why *need_of(gb_explainer *x, const gb_about *a) {
    const gb_way *w = a->way;
    if (w->mix != NULL && w->mix->part_count > 0)
        return part_lying(x, a, part_of(a));
    if (w->mix != NULL)
        return blend(x, a);
    const gb_material *ready = question(a)->ready;
    const gb_why *density =
        gb_stated(x, "density", ready->name, GB_DENSITY, &ready->bulk.kg_m3,
                  gb_text_source(x, &ready->source));
    return GB_WHY(x, "lying", GB_MASS, w->needs[0].lying.kg, "ordered * density",
                  GB_INPUTS(ordered(x, a), density));
}

/* Under the name that packs are counted by. */
const gb_why *gb_why_way_lying(gb_explainer *x, const gb_about *a) {
    const gb_why *need = need_of(x, a);
    if (need == NULL)
        return NULL;
    return GB_WHY(x, "need", GB_MASS, need->value, need->name, GB_INPUTS(need),
                  .of = need->of);
}

const gb_why *gb_why_way_loose(gb_explainer *x, const gb_about *a) {
    const gb_way *w = a->way;
    if (w->mix == NULL)
        return GB_WHY(x, "loose", GB_VOLUME, w->ordered.m3, "ordered",
                      GB_INPUTS(ordered(x, a)));
    gb_mixed m = mixed_of(a);
    size_t part = part_of(a);
    const gb_why *density =
        gb_why_loose_density(x, &m, w->mix->parts[part].material, question(a)->moisture);
    return GB_WHY(x, "loose", GB_VOLUME, w->needs[part].loose.m3, "dry / loose_density",
                  GB_INPUTS(dry_part(x, a, part), density),
                  .of = w->mix->parts[part].material->name);
}

static const gb_why *loose(gb_explainer *x, const gb_about *a) {
    gb_about of_part = *a;
    of_part.supply = &a->way->needs[a->part];
    return gb_why_way_loose(x, &of_part);
}

/* The water that is added, at that moisture. */
static const gb_why *water(gb_explainer *x, const gb_about *a) {
    gb_mixed m = mixed_of(a);
    gb_water_row row = {0};
    gb_share moisture = question(a)->moisture;
    if (gb_water_to_add(m.mix, m.recipe, moisture, a->way->bags, &row) != GB_OK)
        return gb_fact(x, "to_add", GB_MASS, 0,
                       N_("none: the sand brings more than the mix may hold"));
    const gb_why *usual = gb_why_water(x, &m, GB_USUAL_WATER);
    if (!(m.recipe->sand.kg > 0))
        return GB_WHY(x, "to_add", GB_MASS, row.usual.kg, "bags * usual_water",
                      GB_INPUTS(bags(x, a), usual));
    if (!gb_is_proportioned(m.mix))
        return GB_WHY(x, "to_add", GB_MASS, row.usual.kg,
                      "bags * (usual_water - sand * moisture)",
                      GB_INPUTS(bags(x, a), usual, gb_why_sand(x, &m),
                                gb_why_moisture(x, &m, moisture)));
    return GB_WHY(x, "to_add", GB_MASS, row.usual.kg,
                  "bags * (usual_water - sand * moisture + drunk)",
                  GB_INPUTS(bags(x, a), usual, gb_why_sand(x, &m),
                            gb_why_moisture(x, &m, moisture), gb_why_drunk(x, &m)));
}

static const gb_why *carried(gb_explainer *x, const gb_about *a) {
    const gb_way *w = a->way;
    const gb_why *all[GB_MOST_PARTS + 1];
    size_t n = 0;
    if (w->mix->part_count == 0)
        all[n++] = blend(x, a);
    for (size_t i = 0; i < w->mix->part_count; i++)
        all[n++] = part_lying(x, a, i);
    all[n++] = water(x, a);
    return GB_WHY(x, "carried", GB_MASS, w->carried.kg, "sum()", .inputs = all,
                  .input_count = n, .of = w->mix->id);
}

static const gb_why *air(gb_explainer *x, const gb_about *a) {
    gb_mixed m = mixed_of(a);
    return gb_why_mix_air(x, &m);
}

static const gb_why *strength(gb_explainer *x, const gb_about *a) {
    gb_mixed m = mixed_of(a);
    return gb_why_known_strength(x, &m);
}

static const gb_why *cost(gb_explainer *x, const gb_about *a) {
    const gb_priced priced = {.list = &a->way->list, .book = question(a)->book};
    gb_about of_list = *a;
    of_list.priced = &priced;
    return gb_why_total(x, &of_list);
}

/* ---- by row and figure ------------------------------------------------------------- */

static const struct {
    gb_row_code row;
    const char *figure;
    const gb_why *(*why)(gb_explainer *x, const gb_about *a);
} ROWS[] = {
    {GB_ROW_WAYS_TITLE, "net", net},
    {GB_ROW_WAYS_TITLE_WASTE, "net", net},
    {GB_ROW_WAYS_TITLE_WASTE, "gross", gross},
    {GB_ROW_WAY_BAGS, "whole", whole},
    {GB_ROW_WAY_BAGS, "bag", bag},
    {GB_ROW_WAY_ORDER, "ordered", ordered},
    {GB_ROW_WAY_BATCHES, "batches", batches},
    {GB_ROW_WAY_MIXING, "mixing", mixing},
    {GB_ROW_WAY_CARRIED, "carried", carried},
    {GB_ROW_WAY_COST, "cost", cost},
    {GB_ROW_WAY_LOOSE, "loose", loose},
    {GB_ROW_WAY_AIR, "air", air},
    {GB_ROW_WAY_STRENGTH, "strength", strength},
    {GB_ROW_WAYS_TIME, "each", each},
    {GB_ROW_WAYS_TIME, "mixer", mixer},
    {GB_ROW_WAYS_READY, "step", step},
    {GB_ROW_WAYS_READY, "least", least_load},
};

bool gb_is_of_ways(gb_row_code row) {
    return row >= GB_ROW_WAYS_TITLE && row <= GB_ROW_WAYS_NOT_ALIKE;
}

const gb_why *gb_why_of_ways(gb_explainer *x, const gb_row *row,
                             const gb_figure *figure) {
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        if (ROWS[i].row == row->code && strcmp(ROWS[i].figure, figure->name) == 0)
            return ROWS[i].why(x, row->about);
    return NULL;
}
