/* Exposure classes: what is known of a mix against what a class asks for, and which
   cautions a plan raises of it. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "fixture.h"

#define PSI (4.4482216152605 / (IN * IN))

static const gb_material STONE = {
    .name = "stone", .kind = GB_COARSE, .bulk = {1600}, .gravity = 2.65, .pack = {NAN}};
static const gb_part PARTS[] = {
    {.material_name = "portland-cement", .material = &FX_CEMENT, .volume = 1},
    {.material_name = "masonry-sand", .material = &FX_SAND, .volume = 2},
    {.material_name = "stone", .material = &STONE, .volume = 4}};

/* 1 : 2 : 4, water to cement 0.64 at the most, 2 % of air, 12 MPa. */
static gb_mix concrete(void) {
    return (gb_mix){
        .name = "plain",
        .id = "own/plain",
        .uses = 1u << GB_SLAB | 1u << GB_CORE,
        .parts = PARTS,
        .part_count = 3,
        .consistency = GB_PLASTIC,
        .water = {GB_WATER_BINDER, {0.5}, {0.58}, {0.64}, {NAN}, {NAN}, {NAN}, {0.75}},
        .air = {0.02},
        .strength = {12e6},
        .spread = {NAN},
        .life = {HOUR},
        .life_hot = {HOUR},
        .open = {NAN}};
}

/* ---- the check ----------------------------------------------------------------------
 */

typedef struct row {
    const char *id;
    unsigned exposures;
    double strength_psi, ratio, air, cement, stone_in;
    size_t count;
    gb_exposure_limit of[4];
    bool unknown;
} row;

#define SET(class) (1u << (class))

/* Rules by their printed edges stand in tests/published/exposure; here is what goes
   together. */
static const row ROWS[] = {
    {"no class", 0, NAN, NAN, NAN, NAN, NAN, 0, {0}, false},
    {"good", SET(GB_IRC_SEVERE), 4000, NAN, 0.06, NAN, NAN, 0, {0}, false},
    {"nothing known",
     SET(GB_IRC_SEVERE),
     NAN,
     NAN,
     NAN,
     NAN,
     NAN,
     2,
     {GB_ASKS_STRENGTH, GB_ASKS_AIR_LEAST},
     true},
    {"no air is asked", SET(GB_IRC_NEGLIGIBLE), 2500, NAN, NAN, NAN, NAN, 0, {0}, false},
    {"nothing known, F2",
     SET(GB_ACI_318_F2),
     NAN,
     NAN,
     NAN,
     NAN,
     NAN,
     3,
     {GB_ASKS_STRENGTH, GB_ASKS_RATIO, GB_ASKS_AIR_LEAST},
     true},
    {"nothing known, XF4",
     SET(GB_EN_206_XF4),
     NAN,
     NAN,
     NAN,
     NAN,
     NAN,
     4,
     {GB_ASKS_STRENGTH, GB_ASKS_RATIO, GB_ASKS_AIR_LEAST, GB_ASKS_CEMENT},
     true},
    {"all missed, XF4",
     SET(GB_EN_206_XF4),
     1000,
     0.7,
     0.02,
     250,
     NAN,
     4,
     {GB_ASKS_STRENGTH, GB_ASKS_RATIO, GB_ASKS_AIR_LEAST, GB_ASKS_CEMENT},
     false},
    /* F2, stone not known: under 3.0 % misses every size, over 9.0 % too, 6.0 % meets
       all of 3/8 to 3 in, and else it is to be asked for */
    {"2.9 % of any stone",
     SET(GB_ACI_318_F2),
     5000,
     0.4,
     0.029,
     NAN,
     NAN,
     1,
     {GB_ASKS_AIR_LEAST},
     false},
    {"3 % of any stone",
     SET(GB_ACI_318_F2),
     5000,
     0.4,
     0.03,
     NAN,
     NAN,
     1,
     {GB_ASKS_STONE},
     true},
    {"6 % of any stone", SET(GB_ACI_318_F2), 5000, 0.4, 0.06, NAN, NAN, 0, {0}, false},
    {"9 % of any stone",
     SET(GB_ACI_318_F2),
     5000,
     0.4,
     0.09,
     NAN,
     NAN,
     1,
     {GB_ASKS_STONE},
     true},
    {"9.1 % of any stone",
     SET(GB_ACI_318_F2),
     5000,
     0.4,
     0.091,
     NAN,
     NAN,
     1,
     {GB_ASKS_AIR_MOST},
     false},
    /* 6 in stone is not in the table, nor is 5/8 in */
    {"6 in", SET(GB_ACI_318_F2), 5000, 0.4, 0.05, NAN, 6, 1, {GB_ASKS_STONE}, true},
    {"5/8 in", SET(GB_ACI_318_F2), 5000, 0.4, 0.05, NAN, 0.625, 1, {GB_ASKS_STONE}, true},
    {"3/4 in", SET(GB_ACI_318_F2), 5000, 0.4, 0.05, NAN, 0.75, 0, {0}, false},
    {"two classes",
     SET(GB_IRC_MODERATE) | SET(GB_IRC_SEVERE),
     3200,
     NAN,
     0.03,
     NAN,
     NAN,
     3,
     {GB_ASKS_AIR_LEAST, GB_ASKS_STRENGTH, GB_ASKS_AIR_LEAST},
     false},
};

Test(exposure, what_is_missed) {
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        const row *r = &ROWS[i];
        gb_exposed_mix mix = {.strength = {r->strength_psi * PSI},
                              .ratio = r->ratio,
                              .air = {r->air},
                              .cement = {r->cement},
                              .largest = {r->stone_in * IN}};
        gb_exposure_miss list[GB_MOST_MISSES];
        size_t count = gb_exposure_check(r->exposures, &mix, list);
        cr_expect(count == r->count, "%s: %zu", r->id, count);
        for (size_t k = 0; k < count && k < 4; k++) {
            cr_expect(list[k].of == r->of[k], "%s, %zu: %d", r->id, k, list[k].of);
            cr_expect(list[k].unknown == r->unknown, "%s, %zu", r->id, k);
        }
    }
}

/* Room for all classes at once, and each asks for strength. */
Test(exposure, all_classes_at_once) {
    gb_exposed_mix none = {{NAN}, NAN, {NAN}, {NAN}, {NAN}};
    gb_exposure_miss list[GB_MOST_MISSES];
    size_t count = gb_exposure_check(SET(GB_EXPOSURES) - 1, &none, list);
    cr_expect(count > GB_EXPOSURES && count <= GB_MOST_MISSES, "%zu", count);
    for (unsigned e = 0; e < GB_EXPOSURES; e++) {
        gb_exposure_rule rule = gb_exposure_asks((gb_exposure)e);
        cr_expect(GB_EXPOSURE_WORDS[e] != NULL && rule.source != NULL, "%u", e);
        cr_expect(rule.strength.pa >= 2500 * PSI - 1, "%s", GB_EXPOSURE_WORDS[e]);
    }
    cr_expect(GB_EXPOSURE_WORDS[GB_EXPOSURES] == NULL);
}

/* ---- what is known of a mix ---------------------------------------------------------
 */

Test(exposure, what_is_known_of_a_mix) {
    gb_mix mix = concrete();
    gb_recipe r = {0};
    cr_assert(gb_make_recipe(&mix, NULL, false, (gb_mass){NAN}, &r) == GB_OK);
    gb_exposed_mix known = gb_exposed_of(&mix, &r);
    cr_expect(fx_near(known.strength.pa, 12e6, 1));
    cr_expect(fx_near(known.ratio, 0.64, 1e-9), "%g", known.ratio);
    cr_expect(fx_near(known.air.of_one, 0.02, 1e-12));
    double cement = 94 * LB / r.yield.m3;
    cr_expect(fx_near(known.cement.kg_m3, cement, 1e-6), "%g", known.cement.kg_m3);
    cr_expect(isnan(known.largest.m));
    mix.strength.pa = NAN;
    cr_expect(isnan(gb_exposed_of(&mix, &r).strength.pa));
    mix.strength.pa = 0;
    cr_expect(isnan(gb_exposed_of(&mix, &r).strength.pa));
}

Test(exposure, a_bagged_blend_tells_its_air_alone) {
    gb_mix blend = FX_BLEND;
    gb_recipe r = {0};
    cr_assert(gb_make_recipe(&blend, NULL, false, (gb_mass){NAN}, &r) == GB_OK);
    gb_exposed_mix known = gb_exposed_of(&blend, &r);
    cr_expect(isnan(known.ratio) && isnan(known.air.of_one) && isnan(known.cement.kg_m3));
    blend.air.of_one = 0.06;
    cr_expect(fx_near(gb_exposed_of(&blend, &r).air.of_one, 0.06, 1e-12));
}

Test(exposure, what_is_concrete) {
    gb_mix stone_in_cores = concrete();
    stone_in_cores.uses = 1u << GB_CORE;
    gb_mix slab = FX_BED;
    slab.uses = 1u << GB_SLAB;
    gb_mix blend = FX_BLEND;
    blend.uses = 1u << GB_VOLUME_LAYER;
    gb_mix volume_of_mortar = FX_BED;
    volume_of_mortar.uses = 1u << GB_VOLUME_LAYER;
    cr_expect(gb_is_concrete(&stone_in_cores));
    cr_expect(gb_is_concrete(&slab));
    cr_expect(gb_is_concrete(&blend));
    cr_expect(gb_is_concrete(&volume_of_mortar) == false);
    cr_expect(gb_is_concrete(&FX_BED) == false);
    cr_expect(gb_is_concrete(&FX_SLURRY) == false);
}

/* ---- the cautions of a plan ---------------------------------------------------------
 */

typedef struct job_row {
    const char *id;
    gb_piece_kind kind;
    unsigned site, layer;
    size_t weak, wet, little, lean, unknown, not_stated;
} job_row;

static const job_row JOBS[] = {
    {"nothing stated, a landing", GB_LANDING, 0, 0, 0, 0, 0, 0, 0, 1},
    {"nothing stated, treads", GB_TREAD, 0, 0, 0, 0, 0, 0, 0, 1},
    {"nothing stated, a footing", GB_FOOTING, 0, 0, 0, 0, 0, 0, 0, 0},
    {"by the site", GB_LANDING, SET(GB_IRC_SEVERE), 0, 1, 0, 1, 0, 0, 0},
    {"by the layer", GB_LANDING, 0, SET(GB_EN_206_XF3), 1, 1, 1, 1, 0, 0},
    {"the layer goes before", GB_LANDING, SET(GB_EN_206_XF3), SET(GB_IRC_NEGLIGIBLE), 1,
     0, 0, 0, 0, 0},
    {"two classes", GB_FOOTING, SET(GB_IRC_MODERATE) | SET(GB_IRC_SEVERE), 0, 2, 0, 2, 0,
     0, 0},
};

static void plan_slabs(fx_job *f, const job_row *r, const gb_mix *mix, gb_arena *arena,
                       gb_plan *plan) {
    fx_empty(f);
    f->job.site.exposures = r->site;
    for (int i = 0; i < 2; i++) { /* two slabs raise it once */
        fx_piece(f, i == 0 ? "a" : "b", r->kind, 1, 6 * FT, 4 * FT);
        fx_layer(f, GB_SLAB, mix, 4 * IN)->exposures = r->layer;
    }
    fx_plan(f, arena, plan);
}

Test(exposure, once_for_each_class_and_limit) {
    for (size_t i = 0; i < ROWS_OF(JOBS); i++) {
        const job_row *r = &JOBS[i];
        gb_mix mix = concrete();
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        plan_slabs(&f, r, &mix, &arena, &plan);
        const gb_mix_plan *p = &plan.mixes[0];
        const struct {
            gb_caution_code code;
            size_t want;
        } counts[] = {{GB_C_EXPOSED_WEAK, r->weak},
                      {GB_C_EXPOSED_WET, r->wet},
                      {GB_C_EXPOSED_LITTLE_AIR, r->little},
                      {GB_C_EXPOSED_MUCH_AIR, 0},
                      {GB_C_EXPOSED_LEAN, r->lean},
                      {GB_C_EXPOSED_UNKNOWN, r->unknown},
                      {GB_C_EXPOSURE_NOT_STATED, r->not_stated}};
        for (size_t k = 0; k < ROWS_OF(counts); k++)
            cr_expect(fx_cautions(p, counts[k].code) == counts[k].want,
                      "%s: code %d, %zu", r->id, counts[k].code,
                      fx_cautions(p, counts[k].code));
        gb_arena_release(&arena);
    }
}

Test(exposure, value_limit_and_source) {
    gb_mix mix = concrete();
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    const job_row r = {.kind = GB_LANDING, .site = SET(GB_IRC_SEVERE)};
    plan_slabs(&f, &r, &mix, &arena, &plan);
    const gb_caution *c = fx_caution(&plan.mixes[0], GB_C_EXPOSED_WEAK);
    cr_assert(c != NULL);
    cr_expect(c->kind == GB_PRESSURE && c->severity == GB_CAUTION);
    cr_expect(fx_near(c->value, 12e6, 1) && fx_near(c->limit, 3500 * PSI, 1));
    cr_expect(c->exposure == GB_IRC_SEVERE && strstr(c->source, "R402.2") != NULL);
    gb_arena_release(&arena);
}

/* The classes of the site are for concrete: not for mortar, nor for grout with stone in
   the block; a core's own are. */
Test(exposure, mortar_and_grout_mind_no_site) {
    gb_mix grout = concrete();
    grout.uses = 1u << GB_CORE;
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    for (int own = 0; own < 2; own++) {
        fx_empty(&f);
        f.job.site.exposures = SET(GB_IRC_SEVERE);
        fx_piece(&f, "landing", GB_LANDING, 1, 6 * FT, 4 * FT);
        fx_layer(&f, GB_BED, &FX_BED, 1 * IN);
        gb_layer *core = fx_layer(&f, GB_CORE, &grout, NAN);
        core->volume.m3 = 1 * FT3;
        core->exposures = own ? SET(GB_IRC_SEVERE) : 0;
        fx_plan(&f, &arena, &plan);
        cr_expect(fx_cautions(fx_of(&plan, FX_BED.id), GB_C_EXPOSED_UNKNOWN) == 0);
        size_t weak = fx_cautions(fx_of(&plan, grout.id), GB_C_EXPOSED_WEAK);
        cr_expect(weak == (size_t)own, "%d: %zu", own, weak);
    }
    gb_arena_release(&arena);
}
