#include "common.h"

#include <string.h>

/* What was read is what a site can have. */
static void expect_log(const gb_job *job, const gb_log *log) {
    for (size_t i = 0; i < log->count; i++) {
        const gb_log_row *r = &log->rows[i];
        fuzz_expect(r->mix != NULL && r->batch > 0 && r->bags > 0, "a batch of nothing");
        fuzz_expect(i == 0 || r->at.s >= log->rows[i - 1].at.s, "rows out of order");
        fuzz_expect(r->thrown.of_one >= 0 && r->thrown.of_one <= 1, "thrown away");
        fuzz_expect(r->start_s <= r->stop_s && (r->start_s < 0) == (r->stop_s < 0),
                    "placing that runs backwards");
        for (size_t k = 0; k < r->set_count; k++)
            fuzz_expect(r->sets[k].piece >= job->pieces &&
                            r->sets[k].piece < job->pieces + job->piece_count &&
                            r->sets[k].count > 0,
                        "a piece of no job");
        for (size_t k = 0; k < r->depth_count; k++)
            fuzz_expect(r->depths_m[k] > 0, "a depth of none");
        fuzz_expect(r->line > 1, "a batch of no line");
    }
}

/* What it leaves, and the same log with a row more, which reads as well. */
static void look_at(fuzz_run *run, const gb_job *job, const gb_log *log) {
    enum { MOST_ROWS = 100 };
    static const double HAND[] = {0, 0.3, 50};
    gb_plan plan;
    gb_sheet sheet;
    gb_remaining left;
    const gb_mix *bad = NULL;
    fuzz_expect(gb_make_plan(job, &run->arena, &plan, &bad) == GB_OK, "the demo's plan");
    for (size_t i = 0; i < sizeof HAND / sizeof HAND[0]; i++) {
        const gb_stock stock = {NULL, HAND[i]};
        const gb_outlook outlook = {
            .sure = {0.9}, .lead_days = (double)i, .stocks = &stock, .stock_count = 1};
        fuzz_expect(gb_find_remaining(&plan, log, &outlook, &run->arena, &left) == GB_OK,
                    "nothing is foretold");
        for (size_t m = 0; m < left.mix_count; m++)
            fuzz_expect_amount(left.mixes[m].bags_sure, "the bags to finish");
        fuzz_expect(gb_remaining_sheet(&left, (gb_style){GB_US, "en", true}, &run->arena,
                                       &sheet) == GB_OK,
                    "the sheet of what is left");
        fuzz_sheet(run, &sheet);
        fuzz_explanation(run, &sheet);
    }
    if (log->count > MOST_ROWS)
        return;
    fuzz_expect(gb_log_sheet(&plan, log, (gb_style){GB_METRIC, "en", true}, &run->arena,
                             &sheet) == GB_OK,
                "the sheet of the log");
    fuzz_sheet(run, &sheet);
    fuzz_explanation(run, &sheet);
}

/* A row is added where the log takes one; the longer text is the old one and a line. */
static void add_to(fuzz_run *run, const gb_job *job, const char *text, size_t length) {
    const gb_log_entry entry = {.cells = {[GB_LOG_DATE] = "2199-12-31",
                                          [GB_LOG_TIME] = "23:59",
                                          [GB_LOG_MIX] = "slurry/neat",
                                          [GB_LOG_BAGS] = "1/32",
                                          [GB_LOG_SET] = NULL}};
    const char *longer = NULL;
    size_t longer_length = 0;
    size_t batch = 0;
    gb_diags diags;
    gb_diags_init(&diags, &run->arena);
    if (!gb_extend_log("log.csv", text, length, &entry, job, &run->arena, &diags, &longer,
                       &longer_length, &batch))
        return;
    fuzz_expect(longer_length > length && memcmp(longer, text, length) == 0 &&
                    longer[longer_length - 1] == '\n',
                "what was there is gone");
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    static const char *const DEMO = FUZZ_EXAMPLES "/library-entrance/job.cfg";
    fuzz_run run;
    gb_job job;
    gb_log log;
    gb_log_head head;
    const char *text = NULL;
    size_t length = 0;
    fuzz_begin(&run, FUZZ_MIXES);
    fuzz_expect(gb_read_job(DEMO, run.table, &run.arena, &run.diags, &job), "the demo");
    const char *file = fuzz_file(bytes, count);
    bool good = gb_read_log(file, &job, &run.arena, &run.diags, &head, &log);
    fuzz_expect(good != gb_diags_any(&run.diags), "a result with faults, or neither");
    if (good) {
        expect_log(&job, &log);
        look_at(&run, &job, &log);
        fuzz_expect(gb_read_text(file, &run.arena, &run.diags, &text, &length),
                    "the text");
        add_to(&run, &job, text, length);
    }
    fuzz_end(&run);
    return 0;
}
