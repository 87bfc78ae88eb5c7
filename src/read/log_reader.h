/* What the parts of the reader of batch logs share: `log.c` reads the first row and the
   file, `log_cells.c` one cell, `log_rows.c` holds the rules across the cells of a row
   and across rows. */
#ifndef READ_LOG_READER_H
#define READ_LOG_READER_H

#include "read/csv.h"
#include "read/diag.h"
#include "read/log.h"

enum { GB_MOST_LOG_SETS = 32, GB_MOST_LOG_DEPTHS = 32 };

/* How much of a layer the log has set so far. */
typedef struct gb_layer_sum {
    const gb_piece *piece;
    const char *mix;
    double set;
} gb_layer_sum;

typedef struct gb_log_reader {
    gb_csv csv;
    const gb_log_text *from;
    const gb_job *job;
    gb_arena *arena;
    gb_diags *diags;
    gb_log_head *head;
    double zero[GB_MOST_LOG_COLUMNS], factor[GB_MOST_LOG_COLUMNS];
    bool head_read;
    size_t before; /* faults of other files */
    gb_log_row row;
    bool bad, dated, timed;          /* of the row in hand */
    unsigned filled;                 /* a bit for each role whose cell is not empty */
    int64_t date, time, start, stop; /* start and stop: -1 where they cannot be read */
    char last_date[12];              /* text of the date before, and what it is */
    int64_t last_day;
    gb_log_set sets[GB_MOST_LOG_SETS];
    double depths[GB_MOST_LOG_DEPTHS];
    const gb_piece **by_name; /* the job's pieces */
    const gb_mix *sole_mix;   /* the one that was asked for last, and its only piece */
    const gb_piece *sole_piece;
    gb_layer_sum *sums; /* of each layer, piece after piece ... */
    size_t *first_sum;  /* ... from here on, by the piece's place in the job */
    size_t *numbers;    /* the last batch of each of the job's mixes */
    gb_moment last_at;
    int last_line;
    gb_log_row *rows;
    size_t count, room;
} gb_log_reader;

/* Its quantities were given with units of their own. */
bool gb_is_new_row(const gb_log_reader *r);

/* Where a fault of the row in hand is: a row that is being added is in no file yet. */
const char *gb_file_of_row(const gb_log_reader *r);
int gb_line_of_row(const gb_log_reader *r);

/* Tells a fault of the row in hand; it is not kept. */
#define GB_REFUSE(r, ...)                                                                \
    do {                                                                                 \
        (r)->bad = true;                                                                 \
        gb_report((r)->diags, gb_file_of_row(r), gb_line_of_row(r), __VA_ARGS__);        \
    } while (0)

/* Empties the row in hand. */
void gb_begin_log_row(gb_log_reader *r);

/* For gb_csv: a cell of the row in hand, and the end of that row, which is kept when it
   is good. `user` is the gb_log_reader. */
void gb_read_log_cell(void *user, size_t field, const char *text, size_t length);
void gb_end_log_row(void *user, size_t cells);

#endif
