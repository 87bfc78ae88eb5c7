#include "write/figures.h"
#include "write/model.h"
#include "write/text.h"

#include <string.h>

/* Which rows of which sheet are lines of a table. */
static const struct {
    const char *kind;
    gb_row_code code;
} LINES[] = {
    {"takeoff", GB_ROW_LAYER_LAID},
    {"takeoff", GB_ROW_LAYER_VOLUME},
    {"takeoff", GB_ROW_WALL_BLOCKS},
    {"takeoff", GB_ROW_CORE_BLOCKS},
    {"takeoff", GB_ROW_SUPPLY_BLOCKS},
    {"takeoff", GB_ROW_LOOSE_LAID},
    {"takeoff", GB_ROW_LOOSE_FILLED},
    {"takeoff", GB_ROW_LOOSE_DUG},
    {"takeoff", GB_ROW_LOOSE_DUG_VOLUME},
    {"takeoff", GB_ROW_LOOSE_CLOTH},
    {"takeoff", GB_ROW_LOOSE_ROD},
    {"takeoff", GB_ROW_LOOSE_SEALANT},
    {"takeoff", GB_ROW_STONE_LINE},
    {"takeoff", GB_ROW_LAYER_TOTAL},
    {"day", GB_ROW_DAY_BATCH},
    {"day", GB_ROW_DAY_POT},
    {"change", GB_ROW_CHANGE_COUNT},
    {"change", GB_ROW_CHANGE_FIRST},
    {"change", GB_ROW_CHANGE_RISER},
    {"change", GB_ROW_CHANGE_LEFT},
    {"change", GB_ROW_CHANGE_MISSED},
    {"change", GB_ROW_CHANGE_BEDDED},
    {"change", GB_ROW_CHANGE_LAYER},
    {"change", GB_ROW_CHANGE_LOOSE},
    {"change", GB_ROW_CHANGE_STONE},
    {"change", GB_ROW_CHANGE_NET},
    {"change", GB_ROW_CHANGE_GROSS},
    {"change", GB_ROW_CHANGE_BAGS},
    {"change", GB_ROW_CHANGE_SUPPLY},
    {"change", GB_ROW_CHANGE_PACKS},
    {"change", GB_ROW_CHANGE_WATER},
    {"change", GB_ROW_CHANGE_CARRIED},
    {"change", GB_ROW_CHANGE_BUY},
    {"change", GB_ROW_CHANGE_COST},
    {"change", GB_ROW_CHANGE_GOODS},
    {"change", GB_ROW_CHANGE_TAX},
    {"change", GB_ROW_CHANGE_DELIVERY},
    {"change", GB_ROW_CHANGE_TOTAL},
    {"concrete", GB_ROW_CONCRETE_CEMENT},
    {"concrete", GB_ROW_CONCRETE_PART},
    {"concrete", GB_ROW_CONCRETE_WATER},
    {"concrete", GB_ROW_CONCRETE_AIR},
    {"concrete", GB_ROW_CONCRETE_SUM},
    {"steps", GB_ROW_CHOICE},
    {"steps", GB_ROW_POLE_MARK},
    {"steps", GB_ROW_POLE_MARK_STAFF},
    {"price", GB_ROW_BUY},
    {"price", GB_ROW_NOT_SOLD},
    {"price", GB_ROW_GOODS},
    {"price", GB_ROW_TAX},
    {"price", GB_ROW_DELIVERY},
    {"price", GB_ROW_TOTAL},
    {"price", GB_ROW_TOTAL_WITHOUT},
};

enum { MOST_COLUMNS = 64 };

typedef struct table {
    const char *names[MOST_COLUMNS];
    size_t count;
    const char *number; /* of the plan or the list */
    bool failed;
} table;

static bool is_line(const gb_sheet *sheet, const gb_row *row) {
    for (size_t i = 0; i < sizeof LINES / sizeof LINES[0]; i++)
        if (LINES[i].code == row->code && strcmp(LINES[i].kind, sheet->kind) == 0)
            return true;
    return false;
}

static const char *key_of(const gb_figure *figure, gb_arena *arena) {
    gb_text key;
    gb_text_init(&key, arena);
    return gb_figure_key(figure, &key) ? gb_text_get(&key) : NULL;
}

/* A column for every figure of every line, in the order in which they first come. */
static void add_columns(table *t, const gb_row *row, gb_arena *arena) {
    for (size_t i = 0; i < row->count; i++) {
        const char *key = key_of(&row->figures[i], arena);
        if (key == NULL)
            continue;
        size_t k = 0;
        while (k < t->count && strcmp(t->names[k], key) != 0)
            k++;
        if (k < t->count)
            continue;
        if (t->count == MOST_COLUMNS)
            t->failed = true;
        else
            t->names[t->count++] = key;
    }
}

/* RFC 4180: quoted when it holds a comma, a quote or a line end. What a spreadsheet takes
   for a formula gets a ' first. */
static void add_text_cell(gb_text *to, const char *text) {
    bool formula = strchr("=+-@", text[0]) != NULL && text[0] != '\0';
    bool quoted = formula || text[strcspn(text, ",\"\r\n")] != '\0';
    gb_text_add(to, quoted ? "\"" : "");
    gb_text_add(to, formula ? "'" : "");
    for (const char *c = text; *c != '\0'; c++)
        gb_text_add_bytes(to, *c == '"' ? "\"\"" : c, *c == '"' ? 2 : 1);
    gb_text_add(to, quoted ? "\"" : "");
}

static void add_cell(gb_text *to, const gb_figure *f, const gb_sheet *sheet) {
    gb_text shown;
    gb_text_init(&shown, to->arena);
    switch (f->show) {
    case GB_SHOW_TEXT:
        gb_text_add_clean(&shown, f->text == NULL ? "" : f->text);
        add_text_cell(to, gb_text_get(&shown));
        break;
    case GB_SHOW_ROWS:
        for (size_t i = 0; i < f->row_count; i++) {
            gb_text_add(&shown, i > 0 ? f->join : "");
            gb_expand_row(&f->rows[i], sheet, &shown);
        }
        add_text_cell(to, gb_text_get(&shown));
        break;
    case GB_SHOW_MONEY:
        gb_text_add_int(to, f->money.minor);
        break;
    case GB_SHOW_COUNT:
        gb_text_add_fixed(to, f->value, 0);
        break;
    default:
        gb_text_add_fixed(to, f->value, 6);
        break;
    }
    to->failed = to->failed || shown.failed;
}

static void add_line(gb_text *to, const table *t, const gb_row *row,
                     const gb_sheet *sheet) {
    add_text_cell(to, t->number);
    gb_text_add(to, ",");
    gb_text_add(to, gb_row_name(row->code));
    for (size_t k = 0; k < t->count; k++) {
        gb_text_add(to, ",");
        for (size_t i = 0; i < row->count; i++) {
            const char *key = key_of(&row->figures[i], to->arena);
            if (key != NULL && strcmp(key, t->names[k]) == 0)
                add_cell(to, &row->figures[i], sheet);
        }
    }
    gb_text_add(to, "\r\n");
}

/* The tabular rows of a sheet, one by one; NULL behind the last. */
typedef struct lines {
    const gb_sheet *sheet;
    size_t block, row;
} lines;

static const gb_row *next_row(lines *l) {
    while (l->block < l->sheet->count && l->row == l->sheet->blocks[l->block].count) {
        l->block++;
        l->row = 0;
    }
    return l->block < l->sheet->count ? &l->sheet->blocks[l->block].rows[l->row++] : NULL;
}

static void find_columns(table *t, const gb_sheet *sheet, gb_arena *arena) {
    const gb_row *number = gb_number_row(sheet);
    if (number != NULL)
        t->number = number->figures[0].text;
    lines l = {.sheet = sheet};
    for (const gb_row *row = next_row(&l); row != NULL; row = next_row(&l))
        if (is_line(sheet, row))
            add_columns(t, row, arena);
}

gb_status gb_write_csv(const gb_sheet *sheet, gb_text *to) {
    table t = {.count = 0, .number = ""};
    find_columns(&t, sheet, to->arena);
    if (t.failed || t.count == 0)
        return GB_IMPOSSIBLE;
    gb_text_add(to, "plan,row");
    for (size_t k = 0; k < t.count; k++) {
        gb_text_add(to, ",");
        gb_text_add(to, t.names[k]);
    }
    gb_text_add(to, "\r\n");
    lines l = {.sheet = sheet};
    for (const gb_row *row = next_row(&l); row != NULL; row = next_row(&l))
        if (is_line(sheet, row))
            add_line(to, &t, row, sheet);
    return to->failed ? GB_NO_MEMORY : GB_OK;
}
