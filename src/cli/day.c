#include "cli/command.h"
#include "words/words.h"

typedef struct input {
    gb_common common;
    const char *job;
} input;

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case ARGP_KEY_ARG:
        gb_take_job(state, arg, &in->job);
        return 0;
    case ARGP_KEY_NO_ARGS:
        argp_error(state, gb_tr("which job? name its file"));
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

static gb_status plan_days(gb_run *run, const input *in) {
    gb_job job;
    gb_plan plan;
    gb_timetable table;
    gb_sheet sheet;
    if (!gb_run_plan(run, in->job, &job, &plan) || !gb_report_no_days(&plan, &run->diags))
        return GB_OK; /* the faults are in the run */
    gb_status status = gb_plan_days(&plan, &run->arena, &table);
    for (size_t i = 0; status == GB_OK && i < table.stage_count; i++)
        if (table.stages[i].unplanned == GB_NO_ROOM)
            status =
                gb_find_smaller(&plan, &table.stages[i], &run->arena, &table.smaller);
    if (status == GB_OK)
        status = gb_day_sheet(&plan, &table, gb_run_style(&in->common, job.units),
                              &run->arena, &sheet);
    return status == GB_OK ? gb_run_write(run, &in->common, &sheet) : status;
}

static int run_day(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .parser = parse,
        .args_doc = N_("JOB"),
        .doc =
            N_("The day on paper: when each batch and each pot goes in, when it is dead "
               "and what it covers, stage by stage with breaks and holds; the labour, "
               "and all water of the site."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    input in = {0};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    return gb_run_end(&run, &in.common, plan_days(&run, &in));
}

const gb_command gb_day_command = {"day", N_("when each batch goes in, day by day"),
                                   run_day};
