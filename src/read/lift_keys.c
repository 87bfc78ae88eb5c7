#include "read/schemas.h"

#define MASS_KEY(word, member, needed, low, what)                                        \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = GB_MASS,                    \
        .required = (needed), .least = (low), .most = "100000 lb",                       \
        .offset = offsetof(gb_lift, member), .help = (what)                              \
    }
#define SHARE_KEY(word, member, what)                                                    \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .fallback = "0%", \
        .most = "90%", .offset = offsetof(gb_lift, member), .help = (what)               \
    }

static const gb_key LIFT_KEYS[] = {
    MASS_KEY("capacity", capacity, true, "20 lb",
             N_("by the maker's load table, at the reach that is used")),
    {.name = "reach",
     .kind = GB_KEY_QUANTITY,
     .quantity = GB_LENGTH,
     .least = "1 ft",
     .most = "200 ft",
     .offset = offsetof(gb_lift, reach),
     .help = N_("that the capacity was read at")},
    MASS_KEY("attachment", attachment, true, NULL,
             N_("own weight of clamp, grab, slings: all that hangs below the hook")),
    MASS_KEY("rated", rated, false, "20 lb",
             N_("what clamp, grab or slings are marked for themselves")),
    {.name = "margin",
     .kind = GB_KEY_NUMBER,
     .fallback = "1.25",
     .least = "1",
     .most = "10",
     .offset = offsetof(gb_lift, margin),
     .help = N_("of what may be lifted over what is; a house rule, common practice")},
    SHARE_KEY("wet", wet, N_("taken off for wet stone, by the maker's sheet")),
    SHARE_KEY("rough", rough, N_("taken off for rough faces, by the maker's sheet")),
    SHARE_KEY("tilted", tilted,
              N_("taken off for stone that hangs tilted, by the maker's sheet")),
};
const gb_schema GB_LIFT_SCHEMA =
    GB_SCHEMA("lift", LIFT_KEYS, gb_lift, offsetof(gb_lift, at));
