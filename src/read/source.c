#include "read/source.h"

#include "read/diag.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

enum { MOST_BYTES = 16 * 1024 * 1024 };

static const char END[] = "\n" GB_END_KEY " = 1;\n";

/* ---- loading --------------------------------------------------------------------- */

static void report_io(gb_diags *diags, const char *file, const char *why) {
    gb_report(diags, file, 0, "cannot be read: %s; check the path and its rights", why);
    diags->io = true;
}

static bool read_all(FILE *stream, const char *file, gb_arena *arena, gb_diags *diags,
                     char **text, size_t *length) {
    size_t room = 65536;
    size_t n = 0;
    char *data = malloc(room);
    while (data != NULL) {
        n += fread(data + n, 1, room - n, stream);
        if (n < room || n > MOST_BYTES)
            break;
        room *= 2;
        char *larger = realloc(data, room);
        if (larger == NULL)
            free(data);
        data = larger;
    }
    char *kept = data == NULL ? NULL : gb_arena_take(arena, n + sizeof END, 1);
    if (kept == NULL)
        diags->no_memory = true;
    else
        memcpy(kept, data, n);
    free(data);
    if (kept != NULL && ferror(stream))
        report_io(diags, file, strerror(errno));
    else if (n > MOST_BYTES)
        gb_report(diags, file, 0,
                  "is larger than 16 MB; a file of this kind holds some kilobytes: "
                  "check that it is the right one, or split it");
    *text = kept;
    *length = n;
    return kept != NULL && !ferror(stream) && n <= MOST_BYTES;
}

static bool load(const char *file, gb_arena *arena, gb_diags *diags, char **text,
                 size_t *length) {
    struct stat info;
    FILE *stream = fopen(file, "rb");
    if (stream == NULL) {
        report_io(diags, file, strerror(errno));
        return false;
    }
    bool good = false;
    if (fstat(fileno(stream), &info) == 0 && S_ISDIR(info.st_mode))
        report_io(diags, file, "it is a folder, not a file");
    else
        good = read_all(stream, file, arena, diags, text, length);
    if (fclose(stream) != 0 && good) {
        report_io(diags, file, strerror(errno));
        return false;
    }
    return good;
}

/* ---- scanning -------------------------------------------------------------------- */

enum { DEEPEST = 16 };

typedef struct scan {
    const char *at;
    int line;
    const char *file;
    gb_diags *diags;
    int depth; /* brackets open here, and where each was opened */
    char open[DEEPEST];
    int opened[DEEPEST];
} scan;

static bool fault(scan *s, int line, const char *text) {
    gb_report(s->diags, s->file, line, "%s", text);
    return false;
}

static bool scan_string(scan *s) {
    int opened = s->line;
    for (s->at++; *s->at != '"'; s->at++) {
        if (*s->at == '\\' && s->at[1] != '\0' && s->at[1] != '\n')
            s->at++;
        else if (*s->at == '\n' || *s->at == '\0')
            return fault(s, opened,
                         "a quote is opened and not closed on its line; close it, and "
                         "write inches as in or '' because a double quote ends a text");
    }
    s->at++;
    const char *next = s->at + strspn(s->at, " \t\r");
    if (strchr(";,)]}\n#/\"", *next) == NULL && *next != '\0')
        return fault(s, opened,
                     "a text is closed and more stands behind it; write inches as in or "
                     "'' because a double quote ends a text");
    return true;
}

static bool scan_comment(scan *s) {
    int opened = s->line;
    for (s->at += 2; !(s->at[0] == '*' && s->at[1] == '/'); s->at++) {
        if (*s->at == '\0')
            return fault(s, opened,
                         "a comment is opened with /* and never closed; end it with */");
        if (*s->at == '\n')
            s->line++;
    }
    s->at += 2;
    return true;
}

static bool word_char(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           c == '_' || c == '-' || c == '*' || c == '.' || c == '+';
}

/* libconfig turns 3000000000 negative and 1e999 into infinity, both with success. */
static bool scan_number(scan *s) {
    const char *from = s->at;
    while (word_char(*s->at))
        s->at++;
    size_t n = (size_t)(s->at - from);
    int shown = n > 20 ? 20 : (int)n;
    size_t plain = strspn(from, "0123456789.");
    bool whole = plain >= n && strcspn(from, ".") >= n;
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
            "groups and lists go too deep here; a job needs four levels of them");
    s->open[s->depth] = c;
    s->opened[s->depth++] = s->line;
    s->at++;
    return true;
}

static bool close_bracket(scan *s, char c) {
    static const char OPENS[] = "({[";
    static const char CLOSES[] = ")}]";
    s->at++;
    if (s->depth == 0)
        return fault(s, s->line,
                     "a bracket is closed that was never opened; take it out");
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
    if (strncmp(at, "@include", 8) == 0)
        return fault(s, s->line,
                     "@include is not read; copy the settings into this file");
    return true;
}

/* One step from s->at on; the end of the text is NUL. */
static bool scan_step(scan *s) {
    char c = *s->at;
    if (c == '"')
        return scan_string(s);
    if (c == '/' && s->at[1] == '*')
        return scan_comment(s);
    if (c == '(' || c == '{' || c == '[')
        return open_bracket(s, c);
    if (c == ')' || c == '}' || c == ']')
        return close_bracket(s, c);
    if (c == '#' || (c == '/' && s->at[1] == '/')) {
        s->at += strcspn(s->at, "\n");
    } else if (c >= '0' && c <= '9') {
        return scan_number(s);
    } else if (word_char(c) && c != '-' && c != '+' && c != '.') {
        while (word_char(*s->at))
            s->at++;
    } else {
        s->at++;
        if (c == '\n') {
            s->line++;
            return scan_include(s);
        }
    }
    return true;
}

/* The bytes that must follow a first byte of UTF-8, or -1 when it cannot be one. */
static int followers(unsigned char first) {
    if (first < 0x80)
        return 0;
    if (first >= 0xC2 && first < 0xE0)
        return 1;
    if (first >= 0xE0 && first < 0xF0)
        return 2;
    return first >= 0xF0 && first < 0xF5 ? 3 : -1;
}

static bool is_utf8(const scan *s) {
    scan at = *s;
    for (const char *c = s->at; *c != '\0'; c++) {
        at.line += *c == '\n';
        int more = followers((unsigned char)*c);
        for (; more > 0 && ((unsigned char)c[1] & 0xC0) == 0x80; more--)
            c++;
        if (more != 0)
            return fault(&at, at.line,
                         "a byte stands here that is not plain UTF-8: this is no text "
                         "file; save it as plain UTF-8 text");
    }
    return true;
}

static bool scan_text(const char *text, size_t length, const char *file,
                      gb_diags *diags) {
    scan s = {.at = text, .line = 1, .file = file, .diags = diags};
    size_t before_nul = strlen(text);
    if (before_nul < length) {
        for (const char *c = text; c < text + before_nul; c++)
            s.line += *c == '\n';
        return fault(&s, s.line,
                     "a byte of value zero stands here: this is no text file; save it "
                     "as plain UTF-8 text");
    }
    if (!is_utf8(&s) || !scan_include(&s))
        return false;
    while (*s.at != '\0')
        if (!scan_step(&s))
            return false;
    if (s.depth > 0)
        return fault(&s, s.opened[s.depth - 1],
                     "a bracket is opened and never closed; close it");
    return true;
}

/* ---- parsing --------------------------------------------------------------------- */

/* Where a line of the text begins. */
static const char *find_line(const char *text, int line) {
    for (int i = 1; i < line && text != NULL; i++) {
        text = strchr(text, '\n');
        text = text == NULL ? NULL : text + 1;
    }
    return text;
}

/* True when the name of n letters at `at` stands before `end` of its line once more. */
static bool again_on_line(const char *at, size_t n) {
    const char *end = at + strcspn(at, "\n");
    for (const char *c = at + n; c + n <= end; c++)
        if (strncmp(c, at, n) == 0 && !word_char(c[-1]) && !word_char(c[n]))
            return true;
    return false;
}

/* libconfig names only the line of a setting that is there twice. The name is the one
   that the line holds twice, or else the first one. */
static void report_twice(const char *text, const char *file, int line, gb_diags *diags) {
    static const char LETTERS[] = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_";
    const char *at = find_line(text, line);
    const char *end = at == NULL ? NULL : at + strcspn(at, "\n");
    const char *name = NULL;
    size_t length = 0;
    while (at != NULL && at < end) {
        at += strcspn(at, LETTERS);
        size_t n = strspn(at, LETTERS);
        if (at < end && (name == NULL || again_on_line(at, n))) {
            name = at;
            length = n;
        }
        if (at < end && again_on_line(at, n))
            break;
        at += n;
    }
    gb_report(diags, file, line, "'%.*s' is here twice in one group; keep one",
              (int)(length > 60 ? 60 : length), name == NULL ? "" : name);
}

static bool parse(const char *text, const char *file, gb_diags *diags, config_t *config) {
    if (config_read_string(config, text) != CONFIG_TRUE) {
        if (strstr(config_error_text(config), "duplicate") != NULL)
            report_twice(text, file, config_error_line(config), diags);
        else
            gb_report(
                diags, file, config_error_line(config),
                "the form is broken here; it is: name = value; with texts in double "
                "quotes, groups in { }, lists in ( ), and commas between the groups "
                "of a list; look at this line and the one before it");
        return false;
    }
    if (config_lookup(config, GB_END_KEY) == NULL) {
        gb_report(diags, file, 0,
                  "a quote or a comment is never closed, or a bracket: the end of the "
                  "file was swallowed");
        return false;
    }
    return true;
}

bool gb_load_config(const char *file, gb_arena *arena, gb_diags *diags,
                    config_t *config) {
    char *text = NULL;
    size_t length = 0;
    if (!load(file, arena, diags, &text, &length))
        return false;
    if (!scan_text(text, length, file, diags))
        return false;
    memcpy(text + length, END, sizeof END);
    /* Some editors put a byte-order mark first; it says nothing. */
    if (strncmp(text, "\xEF\xBB\xBF", 3) == 0)
        text += 3;
    config_init(config);
    if (parse(text, file, diags, config))
        return true;
    config_destroy(config);
    return false;
}
