#include "write/weather_rows.h"

#include "words/words.h"

#include <math.h>

/* ---- today ------------------------------------------------------------------------- */

enum { MOST_FACTS = 12 };

typedef struct facts {
    gb_row list[MOST_FACTS];
    size_t count;
} facts;

static void add_fact(gb_builder *b, facts *f, gb_row_code code, gb_show show,
                     double value) {
    if (!isnan(value))
        f->list[f->count++] =
            gb_make_row(b, code, GB_FIGURES(gb_num("value", show, value)));
}

static void end_facts(gb_builder *b, facts *f, const char *file) {
    if (f->count == 0)
        return;
    gb_figure all = gb_rows_fig(b, "facts", f->list, f->count);
    all.whole = true;
    if (file == NULL)
        GB_ADD(b, WEATHER_STATED, all);
    else
        GB_ADD(b, WEATHER_READ, all, gb_txt("file", file));
}

static void add_surfaces(gb_builder *b, facts *f, const gb_weather *w) {
    add_fact(b, f, GB_ROW_FACT_STONE, GB_SHOW_TEMP, w->stone.c);
    add_fact(b, f, GB_ROW_FACT_BLOCK, GB_SHOW_TEMP, w->block.c);
    add_fact(b, f, GB_ROW_FACT_CONCRETE, GB_SHOW_TEMP, w->concrete.c);
}

static void add_stated(gb_builder *b, const gb_job *job) {
    const gb_weather *w = &job->weather;
    facts f = {.count = 0};
    add_fact(b, &f, GB_ROW_FACT_START, GB_SHOW_CLOCK, job->crew.start.s);
    add_fact(b, &f, GB_ROW_FACT_AIR, GB_SHOW_TEMP, w->air.c);
    add_fact(b, &f, GB_ROW_FACT_LOW, GB_SHOW_TEMP, w->low.c);
    add_fact(b, &f, GB_ROW_FACT_WIND, GB_SHOW_SPEED, w->wind.m_s);
    add_fact(b, &f, GB_ROW_FACT_HUMIDITY, GB_SHOW_SHARE, w->humidity.of_one);
    add_surfaces(b, &f, w);
    if (w->rain)
        f.list[f.count++] = GB_MAKE_BARE(b, FACT_RAIN);
    if (w->at.line == 0)
        GB_ADD_BARE(b, WEATHER_NOT_STATED);
    end_facts(b, &f, NULL);
}

static void add_read(gb_builder *b, const gb_weather *w) {
    facts f = {.count = 0};
    f.list[f.count++] =
        GB_MAKE(b, FACT_WORK, gb_moment_fig(b, "from", w->from, w->offset_s),
                gb_moment_fig(b, "to", w->to, w->offset_s));
    f.list[f.count++] =
        GB_MAKE(b, FACT_AIR_RANGE,
                gb_num("least", GB_SHOW_TEMP, gb_coldest_hour(w, GB_AT_WORK).air.c),
                gb_num("most", GB_SHOW_TEMP, gb_warmest_hour(w, GB_AT_WORK).air.c));
    add_fact(b, &f, GB_ROW_FACT_WIND_UP_TO, GB_SHOW_SPEED, gb_most_wind(w).m_s);
    f.list[f.count++] = GB_MAKE(
        b, FACT_LEAST, gb_num("value", GB_SHOW_TEMP, gb_coldest_hour(w, GB_WATCH).air.c),
        gb_num("time", GB_SHOW_DURATION, gb_frost_watch().s));
    add_fact(b, &f, GB_ROW_FACT_MEAN, GB_SHOW_TEMP, gb_mean_daily(w).c);
    add_surfaces(b, &f, w);
    if (!isnan(gb_rain_hour(w).rain.m))
        f.list[f.count++] = GB_MAKE_BARE(b, FACT_RAIN);
    end_facts(b, &f, w->hours_file);
}

void gb_add_today(gb_builder *b, const gb_job *job) {
    if (job->weather.hours.file == NULL)
        add_stated(b, job);
    else
        add_read(b, &job->weather);
}

/* ---- after ------------------------------------------------------------------------- */

static void add_shield(gb_builder *b, const gb_protection *p) {
    static const gb_row_code ROWS[][2] = {
        [GB_COVER] = {GB_ROW_AFTER_COVER, GB_ROW_AFTER_COVER_GROUT},
        [GB_BLANKETS] = {GB_ROW_AFTER_BLANKETS, GB_ROW_AFTER_BLANKETS_GROUT},
        [GB_ENCLOSURE] = {GB_ROW_AFTER_ENCLOSURE, GB_ROW_AFTER_ENCLOSURE_GROUT}};
    gb_add_row(b, ROWS[p->shield][p->by_least],
               GB_FIGURES(gb_num("value", GB_SHOW_TEMP, p->value.c),
                          gb_num("limit", GB_SHOW_TEMP, p->limit.c),
                          gb_num("time", GB_SHOW_DURATION, p->time.s),
                          gb_txt("source", gb_tr(p->source))));
}

static void add_concrete(gb_builder *b, const gb_protection *p, const gb_mix_plan *plan) {
    gb_cold_concrete cold =
        gb_cold_of(plan, p->value); /* the air is not asked for here */
    GB_ADD(b, AFTER_CONCRETE, gb_num("value", GB_SHOW_TEMP, p->value.c),
           gb_num("limit", GB_SHOW_TEMP, p->limit.c),
           gb_num("placed", GB_SHOW_TEMP, cold.placed.c),
           gb_num("time", GB_SHOW_DURATION, p->time.s),
           gb_num("drop", GB_SHOW_DEGREES, cold.drop_c),
           gb_txt("source", gb_tr(p->source)));
}

/* A bed, or the slurry on it: the slab above sheds no water before its joints do. */
static bool is_below_slabs(const gb_mix_plan *p) {
    for (size_t i = 0; i < p->need.take_count; i++) {
        gb_layer_kind kind = p->need.takes[i]->layer->kind;
        if (kind == GB_BED || kind == GB_SLURRY)
            return true;
    }
    return false;
}

void gb_add_after(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    const gb_weather *w = &job->weather;
    gb_protection after = gb_protect(w, p->stuff);
    bool told = after.shield != GB_NO_SHIELD || after.fog;
    if (told && w->hours.file == NULL && isnan(w->low.c))
        GB_ADD(b, AFTER_NO_LOW, gb_num("value", GB_SHOW_TEMP, w->air.c));
    if (after.shield != GB_NO_SHIELD && p->stuff == GB_AS_CONCRETE)
        add_concrete(b, &after, p);
    else if (after.shield != GB_NO_SHIELD)
        add_shield(b, &after);
    gb_hour frost;
    bool blankets = after.shield >= GB_BLANKETS;
    if (!blankets && gb_frost_due(w, &frost))
        GB_ADD(b, AFTER_FROST, gb_num("value", GB_SHOW_TEMP, frost.air.c),
               gb_num("limit", GB_SHOW_TEMP, gb_freezing().c),
               gb_txt("source", gb_tr(N_("common practice"))));
    if (after.fog)
        GB_ADD(b, AFTER_FOG, gb_num("value", GB_SHOW_TEMP, after.hot_value.c),
               gb_num("limit", GB_SHOW_TEMP, after.hot_limit.c),
               gb_txt("source", gb_tr(N_("TMS 602 art. 1.8 D.3"))));
    if (p->stuff == GB_AS_CONCRETE)
        GB_ADD(b, AFTER_WET, gb_num("time", GB_SHOW_DURATION, gb_wet_curing().s),
               gb_txt("source", gb_tr(N_("UFGS 03301A; ACI 308R, from memory"))));
    if (is_below_slabs(p))
        GB_ADD_BARE(b, AFTER_SHED);
}
