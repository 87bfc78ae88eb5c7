/* The rules across the keys of the weather, and its hours from a file. */
#ifndef READ_WEATHER_RULES_H
#define READ_WEATHER_RULES_H

#include "read/reader.h"

/* Reads the hours that the job names, beside the job's own file, and reports every
   fault. */
void gb_check_weather(gb_reader *reader, gb_job *job);

#endif
