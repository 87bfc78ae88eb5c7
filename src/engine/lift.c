#include "gaugebox/lift.h"

#include "gaugebox/count.h"

gb_share gb_lift_left(const gb_lift *lift) {
    return (gb_share){(1.0 - lift->wet.of_one) * (1.0 - lift->rough.of_one) *
                      (1.0 - lift->tilted.of_one)};
}

gb_mass gb_lift_allowed(const gb_lift *lift) {
    double left = gb_lift_left(lift).of_one / lift->margin;
    double machine = (lift->capacity.kg - lift->attachment.kg) * left;
    return (gb_mass){gb_smaller(machine, lift->rated.kg * left)};
}

gb_length gb_long_stone(void) {
    return (gb_length){6 * 0.3048};
}
