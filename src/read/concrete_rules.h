/* Rules across the keys of a concrete. */
#ifndef READ_CONCRETE_RULES_H
#define READ_CONCRETE_RULES_H

#include "read/reader.h"

/* Reports all that keeps a concrete from being proportioned, each with what is allowed.
   Its materials are linked. */
void gb_check_concrete(const gb_reader *reader, const gb_concrete *concrete);

#endif
