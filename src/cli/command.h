/* What the commands share: descriptors, common options, one run, whole output. */
#ifndef CLI_COMMAND_H
#define CLI_COMMAND_H

#include "gaugebox/gaugebox.h"

#include <argp.h>

/* Exit statuses; see the README. */
enum { GB_EXIT_DONE = 0, GB_EXIT_FAULT = 1, GB_EXIT_USAGE = 2, GB_EXIT_IO = 3 };

/* The options that every command knows. */
typedef struct gb_common {
    const char *units;    /* "us", "metric" or NULL: as the job says */
    const char *language; /* two letters, or NULL: English */
    const char *mixes;    /* a folder before all others, or NULL */
    const char *output;   /* a file, or NULL: standard output */
    const char *format;   /* "text" (or NULL), "json" or "csv" */
    bool explain;         /* tell how the figures came about, instead of the sheet */
    const char *figure;   /* only this one, or NULL: all */
    bool no_json;         /* set by a command before parsing: it writes text alone */
    bool no_csv;          /* it has no tables */
    bool no_explain;      /* it has no figures */
} gb_common;

extern const struct argp gb_common_argp;

/* One run of one command. */
typedef struct gb_run {
    gb_arena arena;
    gb_diags diags;
    gb_text out;
    gb_mix_table *table;
    gb_places places;       /* kept when figures are to be explained */
    const char *folders[3]; /* --mixes, the user's own, the shipped one */
    gb_share sure;          /* of what is bought; 0: at best */
    int told; /* the exit status of a fault that was told already; 0: none */
} gb_run;

typedef struct gb_command {
    const char *name;
    const char *summary;
    int (*run)(int argc, char **argv);
} gb_command;

extern const gb_command gb_sheet_command;
extern const gb_command gb_day_command;
extern const gb_command gb_takeoff_command;
extern const gb_command gb_price_command;
extern const gb_command gb_mix_command;
extern const gb_command gb_concrete_command;
extern const gb_command gb_log_command;
extern const gb_command gb_remaining_command;
extern const gb_command gb_steps_command;
extern const gb_command gb_check_command;
extern const gb_command gb_keys_command;
extern const gb_command gb_starter_command;

/* --sure: 50, 80, 90, 95 or 99 per cent, as a share. */
gb_share gb_option_sure(struct argp_state *state, const char *arg);

/* Opens a run with the mix table ready; false with the fault told on stderr. */
bool gb_run_start(gb_run *run, const gb_common *common);

/* Ends a run: prints faults on stderr, or writes the output whole. Frees all. Returns
   the exit status. */
int gb_run_end(gb_run *run, const gb_common *common, gb_status status);

/* What the faults of a run make its exit status. */
int gb_run_status(const gb_run *run);

/* Reads and plans one job; false with the faults in the run. */
bool gb_run_plan(gb_run *run, const char *file, gb_job *job, gb_plan *plan);

/* Writes a sheet in the format asked for into the run's output. */
gb_status gb_run_write(gb_run *run, const gb_common *common,
                       const gb_sheet *sheet) GB_MUST_USE;

/* The same of an explanation of its figures. */
gb_status gb_run_explain(gb_run *run, const gb_common *common,
                         const gb_sheet *sheet) GB_MUST_USE;

/* How the options want a sheet; in the units of the job unless they say otherwise. */
gb_style gb_run_style(const gb_common *common, gb_system of_job);

/* The language to print in. */
const char *gb_run_language(const gb_common *common);

/* Takes the job of a command that knows one alone; a second one ends the program with a
   usage fault. */
void gb_take_job(struct argp_state *state, const char *arg, const char **job);

/* What plans take together, bought from a book; false with the faults in the run. */
bool gb_run_buy(gb_run *run, const gb_plan *plans, size_t count,
                const gb_price_book *book, gb_buy_list *list);

/* Parses a quantity of an option, or ends the program with a usage fault. */
double gb_option_quantity(struct argp_state *state, const char *option, gb_kind kind,
                          const char *text);
/* The same of a volume, from a tenth of a litre to `most_m3`; and of --waste, 100 % at
   the most. */
double gb_option_volume(struct argp_state *state, const char *option, const char *text,
                        double most_m3);
double gb_option_waste(struct argp_state *state, const char *text);

#endif
