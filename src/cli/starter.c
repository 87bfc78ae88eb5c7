#include "cli/command.h"

/* A job that a beginner changes line by line. Every line that he needs is there, what he
   may add is there as a comment, and the whole is a job without faults. */
static const char STARTER[] =
    "# A job for gaugebox. Change the values; `gaugebox check FILE` tells what is "
    "wrong.\n"
    "# Lengths and the like are texts with a unit: \"5 ft\", \"1-1/4 in\", \"38 mm\", "
    "\"6 ft3\".\n"
    "# The inch mark is in or '' because a double quote would end the text.\n"
    "format = 1;\n"
    "units = \"us\";                     # or \"metric\"\n"
    "\n"
    "site = {\n"
    "  name = \"Back door steps\";\n"
    "  # place = \"where it is, for whoever calls for help\";\n"
    "  # emergency = \"whom to call\";\n"
    "  # rinse_water = \"where the rinse water is\";\n"
    "};\n"
    "\n"
    "crew = {\n"
    "  mixer = { kind = \"paddle\";      # or \"drum\", \"barrow\"\n"
    "            usable = \"6 ft3\";     # wet mix it holds, not the drum's own size\n"
    "            # most = \"750 lb\";    # mass limit on its plate, water included\n"
    "          };\n"
    "  pace = \"3 treads/h\";            # or \"40 ft2/h\"; holds batches to their life\n"
    "  # start = \"07:30\";\n"
    "  bucket = \"1/2 ft3\";             # level to its marked line\n"
    "};\n"
    "\n"
    "sand = { state = \"damp\"; };       # or \"nearly dry\", \"wet\"; or moisture = "
    "\"4%\"\n"
    "\n"
    "# weather = { air = \"62 F\"; low = \"48 F\"; wind = \"5 mph\"; stone = \"58 F\"; "
    "block = \"56 F\"; };\n"
    "\n"
    "waste = (\n"
    "  { of = \"bed/stiff-1-4\"; share = \"10%\"; },\n"
    "  { of = \"slurry/neat\"; share = \"20%\"; }\n"
    ");\n"
    "\n"
    "# labels = ( { mix = \"bagged/setting-80lb\"; bag = \"80 lb\"; yield = \"0.66 "
    "ft3\"; } );\n"
    "# packs = ( { material = \"portland-cement\"; pack = \"47 lb\"; } );\n"
    "\n"
    "# What is built. `gaugebox mix` lists the mixes, `gaugebox keys` every key.\n"
    "pieces = (\n"
    "  { name = \"treads\"; kind = \"tread\"; count = 4; size = \"4 ft x 14 in\";\n"
    "    # overhang = \"1 in\";\n"
    "    layers = (\n"
    "      { kind = \"bed\"; mix = \"bed/stiff-1-4\"; depth = \"1-1/4 in\"; },   # or [ "
    "\"1 in\", \"1-1/2 in\" ]\n"
    "      { kind = \"slurry\"; mix = \"slurry/neat\"; faces = \"back\"; back = "
    "\"smooth\"; }\n"
    "    ); },\n"
    "  { name = \"landing\"; kind = \"landing\"; size = \"4 ft x 3 ft\";\n"
    "    layers = ( { kind = \"bed\"; mix = \"bed/stiff-1-4\"; depth = \"1-1/2 in\"; } "
    "); }\n"
    ");\n";

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
                              .doc = "A commented job to start from: gaugebox starter -o "
                                     "job.cfg, then change it.",
                              .children = children};
    gb_common common = {.no_json = true, .no_explain = true};
    argp_parse(&argp, argc, argv, 0, NULL, &common);
    gb_run run;
    if (!gb_run_start(&run, &common))
        return GB_EXIT_IO;
    gb_text_add(&run.out, STARTER);
    return gb_run_end(&run, &common, GB_OK);
}

const gb_command gb_starter_command = {"starter", "a commented job to start from",
                                       run_starter};
