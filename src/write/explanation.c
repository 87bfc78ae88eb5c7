#include "gaugebox/explain.h"

#include "words/columns.h"
#include "words/words.h"
#include "write/figures.h"
#include "write/model.h"
#include "write/text.h"

#include <math.h>
#include <string.h>

/* Explanations for people: each figure, how it was rounded for the sheet, and the tree of
   reasons below it. A reason that stands above already is not told again. */

enum { STEP = 2, DEEPEST_INDENT = 36, HANG = 4, MOST_SHOWN_INPUTS = 8 };

typedef struct writer {
    const gb_explanation *e;
    const gb_explained **told; /* by the reason's number: the figure it was told at */
    const gb_explained *now;
    const char *last_source;
    gb_text *to;
} writer;

/* ---- which figure ------------------------------------------------------------------ */

static int small(int c) {
    return c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c;
}

static bool same_name(const char *a, const char *b, size_t b_length) {
    size_t i = 0;
    while (a[i] != '\0' && i < b_length && small(a[i]) == small(b[i]))
        i++;
    return a[i] == '\0' && i == b_length;
}

/* The label that stands over a row on the sheet. */
static const char *label_over(const gb_explanation *e, const gb_explained *figure) {
    const gb_row *first = e->sheet->blocks[figure->block].rows;
    for (const gb_row *row = figure->top; row >= first; row--) {
        const char *label = gb_row_label(row->code);
        if (label != NULL && label[0] != '\0')
            return label;
    }
    return "";
}

bool gb_is_figure(const gb_explanation *e, const gb_explained *figure,
                  const char *wanted) {
    size_t length = strlen(wanted);
    size_t dot = strcspn(wanted, ".");
    const char *name = figure->figure->name;
    const char *label = label_over(e, figure);
    bool row = same_name(gb_row_name(figure->row->code), wanted, dot) ||
               same_name(gb_row_name(figure->top->code), wanted, dot) ||
               same_name(label, wanted, dot) || same_name(gb_tr(label), wanted, dot);
    if (dot == length)
        return row || same_name(name, wanted, length);
    return row && same_name(name, wanted + dot + 1, length - dot - 1);
}

/* ---- numbers ----------------------------------------------------------------------- */

/* Units in which every formula holds as it stands. */
static const struct {
    const char *us;
    const char *metric;
} UNITS[] = {
    [GB_LENGTH] = {"ft", "m"},
    [GB_AREA] = {"ft2", "m2"},
    [GB_VOLUME] = {"ft3", "m3"},
    [GB_MASS] = {"lb", "kg"},
    [GB_DENSITY] = {"lb/ft3", "kg/m3"},
    [GB_TEMP] = {"F", "C"},
    [GB_DURATION] = {"h", "h"},
    [GB_SHARE] = {NULL, NULL},
    [GB_SLOPE] = {NULL, NULL},
    [GB_SPEED] = {"mph", "km/h"},
    [GB_TREAD_PACE] = {"treads/h", "treads/h"},
    [GB_AREA_PACE] = {"ft2/h", "m2/h"},
    [GB_VOLUME_PACE] = {"ft3/h", "m3/h"},
    [GB_JOINT_RATE] = {"ft/ft2", "m/m2"},
    [GB_MORTAR_RATE] = {"ft3/ft2", "m3/m2"},
    [GB_EVAPORATION] = {"lb/ft2/h", "kg/m2/h"},
    [GB_PRESSURE] = {"psi", "MPa"},
    [GB_PLAIN] = {NULL, NULL},
    [GB_MINOR_UNITS] = {NULL, NULL},
};
_Static_assert(sizeof UNITS / sizeof UNITS[0] == GB_MINOR_UNITS + 1,
               "units for every kind");

static const char *unit_of(const gb_why *why, gb_system system) {
    return system == GB_US ? UNITS[why->unit].us : UNITS[why->unit].metric;
}

/* Six figures, whatever the size. */
static void add_number(gb_text *to, double value) {
    int decimals = 6;
    double size = fabs(value);
    for (; size >= 1.0 && decimals > 0; decimals--)
        size /= 10.0;
    for (; size > 0 && size < 0.1 && decimals < 9; decimals++)
        size *= 10.0;
    size_t from = to->length;
    gb_text_add_fixed(to, value, decimals);
    if (to->failed || strchr(to->data + from, '.') == NULL)
        return;
    while (to->data[to->length - 1] == '0')
        to->data[--to->length] = '\0';
    if (to->data[to->length - 1] == '.')
        to->data[--to->length] = '\0';
}

static void add_value(const writer *w, const gb_why *why, gb_text *to) {
    const char *unit = unit_of(why, w->e->sheet->system);
    if (why->unit == GB_MINOR_UNITS)
        gb_print_money(to, (gb_money){llround(why->value)}, w->e->decimals);
    else if (unit == NULL)
        add_number(to, why->value);
    else
        add_number(to, gb_to_unit(gb_find_unit((gb_kind)why->unit, unit), why->value));
}

static void add_value_and_unit(const writer *w, const gb_why *why, gb_text *to) {
    const char *unit = unit_of(why, w->e->sheet->system);
    add_value(w, why, to);
    gb_text_add(to, unit == NULL ? "" : " ");
    gb_text_add(to, unit == NULL ? "" : unit);
}

/* ---- formulas ---------------------------------------------------------------------- */

static const gb_why *input_named(const gb_why *why, const char *name, size_t length) {
    for (size_t i = 0; i < why->input_count; i++)
        if (strlen(why->inputs[i]->name) == length &&
            strncmp(why->inputs[i]->name, name, length) == 0)
            return why->inputs[i];
    return NULL;
}

/* All inputs, for a function of all of them. */
static void add_all(const writer *w, const gb_why *why, gb_text *to) {
    for (size_t i = 0; i < why->input_count && i < MOST_SHOWN_INPUTS; i++) {
        gb_text_add(to, i == 0 ? "" : ", ");
        add_value(w, why->inputs[i], to);
    }
    if (why->input_count > MOST_SHOWN_INPUTS)
        gb_text_add(to, ", ...");
}

static bool in_name(char c) {
    return (c >= 'a' && c <= 'z') || c == '_';
}

/* The formula with numbers for the names of its inputs. */
static void add_numbers(const writer *w, const gb_why *why, gb_text *to) {
    for (const char *at = why->formula; *at != '\0';) {
        size_t length = 0;
        while (in_name(at[length]))
            length++;
        const gb_why *input = length == 0 ? NULL : input_named(why, at, length);
        if (length == 0)
            length = 1;
        if (input != NULL && at[length] != '(')
            add_value(w, input, to);
        else
            gb_text_add_bytes(to, at, length);
        at += length;
        if (at[0] == '(' && at[1] == ')') {
            gb_text_add(to, "(");
            add_all(w, why, to);
            gb_text_add(to, ")");
            at += 2;
        }
    }
}

/* ---- lines ------------------------------------------------------------------------- */

/* A value, then where it comes from: on the same line if they fit, else each on its own
   below. */
static void add_value_and_origin(gb_text *to, size_t indent, const gb_text *value,
                                 const gb_text *place, const gb_text *source) {
    const gb_text *origins[] = {place, source};
    gb_text all;
    gb_text_init(&all, to->arena);
    gb_text_add(&all, gb_text_get(value));
    for (size_t i = 0; i < 2; i++) {
        gb_text_add(&all, origins[i]->length > 0 ? "; " : "");
        gb_text_add(&all, gb_text_get(origins[i]));
    }
    if (indent + gb_columns(gb_text_get(&all), all.length) <= GB_COLUMNS) {
        gb_add_wrapped(to, gb_text_get(&all), indent, HANG);
    } else {
        gb_add_wrapped(to, gb_text_get(value), indent, HANG);
        for (size_t i = 0; i < 2; i++)
            if (origins[i]->length > 0)
                gb_add_wrapped(to, gb_text_get(origins[i]), indent + HANG, 0);
    }
    to->failed =
        to->failed || all.failed || value->failed || place->failed || source->failed;
}

/* An option of the command: --least-bed 1/2in. */
static void add_option(const gb_place *p, gb_text *to) {
    gb_text_add(to, "--");
    for (const char *c = p->key; *c != '\0'; c++)
        gb_text_add_bytes(to, *c == '_' ? "-" : c, 1);
    gb_text text;
    gb_text_init(&text, to->arena);
    gb_text_add_clean(&text, p->text);
    const char *given = strchr(p->text, ' ') != NULL ? " \"%s\"" : " %s";
    if (p->text[0] != '\0')
        gb_add_format(to, p->line > 0 ? given : gb_tr(" not stated, usual: \"%s\""),
                      gb_text_get(&text));
    to->failed = to->failed || text.failed;
}

/* Where a value was read: job.cfg:31: depth = "1-1/4 in". */
static void add_place(const gb_place *p, gb_text *to) {
    if (p->file[0] == '\0') {
        add_option(p, to);
        return;
    }
    gb_text_add_clean(to, p->file);
    if (p->line > 0) {
        gb_text_add(to, ":");
        gb_text_add_int(to, p->line);
    }
    gb_text_add(to, ": ");
    gb_text_add(to, p->key);
    if (p->text[0] == '\0')
        return;
    gb_text text;
    gb_text_init(&text, to->arena);
    gb_text_add_clean(&text, p->text);
    gb_add_format(to, p->line > 0 ? " = \"%s\"" : gb_tr(" not stated, usual: \"%s\""),
                  gb_text_get(&text));
    to->failed = to->failed || text.failed;
}

static void add_name(const gb_why *why, gb_text *to) {
    gb_text_add(to, why->name);
    if (why->of == NULL)
        return;
    gb_text_add(to, " (");
    gb_text_add_clean(to, why->of);
    gb_text_add(to, ")");
}

static bool is_one_name(const char *formula) {
    return formula[strspn(formula, "abcdefghijklmnopqrstuvwxyz_")] == '\0';
}

static bool is_of_all(const char *formula) {
    size_t n = strlen(formula);
    return n > 2 && strcmp(formula + n - 2, "()") == 0;
}

static void add_reason(const writer *w, const gb_why *why, gb_text *line) {
    add_name(why, line);
    if (why->formula != NULL && !is_of_all(why->formula)) {
        gb_text_add(line, " = ");
        gb_text_add(line, why->formula);
    }
    if (why->formula != NULL && !is_one_name(why->formula)) {
        gb_text_add(line, " = ");
        add_numbers(w, why, line);
    }
    gb_text_add(line, " = ");
    add_value_and_unit(w, why, line);
}

/* What stands in one file entry has one source, which is told once. */
static bool is_told(writer *w, const gb_why *why) {
    bool told = why->place != NULL && why->source == w->last_source;
    w->last_source = why->source;
    return told;
}

static void add_figure_name(const gb_explained *e, gb_text *to) {
    gb_text_add(to, gb_row_name(e->top->code));
    if (e->top != e->row) {
        gb_text_add(to, " ");
        gb_text_add(to, gb_row_name(e->row->code));
    }
    gb_text_add(to, ".");
    gb_text_add(to, e->figure->name);
}

/* A reason that was told already: its value, and where to look. */
static void add_known(const writer *w, const gb_why *why, gb_text *line) {
    add_name(why, line);
    gb_text_add(line, " = ");
    add_value_and_unit(w, why, line);
    if (w->told[why->number] == w->now) {
        gb_text_add(line, gb_tr(", above"));
        return;
    }
    gb_text name;
    gb_text_init(&name, line->arena);
    add_figure_name(w->told[why->number], &name);
    gb_add_format(line, gb_tr(", see %s"), gb_text_get(&name));
    line->failed = line->failed || name.failed;
}

static void write_new(writer *w, const gb_why *why, size_t indent) {
    gb_text value;
    gb_text place;
    gb_text source;
    gb_text_init(&value, w->to->arena);
    gb_text_init(&place, w->to->arena);
    gb_text_init(&source, w->to->arena);
    add_reason(w, why, &value);
    if (why->place != NULL)
        add_place(why->place, &place);
    if (why->source != NULL && !is_told(w, why))
        gb_text_add_clean(&source, gb_tr(why->source));
    add_value_and_origin(w->to, indent, &value, &place, &source);
}

static void write_known(writer *w, const gb_why *why, size_t indent) {
    gb_text line;
    gb_text_init(&line, w->to->arena);
    add_known(w, why, &line);
    gb_add_wrapped(w->to, gb_text_get(&line), indent, HANG);
    w->to->failed = w->to->failed || line.failed;
}

/* Reasons nest as deep as the chain is long; the layers of a job make it so. */
static void write_reason(writer *w, const gb_why *why, size_t depth) {
    size_t indent = STEP * (depth + 2);
    if (indent > DEEPEST_INDENT)
        indent = DEEPEST_INDENT;
    if (w->told[why->number] != NULL) {
        write_known(w, why, indent);
        return;
    }
    write_new(w, why, indent);
    w->told[why->number] = w->now;
    for (size_t i = 0; i < why->input_count; i++)
        write_reason(w, why->inputs[i], depth + 1);
}

/* ---- figures ----------------------------------------------------------------------- */

/* How each kind of figure is rounded for people. */
static const struct {
    const char *us;
    const char *metric;
} ROUNDED[] = {
    [GB_SHOW_NUMBER] = {N_("0.01 (0.0001 below that)"), N_("0.01 (0.0001 below that)")},
    [GB_SHOW_FRACTION] = {"1/32", "1/32"},
    [GB_SHOW_QUARTERS] = {"1/4", "1/4"},
    [GB_SHOW_LENGTH] = {N_("1/16 in (1/64 in below 1/8 in)"),
                        N_("1 mm (0.1 mm below 100 mm)")},
    [GB_SHOW_LENGTH_FINE] = {"0.001 in", "0.1 mm"},
    [GB_SHOW_INCHES] = {"1/16 in", "1/16 in"},
    [GB_SHOW_MM] = {"1 mm", "1 mm"},
    [GB_SHOW_SLOPE] = {N_("1/16 in/ft, or 0.01 %"), "0.01 %"},
    [GB_SHOW_RUN] = {"0.1 ft", "0.1 m"},
    [GB_SHOW_AREA] = {"0.01 ft2", "0.01 m2"},
    [GB_SHOW_AREA_HALF] = {"1/2 ft2", "0.01 m2"},
    [GB_SHOW_VOLUME] =
        {N_("0.01 ft3 (0.001 ft3 below 1 ft3)"),
         N_("0.001 m3 (1 L below 1 m3, 0.1 L below 100 L, 0.01 L below 10 L)")},
    [GB_SHOW_VOLUME_FINE] =
        {"0.001 ft3",
         N_("0.001 m3 (1 L below 1 m3, 0.1 L below 100 L, 0.01 L below 10 L)")},
    [GB_SHOW_JOINT_RATE] = {"0.01 ft/ft2", "0.01 m/m2"},
    [GB_SHOW_MORTAR_RATE] = {"0.1 ft3/100 ft2", "0.1 L/m2"},
    [GB_SHOW_EVAPORATION] = {"0.01 lb/ft2/h", "0.01 kg/m2/h"},
    [GB_SHOW_BULK] = {"1/4 yd3", "0.05 m3"},
    [GB_SHOW_WATER] = {"1/2 qt", "0.1 L"},
    [GB_SHOW_WATER_CELL] = {"1/2 qt", "0.1 L"},
    [GB_SHOW_WATER_FINE] = {"1 fl oz", "0.01 L"},
    [GB_SHOW_WATER_FINE_CELL] = {"1 fl oz", "0.01 L"},
    [GB_SHOW_POT_WATER] = {"1 fl oz", "0.01 L"},
    [GB_SHOW_DAB] = {N_("0.01 lb (0.1 oz below 1 lb)"), N_("0.01 kg (1 g below 1 kg)")},
    [GB_SHOW_LIQUID] = {N_("0.01 qt (0.1 fl oz below 1 qt)"),
                        N_("0.01 L (1 mL below 1 L)")},
    [GB_SHOW_MASS] = {N_("1 lb (0.1 lb below 20 lb)"), N_("1 kg (0.1 kg below 100 kg)")},
    [GB_SHOW_DENSITY] = {N_("1 lb/ft3 (0.1 lb/ft3 below 100 lb/ft3)"),
                         N_("1 kg/m3 (0.1 kg/m3 below 100 kg/m3)")},
    [GB_SHOW_PRESSURE] = {"10 psi", "0.1 MPa"},
    [GB_SHOW_TEMP_WHOLE] = {"1 F", "1 C"},
    [GB_SHOW_DEGREES] = {"1 F", "1 C"},
    [GB_SHOW_TEMP] = {"0.1 F", "0.1 C"},
    [GB_SHOW_SPEED] = {"1 mph", "1 km/h"},
    [GB_SHOW_SHARE] = {"0.1 %", "0.1 %"},
    [GB_SHOW_DURATION] = {"1 min", "1 min"},
    [GB_SHOWS - 1] = {NULL, NULL},
};
_Static_assert(sizeof ROUNDED / sizeof ROUNDED[0] == GB_SHOWS, "a rule for each kind");

static void add_rounding(const writer *w, const gb_figure *f, gb_text *line) {
    static const char *const WAYS[] = {[GB_NEAREST] = NF_(", to the nearest %s"),
                                       [GB_DOWN] = NF_(", down to %s"),
                                       [GB_UP] = NF_(", up to %s")};
    bool us = w->e->sheet->system == GB_US;
    const char *step = us ? ROUNDED[f->show].us : ROUNDED[f->show].metric;
    if (step == NULL)
        return;
    /* What is ordered loose is rounded up whatever the figure says. */
    gb_rounding way = f->show == GB_SHOW_BULK ? GB_UP : f->rounding;
    gb_add_format(line, gb_tr(WAYS[way]), gb_tr(step));
}

static void write_figure(writer *w, const gb_explained *e) {
    gb_text line;
    gb_text_init(&line, w->to->arena);
    w->now = e;
    add_figure_name(e, &line);
    gb_text_add(&line, ": ");
    gb_show_figure(e->figure, w->e->sheet->system, &line);
    add_rounding(w, e->figure, &line);
    gb_add_wrapped(w->to, gb_text_get(&line), STEP, HANG);
    w->to->failed = w->to->failed || line.failed;
    write_reason(w, e->why, 0);
}

/* A block is known by its first row: the title of a mix, or of a list. */
static void write_title(writer *w, size_t block) {
    gb_sheet head = *w->e->sheet;
    gb_block first = head.blocks[block];
    first.count = 1;
    head.blocks = &first;
    head.count = 1;
    gb_write_text(&head, w->to);
    const gb_row *number = gb_number_row(w->e->sheet);
    if (number != NULL)
        gb_write_row(number, gb_row_label(number->code), w->e->sheet, w->to);
}

size_t gb_write_explanation(const gb_explanation *e, const char *wanted, gb_text *to) {
    writer w = {
        .e = e,
        .to = to,
        .told = gb_arena_take(to->arena, e->why_count + 1, sizeof(const gb_explained *))};
    size_t block = e->sheet->count;
    size_t count = 0;
    to->failed = to->failed || w.told == NULL;
    for (size_t i = 0; i < e->figure_count && !to->failed; i++) {
        const gb_explained *figure = &e->figures[i];
        if (wanted != NULL && !gb_is_figure(e, figure, wanted))
            continue;
        if (figure->block != block) {
            gb_text_add(to, count > 0 ? "\n" : "");
            write_title(&w, figure->block);
            block = figure->block;
            memset((void *)w.told, 0, e->why_count * sizeof(const gb_explained *));
        }
        if (w.now == NULL || w.now->top != figure->top)
            gb_write_row(figure->top, label_over(e, figure), e->sheet, to);
        write_figure(&w, figure);
        count++;
    }
    return count;
}
