#include "gaugebox/day.h"

gb_site_needs gb_water_of_site(const gb_plan *plan, const gb_timetable *table) {
    const gb_crew *crew = &plan->job->crew;
    gb_site_water rates = gb_water_rates(&plan->job->water);
    double people = (double)gb_hands_of(crew) + 1;
    double wet_days = gb_wet_curing().s / (24 * 3600.0);
    gb_site_needs n = {.mixing = plan->water};
    for (size_t i = 0; i < plan->take_count; i++)
        if (plan->takes[i].layer->kind == GB_SLAB && plan->takes[i].area.m2 > 0)
            n.slab.m2 += plan->takes[i].units * plan->takes[i].area.m2;
    n.cleaning.m3 = (double)table->cleanings * rates.cleaning.m3;
    n.rinsing.m3 = people * (double)table->days_worked * rates.rinsing.m3;
    n.curing.m3 = n.slab.m2 * rates.curing.m * wet_days;
    n.sum.m3 = n.mixing.m3 + n.cleaning.m3 + n.rinsing.m3 + n.curing.m3;
    return n;
}
