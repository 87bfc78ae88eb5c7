#include "engine/batch.h"

#include "gaugebox/count.h"

#include <math.h>

/* Where no pace says how much a pot may cover: about one tread. Common practice. */
static const double USUAL_POT_M2 = 0.55;
static const double MOST_TREADS = 2.0; /* a pot is mixed for one or two */

static gb_status fill_pot(const gb_mix_plan *mix, const gb_take *take, double pieces,
                          double area_in_life, gb_share moisture, gb_pot *pot) {
    const gb_recipe *r = &mix->recipe;
    double bags = pieces * take->each.m3 * (1.0 + mix->need.waste.of_one) / r->yield.m3;
    gb_water_row water = {0};
    gb_status status = gb_water_to_add(mix->need.mix, r, moisture, bags, &water);
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
    pot->fits_life = isnan(area_in_life) || !gb_over(pot->area.m2 / area_in_life, 1.0);
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

/* A tread takes longer to cover than a pot lives: it takes several pots. */
static bool slower_than_life(const gb_take *take, double area_in_life) {
    return !isnan(area_in_life) && gb_over(take->area.m2 / area_in_life, 1.0);
}

/* Pots that may be mixed for a piece: a stretch of a landing or of a tread that one pot
   does not outlive, one tread, two treads. */
static gb_status fill_pots_of(const gb_mix_plan *mix, const gb_take *take,
                              double area_in_life, gb_share moisture, gb_pot *list,
                              size_t *n) {
    bool few = take->units < MOST_TREADS;
    gb_status status = GB_OK;
    if (few || slower_than_life(take, area_in_life)) {
        double part = 1.0;
        status = stretch_of(take, area_in_life, &part);
        if (status == GB_OK)
            status = fill_pot(mix, take, part, area_in_life, moisture, &list[(*n)++]);
    }
    for (int treads = 1; !few && treads <= MOST_TREADS && status == GB_OK; treads++)
        status =
            fill_pot(mix, take, (double)treads, area_in_life, moisture, &list[(*n)++]);
    return status;
}

gb_status gb_size_pots(const gb_job *job, const gb_mix_plan *mix, double m2_s,
                       gb_arena *arena, const gb_pot **pots, size_t *count) {
    gb_share moisture = gb_job_moisture(job);
    gb_pot *list = gb_arena_take(arena, 3 * mix->need.take_count, sizeof *list);
    if (list == NULL)
        return GB_NO_MEMORY;
    double area_in_life = m2_s * mix->life.s;
    size_t n = 0;
    gb_status status = GB_OK;
    for (size_t i = 0; i < mix->need.take_count && status == GB_OK; i++)
        status = fill_pots_of(mix, mix->need.takes[i], area_in_life, moisture, list, &n);
    if (status != GB_OK)
        return status;
    *pots = list;
    *count = n;
    return GB_OK;
}
