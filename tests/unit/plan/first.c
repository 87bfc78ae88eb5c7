/* The check after the first batch, when one piece fewer was set. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include "fixture.h"

/* One tread of the library job takes 70 / 12 ft2 x 1.25 / 12 ft x 1.1 = 0.66840 ft3. */
static const double TREAD_FT3 = 70.0 / 12 * 1.25 / 12 * 1.1;

static gb_first_check check_of(const fx_job *f, const char *mix) {
    gb_arena arena;
    gb_plan plan;
    fx_open(&arena);
    fx_plan(f, &arena, &plan);
    gb_first_check check = fx_of(&plan, mix)->first_check;
    gb_arena_release(&arena);
    return check;
}

/* A bag that makes 5 treads to the last bit of rounding: 3.3420 ft3. Four set in its
   place: every depth is 5/4 of the plan, 1.5625 in for 1-1/4; 8.8038 ft3 become 11.005,
   and 8.8038 / 3.3420 = 2.63429 bags 3.2929. */
Test(first, five_treads_exactly) {
    fx_job f;
    fx_library(&f);
    fx_label(&f, &FX_BED, 94 * LB, 5 * TREAD_FT3 * FT3, true);
    gb_first_check c = check_of(&f, FX_BED.id);
    cr_assert(c.known);
    cr_expect(c.pieces == 5, "%zu pieces", c.pieces);
    cr_expect(c.left == 0 && c.fewer == 4, "%.6f left, %zu", c.left, c.fewer);
    cr_expect(fx_near(c.depth.m / IN, 1.5625, 1e-9), "%.6f in", c.depth.m / IN);
    cr_expect(fx_near(c.gross.m3 / FT3, 11.005, 0.0005), "%.5f ft3", c.gross.m3 / FT3);
    cr_expect(fx_near(c.bags, 3.2929, 0.00005), "%.5f bags", c.bags);
}

/* The computed yield, 3.4218 ft3, does 5.1194 treads: five, and 0.12 of the next is not
   worth telling. Four: x 5.1194 / 4 = 1.27986, 1.5998 in, 11.268 ft3, 3.2929 bags. */
Test(first, five_treads_and_a_bit) {
    fx_job f;
    fx_library(&f);
    gb_first_check c = check_of(&f, FX_BED.id);
    double larger = 320 * LB / (1.07 * 1400) / FT3 / TREAD_FT3 / 4;
    cr_assert(c.known && c.pieces == 5);
    cr_expect(c.left == 0 && c.fewer == 4, "%.6f left, %zu", c.left, c.fewer);
    cr_expect(fx_near(larger, 1.27986, 0.0001), "the arithmetic above: %.5f", larger);
    cr_expect(fx_near(c.depth.m / IN, 1.25 * larger, 1e-9), "%.6f in", c.depth.m / IN);
    double gross = 1.1 * (7 * 70.0 / 12 * 1.25 / 12 + 3.75);
    cr_expect(fx_near(c.gross.m3 / FT3, gross * larger, 1e-9), "%.5f", c.gross.m3 / FT3);
    cr_expect(fx_near(c.bags, gross / (larger * 4 * TREAD_FT3) * larger, 1e-9), "%.5f",
              c.bags);
}

/* In heat the mix lives 1 h and half a bag goes in a batch: 2.5597 treads. Two, and more
   than a quarter of the next; two and nothing left is too few, and every depth is
   2.5597 / 2 = 1.27986 of the plan. */
Test(first, two_treads_and_a_half_in_heat) {
    fx_job f;
    fx_library(&f);
    f.job.weather.air.c = DEG_F(101);
    gb_first_check c = check_of(&f, FX_BED.id);
    cr_assert(c.known && c.pieces == 2);
    cr_expect(fx_near(c.left, 0.5597, 0.00005), "%.5f left", c.left);
    cr_expect(c.fewer == 2, "%zu", c.fewer);
    cr_expect(fx_near(c.depth.m / IN, 1.5998, 0.00005), "%.6f in", c.depth.m / IN);
    cr_expect(fx_near(c.gross.m3 / FT3, 11.268, 0.0005), "%.5f ft3", c.gross.m3 / FT3);
    cr_expect(fx_near(c.bags, 3.2929, 0.00005), "%.5f bags", c.bags);
}

/* A bag of 3 ft3 does `does` treads. Less than a quarter of the next one is not told, and
   then one piece fewer is too few. */
static const struct {
    const char *id;
    double does;
    bool known;
    size_t pieces;
    double left;
    size_t fewer;
    double larger; /* depth against the plan: does / fewer */
} EDGES[] = {
    {"one exactly", 1, false, 0, 0, 0, 0}, /* one fewer is none */
    {"part of one", 0.75, false, 0, 0, 0, 0},
    {"hardly one", 0.9999, false, 0, 0, 0, 0},
    {"one and a fifth", 1.2, false, 0, 0, 0, 0},
    {"one, under a quarter", 1.2499, false, 0, 0, 0, 0},
    {"one and a quarter", 1.25, true, 1, 0.25, 1, 1.25},
    {"hardly two", 1.99, true, 1, 0.99, 1, 1.99},
    {"two exactly", 2, true, 2, 0, 1, 2}, /* one fewer leaves one: 2 / 1 */
    {"two, under a quarter", 2.2499, true, 2, 0, 1, 2.2499},
    {"two and a quarter", 2.25, true, 2, 0.25, 2, 1.125},
    {"two and a half", 2.5, true, 2, 0.5, 2, 1.25},
    {"hardly three", 2.999, true, 2, 0.999, 2, 1.4995},
    {"three exactly", 3, true, 3, 0, 2, 1.5},
    {"seven and three quarters", 7.75, true, 7, 0.75, 7, 7.75 / 7},
};

static void expect_edge(size_t i, const gb_first_check *c) {
    const char *id = EDGES[i].id;
    cr_expect(c->known == EDGES[i].known, "%s: %zu pieces", id, c->pieces);
    if (!EDGES[i].known || !c->known)
        return;
    double larger = EDGES[i].larger;
    double need = 9 * 3 / EDGES[i].does; /* ft3 of nine treads */
    cr_expect(c->pieces == EDGES[i].pieces, "%s: %zu pieces", id, c->pieces);
    cr_expect(fx_near(c->left, EDGES[i].left, 1e-9), "%s: %.5f left", id, c->left);
    cr_expect(c->fewer == EDGES[i].fewer, "%s: %zu is too few", id, c->fewer);
    cr_expect(fx_near(c->depth.m / IN, larger, 1e-9), "%s: %.5f in", id, c->depth.m / IN);
    cr_expect(fx_near(c->gross.m3 / FT3, need * larger, 1e-9), "%s: %.5f ft3", id,
              c->gross.m3 / FT3);
    cr_expect(fx_near(c->bags, need / 3 * larger, 1e-9), "%s: %.5f bags", id, c->bags);
}

Test(first, edges) {
    for (size_t i = 0; i < ROWS_OF(EDGES); i++) {
        fx_job f;
        fx_empty(&f);
        f.job.crew.mixer.usable.m3 = 3.2 * FT3;
        fx_label(&f, &FX_BED, 94 * LB, 3 * FT3, true);
        fx_piece(&f, "treads", GB_TREAD, 9, 12 * FT, 3 / EDGES[i].does * FT);
        fx_layer(&f, GB_BED, &FX_BED, 1 * IN);
        gb_first_check c = check_of(&f, FX_BED.id);
        expect_edge(i, &c);
    }
}

Test(first, unknown_when_all_goes_in_one_batch) {
    fx_job f;
    fx_library(&f);
    f.job.crew.mixer = (gb_mixer){.kind = GB_PADDLE, .usable = {30 * FT3}, .most = {NAN}};
    f.job.crew.pace.treads_s = NAN;
    cr_expect(check_of(&f, FX_BED.id).known == false);
}

Test(first, unknown_when_the_first_batch_reaches_a_second_piece) {
    fx_job f;
    fx_library(&f);
    f.pieces[0].count = 5; /* of 5.12 that the first batch would do */
    cr_expect(check_of(&f, FX_BED.id).known == false);
    f.pieces[0].count = 6;
    cr_expect(check_of(&f, FX_BED.id).known, "six are not done by the first batch");
}

Test(first, unknown_for_what_is_no_bed) {
    const gb_layer_kind kinds[] = {GB_SLAB, GB_CORE, GB_VOLUME_LAYER, GB_JOINT,
                                   GB_POINTING};
    for (size_t i = 0; i < ROWS_OF(kinds); i++) {
        fx_job f;
        fx_empty(&f);
        f.job.crew.mixer.usable.m3 = 3.5 * FT3;
        fx_piece(&f, "pads", GB_FOOTING, 9, 12 * FT, 1 * FT);
        gb_layer *layer = fx_layer(&f, kinds[i], &FX_BED, 1 * IN);
        layer->volume.m3 = 1 * FT3;
        layer->joint_length.m = 12 * FT;
        layer->joint_width.m = 1 * FT;
        cr_expect(check_of(&f, FX_BED.id).known == false, "kind %d", kinds[i]);
        layer->kind = GB_BED; /* the same sizes as a bed: three in the first batch */
        cr_expect(check_of(&f, FX_BED.id).known, "kind %d as a bed", kinds[i]);
    }
}

Test(first, unknown_for_a_slurry_and_without_a_batch) {
    fx_job f;
    fx_library(&f);
    cr_expect(check_of(&f, FX_SLURRY.id).known == false);
    f.job.crew.mixer.usable.m3 = 0.1 * FT3;
    cr_expect(check_of(&f, FX_BED.id).known == false);
}
