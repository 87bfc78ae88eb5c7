#include "published/published.h"

#include <criterion/criterion.h>

/* A mixer that bears 420 lb with water: five 80 lb bags with 3 qt each weigh 431 lb and
   do not go. */

#define ARTICLE "mixer mass limit, trade article"

static const pub_figure FIVE_BAGS = {"five 80 lb bags with 3 qt each lb", ARTICLE,
                                     PUB_READ, .printed = 431, .tolerance = 0.5};
static const pub_figure MOST = {"80 lb bags in 420 lb", ARTICLE, PUB_READ, .printed = 4,
                                .tolerance = 0.01};

/* The shipped blend with another water, all three figures alike. */
static gb_mix with_water(const gb_mix *shipped, double qt) {
    gb_mix mix = *shipped;
    gb_volume water = {pub_si(GB_VOLUME, "qt", qt)};
    mix.water.bag_least = water;
    mix.water.bag_usual = water;
    mix.water.bag_most = water;
    return mix;
}

Test(published_mixer_example, mass_limit) {
    pub_table table;
    pub_open(&table);
    gb_mix mix = with_water(pub_mix(&table, "bagged/concrete-80lb"), 3);
    gb_recipe r = pub_recipe(&mix);
    pub_check(&FIVE_BAGS, pub_in(GB_MASS, "lb", 5 * (r.dry.kg + r.water_usual.kg)));
    pub_job job;
    pub_volume_job(&job, &mix, (gb_volume){5 * r.yield.m3});
    job.job.crew.mixer.most.kg = pub_si(GB_MASS, "lb", 420);
    pub_plan(&table, &job);
    const gb_batching *b = &job.plan.mixes[0].batching;
    pub_check(&MOST, b->most_bags);
    cr_expect(b->limit == GB_LIMIT_MASS, "the mass limits the batch, not %d",
              (int)b->limit);
    cr_expect(b->bags_whole == 5 && b->batch_count == 2, "five bags go in two batches");
    for (size_t i = 0; i < b->batch_count; i++)
        cr_expect(b->batches[i].bags <= 4, "batch %zu holds %g bags", i,
                  b->batches[i].bags);
    pub_close(&table);
}

/* Whole bags of 0.67 ft3 in a drum of which 55 or 60 % is usable. */
#define DRUMS "drum of 55 to 60 % usable, common practice"

static const struct drum {
    double ft3, share;
    pub_figure bags;
} ROWS[] = {
    {3.5,
     0.55,
     {"0.67 ft3 bags in 3.5 ft3 at 55 %", DRUMS, PUB_DERIVED, .printed = 2,
      .tolerance = 0.01}},
    {3.5,
     0.60,
     {"0.67 ft3 bags in 3.5 ft3 at 60 %", DRUMS, PUB_DERIVED, .printed = 3,
      .tolerance = 0.01}},
    {6,
     0.55,
     {"0.67 ft3 bags in 6 ft3 at 55 %", DRUMS, PUB_DERIVED, .printed = 4,
      .tolerance = 0.01}},
    {6,
     0.60,
     {"0.67 ft3 bags in 6 ft3 at 60 %", DRUMS, PUB_DERIVED, .printed = 5,
      .tolerance = 0.01}},
    {9,
     0.55,
     {"0.67 ft3 bags in 9 ft3 at 55 %", DRUMS, PUB_DERIVED, .printed = 7,
      .tolerance = 0.01}},
    {9,
     0.60,
     {"0.67 ft3 bags in 9 ft3 at 60 %", DRUMS, PUB_DERIVED, .printed = 8,
      .tolerance = 0.01}},
};

Test(published_mixer_example, bags_in_a_drum) {
    pub_table table;
    pub_open(&table);
    gb_mix mix = *pub_mix(&table, "bagged/setting-80lb");
    mix.label.yield.m3 = pub_si(GB_VOLUME, "ft3", 0.67);
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
        pub_job job;
        pub_volume_job(&job, &mix, (gb_volume){50 * mix.label.yield.m3});
        gb_mixer *drum = &job.job.crew.mixer;
        *drum = (gb_mixer){.kind = GB_DRUM, .usable = {NAN}, .most = {NAN}};
        drum->rated.m3 = pub_si(GB_VOLUME, "ft3", ROWS[i].ft3);
        /* 55 % is what a drum has without being asked. */
        drum->filled.of_one = ROWS[i].share == 0.55 ? NAN : ROWS[i].share;
        pub_plan(&table, &job);
        pub_check(&ROWS[i].bags, job.plan.mixes[0].batching.most_bags);
    }
    pub_close(&table);
}
