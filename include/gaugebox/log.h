/* The batch log: what was mixed and set, a row for each batch, as people fill it. */
#ifndef GAUGEBOX_LOG_H
#define GAUGEBOX_LOG_H

#include "gaugebox/job.h"

/* So many pieces that a batch set, whole ones and parts, of one piece of the job. */
typedef struct gb_log_set {
    const gb_piece *piece;
    double count;
} gb_log_set;

/* One batch. What is not written is NaN, NULL or none. A long log holds very many: wide
   members first, so that none of it is padding. */
typedef struct gb_log_row {
    gb_moment at;      /* first water, as the clock of the site shows it */
    const gb_mix *mix; /* one of the job's */
    double bags;       /* of its recipe */
    gb_volume water;   /* added */
    gb_share thrown;   /* of the batch; 0 when nothing is written */
    gb_temp air;
    const char *lot, *remark;
    const gb_log_set *sets;
    const double *depths_m;  /* measured on what was set */
    int32_t start_s, stop_s; /* of placing, from first water on; both or none: -1 */
    uint32_t batch;          /* from 1 up, of this mix */
    int32_t line;
    uint16_t set_count, depth_count;
} gb_log_row;

typedef struct gb_log {
    const gb_log_row *rows; /* by time */
    size_t count;
    const char *file;
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
