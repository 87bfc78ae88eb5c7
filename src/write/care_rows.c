#include "words/words.h"
#include "write/batch_rows.h"
#include "write/gauge_rows.h"
#include "write/weather_rows.h"

#include <math.h>

static gb_show show_of(gb_kind kind) {
    switch (kind) {
    case GB_TEMP:
        return GB_SHOW_TEMP;
    case GB_VOLUME:
        return GB_SHOW_VOLUME;
    case GB_MASS:
        return GB_SHOW_MASS;
    case GB_LENGTH:
        return GB_SHOW_LENGTH;
    case GB_SHARE:
        return GB_SHOW_SHARE;
    case GB_DURATION:
        return GB_SHOW_DURATION;
    case GB_SPEED:
        return GB_SHOW_SPEED;
    case GB_EVAPORATION:
        return GB_SHOW_EVAPORATION;
    case GB_PRESSURE:
        return GB_SHOW_PRESSURE;
    case GB_DENSITY:
        return GB_SHOW_DENSITY;
    default:
        return GB_SHOW_RATIO;
    }
}

/* The words for one stuff where they are other than for mortar: a slurry has no sand to
   heat and no mixer to cool, grout and concrete have bands of their own. */
static gb_row_code row_for(gb_stuff stuff, gb_caution_code code, gb_row_code otherwise) {
    static const struct {
        gb_stuff stuff;
        gb_caution_code code;
        gb_row_code row;
    } OTHERS[] = {
        {GB_AS_SLURRY, GB_C_COLD_40, GB_ROW_C_COLD_POT},
        {GB_AS_SLURRY, GB_C_COLD_32, GB_ROW_C_COLD_POT},
        {GB_AS_SLURRY, GB_C_COLD_25, GB_ROW_C_COLD_POT},
        {GB_AS_SLURRY, GB_C_HOT, GB_ROW_C_HOT_POT},
        {GB_AS_SLURRY, GB_C_HOT_SHADE, GB_ROW_C_HOT_POT},
        {GB_AS_GROUT, GB_C_COLD_40, GB_ROW_C_COLD_40_GROUT},
        {GB_AS_GROUT, GB_C_COLD_32, GB_ROW_C_COLD_32_GROUT},
        {GB_AS_GROUT, GB_C_COLD_25, GB_ROW_C_COLD_25_GROUT},
        {GB_AS_CONCRETE, GB_C_HOT, GB_ROW_C_HOT_CONCRETE},
        {GB_AS_CONCRETE, GB_C_HOT_SHADE, GB_ROW_C_HOT_CONCRETE},
        {GB_AS_CONCRETE, GB_C_FROST_DUE, GB_ROW_C_FROST_CONCRETE},
    };
    for (size_t i = 0; i < sizeof OTHERS / sizeof OTHERS[0]; i++)
        if (OTHERS[i].stuff == stuff && OTHERS[i].code == code)
            return OTHERS[i].row;
    return otherwise;
}

static const gb_row_code ROWS[] = {
    [GB_C_MIXER_SMALL] = GB_ROW_C_MIXER_SMALL,
    [GB_C_MIXER_WEAK] = GB_ROW_C_MIXER_WEAK,
    [GB_C_MIXER_TOO_SMALL] = GB_ROW_C_MIXER_TOO_SMALL,
    [GB_C_MIXER_TOO_WEAK] = GB_ROW_C_MIXER_TOO_WEAK,
    [GB_C_LIFE_TOO_SHORT] = GB_ROW_C_LIFE_TOO_SHORT,
    [GB_C_LIFE_SHORT] = GB_ROW_C_LIFE_SHORT,
    [GB_C_SCORED_THIN] = GB_ROW_C_SCORED_THIN,
    [GB_C_DEPTH_SPREAD] = GB_ROW_C_DEPTH_SPREAD,
    [GB_C_BED_THIN] = GB_ROW_C_BED_THIN,
    [GB_C_BED_THICK] = GB_ROW_C_BED_THICK,
    [GB_C_BY_HAND] = GB_ROW_C_BY_HAND,
    [GB_C_AIR_BY_HAND] = GB_ROW_C_AIR_BY_HAND,
    [GB_C_AIR_BY_NOTHING] = GB_ROW_C_AIR_BY_NOTHING,
    [GB_C_NO_PACE] = GB_ROW_C_NO_PACE,
    [GB_C_SAND_DRINKS] = GB_ROW_C_SAND_DRINKS,
    [GB_C_SAND_TOO_WET] = GB_ROW_C_SAND_TOO_WET,
    [GB_C_BUCKET_HEAVY] = GB_ROW_C_BUCKET_HEAVY,
    [GB_C_SHOVELS_DIFFER] = GB_ROW_C_SHOVELS_DIFFER,
    [GB_C_COLOUR_PARTS] = GB_ROW_C_COLOUR_PARTS,
    [GB_C_COLOUR_STRONG] = GB_ROW_C_COLOUR_STRONG,
    [GB_C_CARBON_BLACK] = GB_ROW_C_CARBON_BLACK,
    [GB_C_ANTIFREEZE] = GB_ROW_C_ANTIFREEZE,
    [GB_C_CHLORIDE] = GB_ROW_C_CHLORIDE,
    [GB_C_COLD_40] = GB_ROW_C_COLD_40,
    [GB_C_COLD_32] = GB_ROW_C_COLD_32,
    [GB_C_COLD_25] = GB_ROW_C_COLD_25,
    [GB_C_COLD_20] = GB_ROW_C_COLD_20,
    [GB_C_WIND_BREAK] = GB_ROW_C_WIND_BREAK,
    [GB_C_CONCRETE_COLD] = GB_ROW_C_CONCRETE_COLD,
    [GB_C_DRYING] = GB_ROW_C_DRYING,
    [GB_C_DRYING_UNKNOWN] = GB_ROW_C_DRYING_UNKNOWN,
    [GB_C_HOT] = GB_ROW_C_HOT,
    [GB_C_HOT_SHADE] = GB_ROW_C_HOT_SHADE,
    [GB_C_STONE_COLD] = GB_ROW_C_STONE_COLD,
    [GB_C_UNITS_COLD] = GB_ROW_C_UNITS_COLD,
    [GB_C_UNITS_FROZEN] = GB_ROW_C_UNITS_FROZEN,
    [GB_C_FROST_DUE] = GB_ROW_C_FROST_DUE,
    [GB_C_CONCRETE_HOT] = GB_ROW_C_CONCRETE_HOT,
    [GB_C_RAIN_AFTER] = GB_ROW_C_RAIN_AFTER,
    [GB_C_RAIN] = GB_ROW_C_RAIN,
    [GB_C_CLAIM_CEMENT] = GB_ROW_C_CLAIM_CEMENT,
    [GB_C_LIME_LITTLE] = GB_ROW_C_LIME_LITTLE,
    [GB_C_LIME_NOT_OVER] = GB_ROW_C_LIME_NOT_OVER,
    [GB_C_LIME_MUCH] = GB_ROW_C_LIME_MUCH,
    [GB_C_SAND_LITTLE] = GB_ROW_C_SAND_LITTLE,
    [GB_C_SAND_MUCH] = GB_ROW_C_SAND_MUCH,
    [GB_C_SAND_CEMENT_LITTLE] = GB_ROW_C_SAND_CEMENT_LITTLE,
    [GB_C_SAND_CEMENT_MUCH] = GB_ROW_C_SAND_CEMENT_MUCH,
    [GB_C_STONE_LITTLE] = GB_ROW_C_STONE_LITTLE,
    [GB_C_STONE_MUCH] = GB_ROW_C_STONE_MUCH,
    [GB_C_PORTLAND_LITTLE] = GB_ROW_C_PORTLAND_LITTLE,
    [GB_C_PORTLAND_MUCH] = GB_ROW_C_PORTLAND_MUCH,
    [GB_C_EXPOSED_WEAK] = GB_ROW_C_EXPOSED_WEAK,
    [GB_C_EXPOSED_WET] = GB_ROW_C_EXPOSED_WET,
    [GB_C_EXPOSED_LITTLE_AIR] = GB_ROW_C_EXPOSED_LITTLE_AIR,
    [GB_C_EXPOSED_MUCH_AIR] = GB_ROW_C_EXPOSED_MUCH_AIR,
    [GB_C_EXPOSED_LEAN] = GB_ROW_C_EXPOSED_LEAN,
    [GB_C_EXPOSED_UNKNOWN] = GB_ROW_C_EXPOSED_UNKNOWN,
    [GB_C_EXPOSURE_NOT_STATED] = GB_ROW_C_EXPOSURE_NOT_STATED};
_Static_assert(sizeof ROWS / sizeof ROWS[0] == GB_CAUTION_CODES,
               "a row for every caution");

/* What is not known of a mix, each in its own words. */
static gb_row_code row_of(const gb_caution *c, gb_stuff stuff) {
    static const gb_row_code UNKNOWN[] = {[GB_ASKS_STRENGTH] = GB_ROW_C_EXPOSED_UNKNOWN,
                                          [GB_ASKS_RATIO] = GB_ROW_C_UNKNOWN_WATER,
                                          [GB_ASKS_AIR_LEAST] = GB_ROW_C_UNKNOWN_AIR,
                                          [GB_ASKS_AIR_MOST] = GB_ROW_C_UNKNOWN_AIR,
                                          [GB_ASKS_CEMENT] = GB_ROW_C_UNKNOWN_CEMENT,
                                          [GB_ASKS_STONE] = GB_ROW_C_UNKNOWN_STONE};
    _Static_assert(sizeof UNKNOWN / sizeof UNKNOWN[0] == GB_EXPOSURE_LIMITS,
                   "a row for each");
    return c->code == GB_C_EXPOSED_UNKNOWN ? UNKNOWN[c->asked]
                                           : row_for(stuff, c->code, ROWS[c->code]);
}

/* Behind the last of what the exposure raises: what this sheet does not judge. */
static void add_outside(gb_builder *b, const gb_cautions *cautions, size_t i) {
    bool last =
        i + 1 == cautions->count || !gb_is_of_exposure(cautions->list[i + 1].code);
    if (gb_is_of_exposure(cautions->list[i].code) && last)
        GB_ADD_BARE(b, EXPOSED_OUTSIDE);
}

/* The hour of a file that raised it. */
static void add_when(gb_builder *b, const gb_caution *c) {
    if (c->hour.line == 0)
        return;
    const gb_weather *w = &b->about.plan->job->weather;
    GB_ADD(b, C_WHEN, gb_moment_fig(b, "when", c->hour.at, w->offset_s),
           gb_txt("file", w->hours_file));
}

void gb_add_cautions(gb_builder *b, const gb_cautions *cautions, gb_stuff stuff) {
    static const char *const SEVERITIES[] = {
        [GB_NOTE] = "note", [GB_CAUTION] = "caution", [GB_STOP] = "stop"};
    for (size_t i = 0; i < cautions->count; i++) {
        const gb_caution *c = &cautions->list[i];
        b->about.caution = c;
        gb_show show = show_of(c->kind);
        gb_row_code row = row_of(c, stuff);
        gb_figure figures[6] = {gb_num("value", show, c->value),
                                gb_num("limit", show, c->limit),
                                gb_txt("severity", SEVERITIES[c->severity]),
                                gb_txt("source", gb_tr(c->source))};
        size_t count = 4;
        if (c->take != NULL) {
            figures[count++] = gb_num("n", GB_SHOW_COUNT, (double)(c->tread + 1));
            figures[count++] = gb_txt("name", c->take->piece->name);
        }
        if (gb_is_of_exposure(c->code))
            figures[count++] = gb_txt("class", GB_EXPOSURE_WORDS[c->exposure]);
        if (c->code == GB_C_CONCRETE_COLD) {
            const gb_weather *w = &b->about.plan->job->weather;
            gb_cold_concrete cold =
                gb_cold_of(b->about.mix, gb_coldest_hour(w, GB_AT_WORK).air);
            figures[count++] = gb_num("placed", GB_SHOW_TEMP, cold.placed.c);
            figures[count++] = gb_num("mixed", GB_SHOW_TEMP, cold.mixed.c);
        }
        gb_add_row(b, row, figures, count);
        add_when(b, c);
        add_outside(b, cautions, i);
    }
}

void gb_add_care(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    gb_figure cold = gb_num("cold", GB_SHOW_TEMP, gb_cold_for_masonry().c);
    if (p->is_slurry)
        GB_ADD(b, ALWAYS_SLURRY, cold);
    else
        GB_ADD(b, ALWAYS_BED, cold);
    gb_hot_limits limits = gb_masonry_hot_limits();
    gb_hour hottest = gb_hot_hour(&job->weather);
    bool hot = gb_hot_band(hottest.air, hottest.wind) != GB_CAUTION_CODES;
    if (!hot) /* else the caution says more */
        GB_ADD(b, ALWAYS_HOT, gb_num("hot", GB_SHOW_TEMP, limits.hot.c),
               gb_num("windy", GB_SHOW_TEMP, limits.hot_windy.c),
               gb_num("wind", GB_SHOW_SPEED, limits.wind.m_s),
               gb_num("life", GB_SHOW_DURATION, p->need.mix->life_hot.s));
    gb_add_after(b, job, p);
    gb_add_holds(b, p->need.mix);
    GB_ADD_BARE(b, SAFETY);
    if (job->site.rinse != NULL)
        GB_ADD(b, RINSE, gb_txt("where", job->site.rinse));
    if (job->site.place != NULL)
        GB_ADD(b, PLACE, gb_txt("where", job->site.place));
    if (job->site.emergency != NULL)
        GB_ADD(b, EMERGENCY, gb_txt("who", job->site.emergency));
    GB_ADD_BARE(b, WHO);
    gb_add_today(b, job);
    bool own = p->need.mix->part_count == 0 && p->own_label;
    if (own)
        GB_ADD_BARE(b, SOURCE_OWN);
    else
        GB_ADD(b, SOURCE, gb_words_fig(b, "source", &p->need.mix->source));
}
