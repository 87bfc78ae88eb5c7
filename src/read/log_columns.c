#include "read/log.h"
#include "read/nearest.h"

#include <string.h>

/* SI = (number - zero) * factor; exact, as in the table of units. */
static const struct {
    const char *name;
    gb_log_role role;
    double zero, factor;
} COLUMNS[] = {
    {"date", GB_LOG_DATE, 0, 1},
    {"time", GB_LOG_TIME, 0, 1},
    {"mix", GB_LOG_MIX, 0, 1},
    {"batch", GB_LOG_BATCH, 0, 1},
    {"bags", GB_LOG_BAGS, 0, 1},
    {"water_qt", GB_LOG_WATER, 0, 57.75 * 0.0254 * 0.0254 * 0.0254},
    {"water_l", GB_LOG_WATER, 0, 0.001},
    {"start", GB_LOG_START, 0, 1},
    {"stop", GB_LOG_STOP, 0, 1},
    {"set", GB_LOG_SET, 0, 1},
    {"depth_in", GB_LOG_DEPTH, 0, 0.0254},
    {"depth_mm", GB_LOG_DEPTH, 0, 0.001},
    {"thrown_pct", GB_LOG_THROWN, 0, 0.01},
    {"lot", GB_LOG_LOT, 0, 1},
    {"air_f", GB_LOG_AIR, 32, 5.0 / 9.0},
    {"air_c", GB_LOG_AIR, 0, 1},
    {"remark", GB_LOG_REMARK, 0, 1},
};
enum { COUNT = sizeof COLUMNS / sizeof COLUMNS[0], LONGEST = 40 };

static char plain_sign(char c) {
    if (c >= 'A' && c <= 'Z')
        return (char)(c - 'A' + 'a');
    if (c == ' ')
        return '_';
    return c;
}

/* Letters of either size, blanks for _. */
static void simplify(const char *name, char plain[LONGEST + 1]) {
    size_t n = 0;
    for (name += strspn(name, " "); *name != '\0' && n < LONGEST; name++)
        plain[n++] = plain_sign(*name);
    while (n > 0 && plain[n - 1] == '_')
        n--;
    plain[n] = '\0';
}

gb_log_role gb_log_column(const char *name, double *zero, double *factor,
                          const char **known) {
    char plain[LONGEST + 1];
    simplify(name, plain);
    if (strncmp(plain, "x_", 2) == 0)
        return GB_LOG_UNREAD;
    for (size_t i = 0; i < COUNT; i++) {
        if (strcmp(plain, COLUMNS[i].name) != 0)
            continue;
        *zero = COLUMNS[i].zero;
        *factor = COLUMNS[i].factor;
        *known = COLUMNS[i].name;
        return COLUMNS[i].role;
    }
    return GB_LOG_ROLES;
}

const char *gb_nearest_log_column(const char *name) {
    char plain[LONGEST + 1];
    simplify(name, plain);
    gb_nearest nearest;
    gb_nearest_init(&nearest, plain);
    for (size_t i = 0; i < COUNT; i++)
        gb_nearest_offer(&nearest, COLUMNS[i].name);
    return nearest.best;
}
