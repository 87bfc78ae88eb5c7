#include "gaugebox/crew.h"

#include <math.h>

gb_share gb_usual_filled(gb_mixer_kind kind) {
    static const double FILLED[] = {
        [GB_PADDLE] = 1.0, [GB_DRUM] = 0.55, [GB_BARROW] = 0.5};
    _Static_assert(sizeof FILLED / sizeof FILLED[0] == GB_MIXER_KINDS, "one for each");
    return (gb_share){FILLED[kind]};
}

gb_volume gb_usable(const gb_mixer *mixer) {
    if (mixer->usable.m3 > 0)
        return mixer->usable;
    double filled = mixer->filled.of_one > 0 ? mixer->filled.of_one
                                             : gb_usual_filled(mixer->kind).of_one;
    return (gb_volume){mixer->rated.m3 > 0 ? mixer->rated.m3 * filled : GB_NONE};
}

double gb_most_by_hand(void) {
    return 12;
}

const gb_mixer *gb_mixers_of(const gb_crew *crew, size_t *count) {
    *count = crew->mixer_count > 0 ? crew->mixer_count : 1;
    return crew->mixer_count > 0 ? crew->mixers : &crew->mixer;
}

static bool is_stated(const gb_pace *pace) {
    return !isnan(pace->treads_s) || !isnan(pace->m2_s) || !isnan(pace->m3_s);
}

const gb_pace *gb_pace_of(const gb_crew *crew, gb_layer_kind kind) {
    for (size_t i = 0; i < crew->pace_count; i++)
        if (crew->paces[i].kinds >> kind & 1)
            return &crew->paces[i].pace;
    const gb_pace *pace = &crew->pace;
    bool by_volume = !isnan(pace->m3_s);
    bool holds = by_volume ? kind != GB_SLURRY : kind == GB_BED || kind == GB_SLURRY;
    return is_stated(pace) && holds ? pace : NULL;
}

/* A unit test's crew, all zero, states nothing either. */
static gb_duration or_usual(gb_duration stated, double minutes) {
    return stated.s > 0 ? stated : (gb_duration){minutes * 60.0};
}

gb_duration gb_mixing_time(const gb_crew *crew) {
    return or_usual(crew->mixing, 10);
}

gb_duration gb_potting_time(const gb_crew *crew) {
    return or_usual(crew->potting, 3);
}

gb_duration gb_cleaning_time(const gb_crew *crew) {
    return or_usual(crew->cleaning, 15);
}

size_t gb_hands_of(const gb_crew *crew) {
    return crew->hands > 0 ? crew->hands : 1;
}

gb_duration gb_day_end(const gb_crew *crew) {
    static const double USUAL_DAY_S = 8 * 3600.0; /* common practice */
    static const double DAY_S = 24 * 3600.0;
    if (isnan(crew->finish.s))
        return (gb_duration){crew->start.s + USUAL_DAY_S};
    bool next_day = crew->finish.s <= crew->start.s;
    return (gb_duration){crew->finish.s + (next_day ? DAY_S : 0)};
}

gb_site_water gb_water_rates(const gb_site_water *stated) {
    static const double GALLON_M3 = 0.003785411784;
    gb_site_water w = *stated;
    if (!(w.cleaning.m3 > 0))
        w.cleaning.m3 = 5 * GALLON_M3;
    if (!(w.rinsing.m3 > 0))
        w.rinsing.m3 = 7 * GALLON_M3;
    if (!(w.curing.m > 0))
        w.curing.m = 0.004;
    return w;
}
