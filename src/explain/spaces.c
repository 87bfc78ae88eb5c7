#include "explain/chains.h"

#include <math.h>

/* Layers whose volume is more than an area times one depth. */

static const gb_why *length(gb_explainer *x, const gb_take *t, const char *name,
                            const gb_length *at) {
    return gb_stated(x, name, t->piece->name, GB_LENGTH, &at->m, NULL);
}

/* ---- joints ------------------------------------------------------------------------ */

static const gb_why *flag_share(gb_explainer *x, const gb_take *t) {
    const gb_layer *l = t->layer;
    return GB_WHY(x, "joint_share", GB_SHARE,
                  gb_joint_share(l->flag[0], l->flag[1], l->joint_width).of_one,
                  "1 - flag_length * flag_width / ((flag_length + joint_width) * "
                  "(flag_width + joint_width))",
                  GB_INPUTS(length(x, t, "flag_length", &l->flag[0]),
                            length(x, t, "flag_width", &l->flag[1]),
                            length(x, t, "joint_width", &l->joint_width)),
                  .of = t->piece->name);
}

const gb_why *gb_why_joint_rate(gb_explainer *x, const gb_take *t) {
    return gb_stated(x, "joint_rate", t->piece->name, GB_JOINT_RATE,
                     &t->layer->joint_rate.m_m2, NULL);
}

const gb_why *gb_why_joint_share(gb_explainer *x, const gb_take *t) {
    if (gb_joint_way_of(t->layer) == GB_JOINT_BY_FLAG)
        return flag_share(x, t);
    return gb_stated(x, "joint_share", t->piece->name, GB_SHARE,
                     &t->layer->joint_share.of_one, NULL);
}

const gb_why *gb_why_flag(gb_explainer *x, const gb_take *t, size_t side) {
    return length(x, t, side == 0 ? "flag_length" : "flag_width", &t->layer->flag[side]);
}

const gb_why *gb_why_joint(gb_explainer *x, const gb_take *t) {
    const gb_layer *l = t->layer;
    const char *of = t->piece->name;
    const gb_why *depth = gb_why_depth(x, t);
    if (gb_joint_way_of(l) == GB_JOINT_BY_LENGTH)
        return GB_WHY(x, "each", GB_VOLUME, t->each.m3,
                      "joint_length * joint_width * depth",
                      GB_INPUTS(length(x, t, "joint_length", &l->joint_length),
                                length(x, t, "joint_width", &l->joint_width), depth),
                      .of = of);
    const gb_why *area = gb_why_area(x, t->piece);
    if (gb_joint_way_of(l) == GB_JOINT_BY_RATE)
        return GB_WHY(x, "each", GB_VOLUME, t->each.m3,
                      "area * joint_rate * joint_width * depth",
                      GB_INPUTS(area, gb_why_joint_rate(x, t),
                                length(x, t, "joint_width", &l->joint_width), depth),
                      .of = of);
    return GB_WHY(x, "each", GB_VOLUME, t->each.m3, "area * joint_share * depth",
                  GB_INPUTS(area, gb_why_joint_share(x, t), depth), .of = of);
}

/* ---- parge ------------------------------------------------------------------------- */

const gb_why *gb_why_parged(gb_explainer *x, const gb_take *t) {
    const gb_layer *l = t->layer;
    if (l->face_area.m2 > 0)
        return gb_stated(x, "face", t->piece->name, GB_AREA, &l->face_area.m2, NULL);
    return GB_WHY(x, "face", GB_AREA, gb_parged_face(l).m2, "face_length * face_height",
                  GB_INPUTS(length(x, t, "face_length", &l->face[0]),
                            length(x, t, "face_height", &l->face[1])),
                  .of = t->piece->name);
}

const gb_why *gb_why_parge(gb_explainer *x, const gb_take *t) {
    return GB_WHY(x, "each", GB_VOLUME, t->each.m3, "face * depth",
                  GB_INPUTS(gb_why_parged(x, t), gb_why_depth(x, t)),
                  .of = t->piece->name);
}

/* ---- block ------------------------------------------------------------------------- */

/* A wall and whose it is. */
typedef struct walled {
    const gb_wall *wall;
    const char *of;
} walled;

static walled wall_of(const gb_take *t) {
    const gb_layer *l = t->layer->kind == GB_BLOCK ? t->layer : gb_block_layer(t->piece);
    static const gb_wall NONE = {.courses = 0};
    return (walled){l == NULL ? &NONE : &l->wall, t->piece->name};
}

static const gb_why *wall_size(gb_explainer *x, walled w, const char *name,
                               const gb_length *at) {
    return gb_stated(x, name, w.of, GB_LENGTH, &at->m, NULL);
}

static const gb_why *block_length(gb_explainer *x, walled w) {
    return wall_size(x, w, "block_length", &w.wall->nominal[0]);
}

static const gb_why *block_height(gb_explainer *x, walled w) {
    return wall_size(x, w, "block_height", &w.wall->nominal[1]);
}

static const gb_why *block_width(gb_explainer *x, walled w) {
    return wall_size(x, w, "block_width", &w.wall->width);
}

static const gb_why *block_joint(gb_explainer *x, walled w) {
    return wall_size(x, w, "joint", &w.wall->joint);
}

static const gb_why *wall_length(gb_explainer *x, walled w) {
    const gb_why *outside = wall_size(x, w, "length", &w.wall->length);
    if (w.wall->corners == 0)
        return outside;
    return GB_WHY(x, "wall_length", GB_LENGTH, gb_wall_length(w.wall).m,
                  "length - corners * (block_width + joint)",
                  GB_INPUTS(outside,
                            gb_stated_count(x, "corners", w.of, &w.wall->corners),
                            block_width(x, w), block_joint(x, w)),
                  .of = w.of);
}

/* The name that the length has in a formula. */
static const char *by_corners(walled w, const char *without, const char *with) {
    return w.wall->corners == 0 ? without : with;
}

static const gb_why *wall_height(gb_explainer *x, walled w) {
    if (w.wall->courses == 0)
        return wall_size(x, w, "height", &w.wall->height);
    return GB_WHY(x, "height", GB_LENGTH, gb_wall_height(w.wall).m,
                  "courses * block_height",
                  GB_INPUTS(gb_stated_count(x, "courses", w.of, &w.wall->courses),
                            block_height(x, w)),
                  .of = w.of);
}

static const gb_why *openings(gb_explainer *x, walled w) {
    return gb_stated(x, "openings", w.of, GB_AREA, &w.wall->openings.m2, NULL);
}

static gb_blocks blocks_of(walled w) {
    gb_blocks b = {.courses = 0};
    (void)!gb_lay_out(w.wall, &b); /* a plan has only walls that can be laid out */
    return b;
}

static const gb_why *face(gb_explainer *x, walled w) {
    return GB_WHY(
        x, "face", GB_AREA, blocks_of(w).face.m2,
        by_corners(w, "length * height - openings", "wall_length * height - openings"),
        GB_INPUTS(wall_length(x, w), wall_height(x, w), openings(x, w)), .of = w.of);
}

static const gb_why *courses(gb_explainer *x, walled w) {
    return GB_WHY(x, "courses", GB_PLAIN, blocks_of(w).courses,
                  "up(height / block_height, 1)",
                  GB_INPUTS(wall_height(x, w), block_height(x, w)), .of = w.of);
}

static const gb_why *per_course(gb_explainer *x, walled w) {
    return GB_WHY(x, "halves", GB_PLAIN, blocks_of(w).per_course,
                  by_corners(w, "up(2 * length / block_length, 1)",
                             "up(2 * wall_length / block_length, 1)"),
                  GB_INPUTS(wall_length(x, w), block_length(x, w)), .of = w.of);
}

/* The one half block more is that of the odd course. */
static const gb_why *half(gb_explainer *x, walled w) {
    gb_blocks b = blocks_of(w);
    double pairs = floor(b.courses / 2.0) * (double)w.wall->ends;
    return GB_WHY(
        x, "half", GB_PLAIN, b.half,
        b.half > pairs ? "ends * down(courses / 2, 1) + 1"
                       : "ends * down(courses / 2, 1)",
        GB_INPUTS(gb_stated_count(x, "ends", w.of, &w.wall->ends), courses(x, w)),
        .of = w.of,
        .source = N_("running bond: a half at each free end of every other course"));
}

static const gb_why *full(gb_explainer *x, walled w) {
    return GB_WHY(x, "full", GB_PLAIN, blocks_of(w).full,
                  "up((courses * halves - half) / 2 - openings / (block_length * "
                  "block_height), 1)",
                  GB_INPUTS(courses(x, w), per_course(x, w), half(x, w), openings(x, w),
                            block_length(x, w), block_height(x, w)),
                  .of = w.of);
}

static const gb_why *ordered(gb_explainer *x, const gb_take *t, const char *name,
                             const char *formula, double value, const gb_why *each) {
    walled w = wall_of(t);
    if (each == NULL)
        return NULL;
    return GB_WHY(
        x, name, GB_PLAIN, value, formula,
        GB_INPUTS(gb_why_count(x, t->piece), each,
                  gb_stated(x, "spare", w.of, GB_SHARE, &w.wall->spare.of_one, NULL)),
        .of = w.of);
}

const gb_why *gb_why_wall(gb_explainer *x, const gb_take *t, gb_wall_figure which) {
    walled w = wall_of(t);
    gb_blocks b = blocks_of(w);
    switch (which) {
    case GB_WALL_FACE:
        return face(x, w);
    case GB_WALL_COURSES:
        return courses(x, w);
    case GB_WALL_FULL:
        return full(x, w);
    case GB_WALL_HALF:
        return half(x, w);
    case GB_WALL_PER_COURSE:
        return GB_WHY(x, "per_course", GB_PLAIN, b.per_course / 2.0, "halves / 2",
                      GB_INPUTS(per_course(x, w)), .of = w.of);
    case GB_ORDER_FULL:
        return ordered(x, t, "full_ordered", "up(count * full * (1 + spare), 1)",
                       gb_ordered(t, b.full), full(x, w));
    case GB_ORDER_HALF:
        return ordered(x, t, "half_ordered", "up(count * half * (1 + spare), 1)",
                       gb_ordered(t, b.half), half(x, w));
    case GB_WALL_SPARE:
        return gb_stated(x, "spare", w.of, GB_SHARE, &w.wall->spare.of_one, NULL);
    case GB_WALL_RATE:
        return gb_stated(x, "rate", w.of, GB_MORTAR_RATE, &w.wall->rate.m3_m2, NULL);
    case GB_WALL_RATE_WASTE:
        return gb_stated(x, "rate_waste", w.of, GB_SHARE, &w.wall->rate_waste.of_one,
                         NULL);
    case GB_WALL_JOINT:
        return block_joint(x, w);
    case GB_BLOCK_LENGTH:
        return block_length(x, w);
    case GB_BLOCK_HEIGHT:
        return block_height(x, w);
    case GB_BLOCK_WIDTH:
        return block_width(x, w);
    case GB_WALL_BEDDED:
        break;
    }
    if (w.wall->bedding == GB_FULL_BEDDING)
        return GB_WHY(x, "bedded_width", GB_LENGTH, gb_bedded_width(w.wall).m,
                      "block_width", GB_INPUTS(block_width(x, w)), .of = w.of);
    return GB_WHY(x, "bedded_width", GB_LENGTH, gb_bedded_width(w.wall).m, "2 * shell",
                  GB_INPUTS(wall_size(x, w, "shell", &w.wall->shell)), .of = w.of);
}

const gb_why *gb_why_block_mortar(gb_explainer *x, const gb_take *t) {
    walled w = wall_of(t);
    if (w.wall->rate.m3_m2 > 0)
        return GB_WHY(x, "each", GB_VOLUME, t->each.m3, "face * rate / (1 + rate_waste)",
                      GB_INPUTS(face(x, w), gb_why_wall(x, t, GB_WALL_RATE),
                                gb_why_wall(x, t, GB_WALL_RATE_WASTE)),
                      .of = w.of);
    return GB_WHY(x, "each", GB_VOLUME, t->each.m3,
                  "face / (block_length * block_height) * joint * bedded_width * "
                  "(block_length + block_height - joint)",
                  GB_INPUTS(face(x, w), block_length(x, w), block_height(x, w),
                            block_joint(x, w), gb_why_wall(x, t, GB_WALL_BEDDED)),
                  .of = w.of, .source = N_("a bed joint and a head joint of each block"));
}

/* ---- cores ------------------------------------------------------------------------- */

const gb_why *gb_why_core_blocks(gb_explainer *x, const gb_take *t) {
    const gb_cores *c = &t->layer->cores;
    double value = gb_core_blocks(t->piece, t->layer);
    if (c->blocks > 0)
        return gb_stated_count(x, "blocks", t->piece->name, &c->blocks);
    walled w = wall_of(t);
    if (c->courses == GB_TOP_COURSE)
        return GB_WHY(x, "blocks", GB_PLAIN, value, "halves / 2",
                      GB_INPUTS(per_course(x, w)), .of = w.of);
    return GB_WHY(x, "blocks", GB_PLAIN, value, "full + half / 2",
                  GB_INPUTS(full(x, w), half(x, w)), .of = w.of);
}

const gb_why *gb_why_core_grout(gb_explainer *x, const gb_take *t) {
    if (!gb_usual_cores(t->layer))
        return gb_stated(x, "grout", t->piece->name, GB_VOLUME, &t->layer->cores.each.m3,
                         NULL);
    return gb_fact(
        x, "grout", GB_VOLUME, gb_core_each(t->piece, t->layer).m3,
        N_("1.00 yd3 in 100 block of 8 in: Masonry Magazine, September 2015; 0.83 of 6 "
           "in "
           "and 1.54 of 12 in: Reinforced Masonry Engineering Handbook, from memory"));
}

const gb_why *gb_why_core_every(gb_explainer *x, const gb_take *t) {
    return gb_stated_count(x, "every", t->piece->name, &t->layer->cores.every);
}

const gb_why *gb_why_core_spread(gb_explainer *x) {
    return gb_fact(x, "core_spread", GB_SHARE, gb_core_spread().of_one,
                   N_("makers' blocks of 8 in take 0.251 to 0.294 ft3, each as likely: "
                      "published range over sqrt(12), of its middle"));
}

const gb_why *gb_why_cores(gb_explainer *x, const gb_take *t) {
    if (t->layer->cores.at.line == 0)
        return gb_stated(x, "each", t->piece->name, GB_VOLUME, &t->layer->volume.m3,
                         NULL);
    return GB_WHY(x, "each", GB_VOLUME, t->each.m3, "blocks * grout / every",
                  GB_INPUTS(gb_why_core_blocks(x, t), gb_why_core_grout(x, t),
                            gb_why_core_every(x, t)),
                  .of = t->piece->name);
}

/* ---- forms ------------------------------------------------------------------------- */

static const gb_why *steps(gb_explainer *x, const gb_take *t) {
    const gb_form *f = &t->layer->form;
    const gb_why **all = gb_arena_take(x->arena, f->length_count, sizeof(const gb_why *));
    double sum = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < f->length_count; i++) {
        double m2 = f->lengths_m[i] * f->depths_m[i];
        sum += m2;
        all[i] = GB_WHY(x, "step", GB_AREA, m2, "step_length * step_depth",
                        GB_INPUTS(gb_stated(x, "step_length", t->piece->name, GB_LENGTH,
                                            &f->lengths_m[i], NULL),
                                  gb_stated(x, "step_depth", t->piece->name, GB_LENGTH,
                                            &f->depths_m[i], NULL)),
                        .of = t->piece->name);
    }
    return GB_WHY(x, "steps", GB_AREA, sum, "sum()", .inputs = all,
                  .input_count = f->length_count, .of = t->piece->name);
}

static const gb_why *stair(gb_explainer *x, const gb_take *t) {
    const gb_form *f = &t->layer->form;
    const char *of = t->piece->name;
    const gb_why *n = gb_stated_count(x, "risers", of, &f->risers);
    const gb_why *rise = length(x, t, "rise", &f->rise);
    const gb_why *top = length(x, t, "top", &f->top);
    const gb_why *slab = length(x, t, "slab", &f->slab);
    const gb_why *width = length(x, t, "stair_width", &f->width);
    if (f->risers == 1)
        return GB_WHY(x, "each", GB_VOLUME, t->each.m3,
                      "stair_width * top * (risers * rise + slab)",
                      GB_INPUTS(width, top, n, rise, slab), .of = of);
    return GB_WHY(x, "each", GB_VOLUME, t->each.m3,
                  "stair_width * (rise * going * risers * (risers - 1) / 2 + risers * "
                  "rise * top + slab * ((risers - 1) * going + top))",
                  GB_INPUTS(width, rise, length(x, t, "going", &f->going), n, top, slab),
                  .of = of);
}

static const gb_why *pier(gb_explainer *x, const gb_take *t) {
    const gb_form *f = &t->layer->form;
    const gb_why *height = length(x, t, "height", &f->height);
    if (f->diameter.m > 0)
        return GB_WHY(x, "each", GB_VOLUME, t->each.m3,
                      "3.14159265358979 / 4 * diameter * diameter * height",
                      GB_INPUTS(length(x, t, "diameter", &f->diameter), height),
                      .of = t->piece->name);
    return GB_WHY(x, "each", GB_VOLUME, t->each.m3, "side * side * height",
                  GB_INPUTS(length(x, t, "side", &f->side), height),
                  .of = t->piece->name);
}

const gb_why *gb_why_form(gb_explainer *x, const gb_take *t) {
    const gb_form *f = &t->layer->form;
    if (f->kind == GB_STAIR)
        return stair(x, t);
    if (f->kind == GB_PIER)
        return pier(x, t);
    return GB_WHY(x, "each", GB_VOLUME, t->each.m3, "steps * form_width",
                  GB_INPUTS(steps(x, t), length(x, t, "form_width", &f->width)),
                  .of = t->piece->name);
}

const gb_why *gb_why_form_end(gb_explainer *x, const gb_take *t, bool back) {
    const gb_form *f = &t->layer->form;
    return back ? length(x, t, "depth_back", &f->back)
                : length(x, t, "depth_front", &f->front);
}

const gb_why *gb_why_wedge_depth(gb_explainer *x, const gb_take *t) {
    return GB_WHY(x, "depth", GB_LENGTH, t->depth.m, "(depth_front + depth_back) / 2",
                  GB_INPUTS(gb_why_form_end(x, t, false), gb_why_form_end(x, t, true)),
                  .of = t->piece->name);
}

/* ---- falls ------------------------------------------------------------------------- */

static const gb_why *behind_front(gb_explainer *x, const gb_take *t) {
    const gb_piece *p = t->piece;
    gb_plan_size size = {.behind_front = {GB_NONE}};
    if (gb_piece_size(p, &size) != GB_OK)
        return NULL;
    if (p->shape.kind != GB_RECTANGLE)
        return gb_fact(x, "behind_front", GB_LENGTH, size.behind_front.m,
                       N_("mean distance of the bedded area from its front"));
    return GB_WHY(
        x, "behind_front", GB_LENGTH, size.behind_front.m, "(width - overhang_front) / 2",
        GB_INPUTS(gb_why_width(x, p), length(x, t, "overhang_front", &p->overhang_front)),
        .of = p->name);
}

const gb_why *gb_why_fall(gb_explainer *x, const gb_take *t) {
    return gb_stated(x, "fall", t->piece->name, GB_SLOPE, &t->layer->fall.of_run, NULL);
}

const gb_why *gb_why_sloped_depth(gb_explainer *x, const gb_take *t,
                                  const gb_why *in_front) {
    if (in_front == NULL)
        return NULL;
    return GB_WHY(x, "depth", GB_LENGTH, t->depth.m, "depth_front + fall * behind_front",
                  GB_INPUTS(in_front, gb_why_fall(x, t), behind_front(x, t)),
                  .of = t->piece->name);
}

/* ---- levels ------------------------------------------------------------------------ */

static const gb_why *reading(gb_explainer *x, const gb_take *t, const char *name,
                             const double *at) {
    return gb_stated(x, name, t->piece->name, GB_LENGTH, at, NULL);
}

const gb_why *gb_why_level_bed(gb_explainer *x, const gb_take *t, size_t i) {
    const gb_levels *l = &t->layer->levels;
    return GB_WHY(
        x, "bed", GB_LENGTH, gb_level_bed(l, i),
        l->readings == GB_STAFF ? "block - finished - stone" : "finished - stone - block",
        GB_INPUTS(reading(x, t, "block", &l->block_m[i]),
                  reading(x, t, "finished", &l->finished_m[i]),
                  reading(x, t, "stone", &l->stone_m[l->stone_count == 1 ? 0 : i])),
        .of = t->piece->name);
}

const gb_why *gb_why_level_depth(gb_explainer *x, const gb_take *t) {
    size_t n = t->layer->levels.block_count;
    const gb_why **beds = gb_arena_take(x->arena, n, sizeof(const gb_why *));
    if (beds == NULL) {
        x->failed = true;
        return NULL;
    }
    for (size_t i = 0; i < n; i++)
        beds[i] = gb_why_level_bed(x, t, i);
    return GB_WHY(x, "depth", GB_LENGTH, t->depth.m, "mean()", .inputs = beds,
                  .input_count = n, .of = t->piece->name);
}

const gb_why *gb_why_level_error(gb_explainer *x, const gb_take *t) {
    const gb_levels *l = &t->layer->levels;
    return GB_WHY(x, "depth_error", GB_LENGTH, t->depth_se.m, "error * sqrt(3 / count)",
                  GB_INPUTS(length(x, t, "error", &l->error), gb_why_count(x, t->piece)),
                  .of = t->piece->name,
                  .source =
                      N_("three readings for each bed, errors that do not depend on "
                         "each other"));
}

const gb_why *gb_why_level_limit(gb_explainer *x, const gb_take *t, bool most) {
    const gb_levels *l = &t->layer->levels;
    return most ? length(x, t, "most", &l->most) : length(x, t, "least", &l->least);
}
