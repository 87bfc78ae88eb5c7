/* What the columns of a file of hours hold, by their names. */
#ifndef READ_HOURS_COLUMNS_H
#define READ_HOURS_COLUMNS_H

#include "gaugebox/read.h"

typedef enum gb_column_role {
    GB_COLUMN_UNREAD, /* its name begins with x_ */
    GB_COLUMN_TIME,
    GB_COLUMN_AIR,
    GB_COLUMN_DEW_POINT,
    GB_COLUMN_HUMIDITY,
    GB_COLUMN_WIND,         /* of a station, 10 m above the ground */
    GB_COLUMN_WIND_AT_WORK, /* 0.5 m above the work */
    GB_COLUMN_RAIN,
    GB_COLUMN_ROLES
} gb_column_role;

/* value in SI = (number - zero) * factor */
typedef struct gb_column {
    gb_column_role role;
    const char *name; /* as the file has it */
    double zero, factor;
    double least, most; /* that a reading of it may be, in the file's own unit */
    const char *unit;   /* as a message names it */
    const char *other;  /* the unit that readings beyond `most` are likely in; or NULL */
} gb_column;

enum { GB_MOST_COLUMNS = 64 };

typedef struct gb_columns {
    gb_column list[GB_MOST_COLUMNS];
    size_t count;
    bool too_many; /* there are more, and that was told */
} gb_columns;

/* Adds the column of that name, or reports why it is none. */
void gb_add_column(gb_columns *columns, const char *name, const char *file, int line,
                   gb_arena *arena, gb_diags *diags);

/* Reports what a whole head lacks. */
void gb_check_columns(const gb_columns *columns, const char *file, int line,
                      gb_diags *diags);

bool gb_has_column(const gb_columns *columns, gb_column_role role);

#endif
