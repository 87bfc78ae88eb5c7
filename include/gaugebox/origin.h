/* Where something stands in a file, and names of what stands elsewhere. */
#ifndef GAUGEBOX_ORIGIN_H
#define GAUGEBOX_ORIGIN_H

#include "gaugebox/base.h"

/* Where a group stands in its file. */
typedef struct gb_origin {
    int line;        /* 0: nowhere, the group was left out */
    bool faulty;     /* a key of its own could not be read: no rule speaks of it */
    bool inner;      /* a group within it could not be read */
    uint64_t stated; /* the keys that it states, bit 1 << row of its schema table */
} gb_origin;

/* A name that stands for something elsewhere, with the line that used it. */
typedef struct gb_ref {
    const char *text;
    int line;
} gb_ref;

#endif
