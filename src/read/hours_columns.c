#include "read/hours_columns.h"

#include "read/diag.h"
#include "read/nearest.h"
#include "words/mark.h"

#include <string.h>

enum { LONGEST_NAME = 64 };

/* Names of columns as others write them too, in small letters with _ between the words;
   the first of each role is the one that messages advise. */
static const struct {
    const char *base;
    gb_column_role role;
} BASES[] = {
    {"time", GB_COLUMN_TIME},
    {"timestamp", GB_COLUMN_TIME},
    {"datetime", GB_COLUMN_TIME},
    {"date_time", GB_COLUMN_TIME},
    {"valid_time", GB_COLUMN_TIME},
    {"air", GB_COLUMN_AIR},
    {"air_temperature", GB_COLUMN_AIR},
    {"air_temp", GB_COLUMN_AIR},
    {"temperature", GB_COLUMN_AIR},
    {"temp", GB_COLUMN_AIR},
    {"dry_bulb", GB_COLUMN_AIR},
    {"dew_point", GB_COLUMN_DEW_POINT},
    {"dewpoint", GB_COLUMN_DEW_POINT},
    {"humidity", GB_COLUMN_HUMIDITY},
    {"relative_humidity", GB_COLUMN_HUMIDITY},
    {"rh", GB_COLUMN_HUMIDITY},
    {"wind", GB_COLUMN_WIND},
    {"wind_speed", GB_COLUMN_WIND},
    {"windspeed", GB_COLUMN_WIND},
    {"wind_at_work", GB_COLUMN_WIND_AT_WORK},
    {"rain", GB_COLUMN_RAIN},
    {"precipitation", GB_COLUMN_RAIN},
    {"precip", GB_COLUMN_RAIN},
};

/* Units, and what a reading may be in each. Air is held to what a site meets: hotter
   degrees Celsius are likely Fahrenheit, and faster miles an hour kilometres. */
static const struct {
    const char *word;
    unsigned roles; /* bit 1 << role */
    const char *name;
    double zero, factor, least, most;
    const char *other;
} UNITS[] = {
#define TEMPERATURES (1U << GB_COLUMN_AIR | 1U << GB_COLUMN_DEW_POINT)
#define WINDS        (1U << GB_COLUMN_WIND | 1U << GB_COLUMN_WIND_AT_WORK)
#define CELSIUS      0, 1, -60, 55, "F"
#define FAHRENHEIT   32, 5.0 / 9.0, -76, 131, NULL
    {"c", TEMPERATURES, "C", CELSIUS},
    {"degc", TEMPERATURES, "C", CELSIUS},
    {"celsius", TEMPERATURES, "C", CELSIUS},
    {"f", TEMPERATURES, "F", FAHRENHEIT},
    {"degf", TEMPERATURES, "F", FAHRENHEIT},
    {"fahrenheit", TEMPERATURES, "F", FAHRENHEIT},
    {"pct", 1U << GB_COLUMN_HUMIDITY, "%", 0, 0.01, 0, 100, NULL},
    {"percent", 1U << GB_COLUMN_HUMIDITY, "%", 0, 0.01, 0, 100, NULL},
    {"mps", WINDS, "m/s", 0, 1, 0, 45, "km/h"},
    {"ms", WINDS, "m/s", 0, 1, 0, 45, "km/h"},
    {"m_s", WINDS, "m/s", 0, 1, 0, 45, "km/h"},
    {"kmh", WINDS, "km/h", 0, 1 / 3.6, 0, 162, NULL},
    {"kph", WINDS, "km/h", 0, 1 / 3.6, 0, 162, NULL},
    {"km_h", WINDS, "km/h", 0, 1 / 3.6, 0, 162, NULL},
    {"mph", WINDS, "mph", 0, 0.44704, 0, 100, "km/h"},
    {"kt", WINDS, "kt", 0, 1852.0 / 3600.0, 0, 87, "km/h"},
    {"kn", WINDS, "kt", 0, 1852.0 / 3600.0, 0, 87, "km/h"},
    {"knots", WINDS, "kt", 0, 1852.0 / 3600.0, 0, 87, "km/h"},
    {"mm", 1U << GB_COLUMN_RAIN, "mm", 0, 0.001, 0, 300, NULL},
    {"in", 1U << GB_COLUMN_RAIN, "in", 0, 0.0254, 0, 12, "mm"},
    {"inch", 1U << GB_COLUMN_RAIN, "in", 0, 0.0254, 0, 12, "mm"},
};

/* What a message advises for a role. */
static const char *const ADVICE[] = {
    [GB_COLUMN_UNREAD] = "x_notes",
    [GB_COLUMN_TIME] = "time",
    [GB_COLUMN_AIR] = "air_f, air_c",
    [GB_COLUMN_DEW_POINT] = "dew_point_f, dew_point_c",
    [GB_COLUMN_HUMIDITY] = "humidity_pct",
    [GB_COLUMN_WIND] = "wind_mph, wind_kmh, wind_mps, wind_kt",
    [GB_COLUMN_WIND_AT_WORK] = "wind_at_work_mph, wind_at_work_kmh, wind_at_work_mps",
    [GB_COLUMN_RAIN] = "rain_in, rain_mm"};
_Static_assert(sizeof ADVICE / sizeof ADVICE[0] == GB_COLUMN_ROLES, "one for each");

static bool is_ascii(char c) {
    return (unsigned char)c < 0x80;
}

/* One sign as a plain name has it: a small letter, a figure, or _ for what else. */
static char plain_sign(char c) {
    if (c >= 'A' && c <= 'Z')
        return (char)(c - 'A' + 'a');
    bool word = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (word)
        return c;
    return '_';
}

/* "Wind speed (m/s)" as wind_speed_m_s: small letters, one _ for all between the words,
   pct for the sign; what is no ASCII falls out, as the sign of degrees. */
static void simplify(const char *name, char plain[LONGEST_NAME + 4]) {
    size_t n = 0;
    for (; *name != '\0' && n < LONGEST_NAME; name++) {
        char c = plain_sign(*name);
        bool between = c == '_';
        if (between && is_ascii(*name) && n > 0 && plain[n - 1] != '_')
            plain[n++] = '_';
        if (*name == '%') {
            memcpy(plain + n, "pct", 3);
            n += 3;
        } else if (!between) {
            plain[n++] = c;
        }
    }
    while (n > 0 && plain[n - 1] == '_')
        n--;
    plain[n] = '\0';
}

/* The longest base that the name is, or begins with before a _; NULL when there is none.
 */
static const char *find_base(const char *plain, gb_column_role *role) {
    const char *best = NULL;
    for (size_t i = 0; i < sizeof BASES / sizeof BASES[0]; i++) {
        size_t length = strlen(BASES[i].base);
        if (strncmp(plain, BASES[i].base, length) != 0 ||
            (plain[length] != '\0' && plain[length] != '_'))
            continue;
        if (best == NULL || length > strlen(best)) {
            best = BASES[i].base;
            *role = BASES[i].role;
        }
    }
    return best;
}

static bool take_unit(gb_column *column, const char *word) {
    for (size_t i = 0; i < sizeof UNITS / sizeof UNITS[0]; i++) {
        if (strcmp(UNITS[i].word, word) != 0 || (UNITS[i].roles >> column->role & 1) == 0)
            continue;
        column->zero = UNITS[i].zero;
        column->factor = UNITS[i].factor;
        column->least = UNITS[i].least;
        column->most = UNITS[i].most;
        column->unit = UNITS[i].name;
        column->other = UNITS[i].other;
        return true;
    }
    return false;
}

static void report_unknown(const char *plain, const char *name, const char *file,
                           int line, gb_diags *diags) {
    /* Its unit, or what stands for one, is no part of the word. */
    char word[LONGEST_NAME + 4];
    const char *unit = strrchr(plain, '_');
    size_t length = unit == NULL ? strlen(plain) : (size_t)(unit - plain);
    memcpy(word, plain, length);
    word[length] = '\0';
    gb_nearest nearest;
    gb_nearest_init(&nearest, word);
    for (size_t i = 0; i < sizeof BASES / sizeof BASES[0]; i++)
        gb_nearest_offer(&nearest, BASES[i].base);
    if (strchr(name, ';') != NULL)
        gb_report(
            diags, file, line,
            "the columns stand apart by semicolons; put commas between them, and points "
            "into numbers");
    else if (*plain == '\0')
        gb_report(diags, file, line,
                  "a column has no name; is there a comma too many? name it, or x_ and "
                  "anything to leave it unread");
    else if (nearest.best != NULL)
        gb_report(
            diags, file, line,
            "the column '%s' is not known; did you mean '%s'? begin its name with x_ "
            "to leave it unread",
            name, nearest.best);
    else
        gb_report(
            diags, file, line,
            "the column '%s' is not known; known are time, air, dew_point, humidity, "
            "wind, wind_at_work and rain, each with its unit as in air_f; begin its "
            "name with x_ to leave it unread",
            name);
}

bool gb_has_column(const gb_columns *columns, gb_column_role role) {
    for (size_t i = 0; i < columns->count; i++)
        if (columns->list[i].role == role)
            return true;
    return false;
}

static bool is_known(gb_column *column, const char *plain, const char *file, int line,
                     gb_diags *diags) {
    const char *base = find_base(plain, &column->role);
    if (base == NULL) {
        report_unknown(plain, column->name, file, line, diags);
        return false;
    }
    const char *unit = plain + strlen(base);
    unit += *unit == '_';
    if (column->role == GB_COLUMN_TIME) {
        if (*unit == '\0')
            return true;
        report_unknown(plain, column->name, file, line, diags);
        return false;
    }
    if (take_unit(column, unit))
        return true;
    if (*unit == '\0')
        gb_report(diags, file, line,
                  "the column '%s' does not say its unit; write one of: %s", column->name,
                  ADVICE[column->role]);
    else
        gb_report(diags, file, line,
                  "the unit of the column '%s' is not known; write one of: %s",
                  column->name, ADVICE[column->role]);
    return false;
}

/* As much of a name as a message holds. */
static const char *cut_copy(const char *name, gb_arena *arena) {
    gb_text text;
    gb_text_init(&text, arena);
    gb_text_add_bytes(&text, name, (size_t)gb_cut(name, 40));
    const char *cut = text.failed ? NULL : gb_text_get(&text);
    gb_text_init(&text, arena);
    gb_text_add_clean(&text, cut == NULL ? "" : cut);
    return cut == NULL || text.failed ? NULL : gb_text_get(&text);
}

void gb_add_column(gb_columns *columns, const char *name, const char *file, int line,
                   gb_arena *arena, gb_diags *diags) {
    char plain[LONGEST_NAME + 4];
    gb_column column = {.name = cut_copy(name, arena)};
    if (columns->count == GB_MOST_COLUMNS) {
        if (!columns->too_many)
            gb_report(diags, file, line,
                      "there are over 64 columns; take out what is not read");
        columns->too_many = true;
        return;
    }
    if (column.name == NULL) {
        diags->no_memory = true;
        return;
    }
    simplify(name, plain);
    bool unread = (name[0] == 'x' || name[0] == 'X') && name[1] == '_';
    if (!unread && is_known(&column, plain, file, line, diags) &&
        gb_has_column(columns, column.role))
        gb_report(
            diags, file, line,
            "the column '%s' says what another one says already; keep one, or begin "
            "its name with x_ to leave it unread",
            column.name);
    columns->list[columns->count++] = column;
}

void gb_check_columns(const gb_columns *columns, const char *file, int line,
                      gb_diags *diags) {
    if (!gb_has_column(columns, GB_COLUMN_TIME))
        gb_report(diags, file, line,
                  "no column is 'time'; the first row names the columns, as: "
                  "time,air_f,humidity_pct,wind_mph,rain_in");
    if (!gb_has_column(columns, GB_COLUMN_AIR))
        gb_report(diags, file, line,
                  "no column is the air's temperature; name it air_f or air_c");
    if (gb_has_column(columns, GB_COLUMN_HUMIDITY) &&
        gb_has_column(columns, GB_COLUMN_DEW_POINT))
        gb_report(diags, file, line,
                  "humidity and dew point say the same; begin the name of one with x_ to "
                  "leave it unread");
    if (gb_has_column(columns, GB_COLUMN_WIND) &&
        gb_has_column(columns, GB_COLUMN_WIND_AT_WORK))
        gb_report(
            diags, file, line,
            "wind of a station and at the work are both there; begin the name of one "
            "with x_ to leave it unread");
}
