#include "read/schemas.h"

static const char *const BEDDINGS[] = {"face shell", "full", NULL};
static const char *const CORE_COURSES[] = {"all", "top", NULL};
static const char *const READINGS[] = {"heights", "staff", NULL};
const char *const GB_FORM_WORDS[] = {"prism", "wedge", "stepped", "stair", "pier", NULL};
_Static_assert(sizeof GB_FORM_WORDS / sizeof GB_FORM_WORDS[0] == GB_FORM_KINDS + 1,
               "a word for every kind of form");

#define LENGTH_KEY(word, type, member, low, high, usual, what)                           \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = GB_LENGTH, .least = (low),  \
        .most = (high), .fallback = (usual), .offset = offsetof(type, member),           \
        .help = (what)                                                                   \
    }
#define LENGTHS_KEY(word, type, list, count, high, what)                                 \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITIES, .quantity = GB_LENGTH,                \
        .most = (high), .offset = offsetof(type, list),                                  \
        .count_offset = offsetof(type, count), .help = (what)                            \
    }
#define WHOLE_KEY(word, type, member, low, high, usual, what)                            \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_WHOLE, .least = (low), .most = (high),            \
        .fallback = (usual), .offset = offsetof(type, member), .help = (what)            \
    }

static const gb_key WALL_KEYS[] = {
    LENGTH_KEY("length", gb_wall, length, "1 in", "10000 ft", NULL,
               N_("of the wall of one piece, outside")),
    LENGTH_KEY("height", gb_wall, height, "1 in", "200 ft", NULL,
               N_("of the wall, or its courses")),
    WHOLE_KEY("courses", gb_wall, courses, "0", "1000", "0",
              N_("of the wall, instead of its height; 0: by the height")),
    WHOLE_KEY("corners", gb_wall, corners, "0", "1000", "0",
              N_("that the length counts twice: a block's width is taken off for each")),
    WHOLE_KEY("ends", gb_wall, ends, "0", "1000", "2",
              N_("free ends, each with a half block in every other course")),
    {.name = "openings",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_AREA,
     .fallback = "0 ft2",
     .most = "1000000 ft2",
     .offset = offsetof(gb_wall, openings),
     .help = N_("taken off; cut block beside them is yours to add as spare")},
    {.name = "face",
     .kind = GB_KEY_SIZE,
     .quantity = GB_LENGTH,
     .fallback = "16 in x 8 in",
     .least = "1 in",
     .most = "8 ft",
     .offset = offsetof(gb_wall, nominal),
     .help =
         N_("of one block with its joints, length x height; 450 mm x 225 mm for 440 x "
            "215 with 10 mm")},
    LENGTH_KEY("joint", gb_wall, joint, "1/16 in", "2 in", "3/8 in", N_("between block")),
    LENGTH_KEY("width", gb_wall, width, "1 in", "24 in", "7-5/8 in",
               N_("of the block itself, without a joint")),
    LENGTH_KEY("shell", gb_wall, shell, "1/2 in", "6 in", "1-1/4 in",
               N_("of one face shell, when those alone are bedded")),
    {.name = "bedding",
     .kind = GB_KEY_CHOICE,
     .choices = BEDDINGS,
     .fallback = "face shell",
     .offset = offsetof(gb_wall, bedding),
     .help = N_("mortar by the joints, on the shells or on all of the block; or a rate")},
    {.name = "rate",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_MORTAR_RATE,
     .least = "0.1 ft3/100 ft2",
     .most = "100 ft3/100 ft2",
     .offset = offsetof(gb_wall, rate),
     .help = N_("mortar by face: 8.5 ft3/100 ft2 for block of 8 in high, 13.5 of 4 in, "
                "both with 10 % of waste in them (NAVEDTRA 14045)")},
    {.name = "rate_waste",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_SHARE,
     .fallback = "0%",
     .most = "100%",
     .offset = offsetof(gb_wall, rate_waste),
     .help = N_("that the rate holds; it is taken out, and the job's own waste counts")},
    {.name = "spare",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_SHARE,
     .fallback = "0%",
     .most = "100%",
     .offset = offsetof(gb_wall, spare),
     .help = N_("block to order beyond those laid")},
};
const gb_schema GB_WALL_SCHEMA =
    GB_SCHEMA("block", WALL_KEYS, gb_wall, offsetof(gb_wall, at));

static const gb_key CORES_KEYS[] = {
    WHOLE_KEY("blocks", gb_cores, blocks, "0", "1000000", "0",
              N_("of one piece, to be filled; 0: those of its block layer")),
    LENGTH_KEY("width", gb_cores, width, "1 in", "24 in", "8 in",
               N_("nominal, of those blocks")),
    WHOLE_KEY("every", gb_cores, every, "1", "100", "1",
              N_("nth cell is filled; 1 for each")),
    {.name = "courses",
     .kind = GB_KEY_CHOICE,
     .choices = CORE_COURSES,
     .fallback = "all",
     .offset = offsetof(gb_cores, courses),
     .help = N_("of the block layer that are filled")},
    {.name = "each",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_VOLUME,
     .least = "1 fl oz",
     .most = "10 ft3",
     .offset = offsetof(gb_cores, each),
     .help = N_("grout for all cells of one block; without it what is usual for 6, 8 or "
                "12 in")},
};
const gb_schema GB_CORES_SCHEMA =
    GB_SCHEMA("cores", CORES_KEYS, gb_cores, offsetof(gb_cores, at));

static const gb_key FORM_KEYS[] = {
    {.name = "kind",
     .kind = GB_KEY_CHOICE,
     .choices = GB_FORM_WORDS,
     .fallback = "prism",
     .offset = offsetof(gb_form, kind),
     .help = N_("a prism is the size by a depth; the others have sizes of their own")},
    LENGTH_KEY("front", gb_form, front, "1/4 in", "30 ft", NULL,
               N_("wedge: depth in front")),
    LENGTH_KEY("back", gb_form, back, "1/4 in", "30 ft", NULL, N_("wedge: depth behind")),
    LENGTHS_KEY("lengths", gb_form, lengths_m, length_count, "1000 ft",
                N_("stepped: of each step")),
    LENGTHS_KEY("depths", gb_form, depths_m, depth_count, "30 ft",
                N_("stepped: of each step")),
    LENGTH_KEY("width", gb_form, width, "1 in", "500 ft", NULL, N_("stepped, stair")),
    WHOLE_KEY("risers", gb_form, risers, "0", "200", "0", N_("stair: how many")),
    LENGTH_KEY("rise", gb_form, rise, "1 in", "24 in", NULL, N_("stair: of one riser")),
    LENGTH_KEY("going", gb_form, going, "1 in", "10 ft", NULL,
               N_("stair: of one tread, riser to riser")),
    LENGTH_KEY("top", gb_form, top, "1 in", "500 ft", NULL,
               N_("stair: of its top, behind the last riser")),
    LENGTH_KEY("slab", gb_form, slab, NULL, "10 ft", "0 in",
               N_("stair: of the slab below all of it; 0 in without")),
    LENGTH_KEY("diameter", gb_form, diameter, "1 in", "50 ft", NULL, N_("pier: round")),
    LENGTH_KEY("side", gb_form, side, "1 in", "50 ft", NULL, N_("pier: square")),
    LENGTH_KEY("height", gb_form, height, "1 in", "100 ft", NULL, N_("pier")),
};
const gb_schema GB_FORM_SCHEMA =
    GB_SCHEMA("form", FORM_KEYS, gb_form, offsetof(gb_form, at));

static const gb_key LEVELS_KEYS[] = {
    {.name = "readings",
     .kind = GB_KEY_CHOICE,
     .choices = READINGS,
     .fallback = "heights",
     .offset = offsetof(gb_levels, readings),
     .help = N_("heights go up from a mark, a staff reads down from the level")},
    LENGTHS_KEY("block", gb_levels, block_m, block_count, "1000 ft",
                N_("top of the block below each tread, the lowest tread first")),
    LENGTHS_KEY("finished", gb_levels, finished_m, finished_count, "1000 ft",
                N_("top of each tread when it is set")),
    LENGTHS_KEY("stone", gb_levels, stone_m, stone_count, "5 ft",
                N_("thickness of each stone as measured, or of all")),
    LENGTH_KEY("error", gb_levels, error, NULL, "2 in", "1/16 in",
               N_("of one reading, one standard deviation; common practice")),
    LENGTH_KEY("least", gb_levels, least, NULL, "12 in", "1/2 in",
               N_("a bed below is flagged; common practice")),
    LENGTH_KEY("most", gb_levels, most, "1/4 in", "24 in", "2 in",
               N_("a bed above is flagged; common practice")),
};
const gb_schema GB_LEVELS_SCHEMA =
    GB_SCHEMA("levels", LEVELS_KEYS, gb_levels, offsetof(gb_levels, at));
