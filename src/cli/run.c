#include "cli/command.h"
#include "cli/output.h"
#include "cli/place.h"
#include "words/words.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

/* ---- common options -------------------------------------------------------------- */

enum { KEY_UNITS = 1001, KEY_MIXES, KEY_FORMAT, KEY_EXPLAIN, KEY_LANG };

static const struct argp_option OPTIONS[] = {
    {"units", KEY_UNITS, "us|metric", 0,
     N_("units of the output, whatever the file uses"), 1},
    {"lang", KEY_LANG, N_("LANG"), 0,
     N_("language of all words, two letters; en without it"), 1},
    {"format", KEY_FORMAT, "text|json|csv", 0,
     N_("json has every figure in SI; csv the tables of day, takeoff, price and steps"),
     1},
    {"explain", KEY_EXPLAIN, N_("FIGURE"), OPTION_ARG_OPTIONAL,
     N_("instead of the sheet, how its figures came about, down to the lines of your "
        "files; "
        "FIGURE is a label, a row or a name, as --explain=water or --explain=NEED.gross"),
     1},
    {"mixes", KEY_MIXES, N_("FOLDER"), 0,
     N_("mixes that come before your own and the shipped ones"), 1},
    {"output", 'o', N_("FILE"), 0, N_("write to FILE, which appears whole or not at all"),
     1},
    {0}};

static void parse_format(gb_common *common, const char *arg, struct argp_state *state) {
    bool json = strcmp(arg, "json") == 0;
    bool csv = strcmp(arg, "csv") == 0;
    if (!json && !csv && strcmp(arg, "text") != 0)
        argp_error(state, gb_tr("--format '%s' is not known; write text, json or csv"),
                   arg);
    if (json && common->no_json)
        argp_error(state, gb_tr("this command writes text alone"));
    if (csv && (common->no_csv || common->no_json))
        argp_error(
            state,
            gb_tr(
                "this command has no table for csv; day, takeoff, price and steps have"));
    common->format = arg;
}

static error_t parse_common(int key, char *arg, struct argp_state *state) {
    gb_common *common = state->input;
    switch (key) {
    case KEY_UNITS:
        if (strcmp(arg, "us") != 0 && strcmp(arg, "metric") != 0)
            argp_error(state, gb_tr("--units '%s' is not known; write us or metric"),
                       arg);
        common->units = arg;
        return 0;
    case KEY_LANG: /* spoken already, see language.c */
        common->language = arg;
        return 0;
    case KEY_FORMAT:
        parse_format(common, arg, state);
        return 0;
    case KEY_EXPLAIN:
        if (common->no_explain)
            argp_error(state, gb_tr("this command has no figures to explain"));
        common->explain = true;
        common->figure = arg;
        return 0;
    case ARGP_KEY_END:
        if (common->explain && common->format != NULL &&
            strcmp(common->format, "csv") == 0)
            argp_error(state, gb_tr("an explanation is text or json"));
        return 0;
    case KEY_MIXES:
        common->mixes = arg;
        return 0;
    case 'o':
        common->output = arg;
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

const struct argp gb_common_argp = {
    .options = OPTIONS, .parser = parse_common, .argp_domain = GB_DOMAIN};

void gb_take_job(struct argp_state *state, const char *arg, const char **job) {
    if (*job != NULL)
        argp_error(state, gb_tr("one job at a time; '%s' is a second one"), arg);
    *job = arg;
}

double gb_option_quantity(struct argp_state *state, const char *option, gb_kind kind,
                          const char *text) {
    double value = 0;
    gb_fault fault = gb_parse(kind, text, &value);
    const char *examples = kind == GB_VOLUME   ? N_("3ft3 or 85L")
                           : kind == GB_AREA   ? N_("40ft2 or 4m2")
                           : kind == GB_LENGTH ? N_("1-1/4in or 30mm")
                                               : "10%";
    if (fault != GB_NO_FAULT || (kind != GB_SHARE && !(value > 0)))
        argp_error(state,
                   gb_tr("%s '%.*s' cannot be read; write it with its unit, such as %s"),
                   option, gb_cut(text, 60), text, gb_tr(examples));
    return value;
}

double gb_option_volume(struct argp_state *state, const char *option, const char *text,
                        double most_m3) {
    static const double LEAST_M3 = 0.0001;
    double m3 = gb_option_quantity(state, option, GB_VOLUME, text);
    if (m3 < LEAST_M3 || m3 > most_m3)
        argp_error(state, gb_tr("%s '%.*s' is out of bounds; write 0.1 L to %d L"),
                   option, gb_cut(text, 60), text, (int)(most_m3 * 1000));
    return m3;
}

double gb_option_waste(struct argp_state *state, const char *text) {
    double waste = gb_option_quantity(state, "--waste", GB_SHARE, text);
    if (waste > 1.0)
        argp_error(state,
                   gb_tr("--waste '%.*s' is out of bounds; write a share of at most "
                         "100%%, such as 10%%"),
                   gb_cut(text, 60), text);
    return waste;
}

gb_share gb_option_sure(struct argp_state *state, const char *arg) {
    static const char *const WORDS[] = {"50", "80", "90", "95", "99"};
    static const double SHARES[] = {0.50, 0.80, 0.90, 0.95, 0.99};
    for (size_t i = 0; i < sizeof WORDS / sizeof WORDS[0]; i++)
        if (strcmp(arg, WORDS[i]) == 0)
            return (gb_share){SHARES[i]};
    argp_error(state, gb_tr("--sure '%s' is not known; write 50, 80, 90, 95 or 99"), arg);
    return (gb_share){0};
}

gb_status gb_run_write(gb_run *run, const gb_common *common, const gb_sheet *sheet) {
    const char *format = common->format == NULL ? "text" : common->format;
    if (common->explain)
        return gb_run_explain(run, common, sheet);
    if (strcmp(format, "json") == 0)
        return gb_write_json(sheet, &run->out);
    if (strcmp(format, "csv") == 0)
        return gb_write_csv(sheet, &run->out);
    gb_write_text(sheet, &run->out);
    return GB_OK;
}

gb_style gb_run_style(const gb_common *common, gb_system of_job) {
    gb_style style = {.system = of_job,
                      .language = gb_run_language(common),
                      .explained = common->explain};
    if (common->units != NULL)
        style.system = strcmp(common->units, "metric") == 0 ? GB_METRIC : GB_US;
    return style;
}

const char *gb_run_language(const gb_common *common) {
    return common->language == NULL ? "en" : common->language;
}

/* ---- one run --------------------------------------------------------------------- */

bool gb_run_start(gb_run *run, const gb_common *common) {
    memset(run, 0, sizeof *run);
    gb_arena_init(&run->arena, gb_malloc_supply());
    gb_diags_init(&run->diags, &run->arena);
    gb_text_init(&run->out, &run->arena);
    size_t count = 0;
    struct stat info;
    if (common->mixes != NULL) {
        if (stat(common->mixes, &info) != 0 || !S_ISDIR(info.st_mode)) {
            (void)fprintf(stderr,
                          gb_tr("%s: error: no folder of mixes; check the path\n"),
                          common->mixes);
            gb_arena_release(&run->arena);
            return false;
        }
        run->folders[count++] = common->mixes;
    }
    const char *own = gb_user_place("gaugebox/mixes", &run->arena);
    if (own != NULL && stat(own, &info) == 0 && S_ISDIR(info.st_mode))
        run->folders[count++] = own;
    const char *shipped = gb_shared_place("gaugebox/mixes", &run->arena);
    if (shipped != NULL)
        run->folders[count++] = shipped;
    run->table = gb_mix_table_open(run->folders, count, &run->arena, &run->diags);
    gb_places_init(&run->places, &run->arena);
    if (run->table != NULL && common->explain)
        gb_mix_table_keep_places(run->table, &run->places);
    if (run->table != NULL && own != NULL && shipped != NULL)
        return true;
    (void)fputs(gb_tr("gaugebox: the mix table beside the program cannot be found\n"),
                stderr);
    gb_arena_release(&run->arena);
    return false;
}

int gb_run_status(const gb_run *run) {
    if (!gb_diags_any(&run->diags))
        return GB_EXIT_DONE;
    return run->diags.io || run->diags.no_memory ? GB_EXIT_IO : GB_EXIT_FAULT;
}

static int end_status(gb_run *run, const gb_common *common, gb_status status) {
    if (gb_diags_any(&run->diags)) {
        gb_text faults;
        gb_text_init(&faults, &run->arena);
        gb_diags_print(&run->diags, &faults);
        (void)fputs(faults.failed ? gb_tr("gaugebox: out of memory\n")
                                  : gb_text_get(&faults),
                    stderr);
        return gb_run_status(run);
    }
    if (run->told != GB_EXIT_DONE)
        return run->told;
    if (status != GB_OK) {
        (void)fputs(
            gb_tr("gaugebox: nothing comes of these figures, and no fault of theirs "
                  "was found; this is a fault of the program\n"),
            stderr);
        return GB_EXIT_IO;
    }
    bool written = gb_write_out(common->output, gb_text_get(&run->out), run->out.length);
    return written ? GB_EXIT_DONE : GB_EXIT_IO;
}

int gb_run_end(gb_run *run, const gb_common *common, gb_status status) {
    if (status == GB_NO_MEMORY || run->out.failed || run->arena.spent)
        run->diags.no_memory = true;
    int result = end_status(run, common, status);
    gb_arena_release(&run->arena);
    return result;
}

bool gb_run_plan(gb_run *run, const char *file, gb_job *job, gb_plan *plan) {
    if (!gb_read_job(file, run->table, &run->arena, &run->diags, job))
        return false;
    const gb_mix *bad_mix = NULL;
    job->sure = run->sure;
    gb_status status = gb_make_plan(job, &run->arena, plan, &bad_mix);
    return gb_report_plan(status, job, bad_mix, &run->diags);
}

bool gb_run_buy(gb_run *run, const gb_plan *plans, size_t count,
                const gb_price_book *book, gb_buy_list *list) {
    const gb_supply_need *needs = NULL;
    size_t need_count = 0;
    gb_status status = gb_merge_supplies(plans, count, &run->arena, &needs, &need_count);
    if (status == GB_OK)
        status = gb_buy(needs, need_count, book, &run->arena, list);
    if (status != GB_OK)
        gb_report_prices(status, book, &run->diags);
    return status == GB_OK;
}
