/* Straight beams of constant E I under any point and line loads, in closed form: simple spans, any number of spans,
 * overhangs at either end.
 *
 * Between two places where something starts or ends every function is one polynomial, of the fifth degree for the
 * deflection; extremes are found at the ends and roots of these, not on a grid.  Loads downward positive, lb and in. */
#ifndef SAWBILL_BEAM_H
#define SAWBILL_BEAM_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/design.h"

/* Point load: lb of each source at from_in.  Line load: lb per inch from from_in to to_in; one that tapers is `amount`
 * at from_in and `amount_to` at to_in, straight between.  A line load without length is none. */
struct beam_load {
    bool point, tapers;
    double from_in, to_in;
    struct loads amount, amount_to;
};
struct loads beam_load_total(const struct beam_load *load); /* lb */
struct beam_extreme {
    double value, at_in;
};
/* At one place: shear just right of x, moment, E I times deflection. */
struct beam_at {
    double shear, moment, sag;
};

/* A support: the caller says where it is, spans_solve the rest. */
struct beam_support {
    double at_in;
    double reaction;      /* upward positive; negative: uplift, the beam must be held down there */
    double moment, slope; /* sagging positive; E I times the slope, falling to the right positive */
    double shear[2];      /* just left and just right of it */
};
/* The wood from 0 to length_in, places measured from its left end.  Nothing is copied or kept. */
struct beam_spans {
    double length_in;
    struct beam_support *support; /* ascending, two or more, within the wood */
    size_t supports;
    const struct beam_load *load;
    size_t count;
    const double *factor; /* of each source, LOAD_SOURCES of them */
};
struct beam_extremes {
    struct beam_extreme shear;            /* of greatest size, with sign */
    struct beam_extreme sagging, hogging; /* most positive and most negative moment; 0 where there is none */
    struct beam_extreme down, up;         /* E I times deflection: most positive and most negative */
};
/* A load over a support, and what lies beyond an end that stands on a support, rests on it: in its reaction, not in the
 * shear.  False, and nothing solved: fewer than two supports, not ascending or off the wood, a load beyond a free end,
 * or a number that is not one. */
bool spans_solve(struct beam_spans *spans);
/* Of solved spans: the extremes from one place to another, and the values at a place (right of it where they jump). */
struct beam_extremes spans_extremes(const struct beam_spans *spans, double from_in, double to_in);
struct beam_at spans_at(const struct beam_spans *spans, double x_in);

/* Live load on any set of spans.  Section 0 is the left overhang, section i the span right of support i - 1, the last
 * one the right overhang; a load over a support counts with the section left of it. */
enum { SPANS_PATTERN_MOST = 12 }; /* sections: 4,096 patterns */
struct beam_envelope {
    struct beam_extremes *section; /* supports + 1 of them, each the worst of all patterns */
    struct {
        double least, most;
    } * reaction; /* of each support */
};
/* Every source that is patterned stands on each section or does not, all patterned sources together; the others always
 * stand.  False as spans_solve, or with more sections than SPANS_PATTERN_MOST. */
bool spans_envelope(struct arena *arena, const struct beam_spans *spans, const bool patterned[LOAD_SOURCES],
                    struct beam_envelope *out);
/* The greatest sizes, without sign, at each of some places, of all those patterns. */
bool spans_envelope_at(struct arena *arena, const struct beam_spans *spans, const bool patterned[LOAD_SOURCES],
                       const double *place, size_t places, struct beam_at *worst);

/* A simple span: two supports, at 0 and span_in. */
struct beam_result {
    double reaction[2];
    struct beam_extreme shear, moment; /* lb and in-lb of greatest size, with sign */
    struct beam_extreme sag;           /* E I times the greatest deflection, lb in3, downward positive */
};
/* Each load counts with the factor of its source. */
struct beam_result beam_solve(double span_in, const struct beam_load *loads, size_t count,
                              const double factor[LOAD_SOURCES]);
struct beam_at beam_at(double span_in, const struct beam_load *loads, size_t count, const double factor[LOAD_SOURCES],
                       double x_in);

#endif
