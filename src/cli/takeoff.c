#include "cli/job_command.h"
#include "words/words.h"

static int run(int argc, char **argv) {
    return gb_run_job_command(
        argc, argv,
        N_("Takes off JOB: areas and volumes by piece and layer, needs "
           "by mix, and the materials they come to."),
        gb_takeoff_sheet, true);
}

const gb_command gb_takeoff_command = {"takeoff",
                                       N_("areas, volumes and materials of a job"), run};
