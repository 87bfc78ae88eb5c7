#include "read/csv.h"
#include "read/diag.h"
#include "read/log.h"
#include "read/scan.h"
#include "read/source.h"
#include "words/words.h"

#include <math.h>
#include <string.h>

/* A new row of a batch log: its cells as the file's own columns want them. */

typedef struct writer {
    const gb_job *job;
    const gb_log_entry *entry;
    gb_arena *arena;
    gb_diags *diags;
    gb_text to;
    size_t batch; /* its number, where the entry has none */
} writer;

static const char US_HEAD[] = "date,time,mix,batch,bags,water_qt,start,stop,set,depth_in,"
                              "thrown_pct,lot,air_f,remark\n";
static const char METRIC_HEAD[] = "date,time,mix,batch,bags,water_l,start,stop,set,"
                                  "depth_mm,thrown_pct,lot,air_c,remark\n";

static const char *const OPTIONS[GB_LOG_ROLES] = {
    [GB_LOG_DATE] = "date",   [GB_LOG_TIME] = "time",     [GB_LOG_MIX] = "mix",
    [GB_LOG_BATCH] = "batch", [GB_LOG_BAGS] = "bags",     [GB_LOG_WATER] = "water",
    [GB_LOG_START] = "start", [GB_LOG_STOP] = "stop",     [GB_LOG_SET] = "set",
    [GB_LOG_DEPTH] = "depth", [GB_LOG_THROWN] = "thrown", [GB_LOG_LOT] = "lot",
    [GB_LOG_AIR] = "air",     [GB_LOG_REMARK] = "remark"};

/* ---- cells ------------------------------------------------------------------------- */

/* RFC 4180: quoted where it holds a comma or a quote. */
static void add_cell(writer *w, const char *text) {
    bool quoted = strpbrk(text, ",\"\r\n") != NULL;
    gb_text_add(&w->to, quoted ? "\"" : "");
    for (const char *c = text; *c != '\0'; c++)
        gb_text_add_bytes(&w->to, *c == '"' ? "\"\"" : c, *c == '"' ? 2 : 1);
    gb_text_add(&w->to, quoted ? "\"" : "");
}

void gb_log_add_number(gb_text *to, double number, int most_decimals) {
    double step = 1.0;
    for (int i = 0; i < most_decimals; i++)
        step *= 10.0;
    double last = round(number * step);
    int decimals = 0;
    while (decimals < most_decimals && fabs(last / step - round(last / step)) > 1e-9) {
        decimals++;
        step /= 10.0;
    }
    gb_text_add_fixed(to, number, decimals);
}

/* A new row holds nothing that steers a terminal, ends a line or is no UTF-8. */
static void check_signs(writer *w) {
    gb_diags none;
    gb_diags_init(&none, w->arena);
    for (gb_log_role role = GB_LOG_DATE; role < GB_LOG_ROLES; role++) {
        const char *cell = w->entry->cells[role];
        gb_text clean;
        gb_text_init(&clean, w->arena);
        if (cell == NULL)
            continue;
        if (!gb_check_text(cell, strlen(cell), "", &none)) {
            gb_report(w->diags, gb_tr("the new row"), 0,
                      "'%s' is no plain UTF-8 text; type it anew", OPTIONS[role]);
            continue;
        }
        gb_text_add_clean(&clean, cell);
        if (!clean.failed && strcmp(gb_text_get(&clean), cell) != 0)
            gb_report(w->diags, gb_tr("the new row"), 0,
                      "'%s' is '%.*s', and each ? is the end of a line or another sign "
                      "that steers; write plain signs on one line",
                      OPTIONS[role], gb_cut(gb_text_get(&clean), 40),
                      gb_text_get(&clean));
    }
}

static gb_kind kind_of(gb_log_role role) {
    return role == GB_LOG_WATER    ? GB_VOLUME
           : role == GB_LOG_DEPTH  ? GB_LENGTH
           : role == GB_LOG_THROWN ? GB_SHARE
           : role == GB_LOG_AIR    ? GB_TEMP
                                   : GB_KINDS;
}

/* A quantity in the unit of its column. */
static void add_quantity(writer *w, gb_log_role role, const char *text, double zero,
                         double factor) {
    double si = 0;
    if (gb_parse(kind_of(role), text, &si) != GB_NO_FAULT) {
        gb_report(w->diags, gb_tr("the new row"), 0,
                  "'%s' is '%.*s', which cannot be read; write it with its unit, such as "
                  "11 qt, 1-1/4in, 10%% or 62 F",
                  OPTIONS[role], gb_cut(text, 40), text);
        return;
    }
    /* Sixteenths of an inch have four decimals. */
    gb_log_add_number(&w->to, si / factor + zero, 4);
}

/* Several depths, blanks between them. */
static void add_depths(writer *w, const char *text, double factor) {
    char *copy = gb_arena_copy(w->arena, text);
    if (copy == NULL) {
        w->diags->no_memory = true;
        return;
    }
    bool first = true;
    for (char *at = copy + strspn(copy, " "); *at != '\0';) {
        char *end = at + strcspn(at, " ");
        char *next = *end == '\0' ? end : end + 1 + strspn(end + 1, " ");
        *end = '\0';
        gb_text_add(&w->to, first ? "" : " ");
        add_quantity(w, GB_LOG_DEPTH, at, 0, factor);
        first = false;
        at = next;
    }
}

static const char *given(const writer *w, gb_log_role role) {
    const char *text = w->entry->cells[role];
    if (text == NULL && role == GB_LOG_MIX && w->job->mix_count == 1)
        return w->job->mixes[0]->id;
    return text;
}

static void add_column(writer *w, const char *name) {
    double zero = 0;
    double factor = 1;
    const char *known = NULL;
    gb_log_role role = gb_log_column(name, &zero, &factor, &known);
    const char *text = role < GB_LOG_ROLES ? given(w, role) : NULL;
    if (text == NULL && role == GB_LOG_BATCH)
        gb_text_add_int(&w->to, (int64_t)w->batch);
    else if (text == NULL)
        return;
    else if (role == GB_LOG_DEPTH)
        add_depths(w, text, factor);
    else if (kind_of(role) != GB_KINDS)
        add_quantity(w, role, text, zero, factor);
    else
        add_cell(w, text);
}

/* ---- the row ----------------------------------------------------------------------- */

/* What is given and has no column would be lost. */
static void check_columns(writer *w, const char *file, const gb_log_head *head) {
    for (gb_log_role role = GB_LOG_DATE; role < GB_LOG_ROLES; role++) {
        bool there = false;
        for (size_t i = 0; i < head->count; i++)
            there = there || head->roles[i] == role;
        if (w->entry->cells[role] != NULL && !there)
            gb_report(w->diags, file, 1,
                      "the log has no column for '%s'; add one to the first row, and a "
                      "comma to each row",
                      OPTIONS[role]);
    }
}

static size_t next_number(const gb_log *log, const char *mix) {
    size_t last = 0;
    for (size_t i = 0; i < log->count && mix != NULL; i++)
        if (strcmp(log->rows[i].mix->id, mix) == 0)
            last = log->rows[i].batch;
    return last + 1;
}

/* Reads a copy, since reading cuts a text up. */
static bool read_copy(writer *w, gb_log_text from, const char *shown, gb_log_head *head,
                      gb_log *log) {
    const char *text = from.text;
    if (!gb_csv_check(shown, GB_MOST_LOG_ROWS, GB_TOO_MANY_LOG_ROWS, w->diags, text,
                      from.length))
        return false;
    from.text = gb_arena_take(w->arena, from.length + 1, 1);
    if (from.text == NULL) {
        w->diags->no_memory = true;
        return false;
    }
    memcpy(from.text, text, from.length);
    return gb_parse_log(&from, w->job, w->arena, w->diags, head, log);
}

static void add_row(writer *w, const gb_log_head *head, const char *file) {
    for (size_t i = 0; i < head->count; i++) {
        gb_text_add(&w->to, i > 0 ? "," : "");
        add_column(w, head->names[i]);
    }
    gb_text_add(&w->to, head->crlf ? "\r\n" : "\n");
    if (w->to.failed)
        w->diags->no_memory = true;
    if (w->to.length > GB_MOST_BYTES)
        gb_report(w->diags, file, 0,
                  "would be larger than 16 MB, which is not read; begin a new log");
}

bool gb_extend_log(const char *file, const char *text, size_t length,
                   const gb_log_entry *entry, const gb_job *job, gb_arena *arena,
                   gb_diags *diags, const char **longer, size_t *longer_length,
                   size_t *batch) {
    writer w = {.job = job, .entry = entry, .arena = arena, .diags = diags};
    size_t before = gb_diags_count(diags);
    gb_log_head head;
    gb_log log;
    if (length == 0) {
        text = job->units == GB_US ? US_HEAD : METRIC_HEAD;
        length = strlen(text);
    }
    gb_text_init(&w.to, arena);
    gb_text_add_bytes(&w.to, text, length);
    gb_log_text from = {.file = file, .text = w.to.data, .length = length};
    if (w.to.failed || !read_copy(&w, from, file, &head, &log))
        return false;
    check_columns(&w, file, &head);
    check_signs(&w);
    if (gb_diags_count(diags) > before)
        return false;
    w.batch = next_number(&log, given(&w, GB_LOG_MIX));
    add_row(&w, &head, file);
    if (w.to.failed || w.to.length > GB_MOST_BYTES)
        return false;
    from = (gb_log_text){.file = file,
                         .text = w.to.data,
                         .length = w.to.length,
                         .added_line = (int)gb_csv_lines(text, length)};
    if (!read_copy(&w, from, gb_tr("the new row"), &head, &log) ||
        gb_diags_count(diags) > before) /* a quantity that is none, its cell left empty */
        return false;
    *longer = gb_text_get(&w.to);
    *longer_length = w.to.length;
    *batch = log.rows[log.count - 1].batch;
    return true;
}
