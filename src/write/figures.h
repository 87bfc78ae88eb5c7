/* One figure in the words of a system of units. Rounding here is for people and never
   goes back into a sum. */
#ifndef WRITE_FIGURES_H
#define WRITE_FIGURES_H

#include "gaugebox/sheet.h"

/* Any figure but GB_SHOW_ROWS. */
void gb_show_figure(const gb_figure *figure, gb_system system, gb_text *to);

/* The count that goes with a word: what is shown, rounded up, so that 5/8 is one bag. */
unsigned long gb_figure_count(const gb_figure *figure);

/* What programs call a figure: its name and the SI unit of its value, as net_m3; false
   for a figure that only guides the eye. */
bool gb_figure_key(const gb_figure *figure, gb_text *to) GB_MUST_USE;

#endif
