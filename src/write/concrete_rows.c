#include "write/concrete_rows.h"

#include <math.h>

/* ---- what is asked for ------------------------------------------------------------- */

gb_figure gb_strength_fig(const char *name, gb_pressure strength) {
    return gb_num(name, GB_SHOW_PRESSURE, strength.pa);
}

gb_figure gb_in_concrete_fig(const char *name, double kg_m3) {
    return gb_num(name, GB_SHOW_IN_WET, kg_m3);
}

gb_figure gb_share_fig(const char *name, gb_share share) {
    return gb_num(name, GB_SHOW_SHARE, share.of_one);
}

static void add_air_level(gb_builder *b, const gb_concrete *c) {
    static const gb_row_code LEVELS[GB_AIR_LEVELS] = {
        [GB_AIR_MILD] = GB_ROW_AIR_MILD,
        [GB_AIR_MODERATE] = GB_ROW_AIR_MODERATE,
        [GB_AIR_SEVERE] = GB_ROW_AIR_SEVERE};
    bool frost = c->attack == GB_FROST || c->attack == GB_FROST_THIN;
    if (!gb_is_entrained(c)) {
        if (frost)
            GB_ADD_BARE(b, ASKED_FROST);
        else
            GB_ADD_BARE(b, ASKED_TRAPPED);
        return;
    }
    GB_ADD(b, ASKED_AIR,
           gb_row_fig(b, "exposure", gb_make_row(b, LEVELS[c->air], NULL, 0)));
}

void gb_add_asked(gb_builder *b, const gb_mix *mix) {
    const gb_concrete *c = &mix->concrete;
    if (!isnan(c->strength.pa))
        GB_ADD(b, ASKED_STRENGTH, gb_strength_fig("strength", c->strength));
    else if (!isnan(c->average.pa))
        GB_ADD(b, ASKED_AVERAGE, gb_strength_fig("average", c->average));
    else
        GB_ADD(b, ASKED_RATIO, gb_num("ratio", GB_SHOW_NUMBER, c->ratio));
    GB_ADD(b, ASKED_SLUMP, gb_num("slump", GB_SHOW_LENGTH, c->slump.m),
           gb_num("largest", GB_SHOW_LENGTH, c->largest.m));
    if (c->trial.at.line != 0)
        GB_ADD_BARE(b, ASKED_TRIED);
    else
        GB_ADD_BARE(b, ASKED_UNTRIED);
    add_air_level(b, c);
}

void gb_add_air_by_nothing(gb_builder *b, const gb_mix *mix) {
    if (gb_is_entrained(&mix->concrete) && !gb_entrains_air(mix))
        GB_ADD_BARE(b, C_AIR_BY_NOTHING);
}

/* ---- its parts --------------------------------------------------------------------- */

/* What 1 m3 holds of one aggregate, and how wet it is. */
typedef struct aggregate {
    const gb_material *material;
    gb_density dry;
    gb_wetness wetness;
    gb_share volume;
} aggregate;

static aggregate sand_of(const gb_concrete_question *q) {
    const gb_concrete *c = &q->asked.mix->concrete;
    return (aggregate){c->sand_material, q->parts.sand,
                       gb_wetness_of(gb_delivered_sand(c), c->sand_absorption),
                       q->parts.sand_volume};
}

static aggregate stone_of(const gb_concrete_question *q) {
    const gb_concrete *c = &q->asked.mix->concrete;
    return (aggregate){c->stone_material, q->parts.stone,
                       gb_wetness_of(c->stone_moisture, c->stone_absorption),
                       q->parts.stone_volume};
}

static double on(const aggregate *a, gb_basis basis) {
    return gb_on_basis((gb_mass){a->dry.kg_m3}, a->wetness, GB_OVEN_DRY, basis).kg;
}

static double free_water(const aggregate *a) {
    return gb_free_water((gb_mass){a->dry.kg_m3}, a->wetness).kg;
}

static double water_to_add(const gb_concrete_question *q) {
    aggregate sand = sand_of(q);
    aggregate stone = stone_of(q);
    return q->parts.water.kg_m3 - free_water(&sand) - free_water(&stone);
}

/* ---- on every basis ---------------------------------------------------------------- */

static void add_aggregate(gb_builder *b, const aggregate *a, size_t part) {
    b->about.part = part;
    GB_ADD(b, CONCRETE_PART, gb_words_fig(b, "material", &a->material->title),
           gb_in_concrete_fig("dry", a->dry.kg_m3),
           gb_in_concrete_fig("saturated", on(a, GB_SATURATED)),
           gb_in_concrete_fig("delivered", on(a, GB_AS_DELIVERED)),
           gb_share_fig("share", a->volume));
}

static void add_drinks(gb_builder *b, gb_row_code code, const aggregate *a) {
    const gb_figure figures[] = {gb_share_fig("moisture", a->wetness.moisture),
                                 gb_share_fig("absorption", a->wetness.absorption)};
    if (gb_under(a->wetness.moisture.of_one, a->wetness.absorption.of_one))
        gb_add_row(b, code, figures, sizeof figures / sizeof figures[0]);
}

static void add_bases(gb_builder *b, const gb_concrete_question *q) {
    const gb_parts_of_concrete *p = &q->parts;
    const gb_material *cement = q->asked.mix->concrete.cement_material;
    aggregate sand = sand_of(q);
    aggregate stone = stone_of(q);
    double delivered = p->cement.kg_m3 + on(&sand, GB_AS_DELIVERED) +
                       on(&stone, GB_AS_DELIVERED) + water_to_add(q);
    GB_ADD(b, CONCRETE_HEAD,
           gb_num("volume", GB_SHOW_PACK, gb_compared_volume(b->style.system).m3));
    GB_ADD(b, CONCRETE_CEMENT, gb_words_fig(b, "material", &cement->title),
           gb_in_concrete_fig("dry", p->cement.kg_m3),
           gb_in_concrete_fig("saturated", p->cement.kg_m3),
           gb_in_concrete_fig("delivered", p->cement.kg_m3),
           gb_share_fig("share", p->cement_volume));
    add_aggregate(b, &sand, 1);
    add_aggregate(b, &stone, 2);
    GB_ADD(b, CONCRETE_WATER, gb_in_concrete_fig("saturated", p->water.kg_m3),
           gb_in_concrete_fig("delivered", water_to_add(q)),
           gb_share_fig("share", p->water_volume));
    GB_ADD(b, CONCRETE_AIR, gb_share_fig("share", p->air));
    GB_ADD(b, CONCRETE_SUM, gb_in_concrete_fig("saturated", p->fresh.kg_m3),
           gb_in_concrete_fig("delivered", delivered),
           gb_num("share", GB_SHOW_SHARE,
                  p->cement_volume.of_one + p->sand_volume.of_one +
                      p->stone_volume.of_one + p->water_volume.of_one + p->air.of_one));
    GB_ADD(b, CONCRETE_BASES, gb_num("sand", GB_SHOW_SHARE, sand.wetness.moisture.of_one),
           gb_num("stone", GB_SHOW_SHARE, stone.wetness.moisture.of_one));
    add_drinks(b, GB_ROW_CONCRETE_SAND_DRINKS, &sand);
    add_drinks(b, GB_ROW_CONCRETE_STONE_DRINKS, &stone);
}

/* ---- in every unit ----------------------------------------------------------------- */

static void add_each(gb_builder *b, gb_row_code code, const gb_material *material,
                     double kg_m3, double m3) {
    gb_figure figures[4] = {gb_num("us", GB_SHOW_LB_YD3, kg_m3),
                            gb_num("metric", GB_SHOW_KG_M3, kg_m3),
                            gb_num("bag", GB_SHOW_MASS, kg_m3 * m3)};
    if (material != NULL)
        figures[3] = gb_words_fig(b, "material", &material->title);
    gb_add_row(b, code, figures, material != NULL ? 4 : 3);
}

static void add_units(gb_builder *b, const gb_concrete_question *q) {
    const gb_recipe *r = &q->asked.recipe;
    aggregate sand = sand_of(q);
    aggregate stone = stone_of(q);
    GB_ADD_BARE(b, CONCRETE_EACH_HEAD);
    b->about.part = 0;
    add_each(b, GB_ROW_CONCRETE_EACH, q->asked.mix->concrete.cement_material,
             q->parts.cement.kg_m3, r->yield.m3);
    b->about.part = 1;
    add_each(b, GB_ROW_CONCRETE_EACH, sand.material, on(&sand, GB_AS_DELIVERED),
             r->yield.m3);
    b->about.part = 2;
    add_each(b, GB_ROW_CONCRETE_EACH, stone.material, on(&stone, GB_AS_DELIVERED),
             r->yield.m3);
    add_each(b, GB_ROW_CONCRETE_EACH_WATER, NULL, water_to_add(q), r->yield.m3);
    GB_ADD(
        b, CONCRETE_BAGS,
        gb_num("yard", GB_SHOW_NUMBER, gb_compared_volume(GB_US).m3 / r->yield.m3),
        gb_num("bag", GB_SHOW_MASS, r->bag.kg),
        gb_num("metre", GB_SHOW_NUMBER, gb_compared_volume(GB_METRIC).m3 / r->yield.m3));
    gb_end_block(b);
}

void gb_add_concrete_parts(gb_builder *b, const gb_concrete_question *q) {
    add_bases(b, q);
    add_units(b, q);
}
