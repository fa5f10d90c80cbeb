/* The loads of a beam, whole and in part; see spans.h. */
#include "spans.h"

#include <math.h>

double spans_lb(const struct beam_spans *spans, const struct loads *amount)
{
    double sum = 0;
    for (int source = 0; source < LOAD_SOURCES; source++)
        sum += spans->factor[source] * amount->of[source];
    return sum;
}

struct loads beam_load_total(const struct beam_load *load)
{
    struct loads total = load->amount;
    double length = load->point ? 1 : fmax(load->to_in - load->from_in, 0);
    for (int source = 0; source < LOAD_SOURCES; source++) {
        if (load->tapers && !load->point)
            total.of[source] = (total.of[source] + load->amount_to.of[source]) / 2;
        total.of[source] *= length;
    }
    return total;
}

double spans_load_at(const struct beam_spans *spans, const struct beam_load *load, double x)
{
    double left = spans_lb(spans, &load->amount);
    if (!load->tapers)
        return left;
    double right = spans_lb(spans, &load->amount_to), share = (x - load->from_in) / (load->to_in - load->from_in);
    return left + (right - left) * share;
}

static struct loads amount_at(const struct beam_load *load, double x)
{
    struct loads out = load->amount;
    double share = (x - load->from_in) / (load->to_in - load->from_in);
    for (int source = 0; load->tapers && source < LOAD_SOURCES; source++)
        out.of[source] += (load->amount_to.of[source] - load->amount.of[source]) * share;
    return out;
}

struct beam_load spans_cut(const struct beam_load *load, double from, double to)
{
    return (struct beam_load){.from_in = from,
                              .to_in = to,
                              .tapers = load->tapers,
                              .amount = amount_at(load, from),
                              .amount_to = amount_at(load, to)};
}

bool spans_part(const struct beam_spans *spans, const struct beam_load *load, double from, double to,
                struct spans_part *out)
{
    if (load->point) {
        *out = (struct spans_part){.middle = load->from_in, .total = spans_lb(spans, &load->amount)};
        return load->from_in > from && load->from_in < to;
    }
    double a = fmax(load->from_in, from), b = fmin(load->to_in, to);
    if (!(b > a))
        return false;
    double left = spans_load_at(spans, load, a), right = spans_load_at(spans, load, b);
    *out = (struct spans_part){.middle = a + (b - a) / 2, .half = (b - a) / 2, .rise = right - left};
    out->total = (left + right) * out->half;
    return true;
}

/* With w = mean + rise t / (2 h) over t = -h..h and X from the middle to x: the integral of w (X - t)^n / n!. */
static double integral(const struct spans_part *part, double x, int n)
{
    double h2 = part->half * part->half, arm = x - part->middle, tilt = part->rise * h2 / 3;
    switch (n) {
    case 0:
        return part->total;
    case 1:
        return part->total * arm - tilt;
    case 2:
        return (part->total * (arm * arm + h2 / 3) - 2 * arm * tilt) / 2;
    default:
        return (part->total * arm * (arm * arm + h2) - 3 * arm * arm * tilt - part->rise * h2 * h2 / 5) / 6;
    }
}

double spans_integral(const struct beam_spans *spans, double from, double to, double x, int n)
{
    double sum = 0;
    for (size_t i = 0; i < spans->count; i++) {
        struct spans_part part;
        if (spans_part(spans, &spans->load[i], from, to, &part))
            sum += integral(&part, x, n);
    }
    return sum;
}
