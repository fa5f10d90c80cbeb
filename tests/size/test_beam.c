/* Simple spans: handbook formulas, and random loads against an independent numeric integration. */
#include "support.h"

#include "sawbill/beam.h"

/* Formulas: American Wood Council, Design Aid 6, Beam Formulas with Shear and Moment Diagrams (2007), from memory; each
 * figure below is the formula's, and was confirmed elsewhere by a finite-element run.  Units lb and in; E I 1.58288e8.
 */
static const double ei = 1.58288e8, span = 144;
static const double all[LOAD_SOURCES] = {1, 1, 1, 1};
enum { TOLERANCE_PER_MILLION = 5 }; /* the figures have six digits */
static const double six_digits = TOLERANCE_PER_MILLION * 1e-6;

static struct beam_load line(double from, double to, double w)
{
    return (struct beam_load){.from_in = from, .to_in = to, .amount = {{w, 0, 0, 0}}};
}

static struct beam_load point(double at, double p)
{
    return (struct beam_load){.point = true, .from_in = at, .to_in = at, .amount = {{p, 0, 0, 0}}};
}

static void uniform_load(void **state)
{
    (void)state;
    struct beam_load load = line(0, span, 50);
    struct beam_result got = beam_solve(span, &load, 1, all);
    assert_within(got.reaction[0], 3600.0, six_digits); /* w L / 2 */
    assert_within(got.reaction[1], 3600.0, six_digits);
    assert_within(fabs(got.shear.value), 3600.0, six_digits);
    assert_within(got.moment.value, 129600.0, six_digits); /* w L^2 / 8 */
    assert_within(got.moment.at_in, 72.0, six_digits);
    assert_within(got.sag.value / ei, 1.76852, six_digits); /* 5 w L^4 / (384 E I) */
    assert_within(got.sag.at_in, 72.0, 1e-7);
}

static void uniform_load_on_part(void **state)
{
    (void)state;
    struct beam_load load = line(24, 84, 50);
    struct beam_result got = beam_solve(span, &load, 1, all);
    assert_within(got.reaction[0], 1875.0, six_digits);    /* w b (2c + b) / (2L), b = 60, c = 60 */
    assert_within(got.reaction[1], 1125.0, six_digits);    /* w b (2a + b) / (2L), a = 24 */
    assert_within(got.moment.value, 80156.25, six_digits); /* R1 (a + R1 / (2w)) */
    assert_within(got.moment.at_in, 24 + 1875.0 / 50, six_digits);
}

static void uniform_load_over_one_end(void **state)
{
    (void)state;
    struct beam_load load = line(0, 60, 50);
    struct beam_result got = beam_solve(span, &load, 1, all);
    assert_within(got.reaction[0], 2375.0, six_digits);    /* w a (2L - a) / (2L) */
    assert_within(got.reaction[1], 625.0, six_digits);     /* w a^2 / (2L) */
    assert_within(got.moment.value, 56406.25, six_digits); /* R1^2 / (2w) */
    assert_within(got.moment.at_in, 2375.0 / 50, six_digits);
    /* at 48 in: w x (a^2 (2L-a)^2 - 2 a x^2 (2L-a) + L x^3) / (24 E I L) */
    assert_within(beam_at(span, &load, 1, all, 48).sag / ei, 0.614343, six_digits);
}

static void point_load_at_center(void **state)
{
    (void)state;
    struct beam_load load = point(72, 2000);
    struct beam_result got = beam_solve(span, &load, 1, all);
    assert_within(got.moment.value, 72000.0, six_digits);   /* P L / 4 */
    assert_within(got.sag.value / ei, 0.78601, six_digits); /* P L^3 / (48 E I) */
}

static void point_load_anywhere(void **state)
{
    (void)state;
    struct beam_load load = point(96, 2000);
    struct beam_result got = beam_solve(span, &load, 1, all);
    assert_within(got.reaction[0], 666.667, six_digits); /* P b / L */
    assert_within(got.reaction[1], 1333.33, six_digits);
    assert_within(got.moment.value, 64000.0, six_digits); /* P a b / L */
    assert_within(got.moment.at_in, 96.0, six_digits);
    assert_within(got.sag.value / ei, 0.676108, six_digits); /* P a b (a+2b) sqrt(3a(a+2b)) / (27 E I L) */
    assert_within(got.sag.at_in, sqrt(96.0 * (96 + 2 * 48) / 3), 1e-7);
    assert_within(beam_at(span, &load, 1, all, 96).sag / ei, 0.621045, six_digits); /* P a^2 b^2 / (3 E I L) */
}

static void two_equal_point_loads(void **state)
{
    (void)state;
    struct beam_load loads[] = {point(48, 2000), point(96, 2000)};
    struct beam_result got = beam_solve(span, loads, 2, all);
    assert_within(got.moment.value, 96000.0, six_digits);   /* P a */
    assert_within(got.sag.value / ei, 1.33913, six_digits); /* P a (3L^2 - 4a^2) / (24 E I) */
}

/* What stands over a support goes into its reaction and not into the span. */
static void load_over_the_support(void **state)
{
    (void)state;
    struct beam_load loads[] = {point(-1, 500), point(0, 200), line(-2, 0, 10), point(span + 1, 300)};
    struct beam_result got = beam_solve(span, loads, 4, all);
    assert_near(got.reaction[0], 720, 1e-9);
    assert_near(got.reaction[1], 300, 1e-9);
    assert_near(got.moment.value, 0, 1e-9);
    assert_near(got.shear.value, 0, 1e-9);
}

static void factors_pick_the_source(void **state)
{
    (void)state;
    struct beam_load load = {.from_in = 0, .to_in = span, .amount = {{10, 20, 30, 40}}};
    const double factor[LOAD_SOURCES] = {1, 0.75, 0, 0.75 * 0.7};
    struct beam_result got = beam_solve(span, &load, 1, factor);
    assert_within(got.reaction[0], (10 + 15 + 21) * span / 2, 1e-12);
}

/* Knuth's linear congruential generator, fixed seed: the same loads on every machine. */
static double random_to(uint64_t *seed, double most)
{
    *seed = *seed * 6364136223846793005ULL + 1442695040888963407ULL;
    return most * (double)(*seed >> 11) / 9007199254740992.0;
}

enum { STEPS = 4000, LOADS = 6 };

/* Moment at x by taking each load alone: a point load by the lever rule, a line load as its parts right of x. */
static double moment_by_levers(double length, const struct beam_load *loads, double x)
{
    double sum = 0;
    for (int i = 0; i < LOADS; i++) {
        double amount = loads[i].amount.of[LOAD_DEAD];
        if (loads[i].point) {
            double a = loads[i].from_in;
            sum += amount * (x < a ? (length - a) * x : a * (length - x)) / length;
            continue;
        }
        /* integral of the lever rule over the load, split at x */
        double from = loads[i].from_in, to = loads[i].to_in, left = fmin(to, x), right = fmax(from, x);
        if (left > from)
            sum += amount * (left * left - from * from) / 2 * (length - x) / length;
        if (to > right)
            sum += amount * ((to - right) * length - (to * to - right * right) / 2) * x / length;
    }
    return sum;
}

/* Virtual work: E I times the deflection at x is the integral of M(s) m(s), m the moment of a unit load at x;
 * midpoints. */
static double sag_by_virtual_work(double length, const double *moment, double x)
{
    double sum = 0, step = length / STEPS;
    for (int k = 0; k < STEPS; k++) {
        double s = (k + 0.5) * step, unit = s < x ? (length - x) * s / length : (length - s) * x / length;
        sum += moment[k] * unit * step;
    }
    return sum;
}

static void random_loads_against_integration(void **state)
{
    (void)state;
    uint64_t seed = 20240607;
    static double moment[STEPS];
    for (int round = 0; round < 25; round++) {
        double length = 60 + random_to(&seed, 180), total = 0;
        struct beam_load loads[LOADS];
        for (int i = 0; i < LOADS; i++) {
            double a = random_to(&seed, length), b = random_to(&seed, length);
            loads[i] =
                i < LOADS / 2 ? point(a, random_to(&seed, 3000)) : line(fmin(a, b), fmax(a, b), random_to(&seed, 60));
            total += loads[i].amount.of[LOAD_DEAD] * (loads[i].point ? 1 : loads[i].to_in - loads[i].from_in);
        }
        struct beam_result got = beam_solve(length, loads, LOADS, all);
        double most = 0, sag = 0, step = length / STEPS;
        for (int k = 0; k < STEPS; k++)
            most = fmax(most, moment[k] = moment_by_levers(length, loads, (k + 0.5) * step));
        for (int k = 0; k < STEPS; k += 20)
            sag = fmax(sag, sag_by_virtual_work(length, moment, (k + 0.5) * step));
        assert_within(got.reaction[0] + got.reaction[1], total, 1e-12);
        assert_true(got.moment.value >= most * (1 - 1e-12)); /* the true maximum is never below a sampled one */
        assert_within(got.moment.value, most, 2e-3);
        assert_within(got.moment.value, moment_by_levers(length, loads, got.moment.at_in), 1e-9);
        assert_true(got.sag.value >= sag * (1 - 1e-6));
        assert_within(got.sag.value, sag, 1e-4);
        assert_within(got.sag.value, sag_by_virtual_work(length, moment, got.sag.at_in), 1e-5);
        assert_near(fabs(got.shear.value), fmax(got.reaction[0], got.reaction[1]), 1e-6);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(uniform_load),
        cmocka_unit_test(uniform_load_on_part),
        cmocka_unit_test(uniform_load_over_one_end),
        cmocka_unit_test(point_load_at_center),
        cmocka_unit_test(point_load_anywhere),
        cmocka_unit_test(two_equal_point_loads),
        cmocka_unit_test(load_over_the_support),
        cmocka_unit_test(factors_pick_the_source),
        cmocka_unit_test(random_loads_against_integration),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
