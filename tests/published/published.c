#include "published/published.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>

/* Room for the rounding of sums where a figure stands exactly on its tolerance. */
static const double ROUNDING = 1e-9;

static const char *status_words(pub_status status) {
    static const char *const WORDS[] = {
        [PUB_READ] = "read",
        [PUB_SECOND_HAND] = "read second-hand",
        [PUB_FROM_MEMORY] = "from memory",
        [PUB_PRACTICE] = "common practice",
        [PUB_DERIVED] = "derived",
    };
    return WORDS[status];
}

void pub_check(const pub_figure *f, double got) {
    cr_assert(f->id != NULL && f->source != NULL, "a row names its figure and source");
    cr_assert((f->tolerance > 0) != (f->percent > 0), "%s: one tolerance", f->id);
    double most = f->tolerance + fabs(f->printed) * f->percent / 100.0;
    double off = got - f->printed;
    bool met = fabs(off) <= most + ROUNDING * fmax(1.0, fabs(f->printed));
    double percent = 100.0 * off / f->printed;
    cr_log_info("%s: printed %.6g, ours %.6g, off %+.2f %% (%s, %s)%s%s", f->id,
                f->printed, got, percent, f->source, status_words(f->status),
                f->known_difference != NULL ? "; known: " : "",
                f->known_difference != NULL ? f->known_difference : "");
    if (f->known_difference == NULL)
        cr_expect(met, "%s: printed %.6g +- %.3g, ours %.6g, off %+.2f %% (%s, %s)",
                  f->id, f->printed, most, got, percent, f->source,
                  status_words(f->status));
    else
        cr_expect(isfinite(got) && !met,
                  "%s: printed %.6g +- %.3g, ours %.6g: no longer the known difference "
                  "(%s)",
                  f->id, f->printed, most, got, f->known_difference);
}

void pub_check_for(const char *what, const pub_figure *figure, double got) {
    char id[96];
    snprintf(id, sizeof id, "%s, %s", what, figure->id);
    pub_figure named = *figure;
    named.id = id;
    pub_check(&named, got);
}

void pub_check_range(const pub_range *r, double got) {
    cr_assert(r->id != NULL && r->source != NULL && r->low <= r->high,
              "a row names its figure, source and range");
    bool met = !gb_under(got, r->low) && !gb_over(got, r->high) && isfinite(got);
    cr_log_info("%s: printed %.6g to %.6g, ours %.6g (%s, %s)", r->id, r->low, r->high,
                got, r->source, status_words(r->status));
    if (r->known_difference == NULL)
        cr_expect(met, "%s: printed %.6g to %.6g, ours %.6g (%s, %s)", r->id, r->low,
                  r->high, got, r->source, status_words(r->status));
    else
        cr_expect(isfinite(got) && !met,
                  "%s: printed %.6g to %.6g, ours %.6g: no longer the known difference "
                  "(%s)",
                  r->id, r->low, r->high, got, r->known_difference);
}

void pub_check_range_for(const char *what, const pub_range *range, double got) {
    char id[96];
    snprintf(id, sizeof id, "%s, %s", what, range->id);
    pub_range named = *range;
    named.id = id;
    pub_check_range(&named, got);
}

static const gb_unit *unit_named(gb_kind kind, const char *name) {
    const gb_unit *unit = gb_find_unit(kind, name);
    cr_assert(unit != NULL, "no unit %s", name);
    return unit;
}

double pub_si(gb_kind kind, const char *unit, double number) {
    return gb_from_unit(unit_named(kind, unit), number);
}

double pub_in(gb_kind kind, const char *unit, double si) {
    return gb_to_unit(unit_named(kind, unit), si);
}

void pub_open(pub_table *table) {
    static const char *const FOLDERS[] = {MIXES_FOLDER};
    gb_arena_init(&table->arena, gb_malloc_supply());
    gb_diags_init(&table->diags, &table->arena);
    table->mixes = gb_mix_table_open(FOLDERS, 1, &table->arena, &table->diags);
    cr_assert(table->mixes != NULL, "the mix table opens");
}

void pub_close(pub_table *table) {
    cr_expect(!gb_diags_any(&table->diags), "the shipped mix table has no fault");
    gb_arena_release(&table->arena);
}

const gb_mix *pub_mix(pub_table *table, const char *id) {
    const gb_mix *mix = gb_mix_find(table->mixes, (gb_ref){.text = id}, "published");
    cr_assert(mix != NULL, "mix %s is shipped", id);
    return mix;
}

const gb_material *pub_material(pub_table *table, const char *name) {
    const gb_material *material = gb_material_find(table->mixes, name);
    cr_assert(material != NULL, "material %s is shipped", name);
    return material;
}

static const double WATER_KG_M3 = 1000;

gb_volume pub_water_volume(gb_mass mass) {
    return (gb_volume){mass.kg / WATER_KG_M3};
}

gb_mass pub_water_mass(gb_volume volume) {
    return (gb_mass){volume.m3 * WATER_KG_M3};
}

gb_recipe pub_recipe(const gb_mix *mix) {
    gb_recipe recipe = {0};
    gb_status status = gb_make_recipe(mix, NULL, false, (gb_mass){NAN}, &recipe);
    cr_assert(status == GB_OK, "%s has a recipe: status %d", mix->id, (int)status);
    return recipe;
}

double pub_parts(const gb_mix *mix, gb_material_kind kind) {
    double volume = 0;
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material->kind == kind)
            volume += mix->parts[i].volume;
    return volume;
}

void pub_check_proportions(const pub_proportion *rows, size_t count, pub_base base) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < count; i++) {
        const gb_mix *mix = pub_mix(&table, rows[i].mix);
        double one = pub_parts(mix, GB_CEMENT);
        if (base == PUB_TO_BINDER)
            one += pub_parts(mix, GB_LIME);
        pub_check_range_for(mix->id, &rows[i].volumes,
                            pub_parts(mix, rows[i].part) / one);
    }
    pub_close(&table);
}

enum { EDGE_PARTS = 7 };

/* The mix of an edge's volumes; its parts live in `parts`. */
static gb_mix edge_mix(pub_table *table, const pub_edge *e, gb_part parts[EDGE_PARTS]) {
    static const char *const NAMES[EDGE_PARTS] = {
        "portland-cement", "masonry-cement-n", "masonry-cement-s", "masonry-cement-m",
        "hydrated-lime",   "masonry-sand",     "pea-gravel"};
    const double volumes[EDGE_PARTS] = {e->portland, e->n,    e->s,    e->m,
                                        e->lime,     e->sand, e->stone};
    gb_mix mix = {.id = e->id, .claims = e->claim, .parts = parts};
    for (size_t i = 0; i < EDGE_PARTS; i++)
        if (volumes[i] > 0)
            parts[mix.part_count++] = (gb_part){.material_name = NAMES[i],
                                                .material = pub_material(table, NAMES[i]),
                                                .volume = volumes[i]};
    return mix;
}

static void check_limits(const pub_edge *e, const gb_conformity *c) {
    cr_expect(c->known == !e->unknown, "%s: its cement is known", e->id);
    bool met = e->missed == GB_NO_RATIO || e->unknown;
    for (size_t i = 0; i < c->count; i++) {
        const gb_claim_limit *l = &c->limits[i];
        bool named = l->ratio == e->missed;
        met = met || named;
        cr_expect(l->side == (named ? e->side : GB_WITHIN),
                  "%s: ratio %d is %.9g of %.9g to %.9g, side %d", e->id, (int)l->ratio,
                  l->value, l->least, l->most, (int)l->side);
    }
    cr_expect(met, "%s: a limit on ratio %d", e->id, (int)e->missed);
}

static void check_caution(const pub_edge *e, const gb_cautions *cautions) {
    bool one = e->unknown || e->missed != GB_NO_RATIO;
    cr_assert(cautions->count == (one ? 1 : 0), "%s: %zu cautions", e->id,
              cautions->count);
    if (!one)
        return;
    const gb_caution *c = &cautions->list[0];
    cr_expect(c->severity == GB_CAUTION && c->source != NULL, "%s", e->id);
    cr_expect(gb_caution_ratio(c->code) == e->missed, "%s: code %d", e->id, (int)c->code);
    cr_expect(e->unknown || fabs(c->limit - e->limit) < 1e-12, "%s: limit %.9g", e->id,
              c->limit);
    cr_expect((c->code == GB_C_CLAIM_CEMENT) == e->unknown, "%s: code %d", e->id,
              (int)c->code);
}

void pub_check_edges(const pub_edge *rows, size_t count) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < count; i++) {
        gb_part parts[EDGE_PARTS];
        gb_mix mix = edge_mix(&table, &rows[i], parts);
        gb_conformity conformity;
        gb_check_claim(&mix, &conformity);
        check_limits(&rows[i], &conformity);
        gb_cautions cautions;
        cr_assert(gb_mix_cautions(&mix, &table.arena, &cautions) == GB_OK, "memory");
        check_caution(&rows[i], &cautions);
    }
    pub_close(&table);
}

double pub_kind_per_m3(const gb_mix *mix, gb_material_kind kind) {
    gb_recipe r = pub_recipe(mix);
    double kg = 0;
    for (size_t i = 0; i < mix->part_count; i++)
        if (mix->parts[i].material->kind == kind)
            kg += r.part[i].kg;
    return kg / r.yield.m3;
}

static size_t add_part(pub_mortar *m, const gb_material *shipped, double volume,
                       double kg_m3) {
    size_t i = m->mix.part_count++;
    m->material[i] = *shipped;
    if (kg_m3 > 0)
        m->material[i].bulk.kg_m3 = kg_m3;
    m->part[i] = (gb_part){
        .material_name = shipped->name, .material = &m->material[i], .volume = volume};
    return i;
}

void pub_make_mortar(pub_table *table, const pub_ratio *ratio, pub_mortar *m) {
    *m = (pub_mortar){.mix = *pub_mix(table, "mortar/type-n")};
    m->mix.id = "published/mortar";
    m->mix.parts = m->part;
    m->mix.part_count = 0;
    m->cement = add_part(m, pub_material(table, "portland-cement"), ratio->cement,
                         ratio->cement_kg_m3);
    if (ratio->lime > 0)
        m->lime = add_part(m, pub_material(table, "hydrated-lime"), ratio->lime, 0);
    m->sand =
        add_part(m, pub_material(table, "masonry-sand"), ratio->sand, ratio->sand_kg_m3);
}

double pub_kg_per_m3(const pub_mortar *mortar, size_t part) {
    gb_recipe r = pub_recipe(&mortar->mix);
    return r.part[part].kg / r.yield.m3;
}

double pub_m3_per_m3(const pub_mortar *mortar, size_t part) {
    return pub_kg_per_m3(mortar, part) / mortar->material[part].bulk.kg_m3;
}

void pub_make_paste(pub_table *table, double water_per_cement, double gravity,
                    pub_paste *paste) {
    *paste = (pub_paste){.cement = *pub_material(table, "portland-cement"),
                         .mix = *pub_mix(table, "slurry/neat")};
    paste->cement.gravity = gravity;
    paste->part = paste->mix.parts[0];
    paste->part.material = &paste->cement;
    paste->mix.parts = &paste->part;
    paste->mix.water.usual.of_one = water_per_cement;
}

void pub_make_concrete(pub_table *table, const pub_masses *m, pub_concrete *c) {
    const gb_material *cement = pub_material(table, "portland-cement");
    const gb_material *sand = pub_material(table, "masonry-sand");
    *c = (pub_concrete){.material = {*cement, *sand, *sand},
                        .mix = *pub_mix(table, "grout/fine")};
    c->material[1].gravity = m->sand_gravity;
    c->material[2].gravity = m->coarse_gravity;
    c->material[2].kind = GB_COARSE;
    const double kg[] = {m->cement, m->sand, m->coarse};
    for (size_t i = 0; i < 3; i++)
        c->part[i] = (gb_part){.material_name = c->material[i].name,
                               .material = &c->material[i],
                               .volume = kg[i] / c->material[i].bulk.kg_m3};
    c->mix.id = "published/concrete";
    c->mix.parts = c->part;
    c->mix.part_count = 3;
    double share = m->water / m->cement;
    c->mix.water.least.of_one = share;
    c->mix.water.usual.of_one = share;
    c->mix.water.most.of_one = share;
    c->mix.air.of_one = m->air;
}

static double stated(double number) {
    return number != 0 ? number : NAN;
}

static double stated_in(gb_kind kind, const char *unit, double number) {
    return pub_si(kind, unit, stated(number));
}

/* Nothing of it is stated. */
static gb_concrete nothing_asked(gb_system table) {
    const gb_mass none = {NAN};
    return (gb_concrete){.table = table,
                         .loose = {NAN},
                         .deviation = {NAN},
                         .air_content = {NAN},
                         .trial = {.water = none,
                                   .cement = none,
                                   .stone = none,
                                   .sand = none,
                                   .stone_moisture = {NAN},
                                   .sand_moisture = {NAN},
                                   .unit_mass = {NAN},
                                   .full = none,
                                   .empty = none,
                                   .measure = {NAN},
                                   .slump = {NAN},
                                   .air = {NAN}},
                         .at = {.line = 1}};
}

gb_concrete pub_ask(const pub_asked *a) {
    bool us = a->table == GB_US;
    const char *force = us ? "psi" : "MPa";
    gb_concrete c = nothing_asked(a->table);
    c.strength.pa = stated_in(GB_PRESSURE, force, a->specified);
    c.average.pa = stated_in(GB_PRESSURE, force, a->average);
    c.ratio = stated(a->ratio);
    c.water.kg_m3 = stated_in(GB_DENSITY, us ? "lb/yd3" : "kg/m3", a->water);
    c.slump.m = pub_si(GB_LENGTH, us ? "in" : "mm", a->slump);
    c.largest.m = pub_si(GB_LENGTH, us ? "in" : "mm", a->largest);
    c.air = a->air;
    c.attack = a->attack;
    c.cement_gravity = a->cement_gravity;
    c.sand_gravity = a->sand_gravity;
    c.stone_gravity = a->stone_gravity;
    c.sand_absorption.of_one = a->sand_absorption;
    c.stone_absorption.of_one = a->stone_absorption;
    c.sand_moisture.of_one = stated(a->sand_moisture);
    c.stone_moisture.of_one = stated(a->stone_moisture);
    c.air_dry = a->air_dry;
    c.fineness = a->fineness;
    c.rodded.kg_m3 = pub_si(GB_DENSITY, us ? "lb/ft3" : "kg/m3", a->rodded);
    return c;
}

gb_density pub_us_water(void) {
    return (gb_density){pub_si(GB_DENSITY, "lb/ft3", 62.4)};
}

gb_proportions pub_proportion_of(const gb_concrete *c, gb_density water) {
    gb_proportions p = {0};
    uint32_t faults = gb_concrete_faults(c);
    cr_assert(gb_proportion(c, water, &p) == GB_OK, "proportions: faults %x", faults);
    return p;
}

static void lay(const pub_laid *laid, gb_piece *piece, gb_layer *layer, double *depth) {
    *depth = laid->depth;
    *layer = (gb_layer){.kind = laid->kind, .depths_m = depth, .depth_count = 1};
    *piece = (gb_piece){.name = "piece",
                        .kind = GB_OTHER_PIECE,
                        .count = laid->count,
                        .shape = {.front = {laid->length}, .width = {laid->width}},
                        .layers = layer,
                        .layer_count = 1};
}

gb_take pub_take(const pub_laid *laid) {
    gb_piece piece;
    gb_layer layer;
    double depth = 0;
    gb_take take = {0};
    lay(laid, &piece, &layer, &depth);
    cr_assert(gb_take_off(&piece, &layer, &take) == GB_OK, "the layer is taken off");
    take.piece = NULL; /* both are gone on return */
    take.layer = NULL;
    return take;
}

static void start_job(pub_job *j, const gb_mix *mix) {
    j->mixes[0] = mix;
    j->layer.mix.text = mix->id;
    j->job = (gb_job){
        .file = "published",
        .crew = {.mixer = {.kind = GB_PADDLE, .usable = {1.0}, .most = {NAN}},
                 .pace = {.treads_s = NAN, .m2_s = NAN, .m3_s = NAN}},
        .gauge = gb_usual_gauge(),
        .sand = gb_usual_pile(),
        .weather = {.air = {NAN},
                    .low = {NAN},
                    .stone = {NAN},
                    .block = {NAN},
                    .wind = {NAN},
                    .humidity = {NAN}},
        .pieces = &j->piece,
        .piece_count = 1,
        .mixes = j->mixes,
        .mix_count = 1,
    };
}

void pub_volume_job(pub_job *j, const gb_mix *mix, gb_volume volume) {
    *j = (pub_job){.piece = {.name = "piece",
                             .kind = GB_OTHER_PIECE,
                             .count = 1,
                             .layers = &j->layer,
                             .layer_count = 1},
                   .layer = {.kind = GB_VOLUME_LAYER, .volume = volume}};
    start_job(j, mix);
}

void pub_laid_job(pub_job *j, const gb_mix *mix, const pub_laid *laid) {
    *j = (pub_job){.depth = 0};
    lay(laid, &j->piece, &j->layer, &j->depth);
    start_job(j, mix);
}

void pub_add_waste(pub_job *j, double share) {
    j->waste = (gb_waste){.of = j->layer.mix, .share = {share}};
    j->job.wastes = &j->waste;
    j->job.waste_count = 1;
}

void pub_plan(pub_table *table, pub_job *j) {
    const gb_mix *bad = NULL;
    gb_status status = gb_make_plan(&j->job, &table->arena, &j->plan, &bad);
    cr_assert(status == GB_OK, "the job is planned: status %d", (int)status);
}

gb_volume pub_water_of_bag(pub_table *table, const gb_mix *mix) {
    pub_job job;
    pub_volume_job(&job, mix, pub_recipe(mix).yield);
    job.job.sand.moisture.of_one = 0;
    pub_plan(table, &job);
    return job.plan.water;
}

gb_weather pub_weather(double air_f, double low_f, double wind_mph) {
    return (gb_weather){.air = {pub_si(GB_TEMP, "F", air_f)},
                        .low = {pub_si(GB_TEMP, "F", low_f)},
                        .stone = {NAN},
                        .block = {NAN},
                        .concrete = {NAN},
                        .humidity = {NAN},
                        .wind = {pub_si(GB_SPEED, "mph", wind_mph)}};
}
