#include "write/gauge_rows.h"

#include <math.h>

/* Where the entry stands, and which of its keys come from whom. */
static void add_lineage(gb_builder *b, const gb_mix *mix) {
    for (size_t i = 0; i < mix->lineage_count; i++) {
        const gb_lineage *l = &mix->lineage[i];
        if (i == 0)
            GB_ADD(b, MIX_FILE, gb_txt("place", l->place));
        if (mix->lineage_count == 1 || l->keys[0] == '\0')
            continue;
        if (i == 0)
            GB_ADD(b, MIX_OWN_KEYS, gb_txt("keys", l->keys));
        else
            GB_ADD(b, MIX_KEYS_OF, gb_txt("id", l->id), gb_txt("place", l->place),
                   gb_txt("keys", l->keys));
    }
}

void gb_add_mix_id(gb_builder *b, const gb_mix *mix) {
    GB_ADD(b, MIX_ID, gb_txt("id", mix->id));
    if (mix->own)
        add_lineage(b, mix);
}

gb_figure gb_bags_fig(gb_builder *b, const char *name, double bags) {
    return gb_row_fig(b, name, GB_MAKE(b, BAG, gb_num("n", GB_SHOW_FRACTION, bags)));
}

/* The binder that comes first is counted in whole bags; a part of a bag is weighed. */
static gb_row binder_row(gb_builder *b, const gb_part *part, double kg, double bags) {
    gb_figure material = gb_words_fig(b, "material", &part->material->title);
    gb_figure mass = gb_num("mass", GB_SHOW_MASS, kg);
    if (fabs(bags - round(bags)) > GB_SAME || bags < 1.0)
        return GB_MAKE(b, PART_WEIGHED, mass, material);
    return GB_MAKE(b, PART_BAGS, gb_bags_fig(b, "bags", bags), material, mass);
}

gb_measure gb_measure_of(const gb_job *job) {
    return (gb_measure){job->gauge.by, gb_job_measure(job), gb_job_lying(job)};
}

/* "1 level bucket", "2-1/4 level boxes", "21 level shovels". */
static gb_figure count_fig(gb_builder *b, gb_gauge_by by, double count) {
    gb_row row = {0};
    switch (by) {
    case GB_BY_BUCKET:
        row = GB_MAKE(b, BUCKET, gb_num("n", GB_SHOW_QUARTERS, count));
        break;
    case GB_BY_BOX:
        row = GB_MAKE(b, BOX, gb_num("n", GB_SHOW_QUARTERS, count));
        break;
    case GB_BY_SHOVEL:
        row = GB_MAKE(
            b, SHOVEL,
            gb_num("n", GB_SHOW_COUNT, gb_round(count, gb_gauge_step(by), GB_NEAREST)));
        break;
    }
    return gb_row_fig(b, "measures", row);
}

/* The same with the size of one. */
static gb_figure sized_fig(gb_builder *b, const gb_measure *m, double count) {
    gb_figure counted = count_fig(b, m->by, count);
    gb_figure line = gb_num("line", GB_SHOW_GAUGED, m->one.m3);
    gb_row row = {0};
    switch (m->by) {
    case GB_BY_BUCKET:
        row = GB_MAKE(b, SIZE_BUCKET, counted, line);
        break;
    case GB_BY_BOX:
        row = GB_MAKE(b, SIZE_BOX, counted, line);
        break;
    case GB_BY_SHOVEL:
        row = GB_MAKE(b, SIZE_SHOVEL, counted, line);
        break;
    }
    return gb_row_fig(b, "sized", row);
}

/* Where measures are too coarse, how far off they would be is said beside the mass. */
static gb_row weighed_row(gb_builder *b, const gb_part *part, gb_mass dry,
                          const gb_measure *measure, const gb_gauged *gauged) {
    const gb_material *m = part->material;
    gb_figure mass = gb_num("mass", GB_SHOW_MASS,
                            gb_part_lying(part, dry, measure->lying.moisture).kg);
    gb_figure material = gb_words_fig(b, "material", &m->title);
    bool counted = measure->by != GB_BY_SHOVEL || m->kind == GB_SAND;
    if (!counted || !(gauged->count > 0))
        return GB_MAKE(b, PART_WEIGHED, mass, material);
    return GB_MAKE(b, PART_OFF, mass, material, count_fig(b, measure->by, gauged->exact),
                   gb_num("off", GB_SHOW_SHARE, fabs(gauged->error)));
}

/* What lies loose is gauged by level measures, and what their rounding gives too much or
   too little is said; where that is too coarse, the part is weighed. */
static gb_row loose_row(gb_builder *b, const gb_part *part, gb_mass dry,
                        const gb_measure *measure) {
    const gb_material *m = part->material;
    static const double SMALLEST = 0.0005; /* less is shown as 0.0 % */
    gb_volume loose = gb_loose_volume(m, dry, measure->lying);
    gb_gauged gauged = gb_gauge_loose(m, loose, measure->by, measure->one);
    if (gauged.weighed)
        return weighed_row(b, part, dry, measure, &gauged);
    gb_mass in_one = gb_dry_mass(m, measure->one, measure->lying);
    const gb_figure all[] = {
        gb_num("volume", GB_SHOW_VOLUME, loose.m3),
        gb_words_fig(b, "material", &m->title), sized_fig(b, measure, gauged.exact),
        gb_num("each", GB_SHOW_MASS,
               gb_part_lying(part, in_one, measure->lying.moisture).kg),
        gb_num("off", GB_SHOW_SHARE, fabs(gauged.error))};
    if (fabs(gauged.error) < SMALLEST)
        return gb_make_row(b, GB_ROW_PART_LOOSE, all, 4);
    return gb_make_row(b, gauged.error > 0 ? GB_ROW_PART_OVER : GB_ROW_PART_UNDER, all,
                       5);
}

/* Powders weighed, liquids poured; what replaces water is told below the water. */
static size_t added_rows(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                         double bags, gb_row *rows) {
    size_t n = 0;
    for (size_t i = 0; i < mix->addition_count; i++) {
        const gb_addition *a = &mix->additions[i];
        if (!isnan(a->replaces.of_one))
            continue;
        double kg = gb_addition_mass(mix, recipe, i, bags, (gb_mass){0}).kg;
        gb_figure material = gb_words_fig(b, "material", &a->material->title);
        b->about.part = i;
        if (isnan(a->dose.m3))
            rows[n++] =
                GB_MAKE(b, ADDED_WEIGHED, gb_num("mass", GB_SHOW_DAB, kg), material);
        else
            rows[n++] = GB_MAKE(
                b, ADDED_POURED,
                gb_num("volume", GB_SHOW_LIQUID, kg / a->material->bulk.kg_m3), material);
    }
    return n;
}

void gb_add_with(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe, double bags) {
    gb_row rows[GB_MOST_ADDITIONS];
    if (mix->part_count > 0)
        return; /* they stand with the parts */
    size_t n = added_rows(b, mix, recipe, bags, rows);
    if (n == 0)
        return;
    gb_figure parts = gb_rows_fig(b, "parts", rows, n);
    parts.join = " + ";
    GB_ADD(b, WITH, parts);
}

void gb_add_replaced(gb_builder *b, const gb_mix *mix) {
    for (size_t i = 0; i < mix->addition_count; i++) {
        const gb_addition *a = &mix->additions[i];
        if (isnan(a->replaces.of_one))
            continue;
        b->about.part = i;
        gb_figure material = gb_words_fig(b, "material", &a->material->title);
        if (gb_over(1, a->replaces.of_one))
            GB_ADD(b, REPLACES, gb_num("replaced", GB_SHOW_SHARE, a->replaces.of_one),
                   material);
        else
            GB_ADD(b, REPLACES_ALL, material);
    }
}

void gb_add_addition_notes(gb_builder *b, const gb_mix *mix) {
    bool label = false;
    for (size_t i = 0; i < mix->addition_count; i++)
        label = label || mix->additions[i].material->kind > GB_CARBON_BLACK;
    if (gb_is_coloured(mix))
        GB_ADD_BARE(b, COLOUR);
    if (label)
        GB_ADD_BARE(b, BY_LABEL);
}

gb_figure gb_parts_fig(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                       double bags, const gb_measure *measure) {
    gb_row rows[GB_MOST_PARTS + GB_MOST_ADDITIONS];
    b->about.moisture = measure->lying.moisture;
    for (size_t i = 0; i < mix->part_count; i++) {
        const gb_part *part = &mix->parts[i];
        gb_mass dry = {recipe->part[i].kg * bags};
        b->about.part = i;
        rows[i] =
            i == 0 ? binder_row(b, part, dry.kg, bags) : loose_row(b, part, dry, measure);
    }
    size_t added = added_rows(b, mix, recipe, bags, &rows[mix->part_count]);
    gb_figure parts = gb_rows_fig(b, "parts", rows, mix->part_count + added);
    parts.join = " + ";
    return parts;
}

gb_figure gb_pot_parts_fig(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                           double bags, gb_lying lying) {
    gb_row rows[GB_MOST_PARTS + GB_MOST_ADDITIONS];
    b->about.moisture = lying.moisture;
    for (size_t i = 0; i < mix->part_count; i++) {
        b->about.part = i;
        const gb_material *m = mix->parts[i].material;
        gb_mass dry = {recipe->part[i].kg * bags};
        rows[i] = GB_MAKE(b, POT_PART,
                          gb_num("mass", GB_SHOW_MASS, gb_mass_lying(m, dry, lying).kg),
                          gb_words_fig(b, "material", &m->title));
    }
    size_t added = added_rows(b, mix, recipe, bags, &rows[mix->part_count]);
    gb_figure parts = gb_rows_fig(b, "parts", rows, mix->part_count + added);
    parts.join = " + ";
    return parts;
}

gb_row gb_route_row(gb_builder *b, const gb_recipe *r) {
    if (r->route == GB_MEASURED)
        return GB_MAKE_BARE(b, ROUTE_MEASURED);
    if (r->route == GB_LABELLED)
        return GB_MAKE_BARE(b, ROUTE_LABEL);
    if (r->regime == GB_BY_SAND)
        return GB_MAKE_BARE(b, ROUTE_SAND);
    return GB_MAKE_BARE(b, ROUTE_SOLIDS);
}

void gb_add_makes(gb_builder *b, const gb_recipe *r, double bags) {
    GB_ADD(b, MAKES, gb_num("volume", GB_SHOW_VOLUME, r->yield.m3 * bags),
           gb_num("mass", GB_SHOW_MASS, gb_wet_mass(r).kg * bags),
           gb_num("yield", GB_SHOW_VOLUME, r->yield.m3),
           gb_row_fig(b, "route", gb_route_row(b, r)));
}

static gb_figure whole_fig(gb_builder *b, const char *name, gb_row row) {
    gb_figure figure = gb_row_fig(b, name, row);
    figure.whole = true;
    return figure;
}

static gb_row state_row(gb_builder *b, gb_share moisture) {
    gb_figure share = gb_num("share", GB_SHOW_SHARE, moisture.of_one);
    if (moisture.of_one == gb_sand_moisture(GB_NEARLY_DRY).of_one)
        return GB_MAKE(b, STATE_NEARLY_DRY, share);
    if (moisture.of_one == gb_sand_moisture(GB_DAMP).of_one)
        return GB_MAKE(b, STATE_DAMP, share);
    if (moisture.of_one == gb_sand_moisture(GB_WET).of_one)
        return GB_MAKE(b, STATE_WET, share);
    return GB_MAKE(b, STATE_STATED, share);
}

gb_figure gb_state_fig(gb_builder *b, gb_share moisture) {
    return whole_fig(b, "state", state_row(b, moisture));
}

/* One state: "damp 5 % 8 level buckets", or weighed. */
static gb_row sand_in_state(gb_builder *b, const gb_material *m, gb_mass dry,
                            const gb_measure *measure) {
    b->about.moisture = measure->lying.moisture;
    gb_figure state = gb_state_fig(b, measure->lying.moisture);
    gb_volume loose = gb_loose_volume(m, dry, measure->lying);
    gb_gauged gauged = gb_gauge_loose(m, loose, measure->by, measure->one);
    if (!gauged.weighed)
        return GB_MAKE(b, SAND_GAUGED, state, count_fig(b, measure->by, gauged.exact));
    gb_mass lying = gb_mass_lying(m, dry, measure->lying);
    return GB_MAKE(b, SAND_WEIGHED, state, gb_num("mass", GB_SHOW_MASS, lying.kg));
}

void gb_add_sand_states(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                        double bags, const gb_measure *measure) {
    for (size_t i = 0; i < mix->part_count; i++) {
        const gb_material *m = mix->parts[i].material;
        gb_row rows[GB_WET + 2];
        size_t n = 0;
        bool usual = false; /* today's is one of the three */
        if (m->kind != GB_SAND)
            continue;
        gb_mass dry = {recipe->part[i].kg * bags};
        b->about.part = i;
        for (gb_sand_state s = GB_NEARLY_DRY; s <= GB_WET; s++) {
            gb_measure in_state = *measure;
            bool today = gb_sand_moisture(s).of_one == measure->lying.moisture.of_one;
            /* Today's sand may bulk otherwise than is usual. */
            if (!today)
                in_state.lying = gb_state_lying(s);
            usual = usual || today;
            rows[n++] = sand_in_state(b, m, dry, &in_state);
        }
        if (!usual)
            rows[n++] = sand_in_state(b, m, dry, measure);
        gb_figure states = gb_rows_fig(b, "states", rows, n);
        states.whole = true;
        GB_ADD(b, SAND_STATES, gb_words_fig(b, "material", &m->title), states);
    }
}

/* True when half quarts are too coarse for so many bags: ounces are shown. A bag's label
   is itself written in half quarts. The moisture of the sand plays no part, so that all
   rows of one table are alike. Where usual is never past, as in proportioned concrete,
   half quarts cannot swallow a band. */
static bool needs_ounces(const gb_mix *mix, const gb_recipe *r, double bags) {
    static const double LEAST_KG = 3.78;      /* 4 qt */
    static const double SITE_BAND_KG = 0.94;  /* 1 qt between usual and never past */
    static const double LABEL_BAND_KG = 0.47; /* half of that */
    double band = bags * (r->water_most.kg - r->water_usual.kg);
    return bags * r->water_most.kg < LEAST_KG ||
           (band > 0 && band < (mix->part_count > 0 ? SITE_BAND_KG : LABEL_BAND_KG));
}

/* The three figures of a row in one resolution. First and never past are rounded down,
   so that neither is overrun by rounding; the usual one to the nearest, unless that could
   take it past never past. */
typedef struct water_figures {
    gb_figure first, usual, most;
} water_figures;

static water_figures round_water(gb_show show, const gb_water_row *row) {
    bool fine = show == GB_SHOW_WATER_FINE || show == GB_SHOW_WATER_FINE_CELL;
    double step_kg = fine ? 0.03 : 0.48; /* an ounce, half a quart */
    bool tight = row->most.kg - row->usual.kg < step_kg;
    return (water_figures){
        gb_num_down("first", show, row->first.kg),
        tight ? gb_num_down("usual", show, row->usual.kg)
              : gb_num("usual", show, row->usual.kg),
        gb_num_down("most", show, row->most.kg),
    };
}

static void add_cells(gb_builder *b, gb_row_code code, const gb_figure *head,
                      size_t head_count, bool ounces, const gb_water_row *row) {
    gb_show show = ounces ? GB_SHOW_WATER_FINE_CELL : GB_SHOW_WATER_CELL;
    water_figures w = round_water(show, row);
    gb_figure all[5] = {w.first, w.usual, w.most};
    for (size_t i = 0; i < head_count; i++)
        all[3 + i] = head[i];
    gb_add_row(b, code, all, 3 + head_count);
}

static void add_state(gb_builder *b, const gb_mix *mix, const gb_recipe *r, double bags,
                      bool ounces, gb_share moisture, gb_share today) {
    b->about.moisture = moisture;
    gb_figure head[] = {gb_state_fig(b, moisture),
                        gb_mark("mark", moisture.of_one == today.of_one ? "> " : "  ")};
    gb_water_row row = {0};
    if (gb_water_to_add(mix, r, moisture, bags, &row) == GB_OK)
        add_cells(b, GB_ROW_STATE_BAG, head, 2, ounces, &row);
    else
        gb_add_row(b, GB_ROW_STATE_TOO_WET, head, 2);
}

/* The usual three states, and today's when it is none of them. */
static void add_states(gb_builder *b, const gb_mix *mix, const gb_recipe *r, double bags,
                       bool ounces, gb_share today) {
    bool usual = false;
    for (gb_sand_state s = GB_NEARLY_DRY; s <= GB_WET; s++) {
        add_state(b, mix, r, bags, ounces, gb_sand_moisture(s), today);
        usual = usual || gb_sand_moisture(s).of_one == today.of_one;
    }
    if (!usual && !isnan(today.of_one))
        add_state(b, mix, r, bags, ounces, today, today);
}

static void add_plain_water(gb_builder *b, const gb_mix *mix, const gb_recipe *r,
                            double bags, bool ounces, gb_row what) {
    gb_water_row row = {0};
    gb_figure head = whole_fig(b, "what", what);
    b->about.moisture = (gb_share){0};
    if (gb_water_to_add(mix, r, (gb_share){0}, bags, &row) == GB_OK)
        add_cells(b, GB_ROW_WATER_BAG, &head, 1, ounces, &row);
}

static gb_row amount_row(gb_builder *b, const gb_recipe *r, double bags) {
    if (fabs(bags - 1.0) < GB_SAME)
        return GB_MAKE_BARE(b, PER_BAG);
    if (bags > 1.0)
        return GB_MAKE_BARE(b, PER_BATCH);
    return GB_MAKE(b, PER_PART, gb_num("mass", GB_SHOW_MASS, r->bag.kg * bags));
}

void gb_add_water(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe, double bags,
                  gb_share today) {
    double amounts[2] = {1.0, bags};
    size_t count = bags > 1.0 + GB_SAME ? 2 : 1;
    if (bags < 1.0 - GB_SAME)
        amounts[0] = bags;
    bool sand = recipe->sand.kg > 0;
    gb_amount asked = b->about.amount;
    /* One unit in a table: that of the smallest amount. */
    bool ounces = needs_ounces(mix, recipe, amounts[0]);
    gb_figure units = gb_num("units", GB_SHOW_WATER_UNITS, ounces ? 1 : 0);
    gb_figure first = gb_row_fig(b, "first", GB_MAKE_BARE(b, FIRST_WATER));
    gb_figure usual = gb_row_fig(b, "usual", GB_MAKE_BARE(b, USUAL_WATER));
    gb_figure most = gb_row_fig(b, "most", GB_MAKE_BARE(b, MOST_WATER));
    if (!sand)
        GB_ADD(b, WATER_UNITS, units, first, usual, most);
    for (size_t i = 0; i < count; i++) {
        b->about.amount = i + 1 < count ? GB_ONE_BAG : asked;
        gb_row what = amount_row(b, recipe, amounts[i]);
        if (sand) {
            GB_ADD(b, WATER_WORDS, whole_fig(b, "what", what), units, first, usual, most);
            add_states(b, mix, recipe, amounts[i], ounces, today);
        } else {
            add_plain_water(b, mix, recipe, amounts[i], ounces, what);
        }
    }
    gb_add_replaced(b, mix);
}

void gb_add_water_below(gb_builder *b, const gb_mix *mix, const gb_recipe *recipe,
                        double bags, gb_share today) {
    bool ounces = needs_ounces(mix, recipe, bags);
    gb_water_row row = {0};
    if (recipe->sand.kg > 0) {
        add_states(b, mix, recipe, bags, ounces, today);
    } else if (gb_water_to_add(mix, recipe, (gb_share){0}, bags, &row) == GB_OK) {
        b->about.moisture = (gb_share){0};
        water_figures w = round_water(ounces ? GB_SHOW_WATER_FINE : GB_SHOW_WATER, &row);
        GB_ADD(b, PART_WATER_PLAIN, w.first, w.usual, w.most);
    }
}

void gb_add_water_in_all(gb_builder *b, const gb_mix *mix, const gb_recipe *r) {
    bool ounces = needs_ounces(mix, r, 1.0);
    gb_water_row row = {
        .first = r->water_least, .usual = r->water_usual, .most = r->water_most};
    water_figures w =
        round_water(ounces ? GB_SHOW_WATER_FINE_CELL : GB_SHOW_WATER_CELL, &row);
    w.first.name = "least";
    w.first.rounding = w.usual.rounding; /* so that it never stands over usual */
    gb_figure units = gb_num("units", GB_SHOW_WATER_UNITS, ounces ? 1 : 0);
    GB_ADD(b, WATER_IN_ALL, units);
    GB_ADD(b, WATER_LIMITS, w.first, w.usual, w.most);
}

/* Cement that meets hot water sets at once, so all else is mixed with it first; the last
   step, how to trim, stays the mix's own. */
static void add_hot_order(gb_builder *b, const gb_mix *mix) {
    GB_ADD(b, ORDER_HOT_WATER, gb_num("n", GB_SHOW_COUNT, 1));
    GB_ADD(b, ORDER_HOT_SAND, gb_num("n", GB_SHOW_COUNT, 2));
    GB_ADD(b, ORDER_HOT_CEMENT, gb_num("n", GB_SHOW_COUNT, 3));
    if (mix->order_count > 0)
        GB_ADD(b, ORDER, gb_num("n", GB_SHOW_COUNT, 4),
               gb_words_fig(b, "step", &mix->order[mix->order_count - 1]));
}

static void add_order(gb_builder *b, const gb_mix *mix) {
    for (size_t i = 0; i < mix->order_count; i++)
        GB_ADD(b, ORDER, gb_num("n", GB_SHOW_COUNT, (double)(i + 1)),
               gb_words_fig(b, "step", &mix->order[i]));
}

void gb_add_mixing(gb_builder *b, const gb_mix *mix, bool by_hand, bool hot_water) {
    if (hot_water && mix->part_count > 0)
        add_hot_order(b, mix);
    else
        add_order(b, mix);
    if (by_hand)
        GB_ADD_BARE(b, BARROW);
    else
        GB_ADD(b, MIXING, gb_num("time", GB_SHOW_DURATION, mix->mixing.s));
    GB_ADD(b, CHECK, gb_words_fig(b, "check", &mix->check));
    GB_ADD(b, AT_LIMIT, gb_words_fig(b, "words", &mix->at_limit));
    GB_ADD_BARE(b, TOO_WET);
}

void gb_add_holds(gb_builder *b, const gb_mix *mix) {
    for (size_t i = 0; i < mix->hold_count; i++) {
        const gb_hold *h = &mix->holds[i];
        b->about.hold = h;
        gb_figure what = gb_words_fig(b, "what", &h->what);
        gb_figure least = gb_num("least", GB_SHOW_DURATION, h->least.s);
        if (isnan(h->most.s))
            GB_ADD(b, HOLD, what, least);
        else
            GB_ADD(b, HOLD_RANGE, what, least,
                   gb_num("most", GB_SHOW_DURATION, h->most.s));
    }
    GB_ADD(b, HOLD_COLD, gb_num("cold", GB_SHOW_TEMP, gb_cold_for_masonry().c));
}

void gb_add_need_spread(gb_builder *b, const gb_mix_plan *p) {
    const gb_need *n = &p->need;
    gb_figure spread = gb_num("spread", GB_SHOW_SHARE, n->bags_spread / n->bags);
    gb_figure of = gb_row_fig(
        b, "of", n->spread.m3 > 0 ? GB_MAKE_BARE(b, OF_BOTH) : GB_MAKE_BARE(b, OF_YIELD));
    if (p->is_slurry)
        GB_ADD(b, POT_SPREAD, spread, of);
    else
        GB_ADD(b, BAGS_SPREAD, gb_num("bags", GB_SHOW_NUMBER, n->bags_spread), spread,
               of);
}

/* From the last count that is less likely than not up to the first that is all but sure.
 */
static void add_chances(gb_builder *b, const gb_need *need) {
    enum { MOST = 6 };
    static const double ALL_BUT_SURE = 0.99;
    gb_row rows[MOST];
    size_t n = 0;
    double bags = gb_larger(1.0, gb_round(need->bags, 1.0, GB_DOWN));
    while (n < MOST) {
        gb_share share = gb_sureness(need, bags);
        b->about.bags = bags;
        rows[n++] = GB_MAKE(b, CHANCE, gb_num("whole", GB_SHOW_COUNT, bags),
                            gb_num_down("share", GB_SHOW_SHARE, share.of_one));
        if (share.of_one >= ALL_BUT_SURE)
            break;
        bags += 1;
    }
    GB_ADD(b, NEED_CHANCES, gb_rows_fig(b, "chances", rows, n));
}

void gb_add_sureness(gb_builder *b, const gb_need *need, gb_share sure) {
    if (!(need->bags_spread > 0))
        return;
    double bags = gb_bags_surely(need, sure);
    if (sure.of_one > 0)
        GB_ADD(b, NEED_SURE, gb_num("sure", GB_SHOW_SHARE, sure.of_one),
               gb_num("bags", GB_SHOW_NUMBER, bags),
               gb_num("whole", GB_SHOW_COUNT, gb_round(bags, 1.0, GB_UP)));
    add_chances(b, need);
}
