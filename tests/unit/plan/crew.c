/* Mixers, paces by kind of layer, and the time in the mixer that a mix's life loses. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

/* ---- mixers ------------------------------------------------------------------------ */

Test(crew, usable_of_rated) {
    static const struct {
        const char *id;
        gb_mixer mixer;
        double ft3; /* NaN: not known */
    } ROWS[] = {
        {"stated", {.kind = GB_DRUM, .usable = {3 * FT3}, .rated = {6 * FT3}}, 3},
        {"paddle, all of it",
         {.kind = GB_PADDLE, .usable = {NAN}, .rated = {6 * FT3}},
         6},
        {"drum, 55 %", {.kind = GB_DRUM, .usable = {NAN}, .rated = {6 * FT3}}, 3.3},
        {"barrow, half", {.kind = GB_BARROW, .usable = {NAN}, .rated = {6 * FT3}}, 3},
        {"drum at 70 %",
         {.kind = GB_DRUM, .usable = {NAN}, .rated = {6 * FT3}, .filled = {0.7}},
         4.2},
        {"nothing", {.kind = GB_DRUM, .usable = {NAN}, .rated = {NAN}}, NAN},
        {"all zero", {.kind = GB_DRUM}, NAN},
    };
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        double ft3 = gb_usable(&ROWS[i].mixer).m3 / FT3;
        cr_expect(fx_near(ft3, ROWS[i].ft3, 1e-9), "%s: %g ft3", ROWS[i].id, ft3);
    }
}

/* 4 bags of 0.66 ft3: one batch in 3 ft3, two in 1.4, four in 0.7. */
static size_t batches_in(const gb_mixer *mixers, size_t count, const char **name) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    fx_volume(&f, &FX_BLEND, 4 * 0.66 * FT3);
    f.job.crew.mixers = mixers;
    f.job.crew.mixer_count = count;
    fx_plan(&f, &arena, &plan);
    const gb_batching *b = &plan.mixes[0].batching;
    size_t batches = b->batch_count;
    *name = b->mixer->name;
    gb_arena_release(&arena);
    return batches;
}

#define MIXER(what, ft3, lb, kinds)                                                      \
    { .name = (what), .usable = {(ft3)*FT3}, .most = {(lb)*LB}, .fills = (kinds) }

Test(crew, which_mixer) {
    enum { VOLUME = 1u << GB_VOLUME_LAYER, SLAB = 1u << GB_SLAB };
    static const struct {
        const char *id;
        gb_mixer mixers[3];
        size_t count;
        const char *chosen;
        size_t batches;
    } ROWS[] = {
        {"the fewest batches",
         {MIXER("a", 0.7, NAN, 0), MIXER("b", 3, NAN, 0)},
         2,
         "b",
         1},
        {"the first of equals",
         {MIXER("a", 3, NAN, 0), MIXER("b", 6, NAN, 0)},
         2,
         "a",
         1},
        {"kept for it", {MIXER("a", 3, NAN, 0), MIXER("b", 1.4, NAN, VOLUME)}, 2, "b", 2},
        {"kept for another",
         {MIXER("a", 1.4, NAN, 0), MIXER("b", 3, NAN, SLAB)},
         2,
         "a",
         2},
        {"kept for both",
         {MIXER("a", 6, NAN, 0), MIXER("b", 0.7, NAN, VOLUME | SLAB)},
         2,
         "b",
         4},
        {"a weak one", {MIXER("a", 6, 100, 0), MIXER("b", 1.4, NAN, 0)}, 2, "b", 2},
        {"one that holds none",
         {MIXER("a", 0.05, NAN, 0), MIXER("b", 0.7, NAN, 0)},
         2,
         "b",
         4},
    };
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        const char *name = NULL;
        size_t batches = batches_in(ROWS[i].mixers, ROWS[i].count, &name);
        cr_expect(strcmp(name, ROWS[i].chosen) == 0, "%s: %s", ROWS[i].id, name);
        cr_expect(batches == ROWS[i].batches, "%s: %zu batches", ROWS[i].id, batches);
    }
}

/* ---- paces ------------------------------------------------------------------------- */

/* 12 bags of 0.66 ft3 in a barrow are none too many, an eighth more are; a paddle mixer
   takes any. */
Test(crew, many_bags_by_hand) {
    const struct {
        double bags;
        gb_mixer_kind kind;
        size_t told;
    } ROWS[] = {{12, GB_BARROW, 0},
                {12.125, GB_BARROW, 1},
                {40, GB_BARROW, 1},
                {40, GB_PADDLE, 0}};
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_empty(&f);
        fx_volume(&f, &FX_BLEND, ROWS[i].bags * 0.66 * FT3);
        f.job.crew.mixer =
            (gb_mixer){.kind = ROWS[i].kind, .usable = {3 * FT3}, .most = {NAN}};
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = fx_of(&plan, FX_BLEND.id);
        cr_expect(fx_cautions(p, GB_C_BY_HAND) == ROWS[i].told, "%g bags", ROWS[i].bags);
        gb_arena_release(&arena);
    }
}

Test(crew, pace_of_a_kind) {
    static const gb_layer_pace PACES[] = {
        {.kinds = 1u << GB_SLAB | 1u << GB_CORE, .pace = {NAN, NAN, 0.001, 1}},
        {.kinds = 1u << GB_SLURRY, .pace = {NAN, 0.002, NAN, 2}}};
    gb_crew c = {.pace = {NAN, 0.01, NAN, 9}, .paces = PACES, .pace_count = 2};
    cr_expect(gb_pace_of(&c, GB_BED)->line == 9, "the crew's own");
    cr_expect(gb_pace_of(&c, GB_SLAB)->line == 1 && gb_pace_of(&c, GB_CORE)->line == 1);
    cr_expect(gb_pace_of(&c, GB_SLURRY)->line == 2, "one of its own goes first");
    cr_expect(gb_pace_of(&c, GB_JOINT) == NULL, "an area says nothing of a joint");
    c.pace = (gb_pace){NAN, NAN, 0.01, 9};
    cr_expect(gb_pace_of(&c, GB_JOINT)->line == 9, "a volume does");
    c.pace_count = 0;
    cr_expect(gb_pace_of(&c, GB_SLURRY) == NULL, "but not of a slurry");
    c.pace = (gb_pace){NAN, NAN, NAN, 0};
    cr_expect(gb_pace_of(&c, GB_BED) == NULL, "none is stated");
}

/* A bed at 17.5 ft2 an hour and a joint at 1 ft3 an hour in one mix: a bag of 3 ft3 lies
   under 3 / (1.25 / 12) = 28.8 ft2, 1.6457 h; as joint it takes 3 h, which holds. */
Test(crew, slowest_layer_holds) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    static const gb_layer_pace JOINTS[] = {
        {.kinds = 1u << GB_JOINT, .pace = {NAN, NAN, FT3 / HOUR, 1}}};
    fx_open(&arena);
    fx_empty(&f);
    f.job.crew.pace.m2_s = 17.5 * FT2 / HOUR;
    f.job.crew.paces = JOINTS;
    f.job.crew.pace_count = 1;
    fx_label(&f, &FX_BED, 94 * LB, 3 * FT3, true);
    fx_piece(&f, "treads", GB_TREAD, 7, 5 * FT, 14 * IN);
    fx_layer(&f, GB_BED, &FX_BED, 1.25 * IN);
    gb_layer *joint = fx_layer(&f, GB_JOINT, &FX_BED, IN);
    joint->joint_length.m = 5 * FT;
    joint->joint_width.m = 0.5 * IN;
    fx_plan(&f, &arena, &plan);
    cr_expect(fx_near(plan.mixes[0].batching.bag_time.s / HOUR, 3, 1e-9), "%g h",
              plan.mixes[0].batching.bag_time.s / HOUR);
    f.pieces[0].layer_count = 1;
    fx_plan(&f, &arena, &plan);
    cr_expect(fx_near(plan.mixes[0].batching.bag_time.s / HOUR, 28.8 / 17.5, 1e-9),
              "%g h", plan.mixes[0].batching.bag_time.s / HOUR);
    gb_arena_release(&arena);
}

/* ---- the time in the mixer --------------------------------------------------------- */

/* 1.5 ft3 an hour, a bag of 3 ft3: 2 h, the whole life, when mixing takes none of it; a
   minute of mixing leaves 119 min, 0.9917 of a bag, 7/8. */
Test(crew, mixing_is_of_the_life) {
    static const struct {
        double minutes, most;
    } ROWS[] = {{0, 1},   {1, 0.875}, {15, 0.875}, {15.1, 0.75},
                {119, 0}, {120, 0},   {200, 0}};
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        gb_mix mix = FX_BED;
        mix.mixing.s = ROWS[i].minutes * 60;
        fx_open(&arena);
        fx_empty(&f);
        fx_volume(&f, &mix, 9 * FT3);
        fx_label(&f, &mix, 94 * LB, 3 * FT3, true);
        f.job.crew.pace.m3_s = 1.5 * FT3 / HOUR;
        fx_plan(&f, &arena, &plan);
        cr_expect(fx_near(plan.mixes[0].batching.most_bags, ROWS[i].most, 1e-9),
                  "%g min: %g bags", ROWS[i].minutes, plan.mixes[0].batching.most_bags);
        gb_arena_release(&arena);
    }
}
