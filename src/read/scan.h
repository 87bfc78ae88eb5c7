/* A first look at the text of a file, for what libconfig would lose in silence. */
#ifndef READ_SCAN_H
#define READ_SCAN_H

#include "gaugebox/read.h"

/* True when the text (ended by NUL, `length` bytes long) is UTF-8 without a NUL, and its
   quotes, comments, brackets and numbers are whole; else the first fault is reported. */
bool gb_scan_text(const char *text, size_t length, const char *file, gb_diags *diags);

/* The first half of that, for files of other forms: UTF-8 without a NUL. */
bool gb_check_text(const char *text, size_t length, const char *file, gb_diags *diags);

/* The characters that names and numbers are made of. */
bool gb_word_char(char c);

#endif
