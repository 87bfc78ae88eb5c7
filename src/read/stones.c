#include "read/table.h"

#include "read/diag.h"
#include "read/nearest.h"
#include "read/schemas.h"

#include <string.h>
#include <unistd.h>

static void check_stones(gb_mix_table *t, const char *file, const gb_stone *list,
                         size_t count) {
    for (size_t i = 0; i < count; i++) {
        if (list[i].at.faulty)
            continue;
        if (list[i].typical.kg_m3 > list[i].most.kg_m3)
            gb_report(t->diags, file, list[i].at.line,
                      "stone '%s' weighs more as a rule than at the most; check which is "
                      "which",
                      list[i].name);
        for (size_t k = 0; k < i; k++)
            if (list[k].name != NULL && strcmp(list[i].name, list[k].name) == 0)
                gb_report(t->diags, file, list[i].at.line,
                          "stone '%s' is here twice, first at line %d; rename one",
                          list[i].name, list[k].at.line);
    }
}

static void add_stones(gb_mix_table *t, gb_stone *list, size_t count) {
    gb_stone *all = gb_arena_take(t->arena, t->stone_count + count + 1, sizeof *all);
    if (all == NULL) {
        t->diags->no_memory = true;
        return;
    }
    if (t->stone_count > 0)
        memcpy(all, t->stones, t->stone_count * sizeof *all);
    if (count > 0)
        memcpy(all + t->stone_count, list, count * sizeof *all);
    if (t->places != NULL) {
        gb_places_move(t->places, t->stones, all, t->stone_count * sizeof *all);
        gb_places_move(t->places, list, all + t->stone_count, count * sizeof *all);
    }
    t->stones = all;
    t->stone_count += count;
}

static void read_stones(gb_mix_table *t) {
    if (t->stones_read)
        return;
    t->stones_read = true;
    size_t faults = gb_diags_count(t->diags);
    for (size_t i = 0; i < t->folder_count; i++) {
        const char *file = gb_table_path(t, t->folders[i], GB_STONES);
        /* A user's folder may do without; the shipped one, the last, may not. */
        if (i + 1 < t->folder_count && access(file, F_OK) != 0)
            continue;
        gb_stone_file read = {0};
        gb_reader reader = gb_table_reader(t, file);
        if (!gb_read_file(&reader, &GB_STONE_FILE_SCHEMA, &read))
            continue;
        check_stones(t, file, read.list, read.count);
        add_stones(t, read.list, read.count);
        t->stones_digest = gb_digest_add_number(t->stones_digest, reader.digest);
    }
    t->stones_broken = gb_diags_count(t->diags) > faults;
}

const gb_stone *gb_stone_find(gb_mix_table *table, gb_ref name, const char *file) {
    read_stones(table);
    for (size_t i = 0; i < table->stone_count; i++)
        if (table->stones[i].name != NULL &&
            strcmp(table->stones[i].name, name.text) == 0)
            return &table->stones[i];
    if (table->stones_broken)
        return NULL; /* its faults are told, and it may well be there */
    gb_nearest nearest;
    gb_nearest_init(&nearest, name.text);
    for (size_t i = 0; i < table->stone_count; i++)
        gb_nearest_offer(&nearest, table->stones[i].name);
    if (nearest.best != NULL)
        gb_report(table->diags, file, name.line,
                  "stone '%s' is not in stones.cfg; did you mean '%s'?", name.text,
                  nearest.best);
    else
        gb_report(table->diags, file, name.line,
                  "stone '%s' is not in stones.cfg; add it to one in a folder of your "
                  "own, or use one that is: granite, limestone, sandstone and others",
                  name.text);
    return NULL;
}

uint64_t gb_stones_digest(const gb_mix_table *table) {
    return table->stones_digest;
}
