/* What concrete is exposed to outdoors, in the classes of codes and standards, and what
   each class asks of a mix: strength, water to cement, air, cement. */
#ifndef GAUGEBOX_EXPOSURE_H
#define GAUGEBOX_EXPOSURE_H

#include "gaugebox/mix.h"

typedef enum gb_exposure {
    GB_IRC_NEGLIGIBLE, /* IRC table R402.2, porches, carport slabs and steps */
    GB_IRC_MODERATE,
    GB_IRC_SEVERE,
    GB_IRC_WALL_MODERATE, /* the same table, foundation and exterior walls */
    GB_IRC_WALL_SEVERE,
    GB_ACI_318_F0, /* ACI 318-14 and -19, freezing and thawing */
    GB_ACI_318_F1,
    GB_ACI_318_F2,
    GB_ACI_318_F3,
    GB_ACI_318_F3_PLAIN, /* without steel */
    GB_ACI_332_RF3,      /* ACI 332-20, exterior slabs with de-icers */
    GB_EN_206_XF1,       /* EN 206-1:2000 */
    GB_EN_206_XF2,
    GB_EN_206_XF3,
    GB_EN_206_XF4,
    GB_EXPOSURES
} gb_exposure;

/* The word of each class in files, in that order; NULL at the end. */
extern const char *const GB_EXPOSURE_WORDS[GB_EXPOSURES + 1];

/* What a class asks for; NaN where it asks for nothing. */
typedef struct gb_exposure_rule {
    gb_pressure strength; /* at 28 days, of cylinders, at the least */
    double ratio;         /* water to cement by mass, at the most */
    gb_share air_least, air_most;
    gb_air_level air_by_size; /* GB_AIR_TRAPPED: not by the size of the stone; else the
                                 two above are NaN, and gb_exposure_air has them */
    gb_density cement;        /* in the concrete, at the least */
    const char *source;       /* with what of it was read, and what is from memory */
} gb_exposure_rule;
gb_exposure_rule gb_exposure_asks(gb_exposure exposure);

/* The air of a class that asks for it by the size of the stone: that of the table, less
   and more the tolerance. Over 5000 psi 1 % less will do. False when the table does not
   have that size (3/8 to 3 in). ACI 318 table 19.3.3.1, from memory; its figures are
   those of ACI 211.1 for moderate and severe exposure, which were read. */
typedef struct gb_exposure_air {
    gb_share table, tolerance, strong; /* strong: what is less over 5000 psi, else 0 */
    gb_share least, most;
} gb_exposure_air;
bool gb_exposure_air_of(gb_exposure exposure, gb_length largest, gb_pressure strength,
                        gb_exposure_air *air);

/* What is known of a mix; NaN: not known. */
typedef struct gb_exposed_mix {
    gb_pressure strength; /* at 28 days, of cylinders */
    double ratio;         /* water to cement by mass, at never past */
    gb_share air;
    gb_density cement; /* in the concrete */
    gb_length largest; /* nominal size of its stone */
} gb_exposed_mix;

/* What a class limits. */
typedef enum gb_exposure_limit {
    GB_ASKS_STRENGTH,
    GB_ASKS_RATIO,
    GB_ASKS_AIR_LEAST,
    GB_ASKS_AIR_MOST,
    GB_ASKS_CEMENT,
    GB_ASKS_STONE, /* the size of the stone, where the air goes by it */
    GB_EXPOSURE_LIMITS
} gb_exposure_limit;

/* A limit that a mix misses; or, with a value of NaN, that it cannot be held to. Of
   GB_ASKS_STONE the value is the mix's air and the limit NaN. */
typedef struct gb_exposure_miss {
    gb_exposure exposure;
    gb_exposure_limit of;
    bool unknown;
    double value, limit; /* in SI units */
} gb_exposure_miss;

/* Strength, water, one of the two ends of the air, cement. */
enum { GB_MOST_MISSES = 4 * GB_EXPOSURES };

/* Holds a mix to each class of a set (bit 1 << gb_exposure); returns how many limits it
   misses, class by class. */
size_t gb_exposure_check(unsigned exposures, const gb_exposed_mix *mix,
                         gb_exposure_miss list[GB_MOST_MISSES]);

/* ---- mixes ------------------------------------------------------------------------- */

/* Concrete: it holds stone or may fill a slab; or it is a bagged blend that fills a
   volume. */
bool gb_is_concrete(const gb_mix *mix);

/* The strength that a mix is known for: as stated, else that it was proportioned for;
   NaN: none. */
gb_pressure gb_known_strength(const gb_mix *mix);

/* What is known of a mix. A bagged blend tells neither its cement nor its water to
   cement, and its air only where that is stated. */
gb_exposed_mix gb_exposed_of(const gb_mix *mix, const gb_recipe *recipe);

/* The cement in one bag of a mix; NaN of a blend. */
gb_mass gb_cement_of(const gb_mix *mix, const gb_recipe *recipe);

#endif
