/* Memory that runs out, at every place where it can. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <stdlib.h>

#include "fixture.h"

/* A supply that gives so many blocks and no more, and counts those not given back. */
typedef struct purse {
    size_t left, out, asked;
} purse;

static void *take(void *user, size_t bytes) {
    purse *p = user;
    p->asked++;
    if (p->left == 0)
        return NULL;
    p->left--;
    p->out++;
    return malloc(bytes);
}

static void give_back(void *user, void *block) {
    ((purse *)user)->out--;
    free(block);
}

static void open_purse(gb_arena *arena, purse *p, size_t blocks) {
    *p = (purse){.left = blocks};
    gb_arena_init(arena, (gb_supply){take, give_back, p});
}

enum { GRAIN = 64 };

/* How many grains go into the first block of an arena. */
static size_t grains_in_a_block(void) {
    gb_arena arena;
    purse p;
    size_t n = 0;
    open_purse(&arena, &p, 1);
    while (gb_arena_take(&arena, 1, GRAIN) != NULL)
        n++;
    gb_arena_release(&arena);
    return n;
}

/* Something that takes all its memory from one arena, over the plans made before. */
typedef gb_status task(const gb_plan *plan, gb_arena *arena);

static gb_status make_plan(const gb_plan *plan, gb_arena *arena) {
    gb_plan again = {0};
    const gb_mix *bad = NULL;
    gb_status status = gb_make_plan(plan->job, arena, &again, &bad);
    if (status != GB_OK)
        cr_expect(again.job == NULL, "a plan is written though memory ran out");
    return status;
}

static gb_status merge(const gb_plan *plan, gb_arena *arena) {
    const gb_plan plans[] = {*plan, *plan};
    const gb_supply_need *needs = NULL;
    size_t count = 0;
    return gb_merge_supplies(plans, 2, arena, &needs, &count);
}

static const gb_pack PACK = {.what = {.text = "portland-cement"},
                             .mass = {94 * LB},
                             .volume = {NAN},
                             .price = {1720},
                             .supplier = "hill yard"};
static const gb_price_book BOOK = {.file = "prices.cfg",
                                   .currency = "USD",
                                   .decimals = 2,
                                   .tax = {0.065},
                                   .packs = &PACK,
                                   .pack_count = 1};

static gb_status buy(const gb_plan *plan, gb_arena *arena) {
    gb_buy_list list;
    return gb_buy(plan->supplies, plan->supply_count, &BOOK, arena, &list);
}

/* Explained, so that what rows are about is allocated too. */
static const gb_style STYLE = {GB_US, "en", true};

static gb_status batch_sheet(const gb_plan *plan, gb_arena *arena) {
    gb_sheet sheet;
    return gb_batch_sheet(plan, STYLE, arena, &sheet);
}

static gb_status takeoff_sheet(const gb_plan *plan, gb_arena *arena) {
    gb_sheet sheet;
    return gb_takeoff_sheet(plan, STYLE, arena, &sheet);
}

static gb_status price_sheet(const gb_plan *plan, gb_arena *arena) {
    gb_sheet sheet;
    gb_buy_list list;
    gb_status status = gb_buy(plan->supplies, plan->supply_count, &BOOK, arena, &list);
    gb_priced priced = {&list, &BOOK, plan, 1};
    if (status == GB_OK)
        status = gb_price_sheet(&priced, STYLE, arena, &sheet);
    return status;
}

static const struct {
    const char *id;
    task *run;
} TASKS[] = {
    {"plan", make_plan},
    {"merge", merge},
    {"buy", buy},
    {"batch sheet", batch_sheet},
    {"takeoff sheet", takeoff_sheet},
    {"price sheet", price_sheet},
};

/* Runs the task with `room` grains left in the first block, and `more` blocks after it.
 */
static gb_status run_with(task *run, const gb_plan *plan, size_t room, size_t more) {
    static size_t whole;
    if (whole == 0)
        whole = grains_in_a_block();
    gb_arena arena;
    purse p;
    open_purse(&arena, &p, 1 + more);
    cr_assert(room <= whole);
    cr_assert(gb_arena_take(&arena, whole - room, GRAIN) != NULL);
    gb_status status = run(plan, &arena);
    gb_arena_release(&arena);
    cr_expect(p.out == 0, "%zu blocks are not given back", p.out);
    return status;
}

/* From no room at all, a grain more each time: refused until it succeeds, and from then
   on never refused again. */
static void run_out(const char *id, task *run, const gb_plan *plan) {
    size_t whole = grains_in_a_block();
    size_t refused = 0;
    bool done = false;
    for (size_t more = 0; more < 40 && !done; more++) {
        size_t fits = 0;
        for (size_t room = 0; room < whole; room++) {
            gb_status status = run_with(run, plan, room, more);
            cr_expect(status == GB_NO_MEMORY || status == GB_OK,
                      "%s: %zu grains and %zu blocks: status %d", id, room, more, status);
            cr_expect(status == GB_OK || fits == 0, "%s: %zu grains: refused with more",
                      id, room);
            fits += status == GB_OK;
            refused += status == GB_NO_MEMORY;
        }
        done = fits == whole;
    }
    cr_expect(done, "%s: never has enough", id);
    cr_expect(refused > 0, "%s: takes no memory", id);
}

static void over_tasks(const fx_job *f) {
    gb_arena arena;
    gb_plan plan;
    fx_open(&arena);
    fx_plan(f, &arena, &plan);
    for (size_t i = 0; i < ROWS_OF(TASKS); i++)
        run_out(TASKS[i].id, TASKS[i].run, &plan);
    gb_arena_release(&arena);
}

Test(memory, runs_out_over_the_library_job) {
    fx_job f;
    fx_library(&f);
    over_tasks(&f);
}

/* A blend with water of the user's own needs a copy of the mix. */
Test(memory, runs_out_over_a_blend_with_a_label) {
    fx_job f;
    fx_empty(&f);
    fx_volume(&f, &FX_BLEND, 9 * FT3);
    fx_volume(&f, &FX_LIME_MORTAR, 2 * FT3);
    fx_label(&f, &FX_BLEND, 25, 0.0135, false);
    f.labels[0].least.m3 = 0.0021;
    f.labels[0].usual.m3 = 0.0024;
    f.labels[0].most.m3 = 0.0027;
    over_tasks(&f);
}

/* So many batches that their lists alone fill several blocks: the k-th block refused for
   every k until none is refused. */
Test(memory, kth_block_refused) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    f.job.crew.mixer.usable.m3 = 0.5 * FT3;
    fx_volume(&f, &FX_BED, 1500 * FT3);
    fx_plan(&f, &arena, &plan);
    cr_assert(plan.mixes[0].batching.batch_count > 2000);
    for (size_t i = 0; i < ROWS_OF(TASKS); i++) {
        size_t k = 0;
        gb_status status = GB_NO_MEMORY;
        for (; k < 2000 && status == GB_NO_MEMORY; k++) {
            gb_arena own;
            purse p;
            open_purse(&own, &p, k);
            status = TASKS[i].run(&plan, &own);
            cr_expect(status == GB_NO_MEMORY || status == GB_OK, "%s at %zu: %d",
                      TASKS[i].id, k, status);
            cr_expect(status == GB_OK || p.asked > k, "%s at %zu: no block was asked for",
                      TASKS[i].id, k);
            gb_arena_release(&own);
            cr_expect(p.out == 0, "%s at %zu: %zu blocks kept", TASKS[i].id, k, p.out);
        }
        cr_expect(status == GB_OK && k > 1, "%s: status %d after %zu", TASKS[i].id,
                  status, k);
    }
    gb_arena_release(&arena);
}
