/* Takeoff: the volume of a layer, its depth, and what is refused. */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "fixture.h"

/* One piece with one layer; lengths in inches, volumes in ft3. */
typedef struct laid {
    const char *id;
    gb_layer_kind kind;
    size_t count;
    double length, width, front, side, depth;
    gb_faces faces;
    gb_back back;
    double area; /* of one piece, ft2 */
    double net;
    double slack; /* half the last printed digit; 0: exact */
} laid;

static const laid LAID[] = {
    /* 7 x 60 x 14 in / 144 = 40.83 ft2; x 1.25 / 12 = 4.253 ft3 */
    {"treads", GB_BED, 7, 60, 14, 0, 0, 1.25, 0, 0, 40.83 / 7, 4.253, 0.0005},
    {"landing", GB_BED, 1, 60, 72, 0, 0, 1.5, 0, 0, 30, 3.75, 0}, /* 30 x 1.5 / 12 */
    /* the area / (16 x 12): 40.83 / 192 and 30 / 192 */
    {"slurry treads", GB_SLURRY, 7, 60, 14, 0, 0, 1.0 / 16, GB_BACK, GB_SMOOTH, 40.83 / 7,
     0.2127, 0.00005},
    {"slurry landing", GB_SLURRY, 1, 60, 72, 0, 0, 1.0 / 16, GB_BACK, GB_SMOOTH, 30,
     0.15625, 0},
    {"slurry on the bed", GB_SLURRY, 1, 60, 72, 0, 0, 1.0 / 16, GB_BED_FACE, GB_SMOOTH,
     30, 0.15625, 0},
    {"slurry on both", GB_SLURRY, 1, 60, 72, 0, 0, 1.0 / 16, GB_BOTH_FACES, GB_SMOOTH, 30,
     0.3125, 0}, /* twice 30 / 192 */
    /* faces belong to a slurry: a bed and a slab have one */
    {"bed, both", GB_BED, 1, 60, 72, 0, 0, 1.5, GB_BOTH_FACES, 0, 30, 3.75, 0},
    {"slab, both", GB_SLAB, 2, 48, 36, 0, 0, 4, GB_BOTH_FACES, 0, 12, 8, 0}, /* 2x12/3 */
    /* overhang is not bedded: front once, side at each end */
    {"front", GB_BED, 1, 60, 14, 2, 0, 1.25, 0, 0, 5, 5 * 1.25 / 12, 0}, /* 60 x 12 */
    {"sides", GB_BED, 1, 60, 14, 0, 2, 1.25, 0, 0, 56 * 14 / 144.0, 980 / 1728.0, 0},
    {"all round", GB_BED, 1, 60, 14, 1, 0.5, 1.25, 0, 0, 59 * 13 / 144.0, 958.75 / 1728,
     0}, /* 59 x 13 x 1.25 = 958.75 in3 */
    {"slurry, front", GB_SLURRY, 1, 60, 14, 2, 0, 0.125, 0, 0, 5, 5 / 96.0, 0},
};

static void lay(fx_job *f, const laid *row) {
    fx_empty(f);
    gb_piece *p =
        fx_piece(f, "piece", GB_TREAD, row->count, row->length * IN, row->width * IN);
    p->overhang_front.m = row->front * IN;
    p->overhang_side.m = row->side * IN;
    gb_layer *layer = fx_layer(f, row->kind, &FX_BED, row->depth * IN);
    layer->faces = row->faces;
    layer->back = row->back;
}

Test(takeoff, laid_layers) {
    for (size_t i = 0; i < ROWS_OF(LAID); i++) {
        const laid *row = &LAID[i];
        fx_job f;
        gb_take t = {0};
        lay(&f, row);
        cr_expect(gb_take_off(&f.pieces[0], &f.layers[0][0], &t) == GB_OK, "%s", row->id);
        double slack = fmax(row->slack, 1e-12 * row->net);
        cr_expect(fx_near(t.net.m3 / FT3, row->net, slack), "%s: %.6f ft3, not %.6f",
                  row->id, t.net.m3 / FT3, row->net);
        cr_expect(fx_near(t.area.m2 / FT2, row->area, 0.005), "%s: %.4f ft2", row->id,
                  t.area.m2 / FT2);
        cr_expect(fx_near(gb_bedded_area(&f.pieces[0]).m2, t.area.m2, 0), "%s", row->id);
        cr_expect(fx_same(t.units * t.each.m3, t.net.m3), "%s: each", row->id);
        cr_expect(t.units == (double)row->count, "%s: %.3f pieces", row->id, t.units);
        cr_expect(fx_same(t.depth.m, row->depth * IN), "%s: depth", row->id);
        cr_expect(t.depth_se.m == 0, "%s: one depth has no error", row->id);
        cr_expect(t.piece == &f.pieces[0] && t.layer == &f.layers[0][0], "%s", row->id);
    }
}

Test(takeoff, joint_core_and_plain_volume) {
    fx_job f;
    gb_take t = {0};
    fx_empty(&f);
    fx_piece(&f, "joints", GB_RISER, 3, NAN, NAN);
    gb_layer *joint = fx_layer(&f, GB_JOINT, &FX_LIME_MORTAR, 1.0 * IN);
    joint->joint_length.m = 10.0 * FT;
    joint->joint_width.m = 0.375 * IN;
    cr_expect(gb_take_off(&f.pieces[0], joint, &t) == GB_OK);
    /* 3 x 120 in x 0.375 in x 1 in = 135 in3 */
    cr_expect(fx_same(t.net.m3 / FT3, 135.0 / 1728), "%.6f", t.net.m3 / FT3);
    cr_expect(isnan(t.area.m2), "a joint has no bedded area");
    cr_expect(fx_same(t.depth.m, IN), "a joint has a depth");
    joint->kind = GB_POINTING;
    cr_expect(gb_take_off(&f.pieces[0], joint, &t) == GB_OK);
    cr_expect(fx_same(t.net.m3 / FT3, 135.0 / 1728), "pointing has a joint's size");
    cr_expect(isnan(t.area.m2) && fx_same(t.depth.m, IN), "and its depth");
    const gb_layer_kind kinds[] = {GB_CORE, GB_VOLUME_LAYER};
    for (size_t i = 0; i < ROWS_OF(kinds); i++) {
        gb_layer plain = {.kind = kinds[i], .volume = {0.25 * FT3}};
        f.pieces[0].count = 5;
        cr_expect(gb_take_off(&f.pieces[0], &plain, &t) == GB_OK, "kind %zu", i);
        cr_expect(fx_same(t.net.m3 / FT3, 1.25), "kind %zu: 5 x 0.25 ft3", i);
        cr_expect(isnan(t.area.m2) && isnan(t.depth.m), "kind %zu", i);
    }
}

static const struct {
    const char *id;
    double depths[5]; /* mm */
    size_t count;
    double mean, se;
} DEPTHS[] = {
    {"one", {30}, 1, 30, 0},
    {"three equal", {30, 30, 30}, 3, 30, 0},
    /* squares 100 + 100, s2 = 200 / 1, se = sqrt(200 / 2) */
    {"two", {20, 40}, 2, 30, 10},
    /* from 31.25: 3.25, 0.75, 1.25, 3.75; squares 26.75; se = sqrt(26.75 / 3 / 4) */
    {"four", {28, 32, 30, 35}, 4, 31.25, 1.49304},
    /* squares 4 + 1 + 0 + 1 + 4, s2 = 2.5, se = sqrt(0.5) */
    {"five", {28, 29, 30, 31, 32}, 5, 30, 0.70711},
};

Test(takeoff, several_depths) {
    for (size_t i = 0; i < ROWS_OF(DEPTHS); i++) {
        double m[5];
        for (size_t k = 0; k < DEPTHS[i].count; k++)
            m[k] = DEPTHS[i].depths[k] / 1000.0;
        gb_layer layer = {.kind = GB_BED, .depths_m = m, .depth_count = DEPTHS[i].count};
        gb_length mean = {0}, se = {-1};
        gb_layer_depth(&layer, &mean, &se);
        cr_expect(fx_near(mean.m * 1000, DEPTHS[i].mean, 1e-9), "%s: mean %.6f",
                  DEPTHS[i].id, mean.m * 1000);
        cr_expect(fx_near(se.m * 1000, DEPTHS[i].se, 0.000005), "%s: error %.6f",
                  DEPTHS[i].id, se.m * 1000);
    }
}

/* Common practice: 1/16 in on a smooth back, 1/8 in on a scored one. */
Test(takeoff, usual_slurry_goes_by_the_back) {
    cr_expect(fx_same(gb_usual_slurry(GB_SMOOTH).m, 0.0625 * IN));
    cr_expect(fx_same(gb_usual_slurry(GB_SCORED).m, 0.125 * IN));
    const struct {
        gb_back back;
        double net; /* ft3 on 30 ft2 */
    } rows[] = {{GB_SMOOTH, 30 / 192.0}, {GB_SCORED, 30 / 96.0}};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        fx_job f;
        gb_take t = {0};
        fx_empty(&f);
        fx_piece(&f, "landing", GB_LANDING, 1, 5.0 * FT, 6.0 * FT);
        fx_layer(&f, GB_SLURRY, &FX_SLURRY, NAN)->back = rows[i].back;
        cr_expect(gb_take_off(&f.pieces[0], &f.layers[0][0], &t) == GB_OK, "row %zu", i);
        cr_expect(fx_same(t.net.m3 / FT3, rows[i].net), "row %zu: %.6f", i,
                  t.net.m3 / FT3);
    }
}

static void expect_refused(const gb_piece *piece, const gb_layer *layer, const char *id,
                           double bad) {
    gb_take t, before;
    memset(&t, 0x5a, sizeof t);
    memcpy(&before, &t, sizeof t);
    cr_expect(gb_take_off(piece, layer, &t) == GB_NOT_POSITIVE, "%s of %g is taken off",
              id, bad);
    cr_expect(memcmp(&t, &before, sizeof t) == 0, "%s of %g: written though refused", id,
              bad);
}

Test(takeoff, refuses_bad_sizes_of_laid_layers) {
    const gb_layer_kind kinds[] = {GB_BED, GB_SLURRY, GB_SLAB};
    for (size_t k = 0; k < ROWS_OF(kinds); k++) {
        for (size_t i = 0; i < FX_BADS; i++) {
            fx_job f;
            laid row = {"", kinds[k], 7, 60, 14, 0, 0, 1.25, 0, 0, 0, 0, 0};
            lay(&f, &row);
            f.pieces[0].shape.front.m = FX_BAD[i];
            expect_refused(&f.pieces[0], &f.layers[0][0], "length", FX_BAD[i]);
            lay(&f, &row);
            f.pieces[0].shape.width.m = FX_BAD[i];
            expect_refused(&f.pieces[0], &f.layers[0][0], "width", FX_BAD[i]);
            lay(&f, &row);
            f.depths[0][0][0] = FX_BAD[i];
            expect_refused(&f.pieces[0], &f.layers[0][0], "depth", FX_BAD[i]);
        }
    }
}

Test(takeoff, refuses_no_pieces_and_no_depth) {
    fx_job f;
    laid row = LAID[0];
    row.count = 0;
    lay(&f, &row);
    expect_refused(&f.pieces[0], &f.layers[0][0], "count", 0);
    const gb_layer_kind kinds[] = {GB_BED, GB_SLAB, GB_JOINT, GB_POINTING};
    for (size_t i = 0; i < ROWS_OF(kinds); i++) {
        lay(&f, &LAID[0]);
        f.layers[0][0].kind = kinds[i];
        f.layers[0][0].joint_length.m = f.layers[0][0].joint_width.m = IN;
        f.layers[0][0].depth_count = 0;
        expect_refused(&f.pieces[0], &f.layers[0][0], "missing depth", NAN);
    }
}

Test(takeoff, refuses_bad_sizes_of_other_layers) {
    for (size_t i = 0; i < FX_BADS; i++) {
        double depth = IN;
        gb_piece piece = {.count = 2};
        gb_layer good = {.kind = GB_JOINT,
                         .depths_m = &depth,
                         .depth_count = 1,
                         .joint_length = {1},
                         .joint_width = {0.01},
                         .volume = {FX_BAD[i]}};
        gb_take t;
        cr_expect(gb_take_off(&piece, &good, &t) == GB_OK, "a joint needs no volume");
        gb_layer bad = good;
        bad.joint_length.m = FX_BAD[i];
        expect_refused(&piece, &bad, "joint length", FX_BAD[i]);
        bad = good;
        bad.joint_width.m = FX_BAD[i];
        expect_refused(&piece, &bad, "joint width", FX_BAD[i]);
        bad = good;
        bad.kind = GB_CORE;
        expect_refused(&piece, &bad, "core", FX_BAD[i]);
        bad.kind = GB_VOLUME_LAYER;
        expect_refused(&piece, &bad, "volume", FX_BAD[i]);
        depth = FX_BAD[i];
        expect_refused(&piece, &good, "joint depth", FX_BAD[i]);
    }
}

Test(takeoff, refuses_overhang_that_leaves_no_bed) {
    const struct {
        const char *id;
        double front, side; /* in, of 60 x 14 in */
    } rows[] = {
        {"all of the width", 14, 0},         {"more than the width", 20, 0},
        {"half the length each end", 0, 30}, {"more than the length", 0, 40},
        {"both: two negatives", 20, 40},     {"both, exactly", 14, 30},
        {"front unknown", NAN, 0},           {"side unknown", 0, NAN},
        {"front without end", INFINITY, 0},  {"side without end", 0, INFINITY},
    };
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        fx_job f;
        laid row = {"", GB_BED, 1, 60, 14, rows[i].front, rows[i].side, 1, 0, 0, 0, 0, 0};
        lay(&f, &row);
        expect_refused(&f.pieces[0], &f.layers[0][0], rows[i].id, rows[i].front);
    }
    fx_job f;
    gb_take t;
    laid thin = {"", GB_BED, 1, 60, 14, 13.99, 29.99, 1, 0, 0, 0, 0, 0};
    lay(&f, &thin);
    cr_expect(gb_take_off(&f.pieces[0], &f.layers[0][0], &t) == GB_OK, "a strip is left");
}

/* An overhang may be nothing, and is never less: stone that ends before its bed is a
   smaller piece, and two negatives would leave a bed of its own. */
Test(takeoff, refuses_overhang_below_nothing) {
    const struct {
        const char *id;
        double width, front, side; /* in; the piece is 60 in long */
        gb_status status;
    } rows[] = {
        {"none", 14, 0, 0, GB_OK},
        {"none, of either sign", 14, -0.0, -0.0, GB_OK},
        {"some", 14, 2, 3, GB_OK},
        {"front below", 14, -1, 0, GB_NOT_POSITIVE},
        {"front a hair below", 14, -1e-9, 0, GB_NOT_POSITIVE},
        {"sides below", 14, 0, -1, GB_NOT_POSITIVE},
        {"both below", 14, -1, -1, GB_NOT_POSITIVE},
        {"width too: -14 + 28 in are left", -14, -28, 0, GB_NOT_POSITIVE},
        {"front without end", 14, -INFINITY, 0, GB_NOT_POSITIVE},
        {"sides without end", 14, 0, -INFINITY, GB_NOT_POSITIVE},
    };
    const gb_layer_kind kinds[] = {GB_BED, GB_SLURRY, GB_SLAB};
    for (size_t i = 0; i < ROWS_OF(rows); i++) {
        for (size_t k = 0; k < ROWS_OF(kinds); k++) {
            fx_job f;
            gb_take t;
            laid row = {
                "", kinds[k], 1, 60, rows[i].width, rows[i].front, rows[i].side, 1, 0,
                0,  0,        0, 0};
            lay(&f, &row);
            gb_status s = gb_take_off(&f.pieces[0], &f.layers[0][0], &t);
            cr_expect(s == rows[i].status, "%s: status %d", rows[i].id, s);
            if (rows[i].status != GB_OK)
                expect_refused(&f.pieces[0], &f.layers[0][0], rows[i].id, rows[i].front);
        }
    }
}

/* Two sizes below zero multiply to a volume over zero; each of them is still refused. */
Test(takeoff, refuses_two_negatives) {
    double depth = IN;
    gb_piece piece = {.count = 1};
    gb_layer joint = {.kind = GB_JOINT,
                      .depths_m = &depth,
                      .depth_count = 1,
                      .joint_length = {-1},
                      .joint_width = {-0.01}};
    expect_refused(&piece, &joint, "joint length and width", -1);
    /* each two of length, width and depth */
    const double signs[][3] = {{-1, 1, -1}, {1, -1, -1}, {-1, -1, 1}};
    const gb_layer_kind kinds[] = {GB_BED, GB_SLURRY, GB_SLAB};
    for (size_t i = 0; i < ROWS_OF(signs); i++) {
        for (size_t k = 0; k < ROWS_OF(kinds); k++) {
            fx_job f;
            laid row = {"",
                        kinds[k],
                        1,
                        60 * signs[i][0],
                        14 * signs[i][1],
                        0,
                        0,
                        signs[i][2],
                        0,
                        0,
                        0,
                        0,
                        0};
            lay(&f, &row);
            expect_refused(&f.pieces[0], &f.layers[0][0], "two of three sizes",
                           (double)i);
        }
    }
    const double joints[][3] = {{-1, 0.01, -IN}, {1, -0.01, -IN}};
    for (size_t i = 0; i < ROWS_OF(joints); i++) {
        joint.joint_length.m = joints[i][0];
        joint.joint_width.m = joints[i][1];
        depth = joints[i][2];
        expect_refused(&piece, &joint, "a joint's depth and another", (double)i);
    }
}

/* A reading that no bed has is a slip of the hand, though the mean be over zero; and
   wherever it stands. */
Test(takeoff, refuses_a_bad_reading_of_several) {
    const gb_layer_kind kinds[] = {GB_BED, GB_SLURRY, GB_SLAB, GB_JOINT, GB_POINTING};
    for (size_t k = 0; k < ROWS_OF(kinds); k++) {
        for (size_t i = 0; i < FX_BADS; i++) {
            for (size_t at = 0; at < 3; at++) {
                fx_job f;
                lay(&f, &LAID[1]);
                f.layers[0][0].kind = kinds[k];
                f.layers[0][0].joint_length.m = f.layers[0][0].joint_width.m = IN;
                double readings[] = {1.5 * IN, 1.5 * IN, 1.5 * IN};
                readings[at] = FX_BAD[i] * IN;
                fx_depths(&f, &f.layers[0][0], readings, 3);
                expect_refused(&f.pieces[0], &f.layers[0][0], "one of three depths",
                               FX_BAD[i]);
            }
        }
    }
}

/* The need of the library job: 8.003 ft3 net and 8.804 with 10 %, slurry 0.369 and 0.443
   with 20 %. 36.0 lb of cement: 0.4427 ft3 x 62.43 lb/ft3 / (1/3.15 + 0.45); 0.45 of it
   is 16.2 lb of water, at 2.086 lb a quart 7.8 qt. */
Test(gather, the_library_job) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_library(&f);
    fx_plan(&f, &arena, &plan);
    const gb_need *bed = &fx_of(&plan, FX_BED.id)->need;
    const gb_need *slurry = &fx_of(&plan, FX_SLURRY.id)->need;
    cr_expect(fx_near(bed->net.m3 / FT3, 8.003, 0.0005), "%.5f", bed->net.m3 / FT3);
    cr_expect(fx_near(bed->gross.m3 / FT3, 8.804, 0.0005), "%.5f", bed->gross.m3 / FT3);
    cr_expect(fx_near(slurry->net.m3 / FT3, 0.369, 0.0005));
    cr_expect(fx_near(slurry->gross.m3 / FT3, 0.443, 0.0005));
    cr_expect(bed->take_count == 2 && slurry->take_count == 2 && plan.take_count == 4);
    cr_expect(bed->takes[0]->piece == &f.pieces[0], "takes stand in the job's order");
    const gb_recipe *r = &fx_of(&plan, FX_SLURRY.id)->recipe;
    double bags = slurry->gross.m3 / r->yield.m3;
    cr_expect(fx_near(bags * r->bag.kg / LB, 36.0, 0.05), "%.3f", bags * r->bag.kg / LB);
    cr_expect(fx_near(bags * r->water_usual.kg / 1000 / QT, 7.8, 0.05));
    gb_arena_release(&arena);
}

/* Independent errors add as squares: 5 % of 2 ft3 and 10 % of 1.5 ft3, 20 % waste. */
Test(gather, spread_of_measured_depths) {
    gb_arena arena;
    gb_plan plan;
    fx_job f;
    fx_open(&arena);
    fx_empty(&f);
    fx_waste(&f, FX_BED.id, 0.20);
    fx_piece(&f, "a", GB_TREAD, 1, 4 * FT, 6 * FT);
    /* mean 1 in, se = sqrt(2 x 0.05^2 / 1 / 2) = 0.05 in: 24 ft2 x 1 in = 2 ft3 */
    fx_depths(&f, fx_layer(&f, GB_BED, &FX_BED, NAN),
              (const double[]){0.95 * IN, 1.05 * IN}, 2);
    fx_piece(&f, "b", GB_TREAD, 1, 3 * FT, 6 * FT);
    /* mean 1 in, se 0.1 in: 18 ft2 x 1 in = 1.5 ft3 */
    fx_depths(&f, fx_layer(&f, GB_BED, &FX_BED, NAN),
              (const double[]){0.9 * IN, 1.1 * IN}, 2);
    fx_piece(&f, "c", GB_TREAD, 1, 3 * FT, 6 * FT);
    fx_layer(&f, GB_BED, &FX_BED, 1.0 * IN); /* one depth tells of no error */
    fx_plan(&f, &arena, &plan);
    const gb_need *need = &plan.mixes[0].need;
    cr_expect(fx_same(need->net.m3 / FT3, 5.0));
    cr_expect(fx_same(need->gross.m3 / FT3, 6.0));
    double want = 1.2 * sqrt(0.1 * 0.1 + 0.15 * 0.15); /* 0.21633 ft3 */
    cr_expect(fx_near(need->spread.m3 / FT3, want, 1e-9), "%.6f", need->spread.m3 / FT3);
    gb_arena_release(&arena);
}
