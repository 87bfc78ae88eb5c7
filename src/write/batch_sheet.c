#include "write/batch_rows.h"
#include "write/concrete_rows.h"
#include "write/gauge_rows.h"
#include "write/layer_rows.h"

#include <math.h>

/* The batch sheet: one block per mix, each whole enough to be cut out and taped to the
   mixer by itself. */

/* ---- head ------------------------------------------------------------------------ */

static void add_overhang(gb_builder *b, const gb_piece *p) {
    gb_figure front = gb_num("front", GB_SHOW_LENGTH, p->overhang_front.m);
    if (p->overhang_side.m > 0)
        GB_ADD(b, OVERHANG_SIDES, front,
               gb_num("side", GB_SHOW_LENGTH, p->overhang_side.m));
    else if (p->overhang_front.m > 0)
        GB_ADD(b, OVERHANG, front);
}

static void add_laid(gb_builder *b, const gb_take *t) {
    const gb_shape *shape = &t->piece->shape;
    gb_figure name = gb_txt("name", t->piece->name);
    gb_figure count = gb_num("count", GB_SHOW_COUNT, t->units);
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, t->depth.m);
    gb_figure length = gb_num("length", GB_SHOW_LENGTH, shape->front.m);
    gb_figure width = gb_num("width", GB_SHOW_LENGTH, shape->width.m);
    if (shape->kind != GB_RECTANGLE)
        GB_ADD(b, LAID_SHAPED, name, count,
               gb_row_fig(b, "shape", gb_shape_row(b, shape->kind)),
               gb_num("area", GB_SHOW_AREA, t->area.m2), depth);
    else if (t->units > 1)
        GB_ADD(b, LAID_MANY, name, count, length, width, depth);
    else
        GB_ADD(b, LAID_ONE, name, length, width, depth);
    add_overhang(b, t->piece);
}

static void add_take(gb_builder *b, const gb_take *t) {
    static const gb_row_code FACES[] = {[GB_BACK] = GB_ROW_ON_BACK,
                                        [GB_BED_FACE] = GB_ROW_ON_BED,
                                        [GB_BOTH_FACES] = GB_ROW_ON_BOTH};
    b->about.take = t;
    b->about.piece = t->piece;
    if (!isnan(t->area.m2))
        add_laid(b, t);
    else
        gb_add_covered(b, t);
    if (t->layer->kind == GB_SLURRY)
        gb_add_row(b, FACES[t->layer->faces], NULL, 0);
    gb_add_depths(b, t);
    if (t->layer->depth_count > 1)
        GB_ADD(b, MEASURED, gb_num("n", GB_SHOW_COUNT, (double)t->layer->depth_count),
               gb_num("sd", GB_SHOW_LENGTH,
                      t->depth_se.m * sqrt((double)t->layer->depth_count)),
               gb_num("se", GB_SHOW_LENGTH, t->depth_se.m));
}

static void add_head(gb_builder *b, const gb_plan *plan, const gb_mix_plan *p) {
    const gb_need *need = &p->need;
    GB_ADD(b, TITLE, gb_words_fig(b, "title", &need->mix->title));
    GB_ADD(b, SITE, gb_txt("name", plan->job->site.name));
    GB_ADD(b, PLAN, gb_number_fig(b, "number", plan->digest));
    gb_add_mix_id(b, need->mix);
    GB_ADD(b, FOR, gb_words_fig(b, "purpose", &need->mix->purpose));
    if (need->mix->not_for.count > 0)
        GB_ADD(b, NOT_FOR, gb_words_fig(b, "what", &need->mix->not_for));
    if (gb_is_proportioned(need->mix))
        gb_add_asked(b, need->mix);
    for (size_t i = 0; i < need->take_count; i++)
        add_take(b, need->takes[i]);
    gb_figure net = gb_num("net", GB_SHOW_VOLUME, need->net.m3);
    if (need->waste.of_one > 0)
        GB_ADD(b, NEED, net, gb_num("gross", GB_SHOW_VOLUME, need->gross.m3),
               gb_num("waste", GB_SHOW_SHARE, need->waste.of_one));
    else
        GB_ADD(b, NEED_NET_ONLY, net);
    gb_add_spread(b, need, GB_SHOW_VOLUME);
    gb_add_need_spread(b, p);
}

/* ---- one batch ------------------------------------------------------------------- */

static void add_limit(gb_builder *b, const gb_mix_plan *p) {
    const gb_batching *k = &p->batching;
    const gb_recipe *r = &p->recipe;
    double next = k->most_bags + (k->part_bags ? 0.125 : 1.0);
    b->about.amount = GB_MOST_BATCH;
    gb_figure most = gb_bags_fig(b, "most", k->most_bags);
    gb_figure more = gb_num("next", GB_SHOW_FRACTION, next);
    switch (k->limit) {
    case GB_LIMIT_NEED:
        GB_ADD_BARE(b, LIMIT_NEED);
        break;
    case GB_LIMIT_VOLUME:
        GB_ADD(b, LIMIT_VOLUME, most, more,
               gb_num("volume", GB_SHOW_VOLUME, r->yield.m3 * next),
               gb_num("room", GB_SHOW_VOLUME, gb_usable(k->mixer).m3));
        break;
    case GB_LIMIT_MASS:
        GB_ADD(b, LIMIT_MASS, most, more,
               gb_num("mass", GB_SHOW_MASS, gb_wet_mass(r).kg * next),
               gb_num("room", GB_SHOW_MASS, k->mixer->most.kg));
        break;
    case GB_LIMIT_TIME:
        GB_ADD(b, LIMIT_TIME, most, gb_num("life", GB_SHOW_DURATION, p->life.s));
        break;
    }
    if (!isnan(k->time_to_place.s))
        GB_ADD(b, PLACED, gb_num("time", GB_SHOW_DURATION, k->time_to_place.s),
               gb_num("life", GB_SHOW_DURATION, p->life.s));
}

static gb_figure parts_of(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                          double bags) {
    gb_measure measure = gb_measure_of(job);
    return gb_parts_fig(b, p->need.mix, &p->recipe, bags, &measure);
}

static void add_amount(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                       double bags) {
    bool blend = p->need.mix->part_count == 0;
    bool whole = fabs(bags - round(bags)) < GB_SAME;
    gb_figure count = gb_bags_fig(b, "bags", bags);
    gb_figure mass = gb_num("mass", GB_SHOW_MASS, p->recipe.bag.kg * bags);
    if (blend && whole)
        GB_ADD(b, BATCH_BLEND, count, gb_num("bag", GB_SHOW_MASS, p->recipe.bag.kg));
    else if (blend)
        GB_ADD(b, PART_BATCH_BLEND, count, mass);
    else if (whole)
        GB_ADD(b, BATCH, parts_of(b, job, p, bags));
    else
        GB_ADD(b, PART_BATCH, count, parts_of(b, job, p, bags));
}

/* Below the water by state: the sand by state, of the same amount. */
static void add_states(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                       double bags) {
    gb_measure measure = gb_measure_of(job);
    gb_add_sand_states(b, p->need.mix, &p->recipe, bags, &measure);
}

/* How today's sand bulks, when the job says so. */
static void add_bulking(gb_builder *b, const gb_job *job) {
    gb_figure bulking =
        gb_num("bulking", GB_SHOW_SHARE, gb_job_lying(job).bulking.of_one);
    b->about.moisture = gb_job_moisture(job);
    if (!isnan(job->sand.moist_height.m))
        GB_ADD(b, BULKING_TESTED, bulking);
    else if (!isnan(job->sand.bulking.of_one))
        GB_ADD(b, BULKING_STATED, bulking);
}

static void add_half(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                     double bags) {
    b->about.amount = GB_HALF_BATCH;
    if (p->need.mix->part_count == 0)
        GB_ADD(b, HALF_BLEND, gb_bags_fig(b, "bags", bags),
               gb_num("mass", GB_SHOW_MASS, p->recipe.bag.kg * bags));
    else
        GB_ADD(b, HALF, parts_of(b, job, p, bags));
    gb_add_with(b, p->need.mix, &p->recipe, bags);
    gb_add_water_below(b, p->need.mix, &p->recipe, bags, gb_job_moisture(job));
    gb_add_batch_marks(b, job, p, bags);
    add_states(b, job, p, bags);
    GB_ADD(b, PART_MAKES, gb_num("volume", GB_SHOW_VOLUME, p->recipe.yield.m3 * bags));
}

/* True when no batch before that one is of its size. */
static bool is_new_size(const gb_batching *k, size_t batch) {
    for (size_t i = 0; i < k->stage_count && k->stages[i].first < batch; i++) {
        const gb_stage_batches *s = &k->stages[i];
        size_t last = s->first + s->count - 1;
        if (fabs(k->batches[s->first].bags - k->batches[batch].bags) < GB_SAME ||
            (last < batch &&
             fabs(k->batches[last].bags - k->batches[batch].bags) < GB_SAME))
            return false;
    }
    return true;
}

/* A batch of another size than those before it: its own parts, its own water. */
static void add_other(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                      size_t batch) {
    const gb_batching *k = &p->batching;
    double bags = k->batches[batch].bags;
    bool last = batch + 1 == k->batch_count;
    bool blend = p->need.mix->part_count == 0;
    b->about.amount = GB_ONE_BATCH;
    b->about.batch = batch;
    gb_figure n = gb_num("n", GB_SHOW_COUNT, (double)(batch + 1));
    gb_figure count = gb_bags_fig(b, "bags", bags);
    if (blend && last)
        GB_ADD(b, LAST_BLEND, count);
    else if (blend)
        GB_ADD(b, OTHER_BLEND, n, count);
    else if (last)
        GB_ADD(b, LAST, count, parts_of(b, job, p, bags));
    else
        GB_ADD(b, OTHER, n, count, parts_of(b, job, p, bags));
    gb_add_with(b, p->need.mix, &p->recipe, bags);
    gb_add_water_below(b, p->need.mix, &p->recipe, bags, gb_job_moisture(job));
    gb_add_batch_marks(b, job, p, bags);
    add_states(b, job, p, bags);
}

/* The first and the last batch of each stage are all sizes that there are; of whole bags
   that are dealt out, the last is the smallest. */
static void add_others(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    const gb_batching *k = &p->batching;
    for (size_t i = 0; i < k->stage_count; i++) {
        size_t first = k->stages[i].first;
        size_t last = first + k->stages[i].count - 1;
        if (first > 0 && is_new_size(k, first))
            add_other(b, job, p, first);
        if (last > first && is_new_size(k, last))
            add_other(b, job, p, last);
    }
}

static void add_one_batch(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    double bags = p->batching.batches[0].bags;
    b->about.amount = GB_ONE_BATCH;
    b->about.batch = 0;
    add_amount(b, job, p, bags);
    gb_add_with(b, p->need.mix, &p->recipe, bags);
    gb_add_makes(b, &p->recipe, bags);
    add_limit(b, p);
    b->about.amount = GB_ONE_BATCH;
    gb_add_water(b, p->need.mix, &p->recipe, bags, gb_job_moisture(job));
    gb_add_batch_marks(b, job, p, bags);
    if (p->recipe.sand.kg > 0) {
        add_states(b, job, p, bags);
        GB_ADD_BARE(b, SAND_TODAY);
        add_bulking(b, job);
    }
    add_half(b, job, p, bags / 2.0);
    add_others(b, job, p);
}

/* ---- on site --------------------------------------------------------------------- */

/* Whole bags to have at hand. */
static gb_row site_bags(gb_builder *b, double bags, double pack_kg,
                        const gb_words *title) {
    return GB_MAKE(b, SITE_BAGS, gb_bags_fig(b, "bags", gb_round(bags, 1, GB_UP)),
                   gb_num("bag", GB_SHOW_MASS, pack_kg),
                   gb_words_fig(b, "material", title));
}

static size_t site_additions(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                             gb_row *rows) {
    const gb_mix *mix = p->need.mix;
    for (size_t i = 0; i < mix->addition_count; i++) {
        const gb_material *m = mix->additions[i].material;
        double kg = gb_addition_used(p, i, gb_job_moisture(job)).kg;
        gb_figure material = gb_words_fig(b, "material", &m->title);
        b->about.part = i;
        rows[i] =
            isnan(mix->additions[i].share.of_one)
                ? GB_MAKE(b, SITE_LIQUID,
                          gb_num("volume", GB_SHOW_LIQUID, kg / m->bulk.kg_m3), material)
                : GB_MAKE(b, SITE_ADDED, gb_num("mass", GB_SHOW_DAB, kg), material);
    }
    return mix->addition_count;
}

static void add_on_site(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    const gb_mix *mix = p->need.mix;
    gb_row rows[GB_MOST_PARTS + GB_MOST_ADDITIONS + 2];
    size_t n = 0;
    double bags = gb_bags_used(p);
    gb_lying lying = gb_job_lying(job);
    b->about.amount = GB_ALL_OF_IT;
    b->about.moisture = gb_job_moisture(job);
    if (mix->part_count == 0)
        rows[n++] = site_bags(b, bags, p->recipe.bag.kg, &mix->title);
    for (size_t i = 0; i < mix->part_count; i++) {
        b->about.part = i;
        const gb_material *m = mix->parts[i].material;
        gb_mass dry = {p->recipe.part[i].kg * bags};
        double pack = gb_job_pack(job, m).kg;
        if (p->is_slurry)
            rows[n++] =
                GB_MAKE(b, SITE_MASS,
                        gb_num("mass", GB_SHOW_MASS, gb_mass_lying(m, dry, lying).kg),
                        gb_words_fig(b, "material", &m->title));
        else if (isnan(pack))
            rows[n++] =
                GB_MAKE(b, SITE_LOOSE,
                        gb_num("volume", GB_SHOW_BULK, gb_loose_volume(m, dry, lying).m3),
                        gb_words_fig(b, "material", &m->title));
        else
            rows[n++] = site_bags(b, dry.kg / pack, pack, &m->title);
    }
    n += site_additions(b, job, p, &rows[n]);
    gb_mass water = gb_water_used(p, gb_job_moisture(job));
    rows[n++] = GB_MAKE(b, SITE_WATER, gb_num_up("water", GB_SHOW_WATER, water.kg));
    GB_ADD(b, ON_SITE, gb_rows_fig(b, "items", rows, n));
}

gb_status gb_batch_sheet(const gb_plan *plan, gb_style style, gb_arena *arena,
                         gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    if (plan->mix_count == 0) {
        GB_ADD_BARE(&b, NO_MIX_TITLE);
        GB_ADD(&b, SITE, gb_txt("name", plan->job->site.name));
        GB_ADD(&b, PLAN, gb_number_fig(&b, "number", plan->digest));
        GB_ADD_BARE(&b, NO_MIX);
        gb_end_block(&b);
    }
    for (size_t i = 0; i < plan->mix_count; i++) {
        const gb_mix_plan *p = &plan->mixes[i];
        b.about = (gb_about){.plan = plan, .mix = p};
        add_head(&b, plan, p);
        gb_add_cautions(&b, &p->cautions, p->stuff);
        if (p->is_slurry)
            gb_add_pots(&b, plan->job, p);
        else if (p->batching.batch_count > 0)
            add_one_batch(&b, plan->job, p);
        if (!p->is_slurry)
            gb_add_pail(&b, plan->job, p->recipe.sand.kg > 0);
        gb_add_warmth(&b, plan->job, p);
        bool by_hand = !p->is_slurry && p->batching.mixer->kind == GB_BARROW;
        gb_add_mixing(&b, p->need.mix, by_hand, gb_needs_hot_water(plan->job, p));
        gb_add_addition_notes(&b, p->need.mix);
        if (!p->is_slurry && p->batching.batch_count > 0)
            gb_add_batches(&b, p);
        add_on_site(&b, plan->job, p);
        gb_add_care(&b, plan->job, p);
        gb_end_block(&b);
    }
    return gb_finish_sheet(&b, "sheet", sheet);
}
