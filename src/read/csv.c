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
    static const double TENS[MOST_DIGITS + 1] = {1,    1e1,  1e2,  1e3, 1e4,  1e5,
                                                 1e6,  1e7,  1e8,  1e9, 1e10, 1e11,
                                                 1e12, 1e13, 1e14, 1e15};
    bool minus = *text == '-';
    text += *text == '-' || *text == '+';
    const char *from = text;
    uint64_t value = 0; /* of more digits than are read it may run over */
    while (*text >= '0' && *text <= '9')
        value = value * 10 + (uint64_t)(*text++ - '0');
    size_t digits = (size_t)(text - from);
    size_t behind = 0;
    if (*text == '.') {
        from = ++text;
        while (*text >= '0' && *text <= '9')
            value = value * 10 + (uint64_t)(*text++ - '0');
        behind = (size_t)(text - from);
        digits += behind;
    }
    if (*text != '\0' || digits == 0 || digits > MOST_DIGITS)
        return false;
    double whole = (double)value;
    *number = (minus ? -whole : whole) / TENS[behind];
    return true;
}

/* ---- lines with a quote, by libcsv --------------------------------------------------
 */

static void take_cell(void *text, size_t length, void *user) {
    gb_csv *csv = user;
    /* libcsv ends each field by NUL; an embedded one was refused before. */
    csv->cell(csv->user, csv->field++, length == 0 ? "" : text, length);
}

/* libcsv ends a row at each CR and LF. */
static void end_row(int c, void *user) {
    gb_csv *csv = user;
    (void)c;
    if (csv->field > 0)
        csv->row(csv->user, csv->field);
    csv->field = 0;
    csv->ended = true;
}

/* One line, with its end if it has one. A cell that goes on behind it is none that a
   job's files hold, but a quote that swallows rows. */
static bool parse_quoted(gb_csv *csv, const char *line, size_t length) {
    struct csv_parser parser;
    if (csv_init(&parser,
                 CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL | CSV_REPALL_NL) != 0) {
        csv->diags->no_memory = true;
        return false;
    }
    csv->ended = false;
    csv->lasting = false;
    bool read = csv_parse(&parser, line, length, take_cell, end_row, csv) == length;
    bool open = read && !csv->ended && line[length - 1] == '\n';
    bool good = read && !open && csv_fini(&parser, take_cell, end_row, csv) == 0;
    bool memory = csv_error(&parser) == CSV_ENOMEM;
    csv_free(&parser);
    if (open && strchr(line + length, '"') != NULL)
        gb_report(csv->diags, csv->file, csv->line,
                  "a cell holds the end of a line; is a quote opened here that is closed "
                  "too late?");
    else if (!good && memory)
        csv->diags->no_memory = true;
    else if (!good)
        gb_report(csv->diags, csv->file, csv->line,
                  "a quote is opened and not closed, or stands inside of a cell; cells "
                  "need quotes only around commas");
    return good;
}

/* ---- lines without one --------------------------------------------------------------
 */

static bool is_blank(char c) {
    return c == ' ' || c == '\t';
}

/* One cell, blanks around it left out as libcsv does. */
static void cut_cell(gb_csv *csv, char *from, char *to) {
    while (from < to && is_blank(*from))
        from++;
    while (to > from && is_blank(to[-1]))
        to--;
    *to = '\0';
    csv->cell(csv->user, csv->field++, from, (size_t)(to - from));
}

/* Most lines of a long file hold no quote, and are cut at their commas here, several
   times as fast; an empty one is no row. */
static void cut_line(gb_csv *csv, char *line, char *end) {
    csv->lasting = true;
    if (end > line && end[-1] == '\r')
        end--;
    char *at = line;
    while (at < end && is_blank(*at))
        at++;
    if (at == end)
        return;
    for (at = line; !csv->stopped;) {
        char *comma = at;
        while (comma < end && *comma != ',')
            comma++;
        bool last = comma == end;
        cut_cell(csv, at, comma);
        if (last)
            break;
        at = comma + 1;
    }
    if (!csv->stopped)
        csv->row(csv->user, csv->field);
    csv->field = 0;
}

bool gb_csv_parse(gb_csv *csv, char *text, size_t length) {
    char *end = text + length;
    csv->line = 1;
    text += strncmp(text, "\xEF\xBB\xBF", 3) == 0 ? 3 : 0;
    const char *quote = strchr(text, '"');
    while (text < end && !csv->stopped) {
        char *stop = memchr(text, '\n', (size_t)(end - text));
        char *next = stop == NULL ? end : stop + 1;
        if (quote == NULL || quote >= next)
            cut_line(csv, text, stop == NULL ? end : stop);
        else if (!parse_quoted(csv, text, (size_t)(next - text)))
            return false;
        else
            quote = strchr(next, '"');
        text = next;
        csv->line++;
    }
    return true;
}
