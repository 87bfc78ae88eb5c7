/* Weather: the bands of cold and heat on both sides of every edge, and what they bring.
 */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

#define NONE GB_CAUTION_CODES

/* TMS 602 articles 1.8 C and D, as tabulated in Masonry Magazine, September 2004: cold
   below 40 F, strict; bands 40-32, 32-25, 25-20 and below 20 share their edges, and a
   shared edge belongs to the colder band. Hot over 100 F, or over 90 F with wind over
   8 mph; shade over 115 F, or over 105 F with that wind; all strict. */
static const struct {
    double f;
    gb_caution_code cold, hot, hot_windy;
} BANDS[] = {
    {-30, GB_C_COLD_20, NONE, NONE},
    {19.99, GB_C_COLD_20, NONE, NONE},
    {20, GB_C_COLD_20, NONE, NONE},
    {20.01, GB_C_COLD_25, NONE, NONE},
    {24.99, GB_C_COLD_25, NONE, NONE},
    {25, GB_C_COLD_25, NONE, NONE},
    {25.01, GB_C_COLD_32, NONE, NONE},
    {31.99, GB_C_COLD_32, NONE, NONE},
    {32, GB_C_COLD_32, NONE, NONE},
    {32.01, GB_C_COLD_40, NONE, NONE},
    {39.99, GB_C_COLD_40, NONE, NONE},
    {40, NONE, NONE, NONE},
    {40.01, NONE, NONE, NONE},
    {65, NONE, NONE, NONE},
    {89.99, NONE, NONE, NONE},
    {90, NONE, NONE, NONE},
    {90.01, NONE, NONE, GB_C_HOT},
    {99.99, NONE, NONE, GB_C_HOT},
    {100, NONE, NONE, GB_C_HOT},
    {100.01, NONE, GB_C_HOT, GB_C_HOT},
    {104.99, NONE, GB_C_HOT, GB_C_HOT},
    {105, NONE, GB_C_HOT, GB_C_HOT},
    {105.01, NONE, GB_C_HOT, GB_C_HOT_SHADE},
    {114.99, NONE, GB_C_HOT, GB_C_HOT_SHADE},
    {115, NONE, GB_C_HOT, GB_C_HOT_SHADE},
    {115.01, NONE, GB_C_HOT_SHADE, GB_C_HOT_SHADE},
    {130, NONE, GB_C_HOT_SHADE, GB_C_HOT_SHADE},
    {NAN, NONE, NONE, NONE},
};

static const struct {
    double mph;
    bool windy;
} WINDS[] = {{NAN, false}, {0, false}, {7.99, false}, {8, false},
             {8.01, true}, {15, true}, {60, true}};

Test(bands, cold) {
    for (size_t i = 0; i < ROWS_OF(BANDS); i++) {
        gb_caution_code got = gb_cold_band((gb_temp){DEG_F(BANDS[i].f)});
        cr_expect(got == BANDS[i].cold, "%.2f F: code %d, not %d", BANDS[i].f, got,
                  BANDS[i].cold);
    }
}

Test(bands, hot) {
    for (size_t i = 0; i < ROWS_OF(BANDS); i++) {
        for (size_t k = 0; k < ROWS_OF(WINDS); k++) {
            gb_caution_code want = WINDS[k].windy ? BANDS[i].hot_windy : BANDS[i].hot;
            gb_caution_code got =
                gb_hot_band((gb_temp){DEG_F(BANDS[i].f)}, (gb_speed){WINDS[k].mph * MPH});
            cr_expect(got == want, "%.2f F, %.2f mph: code %d, not %d", BANDS[i].f,
                      WINDS[k].mph, got, want);
        }
    }
}

/* The same whole degrees by another rounding: F x 5 / 9 against F / 1.8, each read as the
   edge and not as its neighbour. */
Test(bands, edges_by_either_formula) {
    const double edges[] = {20, 25, 32, 40};
    for (size_t i = 0; i < ROWS_OF(edges); i++) {
        gb_temp a = {(edges[i] - 32) * 5 / 9}, b = {(edges[i] - 32) / 1.8};
        cr_expect(gb_cold_band(a) == gb_cold_band(b), "%g F", edges[i]);
    }
    const double hot[] = {90, 100, 105, 115};
    for (size_t i = 0; i < ROWS_OF(hot); i++) {
        gb_temp a = {(hot[i] - 32) * 5 / 9}, b = {(hot[i] - 32) / 1.8};
        for (size_t k = 0; k < ROWS_OF(WINDS); k++) {
            gb_speed wind = {WINDS[k].mph * MPH};
            cr_expect(gb_hot_band(a, wind) == gb_hot_band(b, wind), "%g F", hot[i]);
        }
    }
}

/* The plan of the library job in some weather. */
static void plan_in(const gb_weather *weather, gb_arena *arena, gb_plan *plan,
                    fx_job *f) {
    fx_library(f);
    f->job.weather = *weather;
    fx_plan(f, arena, plan);
}

static gb_weather no_weather(void) {
    fx_job f;
    fx_empty(&f);
    return f.job.weather;
}

static const gb_caution_code AIR[] = {GB_C_COLD_40, GB_C_COLD_32, GB_C_COLD_25,
                                      GB_C_COLD_20, GB_C_HOT,     GB_C_HOT_SHADE};

/* A plan carries the band of its air once, for bed and slurry alike, with the limit in
   force; and lives by the hot life in either hot band. */
Test(bands, a_plan_carries_the_band_of_its_air) {
    for (size_t i = 0; i < ROWS_OF(BANDS); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        gb_weather w = no_weather();
        w.air.c = DEG_F(BANDS[i].f);
        fx_open(&arena);
        plan_in(&w, &arena, &plan, &f);
        for (size_t m = 0; m < plan.mix_count; m++) {
            const gb_mix_plan *p = &plan.mixes[m];
            for (size_t k = 0; k < ROWS_OF(AIR); k++) {
                size_t want = AIR[k] == BANDS[i].cold || AIR[k] == BANDS[i].hot;
                cr_expect(fx_cautions(p, AIR[k]) == want, "%.2f F: code %d", BANDS[i].f,
                          AIR[k]);
            }
            double life =
                BANDS[i].hot == NONE ? p->need.mix->life.s : p->need.mix->life_hot.s;
            cr_expect(p->life.s == life, "%.2f F: lives %.0f s", BANDS[i].f, p->life.s);
        }
        gb_arena_release(&arena);
    }
}

static const struct {
    double f, mph;
    gb_caution_code code;
    double limit; /* F */
} LIMITS[] = {
    {39, NAN, GB_C_COLD_40, 40},     {30, NAN, GB_C_COLD_32, 32},
    {24, NAN, GB_C_COLD_25, 25},     {10, NAN, GB_C_COLD_20, 20},
    {101, NAN, GB_C_HOT, 100},       {95, 9, GB_C_HOT, 90},
    {120, NAN, GB_C_HOT_SHADE, 115}, {106, 9, GB_C_HOT_SHADE, 105},
    {120, 9, GB_C_HOT_SHADE, 105},
};

Test(bands, value_and_limit_of_a_band) {
    for (size_t i = 0; i < ROWS_OF(LIMITS); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        gb_weather w = no_weather();
        w.air.c = DEG_F(LIMITS[i].f);
        w.wind.m_s = LIMITS[i].mph * MPH;
        fx_open(&arena);
        plan_in(&w, &arena, &plan, &f);
        const gb_caution *c = fx_caution(&plan.mixes[0], LIMITS[i].code);
        cr_assert(c != NULL, "%g F: no caution", LIMITS[i].f);
        cr_expect(fx_near(c->value, DEG_F(LIMITS[i].f), 1e-9), "%g F: value %.4f",
                  LIMITS[i].f, c->value);
        cr_expect(fx_near(c->limit, DEG_F(LIMITS[i].limit), 1e-9), "%g F: limit %.4f",
                  LIMITS[i].f, c->limit);
        cr_expect(c->kind == GB_TEMP, "%g F: kind %d", LIMITS[i].f, c->kind);
        gb_arena_release(&arena);
    }
}

/* Stone and block, F. Below 40 F nothing is set: a slurry has no heat of its own, and the
   units draw it from any other mix (common practice), each with its own code. At 32 F and
   below they are frozen (TMS 602), which is said in place of it. */
static const struct {
    double stone, block;
    bool frozen, cold;
    double coldest;
} STONES[] = {
    {NAN, NAN, false, false, NAN},    {58, 56, false, false, NAN},
    {40, 40, false, false, NAN},      {40.01, NAN, false, false, NAN},
    {NAN, 40, false, false, NAN},     {39.99, NAN, false, true, 39.99},
    {NAN, 39.99, false, true, 39.99}, {60, 35, false, true, 35},
    {35, 60, false, true, 35},        {36, 34, false, true, 34},
    {32.01, NAN, false, true, 32.01}, {NAN, 32.01, false, true, 32.01},
    {32, NAN, true, false, 32},       {NAN, 32, true, false, 32},
    {32, 39, true, false, 32},        {60, 32, true, false, 32},
    {31.99, NAN, true, false, 31.99}, {NAN, 31.99, true, false, 31.99},
    {60, 10, true, false, 10},        {36, 30, true, false, 30},
};

/* The cautions of cold units in one mix: `cold` is the code of its kind, `other` that of
   the other kind. */
static void expect_units(const gb_mix_plan *p, size_t i, gb_caution_code cold,
                         gb_caution_code other) {
    const char *id = p->need.mix->id;
    cr_expect(fx_cautions(p, GB_C_UNITS_FROZEN) == STONES[i].frozen, "row %zu: %s", i,
              id);
    cr_expect(fx_cautions(p, cold) == STONES[i].cold, "row %zu: %s, cold", i, id);
    cr_expect(fx_cautions(p, other) == 0, "row %zu: %s, code %d", i, id, other);
    const gb_caution *c = fx_caution(p, STONES[i].frozen ? GB_C_UNITS_FROZEN : cold);
    if (c == NULL)
        return;
    cr_expect(fx_near(c->value, DEG_F(STONES[i].coldest), 1e-9), "row %zu: %s", i, id);
    cr_expect(fx_near(c->limit, DEG_F(STONES[i].frozen ? 32 : 40), 1e-9), "row %zu: %s",
              i, id);
    cr_expect(c->kind == GB_TEMP && c->severity == GB_STOP, "row %zu: %s", i, id);
}

Test(bands, stone_and_block) {
    for (size_t i = 0; i < ROWS_OF(STONES); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        fx_volume(&f, &FX_LIME_MORTAR, 1 * FT3);
        fx_volume(&f, &FX_BLEND, 1 * FT3);
        f.job.weather.air.c = DEG_F(70);
        f.job.weather.stone.c = DEG_F(STONES[i].stone);
        f.job.weather.block.c = DEG_F(STONES[i].block);
        fx_plan(&f, &arena, &plan);
        cr_assert(plan.mix_count == 4);
        const gb_mix *others[] = {&FX_BED, &FX_LIME_MORTAR, &FX_BLEND};
        for (size_t k = 0; k < ROWS_OF(others); k++)
            expect_units(fx_of(&plan, others[k]->id), i, GB_C_UNITS_COLD,
                         GB_C_STONE_COLD);
        expect_units(fx_of(&plan, FX_SLURRY.id), i, GB_C_STONE_COLD, GB_C_UNITS_COLD);
        gb_arena_release(&arena);
    }
}

/* What is a slurry goes by the layers that a mix fills, all of them, not by its name. */
Test(bands, a_slurry_is_what_fills_slurries_alone) {
    const gb_layer_kind kinds[] = {GB_BED,  GB_SLURRY, GB_JOINT,       GB_POINTING,
                                   GB_SLAB, GB_CORE,   GB_VOLUME_LAYER};
    for (size_t i = 0; i < ROWS_OF(kinds); i++) {
        for (size_t other = 0; other < 2; other++) {
            gb_arena arena;
            gb_plan plan;
            fx_job f;
            fx_open(&arena);
            fx_empty(&f);
            f.job.weather.stone.c = DEG_F(36);
            fx_piece(&f, "pieces", GB_LANDING, 2, 5 * FT, 1 * FT);
            gb_layer *layer = fx_layer(&f, kinds[i], &FX_SLURRY, 0.125 * IN);
            layer->volume.m3 = 0.1 * FT3;
            layer->joint_length.m = 5 * FT;
            layer->joint_width.m = 0.5 * IN;
            if (other == 1)
                fx_volume(&f, &FX_SLURRY, 0.1 * FT3);
            fx_plan(&f, &arena, &plan);
            const gb_mix_plan *p = &plan.mixes[0];
            size_t slurry = kinds[i] == GB_SLURRY && other == 0;
            cr_expect(p->is_slurry == slurry, "kind %d, %zu more", kinds[i], other);
            cr_expect(fx_cautions(p, GB_C_STONE_COLD) == slurry, "kind %d", kinds[i]);
            cr_expect(fx_cautions(p, GB_C_UNITS_COLD) == 1 - slurry, "kind %d", kinds[i]);
            gb_arena_release(&arena);
        }
    }
}

/* 40 F and 32 F by either formula are the edge and not its neighbour. */
Test(bands, edges_of_units_by_either_formula) {
    const struct {
        double c;
        size_t frozen, cold;
    } rows[] = {{8 * 5 / 9.0, 0, 0},
                {8 / 1.8, 0, 0},
                {(40.0 - 32) * (5.0 / 9), 0, 0},
                {0, 1, 0},
                {-0.0, 1, 0}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        gb_weather w = no_weather();
        w.stone.c = rows[i].c;
        fx_open(&arena);
        plan_in(&w, &arena, &plan, &f);
        for (size_t m = 0; m < plan.mix_count; m++) {
            const gb_mix_plan *p = &plan.mixes[m];
            size_t cold =
                fx_cautions(p, GB_C_STONE_COLD) + fx_cautions(p, GB_C_UNITS_COLD);
            cr_expect(fx_cautions(p, GB_C_UNITS_FROZEN) == rows[i].frozen, "row %zu", i);
            cr_expect(cold == rows[i].cold, "row %zu", i);
        }
        gb_arena_release(&arena);
    }
}

/* Freezing itself is frost. */
Test(bands, frost_and_rain) {
    const struct {
        double low; /* F */
        bool rain, frost;
    } rows[] = {{NAN, false, false}, {33, false, false},  {32.01, false, false},
                {32, false, true},   {31.99, true, true}, {0, false, true},
                {50, true, false},   {NAN, true, false}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        gb_weather w = no_weather();
        w.low.c = DEG_F(rows[i].low);
        w.rain = rows[i].rain;
        fx_open(&arena);
        plan_in(&w, &arena, &plan, &f);
        for (size_t m = 0; m < plan.mix_count; m++) {
            const gb_mix_plan *p = &plan.mixes[m];
            cr_expect(fx_cautions(p, GB_C_FROST_DUE) == rows[i].frost, "row %zu", i);
            cr_expect(fx_cautions(p, GB_C_RAIN) == rows[i].rain, "row %zu", i);
            const gb_caution *c = fx_caution(p, GB_C_FROST_DUE);
            cr_expect(c == NULL || fx_near(c->value, DEG_F(rows[i].low), 1e-9), "row %zu",
                      i);
        }
        gb_arena_release(&arena);
    }
}

Test(bands, no_weather_no_caution_of_weather) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    for (size_t m = 0; m < plan.mix_count; m++)
        for (size_t c = GB_C_COLD_40; c < GB_CAUTION_CODES; c++)
            cr_expect(fx_cautions(&plan.mixes[m], (gb_caution_code)c) == 0, "code %zu",
                      c);
    gb_arena_release(&arena);
}
