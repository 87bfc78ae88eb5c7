/* What loose parts are gauged with: buckets, boxes, shovels, and what one lifts. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

static double volume_of(const gb_gauge *g, gb_system system) {
    return gb_gauge_volume(g, system).m3;
}

Test(gauge, volume_of_one_measure) {
    gb_gauge g = gb_usual_gauge();
    cr_expect(fx_same(volume_of(&g, GB_US), 0.5 * FT3), "the usual bucket");
    cr_expect(fx_same(volume_of(&g, GB_METRIC), 0.012), "and where jobs are metric");
    g.volume.m3 = 0.009;
    cr_expect(volume_of(&g, GB_US) == 0.009 && volume_of(&g, GB_METRIC) == 0.009);
    g = gb_usual_gauge();
    g.water.kg = 14.5;
    cr_expect(fx_same(volume_of(&g, GB_US), 0.0145), "1000 kg of water in 1 m3");
    g = (gb_gauge){.by = GB_BY_BOX, .volume = {0.02}};
    cr_expect(volume_of(&g, GB_US) == 0.02);
    g = gb_usual_gauge();
    g.by = GB_BY_BOX;
    cr_expect(isnan(volume_of(&g, GB_US)), "there is no usual box");
    g.inside[0].m = 0.3;
    g.inside[1].m = 0.4;
    g.depth.m = 0.25;
    cr_expect(fx_same(volume_of(&g, GB_US), 0.03), "length x width x depth");
    /* a cube of 1 ft holds 1 ft3 */
    g.inside[0].m = g.inside[1].m = g.depth.m = FT;
    cr_expect(fx_same(volume_of(&g, GB_US), FT3));
}

Test(gauge, a_shovel_is_the_box_by_the_mean_of_the_counts) {
    const double counts[] = {7, 8, 7.5};
    gb_gauge g = gb_usual_gauge();
    g.by = GB_BY_SHOVEL;
    g.filled.m3 = FT3;
    g.shovels = counts;
    g.shovel_count = 3;
    cr_expect(fx_same(volume_of(&g, GB_US), FT3 / 7.5));
    cr_expect(fx_same(gb_shovel_spread(&g).of_one, 1 / 7.5));
    g.shovel_count = 1;
    cr_expect(fx_same(volume_of(&g, GB_US), FT3 / 7));
    cr_expect(gb_shovel_spread(&g).of_one == 0, "of one count");
    g.shovel_count = 0;
    cr_expect(isnan(volume_of(&g, GB_US)), "of none");
    g.shovel_count = 1;
    g.filled.m3 = NAN;
    cr_expect(isnan(volume_of(&g, GB_US)), "of no box");
}

/* Buckets and boxes in quarters, shovels whole; beyond 3 % off, weighed. */
static const struct {
    const char *id;
    gb_gauge_by by;
    const gb_material *material;
    double exact, count, percent; /* of error; signed */
    bool weighed;
} GAUGED[] = {
    {"8 buckets", GB_BY_BUCKET, &FX_SAND, 8, 8, 0, false},
    {"4.1 buckets", GB_BY_BUCKET, &FX_SAND, 4.1, 4, -2.4390, false},
    {"7.7886 buckets", GB_BY_BUCKET, &FX_SAND, 7.7886, 7.75, -0.4956, false},
    {"2-1/8 buckets", GB_BY_BUCKET, &FX_SAND, 2.1249, 2, -5.8779, true},
    {"0.97 on the edge", GB_BY_BUCKET, &FX_SAND, 1 / 1.03, 1, 3, false},
    {"just over it", GB_BY_BUCKET, &FX_SAND, 1 / 1.0301, 1, 3.01, true},
    {"just under it", GB_BY_BUCKET, &FX_SAND, 1 / 0.9701, 1, -2.99, false},
    {"too little", GB_BY_BUCKET, &FX_SAND, 0.1, 0, -100, true},
    {"lime by bucket", GB_BY_BUCKET, &FX_LIME, 0.5, 0.5, 0, false},
    {"boxes", GB_BY_BOX, &FX_SAND, 4.0768, 4, -1.8838, false},
    {"boxes up", GB_BY_BOX, &FX_SAND, 3.15, 3.25, 3.1746, true},
    {"shovels", GB_BY_SHOVEL, &FX_SAND, 28.7, 29, 1.0453, false},
    {"few shovels", GB_BY_SHOVEL, &FX_SAND, 7.4, 7, -5.4054, true},
    {"7 shovels", GB_BY_SHOVEL, &FX_SAND, 7.1, 7, -1.4085, false},
    {"a shovel is one of sand", GB_BY_SHOVEL, &FX_LIME, 8, 8, 0, true},
};

Test(gauge, rounded_to_what_a_helper_can_fill) {
    for (size_t i = 0; i < ROWS_OF(GAUGED); i++) {
        gb_volume loose = {GAUGED[i].exact * 0.02};
        gb_gauged g =
            gb_gauge_loose(GAUGED[i].material, loose, GAUGED[i].by, (gb_volume){0.02});
        const char *id = GAUGED[i].id;
        cr_expect(fx_near(g.exact, GAUGED[i].exact, 1e-9), "%s: %.6f", id, g.exact);
        cr_expect(fx_near(g.count, GAUGED[i].count, 1e-9), "%s: %.6f", id, g.count);
        cr_expect(fx_near(100 * g.error, GAUGED[i].percent, 1e-3), "%s: %.5f %%", id,
                  100 * g.error);
        cr_expect(g.weighed == GAUGED[i].weighed, "%s", id);
    }
}

/* Whatever the amount, what is not weighed is within 3 %, and a weighed one would not be.
 */
Test(gauge, no_measure_is_off_by_more) {
    for (int i = 1; i <= 4000; i++)
        for (int by = GB_BY_BUCKET; by <= GB_BY_SHOVEL; by++) {
            double exact = i / 100.0;
            gb_gauged g = gb_gauge_loose(&FX_SAND, (gb_volume){exact}, (gb_gauge_by)by,
                                         (gb_volume){1});
            double off = fabs(g.count - exact) / exact;
            cr_expect(g.weighed ? off > 0.03 - 1e-9 : off < 0.03 + 1e-9, "%g by %d",
                      exact, by);
            double step = gb_gauge_step((gb_gauge_by)by);
            cr_expect(fabs(g.count - exact) <= step / 2 + 1e-9, "%g by %d", exact, by);
        }
}

/* More bulking never takes fewer buckets. */
Test(gauge, more_bulking_more_buckets) {
    double before = 0;
    for (int percent = 0; percent <= 60; percent++) {
        gb_lying l = {{0.05}, {percent / 100.0}};
        gb_volume loose = gb_loose_volume(&FX_SAND, (gb_mass){320 * LB}, l);
        gb_gauged g =
            gb_gauge_loose(&FX_SAND, loose, GB_BY_BUCKET, (gb_volume){0.5 * FT3});
        cr_expect(g.exact > before, "%d", percent);
        before = g.exact;
    }
    /* 320 lb at 96.6 lb settled are 3.3126 ft3; bulked 60 %, 10.6 buckets */
    cr_expect(fx_near(before, 320 / 96.6 * 1.6 / 0.5, 1e-9), "%.6f", before);
}

static void small_mixer(fx_job *f, gb_arena *arena) {
    fx_open(arena);
    fx_library(f);
    f->job.crew.mixer.usable.m3 = 4 * FT3;
}

/* A level bucket of 80 lb/ft3 and 5 % of water is 84 lb/ft3: with a pail of 2 lb the
   limit of 23 kg (50.71 lb) is reached at 0.5798 ft3. The slurry is weighed into pots. */
Test(gauge, what_one_person_lifts) {
    const struct {
        const char *id;
        double ft3;
        bool raised;
    } rows[] = {{"1/2 ft3", 0.5, false},
                {"just under", 0.5797, false},
                {"just over", 0.5800, true},
                {"5 gal brim-full", 0.6684, true}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        small_mixer(&f, &arena);
        f.job.gauge.volume.m3 = rows[i].ft3 * FT3;
        fx_plan(&f, &arena, &plan);
        const gb_mix_plan *bed = fx_of(&plan, FX_BED.id);
        cr_expect(fx_cautions(bed, GB_C_BUCKET_HEAVY) == rows[i].raised, "%s",
                  rows[i].id);
        const gb_caution *c = fx_caution(bed, GB_C_BUCKET_HEAVY);
        if (c != NULL) {
            double lb = rows[i].ft3 * 84 + 2;
            cr_expect(fx_near(c->value / LB, lb, 1e-6), "%s: %.4f lb", rows[i].id,
                      c->value / LB);
            cr_expect(c->limit == 23 && c->kind == GB_MASS, "%s", rows[i].id);
        }
        cr_expect(fx_cautions(fx_of(&plan, FX_SLURRY.id), GB_C_BUCKET_HEAVY) == 0);
        gb_arena_release(&arena);
    }
}

/* A box without a bottom is not lifted, nor is a bucket that is never full. */
Test(gauge, what_nobody_lifts) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    small_mixer(&f, &arena);
    f.job.gauge.by = GB_BY_BOX;
    f.job.gauge.volume.m3 = FT3;
    fx_plan(&f, &arena, &plan);
    cr_expect(fx_cautions(fx_of(&plan, FX_BED.id), GB_C_BUCKET_HEAVY) == 0, "a box");
    gb_arena_release(&arena);
    small_mixer(&f, &arena);
    f.job.crew.mixer.usable.m3 = 0.45 * FT3; /* an eighth of a bag: 1/2 ft3 of sand */
    f.job.gauge.volume.m3 = FT3;
    fx_plan(&f, &arena, &plan);
    const gb_mix_plan *bed = fx_of(&plan, FX_BED.id);
    cr_expect(bed->batching.batches[0].bags == 0.125, "the first batch");
    cr_expect(fx_cautions(bed, GB_C_BUCKET_HEAVY) == 0, "half a bucket");
    gb_bucketful none = {7, {7}};
    cr_expect(gb_heaviest_bucket(&f.job, bed, &none) == false);
    gb_arena_release(&arena);
}

/* (most - least) over the mean, 10 % and more than that. */
Test(gauge, shovel_counts_that_differ) {
    const struct {
        double counts[2];
        double spread; /* 0: no caution */
    } rows[] = {{{19, 21}, 0}, {{10, 10}, 0}, {{9, 10}, 1 / 9.5}, {{6, 9}, 0.4}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        small_mixer(&f, &arena);
        f.job.gauge.by = GB_BY_SHOVEL;
        f.job.gauge.filled.m3 = FT3;
        f.job.gauge.shovels = rows[i].counts;
        f.job.gauge.shovel_count = 2;
        fx_plan(&f, &arena, &plan);
        const gb_caution *c = fx_caution(fx_of(&plan, FX_BED.id), GB_C_SHOVELS_DIFFER);
        bool raised = c != NULL;
        cr_expect(raised == (rows[i].spread > 0), "row %zu", i);
        if (c != NULL)
            cr_expect(fx_near(c->value, rows[i].spread, 1e-12) && c->limit == 0.10,
                      "row %zu: %.6f", i, c->value);
        gb_arena_release(&arena);
    }
}

Test(gauge, no_plan_without_a_measure) {
    for (size_t i = 0; i < ROWS_OF(FX_BAD); i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        const gb_mix *bad = NULL;
        fx_open(&arena);
        fx_library(&f);
        f.job.gauge.by = GB_BY_BOX;
        f.job.gauge.volume.m3 = FX_BAD[i];
        gb_status s = gb_make_plan(&f.job, &arena, &plan, &bad);
        cr_expect(s == GB_NOT_POSITIVE, "%g: status %d", FX_BAD[i], s);
        gb_arena_release(&arena);
    }
}

/* The usual pack lies where the material states it, so that its place can be told. */
Test(gauge, the_usual_pack_is_the_materials_own) {
    gb_material m = FX_CEMENT;
    cr_expect(gb_usual_pack(&m, GB_US) == &m.pack);
    cr_expect(gb_usual_pack(&m, GB_METRIC) == &m.pack, "none in kilograms");
    m.pack_metric.kg = 25;
    cr_expect(gb_usual_pack(&m, GB_METRIC) == &m.pack_metric);
    cr_expect(gb_usual_pack(&m, GB_US) == &m.pack);
}
