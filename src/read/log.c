#include "read/log_reader.h"

#include "words/words.h"

#include <stdlib.h>
#include <string.h>

enum { SHOWN = 40 };

/* ---- telling ----------------------------------------------------------------------- */

bool gb_is_new_row(const gb_log_reader *r) {
    return r->csv.line == r->from->added_line;
}

/* A row that is being added is in no file yet. */
const char *gb_file_of_row(const gb_log_reader *r) {
    return gb_is_new_row(r) ? gb_tr("the new row") : r->from->file;
}

int gb_line_of_row(const gb_log_reader *r) {
    return gb_is_new_row(r) ? 0 : r->csv.line;
}

/* ---- the first row ----------------------------------------------------------------- */

static void read_head(void *user, size_t field, const char *name, size_t length) {
    (void)length;
    gb_log_reader *r = user;
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

/* What follows the first row are batches. */
static void end_head(void *user, size_t cells) {
    (void)cells;
    gb_log_reader *r = user;
    static const struct {
        gb_log_role role;
        const char *name;
    } NEEDED[] = {{GB_LOG_DATE, "date"},   {GB_LOG_TIME, "time"}, {GB_LOG_MIX, "mix"},
                  {GB_LOG_BATCH, "batch"}, {GB_LOG_BAGS, "bags"}, {GB_LOG_SET, "set"}};
    r->head_read = true;
    r->csv.cell = gb_read_log_cell;
    r->csv.row = gb_end_log_row;
    for (size_t i = 0; i < sizeof NEEDED / sizeof NEEDED[0]; i++)
        if (!has_role(r->head, NEEDED[i].role))
            gb_report(r->diags, r->from->file, r->csv.line,
                      "no column is '%s'; the first row names the columns, as: "
                      "date,time,mix,batch,bags,water_qt,start,stop,set,depth_in,thrown_"
                      "pct,lot,air_f,remark",
                      NEEDED[i].name);
    r->csv.stopped = gb_diags_count(r->diags) > r->before;
}

/* ---- files ------------------------------------------------------------------------- */

static int order_of(const void *a, const void *b) {
    const gb_piece *const *x = a;
    const gb_piece *const *y = b;
    return strcmp((*x)->name, (*y)->name);
}

static bool make_room(gb_log_reader *r) {
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
            r->sums[layers++] = (gb_layer_sum){p, p->layers[k].mix.text, 0};
    }
    qsort(r->by_name, job->piece_count, sizeof(const gb_piece *), order_of);
    return true;
}

/* A row that is not ended may be cut off. */
static void report_torn(gb_log_reader *r, size_t line) {
    gb_report(
        r->diags, r->from->file, (int)line,
        "the last line is not ended, so the row may be cut off; end the line if it is "
        "whole, or take it out");
}

bool gb_parse_log(const gb_log_text *text, const gb_job *job, gb_arena *arena,
                  gb_diags *diags, gb_log_head *head, gb_log *log) {
    gb_log_reader *r = gb_arena_take(arena, 1, sizeof *r);
    if (r == NULL) {
        diags->no_memory = true;
        return false;
    }
    *head = (gb_log_head){.crlf = strstr(text->text, "\r\n") != NULL};
    *r = (gb_log_reader){.from = text,
                         .job = job,
                         .arena = arena,
                         .diags = diags,
                         .head = head,
                         .before = gb_diags_count(diags)};
    r->csv = (gb_csv){.file = text->file,
                      .diags = diags,
                      .cell = read_head,
                      .row = end_head,
                      .user = r};
    if (!make_room(r))
        return false;
    gb_begin_log_row(r);
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
