#include "read/schemas.h"

const char *const GB_SHAPE_WORDS[] = {"rectangle", "trapezoid", "triangle", "circle",
                                      "curved",    "winder",    "polygon",  NULL};
_Static_assert(sizeof GB_SHAPE_WORDS / sizeof GB_SHAPE_WORDS[0] == GB_SHAPE_KINDS + 1,
               "a word for every kind of shape");

#define SIZE_KEY(word, member, what)                                                     \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = GB_LENGTH, .least = "1 in", \
        .most = "500 ft", .offset = offsetof(gb_shape, member), .help = (what)           \
    }

static const gb_key SHAPE_KEYS[] = {
    {.name = "kind",
     .kind = GB_KEY_CHOICE,
     .choices = GB_SHAPE_WORDS,
     .required = true,
     .offset = offsetof(gb_shape, kind),
     .help = N_("of the piece in plan")},
    SIZE_KEY("front", front, N_("rectangle, trapezoid: along the nosing")),
    SIZE_KEY("back", back, N_("trapezoid: along the back")),
    SIZE_KEY("width", width,
             N_("front to back; of a winder from its narrow to its wide end")),
    {.name = "sides",
     .kind = GB_KEY_QUANTITIES,
     .quantity = GB_LENGTH,
     .least = "1 in",
     .most = "500 ft",
     .offset = offsetof(gb_shape, sides_m),
     .count_offset = offsetof(gb_shape, side_count),
     .help = N_("triangle: its three sides, the front first")},
    SIZE_KEY("diameter", diameter, N_("circle: from edge to edge")),
    SIZE_KEY("radius", arc.radius, N_("curved: of the outer arc, with chord or rise")),
    SIZE_KEY("chord", arc.chord, N_("curved: straight from end to end of the outer arc")),
    {.name = "rise",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_LENGTH,
     .least = "1/16 in",
     .most = "500 ft",
     .offset = offsetof(gb_shape, arc.rise),
     .help = N_("curved: from the middle of the chord to the arc")},
    {.name = "narrow",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_LENGTH,
     .most = "500 ft",
     .offset = offsetof(gb_shape, narrow),
     .help = N_("winder: across its narrow end; 0 in for a point")},
    SIZE_KEY("wide", wide, N_("winder: across its wide end")),
    {.name = "corners",
     .kind = GB_KEY_POINTS,
     .quantity = GB_LENGTH,
     .offset = offsetof(gb_shape, outline),
     .help = N_("polygon: its corners in order, along and across from one point; the "
                "front lies between the first two")},
    {.name = "holes",
     .kind = GB_KEY_OUTLINES,
     .quantity = GB_LENGTH,
     .offset = offsetof(gb_shape, holes),
     .count_offset = offsetof(gb_shape, hole_count),
     .help = N_("polygon: what is left out, each a list of corners")},
};
const gb_schema GB_SHAPE_SCHEMA =
    GB_SCHEMA("shape", SHAPE_KEYS, gb_shape, offsetof(gb_shape, at));
