#include "common.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    fuzz_run run;
    gb_job job;
    fuzz_begin(&run, FUZZ_MIXES);
    bool good =
        gb_read_job(fuzz_file(bytes, count), run.table, &run.arena, &run.diags, &job);
    fuzz_expect(good != gb_diags_any(&run.diags), "a result with faults, or neither");
    if (good)
        fuzz_job(&run, &job);
    fuzz_end(&run);
    return 0;
}
