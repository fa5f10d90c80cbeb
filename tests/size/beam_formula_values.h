/* How a row of beam_formula_rows.h is read off a solved beam. */
#ifndef SAWBILL_TESTS_BEAM_FORMULA_VALUES_H
#define SAWBILL_TESTS_BEAM_FORMULA_VALUES_H

#include "size/beam_formula_rows.h"

static inline struct beam_spans formula_spans(const struct formula_case *of, struct beam_support support[CASE_SUPPORTS])
{
    static const double every[LOAD_SOURCES] = {1, 1, 1, 1};
    for (size_t i = 0; i < of->supports; i++)
        support[i] = (struct beam_support){.at_in = of->support[i]};
    return (struct beam_spans){.length_in = of->length,
                               .support = support,
                               .supports = of->supports,
                               .load = of->load,
                               .count = of->loads,
                               .factor = every};
}

/* NAN where the place that the row gives is another. */
static inline double formula_extreme(const struct formula_row *row, struct beam_extreme got, double per)
{
    bool elsewhere = !isnan(row->place) && !(fabs(got.at_in - row->place) <= 1e-5);
    return elsewhere ? NAN : got.value / per;
}

static inline double formula_value(const struct formula_row *row, const struct beam_spans *spans)
{
    size_t which = (size_t)row->which;
    struct beam_extremes whole = spans_extremes(spans, 0, spans->length_in), span = {0};
    if (row->what & (MOMENT | SAG))
        span = spans_extremes(spans, spans->support[which - 1].at_in, spans->support[which].at_in);
    switch (row->what & ~(BOTH | IS_SHEAR)) {
    case REACTION:
        return spans->support[which].reaction;
    case SHEAR:
        return fabs(whole.shear.value);
    case MOMENT:
        return formula_extreme(row, span.sagging, 1);
    case SAG:
        return formula_extreme(row, span.down, row_ei);
    case MOMENT_AT:
        return spans_at(spans, row->which).moment;
    default:
        return spans_at(spans, row->which).sag / row_ei;
    }
}

#endif
