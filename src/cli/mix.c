#include "cli/command.h"
#include "words/words.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { KEY_MAKE = 3001, KEY_BAGS, KEY_AREA, KEY_DEPTH, KEY_WASTE, KEY_BUCKET, KEY_FOR };

typedef struct input {
    gb_common common;
    const char *id; /* of a mix, or a family's name; NULL: all */
    unsigned uses;  /* only mixes with all of these bits */
    double make_m3, bags, area_m2, depth_m, waste, bucket_m3;
} input;

static const struct argp_option OPTIONS[] = {
    {"make", KEY_MAKE, N_("VOLUME"), 0, N_("for so much wet mix, as 3ft3 or 85L"), 0},
    {"bags", KEY_BAGS, N_("COUNT"), 0, N_("for so many bags, as 2 or 1/2"), 0},
    {"area", KEY_AREA, N_("AREA"), 0,
     N_("for a bed of this area (with --depth), as 40ft2 or 5ftx6ft"), 0},
    {"depth", KEY_DEPTH, N_("LENGTH"), 0, N_("depth of that bed, as 1-1/4in"), 0},
    {"waste", KEY_WASTE, N_("SHARE"), 0, N_("extra on --make or --area, as 10%"), 0},
    {"bucket", KEY_BUCKET, N_("VOLUME"), 0,
     N_("level bucket to its line; without it 1/2 ft3, in metric units 12 L"), 0},
    {"for", KEY_FOR, N_("USE"), 0,
     N_("list only what may fill such a layer: bed, slurry, joint, pointing, slab, core, "
        "parge, block or volume; twice: both"),
     0},
    {0}};

static double parse_bags(struct argp_state *state, const char *arg) {
    double bags = 0;
    if (gb_parse_number(arg, &bags) != GB_NO_FAULT || bags < 1.0 / 32.0 || bags > 10000)
        argp_error(
            state,
            gb_tr("--bags '%.*s' is out of bounds; write a count from 1/32 to 10000, "
                  "as 2 or 1/2"),
            gb_cut(arg, 60), arg);
    return bags;
}

static const double LEAST_M3 = 0.0001; /* a tenth of a litre */
static const double MOST_MAKE_M3 = 300;
static const double MOST_BUCKET_M3 = 0.06;
static const double MOST_AREA_M2 = 10000;
static const double MOST_DEPTH_M = 3;

/* An area, or length by width as a mason has it. */
static double parse_area(struct argp_state *state, const char *arg) {
    gb_length length = {0};
    gb_length width = {0};
    if (gb_parse_size(arg, &length, &width) == GB_NO_FAULT && length.m * width.m > 0)
        return length.m * width.m;
    return gb_option_quantity(state, "--area", GB_AREA, arg);
}

/* The words of layers as they are typed, in every language. */
enum { USES_ROOM = 160 }; /* all words of layers with their commas: 61 */

static const char *known_uses(char known[USES_ROOM]) {
    size_t length = 0;
    for (unsigned k = 0; k < GB_LAYER_KINDS && length < USES_ROOM; k++)
        length += (size_t)snprintf(known + length, USES_ROOM - length, "%s%s",
                                   k > 0 ? ", " : "", GB_LAYER_WORDS[k]);
    return known;
}

/* The bit of one use; a word that is none ends the program. */
static unsigned parse_use(struct argp_state *state, const char *arg) {
    for (unsigned k = 0; k < GB_LAYER_KINDS; k++)
        if (strcmp(arg, GB_LAYER_WORDS[k]) == 0)
            return 1u << k;
    char known[USES_ROOM];
    const char *near = gb_nearest_of(arg, GB_LAYER_WORDS);
    if (near != NULL)
        argp_error(state,
                   gb_tr("--for '%.*s' is not known, did you mean '%s'? known are: %s"),
                   gb_cut(arg, 60), arg, near, known_uses(known));
    else
        argp_error(state, gb_tr("--for '%.*s' is not known; known are: %s"),
                   gb_cut(arg, 60), arg, known_uses(known));
    return 0;
}

/* A mix has a slash in its id, a family has none. */
static bool names_mix(const input *in) {
    return in->id != NULL && strchr(in->id, '/') != NULL;
}

/* Exactly one of the three questions, or none; depth belongs to area. */
static void check_question(struct argp_state *state, const input *in) {
    int asked = !isnan(in->make_m3) + !isnan(in->bags) + !isnan(in->area_m2);
    if (asked > 1)
        argp_error(state,
                   gb_tr("--make, --bags and --area each ask for an amount; give one"));
    if (isnan(in->area_m2) != isnan(in->depth_m))
        argp_error(
            state,
            gb_tr("--area and --depth go together, as --area 40ft2 --depth 1-1/4in"));
    if (in->area_m2 > MOST_AREA_M2 || in->depth_m > MOST_DEPTH_M ||
        in->area_m2 * in->depth_m < LEAST_M3)
        argp_error(
            state,
            gb_tr("--area and --depth are out of bounds; at most 10000 m2 and 3 m, "
                  "at least 0.1 L together"));
    if (in->waste > 0 && isnan(in->make_m3) && isnan(in->area_m2))
        argp_error(state, gb_tr("--waste goes with --make or --area"));
    if (asked > 0 && !names_mix(in))
        argp_error(state, gb_tr("of which mix? name it, as bed/stiff-1-4"));
    if (in->common.explain && !names_mix(in))
        argp_error(state, gb_tr("a list has no figures to explain; name a mix, as "
                                "bed/stiff-1-4"));
    if (in->uses != 0 && names_mix(in))
        argp_error(state, gb_tr("--for lists mixes; it does not go with a single one"));
}

static error_t parse_option(int key, char *arg, struct argp_state *state, input *in) {
    switch (key) {
    case KEY_MAKE:
        in->make_m3 = gb_option_volume(state, "--make", arg, MOST_MAKE_M3);
        return 0;
    case KEY_BAGS:
        in->bags = parse_bags(state, arg);
        return 0;
    case KEY_AREA:
        in->area_m2 = parse_area(state, arg);
        return 0;
    case KEY_DEPTH:
        in->depth_m = gb_option_quantity(state, "--depth", GB_LENGTH, arg);
        return 0;
    case KEY_WASTE:
        in->waste = gb_option_waste(state, arg);
        return 0;
    case KEY_FOR:
        in->uses |= parse_use(state, arg);
        return 0;
    case KEY_BUCKET:
        in->bucket_m3 = gb_option_volume(state, "--bucket", arg, MOST_BUCKET_M3);
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case ARGP_KEY_ARG:
        if (in->id != NULL)
            argp_error(state, gb_tr("one mix at a time; '%s' is a second one"), arg);
        in->id = arg;
        return 0;
    case ARGP_KEY_END:
        check_question(state, in);
        return 0;
    default:
        return parse_option(key, arg, state, in);
    }
}

/* Keeps the mixes with all the uses asked for. False with the fault told when there is
   none: an empty list would look like a table without mixes. */
static bool keep_uses(gb_run *run, const input *in, const gb_mix *const **mixes,
                      size_t *count) {
    const gb_mix **kept = gb_arena_take(&run->arena, *count + 1, sizeof(const gb_mix *));
    run->diags.no_memory = run->diags.no_memory || kept == NULL;
    size_t n = 0;
    for (size_t i = 0; kept != NULL && i < *count; i++)
        if (((*mixes)[i]->uses & in->uses) == in->uses)
            kept[n++] = (*mixes)[i];
    *mixes = kept;
    *count = n;
    if (kept == NULL || n > 0)
        return n > 0;
    if (in->id == NULL)
        (void)fputs(gb_tr("gaugebox mix: error: no mix is for all of these uses; ask for "
                          "one use at a time\n"),
                    stderr);
    else
        (void)fprintf(stderr,
                      gb_tr("gaugebox mix: error: family '%.*s' has no mix for that use; "
                            "leave the family out to see those of the others\n"),
                      gb_cut(in->id, 60), in->id);
    run->told = GB_EXIT_FAULT;
    return false;
}

static gb_status list_mixes(gb_run *run, const input *in) {
    const gb_mix *const *mixes = NULL;
    size_t count = 0;
    gb_sheet sheet;
    bool read = in->id == NULL ? gb_mix_list(run->table, &mixes, &count)
                               : gb_mix_list_family(run->table, (gb_ref){in->id, 0},
                                                    "gaugebox mix", &mixes, &count);
    if (!read || (in->uses != 0 && !keep_uses(run, in, &mixes, &count)))
        return GB_OK; /* the faults are told, or in the run */
    gb_style style = gb_run_style(&in->common, GB_US);
    gb_status status = gb_mix_list_sheet(mixes, count, style, &run->arena, &sheet);
    if (status == GB_OK)
        status = gb_run_write(run, &in->common, &sheet);
    return status;
}

static gb_status answer(gb_run *run, const input *in, const gb_mix *mix) {
    gb_mix_question q = {.mix = mix,
                         .bags = isnan(in->bags) ? 1.0 : in->bags,
                         .wanted = {GB_NONE},
                         .waste = {in->waste},
                         .bucket = {in->bucket_m3}};
    gb_style style = gb_run_style(&in->common, GB_US);
    gb_mass bag = {GB_NONE}; /* of a blend, its label has it */
    if (mix->part_count > 0)
        bag = *gb_usual_pack(mix->parts[0].material, style.system);
    gb_status status = gb_make_recipe(mix, NULL, false, bag, &q.recipe);
    if (status != GB_OK)
        return status;
    double net = isnan(in->area_m2) ? in->make_m3 : in->area_m2 * in->depth_m;
    if (!isnan(net)) {
        q.wanted.m3 = net * (1.0 + in->waste);
        q.bags = q.wanted.m3 / q.recipe.yield.m3;
    }
    gb_sheet sheet;
    status = gb_mix_sheet(&q, style, &run->arena, &sheet);
    if (status == GB_OK)
        status = gb_run_write(run, &in->common, &sheet);
    return status;
}

static int run_mix(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .options = OPTIONS,
        .parser = parse,
        .args_doc = N_("[FAMILY|MIX]"),
        .doc = N_(
            "Lists the mix table or one FAMILY of it, or tells how to gauge one MIX and, "
            "for reference, what it holds and covers; "
            "without an amount, one bag of it."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    input in = {.common = {.no_csv = true},
                .make_m3 = GB_NONE,
                .bags = GB_NONE,
                .area_m2 = GB_NONE,
                .depth_m = GB_NONE,
                .bucket_m3 = GB_NONE};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    gb_status status = GB_OK;
    if (!names_mix(&in)) {
        status = list_mixes(&run, &in);
    } else {
        const gb_mix *mix = gb_mix_find(run.table, (gb_ref){in.id, 0}, "gaugebox mix");
        if (mix != NULL)
            status = answer(&run, &in, mix);
    }
    return gb_run_end(&run, &in.common, status);
}

const gb_command gb_mix_command = {"mix", N_("the mix table, or how to gauge one mix"),
                                   run_mix};
