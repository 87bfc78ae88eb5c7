/* Making reasons; equal ones are one. */
#ifndef EXPLAIN_WHY_H
#define EXPLAIN_WHY_H

#include "gaugebox/explain.h"
#include "words/mark.h"

/* What was found out once about one thing, so that a long job is not gone through for
   each of its batches. */
typedef struct gb_memory {
    const char *what;
    const void *of;
    const gb_why *why;
} gb_memory;

typedef struct gb_explainer {
    gb_arena *arena;
    gb_places *places;
    gb_style style;      /* of the sheet */
    const gb_why **list; /* in order of making */
    size_t count, room;
    const gb_why **slots; /* the same by digest */
    size_t slot_count;
    gb_memory *memories; /* by digest of both */
    size_t memory_count, memory_room;
    bool failed;
} gb_explainer;

gb_status gb_explainer_init(gb_explainer *x, gb_places *places, gb_style style,
                            gb_arena *arena) GB_MUST_USE;

/* The one reason that is equal to `why`; its inputs are copied. NULL inputs and a NULL
   result mean that memory ran out, and `failed` says so. */
const gb_why *gb_keep_why(gb_explainer *x, gb_why why);

/* What was remembered under the name `what` (a literal of one place) of that thing, or
   NULL; and remembering it: gives `why` back. */
const gb_why *gb_known(const gb_explainer *x, const char *what, const void *of);
const gb_why *gb_remember(gb_explainer *x, const char *what, const void *of,
                          const gb_why *why);

#define GB_INPUTS(...)                                                                   \
    .inputs = (const gb_why *const[]){__VA_ARGS__},                                      \
    .input_count = sizeof((const gb_why *const[]){__VA_ARGS__}) / sizeof(const gb_why *)

/* A value made by a formula from inputs: GB_WHY(x, "gross", GB_VOLUME, need->gross.m3,
   "net * (1 + waste)", GB_INPUTS(net, waste), .source = "..."). */
#define GB_WHY(x, name_, unit_, value_, formula_, ...)                                   \
    gb_keep_why((x), (gb_why){.name = (name_),                                           \
                              .unit = (unit_),                                           \
                              .value = (value_),                                         \
                              .formula = (formula_),                                     \
                              __VA_ARGS__})

/* A value that was read into *at, or its usual value; of is NULL or whose it is. A value
   that no file holds has a source instead. */
const gb_why *gb_stated(gb_explainer *x, const char *name, const char *of, int unit,
                        const double *at, const char *source);
const gb_why *gb_stated_count(gb_explainer *x, const char *name, const char *of,
                              const size_t *at);

/* A value that a standard, a law or common practice gives. */
const gb_why *gb_fact(gb_explainer *x, const char *name, int unit, double value,
                      const char *source);

/* The source that a mix or a material states, in the language of the sheet; or NULL. */
const char *gb_text_source(const gb_explainer *x, const gb_words *source);

/* The mass of a volume of fresh water. */
const gb_why *gb_water_density(gb_explainer *x);

#endif
