/* A simple span is a beam on two supports; see beam.h. */
#include "sawbill/beam.h"

#include <math.h>

static struct beam_spans simple(double span, struct beam_support support[2], const struct beam_load *loads,
                                size_t count, const double *factor)
{
    support[0] = (struct beam_support){.at_in = 0};
    support[1] = (struct beam_support){.at_in = span};
    return (struct beam_spans){
        .length_in = span, .support = support, .supports = 2, .load = loads, .count = count, .factor = factor};
}

static struct beam_extreme greater(struct beam_extreme a, struct beam_extreme b)
{
    return fabs(b.value) > fabs(a.value) ? b : a;
}

struct beam_result beam_solve(double span_in, const struct beam_load *loads, size_t count,
                              const double factor[LOAD_SOURCES])
{
    struct beam_support support[2];
    struct beam_spans spans = simple(span_in, support, loads, count, factor);
    if (!spans_solve(&spans))
        return (struct beam_result){0};
    struct beam_extremes most = spans_extremes(&spans, 0, span_in);
    return (struct beam_result){.reaction = {support[0].reaction, support[1].reaction},
                                .shear = most.shear,
                                .moment = greater(most.sagging, most.hogging),
                                .sag = greater(most.down, most.up)};
}

struct beam_at beam_at(double span_in, const struct beam_load *loads, size_t count, const double factor[LOAD_SOURCES],
                       double x_in)
{
    struct beam_support support[2];
    struct beam_spans spans = simple(span_in, support, loads, count, factor);
    return spans_solve(&spans) ? spans_at(&spans, x_in) : (struct beam_at){0};
}
