#include "write/concrete_rows.h"
#include "write/exposure_rows.h"
#include "write/gauge_rows.h"
#include "write/way_rows.h"

#include <math.h>

static gb_figure ratio(const char *name, double value) {
    return gb_num(name, GB_SHOW_NUMBER, value);
}

/* ---- what is asked for ------------------------------------------------------------- */

static void add_usual_slump(gb_builder *b, const gb_concrete *c) {
    static const gb_row_code BUILT[] = {
        [GB_BUILT_SLAB] = GB_ROW_BUILT_SLAB,
        [GB_BUILT_PLAIN_FOOTING] = GB_ROW_BUILT_PLAIN_FOOTING,
        [GB_BUILT_REINFORCED_FOOTING] = GB_ROW_BUILT_REINFORCED_FOOTING,
        [GB_BUILT_BEAM] = GB_ROW_BUILT_BEAM,
        [GB_BUILT_COLUMN] = GB_ROW_BUILT_COLUMN,
        [GB_BUILT_MASS] = GB_ROW_BUILT_MASS};
    _Static_assert(sizeof BUILT / sizeof BUILT[0] == GB_BUILTS, "a row for each");
    gb_length least;
    gb_length most;
    gb_length more = gb_slump_by_hand(c->table);
    gb_recommended_slump(c->table, c->built, &least, &most);
    GB_ADD(b, ASKED_USUAL, gb_num("least", GB_SHOW_LENGTH, least.m),
           gb_num("most", GB_SHOW_LENGTH, most.m), gb_num("more", GB_SHOW_LENGTH, more.m),
           gb_row_fig(b, "built", gb_make_row(b, BUILT[c->built], NULL, 0)));
    if (gb_over(c->slump.m, most.m + more.m))
        GB_ADD(b, ASKED_SLUMP_HIGH, gb_num("slump", GB_SHOW_LENGTH, c->slump.m),
               gb_num("limit", GB_SHOW_LENGTH, most.m + more.m));
}

/* ---- step by step ------------------------------------------------------------------ */

static void add_average(gb_builder *b, const gb_concrete *c, gb_pressure average) {
    /* A stated ratio goes before what an average would ask for. */
    if (isnan(c->strength.pa) || !isnan(c->ratio))
        return;
    if (!isnan(c->average.pa))
        GB_ADD(b, DESIGN_AVERAGE_STATED, gb_strength_fig("average", average));
    else if (isnan(c->deviation.pa))
        GB_ADD(b, DESIGN_AVERAGE, gb_strength_fig("average", average),
               gb_strength_fig("strength", c->strength),
               gb_strength_fig("more", (gb_pressure){average.pa - c->strength.pa}));
    else
        GB_ADD(b, DESIGN_AVERAGE_TESTS, gb_strength_fig("average", average),
               gb_strength_fig("strength", c->strength),
               gb_strength_fig("deviation", c->deviation),
               gb_num("tests", GB_SHOW_COUNT, (double)c->tests));
}

static void add_water_of_table(gb_builder *b, const gb_concrete *c,
                               const gb_proportions *p) {
    double saved = gb_shape_saving(c->table, c->shape).kg_m3;
    if (!isnan(c->water.kg_m3))
        GB_ADD(b, DESIGN_WATER_STATED, gb_in_concrete_fig("water", p->parts.water.kg_m3));
    else if (saved > 0)
        GB_ADD(b, DESIGN_WATER_SHAPE, gb_in_concrete_fig("water", p->parts.water.kg_m3),
               gb_in_concrete_fig("table", p->table_water.kg_m3),
               gb_in_concrete_fig("saved", saved));
    else
        GB_ADD(b, DESIGN_WATER, gb_in_concrete_fig("water", p->parts.water.kg_m3));
    if (!gb_is_entrained(c) && isnan(c->air_content.of_one))
        GB_ADD(b, DESIGN_AIR_TRAPPED, gb_share_fig("air", p->parts.air));
    else if (isnan(c->air_content.of_one))
        GB_ADD(b, DESIGN_AIR, gb_share_fig("air", p->parts.air));
    else
        GB_ADD(b, DESIGN_AIR_STATED, gb_share_fig("air", p->parts.air));
}

static void add_ratio(gb_builder *b, const gb_concrete *c, const gb_proportions *p) {
    if (p->ratio_attack < p->ratio_strength) {
        GB_ADD(b, DESIGN_RATIO_ATTACK, ratio("ratio", p->ratio),
               ratio("most", p->ratio_strength));
        return;
    }
    if (isnan(c->ratio))
        GB_ADD(b, DESIGN_RATIO, ratio("ratio", p->ratio));
    else
        GB_ADD(b, DESIGN_RATIO_STATED, ratio("ratio", p->ratio));
    if (!isnan(p->ratio_attack))
        GB_ADD(b, DESIGN_RATIO_FREE, ratio("most", p->ratio_attack));
}

static void add_steps(gb_builder *b, const gb_concrete_question *q) {
    const gb_concrete *c = &q->asked.mix->concrete;
    const gb_proportions *p = &q->design;
    add_average(b, c, p->average);
    add_water_of_table(b, c, p);
    add_ratio(b, c, p);
    GB_ADD(b, DESIGN_CEMENT, gb_in_concrete_fig("cement", p->parts.cement.kg_m3));
    GB_ADD(b, DESIGN_STONE, gb_share_fig("share", p->coarse_share),
           gb_num("rodded", GB_SHOW_DENSITY, c->rodded.kg_m3),
           gb_num("fineness", GB_SHOW_NUMBER, c->fineness),
           gb_in_concrete_fig("stone", p->parts.stone.kg_m3));
    GB_ADD(b, DESIGN_SAND, gb_share_fig("share", p->parts.sand_volume),
           gb_in_concrete_fig("sand", p->parts.sand.kg_m3));
    GB_ADD(b, DESIGN_MASS, gb_in_concrete_fig("fresh", p->parts.fresh.kg_m3),
           gb_in_concrete_fig("first", p->first_mass.kg_m3),
           gb_in_concrete_fig("sand", p->sand_by_mass.kg_m3));
    gb_end_block(b);
}

/* ---- the trial --------------------------------------------------------------------- */

static gb_figure change(gb_density by) {
    gb_figure f = gb_in_concrete_fig("change", by.kg_m3);
    f.with_sign = true;
    return f;
}

static void add_changes(gb_builder *b, const gb_concrete_question *q) {
    const gb_concrete *c = &q->asked.mix->concrete;
    const gb_trial_result *t = &q->trial;
    if (isnan(c->trial.slump.m))
        GB_ADD_BARE(b, TRIAL_NO_SLUMP);
    if (fabs(t->for_slump.kg_m3) > 0)
        GB_ADD(b, TRIAL_SLUMP, change(t->for_slump),
               gb_num("slump", GB_SHOW_LENGTH, c->trial.slump.m),
               gb_num("wanted", GB_SHOW_LENGTH, c->slump.m));
    if (fabs(t->for_air.kg_m3) > 0)
        GB_ADD(b, TRIAL_FOR_AIR, change(t->for_air), gb_share_fig("air", t->air),
               gb_share_fig("wanted", q->design.parts.air));
    gb_share apart = {fabs(c->trial.air.of_one - t->gravimetric_air.of_one)};
    if (gb_over(apart.of_one, gb_air_apart().of_one))
        GB_ADD(b, TRIAL_AIR_APART, gb_share_fig("apart", apart),
               gb_share_fig("limit", gb_air_apart()));
    gb_share tolerance = gb_air_tolerance();
    double off = fabs(c->trial.air.of_one - q->design.parts.air.of_one);
    if (gb_is_entrained(c) && gb_over(off, tolerance.of_one))
        GB_ADD(b, TRIAL_AIR_OFF, gb_share_fig("air", c->trial.air),
               gb_share_fig("wanted", q->design.parts.air),
               gb_share_fig("tolerance", tolerance));
}

static void add_trial(gb_builder *b, const gb_concrete_question *q) {
    const gb_trial_result *t = &q->trial;
    GB_ADD_BARE(b, TRIAL_TITLE);
    GB_ADD(b, TRIAL_MADE, gb_num("batch", GB_SHOW_MASS, t->batch.kg),
           gb_num("unit", GB_SHOW_DENSITY, t->unit_mass.kg_m3),
           gb_num("volume", GB_SHOW_VOLUME_FINE, t->yield.m3),
           ratio("relative", t->relative_yield));
    GB_ADD(b, TRIAL_CEMENT, gb_in_concrete_fig("cement", t->cement_content.kg_m3));
    if (isnan(q->asked.mix->concrete.trial.air.of_one))
        GB_ADD(b, TRIAL_AIR, gb_share_fig("air", t->gravimetric_air));
    else
        GB_ADD(b, TRIAL_AIR_METER, gb_share_fig("meter", t->air),
               gb_share_fig("air", t->gravimetric_air));
    GB_ADD(b, TRIAL_WATER, gb_in_concrete_fig("used", t->water_used.kg_m3),
           gb_num("water", GB_SHOW_MASS, t->mixing_water.kg),
           ratio("ratio", t->ratio_used));
    add_changes(b, q);
    GB_ADD(b, TRIAL_NEXT, gb_in_concrete_fig("water", t->next.water.kg_m3),
           gb_in_concrete_fig("cement", t->next.cement.kg_m3),
           gb_in_concrete_fig("stone", t->next.stone.kg_m3),
           gb_in_concrete_fig("sand", t->next.sand.kg_m3),
           gb_in_concrete_fig("by_mass", t->next_sand_by_mass.kg_m3));
    GB_ADD_BARE(b, TRIAL_BELOW);
    gb_end_block(b);
}

/* ---- one batch --------------------------------------------------------------------- */

static void add_batch(gb_builder *b, const gb_concrete_question *q) {
    const gb_mix_question *a = &q->asked;
    const gb_mix *mix = a->mix;
    const gb_measure measure = {
        GB_BY_BUCKET, isnan(a->bucket.m3) ? gb_usual_bucket(b->style.system) : a->bucket,
        isnan(mix->concrete.sand_moisture.of_one)
            ? gb_state_lying(GB_DAMP)
            : gb_usual_lying(mix->concrete.sand_moisture)};
    b->about.question = a;
    b->about.amount = GB_ASKED_FOR;
    if (isnan(q->mixer.m3))
        GB_ADD_BARE(b, CONCRETE_ONE_BAG);
    else
        GB_ADD(b, CONCRETE_ONE_BATCH, gb_num("mixer", GB_SHOW_VOLUME, q->mixer.m3));
    GB_ADD(b, QUESTION_BAGS, gb_bags_fig(b, "bags", a->bags),
           gb_num("bag", GB_SHOW_MASS, a->recipe.bag.kg));
    GB_ADD(b, BATCH, gb_parts_fig(b, mix, &a->recipe, a->bags, &measure));
    gb_add_makes(b, &a->recipe, a->bags);
    gb_add_water(b, mix, &a->recipe, a->bags, mix->concrete.sand_moisture);
    gb_add_sand_states(b, mix, &a->recipe, a->bags, &measure);
    gb_add_mixing(b, mix, false, false);
    GB_ADD(b, LIFE, gb_num("life", GB_SHOW_DURATION, mix->life.s),
           gb_num("hot", GB_SHOW_DURATION, mix->life_hot.s));
    if (gb_is_never_retempered(mix))
        GB_ADD_BARE(b, LIFE_NEVER);
    gb_add_holds(b, mix);
    gb_end_block(b);
}

static void add_care(gb_builder *b, const gb_concrete_question *q) {
    static const double TRUCK_S = 5400; /* 1-1/2 h: ASTM C94 before C94-21 */
    GB_ADD_BARE(b, CONCRETE_CARE_TITLE);
    if (!q->tried)
        GB_ADD_BARE(b, CONCRETE_FIRST);
    GB_ADD_BARE(b, CONCRETE_WEATHER);
    GB_ADD(b, CONCRETE_TRUCK, gb_num("time", GB_SHOW_DURATION, TRUCK_S));
    GB_ADD_BARE(b, CONCRETE_CARE);
    GB_ADD_BARE(b, WHO);
    gb_end_block(b);
}

gb_status gb_ask_concrete(const gb_mix *mix, gb_system system,
                          gb_concrete_question *question) {
    static const gb_density WATER = {GB_WATER_KG_M3};
    const gb_concrete *c = &mix->concrete;
    gb_concrete_question q = {.mixer = {GB_NONE}, .tried = c->trial.at.line != 0};
    q.asked = (gb_mix_question){
        .mix = mix, .bags = 1.0, .wanted = {GB_NONE}, .bucket = {GB_NONE}};
    gb_mass bag = *gb_usual_pack(mix->parts[0].material, system);
    gb_status status = gb_make_recipe(mix, NULL, false, bag, &q.asked.recipe);
    if (status == GB_OK)
        status = gb_proportion(c, WATER, &q.design);
    if (status == GB_OK && q.tried)
        status = gb_judge_trial(c, &q.design, WATER, &q.trial);
    if (status != GB_OK)
        return status;
    q.parts = q.tried ? q.trial.next : q.design.parts;
    *question = q;
    return GB_OK;
}

gb_status gb_concrete_sheet(const gb_concrete_question *q, gb_style style,
                            gb_arena *arena, gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    b.about.concrete = q;
    GB_ADD_BARE(&b, CONCRETE_TITLE);
    if (q->asked.mix->id[0] != '\0')
        gb_add_mix_id(&b, q->asked.mix);
    gb_add_asked(&b, q->asked.mix);
    add_usual_slump(&b, &q->asked.mix->concrete);
    gb_add_air_by_nothing(&b, q->asked.mix);
    add_steps(&b, q);
    if (q->tried)
        add_trial(&b, q);
    gb_add_concrete_parts(&b, q);
    gb_add_exposures(&b, q);
    add_batch(&b, q);
    if (q->way_count > 0)
        gb_add_ways(&b, q);
    add_care(&b, q);
    return gb_finish_sheet(&b, "concrete", sheet);
}
