/* Supports of a beam of any number of spans, by the equation of three moments (Clapeyron), solved without pivots: the
 * system has three diagonals and the middle one outweighs the others.  See beam.h. */
#include "spans.h"

#include <math.h>

/* A span as if it were simple: shear at its left end, lb on it, E I times the slope at its ends. */
struct alone {
    double length, shear, total, slope[2];
};

static struct alone span_alone(const struct beam_spans *spans, size_t i)
{
    double from = spans->support[i].at_in, to = spans->support[i + 1].at_in;
    struct alone out = {.length = to - from, .total = spans_integral(spans, from, to, to, 0)};
    out.shear = spans_integral(spans, from, to, to, 1) / out.length;
    out.slope[0] = out.shear * out.length * out.length / 6 - spans_integral(spans, from, to, to, 3) / out.length;
    out.slope[1] = out.slope[0] - out.shear * out.length * out.length / 2 + spans_integral(spans, from, to, to, 2);
    return out;
}

static bool stands_at_end(const struct beam_spans *spans, bool right)
{
    return right ? spans->support[spans->supports - 1].at_in == spans->length_in : spans->support[0].at_in == 0;
}

static bool is_load_good(const struct beam_spans *spans, const struct beam_load *load)
{
    double to = load->point ? load->from_in : load->to_in;
    struct loads far = load->tapers ? load->amount_to : load->amount;
    if (!isfinite(load->from_in) || !isfinite(to) || !isfinite(spans_lb(spans, &load->amount)) ||
        !isfinite(spans_lb(spans, &far)))
        return false;
    return (load->from_in >= 0 || stands_at_end(spans, false)) &&
           (to <= spans->length_in || stands_at_end(spans, true));
}

static bool is_good(const struct beam_spans *spans)
{
    if (spans->supports < 2 || !(spans->support[0].at_in >= 0) || !isfinite(spans->length_in) ||
        !(spans->support[spans->supports - 1].at_in <= spans->length_in))
        return false;
    for (size_t i = 1; i < spans->supports; i++)
        if (!(spans->support[i].at_in > spans->support[i - 1].at_in))
            return false;
    for (size_t i = 0; i < spans->count; i++)
        if (!is_load_good(spans, &spans->load[i]))
            return false;
    return true;
}

/* Shear and moment that an overhang brings to its support; without an overhang what lies there only rests on it. */
static void solve_overhang(struct beam_spans *spans, bool right)
{
    struct beam_support *support = &spans->support[right ? spans->supports - 1 : 0];
    double from = right ? support->at_in : -INFINITY, to = right ? INFINITY : support->at_in;
    bool stands = stands_at_end(spans, right);
    double total = stands ? 0 : spans_integral(spans, from, to, support->at_in, 0);
    double moment = stands ? 0 : spans_integral(spans, from, to, support->at_in, 1);
    support->shear[right] = right ? total : -total;
    support->moment = right ? moment : -moment;
}

/* M[i-1] L[i-1] + 2 M[i] (L[i-1] + L[i]) + M[i+1] L[i] = 6 (slope right of span i-1 - slope left of span i), each span
 * alone.  On the way down `reaction` holds the factor of the next moment in M[i] = moment - factor M[i+1]. */
static void solve_moments(struct beam_spans *spans)
{
    struct beam_support *support = spans->support;
    struct alone before = span_alone(spans, 0);
    support[0].reaction = 0;
    for (size_t i = 1; i + 1 < spans->supports; i++) {
        struct alone after = span_alone(spans, i);
        double pivot = 2 * (before.length + after.length) - before.length * support[i - 1].reaction;
        double wanted = 6 * (before.slope[1] - after.slope[0]);
        support[i].reaction = after.length / pivot;
        support[i].moment = (wanted - before.length * support[i - 1].moment) / pivot;
        before = after;
    }
    for (size_t i = spans->supports - 2; i > 0; i--)
        support[i].moment -= support[i].reaction * support[i + 1].moment;
}

static void solve_span(struct beam_spans *spans, size_t i)
{
    struct beam_support *left = &spans->support[i], *right = &spans->support[i + 1];
    struct alone alone = span_alone(spans, i);
    left->shear[1] = alone.shear + (right->moment - left->moment) / alone.length;
    right->shear[0] = left->shear[1] - alone.total;
    left->slope = alone.slope[0] + (2 * left->moment + right->moment) * alone.length / 6;
    if (i + 2 == spans->supports)
        right->slope = alone.slope[1] - (left->moment + 2 * right->moment) * alone.length / 6;
}

/* What rests on a support: point loads over it, and all beyond an end that stands there. */
static double straight_down(const struct beam_spans *spans, size_t i)
{
    double x = spans->support[i].at_in, sum = 0;
    for (size_t k = 0; k < spans->count; k++)
        if (spans->load[k].point && spans->load[k].from_in == x)
            sum += spans_lb(spans, &spans->load[k].amount);
    if (i == 0 && stands_at_end(spans, false))
        sum += spans_integral(spans, -INFINITY, x, x, 0);
    if (i + 1 == spans->supports && stands_at_end(spans, true))
        sum += spans_integral(spans, x, INFINITY, x, 0);
    return sum;
}

bool spans_solve(struct beam_spans *spans)
{
    if (!is_good(spans))
        return false;
    solve_overhang(spans, false);
    solve_overhang(spans, true);
    solve_moments(spans);
    for (size_t i = 0; i + 1 < spans->supports; i++)
        solve_span(spans, i);
    for (size_t i = 0; i < spans->supports; i++) {
        struct beam_support *support = &spans->support[i];
        support->reaction = support->shear[1] - support->shear[0] + straight_down(spans, i);
    }
    return true;
}
