#include "common.h"

/* The demo's needs are bought from whatever book comes. */
static void buy(fuzz_run *run, const gb_price_book *book) {
    gb_job job;
    gb_plan plan;
    gb_buy_list list;
    gb_sheet sheet;
    const gb_mix *bad = NULL;
    bool read = gb_read_job(EXAMPLES_FOLDER "/library-entrance/job.cfg", run->table,
                            &run->arena, &run->diags, &job);
    fuzz_expect(read && gb_make_plan(&job, &run->arena, &plan, &bad) == GB_OK,
                "the demo's plan");
    gb_status status = gb_buy(plan.supplies, plan.supply_count, book, &run->arena, &list);
    gb_report_prices(status, book, &run->diags);
    if (status != GB_OK)
        return;
    fuzz_expect(list.total.minor ==
                    list.goods.minor + list.tax.minor + list.delivery.minor,
                "a total that is another sum");
    const gb_priced priced = {&list, book, &plan, 1};
    gb_text text;
    gb_text_init(&text, &run->arena);
    fuzz_expect(gb_price_sheet(&priced, (gb_style){GB_US, "en", false}, &run->arena,
                               &sheet) == GB_OK,
                "price sheet");
    gb_write_text(&sheet, &text);
    fuzz_text(&text);
    gb_text_init(&text, &run->arena);
    fuzz_expect(gb_write_csv(&sheet, &text) == GB_OK, "csv");
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    fuzz_run run;
    gb_price_book book;
    fuzz_begin(&run);
    bool good =
        gb_read_prices(fuzz_file(bytes, count), run.table, &run.arena, &run.diags, &book);
    fuzz_expect(good != gb_diags_any(&run.diags), "a result with faults, or neither");
    if (good)
        buy(&run, &book);
    fuzz_end(&run);
    return 0;
}
