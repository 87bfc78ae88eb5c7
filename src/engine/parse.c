#include "gaugebox/count.h"
#include "gaugebox/quantity.h"

#include <string.h>

/* A text is first brought to plain ASCII (marks and fractions as people type them are
   replaced), then read as terms: a number and a unit, and for feet and inches, hours and
   minutes, pounds and ounces more such pairs behind it. */

enum { PLAIN_ROOM = 5 * GB_LONGEST, MOST_DIGITS = 15 };

/* A vulgar fraction travels between these two, so that 4½ and 4 ½ both read as four and a
   half and ½2 does not read as 1/22. No typed text can hold them. */
#define OPEN  "\x01"
#define CLOSE "\x02"

static const struct {
    const char *typed;
    const char *plain;
} REPLACED[] = {{"½", OPEN "1/2" CLOSE},
                {"¼", OPEN "1/4" CLOSE},
                {"¾", OPEN "3/4" CLOSE},
                {"⅛", OPEN "1/8" CLOSE},
                {"⅜", OPEN "3/8" CLOSE},
                {"⅝", OPEN "5/8" CLOSE},
                {"⅞", OPEN "7/8" CLOSE},
                {"⅓", OPEN "1/3" CLOSE},
                {"⅔", OPEN "2/3" CLOSE},
                {"’", "'"},
                {"′", "'"},
                {"‘", "'"},
                {"”", "''"},
                {"″", "''"},
                {"“", "''"},
                {"\"", "''"},
                {"²", "2"},
                {"³", "3"},
                {"×", "x"},
                {"−", "-"},
                {"–", "-"},
                {"⁄", "/"},
                {"\u00a0", " "}};

static bool digit(char c) {
    return c >= '0' && c <= '9';
}

static bool letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/* True where a number can begin. */
static bool number_ahead(const char *at) {
    return digit(*at) || *at == OPEN[0] || (*at == '.' && digit(at[1]));
}

/* An ASCII sign as it is; a control sign, which no quantity holds, becomes one that none
   knows. */
static size_t copy_ascii(char c, char *plain, size_t *n) {
    if (c < ' ' || c == 127)
        c = '?';
    plain[(*n)++] = c;
    return 1;
}

/* The length of the replaced sign that `text` begins with, its plain form added. A raised
   2 or 3 belongs to the letter before it, as in ft². */
static size_t replace_sign(const char *text, char *plain, size_t *n) {
    if ((unsigned char)*text < 0x80 && *text != '"')
        return copy_ascii(*text, plain, n);
    for (size_t i = 0; i < sizeof REPLACED / sizeof REPLACED[0]; i++) {
        size_t typed = strlen(REPLACED[i].typed);
        if (strncmp(text, REPLACED[i].typed, typed) != 0)
            continue;
        if (digit(REPLACED[i].plain[0]) && (*n == 0 || !letter(plain[*n - 1])))
            break;
        size_t m = strlen(REPLACED[i].plain);
        memcpy(plain + *n, REPLACED[i].plain, m);
        *n += m;
        return typed;
    }
    plain[(*n)++] = *text;
    return 1;
}

/* Each typed byte becomes at most five plain ones, so PLAIN_ROOM holds any text that is
   not too long. */
static gb_fault make_plain(const char *text, char plain[PLAIN_ROOM + 1]) {
    size_t length = 0;
    while (length <= GB_LONGEST && text[length] != '\0')
        length++;
    if (length > GB_LONGEST)
        return GB_FAULT_LONG;
    size_t n = 0;
    while (*text != '\0') {
        text += replace_sign(text, plain, &n);
        if (n == 1 && plain[0] == ' ')
            n = 0;
    }
    while (n > 0 && plain[n - 1] == ' ')
        n--;
    plain[n] = '\0';
    return n == 0 ? GB_FAULT_EMPTY : GB_NO_FAULT;
}

/* Digits from **at on, moved past them. Up to 15 digits are exact in a double. */
static gb_fault read_digits(const char **at, double *value, int *digits) {
    const char *from = *at;
    while (digit(**at)) {
        *value = *value * 10.0 + (**at - '0');
        if (++*digits > MOST_DIGITS)
            return GB_FAULT_DIGITS;
        ++*at;
    }
    return *at == from ? GB_FAULT_NUMBER : GB_NO_FAULT;
}

static gb_fault read_decimals(const char **at, double *value, int *digits) {
    static const double TENS[] = {1e0, 1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                  1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};
    int before = *digits;
    ++*at;
    gb_fault fault = read_digits(at, value, digits);
    if (fault == GB_NO_FAULT)
        *value /= TENS[*digits - before];
    return fault;
}

/* A fraction n/d from **at on; *value is its value. */
static gb_fault read_fraction(const char **at, double *value) {
    double over = 0;
    double under = 0;
    int digits = 0;
    gb_fault fault = read_digits(at, &over, &digits);
    if (fault != GB_NO_FAULT)
        return fault;
    if (**at != '/')
        return GB_FAULT_NUMBER;
    ++*at;
    fault = read_digits(at, &under, &digits);
    if (fault == GB_FAULT_DIGITS)
        return fault;
    if (fault != GB_NO_FAULT || under <= 0)
        return GB_FAULT_FRACTION;
    if (**at == CLOSE[0])
        ++*at;
    *value = over / under;
    return GB_NO_FAULT;
}

/* True when a fraction stands at `at`: digits, a stroke, a digit. */
static bool fraction_ahead(const char *at) {
    if (!digit(*at))
        return false;
    while (digit(*at))
        at++;
    return at[0] == '/' && digit(at[1]);
}

/* The fraction of a mixed number: behind a hyphen, a space or straight after (½). */
static gb_fault read_mixed(const char **at, double *value) {
    const char *next = *at;
    if ((*next == ' ' || *next == '-') && next[1] == OPEN[0])
        next += 2;
    else if (*next == '-' || *next == ' ' || *next == OPEN[0])
        next++;
    else
        return GB_NO_FAULT;
    if (!fraction_ahead(next))
        return GB_NO_FAULT;
    double part = 0;
    gb_fault fault = read_fraction(&next, &part);
    if (fault != GB_NO_FAULT)
        return fault;
    if (part >= 1)
        return GB_FAULT_FRACTION;
    *value += part;
    *at = next;
    return GB_NO_FAULT;
}

static gb_fault read_number(const char **at, double *value) {
    if (**at == OPEN[0])
        ++*at;
    if (fraction_ahead(*at))
        return read_fraction(at, value);
    int digits = 0;
    double number = 0;
    if (**at != '.') {
        gb_fault fault = read_digits(at, &number, &digits);
        if (fault != GB_NO_FAULT)
            return fault;
    }
    if (**at == ',')
        return GB_FAULT_COMMA;
    gb_fault fault = GB_NO_FAULT;
    if (**at == '.')
        fault = read_decimals(at, &number, &digits);
    else
        fault = read_mixed(at, &number);
    if (fault == GB_NO_FAULT && (**at == 'e' || **at == 'E') &&
        (digit((*at)[1]) || (*at)[1] == '-' || (*at)[1] == '+'))
        fault = GB_FAULT_EXPONENT;
    if (fault == GB_NO_FAULT)
        *value = number;
    return fault;
}

/* A unit's name ends where no letter, figure or stroke goes on. */
static bool unit_ends(char c) {
    return !letter(c) && !digit(c) && c != '/';
}

/* The longest units at one place: of the kind that is wanted, and of any kind. A name
   that ends in a letter may be followed by a figure (4ft6in) when its kind is wanted. */
typedef struct found_units {
    const gb_unit *wanted;
    const gb_unit *any;
    size_t wanted_length;
    size_t any_length;
} found_units;

static void offer_unit(const gb_unit *unit, const char *at, gb_kind kind,
                       found_units *found) {
    size_t n = strlen(unit->name);
    if (strncmp(at, unit->name, n) != 0)
        return;
    bool marks = unit->name[0] == '\'' || unit->name[n - 1] == '%';
    bool loose = marks || (!letter(at[n]) && at[n] != '/');
    if (unit->kind == kind && loose && n > found->wanted_length) {
        found->wanted = unit;
        found->wanted_length = n;
    }
    if ((marks || unit_ends(at[n])) && n > found->any_length) {
        found->any = unit;
        found->any_length = n;
    }
}

static found_units find_units(const char *at, gb_kind kind) {
    found_units found = {NULL, NULL, 0, 0};
    const gb_unit *end = NULL;
    for (const gb_unit *u = gb_units_from(*at, &end); u < end && u->name[0] == *at; u++)
        offer_unit(u, at, kind, &found);
    return found;
}

static gb_fault read_unit(const char **at, gb_kind kind, const gb_unit **unit) {
    while (**at == ' ')
        ++*at;
    if (**at == '\0')
        return GB_FAULT_NO_UNIT;
    found_units found = find_units(*at, kind);
    /* "6 ft3" as a length: ft fits, but the reader wrote a volume. In 4ft2-1/2in more
       follows, so the figure belongs to the inches. */
    const char *behind = *at + found.any_length;
    behind += strspn(behind, " ");
    if (found.any != NULL && found.any_length > found.wanted_length &&
        (found.wanted == NULL || *behind == '\0'))
        return GB_FAULT_OTHER_KIND;
    if (found.wanted == NULL)
        return digit(**at) ? GB_FAULT_MORE : GB_FAULT_UNIT;
    *unit = found.wanted;
    *at += found.wanted_length;
    while (**at == ' ')
        ++*at;
    return GB_NO_FAULT;
}

/* Kinds that are written in several terms: feet and inches, hours and minutes, pounds
   and ounces. */
static bool has_terms(gb_kind kind) {
    return kind == GB_LENGTH || kind == GB_DURATION || kind == GB_MASS;
}

/* One number with its unit, from **at on. */
static gb_fault read_term(gb_kind kind, const char **at, double *si,
                          const gb_unit **unit) {
    double number = 0;
    gb_fault fault = read_number(at, &number);
    if (fault == GB_NO_FAULT)
        fault = read_unit(at, kind, unit);
    if (fault == GB_NO_FAULT)
        *si = gb_from_unit(*unit, number);
    return fault;
}

/* Terms must go down, and none may be large enough to carry into the one before it. */
static gb_fault read_terms(gb_kind kind, const char *at, double *si) {
    const gb_unit *before = NULL;
    double sum = 0;
    do {
        double value = 0;
        const gb_unit *unit = NULL;
        gb_fault fault = read_term(kind, &at, &value, &unit);
        if (fault == GB_FAULT_NUMBER && before != NULL)
            return GB_FAULT_MORE;
        if (fault != GB_NO_FAULT)
            return fault;
        if (before != NULL && !gb_under(value, gb_from_unit(before, 1.0)))
            return GB_FAULT_CARRY;
        sum += value;
        before = unit;
        if (*at == '-' && at[-1] != ' ' && kind == GB_LENGTH && number_ahead(at + 1))
            at++; /* 4'-6'' */
    } while (*at != '\0' && has_terms(kind));
    if (*at != '\0')
        return GB_FAULT_MORE;
    *si = sum;
    return GB_NO_FAULT;
}

/* 1:48 */
static gb_fault read_ratio(const char *at, double *si) {
    double over = 0;
    double under = 0;
    gb_fault fault = read_number(&at, &over);
    if (fault != GB_NO_FAULT)
        return fault;
    at++;
    fault = read_number(&at, &under);
    if (fault != GB_NO_FAULT)
        return fault;
    if (under <= 0)
        return GB_FAULT_FRACTION;
    if (*at != '\0')
        return GB_FAULT_MORE;
    *si = over / under;
    return GB_NO_FAULT;
}

static gb_fault parse_plain(gb_kind kind, const char *at, double *si) {
    bool minus = *at == '-';
    if (minus && kind != GB_TEMP)
        return number_ahead(at + 1) ? GB_FAULT_NEGATIVE : GB_FAULT_NUMBER;
    if (kind == GB_SLOPE && strchr(at, ':') != NULL)
        return read_ratio(at, si);
    if (!minus)
        return read_terms(kind, at, si);
    at++;
    double number = 0;
    const gb_unit *unit = NULL;
    gb_fault fault = read_number(&at, &number);
    if (fault == GB_NO_FAULT)
        fault = read_unit(&at, kind, &unit);
    if (fault == GB_NO_FAULT && *at != '\0')
        fault = GB_FAULT_MORE;
    if (fault == GB_NO_FAULT)
        *si = gb_from_unit(unit, -number);
    return fault;
}

gb_fault gb_parse(gb_kind kind, const char *text, double *si) {
    char plain[PLAIN_ROOM + 1];
    gb_fault fault = make_plain(text, plain);
    return fault == GB_NO_FAULT ? parse_plain(kind, plain, si) : fault;
}

gb_fault gb_parse_number(const char *text, double *value) {
    char plain[PLAIN_ROOM + 1];
    gb_fault fault = make_plain(text, plain);
    if (fault != GB_NO_FAULT)
        return fault;
    const char *at = plain;
    double number = 0;
    fault = *at == '-' ? GB_FAULT_NEGATIVE : read_number(&at, &number);
    if (fault == GB_NO_FAULT && *at != '\0')
        fault = GB_FAULT_MORE;
    if (fault == GB_NO_FAULT)
        *value = number;
    return fault;
}

/* Where the x between two sizes begins, and how long it is; NULL when there is none. */
static char *find_by(char *plain, size_t *length) {
    char *by = strstr(plain, "by");
    *length = 2;
    if (by == NULL) {
        by = strpbrk(plain, "xX");
        *length = 1;
    }
    return by;
}

gb_fault gb_parse_size(const char *text, gb_length *first, gb_length *second) {
    char plain[PLAIN_ROOM + 1];
    gb_fault fault = make_plain(text, plain);
    if (fault != GB_NO_FAULT)
        return fault;
    size_t length = 0;
    char *by = find_by(plain, &length);
    if (by == NULL)
        return GB_FAULT_NUMBER;
    *by = '\0';
    char *end = by;
    while (end > plain && end[-1] == ' ')
        *--end = '\0';
    const char *rest = by + length + strspn(by + length, " ");
    if (plain[0] == '\0' || *rest == '\0')
        return GB_FAULT_EMPTY;
    double one = 0;
    double two = 0;
    fault = parse_plain(GB_LENGTH, plain, &one);
    if (fault == GB_NO_FAULT)
        fault = parse_plain(GB_LENGTH, rest, &two);
    if (fault != GB_NO_FAULT)
        return fault;
    first->m = one;
    second->m = two;
    return GB_NO_FAULT;
}

/* What is wrong when `c` stands in a price behind so many digits. */
static gb_fault price_fault(char c, int digits) {
    if (c == ',')
        return GB_FAULT_COMMA;
    if (digits == 0 || c == '.')
        return GB_FAULT_NUMBER;
    return c == 'e' || c == 'E' ? GB_FAULT_EXPONENT : GB_FAULT_MORE;
}

/* The figures of a price with at most one point between them. */
static gb_fault read_price(const char *text, int64_t *value, int *places) {
    int digits = 0;
    *places = -1;
    for (const char *c = text; *c != '\0'; c++) {
        if (*c == '.' && *places < 0 && c > text) {
            *places = 0;
            continue;
        }
        if (!digit(*c))
            return price_fault(*c, digits);
        if (++digits > MOST_DIGITS)
            return GB_FAULT_DIGITS;
        *value = *value * 10 + (*c - '0');
        *places += *places >= 0;
    }
    return GB_NO_FAULT;
}

gb_fault gb_parse_money(const char *text, int decimals, gb_money *money) {
    int64_t minor = 0;
    int places = 0;
    if (*text == '\0')
        return GB_FAULT_EMPTY;
    if (*text == '-')
        return GB_FAULT_NEGATIVE;
    gb_fault fault = read_price(text, &minor, &places);
    if (fault != GB_NO_FAULT)
        return fault;
    if (places == 0)
        return GB_FAULT_NUMBER; /* 14. */
    if (places > decimals)
        return GB_FAULT_DIGITS;
    for (int i = places < 0 ? 0 : places; i < decimals; i++)
        minor *= 10;
    money->minor = minor;
    return GB_NO_FAULT;
}
