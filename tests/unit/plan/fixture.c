#include "fixture.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <string.h>

#include "gaugebox/read.h"

#define IN_ENGLISH(text)                                                                 \
    { (const gb_phrase[]){{"en", (text)}}, 1 }

const double FX_BAD[5] = {0.0, -1.0, NAN, INFINITY, -INFINITY};

const gb_material FX_CEMENT = {.name = "portland-cement",
                               .kind = GB_CEMENT,
                               .bulk = {94.0 * LB / FT3},
                               .dry_loose = {NAN},
                               .gravity = 3.15,
                               .pack = {94.0 * LB},
                               .source = IN_ENGLISH("ASTM C270")};
const gb_material FX_LIME = {.name = "hydrated-lime",
                             .kind = GB_LIME,
                             .bulk = {40.0 * LB / FT3},
                             .dry_loose = {NAN},
                             .gravity = 2.3,
                             .pack = {50.0 * LB},
                             .source = IN_ENGLISH("ASTM C270")};
const gb_material FX_SAND = {.name = "masonry-sand",
                             .kind = GB_SAND,
                             .bulk = {80.0 * LB / FT3},
                             .gauged_at = {0.05},
                             .dry_loose = {1400.0},
                             .gravity = 2.65,
                             .pack = {NAN},
                             .source = IN_ENGLISH("ASTM C270")};

static const gb_part BED_PARTS[] = {
    {.material_name = "portland-cement", .material = &FX_CEMENT, .volume = 1},
    {.material_name = "masonry-sand", .material = &FX_SAND, .volume = 4}};
static const gb_part NEAT_PARTS[] = {
    {.material_name = "portland-cement", .material = &FX_CEMENT, .volume = 1}};
static const gb_part LIME_PARTS[] = {
    {.material_name = "portland-cement", .material = &FX_CEMENT, .volume = 1},
    {.material_name = "hydrated-lime", .material = &FX_LIME, .volume = 1},
    {.material_name = "masonry-sand", .material = &FX_SAND, .volume = 6}};

const gb_mix FX_BED = {
    .name = "stiff-1-4",
    .id = "bed/stiff-1-4",
    .source = IN_ENGLISH("common practice"),
    .parts = BED_PARTS,
    .part_count = 2,
    .consistency = GB_STIFF,
    .water = {GB_WATER_DEMAND, {0.85}, {1.0}, {1.12}, {NAN}, {NAN}, {NAN}, {0.75}},
    .air = {0.05},
    .spread = {NAN},
    .life = {2.0 * HOUR},
    .life_hot = {1.0 * HOUR},
    .open = {NAN},
    .mixing = {0}};
const gb_mix FX_SLURRY = {
    .name = "neat",
    .id = "slurry/neat",
    .source = IN_ENGLISH("common practice"),
    .parts = NEAT_PARTS,
    .part_count = 1,
    .consistency = GB_PASTE,
    .water = {GB_WATER_BINDER, {0.40}, {0.45}, {0.50}, {NAN}, {NAN}, {NAN}, {0.875}},
    .spread = {NAN},
    .life = {1200.0},
    .life_hot = {600.0},
    .open = {300.0},
    .mixing = {0}};
const gb_mix FX_BLEND = {
    .name = "setting",
    .id = "bagged/setting",
    .source = IN_ENGLISH("common practice"),
    .consistency = GB_STIFF,
    .water = {GB_WATER_LABEL, {NAN}, {NAN}, {NAN}, {4.5 * QT}, {5 * QT}, {6 * QT}, {0.8}},
    .label = {.bag = {80.0 * LB}, .yield = {0.66 * FT3}},
    .spread = {NAN},
    .life = {1.0 * HOUR},
    .life_hot = {0.5 * HOUR},
    .open = {NAN},
    .mixing = {0}};
const gb_mix FX_LIME_MORTAR = {
    .name = "type-n",
    .id = "mortar/type-n",
    .source = IN_ENGLISH("ASTM C270"),
    .parts = LIME_PARTS,
    .part_count = 3,
    .consistency = GB_PLASTIC,
    .water = {GB_WATER_DEMAND, {0.9}, {1.0}, {1.1}, {NAN}, {NAN}, {NAN}, {0.75}},
    .air = {0.05},
    .spread = {NAN},
    .life = {2.5 * HOUR},
    .life_hot = {2.0 * HOUR},
    .open = {NAN},
    .mixing = {0}};

void fx_empty(fx_job *f) {
    memset(f, 0, sizeof *f);
    gb_job *j = &f->job;
    j->file = "job.cfg";
    j->site.name = "a job";
    j->crew.mixer = (gb_mixer){.kind = GB_PADDLE, .usable = {6.0 * FT3}, .most = {NAN}};
    j->crew.pace = (gb_pace){.treads_s = NAN, .m2_s = NAN, .m3_s = NAN};
    j->crew.start.s = 7.5 * HOUR;
    j->gauge = gb_usual_gauge();
    j->sand = gb_usual_pile();
    j->weather = (gb_weather){.air = {NAN},
                              .low = {NAN},
                              .stone = {NAN},
                              .block = {NAN},
                              .wind = {NAN},
                              .humidity = {NAN}};
    j->wastes = f->wastes;
    j->labels = f->labels;
    j->packs = f->packs;
    j->pieces = f->pieces;
    j->mixes = f->mixes;
}

gb_piece *fx_piece(fx_job *f, const char *name, gb_piece_kind kind, size_t count,
                   double length_m, double width_m) {
    cr_assert(f->job.piece_count < FX_PIECES);
    size_t i = f->job.piece_count++;
    f->pieces[i] = (gb_piece){.name = name,
                              .kind = kind,
                              .count = count,
                              .shape = {.front = {length_m}, .width = {width_m}},
                              .layers = f->layers[i]};
    return &f->pieces[i];
}

static void use_mix(fx_job *f, const gb_mix *mix) {
    for (size_t i = 0; i < f->job.mix_count; i++)
        if (f->mixes[i] == mix)
            return;
    cr_assert(f->job.mix_count < FX_ROWS);
    f->mixes[f->job.mix_count++] = mix;
}

gb_layer *fx_layer(fx_job *f, gb_layer_kind kind, const gb_mix *mix, double depth_m) {
    size_t i = f->job.piece_count - 1;
    cr_assert(f->pieces[i].layer_count < FX_LAYERS);
    gb_layer *layer = &f->layers[i][f->pieces[i].layer_count++];
    *layer = (gb_layer){.kind = kind,
                        .mix = {.text = mix->id},
                        .joint_length = {NAN},
                        .joint_width = {NAN},
                        .volume = {NAN}};
    if (!isnan(depth_m))
        fx_depths(f, layer, &depth_m, 1);
    use_mix(f, mix);
    return layer;
}

void fx_depths(fx_job *f, gb_layer *layer, const double *depths_m, size_t count) {
    cr_assert(count <= FX_DEPTHS);
    size_t at = (size_t)(layer - &f->layers[0][0]);
    double *kept = f->depths[at / FX_LAYERS][at % FX_LAYERS];
    memcpy(kept, depths_m, count * sizeof *kept);
    layer->depths_m = kept;
    layer->depth_count = count;
}

void fx_volume(fx_job *f, const gb_mix *mix, double volume_m3) {
    fx_piece(f, "fill", GB_OTHER_PIECE, 1, NAN, NAN);
    fx_layer(f, GB_VOLUME_LAYER, mix, NAN)->volume.m3 = volume_m3;
}

void fx_waste(fx_job *f, const char *of, double share) {
    cr_assert(f->job.waste_count < FX_ROWS);
    f->wastes[f->job.waste_count++] = (gb_waste){{.text = of}, {share}};
}

void fx_label(fx_job *f, const gb_mix *mix, double bag_kg, double yield_m3,
              bool measured) {
    cr_assert(f->job.label_count < FX_ROWS);
    f->labels[f->job.label_count++] =
        (gb_own_label){.mix = {.text = mix->id},
                       .label = {.bag = {bag_kg}, .yield = {yield_m3}, .spread = {NAN}},
                       .least = {NAN},
                       .usual = {NAN},
                       .most = {NAN},
                       .measured = measured};
}

void fx_pack(fx_job *f, const gb_material *material, double kg) {
    cr_assert(f->job.pack_count < FX_ROWS);
    f->packs[f->job.pack_count++] = (gb_own_pack){{.text = material->name}, {kg}};
}

void fx_library(fx_job *f) {
    fx_empty(f);
    f->job.crew.mixer.most.kg = 750.0 * LB;
    f->job.crew.pace.treads_s = 3.0 / HOUR;
    fx_waste(f, FX_BED.id, 0.10);
    fx_waste(f, FX_SLURRY.id, 0.20);
    fx_waste(f, FX_SAND.name, 0.10);
    fx_piece(f, "treads", GB_TREAD, 7, 5.0 * FT, 14.0 * IN);
    fx_layer(f, GB_BED, &FX_BED, 1.25 * IN);
    fx_layer(f, GB_SLURRY, &FX_SLURRY, IN / 16.0)->back = GB_SCORED;
    fx_piece(f, "landing", GB_LANDING, 1, 5.0 * FT, 6.0 * FT);
    fx_layer(f, GB_BED, &FX_BED, 1.5 * IN);
    fx_layer(f, GB_SLURRY, &FX_SLURRY, IN / 16.0)->back = GB_SCORED;
}

void fx_site_mix(fx_mix *m, double cement, double lime, double sand,
                 gb_consistency consistency) {
    const gb_material *of[] = {&FX_CEMENT, &FX_LIME, &FX_SAND};
    const double volumes[] = {cement, lime, sand};
    *m = (fx_mix){.mix = FX_BED};
    m->mix.id = "bed/varied";
    m->mix.consistency = consistency;
    m->mix.parts = m->parts;
    m->mix.part_count = 0;
    for (size_t i = 0; i < 3; i++) {
        if (volumes[i] <= 0)
            continue;
        size_t n = m->mix.part_count++;
        m->materials[n] = *of[i];
        m->parts[n] = (gb_part){.material_name = of[i]->name,
                                .material = &m->materials[n],
                                .volume = volumes[i]};
    }
}

void fx_open(gb_arena *arena) {
    gb_arena_init(arena, gb_malloc_supply());
}

void fx_plan(const fx_job *f, gb_arena *arena, gb_plan *plan) {
    const gb_mix *bad = NULL;
    gb_status status = gb_make_plan(&f->job, arena, plan, &bad);
    cr_assert(status == GB_OK, "no plan: status %d, mix %s", status,
              bad != NULL ? bad->id : "none");
}

const gb_mix_plan *fx_of(const gb_plan *plan, const char *id) {
    for (size_t i = 0; i < plan->mix_count; i++)
        if (strcmp(plan->mixes[i].need.mix->id, id) == 0)
            return &plan->mixes[i];
    cr_assert(false, "no mix %s in the plan", id);
    return NULL;
}

const gb_supply_need *fx_supply(const gb_plan *plan, const char *name) {
    for (size_t i = 0; i < plan->supply_count; i++) {
        const gb_supply_need *s = &plan->supplies[i];
        const char *own = s->material != NULL ? s->material->name : s->blend->id;
        if (strcmp(own, name) == 0)
            return s;
    }
    cr_assert(false, "no supply %s in the plan", name);
    return NULL;
}

const gb_caution *fx_caution(const gb_mix_plan *mix, gb_caution_code code) {
    for (size_t i = 0; i < mix->cautions.count; i++)
        if (mix->cautions.list[i].code == code)
            return &mix->cautions.list[i];
    return NULL;
}

size_t fx_cautions(const gb_mix_plan *mix, gb_caution_code code) {
    size_t n = 0;
    for (size_t i = 0; i < mix->cautions.count; i++)
        n += mix->cautions.list[i].code == code;
    return n;
}

bool fx_near(double got, double want, double slack) {
    return (isnan(got) && isnan(want)) || fabs(got - want) <= slack;
}

bool fx_same(double got, double want) {
    return fx_near(got, want, 1e-12 * fabs(want));
}

static uint32_t next(fx_random *r) {
    r->state = r->state * 1664525u + 1013904223u;
    return r->state >> 8; /* the low bits of such a generator are poor */
}

fx_random fx_seeded(unsigned seed) {
    /* Without this the first draws of neighbouring seeds lie side by side, and some part
       of the range is never drawn. 2654435761 is 2^32 over the golden ratio (Knuth). */
    fx_random r = {seed * 2654435761u};
    for (int i = 0; i < 4; i++)
        next(&r);
    return r;
}

double fx_between(fx_random *r, double low, double high) {
    return low + (high - low) * (next(r) / 16777216.0);
}

size_t fx_whole(fx_random *r, size_t low, size_t high) {
    return low + next(r) % (high - low + 1);
}

static void random_crew(gb_crew *crew, fx_random *r) {
    crew->mixer.usable.m3 = fx_between(r, 0.05, 9.0) * FT3;
    if (fx_whole(r, 0, 1) == 1)
        crew->mixer.most.kg = fx_between(r, 15, 900) * LB;
    size_t pace = fx_whole(r, 0, 3);
    if (pace == 1)
        crew->pace.treads_s = fx_between(r, 0.3, 8) / HOUR;
    if (pace == 2)
        crew->pace.m2_s = fx_between(r, 3, 60) * FT2 / HOUR;
    if (pace == 3)
        crew->pace.m3_s = fx_between(r, 0.3, 8) * FT3 / HOUR;
}

void fx_random_job(fx_job *f, fx_random *r) {
    fx_empty(f);
    random_crew(&f->job.crew, r);
    const gb_mix *mix = fx_whole(r, 0, 1) == 1 ? &FX_BED : &FX_BLEND;
    if (fx_whole(r, 0, 3) > 0)
        fx_waste(f, mix->id, fx_between(r, 0, 0.25));
    size_t pieces = fx_whole(r, 1, 6);
    for (size_t i = 0; i < pieces; i++) {
        fx_piece(f, "run", GB_TREAD, fx_whole(r, 1, 12), fx_between(r, 2, 8) * FT,
                 fx_between(r, 8, 40) * IN);
        fx_layer(f, GB_BED, mix, fx_between(r, 0.5, 3) * IN);
    }
}
