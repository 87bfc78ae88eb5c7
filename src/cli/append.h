/* Adding to a file that several may add to at once. */
#ifndef CLI_APPEND_H
#define CLI_APPEND_H

#include <stdbool.h>
#include <sys/stat.h>

/* A file that is held for oneself; others wait. */
typedef struct gb_held_file {
    const char *shown; /* as the user named it */
    char *path;        /* where it really is */
    int fd;
    struct stat info; /* when it was first held */
    bool is_new;      /* there was none, and it is empty */
} gb_held_file;

/* Holds a file, made empty where there is none. False with the reason told. */
bool gb_hold_file(const char *file, gb_held_file *held);

/* False, with the reason told, when one that holds nothing has changed it since. */
bool gb_file_is_as_held(const gb_held_file *held);

/* Lets it go; one that was made and got nothing is taken away again. */
void gb_let_file_go(gb_held_file *held, bool written);

#endif
