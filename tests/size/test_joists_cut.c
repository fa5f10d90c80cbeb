/* The joists that are cut, re-checked as simple spans in whole jobs; every figure worked by hand from the job of
 * made_job.h: north 12 ft of 2x10, 16 in apart, under 10 + 40 psf. */
#include "size/made_job.h"

static const char north[] = "joists north, cut";

static void start_known(struct made *made, void **state)
{
    made_start(made, *state);
    made_set(made, "joists", "north", "species", "Douglas Fir-Larch");
    made_set(made, "joists", "north", "grade", "No.2");
}

/* w = 50 x 16/144 = 5.5556 lb/in on 144 in: M = 14,400 in-lb on S = 1.5 x 9.25^2/6 = 21.391 in3: 673.2 psi; Fb' = 900 x
 * 1.1 x 1.15 = 1138.5 psi.  V = 400 lb: 1.5 x 400/13.875 = 43.2 psi of 180.  Live 4.4444 lb/in, E I = 1.6e6 x 98.932:
 * 5 w L^4/(384 E I) = 0.1572 in of 144/360; dead 1.1111 x 1.5 with it: 0.1572 x 6.1111/4.4444 = 0.2162 in of 144/240.
 */
static void cut_joist_by_hand(void **state)
{
    struct made made;
    start_known(&made, state);
    made_size(&made);
    const struct check *bending = made_check(&made, north, "bending"), *shear = made_check(&made, north, "shear");
    assert_near(bending->demand, 673.2, 0.1);
    assert_near(bending->capacity, 1138.5, 0.01);
    assert_near(shear->demand, 43.24, 0.01);
    assert_near(shear->capacity, 180, 0);
    const struct check *live = made_check(&made, north, "live deflection");
    assert_near(live->demand, 0.1572, 0.0001);
    assert_near(live->capacity, 0.4, 1e-9);
    assert_near(made_check(&made, north, "total deflection")->demand, 0.2162, 0.0001);
    assert_near(made_check(&made, north, "total deflection")->capacity, 0.6, 1e-9);
    assert_true(made_member(&made, north)->passes);
    assert_true(bending->governs);
    /* in the middle of the room half of the beam's sag is added */
    const struct check *beam = made_check(&made, "beam B1", "live deflection");
    char both[40];
    int hundredths = (int)floor(100 * (live->demand + beam->demand / 2) + 0.5);
    assert_true(snprintf(both, sizeof both, "beam B1, 0.%02d in", hundredths) > 0);
    assert_non_null(strstr(live->note, both));
    assert_false(made_lists(made.design->unchecked, made.design->unchecked_count, "themselves"));
}

/* What the job does not say, the catalog's weakest for each check: Southern Pine No.2 in bending, 800 x 1.15 = 920 psi;
 * Hem-Fir No.2 in stiffness, 0.1572 x 1.6/1.3 = 0.1935 in.  Of Hem-Fir without a grade: No.2, 850 x 1.1 x 1.15. */
static void unknown_wood(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    assert_near(made_check(&made, north, "bending")->capacity, 920, 0.01);
    assert_near(made_check(&made, north, "live deflection")->demand, 0.1935, 0.0001);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "species not known"));
    made_start(&made, *state);
    made_set(&made, "joists", "north", "species", "Hem-Fir");
    made_size(&made);
    assert_near(made_check(&made, north, "bending")->capacity, 1075.25, 0.01);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "Hem-Fir, grade not known"));
    made_start(&made, *state);
    made_set(&made, "joists", "north", "species", "Wych Elm");
    made_size(&made);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "joists north themselves"));
}

/* Above 24 in no Cr (NDS 2018 4.3.9): 900 x 1.1 = 990 psi; w = 50 x 30/144: 673.2 x 30/16 = 1262 psi fails. */
static void wide_spacing_fails(void **state)
{
    struct made made;
    start_known(&made, state);
    made_set(&made, "joists", "north", "spacing", "30 in");
    made_size(&made);
    assert_near(made_check(&made, north, "bending")->capacity, 990, 0.01);
    assert_near(made_check(&made, north, "bending")->demand, 1262.3, 0.2);
    assert_false(made_member(&made, north)->passes);
    assert_false(made.design->passes);
    assert_true(made_says(&made, DIAG_S002));
}

/* An attic: L/240 live, L/180 in all: 144/240 = 0.6 in, 144/180 = 0.8 in. */
static void attic_limits(void **state)
{
    struct made made;
    start_known(&made, state);
    made_set(&made, "area", "floor", "live is", "attic no storage");
    made_size(&made);
    assert_near(made_check(&made, north, "live deflection")->capacity, 0.6, 1e-9);
    assert_near(made_check(&made, north, "total deflection")->capacity, 0.8, 1e-9);
}

/* Joists that ran on, 12 ft and 10 ft: M = 5.5556 x (144^3 + 120^3)/(8 x 264) = 12,400 in-lb; the far bearing had 400 -
 * 12,400/144 = 314 lb a joist and has 400 lb after the cut. */
static void far_bearing_of_continuous_joists(void **state)
{
    struct made made;
    start_known(&made, state);
    made_set(&made, "joists", "north", "over the wall", "continuous");
    made_set(&made, "joists", "south", "over the wall", "continuous");
    made_size(&made);
    assert_true(
        made_lists(made.design->basis, made.design->basis_count, "brings 400 lb to its far bearing, not 314 lb"));
}

/* 2-1/2 in planed off 9-1/4: more than a quarter, 2.3125 in.  On 6.75 in: 1.5 x 400/(1.5 x 6.75) = 59.26 psi of 180 x
 * (6.75/9.25)^2 = 95.85 psi (NDS 2018 3.4.3.2(a)). */
static void planed_seat(void **state)
{
    struct made made;
    start_known(&made, state);
    made_set(&made, "joists", "north", "seat planed", "2-1/2 in");
    made_size(&made);
    assert_near(made_check(&made, north, "shear")->demand, 59.26, 0.01);
    assert_near(made_check(&made, north, "shear")->capacity, 95.85, 0.01);
    assert_near(made_check(&made, north, "planed seat")->ratio, 2.5 / 2.3125, 1e-6);
    assert_false(made.design->passes);
}

/* On a dropped beam nothing is cut. */
static void dropped_beam(void **state)
{
    struct made made;
    start_known(&made, state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_size(&made);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                           "joists north themselves: they lie on a dropped beam"));
}

/* 12 ft at 16 in under 10 + 40 psf: w = 5.5556 lb/in, M = w 144^2/8 = 14,400 in-lb.  A new 2x10 of DF-L No.2, S 21.39
 * in3: 673.2 psi of 900 x CF 1.1 x Cr 1.15 = 1,138.5; V = 400 lb: 1.5 x 400/13.875 = 43.24 psi of 180; live 40/12 x
 * 16/12 = 4.4444 lb/in: 5 x 4.4444 x 144^4/(384 x 1.6e6 x 98.93) = 0.1572 in of 0.4.  Of a weaker wood it is that
 * wood's. */
static void new_joists_by_their_own_wood(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "new at", "14 in");
    made_set(&made, "joists", "north", "new of", "DFL2-2X10");
    made_size(&made);
    assert_near(made_check(&made, "joists north, new", "bending")->demand, 673.2, 0.1);
    assert_near(made_check(&made, "joists north, new", "bending")->capacity, 1138.5, 0.01);
    assert_near(made_check(&made, "joists north, new", "shear")->demand, 43.24, 0.01);
    assert_near(made_check(&made, "joists north, new", "live deflection")->demand, 0.1572, 0.0001);
    assert_false(made_says(&made, DIAG_S005));
    assert_true(made.design->passes);
    made_set(&made, "joists", "north", "moisture in service", "wet"); /* Fv x 0.97, E x 0.9 */
    made_size(&made);
    assert_near(made_check(&made, "joists north, new", "shear")->capacity, 174.6, 1e-6);
    assert_near(made_check(&made, "joists north, new", "live deflection")->demand, 0.1572 / 0.9, 0.0001);
}

static void unlike_joists_are_asked(void **state)
{
    static const char *const woods[] = {"LVL-9.25", "DFL2-2X12"};
    for (int i = 0; i < 2; i++)
        for (int named = 0; named < 2; named++) {
            struct made made;
            made_start(&made, *state);
            made_set(&made, "joists", "north", "new beside", "24 in");
            made_set(&made, "joists", "north", "new of", woods[i]);
            if (named)
                made_set(&made, "joists", "north", "new engineer", "R. Ames, PE, sheet S2");
            made_size(&made);
            assert_int_equal(made_says(&made, DIAG_S005), !named);
            assert_int_equal(made_lists(made.design->unchecked, made.design->unchecked_count,
                                        "not checked: the new joists of joists north, by the engineer (R. Ames"),
                             named);
        }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(new_joists_by_their_own_wood, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(unlike_joists_are_asked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(cut_joist_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(unknown_wood, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wide_spacing_fails, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(attic_limits, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(far_bearing_of_continuous_joists, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(planed_seat, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(dropped_beam, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
