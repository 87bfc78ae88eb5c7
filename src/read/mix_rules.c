#include "read/table.h"

#include "read/concrete_rules.h"
#include "read/diag.h"
#include "read/nearest.h"
#include "read/schemas.h"
#include "words/mark.h"

#include <math.h>
#include <string.h>

static const gb_material *find_material(gb_mix_table *t, const gb_mix *mix,
                                        const char *name, int line) {
    const gb_material *material = gb_material_find(t, name);
    if (material != NULL)
        return material;
    gb_nearest nearest;
    gb_nearest_init(&nearest, name);
    for (size_t k = 0; k < t->material_count; k++)
        if (t->materials[k].name != NULL)
            gb_nearest_offer(&nearest, t->materials[k].name);
    if (nearest.best != NULL)
        gb_report(t->diags, mix->file, line,
                  "material '%s' is not in materials.cfg; did you mean %s; add it there, "
                  "or use one that is",
                  name, nearest.best);
    else
        gb_report(t->diags, mix->file, line,
                  "material '%s' is not in materials.cfg; add it there, or use one that "
                  "is",
                  name);
    return NULL;
}

/* The lists are ours until the table is handed out. */
static void link_materials(gb_mix_table *t, const gb_mix *mix) {
    for (size_t i = 0; i < mix->part_count; i++) {
        gb_part *part = (gb_part *)&mix->parts[i];
        /* Parts of a concrete are linked already, to stone of its own. */
        if (part->material_name != NULL && !gb_is_proportioned(mix))
            part->material = find_material(t, mix, part->material_name, part->at.line);
    }
    for (size_t i = 0; i < mix->addition_count; i++) {
        gb_addition *a = (gb_addition *)&mix->additions[i];
        if (a->material_name != NULL)
            a->material = find_material(t, mix, a->material_name, a->at.line);
    }
}

static void check_kinds(gb_mix_table *t, const gb_mix *mix) {
    for (size_t i = 0; i < mix->part_count; i++) {
        const gb_material *m = mix->parts[i].material;
        if (m != NULL && gb_is_addition(m->kind))
            gb_report(t->diags, mix->file, mix->parts[i].at.line,
                      "'%s' is no part of a mix but an addition; name it under "
                      "'additions'",
                      m->name);
        if (m != NULL && m->kind == GB_READY_MIXED)
            gb_report(t->diags, mix->file, mix->parts[i].at.line,
                      "'%s' is concrete from a plant and no part of a mix; take it out",
                      m->name);
        if (m != NULL && m->kind == GB_COARSE && mix->water.basis == GB_WATER_DEMAND)
            gb_report(t->diags, mix->file, mix->at.line,
                      "mix '%s' holds stone, and the water demand is one of mortars; "
                      "state its water by = \"binder\"",
                      mix->name);
    }
}

static void check_parts(gb_mix_table *t, const gb_mix *mix) {
    bool label = mix->label.at.line != 0;
    if (label && mix->claims != GB_NO_CLAIM)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' is a bagged blend, and a claim is checked by proportions, "
                  "which its bag does not tell; take 'claims' out",
                  mix->name);
    if (label && mix->part_count > 0)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' has both parts and a label; a site mix has 'parts', a bagged "
                  "blend has 'label'",
                  mix->name);
    if (!label && mix->part_count == 0)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' has no parts and no label; a site mix has 'parts', a bagged "
                  "blend has 'label'",
                  mix->name);
    if (mix->part_count > GB_MOST_PARTS)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' has %zu parts; at most %d are gauged", mix->name,
                  mix->part_count, GB_MOST_PARTS);
    const gb_material *first = mix->part_count > 0 ? mix->parts[0].material : NULL;
    if (first != NULL && isnan(first->pack.kg))
        gb_report(t->diags, mix->file, mix->parts[0].at.line,
                  "the first part of a mix is its binder, and '%s' comes in no bag; put "
                  "the cement or lime first",
                  first->name);
    check_kinds(t, mix);
}

/* True when the three figures of the basis in use are stated, and none of the other. */
static bool water_is_stated(const gb_water *w) {
    bool label = w->basis == GB_WATER_LABEL;
    const double shares[] = {w->least.of_one, w->usual.of_one, w->most.of_one};
    const double volumes[] = {w->bag_least.m3, w->bag_usual.m3, w->bag_most.m3};
    for (int i = 0; i < 3; i++)
        if (isnan(shares[i]) != label || isnan(volumes[i]) == label)
            return false;
    return true;
}

static void check_water(gb_mix_table *t, const gb_mix *mix) {
    const gb_water *w = &mix->water;
    bool label = w->basis == GB_WATER_LABEL;
    if (!water_is_stated(w)) {
        gb_report(
            t->diags, mix->file, mix->at.line,
            "the water of '%s' must state all three of %s, and no others", mix->name,
            label ? "bag_least, bag_usual, bag_never_past" : "least, usual, never_past");
        return;
    }
    bool rises =
        label ? w->bag_least.m3 <= w->bag_usual.m3 && w->bag_usual.m3 <= w->bag_most.m3
              : w->least.of_one <= w->usual.of_one && w->usual.of_one <= w->most.of_one;
    if (!rises)
        gb_report(t->diags, mix->file, mix->at.line,
                  "the water of '%s' runs backwards; least must not be over usual, nor "
                  "usual over never past",
                  mix->name);
    bool both = mix->label.at.line != 0 && mix->part_count > 0;
    if (both || label == (mix->label.at.line != 0))
        return;
    gb_report(t->diags, mix->file, mix->at.line,
              label ? NF_("the water of '%s' is counted by label; a site mix counts by "
                          "demand or binder, a bagged blend by label")
                    : NF_("the water of '%s' is counted by demand or binder; a site mix "
                          "counts by demand or binder, a bagged blend by label"),
              mix->name);
}

static void check_yield(gb_mix_table *t, const gb_mix *mix) {
    gb_recipe recipe;
    gb_status status = gb_make_recipe(mix, NULL, false, (gb_mass){GB_NONE}, &recipe);
    if (status == GB_IMPOSSIBLE)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mass and volume of '%s' do not fit: fresh mixes weigh 1200 to 2700 "
                  "kg/m3 (75 to 169 lb/ft3); check the bag, the yield and the water",
                  mix->name);
    else if (status != GB_OK)
        gb_report(t->diags, mix->file, mix->at.line,
                  "no yield can be computed for '%s'; check its parts and its water",
                  mix->name);
}

static void check_slurry(gb_mix_table *t, const gb_mix *mix) {
    if (mix->uses & (1u << GB_SLURRY) && mix->label.at.line != 0)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' is a bagged blend, and a slurry is mixed by weight in pots; "
                  "give it parts, or take slurry out of its uses",
                  mix->name);
    if (mix->uses & (1u << GB_SLURRY) && isnan(mix->open.s))
        gb_report(t->diags, mix->file, mix->at.line,
                  "slurry '%s' has no 'open'; add how long it may lie open on the stone",
                  mix->name);
}

/* ---- concrete that is proportioned ------------------------------------------------- */

static bool states(const gb_mix *mix, const char *key) {
    size_t row =
        (size_t)(gb_find_key(&GB_MIX_ENTRY_SCHEMA, key) - GB_MIX_ENTRY_SCHEMA.keys);
    return mix->at.stated >> row & 1;
}

/* What follows from a concrete is not stated beside it. */
static void refuse_beside(gb_mix_table *t, const gb_mix *mix) {
    static const char *const KEYS[] = {"parts", "label", "water", "air", "largest"};
    for (size_t i = 0; i < sizeof KEYS / sizeof KEYS[0]; i++)
        if (states(mix, KEYS[i]))
            gb_report(
                t->diags, mix->file, mix->at.line,
                states(mix, "concrete")
                    ? NF_("mix '%s' has a concrete and '%s' too, which follows from "
                          "the concrete; take one out")
                    : NF_("mix '%s' takes a concrete from the mix that it is like, "
                          "and states '%s' too, which follows from the concrete; "
                          "take that out, or be like another mix"),
                mix->name, KEYS[i]);
}

static const gb_material *link_kind(gb_mix_table *t, const gb_mix *mix, const char *name,
                                    gb_material_kind kind, const char *wanted,
                                    const char *usual) {
    const gb_material *m = find_material(t, mix, name, mix->concrete.at.line);
    if (m != NULL && m->kind != kind) {
        gb_report(t->diags, mix->file, mix->concrete.at.line,
                  "'%s' is not of the kind %s; name a material that is, such as %s",
                  m->name, wanted, usual);
        return NULL;
    }
    if (m != NULL && m->masonry != GB_NOT_MASONRY) {
        gb_report(t->diags, mix->file, mix->concrete.at.line,
                  "'%s' is for masonry, and the table of strength is one of portland "
                  "cement; name another, such as %s",
                  m->name, usual);
        return NULL;
    }
    return m;
}

static void link_concrete(gb_mix_table *t, const gb_mix *mix, gb_concrete *c) {
    c->cement_material =
        link_kind(t, mix, c->cement_name, GB_CEMENT, "cement", "portland-cement");
    c->sand_material = link_kind(t, mix, c->sand_name, GB_SAND, "sand", "concrete-sand");
    c->stone_material =
        link_kind(t, mix, c->stone_name, GB_COARSE, "coarse", "crushed-stone");
}

bool gb_take_concrete(gb_mix_table *t, gb_mix *mix, const gb_reader *reader) {
    size_t faults = gb_diags_count(t->diags);
    link_concrete(t, mix, &mix->concrete);
    if (gb_diags_count(t->diags) > faults)
        return false;
    gb_check_concrete(reader, &mix->concrete);
    gb_part *parts = gb_arena_take(t->arena, 3, sizeof *parts);
    gb_material *stone = gb_arena_take(t->arena, 1, sizeof *stone);
    t->diags->no_memory = t->diags->no_memory || parts == NULL || stone == NULL;
    if (parts == NULL || stone == NULL || gb_diags_count(t->diags) > faults)
        return false;
    /* The stone of this concrete: it fills a bucket as its own rodded mass has it. */
    *stone = *mix->concrete.stone_material;
    stone->bulk = gb_loose_stone(&mix->concrete);
    stone->loose_by = &mix->concrete;
    mix->concrete.stone_material = stone;
    if (gb_mix_of_concrete(mix, parts) == GB_OK)
        return true;
    gb_report(t->diags, reader->file, mix->concrete.at.line,
              "no next batch follows from the trial: it would leave no room for sand, or "
              "weigh over 2700 kg/m3; check its masses and the specific gravities");
    return false;
}

void gb_check_mix(gb_mix_table *t, gb_mix *mix) {
    size_t faults = gb_diags_count(t->diags);
    if (gb_is_proportioned(mix)) {
        refuse_beside(t, mix);
        /* What is wrong with a concrete is told where it is stated, once. */
        if (!states(mix, "concrete") && gb_diags_any(t->diags))
            return;
        gb_reader reader = gb_table_reader(t, mix->file);
        if (!gb_take_concrete(t, mix, &reader) || gb_diags_count(t->diags) > faults)
            return;
    } else if (!states(mix, "water") && mix->like.text == NULL) {
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' has no water; add: water = { ... }, or a concrete that it "
                  "follows from",
                  mix->name);
        return;
    }
    link_materials(t, mix);
    check_slurry(t, mix);
    check_parts(t, mix);
    gb_check_additions(t, mix);
    check_water(t, mix);
    if (gb_diags_count(t->diags) == faults)
        check_yield(t, mix);
}
