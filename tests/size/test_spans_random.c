/* Random beams against a second method, and what must hold whatever they are.  Fixed seed; `size_test_spans_random
 * 100000` runs that many.
 *
 * The second method takes the inner supports away, puts unknown forces in their place and finds these from the
 * deflections there (force method), all deflections by virtual work: the integral of M m, by Gauss's points piece by
 * piece.  Moments are levers of the loads right of a place.  It shares neither formulas nor code with the program. */
#include "support.h"

#include <string.h>

#include "sawbill/beam.h"

enum { SUPPORTS = 5, LOADS = 6, PLACES = SUPPORTS + 2 * LOADS + 2, GAUSS = 4, SAMPLES = 24 };
static const double all[LOAD_SOURCES] = {1, 1, 1, 1};
static int rounds = 10000;

/* Knuth's linear congruential generator: the same beams on every machine. */
static double random_to(uint64_t *seed, double most)
{
    *seed = *seed * 6364136223846793005ULL + 1442695040888963407ULL;
    return most * (double)(*seed >> 11) / 9007199254740992.0;
}

struct random_beam {
    double length;
    struct beam_support support[SUPPORTS + 1];
    size_t supports;
    struct beam_load load[LOADS + 1];
    size_t count;
    double size; /* of all loads, without sign, lb */
};

static struct beam_spans spans_of(struct random_beam *beam)
{
    return (struct beam_spans){beam->length, beam->support, beam->supports, beam->load, beam->count, all};
}

static struct beam_load random_load(uint64_t *seed, double length)
{
    double a = random_to(seed, length), b = random_to(seed, length), kind = random_to(seed, 3);
    struct beam_load load = {.point = kind<1, .from_in = fmin(a, b), .to_in = fmax(a, b), .tapers = kind> 2};
    double most = load.point ? 3000 : 60, lift = random_to(seed, 5) < 1 ? most : 0;
    for (int source = 0; source < LOAD_SOURCES; source++) {
        load.amount.of[source] = random_to(seed, most) - lift;
        load.amount_to.of[source] = random_to(seed, most) - lift;
    }
    return load;
}

static struct random_beam random_beam(uint64_t *seed)
{
    struct random_beam beam = {.supports = 2 + (size_t)random_to(seed, SUPPORTS - 1)};
    double at = random_to(seed, 2) < 1 ? 0 : 4 + random_to(seed, 60);
    for (size_t i = 0; i < beam.supports; i++) {
        beam.support[i] = (struct beam_support){.at_in = at};
        at += i + 1 < beam.supports ? 12 + random_to(seed, 230) : 0;
    }
    beam.length = at + (random_to(seed, 2) < 1 ? 0 : 4 + random_to(seed, 60));
    beam.count = 1 + (size_t)random_to(seed, LOADS);
    for (size_t i = 0; i < beam.count; i++) {
        beam.load[i] = random_load(seed, beam.length);
        if (random_to(seed, 10) < 1 && beam.load[i].point)
            beam.load[i].from_in = beam.support[0].at_in;
        struct loads total = beam_load_total(&beam.load[i]);
        for (int source = 0; source < LOAD_SOURCES; source++)
            beam.size += fabs(total.of[source]);
    }
    return beam;
}

/* lb of a load, its sources added; at its right end where it tapers. */
static double sum_of(const struct loads *amount)
{
    return amount->of[0] + amount->of[1] + amount->of[2] + amount->of[3];
}

/* The moment about x of a load right of x: lever times pounds, a trapezoid as two triangles. */
static double lever(const struct beam_load *load, double x)
{
    double w[2] = {sum_of(&load->amount), sum_of(load->tapers ? &load->amount_to : &load->amount)};
    if (load->point)
        return load->from_in > x ? w[0] * (load->from_in - x) : 0;
    double a = load->from_in, b = load->to_in;
    if (b <= x)
        return 0;
    if (a < x) {
        w[0] += (w[1] - w[0]) * (x - a) / (b - a);
        a = x;
    }
    double third = (b - a) / 3;
    return (b - a) / 2 * (w[0] * (a + third - x) + w[1] * (b - third - x));
}

/* The second method: reactions, then moments of the whole and of a unit load, on the two outer supports. */
struct second {
    const struct random_beam *beam;
    double place[PLACES], reaction[SUPPORTS + 1];
    size_t places;
    double moment[PLACES][GAUSS]; /* of the whole, at Gauss's points of each piece */
};

static int compare(const void *a, const void *b)
{
    double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

static void find_places(struct second *second)
{
    const struct random_beam *beam = second->beam;
    size_t n = 0;
    second->place[n++] = 0;
    second->place[n++] = beam->length;
    for (size_t i = 0; i < beam->supports; i++)
        second->place[n++] = beam->support[i].at_in;
    for (size_t i = 0; i < beam->count; i++) {
        second->place[n++] = beam->load[i].from_in;
        second->place[n++] = beam->load[i].to_in < beam->length ? beam->load[i].to_in : beam->length;
    }
    qsort(second->place, n, sizeof *second->place, compare);
    second->places = n;
}

/* Moment at x of a unit load at u on the outer supports alone. */
static double unit_moment(const struct second *second, double u, double x)
{
    const struct random_beam *beam = second->beam;
    double a = beam->support[0].at_in, b = beam->support[beam->supports - 1].at_in;
    double right = (u - a) / (b - a), left = 1 - right; /* reactions */
    return (x < a ? 0 : left * (x - a)) + (x < b ? 0 : right * (x - b)) - (x < u ? 0 : x - u);
}

/* Moment at x with the forces of all supports, from the right. */
static double moment_at(const struct second *second, double x)
{
    const struct random_beam *beam = second->beam;
    double sum = 0;
    for (size_t i = 0; i < beam->supports; i++)
        sum += beam->support[i].at_in > x ? second->reaction[i] * (beam->support[i].at_in - x) : 0;
    for (size_t i = 0; i < beam->count; i++)
        sum -= lever(&beam->load[i], x);
    return sum;
}

/* Gauss and Legendre's four points, exact to the seventh degree (Abramowitz and Stegun, Table 25.4). */
static const double gauss_at[GAUSS] = {-0.861136311594053, -0.339981043584856, 0.339981043584856, 0.861136311594053};
static const double gauss_weight[GAUSS] = {0.347854845137454, 0.652145154862546, 0.652145154862546, 0.347854845137454};

static double gauss_place(double a, double b, int k)
{
    return (a + b) / 2 + gauss_at[k] * (b - a) / 2;
}

static void fill_moments(struct second *second)
{
    for (size_t i = 0; i + 1 < second->places; i++)
        for (int k = 0; k < GAUSS; k++)
            second->moment[i][k] = moment_at(second, gauss_place(second->place[i], second->place[i + 1], k));
}

/* Integral of M m over a piece; M is known at the points of a whole piece only. */
static double work(const struct second *second, double u, double a, double b, const double *moment)
{
    double sum = 0;
    for (int k = 0; k < GAUSS; k++) {
        double x = gauss_place(a, b, k), m = unit_moment(second, u, x);
        sum += gauss_weight[k] * (moment ? moment[k] : moment_at(second, x)) * m;
    }
    return sum * (b - a) / 2;
}

/* E I times the deflection at u. */
static double sag_at(const struct second *second, double u)
{
    double sum = 0;
    for (size_t i = 0; i + 1 < second->places; i++) {
        double a = second->place[i], b = second->place[i + 1];
        if (u > a && u < b)
            sum += work(second, u, a, u, NULL) + work(second, u, u, b, NULL);
        else if (b > a)
            sum += work(second, u, a, b, second->moment[i]);
    }
    return sum;
}

/* Outer reactions by levers once the inner ones are known. */
static void balance(struct second *second)
{
    const struct random_beam *beam = second->beam;
    size_t last = beam->supports - 1;
    double a = beam->support[0].at_in, b = beam->support[last].at_in, about = 0, total = 0;
    for (size_t i = 0; i < beam->count; i++) {
        double from_0 = lever(&beam->load[i], -1), from_1 = lever(&beam->load[i], -2);
        total += from_1 - from_0;
        about += from_0 - (1 + a) * (from_1 - from_0);
    }
    for (size_t i = 1; i < last; i++) {
        total -= second->reaction[i];
        about -= second->reaction[i] * (beam->support[i].at_in - a);
    }
    second->reaction[last] = about / (b - a);
    second->reaction[0] = total - second->reaction[last];
}

/* Deflections at the inner supports under the loads (column n) and under each unknown force. */
static void solve_forces(struct second *second, double f[SUPPORTS][SUPPORTS + 1], size_t n)
{
    for (size_t i = 0; i < n; i++) {
        for (size_t k = i + 1; k < n; k++) {
            double times = f[k][i] / f[i][i];
            for (size_t c = i; c <= n; c++)
                f[k][c] -= times * f[i][c];
        }
    }
    for (size_t i = n; i-- > 0;) {
        double sum = f[i][n];
        for (size_t c = i + 1; c < n; c++)
            sum -= f[i][c] * second->reaction[c + 1];
        second->reaction[i + 1] = sum / f[i][i];
    }
}

static void second_solve(struct second *second, const struct random_beam *beam)
{
    memset(second, 0, sizeof *second);
    second->beam = beam;
    find_places(second);
    balance(second);
    fill_moments(second);
    double f[SUPPORTS][SUPPORTS + 1];
    size_t inner = beam->supports - 2;
    for (size_t i = 0; i < inner; i++) {
        double u = beam->support[i + 1].at_in;
        f[i][inner] = sag_at(second, u);
        for (size_t k = 0; k < inner; k++) {
            f[i][k] = 0;
            double v = beam->support[k + 1].at_in;
            for (size_t p = 0; p + 1 < second->places; p++) {
                double a = second->place[p], b = second->place[p + 1], m[GAUSS];
                for (int g = 0; g < GAUSS; g++)
                    m[g] = unit_moment(second, v, gauss_place(a, b, g));
                f[i][k] += work(second, u, a, b, m);
            }
        }
    }
    solve_forces(second, f, inner);
    balance(second);
    fill_moments(second);
}

static void same_extreme(const struct second *second, const struct beam_extremes *got, double force, double sag)
{
    assert_near(got->sagging.value, fmax(moment_at(second, got->sagging.at_in), 0), force);
    assert_near(got->hogging.value, fmin(moment_at(second, got->hogging.at_in), 0), force);
    assert_near(got->down.value, sag_at(second, got->down.at_in), sag);
    assert_near(got->up.value, sag_at(second, got->up.at_in), sag);
}

/* What is reported is there, and nothing greater is anywhere looked at. */
static void random_beams(void **state)
{
    (void)state;
    uint64_t seed = 20240607;
    size_t uplifts = 0;
    for (int round = 0; round < rounds; round++) {
        struct random_beam beam = random_beam(&seed);
        struct beam_spans spans = spans_of(&beam);
        struct second second;
        assert_true(spans_solve(&spans));
        second_solve(&second, &beam);
        double length = beam.length, lb = beam.size * 1e-9, force = lb * length, sag = lb * pow(length, 3);
        for (size_t i = 0; i < beam.supports; i++) {
            assert_near(beam.support[i].reaction, second.reaction[i], beam.size * 1e-7);
            uplifts += beam.support[i].reaction < -1;
        }
        struct beam_extremes got = spans_extremes(&spans, 0, length);
        same_extreme(&second, &got, force, sag);
        double slack = 1e-12 * beam.size * length;
        for (int k = 0; k <= SAMPLES; k++) {
            double x = length * k / SAMPLES;
            struct beam_at at = spans_at(&spans, x);
            double moment = moment_at(&second, x), deflection = sag_at(&second, x);
            assert_near(at.moment, moment, force);
            assert_near(at.sag, deflection, sag);
            assert_true(at.moment <= got.sagging.value + slack && at.moment >= got.hogging.value - slack);
            assert_true(fabs(at.shear) <= fabs(got.shear.value) + beam.size * 1e-12);
            assert_true(at.sag <= got.down.value + slack * length * length);
            assert_true(at.sag >= got.up.value - slack * length * length);
        }
    }
    assert_true(uplifts > (size_t)rounds / 20);
}

/* Loads and reactions balance: pounds, and moments about the left end. */
static void equilibrium(void **state)
{
    (void)state;
    uint64_t seed = 11;
    for (int round = 0; round < rounds; round++) {
        struct random_beam beam = random_beam(&seed);
        struct beam_spans spans = spans_of(&beam);
        assert_true(spans_solve(&spans));
        double lb = 0, about = 0;
        for (size_t i = 0; i < beam.supports; i++) {
            lb += beam.support[i].reaction;
            about += beam.support[i].reaction * beam.support[i].at_in;
        }
        for (size_t i = 0; i < beam.count; i++) {
            struct loads total = beam_load_total(&beam.load[i]);
            lb -= sum_of(&total);
            about -= lever(&beam.load[i], 0);
        }
        assert_near(lb, 0, beam.size * 1e-9);
        assert_near(about, 0, beam.size * beam.length * 1e-9);
    }
}

static void same_extremes(const struct beam_extremes *a, const struct beam_extremes *b, double force, double sag,
                          double slack)
{
    assert_near(b->sagging.value, a->sagging.value * force, fabs(slack * force));
    assert_near(b->hogging.value, a->hogging.value * force, fabs(slack * force));
    assert_near(b->down.value, a->down.value * sag, fabs(slack * sag) * 1e5);
    assert_near(b->up.value, a->up.value * sag, fabs(slack * sag) * 1e5);
}

/* Where the beam crosses its straight line between two supports or past them, a support would carry nothing. */
static double crossing(const struct beam_spans *spans, double from, double to)
{
    enum { STEPS = 16 };
    for (int k = 1; k + 1 < STEPS; k++) {
        double low = from + (to - from) * k / STEPS, high = from + (to - from) * (k + 1) / STEPS;
        bool down = spans_at(spans, low).sag > 0;
        if (down == (spans_at(spans, high).sag > 0))
            continue;
        for (double middle = low + (high - low) / 2; middle > low && middle < high; middle = low + (high - low) / 2)
            *((spans_at(spans, middle).sag > 0) == down ? &low : &high) = middle;
        return low;
    }
    return NAN;
}

static bool add_idle_support(struct random_beam *beam, const struct beam_spans *spans, size_t *which)
{
    for (size_t i = 0; i <= beam->supports; i++) {
        double from = i ? beam->support[i - 1].at_in : 0,
               to = i < beam->supports ? beam->support[i].at_in : beam->length;
        double at = to > from ? crossing(spans, from, to) : NAN;
        if (isnan(at))
            continue;
        memmove(&beam->support[i + 1], &beam->support[i], (beam->supports - i) * sizeof *beam->support);
        beam->support[i] = (struct beam_support){.at_in = at};
        beam->supports++;
        *which = i;
        return true;
    }
    return false;
}

static void support_of_no_reaction(void **state)
{
    (void)state;
    uint64_t seed = 12;
    size_t found = 0;
    for (int round = 0; round < rounds; round++) {
        struct random_beam beam = random_beam(&seed);
        struct beam_spans spans = spans_of(&beam);
        assert_true(spans_solve(&spans));
        struct beam_extremes before = spans_extremes(&spans, 0, beam.length);
        struct random_beam more = beam;
        size_t which = 0;
        if (!add_idle_support(&more, &spans, &which))
            continue;
        found++;
        spans = spans_of(&more);
        assert_true(spans_solve(&spans));
        struct beam_extremes after = spans_extremes(&spans, 0, beam.length);
        assert_near(more.support[which].reaction, 0, beam.size * 1e-6);
        for (size_t i = 0; i < beam.supports; i++)
            assert_near(more.support[i + (i >= which)].reaction, beam.support[i].reaction, beam.size * 1e-6);
        same_extremes(&before, &after, 1, 1, beam.size * beam.length * 1e-7);
    }
    assert_true(found > (size_t)rounds / 20);
}

/* All loads k times: all k times.  All lengths k times under the same pounds: moments k, deflections k^3 times. */
static void scaling(void **state)
{
    (void)state;
    uint64_t seed = 13;
    for (int round = 0; round < rounds; round++) {
        struct random_beam beam = random_beam(&seed), longer = beam;
        struct beam_spans spans = spans_of(&beam), other = spans_of(&longer);
        double k = 0.1 + random_to(&seed, 9), factor[LOAD_SOURCES] = {k, k, k, k};
        assert_true(spans_solve(&spans));
        struct beam_extremes plain = spans_extremes(&spans, 0, beam.length);
        other.factor = factor;
        assert_true(spans_solve(&other));
        struct beam_extremes heavy = spans_extremes(&other, 0, beam.length);
        double slack = beam.size * beam.length * 1e-10;
        same_extremes(&plain, &heavy, k, k, slack);
        for (size_t i = 0; i < beam.supports; i++)
            longer.support[i].at_in *= k;
        for (size_t i = 0; i < beam.count; i++) {
            longer.load[i].from_in *= k;
            longer.load[i].to_in *= k;
        }
        const double thinner[LOAD_SOURCES] = {1 / k, 1 / k, 1 / k, 1 / k};
        for (size_t i = 0; i < beam.count; i++)
            for (int source = 0; source < LOAD_SOURCES && !longer.load[i].point; source++) {
                longer.load[i].amount.of[source] *= thinner[source];
                longer.load[i].amount_to.of[source] *= thinner[source];
            }
        other = spans_of(&longer);
        other.length_in = beam.length * k;
        assert_true(spans_solve(&other));
        struct beam_extremes wide = spans_extremes(&other, 0, other.length_in);
        same_extremes(&plain, &wide, k, k * k * k, slack);
        for (size_t i = 0; i < beam.supports; i++)
            assert_near(longer.support[i].reaction, beam.support[i].reaction, beam.size * 1e-9);
    }
}

int main(int argc, char **argv)
{
    if (argc > 1)
        rounds = (int)strtol(argv[1], NULL, 10);
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(random_beams),
        cmocka_unit_test(equilibrium),
        cmocka_unit_test(support_of_no_reaction),
        cmocka_unit_test(scaling),
    };
    return rounds > 0 ? cmocka_run_group_tests(tests, NULL, NULL) : 2;
}
