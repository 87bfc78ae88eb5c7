#include "read/schema.h"
#include "words/words.h"

enum { MOST_EXAMPLES = 7, SHOWN_EXAMPLES = 3 };

/* What a kind is called, and how people write one, the usual sizes first. */
static const struct {
    const char *name;
    const char *examples[MOST_EXAMPLES];
} KINDS[] = {
    [GB_LENGTH] = {N_("a length"),
                   {"1-1/4 in", "4 ft 6 in", "38 mm", "1/16 in", "2 mm", "7 in",
                    "25 in"}},
    [GB_AREA] = {N_("an area"), {"40 ft2", "3.7 m2"}},
    [GB_VOLUME] = {N_("a volume"), {"6 ft3", "12 qt", "170 L", "1/2 ft3", "12 L"}},
    [GB_MASS] = {N_("a mass"), {"94 lb", "25 kg"}},
    [GB_DENSITY] = {N_("a density"),
                    {"80 lb/ft3", "1400 kg/m3", "260 lb/yd3", "155 kg/m3"}},
    [GB_TEMP] = {N_("a temperature"), {"62 F", "17 C"}},
    [GB_DURATION] = {N_("a time"), {"2h30m", "20 min", "3 days"}},
    [GB_SHARE] = {N_("a share"), {"10%", "45%", "100%"}},
    [GB_SLOPE] = {N_("a slope"), {"1/4in/ft", "1:48", "2%"}},
    [GB_SPEED] = {N_("a speed"), {"8 mph", "13 km/h"}},
    [GB_TREAD_PACE] = {N_("a pace"), {"3 treads/h"}},
    [GB_AREA_PACE] = {N_("a pace"), {"40 ft2/h", "4 m2/h"}},
    [GB_VOLUME_PACE] = {N_("a pace"), {"3 ft3/h", "0.1 m3/h"}},
    [GB_JOINT_RATE] = {N_("a length of joint by area"), {"1 ft/ft2", "3.28 m/m2"}},
    [GB_MORTAR_RATE] = {N_("a volume by area"), {"8.5 ft3/100 ft2", "0.026 m3/m2"}},
    [GB_EVAPORATION] = {N_("an evaporation"), {"0.2 lb/ft2/h", "1 kg/m2/h"}},
    [GB_PRESSURE] = {N_("a strength"), {"3500 psi", "25 MPa"}},
};
_Static_assert(sizeof KINDS / sizeof KINDS[0] == GB_KINDS, "a row for every kind");

double gb_schema_value(gb_kind kind, const char *text) {
    /* The texts of schemas never change, and some are asked for with every value read. */
    enum { REMEMBERED = 512 };
    static _Thread_local struct {
        const char *text;
        gb_kind kind;
        double value;
    } known[REMEMBERED];
    size_t at = (uintptr_t)text / 4 % REMEMBERED;
    if (known[at].text == text && known[at].kind == kind)
        return known[at].value;
    double value = GB_NONE;
    (void)!gb_parse(kind, text, &value);
    known[at].text = text;
    known[at].kind = kind;
    known[at].value = value;
    return value;
}

bool gb_in_bounds(const gb_key *key, double value) {
    if (key->least != NULL && value < gb_schema_value(key->quantity, key->least))
        return false;
    return key->most == NULL || !(value > gb_schema_value(key->quantity, key->most));
}

static void add_bounds(const gb_key *key, const char *what, gb_text *to) {
    if (key->least != NULL && key->most != NULL)
        gb_add_format(to, gb_tr("%s from %s to %s"), what, key->least, key->most);
    else if (key->least != NULL)
        gb_add_format(to, gb_tr("%s of at least %s"), what, key->least);
    else if (key->most != NULL)
        gb_add_format(to, gb_tr("%s of at most %s"), what, key->most);
    else
        gb_text_add(to, what);
}

/* Up to three examples that the key would take. */
static void add_examples(const gb_key *key, const char *what, gb_text *to) {
    static const char *const FORMATS[SHOWN_EXAMPLES + 1] = {
        "%s", NF_("%s, such as \"%s\""), NF_("%s, such as \"%s\" or \"%s\""),
        NF_("%s, such as \"%s\", \"%s\" or \"%s\"")};
    const char *fit[SHOWN_EXAMPLES] = {"", "", ""};
    size_t n = 0;
    for (size_t i = 0; i < MOST_EXAMPLES && n < SHOWN_EXAMPLES; i++) {
        const char *example = KINDS[key->quantity].examples[i];
        double value = 0;
        if (example != NULL && gb_parse(key->quantity, example, &value) == GB_NO_FAULT &&
            gb_in_bounds(key, value))
            fit[n++] = example;
    }
    gb_add_format(to, gb_tr(FORMATS[n]), what, fit[0], fit[1], fit[2]);
}

static void describe_quantity(const gb_key *key, gb_text *to) {
    gb_text bounded;
    gb_text shown;
    gb_text_init(&bounded, to->arena);
    gb_text_init(&shown, to->arena);
    add_bounds(key, gb_tr(KINDS[key->quantity].name), &bounded);
    add_examples(key, gb_text_get(&bounded), &shown);
    bool several = key->kind == GB_KEY_QUANTITIES;
    gb_add_format(to, several ? gb_tr("%s, or several in [ ]") : "%s",
                  gb_text_get(&shown));
    to->failed = to->failed || bounded.failed || shown.failed;
}

static void describe_number(const gb_key *key, gb_text *to) {
    gb_text bounded;
    gb_text_init(&bounded, to->arena);
    add_bounds(key,
               gb_tr(key->kind == GB_KEY_WHOLE ? N_("a whole number") : N_("a number")),
               &bounded);
    bool several = key->kind == GB_KEY_NUMBERS;
    gb_add_format(to,
                  several ? gb_tr("%s, without a unit, or several in [ ]")
                          : gb_tr("%s, without a unit"),
                  gb_text_get(&bounded));
    to->failed = to->failed || bounded.failed;
}

static void describe_group(const gb_key *key, gb_text *to) {
    bool list = key->kind == GB_KEY_GROUPS;
    const char *any = list ? "( { ... }, { ... } )" : "{ ... }";
    gb_add_format(to, list ? gb_tr("a list of groups, as %s") : gb_tr("a group, as %s"),
                  key->example != NULL ? key->example : any);
}

/* One choice more behind those so far; the last comes after an "or". */
static void add_choice(const char *choice, bool last, gb_text *choices) {
    gb_text longer;
    gb_text_init(&longer, choices->arena);
    if (choices->length == 0)
        gb_add_format(&longer, "\"%s\"", choice);
    else
        gb_add_format(&longer, last ? gb_tr("%s or \"%s\"") : gb_tr("%s, \"%s\""),
                      gb_text_get(choices), choice);
    longer.failed = longer.failed || choices->failed;
    *choices = longer;
}

static void describe_choice(const gb_key *key, gb_text *to) {
    gb_text choices;
    gb_text_init(&choices, to->arena);
    for (size_t i = 0; key->choices[i] != NULL; i++)
        add_choice(key->choices[i], key->choices[i + 1] == NULL, &choices);
    bool several = key->kind == GB_KEY_CHOICES;
    gb_add_format(to, several ? gb_tr("a list in [ ] of %s") : "%s",
                  gb_text_get(&choices));
    to->failed = to->failed || choices.failed;
}

static void describe_size(const gb_key *key, gb_text *to) {
    gb_text bounded;
    gb_text_init(&bounded, to->arena);
    add_bounds(key, gb_tr("two lengths"), &bounded);
    gb_add_format(to, gb_tr("%s, such as \"%s\""), gb_text_get(&bounded), "5 ft x 14 in");
    to->failed = to->failed || bounded.failed;
}

void gb_describe_key(const gb_key *key, gb_text *to) {
    static const struct {
        const char *words; /* or NULL: */
        void (*describe)(const gb_key *, gb_text *);
    } WAYS[] = {
        [GB_KEY_FORMAT] = {"1", NULL},
        [GB_KEY_TEXT] = {N_("a text in double quotes"), NULL},
        [GB_KEY_REF] = {N_("a text in double quotes"), NULL},
        [GB_KEY_WORDS] =
            {N_("a text in double quotes, or one by language, as { en = \"...\"; }"),
             NULL},
        [GB_KEY_WORDS_LIST] =
            {N_("a list of texts, or of texts by language, as ( { en = \"...\"; } )"),
             NULL},
        [GB_KEY_FLAG] = {N_("true or false"), NULL},
        [GB_KEY_CLOCK] = {N_("a time of day, such as \"07:30\""), NULL},
        [GB_KEY_PACE] =
            {N_("a pace, such as \"3 treads/h\", \"40 ft2/h\" or \"3 ft3/h\""), NULL},
        [GB_KEY_QUANTITY] = {NULL, describe_quantity},
        [GB_KEY_QUANTITIES] = {NULL, describe_quantity},
        [GB_KEY_WHOLE] = {NULL, describe_number},
        [GB_KEY_NUMBER] = {NULL, describe_number},
        [GB_KEY_NUMBERS] = {NULL, describe_number},
        [GB_KEY_POINTS] = {N_("a list of corners, as ( \"0 ft x 0 ft\", \"5 ft x 0 ft\", "
                              "\"5 ft x 3 ft\" )"),
                           NULL},
        [GB_KEY_OUTLINES] = {N_("a list of lists of corners, as ( ( \"1 ft x 1 ft\", \"2 "
                                "ft x 1 ft\", \"2 ft x 2 ft\" ) )"),
                             NULL},
        [GB_KEY_SIZE] = {NULL, describe_size},
        [GB_KEY_CHOICE] = {NULL, describe_choice},
        [GB_KEY_CHOICES] = {NULL, describe_choice},
        [GB_KEY_GROUP] = {NULL, describe_group},
        [GB_KEY_GROUPS] = {NULL, describe_group},
    };
    if (WAYS[key->kind].words != NULL)
        gb_text_add(to, gb_tr(WAYS[key->kind].words));
    else
        WAYS[key->kind].describe(key, to);
}
