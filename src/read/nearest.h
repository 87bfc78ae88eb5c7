/* The known word nearest to one that is not known. */
#ifndef READ_NEAREST_H
#define READ_NEAREST_H

#include "gaugebox/base.h"

/* How many letters must be changed, added, dropped or swapped to make a into b, up to
   `most` (then most + 1). */
size_t gb_distance(const char *a, const char *b, size_t most);

/* Keeps the best of the candidates offered; NULL when none is near enough: at most two
   changes, and fewer than half of the letters. */
typedef struct gb_nearest {
    const char *word;
    const char *best;
    size_t distance;
} gb_nearest;

void gb_nearest_init(gb_nearest *nearest, const char *word);
void gb_nearest_offer(gb_nearest *nearest, const char *candidate);

#endif
