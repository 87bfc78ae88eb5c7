#include "words/words.h"
#include "write/concrete_rows.h"
#include "write/gauge_rows.h"
#include "write/reference_rows.h"

#include <math.h>
#include <string.h>

static size_t family_length(const gb_mix *mix) {
    return strcspn(mix->id, "/");
}

static bool same_family(const gb_mix *a, const gb_mix *b) {
    size_t length = family_length(a);
    return length == family_length(b) && strncmp(a->id, b->id, length) == 0;
}

static gb_figure family_fig(gb_builder *b, const gb_mix *mix) {
    gb_text name;
    gb_text_init(&name, b->arena);
    gb_text_add_bytes(&name, mix->id, family_length(mix));
    b->failed = b->failed || name.failed;
    return gb_txt("family", gb_text_get(&name));
}

static void add_purpose(gb_builder *b, const gb_mix *mix) {
    GB_ADD(b, FOR, gb_words_fig(b, "purpose", &mix->purpose));
    if (mix->not_for.count > 0)
        GB_ADD(b, NOT_FOR, gb_words_fig(b, "what", &mix->not_for));
}

static void add_entry(gb_builder *b, const gb_mix *mix) {
    GB_ADD(b, LIST_MIX, gb_txt("id", mix->id), gb_uses_fig(b, mix->uses));
    GB_ADD(b, LIST_NAME, gb_words_fig(b, "title", &mix->title));
    add_purpose(b, mix);
}

gb_status gb_mix_list_sheet(const gb_mix *const *mixes, size_t count, gb_style style,
                            gb_arena *arena, gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    for (size_t i = 0; i < count; i++) {
        if (i == 0 || !same_family(mixes[i - 1], mixes[i])) {
            if (i > 0)
                gb_end_block(&b);
            GB_ADD(&b, LIST_FAMILY, family_fig(&b, mixes[i]));
        }
        add_entry(&b, mixes[i]);
    }
    if (count > 0)
        gb_end_block(&b);
    return gb_finish_sheet(&b, "mixes", sheet);
}

static void add_question(gb_builder *b, const gb_mix_question *q) {
    gb_figure bags = gb_num("bags", GB_SHOW_NUMBER, q->bags);
    gb_figure bag = gb_num("bag", GB_SHOW_MASS, q->recipe.bag.kg);
    if (isnan(q->wanted.m3)) {
        GB_ADD(b, QUESTION_BAGS, gb_bags_fig(b, "bags", q->bags), bag);
        return;
    }
    GB_ADD(b, QUESTION_VOLUME, bags, bag,
           gb_num("volume", GB_SHOW_VOLUME_FINE, q->wanted.m3),
           gb_num("whole", GB_SHOW_COUNT, gb_round(q->bags, 1, GB_UP)));
    if (q->waste.of_one > 0)
        GB_ADD(b, QUESTION_WASTE, gb_num("waste", GB_SHOW_SHARE, q->waste.of_one));
}

/* ---- what it claims ---------------------------------------------------------------- */

static gb_row ratio_row(gb_builder *b, gb_ratio ratio) {
    static const gb_row_code ROWS[] = {[GB_LIME_TO_CEMENT] = GB_ROW_RATIO_LIME,
                                       [GB_SAND_TO_BINDER] = GB_ROW_RATIO_SAND,
                                       [GB_SAND_TO_CEMENT] = GB_ROW_RATIO_SAND_CEMENT,
                                       [GB_STONE_TO_BINDER] = GB_ROW_RATIO_STONE,
                                       [GB_PORTLAND_TO_MASONRY] = GB_ROW_RATIO_PORTLAND};
    _Static_assert(sizeof ROWS / sizeof ROWS[0] == GB_RATIOS, "a row for each ratio");
    return gb_make_row(b, ROWS[ratio], NULL, 0);
}

static void add_claim_limit(gb_builder *b, const gb_claim_limit *l) {
    gb_figure ratio = gb_row_fig(b, "ratio", ratio_row(b, l->ratio));
    gb_figure least = gb_num("least", GB_SHOW_RATIO, l->least);
    gb_figure most = gb_num("most", GB_SHOW_RATIO, l->most);
    gb_figure value = gb_num("value", GB_SHOW_RATIO, l->value);
    if (l->over)
        GB_ADD(b, LIMIT_OVER, ratio, least, most, value);
    else if (gb_over(l->most, l->least))
        GB_ADD(b, LIMIT_RANGE, ratio, least, most, value);
    else
        GB_ADD(b, LIMIT_EXACT, ratio, most, value);
}

/* None of what is not there and not allowed is no news. */
static bool is_worth_telling(const gb_claim_limit *l) {
    return gb_over(l->most, 0) || l->side != GB_WITHIN;
}

static void add_claim(gb_builder *b, const gb_mix *mix) {
    gb_conformity c;
    gb_check_claim(mix, &c);
    if (c.claim == GB_NO_CLAIM)
        return;
    GB_ADD(b, CLAIM, gb_txt("source", gb_tr(gb_claim_source(c.claim))));
    for (size_t i = 0; i < c.count; i++) {
        b->about.claim_limit = i;
        if (is_worth_telling(&c.limits[i]))
            add_claim_limit(b, &c.limits[i]);
    }
    gb_cautions cautions;
    if (gb_mix_cautions(mix, b->arena, &cautions) == GB_OK)
        gb_add_cautions(b, &cautions, GB_AS_MORTAR);
    else
        b->failed = true;
}

gb_status gb_mix_sheet(const gb_mix_question *q, gb_style style, gb_arena *arena,
                       gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    b.about = (gb_about){.question = q, .amount = GB_ASKED_FOR};
    const gb_mix *mix = q->mix;
    const gb_measure measure = {
        GB_BY_BUCKET, isnan(q->bucket.m3) ? gb_usual_bucket(style.system) : q->bucket,
        gb_state_lying(GB_DAMP)};
    GB_ADD(&b, TITLE, gb_words_fig(&b, "title", &mix->title));
    gb_add_mix_id(&b, mix);
    add_purpose(&b, mix);
    if (gb_is_proportioned(mix))
        gb_add_asked(&b, mix);
    add_claim(&b, mix);
    add_question(&b, q);
    if (mix->part_count > 0)
        GB_ADD(&b, BATCH, gb_parts_fig(&b, mix, &q->recipe, q->bags, &measure));
    gb_add_with(&b, mix, &q->recipe, q->bags);
    gb_add_makes(&b, &q->recipe, q->bags);
    gb_add_water(&b, mix, &q->recipe, q->bags, (gb_share){GB_NONE});
    gb_add_sand_states(&b, mix, &q->recipe, q->bags, &measure);
    gb_add_mixing(&b, mix, false, false);
    gb_add_addition_notes(&b, mix);
    GB_ADD(&b, LIFE, gb_num("life", GB_SHOW_DURATION, mix->life.s),
           gb_num("hot", GB_SHOW_DURATION, mix->life_hot.s));
    if (gb_is_never_retempered(mix))
        GB_ADD_BARE(&b, LIFE_NEVER);
    gb_add_holds(&b, mix);
    GB_ADD_BARE(&b, WHO);
    GB_ADD(&b, SOURCE, gb_words_fig(&b, "source", &mix->source));
    gb_end_block(&b);
    gb_add_reference(&b, q);
    return gb_finish_sheet(&b, "mix", sheet);
}
