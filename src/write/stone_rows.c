#include "write/stone_rows.h"

#include <math.h>

/* What lies on a bed of mortar bears all over. */
static bool is_long(const gb_piece *p, const gb_stone_size *s) {
    for (size_t i = 0; i < p->layer_count; i++)
        if (p->layers[i].kind == GB_BED)
            return false;
    return gb_over(s->blank_length.m, gb_long_stone().m);
}

/* The blank as it comes, at the most that such stone weighs. */
static void add_lifted(gb_builder *b, const gb_stone_take *take) {
    gb_mass allowed = gb_lift_allowed(&b->about.plan->job->lift);
    gb_figure lifted = gb_num_up("lifted", GB_SHOW_MASS, take->size.lifted.kg);
    if (gb_over(take->size.lifted.kg, allowed.kg))
        GB_ADD(b, LIFT_OVER, gb_txt("piece", take->piece->name), lifted,
               gb_num_down("allowed", GB_SHOW_MASS, allowed.kg));
    else
        GB_ADD(b, LIFT_WITHIN, lifted,
               gb_num_up("share", GB_SHOW_SHARE, take->size.lifted.kg / allowed.kg));
}

/* What the machine may lift, and whose word that is. */
static void add_machine(gb_builder *b, const gb_lift *l) {
    gb_figure allowed = gb_num_down("allowed", GB_SHOW_MASS, gb_lift_allowed(l).kg);
    gb_figure capacity = gb_num("capacity", GB_SHOW_MASS, l->capacity.kg);
    gb_figure gear = gb_num("attachment", GB_SHOW_MASS, l->attachment.kg);
    gb_figure margin = gb_num("margin", GB_SHOW_RATIO, l->margin);
    if (isnan(l->reach.m))
        GB_ADD(b, LIFT_ALLOWED, allowed, capacity, gear, margin);
    else
        GB_ADD(b, LIFT_ALLOWED_AT, allowed, capacity,
               gb_num("reach", GB_SHOW_LENGTH, l->reach.m), gear, margin);
    if (!isnan(l->rated.kg))
        GB_ADD(b, LIFT_RATED, gb_num("rated", GB_SHOW_MASS, l->rated.kg));
    double off = 1.0 - gb_lift_left(l).of_one;
    if (gb_over(off, 0))
        GB_ADD(b, LIFT_DERATED, gb_num("off", GB_SHOW_SHARE, off));
    GB_ADD_BARE(b, LIFT_CARE);
}

static void add_stone(gb_builder *b, const gb_stone_take *take) {
    const gb_piece *p = take->piece;
    const gb_stone_size *s = &take->size;
    b->about.piece = p;
    b->about.stone = take;
    GB_ADD(b, STONE_LINE, gb_txt("piece", p->name),
           gb_num("ordered", GB_SHOW_COUNT, s->ordered),
           gb_num("length", GB_SHOW_LENGTH, s->blank_length.m),
           gb_num("width", GB_SHOW_LENGTH, s->blank_width.m),
           gb_num("thickness", GB_SHOW_LENGTH, p->stone.thickness.m),
           gb_num("freight", GB_SHOW_MASS, s->freight.kg));
    GB_ADD(b, STONE_COUNT, gb_words_fig(b, "stone", &p->stone.stone->title),
           gb_num("set", GB_SHOW_COUNT, (double)p->count),
           gb_num("spare", GB_SHOW_COUNT, (double)p->stone.spare),
           gb_num("broken", GB_SHOW_COUNT, s->broken));
    GB_ADD(b, STONE_CUT, gb_num("net", GB_SHOW_AREA, s->net.m2),
           gb_num("blank", GB_SHOW_AREA, s->blank.m2),
           gb_num("cut", GB_SHOW_SHARE, s->cut_away.of_one),
           gb_num("typical", GB_SHOW_MASS, s->typical.kg),
           gb_num("most", GB_SHOW_MASS, s->most.kg));
    if (gb_over(s->most.kg, gb_two_lift().kg))
        GB_ADD(b, STONE_LIFT, gb_num("limit", GB_SHOW_MASS, gb_two_lift().kg));
    if (is_long(p, s))
        GB_ADD(b, STONE_LONG, gb_num("limit", GB_SHOW_LENGTH, gb_long_stone().m));
    if (b->about.plan->job->lift.at.line != 0)
        add_lifted(b, take);
}

void gb_add_stones(gb_builder *b, const gb_plan *plan) {
    double all = 0;
    if (plan->stone_count == 0)
        return;
    GB_ADD_BARE(b, STONES_TITLE);
    for (size_t i = 0; i < plan->stone_count; i++) {
        add_stone(b, &plan->stones[i]);
        all += plan->stones[i].size.freight.kg;
    }
    if (plan->job->lift.at.line != 0)
        add_machine(b, &plan->job->lift);
    GB_ADD(b, STONE_FREIGHT, gb_num("freight", GB_SHOW_MASS, all));
    gb_end_block(b);
}
