#include "read/schemas.h"

const char *const GB_LAYER_WORDS[] = {"bed", "slurry", "joint", "slab", "core", "volume",
                                      NULL};
_Static_assert(sizeof GB_LAYER_WORDS / sizeof GB_LAYER_WORDS[0] == GB_LAYER_KINDS + 1,
               "a word for every kind of layer");

static const char *const UNITS[] = {"us", "metric", NULL};
static const char *const MIXERS[] = {"paddle", "drum", "barrow", NULL};
static const char *const SAND_STATES[] = {"nearly dry", "damp", "wet", NULL};
static const char *const PIECES[] = {"tread", "landing", "riser", "footing", "other", NULL};
static const char *const FACES[] = {"back", "bed", "both", NULL};
static const char *const BACKS[] = {"smooth", "scored", NULL};

static const gb_key SITE_KEYS[] = {
    {.name = "name", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_site, name), .help = "what the job is called"},
    {.name = "place", .kind = GB_KEY_TEXT, .offset = offsetof(gb_site, place),
     .help = "where it is, for whoever calls for help"},
    {.name = "emergency", .kind = GB_KEY_TEXT, .offset = offsetof(gb_site, emergency),
     .help = "whom to call"},
    {.name = "rinse_water", .kind = GB_KEY_TEXT, .offset = offsetof(gb_site, rinse),
     .help = "where the water for eyes and skin is"},
};
static const gb_schema SITE = GB_SCHEMA("site", SITE_KEYS, gb_site, GB_NO_LINE);

static const gb_key MIXER_KEYS[] = {
    {.name = "kind", .kind = GB_KEY_CHOICE, .choices = MIXERS, .fallback = "paddle",
     .offset = offsetof(gb_mixer, kind), .help = "paddle, tilting drum, or hand in a barrow"},
    {.name = "usable", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME, .required = true,
     .least = "2 qt", .most = "500 ft3", .offset = offsetof(gb_mixer, usable),
     .help = "wet mix it holds, not the drum's own size (a drum mixes about 55 to 60 % "
             "of it)"},
    {.name = "most", .kind = GB_KEY_QUANTITY, .quantity = GB_MASS, .least = "5 lb",
     .most = "20000 lb", .offset = offsetof(gb_mixer, most),
     .help = "mass limit, water included, from its plate"},
};
static const gb_schema MIXER = GB_SCHEMA("mixer", MIXER_KEYS, gb_mixer, GB_NO_LINE);

static const gb_key CREW_KEYS[] = {
    {.name = "mixer", .kind = GB_KEY_GROUP, .child = &MIXER, .required = true,
     .offset = offsetof(gb_crew, mixer), .help = "the mixer"},
    {.name = "pace", .kind = GB_KEY_PACE, .offset = offsetof(gb_crew, pace),
     .help = "how fast the crew places a bed; without it no batch is held to its life"},
    {.name = "start", .kind = GB_KEY_CLOCK, .offset = offsetof(gb_crew, start),
     .help = "start of the day"},
    {.name = "bucket", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME,
     .fallback = "1/2 ft3", .least = "1 qt", .most = "2 ft3",
     .offset = offsetof(gb_crew, bucket), .help = "level bucket to its marked line"},
};
static const gb_schema CREW =
    GB_SCHEMA("crew", CREW_KEYS, gb_crew, offsetof(gb_crew, line));

static const gb_key SAND_KEYS[] = {
    {.name = "state", .kind = GB_KEY_CHOICE, .choices = SAND_STATES, .fallback = "damp",
     .offset = offsetof(gb_sand_pile, state), .help = "how the pile feels (2, 5 or 8 %)"},
    {.name = "moisture", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .least = "0%",
     .most = "15%", .offset = offsetof(gb_sand_pile, moisture),
     .help = "measured, by mass of dry sand; goes before state"},
};
static const gb_schema SAND = GB_SCHEMA("sand", SAND_KEYS, gb_sand_pile, GB_NO_LINE);

static const gb_key WEATHER_KEYS[] = {
    {.name = "air", .kind = GB_KEY_QUANTITY, .quantity = GB_TEMP, .required = true,
     .least = "-40 F", .most = "130 F", .offset = offsetof(gb_weather, air),
     .help = "air temperature while working"},
    {.name = "low", .kind = GB_KEY_QUANTITY, .quantity = GB_TEMP, .least = "-40 F",
     .most = "130 F", .offset = offsetof(gb_weather, low),
     .help = "lowest air temperature in the next 72 h"},
    {.name = "wind", .kind = GB_KEY_QUANTITY, .quantity = GB_SPEED, .most = "100 mph",
     .offset = offsetof(gb_weather, wind), .help = "wind at the work"},
    {.name = "humidity", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .most = "100%",
     .offset = offsetof(gb_weather, humidity), .help = "relative humidity"},
    {.name = "stone", .kind = GB_KEY_QUANTITY, .quantity = GB_TEMP, .least = "-40 F",
     .most = "180 F", .offset = offsetof(gb_weather, stone), .help = "of the stone itself"},
    {.name = "block", .kind = GB_KEY_QUANTITY, .quantity = GB_TEMP, .least = "-40 F",
     .most = "180 F", .offset = offsetof(gb_weather, block),
     .help = "of the block or slab below the bed"},
    {.name = "rain", .kind = GB_KEY_FLAG, .offset = offsetof(gb_weather, rain),
     .help = "rain now or due before the day's work is covered"},
};
static const gb_schema WEATHER =
    GB_SCHEMA("weather", WEATHER_KEYS, gb_weather, offsetof(gb_weather, line));

static const gb_key WASTE_KEYS[] = {
    {.name = "of", .kind = GB_KEY_REF, .required = true, .offset = offsetof(gb_waste, of),
     .help = "a mix (applied to its need) or a material (applied when it is bought)"},
    {.name = "share", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .required = true,
     .least = "0%", .most = "100%", .offset = offsetof(gb_waste, share),
     .help = "extra on top of the net need"},
};
static const gb_schema WASTE = GB_SCHEMA("waste", WASTE_KEYS, gb_waste, GB_NO_LINE);

static const gb_key LABEL_KEYS[] = {
    {.name = "mix", .kind = GB_KEY_REF, .required = true,
     .offset = offsetof(gb_own_label, mix), .help = "the mix that the label is of"},
    {.name = "bag", .kind = GB_KEY_QUANTITY, .quantity = GB_MASS, .required = true,
     .least = "1 lb", .most = "4000 lb", .offset = offsetof(gb_own_label, label.bag),
     .help = "mass of the bag; of a site mix, its bag of cement"},
    {.name = "yield", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME, .required = true,
     .least = "1 qt", .most = "100 ft3", .offset = offsetof(gb_own_label, label.yield),
     .help = "wet mix from one bag"},
    {.name = "least", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME, .least = "1 fl oz",
     .most = "200 gal", .offset = offsetof(gb_own_label, least),
     .help = "least water per bag; bagged blends only"},
    {.name = "usual", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME, .least = "1 fl oz",
     .most = "200 gal", .offset = offsetof(gb_own_label, usual),
     .help = "usual water per bag; bagged blends only"},
    {.name = "never_past", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME,
     .least = "1 fl oz", .most = "200 gal", .offset = offsetof(gb_own_label, most),
     .help = "most water per bag; bagged blends only"},
    {.name = "measured", .kind = GB_KEY_FLAG, .offset = offsetof(gb_own_label, measured),
     .help = "true when measured on site, not printed on a bag"},
};
static const gb_schema LABEL =
    GB_SCHEMA("label", LABEL_KEYS, gb_own_label, offsetof(gb_own_label, label.line));

static const gb_key PACK_KEYS[] = {
    {.name = "material", .kind = GB_KEY_REF, .required = true,
     .offset = offsetof(gb_own_pack, material), .help = "a material of the mix table"},
    {.name = "pack", .kind = GB_KEY_QUANTITY, .quantity = GB_MASS, .required = true,
     .least = "1 lb", .most = "4000 lb", .offset = offsetof(gb_own_pack, pack),
     .help = "the bag it comes in here"},
};
static const gb_schema PACK = GB_SCHEMA("pack", PACK_KEYS, gb_own_pack, GB_NO_LINE);

static const gb_key LAYER_KEYS[] = {
    {.name = "kind", .kind = GB_KEY_CHOICE, .choices = GB_LAYER_WORDS, .required = true,
     .offset = offsetof(gb_layer, kind), .help = "the space that the mix fills"},
    {.name = "mix", .kind = GB_KEY_REF, .required = true, .offset = offsetof(gb_layer, mix),
     .help = "family/name of the mix table"},
    {.name = "depth", .kind = GB_KEY_QUANTITIES, .quantity = GB_LENGTH, .least = "1/64 in",
     .most = "10 ft", .offset = offsetof(gb_layer, depths_m),
     .count_offset = offsetof(gb_layer, depth_count),
     .help = "finished depth, one or as measured in several places; a slurry without it "
             "takes 1/16 in on a smooth back, 1/8 in on a scored one"},
    {.name = "faces", .kind = GB_KEY_CHOICE, .choices = FACES, .fallback = "back",
     .offset = offsetof(gb_layer, faces), .help = "slurry: on the stone's back, the bed, "
                                                  "or both"},
    {.name = "back", .kind = GB_KEY_CHOICE, .choices = BACKS, .fallback = "smooth",
     .offset = offsetof(gb_layer, back), .help = "slurry: how the stone's back is"},
    {.name = "joint_length", .kind = GB_KEY_QUANTITY, .quantity = GB_LENGTH,
     .least = "1 in", .most = "1000 ft", .offset = offsetof(gb_layer, joint_length),
     .help = "joint: in all, for one piece"},
    {.name = "joint_width", .kind = GB_KEY_QUANTITY, .quantity = GB_LENGTH,
     .least = "1/16 in", .most = "4 in", .offset = offsetof(gb_layer, joint_width),
     .help = "joint: across"},
    {.name = "volume", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME, .least = "1 fl oz",
     .most = "10000 ft3", .offset = offsetof(gb_layer, volume),
     .help = "core and volume: for one piece"},
};
static const gb_schema LAYER =
    GB_SCHEMA("layer", LAYER_KEYS, gb_layer, offsetof(gb_layer, line));

static const gb_key PIECE_KEYS[] = {
    {.name = "name", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_piece, name), .help = "as on the sheet: treads, landing"},
    {.name = "kind", .kind = GB_KEY_CHOICE, .choices = PIECES, .required = true,
     .offset = offsetof(gb_piece, kind), .help = "what is built"},
    {.name = "count", .kind = GB_KEY_WHOLE, .fallback = "1", .least = "1",
     .most = "10000", .offset = offsetof(gb_piece, count), .help = "how many alike"},
    {.name = "size", .kind = GB_KEY_SIZE, .quantity = GB_LENGTH, .least = "1 in",
     .most = "500 ft", .offset = offsetof(gb_piece, length),
     .help = "along the nosing x front to back, of one"},
    {.name = "overhang", .kind = GB_KEY_QUANTITY, .quantity = GB_LENGTH, .fallback = "0 in",
     .most = "12 in", .offset = offsetof(gb_piece, overhang_front),
     .help = "at the front; overhang is not bedded"},
    {.name = "overhang_side", .kind = GB_KEY_QUANTITY, .quantity = GB_LENGTH,
     .fallback = "0 in", .most = "12 in", .offset = offsetof(gb_piece, overhang_side),
     .help = "at each end"},
    {.name = "layers", .kind = GB_KEY_GROUPS, .child = &LAYER, .required = true,
     .offset = offsetof(gb_piece, layers), .count_offset = offsetof(gb_piece, layer_count),
     .help = "what is filled with which mix"},
};
static const gb_schema PIECE =
    GB_SCHEMA("piece", PIECE_KEYS, gb_piece, offsetof(gb_piece, line));

static const gb_key JOB_KEYS[] = {
    GB_FORMAT_KEY(gb_job_file),
    {.name = "units", .kind = GB_KEY_CHOICE, .choices = UNITS, .fallback = "us",
     .offset = offsetof(gb_job_file, job.units), .help = "units of the sheets"},
    {.name = "site", .kind = GB_KEY_GROUP, .child = &SITE, .required = true,
     .offset = offsetof(gb_job_file, job.site), .help = "the place"},
    {.name = "crew", .kind = GB_KEY_GROUP, .child = &CREW, .required = true,
     .offset = offsetof(gb_job_file, job.crew), .help = "mixer, pace, day"},
    {.name = "sand", .kind = GB_KEY_GROUP, .child = &SAND,
     .offset = offsetof(gb_job_file, job.sand), .help = "the sand as it lies"},
    {.name = "weather", .kind = GB_KEY_GROUP, .child = &WEATHER,
     .offset = offsetof(gb_job_file, job.weather), .help = "as stated for the day"},
    {.name = "waste", .kind = GB_KEY_GROUPS, .child = &WASTE,
     .offset = offsetof(gb_job_file, job.wastes),
     .count_offset = offsetof(gb_job_file, job.waste_count), .help = "extra, per mix or "
                                                                    "material"},
    {.name = "labels", .kind = GB_KEY_GROUPS, .child = &LABEL,
     .offset = offsetof(gb_job_file, job.labels),
     .count_offset = offsetof(gb_job_file, job.label_count),
     .help = "your bags' labels, or yields measured on site"},
    {.name = "packs", .kind = GB_KEY_GROUPS, .child = &PACK,
     .offset = offsetof(gb_job_file, job.packs),
     .count_offset = offsetof(gb_job_file, job.pack_count),
     .help = "bags that differ from the mix table's"},
    {.name = "pieces", .kind = GB_KEY_GROUPS, .child = &PIECE, .required = true,
     .offset = offsetof(gb_job_file, job.pieces),
     .count_offset = offsetof(gb_job_file, job.piece_count), .help = "what is built"},
};
const gb_schema GB_JOB_SCHEMA = GB_SCHEMA("job", JOB_KEYS, gb_job_file, GB_NO_LINE);
