#include "cli/append.h"

#include "words/words.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

static bool failed(gb_held_file *held, int why) {
    (void)fprintf(stderr, gb_tr("gaugebox: %s: cannot be written: %s\n"), held->shown,
                  strerror(why));
    if (held->fd >= 0)
        (void)close(held->fd);
    free(held->path);
    held->path = NULL;
    held->fd = -1;
    return false;
}

/* Whoever had it before may have put another file in its place. */
static bool is_in_place(const gb_held_file *held, const char *name) {
    struct stat named;
    return stat(name, &named) == 0 && named.st_dev == held->info.st_dev &&
           named.st_ino == held->info.st_ino;
}

static int lock(int fd) {
    int result = 0;
    do
        result = flock(fd, LOCK_EX);
    while (result != 0 && errno == EINTR);
    return result;
}

/* Opens and waits. What is no plain file is never one that is in place. */
static int open_and_wait(gb_held_file *held) {
    struct stat before;
    bool there = stat(held->shown, &before) == 0;
    held->fd = open(held->shown, O_RDWR | O_CREAT | O_CLOEXEC, 0666);
    if (held->fd < 0)
        return errno;
    if (fstat(held->fd, &held->info) != 0)
        return errno;
    if (!S_ISREG(held->info.st_mode))
        return EINVAL;
    if (lock(held->fd) != 0 || fstat(held->fd, &held->info) != 0)
        return errno;
    held->is_new = !there && held->info.st_size == 0;
    return 0;
}

bool gb_hold_file(const char *file, gb_held_file *held) {
    /* Each time round another one has put its file in place; a name whose file is gone
       for good, as /dev/fd may have them, comes to an end too. */
    enum { MOST_ROUNDS = 10000 };
    *held = (gb_held_file){.shown = file, .fd = -1};
    for (int i = 0; i < MOST_ROUNDS; i++) {
        int why = open_and_wait(held);
        if (why != 0)
            return failed(held, why);
        /* A link stays one: the file that it leads to is replaced. */
        held->path = realpath(file, NULL);
        if (held->path != NULL && is_in_place(held, held->path))
            return true;
        if (held->path == NULL && errno != ENOENT)
            return failed(held, errno);
        (void)close(held->fd);
        free(held->path);
        held->path = NULL;
        held->fd = -1;
    }
    return failed(held, ENOENT);
}

bool gb_file_is_as_held(const gb_held_file *held) {
    struct stat now;
    const struct stat *then = &held->info;
    if (fstat(held->fd, &now) == 0 && now.st_size == then->st_size &&
        now.st_mtim.tv_sec == then->st_mtim.tv_sec &&
        now.st_mtim.tv_nsec == then->st_mtim.tv_nsec && is_in_place(held, held->shown))
        return true;
    (void)fprintf(
        stderr,
        gb_tr("gaugebox: %s: another program has changed it just now; nothing is "
              "added, try again\n"),
        held->shown);
    return false;
}

void gb_let_file_go(gb_held_file *held, bool written) {
    struct stat now;
    if (held->is_new && !written && fstat(held->fd, &now) == 0 && now.st_size == 0 &&
        is_in_place(held, held->path))
        (void)unlink(held->path);
    (void)close(held->fd);
    free(held->path);
}
