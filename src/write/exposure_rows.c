#include "write/exposure_rows.h"

#include "write/gauge_rows.h"

#include <math.h>

/* ---- cells ------------------------------------------------------------------------- */

static gb_row strength_cell(gb_builder *b, gb_pressure p) {
    if (isnan(p.pa))
        return GB_MAKE_BARE(b, DASH);
    return GB_MAKE(b, ASKS_STRENGTH, gb_num("strength", GB_SHOW_PRESSURE, p.pa));
}

static gb_row ratio_cell(gb_builder *b, double ratio) {
    if (isnan(ratio))
        return GB_MAKE_BARE(b, DASH);
    return GB_MAKE(b, ASKS_RATIO, gb_num("ratio", GB_SHOW_NUMBER, ratio));
}

static gb_row air_cell(gb_builder *b, gb_share least, gb_share most) {
    gb_figure low = gb_num("least", GB_SHOW_SHARE, least.of_one);
    if (isnan(least.of_one))
        return GB_MAKE_BARE(b, DASH);
    if (isnan(most.of_one))
        return GB_MAKE(b, ASKS_AIR_LEAST, low);
    return GB_MAKE(b, ASKS_AIR, low, gb_num("most", GB_SHOW_SHARE, most.of_one));
}

static gb_row cement_cell(gb_builder *b, gb_density cement) {
    if (isnan(cement.kg_m3))
        return GB_MAKE_BARE(b, DASH);
    return GB_MAKE(b, ASKS_CEMENT, gb_num("cement", GB_SHOW_IN_WET, cement.kg_m3));
}

/* ---- rows -------------------------------------------------------------------------- */

static void add_asks(gb_builder *b, gb_exposure exposure, const gb_exposed_mix *has) {
    gb_exposure_rule rule = gb_exposure_asks(exposure);
    gb_exposure_air air;
    b->about.exposure = exposure;
    if (gb_exposure_air_of(exposure, has->largest, has->strength, &air)) {
        rule.air_least = air.least;
        rule.air_most = air.most;
    }
    GB_ADD(b, EXPOSURE_ASKS, gb_txt("class", GB_EXPOSURE_WORDS[exposure]),
           gb_row_fig(b, "strength", strength_cell(b, rule.strength)),
           gb_row_fig(b, "ratio", ratio_cell(b, rule.ratio)),
           gb_row_fig(b, "air", air_cell(b, rule.air_least, rule.air_most)),
           gb_row_fig(b, "cement", cement_cell(b, rule.cement)));
}

static void add_has(gb_builder *b, const gb_exposed_mix *has) {
    b->about.exposure = GB_EXPOSURES;
    GB_ADD(b, EXPOSURE_HAS, gb_row_fig(b, "strength", strength_cell(b, has->strength)),
           gb_row_fig(b, "ratio", ratio_cell(b, has->ratio)),
           gb_row_fig(b, "air", air_cell(b, has->air, (gb_share){GB_NONE})),
           gb_row_fig(b, "cement", cement_cell(b, has->cement)));
}

void gb_add_exposures(gb_builder *b, const gb_concrete_question *q) {
    unsigned exposures = q->asked.mix->concrete.exposures;
    gb_exposed_mix has = gb_exposed_of(q->asked.mix, &q->asked.recipe);
    gb_caution *list = gb_arena_take(b->arena, GB_MOST_MISSES, sizeof *list);
    b->failed = b->failed || list == NULL;
    if (exposures == 0 || list == NULL)
        return;
    b->about.question = &q->asked;
    GB_ADD_BARE(b, EXPOSURE_HEAD);
    for (gb_exposure e = 0; e < GB_EXPOSURES; e++)
        if (exposures >> e & 1)
            add_asks(b, e, &has);
    add_has(b, &has);
    GB_ADD_BARE(b, EXPOSURE_ENDS);
    gb_cautions cautions = {list, gb_class_cautions(exposures, &has, list)};
    gb_add_cautions(b, &cautions, GB_AS_CONCRETE);
    gb_end_block(b);
}
