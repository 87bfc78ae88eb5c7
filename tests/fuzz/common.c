#include "common.h"

#include <limits.h>
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

void fuzz_expect_amount(double value, const char *what) {
    fuzz_expect(isfinite(value) && value >= 0, what);
}

/* The number is one that the link own.cfg knows. */
enum { FILE_NUMBER = 100 };

static int open_file(void) {
    int fd = memfd_create("input", 0);
    fuzz_expect(fd >= 0 && dup2(fd, FILE_NUMBER) == FILE_NUMBER && close(fd) == 0,
                "the file in memory");
    return FILE_NUMBER;
}

const char *fuzz_file(const void *bytes, size_t count) {
    static int fd = -1;
    static char path[64];
    if (fd < 0)
        fd = open_file();
    fuzz_expect(ftruncate(fd, 0) == 0 && pwrite(fd, bytes, count, 0) == (ssize_t)count,
                "the bytes of the file in memory");
    (void)snprintf(path, sizeof path, "/proc/self/fd/%d", fd);
    return path;
}

void fuzz_begin(fuzz_run *run, const char *folder) {
    memset(run, 0, sizeof *run);
    gb_arena_init(&run->arena, gb_malloc_supply());
    gb_diags_init(&run->diags, &run->arena);
    run->folder = folder;
    run->table = gb_mix_table_open(&run->folder, 1, &run->arena, &run->diags);
    fuzz_expect(run->table != NULL, "the mix table");
    gb_places_init(&run->places, &run->arena);
    gb_mix_table_keep_places(run->table, &run->places);
}

void fuzz_end(fuzz_run *run) {
    gb_text text;
    gb_text json;
    gb_text_init(&text, &run->arena);
    gb_text_init(&json, &run->arena);
    gb_diags_print(&run->diags, &text);
    fuzz_text(&text, "\n", SIZE_MAX);
    fuzz_expect(gb_write_check_json(NULL, 0, &run->diags, "en", &json) == GB_OK,
                "faults that JSON cannot hold");
    fuzz_text(&json, "\n", SIZE_MAX);
    gb_arena_release(&run->arena);
}

/* libconfig 1.5 drops a text that it had read when the next sign breaks the form. */
const char *__lsan_default_suppressions(void);
const char *__lsan_default_suppressions(void) {
    return "leak:libconfig.so\n";
}
