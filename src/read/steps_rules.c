#include "read/steps_rules.h"

#include "read/diag.h"
#include "read/schemas.h"
#include "words/mark.h"

#include "gaugebox/count.h"

#include <string.h>

typedef struct steps_reader {
    const gb_reader *base;
    const char *name;
    gb_system units;
    const gb_steps *steps;
} steps_reader;

static bool stated(const gb_steps *s, const char *key) {
    size_t row = (size_t)(gb_find_key(&GB_STEPS_SCHEMA, key) - GB_STEPS_SCHEMA.keys);
    return s->at.stated >> row & 1;
}

static const char *shown(const steps_reader *r, double m) {
    gb_text text;
    gb_text_init(&text, r->base->arena);
    gb_print_length(&text, (gb_length){m}, r->units);
    return gb_text_get(&text);
}

static void report(const steps_reader *r, const char *format) {
    gb_report(r->base->diags, r->base->file, r->steps->at.line, format, r->name);
}

static void report_two(const steps_reader *r, const char *format, double a, double b) {
    gb_report(r->base->diags, r->base->file, r->steps->at.line, format, r->name,
              shown(r, a), shown(r, b));
}

/* ---- keys that go together --------------------------------------------------------- */

static void check_count(const steps_reader *r) {
    if (r->steps->count == 1)
        report(r,
               NF_("run '%s' has one riser; that is a step and no run, which has two at "
                   "least"));
}

static void check_treads(const steps_reader *r) {
    const gb_steps *s = r->steps;
    if (isnan(s->going.m) && isnan(s->length.m))
        report(r, NF_("run '%s' has no tread; state 'tread', or the 'length' of all of "
                      "them"));
    if (!isnan(s->going.m) && !isnan(s->length.m))
        report(r, NF_("run '%s' states 'tread' and 'length'; one follows from the other, "
                      "take one out"));
    if (!isnan(s->going.m) && s->overlap.m >= s->going.m)
        report_two(r,
                   NF_("run '%s' overlaps %s on a tread of %s; 1 to 4 in is usual, check "
                       "both"),
                   s->overlap.m, s->going.m);
}

static void check_top(const steps_reader *r) {
    const gb_steps *s = r->steps;
    bool landing = s->upper == GB_UPPER_LANDING;
    if (s->top == GB_TO_SILL && landing && isnan(s->landing.m))
        report(r, NF_("run '%s' goes up to a sill behind a landing; add how deep the "
                      "landing is: landing = \"3 ft\""));
    if (s->top == GB_TO_NOSING && s->sill.m > 0)
        report(r, NF_("run '%s' ends at the nosing and states a 'sill'; write top = "
                      "\"sill\", or take it out"));
    if (!landing && !isnan(s->landing.m))
        report(r, NF_("run '%s' ends with a tread and states a 'landing'; take one out"));
}

static void check_pair(const steps_reader *r, double least, double most,
                       const char *format) {
    if (least > most)
        report_two(r, format, least, most);
}

static void check_bounds(const steps_reader *r) {
    const gb_steps *s = r->steps;
    check_pair(
        r, s->least_bed.m, s->most_bed.m,
        NF_("run '%s': least_bed, %s, is over most_bed, %s; check which is which"));
    check_pair(
        r, s->band_least.m, s->band_most.m,
        NF_("run '%s': band_least, %s, is over band_most, %s; check which is which"));
    check_pair(
        r, s->least_riser.m, s->most_riser.m,
        NF_("run '%s': least_riser, %s, is over most_riser, %s; check which is which"));
    if (stated(s, "bed"))
        check_pair(
            r, s->bed.m, s->most_bed.m,
            NF_("run '%s': the bed, %s, is over most_bed, %s; build the block up, or "
                "raise most_bed"));
    if (stated(s, "bed"))
        check_pair(
            r, s->least_bed.m, s->bed.m,
            NF_("run '%s': least_bed, %s, is over the bed, %s; check which is which"));
}

/* ---- ways of building -------------------------------------------------------------- */

static void refuse(const steps_reader *r, const char *key, const char *format) {
    if (stated(r->steps, key))
        gb_report(r->base->diags, r->base->file, r->steps->at.line, format, r->name, key);
}

static void check_solid(const steps_reader *r) {
    static const char *const OTHERS[] = {"slab",   "bed",  "least_bed", "most_bed",
                                         "course", "face", "evened",    "footing"};
    for (size_t i = 0; i < sizeof OTHERS / sizeof OTHERS[0]; i++)
        refuse(
            r, OTHERS[i],
            NF_("run '%s': '%s' says nothing about a run of solid stone; take it out"));
    if (isnan(r->steps->stone.m))
        report(r, NF_("run '%s' is of solid stone; add its height: stone = \"7 in\""));
    if (!(r->steps->overlap.m > 0))
        report(r,
               NF_("run '%s' is of solid stone; add what the next one bears on it, 1 to "
                   "4 in: overlap = \"2 in\""));
}

static void check_courses(const steps_reader *r) {
    const gb_steps *s = r->steps;
    if (isnan(s->course.m))
        return;
    if (isnan(s->slab.m))
        report(r,
               NF_("run '%s' has courses of block and no slab on them; add how thick it "
                   "is: slab = \"2 in\""));
    if (stated(s, "bed"))
        report(r, NF_("run '%s' states 'course' and 'bed'; whole courses decide the bed, "
                      "take one out"));
    double riser = s->count > 0 ? s->rise.m / (double)s->count : s->most_riser.m;
    if (gb_over(s->course.m, riser))
        report_two(
            r,
            NF_("run '%s': a course of %s is higher than a riser of %s; take lower "
                "block, or leave 'course' out"),
            s->course.m, riser);
}

static void check_build(const steps_reader *r) {
    if (r->steps->build == GB_SOLID_STEPS) {
        check_solid(r);
        return;
    }
    refuse(r, "stone",
           NF_("run '%s': '%s' says nothing about a run of slabs; take it out"));
    if (r->steps->build == GB_ON_PLATFORMS)
        refuse(r, "overlap",
               NF_("run '%s': '%s' says nothing about a run on platforms; take it out"));
    check_courses(r);
}

/* ---- the layout -------------------------------------------------------------------- */

static const double LOWEST_RISER_M = 0.0508; /* 2 in and 12 in: nobody climbs these */
static const double HIGHEST_RISER_M = 0.3048;

static void check_layout(const steps_reader *r) {
    const gb_steps *s = r->steps;
    gb_layout l;
    gb_beds beds;
    double riser = s->rise.m / (double)s->count;
    if (gb_lay_steps(s, s->count, s->evened, s->rise, &l) != GB_OK)
        report(r, NF_("run '%s' has no face over zero: pitch and stones alone climb more "
                      "than the rise; fewer risers, or less pitch"));
    else if (riser < LOWEST_RISER_M || riser > HIGHEST_RISER_M)
        report_two(r,
                   NF_("run '%s': its risers come to %s for a rise of %s; check rise and "
                       "count"),
                   riser, s->rise.m);
    else if (s->overlap.m >= l.going.m)
        report_two(r,
                   NF_("run '%s' overlaps %s on a tread of %s; 1 to 4 in is usual, check "
                       "both"),
                   s->overlap.m, l.going.m);
    else if (gb_check_beds(s, &l, &beds) != GB_OK)
        report_two(r,
                   NF_("run '%s': a slab of %s leaves no room for block and bed in faces "
                       "of %s; check slab, bed, course and footing"),
                   s->slab.m, l.face.m);
}

void gb_check_steps(const gb_reader *reader, const char *name, gb_system units,
                    const gb_steps *steps) {
    const steps_reader r = {reader, name, units, steps};
    if (steps->at.faulty)
        return;
    size_t before = gb_diags_count(reader->diags);
    check_count(&r);
    check_treads(&r);
    check_top(&r);
    check_bounds(&r);
    check_build(&r);
    if (gb_diags_count(reader->diags) == before && steps->count > 0)
        check_layout(&r);
}

/* ---- a piece that is a run --------------------------------------------------------- */

static void refuse_own(const steps_reader *r, const gb_piece *p, const char *key,
                       bool own) {
    if (own)
        gb_report(r->base->diags, r->base->file, p->at.line,
                  "piece '%s' is a run, which decides its '%s'; take one of them out",
                  p->name, key);
}

static void place_too(const gb_reader *r, const void *from, void *to, size_t size) {
    if (r->places != NULL)
        gb_places_copy(r->places, from, to, size);
}

/* The thickness stands with the stone of the piece. */
static void take_thickness(const steps_reader *r, const gb_piece *p, gb_length *own) {
    const gb_length *stone = &p->stone.thickness;
    if (p->stone.at.line == 0 || isnan(stone->m))
        return;
    if (!isnan(own->m) && !(fabs(own->m - stone->m) < 1e-9))
        report_two(r,
                   NF_("run '%s' is %s thick and its stone %s; state one of them alone"),
                   own->m, stone->m);
    if (!isnan(own->m))
        return;
    *own = *stone;
    place_too(r->base, stone, own, sizeof *own);
}

/* One plain depth of a bed layer is the run's own. */
static void take_bed(const steps_reader *r, const gb_piece *p, gb_steps *s) {
    if (!isnan(s->bed.m) || !isnan(s->course.m))
        return;
    for (size_t i = 0; i < p->layer_count; i++) {
        const gb_layer *l = &p->layers[i];
        if (l->kind != GB_BED || l->depth_count != 1 || l->at.faulty)
            continue;
        s->bed.m = l->depths_m[0];
        place_too(r->base, &l->depths_m[0], &s->bed, sizeof s->bed);
        return;
    }
}

/* Block is level and the tread is pitched, so a bed of one plain depth grows to its back;
   a fall of its own, 0 too, says otherwise. */
static void take_fall(const steps_reader *r, gb_piece *p) {
    gb_slope *pitch = &p->run.pitch;
    for (size_t i = 0; i < p->layer_count && pitch->of_run > 0; i++) {
        /* The layers are the reader's own until the job is handed out. */
        gb_layer *l = (gb_layer *)&p->layers[i];
        if (l->kind != GB_BED || l->depth_count != 1 || !isnan(l->fall.of_run) ||
            l->at.faulty)
            continue;
        l->fall = *pitch;
        place_too(r->base, pitch, &l->fall, sizeof l->fall);
    }
}

static void size_piece(const gb_reader *r, gb_piece *p) {
    gb_steps *s = &p->run;
    gb_layout l;
    if (gb_lay_steps(s, s->count, s->evened, s->rise, &l) != GB_OK)
        return; /* told already */
    p->count = l.treads;
    p->overhang_front = s->overhang;
    place_too(r, &s->overhang, &p->overhang_front, sizeof s->overhang);
    p->shape.front = s->width;
    p->shape.width = l.depth;
}

void gb_take_run(const gb_reader *reader, gb_system units, gb_piece *piece) {
    gb_steps *s = &piece->run;
    if (s->at.line == 0 || s->at.faulty)
        return;
    const steps_reader r = {reader, piece->name, units, s};
    refuse_own(&r, piece, "size", !isnan(piece->size[0].m));
    refuse_own(&r, piece, "shape", piece->shape.at.line != 0);
    refuse_own(&r, piece, "overhang", piece->overhang_front.m > 0);
    refuse_own(&r, piece, "count", piece->count != 1);
    if (piece->kind != GB_TREAD)
        report(&r, NF_("piece '%s' is a run; its kind is \"tread\""));
    if (s->count == 0)
        report(&r, NF_("run '%s' has no 'count'; `gaugebox steps` lists what fits, then "
                       "add: count = 7"));
    if (isnan(s->width.m))
        report(&r, NF_("run '%s' has no 'width'; add: width = \"5 ft\""));
    take_thickness(&r, piece, s->build == GB_SOLID_STEPS ? &s->stone : &s->slab);
    if (s->build != GB_SOLID_STEPS)
        take_bed(&r, piece, s);
    take_fall(&r, piece);
    gb_check_steps(reader, piece->name, units, s);
    if (s->count > 0 && !isnan(s->width.m))
        size_piece(reader, piece);
}

void gb_lay_run_again(const gb_reader *reader, gb_system units, gb_piece *piece) {
    gb_steps steps = piece->run;
    steps.at.line = 0; /* the line of the file is not where a fault lies */
    size_t before = gb_diags_count(reader->diags);
    gb_check_steps(reader, piece->name, units, &steps);
    if (gb_diags_count(reader->diags) == before)
        size_piece(reader, piece);
}
