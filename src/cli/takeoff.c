#include "cli/command.h"
#include "words/words.h"

enum { KEY_AGAINST = 5001, KEY_VARY, KEY_PRICES, KEY_SURE, MOST_CHANGES = 32 };

typedef struct input {
    gb_common common;
    gb_share sure;
    const char *job;
    const char *against;
    const char *prices;
    const char *changes[MOST_CHANGES];
    size_t change_count;
    bool no_change; /* one of the changes cannot be made */
} input;

static const struct argp_option OPTIONS[] = {
    {"against", KEY_AGAINST, N_("OLDJOB"), 0,
     N_("instead, what changes from that job to this one: pieces, needs, materials, and "
        "with --prices the cost"),
     0},
    {"vary", KEY_VARY, N_("CHANGE"), 0,
     N_("the same for this job with a change, as \"bed depth +1/4in\", \"treads count "
        "-1\" "
        "or \"bed/stiff-1-4 waste 15%\": what, which key (depth, count, waste, usable, "
        "rise, tread), by how much or to what; may be given several times"),
     0},
    {"prices", KEY_PRICES, N_("FILE"), 0,
     N_("the price book that both are bought from; with --against or --vary"), 0},
    {"sure", KEY_SURE, "50|80|90|95|99", 0,
     N_("tell by mix how many bags are enough with that chance in per cent, and what one "
        "more buys"),
     0},
    {0}};

static bool compares(const input *in) {
    return in->against != NULL || in->change_count > 0;
}

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case KEY_AGAINST:
        in->against = arg;
        return 0;
    case KEY_VARY:
        if (in->change_count == MOST_CHANGES)
            argp_error(state, gb_tr("at most %d changes in one go"), MOST_CHANGES);
        in->changes[in->change_count++] = arg;
        return 0;
    case KEY_SURE:
        in->sure = gb_option_sure(state, arg);
        return 0;
    case KEY_PRICES:
        in->prices = arg;
        return 0;
    case ARGP_KEY_ARG:
        gb_take_job(state, arg, &in->job);
        return 0;
    case ARGP_KEY_NO_ARGS:
        argp_error(state, gb_tr("which job? name its file"));
        return 0;
    case ARGP_KEY_END:
        if (in->prices != NULL && !compares(in))
            argp_error(state, gb_tr("--prices goes with --against or --vary; `gaugebox "
                                    "price` prices one job"));
        if (in->sure.of_one > 0 && compares(in) && in->prices == NULL)
            argp_error(state, gb_tr("--sure goes with a takeoff by itself, or with the "
                                    "--prices of what is compared"));
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

/* ---- one plan against another ------------------------------------------------------ */

/* A plan and what it costs. */
typedef struct side {
    gb_job job;
    gb_plan plan;
    gb_buy_list list;
    gb_priced priced;
} side;

static bool plan_side(gb_run *run, side *s) {
    const gb_mix *bad_mix = NULL;
    s->job.sure = run->sure;
    gb_status status = gb_make_plan(&s->job, &run->arena, &s->plan, &bad_mix);
    return gb_report_plan(status, &s->job, bad_mix, &run->diags);
}

/* The job as it is, with the changes that were asked for. */
static bool read_after(gb_run *run, input *in, side *before, side *after) {
    const char *file = in->job;
    if (in->change_count == 0)
        return gb_read_job(file, run->table, &run->arena, &run->diags, &after->job) &&
               plan_side(run, after);
    gb_job *job =
        in->against == NULL ? &before->job : gb_arena_take(&run->arena, 1, sizeof *job);
    if (job == NULL) {
        run->diags.no_memory = true;
        return false;
    }
    if (in->against != NULL &&
        !gb_read_job(file, run->table, &run->arena, &run->diags, job))
        return false;
    in->no_change = !gb_vary_job(job, in->changes, in->change_count, run->table,
                                 &run->arena, &run->diags, &after->job);
    return !in->no_change && plan_side(run, after);
}

static bool price_side(gb_run *run, side *s, const gb_price_book *book) {
    s->priced = (gb_priced){&s->list, book, &s->plan, 1};
    return gb_run_buy(run, &s->plan, 1, book, &s->list);
}

static gb_status compare(gb_run *run, input *in) {
    side *sides = gb_arena_take(&run->arena, 2, sizeof *sides);
    if (sides == NULL)
        return GB_NO_MEMORY;
    side *before = &sides[0];
    side *after = &sides[1];
    gb_price_book book;
    const char *old = in->against != NULL ? in->against : in->job;
    bool good = gb_run_plan(run, old, &before->job, &before->plan);
    good = (good || in->against != NULL) && read_after(run, in, before, after) && good;
    if (in->prices != NULL)
        good = gb_read_prices(in->prices, run->table, &run->arena, &run->diags, &book) &&
               good && price_side(run, before, &book) && price_side(run, after, &book);
    if (!good)
        return GB_OK; /* the faults are in the run */
    gb_change change = {.before = &before->plan, .after = &after->plan};
    if (in->prices != NULL) {
        change.priced_before = &before->priced;
        change.priced_after = &after->priced;
    }
    gb_sheet sheet;
    gb_style style = gb_run_style(&in->common, after->job.units);
    gb_status status = gb_change_sheet(&change, style, &run->arena, &sheet);
    return status == GB_OK ? gb_run_write(run, &in->common, &sheet) : status;
}

/* ---- one plan ---------------------------------------------------------------------- */

static gb_status take_off(gb_run *run, const input *in) {
    gb_job job;
    gb_plan plan;
    gb_sheet sheet;
    if (!gb_run_plan(run, in->job, &job, &plan))
        return GB_OK; /* the faults are in the run */
    gb_status status = gb_takeoff_sheet(&plan, gb_run_style(&in->common, job.units),
                                        &run->arena, &sheet);
    return status == GB_OK ? gb_run_write(run, &in->common, &sheet) : status;
}

static int run_takeoff(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .options = OPTIONS,
        .parser = parse,
        .args_doc = N_("JOB"),
        .doc =
            N_("Takes off JOB: areas and volumes by piece and layer, needs by mix, and "
               "the materials they come to; or what changes in them."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    input in = {.change_count = 0};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    run.sure = in.sure;
    gb_status status = compares(&in) ? compare(&run, &in) : take_off(&run, &in);
    int result = gb_run_end(&run, &in.common, status);
    return in.no_change && result == GB_EXIT_FAULT ? GB_EXIT_USAGE : result;
}

const gb_command gb_takeoff_command = {
    "takeoff", N_("areas, volumes and materials of a job"), run_takeoff};
