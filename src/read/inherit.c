#include "read/table.h"

#include "read/diag.h"
#include "read/schemas.h"

#include <stdlib.h>
#include <string.h>

/* A mix that is like another one takes from it every key that it does not state itself,
   groups and lists whole. */

enum { MOST_GENERATIONS = 8 };

/* How many bytes a key holds at its offset; a list's count stands elsewhere. */
static size_t held_size(const gb_key *key) {
    switch (key->kind) {
    case GB_KEY_FORMAT:
    case GB_KEY_WHOLE:
        return sizeof(size_t);
    case GB_KEY_TEXT:
    case GB_KEY_WORDS_LIST:
    case GB_KEY_QUANTITIES:
    case GB_KEY_NUMBERS:
    case GB_KEY_GROUPS:
    case GB_KEY_OUTLINES:
        return sizeof(void *);
    case GB_KEY_REF:
        return sizeof(gb_ref);
    case GB_KEY_WORDS:
        return sizeof(gb_words);
    case GB_KEY_QUANTITY:
    case GB_KEY_NUMBER:
    case GB_KEY_CLOCK:
        return sizeof(double);
    case GB_KEY_FLAG:
        return sizeof(bool);
    case GB_KEY_CHOICE:
        return sizeof(int);
    case GB_KEY_CHOICES:
        return sizeof(unsigned);
    case GB_KEY_POINTS:
        return sizeof(gb_outline);
    case GB_KEY_SIZE:
        return 2 * sizeof(gb_length);
    case GB_KEY_PACE:
        return sizeof(gb_pace);
    case GB_KEY_GROUP:
        return key->child->size;
    }
    abort();
}

static bool is_list(const gb_key *key) {
    return key->kind == GB_KEY_WORDS_LIST || key->kind == GB_KEY_QUANTITIES ||
           key->kind == GB_KEY_NUMBERS || key->kind == GB_KEY_GROUPS ||
           key->kind == GB_KEY_OUTLINES;
}

static void take_key(gb_mix_table *t, const gb_key *key, const gb_mix *from, gb_mix *to) {
    const char *source = (const char *)from + key->offset;
    char *target = (char *)to + key->offset;
    memcpy(target, source, held_size(key));
    if (is_list(key))
        memcpy((char *)to + key->count_offset, (const char *)from + key->count_offset,
               sizeof(size_t));
    if (t->places != NULL)
        gb_places_copy(t->places, source, target, held_size(key));
}

/* ---- the line of a mix ----------------------------------------------------------- */

/* A mix and those that it is like, the nearest first. */
typedef struct line {
    const gb_mix *mix[MOST_GENERATIONS];
    size_t count;
} line;

/* An entry that is like its own id builds on the one that it hides. */
static const gb_mix *base_of(gb_mix_table *t, const gb_mix *mix, gb_family **f) {
    if (strcmp(mix->like.text, mix->id) != 0)
        return gb_find_entry(t, mix->like, mix->file, f);
    const gb_mix *hidden = gb_seek_entry(t, mix->id, (*f)->rank + 1, f);
    if (hidden == NULL && *f == NULL)
        gb_report(t->diags, mix->file, mix->like.line,
                  "'%s' is like itself, and it hides none of that id; name another mix, "
                  "or state all its keys",
                  mix->id);
    return hidden;
}

static const char *ids_of(gb_mix_table *t, const line *l) {
    gb_text ids;
    gb_text_init(&ids, t->arena);
    for (size_t i = 0; i < l->count; i++) {
        gb_text_add(&ids, i > 0 ? ", '" : "'");
        gb_text_add(&ids, l->mix[i]->id);
        gb_text_add(&ids, "'");
    }
    t->diags->no_memory = t->diags->no_memory || ids.failed;
    return gb_text_get(&ids);
}

/* False, with the fault told, when the line does not end with `next`. */
static bool may_follow(gb_mix_table *t, const line *l, const gb_mix *next) {
    const gb_mix *first = l->mix[0];
    bool again = false;
    for (size_t i = 0; i < l->count; i++)
        again = again || l->mix[i] == next;
    if (again)
        gb_report(t->diags, first->file, first->like.line,
                  "what '%s' is like goes round in a ring: %s and again '%s'; let one of "
                  "them state all its keys",
                  first->id, ids_of(t, l), next->id);
    else if (l->count == MOST_GENERATIONS)
        gb_report(t->diags, first->file, first->like.line,
                  "'%s' is like one that is like another, over %d deep: %s; name the one "
                  "that states most of it",
                  first->id, MOST_GENERATIONS, ids_of(t, l));
    return !again && l->count < MOST_GENERATIONS;
}

static bool follow(gb_mix_table *t, gb_family *f, const gb_mix *mix, line *l) {
    l->mix[l->count++] = mix;
    while (mix->like.text != NULL) {
        mix = base_of(t, mix, &f);
        if (mix == NULL || mix->at.faulty || mix->at.inner || !may_follow(t, l, mix))
            return false;
        l->mix[l->count++] = mix;
    }
    return true;
}

/* ---- what comes from whom -------------------------------------------------------- */

static const char *names_of_keys(gb_mix_table *t, uint64_t keys) {
    gb_text names;
    gb_text_init(&names, t->arena);
    for (size_t i = 0; i < GB_MIX_ENTRY_SCHEMA.key_count; i++) {
        if (!(keys >> i & 1) || GB_MIX_ENTRY_SCHEMA.keys[i].never_inherited)
            continue;
        gb_text_add(&names, names.length > 0 ? ", " : "");
        gb_text_add(&names, GB_MIX_ENTRY_SCHEMA.keys[i].name);
    }
    t->diags->no_memory = t->diags->no_memory || names.failed;
    return gb_text_get(&names);
}

static const char *place_of(gb_mix_table *t, const gb_mix *mix) {
    gb_text place;
    gb_text_init(&place, t->arena);
    gb_text_add(&place, gb_shown_file(t, mix->file));
    gb_text_add(&place, ":");
    gb_text_add_int(&place, mix->at.line);
    t->diags->no_memory = t->diags->no_memory || place.failed;
    return gb_text_get(&place);
}

/* A name, a title, a source and a strength are an entry's own. */
static void take_keys(gb_mix_table *t, uint64_t keys, const gb_mix *from, gb_mix *to) {
    for (size_t i = 0; i < GB_MIX_ENTRY_SCHEMA.key_count; i++)
        if (keys >> i & 1 && !GB_MIX_ENTRY_SCHEMA.keys[i].never_inherited)
            take_key(t, &GB_MIX_ENTRY_SCHEMA.keys[i], from, to);
}

/* Every key comes from the nearest one that states it. */
static void take_from(gb_mix_table *t, const line *l, gb_mix *mix) {
    gb_lineage *list = gb_arena_take(t->arena, l->count, sizeof *list);
    if (list == NULL) {
        t->diags->no_memory = true;
        return;
    }
    uint64_t known = 0;
    for (size_t i = 0; i < l->count; i++) {
        const gb_mix *from = l->mix[i];
        uint64_t fresh = from->at.stated & ~known;
        known |= fresh;
        list[i] = (gb_lineage){from->id, place_of(t, from), names_of_keys(t, fresh)};
        if (i == 0)
            continue;
        take_keys(t, fresh, from, mix);
        mix->digest = gb_digest_add_number(mix->digest, from->digest);
    }
    mix->lineage = list;
    mix->lineage_count = l->count;
}

void gb_inherit(gb_mix_table *t, gb_family *family) {
    for (size_t i = 0; i < family->count; i++) {
        gb_mix *mix = &family->list[i];
        line l = {.count = 0};
        if (mix->at.faulty || mix->at.inner || (mix->like.text == NULL && !mix->own))
            continue;
        if (follow(t, family, mix, &l))
            take_from(t, &l, mix);
        else
            mix->at.faulty = true;
    }
}
