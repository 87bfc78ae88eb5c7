#include "read/csv.h"
#include "read/diag.h"
#include "read/log.h"
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

/* A number with as many decimals as it needs, at most three. */
static void add_number(gb_text *to, double number) {
    double thousandths = round(number * 1000.0);
    int decimals = 0;
    double step = 1000.0;
    while (decimals < 3 && fabs(thousandths / step - round(thousandths / step)) > 1e-9) {
        decimals++;
        step /= 10.0;
    }
    gb_text_add_fixed(to, number, decimals);
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
    add_number(&w->to, si / factor + zero);
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
    gb_log_text from = {
        .file = file, .text = gb_arena_copy(arena, text), .length = length};
    if (from.text == NULL) {
        diags->no_memory = true;
        return false;
    }
    if (!gb_csv_check(file, GB_MOST_LOG_ROWS, GB_TOO_MANY_LOG_ROWS, diags, text,
                      length) ||
        !gb_parse_log(&from, job, arena, diags, &head, &log))
        return false;
    check_columns(&w, file, &head);
    gb_text_init(&w.to, arena);
    gb_text_add_bytes(&w.to, text, length);
    w.batch = next_number(&log, given(&w, GB_LOG_MIX));
    for (size_t i = 0; i < head.count; i++) {
        gb_text_add(&w.to, i > 0 ? "," : "");
        add_column(&w, head.names[i]);
    }
    gb_text_add(&w.to, head.crlf ? "\r\n" : "\n");
    if (w.to.failed)
        return false;
    from = (gb_log_text){.file = file,
                         .text = gb_arena_copy(arena, gb_text_get(&w.to)),
                         .length = w.to.length,
                         .added_line = (int)gb_csv_lines(text, length)};
    if (from.text == NULL) {
        diags->no_memory = true;
        return false;
    }
    if (!gb_csv_check(gb_tr("the new row"), GB_MOST_LOG_ROWS, GB_TOO_MANY_LOG_ROWS, diags,
                      from.text, from.length) ||
        !gb_parse_log(&from, job, arena, diags, &head, &log))
        return false;
    if (gb_diags_count(diags) > before)
        return false; /* a quantity could not be read, and its cell is empty */
    *longer = gb_text_get(&w.to);
    *longer_length = w.to.length;
    *batch = log.rows[log.count - 1].batch;
    return true;
}
