#include "write/gauge_rows.h"
#include "write/layer_rows.h"
#include "write/loose_rows.h"
#include "write/steps_rows.h"
#include "write/stone_rows.h"

#include <math.h>

static void add_piece(gb_builder *b, const gb_piece *p) {
    b->about.piece = p;
    double n = (double)p->count;
    gb_figure name = gb_txt("name", p->name);
    gb_figure count = gb_num("count", GB_SHOW_COUNT, n);
    gb_plan_size size;
    if (!gb_has_shape(&p->shape) || gb_piece_size(p, &size) != GB_OK) {
        GB_ADD(b, PIECE_UNSIZED, name, count);
        return;
    }
    gb_figure length = gb_num("length", GB_SHOW_LENGTH, size.blank_length.m);
    gb_figure width = gb_num("width", GB_SHOW_LENGTH, size.blank_width.m);
    if (p->shape.kind == GB_RECTANGLE)
        GB_ADD(b, PIECE, name, count, length, width);
    else
        GB_ADD(b, PIECE_SHAPED, name, count,
               gb_row_fig(b, "shape", gb_shape_row(b, p->shape.kind)), length, width);
    GB_ADD(b, AREA, gb_num("each", GB_SHOW_AREA, size.net.m2),
           gb_num("all", GB_SHOW_AREA, size.net.m2 * n),
           gb_num("bedded", GB_SHOW_AREA, size.bedded.m2 * n));
    GB_ADD(b, EDGES, gb_num("front", GB_SHOW_LENGTH, size.front.m),
           gb_num("perimeter", GB_SHOW_LENGTH, size.perimeter.m));
}

static void add_layer(gb_builder *b, const gb_take *t) {
    b->about.take = t;
    gb_figure kind = gb_row_fig(b, "kind", gb_kind_row(b, t->layer->kind));
    gb_figure mix = gb_txt("mix", t->layer->mix.text);
    gb_figure net = gb_num("net", GB_SHOW_VOLUME_FINE, t->net.m3);
    gb_figure piece = gb_txt("piece", t->piece->name);
    gb_figure count = gb_num("count", GB_SHOW_COUNT, t->units);
    if (isnan(t->depth.m))
        GB_ADD(b, LAYER_VOLUME, piece, count, kind, mix, net);
    else
        GB_ADD(b, LAYER_LAID, piece, count, kind, mix,
               gb_num("depth", GB_SHOW_LENGTH, t->depth.m), net);
    if (t->layer->kind == GB_SLURRY && t->layer->faces == GB_BOTH_FACES)
        GB_ADD_BARE(b, LAYER_BOTH);
    gb_add_depths(b, t);
    gb_add_blocks(b, t);
}

static void add_pieces(gb_builder *b, const gb_plan *plan) {
    GB_ADD_BARE(b, TAKEOFF_TITLE);
    GB_ADD(b, SITE, gb_txt("name", plan->job->site.name));
    GB_ADD(b, PLAN, gb_number_fig(b, "number", plan->digest));
    size_t t = 0;
    size_t l = 0;
    for (size_t i = 0; i < plan->job->piece_count; i++) {
        const gb_piece *piece = &plan->job->pieces[i];
        add_piece(b, piece);
        gb_add_run(b, piece);
        for (; t < plan->take_count && plan->takes[t].piece == piece; t++)
            add_layer(b, &plan->takes[t]);
        for (; l < plan->loose_count && plan->loose[l].piece == piece; l++)
            gb_add_loose(b, &plan->loose[l]);
    }
    gb_end_block(b);
}

static void add_need(gb_builder *b, const gb_mix_plan *p, gb_lying lying) {
    const gb_need *n = &p->need;
    b->about.mix = p;
    b->about.amount = GB_ALL_OF_IT;
    b->about.moisture = lying.moisture;
    GB_ADD(b, NEED_LINE, gb_txt("mix", n->mix->id));
    GB_ADD(b, NEED_NET, gb_num("net", GB_SHOW_VOLUME_FINE, n->net.m3),
           gb_num("waste", GB_SHOW_SHARE, n->waste.of_one),
           gb_num("gross", GB_SHOW_VOLUME_FINE, n->gross.m3));
    gb_add_spread(b, n, GB_SHOW_VOLUME_FINE);
    if (p->is_slurry) {
        GB_ADD(b, NEED_POT, gb_pot_parts_fig(b, n->mix, &p->recipe, n->bags, lying),
               gb_num("water", GB_SHOW_POT_WATER, gb_water_used(p, lying.moisture).kg));
        gb_add_need_spread(b, p);
        return;
    }
    GB_ADD(b, NEED_BAGS, gb_num("bags", GB_SHOW_NUMBER, n->bags),
           gb_num("bag", GB_SHOW_MASS, p->recipe.bag.kg),
           gb_num("yield", GB_SHOW_VOLUME, p->recipe.yield.m3),
           gb_num("whole", GB_SHOW_COUNT, gb_round(gb_bags_used(p), 1, GB_UP)));
    gb_add_need_spread(b, p);
    gb_add_sureness(b, n, b->about.plan->job->sure);
}

static void add_supply(gb_builder *b, const gb_supply_need *s) {
    b->about.supply = s;
    gb_figure material = gb_words_fig(b, "material", gb_supply_title(s));
    gb_figure mass = gb_num("mass", GB_SHOW_MASS, s->lying.kg);
    if (!isnan(s->pack.kg))
        GB_ADD(b, SUPPLY_BAGS, material, mass,
               gb_num("packs", GB_SHOW_COUNT, gb_supply_packs(s)),
               gb_num("pack", GB_SHOW_MASS, s->pack.kg));
    else if (s->material != NULL &&
             (s->material->kind == GB_SAND || s->material->kind == GB_COARSE))
        GB_ADD(b, SUPPLY_LOOSE, material, mass,
               gb_num("volume", GB_SHOW_VOLUME, s->loose.m3));
    else if (s->material != NULL && s->material->kind > GB_CARBON_BLACK)
        GB_ADD(b, SUPPLY_LIQUID, material, mass,
               gb_num("volume", GB_SHOW_LIQUID, s->loose.m3));
    else
        GB_ADD(b, SUPPLY_MASS, material, mass);
}

/* Each kind of layer over all pieces. */
static void add_totals(gb_builder *b, const gb_plan *plan) {
    if (plan->take_count == 0)
        return;
    GB_ADD_BARE(b, TOTALS_TITLE);
    for (gb_layer_kind kind = 0; kind < GB_LAYER_KINDS; kind++) {
        double net = 0;
        for (size_t i = 0; i < plan->take_count; i++)
            if (plan->takes[i].layer->kind == kind)
                net += plan->takes[i].net.m3;
        b->about.kind = kind;
        if (net > 0)
            GB_ADD(b, LAYER_TOTAL, gb_row_fig(b, "kind", gb_kind_row(b, kind)),
                   gb_num("net", GB_SHOW_VOLUME_FINE, net));
    }
    gb_end_block(b);
}

static void add_needs(gb_builder *b, const gb_plan *plan) {
    GB_ADD_BARE(b, NEEDS_TITLE);
    for (size_t i = 0; i < plan->mix_count; i++)
        add_need(b, &plan->mixes[i], gb_job_lying(plan->job));
    gb_end_block(b);
}

gb_status gb_takeoff_sheet(const gb_plan *plan, gb_style style, gb_arena *arena,
                           gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    b.about.plan = plan;
    add_pieces(&b, plan);
    gb_add_stones(&b, plan);
    add_totals(&b, plan);
    if (plan->mix_count > 0)
        add_needs(&b, plan);
    GB_ADD_BARE(&b, SUPPLIES_TITLE);
    for (size_t i = 0; i < plan->supply_count; i++)
        add_supply(&b, &plan->supplies[i]);
    for (size_t i = 0; i < plan->take_count; i++)
        gb_add_block_supply(&b, &plan->takes[i]);
    if (plan->mix_count > 0)
        GB_ADD(&b, TOTAL_WATER,
               gb_num("water", GB_SHOW_WATER, plan->water.m3 * GB_WATER_KG_M3));
    gb_end_block(&b);
    return gb_finish_sheet(&b, "takeoff", sheet);
}
