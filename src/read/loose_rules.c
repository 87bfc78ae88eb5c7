#include "read/loose_rules.h"

#include "read/diag.h"
#include "words/mark.h"

#include <math.h>
#include <string.h>

typedef enum need { NO, MAY, MUST } need;

/* Which keys mean something in a layer of each kind; those that all may have are not
   among them. */
static const struct {
    const char *key;
    need of[GB_LOOSE_KINDS]; /* base, shim, backfill, excavation, cloth, rod, sealant */
} NEEDS[] = {
    {"material", {MUST, MUST, MUST, NO, NO, NO, NO}},
    {"area", {MAY, MAY, MAY, MAY, MAY, NO, NO}},
    {"beyond", {MAY, MAY, MAY, MAY, MAY, NO, NO}},
    {"depth", {MUST, MUST, MAY, MAY, NO, NO, MUST}},
    {"volume", {NO, NO, MAY, MAY, NO, NO, NO}},
    {"compaction", {MAY, MAY, MAY, NO, NO, NO, NO}},
    {"lift", {MAY, NO, NO, NO, NO, NO, NO}},
    {"swell", {NO, NO, NO, MAY, NO, NO, NO}},
    {"turn_up", {NO, NO, NO, NO, MAY, NO, NO}},
    {"lap", {NO, NO, NO, NO, MAY, NO, NO}},
    {"joint_length", {NO, NO, NO, NO, NO, MUST, MUST}},
    {"joint_width", {NO, NO, NO, NO, NO, MAY, MUST}},
    {"extra", {NO, NO, NO, NO, NO, MAY, MAY}},
    {"pack", {NO, NO, NO, NO, NO, NO, MAY}},
};

static bool stated(const gb_loose *l, const char *key) {
    size_t row = (size_t)(gb_find_key(&GB_LOOSE_SCHEMA, key) - GB_LOOSE_SCHEMA.keys);
    return l->at.stated >> row & 1;
}

static void check_keys(gb_diags *diags, const char *file, const gb_loose *l) {
    const char *kind = GB_LOOSE_WORDS[l->kind];
    for (size_t i = 0; i < sizeof NEEDS / sizeof NEEDS[0]; i++) {
        bool there = stated(l, NEEDS[i].key);
        if (NEEDS[i].of[l->kind] == MUST && !there)
            gb_report(diags, file, l->at.line, "a layer of '%s' needs '%s'; add it", kind,
                      NEEDS[i].key);
        if (NEEDS[i].of[l->kind] == NO && there)
            gb_report(diags, file, l->at.line,
                      "'%s' says nothing about a layer of '%s'; take it out, or change "
                      "its kind",
                      NEEDS[i].key, kind);
    }
}

/* One way to tell how much: a volume, or an area (the piece's own or a stated one) and a
   depth. */
static void check_amount(gb_diags *diags, const char *file, bool sized,
                         const gb_loose *l) {
    bool volume = !isnan(l->volume.m3);
    bool joint = l->kind == GB_BACKER_ROD || l->kind == GB_SEALANT;
    if (volume && (!isnan(l->depth.m) || !isnan(l->area.m2) || l->beyond.m > 0))
        gb_report(diags, file, l->at.line,
                  "this layer of '%s' has a volume and more; state the volume alone, or "
                  "area and depth",
                  GB_LOOSE_WORDS[l->kind]);
    bool by_depth = l->kind == GB_BACKFILL || l->kind == GB_EXCAVATION;
    if (by_depth && !volume && isnan(l->depth.m))
        gb_report(diags, file, l->at.line,
                  "this layer of '%s' has neither depth nor volume; add one of them",
                  GB_LOOSE_WORDS[l->kind]);
    if (!joint && !volume && isnan(l->area.m2) && !sized)
        gb_report(diags, file, l->at.line,
                  "this layer of '%s' has no area, and its piece no size; add 'area', or "
                  "give the piece a size",
                  GB_LOOSE_WORDS[l->kind]);
    if (!isnan(l->area.m2) && l->beyond.m > 0)
        gb_report(diags, file, l->at.line,
                  "'beyond' widens the piece's own area, and 'area' is stated; keep one "
                  "of the two");
}

static void find_material(gb_mix_table *table, gb_diags *diags, const char *file,
                          gb_loose *l) {
    const gb_ref *name = &l->material_name;
    if (name->text == NULL)
        return;
    l->material = gb_material_find(table, name->text);
    if (l->material == NULL)
        gb_report(diags, file, name->line,
                  "'%s' is no material of the mix table; see materials.cfg there",
                  name->text);
    else if (l->material->kind != GB_SAND && l->material->kind != GB_COARSE)
        gb_report(diags, file, name->line,
                  "'%s' is neither sand nor stone, and fills no layer by itself; see "
                  "materials.cfg for those that do",
                  name->text);
}

void gb_check_loose(gb_mix_table *table, gb_diags *diags, const char *file, bool sized,
                    gb_loose *loose) {
    if (loose->at.faulty)
        return;
    check_keys(diags, file, loose);
    check_amount(diags, file, sized, loose);
    find_material(table, diags, file, loose);
}
