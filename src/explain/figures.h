/* Which reason belongs to which figure of which row. */
#ifndef EXPLAIN_FIGURES_H
#define EXPLAIN_FIGURES_H

#include "explain/why.h"

/* The reason of one figure of a row; NULL when there is none or memory ran out. `outer`
   is the row that holds it, or the row itself. */
const gb_why *gb_why_figure(gb_explainer *x, const gb_row *row, const gb_row *outer,
                            const gb_figure *figure);

/* True for a figure that only counts rows, as the number before a step does. */
bool gb_only_counts(const gb_row *row, const gb_figure *figure);

#endif
