#include "gaugebox/layer.h"
#include "gaugebox/count.h"

#include <math.h>

static bool positive(double x) {
    return isfinite(x) && x > 0;
}

gb_share gb_joint_share(gb_length a, gb_length b, gb_length w) {
    return (gb_share){1.0 - a.m * b.m / ((a.m + w.m) * (b.m + w.m))};
}

/* ---- block walls ------------------------------------------------------------------- */

gb_length gb_wall_length(const gb_wall *w) {
    return (gb_length){w->length.m - (double)w->corners * (w->width.m + w->joint.m)};
}

gb_length gb_wall_height(const gb_wall *w) {
    if (w->courses > 0)
        return (gb_length){(double)w->courses * w->nominal[1].m};
    return w->height;
}

static gb_area wall_face(const gb_wall *w) {
    return (gb_area){gb_wall_length(w).m * gb_wall_height(w).m - w->openings.m2};
}

static bool can_be_laid(const gb_wall *w) {
    return positive(w->nominal[0].m) && positive(w->nominal[1].m) &&
           positive(gb_wall_length(w).m) && positive(gb_wall_height(w).m) &&
           positive(wall_face(w).m2) && w->openings.m2 >= 0;
}

static gb_status count_wall(const gb_wall *w, gb_blocks *b) {
    size_t courses = 0;
    size_t halves = 0;
    gb_status status = gb_count_up(gb_wall_height(w).m, w->nominal[1].m, &courses);
    if (status == GB_OK)
        status = gb_count_up(gb_wall_length(w).m, w->nominal[0].m / 2.0, &halves);
    if (status != GB_OK)
        return status;
    size_t pairs = courses / 2;
    bool odd = courses % 2 == 1 && halves % 2 == 1 && w->ends >= 2;
    b->courses = (double)courses;
    b->per_course = (double)halves;
    b->half = (double)w->ends * (double)pairs + (odd ? 1.0 : 0.0);
    return GB_OK;
}

gb_status gb_lay_out(const gb_wall *w, gb_blocks *blocks) {
    gb_blocks b = {.courses = 0};
    if (!can_be_laid(w))
        return GB_NOT_POSITIVE;
    gb_status status = count_wall(w, &b);
    if (status != GB_OK)
        return status;
    double open = w->openings.m2 / (w->nominal[0].m * w->nominal[1].m);
    b.face = wall_face(w);
    b.full = gb_round((b.courses * b.per_course - b.half) / 2.0 - open, 1.0, GB_UP);
    if (b.full < 0)
        return GB_NOT_POSITIVE;
    *blocks = b;
    return GB_OK;
}

gb_length gb_bedded_width(const gb_wall *w) {
    double shells = 2.0 * w->shell.m;
    return (gb_length){w->bedding == GB_FULL_BEDDING ? w->width.m : shells};
}

gb_volume gb_wall_mortar(const gb_wall *w) {
    if (!can_be_laid(w))
        return (gb_volume){GB_NONE};
    double face = wall_face(w).m2;
    if (positive(w->rate.m3_m2))
        return (gb_volume){face * w->rate.m3_m2 / (1.0 + w->rate_waste.of_one)};
    double l = w->nominal[0].m;
    double h = w->nominal[1].m;
    double t = w->joint.m;
    return (gb_volume){face / (l * h) * t * gb_bedded_width(w).m * (l + h - t)};
}

/* ---- cores ------------------------------------------------------------------------- */

gb_volume gb_usual_core(gb_length nominal_width) {
    static const double INCH_M = 0.0254;
    static const double YD3_M3 = 0.9144 * 0.9144 * 0.9144;
    static const double SAME_M = 0.0065; /* a quarter of an inch */
    static const struct {
        double width_in, yd3_per_100;
    } ROWS[] = {{6, 0.83}, {8, 1.00}, {12, 1.54}};
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        if (fabs(nominal_width.m - ROWS[i].width_in * INCH_M) < SAME_M)
            return (gb_volume){ROWS[i].yd3_per_100 * YD3_M3 / 100.0};
    return (gb_volume){GB_NONE};
}

gb_share gb_core_spread(void) {
    static const double LEAST_FT3 = 0.251;
    static const double MOST_FT3 = 0.294;
    double middle = (LEAST_FT3 + MOST_FT3) / 2.0;
    return (gb_share){(MOST_FT3 - LEAST_FT3) / sqrt(12.0) / middle};
}

/* ---- forms of concrete ------------------------------------------------------------- */

static double stepped(const gb_form *f) {
    double sum = 0;
    if (f->length_count == 0 || f->length_count != f->depth_count)
        return GB_NONE;
    for (size_t i = 0; i < f->length_count; i++) {
        if (!positive(f->lengths_m[i]) || !positive(f->depths_m[i]))
            return GB_NONE;
        sum += f->lengths_m[i] * f->depths_m[i];
    }
    return positive(f->width.m) ? sum * f->width.m : GB_NONE;
}

static double stair(const gb_form *f) {
    double n = (double)f->risers;
    double r = f->rise.m;
    bool one = f->risers == 1;
    double g = one ? 0 : f->going.m;
    double d = f->top.m;
    double s = positive(f->slab.m) ? f->slab.m : 0;
    if (f->risers == 0 || !positive(r) || !positive(d) || !positive(f->width.m) ||
        (!one && !positive(g)) || f->slab.m < 0)
        return GB_NONE;
    double treads = r * g * n * (n - 1.0) / 2.0;
    return f->width.m * (treads + n * r * d + s * ((n - 1.0) * g + d));
}

static double pier(const gb_form *f) {
    static const double PI = 3.14159265358979323846;
    bool round = positive(f->diameter.m);
    if (!positive(f->height.m) || (!round && !positive(f->side.m)))
        return GB_NONE;
    double area =
        round ? PI / 4.0 * f->diameter.m * f->diameter.m : f->side.m * f->side.m;
    return area * f->height.m;
}

gb_volume gb_form_volume(const gb_form *form) {
    switch (form->kind) {
    case GB_STEPPED:
        return (gb_volume){stepped(form)};
    case GB_STAIR:
        return (gb_volume){stair(form)};
    case GB_PIER:
        return (gb_volume){pier(form)};
    default:
        return (gb_volume){GB_NONE};
    }
}

/* ---- beds between levels ----------------------------------------------------------- */

double gb_level_bed(const gb_levels *l, size_t i) {
    double stone = l->stone_m[l->stone_count == 1 ? 0 : i];
    double space = l->finished_m[i] - l->block_m[i];
    return (l->readings == GB_STAFF ? -space : space) - stone;
}

void gb_level_beds(const gb_levels *l, gb_length *mean, gb_length *se) {
    double n = (double)l->block_count;
    double sum = 0;
    for (size_t i = 0; i < l->block_count; i++)
        sum += gb_level_bed(l, i);
    mean->m = sum / n;
    se->m = l->error.m * sqrt(3.0 / n);
}
