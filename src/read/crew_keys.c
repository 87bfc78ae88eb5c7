#include "read/schemas.h"

static const char *const MIXERS[] = {"paddle", "drum", "barrow", NULL};
_Static_assert(sizeof MIXERS / sizeof MIXERS[0] == GB_MIXER_KINDS + 1,
               "a word for every kind of mixer");

static const gb_key MIXER_KEYS[] = {
    {.name = "name",
     .kind = GB_KEY_TEXT,
     .offset = offsetof(gb_mixer, name),
     .help = N_("what it is called; of several each has one")},
    {.name = "kind",
     .kind = GB_KEY_CHOICE,
     .choices = MIXERS,
     .fallback = "paddle",
     .offset = offsetof(gb_mixer, kind),
     .help = N_("paddle, tilting drum, or hand in a barrow")},
    {.name = "usable",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_VOLUME,
     .least = "2 qt",
     .most = "500 ft3",
     .offset = offsetof(gb_mixer, usable),
     .help = N_("wet mix it takes; goes before rated")},
    {.name = "rated",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_VOLUME,
     .least = "2 qt",
     .most = "1000 ft3",
     .offset = offsetof(gb_mixer, rated),
     .help = N_("the size it is sold by: of a paddle mixer its batch, of a drum or a "
                "barrow all that it holds")},
    {.name = "filled",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_SHARE,
     .least = "10%",
     .most = "100%",
     .offset = offsetof(gb_mixer, filled),
     .help = N_("the share of rated that it mixes well; without it 100 % of a paddle "
                "mixer, 55 % of a drum, 50 % of a barrow")},
    {.name = "most",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_MASS,
     .least = "5 lb",
     .most = "20000 lb",
     .offset = offsetof(gb_mixer, most),
     .help = N_("mass limit, water included, from its plate")},
    {.name = "fills",
     .kind = GB_KEY_CHOICES,
     .choices = GB_LAYER_WORDS,
     .offset = offsetof(gb_mixer, fills),
     .help = N_("the kinds of layers that it is kept for; without it, any")},
};
static const gb_schema MIXER =
    GB_SCHEMA("mixer", MIXER_KEYS, gb_mixer, offsetof(gb_mixer, at));

static const gb_key PACE_KEYS[] = {
    {.name = "of",
     .kind = GB_KEY_CHOICES,
     .choices = GB_LAYER_WORDS,
     .required = true,
     .offset = offsetof(gb_layer_pace, kinds),
     .help = N_("kinds of layers")},
    {.name = "pace",
     .kind = GB_KEY_PACE,
     .required = true,
     .offset = offsetof(gb_layer_pace, pace),
     .help =
         N_("how fast they are placed: an area or a volume an hour, beds and slurries "
            "also treads")},
};
static const gb_schema PACE =
    GB_SCHEMA("pace", PACE_KEYS, gb_layer_pace, offsetof(gb_layer_pace, at));

static const gb_key BREAK_KEYS[] = {
    {.name = "from",
     .kind = GB_KEY_CLOCK,
     .required = true,
     .offset = offsetof(gb_break, from),
     .help = N_("when it begins")},
    {.name = "to",
     .kind = GB_KEY_CLOCK,
     .required = true,
     .offset = offsetof(gb_break, to),
     .help = N_("when it ends")},
};
static const gb_schema BREAK =
    GB_SCHEMA("break", BREAK_KEYS, gb_break, offsetof(gb_break, at));

#define MINUTES(word, member, low, high, what)                                           \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = GB_DURATION,                \
        .least = (low), .most = (high), .offset = offsetof(gb_crew, member),             \
        .help = (what)                                                                   \
    }

static const gb_key CREW_KEYS[] = {
    {.name = "mixer",
     .kind = GB_KEY_GROUP,
     .child = &MIXER,
     .empty_when_absent = true,
     .offset = offsetof(gb_crew, mixer),
     .help = N_("the mixer, when there is one"),
     .example = "{ usable = \"3 ft3\"; }"},
    {.name = "mixers",
     .kind = GB_KEY_GROUPS,
     .child = &MIXER,
     .offset = offsetof(gb_crew, mixers),
     .count_offset = offsetof(gb_crew, mixer_count),
     .help = N_("instead of it, several: a mix goes into the one that is kept for its "
                "layers, else into that which makes the fewest batches"),
     .example = "( { name = \"small drum\"; kind = \"drum\"; rated = \"6 ft3\"; } )"},
    {.name = "pace",
     .kind = GB_KEY_PACE,
     .offset = offsetof(gb_crew, pace),
     .help =
         N_("how fast the crew places a bed; without it no batch is held to its life")},
    {.name = "paces",
     .kind = GB_KEY_GROUPS,
     .child = &PACE,
     .offset = offsetof(gb_crew, paces),
     .count_offset = offsetof(gb_crew, pace_count),
     .help = N_("paces of other kinds of layers, or of slurry by itself"),
     .example = "( { of = [ \"slab\" ]; pace = \"20 ft3/h\"; } )"},
    {.name = "start",
     .kind = GB_KEY_CLOCK,
     .offset = offsetof(gb_crew, start),
     .help = N_("start of the day")},
    {.name = "finish",
     .kind = GB_KEY_CLOCK,
     .offset = offsetof(gb_crew, finish),
     .help = N_("end of the day, cleaned up; without it 8 h after the start")},
    {.name = "breaks",
     .kind = GB_KEY_GROUPS,
     .child = &BREAK,
     .offset = offsetof(gb_crew, breaks),
     .count_offset = offsetof(gb_crew, break_count),
     .help = N_("when nobody works"),
     .example = "( { from = \"12:00\"; to = \"12:30\"; } )"},
    MINUTES("mixing", mixing, "1 min", "4 h",
            N_("to gauge, mix and turn out one batch; without it 10 min")),
    MINUTES("potting", potting, "1 min", "1 h",
            N_("to weigh and stir one pot of slurry; without it 3 min")),
    MINUTES("cleaning", cleaning, "1 min", "4 h",
            N_("to clean mixer and tools, at the end of the day and before another mix; "
               "without it 15 min")),
    MINUTES("carrying", carrying, "5 s", "2 h",
            N_("to carry one load of wet mix to the work and come back; without it no "
               "carrying is counted")),
    {.name = "load",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_MASS,
     .least = "5 lb",
     .most = "4000 lb",
     .offset = offsetof(gb_crew, load),
     .help = N_("what one carries at a time")},
    {.name = "hands",
     .kind = GB_KEY_WHOLE,
     .fallback = "1",
     .least = "1",
     .most = "100",
     .offset = offsetof(gb_crew, hands),
     .help = N_("how many set at the stated pace, beside the one who mixes")},
};
const gb_schema GB_CREW_SCHEMA =
    GB_SCHEMA("crew", CREW_KEYS, gb_crew, offsetof(gb_crew, at));

static const gb_key SITE_WATER_KEYS[] = {
    {.name = "cleaning",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_VOLUME,
     .least = "1 qt",
     .most = "1000 gal",
     .offset = offsetof(gb_site_water, cleaning),
     .help = N_("to clean mixer and tools once; without it 5 gal")},
    {.name = "rinsing",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_VOLUME,
     .least = "1 qt",
     .most = "1000 gal",
     .offset = offsetof(gb_site_water, rinsing),
     .help = N_("clean and running, for each who works, a day; without it 7 gal")},
    {.name = "curing",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_LENGTH,
     .least = "0.1 mm",
     .most = "4 in",
     .offset = offsetof(gb_site_water, curing),
     .help = N_("a day on concrete that is kept wet, as a depth; without it 4 mm")},
};
const gb_schema GB_SITE_WATER_SCHEMA =
    GB_SCHEMA("site_water", SITE_WATER_KEYS, gb_site_water, offsetof(gb_site_water, at));
