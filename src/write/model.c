#include "write/model.h"

#include "gaugebox/digest.h"

#include <string.h>

void gb_builder_init(gb_builder *b, gb_style style, gb_arena *arena) {
    *b = (gb_builder){.arena = arena, .style = style};
}

/* Doubles a list; the blocks point into rows by index until the sheet is finished. */
static void *grow(gb_builder *b, const void *list, size_t count, size_t *room,
                  size_t size) {
    size_t larger = *room * 2 + 64;
    void *copy = gb_arena_take(b->arena, larger, size);
    if (copy == NULL) {
        b->failed = true;
        return NULL;
    }
    if (count > 0)
        memcpy(copy, list, count * size);
    *room = larger;
    return copy;
}

static const gb_about *keep_about(gb_builder *b) {
    gb_about *copy = gb_arena_take(b->arena, 1, sizeof *copy);
    if (copy == NULL)
        b->failed = true;
    else
        *copy = b->about;
    return copy;
}

gb_row gb_make_row(gb_builder *b, gb_row_code code, const gb_figure *figures,
                   size_t count) {
    gb_row row = {.code = code, .figures = NULL, .count = count};
    if (b->style.explained)
        row.about = keep_about(b);
    if (count == 0)
        return row;
    gb_figure *copy = gb_arena_take(b->arena, count, sizeof *copy);
    if (copy == NULL) {
        b->failed = true;
        row.count = 0;
        return row;
    }
    memcpy(copy, figures, count * sizeof *copy);
    row.figures = copy;
    return row;
}

void gb_add_row(gb_builder *b, gb_row_code code, const gb_figure *figures, size_t count) {
    if (b->failed)
        return;
    if (b->row_count == b->row_room) {
        gb_row *larger = grow(b, b->rows, b->row_count, &b->row_room, sizeof *b->rows);
        if (larger == NULL)
            return;
        b->rows = larger;
    }
    b->rows[b->row_count++] = gb_make_row(b, code, figures, count);
}

void gb_end_block(gb_builder *b) {
    if (b->failed)
        return;
    if (b->block_count == b->block_room) {
        gb_block *larger =
            grow(b, b->blocks, b->block_count, &b->block_room, sizeof *b->blocks);
        if (larger == NULL)
            return;
        b->blocks = larger;
    }
    b->blocks[b->block_count++].count = b->row_count - b->block_start;
    b->block_start = b->row_count;
}

gb_status gb_finish_sheet(gb_builder *b, const char *kind, gb_sheet *sheet) {
    if (b->failed)
        return GB_NO_MEMORY;
    size_t at = 0;
    for (size_t i = 0; i < b->block_count; i++) {
        b->blocks[i].rows = &b->rows[at];
        at += b->blocks[i].count;
    }
    *sheet =
        (gb_sheet){kind, b->style.system, b->style.language, b->blocks, b->block_count};
    return GB_OK;
}

gb_figure gb_num(const char *name, gb_show show, double value) {
    return (gb_figure){.name = name, .show = show, .value = value};
}

gb_figure gb_num_down(const char *name, gb_show show, double value) {
    return (gb_figure){.name = name, .show = show, .rounding = GB_DOWN, .value = value};
}

gb_figure gb_num_up(const char *name, gb_show show, double value) {
    return (gb_figure){.name = name, .show = show, .rounding = GB_UP, .value = value};
}

gb_figure gb_txt(const char *name, const char *text) {
    return (gb_figure){.name = name, .show = GB_SHOW_TEXT, .text = text};
}

gb_figure gb_mark(const char *name, const char *text) {
    return (gb_figure){.name = name, .show = GB_SHOW_MARK, .text = text};
}

gb_figure gb_words_fig(const gb_builder *b, const char *name, const gb_words *words) {
    return gb_txt(name, gb_words_in(words, b->style.language));
}

gb_figure gb_rows_fig(gb_builder *b, const char *name, const gb_row *rows, size_t count) {
    gb_figure figure = {
        .name = name, .show = GB_SHOW_ROWS, .row_count = count, .join = ", "};
    gb_row *copy = gb_arena_take(b->arena, count + 1, sizeof *copy);
    if (copy == NULL) {
        b->failed = true;
        figure.row_count = 0;
        return figure;
    }
    if (count > 0)
        memcpy(copy, rows, count * sizeof *copy);
    figure.rows = copy;
    return figure;
}

gb_figure gb_row_fig(gb_builder *b, const char *name, gb_row row) {
    return gb_rows_fig(b, name, &row, 1);
}

gb_figure gb_moment_fig(gb_builder *b, const char *name, gb_moment at, int offset_s) {
    gb_text text;
    gb_text_init(&text, b->arena);
    gb_print_moment(&text, at, offset_s);
    b->failed = b->failed || text.failed;
    return gb_txt(name, gb_text_get(&text));
}

gb_figure gb_number_fig(gb_builder *b, const char *name, uint64_t digest) {
    char number[GB_NUMBER_DIGITS + 1];
    gb_digest_print(digest, number);
    const char *copy = gb_arena_copy(b->arena, number);
    if (copy == NULL)
        b->failed = true;
    return gb_txt(name, copy);
}

const gb_row *gb_number_row(const gb_sheet *sheet) {
    for (size_t i = 0; i < sheet->count; i++)
        for (size_t k = 0; k < sheet->blocks[i].count; k++) {
            const gb_row *row = &sheet->blocks[i].rows[k];
            if (row->code == GB_ROW_PLAN || row->code == GB_ROW_LIST_NUMBER ||
                row->code == GB_ROW_CHANGE_PLANS)
                return row;
        }
    return NULL;
}

gb_figure gb_money_fig(const char *name, gb_money money, int decimals) {
    return (gb_figure){
        .name = name, .show = GB_SHOW_MONEY, .money = money, .decimals = decimals};
}

gb_row gb_kind_row(gb_builder *b, gb_layer_kind kind) {
    static const gb_row_code KINDS[] = {[GB_BED] = GB_ROW_KIND_BED,
                                        [GB_SLURRY] = GB_ROW_KIND_SLURRY,
                                        [GB_JOINT] = GB_ROW_KIND_JOINT,
                                        [GB_POINTING] = GB_ROW_KIND_POINTING,
                                        [GB_SLAB] = GB_ROW_KIND_SLAB,
                                        [GB_CORE] = GB_ROW_KIND_CORE,
                                        [GB_PARGE] = GB_ROW_KIND_PARGE,
                                        [GB_BLOCK] = GB_ROW_KIND_BLOCK,
                                        [GB_VOLUME_LAYER] = GB_ROW_KIND_VOLUME};
    _Static_assert(sizeof KINDS / sizeof KINDS[0] == GB_LAYER_KINDS, "a row for each");
    return gb_make_row(b, KINDS[kind], NULL, 0);
}

gb_figure gb_uses_fig(gb_builder *b, unsigned uses) {
    gb_row rows[GB_LAYER_KINDS];
    size_t n = 0;
    for (unsigned k = 0; k < GB_LAYER_KINDS; k++)
        if (uses & (1u << k))
            rows[n++] = gb_kind_row(b, (gb_layer_kind)k);
    return gb_rows_fig(b, "uses", rows, n);
}

gb_row gb_shape_row(gb_builder *b, gb_shape_kind kind) {
    static const gb_row_code SHAPES[] = {
        [GB_RECTANGLE] = GB_ROW_SHAPE_RECTANGLE, [GB_TRAPEZOID] = GB_ROW_SHAPE_TRAPEZOID,
        [GB_TRIANGLE] = GB_ROW_SHAPE_TRIANGLE,   [GB_CIRCLE] = GB_ROW_SHAPE_CIRCLE,
        [GB_CURVED] = GB_ROW_SHAPE_CURVED,       [GB_WINDER] = GB_ROW_SHAPE_WINDER,
        [GB_POLYGON] = GB_ROW_SHAPE_POLYGON};
    _Static_assert(sizeof SHAPES / sizeof SHAPES[0] == GB_SHAPE_KINDS, "a row for each");
    return gb_make_row(b, SHAPES[kind], NULL, 0);
}

const char *gb_row_name(gb_row_code code) {
    static const char *const NAMES[] = {
#define GB_ROW(code, label, words) #code,
#include "gaugebox/rows.def"
#undef GB_ROW
    };
    return NAMES[code];
}
