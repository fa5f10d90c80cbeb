/* Sag against limits of the job's own, whatever the span: the plain job's 3-2x10, E 1,600,000 psi, I 296.8 in4, on 99.5
 * in. Live 36.667 lb/in (40 psf x 11 ft / 12): 5 w L^4/(384 E I) = 183.33 x 9.8015e7 / 1.8235e11 = 0.0985 in.
 * Dead 9.991 lb/in x Kcr 1.5 with it: 0.0985 x 51.654/36.667 = 0.1388 in. */
#include "size/made_job.h"

static void beam_cap(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "most sag", "1/8 in");
    made_size(&made);
    const struct check *cap = made_check(&made, "beam B1", "most sag");
    assert_near(cap->demand, 0.1388, 0.0003);
    assert_near(cap->capacity, 0.125, 1e-9);
    assert_true(cap->ratio > 1);
    assert_false(made.design->passes);
    assert_non_null(strstr(cap->note, "Kcr 1.5"));
}

static void no_cap_unless_said(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    assert_null(made_find(&made, "beam B1", "most sag"));
    assert_null(made_find(&made, "joists north, cut", "most sag in the middle of the room"));
}

/* The joist's own live sag and half of 0.0985 in. */
static void middle_of_the_room(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "most sag", "1/4 in");
    made_size(&made);
    const struct check *cap = made_check(&made, "joists north, cut", "most sag in the middle of the room");
    double joist = made_check(&made, "joists north, cut", "live deflection")->demand;
    assert_near(cap->demand, joist + 0.0985 / 2, 0.0002);
    assert_near(cap->capacity, 0.25, 1e-9);
    assert_string_equal(cap->clause, "limit of the job");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(beam_cap, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_cap_unless_said, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(middle_of_the_room, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
