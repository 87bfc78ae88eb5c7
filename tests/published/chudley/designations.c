#include "published/published.h"

#include <criterion/criterion.h>
#include <string.h>

/* Mortars by designation, volumes to one of cement. The equivalence of designations and
   classes is that of BS EN 998-2. */

#define CHUDLEY "Chudley, Building Construction Handbook, 8th edition, p.370"

static const struct designation {
    const char *mix;
    pub_range lime, sand;
    const char *strength; /* the class, N/mm2 after BS EN 998-2 */
} DESIGNATIONS[] = {
    {"uk-mortar/i",
     {"lime", CHUDLEY, PUB_READ, 0.25, 0.25, NULL},
     {"sand", CHUDLEY, PUB_READ, 3, 3, NULL},
     "M12 "},
    {"uk-mortar/ii",
     {"lime", CHUDLEY, PUB_READ, 0.5, 0.5, NULL},
     {"sand", CHUDLEY, PUB_READ, 4, 4.5, NULL},
     "M6 "},
    {"uk-mortar/iii",
     {"lime", CHUDLEY, PUB_READ, 1, 1, NULL},
     {"sand", CHUDLEY, PUB_READ, 5, 6, NULL},
     "M4 "},
    {"uk-mortar/iv",
     {"lime", CHUDLEY, PUB_READ, 2, 2, NULL},
     {"sand", CHUDLEY, PUB_READ, 8, 9, NULL},
     "M2 "},
    /* (v) is no entry of its own: the historical Type K is of the same volumes. */
    {"mortar/type-k",
     {"(v), lime", CHUDLEY, PUB_READ, 3, 3, NULL},
     {"(v), sand", CHUDLEY, PUB_READ, 10, 12, NULL},
     ""},
};

Test(published_chudley, designations) {
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof DESIGNATIONS / sizeof DESIGNATIONS[0]; i++) {
        const struct designation *row = &DESIGNATIONS[i];
        const gb_mix *mix = pub_mix(&table, row->mix);
        double cement = pub_parts(mix, GB_CEMENT);
        pub_check_range_for(row->mix, &row->lime, pub_parts(mix, GB_LIME) / cement);
        pub_check_range_for(row->mix, &row->sand, pub_parts(mix, GB_SAND) / cement);
        cr_expect(strstr(gb_words_in(&mix->title, "en"), row->strength) != NULL,
                  "%s names its class %s", row->mix, row->strength);
    }
    pub_close(&table);
}
