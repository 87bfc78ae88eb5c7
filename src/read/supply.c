#include "gaugebox/read.h"

#include <stdlib.h>

static void *take(void *user, size_t bytes) {
    (void)user;
    return malloc(bytes);
}

static void give_back(void *user, void *block) {
    (void)user;
    free(block);
}

gb_supply gb_malloc_supply(void) {
    return (gb_supply){take, give_back, NULL};
}
