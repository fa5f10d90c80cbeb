/* Simple-span statics in closed form; see beam.h. */
#include "sawbill/beam.h"

#include <math.h>

/* One set of loads with the factors put in. */
struct line {
    const struct beam_load *load;
    size_t count;
    const double *factor;
    double span, reaction, slope; /* reaction at 0, of loads within the span; E I times the slope there */
};

static double amount_of(const struct line *line, size_t i)
{
    double sum = 0;
    for (int source = 0; source < LOAD_SOURCES; source++)
        sum += line->factor[source] * line->load[i].amount.of[source];
    return sum;
}

static double within(double x, double most)
{
    return fmin(fmax(x, 0), most);
}

/* The bracket <x - a>^n / n!. */
static double bracket(double x, double a, int n)
{
    static const double factorial[] = {1, 1, 2, 6, 24};
    if (x < a)
        return 0;
    return n == 0 ? 1 : pow(x - a, n) / factorial[n];
}

/* Sum over the loads of bracket n for point loads and n + 1 for line loads: n = 0 shear, 1 moment, 2 slope, 3 sag.
 * Loads at a support or beyond it are left out; line loads are cut at the supports. */
static double load_sum(const struct line *line, double x, int n)
{
    double sum = 0;
    for (size_t i = 0; i < line->count; i++) {
        const struct beam_load *load = &line->load[i];
        if (load->point) {
            if (load->from_in > 0 && load->from_in < line->span)
                sum += amount_of(line, i) * bracket(x, load->from_in, n);
            continue;
        }
        double from = within(load->from_in, line->span), to = within(load->to_in, line->span);
        if (to > from)
            sum += amount_of(line, i) * (bracket(x, from, n + 1) - bracket(x, to, n + 1));
    }
    return sum;
}

static double shear_at(const struct line *line, double x)
{
    return line->reaction - load_sum(line, x, 0);
}

static double moment_at(const struct line *line, double x)
{
    return line->reaction * x - load_sum(line, x, 1);
}

static double slope_at(const struct line *line, double x)
{
    return line->slope + line->reaction * x * x / 2 - load_sum(line, x, 2);
}

static double sag_at(const struct line *line, double x)
{
    return -(line->slope * x + line->reaction * x * x * x / 6 - load_sum(line, x, 3));
}

/* Shear just left of x: a point load at x has not yet come. */
static double shear_before(const struct line *line, double x)
{
    double shear = shear_at(line, x);
    for (size_t i = 0; i < line->count; i++)
        if (line->load[i].point && line->load[i].from_in == x && x > 0 && x < line->span)
            shear += amount_of(line, i);
    return shear;
}

static struct line line_of(double span, const struct beam_load *loads, size_t count, const double *factor)
{
    struct line line = {.load = loads, .count = count, .factor = factor, .span = span};
    line.reaction = load_sum(&line, span, 1) / span;
    line.slope = load_sum(&line, span, 3) / span - line.reaction * span * span / 6;
    return line;
}

/* The next place after x where a load starts or ends, at most the span. */
static double next_break(const struct line *line, double x)
{
    double next = line->span;
    for (size_t i = 0; i < line->count; i++) {
        double place[2] = {line->load[i].from_in, line->load[i].point ? line->load[i].from_in : line->load[i].to_in};
        for (int k = 0; k < 2; k++)
            if (place[k] > x && place[k] < next)
                next = place[k];
    }
    return next;
}

static void keep(struct beam_extreme *best, double value, double at)
{
    if (fabs(value) > fabs(best->value))
        *best = (struct beam_extreme){value, at};
}

/* Root of the slope between two places where it has not the same sign, by halving until doubles have no middle. */
static double slope_root(const struct line *line, double low, double high)
{
    bool rising = slope_at(line, low) < 0;
    for (;;) {
        double middle = low + (high - low) / 2;
        if (middle <= low || middle >= high)
            return middle;
        if ((slope_at(line, middle) < 0) == rising)
            low = middle;
        else
            high = middle;
    }
}

static void keep_sag(const struct line *line, struct beam_result *out, double low, double high)
{
    double a = slope_at(line, low), b = slope_at(line, high);
    if (high > low && ((a < 0) != (b < 0))) {
        double root = slope_root(line, low, high);
        keep(&out->sag, sag_at(line, root), root);
    }
}

/* One piece without a break inside: shear falls by w, so the moment is a parabola and the slope a cubic. */
static void keep_piece(const struct line *line, struct beam_result *out, double x0, double x1)
{
    double v0 = shear_at(line, x0), v1 = shear_before(line, x1), length = x1 - x0, w = (v0 - v1) / length;
    double m0 = moment_at(line, x0);
    keep(&out->shear, v0, x0);
    keep(&out->shear, v1, x1);
    keep(&out->moment, m0, x0);
    keep(&out->moment, moment_at(line, x1), x1);
    if ((v0 < 0) != (v1 < 0) && w != 0) {
        double x = x0 + v0 / w;
        keep(&out->moment, moment_at(line, x), x);
    }
    /* The slope turns where the moment is zero: m0 + v0 s - w s^2 / 2 = 0. */
    double turn[2] = {x0, x1}, inside = v0 * v0 + 2 * w * m0;
    if (w != 0 && inside >= 0) {
        double root = sqrt(inside), a = x0 + (v0 - root) / w, b = x0 + (v0 + root) / w;
        turn[0] = within(fmin(fmax(fmin(a, b), x0), x1), x1);
        turn[1] = within(fmin(fmax(fmax(a, b), x0), x1), x1);
    } else if (w == 0 && v0 != 0) {
        turn[0] = fmin(fmax(x0 - m0 / v0, x0), x1);
    }
    keep_sag(line, out, x0, turn[0]);
    keep_sag(line, out, turn[0], turn[1]);
    keep_sag(line, out, turn[1], x1);
    keep(&out->sag, sag_at(line, x1), x1);
}

/* What lies at or beyond a support goes into it. */
static double straight_down(const struct line *line, int end)
{
    double sum = 0;
    for (size_t i = 0; i < line->count; i++) {
        const struct beam_load *load = &line->load[i];
        if (load->point) {
            bool beyond = end == 0 ? load->from_in <= 0 : load->from_in >= line->span;
            sum += beyond ? amount_of(line, i) : 0;
            continue;
        }
        double length = end == 0 ? fmin(load->to_in, 0) - fmin(load->from_in, 0)
                                 : fmax(load->to_in, line->span) - fmax(load->from_in, line->span);
        sum += amount_of(line, i) * fmax(length, 0);
    }
    return sum;
}

struct beam_result beam_solve(double span_in, const struct beam_load *loads, size_t count,
                              const double factor[LOAD_SOURCES])
{
    struct beam_result out = {0};
    if (!(span_in > 0))
        return out;
    struct line line = line_of(span_in, loads, count, factor);
    for (double x = 0; x < span_in;) {
        double next = next_break(&line, x);
        keep_piece(&line, &out, x, next);
        x = next;
    }
    out.reaction[0] = line.reaction + straight_down(&line, 0);
    out.reaction[1] = load_sum(&line, span_in, 0) - line.reaction + straight_down(&line, 1);
    return out;
}

struct beam_at beam_at(double span_in, const struct beam_load *loads, size_t count, const double factor[LOAD_SOURCES],
                       double x_in)
{
    struct line line = line_of(span_in, loads, count, factor);
    return (struct beam_at){shear_at(&line, x_in), moment_at(&line, x_in), sag_at(&line, x_in)};
}
