#include "published/published.h"

#include <criterion/criterion.h>

/* Every mix of the table makes a plan in each of its uses, with wet sand too. */

static void plan_it(pub_table *table, const gb_mix *mix, gb_layer_kind kind,
                    gb_sand_state sand) {
    pub_job job;
    pub_laid laid = {kind, 2, 1, 0.02, 1};
    if (kind == GB_CORE || kind == GB_VOLUME_LAYER || kind == GB_JOINT)
        pub_volume_job(&job, mix, (gb_volume){0.02});
    else
        pub_laid_job(&job, mix, &laid);
    job.job.sand.state = sand;
    pub_plan(table, &job);
    const gb_mix_plan *p = &job.plan.mixes[0];
    cr_expect(p->need.gross.m3 > 0 && p->recipe.yield.m3 > 0, "%s is planned", mix->id);
    gb_water_row row = {{0}, {0}, {0}, {0}};
    cr_expect(gb_water_to_add(mix, &p->recipe, gb_sand_moisture(sand), 1, &row) == GB_OK,
              "%s has water to add with its sand in state %d", mix->id, (int)sand);
}

Test(published_shipped_mixes, every_mix_in_each_use) {
    pub_table table;
    pub_open(&table);
    const gb_mix *const *mixes = NULL;
    size_t count = 0;
    cr_assert(gb_mix_list(table.mixes, &mixes, &count), "the table is listed");
    cr_expect(count >= 80, "the whole table, not %zu mixes", count);
    for (size_t i = 0; i < count; i++)
        for (gb_layer_kind kind = GB_BED; kind < GB_LAYER_KINDS; kind++)
            if (mixes[i]->uses & (1u << kind)) {
                plan_it(&table, mixes[i], kind, GB_NEARLY_DRY);
                plan_it(&table, mixes[i], kind, GB_WET);
            }
    pub_close(&table);
}

/* A mix in bags of 25 kg is the same mix by volume. */
Test(published_shipped_mixes, twins_in_metric_bags) {
    static const char *const TWINS[][2] = {
        {"bed/stiff-1-3", "bed-25kg/stiff-1-3"},
        {"bed/stiff-1-4", "bed-25kg/stiff-1-4"},
        {"bed/stiff-1-5", "bed-25kg/stiff-1-5"},
        {"plastic-bed/1-3", "plastic-bed-25kg/1-3"},
        {"plastic-bed/1-4", "plastic-bed-25kg/1-4"},
        {"plastic-bed/1-5", "plastic-bed-25kg/1-5"},
        {"thick-bed/floor-1-6", "thick-bed-25kg/floor-1-6"},
        {"thick-bed/floor-1-6-lime", "thick-bed-25kg/floor-1-6-lime"},
        {"thick-bed/wall-1-half-5", "thick-bed-25kg/wall-1-half-5"},
        {"thick-bed/wall-1-1-7", "thick-bed-25kg/wall-1-1-7"},
        {"pointing/1-3", "pointing-25kg/1-3"},
        {"pointing/1-1-6", "pointing-25kg/1-1-6"},
        {"pointing/1-2-9", "pointing-25kg/1-2-9"},
        {"pointing/grout-1-1", "pointing-25kg/grout-1-1"},
        {"slurry/neat", "slurry-25kg/neat"},
        {"slurry/sand-1-1", "slurry-25kg/sand-1-1"},
        {"grout/fine", "grout-25kg/fine"},
        {"grout/coarse", "grout-25kg/coarse"},
        {"concrete/1-2-4", "concrete-25kg/1-2-4"},
        {"concrete/1-1half-3", "concrete-25kg/1-1half-3"},
        {"concrete/1-3-6", "concrete-25kg/1-3-6"},
    };
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof TWINS / sizeof TWINS[0]; i++) {
        const gb_mix *us = pub_mix(&table, TWINS[i][0]);
        const gb_mix *metric = pub_mix(&table, TWINS[i][1]);
        for (gb_material_kind kind = GB_CEMENT; kind <= GB_COARSE; kind++)
            cr_expect(pub_parts(us, kind) == pub_parts(metric, kind), "%s and %s", us->id,
                      metric->id);
        double bag = pub_recipe(metric).bag.kg;
        cr_expect(bag == 25, "%s comes in bags of 25 kg, not %g", metric->id, bag);
    }
    pub_close(&table);
}
