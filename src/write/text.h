/* The words of one row, for writers that put them into cells. */
#ifndef WRITE_TEXT_H
#define WRITE_TEXT_H

#include "gaugebox/sheet.h"

void gb_expand_row(const gb_row *row, gb_system system, gb_text *to);

#endif
