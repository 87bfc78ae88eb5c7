#include "gaugebox/count.h"
#include "gaugebox/plan.h"

#include <math.h>

/* Common practice for "nearly dry", "damp" and "wet" as a hand feels it; IS 456 prints
   2.5, 5 and 7.5 % of surface water for moist, moderate and very wet sand. */
gb_share gb_sand_moisture(gb_sand_state state) {
    static const double SHARES[] = {
        [GB_NEARLY_DRY] = 0.02, [GB_DAMP] = 0.05, [GB_WET] = 0.08};
    return (gb_share){SHARES[state]};
}

gb_share gb_job_moisture(const gb_job *job) {
    return isnan(job->sand.moisture.of_one) ? gb_sand_moisture(job->sand.state)
                                            : job->sand.moisture;
}

gb_status gb_water_to_add(const gb_mix *mix, const gb_recipe *recipe, gb_share moisture,
                          double bags, gb_water_row *row) {
    double own = recipe->sand.kg * moisture.of_one;
    double least = recipe->water_least.kg - own;
    if (!gb_over(least, 0))
        return GB_TOO_WET;
    row->moisture = moisture;
    row->first.kg = bags * least * mix->water.first.of_one;
    row->usual.kg = bags * (recipe->water_usual.kg - own);
    row->most.kg = bags * (recipe->water_most.kg - own);
    return GB_OK;
}
