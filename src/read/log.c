#include "read/log.h"

#include "gaugebox/count.h"
#include "read/csv.h"
#include "read/diag.h"
#include "read/nearest.h"
#include "words/words.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { SCRATCH = 128, SHOWN = 40, MOST_SETS = 32, MOST_DEPTHS = 32 };

/* How much of a layer the log has set so far. */
typedef struct layer_sum {
    const gb_piece *piece;
    const char *mix;
    double set;
} layer_sum;

typedef struct reader {
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
    bool bad, dated, timed; /* of the row in hand */
    int64_t date, time, start, stop;
    char last_date[12]; /* text of the date before, and what it is */
    int64_t last_day;
    gb_log_set sets[MOST_SETS];
    double depths[MOST_DEPTHS];
    const gb_piece **by_name; /* the job's pieces */
    layer_sum *sums;          /* of each layer, piece after piece ... */
    size_t *first_sum;        /* ... from here on, by the piece's place in the job */
    size_t *numbers;          /* the last batch of each of the job's mixes */
    gb_moment last_at;
    int last_line;
    gb_log_row *rows;
    size_t count, room;
} reader;

/* ---- telling ----------------------------------------------------------------------- */

/* A row that is being added is in no file yet. */
static const char *file_of(const reader *r) {
    return r->csv.line == r->from->added_line ? gb_tr("the new row") : r->from->file;
}

static int line_of(const reader *r) {
    return r->csv.line == r->from->added_line ? 0 : r->csv.line;
}

#define REFUSE(r, ...)                                                                   \
    do {                                                                                 \
        (r)->bad = true;                                                                 \
        gb_report((r)->diags, file_of(r), line_of(r), __VA_ARGS__);                      \
    } while (0)

/* ---- cells ------------------------------------------------------------------------- */

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
    *s = hour * 3600 + minute * 60;
    return hour < 24 && minute < 60;
}

/* Days repeat from row to row. */
static void read_date(reader *r, const char *text, size_t length) {
    if (length == 10 && memcmp(text, r->last_date, 11) == 0) {
        r->date = r->last_day;
        r->dated = true;
        return;
    }
    gb_moment day;
    if (!gb_parse_day(text, 0, &day)) {
        REFUSE(r, "'date' is '%.*s', which is no date; write it as 2026-05-12",
               gb_cut(text, SHOWN), text);
        return;
    }
    r->date = r->last_day = day.s;
    r->dated = true;
    memcpy(r->last_date, text, 11);
}

static void read_time(reader *r, gb_log_role role, const char *text) {
    int64_t *to = role == GB_LOG_TIME    ? &r->time
                  : role == GB_LOG_START ? &r->start
                                         : &r->stop;
    const char *name = role == GB_LOG_TIME    ? "time"
                       : role == GB_LOG_START ? "start"
                                              : "stop";
    if (!read_clock(text, to))
        REFUSE(r, "'%s' is '%.*s', which is no time of day; write it as 07:42", name,
               gb_cut(text, SHOWN), text);
    else if (role == GB_LOG_TIME)
        r->timed = true;
}

static void read_mix(reader *r, const char *text) {
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
        REFUSE(r, "'mix' is '%.*s', which the job does not use; did you mean '%s'?",
               gb_cut(text, SHOWN), text, nearest.best);
    else
        REFUSE(r,
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

static void read_batch(reader *r, const char *text) {
    double number = 0;
    if (!gb_csv_number(text, &number) || number < 1 || number > 1e6 ||
        number != (double)(size_t)number)
        REFUSE(r, "'batch' is '%.*s'; write its number of this mix: 1, 2, 3 and so on",
               gb_cut(text, SHOWN), text);
    else
        r->row.batch = (uint32_t)number;
}

static void read_bags(reader *r, const char *text) {
    double bags = 0;
    if (!read_amount(text, &bags) || !(bags >= 1.0 / 64.0) || bags > 10000)
        REFUSE(
            r,
            "'bags' is '%.*s'; write how many went in, from 1/64 to 10000, as 1, 5/8 or "
            "1.5",
            gb_cut(text, SHOWN), text);
    else
        r->row.bags = bags;
}

/* A number between two bounds, in the column's own unit. */
static bool read_bounded(reader *r, size_t field, const char *text, double least,
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
    REFUSE(r, "'%s' is '%.*s'; write a plain number from %s to %s, without its unit",
           r->head->names[field], gb_cut(text, SHOWN), text, gb_text_get(&low),
           gb_text_get(&high));
    return false;
}

static void read_air(reader *r, size_t field, const char *text) {
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

static const gb_piece *find_piece(const reader *r, const char *name) {
    const gb_piece **found =
        bsearch(name, r->by_name, r->job->piece_count, sizeof(const gb_piece *), by_name);
    return found == NULL ? NULL : *found;
}

static void report_piece(reader *r, const char *name) {
    gb_nearest nearest;
    gb_nearest_init(&nearest, name);
    for (size_t i = 0; i < r->job->piece_count; i++)
        gb_nearest_offer(&nearest, r->job->pieces[i].name);
    if (nearest.best != NULL)
        REFUSE(r, "'set' names '%.*s', and the job has no such piece; did you mean '%s'?",
               gb_cut(name, SHOWN), name, nearest.best);
    else
        REFUSE(r,
               "'set' names '%.*s', and the job has no such piece; write how many and "
               "which, as: 5 treads, or 2 treads + 0.4 landing",
               gb_cut(name, SHOWN), name);
}

/* A copy to cut up; a long one lives in the arena. */
static char *scratch_copy(reader *r, char scratch[SCRATCH], const char *text,
                          size_t length) {
    char *copy = length < SCRATCH ? scratch : gb_arena_take(r->arena, length + 1, 1);
    if (copy == NULL)
        r->diags->no_memory = true;
    else
        memcpy(copy, text, length + 1);
    return copy;
}

/* "5 treads", "0.4 landing", "5". */
static void read_one_set(reader *r, char *part) {
    part += strspn(part, " ");
    size_t length = strlen(part);
    while (length > 0 && part[length - 1] == ' ')
        part[--length] = '\0';
    char *name = part + strcspn(part, " ");
    bool named = *name != '\0';
    if (named)
        *name++ = '\0';
    name += strspn(name, " ");
    double count = 0;
    if (!read_amount(part, &count) || !(count > 0) || count > 1e6) {
        REFUSE(r,
               "'set' has '%.*s' where a count over 0 stands; write how many and which, "
               "as: 5 treads, or 2 treads + 0.4 landing",
               gb_cut(part, SHOWN), part);
        return;
    }
    const gb_piece *piece = named ? find_piece(r, name) : NULL;
    if (named && piece == NULL)
        report_piece(r, name);
    else if (r->row.set_count == MOST_SETS)
        REFUSE(r, "'set' names over %d pieces; write the batch as two rows", MOST_SETS);
    else
        r->sets[r->row.set_count++] = (gb_log_set){piece, count};
}

static void read_sets(reader *r, const char *text, size_t length) {
    char scratch[SCRATCH];
    char *copy = scratch_copy(r, scratch, text, length);
    if (copy == NULL)
        return;
    for (char *part = copy; part != NULL;) {
        char *next = strchr(part, '+');
        if (next != NULL)
            *next++ = '\0';
        read_one_set(r, part);
        part = next;
    }
}

/* "1-1/4 1-3/8 1.5": blanks between them. */
static void read_depths(reader *r, size_t field, const char *text, size_t length) {
    static const double MOST_M = 3.048;
    char scratch[SCRATCH];
    char *copy = scratch_copy(r, scratch, text, length);
    if (copy == NULL)
        return;
    for (char *at = copy + strspn(copy, " "); *at != '\0';) {
        char *end = at + strcspn(at, " ");
        char *next = *end == '\0' ? end : end + 1 + strspn(end + 1, " ");
        *end = '\0';
        double depth = 0;
        bool read = read_amount(at, &depth);
        double m = depth * r->factor[field];
        if (!read || !(m > 0) || m > MOST_M)
            REFUSE(
                r,
                "'%s' has '%.*s'; write the depths that were measured, over 0 and up to "
                "10 ft (3 m), blanks between them, without a unit",
                r->head->names[field], gb_cut(at, SHOWN), at);
        else if (r->row.depth_count == MOST_DEPTHS)
            REFUSE(r, "'%s' holds over %d depths; keep as many", r->head->names[field],
                   MOST_DEPTHS);
        else
            r->depths[r->row.depth_count++] = m;
        at = next;
    }
}

/* ---- the first row ----------------------------------------------------------------- */

static void read_head(reader *r, size_t field, const char *name) {
    gb_log_head *h = r->head;
    const char *known = name;
    if (field >= GB_MOST_LOG_COLUMNS) {
        if (field == GB_MOST_LOG_COLUMNS)
            gb_report(r->diags, r->from->file, r->csv.line,
                      "there are over 64 columns; take out what is not read");
        return;
    }
    gb_log_role role = gb_log_column(name, &r->zero[field], &r->factor[field], &known);
    const char *nearest = role == GB_LOG_ROLES ? gb_nearest_log_column(name) : NULL;
    if (nearest != NULL)
        gb_report(
            r->diags, r->from->file, r->csv.line,
            "the column '%.*s' is not known; did you mean '%s'? begin its name with "
            "x_ to leave it unread",
            gb_cut(name, SHOWN), name, nearest);
    else if (role == GB_LOG_ROLES)
        gb_report(
            r->diags, r->from->file, r->csv.line,
            "the column '%.*s' is not known; known are date, time, mix, batch, bags, "
            "water_qt or water_l, start, stop, set, depth_in or depth_mm, thrown_pct, "
            "lot, air_f or air_c, remark; begin its name with x_ to leave it unread",
            gb_cut(name, SHOWN), name);
    for (size_t i = 0; i < h->count && role < GB_LOG_ROLES; i++)
        if (role != GB_LOG_UNREAD && h->roles[i] == role)
            gb_report(
                r->diags, r->from->file, r->csv.line,
                "the column '%.*s' says what another one says already; keep one, or "
                "begin its name with x_ to leave it unread",
                gb_cut(name, SHOWN), name);
    h->roles[h->count] = role;
    h->names[h->count++] = known == name ? gb_arena_copy(r->arena, name) : known;
}

static bool has_role(const gb_log_head *h, gb_log_role role) {
    for (size_t i = 0; i < h->count; i++)
        if (h->roles[i] == role)
            return true;
    return false;
}

static void finish_head(reader *r) {
    static const struct {
        gb_log_role role;
        const char *name;
    } NEEDED[] = {{GB_LOG_DATE, "date"},   {GB_LOG_TIME, "time"}, {GB_LOG_MIX, "mix"},
                  {GB_LOG_BATCH, "batch"}, {GB_LOG_BAGS, "bags"}, {GB_LOG_SET, "set"}};
    r->head_read = true;
    for (size_t i = 0; i < sizeof NEEDED / sizeof NEEDED[0]; i++)
        if (!has_role(r->head, NEEDED[i].role))
            gb_report(r->diags, r->from->file, r->csv.line,
                      "no column is '%s'; the first row names the columns, as: "
                      "date,time,mix,batch,bags,water_qt,start,stop,set,depth_in,thrown_"
                      "pct,lot,air_f,remark",
                      NEEDED[i].name);
    r->csv.stopped = gb_diags_count(r->diags) > r->before;
}

/* ---- rows -------------------------------------------------------------------------- */

static void new_row(reader *r) {
    r->row = (gb_log_row){.bags = GB_NONE,
                          .water = {GB_NONE},
                          .air = {GB_NONE},
                          .start_s = -1,
                          .stop_s = -1};
    r->bad = r->dated = r->timed = false;
    r->start = r->stop = -1;
}

/* A text to keep; one that stood in the row before as well is kept once. */
static const char *copied(reader *r, const char *text, const char *before,
                          const char *name) {
    if (before != NULL && strcmp(before, text) == 0)
        return before;
    if (strchr("=+-@", text[0]) != NULL) {
        REFUSE(r,
               "'%s' begins with '%c', which a spreadsheet takes for a formula; begin it "
               "with a letter",
               name, text[0]);
        return NULL;
    }
    const char *copy = gb_arena_copy(r->arena, text);
    if (copy == NULL)
        r->diags->no_memory = true;
    return copy;
}

static const char *last_lot(const reader *r) {
    return r->count > 0 ? r->rows[r->count - 1].lot : NULL;
}

static void read_cell(void *user, size_t field, const char *text, size_t length) {
    reader *r = user;
    if (!r->head_read) {
        read_head(r, field, text);
        return;
    }
    if (length == 0 || field >= r->head->count)
        return;
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
        r->row.lot = copied(r, text, last_lot(r), "lot");
        break;
    case GB_LOG_REMARK:
        r->row.remark = copied(r, text, NULL, "remark");
        break;
    default:
        break;
    }
}

static void check_needed(reader *r) {
    const struct {
        bool there;
        const char *name;
    } cells[] = {{r->dated, "date"},
                 {r->timed, "time"},
                 {r->row.mix != NULL, "mix"},
                 {r->row.batch > 0, "batch"},
                 {!isnan(r->row.bags), "bags"}};
    if (r->bad)
        return; /* what could not be read was told */
    for (size_t i = 0; i < sizeof cells / sizeof cells[0]; i++)
        if (!cells[i].there)
            REFUSE(r, "'%s' is empty; every batch has one", cells[i].name);
}

static const char *shown(reader *r, gb_moment at) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_print_moment(&text, at, 0);
    return gb_text_get(&text);
}

static void check_times(reader *r) {
    gb_log_row *row = &r->row;
    if (!r->dated || !r->timed)
        return;
    row->at.s = r->date + r->time;
    if (r->last_line > 0 && row->at.s < r->last_at.s)
        REFUSE(r, "%s comes behind %s of line %d; rows stand by the time of first water",
               shown(r, row->at), shown(r, r->last_at), r->last_line);
    r->last_at = row->at;
    r->last_line = r->csv.line;
    if ((r->start < 0) != (r->stop < 0))
        REFUSE(r, "'start' and 'stop' belong together; write both or none");
    if (r->start < 0 || r->stop < 0)
        return;
    if (r->start < r->time || r->stop < r->start)
        REFUSE(r, "'time', 'start' and 'stop' follow one another on one day; work over "
                  "midnight is written as two rows");
    row->start_s = (int32_t)(r->start - r->time);
    row->stop_s = (int32_t)(r->stop - r->time);
}

static size_t mix_index(const reader *r, const gb_mix *mix) {
    size_t i = 0;
    while (i + 1 < r->job->mix_count && r->job->mixes[i] != mix)
        i++;
    return i;
}

static void check_number(reader *r) {
    if (r->row.mix == NULL || r->row.batch == 0)
        return;
    size_t *last = &r->numbers[mix_index(r, r->row.mix)];
    if (r->row.batch <= *last)
        REFUSE(r, "batch %zu of '%s' is not above the one before, %zu; number them on",
               (size_t)r->row.batch, r->row.mix->id, *last);
    else
        *last = r->row.batch;
}

/* The only piece that a mix fills; NULL when there are several. */
static const gb_piece *only_piece(const reader *r, const gb_mix *mix) {
    const gb_piece *only = NULL;
    for (size_t i = 0; i < r->job->piece_count; i++)
        for (size_t k = 0; k < r->job->pieces[i].layer_count; k++) {
            if (strcmp(r->job->pieces[i].layers[k].mix.text, mix->id) != 0)
                continue;
            if (only != NULL && only != &r->job->pieces[i])
                return NULL;
            only = &r->job->pieces[i];
        }
    return only;
}

/* A mix that fills two layers of a piece may set it twice. */
static void add_to_sum(reader *r, const gb_log_set *set) {
    const gb_piece *p = set->piece;
    size_t at = r->first_sum[p - r->job->pieces];
    layer_sum *sum = NULL;
    double most = 0;
    for (size_t k = 0; k < p->layer_count; k++) {
        if (strcmp(r->sums[at + k].mix, r->row.mix->id) != 0)
            continue;
        sum = sum == NULL ? &r->sums[at + k] : sum;
        most += (double)p->count;
    }
    if (sum == NULL) {
        REFUSE(r, "'set' names '%s', which '%s' does not fill", p->name, r->row.mix->id);
        return;
    }
    sum->set += set->count;
    if (!gb_over(sum->set / most, 1.0))
        return;
    gb_text so_far;
    gb_text_init(&so_far, r->arena);
    gb_text_add_fixed(&so_far, sum->set, 2);
    REFUSE(r, "with this row %s of '%s' are set, and the job has %zu; check the counts",
           gb_text_get(&so_far), p->name, p->count);
}

static void check_sets(reader *r) {
    if (r->row.mix == NULL)
        return;
    for (size_t i = 0; i < r->row.set_count; i++) {
        gb_log_set *set = &r->sets[i];
        if (set->piece == NULL)
            set->piece = only_piece(r, r->row.mix);
        if (set->piece == NULL)
            REFUSE(r,
                   "'set' does not say which piece, and '%s' fills several; write it as: "
                   "5 treads",
                   r->row.mix->id);
        else
            add_to_sum(r, set);
    }
}

static const void *kept(reader *r, const void *list, size_t count, size_t size) {
    void *copy = count == 0 ? NULL : gb_arena_take(r->arena, count, size);
    if (copy != NULL)
        memcpy(copy, list, count * size);
    else if (count > 0)
        r->diags->no_memory = true;
    return copy;
}

static void end_row(void *user, size_t cells) {
    reader *r = user;
    if (!r->head_read) {
        finish_head(r);
        new_row(r);
        return;
    }
    if (cells != r->head->count)
        REFUSE(r,
               "the row has %zu cells and the first one names %zu columns; is the file "
               "cut off here, or a comma too many?",
               cells, r->head->count);
    check_needed(r);
    check_times(r);
    check_number(r);
    check_sets(r);
    if (!r->bad && r->count < r->room) {
        r->row.line = r->csv.line;
        r->row.sets = kept(r, r->sets, r->row.set_count, sizeof *r->sets);
        r->row.depths_m = kept(r, r->depths, r->row.depth_count, sizeof *r->depths);
        r->rows[r->count++] = r->row;
    }
    new_row(r);
}

/* ---- files ------------------------------------------------------------------------- */

static int order_of(const void *a, const void *b) {
    const gb_piece *const *x = a;
    const gb_piece *const *y = b;
    return strcmp((*x)->name, (*y)->name);
}

static bool make_room(reader *r) {
    const gb_job *job = r->job;
    size_t layers = 0;
    for (size_t i = 0; i < job->piece_count; i++)
        layers += job->pieces[i].layer_count;
    r->room = gb_csv_lines(r->from->text, r->from->length);
    r->rows = gb_arena_take(r->arena, r->room, sizeof *r->rows);
    r->by_name = gb_arena_take(r->arena, job->piece_count + 1, sizeof(const gb_piece *));
    r->first_sum = gb_arena_take(r->arena, job->piece_count + 1, sizeof *r->first_sum);
    r->sums = gb_arena_take(r->arena, layers + 1, sizeof *r->sums);
    r->numbers = gb_arena_take(r->arena, job->mix_count + 1, sizeof *r->numbers);
    if (r->rows == NULL || r->by_name == NULL || r->first_sum == NULL ||
        r->sums == NULL || r->numbers == NULL) {
        r->diags->no_memory = true;
        return false;
    }
    layers = 0;
    for (size_t i = 0; i < job->piece_count; i++) {
        const gb_piece *p = &job->pieces[i];
        r->by_name[i] = p;
        r->first_sum[i] = layers;
        for (size_t k = 0; k < p->layer_count; k++)
            r->sums[layers++] = (layer_sum){p, p->layers[k].mix.text, 0};
    }
    qsort(r->by_name, job->piece_count, sizeof(const gb_piece *), order_of);
    return true;
}

/* A row that is not ended may be cut off. */
static void report_torn(reader *r, size_t line) {
    gb_report(
        r->diags, r->from->file, (int)line,
        "the last line is not ended, so the row may be cut off; end the line if it is "
        "whole, or take it out");
}

bool gb_parse_log(const gb_log_text *text, const gb_job *job, gb_arena *arena,
                  gb_diags *diags, gb_log_head *head, gb_log *log) {
    reader *r = gb_arena_take(arena, 1, sizeof *r);
    if (r == NULL) {
        diags->no_memory = true;
        return false;
    }
    *head = (gb_log_head){.crlf = strstr(text->text, "\r\n") != NULL};
    *r = (reader){.from = text,
                  .job = job,
                  .arena = arena,
                  .diags = diags,
                  .head = head,
                  .before = gb_diags_count(diags)};
    r->csv = (gb_csv){
        .file = text->file, .diags = diags, .cell = read_cell, .row = end_row, .user = r};
    if (!make_room(r))
        return false;
    new_row(r);
    /* Before the text is cut up. */
    bool torn = text->length > 0 && text->text[text->length - 1] != '\n';
    size_t lines = r->room;
    bool parsed = gb_csv_parse(&r->csv, text->text, text->length);
    if (parsed && !r->head_read && !r->csv.stopped)
        gb_report(diags, text->file, 0,
                  "is empty; its first row names the columns, as: "
                  "date,time,mix,batch,bags,water_qt,start,stop,set,depth_in,thrown_pct,"
                  "lot,air_f,remark");
    if (parsed && torn)
        report_torn(r, lines);
    *log = (gb_log){.rows = r->rows, .count = r->count, .file = text->file};
    return gb_diags_count(diags) == r->before && !diags->no_memory;
}

bool gb_read_log(const char *file, const gb_job *job, gb_arena *arena, gb_diags *diags,
                 gb_log_head *head, gb_log *log) {
    char *text = NULL;
    size_t length = 0;
    if (!gb_csv_load(file, GB_MOST_LOG_ROWS, GB_TOO_MANY_LOG_ROWS, arena, diags, &text,
                     &length))
        return false;
    gb_log_text from = {.file = file, .text = text, .length = length};
    return gb_parse_log(&from, job, arena, diags, head, log);
}
