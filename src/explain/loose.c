#include "explain/chains.h"

#include <math.h>

#define USUAL_COMPACTION N_("1.2 of a base and of backfill, 1 of a shim: common practice")

static const gb_why *length(gb_explainer *x, const gb_about *a, const char *name,
                            const gb_length *at) {
    return gb_stated(x, name, a->piece->name, GB_LENGTH, &at->m, NULL);
}

static const gb_why *share(gb_explainer *x, const gb_about *a, const char *name,
                           const gb_share *at) {
    return gb_stated(x, name, a->piece->name, GB_SHARE, &at->of_one, NULL);
}

static const gb_why *of_layer(gb_explainer *x, const gb_about *a, const char *name,
                              const double *at, int unit) {
    return gb_stated(x, name, a->piece->name, unit, at, NULL);
}

/* ---- area -------------------------------------------------------------------------- */

/* What goes beyond, and of cloth up its sides. */
static const gb_why *beyond_of(gb_explainer *x, const gb_about *a) {
    const gb_loose *l = a->loose->loose;
    const gb_why *beyond = length(x, a, "beyond", &l->beyond);
    if (l->kind != GB_GEOTEXTILE)
        return beyond;
    return GB_WHY(x, "beyond", GB_LENGTH, l->beyond.m + l->turn_up.m, "sum()",
                  GB_INPUTS(beyond, length(x, a, "turn_up", &l->turn_up)),
                  .of = a->piece->name);
}

/* Under a whole run. */
static const gb_why *under_run(gb_explainer *x, const gb_about *a) {
    const gb_piece *p = a->piece;
    const gb_loose_size *s = &a->loose->size;
    const gb_loose *l = a->loose->loose;
    double m2 = l->kind == GB_GEOTEXTILE ? s->area.m2 / (1 + l->lap.of_one) : s->area.m2;
    return GB_WHY(x, "covered", GB_AREA, m2,
                  "(length + 2 * beyond) * "
                  "(run_length + overhang + overlap + 2 * beyond)",
                  GB_INPUTS(gb_why_run_width(x, p), beyond_of(x, a),
                            gb_why_of_run(x, p, "length"),
                            length(x, a, "overhang", &p->run.overhang),
                            length(x, a, "overlap", &p->run.overlap)),
                  .of = p->name);
}

/* Of one piece, or under a whole run. */
static const gb_why *area_of_one(gb_explainer *x, const gb_about *a) {
    const gb_loose *l = a->loose->loose;
    if (!isnan(l->area.m2))
        return of_layer(x, a, "covered", &l->area.m2, GB_AREA);
    if (gb_lies_under_run(a->piece, l))
        return under_run(x, a);
    const gb_why *area = gb_why_area(x, a->piece);
    const gb_why *around = gb_why_perimeter(x, a->piece);
    if (area == NULL || around == NULL)
        return NULL;
    const gb_why *beyond = beyond_of(x, a);
    double b = l->beyond.m + (l->kind == GB_GEOTEXTILE ? l->turn_up.m : 0);
    gb_plan_size s;
    if (gb_measure_shape(&a->piece->shape, (gb_length){0}, (gb_length){0}, &s) != GB_OK)
        return NULL;
    bool turned = a->piece->shape.kind == GB_CIRCLE; /* its perimeter is its front */
    return GB_WHY(x, "covered", GB_AREA, s.net.m2 + s.perimeter.m * b + 4.0 * b * b,
                  turned ? "area + front * beyond + 4 * beyond * beyond"
                         : "area + perimeter * beyond + 4 * beyond * beyond",
                  GB_INPUTS(area, around, beyond), .of = a->piece->name);
}

const gb_why *gb_why_cloth(gb_explainer *x, const gb_about *a) {
    if (gb_lies_under_run(a->piece, a->loose->loose))
        return GB_WHY(
            x, "cloth", GB_AREA, a->loose->size.area.m2, "covered * (1 + lap)",
            GB_INPUTS(area_of_one(x, a), share(x, a, "lap", &a->loose->loose->lap)),
            .of = a->piece->name);
    return GB_WHY(x, "cloth", GB_AREA, a->loose->size.area.m2,
                  "count * covered * (1 + lap)",
                  GB_INPUTS(gb_why_count(x, a->piece), area_of_one(x, a),
                            share(x, a, "lap", &a->loose->loose->lap)),
                  .of = a->piece->name);
}

const gb_why *gb_why_lap(gb_explainer *x, const gb_about *a) {
    return share(x, a, "lap", &a->loose->loose->lap);
}

/* ---- volume ------------------------------------------------------------------------ */

const gb_why *gb_why_loose_depth(gb_explainer *x, const gb_about *a) {
    return length(x, a, "depth", &a->loose->loose->depth);
}

const gb_why *gb_why_loose_net(gb_explainer *x, const gb_about *a) {
    const gb_loose *l = a->loose->loose;
    const gb_why *count = gb_why_count(x, a->piece);
    double m3 = a->loose->size.net.m3;
    if (l->kind == GB_SEALANT)
        return GB_WHY(x, "net", GB_VOLUME, m3,
                      "count * joint_length * joint_width * depth",
                      GB_INPUTS(count, length(x, a, "joint_length", &l->joint_length),
                                length(x, a, "joint_width", &l->joint_width),
                                gb_why_loose_depth(x, a)),
                      .of = a->piece->name);
    if (!isnan(l->volume.m3))
        return GB_WHY(
            x, "net", GB_VOLUME, m3, "count * volume",
            GB_INPUTS(count, of_layer(x, a, "volume", &l->volume.m3, GB_VOLUME)),
            .of = a->piece->name);
    if (gb_lies_under_run(a->piece, l))
        return GB_WHY(x, "net", GB_VOLUME, m3, "covered * depth",
                      GB_INPUTS(area_of_one(x, a), gb_why_loose_depth(x, a)),
                      .of = a->piece->name);
    return GB_WHY(x, "net", GB_VOLUME, m3, "count * covered * depth",
                  GB_INPUTS(count, area_of_one(x, a), gb_why_loose_depth(x, a)),
                  .of = a->piece->name);
}

static const gb_why *compaction(gb_explainer *x, const gb_about *a) {
    const gb_loose *l = a->loose->loose;
    if (isnan(l->compaction))
        return gb_fact(x, "compaction", GB_PLAIN, gb_usual_compaction(l->kind),
                       USUAL_COMPACTION);
    return of_layer(x, a, "compaction", &l->compaction, GB_PLAIN);
}

const gb_why *gb_why_loose_ordered(gb_explainer *x, const gb_about *a) {
    const gb_loose *l = a->loose->loose;
    const gb_why *net = gb_why_loose_net(x, a);
    double m3 = a->loose->size.ordered.m3;
    if (l->kind == GB_EXCAVATION)
        return GB_WHY(x, "hauled", GB_VOLUME, m3, "net * (1 + swell)",
                      GB_INPUTS(net, share(x, a, "swell", &l->swell)),
                      .of = a->piece->name);
    if (l->kind == GB_SEALANT)
        return GB_WHY(x, "ordered", GB_VOLUME, m3, "net * (1 + extra)",
                      GB_INPUTS(net, share(x, a, "extra", &l->extra)),
                      .of = a->piece->name);
    return GB_WHY(x, "ordered", GB_VOLUME, m3, "net * compaction",
                  GB_INPUTS(net, compaction(x, a)), .of = a->piece->name);
}

/* ---- mass, lifts, lengths, tubes --------------------------------------------------- */

const gb_why *gb_why_loose_mass(gb_explainer *x, const gb_about *a) {
    const gb_material *m = a->loose->loose->material;
    return GB_WHY(x, "loose_mass", GB_MASS, a->loose->size.mass.kg,
                  "ordered * loose_density",
                  GB_INPUTS(gb_why_loose_ordered(x, a),
                            gb_why_loose_density(x, &(gb_mixed){.job = a->plan->job}, m,
                                                 gb_job_lying(a->plan->job).moisture)),
                  .of = m->name);
}

const gb_why *gb_why_lift(gb_explainer *x, const gb_about *a) {
    return length(x, a, "lift", &a->loose->loose->lift);
}

const gb_why *gb_why_lifts(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "lifts", GB_PLAIN, a->loose->size.lifts, "up(depth / lift, 1)",
                  GB_INPUTS(gb_why_loose_depth(x, a), gb_why_lift(x, a)),
                  .of = a->piece->name);
}

const gb_why *gb_why_rod(gb_explainer *x, const gb_about *a) {
    const gb_loose *l = a->loose->loose;
    return GB_WHY(x, "rod", GB_LENGTH, a->loose->size.length.m,
                  "count * joint_length * (1 + extra)",
                  GB_INPUTS(gb_why_count(x, a->piece),
                            length(x, a, "joint_length", &l->joint_length),
                            share(x, a, "extra", &l->extra)),
                  .of = a->piece->name);
}

const gb_why *gb_why_tube(gb_explainer *x, const gb_about *a) {
    return of_layer(x, a, "pack", &a->loose->loose->pack.m3, GB_VOLUME);
}

const gb_why *gb_why_tubes(gb_explainer *x, const gb_about *a) {
    return GB_WHY(x, "packs", GB_PLAIN, a->loose->size.packs, "up(ordered / pack, 1)",
                  GB_INPUTS(gb_why_loose_ordered(x, a), gb_why_tube(x, a)),
                  .of = a->piece->name);
}
