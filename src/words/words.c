#include "words/words.h"

#include "words/columns.h"

#include <libintl.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

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

void gb_add_wrapped(gb_text *to, const char *text, size_t indent, size_t hang) {
    for (size_t line = 0; line == 0 || *text != '\0'; line++) {
        size_t margin = line == 0 ? indent : indent + hang;
        size_t n = gb_fitting(text, GB_COLUMNS - margin);
        gb_text_add_repeated(to, ' ', margin);
        gb_text_add_bytes(to, text, n);
        gb_text_add(to, "\n");
        text += n;
        text += strspn(text, " ");
    }
}
