/* Typed getters: one libconfig setting to one value, with its faults reported. */
#ifndef READ_VALUES_H
#define READ_VALUES_H

#include "read/reader.h"

/* Reads `setting` as the kind of `key` into *out (the struct, not the member). */
void gb_read_value(gb_reader *reader, const config_setting_t *setting, const gb_key *key,
                   void *out);

/* Writes the key's fallback, or what stands for "not stated", into *out. */
void gb_default_value(gb_reader *reader, const gb_key *key, void *out);

#endif
