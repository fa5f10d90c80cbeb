/* Beams of any number of spans: handbook formulas, what is refused, live load in patterns. */
#include "support.h"

#include "size/beam_formula_values.h"

#define COUNT(array) (sizeof(array) / sizeof *(array))
static const double all[LOAD_SOURCES] = {1, 1, 1, 1};

static bool is_same(const struct formula_row *row, double got)
{
    bool same = fabs(got - row->want) <= fabs(row->want) * row->tolerance;
    if (!same)
        print_error("%s: %s = %s: got %.9g, want %.9g\n", formula_cases[row->of].name, row->quantity, row->formula, got,
                    row->want);
    return same;
}

static void formulas(void **state)
{
    (void)state;
    size_t of[2] = {0}, good[2] = {0}; /* read in its source; from memory */
    for (size_t i = 0; i < COUNT(formula_rows); i++) {
        const struct formula_row *row = &formula_rows[i];
        struct beam_support support[CASE_SUPPORTS];
        struct beam_spans spans = formula_spans(&formula_cases[row->of], support);
        assert_true(spans_solve(&spans));
        bool same = is_same(row, formula_value(row, &spans));
        if (row->what & BOTH)
            same &= is_same(row, support[spans.supports - 1 - (size_t)row->which].reaction);
        if (row->what & IS_SHEAR)
            same &= is_same(row, fabs(spans_extremes(&spans, 0, spans.length_in).shear.value));
        of[formula_cases[row->of].from_memory]++;
        good[formula_cases[row->of].from_memory] += same;
    }
    print_message("beam formulas: %zu of %zu published values reproduced; from memory, apart: %zu of %zu\n", good[0],
                  of[0], good[1], of[1]);
    assert_int_equal(good[0], of[0]);
    assert_int_equal(good[1], of[1]);
    assert_int_equal(of[0] + of[1], 71);
}

/* Trapezoid by statics: 20 to 60 lb/in over 36..84 of 144: W = 1920 lb, its middle at 36 + 48 (20 + 120)/(3 x 80) = 64;
 * R1 = 1920 x 80/144.  The same load as a uniform one and a triangle adds up. */
static void trapezoid(void **state)
{
    (void)state;
    struct beam_load whole = RISING(36, 84, 20, 60);
    struct beam_load parts[] = {LINE(36, 84, 20), RISING(36, 84, 0, 40)};
    struct beam_result got = beam_solve(144, &whole, 1, all), sum = beam_solve(144, parts, 2, all);
    assert_within(got.reaction[0], 1920.0 * 80 / 144, 1e-12);
    assert_within(got.reaction[1], 1920.0 * 64 / 144, 1e-12);
    assert_within(beam_load_total(&whole).of[LOAD_DEAD], 1920.0, 1e-15);
    assert_within(sum.moment.value, got.moment.value, 1e-12);
    assert_within(sum.sag.value, got.sag.value, 1e-12);
    assert_within(sum.sag.at_in, got.sag.at_in, 1e-7);
}

/* Loads over supports and beyond the ends rest there; nothing else is changed. */
static void loads_over_supports(void **state)
{
    (void)state;
    struct beam_load loads[] = {POINT(72, 700), POINT(-2, 50), LINE(140, 150, 10), POINT(144, 30)};
    struct beam_support support[] = {{.at_in = 0}, {.at_in = 72}, {.at_in = 144}};
    struct beam_spans spans = {144, support, 3, loads, 4, all};
    assert_true(spans_solve(&spans));
    double sum = 0, moment = 0;
    for (int i = 0; i < 3; i++) {
        sum += support[i].reaction;
        moment += support[i].reaction * support[i].at_in;
    }
    assert_within(sum, 700.0 + 50 + 100 + 30, 1e-12);
    /* what is beyond an end rests on the end: 50 lb at 0, 60 lb of the line load at 144 */
    assert_within(moment, 700.0 * 72 + 40.0 * 142 + 60.0 * 144 + 30.0 * 144, 1e-12);
    assert_true(fabs(spans_extremes(&spans, 0, 144).shear.value) < 40);
}

static void refusals(void **state)
{
    (void)state;
    struct beam_load good = LINE(0, 144, 50), beyond = POINT(150, 50);
    struct beam_support one[] = {{.at_in = 0}, {.at_in = 144}}, back[] = {{.at_in = 100}, {.at_in = 100}};
    assert_true(spans_solve(&(struct beam_spans){144, one, 2, &good, 1, all}));
    assert_false(spans_solve(&(struct beam_spans){144, one, 1, &good, 1, all}));
    assert_false(spans_solve(&(struct beam_spans){144, back, 2, &good, 1, all}));
    assert_false(spans_solve(&(struct beam_spans){140, one, 2, &good, 1, all}));
    one[1].at_in = 120; /* a free end at 144 */
    assert_true(spans_solve(&(struct beam_spans){144, one, 2, &good, 1, all}));
    assert_false(spans_solve(&(struct beam_spans){144, one, 2, &beyond, 1, all}));
    good.amount.of[LOAD_LIVE] = NAN;
    assert_false(spans_solve(&(struct beam_spans){144, one, 2, &good, 1, all}));
}

/* Live load 50 lb/in, dead load none, on three spans of 144 in.  Coefficients of the formula cases (from memory): span
 * 1 sags most under spans 1 and 3, 0.10125 w L^2; support 2 hogs most under spans 1 and 2, 7/60 w L^2, and carries most
 * then, 1.2 w L; support 1 lifts most under span 2 alone, 0.05 w L. */
static void patterns(void **state)
{
    struct beam_load live = {.from_in = 0, .to_in = 432, .amount = {{0, 50, 0, 0}}};
    struct beam_support support[] = {{.at_in = 0}, {.at_in = 144}, {.at_in = 288}, {.at_in = 432}};
    struct beam_spans spans = {432, support, 4, &live, 1, all};
    const bool patterned[LOAD_SOURCES] = {[LOAD_LIVE] = true};
    struct beam_envelope got;
    assert_true(spans_envelope(*state, &spans, patterned, &got));
    double w = 50, l = 144;
    assert_within(got.section[1].sagging.value, 0.10125 * w * l * l, 1e-12);
    assert_within(got.section[3].sagging.value, 0.10125 * w * l * l, 1e-12);
    assert_within(got.section[2].sagging.value, 0.075 * w * l * l, 1e-12); /* span 2 alone */
    assert_within(got.section[1].hogging.value, -7.0 / 60 * w * l * l, 1e-12);
    assert_within(got.reaction[1].most, 1.2 * w * l, 1e-12);
    assert_within(got.reaction[0].most, 0.45 * w * l, 1e-12);
    assert_within(got.reaction[0].least, -0.05 * w * l, 1e-12);
    assert_near(got.section[0].sagging.value, 0, 0);
    assert_near(got.section[4].down.value, 0, 0);
}

/* Dead load stays where it is; sources that are not patterned are not lifted; the envelope holds each pattern's values,
 * found here by adding the sections one by one (superposition). */
static void patterns_by_superposition(void **state)
{
    struct beam_load loads[] = {{.from_in = 0, .to_in = 300, .amount = {{8, 30, 0, 0}}},
                                {.from_in = 20, .to_in = 260, .amount = {{0, 10, 0, 5}}, .tapers = true},
                                {.point = true, .from_in = 300, .to_in = 300, .amount = {{0, 400, 0, 0}}}};
    double end[] = {0, 40, 150, 270, 300}, dead_at[3] = {0}, least[3], most[3];
    struct beam_support support[] = {{.at_in = 40}, {.at_in = 150}, {.at_in = 270}};
    struct beam_spans spans = {300, support, 3, loads, 3, all};
    const bool patterned[LOAD_SOURCES] = {[LOAD_LIVE] = true};
    struct beam_envelope got;
    assert_true(spans_envelope(*state, &spans, patterned, &got));
    const double not_live[LOAD_SOURCES] = {1, 0, 1, 1}, only_live[LOAD_SOURCES] = {0, 1, 0, 0};
    spans.factor = not_live;
    assert_true(spans_solve(&spans));
    for (int i = 0; i < 3; i++)
        least[i] = most[i] = dead_at[i] = support[i].reaction;
    spans.factor = only_live;
    for (int section = 0; section < 4; section++) {
        double a = end[section], b = end[section + 1], from = fmax(a, 20), to = fmin(b, 260);
        /* 10 lb/in at 20 in falls to nothing at 260 in */
        struct beam_load part[] = {{.from_in = a, .to_in = b, .amount = {{0, 30, 0, 0}}},
                                   {.from_in = from,
                                    .to_in = to,
                                    .amount = {{0, (260 - from) / 24, 0, 0}},
                                    .tapers = true,
                                    .amount_to = {{0, (260 - to) / 24, 0, 0}}},
                                   loads[2]};
        spans.load = part;
        spans.count = section == 3 ? 3 : 2;
        assert_true(spans_solve(&spans));
        for (int i = 0; i < 3; i++) {
            least[i] += fmin(support[i].reaction, 0);
            most[i] += fmax(support[i].reaction, 0);
        }
    }
    for (int i = 0; i < 3; i++) {
        assert_true(least[i] < dead_at[i] && most[i] > dead_at[i]);
        assert_within(got.reaction[i].least, least[i], 1e-12);
        assert_within(got.reaction[i].most, most[i], 1e-12);
    }
}

static void too_many_sections(void **state)
{
    struct beam_load load = LINE(0, 240, 1);
    struct beam_support support[SPANS_PATTERN_MOST];
    for (int i = 0; i < SPANS_PATTERN_MOST; i++)
        support[i] = (struct beam_support){.at_in = 20 * i};
    struct beam_spans spans = {20 * (SPANS_PATTERN_MOST - 1), support, SPANS_PATTERN_MOST, &load, 1, all};
    struct beam_envelope out;
    assert_false(spans_envelope(*state, &spans, (bool[LOAD_SOURCES]){0}, &out));
    assert_true(spans_solve(&spans)); /* without patterns there is no limit */
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(formulas),
        cmocka_unit_test(trapezoid),
        cmocka_unit_test(loads_over_supports),
        cmocka_unit_test(refusals),
        cmocka_unit_test_setup_teardown(patterns, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(patterns_by_superposition, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(too_many_sections, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
