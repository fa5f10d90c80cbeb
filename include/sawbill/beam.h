/* A simple span under any point and partial uniform loads, in closed form.
 *
 * Statics and Macaulay's brackets: every piece between two loads is a polynomial, so the extremes are found at its ends
 * and roots, not on a grid.  Nothing allocates.  Loads downward positive. */
#ifndef SAWBILL_BEAM_H
#define SAWBILL_BEAM_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/design.h"

/* Point load: lb of each source at from_in.  Line load: lb per inch from from_in to to_in.  Measured from the first
 * support; what lies outside 0..span rests on the support there: in the reaction, not in the shear. */
struct beam_load {
    bool point;
    double from_in, to_in;
    struct loads amount;
};
struct beam_extreme {
    double value, at_in;
};
struct beam_result {
    double reaction[2];
    struct beam_extreme shear, moment; /* lb and in-lb of greatest size, with sign */
    struct beam_extreme sag;           /* E I times the greatest deflection, lb in3, downward positive */
};
/* Each load counts with the factor of its source. */
struct beam_result beam_solve(double span_in, const struct beam_load *loads, size_t count,
                              const double factor[LOAD_SOURCES]);
/* At one place: shear just right of x, moment, E I times deflection. */
struct beam_at {
    double shear, moment, sag;
};
struct beam_at beam_at(double span_in, const struct beam_load *loads, size_t count, const double factor[LOAD_SOURCES],
                       double x_in);

#endif
