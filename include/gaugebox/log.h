/* The batch log: what was mixed and set, a row for each batch, as people fill it. */
#ifndef GAUGEBOX_LOG_H
#define GAUGEBOX_LOG_H

#include "gaugebox/job.h"

/* So many pieces that a batch set, whole ones and parts, of one piece of the job. */
typedef struct gb_log_set {
    const gb_piece *piece;
    double count;
} gb_log_set;

/* One batch. What is not written is NaN, NULL or none. */
typedef struct gb_log_row {
    gb_moment at;          /* first water, as the clock of the site shows it */
    const gb_mix *mix;     /* one of the job's */
    size_t batch;          /* from 1 up, of this mix */
    double bags;           /* of its recipe */
    gb_volume water;       /* added */
    gb_moment start, stop; /* of placing; both or none */
    bool placed;           /* they are written */
    const gb_log_set *sets;
    size_t set_count;
    const double *depths_m; /* measured on what was set */
    size_t depth_count;
    gb_share thrown; /* of the batch; 0 when nothing is written */
    const char *lot, *remark;
    gb_temp air;
    int line;
} gb_log_row;

typedef struct gb_log {
    const gb_log_row *rows; /* by time */
    size_t count;
    const char *file;
    uint64_t digest; /* of its text */
} gb_log;

/* What a column holds, by its name in the first row. */
typedef enum gb_log_role {
    GB_LOG_UNREAD, /* its name begins with x_ */
    GB_LOG_DATE,
    GB_LOG_TIME,
    GB_LOG_MIX,
    GB_LOG_BATCH,
    GB_LOG_BAGS,
    GB_LOG_WATER,
    GB_LOG_START,
    GB_LOG_STOP,
    GB_LOG_SET,
    GB_LOG_DEPTH,
    GB_LOG_THROWN,
    GB_LOG_LOT,
    GB_LOG_AIR,
    GB_LOG_REMARK,
    GB_LOG_ROLES
} gb_log_role;

enum { GB_MOST_LOG_COLUMNS = 64 };

/* The columns of a log, in its order, by the name as it is known: "water_qt". */
typedef struct gb_log_head {
    gb_log_role roles[GB_MOST_LOG_COLUMNS];
    const char *names[GB_MOST_LOG_COLUMNS];
    size_t count;
    bool crlf; /* its lines end so */
} gb_log_head;

#endif
