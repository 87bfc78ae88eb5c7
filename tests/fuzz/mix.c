#include "common.h"

#include <math.h>

/* A job that fills every layer that a mix may fill with it. */
static const char HEAD[] =
    "format = 1; site = { name = \"x\"; }; crew = { mixer = { usable = \"3 ft3\"; };"
    " pace = \"20 ft2/h\"; }; pieces = ( { name = \"p\"; kind = \"landing\";"
    " size = \"4 ft x 3 ft\"; layers = (";
static const char TAIL[] = " ); } );";
static const char *const LAYERS[GB_LAYER_KINDS] = {
    [GB_BED] = "kind = \"bed\"; depth = \"1 in\";",
    [GB_SLURRY] = "kind = \"slurry\";",
    [GB_JOINT] = "kind = \"joint\"; depth = \"1 in\"; joint_length = \"7 ft\";"
                 " joint_width = \"3/8 in\";",
    [GB_POINTING] = "kind = \"pointing\"; depth = \"3/4 in\"; joint_length = \"7 ft\";"
                    " joint_width = \"3/8 in\";",
    [GB_SLAB] = "kind = \"slab\"; depth = \"4 in\";",
    [GB_CORE] = "kind = \"core\"; volume = \"2 ft3\";",
    [GB_PARGE] = "kind = \"parge\"; face = \"9 ft x 4 ft\"; depth = \"3/8 in\";",
    [GB_BLOCK] = "kind = \"block\"; block = { length = \"9 ft\"; courses = 3;"
                 " bedding = \"full\"; };",
    [GB_VOLUME_LAYER] = "kind = \"volume\"; volume = \"2 ft3\";",
};

static void add_layer(gb_text *to, size_t kind, const char *id, bool first) {
    gb_text_add(to, first ? " { " : ", { ");
    gb_text_add(to, LAYERS[kind]);
    gb_text_add(to, " mix = \"");
    gb_text_add(to, id);
    gb_text_add(to, "\"; }");
}

static void try_job(fuzz_run *run, const gb_mix *const *mixes, size_t count) {
    gb_job job;
    gb_text text;
    bool first = true;
    gb_text_init(&text, &run->arena);
    gb_text_add(&text, HEAD);
    for (size_t i = 0; i < count; i++)
        for (size_t kind = 0; kind < GB_LAYER_KINDS; kind++)
            if (mixes[i]->uses & (1u << kind)) {
                add_layer(&text, kind, mixes[i]->id, first);
                first = false;
            }
    gb_text_add(&text, TAIL);
    /* The family was read; its file may go. */
    const char *file = fuzz_file(gb_text_get(&text), text.length);
    bool good = gb_read_job(file, run->table, &run->arena, &run->diags, &job);
    fuzz_expect(good != gb_diags_any(&run->diags), "a result with faults, or neither");
    if (good)
        fuzz_job(run, &job);
}

/* As much as a bag makes, or `wanted` when that is no NaN. */
static void ask(fuzz_run *run, const gb_mix *mix, double wanted, gb_system system) {
    gb_sheet sheet;
    gb_mix_question q = {
        .mix = mix, .bags = 1, .wanted = {wanted}, .bucket = {gb_si(GB_VOLUME, "L", 12)}};
    gb_mass bag = {GB_NONE};
    if (mix->part_count > 0)
        bag = *gb_usual_pack(mix->parts[0].material, system);
    fuzz_expect(gb_make_recipe(mix, NULL, false, bag, &q.recipe) == GB_OK,
                "a good mix without a recipe");
    if (!isnan(wanted))
        q.bags = wanted / q.recipe.yield.m3;
    fuzz_expect(gb_mix_sheet(&q, (gb_style){system, "en", true}, &run->arena, &sheet) ==
                    GB_OK,
                "mix sheet");
    fuzz_sheet(run, &sheet);
    fuzz_explanation(run, &sheet);
}

/* The concrete of a mix, by the bag and with the ways to a footing beside it. */
static void ask_concrete(fuzz_run *run, const gb_mix *mix, gb_system system) {
    gb_sheet sheet;
    gb_concrete_question q;
    if (!gb_is_proportioned(mix))
        return;
    fuzz_expect(gb_ask_concrete(mix, system, &q) == GB_OK,
                "a good concrete without an answer");
    gb_way way;
    q.ways = (gb_ways_question){.net = {1},
                                .mixer = {0.1},
                                .moisture = gb_delivered_sand(&mix->concrete),
                                .system = system};
    fuzz_expect(gb_make_way(mix, &q.ways, &run->arena, &way) == GB_OK, "a way");
    q.way_list = &way;
    q.way_count = 1;
    fuzz_expect(gb_concrete_sheet(&q, (gb_style){system, "en", true}, &run->arena,
                                  &sheet) == GB_OK,
                "sheet of a concrete");
    fuzz_sheet(run, &sheet);
    fuzz_explanation(run, &sheet);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
    fuzz_run run;
    const gb_mix *const *mixes = NULL;
    size_t mix_count = 0;
    gb_sheet sheet;
    (void)fuzz_file(bytes, count);
    fuzz_begin(&run, FUZZ_OWN_MIXES);
    bool good = gb_mix_list(run.table, &mixes, &mix_count);
    fuzz_expect(good != gb_diags_any(&run.diags), "a result with faults, or neither");
    if (good) {
        fuzz_expect(gb_mix_list_sheet(mixes, mix_count, (gb_style){GB_US, "es", false},
                                      &run.arena, &sheet) == GB_OK,
                    "list of mixes");
        fuzz_sheet(&run, &sheet);
        for (size_t i = 0; i < mix_count; i++) {
            ask(&run, mixes[i], GB_NONE, GB_US);
            ask(&run, mixes[i], 0.1, GB_METRIC);
            ask_concrete(&run, mixes[i], i % 2 == 0 ? GB_US : GB_METRIC);
        }
        try_job(&run, mixes, mix_count);
    }
    fuzz_end(&run);
    return 0;
}
