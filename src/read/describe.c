#include "read/schema.h"

enum { MOST_EXAMPLES = 6, SHOWN_EXAMPLES = 3 };

/* What a kind is called, and how people write one, the usual sizes first. */
static const struct {
    const char *name;
    const char *examples[MOST_EXAMPLES];
} KINDS[] = {
    [GB_LENGTH] = {"a length", {"1-1/4 in", "4 ft 6 in", "38 mm", "1/16 in", "2 mm"}},
    [GB_AREA] = {"an area", {"40 ft2", "3.7 m2"}},
    [GB_VOLUME] = {"a volume", {"6 ft3", "12 qt", "170 L", "1/2 ft3", "12 L"}},
    [GB_MASS] = {"a mass", {"94 lb", "25 kg"}},
    [GB_DENSITY] = {"a density", {"80 lb/ft3", "1400 kg/m3"}},
    [GB_TEMP] = {"a temperature", {"62 F", "17 C"}},
    [GB_DURATION] = {"a time", {"2h30m", "20 min", "3 days"}},
    [GB_SHARE] = {"a share", {"10%", "45%", "100%"}},
    [GB_SLOPE] = {"a slope", {"1/4in/ft", "1:48", "2%"}},
    [GB_SPEED] = {"a speed", {"8 mph", "13 km/h"}},
    [GB_TREAD_PACE] = {"a pace", {"3 treads/h"}},
    [GB_AREA_PACE] = {"a pace", {"40 ft2/h", "4 m2/h"}},
    [GB_VOLUME_PACE] = {"a pace", {"3 ft3/h", "0.1 m3/h"}},
};
_Static_assert(sizeof KINDS / sizeof KINDS[0] == GB_KINDS, "a row for every kind");

bool gb_in_bounds(const gb_key *key, double value) {
    double bound = 0;
    if (key->least != NULL &&
        gb_parse(key->quantity, key->least, &bound) == GB_NO_FAULT && value < bound)
        return false;
    return !(key->most != NULL &&
             gb_parse(key->quantity, key->most, &bound) == GB_NO_FAULT && value > bound);
}

/* Up to three examples that the key would take. */
static void add_examples(const gb_key *key, gb_text *to) {
    const char *fit[SHOWN_EXAMPLES];
    size_t n = 0;
    for (size_t i = 0; i < MOST_EXAMPLES && n < SHOWN_EXAMPLES; i++) {
        const char *example = KINDS[key->quantity].examples[i];
        double value = 0;
        if (example != NULL && gb_parse(key->quantity, example, &value) == GB_NO_FAULT &&
            gb_in_bounds(key, value))
            fit[n++] = example;
    }
    for (size_t i = 0; i < n; i++) {
        gb_text_add(to, i == 0 ? ", such as \"" : i + 1 < n ? "\", \"" : "\" or \"");
        gb_text_add(to, fit[i]);
    }
    gb_text_add(to, n > 0 ? "\"" : "");
}

static void add_bounds(const gb_key *key, gb_text *to) {
    if (key->least != NULL) {
        gb_text_add(to, key->most != NULL ? " from " : " of at least ");
        gb_text_add(to, key->least);
    }
    if (key->most != NULL) {
        gb_text_add(to, key->least != NULL ? " to " : " of at most ");
        gb_text_add(to, key->most);
    }
}

static void add_choices(const gb_key *key, gb_text *to) {
    for (size_t i = 0; key->choices[i] != NULL; i++) {
        if (i > 0)
            gb_text_add(to, key->choices[i + 1] == NULL ? " or " : ", ");
        gb_text_add(to, "\"");
        gb_text_add(to, key->choices[i]);
        gb_text_add(to, "\"");
    }
}

static void describe_quantity(const gb_key *key, gb_text *to) {
    gb_text_add(to, KINDS[key->quantity].name);
    add_bounds(key, to);
    add_examples(key, to);
    if (key->kind == GB_KEY_QUANTITIES)
        gb_text_add(to, ", or several in [ ]");
}

static void describe_number(const gb_key *key, gb_text *to) {
    gb_text_add(to, key->kind == GB_KEY_WHOLE ? "a whole number" : "a number");
    add_bounds(key, to);
    gb_text_add(to, ", without a unit");
}

static void describe_group(const gb_key *key, gb_text *to) {
    bool list = key->kind == GB_KEY_GROUPS;
    gb_text_add(to, list ? "a list of groups, as " : "a group, as ");
    if (key->example != NULL)
        gb_text_add(to, key->example);
    else
        gb_text_add(to, list ? "( { ... }, { ... } )" : "{ ... }");
}

static void describe_choice(const gb_key *key, gb_text *to) {
    gb_text_add(to, key->kind == GB_KEY_CHOICES ? "a list in [ ] of " : "");
    add_choices(key, to);
}

static void describe_size(const gb_key *key, gb_text *to) {
    gb_text_add(to, "two lengths");
    add_bounds(key, to);
    gb_text_add(to, ", such as \"5 ft x 14 in\"");
}

void gb_describe_key(const gb_key *key, gb_text *to) {
    static const struct {
        const char *words; /* or NULL: */
        void (*describe)(const gb_key *, gb_text *);
    } WAYS[] = {
        [GB_KEY_FORMAT] = {"1", NULL},
        [GB_KEY_TEXT] = {"a text in double quotes", NULL},
        [GB_KEY_REF] = {"a text in double quotes", NULL},
        [GB_KEY_WORDS] = {"a text by language, as { en = \"...\"; }", NULL},
        [GB_KEY_WORDS_LIST] = {"a list of texts by language, as ( { en = \"...\"; } )",
                               NULL},
        [GB_KEY_FLAG] = {"true or false", NULL},
        [GB_KEY_CLOCK] = {"a time of day, such as \"07:30\"", NULL},
        [GB_KEY_PACE] = {"a pace, such as \"3 treads/h\", \"40 ft2/h\" or \"3 ft3/h\"",
                         NULL},
        [GB_KEY_QUANTITY] = {NULL, describe_quantity},
        [GB_KEY_QUANTITIES] = {NULL, describe_quantity},
        [GB_KEY_WHOLE] = {NULL, describe_number},
        [GB_KEY_NUMBER] = {NULL, describe_number},
        [GB_KEY_SIZE] = {NULL, describe_size},
        [GB_KEY_CHOICE] = {NULL, describe_choice},
        [GB_KEY_CHOICES] = {NULL, describe_choice},
        [GB_KEY_GROUP] = {NULL, describe_group},
        [GB_KEY_GROUPS] = {NULL, describe_group},
    };
    if (WAYS[key->kind].words != NULL)
        gb_text_add(to, WAYS[key->kind].words);
    else
        WAYS[key->kind].describe(key, to);
}
