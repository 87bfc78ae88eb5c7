/* How a figure of a sheet came about: a chain of formulas with their numbers, down to the
   line of a file or to the source of a fact. */
#ifndef GAUGEBOX_EXPLAIN_H
#define GAUGEBOX_EXPLAIN_H

#include "gaugebox/place.h"
#include "gaugebox/sheet.h"

/* The kinds of quantity, and two more. */
enum { GB_PLAIN = GB_KINDS, GB_MINOR_UNITS /* of the book's currency */ };

/* One value and its reason. A formula is written over the names of its inputs with
   + - * / ( ) and
     larger(a, b), smaller(a, b)
     up(x, step), down(x, step), near(x, step)   to a multiple of step
     sqrt(x)
     sum(), mean(), most(), least()              of all inputs, in their order
     root_of_squares()                           of all inputs: sqrt(a*a + b*b + ...)
     standard_error()                            of all inputs: s / sqrt(n)
   and holds in SI units as in any coherent ones. */
typedef struct gb_why {
    const char *name;
    const char *of;      /* a piece, a material or a mix; or NULL */
    int unit;            /* a gb_kind, GB_PLAIN or GB_MINOR_UNITS */
    double value;        /* SI */
    const char *formula; /* NULL: the value was stated, or is a fact */
    const struct gb_why *const *inputs;
    size_t input_count;
    const gb_place *place; /* of a stated value, or of what is usual; else NULL */
    const char *source;    /* of a formula or a fact: a standard, "common practice"; or
                              NULL */
    size_t number;         /* its place in the list of all reasons */
} gb_why;

/* One figure of the sheet. */
typedef struct gb_explained {
    const gb_row *row; /* that holds it */
    const gb_row *top; /* the row of the sheet that holds that one, or is it */
    const gb_figure *figure;
    const gb_why *why;
    size_t block;
} gb_explained;

typedef struct gb_explanation {
    const gb_sheet *sheet;
    const gb_explained *figures; /* in the order of the sheet */
    size_t figure_count;
    const gb_why *const *whys; /* inputs before what is made from them, none twice */
    size_t why_count;
    int decimals; /* of the currency */
    /* The first figure without a reason, or whose reason comes to another value: a fault
       of the program; or NULL. */
    const gb_explained *unexplained;
} gb_explanation;

/* Explains every figure of a sheet that was built with `explained`, but those that only
   count rows. `places` are those of the run that read the inputs. GB_NO_MEMORY. */
gb_status gb_explain(const gb_sheet *sheet, gb_places *places, gb_arena *arena,
                     gb_explanation *explanation) GB_MUST_USE;

/* True when `wanted` names that figure: the label over it on the sheet, its row, its own
   name, or both as NEED.gross; in small letters or large. */
bool gb_is_figure(const gb_explanation *explanation, const gb_explained *figure,
                  const char *wanted);

/* Writes those figures that `wanted` names (NULL: all) with the whole chain of each, in
   the sheet's units. Returns how many there were. */
size_t gb_write_explanation(const gb_explanation *explanation, const char *wanted,
                            gb_text *to);

/* The same as JSON of gaugebox.schema.json, in SI. GB_NO_MEMORY. */
gb_status gb_write_explanation_json(const gb_explanation *explanation, const char *wanted,
                                    gb_text *to) GB_MUST_USE;

#endif
