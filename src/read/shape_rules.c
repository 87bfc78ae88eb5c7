#include "read/shape_rules.h"

#include "read/diag.h"
#include "words/mark.h"

#include <string.h>

typedef struct shape_reader {
    gb_diags *diags;
    const char *file;
    const char *piece;
    gb_shape *shape;
} shape_reader;

/* Which keys a kind of shape has beside its kind: those that it needs, and those that it
   may have. A curved shape is told by any two of radius, chord and rise. */
static const struct {
    const char *needs[3];
    const char *may[3];
} KEYS[] = {
    [GB_RECTANGLE] = {{"front", "width"}, {NULL}},
    [GB_TRAPEZOID] = {{"front", "back", "width"}, {NULL}},
    [GB_TRIANGLE] = {{"sides"}, {NULL}},
    [GB_CIRCLE] = {{"diameter"}, {NULL}},
    [GB_CURVED] = {{"width"}, {"radius", "chord", "rise"}},
    [GB_WINDER] = {{"narrow", "wide", "width"}, {NULL}},
    [GB_POLYGON] = {{"corners"}, {"holes"}},
};
_Static_assert(sizeof KEYS / sizeof KEYS[0] == GB_SHAPE_KINDS, "a row for every kind");

static bool stated(const gb_shape *shape, const char *key) {
    size_t row = (size_t)(gb_find_key(&GB_SHAPE_SCHEMA, key) - GB_SHAPE_SCHEMA.keys);
    return shape->at.stated >> row & 1;
}

static bool is_among(const char *const list[3], const char *key) {
    for (size_t i = 0; i < 3 && list[i] != NULL; i++)
        if (strcmp(list[i], key) == 0)
            return true;
    return false;
}

static void report(const shape_reader *r, const char *format) {
    gb_report(r->diags, r->file, r->shape->at.line, format, r->piece);
}

/* False when a key is missing, so that no rule speaks of what is not there. */
static bool check_keys(const shape_reader *r) {
    gb_shape_kind kind = r->shape->kind;
    const char *word = GB_SHAPE_WORDS[kind];
    bool whole = true;
    for (size_t i = 0; i < 3 && KEYS[kind].needs[i] != NULL; i++) {
        if (stated(r->shape, KEYS[kind].needs[i]))
            continue;
        gb_report(r->diags, r->file, r->shape->at.line,
                  "the shape of '%s' is a '%s' and needs '%s'; add it", r->piece, word,
                  KEYS[kind].needs[i]);
        whole = false;
    }
    for (size_t i = 0; i < GB_SHAPE_SCHEMA.key_count; i++) {
        const char *key = GB_SHAPE_SCHEMA.keys[i].name;
        if (strcmp(key, "kind") == 0 || !stated(r->shape, key) ||
            is_among(KEYS[kind].needs, key) || is_among(KEYS[kind].may, key))
            continue;
        gb_report(
            r->diags, r->file, r->shape->at.line,
            "'%s' says nothing about a '%s'; take it out, or change the kind of the "
            "shape of '%s'",
            key, word, r->piece);
    }
    return whole;
}

/* ---- curved ------------------------------------------------------------------------ */

static gb_status complete_arc(gb_shape *s) {
    gb_arc stated_arc = s->arc;
    if (!stated(s, "rise"))
        return gb_arc_of_radius(stated_arc.radius, stated_arc.chord, &s->arc);
    if (!stated(s, "radius"))
        return gb_arc_of_rise(stated_arc.chord, stated_arc.rise, &s->arc);
    return gb_arc_of_radius_and_rise(stated_arc.radius, stated_arc.rise, &s->arc);
}

static void check_curved(const shape_reader *r) {
    gb_shape *s = r->shape;
    int told = stated(s, "radius") + stated(s, "chord") + stated(s, "rise");
    if (told != 2) {
        report(r, NF_("the curve of '%s' is told by two of radius, chord and rise; state "
                      "two of them"));
        return;
    }
    if (complete_arc(s) != GB_OK)
        report(r, stated(s, "rise")
                      ? NF_("the rise of '%s' is over the whole circle; check rise and "
                            "radius")
                      : NF_("the chord of '%s' is longer than its circle is wide; check "
                            "chord and radius"));
    else if (s->width.m > s->arc.radius.m)
        report(r, NF_("the width of '%s' is over the radius of its outer arc; check the "
                      "width and the curve"));
}

/* ---- polygons ---------------------------------------------------------------------- */

static void check_polygon(const shape_reader *r) {
    static const char *const FORMATS[] = {
        [GB_OUTLINE_SHORT] =
            NF_("outline %d of '%s' has fewer than three corners (see corner %d)"),
        [GB_OUTLINE_TWICE] =
            NF_("outline %d of '%s': corner %d and the next one are in one place; take "
                "one out, the last corner joins the first by itself"),
        [GB_OUTLINE_CROSSES] =
            NF_("outline %d of '%s' crosses or touches itself at the side behind corner "
                "%d; check the order of the corners"),
        [GB_OUTLINE_FLAT] = NF_("outline %d of '%s' encloses nothing (see corner %d)"),
        [GB_HOLE_OUTSIDE] =
            NF_("outline %d of '%s', a hole, does not lie within the first one (see "
                "corner %d); check its corners"),
        [GB_HOLES_MEET] =
            NF_("outline %d of '%s', a hole, meets another hole (see corner "
                "%d); make one of the two, or part them")};
    size_t which = 0;
    size_t at = 0;
    gb_outline_fault fault = gb_check_outlines(r->shape, &which, &at);
    if (fault != GB_OUTLINE_GOOD)
        gb_report(r->diags, r->file, r->shape->at.line, FORMATS[fault], (int)which + 1,
                  r->piece, (int)at + 1);
}

void gb_check_shape(gb_diags *diags, const char *file, const char *piece,
                    gb_shape *shape) {
    const shape_reader r = {diags, file, piece, shape};
    if (shape->at.line == 0 || shape->at.faulty || !check_keys(&r))
        return;
    if (shape->kind == GB_CURVED)
        check_curved(&r);
    else if (shape->kind == GB_POLYGON)
        check_polygon(&r);
    else if (shape->kind == GB_TRIANGLE && shape->side_count != 3)
        report(&r, NF_("the triangle '%s' needs three sides; write sides = [ \"3 ft\", "
                       "\"4 ft\", \"5 ft\" ]"));
    else if (shape->kind == GB_TRIANGLE) {
        gb_plan_size size;
        gb_length none = {0};
        if (gb_measure_shape(shape, none, none, &size) != GB_OK)
            report(&r, NF_("the sides of '%s' close no triangle; each must be under the "
                           "sum of the two others"));
    }
}
