#include "read/diag.h"

#include "words/words.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

void gb_diags_init(gb_diags *diags, gb_arena *arena) {
    *diags = (gb_diags){.arena = arena};
}

size_t gb_diags_count(const gb_diags *diags) {
    return diags->count + diags->more;
}

bool gb_diags_any(const gb_diags *diags) {
    return gb_diags_count(diags) > 0 || diags->no_memory;
}

void gb_report(gb_diags *diags, const char *file, int line, const char *format, ...) {
    if (diags->count == GB_MOST_DIAGS) {
        diags->more++;
        return;
    }
    va_list args;
    va_list again;
    va_start(args, format);
    va_copy(again, args);
    const char *words = gb_tr(format);
    // NOLINTNEXTLINE(clang-analyzer-valist.Uninitialized) va_start is just above
    int n = vsnprintf(NULL, 0, words, args);
    va_end(args);
    char *copy = n < 0 ? NULL : gb_arena_take(diags->arena, (size_t)n + 1, 1);
    if (copy != NULL)
        (void)vsnprintf(copy, (size_t)n + 1, words, again);
    va_end(again);
    char *name = gb_arena_copy(diags->arena, file);
    if (copy == NULL || name == NULL) {
        diags->no_memory = true;
        return;
    }
    diags->list[diags->count++] = (gb_diag){name, line, copy, 0};
}

/* Faults are few and come nearly sorted: insertion keeps equal lines in order. Files
   keep the order in which they were first named. */
static size_t rank_of(const gb_diags *diags, const char *file) {
    size_t i = 0;
    while (i < diags->count && strcmp(diags->list[i].file, file) != 0)
        i++;
    return i;
}

void gb_diags_sort(gb_diags *diags) {
    for (size_t i = 0; i < diags->count; i++)
        diags->list[i].rank = rank_of(diags, diags->list[i].file);
    for (size_t i = 1; i < diags->count; i++) {
        gb_diag moving = diags->list[i];
        size_t at = i;
        for (; at > 0; at--) {
            const gb_diag *other = &diags->list[at - 1];
            if (other->rank < moving.rank ||
                (other->rank == moving.rank && other->line <= moving.line))
                break;
            diags->list[at] = *other;
        }
        diags->list[at] = moving;
    }
}

void gb_diags_print(gb_diags *diags, gb_text *to) {
    gb_diags_sort(diags);
    for (size_t i = 0; i < diags->count; i++) {
        gb_text_add_clean(to, diags->list[i].file);
        if (diags->list[i].line > 0) {
            gb_text_add(to, ":");
            gb_text_add_int(to, diags->list[i].line);
        }
        gb_add_format(to, ": %s: ", gb_tr("error"));
        gb_text_add_clean(to, diags->list[i].text);
        gb_text_add(to, "\n");
    }
    if (diags->more > 0)
        gb_add_format(to,
                      gb_tr_count("and %zu more fault\n", "and %zu more faults\n",
                                  (unsigned long)diags->more),
                      diags->more);
    if (diags->no_memory)
        gb_text_add(to, gb_tr("error: out of memory\n"));
}
