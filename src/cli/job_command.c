#include "cli/job_command.h"
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
        if (in->job != NULL)
            argp_error(state, gb_tr("one job at a time; '%s' is a second one"), arg);
        in->job = arg;
        return 0;
    case ARGP_KEY_NO_ARGS:
        argp_error(state, gb_tr("which job? name its file"));
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

int gb_run_job_command(int argc, char **argv, const char *doc, gb_sheet_builder build,
                       bool tables) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {.parser = parse,
                              .args_doc = N_("JOB"),
                              .doc = doc,
                              .children = children,
                              .argp_domain = GB_DOMAIN};
    input in = {.common = {.no_csv = !tables}, .job = NULL};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    gb_job job;
    gb_plan plan;
    gb_sheet sheet;
    gb_status status = GB_OK;
    if (gb_run_plan(&run, in.job, &job, &plan)) {
        status = build(&plan, gb_run_style(&in.common, job.units), &run.arena, &sheet);
        if (status == GB_OK)
            status = gb_run_write(&run, &in.common, &sheet);
    }
    return gb_run_end(&run, &in.common, status);
}
