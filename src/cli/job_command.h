/* Commands that read one job and print one sheet of its plan. */
#ifndef CLI_JOB_COMMAND_H
#define CLI_JOB_COMMAND_H

#include "cli/command.h"

typedef gb_status (*gb_sheet_builder)(const gb_plan *plan, gb_style style,
                                      gb_arena *arena, gb_sheet *sheet);

/* Parses `NAME JOB` with the common options, plans, builds, writes. `tables`: the sheet
   has rows for csv. */
int gb_run_job_command(int argc, char **argv, const char *doc, gb_sheet_builder build,
                       bool tables);

#endif
