#include "write/steps_rows.h"

#include "gaugebox/count.h"

/* One level, and which step it is of. */
static void add_mark(gb_builder *b, gb_row mark, double m) {
    const gb_steps *s = b->about.steps;
    if (isnan(m))
        return;
    double height = m - s->bench.m;
    gb_figure run =
        gb_txt("run", b->about.run); /* for programs: a sheet may hold several */
    gb_figure what = gb_row_fig(b, "mark", mark);
    gb_figure up = gb_num("height", GB_SHOW_INCHES, height);
    gb_figure up_mm = gb_num("mm", GB_SHOW_MM, height);
    if (isnan(s->laser.m))
        GB_ADD(b, POLE_MARK, what, run, up, up_mm);
    else
        GB_ADD(b, POLE_MARK_STAFF, what, run, up, up_mm,
               gb_num("staff", GB_SHOW_INCHES, s->laser.m - height),
               gb_num("staff_mm", GB_SHOW_MM, s->laser.m - height));
}

#define ADD_STEP(b, code, i, m)                                                          \
    add_mark((b), GB_MAKE((b), code, gb_num("n", GB_SHOW_COUNT, (double)(i) + 1.0)), (m))

static void add_step(gb_builder *b, size_t i) {
    const gb_layout *l = b->about.layout;
    const gb_steps *s = b->about.steps;
    gb_step st;
    if (gb_lay_step(s, l, i, &st) != GB_OK)
        return; /* a slab and bed that leave no room are told above */
    b->about.step = i;
    if (st.build_up.m > 0)
        ADD_STEP(b, MARK_BUILT_UP, i, st.block_top.m);
    else
        ADD_STEP(b, MARK_BLOCK, i, st.block_top.m);
    if (s->build == GB_SOLID_STEPS)
        ADD_STEP(b, MARK_SEAT, i, st.bed_top.m);
    else
        ADD_STEP(b, MARK_BED, i, st.bed_top.m);
    if (i + 1 == l->count && s->upper == GB_UPPER_LANDING) {
        ADD_STEP(b, MARK_LANDING_FRONT, i, st.front.m);
        ADD_STEP(b, MARK_LANDING_BACK, i, st.back.m);
        return;
    }
    ADD_STEP(b, MARK_FRONT, i, st.front.m);
    if (l->term.m > 0)
        ADD_STEP(b, MARK_BACK, i, st.back.m);
}

/* What lies below the finished foot; the base of solid stone follows the first one. */
static void add_below(gb_builder *b) {
    const gb_steps *s = b->about.steps;
    if (s->build == GB_SOLID_STEPS) {
        double seat = b->about.layout->first.m - s->stone.m;
        b->about.step = 0;
        if (s->base.m > 0)
            add_mark(b, GB_MAKE_BARE(b, MARK_BASE_DRY), seat - s->base.m);
        return;
    }
    if (s->base.m > 0)
        add_mark(b, GB_MAKE_BARE(b, MARK_BASE), -s->footing.m - s->base.m);
    if (s->footing.m > 0 || s->base.m > 0)
        add_mark(b, GB_MAKE_BARE(b, MARK_FOOTING), -s->footing.m);
}

/* True when a level lies above the beam: its reading is below nothing. */
static bool above_beam(const gb_steps *s, const gb_layout *l) {
    return gb_over(l->climb.m - s->bench.m, s->laser.m);
}

void gb_add_pole(gb_builder *b) {
    const gb_layout *l = b->about.layout;
    const gb_steps *s = b->about.steps;
    GB_ADD_BARE(b, POLE_TITLE);
    if (s->bench.m > 0)
        GB_ADD(b, POLE_BENCH, gb_num("bench", GB_SHOW_LENGTH, s->bench.m));
    if (isnan(s->laser.m)) {
        GB_ADD_BARE(b, POLE_HEAD);
    } else {
        GB_ADD(b, POLE_BEAM, gb_num("laser", GB_SHOW_LENGTH, s->laser.m));
        GB_ADD_BARE(b, POLE_HEAD_STAFF);
    }
    add_below(b);
    add_mark(b, GB_MAKE_BARE(b, MARK_FOOT), 0);
    for (size_t i = 0; i < l->count; i++)
        add_step(b, i);
    if (s->sill.m > 0)
        add_mark(b, GB_MAKE_BARE(b, MARK_SILL), l->climb.m);
    if (above_beam(s, l))
        GB_ADD_BARE(b, POLE_ABOVE);
    gb_end_block(b);
}
