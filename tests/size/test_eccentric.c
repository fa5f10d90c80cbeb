/* Beams that bear off the center of their post: the plain job, P1 of 3 - 2x4 Spruce-Pine-Fir Stud, 84 in: Fb 675 x 1.1
 * = 742.5, Fc 725 x 1.05 = 761.25, Emin 440,000 psi; 4-1/2 x 3-1/2 in, A 15.75, S 9.1875 along the ply. */
#include "size/made_job.h"

/* The wall across: 2 in of bearing on 3-1/2 in, e = 0.75 > 3.5/6.  Wood 101.5 in, span 98.75 in, its middle 49.75 in
 * from the bearing's: R = 46.658 x 101.5 x 49/98.75 = 2,349.9 lb, M = 1,762.4 in-lb, 191.8 psi.  P = 2,372.2 lb with 3
 * x 1.06 plf x 7 ft: fc 150.6 psi.  Braced both ways: (150.6/761.25)^2 + 191.8/742.5 = 0.0391 + 0.2583 = 0.2975. */
static void braced_both_ways(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "bearing 1", "2 in");
    made_size(&made);
    const struct check *check = made_check(&made, "post P1", "load off its center");
    assert_near(check->ratio, 0.2975, 0.0005);
    assert_string_equal(check->combination, "D+L");
    assert_non_null(strstr(check->clause, "15.4.1"));
    assert_null(made_find(&made, "post P2", "load off its center"));
    assert_false(made_says(&made, DIAG_S011));
}

/* Braced one way, le/d = 24: FcE = 0.822 x 440,000/576 = 627.9, a = 0.8249, CP = 1.1405 - sqrt(1.3008 - 1.0311) =
 * 0.6212, Fc' 472.9: (150.6/472.9)^2 = 0.1014; fc/FcE 0.2399: 191.8 x (1 + 0.234 x 0.2399)/(742.5 x 0.7601) = 0.3589;
 * 0.4604. */
static void braced_one_way(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "bearing 1", "2 in");
    made_set(&made, "post", "P1", "braced", "one");
    made_size(&made);
    assert_near(made_check(&made, "post P1", "load off its center")->ratio, 0.4604, 0.0008);
}

/* 2-1/2 in of bearing: e = 0.5 in, within 3.5/6 = 0.583 in. */
static void within_a_sixth(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "bearing 1", "2-1/2 in");
    made_size(&made);
    assert_null(made_find(&made, "post P1", "load off its center"));
}

/* The wall in line: 2 in on 4-1/2 in of plies, e = 1.25 > 0.75: through the plies. */
static void through_the_plies(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "bearing 1", "2 in");
    made_set(&made, "beam", "B1", "wall at end 1", "in line");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S011));
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "bearing 1", "2 in");
    made_set(&made, "beam", "B1", "wall at end 1", "in line");
    made_set(&made, "post", "P1", "engineer", "R. Ames, PE, sheet S2");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S011));
    assert_true(made_lists(made.design->basis, made.design->basis_count, "R. Ames, PE, sheet S2 answers for it"));
}

/* 1 in beside the post's center: the beam's 4-1/2 in run from -1-1/4 to 3-1/4 in on wood to 2-1/4 in: 3-1/2 in of it
 * bear. */
static void beside_the_center(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    double stress = made_check(&made, "beam B1, end 1", "bearing of the beam")->demand;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "off center 1", "1 in");
    made_size(&made);
    assert_near(made_check(&made, "beam B1, end 1", "bearing of the beam")->demand, stress * 4.5 / 3.5, 1e-6);
    assert_true(made_says(&made, DIAG_S011));
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "off center 1", "1/2 in");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S011));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(braced_both_ways, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(braced_one_way, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(within_a_sixth, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(through_the_plies, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(beside_the_center, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
