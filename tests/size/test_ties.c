/* Joists that tie the rafters and are cut, in whole jobs.  Every figure is worked by hand beside it. */
#include "size/made_job.h"

/* 15 psf dead and 20 psf roof live load on plan, 26 ft, 6/12: 35 x 1.3333 x 26/(4 x 0.5) = 606.7 lb a pair under D+Lr
 * (CD 1.25); under D alone 15/35 of it.  Joists 16 in apart, six a side. */
static void tied(struct made *made, struct arena *arena, const char *strap)
{
    made_start(made, arena);
    made_set(made, "roof", "", "frame", "ridge board");
    made_set(made, "roof", "", "pitch", "6/12");
    made_set(made, "roof", "", "span", "26 ft");
    made_set(made, "roof", "", "area", "area roof");
    made_add(made, "[area roof]\ndead = 15 psf\nlive = 20 psf\nlive is = roof\nsnow = 0 psf\n");
    static const char *const side[] = {"north", "south"};
    for (int i = 0; i < 2; i++) {
        made_set(made, "joists", side[i], "ties the roof", "yes");
        made_set(made, "joists", side[i], "species", "Spruce-Pine-Fir");
        if (strap)
            made_set(made, "joists", side[i], "tie strap", strap);
    }
}

static const char north[] = "joists north on beam B1, side A";

static void straps_are_pairs(void **state)
{
    struct made made;
    tied(&made, *state, "STRAP-16GA-18");
    made_size(&made);
    const struct check *tie = made_check(&made, north, "thrust tie");
    assert_near(tie->demand, 606.67, 0.01);
    assert_near(tie->capacity, 740, 1e-9); /* its column at 1.25 */
    assert_string_equal(tie->combination, "D+Lr");
    assert_false(made_says(&made, DIAG_Q003));
    /* both sides tie: a pair is counted once, on side A */
    assert_int_equal(made.design->beams[0].side[0]->tied_pairs, 6);
    assert_int_equal(made.design->beams[0].side[1]->tied_pairs, 0);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "tie before the cut"));
    assert_true(made_lists(made.design->basis, made.design->basis_count, "while the shores stand"));
    made_set(&made, "joists", "north", "tie strap", "STRAP-16GA-12"); /* 425 lb */
    made_size(&made);
    assert_near(made_check(&made, north, "thrust tie")->ratio, 606.67 / 425, 0.001);
    assert_true(made_says(&made, DIAG_S002));
}

/* Nothing in the tie's place: asked, and the check has no capacity.  16d common in Spruce-Pine-Fir (G 0.42): Z = 120 lb
 * (NDS Table 12N, the value that reproduces IRC Table R802.5.2(1)), x 1.25 = 150: 606.7/150 = 4.04, 5 nails. */
static void no_tie_is_asked(void **state)
{
    struct made made;
    tied(&made, *state, NULL);
    made_size(&made);
    assert_true(made_says(&made, DIAG_Q003));
    const struct check *tie = made_check(&made, north, "thrust tie");
    assert_true(isinf(tie->ratio));
    assert_non_null(strstr(tie->note, "wants 5 16d common nails"));
    assert_false(made.design->passes);
    /* not answered at all */
    made_set(&made, "joists", "north", "ties the roof", NULL);
    made.diags.count = 0;
    made_size(&made);
    assert_true(made_says(&made, DIAG_Q003));
}

/* The ridge 10 ft from the wall of the 6/12 slope: 35 x 1.3333 x (26 - 10)/(2 x 0.5) = 746.7 lb. */
static void ridge_out_of_the_middle(void **state)
{
    struct made made;
    tied(&made, *state, "STRAP-16GA-36");
    made_set(&made, "roof", "", "ridge at", "10 ft");
    made_size(&made);
    assert_near(made_check(&made, north, "thrust tie")->demand, 746.67, 0.01);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "the ridge 10' 0\" from the eave wall"));
}

/* Below 3/12 the ridge must be a beam; 3/12 itself is not below. */
static void flat_roof_is_asked(void **state)
{
    struct made made;
    tied(&made, *state, "STRAP-16GA-48");
    made_set(&made, "roof", "", "pitch", "3/12");
    made_size(&made);
    assert_false(made_says(&made, DIAG_Q010));
    made_set(&made, "roof", "", "pitch", "2.5/12");
    made.diags.count = 0;
    made_size(&made);
    assert_true(made_says(&made, DIAG_Q010));
}

/* A truss is not cut without its drawing: asked, and no bid to sign. */
static void truss_is_refused(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "kind", "roof truss");
    made_size(&made);
    assert_true(made_says(&made, DIAG_Q001));
    made_set(&made, "joists", "north", "repair drawing", "R-114");
    made.diags.count = 0;
    made_size(&made);
    assert_false(made_says(&made, DIAG_Q001));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "the repair drawing governs"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(straps_are_pairs, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_tie_is_asked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ridge_out_of_the_middle, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(flat_roof_is_asked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(truss_is_refused, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
