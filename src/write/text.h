/* The words of one row, for writers that put them into cells. */
#ifndef WRITE_TEXT_H
#define WRITE_TEXT_H

#include "gaugebox/sheet.h"

/* In the units and the language of the sheet that the row belongs to. */
void gb_expand_row(const gb_row *row, const gb_sheet *sheet, gb_text *to);

/* The English label of a row: "" for one that goes on under the label above it, NULL for
   one at the margin. */
const char *gb_row_label(gb_row_code code);

/* One row by itself, under that label; its cells are a table of one row. */
void gb_write_row(const gb_row *row, const char *label, const gb_sheet *sheet,
                  gb_text *to);

#endif
