#include "read/source.h"

#include "read/diag.h"
#include "read/scan.h"

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
        if (strncmp(c, at, n) == 0 && !gb_word_char(c[-1]) && !gb_word_char(c[n]))
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

bool gb_load_config(const char *file, gb_arena *arena, gb_diags *diags, config_t *config,
                    uint64_t *digest) {
    char *text = NULL;
    size_t length = 0;
    if (!load(file, arena, diags, &text, &length))
        return false;
    if (!gb_scan_text(text, length, file, diags))
        return false;
    *digest = gb_digest_add(GB_DIGEST_START, text, length);
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
