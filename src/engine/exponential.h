/* e^x and ln x without libm, which rounds them otherwise from machine to machine. */
#ifndef ENGINE_EXPONENTIAL_H
#define ENGINE_EXPONENTIAL_H

/* For -700 < x < 700; within 4e-16 of the value. */
double gb_exp(double x);
/* For x over zero; within 4e-16 of the value, or of 1 where that is smaller. */
double gb_ln(double x);

#endif
