#include "published/published.h"

#include <criterion/criterion.h>
#include <string.h>

/* Mortars by designation, volumes to one of cement. The equivalence of designations and
   classes is that of BS EN 998-2. */

#define CHUDLEY "Chudley, Building Construction Handbook, 8th edition, p.370"

static const pub_proportion PROPORTIONS[] = {
    {"uk-mortar/i", GB_LIME, {"lime", CHUDLEY, PUB_READ, 0.25, 0.25, NULL}},
    {"uk-mortar/i", GB_SAND, {"sand", CHUDLEY, PUB_READ, 3, 3, NULL}},
    {"uk-mortar/ii", GB_LIME, {"lime", CHUDLEY, PUB_READ, 0.5, 0.5, NULL}},
    {"uk-mortar/ii", GB_SAND, {"sand", CHUDLEY, PUB_READ, 4, 4.5, NULL}},
    {"uk-mortar/iii", GB_LIME, {"lime", CHUDLEY, PUB_READ, 1, 1, NULL}},
    {"uk-mortar/iii", GB_SAND, {"sand", CHUDLEY, PUB_READ, 5, 6, NULL}},
    {"uk-mortar/iv", GB_LIME, {"lime", CHUDLEY, PUB_READ, 2, 2, NULL}},
    {"uk-mortar/iv", GB_SAND, {"sand", CHUDLEY, PUB_READ, 8, 9, NULL}},
    /* (v) is no entry of its own: the historical Type K is of the same volumes. */
    {"mortar/type-k", GB_LIME, {"(v), lime", CHUDLEY, PUB_READ, 3, 3, NULL}},
    {"mortar/type-k", GB_SAND, {"(v), sand", CHUDLEY, PUB_READ, 10, 12, NULL}},
};

Test(published_chudley, designations) {
    pub_check_proportions(PROPORTIONS, sizeof PROPORTIONS / sizeof PROPORTIONS[0],
                          PUB_TO_CEMENT);
}

Test(published_chudley, classes) {
    static const struct {
        const char *mix, *strength; /* the class, N/mm2 after BS EN 998-2 */
    } CLASSES[] = {{"uk-mortar/i", "M12 "},
                   {"uk-mortar/ii", "M6 "},
                   {"uk-mortar/iii", "M4 "},
                   {"uk-mortar/iv", "M2 "}};
    pub_table table;
    pub_open(&table);
    for (size_t i = 0; i < sizeof CLASSES / sizeof CLASSES[0]; i++) {
        const gb_mix *mix = pub_mix(&table, CLASSES[i].mix);
        cr_expect(strstr(gb_words_in(&mix->title, "en"), CLASSES[i].strength) != NULL,
                  "%s names its class %s", mix->id, CLASSES[i].strength);
    }
    pub_close(&table);
}

/* Both sides of each printed end, the cement : lime : sand column and that without
   lime. */
static const pub_edge EDGES[] = {
    {"(i) least sand", GB_DESIGNATION_1, .portland = 1, .lime = 0.25, .sand = 3},
    {"(i) most sand", GB_DESIGNATION_1, .portland = 1, .lime = 0.25, .sand = 3},
    {"(i) less sand", GB_DESIGNATION_1, .portland = 1, .lime = 0.25, .sand = 2.99,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 3},
    {"(i) more sand", GB_DESIGNATION_1, .portland = 1, .lime = 0.25, .sand = 3.01,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 3},
    {"(i) less lime", GB_DESIGNATION_1, .portland = 1, .lime = 0.24, .sand = 3.0,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 0.25},
    {"(i) more lime", GB_DESIGNATION_1, .portland = 1, .lime = 0.26, .sand = 3.0,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 0.25},
    {"(i) stone", GB_DESIGNATION_1, .portland = 1, .lime = 0.25, .sand = 3.0,
     .stone = 0.1, .missed = GB_STONE_TO_BINDER, .side = GB_TOO_MUCH, .limit = 0},
    {"(i) without lime, least sand", GB_DESIGNATION_1, .portland = 1, .sand = 3},
    {"(i) without lime, most sand", GB_DESIGNATION_1, .portland = 1, .sand = 3},
    {"(i) without lime, less sand", GB_DESIGNATION_1, .portland = 1, .sand = 2.99,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 3},
    {"(i) without lime, more sand", GB_DESIGNATION_1, .portland = 1, .sand = 3.01,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 3},
    {"(i) of masonry cement", GB_DESIGNATION_1, .n = 1, .sand = 3.0, .unknown = true},
    {"(ii) least sand", GB_DESIGNATION_2, .portland = 1, .lime = 0.5, .sand = 4},
    {"(ii) most sand", GB_DESIGNATION_2, .portland = 1, .lime = 0.5, .sand = 4.5},
    {"(ii) less sand", GB_DESIGNATION_2, .portland = 1, .lime = 0.5, .sand = 3.99,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 4},
    {"(ii) more sand", GB_DESIGNATION_2, .portland = 1, .lime = 0.5, .sand = 4.51,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 4.5},
    {"(ii) less lime", GB_DESIGNATION_2, .portland = 1, .lime = 0.49, .sand = 4.25,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 0.5},
    {"(ii) more lime", GB_DESIGNATION_2, .portland = 1, .lime = 0.51, .sand = 4.25,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 0.5},
    {"(ii) stone", GB_DESIGNATION_2, .portland = 1, .lime = 0.5, .sand = 4.25,
     .stone = 0.1, .missed = GB_STONE_TO_BINDER, .side = GB_TOO_MUCH, .limit = 0},
    {"(ii) without lime, least sand", GB_DESIGNATION_2, .portland = 1, .sand = 3},
    {"(ii) without lime, most sand", GB_DESIGNATION_2, .portland = 1, .sand = 4},
    {"(ii) without lime, less sand", GB_DESIGNATION_2, .portland = 1, .sand = 2.99,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 3},
    {"(ii) without lime, more sand", GB_DESIGNATION_2, .portland = 1, .sand = 4.01,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 4},
    {"(ii) of masonry cement", GB_DESIGNATION_2, .n = 1, .sand = 4.25, .unknown = true},
    {"(iii) least sand", GB_DESIGNATION_3, .portland = 1, .lime = 1, .sand = 5},
    {"(iii) most sand", GB_DESIGNATION_3, .portland = 1, .lime = 1, .sand = 6},
    {"(iii) less sand", GB_DESIGNATION_3, .portland = 1, .lime = 1, .sand = 4.99,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 5},
    {"(iii) more sand", GB_DESIGNATION_3, .portland = 1, .lime = 1, .sand = 6.01,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 6},
    {"(iii) less lime", GB_DESIGNATION_3, .portland = 1, .lime = 0.99, .sand = 5.5,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 1},
    {"(iii) more lime", GB_DESIGNATION_3, .portland = 1, .lime = 1.01, .sand = 5.5,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 1},
    {"(iii) stone", GB_DESIGNATION_3, .portland = 1, .lime = 1, .sand = 5.5, .stone = 0.1,
     .missed = GB_STONE_TO_BINDER, .side = GB_TOO_MUCH, .limit = 0},
    {"(iii) without lime, least sand", GB_DESIGNATION_3, .portland = 1, .sand = 5},
    {"(iii) without lime, most sand", GB_DESIGNATION_3, .portland = 1, .sand = 6},
    {"(iii) without lime, less sand", GB_DESIGNATION_3, .portland = 1, .sand = 4.99,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 5},
    {"(iii) without lime, more sand", GB_DESIGNATION_3, .portland = 1, .sand = 6.01,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 6},
    {"(iii) of masonry cement", GB_DESIGNATION_3, .n = 1, .sand = 5.5, .unknown = true},
    {"(iv) least sand", GB_DESIGNATION_4, .portland = 1, .lime = 2, .sand = 8},
    {"(iv) most sand", GB_DESIGNATION_4, .portland = 1, .lime = 2, .sand = 9},
    {"(iv) less sand", GB_DESIGNATION_4, .portland = 1, .lime = 2, .sand = 7.99,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 8},
    {"(iv) more sand", GB_DESIGNATION_4, .portland = 1, .lime = 2, .sand = 9.01,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 9},
    {"(iv) less lime", GB_DESIGNATION_4, .portland = 1, .lime = 1.99, .sand = 8.5,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 2},
    {"(iv) more lime", GB_DESIGNATION_4, .portland = 1, .lime = 2.01, .sand = 8.5,
     .missed = GB_LIME_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 2},
    {"(iv) stone", GB_DESIGNATION_4, .portland = 1, .lime = 2, .sand = 8.5, .stone = 0.1,
     .missed = GB_STONE_TO_BINDER, .side = GB_TOO_MUCH, .limit = 0},
    {"(iv) without lime, least sand", GB_DESIGNATION_4, .portland = 1, .sand = 7},
    {"(iv) without lime, most sand", GB_DESIGNATION_4, .portland = 1, .sand = 8},
    {"(iv) without lime, less sand", GB_DESIGNATION_4, .portland = 1, .sand = 6.99,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_LITTLE, .limit = 7},
    {"(iv) without lime, more sand", GB_DESIGNATION_4, .portland = 1, .sand = 8.01,
     .missed = GB_SAND_TO_CEMENT, .side = GB_TOO_MUCH, .limit = 8},
    {"(iv) of masonry cement", GB_DESIGNATION_4, .n = 1, .sand = 8.5, .unknown = true},
    {"(ii) by thirds", GB_DESIGNATION_2, .portland = 0.3, .lime = 0.15, .sand = 1.35},
};

Test(published_chudley, edges_of_claims) {
    pub_check_edges(EDGES, sizeof EDGES / sizeof EDGES[0]);
}
