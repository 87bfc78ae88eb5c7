#include "cli/jobs.h"
#include "cli/output.h"
#include "words/words.h"

#include <stdio.h>
#include <string.h>

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
        argp_error(state, gb_tr("which job? name its file"));
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

static void tell_good(gb_text *out, const gb_good_job *job) {
    gb_text_add_clean(out, job->file);
    gb_add_format(out, gb_tr(": no faults; pieces %zu, layers %zu, mixes %zu\n"),
                  job->pieces, job->layers, job->mixes);
}

/* Those of the jobs that have no faults; the faults of the others are in the run. */
static size_t check_all(gb_run *run, const gb_job_list *jobs, gb_good_job *good) {
    size_t count = 0;
    for (size_t i = 0; i < jobs->count; i++) {
        gb_job job;
        gb_plan plan;
        if (gb_run_plan(run, jobs->files[i], &job, &plan))
            good[count++] = (gb_good_job){jobs->files[i], job.piece_count,
                                          plan.take_count, plan.mix_count};
    }
    return count;
}

/* A program that asks for JSON gets the faults in it, on standard output. */
static int end_in_json(gb_run *run, const input *in, const gb_good_job *good,
                       size_t count) {
    gb_status status = gb_write_check_json(good, count, &run->diags,
                                           gb_run_language(&in->common), &run->out);
    int result = gb_run_status(run);
    if (status != GB_OK || run->diags.no_memory || run->out.failed) {
        (void)fputs(gb_tr("gaugebox: out of memory\n"), stderr);
        status = GB_NO_MEMORY;
    }
    bool written =
        status == GB_OK &&
        gb_write_out(in->common.output, gb_text_get(&run->out), run->out.length);
    gb_arena_release(&run->arena);
    return written ? result : GB_EXIT_IO;
}

static int run_check(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .parser = parse,
        .args_doc = N_("JOB|FOLDER..."),
        .doc = N_("Reads and plans each JOB and lists every fault of all "
                  "of them."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    input in = {.common = {.no_csv = true, .no_explain = true}, .jobs = NULL};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    gb_job_list jobs = {.count = 0};
    bool listed = true;
    for (size_t i = 0; i < in.count; i++)
        listed = gb_list_jobs(&run, in.jobs[i], &jobs) && listed;
    if (!listed) {
        gb_arena_release(&run.arena);
        return GB_EXIT_IO;
    }
    gb_good_job *good = gb_arena_take(&run.arena, jobs.count, sizeof *good);
    if (good == NULL)
        return gb_run_end(&run, &in.common, GB_NO_MEMORY);
    size_t count = check_all(&run, &jobs, good);
    const char *format = in.common.format;
    if (format != NULL && strcmp(format, "json") == 0)
        return end_in_json(&run, &in, good, count);
    for (size_t i = 0; i < count; i++)
        tell_good(&run.out, &good[i]);
    return gb_run_end(&run, &in.common, GB_OK);
}

const gb_command gb_check_command = {
    "check", N_("every fault of a job, or that there is none"), run_check};
