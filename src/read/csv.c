#include "read/csv.h"

#include "read/diag.h"
#include "read/scan.h"
#include "read/source.h"
#include "words/words.h"

#include <csv.h>
#include <string.h>

enum { MOST_DIGITS = 15 };

/* The line in which `end` lies, from 1. */
static size_t lines_to(const char *text, const char *end) {
    size_t lines = 1;
    for (const char *c = memchr(text, '\n', (size_t)(end - text)); c != NULL;
         c = memchr(c + 1, '\n', (size_t)(end - c - 1)))
        lines++;
    return lines;
}

size_t gb_csv_lines(const char *text, size_t length) {
    return lines_to(text, text + length);
}

/* A carriage return that no line feed follows; NULL when there is none. */
static const char *lone_return(const char *text) {
    for (const char *c = strchr(text, '\r'); c != NULL; c = strchr(c + 1, '\r'))
        if (c[1] != '\n')
            return c;
    return NULL;
}

bool gb_csv_load(const char *file, size_t most_lines, const char *too_many,
                 gb_arena *arena, gb_diags *diags, char **text, size_t *length) {
    if (!gb_load_text(file, arena, diags, text, length))
        return false;
    (*text)[*length] = '\0';
    return gb_csv_check(file, most_lines, too_many, diags, *text, *length);
}

bool gb_csv_check(const char *file, size_t most_lines, const char *too_many,
                  gb_diags *diags, const char *text, size_t length) {
    if (!gb_check_text(text, length, file, diags))
        return false;
    const char *lone = lone_return(text);
    if (lone != NULL) {
        gb_report(diags, file, (int)lines_to(text, lone),
                  "a line ends in a sign of old machines (carriage return alone); save "
                  "the file again as plain CSV text");
        return false;
    }
    if (gb_csv_lines(text, length) > most_lines) {
        gb_report(diags, file, 0, "%s", gb_tr(too_many));
        return false;
    }
    return true;
}

bool gb_csv_number(const char *text, double *number) {
    bool minus = *text == '-';
    text += *text == '-' || *text == '+';
    double value = 0;
    double scale = 1;
    int digits = 0;
    bool behind = false;
    for (; (*text >= '0' && *text <= '9') || (*text == '.' && !behind); text++) {
        if (*text == '.') {
            behind = true;
            continue;
        }
        value = value * 10 + (*text - '0');
        scale *= behind ? 10 : 1;
        digits++;
    }
    *number = (minus ? -value : value) / scale;
    return *text == '\0' && digits > 0 && digits <= MOST_DIGITS;
}

/* libcsv ends each field by NUL; an embedded one was refused before. A quote that is
   closed rows later swallows them. */
static void take_cell(void *text, size_t length, void *user) {
    gb_csv *csv = user;
    if (csv->stopped)
        return;
    if (length > 0 && memchr(text, '\n', length) != NULL) {
        gb_report(csv->diags, csv->file, csv->line,
                  "a cell holds the end of a line; is a quote opened here that is closed "
                  "too late?");
        csv->stopped = true;
        csv->field = 0;
        return;
    }
    csv->cell(csv->user, csv->field++, length == 0 ? "" : text, length);
}

/* libcsv ends a row at each CR and LF, and once more at the end of the text. */
static void end_row(int c, void *user) {
    gb_csv *csv = user;
    if (csv->field > 0 && !csv->stopped)
        csv->row(csv->user, csv->field);
    csv->field = 0;
    csv->line += c == '\n';
}

bool gb_csv_parse(gb_csv *csv, const char *text, size_t length) {
    struct csv_parser parser;
    csv->line = 1;
    if (csv_init(&parser,
                 CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL | CSV_REPALL_NL) != 0) {
        csv->diags->no_memory = true;
        return false;
    }
    size_t mark = strncmp(text, "\xEF\xBB\xBF", 3) == 0 ? 3 : 0;
    bool good = csv_parse(&parser, text + mark, length - mark, take_cell, end_row, csv) ==
                    length - mark &&
                csv_fini(&parser, take_cell, end_row, csv) == 0;
    if (!good && csv_error(&parser) == CSV_EPARSE)
        gb_report(csv->diags, csv->file, csv->line,
                  "a quote is opened and not closed, or stands inside of a cell; cells "
                  "need quotes only around commas");
    else if (!good)
        csv->diags->no_memory = true;
    csv_free(&parser);
    return good;
}
