/* Preloaded into the program: fails the Nth allocation that the program's own code makes
   (FAIL_ALLOCATION=N), or the Nth call that writes, flushes or renames (FAIL_WRITE=N);
   a file that FIRED names is made then.
   Allocations of shared libraries pass: libconfig 1.5 does not look at its own. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdio_ext.h>
#include <stdlib.h>
#include <string.h>
#include <sys/auxv.h>
#include <sys/types.h>
#include <unistd.h>

static long count_down(const char *name, long *left) {
    if (*left == 0) {
        const char *text = getenv(name);
        *left = text == NULL ? -1 : strtol(text, NULL, 10);
    }
    if (*left > 0 && --*left == 0) {
        *left = -1;
        const char *fired = getenv("FIRED"); /* made, to tell that one did fail */
        if (fired != NULL)
            close(open(fired, O_CREAT | O_WRONLY, 0600));
        return 1;
    }
    return 0;
}

static long allocations;
static long writes;

static const void *program_base;
static int asking; /* dladdr may allocate */

/* The entry point lies in the program itself. */
__attribute__((constructor)) static void find_program(void) {
    Dl_info info;
    if (dladdr((const void *)getauxval(AT_ENTRY), &info) != 0)
        program_base = info.dli_fbase;
}

static int from_program(const void *caller) {
    Dl_info info;
    asking = 1;
    int found = dladdr(caller, &info) != 0 && info.dli_fbase == program_base;
    asking = 0;
    return found;
}

static int fails(const void *caller) {
    if (asking || program_base == NULL || allocations < 0 || !from_program(caller) ||
        !count_down("FAIL_ALLOCATION", &allocations))
        return 0;
    errno = ENOMEM;
    return 1;
}

void *malloc(size_t size) {
    static void *(*real)(size_t);
    if (real == NULL)
        *(void **)&real = dlsym(RTLD_NEXT, "malloc");
    return fails(__builtin_return_address(0)) ? NULL : real(size);
}

void *realloc(void *block, size_t size) {
    static void *(*real)(void *, size_t);
    if (real == NULL)
        *(void **)&real = dlsym(RTLD_NEXT, "realloc");
    return fails(__builtin_return_address(0)) ? NULL : real(block, size);
}

static int write_fails(void) {
    if (writes < 0 || !count_down("FAIL_WRITE", &writes))
        return 0;
    errno = ENOSPC;
    return 1;
}

#define WRAP(type, name, parameters, arguments, failure)                                 \
    type name parameters {                                                               \
        static type(*real) parameters;                                                   \
        if (real == NULL)                                                                \
            *(void **)&real = dlsym(RTLD_NEXT, #name);                                   \
        return write_fails() ? (failure) : real arguments;                               \
    }

WRAP(ssize_t, write, (int fd, const void *bytes, size_t n), (fd, bytes, n), -1)
WRAP(int, fsync, (int fd), (fd), -1)
WRAP(int, rename, (const char *from, const char *to), (from, to), -1)
WRAP(int, mkstemp, (char *name), (name), -1)
WRAP(int, fchmod, (int fd, mode_t mode), (fd, mode), -1)
/* As a stream does that could not write: nothing is taken, and its error mark is set. */
size_t fwrite(const void *bytes, size_t size, size_t n, FILE *to) {
    static size_t (*real)(const void *, size_t, size_t, FILE *);
    if (real == NULL)
        *(void **)&real = dlsym(RTLD_NEXT, "fwrite");
    if (to != stdout || !write_fails())
        return real(bytes, size, n, to);
    to->_flags |= 0x20; /* _IO_ERR_SEEN, which glibc's headers do not show */
    return 0;
}

/* CHANGED names a file that another program lengthens as soon as it is opened to read. */
FILE *fopen(const char *name, const char *mode) {
    static FILE *(*real)(const char *, const char *);
    if (real == NULL)
        *(void **)&real = dlsym(RTLD_NEXT, "fopen");
    const char *changed = getenv("CHANGED");
    if (changed != NULL && strcmp(name, changed) == 0) {
        int fd = open(name, O_WRONLY | O_APPEND);
        if (fd >= 0 && lseek(fd, 0, SEEK_END) >= 0)
            (void)!dprintf(fd, "\n");
        close(fd);
    }
    return real(name, mode);
}

/* A flush of nothing writes nothing. */
int fflush(FILE *to) {
    static int (*real)(FILE *);
    if (real == NULL)
        *(void **)&real = dlsym(RTLD_NEXT, "fflush");
    return to != NULL && __fpending(to) > 0 && write_fails() ? EOF : real(to);
}
