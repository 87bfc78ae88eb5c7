#include "cli/jobs.h"
#include "words/words.h"

#include <dirent.h>
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

enum { DEEPEST_FOLDER = 8 };

static bool add(gb_run *run, const char *file, gb_job_list *list) {
    if (list->count == list->room) {
        size_t room = list->room * 2 + 64;
        const char **larger = gb_arena_take(&run->arena, room, sizeof *larger);
        if (larger == NULL) {
            run->diags.no_memory = true;
            return false;
        }
        if (list->count > 0)
            memcpy(larger, list->files, list->count * sizeof *larger);
        list->files = larger;
        list->room = room;
    }
    list->files[list->count++] = file;
    return true;
}

static bool is_folder(const char *path) {
    struct stat info;
    return stat(path, &info) == 0 && S_ISDIR(info.st_mode);
}

static bool is_job_name(const char *name) {
    size_t n = strlen(name);
    return n > 4 && strcmp(name + n - 4, ".cfg") == 0 && strcmp(name, "prices.cfg") != 0;
}

static const char *join(gb_run *run, const char *folder, const char *name) {
    gb_text path;
    gb_text_init(&path, &run->arena);
    gb_text_add(&path, folder);
    gb_text_add(&path, folder[strlen(folder) - 1] == '/' ? "" : "/");
    gb_text_add(&path, name);
    run->diags.no_memory = run->diags.no_memory || path.failed;
    return gb_text_get(&path);
}

static bool tell(const char *folder) {
    (void)fprintf(stderr,
                  gb_tr("%s: error: cannot be read: %s; check the path and its rights\n"),
                  folder, strerror(errno));
    return false;
}

static bool add_folder(gb_run *run, const char *folder, int depth, gb_job_list *list) {
    struct dirent **entries = NULL;
    int n = scandir(folder, &entries, NULL, alphasort);
    if (n < 0)
        return tell(folder);
    bool good = true;
    for (int i = 0; i < n; i++) {
        const char *name = entries[i]->d_name;
        const char *path = name[0] == '.' ? NULL : join(run, folder, name);
        if (path != NULL && is_folder(path))
            good = depth < DEEPEST_FOLDER && good &&
                   add_folder(run, path, depth + 1, list); /* bounded by DEEPEST_FOLDER */
        else if (path != NULL && is_job_name(name))
            good = add(run, path, list) && good;
        free(entries[i]);
    }
    free((void *)entries);
    return good;
}

bool gb_list_jobs(gb_run *run, const char *path, gb_job_list *list) {
    if (path[0] == '\0' || !is_folder(path))
        return add(run, path, list);
    size_t before = list->count;
    bool good = add_folder(run, path, 1, list);
    if (good && list->count == before)
        (void)fprintf(
            stderr, gb_tr("%s: error: holds no job, no file that ends in .cfg\n"), path);
    return good && list->count > before;
}
