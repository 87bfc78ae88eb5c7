/* Words that every other header needs: the status of a call and the must-use mark. */
#ifndef GAUGEBOX_BASE_H
#define GAUGEBOX_BASE_H

#include <math.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* clang 14 refuses [[nodiscard]] in C17; both compilers know this attribute. */
#if defined(__GNUC__)
#define GB_MUST_USE __attribute__((warn_unused_result))
#else
#define GB_MUST_USE
#endif

/* What an engine call can answer. Out parameters are written on GB_OK only. */
typedef enum gb_status {
    GB_OK = 0,
    GB_NO_MEMORY,    /* the arena's supplier gave nothing */
    GB_NOT_POSITIVE, /* an input that must be over zero is not, or is NaN or infinite */
    GB_IMPOSSIBLE,   /* inputs that cannot all be true, as a label of 2 ft3 from 80 lb */
    GB_FROZEN,       /* the batch does not come out above freezing */
    GB_TOO_WET,      /* the sand alone brings more water than the mix may hold */
    GB_NO_PACE,      /* a pace in treads per hour, and no piece is a tread */
    GB_OVERFLOW      /* a sum of money or a count beyond what is kept */
} gb_status;

/* A quantity that is not stated; isnan tells. (NAN itself is a float.) */
#define GB_NONE ((double)NAN)

/* The two systems of units that people read. */
typedef enum gb_system { GB_US, GB_METRIC } gb_system;

#endif
