/* One figure in the words of a system of units. Rounding here is for people and never
   goes back into a sum. */
#ifndef WRITE_FIGURES_H
#define WRITE_FIGURES_H

#include "gaugebox/sheet.h"

/* Any figure but GB_SHOW_ROWS. */
void gb_show_figure(const gb_figure *figure, gb_system system, gb_text *to);

#endif
