#include "read/values.h"

#include "read/diag.h"
#include "read/nearest.h"
#include "words/words.h"

#include <math.h>
#include <string.h>

enum { LONGEST_TEXT = 1000 };

/* ---- writing into structs -------------------------------------------------------- */

/* Members are written as bytes, because a table row knows only their offset. */
static void put(void *out, size_t offset, const void *value, size_t size) {
    memcpy((char *)out + offset, value, size);
}

static void put_double(void *out, const gb_key *key, double value) {
    put(out, key->offset, &value, sizeof value);
}

static void put_list(void *out, const gb_key *key, const void *list, size_t count) {
    put(out, key->offset, &list, sizeof list);
    put(out, key->count_offset, &count, sizeof count);
}

/* ---- places ---------------------------------------------------------------------- */

static int line_of(const config_setting_t *setting) {
    return (int)config_setting_source_line(setting);
}

/* A setting as it was written; "" for groups and lists. */
static const char *as_written(gb_reader *r, const config_setting_t *s) {
    gb_text text;
    gb_text_init(&text, r->arena);
    switch (config_setting_type(s)) {
    case CONFIG_TYPE_STRING:
        gb_text_add(&text, config_setting_get_string(s));
        break;
    case CONFIG_TYPE_INT:
        gb_text_add_int(&text, config_setting_get_int(s));
        break;
    case CONFIG_TYPE_FLOAT:
        gb_text_add_fixed(&text, config_setting_get_float(s), 6);
        while (text.length > 0 && text.data[text.length - 1] == '0')
            text.data[--text.length] = '\0';
        break;
    default:
        break;
    }
    r->places->failed = r->places->failed || text.failed;
    return gb_text_get(&text);
}

/* As places and faults name it: an option of a group is called after both, as
   trial_water. */
static const char *told_name(gb_reader *r, const gb_key *key) {
    if (r->within == NULL)
        return key->name;
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_text_add(&text, r->within);
    gb_text_add(&text, "_");
    gb_text_add(&text, key->name);
    r->diags->no_memory = r->diags->no_memory || text.failed;
    return gb_text_get(&text);
}

static void keep_place(gb_reader *r, const config_setting_t *s, const gb_key *key,
                       const void *value) {
    /* An option has no line, but it was stated: 0 would make it a usual value. */
    const char *file = r->shown != NULL ? r->shown : r->file;
    gb_places_add(r->places, (gb_place){.value = value,
                                        .file = r->typed ? "" : file,
                                        .line = r->typed ? 1 : line_of(s),
                                        .key = told_name(r, key),
                                        .text = as_written(r, s)});
}

static void keep_outline(gb_reader *r, const config_setting_t *s, const gb_key *key,
                         const gb_outline *outline) {
    for (size_t i = 0; i < outline->count; i++) {
        const config_setting_t *corner = config_setting_get_elem(s, (unsigned)i);
        keep_place(r, corner, key, &outline->points[i].x);
        keep_place(r, corner, key, &outline->points[i].y);
    }
}

/* A corner is two values in one text. */
static void keep_corners(gb_reader *r, const config_setting_t *s, const gb_key *key,
                         const void *out) {
    const char *value = (const char *)out + key->offset;
    gb_outline outline = {NULL, 0};
    if (key->kind == GB_KEY_POINTS) {
        memcpy(&outline, value, sizeof outline);
        keep_outline(r, s, key, &outline);
    }
    if (key->kind != GB_KEY_OUTLINES)
        return;
    const void *first = NULL;
    size_t count = 0;
    memcpy(&first, value, sizeof first);
    memcpy(&count, (const char *)out + key->count_offset, sizeof count);
    const gb_outline *list = first;
    for (size_t i = 0; i < count; i++)
        keep_outline(r, config_setting_get_elem(s, (unsigned)i), key, &list[i]);
}

/* A size is two values behind one key, and a list has a place for each of its own. */
static void keep_places(gb_reader *r, const config_setting_t *s, const gb_key *key,
                        const void *out) {
    const char *value = (const char *)out + key->offset;
    keep_place(r, s, key, value);
    if (key->kind == GB_KEY_SIZE)
        keep_place(r, s, key, value + sizeof(gb_length));
    keep_corners(r, s, key, out);
    if (key->kind != GB_KEY_QUANTITIES && key->kind != GB_KEY_NUMBERS)
        return;
    const double *list = NULL;
    size_t count = 0;
    memcpy(&list, value, sizeof list);
    memcpy(&count, (const char *)out + key->count_offset, sizeof count);
    int type = config_setting_type(s);
    bool many = type == CONFIG_TYPE_ARRAY || type == CONFIG_TYPE_LIST;
    for (size_t i = 0; i < count; i++)
        keep_place(r, many ? config_setting_get_elem(s, (unsigned)i) : s, key, &list[i]);
}

/* ---- faults ---------------------------------------------------------------------- */

/* What a setting is, in the words of the person who wrote it. */
static const char *what_is(const config_setting_t *setting) {
    switch (config_setting_type(setting)) {
    case CONFIG_TYPE_INT:
    case CONFIG_TYPE_INT64:
    case CONFIG_TYPE_FLOAT:
        return gb_tr("a bare number");
    case CONFIG_TYPE_STRING:
        return gb_tr("a text");
    case CONFIG_TYPE_BOOL:
        return gb_tr("true or false");
    case CONFIG_TYPE_GROUP:
        return gb_tr("a group { }");
    case CONFIG_TYPE_LIST:
        return gb_tr("a list ( )");
    case CONFIG_TYPE_ARRAY:
        return gb_tr("a list [ ]");
    default:
        return gb_tr("something else");
    }
}

static const char *needed(gb_reader *r, const gb_key *key) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_describe_key(key, &text);
    if (text.failed)
        r->diags->no_memory = true;
    return gb_text_get(&text);
}

/* A cut of a user's text for a message, so that 10 kB of digits stay out of it. */
static const char *cut(gb_reader *r, const char *text) {
    if (strlen(text) <= GB_LONGEST)
        return text;
    gb_text shown;
    gb_text_init(&shown, r->arena);
    gb_text_add_bytes(&shown, text, (size_t)gb_cut(text, 40));
    gb_text_add(&shown, "...");
    return gb_text_get(&shown);
}

/* A whole sentence for each, with places for the key, its value, and what it needs. */
static const char *fault_format(gb_fault fault) {
    static const char *const FORMATS[] = {
        [GB_FAULT_EMPTY] = NF_("'%s': \"%s\" is empty; write %s"),
        [GB_FAULT_LONG] = NF_("'%s': \"%s\" is longer than 64 characters; write %s"),
        [GB_FAULT_NUMBER] = NF_("'%s': \"%s\" has no number where one must be; write %s"),
        [GB_FAULT_DIGITS] = NF_("'%s': \"%s\" has too many digits; write %s"),
        [GB_FAULT_EXPONENT] = NF_("'%s': \"%s\" has a number with an exponent; write %s"),
        // NOLINTNEXTLINE(bugprone-suspicious-missing-comma) one sentence in two lines
        [GB_FAULT_COMMA] = NF_("'%s': \"%s\" has a comma in a number; the decimal sign "
                               "is a point; write %s"),
        [GB_FAULT_FRACTION] = NF_("'%s': \"%s\" has a fraction that cannot be; write %s"),
        [GB_FAULT_NO_UNIT] = NF_("'%s': \"%s\" has no unit; write %s"),
        [GB_FAULT_UNIT] = NF_("'%s': \"%s\" has a unit that is not known; write %s"),
        [GB_FAULT_OTHER_KIND] = NF_("'%s': \"%s\" has a unit of another kind; write %s"),
        [GB_FAULT_NEGATIVE] = NF_("'%s': \"%s\" is below zero; write %s"),
        [GB_FAULT_CARRY] = NF_(
            "'%s': \"%s\" has a second part that is too large for the first; write %s"),
        [GB_FAULT_MORE] =
            NF_("'%s': \"%s\" has something behind the quantity; write %s")};
    return FORMATS[fault];
}

static void bad_quantity(gb_reader *r, const config_setting_t *s, const gb_key *key,
                         const char *text, gb_fault fault) {
    gb_report(r->diags, r->file, line_of(s), fault_format(fault), told_name(r, key),
              cut(r, text), needed(r, key));
}

static void wrong_kind(gb_reader *r, const config_setting_t *s, const gb_key *key) {
    bool number = key->kind == GB_KEY_NUMBER || key->kind == GB_KEY_WHOLE;
    double value = 0;
    /* What is typed and is no number is still a text. */
    const char *text = r->typed && number ? config_setting_get_string(s) : NULL;
    gb_fault fault = text == NULL ? GB_NO_FAULT : gb_parse_number(text, &value);
    if (fault != GB_NO_FAULT)
        bad_quantity(r, s, key, text, fault);
    else
        gb_report(r->diags, r->file, line_of(s), "'%s' is %s; write %s",
                  told_name(r, key), what_is(s), needed(r, key));
}

/* ---- the getters ----------------------------------------------------------------- */

static const char *text_of(gb_reader *r, const config_setting_t *s, const gb_key *key) {
    if (config_setting_type(s) != CONFIG_TYPE_STRING) {
        wrong_kind(r, s, key);
        return NULL;
    }
    const char *text = config_setting_get_string(s);
    if (text[strspn(text, " ")] == '\0') {
        gb_report(r->diags, r->file, line_of(s),
                  "'%s' is empty; write %s, or leave the "
                  "line out",
                  told_name(r, key), needed(r, key));
        return NULL;
    }
    if (strlen(text) > LONGEST_TEXT) {
        gb_report(r->diags, r->file, line_of(s),
                  "'%s' is %zu bytes long; at most %d are printed, shorten it",
                  told_name(r, key), strlen(text), LONGEST_TEXT);
        return NULL;
    }
    char *copy = gb_arena_copy(r->arena, text);
    if (copy == NULL)
        r->diags->no_memory = true;
    return copy;
}

static bool quantity_of(gb_reader *r, const config_setting_t *s, const gb_key *key,
                        double *value) {
    const char *text = text_of(r, s, key);
    if (text == NULL)
        return false;
    gb_fault fault = gb_parse(key->quantity, text, value);
    if (fault != GB_NO_FAULT) {
        bad_quantity(r, s, key, text, fault);
        return false;
    }
    if (gb_in_bounds(key, *value))
        return true;
    gb_report(r->diags, r->file, line_of(s), "'%s': \"%s\" is out of bounds; write %s",
              told_name(r, key), cut(r, text), needed(r, key));
    return false;
}

static void read_quantity(gb_reader *r, const config_setting_t *s, const gb_key *key,
                          void *out) {
    double value = 0;
    if (quantity_of(r, s, key, &value))
        put_double(out, key, value);
}

static bool number_of(const config_setting_t *s, double *value) {
    int type = config_setting_type(s);
    if (type == CONFIG_TYPE_INT)
        *value = config_setting_get_int(s);
    else if (type == CONFIG_TYPE_FLOAT)
        *value = config_setting_get_float(s);
    else
        return false;
    return true;
}

/* The value of a bound or fallback of a bare number. */
static double plain(const char *text, double otherwise) {
    double value = 0;
    bool good = text != NULL && gb_parse_number(text, &value) == GB_NO_FAULT;
    return good ? value : otherwise;
}

static void read_format(gb_reader *r, const config_setting_t *s, const gb_key *key,
                        void *out) {
    size_t format = 1;
    if (config_setting_type(s) != CONFIG_TYPE_INT)
        wrong_kind(r, s, key);
    else if (config_setting_get_int(s) != 1)
        gb_report(r->diags, r->file, line_of(s),
                  "'format' is %d, a form that is not known here; write format = 1",
                  config_setting_get_int(s));
    else
        put(out, key->offset, &format, sizeof format);
}

/* A bare number as it was written, for a message. */
static const char *shown_number(gb_reader *r, const config_setting_t *s, double value) {
    gb_text shown;
    gb_text_init(&shown, r->arena);
    gb_text_add_fixed(&shown, value, 6);
    size_t n = shown.length;
    while (n > 0 && shown.data[n - 1] == '0' &&
           config_setting_type(s) == CONFIG_TYPE_FLOAT)
        n--;
    if (config_setting_type(s) == CONFIG_TYPE_INT)
        n -= 7; /* ".000000" */
    if (shown.data != NULL)
        shown.data[n] = '\0';
    return gb_text_get(&shown);
}

static bool bounded_number(gb_reader *r, const config_setting_t *s, const gb_key *key,
                           double *value) {
    if (!number_of(s, value)) {
        wrong_kind(r, s, key);
        return false;
    }
    if (key->kind == GB_KEY_WHOLE && config_setting_type(s) != CONFIG_TYPE_INT) {
        gb_report(r->diags, r->file, line_of(s), "'%s' is %s; write %s",
                  told_name(r, key), shown_number(r, s, *value), needed(r, key));
        return false;
    }
    if (*value >= plain(key->least, -HUGE_VAL) && *value <= plain(key->most, HUGE_VAL))
        return true;
    gb_report(r->diags, r->file, line_of(s), "'%s' is %s, out of bounds; write %s",
              told_name(r, key), shown_number(r, s, *value), needed(r, key));
    return false;
}

static void read_number(gb_reader *r, const config_setting_t *s, const gb_key *key,
                        void *out) {
    double value = 0;
    if (!bounded_number(r, s, key, &value))
        return;
    size_t count = (size_t)value;
    if (key->kind == GB_KEY_WHOLE)
        put(out, key->offset, &count, sizeof count);
    else
        put_double(out, key, value);
}

/* One value, or several in a list; each is read by `one`. */
static void read_several(gb_reader *r, const config_setting_t *s, const gb_key *key,
                         void *out,
                         bool (*one)(gb_reader *, const config_setting_t *,
                                     const gb_key *, double *)) {
    int type = config_setting_type(s);
    bool many = type == CONFIG_TYPE_ARRAY || type == CONFIG_TYPE_LIST;
    int count = many ? config_setting_length(s) : 1;
    if (many && count == 0) {
        gb_report(r->diags, r->file, line_of(s), "'%s' is an empty list; write %s",
                  told_name(r, key), needed(r, key));
        return;
    }
    double *list = gb_arena_take(r->arena, (size_t)count, sizeof *list);
    if (list == NULL) {
        r->diags->no_memory = true;
        return;
    }
    bool good = true;
    for (int i = 0; i < count; i++) {
        const config_setting_t *at = many ? config_setting_get_elem(s, (unsigned)i) : s;
        good = one(r, at, key, &list[i]) && good;
    }
    if (good)
        put_list(out, key, list, (size_t)count);
}

static void read_quantities(gb_reader *r, const config_setting_t *s, const gb_key *key,
                            void *out) {
    read_several(r, s, key, out, quantity_of);
}

static void read_numbers(gb_reader *r, const config_setting_t *s, const gb_key *key,
                         void *out) {
    read_several(r, s, key, out, bounded_number);
}

static void read_flag(gb_reader *r, const config_setting_t *s, const gb_key *key,
                      void *out) {
    if (config_setting_type(s) != CONFIG_TYPE_BOOL) {
        wrong_kind(r, s, key);
        return;
    }
    bool value = config_setting_get_bool(s) == CONFIG_TRUE;
    put(out, key->offset, &value, sizeof value);
}

static int choice_index(const gb_key *key, const char *word) {
    for (int i = 0; key->choices[i] != NULL; i++)
        if (strcmp(key->choices[i], word) == 0)
            return i;
    return -1;
}

static int choice_of(gb_reader *r, const config_setting_t *s, const gb_key *key) {
    const char *word = text_of(r, s, key);
    if (word == NULL)
        return -1;
    int index = choice_index(key, word);
    if (index < 0) {
        const char *near = gb_nearest_of(word, key->choices);
        if (near != NULL)
            gb_report(r->diags, r->file, line_of(s),
                      "'%s': \"%s\" is not known, did you mean \"%s\"?; write %s",
                      told_name(r, key), cut(r, word), near, needed(r, key));
        else
            gb_report(r->diags, r->file, line_of(s),
                      "'%s': \"%s\" is not known; write %s", told_name(r, key),
                      cut(r, word), needed(r, key));
    }
    return index;
}

static void read_choice(gb_reader *r, const config_setting_t *s, const gb_key *key,
                        void *out) {
    int index = choice_of(r, s, key);
    if (index >= 0)
        put(out, key->offset, &index, sizeof index);
}

static void read_choices(gb_reader *r, const config_setting_t *s, const gb_key *key,
                         void *out) {
    int type = config_setting_type(s);
    int count = config_setting_length(s);
    if ((type != CONFIG_TYPE_ARRAY && type != CONFIG_TYPE_LIST) || count == 0) {
        wrong_kind(r, s, key);
        return;
    }
    unsigned bits = 0;
    for (int i = 0; i < count; i++) {
        int index = choice_of(r, config_setting_get_elem(s, (unsigned)i), key);
        if (index >= 0)
            bits |= 1u << index;
    }
    put(out, key->offset, &bits, sizeof bits);
}

static void read_size(gb_reader *r, const config_setting_t *s, const gb_key *key,
                      void *out) {
    const char *text = text_of(r, s, key);
    if (text == NULL)
        return;
    gb_length two[2] = {{0}, {0}};
    gb_fault fault = gb_parse_size(text, &two[0], &two[1]);
    if (fault != GB_NO_FAULT)
        bad_quantity(r, s, key, text, fault);
    else if (!gb_in_bounds(key, two[0].m) || !gb_in_bounds(key, two[1].m))
        gb_report(r->diags, r->file, line_of(s),
                  "'%s': \"%s\" is out of bounds; write %s", told_name(r, key), text,
                  needed(r, key));
    else
        put(out, key->offset, two, sizeof two);
}

/* "07:30" or "7:30"; minutes since midnight, below 24 h. */
static bool clock_of(const char *text, double *seconds) {
    static const char FIGURES[] = "0123456789";
    size_t hours = strspn(text, FIGURES);
    if (hours < 1 || hours > 2 || text[hours] != ':')
        return false;
    const char *minutes = text + hours + 1;
    if (strspn(minutes, FIGURES) != 2 || minutes[2] != '\0')
        return false;
    int h = 0;
    for (size_t i = 0; i < hours; i++)
        h = h * 10 + (text[i] - '0');
    int m = (minutes[0] - '0') * 10 + (minutes[1] - '0');
    *seconds = h * 3600.0 + m * 60.0;
    return h < 24 && m < 60;
}

static bool point_of(gb_reader *r, const config_setting_t *s, const gb_key *key,
                     gb_point *point) {
    const char *text = text_of(r, s, key);
    gb_length x = {0};
    gb_length y = {0};
    if (text == NULL)
        return false;
    gb_fault fault = gb_parse_size(text, &x, &y);
    if (fault != GB_NO_FAULT) {
        bad_quantity(r, s, key, text, fault);
        return false;
    }
    static const double FARTHEST_M = 152.4; /* 500 ft, as any length of a shape */
    if (x.m > FARTHEST_M || y.m > FARTHEST_M) {
        gb_report(r->diags, r->file, line_of(s),
                  "'%s': \"%s\" lies over 500 ft (152 m) away; write %s",
                  told_name(r, key), cut(r, text), needed(r, key));
        return false;
    }
    *point = (gb_point){x.m, y.m};
    return true;
}

static bool outline_of(gb_reader *r, const config_setting_t *s, const gb_key *key,
                       gb_outline *outline) {
    int type = config_setting_type(s);
    if (type != CONFIG_TYPE_LIST && type != CONFIG_TYPE_ARRAY) {
        wrong_kind(r, s, key);
        return false;
    }
    size_t count = (size_t)config_setting_length(s);
    gb_point *points = gb_arena_take(r->arena, count + 1, sizeof *points);
    if (points == NULL) {
        r->diags->no_memory = true;
        return false;
    }
    bool good = true;
    for (size_t i = 0; i < count; i++)
        good =
            point_of(r, config_setting_get_elem(s, (unsigned)i), key, &points[i]) && good;
    *outline = (gb_outline){points, count};
    return good;
}

static void read_points(gb_reader *r, const config_setting_t *s, const gb_key *key,
                        void *out) {
    gb_outline outline = {NULL, 0};
    if (outline_of(r, s, key, &outline))
        put(out, key->offset, &outline, sizeof outline);
}

static void read_outlines(gb_reader *r, const config_setting_t *s, const gb_key *key,
                          void *out) {
    if (config_setting_type(s) != CONFIG_TYPE_LIST || config_setting_length(s) == 0) {
        wrong_kind(r, s, key);
        return;
    }
    size_t count = (size_t)config_setting_length(s);
    gb_outline *list = gb_arena_take(r->arena, count, sizeof *list);
    if (list == NULL) {
        r->diags->no_memory = true;
        return;
    }
    bool good = true;
    for (size_t i = 0; i < count; i++)
        good =
            outline_of(r, config_setting_get_elem(s, (unsigned)i), key, &list[i]) && good;
    if (good)
        put_list(out, key, list, count);
}

static void read_clock(gb_reader *r, const config_setting_t *s, const gb_key *key,
                       void *out) {
    const char *text = text_of(r, s, key);
    double seconds = 0;
    if (text == NULL)
        return;
    if (clock_of(text, &seconds))
        put_double(out, key, seconds);
    else
        gb_report(r->diags, r->file, line_of(s),
                  "'%s': \"%s\" is no time of day; write %s", told_name(r, key),
                  cut(r, text), needed(r, key));
}

static void read_pace(gb_reader *r, const config_setting_t *s, const gb_key *key,
                      void *out) {
    const char *text = text_of(r, s, key);
    if (text == NULL)
        return;
    gb_pace pace = {GB_NONE, GB_NONE, GB_NONE, line_of(s)};
    double *rates[] = {&pace.treads_s, &pace.m2_s, &pace.m3_s};
    gb_fault first = GB_NO_FAULT;
    for (int i = 0; i < 3; i++) {
        gb_fault fault = gb_parse((gb_kind)(GB_TREAD_PACE + i), text, rates[i]);
        if (fault == GB_NO_FAULT && *rates[i] > 0) {
            put(out, key->offset, &pace, sizeof pace);
            return;
        }
        if (fault == GB_NO_FAULT) {
            gb_report(r->diags, r->file, line_of(s),
                      "'%s': \"%s\" places nothing; write %s", told_name(r, key), text,
                      needed(r, key));
            return;
        }
        *rates[i] = GB_NONE;
        if (fault != GB_FAULT_OTHER_KIND)
            first = fault;
    }
    bad_quantity(r, s, key, text, first == GB_NO_FAULT ? GB_FAULT_UNIT : first);
}

/* A plain text is one in English. */
static bool plain_words(gb_reader *r, const config_setting_t *s, const gb_key *key,
                        gb_words *words) {
    const char *text = text_of(r, s, key);
    gb_phrase *list = gb_arena_take(r->arena, 1, sizeof *list);
    if (list == NULL) {
        r->diags->no_memory = true;
        return false;
    }
    list[0] = (gb_phrase){"en", text};
    *words = (gb_words){list, 1};
    return text != NULL;
}

static bool phrase_of(gb_reader *r, const config_setting_t *s, const gb_key *key,
                      gb_phrase *phrase) {
    const char *language = config_setting_name(s);
    if (strlen(language) != 2)
        gb_report(r->diags, r->file, line_of(s),
                  "'%s' is no language; write its two letters, as en or es", language);
    const char *text = text_of(r, s, key);
    char *name = gb_arena_copy(r->arena, language);
    if (name == NULL)
        r->diags->no_memory = true;
    *phrase = (gb_phrase){name, text};
    return text != NULL && name != NULL;
}

static bool words_of(gb_reader *r, const config_setting_t *s, const gb_key *key,
                     gb_words *words) {
    if (config_setting_type(s) == CONFIG_TYPE_STRING)
        return plain_words(r, s, key, words);
    if (config_setting_type(s) != CONFIG_TYPE_GROUP || config_setting_length(s) == 0) {
        wrong_kind(r, s, key);
        return false;
    }
    size_t count = (size_t)config_setting_length(s);
    gb_phrase *list = gb_arena_take(r->arena, count, sizeof *list);
    if (list == NULL) {
        r->diags->no_memory = true;
        return false;
    }
    for (size_t i = 0; i < count; i++)
        if (!phrase_of(r, config_setting_get_elem(s, (unsigned)i), key, &list[i]))
            return false;
    *words = (gb_words){list, count};
    return true;
}

static void read_words(gb_reader *r, const config_setting_t *s, const gb_key *key,
                       void *out) {
    gb_words words = {NULL, 0};
    if (words_of(r, s, key, &words))
        put(out, key->offset, &words, sizeof words);
}

static void read_words_list(gb_reader *r, const config_setting_t *s, const gb_key *key,
                            void *out) {
    if (config_setting_type(s) != CONFIG_TYPE_LIST) {
        wrong_kind(r, s, key);
        return;
    }
    size_t count = (size_t)config_setting_length(s);
    gb_words *list = gb_arena_take(r->arena, count + 1, sizeof *list);
    if (list == NULL) {
        r->diags->no_memory = true;
        return;
    }
    for (size_t i = 0; i < count; i++)
        if (!words_of(r, config_setting_get_elem(s, (unsigned)i), key, &list[i]))
            return;
    put_list(out, key, list, count);
}

static void read_ref(gb_reader *r, const config_setting_t *s, const gb_key *key,
                     void *out) {
    gb_ref ref = {text_of(r, s, key), line_of(s)};
    if (ref.text != NULL)
        put(out, key->offset, &ref, sizeof ref);
}

static void read_text(gb_reader *r, const config_setting_t *s, const gb_key *key,
                      void *out) {
    const char *text = text_of(r, s, key);
    if (text != NULL)
        put(out, key->offset, &text, sizeof text);
}

static void read_child(gb_reader *r, const config_setting_t *s, const gb_key *key,
                       void *out) {
    if (config_setting_type(s) != CONFIG_TYPE_GROUP) {
        wrong_kind(r, s, key);
        return;
    }
    r->within = r->typed ? key->name : NULL;
    gb_read_group(r, s, key->child, (char *)out + key->offset);
    r->within = NULL;
}

static void read_children(gb_reader *r, const config_setting_t *s, const gb_key *key,
                          void *out) {
    if (config_setting_type(s) != CONFIG_TYPE_LIST) {
        wrong_kind(r, s, key);
        return;
    }
    size_t count = (size_t)config_setting_length(s);
    if (count == 0) {
        gb_report(r->diags, r->file, line_of(s), "'%s' is an empty list; write %s",
                  told_name(r, key), needed(r, key));
        return;
    }
    char *list = gb_arena_take(r->arena, count, key->child->size);
    if (list == NULL) {
        r->diags->no_memory = true;
        return;
    }
    for (size_t i = 0; i < count; i++) {
        const config_setting_t *one = config_setting_get_elem(s, (unsigned)i);
        if (config_setting_type(one) == CONFIG_TYPE_GROUP)
            gb_read_group(r, one, key->child, list + i * key->child->size);
        else
            gb_report(r->diags, r->file, line_of(one), "an entry of '%s' is %s; write %s",
                      told_name(r, key), what_is(one), needed(r, key));
    }
    put_list(out, key, list, count);
}

void gb_read_value(gb_reader *reader, const config_setting_t *setting, const gb_key *key,
                   void *out) {
    static void (*const READERS[])(gb_reader *, const config_setting_t *, const gb_key *,
                                   void *) = {[GB_KEY_FORMAT] = read_format,
                                              [GB_KEY_TEXT] = read_text,
                                              [GB_KEY_REF] = read_ref,
                                              [GB_KEY_WORDS] = read_words,
                                              [GB_KEY_WORDS_LIST] = read_words_list,
                                              [GB_KEY_QUANTITY] = read_quantity,
                                              [GB_KEY_QUANTITIES] = read_quantities,
                                              [GB_KEY_WHOLE] = read_number,
                                              [GB_KEY_NUMBER] = read_number,
                                              [GB_KEY_NUMBERS] = read_numbers,
                                              [GB_KEY_FLAG] = read_flag,
                                              [GB_KEY_CHOICE] = read_choice,
                                              [GB_KEY_CHOICES] = read_choices,
                                              [GB_KEY_POINTS] = read_points,
                                              [GB_KEY_OUTLINES] = read_outlines,
                                              [GB_KEY_SIZE] = read_size,
                                              [GB_KEY_CLOCK] = read_clock,
                                              [GB_KEY_PACE] = read_pace,
                                              [GB_KEY_GROUP] = read_child,
                                              [GB_KEY_GROUPS] = read_children};
    READERS[key->kind](reader, setting, key, out);
    /* A group lies where its first value does, which is the one that is asked for. */
    if (reader->places != NULL && key->kind != GB_KEY_GROUP)
        keep_places(reader, setting, key, out);
}

/* ---- what stands for "not stated" ------------------------------------------------- */

static void default_group(gb_reader *r, const gb_schema *schema, char *out) {
    for (size_t i = 0; i < schema->key_count; i++)
        gb_default_value(r, &schema->keys[i], out);
}

static void default_quantity(const gb_key *key, void *out) {
    double value = GB_NONE;
    if (key->kind == GB_KEY_NUMBER)
        value = plain(key->fallback, GB_NONE);
    else if (key->kind == GB_KEY_CLOCK && key->fallback != NULL)
        (void)clock_of(key->fallback, &value);
    else if (key->fallback != NULL)
        value = gb_schema_value(key->quantity, key->fallback);
    put_double(out, key, value);
}

/* What is usual has no line; a size is two values. */
static void place_default(gb_reader *r, const gb_key *key, const void *out) {
    const char *value = (const char *)out + key->offset;
    const char *file = r->shown != NULL ? r->shown : r->file;
    gb_place place = {.value = value,
                      .file = r->typed ? "" : file,
                      .key = told_name(r, key),
                      .text = key->fallback};
    gb_places_add(r->places, place);
    place.value = value + sizeof(gb_length);
    if (key->kind == GB_KEY_SIZE)
        gb_places_add(r->places, place);
}

void gb_default_value(gb_reader *reader, const gb_key *key, void *out) {
    size_t whole = 0;
    int choice = key->kind == GB_KEY_CHOICE && key->fallback != NULL
                     ? choice_index(key, key->fallback)
                     : 0;
    gb_length size[2] = {{GB_NONE}, {GB_NONE}};
    const gb_pace no_pace = {GB_NONE, GB_NONE, GB_NONE, 0};
    if (reader->places != NULL && key->fallback != NULL)
        place_default(reader, key, out);
    switch (key->kind) {
    case GB_KEY_QUANTITY:
    case GB_KEY_NUMBER:
    case GB_KEY_CLOCK:
        default_quantity(key, out);
        break;
    case GB_KEY_WHOLE:
        whole = (size_t)plain(key->fallback, 0);
        put(out, key->offset, &whole, sizeof whole);
        break;
    case GB_KEY_CHOICE:
        put(out, key->offset, &choice, sizeof choice);
        break;
    case GB_KEY_SIZE:
        if (key->fallback != NULL)
            (void)!gb_parse_size(key->fallback, &size[0], &size[1]);
        put(out, key->offset, size, sizeof size);
        break;
    case GB_KEY_PACE:
        put(out, key->offset, &no_pace, sizeof no_pace);
        break;
    case GB_KEY_GROUP:
        if (!key->empty_when_absent)
            default_group(reader, key->child, (char *)out + key->offset);
        break;
    case GB_KEY_TEXT:
        put(out, key->offset, &key->fallback, sizeof key->fallback);
        break;
    default: /* lists, refs, words, flags: zeroed already */
        break;
    }
}
