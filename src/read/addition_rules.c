#include "read/table.h"

#include "gaugebox/count.h"
#include "read/diag.h"
#include "words/mark.h"

#include <math.h>

static const double MOST_PIGMENT = 0.10;  /* of the binder, ASTM C979 */
static const double MOST_CHLORIDE = 0.02; /* of the cement in plain concrete, ACI 306R */

static void report(gb_mix_table *t, const gb_mix *mix, const gb_addition *a,
                   const char *format) {
    gb_report(t->diags, mix->file, a->at.line, format, a->material->name);
}

/* How much of it: exactly one of the three. */
static void check_amount(gb_mix_table *t, const gb_mix *mix, const gb_addition *a) {
    bool share = !isnan(a->share.of_one);
    bool dose = !isnan(a->dose.m3);
    bool replaces = !isnan(a->replaces.of_one);
    if (share + dose + replaces != 1)
        report(t, mix, a,
               NF_("addition '%s' needs one amount: a 'share' of the binder, a 'dose' by "
                   "its label, or the share of the water that it 'replaces'"));
    if (dose != !isnan(a->dose_for.kg))
        report(t, mix, a,
               NF_("addition '%s': 'dose' and 'dose_for' go together, such as dose = "
                   "\"4 fl oz\"; dose_for = \"94 lb\""));
    if (share && mix->part_count == 0)
        report(t, mix, a,
               NF_("addition '%s': how much cement is in a bagged blend is not known; "
                   "state a 'dose' for so much of the blend"));
}

static bool is_colour(const gb_material *m) {
    return m->kind == GB_PIGMENT || m->kind == GB_CARBON_BLACK;
}

static void check_colour(gb_mix_table *t, const gb_mix *mix, const gb_addition *a) {
    if (!is_colour(a->material))
        return;
    if (isnan(a->share.of_one))
        report(t, mix, a,
               NF_("pigment '%s' is weighed; state its 'share' of the mass of cement and "
                   "lime"));
    else if (gb_over(a->share.of_one / MOST_PIGMENT, 1.0))
        report(t, mix, a,
               NF_("pigment '%s' is over 10 %% of the binder; ASTM C979 allows at most "
                   "that, more weakens and fades"));
}

/* Mortar, grout and slurry touch metal, stone and block; a plain slab may hold some. */
static void check_chloride(gb_mix_table *t, const gb_mix *mix, const gb_addition *a) {
    if (a->material->kind != GB_CHLORIDE)
        return;
    if ((mix->uses & ~(1u << GB_SLAB | 1u << GB_VOLUME_LAYER)) != 0)
        report(
            t, mix, a,
            NF_("'%s' is not put into mortar, grout or slurry: TMS 602 allows no "
                "admixture with more than 0.2 %% of chloride; ASTM C270 sets at most 2 "
                "%% of portland cement, 1 %% of masonry cement, where a project allows "
                "it at all; keep the work warm instead"));
    else if (isnan(a->share.of_one) || gb_over(a->share.of_one / MOST_CHLORIDE, 1.0))
        report(t, mix, a,
               NF_("'%s' in plain concrete: state a 'share' of at most 2 %% of the "
                   "cement, and none near steel"));
}

void gb_check_additions(gb_mix_table *t, const gb_mix *mix) {
    if (mix->addition_count > GB_MOST_ADDITIONS)
        gb_report(t->diags, mix->file, mix->at.line,
                  "mix '%s' has %zu additions; at most %d are measured", mix->name,
                  mix->addition_count, GB_MOST_ADDITIONS);
    double replaced = 0;
    for (size_t i = 0; i < mix->addition_count; i++) {
        const gb_addition *a = &mix->additions[i];
        if (a->material == NULL)
            continue;
        if (!gb_is_addition(a->material->kind))
            report(t, mix, a,
                   NF_("'%s' is a part of mixes and no addition; name it under 'parts'"));
        check_amount(t, mix, a);
        check_colour(t, mix, a);
        check_chloride(t, mix, a);
        replaced += isnan(a->replaces.of_one) ? 0 : a->replaces.of_one;
    }
    if (gb_over(replaced, 1.0))
        gb_report(t->diags, mix->file, mix->at.line,
                  "the additions of '%s' replace more than all of its water; check what "
                  "each 'replaces'",
                  mix->name);
}
