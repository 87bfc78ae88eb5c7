#include "write/reference_rows.h"

#include "write/gauge_rows.h"

#include <math.h>

/* ---- parts ----------------------------------------------------------------------- */

static void add_volumes(gb_builder *b, const gb_mix *mix) {
    gb_row rows[GB_MOST_PARTS];
    for (size_t i = 0; i < mix->part_count; i++) {
        const gb_part *part = &mix->parts[i];
        b->about.part = i;
        rows[i] = GB_MAKE(b, PART_VOLUME, gb_num("loose", GB_SHOW_PARTS, part->volume),
                          gb_words_fig(b, "material", &part->material->title));
    }
    gb_figure parts = gb_rows_fig(b, "parts", rows, mix->part_count);
    parts.join = " : ";
    GB_ADD(b, BY_VOLUME, parts);
}

static gb_figure in_wet(gb_mass of_one_bag, const gb_recipe *r) {
    return gb_num("in_wet", GB_SHOW_DENSITY, gb_in_wet(of_one_bag, r->yield).kg_m3);
}

static gb_figure of_dry(double kg, const gb_recipe *r) {
    return gb_num("of_dry", GB_SHOW_SHARE, kg / r->dry.kg);
}

static void add_parts(gb_builder *b, const gb_mix *mix, const gb_recipe *r) {
    for (size_t i = 0; i < mix->part_count; i++) {
        gb_mass mass = r->part[i];
        b->about.part = i;
        GB_ADD(b, PART_LINE, gb_words_fig(b, "material", &mix->parts[i].material->title),
               gb_num("ratio", GB_SHOW_NUMBER, mass.kg / r->part[0].kg),
               of_dry(mass.kg, r), gb_num("mass", GB_SHOW_MASS, mass.kg),
               in_wet(mass, r));
    }
}

/* Additions by a share of the binder count as dry mass. */
static void add_powders(gb_builder *b, const gb_mix *mix, const gb_recipe *r) {
    for (size_t i = 0; i < mix->addition_count; i++) {
        const gb_addition *a = &mix->additions[i];
        if (isnan(a->share.of_one))
            continue;
        gb_mass mass = gb_addition_mass(mix, r, i, 1.0, (gb_mass){0});
        b->about.part = i;
        GB_ADD(b, POWDER_LINE, gb_words_fig(b, "material", &a->material->title),
               of_dry(mass.kg, r), gb_num("mass", GB_SHOW_DAB, mass.kg), in_wet(mass, r));
    }
}

static void add_masses(gb_builder *b, const gb_mix *mix, const gb_recipe *r) {
    gb_mass wet = gb_wet_mass(r);
    if (mix->part_count > 0)
        add_volumes(b, mix);
    GB_ADD_BARE(b, PARTS_HEAD);
    if (mix->part_count > 0) {
        add_parts(b, mix, r);
        add_powders(b, mix, r);
    } else {
        GB_ADD(b, BLEND_LINE, gb_num("mass", GB_SHOW_MASS, r->bag.kg), in_wet(r->bag, r));
    }
    GB_ADD(b, WATER_LINE, of_dry(r->water_usual.kg, r),
           gb_num("mass", GB_SHOW_MASS, r->water_usual.kg), in_wet(r->water_usual, r));
    GB_ADD(b, WET_LINE, gb_num("mass", GB_SHOW_MASS, wet.kg), in_wet(wet, r));
}

/* ---- water ----------------------------------------------------------------------- */

/* The three water figures over the mass that they are compared with. Never past is
   rounded down, and the others with it where they could overtake it. */
typedef struct ratios {
    double kg;
    gb_show show;
    double step; /* of what is shown */
} ratios;

static void add_ratios(gb_builder *b, gb_row_code code, const gb_recipe *r,
                       const ratios *to) {
    double most = r->water_most.kg / to->kg;
    double usual = r->water_usual.kg / to->kg;
    gb_figure figures[] = {
        gb_num("least", to->show, r->water_least.kg / to->kg),
        gb_num("usual", to->show, usual),
        gb_num_down("most", to->show, most),
    };
    if (most - usual < to->step)
        figures[0].rounding = figures[1].rounding = GB_DOWN;
    gb_add_row(b, code, figures, sizeof figures / sizeof figures[0]);
}

static void add_limits(gb_builder *b, const gb_mix *mix, const gb_recipe *r) {
    const ratios to_binder = {r->binder.kg, GB_SHOW_NUMBER, 0.01};
    const ratios to_dry = {r->dry.kg, GB_SHOW_SHARE, 0.001};
    gb_add_water_in_all(b, mix, r);
    if (mix->part_count > 0)
        add_ratios(b, GB_ROW_WATER_TO_BINDER, r, &to_binder);
    else
        add_ratios(b, GB_ROW_WATER_TO_BLEND, r, &to_dry);
    gb_add_replaced(b, mix);
    if (r->sand.kg > 0)
        GB_ADD_BARE(b, WATER_OF_SAND);
}

/* ---- what it makes and covers ------------------------------------------------------ */

static void add_yield(gb_builder *b, const gb_recipe *r) {
    gb_volume volume = gb_compared_volume(b->style.system);
    GB_ADD(b, YIELD, gb_num("yield", GB_SHOW_VOLUME, r->yield.m3),
           gb_row_fig(b, "route", gb_route_row(b, r)));
    GB_ADD(b, PER_VOLUME, gb_num("volume", GB_SHOW_PACK, volume.m3),
           gb_num("bags", GB_SHOW_NUMBER, volume.m3 / r->yield.m3));
}

static void add_cover(gb_builder *b, const gb_recipe *r, const gb_cover *at) {
    b->about.cover = at;
    gb_figure kind = gb_row_fig(b, "kind", gb_kind_row(b, at->kind));
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, at->depth.m);
    if (isnan(at->width.m))
        GB_ADD(b, COVER_AREA, kind, depth,
               gb_num("area", GB_SHOW_AREA, gb_area_covered(r->yield, at).m2));
    else
        GB_ADD(b, COVER_JOINT, kind, gb_num("width", GB_SHOW_LENGTH, at->width.m), depth,
               gb_num("length", GB_SHOW_RUN, gb_joint_covered(r->yield, at).m));
}

static void add_coverage(gb_builder *b, const gb_mix *mix, const gb_recipe *r) {
    const gb_cover *list = NULL;
    size_t count = gb_common_covers(b->style.system, &list);
    bool any = false;
    for (size_t i = 0; i < count; i++) {
        if (!(mix->uses & (1u << list[i].kind)))
            continue;
        if (!any)
            GB_ADD_BARE(b, COVERAGE);
        any = true;
        add_cover(b, r, &list[i]);
    }
}

void gb_add_reference(gb_builder *b, const gb_mix_question *q) {
    b->about = (gb_about){.question = q, .amount = GB_ONE_BAG};
    GB_ADD(b, REFERENCE, gb_txt("id", q->mix->id));
    GB_ADD(b, FILLS, gb_uses_fig(b, q->mix->uses));
    add_masses(b, q->mix, &q->recipe);
    add_limits(b, q->mix, &q->recipe);
    add_yield(b, &q->recipe);
    add_coverage(b, q->mix, &q->recipe);
    gb_end_block(b);
}
