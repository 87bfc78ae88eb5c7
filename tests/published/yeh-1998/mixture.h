/* The rows of mixtures.csv; origin and licence: origin.txt. */
#ifndef YEH_MIXTURE_H
#define YEH_MIXTURE_H

#include <stdbool.h>
#include <stdio.h>

#define YEH "Yeh 1998, 1030 concretes"

enum { CEMENT, SLAG, FLY_ASH, PLASTICIZER, STONE, SAND, PARTS };

typedef struct mixture {
    double kg[PARTS]; /* in 1 m3 */
    double water;
    double age_days, strength_mpa;
} mixture;

/* Behind its line of names; the test fails when there is no such file. */
FILE *yeh_open(void);
/* False at the end of the file. */
bool yeh_next(FILE *file, mixture *m);
/* Expects that all 1030 rows were read. */
void yeh_close(FILE *file, size_t rows);

#endif
