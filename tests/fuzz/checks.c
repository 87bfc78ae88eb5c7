#include "common.h"

#include "words/columns.h"

#include <iconv.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <wchar.h>

/* ---- texts ------------------------------------------------------------------------ */

/* A control of ASCII or C1, or one that turns the direction of writing. */
static bool steers(wchar_t sign) {
    return sign < L' ' || (sign >= 0x7F && sign <= 0x9F) ||
           (sign >= 0x202A && sign <= 0x202E) || (sign >= 0x2066 && sign <= 0x2069);
}

/* The signs of a text, to be freed; *count tells how many. The C library judges UTF-8. */
static wchar_t *signs_of(const gb_text *text, size_t *count) {
    static iconv_t way = NULL;
    if (way == NULL)
        way = iconv_open("WCHAR_T", "UTF-8");
    char *from = (char *)(uintptr_t)gb_text_get(text);
    size_t bytes = strlen(from);
    size_t room = bytes * sizeof(wchar_t);
    wchar_t *signs = malloc(room + 1);
    char *to = (char *)signs;
    fuzz_expect(signs != NULL && iconv(way, &from, &bytes, &to, &room) == 0 && bytes == 0,
                "a text that is not UTF-8");
    *count = (size_t)((wchar_t *)(void *)to - signs);
    return signs;
}

static void expect_width(const gb_text *text, size_t widest) {
    const char *line = gb_text_get(text);
    while (*line != '\0') {
        size_t length = strcspn(line, "\n");
        fuzz_expect(gb_columns(line, length) <= widest, "a line that is too wide");
        line += length + (line[length] == '\n');
    }
}

void fuzz_text(const gb_text *text, const char *allowed, size_t widest) {
    fuzz_expect(!text->failed, "memory");
    size_t count = 0;
    wchar_t *signs = signs_of(text, &count);
    for (size_t i = 0; i < count; i++) {
        bool known = signs[i] < 0x80 && strchr(allowed, (int)signs[i]) != NULL;
        fuzz_expect(known || !steers(signs[i]), "a control sign in a text");
    }
    free(signs);
    expect_width(text, widest);
}

/* ---- sheets ----------------------------------------------------------------------- */

/* A NaN is a figure that was not stated. Rows nest one or two deep. */
static void expect_figures(const gb_row *rows, size_t count) {
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < rows[i].count; k++) {
            const gb_figure *f = &rows[i].figures[k];
            fuzz_expect(!isinf(f->value), "an endless figure on a sheet");
            if (f->show == GB_SHOW_ROWS)
                expect_figures(f->rows, f->row_count);
        }
}

void fuzz_sheet(fuzz_run *run, const gb_sheet *sheet) {
    gb_text text;
    gb_text json;
    gb_text_init(&text, &run->arena);
    gb_text_init(&json, &run->arena);
    for (size_t i = 0; i < sheet->count; i++)
        expect_figures(sheet->blocks[i].rows, sheet->blocks[i].count);
    gb_write_text(sheet, &text);
    fuzz_text(&text, "\n", 80);
    fuzz_expect(gb_write_json(sheet, &json) == GB_OK, "a sheet that JSON cannot hold");
    fuzz_text(&json, "\n", SIZE_MAX);
}

void fuzz_csv(fuzz_run *run, const gb_sheet *sheet) {
    gb_text csv;
    gb_text_init(&csv, &run->arena);
    fuzz_expect(gb_write_csv(sheet, &csv) == GB_OK, "a sheet that CSV cannot hold");
    fuzz_text(&csv, "\r\n", SIZE_MAX);
}

/* Every figure comes to the value of its reason. */
void fuzz_explanation(fuzz_run *run, const gb_sheet *sheet) {
    gb_explanation e;
    gb_text text;
    gb_text_init(&text, &run->arena);
    fuzz_expect(gb_explain(sheet, &run->places, &run->arena, &e) == GB_OK,
                "memory for an explanation");
    if (e.unexplained != NULL)
        (void)fprintf(stderr, "%s.%s\n", gb_row_name(e.unexplained->row->code),
                      e.unexplained->figure->name);
    fuzz_expect(e.unexplained == NULL, "a figure that its reason does not come to");
    (void)gb_write_explanation(&e, NULL, &text);
    fuzz_text(&text, "\n", 80);
}

/* ---- plans ------------------------------------------------------------------------ */

static void expect_recipe(const gb_recipe *r) {
    fuzz_expect(isfinite(r->bag.kg) && r->bag.kg > 0, "the bag");
    fuzz_expect(isfinite(r->yield.m3) && r->yield.m3 > 0, "the yield");
    fuzz_expect_amount(r->dry.kg, "the dry mass");
    fuzz_expect_amount(r->water_least.kg, "the water");
    fuzz_expect(isfinite(r->water_most.kg) && r->water_least.kg <= r->water_usual.kg &&
                    r->water_usual.kg <= r->water_most.kg,
                "water that runs backwards");
}

static void expect_pots(const gb_mix_plan *mix) {
    for (size_t i = 0; i < mix->pot_count; i++) {
        const gb_pot *pot = &mix->pots[i];
        fuzz_expect(pot->count > 0 && isfinite(pot->pieces) && pot->pieces > 0,
                    "pots of nothing");
        fuzz_expect_amount(pot->bags, "a pot");
        fuzz_expect_amount(pot->first.kg, "the water of a pot");
        fuzz_expect(isfinite(pot->most.kg) && pot->first.kg <= pot->usual.kg &&
                        pot->usual.kg <= pot->most.kg,
                    "water of a pot that runs backwards");
    }
}

/* No batch is over the limit, and together they hold what is needed and cover every
   piece. */
static void expect_batches(const gb_mix_plan *mix) {
    const gb_batching *b = &mix->batching;
    double pieces = 0;
    double needed = 0;
    double bags = 0;
    for (size_t i = 0; i < b->batch_count; i++) {
        const gb_batch *batch = &b->batches[i];
        fuzz_expect(batch->bags > 0 && !gb_over(batch->bags, b->most_bags),
                    "a batch of nothing, or over its limit");
        bags += batch->bags;
        for (size_t k = 0; k < batch->stretch_count; k++)
            pieces += batch->stretches[k].to - batch->stretches[k].from;
    }
    for (size_t i = 0; i < mix->need.take_count; i++)
        needed += mix->need.takes[i]->units;
    fuzz_expect_amount(b->bags_gauged, "the bags");
    if (b->batch_count == 0)
        return;
    fuzz_expect(fabs(bags - b->bags_gauged) <= 1e-6 * bags, "bags that are another sum");
    fuzz_expect(bags >= b->bags_needed * (1 - 1e-6), "batches that hold too little");
    fuzz_expect(fabs(pieces - needed) < 1e-6 * needed,
                "batches that cover another number of pieces");
}

static void expect_plan(const gb_plan *plan) {
    for (size_t i = 0; i < plan->mix_count; i++) {
        const gb_mix_plan *mix = &plan->mixes[i];
        fuzz_expect_amount(mix->need.gross.m3, "the need");
        fuzz_expect_amount(mix->need.spread.m3, "the spread of the need");
        fuzz_expect(mix->need.gross.m3 >= mix->need.net.m3, "waste below nothing");
        expect_recipe(&mix->recipe);
        expect_batches(mix);
        expect_pots(mix);
    }
    for (size_t i = 0; i < plan->supply_count; i++) {
        fuzz_expect_amount(plan->supplies[i].mass.kg, "what is bought");
        fuzz_expect_amount(plan->supplies[i].lying.kg, "what is bought as it lies");
        if (plan->supplies[i].material != NULL)
            fuzz_expect_amount(plan->supplies[i].loose.m3, "what is bought by volume");
    }
    fuzz_expect_amount(plan->water.m3, "the water in all");
}

/* A valid job may plan 100,000 batches of each mix; writing them takes seconds under the
   sanitizers, and one is written like the other. */
enum { MOST_WRITTEN = 500, MOST_EXPLAINED = 50 };

/* The same plan with the middle of long lists of batches left out. */
static gb_plan shortened(const gb_plan *plan, gb_arena *arena) {
    gb_plan copy = *plan;
    gb_mix_plan *mixes = gb_arena_take(arena, plan->mix_count + 1, sizeof *mixes);
    fuzz_expect(mixes != NULL, "memory");
    for (size_t i = 0; i < plan->mix_count; i++) {
        mixes[i] = plan->mixes[i];
        gb_batching *b = &mixes[i].batching;
        if (b->batch_count <= MOST_WRITTEN)
            continue;
        gb_batch *list = gb_arena_take(arena, MOST_WRITTEN, sizeof *list);
        fuzz_expect(list != NULL, "memory");
        for (size_t k = 0; k + 1 < MOST_WRITTEN; k++)
            list[k] = b->batches[k];
        list[MOST_WRITTEN - 1] = b->batches[b->batch_count - 1];
        gb_stage_batches *one = gb_arena_take(arena, 1, sizeof *one);
        fuzz_expect(one != NULL, "memory");
        *one = b->stages[0];
        one->first = 0;
        one->count = MOST_WRITTEN;
        b->stages = one;
        b->stage_count = 1;
        b->batches = list;
        b->batch_count = MOST_WRITTEN;
    }
    copy.mixes = mixes;
    return copy;
}

static bool is_short(const gb_plan *plan) {
    for (size_t i = 0; i < plan->mix_count; i++)
        if (plan->mixes[i].batching.batch_count > MOST_EXPLAINED)
            return false;
    return true;
}

/* No batch outlives its day or its life, no pot waits through a break. */
static void expect_days(const gb_timetable *t) {
    for (size_t i = 0; i < t->load_count; i++) {
        const gb_load *l = &t->loads[i];
        fuzz_expect(l->in <= l->from && l->from <= l->to, "a load that runs backwards");
        fuzz_expect(gb_day_of(&t->hours, l->in) == gb_day_of(&t->hours, l->to - 1),
                    "a load that lies over night");
        if (l->pot == NULL)
            fuzz_expect(l->to <= l->dead + 1, "a batch that is placed dead");
        else
            fuzz_expect(l->to <= gb_window_to(&t->hours, l->in) + 1,
                        "a pot that waits through a break");
    }
}

/* The days of a job that tells what they need. */
static void fuzz_days(fuzz_run *run, const gb_plan *plan, bool explained) {
    enum { MOST_LOADS = 300 };
    gb_timetable t;
    gb_sheet sheet;
    gb_diags diags;
    gb_diags_init(&diags, &run->arena);
    if (!gb_report_no_days(plan, &diags))
        return;
    fuzz_expect(gb_plan_days(plan, &run->arena, &t) == GB_OK, "a good job without days");
    expect_days(&t);
    if (t.load_count > MOST_LOADS)
        return;
    fuzz_expect(gb_day_sheet(plan, &t, (gb_style){plan->job->units, "en", explained},
                             &run->arena, &sheet) == GB_OK,
                "day sheet");
    fuzz_sheet(run, &sheet);
    if (explained)
        fuzz_explanation(run, &sheet);
}

void fuzz_job(fuzz_run *run, const gb_job *job) {
    gb_plan plan;
    gb_sheet sheet;
    const gb_mix *bad = NULL;
    gb_system other = job->units == GB_US ? GB_METRIC : GB_US;
    gb_status status = gb_make_plan(job, &run->arena, &plan, &bad);
    /* All that a plan can fail of but its size is a fault for the reader to tell. */
    fuzz_expect(status == GB_OK || status == GB_OVERFLOW, "a good job without a plan");
    if (!gb_report_plan(status, job, bad, &run->diags)) {
        fuzz_expect(gb_diags_any(&run->diags), "no plan and no fault");
        return;
    }
    expect_plan(&plan);
    fuzz_expect(gb_takeoff_sheet(&plan, (gb_style){other, "es", true}, &run->arena,
                                 &sheet) == GB_OK,
                "takeoff sheet");
    fuzz_sheet(run, &sheet);
    fuzz_csv(run, &sheet);
    bool whole = is_short(&plan);
    fuzz_days(run, &plan, whole);
    plan = shortened(&plan, &run->arena);
    fuzz_expect(gb_batch_sheet(&plan, (gb_style){job->units, "en", whole}, &run->arena,
                               &sheet) == GB_OK,
                "batch sheet");
    fuzz_sheet(run, &sheet);
    if (whole) /* batches that were left out explain nothing */
        fuzz_explanation(run, &sheet);
}
