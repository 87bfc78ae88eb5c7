#include "write/batch_rows.h"
#include "write/gauge_rows.h"

static void add_pot_water(gb_builder *b, gb_row which, double kg, gb_rounding rounding) {
    gb_figure water = gb_num("water", GB_SHOW_POT_WATER, kg);
    water.rounding = rounding;
    GB_ADD(b, POT_WATER, gb_row_fig(b, "which", which), water);
}

static void add_pot(gb_builder *b, const gb_job *job, const gb_mix_plan *p,
                    const gb_pot *pot) {
    b->about.pot = pot;
    b->about.take = pot->take;
    b->about.amount = GB_ONE_POT;
    gb_figure name = gb_txt("name", pot->take->piece->name);
    gb_figure area = gb_num("area", GB_SHOW_AREA_HALF, pot->area.m2);
    gb_figure depth = gb_num("depth", GB_SHOW_LENGTH, pot->depth.m);
    gb_figure count = gb_num("count", GB_SHOW_COUNT, (double)pot->count);
    gb_figure parts =
        gb_pot_parts_fig(b, p->need.mix, &p->recipe, pot->bags, gb_job_lying(job));
    if (pot->take->units > 1.0 && pot->pieces >= 1.0)
        GB_ADD(b, POT_PIECES, gb_num("pieces", GB_SHOW_COUNT, pot->pieces), name, area,
               depth, parts, count);
    else
        GB_ADD(b, POT_AREA, name, area, depth, parts, count);
    b->about.water = GB_FIRST_WATER;
    add_pot_water(b, GB_MAKE_BARE(b, FIRST_WATER), pot->first.kg, GB_DOWN);
    b->about.water = GB_USUAL_WATER;
    add_pot_water(b, GB_MAKE_BARE(b, USUAL_WATER), pot->usual.kg, GB_NEAREST);
    b->about.water = GB_MOST_WATER;
    add_pot_water(b, GB_MAKE_BARE(b, MOST_WATER), pot->most.kg, GB_DOWN);
    gb_add_replaced(b, p->need.mix);
    gb_length scored = gb_usual_slurry(GB_SCORED);
    if (gb_under(pot->depth.m / scored.m, 1.0))
        GB_ADD(b, POT_SCORED, gb_num("depth", GB_SHOW_LENGTH, scored.m),
               gb_num("area", GB_SHOW_AREA_HALF, pot->area.m2 * pot->depth.m / scored.m));
    if (!pot->fits_life)
        GB_ADD(b, POT_TOO_SLOW, gb_num("life", GB_SHOW_DURATION, p->life.s),
               gb_num("time", GB_SHOW_DURATION, pot->time.s));
}

/* Pots to tick: as many as each take needs of its smallest pots. */
static void add_marks(gb_builder *b, const gb_mix_plan *p) {
    size_t count = 0;
    for (size_t i = 0; i < p->pot_count; i++)
        if (i == 0 || p->pots[i].take != p->pots[i - 1].take)
            count += p->pots[i].count;
    gb_text marks;
    gb_text_init(&marks, b->arena);
    for (size_t i = 0; i < count; i++)
        gb_text_add(&marks, i == 0 ? "[ ]" : " [ ]");
    b->failed = b->failed || marks.failed;
    GB_ADD(b, POT_LOG, gb_mark("marks", gb_text_get(&marks)));
}

void gb_add_pots(gb_builder *b, const gb_job *job, const gb_mix_plan *p) {
    for (size_t i = 0; i < p->pot_count; i++)
        add_pot(b, job, p, &p->pots[i]);
    GB_ADD(b, POT_LIFE, gb_num("life", GB_SHOW_DURATION, p->life.s),
           gb_num("open", GB_SHOW_DURATION, p->need.mix->open.s));
    add_marks(b, p);
}
