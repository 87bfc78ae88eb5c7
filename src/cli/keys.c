#include "cli/command.h"
#include "words/words.h"

#include <stdio.h>

typedef struct input {
    gb_common common;
    const char *kind;
} input;

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case ARGP_KEY_ARG:
        if (state->arg_num > 0)
            argp_error(state, gb_tr("one kind at a time; '%s' is a second one"), arg);
        in->kind = arg;
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

static int run_keys(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .parser = parse,
        .args_doc = "[job|mixes|materials|stones|prices]",
        .doc = N_("The reference of every key that such a file may hold; "
                  "of a job without an argument."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    input in = {.common = {.no_json = true, .no_explain = true}, .kind = "job"};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    if (!gb_print_keys(in.kind, &run.out)) {
        gb_arena_release(&run.arena);
        (void)fprintf(
            stderr,
            gb_tr("gaugebox keys: '%s' is no kind of file; write job, mixes, materials "
                  "or prices\n"),
            in.kind);
        return GB_EXIT_USAGE;
    }
    return gb_run_end(&run, &in.common, GB_OK);
}

const gb_command gb_keys_command = {"keys", N_("every key that a file may hold"),
                                    run_keys};
