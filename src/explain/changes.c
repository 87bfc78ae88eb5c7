#include "explain/chains.h"

#include "gaugebox/count.h"

/* ---- one figure of one plan -------------------------------------------------------- */

typedef const gb_why *chain(gb_explainer *x, const gb_about *a);

static const gb_why *count(gb_explainer *x, const gb_about *a) {
    return gb_why_count(x, a->piece);
}

static const gb_why *bedded(gb_explainer *x, const gb_about *a) {
    if (!gb_has_shape(&a->piece->shape))
        return gb_fact(x, "bedded", GB_AREA, 0, N_("the piece has no size"));
    const gb_why *each = gb_why_bedded(x, a->piece);
    if (each == NULL)
        return NULL;
    return GB_WHY(x, "bedded_of_all", GB_AREA, each->value * (double)a->piece->count,
                  "count * bedded", GB_INPUTS(gb_why_count(x, a->piece), each),
                  .of = a->piece->name);
}

static const gb_why *run_riser(gb_explainer *x, const gb_about *a) {
    return gb_why_of_run(x, a->piece, "riser");
}

static const gb_why *run_first(gb_explainer *x, const gb_about *a) {
    return gb_why_of_run(x, a->piece, "first");
}

static const gb_why *run_left(gb_explainer *x, const gb_about *a) {
    return gb_why_of_run(x, a->piece, "error");
}

static const gb_why *run_missed(gb_explainer *x, const gb_about *a) {
    return gb_why_of_run(x, a->piece, "all_missed");
}

static const gb_why *layer(gb_explainer *x, const gb_about *a) {
    return gb_why_net_of(x, a->take);
}

static const gb_why *net(gb_explainer *x, const gb_about *a) {
    return gb_why_net(x, a->mix);
}

/* Every material as it lies, and all stone. */
static const gb_why *carried(gb_explainer *x, const gb_about *a) {
    const gb_plan *plan = a->plan;
    const gb_why **all =
        gb_arena_take(x->arena, plan->supply_count + 1, sizeof(const gb_why *));
    size_t n = 0;
    double kg = 0;
    if (all == NULL) {
        x->failed = true;
        return NULL;
    }
    for (; n < plan->supply_count; n++) {
        const gb_about of = {.plan = plan, .supply = &plan->supplies[n]};
        all[n] = gb_why_supply_lying(x, &of);
        kg += plan->supplies[n].lying.kg;
    }
    if (plan->stone_count > 0) {
        all[n] = gb_why_all_freight(x, a);
        kg += all[n] == NULL ? 0 : all[n]->value;
        n++;
    }
    return GB_WHY(x, "carried", GB_MASS, kg, "sum()", .inputs = all, .input_count = n);
}

static const struct {
    chain *why;
    gb_row_code row;
    int unit;
} ROWS[] = {
    {count, GB_ROW_CHANGE_COUNT, GB_PLAIN},
    {run_riser, GB_ROW_CHANGE_RISER, GB_LENGTH},
    {run_first, GB_ROW_CHANGE_FIRST, GB_LENGTH},
    {run_left, GB_ROW_CHANGE_LEFT, GB_LENGTH},
    {run_missed, GB_ROW_CHANGE_MISSED, GB_PLAIN},
    {bedded, GB_ROW_CHANGE_BEDDED, GB_AREA},
    {layer, GB_ROW_CHANGE_LAYER, GB_VOLUME},
    {gb_why_loose_net, GB_ROW_CHANGE_LOOSE, GB_VOLUME},
    {gb_why_freight, GB_ROW_CHANGE_STONE, GB_MASS},
    {net, GB_ROW_CHANGE_NET, GB_VOLUME},
    {gb_why_gross, GB_ROW_CHANGE_GROSS, GB_VOLUME},
    {gb_why_bags_needed, GB_ROW_CHANGE_BAGS, GB_PLAIN},
    {gb_why_supply_lying, GB_ROW_CHANGE_SUPPLY, GB_MASS},
    {gb_why_supply_packs, GB_ROW_CHANGE_PACKS, GB_PLAIN},
    {gb_why_total_water, GB_ROW_CHANGE_WATER, GB_MASS},
    {carried, GB_ROW_CHANGE_CARRIED, GB_MASS},
    {gb_why_packs, GB_ROW_CHANGE_BUY, GB_PLAIN},
    {gb_why_cost, GB_ROW_CHANGE_COST, GB_MINOR_UNITS},
    {gb_why_goods, GB_ROW_CHANGE_GOODS, GB_MINOR_UNITS},
    {gb_why_tax, GB_ROW_CHANGE_TAX, GB_MINOR_UNITS},
    {gb_why_delivery, GB_ROW_CHANGE_DELIVERY, GB_MINOR_UNITS},
    {gb_why_total, GB_ROW_CHANGE_TOTAL, GB_MINOR_UNITS},
};

/* ---- before, after, and the difference --------------------------------------------- */

bool gb_is_of_change(gb_row_code row) {
    return row >= GB_ROW_CHANGE_COUNT && row <= GB_ROW_CHANGE_TOTAL;
}

static const gb_why *at_time(gb_explainer *x, size_t i, const gb_about *about,
                             const char *name) {
    if (about == NULL)
        return gb_fact(x, name, ROWS[i].unit, 0, N_("not in that plan"));
    const gb_why *why = ROWS[i].why(x, about);
    if (why == NULL)
        return NULL;
    return GB_WHY(x, name, why->unit, why->value, why->name, GB_INPUTS(why));
}

const gb_why *gb_why_of_change(gb_explainer *x, const gb_row *row,
                               const gb_figure *figure) {
    const gb_about *a = row->about;
    size_t i = 0;
    while (i < sizeof ROWS / sizeof ROWS[0] && ROWS[i].row != row->code)
        i++;
    if (i == sizeof ROWS / sizeof ROWS[0])
        return NULL;
    const gb_why *before = at_time(x, i, a->before, "before");
    const gb_why *after = at_time(x, i, a->after, "now");
    if (before == NULL || after == NULL)
        return NULL;
    if (figure->name[0] == 'b')
        return before;
    if (figure->name[0] == 'a')
        return after;
    return GB_WHY(x, "change", after->unit, after->value - before->value, "now - before",
                  GB_INPUTS(after, before));
}
