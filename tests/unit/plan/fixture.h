/* Hand-made materials, mixes and jobs for the tests of planning, and the units they are
   written in. Units stand here by their definitions (NIST Handbook 44, appendix C), apart
   from the engine's own table, so that a wrong factor there shows. */
#ifndef TESTS_PLAN_FIXTURE_H
#define TESTS_PLAN_FIXTURE_H

#include "gaugebox/buy.h"
#include "gaugebox/sheet.h"

#include <math.h>

#define IN         0.0254
#define FT         0.3048
#define FT2        (FT * FT)
#define FT3        (FT * FT * FT)
#define YD3        (27.0 * FT3)
#define LB         0.45359237
#define QT         (57.75 * IN * IN * IN)
#define MPH        (1609.344 / 3600.0)
#define HOUR       3600.0
#define DEG_F(f)   (((f)-32.0) * 5.0 / 9.0)
#define ROWS_OF(t) (sizeof(t) / sizeof((t)[0]))

/* Values that no size may have. */
extern const double FX_BAD[5];
enum { FX_BADS = 5 };

extern const gb_material FX_CEMENT; /* 94 lb/ft3, 3.15, bag of 94 lb */
extern const gb_material FX_LIME;   /* 40 lb/ft3, 2.3, bag of 50 lb */
extern const gb_material FX_SAND;   /* 80 lb/ft3 dry in damp, 1400 kg/m3 dry, 2.65 */

extern const gb_mix FX_BED;    /* bed/stiff-1-4: 1 cement : 4 sand, stiff; 2 h, hot 1 h */
extern const gb_mix FX_SLURRY; /* slurry/neat: water to cement 0.40, 0.45, 0.50; 20 min */
extern const gb_mix FX_BLEND;  /* bagged/setting: 80 lb make 0.66 ft3 with 5 qt; 1 h */
extern const gb_mix FX_LIME_MORTAR; /* mortar/type-n: 1 : 1 : 6, plastic; 2-1/2 h */

enum { FX_PIECES = 16, FX_LAYERS = 2, FX_DEPTHS = 8, FX_ROWS = 6 };

/* A job with room for its own lists; it points into itself, so it is never copied. */
typedef struct fx_job {
    gb_job job;
    gb_piece pieces[FX_PIECES];
    gb_layer layers[FX_PIECES][FX_LAYERS];
    double depths[FX_PIECES][FX_LAYERS][FX_DEPTHS];
    gb_waste wastes[FX_ROWS];
    gb_own_label labels[FX_ROWS];
    gb_own_pack packs[FX_ROWS];
    const gb_mix *mixes[FX_ROWS];
} fx_job;

/* No pieces; mixer of 6 ft3 without a mass limit, no pace, damp sand, no weather. */
void fx_empty(fx_job *f);
gb_piece *fx_piece(fx_job *f, const char *name, gb_piece_kind kind, size_t count,
                   double length_m, double width_m);
/* Adds a layer to the piece added last; no depth when depth_m is NaN. */
gb_layer *fx_layer(fx_job *f, gb_layer_kind kind, const gb_mix *mix, double depth_m);
void fx_depths(fx_job *f, gb_layer *layer, const double *depths_m, size_t count);
/* A piece that is one plain volume of a mix. */
void fx_volume(fx_job *f, const gb_mix *mix, double volume_m3);
void fx_waste(fx_job *f, const char *of, double share);
void fx_label(fx_job *f, const gb_mix *mix, double bag_kg, double yield_m3,
              bool measured);
void fx_pack(fx_job *f, const gb_material *material, double kg);

/* Seven treads 5 ft x 14 in at 1-1/4 in and a landing 5 ft x 6 ft at 1-1/2 in, bed 1:4
   with 10 % waste; 1/16 in of slurry on every scored back, 20 % waste; sand 10 % waste;
   a mixer of 6 ft3 and 750 lb, 3 treads an hour. */
void fx_library(fx_job *f);

/* A mix of its own materials and parts, to be varied. Points into itself. */
typedef struct fx_mix {
    gb_material materials[3];
    gb_part parts[3];
    gb_mix mix;
} fx_mix;

/* cement : lime : sand; a part of volume 0 is left out. */
void fx_site_mix(fx_mix *m, double cement, double lime, double sand,
                 gb_consistency consistency);

void fx_open(gb_arena *arena);
/* The plan of a job that must have one. */
void fx_plan(const fx_job *f, gb_arena *arena, gb_plan *plan);
const gb_mix_plan *fx_of(const gb_plan *plan, const char *id);
const gb_supply_need *fx_supply(const gb_plan *plan, const char *name);

/* The caution of that code, or NULL; and how often it is there. */
const gb_caution *fx_caution(const gb_mix_plan *mix, gb_caution_code code);
size_t fx_cautions(const gb_mix_plan *mix, gb_caution_code code);

/* |got - want| <= slack; two NaN are near. */
bool fx_near(double got, double want, double slack);
/* The same to 1e-12 of want: for figures that differ by rounding alone. */
bool fx_same(double got, double want);

/* A small linear congruential generator (constants of Numerical Recipes): the same jobs
   on every machine. */
typedef struct fx_random {
    uint32_t state;
} fx_random;
/* Generators of neighbouring seeds are far apart. */
fx_random fx_seeded(unsigned seed);
double fx_between(fx_random *r, double low, double high);
size_t fx_whole(fx_random *r, size_t low, size_t high);

/* A job of one to six pieces in one bed mix (site mix or blend), with random sizes,
   depths, waste, mixer, mass limit and pace. */
void fx_random_job(fx_job *f, fx_random *r);

#endif
