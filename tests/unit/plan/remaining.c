/* What a batch log leaves: worked by hand, and laws. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

#include "gaugebox/remaining.h"

/* The library: seven treads at 1-1/4 in and a landing at 1-1/2 in, 10 % waste. A bag
   makes 3 ft3 by its label, so that a tread is 0.607639 / 3 = 0.202546 bags and the
   landing 3.75 / 3 = 1.25, without waste. */
static const double TREAD = 0.202546296;
static const double LANDING = 1.25;

typedef struct scene {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    gb_log_row rows[8];
    gb_log_set sets[8][2];
    gb_log log;
    gb_stock stock;
    gb_outlook outlook;
    gb_remaining left;
} scene;

static void open_scene(scene *s) {
    memset(&s->log, 0, sizeof s->log);
    fx_open(&s->arena);
    fx_library(&s->f);
    s->f.pieces[0].layer_count = s->f.pieces[1].layer_count = 1; /* no slurry */
    s->f.job.mix_count = 1;
    fx_label(&s->f, &FX_BED, 94 * LB, 3 * FT3, true);
    fx_plan(&s->f, &s->arena, &s->plan);
    s->log.rows = s->rows;
    s->log.file = "log.csv";
    s->outlook = (gb_outlook){.sure = {0.9}, .lead_days = 1};
}

/* Adds a batch that set so many treads and so much of the landing. */
static gb_log_row *add(scene *s, double bags, double treads, double landing) {
    size_t n = s->log.count++;
    gb_log_row *r = &s->rows[n];
    *r = (gb_log_row){.at = {(int64_t)n * 7200 + 25200},
                      .mix = &FX_BED,
                      .batch = (uint32_t)(n + 1),
                      .bags = bags,
                      .water = {NAN},
                      .air = {NAN},
                      .start_s = -1,
                      .stop_s = -1,
                      .sets = s->sets[n]};
    if (treads > 0)
        s->sets[n][r->set_count++] = (gb_log_set){&s->f.pieces[0], treads};
    if (landing > 0)
        s->sets[n][r->set_count++] = (gb_log_set){&s->f.pieces[1], landing};
    return r;
}

static const gb_mix_left *look(scene *s) {
    cr_assert(gb_find_remaining(&s->plan, &s->log, &s->outlook, &s->arena, &s->left) ==
              GB_OK);
    cr_assert(s->left.mix_count == 1);
    return &s->left.mixes[0];
}

Test(remaining, nothing_is_set) {
    scene s;
    open_scene(&s);
    const gb_mix_left *m = look(&s);
    cr_expect(m->batches == 0 && m->bags == 0 && isnan(m->in_place.m));
    cr_expect(fx_near(m->left, 7 * TREAD + LANDING, 1e-6), "%g", m->left);
    /* By the plan: with its waste. */
    cr_expect(fx_near(m->forecast.bags, 1.1 * (7 * TREAD + LANDING), 1e-6));
    cr_expect(m->by_plan && m->forecast.df == 0);
    cr_expect(fx_near(m->forecast.deviation / m->forecast.bags, 0.01, 1e-9),
              "measured: 1 %%");
    cr_expect(isnan(m->on_hand) && isnan(m->bags_a_day));
    gb_arena_release(&s.arena);
}

/* One bag for 4.2 treads: K = 1 / (4.2 x 0.202546) = 1.17551; what is left takes that
   much of 2.8 x 0.202546 + 1.25 = 1.81713: 2.13606 bags. The bed comes to 3 ft3 / 24.5
   ft2 = 1.46939 in. */
Test(remaining, one_batch) {
    scene s;
    open_scene(&s);
    add(&s, 1, 4.2, 0);
    const gb_mix_left *m = look(&s);
    cr_expect(fx_near(m->forecast.ratio, 1.17551, 1e-5), "%g", m->forecast.ratio);
    cr_expect(fx_near(m->forecast.bags, 2.13606, 1e-5), "%g", m->forecast.bags);
    cr_expect(m->by_plan);
    cr_expect(fx_near(m->in_place.m / IN, 1.46939, 1e-5), "%g in", m->in_place.m / IN);
    cr_expect(fx_near(m->planned.m / IN, 1.25, 1e-9));
    cr_expect(fx_near(m->takes[0].left, 2.8, 1e-9) && m->takes[1].left == 1);
    gb_arena_release(&s.arena);
}

/* Two batches, 4 and 5 treads with a bag each: K = 2 / (9 ... but seven are all there
   are: 3 and 4 treads, K = 2 / 1.417824 = 1.410612. e = 1 - K w: 1 - 1.410612 x 0.607639
   = 0.142857 and -0.142857; s = 0.142857 x sqrt 2 = 0.202031; se K = sqrt 2 s / 1.417824
   = 0.201516; left 1.25: 1.763265; deviation^2 = (1.25 x 0.201516)^2 + 1.763265 x
   0.202031^2 (a bag a batch) = 0.063451 + 0.071970 = 0.367996^2; t 0.9 of one
   degree 3.077684. */
Test(remaining, two_batches) {
    scene s;
    open_scene(&s);
    add(&s, 1, 3, 0);
    add(&s, 1, 4, 0);
    const gb_mix_left *m = look(&s);
    cr_expect(fx_near(m->forecast.ratio, 1.410612, 1e-6), "%.7f", m->forecast.ratio);
    cr_expect(fx_near(m->forecast.bags, 1.763265, 1e-6), "%.7f", m->forecast.bags);
    cr_expect(m->forecast.df == 1 && m->by_plan == false);
    cr_expect(fx_near(m->forecast.deviation, 0.367996, 2e-6), "%.7f",
              m->forecast.deviation);
    cr_expect(fx_near(m->bags_sure, 1.763265 + 3.077684 * 0.367996, 1e-5), "%.6f",
              m->bags_sure);
    cr_expect(m->takes[0].left == 0 && m->takes[1].left == 1);
    gb_arena_release(&s.arena);
}

/* Batches that agree to the last bit tell no scatter: the plan's stands in. */
Test(remaining, no_scatter) {
    scene s;
    open_scene(&s);
    add(&s, 1, 3, 0);
    add(&s, 1, 3, 0);
    const gb_mix_left *m = look(&s);
    cr_expect(m->by_plan && m->forecast.deviation > 0 && m->forecast.df == 0);
    gb_arena_release(&s.arena);
}

/* A batch that does not say what it set is not counted; one that was thrown away is. */
Test(remaining, unfinished_and_thrown) {
    scene s;
    open_scene(&s);
    add(&s, 1, 4, 0);
    add(&s, 1, 0, 0);
    const gb_mix_left *m = look(&s);
    cr_expect(m->batches == 2 && m->unfinished == 1 && m->bags == 1 && m->thrown == 0);
    s.rows[1].thrown.of_one = 1;
    m = look(&s);
    cr_expect(m->unfinished == 0 && m->bags == 2 && m->thrown == 1);
    cr_expect(fx_near(m->forecast.ratio, 2 / (4 * TREAD), 1e-6));
    /* What was thrown away made no bed. */
    cr_expect(fx_near(m->in_place.m / IN, 3 / (4 * 70.0 / 12) * 12, 1e-9), "%g in",
              m->in_place.m / IN);
    gb_arena_release(&s.arena);
}

/* Depths of 1-1/4, 1-1/2 and 1-3/4 in on four treads: mean 1.5, sd 0.25, se 0.144338; a
   bag made 4 x 5.8333 ft2 x 1.5 in = 2.91667 ft3. */
Test(remaining, measured_depths) {
    scene s;
    open_scene(&s);
    static const double DEPTHS[] = {1.25 * IN, 1.5 * IN, 1.75 * IN};
    gb_log_row *r = add(&s, 1, 4, 0);
    r->depths_m = DEPTHS;
    r->depth_count = 3;
    const gb_mix_left *m = look(&s);
    cr_expect(m->depth_count == 3 && fx_near(m->depth_m / IN, 1.5, 1e-9));
    cr_expect(fx_near(m->depth_sd_m / IN, 0.25, 1e-9));
    cr_expect(fx_near(m->depth_se_m / IN, 0.144338, 1e-6));
    cr_expect(fx_near(m->yield.m3 / FT3, 2.916667, 1e-6), "%g", m->yield.m3 / FT3);
    gb_arena_release(&s.arena);
}

/* One bag set four treads, and another is on hand: it does 0.810185, three treads and
   0.202546 less ... 3 x 0.202546 = 0.607639, so 0.202546 of the landing's 1.25, 16.2 %.
 */
Test(remaining, bags_on_hand) {
    scene s;
    open_scene(&s);
    add(&s, 1, 4, 0);
    s.stock = (gb_stock){NULL, 1};
    s.outlook.stocks = &s.stock;
    s.outlook.stock_count = 1;
    const gb_mix_left *m = look(&s);
    cr_expect(m->best.take->piece == &s.f.pieces[1]);
    cr_expect(fx_near(m->best.pieces, 0.162037, 1e-5), "%g", m->best.pieces);
    cr_expect(m->surely.take == m->best.take && m->surely.pieces < m->best.pieces);
    cr_expect(fx_near(m->order, ceil(m->bags_sure - 1), 1e-9));
    cr_expect(m->bags_a_day == 1 && m->order_at == 1);
    s.stock.bags = 20;
    m = look(&s);
    cr_expect(m->best.take == NULL && m->surely.take == NULL && m->order == 0);
    s.stock.bags = 0;
    m = look(&s);
    cr_expect(m->best.take->piece == &s.f.pieces[0]);
    cr_expect(fx_near(m->best.pieces, 4, 1e-9) && fx_near(m->surely.pieces, 4, 1e-6));
    s.stock.bags = 0.3; /* 0.3 / 1.23429 = 0.243056: 1.2 treads more */
    m = look(&s);
    cr_expect(fx_near(m->best.pieces, 5.2, 1e-5), "%g", m->best.pieces);
    gb_arena_release(&s.arena);
}

/* Two days, three bags: one and a half a day; three days ahead are 4.5, five bags. */
Test(remaining, bags_a_day) {
    scene s;
    open_scene(&s);
    add(&s, 1, 3, 0);
    add(&s, 1, 3, 0);
    add(&s, 1, 1, 0.5)->at.s += 86400;
    s.outlook.lead_days = 3;
    const gb_mix_left *m = look(&s);
    cr_expect(m->bags_a_day == 1.5 && m->order_at == 5);
    gb_arena_release(&s.arena);
}

/* All is set: nothing is left, and nothing is to order. */
Test(remaining, all_is_set) {
    scene s;
    open_scene(&s);
    add(&s, 1, 7, 0);
    add(&s, 1.5, 0, 1);
    s.stock = (gb_stock){&FX_BED, 0};
    s.outlook.stocks = &s.stock;
    s.outlook.stock_count = 1;
    const gb_mix_left *m = look(&s);
    cr_expect(m->left == 0 && m->forecast.bags == 0 && m->order == 0);
    gb_arena_release(&s.arena);
}

/* A log that is doubled piece by piece and bag by bag says the same of K. */
Test(remaining, more_batches_narrow_it) {
    scene s;
    open_scene(&s);
    add(&s, 1, 3, 0);
    add(&s, 1, 2.5, 0);
    double two = look(&s)->forecast.deviation / look(&s)->forecast.bags;
    add(&s, 0.5, 1.4, 0);
    double three = look(&s)->bags_sure / look(&s)->forecast.bags;
    cr_expect(two > 0 && three > 1);
    cr_expect(look(&s)->forecast.df == 2);
    gb_arena_release(&s.arena);
}
