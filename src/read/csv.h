/* Rows and cells of a CSV file (RFC 4180), by libcsv where there are quotes, with the
   physical line of each row and the faults that libcsv passes over. */
#ifndef READ_CSV_H
#define READ_CSV_H

#include "gaugebox/read.h"

/* One reading. `cell` gets the cells of a row, from 0, each ended by NUL; `row` is called
   behind the last one of a row that has any. */
typedef struct gb_csv {
    const char *file;
    gb_diags *diags;
    void (*cell)(void *user, size_t field, const char *text, size_t length);
    void (*row)(void *user, size_t cells);
    void *user;
    int line;     /* of the row in hand, from 1 */
    bool stopped; /* what follows tells nothing: no cell and no row is handed out any more
                   */
    bool lasting; /* the cell in hand stays where it is as long as the text does */
    size_t field;
    bool ended; /* the row in hand is */
} gb_csv;

/* Loads a whole file: UTF-8 without a NUL, no carriage return alone, at most so many
   lines
   (`too_many` is told else). The text is ended by NUL. False with the fault reported. */
bool gb_csv_load(const char *file, size_t most_lines, const char *too_many,
                 gb_arena *arena, gb_diags *diags, char **text, size_t *length);

/* The same of a text that is in memory already. */
bool gb_csv_check(const char *file, size_t most_lines, const char *too_many,
                  gb_diags *diags, const char *text, size_t length);

/* Hands out all cells and rows; cuts the text up, which is ended by NUL. A cell that
   holds the end of a line is refused. False with the fault reported, or without memory.
 */
bool gb_csv_parse(gb_csv *csv, char *text, size_t length);

/* The lines of a text, its last one counted whether it is ended or not. */
size_t gb_csv_lines(const char *text, size_t length);

/* -12.5; no exponent, no comma, nothing behind it; at most 15 digits. */
bool gb_csv_number(const char *text, double *number);

#endif
