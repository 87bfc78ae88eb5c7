/* Marks for English words that are translated where they are printed: xgettext finds
   them, the compiler sees the words alone. NF_ marks a format with places for printf. */
#ifndef WORDS_MARK_H
#define WORDS_MARK_H

#define N_(words)   words
#define NF_(format) format

#endif
