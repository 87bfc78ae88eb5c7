/* A text that grows in an arena, and numbers printed without the machine's locale. */
#ifndef GAUGEBOX_TEXT_H
#define GAUGEBOX_TEXT_H

#include "gaugebox/arena.h"

/* `failed` stays true once memory ran out; the text is then cut and must not be used. */
typedef struct gb_text {
    gb_arena *arena;
    char *data; /* always ends in NUL once anything was added; NULL before */
    size_t length;
    size_t room;
    bool failed;
} gb_text;

void gb_text_init(gb_text *text, gb_arena *arena);
void gb_text_add(gb_text *text, const char *more);
void gb_text_add_bytes(gb_text *text, const char *more, size_t count);
void gb_text_add_char(gb_text *text, char c);
void gb_text_add_repeated(gb_text *text, char c, size_t count);
/* The text so far; "" while it is empty. */
const char *gb_text_get(const gb_text *text);

/* A text of a user's, with a ? for each sign that steers a terminal (ASCII and C1
   controls) or turns the direction of writing (U+202A to 202E, U+2066 to 2069). */
void gb_text_add_clean(gb_text *text, const char *more);

/* The length of `text`, or so many bytes of it, at most `most`, that no UTF-8 sign is cut
   in half. As int, for the places of printf that take a length. */
int gb_cut(const char *text, int most);

/* A whole number in decimal. */
void gb_text_add_int(gb_text *text, int64_t value);

/* value rounded half away from zero to `decimals` (0 to 9) places, a half counting as one
   when a sum has left it a hair (1e-12 of it) below. Beyond 9e15 after scaling, and for a
   NaN or an infinity, it prints "?". */
void gb_text_add_fixed(gb_text *text, double value, int decimals);

/* value in whole and parts, as 4-1/2; `parts` is 2, 4, 8, 16 or 32, value already rounded
   to a multiple of 1/parts (see gb_round). Fractions come in lowest terms. */
void gb_text_add_fraction(gb_text *text, double value, int parts);

#endif
