/* Exact definitions that expected values are written with: the international inch and
   avoirdupois pound of 1959, the US gallon of 231 in3 (NIST Handbook 44, appendix C).
   A foot is twelve inches and a yard thirty-six, here as everywhere. */
#ifndef UNIT_QUANTITY_EXACT_H
#define UNIT_QUANTITY_EXACT_H

#define IN  0.0254
#define IN2 (0.0254 * 0.0254)
#define IN3 (0.0254 * 0.0254 * 0.0254)
#define LB  0.45359237

#endif
