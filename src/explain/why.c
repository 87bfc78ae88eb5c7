#include "explain/why.h"

#include "gaugebox/digest.h"

#include <math.h>
#include <string.h>

enum { FIRST_SLOTS = 1024 };

gb_status gb_explainer_init(gb_explainer *x, gb_places *places, gb_style style,
                            gb_arena *arena) {
    *x = (gb_explainer){
        .arena = arena, .places = places, .style = style, .slot_count = FIRST_SLOTS};
    x->slots = gb_arena_take(arena, x->slot_count, sizeof(const gb_why *));
    return x->slots == NULL ? GB_NO_MEMORY : GB_OK;
}

/* ---- equal reasons are one --------------------------------------------------------- */

static uint64_t add_text(uint64_t digest, const char *text) {
    return gb_digest_add(digest, text == NULL ? "" : text,
                         text == NULL ? 1 : strlen(text) + 1);
}

/* Inputs are kept ones already, so their numbers stand for them. */
static uint64_t digest_of(const gb_why *w) {
    uint64_t digest = add_text(GB_DIGEST_START, w->name);
    digest = add_text(digest, w->of);
    digest = add_text(digest, w->formula);
    digest = gb_digest_add(digest, &w->value, sizeof w->value);
    digest = gb_digest_add_number(digest, (uint64_t)(uintptr_t)w->place);
    for (size_t i = 0; i < w->input_count; i++)
        digest = gb_digest_add_number(digest, w->inputs[i]->number);
    return digest;
}

static bool same_text(const char *a, const char *b) {
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

static bool are_equal(const gb_why *a, const gb_why *b) {
    return a->unit == b->unit && a->place == b->place && a->value == b->value &&
           a->input_count == b->input_count && same_text(a->name, b->name) &&
           same_text(a->of, b->of) && same_text(a->formula, b->formula) &&
           same_text(a->source, b->source) &&
           (a->input_count == 0 ||
            memcmp((const void *)a->inputs, (const void *)b->inputs,
                   a->input_count * sizeof(const gb_why *)) == 0);
}

static const gb_why **slot_of(const gb_explainer *x, const gb_why *why) {
    size_t at = digest_of(why) % x->slot_count;
    while (x->slots[at] != NULL && !are_equal(x->slots[at], why))
        at = (at + 1) % x->slot_count;
    return &x->slots[at];
}

/* Keeps the slots at most half full. */
static bool make_room(gb_explainer *x) {
    if (x->count < x->room)
        return true;
    size_t room = x->room == 0 ? FIRST_SLOTS / 2 : x->room * 2;
    const gb_why **list = gb_arena_take(x->arena, room, sizeof(const gb_why *));
    const gb_why **slots = gb_arena_take(x->arena, 2 * room, sizeof(const gb_why *));
    if (list == NULL || slots == NULL)
        return false;
    if (x->count > 0)
        memcpy((void *)list, (const void *)x->list, x->count * sizeof(const gb_why *));
    x->list = list;
    x->room = room;
    x->slots = slots;
    x->slot_count = 2 * room;
    for (size_t i = 0; i < x->count; i++)
        *slot_of(x, list[i]) = list[i];
    return true;
}

static const gb_why *add(gb_explainer *x, const gb_why *why) {
    if (!make_room(x))
        return NULL;
    gb_why *copy = gb_arena_take(x->arena, 1, sizeof *copy);
    const gb_why **inputs =
        gb_arena_take(x->arena, why->input_count + 1, sizeof(const gb_why *));
    if (copy == NULL || inputs == NULL)
        return NULL;
    *copy = *why;
    if (why->input_count > 0)
        memcpy((void *)inputs, (const void *)why->inputs,
               why->input_count * sizeof(const gb_why *));
    copy->inputs = inputs;
    copy->number = x->count;
    x->list[x->count++] = copy;
    *slot_of(x, copy) = copy;
    return copy;
}

const gb_why *gb_keep_why(gb_explainer *x, gb_why why) {
    for (size_t i = 0; i < why.input_count && !x->failed; i++)
        x->failed = why.inputs[i] == NULL;
    if (x->failed)
        return NULL;
    const gb_why *known = *slot_of(x, &why);
    if (known == NULL)
        known = add(x, &why);
    x->failed = known == NULL;
    return known;
}

/* ---- what was found out already ---------------------------------------------------- */

static gb_memory *memory_of(const gb_explainer *x, const char *what, const void *of) {
    uint64_t digest =
        gb_digest_add_number(add_text(GB_DIGEST_START, what), (uint64_t)(uintptr_t)of);
    size_t at = digest % x->memory_room;
    while (x->memories[at].why != NULL &&
           (x->memories[at].of != of || strcmp(x->memories[at].what, what) != 0))
        at = (at + 1) % x->memory_room;
    return &x->memories[at];
}

/* Keeps the table at most half full. */
static bool make_memory_room(gb_explainer *x) {
    if (2 * x->memory_count < x->memory_room)
        return true;
    gb_explainer larger = *x;
    larger.memory_room = x->memory_room == 0 ? FIRST_SLOTS : 2 * x->memory_room;
    larger.memories =
        gb_arena_take(x->arena, larger.memory_room, sizeof *larger.memories);
    if (larger.memories == NULL)
        return false;
    for (size_t i = 0; i < x->memory_room; i++)
        if (x->memories[i].why != NULL)
            *memory_of(&larger, x->memories[i].what, x->memories[i].of) = x->memories[i];
    *x = larger;
    return true;
}

const gb_why *gb_known(const gb_explainer *x, const char *what, const void *of) {
    return x->memory_room == 0 ? NULL : memory_of(x, what, of)->why;
}

const gb_why *gb_remember(gb_explainer *x, const char *what, const void *of,
                          const gb_why *why) {
    if (why == NULL)
        return NULL;
    if (!make_memory_room(x)) {
        x->failed = true;
        return NULL;
    }
    *memory_of(x, what, of) = (gb_memory){what, of, why};
    x->memory_count++;
    return why;
}

/* ---- where a chain ends ------------------------------------------------------------ */

const gb_why *gb_stated(gb_explainer *x, const char *name, const char *of, int unit,
                        const double *at, const char *source) {
    return gb_keep_why(x, (gb_why){.name = name,
                                   .of = of,
                                   .unit = unit,
                                   .value = *at,
                                   .place = gb_places_find(x->places, at),
                                   .source = source});
}

const gb_why *gb_stated_count(gb_explainer *x, const char *name, const char *of,
                              const size_t *at) {
    return gb_keep_why(x, (gb_why){.name = name,
                                   .of = of,
                                   .unit = GB_PLAIN,
                                   .value = (double)*at,
                                   .place = gb_places_find(x->places, at)});
}

const char *gb_text_source(const gb_explainer *x, const gb_words *source) {
    return source->count == 0 ? NULL : gb_words_in(source, x->style.language);
}

const gb_why *gb_fact(gb_explainer *x, const char *name, int unit, double value,
                      const char *source) {
    return gb_keep_why(
        x, (gb_why){.name = name, .unit = unit, .value = value, .source = source});
}

const gb_why *gb_water_density(gb_explainer *x) {
    return gb_fact(x, "water_density", GB_DENSITY, GB_WATER_KG_M3,
                   N_("fresh water, taken as 1000 kg/m3 throughout"));
}
