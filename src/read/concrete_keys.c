#include "read/schemas.h"

static const char *const TABLES[] = {"us", "metric", NULL};
static const char *const AIRS[] = {"trapped", "mild", "moderate", "severe", NULL};
_Static_assert(sizeof AIRS / sizeof AIRS[0] == GB_AIR_LEVELS + 1, "a word for each");
static const char *const ATTACKS[] = {"none",    "frost",        "frost thin",
                                      "sulfate", "sulfate thin", NULL};
_Static_assert(sizeof ATTACKS / sizeof ATTACKS[0] == GB_ATTACKS + 1, "a word for each");
static const char *const STONES[] = {"angular", "subangular", "some crushed", "rounded",
                                     NULL};
_Static_assert(sizeof STONES / sizeof STONES[0] == GB_SHAPES_OF_STONE + 1,
               "a word for each");
static const char *const PLACINGS[] = {"usual", "paved", "pumped", NULL};
_Static_assert(sizeof PLACINGS / sizeof PLACINGS[0] == GB_PLACINGS + 1,
               "a word for each");

static const char *const BUILTS[] = {
    "slab", "plain footing", "reinforced footing", "beam", "column", "mass", NULL};
_Static_assert(sizeof BUILTS / sizeof BUILTS[0] == GB_BUILTS + 1, "a word for each");

#define OF(type, word, member, of_kind, low, high, usual, what)                          \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_QUANTITY, .quantity = (of_kind), .least = (low),  \
        .most = (high), .fallback = (usual), .offset = offsetof(type, member),           \
        .help = (what)                                                                   \
    }
#define CHOICE(word, member, list, usual, what)                                          \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_CHOICE, .choices = (list), .fallback = (usual),   \
        .offset = offsetof(gb_concrete, member), .help = (what)                          \
    }
#define NUMBER(word, member, low, high, usual, what)                                     \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_NUMBER, .least = (low), .most = (high),           \
        .fallback = (usual), .offset = offsetof(gb_concrete, member), .help = (what)     \
    }
#define MATERIAL(word, member, usual, what)                                              \
    {                                                                                    \
        .name = (word), .kind = GB_KEY_TEXT, .fallback = (usual),                        \
        .offset = offsetof(gb_concrete, member), .help = (what)                          \
    }
#define TRIAL(word, member, of_kind, low, high, what)                                    \
    OF(gb_trial, word, member, of_kind, low, high, NULL, what)

static const gb_key TRIAL_KEYS[] = {
    TRIAL("water", water, GB_MASS, NULL, "20000 lb", N_("that was added")),
    TRIAL("cement", cement, GB_MASS, "0.1 lb", "20000 lb", N_("that went in")),
    TRIAL("stone", stone, GB_MASS, "0.1 lb", "40000 lb", N_("as it lay")),
    TRIAL("sand", sand, GB_MASS, "0.1 lb", "40000 lb", N_("as it lay")),
    TRIAL(
        "sand_moisture", sand_moisture, GB_SHARE, NULL, "20%",
        N_("of the trial's sand, all of it, of the dry mass; without it the concrete's")),
    TRIAL("stone_moisture", stone_moisture, GB_SHARE, NULL, "20%",
          N_("of the trial's stone, all of it, of the dry mass; without it the "
             "concrete's")),
    TRIAL("unit_mass", unit_mass, GB_DENSITY, "1 lb/ft3", "400 lb/ft3",
          N_("of the fresh concrete, measured (ASTM C138); or 'full', 'empty', "
             "'measure'")),
    TRIAL("full", full, GB_MASS, "0.1 lb", "2000 lb",
          N_("the measure, struck off full of concrete")),
    TRIAL("empty", empty, GB_MASS, NULL, "2000 lb", N_("the measure by itself")),
    TRIAL("measure", measure, GB_VOLUME, "1 qt", "10 ft3", N_("its volume")),
    TRIAL("slump", slump, GB_LENGTH, NULL, "12 in", N_("measured")),
    TRIAL("air", air, GB_SHARE, NULL, "25%", N_("by a meter")),
};
const gb_schema GB_TRIAL_SCHEMA =
    GB_SCHEMA("trial", TRIAL_KEYS, gb_trial, offsetof(gb_trial, at));

static const gb_key CONCRETE_KEYS[] = {
    OF(gb_concrete, "strength", strength, GB_PRESSURE, "100 psi", "30000 psi", NULL,
       N_("specified, at 28 days, of cylinders")),
    OF(gb_concrete, "average", average, GB_PRESSURE, "100 psi", "30000 psi", NULL,
       N_("what tests must come to on average; without it that follows from strength")),
    OF(gb_concrete, "deviation", deviation, GB_PRESSURE, "1 psi", "5000 psi", NULL,
       N_("one standard deviation of a plant's tests, with 'tests'; without them 1000 "
          "psi (7 MPa) and more are put on the strength")),
    {.name = "tests",
     .kind = GB_KEY_WHOLE,
     .fallback = "0",
     .least = "0",
     .most = "100000",
     .offset = offsetof(gb_concrete, tests),
     .help = N_("how many tests that deviation is of, 15 at least")},
    OF(gb_concrete, "slump", slump, GB_LENGTH, NULL, "12 in", "3 in",
       N_("1 to 2, 3 to 4, or 6 to 7 in (25 to 50, 75 to 100, 150 to 175 mm); 3 in is "
          "common practice for what is tamped by hand")),
    CHOICE("built", built, BUILTS, "slab",
           N_("what it is for: the sheet tells which slump is usual for that")),
    OF(gb_concrete, "largest", largest, GB_LENGTH, NULL, "12 in", "3/4 in",
       N_("nominal size of the stone: 3/8, 1/2, 3/4, 1, 1-1/2, 2, 3 or 6 in (9.5, 12.5, "
          "19, 25, 37.5, 50, 75 or 150 mm); 3/4 in is common practice")),
    CHOICE("air", air, AIRS, "trapped",
           N_("trapped: none is entrained; else entrained for frost so severe")),
    OF(gb_concrete, "air_content", air_content, GB_SHARE, NULL, "12%", NULL,
       N_("of all air; without it the table's")),
    CHOICE(
        "attack", attack, ATTACKS, "none",
        N_("what limits water to cement: wet frost; sea water or sulfate; thin: curbs, "
           "sills, less than 1 in (25 mm) over steel")),
    {.name = "resisting",
     .kind = GB_KEY_FLAG,
     .offset = offsetof(gb_concrete, resisting),
     .help = N_("true with a cement that resists sulfate, type II or V")},
    {.name = "exposure",
     .kind = GB_KEY_CHOICES,
     .choices = GB_EXPOSURE_WORDS,
     .offset = offsetof(gb_concrete, exposures),
     .help = N_("classes of codes that the concrete is held to: its strength, water to "
                "cement, air and cement stand beside what they ask for")},
    NUMBER("ratio", ratio, "0.2", "0.9", NULL,
           N_("water to cement that own trial batches gave for the strength; without it "
              "the table's")),
    OF(gb_concrete, "water", water, GB_DENSITY, "100 lb/yd3", "800 lb/yd3", NULL,
       N_("mixing water by own trial batches; without it the table's")),
    CHOICE("shape", shape, STONES, "angular",
           N_("of the stone; all others take less water than the table's")),
    CHOICE("placing", placing, PLACINGS, "usual",
           N_("paved: up to 10 % more stone; pumped: 10 % less")),
    MATERIAL("cement", cement_name, "portland-cement", N_("a material of the table")),
    MATERIAL("sand", sand_name, "concrete-sand", N_("a material of the table")),
    MATERIAL("stone", stone_name, "crushed-stone", N_("a material of the table")),
    NUMBER("cement_gravity", cement_gravity, "2", "4", NULL,
           N_("specific; without it the material's")),
    NUMBER("sand_gravity", sand_gravity, "1.5", "4", NULL,
           N_("bulk, oven-dry; without it the material's")),
    NUMBER("stone_gravity", stone_gravity, "1.5", "4", NULL,
           N_("bulk, oven-dry; without it the material's")),
    OF(gb_concrete, "sand_absorption", sand_absorption, GB_SHARE, NULL, "10%", "1%",
       N_("of its dry mass; 1 % is common practice, the yard's report has it")),
    OF(gb_concrete, "stone_absorption", stone_absorption, GB_SHARE, NULL, "10%", "0.5%",
       N_("of its dry mass; 0.5 % is common practice, the yard's report has it")),
    NUMBER("fineness", fineness, "0", "10", "2.8",
           N_("fineness modulus of the sand, 2.40 to 3.00; 2.8 is common practice")),
    OF(gb_concrete, "rodded", rodded, GB_DENSITY, "20 lb/ft3", "250 lb/ft3", "100 lb/ft3",
       N_("stone dry and rodded (ASTM C29); 100 lb/ft3 is common practice, the yard's "
          "report has it")),
    OF(gb_concrete, "loose", loose, GB_DENSITY, "20 lb/ft3", "250 lb/ft3", NULL,
       N_("stone dry and loose, as buckets hold it; without it 0.93 of 'rodded', common "
          "practice")),
    OF(gb_concrete, "sand_moisture", sand_moisture, GB_SHARE, NULL, "10%", NULL,
       N_("all of it, of the dry mass, as it is delivered; without it damp, 5 %. In a "
          "job "
          "the pile's own moisture counts")),
    OF(gb_concrete, "stone_moisture", stone_moisture, GB_SHARE, NULL, "20%", NULL,
       N_("all of it, of the dry mass; without it saturated and surface-dry")),
    {.name = "air_dry",
     .kind = GB_KEY_FLAG,
     .offset = offsetof(gb_concrete, air_dry),
     .help = N_("true when a moisture below the absorption is meant so: that aggregate "
                "drinks water")},
    CHOICE("table", table, TABLES, "us",
           N_("which of the printed tables: they differ by up to 2 %")),
    {.name = "trial",
     .kind = GB_KEY_GROUP,
     .child = &GB_TRIAL_SCHEMA,
     .empty_when_absent = true,
     .offset = offsetof(gb_concrete, trial),
     .help = N_("a trial batch as it was mixed and measured: the next one follows from "
                "it")},
};
const gb_schema GB_CONCRETE_SCHEMA =
    GB_SCHEMA("concrete", CONCRETE_KEYS, gb_concrete, offsetof(gb_concrete, at));
