#include "write/steps_rows.h"

#include "gaugebox/count.h"

gb_length gb_tape(gb_system system) {
    return (gb_length){system == GB_US ? 0.0254 / 16.0 : 0.001};
}

/* A fine length; what is zero but for the last bits is zero. */
static gb_figure fine(const char *name, gb_length length) {
    return gb_num(name, GB_SHOW_LENGTH_FINE, length.m);
}

static gb_figure tape(const char *name, gb_length length) {
    return gb_num(name, GB_SHOW_LENGTH, length.m);
}

static gb_figure others(const gb_layout *l) {
    return gb_num("others", GB_SHOW_COUNT, (double)(l->count - 1));
}

static bool closes(gb_length error) {
    return !gb_over(fabs(error.m), 0);
}

static void add_stones(gb_builder *b, const gb_layout *l) {
    GB_ADD(b, RUN_STONES, fine("first", l->first), others(l), fine("face", l->face));
    if (gb_over(l->buried.m, 0))
        GB_ADD(b, RUN_BURIED, fine("buried", l->buried));
    if (gb_over(l->error.m, 0))
        GB_ADD(b, RUN_SHORT, fine("short", l->error));
}

void gb_add_faces(gb_builder *b) {
    const gb_layout *l = b->about.layout;
    if (b->about.steps->build == GB_SOLID_STEPS)
        add_stones(b, l);
    else
        GB_ADD(b, RUN_FACES, fine("first", l->first), others(l), fine("face", l->face));
    if (l->term.m > 0)
        GB_ADD(b, RUN_TERM, fine("term", l->term));
    if (b->about.steps->build == GB_SOLID_STEPS)
        return;
    gb_figure first = tape("first", l->set_first);
    gb_figure face = tape("face", l->set_face);
    if (closes(l->set_error))
        GB_ADD(b, RUN_SET_CLOSES, first, face);
    else
        GB_ADD(b, RUN_SET, first, face, fine("error", l->set_error));
}

void gb_add_risers(gb_builder *b) {
    const gb_layout *l = b->about.layout;
    gb_figure riser = fine("riser", l->riser);
    if (closes(gb_risers_differ(l)))
        GB_ADD(b, RUN_ALIKE, gb_num("count", GB_SHOW_COUNT, (double)l->count), riser);
    else
        GB_ADD(b, RUN_RISERS, fine("first", l->first), others(l), riser,
               fine("differ", gb_risers_differ(l)));
    gb_figure climb = tape("climb", l->climb);
    if (closes(l->error))
        GB_ADD(b, RUN_CLOSES, climb);
    else
        GB_ADD(b, RUN_CLIMB, climb, fine("error", l->error));
    if (l->behind.m > 0)
        GB_ADD(b, RUN_BEHIND, fine("behind", l->behind));
}

void gb_add_order(gb_builder *b) {
    const gb_layout *l = b->about.layout;
    const gb_steps *s = b->about.steps;
    GB_ADD(b, RUN_TREADS, gb_num("treads", GB_SHOW_COUNT, (double)l->treads),
           tape("going", l->going), tape("length", l->length));
    if (s->overhang.m > 0 || s->overlap.m > 0)
        GB_ADD(b, RUN_ORDER, tape("depth", l->depth), tape("overhang", s->overhang),
               tape("overlap", s->overlap));
}

void gb_add_run(gb_builder *b, const gb_piece *piece) {
    const gb_steps *s = &piece->run;
    gb_layout *layout = gb_arena_take(b->arena, 1, sizeof *layout);
    if (s->at.line == 0 || layout == NULL) {
        b->failed = b->failed || layout == NULL;
        return;
    }
    if (gb_lay_steps(s, s->count, s->evened, gb_tape(b->style.system), layout) != GB_OK)
        return; /* a job is planned only when its runs can be laid */
    b->about.steps = s;
    b->about.run = piece->name;
    b->about.layout = layout;
    gb_add_risers(b);
    gb_add_faces(b);
    gb_add_order(b);
    size_t missed = gb_rules_missed(GB_IRC, s, layout);
    if (missed > 0)
        GB_ADD(b, RUN_IRC_FAILS, gb_num("n", GB_SHOW_COUNT, (double)missed));
}
