#include "gaugebox/concrete.h"

#include "gaugebox/count.h"

#include <math.h>

enum { SIZES = GB_NOMINAL_SIZES, BANDS = GB_SLUMP_BANDS, SYSTEMS = 2 };

/* ---- rows and columns -------------------------------------------------------------- */

/* Nominal sizes and slumps as each table prints them. */
static const double SIZE_IN[SIZES] = {0.375, 0.5, 0.75, 1, 1.5, 2, 3, 6};
static const double SIZE_MM[SIZES] = {9.5, 12.5, 19, 25, 37.5, 50, 75, 150};
static const double SLUMP_IN[BANDS][2] = {{1, 2}, {3, 4}, {6, 7}};
static const double SLUMP_MM[BANDS][2] = {{25, 50}, {75, 100}, {150, 175}};

static double metres(gb_system table, double in, double mm) {
    return table == GB_US ? gb_si(GB_LENGTH, "in", in) : gb_si(GB_LENGTH, "mm", mm);
}

static bool between(double x, double a, double b) {
    return !isnan(x) && !gb_under(x, gb_smaller(a, b)) && !gb_over(x, gb_larger(a, b));
}

gb_length gb_size_in_table(gb_system table, size_t size) {
    return (gb_length){metres(table, SIZE_IN[size], SIZE_MM[size])};
}

void gb_slump_in_table(gb_system table, size_t band, gb_length *least, gb_length *most) {
    least->m = metres(table, SLUMP_IN[band][0], SLUMP_MM[band][0]);
    most->m = metres(table, SLUMP_IN[band][1], SLUMP_MM[band][1]);
}

bool gb_nominal_size(gb_length largest, size_t *size) {
    for (size_t i = 0; i < SIZES; i++)
        if (between(largest.m, gb_size_in_table(GB_US, i).m,
                    gb_size_in_table(GB_METRIC, i).m)) {
            *size = i;
            return true;
        }
    return false;
}

bool gb_slump_band(gb_length slump, size_t *band) {
    for (size_t i = 0; i < BANDS; i++) {
        gb_length us[2];
        gb_length si[2];
        gb_slump_in_table(GB_US, i, &us[0], &us[1]);
        gb_slump_in_table(GB_METRIC, i, &si[0], &si[1]);
        if (between(slump.m, gb_smaller(us[0].m, si[0].m), gb_larger(us[1].m, si[1].m))) {
            *band = i;
            return true;
        }
    }
    return false;
}

/* ---- water and air ----------------------------------------------------------------- */

/* ACI 211.1-91, tables 6.3.3 and A1.5.3.3, read in reprints. 0: no cell. The SI cell of
   1-1/2 in with air and 1 to 2 in of slump is 150, in some copies 148. */
static const double WATER[SYSTEMS][2][BANDS][SIZES] = {
    [GB_US] = {{{350, 335, 315, 300, 275, 260, 220, 190},
                {385, 365, 340, 325, 300, 285, 245, 210},
                {410, 385, 360, 340, 315, 300, 270, 0}},
               {{305, 295, 280, 270, 250, 240, 205, 180},
                {340, 325, 305, 295, 275, 265, 225, 200},
                {365, 345, 325, 310, 290, 280, 260, 0}}},
    [GB_METRIC] = {{{207, 199, 190, 179, 166, 154, 130, 113},
                    {228, 216, 205, 193, 181, 169, 145, 124},
                    {243, 228, 216, 202, 190, 178, 160, 0}},
                   {{181, 175, 168, 160, 150, 142, 122, 107},
                    {202, 193, 184, 175, 165, 157, 133, 119},
                    {216, 205, 197, 184, 174, 166, 154, 0}}}};

/* In per cent; the same two tables. */
static const double AIR[GB_AIR_LEVELS][SIZES] = {
    [GB_AIR_TRAPPED] = {3, 2.5, 2, 1.5, 1, 0.5, 0.3, 0.2},
    [GB_AIR_MILD] = {4.5, 4.0, 3.5, 3.0, 2.5, 2.0, 1.5, 1.0},
    [GB_AIR_MODERATE] = {6.0, 5.5, 5.0, 4.5, 4.5, 4.0, 3.5, 3.0},
    [GB_AIR_SEVERE] = {7.5, 7.0, 6.0, 6.0, 5.5, 5.0, 4.5, 4.0}};

static gb_density per_volume(gb_system table, double number) {
    return (gb_density){gb_si(GB_DENSITY, table == GB_US ? "lb/yd3" : "kg/m3", number)};
}

gb_density gb_mixing_water(gb_system table, size_t band, size_t size, bool entrained) {
    double cell = WATER[table][entrained][band][size];
    return cell > 0 ? per_volume(table, cell) : (gb_density){GB_NONE};
}

gb_share gb_table_air(size_t size, gb_air_level level) {
    return (gb_share){AIR[level][size] / 100.0};
}

gb_share gb_air_tolerance(void) {
    return (gb_share){0.015};
}

gb_share gb_air_apart(void) {
    return (gb_share){0.01};
}

gb_density gb_shape_saving(gb_system table, gb_shape_of_stone shape) {
    static const double SAVED[SYSTEMS][GB_SHAPES_OF_STONE] = {
        [GB_US] = {[GB_SUBANGULAR] = 20, [GB_SOME_CRUSHED] = 35, [GB_ROUNDED] = 45},
        [GB_METRIC] = {[GB_SUBANGULAR] = 10, [GB_SOME_CRUSHED] = 20, [GB_ROUNDED] = 25}};
    return per_volume(table, SAVED[table][shape]);
}

/* ---- water to cement --------------------------------------------------------------- */

typedef struct point {
    double strength, plain, entrained; /* 0: no cell */
} point;

/* ACI 211.1-91 table 6.3.4(a), psi, read; table A1.5.3.4(a), MPa, from memory. */
static const point PSI[] = {{2000, 0.82, 0.74},
                            {3000, 0.68, 0.59},
                            {4000, 0.57, 0.48},
                            {5000, 0.48, 0.40},
                            {6000, 0.41, 0}};
static const point MPA[] = {{15, 0.79, 0.70}, {20, 0.69, 0.60}, {25, 0.61, 0.52},
                            {30, 0.54, 0.45}, {35, 0.47, 0.39}, {40, 0.42, 0}};

typedef struct curve {
    const point *points;
    size_t count; /* with the last one that has a cell */
    const char *unit;
} curve;

static curve curve_of(gb_system table, bool entrained) {
    curve c = {.points = PSI, .count = sizeof PSI / sizeof PSI[0], .unit = "psi"};
    if (table == GB_METRIC)
        c = (curve){.points = MPA, .count = sizeof MPA / sizeof MPA[0], .unit = "MPa"};
    if (entrained)
        c.count--;
    return c;
}

static double ratio_at(const point *p, bool entrained) {
    return entrained ? p->entrained : p->plain;
}

void gb_strength_range(gb_system table, bool entrained, gb_pressure *least,
                       gb_pressure *most) {
    curve c = curve_of(table, entrained);
    least->pa = gb_si(GB_PRESSURE, c.unit, c.points[0].strength);
    most->pa = gb_si(GB_PRESSURE, c.unit, c.points[c.count - 1].strength);
}

/* The points about a strength in the curve's own unit. */
static bool points_about(curve c, double f, bool entrained, gb_between *p) {
    if (!between(f, c.points[0].strength, c.points[c.count - 1].strength))
        return false;
    size_t i = 1;
    while (i + 1 < c.count && f > c.points[i].strength)
        i++;
    const point *low = &c.points[i - 1];
    const point *high = &c.points[i];
    *p = (gb_between){low->strength, high->strength, ratio_at(low, entrained),
                      ratio_at(high, entrained)};
    return true;
}

static double along(const gb_between *p, double at) {
    return p->low + (p->high - p->low) * ((at - p->from) / (p->to - p->from));
}

double gb_ratio_of_strength(gb_system table, gb_pressure average, bool entrained) {
    curve c = curve_of(table, entrained);
    double f = gb_to_unit(gb_find_unit(GB_PRESSURE, c.unit), average.pa);
    gb_between p;
    return points_about(c, f, entrained, &p) ? gb_round(along(&p, f), 0.01, GB_DOWN)
                                             : GB_NONE;
}

bool gb_ratio_points(gb_system table, gb_pressure average, bool entrained,
                     gb_between *points) {
    curve c = curve_of(table, entrained);
    double f = gb_to_unit(gb_find_unit(GB_PRESSURE, c.unit), average.pa);
    gb_between p;
    if (!points_about(c, f, entrained, &p))
        return false;
    p.from = gb_si(GB_PRESSURE, c.unit, p.from);
    p.to = gb_si(GB_PRESSURE, c.unit, p.to);
    *points = p;
    return true;
}

/* Table 6.3.4(b); 0: no limit. */
double gb_ratio_of_attack(gb_attack attack, bool resisting) {
    static const double MOST[GB_ATTACKS] = {[GB_FROST] = 0.50,
                                            [GB_FROST_THIN] = 0.45,
                                            [GB_SULFATE] = 0.45,
                                            [GB_SULFATE_THIN] = 0.40};
    if (attack == GB_NO_ATTACK)
        return GB_NONE;
    bool sulfate = attack == GB_SULFATE || attack == GB_SULFATE_THIN;
    return MOST[attack] + (sulfate && resisting ? 0.05 : 0);
}

/* ---- coarse aggregate -------------------------------------------------------------- */

/* Table 6.3.6, the same in both systems; 3 and 6 in from memory. */
enum { FINENESSES = 4 };
static const double FINENESS[FINENESSES] = {2.40, 2.60, 2.80, 3.00};
static const double COARSE[SIZES][FINENESSES] = {
    {0.50, 0.48, 0.46, 0.44}, {0.59, 0.57, 0.55, 0.53}, {0.66, 0.64, 0.62, 0.60},
    {0.71, 0.69, 0.67, 0.65}, {0.75, 0.73, 0.71, 0.69}, {0.78, 0.76, 0.74, 0.72},
    {0.82, 0.80, 0.78, 0.76}, {0.87, 0.85, 0.83, 0.81}};

bool gb_coarse_points(size_t size, double fineness, gb_between *points) {
    if (!between(fineness, FINENESS[0], FINENESS[FINENESSES - 1]))
        return false;
    size_t i = 1;
    while (i + 1 < FINENESSES && fineness > FINENESS[i])
        i++;
    const double *row = COARSE[size];
    *points = (gb_between){FINENESS[i - 1], FINENESS[i], row[i - 1], row[i]};
    return true;
}

gb_share gb_coarse_share(size_t size, double fineness) {
    gb_between p;
    if (!gb_coarse_points(size, fineness, &p))
        return (gb_share){GB_NONE};
    return (gb_share){along(&p, fineness)};
}

double gb_placed(gb_placing placing) {
    static const double PLACED[GB_PLACINGS] = {
        [GB_BY_HAND_PLACED] = 1.0, [GB_PAVED] = 1.1, [GB_PUMPED] = 0.9};
    return PLACED[placing];
}

/* ---- first estimate of the mass ---------------------------------------------------- */

/* Tables 6.3.7.1 and A1.5.3.7.1, from memory. 2350 of 1-1/2 in with air stands above 2345
   of 2 in, while 3910 lb/yd3 is 2320: it is kept as printed. */
static const double MASS[SYSTEMS][2][SIZES] = {
    [GB_US] = {{3840, 3890, 3960, 4010, 4070, 4120, 4200, 4260},
               {3710, 3760, 3840, 3850, 3910, 3950, 4040, 4110}},
    [GB_METRIC] = {{2280, 2310, 2345, 2380, 2410, 2445, 2490, 2530},
                   {2200, 2230, 2275, 2290, 2350, 2345, 2405, 2435}}};

gb_density gb_first_mass(gb_system table, size_t size, bool entrained) {
    return per_volume(table, MASS[table][entrained][size]);
}

/* ---- slump ------------------------------------------------------------------------- */

/* Tables 6.3.1 and A1.5.3.1, the most; the least is 1 in (25 mm) of all. */
void gb_recommended_slump(gb_system table, gb_built built, gb_length *least,
                          gb_length *most) {
    static const double MOST_IN[GB_BUILTS] = {[GB_BUILT_REINFORCED_FOOTING] = 3,
                                              [GB_BUILT_PLAIN_FOOTING] = 3,
                                              [GB_BUILT_BEAM] = 4,
                                              [GB_BUILT_COLUMN] = 4,
                                              [GB_BUILT_SLAB] = 3,
                                              [GB_BUILT_MASS] = 2};
    least->m = metres(table, 1, 25);
    most->m = metres(table, MOST_IN[built], MOST_IN[built] * 25);
}

gb_length gb_slump_by_hand(gb_system table) {
    return (gb_length){metres(table, 1, 25)};
}
