/* Beam ends that are cut, in whole jobs: 3-2x10 Douglas Fir-Larch No.2, Fv 180, under 46.658 lb/in on 99.5 in, 3-1/2 in
 * of bearing at each end, V = 2,321 lb (worked in test_job.c).  An inch of its depth holds 2/3 x 180 x 4.5 = 540 lb. */
#include "size/made_job.h"

static void slope(struct made *made, struct arena *arena, const char *pitch, const char *heel)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "roof cut pitch", pitch);
    made_set(made, "beam", "B1", "roof cut heel", heel);
}

/* 6/12 from 5 in: at the inner edge 5 + 3.5/2 = 6.75 in, whole after 4.25 x 2 = 8.5 in, e = 5: 9.25 - 2.5/6.75 x 5
 * = 7.3981 in: 3,995 lb. */
static void under_the_roof(void **state)
{
    struct made made;
    slope(&made, *state, "6/12", "5 in");
    made_size(&made);
    for (int end = 0; end < 2; end++) {
        const struct check *shear = made_check(&made, "beam B1", end ? "end 2 cut, shear" : "end 1 cut, shear");
        assert_near(shear->demand, 2321, 1);
        assert_near(shear->capacity, 3995, 0.5);
        assert_string_equal(shear->clause, "NDS 2018 3.4.3.2(e), from memory");
        assert_non_null(strstr(shear->note, "V reduction: none"));
    }
    assert_near(made_check(&made, "beam B1", "end 1 cut, half left")->ratio, 4.625 / 6.75, 1e-9);
    assert_null(made_find(&made, "beam B1", "end 1 cut, depth")); /* sawn: no limit but the half */
    assert_true(made.design->passes);
    assert_false(made_says(&made, DIAG_S005));
    assert_true(
        made_lists(made.design->unchecked, made.design->unchecked_count, "along the slope at end 2 of beam B1"));
}

/* 3/12 from 5 in: 5.875 in at the inner edge, whole after 17 in, e = 13.5 beyond it: 540 x 5.875 = 3,172.5 lb. Bending:
 * depth 5.4375 + x/4 at x from the middle of the bearing; w x (L - x)/2 over its square is greatest at x = L h/(L/4 + 2
 * h) = 15.134 in: M = 29,786 in-lb, depth 9.221, S 63.77: 467.1 psi. */
static void long_slope_at_one_end(void **state)
{
    struct made made;
    slope(&made, *state, "3/12", "5 in");
    made_set(&made, "beam", "B1", "roof cut at", "end 2");
    made_size(&made);
    assert_null(made_find(&made, "beam B1", "end 1 cut, shear"));
    const struct check *shear = made_check(&made, "beam B1", "end 2 cut, shear");
    assert_near(shear->capacity, 3172.5, 0.01);
    assert_non_null(strstr(shear->note, "dn alone"));
    const struct check *bending = made_check(&made, "beam B1", "end 2 cut, bending");
    assert_near(bending->demand, 467.1, 0.3);
    assert_near(bending->at_in, 103 - 1.75 - 15.134, 0.15);
    assert_near(bending->capacity, made_check(&made, "beam B1", "bending")->capacity, 1e-9);
}

/* 3/12 from 3 in: 3.875 of 9.25 in are left; 1/12 from 5 in: 51 in long, the middle third begins at 1.75 + 99.5/3
 * = 34.9. */
static void engineer_is_asked(void **state)
{
    static const struct {
        const char *pitch, *heel, *part;
    } cases[] = {{"3/12", "3 in", "less than half"}, {"1/12", "5 in", "middle third"}};
    for (size_t i = 0; i < 2; i++) {
        struct made made;
        slope(&made, *state, cases[i].pitch, cases[i].heel);
        made_size(&made);
        bool said = false;
        for (size_t k = 0; k < made.diags.count; k++)
            said |= made.diags.item[k].code == DIAG_S005 && strstr(made.diags.item[k].text, cases[i].part);
        assert_true(said);
        assert_int_equal(diag_count(&made.diags, DIAG_ASK), 2);
    }
    struct made his;
    slope(&his, *state, "3/12", "3 in");
    made_set(&his, "beam", "B1", "specified by", "R. Ames, PE");
    made_set(&his, "beam", "B1", "sheet", "S1");
    made_set(&his, "beam", "B1", "specified span", "8 ft");
    made_size(&his);
    assert_false(made_says(&his, DIAG_S005));
    assert_near(made_check(&his, "beam B1", "end 1 cut, half left")->ratio, 4.625 / 3.875, 1e-9);
}

/* 2 in out of the bottom: 540 x 7.25 x (7.25/9.25)^2 = 2,405 lb; at most d/4 = 2.3125 in.  As long as the bearing, at x
 * = 1.75 in from its middle M = 46.658 x 1.75 x 97.75/2 = 3,990.7, S = 39.42: 101.2 psi; 12 in long, x = 10.25: 21,341:
 * 541.4 psi.  2-1/2 in: too deep. */
static void notch_below(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "notch 1", "2 in");
    made_size(&made);
    const struct check *shear = made_check(&made, "beam B1", "end 1 cut, shear");
    assert_near(shear->capacity, 2405, 0.5);
    assert_string_equal(shear->clause, "NDS 2018 3.4.3.2(a)");
    assert_near(made_check(&made, "beam B1", "end 1 cut, depth")->ratio, 2 / 2.3125, 1e-9);
    assert_near(made_check(&made, "beam B1", "end 1 cut, bending")->demand, 101.2, 0.1);
    assert_null(made_find(&made, "beam B1", "end 2 cut, shear"));
    assert_true(made.design->passes);
    struct made longer;
    made_start(&longer, *state);
    made_set(&longer, "beam", "B1", "notch 1", "2 in");
    made_set(&longer, "beam", "B1", "notch 1 length", "12 in");
    made_size(&longer);
    assert_near(made_check(&longer, "beam B1", "end 1 cut, bending")->demand, 541.4, 0.5);
    struct made deep;
    made_start(&deep, *state);
    made_set(&deep, "beam", "B1", "notch 2", "2-1/2 in");
    made_size(&deep);
    assert_near(made_check(&deep, "beam B1", "end 2 cut, depth")->ratio, 2.5 / 2.3125, 1e-9);
    assert_false(deep.design->beams[0].passes);
}

/* 2 in out of the top, 6 in long: e = 2.5, 9.25 - 2/7.25 x 2.5 = 8.5603 in: 4,622.6 lb; over the bearing alone: the
 * whole. */
static void notch_above(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "notch 1", "2 in");
    made_set(&made, "beam", "B1", "notch 1 length", "6 in");
    made_set(&made, "beam", "B1", "notch 2", "2 in");
    made_set(&made, "beam", "B1", "notch face", "top");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "end 1 cut, shear")->capacity, 4622.6, 0.1);
    assert_near(made_check(&made, "beam B1", "end 2 cut, shear")->capacity, 4995, 1e-6);
}

/* A composite beam, 9-1/2 in: a tenth below, from memory, and the report governs. */
static void composite(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "member", "LVL-9.5");
    made_set(&made, "beam", "B1", "plies", "2");
    made_set(&made, "beam", "B1", "notch 1", "1 in");
    made_size(&made);
    const struct check *depth = made_check(&made, "beam B1", "end 1 cut, depth");
    assert_near(depth->ratio, 1 / 0.95, 1e-9);
    assert_non_null(strstr(depth->clause, "report governs"));
    assert_false(made.design->passes);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(under_the_roof, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(long_slope_at_one_end, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(engineer_is_asked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(notch_below, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(notch_above, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(composite, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
