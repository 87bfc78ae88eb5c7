#include "engine/batch.h"

#include "gaugebox/count.h"

#include <math.h>

/* Where no pace says how much a pot may cover: about one tread. Common practice. */
static const double USUAL_POT_M2 = 0.55;
static const double MOST_TREADS = 2.0; /* a pot is mixed for one or two */

/* What the pots of a mix are sized by. */
typedef struct sizing {
    const gb_mix_plan *mix;
    gb_share moisture;
    double area_in_life; /* NaN: no pace */
    bool brushed;        /* the pace is that of slurry alone, not of setting the stone */
} sizing;

/* A landing is many stones, of which each is brushed when it is set; any other piece is
   one, brushed last of all. */
static bool is_one_stone(const gb_take *take) {
    return take->piece->kind != GB_LANDING;
}

static gb_status fill_pot(const sizing *s, const gb_take *take, double pieces,
                          gb_pot *pot) {
    const gb_mix_plan *mix = s->mix;
    double area_in_life = s->area_in_life;
    const gb_recipe *r = &mix->recipe;
    double bags = pieces * take->each.m3 * (1.0 + mix->need.waste.of_one) / r->yield.m3;
    gb_water_row water = {0};
    gb_status status = gb_water_to_add(mix->need.mix, r, s->moisture, bags, &water);
    if (status != GB_OK)
        return status;
    *pot = (gb_pot){.take = take,
                    .pieces = pieces,
                    .area = {pieces * take->area.m2},
                    .bags = bags,
                    .first = water.first,
                    .usual = water.usual,
                    .most = water.most,
                    .depth = take->depth};
    pot->time.s = pot->area.m2 / area_in_life * mix->life.s;
    pot->fits_life = isnan(area_in_life) || !gb_over(pot->area.m2 / area_in_life, 1.0) ||
                     (pieces <= 1.0 && is_one_stone(take) && !s->brushed);
    return gb_count_up(take->units, pieces, &pot->count);
}

/* The part of one piece, such as a landing, that one pot covers: as equal parts as the
   life in the pot allows. */
static gb_status stretch_of(const gb_take *take, double area_in_life, double *part) {
    double area = isnan(area_in_life) ? USUAL_POT_M2 : area_in_life;
    size_t count = 0;
    gb_status status = gb_count_up(take->area.m2, area, &count);
    if (status == GB_OK)
        *part = 1.0 / (double)count;
    return status;
}

/* A stretch of a landing that one pot does not outlive; one stone, or two. */
static gb_status fill_pots_of(const sizing *s, const gb_take *take, gb_pot *list,
                              size_t *n) {
    bool few = take->units < MOST_TREADS;
    bool slow = !isnan(s->area_in_life) && gb_over(take->area.m2 / s->area_in_life, 1.0);
    gb_status status = GB_OK;
    if (!is_one_stone(take) && (few || slow)) {
        double part = 1.0;
        status = stretch_of(take, s->area_in_life, &part);
        if (status == GB_OK)
            status = fill_pot(s, take, part, &list[(*n)++]);
        if (few)
            return status;
    }
    for (int stones = 1; stones <= (few ? 1 : MOST_TREADS) && status == GB_OK; stones++)
        status =
            fill_pot(s, take, gb_smaller((double)stones, take->units), &list[(*n)++]);
    return status;
}

gb_status gb_size_pots(const gb_job *job, const gb_mix_plan *mix, double m2_s,
                       gb_arena *arena, const gb_pot **pots, size_t *count) {
    const gb_pace *pace = gb_pace_of(&job->crew, GB_SLURRY);
    const sizing sizes = {.mix = mix,
                          .moisture = gb_job_moisture(job),
                          .area_in_life = m2_s * mix->life.s,
                          .brushed = pace != gb_pace_of(&job->crew, GB_BED)};
    gb_pot *list = gb_arena_take(arena, 3 * mix->need.take_count, sizeof *list);
    if (list == NULL)
        return GB_NO_MEMORY;
    size_t n = 0;
    gb_status status = GB_OK;
    for (size_t i = 0; i < mix->need.take_count && status == GB_OK; i++)
        status = fill_pots_of(&sizes, mix->need.takes[i], list, &n);
    if (status != GB_OK)
        return status;
    *pots = list;
    *count = n;
    return GB_OK;
}
