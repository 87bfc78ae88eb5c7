#include "cli/command.h"
#include "cli/keyed.h"
#include "words/words.h"

#include <stdio.h>

/* The keys of a run are the options of this command. */
typedef struct input {
    gb_common common;
    const char *job;
    gb_keyed keyed;
} input;

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    if (gb_keyed_take(&in->keyed, key, arg, state))
        return 0;
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case ARGP_KEY_ARG:
        gb_take_job(state, arg, &in->job);
        return 0;
    case ARGP_KEY_END:
        if (in->job == NULL && in->keyed.count == 0)
            argp_error(state, gb_tr("which run? name a job, or state it: --rise 49in "
                                    "--tread 14in"));
        if (in->job != NULL && in->keyed.count > 0)
            argp_error(state,
                       gb_tr("a job states its runs itself; take --%s out, or the "
                             "job"),
                       in->keyed.typed[0].key);
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

/* ---- runs -------------------------------------------------------------------------- */

static gb_status write_runs(gb_run *run, const input *in, gb_steps_question *questions,
                            size_t count, gb_style style) {
    gb_sheet sheet;
    gb_status status = GB_OK;
    for (size_t i = 0; i < count && status == GB_OK; i++) {
        questions[i].read_to = gb_tape(style.system);
        status = gb_find_steps(questions[i].steps, questions[i].read_to, &run->arena,
                               &questions[i].choices);
    }
    if (status == GB_OK)
        status = gb_steps_sheet(questions, count, style, &run->arena, &sheet);
    if (status == GB_OK)
        status = gb_run_write(run, &in->common, &sheet);
    if (status == GB_IMPOSSIBLE) {
        (void)fputs(
            gb_tr("gaugebox steps: error: no number of risers fits, so there is no "
                  "table for csv; text tells why\n"),
            stderr);
        run->told = GB_EXIT_FAULT;
    }
    return status;
}

static gb_status lay_job(gb_run *run, const input *in) {
    gb_job job;
    gb_plan plan;
    if (!gb_run_plan(run, in->job, &job, &plan))
        return GB_OK; /* the faults are in the run */
    gb_steps_question *questions =
        gb_arena_take(&run->arena, job.piece_count + 1, sizeof *questions);
    if (questions == NULL)
        return GB_NO_MEMORY;
    size_t count = 0;
    for (size_t i = 0; i < job.piece_count; i++)
        if (job.pieces[i].run.at.line != 0)
            questions[count++] = (gb_steps_question){
                .steps = &job.pieces[i].run, .plan = &plan, .piece = &job.pieces[i]};
    if (count == 0) {
        (void)fprintf(stderr,
                      gb_tr("%s: error: no piece is a run of steps; give one a run = { "
                            "... }, or state a run by options\n"),
                      in->job);
        run->told = GB_EXIT_FAULT;
        return GB_OK;
    }
    return write_runs(run, in, questions, count, gb_run_style(&in->common, job.units));
}

static gb_status lay_typed(gb_run *run, const input *in) {
    gb_steps *steps = gb_arena_take(&run->arena, 1, sizeof *steps);
    if (steps == NULL)
        return GB_NO_MEMORY;
    gb_style style = gb_run_style(&in->common, GB_US);
    if (!gb_read_steps(in->keyed.typed, in->keyed.count, style.system, run->table,
                       &run->arena, &run->diags, steps))
        return GB_OK; /* the faults are in the run */
    gb_steps_question question = {.steps = steps};
    return write_runs(run, in, &question, 1, style);
}

static int run_steps(int argc, char **argv) {
    input in = {.job = NULL};
    gb_keyed_init(&in.keyed, gb_steps_option, NULL);
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .options = in.keyed.options,
        .parser = parse,
        .args_doc = N_("[JOB]"),
        .doc =
            N_("Lays out a run of steps from its rise: every number of risers that is "
               "workable, faces, codes, the story pole, a section. The runs of JOB, or "
               "one stated by options, each of which is a key of 'run' in a job."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    gb_status status = in.job != NULL ? lay_job(&run, &in) : lay_typed(&run, &in);
    int result = gb_run_end(&run, &in.common, status);
    return in.job == NULL && result == GB_EXIT_FAULT ? GB_EXIT_USAGE : result;
}

const gb_command gb_steps_command = {
    "steps", N_("a run of steps laid out: risers, levels, a section"), run_steps};
