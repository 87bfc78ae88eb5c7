#include "cli/command.h"
#include "cli/keyed.h"
#include "words/words.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { KEY_MIXER = 3101, KEY_BUCKET, KEY_MAKE, KEY_WASTE, KEY_PRICES, KEY_JOB };

typedef struct input {
    gb_common common;
    gb_keyed keyed;
    const char *id; /* of a mix; NULL: a concrete by options */
    double mixer_m3, bucket_m3, make_m3, waste;
    const char *prices;
    const char *job; /* whose own mix it is; NULL: of the table */
} input;

static const struct argp_option OPTIONS[] = {
    {"mixer", KEY_MIXER, N_("VOLUME"), 0,
     N_("one batch of a mixer that takes so much wet concrete, as 4ft3 (a drum sold as 7 "
        "ft3 takes about that); without it one bag, or the job's mixer"),
     0},
    {"bucket", KEY_BUCKET, N_("VOLUME"), 0,
     N_("level bucket to its line; without it 1/2 ft3, in metric units 12 L"), 0},
    {"make", KEY_MAKE, N_("VOLUME"), 0,
     N_("compare the ways to so much: this concrete, other mixes, bags, ready-mixed; "
        "with --mixer, or a job's own"),
     0},
    {"waste", KEY_WASTE, N_("SHARE"), 0, N_("extra on --make, as 5%"), 0},
    {"job", KEY_JOB, N_("FILE"), 0,
     N_("MIX is one of this job's own, as own/frost; units, pile, bucket, mixer and the "
        "site's exposure are the job's"),
     0},
    {"prices", KEY_PRICES, N_("FILE"), 0, N_("a price book, for what each way costs"), 0},
    {0}};

static const double MOST_MIXER_M3 = 10;
static const double MOST_MAKE_M3 = 300;
static const double MOST_BUCKET_M3 = 0.06;

static void check_question(struct argp_state *state, const input *in) {
    if (in->id == NULL && in->keyed.count == 0)
        argp_error(state, gb_tr("which concrete? name a mix that has one, or state it: "
                                "--strength \"3000 psi\""));
    for (size_t i = 0; in->id != NULL && i < in->keyed.count; i++)
        if (!gb_is_of_delivery(in->keyed.typed[i].key))
            argp_error(state,
                       gb_tr("a mix states its concrete itself, but for how wet sand and "
                             "stone are today; take --%s out, or the mix"),
                       gb_keyed_name(&in->keyed, in->keyed.typed[i].key));
    if (in->job != NULL && in->id == NULL)
        argp_error(state, gb_tr("--job goes with a mix of its own, as own/frost"));
}

/* What belongs to --make, and what it needs. */
static void check_ways(struct argp_state *state, const input *in) {
    if (isnan(in->make_m3) && (in->waste > 0 || in->prices != NULL))
        argp_error(state, gb_tr("--waste and --prices go with --make"));
    if (!isnan(in->make_m3) && isnan(in->mixer_m3) && in->job == NULL)
        argp_error(state, gb_tr("--make compares batches: say what the mixer takes, as "
                                "--mixer 4ft3"));
}

static error_t parse_own(int key, char *arg, struct argp_state *state, input *in) {
    switch (key) {
    case KEY_MIXER:
        in->mixer_m3 = gb_option_volume(state, "--mixer", arg, MOST_MIXER_M3);
        return 0;
    case KEY_BUCKET:
        in->bucket_m3 = gb_option_volume(state, "--bucket", arg, MOST_BUCKET_M3);
        return 0;
    case KEY_MAKE:
        in->make_m3 = gb_option_volume(state, "--make", arg, MOST_MAKE_M3);
        return 0;
    case KEY_WASTE:
        in->waste = gb_option_waste(state, arg);
        return 0;
    case KEY_PRICES:
        in->prices = arg;
        return 0;
    case KEY_JOB:
        in->job = arg;
        return 0;
    default:
        return ARGP_ERR_UNKNOWN;
    }
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
    case ARGP_KEY_END:
        check_question(state, in);
        check_ways(state, in);
        return 0;
    default:
        return parse_own(key, arg, state, in);
    }
}

/* ---- answers ----------------------------------------------------------------------- */

/* With --make and no --mixer there is a job. */
static bool needs_no_mixer(gb_run *run, const input *in) {
    if (isnan(in->make_m3))
        return true;
    (void)fprintf(stderr,
                  gb_tr("%s: error: none of its mixers is for slabs, and --make compares "
                        "batches: say what the mixer takes, as --mixer 4ft3\n"),
                  in->job);
    run->told = GB_EXIT_FAULT;
    return false;
}

static bool fill_mixer(gb_run *run, const input *in, gb_concrete_question *q) {
    if (isnan(in->mixer_m3))
        return needs_no_mixer(run, in);
    q->mixer.m3 = in->mixer_m3;
    q->asked.bags = gb_bags_in_mixer(&q->asked.recipe, q->mixer);
    if (q->asked.bags > 0)
        return true;
    (void)fputs(
        gb_tr("gaugebox concrete: error: the mixer takes less than an eighth of a "
              "bag makes; take a larger one, or leave --mixer out\n"),
        stderr);
    run->told = GB_EXIT_FAULT;
    return false;
}

/* ---- other ways -------------------------------------------------------------------- */

/* This concrete, those of the table, and ready-mixed. */
static gb_status compare(gb_run *run, const input *in, gb_concrete_question *q,
                         gb_system system) {
    const gb_mix *const *mixes = NULL;
    const gb_mix *asked = q->asked.mix;
    size_t count = 0;
    if (!gb_mix_list(run->table, &mixes, &count))
        return GB_OK; /* the faults are in the run */
    q->ways.net.m3 = in->make_m3;
    q->ways.waste.of_one = in->waste;
    q->ways.mixer = q->mixer;
    q->ways.system = system;
    q->ways.ready = gb_material_find(run->table, "ready-mixed");
    q->ways.moisture = gb_delivered_sand(&asked->concrete);
    gb_way *list = gb_arena_take(&run->arena, count + 2, sizeof *list);
    if (list == NULL)
        return GB_NO_MEMORY;
    gb_status status = gb_make_way(asked, &q->ways, &run->arena, &list[0]);
    size_t n = 1;
    for (size_t i = 0; i < count && status == GB_OK; i++)
        if (gb_is_way(mixes[i], asked, system))
            status = gb_make_way(mixes[i], &q->ways, &run->arena, &list[n++]);
    if (status == GB_OK && q->ways.ready != NULL)
        status = gb_make_way(NULL, &q->ways, &run->arena, &list[n++]);
    q->way_list = list;
    q->way_count = n;
    return status;
}

static bool read_book(gb_run *run, const input *in, gb_price_book *book,
                      gb_concrete_question *q) {
    if (in->prices == NULL)
        return true;
    if (!gb_read_prices(in->prices, run->table, &run->arena, &run->diags, book))
        return false;
    q->ways.book = book;
    return true;
}

/* What a job says of it goes for what was not typed: its bucket, and the first of its
   mixers that is kept for slabs. */
static void take_job(const gb_job *job, input *in) {
    size_t count = 0;
    const gb_mixer *mixers = gb_mixers_of(&job->crew, &count);
    if (isnan(in->bucket_m3) && job->gauge.by == GB_BY_BUCKET)
        in->bucket_m3 = gb_job_measure(job).m3;
    for (size_t i = 0; isnan(in->mixer_m3) && i < count; i++)
        if (mixers[i].fills == 0 || mixers[i].fills & (1u << GB_SLAB))
            in->mixer_m3 = gb_usable(&mixers[i]).m3;
}

static gb_status answer(gb_run *run, const input *in, gb_system units,
                        const gb_mix *mix) {
    gb_style style = gb_run_style(&in->common, units);
    gb_concrete_question q;
    gb_price_book book;
    gb_sheet sheet;
    gb_status status = gb_ask_concrete(mix, style.system, &q);
    if (status != GB_OK)
        return status;
    q.asked.bucket.m3 = in->bucket_m3;
    if (!fill_mixer(run, in, &q) || !read_book(run, in, &book, &q))
        return GB_OK; /* told, or in the run */
    if (!isnan(in->make_m3))
        status = compare(run, in, &q, style.system);
    if (q.ways.book != NULL && (status == GB_OVERFLOW || status == GB_NOT_POSITIVE))
        gb_report_prices(status, &book, &run->diags);
    if (status == GB_OK && !gb_diags_any(&run->diags))
        status = gb_concrete_sheet(&q, style, &run->arena, &sheet);
    if (status == GB_OK && !gb_diags_any(&run->diags))
        status = gb_run_write(run, &in->common, &sheet);
    return status;
}

/* One of the table, or of a job's own. */
static const gb_mix *find_mix(gb_run *run, const input *in, gb_job *job) {
    if (in->job == NULL)
        return gb_mix_find(run->table, (gb_ref){in->id, 0}, "gaugebox concrete");
    if (!gb_read_job(in->job, run->table, &run->arena, &run->diags, job))
        return NULL;
    for (size_t i = 0; i < job->own_mix_count; i++)
        if (strcmp(job->own_mixes[i].id, in->id) == 0)
            return &job->own_mixes[i];
    (void)fprintf(
        stderr,
        gb_tr("%s: error: the job has no mix '%.*s' of its own; its own are under "
              "'mixes', called own/name\n"),
        in->job, gb_cut(in->id, 60), in->id);
    run->told = GB_EXIT_FAULT;
    return NULL;
}

static const gb_mix *stated_mix(gb_run *run, const input *in, gb_job *job) {
    const gb_mix *mix = find_mix(run, in, job);
    if (mix == NULL || gb_is_proportioned(mix))
        return mix;
    (void)fprintf(stderr,
                  gb_tr("gaugebox concrete: error: the parts of '%s' are stated, and not "
                        "proportioned for a concrete; `gaugebox mix %s` tells them\n"),
                  mix->id, mix->id);
    run->told = GB_EXIT_FAULT;
    return NULL;
}

/* A job's mix with the pile of that job. */
static const gb_mix *with_pile(gb_run *run, const gb_mix *of, const gb_job *job) {
    gb_mix *mix = gb_arena_take(&run->arena, 1, sizeof *mix);
    run->diags.no_memory = run->diags.no_memory || mix == NULL;
    if (mix == NULL)
        return NULL;
    *mix = *of;
    gb_places_copy(&run->places, of, mix, sizeof *mix);
    mix->concrete =
        gb_delivered_as(&of->concrete, gb_job_moisture(job), (gb_share){GB_NONE});
    mix->concrete.at = of->at;
    mix->concrete.exposures |= job->site.exposures;
    mix->concrete.air_dry = true; /* a dry pile is cautioned, as the job's sheet does */
    gb_places_copy(&run->places,
                   isnan(job->sand.moisture.of_one) ? (const void *)&job->sand.state
                                                    : (const void *)&job->sand.moisture,
                   &mix->concrete.sand_moisture, sizeof mix->concrete.sand_moisture);
    return mix;
}

/* As it was typed; or of a mix, with its aggregate as wet as was typed, if it was. */
static const gb_mix *asked_mix(gb_run *run, const input *in, gb_job *job) {
    const gb_mix *of = in->id == NULL ? NULL : stated_mix(run, in, job);
    if (of != NULL && in->job != NULL)
        of = with_pile(run, of, job);
    if (in->id != NULL && (of == NULL || in->keyed.count == 0)) {
        bool good = of == NULL || in->job == NULL ||
                    gb_check_delivered(&of->concrete, in->job, &run->arena, &run->diags);
        return good ? of : NULL;
    }
    gb_mix *mix = gb_arena_take(&run->arena, 1, sizeof *mix);
    run->diags.no_memory = run->diags.no_memory || mix == NULL;
    gb_system units = gb_run_style(&in->common, GB_US).system;
    bool good =
        mix != NULL && gb_read_concrete(in->keyed.typed, in->keyed.count, units, of,
                                        run->table, &run->arena, &run->diags, mix);
    return good ? mix : NULL;
}

/* Faults of options are wrong usage, those of files are not. */
static bool only_typed_faults(const gb_run *run) {
    for (size_t i = 0; i < run->diags.count; i++)
        if (strcmp(run->diags.list[i].file, "gaugebox concrete") != 0)
            return false;
    return run->diags.count > 0;
}

static int run_concrete(int argc, char **argv) {
    input in = {.mixer_m3 = GB_NONE, .bucket_m3 = GB_NONE, .make_m3 = GB_NONE};
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
    gb_job job;
    const gb_mix *mix = asked_mix(&run, &in, &job);
    bool of_job = mix != NULL && in.id != NULL && in.job != NULL;
    if (of_job)
        take_job(&job, &in);
    gb_system units = of_job ? job.units : mix != NULL ? mix->concrete.table : GB_US;
    gb_status status = mix == NULL ? GB_OK : answer(&run, &in, units, mix);
    bool usage = in.keyed.count > 0 && only_typed_faults(&run);
    int result = gb_run_end(&run, &in.common, status);
    return usage && result == GB_EXIT_FAULT ? GB_EXIT_USAGE : result;
}

const gb_command gb_concrete_command = {
    "concrete", N_("a concrete proportioned by volumes, and its trial batch"),
    run_concrete};
