/* Reading the text of a batch log, from a file or as it would be with a new row. */
#ifndef READ_LOG_H
#define READ_LOG_H

#include "gaugebox/log.h"
#include "gaugebox/read.h"
#include "words/mark.h"

/* A text to read; ended by NUL, and cut up by it. Rows point into it, so that it lives as
   long as they do. */
typedef struct gb_log_text {
    const char *file;
    char *text;
    size_t length;
    int added_line; /* the row in that line is not in the file yet; 0: all are */
} gb_log_text;

/* False with every fault reported. `head` is filled as far as the first row tells it. */
bool gb_parse_log(const gb_log_text *text, const gb_job *job, gb_arena *arena,
                  gb_diags *diags, gb_log_head *head, gb_log *log);

/* The lines that a log may have, its head counted, and what is told when it has more. */
enum { GB_MOST_LOG_ROWS = 100002 };
#define GB_TOO_MANY_LOG_ROWS                                                             \
    N_("holds over 100000 rows, more batches than any job has; begin a new log")

/* A number with as many decimals as it needs, at most so many. */
void gb_log_add_number(gb_text *to, double number, int most_decimals);

/* The role of a column of that name, its letters as the file has them; GB_LOG_ROLES when
   it is none. In *factor and *zero: SI = (number - zero) * factor. *known is the name as
   the table has it. */
gb_log_role gb_log_column(const char *name, double *zero, double *factor,
                          const char **known);

/* The known column name nearest to one that is not known; NULL when none is near. */
const char *gb_nearest_log_column(const char *name);

#endif
