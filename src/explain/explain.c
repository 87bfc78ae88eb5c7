#include "gaugebox/explain.h"

#include "explain/figures.h"
#include "explain/why.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

/* The walk over a sheet. */
typedef struct walk {
    gb_explainer x;
    gb_explained *list;
    size_t count, room;
    size_t block;
    size_t first_bad; /* the figure's place in the list, counted from 1; 0: none */
    int decimals;
} walk;

static gb_explained *next_figure(walk *w) {
    if (w->count == w->room) {
        size_t room = w->room * 2 + 256;
        gb_explained *larger = gb_arena_take(w->x.arena, room, sizeof *larger);
        if (larger == NULL) {
            w->x.failed = true;
            return NULL;
        }
        if (w->count > 0)
            memcpy(larger, w->list, w->count * sizeof *larger);
        w->list = larger;
        w->room = room;
    }
    return &w->list[w->count++];
}

static double value_of(const gb_figure *f) {
    return f->show == GB_SHOW_MONEY ? (double)f->money.minor : f->value;
}

static bool is_explained(const gb_row *row, const gb_figure *f) {
    switch (f->show) {
    case GB_SHOW_TEXT:
    case GB_SHOW_MARK:
    case GB_SHOW_ROWS:
    case GB_SHOW_WATER_UNITS:
    case GB_SHOW_MM:
    case GB_SHOW_KG_M3: /* the same beside it in lb/yd3 */
        return false;
    default:
        return isfinite(value_of(f)) && !gb_only_counts(row, f);
    }
}

/* The same but for what sums in another order leave. */
static bool agree(double a, double b) {
    return fabs(a - b) <= GB_SAME * gb_larger(1e-3, gb_larger(fabs(a), fabs(b)));
}

/* A row, the one that holds it, and the one of the sheet that holds both. */
typedef struct nest {
    const gb_row *row, *outer, *top;
} nest;

static void explain_figure(walk *w, nest n, const gb_figure *f) {
    const gb_why *why = gb_why_figure(&w->x, n.row, n.outer, f);
    gb_explained *e = next_figure(w);
    if (e == NULL || w->x.failed)
        return;
    *e = (gb_explained){n.row, n.top, f, why, w->block};
    bool good = why != NULL && agree(why->value, value_of(f));
    if (!good && w->first_bad == 0)
        w->first_bad = w->count;
    if (f->show == GB_SHOW_MONEY)
        w->decimals = f->decimals;
}

/* Rows nest two deep, never into themselves. */
static void explain_row(walk *w, nest n) {
    for (size_t i = 0; i < n.row->count && !w->x.failed; i++) {
        const gb_figure *f = &n.row->figures[i];
        if (is_explained(n.row, f))
            explain_figure(w, n, f);
        for (size_t k = 0; f->show == GB_SHOW_ROWS && k < f->row_count; k++)
            explain_row(w, (nest){&f->rows[k], n.row, n.top});
    }
}

gb_status gb_explain(const gb_sheet *sheet, gb_places *places, gb_arena *arena,
                     gb_explanation *explanation) {
    walk w = {.count = 0};
    if (gb_explainer_init(&w.x, places, (gb_style){sheet->system, sheet->language, true},
                          arena) != GB_OK)
        return GB_NO_MEMORY;
    for (size_t i = 0; i < sheet->count; i++) {
        w.block = i;
        for (size_t k = 0; k < sheet->blocks[i].count; k++) {
            const gb_row *row = &sheet->blocks[i].rows[k];
            explain_row(&w, (nest){row, row, row});
        }
    }
    if (w.x.failed || places->failed)
        return GB_NO_MEMORY;
    *explanation = (gb_explanation){.sheet = sheet,
                                    .figures = w.list,
                                    .figure_count = w.count,
                                    .whys = w.x.list,
                                    .why_count = w.x.count,
                                    .decimals = w.decimals};
    if (w.first_bad > 0)
        explanation->unexplained = &w.list[w.first_bad - 1];
    return GB_OK;
}
