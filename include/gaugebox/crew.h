/* The crew of a job: its mixers, how fast it places each kind of layer, its day, and what
   an hour of it does. */
#ifndef GAUGEBOX_CREW_H
#define GAUGEBOX_CREW_H

#include "gaugebox/mix.h"

/* Quantities that the file did not state are NaN, texts NULL. */

typedef enum gb_mixer_kind {
    GB_PADDLE,
    GB_DRUM,
    GB_BARROW,
    GB_MIXER_KINDS
} gb_mixer_kind;

typedef struct gb_mixer {
    gb_mixer_kind kind;
    gb_volume usable; /* of wet mix, as stated; see gb_usable */
    gb_mass most;     /* with water; NaN when not stated */
    gb_volume rated;  /* the size that it is sold by */
    gb_share filled;  /* of that; NaN: the usual share of its kind */
    const char *name;
    unsigned fills; /* bit 1 << gb_layer_kind for each that it mixes for; 0: any */
    gb_origin at;
} gb_mixer;

/* The share of its rated size that a mixer makes of wet mix: a paddle mixer is rated by
   its batch, 100 % (common practice); a tilting drum by the whole drum, 55 %, of 50 to 70
   % in print (common practice); a barrow by what it holds, 50 % when it is mixed in
   (common practice). */
gb_share gb_usual_filled(gb_mixer_kind kind);

/* The wet mix that it takes: as stated, or rated * filled; NaN when neither is stated. */
gb_volume gb_usable(const gb_mixer *mixer);

/* From so many bags on hand mixing in a barrow is no longer worth it against hiring a
   mixer: a dozen (common practice). */
double gb_most_by_hand(void);

/* How fast the crew places a layer; one of the three is stated, the others are NaN. */
typedef struct gb_pace {
    double treads_s;
    double m2_s;
    double m3_s;
    int line;
} gb_pace;

/* The pace of some kinds of layers. */
typedef struct gb_layer_pace {
    unsigned kinds; /* bit 1 << gb_layer_kind */
    gb_pace pace;
    gb_origin at;
} gb_layer_pace;

/* Nobody works in it; seconds since midnight. */
typedef struct gb_break {
    gb_duration from, to;
    gb_origin at;
} gb_break;

typedef struct gb_crew {
    gb_mixer mixer; /* the only one, or the first of several */
    const gb_mixer *mixers;
    size_t mixer_count; /* 0: there is the one above */
    gb_pace pace;       /* of beds and slurries; by volume, of all else too */
    const gb_layer_pace *paces;
    size_t pace_count;
    gb_duration start, finish; /* since midnight */
    const gb_break *breaks;
    size_t break_count;
    gb_duration mixing;   /* a batch: gauged, mixed, turned out */
    gb_duration potting;  /* a pot of slurry */
    gb_duration cleaning; /* mixer and tools, at the end of the day or for another mix */
    gb_duration carrying; /* one load to the work and back */
    gb_mass load;         /* of that */
    size_t hands;         /* who set; one more mixes */
    gb_origin at;
} gb_crew;

/* The mixers of a crew, at least one. */
const gb_mixer *gb_mixers_of(const gb_crew *crew, size_t *count);

/* The pace of a kind of layer: as stated for it, else that of the crew, which holds for
   beds and slurries and, by volume, for all but slurries. NULL when the job states none.
 */
const gb_pace *gb_pace_of(const gb_crew *crew, gb_layer_kind kind);

/* Who set at the stated pace; one at the least. */
size_t gb_hands_of(const gb_crew *crew);

/* What is usual where a job states nothing: 10 min for a batch, 3 min for a pot, 15 min
   to clean up. Common practice. */
gb_duration gb_mixing_time(const gb_crew *crew);
gb_duration gb_potting_time(const gb_crew *crew);
gb_duration gb_cleaning_time(const gb_crew *crew);

/* The end of the day in seconds from the midnight before its start: as stated, else 8 h
   after the start (common practice). One at or before the start is of the next day. NaN
   without a start. */
gb_duration gb_day_end(const gb_crew *crew);

/* What a site needs of water beside that in the mixes; NaN: what is usual. */
typedef struct gb_site_water {
    gb_volume cleaning; /* each time that mixer and tools are cleaned */
    gb_volume rinsing;  /* clean and running, of each who works, a day */
    gb_length curing;   /* a day on concrete that is kept wet, as a depth */
    gb_origin at;
} gb_site_water;

/* What is usual: 5 gal to clean up (common practice); 7 gal to rinse, of 5 to 7 that the
   Center for Construction Research and Training asks for (second hand); 4 mm a day to
   cure (common practice). */
gb_site_water gb_water_rates(const gb_site_water *stated);

#endif
