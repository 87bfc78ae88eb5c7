/* Output that appears whole or not at all. */
#ifndef CLI_OUTPUT_H
#define CLI_OUTPUT_H

#include <sys/types.h>

#include "gaugebox/base.h"

/* Writes text to `file`, or to standard output when it is NULL. A file appears by rename
   once every byte is on the disk. False with the reason on stderr. */
bool gb_write_out(const char *file, const char *text, size_t length);

/* At exit: a standard output that could not take all (a full disk) makes the exit
   status 3, for --help too. */
void gb_check_stdout_at_exit(void);

/* Who may do what with a file. */
typedef struct gb_rights {
    mode_t mode;
    uid_t owner; /* -1, as of the group: as it comes */
    gid_t group;
} gb_rights;

/* Replaces a file, which keeps its old text whole unless the new one is all on the disk;
   it gets that mode, and the owner and group where this user may give them. `shown` is
   the name for the message. False with the reason told. */
bool gb_replace_file(const char *file, const char *shown, const char *text, size_t length,
                     gb_rights rights);

#endif
