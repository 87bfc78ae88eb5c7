#include "cli/command.h"
#include "words/words.h"

/* A job that a beginner changes line by line. Every line that he needs is there, what he
   may add is there as a comment, and the whole is a job without faults. Comments and the
   texts of the job's own are words; the rest is the same in every language. */
static const struct {
    const char *code;
    const char *words;
    const char *rest;
} STARTER[] = {
    {"# ",
     N_("A job for gaugebox. Change the values; `gaugebox check FILE` tells what is "
        "wrong."),
     ""},
    {"# ",
     N_("Lengths and the like are texts with a unit: \"5 ft\", \"1-1/4 in\", \"38 mm\", "
        "\"6 ft3\"."),
     ""},
    {"# ", N_("The inch mark is in or '' because a double quote would end the text."),
     ""},
    {"format = 1;", "", ""},
    {"units = \"us\";                     # ", N_("or \"metric\""), ""},
    {"", "", ""},
    {"site = {", "", ""},
    {"  name = \"", N_("Back door steps"), "\";"},
    {"  # place = \"", N_("where it is, for whoever calls for help"), "\";"},
    {"  # emergency = \"", N_("whom to call"), "\";"},
    {"  # rinse_water = \"", N_("where the rinse water is"), "\";"},
    {"};", "", ""},
    {"", "", ""},
    {"crew = {", "", ""},
    {"  mixer = { kind = \"paddle\";      # ", N_("or \"drum\", \"barrow\""), ""},
    {"            usable = \"6 ft3\";     # ",
     N_("wet mix it holds, not the drum's own size"), ""},
    {"            # most = \"750 lb\";    # ",
     N_("mass limit on its plate, water included"), ""},
    {"          };", "", ""},
    {"  pace = \"3 treads/h\";            # ",
     N_("or \"40 ft2/h\"; holds batches to their life"), ""},
    {"  # start = \"07:30\";", "", ""},
    {"  # finish = \"16:00\";", "", ""},
    {"  # breaks = ( { from = \"12:00\"; to = \"12:30\"; } );", "", ""},
    {"  # mixing = \"12 min\";             # ", N_("one batch, gauged and mixed"), ""},
    {"};", "", ""},
    {"", "", ""},
    {"gauge = { by = \"bucket\";          # ", N_("or \"box\", \"shovel\""), ""},
    {"          volume = \"1/2 ft3\"; };  # ", N_("level to its marked line"), ""},
    {"# pail = { across_bottom = \"10-1/4 in\"; across_top = \"11-1/4 in\"; height = "
     "\"14 in\"; };  # ",
     N_("inside; marks for the water"), ""},
    {"", "", ""},
    {"sand = { state = \"damp\";          # ",
     N_("or \"nearly dry\", \"wet\"; or moisture = \"4%\""), ""},
    {"         # ", N_("how a pail of it settles when it is flooded and stirred:"), ""},
    {"         # moist_height = \"12 in\"; flooded_height = \"10 in\";", "", ""},
    {"       };", "", ""},
    {"", "", ""},
    {"# weather = { air = \"62 F\"; low = \"48 F\"; wind = \"5 mph\"; stone = \"58 F\"; "
     "block = \"56 F\"; };",
     "", ""},
    {"", "", ""},
    {"waste = (", "", ""},
    {"  { of = \"bed/stiff-1-4\"; share = \"10%\"; },", "", ""},
    {"  { of = \"slurry/neat\"; share = \"20%\"; }", "", ""},
    {");", "", ""},
    {"", "", ""},
    {"# lift = { capacity = \"1400 lb\"; attachment = \"150 lb\"; };  # ",
     N_("at the reach used; clamp and slings"), ""},
    {"", "", ""},
    {"# labels = ( { mix = \"bagged/setting-80lb\"; bag = \"80 lb\"; yield = \"0.66 "
     "ft3\"; } );",
     "", ""},
    {"# packs = ( { material = \"portland-cement\"; pack = \"47 lb\"; } );", "", ""},
    {"", "", ""},
    {"# ",
     N_("What is built. `gaugebox mix` lists the mixes, `gaugebox keys` every key."), ""},
    {"pieces = (", "", ""},
    {"  { name = \"", N_("treads"),
     "\"; kind = \"tread\"; count = 4; size = \"4 ft x 14 in\";"},
    {"    # overhang = \"1 in\";", "", ""},
    {"    # stone = { kind = \"sandstone\"; thickness = \"2 in\"; spare = 1; };", "", ""},
    {"    layers = (", "", ""},
    {"      { kind = \"bed\"; mix = \"bed/stiff-1-4\"; depth = \"1-1/4 in\"; },   # ",
     N_("or [ \"1 in\", \"1-1/2 in\" ]"), ""},
    {"      { kind = \"slurry\"; mix = \"slurry/neat\"; faces = \"back\"; back = "
     "\"smooth\"; }",
     "", ""},
    {"    ); },", "", ""},
    {"  { name = \"", N_("landing"), "\"; kind = \"landing\"; size = \"4 ft x 3 ft\";"},
    {"    layers = ( { kind = \"bed\"; mix = \"bed/stiff-1-4\"; depth = \"1-1/2 in\"; } "
     "); }",
     "", ""},
    {"  # ", N_("A run is laid out by its rise; `gaugebox steps` lists what fits:"), ""},
    {"  # , { name = \"", N_("run"),
     "\"; kind = \"tread\"; stone = { kind = \"granite\"; thickness = \"7 in\"; };"},
    {"  #     run = { rise = \"35 in\"; count = 5; tread = \"15 in\"; width = \"4 ft\";",
     "", ""},
    {"  #             build = \"solid\"; overlap = \"2 in\"; }; }", "", ""},
    {");", "", ""},
};

static void write_starter(gb_text *to) {
    for (size_t i = 0; i < sizeof STARTER / sizeof STARTER[0]; i++) {
        gb_text_add(to, STARTER[i].code);
        gb_text_add(to, gb_tr(STARTER[i].words));
        gb_text_add(to, STARTER[i].rest);
        gb_text_add(to, "\n");
    }
}

static error_t parse(int key, char *arg, struct argp_state *state) {
    (void)arg;
    if (key != ARGP_KEY_INIT)
        return ARGP_ERR_UNKNOWN;
    state->child_inputs[0] = state->input;
    return 0;
}

static int run_starter(int argc, char **argv) {
    const struct argp_child children[] = {{&gb_common_argp, 0, NULL, 0}, {0}};
    const struct argp argp = {.parser = parse,
                              .doc =
                                  N_("A commented job to start from: gaugebox starter -o "
                                     "job.cfg, then change it."),
                              .children = children,
                              .argp_domain = GB_DOMAIN};
    gb_common common = {.no_json = true, .no_explain = true};
    argp_parse(&argp, argc, argv, 0, NULL, &common);
    gb_run run;
    if (!gb_run_start(&run, &common))
        return GB_EXIT_IO;
    write_starter(&run.out);
    return gb_run_end(&run, &common, GB_OK);
}

const gb_command gb_starter_command = {"starter", N_("a commented job to start from"),
                                       run_starter};
