#include "explain/chains.h"

#include <string.h>

/* Which parts of a mix a ratio speaks of. */
typedef bool of_part(const gb_material *m);

static bool is_cement(const gb_material *m) {
    return m->kind == GB_CEMENT;
}
static bool is_portland(const gb_material *m) {
    return m->kind == GB_CEMENT && m->masonry == GB_NOT_MASONRY;
}
static bool is_masonry(const gb_material *m) {
    return m->kind == GB_CEMENT && m->masonry != GB_NOT_MASONRY;
}
static bool is_lime(const gb_material *m) {
    return m->kind == GB_LIME;
}
static bool is_sand(const gb_material *m) {
    return m->kind == GB_SAND;
}
static bool is_stone(const gb_material *m) {
    return m->kind == GB_COARSE;
}

/* The loose volumes of those parts. */
static const gb_why *volume_of(gb_explainer *x, const gb_mix *mix, const char *name,
                               of_part *belongs) {
    const gb_why *parts[GB_MOST_PARTS];
    size_t n = 0;
    double sum = 0;
    for (size_t i = 0; i < mix->part_count; i++) {
        const gb_part *p = &mix->parts[i];
        if (!belongs(p->material))
            continue;
        parts[n++] = gb_why_part_volume(x, &(gb_mixed){.mix = mix}, i, "volume");
        sum += p->volume;
    }
    if (n == 0)
        return gb_fact(x, name, GB_PLAIN, 0, N_("the mix has none"));
    return GB_WHY(x, name, GB_PLAIN, sum, "sum()", .inputs = parts, .input_count = n);
}

static const gb_why *ratio_of(gb_explainer *x, const gb_mix *mix, gb_ratio ratio,
                              double value) {
    const gb_why *cement = volume_of(x, mix, "cement", is_cement);
    const gb_why *lime = volume_of(x, mix, "lime", is_lime);
    const gb_why *sand = volume_of(x, mix, "sand", is_sand);
    switch (ratio) {
    case GB_LIME_TO_CEMENT:
        return GB_WHY(x, "lime_ratio", GB_PLAIN, value, "lime / cement",
                      GB_INPUTS(lime, cement), .of = mix->id);
    case GB_SAND_TO_BINDER:
        return GB_WHY(x, "sand_ratio", GB_PLAIN, value, "sand / (cement + lime)",
                      GB_INPUTS(sand, cement, lime), .of = mix->id);
    case GB_SAND_TO_CEMENT:
        return GB_WHY(x, "sand_ratio", GB_PLAIN, value, "sand / cement",
                      GB_INPUTS(sand, cement), .of = mix->id);
    case GB_STONE_TO_BINDER:
        return GB_WHY(x, "stone_ratio", GB_PLAIN, value, "stone / (cement + lime)",
                      GB_INPUTS(volume_of(x, mix, "stone", is_stone), cement, lime),
                      .of = mix->id);
    case GB_PORTLAND_TO_MASONRY:
        return GB_WHY(x, "portland_ratio", GB_PLAIN, value, "portland / masonry",
                      GB_INPUTS(volume_of(x, mix, "portland", is_portland),
                                volume_of(x, mix, "masonry", is_masonry)),
                      .of = mix->id);
    case GB_NO_RATIO:
    case GB_RATIOS:
        break;
    }
    return NULL;
}

const gb_why *gb_why_claim_ratio(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    gb_conformity c;
    gb_check_claim(m.mix, &c);
    const gb_claim_limit *l = &c.limits[a->claim_limit];
    return ratio_of(x, m.mix, l->ratio, l->value);
}

const gb_why *gb_why_claim_end(gb_explainer *x, const gb_about *a, bool most) {
    gb_mixed m = gb_mixed_of(a);
    gb_conformity c;
    gb_check_claim(m.mix, &c);
    const gb_claim_limit *l = &c.limits[a->claim_limit];
    return gb_fact(x, most ? "most" : "least", GB_PLAIN, most ? l->most : l->least,
                   l->source);
}

const gb_why *gb_why_ratio_of_caution(gb_explainer *x, const gb_about *a) {
    gb_mixed m = gb_mixed_of(a);
    return ratio_of(x, m.mix, gb_caution_ratio(a->caution->code), a->caution->value);
}
