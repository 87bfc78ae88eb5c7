#include "read/diag.h"
#include "read/nearest.h"
#include "read/reader.h"
#include "read/schemas.h"
#include "words/mark.h"

#include <dirent.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* One family's file in one folder, once it was read. */
typedef struct family {
    struct family *next;
    const char *file;
    gb_mix *list;
    size_t count;
    bool broken; /* it has faults, told when it was read */
    uint64_t digest;
} family;

struct gb_mix_table {
    const char *const *folders;
    size_t folder_count;
    gb_arena *arena;
    gb_diags *diags;
    gb_material *materials; /* of all folders, in order of search */
    size_t material_count;
    bool materials_read;
    bool materials_broken;
    uint64_t materials_digest;
    family *families;
    gb_places *places;
};

static const char MATERIALS[] = "materials";

gb_mix_table *gb_mix_table_open(const char *const *folders, size_t folder_count,
                                gb_arena *arena, gb_diags *diags) {
    gb_mix_table *table = gb_arena_take(arena, 1, sizeof *table);
    if (table == NULL) {
        diags->no_memory = true;
        return NULL;
    }
    table->folders = folders;
    table->folder_count = folder_count;
    table->arena = arena;
    table->diags = diags;
    return table;
}

void gb_mix_table_keep_places(gb_mix_table *table, gb_places *places) {
    table->places = places;
}

gb_places *gb_mix_table_places(const gb_mix_table *table) {
    return table->places;
}

/* The shipped folder, the last, lies elsewhere on each machine: places name its files
   from its own name on, as mixes/bed.cfg. */
static const char *without_prefix(const gb_mix_table *t, const char *file) {
    const char *shipped = t->folders[t->folder_count - 1];
    size_t length = strlen(shipped);
    const char *slash = strrchr(shipped, '/');
    bool inside = strncmp(file, shipped, length) == 0 && file[length] == '/';
    return inside && slash != NULL ? file + (slash - shipped) + 1 : file;
}

static gb_reader reader_of(const gb_mix_table *t, const char *file) {
    return (gb_reader){.file = file,
                       .arena = t->arena,
                       .diags = t->diags,
                       .places = t->places,
                       .shown = without_prefix(t, file)};
}

static const char *path_of(gb_mix_table *t, const char *folder, const char *name,
                           size_t name_length) {
    gb_text path;
    gb_text_init(&path, t->arena);
    gb_text_add(&path, folder);
    gb_text_add(&path, "/");
    gb_text_add_bytes(&path, name, name_length);
    gb_text_add(&path, ".cfg");
    if (path.failed)
        t->diags->no_memory = true;
    return gb_text_get(&path);
}

/* ---- materials ------------------------------------------------------------------- */

static void check_materials(gb_mix_table *t, const char *file, const gb_material *list,
                            size_t count) {
    for (size_t i = 0; i < count; i++)
        if (!list[i].at.faulty && list[i].kind != GB_CEMENT &&
            list[i].masonry != GB_NOT_MASONRY)
            gb_report(t->diags, file, list[i].at.line,
                      "material '%s' is no cement, and 'masonry_type' says nothing "
                      "about it; take it out, or change its kind",
                      list[i].name);
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < i; k++)
            if (list[i].name != NULL && list[k].name != NULL &&
                strcmp(list[i].name, list[k].name) == 0)
                gb_report(t->diags, file, list[i].at.line,
                          "material '%s' is here twice, first at line %d; rename one",
                          list[i].name, list[k].at.line);
}

static void add_materials(gb_mix_table *t, const gb_material *list, size_t count) {
    gb_material *all = gb_arena_take(t->arena, t->material_count + count, sizeof *all);
    if (all == NULL) {
        t->diags->no_memory = true;
        return;
    }
    if (t->material_count > 0)
        memcpy(all, t->materials, t->material_count * sizeof *all);
    memcpy(all + t->material_count, list, count * sizeof *all);
    if (t->places != NULL) {
        gb_places_move(t->places, t->materials, all, t->material_count * sizeof *all);
        gb_places_move(t->places, list, all + t->material_count, count * sizeof *all);
    }
    t->materials = all;
    t->material_count += count;
}

static void read_materials(gb_mix_table *t) {
    if (t->materials_read)
        return;
    t->materials_read = true;
    size_t faults = gb_diags_count(t->diags);
    for (size_t i = 0; i < t->folder_count; i++) {
        const char *file = path_of(t, t->folders[i], MATERIALS, strlen(MATERIALS));
        /* A user's folder may do without; the shipped one, the last, may not. */
        if (i + 1 < t->folder_count && access(file, F_OK) != 0)
            continue;
        gb_material_file read = {0};
        gb_reader reader = reader_of(t, file);
        if (!gb_read_file(&reader, &GB_MATERIAL_SCHEMA, &read))
            continue;
        check_materials(t, file, read.list, read.count);
        add_materials(t, read.list, read.count);
        t->materials_digest = gb_digest_add_number(t->materials_digest, reader.digest);
    }
    t->materials_broken = gb_diags_count(t->diags) > faults;
}

const gb_material *gb_material_find(gb_mix_table *table, const char *name) {
    read_materials(table);
    for (size_t i = 0; i < table->material_count; i++)
        if (table->materials[i].name != NULL &&
            strcmp(table->materials[i].name, name) == 0)
            return &table->materials[i];
    return NULL;
}

/* ---- the rules of one mix -------------------------------------------------------- */

static void link_parts(gb_mix_table *t, const gb_mix *mix) {
    for (size_t i = 0; i < mix->part_count; i++) {
        gb_part *part =
            (gb_part *)&mix->parts[i]; /* ours until the table is handed out */
        if (part->material_name == NULL)
            continue;
        part->material = gb_material_find(t, part->material_name);
        if (part->material != NULL)
            continue;
        gb_nearest nearest;
        gb_nearest_init(&nearest, part->material_name);
        for (size_t k = 0; k < t->material_count; k++)
            if (t->materials[k].name != NULL)
                gb_nearest_offer(&nearest, t->materials[k].name);
        if (nearest.best != NULL)
            gb_report(t->diags, mix->file, part->at.line,
                      "material '%s' is not in materials.cfg; did you mean %s; add it "
                      "there, or use one that is",
                      part->material_name, nearest.best);
        else
            gb_report(t->diags, mix->file, part->at.line,
                      "material '%s' is not in materials.cfg; add it there, or use one "
                      "that is",
                      part->material_name);
    }
}

static void check_parts(gb_mix_table *t, const gb_mix *mix) {
    bool label = mix->label.at.line != 0;
    if (label && mix->claims != GB_NO_CLAIM)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' is a bagged blend, and a claim is checked by proportions, "
                  "which its bag does not tell; take 'claims' out",
                  mix->name);
    if (label && mix->part_count > 0)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' has both parts and a label; a site mix has 'parts', a bagged "
                  "blend has 'label'",
                  mix->name);
    if (!label && mix->part_count == 0)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' has no parts and no label; a site mix has 'parts', a bagged "
                  "blend has 'label'",
                  mix->name);
    if (mix->part_count > GB_MOST_PARTS)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' has %zu parts; at most %d are gauged", mix->name,
                  mix->part_count, GB_MOST_PARTS);
    const gb_material *first = mix->part_count > 0 ? mix->parts[0].material : NULL;
    if (first != NULL && isnan(first->pack.kg))
        gb_report(t->diags, mix->file, mix->parts[0].at.line,
                  "the first part of a mix is its binder, and '%s' comes in no bag; put "
                  "the cement or lime first",
                  first->name);
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material != NULL && mix->parts[i].material->kind == GB_COARSE &&
            mix->water.basis == GB_WATER_DEMAND)
            gb_report(t->diags, mix->file, mix->at.line,
                      "mix '%s' holds stone, and the water demand is one of mortars; "
                      "state its water by = \"binder\"",
                      mix->name);
}

/* True when the three figures of the basis in use are stated, and none of the other. */
static bool water_is_stated(const gb_water *w) {
    bool label = w->basis == GB_WATER_LABEL;
    const double shares[] = {w->least.of_one, w->usual.of_one, w->most.of_one};
    const double volumes[] = {w->bag_least.m3, w->bag_usual.m3, w->bag_most.m3};
    for (int i = 0; i < 3; i++)
        if (isnan(shares[i]) != label || isnan(volumes[i]) == label)
            return false;
    return true;
}

static void check_water(gb_mix_table *t, const gb_mix *mix) {
    const gb_water *w = &mix->water;
    bool label = w->basis == GB_WATER_LABEL;
    if (!water_is_stated(w)) {
        gb_report(
            t->diags, mix->file, mix->at.line,
            "the water of '%s' must state all three of %s, and no others", mix->name,
            label ? "bag_least, bag_usual, bag_never_past" : "least, usual, never_past");
        return;
    }
    bool rises =
        label ? w->bag_least.m3 <= w->bag_usual.m3 && w->bag_usual.m3 <= w->bag_most.m3
              : w->least.of_one <= w->usual.of_one && w->usual.of_one <= w->most.of_one;
    if (!rises)
        gb_report(t->diags, mix->file, mix->at.line,
                  "the water of '%s' runs backwards; least must not be over usual, nor "
                  "usual over never past",
                  mix->name);
    bool both = mix->label.at.line != 0 && mix->part_count > 0;
    if (both || label == (mix->label.at.line != 0))
        return;
    gb_report(t->diags, mix->file, mix->at.line,
              label ? NF_("the water of '%s' is counted by label; a site mix counts by "
                          "demand or binder, a bagged blend by label")
                    : NF_("the water of '%s' is counted by demand or binder; a site mix "
                          "counts by demand or binder, a bagged blend by label"),
              mix->name);
}

static void check_yield(gb_mix_table *t, const gb_mix *mix) {
    gb_recipe recipe;
    gb_status status = gb_make_recipe(mix, NULL, false, (gb_mass){GB_NONE}, &recipe);
    if (status == GB_IMPOSSIBLE)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mass and volume of '%s' do not fit: fresh mixes weigh 1200 to 2700 "
                  "kg/m3 (75 to 169 lb/ft3); check the bag, the yield and the water",
                  mix->name);
    else if (status != GB_OK)
        gb_report(t->diags, mix->file, mix->at.line,
                  "no yield can be computed for '%s'; check its parts and its water",
                  mix->name);
}

static bool plain_name(const char *name) {
    return name[strspn(name, "abcdefghijklmnopqrstuvwxyz0123456789-")] == '\0';
}

static void check_mix(gb_mix_table *t, const gb_mix *mix, const gb_mix *before,
                      size_t before_count) {
    if (!plain_name(mix->name))
        gb_report(t->diags, mix->file, mix->at.line,
                  "'%s' is no name for a mix; use small letters, figures and hyphens",
                  mix->name);
    for (size_t i = 0; i < before_count; i++)
        if (before[i].name != NULL && strcmp(before[i].name, mix->name) == 0)
            gb_report(t->diags, mix->file, mix->at.line,
                      "mix '%s' is here twice, first at line %d; rename one", mix->name,
                      before[i].at.line);
    if (mix->uses & (1u << GB_SLURRY) && mix->label.at.line != 0)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' is a bagged blend, and a slurry is mixed by weight in pots; "
                  "give it parts, or take slurry out of its uses",
                  mix->name);
    if (mix->uses & (1u << GB_SLURRY) && isnan(mix->open.s))
        gb_report(t->diags, mix->file, mix->at.line,
                  "slurry '%s' has no 'open'; add how long it may lie open on the stone",
                  mix->name);
    check_parts(t, mix);
    check_water(t, mix);
}

/* ---- families -------------------------------------------------------------------- */

static void finish_mix(gb_mix_table *t, family *f, gb_mix *mix, const char *id,
                       size_t family_length) {
    gb_text full;
    gb_text_init(&full, t->arena);
    gb_text_add_bytes(&full, id, family_length);
    gb_text_add(&full, "/");
    gb_text_add(&full, mix->name == NULL ? "" : mix->name);
    mix->id = gb_text_get(&full);
    mix->file = f->file;
    mix->digest = f->digest;
    if (full.failed)
        t->diags->no_memory = true;
    if (mix->name == NULL)
        return;
    /* Materials that could not be read would only raise false faults here. */
    if (t->materials_broken)
        return;
    size_t faults = gb_diags_count(t->diags);
    link_parts(t, mix);
    check_mix(t, mix, f->list, (size_t)(mix - f->list));
    if (gb_diags_count(t->diags) == faults)
        check_yield(t, mix);
}

static family *read_family(gb_mix_table *t, const char *file, const char *id,
                           size_t family_length) {
    for (family *f = t->families; f != NULL; f = f->next)
        if (strcmp(f->file, file) == 0)
            return f;
    family *f = gb_arena_take(t->arena, 1, sizeof *f);
    if (f == NULL) {
        t->diags->no_memory = true;
        return NULL;
    }
    f->file = file;
    f->next = t->families;
    t->families = f;
    read_materials(t);
    gb_mix_file read = {0};
    gb_reader reader = reader_of(t, file);
    size_t faults = gb_diags_count(t->diags);
    f->broken = true;
    if (!gb_read_file(&reader, &GB_MIX_SCHEMA, &read))
        return f;
    f->list = read.list;
    f->count = read.count;
    f->digest = gb_digest_add_number(t->materials_digest, reader.digest);
    /* Rules across keys speak only of groups that read without a fault. */
    for (size_t i = 0; i < f->count; i++)
        if (!f->list[i].at.faulty && !f->list[i].at.inner)
            finish_mix(t, f, &f->list[i], id, family_length);
    f->broken = gb_diags_count(t->diags) > faults || t->materials_broken;
    if (f->broken)
        f->count = 0;
    return f;
}

static const gb_mix *find_in(const family *f, const char *id) {
    for (size_t i = 0; f != NULL && i < f->count; i++)
        if (strcmp(f->list[i].id, id) == 0)
            return &f->list[i];
    return NULL;
}

/* The id nearest to one that is not there, from the families read so far. */
static const char *nearest_id(const gb_mix_table *t, const char *id) {
    gb_nearest nearest;
    gb_nearest_init(&nearest, id);
    for (const family *f = t->families; f != NULL; f = f->next)
        for (size_t i = 0; i < f->count; i++)
            gb_nearest_offer(&nearest, f->list[i].id);
    return nearest.best;
}

static void read_folder(gb_mix_table *t, const char *folder);

static void report_missing(gb_mix_table *t, gb_ref id, const char *file) {
    /* The family itself may be misspelt: advice looks at all of them. */
    for (size_t i = 0; i < t->folder_count; i++)
        read_folder(t, t->folders[i]);
    const char *near = nearest_id(t, id.text);
    if (near != NULL)
        gb_report(t->diags, file, id.line, "mix '%s' is not known; did you mean '%s'?",
                  id.text, near);
    else
        gb_report(t->diags, file, id.line,
                  "mix '%s' is not known; `gaugebox mix` lists those that are", id.text);
}

const gb_mix *gb_mix_find(gb_mix_table *table, gb_ref id, const char *file) {
    size_t length = strcspn(id.text, "/");
    bool shaped =
        id.text[length] == '/' && length > 0 && plain_name(id.text + length + 1);
    for (size_t i = 0; i < length; i++)
        shaped = shaped && id.text[i] != '.';
    if (!shaped) {
        gb_report(table->diags, file, id.line,
                  "'%s' names no mix; write family/name, such as bed/stiff-1-4", id.text);
        return NULL;
    }
    bool broken = false;
    bool real = strncmp(id.text, MATERIALS, length) != 0 || MATERIALS[length] != '\0';
    for (size_t i = 0; real && i < table->folder_count; i++) {
        const char *path = path_of(table, table->folders[i], id.text, length);
        if (access(path, F_OK) != 0)
            continue;
        const family *f = read_family(table, path, id.text, length);
        const gb_mix *mix = find_in(f, id.text);
        if (mix != NULL)
            return mix;
        broken = broken || f == NULL || f->broken;
    }
    /* A mix of a broken file may well be there; its faults are told already. */
    if (!broken)
        report_missing(table, id, file);
    return NULL;
}

static int by_id(const void *a, const void *b) {
    const gb_mix *const *x = a;
    const gb_mix *const *y = b;
    return strcmp((*x)->id, (*y)->id);
}

/* The families of one folder; one that cannot be opened is no folder of mixes. */
static void read_folder(gb_mix_table *t, const char *folder) {
    DIR *dir = opendir(folder);
    if (dir == NULL) {
        gb_report(t->diags, folder, 0, "no folder of mixes; check the path");
        t->diags->io = true;
        return;
    }
    for (struct dirent *e = readdir(dir); e != NULL; e = readdir(dir)) {
        size_t n = strlen(e->d_name);
        if (n <= 4 || strcmp(e->d_name + n - 4, ".cfg") != 0)
            continue;
        char *name = gb_arena_copy(t->arena, e->d_name);
        if (name == NULL)
            t->diags->no_memory = true;
        else if (strncmp(name, MATERIALS, n - 4) != 0)
            (void)read_family(t, path_of(t, folder, name, n - 4), name, n - 4);
    }
    (void)closedir(dir);
}

bool gb_mix_list(gb_mix_table *table, const gb_mix *const **mixes, size_t *count) {
    for (size_t i = 0; i < table->folder_count; i++)
        read_folder(table, table->folders[i]);
    if (gb_diags_any(table->diags))
        return false;
    size_t all = 0;
    for (family *f = table->families; f != NULL; f = f->next)
        all += f->count;
    const gb_mix **list = gb_arena_take(table->arena, all + 1, sizeof(const gb_mix *));
    if (list == NULL) {
        table->diags->no_memory = true;
        return false;
    }
    size_t n = 0;
    for (family *f = table->families; f != NULL; f = f->next)
        for (size_t i = 0; i < f->count; i++) {
            gb_ref id = {f->list[i].id, 0};
            /* A mix of an earlier folder hides one of the same id. */
            if (gb_mix_find(table, id, f->file) == &f->list[i])
                list[n++] = &f->list[i];
        }
    qsort(list, n, sizeof(const gb_mix *), by_id);
    *mixes = list;
    *count = n;
    return true;
}
