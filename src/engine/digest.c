#include "gaugebox/digest.h"

static const uint64_t PRIME = UINT64_C(1099511628211);

uint64_t gb_digest_add(uint64_t digest, const void *bytes, size_t count) {
    const unsigned char *at = bytes;
    for (size_t i = 0; i < count; i++)
        digest = (digest ^ at[i]) * PRIME;
    return digest;
}

/* Byte by byte, the lowest first, so that every machine comes to the same. */
uint64_t gb_digest_add_number(uint64_t digest, uint64_t number) {
    for (int i = 0; i < 8; i++)
        digest = (digest ^ ((number >> (8 * i)) & 0xFF)) * PRIME;
    return digest;
}

void gb_digest_print(uint64_t digest, char number[GB_NUMBER_DIGITS + 1]) {
    static const char FIGURES[] = "0123456789abcdef";
    uint64_t folded = digest ^ (digest >> 32);
    for (int i = 0; i < GB_NUMBER_DIGITS; i++)
        number[i] = FIGURES[(folded >> (28 - 4 * i)) & 0xF];
    number[GB_NUMBER_DIGITS] = '\0';
}

const char *gb_version(void) {
    return GAUGEBOX_VERSION;
}
