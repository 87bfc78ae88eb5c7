#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>

#include "gaugebox/count.h"

Test(count, up_takes_exact_multiples_as_they_are) {
    /* n * each / each is off by a rounding for many n: plain ceil would add one. */
    for (int n = 1; n <= 5000; n++) {
        double each = 0.1 + n * 0.0007;
        double sum = 0;
        for (int k = 0; k < n % 50 + 1; k++)
            sum += each;
        size_t count = 0;
        cr_expect(gb_count_up(sum, each, &count) == GB_OK, "n %d", n);
        cr_expect(count == (size_t)(n % 50 + 1), "n %d: %zu", n, count);
    }
}
