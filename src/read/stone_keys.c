#include "read/schemas.h"

#define DENSITY_KEY(word, member, what)                                                  \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = GB_DENSITY,                 \
        .required = true, .least = "60 lb/ft3", .most = "250 lb/ft3",                    \
        .offset = offsetof(gb_stone, member), .help = (what)                             \
    }

static const gb_key STONE_KEYS[] = {
    {.name = "name",
     .kind = GB_KEY_TEXT,
     .required = true,
     .offset = offsetof(gb_stone, name),
     .help = N_("as jobs call it")},
    {.name = "title",
     .kind = GB_KEY_WORDS,
     .required = true,
     .offset = offsetof(gb_stone, title),
     .help = N_("as sheets call it")},
    DENSITY_KEY("typical", typical,
                N_("what such stone weighs; freight is counted by it")),
    DENSITY_KEY("most", most,
                N_("the most that it weighs; what is lifted is counted by it")),
    {.name = "source",
     .kind = GB_KEY_WORDS,
     .required = true,
     .offset = offsetof(gb_stone, source),
     .help = N_("standard, book, or common practice")},
};
static const gb_schema STONE =
    GB_SCHEMA("stone", STONE_KEYS, gb_stone, offsetof(gb_stone, at));

static const gb_key STONE_FILE_KEYS[] = {
    GB_FORMAT_KEY(gb_stone_file),
    {.name = "stones",
     .kind = GB_KEY_GROUPS,
     .child = &STONE,
     .required = true,
     .offset = offsetof(gb_stone_file, list),
     .count_offset = offsetof(gb_stone_file, count),
     .help = N_("the kinds of stone")},
};
const gb_schema GB_STONE_FILE_SCHEMA =
    GB_SCHEMA("stones file", STONE_FILE_KEYS, gb_stone_file, GB_NO_ORIGIN);

static const gb_key PIECE_STONE_KEYS[] = {
    {.name = "kind",
     .kind = GB_KEY_REF,
     .required = true,
     .offset = offsetof(gb_piece_stone, of),
     .help = N_("a stone of stones.cfg, such as granite")},
    {.name = "thickness",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_LENGTH,
     .required = true,
     .least = "1/4 in",
     .most = "4 ft",
     .offset = offsetof(gb_piece_stone, thickness),
     .help = N_("as delivered")},
    {.name = "margin",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_LENGTH,
     .fallback = "0 in",
     .most = "12 in",
     .offset = offsetof(gb_piece_stone, margin),
     .help = N_("that the blank is larger on each side, for dressing")},
    {.name = "spare",
     .kind = GB_KEY_WHOLE,
     .fallback = "0",
     .least = "0",
     .most = "1000",
     .offset = offsetof(gb_piece_stone, spare),
     .help = N_("stones to have in hand")},
    {.name = "breakage",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_SHARE,
     .fallback = "0%",
     .most = "100%",
     .offset = offsetof(gb_piece_stone, breakage),
     .help = N_("of the stones that are set, in whole stones")},
};
const gb_schema GB_PIECE_STONE_SCHEMA = GB_SCHEMA(
    "stone of a piece", PIECE_STONE_KEYS, gb_piece_stone, offsetof(gb_piece_stone, at));
