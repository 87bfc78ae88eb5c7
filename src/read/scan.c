#include "read/scan.h"

#include "read/diag.h"
#include "words/words.h"

#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

enum { DEEPEST = 16, MOST_SETTINGS = 1000 };

typedef struct scan {
    const char *at;
    int line;
    const char *file;
    gb_diags *diags;
    int depth; /* brackets open here, and where each was opened */
    char open[DEEPEST];
    int opened[DEEPEST];
    int settings[DEEPEST + 1]; /* seen so far in each */
} scan;

#define AS_IT_IS "%s"

/* `words` hold no places. */
static bool fault(scan *s, int line, const char *words) {
    gb_report(s->diags, s->file, line, AS_IT_IS, gb_tr(words));
    return false;
}

static bool scan_string(scan *s) {
    int opened = s->line;
    for (s->at++; *(s->at += strcspn(s->at, "\"\\\n")) != '"'; s->at++) {
        if (*s->at == '\\' && s->at[1] != '\0' && s->at[1] != '\n')
            s->at++;
        else if (*s->at == '\n' || *s->at == '\0')
            return fault(
                s, opened,
                N_("a quote is opened and not closed on its line; close it, and "
                   "write inches as in or '' because a double quote ends a text"));
    }
    s->at++;
    const char *next = s->at + strspn(s->at, " \t\r");
    if (strchr(";,)]}\n#/\"", *next) == NULL && *next != '\0')
        return fault(
            s, opened,
            N_("a text is closed and more stands behind it; is a ; missing? write "
               "inches as in or '' because a double quote ends a text"));
    return true;
}

static bool scan_comment(scan *s) {
    int opened = s->line;
    for (s->at += 2; !(s->at[0] == '*' && s->at[1] == '/'); s->at++) {
        if (*s->at == '\0')
            return fault(
                s, opened,
                N_("a comment is opened with /* and never closed; end it with */"));
        if (*s->at == '\n')
            s->line++;
    }
    s->at += 2;
    return true;
}

static inline bool in_word(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           c == '_' || c == '-' || c == '*' || c == '.' || c == '+';
}

bool gb_word_char(char c) {
    return in_word(c);
}

/* libconfig turns 3000000000 negative and 1e999 into infinity, both with success. */
static bool scan_number(scan *s) {
    const char *from = s->at;
    while (in_word(*s->at))
        s->at++;
    size_t n = (size_t)(s->at - from);
    int shown = n > 20 ? 20 : (int)n;
    size_t plain = strspn(from, "0123456789.");
    bool whole = plain >= n && memchr(from, '.', n) == NULL;
    if (n > 15 || (whole && strtoll(from, NULL, 10) > INT32_MAX))
        gb_report(s->diags, s->file, s->line,
                  "the number %.*s is too large; at most 2147483647 is read", shown,
                  from);
    else if (plain < n)
        gb_report(s->diags, s->file, s->line,
                  "the number %.*s holds more than figures and a point; write it out in "
                  "decimal, and a quantity as a text with its unit, as \"5 ft\"",
                  shown, from);
    return n <= 15 && plain >= n && !(whole && strtoll(from, NULL, 10) > INT32_MAX);
}

static bool open_bracket(scan *s, char c) {
    if (s->depth == DEEPEST)
        return fault(
            s, s->line,
            N_("groups and lists go too deep here; a job needs four levels of them"));
    s->open[s->depth] = c;
    s->opened[s->depth++] = s->line;
    s->settings[s->depth] = 0;
    s->at++;
    return true;
}

static bool close_bracket(scan *s, char c) {
    static const char OPENS[] = "({[";
    static const char CLOSES[] = ")}]";
    s->at++;
    if (s->depth == 0)
        return fault(s, s->line,
                     N_("a bracket is closed that was never opened; take it out"));
    char open = s->open[--s->depth];
    char wanted = CLOSES[strchr(OPENS, open) - OPENS];
    if (c == wanted)
        return true;
    gb_report(s->diags, s->file, s->line,
              "'%c' closes here what '%c' opened at line %d; close that with '%c' first",
              c, open, s->opened[s->depth], wanted);
    return false;
}

static bool scan_include(scan *s) {
    const char *at = s->at + strspn(s->at, " \t");
    if (*at == '@' && strncmp(at, "@include", 8) == 0)
        return fault(s, s->line,
                     N_("@include is not read; copy the settings into this file"));
    return true;
}

static bool scan_word(scan *s) {
    while (in_word(*s->at))
        s->at++;
    return true;
}

static bool scan_line_end(scan *s) {
    s->at++;
    s->line++;
    return scan_include(s);
}

static bool scan_stroke(scan *s) {
    if (s->at[1] == '*')
        return scan_comment(s);
    s->at += s->at[1] == '/' ? strcspn(s->at, "\n") : 1;
    return true;
}

/* What is neither a mark nor white space: a word, a number, or a sign. */
static bool scan_rest(scan *s) {
    char c = *s->at;
    if (c >= '0' && c <= '9')
        return scan_number(s);
    if (in_word(c) && c != '-' && c != '+' && c != '.')
        return scan_word(s);
    s->at++;
    /* libconfig looks through all names of a group for each new one. */
    if ((c == '=' || c == ':') && ++s->settings[s->depth] > MOST_SETTINGS)
        return fault(
            s, s->line,
            N_("a group holds over 1000 settings; write what comes many times as a "
               "list ( { ... }, { ... } )"));
    return true;
}

/* One step from s->at on; the end of the text is NUL. */
static bool scan_step(scan *s) {
    switch (*s->at) {
    case ' ':
        while (*s->at == ' ')
            s->at++;
        return true;
    case '\n':
        return scan_line_end(s);
    case '"':
        return scan_string(s);
    case '/':
        return scan_stroke(s);
    case '#':
        s->at += strcspn(s->at, "\n");
        return true;
    case '(':
    case '{':
    case '[':
        return open_bracket(s, *s->at);
    case ')':
    case '}':
    case ']':
        return close_bracket(s, *s->at);
    default:
        return scan_rest(s);
    }
}

/* The bytes that must follow a first byte, or -1 when it cannot be one; *low and *high
   bound the first of them, which keeps out what has a shorter form, surrogates, and what
   lies beyond Unicode (RFC 3629). */
static int followers(unsigned char first, unsigned char *low, unsigned char *high) {
    *low = first == 0xE0 ? 0xA0 : first == 0xF0 ? 0x90 : 0x80;
    *high = first == 0xED ? 0x9F : first == 0xF4 ? 0x8F : 0xBF;
    if (first < 0x80)
        return 0;
    if (first >= 0xC2 && first < 0xE0)
        return 1;
    if (first >= 0xE0 && first < 0xF0)
        return 2;
    return first >= 0xF0 && first < 0xF5 ? 3 : -1;
}

/* The bytes of the sign at `at`, or 0 when it is no UTF-8. */
static size_t sign_length(const char *at) {
    unsigned char low = 0;
    unsigned char high = 0;
    int more = followers((unsigned char)*at, &low, &high);
    for (int i = 1; i <= more; i++) {
        unsigned char c = (unsigned char)at[i];
        if (c < (i == 1 ? low : 0x80) || c > (i == 1 ? high : 0xBF))
            return 0;
    }
    return more < 0 ? 0 : (size_t)more + 1;
}

static int lines_before(const char *text, const char *end) {
    int lines = 0;
    for (const char *c = text; c < end; c++)
        lines += *c == '\n';
    return lines;
}

/* The first byte from `c` on that is no ASCII, looked for by eights, or `end`. */
static const char *past_ascii(const char *c, const char *end) {
    const uint64_t high = UINT64_C(0x8080808080808080);
    uint64_t eight = 0;
    for (; end - c >= (ptrdiff_t)sizeof eight; c += sizeof eight) {
        memcpy(&eight, c, sizeof eight);
        if ((eight & high) != 0)
            break;
    }
    while (c < end && (unsigned char)*c < 0x80)
        c++;
    return c;
}

static bool is_utf8(scan *s, size_t length) {
    const char *end = s->at + length;
    for (const char *c = past_ascii(s->at, end); c < end; c = past_ascii(c, end)) {
        size_t n = sign_length(c);
        if (n == 0)
            return fault(s, s->line + lines_before(s->at, c),
                         N_("a byte stands here that is not plain UTF-8: this is no text "
                            "file; save it as plain UTF-8 text"));
        c += n;
    }
    return true;
}

bool gb_check_text(const char *text, size_t length, const char *file, gb_diags *diags) {
    scan s = {.at = text, .line = 1, .file = file, .diags = diags};
    size_t before_nul = strlen(text);
    if (before_nul < length)
        return fault(&s, s.line + lines_before(text, text + before_nul),
                     N_("a byte of value zero stands here: this is no text file; save it "
                        "as plain UTF-8 text"));
    return is_utf8(&s, length);
}

bool gb_scan_text(const char *text, size_t length, const char *file, gb_diags *diags) {
    scan s = {.at = text, .line = 1, .file = file, .diags = diags};
    if (!gb_check_text(text, length, file, diags) || !scan_include(&s))
        return false;
    while (*s.at != '\0')
        if (!scan_step(&s))
            return false;
    if (s.depth > 0)
        return fault(&s, s.opened[s.depth - 1],
                     N_("a bracket is opened and never closed; close it"));
    return true;
}
