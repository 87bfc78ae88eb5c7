#include "gaugebox/quantity.h"
#include "unit/quantity/exact.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>
#include <string.h>

static const double UNTOUCHED = -12345.0;

/* Two routes of a few roundings each end well within this. */
static bool same(double got, double wanted) {
    return fabs(got - wanted) <= 1e-14 * fabs(wanted);
}

static const struct {
    const char *id;
    gb_kind kind;
    const char *text;
    double si;
} READ[] = {
    /* feet and inches */
    {"ft without space", GB_LENGTH, "5ft", 5 * 12 * IN},
    {"ft", GB_LENGTH, "5 ft", 5 * 12 * IN},
    {"foot", GB_LENGTH, "1 foot", 12 * IN},
    {"feet", GB_LENGTH, "5 feet", 5 * 12 * IN},
    {"foot mark", GB_LENGTH, "5'", 5 * 12 * IN},
    {"foot prime", GB_LENGTH, "5′", 5 * 12 * IN},
    {"foot curly", GB_LENGTH, "5’", 5 * 12 * IN},
    {"foot curly open", GB_LENGTH, "5‘", 5 * 12 * IN},
    {"design: 4ft 6-1/2in", GB_LENGTH, "4ft 6-1/2in", (4 * 12 + 6.5) * IN},
    {"design: two quotes", GB_LENGTH, "4' 6 1/2''", (4 * 12 + 6.5) * IN},
    {"a double quote", GB_LENGTH, "4' 6 1/2\"", (4 * 12 + 6.5) * IN},
    {"primes", GB_LENGTH, "4′ 6½″", (4 * 12 + 6.5) * IN},
    {"primes without space", GB_LENGTH, "4′6″", (4 * 12 + 6) * IN},
    {"two single primes", GB_LENGTH, "4′ 6′′", (4 * 12 + 6) * IN},
    {"curly quotes", GB_LENGTH, "4’ 6”", (4 * 12 + 6) * IN},
    {"curly quotes, opening", GB_LENGTH, "4‘ 6“", (4 * 12 + 6) * IN},
    {"marks without space", GB_LENGTH, "4'6''", (4 * 12 + 6) * IN},
    {"ft in without space", GB_LENGTH, "4ft6in", (4 * 12 + 6) * IN},
    {"ft in, mixed, without space", GB_LENGTH, "4ft6-1/2in", (4 * 12 + 6.5) * IN},
    {"2 in without space", GB_LENGTH, "4ft2in", (4 * 12 + 2) * IN},
    {"3 in without space", GB_LENGTH, "4ft3in", (4 * 12 + 3) * IN},
    {"3/4 in without space", GB_LENGTH, "4ft3/4in", (4 * 12 + 0.75) * IN},
    {"2-1/2 in without space", GB_LENGTH, "4ft2-1/2in", (4 * 12 + 2.5) * IN},
    {"3 1/2 in without space", GB_LENGTH, "4ft3 1/2in", (4 * 12 + 3.5) * IN},
    {"3½ in without space", GB_LENGTH, "4ft3½in", (4 * 12 + 3.5) * IN},
    {"all spaces", GB_LENGTH, "4 ft 6 1/2 in", (4 * 12 + 6.5) * IN},
    {"many spaces between terms", GB_LENGTH, "4   ft   6   in", (4 * 12 + 6) * IN},
    {"no inches", GB_LENGTH, "5 ft 0 in", 5 * 12 * IN},
    {"no feet", GB_LENGTH, "0 ft 6 in", 6 * IN},
    {"just below a foot more", GB_LENGTH, "11ft 11-15/16in", (11 * 12 + 11.9375) * IN},
    {"three terms", GB_LENGTH, "3 yd 2 ft 11 in", (3 * 36 + 2 * 12 + 11) * IN},
    {"yd", GB_LENGTH, "2 yd", 2 * 36 * IN},
    /* inches and their fractions */
    {"design: 1-1/4 in", GB_LENGTH, "1-1/4 in", 1.25 * IN},
    {"mixed, a space", GB_LENGTH, "1 1/4 in", 1.25 * IN},
    {"mixed, close", GB_LENGTH, "1-1/4in", 1.25 * IN},
    {"mixed, en dash", GB_LENGTH, "1–1/4 in", 1.25 * IN},
    {"mixed, minus sign", GB_LENGTH, "1−1/4 in", 1.25 * IN},
    {"vulgar 1¼", GB_LENGTH, "1¼ in", 1.25 * IN},
    {"vulgar 1 ¼", GB_LENGTH, "1 ¼ in", 1.25 * IN},
    {"vulgar 4½", GB_LENGTH, "4½ in", 4.5 * IN},
    {"vulgar 4 ½", GB_LENGTH, "4 ½ in", 4.5 * IN},
    {"vulgar ½", GB_LENGTH, "½ in", 0.5 * IN},
    {"vulgar ¾", GB_LENGTH, "¾in", 0.75 * IN},
    {"vulgar ⅛", GB_LENGTH, "⅛ in", 0.125 * IN},
    {"vulgar ⅜", GB_LENGTH, "2⅜ in", 2.375 * IN},
    {"vulgar ⅝", GB_LENGTH, "⅝ in", 0.625 * IN},
    {"vulgar ⅞", GB_LENGTH, "⅞ in", 0.875 * IN},
    {"vulgar ⅓", GB_LENGTH, "⅓ in", 1.0 / 3.0 * IN},
    {"vulgar ⅔", GB_LENGTH, "⅔ in", 2.0 / 3.0 * IN},
    {"fraction slash", GB_LENGTH, "1⁄4 in", 0.25 * IN},
    {"fraction", GB_LENGTH, "1/4 in", 0.25 * IN},
    {"fraction over one, alone", GB_LENGTH, "5/4 in", 1.25 * IN},
    {"thirty-seconds", GB_LENGTH, "1/32 in", 0.03125 * IN},
    {"point first", GB_LENGTH, ".5 in", 0.5 * IN},
    {"decimals", GB_LENGTH, "6.625 in", 6.625 * IN},
    {"leading zeros", GB_LENGTH, "006 in", 6 * IN},
    {"inch", GB_LENGTH, "1 inch", IN},
    {"inches", GB_LENGTH, "14 inches", 14 * IN},
    {"inch mark", GB_LENGTH, "14''", 14 * IN},
    {"inch prime", GB_LENGTH, "14″", 14 * IN},
    {"inch curly", GB_LENGTH, "14”", 14 * IN},
    {"nothing", GB_LENGTH, "0 in", 0},
    /* metric */
    {"design: 38 mm", GB_LENGTH, "38 mm", 0.038},
    {"mm without space", GB_LENGTH, "38mm", 0.038},
    {"cm", GB_LENGTH, "3.8 cm", 0.038},
    {"m", GB_LENGTH, "1.2 m", 1.2},
    {"m and cm", GB_LENGTH, "1 m 5 cm", 1.05},
    {"15 digits", GB_LENGTH, "999999999999999 mm", 999999999999.999},
    {"15 digits with a point", GB_LENGTH, "1.23456789012345 m", 1.23456789012345},
    /* spaces */
    {"spaces around", GB_LENGTH, "   5 ft  ", 5 * 12 * IN},
    {"64 bytes", GB_LENGTH,
     "5 ft                                                            ", 5 * 12 * IN},
    {"non-breaking space", GB_LENGTH, "5\u00a0ft", 5 * 12 * IN},
    {"non-breaking spaces", GB_LENGTH, "4\u00a0ft\u00a06\u00a0in", (4 * 12 + 6) * IN},
    {"non-breaking in a mixed number", GB_LENGTH, "4\u00a01/2 in", 4.5 * IN},
    {"non-breaking before a vulgar", GB_LENGTH, "4\u00a0½ in", 4.5 * IN},
    {"non-breaking at the end", GB_LENGTH, "5 ft\u00a0", 5 * 12 * IN},
    {"non-breaking at the beginning", GB_LENGTH, "\u00a05 ft", 5 * 12 * IN},
    /* areas */
    {"ft2", GB_AREA, "40 ft2", 40 * 144 * IN2},
    {"ft²", GB_AREA, "40 ft²", 40 * 144 * IN2},
    {"sq ft", GB_AREA, "40 sq ft", 40 * 144 * IN2},
    {"yd2", GB_AREA, "2 yd2", 2 * 1296 * IN2},
    {"in2", GB_AREA, "100 in2", 100 * IN2},
    {"m2", GB_AREA, "3.7 m2", 3.7},
    {"m²", GB_AREA, "3.7m²", 3.7},
    {"cm2", GB_AREA, "500 cm2", 0.05},
    {"mm2", GB_AREA, "2500 mm2", 0.0025},
    /* volumes */
    {"design: 6 ft3", GB_VOLUME, "6 ft3", 6 * 1728 * IN3},
    {"ft³", GB_VOLUME, "6 ft³", 6 * 1728 * IN3},
    {"cu ft", GB_VOLUME, "6 cu ft", 6 * 1728 * IN3},
    {"1/2 ft3", GB_VOLUME, "1/2 ft3", 864 * IN3},
    {"cu yd", GB_VOLUME, "1-1/2 cu yd", 1.5 * 46656 * IN3},
    {"yd3", GB_VOLUME, "2 yd3", 2 * 46656 * IN3},
    {"in3", GB_VOLUME, "100 in3", 100 * IN3},
    {"design: 12 qt", GB_VOLUME, "12 qt", 12 * 231 / 4.0 * IN3},
    {"2½ qt", GB_VOLUME, "2½ qt", 2.5 * 231 / 4.0 * IN3},
    {"gal", GB_VOLUME, "5 gal", 5 * 231 * IN3},
    {"pt", GB_VOLUME, "1 pt", 231 / 8.0 * IN3},
    {"fl oz", GB_VOLUME, "8 fl oz", 8 * 231 / 128.0 * IN3},
    {"L", GB_VOLUME, "170 L", 0.17},
    {"l", GB_VOLUME, "170 l", 0.17},
    {"litre", GB_VOLUME, "1 litre", 0.001},
    {"litres", GB_VOLUME, "2.5 litres", 0.0025},
    {"liter", GB_VOLUME, "1 liter", 0.001},
    {"liters", GB_VOLUME, "2.5 liters", 0.0025},
    {"mL", GB_VOLUME, "500 mL", 0.0005},
    {"ml", GB_VOLUME, "500 ml", 0.0005},
    {"m3", GB_VOLUME, "0.1 m3", 0.1},
    {"m³", GB_VOLUME, "0.1 m³", 0.1},
    /* masses */
    {"design: 94 lb", GB_MASS, "94 lb", 94 * LB},
    {"lb without space", GB_MASS, "94lb", 94 * LB},
    {"lbs", GB_MASS, "80 lbs", 80 * LB},
    {"lb and oz", GB_MASS, "94 lb 8 oz", 94.5 * LB},
    {"lb and oz without space", GB_MASS, "94lb8oz", 94.5 * LB},
    {"oz", GB_MASS, "12 oz", 0.75 * LB},
    {"short ton", GB_MASS, "1-1/2 short ton", 3000 * LB},
    {"design: 25 kg", GB_MASS, "25 kg", 25},
    {"g", GB_MASS, "500 g", 0.5},
    {"kg and g", GB_MASS, "2 kg 500 g", 2.5},
    {"t", GB_MASS, "1.5 t", 1500},
    {"tonne", GB_MASS, "1 tonne", 1000},
    {"tonnes", GB_MASS, "2 tonnes", 2000},
    /* densities */
    {"lb/ft3", GB_DENSITY, "80 lb/ft3", 80 * LB / (1728 * IN3)},
    {"lb/ft³", GB_DENSITY, "80 lb/ft³", 80 * LB / (1728 * IN3)},
    {"lb/yd3", GB_DENSITY, "2700 lb/yd3", 2700 * LB / (46656 * IN3)},
    {"kg/m3", GB_DENSITY, "1400 kg/m3", 1400},
    /* temperatures */
    {"design: 40 F", GB_TEMP, "40 F", (40 - 32) * 5 / 9.0},
    {"F without space", GB_TEMP, "40F", (40 - 32) * 5 / 9.0},
    {"°F", GB_TEMP, "40 °F", (40 - 32) * 5 / 9.0},
    {"°F without space", GB_TEMP, "40°F", (40 - 32) * 5 / 9.0},
    {"freezing", GB_TEMP, "32 F", 0},
    {"zero F", GB_TEMP, "0 F", -32 * 5 / 9.0},
    {"where both meet", GB_TEMP, "-40 F", -40},
    {"design: 5 C", GB_TEMP, "5 C", 5},
    {"°C", GB_TEMP, "5 °C", 5},
    {"minus, hyphen", GB_TEMP, "-5 C", -5},
    {"minus, U+2212", GB_TEMP, "−5 C", -5},
    {"minus, en dash", GB_TEMP, "–5 C", -5},
    {"minus a half", GB_TEMP, "-½ C", -0.5},
    {"minus, mixed", GB_TEMP, "-4-1/2 C", -4.5},
    {"minus, point first", GB_TEMP, "-.5 C", -0.5},
    {"minus F", GB_TEMP, "-4 F", -20},
    {"tenths", GB_TEMP, "37.5 C", 37.5},
    /* times */
    {"design: 2h30m", GB_DURATION, "2h30m", 150 * 60},
    {"2h 30m", GB_DURATION, "2h 30m", 150 * 60},
    {"2 h 30 min", GB_DURATION, "2 h 30 min", 150 * 60},
    {"2-1/2 h", GB_DURATION, "2-1/2 h", 150 * 60},
    {"2½ h", GB_DURATION, "2½ h", 150 * 60},
    {"min", GB_DURATION, "20 min", 1200},
    {"m is minutes", GB_DURATION, "90 m", 5400},
    {"s", GB_DURATION, "45 s", 45},
    {"hr", GB_DURATION, "2 hr", 7200},
    {"hours", GB_DURATION, "48 hours", 48 * 3600},
    {"d", GB_DURATION, "1 d", 86400},
    {"day", GB_DURATION, "1 day", 86400},
    {"days", GB_DURATION, "3 days", 3 * 86400},
    {"four terms", GB_DURATION, "1 d 2 h 3 min 4 s", 86400 + 7200 + 180 + 4},
    /* shares and slopes */
    {"design: 7%", GB_SHARE, "7%", 0.07},
    {"7 %", GB_SHARE, "7 %", 0.07},
    {"12.5%", GB_SHARE, "12.5%", 0.125},
    {"½%", GB_SHARE, "½%", 0.005},
    {"0%", GB_SHARE, "0%", 0},
    {"over a whole", GB_SHARE, "150%", 1.5},
    {"design: 1/4in/ft", GB_SLOPE, "1/4in/ft", 0.25 / 12},
    {"1/4 in/ft", GB_SLOPE, "1/4 in/ft", 0.25 / 12},
    {"¼in/ft", GB_SLOPE, "¼in/ft", 0.25 / 12},
    {"1-1/4in/ft", GB_SLOPE, "1-1/4in/ft", 1.25 / 12},
    {"design: 1:48", GB_SLOPE, "1:48", 1 / 48.0},
    {"1½:12", GB_SLOPE, "1½:12", 1.5 / 12},
    {"0.5:12", GB_SLOPE, "0.5:12", 0.5 / 12},
    {"2% of slope", GB_SLOPE, "2%", 0.02},
    {"mm/m", GB_SLOPE, "20 mm/m", 0.02},
    /* speeds and paces */
    {"mph", GB_SPEED, "8 mph", 8 * 5280 * 12 * IN / 3600},
    {"km/h", GB_SPEED, "13 km/h", 13 / 3.6},
    {"m/s", GB_SPEED, "3.5 m/s", 3.5},
    {"design: 3 treads/h", GB_TREAD_PACE, "3 treads/h", 3 / 3600.0},
    {"tread/h", GB_TREAD_PACE, "1 tread/h", 1 / 3600.0},
    {"2-1/2 treads/h", GB_TREAD_PACE, "2-1/2 treads/h", 2.5 / 3600},
    {"design: 40 ft2/h", GB_AREA_PACE, "40 ft2/h", 40 * 144 * IN2 / 3600},
    {"ft²/h", GB_AREA_PACE, "40 ft²/h", 40 * 144 * IN2 / 3600},
    {"m2/h", GB_AREA_PACE, "4 m2/h", 4 / 3600.0},
    {"ft3/h", GB_VOLUME_PACE, "3 ft3/h", 3 * 1728 * IN3 / 3600},
    {"joint by area", GB_JOINT_RATE, "3.28 m/m2", 3.28},
    {"joint by area, US", GB_JOINT_RATE, "1 ft/ft2", 1 / 0.3048},
    {"mortar by 100 ft2", GB_MORTAR_RATE, "8.5 ft3/100 ft2", 8.5 * 0.3048 / 100},
    {"mortar by ft2", GB_MORTAR_RATE, "1/8 ft3/ft2", 0.3048 / 8},
    {"mortar by m2", GB_MORTAR_RATE, "0.026 m3/m2", 0.026},
    {"L/h", GB_VOLUME_PACE, "60 L/h", 0.06 / 3600},
    {"m3/h", GB_VOLUME_PACE, "0.1 m3/h", 0.1 / 3600},
};
_Static_assert(sizeof READ / sizeof READ[0] >= 110, "rows that are read");

Test(parse, reads_every_notation) {
    for (size_t i = 0; i < sizeof READ / sizeof READ[0]; i++) {
        double si = UNTOUCHED;
        gb_fault fault = gb_parse(READ[i].kind, READ[i].text, &si);
        cr_expect(fault == GB_NO_FAULT, "%s: \"%s\" is fault %d", READ[i].id,
                  READ[i].text, fault);
        if (fault == GB_NO_FAULT)
            cr_expect(same(si, READ[i].si), "%s: \"%s\" is %.17g, not %.17g", READ[i].id,
                      READ[i].text, si, READ[i].si);
    }
}

static const struct {
    const char *id;
    gb_kind kind;
    const char *text;
    gb_fault fault;
} REFUSED[] = {
    /* nothing there */
    {"empty", GB_LENGTH, "", GB_FAULT_EMPTY},
    {"spaces", GB_LENGTH, "   ", GB_FAULT_EMPTY},
    {"a non-breaking space", GB_LENGTH, "\u00a0", GB_FAULT_EMPTY},
    {"65 bytes", GB_LENGTH,
     "5 ft                                                             ", GB_FAULT_LONG},
    /* no number */
    {"nan", GB_LENGTH, "nan", GB_FAULT_NUMBER},
    {"nan with a unit", GB_LENGTH, "nan m", GB_FAULT_NUMBER},
    {"inf", GB_LENGTH, "inf", GB_FAULT_NUMBER},
    {"infinity with a unit", GB_LENGTH, "infinity m", GB_FAULT_NUMBER},
    {"a unit alone", GB_LENGTH, "in", GB_FAULT_NUMBER},
    {"a mark alone", GB_LENGTH, "'", GB_FAULT_NUMBER},
    {"a unit first", GB_LENGTH, "ft 5", GB_FAULT_NUMBER},
    {"a percent sign first", GB_SHARE, "% 5", GB_FAULT_NUMBER},
    {"a percent sign alone", GB_SHARE, "%", GB_FAULT_NUMBER},
    {"no numerator", GB_LENGTH, "/4 in", GB_FAULT_NUMBER},
    {"a plus sign", GB_LENGTH, "+5 ft", GB_FAULT_NUMBER},
    {"two minus signs", GB_TEMP, "--5 C", GB_FAULT_NUMBER},
    {"a minus alone", GB_TEMP, "-", GB_FAULT_NUMBER},
    {"a point alone", GB_LENGTH, ". in", GB_FAULT_NUMBER},
    {"nothing behind the point", GB_LENGTH, "5. in", GB_FAULT_NUMBER},
    {"a length by area as a length", GB_LENGTH, "3 m/m2", GB_FAULT_OTHER_KIND},
    {"a length as one by area", GB_JOINT_RATE, "3 m", GB_FAULT_OTHER_KIND},
    {"mortar by 10 ft2", GB_MORTAR_RATE, "8 ft3/10 ft2", GB_FAULT_UNIT},
    {"half a ratio", GB_SLOPE, "1:", GB_FAULT_NUMBER},
    {"the other half", GB_SLOPE, ":48", GB_FAULT_NUMBER},
    /* digits, exponents, commas, fractions */
    {"16 digits", GB_LENGTH, "1234567890123456 mm", GB_FAULT_DIGITS},
    {"16 digits with a point", GB_LENGTH, "1.234567890123456 m", GB_FAULT_DIGITS},
    {"16 decimals", GB_LENGTH, ".1234567890123456 m", GB_FAULT_DIGITS},
    {"16 digits above", GB_LENGTH, "1234567890123456/2 in", GB_FAULT_DIGITS},
    {"16 digits below", GB_LENGTH, "1/1234567890123456 in", GB_FAULT_DIGITS},
    {"1e3", GB_LENGTH, "1e3 mm", GB_FAULT_EXPONENT},
    {"1E3", GB_LENGTH, "1E3 mm", GB_FAULT_EXPONENT},
    {"1e400", GB_LENGTH, "1e400 m", GB_FAULT_EXPONENT},
    {"1e-3", GB_LENGTH, "1e-3 m", GB_FAULT_EXPONENT},
    {"1.5e+3", GB_LENGTH, "1.5e+3 mm", GB_FAULT_EXPONENT},
    {"-1e3", GB_TEMP, "-1e3 C", GB_FAULT_EXPONENT},
    {"a decimal comma", GB_LENGTH, "1,5 m", GB_FAULT_COMMA},
    {"a comma between thousands", GB_LENGTH, "1,200 mm", GB_FAULT_COMMA},
    {"1/0", GB_LENGTH, "1/0 in", GB_FAULT_FRACTION},
    {"0/0", GB_LENGTH, "0/0 in", GB_FAULT_FRACTION},
    {"1-1/0", GB_LENGTH, "1-1/0 in", GB_FAULT_FRACTION},
    {"a fraction over one behind a whole", GB_LENGTH, "1-5/4 in", GB_FAULT_FRACTION},
    {"a fraction of one behind a whole", GB_LENGTH, "1 4/4 in", GB_FAULT_FRACTION},
    {"1:0", GB_SLOPE, "1:0", GB_FAULT_FRACTION},
    {"0:0", GB_SLOPE, "0:0", GB_FAULT_FRACTION},
    /* no unit, or not one for this */
    {"bare", GB_LENGTH, "5", GB_FAULT_NO_UNIT},
    {"bare with a point", GB_LENGTH, "5.5", GB_FAULT_NO_UNIT},
    {"bare mixed number", GB_LENGTH, "1 1/4", GB_FAULT_NO_UNIT},
    {"bare and a space", GB_LENGTH, "5 ", GB_FAULT_NO_UNIT},
    {"bare temperature", GB_TEMP, "40", GB_FAULT_NO_UNIT},
    {"bare negative temperature", GB_TEMP, "-40", GB_FAULT_NO_UNIT},
    {"bare share", GB_SHARE, "0.07", GB_FAULT_NO_UNIT},
    {"bare slope", GB_SLOPE, "0.02", GB_FAULT_NO_UNIT},
    {"bare pace", GB_TREAD_PACE, "3", GB_FAULT_NO_UNIT},
    {"bare inches", GB_LENGTH, "5 ft 3", GB_FAULT_NO_UNIT},
    {"bare minutes", GB_DURATION, "2h30", GB_FAULT_NO_UNIT},
    {"furlongs", GB_LENGTH, "5 furlongs", GB_FAULT_UNIT},
    {"ton is two masses", GB_MASS, "5 ton", GB_FAULT_UNIT},
    {"capitals", GB_MASS, "5 KG", GB_FAULT_UNIT},
    {"small c", GB_TEMP, "5 c", GB_FAULT_UNIT},
    {"a degree sign alone", GB_TEMP, "5°", GB_FAULT_UNIT},
    {"a letter too many", GB_LENGTH, "5 ftx", GB_FAULT_UNIT},
    {"hexadecimal", GB_LENGTH, "0x10 in", GB_FAULT_UNIT},
    {"a range", GB_LENGTH, "3-4 in", GB_FAULT_UNIT},
    {"a range with an en dash", GB_LENGTH, "3–4 in", GB_FAULT_UNIT},
    {"5 ft3 as a length", GB_LENGTH, "5 ft3", GB_FAULT_OTHER_KIND},
    {"5ft3 as a length", GB_LENGTH, "5ft3", GB_FAULT_OTHER_KIND},
    {"5 ft² as a length", GB_LENGTH, "5 ft²", GB_FAULT_OTHER_KIND},
    {"5 ft as an area", GB_AREA, "5 ft", GB_FAULT_OTHER_KIND},
    {"5 lb as a volume", GB_VOLUME, "5 lb", GB_FAULT_OTHER_KIND},
    {"5 m as a volume", GB_VOLUME, "5 m", GB_FAULT_OTHER_KIND},
    {"8 oz as a volume", GB_VOLUME, "8 oz", GB_FAULT_OTHER_KIND},
    {"8 fl oz as a mass", GB_MASS, "8 fl oz", GB_FAULT_OTHER_KIND},
    {"a density as a mass", GB_MASS, "80 lb/ft3", GB_FAULT_OTHER_KIND},
    {"a slope as a length", GB_LENGTH, "1/4in/ft", GB_FAULT_OTHER_KIND},
    {"a speed as a time", GB_DURATION, "8 m/s", GB_FAULT_OTHER_KIND},
    {"a share as a length", GB_LENGTH, "5%", GB_FAULT_OTHER_KIND},
    {"a temperature as a length", GB_LENGTH, "5 C", GB_FAULT_OTHER_KIND},
    {"a foot mark as an area", GB_AREA, "4'", GB_FAULT_OTHER_KIND},
    {"an area's pace as treads", GB_TREAD_PACE, "40 ft2/h", GB_FAULT_OTHER_KIND},
    {"treads as an area's pace", GB_AREA_PACE, "3 treads/h", GB_FAULT_OTHER_KIND},
    /* below zero */
    {"-2 in", GB_LENGTH, "-2 in", GB_FAULT_NEGATIVE},
    {"-2 in, U+2212", GB_LENGTH, "−2 in", GB_FAULT_NEGATIVE},
    {"-40 lb", GB_MASS, "-40 lb", GB_FAULT_NEGATIVE},
    {"-7%", GB_SHARE, "-7%", GB_FAULT_NEGATIVE},
    {"-1:48", GB_SLOPE, "-1:48", GB_FAULT_NEGATIVE},
    {"-20 min", GB_DURATION, "-20 min", GB_FAULT_NEGATIVE},
    {"-.5 in", GB_LENGTH, "-.5 in", GB_FAULT_NEGATIVE},
    {"-½ in", GB_LENGTH, "-½ in", GB_FAULT_NEGATIVE},
    {"a space before", GB_LENGTH, "  -2 in", GB_FAULT_NEGATIVE},
    /* terms */
    {"4ft 13in", GB_LENGTH, "4ft 13in", GB_FAULT_CARRY},
    {"4ft 12in", GB_LENGTH, "4ft 12in", GB_FAULT_CARRY},
    {"terms that go up", GB_LENGTH, "6in 4ft", GB_FAULT_CARRY},
    {"the same unit twice", GB_LENGTH, "4ft 6in 3in", GB_FAULT_CARRY},
    {"2h 60m", GB_DURATION, "2h 60m", GB_FAULT_CARRY},
    {"1 lb 16 oz", GB_MASS, "1 lb 16 oz", GB_FAULT_CARRY},
    {"1 m 100 cm", GB_LENGTH, "1 m 100 cm", GB_FAULT_CARRY},
    {"1 m 1000 mm", GB_LENGTH, "1 m 1000 mm", GB_FAULT_CARRY},
    {"1 cm 10 mm", GB_LENGTH, "1 cm 10 mm", GB_FAULT_CARRY},
    {"1 yd 3 ft", GB_LENGTH, "1 yd 3 ft", GB_FAULT_CARRY},
    {"1 yd 36 in", GB_LENGTH, "1 yd 36 in", GB_FAULT_CARRY},
    {"4' 12''", GB_LENGTH, "4' 12''", GB_FAULT_CARRY},
    {"1 d 24 h", GB_DURATION, "1 d 24 h", GB_FAULT_CARRY},
    {"1 min 60 s", GB_DURATION, "1 min 60 s", GB_FAULT_CARRY},
    {"1 kg 1000 g", GB_MASS, "1 kg 1000 g", GB_FAULT_CARRY},
    {"1 t 1000 kg", GB_MASS, "1 t 1000 kg", GB_FAULT_CARRY},
    {"1 short ton 2000 lb", GB_MASS, "1 short ton 2000 lb", GB_FAULT_CARRY},
    /* something behind */
    {"12 in x", GB_LENGTH, "12 in x", GB_FAULT_MORE},
    {"a full stop", GB_LENGTH, "12 in.", GB_FAULT_MORE},
    {"a comma behind", GB_LENGTH, "5 ft, 3 in", GB_FAULT_MORE},
    {"a minus behind", GB_LENGTH, "5 ft -3 in", GB_FAULT_MORE},
    {"words behind two terms", GB_LENGTH, "5 ft 3 in deep", GB_FAULT_MORE},
    {"an inch mark too many", GB_LENGTH, "6'''", GB_FAULT_MORE},
    {"1:48x", GB_SLOPE, "1:48x", GB_FAULT_MORE},
    {"1:2:3", GB_SLOPE, "1:2:3", GB_FAULT_MORE},
    {"two temperatures", GB_TEMP, "5 C 3 C", GB_FAULT_MORE},
    {"two negative temperatures", GB_TEMP, "-5 C -3 C", GB_FAULT_MORE},
    {"two percent signs", GB_SHARE, "5 %%", GB_FAULT_MORE},
    {"two areas", GB_AREA, "5 ft2 3 in2", GB_FAULT_MORE},
    {"two volumes", GB_VOLUME, "1 gal 2 qt", GB_FAULT_MORE},
    /* control characters and broken UTF-8 */
    {"a tab first", GB_LENGTH, "\t5 ft", GB_FAULT_NUMBER},
    {"a tab before the unit", GB_LENGTH, "5\tft", GB_FAULT_UNIT},
    {"a tab in a mixed number", GB_LENGTH, "4\t1/2 in", GB_FAULT_UNIT},
    {"a tab between terms", GB_LENGTH, "5 ft\t3 in", GB_FAULT_MORE},
    {"a tab in a ratio", GB_SLOPE, "1:\t48", GB_FAULT_NUMBER},
    {"a tab behind a minus", GB_TEMP, "-\t5 C", GB_FAULT_NUMBER},
    {"a line feed behind", GB_LENGTH, "5 ft\n", GB_FAULT_MORE},
    {"a carriage return behind", GB_LENGTH, "5 ft\r", GB_FAULT_MORE},
    {"U+0001 before the unit", GB_LENGTH, "5\x01 ft", GB_FAULT_UNIT},
    {"U+007F first", GB_LENGTH, "\x7f 5 ft", GB_FAULT_NUMBER},
    {"a byte of no UTF-8 first", GB_LENGTH, "\xff 5 ft", GB_FAULT_NUMBER},
    {"a byte of no UTF-8 before the unit", GB_LENGTH, "5 \xff", GB_FAULT_UNIT},
    {"a byte of no UTF-8 behind", GB_LENGTH, "5 ft\xff", GB_FAULT_MORE},
    {"half a sign at the end", GB_LENGTH, "5\xc2", GB_FAULT_UNIT},
    {"half a sign before a space", GB_LENGTH, "5\xe2\x80 ft", GB_FAULT_UNIT},
    /* what follows a vulgar fraction is no part of its denominator */
    {"½2 in", GB_LENGTH, "½2 in", GB_FAULT_MORE},
    {"4½2 in", GB_LENGTH, "4½2 in", GB_FAULT_MORE},
    {"½% with a figure between", GB_SHARE, "½0%", GB_FAULT_MORE},
    /* a raised 2 or 3 is a part of a unit, never a digit of a number */
    {"5² ft", GB_LENGTH, "5² ft", GB_FAULT_UNIT},
    {"10³ mm", GB_LENGTH, "10³ mm", GB_FAULT_UNIT},
    {"² in", GB_LENGTH, "² in", GB_FAULT_NUMBER},
};
_Static_assert(sizeof REFUSED / sizeof REFUSED[0] >= 45, "rows that are refused");

Test(parse, refuses_with_the_right_fault) {
    for (size_t i = 0; i < sizeof REFUSED / sizeof REFUSED[0]; i++) {
        double si = UNTOUCHED;
        gb_fault fault = gb_parse(REFUSED[i].kind, REFUSED[i].text, &si);
        cr_expect(fault == REFUSED[i].fault, "%s: \"%s\" is fault %d, not %d (%.17g)",
                  REFUSED[i].id, REFUSED[i].text, fault, REFUSED[i].fault, si);
        if (fault != GB_NO_FAULT)
            cr_expect(si == UNTOUCHED, "%s: \"%s\" was written", REFUSED[i].id,
                      REFUSED[i].text);
    }
}

/* Refused, but with a fault that says it less well than another. */
static const struct {
    const char *id;
    const char *text;
    gb_fault wanted;
    const char *known_difference;
} OTHERWISE[] = {
    {"no denominator", "3/ in", GB_FAULT_NUMBER, "the stroke is taken for a unit"},
    {"two points", "1.2.3 m", GB_FAULT_NUMBER, "the second point is taken for a unit"},
};

Test(parse, refuses_with_another_fault) {
    for (size_t i = 0; i < sizeof OTHERWISE / sizeof OTHERWISE[0]; i++) {
        double si = UNTOUCHED;
        gb_fault fault = gb_parse(GB_LENGTH, OTHERWISE[i].text, &si);
        cr_expect(fault != GB_NO_FAULT && si == UNTOUCHED, "%s is read as %.17g",
                  OTHERWISE[i].id, si);
        cr_expect(fault != OTHERWISE[i].wanted, "%s: no difference any more (%s)",
                  OTHERWISE[i].id, OTHERWISE[i].known_difference);
    }
}

Test(parse, refuses_ten_thousand_digits) {
    static char digits[10001];
    memset(digits, '7', sizeof digits - 1);
    for (int kind = 0; kind < GB_KINDS; kind++) {
        double si = UNTOUCHED;
        gb_fault fault = gb_parse((gb_kind)kind, digits, &si);
        cr_expect(fault == GB_FAULT_LONG && si == UNTOUCHED, "kind %d: %d", kind, fault);
    }
    double number = UNTOUCHED;
    cr_expect(gb_parse_number(digits, &number) == GB_FAULT_LONG, "a number");
    cr_expect(number == UNTOUCHED, "a number");
}

/* Whatever bytes come, a text is read or refused, and a value is finite. */
Test(parse, every_pair_of_bytes_is_read_or_refused) {
    for (int a = 1; a < 256; a++)
        for (int b = 1; b < 256; b++) {
            const char text[] = {'4', (char)a, (char)b, ' ', 'i', 'n', '\0'};
            double si = UNTOUCHED;
            gb_fault fault = gb_parse(GB_LENGTH, text, &si);
            cr_expect(fault == GB_NO_FAULT ? isfinite(si) && si >= 0 : si == UNTOUCHED,
                      "bytes %02x %02x: fault %d, %g", a, b, fault, si);
        }
}

static const struct {
    const char *id;
    const char *text;
    gb_fault fault;
    double value;
} NUMBERS[] = {
    {"whole", "4", GB_NO_FAULT, 4},
    {"decimals", "2.65", GB_NO_FAULT, 2.65},
    {"mixed", "3-1/2", GB_NO_FAULT, 3.5},
    {"mixed, a space", "3 1/2", GB_NO_FAULT, 3.5},
    {"vulgar", "3½", GB_NO_FAULT, 3.5},
    {"vulgar alone", "¼", GB_NO_FAULT, 0.25},
    {"point first", ".5", GB_NO_FAULT, 0.5},
    {"zero", "0", GB_NO_FAULT, 0},
    {"spaces around", "  4  ", GB_NO_FAULT, 4},
    {"15 digits", "123456789012345", GB_NO_FAULT, 123456789012345.0},
    {"16 digits", "1234567890123456", GB_FAULT_DIGITS, 0},
    {"empty", "", GB_FAULT_EMPTY, 0},
    {"spaces", "   ", GB_FAULT_EMPTY, 0},
    {"below zero", "-4", GB_FAULT_NEGATIVE, 0},
    {"a unit", "4 in", GB_FAULT_MORE, 0},
    {"a percent sign", "4%", GB_FAULT_MORE, 0},
    {"two numbers", "4 5", GB_FAULT_MORE, 0},
    {"a comma", "1,5", GB_FAULT_COMMA, 0},
    {"an exponent", "1e3", GB_FAULT_EXPONENT, 0},
    {"a fraction over one", "1-5/4", GB_FAULT_FRACTION, 0},
    {"a fraction of nothing", "1/0", GB_FAULT_FRACTION, 0},
    {"nan", "nan", GB_FAULT_NUMBER, 0},
    {"inf", "inf", GB_FAULT_NUMBER, 0},
    {"a word", "four", GB_FAULT_NUMBER, 0},
    {"a raised figure", "5²", GB_FAULT_MORE, 0},
};

Test(parse, numbers_without_a_unit) {
    for (size_t i = 0; i < sizeof NUMBERS / sizeof NUMBERS[0]; i++) {
        double value = UNTOUCHED;
        gb_fault fault = gb_parse_number(NUMBERS[i].text, &value);
        cr_expect(fault == NUMBERS[i].fault, "%s: \"%s\" is fault %d (%.17g)",
                  NUMBERS[i].id, NUMBERS[i].text, fault, value);
        double wanted = NUMBERS[i].fault == GB_NO_FAULT ? NUMBERS[i].value : UNTOUCHED;
        cr_expect(same(value, wanted), "%s: \"%s\" is %.17g", NUMBERS[i].id,
                  NUMBERS[i].text, value);
    }
}
