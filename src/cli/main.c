#include "cli/command.h"
#include "cli/language.h"
#include "cli/output.h"
#include "words/words.h"

#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const gb_command *const COMMANDS[] = {
    &gb_sheet_command,    &gb_day_command,       &gb_takeoff_command, &gb_price_command,
    &gb_log_command,      &gb_remaining_command, &gb_steps_command,   &gb_mix_command,
    &gb_concrete_command, &gb_check_command,     &gb_keys_command,    &gb_starter_command,
};

static int help(FILE *to) {
    (void)fputs(
        gb_tr(
            "Usage: gaugebox COMMAND [OPTION...] [FILE...]\n"
            "Batches of mortar, grout and concrete for a job, sheets for the mixer, and\n"
            "what to buy. An aid: the bag's label, the local code and the mason's word\n"
            "come first.\n\n"),
        to);
    for (size_t i = 0; i < sizeof COMMANDS / sizeof COMMANDS[0]; i++)
        (void)fprintf(to, "  %-9s %s\n", COMMANDS[i]->name, gb_tr(COMMANDS[i]->summary));
    (void)fputs(
        gb_tr("\n`gaugebox COMMAND --help` tells the options of one command.\n"
              "Exit status: 0 done (stop cautions included), 1 a fault in your files,\n"
              "2 wrong usage, 3 something could not be read or written.\n"),
        to);
    return to == stdout ? GB_EXIT_DONE : GB_EXIT_USAGE;
}

static const gb_command *find(const char *name) {
    for (size_t i = 0; i < sizeof COMMANDS / sizeof COMMANDS[0]; i++)
        if (strcmp(COMMANDS[i]->name, name) == 0)
            return COMMANDS[i];
    return NULL;
}

/* argp names the program by argv[0]; its messages shall name the command too. */
static int run(const gb_command *command, int argc, char **argv) {
    static char name[64];
    (void)snprintf(name, sizeof name, "gaugebox %s", command->name);
    argv[1] = name;
    return command->run(argc - 1, argv + 1);
}

int main(int argc, char **argv) {
    if (signal(SIGPIPE, SIG_IGN) == SIG_ERR)
        return GB_EXIT_IO;
    gb_check_stdout_at_exit();
    argp_err_exit_status = GB_EXIT_USAGE;
    int spoken = gb_choose_language(argc, argv);
    if (spoken != GB_EXIT_DONE)
        return spoken;
    if (argc < 2)
        return help(stderr);
    if (strcmp(argv[1], "--help") == 0 || strcmp(argv[1], "help") == 0)
        return help(stdout);
    if (strcmp(argv[1], "--version") == 0) {
        (void)printf("gaugebox %s\n", gb_version());
        return GB_EXIT_DONE;
    }
    const gb_command *command = find(argv[1]);
    if (command != NULL)
        return run(command, argc, argv);
    (void)fprintf(stderr, gb_tr("gaugebox: '%s' is no command\n"), argv[1]);
    return help(stderr);
}
