/* Wood past a support: American Wood Council, Design Aid 6, Beam Formulas with Shear and Moment Diagrams (2007), "beam
 * overhanging one support, uniformly distributed load", from memory: R1 = w (l2 - a2)/2l, R2 = w (l + a)2/2l, M2 =
 * wa2/2, V at support 2 w (l2 + a2)/2l; load on the span alone lifts the tip by w l3 a/24EI, on the overhang alone it
 * sinks by w a3 (4l + 3a)/24EI.
 *
 * The plain job, 3 - 2x10 on posts of 3-1/2 in, l = 99.5 in; 22-1/4 in past the bearing at end 2: a = 24 in.  Dead
 * 119.9 plf = 9.99167 lb/in, live 440 plf = 36.66667 lb/in, along 96 + 7 + 22.25 = 125.25 in.  Past the middle of end 1
 * lie 1-3/4 in, which rest on it. */
#include "size/made_job.h"

static void past_end_2(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "overhang 2", "22-1/4 in");
}

/* Dead: R1 = 9.99167 x 9,324.25/199 + 17.485 = 485.65 lb, R2 = 9.99167 x 15,252.25/199 = 765.81 lb.  Live: R1 of the
 * span alone 36.66667 x 99.5/2 + 64.17 = 1,888.33, of all 1,718.04 + 64.17 = 1,782.21, of the overhang alone -36.66667
 * x 576/199 = -106.13; R2 of all 2,810.29. */
static void reactions(void **state)
{
    struct made made;
    past_end_2(&made, *state);
    made_size(&made);
    const struct beam_design *bd = &made.design->beams[0];
    assert_near(length_inches(bd->cut_length), 125.25, 1e-9);
    assert_near(bd->design_span_in, 99.5, 1e-9);
    assert_near(bd->past_in[1], 24, 1e-9);
    assert_near(bd->end_lb[0].of[LOAD_DEAD], 485.65, 0.01);
    assert_near(bd->end_lb[1].of[LOAD_DEAD], 765.81, 0.01);
    assert_near(bd->end_lb[0].of[LOAD_LIVE], 1888.33, 0.01);
    assert_near(bd->end_full_lb[0].of[LOAD_LIVE], 1782.21, 0.01);
    assert_near(bd->end_least_lb[0].of[LOAD_LIVE], -106.13, 0.01);
    assert_near(bd->end_lb[1].of[LOAD_LIVE], 2810.29, 0.01);
    assert_near(loads_total(&bd->end_full_lb[0]) + loads_total(&bd->end_full_lb[1]), 46.658333 * 125.25, 0.01);
}

/* D+L: over the post 46.65833 x 576/2 = 13,437.6 in-lb on 64.171875 in3: 209.4 psi; V = 46.65833 x 10,476.25/199 =
 * 2,456.3 lb: 1.5 x 2,456.3/41.625 = 88.51 psi.  E I = 1.6e6 x 296.795 = 4.74872e8: the tip goes up by 36.66667 x
 * 985,074.9/EI = 0.0761 in under live load on the span, and down by 0.0209 under that on itself; of 48/360 in.  Dead
 * load with creep 14.9875 x (4 x 576 x 99.5 - 985,074.9 + 3 x 13,824) lifts it, too: 0.0225 in more. */
static void member(void **state)
{
    struct made made;
    past_end_2(&made, *state);
    made_size(&made);
    const struct check *over = made_check(&made, "beam B1", "bending over supports, span 1");
    assert_near(over->demand, 209.4, 0.05);
    assert_near(over->at_in, 101.25, 1e-6);
    assert_string_equal(over->combination, "D+L");
    assert_near(made_check(&made, "beam B1", "shear, span 1")->demand, 88.51, 0.01);
    const struct check *tip = made_check(&made, "beam B1", "live deflection, overhang 2");
    assert_near(tip->demand, 0.0761, 0.00005);
    assert_near(tip->capacity, 48.0 / 360, 1e-9);
    assert_near(tip->at_in, 125.25, 1e-6);
    assert_non_null(strstr(tip->note, "upward"));
    assert_near(made_check(&made, "beam B1", "total deflection, overhang 2")->demand, 0.0761 + 0.0225, 0.0001);
    assert_null(made_find(&made, "beam B1", "live deflection, overhang 1"));
}

/* The same beam turned about: 24 in past end 1, every place along it 22-1/4 in farther. */
static void past_end_1(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "overhang 1", "22-1/4 in");
    made_size(&made);
    const struct beam_design *bd = &made.design->beams[0];
    assert_near(bd->end_lb[1].of[LOAD_LIVE], 1888.33, 0.01);
    assert_near(bd->end_lb[0].of[LOAD_LIVE], 2810.29, 0.01);
    assert_near(made_check(&made, "beam B1", "bending over supports, span 1")->demand, 209.4, 0.05);
    assert_near(made_check(&made, "beam B1", "bending over supports, span 1")->at_in, 24, 1e-6);
    const struct check *tip = made_check(&made, "beam B1", "live deflection, overhang 1");
    assert_near(tip->demand, 0.0761, 0.00005);
    assert_near(tip->at_in, 0, 1e-6);
}

/* 2,000 lb at 123.25 in, 22 in past the middle of end 2: dead load at end 1 485.65 - 2,000 x 22/99.5 = 43.44 lb, live
 * load on the overhang -106.13: it lifts by 62.69 lb, and must be held, or an engineer answers. */
static void lifts_the_far_end(void **state)
{
    for (int named = 0; named < 2; named++) {
        struct made made;
        past_end_2(&made, *state);
        made_set(&made, "beam", "B1", "above", "load tub");
        made_add(&made, "[load tub]\non = beam B1\nat = 123-1/4 in\ndead = 2000 lb\nheld by = shore S1\n");
        if (named)
            made_set(&made, "beam", "B1", "hold down engineer", "R. Ames, PE, sheet S2");
        made_size(&made);
        assert_near(made.design->beams[0].end_lb[0].of[LOAD_DEAD], 43.44, 0.01);
        const struct check *up = made_find(&made, "beam B1, end 1", "held down, spans loaded in turn");
        assert_int_equal(up == NULL, named);
        if (up)
            assert_near(up->demand, 62.69, 0.01);
    }
}

/* Over an inner post and past both ends: all loads on make all reactions. */
static void spans_and_overhangs(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "clear span", "188-1/2 in");
    made_set(&made, "beam", "B1", "overhang 1", "10-1/4 in");
    made_set(&made, "beam", "B1", "overhang 2", "22-1/4 in");
    made_set(&made, "beam", "B1", "inner", "post P3 at 108 in, wall across");
    made_add(&made, "[post P3]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 84 in\nbraced = both\n"
                    "stands on = footing F1\n");
    made_size(&made);
    const struct beam_design *bd = &made.design->beams[0];
    double wood = 188.5 + 7 + 10.25 + 22.25;
    assert_near(length_inches(bd->cut_length), wood, 1e-9);
    double sum =
        loads_total(&bd->end_full_lb[0]) + loads_total(&bd->end_full_lb[1]) + loads_total(&bd->inner[0].full_lb);
    assert_near(sum, 46.658333 * wood, 0.01);
    /* M over end 1: w 12^2/2 = 3,359.4 in-lb; over end 2 as above */
    assert_true(made_check(&made, "beam B1", "bending over supports, span 2")->demand > 209.4);
    assert_non_null(made_find(&made, "beam B1", "live deflection, overhang 1"));
    assert_non_null(made_find(&made, "beam B1", "live deflection, overhang 2"));
}

static bool stops(void **state, const char *const (*set)[2], size_t count)
{
    struct made made;
    past_end_2(&made, *state);
    for (size_t i = 0; i < count; i++)
        made_set(&made, "beam", "B1", set[i][0], set[i][1]);
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    return made_says(&made, DIAG_K013);
}

/* Only over a post or plate; not where the end is cut. */
static void what_it_needs(void **state)
{
    static const char *const pocket[][2] = {
        {"end 2", "pocket"}, {"bearing 2", "3 in"}, {"wall at end 2", NULL}, {"overhang 2", "6 in"}};
    static const char *const notch[][2] = {{"notch 2", "1 in"}};
    static const char *const other[][2] = {{"notch 1", "1 in"}};
    static const char *const slope[][2] = {
        {"roof cut pitch", "6/12"}, {"roof cut heel", "6 in"}, {"roof cut at", "end 2"}};
    assert_true(stops(state, pocket, 4));
    assert_true(stops(state, notch, 1));
    assert_true(stops(state, slope, 3));
    assert_false(stops(state, other, 1));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(reactions, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(member, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(past_end_1, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(lifts_the_far_end, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(spans_and_overhangs, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_it_needs, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
