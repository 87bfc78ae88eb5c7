#include "write/gauge_rows.h"
#include "write/model.h"

#include <math.h>

static gb_figure sets_fig(gb_builder *b, const gb_log_row *r) {
    gb_row *rows = gb_arena_take(b->arena, r->set_count + 1, sizeof *rows);
    if (rows == NULL) {
        b->failed = true;
        return gb_txt("set", "");
    }
    for (size_t i = 0; i < r->set_count; i++)
        rows[i] = GB_MAKE(b, LOG_SET, gb_num("count", GB_SHOW_NUMBER, r->sets[i].count),
                          gb_txt("name", r->sets[i].piece->name));
    return gb_rows_fig(b, "set", rows, r->set_count);
}

static gb_figure or_dash(const char *name, gb_show show, double value) {
    return isnan(value) ? gb_mark(name, "-") : gb_num(name, show, value);
}

static double life_of(const gb_plan *plan, const gb_mix *mix) {
    for (size_t i = 0; i < plan->mix_count; i++)
        if (plan->mixes[i].need.mix == mix || (plan->mixes[i].need.mix->id == mix->id))
            return plan->mixes[i].life.s;
    return mix->life.s;
}

/* What the row itself tells to look at. */
static void add_marks(gb_builder *b, const gb_plan *plan, const gb_log_row *r) {
    double life = life_of(plan, r->mix);
    double late = r->placed ? (double)(r->stop.s - r->at.s) - life : GB_NONE;
    gb_figure n = gb_num("n", GB_SHOW_COUNT, (double)r->batch);
    if (late > 0)
        GB_ADD(b, LOG_DEAD, n, gb_txt("id", r->mix->id),
               gb_num("late", GB_SHOW_DURATION, late),
               gb_num("life", GB_SHOW_DURATION, life));
    if (r->set_count == 0 && r->thrown.of_one < 1)
        GB_ADD(b, LOG_OPEN, n, gb_txt("id", r->mix->id));
}

static void add_row(gb_builder *b, const gb_log_row *r) {
    b->about.log_row = r;
    GB_ADD(b, LOG_LINE, gb_moment_fig(b, "when", r->at, 0), gb_txt("mix", r->mix->id),
           gb_num("batch", GB_SHOW_COUNT, (double)r->batch),
           gb_num("bags", GB_SHOW_FRACTION, r->bags),
           or_dash("water", GB_SHOW_WATER_CELL, r->water.m3 * GB_WATER_KG_M3),
           gb_num("thrown", GB_SHOW_SHARE, r->thrown.of_one), sets_fig(b, r));
}

gb_status gb_log_sheet(const gb_plan *plan, const gb_log *log, gb_style style,
                       gb_arena *arena, gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    b.about = (gb_about){.plan = plan};
    GB_ADD_BARE(&b, LOG_TITLE);
    GB_ADD(&b, SITE, gb_txt("name", plan->job->site.name));
    GB_ADD(&b, PLAN, gb_number_fig(&b, "number", plan->digest));
    GB_ADD(&b, LOG_FILE, gb_txt("file", log->file),
           gb_num("n", GB_SHOW_COUNT, (double)log->count));
    gb_end_block(&b);
    if (log->count > 0) {
        GB_ADD_BARE(&b, LOG_ROWS);
        GB_ADD(&b, LOG_HEAD, gb_num("units", GB_SHOW_WATER_UNITS, 0));
        for (size_t i = 0; i < log->count; i++)
            add_row(&b, &log->rows[i]);
        for (size_t i = 0; i < log->count; i++) {
            b.about.log_row = &log->rows[i];
            add_marks(&b, plan, &log->rows[i]);
        }
        gb_end_block(&b);
    }
    return gb_finish_sheet(&b, "log", sheet);
}
