#include "cli/command.h"
#include "words/words.h"

enum { KEY_PRICES = 2001, KEY_SURE, MOST_JOBS = 1000 };

typedef struct input {
    gb_common common;
    gb_share sure;
    const char *prices;
    const char *jobs[MOST_JOBS];
    size_t count;
} input;

static const struct argp_option OPTIONS[] = {
    {"prices", KEY_PRICES, N_("FILE"), 0,
     N_("the price book; without it prices.cfg beside the first job"), 0},
    {"sure", KEY_SURE, "50|80|90|95|99", 0,
     N_("buy so much that it is enough with that chance in per cent; without it, what "
        "the batches take"),
     0},
    {0}};

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case KEY_SURE:
        in->sure = gb_option_sure(state, arg);
        return 0;
    case KEY_PRICES:
        in->prices = arg;
        return 0;
    case ARGP_KEY_ARG:
        if (in->count == MOST_JOBS)
            argp_error(state, gb_tr("at most %d jobs are priced in one go"), MOST_JOBS);
        in->jobs[in->count++] = arg;
        return 0;
    case ARGP_KEY_NO_ARGS:
        argp_error(state, gb_tr("which job? name its file"));
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

static gb_status write_list(gb_run *run, const input *in, const gb_job *jobs,
                            const gb_plan *plans, const gb_price_book *book) {
    gb_buy_list list;
    gb_sheet sheet;
    const gb_priced priced = {&list, book, plans, in->count};
    if (!gb_run_buy(run, plans, in->count, book, &list))
        return GB_OK; /* the faults are in the run */
    gb_status status = gb_price_sheet(&priced, gb_run_style(&in->common, jobs[0].units),
                                      &run->arena, &sheet);
    return status == GB_OK ? gb_run_write(run, &in->common, &sheet) : status;
}

static gb_status price_jobs(gb_run *run, const input *in) {
    gb_job *jobs = gb_arena_take(&run->arena, in->count, sizeof *jobs);
    gb_plan *plans = gb_arena_take(&run->arena, in->count, sizeof *plans);
    if (jobs == NULL || plans == NULL)
        return GB_NO_MEMORY;
    bool good = true;
    for (size_t i = 0; i < in->count; i++)
        good = gb_run_plan(run, in->jobs[i], &jobs[i], &plans[i]) && good;
    const char *prices = in->prices != NULL
                             ? in->prices
                             : gb_path_beside(in->jobs[0], "prices.cfg", &run->arena);
    if (prices == NULL)
        return GB_NO_MEMORY;
    gb_price_book book;
    good = gb_read_prices(prices, run->table, &run->arena, &run->diags, &book) && good;
    if (!good)
        return GB_OK; /* the faults are in the run */
    return write_list(run, in, jobs, plans, &book);
}

static int run_price(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .options = OPTIONS,
        .parser = parse,
        .args_doc = N_("JOB..."),
        .doc = N_("What to buy for one or more jobs: whole packs after "
                  "waste, cost, leftover, tax and delivery."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    input in = {.count = 0};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    run.sure = in.sure;
    gb_status status = price_jobs(&run, &in);
    return gb_run_end(&run, &in.common, status);
}

const gb_command gb_price_command = {
    "price", N_("what to buy in which packs, and its cost"), run_price};
