#include "common.h"

#include "words/columns.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mman.h>
#include <unistd.h>

void fuzz_expect(bool good, const char *what) {
    if (good)
        return;
    (void)fprintf(stderr, "broken: %s\n", what);
    abort();
}

const char *fuzz_file(const uint8_t *bytes, size_t count) {
    static int fd = -1;
    static char path[64];
    if (fd < 0)
        fd = memfd_create("input", 0);
    fuzz_expect(fd >= 0 && ftruncate(fd, 0) == 0 &&
                    pwrite(fd, bytes, count, 0) == (ssize_t)count,
                "the input file");
    (void)snprintf(path, sizeof path, "/proc/self/fd/%d", fd);
    return path;
}

void fuzz_begin(fuzz_run *run) {
    memset(run, 0, sizeof *run);
    gb_arena_init(&run->arena, gb_malloc_supply());
    gb_diags_init(&run->diags, &run->arena);
    run->folders[0] = MIXES_FOLDER;
    run->table = gb_mix_table_open(run->folders, 1, &run->arena, &run->diags);
    fuzz_expect(run->table != NULL, "the mix table");
}

/* Faults are printed too: whatever was typed must come out clean. */
void fuzz_end(fuzz_run *run) {
    gb_text faults;
    gb_text_init(&faults, &run->arena);
    gb_diags_print(&run->diags, &faults);
    fuzz_text(&faults);
    gb_arena_release(&run->arena);
}

/* No sign that steers a terminal but the line's end. */
void fuzz_text(const gb_text *text) {
    fuzz_expect(!text->failed, "memory");
    for (const char *c = gb_text_get(text); *c != '\0'; c++)
        fuzz_expect((unsigned char)*c >= ' ' || *c == '\n', "a control sign in a text");
}

static void expect_columns(const gb_text *text) {
    const char *line = gb_text_get(text);
    while (*line != '\0') {
        size_t length = strcspn(line, "\n");
        fuzz_expect(gb_columns(line, length) <= 80, "a line over 80 columns");
        line += length + (line[length] == '\n');
    }
}

static void write_all(fuzz_run *run, const gb_sheet *sheet) {
    gb_text text;
    gb_text json;
    gb_text_init(&text, &run->arena);
    gb_text_init(&json, &run->arena);
    gb_write_text(sheet, &text);
    fuzz_text(&text);
    expect_columns(&text);
    fuzz_expect(gb_write_json(sheet, &json) == GB_OK, "json");
}

static void expect_covered(const gb_plan *plan) {
    for (size_t i = 0; i < plan->mix_count; i++) {
        const gb_batching *b = &plan->mixes[i].batching;
        double pieces = 0;
        double needed = 0;
        for (size_t k = 0; k < b->batch_count; k++)
            for (size_t s = 0; s < b->batches[k].stretch_count; s++)
                pieces += b->batches[k].stretches[s].to - b->batches[k].stretches[s].from;
        for (size_t k = 0; k < plan->mixes[i].need.take_count; k++)
            needed += plan->mixes[i].need.takes[k]->units;
        fuzz_expect(b->batch_count == 0 || fabs(pieces - needed) < 1e-6 * needed,
                    "batches that cover another number of pieces");
    }
}

void fuzz_sheets(fuzz_run *run, const gb_job *job) {
    gb_plan plan;
    gb_sheet sheet;
    gb_text csv;
    const gb_mix *bad = NULL;
    gb_status status = gb_make_plan(job, &run->arena, &plan, &bad);
    if (!gb_report_plan(status, job, bad, &run->diags)) {
        fuzz_expect(gb_diags_any(&run->diags), "no plan and no fault");
        return;
    }
    expect_covered(&plan);
    fuzz_expect(gb_batch_sheet(&plan, (gb_style){job->units, "en", false}, &run->arena,
                               &sheet) == GB_OK,
                "batch sheet");
    write_all(run, &sheet);
    fuzz_expect(gb_takeoff_sheet(&plan, (gb_style){GB_METRIC, "es", false}, &run->arena,
                                 &sheet) == GB_OK,
                "takeoff sheet");
    write_all(run, &sheet);
    gb_text_init(&csv, &run->arena);
    fuzz_expect(gb_write_csv(&sheet, &csv) == GB_OK, "csv");
}

/* libconfig 1.5 drops a text that it had read when the next sign breaks the form. */
const char *__lsan_default_suppressions(void);
const char *__lsan_default_suppressions(void) {
    return "leak:libconfig.so\n";
}
