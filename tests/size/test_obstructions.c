/* Members that stand where the beam goes, in whole jobs.  Every figure is worked by hand beside it. */
#include "size/made_job.h"

/* A rafter tail of 16 sq ft at 15 psf dead and 20 psf roof live load: 240 + 320 lb. */
static void with_tail(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "roof", "", "area", "area roof");
    made_add(made, "[area roof]\ndead = 15 psf\nlive = 20 psf\nlive is = roof\nsnow = 0 psf\n"
                   "[obstruction tail]\nwhat = rafter tail\non = beam B1\nat = 48 in\nthen = lands on the beam\n"
                   "area = area roof\ncarries = 16 sq ft\nseat = 3-1/2 in\nown prop = yes\n");
}

static double end_1(const struct made *made, enum load_source source)
{
    return made->design->beams[0].end_lb[0].of[source];
}

/* It stands 48 - 1.75 = 46.25 in into a span of 99.5 in: (99.5 - 46.25)/99.5 = 0.53518 of it comes to end 1.  Its seat,
 * 1-1/2 x 3-1/2 in: 560/5.25 = 106.7 psi under D+Lr.  Of the catalog's lumber the weakest holds 405 psi across the
 * grain (Hem-Fir, NDS Supplement Table 4A).  IRC 2021 R802.6: 1-1/2 in at least, 1.5/3.5 = 0.43. */
static void lands_on_the_beam(void **state)
{
    struct made bare, made;
    made_start(&bare, *state);
    made_size(&bare);
    with_tail(&made, *state);
    made_size(&made);
    assert_near(end_1(&made, LOAD_DEAD) - end_1(&bare, LOAD_DEAD), 240 * 0.53518, 0.01);
    assert_near(end_1(&made, LOAD_ROOF_LIVE), 320 * 0.53518, 0.01);
    const struct check *seat = made_check(&made, "obstruction tail", "seat on the beam");
    assert_near(seat->demand, 106.67, 0.01);
    assert_near(seat->capacity, 405, 1e-9);
    assert_string_equal(seat->combination, "D+Lr");
    assert_near(made_check(&made, "obstruction tail", "least bearing length")->ratio, 1.5 / 3.5, 1e-9);
    assert_true(made_member(&made, "obstruction tail")->passes);
    assert_false(made_says(&made, DIAG_Q007));
    bool in_path = false;
    for (size_t i = 0; i < made.design->path_count; i++)
        in_path |= !strcmp(made.design->path[i].from, "obstruction tail") &&
                   !strcmp(made.design->path[i].to, "beam B1") && made.design->path[i].at_in == 48;
    assert_true(in_path);
}

/* A strut's foot stands on its end: the beam alone, Douglas Fir-Larch 625 psi.  A seat of 1 in is too short, and with
 * 2,400 lb too small: 2,400/1.5 = 1,600 psi. */
static void seat_too_small(void **state)
{
    struct made made;
    with_tail(&made, *state);
    made_set(&made, "obstruction", "tail", "what", "strut");
    made_set(&made, "obstruction", "tail", "seat", "1 in");
    made_set(&made, "obstruction", "tail", "area", NULL);
    made_set(&made, "obstruction", "tail", "carries", NULL);
    made_set(&made, "obstruction", "tail", "dead", "2400 lb");
    made_size(&made);
    assert_near(made_check(&made, "obstruction tail", "seat on the beam")->demand, 1600, 0.01);
    assert_near(made_check(&made, "obstruction tail", "seat on the beam")->capacity, 625, 1e-9);
    assert_near(made_check(&made, "obstruction tail", "least bearing length")->ratio, 1.5, 1e-9);
    assert_false(made.design->passes);
    assert_true(made_says(&made, DIAG_S002));
}

/* Held by the shore 3 ft from the beam, at the tips of joists of 12 ft: 560 x 12/9 = 746.7 lb more on one stud. */
static void held_by_a_shore(void **state)
{
    struct made bare, made;
    with_tail(&bare, *state);
    made_size(&bare);
    with_tail(&made, *state);
    made_set(&made, "obstruction", "tail", "own prop", NULL);
    made_set(&made, "obstruction", "tail", "held by", "shore S1");
    made_size(&made);
    /* the greatest combinations of the stud: D+L before, 50 x 6 x 4/3 x 4/3 = 533.3 lb; then D + 0.75 L + 0.75 Lr:
     * 106.7 + 320 + 0.75 x 426.7 + 0.75 x 426.7 = 1,066.7 lb */
    assert_near(bare.design->shores[0].stud_lb, 533.33, 0.01);
    assert_near(made.design->shores[0].stud_lb, 1066.67, 0.01);
    made_set(&made, "obstruction", "tail", "held by", NULL);
    made.diags.count = 0;
    made_size(&made);
    assert_true(made_says(&made, DIAG_Q007));
}

/* 560 lb to neighbours that nobody knows: the engineer's; 2 sq ft, 70 lb, are not. */
static void headered_off(void **state)
{
    struct made made;
    with_tail(&made, *state);
    made_set(&made, "obstruction", "tail", "then", "headered off");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S005));
    assert_near(end_1(&made, LOAD_ROOF_LIVE), 0, 0);
    made_set(&made, "obstruction", "tail", "engineer", "S2, A. Heron (invented)");
    made.diags.count = 0;
    made_size(&made);
    assert_false(made_says(&made, DIAG_S005));
    made_set(&made, "obstruction", "tail", "engineer", NULL);
    made_set(&made, "obstruction", "tail", "carries", "2 sq ft");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S005));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "at most 100 lb"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(lands_on_the_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(seat_too_small, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(held_by_a_shore, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(headered_off, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
