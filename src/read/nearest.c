#include "read/nearest.h"

#include "gaugebox/read.h"

#include <string.h>

enum { LONGEST = 63 };

static size_t least_of(size_t a, size_t b) {
    return a < b ? a : b;
}

/* Optimal string alignment, three rows at a time. */
size_t gb_distance(const char *a, const char *b, size_t most) {
    size_t n = strlen(a);
    size_t m = strlen(b);
    if (n > LONGEST || m > LONGEST || n > m + most || m > n + most)
        return most + 1;
    size_t rows[3][LONGEST + 1] = {{0}};
    for (size_t k = 0; k <= m; k++)
        rows[0][k] = k;
    for (size_t i = 1; i <= n; i++) {
        size_t *now = rows[i % 3];
        const size_t *up = rows[(i + 2) % 3];
        const size_t *up2 = rows[(i + 1) % 3];
        now[0] = i;
        for (size_t k = 1; k <= m; k++) {
            size_t swap = up[k - 1] + (a[i - 1] == b[k - 1] ? 0 : 1);
            now[k] = least_of(swap, least_of(up[k], now[k - 1]) + 1);
            if (i > 1 && k > 1 && a[i - 1] == b[k - 2] && a[i - 2] == b[k - 1])
                now[k] = least_of(now[k], up2[k - 2] + 1);
        }
    }
    return least_of(rows[n % 3][m], most + 1);
}

void gb_nearest_init(gb_nearest *nearest, const char *word) {
    *nearest = (gb_nearest){.word = word, .best = NULL, .distance = 3};
}

void gb_nearest_offer(gb_nearest *nearest, const char *candidate) {
    size_t d = gb_distance(nearest->word, candidate, 2);
    if (d < nearest->distance && 2 * d < strlen(candidate)) {
        nearest->best = candidate;
        nearest->distance = d;
    }
}

const char *gb_nearest_of(const char *word, const char *const *known) {
    gb_nearest nearest;
    gb_nearest_init(&nearest, word);
    for (size_t i = 0; known[i] != NULL; i++)
        gb_nearest_offer(&nearest, known[i]);
    return nearest.best;
}
