/* The days of a plan: windows, the timetable of a job worked out by hand, and laws over
   random jobs. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

#include "gaugebox/day.h"

static const double MIN = 60.0;
static const double DAY = 24 * HOUR;

/* ---- windows ----------------------------------------------------------------------- */

/* 07:30 to 16:00, clean up 20 min before; breaks at 10:00 for 15 min, 12:15 for 30. */
static const gb_break BREAKS[] = {{{12.25 * HOUR}, {12.75 * HOUR}, {0}},
                                  {{10 * HOUR}, {10.25 * HOUR}, {0}}};

static void library_day(gb_crew *c) {
    c->start.s = 7.5 * HOUR;
    c->finish.s = 16 * HOUR;
    c->breaks = BREAKS;
    c->break_count = 2;
    c->mixing.s = 12 * MIN;
    c->cleaning.s = 20 * MIN;
}

static gb_hours_of_day hours_of(const gb_crew *c, gb_arena *arena) {
    gb_hours_of_day h;
    cr_assert(gb_find_hours(c, arena, &h) == GB_OK);
    return h;
}

Test(days, windows) {
    gb_arena arena;
    gb_crew c = {.pace = {NAN, NAN, NAN, 0}, .finish = {NAN}};
    fx_open(&arena);
    library_day(&c);
    gb_hours_of_day h = hours_of(&c, &arena);
    static const double WANT[][2] = {{7.5, 10}, {10.25, 12.25}, {12.75, 16 - 1.0 / 3}};
    cr_assert(h.count == 3);
    for (size_t i = 0; i < 3; i++)
        cr_expect(fx_near(h.windows[i].from, WANT[i][0] * HOUR, 1e-6) &&
                      fx_near(h.windows[i].to, WANT[i][1] * HOUR, 1e-6),
                  "window %zu: %g to %g", i, h.windows[i].from, h.windows[i].to);
    gb_arena_release(&arena);
}

Test(days, fitting_and_working) {
    static const struct {
        const char *id;
        double from, work, fit, until; /* hours; NaN: never */
    } ROWS[] = {
        {"before the start", 0, 1, 7.5, 8.5},
        {"up to the break", 9, 1, 9, 10},
        {"over the break", 9.5, 1, 10.25, 10.75},
        {"in the break", 10.1, 1, 10.25, 11.25},
        {"over two breaks", 9.75, 2.5, 12.75, 13},
        {"as long as a window", 8, 2.5, 12.75, 10.75},
        {"longer than any", 7.5, 3, NAN, 10.75},
        {"the rest of the day", 15, 0.5, 15, 15.5},
        {"too late for today", 15.5, 1, 31.5, NAN},
        {"on day 2", 31.5, 1, 31.5, 32.5},
        {"after the end", 17, 1, 31.5, 32.5},
        {"nothing to do", 10.1, 0, 10.25, 10.25},
    };
    gb_arena arena;
    gb_crew c = {.finish = {NAN}};
    fx_open(&arena);
    library_day(&c);
    gb_hours_of_day h = hours_of(&c, &arena);
    for (size_t i = 0; i < ROWS_OF(ROWS); i++) {
        double fit = gb_fit(&h, ROWS[i].from * HOUR, ROWS[i].work * HOUR);
        double until = gb_work_until(&h, ROWS[i].from * HOUR, ROWS[i].work * HOUR);
        cr_expect(fx_near(fit / HOUR, ROWS[i].fit, 1e-9), "%s: fits at %g", ROWS[i].id,
                  fit / HOUR);
        cr_expect(fx_near(until / HOUR, ROWS[i].until, 1e-9), "%s: until %g", ROWS[i].id,
                  until / HOUR);
    }
    gb_arena_release(&arena);
}

/* A night's work: from 20:00 to 04:00, a break at 00:00. */
Test(days, over_midnight) {
    static const gb_break MIDNIGHT[] = {{{0}, {0.5 * HOUR}, {0}}};
    gb_arena arena;
    gb_crew c = {.start = {20 * HOUR}, .finish = {4 * HOUR}, .cleaning = {15 * MIN}};
    c.breaks = MIDNIGHT;
    c.break_count = 1;
    fx_open(&arena);
    gb_hours_of_day h = hours_of(&c, &arena);
    cr_assert(h.count == 2);
    cr_expect(h.windows[0].to == 24 * HOUR && h.windows[1].from == 24.5 * HOUR);
    cr_expect(h.windows[1].to == 28 * HOUR - 15 * MIN);
    cr_expect(gb_day_of(&h, 27 * HOUR) == 0 && gb_day_of(&h, 44 * HOUR) == 1);
    gb_arena_release(&arena);
}

Test(days, none) {
    gb_arena arena;
    gb_hours_of_day h;
    gb_crew c = {.start = {NAN}, .finish = {NAN}};
    fx_open(&arena);
    cr_expect(gb_find_hours(&c, &arena, &h) == GB_NOT_POSITIVE, "no start");
    c.start.s = 8 * HOUR;
    c.finish.s = 8.25 * HOUR;
    c.cleaning.s = 15 * MIN;
    cr_expect(gb_find_hours(&c, &arena, &h) == GB_NOT_POSITIVE, "nothing but cleaning");
    gb_arena_release(&arena);
}

/* ---- the library's day, by hand ---------------------------------------------------- */

/* A bag makes 3.42183 ft3; a tread takes 5 x 14/12 x 1.25/12 x 1.1 = 0.668403 ft3, so
   batch 1 does 5.11941 treads. Three treads an hour: 20 min each, five from 07:42 on
   until 09:22. The sixth, begun at 09:22, would wait for batch 2, which is placed from
   09:24 to 11:02 and a break: dead before. So the rest of batch 1, 0.11941 of a tread, is
   thrown away, and batch 2 begins behind the break, 10:15 and 12 min of mixing. Slurry
   shares the pace, and a tread is brushed at half the 20 min of its pot; the landing, 30
   ft2 at 17.5 ft2 an hour, takes 102.857 min in six pots. Batch 2 sets treads 6 and 7 and
   half of the landing, until 11:58; its rest would wait through the break. */
static const struct {
    bool pot;
    double in, from, to; /* minutes since midnight */
} LIBRARY[] = {
    {false, 462, 462, 562},
    {true, 472, 472, 482},
    {true, 492, 492, 502},
    {true, 512, 512, 522},
    {true, 532, 532, 542},
    {true, 552, 552, 562},
    {false, 627, 627, 718.4286},
    {true, 637, 637, 647},
    {true, 657, 657, 667},
    {true, 667, 667, 684.1429},
    {true, 684.1429, 684.1429, 701.2857},
    {true, 701.2857, 701.2857, 718.4286},
    {false, 777, 777, 828.4286},
    {true, 777, 777, 794.1429},
    {true, 794.1429, 794.1429, 811.2857},
    {true, 811.2857, 811.2857, 828.4286},
};

static gb_timetable table_of(const gb_plan *plan, gb_arena *arena) {
    gb_timetable t;
    cr_assert(gb_plan_days(plan, arena, &t) == GB_OK);
    return t;
}

Test(days, library) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    library_day(&f.job.crew);
    fx_plan(&f, &arena, &plan);
    gb_timetable t = table_of(&plan, &arena);
    cr_assert(t.load_count == ROWS_OF(LIBRARY), "%zu loads", t.load_count);
    for (size_t i = 0; i < t.load_count; i++) {
        const gb_load *l = &t.loads[i];
        cr_expect(LIBRARY[i].pot == (l->pot != NULL), "load %zu", i);
        cr_expect(fx_near(l->in / MIN, LIBRARY[i].in, 1e-3), "load %zu: in %g", i,
                  l->in / MIN);
        cr_expect(fx_near(l->from / MIN, LIBRARY[i].from, 1e-3), "load %zu: from %g", i,
                  l->from / MIN);
        cr_expect(fx_near(l->to / MIN, LIBRARY[i].to, 1e-3), "load %zu: to %g", i,
                  l->to / MIN);
        cr_expect(fx_near(l->dead - l->in, l->pot ? 1200 : 7200, 1e-6));
    }
    cr_expect(fx_near(t.loads[0].cut.m3 / FT3, 0.0798, 1e-4), "%g ft3 thrown away",
              t.loads[0].cut.m3 / FT3);
    cr_expect(t.days == 1 && t.days_worked == 1 && t.cleanings == 1);
    cr_expect(t.stage_count == 1 && t.stages[0].batches == 3 && t.stages[0].pots == 13);
    /* 7 treads and the landing: 140 + 102.857 min */
    cr_expect(fx_near(t.stages[0].time / MIN, 242.857, 1e-3), "%g min",
              t.stages[0].time / MIN);
    gb_arena_release(&arena);
}

/* The same without breaks: one batch after the other, and nothing thrown away. */
Test(days, library_without_breaks) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    library_day(&f.job.crew);
    f.job.crew.break_count = 0;
    fx_plan(&f, &arena, &plan);
    gb_timetable t = table_of(&plan, &arena);
    double last = 0;
    for (size_t i = 0; i < t.load_count; i++) {
        cr_expect(t.loads[i].cut.m3 == 0);
        last = t.loads[i].to > last ? t.loads[i].to : last;
    }
    cr_expect(fx_near(last / MIN, 462 + 242.857, 1e-3), "%g", last / MIN);
    gb_arena_release(&arena);
}

/* ---- labour and water -------------------------------------------------------------- */

/* 3 batches of 12 min, 13 pots of 4 min, 2 who set for 242.857 min. Wet mass: 2.625 bags
   of 94 + 320 lb of sand and the water in them, and 36.05 lb of cement with 16.22 of
   water; loads of 100 lb, 3 min each. */
Test(days, labour) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    library_day(&f.job.crew);
    f.job.crew.potting.s = 4 * MIN;
    f.job.crew.carrying.s = 3 * MIN;
    f.job.crew.load.kg = 100 * LB;
    f.job.crew.hands = 2;
    fx_plan(&f, &arena, &plan);
    gb_timetable t = table_of(&plan, &arena);
    const gb_labour *l = &t.stages[0].labour;
    const gb_recipe *r = &fx_of(&plan, FX_BED.id)->recipe;
    double wet = 2.625 * (r->dry.kg + r->water_usual.kg) / LB + 36.05 * 1.45;
    cr_expect(fx_near(t.stages[0].wet.kg / LB, wet, 0.1), "%g lb",
              t.stages[0].wet.kg / LB);
    cr_expect(fx_near(l->mixing / MIN, 36, 1e-9) && fx_near(l->potting / MIN, 52, 1e-9));
    cr_expect(fx_near(l->carrying / MIN, 3 * ceil(wet / 100), 1e-9), "%g",
              l->carrying / MIN);
    cr_expect(fx_near(l->setting / MIN, 485.714, 1e-3));
    f.job.crew.potting.s = f.job.crew.mixing.s = f.job.crew.carrying.s = NAN;
    t = table_of(&plan, &arena);
    l = &t.stages[0].labour;
    cr_expect(isnan(l->mixing) && isnan(l->potting) && isnan(l->carrying), "not stated");
    gb_arena_release(&arena);
}

/* Two who set and one who mixes, one day: 3 x 7 gal; one cleaning of 5 gal; no slab. */
Test(days, water_of_the_site) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    library_day(&f.job.crew);
    f.job.crew.hands = 2;
    fx_plan(&f, &arena, &plan);
    gb_timetable t = table_of(&plan, &arena);
    gb_site_needs n = gb_water_of_site(&plan, &t);
    cr_expect(fx_near(n.cleaning.m3 / QT, 20, 1e-9) &&
              fx_near(n.rinsing.m3 / QT, 84, 1e-9));
    cr_expect(n.curing.m3 == 0 && n.mixing.m3 == plan.water.m3);
    cr_expect(fx_same(n.sum.m3, n.mixing.m3 + n.cleaning.m3 + n.rinsing.m3));
    f.job.water.cleaning.m3 = 8 * QT;
    f.job.water.rinsing.m3 = 10 * QT;
    n = gb_water_of_site(&plan, &t);
    cr_expect(fx_near(n.cleaning.m3 / QT, 8, 1e-9) &&
              fx_near(n.rinsing.m3 / QT, 30, 1e-9));
    gb_arena_release(&arena);
}

/* 10 ft x 10 ft of slab: 100 ft2 x 4 mm x 7 days. */
Test(days, water_that_cures) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    library_day(&f.job.crew);
    f.job.crew.pace.m3_s = 20 * FT3 / HOUR;
    fx_piece(&f, "slab", GB_LANDING, 1, 10 * FT, 10 * FT);
    fx_layer(&f, GB_SLAB, &FX_BLEND, 4 * IN);
    fx_plan(&f, &arena, &plan);
    gb_timetable t = table_of(&plan, &arena);
    gb_site_needs n = gb_water_of_site(&plan, &t);
    cr_expect(fx_near(n.slab.m2 / FT2, 100, 1e-9));
    cr_expect(fx_near(n.curing.m3, 100 * FT2 * 0.004 * 7, 1e-9), "%g m3", n.curing.m3);
    gb_arena_release(&arena);
}

/* ---- stages and holds -------------------------------------------------------------- */

static const gb_hold BED_HOLDS[] = {
    {.least = {48 * HOUR}},
    {.least = {30 * HOUR}, .before = 1u << GB_JOINT_STAGE},
};

/* Joints wait 36 h after a bed whose mix says nothing, and as long as it says. */
Test(days, joints_wait) {
    for (size_t i = 0; i < 2; i++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        gb_mix bed = FX_BED;
        bed.holds = BED_HOLDS;
        bed.hold_count = i == 0 ? 0 : 2;
        fx_open(&arena);
        fx_empty(&f);
        library_day(&f.job.crew);
        f.job.crew.pace.m2_s = 20 * FT2 / HOUR;
        static const gb_layer_pace JOINTS[] = {
            {.kinds = 1u << GB_JOINT, .pace = {NAN, NAN, FT3 / HOUR, 0}}};
        f.job.crew.paces = JOINTS;
        f.job.crew.pace_count = 1;
        fx_piece(&f, "landing", GB_LANDING, 1, 4 * FT, 5 * FT);
        gb_layer *joint = fx_layer(&f, GB_JOINT, &FX_LIME_MORTAR, IN);
        joint->joint_length.m = 20 * FT;
        joint->joint_width.m = 0.5 * IN;
        fx_layer(&f, GB_BED, &bed, IN);
        fx_plan(&f, &arena, &plan);
        gb_timetable t = table_of(&plan, &arena);
        cr_assert(t.stage_count == 2 && t.stages[0].stage == GB_SETTING_STAGE);
        const gb_stage_plan *joints = &t.stages[1];
        cr_expect(joints->stage == GB_JOINT_STAGE);
        double ends = t.stages[0].to;
        double hold = (i == 0 ? 36 : 30) * HOUR;
        cr_expect(fx_near(ends / MIN, 462 + 60, 1e-6), "a bed of an hour: %g",
                  ends / MIN);
        cr_expect(fx_near(joints->not_before, ends + hold, 1e-6), "row %zu", i);
        /* 36 h after 08:42 are 20:42 of day 2; 30 h are 14:42. */
        cr_expect(fx_near(joints->from / MIN, i == 0 ? 2 * 1440 + 462 : 1440 + 882, 1e-3),
                  "row %zu: %g", i, joints->from / MIN);
        gb_arena_release(&arena);
    }
}

/* Two stages, the second 24 h after the first by common practice, no mix saying so. */
static void check_a_day_between(const gb_timetable *t, gb_stage first, gb_stage second) {
    cr_assert(t->stage_count == 2, "%zu stages", t->stage_count);
    cr_expect(t->stages[0].stage == first && t->stages[1].stage == second);
    cr_expect(t->stages[1].hold == NULL);
    cr_expect(fx_near(t->stages[1].not_before - t->stages[0].to, 24 * HOUR, 1e-6), "%g h",
              (t->stages[1].not_before - t->stages[0].to) / HOUR);
    cr_expect(t->stages[1].from >= t->stages[1].not_before);
}

/* Cores wait 24 h for their block, whose mix says nothing. */
Test(days, cores_wait) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    library_day(&f.job.crew);
    f.job.crew.pace.m3_s = FT3 / HOUR;
    fx_piece(&f, "riser", GB_RISER, 1, FT, FT);
    fx_layer(&f, GB_BLOCK, &FX_LIME_MORTAR, NAN)->wall =
        (gb_wall){.length = {20 * FT},
                  .courses = 3,
                  .ends = 2,
                  .nominal = {{16 * IN}, {8 * IN}},
                  .joint = {0.375 * IN},
                  .width = {7.625 * IN},
                  .shell = {1.25 * IN}};
    fx_layer(&f, GB_CORE, &FX_BLEND, NAN)->volume.m3 = FT3 / 2;
    fx_plan(&f, &arena, &plan);
    gb_timetable t = table_of(&plan, &arena);
    check_a_day_between(&t, GB_BLOCK_STAGE, GB_CORE_STAGE);
    gb_arena_release(&arena);
}

/* What is cast on a footing waits for it, though the footing's mix states no hold. */
Test(days, a_slab_waits_for_its_footing) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    library_day(&f.job.crew);
    f.job.crew.pace.m3_s = FT3 / HOUR;
    fx_piece(&f, "pad", GB_LANDING, 1, 4 * FT, 3 * FT);
    fx_layer(&f, GB_SLAB, &FX_BLEND, 4 * IN);
    fx_piece(&f, "strip", GB_FOOTING, 1, 4 * FT, FT);
    fx_layer(&f, GB_SLAB, &FX_BLEND, 8 * IN);
    fx_plan(&f, &arena, &plan);
    gb_timetable t = table_of(&plan, &arena);
    check_a_day_between(&t, GB_FOOTING_STAGE, GB_SLAB_STAGE);
    gb_arena_release(&arena);
}

/* Each stage is batched for by itself: 1.4 + 1.4 bags of a blend are two and two. */
Test(days, batches_of_a_stage) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    fx_piece(&f, "pad", GB_FOOTING, 1, FT, FT);
    gb_layer *a = fx_layer(&f, GB_VOLUME_LAYER, &FX_BLEND, NAN);
    a->volume.m3 = 1.4 * 0.66 * FT3;
    fx_piece(&f, "fill", GB_OTHER_PIECE, 1, FT, FT);
    gb_layer *b = fx_layer(&f, GB_VOLUME_LAYER, &FX_BLEND, NAN);
    b->volume.m3 = 1.4 * 0.66 * FT3;
    fx_plan(&f, &arena, &plan);
    const gb_batching *k = &plan.mixes[0].batching;
    cr_assert(k->stage_count == 2);
    cr_expect(k->bags_whole == 4 && k->batch_count == 2 && k->bags_gauged == 4);
    for (size_t i = 0; i < 2; i++) {
        cr_expect(k->stages[i].bags_whole == 2 && k->stages[i].count == 1);
        cr_expect(fx_near(k->stages[i].bags_needed, 1.4, 1e-9));
        cr_expect(k->batches[i].stretch_count == 1);
    }
    cr_expect(k->stages[0].stage == GB_FOOTING_STAGE);
    cr_expect(k->stages[1].stage == GB_SETTING_STAGE);
    gb_arena_release(&arena);
}

/* ---- what cannot be planned -------------------------------------------------------- */

Test(days, refused) {
    gb_arena arena;
    gb_plan plan;
    gb_timetable t;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    f.job.crew.start.s = NAN;
    cr_expect(gb_plan_days(&plan, &arena, &t) == GB_NOT_POSITIVE, "no start");
    library_day(&f.job.crew);
    f.job.crew.pace.treads_s = NAN;
    fx_plan(&f, &arena, &plan);
    cr_expect(gb_plan_days(&plan, &arena, &t) == GB_NO_PACE, "no pace");
    cr_expect(gb_kinds_without_pace(&plan) == (1u << GB_BED | 1u << GB_SLURRY));
    gb_arena_release(&arena);
}

/* A tread of 20 min, and a break every 15. */
Test(days, no_room_between_breaks) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    gb_break often[20];
    fx_open(&arena);
    fx_library(&f);
    library_day(&f.job.crew);
    for (size_t i = 0; i < 20; i++) {
        double from = 7.75 * HOUR + (double)i * 20 * MIN;
        often[i] = (gb_break){{from}, {from + 5 * MIN}, {0}};
    }
    f.job.crew.breaks = often;
    f.job.crew.break_count = 20;
    f.job.crew.finish.s = 14.25 * HOUR;
    fx_plan(&f, &arena, &plan);
    gb_timetable t = table_of(&plan, &arena);
    cr_expect(t.load_count == 0 && t.stage_count == 1);
    cr_expect(t.stages[0].unplanned == GB_NO_ROOM && t.stages[0].mix != NULL);
    gb_arena_release(&arena);
}

/* ---- laws -------------------------------------------------------------------------- */

enum { JOBS = 1500 };

/* A random bed job, slurry on some of its pieces, a random day. */
static void random_days(fx_job *f, fx_random *r, gb_break *breaks) {
    fx_random_job(f, r);
    f->job.crew.pace = (gb_pace){NAN, fx_between(r, 6, 60) * FT2 / HOUR, NAN, 0};
    for (size_t i = 0; i < f->job.piece_count; i++)
        if (fx_whole(r, 0, 2) > 0) {
            gb_layer *l = (gb_layer *)f->pieces[i].layers;
            l[1] = (gb_layer){.kind = GB_SLURRY,
                              .mix = {.text = FX_SLURRY.id},
                              .joint_length = {NAN},
                              .joint_width = {NAN},
                              .volume = {NAN}};
            f->pieces[i].layer_count = 2;
            f->mixes[1] = &FX_SLURRY;
            f->job.mix_count = 2;
        }
    gb_crew *c = &f->job.crew;
    c->start.s = fx_between(r, 6, 9) * HOUR;
    c->finish.s = c->start.s + fx_between(r, 5, 10) * HOUR;
    c->mixing.s = fx_between(r, 4, 20) * MIN;
    c->cleaning.s = fx_between(r, 5, 30) * MIN;
    c->break_count = fx_whole(r, 0, 2);
    c->breaks = breaks;
    for (size_t i = 0; i < c->break_count; i++) {
        double from =
            c->start.s + fx_between(r, 1 + 2 * (double)i, 2.5 + 2 * (double)i) * HOUR;
        breaks[i] = (gb_break){{from}, {from + fx_between(r, 5, 45) * MIN}, {0}};
    }
}

static bool in_one_window(const gb_hours_of_day *h, double from, double to) {
    double midnight = (double)gb_day_of(h, from) * DAY;
    for (size_t i = 0; i < h->count; i++)
        if (from >= midnight + h->windows[i].from - 1 &&
            to <= midnight + h->windows[i].to + 1)
            return true;
    return false;
}

static void expect_laws(const fx_job *f, const gb_plan *plan, const gb_timetable *t,
                        unsigned seed) {
    const gb_mix_plan *bed = &plan->mixes[0];
    size_t batches = 0;
    double mixer_free = 0;
    double placed = 0;
    double covered = 0; /* until this moment a pot is covered */
    double set = 0;
    double pieces = 0;
    double wanted = 0;
    for (size_t i = 0; i < t->load_count; i++) {
        const gb_load *l = &t->loads[i];
        cr_expect(i == 0 || l->in >= t->loads[i - 1].in - l->mix->need.mix->mixing.s - 1,
                  "seed %u: load %zu goes in before the one above it", seed, i);
        if (l->pot != NULL) {
            cr_expect(in_one_window(&t->hours, l->in, l->to), "seed %u: pot %zu", seed,
                      i);
            cr_expect(l->in >= covered - 1, "seed %u: two pots at once", seed);
            cr_expect(l->to <= l->dead + 1 || !l->pot->fits_life, "seed %u: pot dead",
                      seed);
            covered = l->to;
            pieces += l->covers.to - l->covers.from;
            continue;
        }
        cr_expect(l->number == batches, "seed %u: batch %zu is number %zu", seed, batches,
                  l->number);
        batches++;
        double begins = l->from - f->job.crew.mixing.s;
        cr_expect(in_one_window(&t->hours, begins, l->from),
                  "seed %u: batch %zu is mixed", seed, batches);
        cr_expect(begins >= mixer_free - 1, "seed %u: two batches in the mixer", seed);
        cr_expect(l->from >= placed - 1, "seed %u: batch %zu before the crew is free",
                  seed, batches);
        cr_expect(l->to <= l->dead + 1, "seed %u: batch %zu is dead", seed, batches);
        cr_expect(gb_day_of(&t->hours, l->in) == gb_day_of(&t->hours, l->to - 1),
                  "seed %u: over night", seed);
        mixer_free = l->from;
        placed = l->to - 1;
        double bags = l->extra > 0 ? l->extra : bed->batching.batches[l->number].bags;
        double net = 0;
        for (size_t k = 0; k < l->stretch_count; k++)
            net += (l->stretches[k].to - l->stretches[k].from) *
                   l->stretches[k].take->each.m3;
        double made = bags * bed->recipe.yield.m3;
        cr_expect(net * (1 + bed->need.waste.of_one / 2) <= made * (1 + 1e-9),
                  "seed %u: batch %zu sets more than it makes", seed, batches);
        cr_expect(l->cut.m3 <= made - net + 1e-12, "seed %u: thrown away", seed);
        bool beyond = batches > bed->batching.batch_count;
        cr_expect(beyond == (l->extra > 0), "seed %u: batch %zu is beyond the plan", seed,
                  batches);
        set += net;
    }
    cr_expect(batches >= bed->batching.batch_count, "seed %u: %zu batches", seed,
              batches);
    cr_expect(fx_near(set / bed->need.net.m3, 1, 1e-6), "seed %u: all of it is set",
              seed);
    for (size_t i = 0; i < plan->take_count; i++)
        if (plan->takes[i].layer->kind == GB_SLURRY)
            wanted += plan->takes[i].units;
    cr_expect(fx_near(pieces, wanted, 1e-6), "seed %u: %g of %g pieces coated", seed,
              pieces, wanted);
}

/* Smaller batches that are found for a job that is refused: stated, it is planned. */
static bool expect_smaller(fx_job *f, const gb_plan *plan, const gb_timetable *t,
                           gb_arena *arena, unsigned seed) {
    gb_smaller_batches s;
    cr_assert(gb_find_smaller(plan, &t->stages[0], arena, &s) == GB_OK);
    if (s.usable.m3 == 0)
        return false;
    const gb_mix_plan *bed = &plan->mixes[0];
    double made = s.bags * bed->recipe.yield.m3;
    cr_expect(s.bags < bed->batching.most_bags, "seed %u: %g bags", seed, s.bags);
    cr_expect(s.usable.m3 >= made * (1 - 1e-9) && s.usable.m3 < made + 0.0101 * FT3,
              "seed %u: %g ft3", seed, s.usable.m3 / FT3);
    f->job.crew.mixer.usable = s.usable;
    gb_plan again;
    fx_plan(f, arena, &again);
    gb_timetable table = table_of(&again, arena);
    cr_expect(table.stages[0].unplanned == GB_PLANNED, "seed %u: it does not fit", seed);
    cr_assert(gb_find_smaller(&again, &table.stages[0], arena, &s) == GB_OK);
    cr_expect(s.usable.m3 == 0, "seed %u: nothing to find", seed);
    return true;
}

Test(days, laws) {
    size_t planned = 0;
    size_t refused = 0;
    size_t mended = 0;
    for (unsigned seed = 1; seed <= JOBS; seed++) {
        gb_arena arena;
        gb_plan plan;
        fx_job f;
        gb_break breaks[3];
        fx_random r = fx_seeded(seed);
        fx_open(&arena);
        random_days(&f, &r, breaks);
        fx_plan(&f, &arena, &plan);
        gb_timetable t = table_of(&plan, &arena);
        if (t.stages[0].unplanned == GB_PLANNED) {
            expect_laws(&f, &plan, &t, seed);
            planned++;
        } else {
            refused++;
            mended += expect_smaller(&f, &plan, &t, &arena, seed);
        }
        gb_arena_release(&arena);
    }
    cr_expect(planned > JOBS * 3 / 4, "%zu planned, %zu refused", planned, refused);
    cr_expect(mended > 10, "%zu of %zu refused ones mended", mended, refused);
}
