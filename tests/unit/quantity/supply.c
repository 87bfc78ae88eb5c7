#include "unit/quantity/supply.h"

#include <stdlib.h>
#include <string.h>

static void *take(void *user, size_t bytes) {
    counting_supply *counting = user;
    int call = counting->calls++;
    if (bytes > counting->most)
        counting->most = bytes;
    if (counting->fail_at != NEVER_FAILS && call >= counting->fail_at)
        return NULL;
    void *block = malloc(bytes);
    if (block == NULL)
        return NULL;
    memset(block, 0xA5, bytes);
    counting->given++;
    return block;
}

static void give_back(void *user, void *block) {
    counting_supply *counting = user;
    counting->given--;
    free(block);
}

gb_supply supply_of(counting_supply *counting) {
    return (gb_supply){.take = take, .give_back = give_back, .user = counting};
}
