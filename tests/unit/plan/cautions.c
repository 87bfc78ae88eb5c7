/* Cautions of a plan: what raises each, with which value, and that each comes once. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "fixture.h"

/* How a mason takes each: a stop means no mix is made or nothing is set until it is
   mended. Sources: TMS 602 for the masonry bands and frozen units, else practice. */
static const struct {
    gb_caution_code code;
    gb_severity severity;
    const char *source;
} CODES[] = {
    {GB_C_MIXER_SMALL, GB_CAUTION, "common practice"},
    {GB_C_MIXER_WEAK, GB_CAUTION, "common practice"},
    {GB_C_MIXER_TOO_SMALL, GB_STOP, "common practice"},
    {GB_C_MIXER_TOO_WEAK, GB_STOP, "common practice"},
    {GB_C_LIFE_TOO_SHORT, GB_STOP, "common practice"},
    {GB_C_LIFE_SHORT, GB_CAUTION, "common practice"},
    {GB_C_SCORED_THIN, GB_NOTE, "common practice"},
    {GB_C_BED_THIN, GB_CAUTION, "common practice"},
    {GB_C_BED_THICK, GB_CAUTION, "common practice"},
    {GB_C_DEPTH_SPREAD, GB_CAUTION, "common practice"},
    {GB_C_BY_HAND, GB_NOTE, "common practice"},
    {GB_C_AIR_BY_HAND, GB_STOP, "common practice"},
    {GB_C_AIR_BY_NOTHING, GB_CAUTION, "common practice"},
    {GB_C_NO_PACE, GB_NOTE, "common practice"},
    {GB_C_SAND_DRINKS, GB_CAUTION, "common practice"},
    {GB_C_SAND_TOO_WET, GB_STOP, "common practice"},
    {GB_C_BUCKET_HEAVY, GB_CAUTION, "NIOSH"},
    {GB_C_SHOVELS_DIFFER, GB_CAUTION, "common practice"},
    {GB_C_COLOUR_PARTS, GB_NOTE, "common practice"},
    {GB_C_COLOUR_STRONG, GB_CAUTION, "TMS 602"},
    {GB_C_CARBON_BLACK, GB_CAUTION, "TMS 602"},
    {GB_C_ANTIFREEZE, GB_CAUTION, "common practice"},
    {GB_C_CHLORIDE, GB_CAUTION, "ACI 306R"},
    {GB_C_COLD_40, GB_CAUTION, "TMS 602"},
    {GB_C_COLD_32, GB_CAUTION, "TMS 602"},
    {GB_C_COLD_25, GB_CAUTION, "TMS 602"},
    {GB_C_COLD_20, GB_STOP, "TMS 602"},
    {GB_C_WIND_BREAK, GB_CAUTION, "TMS 602"},
    {GB_C_CONCRETE_COLD, GB_CAUTION, "ACI 306R"},
    {GB_C_DRYING, GB_CAUTION, "ACI 305R"},
    {GB_C_DRYING_UNKNOWN, GB_NOTE, "ACI 305R"},
    {GB_C_HOT, GB_CAUTION, "TMS 602"},
    {GB_C_HOT_SHADE, GB_CAUTION, "TMS 602"},
    {GB_C_STONE_COLD, GB_STOP, "common practice"},
    {GB_C_UNITS_COLD, GB_STOP, "common practice"},
    {GB_C_UNITS_FROZEN, GB_STOP, "TMS 602"},
    {GB_C_FROST_DUE, GB_STOP, "common practice"},
    {GB_C_CONCRETE_HOT, GB_CAUTION, "ACI 301"},
    {GB_C_RAIN_AFTER, GB_CAUTION, "UFGS"},
    {GB_C_RAIN, GB_STOP, "common practice"},
    {GB_C_CLAIM_CEMENT, GB_CAUTION, "claims"},
    {GB_C_LIME_LITTLE, GB_CAUTION, "claims"},
    {GB_C_LIME_NOT_OVER, GB_CAUTION, "claims"},
    {GB_C_LIME_MUCH, GB_CAUTION, "claims"},
    {GB_C_SAND_LITTLE, GB_CAUTION, "claims"},
    {GB_C_SAND_MUCH, GB_CAUTION, "claims"},
    {GB_C_SAND_CEMENT_LITTLE, GB_CAUTION, "claims"},
    {GB_C_SAND_CEMENT_MUCH, GB_CAUTION, "claims"},
    {GB_C_STONE_LITTLE, GB_CAUTION, "claims"},
    {GB_C_STONE_MUCH, GB_CAUTION, "claims"},
    {GB_C_PORTLAND_LITTLE, GB_CAUTION, "claims"},
    {GB_C_PORTLAND_MUCH, GB_CAUTION, "claims"},
    {GB_C_EXPOSED_WEAK, GB_CAUTION, "exposure class"},
    {GB_C_EXPOSED_WET, GB_CAUTION, "exposure class"},
    {GB_C_EXPOSED_LITTLE_AIR, GB_CAUTION, "exposure class"},
    {GB_C_EXPOSED_MUCH_AIR, GB_CAUTION, "exposure class"},
    {GB_C_EXPOSED_LEAN, GB_CAUTION, "exposure class"},
    {GB_C_EXPOSED_UNKNOWN, GB_NOTE, "exposure class"},
    {GB_C_EXPOSURE_NOT_STATED, GB_NOTE, "common practice"},
};
_Static_assert(ROWS_OF(CODES) == GB_CAUTION_CODES, "a row for every code");

Test(cautions, every_code_has_its_severity_and_source) {
    for (size_t i = 0; i < ROWS_OF(CODES); i++) {
        cr_expect(CODES[i].code == (gb_caution_code)i, "row %zu is out of order", i);
        cr_expect(gb_caution_severity(CODES[i].code) == CODES[i].severity, "code %zu", i);
        const char *source = gb_caution_source(CODES[i].code);
        cr_expect(source != NULL && strstr(source, CODES[i].source) != NULL,
                  "code %zu: source '%s'", i, source);
    }
}

#define CODE(name)                                                                       \
    { #name, GB_##name }
static const struct {
    const char *name;
    gb_caution_code code;
} NAMES[] = {
    CODE(C_MIXER_SMALL),
    CODE(C_MIXER_WEAK),
    CODE(C_MIXER_TOO_SMALL),
    CODE(C_MIXER_TOO_WEAK),
    CODE(C_LIFE_TOO_SHORT),
    CODE(C_LIFE_SHORT),
    CODE(C_SCORED_THIN),
    CODE(C_BED_THIN),
    CODE(C_BED_THICK),
    CODE(C_DEPTH_SPREAD),
    CODE(C_BY_HAND),
    CODE(C_AIR_BY_HAND),
    CODE(C_AIR_BY_NOTHING),
    CODE(C_NO_PACE),
    CODE(C_SAND_DRINKS),
    CODE(C_SAND_TOO_WET),
    CODE(C_BUCKET_HEAVY),
    CODE(C_SHOVELS_DIFFER),
    CODE(C_COLOUR_PARTS),
    CODE(C_COLOUR_STRONG),
    CODE(C_CARBON_BLACK),
    CODE(C_ANTIFREEZE),
    CODE(C_CHLORIDE),
    CODE(C_COLD_40),
    CODE(C_COLD_32),
    CODE(C_COLD_25),
    CODE(C_COLD_20),
    CODE(C_WIND_BREAK),
    CODE(C_CONCRETE_COLD),
    CODE(C_DRYING),
    CODE(C_DRYING_UNKNOWN),
    CODE(C_HOT),
    CODE(C_HOT_SHADE),
    CODE(C_STONE_COLD),
    CODE(C_UNITS_COLD),
    CODE(C_UNITS_FROZEN),
    CODE(C_FROST_DUE),
    CODE(C_CONCRETE_HOT),
    CODE(C_RAIN_AFTER),
    CODE(C_RAIN),
    CODE(C_CLAIM_CEMENT),
    CODE(C_LIME_LITTLE),
    CODE(C_LIME_NOT_OVER),
    CODE(C_LIME_MUCH),
    CODE(C_SAND_LITTLE),
    CODE(C_SAND_MUCH),
    CODE(C_SAND_CEMENT_LITTLE),
    CODE(C_SAND_CEMENT_MUCH),
    CODE(C_STONE_LITTLE),
    CODE(C_STONE_MUCH),
    CODE(C_PORTLAND_LITTLE),
    CODE(C_PORTLAND_MUCH),
    CODE(C_EXPOSED_WEAK),
    CODE(C_EXPOSED_WET),
    CODE(C_EXPOSED_LITTLE_AIR),
    CODE(C_EXPOSED_MUCH_AIR),
    CODE(C_EXPOSED_LEAN),
    CODE(C_EXPOSED_UNKNOWN),
    CODE(C_EXPOSURE_NOT_STATED),
};
_Static_assert(ROWS_OF(NAMES) == GB_CAUTION_CODES, "a name for every code");

static const struct {
    const char *code, *label;
} LABELS[] = {
#define GB_ROW(code, label, words) {#code, label},
#include "gaugebox/rows.def"
#undef GB_ROW
};

/* The label that a sheet prints says the severity: the words and the table agree. */
Test(cautions, the_printed_label_is_the_severity) {
    static const char *const SEVERITIES[] = {
        [GB_NOTE] = "NOTE", [GB_CAUTION] = "CAUTION", [GB_STOP] = "STOP"};
    for (size_t i = 0; i < ROWS_OF(NAMES); i++) {
        size_t found = 0;
        for (size_t k = 0; k < ROWS_OF(LABELS); k++) {
            if (strcmp(LABELS[k].code, NAMES[i].name) != 0)
                continue;
            found++;
            const char *want = SEVERITIES[gb_caution_severity(NAMES[i].code)];
            cr_expect(strcmp(LABELS[k].label, want) == 0, "%s is labelled %s, not %s",
                      NAMES[i].name, LABELS[k].label, want);
        }
        cr_expect(found == 1, "%s: %zu rows", NAMES[i].name, found);
    }
}

/* The mixers and crews of the rows below: 1:4 makes 3.4218 ft3 of 452.402 lb a bag, an
   eighth 0.42773 ft3 of 56.550 lb; the thinner bed of the library job, 1-1/4 in and 10 %,
   takes a bag on 3.4218 / 0.114583 = 29.863 ft2; it lives 2 h: 14.93 ft2 an hour are a
   bag, 1.866 an eighth of one. */
static const struct {
    const char *id;
    double usable, most, pace; /* ft3, lb, ft2 an hour; NaN: none */
    gb_caution_code code;      /* GB_CAUTION_CODES: none of the six */
    gb_kind kind;
    double value, limit; /* ft3, lb or h */
} MIXERS[] = {
    {"one bag", 3.5, NAN, 20, GB_CAUTION_CODES, 0, 0, 0},
    {"half a bag", 1.8, NAN, 20, GB_C_MIXER_SMALL, GB_VOLUME, 1.8, 3.4218},
    {"hardly a bag", 3.42, NAN, 20, GB_C_MIXER_SMALL, GB_VOLUME, 3.42, 3.4218},
    {"half a bag borne", 6, 230, 20, GB_C_MIXER_WEAK, GB_MASS, 230, 452.402},
    {"a bag borne", 6, 453, 20, GB_CAUTION_CODES, 0, 0, 0},
    {"below an eighth", 0.427, NAN, 20, GB_C_MIXER_TOO_SMALL, GB_VOLUME, 0.427, 0.42773},
    {"an eighth", 0.428, NAN, 20, GB_C_MIXER_SMALL, GB_VOLUME, 0.428, 3.4218},
    {"eighth not borne", 6, 56.5, 20, GB_C_MIXER_TOO_WEAK, GB_MASS, 56.5, 56.550},
    {"an eighth borne", 6, 56.6, 20, GB_C_MIXER_WEAK, GB_MASS, 56.6, 452.402},
    {"a bag in its life", 6, NAN, 15, GB_CAUTION_CODES, 0, 0, 0},
    /* 29.863 / 14.9, / 10 and / 1.9 h; an eighth of 29.863 / 1.8 */
    {"hardly in its life", 6, NAN, 14.9, GB_C_LIFE_SHORT, GB_DURATION, 2.0042, 2},
    {"a slow crew", 6, NAN, 10, GB_C_LIFE_SHORT, GB_DURATION, 2.9863, 2},
    {"an eighth in its life", 6, NAN, 1.9, GB_C_LIFE_SHORT, GB_DURATION, 15.7176, 2},
    {"no eighth in it", 6, NAN, 1.8, GB_C_LIFE_TOO_SHORT, GB_DURATION, 2.0738, 2},
    /* of two that leave nothing the first: volume, mass, time */
    {"small and weak", 0.4, 40, 20, GB_C_MIXER_TOO_SMALL, GB_VOLUME, 0.4, 0.42773},
    {"small and slow", 0.4, NAN, 1, GB_C_MIXER_TOO_SMALL, GB_VOLUME, 0.4, 0.42773},
    {"weak and slow", 6, 40, 1, GB_C_MIXER_TOO_WEAK, GB_MASS, 40, 56.550},
    /* else the one that leaves less: 4/8 by volume or mass and 10 / 29.863, 2/8, by time;
       1 / 3.4218, 2/8, by volume and 4/8 by mass */
    {"slower than small", 1.8, NAN, 5, GB_C_LIFE_SHORT, GB_DURATION, 5.9727, 2},
    {"slower than weak", 6, 230, 5, GB_C_LIFE_SHORT, GB_DURATION, 5.9727, 2},
    {"smaller than weak", 1, 230, 20, GB_C_MIXER_SMALL, GB_VOLUME, 1, 3.4218},
    {"too weak for a small one", 1, 50, 20, GB_C_MIXER_TOO_WEAK, GB_MASS, 50, 56.550},
    {"too slow for a small one", 1, NAN, 1.8, GB_C_LIFE_TOO_SHORT, GB_DURATION, 2.0738,
     2},
};
static const gb_caution_code MIXER_CODES[] = {GB_C_MIXER_SMALL,     GB_C_MIXER_WEAK,
                                              GB_C_MIXER_TOO_SMALL, GB_C_MIXER_TOO_WEAK,
                                              GB_C_LIFE_TOO_SHORT,  GB_C_LIFE_SHORT};

static void mixer_job(fx_job *f, double usable, double most, double pace) {
    fx_library(f);
    f->job.crew.mixer.usable.m3 = usable * FT3;
    f->job.crew.mixer.most.kg = most * LB;
    f->job.crew.pace = (gb_pace){NAN, pace * FT2 / HOUR, NAN, 0};
}

/* That code once, and of the six no other. */
static void expect_only(const gb_mix_plan *p, gb_caution_code code, const char *id) {
    for (size_t k = 0; k < ROWS_OF(MIXER_CODES); k++)
        cr_expect(fx_cautions(p, MIXER_CODES[k]) == (size_t)(MIXER_CODES[k] == code),
                  "%s: code %d", id, MIXER_CODES[k]);
}

static double unit_of(gb_kind kind) {
    return kind == GB_MASS ? LB : kind == GB_DURATION ? HOUR : FT3;
}

Test(cautions, mixers_and_crews) {
    for (size_t i = 0; i < ROWS_OF(MIXERS); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        mixer_job(&f, MIXERS[i].usable, MIXERS[i].most, MIXERS[i].pace);
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = fx_of(&plan, FX_BED.id);
        expect_only(p, MIXERS[i].code, MIXERS[i].id);
        const gb_caution *c = fx_caution(p, MIXERS[i].code);
        double unit = unit_of(MIXERS[i].kind);
        if (c != NULL) {
            cr_expect(c->kind == MIXERS[i].kind, "%s: kind %d", MIXERS[i].id, c->kind);
            cr_expect(fx_near(c->value / unit, MIXERS[i].value, 0.0005), "%s: value %.5f",
                      MIXERS[i].id, c->value / unit);
            cr_expect(fx_near(c->limit / unit, MIXERS[i].limit, 0.0005), "%s: limit %.5f",
                      MIXERS[i].id, c->limit / unit);
        }
        gb_arena_release(&arena);
    }
}

/* In heat the mix lives 1 h: 29.863 / 20 = 1.4932 h a bag is too long then, and 29.863 /
   3.7 / 8 = 1.0089 h for an eighth. */
Test(cautions, the_life_in_heat_is_the_limit) {
    const struct {
        double pace, value_h;
        gb_caution_code code;
    } rows[] = {{20, 1.4932, GB_C_LIFE_SHORT},
                {3.7, 1.0089, GB_C_LIFE_TOO_SHORT},
                {30, 0, GB_CAUTION_CODES}}; /* 0.9954 h a bag */
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        mixer_job(&f, 6, NAN, rows[i].pace);
        f.job.weather.air.c = DEG_F(101);
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = fx_of(&plan, FX_BED.id);
        expect_only(p, rows[i].code, "in heat");
        const gb_caution *c = fx_caution(p, rows[i].code);
        cr_expect(c == NULL || fx_near(c->value / HOUR, rows[i].value_h, 0.0005),
                  "%g ft2 an hour", rows[i].pace);
        cr_expect(c == NULL || fx_near(c->limit / HOUR, 1, 1e-9), "%g ft2 an hour",
                  rows[i].pace);
        gb_arena_release(&arena);
    }
}

/* What fits one batch is no matter of the mixer or the crew. Each of these leaves 2/8 of
   a bag: 1 / 3.4218 = 0.29, 120 / 452.402 = 0.27, 2 h x 0.5 / 3.4218 = 0.29. 0.855 ft3
   are 0.24987 of a bag, 0.856 are 0.25016. */
static const struct {
    const char *id;
    double usable, most, pace; /* ft3, lb, ft3 an hour */
    gb_caution_code code;      /* when two batches are needed */
} SMALL[] = {
    {"small mixer", 1, NAN, 6, GB_C_MIXER_SMALL},
    {"weak mixer", 6, 120, 6, GB_C_MIXER_WEAK},
    {"slow crew", 6, NAN, 0.5, GB_C_LIFE_SHORT},
};

Test(cautions, a_small_need_minds_no_limit) {
    const double needs[] = {0.01, 0.3, 0.855, 0.856, 3};
    for (size_t i = 0; i < ROWS_OF(SMALL); i++) {
        for (size_t k = 0; k < ROWS_OF(needs); k++) {
            gb_arena arena;
            gb_plan plan;
            fx_job f;
            fx_open(&arena);
            fx_empty(&f);
            fx_volume(&f, &FX_BED, needs[k] * FT3);
            f.job.crew.mixer.usable.m3 = SMALL[i].usable * FT3;
            f.job.crew.mixer.most.kg = SMALL[i].most * LB;
            f.job.crew.pace.m3_s = SMALL[i].pace * FT3 / HOUR;
            fx_plan(&f, &arena, &plan);
            const gb_mix_plan *p = &plan.mixes[0];
            bool one = needs[k] < 0.8555;
            cr_expect(p->batching.most_bags == 0.25, "%s: %g", SMALL[i].id,
                      p->batching.most_bags);
            bool need = p->batching.limit == GB_LIMIT_NEED;
            cr_expect(need == one, "%s: %g ft3, limit %d", SMALL[i].id, needs[k],
                      p->batching.limit);
            cr_expect(one == (p->batching.batch_count == 1), "%s: %g ft3, %zu batches",
                      SMALL[i].id, needs[k], p->batching.batch_count);
            expect_only(p, one ? GB_CAUTION_CODES : SMALL[i].code, SMALL[i].id);
            cr_expect(p->cautions.count == (one ? 0 : 1), "%s: %zu cautions", SMALL[i].id,
                      p->cautions.count);
            gb_arena_release(&arena);
        }
    }
}

/* No batch is never silent, though the need be small: one stop says why. */
Test(cautions, no_batch_is_a_stop) {
    const double rows[][3] = {{0.4, NAN, 20}, {6, 40, 20}, {6, NAN, 1}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        for (size_t count = 1; count <= 7; count += 6) {
            gb_arena arena;
            gb_plan plan;
            fx_job f;
            fx_open(&arena);
            mixer_job(&f, rows[i][0], rows[i][1], rows[i][2]);
            f.pieces[0].count = count;
            f.job.piece_count = 1;
            fx_plan(&f, &arena, &plan);
            const gb_mix_plan *p = fx_of(&plan, FX_BED.id);
            size_t stops = 0;
            for (size_t k = 0; k < p->cautions.count; k++)
                stops += p->cautions.list[k].severity == GB_STOP;
            cr_expect(p->batching.batch_count == 0 && stops == 1,
                      "row %zu: %zu batches, %zu stops", i, p->batching.batch_count,
                      stops);
            gb_arena_release(&arena);
        }
    }
}

/* Thin is under 1/8 in (common practice) on a scored back; 1/8 exactly is not. */
Test(cautions, scored_thin) {
    const struct {
        gb_back back;
        double treads, landing; /* in */
        double thinnest;        /* NaN: no caution */
    } rows[] = {
        {GB_SCORED, 1.0 / 16, 1.0 / 16, 1.0 / 16},
        {GB_SCORED, 0.125, 0.125, NAN},
        {GB_SCORED, 0.125, 0.1, 0.1},
        {GB_SCORED, 0.1, 0.08, 0.08},
        {GB_SCORED, 0.08, 0.1, 0.08},
        {GB_SCORED, 0.1249, 0.2, 0.1249},
        {GB_SCORED, 0.2, 0.2, NAN},
        {GB_SMOOTH, 1.0 / 16, 1.0 / 16, NAN},
        {GB_SCORED, NAN, NAN, NAN},
    };
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        const double depths[] = {rows[i].treads, rows[i].landing};
        for (size_t k = 0; k < 2; k++) {
            f.layers[k][1].back = rows[i].back;
            f.depths[k][1][0] = depths[k] * IN;
            f.layers[k][1].depth_count = isnan(depths[k]) ? 0 : 1;
        }
        fx_plan(&f, &arena, &plan);
        cr_expect(fx_cautions(fx_of(&plan, FX_BED.id), GB_C_SCORED_THIN) == 0, "%zu", i);
        const gb_mix_plan *p = fx_of(&plan, FX_SLURRY.id);
        bool thin = isnan(rows[i].thinnest) == 0;
        cr_expect(fx_cautions(p, GB_C_SCORED_THIN) == thin, "row %zu", i);
        const gb_caution *c = fx_caution(p, GB_C_SCORED_THIN);
        if (c != NULL) {
            cr_expect(fx_near(c->value / IN, rows[i].thinnest, 1e-9), "row %zu", i);
            cr_expect(fx_near(c->limit / IN, 0.125, 1e-9), "row %zu", i);
            cr_expect(c->kind == GB_LENGTH, "row %zu", i);
        }
        gb_arena_release(&arena);
    }
}

/* The standard error of 1 +- d in is d: over a tenth of the mean is a caution. */
Test(cautions, depth_spread) {
    const struct {
        double d;
        bool raised;
    } rows[] = {{0, false},   {0.05, false},  {0.0999, false},
                {0.1, false}, {0.1001, true}, {0.3, true}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        const double m[] = {(1 - rows[i].d) * IN, (1 + rows[i].d) * IN};
        fx_depths(&f, &f.layers[0][0], m, 2);
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = fx_of(&plan, FX_BED.id);
        cr_expect(fx_cautions(p, GB_C_DEPTH_SPREAD) == rows[i].raised, "%g", rows[i].d);
        const gb_caution *c = fx_caution(p, GB_C_DEPTH_SPREAD);
        if (c != NULL) {
            cr_expect(fx_near(c->value, rows[i].d, 1e-9), "%g: %.5f", rows[i].d,
                      c->value);
            cr_expect(fx_near(c->limit, 0.1, 1e-12) && c->kind == GB_SHARE);
        }
        gb_arena_release(&arena);
    }
}

/* 1:4 holds at least 32.6417 lb of water: 10.2005 % of its 320 lb of sand. */
Test(cautions, sand_too_wet) {
    const struct {
        double moisture;
        bool raised;
    } rows[] = {{0.08, false}, {0.102, false}, {0.1021, true}, {0.25, true}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        fx_open(&arena);
        fx_library(&f);
        f.job.sand.moisture.of_one = rows[i].moisture;
        f.job.sand.bulking.of_one = 0.15; /* the usual curve ends at 10 % */
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *p = fx_of(&plan, FX_BED.id);
        cr_expect(fx_cautions(p, GB_C_SAND_TOO_WET) == rows[i].raised, "%g",
                  rows[i].moisture);
        const gb_caution *c = fx_caution(p, GB_C_SAND_TOO_WET);
        if (c != NULL) {
            cr_expect(fx_near(c->value, rows[i].moisture, 1e-12));
            cr_expect(fx_near(c->limit, 0.102005, 0.0000005), "%.7f", c->limit);
        }
        cr_expect(fx_cautions(fx_of(&plan, FX_SLURRY.id), GB_C_SAND_TOO_WET) == 0,
                  "a slurry has no sand");
        gb_arena_release(&arena);
    }
}

/* A job with as much wrong as can be: every caution of a plan comes once, in both mixes,
   with the severity, source and kind of its code. */
static void all_wrong(fx_job *f) {
    fx_library(f);
    gb_weather *w = &f->job.weather;
    w->air.c = DEG_F(10);
    w->low.c = DEG_F(0);
    w->stone.c = DEG_F(20);
    w->block.c = DEG_F(15);
    w->rain = true;
    f->job.sand.moisture.of_one = 0.3;
    f->job.sand.bulking.of_one = 0.1;
    f->job.crew.mixer.usable.m3 = 1 * FT3;
    f->job.crew.mixer.most.kg = 200 * LB;
    f->job.crew.pace.treads_s = NAN;
    for (size_t i = 0; i < 2; i++)
        fx_depths(f, &f->layers[i][0], (const double[]){0.5 * IN, 1.5 * IN}, 2);
}

Test(cautions, each_once) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    all_wrong(&f);
    fx_plan(&f, &arena, &plan);
    const size_t wanted[] = {8, 5};
    for (size_t m = 0; m < 2; m++) {
        const gb_mix_plan *p = &plan.mixes[m];
        /* bed: cold, frozen, frost, rain, spread, wet sand, small mixer, no pace;
           slurry: cold, frozen, frost, rain, thin */
        cr_expect(p->cautions.count == wanted[m], "mix %zu: %zu cautions", m,
                  p->cautions.count);
        for (size_t i = 0; i < p->cautions.count; i++) {
            const gb_caution *c = &p->cautions.list[i];
            cr_expect(fx_cautions(p, c->code) == 1, "mix %zu: code %d", m, c->code);
            cr_expect(c->severity == gb_caution_severity(c->code), "code %d", c->code);
            cr_expect(strcmp(c->source, gb_caution_source(c->code)) == 0, "code %d",
                      c->code);
            bool bare = c->kind == GB_KINDS;
            cr_expect(isnan(c->value) != 0 || bare == false, "code %d has a value",
                      c->code);
        }
    }
    gb_arena_release(&arena);
}
