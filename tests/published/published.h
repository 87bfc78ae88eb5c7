/* Outside checks: figures as other people printed them, against what the product makes
   of the same question. One folder for each source, one table for each kind of figure.

   Sources (the standard or book; a row that was not read there says so by its status):
   - aci-211: ACI 211.1-91, its tables and example 1 (tables read in reprints, the example
     from memory); PCA EB001; course examples after it, their slips kept
   - aci-318: ACI 318 and 301, required average strength, as trade articles and course
     texts print it; UFGS 03300
   - andalucia-slurry: Junta de Andalucia, Base de Costes de la Construccion 2024-01,
     "Lechada de cemento"
   - ansi-a108: ANSI A108.1A, floor bed of dry or damp sand (from memory)
   - api-cement: oil-field cementing practice, API classes A and G
   - army-en5466: US Army course EN 5466, Concrete and Masonry, moisture correction
   - astm-c270: ASTM C270 as printed by BIA M1 (Masonry Magazine, March 1978) and Beall,
     Masonry and Concrete (McGraw-Hill)
   - astm-c476: ASTM C476; Taly, Design of Reinforced Masonry Structures; Masonry
     Magazine, February 1994 and September 2015; Amrhein, Reinforced Masonry
     Engineering Handbook (from memory)
   - bed-practice: NAVEDTRA 14044 chapter 7; Natural Stone Institute, Dimension Stone
     Design Manual 3.1.1; common practice of stone setting
   - brick-mortar: NAVEDTRA 14045 table 4-5 and BIA Technical Note 10 (from memory but
     for two cells; by geometry)
   - bucket: US gallon of 231 in3 (NIST Handbook 44 appendix C), common site figures;
     NIOSH lifting equation
   - building-trades-pocketbook: Building Trades Pocketbook, rubble masonry
   - chudley: Chudley, Building Construction Handbook, designations of mortar; BS EN 998-2
   - cmaa: CMAA handbook, materials for one m3 of mortar (from memory in part)
   - concrete-bags: yields that bags of dry concrete print, no maker named
   - concrete-construction: Concrete Construction, Q&A "Volume of grout"
   - course-notes: quantity-surveying course notes with a fixed dry-to-wet factor
   - cpwd: CPWD Delhi Analysis of Rates, coefficients for cement consumption
   - cpwd-slurry: CPWD specification wording and ICAR lesson 20, slurry by area
   - en-459: data sheets of natural hydraulic limes to EN 459-1, no maker named
   - exposure: IRC table R402.2 as reprinted; ACI 318-14 and -19, ACI 332-20 (second hand,
     air from memory); EN 206-1:2000 table F.1; BS EN 1992 pairs of cylinder and cube
   - fm-5-428: FM 5-428 appendix A, rounded conversions; trade constants of water
   - gillette-hill: Gillette and Hill, Concrete Construction: Methods and Costs, 1908
   - is-456: IS 456, surface water of sand
   - masonry-magazine-tms602: TMS 602 (ACI 530.1 / ASCE 6) article 1.8 C and D as printed
     in Masonry Magazine, September 2004, and by a masonry contractors' association
   - mixer-example: a mixer's mass limit, trade article; drum shares, common practice
   - material-figures: gravities and loose densities of materials in print
   - navy-ea: NAVEDTRA 14070 and 14071, Engineering Aid; NRMCA CIP 8
   - nhbc: NHBC Standards 3.1.4 after BS 8500-2, standardised prescribed concretes
   - nominal-concrete: IS 456; BS CP114; Gillette and Hill 1908; Griffith 1916; rules 41
   and 42
   - ontario-code: Ontario Building Code, Division B 9.20
   - pca-small-jobs: PCA Homeowner's Guide as printed by Beall, figure 3-3; its SI twin
   (from memory)
   - pointing-practice: joints of slabs by geometry; NPS Preservation Brief 2; CPWD
   - r-quantiles: R 4.2.2, package stats, normal and Student; a t table in print (from
   memory)
   - sand-practice: bulking of sand after SP 23, PCA and course texts (partly from memory)
   - settlement-tests: field test of bulking, worked cases of course texts
   - shipped-mixes: no source; every mix of the table is planned in each of its uses
   - slurry-practice: common practice of stone slurry; ANSI A108.1A (from memory)
   - stone-practice: BIA Technical Note 14A and M1-88; Beall; UFGS 03301A; common practice
   - stone-weights: Gillette and Hill, gravities of stone; Beall; notes on lifting
   granite; ASTM C615, C616, C568 (from memory)
   - us-navy-builder: NAVEDTRA 14043 and 14045, rule 38, block and the mortar of walls
   - water-figures: Gillette and Hill; common practice; water of plastic and stiff mortar
   - yeh-1998: 1030 laboratory concretes by mass and their strengths; see the folder's
   origin.txt

   A printed figure that the product does not meet stays, with the reason beside it as
   `known_difference`; the check then fails as soon as the two agree. */
#ifndef PUBLISHED_H
#define PUBLISHED_H

#include "gaugebox/gaugebox.h"

/* How a figure got here. */
typedef enum pub_status {
    PUB_READ,        /* read in the named source */
    PUB_SECOND_HAND, /* read in another work that quotes the source */
    PUB_FROM_MEMORY, /* from memory of the named source */
    PUB_PRACTICE,    /* common practice, with no standard behind it */
    PUB_DERIVED      /* arithmetic on printed figures, stated beside the row */
} pub_status;

/* One printed figure. The tolerance is half the last printed digit or a percentage that
   the table gives the reason of; exactly one of the two is set. */
typedef struct pub_figure {
    const char *id;
    const char *source;
    pub_status status;
    double printed;
    double tolerance;
    double percent;
    const char *known_difference;
} pub_figure;

/* A printed range, both ends counted in. */
typedef struct pub_range {
    const char *id;
    const char *source;
    pub_status status;
    double low, high;
    const char *known_difference;
} pub_range;

/* Expects the printed figure, or, with a known difference, that it is still not met.
   The deviation of each row is logged (run the test with --verbose to see it). */
void pub_check(const pub_figure *figure, double got);
void pub_check_range(const pub_range *range, double got);
/* The same for one of several things that a row holds for. */
void pub_check_for(const char *what, const pub_figure *figure, double got);
void pub_check_range_for(const char *what, const pub_range *range, double got);

/* A number in a unit of the product's table as SI, and back; unknown units abort. */
double pub_si(gb_kind kind, const char *unit, double number);

/* Weather that is stated for the day; NaN for what is not. */
gb_weather pub_weather(double air_f, double low_f, double wind_mph);
double pub_in(gb_kind kind, const char *unit, double si);

/* The shipped mix table. What it lends lives until pub_close. */
typedef struct pub_table {
    gb_arena arena;
    gb_diags diags;
    gb_mix_table *mixes;
} pub_table;

void pub_open(pub_table *table);
void pub_close(pub_table *table);
const gb_mix *pub_mix(pub_table *table, const char *id);
const gb_material *pub_material(pub_table *table, const char *name);

/* The loose volumes of one kind among the parts of a mix. */
double pub_parts(const gb_mix *mix, gb_material_kind kind);

/* A printed proportion of a shipped mix: volumes of one kind of material to one of
   cement, or of cement and lime together. */
typedef struct pub_proportion {
    const char *mix;
    gb_material_kind part;
    pub_range volumes;
} pub_proportion;
/* To one of cement, or of cement and lime together. */
typedef enum pub_base { PUB_TO_CEMENT, PUB_TO_BINDER } pub_base;
void pub_check_proportions(const pub_proportion *rows, size_t count, pub_base base);

/* A mix of loose volumes that claims something, and the one limit that it misses by the
   source's printed ends: GB_NO_RATIO when it conforms. `unknown`: the source has no
   proportions for such cement. */
typedef struct pub_edge {
    const char *id;
    gb_claim claim;
    double portland, n, s, m; /* the last three masonry cements by type */
    double lime, sand, stone;
    gb_ratio missed;
    gb_side side;
    double limit;
    bool unknown;
} pub_edge;
/* Expects the limit and the one caution of it, or neither. */
void pub_check_edges(const pub_edge *rows, size_t count);

/* Fresh water at 1000 kg/m3, as the product counts it (fm-5-428 checks the product's own
   figure). */
gb_volume pub_water_volume(gb_mass mass);
gb_mass pub_water_mass(gb_volume volume);

/* The recipe of one usual bag of the mix; aborts when there is none. */
gb_recipe pub_recipe(const gb_mix *mix);
/* Mass of one kind of material in one m3 of a shipped mix. */
double pub_kind_per_m3(const gb_mix *mix, gb_material_kind kind);

/* A mortar that is not shipped: volumes of shipped materials, plastic, 5 % air, its water
   computed. A bulk density of 0 takes the shipped one. */
typedef struct pub_ratio {
    double cement, lime, sand;
    double cement_kg_m3, sand_kg_m3;
} pub_ratio;
typedef struct pub_mortar {
    gb_material material[3];
    gb_part part[3];
    size_t cement, lime, sand; /* where each is in `part`; lime 0 when there is none */
    gb_mix mix;
} pub_mortar;
void pub_make_mortar(pub_table *table, const pub_ratio *ratio, pub_mortar *mortar);

/* Mass of one part, or its gauged volume, in one m3 of the mortar. */
double pub_kg_per_m3(const pub_mortar *mortar, size_t part);
double pub_m3_per_m3(const pub_mortar *mortar, size_t part);

/* Neat paste of cement and water: the shipped slurry with its water as stated. */
typedef struct pub_paste {
    gb_material cement;
    gb_part part;
    gb_mix mix;
} pub_paste;
void pub_make_paste(pub_table *table, double water_per_cement, double gravity,
                    pub_paste *paste);

/* A concrete by mass: kg of each, the gravities of its aggregates, its air. */
typedef struct pub_masses {
    double cement, sand, coarse, water;
    double sand_gravity, coarse_gravity;
    double air;
} pub_masses;
typedef struct pub_concrete {
    gb_material material[3];
    gb_part part[3];
    gb_mix mix;
} pub_concrete;
void pub_make_concrete(pub_table *table, const pub_masses *masses,
                       pub_concrete *concrete);

/* A concrete to be proportioned, in the units of its table: in, psi, lb/ft3, lb/yd3; or
   mm, MPa, kg/m3. 0 stands for what is not stated. */
typedef struct pub_asked {
    gb_system table;
    double average, specified;
    double ratio, water;
    double slump, largest;
    gb_air_level air;
    gb_attack attack;
    double cement_gravity, sand_gravity, stone_gravity;
    double sand_absorption, stone_absorption; /* shares */
    double sand_moisture, stone_moisture;
    bool air_dry;
    double fineness, rodded;
} pub_asked;
gb_concrete pub_ask(const pub_asked *asked);
/* What the sources of US examples take for water: 62.4 lb/ft3. */
gb_density pub_us_water(void);
/* Its proportions with that water; the test fails when there are none. */
gb_proportions pub_proportion_of(const gb_concrete *concrete, gb_density water);

/* The volume of one layer, all pieces, taken off by the product; lengths in metres. */
typedef struct pub_laid {
    gb_layer_kind kind;
    double length, width, depth;
    size_t count;
} pub_laid;
gb_take pub_take(const pub_laid *laid);

/* A job of one piece with one layer, planned by the product. Weather and pace are not
   stated and the mixer takes a cubic metre, until the caller says else. */
typedef struct pub_job {
    gb_job job;
    gb_piece piece;
    gb_layer layer;
    double depth;
    const gb_mix *mixes[1];
    gb_waste waste;
    gb_plan plan;
} pub_job;
void pub_volume_job(pub_job *job, const gb_mix *mix, gb_volume volume);
void pub_laid_job(pub_job *job, const gb_mix *mix, const pub_laid *laid);
void pub_add_waste(pub_job *job, double share);
void pub_plan(pub_table *table, pub_job *job);

/* The usual water of one bag with dry sand, as a plan of just that bag states it. */
gb_volume pub_water_of_bag(pub_table *table, const gb_mix *mix);

#endif
