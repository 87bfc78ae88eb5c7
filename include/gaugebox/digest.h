/* The number of a plan: a digest of all that went into it. */
#ifndef GAUGEBOX_DIGEST_H
#define GAUGEBOX_DIGEST_H

#include "gaugebox/base.h"

/* FNV-1a, 64 bits (Fowler, Noll, Vo): a fingerprint of inputs, no guard against malice.
 */
#define GB_DIGEST_START UINT64_C(14695981039346656037)
uint64_t gb_digest_add(uint64_t digest, const void *bytes, size_t count);
uint64_t gb_digest_add_number(uint64_t digest, uint64_t number);

enum { GB_NUMBER_DIGITS = 8 };

/* The digest folded to eight hexadecimal figures, as sheets print it. */
void gb_digest_print(uint64_t digest, char number[GB_NUMBER_DIGITS + 1]);

/* The program's version, as 0.1.0; part of every plan's number. */
const char *gb_version(void);

#endif
