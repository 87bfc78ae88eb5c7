/* What the fuzz targets share. */
#ifndef FUZZ_COMMON_H
#define FUZZ_COMMON_H

#include "gaugebox/gaugebox.h"

/* Puts the bytes into a file in memory and returns its path; aborts when it cannot. */
const char *fuzz_file(const uint8_t *bytes, size_t count);

/* Memory, faults and the shipped mix table of one run. */
typedef struct fuzz_run {
    gb_arena arena;
    gb_diags diags;
    const char *folders[2];
    gb_mix_table *table;
} fuzz_run;
void fuzz_begin(fuzz_run *run);
void fuzz_end(fuzz_run *run);

/* Ends the process, so that the fuzzer counts a finding. */
void fuzz_expect(bool good, const char *what);

/* Builds and writes all sheets of a job, and looks at what every text must hold to. */
void fuzz_sheets(fuzz_run *run, const gb_job *job);
void fuzz_text(const gb_text *text);

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count);

#endif
