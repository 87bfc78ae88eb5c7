#include "read/log_reader.h"

#include "read/nearest.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { SCRATCH = 128, SHOWN = 40 };

static bool read_clock(const char *text, int64_t *s) {
    int hour = 0;
    int minute = 0;
    int digits = 0;
    for (; *text >= '0' && *text <= '9' && digits < 2; text++, digits++)
        hour = hour * 10 + (*text - '0');
    if (digits == 0 || *text != ':' || text[1] < '0' || text[1] > '9' || text[2] < '0' ||
        text[2] > '9' || text[3] != '\0')
        return false;
    minute = (text[1] - '0') * 10 + (text[2] - '0');
    if (hour >= 24 || minute >= 60)
        return false;
    *s = hour * 3600 + minute * 60;
    return true;
}

/* Days repeat from row to row. */
static void read_date(gb_log_reader *r, const char *text, size_t length) {
    if (length == 10 && memcmp(text, r->last_date, 11) == 0) {
        r->date = r->last_day;
        r->dated = true;
        return;
    }
    gb_moment day;
    if (!gb_parse_day(text, 0, &day)) {
        GB_REFUSE(r, "'date' is '%.*s', which is no date; write it as 2026-05-12",
                  gb_cut(text, SHOWN), text);
        return;
    }
    r->date = r->last_day = day.s;
    r->dated = true;
    memcpy(r->last_date, text, 11);
}

static void read_time(gb_log_reader *r, gb_log_role role, const char *text) {
    int64_t *to = role == GB_LOG_TIME    ? &r->time
                  : role == GB_LOG_START ? &r->start
                                         : &r->stop;
    const char *name = role == GB_LOG_TIME    ? "time"
                       : role == GB_LOG_START ? "start"
                                              : "stop";
    if (!read_clock(text, to))
        GB_REFUSE(r, "'%s' is '%.*s', which is no time of day; write it as 07:42", name,
                  gb_cut(text, SHOWN), text);
    else if (role == GB_LOG_TIME)
        r->timed = true;
}

static void read_mix(gb_log_reader *r, const char *text) {
    if (r->count > 0 && strcmp(r->rows[r->count - 1].mix->id, text) == 0) {
        r->row.mix = r->rows[r->count - 1].mix;
        return;
    }
    gb_nearest nearest;
    gb_nearest_init(&nearest, text);
    for (size_t i = 0; i < r->job->mix_count; i++) {
        if (strcmp(r->job->mixes[i]->id, text) == 0) {
            r->row.mix = r->job->mixes[i];
            return;
        }
        gb_nearest_offer(&nearest, r->job->mixes[i]->id);
    }
    if (nearest.best != NULL)
        GB_REFUSE(r, "'mix' is '%.*s', which the job does not use; did you mean '%s'?",
                  gb_cut(text, SHOWN), text, nearest.best);
    else
        GB_REFUSE(
            r,
            "'mix' is '%.*s', which the job does not use; write the id of one that it "
            "does, such as %s",
            gb_cut(text, SHOWN), text,
            r->job->mix_count > 0 ? r->job->mixes[0]->id : "bed/stiff-1-4");
}

/* A plain number, or one with a fraction of a bag or an inch: 5/8, 1-1/2. */
static bool read_amount(const char *text, double *number) {
    if (gb_csv_number(text, number))
        return true;
    return gb_parse_number(text, number) == GB_NO_FAULT;
}

static void read_batch(gb_log_reader *r, const char *text) {
    double number = 0;
    if (!gb_csv_number(text, &number) || number < 1 || number > 1e6 ||
        number != (double)(size_t)number)
        GB_REFUSE(r, "'batch' is '%.*s'; write its number of this mix: 1, 2, 3 and so on",
                  gb_cut(text, SHOWN), text);
    else
        r->row.batch = (uint32_t)number;
}

static void read_bags(gb_log_reader *r, const char *text) {
    double bags = 0;
    if (!read_amount(text, &bags) || !(bags >= 1.0 / 64.0) || bags > 10000)
        GB_REFUSE(
            r,
            "'bags' is '%.*s'; write how many went in, from 1/64 to 10000, as 1, 5/8 or "
            "1.5",
            gb_cut(text, SHOWN), text);
    else
        r->row.bags = bags;
}

/* A number between two bounds, in the column's own unit. */
static bool read_bounded(gb_log_reader *r, size_t field, const char *text, double least,
                         double most, double *si) {
    double number = 0;
    if (gb_csv_number(text, &number) && number >= least && number <= most) {
        *si = (number - r->zero[field]) * r->factor[field];
        return true;
    }
    gb_text low;
    gb_text high;
    gb_text_init(&low, r->arena);
    gb_text_init(&high, r->arena);
    gb_text_add_fixed(&low, least, 0);
    gb_text_add_fixed(&high, most, 0);
    /* A new row was given with its unit, and is not to be written without. */
    if (gb_is_new_row(r))
        GB_REFUSE(r, "'%s' comes to %.*s; it may be from %s to %s", r->head->names[field],
                  gb_cut(text, SHOWN), text, gb_text_get(&low), gb_text_get(&high));
    else
        GB_REFUSE(r,
                  "'%s' is '%.*s'; write a plain number from %s to %s, without its unit",
                  r->head->names[field], gb_cut(text, SHOWN), text, gb_text_get(&low),
                  gb_text_get(&high));
    return false;
}

static void read_air(gb_log_reader *r, size_t field, const char *text) {
    bool f = r->zero[field] > 0;
    double si = GB_NONE;
    if (read_bounded(r, field, text, -40, f ? 130 : 55, &si))
        r->row.air.c = si;
}

/* ---- what was set ------------------------------------------------------------------ */

static int by_name(const void *key, const void *entry) {
    const gb_piece *const *piece = entry;
    return strcmp(key, (*piece)->name);
}

static const gb_piece *find_piece(const gb_log_reader *r, const char *name) {
    const gb_piece **found =
        bsearch(name, r->by_name, r->job->piece_count, sizeof(const gb_piece *), by_name);
    return found == NULL ? NULL : *found;
}

static void report_piece(gb_log_reader *r, const char *name) {
    gb_nearest nearest;
    gb_nearest_init(&nearest, name);
    for (size_t i = 0; i < r->job->piece_count; i++)
        gb_nearest_offer(&nearest, r->job->pieces[i].name);
    if (nearest.best != NULL)
        GB_REFUSE(r,
                  "'set' names '%.*s', and the job has no such piece; did you mean '%s'?",
                  gb_cut(name, SHOWN), name, nearest.best);
    else
        GB_REFUSE(r,
                  "'set' names '%.*s', and the job has no such piece; write how many and "
                  "which, as: 5 treads, or 2 treads + 0.4 landing",
                  gb_cut(name, SHOWN), name);
}

/* A copy to cut up; a long one lives in the arena. */
static char *scratch_copy(gb_log_reader *r, char scratch[SCRATCH], const char *text,
                          size_t length) {
    char *copy = length < SCRATCH ? scratch : gb_arena_take(r->arena, length + 1, 1);
    if (copy == NULL)
        r->diags->no_memory = true;
    else
        memcpy(copy, text, length + 1);
    return copy;
}

/* Most cells of a long log hold one short set: no call of the library for each sign. */
static char *past_blanks(char *at) {
    while (*at == ' ')
        at++;
    return at;
}

/* The piece that the longest beginning of `name` names, which ends before a + or with the
   text: a name may hold a + of its own. *stop is where it ends, or else the first +. */
static const gb_piece *find_longest(const gb_log_reader *r, char *name, char **stop) {
    for (char *end = name + strlen(name); end > name;) {
        char *last = end;
        while (last > name && last[-1] == ' ')
            last--;
        char behind = *last;
        *last = '\0';
        const gb_piece *piece = find_piece(r, name);
        *last = behind;
        *stop = end;
        if (piece != NULL)
            return piece;
        do
            end--;
        while (end > name && *end != '+');
    }
    *stop = name + strcspn(name, "+");
    return NULL;
}

static void keep_set(gb_log_reader *r, const char *amount, const gb_piece *piece,
                     const char *name) {
    double count = 0;
    if (!read_amount(amount, &count) || !(count > 0) || count > 1e6)
        GB_REFUSE(
            r,
            "'set' has '%.*s' where a count over 0 stands; write how many and which, "
            "as: 5 treads, or 2 treads + 0.4 landing",
            gb_cut(amount, SHOWN), amount);
    else if (piece == NULL && *name != '\0')
        report_piece(r, name);
    else if (r->row.set_count < GB_MOST_LOG_SETS)
        r->sets[r->row.set_count++] = (gb_log_set){piece, count};
}

/* "5 treads", "0.4 landing", "5". What stands behind its +, or NULL. */
static char *read_one_set(gb_log_reader *r, char *part) {
    part = past_blanks(part);
    char *behind = part;
    while (*behind != '\0' && *behind != ' ' && *behind != '+')
        behind++;
    char *name = past_blanks(behind);
    char *stop = name;
    const gb_piece *piece =
        *name == '\0' || *name == '+' ? NULL : find_longest(r, name, &stop);
    char *next = *stop == '+' ? stop + 1 : NULL;
    while (stop > name && stop[-1] == ' ')
        stop--;
    *stop = '\0';
    *behind = '\0';
    keep_set(r, part, piece, name > behind ? name : behind);
    return next;
}

static void read_sets(gb_log_reader *r, const char *text, size_t length) {
    char scratch[SCRATCH];
    char *copy = scratch_copy(r, scratch, text, length);
    size_t parts = 0;
    for (; copy != NULL; parts++)
        copy = read_one_set(r, copy);
    if (parts > GB_MOST_LOG_SETS)
        GB_REFUSE(r, "'set' names over %d pieces; write the batch as two rows",
                  GB_MOST_LOG_SETS);
}

static void report_depth(gb_log_reader *r, const char *name, const char *text) {
    if (gb_is_new_row(r))
        GB_REFUSE(r, "'%s' comes to %.*s; it may be over 0 and up to 10 ft (3 m)", name,
                  gb_cut(text, SHOWN), text);
    else
        GB_REFUSE(
            r,
            "'%s' has '%.*s'; write the depths that were measured, over 0 and up to "
            "10 ft (3 m), blanks between them, without a unit",
            name, gb_cut(text, SHOWN), text);
}

/* "1 1/4" is meant as one and a quarter, and would be read as two depths. */
static bool is_torn_apart(const char *before, const char *at) {
    bool whole = before != NULL && strspn(before, "0123456789") == strlen(before);
    return whole && strchr(at, '/') != NULL && strchr(at, '-') == NULL;
}

static void read_one_depth(gb_log_reader *r, size_t field, const char *before,
                           const char *at) {
    static const double MOST_M = 3.048;
    double depth = 0;
    bool read = read_amount(at, &depth);
    double m = depth * r->factor[field];
    if (is_torn_apart(before, at))
        GB_REFUSE(r, "'%s' has '%s %.*s': two depths, or one? write one as %s-%.*s",
                  r->head->names[field], before, gb_cut(at, SHOWN), at, before,
                  gb_cut(at, SHOWN), at);
    else if (!read || !(m > 0) || m > MOST_M)
        report_depth(r, r->head->names[field], at);
    else if (r->row.depth_count < GB_MOST_LOG_DEPTHS)
        r->depths[r->row.depth_count++] = m;
}

/* "1-1/4 1-3/8 1.5": blanks between them. */
static void read_depths(gb_log_reader *r, size_t field, const char *text, size_t length) {
    char scratch[SCRATCH];
    char *copy = scratch_copy(r, scratch, text, length);
    const char *before = NULL;
    size_t parts = 0;
    if (copy == NULL)
        return;
    for (char *at = past_blanks(copy); *at != '\0'; parts++) {
        char *end = at;
        while (*end != '\0' && *end != ' ')
            end++;
        char *next = *end == '\0' ? end : past_blanks(end + 1);
        *end = '\0';
        read_one_depth(r, field, before, at);
        before = at;
        at = next;
    }
    if (parts > GB_MOST_LOG_DEPTHS)
        GB_REFUSE(r, "'%s' holds over %d depths; keep as many", r->head->names[field],
                  GB_MOST_LOG_DEPTHS);
}

/* ---- the rest of a row --------------------------------------------------------------
 */

/* A text to keep; one that stood in the row before as well is kept once. */
static const char *copied(gb_log_reader *r, const char *text, const char *before,
                          const char *name) {
    if (before != NULL && strcmp(before, text) == 0)
        return before;
    if (text[0] == '=' || text[0] == '+' || text[0] == '-' || text[0] == '@') {
        GB_REFUSE(
            r,
            "'%s' begins with '%c', which a spreadsheet takes for a formula; begin it "
            "with a letter",
            name, text[0]);
        return NULL;
    }
    const char *copy = r->csv.lasting ? text : gb_arena_copy(r->arena, text);
    if (copy == NULL)
        r->diags->no_memory = true;
    return copy;
}

static void read_text(gb_log_reader *r, gb_log_role role, const char *text) {
    const char *before = r->count > 0 ? r->rows[r->count - 1].lot : NULL;
    if (role == GB_LOG_LOT)
        r->row.lot = copied(r, text, before, "lot");
    else
        r->row.remark = copied(r, text, NULL, "remark");
}

static void read_role(gb_log_reader *r, size_t field, const char *text, size_t length) {
    switch (r->head->roles[field]) {
    case GB_LOG_DATE:
        read_date(r, text, length);
        break;
    case GB_LOG_TIME:
    case GB_LOG_START:
    case GB_LOG_STOP:
        read_time(r, r->head->roles[field], text);
        break;
    case GB_LOG_MIX:
        read_mix(r, text);
        break;
    case GB_LOG_BATCH:
        read_batch(r, text);
        break;
    case GB_LOG_BAGS:
        read_bags(r, text);
        break;
    case GB_LOG_WATER:
        (void)read_bounded(r, field, text, 0, 10000, &r->row.water.m3);
        break;
    case GB_LOG_SET:
        read_sets(r, text, length);
        break;
    case GB_LOG_DEPTH:
        read_depths(r, field, text, length);
        break;
    case GB_LOG_THROWN:
        (void)read_bounded(r, field, text, 0, 100, &r->row.thrown.of_one);
        break;
    case GB_LOG_AIR:
        read_air(r, field, text);
        break;
    case GB_LOG_LOT:
    case GB_LOG_REMARK:
        read_text(r, r->head->roles[field], text);
        break;
    default:
        break;
    }
}

void gb_read_log_cell(void *user, size_t field, const char *text, size_t length) {
    gb_log_reader *r = user;
    if (length == 0 || field >= r->head->count)
        return;
    r->filled |= 1U << r->head->roles[field];
    read_role(r, field, text, length);
}
