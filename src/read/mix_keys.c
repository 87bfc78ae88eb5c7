#include "read/schemas.h"

static const char *const KINDS[] = {"cement", "lime", "sand", "coarse", NULL};
static const char *const CONSISTENCIES[] = {"stiff", "plastic", "paste", "fluid", NULL};
static const char *const BASES[] = {"demand", "binder", "label", NULL};

static const gb_key MATERIAL_KEYS[] = {
    {.name = "name", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_material, name), .help = "as mixes call it"},
    {.name = "title", .kind = GB_KEY_WORDS, .required = true,
     .offset = offsetof(gb_material, title), .help = "as sheets call it"},
    {.name = "kind", .kind = GB_KEY_CHOICE, .choices = KINDS, .required = true,
     .offset = offsetof(gb_material, kind), .help = "its part in the yield"},
    {.name = "bulk", .kind = GB_KEY_QUANTITY, .quantity = GB_DENSITY, .required = true,
     .least = "10 lb/ft3", .most = "200 lb/ft3", .offset = offsetof(gb_material, bulk),
     .help = "of the loose volume it is gauged by; sand: dry mass in damp loose sand"},
    {.name = "dry_loose", .kind = GB_KEY_QUANTITY, .quantity = GB_DENSITY,
     .fallback = "1400 kg/m3", .least = "1000 kg/m3", .most = "2000 kg/m3",
     .offset = offsetof(gb_material, dry_loose), .help = "sand: loose and dry"},
    {.name = "gravity", .kind = GB_KEY_NUMBER, .required = true, .least = "1",
     .most = "5", .offset = offsetof(gb_material, gravity), .help = "specific gravity"},
    {.name = "pack", .kind = GB_KEY_QUANTITY, .quantity = GB_MASS, .least = "1 lb",
     .most = "4000 lb", .offset = offsetof(gb_material, pack),
     .help = "its usual bag; none for what comes loose"},
    {.name = "source", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_material, source), .help = "standard, book, or common practice"},
};
static const gb_schema MATERIAL =
    GB_SCHEMA("material", MATERIAL_KEYS, gb_material, offsetof(gb_material, line));

static const gb_key MATERIAL_FILE_KEYS[] = {
    GB_FORMAT_KEY(gb_material_file),
    {.name = "materials", .kind = GB_KEY_GROUPS, .child = &MATERIAL, .required = true,
     .offset = offsetof(gb_material_file, list),
     .count_offset = offsetof(gb_material_file, count), .help = "the materials"},
};
const gb_schema GB_MATERIAL_SCHEMA =
    GB_SCHEMA("materials file", MATERIAL_FILE_KEYS, gb_material_file, GB_NO_LINE);

static const gb_key PART_KEYS[] = {
    {.name = "material", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_part, material_name), .help = "a material of materials.cfg"},
    {.name = "volume", .kind = GB_KEY_NUMBER, .required = true, .least = "0.01",
     .most = "100", .offset = offsetof(gb_part, volume), .help = "loose volumes of it"},
};
static const gb_schema PART = GB_SCHEMA("part", PART_KEYS, gb_part, offsetof(gb_part, line));

static const gb_key WATER_KEYS[] = {
    {.name = "by", .kind = GB_KEY_CHOICE, .choices = BASES, .required = true,
     .offset = offsetof(gb_water, basis),
     .help = "demand: shares of the computed demand; binder: of the binder's mass; "
             "label: volumes per bag"},
    {.name = "least", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .least = "20%",
     .most = "200%", .offset = offsetof(gb_water, least), .help = "demand and binder"},
    {.name = "usual", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .least = "20%",
     .most = "200%", .offset = offsetof(gb_water, usual), .help = "demand and binder"},
    {.name = "never_past", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .least = "20%",
     .most = "200%", .offset = offsetof(gb_water, most), .help = "demand and binder"},
    {.name = "bag_least", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME,
     .least = "1 fl oz", .most = "200 gal", .offset = offsetof(gb_water, bag_least),
     .help = "label"},
    {.name = "bag_usual", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME,
     .least = "1 fl oz", .most = "200 gal", .offset = offsetof(gb_water, bag_usual),
     .help = "label"},
    {.name = "bag_never_past", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME,
     .least = "1 fl oz", .most = "200 gal", .offset = offsetof(gb_water, bag_most),
     .help = "label"},
    {.name = "first", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .fallback = "75%",
     .least = "10%", .most = "95%", .offset = offsetof(gb_water, first),
     .help = "first water, of the least water to add (common practice: three quarters)"},
};
static const gb_schema WATER = GB_SCHEMA("water", WATER_KEYS, gb_water, GB_NO_LINE);

static const gb_key LABEL_KEYS[] = {
    {.name = "bag", .kind = GB_KEY_QUANTITY, .quantity = GB_MASS, .required = true,
     .least = "1 lb", .most = "4000 lb", .offset = offsetof(gb_label, bag),
     .help = "mass of the bag"},
    {.name = "yield", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME, .required = true,
     .least = "1 qt", .most = "100 ft3", .offset = offsetof(gb_label, yield),
     .help = "wet mix from one bag"},
};
static const gb_schema LABEL =
    GB_SCHEMA("label", LABEL_KEYS, gb_label, offsetof(gb_label, line));

static const gb_key HOLD_KEYS[] = {
    {.name = "what", .kind = GB_KEY_WORDS, .required = true,
     .offset = offsetof(gb_hold, what), .help = "what has to wait"},
    {.name = "least", .kind = GB_KEY_QUANTITY, .quantity = GB_DURATION, .required = true,
     .least = "1 min", .most = "400 days", .offset = offsetof(gb_hold, least),
     .help = "not before"},
    {.name = "most", .kind = GB_KEY_QUANTITY, .quantity = GB_DURATION, .least = "1 min",
     .most = "400 days", .offset = offsetof(gb_hold, most), .help = "not after"},
};
static const gb_schema HOLD = GB_SCHEMA("hold", HOLD_KEYS, gb_hold, GB_NO_LINE);

#define LIFE(key, field, need, words)                                                    \
    {                                                                                    \
        .name = (key), .kind = GB_KEY_QUANTITY, .quantity = GB_DURATION,                 \
        .required = (need), .least = "1 min", .most = "12 h",                            \
        .offset = offsetof(gb_mix, field), .help = (words)                               \
    }

static const gb_key MIX_KEYS[] = {
    {.name = "name", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_mix, name), .help = "its id is the file's family/name"},
    {.name = "title", .kind = GB_KEY_WORDS, .required = true,
     .offset = offsetof(gb_mix, title), .help = "as sheets call it"},
    {.name = "uses", .kind = GB_KEY_CHOICES, .choices = GB_LAYER_WORDS, .required = true,
     .offset = offsetof(gb_mix, uses), .help = "layers that it may fill"},
    {.name = "purpose", .kind = GB_KEY_WORDS, .required = true,
     .offset = offsetof(gb_mix, purpose), .help = "what it is for"},
    {.name = "not_for", .kind = GB_KEY_WORDS, .offset = offsetof(gb_mix, not_for),
     .help = "what it is not for"},
    {.name = "source", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_mix, source), .help = "standard, book, or common practice"},
    {.name = "parts", .kind = GB_KEY_GROUPS, .child = &PART,
     .offset = offsetof(gb_mix, parts), .count_offset = offsetof(gb_mix, part_count),
     .help = "site mix: its ingredients, the binder that comes in bags first"},
    {.name = "label", .kind = GB_KEY_GROUP, .child = &LABEL,
     .offset = offsetof(gb_mix, label), .help = "bagged blend: what its bag says"},
    {.name = "consistency", .kind = GB_KEY_CHOICE, .choices = CONSISTENCIES,
     .required = true, .offset = offsetof(gb_mix, consistency), .help = "when fresh"},
    {.name = "water", .kind = GB_KEY_GROUP, .child = &WATER, .required = true,
     .offset = offsetof(gb_mix, water), .help = "least, usual, never past"},
    {.name = "air", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .fallback = "0%",
     .most = "25%", .offset = offsetof(gb_mix, air), .help = "air in the fresh mix"},
    LIFE("life", life, true, "working life; of a slurry, in the pot"),
    LIFE("life_hot", life_hot, true, "the same in the hot band"),
    LIFE("open", open, false, "slurry: open on the stone"),
    LIFE("mixing", mixing, true, "least time in the mixer"),
    {.name = "order", .kind = GB_KEY_WORDS_LIST, .required = true,
     .offset = offsetof(gb_mix, order), .count_offset = offsetof(gb_mix, order_count),
     .help = "charging order, a text for each step"},
    {.name = "check", .kind = GB_KEY_WORDS, .required = true,
     .offset = offsetof(gb_mix, check), .help = "consistency check in the helper's words"},
    {.name = "at_limit", .kind = GB_KEY_WORDS, .required = true,
     .offset = offsetof(gb_mix, at_limit), .help = "at never past and still dry"},
    {.name = "holds", .kind = GB_KEY_GROUPS, .child = &HOLD, .required = true,
     .offset = offsetof(gb_mix, holds), .count_offset = offsetof(gb_mix, hold_count),
     .help = "hold points"},
};
static const gb_schema MIX = GB_SCHEMA("mix", MIX_KEYS, gb_mix, offsetof(gb_mix, line));

static const gb_key MIX_FILE_KEYS[] = {
    GB_FORMAT_KEY(gb_mix_file),
    {.name = "mixes", .kind = GB_KEY_GROUPS, .child = &MIX, .required = true,
     .offset = offsetof(gb_mix_file, list), .count_offset = offsetof(gb_mix_file, count),
     .help = "the mixes of one family"},
};
const gb_schema GB_MIX_SCHEMA =
    GB_SCHEMA("mix file", MIX_FILE_KEYS, gb_mix_file, GB_NO_LINE);
