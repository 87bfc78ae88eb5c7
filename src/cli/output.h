/* Output that appears whole or not at all. */
#ifndef CLI_OUTPUT_H
#define CLI_OUTPUT_H

#include "gaugebox/base.h"

/* Writes text to `file`, or to standard output when it is NULL. A file appears by rename
   once every byte is on the disk. False with the reason on stderr. */
bool gb_write_out(const char *file, const char *text, size_t length);

/* At exit: a standard output that could not take all (a full disk) makes the exit
   status 3, for --help too. */
void gb_check_stdout_at_exit(void);

#endif
