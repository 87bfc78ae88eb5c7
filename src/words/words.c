#include "words/words.h"

#include <libintl.h>
#include <stdarg.h>
#include <stdio.h>

const char *gb_tr(const char *words) {
    /* gettext answers "" with the head of the catalog. */
    return words[0] == '\0' ? words : dgettext(GB_DOMAIN, words);
}

const char *gb_tr_count(const char *one, const char *many, unsigned long count) {
    return dngettext(GB_DOMAIN, one, many, count);
}

void gb_add_format(gb_text *to, const char *format, ...) {
    va_list args;
    va_list again;
    va_start(args, format);
    va_copy(again, args);
    // NOLINTNEXTLINE(clang-analyzer-valist.Uninitialized) va_start is just above
    int n = vsnprintf(NULL, 0, format, args);
    va_end(args);
    char *made = n < 0 ? NULL : gb_arena_take(to->arena, (size_t)n + 1, 1);
    if (made != NULL) {
        (void)vsnprintf(made, (size_t)n + 1, format, again);
        gb_text_add(to, made);
    }
    va_end(again);
    to->failed = to->failed || made == NULL;
}
