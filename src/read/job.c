#include "gaugebox/count.h"
#include "read/crew_rules.h"
#include "read/diag.h"
#include "read/layer_rules.h"
#include "read/loose_rules.h"
#include "read/nearest.h"
#include "read/reader.h"
#include "read/sand_rules.h"
#include "read/schemas.h"
#include "read/shape_rules.h"
#include "read/steps_rules.h"
#include "read/weather_rules.h"
#include "words/words.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

typedef struct job_reader {
    gb_reader base;
    gb_mix_table *table;
    gb_job *job;
    const gb_mix **mixes; /* room for one per layer */
    size_t mix_count;
} job_reader;

/* ---- pieces and layers ----------------------------------------------------------- */

/* A length as the job's own units print it. */
static const char *shown_length(job_reader *r, double m) {
    gb_text text;
    gb_text_init(&text, r->base.arena);
    gb_print_length(&text, (gb_length){m}, r->job->units);
    return gb_text_get(&text);
}

static const char *shown_mass(job_reader *r, gb_mass mass) {
    bool us = r->job->units == GB_US;
    gb_text text;
    gb_text_init(&text, r->base.arena);
    gb_text_add_fixed(&text, gb_to_unit(gb_find_unit(GB_MASS, us ? "lb" : "kg"), mass.kg),
                      0);
    gb_text_add(&text, us ? " lb" : " kg");
    return gb_text_get(&text);
}

/* More than half of a tread in the air is no overhang. */
static void check_overhang(job_reader *r, const gb_piece *p, double over, double of,
                           const char *format) {
    if (over > of / 2)
        gb_report(r->base.diags, r->base.file, p->at.line, format, p->name,
                  shown_length(r, over), shown_length(r, of));
}

static void check_bedded(job_reader *r, const gb_piece *p) {
    gb_plan_size size;
    gb_length none = {0};
    if (gb_measure_shape(&p->shape, none, none, &size) != GB_OK)
        return; /* told of the shape itself */
    size_t faults = gb_diags_count(r->base.diags);
    check_overhang(r, p, p->overhang_front.m, size.blank_width.m,
                   NF_("piece '%s' overhangs %s of its %s front to back; over half is no "
                       "overhang, check it and the size"));
    check_overhang(r, p, 2 * p->overhang_side.m, size.blank_length.m,
                   NF_("piece '%s' overhangs %s of its %s along the nosing; over half is "
                       "no overhang, check it and the size"));
    bool round = p->shape.kind == GB_CIRCLE || p->shape.kind == GB_CURVED;
    if (round && p->overhang_side.m > 0)
        gb_report(r->base.diags, r->base.file, p->at.line,
                  "piece '%s' is round and has no ends to overhang; take 'overhang_side' "
                  "out",
                  p->name);
    else if (gb_diags_count(r->base.diags) == faults && gb_piece_size(p, &size) != GB_OK)
        gb_report(r->base.diags, r->base.file, p->at.line,
                  "piece '%s' overhangs so far that nothing is left to bed; check "
                  "overhang and size",
                  p->name);
}

static bool is_laid(const gb_piece *p) {
    for (size_t i = 0; i < p->layer_count; i++) {
        const gb_layer *l = &p->layers[i];
        bool own_sizes = l->kind == GB_SLAB && l->form.kind > GB_WEDGE;
        if ((l->kind == GB_BED || l->kind == GB_SLURRY || l->kind == GB_SLAB) &&
            !own_sizes)
            return true;
    }
    return false;
}

static void check_stone(job_reader *r, gb_piece *p) {
    gb_piece_stone *stone = &p->stone;
    if (stone->at.line == 0 || stone->at.faulty)
        return;
    stone->stone = gb_stone_find(r->table, stone->of, r->base.file);
    r->job->stones = gb_stones_digest(r->table);
    if (!gb_has_shape(&p->shape))
        gb_report(r->base.diags, r->base.file, stone->at.line,
                  "the stone of '%s' has no size; give the piece a 'size' or a 'shape'",
                  p->name);
}

/* A plain size is the shape of a rectangle. */
static void take_size(job_reader *r, gb_piece *p) {
    p->shape.front = p->size[0];
    p->shape.width = p->size[1];
    if (r->base.places == NULL)
        return;
    gb_places_copy(r->base.places, &p->size[0], &p->shape.front, sizeof(gb_length));
    gb_places_copy(r->base.places, &p->size[1], &p->shape.width, sizeof(gb_length));
}

/* The piece is the reader's own until the job is handed out. */
static void check_piece(job_reader *r, gb_piece *p) {
    if (p->run.at.line != 0)
        gb_take_run(&r->base, r->job->units, p);
    else if (p->shape.at.line == 0)
        take_size(r, p);
    bool sized = gb_has_shape(&p->shape);
    if (p->shape.at.line != 0 && !isnan(p->size[0].m))
        gb_report(r->base.diags, r->base.file, p->at.line,
                  "piece '%s' has both a size and a shape; a rectangle has 'size', "
                  "anything else 'shape'",
                  p->name);
    gb_check_shape(r->base.diags, r->base.file, p->name, &p->shape);
    if (is_laid(p) && !sized && p->run.at.line == 0)
        gb_report(r->base.diags, r->base.file, p->at.line,
                  "piece '%s' has no 'size', and a bed, slurry or slab needs one; add: "
                  "size = \"5 ft x 14 in\"",
                  p->name);
    check_stone(r, p);
    for (size_t i = 0; i < p->loose_count; i++)
        gb_check_loose(r->table, r->base.diags, r->base.file, sized, &p->loose[i]);
    if (p->layer_count == 0 && p->loose_count == 0 && p->stone.at.line == 0 &&
        !p->at.inner)
        gb_report(r->base.diags, r->base.file, p->at.line,
                  "piece '%s' takes nothing; add its 'layers', what is 'loose', or its "
                  "'stone'",
                  p->name);
    if (sized && !p->shape.at.faulty)
        check_bedded(r, p);
}

/* Which keys a kind of layer needs, and which mean nothing in it. */
typedef enum need { NO, MAY, MUST } need;
static const struct {
    need depth, joint, volume;
} NEEDS[] = {
    [GB_BED] = {MUST, NO, NO},          [GB_SLURRY] = {MAY, NO, NO},
    [GB_JOINT] = {MUST, MAY, NO},       [GB_POINTING] = {MUST, MAY, NO},
    [GB_SLAB] = {MUST, NO, NO},         [GB_CORE] = {NO, NO, MAY},
    [GB_PARGE] = {MUST, NO, NO},        [GB_BLOCK] = {NO, NO, NO},
    [GB_VOLUME_LAYER] = {NO, NO, MUST},
};
_Static_assert(sizeof NEEDS / sizeof NEEDS[0] == GB_LAYER_KINDS, "a row for every kind");

static void check_key(job_reader *r, const gb_layer *layer, const char *key, bool stated,
                      need needed) {
    const char *kind = GB_LAYER_WORDS[layer->kind];
    if (needed == MUST && !stated) {
        gb_text what;
        gb_text_init(&what, r->base.arena);
        gb_describe_key(gb_find_key(&GB_LAYER_SCHEMA, key), &what);
        gb_report(r->base.diags, r->base.file, layer->at.line,
                  "a %s needs '%s'; add: %s = %s", kind, key, key, gb_text_get(&what));
    }
    if (needed == NO && stated)
        gb_report(r->base.diags, r->base.file, layer->at.line,
                  "'%s' says nothing about a %s; take it out, or change the layer's kind",
                  key, kind);
}

/* Levels and forms have depths of their own; gb_check_layer says when it is both. */
static need depth_need(const gb_layer *layer) {
    bool other = layer->levels.at.line != 0 ||
                 (layer->form.at.line != 0 &&
                  (layer->form.at.faulty || layer->form.kind != GB_PRISM));
    bool may = other && (layer->kind == GB_BED || layer->kind == GB_SLAB);
    return may ? MAY : NEEDS[layer->kind].depth;
}

static void check_layer(job_reader *r, const gb_piece *piece, const gb_layer *layer) {
    gb_layer_kind kind = layer->kind;
    check_key(r, layer, "depth", layer->depth_count > 0, depth_need(layer));
    check_key(r, layer, "joint_length", !isnan(layer->joint_length.m), NEEDS[kind].joint);
    check_key(r, layer, "joint_width", !isnan(layer->joint_width.m), NEEDS[kind].joint);
    check_key(r, layer, "volume", !isnan(layer->volume.m3), NEEDS[kind].volume);
    gb_check_layer(&r->base, r->job, piece, layer);
}

static bool known_mix(job_reader *r, const gb_mix *mix) {
    for (size_t i = 0; i < r->mix_count; i++)
        if (r->mixes[i] == mix)
            return true;
    return false;
}

static const gb_mix *job_mix(const job_reader *r, const char *id) {
    for (size_t i = 0; i < r->mix_count; i++)
        if (strcmp(r->mixes[i]->id, id) == 0)
            return r->mixes[i];
    return NULL;
}

static void check_use(job_reader *r, const gb_layer *layer, const gb_mix *mix) {
    if (mix->uses & (1u << layer->kind))
        return;
    gb_text uses;
    gb_text_init(&uses, r->base.arena);
    for (unsigned k = 0; k < GB_LAYER_KINDS; k++) {
        if (!(mix->uses & (1u << k)))
            continue;
        gb_text_add(&uses, uses.length > 0 ? ", " : "");
        gb_text_add(&uses, GB_LAYER_WORDS[k]);
    }
    gb_report(r->base.diags, r->base.file, layer->mix.line,
              "mix '%s' is not for a %s but for: %s; `gaugebox mix` lists the others",
              mix->id, GB_LAYER_WORDS[layer->kind], gb_text_get(&uses));
}

static void check_exposure(job_reader *r, const gb_layer *layer, const gb_mix *mix) {
    if (layer->exposures == 0 || gb_is_concrete(mix))
        return;
    gb_report(
        r->base.diags, r->base.file, layer->at.line,
        "'exposure' is for concrete, which holds stone or fills a slab, and '%s' is "
        "none; take it out of the %s, or name another mix",
        mix->id, GB_LAYER_WORDS[layer->kind]);
}

static void find_mix(job_reader *r, const gb_layer *layer) {
    /* 10,000 pieces name few mixes: those found before need no second search. */
    const gb_mix *mix = job_mix(r, layer->mix.text);
    if (mix == NULL)
        mix = gb_mix_find(r->table, layer->mix, r->base.file);
    if (mix == NULL)
        return;
    if (!layer->at.faulty) {
        check_use(r, layer, mix);
        check_exposure(r, layer, mix);
    }
    if (!known_mix(r, mix))
        r->mixes[r->mix_count++] = mix;
}

static int by_name(const void *a, const void *b) {
    const gb_piece *const *x = a;
    const gb_piece *const *y = b;
    int order = strcmp((*x)->name, (*y)->name);
    return order != 0 ? order : (*x)->at.line - (*y)->at.line;
}

/* Sorting keeps 10,000 pieces from being compared with each other one by one. */
static void check_names(job_reader *r) {
    const gb_job *job = r->job;
    const gb_piece **sorted =
        gb_arena_take(r->base.arena, job->piece_count + 1, sizeof(const gb_piece *));
    if (sorted == NULL) {
        r->base.diags->no_memory = true;
        return;
    }
    for (size_t i = 0; i < job->piece_count; i++)
        sorted[i] = &job->pieces[i];
    qsort(sorted, job->piece_count, sizeof(const gb_piece *), by_name);
    for (size_t i = 1; i < job->piece_count; i++)
        if (strcmp(sorted[i]->name, sorted[i - 1]->name) == 0)
            gb_report(r->base.diags, r->base.file, sorted[i]->at.line,
                      "piece '%s' is here twice, first at line %d; rename one, or raise "
                      "the first one's count",
                      sorted[i]->name, sorted[i - 1]->at.line);
}

static bool all_named(const gb_job *job) {
    for (size_t i = 0; i < job->piece_count; i++)
        if (job->pieces[i].name == NULL)
            return false;
    return true;
}

static void check_pieces(job_reader *r) {
    gb_job *job = r->job;
    size_t layers = 0;
    for (size_t i = 0; i < job->piece_count; i++)
        layers += job->pieces[i].layer_count;
    r->mixes = gb_arena_take(r->base.arena, layers + 1, sizeof(const gb_mix *));
    if (r->mixes == NULL) {
        r->base.diags->no_memory = true;
        return;
    }
    if (all_named(job))
        check_names(r);
    for (size_t i = 0; i < job->piece_count; i++) {
        const gb_piece *p = &job->pieces[i];
        if (!p->at.faulty && !p->shape.at.faulty)
            check_piece(r, (gb_piece *)p);
        for (size_t k = 0; k < p->layer_count; k++) {
            if (!p->layers[k].at.faulty)
                check_layer(r, p, &p->layers[k]);
            if (p->layers[k].mix.text != NULL)
                find_mix(r, &p->layers[k]);
        }
    }
    job->mixes = r->mixes;
    job->mix_count = r->mix_count;
}

/* ---- the rest of the job --------------------------------------------------------- */

static bool is_material(const job_reader *r, const char *name) {
    return gb_material_find(r->table, name) != NULL;
}

/* Entry i of a list names what an earlier one named. The names stand `stride` bytes from
   one another, beginning with that of the first entry. */
static void check_twice(job_reader *r, const char *format, const gb_ref *first,
                        size_t stride, size_t i) {
    const char *bytes = (const char *)first;
    const gb_ref *this = (const gb_ref *)(const void *)(bytes + i * stride);
    for (size_t k = 0; k < i; k++) {
        const gb_ref *other = (const gb_ref *)(const void *)(bytes + k * stride);
        if (other->text == NULL || strcmp(other->text, this->text) != 0)
            continue;
        gb_report(r->base.diags, r->base.file, this->line, format, this->text,
                  other->line);
        return;
    }
}

static void check_waste(job_reader *r) {
    const gb_job *job = r->job;
    for (size_t i = 0; i < job->waste_count; i++) {
        const gb_ref *of = &job->wastes[i].of;
        if (of->text == NULL)
            continue;
        if (job_mix(r, of->text) == NULL && !is_material(r, of->text))
            gb_report(r->base.diags, r->base.file, of->line,
                      "waste of '%s': no piece uses such a mix, and it is no material; "
                      "name a mix of this job or a material",
                      of->text);
        check_twice(r, NF_("waste of '%s' is stated twice, first at line %d; keep one"),
                    &job->wastes[0].of, sizeof job->wastes[0], i);
    }
}

/* What is wrong with the water that the label of %s states; NULL when nothing is. */
static const char *label_water_fault(const gb_own_label *l, const gb_mix *mix) {
    int stated = !isnan(l->least.m3) + !isnan(l->usual.m3) + !isnan(l->most.m3);
    bool blend = mix->part_count == 0;
    if (stated > 0 && !blend)
        return NF_(
            "label of '%s': its water is computed, and only a bagged blend's label "
            "states one; take least, usual and never_past out");
    if (stated != 0 && stated != 3)
        return NF_("label of '%s': it states some of the water; state all of least, "
                   "usual and never_past, or none");
    if (l->least.m3 > l->usual.m3)
        return NF_("label of '%s': its least water is over the usual one; check which is "
                   "which");
    if (l->usual.m3 > l->most.m3)
        return NF_("label of '%s': its usual water is over never_past; check which is "
                   "which");
    if (blend && stated == 0 && !(fabs(l->label.bag.kg / mix->label.bag.kg - 1) < 0.01))
        return NF_("label of '%s': the bag differs from the mix table's, so its water "
                   "does too; add least, usual and never_past from the bag");
    return NULL;
}

static void check_label_yield(job_reader *r, const gb_own_label *l, const gb_mix *mix) {
    gb_mix copy = gb_with_own_water(mix, l);
    gb_recipe recipe;
    gb_mass any = {GB_NONE};
    if (gb_make_recipe(&copy, &l->label, l->measured, any, &recipe) == GB_OK)
        return;
    gb_text dry;
    gb_text_init(&dry, r->base.arena);
    gb_text_add_fixed(&dry, l->label.bag.kg / l->label.yield.m3, 0);
    gb_report(
        r->base.diags, r->base.file, l->label.at.line,
        "label of '%s': the bag makes %s kg of dry mix a m3, and a fresh mix weighs "
        "1200 to 2700 kg/m3 (75 to 169 lb/ft3); check the bag and the yield",
        mix->id, gb_text_get(&dry));
}

static void check_labels(job_reader *r) {
    const gb_job *job = r->job;
    for (size_t i = 0; i < job->label_count; i++) {
        const gb_own_label *l = &job->labels[i];
        if (l->mix.text == NULL || l->label.at.faulty)
            continue;
        const gb_mix *mix = job_mix(r, l->mix.text);
        if (mix == NULL) {
            gb_report(r->base.diags, r->base.file, l->mix.line,
                      "label of '%s': no piece uses such a mix; check its name",
                      l->mix.text);
            continue;
        }
        check_twice(r,
                    NF_("the label of '%s' is stated twice, first at line %d; keep one"),
                    &job->labels[0].mix, sizeof job->labels[0], i);
        const char *water = label_water_fault(l, mix);
        if (water != NULL)
            gb_report(r->base.diags, r->base.file, l->label.at.line, water, mix->id);
        else
            check_label_yield(r, l, mix);
    }
}

static void check_packs(job_reader *r) {
    for (size_t i = 0; i < r->job->pack_count; i++) {
        const gb_ref *material = &r->job->packs[i].material;
        if (material->text == NULL)
            continue;
        if (!is_material(r, material->text))
            gb_report(r->base.diags, r->base.file, material->line,
                      "'%s' is no material of the mix table; see materials.cfg there",
                      material->text);
        check_twice(r,
                    NF_("the pack of '%s' is stated twice, first at line %d; keep one"),
                    &r->job->packs[0].material, sizeof r->job->packs[0], i);
    }
}

/* A machine lifts stone, and more than its own gear. */
static void check_lift(job_reader *r) {
    const gb_job *job = r->job;
    const gb_lift *l = &job->lift;
    bool stone = false;
    bool unread = false; /* a piece whose stone may be in what was not understood */
    for (size_t i = 0; i < job->piece_count; i++) {
        stone = stone || job->pieces[i].stone.at.line != 0;
        unread = unread || job->pieces[i].at.faulty || job->pieces[i].at.inner;
    }
    if (l->at.line == 0 || l->at.faulty)
        return;
    if (!stone && !unread)
        gb_report(
            r->base.diags, r->base.file, l->at.line,
            "'lift' has no stone to lift; give a piece its stone = { ... }, or take "
            "'lift' out");
    if (!gb_over(l->capacity.kg, l->attachment.kg))
        gb_report(r->base.diags, r->base.file, l->at.line,
                  "the capacity of %s is not over the %s of the gear below the hook, so "
                  "nothing is left to lift; check both",
                  shown_mass(r, l->capacity), shown_mass(r, l->attachment));
}

bool gb_read_job(const char *file, gb_mix_table *table, gb_arena *arena, gb_diags *diags,
                 gb_job *job) {
    gb_job_file read = {0};
    size_t before = gb_diags_count(diags);
    gb_places *places = gb_mix_table_places(table);
    job_reader r = {
        .base = {.file = file, .arena = arena, .diags = diags, .places = places},
        .table = table,
        .job = &read.job};
    if (!gb_read_file(&r.base, &GB_JOB_SCHEMA, &read))
        return false;
    read.job.file = file;
    read.job.digest = r.base.digest;
    gb_mix_table_take_own(table, &read.job);
    check_pieces(&r);
    gb_mix_table_take_own(table, NULL);
    check_waste(&r);
    check_labels(&r);
    check_packs(&r);
    gb_check_sand(&r.base, &read.job);
    gb_check_gauge(&r.base, &read.job);
    gb_check_pail(&r.base, &read.job);
    check_lift(&r);
    gb_check_crew(&r.base, &read.job);
    gb_check_weather(&r.base, &read.job);
    if (gb_diags_count(diags) > before || diags->no_memory)
        return false;
    *job = read.job;
    if (places != NULL)
        gb_places_move(places, &read.job, job, sizeof *job);
    return true;
}

bool gb_report_plan(gb_status status, const gb_job *job, const gb_mix *bad_mix,
                    gb_diags *diags) {
    const char *id = bad_mix != NULL ? bad_mix->id : gb_tr("the job");
    switch (status) {
    case GB_OK:
        return true;
    case GB_NO_MEMORY:
        diags->no_memory = true;
        return false;
    case GB_OVERFLOW:
        gb_report(diags, job->file, 0,
                  "%s needs more than 100000 batches, or sums beyond what is kept; check "
                  "counts and sizes, and the mixer",
                  id);
        return false;
    case GB_IMPOSSIBLE:
    case GB_NOT_POSITIVE:
    case GB_FROZEN:
    case GB_TOO_WET:
    case GB_NO_PACE:
        gb_report(diags, job->file, 0,
                  "%s cannot be planned: a size, a yield or a pace is not above zero; "
                  "check its figures",
                  id);
        return false;
    }
    return false;
}
