#include "cli/command.h"

typedef struct input {
    gb_common common;
    char **jobs;
    size_t count;
} input;

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    (void)arg;
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case ARGP_KEY_ARGS:
        in->jobs = state->argv + state->next;
        in->count = (size_t)(state->argc - state->next);
        return 0;
    case ARGP_KEY_NO_ARGS:
        argp_error(state, "which job? name its file");
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

static void tell_good(gb_text *out, const char *file, const gb_plan *plan) {
    gb_text_add_clean(out, file);
    gb_text_add(out, ": no faults; pieces ");
    gb_text_add_int(out, (int64_t)plan->job->piece_count);
    gb_text_add(out, ", layers ");
    gb_text_add_int(out, (int64_t)plan->take_count);
    gb_text_add(out, ", mixes ");
    gb_text_add_int(out, (int64_t)plan->mix_count);
    gb_text_add(out, "\n");
}

static int run_check(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {.parser = parse,
                              .args_doc = "JOB...",
                              .doc =
                                  "Reads and plans each JOB and lists every fault of all "
                                  "of them.",
                              .children = children};
    input in = {.jobs = NULL};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    for (size_t i = 0; i < in.count; i++) {
        gb_job job;
        gb_plan plan;
        if (gb_run_plan(&run, in.jobs[i], &job, &plan))
            tell_good(&run.out, in.jobs[i], &plan);
    }
    return gb_run_end(&run, &in.common, GB_OK);
}

const gb_command gb_check_command = {
    "check", "every fault of a job, or that there is none", run_check};
