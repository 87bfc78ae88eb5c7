#include "cli/language.h"

#include "cli/command.h"
#include "cli/place.h"
#include "words/words.h"

#include <dirent.h>
#include <libintl.h>
#include <limits.h>
#include <locale.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static const char OPTION[] = "--lang";

/* argp takes a long option by its first letters too. */
static bool is_option(const char *arg) {
    size_t length = strcspn(arg, "=");
    return length > 2 && length < sizeof OPTION && strncmp(arg, OPTION, length) == 0;
}

/* The last --lang counts, as with every option; NULL when there is none. */
static const char *find_language(int argc, char **argv) {
    const char *found = NULL;
    for (int i = 1; i < argc && strcmp(argv[i], "--") != 0; i++) {
        if (!is_option(argv[i]))
            continue;
        const char *value = strchr(argv[i], '=');
        if (value != NULL)
            found = value + 1;
        else if (i + 1 < argc)
            found = argv[++i];
    }
    return found;
}

/* `--lang es sheet` becomes `sheet --lang es`: commands read their own options. */
static void move_behind_command(int argc, char **argv) {
    if (argc < 2 || !is_option(argv[1]))
        return;
    int words = strchr(argv[1], '=') != NULL ? 1 : 2;
    if (argc < words + 2)
        return;
    char *command = argv[words + 1];
    memmove(&argv[2], &argv[1], (size_t)words * sizeof argv[0]);
    argv[1] = command;
}

static bool is_language(const char *locales, const char *name) {
    char path[PATH_MAX];
    int n =
        snprintf(path, sizeof path, "%s/%s/LC_MESSAGES/" GB_DOMAIN ".mo", locales, name);
    return strlen(name) == 2 && strspn(name, "abcdefghijklmnopqrstuvwxyz") == 2 &&
           n > 0 && (size_t)n < sizeof path && access(path, R_OK) == 0;
}

static int tell_languages(const char *locales, const char *wanted) {
    struct dirent **entries = NULL;
    int n = scandir(locales, &entries, NULL, alphasort);
    (void)fprintf(stderr, "gaugebox: --lang '%.*s' is not known; known are: en",
                  gb_cut(wanted, 20), wanted);
    for (int i = 0; i < n; i++) {
        if (is_language(locales, entries[i]->d_name))
            (void)fprintf(stderr, ", %s", entries[i]->d_name);
        free(entries[i]);
    }
    free((void *)entries);
    (void)fputs("\n", stderr);
    return GB_EXIT_USAGE;
}

/* Numbers and signs stay those of the plain locale: only messages change. gettext looks
   at LANGUAGE when the locale of messages is not "C", and C.UTF-8 is part of every C
   library. argp looks up the help of options in the current domain, whatever theirs. */
static int speak(const char *locales, const char *language) {
    if (setlocale(LC_MESSAGES, "C.UTF-8") != NULL &&
        setenv("LANGUAGE", language, 1) == 0 &&
        bindtextdomain(GB_DOMAIN, locales) != NULL &&
        bind_textdomain_codeset(GB_DOMAIN, "UTF-8") != NULL &&
        textdomain(GB_DOMAIN) != NULL)
        return GB_EXIT_DONE;
    (void)fprintf(stderr, "gaugebox: the language '%s' cannot be set\n", language);
    return GB_EXIT_IO;
}

int gb_choose_language(int argc, char **argv) {
    const char *language = find_language(argc, argv);
    move_behind_command(argc, argv);
    if (language == NULL || strcmp(language, "en") == 0)
        return GB_EXIT_DONE;
    gb_arena arena;
    gb_arena_init(&arena, gb_malloc_supply());
    int result = GB_EXIT_IO;
    const char *locales = gb_shared_place("locale", &arena);
    if (locales == NULL)
        (void)fputs("gaugebox: the program's own place cannot be found\n", stderr);
    else if (is_language(locales, language))
        result = speak(locales, language);
    else
        result = tell_languages(locales, language);
    gb_arena_release(&arena);
    return result;
}
