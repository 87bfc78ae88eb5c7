/* Shapes in plan: net area for what is filled, the blank a stone is cut from, perimeter.
 */
#ifndef GAUGEBOX_SHAPE_H
#define GAUGEBOX_SHAPE_H

#include "gaugebox/origin.h"
#include "gaugebox/quantity.h"

typedef enum gb_shape_kind {
    GB_RECTANGLE, /* front x width */
    GB_TRAPEZOID, /* front and back, width between them, ends alike */
    GB_TRIANGLE,  /* three sides, the front first */
    GB_CIRCLE,    /* diameter; its whole edge is the front */
    GB_CURVED,    /* a sector of a ring; the outer arc is the front */
    GB_WINDER,    /* narrow and wide end, width from one to the other along its middle */
    GB_POLYGON,   /* corners in order; the first side is the front */
    GB_SHAPE_KINDS
} gb_shape_kind;

typedef struct gb_point {
    double x, y; /* m */
} gb_point;

/* Corners in order, one way round or the other; the last one joins the first. */
typedef struct gb_outline {
    const gb_point *points;
    size_t count;
} gb_outline;

/* An arc by its three measures and its angle, in radians. */
typedef struct gb_arc {
    gb_length radius, chord, rise;
    double angle;
} gb_arc;

/* Which sizes a kind uses stands beside it above; the others are ignored. */
typedef struct gb_shape {
    gb_shape_kind kind;
    gb_length front, back, width;
    gb_length narrow, wide;
    const double *sides_m; /* three */
    size_t side_count;
    gb_length diameter;
    gb_arc arc; /* curved: the outer one */
    gb_outline outline;
    const gb_outline *holes;
    size_t hole_count;
    gb_origin at; /* line 0: a plain size, or none */
} gb_shape;

typedef struct gb_plan_size {
    gb_area net;         /* holes taken off */
    gb_area bedded;      /* net, without the overhang */
    gb_length perimeter; /* outer edge alone */
    gb_length front;     /* along the nosing: the front side, or the arc */
    gb_length blank_length, blank_width; /* the rectangle along the front around it */
    gb_length behind_front; /* mean distance of the bedded area from its front edge; along
                               the radius for circles and curved shapes */
} gb_plan_size;

/* What an outline can have wrong; *at of gb_check_outlines is the corner, from 0, at
   which the first fault shows. */
typedef enum gb_outline_fault {
    GB_OUTLINE_GOOD,
    GB_OUTLINE_SHORT,   /* fewer than three corners */
    GB_OUTLINE_TWICE,   /* two corners in one place */
    GB_OUTLINE_CROSSES, /* it crosses or touches itself */
    GB_OUTLINE_FLAT,    /* it encloses no area */
    GB_HOLE_OUTSIDE,    /* a hole does not lie within the outline */
    GB_HOLES_MEET       /* two holes cross, touch, or lie in one another */
} gb_outline_fault;

/* Looks at the outline of a polygon and at its holes. *which is the outline it speaks of:
   0 the outer one, from 1 on the holes. */
gb_outline_fault gb_check_outlines(const gb_shape *shape, size_t *which, size_t *at);

/* From chord c and rise h: R = (c^2/4 + h^2) / (2 h), angle = 2 atan2(c/2, R - h); a rise
   over half the chord is more than half a circle. From radius R and chord c, the smaller
   of the two arcs: h = R - sqrt(R^2 - c^2/4). From radius and rise:
   c = 2 sqrt(h (2 R - h)). GB_NOT_POSITIVE when a measure is not over
   zero, GB_IMPOSSIBLE when a chord is longer than its circle is wide, or a rise is not
   under it. */
gb_status gb_arc_of_rise(gb_length chord, gb_length rise, gb_arc *arc) GB_MUST_USE;
gb_status gb_arc_of_radius(gb_length radius, gb_length chord, gb_arc *arc) GB_MUST_USE;
gb_status gb_arc_of_radius_and_rise(gb_length radius, gb_length rise,
                                    gb_arc *arc) GB_MUST_USE;

/* Sizes of a shape in plan, with so much overhang at the front and at each end: the ends
   of a polygon are the sides next to its front. Areas of polygons by the trapezoid
   (shoelace) formula; overhang is cut off along a line beside the front, for circles and
   curved shapes it shortens the radius, and they have none at the ends.
   GB_NOT_POSITIVE: a size that is not over zero, sides that close no triangle, a width
   not under the radius, an overhang that leaves nothing. An outline must have been
   checked. */
gb_status gb_measure_shape(const gb_shape *shape, gb_length overhang_front,
                           gb_length overhang_side, gb_plan_size *size) GB_MUST_USE;

/* The going of a winder at so much from its narrow end. */
gb_length gb_winder_going(const gb_shape *winder, gb_length from_narrow_end);

/* True for a shape that has a size. */
bool gb_has_shape(const gb_shape *shape);

#endif
