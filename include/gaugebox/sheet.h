/* The sheet model: blocks of rows of figures, built once from a result. Writers turn it
   into words; the model itself holds codes, values, and texts that users or the mix table
   wrote. */
#ifndef GAUGEBOX_SHEET_H
#define GAUGEBOX_SHEET_H

#include "gaugebox/buy.h"
#include "gaugebox/count.h"
#include "gaugebox/day.h"
#include "gaugebox/read.h"
#include "gaugebox/remaining.h"
#include "gaugebox/ways.h"

/* How a figure is shown; its value is in SI units. */
typedef enum gb_show {
    GB_SHOW_TEXT,     /* a text of the user's or the mix table's */
    GB_SHOW_MARK,     /* a sign that only guides the eye */
    GB_SHOW_ROWS,     /* rows within a row */
    GB_SHOW_COUNT,    /* a whole number */
    GB_SHOW_NUMBER,   /* two decimals, four below 0.01 */
    GB_SHOW_RATIO,    /* as written, up to three decimals */
    GB_SHOW_FRACTION, /* as 2-3/8, to thirty-seconds */
    GB_SHOW_QUARTERS,
    GB_SHOW_PARTS, /* volumes in a proportion, as they were stated */
    GB_SHOW_LENGTH,
    GB_SHOW_LENGTH_FINE, /* inches to three decimals, mm to one */
    GB_SHOW_INCHES,      /* sixteenths of an inch, whatever the sheet's units */
    GB_SHOW_UP,          /* a mark: sixteenths of an inch, or whole millimetres */
    GB_SHOW_MM,          /* beside it, the same in whole millimetres */
    GB_SHOW_SLOPE,
    GB_SHOW_RUN,       /* a long length, tenths of ft or m */
    GB_SHOW_AREA,      /* US: 2 decimals of ft2 */
    GB_SHOW_AREA_HALF, /* US: halves of ft2, as a helper reads them */
    GB_SHOW_JOINT_RATE,
    GB_SHOW_MORTAR_RATE, /* US: ft3 in 100 ft2 */
    GB_SHOW_EVAPORATION, /* two decimals of lb/ft2/h or kg/m2/h */
    GB_SHOW_VOLUME,      /* US: 2 decimals of ft3, 3 below 1 */
    GB_SHOW_VOLUME_FINE, /* US: 3 decimals of ft3 */
    GB_SHOW_BULK,        /* loose material to order: yd3 or m3 */
    GB_SHOW_PACK,        /* a pack that is sold by volume */
    GB_SHOW_GAUGED,      /* a measure of the helper's: 1/2 ft3, 10 L */
    GB_SHOW_WATER,       /* US: half quarts with litres beside */
    GB_SHOW_WATER_CELL,  /* the same in a table whose head names the units */
    GB_SHOW_WATER_UNITS, /* the units in that head; value 1: cells hold ounces too */
    GB_SHOW_WATER_FINE, /* US: quarts and ounces with litres beside, for a small amount */
    GB_SHOW_WATER_FINE_CELL,
    GB_SHOW_POT_WATER, /* US: fluid ounces, quarts and litres */
    GB_SHOW_MASS,
    GB_SHOW_DENSITY,
    GB_SHOW_IN_WET, /* of concrete: lb in 1 yd3, kg in 1 m3 */
    GB_SHOW_LB_YD3, /* in a table whose head names the unit, whatever the sheet's */
    GB_SHOW_KG_M3,
    GB_SHOW_PRESSURE, /* tens of psi, tenths of MPa */
    GB_SHOW_DAB,      /* a mass of pounds or ounces, kilograms or grams */
    GB_SHOW_LIQUID,   /* a volume of quarts or fluid ounces with litres beside */
    GB_SHOW_TEMP,
    GB_SHOW_TEMP_WHOLE, /* to the nearest degree */
    GB_SHOW_DEGREES,    /* a difference of temperatures */
    GB_SHOW_SPEED,
    GB_SHOW_SHARE,
    GB_SHOW_DURATION,
    GB_SHOW_CLOCK,
    GB_SHOW_MONEY,
    GB_SHOWS
} gb_show;

typedef struct gb_row gb_row;

typedef struct gb_figure {
    const char *name;
    gb_show show;
    gb_rounding rounding;
    int decimals;   /* of money */
    bool whole;     /* each of the rows stays on one line */
    bool with_sign; /* shown with a + or a - */
    double value;
    gb_money money;
    const char *text;
    const gb_row *rows; /* written one behind the other, with `join` between them */
    size_t row_count;
    const char *join;
} gb_figure;

/* What a row says; the words of each code are a writer's. */
typedef enum gb_row_code {
#define GB_ROW(code, label, words) GB_ROW_##code,
#include "gaugebox/rows.def"
#undef GB_ROW
    GB_ROW_CODES
} gb_row_code;

/* Which amount of a mix a row speaks of. */
typedef enum gb_amount {
    GB_NO_AMOUNT,
    GB_ONE_BAG,
    GB_ONE_BATCH,   /* the batch of `batch` */
    GB_HALF_BATCH,  /* of the first one */
    GB_MOST_BATCH,  /* what the mixer, or the time, holds */
    GB_FIRST_CHECK, /* what fewer pieces after the first batch mean */
    GB_ONE_POT,
    GB_ALL_OF_IT, /* that the job takes */
    GB_ASKED_FOR  /* of one mix, without a job */
} gb_amount;

typedef enum gb_which_water {
    GB_FIRST_WATER,
    GB_USUAL_WATER,
    GB_MOST_WATER
} gb_which_water;

/* What a row speaks of, for the one who asks how its figures came about; NULL and zero
   where it speaks of none. */
typedef struct gb_about gb_about;
struct gb_about {
    const gb_plan *plan;
    const struct gb_priced *priced;
    const struct gb_mix_question *question;
    const struct gb_concrete_question *concrete;
    const gb_way *way;
    gb_exposure exposure; /* GB_EXPOSURES: what the concrete itself has */
    const gb_mix_plan *mix;
    const gb_piece *piece;
    const gb_take *take;
    gb_layer_kind kind; /* of layers in all */
    gb_amount amount;
    size_t batch;
    size_t part;
    size_t tread; /* of a bed by levels, from 0 */
    gb_share moisture;
    gb_which_water water;
    const gb_stretch *stretch;
    const gb_pot *pot;
    const gb_caution *caution;
    size_t claim_limit; /* of the mix's conformity */
    const gb_hold *hold;
    const gb_cover *cover;
    const gb_supply_need *supply;
    const gb_stone_take *stone;
    const gb_loose_take *loose;
    const gb_buy_line *line;
    const gb_about *before, *after; /* of a change; NULL: not there at that time */
    const gb_steps *steps;          /* of a run, and whose it is; NULL: of options */
    const char *run;
    const gb_layout *layout;
    const gb_choice *choice;
    size_t step; /* from 0 */
    gb_step_rule rule;
    const gb_timetable *table;
    const gb_load *load;
    const gb_stage_plan *work;
    size_t number;    /* of a break, from 0 */
    gb_volume volume; /* that stands in a pail */
    double bags;      /* that may be enough */
    const gb_log_row *log_row;
    const gb_remaining *remaining;
    const gb_mix_left *left;
    const gb_take_left *take_left;
    bool surely; /* of a reach: with the chance that was asked for */
};

struct gb_row {
    gb_row_code code;
    const gb_figure *figures;
    size_t count;
    const gb_about *about; /* NULL unless the sheet is to be explained */
};

/* A block can be cut out and used by itself. */
typedef struct gb_block {
    const gb_row *rows;
    size_t count;
} gb_block;

typedef struct gb_sheet {
    const char *kind; /* "sheet", "day", "log", "remaining", "takeoff", "price", "change",
                         "steps", "concrete", "mixes" or "mix" */
    gb_system system;
    const char *language; /* of the texts that it holds, and that writers use */
    const gb_block *blocks;
    size_t count;
} gb_sheet;

/* How a sheet is wanted. */
typedef struct gb_style {
    gb_system system;
    const char *language; /* of the mix table's texts */
    bool explained;       /* rows tell what they are about */
} gb_style;

/* Each builds a sheet in the arena; GB_NO_MEMORY. */
gb_status gb_batch_sheet(const gb_plan *plan, gb_style style, gb_arena *arena,
                         gb_sheet *sheet) GB_MUST_USE;
gb_status gb_takeoff_sheet(const gb_plan *plan, gb_style style, gb_arena *arena,
                           gb_sheet *sheet) GB_MUST_USE;

/* The days of a plan. */
gb_status gb_day_sheet(const gb_plan *plan, const gb_timetable *table, gb_style style,
                       gb_arena *arena, gb_sheet *sheet) GB_MUST_USE;

/* A batch log, and what it leaves of a plan. */
gb_status gb_log_sheet(const gb_plan *plan, const gb_log *log, gb_style style,
                       gb_arena *arena, gb_sheet *sheet) GB_MUST_USE;
gb_status gb_remaining_sheet(const gb_remaining *left, gb_style style, gb_arena *arena,
                             gb_sheet *sheet) GB_MUST_USE;

/* A buy list, and what it was made from. */
typedef struct gb_priced {
    const gb_buy_list *list;
    const gb_price_book *book;
    const gb_plan *plans;
    size_t plan_count;
} gb_priced;
gb_status gb_price_sheet(const gb_priced *priced, gb_style style, gb_arena *arena,
                         gb_sheet *sheet) GB_MUST_USE;

/* A run to lay out, from a job or by itself. */
typedef struct gb_steps_question {
    const gb_steps *steps;
    const gb_plan *plan;   /* NULL: by itself */
    const gb_piece *piece; /* that is the run; NULL without a plan */
    gb_length read_to;     /* see gb_lay_steps */
    gb_choices choices;
} gb_steps_question;

/* What a tape of that system is read to: 1/16 in or 1 mm. */
gb_length gb_tape(gb_system system);

gb_status gb_steps_sheet(const gb_steps_question *questions, size_t count, gb_style style,
                         gb_arena *arena, gb_sheet *sheet) GB_MUST_USE;

/* One plan against another, with what each costs where a price book is given. Only what
   changes has a row. */
typedef struct gb_change {
    const gb_plan *before, *after;
    const gb_priced *priced_before, *priced_after; /* NULL: without prices */
} gb_change;
gb_status gb_change_sheet(const gb_change *change, gb_style style, gb_arena *arena,
                          gb_sheet *sheet) GB_MUST_USE;

/* A block for each family; `mixes` are sorted by id. */
gb_status gb_mix_list_sheet(const gb_mix *const *mixes, size_t count, gb_style style,
                            gb_arena *arena, gb_sheet *sheet) GB_MUST_USE;

/* What was asked of one mix: `bags` of it, gauged with that bucket (NaN: the usual one of
   the sheet's units); a recipe for the
   usual bag of the sheet's units (gb_usual_pack), or for a blend's own. */
typedef struct gb_mix_question {
    const gb_mix *mix;
    gb_recipe recipe;
    double bags;
    gb_volume wanted; /* NaN when bags were asked for */
    gb_share waste;   /* that `wanted` already holds */
    gb_volume bucket;
} gb_mix_question;
gb_status gb_mix_sheet(const gb_mix_question *question, gb_style style, gb_arena *arena,
                       gb_sheet *sheet) GB_MUST_USE;

/* A concrete that is proportioned, with the batch or the bag that is gauged. */
typedef struct gb_concrete_question {
    gb_mix_question asked;
    gb_proportions design;
    bool tried;
    gb_trial_result trial;
    gb_parts_of_concrete
        parts;             /* as they are mixed: designed, or as the trial left them */
    gb_volume mixer;       /* what it takes; NaN: by the bag */
    gb_ways_question ways; /* with `way_list`, of which this concrete is the first */
    const gb_way *way_list;
    size_t way_count; /* 0: not asked for */
} gb_concrete_question;

/* Proportions the concrete of a mix. GB_IMPOSSIBLE as gb_concrete_parts. */
gb_status gb_ask_concrete(const gb_mix *mix, gb_system system,
                          gb_concrete_question *question) GB_MUST_USE;
gb_status gb_concrete_sheet(const gb_concrete_question *question, gb_style style,
                            gb_arena *arena, gb_sheet *sheet) GB_MUST_USE;

/* The name of a row's code, as NEED. */
const char *gb_row_name(gb_row_code code);

/* Writes a sheet as text of at most 80 columns. */
void gb_write_text(const gb_sheet *sheet, gb_text *to);

/* Writes a sheet as JSON: every figure in SI under a name that ends in its unit, as
   gaugebox.schema.json describes. GB_NO_MEMORY. */
gb_status gb_write_json(const gb_sheet *sheet, gb_text *to) GB_MUST_USE;

/* A job that was found without faults. */
typedef struct gb_good_job {
    const char *file;
    size_t pieces, layers, mixes;
} gb_good_job;

/* Writes what checking found as JSON of the same schema; sorts the faults, which came in
   `language`. */
gb_status gb_write_check_json(const gb_good_job *jobs, size_t job_count, gb_diags *diags,
                              const char *language, gb_text *to) GB_MUST_USE;

/* Writes the tabular rows of a takeoff or a buy list as CSV (RFC 4180), a column for
   every figure; a text that a spreadsheet would take for a formula gets a ' before it.
   GB_IMPOSSIBLE for a sheet without such rows. */
gb_status gb_write_csv(const gb_sheet *sheet, gb_text *to) GB_MUST_USE;

#endif
