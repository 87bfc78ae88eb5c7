/* What the fuzz targets share. */
#ifndef FUZZ_COMMON_H
#define FUZZ_COMMON_H

#include "gaugebox/gaugebox.h"

/* A target runs in the build folder and names files from there, so that no path of a
   machine is in its memory, from where the fuzzer would copy it into inputs. */
#define FUZZ_MIXES    "share/gaugebox/mixes"
#define FUZZ_EXAMPLES "examples"

/* A folder of the user's own: the shipped materials, and own.cfg, a link to the file of
   fuzz_file. */
#define FUZZ_OWN_MIXES "own"

/* Puts the bytes into the process's one file in memory, in place of what it held, and
   returns its path. */
const char *fuzz_file(const void *bytes, size_t count);

/* Memory, faults and a mix table over one folder, for one input. */
typedef struct fuzz_run {
    gb_arena arena;
    gb_diags diags;
    const char *folder;
    gb_mix_table *table;
    gb_places places;
} fuzz_run;
void fuzz_begin(fuzz_run *run, const char *folder);
/* Writes the faults too: whatever was typed must come out clean. */
void fuzz_end(fuzz_run *run);

/* Ends the process when it is not so, and the fuzzer counts a finding. */
void fuzz_expect(bool good, const char *what);
/* Finite and not below zero. */
void fuzz_expect_amount(double value, const char *what);

/* UTF-8 without a sign that steers a terminal or turns the writing, but for those of
   `allowed`, and no line of more than `widest` columns. */
void fuzz_text(const gb_text *text, const char *allowed, size_t widest);
/* Writes the sheet as text and JSON; looks at its figures and at what came. */
void fuzz_sheet(fuzz_run *run, const gb_sheet *sheet);
/* Explains a sheet that was built to be explained. */
void fuzz_explanation(fuzz_run *run, const gb_sheet *sheet);
void fuzz_csv(fuzz_run *run, const gb_sheet *sheet);
/* Plans a job that was read without a fault, looks at the plan and writes its sheets. */
void fuzz_job(fuzz_run *run, const gb_job *job);

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count);

#endif
