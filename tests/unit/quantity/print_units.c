/* Prints the table of units for a comparison with another program's: kind, name, and the
   SI values of 1 and of 100, between tabs. */
#include "gaugebox/quantity.h"

#include <stdio.h>

static const char *const KINDS[] = {
    [GB_LENGTH] = "length",
    [GB_AREA] = "area",
    [GB_VOLUME] = "volume",
    [GB_MASS] = "mass",
    [GB_DENSITY] = "density",
    [GB_TEMP] = "temp",
    [GB_DURATION] = "duration",
    [GB_SHARE] = "share",
    [GB_SLOPE] = "slope",
    [GB_SPEED] = "speed",
    [GB_TREAD_PACE] = "tread_pace",
    [GB_AREA_PACE] = "area_pace",
    [GB_VOLUME_PACE] = "volume_pace",
    [GB_JOINT_RATE] = "joint_rate",
    [GB_MORTAR_RATE] = "mortar_rate",
    [GB_EVAPORATION] = "evaporation",
    [GB_PRESSURE] = "pressure",
};
_Static_assert(sizeof KINDS / sizeof KINDS[0] == GB_KINDS, "a word for every kind");

int main(void) {
    size_t count = 0;
    const gb_unit *units = gb_units(&count);
    for (size_t i = 0; i < count; i++)
        printf("%s\t%s\t%.17g\t%.17g\n", KINDS[units[i].kind], units[i].name,
               gb_from_unit(&units[i], 1), gb_from_unit(&units[i], 100));
    return fflush(stdout) == 0 ? 0 : 1;
}
