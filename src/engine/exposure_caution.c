#include "engine/caution.h"

#include <math.h>

/* What a limit that is missed raises, and how it is counted. Only air has two ends. */
static const struct {
    gb_caution_code code;
    gb_kind kind;
} RAISED[] = {
    [GB_ASKS_STRENGTH] = {GB_C_EXPOSED_WEAK, GB_PRESSURE},
    [GB_ASKS_RATIO] = {GB_C_EXPOSED_WET, GB_KINDS},
    [GB_ASKS_AIR_LEAST] = {GB_C_EXPOSED_LITTLE_AIR, GB_SHARE},
    [GB_ASKS_AIR_MOST] = {GB_C_EXPOSED_MUCH_AIR, GB_SHARE},
    [GB_ASKS_CEMENT] = {GB_C_EXPOSED_LEAN, GB_DENSITY},
    [GB_ASKS_STONE] = {GB_C_EXPOSED_UNKNOWN, GB_SHARE},
};
_Static_assert(sizeof RAISED / sizeof RAISED[0] == GB_EXPOSURE_LIMITS, "a row for each");

bool gb_is_of_exposure(gb_caution_code code) {
    return code >= GB_C_EXPOSED_WEAK && code <= GB_C_EXPOSED_UNKNOWN;
}

/* A layer's own classes go before the site's; those of the site are meant for concrete,
   not for the grout in block. A mix that states classes is held to them everywhere. */
static unsigned exposures_of(const gb_job *job, const gb_mix_plan *mix,
                             const gb_layer *layer) {
    unsigned of_mix = mix->need.mix->concrete.exposures;
    if (layer->exposures != 0)
        return layer->exposures | of_mix;
    return (mix->stuff == GB_AS_GROUT ? 0 : job->site.exposures) | of_mix;
}

static bool is_walked_on(const gb_take *take) {
    gb_piece_kind kind = take->piece->kind;
    return take->layer->kind == GB_SLAB && (kind == GB_TREAD || kind == GB_LANDING);
}

static gb_caution caution_of(const gb_exposure_miss *miss) {
    gb_caution_code code = miss->unknown ? GB_C_EXPOSED_UNKNOWN : RAISED[miss->of].code;
    return (gb_caution){.code = code,
                        .severity = gb_caution_severity(code),
                        .kind = RAISED[miss->of].kind,
                        .value = miss->value,
                        .limit = miss->limit,
                        .exposure = miss->exposure,
                        .asked = miss->of,
                        .source = gb_exposure_asks(miss->exposure).source};
}

static gb_caution not_stated(void) {
    gb_caution_code code = GB_C_EXPOSURE_NOT_STATED;
    return (gb_caution){.code = code,
                        .severity = gb_caution_severity(code),
                        .kind = GB_KINDS,
                        .value = GB_NONE,
                        .limit = GB_NONE,
                        .source = gb_caution_source(code)};
}

size_t gb_class_cautions(unsigned exposures, const gb_exposed_mix *known,
                         gb_caution *list) {
    gb_exposure_miss misses[GB_MOST_MISSES];
    size_t count = gb_exposure_check(exposures, known, misses);
    for (size_t i = 0; list != NULL && i < count; i++)
        list[i] = caution_of(&misses[i]);
    return count;
}

size_t gb_exposure_cautions(const gb_job *job, const gb_mix_plan *mix, gb_caution *list) {
    unsigned exposures = 0;
    bool walked_on = false; /* a slab of which no class is stated */
    if (!gb_is_concrete(mix->need.mix))
        return 0;
    for (size_t i = 0; i < mix->need.take_count; i++) {
        const gb_take *take = mix->need.takes[i];
        unsigned of_take = exposures_of(job, mix, take->layer);
        exposures |= of_take;
        walked_on = walked_on || (of_take == 0 && is_walked_on(take));
    }
    gb_exposed_mix known = gb_exposed_of(mix->need.mix, &mix->recipe);
    size_t count = gb_class_cautions(exposures, &known, list);
    if (walked_on && list != NULL)
        list[count] = not_stated();
    return count + walked_on;
}
