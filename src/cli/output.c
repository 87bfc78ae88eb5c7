#include "cli/output.h"

#include "cli/command.h"
#include "words/words.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static bool failed(const char *file, int why) {
    (void)fprintf(stderr, gb_tr("gaugebox: %s: cannot be written: %s\n"),
                  file == NULL ? gb_tr("standard output") : file, strerror(why));
    return false;
}

/* The name of a file is safe when its folder is. Some file systems cannot do that for a
   folder, which is no reason to tell that the file was not written. */
static void sync_folder(const char *file) {
    const char *slash = strrchr(file, '/');
    size_t n = slash == NULL ? 1 : (size_t)(slash - file) + 1;
    char *folder = malloc(n + 1);
    if (folder == NULL)
        return;
    memcpy(folder, slash == NULL ? "." : file, n);
    folder[n] = '\0';
    int fd = open(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (fd >= 0) {
        (void)fsync(fd);
        (void)close(fd);
    }
    free(folder);
}

static bool write_all(int fd, const char *text, size_t length) {
    while (length > 0) {
        ssize_t n = write(fd, text, length);
        if (n < 0 && errno == EINTR)
            continue;
        if (n <= 0)
            return false;
        text += n;
        length -= (size_t)n;
    }
    return true;
}

/* The rights that a plain new file would get. */
static gb_rights usual_rights(void) {
    mode_t mask = umask(0);
    (void)umask(mask);
    return (gb_rights){0666 & ~mask, (uid_t)-1, (gid_t)-1};
}

/* Those who share a file do so by its group, which one of them may keep where the owner
   cannot be kept. Neither is a reason to write nothing. */
static bool set_rights(int fd, gb_rights rights) {
    struct stat now;
    bool kept = fstat(fd, &now) == 0 &&
                (rights.owner == (uid_t)-1 || rights.owner == now.st_uid) &&
                (rights.group == (gid_t)-1 || rights.group == now.st_gid);
    kept = kept || fchown(fd, rights.owner, rights.group) == 0 ||
           fchown(fd, (uid_t)-1, rights.group) == 0;
    (void)kept;
    return fchmod(fd, rights.mode) == 0;
}

bool gb_replace_file(const char *file, const char *shown, const char *text, size_t length,
                     gb_rights rights) {
    static const char TAIL[] = ".XXXXXX";
    size_t n = strlen(file);
    char *temporary = malloc(n + sizeof TAIL);
    if (temporary == NULL)
        return failed(shown, ENOMEM);
    memcpy(temporary, file, n);
    memcpy(temporary + n, TAIL, sizeof TAIL);
    int fd = mkstemp(temporary);
    if (fd < 0) {
        free(temporary);
        return failed(shown, errno);
    }
    bool good = write_all(fd, text, length) && set_rights(fd, rights) && fsync(fd) == 0;
    int why = errno;
    if (close(fd) != 0 && good) {
        good = false;
        why = errno;
    }
    if (good && rename(temporary, file) != 0) {
        good = false;
        why = errno;
    }
    if (!good)
        (void)unlink(temporary);
    else
        sync_folder(file);
    free(temporary);
    return good || failed(shown, why);
}

/* A device or a pipe cannot be replaced by rename; it is written as it is. */
static bool is_special(const char *file) {
    struct stat info;
    return stat(file, &info) == 0 && !S_ISREG(info.st_mode) && !S_ISDIR(info.st_mode);
}

static bool write_special(const char *file, const char *shown, const char *text,
                          size_t length) {
    int fd = open(file, O_WRONLY | O_CLOEXEC);
    if (fd < 0)
        return failed(shown, errno);
    bool good = write_all(fd, text, length);
    int why = errno;
    if (close(fd) != 0 && good)
        return failed(shown, errno);
    return good || failed(shown, why);
}

/* A link keeps pointing where it did; what it points to is replaced. */
static bool write_named(const char *file, const char *text, size_t length) {
    char *real = realpath(file, NULL);
    const char *at = real != NULL ? real : file; /* a new file has no real path yet */
    bool good = is_special(at) ? write_special(at, file, text, length)
                               : gb_replace_file(at, file, text, length, usual_rights());
    free(real);
    return good;
}

bool gb_write_out(const char *file, const char *text, size_t length) {
    if (file != NULL)
        return write_named(file, text, length);
    if (fwrite(text, 1, length, stdout) != length || fflush(stdout) != 0) {
        int why = errno;
        clearerr(stdout); /* told here, so not once more at exit */
        return failed(NULL, why);
    }
    return true;
}

static void check_stdout(void) {
    if (fflush(stdout) == 0 && ferror(stdout) == 0)
        return;
    (void)failed(NULL, errno);
    _exit(GB_EXIT_IO);
}

void gb_check_stdout_at_exit(void) {
    if (atexit(check_stdout) != 0)
        _exit(GB_EXIT_IO);
}
