/* The rules across the keys of a job's crew, and what they have to do with its mixes. */
#ifndef READ_CREW_RULES_H
#define READ_CREW_RULES_H

#include "read/reader.h"

void gb_check_crew(gb_reader *reader, const gb_job *job);

#endif
