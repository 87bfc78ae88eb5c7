/* The program's words in the language of the run, through gettext. English is what stands
   in the sources; without a language chosen nothing is looked up anywhere. */
#ifndef WORDS_WORDS_H
#define WORDS_WORDS_H

#include "gaugebox/text.h"
#include "words/mark.h"

/* The name of the catalogs, gaugebox.mo. */
#define GB_DOMAIN "gaugebox"

#if defined(__GNUC__)
#define GB_LIKE_FORMAT(n)         __attribute__((format_arg(n)))
#define GB_TAKES_FORMAT(at, from) __attribute__((format(printf, at, from)))
#else
#define GB_LIKE_FORMAT(n)
#define GB_TAKES_FORMAT(at, from)
#endif

/* The words in the language of the run; "" stays "". */
GB_LIKE_FORMAT(1) const char *gb_tr(const char *words);

/* The same for words that come with a count: `one` and `many` are the two English forms,
   other languages have as many as they need. */
GB_LIKE_FORMAT(1)
GB_LIKE_FORMAT(2)
const char *gb_tr_count(const char *one, const char *many, unsigned long count);

/* Adds what a format makes; places are %s, %d and %zu as printf has them, and %1$s where
   a translation turns them round. */
GB_TAKES_FORMAT(2, 3) void gb_add_format(gb_text *to, const char *format, ...);

/* Lines of a page that is GB_COLUMNS wide: `text` behind an indent, broken between words,
   the second line and those after it `hang` columns deeper. */
enum { GB_COLUMNS = 80 };
void gb_add_wrapped(gb_text *to, const char *text, size_t indent, size_t hang);

#endif
