/* The weather that a sheet was made for, and what it asks for once the work is done. */
#ifndef WRITE_WEATHER_ROWS_H
#define WRITE_WEATHER_ROWS_H

#include "write/model.h"

void gb_add_today(gb_builder *b, const gb_job *job);
void gb_add_after(gb_builder *b, const gb_job *job, const gb_mix_plan *p);

#endif
