#include "read/schemas.h"

static const char *const BUILDS[] = {"platforms", "treads", "solid", NULL};
_Static_assert(sizeof BUILDS / sizeof BUILDS[0] == GB_STEPS_BUILDS + 1,
               "a word for every build");
static const char *const TOPS[] = {"nosing", "sill", NULL};
static const char *const UPPERS[] = {"landing", "tread", NULL};

#define LENGTH_KEY(word, member, low, high, usual, what)                                 \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = GB_LENGTH, .least = (low),  \
        .most = (high), .fallback = (usual), .offset = offsetof(gb_steps, member),       \
        .help = (what)                                                                   \
    }
#define CHOICE_KEY(word, member, list, usual, what)                                      \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_CHOICE, .choices = (list), .fallback = (usual),   \
        .offset = offsetof(gb_steps, member), .help = (what)                             \
    }

static const gb_key STEPS_KEYS[] = {
    {.name = "rise",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_LENGTH,
     .required = true,
     .least = "4 in",
     .most = "100 ft",
     .offset = offsetof(gb_steps, rise),
     .help = N_("from the finished foot up to what 'top' says")},
    CHOICE_KEY("top", top, TOPS, "nosing",
               N_("what the rise ends at: the top nosing, or a sill behind it")),
    LENGTH_KEY("sill", sill, NULL, "8 in", "0 in",
               N_("how far the sill stands above the back of what lies before it")),
    CHOICE_KEY(
        "upper", upper, UPPERS, "landing",
        N_("behind the top nosing: a landing, a piece of its own, or the last tread "
           "of the run")),
    LENGTH_KEY("landing", landing, "6 in", "100 ft", NULL,
               N_("front to back, of an upper landing")),
    {.name = "count",
     .kind = GB_KEY_WHOLE,
     .fallback = "0",
     .least = "0",
     .most = "200",
     .offset = offsetof(gb_steps, count),
     .help = N_("risers, from the foot to the top nosing; 0: not chosen yet")},
    LENGTH_KEY("tread", going, "6 in", "10 ft", NULL,
               N_("its going, from nosing to nosing; or 'length'")),
    LENGTH_KEY("length", length, "6 in", "500 ft", NULL,
               N_("of all treads together, as the ground leaves it; instead of 'tread'")),
    {.name = "pitch",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_SLOPE,
     .fallback = "0%",
     .most = "1:48",
     .offset = offsetof(gb_steps, pitch),
     .help = N_("of the treads, down to the front; 1/8in/ft to 1/4in/ft sheds water")},
    {.name = "evened",
     .kind = GB_KEY_FLAG,
     .offset = offsetof(gb_steps, evened),
     .help = N_("the first face higher by what the pitch adds to the others, so that all "
                "risers are alike")},
    LENGTH_KEY("face", face, "1 in", "2 ft", NULL,
               N_("of each step, as it is cut already; without it the rise decides")),
    LENGTH_KEY("width", width, "6 in", "100 ft", NULL, N_("along the nosing")),
    CHOICE_KEY("build", build, BUILDS, "platforms",
               N_("slabs on stepped block, slabs whose riser block stands on the tread "
                  "below, or solid stone set dry")),
    LENGTH_KEY("slab", slab, "1/2 in", "12 in", NULL, N_("thickness of the slabs")),
    LENGTH_KEY(
        "bed", bed, "1/4 in", "4 in", NULL,
        N_("depth of the bed in front; without it and without 'course' it is 1-1/4 in")),
    LENGTH_KEY("least_bed", least_bed, "1/8 in", "4 in", "1/2 in",
               N_("the thinnest bed in front; common practice")),
    LENGTH_KEY("most_bed", most_bed, "1/4 in", "8 in", "2 in",
               N_("the thickest bed; beyond it the block is built up; common practice")),
    LENGTH_KEY("course", course, "1 in", "24 in", NULL,
               N_("of block with its joint; whole courses then decide the bed")),
    LENGTH_KEY("footing", footing, NULL, "20 ft", "0 in",
               N_("top of the footing below the finished foot")),
    LENGTH_KEY("base", base, NULL, "20 ft", "0 in",
               N_("depth of gravel or concrete below the footing's top, or below the "
                  "first solid stone")),
    LENGTH_KEY("stone", stone, "2 in", "24 in", NULL, N_("height of solid steps")),
    LENGTH_KEY(
        "overlap", overlap, NULL, "24 in", "0 in",
        N_("that the next stone, or a riser block, bears on the tread below; 1 to 4 "
           "in under solid steps")),
    LENGTH_KEY("overhang", overhang, NULL, "3 in", "0 in", N_("of the nosing")),
    LENGTH_KEY("least_riser", least_riser, "2 in", "12 in", "4 in",
               N_("lowest riser that is looked at, while no count is stated")),
    LENGTH_KEY("most_riser", most_riser, "2 in", "12 in", "8 in",
               N_("highest riser that is looked at")),
    LENGTH_KEY(
        "band_least", band_least, "12 in", "48 in", "22 in",
        N_("two risers and a tread, at least; 22 to 30 in for steps outside, 24 to 27 in "
           "is usual indoors")),
    LENGTH_KEY("band_most", band_most, "12 in", "48 in", "30 in",
               N_("the same two risers and tread, at most")),
    LENGTH_KEY(
        "bench", bench, NULL, "100 ft", "0 in",
        N_("a benchmark above the finished foot, from which the story pole counts")),
    LENGTH_KEY("laser", laser, NULL, "100 ft", NULL,
               N_("the beam above the benchmark, for readings of a staff")),
};
const gb_schema GB_STEPS_SCHEMA =
    GB_SCHEMA("run", STEPS_KEYS, gb_steps, offsetof(gb_steps, at));
