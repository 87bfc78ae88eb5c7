#include "write/batch_rows.h"

#include <math.h>

/* Water and sand as marks up the inside of the job's own pail. */

/* "2 full and 3-1/4 in", "5 in", "1 full". */
static gb_figure mark_fig(gb_builder *b, const char *name, gb_volume volume,
                          gb_rounding rounding) {
    size_t full = 0;
    gb_length up = {0};
    b->about.volume = volume;
    if (gb_pail_mark(&b->about.plan->job->pail.size, volume, &full, &up) != GB_OK)
        return gb_txt(name, "");
    gb_figure pails = gb_num("n", GB_SHOW_COUNT, (double)full);
    gb_figure height = gb_num("up", GB_SHOW_UP, up.m);
    height.rounding = rounding;
    if (full == 0)
        return gb_row_fig(b, name, GB_MAKE(b, MARK_AT, height));
    if (!(up.m > 0))
        return gb_row_fig(b, name, GB_MAKE(b, MARK_PAILS, pails));
    return gb_row_fig(b, name, GB_MAKE(b, MARK_PAILS_AND, pails, height));
}

/* How high a volume stands in it, for a line that is marked once. */
static gb_figure line_fig(gb_builder *b, const char *name, gb_volume volume) {
    b->about.volume = volume;
    return gb_row_fig(
        b, name,
        GB_MAKE(b, MARK_AT,
                gb_num("up", GB_SHOW_UP,
                       gb_pail_up(&b->about.plan->job->pail.size, volume).m)));
}

static gb_volume volume_of(gb_mass water) {
    return (gb_volume){water.kg / GB_WATER_KG_M3};
}

/* Below an inch a mark tells too little; such an amount is measured in a jug. */
static bool is_deep(const gb_job *job, gb_mass usual) {
    static const double LEAST_M = 0.0254;
    gb_length up = gb_pail_up(&job->pail.size, volume_of(usual));
    return isnan(up.m) || !gb_under(up.m / LEAST_M, 1.0);
}

/* Less than a mark of a wide pail. */
static const double TIGHT_KG = 0.2;

void gb_add_batch_marks(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                        double bags) {
    gb_water_row row = {0};
    gb_share moisture = gb_job_moisture(job);
    if (p->recipe.sand.kg <= 0)
        moisture.of_one = 0;
    if (job->pail.at.line == 0 ||
        gb_water_to_add(p->need.mix, &p->recipe, moisture, bags, &row) != GB_OK ||
        !is_deep(job, row.usual))
        return;
    b->about.moisture = moisture;
    b->about.water = GB_FIRST_WATER;
    gb_figure first = mark_fig(b, "first", volume_of(row.first), GB_DOWN);
    b->about.water = GB_USUAL_WATER;
    /* Rounded to the nearest, it could stand over never past where both are alike. */
    bool tight = row.most.kg - row.usual.kg < TIGHT_KG;
    gb_figure usual =
        mark_fig(b, "usual", volume_of(row.usual), tight ? GB_DOWN : GB_NEAREST);
    b->about.water = GB_MOST_WATER;
    gb_figure most = mark_fig(b, "most", volume_of(row.most), GB_DOWN);
    GB_ADD(b, PAIL_MARKS, first, usual, most);
}

void gb_add_pail(gb_builder *b, const gb_job *job, bool sand) {
    if (job->pail.at.line == 0)
        return;
    b->about.amount = GB_NO_AMOUNT;
    gb_volume holds = gb_pail_volume(&job->pail.size);
    gb_volume full = {holds.m3 * gb_pail_full().of_one};
    GB_ADD(b, PAIL_FULL, line_fig(b, "up", full),
           gb_num("volume", GB_SHOW_GAUGED, full.m3));
    gb_volume line = gb_job_measure(job);
    if (!sand || job->gauge.by != GB_BY_BUCKET || line.m3 > holds.m3)
        return;
    GB_ADD(b, PAIL_SAND, gb_num("volume", GB_SHOW_GAUGED, line.m3),
           line_fig(b, "line", line), line_fig(b, "quarter", (gb_volume){line.m3 / 4}),
           line_fig(b, "half", (gb_volume){line.m3 / 2}),
           line_fig(b, "three", (gb_volume){line.m3 * 3 / 4}));
}
