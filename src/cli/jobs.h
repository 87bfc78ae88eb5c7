/* Job files named one by one or by the folder that they lie in. */
#ifndef CLI_JOBS_H
#define CLI_JOBS_H

#include "cli/command.h"

typedef struct gb_job_list {
    const char **files;
    size_t count, room;
} gb_job_list;

/* Adds a file as it is named; of a folder, all its files that end in .cfg but prices.cfg,
   and those of the folders in it, sorted by name. False with the fault in the run. */
bool gb_list_jobs(gb_run *run, const char *path, gb_job_list *list);

#endif
