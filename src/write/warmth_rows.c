#include "gaugebox/count.h"
#include "words/words.h"
#include "write/batch_rows.h"

#include <math.h>

static gb_figure temp(const char *name, gb_temp t) {
    return gb_num(name, GB_SHOW_TEMP, t.c);
}

/* Computed, and read off a thermometer. */
static gb_figure about(const char *name, gb_temp t) {
    return gb_num(name, GB_SHOW_TEMP_WHOLE, t.c);
}

/* What something has to be warmed to: rounded down it would not do. */
static gb_figure at_least(const char *name, gb_temp value) {
    return gb_num_up(name, GB_SHOW_TEMP_WHOLE, value.c);
}

static void add_as_is(gb_builder *b, const gb_temperatures *t, const gb_warmth *w) {
    if (!w->comes_out)
        GB_ADD_BARE(b, WARMTH_NONE);
    else if (t->frozen)
        GB_ADD(b, WARMTH_FROZEN_SAND, about("mixed", w->mixed), temp("cement", t->cement),
               temp("sand", t->sand), temp("water", t->water));
    else
        GB_ADD(b, WARMTH, about("mixed", w->mixed), temp("cement", t->cement),
               temp("sand", t->sand), temp("water", t->water));
}

static void add_flash(gb_builder *b, gb_temp hottest) {
    if (hottest.c > gb_flash_set().c)
        GB_ADD(b, WARMTH_FLASH, temp("limit", gb_flash_set()),
               gb_txt("source", gb_tr(N_("TM 5-852-4"))));
}

static gb_temp hotter_of(const gb_temperatures *t) {
    return t->sand.c > t->water.c ? t->sand : t->water;
}

static void add_sand(gb_builder *b, const gb_temperatures *t, const gb_warmth *w) {
    gb_figure wanted = temp("wanted", t->wanted);
    gb_figure needed = at_least("needed", w->needed);
    gb_figure water = temp("water", w->water);
    if (isnan(w->sand.c)) {
        if (!isnan(w->reached.c))
            GB_ADD(b, WARMTH_NO_SAND, wanted, needed, water,
                   about("reached", w->reached));
        return;
    }
    /* Thawed sand holds more heat by itself than ice of the same temperature. */
    if (t->frozen && !(w->sand.c > 0))
        GB_ADD(b, WARMTH_THAW, wanted, needed, water);
    else if (isnan(w->reached.c))
        GB_ADD(b, WARMTH_SAND_ALONE, wanted, at_least("sand", w->sand), water);
    else
        GB_ADD(b, WARMTH_SAND, wanted, needed, water, about("reached", w->reached),
               at_least("sand", w->sand));
    if (w->sand.c > gb_hottest_aggregate().c)
        GB_ADD(b, WARMTH_SAND_MOST, temp("limit", gb_hottest_aggregate()),
               gb_txt("source", gb_tr(N_("TM 5-852-4"))));
    add_flash(b, w->water);
}

static void add_ice(gb_builder *b, const gb_temperatures *t, const gb_warmth *w) {
    double share = w->ice.kg / w->batch.water.kg;
    GB_ADD(b, WARMTH_ICE, temp("wanted", t->wanted),
           gb_num("ice", GB_SHOW_MASS, w->ice.kg));
    if (share > gb_most_ice().of_one)
        GB_ADD(b, WARMTH_ICE_ROUGH, gb_num("share", GB_SHOW_SHARE, share),
               gb_num("limit", GB_SHOW_SHARE, gb_most_ice().of_one),
               gb_txt("source",
                      gb_tr(N_("Jabbar, Wasit Journal of Engineering Sciences 5(2)"))));
}

/* The temperature that is wanted must be one that the mix may have; without one, what
   comes out must. */
static void add_band(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                     const gb_warmth *w) {
    gb_mix_band band = gb_band_of_mix(&job->weather, p);
    bool is_wanted = !isnan(job->temperatures.wanted.c);
    gb_temp value = is_wanted ? job->temperatures.wanted : w->mixed;
    gb_figure severity = gb_txt("severity", "caution");
    gb_figure source = gb_txt("source", gb_tr(band.source));
    gb_figure shown = is_wanted ? temp("value", value) : about("value", value);
    if (value.c < band.least.c)
        GB_ADD(b, WARMTH_TOO_COLD, shown, temp("limit", band.least), severity, source);
    else if (value.c > band.most.c)
        GB_ADD(b, WARMTH_TOO_WARM, shown, temp("limit", band.most), severity, source);
}

/* Water as it is stated, where none other is asked for. */
static void add_hot_water(gb_builder *b, const gb_temperatures *t, const gb_warmth *w) {
    bool as_stated = w->way == GB_NOT_WANTED || w->way == GB_WARM_ALREADY;
    if (as_stated && w->batch.water.kg > 0 && gb_over(t->water.c, gb_hottest_water().c))
        GB_ADD(b, WARMTH_WATER_HOT, temp("value", t->water),
               temp("limit", gb_hottest_water()), gb_txt("severity", "caution"),
               gb_txt("source", gb_tr(N_("TMS 602 art. 1.8 C"))));
}

void gb_add_warmth(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    const gb_temperatures *t = &job->temperatures;
    gb_warmth w;
    if (!gb_warm_batch(job, p, &w))
        return;
    add_band(b, job, p, &w);
    add_hot_water(b, t, &w);
    add_as_is(b, t, &w);
    switch (w.way) {
    case GB_NOT_WANTED:
        add_flash(b, hotter_of(t));
        break;
    case GB_WARM_ALREADY:
        GB_ADD(b, WARMTH_AS_WANTED, temp("wanted", t->wanted));
        add_flash(b, hotter_of(t));
        break;
    case GB_WARM_BY_WATER:
        GB_ADD(b, WARMTH_WATER, temp("wanted", t->wanted), about("water", w.water));
        add_flash(b, w.water);
        break;
    case GB_WARM_BY_SAND:
        add_sand(b, t, &w);
        break;
    case GB_WARM_BY_ICE:
        add_ice(b, t, &w);
        break;
    case GB_WARM_BY_NOTHING:
        GB_ADD(b, WARMTH_COOL_SAND, temp("wanted", t->wanted));
        break;
    }
}
