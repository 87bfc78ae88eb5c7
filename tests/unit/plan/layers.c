#include "unit/plan/fixture.h"

#include "engine/caution.h"

#include <criterion/criterion.h>
#include <math.h>

/* Laws of layers that are more than an area by one depth. */

static double net(const gb_piece *piece, const gb_layer *layer) {
    gb_take t = {0};
    return gb_take_off(piece, layer, &t) == GB_OK ? t.net.m3 : GB_NONE;
}

static gb_piece piece_of(const gb_layer *layer, double front, double width) {
    return (gb_piece){.name = "piece",
                      .kind = GB_TREAD,
                      .count = 1,
                      .shape = {.front = {front}, .width = {width}},
                      .layers = layer,
                      .layer_count = 1};
}

static gb_wall plain_wall(void) {
    return (gb_wall){.length = {20 * FT},
                     .courses = 3,
                     .ends = 2,
                     .nominal = {{16 * IN}, {8 * IN}},
                     .joint = {0.375 * IN},
                     .width = {7.625 * IN},
                     .shell = {1.25 * IN}};
}

/* ---- joints ------------------------------------------------------------------------ */

/* Every way of telling the same joints of 3 x 2 m. */
static const struct {
    const char *id;
    gb_layer layer;
    double m3;
} JOINTS[] = {
    {"by length", {.joint_length = {9}, .joint_width = {0.01}}, 9 * 0.01 * 0.02},
    {"by rate", {.joint_rate = {1.5}, .joint_width = {0.01}}, 6 * 1.5 * 0.01 * 0.02},
    {"by share", {.joint_share = {0.015}}, 6 * 0.015 * 0.02},
    {"by flag",
     {.flag = {{0.5}, {0.25}}, .joint_width = {0.01}},
     6 * (1 - 0.125 / (0.51 * 0.26)) * 0.02},
};

Test(layers, joints_scale_with_depth_and_area) {
    for (size_t i = 0; i < ROWS_OF(JOINTS); i++) {
        double depth = 0.02;
        gb_layer layer = JOINTS[i].layer;
        layer.kind = GB_JOINT;
        layer.depths_m = &depth;
        layer.depth_count = 1;
        gb_piece piece = piece_of(&layer, 3, 2);
        cr_expect(fx_same(net(&piece, &layer), JOINTS[i].m3), "%s", JOINTS[i].id);
        depth = 0.04;
        cr_expect(fx_same(net(&piece, &layer), 2 * JOINTS[i].m3), "%s", JOINTS[i].id);
        piece.shape.front.m = 6;
        double of_area = i == 0 ? 1 : 2;
        cr_expect(fx_same(net(&piece, &layer), 2 * of_area * JOINTS[i].m3), "%s: area",
                  JOINTS[i].id);
        piece.overhang_front.m = 0.1;
        cr_expect(fx_same(net(&piece, &layer), 2 * of_area * JOINTS[i].m3),
                  "%s: what overhangs has joints", JOINTS[i].id);
    }
}

Test(layers, joints_of_no_size_are_refused) {
    static const gb_layer BAD[] = {
        {.joint_rate = {1}, .joint_width = {0}},
        {.joint_rate = {1}, .joint_width = {-0.01}},
        {.flag = {{0.5}, {0}}, .joint_width = {0.01}},
        {.flag = {{0.5}, {-0.5}}, .joint_width = {0.01}},
        {.flag = {{0.5}, {0.5}}, .joint_width = {NAN}},
        {.joint_share = {INFINITY}},
        {.joint_width = {0.01}},
    };
    double depth = 0.02;
    for (size_t i = 0; i < ROWS_OF(BAD); i++) {
        gb_layer layer = BAD[i];
        layer.kind = GB_JOINT;
        layer.depths_m = &depth;
        layer.depth_count = 1;
        gb_piece piece = piece_of(&layer, 3, 2);
        cr_expect(isnan(net(&piece, &layer)), "row %zu", i);
    }
}

Test(layers, flags_without_joints_have_no_share) {
    gb_length a = {0.6};
    cr_expect(fx_near(gb_joint_share(a, a, (gb_length){0}).of_one, 0, 1e-15));
    double before = 0;
    for (double w = 0.005; w < 0.1; w += 0.005) {
        double share = gb_joint_share(a, a, (gb_length){w}).of_one;
        cr_expect(share > before && share < 1, "wider joints are more of the area");
        before = share;
    }
}

/* ---- parge ------------------------------------------------------------------------- */

Test(layers, parge_by_face_and_by_area) {
    double depth = 0.01;
    gb_layer layer = {
        .kind = GB_PARGE, .depths_m = &depth, .depth_count = 1, .face = {{4}, {1.5}}};
    gb_piece piece = piece_of(&layer, NAN, NAN);
    cr_expect(fx_same(net(&piece, &layer), 0.06));
    layer.face[1].m = 3;
    cr_expect(fx_same(net(&piece, &layer), 0.12), "twice as high, twice as much");
    layer = (gb_layer){
        .kind = GB_PARGE, .depths_m = &depth, .depth_count = 1, .face_area = {6}};
    cr_expect(fx_same(net(&piece, &layer), 0.06), "the same as an area");
    layer.face_area.m2 = -6;
    cr_expect(isnan(net(&piece, &layer)));
    layer.face[0].m = layer.face[1].m = -2;
    cr_expect(isnan(net(&piece, &layer)), "two sizes below zero are none");
}

/* ---- block ------------------------------------------------------------------------- */

static const struct {
    const char *id;
    double length_ft;
    size_t courses, ends;
    double half, full;
} WALLS[] = {
    {"one block", 4.0 / 3, 1, 2, 0, 1},
    {"one course", 20, 1, 2, 0, 15},
    {"two courses: a half at each end of the second", 20, 2, 2, 2, 29},
    {"three courses: the third is full again", 20, 3, 2, 2, 44},
    {"one free end", 20, 4, 1, 2, 59},
    {"no free end", 20, 4, 0, 0, 60},
    {"half a block longer: one half in each course", 20 + 2.0 / 3, 3, 2, 3, 45},
    {"the same, even courses", 20 + 2.0 / 3, 4, 2, 4, 60},
    {"counted up to half a block", 20.1, 1, 2, 1, 15},
};

Test(layers, running_bond) {
    for (size_t i = 0; i < ROWS_OF(WALLS); i++) {
        gb_wall w = plain_wall();
        gb_blocks b = {0};
        w.length.m = WALLS[i].length_ft * FT;
        w.courses = WALLS[i].courses;
        w.ends = WALLS[i].ends;
        cr_expect(gb_lay_out(&w, &b) == GB_OK, "%s", WALLS[i].id);
        cr_expect(b.half == WALLS[i].half, "%s: %.1f half", WALLS[i].id, b.half);
        cr_expect(b.full == WALLS[i].full, "%s: %.1f full", WALLS[i].id, b.full);
    }
}

/* Halves and fulls together are as long as the wall, whatever its ends. */
Test(layers, blocks_make_up_the_wall) {
    for (size_t halves = 2; halves < 12; halves++)
        for (size_t courses = 1; courses < 8; courses++)
            for (size_t ends = 0; ends <= 2; ends += 2) {
                gb_wall w = plain_wall();
                gb_blocks b = {0};
                w.length.m = (double)halves * 8 * IN;
                w.courses = courses;
                w.ends = ends;
                cr_expect(gb_lay_out(&w, &b) == GB_OK);
                double length = b.full + b.half / 2;
                double area = (double)(halves * courses) / 2;
                bool cut = ends == 0 && halves * courses % 2 == 1;
                cr_expect(fx_same(length, area + (cut ? 0.5 : 0)), "%zu x %zu, %zu ends",
                          halves, courses, ends);
            }
}

Test(layers, openings_and_corners_take_block_away) {
    gb_wall w = plain_wall();
    gb_blocks before = {0};
    gb_blocks after = {0};
    cr_expect(gb_lay_out(&w, &before) == GB_OK);
    w.openings.m2 = 4 * 16 * 8 * IN * IN;
    cr_expect(gb_lay_out(&w, &after) == GB_OK);
    cr_expect(before.full - after.full == 4, "four block less");
    double mortar = gb_wall_mortar(&w).m3 / after.face.m2;
    w.openings.m2 = 0;
    cr_expect(fx_same(gb_wall_mortar(&w).m3 / before.face.m2, mortar),
              "mortar by area is the same");
    w.corners = 2;
    cr_expect(gb_lay_out(&w, &after) == GB_OK);
    cr_expect(before.per_course - after.per_course == 2, "a block in each course");
}

Test(layers, walls_that_are_none) {
    gb_blocks b = {0};
    for (size_t i = 0; i < 8; i++) {
        gb_wall w = plain_wall();
        switch (i) {
        case 0:
            w.length.m = 0;
            break;
        case 1:
            w.length.m = NAN;
            break;
        case 2:
            w.length.m = INFINITY;
            break;
        case 3:
            w.courses = 0;
            w.height.m = GB_NONE;
            break;
        case 4:
            w.nominal[0].m = -1;
            break;
        case 5:
            w.corners = 31;
            break;
        case 6:
            w.openings.m2 = 1e6;
            break;
        default:
            w.ends = 200;
            break;
        }
        cr_expect(gb_lay_out(&w, &b) != GB_OK, "row %zu", i);
        cr_expect(b.courses == 0, "row %zu: nothing is written", i);
        cr_expect(i == 7 || isnan(gb_wall_mortar(&w).m3), "row %zu", i);
    }
}

Test(layers, bedding_is_the_width_that_carries_mortar) {
    gb_wall w = plain_wall();
    double shells = gb_wall_mortar(&w).m3;
    w.bedding = GB_FULL_BEDDING;
    cr_expect(fx_same(gb_wall_mortar(&w).m3 / shells, 7.625 / 2.5));
    w.rate.m3_m2 = 0.02;
    double by_rate = gb_wall_mortar(&w).m3;
    cr_expect(fx_same(by_rate, 0.02 * 20 * 2 * FT * FT), "a rate by the face");
    w.rate_waste.of_one = 0.25;
    cr_expect(fx_same(gb_wall_mortar(&w).m3, by_rate / 1.25), "less the waste in it");
}

Test(layers, block_to_order) {
    gb_layer layer = {.kind = GB_BLOCK, .wall = plain_wall()};
    gb_take t = {.layer = &layer, .units = 2};
    cr_expect(gb_ordered(&t, 44) == 88, "no spare");
    layer.wall.spare.of_one = 0.05;
    cr_expect(gb_ordered(&t, 44) == 93, "92.4 is counted up");
    cr_expect(gb_ordered(&t, 0) == 0);
}

/* ---- cores ------------------------------------------------------------------------- */

Test(layers, cores_by_block) {
    gb_layer layers[2] = {{.kind = GB_BLOCK, .wall = plain_wall()},
                          {.kind = GB_CORE, .cores = {.every = 1, .at = {.line = 1}}}};
    gb_piece piece = piece_of(layers, NAN, NAN);
    gb_layer *core = &layers[1];
    layers[0].wall.bedding = GB_FULL_BEDDING;
    piece.layer_count = 2;
    double all = net(&piece, core);
    cr_expect(fx_same(all, 45 * 27 * FT * FT * FT / 100), "44 full and 2 half");
    core->cores.every = 3;
    cr_expect(fx_same(net(&piece, core), all / 3), "every third cell");
    core->cores.every = 1;
    core->cores.courses = GB_TOP_COURSE;
    cr_expect(fx_same(net(&piece, core), all / 3), "one course of three");
    core->cores.each.m3 = 0.01;
    cr_expect(fx_same(net(&piece, core), 0.15), "15 block at 0.01 m3");
    core->cores.courses = GB_ALL_COURSES;
    core->cores.blocks = 7;
    cr_expect(fx_same(net(&piece, core), 0.07), "so many as stated");
    core->cores.blocks = 0;
    piece.layer_count = 1;
    piece.layers = core;
    cr_expect(isnan(net(&piece, core)), "cores of no wall");
}

Test(layers, usual_cores_are_not_sure_and_stated_ones_are) {
    gb_layer core = {
        .kind = GB_CORE,
        .cores = {.blocks = 10, .every = 1, .width = {8 * IN}, .at = {.line = 1}}};
    gb_piece piece = piece_of(&core, NAN, NAN);
    gb_take t = {0};
    cr_expect(gb_take_off(&piece, &core, &t) == GB_OK);
    cr_expect(fx_near(t.spread.of_one, 0.043 / sqrt(12.0) / 0.2725, 1e-12));
    core.cores.each.m3 = 0.01;
    cr_expect(gb_take_off(&piece, &core, &t) == GB_OK && t.spread.of_one == 0);
    core.cores.each.m3 = GB_NONE;
    core.cores.width.m = 10 * IN;
    cr_expect(gb_take_off(&piece, &core, &t) == GB_NOT_POSITIVE, "no usual grout");
}

/* ---- forms ------------------------------------------------------------------------- */

static gb_form plain_stair(void) {
    return (gb_form){.kind = GB_STAIR,
                     .risers = 4,
                     .rise = {0.15},
                     .going = {0.30},
                     .top = {1},
                     .width = {1.2}};
}

Test(layers, stairs) {
    gb_form f = plain_stair();
    double m3 = gb_form_volume(&f).m3;
    double steps = 0;
    for (int i = 1; i <= 3; i++)
        steps += 1.2 * 0.30 * 0.15 * i;
    cr_expect(fx_same(m3, steps + 1.2 * 1 * 0.6), "the sum of its steps");
    f.width.m *= 2;
    cr_expect(fx_same(gb_form_volume(&f).m3, 2 * m3));
    f = plain_stair();
    f.rise.m *= 2;
    cr_expect(fx_same(gb_form_volume(&f).m3, 2 * m3));
    f = plain_stair();
    f.risers = 1;
    f.going.m = GB_NONE;
    cr_expect(fx_same(gb_form_volume(&f).m3, 1.2 * 0.15 * 1), "one riser has no going");
    f.slab.m = 0.1;
    cr_expect(fx_same(gb_form_volume(&f).m3, 1.2 * 0.25), "a slab below it");
}

Test(layers, forms_of_no_size_are_none) {
    for (size_t i = 0; i < 8; i++) {
        gb_form f = plain_stair();
        switch (i) {
        case 0:
            f.risers = 0;
            break;
        case 1:
            f.rise.m = 0;
            break;
        case 2:
            f.going.m = -0.3;
            break;
        case 3:
            f.top.m = GB_NONE;
            break;
        case 4:
            f.width.m = INFINITY;
            break;
        case 5:
            f.slab.m = -0.1;
            break;
        case 6:
            f = (gb_form){.kind = GB_PIER, .diameter = {0.3}};
            break;
        default:
            f = (gb_form){.kind = GB_STEPPED, .width = {1}};
            break;
        }
        gb_layer layer = {.kind = GB_SLAB, .form = f};
        gb_piece piece = piece_of(&layer, 2, 1);
        cr_expect(isnan(gb_form_volume(&f).m3), "row %zu", i);
        cr_expect(isnan(net(&piece, &layer)), "row %zu", i);
    }
}

Test(layers, a_wedge_of_equal_ends_is_a_prism) {
    double depth = 0.1;
    gb_layer prism = {.kind = GB_SLAB, .depths_m = &depth, .depth_count = 1};
    gb_layer wedge = {.kind = GB_SLAB,
                      .form = {.kind = GB_WEDGE, .front = {0.1}, .back = {0.1}}};
    gb_piece piece = piece_of(&prism, 2, 1);
    cr_expect(fx_same(net(&piece, &wedge), net(&piece, &prism)));
    wedge.form.back.m = 0.3;
    cr_expect(fx_same(net(&piece, &wedge), 2 * net(&piece, &prism)), "0.2 in the mean");
    wedge.form.back.m = GB_NONE;
    cr_expect(isnan(net(&piece, &wedge)));
}

/* ---- falls ------------------------------------------------------------------------- */

Test(layers, a_fall_adds_its_mean) {
    double depth = 0.02;
    gb_layer bed = {.kind = GB_BED, .depths_m = &depth, .depth_count = 1};
    gb_piece piece = piece_of(&bed, 2, 1);
    cr_expect(fx_same(net(&piece, &bed), 0.04));
    bed.fall.of_run = 0.02;
    cr_expect(fx_same(net(&piece, &bed), 2 * (0.02 + 0.01)), "half of the width");
    gb_layer wedge = {.kind = GB_SLAB,
                      .form = {.kind = GB_WEDGE, .front = {0.02}, .back = {0.04}}};
    cr_expect(fx_same(net(&piece, &bed), net(&piece, &wedge)), "as a wedge");
    piece.overhang_front.m = 0.2;
    cr_expect(fx_same(net(&piece, &bed), 1.6 * (0.02 + 0.02 * 0.4)),
              "from the front of what is bedded");
}

/* ---- levels ------------------------------------------------------------------------ */

static const double BLOCK[] = {0.10, 0.28, 0.46};
static const double FINISHED[] = {0.18, 0.36, 0.54};
static const double STONE[] = {0.05, 0.06, 0.04};

static gb_layer levelled(void) {
    return (gb_layer){.kind = GB_BED,
                      .levels = {.block_m = BLOCK,
                                 .block_count = 3,
                                 .finished_m = FINISHED,
                                 .finished_count = 3,
                                 .stone_m = STONE,
                                 .stone_count = 3,
                                 .error = {0.001},
                                 .least = {0.015},
                                 .most = {0.035}}};
}

Test(layers, beds_by_level_add_up) {
    gb_layer bed = levelled();
    gb_piece piece = piece_of(&bed, 1.5, 0.35);
    gb_take t = {0};
    piece.count = 3;
    cr_expect(gb_take_off(&piece, &bed, &t) == GB_OK);
    double sum = 0;
    for (size_t i = 0; i < 3; i++)
        sum += 1.5 * 0.35 * gb_level_bed(&bed.levels, i);
    cr_expect(fx_same(t.net.m3, sum), "%.6f, not %.6f", t.net.m3, sum);
    cr_expect(fx_same(t.depth.m, 0.03), "0.03, 0.02 and 0.04");
    cr_expect(fx_same(t.depth_se.m, 0.001), "sqrt(3 / 3) of a reading");
    cr_expect(fx_same(t.spread.of_one, 0.001 / 0.03));
}

Test(layers, levels_all_alike_are_a_uniform_bed) {
    gb_layer bed = levelled();
    bed.levels.stone_count = 1;
    double depth = 0.03;
    gb_layer plain = {.kind = GB_BED, .depths_m = &depth, .depth_count = 1};
    gb_piece piece = piece_of(&bed, 1.5, 0.35);
    piece.count = 3;
    cr_expect(fx_same(net(&piece, &bed), net(&piece, &plain)));
}

Test(layers, a_staff_reads_down) {
    static const double DOWN_BLOCK[] = {1.40, 1.22, 1.04};
    static const double DOWN_FINISHED[] = {1.32, 1.14, 0.96};
    gb_layer up = levelled();
    gb_layer down = levelled();
    down.levels.readings = GB_STAFF;
    down.levels.block_m = DOWN_BLOCK;
    down.levels.finished_m = DOWN_FINISHED;
    for (size_t i = 0; i < 3; i++)
        cr_expect(
            fx_near(gb_level_bed(&up.levels, i), gb_level_bed(&down.levels, i), 1e-12),
            "tread %zu", i);
}

Test(layers, a_tread_without_room_is_refused) {
    static const double THICK[] = {0.05, 0.08, 0.04};
    gb_layer bed = levelled();
    gb_piece piece = piece_of(&bed, 1.5, 0.35);
    piece.count = 3;
    bed.levels.stone_m = THICK;
    cr_expect(isnan(net(&piece, &bed)), "the mean alone would do");
}

Test(layers, thin_and_thick_beds_are_flagged_by_tread) {
    gb_layer bed = levelled();
    gb_piece piece = piece_of(&bed, 1.5, 0.35);
    piece.count = 3;
    gb_take t = {0};
    const gb_take *takes[] = {&t};
    gb_need need = {.takes = takes, .take_count = 1};
    gb_caution list[3];
    cr_expect(gb_take_off(&piece, &bed, &t) == GB_OK);
    cr_assert(gb_level_cautions(&need, NULL) == 1);
    cr_expect(gb_level_cautions(&need, list) == 1);
    cr_expect(list[0].code == GB_C_BED_THICK && list[0].tread == 2);
    cr_expect(fx_same(list[0].value, 0.04) && list[0].limit == 0.035);
    bed.levels.least.m = 0.025;
    bed.levels.most.m = 0.045;
    cr_assert(gb_level_cautions(&need, list) == 1);
    cr_expect(list[0].code == GB_C_BED_THIN && list[0].tread == 1);
    bed.levels.least.m = 0.02;
    bed.levels.most.m = 0.04;
    cr_expect(gb_level_cautions(&need, NULL) == 0, "the edges are well");
}
