#include "gaugebox/moment.h"

#include <string.h>

enum { DAY = 86400, HOUR = 3600, MINUTE = 60, FIRST_YEAR = 1900, LAST_YEAR = 2199 };

/* ---- the calendar ------------------------------------------------------------------ */

/* Days since 1970-01-01, counted in years that begin in March, so that a leap day is the
   last of its year; 146097 days are 400 years. */
static int64_t days_to(int year, int month, int day) {
    int y = month > 2 ? year : year - 1;
    int m = month > 2 ? month - 3 : month + 9;
    int64_t before = (int64_t)y * 365 + y / 4 - y / 100 + y / 400;
    return before + (153 * m + 2) / 5 + day - 1 - 719468;
}

static void date_of(int64_t days, int *year, int *month, int *day) {
    int64_t since = days + 719468; /* since 1 March of the year 0 */
    int64_t era = since / 146097;
    int64_t of_era = since % 146097;
    int64_t y = (of_era - of_era / 1460 + of_era / 36524 - of_era / 146096) / 365;
    int64_t of_year = of_era - (365 * y + y / 4 - y / 100);
    int64_t m = (5 * of_year + 2) / 153;
    *day = (int)(of_year - (153 * m + 2) / 5 + 1);
    *month = (int)(m < 10 ? m + 3 : m - 9);
    *year = (int)(y + era * 400 + (*month <= 2));
}

static int days_in(int year, int month) {
    static const int DAYS[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    return month == 2 && leap ? 29 : DAYS[month - 1];
}

/* ---- reading ----------------------------------------------------------------------- */

/* `count` digits from **at on, moved past them; -1 when there are fewer. */
static int digits(const char **at, int count) {
    int value = 0;
    for (int i = 0; i < count; i++, ++*at) {
        if (**at < '0' || **at > '9')
            return -1;
        value = value * 10 + (**at - '0');
    }
    return value;
}

static bool skip(const char **at, char c) {
    if (**at != c)
        return false;
    ++*at;
    return true;
}

static bool read_day(const char **at, int64_t *days) {
    int year = digits(at, 4);
    if (year < FIRST_YEAR || year > LAST_YEAR || !skip(at, '-'))
        return false;
    int month = digits(at, 2);
    if (month < 1 || month > 12 || !skip(at, '-'))
        return false;
    int day = digits(at, 2);
    if (day < 1 || day > days_in(year, month))
        return false;
    *days = days_to(year, month, day);
    return true;
}

/* "07:00" or "07:00:00". */
static bool read_clock(const char **at, int *s) {
    int hour = digits(at, 2);
    if (hour < 0 || hour > 23 || !skip(at, ':'))
        return false;
    int minute = digits(at, 2);
    if (minute < 0 || minute > 59)
        return false;
    int second = skip(at, ':') ? digits(at, 2) : 0;
    *s = hour * HOUR + minute * MINUTE + second;
    return second >= 0 && second <= 59;
}

static bool read_offset(const char **at, int *offset_s) {
    if (skip(at, 'Z')) {
        *offset_s = 0;
        return true;
    }
    int sign = **at == '-' ? -1 : 1;
    if (!skip(at, '-') && !skip(at, '+'))
        return false;
    int hours = digits(at, 2);
    (void)skip(at, ':');
    int minutes = digits(at, 2);
    *offset_s = sign * (hours * HOUR + minutes * MINUTE);
    return hours >= 0 && minutes >= 0 && minutes <= 59 &&
           hours * MINUTE + minutes <= 14 * MINUTE;
}

bool gb_parse_day(const char *text, int offset_s, gb_moment *moment) {
    int64_t days = 0;
    if (!read_day(&text, &days) || *text != '\0')
        return false;
    moment->s = days * DAY - offset_s;
    return true;
}

bool gb_parse_moment(const char *text, int offset_s, gb_moment *moment) {
    int64_t days = 0;
    int clock = 0;
    if (!read_day(&text, &days) || (*text != 'T' && *text != ' '))
        return false;
    text++;
    if (!read_clock(&text, &clock))
        return false;
    if (*text != '\0' && !read_offset(&text, &offset_s))
        return false;
    if (*text != '\0')
        return false;
    moment->s = days * DAY + clock - offset_s;
    return true;
}

bool gb_parse_offset(const char *text, int *offset_s) {
    int read = 0;
    if (!read_offset(&text, &read) || *text != '\0')
        return false;
    *offset_s = read;
    return true;
}

/* ---- printing ---------------------------------------------------------------------- */

static void add_two(gb_text *to, int value) {
    if (value < 10)
        gb_text_add_char(to, '0');
    gb_text_add_int(to, value);
}

void gb_print_moment(gb_text *to, gb_moment moment, int offset_s) {
    int64_t local = moment.s + offset_s;
    int64_t days = (local >= 0 ? local : local - (DAY - 1)) / DAY;
    int clock = (int)(local - days * DAY);
    int year = 0;
    int month = 0;
    int day = 0;
    date_of(days, &year, &month, &day);
    gb_text_add_int(to, year);
    gb_text_add_char(to, '-');
    add_two(to, month);
    gb_text_add_char(to, '-');
    add_two(to, day);
    gb_text_add_char(to, ' ');
    add_two(to, clock / HOUR);
    gb_text_add_char(to, ':');
    add_two(to, clock % HOUR / MINUTE);
}
