/* A supply for arenas that counts what it gives, fills it with rubbish, and can fail. */
#ifndef UNIT_QUANTITY_SUPPLY_H
#define UNIT_QUANTITY_SUPPLY_H

#include "gaugebox/arena.h"

enum { NEVER_FAILS = -1 };

typedef struct counting_supply {
    int calls;   /* of take */
    int fail_at; /* that call, from 0, and all after it give nothing; NEVER_FAILS */
    int given;   /* blocks out, not yet given back */
    size_t most; /* the largest size asked for */
} counting_supply;

gb_supply supply_of(counting_supply *counting);

#endif
