/* Reads each file with libcsv and does nothing with its cells. */
#include <csv.h>
#include <stdio.h>
#include <stdlib.h>

static void cell(void *text, size_t length, void *user) {
    (void)text;
    *(size_t *)user += length;
}

static void row(int c, void *user) {
    (void)c;
    (void)user;
}

int main(int argc, char **argv) {
    size_t bytes = 0;
    for (int i = 1; i < argc; i++) {
        FILE *file = fopen(argv[i], "rb");
        static char text[16 * 1024 * 1024];
        struct csv_parser parser;
        if (file == NULL || csv_init(&parser, CSV_STRICT | CSV_APPEND_NULL) != 0)
            return 1;
        size_t n = fread(text, 1, sizeof text, file);
        if (csv_parse(&parser, text, n, cell, row, &bytes) != n ||
            csv_fini(&parser, cell, row, &bytes) != 0)
            return 1;
        csv_free(&parser);
        fclose(file);
    }
    return bytes == 0;
}
