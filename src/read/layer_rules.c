#include "read/layer_rules.h"

#include "gaugebox/count.h"
#include "read/diag.h"
#include "read/schemas.h"
#include "words/words.h"

#include <math.h>
#include <string.h>

typedef struct layer_reader {
    gb_reader *base;
    gb_system units;
    const gb_piece *piece;
    const gb_layer *layer;
} layer_reader;

static const char *shown(const layer_reader *r, double m) {
    gb_text text;
    gb_text_init(&text, r->base->arena);
    gb_text_add(&text, m < 0 ? "-" : "");
    gb_print_length(&text, (gb_length){fabs(m)}, r->units);
    return gb_text_get(&text);
}

/* A fault told with the name of the piece, as %s. */
static void report(const layer_reader *r, int line, const char *format) {
    gb_report(r->base->diags, r->base->file, line, format, r->piece->name);
}

static bool told(const gb_schema *schema, const gb_origin *at, const char *key) {
    size_t row = (size_t)(gb_find_key(schema, key) - schema->keys);
    return at->stated >> row & 1;
}

static bool states(const layer_reader *r, const char *key) {
    return told(&GB_LAYER_SCHEMA, &r->layer->at, key);
}

/* ---- keys of other kinds ----------------------------------------------------------- */

#define OF(kind) (1u << (kind))
static const struct {
    const char *key;
    unsigned kinds;
} KEYS[] = {
    {"flag", OF(GB_JOINT) | OF(GB_POINTING)},
    {"joint_rate", OF(GB_JOINT) | OF(GB_POINTING)},
    {"joint_share", OF(GB_JOINT) | OF(GB_POINTING)},
    {"fall", OF(GB_BED) | OF(GB_SLAB)},
    {"face", OF(GB_PARGE)},
    {"face_area", OF(GB_PARGE)},
    {"block", OF(GB_BLOCK)},
    {"cores", OF(GB_CORE)},
    {"form", OF(GB_SLAB)},
    {"levels", OF(GB_BED)},
};

static void check_foreign(const layer_reader *r) {
    for (size_t i = 0; i < sizeof KEYS / sizeof KEYS[0]; i++)
        if (states(r, KEYS[i].key) && !(KEYS[i].kinds & OF(r->layer->kind)))
            gb_report(r->base->diags, r->base->file, r->layer->at.line,
                      "'%s' says nothing about a %s; take it out, or change the layer's "
                      "kind",
                      KEYS[i].key, GB_LAYER_WORDS[r->layer->kind]);
}

/* ---- joints ------------------------------------------------------------------------ */

static void check_flag(const layer_reader *r) {
    const gb_layer *l = r->layer;
    double least = gb_smaller(l->flag[0].m, l->flag[1].m);
    if (l->joint_width.m > least)
        gb_report(
            r->base->diags, r->base->file, l->at.line,
            "the joints of '%s', %s wide, are wider than a flag, %s; check which is "
            "which",
            r->piece->name, shown(r, l->joint_width.m), shown(r, least));
}

static void check_joint(const layer_reader *r) {
    int line = r->layer->at.line;
    bool by_length = states(r, "joint_length");
    bool by_flag = states(r, "flag");
    bool by_rate = states(r, "joint_rate");
    bool by_share = states(r, "joint_share");
    int ways = by_length + by_flag + by_rate + by_share;
    if (ways == 0)
        report(r, line,
               NF_("the joints of '%s' are not told; add joint_length = \"7 ft\", flag = "
                   "\"24 in x 18 in\", joint_rate = \"1 ft/ft2\" or joint_share = "
                   "\"15%%\""));
    if (ways > 1)
        report(
            r, line,
            NF_("the joints of '%s' are told more than once; keep one of joint_length, "
                "flag, joint_rate and joint_share"));
    if (by_share && ways == 1 && states(r, "joint_width"))
        report(r, line,
               NF_("the joints of '%s' are told by a share of the area, and their width "
                   "says nothing then; take 'joint_width' out"));
    if (!by_share && !states(r, "joint_width"))
        report(r, line,
               NF_("the joints of '%s' have no width; add: joint_width = \"3/8 "
                   "in\""));
    if ((by_flag || by_rate || by_share) && !gb_has_shape(&r->piece->shape))
        report(r, line,
               NF_("piece '%s' has no 'size', and joints that are told by area "
                   "need one; add: size = \"5 ft x 14 in\""));
    if (by_flag)
        check_flag(r);
}

/* ---- parge ------------------------------------------------------------------------- */

static void check_parge(const layer_reader *r) {
    if (states(r, "face") == states(r, "face_area"))
        report(r, r->layer->at.line,
               NF_("the parge of '%s' is on one face; state 'face', as \"20 ft x 4 ft\", "
                   "or 'face_area', and not both"));
}

/* ---- block ------------------------------------------------------------------------- */

static void check_wall_sizes(const layer_reader *r, const gb_wall *w) {
    int line = w->at.line;
    gb_blocks b;
    if (w->joint.m >= gb_smaller(w->nominal[0].m, w->nominal[1].m) / 2)
        report(r, line,
               NF_("the joint of the block of '%s' is over half of the block; "
                   "check both"));
    else if (w->bedding == GB_SHELL_BEDDING && 2 * w->shell.m > w->width.m)
        report(r, line,
               NF_("the two face shells of the block of '%s' are wider than the "
                   "block; check shell and width"));
    else if (gb_wall_length(w).m <= 0)
        report(r, line,
               NF_("the corners of '%s' leave nothing of its wall; check corners "
                   "and length"));
    else if (w->openings.m2 >= gb_wall_length(w).m * gb_wall_height(w).m)
        report(r, line,
               NF_("the openings of '%s' leave nothing of its wall; check them"));
    else if (gb_lay_out(w, &b) != GB_OK)
        report(r, line,
               NF_("the wall of '%s' has more half blocks at its ends than block; "
                   "check its ends, length and openings"));
}

static void check_block(const layer_reader *r) {
    const gb_wall *w = &r->layer->wall;
    if (w->at.line == 0) {
        report(r, r->layer->at.line,
               NF_("the block of '%s' needs its wall; add: block = { length = \"20 ft\"; "
                   "courses = 3; rate = \"8.5 ft3/100 ft2\"; }"));
        return;
    }
    if (w->at.faulty)
        return;
    bool height = told(&GB_WALL_SCHEMA, &w->at, "height");
    bool length = told(&GB_WALL_SCHEMA, &w->at, "length");
    bool rate = told(&GB_WALL_SCHEMA, &w->at, "rate");
    if (!length)
        report(r, w->at.line,
               NF_("the wall of '%s' needs its 'length'; add: length = "
                   "\"20 ft\""));
    if (height == (w->courses > 0))
        report(r, w->at.line,
               NF_("the wall of '%s' is as high as its 'height' or its "
                   "'courses' say; state one of them"));
    else if (length)
        check_wall_sizes(r, w);
    if (rate == told(&GB_WALL_SCHEMA, &w->at, "bedding"))
        report(r, w->at.line,
               NF_("the mortar of the block of '%s' goes by a 'rate' or by "
                   "its 'bedding'; state one of them"));
    if (!rate && told(&GB_WALL_SCHEMA, &w->at, "rate_waste"))
        report(r, w->at.line,
               NF_("the block of '%s' has no 'rate' that could hold waste; "
                   "take 'rate_waste' out"));
}

/* ---- cores ------------------------------------------------------------------------- */

static size_t walls_of(const gb_piece *piece) {
    size_t n = 0;
    for (size_t i = 0; i < piece->layer_count; i++)
        n += piece->layers[i].kind == GB_BLOCK ? 1 : 0;
    return n;
}

/* Grout for a width that no table has. */
static bool has_usual_grout(const layer_reader *r) {
    const gb_layer *wall = gb_block_layer(r->piece);
    bool faulty = wall != NULL &&
                  (wall->at.faulty || wall->wall.at.faulty || wall->wall.at.line == 0);
    return faulty || !isnan(gb_core_each(r->piece, r->layer).m3);
}

static void check_wall_of_cores(const layer_reader *r, const gb_cores *c) {
    bool top = c->courses == GB_TOP_COURSE;
    bool width = told(&GB_CORES_SCHEMA, &c->at, "width");
    if (c->blocks > 0 && top)
        report(r, c->at.line,
               NF_("the cores of '%s' state their blocks; which courses "
                   "those are in says nothing then: take one out"));
    if (c->blocks == 0 && walls_of(r->piece) != 1)
        report(r, c->at.line,
               NF_("the cores of '%s' are those of its one block layer, or "
                   "of so many blocks; add: blocks = 40"));
    else if (c->blocks == 0 && width)
        report(r, c->at.line,
               NF_("the cores of '%s' have the width of its block layer; "
                   "take 'width' out"));
    else if (!has_usual_grout(r))
        report(r, c->at.line,
               NF_("no usual grout is known for the block of '%s', only for "
                   "6, 8 and 12 in; add: each = \"0.2 ft3\""));
}

static void check_cores(const layer_reader *r) {
    const gb_cores *c = &r->layer->cores;
    if (states(r, "volume") == (c->at.line != 0))
        report(r, r->layer->at.line,
               NF_("the core of '%s' is a 'volume', or counted by block; add one of "
                   "volume = \"6 ft3\" and cores = { every = 1; }, and not both"));
    if (c->at.line != 0 && !c->at.faulty)
        check_wall_of_cores(r, c);
}

/* ---- forms ------------------------------------------------------------------------- */

enum { MOST_NEEDS = 6 };
static const struct {
    const char *needs[MOST_NEEDS];
    const char *may[2];
} FORMS[] = {
    [GB_PRISM] = {{NULL}, {NULL}},
    [GB_WEDGE] = {{"front", "back"}, {NULL}},
    [GB_STEPPED] = {{"lengths", "depths", "width"}, {NULL}},
    [GB_STAIR] = {{"risers", "rise", "top", "width"}, {"going", "slab"}},
    [GB_PIER] = {{"height"}, {"diameter", "side"}},
};
_Static_assert(sizeof FORMS / sizeof FORMS[0] == GB_FORM_KINDS, "a row for every kind");

static bool is_among(const char *const *list, size_t most, const char *key) {
    for (size_t i = 0; i < most && list[i] != NULL; i++)
        if (strcmp(list[i], key) == 0)
            return true;
    return false;
}

/* False when a key is missing. */
static bool check_form_keys(const layer_reader *r, const gb_form *f) {
    const char *word = GB_FORM_WORDS[f->kind];
    bool whole = true;
    for (size_t i = 0; i < GB_FORM_SCHEMA.key_count; i++) {
        const char *key = GB_FORM_SCHEMA.keys[i].name;
        bool is_told = f->at.stated >> i & 1;
        bool needed = is_among(FORMS[f->kind].needs, MOST_NEEDS, key);
        if (needed && !is_told)
            gb_report(r->base->diags, r->base->file, f->at.line,
                      "the form of '%s' is a %s and needs '%s'; add it", r->piece->name,
                      word, key);
        if (is_told && !needed && strcmp(key, "kind") != 0 &&
            !is_among(FORMS[f->kind].may, 2, key))
            gb_report(r->base->diags, r->base->file, f->at.line,
                      "'%s' says nothing about a %s; take it out, or change the kind of "
                      "the form of '%s'",
                      key, word, r->piece->name);
        whole = whole && (is_told || !needed);
    }
    return whole;
}

static void check_form_sizes(const layer_reader *r, const gb_form *f) {
    int line = f->at.line;
    bool round = told(&GB_FORM_SCHEMA, &f->at, "diameter");
    if (f->kind == GB_STEPPED && f->length_count != f->depth_count)
        report(r, line,
               NF_("the stepped form of '%s' needs a depth for each of its "
                   "lengths; write as many depths as lengths"));
    else if (f->kind == GB_PIER && round == told(&GB_FORM_SCHEMA, &f->at, "side"))
        report(r, line,
               NF_("the pier '%s' is round or square; state its 'diameter' or "
                   "its 'side', one of them"));
    else if (f->kind == GB_STAIR && f->risers > 1 &&
             !told(&GB_FORM_SCHEMA, &f->at, "going"))
        report(r, line,
               NF_("the stair of '%s' has more than one riser and needs 'going'; "
                   "add it"));
    else if (f->kind == GB_WEDGE && gb_has_shape(&r->piece->shape) &&
             r->piece->shape.kind != GB_RECTANGLE)
        report(r, line,
               NF_("the wedge of '%s' needs a rectangle; of another shape state "
                   "'depth' and 'fall' instead"));
    else if (f->kind > GB_WEDGE && isnan(gb_form_volume(f).m3))
        report(r, line, NF_("a size of the form of '%s' is not over zero; check them"));
}

static void check_form(const layer_reader *r) {
    const gb_form *f = &r->layer->form;
    if (f->at.line == 0 || f->at.faulty)
        return;
    if (check_form_keys(r, f))
        check_form_sizes(r, f);
    if (f->kind != GB_PRISM && (states(r, "depth") || states(r, "fall")))
        report(r, r->layer->at.line,
               NF_("the slab of '%s' has the depths of its form; take 'depth' and 'fall' "
                   "out"));
}

/* ---- levels ------------------------------------------------------------------------ */

static void check_beds(const layer_reader *r, const gb_levels *l) {
    for (size_t i = 0; i < l->block_count; i++) {
        double bed = gb_level_bed(l, i);
        if (bed > 0)
            continue;
        double stone = l->stone_m[l->stone_count == 1 ? 0 : i];
        gb_report(r->base->diags, r->base->file, l->at.line,
                  "tread %d of '%s': %s from its block to its finished top has no room "
                  "for a stone of %s and a bed; check the levels, or cut the block",
                  (int)i + 1, r->piece->name, shown(r, bed + stone), shown(r, stone));
    }
}

static void check_counts(const layer_reader *r, const gb_levels *l) {
    const struct {
        const char *key;
        size_t count;
        bool one_will_do;
    } lists[] = {{"block", l->block_count, false},
                 {"finished", l->finished_count, false},
                 {"stone", l->stone_count, true}};
    size_t faults = gb_diags_count(r->base->diags);
    for (size_t i = 0; i < 3; i++)
        if (lists[i].count != r->piece->count &&
            !(lists[i].one_will_do && lists[i].count == 1))
            gb_report(r->base->diags, r->base->file, l->at.line,
                      "the levels of '%s' hold %d in '%s', and the piece has %d "
                      "treads; write one for each",
                      r->piece->name, (int)lists[i].count, lists[i].key,
                      (int)r->piece->count);
    if (gb_diags_count(r->base->diags) == faults)
        check_beds(r, l);
}

static void check_levels(const layer_reader *r) {
    const gb_levels *l = &r->layer->levels;
    if (l->at.line == 0 || l->at.faulty)
        return;
    check_counts(r, l);
    if (l->least.m >= l->most.m)
        report(r, l->at.line,
               NF_("the least bed of '%s' is not below the most; check "
                   "which is which"));
    if (states(r, "depth") || states(r, "fall"))
        report(r, r->layer->at.line,
               NF_("the bed of '%s' has the depths that its levels leave; take 'depth' "
                   "and 'fall' out"));
}

static void check_slurry(const layer_reader *r) {
    static const double THICKEST_M = 0.0127; /* 1/2 in: more is a bed */
    for (size_t i = 0; i < r->layer->depth_count; i++)
        if (r->layer->depths_m[i] > THICKEST_M)
            gb_report(
                r->base->diags, r->base->file, r->layer->at.line,
                "a slurry of %s is a bed; over 1/2 in (12.7 mm) is too much, 1/16 to "
                "1/8 in (2 to 3 mm) is usual: check its depth",
                shown(r, r->layer->depths_m[i]));
}

void gb_check_layer(gb_reader *reader, const gb_job *job, const gb_piece *piece,
                    const gb_layer *layer) {
    const layer_reader r = {reader, job->units, piece, layer};
    if (piece->name == NULL)
        return;
    check_foreign(&r);
    switch (layer->kind) {
    case GB_JOINT:
    case GB_POINTING:
        check_joint(&r);
        break;
    case GB_PARGE:
        check_parge(&r);
        break;
    case GB_BLOCK:
        check_block(&r);
        break;
    case GB_CORE:
        check_cores(&r);
        break;
    case GB_SLAB:
        check_form(&r);
        break;
    case GB_BED:
        check_levels(&r);
        break;
    case GB_SLURRY:
        check_slurry(&r);
        break;
    default:
        break;
    }
}
