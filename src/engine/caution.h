/* Which cautions a plan raises. Codes and values only; the words are a writer's. */
#ifndef ENGINE_CAUTION_H
#define ENGINE_CAUTION_H

#include "gaugebox/plan.h"

/* At most one caution of each code. */
typedef struct gb_caution_list {
    gb_caution list[GB_CAUTION_CODES];
    size_t count;
} gb_caution_list;

void gb_add_caution(gb_caution_list *to, gb_caution_code code, double value,
                    double limit);

/* Those that the weather raises for one mix. */
void gb_weather_cautions(const gb_job *job, const gb_mix_plan *mix, gb_caution_list *to);

/* Those that a mix raises by itself: by what it claims to be and by its additions; the
   plan's own hold them too. */
void gb_entry_cautions(const gb_mix *mix, gb_caution_list *to);

/* Those that the plan of one mix raises. */
void gb_plan_cautions(const gb_job *job, const gb_mix_plan *mix, gb_caution_list *to);

/* One for each tread whose bed between levels is too thin or too thick, as many as it
   returns; NULL counts alone. */
size_t gb_level_cautions(const gb_need *need, gb_caution *list);

/* What the exposure of its concrete raises, once for each class and limit, as many as it
   returns; NULL counts alone. */
size_t gb_exposure_cautions(const gb_job *job, const gb_mix_plan *mix, gb_caution *list);

#endif
