#include "write/gauge_rows.h"
#include "write/model.h"

#include <math.h>
#include <string.h>

/* The batch log: a block for each mix, its batches one by one. */

static gb_figure sets_fig(gb_builder *b, const gb_log_row *r) {
    gb_row *rows = gb_arena_take(b->arena, r->set_count + 1, sizeof *rows);
    if (rows == NULL) {
        b->failed = true;
        return gb_txt("set", "");
    }
    for (size_t i = 0; i < r->set_count; i++)
        rows[i] = GB_MAKE(b, LOG_SET, gb_num("count", GB_SHOW_RATIO, r->sets[i].count),
                          gb_txt("name", r->sets[i].piece->name));
    return gb_rows_fig(b, "set", rows, r->set_count);
}

static void add_row(gb_builder *b, const gb_log_row *r) {
    bool water = !isnan(r->water.m3);
    bool thrown = r->thrown.of_one > 0;
    b->about.log_row = r;
    GB_ADD(b, LOG_LINE, gb_num("batch", GB_SHOW_COUNT, (double)r->batch),
           gb_moment_fig(b, "when", r->at, 0), gb_num("bags", GB_SHOW_RATIO, r->bags),
           water ? gb_num("water", GB_SHOW_WATER_CELL, r->water.m3 * GB_WATER_KG_M3)
                 : gb_mark("water", "-"),
           thrown ? gb_num("thrown", GB_SHOW_SHARE, r->thrown.of_one)
                  : gb_mark("thrown", "-"),
           sets_fig(b, r));
}

/* What the row itself tells to look at. */
static void add_marks(gb_builder *b, const gb_log_row *r) {
    double life = b->about.mix->life.s;
    double late = r->stop_s >= 0 ? (double)r->stop_s - life : GB_NONE;
    gb_figure n = gb_num("n", GB_SHOW_COUNT, (double)r->batch);
    b->about.log_row = r;
    if (late > 0)
        GB_ADD(b, LOG_DEAD, n, gb_num("late", GB_SHOW_DURATION, late),
               gb_num("life", GB_SHOW_DURATION, life));
    if (r->set_count == 0 && r->thrown.of_one < 1)
        GB_ADD(b, LOG_OPEN, n);
}

static bool is_of(const gb_log_row *row, const gb_mix_plan *mix) {
    return strcmp(row->mix->id, mix->need.mix->id) == 0;
}

static void add_mix(gb_builder *b, const gb_log *log, const gb_mix_plan *mix) {
    bool any = false;
    for (size_t i = 0; i < log->count && !any; i++)
        any = is_of(&log->rows[i], mix);
    if (!any)
        return;
    b->about.mix = mix;
    GB_ADD(b, TITLE, gb_words_fig(b, "title", &mix->need.mix->title));
    GB_ADD(b, LOG_HEAD, gb_num("units", GB_SHOW_WATER_UNITS, 0));
    for (size_t i = 0; i < log->count; i++)
        if (is_of(&log->rows[i], mix))
            add_row(b, &log->rows[i]);
    for (size_t i = 0; i < log->count; i++)
        if (is_of(&log->rows[i], mix))
            add_marks(b, &log->rows[i]);
    gb_end_block(b);
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
    for (size_t i = 0; i < plan->mix_count; i++)
        add_mix(&b, log, &plan->mixes[i]);
    return gb_finish_sheet(&b, "log", sheet);
}
