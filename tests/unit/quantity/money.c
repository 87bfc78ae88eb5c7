#include "gaugebox/quantity.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <inttypes.h>
#include <string.h>

static const int64_t UNTOUCHED = -12345;

static const struct {
    const char *id;
    const char *text;
    int decimals;
    gb_fault fault;
    int64_t minor;
} PRICES[] = {
    {"two places", "14.50", 2, GB_NO_FAULT, 1450},
    {"one of two places", "14.5", 2, GB_NO_FAULT, 1450},
    {"none of two places", "14", 2, GB_NO_FAULT, 1400},
    {"cents alone", "0.05", 2, GB_NO_FAULT, 5},
    {"nothing", "0", 2, GB_NO_FAULT, 0},
    {"nothing, written out", "0.00", 2, GB_NO_FAULT, 0},
    {"leading zeros", "007.50", 2, GB_NO_FAULT, 750},
    {"a large one", "1234567.89", 2, GB_NO_FAULT, 123456789},
    {"no places", "1450", 0, GB_NO_FAULT, 1450},
    {"no places, nothing", "0", 0, GB_NO_FAULT, 0},
    {"one place", "14.5", 1, GB_NO_FAULT, 145},
    {"three places", "1.234", 3, GB_NO_FAULT, 1234},
    {"two of three places", "1.23", 3, GB_NO_FAULT, 1230},
    {"none of three places", "7", 3, GB_NO_FAULT, 7000},
    {"15 digits", "9999999999999.99", 2, GB_NO_FAULT, 999999999999999},
    {"15 digits and no places", "999999999999999", 0, GB_NO_FAULT, 999999999999999},
    {"15 digits, scaled", "999999999999999", 3, GB_NO_FAULT, 999999999999999000},
    {"empty", "", 2, GB_FAULT_EMPTY, 0},
    {"spaces", "   ", 2, GB_FAULT_NUMBER, 0},
    {"three of two places", "14.505", 2, GB_FAULT_DIGITS, 0},
    {"zero in a third place", "14.500", 2, GB_FAULT_DIGITS, 0},
    {"a place where there is none", "14.0", 0, GB_FAULT_DIGITS, 0},
    {"four of three places", "1.2345", 3, GB_FAULT_DIGITS, 0},
    {"16 digits", "1234567890123456", 2, GB_FAULT_DIGITS, 0},
    {"16 digits with a point", "12345678901234.56", 2, GB_FAULT_DIGITS, 0},
    {"nothing behind the point", "14.", 2, GB_FAULT_NUMBER, 0},
    {"nothing before the point", ".50", 2, GB_FAULT_NUMBER, 0},
    {"a point alone", ".", 2, GB_FAULT_NUMBER, 0},
    {"two points", "1.2.3", 2, GB_FAULT_NUMBER, 0},
    {"negative", "-1", 2, GB_FAULT_NEGATIVE, 0},
    {"a plus sign", "+1", 2, GB_FAULT_NUMBER, 0},
    {"a comma", "1,50", 2, GB_FAULT_COMMA, 0},
    {"thousands", "1,450.00", 2, GB_FAULT_COMMA, 0},
    {"an exponent", "1e3", 2, GB_FAULT_EXPONENT, 0},
    {"a currency sign", "$14.50", 2, GB_FAULT_NUMBER, 0},
    {"a currency behind", "14.50 USD", 2, GB_FAULT_MORE, 0},
    {"a fraction", "14-1/2", 2, GB_FAULT_MORE, 0},
    {"nan", "nan", 2, GB_FAULT_NUMBER, 0},
    {"a word", "free", 2, GB_FAULT_NUMBER, 0},
};

Test(money, rows) {
    for (size_t i = 0; i < sizeof PRICES / sizeof PRICES[0]; i++) {
        gb_money money = {UNTOUCHED};
        gb_fault fault = gb_parse_money(PRICES[i].text, PRICES[i].decimals, &money);
        cr_expect(fault == PRICES[i].fault, "%s: \"%s\" is fault %d, not %d",
                  PRICES[i].id, PRICES[i].text, fault, PRICES[i].fault);
        int64_t wanted = PRICES[i].fault == GB_NO_FAULT ? PRICES[i].minor : UNTOUCHED;
        cr_expect(money.minor == wanted, "%s: %" PRId64, PRICES[i].id, money.minor);
    }
}

Test(money, refuses_ten_thousand_digits) {
    static char digits[10001];
    memset(digits, '0', sizeof digits - 1);
    gb_money money = {UNTOUCHED};
    gb_fault fault = gb_parse_money(digits, 2, &money);
    cr_expect(fault == GB_FAULT_LONG || fault == GB_FAULT_DIGITS, "fault %d", fault);
    cr_expect(money.minor == UNTOUCHED, "was written");
}
