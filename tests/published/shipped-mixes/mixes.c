#include "published/published.h"

#include <criterion/criterion.h>
#include <math.h>

/* Every mix of the table makes a plan in each of its uses, with wet sand too. */

static void plan_it(pub_table *table, const gb_mix *mix, gb_layer_kind kind,
                    gb_sand_state sand) {
    pub_job job;
    pub_laid laid = {kind, 2, 1, 0.02, 1};
    if (kind == GB_CORE || kind == GB_VOLUME_LAYER || gb_is_joint(kind) ||
        kind == GB_PARGE || kind == GB_BLOCK)
        pub_volume_job(&job, mix, (gb_volume){0.02});
    else
        pub_laid_job(&job, mix, &laid);
    job.job.sand.state = sand;
    pub_plan(table, &job);
    const gb_mix_plan *p = &job.plan.mixes[0];
    cr_expect(p->need.gross.m3 > 0 && p->recipe.yield.m3 > 0, "%s is planned", mix->id);
    gb_water_row row = {{0}, {0}, {0}, {0}};
    cr_expect(gb_water_to_add(mix, &p->recipe, gb_sand_moisture(sand), 1, &row) == GB_OK,
              "%s has water to add with its sand in state %d", mix->id, (int)sand);
}

Test(published_shipped_mixes, every_mix_in_each_use) {
    pub_table table;
    pub_open(&table);
    const gb_mix *const *mixes = NULL;
    size_t count = 0;
    cr_assert(gb_mix_list(table.mixes, &mixes, &count), "the table is listed");
    cr_expect(count >= 60, "the whole table, not %zu mixes", count);
    for (size_t i = 0; i < count; i++)
        for (gb_layer_kind kind = GB_BED; kind < GB_LAYER_KINDS; kind++)
            if (mixes[i]->uses & (1u << kind)) {
                plan_it(&table, mixes[i], kind, GB_NEARLY_DRY);
                plan_it(&table, mixes[i], kind, GB_WET);
            }
    pub_close(&table);
}

/* A mason who compares mixes is told of each what it is for and what it is not for. */
Test(published_shipped_mixes, for_and_not_for) {
    pub_table table;
    pub_open(&table);
    const gb_mix *const *mixes = NULL;
    size_t count = 0;
    cr_assert(gb_mix_list(table.mixes, &mixes, &count), "the table is listed");
    for (size_t i = 0; i < count; i++) {
        cr_expect(gb_words_in(&mixes[i]->purpose, "en")[0] != '\0', "%s is for nothing",
                  mixes[i]->id);
        cr_expect(gb_words_in(&mixes[i]->not_for, "en")[0] != '\0',
                  "%s does not say what it is not for", mixes[i]->id);
    }
    pub_close(&table);
}

/* The masses of one m3 of wet mix, times what one bag makes, are those of the bag. */
Test(published_shipped_mixes, masses_in_wet_mix) {
    pub_table table;
    pub_open(&table);
    const gb_mix *const *mixes = NULL;
    size_t count = 0;
    cr_assert(gb_mix_list(table.mixes, &mixes, &count), "the table is listed");
    for (size_t i = 0; i < count; i++) {
        gb_recipe r;
        cr_assert(gb_make_recipe(mixes[i], NULL, false, (gb_mass){GB_NONE}, &r) == GB_OK);
        double wet = gb_in_wet(r.water_usual, r.yield).kg_m3;
        for (size_t k = 0; k < mixes[i]->part_count; k++)
            wet += gb_in_wet(r.part[k], r.yield).kg_m3;
        if (mixes[i]->part_count == 0)
            wet += gb_in_wet(r.bag, r.yield).kg_m3;
        wet += gb_in_wet(r.powder, r.yield).kg_m3;
        double bag = r.dry.kg + r.water_usual.kg;
        cr_expect(fabs(wet * r.yield.m3 / bag - 1.0) < 1e-12, "%s: %.9f kg of %.9f",
                  mixes[i]->id, wet * r.yield.m3, bag);
    }
    pub_close(&table);
}

/* A site mix is one for both kinds of bag: its binder comes in whole kilograms where jobs
   are metric, and one that is sold by the pound says so in both. */
Test(published_shipped_mixes, metric_bags) {
    pub_table table;
    pub_open(&table);
    const gb_mix *const *mixes = NULL;
    size_t count = 0;
    size_t in_kg = 0;
    cr_assert(gb_mix_list(table.mixes, &mixes, &count), "the table is listed");
    for (size_t i = 0; i < count; i++) {
        if (mixes[i]->part_count == 0)
            continue;
        double bag = gb_usual_pack(mixes[i]->parts[0].material, GB_METRIC)->kg;
        bool whole = bag == 25;
        bool pounds = bag == gb_usual_pack(mixes[i]->parts[0].material, GB_US)->kg;
        cr_expect(whole || pounds, "%s comes in bags of %g kg", mixes[i]->id, bag);
        in_kg += whole;
    }
    cr_expect(in_kg >= 30, "%zu mixes come in bags of 25 kg", in_kg);
    pub_close(&table);
}

/* What a shipped mix claims, it is; Type K and lime mortars claim nothing. */
Test(published_shipped_mixes, claims) {
    pub_table table;
    pub_open(&table);
    const gb_mix *const *mixes = NULL;
    size_t count = 0;
    size_t claims = 0;
    cr_assert(gb_mix_list(table.mixes, &mixes, &count), "the table is listed");
    for (size_t i = 0; i < count; i++) {
        gb_conformity conformity;
        gb_cautions cautions;
        gb_check_claim(mixes[i], &conformity);
        cr_assert(gb_mix_cautions(mixes[i], &table.arena, &cautions) == GB_OK, "memory");
        cr_expect(cautions.count == 0, "%s is what it claims", mixes[i]->id);
        bool any = mixes[i]->claims != GB_NO_CLAIM;
        cr_expect(any == (conformity.count > 0), "%s has limits", mixes[i]->id);
        claims += any;
    }
    cr_expect(claims == 17, "%zu mixes claim something", claims);
    cr_expect(pub_mix(&table, "mortar/type-k")->claims == GB_NO_CLAIM);
    cr_expect(pub_mix(&table, "lime-mortar/nhl35-1-3")->claims == GB_NO_CLAIM);
    pub_close(&table);
}
