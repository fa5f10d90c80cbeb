/* Inside the beam analysis: what a load is on a part of the beam. */
#ifndef SAWBILL_SPANS_H
#define SAWBILL_SPANS_H

#include "sawbill/beam.h"

/* A load, or the part of it between two places, with the factors put in: lb about its middle. */
struct spans_part {
    double middle, half, total;
    double rise; /* lb per inch more at its right end than at its left */
};
/* False: nothing of it lies there.  A point load lies within, not at, the places. */
bool spans_part(const struct beam_spans *spans, const struct beam_load *load, double from, double to,
                struct spans_part *out);
/* lb per inch of a line load at x, within it. */
double spans_load_at(const struct beam_spans *spans, const struct beam_load *load, double x);
/* The part of a line load between two places that lie on it. */
struct beam_load spans_cut(const struct beam_load *load, double from, double to);
double spans_lb(const struct beam_spans *spans, const struct loads *amount);
/* The parts of all loads between two places, integrated n times up to x at their right: 0 gives lb, 1 the moment about
 * x, 2 and 3 what they add to slope and deflection there. */
double spans_integral(const struct beam_spans *spans, double from, double to, double x, int n);

#endif
