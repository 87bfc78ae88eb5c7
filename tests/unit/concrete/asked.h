/* Concretes to proportion, for the tests of this folder. */
#ifndef CONCRETE_ASKED_H
#define CONCRETE_ASKED_H

#include "gaugebox/gaugebox.h"

/* 25 MPa, or 4000 psi, required; slump 75 mm; stone to 19 mm; nothing entrained. */
gb_concrete ask_usual(gb_system table);

/* A trial of it of which nothing is stated. */
gb_trial ask_no_trial(void);

/* The same numbers from the same seed, on every machine. */
typedef struct ask_random {
    uint64_t state;
} ask_random;
ask_random ask_seeded(unsigned seed);
double ask_between(ask_random *r, double low, double high);
size_t ask_below(ask_random *r, size_t count);

/* A concrete that the tables have, with materials; its sand may find no room. */
gb_concrete ask_any(ask_random *r);

/* Its proportions; false when the sand finds no room, any other fault fails the test. */
bool ask_proportions(const gb_concrete *c, gb_proportions *p);

/* Within 1e-9 of each other, relative to their size. */
bool ask_same(double a, double b);

#endif
