#include "read/csv.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <csv.h>
#include <string.h>

/* Cells in < >, a row's end as |. */
typedef struct shown {
    char text[4096];
    size_t length;
} shown;

static void add(shown *s, const char *more, size_t n) {
    cr_assert(s->length + n < sizeof s->text);
    memcpy(s->text + s->length, more, n);
    s->length += n;
    s->text[s->length] = '\0';
}

static void show_cell(void *user, size_t field, const char *text, size_t length) {
    (void)field;
    cr_expect(strlen(text) == length);
    add(user, "<", 1);
    add(user, text, length);
    add(user, ">", 1);
}

static void show_row(void *user, size_t cells) {
    (void)cells;
    add(user, "|", 1);
}

static void their_cell(void *text, size_t length, void *user) {
    show_cell(user, 0, length == 0 ? "" : text, length);
}

static void their_row(int c, void *user) {
    (void)c;
    show_row(user, 0);
}

/* libcsv ends a row at each CR and LF, and skips what is empty. */
static void read_theirs(const char *text, shown *s) {
    struct csv_parser parser;
    cr_assert(csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL) == 0);
    cr_assert(csv_parse(&parser, text, strlen(text), their_cell, their_row, s) ==
              strlen(text));
    cr_assert(csv_fini(&parser, their_cell, their_row, s) == 0);
    csv_free(&parser);
}

static bool read_ours(const char *text, shown *s, gb_diags *diags) {
    char copy[4096];
    cr_assert(strlen(text) < sizeof copy);
    memcpy(copy, text, strlen(text) + 1);
    gb_csv csv = {
        .file = "f", .diags = diags, .cell = show_cell, .row = show_row, .user = s};
    return gb_csv_parse(&csv, copy, strlen(text));
}

static void expect_same(const char *text) {
    gb_arena arena;
    gb_diags diags;
    shown ours = {.length = 0};
    shown theirs = {.length = 0};
    gb_arena_init(&arena, gb_malloc_supply());
    gb_diags_init(&diags, &arena);
    cr_expect(read_ours(text, &ours, &diags), "%s", text);
    read_theirs(text, &theirs);
    cr_expect(strcmp(ours.text, theirs.text) == 0, "\"%s\": %s, by libcsv %s", text,
              ours.text, theirs.text);
    gb_arena_release(&arena);
}

Test(csv, lines_that_are_cut_by_hand_come_out_as_by_libcsv) {
    static const char *const TEXTS[] = {"",
                                        "\n",
                                        "a",
                                        "a\n",
                                        "a,b\n",
                                        "a,b",
                                        "a,\n",
                                        ",\n",
                                        ",",
                                        " \n",
                                        " ",
                                        "\t\n",
                                        " a , b\n",
                                        "a b,c d\n",
                                        "a\r\n",
                                        "a,b\r\nc\r\n",
                                        "\r\n",
                                        "a\n\n\nb\n",
                                        ",,,\n,\n",
                                        "a, \n",
                                        " ,a\n",
                                        "  ,  \n",
                                        "a\t,\tb\n",
                                        "\t a \t\n",
                                        "\r\n\r\n",
                                        " \r\n",
                                        "a \r\nb \r\n",
                                        "\xC3\xA9,\xE2\x82\xAC\n"};
    for (size_t i = 0; i < sizeof TEXTS / sizeof TEXTS[0]; i++)
        expect_same(TEXTS[i]);
}

/* Every text of up to seven of the signs that mean something. */
Test(csv, all_short_texts_come_out_as_by_libcsv) {
    static const char *const SIGNS[] = {"a", ",", " ", "\n", "\r\n"};
    enum { SIGN_COUNT = 5, LONGEST = 7 };
    for (size_t length = 1, all = SIGN_COUNT; length <= LONGEST;
         length++, all *= SIGN_COUNT)
        for (size_t n = 0; n < all; n++) {
            char text[2 * LONGEST + 1] = "";
            for (size_t i = 0, rest = n; i < length; i++, rest /= SIGN_COUNT)
                strncat(text, SIGNS[rest % SIGN_COUNT], 2);
            expect_same(text);
        }
}

/* Quotes are libcsv's; a cell that holds a line's end is refused instead. */
Test(csv, quotes) {
    static const struct {
        const char *text;
        const char *cells; /* NULL: refused */
    } ROWS[] = {
        {"\"a\"\n", "<a>|"},
        {"\"a,b\",c\n", "<a,b><c>|"},
        {"\"a \"\"b\"\"\"\r\nc\r\n", "<a \"b\">|<c>|"},
        {"\" a \", b \n", "< a ><b>|"},
        {"a\n\"\"\nb", "<a>|<>|<b>|"},
        {"\xEF\xBB\xBF\"a\",b\n", "<a><b>|"},
        {"\xEF\xBB\xBF", ""},
        {"a,\"b\"", "<a><b>|"},
        {"\"a\n", NULL},
        {"\"a", NULL},
        {"a\"b\n", NULL},
        {"\"a\"b\n", NULL},
        {"\"a\nb\"\n", NULL},
        {"a\n\"b\nc\"\nd\n", NULL},
    };
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        gb_arena arena;
        gb_diags diags;
        shown s = {.length = 0};
        gb_arena_init(&arena, gb_malloc_supply());
        gb_diags_init(&diags, &arena);
        bool good = read_ours(ROWS[i].text, &s, &diags);
        cr_expect(good == (ROWS[i].cells != NULL), "%s", ROWS[i].text);
        cr_expect(good != gb_diags_any(&diags), "%s", ROWS[i].text);
        if (good && ROWS[i].cells != NULL)
            cr_expect(strcmp(s.text, ROWS[i].cells) == 0, "%s: %s", ROWS[i].text, s.text);
        gb_arena_release(&arena);
    }
}

Test(csv, numbers) {
    static const struct {
        const char *text;
        bool good;
        double number;
    } ROWS[] = {
        {"0", true, 0},
        {"12", true, 12},
        {"-3.5", true, -3.5},
        {"+3.5", true, 3.5},
        {".5", true, 0.5},
        {"5.", true, 5},
        {"0.1", true, 0.1},
        {"98.6", true, 98.6},
        {"007", true, 7},
        {"123456789012345", true, 123456789012345.0},
        {"0.12345678901234", true, 0.12345678901234},
        {".123456789012345", true, 0.123456789012345},
        {"1234567890123456", false, 0},
        {"99999999999999999999999999", false, 0},
        {"", false, 0},
        {"-", false, 0},
        {".", false, 0},
        {"-.", false, 0},
        {"--1", false, 0},
        {"1.2.3", false, 0},
        {"1e3", false, 0},
        {"1,5", false, 0},
        {"1 ", false, 0},
        {" 1", false, 0},
        {"0x10", false, 0},
        {"nan", false, 0},
        {"inf", false, 0},
    };
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        double number = 0;
        bool good = gb_csv_number(ROWS[i].text, &number);
        cr_expect(good == ROWS[i].good, "'%s'", ROWS[i].text);
        if (good) /* to the last bit, as the compiler reads it */
            cr_expect(number == ROWS[i].number, "'%s' is %.17g", ROWS[i].text, number);
    }
}
