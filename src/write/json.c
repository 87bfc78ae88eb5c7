#include "write/json.h"

#include "write/figures.h"

#include "gaugebox/digest.h"

#include <jansson.h>

/* A NaN is a value that was not stated: it is left out, for JSON has none. */
static json_t *rows_of(const gb_row *rows, size_t count, gb_arena *arena);

static json_t *value_of(const gb_figure *f, gb_arena *arena) {
    gb_text clean;
    switch (f->show) {
    case GB_SHOW_TEXT:
        gb_text_init(&clean, arena);
        gb_text_add_clean(&clean, f->text == NULL ? "" : f->text);
        return json_string(gb_text_get(&clean));
    case GB_SHOW_ROWS:
        return rows_of(f->rows, f->row_count, arena);
    case GB_SHOW_MONEY:
        return json_integer(f->money.minor);
    case GB_SHOW_COUNT:
        return json_integer((json_int_t)f->value);
    default:
        return isfinite(f->value) ? json_real(f->value) : json_null();
    }
}

static json_t *row_of(const gb_row *row, gb_arena *arena) {
    json_t *object = json_pack("{s:s}", "row", gb_row_name(row->code));
    bool good = object != NULL;
    for (size_t i = 0; i < row->count && good; i++) {
        gb_text key;
        gb_text_init(&key, arena);
        if (gb_figure_key(&row->figures[i], &key))
            good = json_object_set_new(object, gb_text_get(&key),
                                       value_of(&row->figures[i], arena)) == 0;
    }
    if (good)
        return object;
    json_decref(object);
    return NULL;
}

/* Rows nest one or two deep, never into themselves. */
static json_t *rows_of(const gb_row *rows, size_t count, gb_arena *arena) {
    json_t *list = json_array();
    bool good = list != NULL;
    for (size_t i = 0; i < count && good; i++)
        good = json_array_append_new(list, row_of(&rows[i], arena)) == 0;
    if (good)
        return list;
    json_decref(list);
    return NULL;
}

static json_t *blocks_of(const gb_sheet *sheet, gb_arena *arena) {
    json_t *list = json_array();
    bool good = list != NULL;
    for (size_t i = 0; i < sheet->count && good; i++) {
        json_t *rows = rows_of(sheet->blocks[i].rows, sheet->blocks[i].count, arena);
        good = json_array_append_new(list, json_pack("{s:o}", "rows", rows)) == 0;
    }
    if (good)
        return list;
    json_decref(list);
    return NULL;
}

static int add_chunk(const char *bytes, size_t count, void *to) {
    gb_text *text = to;
    gb_text_add_bytes(text, bytes, count);
    return text->failed ? -1 : 0;
}

gb_status gb_dump_json(json_t *root, const char *language, const char *kind,
                       gb_text *to) {
    static const size_t FLAGS = JSON_INDENT(1) | JSON_REAL_PRECISION(12);
    json_t *head =
        json_pack("{s:i, s:s, s:s, s:s, s:s}", "format", 1, "program", "gaugebox",
                  "version", gb_version(), "language", language, "kind", kind);
    bool good = head != NULL && root != NULL && json_object_update(head, root) == 0 &&
                json_dump_callback(head, add_chunk, to, FLAGS) == 0;
    json_decref(root);
    json_decref(head);
    gb_text_add(to, "\n");
    return good && !to->failed ? GB_OK : GB_NO_MEMORY;
}

gb_status gb_write_json(const gb_sheet *sheet, gb_text *to) {
    json_t *blocks = blocks_of(sheet, to->arena);
    return gb_dump_json(json_pack("{s:o}", "blocks", blocks), sheet->language,
                        sheet->kind, to);
}

const char *gb_clean_copy(const char *text, gb_arena *arena) {
    gb_text shown;
    gb_text_init(&shown, arena);
    gb_text_add_clean(&shown, text);
    return gb_text_get(&shown);
}

static json_t *good_jobs(const gb_good_job *jobs, size_t count, gb_arena *arena) {
    json_t *list = json_array();
    for (size_t i = 0; i < count && list != NULL; i++) {
        json_t *one =
            json_pack("{s:s, s:I, s:I, s:I}", "file", gb_clean_copy(jobs[i].file, arena),
                      "pieces", (json_int_t)jobs[i].pieces, "layers",
                      (json_int_t)jobs[i].layers, "mixes", (json_int_t)jobs[i].mixes);
        if (json_array_append_new(list, one) != 0) {
            json_decref(list);
            return NULL;
        }
    }
    return list;
}

static json_t *faults_of(const gb_diags *diags, gb_arena *arena) {
    json_t *list = json_array();
    for (size_t i = 0; i < diags->count && list != NULL; i++) {
        const gb_diag *d = &diags->list[i];
        json_t *one = json_pack("{s:s, s:i, s:s}", "file", gb_clean_copy(d->file, arena),
                                "line", d->line, "text", gb_clean_copy(d->text, arena));
        if (json_array_append_new(list, one) != 0) {
            json_decref(list);
            return NULL;
        }
    }
    return list;
}

gb_status gb_write_check_json(const gb_good_job *jobs, size_t job_count, gb_diags *diags,
                              const char *language, gb_text *to) {
    gb_diags_sort(diags);
    json_t *good = good_jobs(jobs, job_count, to->arena);
    json_t *faults = faults_of(diags, to->arena);
    json_t *root = json_pack("{s:o, s:o, s:I}", "jobs", good, "faults", faults,
                             "more_faults", (json_int_t)diags->more);
    return gb_dump_json(root, language, "check", to);
}
