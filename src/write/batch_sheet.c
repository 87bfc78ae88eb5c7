#include "write/gauge_rows.h"

#include <math.h>

/* The batch sheet: one block per mix, each whole enough to be cut out and taped to the
   mixer by itself. */

/* ---- head ------------------------------------------------------------------------ */

static void add_today(gb_builder *b, const gb_job *job) {
    const gb_weather *w = &job->weather;
    gb_row facts[8];
    size_t n = 0;
    const struct {
        gb_row_code code;
        gb_show show;
        double value;
    } stated[] = {{GB_ROW_FACT_START, GB_SHOW_CLOCK, job->crew.start.s},
                  {GB_ROW_FACT_AIR, GB_SHOW_TEMP, w->air.c},
                  {GB_ROW_FACT_LOW, GB_SHOW_TEMP, w->low.c},
                  {GB_ROW_FACT_WIND, GB_SHOW_SPEED, w->wind.m_s},
                  {GB_ROW_FACT_HUMIDITY, GB_SHOW_SHARE, w->humidity.of_one},
                  {GB_ROW_FACT_STONE, GB_SHOW_TEMP, w->stone.c},
                  {GB_ROW_FACT_BLOCK, GB_SHOW_TEMP, w->block.c}};
    for (size_t i = 0; i < sizeof stated / sizeof stated[0]; i++)
        if (!isnan(stated[i].value))
            facts[n++] =
                gb_make_row(b, stated[i].code,
                            GB_FIGURES(gb_num("value", stated[i].show, stated[i].value)));
    if (w->rain)
        facts[n++] = GB_MAKE_BARE(b, FACT_RAIN);
    if (w->at.line == 0)
        GB_ADD_BARE(b, WEATHER_NOT_STATED);
    if (n == 0)
        return;
    gb_figure all = gb_rows_fig(b, "facts", facts, n);
    all.whole = true;
    GB_ADD(b, WEATHER_STATED, all);
}

static void add_overhang(gb_builder *b, const gb_piece *p) {
    gb_figure front = gb_num("front", GB_SHOW_LENGTH, p->overhang_front.m);
    if (p->overhang_side.m > 0)
        GB_ADD(b, OVERHANG_SIDES, front,
               gb_num("side", GB_SHOW_LENGTH, p->overhang_side.m));
    else if (p->overhang_front.m > 0)
        GB_ADD(b, OVERHANG, front);
}

static void add_take(gb_builder *b, const gb_take *t) {
    static const gb_row_code FACES[] = {[GB_BACK] = GB_ROW_ON_BACK,
                                        [GB_BED_FACE] = GB_ROW_ON_BED,
                                        [GB_BOTH_FACES] = GB_ROW_ON_BOTH};
    gb_figure name = gb_txt("name", t->piece->name);
    gb_figure count = gb_num("count", GB_SHOW_COUNT, t->units);
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, t->depth.m);
    gb_figure length = gb_num("length", GB_SHOW_LENGTH, t->piece->length.m);
    gb_figure width = gb_num("width", GB_SHOW_LENGTH, t->piece->width.m);
    if (t->layer->kind == GB_JOINT)
        GB_ADD(b, JOINT, name, count, depth,
               gb_num("length", GB_SHOW_LENGTH, t->layer->joint_length.m),
               gb_num("width", GB_SHOW_LENGTH, t->layer->joint_width.m));
    else if (isnan(t->area.m2))
        GB_ADD(b, VOLUME_PIECES, name, count,
               gb_num("volume", GB_SHOW_VOLUME, t->each.m3));
    else if (t->units > 1)
        GB_ADD(b, LAID_MANY, name, count, length, width, depth);
    else
        GB_ADD(b, LAID_ONE, name, length, width, depth);
    if (!isnan(t->area.m2))
        add_overhang(b, t->piece);
    if (t->layer->kind == GB_SLURRY)
        gb_add_row(b, FACES[t->layer->faces], NULL, 0);
    if (t->layer->depth_count > 1)
        GB_ADD(b, MEASURED, gb_num("n", GB_SHOW_COUNT, (double)t->layer->depth_count),
               gb_num("se", GB_SHOW_LENGTH, t->depth_se.m));
}

static void add_head(gb_builder *b, const gb_plan *plan, const gb_mix_plan *p) {
    const gb_need *need = &p->need;
    GB_ADD(b, TITLE, gb_words_fig(b, "title", &need->mix->title));
    GB_ADD(b, SITE, gb_txt("name", plan->job->site.name));
    GB_ADD(b, PLAN, gb_number_fig(b, "number", plan->digest));
    GB_ADD(b, MIX_ID, gb_txt("id", need->mix->id));
    GB_ADD(b, FOR, gb_words_fig(b, "purpose", &need->mix->purpose));
    if (need->mix->not_for.count > 0)
        GB_ADD(b, NOT_FOR, gb_words_fig(b, "what", &need->mix->not_for));
    for (size_t i = 0; i < need->take_count; i++)
        add_take(b, need->takes[i]);
    gb_figure net = gb_num("net", GB_SHOW_VOLUME, need->net.m3);
    if (need->waste.of_one > 0)
        GB_ADD(b, NEED, net, gb_num("gross", GB_SHOW_VOLUME, need->gross.m3),
               gb_num("waste", GB_SHOW_SHARE, need->waste.of_one));
    else
        GB_ADD(b, NEED_NET_ONLY, net);
    if (need->spread.m3 > 0)
        GB_ADD(b, SPREAD, gb_num("spread", GB_SHOW_VOLUME, need->spread.m3));
}

/* ---- one batch ------------------------------------------------------------------- */

static void add_limit(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    const gb_batching *k = &p->batching;
    const gb_recipe *r = &p->recipe;
    double next = k->most_bags + (k->part_bags ? 0.125 : 1.0);
    gb_figure most = gb_bags_fig(b, "most", k->most_bags);
    gb_figure more = gb_num("next", GB_SHOW_FRACTION, next);
    switch (k->limit) {
    case GB_LIMIT_NEED:
        GB_ADD_BARE(b, LIMIT_NEED);
        break;
    case GB_LIMIT_VOLUME:
        GB_ADD(b, LIMIT_VOLUME, most, more,
               gb_num("volume", GB_SHOW_VOLUME, r->yield.m3 * next),
               gb_num("room", GB_SHOW_VOLUME, job->crew.mixer.usable.m3));
        break;
    case GB_LIMIT_MASS:
        GB_ADD(b, LIMIT_MASS, most, more,
               gb_num("mass", GB_SHOW_MASS, (r->dry.kg + r->water_usual.kg) * next),
               gb_num("room", GB_SHOW_MASS, job->crew.mixer.most.kg));
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
    gb_gauge gauge = {job->crew.bucket, gb_job_moisture(job)};
    return gb_parts_fig(b, p->need.mix, &p->recipe, bags, &gauge);
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

static void add_half(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                     double bags) {
    if (p->need.mix->part_count == 0)
        GB_ADD(b, HALF_BLEND, gb_bags_fig(b, "bags", bags),
               gb_num("mass", GB_SHOW_MASS, p->recipe.bag.kg * bags));
    else
        GB_ADD(b, HALF, parts_of(b, job, p, bags));
    gb_add_water_below(b, p->need.mix, &p->recipe, bags, gb_job_moisture(job));
    GB_ADD(b, PART_MAKES, gb_num("volume", GB_SHOW_VOLUME, p->recipe.yield.m3 * bags));
}

/* The last batch when it differs from the first: its own parts, its own water. */
static void add_last(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    const gb_batching *k = &p->batching;
    double last = k->batches[k->batch_count - 1].bags;
    if (fabs(last - k->batches[0].bags) < GB_SAME)
        return;
    if (p->need.mix->part_count == 0)
        GB_ADD(b, LAST_BLEND, gb_bags_fig(b, "bags", last));
    else
        GB_ADD(b, LAST, gb_bags_fig(b, "bags", last), parts_of(b, job, p, last));
    gb_add_water_below(b, p->need.mix, &p->recipe, last, gb_job_moisture(job));
}

static void add_one_batch(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    double bags = p->batching.batches[0].bags;
    add_amount(b, job, p, bags);
    gb_add_makes(b, &p->recipe, bags);
    add_limit(b, job, p);
    gb_add_water(b, p->need.mix, &p->recipe, bags, gb_job_moisture(job));
    if (p->recipe.sand.kg > 0)
        GB_ADD_BARE(b, SAND_TODAY);
    add_half(b, job, p, bags / 2.0);
    add_last(b, job, p);
}

/* ---- the batches, one by one ----------------------------------------------------- */

/* A single piece is covered by area, as a helper measures it. */
static gb_row cover_single(gb_builder *b, const gb_stretch *s) {
    gb_figure name = gb_txt("name", s->take->piece->name);
    double part = s->to - s->from;
    bool starts = s->from < GB_SAME;
    bool ends = !gb_under(s->to, s->take->units);
    if (starts && ends)
        return GB_MAKE(b, COVERS_ALL, name);
    if (isnan(s->take->area.m2))
        return GB_MAKE(b, COVERS_SHARE, name, gb_num("share", GB_SHOW_SHARE, part));
    gb_figure area = gb_num("area", GB_SHOW_AREA_HALF, part * s->take->area.m2);
    return ends ? GB_MAKE(b, COVERS_LAST_AREA, name, area)
                : GB_MAKE(b, COVERS_AREA, name, area);
}

/* Several alike: those that this batch finishes, the first counted as 1, and the one that
   it takes well into. */
static gb_row cover_many(gb_builder *b, const gb_stretch *s) {
    gb_figure name = gb_txt("name", s->take->piece->name);
    size_t done = 0;
    size_t before = 0;
    if (gb_count_down(s->from, 1.0, &before) != GB_OK ||
        gb_count_down(s->to, 1.0, &done) != GB_OK)
        b->failed = true;
    bool part = !gb_under(s->to - (double)done, 0.25);
    gb_figure from = gb_num("from", GB_SHOW_COUNT, (double)(before + 1));
    gb_figure next = gb_num("next", GB_SHOW_COUNT, (double)(done + 1));
    gb_figure to = gb_num("to", GB_SHOW_COUNT, (double)done);
    if (done == before)
        return GB_MAKE(b, COVERS_PART, name, from);
    if (done == before + 1)
        return part ? GB_MAKE(b, COVERS_PIECE_PART, name, from, next)
                    : GB_MAKE(b, COVERS_PIECE, name, from);
    return part ? GB_MAKE(b, COVERS_PIECES_PART, name, from, to, next)
                : GB_MAKE(b, COVERS_PIECES, name, from, to);
}

/* The piece that a batch only begins is left to the next one, unless it is all there
   is. */
static bool is_begun_only(const gb_stretch *s, const gb_batch *batch) {
    size_t done = 0;
    size_t before = 0;
    if (s->take->units <= 1.0 || batch->stretch_count < 2)
        return false;
    return gb_count_down(s->from, 1.0, &before) == GB_OK &&
           gb_count_down(s->to, 1.0, &done) == GB_OK && done == before;
}

static gb_figure covers_fig(gb_builder *b, const gb_batch *batch) {
    gb_row *rows = gb_arena_take(b->arena, batch->stretch_count + 1, sizeof *rows);
    size_t n = 0;
    if (rows == NULL) {
        b->failed = true;
        return gb_txt("covers", "");
    }
    for (size_t i = 0; i < batch->stretch_count; i++) {
        const gb_stretch *s = &batch->stretches[i];
        if (is_begun_only(s, batch))
            continue;
        rows[n++] = s->take->units > 1.0 ? cover_many(b, s) : cover_single(b, s);
    }
    gb_figure covers = gb_rows_fig(b, "covers", rows, n);
    covers.whole = true;
    return covers;
}

static void add_first_check(gb_builder *b, const gb_mix_plan *p) {
    const gb_first_check *f = &p->first_check;
    bool blend = p->need.mix->part_count == 0;
    double bags = gb_round(f->bags, blend ? 1.0 : 0.125, GB_UP);
    gb_figure pieces = gb_num("pieces", GB_SHOW_COUNT, (double)f->pieces);
    gb_figure name = gb_txt("name", f->take->piece->name);
    gb_figure fewer = gb_num("fewer", GB_SHOW_COUNT, (double)f->fewer);
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, f->depth.m);
    gb_figure gross = gb_num("gross", GB_SHOW_VOLUME, f->gross.m3);
    gb_figure in_bags = gb_bags_fig(b, "bags", bags);
    if (f->left > 0)
        GB_ADD(b, AFTER_FIRST_PART, pieces, name, fewer, depth, gross, in_bags,
               gb_num_down("left", GB_SHOW_QUARTERS, f->left));
    else
        GB_ADD(b, AFTER_FIRST, pieces, name, fewer, depth, gross, in_bags);
}

static void add_batches(gb_builder *b, const gb_mix_plan *p) {
    const gb_batching *k = &p->batching;
    for (size_t i = 0; i < k->batch_count; i++) {
        GB_ADD(b, BATCH_LINE, gb_num("n", GB_SHOW_COUNT, (double)(i + 1)),
               gb_num("total", GB_SHOW_COUNT, (double)k->batch_count),
               gb_bags_fig(b, "bags", k->batches[i].bags), covers_fig(b, &k->batches[i]));
        GB_ADD(b, BATCH_LOG, gb_num("life", GB_SHOW_DURATION, p->life.s));
    }
    GB_ADD(b, DEAD, gb_num("life", GB_SHOW_DURATION, p->life.s));
    if (p->first_check.known)
        add_first_check(b, p);
}

/* ---- slurry ---------------------------------------------------------------------- */

static void add_pot_water(gb_builder *b, gb_row which, double kg, gb_rounding rounding) {
    gb_figure water = gb_num("water", GB_SHOW_POT_WATER, kg);
    water.rounding = rounding;
    GB_ADD(b, POT_WATER, gb_row_fig(b, "which", which), water);
}

static void add_pot(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                    const gb_pot *pot) {
    gb_figure name = gb_txt("name", pot->take->piece->name);
    gb_figure area = gb_num("area", GB_SHOW_AREA_HALF, pot->area.m2);
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, pot->depth.m);
    gb_figure count = gb_num("count", GB_SHOW_COUNT, (double)pot->count);
    gb_figure parts =
        gb_pot_parts_fig(b, p->need.mix, &p->recipe, pot->bags, gb_job_moisture(job));
    if (pot->take->units > 1.0)
        GB_ADD(b, POT_PIECES, gb_num("pieces", GB_SHOW_COUNT, pot->pieces), name, area,
               depth, parts, count);
    else
        GB_ADD(b, POT_AREA, name, area, depth, parts, count);
    add_pot_water(b, GB_MAKE_BARE(b, FIRST_WATER), pot->first.kg, GB_DOWN);
    add_pot_water(b, GB_MAKE_BARE(b, USUAL_WATER), pot->usual.kg, GB_NEAREST);
    add_pot_water(b, GB_MAKE_BARE(b, MOST_WATER), pot->most.kg, GB_DOWN);
    gb_length scored = gb_usual_slurry(GB_SCORED);
    if (gb_under(pot->depth.m / scored.m, 1.0))
        GB_ADD(b, POT_SCORED, gb_num("depth", GB_SHOW_LENGTH, scored.m),
               gb_num("area", GB_SHOW_AREA_HALF, pot->area.m2 * pot->depth.m / scored.m));
    if (!pot->fits_life)
        GB_ADD(b, POT_TOO_SLOW, gb_num("life", GB_SHOW_DURATION, p->life.s),
               gb_num("time", GB_SHOW_DURATION, pot->time.s));
}

/* Pots to tick: as many as the take needs of its first kind of pot. */
static void add_marks(gb_builder *b, const gb_mix_plan *p) {
    size_t count = 0;
    for (size_t i = 0; i < p->pot_count; i++)
        if (i == 0 || p->pots[i].take != p->pots[i - 1].take)
            count += p->pots[i].count;
    gb_text marks;
    gb_text_init(&marks, b->arena);
    for (size_t i = 0; i < count; i++)
        gb_text_add(&marks, i == 0 ? "[ ]" : " [ ]");
    b->failed = b->failed || marks.failed;
    GB_ADD(b, POT_LOG, gb_mark("marks", gb_text_get(&marks)));
}

static void add_pots(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    for (size_t i = 0; i < p->pot_count; i++)
        add_pot(b, job, p, &p->pots[i]);
    GB_ADD(b, POT_LIFE, gb_num("life", GB_SHOW_DURATION, p->life.s),
           gb_num("open", GB_SHOW_DURATION, p->need.mix->open.s));
    add_marks(b, p);
}

/* ---- on site --------------------------------------------------------------------- */

/* Whole bags to have at hand. */
static gb_row site_bags(gb_builder *b, double bags, double pack_kg,
                        const gb_words *title) {
    return GB_MAKE(b, SITE_BAGS, gb_bags_fig(b, "bags", gb_round(bags, 1, GB_UP)),
                   gb_num("bag", GB_SHOW_MASS, pack_kg),
                   gb_words_fig(b, "material", title));
}

static void add_on_site(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    const gb_mix *mix = p->need.mix;
    gb_row rows[GB_MOST_PARTS + 2];
    size_t n = 0;
    double bags = gb_bags_used(p);
    if (mix->part_count == 0)
        rows[n++] = site_bags(b, bags, p->recipe.bag.kg, &mix->title);
    for (size_t i = 0; i < mix->part_count; i++) {
        const gb_material *m = mix->parts[i].material;
        double kg = p->recipe.part[i].kg * bags;
        double pack = gb_job_pack(job, m).kg;
        if (p->is_slurry)
            rows[n++] = GB_MAKE(b, SITE_MASS, gb_num("mass", GB_SHOW_MASS, kg),
                                gb_words_fig(b, "material", &m->title));
        else if (isnan(pack))
            rows[n++] =
                GB_MAKE(b, SITE_LOOSE, gb_num("volume", GB_SHOW_BULK, kg / m->bulk.kg_m3),
                        gb_words_fig(b, "material", &m->title));
        else
            rows[n++] = site_bags(b, kg / pack, pack, &m->title);
    }
    gb_mass water = gb_water_used(p, gb_job_moisture(job));
    rows[n++] = GB_MAKE(b, SITE_WATER, gb_num_up("water", GB_SHOW_WATER, water.kg));
    GB_ADD(b, ON_SITE, gb_rows_fig(b, "items", rows, n));
}

/* ---- cautions and care ----------------------------------------------------------- */

static gb_show show_of(gb_kind kind) {
    switch (kind) {
    case GB_TEMP:
        return GB_SHOW_TEMP;
    case GB_VOLUME:
        return GB_SHOW_VOLUME;
    case GB_MASS:
        return GB_SHOW_MASS;
    case GB_LENGTH:
        return GB_SHOW_LENGTH;
    case GB_SHARE:
        return GB_SHOW_SHARE;
    case GB_DURATION:
        return GB_SHOW_DURATION;
    default:
        return GB_SHOW_NUMBER;
    }
}

/* A slurry has no sand to heat and no mixer to cool: its pot has words of its own. */
static gb_row_code pot_row(gb_caution_code code, gb_row_code otherwise) {
    switch (code) {
    case GB_C_COLD_40:
    case GB_C_COLD_32:
    case GB_C_COLD_25:
        return GB_ROW_C_COLD_POT;
    case GB_C_HOT:
    case GB_C_HOT_SHADE:
        return GB_ROW_C_HOT_POT;
    default:
        return otherwise;
    }
}

static void add_cautions(gb_builder *b, const gb_mix_plan *p) {
    static const gb_row_code ROWS[] = {[GB_C_MIXER_SMALL] = GB_ROW_C_MIXER_SMALL,
                                       [GB_C_MIXER_WEAK] = GB_ROW_C_MIXER_WEAK,
                                       [GB_C_MIXER_TOO_SMALL] = GB_ROW_C_MIXER_TOO_SMALL,
                                       [GB_C_MIXER_TOO_WEAK] = GB_ROW_C_MIXER_TOO_WEAK,
                                       [GB_C_LIFE_TOO_SHORT] = GB_ROW_C_LIFE_TOO_SHORT,
                                       [GB_C_LIFE_SHORT] = GB_ROW_C_LIFE_SHORT,
                                       [GB_C_SCORED_THIN] = GB_ROW_C_SCORED_THIN,
                                       [GB_C_DEPTH_SPREAD] = GB_ROW_C_DEPTH_SPREAD,
                                       [GB_C_NO_PACE] = GB_ROW_C_NO_PACE,
                                       [GB_C_SAND_TOO_WET] = GB_ROW_C_SAND_TOO_WET,
                                       [GB_C_COLD_40] = GB_ROW_C_COLD_40,
                                       [GB_C_COLD_32] = GB_ROW_C_COLD_32,
                                       [GB_C_COLD_25] = GB_ROW_C_COLD_25,
                                       [GB_C_COLD_20] = GB_ROW_C_COLD_20,
                                       [GB_C_HOT] = GB_ROW_C_HOT,
                                       [GB_C_HOT_SHADE] = GB_ROW_C_HOT_SHADE,
                                       [GB_C_STONE_COLD] = GB_ROW_C_STONE_COLD,
                                       [GB_C_UNITS_COLD] = GB_ROW_C_UNITS_COLD,
                                       [GB_C_UNITS_FROZEN] = GB_ROW_C_UNITS_FROZEN,
                                       [GB_C_FROST_DUE] = GB_ROW_C_FROST_DUE,
                                       [GB_C_RAIN] = GB_ROW_C_RAIN};
    _Static_assert(sizeof ROWS / sizeof ROWS[0] == GB_CAUTION_CODES,
                   "a row for every caution");
    static const char *const SEVERITIES[] = {
        [GB_NOTE] = "note", [GB_CAUTION] = "caution", [GB_STOP] = "stop"};
    for (size_t i = 0; i < p->cautions.count; i++) {
        const gb_caution *c = &p->cautions.list[i];
        gb_show show = show_of(c->kind);
        gb_row_code row = p->is_slurry ? pot_row(c->code, ROWS[c->code]) : ROWS[c->code];
        gb_add_row(b, row,
                   GB_FIGURES(gb_num("value", show, c->value),
                              gb_num("limit", show, c->limit),
                              gb_txt("severity", SEVERITIES[c->severity]),
                              gb_txt("source", c->source)));
    }
}

static void add_care(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    gb_figure cold = gb_num("cold", GB_SHOW_TEMP, gb_si(GB_TEMP, "F", 40));
    if (p->is_slurry)
        GB_ADD(b, ALWAYS_SLURRY, cold);
    else
        GB_ADD(b, ALWAYS_BED, cold);
    gb_hot_limits limits = gb_masonry_hot_limits();
    bool hot = gb_hot_band(job->weather.air, job->weather.wind) != GB_CAUTION_CODES;
    if (!hot) /* else the caution says more */
        GB_ADD(b, ALWAYS_HOT, gb_num("hot", GB_SHOW_TEMP, limits.hot.c),
               gb_num("windy", GB_SHOW_TEMP, limits.hot_windy.c),
               gb_num("wind", GB_SHOW_SPEED, limits.wind.m_s),
               gb_num("life", GB_SHOW_DURATION, p->need.mix->life_hot.s));
    gb_add_holds(b, p->need.mix);
    GB_ADD_BARE(b, SAFETY);
    if (job->site.rinse != NULL)
        GB_ADD(b, RINSE, gb_txt("where", job->site.rinse));
    if (job->site.place != NULL)
        GB_ADD(b, PLACE, gb_txt("where", job->site.place));
    if (job->site.emergency != NULL)
        GB_ADD(b, EMERGENCY, gb_txt("who", job->site.emergency));
    GB_ADD_BARE(b, WHO);
    add_today(b, job);
    bool own = p->need.mix->part_count == 0 && p->own_label;
    if (own)
        GB_ADD_BARE(b, SOURCE_OWN);
    else
        GB_ADD(b, SOURCE, gb_txt("source", p->need.mix->source));
}

gb_status gb_batch_sheet(const gb_plan *plan, gb_system system, const char *language,
                         gb_arena *arena, gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, language, arena);
    for (size_t i = 0; i < plan->mix_count; i++) {
        const gb_mix_plan *p = &plan->mixes[i];
        add_head(&b, plan, p);
        add_cautions(&b, p);
        if (p->is_slurry)
            add_pots(&b, plan->job, p);
        else if (p->batching.batch_count > 0)
            add_one_batch(&b, plan->job, p);
        bool by_hand = plan->job->crew.mixer.kind == GB_BARROW && !p->is_slurry;
        gb_add_mixing(&b, p->need.mix, by_hand);
        if (!p->is_slurry && p->batching.batch_count > 0)
            add_batches(&b, p);
        add_on_site(&b, plan->job, p);
        add_care(&b, plan->job, p);
        gb_end_block(&b);
    }
    return gb_finish_sheet(&b, "sheet", system, sheet);
}
