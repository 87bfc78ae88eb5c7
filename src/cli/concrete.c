#include "cli/command.h"
#include "cli/keyed.h"
#include "words/words.h"

#include <math.h>
#include <stdio.h>

enum { KEY_MIXER = 3101, KEY_BUCKET };

typedef struct input {
    gb_common common;
    gb_keyed keyed;
    const char *id; /* of a mix; NULL: a concrete by options */
    double mixer_m3, bucket_m3;
} input;

static const struct argp_option OPTIONS[] = {
    {"mixer", KEY_MIXER, N_("VOLUME"), 0,
     N_("one batch of a mixer that takes so much wet concrete, as 4ft3; without it one "
        "bag"),
     0},
    {"bucket", KEY_BUCKET, N_("VOLUME"), 0,
     N_("level bucket to its line; without it 1/2 ft3, in metric units 12 L"), 0},
    {0}};

static const double LEAST_M3 = 0.0001; /* a tenth of a litre */
static const double MOST_MIXER_M3 = 10;
static const double MOST_BUCKET_M3 = 0.06;

static double volume_of(struct argp_state *state, const char *option, const char *arg,
                        double most) {
    double m3 = gb_option_quantity(state, option, GB_VOLUME, arg);
    if (m3 < LEAST_M3 || m3 > most)
        argp_error(state, gb_tr("%s '%.*s' is out of bounds; write 0.1 L to %d L"),
                   option, gb_cut(arg, 60), arg, (int)(most * 1000));
    return m3;
}

static void check_question(struct argp_state *state, const input *in) {
    if (in->id == NULL && in->keyed.count == 0)
        argp_error(state, gb_tr("which concrete? name a mix that has one, or state it: "
                                "--strength \"3000 psi\""));
    if (in->id != NULL && in->keyed.count > 0)
        argp_error(state,
                   gb_tr("a mix states its concrete itself; take --%s out, or the mix"),
                   in->keyed.typed[0].key);
}

static error_t parse(int key, char *arg, struct argp_state *state) {
    input *in = state->input;
    if (gb_keyed_take(&in->keyed, key, arg, state))
        return 0;
    switch (key) {
    case ARGP_KEY_INIT:
        state->child_inputs[0] = &in->common;
        return 0;
    case ARGP_KEY_ARG:
        if (in->id != NULL)
            argp_error(state, gb_tr("one mix at a time; '%s' is a second one"), arg);
        in->id = arg;
        return 0;
    case KEY_MIXER:
        in->mixer_m3 = volume_of(state, "--mixer", arg, MOST_MIXER_M3);
        return 0;
    case KEY_BUCKET:
        in->bucket_m3 = volume_of(state, "--bucket", arg, MOST_BUCKET_M3);
        return 0;
    case ARGP_KEY_END:
        check_question(state, in);
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
}

/* ---- answers ----------------------------------------------------------------------- */

/* Half bags are split by eye, and eighths weighed: a batch has the most halves that the
   mixer takes. */
static bool fill_mixer(gb_run *run, const input *in, gb_concrete_question *q) {
    size_t halves = 0;
    if (isnan(in->mixer_m3))
        return true;
    q->mixer.m3 = in->mixer_m3;
    if (gb_count_down(in->mixer_m3, q->asked.recipe.yield.m3 / 2.0, &halves) == GB_OK &&
        halves > 0) {
        q->asked.bags = (double)halves / 2.0;
        return true;
    }
    (void)fprintf(
        stderr,
        gb_tr("gaugebox concrete: error: half a bag makes %.1f L, and the mixer "
              "takes %.1f L; take a larger one, or leave --mixer out\n"),
        q->asked.recipe.yield.m3 * 500.0, in->mixer_m3 * 1000.0);
    run->told = GB_EXIT_FAULT;
    return false;
}

static gb_status answer(gb_run *run, const input *in, const gb_mix *mix) {
    gb_style style = gb_run_style(&in->common, mix->concrete.table);
    gb_concrete_question q;
    gb_sheet sheet;
    gb_status status = gb_ask_concrete(mix, style.system, &q);
    q.asked.bucket.m3 = in->bucket_m3;
    if (status == GB_OK && !fill_mixer(run, in, &q))
        return GB_OK;
    if (status == GB_OK)
        status = gb_concrete_sheet(&q, style, &run->arena, &sheet);
    return status == GB_OK ? gb_run_write(run, &in->common, &sheet) : status;
}

static const gb_mix *stated_mix(gb_run *run, const input *in) {
    const gb_mix *mix = gb_mix_find(run->table, (gb_ref){in->id, 0}, "gaugebox concrete");
    if (mix == NULL || gb_is_proportioned(mix))
        return mix;
    (void)fprintf(stderr,
                  gb_tr("gaugebox concrete: error: the parts of '%s' are stated, and not "
                        "proportioned for a concrete; `gaugebox mix %s` tells them\n"),
                  mix->id, mix->id);
    run->told = GB_EXIT_FAULT;
    return NULL;
}

static const gb_mix *typed_mix(gb_run *run, const input *in) {
    gb_mix *mix = gb_arena_take(&run->arena, 1, sizeof *mix);
    run->diags.no_memory = run->diags.no_memory || mix == NULL;
    gb_system units = gb_run_style(&in->common, GB_US).system;
    bool good =
        mix != NULL && gb_read_concrete(in->keyed.typed, in->keyed.count, units,
                                        run->table, &run->arena, &run->diags, mix);
    return good ? mix : NULL;
}

static int run_concrete(int argc, char **argv) {
    input in = {.mixer_m3 = GB_NONE, .bucket_m3 = GB_NONE};
    gb_keyed_init(&in.keyed, gb_concrete_option, OPTIONS);
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {
        .options = in.keyed.options,
        .parser = parse,
        .args_doc = N_("[MIX]"),
        .doc =
            N_("Proportions a concrete by absolute volumes after ACI 211.1: of MIX, or "
               "one stated by options, each of which is a key of 'concrete' in a mix; "
               "those that begin with --trial state a trial batch."),
        .children = children,
        .argp_domain = GB_DOMAIN};
    argp_parse(&argp, argc, argv, 0, NULL, &in);
    gb_run run;
    if (!gb_run_start(&run, &in.common))
        return GB_EXIT_IO;
    const gb_mix *mix = in.id != NULL ? stated_mix(&run, &in) : typed_mix(&run, &in);
    gb_status status = mix == NULL ? GB_OK : answer(&run, &in, mix);
    int result = gb_run_end(&run, &in.common, status);
    return in.id == NULL && result == GB_EXIT_FAULT ? GB_EXIT_USAGE : result;
}

const gb_command gb_concrete_command = {
    "concrete", N_("a concrete proportioned by volumes, and its trial batch"),
    run_concrete};
