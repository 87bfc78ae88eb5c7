#include "published/yeh-1998/mixture.h"

#include <criterion/criterion.h>

FILE *yeh_open(void) {
    FILE *file = fopen(YEH_FILE, "r");
    cr_assert(file != NULL, "%s opens", YEH_FILE);
    cr_assert(fscanf(file, "%*[^\n] ") == 0 && !feof(file), "a line of names");
    return file;
}

bool yeh_next(FILE *file, mixture *m) {
    return fscanf(file, "%lf,%lf,%lf,%lf,%lf,%lf,%lf,%lf,%lf ", &m->kg[CEMENT],
                  &m->kg[SLAG], &m->kg[FLY_ASH], &m->water, &m->kg[PLASTICIZER],
                  &m->kg[STONE], &m->kg[SAND], &m->age_days, &m->strength_mpa) == 9;
}

void yeh_close(FILE *file, size_t rows) {
    cr_expect(feof(file) && rows == 1030, "1030 rows to the end, not %zu", rows);
    fclose(file);
}
