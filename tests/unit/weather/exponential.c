/* e^x and ln x against those of libm. */
#include "engine/exponential.h"

#include <criterion/criterion.h>
#include <math.h>

Test(exponential, as_libm) {
    for (double x = -30; x <= 30; x += 0.00137) {
        double want = exp(x);
        cr_assert(fabs(gb_exp(x) / want - 1) < 4e-16 * 2, "e^%.17g", x);
    }
    cr_expect(gb_exp(0) == 1.0);
}

Test(exponential, ln_as_libm) {
    for (double x = 1e-6; x < 1e7; x *= 1.00037) {
        double want = log(x);
        cr_assert(fabs(gb_ln(x) - want) <= 4e-16 * fmax(1, fabs(want)), "ln %.17g", x);
    }
    cr_expect(gb_ln(1) == 0.0);
}

Test(exponential, each_undoes_the_other) {
    for (double x = -20; x <= 20; x += 0.0371)
        cr_assert(fabs(gb_ln(gb_exp(x)) - x) < 1e-14, "%.17g", x);
}
