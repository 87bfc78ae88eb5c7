#include "explain/why.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

typedef struct fixture {
    gb_arena arena;
    gb_places places;
    gb_explainer x;
} fixture;

static void start(fixture *f) {
    gb_arena_init(&f->arena, gb_malloc_supply());
    gb_places_init(&f->places, &f->arena);
    cr_assert(gb_explainer_init(&f->x, &f->places, (gb_style){GB_US, "en", true},
                                &f->arena) == GB_OK);
}

/* Reasons that differ in anything that is told of them are two. */
Test(why, equal_reasons_are_one) {
    fixture f;
    start(&f);
    const gb_why *a = gb_fact(&f.x, "waste", GB_SHARE, 0.1, "common practice");
    const gb_why *b = gb_fact(&f.x, "net", GB_VOLUME, 2, "common practice");
    const struct {
        const char *id;
        const gb_why *why;
    } others[] = {
        {"another name", gb_fact(&f.x, "air", GB_SHARE, 0.1, "common practice")},
        {"another unit", gb_fact(&f.x, "waste", GB_PLAIN, 0.1, "common practice")},
        {"another value", gb_fact(&f.x, "waste", GB_SHARE, 0.2, "common practice")},
        {"another source", gb_fact(&f.x, "waste", GB_SHARE, 0.1, "ASTM C270")},
        {"no source", gb_fact(&f.x, "waste", GB_SHARE, 0.1, NULL)},
    };
    cr_expect(gb_fact(&f.x, "waste", GB_SHARE, 0.1, "common practice") == a, "the same");
    for (size_t i = 0; i < sizeof others / sizeof others[0]; i++)
        cr_expect(others[i].why != a, "%s", others[i].id);
    const gb_why *sum =
        GB_WHY(&f.x, "gross", GB_VOLUME, 2.2, "net * (1 + waste)", GB_INPUTS(b, a));
    cr_expect(GB_WHY(&f.x, "gross", GB_VOLUME, 2.2, "net * (1 + waste)",
                     GB_INPUTS(b, a)) == sum,
              "the same formula");
    cr_expect(GB_WHY(&f.x, "gross", GB_VOLUME, 2.2, "net * (1 + waste)",
                     GB_INPUTS(b, others[2].why)) != sum,
              "another input");
    gb_arena_release(&f.arena);
}

/* The list goes on over many growths, in order, inputs before what is made of them. */
Test(why, many_reasons_keep_their_numbers) {
    enum { COUNT = 5000 };
    fixture f;
    start(&f);
    const gb_why *sum = gb_fact(&f.x, "sum", GB_PLAIN, 0, "nothing yet");
    for (int i = 1; i <= COUNT; i++) {
        const gb_why *one = gb_fact(&f.x, "one", GB_PLAIN, i, "a count");
        sum = GB_WHY(&f.x, "sum", GB_PLAIN, sum->value + i, "sum + one",
                     GB_INPUTS(sum, one));
        (void)gb_remember(&f.x, "sum", &f.x.list[i], sum);
    }
    cr_expect(f.x.count == 2 * COUNT + 1, "%zu are kept", f.x.count);
    for (size_t i = 0; i < f.x.count; i++) {
        cr_expect(f.x.list[i]->number == i, "number %zu", i);
        for (size_t k = 0; k < f.x.list[i]->input_count; k++)
            cr_expect(f.x.list[i]->inputs[k]->number < i, "an input of %zu", i);
    }
    cr_expect(gb_known(&f.x, "net", &f) == NULL, "nothing is known of another thing");
    gb_arena_release(&f.arena);
}

/* Memory that runs out is told, and nothing is made of what is missing. */
static void *no_memory(void *user, size_t bytes) {
    (void)user;
    (void)bytes;
    return NULL;
}
static void give_back(void *user, void *block) {
    (void)user;
    (void)block;
}

Test(why, memory_that_runs_out) {
    gb_arena arena;
    gb_places places;
    gb_explainer x;
    gb_arena_init(&arena, (gb_supply){no_memory, give_back, NULL});
    gb_places_init(&places, &arena);
    cr_expect(gb_explainer_init(&x, &places, (gb_style){GB_US, "en", true}, &arena) ==
              GB_NO_MEMORY);
    gb_places_add(&places, (gb_place){.value = &x});
    cr_expect(places.failed, "a place that could not be kept");
    fixture f;
    start(&f);
    cr_expect(GB_WHY(&f.x, "net", GB_VOLUME, 1, "each", GB_INPUTS(NULL)) == NULL);
    cr_expect(f.x.failed, "an input that could not be made");
    gb_arena_release(&f.arena);
}
