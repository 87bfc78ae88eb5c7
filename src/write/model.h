/* Building a sheet: rows are added to the block in hand. */
#ifndef WRITE_MODEL_H
#define WRITE_MODEL_H

#include "gaugebox/sheet.h"

typedef struct gb_builder {
    gb_arena *arena;
    gb_style style;
    gb_about about; /* of the rows that are made from now on */
    gb_row *rows;
    size_t row_count, row_room;
    size_t block_start;
    gb_block *blocks;
    size_t block_count, block_room;
    bool failed;
} gb_builder;

void gb_builder_init(gb_builder *b, gb_style style, gb_arena *arena);
void gb_add_row(gb_builder *b, gb_row_code code, const gb_figure *figures, size_t count);
/* Ends the block in hand. */
void gb_end_block(gb_builder *b);
gb_status gb_finish_sheet(gb_builder *b, const char *kind, gb_sheet *sheet) GB_MUST_USE;

/* A row that is part of another one. */
gb_row gb_make_row(gb_builder *b, gb_row_code code, const gb_figure *figures,
                   size_t count);

#define GB_FIGURES(...)                                                                  \
    (const gb_figure[]){__VA_ARGS__},                                                    \
        sizeof((const gb_figure[]){__VA_ARGS__}) / sizeof(gb_figure)
#define GB_ADD(b, code, ...)  gb_add_row((b), GB_ROW_##code, GB_FIGURES(__VA_ARGS__))
#define GB_ADD_BARE(b, code)  gb_add_row((b), GB_ROW_##code, NULL, 0)
#define GB_MAKE(b, code, ...) gb_make_row((b), GB_ROW_##code, GB_FIGURES(__VA_ARGS__))
#define GB_MAKE_BARE(b, code) gb_make_row((b), GB_ROW_##code, NULL, 0)

/* Figures. */
gb_figure gb_num(const char *name, gb_show show, double value);
gb_figure gb_num_down(const char *name, gb_show show, double value);
gb_figure gb_num_up(const char *name, gb_show show, double value);
gb_figure gb_txt(const char *name, const char *text);
gb_figure gb_mark(const char *name, const char *text);
gb_figure gb_words_fig(const gb_builder *b, const char *name, const gb_words *words);
gb_figure gb_rows_fig(gb_builder *b, const char *name, const gb_row *rows, size_t count);
gb_figure gb_row_fig(gb_builder *b, const char *name, gb_row row);
gb_figure gb_number_fig(gb_builder *b, const char *name, uint64_t digest);
/* A moment, as clocks at that offset show it. */
gb_figure gb_moment_fig(gb_builder *b, const char *name, gb_moment at, int offset_s);
/* The row that bears the number of the plan or of the list; NULL when a sheet has none.
 */
const gb_row *gb_number_row(const gb_sheet *sheet);
/* What a kind of layer is called. */
gb_row gb_kind_row(gb_builder *b, gb_layer_kind kind);
/* The layers that those bits stand for, as the figure "uses". */
gb_figure gb_uses_fig(gb_builder *b, unsigned uses);

/* "curved". */
gb_row gb_shape_row(gb_builder *b, gb_shape_kind kind);

gb_figure gb_money_fig(const char *name, gb_money money, int decimals);

#endif
