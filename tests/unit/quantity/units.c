#include "gaugebox/quantity.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>
#include <string.h>

/* The values of the factors are checked against the GNU units program, in gnu_units.sh.
 */

Test(units, there_and_back) {
    static const double NUMBERS[] = {0.001, 1.0 / 3.0, 1, 7, 40, 99.9, 12345.678, 1e9};
    size_t count = 0;
    const gb_unit *units = gb_units(&count);
    cr_assert(count > 0, "an empty table");
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < sizeof NUMBERS / sizeof NUMBERS[0]; k++) {
            double x = NUMBERS[k];
            double back = gb_to_unit(&units[i], gb_from_unit(&units[i], x));
            /* The zero of F is 32: what is near it keeps the digits of 32, not its own.
             */
            double size = fmax(fabs(x), fabs(units[i].zero));
            cr_expect(fabs(back - x) <= 1e-12 * size, "%s: %.17g is %.17g", units[i].name,
                      x, back);
        }
}

Test(units, values_grow_with_the_number) {
    size_t count = 0;
    const gb_unit *units = gb_units(&count);
    for (size_t i = 0; i < count; i++) {
        double one = gb_from_unit(&units[i], 1);
        double two = gb_from_unit(&units[i], 2);
        double three = gb_from_unit(&units[i], 3);
        cr_expect(one < two, "%s", units[i].name);
        cr_expect(fabs((three - two) - (two - one)) <= 1e-12 * fabs(three), "%s",
                  units[i].name);
        if (units[i].kind != GB_TEMP)
            cr_expect(gb_from_unit(&units[i], 0) == 0, "%s", units[i].name);
    }
}

Test(units, names_are_unique_in_their_kind) {
    size_t count = 0;
    const gb_unit *units = gb_units(&count);
    for (size_t i = 0; i < count; i++)
        for (size_t k = i + 1; k < count; k++)
            cr_expect(units[i].kind != units[k].kind ||
                          strcmp(units[i].name, units[k].name) != 0,
                      "%s of kind %d", units[i].name, units[i].kind);
}

/* A name begins with a sign that no number can go on with, so that 5ft needs no space. */
Test(units, no_name_can_be_taken_for_a_number) {
    size_t count = 0;
    const gb_unit *units = gb_units(&count);
    for (size_t i = 0; i < count; i++) {
        cr_expect(units[i].name[0] != '\0', "row %zu has no name", i);
        cr_expect(strchr("0123456789.,/-+ :\t", units[i].name[0]) == NULL, "%s",
                  units[i].name);
    }
}

Test(units, every_row_is_found_and_read) {
    size_t count = 0;
    const gb_unit *units = gb_units(&count);
    for (size_t i = 0; i < count; i++) {
        cr_expect(gb_find_unit(units[i].kind, units[i].name) == &units[i], "%s",
                  units[i].name);
        char text[40] = "7 ";
        strncat(text, units[i].name, sizeof text - 3);
        double si = 0;
        gb_fault fault = gb_parse(units[i].kind, text, &si);
        cr_expect(fault == GB_NO_FAULT, "\"%s\" is fault %d", text, fault);
        cr_expect(si == gb_from_unit(&units[i], 7), "\"%s\" is %.17g", text, si);
    }
}

Test(units, every_kind_has_a_unit) {
    size_t count = 0;
    const gb_unit *units = gb_units(&count);
    bool seen[GB_KINDS] = {false};
    for (size_t i = 0; i < count; i++) {
        cr_assert(units[i].kind >= 0 && units[i].kind < GB_KINDS, "%s", units[i].name);
        seen[units[i].kind] = true;
    }
    for (int kind = 0; kind < GB_KINDS; kind++)
        cr_expect(seen[kind], "kind %d", kind);
}

Test(units, what_is_unknown_is_not_found) {
    static const struct {
        gb_kind kind;
        const char *name;
    } ROWS[] = {
        {GB_LENGTH, "furlong"}, {GB_LENGTH, ""},   {GB_LENGTH, "ft3"},
        {GB_LENGTH, "f"},       {GB_VOLUME, "lb"}, {GB_MASS, "ton"},
        {GB_TEMP, "K"},         {GB_SHARE, "in"},  {GB_LENGTH, "FT"},
    };
    for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++)
        cr_expect(gb_find_unit(ROWS[i].kind, ROWS[i].name) == NULL, "\"%s\" of kind %d",
                  ROWS[i].name, ROWS[i].kind);
}
