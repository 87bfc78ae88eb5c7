#include "common.h"

/* The needs of the demo jobs, planned once and kept until the process ends: one of site
   mixes, one of bagged blends. */
enum { DEMOS = 2 };
static const char *const FILES[DEMOS] = {FUZZ_EXAMPLES "/library-entrance/job.cfg",
                                         FUZZ_EXAMPLES "/boathouse-steps/job.cfg"};

static const gb_plan *demos(void) {
    static fuzz_run run;
    static gb_job jobs[DEMOS];
    static gb_plan plans[DEMOS];
    if (run.table != NULL)
        return plans;
    fuzz_begin(&run, FUZZ_MIXES);
    for (size_t i = 0; i < DEMOS; i++) {
        const gb_mix *bad = NULL;
        fuzz_expect(gb_read_job(FILES[i], run.table, &run.arena, &run.diags, &jobs[i]) &&
                        gb_make_plan(&jobs[i], &run.arena, &plans[i], &bad) == GB_OK,
                    "a demo's plan");
    }
    return plans;
}

static void expect_list(const gb_buy_list *list) {
    int64_t goods = 0;
    for (size_t i = 0; i < list->line_count; i++) {
        goods += list->lines[i].cost.minor;
        fuzz_expect_amount(list->lines[i].leftover.kg, "what is left over");
    }
    fuzz_expect(list->goods.minor == goods, "goods that are another sum");
    fuzz_expect(list->total.minor ==
                    list->goods.minor + list->tax.minor + list->delivery.minor,
                "a total that is another sum");
}

/* The demos' needs are bought from whatever book comes. */
static void buy(fuzz_run *run, const gb_price_book *book) {
    const gb_supply_need *needs = NULL;
    size_t count = 0;
    gb_buy_list list;
    gb_sheet sheet;
    const gb_plan *plans = demos();
    fuzz_expect(gb_merge_supplies(plans, DEMOS, &run->arena, &needs, &count) == GB_OK,
                "the needs of two jobs");
    gb_status status = gb_buy(needs, count, book, &run->arena, &list);
    gb_report_prices(status, book, &run->diags);
    if (status != GB_OK)
        return;
    expect_list(&list);
    const gb_priced priced = {&list, book, plans, DEMOS};
    for (gb_system system = GB_US; system <= GB_METRIC; system++) {
        fuzz_expect(gb_price_sheet(&priced, (gb_style){system, "en", true}, &run->arena,
                                   &sheet) == GB_OK,
                    "price sheet");
        fuzz_sheet(run, &sheet);
        fuzz_csv(run, &sheet);
        fuzz_explanation(run, &sheet);
    }
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    fuzz_run run;
    gb_price_book book;
    fuzz_begin(&run, FUZZ_MIXES);
    bool good =
        gb_read_prices(fuzz_file(bytes, count), run.table, &run.arena, &run.diags, &book);
    fuzz_expect(good != gb_diags_any(&run.diags), "a result with faults, or neither");
    if (good)
        buy(&run, &book);
    fuzz_end(&run);
    return 0;
}
