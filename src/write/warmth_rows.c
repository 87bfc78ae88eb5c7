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

static void add_sand(gb_builder *b, const gb_temperatures *t, const gb_warmth *w) {
    if (isnan(w->sand.c))
        return;
    gb_figure wanted = temp("wanted", t->wanted);
    gb_figure needed = about("needed", w->needed);
    gb_figure water = temp("water", w->water);
    /* Thawed sand holds more heat by itself than ice of the same temperature. */
    if (t->frozen && !(w->sand.c > 0))
        GB_ADD(b, WARMTH_THAW, wanted, needed, water);
    else if (isnan(w->reached.c))
        GB_ADD(b, WARMTH_SAND_ALONE, wanted, about("sand", w->sand), water);
    else
        GB_ADD(b, WARMTH_SAND, wanted, needed, water, about("reached", w->reached),
               about("sand", w->sand));
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

void gb_add_warmth(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    const gb_temperatures *t = &job->temperatures;
    gb_warmth w;
    if (!gb_warm_batch(job, p, &w))
        return;
    add_as_is(b, t, &w);
    switch (w.way) {
    case GB_NOT_WANTED:
        break;
    case GB_WARM_ALREADY:
        GB_ADD(b, WARMTH_AS_WANTED, temp("wanted", t->wanted));
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
