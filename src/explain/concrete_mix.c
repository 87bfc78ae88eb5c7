#include "explain/concrete.h"

/* A mix whose parts follow from its concrete: what other mixes state is a formula here.
 */

static const gb_why *made_part(gb_explainer *x, const gb_made *m, size_t part) {
    return gb_why_in_concrete(x, m, (gb_stuff_in)part, gb_batch_mixed(m));
}

static const gb_why *first_bulk(gb_explainer *x, const gb_made *m) {
    const gb_material *cement = m->c->cement_material;
    return gb_stated(x, "first_bulk", cement->name, GB_DENSITY, &cement->bulk.kg_m3,
                     gb_text_source(x, &cement->source));
}

const gb_why *gb_why_proportioned_volume(gb_explainer *x, const gb_mix *mix, size_t part,
                                         const char *name) {
    const gb_part *p = &mix->parts[part];
    const char *of = p->material->name;
    gb_made m = gb_made_of(mix);
    if (part == 0)
        return gb_keep_why(
            x, (gb_why){.name = name,
                        .of = of,
                        .unit = GB_PLAIN,
                        .value = p->volume,
                        .source = N_("a proportion is told to one of cement")});
    return GB_WHY(x, name, GB_PLAIN, p->volume,
                  part == 1 ? "sand / bulk / (cement / first_bulk)"
                            : "stone / bulk / (cement / first_bulk)",
                  GB_INPUTS(made_part(x, &m, part), gb_why_bulk(x, p->material),
                            made_part(x, &m, 0), first_bulk(x, &m)),
                  .of = of);
}

const gb_why *gb_why_proportioned_mass(gb_explainer *x, const gb_mixed *mixed,
                                       size_t part) {
    gb_made m = gb_made_of(mixed->mix);
    return GB_WHY(
        x, "mass", GB_MASS, mixed->recipe->part[part].kg,
        part == 1 ? "bag * sand / cement" : "bag * stone / cement",
        GB_INPUTS(gb_why_bag(x, mixed), made_part(x, &m, part), made_part(x, &m, 0)),
        .of = mixed->mix->parts[part].material->name);
}

const gb_why *gb_why_proportioned_share(gb_explainer *x, const gb_mix *mix,
                                        gb_which_water which) {
    const gb_water *w = &mix->water;
    gb_made m = gb_made_of(mix);
    const gb_why *ratio = gb_why_concrete_ratio(x, &m);
    if (which == GB_FIRST_WATER)
        return GB_WHY(x, "water_share", GB_SHARE, w->least.of_one, "0.9 * ratio",
                      GB_INPUTS(ratio), .of = gb_made_id(&m),
                      .source = N_("the least water: common practice"));
    return GB_WHY(x, "water_share", GB_SHARE, w->usual.of_one, "ratio", GB_INPUTS(ratio),
                  .of = gb_made_id(&m));
}

const gb_why *gb_why_proportioned_air(gb_explainer *x, const gb_mix *mix) {
    gb_made m = gb_made_of(mix);
    return gb_why_air_in(x, &m);
}

const gb_why *gb_why_proportioned_gravity(gb_explainer *x, const gb_mix *mix,
                                          size_t part) {
    gb_made m = gb_made_of(mix);
    return gb_why_gravity_in(x, &m, (gb_stuff_in)part, "gravity");
}

const gb_why *gb_why_sand_absorption(gb_explainer *x, const gb_mixed *mixed) {
    gb_made m = gb_made_of(mixed->mix);
    return gb_why_absorption_in(x, &m, GB_SAND_IN);
}

const gb_why *gb_why_stone_moisture(gb_explainer *x, const gb_mixed *mixed) {
    gb_made m = gb_made_of(mixed->mix);
    return gb_why_moisture_in(x, &m, GB_STONE_IN);
}

const gb_why *gb_why_absorbed(gb_explainer *x, const gb_mixed *mixed) {
    gb_made m = gb_made_of(mixed->mix);
    return GB_WHY(
        x, "absorbed", GB_MASS, mixed->recipe->absorbed.kg,
        "sand * sand_absorption + stone * stone_absorption",
        GB_INPUTS(gb_why_sand(x, mixed), gb_why_absorption_in(x, &m, GB_SAND_IN),
                  gb_why_stone(x, mixed), gb_why_absorption_in(x, &m, GB_STONE_IN)),
        .of = gb_made_id(&m));
}

/* Sand is delivered with the moisture of its pile, which is counted where water is added;
   stone with its own. */
const gb_why *gb_why_drunk(gb_explainer *x, const gb_mixed *mixed) {
    const gb_mix *mix = mixed->mix;
    const gb_part *stone = &mix->parts[2];
    gb_made m = gb_made_of(mix);
    double sand_kg = mixed->recipe->part[1].kg * mix->parts[1].absorption.of_one;
    double stone_kg =
        mixed->recipe->part[2].kg * (stone->absorption.of_one - stone->moisture.of_one);
    const gb_why *sand =
        GB_WHY(x, "sand_drinks", GB_MASS, sand_kg, "mass * sand_absorption",
               GB_INPUTS(gb_why_part_mass(x, mixed, 1),
                         gb_why_absorption_in(x, &m, GB_SAND_IN)));
    const gb_why *of_stone = GB_WHY(x, "stone_drinks", GB_MASS, stone_kg,
                                    "mass * (stone_absorption - stone_moisture)",
                                    GB_INPUTS(gb_why_part_mass(x, mixed, 2),
                                              gb_why_absorption_in(x, &m, GB_STONE_IN),
                                              gb_why_moisture_in(x, &m, GB_STONE_IN)));
    return GB_WHY(x, "drunk", GB_MASS, mixed->recipe->drunk.kg,
                  "sand_drinks + stone_drinks", GB_INPUTS(sand, of_stone),
                  .of = gb_made_id(&m),
                  .source = N_("what aggregate absorbs does not mix"));
}
