#include "cli/append.h"
#include "cli/command.h"
#include "cli/output.h"
#include "words/words.h"

#include <stdio.h>
#include <string.h>
#include <time.h>

enum { KEY_FIRST = 6001 };

typedef struct input {
    gb_common common;
    const char *job, *log;
    bool add;
    gb_log_entry entry;
    bool given; /* one of its options */
} input;

/* In the order of gb_log_role, from the date on. */
static const struct argp_option OPTIONS[] = {
    {"date", KEY_FIRST + GB_LOG_DATE, "2026-05-12", 0,
     N_("of the batch; today without it"), 0},
    {"time", KEY_FIRST + GB_LOG_TIME, "07:42", 0, N_("of first water; now without it"),
     0},
    {"mix", KEY_FIRST + GB_LOG_MIX, N_("ID"), 0,
     N_("the mix; may be left out when the job uses one"), 0},
    {"batch", KEY_FIRST + GB_LOG_BATCH, N_("NUMBER"), 0,
     N_("of this mix; the next one without it"), 0},
    {"bags", KEY_FIRST + GB_LOG_BAGS, N_("COUNT"), 0, N_("that went in, as 1 or 5/8"), 0},
    {"water", KEY_FIRST + GB_LOG_WATER, N_("VOLUME"), 0, N_("that was added, as 11qt"),
     0},
    {"start", KEY_FIRST + GB_LOG_START, "07:55", 0, N_("when placing began"), 0},
    {"stop", KEY_FIRST + GB_LOG_STOP, "09:20", 0, N_("when all of it was placed"), 0},
    {"set", KEY_FIRST + GB_LOG_SET, N_("PIECES"), 0,
     N_("what it set, as \"5 treads\" or \"2 treads + 0.4 landing\""), 0},
    {"depth", KEY_FIRST + GB_LOG_DEPTH, N_("DEPTHS"), 0,
     N_("measured on what it set, as \"1-1/4in 1-3/8in\""), 0},
    {"thrown", KEY_FIRST + GB_LOG_THROWN, N_("SHARE"), 0,
     N_("of the batch that was thrown away, as 10%"), 0},
    {"lot", KEY_FIRST + GB_LOG_LOT, N_("TEXT"), 0, N_("on the bags"), 0},
    {"air", KEY_FIRST + GB_LOG_AIR, N_("TEMPERATURE"), 0, N_("of the air, as 62F"), 0},
    {"remark", KEY_FIRST + GB_LOG_REMARK, N_("TEXT"), 0, N_("anything else"), 0},
    {0}};

static void take_argument(input *in, struct argp_state *state, const char *arg) {
    if (in->job == NULL)
        in->job = arg;
    else if (in->log == NULL)
        in->log = arg;
    else if (!in->add && strcmp(arg, "add") == 0)
        in->add = true;
    else
        argp_error(state,
                   gb_tr("'%s' is too much; write: log JOB LOG, or log JOB LOG add "
                         "with the options of a batch"),
                   arg);
}

static void check_end(const input *in, struct argp_state *state) {
    if (in->log == NULL)
        argp_error(state, gb_tr("which job, and which log? name both files"));
    if (in->given && !in->add)
        argp_error(state, gb_tr("the options of a batch go with add: log JOB LOG add"));
    if (in->add &&
        (in->common.format != NULL || in->common.output != NULL || in->common.explain))
        argp_error(state,
                   gb_tr("add writes the log alone; it has no --format, --output or "
                         "--explain"));
    if (in->add && in->entry.cells[GB_LOG_DATE] != NULL &&
        in->entry.cells[GB_LOG_TIME] == NULL)
        argp_error(state, gb_tr("--date without --time: the clock shows the time of "
                                "today; write when first water went in"));
}

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    if (key > KEY_FIRST && key < KEY_FIRST + GB_LOG_ROLES) {
        const char **cell = &in->entry.cells[key - KEY_FIRST];
        if (*cell != NULL)
            argp_error(state, gb_tr("--%s is given twice; give it once"),
                       OPTIONS[key - KEY_FIRST - GB_LOG_DATE].name);
        *cell = arg;
        in->given = true;
        return 0;
    }
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case ARGP_KEY_ARG:
        take_argument(in, state, arg);
        return 0;
    case ARGP_KEY_END:
        check_end(in, state);
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

/* ---- adding ------------------------------------------------------------------------ */

/* What the clock of this machine says, where the row does not. */
static bool fill_time(gb_run *run, gb_log_entry *entry) {
    enum { ROOM = 16 };
    char *texts = gb_arena_take(&run->arena, 2, ROOM);
    time_t now = time(NULL);
    struct tm local;
    if (texts == NULL || now == (time_t)-1 || localtime_r(&now, &local) == NULL ||
        strftime(texts, ROOM, "%Y-%m-%d", &local) == 0 ||
        strftime(texts + ROOM, ROOM, "%H:%M", &local) == 0)
        return false;
    if (entry->cells[GB_LOG_DATE] == NULL)
        entry->cells[GB_LOG_DATE] = texts;
    if (entry->cells[GB_LOG_TIME] == NULL)
        entry->cells[GB_LOG_TIME] = texts + ROOM;
    return true;
}

/* While the log is held, so that what is read is what the row is added to. */
static bool extend(gb_run *run, const input *in, const gb_job *job,
                   const gb_held_file *held) {
    const char *old = NULL;
    size_t old_length = 0;
    const char *longer = NULL;
    size_t length = 0;
    size_t batch = 0;
    if (!gb_read_text(held->shown, &run->arena, &run->diags, &old, &old_length) ||
        !gb_extend_log(held->shown, old, old_length, &in->entry, job, &run->arena,
                       &run->diags, &longer, &length, &batch))
        return false;
    const gb_rights rights = {held->info.st_mode & 07777, held->info.st_uid,
                              held->info.st_gid};
    if (!gb_file_is_as_held(held) ||
        !gb_replace_file(held->path, held->shown, longer, length, rights)) {
        run->told = GB_EXIT_IO;
        return false;
    }
    gb_add_format(&run->out, gb_tr("%s: batch %zu is added\n"), held->shown, batch);
    return true;
}

static gb_status add(gb_run *run, input *in) {
    gb_job job;
    gb_held_file held;
    if (!gb_read_job(in->job, run->table, &run->arena, &run->diags, &job))
        return GB_OK; /* the faults are in the run */
    if (!fill_time(run, &in->entry))
        return GB_NO_MEMORY;
    if (!gb_hold_file(in->log, &held)) {
        run->told = GB_EXIT_IO;
        return GB_OK;
    }
    gb_let_file_go(&held, extend(run, in, &job, &held));
    return GB_OK;
}

/* ---- listing ----------------------------------------------------------------------- */

static gb_status list(gb_run *run, const input *in) {
    gb_job job;
    gb_plan plan;
    gb_log log;
    gb_log_head head;
    gb_sheet sheet;
    if (!gb_run_plan(run, in->job, &job, &plan) ||
        !gb_read_log(in->log, &job, &run->arena, &run->diags, &head, &log))
        return GB_OK; /* the faults are in the run */
    gb_status status = gb_log_sheet(&plan, &log, gb_run_style(&in->common, job.units),
                                    &run->arena, &sheet);
    return status == GB_OK ? gb_run_write(run, &in->common, &sheet) : status;
}

static int run_log(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .options = OPTIONS,
        .parser = parse,
        .args_doc = N_("JOB LOG [add]"),
        .doc = N_("Checks and lists the batch log of JOB, a CSV file with a row for each "
                  "batch. With add: adds a row, or begins the log; several may add at "
                  "once, and the file is whole at any moment."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    input in = {.common = {.no_csv = true}};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    gb_status status = in.add ? add(&run, &in) : list(&run, &in);
    return gb_run_end(&run, &in.common, status);
}

const gb_command gb_log_command = {"log", N_("the batch log: list it, or add a batch"),
                                   run_log};
