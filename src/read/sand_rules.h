/* The rules across the keys of a job's sand and of what it is gauged with. */
#ifndef READ_SAND_RULES_H
#define READ_SAND_RULES_H

#include "read/reader.h"

void gb_check_sand(gb_reader *reader, const gb_job *job);
void gb_check_gauge(gb_reader *reader, const gb_job *job);
void gb_check_pail(gb_reader *reader, const gb_job *job);

#endif
