#include "cli/place.h"

#include <libgen.h>
#include <stdlib.h>
#include <unistd.h>

const char *gb_shared_place(const char *path, gb_arena *arena) {
    char self[4096];
    ssize_t n = readlink("/proc/self/exe", self, sizeof self - 1);
    if (n <= 0)
        return NULL;
    self[n] = '\0';
    gb_text place;
    gb_text_init(&place, arena);
    gb_text_add(&place, dirname(self));
    gb_text_add(&place, "/../share/");
    gb_text_add(&place, path);
    return place.failed ? NULL : gb_text_get(&place);
}

/* XDG Base Directory Specification: a path that is not absolute is ignored. */
const char *gb_user_place(const char *path, gb_arena *arena) {
    const char *base = getenv("XDG_DATA_HOME");
    const char *home = getenv("HOME");
    bool stated = base != NULL && base[0] == '/';
    if (!stated && (home == NULL || home[0] != '/'))
        return "";
    gb_text place;
    gb_text_init(&place, arena);
    gb_text_add(&place, stated ? base : home);
    gb_text_add(&place, stated ? "/" : "/.local/share/");
    gb_text_add(&place, path);
    return place.failed ? NULL : gb_text_get(&place);
}
