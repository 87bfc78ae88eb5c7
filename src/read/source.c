#include "read/source.h"

#include "read/diag.h"
#include "read/scan.h"
#include "words/words.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

static const char END[] = "\n" GB_END_KEY " = 1;\n";

/* ---- loading --------------------------------------------------------------------- */

static void report_io(gb_diags *diags, const char *file, const char *why) {
    gb_report(diags, file, 0, "cannot be read: %s; check the path and its rights", why);
    diags->io = true;
}

/* What is behind the text is for the last setting, which parse() adds. */
static bool keep_all(const char *data, size_t n, const char *file, gb_arena *arena,
                     gb_diags *diags, char **text) {
    if (n > GB_MOST_BYTES) {
        gb_report(diags, file, 0,
                  "is larger than 16 MB; a file of this kind holds some kilobytes: "
                  "check that it is the right one, or split it");
        return false;
    }
    char *kept = gb_arena_take(arena, n + sizeof END, 1);
    if (kept == NULL) {
        diags->no_memory = true;
        return false;
    }
    memcpy(kept, data, n);
    *text = kept;
    return true;
}

static bool read_all(FILE *stream, size_t expected, const char *file, gb_arena *arena,
                     gb_diags *diags, char **text, size_t *length) {
    size_t room = expected + 65536;
    size_t n = 0;
    char *data = malloc(room);
    while (data != NULL) {
        n += fread(data + n, 1, room - n, stream);
        if (n < room || n > GB_MOST_BYTES)
            break;
        room *= 2;
        char *larger = realloc(data, room);
        if (larger == NULL)
            free(data);
        data = larger;
    }
    bool good = data != NULL && !ferror(stream);
    if (data == NULL)
        diags->no_memory = true;
    else if (!good)
        report_io(diags, file, strerror(errno));
    else
        good = keep_all(data, n, file, arena, diags, text);
    free(data);
    *length = n;
    return good;
}

/* As the system tells it; what is no plain file has none. */
static size_t size_of(const struct stat *info) {
    return S_ISREG(info->st_mode) && info->st_size > 0 && info->st_size <= GB_MOST_BYTES
               ? (size_t)info->st_size
               : 0;
}

bool gb_load_text(const char *file, gb_arena *arena, gb_diags *diags, char **text,
                  size_t *length) {
    struct stat info;
    FILE *stream = fopen(file, "rb");
    if (stream == NULL) {
        report_io(diags, file, strerror(errno));
        return false;
    }
    bool good = false;
    if (fstat(fileno(stream), &info) == 0 && S_ISDIR(info.st_mode))
        report_io(diags, file, gb_tr("it is a folder, not a file"));
    else
        good = read_all(stream, size_of(&info), file, arena, diags, text, length);
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

enum { MOST_NAMES = 200 };

/* The names that are set on one line, in its texts and comments none. */
static size_t names_on(const char *at, const char *names[MOST_NAMES],
                       size_t lengths[MOST_NAMES]) {
    size_t count = 0;
    while (*at != '\0' && *at != '\n' && *at != '#' && count < MOST_NAMES) {
        size_t n = 0;
        if (*at == '"') {
            at += 1 + strcspn(at + 1, "\"\n");
            at += *at == '"';
            continue;
        }
        while (gb_word_char(at[n]))
            n++;
        const char *behind = at + n + strspn(at + n, " \t");
        if (n > 0 && (*behind == '=' || *behind == ':')) {
            names[count] = at;
            lengths[count++] = n;
        }
        at += n > 0 ? n : 1;
    }
    return count;
}

/* libconfig names only the line of a setting that is there twice. The name is the one
   that the line sets twice, or else the last one it sets. */
static void report_twice(const char *text, const char *file, int line, gb_diags *diags) {
    const char *names[MOST_NAMES];
    size_t lengths[MOST_NAMES];
    const char *at = find_line(text, line);
    size_t count = at == NULL ? 0 : names_on(at, names, lengths);
    size_t twice = count == 0 ? 0 : count - 1;
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < i; k++)
            if (lengths[i] == lengths[k] && strncmp(names[i], names[k], lengths[i]) == 0)
                twice = i;
    int length = count == 0 ? 0 : (int)(lengths[twice] > 60 ? 60 : lengths[twice]);
    gb_report(diags, file, line, "'%.*s' is here twice in one group; keep one", length,
              count == 0 ? "" : names[twice]);
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
    if (!gb_load_text(file, arena, diags, &text, &length))
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

const char *gb_path_beside(const char *file, const char *name, gb_arena *arena) {
    const char *slash = strrchr(file, '/');
    gb_text path;
    gb_text_init(&path, arena);
    if (name[0] != '/' && slash != NULL)
        gb_text_add_bytes(&path, file, (size_t)(slash - file) + 1);
    gb_text_add(&path, name);
    return path.failed ? NULL : gb_text_get(&path);
}

bool gb_read_text(const char *file, gb_arena *arena, gb_diags *diags, const char **text,
                  size_t *length) {
    char *read = NULL;
    if (!gb_load_text(file, arena, diags, &read, length))
        return false;
    read[*length] = '\0';
    *text = read;
    return true;
}
