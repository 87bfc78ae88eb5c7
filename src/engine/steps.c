#include "gaugebox/steps.h"

#include "gaugebox/count.h"

static bool positive(double x) {
    return isfinite(x) && x > 0;
}

/* ---- one number of risers ---------------------------------------------------------- */

/* Treads of the run itself. */
static double treads_of(const gb_steps *s, size_t count) {
    return (double)(s->upper == GB_UPPER_TREAD ? count : count - 1);
}

static double going_of(const gb_steps *s, size_t count) {
    return isnan(s->going.m) ? s->length.m / treads_of(s, count) : s->going.m;
}

/* What the pitch behind the top nosing, and the sill itself, add to the climb. */
static double behind_of(const gb_steps *s, double going) {
    if (s->top != GB_TO_SILL)
        return 0;
    double depth = s->upper == GB_UPPER_TREAD ? going : s->landing.m;
    return s->pitch.of_run * depth + s->sill.m;
}

static double others(const gb_layout *l) {
    return (double)(l->count - 1);
}

/* The face of a stone stands; the first one takes what is left, at most all of it. */
static void set_stones(const gb_steps *s, double to_nosing, gb_layout *l) {
    l->face = s->stone;
    double left = to_nosing - others(l) * (s->stone.m + l->term.m);
    l->first.m = gb_smaller(left, s->stone.m);
    l->buried.m = s->stone.m - l->first.m;
}

/* F = (H - (N - 1) s T) / N; evened, the first face is s T higher and all risers are
   H / N. */
static void solve_faces(const gb_steps *s, double to_nosing, gb_layout *l) {
    double n = (double)l->count;
    if (!isnan(s->face.m))
        l->face = s->face;
    else if (l->evened)
        l->face.m = to_nosing / n - l->term.m;
    else
        l->face.m = (to_nosing - others(l) * l->term.m) / n;
    l->first.m = l->face.m + (l->evened ? l->term.m : 0);
}

static void round_faces(const gb_steps *s, gb_length read_to, gb_layout *l) {
    l->set_first.m = gb_round(l->first.m, read_to.m, GB_NEAREST);
    l->set_face.m = gb_round(l->face.m, read_to.m, GB_NEAREST);
    l->set_error.m = s->rise.m - (l->set_first.m +
                                  others(l) * (l->set_face.m + l->term.m) + l->behind.m);
}

static bool can_be_laid(const gb_steps *s) {
    if (!positive(s->rise.m) || !(s->pitch.of_run >= 0) || isinf(s->pitch.of_run))
        return false;
    if (!positive(isnan(s->going.m) ? s->length.m : s->going.m))
        return false;
    if (s->top == GB_TO_SILL && s->upper == GB_UPPER_LANDING && !positive(s->landing.m))
        return false;
    return s->build != GB_SOLID_STEPS || positive(s->stone.m);
}

gb_status gb_lay_steps(const gb_steps *steps, size_t count, bool evened,
                       gb_length read_to, gb_layout *layout) {
    if (count < 2)
        return GB_IMPOSSIBLE;
    if (!can_be_laid(steps) || !positive(read_to.m))
        return GB_NOT_POSITIVE;
    bool solid = steps->build == GB_SOLID_STEPS;
    gb_layout l = {.count = count, .evened = evened && !solid};
    l.treads = (size_t)treads_of(steps, count);
    l.going.m = going_of(steps, count);
    l.length.m = l.going.m * treads_of(steps, count);
    l.term.m = steps->pitch.of_run * l.going.m;
    l.behind.m = behind_of(steps, l.going.m);
    double to_nosing = steps->rise.m - l.behind.m;
    if (solid)
        set_stones(steps, to_nosing, &l);
    else
        solve_faces(steps, to_nosing, &l);
    if (!positive(l.first.m) || !positive(l.face.m))
        return GB_NOT_POSITIVE;
    l.riser.m = l.face.m + l.term.m;
    l.climb.m = l.first.m + others(&l) * l.riser.m + l.behind.m;
    l.error.m = steps->rise.m - l.climb.m;
    l.comfort.m = 2.0 * l.riser.m + l.going.m;
    l.depth.m = l.going.m + steps->overhang.m + steps->overlap.m;
    round_faces(steps, read_to, &l);
    *layout = l;
    return GB_OK;
}

gb_length gb_riser(const gb_layout *layout, size_t i) {
    return i == 0 ? layout->first : layout->riser;
}

gb_length gb_risers_differ(const gb_layout *layout) {
    return (gb_length){fabs(layout->riser.m - layout->first.m)};
}

/* ---- levels ------------------------------------------------------------------------ */

gb_length gb_usual_front_bed(void) {
    return (gb_length){1.25 * 0.0254};
}

/* How far the bed of step i grows to its back: as the tread above it does. */
static double back_of(const gb_steps *s, const gb_layout *l, size_t i) {
    bool is_landing = i + 1 == l->count && s->upper == GB_UPPER_LANDING;
    return is_landing ? s->pitch.of_run * s->landing.m : l->term.m;
}

/* Where the block of step i begins: on the footing, or on the tread below it. */
static double foot_of_block(const gb_steps *s, const gb_layout *l, size_t i) {
    if (s->build == GB_ON_PLATFORMS || i == 0)
        return -s->footing.m;
    return l->first.m + (double)(i - 1) * l->riser.m + l->term.m;
}

/* As many courses as leave the least bed in front; what is over the most bed is built up
   first. */
static gb_status lay_courses(const gb_steps *s, double room, double added, gb_step *st) {
    if (gb_count_down(room - s->least_bed.m, s->course.m, &st->courses) != GB_OK ||
        st->courses == 0)
        return GB_NOT_POSITIVE;
    st->bed.m = room - (double)st->courses * s->course.m;
    double most = s->most_bed.m - (isnan(added) ? 0 : added);
    if (gb_over(st->bed.m, most)) {
        st->build_up.m = st->bed.m - s->least_bed.m;
        st->bed = s->least_bed;
    }
    return GB_OK;
}

static gb_status lay_block(const gb_steps *s, const gb_layout *l, size_t i, gb_step *st) {
    double foot = foot_of_block(s, l, i);
    double room = st->bed_top.m - foot;
    double added = back_of(s, l, i);
    gb_status status = GB_OK;
    if (!isnan(s->course.m))
        status = lay_courses(s, room, added, st);
    else
        st->bed = isnan(s->bed.m) ? gb_usual_front_bed() : s->bed;
    st->bed_back.m = st->bed.m + added;
    st->block_top.m = st->bed_top.m - st->bed.m;
    if (status == GB_OK && gb_under(st->block_top.m, foot))
        status = GB_NOT_POSITIVE;
    return status;
}

gb_status gb_lay_step(const gb_steps *steps, const gb_layout *layout, size_t i,
                      gb_step *step) {
    bool solid = steps->build == GB_SOLID_STEPS;
    gb_step st = {
        .block_top = {GB_NONE}, .bed = {GB_NONE}, .bed_back = {GB_NONE}, .build_up = {0}};
    st.front.m = layout->first.m + (double)i * layout->riser.m;
    st.back.m = st.front.m + back_of(steps, layout, i);
    st.bed_top.m = st.front.m - (solid ? steps->stone.m : steps->slab.m);
    gb_status status = GB_OK;
    if (!solid && !isnan(steps->slab.m))
        status = lay_block(steps, layout, i, &st);
    if (status == GB_OK)
        *step = st;
    return status;
}

gb_status gb_check_beds(const gb_steps *steps, const gb_layout *layout, gb_beds *beds) {
    gb_beds b = {.least = {GB_NONE}, .most = {GB_NONE}, .fit = true};
    for (size_t i = 0; i < layout->count && steps->build != GB_SOLID_STEPS; i++) {
        gb_step st;
        gb_status status = gb_lay_step(steps, layout, i, &st);
        if (status != GB_OK)
            return status;
        b.least.m = gb_smaller(st.bed.m, b.least.m);
        b.most.m = gb_larger(gb_larger(st.bed.m, st.bed_back.m), b.most.m);
        b.build_up += st.build_up.m > 0;
    }
    if (!isnan(b.least.m))
        b.fit = b.build_up == 0 && !gb_under(b.least.m, steps->least_bed.m) &&
                !gb_over(b.most.m, steps->most_bed.m);
    *beds = b;
    return GB_OK;
}
