/* Reporting faults while reading. */
#ifndef READ_DIAG_H
#define READ_DIAG_H

#include "gaugebox/read.h"

/* Adds one fault; the format is a whole sentence in English, which is told in the
   language of the run. It knows %s, %d and %zu as printf does. */
#if defined(__GNUC__)
__attribute__((format(printf, 4, 5)))
#endif
void gb_report(gb_diags *diags, const char *file, int line, const char *format, ...);

#endif
