#include "gaugebox/quantity.h"
#include "unit/quantity/exact.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>

static const double UNTOUCHED = -12345.0;

static bool same(double got, double wanted) {
    return fabs(got - wanted) <= 1e-14 * fabs(wanted);
}

static const struct {
    const char *id;
    const char *text;
    gb_fault fault;
    double first;
    double second;
} SIZES[] = {
    {"x", "5ft x 14in", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"X", "5ft X 14in", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"×", "5 ft × 14 in", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"by", "1200 mm by 350 mm", GB_NO_FAULT, 1.2, 0.35},
    {"by, US", "5 ft by 14 in", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"no spaces", "5ftx14in", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"× without spaces", "5ft×14in", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"by without spaces", "5ftby14in", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"marks", "5' x 1' 2''", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"primes", "5′ × 1′ 2″", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"two terms each", "4ft 6-1/2in x 1ft 2-1/4in", GB_NO_FAULT, 54.5 * IN, 14.25 * IN},
    {"vulgar fractions", "4½ in x 2¼ in", GB_NO_FAULT, 4.5 * IN, 2.25 * IN},
    {"a vulgar behind a space", "4 ½ in x ¾ in", GB_NO_FAULT, 4.5 * IN, 0.75 * IN},
    {"two systems", "5 ft x 350 mm", GB_NO_FAULT, 60 * IN, 0.35},
    {"spaces around", "  5 ft  x  14 in  ", GB_NO_FAULT, 60 * IN, 14 * IN},
    {"non-breaking spaces", "5\u00a0ft\u00a0×\u00a014\u00a0in", GB_NO_FAULT, 60 * IN,
     14 * IN},
    {"order is kept", "14 in x 5 ft", GB_NO_FAULT, 14 * IN, 60 * IN},
    {"empty", "", GB_FAULT_EMPTY, 0, 0},
    {"spaces", "   ", GB_FAULT_EMPTY, 0, 0},
    {"one length", "5ft", GB_FAULT_NUMBER, 0, 0},
    {"no second", "5ft x", GB_FAULT_EMPTY, 0, 0},
    {"no first", "x 14in", GB_FAULT_EMPTY, 0, 0},
    {"an x alone", "x", GB_FAULT_EMPTY, 0, 0},
    {"three lengths", "5ft x 14in x 2in", GB_FAULT_MORE, 0, 0},
    {"three lengths, by", "5ft x 14in by 2in", GB_FAULT_MORE, 0, 0},
    {"two signs", "5ft xx 14in", GB_FAULT_NUMBER, 0, 0},
    {"first is bare", "5 x 14in", GB_FAULT_NO_UNIT, 0, 0},
    {"second is bare", "5ft x 14", GB_FAULT_NO_UNIT, 0, 0},
    {"both are bare", "5 x 14", GB_FAULT_NO_UNIT, 0, 0},
    {"second is negative", "5ft x -14in", GB_FAULT_NEGATIVE, 0, 0},
    {"first is negative", "-5ft x 14in", GB_FAULT_NEGATIVE, 0, 0},
    {"first is a mass", "5 lb x 14 in", GB_FAULT_OTHER_KIND, 0, 0},
    {"second is an area", "5 ft x 14 in2", GB_FAULT_OTHER_KIND, 0, 0},
    {"second is unknown", "5 ft x 14 cubits", GB_FAULT_UNIT, 0, 0},
    {"second carries", "5 ft x 1 ft 13 in", GB_FAULT_CARRY, 0, 0},
    {"a comma", "1,2 m x 0.35 m", GB_FAULT_COMMA, 0, 0},
    {"an exponent", "1e3 mm x 350 mm", GB_FAULT_EXPONENT, 0, 0},
    {"a fraction of nothing", "5 ft x 1/0 in", GB_FAULT_FRACTION, 0, 0},
    {"an asterisk", "5 ft * 14 in", GB_FAULT_NUMBER, 0, 0},
    {"65 bytes", "5 ft x 14 in                                                     ",
     GB_FAULT_LONG, 0, 0},
};

Test(size, rows) {
    for (size_t i = 0; i < sizeof SIZES / sizeof SIZES[0]; i++) {
        gb_length first = {UNTOUCHED};
        gb_length second = {UNTOUCHED};
        gb_fault fault = gb_parse_size(SIZES[i].text, &first, &second);
        bool good = SIZES[i].fault == GB_NO_FAULT;
        cr_expect(fault == SIZES[i].fault, "%s: \"%s\" is fault %d, not %d", SIZES[i].id,
                  SIZES[i].text, fault, SIZES[i].fault);
        cr_expect(same(first.m, good ? SIZES[i].first : UNTOUCHED), "%s: first is %.17g",
                  SIZES[i].id, first.m);
        cr_expect(same(second.m, good ? SIZES[i].second : UNTOUCHED),
                  "%s: second is %.17g", SIZES[i].id, second.m);
    }
}
