/* How wide a text is on a terminal, and where a line of it ends. */
#ifndef WORDS_COLUMNS_H
#define WORDS_COLUMNS_H

#include <stddef.h>

/* Columns that `length` bytes of UTF-8 take: two for a wide sign, none for a mark that
   stands on the sign before it. */
size_t gb_columns(const char *text, size_t length);

/* How many bytes of `text` fit into `room` columns: up to its line end, the last space
   before the room is full, or a hard cut when one word is wider than that. At least one
   sign always fits, so that a text comes to its end. */
size_t gb_fitting(const char *text, size_t room);

#endif
