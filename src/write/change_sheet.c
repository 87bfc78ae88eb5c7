#include "write/loose_rows.h"

#include "gaugebox/count.h"

#include <stddef.h>
#include <string.h>

/* One figure before and after, and what each is about. */
typedef struct pair {
    gb_show show;
    double before, after;
    gb_about was, is; /* without a plan: it is not there at that time */
} pair;

static bool differs(const pair *p) {
    return gb_over(fabs(p->after - p->before), 0);
}

static const gb_about *keep(gb_builder *b, const gb_about *about) {
    if (!b->style.explained || about->plan == NULL)
        return NULL;
    gb_about *copy = gb_arena_take(b->arena, 1, sizeof *copy);
    if (copy == NULL)
        b->failed = true;
    else
        *copy = *about;
    return copy;
}

static gb_figure difference(gb_show show, double value) {
    gb_figure figure = gb_num("difference", show, value);
    figure.with_sign = true;
    return figure;
}

/* A row of the table, when anything changed: whose figure, which one, before and after.
 */
static void add(gb_builder *b, gb_row_code code, gb_figure whose, gb_figure which,
                const pair *p) {
    if (!differs(p))
        return;
    b->about.before = keep(b, &p->was);
    b->about.after = keep(b, &p->is);
    const gb_figure figures[] = {whose, which, gb_num("before", p->show, p->before),
                                 gb_num("after", p->show, p->after),
                                 difference(p->show, p->after - p->before)};
    gb_add_row(b, code, figures, sizeof figures / sizeof figures[0]);
}

static gb_figure which(gb_builder *b, gb_row_code code) {
    return gb_row_fig(b, "which", gb_make_row(b, code, NULL, 0));
}

/* ---- pieces ------------------------------------------------------------------------ */

/* Two jobs have most pieces in the same order, so the search begins behind the one that
   was found last. */
static const gb_piece *piece_named(const gb_plan *plan, const char *name, size_t *from) {
    size_t count = plan->job->piece_count;
    for (size_t i = 0; i < count; i++) {
        size_t at = (*from + i) % count;
        if (strcmp(plan->job->pieces[at].name, name) != 0)
            continue;
        *from = at + 1;
        return &plan->job->pieces[at];
    }
    return NULL;
}

static const char *name_of_either(const gb_piece *old, const gb_piece *now) {
    return now != NULL ? now->name : old->name;
}

static double bedded_of_all(const gb_piece *p) {
    return p == NULL || !gb_has_shape(&p->shape)
               ? 0
               : gb_bedded_area(p).m2 * (double)p->count;
}

/* The layout of a run; false when the piece is none. */
static bool lay(const gb_builder *b, const gb_piece *p, gb_layout *l) {
    return p != NULL && p->run.at.line != 0 &&
           gb_lay_steps(&p->run, p->run.count, p->run.evened, gb_tape(b->style.system),
                        l) == GB_OK;
}

static gb_about of_piece(const gb_plan *plan, const gb_piece *piece) {
    return (gb_about){.plan = piece == NULL ? NULL : plan, .piece = piece};
}

/* The first of a list of `count` entries of that size, each beginning with its piece,
   that is of no piece before this one: plans list what they take in the order of the
   pieces. */
_Static_assert(offsetof(gb_take, piece) == 0, "a take begins with its piece");
_Static_assert(offsetof(gb_loose_take, piece) == 0, "and one of loose layers");
_Static_assert(offsetof(gb_stone_take, piece) == 0, "and one of stone");
static size_t first_of(const void *list, size_t count, size_t size,
                       const gb_piece *piece) {
    size_t low = 0;
    size_t high = count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        const void *entry = (const char *)list + middle * size;
        if (*(const gb_piece *const *)entry < piece)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

/* The nth layer of a kind in a piece. */
static const gb_take *take_of(const gb_plan *plan, const gb_piece *piece,
                              gb_layer_kind kind, size_t n) {
    if (piece == NULL)
        return NULL;
    size_t i = first_of(plan->takes, plan->take_count, sizeof *plan->takes, piece);
    for (; i < plan->take_count && plan->takes[i].piece == piece; i++)
        if (plan->takes[i].layer->kind == kind && n-- == 0)
            return &plan->takes[i];
    return NULL;
}

/* The nth layer of a kind, before and after; false behind the last. */
static bool add_take(gb_builder *b, const gb_change *c, const gb_piece *old,
                     const gb_piece *now, gb_layer_kind kind, size_t n) {
    const gb_take *was = take_of(c->before, old, kind, n);
    const gb_take *is = take_of(c->after, now, kind, n);
    pair p = {GB_SHOW_VOLUME_FINE,
              was == NULL ? 0 : was->net.m3,
              is == NULL ? 0 : is->net.m3,
              {.plan = was == NULL ? NULL : c->before, .piece = old, .take = was},
              {.plan = is == NULL ? NULL : c->after, .piece = now, .take = is}};
    add(b, GB_ROW_CHANGE_LAYER, gb_txt("name", name_of_either(old, now)),
        gb_row_fig(b, "which", gb_kind_row(b, kind)), &p);
    return was != NULL || is != NULL;
}

/* The nth loose layer of a piece that holds a volume. */
static const gb_loose_take *loose_of(const gb_plan *plan, const gb_piece *piece,
                                     gb_loose_kind kind, size_t n) {
    if (piece == NULL)
        return NULL;
    size_t i = first_of(plan->loose, plan->loose_count, sizeof *plan->loose, piece);
    for (; i < plan->loose_count && plan->loose[i].piece == piece; i++) {
        const gb_loose_take *t = &plan->loose[i];
        if (t->loose->kind == kind && !isnan(t->size.net.m3) && n-- == 0)
            return t;
    }
    return NULL;
}

/* As add_take. */
static bool add_loose(gb_builder *b, const gb_change *c, const gb_piece *old,
                      const gb_piece *now, gb_loose_kind kind, size_t n) {
    const gb_loose_take *was = loose_of(c->before, old, kind, n);
    const gb_loose_take *is = loose_of(c->after, now, kind, n);
    pair p = {GB_SHOW_VOLUME_FINE,
              was == NULL ? 0 : was->size.net.m3,
              is == NULL ? 0 : is->size.net.m3,
              {.plan = was == NULL ? NULL : c->before, .piece = old, .loose = was},
              {.plan = is == NULL ? NULL : c->after, .piece = now, .loose = is}};
    add(b, GB_ROW_CHANGE_LOOSE, gb_txt("name", name_of_either(old, now)),
        gb_row_fig(b, "which", gb_loose_row(b, kind)), &p);
    return was != NULL || is != NULL;
}

static void add_layers(gb_builder *b, const gb_change *c, const gb_piece *old,
                       const gb_piece *now) {
    for (gb_layer_kind kind = 0; kind < GB_LAYER_KINDS; kind++)
        for (size_t n = 0; add_take(b, c, old, now, kind, n);)
            n++;
    for (gb_loose_kind kind = 0; kind < GB_LOOSE_KINDS; kind++)
        for (size_t n = 0; add_loose(b, c, old, now, kind, n);)
            n++;
}

static const gb_stone_take *stone_of(const gb_plan *plan, const gb_piece *piece) {
    if (piece == NULL)
        return NULL;
    size_t i = first_of(plan->stones, plan->stone_count, sizeof *plan->stones, piece);
    bool has = i < plan->stone_count && plan->stones[i].piece == piece;
    return has ? &plan->stones[i] : NULL;
}

static void add_stone(gb_builder *b, const gb_change *c, const gb_piece *old,
                      const gb_piece *now, const char *name) {
    const gb_stone_take *was = stone_of(c->before, old);
    const gb_stone_take *is = stone_of(c->after, now);
    pair p = {GB_SHOW_MASS,
              was == NULL ? 0 : was->size.freight.kg,
              is == NULL ? 0 : is->size.freight.kg,
              {.plan = was == NULL ? NULL : c->before, .piece = old, .stone = was},
              {.plan = is == NULL ? NULL : c->after, .piece = now, .stone = is}};
    add(b, GB_ROW_CHANGE_STONE, gb_txt("name", name), which(b, GB_ROW_CHANGED_STONE), &p);
}

/* What follows in a run: its risers, what of the rise is left, what a code says then. */
static void add_run(gb_builder *b, const gb_change *c, const gb_piece *old,
                    const gb_piece *now, const char *name) {
    gb_layout was = {.riser = {0}};
    gb_layout is = {.riser = {0}};
    bool had = lay(b, old, &was);
    bool has = lay(b, now, &is);
    gb_about before = of_piece(c->before, had ? old : NULL);
    gb_about after = of_piece(c->after, has ? now : NULL);
    double missed_before = had ? (double)gb_all_rules_missed(&old->run, &was) : 0;
    double missed = has ? (double)gb_all_rules_missed(&now->run, &is) : 0;
    pair riser = {GB_SHOW_LENGTH_FINE, was.riser.m, is.riser.m, before, after};
    pair first = {GB_SHOW_LENGTH_FINE, was.first.m, is.first.m, before, after};
    pair left = {GB_SHOW_LENGTH_FINE, was.error.m, is.error.m, before, after};
    pair rules = {GB_SHOW_COUNT, missed_before, missed, before, after};
    gb_figure of = gb_txt("name", name);
    add(b, GB_ROW_CHANGE_RISER, of, which(b, GB_ROW_CHANGED_RISER), &riser);
    add(b, GB_ROW_CHANGE_FIRST, of, which(b, GB_ROW_CHANGED_FIRST), &first);
    add(b, GB_ROW_CHANGE_LEFT, of, which(b, GB_ROW_CHANGED_LEFT), &left);
    add(b, GB_ROW_CHANGE_MISSED, of, which(b, GB_ROW_CHANGED_MISSED), &rules);
}

static void add_piece(gb_builder *b, const gb_change *c, const gb_piece *old,
                      const gb_piece *now) {
    const char *name = name_of_either(old, now);
    pair count = {GB_SHOW_COUNT, old == NULL ? 0 : (double)old->count,
                  now == NULL ? 0 : (double)now->count, of_piece(c->before, old),
                  of_piece(c->after, now)};
    add(b, GB_ROW_CHANGE_COUNT, gb_txt("name", name), which(b, GB_ROW_CHANGED_COUNT),
        &count);
    pair area = {GB_SHOW_AREA, bedded_of_all(old), bedded_of_all(now), count.was,
                 count.is};
    add(b, GB_ROW_CHANGE_BEDDED, gb_txt("name", name), which(b, GB_ROW_CHANGED_BEDDED),
        &area);
    add_run(b, c, old, now, name);
    add_layers(b, c, old, now);
    add_stone(b, c, old, now, name);
}

/* Those of the new job in its order, then those that it has no more. */
static void add_pieces(gb_builder *b, const gb_change *c) {
    size_t from = 0;
    for (size_t i = 0; i < c->after->job->piece_count; i++) {
        const gb_piece *now = &c->after->job->pieces[i];
        add_piece(b, c, piece_named(c->before, now->name, &from), now);
    }
    from = 0;
    for (size_t i = 0; i < c->before->job->piece_count; i++) {
        const gb_piece *old = &c->before->job->pieces[i];
        if (piece_named(c->after, old->name, &from) == NULL)
            add_piece(b, c, old, NULL);
    }
}

/* ---- needs ------------------------------------------------------------------------- */

static const gb_mix_plan *mix_of(const gb_plan *plan, const char *id) {
    for (size_t i = 0; i < plan->mix_count; i++)
        if (strcmp(plan->mixes[i].need.mix->id, id) == 0)
            return &plan->mixes[i];
    return NULL;
}

static void add_need(gb_builder *b, const gb_change *c, const gb_mix_plan *old,
                     const gb_mix_plan *now) {
    gb_figure name = gb_txt("name", now != NULL ? now->need.mix->id : old->need.mix->id);
    pair p = {.show = GB_SHOW_VOLUME_FINE,
              .before = old == NULL ? 0 : old->need.net.m3,
              .after = now == NULL ? 0 : now->need.net.m3,
              .was = {.plan = old == NULL ? NULL : c->before,
                      .mix = old,
                      .amount = GB_ALL_OF_IT},
              .is = {.plan = now == NULL ? NULL : c->after,
                     .mix = now,
                     .amount = GB_ALL_OF_IT}};
    add(b, GB_ROW_CHANGE_NET, name, which(b, GB_ROW_CHANGED_NET), &p);
    p.before = old == NULL ? 0 : old->need.gross.m3;
    p.after = now == NULL ? 0 : now->need.gross.m3;
    add(b, GB_ROW_CHANGE_GROSS, name, which(b, GB_ROW_CHANGED_GROSS), &p);
    p.show = GB_SHOW_NUMBER;
    p.before = old == NULL ? 0 : old->need.bags;
    p.after = now == NULL ? 0 : now->need.bags;
    add(b, GB_ROW_CHANGE_BAGS, name, which(b, GB_ROW_CHANGED_BAGS), &p);
}

static void add_needs(gb_builder *b, const gb_change *c) {
    for (size_t i = 0; i < c->after->mix_count; i++) {
        const gb_mix_plan *now = &c->after->mixes[i];
        add_need(b, c, mix_of(c->before, now->need.mix->id), now);
    }
    for (size_t i = 0; i < c->before->mix_count; i++) {
        const gb_mix_plan *old = &c->before->mixes[i];
        if (mix_of(c->after, old->need.mix->id) == NULL)
            add_need(b, c, old, NULL);
    }
}

/* ---- what comes to the site -------------------------------------------------------- */

static const gb_supply_need *supply_of(const gb_plan *plan, const char *name) {
    for (size_t i = 0; i < plan->supply_count; i++)
        if (strcmp(gb_supply_name(&plan->supplies[i]), name) == 0)
            return &plan->supplies[i];
    return NULL;
}

/* 0: it is not there, or comes loose. */
static double packs_of(const gb_supply_need *s) {
    return s == NULL || isnan(s->pack.kg) ? 0 : gb_supply_packs(s);
}

static void add_supply(gb_builder *b, const gb_change *c, const gb_supply_need *old,
                       const gb_supply_need *now) {
    const gb_supply_need *any = now != NULL ? now : old;
    pair p = {.show = GB_SHOW_MASS,
              .before = old == NULL ? 0 : old->lying.kg,
              .after = now == NULL ? 0 : now->lying.kg,
              .was = {.plan = old == NULL ? NULL : c->before, .supply = old},
              .is = {.plan = now == NULL ? NULL : c->after, .supply = now}};
    gb_figure name = gb_words_fig(b, "name", gb_supply_title(any));
    add(b, GB_ROW_CHANGE_SUPPLY, name, which(b, GB_ROW_CHANGED_MASS), &p);
    p.show = GB_SHOW_COUNT;
    p.before = packs_of(old);
    p.after = packs_of(now);
    if (!(p.before > 0))
        p.was.plan = NULL;
    if (!(p.after > 0))
        p.is.plan = NULL;
    add(b, GB_ROW_CHANGE_PACKS, name, which(b, GB_ROW_CHANGED_PACKS), &p);
}

/* All materials as they lie, and the stone. */
static double carried(const gb_plan *plan) {
    double kg = 0;
    for (size_t i = 0; i < plan->supply_count; i++)
        kg += plan->supplies[i].lying.kg;
    for (size_t i = 0; i < plan->stone_count; i++)
        kg += plan->stones[i].size.freight.kg;
    return kg;
}

static void add_supplies(gb_builder *b, const gb_change *c) {
    for (size_t i = 0; i < c->after->supply_count; i++) {
        const gb_supply_need *now = &c->after->supplies[i];
        add_supply(b, c, supply_of(c->before, gb_supply_name(now)), now);
    }
    for (size_t i = 0; i < c->before->supply_count; i++) {
        const gb_supply_need *old = &c->before->supplies[i];
        if (supply_of(c->after, gb_supply_name(old)) == NULL)
            add_supply(b, c, old, NULL);
    }
    pair water = {GB_SHOW_WATER_CELL,
                  c->before->water.m3 * GB_WATER_KG_M3,
                  c->after->water.m3 * GB_WATER_KG_M3,
                  {.plan = c->before},
                  {.plan = c->after}};
    gb_figure all = gb_row_fig(b, "name", GB_MAKE_BARE(b, CHANGED_ALL));
    gb_row in_units = GB_MAKE(b, CHANGED_WATER, gb_num("units", GB_SHOW_WATER_UNITS, 0));
    add(b, GB_ROW_CHANGE_WATER, all, gb_row_fig(b, "which", in_units), &water);
    pair mass = {GB_SHOW_MASS,
                 carried(c->before),
                 carried(c->after),
                 {.plan = c->before},
                 {.plan = c->after}};
    add(b, GB_ROW_CHANGE_CARRIED, all, which(b, GB_ROW_CHANGED_CARRIED), &mass);
}

/* ---- cost -------------------------------------------------------------------------- */

static const gb_buy_line *line_of(const gb_priced *priced, const char *name) {
    for (size_t i = 0; i < priced->list->line_count; i++)
        if (strcmp(gb_supply_name(priced->list->lines[i].need), name) == 0)
            return &priced->list->lines[i];
    return NULL;
}

/* As add, of money: sums are whole minor units. */
static void add_money(gb_builder *b, gb_row_code code, gb_figure whose, gb_figure what,
                      const pair *p) {
    int decimals = p->is.priced != NULL ? p->is.priced->book->decimals
                                        : p->was.priced->book->decimals;
    if (!differs(p))
        return;
    b->about.before = keep(b, &p->was);
    b->about.after = keep(b, &p->is);
    gb_money before = {(int64_t)p->before};
    gb_money after = {(int64_t)p->after};
    gb_figure more =
        gb_money_fig("difference", (gb_money){after.minor - before.minor}, decimals);
    more.with_sign = true;
    const gb_figure figures[] = {whose, what, gb_money_fig("before", before, decimals),
                                 gb_money_fig("after", after, decimals), more};
    gb_add_row(b, code, figures, sizeof figures / sizeof figures[0]);
}

static gb_about of_line(const gb_plan *plan, const gb_priced *priced,
                        const gb_buy_line *line) {
    bool none = line == NULL || line->pack == NULL;
    return (gb_about){.plan = none ? NULL : plan,
                      .priced = priced,
                      .line = line,
                      .supply = line == NULL ? NULL : line->need};
}

static double cost_of(const gb_buy_line *line) {
    return line == NULL ? 0 : (double)line->cost.minor;
}

static void add_line(gb_builder *b, const gb_change *c, const gb_buy_line *old,
                     const gb_buy_line *now) {
    const gb_supply_need *any = now != NULL ? now->need : old->need;
    gb_figure name = gb_words_fig(b, "name", gb_supply_title(any));
    pair p = {GB_SHOW_COUNT, old == NULL ? 0 : (double)old->packs,
              now == NULL ? 0 : (double)now->packs,
              of_line(c->before, c->priced_before, old),
              of_line(c->after, c->priced_after, now)};
    add(b, GB_ROW_CHANGE_BUY, name, which(b, GB_ROW_CHANGED_BUY), &p);
    p.before = cost_of(old);
    p.after = cost_of(now);
    add_money(b, GB_ROW_CHANGE_COST, name, which(b, GB_ROW_CHANGED_COST), &p);
}

static void add_sum(gb_builder *b, const gb_change *c, gb_row_code code, gb_row_code what,
                    gb_money before, gb_money after) {
    pair p = {GB_SHOW_MONEY,
              (double)before.minor,
              (double)after.minor,
              {.plan = c->before, .priced = c->priced_before},
              {.plan = c->after, .priced = c->priced_after}};
    add_money(b, code, gb_row_fig(b, "name", GB_MAKE_BARE(b, CHANGED_ALL)),
              which(b, what), &p);
}

static void add_prices(gb_builder *b, const gb_change *c) {
    const gb_buy_list *old = c->priced_before->list;
    const gb_buy_list *now = c->priced_after->list;
    for (size_t i = 0; i < now->line_count; i++)
        add_line(b, c, line_of(c->priced_before, gb_supply_name(now->lines[i].need)),
                 &now->lines[i]);
    for (size_t i = 0; i < old->line_count; i++)
        if (line_of(c->priced_after, gb_supply_name(old->lines[i].need)) == NULL)
            add_line(b, c, &old->lines[i], NULL);
    add_sum(b, c, GB_ROW_CHANGE_GOODS, GB_ROW_CHANGED_GOODS, old->goods, now->goods);
    add_sum(b, c, GB_ROW_CHANGE_TAX, GB_ROW_CHANGED_TAX, old->tax, now->tax);
    add_sum(b, c, GB_ROW_CHANGE_DELIVERY, GB_ROW_CHANGED_DELIVERY, old->delivery,
            now->delivery);
    add_sum(b, c, GB_ROW_CHANGE_TOTAL, GB_ROW_CHANGED_TOTAL, old->total, now->total);
}

/* ---- the sheet --------------------------------------------------------------------- */

/* A block with its title and the heads of its columns, when it holds a row. */
static void add_block(gb_builder *b, const gb_change *c, gb_row_code title,
                      void (*add_rows)(gb_builder *, const gb_change *)) {
    size_t start = b->row_count;
    gb_add_row(b, title, NULL, 0);
    GB_ADD_BARE(b, CHANGE_HEAD);
    size_t rows = b->row_count;
    add_rows(b, c);
    if (b->row_count == rows)
        b->row_count = start;
    else
        gb_end_block(b);
}

gb_status gb_change_sheet(const gb_change *change, gb_style style, gb_arena *arena,
                          gb_sheet *sheet) {
    gb_builder b;
    gb_builder_init(&b, style, arena);
    GB_ADD_BARE(&b, CHANGE_TITLE);
    GB_ADD(&b, SITE, gb_txt("name", change->after->job->site.name));
    GB_ADD(&b, CHANGE_PLANS, gb_number_fig(&b, "number", change->after->digest),
           gb_number_fig(&b, "old", change->before->digest));
    gb_end_block(&b);
    size_t head = b.row_count;
    add_block(&b, change, GB_ROW_CHANGE_PIECES, add_pieces);
    add_block(&b, change, GB_ROW_CHANGE_NEEDS, add_needs);
    add_block(&b, change, GB_ROW_CHANGE_SUPPLIES, add_supplies);
    if (change->priced_before != NULL && change->priced_after != NULL)
        add_block(&b, change, GB_ROW_CHANGE_PRICES, add_prices);
    if (b.row_count == head) {
        GB_ADD_BARE(&b, CHANGE_NOTHING);
        gb_end_block(&b);
    }
    return gb_finish_sheet(&b, "change", sheet);
}
