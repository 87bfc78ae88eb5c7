#include "common.h"

#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

/* A folder of the user's own with one family, and a job that uses a mix of it. */
static const char JOB[] =
    "format = 1; site = { name = \"x\"; }; crew = { mixer = { usable = \"3 ft3\"; };"
    " pace = \"20 ft2/h\"; }; pieces = ( { name = \"p\"; kind = \"landing\"; size = \"4 "
    "ft x"
    " 3 ft\"; layers = ( { kind = \"bed\"; mix = \"own/a\"; depth = \"1 in\"; } ); } );";

static const char *own_folder(void) {
    static char folder[64];
    if (folder[0] == '\0') {
        (void)snprintf(folder, sizeof folder, "/dev/shm/mixes-%d", (int)getpid());
        fuzz_expect(mkdir(folder, 0700) == 0, "the folder");
    }
    return folder;
}

static void write_family(const char *folder, const uint8_t *bytes, size_t count) {
    char path[96];
    (void)snprintf(path, sizeof path, "%s/own.cfg", folder);
    FILE *to = fopen(path, "wb");
    fuzz_expect(to != NULL && fwrite(bytes, 1, count, to) == count && fclose(to) == 0,
                "the family's file");
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    fuzz_run run;
    gb_job job;
    fuzz_begin(&run);
    run.folders[0] = own_folder();
    run.folders[1] = MIXES_FOLDER;
    write_family(run.folders[0], bytes, count);
    run.table = gb_mix_table_open(run.folders, 2, &run.arena, &run.diags);
    bool good = gb_read_job(fuzz_file((const uint8_t *)JOB, sizeof JOB - 1), run.table,
                            &run.arena, &run.diags, &job);
    fuzz_expect(good != gb_diags_any(&run.diags), "a result with faults, or neither");
    if (good)
        fuzz_sheets(&run, &job);
    fuzz_end(&run);
    return 0;
}
