/* Moments, as ISO 8601 writes them, and the calendar of the Gregorian rules. */
#ifndef GAUGEBOX_MOMENT_H
#define GAUGEBOX_MOMENT_H

#include "gaugebox/text.h"

/* Seconds since 1970-01-01 00:00 UTC. */
typedef struct gb_moment {
    int64_t s;
} gb_moment;

/* Reads "2026-05-12", at 00:00 of that offset from UTC. False when it is no date of the
   years 1900 to 2199, or anything stands behind it. */
bool gb_parse_day(const char *text, int offset_s, gb_moment *moment) GB_MUST_USE;

/* Reads "2026-05-12T07:00", with seconds or without, a blank instead of the T, and with
   its own offset (Z, +01:00, -0500) or else at `offset_s`. */
bool gb_parse_moment(const char *text, int offset_s, gb_moment *moment) GB_MUST_USE;

/* Reads "-05:00", "+0530", "Z" as seconds; at most 14 hours. */
bool gb_parse_offset(const char *text, int *offset_s) GB_MUST_USE;

/* "2026-05-12 07:00" as clocks at that offset show it. */
void gb_print_moment(gb_text *to, gb_moment moment, int offset_s);

#endif
