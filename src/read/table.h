/* The insides of the mix table, shared by those who read it, check it and complete it. */
#ifndef READ_TABLE_H
#define READ_TABLE_H

#include "read/reader.h"

/* One family's file in one folder, or the mixes that a job holds itself. */
typedef struct gb_family {
    struct gb_family *next;
    const char *name;
    const char *file;
    size_t rank; /* of its folder in the order of search, from 1; 0: a job's own */
    gb_mix *list;
    size_t count;
    bool broken; /* it has faults, told when it was read */
    uint64_t digest;
} gb_family;

struct gb_mix_table {
    const char *const *folders; /* the last one is the shipped one */
    size_t folder_count;
    gb_arena *arena;
    gb_diags *diags;
    gb_material *materials; /* of all folders, in order of search */
    size_t material_count;
    bool materials_read;
    bool materials_broken;
    uint64_t materials_digest;
    gb_stone *stones; /* of all folders, in order of search */
    size_t stone_count;
    bool stones_read;
    bool stones_broken;
    uint64_t stones_digest;
    gb_family *families;
    gb_family *own; /* of the job that is being read; NULL: none */
    gb_places *places;
};

/* FOLDER/NAME.cfg, and a reader of it that keeps places when the table does. */
const char *gb_table_path(gb_mix_table *t, const char *folder, const char *name);
gb_reader gb_table_reader(const gb_mix_table *t, const char *file);

/* The file of stones, and whether a name is that of a family, which it and the materials'
   are not. */
#define GB_STONES "stones"
bool gb_is_family(const char *name);

/* The file as places name it: a shipped one from the name of its folder on. */
const char *gb_shown_file(const gb_mix_table *t, const char *file);

/* The first entry of that id in the order of search from `rank` on, or NULL; it may still
   lack what it is like. *family is its family, or else one of that name that has faults,
   or NULL. */
gb_mix *gb_seek_entry(gb_mix_table *t, const char *id, size_t rank, gb_family **family);

/* The same from the first place on, with a fault reported at `file` when the id has no
   form or there is no such entry. */
gb_mix *gb_find_entry(gb_mix_table *t, gb_ref id, const char *file, gb_family **family);

/* Gives every mix of a family what it takes from those that it is like. */
void gb_inherit(gb_mix_table *t, gb_family *family);

/* The rules across the keys of one mix, and of its additions; report every fault. One
   with a concrete gets its parts, water and air. */
void gb_check_mix(gb_mix_table *t, gb_mix *mix);
/* Links the materials of a mix's concrete and proportions it. False with faults reported
   as the reader's, or without memory. */
bool gb_take_concrete(gb_mix_table *t, gb_mix *mix, const gb_reader *reader);
void gb_check_additions(gb_mix_table *t, const gb_mix *mix);

#endif
