#include "gaugebox/conform.h"

#include "gaugebox/count.h"
#include "gaugebox/sand.h"
#include "words/mark.h"

#include <string.h>

/* ---- the limits -------------------------------------------------------------------- */

#define C270_M N_("ASTM C270 Type M by proportions, from memory")
#define C270_S N_("ASTM C270 Type S by proportions, from memory")
#define C270_N N_("ASTM C270 Type N by proportions, from memory")
#define C270_O N_("ASTM C270 Type O by proportions, from memory")
#define FINE   N_("ASTM C476 fine grout, from memory")
#define COARSE N_("ASTM C476 coarse grout, from memory")
#define TALY   N_("ASTM C476 coarse grout, as printed by Taly")
#define DES_1  N_("designation (i), class M12 of EN 998-2, as printed by Chudley")
#define DES_2  N_("designation (ii), class M6 of EN 998-2, as printed by Chudley")
#define DES_3  N_("designation (iii), class M4 of EN 998-2, as printed by Chudley")
#define DES_4  N_("designation (iv), class M2 of EN 998-2, as printed by Chudley")

static const char *const CLAIMS[] = {
    [GB_NO_CLAIM] = "",         [GB_C270_M] = C270_M,       [GB_C270_S] = C270_S,
    [GB_C270_N] = C270_N,       [GB_C270_O] = C270_O,       [GB_C476_FINE] = FINE,
    [GB_C476_COARSE] = COARSE,  [GB_DESIGNATION_1] = DES_1, [GB_DESIGNATION_2] = DES_2,
    [GB_DESIGNATION_3] = DES_3, [GB_DESIGNATION_4] = DES_4};
_Static_assert(sizeof CLAIMS / sizeof CLAIMS[0] == GB_CLAIMS, "a source for each claim");

const char *gb_claim_source(gb_claim claim) {
    return CLAIMS[claim];
}

/* Of which cements a mix is made. */
typedef enum cement_form {
    NO_FORM, /* none, or two that no source puts together */
    PORTLAND,
    PORTLAND_ALONE, /* without lime: designations have a column of their own for it */
    MASONRY_N,
    MASONRY_S,
    MASONRY_M,
    N_AND_PORTLAND
} cement_form;

#define LIMIT(of, low, high, from)                                                       \
    { .ratio = (of), .least = (low), .most = (high), .source = (from) }
#define OVER(of, low, high, from)                                                        \
    { .ratio = (of), .least = (low), .most = (high), .over = true, .source = (from) }
#define SAND(from)                 LIMIT(GB_SAND_TO_BINDER, 2.25, 3, from)
#define NO_LIME(from)              LIMIT(GB_LIME_TO_CEMENT, 0, 0, from)
#define NO_STONE(from)             LIMIT(GB_STONE_TO_BINDER, 0, 0, from)
#define WITH_PORTLAND(share, from) LIMIT(GB_PORTLAND_TO_MASONRY, share, share, from)

/* As the sources print them; see conform.h for which was read and which is from memory.
 */
static const struct {
    gb_claim claim;
    cement_form form;
    gb_claim_limit limits[GB_MOST_CLAIM_LIMITS];
} ROWS[] = {
    {GB_C270_M,
     PORTLAND,
     {LIMIT(GB_LIME_TO_CEMENT, 0.25, 0.25, C270_M), SAND(C270_M), NO_STONE(C270_M)}},
    {GB_C270_S,
     PORTLAND,
     {OVER(GB_LIME_TO_CEMENT, 0.25, 0.5, C270_S), SAND(C270_S), NO_STONE(C270_S)}},
    {GB_C270_N,
     PORTLAND,
     {OVER(GB_LIME_TO_CEMENT, 0.5, 1.25, C270_N), SAND(C270_N), NO_STONE(C270_N)}},
    {GB_C270_O,
     PORTLAND,
     {OVER(GB_LIME_TO_CEMENT, 1.25, 2.5, C270_O), SAND(C270_O), NO_STONE(C270_O)}},
    {GB_C270_M, MASONRY_M, {SAND(C270_M), NO_LIME(C270_M), NO_STONE(C270_M)}},
    {GB_C270_S, MASONRY_S, {SAND(C270_S), NO_LIME(C270_S), NO_STONE(C270_S)}},
    {GB_C270_N, MASONRY_N, {SAND(C270_N), NO_LIME(C270_N), NO_STONE(C270_N)}},
    {GB_C270_O, MASONRY_N, {SAND(C270_O), NO_LIME(C270_O), NO_STONE(C270_O)}},
    {GB_C270_M,
     N_AND_PORTLAND,
     {WITH_PORTLAND(1, C270_M), SAND(C270_M), NO_LIME(C270_M), NO_STONE(C270_M)}},
    {GB_C270_S,
     N_AND_PORTLAND,
     {WITH_PORTLAND(0.5, C270_S), SAND(C270_S), NO_LIME(C270_S), NO_STONE(C270_S)}},
    {GB_C476_FINE,
     PORTLAND,
     {LIMIT(GB_LIME_TO_CEMENT, 0, 0.1, FINE), SAND(FINE), NO_STONE(FINE)}},
    {GB_C476_COARSE,
     PORTLAND,
     {LIMIT(GB_LIME_TO_CEMENT, 0, 0.1, COARSE), SAND(COARSE),
      LIMIT(GB_STONE_TO_BINDER, 1, 2, TALY)}},
    {GB_DESIGNATION_1,
     PORTLAND,
     {LIMIT(GB_LIME_TO_CEMENT, 0.25, 0.25, DES_1), LIMIT(GB_SAND_TO_CEMENT, 3, 3, DES_1),
      NO_STONE(DES_1)}},
    {GB_DESIGNATION_2,
     PORTLAND,
     {LIMIT(GB_LIME_TO_CEMENT, 0.5, 0.5, DES_2), LIMIT(GB_SAND_TO_CEMENT, 4, 4.5, DES_2),
      NO_STONE(DES_2)}},
    {GB_DESIGNATION_3,
     PORTLAND,
     {LIMIT(GB_LIME_TO_CEMENT, 1, 1, DES_3), LIMIT(GB_SAND_TO_CEMENT, 5, 6, DES_3),
      NO_STONE(DES_3)}},
    {GB_DESIGNATION_4,
     PORTLAND,
     {LIMIT(GB_LIME_TO_CEMENT, 2, 2, DES_4), LIMIT(GB_SAND_TO_CEMENT, 8, 9, DES_4),
      NO_STONE(DES_4)}},
    {GB_DESIGNATION_1,
     PORTLAND_ALONE,
     {LIMIT(GB_SAND_TO_CEMENT, 3, 3, DES_1), NO_STONE(DES_1)}},
    {GB_DESIGNATION_2,
     PORTLAND_ALONE,
     {LIMIT(GB_SAND_TO_CEMENT, 3, 4, DES_2), NO_STONE(DES_2)}},
    {GB_DESIGNATION_3,
     PORTLAND_ALONE,
     {LIMIT(GB_SAND_TO_CEMENT, 5, 6, DES_3), NO_STONE(DES_3)}},
    {GB_DESIGNATION_4,
     PORTLAND_ALONE,
     {LIMIT(GB_SAND_TO_CEMENT, 7, 8, DES_4), NO_STONE(DES_4)}},
};

/* ---- the mix ----------------------------------------------------------------------- */

/* Loose volumes of a mix, in its own parts. */
typedef struct volumes {
    double portland, masonry[GB_MASONRY_TYPES];
    double cement, lime, sand, stone;
} volumes;

/* A part's volume as the sources count it: sand damp and loose, whatever the moisture
   that its own volume is stated for. */
static double loose_damp_volume(const gb_part *part) {
    const gb_material *m = part->material;
    return part->volume * m->bulk.kg_m3 /
           gb_loose_density(m, gb_state_lying(GB_DAMP)).kg_m3;
}

static void add_part(const gb_part *part, volumes *v) {
    const gb_material *m = part->material;
    double volume = loose_damp_volume(part);
    switch (m->kind) {
    case GB_CEMENT:
        v->cement += volume;
        v->masonry[m->masonry] += volume;
        break;
    case GB_LIME:
        v->lime += volume;
        break;
    case GB_SAND:
        v->sand += volume;
        break;
    case GB_COARSE:
        v->stone += volume;
        break;
    default: /* no part of a mix */
        break;
    }
}

static volumes volumes_of(const gb_mix *mix) {
    volumes v = {0};
    for (size_t i = 0; i < mix->part_count; i++)
        add_part(&mix->parts[i], &v);
    v.portland = v.masonry[GB_NOT_MASONRY];
    return v;
}

static cement_form form_of(const volumes *v) {
    bool portland = v->portland > 0;
    bool n = v->masonry[GB_MASONRY_N] > 0;
    bool s = v->masonry[GB_MASONRY_S] > 0;
    bool m = v->masonry[GB_MASONRY_M] > 0;
    int kinds = (portland ? 1 : 0) + (n ? 1 : 0) + (s ? 1 : 0) + (m ? 1 : 0);
    if (kinds == 2 && n && portland)
        return N_AND_PORTLAND;
    if (kinds != 1)
        return NO_FORM;
    if (portland)
        return v->lime > 0 ? PORTLAND : PORTLAND_ALONE;
    return n ? MASONRY_N : s ? MASONRY_S : MASONRY_M;
}

static double ratio_of(gb_ratio ratio, const volumes *v) {
    switch (ratio) {
    case GB_LIME_TO_CEMENT:
        return v->lime / v->cement;
    case GB_SAND_TO_BINDER:
        return v->sand / (v->cement + v->lime);
    case GB_SAND_TO_CEMENT:
        return v->sand / v->cement;
    case GB_STONE_TO_BINDER:
        return v->stone / (v->cement + v->lime);
    case GB_PORTLAND_TO_MASONRY:
        return v->portland / v->masonry[GB_MASONRY_N];
    case GB_NO_RATIO:
    case GB_RATIOS:
        break;
    }
    return GB_NONE;
}

/* ---- both ---------------------------------------------------------------------------
 */

static const gb_claim_limit *limits_for(gb_claim claim, cement_form form) {
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        if (ROWS[i].claim == claim && ROWS[i].form == form)
            return ROWS[i].limits;
    /* Only designations set a column apart for mixes without lime. */
    return form == PORTLAND_ALONE ? limits_for(claim, PORTLAND) : NULL;
}

static gb_side side_of(const gb_claim_limit *limit) {
    if (limit->over && !gb_over(limit->value, limit->least))
        return GB_NOT_OVER;
    if (gb_under(limit->value, limit->least))
        return GB_TOO_LITTLE;
    return gb_over(limit->value, limit->most) ? GB_TOO_MUCH : GB_WITHIN;
}

void gb_check_claim(const gb_mix *mix, gb_conformity *conformity) {
    *conformity = (gb_conformity){.claim = mix->claims, .known = true};
    if (mix->claims == GB_NO_CLAIM || mix->part_count == 0)
        return;
    volumes v = volumes_of(mix);
    const gb_claim_limit *limits = limits_for(mix->claims, form_of(&v));
    conformity->known = limits != NULL;
    while (limits != NULL && conformity->count < GB_MOST_CLAIM_LIMITS &&
           limits[conformity->count].ratio != GB_NO_RATIO) {
        gb_claim_limit *l = &conformity->limits[conformity->count];
        *l = limits[conformity->count++];
        l->value = ratio_of(l->ratio, &v);
        l->side = side_of(l);
    }
}
