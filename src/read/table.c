#include "read/table.h"

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

static const char MATERIALS[] = "materials";
static const char OWN_FAMILY[] = "own"; /* of the mixes that a job holds itself */

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
const char *gb_shown_file(const gb_mix_table *t, const char *file) {
    const char *shipped = t->folders[t->folder_count - 1];
    size_t length = strlen(shipped);
    const char *slash = strrchr(shipped, '/');
    bool inside = strncmp(file, shipped, length) == 0 && file[length] == '/';
    return inside && slash != NULL ? file + (slash - shipped) + 1 : file;
}

gb_reader gb_table_reader(const gb_mix_table *t, const char *file) {
    return (gb_reader){.file = file,
                       .arena = t->arena,
                       .diags = t->diags,
                       .places = t->places,
                       .shown = gb_shown_file(t, file)};
}

const char *gb_table_path(gb_mix_table *t, const char *folder, const char *name) {
    gb_text path;
    gb_text_init(&path, t->arena);
    gb_text_add(&path, folder);
    gb_text_add(&path, "/");
    gb_text_add(&path, name);
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
        const char *file = gb_table_path(t, t->folders[i], MATERIALS);
        /* A user's folder may do without; the shipped one, the last, may not. */
        if (i + 1 < t->folder_count && access(file, F_OK) != 0)
            continue;
        gb_material_file read = {0};
        gb_reader reader = gb_table_reader(t, file);
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

/* ---- families -------------------------------------------------------------------- */

bool gb_is_family(const char *name) {
    return strcmp(name, MATERIALS) != 0 && strcmp(name, GB_STONES) != 0;
}

static bool plain_name(const char *name) {
    return name[strspn(name, "abcdefghijklmnopqrstuvwxyz0123456789-")] == '\0';
}

static bool readable(const gb_mix *mix) {
    return mix->name != NULL && !mix->at.faulty && !mix->at.inner;
}

/* What every entry is called, and that it is the only one of its name. */
static void name_mixes(gb_mix_table *t, gb_family *f) {
    for (size_t i = 0; i < f->count; i++) {
        gb_mix *mix = &f->list[i];
        gb_text full;
        gb_text_init(&full, t->arena);
        gb_text_add(&full, f->name);
        gb_text_add(&full, "/");
        gb_text_add(&full, mix->name == NULL ? "" : mix->name);
        t->diags->no_memory = t->diags->no_memory || full.failed;
        mix->id = gb_text_get(&full);
        mix->file = f->file;
        mix->own = f->rank < t->folder_count;
        mix->digest = f->digest;
        if (mix->name == NULL)
            continue;
        if (!plain_name(mix->name))
            gb_report(t->diags, f->file, mix->at.line,
                      "'%s' is no name for a mix; use small letters, figures and hyphens",
                      mix->name);
        for (size_t k = 0; k < i; k++)
            if (f->list[k].name != NULL && strcmp(f->list[k].name, mix->name) == 0)
                gb_report(t->diags, f->file, mix->at.line,
                          "mix '%s' is here twice, first at line %d; rename one",
                          mix->name, f->list[k].at.line);
    }
}

static gb_mix *find_in(const gb_family *f, const char *id) {
    for (size_t i = 0; i < f->count; i++)
        if (strcmp(f->list[i].id, id) == 0)
            return &f->list[i];
    return NULL;
}

/* Which of a user's two mixes of one id is meant cannot be told. One of the shipped table
   is hidden by the user's on purpose. */
static void check_same_ids(gb_mix_table *t, const gb_family *f, const gb_family *other) {
    for (size_t i = 0; i < f->count; i++) {
        const gb_mix *twin = find_in(other, f->list[i].id);
        if (f->list[i].name != NULL && twin != NULL)
            gb_report(t->diags, f->file, f->list[i].at.line,
                      "mix '%s' is also at %s:%d; rename one, or take one out",
                      f->list[i].id, other->file, twin->at.line);
    }
}

static gb_family *family_at(gb_mix_table *t, const char *name, size_t rank);

static void compare_own(gb_mix_table *t, const gb_family *f) {
    for (size_t rank = 1; f->rank < t->folder_count && rank < t->folder_count; rank++) {
        const gb_family *other = rank == f->rank ? NULL : family_at(t, f->name, rank);
        if (other != NULL && (f->rank == 0 || rank < f->rank))
            check_same_ids(t, f, other);
    }
}

/* From what stands in a file to entries that may be handed out, or to told faults.
   Materials that could not be read would only raise false faults here, and rules across
   keys speak only of groups that read without a fault. */
static void finish_family(gb_mix_table *t, gb_family *f) {
    size_t faults = gb_diags_count(t->diags);
    name_mixes(t, f);
    compare_own(t, f);
    gb_inherit(t, f);
    for (size_t i = 0; !t->materials_broken && i < f->count; i++)
        if (readable(&f->list[i]))
            gb_check_mix(t, &f->list[i]);
    f->broken = f->broken || gb_diags_count(t->diags) > faults || t->materials_broken;
    if (f->broken)
        f->count = 0;
}

static gb_family *new_family(gb_mix_table *t, const char *name, const char *file,
                             size_t rank) {
    gb_family *f = gb_arena_take(t->arena, 1, sizeof *f);
    if (f == NULL) {
        t->diags->no_memory = true;
        return NULL;
    }
    *f = (gb_family){.name = name, .file = file, .rank = rank};
    return f;
}

static void read_family(gb_mix_table *t, gb_family *f) {
    read_materials(t);
    gb_mix_file read = {0};
    gb_reader reader = gb_table_reader(t, f->file);
    size_t faults = gb_diags_count(t->diags);
    if (!gb_read_file(&reader, &GB_MIX_SCHEMA, &read)) {
        f->broken = true;
        return;
    }
    f->list = read.list;
    f->count = read.count;
    f->digest = gb_digest_add_number(t->materials_digest, reader.digest);
    f->broken = gb_diags_count(t->diags) > faults;
    finish_family(t, f);
}

/* The family of that name in the folder of that rank, read on the first call; NULL when
   it has none. */
static gb_family *family_at(gb_mix_table *t, const char *name, size_t rank) {
    for (gb_family *f = t->families; f != NULL; f = f->next)
        if (f->rank == rank && strcmp(f->name, name) == 0)
            return f;
    const char *path = gb_table_path(t, t->folders[rank - 1], name);
    if (!gb_is_family(name) || access(path, F_OK) != 0)
        return NULL;
    gb_family *f = new_family(t, name, path, rank);
    if (f == NULL)
        return NULL;
    f->next = t->families;
    t->families = f;
    read_family(t, f);
    return f;
}

void gb_mix_table_take_own(gb_mix_table *table, const gb_job *job) {
    table->own = NULL;
    if (job == NULL || job->own_mix_count == 0)
        return;
    read_materials(table);
    gb_family *f = new_family(table, OWN_FAMILY, job->file, 0);
    if (f == NULL)
        return;
    f->list = job->own_mixes;
    f->count = job->own_mix_count;
    f->digest = gb_digest_add_number(table->materials_digest, job->digest);
    for (size_t i = 0; i < f->count; i++)
        f->broken = f->broken || !readable(&f->list[i]);
    table->own = f;
    finish_family(table, f);
}

static gb_family *family_of_rank(gb_mix_table *t, const char *name, size_t rank) {
    if (rank > 0)
        return family_at(t, name, rank);
    return strcmp(name, OWN_FAMILY) == 0 ? t->own : NULL;
}

gb_mix *gb_seek_entry(gb_mix_table *t, const char *id, size_t rank, gb_family **family) {
    *family = NULL;
    char *name = gb_arena_copy(t->arena, id);
    if (name == NULL) {
        t->diags->no_memory = true;
        return NULL;
    }
    name[strcspn(id, "/")] = '\0';
    gb_mix *mix = NULL;
    for (; mix == NULL && rank <= t->folder_count; rank++) {
        gb_family *f = family_of_rank(t, name, rank);
        if (f == NULL)
            continue;
        mix = find_in(f, id);
        if (mix != NULL || f->broken)
            *family = f;
    }
    return mix;
}

/* The id nearest to one that is not there, from the families read so far. */
static const char *nearest_id(const gb_mix_table *t, const char *id) {
    gb_nearest nearest;
    gb_nearest_init(&nearest, id);
    for (const gb_family *f = t->families; f != NULL; f = f->next)
        for (size_t i = 0; i < f->count; i++)
            gb_nearest_offer(&nearest, f->list[i].id);
    return nearest.best;
}

static void read_folder(gb_mix_table *t, size_t rank);

static void report_missing(gb_mix_table *t, gb_ref id, const char *file) {
    /* The family itself may be misspelt: advice looks at all of them. */
    for (size_t rank = 1; rank <= t->folder_count; rank++)
        read_folder(t, rank);
    const char *near = nearest_id(t, id.text);
    if (near != NULL)
        gb_report(t->diags, file, id.line, "mix '%s' is not known; did you mean '%s'?",
                  id.text, near);
    else
        gb_report(t->diags, file, id.line,
                  "mix '%s' is not known; `gaugebox mix` lists those that are", id.text);
}

/* A family's name goes into a path, so that it may hold no point and no slash. */
static bool shaped(const char *id) {
    size_t length = strcspn(id, "/");
    return id[length] == '/' && length > 0 && plain_name(id + length + 1) &&
           memchr(id, '.', length) == NULL;
}

gb_mix *gb_find_entry(gb_mix_table *t, gb_ref id, const char *file, gb_family **family) {
    *family = NULL;
    if (!shaped(id.text)) {
        gb_report(t->diags, file, id.line,
                  "'%s' names no mix; write family/name, such as bed/stiff-1-4", id.text);
        return NULL;
    }
    gb_mix *mix = gb_seek_entry(t, id.text, 0, family);
    /* A mix of a broken file may well be there; its faults are told already. */
    if (mix == NULL && *family == NULL)
        report_missing(t, id, file);
    return mix;
}

const gb_mix *gb_mix_find(gb_mix_table *table, gb_ref id, const char *file) {
    gb_family *family = NULL;
    return gb_find_entry(table, id, file, &family);
}

static int by_id(const void *a, const void *b) {
    const gb_mix *const *x = a;
    const gb_mix *const *y = b;
    return strcmp((*x)->id, (*y)->id);
}

/* The families of one folder; one that cannot be opened is no folder of mixes. */
static void read_folder(gb_mix_table *t, size_t rank) {
    const char *folder = t->folders[rank - 1];
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
        if (name == NULL) {
            t->diags->no_memory = true;
            continue;
        }
        name[n - 4] = '\0';
        (void)family_at(t, name, rank);
    }
    (void)closedir(dir);
}

static bool is_named(const gb_family *f, const char *name) {
    return name == NULL || strcmp(f->name, name) == 0;
}

/* The mixes of the family of that name, or of all when it is NULL, that were read. */
static bool collect(gb_mix_table *table, const char *name, const gb_mix *const **mixes,
                    size_t *count) {
    if (gb_diags_any(table->diags))
        return false;
    size_t all = 0;
    for (gb_family *f = table->families; f != NULL; f = f->next)
        all += f->count;
    const gb_mix **list = gb_arena_take(table->arena, all + 1, sizeof(const gb_mix *));
    if (list == NULL) {
        table->diags->no_memory = true;
        return false;
    }
    size_t n = 0;
    for (gb_family *f = table->families; f != NULL; f = f->next)
        for (size_t i = 0; is_named(f, name) && i < f->count; i++) {
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

bool gb_mix_list(gb_mix_table *table, const gb_mix *const **mixes, size_t *count) {
    for (size_t rank = 1; rank <= table->folder_count; rank++)
        read_folder(table, rank);
    return collect(table, NULL, mixes, count);
}

/* ---- one family ------------------------------------------------------------------ */

static int by_text(const void *a, const void *b) {
    const char *const *x = a;
    const char *const *y = b;
    return strcmp(*x, *y);
}

/* The names of the families read so far, each once; ends in NULL. */
static const char **family_names(gb_mix_table *t) {
    size_t all = 0;
    for (gb_family *f = t->families; f != NULL; f = f->next)
        all++;
    const char **names = gb_arena_take(t->arena, all + 1, sizeof *names);
    if (names == NULL)
        return NULL;
    all = 0;
    for (gb_family *f = t->families; f != NULL; f = f->next)
        names[all++] = f->name;
    qsort((void *)names, all, sizeof *names, by_text);
    size_t n = 0;
    for (size_t i = 0; i < all; i++)
        if (n == 0 || strcmp(names[n - 1], names[i]) != 0)
            names[n++] = names[i];
    names[n] = NULL;
    return names;
}

/* A mix whose own name that is, its family left out. */
static const char *id_of_name(const gb_mix_table *t, const char *name) {
    for (const gb_family *f = t->families; f != NULL; f = f->next)
        for (size_t i = 0; i < f->count; i++)
            if (strcmp(f->list[i].name, name) == 0)
                return f->list[i].id;
    return NULL;
}

static void report_no_family(gb_mix_table *t, gb_ref name, const char *file) {
    for (size_t rank = 1; rank <= t->folder_count; rank++)
        read_folder(t, rank);
    gb_text known;
    gb_text_init(&known, t->arena);
    const char **names = family_names(t);
    for (size_t i = 0; names != NULL && names[i] != NULL; i++) {
        gb_text_add(&known, i > 0 ? ", " : "");
        gb_text_add(&known, names[i]);
    }
    if (names == NULL || known.failed) {
        t->diags->no_memory = true;
        return;
    }
    const char *near = gb_nearest_of(name.text, names);
    if (near == NULL)
        near = id_of_name(t, name.text);
    if (near != NULL)
        gb_report(t->diags, file, name.line,
                  "family '%s' is not known; did you mean '%s'? known are: %s", name.text,
                  near, gb_text_get(&known));
    else
        gb_report(t->diags, file, name.line, "family '%s' is not known; known are: %s",
                  name.text, gb_text_get(&known));
}

bool gb_mix_list_family(gb_mix_table *table, gb_ref name, const char *file,
                        const gb_mix *const **mixes, size_t *count) {
    bool plain = name.text[0] != '\0' && strpbrk(name.text, "./") == NULL;
    bool found = false;
    for (size_t rank = 1; plain && rank <= table->folder_count; rank++)
        found = family_at(table, name.text, rank) != NULL || found;
    if (!found)
        report_no_family(table, name, file);
    return found && collect(table, name.text, mixes, count);
}
