/* Along the beam between its supports: the walk from piece to piece, and the extremes of each; see beam.h. */
#include "spans.h"

#include <math.h>

enum { DEGREE = 5, SHEAR = 3, MOMENT = 2, SLOPE = 1 }; /* of the deflection, and which derivative of it each is */

/* A piece without a break inside.  Coefficients of E I times the deflection in powers of the distance from its start;
 * moment, shear and load are its second, third and fourth derivatives, the first two with the sign turned. */
struct piece {
    double from, to, length;
    double sag[DEGREE + 1];
};

static double derivative(const struct piece *piece, int order, double s)
{
    static const double falling[DEGREE + 1][DEGREE + 1] = {{1, 1, 1, 1, 1, 1},    {0, 1, 2, 3, 4, 5},
                                                           {0, 0, 2, 6, 12, 20},  {0, 0, 0, 6, 24, 60},
                                                           {0, 0, 0, 0, 24, 120}, {0, 0, 0, 0, 0, 120}};
    double sum = 0;
    for (int k = DEGREE; k >= order; k--)
        sum = sum * s + falling[order][k] * piece->sag[k];
    return sum;
}

static double shear_of(const struct piece *piece, double s)
{
    return -derivative(piece, SHEAR, s);
}

static double moment_of(const struct piece *piece, double s)
{
    return -derivative(piece, MOMENT, s);
}

static double next_break(const struct beam_spans *spans, double x)
{
    double next = spans->length_in;
    for (size_t i = 0; i < spans->supports; i++)
        if (spans->support[i].at_in > x)
            next = fmin(next, spans->support[i].at_in);
    for (size_t i = 0; i < spans->count; i++) {
        const struct beam_load *load = &spans->load[i];
        if (load->from_in > x)
            next = fmin(next, load->from_in);
        if (!load->point && load->to_in > x)
            next = fmin(next, load->to_in);
    }
    return next;
}

/* Puts the loads of the piece that starts at x on the state there. */
static struct piece piece_from(const struct beam_spans *spans, double x, struct beam_at at, double slope)
{
    double next = next_break(spans, x), left = 0, rise = 0;
    for (size_t i = 0; i < spans->count; i++) {
        const struct beam_load *load = &spans->load[i];
        if (load->point || load->from_in > x || load->to_in < next || !(load->to_in > load->from_in))
            continue;
        left += spans_load_at(spans, load, x);
        rise += spans_load_at(spans, load, next) - spans_load_at(spans, load, x);
    }
    double tilt = next > x ? rise / (next - x) : 0;
    return (struct piece){.from = x,
                          .to = next,
                          .length = next - x,
                          .sag = {at.sag, slope, -at.moment / 2, -at.shear / 6, left / 24, tilt / 120}};
}

static double points_at(const struct beam_spans *spans, double x)
{
    double sum = 0;
    for (size_t i = 0; i < spans->count; i++)
        if (spans->load[i].point && spans->load[i].from_in == x)
            sum += spans_lb(spans, &spans->load[i].amount);
    return sum;
}

static struct piece piece_at_support(const struct beam_spans *spans, const struct beam_support *support)
{
    struct beam_at at = {.shear = support->shear[1], .moment = support->moment};
    return piece_from(spans, support->at_in, at, support->slope);
}

/* From a free end, slope and deflection are found back from the first support. */
static struct piece first_piece(const struct beam_spans *spans)
{
    const struct beam_support *first = &spans->support[0];
    double x = first->at_in;
    if (!(x > 0))
        return piece_at_support(spans, first);
    double slope = first->slope - spans_integral(spans, -INFINITY, x, x, 2);
    struct beam_at at = {.shear = -points_at(spans, 0), .sag = -slope * x - spans_integral(spans, -INFINITY, x, x, 3)};
    return piece_from(spans, 0, at, slope);
}

/* The support, if one is there, knows its values better than the way to it does. */
static struct piece next_piece(const struct beam_spans *spans, const struct piece *piece)
{
    double x = piece->to, s = piece->length;
    for (size_t i = 0; i < spans->supports; i++)
        if (spans->support[i].at_in == x)
            return piece_at_support(spans, &spans->support[i]);
    struct beam_at at = {shear_of(piece, s) - points_at(spans, x), moment_of(piece, s), derivative(piece, 0, s)};
    return piece_from(spans, x, at, derivative(piece, SLOPE, s));
}

static void keep_most(struct beam_extreme *best, double value, double at)
{
    if (value > best->value)
        *best = (struct beam_extreme){value, at};
}

static void keep_least(struct beam_extreme *best, double value, double at)
{
    if (value < best->value)
        *best = (struct beam_extreme){value, at};
}

/* Places where a derivative is zero are the extremes of the one below it. */
static void keep_at(const struct piece *piece, struct beam_extremes *out, int order, double s)
{
    double x = piece->from + s, shear = shear_of(piece, s), moment = moment_of(piece, s), sag = derivative(piece, 0, s);
    if (order == SHEAR && fabs(shear) > fabs(out->shear.value))
        out->shear = (struct beam_extreme){shear, x};
    if (order == MOMENT) {
        keep_most(&out->sagging, moment, x);
        keep_least(&out->hogging, moment, x);
    }
    if (order == 0) {
        keep_most(&out->down, sag, x);
        keep_least(&out->up, sag, x);
    }
}

/* Where a derivative changes sign between two places, by halving until doubles have no middle. */
static double root_between(const struct piece *piece, int order, double low, double high)
{
    bool negative = derivative(piece, order, low) < 0;
    for (;;) {
        double middle = low + (high - low) / 2;
        if (middle <= low || middle >= high)
            return middle;
        if ((derivative(piece, order, middle) < 0) == negative)
            low = middle;
        else
            high = middle;
    }
}

/* A derivative is monotone between the stops, the zeros of its own derivative: takes its zeros for the next stops. */
static int next_stops(const struct piece *piece, int order, double *stop, int stops)
{
    double next[DEGREE + 2] = {stop[0]};
    int count = 1;
    for (int i = 1; i < stops; i++)
        if ((derivative(piece, order, stop[i - 1]) < 0) != (derivative(piece, order, stop[i]) < 0))
            next[count++] = root_between(piece, order, stop[i - 1], stop[i]);
    next[count++] = stop[stops - 1];
    for (int i = 0; i < count; i++)
        stop[i] = next[i];
    return count;
}

static void keep_piece(const struct piece *piece, struct beam_extremes *out, double low, double high)
{
    double stop[DEGREE + 2] = {low, high};
    int stops = 2;
    for (int order = DEGREE - 1; order > 0; order--) {
        stops = next_stops(piece, order, stop, stops);
        for (int i = 0; i < stops; i++)
            keep_at(piece, out, order - 1, stop[i]);
    }
}

struct beam_extremes spans_extremes(const struct beam_spans *spans, double from_in, double to_in)
{
    struct beam_extremes out = {0};
    out.sagging.at_in = out.hogging.at_in = out.down.at_in = out.up.at_in = out.shear.at_in = from_in;
    for (struct piece piece = first_piece(spans); piece.length > 0; piece = next_piece(spans, &piece)) {
        double low = fmax(from_in - piece.from, 0), high = fmin(to_in - piece.from, piece.length);
        if (high > low)
            keep_piece(&piece, &out, low, high);
    }
    return out;
}

struct beam_at spans_at(const struct beam_spans *spans, double x_in)
{
    struct piece piece = first_piece(spans);
    while (piece.to <= x_in) {
        struct piece next = next_piece(spans, &piece);
        if (!(next.length > 0))
            break;
        piece = next;
    }
    double s = fmin(fmax(x_in - piece.from, 0), piece.length);
    return (struct beam_at){shear_of(&piece, s), moment_of(&piece, s), derivative(&piece, 0, s)};
}
