/* The words of one row, for writers that put them into cells. */
#ifndef WRITE_TEXT_H
#define WRITE_TEXT_H

#include "gaugebox/sheet.h"

/* In the units and the language of the sheet that the row belongs to. */
void gb_expand_row(const gb_row *row, const gb_sheet *sheet, gb_text *to);

#endif
