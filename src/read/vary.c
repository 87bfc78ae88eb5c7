#include "gaugebox/count.h"
#include "gaugebox/digest.h"
#include "read/diag.h"
#include "read/layer_rules.h"
#include "read/nearest.h"
#include "read/schemas.h"
#include "read/steps_rules.h"
#include "words/words.h"

#include <math.h>
#include <string.h>

/* A change as it was typed: WHAT KEY CHANGE, "bed depth +1/4in". */
enum { LONGEST_CHANGE = 200, MOST_PATH = 4 };

typedef enum varied {
    VARY_DEPTH,
    VARY_COUNT,
    VARY_WASTE,
    VARY_USABLE,
    VARY_RISE,
    VARY_TREAD,
    VARIED
} varied;

/* The key of a job file that each changes: its bounds hold here too. */
static const struct {
    const char *word;
    const char *path[MOST_PATH];
    const char *of; /* what stands before it */
} KEYS[] = {
    [VARY_DEPTH] = {"depth",
                    {"pieces", "layers", "depth"},
                    N_("a kind of layer with a depth, or a piece and the kind")},
    [VARY_COUNT] = {"count", {"pieces", "count"}, N_("the name of a piece")},
    [VARY_WASTE] = {"waste", {"waste", "share"}, N_("a mix of the job or a material")},
    [VARY_USABLE] = {"usable", {"crew", "mixer", "usable"}, "mixer"},
    [VARY_RISE] = {"rise", {"pieces", "run", "rise"}, N_("the name of a run")},
    [VARY_TREAD] = {"tread", {"pieces", "run", "tread"}, N_("the name of a run")},
};
_Static_assert(sizeof KEYS / sizeof KEYS[0] == VARIED, "a key for each");

typedef struct change {
    gb_reader reader; /* its file is what faults begin with */
    gb_mix_table *table;
    gb_job *job;      /* the copy that is changed */
    const char *text; /* as typed */
    char what[LONGEST_CHANGE + 1];
    varied key;
    int sign; /* 0: the value replaces */
    double value;
    const char *piece; /* that is changed; NULL: the job */
} change;

static void report(const change *c, const char *format) {
    gb_report(c->reader.diags, c->reader.file, 0, format, gb_cut(c->text, 60), c->text);
}

/* ---- reading a change -------------------------------------------------------------- */

static const gb_key *key_at(const char *const path[MOST_PATH]) {
    const gb_schema *schema = &GB_JOB_SCHEMA;
    const gb_key *key = NULL;
    for (size_t i = 0; i < MOST_PATH && path[i] != NULL; i++) {
        key = gb_find_key(schema, path[i]);
        schema = key->child;
    }
    return key;
}

/* The last word of the text that names a key: what is before it is changed, what is
   behind it is the change. */
static const char *find_key(const char *text, varied *key) {
    const char *found = NULL;
    for (size_t i = 0; i < VARIED; i++) {
        size_t length = strlen(KEYS[i].word);
        for (const char *at = strstr(text, KEYS[i].word); at != NULL;
             at = strstr(at + 1, KEYS[i].word)) {
            bool alone = at > text && at[-1] == ' ' && at[length] == ' ';
            if (alone && (found == NULL || at > found)) {
                found = at;
                *key = (varied)i;
            }
        }
    }
    return found;
}

static bool parse_value(change *c, const char *text) {
    while (*text == ' ')
        text++;
    c->sign = *text == '+' ? 1 : *text == '-' ? -1 : 0;
    text += c->sign != 0;
    const gb_key *key = key_at(KEYS[c->key].path);
    if (c->key == VARY_COUNT)
        return gb_parse_number(text, &c->value) == GB_NO_FAULT &&
               !(fabs(c->value - gb_round(c->value, 1, GB_NEAREST)) > 0);
    return gb_parse(key->quantity, text, &c->value) == GB_NO_FAULT;
}

static bool parse_change(change *c) {
    const char *at = find_key(c->text, &c->key);
    if (strlen(c->text) > LONGEST_CHANGE || at == NULL) {
        report(c, NF_("'%.*s' is no change; write what, which key, and by how much, as "
                      "\"bed depth +1/4in\"; keys are depth, count, waste, usable, rise "
                      "and tread"));
        return false;
    }
    size_t length = (size_t)(at - c->text) - 1;
    memcpy(c->what, c->text, length);
    c->what[length] = '\0';
    if (parse_value(c, at + strlen(KEYS[c->key].word)))
        return true;
    gb_text needed;
    gb_text_init(&needed, c->reader.arena);
    gb_describe_key(key_at(KEYS[c->key].path), &needed);
    gb_report(c->reader.diags, c->reader.file, 0,
              "'%.*s': what stands behind '%s' cannot be read; write %s, with + or - "
              "before it to add or take away",
              gb_cut(c->text, 60), c->text, KEYS[c->key].word, gb_text_get(&needed));
    return false;
}

/* ---- new values -------------------------------------------------------------------- */

static void keep_place(const change *c, const void *value) {
    if (c->reader.places != NULL)
        gb_places_add(
            c->reader.places,
            (gb_place){
                .value = value, .file = "", .line = 1, .key = "vary", .text = c->text});
}

static void keep_copied(const change *c, const void *from, const void *to, size_t size) {
    if (c->reader.places != NULL)
        gb_places_copy(c->reader.places, from, to, size);
}

static double changed(const change *c, double value) {
    return c->sign == 0 ? c->value : value + c->sign * c->value;
}

static bool in_bounds(const gb_key *key, double value) {
    double least = 0;
    double most = 0;
    if (!isfinite(value))
        return false;
    if (key->kind != GB_KEY_WHOLE)
        return gb_in_bounds(key, value);
    return gb_parse_number(key->least, &least) == GB_NO_FAULT &&
           gb_parse_number(key->most, &most) == GB_NO_FAULT && value >= least &&
           value <= most;
}

/* Out of the bounds that the key has in a job: told, and nothing is cut to fit. */
static bool is_good(const change *c, const gb_key *key, double value) {
    if (in_bounds(key, value))
        return true;
    gb_text needed;
    gb_text_init(&needed, c->reader.arena);
    gb_describe_key(key, &needed);
    if (c->piece != NULL)
        gb_report(c->reader.diags, c->reader.file, 0,
                  "'%.*s' makes '%s' of '%s' go out of bounds; it may be %s",
                  gb_cut(c->text, 60), c->text, key->name, c->piece,
                  gb_text_get(&needed));
    else
        gb_report(c->reader.diags, c->reader.file, 0,
                  "'%.*s' makes '%s' go out of bounds; it may be %s", gb_cut(c->text, 60),
                  c->text, key->name, gb_text_get(&needed));
    return false;
}

/* Puts one changed value in its place. */
static void set(const change *c, const gb_key *key, double *at) {
    double value = changed(c, *at);
    if (!is_good(c, key, value))
        return;
    *at = value;
    keep_place(c, at);
}

static void *copy_of(change *c, const void *list, size_t count, size_t size) {
    void *copy = gb_arena_take(c->reader.arena, count + 1, size);
    if (copy == NULL) {
        c->reader.diags->no_memory = true;
        return NULL;
    }
    if (count > 0)
        memcpy(copy, list, count * size);
    keep_copied(c, list, copy, count * size);
    return copy;
}

/* ---- depths ------------------------------------------------------------------------ */

/* A layer as the rules look at it: its line is not where the fault lies. */
static void check_layer(const change *c, const gb_piece *piece, gb_layer layer) {
    gb_reader reader = c->reader;
    layer.at.line = 0;
    gb_check_layer(&reader, c->job, piece, &layer);
}

static void vary_layer(change *c, const gb_piece *piece, gb_layer *layer) {
    const gb_key *key = gb_find_key(&GB_LAYER_SCHEMA, "depth");
    static const size_t ONE = 1;
    double usual = gb_usual_slurry(layer->back).m;
    bool has = layer->depth_count > 0;
    double *depths = copy_of(c, has ? layer->depths_m : &usual,
                             has ? layer->depth_count : ONE, sizeof *depths);
    if (depths == NULL)
        return;
    layer->depths_m = depths;
    layer->depth_count = has ? layer->depth_count : ONE;
    for (size_t i = 0; i < layer->depth_count; i++)
        set(c, key, &depths[i]);
    check_layer(c, piece, *layer);
}

/* True when the text is the kind alone, or the piece's name and the kind. */
static bool speaks_of(const change *c, const gb_piece *piece, const char *kind) {
    size_t length = strlen(piece->name);
    return strcmp(c->what, kind) == 0 ||
           (strncmp(c->what, piece->name, length) == 0 && c->what[length] == ' ' &&
            strcmp(c->what + length + 1, kind) == 0);
}

static bool has_depth(const gb_layer *layer) {
    return layer->depth_count > 0 || layer->kind == GB_SLURRY;
}

static size_t vary_layers(change *c, gb_piece *piece) {
    size_t found = 0;
    for (size_t i = 0; i < piece->layer_count; i++)
        found += speaks_of(c, piece, GB_LAYER_WORDS[piece->layers[i].kind]) &&
                 has_depth(&piece->layers[i]);
    if (found == 0)
        return 0;
    gb_layer *layers = copy_of(c, piece->layers, piece->layer_count, sizeof *layers);
    if (layers == NULL)
        return found;
    for (size_t i = 0; i < piece->layer_count; i++)
        if (speaks_of(c, piece, GB_LAYER_WORDS[layers[i].kind]) && has_depth(&layers[i]))
            vary_layer(c, piece, &layers[i]);
    piece->layers = layers;
    return found;
}

static size_t vary_loose(change *c, gb_piece *piece) {
    size_t found = 0;
    gb_loose *loose = NULL;
    for (size_t i = 0; i < piece->loose_count; i++) {
        const gb_loose *l = &piece->loose[i];
        if (!speaks_of(c, piece, GB_LOOSE_WORDS[l->kind]) || isnan(l->depth.m))
            continue;
        if (loose == NULL)
            loose = copy_of(c, piece->loose, piece->loose_count, sizeof *loose);
        if (loose == NULL)
            return found;
        set(c, gb_find_key(&GB_LOOSE_SCHEMA, "depth"), &loose[i].depth.m);
        found++;
    }
    if (loose != NULL)
        piece->loose = loose;
    return found;
}

static size_t vary_depths(change *c, gb_piece *pieces) {
    size_t found = 0;
    for (size_t i = 0; i < c->job->piece_count; i++) {
        c->piece = pieces[i].name;
        found += vary_layers(c, &pieces[i]) + vary_loose(c, &pieces[i]);
    }
    return found;
}

/* ---- pieces and runs --------------------------------------------------------------- */

/* A run is laid out again, and its layers are looked at again: levels count treads. */
static void check_again(change *c, gb_piece *piece) {
    gb_reader reader = c->reader;
    if (piece->run.at.line != 0)
        gb_lay_run_again(&reader, c->job->units, piece);
    for (size_t i = 0; i < piece->layer_count; i++)
        check_layer(c, piece, piece->layers[i]);
}

static void vary_count(change *c, gb_piece *piece) {
    bool run = piece->run.at.line != 0;
    gb_key key = *key_at(KEYS[VARY_COUNT].path);
    if (run) {
        key = *gb_find_key(&GB_STEPS_SCHEMA, "count");
        key.least = "2"; /* in a job 0 stands for a count that is not chosen yet */
    }
    size_t *at = run ? &piece->run.count : &piece->count;
    double value = changed(c, (double)*at);
    if (!is_good(c, &key, value))
        return;
    *at = (size_t)value;
    keep_place(c, at);
}

static size_t vary_piece(change *c, gb_piece *pieces) {
    for (size_t i = 0; i < c->job->piece_count; i++) {
        gb_piece *p = &pieces[i];
        if (strcmp(p->name, c->what) != 0)
            continue;
        c->piece = p->name;
        if (c->key == VARY_COUNT)
            vary_count(c, p);
        else if (p->run.at.line == 0)
            report(c, NF_("'%.*s': that piece is no run, and has no such key; give it a "
                          "run, or change its count"));
        else if (c->key == VARY_TREAD && isnan(p->run.going.m))
            report(c,
                   NF_("'%.*s': that run states the length of all treads; change it in "
                       "the job"));
        else
            set(c, key_at(KEYS[c->key].path),
                c->key == VARY_RISE ? &p->run.rise.m : &p->run.going.m);
        check_again(c, p);
        return 1;
    }
    return 0;
}

/* ---- the rest ---------------------------------------------------------------------- */

static bool is_of_job(const change *c, const char *name) {
    for (size_t i = 0; i < c->job->mix_count; i++)
        if (strcmp(c->job->mixes[i]->id, name) == 0)
            return true;
    return gb_material_find(c->table, name) != NULL;
}

/* The waste of a mix or material; one that the job does not state was none. */
static size_t vary_waste(change *c) {
    gb_job *job = c->job;
    if (!is_of_job(c, c->what))
        return 0;
    gb_waste *wastes =
        gb_arena_take(c->reader.arena, job->waste_count + 1, sizeof *wastes);
    const char *name = gb_arena_copy(c->reader.arena, c->what);
    if (wastes == NULL || name == NULL) {
        c->reader.diags->no_memory = true;
        return 1;
    }
    if (job->waste_count > 0)
        memcpy(wastes, job->wastes, job->waste_count * sizeof *wastes);
    keep_copied(c, job->wastes, wastes, job->waste_count * sizeof *wastes);
    size_t i = 0;
    while (i < job->waste_count && strcmp(wastes[i].of.text, c->what) != 0)
        i++;
    if (i == job->waste_count) {
        wastes[i] = (gb_waste){.of = {name, 0}};
        job->waste_count++;
    }
    set(c, key_at(KEYS[VARY_WASTE].path), &wastes[i].share.of_one);
    job->wastes = wastes;
    return 1;
}

static size_t vary_usable(change *c) {
    if (strcmp(c->what, "mixer") != 0)
        return 0;
    set(c, key_at(KEYS[VARY_USABLE].path), &c->job->crew.mixer.usable.m3);
    return 1;
}

/* ---- all changes ------------------------------------------------------------------- */

static void offer_names(const change *c, gb_nearest *nearest) {
    const gb_job *job = c->job;
    for (size_t k = 0; c->key == VARY_DEPTH && GB_LAYER_WORDS[k] != NULL; k++)
        gb_nearest_offer(nearest, GB_LAYER_WORDS[k]);
    for (size_t k = 0; c->key == VARY_DEPTH && GB_LOOSE_WORDS[k] != NULL; k++)
        gb_nearest_offer(nearest, GB_LOOSE_WORDS[k]);
    for (size_t i = 0; i < job->mix_count && c->key == VARY_WASTE; i++)
        gb_nearest_offer(nearest, job->mixes[i]->id);
    bool of_piece = c->key == VARY_COUNT || c->key == VARY_RISE || c->key == VARY_TREAD;
    for (size_t i = 0; i < job->piece_count && of_piece; i++)
        gb_nearest_offer(nearest, job->pieces[i].name);
    if (c->key == VARY_USABLE)
        gb_nearest_offer(nearest, "mixer");
}

static void report_unknown(const change *c) {
    gb_nearest nearest;
    gb_nearest_init(&nearest, c->what);
    offer_names(c, &nearest);
    if (nearest.best != NULL && nearest.distance > 0)
        gb_report(c->reader.diags, c->reader.file, 0,
                  "'%.*s': the job has no such '%s'; did you mean '%s'?",
                  gb_cut(c->text, 60), c->text, KEYS[c->key].word, nearest.best);
    else
        gb_report(c->reader.diags, c->reader.file, 0,
                  "'%.*s': the job has no such '%s'; before it stands %s",
                  gb_cut(c->text, 60), c->text, KEYS[c->key].word,
                  gb_tr(KEYS[c->key].of));
}

static void apply(change *c, gb_piece *pieces) {
    size_t found = 0;
    switch (c->key) {
    case VARY_DEPTH:
        found = vary_depths(c, pieces);
        break;
    case VARY_COUNT:
    case VARY_RISE:
    case VARY_TREAD:
        found = vary_piece(c, pieces);
        break;
    case VARY_WASTE:
        found = vary_waste(c);
        break;
    case VARY_USABLE:
        found = vary_usable(c);
        break;
    case VARIED:
        break;
    }
    if (found == 0)
        report_unknown(c);
}

bool gb_vary_job(const gb_job *job, const char *const *changes, size_t count,
                 gb_mix_table *table, gb_arena *arena, gb_diags *diags, gb_job *result) {
    size_t before = gb_diags_count(diags);
    change c = {.reader = {.file = "--vary",
                           .arena = arena,
                           .diags = diags,
                           .places = gb_mix_table_places(table)},
                .table = table,
                .job = result};
    *result = *job;
    keep_copied(&c, job, result, sizeof *job);
    gb_piece *pieces = copy_of(&c, job->pieces, job->piece_count, sizeof *pieces);
    if (pieces == NULL)
        return false;
    result->pieces = pieces;
    gb_mix_table_take_own(table, job);
    for (size_t i = 0; i < count; i++) {
        c.text = changes[i];
        c.piece = NULL;
        if (parse_change(&c))
            apply(&c, pieces);
        result->digest = gb_digest_add(result->digest, c.text, strlen(c.text));
    }
    gb_mix_table_take_own(table, NULL);
    return gb_diags_count(diags) == before && !diags->no_memory;
}
