#include "write/steps_rows.h"

#include "gaugebox/count.h"

#include <string.h>

/* One sign is as wide as one line is high on the drawing, so that both can be counted
   off; on paper a line is about twice as high, and the drawing stands steeper than the
   steps.
 */
enum { MOST_ACROSS = 76, MOST_DOWN = 60 };

typedef struct drawing {
    const gb_steps *steps;
    const gb_layout *layout;
    double scale;       /* m to a sign */
    double left, right; /* m from the first nosing */
    double top, bottom; /* m above the foot */
    double base;        /* bottom of the base */
    size_t across, down;
} drawing;

/* Behind the last nosing: its landing as far as it is known, or one tread. */
static double end_of(const gb_steps *s, const gb_layout *l) {
    double nosings = (double)(l->count - 1) * l->going.m;
    bool known = s->upper == GB_UPPER_LANDING && s->landing.m < 3.0 * l->going.m;
    return nosings + (known ? s->landing.m : l->going.m);
}

static double depth_below(const gb_steps *s, const gb_layout *l) {
    return s->base.m + (s->build == GB_SOLID_STEPS ? l->buried.m : s->footing.m);
}

/* The finest of a few round scales at which all of it fits. */
static void choose_scale(drawing *d, gb_system system) {
    static const double INCHES[] = {0.25, 0.5, 1,  1.5, 2,  3,  4,
                                    6,    8,   12, 24,  48, 96, 200};
    static const double METRES[] = {0.005, 0.01, 0.02, 0.025, 0.05, 0.1,
                                    0.2,   0.25, 0.5,  1,     2,    5};
    size_t count = system == GB_US ? sizeof INCHES / sizeof INCHES[0]
                                   : sizeof METRES / sizeof METRES[0];
    for (size_t i = 0; i < count; i++) {
        d->scale = system == GB_US ? INCHES[i] * 0.0254 : METRES[i];
        double across = gb_round((d->right - d->left) / d->scale, 1, GB_UP);
        double down = gb_round((d->top - d->bottom) / d->scale, 1, GB_UP);
        d->across = (size_t)across;
        d->down = (size_t)down;
        if (across <= MOST_ACROSS && down <= MOST_DOWN)
            return;
    }
}

/* The base, and the ground below it. */
static char below(const drawing *d, double y) {
    if (y > d->base)
        return 'o';
    return '.';
}

/* What stands at a point of step i of a slabbed run: x behind its nosing, y above the
   foot. In front of its block lies what the step below has there; a riser block that
   stands on a tread bears on the back of its slab. */
static char in_slabs(const drawing *d, size_t i, double x, double y) {
    const gb_steps *s = d->steps;
    gb_step st;
    if (gb_lay_step(s, d->layout, i, &st) != GB_OK)
        return ' ';
    double surface = st.front.m + s->pitch.of_run * x;
    double slab = isnan(s->slab.m) ? d->scale : s->slab.m;
    double bears = s->build == GB_ON_TREADS ? s->overlap.m : 0;
    if (y > surface)
        return ' ';
    if (y > surface - slab)
        return '#';
    if (i > 0 && x < s->overhang.m)
        return in_slabs(d, i - 1, x + d->layout->going.m, y);
    if (x < s->overhang.m)
        return ' ';
    if (y > st.block_top.m)
        return ':';
    if (i > 0 && x < s->overhang.m + bears &&
        in_slabs(d, i - 1, x + d->layout->going.m, y) == '#')
        return '#';
    if (y > -s->footing.m)
        return '%';
    return below(d, y);
}

/* Solid stone: the one of this step, or the back of the one below that it bears on. */
static char in_stone(const drawing *d, size_t i, double x, double y) {
    const gb_steps *s = d->steps;
    gb_step st;
    if (gb_lay_step(s, d->layout, i, &st) != GB_OK)
        return ' ';
    double surface = st.front.m + s->pitch.of_run * x;
    if (y > surface)
        return ' ';
    if (y > surface - s->stone.m)
        return '#';
    if (i > 0 && x < s->overlap.m && in_stone(d, i - 1, x + d->layout->going.m, y) == '#')
        return '#';
    return below(d, y);
}

static char at_point(const drawing *d, double x, double y) {
    size_t i = 0;
    char c = ' ';
    if (x >= 0 && gb_count_down(x, d->layout->going.m, &i) == GB_OK) {
        i = i < d->layout->count ? i : d->layout->count - 1;
        double behind = x - (double)i * d->layout->going.m;
        if (d->steps->build == GB_SOLID_STEPS)
            c = in_stone(d, i, behind, y);
        else
            c = in_slabs(d, i, behind, y);
    }
    if (c == ' ' && y < 0)
        return '.';
    return c;
}

static void add_line(gb_builder *b, const drawing *d, size_t row) {
    char art[MOST_ACROSS + 1];
    double y = d->top - ((double)row + 0.5) * d->scale;
    size_t last = 0;
    for (size_t i = 0; i < d->across; i++) {
        art[i] = at_point(d, d->left + ((double)i + 0.5) * d->scale, y);
        if (art[i] != ' ')
            last = i + 1;
    }
    art[last] = '\0';
    const char *copy = gb_arena_copy(b->arena, art);
    b->failed = b->failed || copy == NULL;
    if (copy != NULL && last > 0)
        GB_ADD(b, SECTION_LINE, gb_mark("art", copy));
}

void gb_add_section(gb_builder *b) {
    const gb_steps *s = b->about.steps;
    const gb_layout *l = b->about.layout;
    drawing d = {.steps = s, .layout = l};
    d.left = -l->going.m / 2.0;
    d.right = end_of(s, l);
    d.top = l->climb.m;
    d.bottom = d.base = -depth_below(s, l);
    choose_scale(&d, b->style.system);
    GB_ADD(b, SECTION_TITLE, gb_num("scale", GB_SHOW_LENGTH, d.scale));
    for (size_t row = 0; row < d.down; row++)
        add_line(b, &d, row);
    if (s->build == GB_SOLID_STEPS)
        GB_ADD_BARE(b, SECTION_SOLID);
    else
        GB_ADD_BARE(b, SECTION_SLABS);
    gb_end_block(b);
}
