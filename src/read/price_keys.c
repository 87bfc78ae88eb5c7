#include "read/schemas.h"

static const gb_key PACK_KEYS[] = {
    {.name = "of", .kind = GB_KEY_REF, .required = true, .offset = offsetof(gb_pack, what),
     .help = "a material of the mix table, or a bagged mix"},
    {.name = "mass", .kind = GB_KEY_QUANTITY, .quantity = GB_MASS, .least = "1 lb",
     .most = "100000 lb", .offset = offsetof(gb_pack, mass),
     .help = "in one pack; sand by mass counts as it lies, with its moisture"},
    {.name = "volume", .kind = GB_KEY_QUANTITY, .quantity = GB_VOLUME, .least = "1 qt",
     .most = "100 yd3", .offset = offsetof(gb_pack, volume),
     .help = "in one pack, instead of mass, for what is sold loose"},
    {.name = "price", .kind = GB_KEY_REF, .required = true,
     .offset = offsetof(gb_pack, price_text), .help = "of one pack, as \"14.50\""},
    {.name = "supplier", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_pack, supplier), .help = "who sells it"},
    {.name = "untaxed", .kind = GB_KEY_FLAG, .offset = offsetof(gb_pack, untaxed),
     .help = "true when no tax is due on it"},
};
static const gb_schema PACK = GB_SCHEMA("pack", PACK_KEYS, gb_pack, offsetof(gb_pack, line));

static const gb_key DELIVERY_KEYS[] = {
    {.name = "supplier", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_delivery, supplier), .help = "who delivers"},
    {.name = "charge", .kind = GB_KEY_REF, .required = true,
     .offset = offsetof(gb_delivery, charge_text),
     .help = "once, when anything is bought there"},
};
static const gb_schema DELIVERY =
    GB_SCHEMA("delivery", DELIVERY_KEYS, gb_delivery, GB_NO_LINE);

static const gb_key PRICE_KEYS[] = {
    GB_FORMAT_KEY(gb_price_file),
    {.name = "currency", .kind = GB_KEY_TEXT, .required = true,
     .offset = offsetof(gb_price_file, book.currency), .help = "as USD or EUR"},
    {.name = "decimals", .kind = GB_KEY_WHOLE, .fallback = "2", .least = "0", .most = "3",
     .offset = offsetof(gb_price_file, decimals), .help = "of the currency"},
    {.name = "tax", .kind = GB_KEY_QUANTITY, .quantity = GB_SHARE, .fallback = "0%",
     .most = "50%", .offset = offsetof(gb_price_file, book.tax), .help = "on taxed goods"},
    {.name = "packs", .kind = GB_KEY_GROUPS, .child = &PACK, .required = true,
     .offset = offsetof(gb_price_file, book.packs),
     .count_offset = offsetof(gb_price_file, book.pack_count), .help = "what is sold"},
    {.name = "deliveries", .kind = GB_KEY_GROUPS, .child = &DELIVERY,
     .offset = offsetof(gb_price_file, book.deliveries),
     .count_offset = offsetof(gb_price_file, book.delivery_count),
     .help = "what delivery costs"},
};
const gb_schema GB_PRICE_SCHEMA =
    GB_SCHEMA("price book", PRICE_KEYS, gb_price_file, GB_NO_LINE);
