#include "gaugebox/count.h"
#include "gaugebox/steps.h"

enum { MOST_RISERS = 1000 };

/* Solid steps close the rise with the first one, a stated face by chance. */
static bool closes(const gb_steps *s, const gb_layout *l) {
    bool solid = s->build == GB_SOLID_STEPS;
    return !gb_over(solid ? l->error.m : fabs(l->error.m), 0);
}

static void judge(const gb_steps *s, gb_choice *c) {
    const gb_layout *l = &c->layout;
    c->beds_known = gb_check_beds(s, l, &c->beds) == GB_OK;
    c->in_band = !gb_under(l->comfort.m, s->band_least.m) &&
                 !gb_over(l->comfort.m, s->band_most.m);
    c->lacks = !c->in_band;
    c->lacks += !closes(s, l);
    c->lacks += !(c->beds_known && c->beds.fit);
    c->lacks += !gb_steps_pass(GB_IRC, s, l);
    c->lacks += !gb_steps_pass(GB_NFPA, s, l);
    c->fits = c->lacks == 0;
}

/* The fewest and the most risers to look at. */
static gb_status bounds_of(const gb_steps *s, size_t *fewest, size_t *most) {
    if (s->count > 0) {
        *fewest = *most = s->count;
        return GB_OK;
    }
    double least = s->least_riser.m;
    double highest = s->most_riser.m;
    if (s->build == GB_SOLID_STEPS)
        least = highest = s->stone.m;
    gb_status status = gb_count_up(s->rise.m, highest, fewest);
    if (status == GB_OK)
        status = gb_count_down(s->rise.m, least, most);
    /* The pitch climbs too, so solid steps are at most so many; one more reaches. */
    if (status == GB_OK && s->build == GB_SOLID_STEPS) {
        *most = *fewest + 1;
        *fewest /= 2;
    }
    *fewest = *fewest < 2 ? 2 : *fewest;
    return status;
}

/* Of solid steps, those that close the rise and the one number below. */
static bool is_near(const gb_steps *s, const gb_layout *l) {
    return s->build != GB_SOLID_STEPS || s->count > 0 || !gb_over(l->error.m, l->riser.m);
}

static void add_choice(const gb_steps *s, size_t count, bool evened, gb_length read_to,
                       gb_choice *list, size_t *n) {
    gb_choice *c = &list[*n];
    if (gb_lay_steps(s, count, evened, read_to, &c->layout) != GB_OK ||
        !is_near(s, &c->layout))
        return;
    judge(s, c);
    (*n)++;
}

gb_status gb_find_steps(const gb_steps *steps, gb_length read_to, gb_arena *arena,
                        gb_choices *choices) {
    size_t fewest = 0;
    size_t most = 0;
    gb_status status = bounds_of(steps, &fewest, &most);
    if (status != GB_OK)
        return status;
    if (most > MOST_RISERS)
        return GB_OVERFLOW;
    size_t room = most < fewest ? 0 : most - fewest + 1;
    gb_choice *list = gb_arena_take(arena, 2 * room + 1, sizeof *list);
    if (list == NULL)
        return GB_NO_MEMORY;
    bool both = steps->pitch.of_run > 0 && steps->build != GB_SOLID_STEPS;
    gb_choices found = {list, 0, 0};
    for (size_t n = fewest; n <= most; n++) {
        add_choice(steps, n, false, read_to, list, &found.count);
        if (both)
            add_choice(steps, n, true, read_to, list, &found.count);
    }
    for (size_t i = 0; i < found.count; i++)
        found.fitting += list[i].fits;
    *choices = found;
    return GB_OK;
}

/* ---- what would have to change ----------------------------------------------------- */

/* A stated face keeps itself, so a longer tread lifts its riser by all of the pitch;
   equal faces share the rise, evened ones leave none of it to the pitch; an upper tread
   that the rise ends behind takes its own. */
static double taken_of(const gb_steps *s, const gb_layout *l) {
    bool upper = s->top == GB_TO_SILL && s->upper == GB_UPPER_TREAD;
    if (s->build == GB_SOLID_STEPS || !isnan(s->face.m))
        return 1;
    return ((l->evened ? 0.0 : 1.0) - (upper ? 1.0 : 0.0)) / (double)l->count;
}

/* The going that brings 2 R + T into its band, and is not under the least tread of the
   code. */
static double wanted_going(const gb_steps *s, const gb_layout *l, double taken,
                           gb_length read_to) {
    double level = 2.0 * (l->riser.m - taken * l->term.m);
    double grows = 1.0 + 2.0 * taken * s->pitch.of_run;
    double least = gb_larger((s->band_least.m - level) / grows,
                             gb_step_limit_of(GB_RULE_IRC_TREAD)->value);
    double most = (s->band_most.m - level) / grows;
    if (gb_under(l->going.m, least))
        return gb_round(least, read_to.m, GB_UP);
    return gb_over(l->going.m, most) && !gb_over(least, most)
               ? gb_round(most, read_to.m, GB_DOWN)
               : GB_NONE;
}

/* Half of the risers, rounded up, when the climb is more than one flight may have. */
static size_t below_landing(const gb_steps *s, const gb_layout *l) {
    return gb_step_passes(GB_RULE_IRC_FLIGHT, s, l) ? 0 : (l->count + 1) / 2;
}

/* The course that leaves a bed between its bounds, in as many courses as a platform has.
 */
static double wanted_course(const gb_steps *s, const gb_choice *c) {
    const gb_layout *l = &c->layout;
    if (isnan(s->course.m) || isnan(s->slab.m) || (c->beds_known && c->beds.fit))
        return GB_NONE;
    double bed = (s->least_bed.m + s->most_bed.m - l->term.m) / 2.0;
    double rise = s->build == GB_ON_TREADS ? l->face.m - s->slab.m - bed : l->riser.m;
    size_t courses = 1;
    if (gb_count_down(rise, s->course.m, &courses) != GB_OK || courses == 0)
        courses = 1;
    double course = rise / (double)courses;
    bool as_stated = fabs(course - s->course.m) < 1e-4; /* no advice at all */
    return rise > 0 && !as_stated ? course : GB_NONE;
}

/* Down to a middling bed in front under the first slab, by the courses that are advised.
 */
static double wanted_footing(const gb_steps *s, const gb_choice *c, double course) {
    if (isnan(s->course.m) || isnan(s->slab.m) || c->beds_known)
        return GB_NONE;
    double bed = (s->least_bed.m + s->most_bed.m - c->layout.term.m) / 2.0;
    double room = c->layout.first.m - s->slab.m - bed;
    size_t courses = 1;
    if (room > 0 && gb_count_up(room, course, &courses) != GB_OK)
        return GB_NONE;
    return (double)courses * course - room;
}

/* Where a face or a stone is stated: the one that makes all alike close. */
static double wanted_face(const gb_steps *s, const gb_choice *c) {
    const gb_layout *l = &c->layout;
    bool given = s->build == GB_SOLID_STEPS || !isnan(s->face.m);
    bool alike = closes(s, l) && !gb_over(l->buried.m, 0);
    double n = (double)l->count;
    double face = (s->rise.m - l->behind.m - (n - 1.0) * l->term.m) / n;
    return given && !alike && face > 0 ? face : GB_NONE;
}

gb_step_advice gb_advise_steps(const gb_steps *steps, gb_length read_to,
                               const gb_choice *choice) {
    const gb_layout *l = &choice->layout;
    gb_step_advice a = {.bury = {GB_NONE}};
    a.taken = taken_of(steps, l);
    a.going.m = wanted_going(steps, l, a.taken, read_to);
    a.length.m = a.going.m * (double)l->treads;
    if (steps->build == GB_SOLID_STEPS && gb_over(l->buried.m, 0))
        a.bury = l->buried;
    a.course.m = wanted_course(steps, choice);
    a.face.m = wanted_face(steps, choice);
    a.footing.m =
        wanted_footing(steps, choice, isnan(a.course.m) ? steps->course.m : a.course.m);
    a.landing = below_landing(steps, l);
    return a;
}
