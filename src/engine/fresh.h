/* What fresh mixes weigh. */
#ifndef ENGINE_FRESH_H
#define ENGINE_FRESH_H

/* No mortar, grout, paste or concrete of sand and stone is lighter or heavier, kg/m3. */
static const double GB_LIGHTEST_FRESH = 1200.0;
static const double GB_HEAVIEST_FRESH = 2700.0;

#endif
