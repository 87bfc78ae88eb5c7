#include "cli/command.h"
#include "words/words.h"

#include <stdio.h>
#include <string.h>

enum { KEY_SURE = 7001, KEY_ON_HAND, KEY_LEAD, MOST_STOCKS = 32 };
static const double MOST_BAGS = 1e6;
static const double MOST_DAYS = 365;

typedef struct input {
    gb_common common;
    const char *job, *log;
    gb_share sure;
    double lead_days;
    const char *stocks[MOST_STOCKS];
    size_t stock_count;
} input;

static const struct argp_option OPTIONS[] = {
    {"sure", KEY_SURE, "50|80|90|95|99", 0,
     N_("the chance in per cent with which what is bought is to be enough; 90 without "
        "it"),
     0},
    {"on-hand", KEY_ON_HAND, N_("[MIX=]BAGS"), 0,
     N_("bags on site, as 6 or bed/stiff-1-4=6; how far they reach, and when to order; "
        "may "
        "be given for several mixes"),
     0},
    {"lead", KEY_LEAD, N_("DAYS"), 0, N_("from ordering to the site; 1 without it"), 0},
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
    case KEY_LEAD:
        if (gb_parse_number(arg, &in->lead_days) != GB_NO_FAULT ||
            !(in->lead_days >= 0 && in->lead_days <= MOST_DAYS))
            argp_error(state,
                       gb_tr("--lead '%.*s' is out of bounds; write days from 0 to 365"),
                       gb_cut(arg, 60), arg);
        return 0;
    case KEY_ON_HAND:
        if (in->stock_count == MOST_STOCKS)
            argp_error(state, gb_tr("--on-hand at most %d times"), MOST_STOCKS);
        in->stocks[in->stock_count++] = arg;
        return 0;
    case ARGP_KEY_ARG:
        if (in->job == NULL)
            in->job = arg;
        else if (in->log == NULL)
            in->log = arg;
        else
            argp_error(state, gb_tr("'%s' is too much; write: remaining JOB LOG"), arg);
        return 0;
    case ARGP_KEY_END:
        if (in->log == NULL)
            argp_error(state, gb_tr("which job, and which log? name both files"));
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

static const gb_mix *job_mix(const gb_job *job, const char *id, size_t length) {
    for (size_t i = 0; i < job->mix_count; i++)
        if (strlen(job->mixes[i]->id) == length &&
            strncmp(job->mixes[i]->id, id, length) == 0)
            return job->mixes[i];
    return NULL;
}

/* `format` has room for the option as it was typed, cut, and for a mix. */
static void tell(const char *format, const char *text, const char *id) {
    (void)fprintf(stderr, format, gb_cut(text, 60), text, id);
}

/* "6", "bed/stiff-1-4=6"; false with the fault told. */
static bool read_stock(const gb_job *job, const char *text, gb_stock *stock) {
    const char *sign = strrchr(text, '=');
    const char *count = sign == NULL ? text : sign + 1;
    const char *example = job->mix_count > 0 ? job->mixes[0]->id : "bed/stiff-1-4";
    const gb_mix *mix = NULL;
    double bags = 0;
    if (sign != NULL)
        mix = job_mix(job, text, (size_t)(sign - text));
    else if (job->mix_count == 1)
        mix = job->mixes[0];
    if (mix == NULL) {
        tell(sign == NULL
                 ? gb_tr("gaugebox: --on-hand '%.*s': the job uses several mixes; "
                         "write which, and how many bags, as %s=6\n")
                 : gb_tr("gaugebox: --on-hand '%.*s': the job does not use that "
                         "mix; write one that it does, as %s=6\n"),
             text, example);
        return false;
    }
    if (gb_parse_number(count, &bags) == GB_NO_FAULT && bags >= 0 && bags <= MOST_BAGS) {
        *stock = (gb_stock){mix, bags};
        return true;
    }
    tell(gb_tr("gaugebox: --on-hand '%.*s': write a count of bags from 0 to 1000000, as "
               "%s=6\n"),
         text, mix->id);
    return false;
}

static gb_status write_remaining(gb_run *run, const input *in, const gb_plan *plan,
                                 const gb_log *log) {
    gb_stock stocks[MOST_STOCKS];
    gb_remaining left;
    gb_sheet sheet;
    for (size_t i = 0; i < in->stock_count; i++)
        if (!read_stock(plan->job, in->stocks[i], &stocks[i])) {
            run->told = GB_EXIT_USAGE;
            return GB_OK;
        }
    const gb_outlook outlook = {.sure = in->sure,
                                .lead_days = in->lead_days,
                                .stocks = stocks,
                                .stock_count = in->stock_count};
    gb_status status = gb_find_remaining(plan, log, &outlook, &run->arena, &left);
    if (status == GB_OK)
        status = gb_remaining_sheet(&left, gb_run_style(&in->common, plan->job->units),
                                    &run->arena, &sheet);
    return status == GB_OK ? gb_run_write(run, &in->common, &sheet) : status;
}

static gb_status find(gb_run *run, const input *in) {
    gb_job job;
    gb_plan plan;
    gb_log log;
    gb_log_head head;
    if (!gb_run_plan(run, in->job, &job, &plan) ||
        !gb_read_log(in->log, &job, &run->arena, &run->diags, &head, &log))
        return GB_OK; /* the faults are in the run */
    return write_remaining(run, in, &plan, &log);
}

static int run_remaining(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .options = OPTIONS,
        .parser = parse,
        .args_doc = N_("JOB LOG"),
        .doc =
            N_("What the batch log leaves of a job: what is set, what a bag really made, "
               "the bags and batches to finish and how sure that is, how far the bags "
               "on hand reach, and when to order."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    input in = {.common = {.no_csv = true}, .sure = {0.90}, .lead_days = 1};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    return gb_run_end(&run, &in.common, find(&run, &in));
}

const gb_command gb_remaining_command = {
    "remaining", N_("what a batch log leaves to do, and to buy"), run_remaining};
