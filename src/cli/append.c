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
static bool is_in_place(const gb_held_file *held, struct stat *info) {
    struct stat named;
    return fstat(held->fd, info) == 0 && stat(held->path, &named) == 0 &&
           named.st_dev == info->st_dev && named.st_ino == info->st_ino;
}

static int lock(int fd) {
    int result = 0;
    do
        result = flock(fd, LOCK_EX);
    while (result != 0 && errno == EINTR);
    return result;
}

bool gb_hold_file(const char *file, gb_held_file *held) {
    *held = (gb_held_file){.shown = file, .fd = -1};
    struct stat info;
    for (;;) {
        held->fd = open(file, O_RDWR | O_CREAT | O_CLOEXEC, 0666);
        if (held->fd < 0 || lock(held->fd) != 0)
            return failed(held, errno);
        /* A link stays one: the file that it leads to is replaced. */
        held->path = realpath(file, NULL);
        if (held->path != NULL && is_in_place(held, &info))
            break;
        if (held->path == NULL && errno != ENOENT)
            return failed(held, errno);
        (void)close(held->fd);
        free(held->path);
        held->path = NULL;
    }
    if (!S_ISREG(info.st_mode))
        return failed(held, EINVAL);
    held->mode = info.st_mode & 07777;
    held->is_new = info.st_size == 0;
    return true;
}

void gb_let_file_go(gb_held_file *held, bool written) {
    if (held->is_new && !written)
        (void)unlink(held->path);
    (void)close(held->fd);
    free(held->path);
}
