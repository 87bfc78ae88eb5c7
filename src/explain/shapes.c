#include "explain/chains.h"

#include <math.h>
#include <string.h>

/* ---- the sizes that a shape states ------------------------------------------------- */

#define AROUND N_("the rectangle along the front around all corners")
#define CUT    N_("the strips of the overhang, cut off along lines beside the edges")

const gb_why *gb_why_length(gb_explainer *x, const gb_piece *p) {
    if (p->run.at.line != 0)
        return gb_why_run_width(x, p);
    return gb_stated(x, "length", p->name, GB_LENGTH, &p->shape.front.m, NULL);
}

const gb_why *gb_why_width(gb_explainer *x, const gb_piece *p) {
    if (p->run.at.line != 0)
        return gb_why_run_depth(x, p);
    return gb_stated(x, "width", p->name, GB_LENGTH, &p->shape.width.m, NULL);
}

static const gb_why *size(gb_explainer *x, const gb_piece *p, const char *name,
                          const gb_length *at) {
    return gb_stated(x, name, p->name, GB_LENGTH, &at->m, NULL);
}

static const gb_why *front_of(gb_explainer *x, const gb_piece *p) {
    if (p->shape.kind == GB_WINDER)
        return size(x, p, "narrow", &p->shape.narrow);
    if (p->run.at.line != 0)
        return GB_WHY(x, "front_side", GB_LENGTH, p->shape.front.m, "length",
                      GB_INPUTS(gb_why_length(x, p)), .of = p->name);
    return size(x, p, "front_side", &p->shape.front);
}

static const gb_why *back_of(gb_explainer *x, const gb_piece *p) {
    if (p->shape.kind == GB_WINDER)
        return size(x, p, "wide", &p->shape.wide);
    return size(x, p, "back", &p->shape.back);
}

static const gb_why *diameter(gb_explainer *x, const gb_piece *p) {
    return size(x, p, "diameter", &p->shape.diameter);
}

static const gb_why *overhang(gb_explainer *x, const gb_piece *p) {
    return size(x, p, "overhang_front", &p->overhang_front);
}

static gb_plan_size sizes_of(const gb_piece *p) {
    gb_plan_size s;
    memset(&s, 0, sizeof s);
    (void)!gb_piece_size(p, &s); /* a plan has only pieces that can be measured */
    return s;
}

/* ---- arcs -------------------------------------------------------------------------- */

/* Two of the three were read; the one that was not has no place. */
static bool was_read(const gb_explainer *x, const gb_length *at) {
    const gb_place *place = gb_places_find(x->places, at);
    return place != NULL && place->line > 0;
}

static const gb_why *chord(gb_explainer *x, const gb_piece *p) {
    const gb_arc *a = &p->shape.arc;
    if (was_read(x, &a->chord))
        return size(x, p, "chord", &a->chord);
    return GB_WHY(
        x, "chord", GB_LENGTH, a->chord.m, "2 * sqrt(rise * (2 * radius - rise))",
        GB_INPUTS(size(x, p, "rise", &a->rise), size(x, p, "radius", &a->radius)),
        .of = p->name);
}

static const gb_why *radius(gb_explainer *x, const gb_piece *p) {
    const gb_arc *a = &p->shape.arc;
    if (was_read(x, &a->radius))
        return size(x, p, "radius", &a->radius);
    return GB_WHY(x, "radius", GB_LENGTH, a->radius.m,
                  "(chord * chord / 4 + rise * rise) / (2 * rise)",
                  GB_INPUTS(size(x, p, "chord", &a->chord), size(x, p, "rise", &a->rise)),
                  .of = p->name);
}

static const gb_why *rise(gb_explainer *x, const gb_piece *p) {
    const gb_arc *a = &p->shape.arc;
    if (was_read(x, &a->rise))
        return size(x, p, "rise", &a->rise);
    return GB_WHY(
        x, "rise", GB_LENGTH, a->rise.m,
        "radius - sqrt(radius * radius - chord * chord / 4)",
        GB_INPUTS(size(x, p, "radius", &a->radius), size(x, p, "chord", &a->chord)),
        .of = p->name);
}

static const gb_why *angle(gb_explainer *x, const gb_piece *p) {
    return GB_WHY(x, "angle", GB_PLAIN, p->shape.arc.angle,
                  "2 * angle_of(chord / 2, radius - rise)",
                  GB_INPUTS(chord(x, p), radius(x, p), rise(x, p)), .of = p->name,
                  .source = N_("in radians"));
}

static const gb_why *inner(gb_explainer *x, const gb_piece *p) {
    return GB_WHY(x, "inner", GB_LENGTH, p->shape.arc.radius.m - p->shape.width.m,
                  "radius - width", GB_INPUTS(radius(x, p), gb_why_width(x, p)),
                  .of = p->name);
}

/* ---- corners ----------------------------------------------------------------------- */

/* All corners of an outline, along and across in turn, under one formula. */
static const gb_why *of_corners(gb_explainer *x, const gb_piece *p, const gb_outline *o,
                                const char *name, int unit, double value,
                                const char *formula) {
    const gb_why **all = gb_arena_take(x->arena, 2 * o->count, sizeof(const gb_why *));
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < o->count; i++) {
        all[2 * i] = gb_stated(x, "along", p->name, GB_LENGTH, &o->points[i].x, NULL);
        all[2 * i + 1] =
            gb_stated(x, "across", p->name, GB_LENGTH, &o->points[i].y, NULL);
    }
    return GB_WHY(x, name, unit, value, formula, .inputs = all,
                  .input_count = 2 * o->count, .of = p->name);
}

static const gb_why *area_within(gb_explainer *x, const gb_piece *p, const gb_outline *o,
                                 const char *name) {
    const gb_shape alone = {.kind = GB_POLYGON, .outline = *o};
    gb_plan_size s;
    if (gb_measure_shape(&alone, (gb_length){0}, (gb_length){0}, &s) != GB_OK)
        return NULL;
    return of_corners(x, p, o, name, GB_AREA, s.net.m2, "area_of_corners()");
}

static const gb_why *area_of_polygon(gb_explainer *x, const gb_piece *p, double m2) {
    const gb_shape *s = &p->shape;
    const gb_why *outer = area_within(x, p, &s->outline, "outline");
    const gb_why **holes =
        gb_arena_take(x->arena, s->hole_count + 1, sizeof(const gb_why *));
    double sum = 0;
    if (outer == NULL || holes == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < s->hole_count; i++) {
        holes[i] = area_within(x, p, &s->holes[i], "hole");
        sum += holes[i] == NULL ? 0 : holes[i]->value;
    }
    if (s->hole_count == 0)
        return GB_WHY(x, "area", GB_AREA, m2, "outline", GB_INPUTS(outer), .of = p->name);
    const gb_why *all = GB_WHY(x, "holes", GB_AREA, sum, "sum()", .inputs = holes,
                               .input_count = s->hole_count);
    return GB_WHY(x, "area", GB_AREA, m2, "outline - holes", GB_INPUTS(outer, all),
                  .of = p->name);
}

/* ---- areas ------------------------------------------------------------------------- */

static const gb_why *side(gb_explainer *x, const gb_piece *p, size_t i) {
    static const char *const NAMES[] = {"side_a", "side_b", "side_c"};
    return gb_stated(x, NAMES[i], p->name, GB_LENGTH, &p->shape.sides_m[i], NULL);
}

/* Heron's formula. */
static const gb_why *area_of_triangle(gb_explainer *x, const gb_piece *p, double m2) {
    const double *d = p->shape.sides_m;
    const gb_why *half =
        GB_WHY(x, "half", GB_LENGTH, (d[0] + d[1] + d[2]) / 2.0,
               "(side_a + side_b + side_c) / 2",
               GB_INPUTS(side(x, p, 0), side(x, p, 1), side(x, p, 2)), .of = p->name);
    return GB_WHY(x, "area", GB_AREA, m2,
                  "sqrt(half * (half - side_a) * (half - side_b) * (half - side_c))",
                  GB_INPUTS(half, side(x, p, 0), side(x, p, 1), side(x, p, 2)),
                  .of = p->name);
}

const gb_why *gb_why_area(gb_explainer *x, const gb_piece *p) {
    double m2 = sizes_of(p).net.m2;
    switch (p->shape.kind) {
    case GB_TRAPEZOID:
        return GB_WHY(x, "area", GB_AREA, m2, "(front_side + back) / 2 * width",
                      GB_INPUTS(front_of(x, p), back_of(x, p), gb_why_width(x, p)),
                      .of = p->name);
    case GB_WINDER:
        return GB_WHY(x, "area", GB_AREA, m2, "(narrow + wide) / 2 * width",
                      GB_INPUTS(front_of(x, p), back_of(x, p), gb_why_width(x, p)),
                      .of = p->name);
    case GB_TRIANGLE:
        return area_of_triangle(x, p, m2);
    case GB_CIRCLE:
        return GB_WHY(x, "area", GB_AREA, m2,
                      "3.14159265358979 / 4 * diameter * diameter",
                      GB_INPUTS(diameter(x, p)), .of = p->name);
    case GB_CURVED:
        return GB_WHY(x, "area", GB_AREA, m2,
                      "angle / 2 * (radius * radius - inner * inner)",
                      GB_INPUTS(angle(x, p), radius(x, p), inner(x, p)), .of = p->name);
    case GB_POLYGON:
        return area_of_polygon(x, p, m2);
    default:
        return GB_WHY(x, "area", GB_AREA, m2, "length * width",
                      GB_INPUTS(gb_why_length(x, p), gb_why_width(x, p)), .of = p->name);
    }
}

static const gb_why *bedded_rectangle(gb_explainer *x, const gb_piece *p, double m2) {
    if (p->overhang_front.m <= 0 && p->overhang_side.m <= 0)
        return GB_WHY(x, "bedded", GB_AREA, m2, "length * width",
                      GB_INPUTS(gb_why_length(x, p), gb_why_width(x, p)), .of = p->name);
    return GB_WHY(x, "bedded", GB_AREA, m2,
                  "(length - 2 * overhang_side) * (width - overhang_front)",
                  GB_INPUTS(gb_why_length(x, p),
                            size(x, p, "overhang_side", &p->overhang_side),
                            gb_why_width(x, p), overhang(x, p)),
                  .of = p->name);
}

const gb_why *gb_why_bedded(gb_explainer *x, const gb_piece *p) {
    double m2 = gb_bedded_area(p).m2;
    if (p->shape.kind == GB_RECTANGLE)
        return bedded_rectangle(x, p, m2);
    if (p->overhang_front.m <= 0 && p->overhang_side.m <= 0)
        return GB_WHY(x, "bedded", GB_AREA, m2, "area", GB_INPUTS(gb_why_area(x, p)),
                      .of = p->name);
    if (p->shape.kind == GB_CIRCLE)
        return GB_WHY(
            x, "bedded", GB_AREA, m2,
            "3.14159265358979 * (diameter / 2 - overhang_front) * (diameter / 2 "
            "- overhang_front)",
            GB_INPUTS(diameter(x, p), overhang(x, p)), .of = p->name);
    if (p->shape.kind == GB_CURVED)
        return GB_WHY(x, "bedded", GB_AREA, m2,
                      "angle / 2 * ((radius - overhang_front) * (radius - "
                      "overhang_front) - inner * inner)",
                      GB_INPUTS(angle(x, p), radius(x, p), overhang(x, p), inner(x, p)),
                      .of = p->name);
    const gb_why *area = gb_why_area(x, p);
    if (area == NULL)
        return NULL;
    const gb_why *strips = gb_fact(x, "strips", GB_AREA, area->value - m2, CUT);
    return GB_WHY(x, "bedded", GB_AREA, m2, "area - strips", GB_INPUTS(area, strips),
                  .of = p->name);
}

/* ---- edges ------------------------------------------------------------------------- */

static const gb_why *leaning_end(gb_explainer *x, const gb_piece *p, const char *name,
                                 double m) {
    bool winder = p->shape.kind == GB_WINDER;
    return GB_WHY(
        x, name, GB_LENGTH, m,
        winder ? "sqrt(width * width + (wide - narrow) * (wide - narrow) / 4)"
               : "sqrt(width * width + (front_side - back) * (front_side - back) "
                 "/ 4)",
        GB_INPUTS(gb_why_width(x, p), front_of(x, p), back_of(x, p)), .of = p->name);
}

static double end_length(const gb_shape *s) {
    bool winder = s->kind == GB_WINDER;
    double lean = (winder ? s->wide.m - s->narrow.m : s->front.m - s->back.m) / 2.0;
    return sqrt(s->width.m * s->width.m + lean * lean);
}

const gb_why *gb_why_front(gb_explainer *x, const gb_piece *p) {
    double m = sizes_of(p).front.m;
    switch (p->shape.kind) {
    case GB_TRIANGLE:
        return side(x, p, 0);
    case GB_CIRCLE:
        return GB_WHY(x, "front", GB_LENGTH, m, "3.14159265358979 * diameter",
                      GB_INPUTS(diameter(x, p)), .of = p->name);
    case GB_CURVED:
        return GB_WHY(x, "front", GB_LENGTH, m, "angle * radius",
                      GB_INPUTS(angle(x, p), radius(x, p)), .of = p->name);
    case GB_WINDER:
        return leaning_end(x, p, "front", m);
    case GB_POLYGON: {
        const gb_outline first = {p->shape.outline.points, 2};
        return of_corners(x, p, &first, "front", GB_LENGTH, m, "length_of_corners()");
    }
    default:
        return front_of(x, p);
    }
}

static const gb_why *perimeter_of_ends(gb_explainer *x, const gb_piece *p, double m) {
    bool winder = p->shape.kind == GB_WINDER;
    return GB_WHY(x, "perimeter", GB_LENGTH, m,
                  winder ? "narrow + wide + 2 * end" : "front_side + back + 2 * end",
                  GB_INPUTS(front_of(x, p), back_of(x, p),
                            leaning_end(x, p, "end", end_length(&p->shape))),
                  .of = p->name);
}

const gb_why *gb_why_perimeter(gb_explainer *x, const gb_piece *p) {
    double m = sizes_of(p).perimeter.m;
    switch (p->shape.kind) {
    case GB_TRAPEZOID:
    case GB_WINDER:
        return perimeter_of_ends(x, p, m);
    case GB_TRIANGLE:
        return GB_WHY(x, "perimeter", GB_LENGTH, m, "sum()",
                      GB_INPUTS(side(x, p, 0), side(x, p, 1), side(x, p, 2)),
                      .of = p->name);
    case GB_CIRCLE:
        return gb_why_front(x, p);
    case GB_CURVED:
        return GB_WHY(
            x, "perimeter", GB_LENGTH, m, "angle * (radius + inner) + 2 * width",
            GB_INPUTS(angle(x, p), radius(x, p), inner(x, p), gb_why_width(x, p)),
            .of = p->name);
    case GB_POLYGON:
        return of_corners(x, p, &p->shape.outline, "perimeter", GB_LENGTH, m,
                          "length_around_corners()");
    default:
        return GB_WHY(x, "perimeter", GB_LENGTH, m, "2 * (length + width)",
                      GB_INPUTS(gb_why_length(x, p), gb_why_width(x, p)), .of = p->name);
    }
}

const gb_why *gb_why_blank_length(gb_explainer *x, const gb_piece *p) {
    if (p->shape.kind == GB_RECTANGLE)
        return gb_why_length(x, p);
    if (p->shape.kind == GB_CIRCLE)
        return diameter(x, p);
    return gb_fact(x, "blank_length", GB_LENGTH, sizes_of(p).blank_length.m, AROUND);
}

const gb_why *gb_why_blank_width(gb_explainer *x, const gb_piece *p) {
    if (p->shape.kind == GB_RECTANGLE)
        return gb_why_width(x, p);
    if (p->shape.kind == GB_CIRCLE)
        return diameter(x, p);
    return gb_fact(x, "blank_width", GB_LENGTH, sizes_of(p).blank_width.m, AROUND);
}
