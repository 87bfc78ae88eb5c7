#include "cli/job_command.h"
#include "words/words.h"

static int run(int argc, char **argv) {
    return gb_run_job_command(argc, argv,
                              N_("The batch sheet of JOB: for each mix what one batch "
                                 "takes, its water, the order, the check, each batch to "
                                 "tick, stops and hold points."),
                              gb_batch_sheet, false);
}

const gb_command gb_sheet_command = {"sheet", N_("the batch sheet, to tape to the mixer"),
                                     run};
