#include "read/schemas.h"
#include "read/schema.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>
#include <string.h>

static const struct {
    const char *file_kind;
    const gb_schema *schema;
} FILES[] = {
    {"job", &GB_JOB_SCHEMA},
    {"mixes", &GB_MIX_SCHEMA},
    {"materials", &GB_MATERIAL_SCHEMA},
    {"prices", &GB_PRICE_SCHEMA},
};
enum { FILE_KINDS = sizeof FILES / sizeof FILES[0], MOST_KEYS = 64 };

/* ---- walking ----------------------------------------------------------------------- */

/* What a check is told of a key: where it stands, and what the check carries along. */
typedef struct place {
    const gb_schema *schema;
    int depth;
    void *with;
} place;

typedef void key_check(const gb_key *key, place at);
static key_check check_printed;

/* The printed reference alone does not go down into what another kind tells. */
static bool goes_down(const gb_key *key, key_check *check) {
    return key->child != NULL && !(check == check_printed && key->told_elsewhere);
}

static size_t walk(const gb_schema *schema, int depth, key_check *check, void *with) {
    size_t seen = 0;
    cr_assert(depth < 10, "%s: schemas hold each other in a circle", schema->name);
    for (size_t i = 0; i < schema->key_count; i++) {
        check(&schema->keys[i], (place){schema, depth, with});
        seen++;
        if (goes_down(&schema->keys[i], check))
            seen += walk(schema->keys[i].child, depth + 1, check, with);
    }
    return seen;
}

/* Four files with a version each, and more: no check may pass over an empty table. */
static void check_all(key_check *check) {
    for (size_t i = 0; i < FILE_KINDS; i++) {
        size_t seen = walk(FILES[i].schema, 0, check, NULL);
        cr_expect(seen > 5, "%s: %zu keys", FILES[i].file_kind, seen);
    }
}

/* ---- values as a user would write them -----------------------------------------------
 */

static bool in_words(const char *const *words, const char *word) {
    for (; *words != NULL; words++)
        if (strcmp(*words, word) == 0)
            return true;
    return false;
}

static bool whole_number(const char *text, double *value) {
    return gb_parse_number(text, value) == GB_NO_FAULT && floor(*value) == *value;
}

/* A bound of a size is one length; what is usual is two, of which the longer counts. */
static bool reads_size(const char *text, double *value) {
    gb_length two[2];
    if (gb_parse(GB_LENGTH, text, value) == GB_NO_FAULT)
        return true;
    if (gb_parse_size(text, &two[0], &two[1]) != GB_NO_FAULT)
        return false;
    *value = fmax(two[0].m, two[1].m);
    return true;
}

/* True when `text` is a value of the key's kind; numbers go to *value. */
static bool reads(const gb_key *key, const char *text, double *value) {
    *value = NAN;
    switch (key->kind) {
    case GB_KEY_QUANTITY:
    case GB_KEY_QUANTITIES:
        return gb_parse(key->quantity, text, value) == GB_NO_FAULT;
    case GB_KEY_SIZE:
        return reads_size(text, value);
    case GB_KEY_NUMBER:
    case GB_KEY_NUMBERS:
        return gb_parse_number(text, value) == GB_NO_FAULT;
    case GB_KEY_WHOLE:
        return whole_number(text, value);
    case GB_KEY_CHOICE:
        return in_words(key->choices, text);
    case GB_KEY_FLAG:
        return strcmp(text, "true") == 0 || strcmp(text, "false") == 0;
    case GB_KEY_TEXT:
        return text[0] != '\0';
    default:
        return false;
    }
}

static bool has_bounds(const gb_key *key) {
    return key->kind == GB_KEY_QUANTITY || key->kind == GB_KEY_QUANTITIES ||
           key->kind == GB_KEY_SIZE || key->kind == GB_KEY_NUMBER ||
           key->kind == GB_KEY_NUMBERS || key->kind == GB_KEY_WHOLE;
}

/* ---- the checks ----------------------------------------------------------------------
 */

static void check_values(const gb_key *key, place at) {
    double least = -INFINITY;
    double most = INFINITY;
    double fallback = NAN;
    const char *of = at.schema->name;
    if (key->least != NULL)
        cr_expect(reads(key, key->least, &least), "%s.%s: least \"%s\"", of, key->name,
                  key->least);
    if (key->most != NULL)
        cr_expect(reads(key, key->most, &most), "%s.%s: most \"%s\"", of, key->name,
                  key->most);
    if (key->fallback != NULL)
        cr_expect(reads(key, key->fallback, &fallback), "%s.%s: fallback \"%s\"", of,
                  key->name, key->fallback);
    cr_expect(least <= most, "%s.%s: least is over most", of, key->name);
    if (key->fallback != NULL && has_bounds(key))
        cr_expect(least <= fallback && fallback <= most, "%s.%s: \"%s\" is out of bounds",
                  of, key->name, key->fallback);
}

Test(schemas, bounds_and_fallbacks_are_values_of_their_key) {
    check_all(check_values);
}

static void check_sense(const gb_key *key, place at) {
    const char *of = at.schema->name;
    bool bounds = key->least != NULL || key->most != NULL;
    bool chooses = key->kind == GB_KEY_CHOICE || key->kind == GB_KEY_CHOICES;
    bool holds = key->kind == GB_KEY_GROUP || key->kind == GB_KEY_GROUPS;
    cr_expect(has_bounds(key) || bounds == false, "%s.%s: bounds of no number", of,
              key->name);
    cr_expect(chooses == (key->choices != NULL), "%s.%s: choices", of, key->name);
    cr_expect(holds == (key->child != NULL), "%s.%s: a schema below it", of, key->name);
    cr_expect(key->required == false || key->fallback == NULL,
              "%s.%s: required, and yet something stands for it", of, key->name);
    cr_expect(key->kind != GB_KEY_SIZE || key->quantity == GB_LENGTH,
              "%s.%s: a size of no lengths", of, key->name);
    /* Nothing stands for a number that is left out but the fallback: zero is no value. */
    cr_expect(key->kind != GB_KEY_WHOLE || key->required || key->fallback != NULL,
              "%s.%s: zero when left out", of, key->name);
}

Test(schemas, keys_make_sense) {
    check_all(check_sense);
}

static void check_choices(const gb_key *key, place at) {
    if (key->choices == NULL)
        return;
    cr_expect(key->choices[0] != NULL && key->choices[1] != NULL,
              "%s.%s: nothing to choose from", at.schema->name, key->name);
    for (size_t i = 0; key->choices[i] != NULL; i++) {
        cr_expect(key->choices[i][0] != '\0', "%s.%s: an empty choice", at.schema->name,
                  key->name);
        cr_expect(i < 31, "%s.%s: more choices than bits", at.schema->name, key->name);
        cr_expect(in_words(&key->choices[i + 1], key->choices[i]) == false,
                  "%s.%s: \"%s\" twice", at.schema->name, key->name, key->choices[i]);
    }
}

Test(schemas, choices_differ) {
    check_all(check_choices);
}

static void check_name(const gb_key *key, place at) {
    size_t same = 0;
    for (size_t i = 0; i < at.schema->key_count; i++)
        same += strcmp(at.schema->keys[i].name, key->name) == 0;
    cr_expect(same == 1, "%s.%s: %zu keys of that name", at.schema->name, key->name,
              same);
    /* What the file format takes for a name, in small letters. */
    size_t n = strspn(key->name, "abcdefghijklmnopqrstuvwxyz0123456789_");
    cr_expect(key->name[n] == '\0' && n > 0, "%s.%s: no name", at.schema->name,
              key->name);
    cr_expect(key->name[0] >= 'a' && key->name[0] <= 'z', "%s.%s", at.schema->name,
              key->name);
    cr_expect(strcmp(key->name, GB_END_KEY) != 0, "%s.%s: the loader's own",
              at.schema->name, key->name);
}

Test(schemas, names_are_unique) {
    check_all(check_name);
}

static void check_help(const gb_key *key, place at) {
    cr_assert(key->help != NULL, "%s.%s: no help", at.schema->name, key->name);
    cr_expect(key->help[0] != '\0', "%s.%s: no help", at.schema->name, key->name);
    cr_expect(strchr(key->help, '\n') == NULL, "%s.%s: help is one line", at.schema->name,
              key->name);
}

Test(schemas, every_key_has_help) {
    check_all(check_help);
}

/* Reading marks the keys it saw in a list of 64. */
static void check_count(const gb_key *key, place at) {
    cr_expect(at.schema->key_count <= MOST_KEYS, "%s: %zu keys", at.schema->name,
              at.schema->key_count);
    if (key->child != NULL)
        cr_expect(key->child->key_count > 0, "%s.%s: a group of nothing", at.schema->name,
                  key->name);
}

Test(schemas, no_more_keys_than_reading_marks) {
    check_all(check_count);
}

static size_t size_of(const gb_key *key) {
    switch (key->kind) {
    case GB_KEY_QUANTITY:
    case GB_KEY_NUMBER:
    case GB_KEY_CLOCK:
        return sizeof(double);
    case GB_KEY_SIZE:
        return 2 * sizeof(gb_length);
    case GB_KEY_CHOICE:
    case GB_KEY_CHOICES:
        return sizeof(int);
    case GB_KEY_FLAG:
        return sizeof(bool);
    case GB_KEY_REF:
        return sizeof(gb_ref);
    case GB_KEY_WORDS:
        return sizeof(gb_words);
    case GB_KEY_PACE:
        return sizeof(gb_pace);
    case GB_KEY_POINTS:
        return sizeof(gb_outline);
    case GB_KEY_GROUP:
        return key->child->size;
    default: /* pointers, and whole numbers */
        return sizeof(size_t);
    }
}

static bool is_list(const gb_key *key) {
    return key->kind == GB_KEY_QUANTITIES || key->kind == GB_KEY_NUMBERS ||
           key->kind == GB_KEY_GROUPS || key->kind == GB_KEY_WORDS_LIST;
}

/* No value may be written outside its struct or over another one. */
static void check_offset(const gb_key *key, place at) {
    size_t end = key->offset + size_of(key);
    const gb_schema *schema = at.schema;
    cr_expect(end <= schema->size, "%s.%s: behind its struct", schema->name, key->name);
    if (is_list(key))
        cr_expect(key->count_offset + sizeof(size_t) <= schema->size &&
                      key->count_offset != key->offset,
                  "%s.%s: its count", schema->name, key->name);
    for (size_t i = 0; i < schema->key_count; i++) {
        const gb_key *other = &schema->keys[i];
        bool apart =
            end <= other->offset || other->offset + size_of(other) <= key->offset;
        cr_expect(other == key || apart, "%s: %s and %s overlap", schema->name, key->name,
                  other->name);
        if (is_list(other))
            cr_expect(other->count_offset >= end ||
                          other->count_offset + sizeof(size_t) <= key->offset,
                      "%s: the count of %s and %s overlap", schema->name, other->name,
                      key->name);
    }
}

Test(schemas, values_have_their_own_room) {
    check_all(check_offset);
}

/* ---- the printed reference ------------------------------------------------------------
 */

static gb_arena arena;

static void begin(void) {
    gb_arena_init(&arena, gb_malloc_supply());
}

static void end(void) {
    gb_arena_release(&arena);
}

TestSuite(reference, .init = begin, .fini = end);

/* True when the words stand in the text, wherever its lines break. */
static bool has_words(const char *text, const char *words) {
    for (const char *from = text; *from != '\0'; from++) {
        const char *t = from;
        const char *w = words;
        while (*w != '\0' && (*t == *w || (*w == ' ' && *t == '\n'))) {
            t += *t == '\n' ? 1 + strspn(t + 1, " ") : 1;
            w++;
        }
        if (*w == '\0')
            return true;
    }
    return false;
}

/* A key stands on a line of its own, set in by two spaces for each group around it. */
static void check_printed(const gb_key *key, place at) {
    gb_text line;
    gb_text_init(&line, &arena);
    gb_text_add(&line, "\n");
    gb_text_add_repeated(&line, ' ', 2 * (size_t)at.depth);
    gb_text_add(&line, key->name);
    gb_text_add(&line, key->required ? "  (required)\n" : "\n");
    const char *text = at.with;
    cr_expect(strstr(text, gb_text_get(&line)) != NULL, "%s.%s", at.schema->name,
              key->name);
    cr_expect(has_words(text, key->help), "%s.%s: its help", at.schema->name, key->name);
    const char *const values[] = {key->fallback, key->least, key->most};
    for (size_t i = 0; i < 3; i++)
        cr_expect(values[i] == NULL || has_words(text, values[i]), "%s.%s: \"%s\"",
                  at.schema->name, key->name, values[i]);
    for (size_t i = 0; key->choices != NULL && key->choices[i] != NULL; i++)
        cr_expect(has_words(text, key->choices[i]), "%s.%s: \"%s\"", at.schema->name,
                  key->name, key->choices[i]);
}

Test(reference, holds_every_key) {
    for (size_t i = 0; i < FILE_KINDS; i++) {
        gb_text text;
        gb_text_init(&text, &arena);
        gb_text_add(&text, "\n"); /* a line begins behind a line's end */
        cr_assert(gb_print_keys(FILES[i].file_kind, &text), "%s", FILES[i].file_kind);
        cr_assert(text.failed == false, "%s", FILES[i].file_kind);
        walk(FILES[i].schema, 0, check_printed, text.data);
    }
}

Test(reference, knows_no_other_kind) {
    static const char *const KINDS[] = {"", "jobs", "mix", "Job", "weather", "job "};
    for (size_t i = 0; i < sizeof KINDS / sizeof KINDS[0]; i++) {
        gb_text text;
        gb_text_init(&text, &arena);
        cr_expect(gb_print_keys(KINDS[i], &text) == false, "\"%s\"", KINDS[i]);
        cr_expect(text.length == 0, "\"%s\" prints \"%s\"", KINDS[i], gb_text_get(&text));
    }
}

/* ---- what help and faults show as an example must itself be read
 * ----------------------- */

static double bound(const gb_key *key, const char *text, double otherwise) {
    double value = otherwise;
    gb_fault fault = text == NULL ? GB_NO_FAULT : gb_parse(key->quantity, text, &value);
    cr_expect(fault == GB_NO_FAULT, "%s: \"%s\"", key->name, text);
    return value;
}

/* How many examples the description of a key shows; each must be within its bounds. */
static size_t read_examples(const gb_key *key, const char *text) {
    size_t examples = 0;
    double least = bound(key, key->least, -INFINITY);
    double most = bound(key, key->most, INFINITY);
    for (const char *at = strchr(text, '"'); at != NULL; at = strchr(at, '"')) {
        char example[GB_LONGEST] = "";
        size_t n = strcspn(at + 1, "\"");
        cr_assert(at[1 + n] == '"' && n < sizeof example, "%s: %s", key->name, at);
        memcpy(example, at + 1, n);
        at += n + 2;
        double si = 0;
        gb_fault fault = gb_parse(key->quantity, example, &si);
        cr_expect(fault == GB_NO_FAULT, "%s: \"%s\" is fault %d", key->name, example,
                  fault);
        cr_expect(least <= si && si <= most, "%s: \"%s\" is out of bounds", key->name,
                  example);
        examples++;
    }
    return examples;
}

static void check_examples(const gb_key *key, place at) {
    if (key->kind != GB_KEY_QUANTITY && key->kind != GB_KEY_QUANTITIES)
        return;
    gb_text text;
    gb_text_init(&text, &arena);
    gb_describe_key(key, &text);
    cr_expect(read_examples(key, gb_text_get(&text)) > 0, "%s.%s: %s", at.schema->name,
              key->name, gb_text_get(&text));
}

Test(reference, examples_of_quantities_are_read) {
    check_all(check_examples);
}

/* Without bounds to fit, every kind shows both systems; treads belong to neither. */
Test(reference, every_kind_has_examples) {
    for (int kind = 0; kind < GB_KINDS; kind++) {
        const gb_key key = {
            .name = "any", .kind = GB_KEY_QUANTITY, .quantity = (gb_kind)kind};
        size_t least = kind == GB_TREAD_PACE || kind == GB_SHARE ? 1 : 2;
        gb_text text;
        gb_text_init(&text, &arena);
        gb_describe_key(&key, &text);
        cr_expect(read_examples(&key, gb_text_get(&text)) >= least, "kind %d: %s", kind,
                  gb_text_get(&text));
    }
}
